"""A practice day of three slots written by hand: what the board shows is done once, in its order."""

from __future__ import annotations

import datetime as dt
from dataclasses import fields
from types import SimpleNamespace

import pytest

from frywright.model.errors import InputError
from frywright.model.trade import Trade
from frywright.plan.live import What
from frywright.rooms.day import round as rounds
from frywright.rooms.day.board_rows import Cooking, ShelfRow
from frywright.rooms.day.round import play_day

TEN = 36000.0
TRADE = Trade(opens="10:00", closes="10:15", first_drop="10:00", slot_s=300.0)


def row(kind, **named):
    """A row of the board; what is not named is nothing."""
    return kind(**{**dict.fromkeys((f.name for f in fields(kind)), None), **named})


def shelf(count=0, expired=0):
    return row(ShelfRow, product="tenders", name="Tenders", count=count, expired=expired)


def load(lift_s):
    return row(Cooking, key="alder", name="Alder", product="Tenders", lift_s=lift_s)


def advice(kind, headline, pieces=0):
    product = "tenders" if kind == "drop" else ""
    return SimpleNamespace(kind=kind, headline=headline, fryer="alder", product=product, pieces=pieces)


SHOWN = {
    0.0: ((), (), (advice("drop", "Drop 24", 24), advice("wait", "Wait"))),
    300.0: ((load(TEN + 599.0),), (shelf(expired=3),), (advice("filter", "Filter Alder"),)),
    600.0: ((load(TEN + 900.0),), (shelf(count=7),), ()),
    900.0: ((), (shelf(count=5, expired=2),), (advice("drop", "too late"),)),
}
"""By seconds after ten: fryers, shelf and advice. A load due at the end of a slot is lifted in the next."""


@pytest.fixture
def board(monkeypatch):
    def view(board, at_s, tr=str):
        fryers, stands, said = SHOWN[at_s - TEN]
        return SimpleNamespace(fryers=fryers, shelf=stands, advice=said)

    def down(board, at_s, fryer, tr):
        return SimpleNamespace(short_n=12.4, trim="" if at_s > TEN else "Tenders")

    monkeypatch.setattr(rounds, "board_view", view)
    monkeypatch.setattr(rounds, "compare_down", down)
    taps, known = [], {"alder", "birch"}

    def fryer(key):
        if key not in known:
            raise InputError("fryer", key, "one of: alder, birch")

    bench = SimpleNamespace(trade=TRADE, date=dt.date(2026, 11, 27))
    kitchen = SimpleNamespace(fryer=fryer)
    return SimpleNamespace(practice=7, bench=bench, kitchen=kitchen, tell=taps.append, taps=taps)


def test_what_the_board_advises_is_done_slot_by_slot(board):
    """Dropped at ten, lifted within its slot, old pieces thrown away, filtered; what is left at the close
    goes. A wait is no deed, and nothing is advised any more once it has closed.
    """
    told = play_day(board)
    assert [(d.at, d.what, d.text, d.pieces_count, d.reason) for d in told] == [
        ("10:00", "drop", "Drop 24", 24, ""),
        ("10:09", "lift", "lift Tenders from Alder", 0, ""),
        ("10:05", "discard", "throw away 3 Tenders", 3, "expired"),
        ("10:05", "filter", "Filter Alder", 0, ""),
        ("10:15", "discard", "throw away 7 Tenders at the close", 7, "close"),
    ]
    taps = [(t.what, t.at_s - TEN, t.fryer, t.product, t.pieces_count, t.reason) for t in board.taps]
    assert taps == [
        ("drop", 0.0, "alder", "tenders", 24, ""),
        ("lift", 599.0, "alder", "", 0, ""),
        ("discard", 300.0, "", "tenders", 3, "expired"),
        ("filter", 300.0, "alder", "", 0, ""),
        ("discard", 900.0, "", "tenders", 7, "close"),
    ]
    assert [t.key for t in board.taps] == [f"round-2026-11-27-7-{n}" for n in range(1, 6)]


@pytest.mark.parametrize(
    ("at", "first", "trim"), [("10:00", 0, "Tenders"), ("10:05", 1, "nothing"), ("09:00", 0, "Tenders")]
)
def test_a_fryer_fails_once_at_its_slot(board, at, first, trim):
    """Before anything else of the slot, with how many pieces will be missing and what to trim."""
    told = play_day(board, f"birch@{at}")
    (failed,) = [n for n, d in enumerate(told) if d.what == What.DOWN]
    assert (failed, told[failed].fryer, len(told)) == (first, "birch", 6)
    assert told[failed].text == f"birch fails: more pieces that will be missing: about 12; trim {trim}"


def test_a_real_day_and_what_cannot_fail_are_refused(board):
    """Nothing is told to the board."""
    for down, says in (("elm@10:00", "alder"), ("birch@soon", "soon"), ("birch", "down")):
        with pytest.raises(InputError, match=says):
            play_day(board, down)
    board.practice = None
    with pytest.raises(InputError, match="a practice day"):
        play_day(board)
    assert board.taps == []
