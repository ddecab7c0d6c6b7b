"""Where a kitchen stands: one question for cook, hold and oil limits and for age rules, each by its day.

What the catalog does not know of a place is unknown, never allowed.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cache

from frywright.catalog import load
from frywright.model.errors import Phrase, one_of
from frywright.model.food import Food
from frywright.model.kitchen import Kitchen
from frywright.model.units import to_inside
from frywright.verdicts.age import AgeVerdict, judge_age
from frywright.verdicts.limits import CookLimit, edition_of, edition_on, house_limit, stand_in

HOUSE_OIL_PCT = 24.0
"""House limit of polar compounds where no law is known: common practice, no source."""

NOT_IN_CATALOG = (
    "the cooking rules of this place are not in this catalog; ask your inspector which one holds and set it"
    " as the house target"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """A place of the catalog: the rule of each food, the newest edition adopted, and whose other rules hold
    there; an empty name is a rule we do not know.
    """

    key: str
    title: str
    source: str = ""
    edition: str = ""
    rules: Mapping[str, str] = field(default_factory=dict)
    no_rule: Mapping[str, str] = field(default_factory=dict)
    hold: str = ""
    oil: str = ""
    age: str = ""
    said_years: Mapping[str, int] = field(default_factory=dict)
    said_hold_c: float | None = None
    """What the authority said here: the least age by kind of work, and the hot-holding limit. It holds beside
    the rules known and loosens none.
    """

    def cook_limit(self, food: Food = Food.POULTRY, day: dt.date | None = None) -> CookLimit | None:
        """The cook limit of a food: the edition adopted, or on an earlier day the one then in force; None
        where no rule speaks of the food or the day lies before the first.
        """
        if food not in self.rules:
            return None
        adopted = edition_of(self.rules[food], self.edition)
        return edition_on(adopted.rule, min(day, adopted.valid_from)) if day else adopted

    def limit_of(
        self, foods: Iterable[Food], house_core_c: float | None = None, day: dt.date | None = None
    ) -> CookLimit | None:
        """What judges a product of these foods: the strictest rule of the place, else the house target, else
        None.
        """
        found = set(foods)
        rules = (self.cook_limit(food, day) for food in Food if food in found)
        house = None if house_core_c is None else house_limit(house_core_c)
        return next((rule for rule in rules if rule is not None), house)

    def hand_level_c(
        self,
        foods: Iterable[Food] = (Food.POULTRY,),
        house_core_c: float | None = None,
        day: dt.date | None = None,
    ) -> float | None:
        """Level a single hand reading of a product of these foods is judged by [degC]: that of the rule of
        the place, else the house target, else None.

        Where the rule needs a time with the temperature, the newest Food Code's level for poultry stands in:
        no rule of the catalog asks more of a piece in an instant.
        """
        limit = self.limit_of(foods, house_core_c, day)
        if limit is None or limit.level_c is not None:
            return limit.level_c if limit else None
        return stand_in().level_c

    def why_no_rule(self, food: Food) -> str:
        """Why the rules of the place do not speak of a food; empty where one does."""
        return "" if food in self.rules else self.no_rule.get(food, NOT_IN_CATALOG)

    def hot_hold_c(self) -> float | None:
        """Hot holding limit [degC]: of the rule known and the authority's answer the higher; None where
        neither is there.
        """
        known = [
            float(row["temp_c"]) if "temp_c" in row else to_inside(row["temp_f"], "f")
            for row in load.table("standards/hot_hold.toml")["place"]
            if row["jurisdiction"] == self.hold
        ]
        said = [] if self.said_hold_c is None else [self.said_hold_c]
        return max(known + said, default=None)

    def oil_limit(self, house_pct: float | None = None, also: str = "") -> tuple[float, Phrase]:
        """Polar compounds [%] at which oil goes, and what that rests on: the place's figure, which a house
        limit may tighten; where none is known the house's. ``also`` names a place that an older store chose
        for its oil: the stricter of both holds.
        """
        known = [
            row
            for row in load.table("standards/oil_limits.toml")["limit"]
            if row["place"] in (self.oil, also) and "polar_pct" in row
        ]
        if not known:
            return house_pct or HOUSE_OIL_PCT, Phrase("no national figure; a house limit holds")
        row = min(known, key=lambda row: (row["polar_pct"], row["place"] != self.oil))
        pct = float(row["polar_pct"])
        told = {"place": row["title"], "pct": row["polar_pct"], "status": row["status"]}
        return min(house_pct or pct, pct), Phrase("{place}: {pct} % ({status})", told)

    def judge_age(self, restricted: str, born: dt.date | None, day: dt.date) -> AgeVerdict:
        """May a person of this age do this work here on a day?"""
        return judge_age(self.age, restricted, born, day, self.said_years.get(restricted))


@cache
def place_named(jurisdiction: str) -> Place:
    """A place of the catalog. Raises InputError: the jurisdiction is not in the catalog."""
    places = {j["key"]: j for j in load.table("standards/jurisdictions.toml")["jurisdiction"]}
    one_of(places, jurisdiction, "jurisdiction")
    return Place(**places[jurisdiction])


def place_of(kitchen: Kitchen) -> Place:
    """Where a kitchen stands."""
    return place_named(kitchen.site.jurisdiction)
