"""Taps of a board as tests need them."""

from __future__ import annotations

import datetime as dt

from frywright.ledger.facts.day import BoardTap


def tap(date: dt.date, key: str, **changes) -> BoardTap:
    """A drop in Alder on a day, with what a test says otherwise."""
    told = {
        "what": "drop",
        "at_s": 43200.0,
        "fryer": "alder",
        "product": "bone_in",
        "pieces_count": 32,
        "reason": "",
        "who": "",
        "practice_count": None,
    }
    return BoardTap(date=date, key=key, **{**told, **changes})
