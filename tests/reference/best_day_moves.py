"""Kernel of the search for the best plan of a day whose demand is known: annealing over single loads.

All of it lives in one file because compiled code is kept by file. A plan is an array of rows (fryer, product,
load, slot); a row with fryer -1 is empty. Busy fryers and hands are kept as counts, so that a move that
breaks a rule is never taken.
"""

from __future__ import annotations

import numpy as np
from numba import njit

from frywright.physics import kernels

assert kernels.cache_folder()  # importing it sets the folder that keeps compiled code


@njit(cache=True, nogil=True)
def item_cost(i, rows, asked, given):  # type: ignore[no-untyped-def]
    """Batches, lost sales and waste of one product under a plan."""
    sizes, _, cost, holds, money = given
    n_slot = asked.shape[1]
    made = np.zeros(n_slot, dtype=np.int64)
    total = 0.0
    for n in range(len(rows)):
        if rows[n, 0] >= 0 and rows[n, 1] == i:
            made[rows[n, 3] + sizes[1, i, rows[n, 2]]] += sizes[0, i, rows[n, 2]]
            total += cost[i, rows[n, 2]]
    there = gone = dead = 0
    for t in range(n_slot):
        there += made[t]
        if t >= holds[i]:
            dead += made[t - holds[i]]
        if dead > gone:
            total += money[i, 1] * (dead - gone)
            gone = dead
        sale = min(asked[i, t], there - gone)
        gone += sale
        total += money[i, 0] * (asked[i, t] - sale)
    return total + money[i, 1] * (there - gone)


@njit(cache=True, nogil=True)
def _mark(row, sign, busy, hands, given):  # type: ignore[no-untyped-def]
    sizes = given[0]
    f, i, k, t = row
    lift = t + sizes[1, i, k]
    hands[t] += sign
    hands[lift] += sign
    for s in range(t, min(lift + sizes[2, i, k], len(hands))):
        busy[f, s] += sign


@njit(cache=True, nogil=True)
def _fits(row, busy, hands, most, given):  # type: ignore[no-untyped-def]
    sizes, may = given[0], given[1]
    f, i, k, t = row
    lift = t + sizes[1, i, k]
    if t < 0 or lift >= len(hands) or not may[i, k, f] or hands[t] >= most or hands[lift] >= most:
        return False
    free = True
    for s in range(t, min(lift + sizes[2, i, k], len(hands))):
        free = free and busy[f, s] == 0
    return free


@njit(cache=True, nogil=True)
def _change(row, given, n_fryer, n_slot):  # type: ignore[no-untyped-def]
    """A neighbour of a load: another time, fryer, size or product."""
    sizes = given[0]
    f, i, k, t = row
    kind = np.random.randint(0, 5)
    if kind == 0:
        t += np.random.randint(-3, 4)
    elif kind == 1:
        f = np.random.randint(0, n_fryer)
    elif kind == 2:
        k = np.random.randint(0, sizes[3, i, 0])
    elif kind == 3:
        i = np.random.randint(0, sizes.shape[1])
        k = np.random.randint(0, sizes[3, i, 0])
    else:
        t = np.random.randint(0, n_slot)
    return f, i, k, t


@njit(cache=True, nogil=True)
def anneal(rows, asked, given, most, n_fryer, setting):  # type: ignore[no-untyped-def]
    """Improve a plan in place by ``setting`` (moves, first temperature, seed); returns its cost, the best
    kept in ``rows``.
    """
    moves, heat, seed = setting
    np.random.seed(seed)
    n_item, n_slot = asked.shape
    busy, hands = np.zeros((n_fryer, n_slot), dtype=np.int64), np.zeros(n_slot, dtype=np.int64)
    for n in range(len(rows)):
        if rows[n, 0] >= 0:
            _mark((rows[n, 0], rows[n, 1], rows[n, 2], rows[n, 3]), 1, busy, hands, given)
    cost = np.zeros(n_item)
    for i in range(n_item):
        cost[i] = item_cost(i, rows, asked, given)
    best, kept = cost.sum(), rows.copy()
    for m in range(moves):
        temperature = heat * (1.0 - m / moves) ** 2 + 1e-9
        n = np.random.randint(0, len(rows))
        old = (rows[n, 0], rows[n, 1], rows[n, 2], rows[n, 3])
        if old[0] >= 0:
            _mark(old, -1, busy, hands, given)
            new = (
                (np.int64(-1), np.int64(0), np.int64(0), np.int64(0))
                if np.random.random() < 0.15
                else _change(old, given, n_fryer, n_slot)
            )
        else:
            i = np.random.randint(0, n_item)
            new = (
                np.random.randint(0, n_fryer),
                i,
                np.random.randint(0, given[0][3, i, 0]),
                np.random.randint(0, n_slot),
            )
        if new[0] >= 0 and not _fits(new, busy, hands, most, given):
            if old[0] >= 0:
                _mark(old, 1, busy, hands, given)
            continue
        rows[n, 0], rows[n, 1], rows[n, 2], rows[n, 3] = new
        change, first, second = 0.0, 0.0, 0.0
        i_old, i_new = old[1] if old[0] >= 0 else -1, new[1] if new[0] >= 0 else -1
        if i_old >= 0:
            first = item_cost(i_old, rows, asked, given)
            change += first - cost[i_old]
        if i_new >= 0 and i_new != i_old:
            second = item_cost(i_new, rows, asked, given)
            change += second - cost[i_new]
        if change <= 0 or np.random.random() < np.exp(-change / temperature):
            if i_old >= 0:
                cost[i_old] = first
            if i_new >= 0 and i_new != i_old:
                cost[i_new] = second
            if new[0] >= 0:
                _mark(new, 1, busy, hands, given)
            if cost.sum() < best - 1e-9:
                best = cost.sum()
                kept[:] = rows
        else:
            rows[n, 0], rows[n, 1], rows[n, 2], rows[n, 3] = old
            if old[0] >= 0:
                _mark(old, 1, busy, hands, given)
    rows[:] = kept
    return best
