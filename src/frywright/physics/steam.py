"""Saturated steam: boiling temperature and latent heat.

The boiling temperature is the backward equation of region 4 of the IAPWS industrial
formulation 1997 (eq. 31, coefficients of table 34); the latent heat is a quadratic through
tabulated IAPWS-95 values from 80 to 125 degC (see tests/reference/textbook/steam.toml).
The march has the same equations for all its lanes (``lanes/physics.h``); a test compares them.
"""

import math

# IAPWS-IF97 table 34 (region 4), printed values.
N1, N2, N3 = 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2
N4, N5, N6 = 0.12020824702470e5, -0.32325550322333e7, 0.14915108613530e2
N7, N8, N9 = -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849
N10 = 0.65017534844798e3

# Least squares through IAPWS-95 (CoolProp 8) from 78 to 126 degC; largest gap 93 J/kg.
LATENT_0, LATENT_1, LATENT_2 = 2.48638108e6, -1.95302703e3, -3.46620296

KELVIN = 273.15
GAS_STEAM_J_KGK = 461.526  # IAPWS-IF97, specific gas constant of water


def boiling_temp_c(pressure_pa: float) -> float:
    """Boiling temperature of water [degC] at absolute pressure [Pa]; holds 611 Pa..22 MPa."""
    beta = math.sqrt(math.sqrt(pressure_pa * 1e-6))
    square = beta * beta
    e = square + N3 * beta + N6
    f = N1 * square + N4 * beta + N7
    g = N2 * square + N5 * beta + N8
    d = 2.0 * g / (-f - math.sqrt(f * f - 4.0 * e * g))
    sum_ = N10 + d
    return 0.5 * (sum_ - math.sqrt(sum_ * sum_ - 4.0 * (N9 + N10 * d))) - KELVIN


def saturation_pa(temp_c: float) -> float:
    """Pressure of saturated steam [Pa] at a temperature [degC] (IAPWS-IF97 eq. 30); holds 0..374 degC."""
    kelvin = temp_c + KELVIN
    theta = kelvin + N9 / (kelvin - N10)
    a = theta * (theta + N1) + N2
    b = theta * (N3 * theta + N4) + N5
    c = theta * (N6 * theta + N7) + N8
    root = 2.0 * c / (-b + math.sqrt(b * b - 4.0 * a * c))
    return 1e6 * root * root * root * root


def latent_heat_j_kg(temp_c: float) -> float:
    """Latent heat of evaporation [J/kg] at saturation temperature [degC]; holds 80..125 degC."""
    return LATENT_0 + temp_c * (LATENT_1 + LATENT_2 * temp_c)
