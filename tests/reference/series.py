"""Exact series for a slab, cylinder and sphere with a convective surface (Carslaw & Jaeger).

theta = sum C_i exp(-l_i^2 Fo) at the centre; eigenvalues from
  slab      l tan l = Bi
  cylinder  l J1(l) / J0(l) = Bi
  sphere    1 - l cot l = Bi
"""

from __future__ import annotations

import numpy as np
from scipy.optimize import brentq
from scipy.special import j0, j1, jn_zeros


def eigenvalues(n: int, biot: float, count: int) -> np.ndarray:
    """First ``count`` roots for n = 0, 1, 2."""
    eps = 1e-9
    roots = []
    zeros0, zeros1 = jn_zeros(0, count), np.concatenate([[0.0], jn_zeros(1, count)])
    for i in range(count):
        if n == 0:
            low, high = i * np.pi + eps, (i + 0.5) * np.pi - eps
            roots.append(brentq(lambda x: x * np.sin(x) - biot * np.cos(x), low, high))
        elif n == 1:
            roots.append(brentq(lambda x: x * j1(x) - biot * j0(x), zeros1[i] + eps, zeros0[i] - eps))
        else:
            low, high = i * np.pi + eps, (i + 1) * np.pi - eps
            roots.append(brentq(lambda x: (1 - biot) * np.sin(x) - x * np.cos(x), low, high))
    return np.array(roots)


def centre(n: int, biot: float, fourier: np.ndarray, count: int = 40) -> np.ndarray:
    """Unaccomplished change (T - T_inf) / (T_0 - T_inf) at the centre."""
    x = eigenvalues(n, biot, count)
    c = _weights(n, x)
    return (c[:, None] * np.exp(-(x[:, None] ** 2) * np.atleast_1d(fourier))).sum(axis=0)


def _weights(n: int, x: np.ndarray) -> np.ndarray:
    """Coefficients C_i of the centre for eigenvalues ``x``."""
    if n == 0:
        return 4 * np.sin(x) / (2 * x + np.sin(2 * x))
    if n == 1:
        return 2 * j1(x) / (x * (j0(x) ** 2 + j1(x) ** 2))
    return 4 * (np.sin(x) - x * np.cos(x)) / (2 * x - np.sin(2 * x))


def mean(n: int, biot: float, fourier: np.ndarray, count: int = 400) -> np.ndarray:
    """Unaccomplished change of the mean temperature over the volume; one minus it is the share of heat taken
    up.
    """
    x = eigenvalues(n, biot, count)
    shape = (np.sin(x) / x, 2 * j1(x) / x, 3 * (np.sin(x) - x * np.cos(x)) / x**3)[n]
    return ((_weights(n, x) * shape)[:, None] * np.exp(-(x[:, None] ** 2) * np.atleast_1d(fourier))).sum(
        axis=0
    )
