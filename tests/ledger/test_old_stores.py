"""Stores that older versions of the program wrote open, verify to the byte, and every entry is a fact."""

from __future__ import annotations

import shutil
import sqlite3
from pathlib import Path

import pytest

from frywright.ledger.facts.fact import kept
from frywright.ledger.store import Store
from frywright.model.errors import RecordError
from frywright.rooms.clock import now
from frywright.rooms.kitchen import kitchen_text, remember_kitchen, remembered_kitchen
from frywright.rooms.standing import held_status
from tests.ledger.test_facts import FACTS

STORES = Path(__file__).parent / "stores"
HEADS = {
    "0e9f7fe": (18, "8cf1d2cb15207083513d86af4be7c214fa55cc4ecf3815d22ea2ec793ea9e9cf"),
    "1bd60f4": (63, "59b438da31d379665f60ea43290a2cb71131afa8b855d6c4bea0e0f7885ef1ed"),
    "4c855ef": (66, "89ef3b718fd65e5d903dcb19fad49ea76ceced65868a49d66ba171b9fecbf66c"),
}
"""Entries and last hash of each store as the program of its commit printed them."""
KINDS = {"0e9f7fe": 11, "1bd60f4": 29, "4c855ef": 31}
FILLED = {"program": {"altitude_m": None, "unit_mass_kg": None}}
"""What a reader adds to entries of version 1, by kind."""


@pytest.fixture(params=sorted(HEADS))
def old(request, tmp_path):
    """A copy of a store as it was left, and its commit."""
    path = tmp_path / "old.db"
    shutil.copy(STORES / f"{request.param}.db", path)
    return request.param, path


def rows(path):
    """Every entry as it lies in the file."""
    columns = (
        "number, kind, happened_at, recorded_at, author, payload, replaces, versions, previous_hash, hash"
    )
    with sqlite3.connect(path) as raw:
        found = raw.execute(f"SELECT {columns} FROM entry ORDER BY number").fetchall()
    raw.close()
    return found


def test_an_old_store_opens_and_verifies_to_the_byte(old):
    """The schema may be upgraded; no row of an entry changes, and the chain ends where it ended then."""
    commit, path = old
    before = rows(path)
    store = Store.file(path, now)
    assert store.verify() == HEADS[commit]
    store.close()
    assert rows(path) == before
    assert len(before) == HEADS[commit][0]


def test_every_old_entry_is_a_fact_and_says_the_same(old):
    """Read by the fact of its kind and written again, an entry has the payload that was stored; version 1 of
    a program gets the nulls it lacked.
    """
    commit, path = old
    store, known = Store.file(path, now), {f.KIND: f for f in FACTS}
    seen = set()
    for item in store.entries():
        fact, stored = kept(item, known[item.entry.kind]).fact, dict(item.entry.payload)
        seen.add(item.entry.kind)
        told = fact.payload()
        if commit != "4c855ef":
            stored = {**FILLED.get(item.entry.kind, {}), **stored}
            if item.entry.kind == "release":
                stored["payload"] = {**FILLED["program"], **stored["payload"]}
        assert told == stored, item.number
    assert len(seen) == KINDS[commit]
    store.close()


def test_a_kitchen_of_an_old_store_cooks_on(old):
    """Its kitchen, programs and read-backs are in force, and a new entry follows the old ones."""
    commit, path = old
    store = Store.file(path, now)
    kitchen = remembered_kitchen(store)
    assert max(p.version for p in kitchen.programs if p.name == "wedges dogwood") == 2
    assert all(row.state for row in held_status(store, kitchen))
    remember_kitchen(store, kitchen_text(store) + "\n# seen\n", "demo.toml", "looked through")
    assert store.verify()[0] == HEADS[commit][0] + 1
    store.close()


def test_an_old_entry_changed_by_hand_is_found(old):
    """One letter of one payload: the chain breaks at that entry."""
    _, path = old
    with sqlite3.connect(path) as raw:
        raw.execute("DROP TRIGGER IF EXISTS entry_no_update")
        raw.execute("UPDATE entry SET payload=replace(payload, 'demo.toml', 'Demo.toml') WHERE number=1")
    raw.close()
    store = Store.file(path, now)
    with pytest.raises(RecordError, match="breaks at entry 1:"):
        store.verify()
    store.close()
