"""Limits by place, food and date: which rule judges a cook, in which edition."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from typing import Any

from frywright.catalog import load
from frywright.model.errors import InputError
from frywright.model.food import Food
from frywright.model.units import to_inside

HAND_RULE = "us_food_code_2022"
"""Rule whose level stands in for a hand reading where a place's own has none."""


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


def _place(jurisdiction: str) -> dict[str, Any]:
    places: dict[str, dict[str, Any]] = {
        j["key"]: j for j in load.table("standards/jurisdictions.toml")["jurisdiction"]
    }
    if jurisdiction not in places:
        raise InputError(
            "jurisdiction", repr(jurisdiction), "one of: {known}", values={"known": ", ".join(places)}
        )
    return places[jurisdiction]


@cache
def rule_for(jurisdiction: str, food: Food) -> CookLimit | None:
    """The cook limit of a food in a place; None where its rules do not speak of the food.

    Raises
    ------
    InputError
        The jurisdiction is not in the catalog.
    """
    place = _place(jurisdiction)
    if food not in place["rules"]:
        return None
    table = load.table(f"standards/{place['rules'][food]}.toml")
    edition = next(e for e in table["edition"] if e["key"] == place["edition"])
    return _limit(table, edition)


def why_no_rule(jurisdiction: str, food: Food) -> str:
    """Why the rules of a place do not speak of a food; empty where one does."""
    return str(_place(jurisdiction).get("no_rule", {}).get(food, ""))


def cook_limit(jurisdiction: str) -> CookLimit:
    """The cook limit of poultry, which every place of the catalog has.

    Raises
    ------
    InputError
        The jurisdiction is not in the catalog.
    """
    limit = rule_for(jurisdiction, Food.POULTRY)
    assert limit is not None  # a test walks the catalog
    return limit


HOUSE = "house"
"""Rule key of a kitchen's own target for a food without a rule."""


def limit_of(jurisdiction: str, foods: Iterable[Food], house_core_c: float | None = None) -> CookLimit | None:
    """What judges a product of these foods: the strictest rule of the place, else the house target, else
    None.

    Raises
    ------
    InputError
        The jurisdiction is not in the catalog.
    """
    for food in Food:
        rule = rule_for(jurisdiction, food) if food in set(foods) else None
        if rule is not None:
            return rule
    if house_core_c is None:
        return None
    return CookLimit(
        rule=HOUSE,
        kind="instant",
        edition="",
        title="house target",
        valid_from=dt.date.min,
        applies_to=tuple(Food),
        source=HOUSE,
        level_c=house_core_c,
    )


def hand_level_c(
    jurisdiction: str, foods: Iterable[Food] = (Food.POULTRY,), house_core_c: float | None = None
) -> float | None:
    """Level a single hand reading of a product of these foods is judged by [degC]: that of the rule of the
    place, else the house target, else None.

    Where the rule needs a time with the temperature, the newest Food Code's level for poultry stands in: no
    rule of the catalog asks more of a piece in an instant.

    Raises
    ------
    InputError
        The jurisdiction is not in the catalog.
    """
    limit = limit_of(jurisdiction, foods, house_core_c)
    if limit is None or limit.level_c is not None:
        return limit.level_c if limit else None
    return cook_limit(HAND_RULE).level_c


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


def hot_hold_c(jurisdiction: str) -> float | None:
    """Hot holding limit [degC] of a place (``us``, ``us_nyc``, ``uk``, ``australia``), or None."""
    for place in load.table("standards/hot_hold.toml")["place"]:
        if place["jurisdiction"] == jurisdiction:
            return float(place["temp_c"]) if "temp_c" in place else to_inside(place["temp_f"], "f")
    return None


def oil_limit(place: str, house_pct: float) -> tuple[float, str]:
    """Polar compounds [%] at which oil must go: the place's figure tightened by the house's, and what it
    rests on.

    Raises
    ------
    InputError
        The place is not in the catalog.
    """
    places = {row["place"]: row for row in load.table("standards/oil_limits.toml")["limit"]}
    if place not in places:
        raise InputError("place", repr(place), "one of: {known}", values={"known": ", ".join(places)})
    row = places[place]
    if "polar_pct" not in row:
        return house_pct, "no national figure; a house limit holds"
    return min(house_pct, float(row["polar_pct"])), f"{row['title']}: {row['polar_pct']} % ({row['status']})"
