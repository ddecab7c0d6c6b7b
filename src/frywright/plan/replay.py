"""Days played under a rule: the trade's order-up-to rule, tuned, and the engine that beats it by looking
ahead.

The **rule** drops, at every slot and idle fryer, the product that lacks most below its call, and fills it up
to its level; both are covers of the demand from the lift on with a number of spreads, by part of the day,
with the day's level learned from what was asked for so far (gamma priors). **Par** is the plain form of it:
one cover and one number of spreads for call and fill, the whole day. The **engine** tries each action on
imagined rests of the day and leaves the rule only where another action is cheaper beyond doubt (planning rule
of rollouts).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.model.errors import InputError
from frywright.plan import engine
from frywright.plan.check import Price
from frywright.plan.model import PROMISE_WEIGHT, Day, Drop, Plan

Counts = NDArray[np.int64]
Array = NDArray[np.float64]
Z = 1.0
"""Standard errors by which an action must beat the rule: without it few paths make worse decisions."""
LEAST_SLOTS, BEYOND_SLOTS = 36, 12
"""Least look of three fryers and more, and what it goes beyond the longest cook and hold (own choices): where
a look ends before a load is too old, loads come out too large.
"""
PARTS = 4
OWN_CV_FRAC, KEEP_FRAC = 0.15, 0.98
"""Spread of a product's own level about the day's, and what a slot keeps of what was seen before it (half is
forgotten in three hours of slots of five minutes). Own estimates.
"""
CALL, QUIET = 0.5, 2.0
"""Par calls when half of the smallest load lacks; and turns to the filter only when it is due."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """Drop below the call, fill up to the level, by product and part of the day.

    ``table_n`` (5, part, product): slots covered after the lift and spreads above the mean that make the
    call; lack, in smallest loads, from which it is made; slots and spreads of the fill. From ``quiet_frac``
    of the loads of a filter turn on, a moment in which nothing calls is used for it.
    """

    table_n: tuple[tuple[tuple[float, ...], ...], ...]
    quiet_frac: float = QUIET

    def table(self, count: int) -> Array:
        """The table for ``count`` products."""
        return np.array(self.table_n)


@dataclass(frozen=True, slots=True, kw_only=True)
class Par:
    """Order-up-to rule: slots to cover after the lift, and how many spreads above the mean; for each product,
    or one for all.
    """

    cover_slots: tuple[int, ...] = (6,)
    z_n: tuple[float, ...] = (0.5,)
    quiet_frac: float = QUIET

    def of(self, item: int) -> tuple[int, float]:
        """Cover and spreads of a product."""
        return self.cover_slots[item % len(self.cover_slots)], self.z_n[item % len(self.z_n)]

    def table(self, count: int) -> Array:
        """It as a rule by part of the day, with call and fill alike."""
        cover, z = np.array([self.of(n) for n in range(count)], dtype=float).T
        return np.repeat(np.stack([cover, z, np.full(count, CALL), cover, z])[:, None, :], PARTS, axis=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """How the engine looks ahead; no paths means the rule alone. What was sold is known ``late_slots_count``
    slots later.
    """

    paths_count: int
    horizon_slots_count: int
    z_n: float = Z
    seed_count: int = 1
    late_slots_count: int = 0

    @classmethod
    def for_bank(cls, day: Day) -> Look:
        """As far and as often as a slot's time allows.

        In a large bank the noise of a long look hides the gain of one drop: it sees what goes in now until it
        is sold or too old, and a while more. Paths and doubt were chosen on moments of days of their own
        (``docs/theory/day.md``).
        """
        paths, z = ((512, 0.5), (128, Z), (48, Z), (40, Z))[min(day.fryers_count, 4) - 1]
        horizon = max(LEAST_SLOTS, _longest_life(day) + BEYOND_SLOTS)
        if day.fryers_count < 3:
            horizon = day.slots_count
        return cls(paths_count=paths, horizon_slots_count=horizon, z_n=z)

    @classmethod
    def for_plan(cls, day: Day) -> Look:
        """As far as for the bank with fewer paths, for a whole day at once: a morning plan within seconds."""
        return replace(cls.for_bank(day), paths_count=24 if day.fryers_count <= 4 else 8, z_n=Z)


def _longest_life(day: Day) -> int:
    """Slots from the drop of a load to the end of its hold life, of the product for which they are most."""
    return max(load.cook_slots_count + item.hold_slots_count for item in day.items for load in item.loads)


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
    """Demand paths (day, item, slot): negative binomial about the mean times a common level of the day, and
    what is promised.

    The same seed gives the same days, so that rules are compared on common random numbers.
    """
    rng = np.random.default_rng(seed)
    level = rng.gamma(1.0 / day.level_cv_frac**2, day.level_cv_frac**2, size=count)
    mean, wide = level[:, None, None] * day.mean_n[None], np.maximum(day.spreads_n - 1.0, 1e-6)[None, :, None]
    asked = rng.poisson(rng.gamma(np.maximum(mean / wide, 1e-9), wide)).astype(np.int64)
    return np.asarray(asked + day.firm_n)


def replay(day: Day, demand: ArrayLike, par: Par | Rule, look: Look | None = None) -> Replay:
    """Play days by the engine, or by par alone when ``look`` is None; every plan and shelf is kept.

    The imagined days never see the day that is played. Raises InputError: demand of another shape than the
    day.
    """
    asked = _asked(day, demand)
    look = look or Look(paths_count=0, horizon_slots_count=0)
    rules, mean = given(day, par), np.ascontiguousarray(day.mean_n)
    log = np.full((len(asked), day.slots_count * day.fryers_count + 1, 4), -1, dtype=np.int64)
    parts, shelf = np.zeros((len(asked), 6)), np.zeros((len(asked), 3, *day.mean_n.shape), dtype=np.int64)
    for d, path in enumerate(asked):
        setting = (
            0,
            look.paths_count,
            look.horizon_slots_count,
            look.z_n,
            look.seed_count + 7919 * d,
            look.late_slots_count,
        )
        engine.play(
            path, mean, setting, engine.fresh(rules), unknown(day), rules, (log[d], shelf[d]), parts[d]
        )
    return _replay(parts, tuple(plan_of(rows) for rows in log), shelf)


def replay_par(day: Day, demand: ArrayLike, par: Par | Rule) -> Replay:
    """Play many days under the rule; costs only."""
    asked = _asked(day, demand)
    parts = np.zeros((len(asked), 6))
    engine.play_rule(asked, given(day, par), parts)
    return _replay(parts, (), None)


def unknown(day: Day) -> Array:
    """The belief of a day of which nothing was seen yet."""
    return np.zeros((2, len(day.items) + 1))


def _asked(day: Day, demand: ArrayLike) -> Counts:
    asked = np.ascontiguousarray(demand, dtype=np.int64)
    if asked.ndim != 3 or asked.shape[1:] != day.mean_n.shape or asked.min(initial=0) < 0:
        raise InputError(
            "demand",
            asked.shape,
            "days by {items} items by {slots} slots, 0 or more",
            items=len(day.items),
            slots=day.slots_count,
        )
    return asked


def given(day: Day, par: Par | Rule) -> tuple[Any, ...]:
    """The day and the rule as the arrays of :mod:`frywright.plan.engine`."""
    most, count = max(len(item.loads) for item in day.items), len(day.items)
    sizes, cost = np.zeros((4, count, most), dtype=np.int64), np.zeros((count, most))
    may = np.zeros((count, most, day.fryers_count), dtype=np.bool_)
    for n, item in enumerate(day.items):
        sizes[3, n, :] = len(item.loads)
        for k, load in enumerate(item.loads):
            sizes[:3, n, k] = load.units_count, load.cook_slots_count, load.recovery_slots_count
            cost[n, k] = load.batch_money
            may[n, k, list(load.fryers)] = True
    first, last = may.argmax(axis=1), most - 1 - may[:, ::-1].argmax(axis=1)
    span = np.where(may.any(axis=1), np.stack([first, last]), -1)
    every = day.filter_every_count
    return (
        sizes,
        may,
        cost,
        np.array([item.hold_slots_count for item in day.items], dtype=np.int64),
        np.array([(item.short_money, item.waste_money, item.spread_n) for item in day.items]),
        np.concatenate([np.zeros((count, 1)), np.cumsum(day.mean_n, axis=1)], axis=1),
        np.array(
            (
                day.hands_count,
                every,
                day.filter_slots_count,
                day.filters_at_once_count,
                min(every, max(1, round(par.quiet_frac * every))),
            ),
            dtype=np.int64,
        ),
        np.array([day.window(f) for f in range(day.fryers_count)], dtype=np.int64),
        np.array([day.in_rush(t) for t in range(day.slots_count)]),
        np.array([*(day.power_w or (0.0,) * day.fryers_count), day.cap_w]),
        np.array([1.0 / day.level_cv_frac**2, 1.0 / OWN_CV_FRAC**2, KEEP_FRAC, PROMISE_WEIGHT]),
        day.filter_money,
        par.table(count),
        np.arange(day.slots_count) * PARTS // day.slots_count,
        span,
        sizes[1].max(axis=1),
        np.argsort(may.any(axis=1).sum(axis=0), kind="stable"),
        np.concatenate([np.zeros((count, 1), dtype=np.int64), np.cumsum(day.firm_n, axis=1)], axis=1),
        np.array([_lead(day, n) for n in range(count)], dtype=np.int64),
    )


def _lead(day: Day, item: int) -> int:
    """Slots before a product's promised orders from which on they are cooked for: as many rounds of full
    loads in half of its fryers as the largest takes, and two slots to spare; never longer than it may be
    held.
    """
    product, largest = day.items[item], max((o.units_count for o in day.orders if o.item == item), default=0)
    load = product.loads[-1]
    rounds = -(-largest // (load.units_count * max(1, len(product.fryers) // 2)))
    took = rounds * (load.cook_slots_count + load.recovery_slots_count) + 2
    return max(1, min(product.hold_slots_count - 1, took))


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


def plan_of(rows: Counts) -> Plan:
    """A plan from logged rows (fryer, product or -1 for a filter turn, load, slot)."""
    used = rows[rows[:, 0] >= 0]
    drops = tuple(Drop(fryer=int(f), item=int(i), load=int(k), slot=int(t)) for f, i, k, t in used if i >= 0)
    return Plan(drops=drops, filters=tuple((int(f), int(t)) for f, i, _, t in used if i < 0))
