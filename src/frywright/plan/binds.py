"""What binds a day: what longer holds, smaller loads, one more fryer, more hands or fewer filter turns would
bring, each tried on the same drawn days with the rule tuned for it; and the rule in pieces.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import PARTS, Par, Replay, Rule, draw_days, given, replay_par

GOOD_FILL_FRAC, GOOD_WASTE_FRAC = 0.95, 0.10
"""What a kitchen aims at: served from the shelf, and thrown away (project's own aim)."""
LEAST_CHANGE_FRAC = 0.005
"""A change that moves neither by this share is not worth a line."""
JUDGE_SEED, DAYS = 32, 200


@dataclass(frozen=True, slots=True, kw_only=True)
class Lever:
    """One change: what it is, and what it would bring (change of shares and of money a day), each with half
    its 95 % interval over the same drawn days.
    """

    what: str
    fill_frac: float
    waste_frac: float
    money: float
    fill_half_width_frac: float
    waste_half_width_frac: float
    half_width_money: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Binds:
    """Shares of a day by the rule, and the levers that move them, the best first."""

    fill_frac: float
    waste_frac: float
    levers: tuple[Lever, ...]

    @property
    def good(self) -> bool:
        """Whether the day is as good as a kitchen aims at."""
        return self.fill_frac >= GOOD_FILL_FRAC and self.waste_frac <= GOOD_WASTE_FRAC


def binds(day: Day, rule: Rule, tune: Callable[[Day], tuple[Day, Rule]], days: int = DAYS) -> Binds:
    """What binds a day, tried on drawn days. ``tune`` gives a changed day its fryers' hours and its rule as
    the day was given its own, so that what is promised is what the kitchen gets once it has changed.
    """
    judged = draw_days(day, days, JUDGE_SEED)
    base = replay_par(day, judged, rule)
    levers = []
    for what, changed in _changes(day):
        if changed is None:
            continue
        other, own = tune(changed)
        lever = compared(what, base, replay_par(other, judged, own))
        moves = max(abs(lever.fill_frac), abs(lever.waste_frac)) >= LEAST_CHANGE_FRAC
        if lever.money + lever.half_width_money < 0 and moves:
            levers.append(lever)
    levers.sort(key=lambda lever: lever.money)
    return Binds(fill_frac=base.price.fill_frac, waste_frac=base.price.waste_frac, levers=tuple(levers))


def compared(what: str, here: Replay, there: Replay) -> Lever:
    """What a change brings on the same days, the shares over all of them."""
    fills, wastes = [], []
    for played in (here, there):
        sold, short, thrown = (played.parts_money[:, n] for n in (3, 4, 5))
        fills.append((sold, sold + short))
        wastes.append((thrown, sold + thrown))
    fill, fill_half = _change(*fills)
    waste, waste_half = _change(*wastes)
    money = there.cost_money - here.cost_money
    return Lever(
        what=what,
        fill_frac=fill,
        waste_frac=waste,
        money=float(money.mean()),
        fill_half_width_frac=fill_half,
        waste_half_width_frac=waste_half,
        half_width_money=_half(money),
    )


Share = tuple[NDArray[np.float64], NDArray[np.float64]]


def _change(here: Share, there: Share) -> tuple[float, float]:
    """Change of a share (part and whole by day) between two replays, and half its 95 % interval: a ratio of
    sums, its error by the day's deviations from it (the usual first-order form).
    """
    shares = [float(part.sum() / max(whole.sum(), 1e-9)) for part, whole in (here, there)]
    off = [
        (part - share * whole) / max(whole.mean(), 1e-9)
        for (part, whole), share in zip((here, there), shares, strict=True)
    ]
    return shares[1] - shares[0], _half(off[1] - off[0])


def _half(values: NDArray[np.float64]) -> float:
    return float(1.96 * values.std(ddof=1) / np.sqrt(len(values)))


def _changes(day: Day) -> list[tuple[str, Day | None]]:
    """Days with one thing changed each; None where it cannot be."""
    longest = max(item.hold_slots_count for item in day.items)
    return [
        ("Hold lives half as long again", _held(day) if 1.5 * longest <= day.slots_count else None),
        ("A smallest load half as large", replace(day, items=tuple(_halved(i) for i in day.items))),
        ("One more fryer, as the one asked for most", _more_fryers(day)),
        ("One more person at the fryers", replace(day, hands_count=day.hands_count + 1)),
        ("Half as many filter turns", replace(day, filter_every_count=2 * day.filter_every_count)),
        ("Guests who come evenly, not in groups", _even(day)),
    ]


def _held(day: Day) -> Day:
    items = (replace(i, hold_slots_count=round(1.5 * i.hold_slots_count)) for i in day.items)
    return replace(day, items=tuple(items))


def _halved(item: Item) -> Item:
    """The product with a load of half its smallest size before the others."""
    first = item.loads[0]
    half = max(1, first.units_count // 2)
    own: list[LoadSize] = [
        replace(load, units_count=half) for load in item.loads if load.units_count == first.units_count
    ]
    return replace(item, loads=(*own, *item.loads))


def _more_fryers(day: Day) -> Day:
    """A fryer more that takes what the fryer with the most products takes."""
    counts = [sum(f in item.fryers for item in day.items) for f in range(day.fryers_count)]
    like, new = int(np.argmax(counts)), day.fryers_count
    items = tuple(
        replace(
            item,
            loads=tuple(
                replace(load, fryers=(*load.fryers, new)) if like in load.fryers else load
                for load in item.loads
            ),
        )
        for item in day.items
    )
    return replace(
        day,
        items=items,
        fryers_count=new + 1,
        up=(*day.up, day.window(like)) if day.up else (),
        power_w=(*day.power_w, day.power_w[like]) if day.power_w else (),
    )


def _even(day: Day) -> Day | None:
    """The day with demand as even as single guests; None where it is so already."""
    if max(item.spread_n for item in day.items) < 2.0:
        return None
    return replace(day, items=tuple(replace(item, spread_n=1.0) for item in day.items))


@dataclass(frozen=True, slots=True, kw_only=True)
class Call:
    """The rule of a product in a part of the day: drop when fewer than ``below_n`` are on the shelf or in the
    oil, and fill up to ``fill_n``.
    """

    item: int
    part: int
    below_n: int
    fill_n: int


def calls(day: Day, par: Par | Rule) -> list[Call]:
    """The rule in pieces, at the busiest slot of every part of the day and the forecast's level."""
    rules = given(day, par)
    table, ahead, parts, cooks = rules[12], rules[5], rules[13], rules[15]
    found = []
    for i, item in enumerate(day.items):
        for q in range(PARTS):
            slots = np.flatnonzero(parts == q)
            lifts = np.minimum(slots + cooks[i], day.slots_count)

            def aim(
                cover: float, z: float, i: int = i, s: np.ndarray = slots, e: np.ndarray = lifts
            ) -> float:
                ends = np.minimum(e + int(cover), day.slots_count)
                mean = ahead[i, ends] - ahead[i, e]
                until = ahead[i, e] - ahead[i, s]
                return float((mean + z * np.sqrt(day.items[i].spread_n * mean) + until).max())

            low = aim(table[0, q, i], table[1, q, i]) - table[2, q, i] * item.loads[0].units_count
            fill = aim(table[3, q, i], table[4, q, i])
            below = max(0, round(low))
            found.append(Call(item=i, part=q, below_n=below, fill_n=max(below, round(fill))))
    return found
