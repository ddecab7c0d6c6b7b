"""What binds a day: what longer holds, smaller loads, one more fryer, more hands or fewer filter turns would
bring, each tried on the same drawn days with the rule tuned for it; and the rule in pieces.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import PARTS, Par, Rule, draw_days, given, replay_par
from frywright.plan.tune import tuned, tuned_rule

GOOD_FILL_FRAC, GOOD_WASTE_FRAC = 0.95, 0.10
"""What a kitchen aims at: served from the shelf, and thrown away (project's own aim)."""
LEAST_CHANGE_FRAC = 0.005
"""A change that moves neither by this share is not worth a line."""
TUNE_SEED, JUDGE_SEED, DAYS = 31, 32, 60


@dataclass(frozen=True, slots=True, kw_only=True)
class Lever:
    """One change: what it is, and what it would bring (change of shares and of money a day)."""

    what: str
    fill_frac: float
    waste_frac: float
    money: float


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


def binds(day: Day, rule: Rule, days: int = DAYS) -> Binds:
    """What binds a day, tried on drawn days."""
    judged = draw_days(day, days, JUDGE_SEED)
    drawn = draw_days(day, days, TUNE_SEED)
    base = replay_par(day, judged, rule)
    levers = []
    for what, changed in _changes(day):
        if changed is None:
            continue
        other = tuned(changed, drawn, 1)
        better = _cost(changed, drawn, other) < _cost(changed, drawn, rule)
        start: Par | Rule = other if better else rule
        there = replay_par(changed, judged, tuned_rule(changed, drawn, start, 1))
        fill, waste = (
            there.price.fill_frac - base.price.fill_frac,
            there.price.waste_frac - base.price.waste_frac,
        )
        money = float((there.cost_money - base.cost_money).mean())
        if money < 0 and max(abs(fill), abs(waste)) >= LEAST_CHANGE_FRAC:
            levers.append(Lever(what=what, fill_frac=fill, waste_frac=waste, money=money))
    levers.sort(key=lambda lever: lever.money)
    return Binds(fill_frac=base.price.fill_frac, waste_frac=base.price.waste_frac, levers=tuple(levers))


def _cost(day: Day, days: NDArray[np.int64], rule: Par | Rule) -> float:
    return float(replay_par(day, days, rule).cost_money.mean())


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
