"""Meat without a fryer: drip, slabs, nuggets, patties, a meatball, potato."""

from __future__ import annotations

from functools import cache

import numpy as np

from frywright.catalog import load as catalog
from frywright.model.units import PSI
from frywright.physics.inputs import FINE, PieceClass
from frywright.physics.plan import solids_kg_m2
from frywright.physics.solve import RawHistory
from frywright.verdicts.judge import salmonella_log
from tests.reference.rows.closed import SEA_LEVEL_PA, flat

EVAPORABLE = 0.9
"""Share of a food's water the engine lets go (own estimate of the catalog's cuts)."""


def drip(kind: str) -> dict[str, float]:
    """Drip of the catalog as engine inputs."""
    table = catalog.table("kinetics/drip.toml")
    row = table[kind]
    return {
        "drip_frac": row["most_frac"] / EVAPORABLE,
        "drip_mid_c": row["mid_c"],
        "drip_steep_per_k": row["steep_per_k"],
        "drip_lag_s": table["lag_s"],
    }


def coat(key: str) -> dict[str, float]:
    """A coating of the catalog as engine inputs."""
    what, table = catalog.coatings()[key], catalog.table("kinetics/coat.toml")
    solids = solids_kg_m2(what)
    return {
        "film_kg_m2": what.film_kg_m2,
        "coat_thickness_m": solids / table["solids_density_kg_m3"],
        "coat_conductivity_w_mk": what.crust_conductivity_w_mk,
        "coat_heat_j_m2k": solids * table["solids_heat_j_kgk"],
        "coat_wet_conductivity_w_mk": table["wet_conductivity_w_mk"],
        "crust_conductivity_w_mk": what.crust_conductivity_w_mk,
        "crust_heat_j_m3k": what.crust_heat_j_m3k,
    }


# drip


def _held(food: str, kind: str, temp_c: float, seconds: float, start: float) -> float:
    """Water let go in liquid of one temperature, of the food's own water; nothing may evaporate."""
    got, body = flat(
        food,
        0.012,
        0.3,
        temp_c,
        seconds,
        start_temp_c=start,
        still_h_w_m2k=400.0,
        film_kg_m2=0.0,
        still_reference_k=0.0,
        gain_h_j_kgk=0.0,
        **drip(kind),
    )
    whole = body.water_kg_m3 / EVAPORABLE * body.half_thickness_m / (body.shape_n + 1.0)
    assert got.evaporated_kg_m2[-1, 0] < 1e-9
    return float(got.film_kg_m2[-1, 0]) / whole


def poached_share(food: str, kind: str) -> float:
    """Water lost by a piece kept in liquid at boiling, of all its water."""
    return _held(food, kind, 99.9, 1800.0, 4.0)


def bath_gap_points() -> float:
    """Largest gap to the water lost in baths of 57 to 74 degC, points of mass."""
    water = catalog.compositions()["chicken_breast_meat"].fractions["water"]
    measured = {57.0: 4.0, 60.0: 5.0, 63.0: 9.0, 71.0: 15.0, 74.0: 20.0}
    found = {t: 100 * water * _held("chicken_breast_meat", "light", t, 5400.0, t) for t in measured}
    return max(abs(found[t] - measured[t]) for t in measured)


def salted_gap_points() -> float:
    """Largest gap to the cook loss of ground breast with 1 % salt at 70 to 85 degC, points of mass."""
    water = catalog.compositions()["chicken_breast_meat"].fractions["water"]
    measured = {70.0: 1.9, 75.0: 2.4, 80.0: 3.2, 85.0: 4.7}
    found = {t: 100 * water * _held("chicken_breast_meat", "formed", t, 1800.0, t) for t in measured}
    return max(abs(found[t] - measured[t]) for t in measured)


def ground_loss_pct(core_c: float) -> float:
    """Cook loss of a formed patty without salt, warmed through in a bath [% of mass]."""
    return _warmed(0.0065, 0.2, core_c + 5.0, core_c, "formed")


def fillet_loss_pct(half_thickness_m: float, oven_c: float, core_c: float) -> float:
    """Cook loss of a breast fillet in moist heat until its centre reads so much, then cooled [% of mass]."""
    return _warmed(half_thickness_m, 0.3, oven_c, core_c, "light")


def _warmed(a: float, n: float, source_c: float, core_c: float, kind: str) -> float:
    def bath(seconds: float, rest_s: float) -> tuple[RawHistory, PieceClass]:
        return flat(
            "chicken_breast_meat",
            a,
            n,
            source_c,
            seconds,
            rest_s=rest_s,
            still_h_w_m2k=100.0,
            film_kg_m2=0.0,
            still_reference_k=0.0,
            gain_h_j_kgk=0.0,
            vapour_diffusivity_m2_s=0.0,
            **drip(kind),
        )

    first, _ = bath(7200.0, 0.0)
    got, body = bath(float(np.interp(core_c, first.core_temp_c[:, 0], first.time_s)), 1200.0)
    assert got.evaporated_kg_m2[-1, 0] < 1e-9
    return (
        100.0
        * float(got.film_kg_m2[-1, 0])
        / (body.density_kg_m3 * body.half_thickness_m / (body.shape_n + 1.0))
    )


# slabs and potato


@cache
def _slab(oil_c: float) -> tuple[RawHistory, float]:
    got, body = flat("chicken_breast_meat", 0.0015, 0.0, oil_c, 600.0, film_kg_m2=0.0, **drip("light"))
    return got, body.water_kg_m3 / EVAPORABLE * body.half_thickness_m


def slab_moisture_ratio(oil_c: float, seconds: float) -> float:
    """Water left in a 3 mm breast slab over its first water."""
    got, whole = _slab(oil_c)
    return 1.0 - float(np.interp(seconds, got.time_s, got.evaporated_kg_m2[:, 0])) / whole


@cache
def _potato(oil_c: float, a: float, seconds: float) -> RawHistory:
    """Finely solved: the largest coefficient comes as the surface dries: `CLOSE` is 3 % off there."""
    return flat("potato", a, 1.0, oil_c, seconds, start_temp_c=20.0, precision=FINE)[0]


def rate(got: RawHistory) -> tuple[np.ndarray, np.ndarray]:
    """Evaporation flux between steps [kg/(m2 s)] and the middle times."""
    t, m = got.time_s, got.evaporated_kg_m2[:, 0]
    return 0.5 * (t[1:] + t[:-1]), np.diff(m) / np.diff(t)


def potato_peak_flux() -> float:
    """Largest vapour flux of a potato cylinder at 180 degC [g/(m2 s)]."""
    return 1e3 * float(rate(_potato(180.0, 0.0075, 600.0))[1].max())


def potato_coefficient(which: str) -> float:
    """Largest or last surface coefficient of the same potato [W/(m2 K)]."""
    h = _potato(180.0, 0.0075, 600.0).htc_w_m2k[:, 0]
    return float(h.max() if which == "peak" else h[-1])


def potato_plateau_c() -> float:
    """Core temperature at which a potato strip stays while it fries [degC]."""
    return float(_potato(170.0, 0.004, 420.0).core_temp_c[-1, 0])


# nuggets and patties


@cache
def _nugget(oil_c: float, gauge_psi: float) -> RawHistory:
    return flat(
        "chicken_breast_meat",
        0.00635,
        0.3,
        oil_c,
        240.0,
        start_temp_c=20.0,
        pressure_pa=SEA_LEVEL_PA + gauge_psi * PSI,
        **drip("formed"),
        **coat("dredge"),
    )[0]


def nugget_passes_100c() -> float:
    """Seconds until a nugget's outside is above 100 degC in oil of 175 degC."""
    got = _nugget(175.0, 0.0)
    return float(np.interp(100.0, np.maximum.accumulate(got.surface_temp_c[:, 0]), got.time_s))


def loss_peaks_s() -> float:
    """When a nugget loses water fastest [s]."""
    t, flux = rate(_nugget(175.0, 0.0))
    return float(t[np.argmax(flux)])


def pressure_over_open() -> float:
    """Water lost by a nugget in 240 s at 12 psig over that in the open."""
    lost = [_nugget(175.0, psi).evaporated_kg_m2[-1, 0] for psi in (0.0, 12.0)]
    return float(lost[1] / lost[0])


def pressure_orders() -> float:
    """How many of six steps up in pressure (three oils) lower the loss."""
    falls = 0
    for oil in (150.0, 175.0, 190.0):
        lost = [_nugget(oil, psi).evaporated_kg_m2[-1, 0] for psi in (0.0, 9.0, 12.0)]
        falls += int(lost[1] < lost[0]) + int(lost[2] < lost[1])
    return float(falls)


@cache
def _patty(oil_c: float, key: str, start_c: float) -> tuple[RawHistory, dict[str, float]]:
    """A 13 mm patty of formed meat, fried long; film, solids and mass of meat by area."""
    got, body = flat(
        "chicken_breast_meat", 0.0065, 0.2, oil_c, 900.0, start_temp_c=start_c, **drip("formed"), **coat(key)
    )
    what = catalog.coatings()[key]
    meat = body.density_kg_m3 * body.half_thickness_m / (body.shape_n + 1.0)
    solids = solids_kg_m2(what)
    water = catalog.compositions()["chicken_breast_meat"].fractions["water"] * meat
    return got, {
        "meat": meat,
        "water": water,
        "film": what.film_kg_m2,
        "solids": solids,
        "oil": solids * what.oil_per_solids_n,
    }


def _at_core(oil_c: float, core_c: float) -> tuple[float, float]:
    """Moisture content and yield of a breaded patty when its centre reads so much [%]."""
    got, book = _patty(oil_c, "dredge", 1.1)
    lost = float(np.interp(core_c, got.core_temp_c[:, 0], got.evaporated_kg_m2[:, 0]))
    raw = book["meat"] + book["film"] + book["solids"]
    left = raw - lost + book["oil"]
    return 100.0 * (book["water"] + book["film"] - lost) / left, 100.0 * left / raw


def patty_spread(core_c: float, which: str) -> float:
    """Largest difference of moisture content or yield over three oils at equal core [points]."""
    found = [_at_core(oil, core_c)[0 if which == "moisture" else 1] for oil in (168.3, 179.4, 190.6)]
    return max(found) - min(found)


@cache
def _carry_over(oil_c: float, core_c: float) -> float:
    first, _ = _patty(oil_c, "batter", 0.0)
    lift = float(np.interp(core_c, first.core_temp_c[:, 0], first.time_s))
    got, _ = flat(
        "chicken_breast_meat",
        0.0065,
        0.2,
        oil_c,
        lift,
        start_temp_c=0.0,
        rest_s=600.0,
        **drip("formed"),
        **coat("batter"),
    )
    return float(got.core_temp_c[:, 0].max()) - core_c


CARRY_OVER = [(oil, core) for oil in (168.3, 179.4, 190.6) for core in (48.9, 60.0, 71.1)]


def carry_over_mean_k() -> float:
    """Mean rise of a battered patty's centre after the lift over three oils and three ends [K]."""
    return float(np.mean([_carry_over(oil, core) for oil, core in CARRY_OVER]))


def carry_over_spread_k() -> float:
    """Largest gap of one of the nine rises to 11.1 K."""
    return max(abs(_carry_over(oil, core) - 11.1) for oil, core in CARRY_OVER)


# meatball


def meatball_logs(minutes: float, start_c: float) -> float:
    """Decimal reductions of Salmonella at the centre of a 25 g meatball, boiled and then left in room air."""
    radius = (3 * 0.025 / (4 * np.pi * 1060.0)) ** (1 / 3)
    got, _ = flat(
        "chicken_breast_meat",
        float(radius),
        2.0,
        99.9,
        60.0 * minutes,
        rest_s=900.0,
        start_temp_c=start_c,
        film_kg_m2=0.0,
        still_h_w_m2k=1500.0,
        cap_h_w_m2k=1500.0,
        still_reference_k=0.0,
        gain_h_j_kgk=0.0,
        **drip("formed"),
    )
    return min(salmonella_log(got.time_s, got.core_temp_c[:, 0]), 99.0)
