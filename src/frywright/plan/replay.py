"""Days played under a rule: the trade's order-up-to rule, tuned, and the engine that beats it by looking
ahead.

The **par** rule drops, at every slot and idle fryer, the product that lacks most against its par: a quantile
of the demand from the lift on over a cover time, with the day's level learned from what was asked for so far
(Gamma prior). The **engine** tries each action on imagined rests of the day and leaves par only where another
action is cheaper beyond doubt (planning rule of rollouts).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.model.errors import InputError
from frywright.plan import engine
from frywright.plan.check import Price
from frywright.plan.model import Day, Drop, Plan

Counts = NDArray[np.int64]
Z = 1.0
"""Standard errors by which an action must beat par: without it few paths make worse decisions than par."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Par:
    """Order-up-to rule: slots to cover after the lift, and how many spreads above the mean; for each product,
    or one for all.
    """

    cover_slots: tuple[int, ...] = (6,)
    z_n: tuple[float, ...] = (0.5,)

    def of(self, item: int) -> tuple[int, float]:
        """Cover and spreads of a product."""
        return self.cover_slots[item % len(self.cover_slots)], self.z_n[item % len(self.z_n)]


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """How the engine looks ahead; no paths means the par rule alone."""

    paths_count: int
    horizon_slots_count: int
    z_n: float = Z
    seed_count: int = 1

    @classmethod
    def for_bank(cls, fryers: int) -> Look:
        """As far and as often as a slot's time allows.

        In a large bank the noise of a long look hides the gain of one drop (``benchmarks/day.py``).
        """
        paths, horizon = ((256, 72), (96, 72), (48, 40), (48, 40))[fryers - 1] if fryers <= 4 else (40, 28)
        return cls(paths_count=paths, horizon_slots_count=horizon)

    @classmethod
    def for_plan(cls, fryers: int) -> Look:
        """Less often, for a whole day at once: a morning plan within seconds."""
        return (
            cls(paths_count=24, horizon_slots_count=40)
            if fryers <= 4
            else cls(paths_count=8, horizon_slots_count=28)
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Replay:
    """Days under a rule: cost of every day, its parts, the plans that came of it, and the shelf (day, 3,
    item, slot: left, asked for in vain, thrown away)."""

    cost_money: NDArray[np.float64]
    parts_money: NDArray[np.float64]  # (day, 6): batches, short, waste money; sold, short, wasted units
    price: Price
    plans: tuple[Plan, ...] = ()
    shelf: Counts | None = None


def draw_days(day: Day, count: int, seed: int) -> Counts:
    """Demand paths (day, item, slot): negative binomial about the mean times a common level of the day.

    The same seed gives the same days, so that rules are compared on common random numbers.
    """
    rng = np.random.default_rng(seed)
    level = rng.gamma(1.0 / day.level_cv_frac**2, day.level_cv_frac**2, size=count)
    mean, wide = level[:, None, None] * day.mean_n[None], np.maximum(day.spreads_n - 1.0, 1e-6)[None, :, None]
    return rng.poisson(rng.gamma(np.maximum(mean / wide, 1e-9), wide)).astype(np.int64)


def replay(day: Day, demand: ArrayLike, par: Par, look: Look | None = None) -> Replay:
    """Play days by the engine, or by par alone when ``look`` is None; every plan and shelf is kept.

    The imagined days never see the day that is played.

    Raises
    ------
    InputError
        Demand of another shape than the day.
    """
    asked = _asked(day, demand)
    look = look or Look(paths_count=0, horizon_slots_count=0)
    rules, mean = given(day, par), np.ascontiguousarray(day.mean_n)
    log = np.full((len(asked), day.slots_count * day.fryers_count + 1, 4), -1, dtype=np.int64)
    parts, shelf = np.zeros((len(asked), 6)), np.zeros((len(asked), 3, *day.mean_n.shape), dtype=np.int64)
    for d, path in enumerate(asked):
        setting = (0, look.paths_count, look.horizon_slots_count, look.z_n, look.seed_count + 7919 * d)
        engine.play(
            path, mean, setting, engine.fresh(rules), np.zeros(2), rules, (log[d], shelf[d]), parts[d]
        )
    return _replay(parts, tuple(plan_of(rows) for rows in log), shelf)


def replay_par(day: Day, demand: ArrayLike, par: Par) -> Replay:
    """Play many days under the par rule; costs only."""
    asked = _asked(day, demand)
    parts = np.zeros((len(asked), 6))
    engine.play_par(asked, engine.weighed(day.mean_n, day.spreads_n), given(day, par), parts)
    return _replay(parts, (), None)


def _asked(day: Day, demand: ArrayLike) -> Counts:
    asked = np.ascontiguousarray(demand, dtype=np.int64)
    if asked.ndim != 3 or asked.shape[1:] != day.mean_n.shape or asked.min(initial=0) < 0:
        raise InputError(
            "demand",
            asked.shape,
            "days by {items} items by {slots} slots, 0 or more",
            values={"items": len(day.items), "slots": day.slots_count},
        )
    return asked


def given(day: Day, par: Par) -> tuple[Any, ...]:
    """The day and the rule as the arrays of :mod:`frywright.plan.engine`."""
    most = max(len(item.loads) for item in day.items)
    sizes, cost = np.zeros((4, len(day.items), most), dtype=np.int64), np.zeros((len(day.items), most))
    may = np.zeros((len(day.items), most, day.fryers_count), dtype=np.bool_)
    for n, item in enumerate(day.items):
        sizes[3, n, :] = len(item.loads)
        for k, load in enumerate(item.loads):
            sizes[:3, n, k] = load.units_count, load.cook_slots_count, load.recovery_slots_count
            cost[n, k] = load.batch_money
            may[n, k, list(load.fryers)] = True
    holds = np.array([item.hold_slots_count for item in day.items], dtype=np.int64)
    money = np.array(
        [(item.short_money, item.waste_money, item.spread_n, *par.of(n)) for n, item in enumerate(day.items)]
    )
    ahead = np.concatenate([np.zeros((len(day.items), 1)), np.cumsum(day.mean_n, axis=1)], axis=1)
    bank = np.array(
        (day.hands_count, day.filter_every_count, day.filter_slots_count, day.filters_at_once_count),
        dtype=np.int64,
    )
    windows = np.array([day.window(f) for f in range(day.fryers_count)], dtype=np.int64)
    rush = np.array([day.in_rush(t) for t in range(day.slots_count)])
    power = np.array([*(day.power_w or (0.0,) * day.fryers_count), day.cap_w])
    return (
        sizes,
        may,
        cost,
        holds,
        money,
        ahead,
        bank,
        windows,
        rush,
        power,
        1.0 / day.level_cv_frac**2,
        day.filter_money,
    )


def _replay(parts: NDArray[np.float64], plans: tuple[Plan, ...], shelf: Counts | None) -> Replay:
    mean = parts.mean(axis=0)
    told = Price(
        total_money=float(mean[:3].sum()),
        batches_money=float(mean[0]),
        short_money=float(mean[1]),
        waste_money=float(mean[2]),
        sold_n=float(mean[3]),
        short_n=float(mean[4]),
        waste_n=float(mean[5]),
    )
    return Replay(
        cost_money=parts[:, :3].sum(axis=1), parts_money=parts, price=told, plans=plans, shelf=shelf
    )


COVERS, ZS = (1, 2, 3, 4, 5, 6, 8, 10, 12, 16), (-0.5, 0.0, 0.5, 1.0, 1.5)


def tuned(day: Day, demand: ArrayLike, rounds: int = 2) -> Par:
    """The par rule that costs least on given days: one cover and spread for all, then each product's own in
    ``rounds`` rounds.

    Tune on other days than those it is judged on.
    """

    def cost(rule: Par) -> float:
        return float(replay_par(day, demand, rule).cost_money.mean())

    count = len(day.items)
    rules = [Par(cover_slots=(cover,) * count, z_n=(z,) * count) for cover in COVERS for z in ZS]
    best = min(rules, key=cost)
    least = cost(best)
    for _ in range(rounds):
        before = least
        for n in range(count):
            for rule in _near(best, n):
                found = cost(rule)
                if found < least - 1e-9:
                    best, least = rule, found
        if least >= before - 1e-9:
            break
    return best


def _near(rule: Par, item: int) -> list[Par]:
    """Rules with a little more or less cover and spread for one product."""
    found, (cover, z) = [], rule.of(item)
    for c in COVERS[max(0, COVERS.index(cover) - 2) : COVERS.index(cover) + 3]:
        for s in ZS[max(0, ZS.index(z) - 1) : ZS.index(z) + 2]:
            covers, zs = list(rule.cover_slots), list(rule.z_n)
            covers[item], zs[item] = c, s
            found.append(Par(cover_slots=tuple(covers), z_n=tuple(zs)))
    return found


def plan_of(rows: Counts) -> Plan:
    """A plan from logged rows (fryer, product or -1 for a filter turn, load, slot)."""
    used = rows[rows[:, 0] >= 0]
    drops = tuple(Drop(fryer=int(f), item=int(i), load=int(k), slot=int(t)) for f, i, k, t in used if i >= 0)
    return Plan(drops=drops, filters=tuple((int(f), int(t)) for f, i, _, t in used if i < 0))
