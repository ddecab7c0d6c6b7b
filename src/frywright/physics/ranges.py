"""What the engine takes: the range of every property, each with its reason.

The ranges are wide. They let through every food, fryer and closed form that makes sense, and stop a slip of
unit or sign, which the books of heat and water would not notice: they close for nonsense as well. All bounds
are own estimates; the values named in the reasons are common figures of handbooks, from memory.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Any

from frywright.model.errors import InputError

Ranges = dict[str, tuple[float, float, str]]

LONGEST_S = 86400.0
PIECE: Ranges = {
    "mass_kg": (1e-15, 200.0, "from a tracer of next to no mass to more than any vat holds"),
    "half_thickness_m": (3e-4, 0.1, "from half a crisp to a whole bird"),
    "shape_n": (0.0, 2.0, "slab to sphere"),
    "start_temp_c": (-40.0, 150.0, "from a deep freezer to boiling under pressure"),
    "density_kg_m3": (50.0, 3000.0, "from puffed dough to bone and stone"),
    "water_kg_m3": (1.0, 1000.0, "food that boils off water; nothing holds more than water itself does"),
    "area_factor_n": (0.1, 10.0, "true area over that of the effective shape"),
    "film_kg_m2": (0.0, 20.0, "no coating water to 2 cm of it"),
    "crust_conductivity_w_mk": (0.005, 10.0, "still air has 0.026, water 0.6"),
    "crust_heat_j_m3k": (1.0, 1e7, "next to none for a closed form; water has 4.2e6"),
    "still_h_w_m2k": (0.1, 1e7, "1e7 holds the surface at the oil's temperature"),
    "gain_h_j_kgk": (0.0, 1e6, "rise of the coefficient with the steam leaving"),
    "cap_h_w_m2k": (0.1, 1e7, "1e7 holds the surface at the oil's temperature"),
    "lag_h_s": (0.0, 600.0, "bubbling settles within minutes"),
    "vapour_cp_j_kgk": (0.0, 5000.0, "steam has about 2000"),
    "bone_radius_m": (0.0, 0.08, "0.8 of the largest half thickness"),
    "bone_conductivity_w_mk": (1e-6, 10.0, "next to none for a closed form; bone has 0.3 to 0.6"),
    "bone_heat_j_m3k": (1.0, 1e7, "next to none for a closed form; water has 4.2e6"),
    "drip_frac": (0.0, 1.0, "share of the water that can evaporate"),
    "drip_mid_c": (20.0, 120.0, "where protein lets go of water"),
    "drip_steep_per_k": (0.01, 2.0, "over a hundred kelvin to all at once"),
    "drip_lag_s": (0.1, 3600.0, "at once to an hour"),
    "coat_thickness_m": (0.0, 0.01, "no coat to a centimetre"),
    "coat_conductivity_w_mk": (0.005, 10.0, "still air has 0.026, water 0.6"),
    "coat_wet_conductivity_w_mk": (0.005, 10.0, "still air has 0.026, water 0.6"),
    "coat_heat_j_m2k": (0.0, 1e5, "a centimetre of water has 4.2e4"),
    "still_reference_k": (0.0, 500.0, "a temperature difference, or 0 for a constant coefficient"),
    "vapour_diffusivity_m2_s": (0.0, 1e-4, "steam in open air has 2.6e-5"),
}
VAT: Ranges = {
    "oil_mass_kg": (0.05, 5000.0, "from a beaker to a continuous fryer"),
    "oil_start_c": (-40.0, 260.0, "frying oils smoke below it"),
    "heater_w": (0.0, 1e6, "off to a megawatt"),
    "metal_heat_j_k": (0.0, 1e7, "none to tonnes of steel"),
    "swing_k": (0.0, 100.0, "full width of an on/off band"),
    "band_k": (0.0, 100.0, "proportional band, or 0 for on/off"),
    "loss_w_k": (0.0, 1e4, "perfect insulation to an open tank"),
    "room_temp_c": (-40.0, 80.0, "a room"),
    "atmosphere_pa": (2e4, 1.2e5, "from above the highest kitchens to below the deepest"),
    "head_volume_m3": (1e-4, 10.0, "a cup to a tank over the oil"),
    "head_temp_c": (0.0, 260.0, "between the room and the oil"),
    "relief_gauge_pa": (1e3, 3e5, "a working valve of a kettle opens below 3 bar"),
    "relief_slope_kg_spa": (1e-10, 1e-2, "what the working valve passes for each pascal above its setting"),
    "leak_area_m2": (0.0, 1e-2, "tight to a lid left ajar"),
    "vent_area_m2": (0.0, 1e-2, "blocked to a hand's width"),
    "breather_area_m2": (0.0, 1e-2, "blocked to a hand's width"),
    "lid_ua_w_k": (0.0, 1e4, "dry lid to one cooled by water"),
    "lid_heat_j_k": (1.0, 1e6, "foil to a tonne of steel"),
    "lid_room_ua_w_k": (0.0, 1e3, "insulated to one cooled by water"),
    "lid_start_c": (-40.0, 260.0, "between the room and the oil"),
    "air_h_w_m2k": (0.1, 1e4, "still air to an air blast"),
    "air_temp_c": (-40.0, 150.0, "room or heated cabinet"),
    "air_vapour_kg_m3": (0.0, 1.0, "dry air to air full of steam"),
    "air_transfer_m_s": (0.0, 10.0, "no evaporation to an air blast"),
}
SPAN: Ranges = {
    "duration_s": (0.0, LONGEST_S, "nothing fries for longer than a day"),
    "set_c": (-40.0, 260.0, "frying oils smoke below it"),
    "value": (-40.0, 3e5, "a temperature, or a gauge pressure below 3 bar"),
    "ends_at_s": (0.0, LONGEST_S, "nothing fries for longer than a day"),
}
PRECISION: Ranges = {
    "n_core": (4, 500, "a centre needs four cells"),
    "n_crust": (2, 200, "a profile needs two cells"),
    "grading": (0.5, 4.0, "cells of like size to very fine ones at the front"),
    "max_step_s": (1e-3, 600.0, "a millisecond to ten minutes"),
    "max_boiling_step_k": (1e-3, 5.0, "largest move of the boiling point in a step"),
    "passes": (1, 100, "inner passes of a step"),
    "first_step_s": (1e-5, 10.0, "first step after an upset"),
    "early_step_s": (1e-4, 100.0, "steps soon after an upset"),
    "early_frac": (1e-3, 1.0, "steps as a share of the time since an upset"),
    "dry_frac": (1e-6, 0.1, "water with which a coating counts as dry"),
    "error_k": (0.0, 10.0, "taken off a predicted core"),
    "steady_m": (1e-15, 1e-4, "movement of the front at which passes end"),
}
CONDUCTIVITY = (0.005, 500.0, "still air has 0.026, water 0.6, copper 400")
HEAT_CAPACITY = (50.0, 1e5, "water has 4200; a closed form may take a light, slow body")
OIL_CAPACITY = (200.0, 2e4, "oils have 1700 to 2700")
OIL_CURVE = (-40.0, 260.0, "frying oils smoke below it")
PRESSURE_CURVE = (1e3, 2e7, "what the steam equations hold for")
WORKING_C = (0.0, 60.0, 120.0)
"""Where the curves of food and oil are looked at [degC]: between them a quadratic has little room to go
astray.
"""


def outside(value: Any, low: float, high: float) -> bool:
    """Whether a value is no number, not finite or out of its range."""
    try:
        return not low <= float(value) <= high
    except (TypeError, ValueError):
        return True


def refuse(name: str, value: Any, bounds: tuple[float, float, str], where: str = "") -> None:
    """Refuse a value out of its range. Raises InputError: names the field, the range and its reason."""
    low, high, why = bounds
    if outside(value, low, high):
        raise InputError(
            name, value, "{low} to {high} ({why})", where=where, low=f"{low:g}", high=f"{high:g}", why=why
        )


def check(thing: Any, ranges: Ranges, names: Iterable[str], where: str = "") -> None:
    """Refuse a dataclass with a field out of its range; None is left to those fields that allow it."""
    for name in names:
        value, bounds = getattr(thing, name), ranges[name]
        if value.__class__ is float and bounds[0] <= value <= bounds[1]:
            continue  # nearly every value there is
        if value is not None:
            refuse(name, value, bounds, where)


def check_curve(name: str, c: tuple[float, ...], bounds: tuple[float, float, str], where: str = "") -> None:
    """Refuse polynomial coefficients that leave the range anywhere in WORKING_C."""
    for t in WORKING_C:
        value = sum(float(x) * t**i for i, x in enumerate(c))
        if not math.isfinite(value) or outside(value, bounds[0], bounds[1]):
            refuse(name, value, bounds, f"{where}, {t:g} °C" if where else f"{t:g} °C")
