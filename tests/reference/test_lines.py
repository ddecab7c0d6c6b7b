"""The reference on its own: books, closed forms and grid, so that it can judge the engine."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from frywright.physics.inputs import Lid, Span
from frywright.physics.solve import Cook
from tests.conftest import four_classes, pressure_cook, vat
from tests.reference.line_system import R_STEAM, saturated_vapour_kg_m3
from tests.reference.lines import solve

NEW = {
    "drip_frac": 0.30,
    "coat_thickness_m": 0.001,
    "coat_heat_j_m2k": 1800.0,
    "still_reference_k": 65.0,
    "vapour_diffusivity_m2_s": 3e-6,
}


def piece(**changes):
    return replace(four_classes()[3], **{**NEW, **changes})


def open_then_rest(fry_s: float, rest_s: float, one, **changes) -> Cook:
    spans = [Span(duration_s=fry_s, set_c=165.0), Span(duration_s=rest_s, set_c=165.0, lid=Lid.REST)]
    return Cook(vat=vat(band_k=6.0, **changes), pieces=[one], spans=spans)


def calm(one):
    """Warm through at 90 degC in oil of 90 degC: nothing boils."""
    one = replace(one, start_temp_c=90.0, gain_h_j_kgk=0.0)
    cook = Cook(
        vat=vat(oil_start_c=90.0, heater_w=0.0, loss_w_k=0.0, band_k=6.0),
        pieces=[one],
        spans=[Span(duration_s=90.0, set_c=0.0)],
    )
    return cook, solve(cook, 16, 6)


@pytest.mark.slow  # the reference alone takes seconds to load
def test_vapour_density_against_iapws_95():
    """Saturation pressure within 0.03 % of CoolProp's IAPWS-95 from 20 to 121 degC."""
    props = pytest.importorskip("CoolProp.CoolProp")
    for temp in (20.0, 40.0, 60.0, 80.0, 100.0, 121.0):
        pressure = saturated_vapour_kg_m3(temp) * R_STEAM * (temp + 273.15)
        assert pressure == pytest.approx(props.PropsSI("P", "T", temp + 273.15, "Q", 0, "Water"), rel=3e-4)


@pytest.mark.slow
@pytest.mark.parametrize("lid", ["open and rest", "late lid, vent and rest"])
def test_books_close_and_grid_converges(lid):
    """All new terms at once: water to 2e-5 kg/m2, heat to 1e-4, half the cells move the core by 0.04 K at
    most.
    """
    cook = open_then_rest(420.0, 300.0, piece())
    if lid != "open and rest":
        spans = [Span(duration_s=40.0, set_c=165.0), *pressure_cook(300.0, 60.0).spans]
        cook = replace(cook, spans=spans)
    fine, coarse = solve(cook, 64, 16), solve(cook, 32, 8)
    assert np.max(np.abs(fine["water_gap_kg_m2"])) < 2e-5
    assert np.max(np.abs(fine["heat_gap_j_m2"])) < 1e-4 * np.max(fine["heat_in_j_m2"])
    t = np.linspace(5.0, min(fine["time_s"][-1], coarse["time_s"][-1]), 500)
    for curve, most in (("core_temp_c", 0.04), ("crust_m", 3e-6), ("evaporated_kg_m2", 5e-4)):
        gap = np.interp(t, fine["time_s"], fine[curve][:, 0]) - np.interp(
            t, coarse["time_s"], coarse[curve][:, 0]
        )
        assert np.max(np.abs(gap)) < most, curve


def test_drip_of_an_even_piece_is_an_exponential():
    """At one temperature T the meat lets go w V L(T) (1 - exp(-t/tau)), all of it free, none evaporated."""
    cook, got = calm(piece(drip_lag_s=30.0, coat_thickness_m=0.0, coat_heat_j_m2k=0.0, still_reference_k=0.0))
    p = cook.pieces[0]
    share = 0.30 / (1.0 + math.exp(-0.205 * (90.0 - 65.3)))
    held = p.water_kg_m3 * p.half_thickness_m / (p.shape_n + 1.0)
    expected = held * share * (1.0 - math.exp(-90.0 / 30.0))
    assert got["dripped_kg_m2"][-1, 0] == pytest.approx(expected, rel=1e-4)
    assert got["film_kg_m2"][-1, 0] == pytest.approx(p.film_kg_m2 + expected, rel=1e-4)
    assert got["evaporated_kg_m2"][-1, 0] == 0.0


def test_dry_coat_stands_in_series_with_the_surface():
    """Film gone, meat not yet boiled away: heat (T_oil - T_b)/(1/h + d/k) less what warms the piece."""
    bare = piece(drip_frac=0.0, coat_heat_j_m2k=0.0, still_reference_k=0.0, gain_h_j_kgk=0.0)
    got = solve(open_then_rest(900.0, 1e-3, bare), 24, 8)
    i = int(np.searchsorted(got["time_s"], 880.0))
    oil, skin, h = got["oil_temp_c"][i], got["surface_temp_c"][i][0], got["htc_w_m2k"][i, 0]
    heat = np.gradient(got["heat_in_j_m2"][:, 0], got["time_s"])[i]
    assert heat == pytest.approx(h * (oil - skin), rel=0.01)
    beneath = skin - heat * bare.coat_thickness_m / bare.coat_conductivity_w_mk
    crust = got["crust_m"][i, 0]
    a, n = bare.half_thickness_m, bare.shape_n
    grown = a / (1.0 - n) * (1.0 - (1.0 - crust / a) ** (1.0 - n))  # conduction length of the curved crust
    quasi = beneath - heat * grown / bare.crust_conductivity_w_mk
    assert quasi == pytest.approx(100.0, abs=3.0)  # 3 K: heat that warms crust and vapour on the way


def test_wet_coat_warms_before_it_boils():
    """Solids and water of the coat hold back the first boiling: heat stored is (C + 4180 film) times the
    rise.
    """
    plain = solve(open_then_rest(30.0, 1e-3, piece(coat_heat_j_m2k=0.0)), 24, 6)
    stored = solve(open_then_rest(30.0, 1e-3, piece()), 24, 6)
    first = [float(r["time_s"][np.argmax(r["evaporated_kg_m2"][:, 0] > 1e-3)]) for r in (plain, stored)]
    heat = np.interp(first[1], stored["time_s"], stored["heat_in_j_m2"][:, 0])
    least = (1800.0 + 4180.0 * 0.3) * (99.97 - 4.0)
    assert first[1] > first[0] + 2.0
    assert heat > least


def test_still_coefficient_follows_the_fourth_root():
    """h = still_h (dT/ref)^(1/4) once lag and boiling are out of the way."""
    cook, got = calm(piece(drip_frac=0.0, coat_heat_j_m2k=0.0, still_reference_k=50.0, lag_h_s=0.1))
    cook = replace(cook, pieces=[replace(cook.pieces[0], start_temp_c=20.0)])
    got = solve(cook, 16, 6)
    gap = got["oil_temp_c"][-1] - got["surface_temp_c"][-1][0]
    assert got["htc_w_m2k"][-1, 0] == pytest.approx(260.0 * (gap / 50.0) ** 0.25, rel=2e-3)


def test_wet_piece_in_air_cools_to_its_wet_bulb():
    """Long after the lift h (T_air - T) = L k_m (rho_sat(T) - rho_air), with L where water boils."""
    wet = piece(drip_frac=0.0, coat_thickness_m=0.0, film_kg_m2=4.5)
    got = solve(open_then_rest(60.0, 2 * 3600.0, wet), 24, 6)
    room, temp = vat(), got["surface_temp_c"][-1][0]
    took = room.air_h_w_m2k * (room.air_temp_c - temp)
    gave = 2256.5e3 * room.air_transfer_m_s * (saturated_vapour_kg_m3(temp) - room.air_vapour_kg_m3)
    assert temp < room.air_temp_c
    assert took == pytest.approx(gave, rel=0.02)


def test_steam_of_a_late_lid_stays():
    """Share of steam at closing by hand from the water given off; a lid closed at the drop starts on air."""
    late = replace(
        open_then_rest(1.0, 1.0, piece()),
        spans=[Span(duration_s=40.0, set_c=165.0), Span(duration_s=0.0, set_c=165.0, lid=Lid.PRESSURE)],
    )
    got = solve(late, 24, 6)
    kg = got["evaporated_kg_m2"][-1, 0] * late.pieces[0].area_m2
    volume = kg * R_STEAM * (115.0 + 273.15) / 101325.0
    assert got["steam_share_at_closing"] == pytest.approx(1.0 - math.exp(-volume / 0.02), rel=1e-9)
    assert 0.05 < got["steam_share_at_closing"] < 1.0
    at_once = solve(replace(late, spans=late.spans[1:]), 24, 6)
    assert at_once["steam_share_at_closing"] == 0.0


def test_a_span_can_end_by_the_clock():
    """ends_at_s counts from the drop, whatever the spans before took."""
    cook = open_then_rest(20.0, 1.0, piece())
    spans = [
        replace(cook.spans[0], duration_s=20.0),
        replace(cook.spans[0], duration_s=999.0, ends_at_s=50.0),
    ]
    assert solve(replace(cook, spans=spans), 16, 6)["ends_s"] == [20.0, 50.0]
