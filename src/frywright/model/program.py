"""Cook programs: stages with one oil set point and one lid state each."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import pairwise

from frywright.model.errors import InputError, Phrase, check_text
from frywright.model.fryer import CEILING_C, LONGEST_CALLED
from frywright.model.units import within


def name_key(name: str) -> str:
    """What a name says whatever its dashes, spaces, capitals and accents: two names with one key are taken
    for each other.
    """
    plain = "".join(c for c in unicodedata.normalize("NFKD", name.casefold()) if not unicodedata.combining(c))
    plain = re.sub(r"(?<=\d)[,.'\s](?=\d{3}(?!\d))", "", plain)
    return " ".join(re.findall(r"[^\W_]+", plain))


class LidState(StrEnum):
    """Lid during a stage."""

    OPEN = "open"
    PRESSURE = "pressure"


class StageEnd(StrEnum):
    """What ends a stage."""

    DURATION = "duration"
    ELAPSED = "elapsed"  # clock since the drop
    LEFT = "left"  # time left of the whole program
    OIL_ABOVE = "oil_above"
    CORE_ABOVE = "core_above"
    GAUGE_ABOVE = "gauge_above"


TIMED = (StageEnd.DURATION, StageEnd.ELAPSED, StageEnd.LEFT)
ENDS = (
    ("duration_s", StageEnd.DURATION),
    ("until_elapsed_s", StageEnd.ELAPSED),
    ("until_left_s", StageEnd.LEFT),
    ("until_oil_c", StageEnd.OIL_ABOVE),
    ("until_core_c", StageEnd.CORE_ABOVE),
    ("until_gauge_pa", StageEnd.GAUGE_ABOVE),
)
"""Fields of a stage of which one is given, and the end it stands for."""


LOWEST_M, HIGHEST_M = -500.0, 5000.0
"""Altitudes at which people live and fry (own estimate)."""


def check_altitude(altitude_m: float, where: str) -> None:
    """Whether people fry at such an altitude. Raises InputError: far below the sea, or higher than people
    live.
    """
    if not LOWEST_M <= altitude_m <= HIGHEST_M:
        raise InputError(
            "altitude",
            altitude_m,
            "{low_m} to {high_m}",
            where=where,
            unit="m",
            low_m=LOWEST_M,
            high_m=HIGHEST_M,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Stage:
    """A span of a program. Exactly one end is given; a condition also needs ``at_most_s``."""

    set_c: float
    lid: LidState = LidState.OPEN
    duration_s: float | None = None
    until_elapsed_s: float | None = None
    until_left_s: float | None = None
    until_oil_c: float | None = None
    until_core_c: float | None = None
    until_gauge_pa: float | None = None
    at_most_s: float | None = None

    def __post_init__(self) -> None:
        if not 60.0 <= self.set_c <= CEILING_C:
            raise InputError("set", self.set_c, "{low_c} to {high_c}", unit="c", low_c=60.0, high_c=CEILING_C)
        count = sum(getattr(self, name) is not None for name, _ in ENDS)
        if count != 1:
            known = ", ".join(name.rsplit("_", 1)[0] for name, _ in ENDS)
            raise InputError(
                "stage end",
                Phrase("{count} ends given", {"count": count}),
                "exactly one of: {known}",
                known=known,
            )
        if self.end not in TIMED and not self.at_most_s:
            raise InputError("at_most", "missing", "given for a stage that waits for a condition")
        for name in ("duration_s", "until_elapsed_s", "until_left_s", "at_most_s"):
            value = getattr(self, name)
            if value is not None and not 0.0 <= value <= 7200.0:
                raise InputError(
                    name.removesuffix("_s"), value, "{low_s} to {high_s}", unit="s", low_s=0.0, high_s=7200.0
                )

    @property
    def end(self) -> StageEnd:
        """Which kind of end this stage has."""
        return next(kind for name, kind in ENDS if getattr(self, name) is not None)

    @property
    def end_value(self) -> float:
        """The value of that end."""
        value: float = next(v for name, _ in ENDS if (v := getattr(self, name)) is not None)
        return value


@dataclass(frozen=True, slots=True, kw_only=True)
class Program:
    """The stages of one product on one fryer at one place, versioned.

    ``altitude_m`` and ``unit_mass_kg`` are None where the program is for the kitchen's own altitude and bird.
    """

    name: str
    product: str
    fryer: str
    stages: tuple[Stage, ...]
    version: int = 1
    total_s: float | None = None
    drain_s: float = 30.0
    hold_life_s: float = 3600.0
    load_heads: float | None = None
    altitude_m: float | None = None
    unit_mass_kg: float | None = None

    def __post_init__(self) -> None:
        if not self.stages:
            raise InputError("stage", "none", "at least one stage", where=self.name)
        if self.version < 1:
            raise InputError("version", self.version, "1 or more", where=self.name)
        check_text("name", self.name, LONGEST_CALLED, "program")
        within(self, self.name, version=(1, 9999), drain_s=(0.0, 3600.0), hold_life_s=(1.0, 86400.0))
        if self.altitude_m is not None:
            check_altitude(self.altitude_m, self.name)
        if self.unit_mass_kg is not None and not 0.005 <= self.unit_mass_kg <= 10.0:
            raise InputError(
                "bird size",
                self.unit_mass_kg,
                "{low_kg} to {high_kg}",
                where=self.name,
                unit="kg",
                low_kg=0.005,
                high_kg=10.0,
            )
        lids = [stage.lid for stage in self.stages]
        changes = sum(a != b for a, b in pairwise(lids))
        if lids.count(LidState.PRESSURE) and changes > 2:
            raise InputError(
                "lid", "closed and opened more than once", "one span under pressure", where=self.name
            )
        self.durations_s()

    def durations_s(self) -> tuple[float, ...]:
        """Longest duration of each stage [s]; elapsed and time-left ends are worked out.
        Raises InputError: ends run backwards, or a time-left end without a total time.
        """
        clock, durations = 0.0, []
        for number, stage in enumerate(self.stages, start=1):
            if stage.duration_s is not None:
                length = stage.duration_s
            else:
                length = self._length_s(stage, clock, f"{self.name}, stage {number}")
            durations.append(length)
            clock += length
        if clock <= 0:
            raise InputError("stage", "no time at all", "longer than 0 s in total", where=self.name)
        return tuple(durations)

    def _length_s(self, stage: Stage, clock: float, where: str) -> float:
        """Longest duration of a stage without one of its own, from where the clock stands [s]."""
        if stage.end is StageEnd.ELAPSED:
            length = stage.end_value - clock
        elif stage.end is StageEnd.LEFT:
            if self.total_s is None:
                raise InputError("total", "missing", "given when a stage ends by time left", where=where)
            length = self.total_s - stage.end_value - clock
        else:
            length = stage.at_most_s or 0.0
        if length < 0:
            raise InputError(
                "stage end",
                Phrase("{length_s} before its start", {"length_s": float(-length)}),
                "after its start",
                where=where,
            )
        return length

    def timed(self) -> Program:
        """The same program with elapsed and time-left ends written as durations."""
        if self.total_s is None and all(stage.duration_s is not None for stage in self.stages):
            return self
        plain = [
            (
                replace(stage, duration_s=length, until_elapsed_s=None, until_left_s=None)
                if stage.end in TIMED
                else stage
            )
            for stage, length in zip(self.stages, self.durations_s(), strict=True)
        ]
        return replace(self, stages=tuple(plain), total_s=None)

    @property
    def clock_s(self) -> float:
        """What the machine's clock is keyed with from drop to end [s]; a vent may come on top
        (ClockStyle).
        """
        return sum(self.durations_s())

    @property
    def has_condition(self) -> bool:
        """Whether a stage waits for a condition, so that no clock alone ends the program."""
        return any(stage.end not in TIMED for stage in self.stages)

    @property
    def under_pressure(self) -> bool:
        """Whether any stage runs under pressure."""
        return any(stage.lid is LidState.PRESSURE for stage in self.stages)


@dataclass(frozen=True, slots=True, kw_only=True)
class Answered:
    """Who answers for a program that is predicted short, by how much it is, and why it is wanted."""

    margin_k: float
    by: str
    reason: str
