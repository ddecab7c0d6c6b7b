"""Lid under pressure, read from a gauge curve: build, full pressure, vent, zero."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
FULL_SHARE = 0.9
LEAST_GAUGE_PA = 10e3
ZERO_PA = 1500.0
SHORTEST_S = 45.0
"""What counts as under pressure and as zero in a log. Estimates."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pressed:
    """One time under pressure, from the first rise to zero. Times from the log's start."""

    closed_s: float
    full_s: float | None
    vent_s: float
    zero_s: float | None
    plateau_pa: float


def pressed_in(time_s: Array, gauge_pa: Array) -> list[Pressed]:
    """Times under pressure in a gauge curve, in order."""
    known = np.isfinite(gauge_pa)
    t, p = time_s[known], gauge_pa[known]
    found = []
    above = p > LEAST_GAUGE_PA
    edges = np.flatnonzero(np.diff(np.r_[False, above, False].astype(int)))
    for a, b in zip(edges[::2], edges[1::2], strict=True):
        if t[b - 1] - t[a] < SHORTEST_S:
            continue
        plateau = float(np.percentile(p[a:b], 80))
        full = np.flatnonzero(p[a:b] >= FULL_SHARE * plateau)
        start = a
        while start > 0 and p[start - 1] > ZERO_PA and p[start - 1] <= p[start] + ZERO_PA:
            start -= 1
        zero = np.flatnonzero(p[b:] < ZERO_PA)
        found.append(
            Pressed(
                closed_s=float(t[start]),
                full_s=float(t[a + full[0]]),
                vent_s=float(t[a + full[-1]]),
                zero_s=float(t[b + zero[0]]) if len(zero) else None,
                plateau_pa=plateau,
            )
        )
    return found
