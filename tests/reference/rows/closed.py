"""The engine driven with explicit properties against exact series, printed examples and steam tables."""

from __future__ import annotations

import numpy as np

from frywright.catalog import load as catalog
from frywright.model.food import Composition
from frywright.model.kitchen import pressure_at_pa
from frywright.model.units import PSI
from frywright.physics import properties
from frywright.physics.fry import browning
from frywright.physics.inputs import CLOSE, Lid, PieceClass, Span
from frywright.physics.solve import Cook, Prescribed, RawHistory, run
from frywright.physics.steam import boiling_temp_c, latent_heat_j_kg
from frywright.verdicts.judge import salmonella_log
from tests.conftest import piece, vat

NO_BOILING_PA = 2.0e6
SEA_LEVEL_PA = 101325.0
COLD_C, HOT_C = 4.0, 140.0
START_C = 0.01  # stands for a surface at boiling from the first moment


def conduct(
    n: float, a: float, k: float, alpha: float, h: float, start: float, source: float, seconds: float
) -> RawHistory:
    """Conduction alone: pressure so high that nothing boils, oil at a steady temperature."""
    body = piece(
        a=a,
        n=n,
        conductivity_w_mk=k,
        density_kg_m3=1000.0,
        heat_capacity_j_kgk=k / alpha / 1000.0,
        start_temp_c=start,
        still_h_w_m2k=h,
        cap_h_w_m2k=h,
        gain_h_j_kgk=0.0,
        film_kg_m2=0.0,
    )
    told = Prescribed(oil_temp_c=[(0.0, source)], pressure_pa=[(0.0, NO_BOILING_PA)])
    return run(
        Cook(vat=vat(), pieces=[body], spans=[Span(duration_s=seconds, set_c=source)], prescribed=told), CLOSE
    )


def _series(n: float, biot: float, fourier: float) -> RawHistory:
    a, k, alpha = 0.015, 0.5, 0.5 / 3.6e6
    return conduct(n, a, k, alpha, biot * k / a, COLD_C, HOT_C, fourier * a * a / alpha)


def centre(n: float, biot: float, fourier: float) -> float:
    """Unaccomplished change of the centre at a Fourier number."""
    return (_series(n, biot, fourier).core_temp_c[-1, 0] - HOT_C) / (COLD_C - HOT_C)


def surface(n: float, biot: float, fourier: float) -> float:
    """Unaccomplished change of the surface at a Fourier number."""
    return (_series(n, biot, fourier).surface_temp_c[-1, 0] - HOT_C) / (COLD_C - HOT_C)


def heat_share(n: float, biot: float, fourier: float) -> float:
    """Heat taken up over the most that can be."""
    got = _series(n, biot, fourier)
    mean = float(np.sum(got.final_core_c[:, 0] * got.final_core_share[:, 0]))
    return (mean - COLD_C) / (HOT_C - COLD_C)


def egg(
    diameter_m: float, k: float, alpha: float, h: float, start: float, source: float, reaches: float
) -> float:
    """Seconds until the centre of a sphere reaches a temperature."""
    got = conduct(2.0, 0.5 * diameter_m, k, alpha, h, start, source, 1500.0)
    return float(np.interp(reaches, got.core_temp_c[:, 0], got.time_s))


def boiling(altitude_m: float, gauge_psi: float) -> float:
    """Boiling temperature over oil [degC]."""
    return boiling_temp_c(pressure_at_pa(altitude_m) + gauge_psi * PSI)


def latent(altitude_m: float, gauge_psi: float) -> float:
    """Latent heat at the boiling temperature [kJ/kg]."""
    return 1e-3 * latent_heat_j_kg(boiling(altitude_m, gauge_psi))


def crust(oil_c: float, k: float, heat: float, water: float, h: float, seconds: float) -> RawHistory:
    """A slab that starts at boiling and dries inward."""
    temp = boiling_temp_c(SEA_LEVEL_PA)
    body = piece(
        a=0.05,
        n=0.0,
        start_temp_c=temp - 1e-4,
        film_kg_m2=0.0,
        still_h_w_m2k=h,
        cap_h_w_m2k=h,
        gain_h_j_kgk=0.0,
        crust_conductivity_w_mk=k,
        crust_heat_j_m3k=heat,
        vapour_cp_j_kgk=0.0,
        water_kg_m3=water,
    )
    told = Prescribed(oil_temp_c=[(0.0, oil_c)], pressure_pa=[(0.0, SEA_LEVEL_PA)])
    return run(
        Cook(vat=vat(), pieces=[body], spans=[Span(duration_s=seconds, set_c=oil_c)], prescribed=told), CLOSE
    )


def front_number(stefan: float) -> float:
    """lambda of the moving front, crust / (2 sqrt(alpha t)), at a Stefan number."""
    temp = boiling_temp_c(SEA_LEVEL_PA)
    k, heat, oil = 0.15, 1.0e6, temp + 80.0
    water = heat * 80.0 / (latent_heat_j_kg(temp) * stefan)
    got = crust(oil, k, heat, water, 1e6, 900.0)
    return float(got.crust_m[-1, 0] / (2.0 * np.sqrt(k / heat * got.time_s[-1])))


def crust_mm(minutes: float) -> float:
    """Quasi-steady crust at 180 degC, h 400, k 0.10, water 850 kg/m3 [mm]."""
    return 1e3 * float(crust(180.0, 0.10, 10.0, 850.0, 400.0, 60.0 * minutes).crust_m[-1, 0])


def crust_surface_c(minutes: float) -> float:
    """Surface temperature of the same crust [degC]."""
    return float(crust(180.0, 0.10, 10.0, 850.0, 400.0, 60.0 * minutes).surface_temp_c[-1, 0])


def pressure_shortens(n: float, level_c: float) -> float:
    """Time to a centre temperature with the surface at boiling, 12 psig over open."""
    times = []
    for gauge in (0.0, 12 * PSI):
        source = boiling_temp_c(SEA_LEVEL_PA + gauge)
        got = conduct(n, 0.015, 0.5, 1.4e-7, 1e5, COLD_C, source, 2500.0)
        times.append(np.interp(level_c, got.core_temp_c[:, 0], got.time_s))
    return float(times[1] / times[0])


def wet_bulb() -> float:
    """Where a wet piece settles in room air of 25 degC with 10 g/m3 of vapour [degC]."""
    table = catalog.table("kinetics/surface.toml")
    transfer = table["air_w_m2k"] / table["air_transfer_j_m3k"]
    body = piece(a=0.004, n=0.0, start_temp_c=20.0, film_kg_m2=4.0, vapour_diffusivity_m2_s=1e-6)
    room = vat(
        air_temp_c=25.0, air_vapour_kg_m3=0.010, air_transfer_m_s=transfer, air_h_w_m2k=table["air_w_m2k"]
    )
    got = run(
        Cook(vat=room, pieces=[body], spans=[Span(duration_s=3600.0, set_c=100.0, lid=Lid.REST)]), CLOSE
    )
    return float(got.surface_temp_c[-1, 0])


def food_property(food: str, quantity: str, temp_c: float) -> float:
    """Conductivity, density or heat capacity [kJ/(kg K)] of a bundled food."""
    what: Composition = catalog.compositions()[food]
    if quantity == "conductivity":
        return float(properties.conductivity_w_mk(what, temp_c))
    if quantity == "density":
        return properties.density_kg_m3(what, temp_c)
    return 1e-3 * float(properties.heat_capacity_j_kgk(what, temp_c))


def oil_heat_kj_kgk(oil: str, temp_c: float) -> float:
    """Heat capacity of an oil."""
    what = catalog.oils()[oil]
    return 1e-3 * (what.cp_0c_j_kgk + what.cp_slope_j_kgk2 * temp_c)


def seven_log_minutes(temp_c: float) -> float:
    """Minutes at one temperature for 7 decimal reductions of Salmonella."""
    return 7.0 / salmonella_log(np.array([0.0, 60.0]), np.array([temp_c, temp_c]))


def browning_minutes(surface_c: float, difference: float) -> float:
    """Minutes until a dry surface at one temperature has changed its colour by so much."""
    time = np.linspace(0.0, 7200.0, 721)
    reached = [browning(time[: i + 1], np.full(i + 1, surface_c)) for i in range(1, 721)]
    return float(np.interp(difference, reached, time[1:])) / 60.0


def natural_convection(diameter_m: float, oil_c: float, surface_c: float) -> float:
    """Engine's still coefficient over Churchill & Chu's for a long horizontal cylinder."""
    table = catalog.table("kinetics/surface.toml")
    still = table["still_w_m2k"] * ((oil_c - surface_c) / table["still_reference_k"]) ** 0.25
    rho, heat, k, viscosity, expansion = (
        850.0,
        2300.0,
        0.155,
        8e-3,
        7.6e-4,
    )  # film oil, from memory; rho' -0.64 (Rodenbush)
    rayleigh = 9.81 * expansion * (oil_c - surface_c) * diameter_m**3 / (viscosity / rho * k / (rho * heat))
    prandtl = heat * viscosity / k
    nusselt = (0.60 + 0.387 * rayleigh ** (1 / 6) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
    return float(still / (nusselt * k / diameter_m))


def flat(
    food: str, a: float, n: float, oil: float, seconds: float, **changes
) -> tuple[RawHistory, PieceClass]:
    """One class of a bundled food, bare unless told, in oil at a steady temperature and pressure."""
    precision = changes.pop("precision", CLOSE)
    pressure, rest = changes.pop("pressure_pa", SEA_LEVEL_PA), changes.pop("rest_s", 0.0)
    m, table = properties.meat(catalog.compositions()[food]), catalog.table("kinetics/surface.toml")
    values = {
        "name": food,
        "mass_kg": 0.1,
        "half_thickness_m": a,
        "shape_n": n,
        "start_temp_c": 4.0,
        "density_kg_m3": m.density_kg_m3,
        "conductivity_w_mk": m.conductivity_w_mk,
        "heat_capacity_j_kgk": m.heat_capacity_j_kgk,
        "water_kg_m3": 0.9 * m.water_frac * m.density_kg_m3,
        "film_kg_m2": 0.1,
        "still_h_w_m2k": table["still_w_m2k"],
        "still_reference_k": table["still_reference_k"],
        "gain_h_j_kgk": table["gain_j_kgk"],
        "cap_h_w_m2k": table["cap_w_m2k"],
        "lag_h_s": table["lag_s"],
        "vapour_diffusivity_m2_s": table["vapour_diffusivity_m2_s"],
        **changes,
    }
    body = PieceClass(**values)
    told = Prescribed(oil_temp_c=[(0.0, oil)], pressure_pa=[(0.0, pressure)])
    spans = [Span(duration_s=seconds, set_c=oil)]
    if rest_s := rest:
        spans.append(Span(duration_s=rest_s, set_c=oil, lid=Lid.REST))
    room = vat(
        air_vapour_kg_m3=table["air_vapour_kg_m3"],
        air_h_w_m2k=table["air_w_m2k"],
        air_transfer_m_s=table["air_w_m2k"] / table["air_transfer_j_m3k"],
    )
    return run(Cook(vat=room, pieces=[body], spans=spans, prescribed=told), precision), body
