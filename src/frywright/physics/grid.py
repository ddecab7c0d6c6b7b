"""Grid of a piece class: cells of fixed shares of its volume, placed by where the front stands.

In the meat the faces enclose fixed shares of the volume between bone and front; without a bone they lie at
r = eta s, so that areas over distances keep their shape and only one number moves with the front. In the
crust they lie at r = s + zeta (a - s); inside a bone they stand still. Area (s/a)^n and enclosed volume are
replaced by their cubic interpolants in s (exact for n = 0, 1, 2), because a power a face and a step would
cost more than everything else. Everything here is in shares of the half thickness a.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
LOWEST_FRONT = 0.3
FLOOR_PAST_BONE = 1.05  # the front stops this far outside a bone
BONE_SHARE = 0.25  # share of the core cells that lie in the bone, where there is one
CENTROID_SHARE = 0.3
"""Where the mean of a meat cell is read: so far from its middle towards its centroid. With 24 cells the
middle makes cores up to 0.15 K too cold, the centroid up to 0.16 K too hot; between them most of it cancels.
Own choice, by drawn cooks against ``FINE``; both ends and all between are of second order.
"""


@dataclass(frozen=True, slots=True)
class Grid:
    """Numbers of one shape that the march needs, per cell or face of the core.

    ``flat`` holds volume shares inside the faces, of the cells, and their ratio, then the conductance of each
    face over area and distance at the front: one number, or with a bone the four of a cubic. ``area`` and
    ``volume`` are cubics of the front.
    """

    flat: Array
    area: Array
    volume: Array
    centre_weight_n: float
    meat_half_frac: float


def core_faces(n_core: int, grading: float) -> Array:
    """Relative face positions 0..1, finer towards 1 for ``grading`` above 1."""
    x = np.linspace(0.0, 1.0, n_core + 1)
    return np.asarray(1.0 - (1.0 - x) ** grading)


def cell_places(r: Array, n: float) -> Array:
    """Where the mean of each cell between faces ``r`` is read (:data:`CENTROID_SHARE`)."""
    middle = 0.5 * (r[1:] + r[:-1])
    centroid = (n + 1) / (n + 2) * np.diff(r ** (n + 2)) / np.diff(r ** (n + 1))
    return np.asarray(middle + CENTROID_SHARE * (centroid - middle))


def bone_cells(bone: float, n_core: int) -> int:
    """Cells inside a bone of radius ``bone`` times the half thickness."""
    return max(2, round(BONE_SHARE * n_core)) if bone > 0 else 0


def _cubic(values_at: Callable[[Array], Array], low: float) -> Array:
    """Monomial coefficients [4, ...] of a cubic through Chebyshev points of [low, 1]."""
    nodes = np.cos((2 * np.arange(4) + 1) * np.pi / 8)
    u = 0.5 * (low + 1.0) + 0.5 * (1.0 - low) * nodes / nodes[0]
    samples = np.stack([values_at(x) for x in u])
    matrix = np.vander(u, 4, increasing=True)
    return np.asarray(np.linalg.solve(matrix, samples.reshape(4, -1))).reshape(samples.shape)


@lru_cache(maxsize=4096)
def build(n: float, bone: float, n_core: int, grading: float) -> Grid:
    """Grid of a shape with a bone of radius ``bone`` times the half thickness (0: none)."""
    inner = bone_cells(bone, n_core)
    eta = core_faces(n_core - inner, grading)
    low = max(LOWEST_FRONT, bone)
    area = _cubic(lambda s: np.asarray(s**n), low)
    volume = _cubic(lambda s: np.asarray(s ** (n + 1) / (n + 1)), low)
    if inner:
        inside, shape = _with_bone(n, bone, inner, eta, max(LOWEST_FRONT, FLOOR_PAST_BONE * bone))
        first = bone + (1.0 - bone) * eta[:2]
        half = float(cell_places(first, n)[0] - bone) / (1.0 - bone)
    else:
        apart = np.diff(cell_places(eta, n), append=1.0)
        inside, shape, half = eta ** (n + 1), np.concatenate([[0.0], eta[1:] ** n / apart]), 0.0
    cells = np.diff(inside)
    if inner:  # at the bone the count begins anew
        cells[inner - 1] = 1.0 - inside[inner - 1]
    flat = np.concatenate([inside[:-1], cells, inside[:-1] / cells, shape.ravel()])
    return Grid(flat, area, volume, _centre_weight(n, eta), half)


def _with_bone(n: float, bone: float, inner: int, eta: Array, low: float) -> tuple[Array, Array]:
    """Volume shares inside the faces, and conductances as cubics, of a shape with a bone."""
    whole = (bone * (1.0 - eta) + eta) ** (n + 1)
    share = (whole - whole[0]) / (1.0 - whole[0])
    still = np.arange(inner) / inner

    def shape_at(s: Array) -> Array:
        r = (bone ** (n + 1) + share * (s ** (n + 1) - bone ** (n + 1))) ** (1.0 / (n + 1))
        return np.asarray(r[1:] ** n * (s - bone) / np.diff(cell_places(r, n), append=s))

    shape = np.zeros((inner + len(eta), 4))
    shape[:inner, 0] = (bone * still) ** n * inner / bone
    shape[inner, 0] = bone**n
    shape[inner + 1 :] = _cubic(shape_at, low).T
    return np.concatenate([still ** (n + 1), share]), shape


def _centre_weight(n: float, eta: Array) -> float:
    """Weight of the parabola through the two innermost cell means that gives the centre."""
    r = eta[:3]
    mean = (n + 1) / (n + 3) * np.diff(r ** (n + 3)) / np.diff(r ** (n + 1))
    return float(mean[0] / (mean[1] - mean[0]))
