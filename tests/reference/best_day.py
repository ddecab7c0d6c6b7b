"""The best plan of a day whose demand is known, and a proven bound on it: what no rule can beat.

Used to judge the engine, and to say how much better a seer would have done. Both know every rule of the bank:
filter turns, rushes, windows, power, hands.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.model.errors import InputError, SolveError
from frywright.plan.model import Day, Plan
from frywright.plan.replay import Look, Par, given, plan_of, replay
from tests.reference import best_day_moves as moves

HEAT_MONEY = 4.0
"""First temperature of the annealing: about what one load moves."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bound:
    """What is proven of a day with known demand: no plan costs less than ``least_money``; ``found_money`` is
    the best the solver saw.
    """

    least_money: float
    found_money: float

    @property
    def gap_frac(self) -> float:
        """Share by which the best seen may still be too dear."""
        return (self.found_money - self.least_money) / max(abs(self.found_money), 1e-9)


def without_filters(day: Day) -> Day:
    """The day without the filter rule."""
    return replace(day, filter_every_count=10_000)


def best_plan(day: Day, demand: ArrayLike, passes: int = 2_000_000, seeds: int = 8) -> tuple[Plan, float]:
    """A plan for known demand (item, slot), by looking ahead with full knowledge and annealing from there;
    and its cost.

    Raises
    ------
    InputError
        Demand of another shape.
    """
    asked, rules = _known(day, demand), given(day, Par())
    seer = replace(day, mean_n=np.maximum(asked, 1e-6).astype(float), level_cv_frac=0.01)
    start = replay(
        seer, asked[None], Par(), Look(paths_count=2, horizon_slots_count=day.slots_count, z_n=0.0)
    ).plans[0]
    first = [(d.fryer, d.item, d.load, d.slot) for d in start.drops]
    first += [(f, -1, 0, t) for f, t in start.filters]
    rooms = max(2 * len(first), day.slots_count * day.fryers_count // 3)
    best, least = Plan(), float("inf")
    for seed in range(seeds):
        rows = np.full((rooms, 4), -1, dtype=np.int64)
        for n, row in enumerate(first if seed % 2 == 0 else ()):
            rows[n] = row
        cost = moves.anneal(rows, asked, rules, (passes // seeds, HEAT_MONEY, seed + 1))
        if cost < least:
            best, least = plan_of(rows), float(cost)
    return best, least


def _known(day: Day, demand: ArrayLike) -> NDArray[np.int64]:
    asked = np.ascontiguousarray(demand, dtype=np.int64)
    if asked.shape != day.mean_n.shape or asked.min(initial=0) < 0:
        raise InputError(
            "demand", asked.shape, f"{len(day.items)} items by {day.slots_count} slots, 0 or more"
        )
    return asked


def bound(day: Day, demand: ArrayLike, seconds: float = 60.0) -> Bound:
    """A proven bound for known demand, by mixed-integer programming (HiGHS).

    Loads of a slot are counted, in a bank of equal fryers without filter turns together, else for each fryer;
    sales are flows from the slot of the lift to the slots of its hold life; a flow needs a load behind it.

    Raises
    ------
    SolveError
        The solver gave no bound in the time.
    """
    asked = _known(day, demand)
    model = _solver()
    for option in ("output_flag", "log_to_console"):
        model.setOptionValue(option, False)
    model.setOptionValue("time_limit", float(seconds))
    model.setOptionValue("mip_rel_gap", 1e-4)
    if _equal(day):
        starts: Starts = _loads(model, day, day.fryers_count)
        _bank(model, day, starts, (), day.fryers_count)
    else:
        starts = _each(model, day)
    for i, item in enumerate(day.items):
        _flows(model, day, i, asked[i], starts)
        model.changeObjectiveOffset(model.getObjectiveOffset()[1] + item.short_money * float(asked[i].sum()))
    model.run()
    info = model.getInfo()
    if not np.isfinite(info.mip_dual_bound):
        raise SolveError("The solver proved nothing in the time given; allow more seconds.", info)
    return Bound(least_money=float(info.mip_dual_bound), found_money=float(info.objective_function_value))


def _equal(day: Day) -> bool:
    """Whether all fryers are alike and no filter turn, window or cap comes between."""
    whole = set(range(day.fryers_count))
    alike = all(set(load.fryers) == whole for item in day.items for load in item.loads)
    return alike and day.filter_every_count >= 10_000 and not day.up and day.cap_w == float("inf")


def _solver() -> Any:
    """A solver; its banner, which it writes to the terminal when it is made, is kept from it."""
    import os
    import sys

    import highspy

    sys.stdout.flush()
    kept, nowhere = os.dup(1), os.open(os.devnull, os.O_WRONLY)
    try:
        os.dup2(nowhere, 1)
        return highspy.Highs()
    finally:
        os.dup2(kept, 1)
        os.close(kept)
        os.close(nowhere)


Starts = dict[tuple[int, int, int], Any]
Turns = Sequence[tuple[int, Any]]
"""Slots of filter turns with what counts them."""


def _loads(model: Any, day: Day, most: int, fryer: int | None = None) -> Starts:
    """Whole numbers of loads (item, load, slot), of one fryer or of all; money of a batch and of all its
    units wasted.
    """
    found, (low, high) = {}, day.window(fryer) if fryer is not None else (0, day.slots_count)
    for i, item in enumerate(day.items):
        for k, load in enumerate(item.loads):
            if fryer is not None and fryer not in load.fryers:
                continue
            for t in range(low, min(day.slots_count, high) - load.cook_slots_count):
                money = load.batch_money + item.waste_money * load.units_count
                found[i, k, t] = model.addIntegral(lb=0, ub=most, obj=money)
    return found


def _bank(model: Any, day: Day, starts: Starts, turns: Turns, fryers: int) -> None:
    """Fryers and hands are not in two places."""
    for t in range(day.slots_count):
        busy = [x for s, x in turns if s <= t < s + day.filter_slots_count]
        hands = [x for s, x in turns if s == t]
        for (i, k, s), x in starts.items():
            load = day.items[i].loads[k]
            if s <= t < s + load.cook_slots_count + load.recovery_slots_count:
                busy.append(x)
            if t in (s, s + load.cook_slots_count):
                hands.append(x)
        if busy:
            model.addConstr(sum(busy) <= fryers)
        if hands and fryers == day.fryers_count:
            model.addConstr(sum(hands) <= day.hands_count)


def _each(model: Any, day: Day) -> Starts:
    """Every fryer with its own loads and filter turns; loads of all, by item, load and slot."""
    loads, turns = [], []
    for f in range(day.fryers_count):
        own, clean = _loads(model, day, 1, f), _turns(model, day, f)
        if day.fryers_count > 1:
            _bank(model, day, own, clean, 1)
        _between(model, day, own, clean)
        loads.append(own)
        turns.append(clean)
    whole = {key: sum(own[key] for own in loads if key in own) for key in {k for own in loads for k in own}}
    every = [pair for clean in turns for pair in clean]
    _bank(model, day, whole, every, day.fryers_count)
    for t in range(day.slots_count):
        running = [x for s, x in every if s <= t < s + day.filter_slots_count]
        if running:
            model.addConstr(sum(running) <= day.filters_at_once_count)
        drawn = [
            day.power_w[f] * x
            for f, own in enumerate(loads)
            for (i, k, s), x in own.items()
            if day.power_w and s <= t < s + sum(_slots(day, i, k))
        ]
        if drawn and day.cap_w < float("inf"):
            model.addConstr(sum(drawn) <= day.cap_w)
    return whole


def _slots(day: Day, i: int, k: int) -> tuple[int, int]:
    load = day.items[i].loads[k]
    return load.cook_slots_count, load.recovery_slots_count


def _turns(model: Any, day: Day, fryer: int) -> Turns:
    """Slots in which a fryer may begin a filter turn."""
    low, high = day.window(fryer)
    return [
        (t, model.addIntegral(lb=0, ub=1, obj=day.filter_money))
        for t in range(low, min(high, day.slots_count - day.filter_slots_count + 1))
        if not any(day.in_rush(s) for s in range(t, t + day.filter_slots_count))
    ]


def _between(model: Any, day: Day, own: Starts, turns: Turns) -> None:
    """From any slot to any other a fryer does no more loads than its filter turns between them allow."""
    every = day.filter_every_count
    slots = sorted({t for _, _, t in own})
    for n, low in enumerate(slots):
        for high in slots[n + every :]:
            done = [x for (_, _, t), x in own.items() if low <= t <= high]
            clean = [x for t, x in turns if low < t < high]
            model.addConstr(sum(done) <= every + (every * sum(clean) if clean else 0))


def _flows(model: Any, day: Day, i: int, asked: NDArray[np.int64], starts: Starts) -> None:
    item = day.items[i]
    into: dict[int, list[Any]] = {t: [] for t in range(day.slots_count)}
    for lift in range(day.slots_count):
        behind = [
            (x, item.loads[k].units_count)
            for (n, k, s), x in starts.items()
            if n == i and s + item.loads[k].cook_slots_count == lift
        ]
        if not behind:
            continue
        out, life = [], range(lift, min(lift + item.hold_slots_count, day.slots_count))
        whole = int(asked[life.start : life.stop].sum())
        for t in life:
            if asked[t]:
                flow = model.addVariable(lb=0, ub=float(asked[t]), obj=-(item.short_money + item.waste_money))
                model.addConstr(flow <= sum(float(min(u, asked[t])) * x for x, u in behind))
                out.append(flow)
                into[t].append(flow)
        if out:
            model.addConstr(sum(out) <= sum(float(min(u, whole)) * x for x, u in behind))
    for t, flows in into.items():
        if flows:
            model.addConstr(sum(flows) <= float(asked[t]))
