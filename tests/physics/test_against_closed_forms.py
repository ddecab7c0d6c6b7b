"""The engine, driven with explicit properties, against closed forms and other libraries."""

from __future__ import annotations

import csv
import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from scipy.optimize import brentq
from scipy.special import erf, erfc

from frywright.physics.inputs import CLOSE, FINE, ROUTINE, Span
from frywright.physics.solve import Cook, Prescribed, run
from frywright.physics.steam import boiling_temp_c, latent_heat_j_kg
from tests.conftest import boiling_slab, piece, vat
from tests.reference.series import centre, eigenvalues, mean

NO_BOILING_PA = 2.0e6
HERE = Path(__file__).parent.parent / "reference"


def conduction(n, a, k, c, h, start, source, seconds, precision=ROUTINE, **changes):
    """Pure conduction: pressure so high that nothing boils, oil temperature prescribed."""
    p = piece(
        a=a,
        n=n,
        conductivity_w_mk=k,
        heat_capacity_j_kgk=c / 1000.0,
        density_kg_m3=1000.0,
        start_temp_c=start,
        still_h_w_m2k=h,
        cap_h_w_m2k=h,
        gain_h_j_kgk=0.0,
        film_kg_m2=0.0,
        **changes,
    )
    oil = source if isinstance(source, list) else [(0.0, source)]
    told = Prescribed(oil_temp_c=oil, pressure_pa=[(0.0, NO_BOILING_PA)])
    return run(
        Cook(vat=vat(), pieces=[p], spans=[Span(duration_s=seconds, set_c=160.0)], prescribed=told), precision
    )


@pytest.mark.parametrize("n", [0, 1, 2])
@pytest.mark.parametrize("biot", [0.5, 3.0, 15.0, 60.0])
@pytest.mark.parametrize(("precision", "allowed"), [(CLOSE, 0.001), (ROUTINE, 0.003)])
def test_heat_taken_up_follows_the_series(n, biot, precision, allowed):
    """Heat taken up since the drop, from Fourier 0.02 (32 s here) to 1.8 (48 min).

    Within 0.3 % of the exact series at the routine setting and 0.1 % at the close one, at every step; by
    Fourier 0.02 heat has come a fifth of the way in, over five of the routine cells. 400 terms of the series,
    whose tail there is nil.
    """
    a, k, c = 0.015, 0.5, 3.6e6
    got = conduction(n, a, k, c, biot * k / a, 4.0, 140.0, 2900.0, precision)
    fourier = k / c * got.time_s / a**2
    late = fourier > 0.02
    exact = a / (n + 1) * c * 136.0 * (1.0 - mean(n, biot, fourier[late]))
    assert np.max(np.abs(got.heat_j_m2[late, 0] / exact - 1.0)) < allowed
    assert fourier[late][0] < 0.025


@pytest.mark.parametrize(("precision", "kelvin", "share"), [(CLOSE, 0.1, 0.003), (ROUTINE, 0.2, 0.005)])
def test_two_phase_neumann_front_under_pressure(precision, kelvin, share):
    """A cold slab at 12 psig: crust depth 2 l sqrt(a t) and the temperatures behind the front, after 200 s.

    Neumann's solution of the two-phase Stefan problem (Carslaw & Jaeger): error functions on both sides of
    the front, whose root balances conduction in crust and meat with evaporation. Cells are compared with the
    exact mean over each, by the integral of erfc; the slab is so thick that its centre has not felt the oil.
    """
    half, start, oil, pressure, seconds = 0.03, 4.0, 160.0, 101325.0 + 82737.0, 200.0
    boiling, crust_k, crust_c, k, c, water = boiling_temp_c(pressure), 0.15, 1e6, 0.5, 3.6e6, 650.0
    p = piece(
        a=half,
        n=0.0,
        start_temp_c=start,
        film_kg_m2=0.0,
        still_h_w_m2k=1e7,
        cap_h_w_m2k=1e7,
        gain_h_j_kgk=0.0,
        density_kg_m3=1000.0,
        conductivity_w_mk=k,
        heat_capacity_j_kgk=c / 1000.0,
        vapour_cp_j_kgk=0.0,
        crust_conductivity_w_mk=crust_k,
        crust_heat_j_m3k=crust_c,
        water_kg_m3=water,
    )
    told = Prescribed(oil_temp_c=[(0.0, oil)], pressure_pa=[(0.0, pressure)])
    spans = [Span(duration_s=seconds, set_c=oil)]
    got = run(Cook(vat=vat(), pieces=[p], spans=spans, prescribed=told), precision)
    fast, slow = crust_k / crust_c, k / c
    ratio = math.sqrt(fast / slow)

    def left(x):
        crust = crust_k * (oil - boiling) * math.exp(-x * x) / (math.sqrt(math.pi * fast) * math.erf(x))
        meat = (
            k
            * (boiling - start)
            * math.exp(-((x * ratio) ** 2))
            / (math.sqrt(math.pi * slow) * math.erfc(x * ratio))
        )
        return crust - meat - latent_heat_j_kg(boiling) * water * x * math.sqrt(fast)

    root = brentq(left, 1e-6, 3.0)
    late = got.time_s > 30.0
    assert (
        np.max(np.abs(got.crust_m[late, 0] / (2.0 * root * np.sqrt(fast * got.time_s[late])) - 1.0)) < share
    )
    faces = half - np.r_[0.0, np.cumsum(got.final_core_share[:, 0])] * (half - got.crust_m[-1, 0])
    reach = 2.0 * math.sqrt(slow * seconds)
    integral = faces / reach * erfc(faces / reach) - np.exp(-((faces / reach) ** 2)) / math.sqrt(math.pi)
    rise = (boiling - start) / math.erfc(root * ratio)
    exact = start + rise * reach * np.diff(integral) / np.diff(faces)
    assert np.max(np.abs(got.final_core_c[:, 0] - exact)) < kelvin
    assert exact[0] - start < 0.02


@pytest.mark.parametrize("n", [0, 1, 2])
@pytest.mark.parametrize("biot", [0.3, 3.0, 15.0, 60.0])
@pytest.mark.parametrize(("precision", "allowed"), [(CLOSE, 0.1), (ROUTINE, 0.3)])
def test_convective_series(n, biot, precision, allowed):
    """Slab, cylinder and sphere follow the exact series from Fourier 0.05 on.

    0.1 K at the close setting; at the routine one a sphere is 0.25 K off halfway, most of it by steps of up
    to 12 s.
    """
    a, k, c = 0.015, 0.5, 3.6e6
    h = biot * k / a
    got = conduction(n, a, k, c, h, 4.0, 140.0, 1500.0, precision)
    fourier = k / c * got.time_s / a**2
    late = fourier > 0.05
    exact = 140.0 + (4.0 - 140.0) * centre(n, biot, fourier[late])
    assert np.max(np.abs(got.core_temp_c[late, 0] - exact)) < allowed


def test_eigenvalues_are_those_of_the_printed_tables():
    """First eigenvalues equal the four printed digits of the one-term tables (Heisler charts, textbooks)."""
    printed = {(0, 1.0): 0.8603, (1, 1.0): 1.2558, (2, 1.0): 1.5708, (0, 100.0): 1.5552, (1, 100.0): 2.3809}
    for (n, biot), value in printed.items():
        assert eigenvalues(n, biot, 1)[0] == pytest.approx(value, abs=6e-5)


def test_egg_of_the_textbook():
    """Cengel, boiled egg (from memory): 5 cm sphere reaches 70 degC after 865 s; exact series 861.5 s."""
    got = conduction(2, 0.025, 0.627, 0.627 / 0.151e-6, 1200.0, 5.0, 95.0, 1000.0)
    assert np.interp(70.0, got.core_temp_c[:, 0], got.time_s) == pytest.approx(861.5, abs=4.0)


def test_neumann_moving_front_within_one_percent():
    """Crust growth 2 lambda sqrt(alpha t); sqrt(pi) l exp(l^2) erf(l) = Ste (one-phase Stefan problem)."""
    boiling, oil = boiling_temp_c(101325.0), 180.0
    k, c, water = 0.15, 1.0e6, 650.0
    p = piece(
        a=0.05,
        n=0.0,
        start_temp_c=boiling - 1e-4,
        film_kg_m2=0.0,
        still_h_w_m2k=1e7,
        cap_h_w_m2k=1e7,
        gain_h_j_kgk=0.0,
        crust_conductivity_w_mk=k,
        crust_heat_j_m3k=c,
        vapour_cp_j_kgk=0.0,
        water_kg_m3=water,
    )
    told = Prescribed(oil_temp_c=[(0.0, oil)], pressure_pa=[(0.0, 101325.0)])
    got = run(Cook(vat=vat(), pieces=[p], spans=[Span(duration_s=900.0, set_c=160.0)], prescribed=told))
    ste = c * (oil - boiling) / (latent_heat_j_kg(boiling) * water)
    root = brentq(lambda x: math.sqrt(math.pi) * x * math.exp(x * x) * erf(x) - ste, 1e-6, 3.0)
    late = got.time_s > 30.0
    exact = 2.0 * root * np.sqrt(k / c * got.time_s[late])
    assert np.max(np.abs(got.crust_m[late, 0] / exact - 1.0)) < 0.01


def test_neumann_roots_equal_the_reference_table():
    """The roots used above equal the independently computed table of lambda against Ste."""
    with (HERE / "neumann_lambda.csv").open() as table:
        for row in csv.DictReader(table):
            ste = float(row["Ste"])
            root = brentq(lambda x, s=ste: math.sqrt(math.pi) * x * math.exp(x * x) * erf(x) - s, 1e-6, 3.0)
            assert root == pytest.approx(float(row["lambda_exact"]), abs=1e-7)


def test_quasi_steady_crust_thickness():
    """Without crust heat storage X = -k/h + sqrt((k/h)^2 + 2k(T_oil - T_b)t/(C L)): 0.78, 1.35, 2.00 mm."""
    boiling = boiling_temp_c(101325.0)
    got = run(boiling_slab(600.0, a=0.05, water_kg_m3=850.0))
    for seconds, printed_mm in ((120.0, 0.78), (300.0, 1.35), (600.0, 2.00)):
        exact = -0.1 / 400 + math.sqrt(
            (0.1 / 400) ** 2 + 2 * 0.1 * (180 - boiling) * seconds / (850 * latent_heat_j_kg(boiling))
        )
        crust = np.interp(seconds, got.time_s, got.crust_m[:, 0])
        assert crust == pytest.approx(exact, rel=5e-3)
        assert 1e3 * crust == pytest.approx(printed_mm, abs=0.011)


@pytest.mark.slow
@pytest.mark.parametrize(("precision", "allowed"), [(FINE, 2e-5), (CLOSE, 5e-3), (ROUTINE, 5e-3)])
def test_a_coating_dries_when_its_own_equation_says(precision, allowed):
    """Meat at boiling, so that all heat boils water of the coating: tau dh/dt = h0 - (1 - b) h with
    b = gain (T_oil - T_sat) / L, solved by hand, and m = h (T_oil - T_sat) / L. Share of its water that a
    coating has by the hand's solution as the engine begins its crust.
    """
    boiling, oil, still, gain, lag = boiling_temp_c(101325.0), 180.0, 300.0, 17e3, 20.0
    per_latent = (oil - boiling) / latent_heat_j_kg(boiling)
    rate, told = (
        (1.0 - gain * per_latent) / lag,
        Prescribed(oil_temp_c=[(0, oil)], pressure_pa=[(0, 101325.0)]),
    )
    end = still / (rate * lag)
    changes = {"still_h_w_m2k": still, "gain_h_j_kgk": gain, "lag_h_s": lag, "cap_h_w_m2k": 5000.0}
    for film in np.linspace(0.1, 0.6, 9):
        wet = piece(a=0.02, start_temp_c=boiling - 1e-4, film_kg_m2=film, **changes)
        got = run(
            Cook(vat=vat(), pieces=[wet], spans=[Span(duration_s=90.0, set_c=oil)], prescribed=told),
            precision,
        )
        t = got.time_s[np.argmax(got.crust_m[:, 0] > 0.0)]
        gone = per_latent * (end * t + (still - end) / rate * (1.0 - math.exp(-rate * t)))
        assert 5.0 < t < 45.0
        assert abs(1.0 - gone / film) < allowed


def test_boiling_temperature_and_latent_heat_against_coolprop():
    """0 to 15 psig, 0 to 3000 m: boiling within 0.01 K, latent heat within 200 J/kg (IAPWS-95 in
    CoolProp).
    """
    from CoolProp.CoolProp import PropsSI

    from frywright.model.kitchen import pressure_at_pa
    from frywright.model.units import PSI

    for altitude in np.linspace(0.0, 3000.0, 7):
        for psi in np.linspace(0.0, 15.0, 7):
            p = pressure_at_pa(altitude) + psi * PSI
            assert boiling_temp_c(p) == pytest.approx(
                PropsSI("T", "P", p, "Q", 0, "Water") - 273.15, abs=0.01
            )
            heat = PropsSI("H", "P", p, "Q", 1, "Water") - PropsSI("H", "P", p, "Q", 0, "Water")
            assert latent_heat_j_kg(boiling_temp_c(p)) == pytest.approx(heat, abs=200.0)


def test_standard_atmosphere_equals_the_iso_table():
    """Pressure against altitude equals ISO 2533 as tabulated to 0.1 Pa."""
    from frywright.model.kitchen import pressure_at_pa

    with (HERE / "standard_atmosphere.csv").open() as table:
        for row in csv.DictReader(table):
            assert pressure_at_pa(float(row["altitude_m"])) == pytest.approx(
                float(row["pressure_pa"]), abs=0.2
            )


def fipy_centre_c(step_s: float) -> float:
    """Centre of a slab [degC] after 600 s by FiPy: 200 cells, backward Euler, k = 0.40 + 0.002 T."""
    from fipy import CellVariable, DiffusionTerm, Grid1D, ImplicitSourceTerm, TransientTerm

    a, c, h, oil, cells = 0.014, 3.6e6, 350.0, 150.0, 200
    mesh = Grid1D(nx=cells, dx=a / cells)
    temp = CellVariable(mesh=mesh, value=4.0, hasOld=True)
    outer = np.zeros(cells)
    outer[-1] = 1.0
    width = a / cells
    taken, given = (CellVariable(mesh=mesh, value=0.0) for _ in range(2))
    equation = TransientTerm(coeff=c) == (
        DiffusionTerm(coeff=0.40 + 0.002 * temp.faceValue) - ImplicitSourceTerm(coeff=taken) + given
    )
    for _ in range(round(600.0 / step_s)):
        temp.updateOld()
        k_last = 0.40 + 0.002 * temp.value[-1]
        u = 1.0 / (1.0 / h + 0.5 * width / k_last) / width
        taken.setValue(u * outer)
        given.setValue(u * oil * outer)
        equation.solve(var=temp, dt=step_s)
    return float(temp.value[0])


@pytest.mark.slow
def test_fipy_agrees_on_conduction_with_changing_conductivity():
    """Centre within 0.05 K of FiPy 4. Its error in time is of the first order: steps of 4 and 2 s lead to
    steps of none, within 0.002 K of where 2 and 1 s lead.
    """
    coarse, fine = fipy_centre_c(4.0), fipy_centre_c(2.0)
    assert 0.1 < fine - coarse < 0.4
    got = conduction(0, 0.014, (0.40, 0.002), 3.6e6, 350.0, 4.0, 150.0, 600.0, CLOSE)
    assert got.core_temp_c[-1, 0] == pytest.approx(2.0 * fine - coarse, abs=0.05)


def test_second_order_in_space():
    """Halving the cells divides the error of centre and crust by about four."""

    def solve(n_core, n_crust):
        p = piece(a=0.015, n=1.0, film_kg_m2=0.0)
        told = Prescribed(oil_temp_c=[(0.0, 165.0)], pressure_pa=[(0.0, 101325.0)])
        fine = replace(FINE, n_core=n_core, n_crust=n_crust, max_step_s=0.5, grading=1.1)
        return run(
            Cook(vat=vat(), pieces=[p], spans=[Span(duration_s=400.0, set_c=165.0)], prescribed=told), fine
        )

    best, coarse, middle = (solve(160, 40), solve(12, 3), solve(24, 6))
    for curve in ("core_temp_c", "crust_m"):
        first = abs(getattr(coarse, curve)[-1, 0] - getattr(best, curve)[-1, 0])
        second = abs(getattr(middle, curve)[-1, 0] - getattr(best, curve)[-1, 0])
        assert 3.2 < first / second < 5.5, curve


def test_second_order_in_time():
    """Halving the step divides the error by about four, on a smooth ramp of the oil."""
    ramp = [(0.0, 4.0), (3000.0, 124.0)]

    def solve(step):
        fine = replace(FINE, n_core=60, max_step_s=step, first_step_s=0.1, early_step_s=1.0, early_frac=0.06)
        return conduction(0, 0.012, 0.5, 3.6e6, 300.0, 4.0, ramp, 1200.0, fine).core_temp_c[-1, 0]

    best, coarse, middle = solve(1.0), solve(32.0), solve(16.0)
    assert 3.2 < abs(coarse - best) / abs(middle - best) < 5.0


def test_the_start_rule_refines():
    """Halving the steps after the drop divides the error of heat and centre by three to five: it is part of
    Precision.
    """

    def errors(scale):
        start = {"first_step_s": 0.1 * scale, "early_step_s": scale, "early_frac": 0.06 * scale}
        got = conduction(
            2,
            0.015,
            0.5,
            3.6e6,
            500.0,
            4.0,
            140.0,
            240.0,
            replace(FINE, grading=1.6, max_step_s=60.0, **start),
        )
        fourier = 0.5 / 3.6e6 * got.time_s / 0.015**2
        late = fourier > 0.05
        heat = got.heat_j_m2[late, 0] / (0.005 * 3.6e6 * 136.0) - (1.0 - mean(2, 15.0, fourier[late]))
        core = got.core_temp_c[late, 0] - (140.0 - 136.0 * centre(2, 15.0, fourier[late]))
        return np.max(np.abs(heat)), np.max(np.abs(core))

    for coarse, middle in zip(errors(2.0), errors(1.0), strict=True):
        assert 3.0 < coarse / middle < 5.0


def test_bone_slows_the_meat_beside_it_like_an_insulated_core():
    """A bone that neither conducts nor stores makes an annulus; the meat beside it is its insulated face."""
    hollow = conduction(
        0,
        0.015,
        0.5,
        3.6e6,
        1e5,
        4.0,
        140.0,
        600.0,
        bone_radius_m=0.005,
        bone_conductivity_w_mk=1e-6,
        bone_heat_j_m3k=1.0,
    )
    slab = conduction(0, 0.010, 0.5, 3.6e6, 1e5, 4.0, 140.0, 600.0)
    at = np.array([120.0, 300.0, 590.0])
    a = np.interp(at, hollow.time_s, hollow.core_temp_c[:, 0])
    b = np.interp(at, slab.time_s, slab.core_temp_c[:, 0])
    assert np.max(np.abs(a - b)) < 0.6
