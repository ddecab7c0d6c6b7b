"""Facts of the oil: what was done to a vat and read of it, what was refused, the limit chosen."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from frywright.ledger.facts.fact import Fact

OilAct = Literal["top_up", "reading", "filter", "discard", "fill", "acid", "colour"]


@dataclass(frozen=True, slots=True, kw_only=True)
class OilDone(Fact):
    """One entry of a vat's oil log; ``raw`` is the amount as it was typed, figures are there where the act
    has one. ``peak`` says that a reading came before the top-up.
    """

    KIND: ClassVar[str] = "oil_event"
    LABELS: ClassVar[Mapping[str, str]] = {"raw": "as typed"}
    WORDS: ClassVar[frozenset[str]] = frozenset({"what"})
    vat: str
    what: OilAct
    raw: str
    who: str
    how: str
    key: str
    date: dt.date
    mass_kg: float | None = None
    reading_pct: float | None = None
    peak: bool | None = None
    acid_n: float | None = None
    colour_n: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class OilRefused(Fact):
    """A form of the oil log that was refused, as it was typed."""

    KIND: ClassVar[str] = "oil_refused"
    LABELS: ClassVar[Mapping[str, str]] = {"raw": "as typed", "reason": "why"}
    raw: Mapping[str, str]
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class OilLimitSet(Fact):
    """The place whose law holds for the oil, and the house's own limit."""

    KIND: ClassVar[str] = "oil_setting"
    place: str
    house_pct: float
    who: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class MeterChecked(Fact):
    """The kitchen's meter read on two oils of known level, each the mean of several readings."""

    KIND: ClassVar[str] = "oil_meter_check"
    LABELS: ClassVar[Mapping[str, str]] = {
        "low_known_pct": "fresh oil, known",
        "low_read_pct": "fresh oil, read",
        "high_known_pct": "worn oil, known",
        "high_read_pct": "worn oil, read",
    }
    date: dt.date
    low_known_pct: float
    low_read_pct: float
    high_known_pct: float
    high_read_pct: float
    meter: str
    who: str
    key: str
