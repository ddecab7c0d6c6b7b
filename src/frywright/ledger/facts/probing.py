"""Facts of probing: thermometers checked, pieces read, what is in doubt, what was done when one was short."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar, Literal

from frywright.ledger.facts.fact import Fact

Step = Literal["recook", "reprobe", "disposition", "cause", "earlier", "closed"]
Disposition = Literal["served", "discarded", "held"]
Decision = Literal["held", "discarded", "released"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermometerChecked(Fact):
    """A thermometer put into ice water, boiling water or both."""

    KIND: ClassVar[str] = "thermometer_check"
    name: str
    thermometer: str
    atmosphere_pa: float
    boiling_point_c: float
    outcome: str
    ice_c: float | None = None
    boil_c: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading(Fact):
    """A piece probed by hand at the lift. Version 1 knew no fryer, product, person or thermometer check."""

    KIND: ClassVar[str] = "probe_reading"
    VERSION: ClassVar[int] = 2
    LABELS: ClassVar[dict[str, str]] = {"core_c": "read"}
    name: str
    thermometer: str
    core_c: float
    limit_c: float
    load: str
    units_count: float
    fryer: str | None = None
    product: str | None = None
    who: str | None = None
    checked: bool | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubted:
    """One reading looked back at after its thermometer failed."""

    entry: int
    read_c: float
    corrected_c: float
    limit_c: float
    in_doubt: bool
    load: str
    units_count: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LookedBack(Fact):
    """Readings of a thermometer that failed its check, seen again with what it misreads."""

    KIND: ClassVar[str] = "look_back"
    name: str
    thermometer: str
    doubts: tuple[Doubted, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseOpened(Fact):
    """A reading below its limit, a hold failure, a failed thermometer or a complaint."""

    KIND: ClassVar[str] = "deviation"
    LABELS: ClassVar[dict[str, str]] = {"core_c": "found"}
    what: Literal["probe", "hold", "thermometer", "complaint"]
    reading_number: int
    fryer: str
    product: str
    pieces_count: int
    core_c: float | None
    limit_c: float | None
    who: str
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseStep(Fact):
    """What was done about a case; each kind of step has fields of its own."""

    KIND: ClassVar[str] = "deviation_step"
    case_number: int
    step: Step
    who: str
    words: str
    core_c: float | None = None
    limit_c: float | None = None
    meets: bool | None = None
    disposition: Disposition | None = None
    cause: str | None = None
    load_number: int | None = None
    decision: Decision | None = None
