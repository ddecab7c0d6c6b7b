"""One place answers for cook, hold, oil and age by its day; what it does not know is unknown."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.catalog import load
from frywright.model.errors import InputError
from frywright.model.findings import Outcome
from frywright.model.food import Food
from frywright.verdicts.place import place_named

DAY = dt.date(2026, 11, 27)
KEYS = [j["key"] for j in load.table("standards/jurisdictions.toml")["jurisdiction"]]


@pytest.mark.parametrize("key", KEYS)
def test_what_a_place_names_is_in_the_catalog(key):
    """A hold, oil or age rule that a place names exists; a rule it does not name gives no answer."""
    place = place_named(key)
    oil = {row["place"]: row for row in load.table("standards/oil_limits.toml")["limit"]}
    assert not place.oil or place.oil in oil
    assert (place.hot_hold_c() is None) == (not place.hold)
    verdict = place.judge_age("fryer", dt.date(2000, 1, 1), DAY)
    assert verdict.outcome is (Outcome.MEETS if place.age else Outcome.UNKNOWN)
    assert (place.cook_limit(Food.POULTRY) is None) == (not place.rules)


@pytest.mark.parametrize(
    ("key", "pct", "word"),
    [
        ("spain", 25.0, "Spain"),  # the table of oil_limits.toml names its source
        ("germany", 24.0, "Germany"),
        ("switzerland", 27.0, "Switzerland"),
        ("us_food_code_2022", 24.0, "no national figure"),
        ("uk", 24.0, "no national figure"),
    ],
)
def test_oil_goes_by_the_kitchens_place(key, pct, word):
    """No second question: the kitchen's place gives the figure; a house limit only tightens it."""
    place = place_named(key)
    found, title = place.oil_limit()
    assert found == pct
    assert title.say(str).startswith(word)
    assert place.oil_limit(21.0)[0] == 21.0
    assert place.oil_limit(30.0)[0] == (30.0 if word == "no national figure" else pct)


def test_a_place_an_older_store_chose_for_its_oil_still_holds():
    """The stricter of both."""
    assert place_named("us_food_code_2022").oil_limit(30.0, "germany")[0] == 24.0
    assert place_named("switzerland").oil_limit(30.0, "france")[0] == 25.0
    assert place_named("germany").oil_limit(30.0, "switzerland")[0] == 24.0


@pytest.mark.parametrize(
    ("key", "day", "edition", "hold_s"),
    [
        ("us_food_code_2022", dt.date(2016, 6, 1), "us_food_code_2013", 15.0),
        ("us_food_code_2022", dt.date(2017, 1, 1), "us_food_code_2017", 0.0),
        ("us_food_code_2022", DAY, "us_food_code_2022", 0.0),
        ("us_food_code_2013", DAY, "us_food_code_2013", 15.0),  # nothing newer is adopted there
    ],
)
def test_the_edition_in_force_on_the_day_judges(key, day, edition, hold_s):
    """An entry of the past is judged by the edition of its day, never by one newer than the place adopted."""
    limit = place_named(key).cook_limit(Food.POULTRY, day)
    assert (limit.edition, limit.hold_s) == (edition, hold_s)


def test_before_the_first_edition_nothing_is_known():
    """A day before a rule gives no limit; a house target then stands alone."""
    place, day = place_named("us_fsis_inspected"), dt.date(2020, 1, 1)
    assert place.cook_limit(Food.POULTRY, day) is None
    assert place.hand_level_c(day=day) is None
    assert place.hand_level_c([Food.POULTRY], 80.0, day) == 80.0
    assert place.hand_level_c() is not None


def test_no_cook_rule_means_no_limit():
    """A place whose law this catalog does not hold judges by the house target or not at all."""
    spain = place_named("spain")
    assert spain.limit_of([Food.POULTRY]) is None
    assert spain.limit_of([Food.POULTRY], 75.0).level_c == 75.0
    assert spain.judge_age("fryer", dt.date(2012, 1, 1), DAY).outcome is Outcome.UNKNOWN
    with pytest.raises(InputError, match="jurisdiction"):
        place_named("atlantis")
