"""Is the fryer strong enough? Dip and recovery of a load, and the timed heat-up against its first day."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.events import Load
from frywright.calibrate.heat import Oil
from frywright.model.errors import InputError, Phrase
from frywright.model.findings import Note
from frywright.model.units import to_inside

Array = NDArray[np.float64]
READY_K = to_inside(5.0, "f_diff")
"""Oil counts as back at heat this far below the target. Common practice, no source."""
LEVEL_SHARE, START_K = 0.05, 6.0
HINTS = (
    (1.10, "normal", "As on its first day."),
    (
        1.25,
        "watch",
        (
            "Slower than on its first day: scale, old oil, a low level or a weak heater. A hint only: a"
            " licensed technician confirms."
        ),
    ),
    (
        1.42,
        "low_voltage",
        (
            "About a third slower: as if a 240 V heater ran on 208 V. A hint only: a licensed technician"
            " confirms."
        ),
    ),
    (
        1.75,
        "element",
        (
            "About half as slow again: as if one of three elements were out. A hint only: a licensed"
            " technician confirms."
        ),
    ),
    (
        2.60,
        "phase",
        "About twice as slow: as if one supply phase were lost. A hint only: a licensed technician confirms.",
    ),
)
FAR_OFF = "More than twice as slow: stop and have it looked at by a licensed technician."
"""Ratio up to which each hint holds, between the ratios 1.33 = (240/208)^2, 1.5 = 3/2 and 2.0 of the
arithmetic.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Recovery:
    """What a load did to the oil. ``recovered_s`` is None when the log or the next drop came first."""

    dip_k: float
    lowest_c: float
    lowest_after_s: float
    recovered_s: float | None
    debt_k_s: float
    target_c: float


def recovery(oil: Oil, load: Load, target_c: float, until_s: float) -> Recovery:
    """Dip, time to the minimum, time back to target minus 5 degF, heat debt (K s below target)."""
    first = max(0, int(load.drop_s / oil.step_s) - round(20.0 / oil.step_s))
    part = slice(first, int(until_s / oil.step_s) + 2)
    time, temp = oil.step_s * np.arange(len(oil.temp_c))[part], oil.temp_c[part]
    inside = (time >= load.drop_s) & (time <= until_s) & np.isfinite(temp)
    t, y = time[inside] - load.drop_s, temp[inside]
    if len(t) < 5:
        raise InputError("load", "no readings", "a load with oil readings")
    before = temp[(time >= load.drop_s - 15.0) & (time < load.drop_s) & np.isfinite(temp)]
    start = float(before.mean()) if len(before) else float(y[0])
    low = int(np.argmin(y))
    back = np.flatnonzero(y[low:] >= target_c - READY_K)
    recovered = (
        float(t[low + back[0]])
        if len(back) and y[low] < target_c - READY_K
        else (0.0 if y[low] >= target_c - READY_K else None)
    )
    end = len(t) if recovered is None else max(2, int(np.searchsorted(t, recovered)) + 1)
    short = np.maximum(target_c - y[:end], 0.0)
    debt = float(np.sum(0.5 * (short[1:] + short[:-1]) * np.diff(t[:end])))
    return Recovery(
        dip_k=start - float(y[low]),
        lowest_c=float(y[low]),
        lowest_after_s=float(t[low]),
        recovered_s=recovered,
        debt_k_s=debt,
        target_c=target_c,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatUp:
    """One timed heat-up between two marked temperatures with a known oil mass."""

    from_c: float
    to_c: float
    duration_s: float
    oil_mass_kg: float
    start_c: float

    def __post_init__(self) -> None:
        if not self.to_c > self.from_c or not self.duration_s > 0 or not self.oil_mass_kg > 0:
            raise InputError(
                "heat-up",
                Phrase(
                    "{from_c} to {to_c} in {duration_s}",
                    {"from_c": self.from_c, "to_c": self.to_c, "duration_s": self.duration_s},
                ),
                "a rise in a time, with oil",
            )


def heat_up_in(time_s: Array, oil_c: Array, from_c: float, to_c: float, oil_mass_kg: float) -> HeatUp | None:
    """The first heat-up through two temperatures in a log, crossings interpolated; None if there is none."""
    known = np.isfinite(oil_c)
    t, y = time_s[known], oil_c[known]
    below = np.flatnonzero(y < from_c)
    above = np.flatnonzero(y >= to_c)
    if not len(below) or not len(above):
        return None
    last = above[above > below[0]]
    if not len(last):
        return None
    first = below[below < last[0]][-1]

    def cross(i: int, level: float) -> float:
        return float(t[i] + (level - y[i]) / (y[i + 1] - y[i]) * (t[i + 1] - t[i]))

    return HeatUp(
        from_c=from_c,
        to_c=to_c,
        duration_s=cross(int(last[0]) - 1, to_c) - cross(int(first), from_c),
        oil_mass_kg=oil_mass_kg,
        start_c=float(y[0]),
    )


def compare_heat_up(now: HeatUp, first_day: HeatUp) -> tuple[float, Note]:
    """Ratio of a heat-up to the first day's, and a hint. A hint is never a diagnosis.
    Raises InputError: level or start temperature differ too much: the test is void.
    """
    if abs(now.oil_mass_kg / first_day.oil_mass_kg - 1.0) > LEVEL_SHARE:
        raise InputError(
            "oil level",
            now.oil_mass_kg,
            "within 5 % of the first day's {oil_mass_kg}: the test is void",
            oil_mass_kg=first_day.oil_mass_kg,
            unit="kg",
        )
    if abs(now.from_c - first_day.from_c) > 0.5 or abs(now.to_c - first_day.to_c) > 0.5:
        raise InputError(
            "temperatures",
            Phrase("{from_c} to {to_c}", {"from_c": now.from_c, "to_c": now.to_c}),
            "the first day's {from_c} to {to_c}",
            from_c=first_day.from_c,
            to_c=first_day.to_c,
        )
    if now.start_c > now.from_c + 0.5 or abs(now.start_c - first_day.start_c) > START_K:
        raise InputError(
            "start temperature",
            now.start_c,
            "within {start_k} of the first day's {start_c}: the test is void",
            start_k=START_K,
            start_c=first_day.start_c,
            unit="c",
        )
    ratio = now.duration_s / first_day.duration_s
    for most, kind, text in HINTS:
        if ratio <= most:
            return ratio, Note(kind=kind, text=text)
    return ratio, Note(kind="far_off", text=FAR_OFF)
