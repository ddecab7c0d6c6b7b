"""What is typed on a page reaches its act as it was meant, and the page it leads to is the act's. Acts that
cook, fit or print for long are put aside: what they were asked is looked at.
"""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import pytest
from fastapi import Response

from frywright.ledger.facts.cook import ProgramSaved, ProgramText
from frywright.ledger.facts.fleet import ReleaseAnswered, ReleaseArrived
from frywright.ledger.facts.life import CardPrinted
from frywright.model.errors import InputError
from frywright.rooms.cook.life import keep_cards
from frywright.rooms.cook.live import LiveRoom
from frywright.rooms.cook.slots import tell_slot
from frywright.rooms.fleet.arrivals import arrive
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.predicted import NOBODY
from frywright.web.pages import live, paper, probing
from tests.browsers import browser


@pytest.fixture
def client(store):
    return browser(store, follow_redirects=False)


def went_to(answer) -> str:
    """The page that an act leads to."""
    assert answer.status_code == 303, answer.text
    return answer.headers["location"]


@pytest.fixture
def released(store):
    """Bone-in Cedar with its last stage half a minute longer, and tenders for a fryer that is not here."""
    kitchen = remembered_kitchen(store)
    program = kitchen.program("bone-in cedar").timed()
    last = replace(program.stages[-1], duration_s=program.stages[-1].duration_s + 30.0)
    longer = replace(program, stages=(*program.stages[:-1], last), version=9)
    strange = replace(kitchen.program("tenders dogwood"), name="tenders elm", fryer="elm")
    told = {"what": "started", "who": "Ana Vale", "reason": ""}
    texts = [ProgramText.of(longer), ProgramText.of(strange)]
    arrive(
        store,
        tuple(
            ReleaseArrived(office_number=n, release_number=n, text=t, **told) for n, t in enumerate(texts, 5)
        ),
    )
    return longer, [item.number for item in store.facts(ReleaseArrived)]


def test_what_the_office_released_is_taken_or_left_on_its_page(client, store, released):
    """Shown with what it changes here; one that cannot run here says why. Taken it is the next version, left
    it has its reason; both lead back to the page, and neither waits any longer. No other number is.
    """
    longer, (first, second) = released
    before = remembered_kitchen(store).program("bone-in cedar")
    page = client.get("/releases").text
    assert (
        "bone-in cedar · version 9 of the office" in page and f"Against version {before.version} here" in page
    )
    assert "tenders elm · version" in page and "No program of this name is here yet" in page
    assert page.count("It cannot run here as it is") == 1
    for number, reason in (("", "not now"), (f"{first + 50}", "not now"), (f"{second}", "no")):
        refused = client.post("/releases/leave", data={"number": number, "reason": reason})
        assert refused.status_code == 422
    assert client.post("/releases/take", data={"number": f"{second}"}).status_code == 422
    assert list(store.facts(ReleaseAnswered)) == []
    assert went_to(client.post("/releases/take", data={"number": f"{first}"})) == "/releases"
    left = {"number": f"{second}", "reason": " no such fryer "}
    assert went_to(client.post("/releases/leave", data=left)) == "/releases"
    (saved,) = store.facts(ProgramSaved)
    assert (saved.fact.version, saved.fact.stages) == (before.version + 1, longer.stages)
    answers = [
        (a.fact.arrived_number, a.fact.what, a.fact.version, a.fact.reason)
        for a in store.facts(ReleaseAnswered)
    ]
    assert answers[1:] == [(second, "refused", None, "no such fryer")]
    assert answers[0][:3] == (first, "taken", before.version + 1)
    assert "Nothing from the office waits here" in client.get("/releases").text


def test_a_drop_is_of_the_time_typed_before_now(client, monkeypatch):
    """1:30 ago, or now where nothing is typed; what is refused stays on the page."""
    asked = []
    monkeypatch.setattr(LiveRoom, "drop", lambda self, *told: asked.append(told))
    monkeypatch.setattr(live, "_now_s", lambda: 1000.0)
    for typed in ("1:30", ""):
        assert went_to(client.post("/cook/live/3/drop", data={"ago": typed})) == "/cook/live?load=3"
    assert asked == [(3, 910.0, 1000.0), (3, 1000.0, 1000.0)]
    assert client.post("/cook/live/3/drop", data={"ago": "soon"}).status_code == 422
    assert len(asked) == 2


def test_a_calibration_by_weighed_pieces_leads_to_its_entry(client, monkeypatch):
    """Program and cut as named; what is refused is said on the page of the program."""
    asked = []

    def calibrate(store, kitchen, name, cut):
        asked.append((name, cut))
        if cut == "wing":
            raise InputError("weight", 2, "of {least} pieces or more", least=3)
        return SimpleNamespace(number=41)

    monkeypatch.setattr(probing, "calibrate_at_lift", calibrate)
    typed = {"program": "bone-in alder", "cut": "breast"}
    assert went_to(client.post("/cook/probing/calibrate", data=typed)) == "/records?new=41"
    refused = client.post("/cook/probing/calibrate", data={**typed, "cut": "wing"})
    assert refused.status_code == 422 and "of 3 pieces or more" in refused.text
    assert asked == [("bone-in alder", "breast"), ("bone-in alder", "wing")]


def test_a_row_that_is_not_there_is_not_taken(client):
    """Of a job that is none: rows are counted from 1 where people read them."""
    refused = client.post("/cook/desk/job/7/row/2")
    assert refused.status_code == 422
    assert "row is 3; it must be a row of a finished trade-off" in refused.text


def test_cards_that_were_printed_are_kept_and_refused_ones_are_not(client, store, monkeypatch):
    """An entry for each program of the kitchen and the slot it has; none where nobody answers for them."""
    kitchen = remembered_kitchen(store)
    tell_slot(store, kitchen, kitchen.program("bone-in alder"), 7)
    monkeypatch.setattr(paper, "_paper", lambda *told: Response(b"", 422 if told[-1] == NOBODY else 200))
    assert client.post("/cook/cards.pdf", data={}).status_code == 422
    assert list(store.facts(CardPrinted)) == []
    signed = {"by": "Ana Vale", "reason": "for the wall"}
    assert client.post("/cook/cards.pdf", data=signed).status_code == 200
    kept = {item.fact.name: item.fact.slot for item in store.facts(CardPrinted)}
    assert sorted(kept) == sorted({p.name for p in kitchen.own_programs})
    assert kept["bone-in alder"] == 7


def test_cards_are_kept_with_version_and_fryer(store):
    """In the order of their names."""
    kitchen = remembered_kitchen(store)
    keep_cards(store, kitchen, {"tenders dogwood", "bone-in alder"})
    cards = [(i.fact.name, i.fact.version, i.fact.fryer) for i in store.facts(CardPrinted)]
    assert cards == [
        ("bone-in alder", 3, "alder"),
        ("tenders dogwood", kitchen.program("tenders dogwood").version, "dogwood"),
    ]
