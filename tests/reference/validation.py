"""Computes the published cases with the engine; one function a case. Used by tests and docs."""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from pathlib import Path

import numpy as np

from frywright.catalog import load
from frywright.model.units import PSI
from frywright.physics.fry import simulate
from frywright.physics.inputs import CLOSE, PieceClass, Span
from frywright.physics.kernels.steam import boiling_temp_c
from frywright.physics.plan import make_plan
from frywright.physics.properties import meat
from frywright.physics.solve import Cook, Prescribed, run
from frywright.workbench.kitchens import demo_kitchen
from tests.conftest import vat

CASES = tomllib.loads((Path(__file__).parent / "experiment/cases.toml").read_text("utf-8"))["case"]
SEA_LEVEL_PA = 101325.0


def flat(food: str, a: float, n: float, oil: float, seconds: float, *, pa: float = SEA_LEVEL_PA, film: float = 0.1, start: float = 4.0, **changes):  # fmt: skip
    """One piece class of a bundled food in oil at a steady temperature and pressure."""
    m = meat(load.compositions()[food])
    piece = PieceClass(**{
        "name": food, "mass_kg": 0.1, "half_thickness_m": a, "shape_n": n, "start_temp_c": start,
        "density_kg_m3": m.density_kg_m3, "conductivity_w_mk": m.conductivity_w_mk,
        "heat_capacity_j_kgk": m.heat_capacity_j_kgk, "water_kg_m3": 0.9 * m.water_frac * m.density_kg_m3,
        "film_kg_m2": film, **changes,
    })  # fmt: skip
    told = Prescribed(oil_temp_c=[(0.0, oil)], pressure_pa=[(0.0, pa)])
    got = run(Cook(vat=vat(), pieces=[piece], spans=[Span(duration_s=seconds, set_c=oil)], prescribed=told), CLOSE)
    return got, piece


def rate(got):
    """Evaporation flux between steps [kg/(m2 s)] and the middle times."""
    t, m = got.time_s, got.evaporated_kg_m2[:, 0]
    return 0.5 * (t[1:] + t[:-1]), np.diff(m) / np.diff(t)


def potato_peak_flux() -> float:
    got, _ = flat("potato", 0.0075, 1.0, 180.0, 300.0, start=20.0)
    return 1e3 * float(rate(got)[1].max())


def nugget_coating_passes_100c() -> float:
    got, _ = flat("chicken_breast_meat", 0.00635, 0.3, 175.0, 120.0, film=0.35, start=20.0)
    return float(got.time_s[np.argmax(got.surface_temp_c[:, 0] > 100.0)])


def loss_rate_peaks_early() -> float:
    got, _ = flat("chicken_breast_meat", 0.00635, 0.3, 175.0, 240.0, film=0.35, start=20.0)
    t, flux = rate(got)
    return float(t[np.argmax(flux)])


def pressure_lowers_loss() -> float:
    lost = [flat("chicken_breast_meat", 0.00635, 0.3, 175.0, 240.0, pa=SEA_LEVEL_PA + g, film=0.35, start=20.0)[0].evaporated_kg_m2[-1, 0] for g in (0.0, 12 * PSI)]  # fmt: skip
    return float(lost[1] / lost[0])


def yield_independent_of_oil_temp() -> float:
    lost = []
    for oil in (168.3, 190.6):
        got, _ = flat("chicken_breast_meat", 0.0075, 0.2, oil, 900.0, film=0.3, start=1.1)
        lost.append(
            np.interp(np.interp(71.1, got.core_temp_c[:, 0], got.time_s), got.time_s, got.evaporated_kg_m2[:, 0])
        )
    return float(lost[1] / lost[0])


def _demo(program: str, altitude_m: float = 0.0):
    kitchen = demo_kitchen()
    return simulate(make_plan(kitchen, kitchen.program(program), altitude_m=altitude_m))


def _breast(history):
    return next(p for p in history.pieces if p.kind.cut.key == "breast_half" and not p.kind.heavy)


def breast_water_lost_open() -> float:
    return _breast(_demo("bone-in cedar")).yields.water_lost_edible_frac


def breast_yield_open() -> float:
    return _breast(_demo("bone-in cedar")).yields.edible_yield_frac


def _minutes(history, level: float) -> float:
    piece = _breast(history)
    return float(np.interp(level, piece.core_c, history.time_s)) / 60.0


def pressure_minutes() -> float:
    return _minutes(_demo("bone-in alder"), 85.0)


def open_minutes() -> float:
    return _minutes(_demo("bone-in cedar"), 85.0)


def full_pressure_minutes() -> float:
    history = _demo("bone-in alder")
    closed = history.plan.program.durations_s()[0]
    return (history.full_pressure_s - closed) / 60.0


def open_yield_trade() -> float:
    return _demo("bone-in cedar").yield_frac


def boiling_point_shortens_heating() -> float:
    times = []
    for gauge in (0.0, 12 * PSI):
        boiling = boiling_temp_c(SEA_LEVEL_PA + gauge)
        got, _ = flat("chicken_light_meat", 0.015, 0.0, boiling - 1e-3, 6000.0, pa=SEA_LEVEL_PA + gauge, film=0.0,
                      still_h_w_m2k=1e5, cap_h_w_m2k=1e5, gain_h_j_kgk=0.0,
                      conductivity_w_mk=0.5, heat_capacity_j_kgk=3500.0)  # fmt: skip
        times.append(np.interp(74.0, got.core_temp_c[:, 0], got.time_s))
    return float(times[1] / times[0])


def altitude_slows_open() -> float:
    return _minutes(_demo("bone-in cedar", 1524.0), 82.0) / _minutes(_demo("bone-in cedar"), 82.0)


def heat_per_kg() -> float:
    history = _demo("bone-in cedar")
    plan, fryer = history.plan, history.plan.fryer
    oil = plan.oil
    stored = fryer.oil_mass_kg * (oil.cp_0c_j_kgk + oil.cp_slope_j_kgk2 * 165.0) + fryer.metal_heat_j_k
    at_lift = float(np.interp(history.lift_s, history.time_s, history.oil_c))
    room = fryer.loss_w_k * (165.0 - plan.site.room_temp_c) * history.lift_s
    taken = history.heat_kwh * 3.6e6 - stored * (at_lift - history.oil_c[0]) - room
    return taken / plan.load_kg / 1e3


COMPUTE: dict[str, Callable[[], float]] = {c["key"]: globals()[c["key"]] for c in CASES}
