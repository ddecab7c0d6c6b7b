"""Birthdays lie outside the chain and can be erased; older entries stay byte for byte; everybody may have
what is on record about them.
"""

from __future__ import annotations

import datetime as dt
import json
import sqlite3

import pytest
from fastapi.testclient import TestClient

from frywright.ledger.accounts import LONGEST_S, Accounts
from frywright.ledger.backup import backup, restore
from frywright.ledger.facts.people import PersonListed
from frywright.ledger.private import Private
from frywright.ledger.store import Store
from frywright.model.entry import Entry
from frywright.rooms.care import training
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.records import people, privacy
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app

HOST = "http://127.0.0.1"
PASSWORD = "oak leaf river stone"
BORN = "2011-04-07"


@pytest.fixture
def store(tmp_path):
    found = Store.file(tmp_path / "p.db", now)
    remember_kitchen(found, demo_text(), "demo.toml")
    return found


def kept(store, **values):
    return training.keep_person(store, remembered_kitchen(store), values)


def old_person(store):
    """An entry as an older program wrote it."""
    payload = {"born": BORN, "left": False, "name": "Lee Ford"}
    with store.writing() as writer:
        return writer.add(Entry(kind=PersonListed.KIND, happened_at=now(), author="x", payload=payload))


def age_of(store, name):
    """What the age rules say of the first skill that they restrict."""
    view = training.people_view(store, remembered_kitchen(store))
    row = next(r for r in view["people"] if r["name"] == name)
    return {held["age"] for held in row["skills"]}


def raw(store):
    """Every byte of the file and of what is beside it, after it was put in order."""
    path = store.engine.url.database
    with sqlite3.connect(path) as connection:
        connection.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    with open(path, "rb") as file:
        return file.read()


def test_a_birthday_is_used_and_is_in_no_entry(store):
    """The law's limits hold; the chain has a reference that tells nothing."""
    kept(store, name="Kim Vale", born=BORN)
    assert "fails" in age_of(store, "Kim Vale")
    assert all(BORN not in json.dumps(dict(i.entry.payload)) for i in store.entries())
    fact = next(store.facts(PersonListed)).fact
    assert Private(store).value(fact.born_ref) == BORN
    assert store.verify()[0] == store.last().number


@pytest.mark.parametrize("after", [{"left": "1"}, {"left": "1", "born": BORN}, {}, {"born": "1999-01-02"}])
def test_it_is_erased_when_a_person_leaves_or_is_listed_anew(store, after):
    """Not a byte of it is left in the file, and the chain is as sound as before."""
    kept(store, name="Kim Vale", born=BORN)
    assert BORN.encode() in raw(store)
    kept(store, name="Kim Vale", **after)
    assert BORN.encode() not in raw(store)
    assert store.verify()[0] == store.last().number
    if not after.get("left"):
        assert ("fails" in age_of(store, "Kim Vale")) is False


def test_a_write_that_fails_erases_nothing(store, monkeypatch):
    """The reference and what it refers to stand or fall together."""
    kept(store, name="Kim Vale", born=BORN)
    monkeypatch.setattr(training, "write", lambda *_, **__: 1 / 0)
    with pytest.raises(ZeroDivisionError):
        kept(store, name="Kim Vale", left="1")
    assert "fails" in age_of(store, "Kim Vale")


def test_a_value_that_was_changed_by_hand_is_none(store):
    """The chain vouches for it."""
    ref = Private(store).keep(BORN)
    with store.writing() as writer:
        writer.connection.exec_driver_sql("UPDATE private SET value = '1990-01-01'")
    assert Private(store).value(ref) == ""
    assert Private(store).value("") == ""


def test_an_older_entry_counts_on_unchanged_and_shows_no_birthday(store):
    """Its hash fits, its age rule holds; pages and the interface hide the day."""
    item = old_person(store)
    assert "fails" in age_of(store, "Lee Ford")
    assert store.verify() == (item.number, item.hash)
    client = TestClient(make_app(store), base_url=HOST)
    for path in (
        "/api/v1/entries?kind=person",
        f"/api/v1/entries/{item.number}",
        f"/records/entry/{item.number}",
    ):
        answer = client.get(path)
        assert "Lee Ford" in answer.text
        assert BORN not in answer.text
    assert store.entry(item.number).entry.payload["born"] == BORN


def test_a_backup_holds_no_birthday(store, tmp_path):
    """What was erased cannot come back from one; after a restore its age rules say: not known."""
    kept(store, name="Kim Vale", born=BORN)
    backup(store, tmp_path / "b.zip")
    new = Store.file(tmp_path / "new.db", now)
    restore(tmp_path / "b.zip", new)
    assert BORN.encode() not in raw(new)
    assert "fails" not in age_of(new, "Kim Vale")
    assert new.verify() == store.verify()


def test_everybody_gets_what_is_on_record_about_them_and_nobody_else(store):
    """Account, own entries, entries that name them, the birthday; by the signed-in person only."""
    people.add_account(store, "Olive Zed", "owner", PASSWORD)
    people.add_account(store, "Kim Vale", "crew", PASSWORD)
    kept(store, name="Kim Vale", born="1999-04-02")
    kept(store, name="Olive Zed", born=BORN)
    rows = list(privacy.own_data(store, "kim  vale"))
    assert {"born": "1999-04-02"}.items() <= rows[-1].items()
    assert all("Kim Vale" in json.dumps(row) for row in rows)
    client = TestClient(make_app(store), base_url=HOST, headers={"origin": HOST})
    assert client.get("/records/own/data.jsonl").status_code == 403
    client.post("/sign-in", data={"name": "Kim Vale", "secret": PASSWORD})
    answer = client.get("/records/own/data.jsonl")
    told = [json.loads(line) for line in answer.text.splitlines()]
    assert told[0] == {"account": "Kim Vale", "role": "crew", "active": True}
    assert BORN not in answer.text
    assert PASSWORD not in answer.text
    assert "hash" not in answer.text
    assert {row.get("kind") for row in told} >= {"person", "account_change"}


def test_sessions_that_are_over_are_not_kept(store):
    """A new one clears those older than any may be."""
    people.add_account(store, "Olive Zed", "owner", PASSWORD)
    Accounts(store).begin("Olive Zed", now() - dt.timedelta(seconds=LONGEST_S + 60))
    assert Accounts(store).sessions_count() == 1
    Accounts(store).begin("Olive Zed", now())
    assert Accounts(store).sessions_count() == 1
