"""Tables of the inspection pack: which facts, which columns, what stands on paper."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from frywright.ledger.facts.care import CardSigned, CareDone, Reopened, ReportAttached, StepSigned, StopUse
from frywright.ledger.facts.cook import ReadBackTaken
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.fact import Fact
from frywright.ledger.facts.oil import MeterChecked, OilDone, OilRefused
from frywright.ledger.facts.people import RuleAnswered, SkillShown
from frywright.ledger.facts.probing import (
    CalibrationKept,
    CaseOpened,
    CaseStep,
    HoldRead,
    LookedBack,
    Reading,
    ThermometerChecked,
)

OUTSIDE = {
    "suppression",
    "hood_clean",
    "yearly_electric",
    "yearly_gas",
    "yearly_relief",
    "calibration_formal",
}
"""Tasks of contractors and of certified calibration."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A table of the pack: a kind of fact, its columns, the taps it takes, and whether it stands on paper;
    of those rows that ``matters`` names are printed first.
    """

    name: str
    fact: type[Fact]
    columns: tuple[str, ...]
    taps: tuple[str, ...] = ()
    paper: bool = True
    matters: Callable[[Any], bool] = lambda fact: False


SHEETS = (
    Sheet(
        name="cooks",
        fact=BoardTap,
        columns=("what", "fryer", "product", "pieces_count", "reason", "who"),
        taps=("drop", "lift", "undo"),
        paper=False,
    ),
    Sheet(
        name="discards",
        fact=BoardTap,
        columns=("what", "product", "pieces_count", "reason", "who"),
        taps=("discard", "count"),
    ),
    Sheet(
        name="readings",
        fact=Reading,
        columns=(
            "load",
            "thermometer",
            "core_c",
            "corrected_c",
            "limit_c",
            "checked",
            "who",
            "second",
            "words",
        ),
        matters=lambda fact: fact.below,
    ),
    Sheet(
        name="holding",
        fact=HoldRead,
        columns=("kept_in", "product", "thermometer", "core_c", "corrected_c", "limit_c", "checked", "who"),
        matters=lambda fact: fact.below,
    ),
    Sheet(
        name="thermometers",
        fact=ThermometerChecked,
        columns=("thermometer", "ice_c", "boil_c", "outcome"),
        matters=lambda fact: fact.outcome != "good",
    ),
    Sheet(
        name="corrective",
        fact=CaseOpened,
        columns=("what", "fryer", "product", "pieces_count", "core_c", "corrected_c", "limit_c", "words"),
        paper=False,
    ),
    Sheet(
        name="corrective_steps",
        fact=CaseStep,
        columns=(
            "case_number",
            "step",
            "disposition",
            "cause",
            "load_number",
            "decision",
            "thermometer",
            "core_c",
            "corrected_c",
            "limit_c",
            "words",
            "who",
        ),
        paper=False,
    ),
    Sheet(name="calibration", fact=CalibrationKept, columns=("cut", "coating", "lid", "program", "made_on")),
    Sheet(
        name="read_backs",
        fact=ReadBackTaken,
        columns=("name", "version", "fryer", "matches", "read_by", "checked_by"),
        matters=lambda fact: not fact.matches,
    ),
    Sheet(
        name="local_rules",
        fact=RuleAnswered,
        columns=("subject", "years_count", "hold_c", "said_by", "said_on", "words", "who"),
    ),
    Sheet(name="training", fact=SkillShown, columns=("person", "skill", "observed_by", "expires")),
    Sheet(name="care", fact=CareDone, columns=("fryer", "task", "who", "role", "note", "date")),
    Sheet(name="reports", fact=ReportAttached, columns=("of_number", "name", "sha256", "who")),
    Sheet(name="procedures", fact=CardSigned, columns=("key", "version", "fryer", "who", "second", "note")),
    Sheet(
        name="oil",
        fact=OilDone,
        columns=("vat", "what", "raw", "who"),
        matters=lambda fact: fact.what == "discard",
    ),
    Sheet(
        name="oil_meter",
        fact=MeterChecked,
        columns=("meter", "low_known_pct", "low_read_pct", "high_known_pct", "high_read_pct", "who"),
    ),
    Sheet(name="refused", fact=OilRefused, columns=("raw", "reason"), paper=False),
    Sheet(name="stop_use", fact=StopUse, columns=("fryer", "reason", "words", "who")),
    Sheet(name="releases", fact=Reopened, columns=("fryer", "who", "role", "finding")),
    Sheet(
        name="commissioning",
        fact=StepSigned,
        columns=("fryer", "step", "who", "second", "note", "passed_over"),
    ),
)
GATHERED: tuple[type[Fact], ...] = tuple(dict.fromkeys([*(s.fact for s in SHEETS), LookedBack]))
