"""A case and a trace as shown: frozen rows that pages, paper, the terminal and programs read alike."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CaseOpened
from frywright.model.business_day import local_time
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.units import show, show_below
from frywright.rooms.standing import fryer_name, product_name


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
class CaseLine:
    """A case in a list: what was found, and whether it is closed."""

    number: int
    what: str
    fryer: str
    product: str
    found: str
    at: str
    closed: bool

    @property
    def title(self) -> str:
        """What it is about, in a word that is translated where people see it."""
        return "holding" if self.what == "hold" else self.what


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseView(CaseLine):
    """A case as people read it: what was found, what was done, what is next and what is missing."""

    pieces: int
    thermometer: str
    steps: tuple[StepRow, ...]
    who: str
    author: str
    note: str
    missing: tuple[str, ...]
    earlier: tuple[EarlierRow, ...]
    recooked: bool
    again: bool
    served_allowed: bool
    reading: int
    unknown_before: str
    """Says that nobody knows which loads went before, where that is so."""


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


def case_line(kitchen: Kitchen, opened: Kept[CaseOpened], closed: bool, tr: Translate) -> CaseLine:
    """A case in a list."""
    found = opened.fact
    return CaseLine(
        number=opened.number,
        what=found.what,
        fryer=fryer_name(kitchen, found.fryer),
        product=product_name(kitchen, found.product),
        found=found_words(found, kitchen.site.units, tr),
        at=local_time(kitchen, opened.happened_at),
        closed=closed,
    )


def found_words(found: CaseOpened, system: str, tr: Translate) -> str:
    """What a case was opened for, in words."""
    if found.core_c is None or found.limit_c is None:
        return found.words
    values = {
        "core": show_below(found.core_c, found.limit_c, "c", system),
        "limit": show(found.limit_c, "c", system),
    }
    if found.corrected_c is None or not shown_apart(found.corrected_c, found.core_c, system):
        text = "The coldest piece read {core}; the limit with the thermometer's error is {limit}."
        return say(text, values, system, tr)
    return say(
        "The coldest piece read {core}, which is {corrected} with what its thermometer misread at its"
        " last check; the limit with the thermometer's error is {limit}.",
        {**values, "corrected": show_below(found.corrected_c, found.limit_c, "c", system)},
        system,
        tr,
    )


def shown_apart(corrected_c: float, core_c: float, system: str) -> bool:
    """Whether a thermometer's error lowers a reading by as much as people see."""
    return corrected_c < core_c and show(corrected_c, "c", system) != show(core_c, "c", system)
