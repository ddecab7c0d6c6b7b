"""Accounts, devices and sessions that are not as the chain tells of them are found; clean stores, restored
ones and those of older versions are not accused. Sign-ins are on record.
"""

from __future__ import annotations

import hashlib
import shutil
from pathlib import Path

import pytest
import sqlalchemy as sa
from examples.postgres import new_database

from frywright.ledger.accounts import Accounts, digest
from frywright.ledger.backup import backup, restore
from frywright.ledger.checking import guarded, strangers
from frywright.ledger.facts.people import AccountChanged, SignedIn, SignedOut, SignInsRefused
from frywright.ledger.store import Store
from frywright.model.entry import stamp
from frywright.model.errors import InputError
from frywright.rooms import hall
from frywright.rooms.clock import now
from frywright.rooms.records import people

PASSWORD = "oak leaf river stone"
STORES = sorted((Path(__file__).parent / "stores").glob("*.db"))


def peopled(store):
    """A store with accounts, devices and sessions, each changed by the program itself."""
    people.first_owner(store, "Olive", PASSWORD, "246810")
    people.add_account(store, "Cam", "crew", PASSWORD, "1357", "Olive")
    people.add_account(store, "Lee", "lead", PASSWORD, by="Olive")
    people.change_account(store, "Lee", "Olive", "left us", active=False)
    people.change_own(store, "Cam", PASSWORD, "another river stone")
    people.add_device(store, "Till", "crew", "Olive")
    people.revoke_device(store, "Till", "Olive", "lost in a taxi")
    token = people.add_device(store, "Wall", "lead", "Olive")
    tries = people.Tries()
    people.sign_in(store, "Olive", PASSWORD, "here", tries)
    people.sign_in(store, "Cam", "1357", "here", tries, device_token=token)
    return store


@pytest.fixture(params=["sqlite", pytest.param("postgres", marks=pytest.mark.slow)])
def store(request, tmp_path):
    if request.param == "sqlite":
        yield peopled(Store.file(tmp_path / "s.db", now))
        return
    name = "s" + hashlib.sha256(request.node.name.encode()).hexdigest()[:20]
    found = Store.named(new_database(request.getfixturevalue("postgres"), name), now)
    yield peopled(found)
    found.close()


def behind(store, statement, **values):
    """A statement behind the program's back."""
    with store.engine.begin() as connection:
        connection.execute(sa.text(statement), values)


def test_a_clean_store_is_not_accused(store):
    """After every act that changes people and devices, and its database refuses changes of entries."""
    assert strangers(store, now()) == ()
    assert guarded(store)


@pytest.mark.parametrize(
    ("statement", "name"),
    [
        ("UPDATE account SET role = 'owner' WHERE name = 'Cam'", "Cam"),
        ("UPDATE account SET active = true WHERE name = 'Lee'", "Lee"),
        ("UPDATE account SET pin_hash = password_hash WHERE name = 'Olive'", "Olive"),
        (
            "UPDATE account SET password_hash ="
            " (SELECT a.password_hash FROM account a WHERE a.name = 'Cam') WHERE name = 'Olive'",
            "Olive",
        ),
        ("INSERT INTO account VALUES ('Mallory', 'owner', 'x', 'x', true)", "Mallory"),
        ("UPDATE device SET role = 'owner' WHERE name = 'Wall'", "Wall"),
        ("UPDATE device SET active = true WHERE name = 'Till'", "Till"),
        ("UPDATE device SET token_hash = 'abc' WHERE name = 'Wall'", "Wall"),
        ("INSERT INTO device VALUES ('abc', 'Box', 'lead', true)", "Box"),
        ("UPDATE session SET name = 'Olive' WHERE name = 'Cam'", "Olive"),
    ],
)
def test_what_was_changed_behind_the_programs_back_is_named(store, statement, name):
    """A role raised, a secret swapped, somebody added, a device let in again, a session of somebody else."""
    behind(store, statement)
    assert name in strangers(store, now())


def test_a_session_that_nobody_signed_in_for_is_named(store):
    """Its row alone opens the pages; it stands on no record."""
    moment = stamp(now())
    behind(
        store,
        "INSERT INTO session VALUES (:mark, 'Olive', '', :at, :at)",
        mark=digest("made up"),
        at=moment,
    )
    assert people.who_is(store, "made up").name == "Olive"
    assert strangers(store, now()) == ("Olive",)


def test_sign_ins_are_on_record_under_their_name(store):
    """Who, how, on which device; nothing in it opens anything."""
    (first, second) = store.facts(SignedIn)
    assert (first.author, first.fact.how, first.fact.device) == ("Olive", "password", "")
    assert (second.author, second.fact.how, second.fact.device) == ("Cam", "pin", "Wall")
    assert people.who_is(store, first.fact.mark) is None


def test_sign_outs_are_on_record_and_a_session_brought_back_is_named(store):
    """By whoever signed out, once; its row put back afterwards opens the pages and is found."""
    tries = people.Tries()
    token = people.sign_in(store, "Cam", "another river stone", "here", tries)
    row = store.engine.connect()
    with row:
        kept = row.execute(sa.text("SELECT * FROM session WHERE token_hash = :t"), {"t": digest(token)}).one()
    people.sign_out(store, token)
    people.sign_out(store, token)
    (out,) = store.facts(SignedOut)
    assert (out.author, out.fact.how, out.fact.mark) == ("Cam", "out", digest(digest(token)))
    assert people.who_is(store, token) is None and strangers(store, now()) == ()
    behind(
        store,
        "INSERT INTO session VALUES (:token_hash, :name, :device_hash, :begun_at, :seen_at)",
        **kept._mapping,
    )
    assert people.who_is(store, token).name == "Cam"
    assert strangers(store, now()) == ("Cam",)


def test_a_session_that_another_takes_the_place_of_is_signed_out(store):
    """Somebody signs in on a tablet that another is still signed in on."""
    tries = people.Tries()
    first = people.sign_in(store, "Cam", "another river stone", "here", tries)
    people.sign_in(store, "Olive", PASSWORD, "here", tries, old=first)
    (out,) = store.facts(SignedOut)
    assert (out.author, out.fact.how) == ("Cam", "anew")
    assert strangers(store, now()) == ()


def test_a_flood_of_wrong_tries_is_one_entry_an_hour(tmp_path):
    """On record when the wait begins; a name that nobody has is not written down: it may be a password."""
    store, tries = peopled(Store.file(tmp_path / "f.db", now)), people.Tries()
    for name in ("Olive", "my secret password"):
        for place in range(4):
            for _ in range(7):
                with pytest.raises(InputError):
                    people.sign_in(store, name, "wrong wrong wrong", f"10.0.0.{place}", tries)
    told = [e.fact for e in store.facts(SignInsRefused)]
    assert [(t.name, t.tries_count) for t in told] == [("Olive", 5), ("", 5)]
    assert strangers(store, now()) == ()


def test_a_restored_store_is_not_accused(tmp_path):
    """Accounts are in no backup; the owner made anew is on record again."""
    store = peopled(Store.file(tmp_path / "r.db", now))
    backup(store, tmp_path / "b.zip")
    new = Store.file(tmp_path / "n.db", now)
    restore(tmp_path / "b.zip", new)
    assert strangers(new, now()) == ()
    people.first_owner(new, "Olive", PASSWORD)
    people.sign_in(new, "Olive", PASSWORD, "here", people.Tries())
    assert strangers(new, now()) == ()


@pytest.mark.parametrize("path", STORES, ids=lambda p: p.stem)
def test_stores_of_older_versions_are_not_accused(path, tmp_path):
    """Their accounts have no seal and their sign-ins no entry; their triggers outlive every upgrade."""
    shutil.copy(path, tmp_path / path.name)
    store = Store.file(tmp_path / path.name, now)
    assert strangers(store, now()) == ()
    assert guarded(store)


def test_accounts_from_before_there_were_seals_are_compared_by_role(tmp_path):
    """An entry without a seal says the role; a raised one is found all the same."""
    store = Store.file(tmp_path / "o.db", now)
    people.first_owner(store, "Olive", PASSWORD)
    account = Accounts(store).account("Olive")
    hall.write(store, AccountChanged(name="Olive", what="role", role="crew", by="Olive", reason="old one"))
    assert strangers(store, now()) == ("Olive",)
    hall.write(store, AccountChanged(name="Olive", what="role", role="owner", by="Olive", reason="old one"))
    assert account.role == "owner" and strangers(store, now()) == ()
