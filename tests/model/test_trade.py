"""Money as people write it."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.model.business_day import day_typed, moment_typed
from frywright.model.errors import InputError
from frywright.model.trade import Trade, money


@pytest.mark.parametrize(
    ("amount", "currency", "written"),
    [
        (488.214, "$", "$488.21"),
        (12.5, "CHF", "12.50 CHF"),
        (3.0, "", "3.00"),
        (-7.126, "€", "−€7.13"),
        (-0.004, "$", "$0.00"),
    ],
)
def test_a_sign_stands_before_the_figure_and_letters_after(amount, currency, written):
    assert money(amount, currency) == written


def test_a_rush_after_midnight_is_of_the_night_before():
    """A kitchen that closes at two: seconds run on past midnight, as those of the business day do."""
    trade = Trade(opens="18:00", closes="02:00", first_drop="17:30", rush=("23:00-01:00", "00:30-01:30"))
    assert trade.rush_s == ((82800.0, 90000.0), (88200.0, 91800.0))


@pytest.mark.parametrize("span", ["12:00-11:00", "11:30-11:30", "12:00", "02:00-05:00"])
def test_a_rush_that_ends_before_it_begins_is_refused(span):
    """The last begins in one business day and ends in the next."""
    with pytest.raises(InputError, match="such as 17:00-20:00"):
        Trade(rush=(span,))


def test_a_day_and_a_moment_are_typed_by_the_kitchens_own_clock(kitchen):
    """The demo's clock is seven hours behind UTC; a moment that names its zone is that one."""
    assert day_typed("2026-11-27") == dt.date(2026, 11, 27)
    noon = dt.datetime(2026, 11, 27, 19, tzinfo=dt.UTC)
    assert kitchen.trade.zone == "Etc/GMT+7"
    assert moment_typed(kitchen, "2026-11-27 12:00", "bought") == noon
    assert moment_typed(kitchen, "2026-11-27T20:00+01:00", "bought") == noon
    for text in ("27.11.2026", "", "soon"):
        with pytest.raises(InputError, match="such as"):
            day_typed(text)
        with pytest.raises(InputError, match="such as"):
            moment_typed(kitchen, text, "bought")
