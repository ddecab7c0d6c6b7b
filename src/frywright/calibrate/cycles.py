"""Thermostat: heat cycles, control mean, swing, offset, and what to do about it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.heat import HeatState, Oil
from frywright.model.errors import InputError
from frywright.model.findings import Note
from frywright.model.units import to_inside

Array = NDArray[np.float64]
LEAST_CYCLES = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class OffsetPolicy:
    """When an offset is fine, entered, or a technician's work. Common practice, no source: 5, 10 and 2
    degF.
    """

    fine_k: float = to_inside(5.0, "f_diff")
    service_k: float = to_inside(10.0, "f_diff")
    verify_k: float = to_inside(2.0, "f_diff")
    drift_k: float = to_inside(3.0, "f_diff")
    slope_k: float = to_inside(4.0, "f_diff")


class Advice(StrEnum):
    """What to do about an offset."""

    FINE = "fine"
    ENTER_OFFSET = "enter_offset"
    SERVICE = "service"
    NOT_ENOUGH = "not_enough"


@dataclass(frozen=True, slots=True, kw_only=True)
class Control:
    """How the thermostat holds idle oil. Temperatures as read by the corrected reference probe."""

    mean_c: float
    swing_k: float
    error_k: float
    cycles_count: int
    peaks_c: tuple[float, ...]
    valleys_c: tuple[float, ...]
    peak_times_s: tuple[float, ...]
    valley_times_s: tuple[float, ...]
    drift_k: float

    @property
    def enough(self) -> bool:
        """Whether there are cycles enough to speak of a mean."""
        return self.cycles_count >= LEAST_CYCLES


def control_mean(peaks: Sequence[float], valleys: Sequence[float]) -> float:
    """Mean of the mean of the peaks and the mean of the valleys, in the unit given (common practice, no
    source). Raises InputError: there is no peak or no valley.
    """
    if not peaks or not valleys:
        raise InputError("peaks and valleys", "missing", "at least one of each")
    return 0.5 * (float(np.mean(peaks)) + float(np.mean(valleys)))


def control(oil: Oil, heat: HeatState, idle: Sequence[tuple[float, float]]) -> Control:
    """Control mean and swing over the idle stretches [s] of an oil curve."""
    places = {1: [], -1: []}  # type: dict[int, list[int]]
    quiet = _mask(oil.time_s, idle)
    for place, sign in heat.kinks:
        if quiet[place]:
            places[sign].append(place)
    peaks, valleys = (tuple(_level(oil.temp_c, k) for k in places[sign]) for sign in (-1, 1))
    peaks, valleys = (tuple(v for v in side if np.isfinite(v)) for side in (peaks, valleys))
    if not peaks or not valleys:
        inside = _inside(oil, idle)
        mean = float(np.nanmean(inside)) if len(inside) else float("nan")
        return Control(
            mean_c=mean,
            swing_k=0.0,
            error_k=float("nan"),
            cycles_count=0,
            peaks_c=(),
            valleys_c=(),
            peak_times_s=(),
            valley_times_s=(),
            drift_k=0.0,
        )
    cycles = min(len(peaks), len(valleys))
    mean = control_mean(peaks, valleys)
    spread = (
        np.sqrt(np.var(peaks, ddof=1) / len(peaks) + np.var(valleys, ddof=1) / len(valleys))
        if cycles > 1
        else np.nan
    )
    third = max(1, len(peaks) // 3)
    drift = float(np.mean(peaks[-third:]) - np.mean(peaks[:third])) if len(peaks) >= 2 * LEAST_CYCLES else 0.0
    return Control(
        mean_c=mean,
        swing_k=float(np.mean(peaks) - np.mean(valleys)),
        error_k=float(0.5 * spread),
        cycles_count=cycles,
        peaks_c=peaks,
        valleys_c=valleys,
        peak_times_s=tuple(oil.step_s * k for k in places[-1]),
        valley_times_s=tuple(oil.step_s * k for k in places[1]),
        drift_k=drift,
    )


def _level(temp: Array, place: int) -> float:
    near = temp[max(0, place - 1) : place + 2]
    return float(np.nanmedian(near)) if np.isfinite(near).any() else float("nan")


def _mask(time: Array, stretches: Sequence[tuple[float, float]]) -> NDArray[np.bool_]:
    """Times inside any of some stretches."""
    mask = np.zeros(len(time), dtype=bool)
    for a, b in stretches:
        mask[np.searchsorted(time, a) : np.searchsorted(time, b, side="right")] = True
    return mask


def _inside(oil: Oil, idle: Sequence[tuple[float, float]]) -> Array:
    return oil.temp_c[_mask(oil.time_s, idle) & np.isfinite(oil.temp_c)]


def display_mean(time_s: Array, display_c: Array, idle: Sequence[tuple[float, float]]) -> float:
    """Mean of a logged display over the idle stretches [degC]."""
    known = display_c[_mask(time_s, idle) & np.isfinite(display_c)]
    return float(known.mean()) if len(known) else float("nan")


def oil_mean(oil: Oil, idle: Sequence[tuple[float, float]]) -> float:
    """Time mean of idle oil [degC], to set beside a logged display."""
    known = _inside(oil, idle)
    return float(known.mean()) if len(known) else float("nan")


def offset_note(offset_k: float) -> Note:
    """Direction of an offset in words: display minus reference."""
    if abs(offset_k) < 0.1:
        return Note(kind="offset", text="Display and reference agree.")
    if offset_k > 0:
        return Note(
            kind="offset",
            text="The display reads {offset_k} high: the true oil is colder than shown.",
            values={"offset_k": offset_k},
        )
    return Note(
        kind="offset",
        text="The display reads {offset_k} low: the true oil is hotter than shown.",
        values={"offset_k": -offset_k},
    )


def advise(
    control_found: Control,
    offset_k: float,
    policy: OffsetPolicy | None = None,
    other_offset_k: float | None = None,
) -> tuple[Advice, Note]:
    """Fine, enter an offset and verify, or call service.

    ``other_offset_k`` is the offset found at a second set point; a difference is a slope error,
    which no offset mends.
    """
    policy = policy or OffsetPolicy()
    if not control_found.enough:
        return Advice.NOT_ENOUGH, Note(
            kind="not_enough",
            text="Not enough full heat cycles: {count} of {least}. Log longer, without a load.",
            values={"count": control_found.cycles_count, "least": LEAST_CYCLES},
        )
    if other_offset_k is not None and abs(offset_k - other_offset_k) > policy.slope_k:
        return Advice.SERVICE, Note(
            kind="slope",
            text=(
                "The offset changes by {change_k} between two set points: a failing sensor or control, not an"
                " offset. Call a licensed technician."
            ),
            values={"change_k": abs(offset_k - other_offset_k)},
        )
    if abs(control_found.drift_k) > policy.drift_k:
        return Advice.SERVICE, Note(
            kind="drift",
            text="The control mean drifts by {drift_k} within the log. Call a licensed technician.",
            values={"drift_k": control_found.drift_k},
        )
    if abs(offset_k) > policy.service_k:
        return Advice.SERVICE, Note(
            kind="service",
            text=(
                "An offset of {offset_k} is too large to paper over: find the cause. Call a licensed"
                " technician."
            ),
            values={"offset_k": abs(offset_k)},
        )
    if abs(offset_k) > policy.fine_k:
        return Advice.ENTER_OFFSET, Note(
            kind="enter",
            text=(
                "Enter the offset as the maker's manual says, then log again: the mean must come within"
                " {verify_k} or this stays open."
            ),
            values={"verify_k": policy.verify_k},
        )
    return Advice.FINE, Note(
        kind="fine", text="Within {fine_k}: leave it as it is.", values={"fine_k": policy.fine_k}
    )
