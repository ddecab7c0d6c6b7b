"""The opening of a vent from one time with a watch: the area at which a full load vents that long."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from frywright.model.fryer import MOST_VENT_M2
from frywright.physics.inputs import Lid
from frywright.physics.solve import Cook, RawHistory, run_many

LEAST_VENT_M2 = 2e-6
TRIALS, ROUNDS = 7, 4


def stretch_of(raw: RawHistory, cook: Cook, lid: Lid) -> tuple[float, float] | None:
    """Start and end [s] of the time a cook spent under a state of the lid, or None; a step carries the span
    it lies in.
    """
    wanted = np.array([*(span.lid is lid for span in cook.spans), False])
    inside = np.flatnonzero(wanted[raw.span])
    if not len(inside):
        return None
    return float(raw.time_s[max(inside[0] - 1, 0)]), float(raw.time_s[inside[-1]])


def area_for(cook: Cook, vent_s: float) -> float:
    """Opening [m2] at which the vent of ``cook`` takes ``vent_s``; the nearer end where none does.

    The vent takes longer the smaller the opening is, so each round halves in on the logarithm of the area.
    """
    low, high = LEAST_VENT_M2, MOST_VENT_M2
    for _ in range(ROUNDS):
        areas = np.geomspace(low, high, TRIALS)
        cooks = [replace(cook, vat=replace(cook.vat, vent_area_m2=float(area))) for area in areas]
        found = [stretch_of(raw, asked, Lid.VENT) for raw, asked in zip(run_many(cooks), cooks, strict=True)]
        times = np.array([end - start for start, end in (span or (0.0, 0.0) for span in found)])
        if not times.any():
            return high  # the load builds no pressure that a person reads: nothing to time
        if not times[-1] < vent_s < times[0]:
            return float(areas[-1] if vent_s <= times[-1] else areas[0])
        above = int(np.flatnonzero(times > vent_s)[-1])
        low, high = areas[above], areas[above + 1]
    return float(np.sqrt(low * high))
