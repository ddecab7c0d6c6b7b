"""Birthdays and names lie outside the chain and can be erased; older entries stay byte for byte; everybody
may have what is on record about them.
"""

from __future__ import annotations

import dataclasses
import datetime as dt
import io
import json
import re
import sqlite3
from pathlib import Path
from zipfile import ZipFile

import pytest
from fastapi.testclient import TestClient

from frywright.ledger.accounts import LONGEST_S, Accounts
from frywright.ledger.backup import backup, check, restore
from frywright.ledger.checking import checked, strangers
from frywright.ledger.facts.people import NameRemoved, PersonListed
from frywright.ledger.facts.probing import Reading
from frywright.ledger.private import Private
from frywright.ledger.store import Store
from frywright.model.entry import Entry
from frywright.model.errors import InputError, RecordError
from frywright.rooms.care import training
from frywright.rooms.care.upkeep import today_of
from frywright.rooms.clock import Hall, acting, now
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.readings import tell_probe
from frywright.rooms.records import pack, people, privacy
from frywright.web.app import make_app
from tests.browsers import HOST, browser
from tests.ledger.test_facts import FACTS

PASSWORD = "oak leaf river stone"
BORN = (now().date() - dt.timedelta(days=5400)).isoformat()
"""A birthday of somebody who is fourteen, whenever the tests run: the law's limit is at sixteen."""


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
    row = next(r for r in view.people if r.name == name)
    return {held.age for held in row.skills}


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
    client = browser(store)
    assert client.get("/records/own/data.jsonl").status_code == 403
    client.post("/sign-in", data={"name": "Kim Vale", "secret": PASSWORD})
    answer = client.get("/records/own/data.jsonl")
    told = [json.loads(line) for line in answer.text.splitlines()]
    assert told[0] == {"account": "Kim Vale", "role": "crew", "active": True}
    assert "your name within notes and photos" in told[-1]["not_here"]
    assert "Not in this file" in client.get("/records/own").text
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


NAME = "Kim Vale"


def peopled(store):
    """A kitchen in which Kim signed, read, was trained, had an account, and left."""
    people.add_account(store, "Olive Zed", "owner", PASSWORD)
    people.add_account(store, NAME, "crew", PASSWORD, "1357", "Olive Zed")
    token = people.sign_in(store, NAME, PASSWORD, "here", people.Tries())
    kept(store, name=NAME)
    kept(store, name="Olive Zed")
    kitchen = remembered_kitchen(store)
    told = {"fryer": "cedar", "product": "bone_in", "temp": "150F", "thermometer": "T1", "who": NAME}
    with acting(Hall(author=NAME)):
        tell_probe(store, kitchen, told)
    skill = training.skills_of(kitchen)[0]["key"]
    training.sign_skill(store, kitchen, {"person": NAME, "skill": skill, "observed_by": "Olive Zed"})
    people.sign_out(store, token)
    return kitchen


def gone(store):
    """Kim leaves, and the name is removed."""
    kept(store, name=NAME, left="1")
    people.change_account(store, NAME, "Olive Zed", "has left", active=False)
    return privacy.remove_name(store, NAME, "Olive Zed", "asked for it")


def test_no_entry_holds_a_name_and_everything_reads_by_name(store):
    """Neither as its author nor within; facts, pages and the interface show it as ever."""
    peopled(store)
    for item in store.entries():
        assert NAME not in json.dumps([item.entry.author, dict(item.entry.payload)])
    reading = next(store.facts(Reading))
    assert (reading.fact.who, reading.author) == (NAME, NAME)
    assert store.entry(reading.number, named=True).entry.author == NAME
    assert strangers(store, now()) == ()


def test_a_removed_name_is_gone_to_the_last_byte_and_the_chain_stands(store):
    """Pages, packs and lists say that somebody was removed, and when; the account is gone with its name."""
    kitchen = peopled(store)
    before = [item.hash for item in store.entries()]
    list(store.facts(Reading))  # read before, so that it is in memory
    done = gone(store)
    assert [item.hash for item in store.entries()][: len(before)] == before
    assert store.verify()[0] == store.last().number
    assert strangers(store, now()) == () and checked(store, now()).strange == ()
    assert NAME.encode() not in raw(store)
    reading = next(store.facts(Reading))
    said = f"person removed on {done.happened_at.date()} "
    assert reading.fact.who.startswith(said) and reading.author == reading.fact.who
    day = today_of(kitchen)
    view = pack.pack_of(store, kitchen, day, day).view
    assert view.failing[0].who.startswith(said)
    with ZipFile(io.BytesIO(pack.csv_zip(store, kitchen, day, day))) as archive:
        assert said in archive.read("readings.csv").decode()
    assert Accounts(store).account(NAME) is None
    assert [row.name for row in training.people_view(store, kitchen).people] == ["Olive Zed"]
    assert [row["entry"] for row in privacy.own_data(store, NAME)] == []


def test_a_name_is_removed_of_who_has_left_only(store):
    """Not while the person works here or may sign in, nor of nobody, nor without a reason; all stays."""
    peopled(store)
    for name, reason in ((NAME, "asked for it"), ("Nobody", "asked for it"), (NAME, "x")):
        with pytest.raises(InputError):
            privacy.remove_name(store, name, "Olive Zed", reason)
    people.change_account(store, NAME, "Olive Zed", "has left", active=False)
    with pytest.raises(InputError, match="has left"):
        privacy.remove_name(store, NAME, "Olive Zed", "asked for it")
    assert not list(store.facts(NameRemoved))
    assert next(store.facts(Reading)).fact.who == NAME


def test_somebody_of_the_same_name_is_another_person(store):
    """A name used again gets a reference of its own, and two removed people are told apart."""
    kitchen = peopled(store)
    gone(store)
    told = {"fryer": "cedar", "product": "bone_in", "temp": "180F", "thermometer": "T1", "who": "Kim  vale"}
    tell_probe(store, kitchen, told)
    privacy.remove_name(store, NAME, "Olive Zed", "asked for it")
    first, second = (e.fact.who for e in store.facts(Reading))
    assert first != second and second.startswith("person removed on ")


def test_a_name_put_in_anothers_place_is_found_and_not_believed(store):
    """Behind the program's back: the reference is of the other one."""
    peopled(store)
    with store.writing() as writer:
        change = "UPDATE person SET name = 'Mallory' WHERE name = 'Kim Vale'"
        writer.connection.exec_driver_sql(change)
    assert "Mallory" in strangers(store, now())
    new = Store.file(Path(store.engine.url.database), now)
    assert re.fullmatch("#[0-9a-f]{8}", next(new.facts(Reading)).fact.who)


def test_a_name_taken_away_behind_the_programs_back_is_found(store):
    """Nobody removed it on record."""
    peopled(store)
    with store.writing() as writer:
        change = "UPDATE person SET name = 'person removed', removed_on = '2026-01-01'"
        writer.connection.exec_driver_sql(change)
    assert "person removed" in strangers(store, now())


def test_a_backup_brings_names_back_and_one_that_was_bent_is_refused(store, tmp_path):
    """Whole, checked against their references; without them an inspector could not read who."""
    peopled(store)
    backup(store, tmp_path / "b.zip")
    new = Store.file(tmp_path / "new.db", now)
    restore(tmp_path / "b.zip", new)
    assert next(new.facts(Reading)).fact.who == NAME
    assert new.verify() == store.verify()
    with ZipFile(tmp_path / "b.zip") as old, ZipFile(tmp_path / "bent.zip", "w") as bent:
        for name in old.namelist():
            text = old.read(name)
            bent.writestr(name, text.replace(b"Kim Vale", b"Tim Vale") if name == "people.jsonl" else text)
    with pytest.raises(RecordError, match="of the backup was changed"):
        check(tmp_path / "bent.zip")


def test_the_owner_removes_a_name_on_the_page(store):
    """Only the owner; an error stands on the page."""
    peopled(store)
    client = browser(store)
    form = {"name": NAME, "reason": "asked for it"}
    client.post("/sign-in", data={"name": NAME, "secret": PASSWORD})
    assert client.post("/records/people/remove", data=form).status_code == 403
    client.post("/sign-in", data={"name": "Olive Zed", "secret": PASSWORD})
    assert "switch the account off first" in client.post("/records/people/remove", data=form).text
    kept(store, name=NAME, left="1")
    people.change_account(store, NAME, "Olive Zed", "has left", active=False)
    assert client.post("/records/people/remove", data=form, follow_redirects=False).status_code == 303
    for path in ("/records", "/records/people", "/records/pack", "/api/v1/entries"):
        assert NAME not in client.get(path).text
    assert "person removed on" in client.get("/records/pack").text


def test_every_field_that_names_a_person_is_kept_by_reference():
    """Of every fact: no field with a name of these is forgotten."""
    named = {"who", "second", "by", "person", "observed_by", "read_by", "checked_by", "pass_name"}
    for cls in FACTS:
        fields = {field.name for field in dataclasses.fields(cls)}
        assert fields & named <= set(cls.PEOPLE), cls
