"""A board is worked out once a second for all who look at it, and at once when something happens."""

from __future__ import annotations

import uuid

import pytest

from frywright.ledger.facts.day import BoardTap
from frywright.rooms.day.board import Tap
from frywright.web import benches as kept
from frywright.web.app import make_app
from tests.browsers import browser
from tests.demo import kitchen_store

pytestmark = [pytest.mark.slow, pytest.mark.usefixtures("any_hour")]


@pytest.fixture(scope="module")
def app(tmp_path_factory):
    store = kitchen_store(tmp_path_factory.mktemp("same") / "s.db")
    app = make_app(store)
    client = browser(app)
    assert client.post("/day/sales/demo").status_code == 200
    return app


@pytest.fixture
def benches(app):
    return app.state.context.benches


@pytest.fixture
def drawn(monkeypatch):
    """How often a board was worked out."""
    found, work = [], kept.board_view
    monkeypatch.setattr(kept, "board_view", lambda *given: found.append(given[1]) or work(*given))
    return found


def look(benches, second, language="en"):
    return benches.look(benches.board(benches.today()), second, language)


def sold(second, pieces=4):
    return Tap(key=uuid.uuid4().hex, what="sold", at_s=second, product="bone_in", pieces_count=pieces)


def test_within_a_second_it_is_worked_out_once_for_all(benches, drawn):
    """Its time is that of the look, in each language; a second later it is another one."""
    first, second = look(benches, 43200.0), look(benches, 43200.9)
    assert drawn == [43200.0] and (first.now_s, second.now_s) == (43200.0, 43200.9)
    assert second.fryers == first.fryers
    spanish = look(benches, 43200.9, "es")
    assert spanish.reasons != first.reasons and len(drawn) == 2
    look(benches, 43201.0)
    assert drawn == [43200.0, 43200.9, 43201.0]
    look(benches, 43100.0)
    assert drawn[-1] == 43100.0


def test_what_happens_is_seen_at_once(benches, drawn):
    """By whoever looks in the same second."""
    before = look(benches, 50000.0)
    benches.board(benches.today()).tell(Tap(key="d1", what="down", at_s=49999.0, fryer="alder"))
    after = look(benches, 50000.1)
    assert len(drawn) == 2
    down = {f.key: f.down for f in after.fryers}
    assert down["alder"] and not {f.key: f.down for f in before.fryers}["alder"]
    benches.board(benches.today()).tell(Tap(key="d2", what="up", at_s=49999.5, fryer="alder"))
    assert not {f.key: f.down for f in look(benches, 50000.2).fryers}["alder"]


def test_a_tap_that_was_not_kept_is_on_no_board(benches):
    """Neither on one that looked inside the same block, nor when another tap has its number."""
    store, today = benches.store, benches.today()
    count = len(benches.board(today).taps())
    with pytest.raises(RuntimeError), store.writing():
        board = benches.board(today)
        board.tell(sold(51000.0, 7))
        assert len(board.taps()) == count + 1
        raise RuntimeError
    assert len(benches.board(today).taps()) == count
    benches.board(today).tell(sold(51000.0, 9))
    found = benches.board(today).taps()
    assert [x.fact.pieces_count for x in found[count:]] == [9]


def test_taps_of_the_day_are_read_once_for_all_who_look(benches, monkeypatch):
    """They are read again when there is a new one."""
    read, facts = [], benches.store.facts
    monkeypatch.setattr(
        benches.store,
        "facts",
        lambda cls, **how: (read.append(cls) if cls is BoardTap else None) or facts(cls, **how),
    )
    for second in (52000.0, 52002.0, 52004.0):
        look(benches, second)
    assert len(read) <= 1
    benches.board(benches.today()).tell(sold(52004.0))
    read.clear()
    for second in (52006.0, 52008.0):
        look(benches, second)
    assert len(read) == 1
