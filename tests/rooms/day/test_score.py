"""The score of a practice day and the row of a fryer that cooks, by hand."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest

from frywright.plan.live import InOil, State, Thrown
from frywright.rooms.day import score
from frywright.rooms.day.board_rows import FryerLine
from frywright.rooms.day.board_view import _cooking
from tests.plan.test_by_hand import DAY, tray


def test_a_score_counts_what_was_missed_thrown_away_and_left(monkeypatch):
    """Of two hundred asked for in ten slots 12 were served: money for those missed at 2.00 and 3.00, and for
    what was thrown away, stands on the shelf or is in the oil at 0.50.
    """
    asked = np.zeros((2, 24), dtype=np.int64)
    asked[0, :10], asked[1, 5] = 10, 100
    monkeypatch.setattr(score, "guests", lambda day, seed: asked)
    sold = np.full((2, 24), np.nan)
    sold[0, 2:5], sold[0, 12] = 4.0, 50.0  # what is sold later does not count yet
    oil = InOil(fryer=0, item=0, load=0, units_n=8.0, drop_n=9.0, lift_n=11.0)
    thrown = Thrown(tray=tray(), units_n=3.0, at_n=9.0, reason="")
    state = State(now_n=10.5, sold_n=sold, thrown=[thrown], trays=[tray(left_n=5.0)], in_oil=[oil])
    bench = SimpleNamespace(day=DAY, trade=SimpleNamespace(currency="$"))
    board = SimpleNamespace(practice=7, bench=bench, state=lambda _now_s: state)
    found = score.score_view(board, 0.0)
    first, other = found.rows
    assert (first.asked_n, first.served_n, first.missed_n) == (100.0, 12.0, 88.0)
    assert (first.thrown_n, first.left_n, first.money) == (3.0, 13.0, 88.0 * 2.0 + 16.0 * 0.5)
    assert (other.asked_n, other.missed_n, other.money) == (100.0, 100.0, 300.0)
    assert (found.served_frac, found.money) == (pytest.approx(0.06), 184.0 + 300.0)
    asked[:] = 0
    assert score.score_view(board, 0.0).served_frac == 1.0
    board.practice = None
    assert score.score_view(board, 0.0) is None


@pytest.mark.parametrize(
    ("vent_s", "pieces", "text"), [(480.0, 16.0, "2 heads (16 pieces)"), (None, 15.0, "15 pieces")]
)
def test_a_fryer_that_cooks_says_when_it_was_dropped_and_is_due(vent_s, pieces, text):
    """Dropped in slot 12 of five minutes from 9:40, ten minutes to the lift; a vent counts from the drop."""
    fact = SimpleNamespace(lift_s=600.0, vent_start_s=vent_s, pieces_count=16, units_n=2.0)
    trade = SimpleNamespace(start_s=34800.0, slot_s=300.0)
    bench = SimpleNamespace(trade=trade, loads=[[fact]], day=DAY)
    line = FryerLine(
        key="alder",
        number=1,
        name="Alder",
        state="idle",
        since_filter=0,
        filter_every=4,
        pressure=True,
        text="",
        held=False,
        down=False,
        down_text="",
    )
    load = InOil(fryer=0, item=0, load=0, units_n=pieces, drop_n=12.0, lift_n=14.0)
    row = _cooking(bench, line, load, None, str)
    assert (row.drop_s, row.lift_s, row.drop, row.lift) == (38400.0, 39000.0, "10:40", "10:50")
    assert (row.vent_s, row.pieces, row.state, row.product) == (
        vent_s and 38880.0,
        int(pieces),
        "cooking",
        "a",
    )
    assert row.text == text
