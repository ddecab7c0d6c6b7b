// Saturated steam, as steam.py has it.
#pragma once
#include "lanes.h"

// Saturated steam: IAPWS-IF97 region 4, table 34; latent heat: quadratic through IAPWS-95 (steam.py).
constexpr double N1 = 0.11670521452767e4, N2 = -0.72421316703206e6, N3 = -0.17073846940092e2, N4 = 0.12020824702470e5,
                 N5 = -0.32325550322333e7, N6 = 0.14915108613530e2, N7 = -0.48232657361591e4, N8 = 0.40511340542057e6,
                 N9 = -0.23855557567849, N10 = 0.65017534844798e3;
constexpr double LATENT_0 = 2.48638108e6, LATENT_1 = -1.95302703e3, LATENT_2 = -3.46620296;
constexpr double KELVIN = 273.15, GAS_STEAM = 461.526, GAS_AIR = 287.053;  // [J/(kg K)]; air: ISO 2533

INLINE V boiling_temp(V pressure) {
  V beta = root(root(pressure * 1e-6)), square = beta * beta;
  V e = square + N3 * beta + N6, f = N1 * square + N4 * beta + N7, g = N2 * square + N5 * beta + N8;
  V d = 2.0 * g / (-f - root(f * f - 4.0 * e * g)), sum = N10 + d;
  return 0.5 * (sum - root(sum * sum - 4.0 * (N9 + N10 * d))) - KELVIN;
}

INLINE V saturation(V temp) {
  V kelvin = temp + KELVIN, theta = kelvin + N9 / (kelvin - N10);
  V a = theta * (theta + N1) + N2, b = theta * (N3 * theta + N4) + N5, c = theta * (N6 * theta + N7) + N8;
  V r = 2.0 * c / (-b + root(b * b - 4.0 * a * c));
  return 1e6 * (r * r) * (r * r);
}

INLINE V latent_heat(V temp) { return LATENT_0 + temp * (LATENT_1 + LATENT_2 * temp); }
