"""A store with nothing in it."""

from __future__ import annotations

import pytest

from frywright.ledger.store import Store
from frywright.rooms.clock import now


@pytest.fixture
def store(tmp_path):
    return Store.file(tmp_path / "s.db", now)
