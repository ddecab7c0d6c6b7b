"""Pressure rules: a lid is never opened above zero gauge; vent time counts."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from frywright.model.findings import Outcome, Verdict


def judge_opening(time_s: ArrayLike, gauge_pa: ArrayLike, lift_s: float, zero_pa: float) -> Verdict:
    """Whether the gauge stands at zero when the lid opens (the lift at the latest).

    This is a simulation's word about a plan. At the fryer only the gauge and a silent vent
    count; the timer is no proof.
    """
    gauge = float(np.interp(lift_s, np.asarray(time_s, dtype=float), np.asarray(gauge_pa, dtype=float)))
    met = gauge <= zero_pa * 1.05
    return Verdict(
        outcome=Outcome.UNKNOWN if met else Outcome.FAILS,
        rule="lid_at_zero_gauge",
        edition="",
        sentence=(
            "The vent is predicted to reach zero before the lid opens. At the fryer only a gauge at zero and"
            " a silent vent count."
            if met
            else (
                "The gauge still reads {gauge_pa} when the program ends: the lid must stay shut. Never"
                " force it."
            )
        ),
        values={"gauge_pa": gauge},
        missing=("gauge at zero and a silent vent, seen at the fryer",) if met else (),
    )
