"""One number of a rule walks its ladder to the cheapest rung, up or down, and never off it."""

from __future__ import annotations

import numpy as np
import pytest

from frywright.plan.replay import PARTS, Par, Rule, draw_days, replay_par
from frywright.plan.tune import LADDERS, _climb, searched_rule
from tests.plan.test_replay import kitchen_day


class Valley:
    """Days that cost more the farther a number stands from one place."""

    def __init__(self, begins: float, cheapest: float) -> None:
        self.table, self.cheapest = np.full((5, 4, 2), begins), cheapest
        self.rules = (*[None] * 12, self.table)
        self.best = self.cost()

    def cost(self) -> float:
        return float(np.abs(self.table[0, :, 1] - self.cheapest).sum())

    def better(self) -> bool:
        found = self.cost()
        if found < self.best:
            self.best = found
            return True
        return False


@pytest.mark.parametrize(
    ("begins", "cheapest", "ends"),
    [(3, 10, 10), (10, 3, 3), (5, 5, 5), (20, 99, LADDERS[0][-1]), (2, -9, LADDERS[0][0])],
)
def test_a_number_stops_at_the_cheapest_rung(begins, cheapest, ends):
    """At the ends of the ladder it stops as well; the other product's numbers stay where they are."""
    valley = Valley(begins, cheapest)
    _climb(valley, (0, slice(None), 1))
    assert valley.table[0, :, 1].tolist() == [ends] * 4
    assert valley.table[0, :, 0].tolist() == [begins] * 4
    assert (valley.table[1:] == begins).all()


def ruled(count: int, cover: float) -> Rule:
    """Par as a rule by part of the day."""
    table = Par(cover_slots=(int(cover),), z_n=(0.0,)).table(count)
    return Rule(table_n=tuple(tuple(tuple(map(float, row)) for row in block) for block in table))


def test_a_search_moves_a_few_numbers_and_keeps_what_costs_less():
    """From a rule that covers far too much, cheaper with every hundred tries on the days it is given, and on
    others; the same seed finds the same; each number stands on its ladder; without a try nothing moves.
    """
    day = kitchen_day(2, 2, 60, 2, 3)
    days, others, start = draw_days(day, 60, 1), draw_days(day, 200, 2), ruled(2, 36)
    none, few, many = (searched_rule(day, days, start, tries) for tries in (0, 100, 200))
    assert none == start
    assert many == searched_rule(day, days, start, 200) != searched_rule(day, days, start, 200, seed=2)
    costs = [replay_par(day, days, rule).cost_money.mean() for rule in (start, few, many)]
    assert costs[0] > costs[1] >= costs[2]
    assert replay_par(day, others, many).cost_money.mean() < replay_par(day, others, start).cost_money.mean()
    table = np.array(many.table_n)
    assert table.shape == (len(LADDERS), PARTS, 2)
    for row, ladder in zip(table, LADDERS, strict=True):
        assert set(row.ravel()) <= set(ladder)
