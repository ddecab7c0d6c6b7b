"""What a history holds: its balances close from the outputs alone, and a march of any program ends."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.model.errors import SolveError
from frywright.physics import fry, solve
from frywright.physics.engine import CRUST_DEPTHS
from frywright.physics.inputs import FINE, ROUTINE, Lid, Span
from frywright.physics.plan import make_plan, piece_class, question
from frywright.physics.solve import Cook, Prescribed, run
from frywright.physics.steam import GAS_STEAM_J_KGK, boiling_temp_c, latent_heat_j_kg
from tests.conftest import boiling_slab, four_classes, open_cook, piece, pressure_cook, vat


def test_oil_balance_closes_with_the_heat_of_the_classes():
    """Heater heat = heat of all classes + loss to the room + what warms oil and metal, within 1 % of the
    classes' heat.

    The loss is a trapezium over the printed oil temperatures, which is all an outsider has.
    """
    cook = open_cook(600.0)
    got, v = run(cook), cook.vat
    cp0, cp1 = v.oil_cp_j_kgk
    oil = got.oil_temp_c

    def stored(t):
        return v.oil_mass_kg * t * (cp0 + 0.5 * cp1 * t) + v.metal_heat_j_k * t

    lost = v.loss_w_k * np.trapezoid(oil - v.room_temp_c, got.time_s)
    pieces = got.heater_j[-1] - (stored(oil[-1]) - stored(oil[0])) - lost
    assert got.heat_j[-1].sum() == pytest.approx(pieces, rel=0.01)
    assert got.heat_j == pytest.approx(got.heat_j_m2 * np.array([p.area_m2 for p in cook.pieces]))
    assert np.all(np.diff(got.heat_j, axis=0) > 0)


def test_steam_of_a_closed_headspace_closes():
    """Steam over the oil = steam given off - condensed on the lid, while neither valve nor vent is open.

    What condenses is read from the lid's own heat balance; 2 % for its trapezium over the printed
    temperatures.
    """
    p = piece(mass_kg=0.25, film_kg_m2=0.5)
    v = vat(relief_gauge_pa=200e3, lid_ua_w_k=20.0, leak_area_m2=0.0)
    span = Span(duration_s=60.0, set_c=165.0, lid=Lid.PRESSURE)
    got = run(Cook(vat=v, pieces=[p], spans=[span]), replace(FINE, n_core=80, n_crust=20))
    closed = got.time_s > 0.5  # from a moment after the drop, when boiling runs
    first = int(np.argmax(closed))
    lid, steam = got.lid_temp_c, np.maximum(got.steam_pa, 2000.0)
    latent = np.array([latent_heat_j_kg(boiling_temp_c(s)) for s in steam])
    to_room = v.lid_room_ua_w_k * (lid - v.room_temp_c)
    warmed = v.lid_heat_j_k * np.diff(lid)
    condensed = (warmed + 0.5 * (to_room[1:] + to_room[:-1]) * np.diff(got.time_s)) / (
        0.5 * (latent[1:] + latent[:-1])
    )
    condensed = np.maximum(condensed, 0.0)[first:].sum()
    given_off = (got.evaporated_kg_m2[-1, 0] - got.evaporated_kg_m2[first, 0]) * p.area_m2
    held = (
        v.head_volume_m3
        * (got.steam_pa[-1] - got.steam_pa[first])
        / (GAS_STEAM_J_KGK * (v.head_temp_c + 273.15))
    )
    assert got.pressure_pa[-1] - v.atmosphere_pa > 20e3
    assert held == pytest.approx(given_off - condensed, rel=0.02)
    assert np.all(got.steam_pa <= got.pressure_pa)


def test_a_closed_vat_stays_at_the_rooms_pressure_until_something_boils():
    """No gas comes or goes, and the lid takes no steam. Newton's method ends on it; where
    rounding threw it out of its bracket, halving left up to 2 Pa.
    """
    got = run(pressure_cook())
    dry = np.flatnonzero(got.evaporated_kg_m2.max(axis=1) > 0.0)[0]
    assert dry > 10
    assert np.allclose(got.pressure_pa[:dry], got.pressure_pa[0], rtol=0.0, atol=1e-6)


def test_crust_temperatures_of_a_quasi_steady_crust_are_a_straight_line():
    """A crust that stores nothing, in a slab, conducts along a straight line from front to surface (0.05
    K).
    """
    got = run(boiling_slab(300.0, a=0.05, water_kg_m3=850.0))
    assert got.crust_temp_c.shape == (len(got.time_s), 1, len(CRUST_DEPTHS))
    for number, depth in enumerate(CRUST_DEPTHS):
        line = (1.0 - depth) * got.surface_temp_c[-1, 0] + depth * got.front_temp_c[-1, 0]
        assert got.crust_temp_c[-1, 0, number] == pytest.approx(line, abs=0.05)
    assert got.crust_temp_c[-1, 0, 0] - got.crust_temp_c[-1, 0, 2] > 20.0


def test_fine_runs_every_program_of_the_demo(kitchen):
    """The reference precision reaches the end of every program, full load, and keeps the books."""
    for program in kitchen.programs:
        got = run(question(make_plan(kitchen, program)), FINE)
        assert got.report.energy_gap_frac < 1e-5, program.name
        assert got.time_s[-1] > program.durations_s()[0]


@pytest.mark.slow
def test_fine_runs_two_hours():
    """Two hours in the oil at ``FINE``; the trace stays within its bound of memory."""
    cook = open_cook(7200.0, pieces=[piece(a=0.04)])
    got = run(cook, FINE)
    assert got.time_s[-1] == pytest.approx(7200.0)
    assert got.report.steps < solve.most_steps(cook, FINE) <= solve.MOST_STEPS


def test_a_march_that_runs_out_of_steps_says_so(monkeypatch):
    """Room for too few steps is an error, never a cut curve."""
    monkeypatch.setattr(solve, "EVENT_STEPS", 5)
    monkeypatch.setattr(solve, "STEP_ROOM", 0.1)
    with pytest.raises(SolveError, match="did not reach the end"):
        run(open_cook(600.0))


def test_steps_kept_by_force_are_counted_and_told(kitchen, monkeypatch):
    """No demo program keeps a step by force; one that did says so in a note."""
    plan = make_plan(kitchen, kitchen.programs[0])
    history = fry.simulate(plan)
    assert history.report.forced == 0
    assert "forced_steps" not in {note.kind for note in history.notes}
    real = fry.run_many

    def forced(cooks, precision):
        return [replace(raw, report=replace(raw.report, forced=3)) for raw in real(cooks, precision)]

    monkeypatch.setattr(fry, "run_many", forced)
    told = [note for note in fry.simulate(plan).notes if note.kind == "forced_steps"]
    assert told[0].values == {"moments": 3}
    assert run(open_cook(300.0, pieces=four_classes()), ROUTINE).report.forced == 0


@pytest.mark.parametrize("n", [0.0, 0.5, 1.0, 2.0])
@pytest.mark.parametrize("changes", [{}, {"bone_radius_m": 0.0012}, {"drip_frac": 0.3}])
def test_a_piece_boils_off_its_last_water_before_it_heats_above_boiling(n, changes):
    """A thin piece fried through: at boiling while a ten-thousandth of its water is left, dry once, then hot;
    books close.
    """
    p = piece(a=0.003, n=n, film_kg_m2=0.1, **changes)
    told = Prescribed(oil_temp_c=[(0.0, 170.0)])
    got = run(Cook(vat=vat(), pieces=[p], spans=[Span(duration_s=1200.0, set_c=170.0)], prescribed=told))
    bone = p.bone_radius_m ** (n + 1) / p.half_thickness_m**n if p.bone_radius_m else 0.0
    water = p.film_kg_m2 + p.water_kg_m3 * (p.half_thickness_m - bone) / (n + 1)
    left = water - got.evaporated_kg_m2[:, 0]
    wet = left > 2e-4 * water
    assert got.core_temp_c[wet, 0].max() <= boiling_temp_c(101325.0) + 0.01
    assert not wet[-1]
    assert abs(left[-1]) < 1.1e-4 * water
    assert got.core_temp_c[-1, 0] > 165.0
    assert got.report.energy_gap_frac < 1e-9
    assert got.report.forced == 0


def test_a_slab_dries_through_nearly_as_fast_as_the_closed_form():
    """Quasi-steady slab at boiling: t = L w (a^2/2k + a/h)/(T_oil - T_b); the standing front is at most a
    tenth faster.
    """
    boiling = boiling_temp_c(101325.0)
    got = run(boiling_slab(2400.0, a=0.004, water_kg_m3=500.0))
    exact = latent_heat_j_kg(boiling) * 500.0 * (0.004**2 / 0.2 + 0.004 / 400.0) / (180.0 - boiling)
    dry = float(got.time_s[np.argmax(got.evaporated_kg_m2[:, 0] > 0.999 * 0.004 * 500.0)])
    assert 0.9 * exact < dry < exact


def test_a_crust_past_half_of_a_piece_is_told_with_its_share(kitchen):
    """Tenders fried for half an hour: the note names the cut and the share; the usual program has no such
    note.
    """
    program = next(p for p in kitchen.programs if p.product == "tenders")
    usual, long = (
        make_plan(kitchen, replace(program, stages=(s,)))
        for s in (program.stages[0], replace(program.stages[0], duration_s=2400.0))
    )
    assert "dried_through" not in {note.kind for note in fry.simulate(usual).notes}
    told = next(note for note in fry.simulate(long).notes if note.kind == "dried_through")
    coats = [piece_class(long, kind) for kind in long.kinds]
    # a dry coat is crust too; the front stops at 0.7
    assert (
        0.5 < told.values["crust_frac"] <= 0.7 + max(p.coat_thickness_m / p.half_thickness_m for p in coats)
    )
    assert told.values["piece"] == "Tender"
