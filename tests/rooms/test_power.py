"""Start, setback and off from the plan under the cap; the quantities of full loads."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.model.errors import InputError
from frywright.model.trade import time_of_day_s
from frywright.physics.fry import simulate
from frywright.physics.plan import make_plan, piece_class
from frywright.plan.advice import Outlook
from frywright.plan.model import Drop, Plan
from frywright.rooms.day import day, loads, power
from frywright.rooms.kitchen import remembered_kitchen
from tests.demo import FRIDAY, sold_store


@pytest.fixture(scope="module")
def shop(tmp_path_factory):
    """The demo with eight weeks of invented sales, and an untuned bench of its Friday."""
    store = sold_store(tmp_path_factory.mktemp("p") / "p.db")
    kitchen = remembered_kitchen(store)
    return kitchen, day.bench_for(store, kitchen, FRIDAY, tune=False)


def planned(bench, *drops):
    """An outlook whose plan drops the first load of bone-in (item 0) that the fryer takes, at some slots."""
    found = []
    for fryer, slot in drops:
        load = next(n for n, fact in enumerate(bench.loads[0]) if fact.fryer == bench.fryers[fryer])
        found.append(Drop(fryer=fryer, item=0, load=load, slot=slot))
    empty = np.zeros((1, 1))
    return Outlook(
        plan=Plan(drops=tuple(found)),
        shelf_n=empty,
        shares_frac=(),
        short_n=empty,
        waste_n=empty,
        waste_frac=0.0,
        fill_frac=1.0,
        rest_money=0.0,
        sd_money=0.0,
        last_drop=(),
    )


def test_every_fryer_is_ready_by_its_first_drop_and_off_after_its_last(shop):
    """Alder drops at 9:40 and three hours later: it is set back between, ready ten minutes early; a fryer
    without a drop stays off.
    """
    kitchen, bench = shop
    view = power.energy_view(kitchen, bench, planned(bench, (0, 0), (0, 36), (2, 24)))
    rows = {r.fryer: r for r in view.rows}
    assert not rows["birch"].used
    assert not rows["dogwood"].used
    alder = rows["alder"]
    assert (alder.ready, alder.first_drop) == ("09:30", "09:40")
    assert alder.start == "09:17"
    (pause,) = alder.pauses
    assert pause.saved_kwh > 0
    assert time_of_day_s(pause.on_again) < time_of_day_s("12:40")
    assert time_of_day_s(alder.off) > time_of_day_s("12:50")
    assert alder.total_kwh == pytest.approx(alder.preheat_kwh + alder.idle_kwh + alder.cook_kwh, abs=0.02)
    facts = [f for f in bench.loads[0] if f.fryer == "alder"]
    assert alder.cook_kwh == pytest.approx(
        2 * (facts[0].heat_kwh + facts[0].recovery_s * 10_000 / 3.6e6), abs=0.01
    )
    assert rows["cedar"].first_drop == "11:40"
    assert rows["cedar"].start > "11:00"


def test_a_setback_that_saves_nothing_is_no_advice(shop):
    """Fifty minutes between two loads save some hundredths of a kilowatt hour: nobody is sent to the knob."""
    kitchen, bench = shop
    (row,) = [
        r
        for r in power.energy_view(kitchen, bench, planned(bench, (0, 0), (0, 13))).rows
        if r.fryer == "alder"
    ]
    assert row.pauses == ()
    assert row.idle_kwh > 0


def test_a_cap_staggers_the_starts_or_says_that_it_cannot(shop):
    """Two electric fryers do not heat together under 20 kW; under 12 kW one alone cannot, and that is said
    with what would do.
    """
    kitchen, bench = shop
    plan = planned(bench, (0, 0), (2, 0))
    free = {r.fryer: r for r in power.energy_view(kitchen, bench, plan).rows}
    capped = replace(kitchen, trade=replace(kitchen.trade, cap_w=20_000.0))
    rows = {r.fryer: r for r in power.energy_view(capped, bench, plan).rows}
    assert min(rows["alder"].start, rows["cedar"].start) < min(free["alder"].start, free["cedar"].start)
    assert rows["alder"].ready <= rows["cedar"].start or rows["cedar"].ready <= rows["alder"].start
    tight = replace(kitchen, trade=replace(kitchen.trade, cap_w=12_000.0))
    assert "kW: one fryer heating" in power.energy_view(tight, bench, plan).problem


def test_without_a_plan_the_opening_hours_are_taken(shop):
    """And it says so."""
    kitchen, _ = shop
    view = power.energy_view(kitchen)
    assert not view.planned
    assert all(r.off == "22:00" for r in view.rows)
    assert view.gas


def test_a_turn_of_the_filter_takes_whole_slots(shop):
    """Ten minutes in slots of five are two; what is begun counts whole."""
    kitchen, bench = shop
    assert (kitchen.trade.filter_s, bench.day.slot_s, bench.day.filter_slots_count) == (600.0, 300.0, 2)


def test_a_load_that_is_short_is_left_out_and_said(shop):
    """One of two programs cut to a minute: none of its loads is planned, and each is named; with both cut no
    program is left.
    """
    kitchen, bench = shop
    sell = next(s for s in kitchen.sells if s.product == "tenders")
    places = {key: n for n, key in enumerate(bench.fryers)}

    def cut(*names):
        brief = tuple(
            replace(p, stages=(replace(p.stages[0], duration_s=60.0),)) if p.name in names else p
            for p in kitchen.programs
        )
        notes = []
        _, facts = loads.item_of(replace(kitchen, programs=brief), sell, kitchen.trade, places, notes)
        return {f.program for f in facts}, [n for n in notes if n.kind == "left_out"]

    planned_names, said = cut("tenders cedar")
    assert planned_names == {"tenders dogwood"}
    assert said and {n.values["program"] for n in said} == {"tenders cedar"}
    with pytest.raises(InputError, match="none for tenders"):
        cut("tenders cedar", "tenders dogwood")


def test_full_loads_have_their_quantities(shop):
    """Every program has its row; an efficiency is a share; a pressure program's food takes what its water and
    its warming take.

    Water given off times the latent heat of saturated steam at 12 psig (2200 kJ/kg, IAPWS-IF97), and 3.2
    kJ/(kg K) for meat with its bone (Choi and Okos, bone from memory) up to about 90 degC; within 10 %, for
    the pieces end 80 to 100 degC.
    """
    kitchen, _ = shop
    rows = power.full_load_rows(kitchen)
    assert len(rows) == 7
    assert all(0.5 < r.efficiency_frac < 1.0 for r in rows)
    for row in rows:
        if row.program in ("bone-in alder", "bone-in birch"):
            history = simulate(make_plan(kitchen, kitchen.program(row.program)))
            usual = [p for p in history.pieces if not p.kind.heavy]
            steam_kj = (
                sum(
                    p.kind.class_mass_kg
                    / history.plan.load_kg
                    * p.yields.moisture_loss_frac
                    * breaded(history.plan, p.kind)
                    for p in usual
                )
                * 2200.0
            )
            assert float(row.food.split()[0]) * 2.326 == pytest.approx(
                steam_kj + 3.2 * (90.0 - 3.3), rel=0.10
            )


def breaded(plan, kind):
    """Breaded over raw weight of a class: coating by area, the catalog's pickup at 0.10 m2/kg."""
    return 1.0 + plan.coating.pickup_frac * piece_class(plan, kind).area_m2 / kind.class_mass_kg / 0.10
