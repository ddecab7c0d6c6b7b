"""A case and a trace as shown: frozen rows that pages, paper, the terminal and programs read alike."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierLoad:
    """A load of a fryer before a deviation, by the entry of its drop."""

    number: int
    at: str
    product: str
    pieces: int


@dataclass(frozen=True, slots=True, kw_only=True)
class EarlierRow(EarlierLoad):
    """An earlier load and what was decided of it; empty for nothing yet."""

    decision: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StepRow:
    """What was done about a case: when it was entered, by whom, and its figures in words."""

    at: str
    step: str
    words: str
    who: str
    detail: str
    note: str
    author: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseView:
    """A case as people read it: what was found, what was done, what is next and what is missing."""

    number: int
    what: str
    fryer: str
    product: str
    pieces: int
    found: str
    at: str
    thermometer: str
    steps: tuple[StepRow, ...]
    who: str
    author: str
    note: str
    closed: bool
    missing: tuple[str, ...]
    earlier: tuple[EarlierRow, ...]
    recooked: bool
    again: bool
    served_allowed: bool
    reading: int
    unknown_before: str
    """Says that nobody knows which loads went before, where that is so."""

    @property
    def title(self) -> str:
        """What it is about, in a word that is translated where people see it."""
        return "holding" if self.what == "hold" else self.what


@dataclass(frozen=True, slots=True, kw_only=True)
class TracedReading:
    """A reading near a load's lift."""

    number: int
    core: str
    checked: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class TracedLoad:
    """A load that a guest's piece may have come from, its chance and its readings."""

    number: int
    fryer: str
    program: str
    pieces: int
    lifted: str
    chance_frac: float
    readings: tuple[TracedReading, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Trace:
    """Loads a guest's piece may have come from, and what the record does not say."""

    product: str
    bought: str
    loads: tuple[TracedLoad, ...]
    gaps: tuple[str, ...]
