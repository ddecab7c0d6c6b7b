"""Advice a cook would give, as properties over practice days on freshly invented kitchens:
python -m benchmarks.practice [--days 1000] [--kitchens 20] [--seed 1] [--full]

Every kitchen is drawn as a kitchen file (fryers, fuels, units, altitude, hold lives, rush, power cap, hands;
optional fields present or not), read by the program's own reader, with invented sales. Its days are played
by the engine with the paths of a morning plan (``--full``: those of the board) and every fault a cook would
see is counted. Exits with 1 where a property that must always hold does not.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections import Counter
from dataclasses import dataclass, replace
from itertools import combinations
from pathlib import Path
from time import process_time

import numpy as np

from benchmarks.practice_kitchens import bench_of
from frywright.model.kitchen import Kitchen
from frywright.plan.advice import Advice, advise, outlook, promise
from frywright.plan.check import broken_rules
from frywright.plan.live import Happening, State, What, state_of
from frywright.plan.model import Day, Order, Plan
from frywright.plan.replay import Look, Replay, draw_days, replay
from frywright.plan.stock import first_out
from frywright.rooms.day.advised import advised
from frywright.rooms.day.day import Bench
from frywright.rooms.day.limits import unplanned

NEVER = (
    "rule broken",
    "cannot be sold before the close",
    "filter turn before it is half due",
    "small load beside another of the same product",
    "heated for nothing",
    "neither cooked nor said why",
    "order broken that could be kept",
    "advice turned around within a minute",
    "free fryer beside an empty shelf, 15 min",
)
IDLE = NEVER[-1]
SAID = {"too_large", "dear", "hours", "hands", "power"}
"""Reasons to wait beside an empty shelf that a crew can check: see :mod:`frywright.plan.short`."""
"""Faults that must not happen at all; the others are counted. A spell beside an empty shelf is none where the
board says, of that product, a reason that can be checked.
"""
LEFT_FRAC, IDLE_SLOTS = 0.25, 3
KEPT_FRAC = 0.9
"""A load of which less than a quarter can be sold; short for three slots beside a free fryer; a promise that
was said to hold on nine days of ten holds on so many.
"""


# ---------------------------------------------------------------- what a cook would see


@dataclass(frozen=True, slots=True, kw_only=True)
class Played:
    """One played day: its plan, what was asked for, and the shelf (left, missed, thrown; item; slot)."""

    plan: Plan
    asked: np.ndarray
    shelf: np.ndarray


def faults(day: Day, one: Played) -> Counter[str]:
    """Faults of a day by name."""
    found: Counter[str] = Counter()
    found["rule broken"] += len(broken_rules(day, one.plan))
    found["cannot be sold before the close"] += _unsold(day, one)
    found["filter turn before it is half due"] += _early_turns(day, one.plan)
    found["small load beside another of the same product"] += _split(day, one.plan)
    found[IDLE] += len(idle_spells(day, one))
    return +found


def _unsold(day: Day, one: Played) -> int:
    """Late loads of which not a quarter would sell before the close even if guests came half as often again
    as expected, what stands there going first.
    """
    found, busy = 0, np.cumsum(np.pad(1.5 * day.mean_n, ((0, 0), (1, 0))), axis=1)
    for drop in one.plan.drops:
        item, i = day.items[drop.item], drop.item
        load = item.loads[drop.load]
        lift = drop.slot + load.cook_slots_count
        if not day.slots_count - item.hold_slots_count <= lift < day.slots_count:
            continue
        path = one.asked[i].copy()
        later = np.floor(busy[i] - busy[i, drop.slot] + 0.5)[drop.slot + 1 :]
        path[drop.slot :] = np.diff(later, prepend=0) + day.firm_n[i, drop.slot :]
        made = np.zeros((2, day.slots_count), dtype=int)
        for d in one.plan.drops:
            if d.item == i and (d.slot < drop.slot or d is drop):
                size = item.loads[d.load]
                made[int(d is drop) :, d.slot + size.cook_slots_count] += size.units_count
        without, sold = first_out(made, np.stack([path, path]), item.hold_slots_count).sold.sum(axis=1)
        found += bool(sold - without < LEFT_FRAC * load.units_count)
    return found


def _early_turns(day: Day, plan: Plan) -> int:
    found = 0
    for fryer, slot in plan.filters:
        last = max((t for f, t in plan.filters if f == fryer and t < slot), default=-1)
        loads = sum(d.fryer == fryer and last < d.slot < slot for d in plan.drops)
        found += 2 * loads < day.filter_every_count - 1
    return found


def _split(day: Day, plan: Plan) -> int:
    """Loads begun beside one of the same product that could have been larger."""
    found, before = 0, {}  # type: ignore[var-annotated]
    for drop in plan.drops:
        item = day.items[drop.item]
        first = before.setdefault((drop.slot, drop.item), drop)
        if first is not drop:
            most = max(x.units_count for x in item.loads if first.fryer in x.fryers)
            found += item.loads[first.load].units_count < most
    return found


def idle_spells(day: Day, one: Played) -> list[tuple[int, int]]:
    """Spells (product, third slot) in which a product is missed for three slots, none of it is in the oil,
    and a fryer at heat that takes it stands free and filtered, with hands to spare.
    """
    found = []
    busy, since = _busy(day, one.plan)
    hands = Counter(d.slot for d in one.plan.drops) + Counter(t for _, t in one.plan.filters)
    hands += Counter(d.slot + day.items[d.item].loads[d.load].cook_slots_count for d in one.plan.drops)
    for i, item in enumerate(day.items):
        coming = np.zeros(day.slots_count, dtype=bool)
        for drop in one.plan.drops:
            if drop.item == i:
                coming[drop.slot : drop.slot + item.loads[drop.load].cook_slots_count + 1] = True
        small = item.loads[0]
        spell = 0
        for t in range(day.slots_count - small.cook_slots_count - 1):
            hold = day.mean_n[i, t : t + small.cook_slots_count + item.hold_slots_count].sum()
            spare = max(hands[t], hands[t + small.cook_slots_count]) < day.hands_count
            free = spare and any(
                not busy[f, t]
                and since[f, t] < day.filter_every_count
                and day.window(f)[0] <= t < day.window(f)[1] - small.cook_slots_count
                for f in item.fryers
            )
            missing = one.shelf[1, i, t] > 0 and not coming[t] and hold >= small.units_count
            spell = spell + 1 if missing and free else 0
            if spell == IDLE_SLOTS:
                found.append((i, t))
    return found


def answers(bench: Bench, one: Played, spell: tuple[int, int]) -> str:
    """What the board, looking with all its paths, says in the slots of a spell: ``used`` where it has
    something done in every free fryer of the product, or a load of it put in, so that the spell is one of the
    plan's few paths only; the reason it gives for waiting, said of this product, where it gives one in every
    slot that begins with an empty shelf; else nothing. A fryer whose filter turn is due is not free.
    """
    (item, last), day = spell, bench.day
    kinds = set()
    for t in range(last - IDLE_SLOTS + 1, last + 1):
        state = state_of(day, told(day, one.plan, t - 0.1), float(t), one.asked)
        shown = [a for a in advise(day, state, bench.par, bench.look) if a.reason.kind != "blocked"]
        shown = [a for a in shown if a.fryer in day.items[item].fryers]
        waits = [(a.reason, *a.also) for a in shown if a.kind == "wait"]
        if shown and (not waits or any(a.item == item for a in shown)):
            return "used"
        if state.shelf(item) > 0:  # when the board was asked the shelf was not empty yet
            continue
        name = day.items[item].name
        kinds |= {next((r.kind for r in said if r.values.get("product") == name), "") for said in waits}
    return " or ".join(sorted(kinds)) if kinds and kinds <= SAID else ""


def _busy(day: Day, plan: Plan) -> tuple[np.ndarray, np.ndarray]:
    busy = np.zeros((day.fryers_count, day.slots_count), dtype=bool)
    since = np.zeros((day.fryers_count, day.slots_count), dtype=int)
    for drop in plan.drops:
        load = day.items[drop.item].loads[drop.load]
        busy[drop.fryer, drop.slot : drop.slot + load.cook_slots_count + load.recovery_slots_count] = True
        since[drop.fryer, drop.slot + 1 :] += 1
    for fryer, slot in sorted(plan.filters, key=lambda x: x[1]):
        busy[fryer, slot : slot + day.filter_slots_count] = True
        since[fryer, slot + 1 :] -= since[fryer, slot]
    return busy, since


def unsaid(kitchen: Kitchen, bench: Bench, played: Replay) -> Counter[str]:
    """Over all days of a kitchen: fryers at heat that are never used, products asked for that are neither
    cooked nor said why.
    """
    found: Counter[str] = Counter()
    used = {d.fryer for plan in played.plans for d in plan.drops}
    low_high = [bench.day.window(f) for f in range(bench.day.fryers_count)]
    found["heated for nothing"] += sum(a < b and f not in used for f, (a, b) in enumerate(low_high))
    cooked = {d.item for plan in played.plans for d in plan.drops}
    said = unplanned(bench, kitchen, outlook(bench.day, None, bench.par, paths=2))
    said += [str(note.values.get("product", "")) for note in bench.notes]
    for i, item in enumerate(bench.day.items):
        told = any(item.name in text for text in said)
        found["neither cooked nor said why"] += (
            i not in cooked and bench.day.mean_n[i].sum() >= 0.5 and not told
        )
    return +found


def with_orders(bench: Bench, rng: np.random.Generator) -> Bench:
    """The bench with up to two orders that its own answer says can be promised."""
    day, orders = bench.day, []  # type: ignore[var-annotated]
    state = State(now_n=0.0, since=[0] * day.fryers_count, sold_n=np.full(day.mean_n.shape, np.nan))
    for _ in range(2):
        i = int(rng.integers(len(day.items)))
        slot = int(rng.integers(day.slots_count // 4, day.slots_count - 6))
        units = int(rng.integers(1, 2 * day.items[i].loads[-1].units_count + 1))
        knows = replace(day, orders=tuple(orders))
        if promise(knows, state, bench.par, (i, slot, units), paths=60).feasible:
            orders.append(Order(item=i, slot=slot, units_count=units))
    return replace(bench, day=replace(day, orders=tuple(orders)))


def kept(day: Day, asked: np.ndarray, shelf: np.ndarray) -> tuple[int, int]:
    """Promised orders that were there whole, and all of them, over days."""
    good = 0
    for order in day.orders:
        firm = day.firm_n[order.item, order.slot]
        sold = asked[:, order.item, order.slot] - shelf[:, 1, order.item, order.slot]
        good += int((sold >= firm).sum())
    return good, len(day.orders) * len(asked)


def told(day: Day, plan: Plan, until: float) -> list[Happening]:
    """What a crew that follows a plan has told by a moment."""
    found = []
    for drop in plan.drops:
        values = {"fryer": drop.fryer, "item": drop.item, "load": drop.load}
        lift = drop.slot + day.items[drop.item].loads[drop.load].cook_slots_count
        found.append(Happening(what=What.DROP, at_n=drop.slot + 0.02, **values))
        found.append(Happening(what=What.LIFT, at_n=lift, fryer=drop.fryer))
    found += [Happening(what=What.FILTER, at_n=t + 0.02, fryer=f) for f, t in plan.filters]
    return sorted((h for h in found if h.at_n <= until), key=lambda h: h.at_n)


def contradictions(bench: Bench, one: Played, moments: list[int]) -> np.ndarray:
    """A board looked at every ten seconds of a minute around a mark of the clock at which sales come in, with
    nothing done: fryers whose advice turned within the minute; those whose advice would have turned had
    nothing been advised before; and all that were asked for.
    """
    day, found = bench.day, np.zeros(3, dtype=int)
    for slot in moments:
        events = told(day, one.plan, slot - 0.1)
        states = [state_of(day, events, slot + part, one.asked) for part in np.linspace(-0.099, 0.099, 7)]
        shown = [{a.fryer: a for a in advised(bench, state, day, slot)} for state in states]
        anew = [{a.fryer: a for a in advise(day, states[n], bench.par, bench.look)} for n in (0, -1)]
        pairs = [(x[f], y[f]) for x, y in combinations(shown, 2) for f in x.keys() & y.keys()]
        found[0] += len({x.fryer for x, y in pairs if _differs(x, y)})
        found[1] += sum(_differs(anew[0][f], anew[1][f]) for f in anew[0].keys() & anew[1].keys())
        found[2] += len(anew[0].keys() & anew[1].keys())
    return found


def _differs(one: Advice, other: Advice) -> bool:
    """Whether two pieces of advice pull in different directions; to wait and then to act do not."""
    return one.kind != "wait" and (one.kind, one.item) != (other.kind, other.item)


# ---------------------------------------------------------------- all of it


@dataclass(frozen=True, slots=True, kw_only=True)
class Shop:
    """What a kitchen's days showed."""

    words: str
    faults: Counter[str]
    days: int
    kept: tuple[int, int]
    changed: tuple[int, ...]


def _judged(bench: Bench, one: Played) -> Counter[str]:
    """Faults of a day; spells beside an empty shelf told apart by what the board says of them."""
    found = faults(bench.day, one)
    for spell in idle_spells(bench.day, one):
        said = answers(bench, one, spell)
        if said:
            found[IDLE] -= 1
            found[
                f"empty shelf: {'the board uses the fryer' if said == 'used' else 'said why, ' + said}"
            ] += 1
    return +found


def shop(seed: int, days: int, full: bool, folder: Path) -> Shop:
    """One kitchen and its days, half of them with promised orders."""
    kitchen, bench = bench_of(seed, folder)
    fryers = bench.day.fryers_count
    look = Look.for_bank(bench.day) if full else Look.for_plan(bench.day)
    rng, found, good = np.random.default_rng(seed), Counter[str](), np.zeros(2, dtype=int)
    parts, changed = [], np.zeros(3, dtype=int)
    for n, part in enumerate((bench, with_orders(bench, rng))):
        count = (days + n) // 2
        asked = draw_days(part.day, count, 50_000 + 10 * seed + n)
        played = replay(part.day, asked, part.par, look)
        assert played.shelf is not None
        for d, plan in enumerate(played.plans):
            one = Played(plan=plan, asked=asked[d], shelf=played.shelf[d])
            found += _judged(part, one)
        parts.append(played)
        good += kept(part.day, asked, played.shelf)
        if count:
            one = Played(plan=played.plans[0], asked=asked[0], shelf=played.shelf[0])
            moments = sorted(set(rng.integers(4, part.day.slots_count - 4, 6).tolist()))
            changed += contradictions(part, one, moments)
    found += unsaid(kitchen, bench, parts[0])
    found["advice turned around within a minute"] += int(changed[0])
    if good[1] and good[0] / good[1] < KEPT_FRAC - 1.645 * np.sqrt(KEPT_FRAC * (1 - KEPT_FRAC) / good[1]):
        found["order broken that could be kept"] += 1
    price = parts[0].price
    words = (
        f"kitchen {seed}: {fryers} fryers, {len(bench.day.items)} products, {bench.day.slots_count} slots,"
        f" served {100 * price.fill_frac:.0f} %, thrown away {100 * price.waste_frac:.0f} %"
    )
    return Shop(
        words=words,
        faults=+found,
        days=days,
        kept=(int(good[0]), int(good[1])),
        changed=tuple(changed.tolist()),
    )


def main() -> None:
    """Play and print."""
    words = argparse.ArgumentParser(prog="python -m benchmarks.practice", description=__doc__)
    words.add_argument("--days", type=int, default=1000)
    words.add_argument("--kitchens", type=int, default=20)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--full", action="store_true", help="the paths of the board")
    asked = words.parse_args()
    whole, good, changed, start = (
        Counter[str](),
        np.zeros(2, dtype=int),
        np.zeros(3, dtype=int),
        process_time(),
    )
    each = -(-asked.days // asked.kitchens)
    with tempfile.TemporaryDirectory() as folder:
        for seed in range(asked.seed, asked.seed + asked.kitchens):
            one = shop(seed, each, asked.full, Path(folder))
            sys.stdout.write(f"{one.words}; {dict(one.faults) or 'no fault'}; orders {one.kept}\n")
            sys.stdout.flush()
            whole += one.faults
            good += one.kept
            changed += one.changed
    sys.stdout.write(
        f"{each * asked.kitchens} days on {asked.kitchens} kitchens, {process_time() - start:.0f} s CPU:"
        f" {dict(whole) or 'no fault'}; orders kept {good[0]} of {good[1]}; advice turned around within a"
        f" minute {changed[0]} of {changed[2]}; it would have at a mark of the clock, had none been given"
        f" before, {changed[1]}\n"
    )
    sys.exit(1 if any(whole[name] for name in NEVER) else 0)


if __name__ == "__main__":
    main()
