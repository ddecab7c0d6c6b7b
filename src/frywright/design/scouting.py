"""Scouting sums a practitioner knows: rules of thumb to stand beside a simulation, never instead."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.model.fryer import FryerKind

START_PER_K = 0.05 / (12.0 / 1.8)
"""Share of the time per kelvin of start temperature: 38 to 50 degF takes 5 % off. Common practice, no
source.
"""

ALTITUDE_PER_M = {FryerKind.OPEN: 0.10 / 1524.0, FryerKind.PRESSURE: 0.04 / 1524.0}
"""Share of the time per metre: 5000 ft adds about 10 % open, 4 % under pressure. Common practice, no
source.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoutingSum:
    """A first guess of the time and its three factors."""

    time_s: float
    weight_n: float
    start_n: float
    altitude_n: float


def scouting_time(
    known_s: float, *, weight_ratio: float, warmer_k: float, higher_m: float, kind: FryerKind
) -> ScoutingSum:
    """Time for another piece from a known one: weight to the power 2/3, start temperature, altitude.

    Parameters
    ----------
    known_s : proven time [s]
    weight_ratio : new over known piece weight [-]
    warmer_k : how much warmer the new piece starts [K]
    higher_m : how much higher the new kitchen lies [m]
    kind : open or pressure
    """
    weight = weight_ratio ** (2.0 / 3.0)
    start = 1.0 - START_PER_K * warmer_k
    altitude = 1.0 + ALTITUDE_PER_M[kind] * higher_m
    return ScoutingSum(
        time_s=known_s * weight * start * altitude, weight_n=weight, start_n=start, altitude_n=altitude
    )
