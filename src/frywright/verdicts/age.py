"""May a person of this age do this work here, on this day? Dated rules by place; no rule known is unknown,
never allowed.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from frywright.catalog import load as catalog
from frywright.model.errors import InputError
from frywright.model.findings import Outcome


@dataclass(frozen=True, slots=True, kw_only=True)
class AgeVerdict:
    """What the rules of a place say; ``keys`` are the rules that speak against it, advice among them."""

    outcome: Outcome
    keys: tuple[str, ...] = ()


def years_on(born: dt.date, day: dt.date) -> int:
    """Full years of age on a day.

    Raises
    ------
    InputError
        Born after the day, or a hundred years before.
    """
    age = day.year - born.year - ((day.month, day.day) < (born.month, born.day))
    if not 0 <= age <= 100:
        raise InputError("born", born.isoformat(), "a birthday that fits a working person")
    return age


def judge_age(place: str, restricted: str, born: dt.date | None, day: dt.date) -> AgeVerdict:
    """Judge one kind of restricted work (``pressure_fryer``, ``fryer``, ``hot_oil``); an empty kind is open
    to all.

    A law broken fails; advice alone is told and does not fail. An unknown birthday, place or a day before the
    rules leaves it unknown.

    Raises
    ------
    InputError
        Born after the day, or a hundred years before.
    """
    if not restricted:
        return AgeVerdict(outcome=Outcome.MEETS)
    rules = [
        r
        for r in catalog.table("standards/age_rules.toml")["rule"]
        if r["place"] == place and r["restricted"] == restricted and r["from"] <= day
    ]
    if born is None or not rules:
        return AgeVerdict(outcome=Outcome.UNKNOWN)
    age = years_on(born, day)
    broken = [r for r in rules if age < r["under_years"]]
    outcome = Outcome.FAILS if any(r["law"] for r in broken) else Outcome.MEETS
    return AgeVerdict(outcome=outcome, keys=tuple(r["key"] for r in broken))
