"""The water book of a piece, its coat, the headspace at closing and the piece in air."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.catalog import load
from frywright.physics.inputs import CLOSE, ROUTINE, Lid, Span
from frywright.physics.pack import PIECE_ROW
from frywright.physics.properties import meat, meat_with_bone
from frywright.physics.solve import Cook, Prescribed, march_cooks, run
from frywright.physics.yields import yields_of
from tests.conftest import four_classes, open_cook, piece, pressure_cook, vat

WET = {
    "drip_frac": 0.3,
    "coat_thickness_m": 1e-3,
    "coat_heat_j_m2k": 1600.0,
    "still_reference_k": 65.0,
    "vapour_diffusivity_m2_s": 3e-6,
}


SETTLED = replace(ROUTINE, passes=40, steady_m=1e-13)
"""Inner passes until the front stands still: then what the front's book and the cells say is one number."""


def wet(cook: Cook, **changes) -> Cook:
    """The cook with drip, coat, a falling still coefficient and vapour after the lift."""
    return replace(cook, pieces=[replace(p, **{**WET, **changes}) for p in cook.pieces])


@pytest.mark.parametrize(
    "cook", [wet(open_cook(600.0)), wet(pressure_cook(480.0, 60.0)), pressure_cook(480.0, 60.0)]
)
def test_every_gram_is_in_the_book(cook):
    """Given off + free + held is the water at the drop; what is held is what the cells hold."""
    done = march_cooks([cook], SETTLED)
    row = dict(zip(PIECE_ROW, done.packed.piece.T, strict=True))
    _, evaporated, free, held, _ = done.piece[0].T
    start = row["film"] + row["water"] * row["face_volume"]
    assert evaporated + free + held == pytest.approx(start, rel=1e-12)
    _, phi, sizes = done.cells[0].swapaxes(0, 1)
    assert row["water"] * (sizes * phi).sum(axis=1) == pytest.approx(held, rel=1e-9)
    assert free.min() > -1e-6


def test_flash_is_taken_from_the_piece():
    """After a vent the dry crust holds no more water than is left: crust volume x water = given off less
    coating.
    """
    cook = pressure_cook(480.0, 60.0)
    cook = replace(
        cook, pieces=[replace(p, shape_n=1.0) for p in cook.pieces]
    )  # volumes are exact for whole n
    got = run(cook, SETTLED)
    for i, p in enumerate(cook.pieces):
        a, n = p.half_thickness_m, p.shape_n
        front = a - got.crust_m[-1, i]
        dried = (a ** (n + 1) - front ** (n + 1)) / ((n + 1) * a**n)
        assert p.water_kg_m3 * dried == pytest.approx(got.evaporated_kg_m2[-1, i] - p.film_kg_m2, rel=1e-6)


def test_a_poached_piece_loses_its_drip_only():
    """In oil at the boiling point nothing evaporates; after an hour the meat has let go of L(100 degC) of its
    water.
    """
    p = piece(film_kg_m2=0.0, drip_frac=0.3)
    told = Prescribed(oil_temp_c=[(0.0, 99.9)], pressure_pa=[(0.0, 101325.0)])
    got = run(
        Cook(vat=vat(), pieces=[p], spans=[Span(duration_s=5400.0, set_c=99.9)], prescribed=told), CLOSE
    )
    water = p.water_kg_m3 * p.half_thickness_m / (p.shape_n + 1)
    share = 0.3 / (1.0 + np.exp(-0.205 * (got.core_temp_c[-1, 0] - 65.3)))
    assert got.evaporated_kg_m2[-1, 0] == 0.0
    assert got.film_kg_m2[-1, 0] == pytest.approx(share * water, rel=0.01)


def test_a_thicker_coat_keeps_water_in_and_hides_the_meat():
    """The coat's outside passes the boiling point while it dries; a thicker one lets less water go."""
    thin, thick = (run(wet(open_cook(600.0), coat_thickness_m=d)) for d in (0.3e-3, 1.2e-3))
    assert np.all(thick.evaporated_kg_m2[-1] < thin.evaporated_kg_m2[-1])
    early = thick.time_s < 120.0
    assert thick.surface_temp_c[early, 0].max() > 105.0
    assert thick.crust_m[early, 0].max() == 0.0


def test_steam_from_before_the_lid_closes_is_under_it():
    """Share of air at closing = exp(-steam given off / headspace), steam at the headspace's temperature."""
    cook = pressure_cook(120.0)
    before = Span(duration_s=40.0, set_c=165.0)
    cook = replace(cook, spans=[before, *cook.spans])
    got = run(cook)
    closed = int(np.flatnonzero(got.span == 1)[0])
    steam_kg = sum(p.area_m2 * e for p, e in zip(cook.pieces, got.evaporated_kg_m2[closed - 1], strict=True))
    v = cook.vat
    volume = steam_kg * 461.526 * (v.head_temp_c + 273.15) / v.atmosphere_pa
    assert volume > 0.1 * v.head_volume_m3
    steam_pa = v.atmosphere_pa * (1.0 - np.exp(-volume / v.head_volume_m3))
    assert got.steam_pa[closed] == pytest.approx(steam_pa, rel=0.05)


def test_a_small_load_needs_minutes_for_its_pressure():
    """One class in four of the load: full pressure comes at least twice as late as for the whole load."""
    whole = replace(pressure_cook(900.0), pieces=four_classes())
    small = replace(whole, pieces=[replace(p, mass_kg=0.25 * p.mass_kg) for p in whole.pieces])

    def full_s(cook):
        cook = replace(cook, spans=[Span(duration_s=40.0, set_c=165.0), *cook.spans])
        got = run(cook)
        high = got.pressure_pa - cook.vat.atmosphere_pa > 0.9 * cook.vat.relief_gauge_pa
        return float(got.time_s[np.argmax(high)]) if high.any() else np.inf

    assert full_s(small) > 2.0 * full_s(whole)


def test_what_evaporates_in_air_cools_the_piece():
    """The core of a lifted piece rises less the wetter its way out is; none evaporates with the way
    closed.
    """
    spans = [Span(duration_s=600.0, set_c=165.0), Span(duration_s=400.0, set_c=165.0, lid=Lid.REST)]

    def rise(diffusivity):
        cook = replace(wet(open_cook(600.0), vapour_diffusivity_m2_s=diffusivity), spans=spans)
        got = run(cook)
        lift = int(np.flatnonzero(got.span == 1)[0]) - 1
        return (
            got.core_temp_c[:, 0].max() - got.core_temp_c[lift, 0],
            got.evaporated_kg_m2[-1, 0] - got.evaporated_kg_m2[lift, 0],
        )

    (dry, none), (damp, some), (moist, more) = (rise(d) for d in (0.0, 1e-6, 1e-5))
    assert dry > damp > moist
    assert none < 1e-3 and 0 < some < more


def test_bone_neither_gives_water_nor_counts_as_meat():
    """Mixed by volume: a piece holds the meat's water only, and both heats; equal area a kilogram edible,
    equal loss.
    """
    cut = load.cuts()["thigh"]
    food = meat(load.compositions()[cut.composition])
    beta = cut.bone_mass_frac
    mixed = meat_with_bone(food, beta)
    assert mixed.water_kg_m3 / mixed.density_kg_m3 == pytest.approx((1.0 - beta) * food.water_frac)
    bone_m3 = beta / 1300.0
    heat = (1.0 - beta) * food.heat_capacity_j_kgk[0] + bone_m3 * 2.4e6
    assert mixed.heat_capacity_j_kgk[0] == pytest.approx(heat)
    assert 1.0 / mixed.density_kg_m3 == pytest.approx(bone_m3 + (1.0 - beta) / food.density_kg_m3)
    at_lift = {"evaporated_kg_m2": 2.4, "core_c": np.array([80.0]), "core_share": np.array([1.0])}
    boned, bare = replace(cut, bone_mass_frac=0.3), replace(cut, bone_mass_frac=0.0)
    with_bone = yields_of(boned, load.coatings()["dusting"], area_m2_kg=0.14 * 0.7, **at_lift)
    without = yields_of(bare, load.coatings()["dusting"], area_m2_kg=0.14, **at_lift)
    assert with_bone.water_lost_edible_frac == pytest.approx(without.water_lost_edible_frac)
    assert with_bone.edible_yield_frac == pytest.approx(without.edible_yield_frac)
    assert with_bone.yield_frac > without.yield_frac  # bone weighs in and out


def test_the_books_of_weight_close():
    """Raw edible part = what is left of it + water + fat; breaded weight in = breaded weight out + water +
    fat - oil.
    """
    coating, cut = load.coatings()["dredge"], load.cuts()["thigh"]
    cores, share = np.array([50.0, 80.0]), np.array([0.25, 0.75])
    y = yields_of(cut, coating, area_m2_kg=0.11, evaporated_kg_m2=2.0, core_c=cores, core_share=share)
    food = load.compositions()[cut.composition].fractions
    film = 0.11 * coating.film_kg_m2
    breaded = 1.0 + 0.11 * coating.pickup_frac / 0.10
    assert y.moisture_loss_frac * breaded == pytest.approx(0.22)
    assert y.water_lost_edible_frac * food["water"] * (1 - cut.bone_mass_frac) == pytest.approx(0.22 - film)
    assert y.rendered_raw_frac == pytest.approx(0.37 * 0.75 * food["fat"] * (1 - cut.bone_mass_frac))
    assert y.yield_frac * breaded == pytest.approx(breaded - 0.22 - y.rendered_raw_frac + y.uptake_raw_frac)


def test_fat_leaves_by_cut_as_roasted_pairs_say_and_else_by_the_tissue():
    """USDA SR28, fat over protein raw and roasted (05100/05103 wing, 05066/05069 drumstick, 05091/05094
    thigh); a cut without a pair of its own follows the dark or light meat.
    """
    coating = load.coatings()["dredge"]
    at_lift = {"evaporated_kg_m2": 2.0, "core_c": np.array([80.0]), "core_share": np.array([1.0])}

    def rendered(cut):
        food = load.compositions()[cut.composition].fractions
        y = yields_of(cut, coating, area_m2_kg=0.11, **at_lift)
        return y.rendered_raw_frac / (food["fat"] * (1 - cut.bone_mass_frac))

    pairs = {
        "wing": (12.85 / 17.52, 16.9 / 23.8),
        "drum": (9.20 / 18.08, 10.2 / 23.4),
        "thigh": (16.61 / 16.52, 14.71 / 23.26),
    }
    for key, (raw, roasted) in pairs.items():
        assert rendered(load.cuts()[key]) == pytest.approx(1.0 - roasted / raw, abs=0.005)
    assert rendered(replace(load.cuts()["thigh"], rendered_frac=None)) == pytest.approx(0.44)
