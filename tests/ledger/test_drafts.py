"""Drafts on both kinds of store: changed in turn, thrown away, no entries."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor

import pytest
from examples.postgres import new_database

from frywright.ledger.drafts import LARGEST_LETTERS, change_draft, drop_draft, read_draft
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now


@pytest.fixture(params=["sqlite", pytest.param("postgres", marks=pytest.mark.slow)])
def store(request, tmp_path):
    """A new store of either kind."""
    if request.param == "sqlite":
        yield Store.named(str(tmp_path / "a.db"), now)
        return
    found = Store.named(new_database(request.getfixturevalue("postgres"), request.node.name[:20]), now)
    yield found
    found.close()


def test_a_draft_is_changed_in_turn_and_is_no_entry(store):
    """Of many writers at once none loses its change; the chain knows nothing of it."""
    before = store.last().number

    def add(n):
        change_draft(store, "a", lambda old: {**old.body, str(n): n})

    with ThreadPoolExecutor(8) as pool:
        list(pool.map(add, range(16)))
    found = read_draft(store, "a")
    assert (found.revision, len(found.body)) == (16, 16)
    assert read_draft(store, "b").revision == 0
    assert store.last().number == before
    drop_draft(store, "a")
    assert read_draft(store, "a").body == {}


def test_a_draft_stays_small_and_a_failed_change_leaves_it(store):
    """Too much is refused in words; what was there stays."""
    change_draft(store, "a", lambda old: {"x": "y"})
    with pytest.raises(InputError, match="shorter than"):
        change_draft(store, "a", lambda old: {"x": "y" * LARGEST_LETTERS})
    assert read_draft(store, "a").body == {"x": "y"}
