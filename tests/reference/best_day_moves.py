"""Kernel of the search for the best plan of a day whose demand is known: annealing over loads and filter
turns.

All of it lives in one file because compiled code is kept by file. A plan is an array of rows (fryer, product
or -1 for a filter turn, load, slot); a row with fryer -1 is empty. What is in use is kept as counts, so that
a move that breaks a rule is never taken. ``given`` are the arrays of :mod:`frywright.plan.engine`; the rules
are written here anew.

``use``: busy (f, t), starts (f, t: 1 a load, 2 a filter turn), hands (t), turns (t), watts (t).
"""

from __future__ import annotations

import numpy as np

from frywright.physics.kernels import njit

SHIFTED_FRAC, GONE_FRAC, TURN_FRAC = 0.03, 0.15, 0.1
"""Shares of moves that shift the rest of a fryer's day, take a row out, try a filter turn."""


@njit(cache=True, nogil=True)
def item_cost(i, rows, asked, given):  # type: ignore[no-untyped-def]
    """Batches, lost sales and waste of one product under a plan; of product -1 the filter turns."""
    sizes, cost, holds, money = given[0], given[2], given[3], given[4]
    n_slot = asked.shape[1]
    made = np.zeros(n_slot, dtype=np.int64)
    total = 0.0
    for n in range(len(rows)):
        if rows[n, 0] >= 0 and rows[n, 1] == i:
            if i < 0:
                total += given[11]
                continue
            made[rows[n, 3] + sizes[1, i, rows[n, 2]]] += sizes[0, i, rows[n, 2]]
            total += cost[i, rows[n, 2]]
    if i < 0:
        return total
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
def _until(row, given):  # type: ignore[no-untyped-def]
    """Slots of lift and of being free again."""
    i, k, t = row[1], row[2], row[3]
    if i < 0:
        return t, t + given[6][2]
    lift = t + given[0][1, i, k]
    return lift, lift + given[0][2, i, k]


@njit(cache=True, nogil=True)
def _mark(row, sign, use, given):  # type: ignore[no-untyped-def]
    busy, starts, hands, turns, watts = use
    f, i, t = row[0], row[1], row[3]
    lift, free = _until(row, given)
    hands[t] += sign
    starts[f, t] += sign * (2 if i < 0 else 1)
    if i >= 0:
        hands[lift] += sign
    for s in range(t, min(free, len(hands))):
        busy[f, s] += sign
        if i < 0:
            turns[s] += sign
        else:
            watts[s] += sign * given[9][f]


@njit(cache=True, nogil=True)
def _fits(row, use, given):  # type: ignore[no-untyped-def]
    """Whether a row may be added to what is in use; how many loads a filter turn allows is asked apart."""
    busy, _, hands, turns, watts = use
    may, bank, windows, rush, power = given[1], given[6], given[7], given[8], given[9]
    f, i, k, t = row
    n_slot = len(hands)
    lift, free = _until(row, given)
    if t < windows[f, 0] or t >= windows[f, 1] or t >= n_slot or hands[t] >= bank[0]:
        return False
    if i < 0:
        if free > n_slot:
            return False
        clear = True
        for s in range(t, free):
            clear = clear and not busy[f, s] and not rush[s] and turns[s] < bank[3]
        return clear
    if lift >= n_slot or lift >= windows[f, 1] or not may[i, k, f] or hands[lift] >= bank[0]:
        return False
    clear = True
    for s in range(t, min(free, n_slot)):
        clear = clear and not busy[f, s] and watts[s] + power[f] <= power[-1]
    return clear


@njit(cache=True, nogil=True)
def _filtered(f, use, given):  # type: ignore[no-untyped-def]
    """Whether a fryer never does more loads than a filter turn allows."""
    since, starts = 0, use[1]
    for t in range(starts.shape[1]):
        if starts[f, t] >= 2:
            since = 0
        elif starts[f, t] == 1:
            since += 1
            if since > given[6][1]:
                return False
    return True


@njit(cache=True, nogil=True)
def _change(row, given, n_fryer, n_slot):  # type: ignore[no-untyped-def]
    """A neighbour of a load or a filter turn: another time, fryer, size or product."""
    sizes = given[0]
    f, i, k, t = row
    kind = np.random.randint(0, 5)
    if kind == 0 or (i < 0 and kind in (2, 3)):
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
    return f, i, k, max(t, 0)


@njit(cache=True, nogil=True)
def _new(given, n_fryer, n_slot):  # type: ignore[no-untyped-def]
    f, t = np.random.randint(0, n_fryer), np.random.randint(0, n_slot)
    if np.random.random() < TURN_FRAC:
        return f, -1, 0, t
    i = np.random.randint(0, given[0].shape[1])
    return f, i, np.random.randint(0, given[0][3, i, 0]), t


@njit(cache=True, nogil=True)
def _row(rows, n):  # type: ignore[no-untyped-def]
    return rows[n, 0], rows[n, 1], rows[n, 2], rows[n, 3]


@njit(cache=True, nogil=True)
def _shift(rows, use, given):  # type: ignore[no-untyped-def]
    """Move all of a fryer from a slot on by a few slots; false, and nothing moved, where a rule forbids
    it.
    """
    f, t = np.random.randint(0, use[0].shape[0]), np.random.randint(0, use[0].shape[1])
    by = np.random.randint(1, 4) * (1 if np.random.random() < 0.5 else -1)
    moved = np.flatnonzero((rows[:, 0] == f) & (rows[:, 3] >= t))
    for n in moved:
        _mark(_row(rows, n), -1, use, given)
        rows[n, 3] += by
    done, good = 0, True
    for n in moved:
        if rows[n, 3] < 0 or not _fits(_row(rows, n), use, given):
            good = False
            break
        _mark(_row(rows, n), 1, use, given)
        done += 1
    if good:
        return True
    for n in moved[:done]:
        _mark(_row(rows, n), -1, use, given)
    for n in moved:
        rows[n, 3] -= by
        _mark(_row(rows, n), 1, use, given)
    return False


@njit(cache=True, nogil=True)
def _replace(n, old, new, rows, use, given):  # type: ignore[no-untyped-def]
    """Put one row in another's place; false, and nothing done, where a rule forbids it."""
    if old[0] >= 0:
        _mark(old, -1, use, given)
    good = new[0] < 0 or _fits(new, use, given)
    if good and new[0] >= 0:
        _mark(new, 1, use, given)
    if good:
        kept = (old[0] < 0 or _filtered(old[0], use, given)) and (new[0] < 0 or _filtered(new[0], use, given))
        if kept:
            rows[n, 0], rows[n, 1], rows[n, 2], rows[n, 3] = new
            return True
        if new[0] >= 0:
            _mark(new, -1, use, given)
    if old[0] >= 0:
        _mark(old, 1, use, given)
    return False


@njit(cache=True, nogil=True)
def _back(n, old, new, rows, use, given):  # type: ignore[no-untyped-def]
    """Undo a replacement."""
    if new[0] >= 0:
        _mark(new, -1, use, given)
    if old[0] >= 0:
        _mark(old, 1, use, given)
    rows[n, 0], rows[n, 1], rows[n, 2], rows[n, 3] = old


@njit(cache=True, nogil=True)
def _used(rows, shape, given):  # type: ignore[no-untyped-def]
    n_fryer, n_slot = shape
    use = (
        np.zeros((n_fryer, n_slot), dtype=np.int64),
        np.zeros((n_fryer, n_slot), dtype=np.int64),
        np.zeros(n_slot, dtype=np.int64),
        np.zeros(n_slot, dtype=np.int64),
        np.zeros(n_slot),
    )
    for n in range(len(rows)):
        if rows[n, 0] >= 0:
            _mark(_row(rows, n), 1, use, given)
    return use


@njit(cache=True, nogil=True)
def anneal(rows, asked, given, setting):  # type: ignore[no-untyped-def]
    """Improve a plan in place by ``setting`` (moves, first temperature, seed); returns its cost, the best
    kept in ``rows``.
    """
    moves, heat, seed = setting
    np.random.seed(seed)
    n_item, n_slot = asked.shape
    n_fryer = len(given[7])
    use = _used(rows, (n_fryer, n_slot), given)
    cost = np.zeros(n_item + 1)  # the last is of the filter turns
    for i in range(-1, n_item):
        cost[i] = item_cost(i, rows, asked, given)
    best, kept, tried = cost.sum(), rows.copy(), cost.copy()
    for m in range(moves):
        temperature = heat * (1.0 - m / moves) ** 2 + 1e-9
        if np.random.random() < SHIFTED_FRAC:
            before = rows.copy()
            if not _shift(rows, use, given):
                continue
            for i in range(-1, n_item):
                tried[i] = item_cost(i, rows, asked, given)
            change = tried.sum() - cost.sum()
            if change <= 0 or np.random.random() < np.exp(-change / temperature):
                cost[:] = tried
            else:
                rows[:] = before
                use = _used(rows, (n_fryer, n_slot), given)
        else:
            n = np.random.randint(0, len(rows))
            old, empty = _row(rows, n), (np.int64(-1), np.int64(0), np.int64(0), np.int64(0))
            new = _new(given, n_fryer, n_slot)
            if old[0] >= 0:
                gone = np.random.random() < GONE_FRAC
                new = empty if gone else _change(old, given, n_fryer, n_slot)
            if not _replace(n, old, new, rows, use, given):
                continue
            tried[:] = cost
            if old[0] >= 0:
                tried[old[1]] = item_cost(old[1], rows, asked, given)
            if new[0] >= 0:
                tried[new[1]] = item_cost(new[1], rows, asked, given)
            change = tried.sum() - cost.sum()
            if change <= 0 or np.random.random() < np.exp(-change / temperature):
                cost[:] = tried
            else:
                _back(n, old, new, rows, use, given)
        if cost.sum() < best - 1e-9:
            best = cost.sum()
            kept[:] = rows
    rows[:] = kept
    return best
