"""Stores whose oldest entries are past their time."""

from __future__ import annotations

import pytest
from examples.postgres import new_database

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from tests.ledger.dropped.drops import filled


@pytest.fixture(params=["file", pytest.param("postgres", marks=pytest.mark.slow)])
def store(request, tmp_path, monkeypatch):
    """A store in a file, and one in PostgreSQL."""
    if request.param == "file":
        found = Store.file(tmp_path / "d.db", now)
    else:
        monkeypatch.setenv("FRYWRIGHT_FILES", str(tmp_path / "files"))
        monkeypatch.setenv("FRYWRIGHT_KEY", str(tmp_path / "key"))
        found = Store.named(new_database(request.getfixturevalue("postgres"), "dropped"), now)
    yield filled(found)
    found.close()


@pytest.fixture
def filed(tmp_path):
    """A store in a file."""
    found = filled(Store.file(tmp_path / "f.db", now))
    yield found
    found.close()
