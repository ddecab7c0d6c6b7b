"""How much oil a vat takes, and how high it may stand cold so that it does not spill hot.

Oil swells by about an eighth from a cold room to frying heat. Densities are the catalog's (Codex tables and a
slope of -0.64 kg/(m3 K), Rodenbush 1999); the line for fat as a food component (Choi and Okos) is wrong for
frying oil: it swells by half as much.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil

from frywright.model.errors import Amount, InputError, Phrase
from frywright.model.fryer import Oil

FOOD_KG_M3 = 1050.0
"""Raw breaded chicken sinks: about 1050 kg/m3 (estimate; muscle 1040 to 1080 in handbooks, from memory)."""
SHORTENING_MELT_J_KG = 120e3
"""Heat to melt solid shortening, about 120 kJ/kg between 20 and 45 degC (estimate, no source; use the
supplier's figure).
"""
MELTED_C = 50.0
"""Solid shortening is liquid above it (estimate, no source)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Filling:
    """Oil for one vat: mass, volumes cold and hot, and heights above the vat's floor where its area is
    known.
    """

    mass_kg: float
    cold_m3: float
    hot_m3: float
    swells_frac: float
    cartons_count: int
    cold_height_m: float = 0.0
    hot_height_m: float = 0.0
    loaded_height_m: float = 0.0


def swelling(oil: Oil, cold_c: float, hot_c: float) -> float:
    """Share by which a mass of oil grows in volume from cold to hot."""
    if not -10.0 <= cold_c < hot_c <= 230.0:
        raise InputError(
            "temperatures",
            Phrase("{low} and {high}", {"low": Amount(cold_c, "c"), "high": Amount(hot_c, "c")}),
            "cold below hot, {low_c} to {high_c}",
            low_c=-10.0,
            high_c=230.0,
        )
    return oil.density_kg_m3(cold_c) / oil.density_kg_m3(hot_c) - 1.0


def fill(
    oil: Oil,
    mass_kg: float,
    *,
    cold_c: float = 20.0,
    hot_c: float = 175.0,
    carton_kg: float = 15.9,
    area_m2: float = 0.0,
    load_kg: float = 0.0,
    foam_frac: float = 0.0,
) -> Filling:
    """Filling of a vat by its mass from the plate. Raises InputError: masses or temperatures out of range.

    Parameters
    ----------
    carton_kg : oil in a carton; 35 lb is common practice, no source
    area_m2 : of the oil's surface, 0 where unknown
    load_kg, foam_frac : the largest load, and foam as a share of the hot oil's volume
    """
    if (
        not 2.0 <= mass_kg <= 500.0
        or not carton_kg > 0
        or not 0.0 <= foam_frac <= 0.5
        or load_kg < 0
        or area_m2 < 0
    ):
        raise InputError(
            "filling",
            mass_kg,
            "{low_kg} to {high_kg} of oil, cartons above 0, foam up to a half",
            unit="kg",
            low_kg=2.0,
            high_kg=500.0,
        )
    grows = swelling(oil, cold_c, hot_c)
    cold, hot = mass_kg / oil.density_kg_m3(cold_c), mass_kg / oil.density_kg_m3(hot_c)
    loaded = hot * (1.0 + foam_frac) + load_kg / FOOD_KG_M3
    heights = (cold / area_m2, hot / area_m2, loaded / area_m2) if area_m2 else (0.0, 0.0, 0.0)
    return Filling(
        mass_kg=mass_kg,
        cold_m3=cold,
        hot_m3=hot,
        swells_frac=grows,
        cartons_count=ceil(mass_kg / carton_kg - 1e-9),
        cold_height_m=heights[0],
        hot_height_m=heights[1],
        loaded_height_m=heights[2],
    )


def most_oil_kg(
    oil: Oil,
    area_m2: float,
    upper_line_m: float,
    load_kg: float,
    *,
    hot_c: float = 175.0,
    foam_frac: float = 0.1,
) -> float:
    """Most oil that stays under the upper line at heat with the largest load in it and foam on it [kg].
    Raises InputError: the load alone would stand above the line.
    """
    if not area_m2 > 0 or not upper_line_m > 0 or load_kg < 0 or not 0.0 <= foam_frac <= 0.5:
        raise InputError(
            "vat", f"{area_m2:g} m2, {upper_line_m:g} m", "area, line and load above 0, foam up to a half"
        )
    room = area_m2 * upper_line_m - load_kg / FOOD_KG_M3
    if room <= 0:
        raise InputError(
            "load", f"{load_kg:.1f} kg", "small enough to leave room for oil under the upper line"
        )
    return room / (1.0 + foam_frac) * oil.density_kg_m3(hot_c)


def melt_j(mass_kg: float, cold_c: float = 20.0, melted_c: float = MELTED_C) -> float:
    """Heat to melt solid shortening [J]; low heat only, packed without air around the heat surfaces, until
    they are covered.
    """
    return mass_kg * (SHORTENING_MELT_J_KG + 2000.0 * (melted_c - cold_c))
