"""The trade's own rule, tuned: cook up to a par level. The base every better plan is measured against.

At every slot and idle fryer the product that lacks most against its par is dropped. Par is a quantile of the demand from the lift on over a
cover time, by mean and spread, with the day's level learned from what was asked for so far (Gamma prior).
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numba import njit
from numpy.typing import ArrayLike, NDArray

from frywright.plan.check import Price
from frywright.plan.model import Day, Drop, Plan

Counts = NDArray[np.int64]
LEVEL_CV_FRAC = 0.15
"""Spread of whole days about their forecast: prior of the day's level. Estimate."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Par:
    """Order-up-to rule: slots to cover after the lift, and how many spreads above the mean."""

    cover_slots_count: int = 6
    z_n: float = 0.5
    spread_n: float = 1.5


@dataclass(frozen=True, slots=True, kw_only=True)
class Replay:
    """Days under a rule: cost of every day, its parts, and the plans that came of it."""

    cost_money: NDArray[np.float64]
    price: Price
    plans: tuple[Plan, ...]


def draw_days(day: Day, count: int, seed: int, spread: float = 1.5, level_cv: float = LEVEL_CV_FRAC) -> Counts:
    """Demand paths (day, item, slot): negative binomial about the mean times a common level of the day.

    The same seed gives the same days, so that rules are compared on common random numbers.
    """
    rng = np.random.default_rng(seed)
    level = rng.gamma(1.0 / level_cv**2, level_cv**2, size=(count, 1, 1)) if level_cv > 0 else np.ones((count, 1, 1))
    mean = level * day.mean_n[None]
    if spread <= 1.0:
        return rng.poisson(mean).astype(np.int64)
    shape = np.maximum(mean / (spread - 1.0), 1e-9)
    return rng.poisson(rng.gamma(shape, spread - 1.0)).astype(np.int64)


def replay_par(day: Day, demand: ArrayLike, par: Par, *, keep_plans: int = 0) -> Replay:
    """Play days under the par rule; the first ``keep_plans`` are returned as plans."""
    asked = np.ascontiguousarray(demand, dtype=np.int64)
    items = np.array([
        (i.hold_slots_count, i.recovery_slots_count, len(i.loads)) for i in day.items
    ], dtype=np.int64)  # fmt: skip
    may = np.zeros((len(day.items), day.fryers_count), dtype=np.bool_)
    for n, item in enumerate(day.items):
        may[n, list(item.fryers)] = True
    bank = np.array(
        (day.hands_count, day.filter_every_count, day.filter_slots_count, par.cover_slots_count), dtype=np.int64
    )
    rule = np.array((par.z_n, par.spread_n, 1.0 / LEVEL_CV_FRAC**2))
    money = np.array([(i.short_money, i.waste_money, i.batch_money) for i in day.items])
    log = np.full((max(keep_plans, 1), day.slots_count * day.fryers_count, 4), -1, dtype=np.int64)
    parts = np.zeros((len(asked), 6))
    _play(asked, np.ascontiguousarray(day.mean_n), _loads(day), (items, may, bank, rule, money), log, keep_plans, parts)
    mean = parts.mean(axis=0)
    told = Price(
        total_money=float(mean[:3].sum()), batches_money=float(mean[0]), short_money=float(mean[1]), waste_money=float(mean[2]),
        sold_n=float(mean[3]), short_n=float(mean[4]), waste_n=float(mean[5]),
    )  # fmt: skip
    return Replay(
        cost_money=parts[:, :3].sum(axis=1), price=told, plans=tuple(_plan(rows) for rows in log[:keep_plans])
    )


def tuned(day: Day, demand: ArrayLike, covers: tuple[int, ...] = (3, 4, 6, 8, 10, 12), zs: tuple[float, ...] = (-0.5, 0.0, 0.5, 1.0, 1.5)) -> Par:  # fmt: skip
    """The par rule that costs least on given days (tune on other days than those it is judged on)."""
    rules = [replace(Par(), cover_slots_count=cover, z_n=z) for cover in covers for z in zs]
    return min(rules, key=lambda rule: float(replay_par(day, demand, rule).cost_money.mean()))


def _loads(day: Day) -> tuple[Counts, Counts]:
    most = max(len(item.loads) for item in day.items)
    units, cooks = np.zeros((len(day.items), most), dtype=np.int64), np.zeros((len(day.items), most), dtype=np.int64)
    for n, item in enumerate(day.items):
        for k, load in enumerate(item.loads):
            units[n, k], cooks[n, k] = load.units_count, load.cook_slots_count
    return units, cooks


def _plan(rows: Counts) -> Plan:
    used = rows[rows[:, 0] >= 0]
    drops = tuple(Drop(fryer=int(f), item=int(i), load=int(k), slot=int(t)) for f, i, k, t in used if i >= 0)
    return Plan(drops=drops, filters=tuple((int(f), int(t)) for f, i, _, t in used if i < 0))


@njit(cache=True)
def _choose(t, f, made, shelf, level, mean, loads, given):  # type: ignore[no-untyped-def]
    """The product that lacks most against its par at its lift, and the load for it; -1 when none lacks half a load."""
    units, cooks = loads
    items, may, bank, rule, _ = given
    best, choice, size = 0.0, -1, 0
    for i in range(len(shelf)):
        k = items[i, 2] - 1
        lift = t + cooks[i, k]
        if not may[i, f] or lift >= mean.shape[1]:
            continue
        lives = made[i, max(0, lift - items[i, 0] + 1) :].sum()  # what will still be within its hold at the lift
        stock = min(lives, shelf[i] + made[i, t + 1 :].sum())
        until = level * mean[i, t:lift].sum()
        expected = level * mean[i, lift : lift + bank[3]].sum()
        lack = expected + rule[0] * np.sqrt(rule[1] * expected) - max(0.0, stock - until)
        worth = lack / units[i, 0]
        if lack >= 0.5 * units[i, 0] and worth > best:
            pick = 0
            while pick < k and units[i, pick] < lack:
                pick += 1
            best, choice, size = worth, i, pick
    return choice, size


@njit(cache=True)
def _age(t, made, stock, items, money, part):  # type: ignore[no-untyped-def]
    """What comes out of the oil in a slot, and what has been held too long."""
    there, gone, dead = stock
    for i in range(len(there)):
        there[i] += made[i, t]
        if t >= items[i, 0]:
            dead[i] += made[i, t - items[i, 0]]
        if dead[i] > gone[i]:
            part[5] += dead[i] - gone[i]
            part[2] += money[i, 1] * (dead[i] - gone[i])
            gone[i] = dead[i]


@njit(cache=True)
def _sell(t, asked, stock, money, part):  # type: ignore[no-untyped-def]
    there, gone = stock[0], stock[1]
    for i in range(len(there)):
        sale = min(asked[i, t], there[i] - gone[i])
        gone[i] += sale
        part[3] += sale
        part[4] += asked[i, t] - sale
        part[1] += money[i, 0] * (asked[i, t] - sale)


@njit(cache=True)
def _play(asked, mean, loads, given, log, kept, parts):  # type: ignore[no-untyped-def]
    units, cooks = loads
    items, may, bank, rule, money = given
    n_item, n_slot = mean.shape
    for d in range(asked.shape[0]):
        made, stock = np.zeros((n_item, n_slot), dtype=np.int64), np.zeros((3, n_item), dtype=np.int64)
        free, since = np.zeros(may.shape[1], dtype=np.int64), np.zeros(may.shape[1], dtype=np.int64)
        hands = np.zeros(n_slot, dtype=np.int64)
        seen, hoped, row = 0.0, 0.0, 0
        for t in range(n_slot):
            _age(t, made, stock, items, money, parts[d])
            level = (rule[2] + seen) / (rule[2] + hoped)
            for f in range(may.shape[1]):
                if free[f] > t or hands[t] >= bank[0]:
                    continue
                choice, size = -1, 0
                if since[f] >= bank[1]:
                    free[f], since[f] = t + bank[2], 0
                else:
                    choice, size = _choose(t, f, made, stock[0] - stock[1], level, mean, loads, given)
                    lift = t + cooks[choice, size]
                    if choice < 0 or lift >= n_slot or hands[lift] >= bank[0]:
                        continue
                    hands[lift] += 1
                    made[choice, lift] += units[choice, size]
                    free[f] = lift + items[choice, 1]
                    since[f] += 1
                    parts[d, 0] += money[choice, 2]
                hands[t] += 1
                if d < kept:
                    log[d, row, 0], log[d, row, 1], log[d, row, 2], log[d, row, 3] = f, choice, size, t
                    row += 1
            _sell(t, asked[d], stock, money, parts[d])
            seen += asked[d, :, t].sum()
            hoped += mean[:, t].sum()
        for i in range(n_item):
            parts[d, 5] += stock[0, i] - stock[1, i]
            parts[d, 2] += money[i, 1] * (stock[0, i] - stock[1, i])
