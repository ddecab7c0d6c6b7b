"""Facts of probing: thermometers checked, pieces read, what is in doubt, what was done when one was short."""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, ClassVar, Literal, Self

from frywright.ledger.facts.fact import Fact
from frywright.model.calibration import Calibration

Step = Literal["recook", "reprobe", "disposition", "cause", "earlier", "closed"]
Disposition = Literal["served", "discarded", "held"]
Decision = Literal["held", "discarded", "released"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermometerChecked(Fact):
    """A thermometer put into ice water, boiling water or both."""

    KIND: ClassVar[str] = "thermometer_check"
    WORDS: ClassVar[frozenset[str]] = frozenset({"outcome"})
    name: str
    thermometer: str
    atmosphere_pa: float
    boiling_point_c: float
    outcome: str
    ice_c: float | None = None
    boil_c: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading(Fact):
    """A piece probed by hand at the lift. Version 1 knew no fryer, product, person or thermometer check;
    version 2 had a limit for every food, and judged all by that of poultry; version 3 knew no program and no
    piece; version 4 not the thermometer's own error.

    ``stages`` marks the stages of the program as they were when the piece was cooked, ``load_number`` the
    load of the probing it came from, ``rest_core_c`` the highest core after the lift and ``rest_s`` when,
    ``corrected_c`` the reading with the error that the thermometer showed at its newest check taken off. One
    that takes the place of a mistyped one says why in ``words``, and who saw the thermometer too.
    """

    KIND: ClassVar[str] = "probe_reading"
    VERSION: ClassVar[int] = 5
    LABELS: ClassVar[dict[str, str]] = {
        "core_c": "read",
        "rest_core_c": "highest after the lift",
        "corrected_c": "thermometer's error taken off",
    }
    WORDS: ClassVar[frozenset[str]] = frozenset({"place", "load_kind"})
    name: str
    thermometer: str
    core_c: float
    limit_c: float | None  # None: neither a rule here nor the house speaks of the food
    load: str
    units_count: float
    fryer: str | None = None
    product: str | None = None
    who: str | None = None
    checked: bool | None = None
    program: str | None = None
    version: int | None = None
    stages: str | None = None
    cut: str | None = None
    place: str | None = None
    load_kind: str | None = None
    load_number: int | None = None
    mass_kg: float | None = None
    rest_core_c: float | None = None
    rest_s: float | None = None
    corrected_c: float | None = None
    words: str | None = None
    second: str | None = None

    @property
    def judged_c(self) -> float:
        """What it is judged by: the lower of what was read and that with the thermometer's error taken off
        [degC].
        """
        return lower_of(self.core_c, self.corrected_c)

    @property
    def below(self) -> bool:
        """Whether it is below the limit it was judged by."""
        return self.limit_c is not None and self.judged_c < self.limit_c


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldRead(Fact):
    """Food read in hot holding: where it is kept, its coldest piece, and the limit of the place."""

    KIND: ClassVar[str] = "hold_reading"
    LABELS: ClassVar[dict[str, str]] = {
        "core_c": "read",
        "corrected_c": "thermometer's error taken off",
        "kept_in": "kept in",
    }
    kept_in: str
    product: str
    core_c: float
    limit_c: float | None
    thermometer: str
    checked: bool
    corrected_c: float | None
    who: str

    @property
    def below(self) -> bool:
        """Whether it is below the limit it was judged by."""
        return self.limit_c is not None and lower_of(self.core_c, self.corrected_c) < self.limit_c


def lower_of(read_c: float, corrected_c: float | None) -> float:
    """The lower of a reading and the same with its thermometer's error taken off [degC]: an error is never
    believed where it would help.
    """
    return read_c if corrected_c is None else min(read_c, corrected_c)


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramProbed(Fact):
    """Readings of a program's pieces decided it: at least ``coverage_frac`` of the slowest pieces are over
    the limit, one was read below it, or so many readings did not show it.
    """

    KIND: ClassVar[str] = "program_probed"
    WORDS: ClassVar[frozenset[str]] = frozenset({"outcome"})
    name: str
    version: int
    stages: str
    fryer: str
    product: str
    outcome: Literal["meets", "fails", "not shown"]
    chance_frac: float
    coverage_frac: float
    risk_frac: float
    limit_c: float
    low_k: float
    readings: tuple[int, ...]


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
    """A reading below its limit, a hold failure, a failed thermometer or a complaint. Version 1 knew no
    thermometer's error.
    """

    KIND: ClassVar[str] = "deviation"
    VERSION: ClassVar[int] = 2
    WORDS: ClassVar[frozenset[str]] = frozenset({"what"})
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
    corrected_c: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseStep(Fact):
    """What was done about a case; each kind of step has fields of its own. Version 1 knew no thermometer."""

    KIND: ClassVar[str] = "deviation_step"
    VERSION: ClassVar[int] = 2
    WORDS: ClassVar[frozenset[str]] = frozenset({"step", "disposition", "cause", "decision"})
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
    thermometer: str | None = None
    corrected_c: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class LogKept(Fact):
    """A logger's file kept byte for byte beside the store."""

    KIND: ClassVar[str] = "probe_log"
    FILES: ClassVar[tuple[str, ...]] = ("sha256",)
    name: str
    sha256: str
    size_bytes: int


@dataclass(frozen=True, slots=True, kw_only=True)
class FittedValue:
    """One parameter found from logs; ``low`` and ``high`` bound 95 %."""

    name: str
    value: float
    sd: float
    low: float
    high: float
    before: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CalibrationKept(Fact):
    """A cut fitted to a log, or (``road`` is lift) to readings at the lift. Version 1 knew no drip and not
    the program that was logged, version 2 logs only.
    """

    KIND: ClassVar[str] = "calibration"
    VERSION: ClassVar[int] = 3
    name: str
    cut: str
    coating: str
    lid: Literal["open", "pressure"]
    half_thickness_m: float
    shape_n: float
    reference_mass_kg: float
    pieces_count: int
    mass_low_kg: float
    mass_high_kg: float
    oil_low_c: float
    oil_high_c: float
    start_low_c: float
    start_high_c: float
    error_k: float
    area_factor_n: float | None
    drip_frac: float | None
    program: str
    made_on: str
    log: str
    rms_k: float
    fitted: tuple[FittedValue, ...]
    runs_count: int
    road: Literal["lift"] | None = None

    @classmethod
    def of(cls, made: Calibration, **more: Any) -> Self:
        """A calibration with what is kept of its fit."""
        return cls(name=made.cut, **dataclasses.asdict(made), **more)

    @property
    def calibration(self) -> Calibration:
        """What the kitchen's simulations use."""
        return Calibration(**{f.name: getattr(self, f.name) for f in dataclasses.fields(Calibration)})

    @classmethod
    def older(cls, payload: Mapping[str, Any]) -> Mapping[str, Any]:
        """Version 1 said nothing of drip and of no program."""
        return {"drip_frac": None, "program": "", **payload}


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldStudied(Fact):
    """A table of holding scores and what it says of the hold life."""

    KIND: ClassVar[str] = "hold_study"
    name: str
    table: str
    result: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SampleProved(Fact):
    """Readings of one program's loads, and what they say of every piece of such loads. Version 1 was of a
    load that was only named, and always had a limit.
    """

    KIND: ClassVar[str] = "sample_proof"
    VERSION: ClassVar[int] = 2
    name: str
    readings: str
    outcome: str
    bound_c: float | None
    limit_c: float | None
    count: int
    checked: bool
    version: int | None = None
    fryer: str | None = None
    product: str | None = None
