"""Margin of a core curve against a limit, fast enough for tens of thousands of curves.

Says the same as :func:`frywright.verdicts.judge.judge` (a test compares them) for simulated curves that
rise to one summit, which every fry does. What comes after the lift counts for nothing.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.tables import fsis_poultry, uk_equivalents

Array = NDArray[np.float64]


def until(time_s: Array, core_c: Array, end_s: float) -> tuple[Array, Array]:
    """A curve up to a moment, which need not be one of its samples."""
    before = time_s < end_s - 1e-9
    if before.all():
        return time_s, core_c
    return np.append(time_s[before], end_s), np.append(core_c[before], np.interp(end_s, time_s, core_c))


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

    Raises
    ------
    InputError
        The limit is of a kind without a margin here (log reduction).
    """
    time_s, core_c = until(time_s, core_c, lift_s)
    if limit.kind == "instant" and limit.level_c is not None:
        return held_level_c(time_s, core_c, limit.hold_s) - guard_k - limit.level_c
    if limit.kind not in ("table", "equivalent"):
        raise InputError("limit", limit.kind, "instant, table or equivalent")
    table = uk_equivalents() if limit.rule == "uk_core" else fsis_poultry("chicken", fat_pct)
    rows = zip(table.temp_c, table.time_s, strict=True)
    return max(held_level_c(time_s, core_c, needed) - temp for temp, needed in rows) - guard_k
