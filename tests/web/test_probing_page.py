"""Probe next on the page: the plan, a reading in its box, the error beside it, the sheet, the facts after."""

from __future__ import annotations

import re

import pytest
from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.web.app import make_app
from tests.browsers import HOST, browser
from tests.demo import kitchen_store
from tests.rooms.test_probing import bench

PAGE = "/cook/probing?program=strips+lille"


@pytest.fixture
def store(tmp_path) -> Store:
    return bench(tmp_path)


@pytest.fixture
def client(store):
    return browser(store, page=True)


def typed(page: str, **more: str) -> dict[str, str]:
    """The form as the page fills it, and what is typed."""
    form = page[page.index('id="read"') :]
    chosen = {
        name: re.search(rf'name="{name}".*?value="([^"]*)" selected', form, re.S)[1]
        for name in ("cut", "place", "load_kind")
    }
    filled = {
        name: re.search(rf'name="{name}"[^>]*value="([^"]*)"', form)[1] for name in ("last", "load_number")
    }
    return {"program": "strips lille", **chosen, **filled, "thermometer": "T9", "who": "Ana", **more}


def test_the_page_leads_from_the_plan_to_proven(client, store):
    """Before: so many of so many read and the chance. Readings one by one, thermometer and name stay. After:
    proven, on the desk too.
    """
    page = client.get(PAGE).text
    assert re.search(r"0 of about \d+ read\. Chance to meet 73\.9 °C: \d+ %", page)
    for _ in range(30):
        if 'id="read"' not in page:
            break
        answer = client.post("/cook/probing", data=typed(page, temp="85"), follow_redirects=False)
        assert answer.status_code == 303
        page = client.get(answer.headers["location"]).text
        assert 'id="read"' not in page or 'name="thermometer" autocomplete="off" required value="T9"' in page
    assert "Meets 73.9 °C on" in page
    assert "of the heaviest pieces are over it" in page
    assert "not proven yet" not in client.get("/cook/desk").text
    by_readings = "Proven by readings of a checked thermometer"
    proven, other = (client.get(f"/cook?program=strips+lille{more}").text for more in ("", "&start=9"))
    assert by_readings in proven and "not proven" not in proven
    assert by_readings not in other and "Predicted, not proven: " in other


def test_a_reading_below_opens_its_case(client, store):
    """The page says fails, links the case and asks for no more readings."""
    answer = client.post("/cook/probing", data=typed(client.get(PAGE).text, temp="70"))
    case = store.current("deviation")[-1].number
    assert f'href="/records/case/{case}"' in answer.text
    assert "Fails 73.9 °C" in answer.text
    assert 'id="read"' not in answer.text


@pytest.mark.parametrize(
    ("wrong", "box", "said"),
    [
        ({"temp": "hot"}, "temp", "a number"),
        ({"temp": "84", "weight": "x"}, "weight", "a number"),
        ({"temp": "84", "load_number": "-1"}, "load_number", "whole number"),
        ({"temp": "84", "thermometer": ""}, "thermometer", "mark on the thermometer"),
    ],
)
def test_an_error_stands_in_its_box_and_nothing_typed_is_lost(client, store, wrong, box, said):
    """The box is marked, says why, and every other box keeps what was typed."""
    answer = client.post(
        "/cook/probing", data=typed(client.get(PAGE).text, rest="88", rest_time="2:00", **wrong)
    )
    assert answer.status_code == 422
    assert re.search(rf'name="{box}"[^>]*aria-invalid="true" aria-describedby="wrong_{box}"', answer.text)
    assert said in re.search(rf'id="wrong_{box}">([^<]*)<', answer.text)[1]
    assert 'value="88"' in answer.text
    assert 'name="who" autocomplete="off" value="Ana"' in answer.text
    assert store.current("probe_reading") == []


def test_a_hostile_form_is_shown_as_text(client):
    """Whatever is typed into a box comes back as text."""
    bad = '"><script>alert(1)</script>'
    data = typed(client.get(PAGE).text, temp=bad, thermometer=bad, load_number=bad)
    answer = client.post("/cook/probing", data=data)
    assert answer.status_code == 422
    assert "<script>alert" not in answer.text
    link = client.get("/cook/probing", params={"program": "strips lille", "case": bad, "who": bad}).text
    assert "<script>alert" not in link


def test_the_sheet_is_paper(client):
    """A PDF while there is something to probe; of a program nobody knows, an error."""
    answer = client.get("/cook/probing/sheet.pdf?program=strips+lille")
    assert answer.headers["content-type"] == "application/pdf"
    assert client.get("/cook/probing/sheet.pdf?program=zz").status_code == 422


def test_a_kitchen_without_programs_says_what_to_do(tmp_path):
    """No program yet: a sentence, no fault."""
    from tests.rooms.test_probing import HARBOUR

    empty = kitchen_store(tmp_path / "e.db", HARBOUR[: HARBOUR.index("[[program]]")])
    web = TestClient(make_app(empty), base_url=HOST, headers={"accept": "text/html"})
    answer = web.get("/cook/probing")
    assert answer.status_code == 422
    assert "describe a fryer and save a program" in answer.text
