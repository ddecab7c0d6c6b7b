"""What stands around the march: grids, properties, notes and the end of a cook, by closed form or by hand."""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest
from CoolProp.CoolProp import PropsSI

from frywright.catalog import load
from frywright.model.calibration import Calibration
from frywright.model.errors import InputError, SolveError
from frywright.model.food import Composition
from frywright.physics import fry, plan, solve
from frywright.physics.colour import crust_hex, lab_hex
from frywright.physics.fry import FULL_PRESSURE_SHARE, browning
from frywright.physics.grid import FLOOR_PAST_BONE, build, cell_places, core_faces
from frywright.physics.inputs import ROUTINE, Lid, Precision, Span, quadratic
from frywright.physics.lift import lift_of
from frywright.physics.plan import calibrated_cut, drip_of, make_plan, piece_class, question, solids_kg_m2
from frywright.physics.properties import (
    BONE_CONDUCTIVITY_W_MK,
    BONE_DENSITY_KG_M3,
    BONE_HEAT_J_M3K,
    meat,
    meat_with_bone,
)
from frywright.physics.solve import check, run, steps_of
from frywright.physics.steam import boiling_temp_c, saturation_pa
from frywright.physics.vent import stretch_of
from frywright.physics.yields import yields_of
from tests.conftest import open_cook, piece


@pytest.mark.parametrize("temp_c", [5.0, 60.0, 99.97, 121.0, 180.0])
def test_saturated_steam_is_the_one_of_iapws(temp_c):
    """CoolProp's IF97, and back again by the other equation of the same region."""
    assert saturation_pa(temp_c) == pytest.approx(
        PropsSI("P", "T", temp_c + 273.15, "Q", 0, "IF97::Water"), rel=1e-6
    )
    assert boiling_temp_c(saturation_pa(temp_c)) == pytest.approx(temp_c, abs=1e-5)


@pytest.mark.parametrize("n", [0.0, 1.0, 2.0, 0.7])
@pytest.mark.parametrize("bone", [0.0, 0.35])
def test_cells_of_a_grid_have_the_volumes_and_conductances_of_their_shells(n, bone):
    """With the front at the surface: shares of r^(n+1) between the faces, area over distance at each face.
    Without a bone the same at any front; with one a cubic from 1.05 bone radii out.
    """
    grid, count = build.__wrapped__(n, bone, 24, 1.3), 24
    inside, cells, ratio = grid.flat[: 3 * count].reshape(3, count)
    inner = 6 if bone else 0
    eta = core_faces(count - inner, 1.3)
    edges = bone + (1.0 - bone) * eta
    volume = edges ** (n + 1) - bone ** (n + 1)
    share = volume / volume[-1]
    assert inside[inner:] == pytest.approx(share[:-1]) and cells[inner:] == pytest.approx(np.diff(share))
    assert ratio[inner:] == pytest.approx(share[:-1] / np.diff(share))
    shape = grid.flat[3 * count :]
    if not bone:
        places = cell_places(eta, n)
        apart = np.r_[np.diff(places), 1.0 - places[-1]]
        assert shape == pytest.approx(np.r_[0.0, eta[1:] ** n / apart])
        assert grid.meat_half_frac == 0.0
        return
    still = np.arange(inner) / inner
    assert inside[:inner] == pytest.approx(still ** (n + 1))
    assert cells[:inner] == pytest.approx(np.diff(np.r_[still, 1.0] ** (n + 1)))
    cubic = shape.reshape(count + 1, 4)
    for s in (FLOOR_PAST_BONE * bone, 0.5, 0.8, 1.0):
        at = cubic @ s ** np.arange(4)
        faces = (bone ** (n + 1) + share * (s ** (n + 1) - bone ** (n + 1))) ** (1.0 / (n + 1))
        places = cell_places(faces, n)
        apart = np.r_[np.diff(places), s - places[-1]]
        assert at[1:inner] == pytest.approx((bone * still[1:]) ** n * inner / bone)
        assert at[inner] == pytest.approx(bone**n)
        assert at[inner + 1 :] == pytest.approx(faces[1:] ** n * (s - bone) / apart, rel=0.01)
    first = bone + (1.0 - bone) * eta[:2]
    assert grid.meat_half_frac == pytest.approx((cell_places(first, n)[0] - bone) / (1.0 - bone))


@pytest.mark.parametrize("n", [0.0, 1.0, 2.0, 0.7])
def test_areas_volumes_and_centres_of_a_grid(n):
    """Cubics of s^n and s^(n+1)/(n+1); a parabola's own centre from the means of its two innermost cells; a
    cell is read three tenths of the way from its middle to its centroid.
    """
    grid = build.__wrapped__(n, 0.0, 24, 1.3)
    for s in (0.3, 0.6, 1.0):
        assert grid.area @ s ** np.arange(4) == pytest.approx(s**n, rel=2e-3)
        assert grid.volume @ s ** np.arange(4) == pytest.approx(s ** (n + 1) / (n + 1), rel=2e-3)
    r = core_faces(24, 1.3)[:3]
    means = 7.0 + 5.0 * (n + 1) / (n + 3) * np.diff(r ** (n + 3)) / np.diff(r ** (n + 1))
    assert means[0] - grid.centre_weight_n * (means[1] - means[0]) == pytest.approx(7.0)
    shell = np.array([0.2, 0.6])
    fine = np.linspace(0.2, 0.6, 20001)
    centroid = np.trapezoid(fine ** (n + 1), fine) / np.trapezoid(fine**n, fine)
    assert cell_places(shell, n)[0] == pytest.approx(0.4 + 0.3 * (centroid - 0.4), abs=1e-7)
    assert core_faces(4, 2.0).tolist() == [0.0, 1 - 0.75**2, 0.75, 1 - 0.25**2, 1.0]


def test_meat_and_bone_share_out_what_each_brings_by_volume():
    """A kilogram with a fifth of bone: mass, heat and conductivity add up."""
    food = meat(Composition(key="x", title="x", water_frac=0.7, protein_frac=0.2, fat_frac=0.1))
    both = meat_with_bone(food, 0.2)
    bone, flesh = 0.2 / BONE_DENSITY_KG_M3, 0.8 / food.density_kg_m3
    assert both.density_kg_m3 == pytest.approx(1.0 / (bone + flesh))
    for temp in (0.0, 60.0):
        heat = sum(c * temp**i for i, c in enumerate(both.heat_capacity_j_kgk))
        own = sum(c * temp**i for i, c in enumerate(food.heat_capacity_j_kgk))
        assert heat == pytest.approx(flesh * food.density_kg_m3 * own + bone * BONE_HEAT_J_M3K)
        conducts = sum(c * temp**i for i, c in enumerate(both.conductivity_w_mk))
        own = sum(c * temp**i for i, c in enumerate(food.conductivity_w_mk))
        assert conducts == pytest.approx((flesh * own + bone * BONE_CONDUCTIVITY_W_MK) / (bone + flesh))
    assert both.water_frac == pytest.approx(0.8 * food.water_frac)
    assert meat_with_bone(food, 0.0) is food


def test_fractions_of_a_composition_sum_to_one():
    food = Composition(key="x", title="x", water_frac=0.7, protein_frac=0.2, fat_frac=0.1, ash_frac=0.02)
    assert food.fractions["water"] == pytest.approx(0.7 / 1.02)
    assert sum(food.fractions.values()) == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("curve", "found"),
    [
        (0.5, (0.5, 0.0, 0.0)),
        ((0.4, 1e-3), (0.4, 1e-3, 0.0)),
        ((0.4, 1e-3, -1e-6), (0.4, 1e-3, -1e-6)),
        ([(0.0, 2.0), (100.0, 3.0)], (2.0, 0.01, 0.0)),
        ([(0.0, 2.0), (50.0, 2.75), (100.0, 4.0)], (2.0, 0.01, 1e-4)),
        ([(20.0, 3.0)], (3.0, 0.0, 0.0)),
    ],
)
def test_a_property_is_a_number_coefficients_or_a_table(curve, found):
    assert quadratic(curve, "k") == pytest.approx(found, abs=1e-12)


@pytest.mark.parametrize(
    "curve",
    [
        "x",
        (),
        (1.0,) * 4,
        [(0.0, 1.0), (1.0, -1.0)],
        [(0.0, 1.0, 2.0)],
        [(0.0, float("nan"))],
        [(0.0, 1.0), (1.0, 9.0), (2.0, 1.0), (3.0, 9.0)],
    ],
)
def test_a_property_that_is_none_is_refused(curve):
    with pytest.raises(InputError):
        quadratic(curve, "k")


def test_browning_is_first_order_and_begins_at_its_least_temperature():
    """Dry at a steady 160 degC for 300 s: end (1 - exp(-k t)); nothing below the least."""
    t = load.table("kinetics/browning.toml")
    rate = t["rate_per_s"] * np.exp(-t["activation_j_mol"] / (8.314462618 * (160.0 + 273.15)))
    time = np.array([0.0, 100.0, 300.0])
    assert browning(time, np.full(3, 160.0)) == pytest.approx(
        t["end_n"] * (1 - np.exp(-300.0 * rate)), rel=1e-6
    )
    assert browning(time, np.full(3, t["low_c"] - 0.1)) == 0.0 < browning(time, np.full(3, t["low_c"]))
    half = np.array([t["low_c"] - 1.0, 160.0, 160.0])
    assert browning(time, half) == pytest.approx(t["end_n"] * (1 - np.exp(-250.0 * rate)), rel=1e-6)


def test_colours_are_those_of_the_standards_tables():
    """White, black and sRGB's red and blue from their L*a*b* values under D65; a browning from raw to end."""
    for lab, told in (
        ((100.0, 0.0, 0.0), "#ffffff"),
        ((0.0, 0.0, 0.0), "#000000"),
        ((53.2408, 80.0925, 67.2032), "#ff0000"),
        ((32.297, 79.1875, -107.8602), "#0000ff"),
        ((53.585, 0.0, 0.0), "#808080"),
        ((3.0, 0.0, 0.0), "#0b0b0b"),
    ):
        shown = [int(lab_hex(np.array(lab))[i : i + 2], 16) for i in (1, 3, 5)]
        assert np.abs(np.subtract(shown, [int(told[i : i + 2], 16) for i in (1, 3, 5)])).max() <= 1
    t = load.table("kinetics/browning.toml")
    raw, end = np.array(t["raw_lab"]), np.array(t["end_lab"])
    for share, lab in ((-0.2, raw), (0.5, 0.5 * (raw + end)), (1.5, end)):
        assert crust_hex(share * t["end_n"]) == lab_hex(lab)


def test_a_fitted_cut_is_brought_to_its_own_weight(kitchen):
    """Half thickness by the cube root of the weight; a bone never fills more than its share."""
    cut = replace(kitchen.cut("drum"), reference_mass_kg=0.16, bone_radius_m=0.006, area_factor_n=1.2)
    made = Calibration(
        cut="drum",
        coating="dredge",
        lid="open",
        half_thickness_m=0.01,
        shape_n=0.8,
        reference_mass_kg=0.02,
        pieces_count=3,
        mass_low_kg=0.1,
        mass_high_kg=0.3,
        oil_low_c=150.0,
        oil_high_c=165.0,
        start_low_c=3.0,
        start_high_c=4.0,
        error_k=2.0,
    )
    fitted = calibrated_cut(cut, made)
    assert (fitted.half_thickness_m, fitted.shape_n) == (pytest.approx(0.02), 0.8)
    assert (fitted.bone_radius_m, fitted.area_factor_n, fitted.geometry_origin) == (0.006, 1.2, "calibrated")
    small = calibrated_cut(cut, replace(made, reference_mass_kg=0.16, area_factor_n=1.5, drip_frac=0.2))
    assert small.bone_radius_m == pytest.approx(plan.BONE_SHARE * 0.01)
    assert (small.area_factor_n, small.drip_frac) == (1.5, 0.2)


def test_pieces_of_a_load_scale_with_the_cube_root_of_their_weight(kitchen):
    """Eight times the weight is twice the size; a heavy one of its ratio next to massless; drip by cut."""
    made = make_plan(kitchen, kitchen.program("bone-in alder"))
    kind = next(k for k in made.kinds if k.cut.bone_radius_m == 0.0 and not k.heavy)
    one, big = (piece_class(made, replace(kind, piece_mass_kg=f * kind.piece_mass_kg)) for f in (1.0, 8.0))
    assert big.half_thickness_m == pytest.approx(2.0 * one.half_thickness_m)
    assert one.coat_heat_j_m2k == pytest.approx(
        solids_kg_m2(made.coating) * load.table("kinetics/coat.toml")["solids_heat_j_kgk"]
    )
    coat = load.table("kinetics/coat.toml")
    whole = made.coating.pickup_frac / coat["pickup_area_m2_kg"]
    assert solids_kg_m2(made.coating) == pytest.approx(whole - made.coating.film_kg_m2)
    assert solids_kg_m2(replace(made.coating, pickup_frac=0.0)) == 0.0
    heavy = next(k for k in made.kinds if k.heavy and k.cut.key == kind.cut.key)
    assert heavy.piece_mass_kg == pytest.approx(kind.piece_mass_kg * kind.cut.heavy_ratio_n)
    assert heavy.class_mass_kg == pytest.approx(plan.TRACER_SHARE * kind.class_mass_kg)
    assert made.load_kg == pytest.approx(sum(k.class_mass_kg for k in made.kinds if not k.heavy))
    cut = replace(kind.cut, drip="light", drip_frac=0.3, evaporable_frac=0.75)
    row = load.table("kinetics/drip.toml")["light"]
    assert drip_of(cut)["drip_frac"] == pytest.approx(0.4)
    assert drip_of(replace(cut, drip_frac=0.6, evaporable_frac=0.5))["drip_frac"] == 1.0
    assert drip_of(replace(cut, drip_frac=None))["drip_frac"] == pytest.approx(row["most_frac"] / 0.75)
    assert drip_of(replace(cut, drip="none")) == {}


def test_yields_add_up_to_what_went_in():
    """Raw meat, film and solids in; water, fat, oil and what is left out: by hand for a cut half bone."""
    cut = replace(load.cuts()["drum"], bone_mass_frac=0.4, rendered_frac=0.5)
    coating = replace(load.coatings()["dredge"], film_kg_m2=0.3, oil_per_solids_n=0.5)
    fat, water = (load.compositions()[cut.composition].fractions[n] for n in ("fat", "water"))
    solids = 0.2 * solids_kg_m2(coating)
    told = {
        "area_m2_kg": 0.2,
        "core_c": np.array([50.0, 60.0, 61.0]),
        "core_share": np.array([0.2, 0.3, 0.5]),
    }
    found = yields_of(cut, coating, evaporated_kg_m2=1.0, **told)
    breaded, rendered = 1.06 + solids, 0.5 * 0.5 * fat * 0.6
    assert found.moisture_loss_frac == pytest.approx(0.2 / breaded)
    assert found.water_lost_edible_frac == pytest.approx((0.2 - 0.06) / (0.6 * water))
    assert found.rendered_raw_frac == pytest.approx(rendered)
    assert found.uptake_raw_frac == pytest.approx(0.5 * solids)
    assert found.uptake_frac == pytest.approx(0.5 * solids / breaded)
    assert found.yield_frac == pytest.approx((1.0 - 0.14 - rendered + 1.5 * solids) / breaded)
    assert found.edible_yield_frac == pytest.approx((0.6 - 0.14 - rendered + 1.5 * solids) / 0.6)
    barely = yields_of(cut, coating, evaporated_kg_m2=0.1, **told)
    assert barely.water_lost_edible_frac == 0.0
    assert barely.yield_frac == pytest.approx((1.0 - rendered + 1.5 * solids + 0.04) / breaded)


def marched(lids: list[Lid]) -> SimpleNamespace:
    """Ten steps of one second a span."""
    time = np.arange(0.0, 10.0 * len(lids) + 1.0)
    return SimpleNamespace(time_s=time, span=np.clip(np.ceil(time / 10.0) - 1, 0, None).astype(int))


@pytest.mark.parametrize(
    ("runs_on", "credit_s", "clock_s", "earliest"),
    [
        (False, 99.0, 0.0, 40.0),
        (False, 4.0, 0.0, 34.0),
        (True, 99.0, 35.0, 35.0),
        (True, 4.0, 35.0, 35.0),
        (True, 4.0, 20.0, 24.0),
        (True, 4.0, 77.0, 40.0),
    ],
)
def test_the_earliest_lift_counts_no_more_of_a_vent_than_was_described(runs_on, credit_s, clock_s, earliest):
    """Shut to 20 s, a vent of ten, a last stage of ten. A clock that waits gives back what of the vent does
    not count; one that runs on ends at its own time, or where the vent that counts ends.
    """
    lids = [Lid.OPEN, Lid.PRESSURE, Lid.VENT, Lid.OPEN, Lid.REST]
    cook = SimpleNamespace(spans=[Span(duration_s=10.0, set_c=165.0, lid=lid) for lid in lids])
    told = SimpleNamespace(runs_on=runs_on, vent_credit_s=credit_s, program=SimpleNamespace(clock_s=clock_s))
    found = lift_of(told, cook, marched(lids))
    assert (found.lift_s, found.vent_s, found.vent_start_s) == (40.0, 10.0, 20.0)
    assert found.earliest_s == earliest
    assert stretch_of(marched(lids), cook, Lid.VENT) == (20.0, 30.0)
    open_lids = [Lid.OPEN, Lid.REST]
    short = SimpleNamespace(spans=[cook.spans[0], cook.spans[-1]])
    plain = lift_of(told, short, marched(open_lids))
    assert (plain.lift_s, plain.earliest_s, plain.vent_s, plain.vent_start_s) == (10.0, 10.0, 0.0, None)


def test_steps_allowed_grow_with_the_time_and_end():
    assert steps_of(np.array([0.0, 1600.0]), ROUTINE).tolist() == [4000.0, 4250.0]
    assert int(steps_of(1e9, ROUTINE)) == 200_000


def test_a_march_that_did_not_end_is_refused_whichever_cook_it_was(monkeypatch):
    """Among others, and by a temperature that is none as well."""
    cooks = [open_cook(s) for s in (60.0, 90.0, 120.0)]
    done = solve.march_cooks(cooks, ROUTINE)
    check(done)
    done.cook[1, solve.FINAL_COOK.index("status")] = solve.TOO_MANY_STEPS
    with pytest.raises(SolveError, match="did not reach the end"):
        check(done)
    done.cook[1, solve.FINAL_COOK.index("status")] = 0
    done.trace[done.first_row[2] - 1, len(solve.COOK_FIELDS)] = np.nan
    with pytest.raises(SolveError):
        check(done)


def test_many_cooks_are_answered_in_their_order(monkeypatch):
    """Of two structures, and more than are written down at once: each as alone."""
    monkeypatch.setattr(solve, "TOGETHER", 2)
    cooks = [
        open_cook(s, pieces=p)
        for s, p in (
            (60.0, None),
            (70.0, [piece()]),
            (80.0, None),
            (90.0, [piece()]),
            (100.0, None),
            (110.0, None),
        )
    ]
    found = solve.run_many(cooks)
    for cook, raw in zip(cooks, found, strict=True):
        assert raw.time_s[-1] == pytest.approx(cook.spans[0].duration_s)
        assert raw.core_temp_c.shape[1] == len(cook.pieces)
    assert np.array_equal(run(cooks[2]).core_temp_c, found[2].core_temp_c)
    for wrong in ({"pieces": []}, {"spans": []}):
        with pytest.raises(InputError, match="at least one"):
            replace(cooks[0], **wrong)
    assert Precision() == ROUTINE


def test_a_history_says_what_its_curves_say_and_notes_only_what_is_so(kitchen):
    """Lowest oil by the lift, ends of spans, heat, shares by mass; and each note at its edge."""
    made = make_plan(kitchen, kitchen.program("bone-in alder"))
    (raw,), cook = solve.run_many([question(made)]), question(made)
    history = fry._history(made, raw, cook)
    before = raw.time_s <= history.lift_s
    assert history.lowest_oil_c == raw.oil_temp_c[before].min()
    assert history.lowest_oil_at_s == raw.time_s[before][np.argmin(raw.oil_temp_c[before])]
    assert history.span_ends_s == tuple(raw.time_s[raw.span <= i].max() for i in range(len(cook.spans)))
    assert history.heat_kwh == pytest.approx(np.interp(history.lift_s, raw.time_s, raw.heater_j) / 3.6e6)
    gauge = raw.pressure_pa - made.site.atmosphere_pa
    full = raw.time_s[gauge >= FULL_PRESSURE_SHARE * made.fryer.working_gauge_pa]
    assert history.full_pressure_s == full[0]
    usual = [p for p in history.pieces if not p.kind.heavy]
    mass = np.array([p.kind.class_mass_kg for p in usual])
    for name, own in (("moisture_loss_frac", "moisture_loss_frac"), ("yield_frac", "yield_frac")):
        assert getattr(history, name) == pytest.approx(
            mass @ [getattr(p.yields, own) for p in usual] / mass.sum()
        )
    assert history.uptake_kg == pytest.approx(mass @ [p.yields.uptake_raw_frac for p in usual])
    assert history.rendered_kg == pytest.approx(mass @ [p.yields.rendered_raw_frac for p in usual])
    assert history.coldest.core_at_lift_c == min(p.core_at_lift_c for p in history.pieces)
    one = history.pieces[0]
    assert one.core_at_lift_c == pytest.approx(np.interp(history.earliest_lift_s, raw.time_s, one.core_c))
    assert one.core_peak_c == one.core_c.max()
    assert one.crust_at_lift_m == one.crust_m[before][-1]
    coat = piece_class(made, one.kind).coat_thickness_m
    assert one.crust_m[0] == 0.0 and one.crust_at_lift_m >= raw.crust_m[before][-1, 0] + 0.99 * coat

    def kinds(plan_):
        return {
            n.kind: n.values for n in fry._notes(plan_, raw, 1.0, lift_of(made, cook, raw), history.pieces)
        }

    base = kinds(made)
    assert {"scouting", "estimates"} <= set(base)
    own = tuple(replace(k, cut=replace(k.cut, geometry_origin="calibrated")) for k in made.kinds)
    assert "scouting" not in kinds(replace(made, kinds=own))
    assert "scouting" in kinds(replace(made, kinds=(*own[:-1], made.kinds[-1])))
    hot = max(s.set_c for s in made.program.stages)
    for smoke, said in ((hot + 20.0, False), (hot + 19.9, True), (None, False)):
        found = kinds(replace(made, oil=replace(made.oil, smoke_low_c=smoke)))
        assert ("near_smoke" in found) is said
    assert kinds(replace(made, oil=replace(made.oil, smoke_low_c=hot)))["near_smoke"] == {
        "set_c": hot,
        "smoke_c": hot,
    }
    for least, said in ((made.load_kg - 0.01, False), (made.load_kg + 0.01, True), (0.0, False)):
        found = kinds(replace(made, fryer=replace(made.fryer, min_load_kg=least)))
        assert ("under_load" in found) is said
    assert "over_capacity" not in base
    assert "over_capacity" in kinds(replace(made, units_count=1.002 * made.most_units))
    peak = float(raw.pressure_pa.max() - made.site.atmosphere_pa)
    (never, *_) = fry._pressure_notes(made, raw, None, lift_of(made, cook, raw))
    assert (never.kind, never.values) == ("no_full_pressure", {"gauge_pa": peak})
    late = replace(raw, report=replace(raw.report, span_timed_out=True))
    shut = {n.kind for n in fry._pressure_notes(made, late, 1.0, lift_of(made, cook, raw))}
    assert "vent_slow" in shut and "wait_long" not in shut
    cedar = make_plan(kitchen, kitchen.program("bone-in cedar"))
    assert [n.kind for n in fry._pressure_notes(cedar, late, None, None)] == ["wait_long"]
    assert fry._pressure_notes(cedar, raw, None, None) == []
