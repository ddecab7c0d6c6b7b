"""What oil is worth: lives by the closed forms, money by hand, filter turns learned from drawn logs."""

from __future__ import annotations

from math import inf

import numpy as np
import pytest

from frywright.model.errors import InputError
from frywright.model.units import LB
from frywright.oil.ageing import next_level
from frywright.oil.cost import Rates
from frywright.oil.worth import change_money, day_money, filter_effect, left_money, life_days

RATES = Rates(price_kg_money=1.10 / LB, change_h=0.75, hour_money=18.0)


@pytest.mark.parametrize("share", [0.0, 0.03, 0.05, 0.08, 0.1])
def test_life_is_the_day_by_day_sum(share):
    """The whole days of a life are those a day-by-day sum counts until a peak passes the limit."""
    level, count = 4.0, 0
    while level + 2.5 <= 24.0 + 1e-9:
        level, count = next_level(level, 2.5, share, 4.0), count + 1
    life = life_days(4.0, 2.5, share, 4.0, 24.0)
    assert int(life + 1e-9) == count


def test_a_share_that_keeps_it_below_never_ends_and_old_oil_is_over():
    """At 13 % the peak settles below 24; a level within a day's growth of the limit has no day left."""
    assert life_days(4.0, 2.5, 0.13, 4.0, 24.0) == inf
    assert life_days(22.0, 2.5, 0.05, 4.0, 24.0) == 0.0
    assert life_days(21.5, 2.5, 0.0, 4.0, 24.0) == pytest.approx(1.0)


def test_money_of_the_worked_example():
    """Four 50 lb vats at $1.10/lb, 45 min a change at $18/h, 19.8 lb of top-up a day: a vat's change is
    $68.50; by days between changes the four cost $60.9 at 7, $41.4 at 14 (the trade's worked example).
    """
    mass, share = 50 * LB, 19.8 / 200
    assert change_money(mass, RATES) == pytest.approx(50 * 1.10 + 13.5)
    for days, total in ((7, 60.9), (14, 41.4)):
        assert 4 * (mass * share * RATES.price_kg_money + change_money(mass, RATES) / days) == pytest.approx(
            total, abs=0.1
        )
    growth = next(g for g in np.arange(2.0, 6.0, 0.001) if life_days(4.0, float(g), share, 4.0, 24.0) <= 7.0)
    assert 4 * day_money(mass, float(growth), share, 4.0, 24.0, RATES) == pytest.approx(60.9, abs=0.2)


def test_oil_that_lasts_half_a_day_is_changed_once_a_day():
    """Nobody changes it more often than it is looked at; one and a half days are one and a half."""
    whole = change_money(20.0, RATES)
    assert day_money(20.0, 40.0, 0.0, 4.0, 24.0, RATES) == pytest.approx(whole)
    assert day_money(20.0, 20.0 / 1.5, 0.0, 4.0, 24.0, RATES) == pytest.approx(whole / 1.5)


def test_what_is_left_is_thrown_away():
    """Fresh oil thrown away is the whole change, oil at its end nothing, half its life half of it."""
    whole = change_money(20.0, RATES)
    assert left_money(20.0, 4.0, 2.5, 0.0, 4.0, 24.0, RATES) == pytest.approx(whole)
    assert left_money(20.0, 14.0, 2.5, 0.0, 4.0, 24.0, RATES) == pytest.approx(whole / 2)
    assert left_money(20.0, 23.0, 2.5, 0.0, 4.0, 24.0, RATES) == 0.0
    assert left_money(20.0, 10.0, 2.5, 0.2, 4.0, 24.0, RATES) == pytest.approx(whole)


def test_filter_turns_are_told_only_where_they_stand_out():
    """Drawn logs: without an effect at most one in ten says there is one; with half a point a turn most do,
    and the figure is unbiased.
    """
    rng = np.random.default_rng(5)
    turns = np.tile([0.0, 1.0, 2.0, 3.0], 12)
    none = [filter_effect(2.5 + 0.6 * rng.standard_normal(48), turns) for _ in range(300)]
    some = [filter_effect(2.5 - 0.5 * turns + 0.6 * rng.standard_normal(48), turns) for _ in range(300)]
    assert np.mean([e.told for e in none]) < 0.1
    assert np.mean([e.told for e in some]) > 0.9
    assert np.mean([e.turn_n for e in some]) == pytest.approx(0.5, abs=0.02)
    assert not filter_effect([2.0] * 7, [0, 1, 2, 0, 1, 2, 0]).told
    assert not filter_effect([2.0] * 20, [1] * 20).told
    with pytest.raises(InputError):
        filter_effect([1.0], [1.0, 2.0])
