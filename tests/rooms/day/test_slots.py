"""Slots are as long as a kitchen's hold lives let them be."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.model.business_day import trade_of
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.rooms.day import day, power
from tests.demo import FRIDAY


def held(kitchen: Kitchen, holds_min: dict[str, float]) -> Kitchen:
    """The kitchen with other hold lives, by product."""
    programs = tuple(
        replace(p, hold_life_s=60.0 * holds_min[p.product]) if p.product in holds_min else p
        for p in kitchen.programs
    )
    return replace(kitchen, programs=programs)


@pytest.mark.parametrize(
    ("holds_min", "slot_s"),
    [
        ({}, 300.0),  # twenty minutes and more
        ({"wedges": 15}, 300.0),
        ({"wedges": 14.9}, 240.0),
        ({"tenders": 8}, 240.0),
        ({"wedges": 9, "tenders": 240}, 240.0),
        ({"wedges": 9, "tenders": 241}, 300.0),  # what is held longer would not fit in the engine's arrays
    ],
)
def test_short_holds_are_planned_in_slots_of_four_minutes(kitchen, holds_min, slot_s):
    """Below a quarter of an hour, unless something is held for more than four hours."""
    assert trade_of(held(kitchen, holds_min)).slot_s == slot_s


def test_a_length_that_was_given_stays_and_what_is_not_sold_does_not_count(kitchen):
    """And a kitchen whose programs are of nothing it sells has the usual slots."""
    short = held(kitchen, {"wedges": 9})
    assert trade_of(replace(short, trade=replace(kitchen.trade, slot_s=600.0))).slot_s == 600.0
    sells = tuple(s for s in kitchen.sells if s.product != "wedges")
    assert trade_of(replace(short, sells=sells)).slot_s == 300.0
    assert trade_of(replace(short, programs=())).slot_s == 300.0
    with pytest.raises(InputError, match="missing in the kitchen file"):
        trade_of(replace(kitchen, trade=None))


@pytest.mark.slow
def test_the_whole_day_goes_in_those_slots(store, kitchen):
    """Nine minutes are two slots, not one; a filter turn of ten takes three; guests and hours stay the same;
    the energy of the plan is told by the same clock.
    """
    usual = day.bench_for(store, kitchen, FRIDAY, tune=False)
    short = held(kitchen, {"wedges": 9})
    bench = day.bench_for(store, short, FRIDAY, tune=False)
    n = bench.products.index("wedges")
    assert (usual.day.items[n].hold_slots_count, bench.day.items[n].hold_slots_count) == (4, 2)
    assert bench.day.items[n].life_n == pytest.approx(9 / 4)
    assert (bench.day.slot_s, bench.day.filter_slots_count) == (240.0, 3)
    assert bench.day.mean_n.sum() == pytest.approx(usual.day.mean_n.sum())
    assert abs(bench.day.slots_count * 240.0 - usual.day.slots_count * 300.0) <= 240.0
    for item, facts in zip(bench.day.items, bench.loads, strict=True):
        for load, fact in zip(item.loads, facts, strict=True):
            assert 0.0 <= load.cook_slots_count * 240.0 - fact.cook_s < 240.0
    plan = day.morning(bench)
    for n, used in enumerate(power._uses(short, bench, plan)):
        begins = [d.slot for d in plan.plan.drops if d.fryer == n] + [
            t for f, t in plan.plan.filters if f == n
        ]
        assert [at for at, _ in used.busy] == [bench.trade.start_s + 240.0 * t for t in sorted(begins)]
    assert len(plan.plan.drops) > 20
