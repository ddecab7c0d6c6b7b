"""What can be calibrated from a log, and one parameter found with its interval."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Parameter:
    """Something that can be calibrated: its place and its bounds."""

    place: str  # cut or fryer
    low: float
    high: float


PARAMETERS: dict[str, Parameter] = {
    "half_thickness_m": Parameter(place="cut", low=0.003, high=0.045),
    "shape_n": Parameter(place="cut", low=0.0, high=2.0),
    "area_factor_n": Parameter(place="cut", low=0.3, high=3.0),
    "drip_frac": Parameter(place="cut", low=0.0, high=0.6),
    "vent_area_m2": Parameter(place="fryer", low=2e-6, high=1e-3),
    "lid_ua_w_k": Parameter(place="fryer", low=1.0, high=500.0),
    "working_gauge_pa": Parameter(place="fryer", low=10e3, high=110e3),
}
LID = ("vent_area_m2", "lid_ua_w_k", "working_gauge_pa")


@dataclass(frozen=True, slots=True, kw_only=True)
class Fitted:
    """One parameter found. ``low`` and ``high`` bound 95 %."""

    name: str
    value: float
    sd: float
    low: float
    high: float
    before: float
