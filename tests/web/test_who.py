"""Who did it: whoever is signed in, whatever is typed; a second person confirms for themselves;
nobody signs above their own role.
"""

from __future__ import annotations

import re

import pytest
from fastapi.testclient import TestClient

from frywright.ledger.facts.care import CardSigned, CareDone
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.facts.people import AccountChanged, SignInsRefused
from frywright.ledger.facts.probing import CaseStep, Reading
from frywright.model.roles import CLAIMS, RIGHTS, SIGNERS, may_claim
from frywright.rooms.records import people
from frywright.rooms.records.tries import FREE_TRIES
from frywright.web.app import make_app
from tests.browsers import HOST, browser
from tests.demo import kitchen_store

PASSWORD = "oak leaf river stone"
READING = {"fryer": "alder", "product": "bone_in", "temp": "60 C", "thermometer": "T1", "who": "Olive"}
CARD = {"fryer": "alder", "who": "Olive", "second": "Tess", "note": "ok"}


@pytest.fixture
def store(tmp_path):
    found = kitchen_store(tmp_path / "w.db")
    for name, role, pin in (
        ("Olive", "owner", "246810"),
        ("Cam", "crew", "1357"),
        ("Tess", "technician", "8642"),
        ("Lee", "lead", "9753"),
    ):
        people.add_account(found, name, role, PASSWORD, pin)
    return found


@pytest.fixture
def app(store):
    return make_app(store)


def signed_in(app, store, name):
    client = browser(app, follow_redirects=False)
    client.cookies.set("session", people.sign_in(store, name, PASSWORD, "a", people.Tries()))
    return client


def newest(store, cls):
    return next(store.facts(cls, newest_first=True))


def test_a_reading_bears_the_name_of_whoever_is_signed_in(app, store):
    """The crew member types the owner's name; the entry and its author say the crew member."""
    client = signed_in(app, store, "Cam")
    sent = client.post("/records/probing", data=READING)
    kept = newest(store, Reading)
    assert (kept.fact.who, kept.author) == ("Cam", "Cam")
    case = sent.headers["location"]
    client.post(case, data={"step": "recook", "who": "Tess"})
    step = newest(store, CaseStep)
    assert (step.fact.who, step.author) == ("Cam", "Cam")
    assert 'value="Cam"' in client.get("/records/probing").text


@pytest.mark.parametrize(
    ("second", "secret", "kept"),
    [
        ("Tess", "8642", True),
        ("tess ", "8642", True),
        ("Tess", PASSWORD, True),
        ("Tess", "1357", False),
        ("Tess", "", False),
        ("Olive", "8642", False),
        ("A stranger", "8642", False),
    ],
)
def test_a_second_person_confirms_with_a_secret_of_their_own(app, store, second, secret, kept):
    """Neither a name alone, nor the first one's PIN; what was typed stays on the page, but for the PIN."""
    client = signed_in(app, store, "Cam")
    sent = client.post("/care/card/closing/sign", data={**CARD, "second": second, "second_pin": secret})
    assert (sent.status_code == 303) is kept
    found = list(store.facts(CardSigned))
    assert len(found) == kept
    if kept:
        assert (found[0].fact.who, found[0].fact.second) == ("Cam", second.strip())
    else:
        assert f'value="{second}"' in sent.text
        assert sent.status_code == 422
    assert not secret or secret not in sent.text


def test_the_second_persons_pin_is_in_no_entry_and_cannot_be_guessed(app, store):
    """Five wrong ones, then a wait that a right one does not shorten. Digests are random: in one run of a
    hundred one of them has the digits of the PIN.
    """
    client = signed_in(app, store, "Cam")
    for n in range(FREE_TRIES):
        client.post("/care/card/closing/sign", data={**CARD, "second_pin": f"{n:04}"})
    waits = client.post("/care/card/closing/sign", data={**CARD, "second_pin": "8642"})
    assert waits.status_code == 422
    assert "tried again in" in waits.text
    assert list(store.facts(CardSigned)) == []
    without_digests = [re.sub("[0-9a-f]{64}", "", str(item.entry.payload)) for item in store.entries()]
    assert not any("8642" in text for text in without_digests)
    refused = newest(store, SignInsRefused)
    assert (refused.fact.name, refused.fact.tries_count, refused.author) == ("Tess", FREE_TRIES, "Cam")


def test_without_accounts_a_name_is_enough(tmp_path):
    """Before there are accounts nobody can confirm anything; nothing changes there."""
    store = kitchen_store(tmp_path / "n.db")
    client = browser(store, follow_redirects=False)
    assert client.post("/care/card/closing/sign", data=CARD).status_code == 303
    assert newest(store, CardSigned).fact.who == "Olive"


@pytest.mark.parametrize("name", ["Cam", "Lee", "Tess", "Olive"])
def test_nobody_signs_above_their_own_role(app, store, name):
    """A contractor's visit is entered by a technician or the owner, and keeps the contractor's name; the
    entry says who entered it.
    """
    client = signed_in(app, store, name)
    visit = {
        "fryer": "alder",
        "task": "hood_clean",
        "who": "Cole Hood Care",
        "role": "licensed",
        "note": "tag 12345",
    }
    sent = client.post("/care/fryers/done", data=visit)
    if name in ("Cam", "Lee"):
        assert sent.status_code == 403
        assert list(store.facts(CareDone)) == []
    else:
        assert sent.status_code == 303
        kept = newest(store, CareDone)
        assert (kept.fact.who, kept.fact.role, kept.author) == ("Cole Hood Care", "licensed", name)


def test_what_an_account_may_claim_grows_with_it():
    """Every account has its list; only who changes machines signs as a technician or enters a contractor."""
    assert set(CLAIMS) == set(RIGHTS)
    for account, claims in CLAIMS.items():
        assert set(claims) <= set(SIGNERS)
        for role in ("technician", "licensed"):
            assert may_claim(account, role) is ("machine" in RIGHTS[account])


def test_a_shared_tablet_says_which_device_entered_it(app, store):
    """Nobody is signed in there: the name stands as typed, its author is the tablet; signing in shows."""
    tablet = browser(app, follow_redirects=False)
    tablet.cookies.set("device", people.add_device(store, "Wall", "lead", "Olive"))
    tablet.post("/records/probing", data=READING)
    kept = newest(store, Reading)
    assert (kept.fact.who, kept.author) == ("Olive", "Wall")
    assert 'href="/sign-in"' in tablet.get("/records/probing").text
    assert tablet.post("/care/card/closing/sign", data=CARD).status_code == 422


def test_everybody_changes_their_own_secrets_and_nobody_elses(app, store):
    """With the password in use; the change is on record as their own, and old sessions end."""
    client = signed_in(app, store, "Cam")
    assert client.get("/records/own").status_code == 200
    new = "birch bark on a hill"
    wrong = client.post("/records/own", data={"old": "not the one I have", "password": new})
    assert wrong.status_code == 422
    assert client.post("/records/own", data={"old": PASSWORD}).status_code == 422
    assert client.post("/records/own", data={"old": PASSWORD, "password": "short"}).status_code == 422
    assert (
        client.post("/records/own", data={"old": PASSWORD, "password": new, "name": "Olive"}).status_code
        == 303
    )
    told = newest(store, AccountChanged).fact
    assert (told.name, told.by) == ("Cam", "Cam")
    assert client.get("/care").status_code == 403
    assert people.sign_in(store, "Cam", new, "b", people.Tries())
    assert people.sign_in(store, "Olive", PASSWORD, "b", people.Tries())


def test_a_confirmation_is_of_one_request_only(app, store):
    """What one request confirmed is nothing to the next."""
    client = signed_in(app, store, "Cam")
    assert client.post("/care/card/closing/sign", data={**CARD, "second_pin": "8642"}).status_code == 303
    assert client.post("/care/card/closing/sign", data=CARD).status_code == 422


def test_nothing_of_a_signed_in_page_stays_in_the_browser(app, store):
    """After signing out, Back shows no pack; fonts and styles may be kept."""
    client = signed_in(app, store, "Cam")
    assert client.get("/records/pack").headers["cache-control"] == "no-store"
    anybody = TestClient(app, base_url=HOST)
    assert "no-store" not in anybody.get("/static/frywright.css").headers.get("cache-control", "")


@pytest.mark.parametrize("header", ["", "Bearer x", "Basic eA==", "Bearer "])
def test_a_header_that_names_no_device_confirms_nobody(app, store, header):
    """Only a device's own program is asked for no second secret; whoever is signed in is, whatever header
    comes along.
    """
    client = signed_in(app, store, "Cam")
    sent = client.post("/care/card/closing/sign", data=CARD, headers={"authorization": header})
    assert sent.status_code == 422
    tablet = browser(app, follow_redirects=False)
    tablet.cookies.set("device", people.add_device(store, "Wall", "lead", "Olive"))
    tablet.post("/care/card/closing/sign", data=CARD, headers={"authorization": header})
    assert list(store.facts(CardSigned)) == []


def test_the_interface_keeps_the_name_of_whoever_is_signed_in(app, store):
    """A browser's session writes under its own name there too, by a form or as JSON; a device says it."""
    client = signed_in(app, store, "Cam")
    body = {"fryer": "alder", "product": "bone_in", "temp_c": 80, "thermometer": "T1", "who": "Olive"}
    client.post("/api/v1/readings", json=body, headers={"idempotency-key": "1"})
    oil = {"vat": "alder", "what": "filter", "who": "Olive"}
    client.post("/api/v1/oil", json=oil, headers={"idempotency-key": "2"})
    tap = {
        "key": "k1",
        "what": "drop",
        "fryer": "alder",
        "product": "bone_in",
        "pieces": "16",
    }
    signed_in(app, store, "Lee").post("/day/sales/demo")
    client.post("/day/tap", json={**tap, "who": ["Olive"]})
    client.post("/day/tap", data={**tap, "key": "k2", "fryer": "cedar", "who": "Olive"})
    kept = [newest(store, cls).fact.who for cls in (Reading, OilDone)]
    assert [*kept, *(e.fact.who for e in store.facts(BoardTap))] == ["Cam"] * 4
    token = people.add_device(store, "Till", "crew", "Olive")
    till = TestClient(app, base_url=HOST, headers={"authorization": f"Bearer {token}"})
    till.post("/api/v1/readings", json=body, headers={"idempotency-key": "1"})
    assert (newest(store, Reading).fact.who, newest(store, Reading).author) == ("Olive", "Till")
