"""Pages of the desk: designs, carry-overs, versions and read-backs."""

from __future__ import annotations

import re
import time
from dataclasses import replace

import pytest

from frywright.ledger.facts.cook import ProgramSaved, ReadBackTaken
from frywright.rooms.cook import desk
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen


@pytest.mark.slow
def test_desk_pages_answer_and_unknown_keys_are_named(client):
    """Every page of the desk answers; an unknown program, job or slot is told, never a crash."""
    for path in (
        "/cook/desk",
        "/cook/readback?program=bone-in+alder",
        "/cook/changes?program=bone-in+alder",
        "/cook/kitchen",
    ):
        assert client.get(path).status_code == 200
    assert client.get("/cook/cards.pdf?both=true").content.startswith(b"%PDF")
    assert client.get("/cook/card.pdf?program=nothing").status_code == 422
    assert client.get("/cook/card.pdf?program=bone-in+birch&slot=9").status_code == 422
    assert client.get("/cook/desk/job/77").status_code == 404
    assert client.post("/cook/desk/job/77/save").status_code == 422
    carry = {"program": "bone-in alder", "fryer": "birch"}
    for wrong in ({"fryer": "oak"}, {"load": "0"}, {"load": "40"}, {"load": "x"}, {"product": "eel"}):
        assert client.post("/cook/desk/transfer", data=carry | wrong).status_code == 422
    wanted = {"product": "bone_in", "fryer": "alder"}
    for wrong in (
        {"stages": "9"},
        {"stages": "0"},
        {"stages": "two"},
        {"loss": "-3"},
        {"margin": "-1"},
        {"crust_low": "-2"},
    ):
        assert client.post("/cook/desk/design", data=wanted | wrong).status_code == 422
    assert client.post("/cook/desk/job/77/row/0").status_code == 422


def finished(client, answer):
    """Page of a job that was begun, once its work is done, however long this machine takes."""
    page = client.get(answer.headers["location"]).text
    while "<progress" in page:
        time.sleep(0.2)
        page = client.get(answer.headers["location"]).text
    return page


@pytest.mark.slow
def test_a_design_page_offers_rows_that_are_proved_before_they_are_saved(client, store):
    """Trade-off with the chosen row marked, margins by load, window of every value, pieces; a row taken is
    proved, then saved.
    """
    form = {"product": "tenders", "fryer": "cedar", "stages": "1"}
    begun = client.post("/cook/desk/design", data=form, follow_redirects=False)
    page = finished(client, begun)
    assert page.count("<strong>chosen</strong>") == 1
    assert "None of 256 loads failed" in page
    for heading in ("Margin by load", "Trade-off", "Window", "Piece by piece", "rank correlation"):
        assert heading in page
    assert "save-as" in page
    job = begun.headers["location"]
    assert client.post(f"{job}/row/99").status_code == 422
    assert "prove this row" in page
    rows = [int(n) for n in re.findall(r"/row/([0-9]+)", page)]
    taken = client.post(f"{job}/row/{rows[0]}", follow_redirects=False)
    proved = finished(client, taken)
    assert "None of 256 loads failed" in proved
    before = remembered_kitchen(store).program("tenders cedar").version
    assert client.post(taken.headers["location"] + "/save", follow_redirects=False).status_code == 303
    assert remembered_kitchen(store).program("tenders cedar").version == before + 1


@pytest.mark.slow
def test_a_carry_over_takes_another_bird_and_load(client):
    """To a lighter load on the same fryer: the page tells the stages and the proof."""
    form = {"program": "bone-in alder", "fryer": "alder", "product": "bone_in", "load": "2"}
    page = finished(client, client.post("/cook/desk/transfer", data=form, follow_redirects=False))
    assert "save-as" in page
    assert "loads failed" in page


def test_versions_page_tells_the_change_and_its_effect(client, store):
    """After saving a shorter program the versions page lists the value, the effect, the void cards, and the
    clock as it was and is keyed.
    """
    form = {
        "program": "bone-in cedar",
        "s0_set": "325",
        "s0_value": "15:00",
        "s0_lid": "open",
        "s0_end": "duration",
    }
    client.post("/cook/save", data=form)
    page = client.get("/cook/changes?program=bone-in+cedar").text
    assert "Clock as keyed: 15:30 → 15:00" in page
    assert "Clock 15:00. Lift when it ends." in page
    assert "void" in page


def test_older_changes_stand_on_the_pages_after_and_each_version_is_cooked_once(client, store, monkeypatch):
    """Twenty-five versions: ten changes, ten older ones by the link, the rest by its link; each change once,
    newest first. What is no version shows the newest.
    """
    old = remembered_kitchen(store).program("tenders cedar")
    versions = [replace(old, version=old.version + n) for n in range(25)]
    with store.writing():
        for program in versions[1:]:
            write(store, ProgramSaved.of(program, short=None, origin=None))
    cooked = []
    whole = desk.simulate_many
    monkeypatch.setattr(desk, "simulate_many", lambda plans: cooked.append(len(plans)) or whole(plans))
    query, seen = "/cook/changes?program=tenders%20cedar", []
    while query:
        page = client.get(query).text
        seen += [int(n) for n in re.findall(r"<h3>(\d+) → ", page)]
        link = re.search(r'href="(/cook/changes\?[^"]*before=\d+)#versions"', page)
        query = link[1].replace("&amp;", "&") if link else ""
    assert seen == [program.version for program in versions[-2::-1]]
    assert cooked == [11, 11, 5]
    for odd in ("x", "0", "99999"):
        page = client.get("/cook/changes", params={"program": "tenders cedar", "before": odd})
        assert (page.status_code, page.text.count("<h3>")) == (200, 10)


def test_a_read_back_is_told_in_spanish_whole(client, store):
    """Piece, slip and consequence in Spanish; the entry names both people and the difference."""
    form = {
        "program": "bone-in birch",
        "slot": "1",
        "v0": "330",
        "v1": "4:00",
        "v2": "310",
        "v3": "10:30",
        "read_by": "Kim",
        "checked_by": "Ana",
        "started_at": "2026-11-25T12:00:00+00:00",
    }
    page = client.post("/cook/readback?lang=es", data=form).text
    assert "una cifra" in page
    assert "Teclee otra vez el tiempo de la etapa 2: 12:30." in page
    assert "pieza más fría" in page
    assert "Key the" not in page
    kept = next(store.facts(ReadBackTaken)).fact
    assert (kept.read_by, kept.checked_by, kept.matches) == ("Kim", "Ana", False)
    assert kept.mismatches[0].slip == "one digit"
