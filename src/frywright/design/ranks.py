"""Which conditions move a margin most, by ranks."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def sensitivity(names: Sequence[str], points: Array, lowest: Array) -> tuple[tuple[str, float], ...]:
    """Rank correlation of each varied factor with the lowest margin, strongest first."""
    varied = [i for i in range(points.shape[1]) if np.ptp(points[:, i]) > 0]
    if len(points) < 3 or np.ptp(lowest) == 0:
        return ()
    y = ranks(lowest)
    found = [(names[i], float(np.corrcoef(ranks(points[:, i]), y)[0, 1])) for i in varied]
    return tuple(sorted(found, key=lambda pair: -abs(pair[1])))


def ranks(values: Array) -> Array:
    """Ranks from 1; equal values share the mean of theirs."""
    _, place, count = np.unique(values, return_inverse=True, return_counts=True)
    return np.asarray((np.cumsum(count) - 0.5 * (count - 1))[place])
