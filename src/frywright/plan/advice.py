"""What to do now, the rest of the day, and whether an order can be promised, from a state of the day."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from math import ceil, floor, inf
from typing import Any

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError, Phrase
from frywright.model.findings import Note
from frywright.plan import engine
from frywright.plan.live import State
from frywright.plan.model import Day, Order, Plan
from frywright.plan.reason import reasons_of
from frywright.plan.replay import KEEP_FRAC, Look, Par, Rule, given, plan_of
from frywright.plan.short import load_for

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class Advice:
    """What to do in one fryer now. ``kind`` is drop, filter or wait; ``gain_money`` is expected over the
    order-up-to rule's own action. Beside empty shelves ``also`` says of each further product why none goes
    in.
    """

    fryer: int
    kind: str
    item: int = -1
    load: int = -1
    gain_money: float = 0.0
    reason: Note
    also: tuple[Note, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook:
    """The rest of the day: the plan along the expected path, and bands (share, item, slot) of the shelf;
    short and waste a product.
    """

    plan: Plan
    shelf_n: Array
    shares_frac: tuple[float, ...]
    short_n: Array  # (item, slot) mean
    waste_n: Array  # (item,)
    fill_frac: float
    waste_frac: float
    rest_money: float
    sd_money: float
    last_drop: tuple[int, ...]


def bank_now(day: Day, state: State) -> Day:
    """The day with the fryers as they are: what is down stays down, what comes back does so when it is at
    heat.
    """
    up = []
    for f in range(day.fryers_count):
        low, high = day.window(f)
        if f in state.down:
            low = high = day.slots_count
        elif f in state.back_n:
            low = max(low, ceil(state.back_n[f]))
        up.append((min(low, day.slots_count), high))
    return replace(day, up=tuple(up))


def rules_now(today: Day, state: State, par: Par | Rule) -> tuple[Any, ...]:
    """The engine's arrays for the bank as it is; what is out may go into no fryer."""
    rules = given(today, par)
    for item in state.out:
        rules[1][item] = False
    return rules


def level_of(day: Day, state: State) -> float:
    """Level of the day by what was sold so far: 1 is the forecast."""
    prior, belief = 1.0 / day.level_cv_frac**2, belief_of(day, state, _slot(day, state))
    return float((prior + belief[0, 0]) / (prior + belief[1, 0]))


def _slot(day: Day, state: State) -> int:
    return min(max(int(state.now_n), 0), day.slots_count - 1)


def belief_of(day: Day, state: State, t: int) -> Array:
    """What was seen and what was expected up to slot ``t``, over their spread: of all products, then of each.

    A slot is known up to the last in which anything was sold; nothing sold in it is a sale of none. Where the
    shelf ran bare the lost sales are taken as expected.
    """
    belief = np.zeros((2, len(day.items) + 1))
    told = np.isfinite(state.sold_n)
    known = int(np.flatnonzero(told.any(axis=0)).max(initial=-1)) + 1
    prior, spreads_n = 1.0 / day.level_cv_frac**2, day.spreads_n
    sold = np.maximum(np.where(told, state.sold_n, 0.0) - day.firm_n, 0.0) if known else state.sold_n
    each = np.stack([sold, day.mean_n])[:, :, :known].transpose(2, 0, 1) / spreads_n
    whole = each.sum(axis=2)
    ran_bare = np.logical_or.reduce(state.bare if state.bare.size else np.zeros_like(told), axis=0)
    for s in range(t):
        belief *= KEEP_FRAC
        if s >= known:
            continue
        both, all_n = each[s], whole[s]
        if ran_bare[s]:
            expected, level = day.mean_n[:, s], (prior + belief[0, 0]) / (prior + belief[1, 0])
            lost = np.where(state.bare[:, s], np.maximum(sold[:, s], level * expected), sold[:, s])
            both = np.stack([lost, expected]) / spreads_n
            all_n = both.sum(axis=1)
        belief[:, 1:] += both
        belief[:, 0] += all_n
    return belief


def from_now(day: Day, state: State) -> Day:
    """The day in slots that start at this moment, so that what is decided now is not put off to the next
    mark of the clock.
    """
    part = _part(day, state)
    if part < 1e-6:
        return day
    later = np.concatenate([day.mean_n[:, 1:], np.zeros((len(day.items), 1))], axis=1)
    windows = tuple(day.window(f) for f in range(day.fryers_count))
    return replace(
        day,
        mean_n=(1.0 - part) * day.mean_n + part * later,
        up=tuple((a if a <= state.now_n else max(0, ceil(a - part)), b) for a, b in windows),
        rush=tuple((max(0, a - 1), b) for a, b in day.rush),
        orders=tuple(replace(o, slot=max(o.slot - 1, min(o.slot, _slot(day, state)))) for o in day.orders),
    )


def _part(day: Day, state: State) -> float:
    """How far the day is into its slot."""
    return float(state.now_n - _slot(day, state)) if 0 <= state.now_n < day.slots_count else 0.0


def world_of(day: Day, state: State) -> tuple[int, tuple[Array, ...], Array]:
    """Slot, world and belief of :mod:`frywright.plan.engine` from a state; slots start at its moment."""
    t, part = _slot(day, state), _part(day, state)
    world = engine.fresh(given(day, Par()))
    made, stock, fryers, slots, watts, _ = world
    for tray in state.trays:
        if tray.ends_n > state.now_n and tray.left_n >= 1:
            lift = floor(tray.ends_n - day.items[tray.item].hold_slots_count - part + 1e-9)
            made[tray.item, min(max(lift, 0), t)] += int(tray.left_n)
    stock[0] = stock[3] = made.sum(axis=1)
    for load in state.in_oil:
        size = day.items[load.item].loads[load.load]
        lift = min(max(ceil(load.lift_n - part - 1e-9), t + 1), day.slots_count - 1)
        if load.fryer in state.down:
            fryers[0, load.fryer] = day.slots_count
            continue
        made[load.item, lift] += round(load.units_n)
        stock[3, load.item] += round(load.units_n)
        slots[0, lift] += 1
        fryers[0, load.fryer] = lift + size.recovery_slots_count
        if day.power_w:
            watts[t : lift + size.recovery_slots_count] += day.power_w[load.fryer]
    for fryer, at in state.filters:
        done = ceil(at + day.filter_slots_count - part - 1e-9)
        if done > t:
            fryers[0, fryer] = max(fryers[0, fryer], done)
            slots[1, t : min(done, day.slots_count)] += 1
    for out in state.lifts:  # a fryer that heats up again takes no load, and draws its power
        done = ceil(out.ready_n - part - 1e-9)
        if done > t and out.fryer not in state.down:
            fryers[0, out.fryer] = max(fryers[0, out.fryer], done)
            if day.power_w:
                watts[t:done] += day.power_w[out.fryer]
    slots[0, t] += _acts(state, t)
    fryers[1] = state.since
    return t, world, belief_of(day, state, t)


def _acts(state: State, t: int) -> int:
    """What the crew has done since the last mark of the clock."""
    times = [at for _, at in state.drops] + [x.at_n for x in state.lifts] + [at for _, at in state.filters]
    return sum(int(at + 1e-9) == t for at in times)


@dataclass(frozen=True, slots=True, kw_only=True)
class Before:
    """What was advised last, by fryer; in those that are ``firm`` it stands as long as it may be done."""

    advice: Mapping[int, Advice] = field(default_factory=dict)
    firm: frozenset[int] = frozenset()

    def of(self, fryer: int) -> tuple[int, int]:
        """The product and load that stand until others are cheaper beyond doubt."""
        last = self.advice.get(fryer)
        if last is None or last.kind == "wait":
            return engine.NOTHING, 0
        return (last.item, last.load) if last.kind == "drop" else (engine.FILTER, 0)

    def gain(self, fryer: int) -> float:
        """What it was expected to gain over the rule."""
        return self.advice[fryer].gain_money if fryer in self.advice else 0.0


def _until_done(day: Day, firm: frozenset[int]) -> Day:
    """The day with a slot more of heat in fryers whose advice stands, so that it does not turn while the
    planned end of their heat goes by.
    """
    windows = [day.window(f) for f in range(day.fryers_count)]
    more = (min(b + 1, day.slots_count) if f in firm and a < b else b for f, (a, b) in enumerate(windows))
    return replace(day, up=tuple((a, b) for (a, _), b in zip(windows, more, strict=True)))


def advise(
    day: Day, state: State, par: Par | Rule, look: Look | None = None, before: Before | None = None
) -> list[Advice]:
    """What to do now in every fryer that is idle, in the order in which it should be done.

    What was advised before stands unless something else is cheaper beyond doubt.
    """
    before = before or Before()
    look = look or Look.for_bank(day)
    today = from_now(_until_done(bank_now(day, state), before.firm), state)
    rules, (t, world, belief) = rules_now(today, state, par), world_of(today, state)
    mean, scratch, found = np.ascontiguousarray(today.mean_n), engine.fresh(rules), []
    last = min(t + look.horizon_slots_count, today.slots_count)
    dreams = engine.imagine(t, last, look.paths_count, belief, mean, rules, look.seed_count)
    engine.believe(belief, world, rules)
    # what stands firm comes first, so that no other fryer takes its hands
    for n, f in sorted(enumerate(rules[16]), key=lambda place: place[1] not in before.firm):
        low, high = today.window(int(f))
        if world[2][0, f] > t or not low <= t < high:
            continue
        was = before.of(int(f))
        world[2][2:, f] = was
        for z in (inf, look.z_n) if f in before.firm else (look.z_n,):
            where = (n, t, look.horizon_slots_count, z)
            i, k, gain, _ = engine.rollout(where, dreams, world, belief, rules, scratch)
            if (i, k) == was:  # the gain is over what was advised; that one's own stays
                gain = before.gain(int(f)) or gain
                break
        if i == engine.NOTHING and (load := load_for(today, state, world, rules, (int(f), t))):
            (i, k), gain = load, 0.0
        reason, *also = reasons_of(today, state, world, (int(f), t, int(i), int(k)))
        if i > engine.NOTHING and not engine.start(f, t, i, k, world, rules, np.zeros(6)):
            i = engine.NOTHING
        kind = "drop" if i >= 0 else ("filter" if i == engine.FILTER else "wait")
        found.append(
            Advice(
                fryer=int(f),
                kind=kind,
                item=int(i) if i >= 0 else -1,
                load=int(k) if i >= 0 else -1,
                gain_money=float(gain),
                reason=reason,
                also=tuple(also),
            )
        )
    return sorted(found, key=lambda a: ("drop", "filter", "wait").index(a.kind))


def outlook(
    day: Day,
    state: State | None,
    par: Par | Rule,
    look: Look | None = None,
    paths: int = 200,
    shares: tuple[float, ...] = (0.1, 0.5, 0.9),
) -> Outlook:
    """The rest of the day from a state (or from its start): the plan along the expected path, bands over
    imagined paths.

    The bands are played by the order-up-to rule, the plan by the engine.
    """
    look = look or Look.for_plan(day)
    state = state or State(now_n=0.0, since=[0] * day.fryers_count, sold_n=np.full(day.mean_n.shape, np.nan))
    today = bank_now(day, state)
    rules, mean = rules_now(today, state, par), np.ascontiguousarray(today.mean_n)
    t, world, belief = world_of(today, state)
    level = level_of(today, state)
    rows = np.full((day.slots_count * day.fryers_count + 1, 4), -1, dtype=np.int64)
    part, line = np.zeros(6), np.zeros((3, *mean.shape), dtype=np.int64)
    setting = (t, look.paths_count, look.horizon_slots_count, look.z_n, look.seed_count, 0)
    engine.play(
        _whole(level * mean) + day.firm_n,
        mean,
        setting,
        _twin(world),
        belief.copy(),
        rules,
        (rows, line),
        part,
    )
    dreams = engine.imagine(t, today.slots_count, paths, belief, mean, rules, look.seed_count)
    shelf, parts, spare = (
        np.zeros((paths, 3, *mean.shape), dtype=np.int64),
        np.zeros((paths, 6)),
        np.full_like(rows, -1),
    )
    for n in range(paths):
        engine.play(
            dreams[n],
            mean,
            (t, 0, 0, 0.0, 1, 0),
            _twin(world),
            belief.copy(),
            rules,
            (spare, shelf[n]),
            parts[n],
        )
    money = parts[:, :3].sum(axis=1)
    return Outlook(
        plan=plan_of(rows),
        shelf_n=np.quantile(shelf[:, 0], shares, axis=0),
        shares_frac=shares,
        short_n=shelf[:, 1].mean(axis=0),
        waste_n=shelf[:, 2].sum(axis=2).mean(axis=0),
        fill_frac=float(parts[:, 3].sum() / max(parts[:, 3:5].sum(), 1e-9)),
        waste_frac=float(parts[:, 5].sum() / max((parts[:, 3] + parts[:, 5]).sum(), 1e-9)),
        rest_money=float(money.mean()),
        sd_money=float(money.std()),
        last_drop=last_drops(today, level),
    )


def _twin(world: tuple[Array, ...]) -> tuple[Array, ...]:
    return tuple(a.copy() for a in world)


def expected_path(day: Day, level: float = 1.0) -> NDArray[np.int64]:
    """What is expected to be asked for (item, slot), in whole units, with what is promised."""
    return _whole(level * day.mean_n) + day.firm_n


def _whole(mean: Array) -> NDArray[np.int64]:
    """The expected path in whole units: running sums rounded."""
    sums = np.floor(np.cumsum(mean, axis=1) + 0.5)
    return np.ascontiguousarray(np.diff(sums, axis=1, prepend=0.0).astype(np.int64))


def last_drops(day: Day, level: float = 1.0) -> tuple[int, ...]:
    """Last slot in which the smallest load of each product still sells by half before the close; -1 when
    there is none.
    """
    found = []
    for i, item in enumerate(day.items):
        load = item.loads[0]
        ahead = level * np.cumsum(day.mean_n[i, ::-1])[::-1]
        slots = [
            t
            for t in range(day.slots_count - load.cook_slots_count)
            if ahead[t + load.cook_slots_count] >= 0.5 * load.units_count
        ]
        found.append(max(slots, default=-1))
    return tuple(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class Promise:
    """Whether an order can be promised: chance that all of it is there, largest order that keeps ``wanted``
    chance, what it costs the others.
    """

    chance_frac: float
    feasible: bool
    largest_n: int
    others_short_n: float
    first_drop: int
    fryers: tuple[int, ...]


def promise(
    day: Day,
    state: State,
    par: Par | Rule,
    order: tuple[int, int, int],
    wanted: float = 0.9,
    paths: int = 100,
) -> Promise:
    """Can ``order`` (product, slot, units) be promised? Played by the order-up-to rule that knows of the
    order. Raises InputError: a product, slot or size that cannot be.
    """
    item, slot, units = order
    if (
        not 0 <= item < len(day.items)
        or not int(state.now_n) < slot < day.slots_count
        or not 0 < units <= 10_000
    ):
        raise InputError(
            "order",
            Phrase("{count} at slot {slot}", {"count": units, "slot": slot}),
            "1 to 10,000 pieces after now and before the close",
        )
    base = _with_order(day, state, par, (item, slot, 0), paths)
    chance, others, rows = _with_order(day, state, par, order, paths)
    largest, low, high = 0, 0, units
    if chance >= wanted:
        largest = units
    else:
        while high - low > max(1, high // 20):
            middle = (low + high) // 2
            if _with_order(day, state, par, (item, slot, middle), paths)[0] >= wanted:
                low = middle
            else:
                high = middle
        largest = low
    own = [
        d
        for d in plan_of(rows).drops
        if d.item == item
        and d.slot + day.items[item].hold_slots_count >= slot - day.items[item].loads[-1].cook_slots_count
    ]
    own = [d for d in own if d.slot < slot]
    return Promise(
        chance_frac=chance,
        feasible=chance >= wanted,
        largest_n=largest,
        others_short_n=max(0.0, others - base[1]),
        first_drop=min((d.slot for d in own), default=-1),
        fryers=tuple(sorted({d.fryer for d in own})),
    )


def _with_order(
    day: Day, state: State, par: Par | Rule, order: tuple[int, int, int], paths: int
) -> tuple[float, float, NDArray[np.int64]]:
    """Chance that an order is served whole, units others lack, and the log of the expected path."""
    item, slot, units = order
    more = (Order(item=item, slot=slot, units_count=units),) if units else ()
    knows = replace(bank_now(day, state), orders=(*day.orders, *more))
    rules, (t, world, belief) = rules_now(knows, state, par), world_of(day, state)
    mean, firm = np.ascontiguousarray(day.mean_n), knows.firm_n[item, slot]
    dreams = engine.imagine(t, day.slots_count, paths, belief, mean, rules, 1)
    served, short, rows = 0, 0.0, np.full((day.slots_count * day.fryers_count + 1, 4), -1, dtype=np.int64)
    for n in range(paths):
        rows[:] = -1
        shelf = np.zeros((3, *mean.shape), dtype=np.int64)
        engine.play(
            dreams[n],
            mean,
            (t, 0, 0, 0.0, 1, 0),
            _twin(world),
            belief.copy(),
            rules,
            (rows, shelf),
            np.zeros(6),
        )
        missed = max(0, firm - dreams[n, item, slot] + shelf[1, item, slot])  # orders go out first
        served += missed == 0
        short += shelf[1].sum() - missed
    return float(served / paths), float(short / paths), rows
