"""A cut calibrated from readings at the lift: the last point of each weighed piece, and what it rises after.

The size of the cut is moved until the engine's cores at the lift are those read. Its shape moves too where a
piece was read again after the lift: what it still rises tells size and shape apart, if only a little. Both
start from what is known of them (SIZE_SD, SHAPE_SD).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.design.proof import question
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.inputs import CLOSE, Precision
from frywright.physics.lift import lift_of
from frywright.physics.plan import REST_S, FryPlan, make_plan
from frywright.physics.solve import run_many
from frywright.trial.predicted import as_keyed
from frywright.trial.probing import LOADS_SD_K, READ_SD_K, SIZE_SD, Road, load_rows

Array = NDArray[np.float64]
SHAPE_SD = 0.2
"""How far the effective shape of a cut may be off (own estimate)."""
POINT_SD_K = float(np.hypot(READ_SD_K[Road.HAND], LOADS_SD_K))
RISE_SD_K = 1.0
"""How far a rise after the lift, read twice by hand, may be off (own estimate)."""
STEP, PASSES, LONGEST_REST_S = 0.25, 4, 900.0


@dataclass(frozen=True, slots=True, kw_only=True)
class LiftPoint:
    """A weighed piece read at the lift, and again later where somebody did."""

    mass_kg: float
    load: str
    core_c: float
    rest_core_c: float | None = None
    rest_s: float = REST_S


@dataclass(frozen=True, slots=True, kw_only=True)
class LiftFit:
    """A cut's geometry from readings at the lift. ``size_sd_frac`` is what they leave open of its size,
    ``spread_k`` how the pieces scatter about it, ``rise_k`` the mean carry-over measured.
    """

    half_thickness_m: float
    shape_n: float
    size_sd_frac: float
    shape_sd_n: float
    core_sd_k: float
    spread_k: float
    rise_k: float | None


def fit_at_lift(
    kitchen: Kitchen, program: Program, cut: str, points: Sequence[LiftPoint], precision: Precision = CLOSE
) -> LiftFit:
    """Fit a cut to weighed pieces read at the lift of a program. Raises InputError: no weighed piece of it,
    or a rest longer than the engine is asked for.
    """
    if not points:
        raise InputError("weight", "missing", "the raw weight of at least one piece of this cut", where=cut)
    longest = max((p.rest_s for p in points if p.rest_core_c is not None), default=1.0)
    if longest > LONGEST_REST_S:
        raise InputError("rest_time", longest, "at most {most_s}", unit="s", most_s=LONGEST_REST_S)
    plan = replace(make_plan(kitchen, as_keyed(kitchen, program)), rest_s=longest + 1.0)
    own = next(k.cut for k in plan.kinds if k.heavy and k.cut.key == cut)
    rises = [p.rest_core_c - p.core_c for p in points if p.rest_core_c is not None]
    free = 2 if rises else 1
    x = np.zeros(free)
    for _ in range(PASSES):
        base = _left(plan, cut, points, x, precision)
        slopes = [_left(plan, cut, points, x + STEP * np.eye(free)[i], precision) for i in range(free)]
        jacobian = (np.array(slopes) - base).T / STEP
        x = x - np.linalg.lstsq(jacobian, base, rcond=None)[0]
    covariance = np.linalg.inv(jacobian.T @ jacobian)
    cores = _left(plan, cut, points, x, precision)[: len(points)] * POINT_SD_K
    rows = jacobian[: len(points)]
    left_k = float(np.sqrt(np.max(np.einsum("ij,jk,ik->i", rows, covariance, rows)))) * POINT_SD_K
    return LiftFit(
        half_thickness_m=float(own.half_thickness_m * np.exp(SIZE_SD * x[0])),
        shape_n=_shape(own.shape_n, x),
        size_sd_frac=float(SIZE_SD * np.sqrt(covariance[0, 0])),
        shape_sd_n=float(SHAPE_SD * np.sqrt(covariance[-1, -1])) if free > 1 else SHAPE_SD,
        core_sd_k=left_k,
        spread_k=float(np.sqrt(np.mean(cores**2))),
        rise_k=float(np.mean(rises)) if rises else None,
    )


def _shape(shape_n: float, x: Array) -> float:
    return float(np.clip(shape_n + SHAPE_SD * x[1], 0.0, 2.0)) if len(x) > 1 else shape_n


def _left(plan: FryPlan, cut: str, points: Sequence[LiftPoint], x: Array, precision: Precision) -> Array:
    """What a geometry leaves of the readings, over their errors: cores, rises, then what was known before."""
    kinds = []
    for kind in plan.kinds:
        if kind.heavy and kind.cut.key == cut:
            half = float(kind.cut.half_thickness_m * np.exp(SIZE_SD * x[0]))
            shape = _shape(kind.cut.shape_n, x)
            kind = replace(kind, cut=replace(kind.cut, half_thickness_m=half, shape_n=shape))
        kinds.append(kind)
    tried, rows = replace(plan, kinds=tuple(kinds)), load_rows(plan)
    heavy = [k for k in tried.kinds if k.heavy]
    at = next(i for i, k in enumerate(heavy) if k.cut.key == cut)
    cooks = []
    for point in points:
        weights = np.array([k.cut.heavy_ratio_n for k in heavy])
        weights[at] *= point.mass_kg / heavy[at].piece_mass_kg
        cooks.append(question(tried, rows.get(point.load, rows["full"]), weights))
    cores, rises = [], []
    for point, cook, raw in zip(points, cooks, run_many(cooks, precision), strict=True):
        lift = lift_of(tried, cook, raw).lift_s
        core = raw.core_temp_c[:, at - len(heavy)]
        found = float(np.interp(lift, raw.time_s, core))
        cores.append((found - point.core_c) / POINT_SD_K)
        if point.rest_core_c is not None:
            after = (raw.time_s >= lift) & (raw.time_s <= lift + point.rest_s)
            rise = float(core[after].max(initial=found)) - found
            rises.append((rise - (point.rest_core_c - point.core_c)) / RISE_SD_K)
    return np.array([*cores, *rises, *x])
