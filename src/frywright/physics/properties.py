"""Thermal properties of food from its composition (Choi & Okos components, ASHRAE mixing)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from frywright.catalog import load
from frywright.model.food import Composition

REFERENCE_C = 20.0
FIT_LOW_C, FIT_HIGH_C = 0.0, 110.0


def component(name: str, quantity: str, temp_c: ArrayLike) -> NDArray[np.float64]:
    """Property of a pure component at ``temp_c`` in SI.

    Parameters
    ----------
    name : water, protein, fat, carbohydrate, fiber or ash
    quantity : conductivity [W/(m K)], density [kg/m3] or heat_capacity [J/(kg K)]
    temp_c : float or array [degC]; holds -40..150

    References
    ----------
    ashrae_refrigeration_ch9, thermal property equations for food components.
    """
    entry = load.table("foods/components.toml")["component"][name][quantity]
    scale = 1000.0 if entry["unit"].startswith("kJ") else 1.0
    values: NDArray[np.float64] = scale * np.polynomial.polynomial.polyval(
        np.asarray(temp_c, dtype=float), entry["coefficients"]
    )
    return values


def density_kg_m3(food: Composition, temp_c: float) -> float:
    """Density of a mixture: 1 / sum(x_i / rho_i) [kg/m3]."""
    shares = food.fractions.items()
    return float(1.0 / sum(x / component(name, "density", temp_c) for name, x in shares))


def heat_capacity_j_kgk(food: Composition, temp_c: ArrayLike) -> NDArray[np.float64]:
    """Heat capacity of a mixture: sum x_i cp_i [J/(kg K)]."""
    parts = [x * component(name, "heat_capacity", temp_c) for name, x in food.fractions.items()]
    return np.asarray(np.sum(parts, axis=0))


def conductivity_w_mk(food: Composition, temp_c: ArrayLike) -> NDArray[np.float64]:
    """Conductivity of a mixture in parallel: sum v_i k_i by volume share [W/(m K)].

    Runs about 5 % above measured white chicken meat (Sweat, Haugh & Stadelman 1973).
    """
    volumes = {n: x / component(n, "density", temp_c) for n, x in food.fractions.items()}
    total = np.sum(list(volumes.values()), axis=0)
    parts = [v / total * component(n, "conductivity", temp_c) for n, v in volumes.items()]
    return np.asarray(np.sum(parts, axis=0))


@dataclass(frozen=True, slots=True)
class Meat:
    """Engine properties of a raw food: quadratics over temperature, fixed density."""

    density_kg_m3: float
    conductivity_w_mk: tuple[float, ...]
    heat_capacity_j_kgk: tuple[float, ...]
    water_frac: float

    @property
    def water_kg_m3(self) -> float:
        """Water in a cubic metre."""
        return self.water_frac * self.density_kg_m3


@cache
def meat(food: Composition) -> Meat:
    """Quadratics through the mixture rules over 0..110 degC; density at 20 degC.

    The mass of a piece does not change when it expands, so the density is held.
    """
    temps = np.linspace(FIT_LOW_C, FIT_HIGH_C, 56)

    def fit(values: NDArray[np.float64]) -> tuple[float, ...]:
        return tuple(float(c) for c in np.polyfit(temps, values, 2)[::-1])

    return Meat(
        density_kg_m3=density_kg_m3(food, REFERENCE_C),
        conductivity_w_mk=fit(conductivity_w_mk(food, temps)),
        heat_capacity_j_kgk=fit(heat_capacity_j_kgk(food, temps)),
        water_frac=food.fractions["water"],
    )


BONE_DENSITY_KG_M3, BONE_HEAT_J_M3K, BONE_CONDUCTIVITY_W_MK = 1300.0, 2.4e6, 0.4
"""Bone of young birds with its marrow (from memory: 1300 to 1900 kg/m3, 1.3 to 1.9 kJ/(kg K), 0.3 to 0.6 W/(m
K)).
"""


@cache
def meat_with_bone(food: Meat, bone_mass_frac: float) -> Meat:
    """Meat and bone as one body: water, heat and conductivity shared out by volume.

    ``water_frac`` becomes the water of the whole piece, bone and all.
    """
    if bone_mass_frac == 0.0:
        return food
    bone = bone_mass_frac / BONE_DENSITY_KG_M3
    share = bone / (bone + (1.0 - bone_mass_frac) / food.density_kg_m3)
    density = 1.0 / (bone + (1.0 - bone_mass_frac) / food.density_kg_m3)
    heat = [(1.0 - share) * c * food.density_kg_m3 / density for c in food.heat_capacity_j_kgk]
    heat[0] += share * BONE_HEAT_J_M3K / density
    conductivity = [(1.0 - share) * k for k in food.conductivity_w_mk]
    conductivity[0] += share * BONE_CONDUCTIVITY_W_MK
    return Meat(density, tuple(conductivity), tuple(heat), food.water_frac * (1.0 - bone_mass_frac))
