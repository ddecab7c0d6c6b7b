"""Grid of a piece class and the packed arrays a march works on.

Faces move with the front: in the meat r = b + eta (s - b), in the crust
r = s + eta (a - s); inside a bone they stand still. Areas (r/a)^n and enclosed volumes are
replaced by their cubic interpolants in s over [0.3 a, a] (exact for n = 0, 1, 2), because a
power a face and a step would cost more than everything else.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

import numpy as np

from frywright.physics.kernels import layout as at

LOWEST_FRONT = 0.3
FLOOR_PAST_BONE = 1.05  # the front stops this far outside a bone
BONE_SHARE = 0.25  # share of the core cells that lie in the bone, where there is one


@cache
def core_faces(n_core: int, grading: float) -> np.ndarray:
    """Relative face positions 0..1, finer towards 1 for ``grading`` above 1."""
    x = np.linspace(0.0, 1.0, n_core + 1)
    return 1.0 - (1.0 - x) ** grading


def _cubic(values_at: Callable[[np.ndarray], np.ndarray], a: np.ndarray) -> np.ndarray:
    """Monomial coefficients [4, ...] in s of a cubic through Chebyshev points of [0.3 a, a]."""
    nodes = np.cos((2 * np.arange(4) + 1) * np.pi / 8)
    low, high = LOWEST_FRONT, 1.0
    u = 0.5 * (low + high) + 0.5 * (high - low) * nodes / nodes[0]
    samples = np.stack([values_at(x * a) for x in u])
    matrix = np.vander(u, 4, increasing=True)
    coefficients = np.linalg.solve(matrix, samples.reshape(4, -1)).reshape(samples.shape)
    return coefficients / a ** np.arange(4).reshape(4, *([1] * (samples.ndim - 1)))


@dataclass(frozen=True, slots=True)
class Grid:
    """Flat arrays ``[row, face * lanes + lane]`` that describe the grids of all lanes.

    Rows 0..3 of ``geo`` are the cubic of area / relative cell distance of each face, rows 4..7
    that of the enclosed volume. ``bone_dist`` holds the half bone cell [m] and the half meat
    cell (share of the meat span) that meet at the bone.
    """

    geo: np.ndarray
    bone_dist: np.ndarray


def build(lane: np.ndarray, n_core: int, n_crust: int, grading: float) -> Grid:
    """Grid of all lanes; also fills the lane rows that depend on it."""
    n_lane, n_face = lane.shape[1], n_core + n_crust + 1
    base, slope = np.zeros((n_face, n_lane)), np.zeros((n_face, n_lane))
    scale, bone_dist = np.ones((n_face, n_lane)), np.zeros((2, n_lane))
    a, n = lane[at.RADIUS], lane[at.SHAPE]
    eta_crust = np.linspace(0.0, 1.0, n_crust + 1)
    for i in range(n_lane):
        b, bone = lane[at.BONE_RADIUS, i], int(lane[at.BONE_CELLS, i])
        eta = core_faces(n_core - bone, grading)
        middle = 0.5 * (eta[1:] + eta[:-1])
        if bone:
            base[: bone + 1, i] = b * np.linspace(0.0, 1.0, bone + 1)
            scale[1:bone, i] = b / bone
            bone_dist[:, i] = 0.5 * b / bone, middle[0]
        base[bone : n_core + 1, i] = b * (1.0 - eta)
        slope[bone : n_core + 1, i] = eta
        scale[bone + 1 : n_core, i] = np.diff(middle)
        base[n_core:, i] = a[i] * eta_crust
        slope[n_core:, i] = 1.0 - eta_crust
        scale[n_core, i] = 1.0 - middle[-1]
        scale[n_core + 1 : -1, i] = 1.0 / n_crust
        scale[-1, i] = 0.5 / n_crust
    lane[at.HALF_CELLS] = scale[n_core] / (0.5 / n_crust)
    geo = np.zeros((8, n_face, n_lane))
    geo[:4] = _cubic(lambda s: ((base + slope * s) / a) ** n, a) / scale
    geo[4:] = _cubic(lambda s: (base + slope * s) ** (n + 1) / ((n + 1) * a**n), a)
    geo[0, -1], geo[1:4, -1] = 1.0 / scale[-1], 0.0
    geo[4, -1], geo[5:8, -1] = a / (n + 1), 0.0
    _measure_centre(lane, base, slope)
    return Grid(geo.reshape(8, -1), bone_dist)


def properties(lane: np.ndarray, n_core: int, n_crust: int) -> np.ndarray:
    """Conductivity (rows 0..2, of meat alone) and heat (rows 3..5) polynomials of every cell."""
    rows = [at.K0, at.K1, at.K2, at.C0, at.C1, at.C2]
    found = np.repeat(lane[rows][:, None], n_core + n_crust, axis=1)
    found[3, n_core:], found[4:, n_core:] = lane[at.C_CRUST], 0.0
    for i, bone in enumerate(lane[at.BONE_CELLS].astype(int)):
        found[3, :bone, i], found[4:, :bone, i] = lane[at.C_BONE, i], 0.0
    return found.reshape(len(rows), -1)


def _measure_centre(lane, base, slope):
    """Weight of the parabola through the two innermost cell means that gives the centre."""
    n = lane[at.SHAPE]
    r = base[:3] + slope[:3] * lane[at.RADIUS]
    mean_square = [
        (n + 1) / (n + 3) * (r[j + 1] ** (n + 3) - r[j] ** (n + 3)) / (r[j + 1] ** (n + 1) - r[j] ** (n + 1))
        for j in (0, 1)
    ]
    lane[at.CENTRE_WEIGHT] = mean_square[0] / (mean_square[1] - mean_square[0])
    lane[at.FACE_VOLUME] = lane[at.RADIUS] / (n + 1)
    floor = np.maximum(LOWEST_FRONT * lane[at.RADIUS], FLOOR_PAST_BONE * lane[at.BONE_RADIUS])
    lane[at.FLOOR_VOLUME] = floor ** (n + 1) / ((n + 1) * lane[at.RADIUS] ** n)
