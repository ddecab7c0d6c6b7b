"""Loads that a day plans with: never more than the fryer's plate or the program's own load."""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from frywright.catalog.capacity import most_units
from frywright.model.program import Program
from frywright.plan.model import Day, Item, LoadSize
from frywright.rooms.day import day, loads


@pytest.fixture
def asked(monkeypatch):
    """The loads a day tries, without simulating them."""
    found = []

    def fact(kitchen, program, fryer, units, count):
        found.append((program.name, fryer, units))
        return found[-1]

    monkeypatch.setattr(loads, "_fact", fact)
    return found


def changed(kitchen, key, **changes):
    """The kitchen with something else on a fryer's plate."""
    fryers = tuple(replace(f, **changes) if f.key == key else f for f in kitchen.fryers)
    return replace(kitchen, fryers=fryers)


@pytest.mark.parametrize("capacity_kg", [2.2, 2.7, 3.3])
def test_a_plate_by_count_and_by_mass_holds_both(kitchen, asked, capacity_kg):
    """Three heads by count, fewer by their mass: no load is over either."""
    place = changed(kitchen, "alder", capacity_kg=capacity_kg)
    loads.load_facts(place, place.sells[0])
    mine = [units for _, fryer, units in asked if fryer.key == "alder"]
    unit_kg = place.unit_kg(place.sells[0].product)
    assert mine and max(mine) * unit_kg <= capacity_kg and max(mine) <= 3


def test_pieces_on_a_plate_by_heads_are_as_many_as_the_engine_takes(kitchen, asked):
    """A product by the piece on a fryer whose plate counts heads."""
    place = changed(kitchen, "cedar", capacity_heads=3, capacity_kg=0.0)
    for sell in place.sells:
        loads.load_facts(place, sell)
    over = []
    for name, fryer, units in asked:
        product = place.program(name).product
        cuts = place.cut_set(place.product(product).cut_set)
        over += [(name, units)] if units > most_units(fryer, cuts, place.unit_kg(product)) else []
    assert any(fryer.key == "cedar" for _, fryer, _ in asked) and over == []


def test_a_program_for_a_smaller_load_is_planned_for_no_larger_one(kitchen, asked):
    """Its card says two heads: the day does not ask for three."""
    own: Program = kitchen.program("bone-in alder")
    programs = tuple(replace(p, load_heads=2.0) if p == own else p for p in kitchen.programs)
    loads.load_facts(replace(kitchen, programs=programs), kitchen.sells[0])
    assert max(units for name, _, units in asked if name == own.name) == 2


def test_a_changed_day_has_its_own_hours_and_rule(kitchen, monkeypatch):
    """A fryer more costs the heat of the one that takes the same; one that is down begins without hours."""
    asked = []
    monkeypatch.setattr(day, "_idle_money", lambda bench, kitchen: [0.5, 0.25])
    monkeypatch.setattr(day, "_own_rule", lambda changed: asked.append(changed.up) or "rule")
    monkeypatch.setattr(
        day, "_windows", lambda changed, idle, rule: asked.append((idle, rule)) or ((1, 2),) * 3
    )
    loads = [LoadSize(units_count=4, cook_slots_count=1, batch_money=0.1, fryers=f) for f in ((0,), (1, 2))]
    items = tuple(
        Item(name="x", loads=(load,), hold_slots_count=3, short_money=1.0, waste_money=1.0) for load in loads
    )
    changed = Day(items=items, fryers_count=3, slots_count=8, mean_n=np.ones((2, 8)))
    bench = SimpleNamespace(fryers=("alder", "birch"), down=("birch",))
    found, rule = day.tuned_day(bench, kitchen, changed)
    assert asked == [((0, 8), (8, 8), (0, 8)), ([0.5, 0.25, 0.25], "rule")]
    assert (found.up, rule, found.items) == (((1, 2),) * 3, "rule", items)
