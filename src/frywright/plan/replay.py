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
    return _draw(day, count, seed, spread, level_cv)[0]


def _draw(day: Day, count: int, seed: int, spread: float, level_cv: float) -> tuple[Counts, NDArray[np.float64]]:
    """Paths, and the level of each."""
    rng = np.random.default_rng(seed)
    level = rng.gamma(1.0 / level_cv**2, level_cv**2, size=count) if level_cv > 0 else np.ones(count)
    mean = level[:, None, None] * day.mean_n[None]
    if spread > 1.0:
        mean = rng.gamma(np.maximum(mean / (spread - 1.0), 1e-9), spread - 1.0)
    return rng.poisson(mean).astype(np.int64), level


def replay_par(day: Day, demand: ArrayLike, par: Par, *, keep_plans: int = 0) -> Replay:
    """Play days under the par rule; the first ``keep_plans`` are returned as plans."""
    asked = np.ascontiguousarray(demand, dtype=np.int64)
    log = np.full((max(keep_plans, 1), day.slots_count * day.fryers_count, 4), -1, dtype=np.int64)
    parts = np.zeros((len(asked), 6))
    _play(asked, np.ascontiguousarray(day.mean_n), _loads(day), _given(day, par), log, keep_plans, parts)
    return _replay(parts, log[:keep_plans])


def replay_rollout(day: Day, demand: ArrayLike, par: Par, *, paths: int = 32, z: float = 1.0, seed: int = 1) -> Replay:
    """Play days in which every idle fryer tries each load, a filter turn and waiting on imagined rests of the day.

    Par's own action is kept unless another is cheaper by more than ``z`` standard errors. The imagined days count by
    how well their level explains what was asked for so far; they never see the day that is played.
    """
    asked = np.ascontiguousarray(demand, dtype=np.int64)
    log = np.full((len(asked), day.slots_count * day.fryers_count, 4), -1, dtype=np.int64)
    parts, mean = np.zeros((len(asked), 6)), np.ascontiguousarray(day.mean_n)
    imagined, level = _draw(day, paths, seed, par.spread_n, LEVEL_CV_FRAC)
    for d, path in enumerate(asked):
        world = _fresh(mean, day.fryers_count)
        _play_one(path, (imagined, level, z), mean, world, _loads(day), _given(day, par), log[d], parts[d])
    return _replay(parts, log)


def _given(day: Day, par: Par) -> tuple[Counts, NDArray[np.bool_], Counts, NDArray[np.float64], NDArray[np.float64]]:
    """The day and the rule as arrays: items, who may cook what, bank, rule, money."""
    items = np.array([(i.hold_slots_count, i.recovery_slots_count, len(i.loads)) for i in day.items], dtype=np.int64)
    may = np.zeros((len(day.items), day.fryers_count), dtype=np.bool_)
    for n, item in enumerate(day.items):
        may[n, list(item.fryers)] = True
    bank = np.array(
        (day.hands_count, day.filter_every_count, day.filter_slots_count, par.cover_slots_count), dtype=np.int64
    )
    rule = np.array((par.z_n, par.spread_n, 1.0 / LEVEL_CV_FRAC**2))
    return items, may, bank, rule, np.array([(i.short_money, i.waste_money, i.batch_money) for i in day.items])


def _replay(parts: NDArray[np.float64], log: Counts) -> Replay:
    mean = parts.mean(axis=0)
    told = Price(
        total_money=float(mean[:3].sum()), batches_money=float(mean[0]), short_money=float(mean[1]), waste_money=float(mean[2]),
        sold_n=float(mean[3]), short_n=float(mean[4]), waste_n=float(mean[5]),
    )  # fmt: skip
    return Replay(cost_money=parts[:, :3].sum(axis=1), price=told, plans=tuple(_plan(rows) for rows in log))


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
def _start(f, t, choice, size, world, loads, given, part):  # type: ignore[no-untyped-def]
    """Drop (choice >= 0) or filter (-1) in a fryer; false, and nothing done, where hands or time are short."""
    made, _, free, since, hands = world
    units, cooks = loads
    items, _, bank, _, money = given
    if choice < 0:
        free[f], since[f] = t + bank[2], 0
    else:
        lift = t + cooks[choice, size]
        if lift >= made.shape[1] or hands[lift] >= bank[0]:
            return False
        hands[lift] += 1
        made[choice, lift] += units[choice, size]
        free[f] = lift + items[choice, 1]
        since[f] += 1
        part[0] += money[choice, 2]
    hands[t] += 1
    return True


@njit(cache=True)
def _par_action(f, t, world, level, mean, loads, given):  # type: ignore[no-untyped-def]
    """What the par rule does with an idle fryer: (product, load), (-1, 0) filter, (-2, 0) nothing."""
    made, stock, free, since, hands = world
    if free[f] > t or hands[t] >= given[2][0]:
        return -2, 0
    if since[f] >= given[2][1]:
        return -1, 0
    choice, size = _choose(t, f, made, stock[0] - stock[1], level, mean, loads, given)
    return (choice, size) if choice >= 0 else (-2, 0)


@njit(cache=True)
def _go_on(where, asked, mean, world, belief, loads, given, part):  # type: ignore[no-untyped-def]
    """Play the rest of a day by par; ``where`` is the slot and the fryer to start at, ``belief`` (seen, hoped)."""
    t0, f0 = where
    made, stock, free, _, _ = world
    items, _, _, rule, money = given
    for t in range(t0, mean.shape[1]):
        if t > t0:
            _age(t, made, stock, items, money, part)
        level = (rule[2] + belief[0]) / (rule[2] + belief[1])
        for f in range(f0 if t == t0 else 0, len(free)):
            choice, size = _par_action(f, t, world, level, mean, loads, given)
            if choice > -2:
                _start(f, t, choice, size, world, loads, given, part)
        _sell(t, asked, stock, money, part)
        belief[0] += asked[:, t].sum()
        belief[1] += mean[:, t].sum()
    for i in range(len(items)):
        part[5] += stock[0, i] - stock[1, i]
        part[2] += money[i, 1] * (stock[0, i] - stock[1, i])


@njit(cache=True)
def _fresh(mean, n_fryer):  # type: ignore[no-untyped-def]
    """An empty kitchen: made, stock, fryers free from, loads since the filter turn, hands taken."""
    n_item, n_slot = mean.shape
    return (
        np.zeros((n_item, n_slot), dtype=np.int64), np.zeros((3, n_item), dtype=np.int64), np.zeros(n_fryer, dtype=np.int64),
        np.zeros(n_fryer, dtype=np.int64), np.zeros(n_slot, dtype=np.int64),
    )  # fmt: skip


@njit(cache=True)
def _rollout(f, t, dreams, mean, world, belief, loads, given):  # type: ignore[no-untyped-def]
    """The action for an idle fryer: par's own, unless another is cheaper on the paths by more than z standard errors.

    Paths count by how well their level of the day explains what was asked for so far.
    """
    paths, levels, z = dreams
    items, may = given[0], given[1]
    trust = belief / given[3][1]
    weight = trust[0] * np.log(levels) - trust[1] * levels
    weight = np.exp(weight - weight.max())
    weight /= weight.sum()
    level = (given[3][2] + belief[0]) / (given[3][2] + belief[1])
    base, base_size = _par_action(f, t, world, level, mean, loads, given)
    count = len(paths)
    reference, costs, part = np.empty(count), np.empty(count), np.zeros(6)
    best, best_size, most = base, base_size, 0.0
    for candidate in range(-1, 2 + items[:, 2].sum()):
        choice, size = base, base_size
        if candidate == 0:
            choice, size = -2, 0
        elif candidate == 1:
            choice, size = -1, 0
        elif candidate > 1:
            left = candidate - 2
            choice = 0
            while left >= items[choice, 2]:
                left -= items[choice, 2]
                choice += 1
            size = left
            if not may[choice, f]:
                continue
        if candidate >= 0 and (choice, size) == (base, base_size):
            continue
        if choice != -1 and world[3][f] >= given[2][1]:
            continue  # a filter turn is due
        if choice == -1 and world[3][f] == 0:
            continue
        allowed = True
        for n in range(count):
            copy = (world[0].copy(), world[1].copy(), world[2].copy(), world[3].copy(), world[4].copy())
            part[:] = 0.0
            if choice > -2 and not _start(f, t, choice, size, copy, loads, given, part):
                allowed = False
                break
            known = belief.copy()
            _go_on((t, f + 1), paths[n], mean, copy, known, loads, given, part)
            costs[n] = part[0] + part[1] + part[2]
        if not allowed:
            continue
        if candidate == -1:
            reference[:] = costs
            continue
        gain = reference - costs
        mean_gain = (weight * gain).sum()
        sure = mean_gain - z * np.sqrt((weight * (gain - mean_gain) ** 2).sum() * (weight**2).sum())
        if sure > most:
            best, best_size, most = choice, size, sure
    return best, best_size


@njit(cache=True)
def _play(asked, mean, loads, given, log, kept, parts):  # type: ignore[no-untyped-def]
    """Whole days by the par rule; the first ``kept`` are logged."""
    for d in range(asked.shape[0]):
        world, belief = _fresh(mean, given[1].shape[1]), np.zeros(2)
        if d >= kept:
            _age(0, world[0], world[1], given[0], given[4], parts[d])
            _go_on((0, 0), asked[d], mean, world, belief, loads, given, parts[d])
        else:
            none = (np.zeros((0, 1, 1), dtype=np.int64), np.zeros(0), 0.0)
            _play_one(asked[d], none, mean, world, loads, given, log[d], parts[d])


@njit(cache=True)
def _play_one(asked, dreams, mean, world, loads, given, log, part):  # type: ignore[no-untyped-def]
    """One day slot by slot, logged; ``dreams`` (paths, their levels, z) make every decision a rollout, no paths means par."""
    made, stock, free, _, hands = world
    belief, row = np.zeros(2), 0
    for t in range(mean.shape[1]):
        _age(t, made, stock, given[0], given[4], part)
        level = (given[3][2] + belief[0]) / (given[3][2] + belief[1])
        for f in range(len(free)):
            if free[f] > t or hands[t] >= given[2][0]:
                continue
            if len(dreams[0]):
                choice, size = _rollout(f, t, dreams, mean, world, belief, loads, given)
            else:
                choice, size = _par_action(f, t, world, level, mean, loads, given)
            if choice > -2 and _start(f, t, choice, size, world, loads, given, part):
                log[row, 0], log[row, 1], log[row, 2], log[row, 3] = f, choice, size, t
                row += 1
        _sell(t, asked, stock, given[4], part)
        belief[0] += asked[:, t].sum()
        belief[1] += mean[:, t].sum()
    for i in range(len(mean)):
        part[5] += stock[0, i] - stock[1, i]
        part[2] += given[4][i, 1] * (stock[0, i] - stock[1, i])
