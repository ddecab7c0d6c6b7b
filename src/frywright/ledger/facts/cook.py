"""Facts of cooking: the kitchen's file, its programs, simulations, proofs, cards, slots and read-backs."""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, ClassVar, Literal, Self

from frywright.ledger.facts.fact import Fact
from frywright.model.kitchen import ProveAgain
from frywright.model.program import Answered, Program, Stage

Origin = Literal["designed", "carried"]
PLACE_OF_A_PROGRAM = {"altitude_m": None, "unit_mass_kg": None}
"""What a program of version 1 did not say: it was for the kitchen's own altitude and bird."""


@dataclass(frozen=True, slots=True, kw_only=True)
class KitchenSet(Fact):
    """A kitchen file as it was read in. Version 1 gave no reason for a change."""

    KIND: ClassVar[str] = "kitchen"
    VERSION: ClassVar[int] = 2
    file: str
    text: str
    reason: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofsAsked(Fact):
    """A change of the kitchen moved what is predicted of programs: each must be proved again."""

    KIND: ClassVar[str] = "prove_again"
    kitchen_number: int
    programs: tuple[ProveAgain, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramText:
    """A program as an entry holds it: every value written, what it does not set as null."""

    name: str
    product: str
    fryer: str
    stages: tuple[Stage, ...]
    version: int
    total_s: float | None
    drain_s: float
    hold_life_s: float
    load_heads: float | None
    altitude_m: float | None
    unit_mass_kg: float | None

    @classmethod
    def of(cls, program: Program, **more: Any) -> Self:
        """A program's text; ``more`` are fields of a fact that extends it."""
        return cls(**{f.name: getattr(program, f.name) for f in dataclasses.fields(Program)}, **more)

    @property
    def program(self) -> Program:
        """The program of the text."""
        return Program(**{f.name: getattr(self, f.name) for f in dataclasses.fields(Program)})


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramSaved(ProgramText, Fact):
    """A version of a program. Version 1 knew no altitude and no bird size of its own, version 2 not where its
    stages came from: the search (``designed``), another program (``carried``), or a person's hand (None).
    """

    KIND: ClassVar[str] = "program"
    VERSION: ClassVar[int] = 3
    short: Answered | None = None
    origin: Origin | None = None

    @classmethod
    def older(cls, payload: Mapping[str, Any]) -> Mapping[str, Any]:
        """A program of version 1 is for the kitchen's own altitude and bird."""
        return {**PLACE_OF_A_PROGRAM, **payload}


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramProved(Fact):
    """A program was proved for a kitchen, and whether it held."""

    KIND: ClassVar[str] = "program_proof"
    name: str
    version: int
    kitchen_number: int
    holds: bool
    outcome: str
    samples_count: int
    lowest_k: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ShortCardPrinted(Fact):
    """The card of a program that is predicted short was printed, and who answers for it."""

    KIND: ClassVar[str] = "short_card"
    name: str
    version: int
    fryer: str
    short: Answered


@dataclass(frozen=True, slots=True, kw_only=True)
class SlotChosen(Fact):
    """The slot of a fryer's controller that holds a program."""

    KIND: ClassVar[str] = "slot"
    name: str
    fryer: str
    slot: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ValueDiffers:
    """One value that a machine holds and its card does not say; ``name`` is a setting's own."""

    stage: int
    what: str
    card: str
    machine: str
    slip: str
    name: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SettingRead:
    """A standing setting of a machine as it was read; ``name`` is the kitchen's own, empty for what every
    control has.
    """

    key: str
    name: str
    value: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadBackTaken(Fact):
    """A machine's values read by one person and compared with its card by another. Version 1 kept no
    settings.
    """

    KIND: ClassVar[str] = "readback"
    PEOPLE: ClassVar[tuple[str, ...]] = ("read_by", "checked_by")
    VERSION: ClassVar[int] = 2
    LABELS: ClassVar[dict[str, str]] = {"read_by": "read by", "checked_by": "checked by"}
    name: str
    version: int
    fryer: str
    slot: int
    read_by: str
    checked_by: str
    started_at: str
    matches: bool
    figure_card: str
    figure_read: str
    mismatches: tuple[ValueDiffers, ...]
    settings: tuple[SettingRead, ...] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SimulatedPiece:
    """One class of pieces of a simulated load."""

    name: str
    piece_mass_kg: float
    core_at_lift_c: float
    core_peak_c: float
    crust_at_lift_m: float
    browning_n: float
    salmonella_log_n: float
    yield_frac: float
    core_c: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SimulatedVerdict:
    """What a rule says of one class of pieces."""

    piece: str
    outcome: str
    rule: str
    edition: str
    margin_k: float | None
    margin_s: float | None
    missing: tuple[str, ...]
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SimulatedNote:
    """A remark beside a simulation."""

    kind: str
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PredictedAndProven:
    """The two facts of a program, as they were shown."""

    state: str
    short: bool
    word: str
    amount: str
    predicted: str
    proven: bool
    proven_word: str
    evidence: str
    margin_k: float | None
    missing: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SimulationKept(Fact):
    """A simulated load: its question, curves and verdicts. Version 1 knew no clock, no vent and no facts."""

    KIND: ClassVar[str] = "simulation"
    VERSION: ClassVar[int] = 2
    program: str
    version: int
    fryer: str
    product: str
    stages: tuple[Stage, ...]
    units_count: float
    load_kg: float
    altitude_m: float
    lift_s: float
    vent_s: float | None
    full_pressure_s: float | None
    lowest_oil_c: float
    moisture_loss_frac: float
    uptake_frac: float
    yield_frac: float
    heat_kwh: float
    pieces: tuple[SimulatedPiece, ...]
    time_s: tuple[float, ...]
    oil_c: tuple[float, ...]
    gauge_pa: tuple[float, ...]
    verdicts: tuple[SimulatedVerdict, ...]
    notes: tuple[SimulatedNote, ...]
    energy_gap_frac: float
    catalog_version: str
    clock_s: float | None = None
    earliest_lift_s: float | None = None
    vent_told: bool | None = None
    facts: PredictedAndProven | None = None
    setting: str | None = None
    setting_error_k: float | None = None
    short: Answered | None = None
