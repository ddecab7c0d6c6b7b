"""Money as people write it."""

from __future__ import annotations

import pytest

from frywright.model.trade import money


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
