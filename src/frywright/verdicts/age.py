"""May a person of this age do this work here, on this day? Dated rules by place; no rule known is unknown,
never allowed.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from frywright.catalog import load as catalog
from frywright.model.errors import InputError
from frywright.model.findings import Outcome

ADULT_YEARS = 18
"""Below it nobody is signed for work that other places restrict, where no rule of this place is known:
hazardous work from 18 years on, ILO Convention 138 (1973), article 3.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class AgeVerdict:
    """What the rules of a place say; ``keys`` are the rules that speak against it, advice among them; the
    authority's own answer has the kind of work as its key.
    ``minor``: no rule is known, and the person is under ``ADULT_YEARS``.
    """

    outcome: Outcome
    keys: tuple[str, ...] = ()
    minor: bool = False


def years_on(born: dt.date, day: dt.date) -> int:
    """Full years of age on a day. Raises InputError: born after the day, or a hundred years before."""
    age = _years(born, day)
    if not 0 <= age <= 100:
        raise InputError("born", born.isoformat(), "a birthday that fits a working person")
    return age


def _years(born: dt.date, day: dt.date) -> int:
    return day.year - born.year - ((day.month, day.day) < (born.month, born.day))


def judge_age(
    place: str, restricted: str, born: dt.date | None, day: dt.date, said_years: int | None = None
) -> AgeVerdict:
    """Judge one kind of restricted work (``pressure_fryer``, ``fryer``, ``hot_oil``); an empty kind is open
    to all.

    A law broken fails; advice alone is told and does not fail. An unknown birthday, place or a day before the
    rules leaves it unknown. ``said_years`` is the age from which the authority lets people do it: it holds
    beside the rules known, so that it can be stricter than they are and never looser.
    Raises InputError: born after the day, or a hundred years before.
    """
    if not restricted:
        return AgeVerdict(outcome=Outcome.MEETS)
    rules = [
        r
        for r in catalog.table("standards/age_rules.toml")["rule"]
        if r["place"] == place and r["restricted"] == restricted and r["from"] <= day
    ]
    if born is None:
        return AgeVerdict(outcome=Outcome.UNKNOWN)
    if not rules and said_years is None:
        return AgeVerdict(outcome=Outcome.UNKNOWN, minor=_years(born, day) < ADULT_YEARS)
    age = years_on(born, day)
    broken = [r for r in rules if age < r["under_years"]]
    answered = (restricted,) if said_years is not None and age < said_years else ()
    outcome = Outcome.FAILS if answered or any(r["law"] for r in broken) else Outcome.MEETS
    return AgeVerdict(outcome=outcome, keys=(*(r["key"] for r in broken), *answered))
