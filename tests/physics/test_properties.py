"""Food properties against measured values and an independent implementation of the components."""

from __future__ import annotations

import numpy as np
import pytest

from frywright.catalog import load
from frywright.physics.properties import (
    component,
    conductivity_w_mk,
    density_kg_m3,
    heat_capacity_j_kgk,
    meat,
)

NAMES = {
    "water": "Water",
    "protein": "Protein",
    "fat": "Fat",
    "carbohydrate": "Carbohydrate",
    "fiber": "Fiber",
    "ash": "Ash",
}


@pytest.mark.parametrize("name", sorted(NAMES))
def test_components_equal_coolprop(name):
    """Every component equals CoolProp's incompressible food components (Choi & Okos, ASHRAE)."""
    from CoolProp.CoolProp import PropsSI

    for t in (5.0, 40.0, 80.0, 120.0):
        for ours, theirs in (("conductivity", "L"), ("density", "D"), ("heat_capacity", "C")):
            value = PropsSI(theirs, "T", t + 273.15, "P", 5e5, f"INCOMP::Food{NAMES[name]}")
            assert float(component(name, ours, t)) == pytest.approx(value, rel=1e-6)


def test_mixture_table():
    """Light meat at 5/40/80 degC: k .498/.545/.582, cp 3.58/3.59/3.62 (computed table of the reference
    notes).
    """
    food = load.compositions()["chicken_light_meat"]
    t = np.array([5.0, 40.0, 80.0])
    assert conductivity_w_mk(food, t) == pytest.approx([0.498, 0.545, 0.582], abs=0.002)
    assert heat_capacity_j_kgk(food, t) / 1e3 == pytest.approx([3.58, 3.59, 3.62], abs=0.01)
    assert density_kg_m3(food, 20.0) == pytest.approx(1060.0, abs=2.0)


def test_measured_white_meat_lies_below_the_parallel_model():
    """Sweat, Haugh & Stadelman 1973: k = 0.476 + 0.00060 T, 0..20 degC; parallel runs 3 to 8 % above."""
    food = load.compositions()["chicken_light_meat"]
    for t in (5.0, 10.0, 20.0):
        ratio = float(conductivity_w_mk(food, t)) / (0.476 + 0.00060 * t)
        assert 1.02 < ratio < 1.08


def test_heat_capacity_near_handbook_values():
    """Geankoplis A.4-1: poultry (74 % water) 3.31, potato (75 %) 3.52; ASHRAE list cod 3.77 kJ/(kg K), within
    9 %.
    """
    for key, value in (("chicken_light_meat", 3.31), ("potato", 3.52), ("cod", 3.77)):
        got = float(heat_capacity_j_kgk(load.compositions()[key], 20.0)) / 1e3
        assert got == pytest.approx(value, rel=0.09)


def test_quadratics_follow_the_mixture():
    """Engine quadratics stay within 0.2 % of the mixture over 0..110 degC."""
    t = np.linspace(0.0, 110.0, 45)
    for food in load.compositions().values():
        fitted = meat(food)
        k = np.polynomial.polynomial.polyval(t, fitted.conductivity_w_mk)
        c = np.polynomial.polynomial.polyval(t, fitted.heat_capacity_j_kgk)
        assert np.max(np.abs(k / conductivity_w_mk(food, t) - 1)) < 2e-3
        assert np.max(np.abs(c / heat_capacity_j_kgk(food, t) - 1)) < 2e-3


def test_oil_expands_by_twelve_percent():
    """20 to 175 degC: about 12 % by volume (density slope of Rodenbush et al. 1999)."""
    for oil in load.oils().values():
        assert oil.density_kg_m3(20.0) / oil.density_kg_m3(175.0) == pytest.approx(1.12, abs=0.01)
