"""Is the thermometer right? Ice and boiling checks, due dates, corrections and the look-back after a
failure.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.model.errors import InputError
from frywright.model.units import to_inside
from frywright.physics.steam import boiling_temp_c

Array = NDArray[np.float64]
ICE_C = 0.0
ALLOWED_K = to_inside(2.0, "f_diff")
"""Ice point within 2 degF (32 degF plus or minus 2), as US Food Code 4-203.11 asks of a thermometer; from
memory.
"""
BOIL_ERROR_K = 0.6
"""The boiling method itself is good to about 1 degF (university extension guidance on thermometer checks,
from memory).
"""
DUE_DAYS = 7
"""Weekly at least, and after a fall. Common practice, no source."""


class CheckOutcome(StrEnum):
    """Result of a thermometer check."""

    GOOD = "good"
    FAILED = "failed"


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermometerCheck:
    """One check of one thermometer. Readings in degC; the boiling point is that of the place."""

    thermometer: str
    at: dt.datetime
    ice_c: float | None
    boil_c: float | None
    atmosphere_pa: float = 101325.0

    def __post_init__(self) -> None:
        if self.ice_c is None and self.boil_c is None:
            raise InputError(
                "check", "without a reading", "an ice or a boiling reading", where=self.thermometer
            )
        if not self.thermometer.strip():
            raise InputError(
                "thermometer", "without a name", "the mark on the probe; an unnamed probe cannot be followed"
            )
        for name, value, low, high in (("ice", self.ice_c, -20.0, 20.0), ("boil", self.boil_c, 70.0, 125.0)):
            if value is not None and not low <= value <= high:
                raise InputError(
                    name,
                    value,
                    "{low_c} to {high_c}",
                    where=self.thermometer,
                    unit="c",
                    low_c=low,
                    high_c=high,
                )

    @property
    def boiling_point_c(self) -> float:
        """Boiling point of water at the place [degC]."""
        return float(boiling_temp_c(self.atmosphere_pa))

    @property
    def errors_k(self) -> tuple[float, ...]:
        """Reading minus truth at each point."""
        points = ((self.ice_c, ICE_C), (self.boil_c, self.boiling_point_c))
        return tuple(read - truth for read, truth in points if read is not None)

    @property
    def outcome(self) -> CheckOutcome:
        """Good when every point is within what is allowed."""
        ice_ok = self.ice_c is None or abs(self.ice_c - ICE_C) <= ALLOWED_K + 1e-9
        boil_ok = (
            self.boil_c is None or abs(self.boil_c - self.boiling_point_c) <= ALLOWED_K + BOIL_ERROR_K + 1e-9
        )
        return CheckOutcome.GOOD if ice_ok and boil_ok else CheckOutcome.FAILED

    @property
    def due_at(self) -> dt.datetime:
        """When the next check is due."""
        return self.at + dt.timedelta(days=DUE_DAYS)

    @property
    def correction(self) -> tuple[tuple[float, float], ...]:
        """Points (reading, correction to add) for :func:`corrected`."""
        points = ((self.ice_c, ICE_C), (self.boil_c, self.boiling_point_c))
        return tuple((read, truth - read) for read, truth in points if read is not None)


def corrected(reading_c: ArrayLike, points: Sequence[tuple[float, float]]) -> Array:
    """Readings with the correction added: interpolated between points, the nearest one's outside them."""
    read = np.asarray(reading_c, dtype=float)
    if not points:
        return read
    at, add = np.array(sorted(points)).T
    return np.asarray(read + np.interp(read, at, add))


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbeReading:
    """One hand reading with what it stood for. ``number`` points to its entry."""

    number: int
    at: dt.datetime
    thermometer: str
    core_c: float
    limit_c: float
    load: str = ""
    units_count: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubt:
    """A reading re-read with the bias removed."""

    reading: ProbeReading
    corrected_c: float
    in_doubt: bool


def look_back(
    readings: Sequence[ProbeReading], checks: Sequence[ThermometerCheck], failed: ThermometerCheck
) -> list[Doubt]:
    """Every reading of a thermometer since its last good check, with the failed check's error removed.

    Without an earlier good check, every reading of it is re-read.
    """
    good = [
        c.at
        for c in checks
        if c.thermometer == failed.thermometer and c.outcome is CheckOutcome.GOOD and c.at < failed.at
    ]
    since = max(good) if good else None
    out = []
    for reading in sorted(readings, key=lambda r: r.at):
        if (
            reading.thermometer != failed.thermometer
            or reading.at > failed.at
            or (since and reading.at <= since)
        ):
            continue
        value = float(corrected(reading.core_c, failed.correction))
        out.append(Doubt(reading=reading, corrected_c=value, in_doubt=value < reading.limit_c))
    return out
