"""How long entries stay, by what they are about. Kinds that no term names stay for ever: kitchen files,
programs, proofs, calibrations, reports, accounts, and what says who removed what.
"""

from __future__ import annotations

from dataclasses import dataclass

from frywright.ledger.facts import care, day, fleet, oil, people, probing
from frywright.ledger.facts.fact import Fact


@dataclass(frozen=True, slots=True, kw_only=True)
class Term:
    """Kinds that go together, the fewest years they stay, and who says so."""

    key: str
    name: str
    least_years: int
    source: str
    kinds: tuple[type[Fact], ...]


TERMS = (
    Term(
        key="loads",
        name="loads, temperatures and closed cases",
        least_years=2,
        source="two years: 21 CFR 117.315(a), from memory; written for plants, a house choice for kitchens",
        kinds=(
            day.BoardTap,
            day.PracticeTap,
            day.GapExplained,
            probing.Reading,
            probing.HoldRead,
            probing.ThermometerChecked,
            probing.LookedBack,
            probing.CaseOpened,
            probing.CaseStep,
        ),
    ),
    Term(
        key="sales",
        name="sales, orders and notes of days",
        least_years=3,
        source="three years, in which a tax may be assessed: 26 U.S.C. 6501(a), from memory",
        kinds=(day.SalesRead, day.SalesWaiting, day.SalesPosted, day.DayNoted, day.OrderPromised),
    ),
    Term(
        key="people",
        name="training and sign-ins",
        least_years=3,
        source="three years, as for payroll: 29 CFR 516.5, from memory; for training a house choice",
        kinds=(
            people.SkillShown,
            people.DrillAnswered,
            people.SignedIn,
            people.SignedOut,
            people.SignInsRefused,
        ),
    ),
    Term(
        key="care",
        name="oil, care and the close",
        least_years=3,
        source="three years: house choice, no source; your fire marshal or insurer may ask for more",
        kinds=(
            oil.OilDone,
            oil.OilRefused,
            oil.MeterChecked,
            care.CareDone,
            care.CardSigned,
            day.CloseStepSigned,
        ),
    ),
    Term(
        key="anchors",
        name="anchors of sites, at an office",
        least_years=3,
        source="three years: house choice, no source; a site's newest anchor says all that older ones said",
        kinds=(fleet.AnchorKept,),
    ),
)
MOST_YEARS = 30
"""The longest that may be asked for (project's own rule)."""
OF_ANOTHER_RECORD = frozenset(cls.KIND for cls in (fleet.AnchorKept, fleet.ForkSeen, fleet.ReleaseArrived))
"""Kinds whose numbers name entries of a site's record, or of the office's, and none beside them."""
NEWEST_STAYS: dict[type[Fact], tuple[str, ...]] = {
    probing.ThermometerChecked: ("thermometer",),
    people.SkillShown: ("person", "skill"),
    people.DrillAnswered: ("drill", "who"),
    oil.MeterChecked: ("meter",),
    care.CareDone: ("fryer", "task"),
    care.CardSigned: ("fryer", "key"),
    fleet.AnchorKept: ("key",),
}
"""Kinds whose newest entry says how things stand, by the fields that say of what: it never goes."""
