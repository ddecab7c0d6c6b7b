"""Saving and changing on pages: a name is asked, two tabs do not overwrite each other, a kitchen that changes
asks why.
"""

from __future__ import annotations

import re
import time
from functools import partial

import pytest
from fastapi.testclient import TestClient

from frywright.design.search import Effort
from frywright.ledger.facts.cook import ProgramProved
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.kitchens import demo_kitchen, demo_text
from frywright.trial.proof import prove_program
from frywright.web.app import make_app
from frywright.web.pages import desk
from tests.browsers import HOST
from tests.demo import kitchen_store
from tests.rooms.test_place import OWN

PAGE = {"accept": "text/html"}


def client_of(store):
    return TestClient(make_app(store), base_url=HOST, headers={"origin": HOST, **PAGE})


@pytest.fixture
def client(store):
    return client_of(store)


def cedar(value, based_on="1 bone-in cedar"):
    """The Cook form of the open program with another time."""
    return {
        "program": "bone-in cedar",
        "s0_set": "325",
        "s0_value": value,
        "s0_lid": "open",
        "s0_end": "duration",
        "based_on": based_on,
    }


def finished(client, page):
    """The page of a piece of work when it is done, however long this machine takes."""
    address = str(page.url)
    page = client.get(address)
    while 'http-equiv="refresh"' in page.text:
        time.sleep(0.2)
        page = client.get(address)
    return page


def test_saving_stays_at_the_desk(client):
    """The desk says what was saved, which version it is, and that old cards are void."""
    page = client.post("/cook/save", data=cedar("16:00"))
    assert page.url.path == "/cook/desk"
    assert "Saved: bone-in cedar, version 2" in page.text
    assert "void" in page.text


@pytest.mark.parametrize(
    ("language", "says"),
    [("en", "broke off on a fault of Frywright (ZeroDivisionError)"), ("es", "se interrumpió")],
)
def test_work_that_dies_ends_with_a_message_and_a_way_on(client, monkeypatch, caplog, language, says):
    """A fault nobody foresaw ends the wait, is told in the reader's language and logged; the next runs."""

    def dies(*_, **__):
        raise ZeroDivisionError

    monkeypatch.setattr(desk, "prove_program", dies)
    page = finished(client, client.post("/cook/desk/prove", data={"program": "tenders cedar"}))
    assert "broke off" in page.text
    page = client.get(f"{page.url.path}?lang={language}")
    assert says in page.text
    assert 'href="/cook/desk"' in page.text
    assert "ZeroDivisionError" in caplog.text
    monkeypatch.setattr(desk, "prove_program", lambda *a, **k: prove_program(*a, **{**k, "samples": 16}))
    again = finished(client, client.post("/cook/desk/prove", data={"program": "tenders cedar"}))
    assert 'class="problem"' not in again.text


def test_the_form_carries_the_version_it_was_begun_on(client):
    """A page opened before another tab saved still says so after it is shown again; a page opened anew is up
    to date.
    """
    assert (
        'name="based_on" value="1 bone-in cedar"'
        in client.get("/cook", params={"program": "bone-in cedar"}).text
    )
    client.post("/cook/save", data=cedar("16:00"))
    assert 'value="1 bone-in cedar"' in client.get("/cook", params=cedar("17:00")).text
    assert 'value="2 bone-in cedar"' in client.get("/cook", params={"program": "bone-in cedar"}).text
    assert (
        'value="3 bone-in alder"'
        in client.get("/cook", params={**cedar("17:00"), "program": "bone-in alder"}).text
    )


def test_the_second_of_two_tabs_is_refused_with_what_changed(client, store):
    """Nothing is written over the newer version; having seen it, the same person may save on top."""
    client.post("/cook/save", data=cedar("16:00"))
    page = client.post("/cook/save", data=cedar("17:00"))
    assert page.status_code == 409
    assert "Somebody saved version 2 of bone-in cedar while you worked on version 1" in page.text
    assert "15:30 → 16:00" in page.text
    assert remembered_kitchen(store).program("bone-in cedar").version == 2
    again = re.search(r'name="as" value="(2 bone-in cedar)"', page.text)
    hidden = dict(re.findall(r'type="hidden" name="(\w+)" value="([^"]*)"', page.text))
    assert hidden["s0_value"] == "17:00"
    client.post("/cook/save", data={**hidden, "as": again[1]})
    assert remembered_kitchen(store).program("bone-in cedar").stages[0].duration_s == 1020.0
    spanish = client.post("/cook/save?lang=es", data=cedar("17:30"))
    assert "Alguien guardó la versión 3" in spanish.text


def test_an_unchanged_program_is_said_to_be_unchanged(client, store):
    """Not that somebody else saved; nothing is written."""
    page = client.post("/cook/save", data=cedar("15:30"))
    assert page.status_code == 422
    assert "version 1 holds the same" in page.text
    assert not list(store.entries("program"))


def test_a_draft_for_another_pair_is_asked_its_name(client, store):
    """The known program of that pair is proposed first, a new name beside it; a twin is refused on the same
    page.
    """
    draft = {**cedar("16:00"), "product": "bone_in", "fryer": "dogwood"}
    page = client.post("/cook/save", data=draft)
    assert page.status_code == 200
    assert 'value="bone-in dogwood"' in page.text
    assert "next version of" not in page.text
    twin = client.post("/cook/save", data={**draft, "as": "", "name": "Bone_in CEDAR"})
    assert twin.status_code == 422
    assert "reads like bone-in cedar" in twin.text
    assert not list(store.entries("program"))
    client.post("/cook/save", data={**draft, "as": "", "name": "bone-in dogwood"})
    assert remembered_kitchen(store).program("bone-in dogwood").version == 1


def quick(monkeypatch):
    """Small searches and proofs, so that a flow is tried in seconds."""
    monkeypatch.setattr(desk, "Effort", partial(Effort, stages=1))
    monkeypatch.setattr(desk, "prove_program", lambda *a, **k: prove_program(*a, **{**k, "samples": 64}))


def test_a_carry_over_makes_a_program_of_that_place(client, store, monkeypatch):
    """Named on the page, in the list and on the card; the home program keeps its version."""
    quick(monkeypatch)
    page = client.post(
        "/cook/desk/transfer", data={"program": "tenders cedar", "fryer": "cedar", "altitude": "7,200"}
    )
    page = finished(client, page)
    assert "tenders cedar → Tenders, Cedar, open fryer, 7,200 ft" in page.text
    assert 'value="tenders cedar, 7,200 ft"' in page.text
    assert "next version of" not in page.text
    saved = client.post(str(page.url) + "/save", data={"as": "", "name": "tenders cedar, 7,200 ft"})
    assert "Saved: tenders cedar, 7,200 ft, version 1" in saved.text
    kitchen = remembered_kitchen(store)
    assert kitchen.program("tenders cedar").version == 1
    assert kitchen.program("tenders cedar, 7,200 ft").altitude_m == pytest.approx(2194.56)
    assert (
        "tenders cedar, 7,200 ft"
        in client.get("/cook/changes", params={"program": "tenders cedar, 7,200 ft"}).text
    )
    forced = client.post(str(page.url) + "/save", data={"as": "1 tenders cedar"})
    assert forced.status_code == 422
    assert "goes on unchanged" in forced.text


@pytest.mark.slow
def test_a_design_proposes_the_known_program_of_the_pair(client, store, monkeypatch):
    """No twin of underscores beside the program with a dash: saved without a word it is the next version."""
    quick(monkeypatch)
    page = finished(client, client.post("/cook/desk/design", data={"product": "wedges", "fryer": "cedar"}))
    assert "next version of wedges cedar (now version 1)" in page.text
    client.post(str(page.url) + "/save")
    assert {p.name for p in remembered_kitchen(store).programs} == {p.name for p in demo_kitchen().programs}
    assert remembered_kitchen(store).program("wedges cedar").version == 2


@pytest.mark.slow
def test_a_kitchen_change_asks_why_and_the_mark_stands_until_a_proof(client, store, monkeypatch):
    """Refused with the text kept; then marked at the desk, on the read-back and in Spanish; a proof that
    holds ends it.
    """
    quick(monkeypatch)
    text = demo_text().replace("heater_kw = 10\n", "heater_kw = 7\n")
    refused = client.post("/cook/kitchen", data={"text": text, "reason": ""})
    assert refused.status_code == 422
    assert "bone-in alder must be proved again" in refused.text
    assert "heater_kw = 7" in refused.text
    page = client.post("/cook/kitchen", data={"text": text, "reason": "one element burnt out"})
    assert page.url.path == "/cook/desk"
    assert "Prove again: the kitchen has changed (one element burnt out)" in page.text
    assert page.text.count("Prove again:") == 1
    for language, words in (("en", "one element burnt out"), ("es", "Vuelva a probar")):
        assert (
            words in client.get("/cook/readback", params={"program": "bone-in alder", "lang": language}).text
        )
        assert (
            words
            not in client.get("/cook/readback", params={"program": "bone-in birch", "lang": language}).text
        )
    finished(client, client.post("/cook/desk/prove", data={"program": "bone-in alder"}))
    (proof,) = store.facts(ProgramProved)
    assert proof.fact.holds
    assert "Prove again" not in client.get("/cook/desk?lang=en").text


def test_a_metric_kitchen_in_spanish(tmp_path):
    """Another kitchen: metres and kelvins, its own words, the same rules."""
    store = kitchen_store(tmp_path / "o.db", OWN)
    client = client_of(store)
    page = client.post("/cook/kitchen", data={"text": OWN.replace("altitude_m = 40", "altitude_m = 1210")})
    assert page.status_code == 422
    assert "hay que volver a probar alas uno" in page.text
    page = client.post(
        "/cook/kitchen",
        data={"text": OWN.replace("altitude_m = 40", "altitude_m = 1210"), "reason": "mudanza"},
    )
    told = re.search(r"Vuelva a probar: [^<]*", page.text)[0]
    assert "mudanza" in told
    assert "°C" in told and "°F" not in told


def test_a_kitchen_file_that_cannot_be_read_stays_in_its_box(client):
    """The line and the reason stand above the text as it was typed; nothing is lost."""
    text = demo_text().replace("heater_kw = 10", "heater_kw = 1000")
    page = client.post("/cook/kitchen", data={"text": text, "reason": "a bigger one"})
    assert page.status_code == 422
    assert "heater_kw = 1000" in page.text.split("<textarea")[0]
    assert "heater_kw = 1000" in page.text.split("<textarea")[1]
    assert 'value="a bigger one"' in page.text


@pytest.mark.parametrize("act", ["save", "keep"])
@pytest.mark.parametrize(("box", "text"), [("s0_value", "10.20"), ("load", "lots"), ("start", "-40")])
def test_a_wrong_box_comes_back_with_the_page(client, store, act, box, text):
    """Save or Keep with something wrong: the room itself, the box marked and as typed, nothing kept."""
    before = len(list(store.entries()))
    page = client.post(f"/cook/{act}", data={**cedar("15:00"), box: text})
    assert page.status_code == 422
    assert 'id="ask"' in page.text
    assert f'value="{text}"' in page.text
    assert f'id="wrong-{box}"' in page.text
    assert "Go back in the browser" not in page.text
    assert len(list(store.entries())) == before
