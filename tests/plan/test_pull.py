"""The pull sheet: heads by the worst cut, critical fractile, whole cases, stock in date; thawing against
Neumann's exact front.
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from frywright.model.errors import InputError
from frywright.plan.demand import Demand
from frywright.plan.pull import Stock, heads_for, plank_s, pull, thaw_s

EIGHT = {"breast_half": 2, "thigh": 2, "drum": 2, "wing": 2}


def test_heads_cover_the_worst_cut():
    """Fifty thighs need twenty-five heads even when few other cuts are asked for; pieces of any cut fill the
    rest.
    """
    assert heads_for({"thigh": 50, "wing": 10}, EIGHT) == (25.0, "thigh")
    assert heads_for({"thigh": 50, "wing": 10}, EIGHT, any_cut=340) == (50.0, "")
    with pytest.raises(InputError):
        heads_for({"neck": 3}, EIGHT)


def test_the_quantity_is_the_critical_fractile_less_stock_in_whole_cases():
    """Checked against the law itself: what is out of date does not count."""
    law = Demand(mean_n=70.0, spread_n=3.0)
    needed = law.quantile(1.65 / (1.65 + 0.95))
    found = pull(
        70.0,
        3.0,
        (1.65, 0.95),
        [Stock(units_n=20, in_date_days_count=0), Stock(units_n=30, in_date_days_count=-1)],
        14,
    )
    assert found.needed_n == needed
    assert found.cases_count == -(-(needed - 20) // 14)
    assert found.expired_n == 30
    there = 20 + found.units_n
    assert found.short_frac == pytest.approx(1 - law.frozen().cdf(there))
    assert found.over_frac == pytest.approx(law.frozen().cdf(there - 14))


def test_enough_on_hand_pulls_nothing_and_balance_pulls_more():
    """No case when stock covers it; a worst cut that needs a fifth more heads needs a fifth more."""
    assert pull(10.0, 1.5, (1.0, 1.0), [Stock(units_n=40, in_date_days_count=1)], 14).cases_count == 0
    assert pull(70.0, 2.0, (1.0, 1.0), [], 1, factor=1.2).needed_n == pytest.approx(
        1.2 * pull(70.0, 2.0, (1.0, 1.0), [], 1).needed_n
    )


def test_planks_time_is_neumanns_where_its_assumptions_hold():
    """With the face held at the room's temperature and little sensible heat, the front reaches the middle at
    a^2 / (4 lambda^2 alpha).

    Neumann's exact solution (Carslaw and Jaeger, 2nd ed., 11.2), lambda from the table of the reference
    folder.
    """
    with (Path(__file__).parents[1] / "reference" / "neumann_lambda.csv").open() as file:
        rows = [r for r in csv.reader(file) if r and not r[0].startswith("#")]
    head = rows[0]
    numbers = [dict(zip(head, r, strict=False)) for r in rows[1:]]
    stefan_key = next(k for k in head if "st" in k.lower())
    lambda_key = next(k for k in head if "lambda" in k.lower())
    row = min(numbers, key=lambda r: float(r[stefan_key]))
    stefan, lam = float(row[stefan_key]), float(row[lambda_key])
    k, rho_c, half = 0.5, 3.5e6, 0.02
    difference = 5.0
    heat = rho_c * difference / stefan
    exact = half**2 / (4 * lam**2 * (k / rho_c))
    assert plank_s(2 * half, heat, difference, 1e12, k) == pytest.approx(exact, rel=0.35 * stefan + 1e-3)


def test_a_textbook_freezing_time():
    """Singh and Heldman's example of a sphere is for P = 1/6, R = 1/24; the slab of the same thickness takes
    three times as long (from memory).
    """
    sphere = 1000 * 250e3 / 38.75 * (0.07 / (6 * 50) + 0.07**2 / (24 * 1.2))
    assert sphere / 3600 == pytest.approx(0.72, abs=0.01)
    assert plank_s(0.07, 1000 * 250e3, 38.75, 50.0, 1.2) == pytest.approx(3 * sphere)


def test_thick_blocks_cannot_thaw_in_time():
    """Two fingers thick thaws within a day in moving air; a four-inch block does not in two."""
    assert thaw_s(0.025, 0.7) < 24 * 3600
    assert thaw_s(0.1016, 0.7) > 48 * 3600
    with pytest.raises(InputError):
        thaw_s(0.05, 0.7, room_c=-2.0)
