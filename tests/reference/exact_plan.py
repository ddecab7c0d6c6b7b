"""Small plans with a proven best answer: constant demand, known demand with a shelf life, capacity of a
bank.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from frywright.model.errors import InputError
from frywright.plan.demand import Demand


@dataclass(frozen=True, slots=True, kw_only=True)
class SteadyBatch:
    """Best batch under constant demand. ``offered`` is false where cooking costs more than not selling."""

    size_n: float
    every_s: float
    waste_frac: float
    offered: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Costs:
    """Money for one batch, one unit too few, one unit thrown away."""

    batch_money: float
    short_money: float
    waste_money: float


def steady_batch(
    demand_per_s: float, hold_s: float, smallest: float, largest: float, costs: Costs
) -> SteadyBatch:
    """Constant demand d and hold life H: Q = min(Q_max, d H); a smallest batch above d H is cooked every H
    and partly wasted, or not offered when d < (K + c_w Q_min) / (H (c_w + c_s)).
    """
    if not demand_per_s > 0 or not hold_s > 0 or not 0 < smallest <= largest:
        raise InputError("demand, hold and batch sizes", "out of order", "above 0, smallest up to largest")
    sells = demand_per_s * hold_s
    if smallest <= sells:
        size = min(largest, sells)
        return SteadyBatch(size_n=size, every_s=size / demand_per_s, waste_frac=0.0, offered=True)
    least = (costs.batch_money + costs.waste_money * smallest) / (
        hold_s * (costs.waste_money + costs.short_money)
    )
    return SteadyBatch(
        size_n=smallest, every_s=hold_s, waste_frac=1.0 - sells / smallest, offered=demand_per_s >= least
    )


def shelf_life_plan(
    demand: Sequence[int], hold: int, batch_cost: float
) -> tuple[float, list[tuple[int, int]]]:
    """Fewest batches for known demand when a batch made in a period serves it and the next ``hold`` - 1.

    f_j = min over j - hold <= i < j of f_i + K [demand in (i, j] > 0] (Wagner and Whitin 1958 with a shelf
    life, from memory). Returns the cost and batches as (period, units).
    """
    if hold < 1:
        raise InputError("hold", hold, "1 period or more")
    sums = [0]
    for d in demand:
        sums.append(sums[-1] + int(d))
    best = [0.0] + [float("inf")] * len(demand)
    start = [0] * (len(demand) + 1)
    for j in range(1, len(demand) + 1):
        for i in range(max(0, j - hold), j):
            cost = best[i] + (batch_cost if sums[j] > sums[i] else 0.0)
            if cost < best[j] - 1e-12:
                best[j], start[j] = cost, i
    batches, j = [], len(demand)
    while j > 0:
        i = start[j]
        if sums[j] > sums[i]:
            first = next(k for k in range(i, j) if demand[k] > 0)
            batches.append((first, sums[j] - sums[i]))
        j = i
    return best[-1], batches[::-1]


def bank_batches_per_s(
    fryers: int, cook_s: float, recovery_s: float, filter_every: int, filter_s: float
) -> float:
    """Sustained batches a second of a bank: fryers x N / (N (cook + recovery) + B)."""
    if fryers < 1 or filter_every < 1 or not cook_s > 0:
        raise InputError(
            "bank", f"{fryers} fryers, filter every {filter_every}", "1 or more of each, with a cook time"
        )
    return fryers * filter_every / (filter_every * (cook_s + recovery_s) + filter_s)


def crew_batches_per_slot(actions_per_slot: float, filter_every: int) -> float:
    """Most batches a slot that hands allow: each has a drop and a lift, and every N-th a filter turn: K / (2
    + 1/N).
    """
    if not actions_per_slot > 0 or filter_every < 1:
        raise InputError("crew", actions_per_slot, "above 0 actions a slot")
    return actions_per_slot / (2.0 + 1.0 / filter_every)


def newsvendor(demand: Demand, short_cost: float, waste_cost: float) -> int:
    """Smallest q with F(q) >= c_s / (c_s + c_w): the best quantity for one period without a batch cost.

    Parameters
    ----------
    short_cost, waste_cost : money lost for each unit too few, too many; above 0
    """
    if not short_cost > 0 or not waste_cost > 0:
        raise InputError(
            "costs", f"{short_cost} and {waste_cost}", "above 0 for a unit too few and a unit too many"
        )
    return demand.quantile(short_cost / (short_cost + waste_cost))


def expected_sold(demand: Demand, stock: int) -> float:
    """E[min(D, stock)]."""
    p = demand.probabilities()
    return float(np.minimum(np.arange(len(p)), stock) @ p)


def batches_worth(demand: Demand, unit: int, short_cost: float, waste_cost: float, batch_cost: float) -> int:
    """Batches of ``unit`` pieces worth cooking for one period.

    The n-th pays iff (c_s + c_w) E[min(u, (D - u(n-1))+)] - c_w u > K; gains fall with n, so the first that
    does not pay ends it.
    """
    if unit < 1:
        raise InputError("batch", unit, "1 piece or more")
    p = demand.probabilities()
    counts, batches = np.arange(len(p)), 0
    while True:
        extra = np.minimum(unit, np.maximum(counts - unit * batches, 0)) @ p
        if (short_cost + waste_cost) * float(extra) - waste_cost * unit <= batch_cost:
            return batches
        batches += 1
