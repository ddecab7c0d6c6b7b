"""Lethality of a temperature curve: D/z integration and what a hold time collects."""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.verdicts.tables import log_mean

Array = NDArray[np.float64]
TOUCH_K = 1e-9
"""A sample so little below a level stands at it."""
TILT_K = 1e-13
"""Slope from sample to sample of a curve that stands, so that each level is passed at one moment."""
WARMED_K = 1.0
"""Levels so far above a curve's lowest sample, or further, are asked of its summit."""


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
        if not isfinite(level):
            continue
        below = temp < level
        for i in (below[1:] != below[:-1]).nonzero()[0].tolist():
            share = (level - temp[i]) / (temp[i + 1] - temp[i])
            extra.append(time[i] + share * (time[i + 1] - time[i]))
    if not extra:
        return time
    grid: Array = np.concatenate([time, extra])  # np.unique would load masked arrays at every start
    grid.sort()
    new = grid[1:] != grid[:-1]
    return grid if new.all() else grid[np.concatenate([[True], new])]


def above(time_s: ArrayLike, temp_c: ArrayLike, level_c: float) -> tuple[float, float | None]:
    """Longest unbroken time [s] at or above a level, crossings interpolated; the first time [s] there, or
    None.
    """
    time, temp = np.asarray(time_s, dtype=float), np.asarray(temp_c, dtype=float)
    grid = _with_crossings(time, temp, (level_c,))
    there = np.zeros(len(grid) + 2, dtype=np.int8)
    there[1:-1] = np.interp(grid, time, temp) >= level_c - TOUCH_K
    turns = np.diff(there)
    begins, ends = (turns == 1).nonzero()[0], (turns == -1).nonzero()[0] - 1
    if not len(begins):
        return 0.0, None
    return float(max(grid[ends] - grid[begins])), float(grid[begins[0]])


def longest_above_s(time_s: ArrayLike, temp_c: ArrayLike, level_c: float) -> float:
    """Longest unbroken time [s] at or above a level."""
    return above(time_s, temp_c, level_c)[0]


def first_above_s(time_s: ArrayLike, temp_c: ArrayLike, level_c: float) -> float | None:
    """First time [s] at or above a level, or None."""
    return above(time_s, temp_c, level_c)[1]


def _strictly(values: Array) -> Array | None:
    """Values that rise, from such as rise or stand but for less than ``TOUCH_K``; None where they fall."""
    if (np.diff(values) > 0.0).all():
        return values
    highest = np.maximum.accumulate(values)
    tilted: Array = highest + TILT_K * np.arange(len(values))
    return tilted if (highest - values).max() < TOUCH_K else None


@dataclass(frozen=True, slots=True)
class Summit:
    """A curve that rises to one summit and falls from it: :func:`above` for many levels at once."""

    low_c: float
    rising_c: Array
    rising_s: Array
    falling_c: Array
    falling_s: Array

    @classmethod
    def of(cls, time_s: Array, temp_c: Array) -> Summit | None:
        """The summit of a curve; None where it turns more than once or does not get warm."""
        begin = int(np.argmax(temp_c > temp_c.min() + WARMED_K))
        top = int(np.argmax(temp_c))
        low = float(max(temp_c[begin], temp_c[:begin].max(initial=-np.inf)))
        rising, falling = _strictly(temp_c[begin : top + 1]), _strictly(-temp_c[top:])
        if begin > top or rising is None or falling is None:
            return None
        return cls(low, rising, time_s[begin : top + 1], -falling, time_s[top:])

    def held_s(self, level_c: Array) -> Array:
        """Time [s] at or above levels of ``low_c`` or more."""
        begin = np.interp(level_c, self.rising_c, self.rising_s)
        end = np.interp(-level_c, -self.falling_c, self.falling_s)
        return np.where(level_c <= self.rising_c[-1], end - begin, 0.0)

    def bearable_k(self, level_c: Array, held_s: Array) -> float | None:
        """How far [K] the curve may sink and still hold one of these levels for its time; None where it would
        sink below ``low_c``.
        """
        levels = np.concatenate([self.rising_c, self.falling_c[self.falling_c >= self.low_c]])
        levels.sort()
        held = self.held_s(levels)
        highest = np.interp(held_s, held[::-1], levels[::-1]) + TOUCH_K * (held_s == 0.0)
        best = int(np.argmax(highest - level_c))
        return float(highest[best] - level_c[best]) if held_s[best] <= held[0] else None
