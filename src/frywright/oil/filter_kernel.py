"""Kernel of the oil outlook: a bank of extended Kalman filters over the days of many vats, and futures drawn
from them.

All of it lives in one file because compiled code is kept by file. A day is: growth while hot, a reading at
the peak, a top-up or a discard. The state is, in order: level; usual growth; how far this week's growth is
off it; what a weekend adds; how much of what is told as top-up goes in; the meter's offset and gain error.
Members of the bank differ in how growth changes with the level and in how restless it is.
"""

from __future__ import annotations

from math import erfc, exp, log, pi, sqrt

import numpy as np

from frywright.physics.kernels import njit

LEVEL, GROWTH, WEEK, WEEKEND, TOP_UP, OFFSET, GAIN = range(7)
STATES = 7
SPAN_PCT = 20.0
"""Points over which a member's growth changes by its bend: from fresh oil, 4, to a usual limit, 24."""
LEAST_BEND, LEAST_WEEKEND = 0.05, -0.8
"""Growth never falls below this share of the usual by its bend, nor a weekend's below a fifth."""


@njit(cache=True, nogil=True, error_model="numpy")
def bent(level, fresh, bend):  # type: ignore[no-untyped-def]
    """Growth at a level over growth in fresh oil."""
    return max(1.0 + bend * (level - fresh) / SPAN_PCT, LEAST_BEND)


@njit(cache=True, nogil=True, error_model="numpy")
def _put(cover, k, row):  # type: ignore[no-untyped-def]
    """A new row and column ``k`` of a covariance."""
    for i in range(STATES):
        cover[k, i] = row[i]
        cover[i, k] = row[i]


@njit(cache=True, nogil=True, error_model="numpy")
def _level_moves(cover, slope, row):  # type: ignore[no-untyped-def]
    """Covariance after the level became a function of the state with this slope."""
    for i in range(STATES):
        total = 0.0
        for j in range(STATES):
            total += slope[j] * cover[j, i]
        row[i] = total
    own = 0.0
    for j in range(STATES):
        own += slope[j] * row[j]
    row[0] = own
    _put(cover, 0, row)


@njit(cache=True, nogil=True, error_model="numpy")
def _grow(x, cover, day, fresh, member, walk, part):  # type: ignore[no-untyped-def]
    """A day's growth. ``day``: heat, weekend; ``member``: bend, restlessness; ``walk``: sd a day of every
    state and what a week keeps of its deviation.
    """
    (heat, weekend), (bend, rest), (slope, row) = day, member, part
    lean, extra = bent(x[LEVEL], fresh, bend), 1.0 + weekend * x[WEEKEND]
    rate = max(x[GROWTH] * extra + x[WEEK], 0.0)
    slope[:] = 0.0
    slope[LEVEL] = 1.0 + (heat * rate * bend / SPAN_PCT if lean > LEAST_BEND else 0.0)
    slope[GROWTH], slope[WEEK], slope[WEEKEND] = (
        heat * lean * extra,
        heat * lean,
        heat * lean * x[GROWTH] * weekend,
    )
    x[LEVEL] += heat * rate * lean
    _level_moves(cover, slope, row)
    kept = walk[STATES]
    x[WEEK] *= kept
    for i in range(STATES):
        cover[WEEK, i] *= kept
        cover[i, WEEK] *= kept
    cover[WEEK, WEEK] += rest**2 * (1.0 - kept**2)
    cover[LEVEL, LEVEL] += walk[LEVEL] ** 2 * heat
    for i in range(GROWTH, STATES):
        cover[i, i] += walk[i] ** 2


@njit(cache=True, nogil=True, error_model="numpy")
def _read(x, cover, seen, slope, robust, part):  # type: ignore[no-untyped-def]
    """Take in one number; returns the log of its chance. ``seen``: number less what is expected, sd of its
    error; ``robust``: chance and sd of one that is far off.
    """
    (gap, noise), (gains, row) = seen, part
    spread = 0.0
    for i in range(STATES):
        total = 0.0
        for j in range(STATES):
            total += cover[i, j] * slope[j]
        row[i] = total
    for j in range(STATES):
        spread += slope[j] * row[j]
    near, far = spread + noise**2, spread + noise**2 + robust[1] ** 2
    good = (1.0 - robust[0]) * exp(-0.5 * gap**2 / near) / sqrt(near)
    bad = robust[0] * exp(-0.5 * gap**2 / far) / sqrt(far)
    if good + bad <= 0.0:
        return -700.0
    sure = good / (good + bad)
    step = sure / near + (1.0 - sure) / far
    apart = sure * (1.0 - sure) * (gap * (1.0 / near - 1.0 / far)) ** 2
    for i in range(STATES):
        gains[i] = row[i]
        x[i] += step * gap * row[i]
    for i in range(STATES):
        for j in range(STATES):
            cover[i, j] -= (step - apart) * gains[i] * gains[j]
    return log((good + bad) / sqrt(2.0 * pi))


@njit(cache=True, nogil=True, error_model="numpy")
def _meter_checked(x, cover, check, error, start, part):  # type: ignore[no-untyped-def]
    """A check of the meter on oils of known level: what was known of it before is forgotten. ``check`` holds
    known and read, twice; ``start``: variances of the states.
    """
    slope, gains, row = part
    for k in (OFFSET, GAIN):
        row[:] = 0.0
        row[k] = start[k]
        _put(cover, k, row)
        x[k] = 0.0
    for n in range(0, check.shape[0], 2):
        known, read = check[n], check[n + 1]
        if known == known and read == read:
            slope[:] = 0.0
            slope[OFFSET], slope[GAIN] = 1.0, known
            gap = read - known - x[OFFSET] - x[GAIN] * known
            _read(x, cover, (gap, error), slope, (0.0, 1.0), (gains, row))


@njit(cache=True, nogil=True, error_model="numpy")
def _over(x, cover, weekend, fresh, bend, limit, slope):  # type: ignore[no-untyped-def]
    """Chance that tomorrow's peak passes the limit."""
    lean, extra = bent(x[LEVEL], fresh, bend), 1.0 + weekend * x[WEEKEND]
    rate = max(x[GROWTH] * extra + x[WEEK], 0.0)
    slope[:] = 0.0
    slope[LEVEL] = 1.0 + (rate * bend / SPAN_PCT if lean > LEAST_BEND else 0.0)
    slope[GROWTH], slope[WEEK], slope[WEEKEND] = lean * extra, lean, lean * x[GROWTH] * weekend
    var = 0.0
    for i in range(STATES):
        total = 0.0
        for j in range(STATES):
            total += cover[i, j] * slope[j]
        var += slope[i] * total
    return 0.5 * erfc((limit - x[LEVEL] - rate * lean) / sqrt(2.0 * max(var, 1e-9)))


@njit(cache=True, nogil=True, error_model="numpy")
def run(days, checks, fresh, start, bank, laws, out):  # type: ignore[no-untyped-def]
    """Filter every vat with every member.

    days : heat, weekend, share, discard, reading, noise, by meter, each (vat, day), weekend with the day
        after the last; a reading that is not there is NaN
    checks : (vat, day, 4) known and read twice, or NaN; fresh : (vat,)
    start : means and sd of the states (vat, state), sd of fresh oil
    bank : bend, restlessness, a weekend's more and its sd, log weight, each (member,)
    laws : walk (state + 1), robust (2,), what evidence keeps a day, error of a check, limit
    out : means (vat, member, state), covers, log weights (vat, member), chance of tomorrow (vat, day)
    """
    (heat, weekend, share, discard, reading, noise, by_meter) = days
    (bends, rests, extras, extra_sds, leans), (walk, robust, keep, error, limit) = bank, laws
    means, covers, weights, tomorrow = out
    slope, row, gains = np.zeros(STATES), np.zeros(STATES), np.zeros(STATES)
    for v in range(heat.shape[0]):
        for m in range(len(bends)):
            for i in range(STATES):
                means[v, m, i] = start[0][v, i]
                covers[v, m, i, i] = start[1][v, i] ** 2
            covers[v, m, WEEK, WEEK], covers[v, m, WEEKEND, WEEKEND] = rests[m] ** 2, extra_sds[m] ** 2
            means[v, m, WEEKEND] = extras[m]
            weights[v, m] = leans[m]
        for d in range(heat.shape[1]):
            for m in range(len(bends)):
                x, cover = means[v, m], covers[v, m]
                day = (heat[v, d], weekend[v, d])
                _grow(x, cover, day, fresh[v], (bends[m], rests[m]), walk, (slope, row))
                if checks[v, d, 0] == checks[v, d, 0]:
                    _meter_checked(x, cover, checks[v, d], error, start[1][v] ** 2, (slope, gains, row))
                weights[v, m] = keep * weights[v, m] + (1.0 - keep) * leans[m]
                if reading[v, d] == reading[v, d]:
                    slope[:] = 0.0
                    slope[LEVEL], gap = 1.0, reading[v, d] - x[LEVEL]
                    if by_meter[v, d]:
                        slope[LEVEL], slope[OFFSET], slope[GAIN] = 1.0 + x[GAIN], 1.0, x[LEVEL]
                        gap -= x[OFFSET] + x[GAIN] * x[LEVEL]
                    weights[v, m] += _read(x, cover, (gap, noise[v, d]), slope, robust, (gains, row))
                _replace(x, cover, (share[v, d], discard[v, d]), fresh[v], start[2], (slope, row))
            most, total, chance = weights[v].max(), 0.0, 0.0
            for m in range(len(bends)):
                weight = exp(weights[v, m] - most)
                total += weight
                chance += weight * _over(
                    means[v, m], covers[v, m], weekend[v, d + 1], fresh[v], bends[m], limit, slope
                )
            tomorrow[v, d] = chance / total
            for m in range(len(bends)):
                weights[v, m] -= most + log(total)


@njit(cache=True, nogil=True, error_model="numpy")
def _replace(x, cover, told, fresh, fresh_sd, part):  # type: ignore[no-untyped-def]
    """A top-up by a share, or new oil."""
    (share, discard), (slope, row) = told, part
    if discard:
        x[LEVEL] = fresh
        row[:] = 0.0
        row[LEVEL] = fresh_sd**2
        _put(cover, LEVEL, row)
    elif share > 0.0:
        part_new = min(max(share * x[TOP_UP], 0.0), 1.0)
        slope[:] = 0.0
        slope[LEVEL], slope[TOP_UP] = 1.0 - part_new, -share * (x[LEVEL] - fresh)
        x[LEVEL] += part_new * (fresh - x[LEVEL])
        _level_moves(cover, slope, row)


@njit(cache=True, nogil=True, error_model="numpy")
def futures(drawn, bends, rests, ahead, laws, seed, when):  # type: ignore[no-untyped-def]
    """Days until each drawn path's peak passes the limit; infinite where it never does.

    drawn : states (path, state); ahead : weekend (day,); laws : limit, share, fresh, heat, sd a day of the
    level, of the growth, and what a week keeps
    """
    limit, share, fresh, heat, level_sd, growth_sd, kept = laws
    np.random.seed(seed)
    for n in range(len(drawn)):
        x, when[n] = drawn[n], np.inf
        level, last = x[LEVEL], x[LEVEL]
        part = min(max(share * x[TOP_UP], 0.0), 1.0)
        shake = rests[n] * sqrt(1.0 - kept**2)
        for d in range(len(ahead)):
            rate = max(x[GROWTH] * (1.0 + ahead[d] * max(x[WEEKEND], LEAST_WEEKEND)) + x[WEEK], 0.0)
            peak = (
                level
                + heat * rate * bent(level, fresh, bends[n])
                + level_sd * sqrt(heat) * np.random.standard_normal()
            )
            if peak > limit:
                inside = (limit - last) / max(peak - last, 1e-9)
                when[n] = d + min(max(inside, 0.0), 1.0)
                break
            last, level = peak, peak + part * (fresh - peak)
            x[WEEK] = kept * x[WEEK] + shake * np.random.standard_normal()
            x[GROWTH] = max(x[GROWTH] + growth_sd * np.random.standard_normal(), 0.0)
