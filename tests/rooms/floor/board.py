"""Taps of a board, and what stands on its shelf."""

from __future__ import annotations

from frywright.rooms.day.board import Tap
from frywright.rooms.day.board_view import board_view

NOON, NINE = 12 * 3600.0, 21 * 3600.0
TIME = 720.0
"""Drop to lift of the demo's bone-in program in Alder: 10:00 and 2:00, as its card adds them up."""


def tell(board, what, at_s, key="", **other):
    """A tap; a drop is two heads into Alder."""
    if what in ("drop", "lift"):
        other = {"fryer": "alder", **other}
    if what == "drop":
        other = {"product": "bone_in", "pieces_count": 16, **other}
    return board.tell(Tap(key=key or f"{what} {at_s}", what=what, at_s=at_s, **other))


def shelf(board, at_s, product="bone_in"):
    """Pieces that may be sold, and pieces in the oil."""
    row = next(s for s in board_view(board, at_s).shelf if s.product == product)
    return row.count, row.coming


def till_tells(board):
    """From here on pieces leave the shelf when the till says so, not by the forecast."""
    tell(board, "sold", NOON - 7200, product="wedges", pieces_count=1)
