"""Meat by its heat: the polynomials, and pieces whose heat capacity changes with temperature."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from numpy.polynomial import Polynomial
from scipy.integrate import quad, solve_ivp

from frywright.catalog import load
from frywright.model.errors import InputError
from frywright.physics.heat import by_heat
from frywright.physics.inputs import CLOSE, ROUTINE, Span
from frywright.physics.properties import meat
from frywright.physics.solve import Cook, Prescribed, run
from tests.conftest import four_classes, piece, pressure_cook, vat

FAST = (0.35, 0.002, 0.0), (2800.0, 8.0, 0.0)
"""Conductivity and heat capacity that change by two thirds and a third over 0 to 120 degC: no food does."""


@pytest.mark.parametrize("name", sorted(load.compositions()))
def test_foods_by_their_heat(name):
    """Of every food of the catalog, from -5 to 130 degC: heat is the integral of its capacity (SciPy's
    quadrature), k/c within 2e-5 and temperature within 1 mK of what they are at that heat.
    """
    food = meat(load.compositions()[name])
    k, c = (Polynomial(v) for v in (food.conductivity_w_mk, food.heat_capacity_j_kgk))
    rho = food.density_kg_m3
    found = by_heat(food.conductivity_w_mk, food.heat_capacity_j_kgk, rho)
    assert found[:3] == pytest.approx([rho * x for x in food.heat_capacity_j_kgk])
    spread, warmth = Polynomial(found[3:8]), Polynomial(found[8:])
    for t in np.linspace(-5.0, 130.0, 28):
        heat = rho * quad(c, 0.0, t)[0]
        assert spread(2.0 * heat) == pytest.approx(k(t) / (rho * c(t)), rel=2e-5)
        assert heat * warmth(heat) == pytest.approx(t, abs=1e-3)


def test_a_heat_capacity_that_changes_too_fast_is_refused():
    """What a quartic misses by over 1 % is refused by name, not taken for something else."""
    with pytest.raises(InputError, match=r"k/c has a 2\.5% gap"):
        by_heat((0.5, 0.001, 0.0), (1800.0, 15.0, 0.0), 1000.0)
    with pytest.raises(InputError, match="within 1%"):
        by_heat((0.5, 0.0, 0.0), (1000.0, -9.0, 0.0), 1000.0)


def lines(bone, coat, a=0.015, start=4.0, face=100.0, cells=300):
    """Centre of the meat [degC] and heat taken up [J/m2] by a slab after 200, 300 and 600 s.

    A method of lines in temperature, by SciPy's BDF. Inside ``bone`` c is 2.4e6 and k 0.4, outside FAST at
    1000 kg/m3; from the drop on a wet ``coat``, or the face itself, stands at ``face``.
    """
    edges = np.linspace(0.0, bone, 81)[:-1] if bone else np.zeros(0)
    edges = np.concatenate([edges, np.linspace(bone, a, cells + 1)])
    wide, inner = np.diff(edges), len(edges) - 1 - cells
    meat_k, meat_c = Polynomial(FAST[0]), 1000.0 * Polynomial(FAST[1])
    in_bone = np.arange(len(wide)) < inner

    def rates(_, t):
        k, c = np.where(in_bone, 0.4, meat_k(t)), np.where(in_bone, 2.4e6, meat_c(t))
        flux = np.diff(t) / (0.5 * wide[1:] / k[1:] + 0.5 * wide[:-1] / k[:-1])
        last = (face - t[-1]) / (
            0.5 * wide[-1] / (k[-1] if coat else 0.5 * (k[-1] + meat_k(face))) + coat / 0.5
        )
        return np.diff(np.concatenate([[0.0], flux, [last]])) / (wide * c)

    near = (np.eye(len(wide)) + np.eye(len(wide), k=1) + np.eye(len(wide), k=-1)) > 0
    times = [200.0, 300.0, 600.0]
    found = solve_ivp(
        rates,
        (0.0, 600.0),
        np.full(len(wide), start),
        method="BDF",
        t_eval=times,
        rtol=1e-7,
        atol=1e-7,
        jac_sparsity=near,
    ).y
    stored = np.where(in_bone, 2.4e6 * (found.T - start), (meat_c.integ()(found.T) - meat_c.integ()(start)))
    at = found[0] if not inner else 0.5 * (found[inner - 1] + found[inner])
    return at, stored @ wide


@pytest.mark.slow
@pytest.mark.parametrize(("bone", "coat"), [(0.0, 0.0), (0.004, 0.0), (0.0, 0.002)])
@pytest.mark.parametrize(("precision", "kelvin"), [(CLOSE, 0.04), (ROUTINE, 0.1)])
def test_a_fast_changing_meat_follows_a_method_of_lines(bone, coat, precision, kelvin):
    """With and without a bone, from a face that jumps by 96 K, and under a coat that stays wet.

    Core and heat taken up, and the books close to rounding, although capacity and conductivity change as no
    food's do.
    """
    p = piece(
        a=0.015,
        n=0.0,
        bone_radius_m=bone,
        conductivity_w_mk=FAST[0],
        heat_capacity_j_kgk=FAST[1],
        density_kg_m3=1000.0,
        start_temp_c=4.0,
        still_h_w_m2k=1e6,
        cap_h_w_m2k=1e6,
        gain_h_j_kgk=0.0,
        film_kg_m2=500.0 * coat,
        coat_thickness_m=coat,
        coat_wet_conductivity_w_mk=0.5,
    )
    told = Prescribed(oil_temp_c=[(0.0, 100.0)], pressure_pa=[(0.0, 2e6)])  # nothing boils
    cook = Cook(
        vat=vat(),
        pieces=[p],
        spans=[Span(duration_s=t, set_c=100.0) for t in (200.0, 100.0, 300.0)],
        prescribed=told,
    )
    got = run(cook, precision)
    core, heat = lines(bone, coat)
    at = np.searchsorted(got.time_s, [199.999, 299.999, 599.999])
    assert got.core_temp_c[at, 0] == pytest.approx(core, abs=kelvin)
    assert got.heat_j_m2[at, 0] == pytest.approx(heat, rel=1e-3)
    assert got.report.energy_gap_frac < 1e-11


@pytest.mark.parametrize("bone", [0.0, 0.3])
@pytest.mark.parametrize("wet", [{}, {"coat_thickness_m": 1e-3, "coat_heat_j_m2k": 1600.0, "drip_frac": 0.3}])
def test_the_books_close_whatever_boils(bone, wet):
    """To rounding, for a meat of changing heat capacity under pressure, vented and lifted: a crust
    begins, cells flash, in the thinnest piece as far as the bone.
    """
    light = meat(load.compositions()["chicken_light_meat"])
    parts = [
        replace(
            p,
            bone_radius_m=bone * p.half_thickness_m,
            conductivity_w_mk=light.conductivity_w_mk,
            heat_capacity_j_kgk=light.heat_capacity_j_kgk,
            **wet,
        )
        for p in four_classes()
    ]
    got = run(pressure_cook(600.0, 60.0, pieces=parts))
    assert got.crust_m[-1, 3] > 5e-4
    assert got.core_temp_c[:, 3].max() > 105.0
    assert got.report.energy_gap_frac < 1e-12
