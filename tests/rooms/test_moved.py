"""A kitchen that moves from one place's rules to another's: each entry is judged by those of its day."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.care.training import keep_person, sign_skill
from frywright.rooms.cook.probes import _rule_of
from frywright.rooms.kitchen import judged_at, judged_on, remember_kitchen, remembered_kitchen
from frywright.rooms.readings import mend_reading, tell_hold, tell_probe
from frywright.rooms.records.rules import rule_rows
from frywright.rooms.standing import oil_limit_here
from frywright.trial.kitchens import demo_text
from tests.small import small_kitchen

MOVED = dt.datetime(2026, 6, 10, 12, tzinfo=dt.UTC)
BEFORE, AFTER = MOVED - dt.timedelta(days=2), MOVED + dt.timedelta(days=2)
READ = {"fryer": "left", "product": "wings", "thermometer": "T1", "who": "Ana", "pieces": "8"}


@pytest.fixture
def moved(tmp_path):
    """A kitchen in Germany until the tenth at noon, under the Food Code since."""
    clock = [MOVED - dt.timedelta(days=30)]
    store = Store.file(tmp_path / "m.db", lambda: clock[0])
    remember_kitchen(store, small_kitchen("germany", error_k=2), "own.toml")
    clock[0] = MOVED
    remember_kitchen(store, small_kitchen("us_food_code_2022", error_k=1), "own.toml", "moved to Ohio")
    clock[0] = AFTER
    return store, remembered_kitchen(store)


def test_a_late_reading_is_judged_by_the_place_of_its_day(moved):
    """68 °C in a wing: no rule known in Germany on the eighth, below the Food Code on the twelfth."""
    store, kitchen = moved
    early, case = tell_probe(store, kitchen, {**READ, "temp": "68"}, BEFORE)
    assert (early.fact.limit_c, case) == (None, None)
    late, case = tell_probe(store, kitchen, {**READ, "temp": "68"}, AFTER)
    assert late.fact.limit_c == pytest.approx(73.89, abs=0.01)
    assert case.fact.limit_c == pytest.approx(74.89, abs=0.01)
    mended, case = mend_reading(
        store, kitchen, early.number, {"temp": "66", "words": "read 66, typed 68", "who": "Ana"}
    )
    assert case is None
    assert store.fact(mended.number, Reading).fact.limit_c is None


def test_hot_holding_is_judged_by_the_place_of_its_moment(moved):
    """50 °C in the cabinet: below 57.2 °C of the Food Code an hour after the move, unknown an hour before."""
    store, kitchen = moved
    told = {"kept_in": "warm shelf", "product": "wings", "temp": "50", "thermometer": "T1", "who": "Ana"}
    hour = dt.timedelta(hours=1)
    assert tell_hold(store, kitchen, told, MOVED - hour)[1] is None
    assert tell_hold(store, kitchen, told, MOVED + hour)[1].fact.limit_c == pytest.approx(58.22, abs=0.01)


def test_the_pack_names_the_rules_of_its_last_day(moved):
    """Rules and oil limit of a pack that ends before the move are Germany's; of a later one the States'."""
    store, kitchen = moved
    rows = rule_rows(store, kitchen, BEFORE.date())
    assert rows[0][2] == "–"
    assert "not in this catalog" in rows[1][1] and rows[1][2] == "–"
    assert "Food Code" in rule_rows(store, kitchen, AFTER.date())[0][1]
    assert "24 %" in oil_limit_here(store, kitchen, BEFORE.date())[1].say(str)
    assert "house limit" in oil_limit_here(store, kitchen, AFTER.date())[1].say(str)
    assert "house limit" in oil_limit_here(store, kitchen)[1].say(str)


def test_a_log_and_the_error_go_with_the_day(moved):
    """A probe log of the eighth finds no rule and the error of that time; before the first file the first."""
    store, kitchen = moved
    before = judged_on(store, kitchen, BEFORE.date())
    assert before.site.thermometer_error_k == 2.0
    assert _rule_of(before, "poultry", "", BEFORE.date())[0] is None
    assert judged_on(store, kitchen, MOVED.date()).site.jurisdiction == "us_food_code_2022"
    assert judged_at(store, kitchen, MOVED - dt.timedelta(days=900)).site.jurisdiction == "germany"


def test_a_skill_is_signed_by_the_age_rules_of_its_day(moved):
    """The law of the States forbids the fryer at 15; of Germany this catalog knows no rule, so the local
    authority is asked first.
    """
    store, kitchen = moved
    keep_person(store, kitchen, {"name": "Kim Vale", "born": "2011-03-01"})
    form = {"person": "Kim Vale", "skill": "load", "observed_by": "Ana Lund"}
    with pytest.raises(InputError, match="Ask the local authority"):
        sign_skill(store, kitchen, {**form, "date": BEFORE.date().isoformat()})
    with pytest.raises(InputError, match="age"):
        sign_skill(store, kitchen, {**form, "date": AFTER.date().isoformat()})


def test_what_the_demo_said_judges_nothing_of_a_kitchen_of_ones_own(tmp_path):
    """A kitchen that began with the invented one: an entry of those days is judged by its own first file."""
    clock = [MOVED - dt.timedelta(days=30)]
    store = Store.file(tmp_path / "d.db", lambda: clock[0])
    remember_kitchen(store, demo_text(), "demo.toml")
    clock[0] = MOVED
    remember_kitchen(store, small_kitchen("germany", error_k=2), "own.toml")
    assert judged_at(store, remembered_kitchen(store), BEFORE).site.jurisdiction == "germany"


def test_a_house_target_judges_the_readings_of_its_time(tmp_path):
    """Where no rule is known, 68 °C falls short of the 72 °C the house asked for then, not of today's 65."""
    clock = [MOVED - dt.timedelta(days=30)]
    store = Store.file(tmp_path / "h.db", lambda: clock[0])
    text = small_kitchen("germany", error_k=1)
    remember_kitchen(store, text + "house_core_c = 72\n", "own.toml")
    clock[0] = MOVED
    remember_kitchen(store, text + "house_core_c = 65\n", "own.toml", "the house asks for less")
    kitchen = remembered_kitchen(store)
    assert tell_probe(store, kitchen, {**READ, "temp": "68"}, BEFORE)[1] is not None
    assert tell_probe(store, kitchen, {**READ, "temp": "68"}, AFTER)[1] is None
