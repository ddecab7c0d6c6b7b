"""Margin of a core curve against a limit, fast enough for tens of thousands of curves.

Says the same as :func:`frywright.verdicts.judge.judge` (a test compares them) for simulated curves that
rise to one summit, which every fry does. What comes after the lift counts for nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.tables import fsis_poultry, uk_equivalents

Array = NDArray[np.float64]


def until(time_s: Array, core_c: Array, end_s: float) -> tuple[Array, Array]:
    """A curve up to a moment, which need not be one of its samples."""
    count = time_s.searchsorted(end_s - 1e-9)
    if count == len(time_s):
        return time_s, core_c
    at_end = np.interp(end_s, time_s, core_c)
    return np.concatenate((time_s[:count], [end_s])), np.concatenate((core_c[:count], [at_end]))


def held_level_c(time_s: Array, core_c: Array, hold_s: float) -> float:
    """Highest temperature that a one-summit curve holds for ``hold_s`` without a break [degC]."""
    if hold_s <= 0.0:
        return float(core_c.max())
    low, high = float(core_c.min()), float(core_c.max())
    top = int(np.argmax(core_c))
    rising = np.maximum.accumulate(core_c[: top + 1])
    falling = np.minimum.accumulate(core_c[top:])
    for _ in range(40):
        level = 0.5 * (low + high)
        start = np.interp(level, rising, time_s[: top + 1])
        end = np.interp(-level, -falling, time_s[top:])
        low, high = (level, high) if end - start >= hold_s else (low, level)
    return low


def margin_k(
    time_s: Array, core_c: Array, lift_s: float, limit: CookLimit, guard_k: float, fat_pct: float = 12.0
) -> float:
    """Kelvin to spare (positive) or lacking (negative) by the lift after the guard band.
    Raises InputError: the limit is of a kind without a margin here (log reduction).
    """
    time_s, core_c = until(time_s, core_c, lift_s)
    rows = _rows(limit, fat_pct)
    return max(held_level_c(time_s, core_c, needed) - temp for temp, needed in rows) - guard_k


def _rows(limit: CookLimit, fat_pct: float) -> list[tuple[float, float]]:
    """Temperatures and the times they are to be held, of which one is enough."""
    if limit.kind == "instant" and limit.level_c is not None:
        return [(limit.level_c, limit.hold_s)]
    if limit.kind not in ("table", "equivalent"):
        raise InputError("limit", limit.kind, "instant, table or equivalent")
    table = uk_equivalents() if limit.rule == "uk_core" else fsis_poultry("chicken", fat_pct)
    return list(zip(table.temp_c, table.time_s, strict=True))


@dataclass(frozen=True, slots=True)
class Curves:
    """Core curves of many loads one after another: load k has rows ``first[k]`` to ``first[k + 1]``."""

    time_s: Array
    core_c: Array  # (row, piece)
    first: NDArray[np.int64]
    lift_s: Array  # of each load

    def at(self, moment_s: Array) -> tuple[Array, Array, Array]:
        """At a moment of each load, (load, piece): highest core before it, core, and what a curve that never
        falls back reads.
        """
        start = self.first[:-1]
        load = np.repeat(np.arange(len(start)), np.diff(self.first))
        before = self.time_s <= moment_s[load]
        count = np.maximum(np.add.reduceat(before.astype(np.int64), start), 1)
        highest = np.maximum.reduceat(np.where(before[:, None], self.core_c, -np.inf), start)
        low = start + count - 1
        high = np.minimum(low + 1, self.first[1:] - 1)
        apart = self.time_s[high] - self.time_s[low]
        share = np.divide(moment_s - self.time_s[low], apart, out=np.zeros_like(apart), where=apart > 0.0)
        share = np.clip(share, 0.0, 1.0)[:, None]
        core = self.core_c[low] + share * (self.core_c[high] - self.core_c[low])
        highest = np.maximum(highest, self.core_c[low])
        return highest, core, highest + share * np.maximum(self.core_c[high] - highest, 0.0)


def margins_k(curves: Curves, limit: CookLimit, guard_k: float, fat_pct: Sequence[float]) -> Array:
    """:func:`margin_k` of all curves at once, (load, piece); ``fat_pct`` is of the pieces.

    A level without a time is reached by the highest core up to the lift. A curve whose summit is its lift
    holds a level from where it first passes it to the lift; any other is asked alone.
    """
    lift, start = curves.lift_s, curves.first[:-1]
    highest, core, _ = curves.at(lift)
    level = np.full(core.shape, -np.inf)
    held: dict[float, Array] = {0.0: np.maximum(highest, core)}
    falls = highest > core
    for piece, fat in enumerate(fat_pct):
        rows = _rows(limit, fat)
        falls[:, piece] &= any(needed > 0.0 for _, needed in rows)
        for temp, asked in rows:
            needed = max(asked, 0.0)
            if needed not in held:
                moment = lift - needed
                inside = (moment >= curves.time_s[start])[:, None]
                coldest = np.minimum.reduceat(curves.core_c, start)
                held[needed] = np.where(inside, curves.at(np.maximum(moment, 0.0))[2], coldest)
            level[:, piece] = np.maximum(level[:, piece], held[needed][:, piece] - temp)
    found = level - guard_k
    for load, piece in zip(*np.nonzero(falls), strict=True):
        part = slice(curves.first[load], curves.first[load + 1])
        alone = curves.time_s[part], curves.core_c[part, piece], float(lift[load])
        found[load, piece] = margin_k(*alone, limit, guard_k, fat_pct[piece])
    return found
