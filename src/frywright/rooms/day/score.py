"""How a practice day went: what guests asked for and got, what was thrown away, what that costs."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from frywright.model.tongues import Translate
from frywright.rooms.day.board import Board
from frywright.rooms.day.practice import guests


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoreRow:
    """A product: pieces asked for, served, not there, thrown away, and left over; ``money`` is lost by it."""

    name: str
    asked_n: float
    served_n: float
    missed_n: float
    thrown_n: float
    left_n: float
    money: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ScoreView:
    """A practice day up to a moment. ``served_frac`` is 1 where nobody asked for anything yet."""

    rows: tuple[ScoreRow, ...]
    served_frac: float
    money: float
    currency: str


def score_view(board: Board, now_s: float, tr: Translate = str) -> ScoreView | None:
    """The score of a practice day; None on a real day, where nobody knows what was asked for in vain."""
    if board.practice is None:
        return None
    state, day = board.state(now_s), board.bench.day
    ended = int(min(max(state.now_n, 0.0), day.slots_count))
    asked_n = guests(day, board.practice)[:, :ended].sum(axis=1)
    rows = []
    for i, item in enumerate(day.items):
        served = float(np.nansum(state.sold_n[i, :ended]))
        missed = max(0.0, float(asked_n[i]) - served)
        thrown = sum(t.units_n for t in state.thrown if t.tray.item == i)
        left = sum(t.left_n for t in state.trays if t.item == i)
        left += sum(x.units_n for x in state.in_oil if x.item == i)
        rows.append(
            ScoreRow(
                name=tr(item.name),
                asked_n=float(asked_n[i]),
                served_n=served,
                missed_n=missed,
                thrown_n=thrown,
                left_n=left,
                money=missed * item.short_money + (thrown + left) * item.waste_money,
            )
        )
    asked = float(asked_n.sum())
    return ScoreView(
        rows=tuple(rows),
        served_frac=sum(row.served_n for row in rows) / asked if asked else 1.0,
        money=sum(row.money for row in rows),
        currency=board.bench.trade.currency,
    )
