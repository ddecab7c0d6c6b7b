"""Kernels of the day: what a slot does to shelf and fryers, the order-up-to rule, and rollouts over it.

All of it lives in one file because compiled code is kept by file. Arrays, with i items, k loads, f fryers, t
slots:

* given: sizes (4, i, k: units, cook, recovery, allowed count), may (i, k, f), cost (i, k), holds (i), money
  (i, 5: short, waste,
  spread, cover, z), ahead (i, t+1: running sum of the mean), bank (hands, filter every, filter slots, filters
  at once), windows (f, 2), rush (t), power (f + 1, the last is the cap), prior (shape of the day's level),
  turn (money of a filter turn).
* world: made (i, t), stock (4, i: there, gone, expired, made in all), fryers (2, f: free from, loads since
  filter), slots (2, t: hands,
  filters), watts (t).
"""

from __future__ import annotations

import numpy as np
from numba import njit

from frywright.physics.kernels import inlined  # importing it sets the folder that keeps compiled code

FILTER, NOTHING = -1, -2
SALE_SHARE_FRAC, SALE_Z = 0.8, 1.6449
"""A load must be able to sell within this share of its hold life (common practice, no source), at the 95 %
end of demand.
"""
MOST_SLOTS = 72  # longest cook or hold: six hours in slots of five minutes
FIRST_PATHS, KEPT_CANDIDATES, TRIED_PRODUCTS = 12, 5, 4


@njit(cache=True, nogil=True)
def fresh(given):  # type: ignore[no-untyped-def]
    """An empty kitchen."""
    sizes, ahead, windows = given[0], given[5], given[7]
    n_item, n_slot, n_fryer = sizes.shape[1], ahead.shape[1] - 1, len(windows)
    fryers = np.zeros((2, n_fryer), dtype=np.int64)
    fryers[0] = windows[:, 0]
    return (
        np.zeros((n_item, n_slot), dtype=np.int64),
        np.zeros((4, n_item), dtype=np.int64),
        fryers,
        np.zeros((2, n_slot), dtype=np.int64),
        np.zeros(n_slot),
    )


@njit(cache=True, nogil=True)
def weighed(mean, spread):  # type: ignore[no-untyped-def]
    """What a slot's demand tells of the day's level: means, each over its spread, summed over items."""
    out = np.zeros(mean.shape[1])
    for i in range(mean.shape[0]):
        out += mean[i] / spread[i]
    return out


@inlined
def _copy(world, into, first, last):  # type: ignore[no-untyped-def]
    """Copy what a rollout from slot ``first`` to ``last`` can touch."""
    for i in range(world[0].shape[0]):
        for t in range(first, last):
            into[0][i, t] = world[0][i, t]
        for n in range(4):
            into[1][n, i] = world[1][n, i]
    for f in range(world[2].shape[1]):
        into[2][0, f] = world[2][0, f]
        into[2][1, f] = world[2][1, f]
    for t in range(first, last):
        into[3][0, t] = world[3][0, t]
        into[3][1, t] = world[3][1, t]
        into[4][t] = world[4][t]


@inlined
def age(t, world, given, part):  # type: ignore[no-untyped-def]
    """What comes out of the oil in a slot, and what has been held too long."""
    made, stock, holds, money = world[0], world[1], given[3], given[4]
    for i in range(made.shape[0]):
        stock[0, i] += made[i, t]
        if t >= holds[i]:
            stock[2, i] += made[i, t - holds[i]]
        if stock[2, i] > stock[1, i]:
            lost = stock[2, i] - stock[1, i]
            part[5] += lost
            part[2] += money[i, 1] * lost
            stock[1, i] = stock[2, i]


@inlined
def sell(t, asked, world, given, part):  # type: ignore[no-untyped-def]
    """Serve a slot's demand from the shelf, oldest first."""
    stock, money = world[1], given[4]
    for i in range(stock.shape[1]):
        wanted = asked[i, t]
        sale = min(wanted, stock[0, i] - stock[1, i])
        stock[1, i] += sale
        part[3] += sale
        part[4] += wanted - sale
        part[1] += money[i, 0] * (wanted - sale)


@inlined
def may_filter(f, t, world, given):  # type: ignore[no-untyped-def]
    """Whether a filter turn can start: hands, no rush, not too many at once."""
    bank, windows, rush = given[6], given[7], given[8]
    last = t + bank[2]
    if world[3][0, t] >= bank[0] or t < windows[f, 0] or last > len(rush):
        return False
    clear = True
    for s in range(t, last):
        clear = clear and not rush[s] and world[3][1, s] < bank[3]
    return clear


@inlined
def may_drop(f, t, i, k, world, given):  # type: ignore[no-untyped-def]
    """Whether a load can go in: fryer at heat and filtered, hands at drop and lift, power."""
    sizes, may, bank, windows, power = given[0], given[1], given[6], given[7], given[9]
    if not may[i, k, f] or world[2][1, f] >= bank[1]:
        return False
    lift = t + sizes[1, i, k]
    if lift >= world[0].shape[1] or t < windows[f, 0] or lift >= windows[f, 1]:
        return False
    if world[3][0, t] >= bank[0] or world[3][0, lift] >= bank[0]:
        return False
    if power[-1] < np.inf:
        for s in range(t, min(lift + sizes[2, i, k], len(world[4]))):
            if world[4][s] + power[f] > power[-1]:
                return False
    return True


@inlined
def start(f, t, i, k, world, given, part):  # type: ignore[no-untyped-def]
    """Drop (i >= 0) or filter (i = -1) in a fryer; false, and nothing done, where a rule forbids it."""
    sizes, bank, power = given[0], given[6], given[9]
    if i == FILTER:
        if not may_filter(f, t, world, given):
            return False
        world[2][0, f], world[2][1, f] = t + bank[2], 0
        for s in range(t, t + bank[2]):
            world[3][1, s] += 1
        world[3][0, t] += 1
        part[0] += given[11]
        return True
    if not may_drop(f, t, i, k, world, given):
        return False
    lift = t + sizes[1, i, k]
    world[3][0, t] += 1
    world[3][0, lift] += 1
    world[0][i, lift] += sizes[0, i, k]
    world[1][3, i] += sizes[0, i, k]
    world[2][0, f] = lift + sizes[2, i, k]
    world[2][1, f] += 1
    if power[-1] < np.inf:
        for s in range(t, min(lift + sizes[2, i, k], len(world[4]))):
            world[4][s] += power[f]
    part[0] += given[2][i, k]
    return True


@inlined
def _lack(i, t, lift, level, world, given):  # type: ignore[no-untyped-def]
    """Units that lack against par at a lift."""
    made, stock, holds, money, ahead = world[0], world[1], given[3], given[4], given[5]
    lives = stock[3, i] - stock[1, i]  # on the shelf or in the oil, less what will be too old at the lift
    old = lift - holds[i]
    if old >= 0:
        passed = stock[2, i]
        for s in range(max(0, t - holds[i] + 1), old + 1):
            passed += made[i, s]
        if passed > stock[1, i]:
            lives -= passed - stock[1, i]
    until = level * (ahead[i, lift] - ahead[i, t])
    end = min(lift + int(money[i, 3]), ahead.shape[1] - 1)
    expected = level * (ahead[i, end] - ahead[i, lift])
    return expected + money[i, 4] * np.sqrt(money[i, 2] * expected) - max(0.0, lives - until)


@inlined
def can_sell(i, k, t, level, world, given):  # type: ignore[no-untyped-def]
    """Whether a load could still sell within a share of its hold life, behind all that is there and in the
    oil.
    """
    sizes, stock, holds, ahead = given[0], world[1], given[3], given[5]
    lift = t + sizes[1, i, k]
    end = min(lift + max(1, int(SALE_SHARE_FRAC * holds[i])), ahead.shape[1] - 1)
    expected = level * (ahead[i, end] - ahead[i, t])
    most = expected + SALE_Z * np.sqrt(given[4][i, 2] * expected + expected * expected / (given[10] + 1.0))
    return stock[3, i] - stock[1, i] + sizes[0, i, k] <= most


@inlined
def par_action(f, t, world, level, given):  # type: ignore[no-untyped-def]
    """What the order-up-to rule does with an idle fryer: (product, load), (-1, 0) filter, (-2, 0) nothing."""
    sizes, may, bank, rush = given[0], given[1], given[6], given[8]
    if world[2][0, f] > t or world[3][0, t] >= bank[0] or t < given[7][f, 0] or t >= given[7][f, 1]:
        return NOTHING, 0
    if world[2][1, f] >= bank[1]:
        return (FILTER, 0) if may_filter(f, t, world, given) else (NOTHING, 0)
    best, choice, size = 0.0, NOTHING, 0
    for i in range(sizes.shape[1]):
        first = last = -1
        for k in range(sizes[3, i, 0]):
            if may[i, k, f]:
                first = k if first < 0 else first
                last = k
        if first < 0 or t + sizes[1, i, last] >= world[0].shape[1]:
            continue
        lack = _lack(i, t, t + sizes[1, i, last], level, world, given)
        if lack < 0.5 * sizes[0, i, first]:
            continue
        pick = first
        for k in range(first, last + 1):
            if may[i, k, f] and sizes[0, i, pick] < lack:
                pick = k
        worth = lack / sizes[0, i, first]
        if worth > best and may_drop(f, t, i, pick, world, given):
            best, choice, size = worth, i, pick
    if choice == NOTHING and 2 * world[2][1, f] >= bank[1]:  # a quiet moment: filter before the next rush
        near = False
        for s in range(t, min(t + 12, len(rush))):
            near = near or rush[s]
        if near and may_filter(f, t, world, given):
            return FILTER, 0
    return choice, size


@inlined
def go_on(where, asked, mean_sum, world, belief, given, part):  # type: ignore[no-untyped-def]
    """Play by par from slot ``where[0]``, fryer ``where[1]``, up to slot ``where[2]``; the shelf left at the
    close is waste.
    """
    t0, f0, t1 = where
    prior, n_item = given[10], world[0].shape[0]
    for t in range(t0, t1):
        if t > t0:
            age(t, world, given, part)
        level = (prior + belief[0]) / (prior + belief[1])
        for f in range(f0 if t == t0 else 0, world[2].shape[1]):
            i, k = par_action(f, t, world, level, given)
            if i > NOTHING:
                start(f, t, i, k, world, given, part)
        sell(t, asked, world, given, part)
        for i in range(n_item):
            belief[0] += asked[i, t] / given[4][i, 2]
        belief[1] += mean_sum[t]
    if t1 == world[0].shape[1]:
        close(world, given, part)


@inlined
def close(world, given, part):  # type: ignore[no-untyped-def]
    """Throw away what is left on the shelf."""
    for i in range(world[0].shape[0]):
        left = world[1][0, i] - world[1][1, i]
        part[5] += left
        part[2] += given[4][i, 1] * left


@njit(cache=True, nogil=True)
def imagine(t0, t1, count, belief, mean, given, seed):  # type: ignore[no-untyped-def]
    """Rests of the day (path, item, slot) drawn from what is believed of its level."""
    prior = given[10]
    np.random.seed(seed)
    paths = np.zeros((count, mean.shape[0], mean.shape[1]), dtype=np.int64)
    shape, scale = prior + belief[0], 1.0 / (prior + belief[1])
    for n in range(count):
        level = np.random.gamma(shape, scale)
        for i in range(mean.shape[0]):
            wide = given[4][i, 2] - 1.0
            for t in range(t0, t1):
                expected = level * mean[i, t]
                if expected <= 0.0:
                    continue
                if wide > 1e-6:
                    expected = np.random.gamma(expected / wide, wide)
                paths[n, i, t] = np.random.poisson(expected)
    return paths


@inlined
def _try(where, action, dream, mean_sum, worlds, beliefs, given, part):  # type: ignore[no-untyped-def]
    """Cost of one action in ``where`` (fryer, slot, horizon's end) on one path, the rest by par; -1 when a
    rule forbids it.
    """
    (f, t, t1), (world, scratch), (belief, known) = where, worlds, beliefs
    _copy(world, scratch, max(0, t - MOST_SLOTS), min(t1 + MOST_SLOTS, world[0].shape[1]))
    part[:] = 0.0
    if action[0] > NOTHING and not start(f, t, action[0], action[1], scratch, given, part):
        return -1.0
    known[0], known[1] = belief[0], belief[1]
    go_on((t, f + 1, t1), dream, mean_sum, scratch, known, given, part)
    # the shelf at a horizon before the close: what the batch that replaces it would cost, as a credit
    left = 0.0
    if t1 < world[0].shape[1]:
        for i in range(world[0].shape[0]):
            last = given[0][3, i, 0] - 1
            stay = scratch[1][3, i] - scratch[1][1, i]
            want = (
                known[0]
                / max(known[1], 1.0)
                * (given[5][i, min(t1 + given[3][i], world[0].shape[1])] - given[5][i, t1])
            )
            useful = min(float(stay), want)
            left += given[4][i, 1] * (stay - useful) - given[2][i, last] / given[0][0, i, last] * useful
    return part[0] + part[1] + part[2] + left


@njit(cache=True, nogil=True, error_model="numpy", _nrt=False)
def _try_paths(where, action, span, ahead, worlds, beliefs, given, out):  # type: ignore[no-untyped-def]
    """Cost of one action on some of the paths."""
    (dreams, mean_sum), (part, cost) = ahead, out
    for n in range(span[0], span[1]):
        cost[n] = _try(where, action, dreams[n], mean_sum, worlds, beliefs, given, part)


@njit(cache=True, nogil=True)
def _candidates(f, t, world, level, base, given, out):  # type: ignore[no-untyped-def]
    """Actions worth a try in an idle fryer, par's own first; returns how many."""
    sizes = given[0]
    out[0, 0], out[0, 1] = base
    count = 1
    if base[0] != NOTHING:
        out[count, 0], out[count, 1] = NOTHING, 0
        count += 1
    if base[0] != FILTER and world[2][1, f] > 0 and may_filter(f, t, world, given):
        out[count, 0], out[count, 1] = FILTER, 0
        count += 1
    need = np.empty(sizes.shape[1])
    for i in range(sizes.shape[1]):
        need[i] = _lack(i, t, t + sizes[1, i, 0], level, world, given) / sizes[0, i, 0]
    ranked = np.argsort(-need)
    for n in range(min(TRIED_PRODUCTS, sizes.shape[1])):
        i = ranked[n]
        for k in range(sizes[3, i, 0]):
            if (i == base[0] and k == base[1]) or not may_drop(f, t, i, k, world, given):
                continue
            if can_sell(i, k, t, level, world, given):
                out[count, 0], out[count, 1] = i, k
                count += 1
    return count


@njit(cache=True, nogil=True)
def rollout(where, ahead, world, belief, given, scratch):  # type: ignore[no-untyped-def]
    """The action for an idle fryer: par's own unless another is cheaper on imagined rests of the day by ``z``
    standard errors.

    ``where`` is (fryer, slot, horizon, z), ``ahead`` (imagined paths, weighed means). Every candidate meets a
    few paths first; the best few meet them all. Returns product, load, mean gain over par, its error.
    """
    (f, t, horizon, z), (dreams, mean_sum) = where, ahead
    level = (given[10] + belief[0]) / (given[10] + belief[1])
    base = par_action(f, t, world, level, given)
    if base[0] >= 0 and not can_sell(base[0], base[1], t, level, world, given):
        base = (NOTHING, 0)
    actions = np.empty((3 + given[1].shape[0] * given[1].shape[1], 2), dtype=np.int64)
    count = _candidates(f, t, world, level, base, given, actions)
    paths, t1 = len(dreams), min(t + horizon, world[0].shape[1])
    cost, part, known = np.zeros((count, paths)), np.zeros(6), np.zeros(2)
    gain, alive = np.full(count, -np.inf), np.ones(count, dtype=np.bool_)
    if count == 1:
        return base[0], base[1], 0.0, 0.0
    first = min(paths, max(FIRST_PATHS, paths // 4))
    for stage in range(2):
        low, high = (0, first) if stage == 0 else (first, paths)
        for c in range(count):
            if not alive[c]:
                continue
            action = (actions[c, 0], actions[c, 1])
            _try_paths(
                (f, t, t1),
                action,
                (low, high),
                (dreams, mean_sum),
                (world, scratch),
                (belief, known),
                given,
                (part, cost[c]),
            )
            gain[c] = (cost[0, :high] - cost[c, :high]).mean()
        if stage == 0:
            ranked = np.argsort(-gain)
            for n in range(count):
                c = ranked[n]
                noise = (cost[0, :high] - cost[c, :high]).std() / np.sqrt(high)
                alive[c] = c == 0 or (n < KEPT_CANDIDATES and gain[c] + noise > 0.0)
    best, most, error = 0, 0.0, 0.0
    for c in range(1, count):
        if alive[c]:
            noise = (cost[0] - cost[c]).std() / np.sqrt(paths)
            if gain[c] - z * noise > most:
                best, most, error = c, gain[c] - z * noise, noise
    return actions[best, 0], actions[best, 1], gain[best] if best else 0.0, error


@njit(cache=True, nogil=True)
def play_par(asked, mean_sum, given, parts):  # type: ignore[no-untyped-def]
    """Whole days by par."""
    for d in range(asked.shape[0]):
        world = fresh(given)
        age(0, world, given, parts[d])
        go_on((0, 0, asked.shape[2]), asked[d], mean_sum, world, np.zeros(2), given, parts[d])


@njit(cache=True, nogil=True)
def play(asked, mean, setting, world, belief, given, out, part):  # type: ignore[no-untyped-def]
    """A day slot by slot from ``setting[0]``, logged; ``setting`` is (first slot, paths, horizon, z, seed);
    no paths means par.

    The world is aged to the first slot already. ``out`` is (log, shelf): ``log`` rows are fryer, product,
    load, slot; ``shelf`` (3, item, slot) is what stands there at the end of a slot, what was asked for in
    vain, and what was thrown away.
    """
    (t0, paths, horizon, z, seed), (log, shelf) = setting, out
    mean_sum, row, scratch, gone = weighed(mean, given[4][:, 2]), 0, fresh(given), world[1][1]
    for t in range(t0, mean.shape[1]):
        if t > t0:
            for i in range(mean.shape[0]):
                shelf[2, i, t] = -gone[i]
            age(t, world, given, part)
            for i in range(mean.shape[0]):
                shelf[2, i, t] += gone[i]
        level, drawn = (given[10] + belief[0]) / (given[10] + belief[1]), False
        dreams = np.zeros((0, 1, 1), dtype=np.int64)
        for f in range(world[2].shape[1]):
            if world[2][0, f] > t or world[3][0, t] >= given[6][0]:
                continue
            if paths:
                if not drawn:
                    last = min(t + horizon, mean.shape[1])
                    dreams, drawn = imagine(t, last, paths, belief, mean, given, seed + 1009 * t), True
                i, k, _, _ = rollout((f, t, horizon, z), (dreams, mean_sum), world, belief, given, scratch)
            else:
                i, k = par_action(f, t, world, level, given)
            if i > NOTHING and start(f, t, i, k, world, given, part):
                log[row, 0], log[row, 1], log[row, 2], log[row, 3] = f, i, k, t
                row += 1
        for i in range(mean.shape[0]):
            shelf[1, i, t] = asked[i, t] + gone[i]
        sell(t, asked, world, given, part)
        for i in range(mean.shape[0]):
            belief[0] += asked[i, t] / given[4][i, 2]
            shelf[1, i, t] -= gone[i]
            shelf[0, i, t] = world[1][0, i] - gone[i]
        belief[1] += mean_sum[t]
    for i in range(mean.shape[0]):
        shelf[2, i, -1] += world[1][0, i] - gone[i]
    close(world, given, part)
