"""Facts of care: fryers out of use, tasks done, timed figures, procedure cards, a fryer commissioned."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from frywright.ledger.facts.fact import Fact

YesNo = Literal["", "yes", "no"]


@dataclass(frozen=True, slots=True, kw_only=True)
class StopUse(Fact):
    """A fryer taken out of use; anyone may."""

    KIND: ClassVar[str] = "stop_use"
    fryer: str
    reason: str
    words: str
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Reopened(Fact):
    """A fryer released by a qualified person."""

    KIND: ClassVar[str] = "reopen"
    WORDS: ClassVar[frozenset[str]] = frozenset({"role"})
    fryer: str
    who: str
    role: str
    finding: str
    releases_number: int


@dataclass(frozen=True, slots=True, kw_only=True)
class CareDone(Fact):
    """A task of care done on a day; a calibration with its set point and what the reference read before and,
    where something was adjusted, after.
    """

    KIND: ClassVar[str] = "care_done"
    LABELS: ClassVar[Mapping[str, str]] = {
        "date": "done on",
        "set_c": "set point",
        "before_c": "read before",
        "after_c": "read after",
    }
    WORDS: ClassVar[frozenset[str]] = frozenset({"role"})
    fryer: str
    task: str
    who: str
    role: str
    note: str
    date: dt.date
    thermometer: str | None = None
    set_c: float | None = None
    before_c: float | None = None
    after_c: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FigureTimed(Fact):
    """A figure of a fryer, timed: heat-up, pressure build, vent, recovery."""

    KIND: ClassVar[str] = "care_figure"
    fryer: str
    figure: str
    value_s: float
    who: str
    note: str
    reason: str
    date: dt.date


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstDayTimed(FigureTimed):
    """A figure of a fryer's first day, kept for life."""

    KIND: ClassVar[str] = "first_day"


@dataclass(frozen=True, slots=True, kw_only=True)
class CardWritten(Fact):
    """The kitchen's own version of a procedure card: steps with their hazards, pictures by step."""

    KIND: ClassVar[str] = "procedure"
    FILES: ClassVar[tuple[str, ...]] = ("pictures",)
    key: str
    language: str
    gear: str
    tools: str
    steps: tuple[tuple[str, str], ...]
    pictures: Mapping[str, str]
    version: int
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CardSigned(Fact):
    """A procedure signed as done on a fryer by one person and checked by another."""

    KIND: ClassVar[str] = "procedure_signed"
    FILES: ClassVar[tuple[str, ...]] = ("photo",)
    LABELS: ClassVar[Mapping[str, str]] = {"key": "card"}
    key: str
    version: int
    language: str
    fryer: str
    who: str
    second: str
    note: str
    photo: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PlateTyped(Fact):
    """What a fryer's nameplate says; what it does not print is null."""

    KIND: ClassVar[str] = "nameplate"
    FILES: ClassVar[tuple[str, ...]] = ("photo",)
    fryer: str
    case_number: int
    maker: str
    model: str
    serial: str
    fuel: str
    gas: str
    year: str
    volts_n: float | None
    phases_count: float | None
    hz_n: float | None
    power_w: float | None
    gas_low_pa: float | None
    gas_high_pa: float | None
    oil_mass_kg: float | None
    photo: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SiteMeasured(Fact):
    """What was measured where a fryer stands; what nobody measured is null."""

    KIND: ClassVar[str] = "site_survey"
    fryer: str
    case_number: int
    volts_n: float | None
    phases_count: float | None
    breaker_amps_n: float | None
    gas_static_pa: float | None
    gas_flowing_pa: float | None
    altitude_m: float | None
    flame_distance_m: float | None
    hood: YesNo
    suppression: YesNo
    gas: str
    baffle: bool
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StepSigned(Fact):
    """A step of a commissioning, signed, with what was passed over and the figures the step asks for. Version
    1 knew no amount of oil.
    """

    KIND: ClassVar[str] = "commission_step"
    VERSION: ClassVar[int] = 2
    PEOPLE: ClassVar[tuple[str, ...]] = ("who", "second", "pass_name")
    fryer: str
    step: str
    case_number: int
    who: str
    role: str
    second: str
    note: str
    passed_over: tuple[str, ...]
    pass_name: str
    pass_reason: str
    reason: str
    marks_c: tuple[float, float] | None = None
    set_c: float | None = None
    mean_c: float | None = None
    thermometer: str | None = None
    before_c: float | None = None
    after_c: float | None = None
    swing_k: float | None = None
    full_c: tuple[float, ...] | None = None
    half_c: tuple[float, ...] | None = None
    back_to_back_c: tuple[float, ...] | None = None
    oil_mass_kg: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ReportAttached(Fact):
    """A contractor's report, a certificate or a commissioning report, kept byte for byte with the entry it
    belongs to.
    """

    KIND: ClassVar[str] = "report"
    FILES: ClassVar[tuple[str, ...]] = ("sha256",)
    LABELS: ClassVar[Mapping[str, str]] = {"of_number": "entry"}
    of_number: int
    name: str
    sha256: str
    size_bytes: int
    who: str
