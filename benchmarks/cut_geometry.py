"""Effective half thickness of the bone-in cuts: the one that reaches 85 degC in the trade's times.

Shape exponents are kept. Targets are common practice, no source: the same times that
docs/theory/validation.md lists as developed on. Run ``python -m benchmarks.cut_geometry`` after a change of
the engine and write what it prints into ``src/frywright/catalog/cuts``.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from tests.reference.rows.fry import bench

from frywright.model.kitchen import Kitchen
from frywright.physics.fry import simulate_many
from frywright.physics.inputs import CLOSE
from frywright.physics.plan import make_plan

CORE_C, SECONDS = 85.0, 1500.0
TARGETS_MIN = {
    "breast_half": (11.46, 14.55),
    "thigh": (10.15, 12.83),
    "drum": (11.33, 14.28),
    "wing": (5.67, 7.11),
}
"""Minutes from the drop under 12 psig (four heads) and in the open (three heads), sea level, dredge, 3.3 degC
start.
"""


def minutes(kitchen: Kitchen) -> dict[str, list[float]]:
    """Time to CORE_C of every usual cut in both programs [min]."""
    plans = [make_plan(kitchen, kitchen.program(name)) for name in ("closed", "open")]
    found: dict[str, list[float]] = {}
    for history in simulate_many(plans, CLOSE):
        for piece in history.pieces:
            if not piece.kind.heavy:
                reached = np.interp(CORE_C, piece.core_c, history.time_s) / 60.0
                found.setdefault(piece.kind.cut.key, []).append(float(reached))
    return found


def fitted() -> dict[str, float]:
    """Half thickness [m] by cut at which the mean log ratio of both times to their targets is zero."""
    kitchen = bench(SECONDS)
    for _ in range(6):
        got = minutes(kitchen)
        cuts = []
        for cut in kitchen.cuts:
            if cut.key in TARGETS_MIN:
                ratio = np.exp(np.mean(np.log(np.array(got[cut.key]) / TARGETS_MIN[cut.key])))
                cut = replace(cut, half_thickness_m=cut.half_thickness_m / ratio**0.55)
            cuts.append(cut)
        kitchen = replace(kitchen, cuts=tuple(cuts))
    for key, times in minutes(kitchen).items():
        print(f"{key}: {times[0]:.2f} and {times[1]:.2f} min, targets {TARGETS_MIN[key]}")
    return {cut.key: cut.half_thickness_m for cut in kitchen.cuts if cut.key in TARGETS_MIN}


if __name__ == "__main__":
    for key, half in fitted().items():
        print(f"{key}: half_thickness_m = {half:.5f}")
