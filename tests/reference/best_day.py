"""The best plan of a day whose demand is known, and a proven bound on it: what no rule can beat.

Used to judge the engine, and at the close to say how much better a seer would have done. Filter turns are
left out of both.
"""

from __future__ import annotations

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


def best_plan(day: Day, demand: ArrayLike, passes: int = 2_000_000, seeds: int = 4) -> tuple[Plan, float]:
    """A plan for known demand (item, slot), by looking ahead with full knowledge and annealing from there;
    and its cost.

    Raises
    ------
    InputError
        Demand of another shape, or a day with windows or a power cap (they are not searched).
    """
    asked = _known(day, demand)
    if day.up or day.cap_w < float("inf"):
        raise InputError("day", "windows or a power cap", "one without them")
    free, rules = without_filters(day), given(day, Par())
    seer = replace(free, mean_n=np.maximum(asked, 1e-6).astype(float), level_cv_frac=0.01)
    start = replay(
        seer, asked[None], Par(), Look(paths_count=2, horizon_slots_count=day.slots_count, z_n=0.0)
    ).plans[0]
    rooms = max(2 * len(start.drops), day.slots_count * day.fryers_count // 3)
    best, least = Plan(), float("inf")
    for seed in range(seeds):
        rows = np.full((rooms, 4), -1, dtype=np.int64)
        for n, drop in enumerate(start.drops if seed % 2 == 0 else ()):
            rows[n] = drop.fryer, drop.item, drop.load, drop.slot
        cost = moves.anneal(
            rows, asked, rules[:5], day.hands_count, day.fryers_count, (passes // seeds, HEAT_MONEY, seed + 1)
        )
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
    """A proven bound for a bank of equal fryers and known demand, by mixed-integer programming (HiGHS).

    Loads of a slot are counted, sales are flows from the slot of the lift to the slots of its hold life; a
    flow needs a load behind it.

    Raises
    ------
    InputError
        Fryers that are not equal.
    SolveError
        The solver gave no bound in the time.
    """
    asked = _known(day, demand)
    if any(set(load.fryers) != set(range(day.fryers_count)) for item in day.items for load in item.loads):
        raise InputError("fryers", "unequal", "a bank in which every load may go into every fryer")
    model = _solver()
    for option in ("output_flag", "log_to_console"):
        model.setOptionValue(option, False)
    model.setOptionValue("time_limit", float(seconds))
    model.setOptionValue("mip_rel_gap", 1e-4)
    starts = _loads(model, day)
    _bank(model, day, starts)
    for i, item in enumerate(day.items):
        _flows(model, day, i, asked[i], starts)
        model.changeObjectiveOffset(model.getObjectiveOffset()[1] + item.short_money * float(asked[i].sum()))
    model.run()
    info = model.getInfo()
    if not np.isfinite(info.mip_dual_bound):
        raise SolveError("The solver proved nothing in the time given; allow more seconds.", info)
    return Bound(least_money=float(info.mip_dual_bound), found_money=float(info.objective_function_value))


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


def _loads(model: Any, day: Day) -> Starts:
    """Whole numbers of loads (item, load, slot); money of a batch and of all its units wasted."""
    found = {}
    for i, item in enumerate(day.items):
        for k, load in enumerate(item.loads):
            for t in range(day.slots_count - load.cook_slots_count):
                money = load.batch_money + item.waste_money * load.units_count
                found[i, k, t] = model.addIntegral(lb=0, ub=day.fryers_count, obj=money)
    return found


def _bank(model: Any, day: Day, starts: Starts) -> None:
    for t in range(day.slots_count):
        busy, hands = [], []
        for (i, k, s), x in starts.items():
            load = day.items[i].loads[k]
            if s <= t < s + load.cook_slots_count + load.recovery_slots_count:
                busy.append(x)
            if t in (s, s + load.cook_slots_count):
                hands.append(x)
        if busy:
            model.addConstr(sum(busy) <= day.fryers_count)
        if hands:
            model.addConstr(sum(hands) <= day.hands_count)


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
