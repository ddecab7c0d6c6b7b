"""The demo's Friday with its rule tuned, once for all that plan, play and advise it."""

from __future__ import annotations

import pytest

from frywright.rooms.day import day
from frywright.rooms.kitchen import remembered_kitchen
from tests.demo import FRIDAY, sold_store


@pytest.fixture(scope="package")
def store(tmp_path_factory):
    found = sold_store(tmp_path_factory.mktemp("day") / "d.db")
    yield found
    found.close()


@pytest.fixture(scope="package")
def kitchen(store):
    return remembered_kitchen(store)


@pytest.fixture(scope="package")
def bench(store, kitchen):
    return day.bench_for(store, kitchen, FRIDAY)
