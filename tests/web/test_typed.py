"""What is typed into Cook and the desk: read as people write it, refused at its box, kept on the page."""

from __future__ import annotations

import re

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.browsers import HOST, browser
from tests.demo import kitchen_store


@pytest.mark.parametrize(
    ("params", "says"),
    [
        ({"program": "nothing"}, "one of"),
        ({"load": "many"}, "a count such as 4"),
        ({"load": "99"}, "boils over"),
        ({"load": "-1"}, "boils over"),
        ({"start": "500"}, "30 °F to 104 °F"),
        ({"altitude": "90000"}, "-1640 ft to 16404 ft"),
        (
            {"s0_set": "1000", "s0_value": "2:00"},
            "set is 1000 °F (bone-in alder, stage 1); it must be 140 °F to 446 °F",
        ),
        ({"s0_set": "330", "s0_value": "2:99"}, "seconds up to 59"),
        ({"s0_set": "330", "s0_lid": "ajar", "s0_value": "2:00"}, "choices offered"),
        ({"s0_set": "330", "s0_end": "core_above", "s0_value": "165"}, "at most is"),
        (
            {**{f"s{i}_set": "330" for i in range(6)}, **{f"s{i}_value": "1:00" for i in range(6)}},
            "at most 4",
        ),
    ],
)
def test_bad_input_keeps_what_was_typed_and_says_what_to_do(client, params, says):
    """The page and the JSON refuse in words; what was typed is still in the form."""
    ask = {"program": "bone-in alder", **params}
    page = client.get("/cook", params=ask)
    assert page.status_code == 422
    assert says in page.text.replace("&#39;", "'")
    for name, value in params.items():
        if name in ("load", "start", "altitude") or name.endswith(("_set", "_value")):
            assert f'value="{value}"' in page.text
    answer = client.get("/cook/view.json", params=ask)
    assert answer.status_code == 422
    assert says in answer.json()["message"]


@pytest.mark.parametrize(
    ("params", "box", "says"),
    [
        ({"s0_set": "", "s0_value": "0:40", "s1_set": "310", "s1_value": "10:20"}, "s0_set", "a temperature"),
        ({"s0_set": "335", "s0_value": "0:40", "s1_set": "", "s1_value": "10:20"}, "s1_set", "a temperature"),
        ({"s0_set": "335", "s0_value": ""}, "s0_value", "given"),
        ({"s0_set": "335", "s0_value": "10.20"}, "s0_value", "type 10:20 or type 10.2 min"),
        ({"load": "٣"}, "load", "digits 0 to 9"),
        ({"altitude": "7.200"}, "altitude", "type 7.2 or type 7200"),
        (
            {"s0_set": "335", "s0_end": "oil_above", "s0_value": "330", "s0_most": "9:99"},
            "s0_most",
            "seconds up to 59",
        ),
        ({"oil": "999"}, "oil", "140 °F to 446 °F"),
    ],
)
def test_the_box_that_is_wrong_is_marked(client, params, box, says):
    """Page and JSON name one box; the page marks it, puts the words there and shows no verdict."""
    ask = {"program": "bone-in alder", **params}
    told = client.get("/cook/view.json", params=ask)
    assert (told.status_code, told.json()["box"]) == (422, box)
    assert says in told.json()["message"]
    page = client.get("/cook", params=ask).text
    assert re.search(rf'name="{box}"[^>]*aria-invalid="true"[^>]*aria-describedby="wrong-{box}"', page)
    assert page.count("aria-invalid") == 1
    assert 'id="headline"' not in page


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_wrong_box_is_marked_with_its_own_words(client, language):
    """Each wrong box says what is wrong with it alone, out of range or unreadable; good ones say nothing."""
    typed = {
        "load": "12",
        "start": "x",
        "oil": "999",
        "altitude": "7.200",
        "s0_set": "900",
        "s0_value": "9:99",
        "s1_set": "",
        "s1_value": "10:20",
        "s2_set": "310",
        "s2_value": "9:00:00",
    }
    says = {
        "load": "3.75",
        "start": "°F",
        "oil": "140 °F",
        "altitude": "7.2",
        "s0_set": "900 °F",
        "s0_value": "59",
        "s1_set": {"en": "a temperature", "es": "una temperatura"}[language],
        "s2_value": "120:00",
    }
    ask = {"program": "bone-in alder", "lang": language, **typed}
    boxes = client.get("/cook/view.json", params=ask).json()["boxes"]
    assert {box for box in boxes if box not in says} == set()
    assert {box: words for box, words in says.items() if words not in boxes.get(box, "")} == {}
    page = client.get("/cook", params=ask).text
    for box in says:
        assert re.search(rf'name="{box}"[^>]*aria-describedby="wrong-{box}"', page), box
        assert f'id="wrong-{box}"' in page
    assert page.count("aria-invalid") == len(says)


def test_altitudes_and_loads_are_read_as_people_write_them(client):
    """7,200 ft is 7200 ft, and so is 7200; a load may name its heads."""

    def answer(**params):
        return client.get("/cook/view.json", params={"program": "bone-in alder", **params}).json()

    assert answer(altitude="7,200")["altitude"] == answer(altitude="7200")["altitude"] == "7,200 ft"
    assert answer(load="3 heads")["load"] == answer(load="3")["load"]


def test_a_stage_can_be_left_out_without_scripts(client):
    """The box to leave a stage out drops it; an emptied set point never does."""
    stages = {"s0_set": "335", "s0_value": "0:40", "s1_set": "310", "s1_lid": "pressure", "s1_value": "10:20"}
    whole, less = (
        client.get("/cook/view.json", params={"program": "bone-in alder", **stages, **extra}).json()[
            "curves"
        ]["time_s"][-1]
        for extra in ({}, {"s0_out": "yes"})
    )
    assert whole - less == pytest.approx(40.0, abs=6.0)


def test_mistakes_are_told_in_spanish_too(client):
    """The Spanish page says what is wrong in Spanish."""
    page = client.get("/cook/view.json", params={"program": "bone-in alder", "load": "99", "lang": "es"})
    assert "desborda" in page.json()["message"]
    assert "debe ser" in page.json()["message"]


def test_a_refused_form_gets_a_page_not_data(client):
    """A browser that posts impossible goals is told on a page; a program is told in JSON."""
    bad = {"product": "bone_in", "fryer": "alder", "margin": "90"}
    page = client.post("/cook/desk/design", data=bad, headers={"accept": "text/html", "origin": HOST})
    assert page.status_code == 422
    assert "0.0 °F to 27.0 °F" in page.text
    assert "<h1>" in page.text
    assert client.post("/cook/desk/design", data=bad).json()["error"] == "InputError"


@pytest.mark.parametrize(
    ("path", "typed", "box", "says"),
    [
        ("design", {"longest": "10.20"}, "longest", "type 10:20 or type 10.2 min"),
        ("design", {"longest": "1200"}, "longest", "type 12:00 or type 1200 s"),
        ("design", {"core_high": "hot"}, "core_high", "a number with one of these units"),
        ("design", {"hottest": "500"}, "hottest", "284 °F to 392 °F"),
        ("design", {"colour_low": "٣"}, "colour_low", "digits 0 to 9"),
        ("design", {"margin": "90"}, "margin", "0.0 °F to 27.0 °F"),
        ("transfer", {"altitude": "7.200"}, "altitude", "type 7.2 or type 7200"),
        ("transfer", {"altitude": "40,000"}, "altitude", "-1640 ft to 16404 ft"),
    ],
)
def test_the_desk_marks_the_box_that_is_wrong(client, path, typed, box, says):
    """The forms of the desk read as Cook does; what was typed stays and its box is marked, in the kitchen's
    units.
    """
    form = {"product": "bone_in", "fryer": "alder", "program": "bone-in alder", **typed}
    page = client.post(f"/cook/desk/{path}", data=form, headers={"accept": "text/html", "origin": HOST})
    assert page.status_code == 422
    assert re.search(rf'name="{box}" value="{typed[box]}"[^>]*aria-invalid="true"', page.text)
    assert page.text.count("aria-invalid") == 1
    assert says in page.text


TYPED = st.one_of(
    st.text(max_size=12),
    st.sampled_from(
        ["nan", "inf", "-1", "9" * 400, "1e9", "0", "4", "330", "12:30", "9 lb", "165F", "½", "٣"]
    ),
)


@pytest.mark.slow
@settings(max_examples=250, deadline=None, suppress_health_check=list(HealthCheck), derandomize=True)
@given(
    st.dictionaries(
        st.sampled_from(
            [
                "load",
                "start",
                "oil",
                "altitude",
                "s0_set",
                "s0_value",
                "s0_end",
                "s0_lid",
                "s0_most",
                "s1_set",
                "s1_value",
                "product",
                "fryer",
                "lang",
            ]
        ),
        TYPED,
    )
)
def test_nothing_typed_breaks_the_server(fuzzed, params):
    """Whatever is typed, the answer is a view or words; never an error of ours."""
    answer = fuzzed.get("/cook/view.json", params={"program": "bone-in alder", **params})
    assert answer.status_code in (200, 422)
    if answer.status_code == 422:
        assert answer.json()["message"]


@pytest.fixture(scope="module")
def fuzzed(tmp_path_factory):
    store = kitchen_store(tmp_path_factory.mktemp("fuzz") / "f.db")
    return browser(store)
