"""Does a plan keep the rules, and what does it cost? Independent of everything that makes plans."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from frywright.model.findings import Problem
from frywright.plan.model import Day, Plan
from frywright.plan.stock import first_out


@dataclass(frozen=True, slots=True, kw_only=True)
class Price:
    """Mean money of a plan over demand paths, and its parts."""

    total_money: float
    batches_money: float
    short_money: float
    waste_money: float
    sold_n: float
    short_n: float
    waste_n: float


def broken_rules(day: Day, plan: Plan) -> list[Problem]:
    """Every rule a plan breaks; empty when it keeps them all."""
    problems: list[Problem] = []

    def tell(what: str, remedy: str) -> None:
        problems.append(Problem(what=what, remedy=remedy))

    busy: dict[int, list[tuple[int, int, str]]] = {f: [] for f in range(day.fryers_count)}
    hands: Counter[int] = Counter()
    for drop in plan.drops:
        place = f"drop in slot {drop.slot}"
        if not 0 <= drop.fryer < day.fryers_count or not 0 <= drop.item < len(day.items):
            tell(f"{place}: no such fryer or product", "Name one of the day.")
            continue
        item = day.items[drop.item]
        if not 0 <= drop.load < len(item.loads):
            tell(f"{place}: {item.name} has no such load", "Choose a load proven for it.")
            continue
        if drop.fryer not in item.fryers:
            tell(f"{place}: {item.name} may not go into fryer {drop.fryer}", "Choose a fryer with its oil and program.")
        cook = item.loads[drop.load].cook_slots_count
        if drop.slot < 0 or drop.slot + cook >= day.slots_count:
            tell(f"{place}: {item.name} would be lifted after the close", "Drop earlier or not at all.")
        busy[drop.fryer].append((drop.slot, drop.slot + cook + item.recovery_slots_count, "drop"))
        hands[drop.slot] += 1
        hands[drop.slot + cook] += 1
    for fryer, slot in plan.filters:
        if not 0 <= fryer < day.fryers_count or not 0 <= slot < day.slots_count:
            tell(f"filter turn in slot {slot}: no such fryer or slot", "Name one of the day.")
            continue
        busy[fryer].append((slot, slot + day.filter_slots_count, "filter"))
        hands[slot] += 1
    for slot, count in sorted(hands.items()):
        if count > day.hands_count:
            tell(f"slot {slot} needs {count} actions of {day.hands_count}", "Stagger drops and lifts.")
    for fryer, times in busy.items():
        since = 0
        for n, (start, _, kind) in enumerate(sorted(times)):
            if n and start < sorted(times)[n - 1][1]:
                tell(f"fryer {fryer} is still busy in slot {start}", "Wait until it is back at heat.")
            since = 0 if kind == "filter" else since + 1
            if since > day.filter_every_count:
                tell(f"fryer {fryer} has {since} loads without a filter turn by slot {start}", "Filter first.")
    return problems


def price(day: Day, plan: Plan, demand: ArrayLike) -> Price:
    """Mean cost of a plan over demand paths (scenario, item, slot)."""
    asked = np.asarray(demand, dtype=np.int64)
    made = np.zeros((len(day.items), day.slots_count), dtype=np.int64)
    batches = 0.0
    for drop in plan.drops:
        load = day.items[drop.item].loads[drop.load]
        made[drop.item, drop.slot + load.cook_slots_count] += load.units_count
        batches += day.items[drop.item].batch_money
    parts = np.zeros(5)
    for i, item in enumerate(day.items):
        shelf = first_out(made[i], asked[:, i], item.hold_slots_count)
        sold, short, waste = (float(x.sum(axis=1).mean()) for x in (shelf.sold, shelf.short, shelf.wasted))
        parts += (item.short_money * short, item.waste_money * waste, sold, short, waste)
    return Price(
        total_money=batches + parts[0] + parts[1], batches_money=batches, short_money=parts[0], waste_money=parts[1],
        sold_n=parts[2], short_n=parts[3], waste_n=parts[4],
    )  # fmt: skip
