"""An authority's answer is on record with who said it and when; it judges where no rule is known, and loosens
none that is.
"""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.ledger.facts.people import RuleAnswered
from frywright.model.errors import InputError
from frywright.model.findings import Outcome
from frywright.rooms.care import training
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.local_rules import keep_answer, rule_subjects
from frywright.rooms.readings import tell_hold
from frywright.rooms.records.rules import rule_rows
from frywright.rooms.standing import place_here
from frywright.trial.hold_study import study
from frywright.verdicts.age import judge_age
from frywright.voice.tongue import translator
from tests import paper
from tests.browsers import browser
from tests.demo import kitchen_store
from tests.web.test_probes import FISH_AND_WEDGES

TODAY = dt.date(2026, 11, 27)


def kitchen_of(tmp_path, jurisdiction="spain", units="metric"):
    """A store with a metric kitchen of a place whose age and hold rules the catalog does not know."""
    text = FISH_AND_WEDGES.replace(
        'units = "metric"', f'units = "{units}"\njurisdiction = "{jurisdiction}"\naltitude_m = 2000'
    )
    return kitchen_store(tmp_path / "r.db", text)


def answer(store, subject="fryer", figure="17", **more):
    """An answer as the form posts it."""
    values = {
        "subject": subject,
        "figure": figure,
        "said_by": "Labour office, Ona Ruiz",
        "said_on": "2020-02-03",
        "words": "letter 12",
        "who": "Ana Vale",
    }
    return keep_answer(store, remembered_kitchen(store), {**values, **more})


def sign(store, years):
    """Somebody of that age is signed for a skill at a fryer."""
    kitchen = remembered_kitchen(store)
    skill = next(s["key"] for s in training.skills_of(kitchen) if s.get("restricted") == "fryer")
    today = training.today_of(kitchen)
    born = today.replace(year=today.year - years, day=min(today.day, 28)).isoformat()
    training.keep_person(store, kitchen, {"name": f"Kim {years}", "born": born})
    return training.sign_skill(
        store, kitchen, {"person": f"Kim {years}", "skill": skill, "observed_by": "Ana Vale"}
    )


def test_an_age_the_authority_said_judges_where_no_rule_is_known(tmp_path):
    """17 is refused without the authority's word (ILO Convention 138: 18) and taken by it; 16 is not."""
    store = kitchen_of(tmp_path)
    with pytest.raises(InputError, match="Local rules"):
        sign(store, 17)
    kept = answer(store)
    assert sign(store, 17).fact.person == "Kim 17"
    with pytest.raises(InputError, match="forbids this work"):
        sign(store, 16)
    view = training.people_view(store, remembered_kitchen(store), "es", translator("es"))
    assert view.rules == (
        "Trabajar en una freidora: desde los 17 años,"
        " lo dijo Labour office, Ona Ruiz el 2020-02-03: letter 12",
    )
    row = next(r for r in rule_subjects(store, remembered_kitchen(store)) if r.subject == "fryer")
    assert (row.known, row.number) == ((), kept.number)
    assert row.answer == "from 17 years on, said by Labour office, Ona Ruiz on 2020-02-03: letter 12"


def test_an_answer_taken_back_leaves_the_rule_unknown_again(tmp_path):
    """And nothing can be taken back twice; the newest answer is the one that holds."""
    store = kitchen_of(tmp_path)
    first = answer(store)
    assert answer(store, figure="18").replaces == first.number
    answer(store, figure="")
    assert place_here(store, remembered_kitchen(store)).said_years == {}
    with pytest.raises(InputError, match="no answer to take"):
        answer(store, figure="")
    with pytest.raises(InputError, match="Local rules"):
        sign(store, 17)


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"figure": "15"}, "at least 16 and at most 25"),
        ({"figure": "26"}, "at least 16 and at most 25"),
        ({"figure": "17.5"}, "at least 16 and at most 25"),
        ({"subject": "hot_hold", "figure": "50"}, "54.0 °C to 90.0 °C"),
        ({"subject": "lid"}, "one of"),
        ({"said_by": " "}, "the office and the person"),
        ({"words": "no"}, "read again"),
        ({"who": ""}, "who enters it"),
        ({"said_on": "soon"}, "a day such as"),
        ({"said_on": "2999-01-01"}, "today or earlier"),
    ],
)
def test_what_is_no_answer_is_refused(tmp_path, more, words):
    """Out of range, about nothing, by nobody, of a day to come; nothing is kept."""
    store = kitchen_of(tmp_path)
    with pytest.raises(InputError) as refused:
        answer(store, **more)
    assert words in refused.value.say(str, "metric")
    assert not list(store.facts(RuleAnswered))


def test_no_answer_goes_below_a_rule_that_is_known(tmp_path):
    """29 CFR 570.34 knows 16 for the fryer, the Food Code 57 °C for holding: only more can be asked."""
    store = kitchen_of(tmp_path, "us_food_code_2022")
    with pytest.raises(InputError, match="cannot go below"):
        answer(store, "hot_hold", "56")
    answer(store, "hot_hold", "60")
    assert place_here(store, remembered_kitchen(store)).hot_hold_c() == pytest.approx(60.0)
    answer(store, "fryer", "18")
    with pytest.raises(InputError, match="forbids this work"):
        sign(store, 17)
    born = dt.date(2011, 6, 1)
    assert judge_age("us", "fryer", born, TODAY, 14).outcome is Outcome.FAILS, "15 is under the law's 16"
    assert judge_age("us", "fryer", born, TODAY, 14).keys == ("us_fryer",)


def test_a_known_law_above_the_least_of_all_places_counts(tmp_path, monkeypatch):
    """Were 14 the least anywhere, 15 would still be under the law's 16."""
    monkeypatch.setattr("frywright.rooms.local_rules.LEAST_YEARS", 14)
    with pytest.raises(InputError, match="at least 16"):
        answer(kitchen_of(tmp_path, "us_food_code_2022"), "fryer", "15")


def test_of_another_place_nothing_is_taken_over(tmp_path):
    """An answer belongs to the place it was given for."""
    store = kitchen_of(tmp_path)
    answer(store)
    text = FISH_AND_WEDGES.replace('units = "metric"', 'units = "metric"\njurisdiction = "france"')
    remember_kitchen(store, text, "k.toml", "moved")
    assert place_here(store, remembered_kitchen(store)).said_years == {}


def test_hot_holding_is_judged_from_then_on(tmp_path):
    """Without a rule a cold piece opens no case; by the answer it does. A study of holds knows it too, and
    the pack says whose rule it is.
    """
    store = kitchen_of(tmp_path)
    kitchen = remembered_kitchen(store)
    cold = {"kept_in": "shelf", "product": "fish", "temp": "58", "thermometer": "T1", "who": "Ana"}
    reading, case = tell_hold(store, kitchen, cold)
    assert (reading.fact.limit_c, case) == (None, None)
    table = "repeat,minute,core_c,taste\n1,0,80,9\n1,30,61,9\n2,0,81,9\n2,30,62,9\n"
    with pytest.raises(InputError, match="known for the place"):
        study(kitchen, table, "t.csv", 7.0, 0.9)
    answer(store, "hot_hold", "63")
    reading, case = tell_hold(store, kitchen, cold)
    assert reading.fact.limit_c == pytest.approx(63.0) and case is not None
    limit_c = place_here(store, kitchen).hot_hold_c()
    assert study(kitchen, table, "t.csv", 7.0, 0.9, limit_c).ended_by == "safety"
    answer(store, "pressure_fryer", "18")
    rows = {row[0]: row[1:] for row in rule_rows(store, kitchen, training.today_of(kitchen))}
    assert rows["Hot holding"][0] == "said by Labour office, Ona Ruiz on 2020-02-03: letter 12"
    assert rows["Work at a pressure fryer"][1] == "18 years"
    before = training.today_of(kitchen) - dt.timedelta(days=1)
    rows = {row[0]: row[1:] for row in rule_rows(store, kitchen, before)}
    assert "Local rules" in rows["Hot holding"][0] and "Work at a pressure fryer" not in rows


def test_the_page_is_the_one_door(tmp_path):
    """From the pages that know no rule. What was refused stays typed, in °F; the pack shows what was kept."""
    store = kitchen_of(tmp_path, units="us")
    client = browser(store, page=True)
    for address in ("/care/people", "/records/probing"):
        assert (
            'href="/records/local-rules"'
            in client.get(address).text.partition("<main")[2].partition("</nav>")[2]
        )
    form = {
        "subject": "hot_hold",
        "figure": "120",
        "said_by": "Health office, Ona Ruiz",
        "said_on": "2020-02-03",
        "words": "e-mail of that day",
        "who": "Ana Vale",
    }
    refused = client.post("/records/local-rules", data=form)
    assert refused.status_code == 422 and "129 °F to 194 °F" in refused.text and 'value="120"' in refused.text
    page = client.post("/records/local-rules", data={**form, "figure": "145"}).text
    assert "145 °F, said by Health office, Ona Ruiz on 2020-02-03: e-mail of that day" in page
    assert "so nothing judges this reading" not in client.get("/records/probing").text
    said = paper.words(client.get("/records/pack.pdf").content)
    assert "said by Health office, Ona Ruiz on 2020-02-03" in said and "Local rules (1)" in said
