"""Lethality of a temperature curve: D/z integration and what a hold time collects."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.verdicts.tables import log_mean

Array = NDArray[np.float64]


def equivalent_time_s(
    time_s: ArrayLike,
    temp_c: ArrayLike,
    reference_c: float,
    z_k: float,
    low_c: float = -np.inf,
    ceiling_c: float = np.inf,
) -> float:
    """Integral of 10^((T - T_ref)/z) dt [s], exact for temperature linear between samples.

    Parameters
    ----------
    time_s, temp_c : arrays (n,), times rising
    reference_c : reference temperature [degC]
    z_k : z value [K], above 0
    low_c : no credit below this temperature
    ceiling_c : temperatures above count as this one
    """
    time, temp = np.asarray(time_s, dtype=float), np.asarray(temp_c, dtype=float)
    grid = _with_crossings(time, temp, (low_c, ceiling_c))
    t = np.minimum(np.interp(grid, time, temp), ceiling_c)
    rate = 10.0 ** ((t - reference_c) / z_k)
    middle = 0.5 * (t[1:] + t[:-1])
    gained = log_mean(rate[:-1], rate[1:]) * np.diff(grid)
    return float(np.sum(gained[middle >= low_c]))


def log_reduction(
    time_s: ArrayLike,
    temp_c: ArrayLike,
    d_s: float,
    reference_c: float,
    z_k: float,
    low_c: float = -np.inf,
    ceiling_c: float = np.inf,
) -> float:
    """Decimal reductions collected: equivalent time over D at the reference temperature."""
    return equivalent_time_s(time_s, temp_c, reference_c, z_k, low_c, ceiling_c) / d_s


def _with_crossings(time: Array, temp: Array, levels: tuple[float, ...]) -> Array:
    """Times with the moments added at which the curve crosses the levels."""
    extra = []
    for level in levels:
        if not np.isfinite(level):
            continue
        below = temp < level
        for i in np.flatnonzero(below[1:] != below[:-1]):
            share = (level - temp[i]) / (temp[i + 1] - temp[i])
            extra.append(time[i] + share * (time[i + 1] - time[i]))
    if not extra:
        return time
    grid: Array = np.sort(np.concatenate([time, extra]))  # np.unique would load masked arrays at every start
    return np.asarray(grid[np.append(True, grid[1:] != grid[:-1])])


def longest_above_s(time_s: ArrayLike, temp_c: ArrayLike, level_c: float) -> float:
    """Longest unbroken time [s] at or above a level, crossings interpolated."""
    time, temp = np.asarray(time_s, dtype=float), np.asarray(temp_c, dtype=float)
    grid = _with_crossings(time, temp, (level_c,))
    above = np.interp(grid, time, temp) >= level_c - 1e-9
    turns = np.diff(np.concatenate([[False], above, [False]]).astype(np.int8))
    begins, ends = np.flatnonzero(turns == 1), np.flatnonzero(turns == -1) - 1
    return float(max(grid[ends] - grid[begins], default=0.0))


def first_above_s(time_s: ArrayLike, temp_c: ArrayLike, level_c: float) -> float | None:
    """First time [s] at or above a level, or None."""
    time, temp = np.asarray(time_s, dtype=float), np.asarray(temp_c, dtype=float)
    grid = _with_crossings(time, temp, (level_c,))
    above = np.flatnonzero(np.interp(grid, time, temp) >= level_c - 1e-9)
    return float(grid[above[0]]) if len(above) else None
