"""Skills are performed and observed, expire, and bow to age rules; answers are kept, explained, never scored;
wall cards print.
"""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.model.errors import InputError
from frywright.rooms.care import training
from frywright.rooms.care.upkeep import today_of
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text
from frywright.voice.tongue import translator
from tests.paper import pages, words


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def standing(store, kitchen, name, skill, today=None):
    """One cell of the table."""
    view = training.people_view(store, kitchen, today=today)
    person = next(p for p in view.people if p.name == name)
    return next(h for h in person.skills if h.skill == skill), view


def test_performed_observed_dated_expiring(store, kitchen):
    """Nobody signs for themselves; a quarter later it is listed 30 days ahead, then expired; signing anew
    holds again.
    """
    training.keep_person(store, kitchen, {"name": "Kim Vale", "born": "1999-04-02"})
    form = {"person": "kim vale", "skill": "lid", "observed_by": "Ana Lund"}
    for bad in (
        {"observed_by": "Kim Vale"},
        {"observed_by": ""},
        {"skill": "juggling"},
        {"person": "Nobody"},
        {"date": "2099-01-01"},
        {"date": "soon"},
    ):
        with pytest.raises(InputError):
            training.sign_skill(store, kitchen, {**form, **bad})
    assert standing(store, kitchen, "Kim Vale", "lid")[0].standing == "missing"
    training.sign_skill(store, kitchen, form)
    today = today_of(kitchen)
    assert standing(store, kitchen, "Kim Vale", "lid")[0].standing == "holds"
    found, view = standing(store, kitchen, "Kim Vale", "lid", today + dt.timedelta(days=62))
    assert found.standing == "expiring"
    assert [d.name for d in view.due] == ["Kim Vale"]
    assert standing(store, kitchen, "Kim Vale", "lid", today + dt.timedelta(days=92))[0].standing == "expired"


def test_under_age_is_not_signed_for_the_lid(store, kitchen):
    """The law of the place forbids it; other skills are open; who left is off the list."""
    young = today_of(kitchen).replace(year=today_of(kitchen).year - 15, day=1)
    training.keep_person(store, kitchen, {"name": "Lee Ford", "born": young.isoformat()})
    form = {"person": "Lee Ford", "observed_by": "Ana Lund"}
    with pytest.raises(InputError, match="forbids this work"):
        training.sign_skill(store, kitchen, {**form, "skill": "lid"})
    training.sign_skill(store, kitchen, {**form, "skill": "probe"})
    assert standing(store, kitchen, "Lee Ford", "lid")[0].age == "fails"
    training.keep_person(store, kitchen, {"name": "Lee Ford", "born": young.isoformat(), "left": "1"})
    assert training.people_view(store, kitchen).people == ()
    for bad in ({"name": ""}, {"name": "Max", "born": "2099-01-01"}, {"name": "Max", "born": "spring"}):
        with pytest.raises(InputError):
            training.keep_person(store, kitchen, bad)


def test_a_minor_is_signed_for_nothing_that_other_places_restrict_where_no_rule_is_known(store):
    """Spain's age rules are not in the catalog: no 16-year-old at lid or oil before the authority was asked;
    the probe is open to all, an adult to everything.
    """
    remember_kitchen(store, demo_text().replace("us_food_code_2022", "spain"), "k.toml", "moved to Spain")
    kitchen = remembered_kitchen(store)
    for name, age in (("Lee Ford", 16), ("Kim Vale", 19)):
        born = today_of(kitchen).replace(year=today_of(kitchen).year - age, day=1)
        training.keep_person(store, kitchen, {"name": name, "born": born.isoformat()})
    form = {"person": "Lee Ford", "observed_by": "Ana Lund"}
    for skill in ("lid", "filter"):
        with pytest.raises(InputError, match="18 or older: no age rule of this place"):
            training.sign_skill(store, kitchen, {**form, "skill": skill})
    training.sign_skill(store, kitchen, {**form, "skill": "probe"})
    training.sign_skill(store, kitchen, {**form, "person": "Kim Vale", "skill": "lid"})


def test_an_answer_is_kept_and_an_old_drill_refused(store, kitchen):
    """What was picked, whether it injures; a key of another version is refused with the reason."""
    drill = next(d for d in training.drill_views(kitchen) if d.key.endswith("gauge"))
    wrong = next(n for n, c in enumerate(drill.choices) if c.hurts)
    kept = training.answer_drill(store, kitchen, drill.key, wrong, "Kim").fact
    assert (kept.right, kept.hurts) == (False, True)
    with pytest.raises(InputError, match="changed program"):
        training.answer_drill(store, kitchen, drill.key.replace("v3", "v2"), 0, "")
    with pytest.raises(InputError):
        training.answer_drill(store, kitchen, drill.key, 9, "")


def test_wall_cards_print_in_both_languages(store, kitchen):
    """One page a fryer."""
    for language in ("en", "es"):
        data = training.wall_card_pdf(store, kitchen, language, translator(language))
        assert data.startswith(b"%PDF")
        assert pages(data) == 4
    text = words(data)
    assert "cambie el aceite a 24 % de compuestos polares" in text
    assert "75 min" in text and "75:00" not in text, "a hold in minutes; 75:00 could be hours"
