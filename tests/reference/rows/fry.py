"""Whole cooks in an invented kitchen at sea level: USDA pairs, trade times, loads, heat."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np

from frywright.care.energy import heavy_load
from frywright.catalog import load as catalog
from frywright.catalog.kitchen import parse_kitchen
from frywright.model.kitchen import Kitchen
from frywright.model.units import BTU, LB
from frywright.physics.fry import FryHistory, simulate
from frywright.physics.inputs import CLOSE, FINE
from frywright.physics.plan import FryPlan, PieceKind, make_plan, piece_class, question, solids_kg_m2
from frywright.physics.solve import RawHistory, run
from frywright.trial.kitchens import demo_text

BENCH = """
[kitchen]
name = "Invented bench"
invented = true
altitude_m = 0
jurisdiction = "us_food_code_2022"
[[fryer]]
key = "closed"
name = "Closed"
kind = "pressure"
capacity_heads = 4
oil_mass_kg = 29
heater_kw = 12.2
working_gauge_psi = 12
vent_area_mm2 = 45
head_volume_l = 18
[fryer.controller]
stage_count = 4
[[fryer]]
key = "open"
name = "Open"
kind = "open"
capacity_heads = 3
oil_mass_kg = 22.7
heater_kw = 14
[[product]]
key = "dredged"
name = "Dredged bird"
cut_set = "chicken_8"
coating = "dredge"
unit_mass_kg = 1.19
start_temp_c = 3.3
[[product]]
key = "floured"
name = "Floured bird"
cut_set = "chicken_8"
coating = "dusting"
unit_mass_kg = 1.19
start_temp_c = 3.3
[[program]]
name = "closed"
product = "dredged"
fryer = "closed"
[[program.stage]]
set_c = 168
lid = "open"
duration_s = 40
[[program.stage]]
set_c = 154
lid = "pressure"
duration_s = 1200
[[program]]
name = "open"
product = "dredged"
fryer = "open"
[[program.stage]]
set_c = 163
lid = "open"
duration_s = SECONDS
[[program]]
name = "floured"
product = "floured"
fryer = "open"
[[program.stage]]
set_c = 163
lid = "open"
duration_s = SECONDS
"""


@cache
def bench(seconds: float) -> Kitchen:
    """The invented kitchen; its open programs last so long."""
    return parse_kitchen(BENCH.replace("SECONDS", f"{seconds:.1f}"))


@cache
def cook(program: str, seconds: float = 1500.0, altitude_m: float = 0.0) -> FryHistory:
    """One full load, solved fine: the engine's own error decides no row that lies at the end of its band."""
    kitchen = bench(seconds)
    return simulate(make_plan(kitchen, kitchen.program(program), altitude_m=altitude_m), FINE)


def piece(history: FryHistory, cut: str):
    """The usual piece of a cut."""
    return next(p for p in history.pieces if p.kind.cut.key == cut and not p.kind.heavy)


def minutes(program: str, cut: str, core_c: float, altitude_m: float = 0.0) -> float:
    """Minutes from the drop until the usual piece's core reads so much."""
    history = cook(program, altitude_m=altitude_m)
    return float(np.interp(core_c, piece(history, cut).core_c, history.time_s)) / 60.0


# USDA pairs: eight floured pieces, one basket, lifted in the middle of the trade's 12 to 18 min

USDA_LIFT_S = 900.0


@cache
def floured() -> FryHistory:
    """Flour-dusted bird, open fryer of 163 degC."""
    return cook("floured", USDA_LIFT_S)


DARK, WHOLE = ("thigh", "drum"), ("breast_half", "thigh", "drum", "wing")
GROUPS = {"dark": DARK, "whole": WHOLE}


def _mean(cut: str, name: str, weigh) -> float:  # type: ignore[no-untyped-def]
    pieces = [piece(floured(), key) for key in GROUPS.get(cut, (cut,))]
    weights = [p.kind.class_mass_kg * (1.0 - p.kind.cut.bone_mass_frac) * weigh(p) for p in pieces]
    return float(np.average([getattr(p.yields, name) for p in pieces], weights=weights))


def water_lost(cut: str) -> float:
    """Water lost by the edible part, of its own water."""
    return _mean(cut, "water_lost_edible_frac", lambda p: _food(p)["water"])


def edible_yield(cut: str) -> float:
    """Fried edible part over raw edible part."""
    return _mean(cut, "edible_yield_frac", lambda p: 1.0)


def _food(p) -> dict[str, float]:  # type: ignore[no-untyped-def]
    return catalog.compositions()[p.kind.cut.composition].fractions


def fat_left(cut: str) -> float:
    """Fat of the fried edible part (meat's own and oil taken up) over the fat of the raw."""
    fat = raw = 0.0
    for key in GROUPS.get(cut, (cut,)):
        p = piece(floured(), key)
        own = _food(p)["fat"] * (1.0 - p.kind.cut.bone_mass_frac)
        fat += p.kind.class_mass_kg * (own - p.yields.rendered_raw_frac + p.yields.uptake_raw_frac)
        raw += p.kind.class_mass_kg * own
    return fat / raw


# trade


def full_pressure_minutes() -> float:
    """Minutes from closing the lid to full pressure, full load."""
    history = cook("closed")
    assert history.full_pressure_s is not None
    return (history.full_pressure_s - history.plan.program.durations_s()[0]) / 60.0


def open_yield() -> float:
    """Cook yield of dredged bone-in pieces on breaded weight, lifted when the breast reads 85 degC."""
    return cook("open", 60.0 * minutes("open", "breast_half", 85.0)).yield_frac


def altitude_ratio() -> float:
    """Open: time of the breast to 82 degC at 1524 m over that at sea level."""
    return minutes("open", "breast_half", 82.0, 1524.0) / minutes("open", "breast_half", 82.0)


def coldest_minutes(core_c: float) -> float:
    """Minutes until the last of the eight usual pieces reads so much, dredged, open."""
    return max(minutes("open", cut, core_c) for cut in WHOLE)


def idle_w(oil_c: float) -> float:
    """Heat a fryer takes to stand ready, by the default loss [W]."""
    fryer = bench(600.0).fryer("open")
    return fryer.loss_w_k * (oil_c - 25.0)


# heat


@cache
def _lifted() -> tuple[FryPlan, RawHistory]:
    """The floured load at the moment of the lift."""
    plan = replace(floured().plan, rest_s=1e-3)
    return plan, run(question(plan), CLOSE)


def heat_identity() -> float:
    """Heat into the load by the engine over the sum done by hand from what was lost and where it ended."""
    plan, raw = _lifted()
    taken = by_hand = 0.0
    for lane, kind in enumerate(plan.kinds):
        if not kind.heavy:
            taken += float(raw.heat_j[-1, lane])
            by_hand += _by_hand(plan, kind, raw, lane)
    return taken / by_hand


def _by_hand(plan: FryPlan, kind: PieceKind, raw: RawHistory, lane: int) -> float:
    """Water lost is brought to 100 degC and boiled (4.19 and 2257 kJ/kg); the rest warms at printed heat
    capacities.
    """
    body = piece_class(plan, kind)
    area, start = body.area_m2, plan.product.start_temp_c
    lost = float(raw.evaporated_kg_m2[-1, lane]) * area
    film, solids = plan.coating.film_kg_m2 * area, solids_kg_m2(plan.coating) * area
    core = float(np.sum(raw.final_core_c[:, lane] * raw.final_core_share[:, lane]))
    crust = float(raw.crust_m[-1, lane])
    a, n = body.half_thickness_m, body.shape_n
    dry = 1.0 - (1.0 - crust / a) ** (n + 1.0)
    edge = 0.5 * (100.0 + float(raw.surface_temp_c[-1, lane]))
    mean = (1.0 - dry) * core + dry * edge
    edible, bone = (
        kind.class_mass_kg * (1.0 - kind.cut.bone_mass_frac),
        kind.class_mass_kg * kind.cut.bone_mass_frac,
    )
    warm = (edible * 3450.0 - (lost - film) * 4190.0 + bone * 2.4e6 / 1300.0) * (mean - start)
    return lost * (4190.0 * (100.0 - start) + 2257e3) + warm + solids * 1600.0 * (edge - start)


def heat_per_edible_kg() -> float:
    """Heat into the load for a kilogram of raw meat and skin [kJ/kg]."""
    plan, raw = _lifted()
    usual = [(lane, k) for lane, k in enumerate(plan.kinds) if not k.heavy]
    edible = sum(k.class_mass_kg * (1.0 - k.cut.bone_mass_frac) for _, k in usual)
    return 1e-3 * sum(float(raw.heat_j[-1, lane]) for lane, _ in usual) / edible


def pressure_heat_btu_lb(program: str) -> float:
    """Heat into a pound of a full load of the demo kitchen, as the energy page says it."""
    kitchen = parse_kitchen(demo_text())
    full = heavy_load(simulate(make_plan(kitchen, kitchen.program(program)), CLOSE))
    return full.food_j / full.load_kg / (BTU / LB)
