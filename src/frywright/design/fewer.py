"""A look at a program over many loads from fewer cooks: a fit says which loads are far above the limit.

The margin of a heavy piece is close to a quadratic of the conditions and of the logarithm of its weight. The
corners and some of the samples are solved and fitted; each of them, predicted from the others, says how far
the fit may be off. Every load that the fit does not put above the limit by clearly more than three times the
largest of these is solved. These loads test the fit once more: where it is farther off, all are solved. So
only loads clearly above the limit are counted by the fit. The certificate is a proof
(:func:`frywright.design.proof.prove`).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from frywright.design.proof import (
    FACTORS,
    NEAR_K,
    Proof,
    Spread,
    corner_points,
    draw,
    solved,
    told,
    uncertain,
    weights_of,
)
from frywright.physics.inputs import CLOSE, SCAN
from frywright.physics.plan import FryPlan
from frywright.verdicts.limits import CookLimit

Array = NDArray[np.float64]
FIRST = 192
"""Samples solved for the fit, beside the corners: about five loads a coefficient (own choice)."""
FAR_N = 3.0
"""A fit is trusted to so many times the largest error of a load left out (own choice)."""


def look(
    plan: FryPlan, limit: CookLimit, guard_k: float, spread: Spread, samples: int, seed: int = 1
) -> Proof:
    """What :func:`~frywright.design.proof.prove` says, with margins of loads far above the limit by a fit;
    nothing of full pressure.
    """
    points, corners = draw(spread, samples, seed), corner_points(spread)
    rows = np.vstack([corners, points])
    weights = weights_of(plan, rows, seed)

    def ask(part: NDArray[np.int64]) -> Array:
        return solved(plan, limit, guard_k, rows[part], weights[part], SCAN, None)[0]

    margins, cooked = margins_from_fewer(varied(rows), np.log(weights), len(corners) + FIRST, ask)
    again = uncertain(margins, len(corners))
    margins[again] = solved(plan, limit, guard_k, rows[again], weights[again], CLOSE, None)[0]
    cooked[again] = True
    found = told(plan, spread, 0.95, (corners, points), margins, np.ones(len(rows), dtype=bool), len(again))
    none = np.zeros(0, dtype=bool)
    fitted = int(np.sum(~cooked[len(corners) :]))
    return replace(found, full_pressure=none, smallest_full_pressure_frac=None, fitted_count=fitted)


def margins_from_fewer(
    conditions: Array, weights_ln: Array, first: int, ask: Callable[[NDArray[np.int64]], Array]
) -> tuple[Array, NDArray[np.bool_]]:
    """Margins of all loads, (load, cut) [K], and which of them were solved; ``ask`` solves some by number."""
    count, cuts = weights_ln.shape
    if count <= 2 * first:
        return ask(np.arange(count)), np.ones(count, dtype=bool)
    cooked = np.arange(count) < first
    margins, allowed = np.empty((count, cuts)), np.empty(cuts)
    margins[:first] = ask(np.arange(first))
    for cut in range(cuts):
        terms = quadratic(np.column_stack([conditions, weights_ln[:, cut]]))
        q, r = np.linalg.qr(terms[:first])
        weights = np.linalg.solve(r, q.T @ margins[:first, cut])
        left = margins[:first, cut] - terms[:first] @ weights
        allowed[cut] = FAR_N * np.max(np.abs(left) / (1.0 - np.sum(q**2, axis=1)))  # each left out in turn
        margins[first:, cut] = terms[first:] @ weights
    near = np.flatnonzero(~cooked & (margins < NEAR_K + allowed).any(axis=1))
    if len(near):
        fitted, margins[near], cooked[near] = margins[near], ask(near), True
        if np.any(np.abs(fitted - margins[near]) > allowed):
            rest = np.flatnonzero(~cooked)
            margins[rest], cooked[rest] = ask(rest), True
    return margins, cooked


def varied(rows: Array) -> Array:
    """The conditions that vary, without the weights, (load, condition)."""
    names = [name != "weight_quantile_frac" for name in FACTORS]
    return np.asarray(rows[:, np.array(names) & (np.ptp(rows, axis=0) > 0.0)])


def quadratic(x: Array) -> Array:
    """1, every condition from -1 to 1, and every product of two, (load, term)."""
    x = x[:, np.ptp(x, axis=0) > 0.0]
    low, high = x.min(axis=0), x.max(axis=0)
    x = (2.0 * x - low - high) / (high - low)
    one, other = np.triu_indices(x.shape[1])
    return np.column_stack([np.ones(len(x)), x, x[:, one] * x[:, other]])
