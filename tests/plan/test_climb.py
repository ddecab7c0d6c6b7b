"""One number of a rule walks its ladder to the cheapest rung, up or down, and never off it."""

from __future__ import annotations

import numpy as np
import pytest

from frywright.plan.tune import LADDERS, _climb


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
