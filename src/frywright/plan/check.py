"""Does a plan keep the rules, and what does it cost? Independent of everything that makes plans."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import ArrayLike

from frywright.model.errors import Phrase
from frywright.model.findings import Problem
from frywright.plan.model import PROMISE_WEIGHT, Day, Drop, LoadSize, Plan
from frywright.plan.stock import first_out


@dataclass(frozen=True, slots=True, kw_only=True)
class Price:
    """Mean money of a plan over demand paths, and its parts; filter turns count with the batches."""

    total_money: float
    batches_money: float
    short_money: float
    waste_money: float
    sold_n: float
    short_n: float
    waste_n: float

    @property
    def fill_frac(self) -> float:
        """Share of what was asked for that was sold."""
        return self.sold_n / max(self.sold_n + self.short_n, 1e-9)

    @property
    def waste_frac(self) -> float:
        """Share of what was cooked that was thrown away."""
        return self.waste_n / max(self.sold_n + self.waste_n, 1e-9)


Tell = Callable[..., None]


def broken_rules(day: Day, plan: Plan) -> list[Problem]:
    """Every rule a plan breaks; empty when it keeps them all."""
    problems: list[Problem] = []

    def tell(what: str, remedy: str, /, **values: Any) -> None:
        problems.append(Problem(what=what, remedy=remedy, values=values))

    busy: dict[int, list[tuple[int, int, str]]] = {f: [] for f in range(day.fryers_count)}
    hands: Counter[int] = Counter()
    watts: Counter[int] = Counter()
    for drop in plan.drops:
        load = _load(day, drop, tell)
        if load is None:
            continue
        lift = drop.slot + load.cook_slots_count
        busy[drop.fryer].append((drop.slot, lift + load.recovery_slots_count, "drop"))
        hands.update((drop.slot, lift))
        if day.power_w:
            for slot in range(drop.slot, lift + load.recovery_slots_count):
                watts[slot] += int(day.power_w[drop.fryer])
    _filters(day, plan, busy, hands, tell)
    for slot, count in sorted(hands.items()):
        if count > day.hands_count:
            tell(
                "slot {slot} needs {count} actions of {most}",
                "Stagger drops and lifts.",
                slot=slot,
                count=count,
                most=day.hands_count,
            )
    for slot, used in sorted(watts.items()):
        if used > day.cap_w:
            tell(
                "slot {slot} draws {used_w} of {most_w}",
                "Heat fewer fryers at once.",
                slot=slot,
                used_w=float(used),
                most_w=float(day.cap_w),
            )
    for fryer, times in busy.items():
        _one_fryer(day, fryer, sorted(times), tell)
    return problems


def _load(day: Day, drop: Drop, tell: Tell) -> LoadSize | None:
    """The load of a drop, its own rules checked; None where there is no such fryer, product or load."""
    place = Phrase("drop in slot {slot}", {"slot": drop.slot})
    if not 0 <= drop.fryer < day.fryers_count or not 0 <= drop.item < len(day.items):
        tell("{place}: no such fryer or product", "Name one of the day.", place=place)
        return None
    item = day.items[drop.item]
    if not 0 <= drop.load < len(item.loads):
        tell("{place}: {name} has no such load", "Choose a load proven for it.", place=place, name=item.name)
        return None
    load = item.loads[drop.load]
    if drop.fryer not in load.fryers:
        tell(
            "{place}: this load of {name} may not go into fryer {fryer}",
            "Choose a fryer with its oil and program.",
            place=place,
            name=item.name,
            fryer=drop.fryer,
        )
    lift = drop.slot + load.cook_slots_count
    if drop.slot < 0 or lift >= day.slots_count:
        tell(
            "{place}: {name} would be lifted after the close",
            "Drop earlier or not at all.",
            place=place,
            name=item.name,
        )
    start, end = day.window(drop.fryer)
    if drop.slot < start or lift >= end:
        tell(
            "{place}: fryer {fryer} is not at heat",
            "Use it in slots {start} to {end}.",
            place=place,
            fryer=drop.fryer,
            start=start,
            end=end - 1,
        )
    return load


def _filters(
    day: Day, plan: Plan, busy: dict[int, list[tuple[int, int, str]]], hands: Counter[int], tell: Tell
) -> None:
    running: Counter[int] = Counter()
    for fryer, slot in plan.filters:
        if not 0 <= fryer < day.fryers_count or not 0 <= slot < day.slots_count:
            tell("filter turn in slot {slot}: no such fryer or slot", "Name one of the day.", slot=slot)
            continue
        span = range(slot, min(slot + day.filter_slots_count, day.slots_count))
        if any(day.in_rush(s) for s in span):
            tell(
                "filter turn in slot {slot} falls into a rush",
                "No hot-oil move in a rush: filter before or after.",
                slot=slot,
            )
        low, high = day.window(fryer)
        if not low <= slot < high:
            tell(
                "filter turn in slot {slot}: fryer {fryer} is not at heat",
                "Use it in slots {start} to {end}.",
                slot=slot,
                fryer=fryer,
                start=low,
                end=high - 1,
            )
        if slot + day.filter_slots_count > day.slots_count:
            tell(
                "filter turn in slot {slot} would end after the close",
                "Filter earlier, or at the close.",
                slot=slot,
            )
        busy[fryer].append((slot, slot + day.filter_slots_count, "filter"))
        hands[slot] += 1
        running.update(span)
    for slot, count in sorted(running.items()):
        if count > day.filters_at_once_count:
            tell(
                "slot {slot} has {count} filter turns at once",
                "One hot-oil move at a time for each pair of hands.",
                slot=slot,
                count=count,
            )


def _one_fryer(day: Day, fryer: int, times: list[tuple[int, int, str]], tell: Tell) -> None:
    since = 0
    for n, (start, _, kind) in enumerate(times):
        if n and start < times[n - 1][1]:
            tell(
                "fryer {fryer} is still busy in slot {start}",
                "Wait until it is back at heat.",
                fryer=fryer,
                start=start,
            )
        since = 0 if kind == "filter" else since + 1
        if since > day.filter_every_count:
            tell(
                "fryer {fryer} has {since} loads without a filter turn by slot {start}",
                "Filter first.",
                fryer=fryer,
                since=since,
                start=start,
            )


def price(day: Day, plan: Plan, demand: ArrayLike) -> Price:
    """Mean cost of a plan over demand paths (scenario, item, slot)."""
    asked = np.asarray(demand, dtype=np.int64)
    made = np.zeros((len(day.items), day.slots_count), dtype=np.int64)
    batches = day.filter_money * len(plan.filters)
    for drop in plan.drops:
        load = day.items[drop.item].loads[drop.load]
        made[drop.item, drop.slot + load.cook_slots_count] += load.units_count
        batches += load.batch_money
    parts = np.zeros(5)
    for i, item in enumerate(day.items):
        shelf = first_out(made[i], asked[:, i], item.hold_slots_count)
        sold, short, waste = (float(x.sum(axis=1).mean()) for x in (shelf.sold, shelf.short, shelf.wasted))
        broken = np.maximum(day.firm_n[i] - shelf.sold, 0).sum(axis=1).mean()  # promised and not there
        short_money = item.short_money * (short + (PROMISE_WEIGHT - 1.0) * float(broken))
        parts += (short_money, item.waste_money * waste, sold, short, waste)
    short_money, waste_money, sold_n, short_n, waste_n = (float(x) for x in parts)
    return Price(
        total_money=batches + short_money + waste_money,
        batches_money=batches,
        short_money=short_money,
        waste_money=waste_money,
        sold_n=sold_n,
        short_n=short_n,
        waste_n=waste_n,
    )
