"""Advice a cook would give: the properties of ``benchmarks.practice``, on two kitchens drawn for the test and
on days made to break each of them.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from benchmarks import practice

from frywright.plan.model import Day, Drop, Plan
from frywright.plan.replay import Look, Par, draw_days, replay
from tests.plan.test_replay import kitchen_day


@pytest.mark.slow
@pytest.mark.parametrize("seed", [2, 10])
def test_days_of_a_new_kitchen_show_no_fault_that_must_not_be(seed, tmp_path):
    """A kitchen file nobody has seen before, read and played: rules kept, nothing too late to sell, no early
    filter turn, no fryer hot for nothing, no product without a word, promises kept.
    """
    found = practice.shop(seed, 6, False, tmp_path)
    assert found.days == 6
    assert {name: found.faults[name] for name in practice.NEVER if found.faults[name]} == {}


def day_of() -> Day:
    """Two alike fryers, one product in loads of 4 and 8, asked for evenly."""
    day = kitchen_day(2, 1, 60, 3, 1)
    loads = tuple(
        replace(load, units_count=4 * (n + 1), cook_slots_count=2, recovery_slots_count=0, fryers=(0, 1))
        for n, load in enumerate(day.items[0].loads)
    )
    item = replace(day.items[0], loads=loads, hold_slots_count=6)
    return replace(day, items=(item,), mean_n=np.full((1, 60), 2.0), filter_every_count=4)


def seen(day: Day, plan: Plan, missed: int = 0) -> practice.Played:
    """A plan as if played, with so many missed in every slot."""
    asked = np.full((1, 60), 2, dtype=int)
    shelf = np.zeros((3, 1, 60), dtype=int)
    shelf[1] = missed
    return practice.Played(plan=plan, asked=asked, shelf=shelf)


@pytest.mark.parametrize(
    ("plan", "name"),
    [
        (Plan(drops=(Drop(fryer=0, item=0, load=1, slot=57),) * 1), "cannot be sold before the close"),
        (Plan(filters=((0, 10),)), "filter turn before it is half due"),
        (
            Plan(drops=tuple(Drop(fryer=f, item=0, load=0, slot=9) for f in (0, 1))),
            "small load beside another of the same product",
        ),
        (Plan(drops=(Drop(fryer=0, item=0, load=0, slot=59),)), "rule broken"),
    ],
)
def test_each_fault_is_found(plan, name):
    """A day made to show a fault shows it."""
    day = day_of()
    if name.startswith("cannot"):
        day = replace(day, mean_n=np.concatenate([np.full((1, 57), 2.0), np.full((1, 3), 0.1)], axis=1))
    assert practice.faults(day, seen(day, plan))[name] >= 1


def test_a_free_fryer_beside_an_empty_shelf_is_found():
    """Nothing is cooked all day while guests go without: said; with a day of the rule it is not."""
    day = day_of()
    name = "free fryer beside an empty shelf, 15 min"
    assert practice.faults(day, seen(day, Plan(), missed=2))[name] == 1
    asked = draw_days(day, 1, 3)
    played = replay(day, asked, Par())
    assert played.shelf is not None
    one = practice.Played(plan=played.plans[0], asked=asked[0], shelf=played.shelf[0])
    assert practice.faults(day, one)[name] == 0


@pytest.mark.parametrize("look", [None, Look(paths_count=6, horizon_slots_count=60)])
def test_no_load_goes_in_that_cannot_be_sold_before_the_close(look):
    """Guests stop coming before the close and only a large load is to be had: neither rule nor engine fills
    the shelf for nobody, and both still cook in the last hour of a day on which guests come.
    """
    day = day_of()
    large = replace(day.items[0].loads[1], units_count=40)
    item = replace(day.items[0], loads=(large,), short_money=9.0, waste_money=0.05, hold_slots_count=12)
    for last, some in ((0.1, False), (4.0, True)):
        mean = np.concatenate([np.full((1, 48), 4.0), np.full((1, 12), last)], axis=1)
        late = replace(day, items=(item,), mean_n=mean)
        asked = draw_days(late, 6, 5)
        played = replay(late, asked, Par(cover_slots=(12,), z_n=(1.5,)), look)
        assert played.shelf is not None
        ends = [d.slot for plan in played.plans for d in plan.drops if d.slot > 47]
        assert bool(ends) is some
        for d, plan in enumerate(played.plans):
            one = practice.Played(plan=plan, asked=asked[d], shelf=played.shelf[d])
            assert practice.faults(late, one)["cannot be sold before the close"] == 0
