"""Exact small cases every planner must meet, each against brute force or a formula worked by hand."""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from frywright.model.errors import InputError
from frywright.plan.demand import Demand
from frywright.plan.stock import first_out
from tests.reference.exact_plan import (
    Costs,
    bank_batches_per_s,
    batches_worth,
    crew_batches_per_slot,
    expected_sold,
    newsvendor,
    shelf_life_plan,
    steady_batch,
)

DEMANDS = [Demand(mean_n=m, spread_n=s) for m in (0.4, 3.0, 12.5, 40.0) for s in (1.0, 1.8, 4.0)]


def cost_of(demand: Demand, stock: int, short: float, waste: float) -> float:
    p = demand.probabilities()
    d = np.arange(len(p))
    return float((short * np.maximum(d - stock, 0) + waste * np.maximum(stock - d, 0)) @ p)


@pytest.mark.parametrize("demand", DEMANDS, ids=str)
def test_moments(demand):
    """Probabilities sum to one and give back mean and variance."""
    p = demand.probabilities()
    d = np.arange(len(p))
    assert p.sum() == pytest.approx(1.0, abs=1e-9)
    assert d @ p == pytest.approx(demand.mean_n, rel=1e-6)
    assert (d**2) @ p - (d @ p) ** 2 == pytest.approx(demand.mean_n * demand.spread_n, rel=1e-4)


@pytest.mark.parametrize("demand", DEMANDS, ids=str)
@pytest.mark.parametrize(("short", "waste"), [(1.0, 1.0), (3.0, 1.0), (1.0, 2.5)])
def test_newsvendor_is_the_best_of_all_quantities(demand, short, waste):
    """The critical fractile costs no more than any other quantity, Poisson and negative binomial."""
    best = newsvendor(demand, short, waste)
    costs = [cost_of(demand, q, short, waste) for q in range(best + 60)]
    assert costs[best] == pytest.approx(min(costs), abs=1e-9)


@pytest.mark.parametrize("demand", DEMANDS, ids=str)
def test_batches_worth_is_the_best_of_all_counts(demand):
    """Batches of 8 at a cost each: the marginal rule finds the cheapest count."""
    worth = batches_worth(demand, 8, 2.0, 1.0, 3.0)
    costs = [cost_of(demand, 8 * n, 2.0, 1.0) + 3.0 * n for n in range(worth + 12)]
    assert costs[worth] == pytest.approx(min(costs), abs=1e-9)


def test_hold_of_the_whole_day_is_a_newsvendor_on_the_total():
    """Everything made at the start and held all day serves the day's total."""
    rng = np.random.default_rng(3)
    demand = rng.poisson(2.0, size=(400, 20))
    made = np.zeros(20, dtype=int)
    made[0] = 41
    shelf = first_out(made, demand, 20)
    assert np.array_equal(shelf.sold.sum(axis=1), np.minimum(demand.sum(axis=1), 41))
    assert expected_sold(Demand(mean_n=40.0), 41) == pytest.approx(
        np.minimum(demand.sum(axis=1), 41).mean(), abs=1.0
    )


def by_pieces(made, demand, hold):
    """First out, piece by piece, as a person would do it."""
    shelf, sold, wasted = [], 0, 0
    for t, (m, d) in enumerate(zip(made, demand, strict=True)):
        wasted += sum(1 for born in shelf if born <= t - hold)
        shelf = [born for born in shelf if born > t - hold] + [t] * m
        sold += min(d, len(shelf))
        shelf = shelf[min(d, len(shelf)) :]
    return sold, wasted + len(shelf)


@settings(max_examples=200, deadline=None)
@given(st.lists(st.tuples(st.integers(0, 9), st.integers(0, 9)), min_size=1, max_size=25), st.integers(1, 8))
def test_stock_without_ages_is_stock_with_ages(rows, hold):
    """The cumulative rule sells and wastes exactly what following every piece does; nothing is lost."""
    made, demand = zip(*rows, strict=True)
    shelf = first_out(made, [demand], hold)
    assert (shelf.sold.sum(), shelf.wasted.sum()) == by_pieces(made, demand, hold)
    assert shelf.sold.sum() + shelf.wasted.sum() == sum(made)
    assert (shelf.sold + shelf.short).sum() == sum(demand)


def test_hold_of_one_slot_is_separable():
    """With a hold of one slot every slot is a newsvendor of its own."""
    demands = [Demand(mean_n=m) for m in (2.0, 6.0, 3.5)]
    quantities = [newsvendor(d, 2.0, 1.0) for d in demands]
    rng = np.random.default_rng(5)
    asked = np.stack([rng.poisson(d.mean_n, 4000) for d in demands], axis=1)

    def cost(made):
        shelf = first_out(made, asked, 1)
        return float((2.0 * shelf.short.sum(axis=1) + shelf.wasted.sum(axis=1)).mean())

    best = min(itertools.product(range(12), repeat=3), key=cost)
    assert cost(quantities) == pytest.approx(cost(best), abs=0.03)


@settings(max_examples=60, deadline=None)
@given(st.lists(st.integers(0, 5), min_size=1, max_size=8), st.integers(1, 5))
def test_known_demand_with_a_shelf_life(demand, hold):
    """Dynamic programming uses no more batches than the best of all subsets of periods, and its batches serve
    all.
    """
    cost, batches = shelf_life_plan(demand, hold, 1.0)

    def serves(periods):
        return all(d == 0 or any(p <= t < p + hold for p in periods) for t, d in enumerate(demand))

    fewest = next(
        n
        for n in range(len(demand) + 1)
        if any(serves(c) for c in itertools.combinations(range(len(demand)), n))
    )
    assert cost == fewest
    made = np.zeros(len(demand), dtype=int)
    for period, units in batches:
        made[period] += units
    shelf = first_out(made, [demand], hold)
    assert shelf.short.sum() == 0
    assert shelf.wasted.sum() == 0


def test_constant_demand():
    """Demand of 0.02 a second held 3600 s: batches of 72, or the largest; a smallest of 100 wastes 28 % or is
    not offered.
    """
    costs = Costs(batch_money=5.0, short_money=2.0, waste_money=1.0)
    assert steady_batch(0.02, 3600.0, 10.0, 200.0, costs).size_n == pytest.approx(72.0)
    assert steady_batch(0.02, 3600.0, 10.0, 50.0, costs).every_s == pytest.approx(2500.0)
    big = steady_batch(0.02, 3600.0, 100.0, 200.0, costs)
    assert big.waste_frac == pytest.approx(0.28)
    assert big.offered  # 0.02 against (5 + 100) / (3600 x 3) = 0.0097
    assert not steady_batch(0.009, 3600.0, 100.0, 200.0, costs).offered


def test_capacity_of_bank_and_crew():
    """Four fryers, 12 min cook, 2 min recovery, filter of 8 min every 6 loads: 16.6 loads an hour; 6 actions
    a slot: 2.77 loads.
    """
    assert 3600 * bank_batches_per_s(4, 720.0, 120.0, 6, 480.0) == pytest.approx(
        4 * 6 * 3600 / (6 * 840 + 480)
    )
    assert crew_batches_per_slot(6.0, 6) == pytest.approx(6.0 / (2.0 + 1.0 / 6.0))


def test_impossible_questions_are_refused():
    """Negative means, spreads below Poisson, free shortage, no hold, negative units."""
    for wrong in (
        lambda: Demand(mean_n=-1.0),
        lambda: Demand(mean_n=1.0, spread_n=0.5),
        lambda: newsvendor(Demand(mean_n=1.0), 0.0, 1.0),
        lambda: first_out([1], [[1]], 0),
        lambda: first_out([-1], [[1]], 1),
        lambda: shelf_life_plan([1], 0, 1.0),
        lambda: batches_worth(Demand(mean_n=1.0), 0, 1.0, 1.0, 1.0),
        lambda: bank_batches_per_s(0, 1.0, 1.0, 1, 1.0),
        lambda: steady_batch(0.0, 1.0, 1.0, 1.0, Costs(batch_money=1, short_money=1, waste_money=1)),
    ):
        with pytest.raises(InputError):
            wrong()
