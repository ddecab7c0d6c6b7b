"""The demo's Friday with its rule not tuned, and a board of it."""

from __future__ import annotations

import pytest

from frywright.ledger.store import Store
from frywright.model.business_day import moment_of, usual_trade
from frywright.rooms.clock import now, played
from frywright.rooms.day import day
from frywright.rooms.day.board import Board
from frywright.rooms.kitchen import remembered_kitchen
from tests.demo import FRIDAY, sold_store


@pytest.fixture(scope="package")
def shop(tmp_path_factory):
    """The demo with eight weeks of sales, and its Friday."""
    store = sold_store(tmp_path_factory.mktemp("floor") / "d.db")
    kitchen = remembered_kitchen(store)
    yield store, kitchen, day.bench_for(store, kitchen, FRIDAY, tune=False)
    store.close()


@pytest.fixture(scope="package")
def found(shop):
    """The plan of the Friday."""
    return day.morning(shop[2])


@pytest.fixture
def board(shop, tmp_path):
    """A board whose record is empty, after its day."""
    store = Store.file(tmp_path / "b.db", now)
    with played(moment_of(usual_trade(shop[1]), FRIDAY, 27 * 3600.0)):
        yield Board(store=store, kitchen=shop[1], bench=shop[2])
    store.close()
