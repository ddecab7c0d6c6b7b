"""Meat by its heat, the unknown of the march: u = H(T), zero at 0 degC [J/m3].

Heat capacity c and conductivity k are quadratics of temperature. By heat the march needs their ratio, since
k dT = k/c du, and temperature, for what is read off. Both are polynomials here, because a division a cell and
a step would cost more than everything else.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError, Phrase
from frywright.physics.ranges import WORKING_C

Array = NDArray[np.float64]
Quadratic = tuple[float, float, float]
LOW_C, HIGH_C = -20.0, 200.0
"""Where the polynomials are fitted: from frozen pieces to dry ones in hot oil (own choice)."""
FIT_FRAC = 0.01
"""Largest relative gap of the polynomial of k/c, as of a table and its quadratic; catalog: 5e-6."""


@lru_cache(maxsize=4096)
def by_heat(conductivity: Quadratic, capacity_j_kgk: Quadratic, density_kg_m3: float) -> tuple[float, ...]:
    """What ``PieceGiven`` in lanes/group.h has of a meat: c0 to c2, d0 to d4, w1 to w4.

    ``d`` is k/c as a quartic of the sum of two cells' heat, which is twice that of the face between them;
    ``w`` is temperature over heat as a cubic of heat.

    Raises
    ------
    InputError
        k/c changes so fast with temperature that a quartic misses it.
    """
    c0, c1, c2 = (density_kg_m3 * c for c in capacity_j_kgk)
    unit = c0 * HIGH_C

    def heat(t: Array) -> Array:
        return t * (c0 + t * (c1 / 2 + t * c2 / 3)) / unit

    def spread(t: Array) -> Array:
        return np.asarray(np.polynomial.polynomial.polyval(t, conductivity) / (c0 + t * (c1 + t * c2)))

    def fit(terms: int, value: Callable[[Array], Array]) -> Array:
        """Coefficients through Chebyshev's points of temperature."""
        places = np.cos((2 * np.arange(terms) + 1) * np.pi / (2 * terms))
        t = 0.5 * (LOW_C + HIGH_C) + 0.5 * (HIGH_C - LOW_C) * places
        return np.asarray(np.linalg.solve(np.vander(heat(t), terms, increasing=True), value(t)))

    d = fit(5, spread)
    w = fit(4, lambda t: 1.0 / (c0 + t * (c1 / 2 + t * c2 / 3)))
    t = np.linspace(WORKING_C[0], WORKING_C[-1], 25)
    gap = np.max(np.abs(np.polynomial.polynomial.polyval(heat(t), d) / spread(t) - 1.0))
    if not gap <= FIT_FRAC:
        raise InputError(
            "heat_capacity",
            Phrase("curve under which k/c has a {gap} gap to its quartic", {"gap": f"{gap:.1%}"}),
            "within {most}",
            most=f"{FIT_FRAC:.0%}",
        )
    d, w = d / (2.0 * unit) ** np.arange(5), w / unit ** np.arange(4)
    return (c0, c1, c2, *d.tolist(), *w.tolist())
