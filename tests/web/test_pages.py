"""Pages without a browser: answers, headers, refused writes, what is kept."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from pathlib import Path

import pytest
from fastapi.testclient import TestClient

from frywright import web
from frywright.ledger.facts.cook import SlotChosen
from frywright.ledger.store import Store
from frywright.physics.plan import _piece_classes
from frywright.rooms.clock import now
from frywright.rooms.cook.programs import save_program
from frywright.rooms.cook.view import saved_beside
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.ask import edit_program
from frywright.trial.kitchens import demo_text
from frywright.trial.predicted import _full_load, _predicting
from frywright.web.app import LARGEST_BODY_BYTES, PHOTO_FORM, UPLOADS, make_app
from tests.browsers import HOST


def test_cook_says_where_it_is_and_what_is_predicted(client):
    """A newcomer who opens Cook sees an invented kitchen, and a verdict."""
    page = client.get("/cook")
    assert page.status_code == 200
    assert "an invented kitchen" in page.text
    assert "Predicted " in page.text
    assert "not proven yet" in page.text
    rows = re.search(r'id="pieces".*?</table>', page.text, re.DOTALL)[0]
    cells = [re.sub(r"<[^>]*>", "", cell) for cell in re.findall(r"<td>(.*?)</td>", rows)]
    assert len(cells) % 7 == 0
    assert all(cells)


def test_a_saved_program_says_where_it_stands(client):
    """Name, version and the step that comes next, of the program named; of one that is not there nothing."""
    for program, version in (("bone-in alder", 3), ("tenders cedar", 1)):
        page = client.get("/cook", params={"program": program}).text
        assert f"Where it stands</a>: {program}, version {version}</p>" in page
        assert f'aria-label="Life of {program}, version {version}"' in page
    gone = client.get("/cook", params={"program": "nothing"})
    assert gone.status_code == 422 and "Where it stands" not in gone.text


def test_every_program_has_a_page_in_both_languages(client, kitchen):
    """No program of the demo breaks the page, in English or Spanish."""
    for program in kitchen.programs:
        for language, words in (("en", "Load and start"), ("es", "Carga y comienzo")):
            page = client.get("/cook", params={"program": program.name, "lang": language})
            assert page.status_code == 200
            assert words in page.text
            assert f'lang="{language}"' in page.text


def test_the_language_is_remembered(client):
    """Chosen once, Spanish stays."""
    client.get("/cook", params={"lang": "es"})
    assert "Cocinar" in client.get("/records").text


def test_security_headers_everywhere(client):
    """A strict policy on pages, data, pictures and errors; nothing may load from elsewhere."""
    for path in (
        "/cook",
        "/records",
        "/cook/view.json",
        "/static/cook.js",
        "/nowhere",
        "/static/fonts/AtkinsonHyperlegible-Regular.woff2",
    ):
        policy = client.get(path).headers["content-security-policy"]
        assert "default-src 'none'" in policy
        assert "script-src 'self'" in policy
        assert "unsafe" not in policy


def test_names_with_markup_stay_text(tmp_path):
    """A product named like a script is shown as text."""
    store = Store.file(tmp_path / "x.db", now)
    evil = "<script>alert(1)</script>"
    remember_kitchen(
        store,
        demo_text()
        .replace("Alder, three-head pressure vat", evil)
        .replace("Juniper Ridge Chicken (invented)", evil),
        "d.toml",
    )
    page = TestClient(make_app(store), base_url=HOST).get("/cook", params={"program": "bone-in alder"})
    assert page.status_code == 200
    assert evil not in page.text


def test_editing_a_stage_changes_the_answer(client):
    """A stage shortened by five minutes gives a colder core; the condition ends work too."""
    base = {
        "program": "bone-in alder",
        "s0_set": "335",
        "s0_value": "0:40",
        "s1_set": "310",
        "s1_lid": "pressure",
    }
    long = client.get("/cook/view.json", params={**base, "s1_value": "10:20"}).json()
    short = client.get("/cook/view.json", params={**base, "s1_value": "5:20"}).json()
    assert short["headline"]["margin_k"] < long["headline"]["margin_k"] - 10
    assert short["facts"]["state"] == short["headline"]["state"] == "short"
    assert short["locked"]
    assert not long["locked"]
    waits = {**base, "s1_end": "core_above", "s1_value": "170", "s1_most": "20:00"}
    met = client.get("/cook/view.json", params=waits).json()
    assert met["ok"]


def test_keep_and_save(client, store):
    """Keeping a simulation and saving a version write entries and lead to Records."""
    form = {
        "program": "bone-in cedar",
        "s0_set": "325",
        "s0_value": "17:00",
        "s0_lid": "open",
        "s0_end": "duration",
    }
    assert "Chain unbroken over 2 entries" in client.post("/cook/keep", data=form).text
    assert client.post("/cook/save", data=form).status_code == 200
    assert remembered_kitchen(store).program("bone-in cedar").version == 2
    assert store.verify()[0] == 3


def test_foreign_and_oversized_writes_are_refused(client, store):
    """Another site, no origin, half an address or a megabyte of form: refused, nothing written."""
    form = {"program": "bone-in cedar"}
    for origin in ("http://elsewhere.invalid", "", "null", "http://[", "http://127.0.0.1@elsewhere.invalid"):
        assert client.post("/cook/keep", data=form, headers={"origin": origin}).status_code == 403
    half = {"origin": "http://[", "host": "["}
    assert client.post("/cook/keep", data=form, headers=half).status_code == 403
    big = {"program": "x" * (LARGEST_BODY_BYTES + 1)}
    assert client.post("/cook/keep", data=big).status_code == 413
    assert store.verify()[0] == 1


def test_every_form_that_takes_a_file_may_be_large():
    """A new one joins the addresses whose bodies may be as large as a photo or a log."""
    pages = Path(web.__file__).with_name("templates").rglob("*.html")
    forms = [
        form for page in pages for form in re.findall(r"<form[^>]*multipart[^>]*>", page.read_text("utf-8"))
    ]
    places = {re.sub(r"{{.*?}}", "1", re.search(r'action="([^"]*)"', form)[1]) for form in forms}
    small = {place for place in places if not (UPLOADS.fullmatch(place) or PHOTO_FORM.fullmatch(place))}
    assert len(places) > 6 and small == {"/setup/1/1"}  # of its screens only that of the plate takes one


def test_a_broken_chain_shows_on_the_page(client, store, tmp_path):
    """Tampering by hand turns the Records page into a warning that names the entry."""
    import sqlite3

    raw = sqlite3.connect(tmp_path / "demo.db")
    raw.execute("DROP TRIGGER entry_no_update")
    raw.execute("UPDATE entry SET author='someone' WHERE number=1")
    raw.commit()
    raw.close()
    assert "breaks at entry 1" in client.get("/records").text


def test_pictures_come_without_scripts(client):
    """The still picture is an SVG with the verdict as its description."""
    picture = client.get("/cook/chart.svg", params={"program": "bone-in alder"})
    assert picture.headers["content-type"] == "image/svg+xml"
    assert "<svg" in picture.text


def test_the_saved_version_is_simulated_once_beside_all_edits_of_it(client):
    """Its sentence and curves stay those of its own load."""
    saved_beside.cache_clear()
    base = {"program": "bone-in cedar", "load": "2", "s0_set": "330", "s0_end": "duration"}
    told = [
        client.get("/cook/view.json", params={**base, "s0_value": f"14:{second:02d}"}).json()["saved"]
        for second in (10, 20, 30)
    ]
    assert told[0] and told[0] == told[1] == told[2] and saved_beside.cache_info().misses == 1
    other = client.get("/cook/view.json", params={**base, "load": "3", "s0_value": "14:10"}).json()["saved"]
    assert other["cores"] != told[0]["cores"]


def test_what_is_kept_for_an_edit_follows_language_kitchen_and_another_program(client, store):
    """Answers beside an edit after each change are those of a server that has kept nothing."""
    asked = {
        "program": "bone-in cedar",
        "oil": "331 F",
        "s0_set": "330 F",
        "s0_end": "duration",
        "s0_value": "9:00",
    }
    other = Store.file(Path(store.engine.url.database), now)  # as another process has it

    def fresh(language):
        for kept in (saved_beside, _full_load, _predicting, _piece_classes):
            kept.cache_clear()
        return TestClient(make_app(other), base_url=HOST).get(
            "/cook/view.json", params={**asked, "lang": language}
        )

    def same(language="en"):
        told = client.get("/cook/view.json", params={**asked, "lang": language})
        assert told.status_code == 200, told.text
        assert told.content == fresh(language).content
        return told.json()

    first = same()
    assert first["locked"] and first["saved"]
    spanish = same("es")
    assert spanish["saved"]["sentence"] != first["saved"]["sentence"]
    kitchen = remembered_kitchen(other)
    program = kitchen.program("bone-in cedar")
    longer = replace(program, stages=(replace(program.stages[0], duration_s=2000.0), *program.stages[1:]))
    save_program(other, kitchen, edit_program(program, longer.stages))
    saved = same()["saved"]
    assert saved["time_s"][-1] > first["saved"]["time_s"][-1]
    assert f"version {program.version + 1}" in saved["sentence"]
    warmer = demo_text().replace("thermometer_error_f = 2\n", "thermometer_error_f = 4\n")
    assert warmer != demo_text()
    remember_kitchen(other, warmer, "demo.toml", "another thermometer")
    assert same()["facts"]["amount"] != first["facts"]["amount"]
    metric = warmer.replace('units = "us"', 'units = "metric"')
    remember_kitchen(other, metric, "demo.toml", "metric from now on")
    assert "°C" in same()["facts"]["predicted"]


def test_view_json_has_no_nan(client):
    """Strict JSON for every program."""
    for name in ("bone-in birch", "wedges cedar"):
        json.loads(
            client.get("/cook/view.json", params={"program": name}).text,
            parse_constant=lambda c: pytest.fail(c),
        )


def test_a_product_and_fryer_can_be_chosen(client, store):
    """A pair with a program leads to it; a pair without one tries the stages as a draft, or says what bars
    it.
    """
    known = client.get("/cook", params={"program": "bone-in alder", "product": "bone_in", "fryer": "birch"})
    assert "bone-in birch" in known.text.split("selected>")[1][:20]
    tried = client.get(
        "/cook/view.json", params={"program": "bone-in cedar", "product": "bone_in", "fryer": "cedar"}
    ).json()
    assert tried["program"]["name"] == "bone-in cedar"
    draft = {"program": "bone-in cedar", "product": "wedges", "fryer": "alder"}
    view = client.get("/cook/view.json", params=draft).json()
    assert view["program"]["name"] == "wedges alder"
    assert view["program"]["version"] == 1
    barred = client.get(
        "/cook",
        params={
            "program": "bone-in alder",
            "product": "tenders",
            "fryer": "cedar",
            "s0_set": "330",
            "s0_lid": "pressure",
            "s0_value": "3:00",
        },
    )
    assert barred.status_code == 422
    assert "open fryer" in barred.text
    form = {**draft, "s0_set": "350", "s0_value": "6:00", "s0_lid": "open", "s0_end": "duration"}
    asked = client.post("/cook/save", data=form)
    assert 'value="wedges alder"' in asked.text
    assert len(list(store.entries("program"))) == 0
    client.post("/cook/save", data={**form, "as": "", "name": "wedges alder"})
    assert remembered_kitchen(store).program("wedges alder").version == 1


def test_a_slot_is_chosen_with_the_card_and_remembered(client, store):
    """The page suggests a free slot; the one chosen is kept once, stands on the card, and the read-back asks
    for it.
    """
    page = client.get("/cook/card?program=bone-in+alder").text
    assert '<option value="1" selected>' in page
    assert page.count("<option") == 10
    for _ in range(2):
        card = client.post("/cook/card", data={"program": "bone-in alder", "slot": "7"})
        assert card.content.startswith(b"%PDF")
        assert "slot=7" in str(card.url)
    assert [e.fact.slot for e in store.facts(SlotChosen)] == [7]
    assert '<option value="7" selected>' in client.get("/cook/card?program=bone-in+alder").text
    assert 'name="slot" value="7"' in client.get("/cook/readback?program=bone-in+alder").text
    assert client.post("/cook/card", data={"program": "bone-in alder", "slot": "11"}).status_code == 422
    assert "This slot also has:" in client.get("/cook/card?program=wedges+cedar").text
