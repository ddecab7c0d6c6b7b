"""What a picture of a cook draws: curves in people's units, marks and the limit."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceCurve:
    """One class of piece over time, in people's units."""

    name: str
    cut: str
    heavy: bool
    core: list[float]
    surface: list[float]
    crust: list[float]
    loss_pct: list[float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Curves:
    """Oil, gauge and pieces at the same times since the drop."""

    time_s: list[float]
    degree: str  # sign of the temperatures
    pressure_unit: str
    crust_unit: str
    oil: list[float]
    gauge: list[float]
    pieces: tuple[PieceCurve, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """A moment with a name."""

    time_s: float
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """The limit as a line across the picture, in people's units."""

    value: float
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CookPicture:
    """A cook as it is drawn. ``sentence`` is what a reader of screens says in its place."""

    sentence: str
    coldest: str  # name of the piece that decides
    curves: Curves
    marks: tuple[Mark, ...]
    limit: Level | None


@dataclass(frozen=True, slots=True, kw_only=True)
class LogCurve:
    """One channel of a logger's file, in people's units; None where it is open."""

    name: str
    role: str
    values: list[float | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class LogMark:
    """What was found in a log, and when: drop, lift, vent or probe out of the oil."""

    time_s: float
    kind: str


@dataclass(frozen=True, slots=True, kw_only=True)
class LogCurves:
    """A log as it is drawn."""

    time_s: list[float]
    degree: str
    channels: tuple[LogCurve, ...]
    marks: tuple[LogMark, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ResidualCurve:
    """Measured less fitted along one curve."""

    name: str
    time_s: list[float]
    left_k: list[float]
    shown_in: str  # suffix of a temperature difference: a kitchen's degrees
    rms: float
