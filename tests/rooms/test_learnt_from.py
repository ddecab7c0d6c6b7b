"""From where on a vat's log is learned from, and with which program a fryer is tried."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import pytest

from frywright.ledger.facts.oil import OilDone
from frywright.rooms.care.commissioning import _program
from frywright.rooms.care.oil_state import _filled_on, _from_a_change

TODAY = dt.date(2026, 11, 27)


def done(what, days_ago):
    date = TODAY - dt.timedelta(days=days_ago)
    return OilDone(vat="alder", what=what, raw="", who="", how="", key=f"{what}{days_ago}", date=date)


@pytest.mark.parametrize(
    ("log", "first", "filled"),
    [
        ((("reading", 900), ("discard", 800), ("fill", 500), ("reading", 480), ("fill", 30)), 500, 30),
        ((("fill", 365), ("reading", 10)), 365, 365),
        ((("reading", 400), ("fill", 364), ("reading", 10)), 400, 364),
        ((("reading", 40), ("top_up", 10)), 40, 40),
    ],
)
def test_a_log_is_learned_from_its_last_change_of_a_year_ago(log, first, filled):
    """The oil of that change is known from its first day; a younger log counts whole; the oil that is in
    there now counts from its own last change.
    """
    events = [done(*row) for row in log]
    learned = _from_a_change(events, TODAY)
    assert (TODAY - learned[0].date).days == first
    assert learned == events[events.index(learned[0]) :]
    assert (TODAY - _filled_on(events, TODAY)).days == filled
    assert _filled_on([], TODAY) == TODAY


def test_a_fryer_is_tried_with_a_program_of_its_own(kitchen):
    """One under pressure where it has one; its first by name else; none where it has none."""
    for key, pressed in (("alder", True), ("dogwood", False)):
        tried = _program(kitchen, kitchen.fryer(key))
        assert (tried.fryer, tried.under_pressure) == (key, pressed)
    bare = replace(kitchen, programs=tuple(p for p in kitchen.programs if p.fryer != "dogwood"))
    assert _program(bare, kitchen.fryer("dogwood")) is None
