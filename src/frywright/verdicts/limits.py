"""Cook limits: the rules of the catalog and their editions."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from frywright.catalog import load
from frywright.model.food import Food
from frywright.model.units import to_inside


@dataclass(frozen=True, slots=True, kw_only=True)
class CookLimit:
    """One edition of a cook limit. ``rows`` (degC, s) for equivalents, else one level and hold."""

    rule: str
    kind: str
    edition: str
    title: str
    valid_from: dt.date
    applies_to: tuple[str, ...]
    source: str
    level_c: float | None = None
    hold_s: float = 0.0
    log_n: float = 0.0


HOUSE = "house"
"""Rule key of a kitchen's own target for a food without a rule."""


def house_limit(core_c: float) -> CookLimit:
    """A kitchen's own target [degC] as what judges a food without a rule."""
    return CookLimit(
        rule=HOUSE,
        kind="instant",
        edition="",
        title="house target",
        valid_from=dt.date.min,
        applies_to=tuple(Food),
        source=HOUSE,
        level_c=core_c,
    )


def edition_of(rule: str, key: str) -> CookLimit:
    """An edition of a rule by its key."""
    table = load.table(f"standards/{rule}.toml")
    return _limit(table, next(e for e in table["edition"] if e["key"] == key))


def stand_in() -> CookLimit:
    """The newest Food Code's limit of poultry: what a place's own rule has no level of, is set against it."""
    return edition_of("us_food_code", "us_food_code_2022")


def edition_on(rule: str, day: dt.date) -> CookLimit | None:
    """The edition of a rule in force on a day; None before its first, which means unknown."""
    table = load.table(f"standards/{rule}.toml")
    valid = [e for e in table["edition"] if e["from"] <= day]
    return _limit(table, max(valid, key=lambda e: e["from"])) if valid else None


def _limit(table: dict, edition: dict) -> CookLimit:  # type: ignore[type-arg]
    level = to_inside(edition["temp_f"], "f") if "temp_f" in edition else None
    return CookLimit(
        rule=table["key"],
        kind=table["kind"],
        edition=edition["key"],
        title=edition["title"],
        valid_from=edition["from"],
        applies_to=tuple(table.get("applies_to", ())),
        source=table["source"],
        level_c=level,
        hold_s=edition.get("hold_s", 0.0),
        log_n=edition.get("log_n", 0.0),
    )
