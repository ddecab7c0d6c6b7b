"""Calibration: parameters of piece, fryer and lid from logs and weights, by least squares on the engine.

A fit says what it found with its uncertainty, which parameters cannot be told apart, and refuses when the log
cannot carry it. Intervals rest on the Jacobian at the best fit, with white noise and a misfit that hangs
together over minutes; every probe has an offset and a drift of its own within its thermometer's error.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate import doubts
from frywright.calibrate.parameters import PARAMETERS, Fitted
from frywright.calibrate.problem import Problem
from frywright.calibrate.trial import Trial
from frywright.model.errors import InputError, SolveError
from frywright.model.findings import Note

Array = NDArray[np.float64]
NORMAL_95 = 1.959963984540054


@dataclass(frozen=True, slots=True, kw_only=True)
class Residual:
    """What is left of one measured curve: times from the drop, measured minus model."""

    name: str
    time_s: Array
    left: Array
    rms: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """A calibration. When ``refused`` is not empty its numbers must not be used."""

    parameters: tuple[Fitted, ...] = ()
    correlations: tuple[tuple[str, str, float], ...] = ()
    residuals: tuple[Residual, ...] = ()
    rms_k: float = float("nan")
    warnings: tuple[Note, ...] = ()
    refused: tuple[Note, ...] = ()
    runs_count: int = 0
    core_sd_k: float = 0.0

    @property
    def usable(self) -> bool:
        """Whether the data carried the fit."""
        return not self.refused

    def __getitem__(self, name: str) -> Fitted:
        return next(p for p in self.parameters if p.name == name)


def fit(trials: Sequence[Trial], free: Sequence[str], *, sensor_sd_k: float = 0.5) -> Fit:
    """Fit ``free`` parameters to all trials together, core curves up to the lift.

    The moment of every drop may lie a second beside what was found. Raises InputError: no trial, an unknown
    parameter, or nothing measured that could carry a fit.

    Parameters
    ----------
    trials : loads of one product on one fryer
    free : names from :data:`PARAMETERS`
    sensor_sd_k : standard deviation of a probe's offset, and of its drift over a load [K]
    """
    for name in free:
        if name not in PARAMETERS:
            raise InputError("parameter", name, "one of: {known}", known=", ".join(PARAMETERS))
    if not trials or not free:
        raise InputError("trials", len(trials), "at least one, with at least one free parameter")
    refused = doubts.refusals(trials, free)
    return Fit(refused=tuple(refused)) if refused else _solved(Problem(trials, tuple(free), sensor_sd_k))


def _solved(problem: Problem) -> Fit:
    """Least squares with bounds, then uncertainties and warnings."""
    from scipy.optimize import least_squares

    try:
        found = least_squares(
            problem.residuals,
            problem.start,
            jac=problem.jacobian,
            bounds=problem.bounds,
            xtol=2e-5,
            ftol=1e-5,
            gtol=1e-8,
            max_nfev=40,
        )
    except SolveError:
        note = Note(kind="no_solution", text="No values in range explain the log.")
        return Fit(refused=(note,), runs_count=problem.runs_count)
    return _report(problem, found.x, found.jac, found.fun)


def _report(problem: Problem, x: Array, jacobian: Array, weighted: Array) -> Fit:
    count, lefts = len(problem.free), problem.lefts(weighted)
    if problem.loosen(lefts):
        jacobian = problem.jacobian(x)
    covariance: Array = np.asarray(np.linalg.pinv(jacobian.T @ jacobian), dtype=float)
    blind = np.linalg.matrix_rank(jacobian[:, :count], tol=1e-3) < count
    parameters = _found(problem, x, covariance)
    residuals = [
        Residual(name=part.name, time_s=part.time_s, left=left, rms=float(np.sqrt(np.mean(left**2))))
        for part, left in zip(problem.parts, lefts, strict=True)
    ]
    curves = [r for r, p in zip(residuals, problem.parts, strict=True) if p.probe >= 0]
    rms = max((r.rms for r in curves), default=0.0)
    correlations = _correlations(problem.free, covariance)
    refused = [
        *([doubts.blind(problem.free)] if blind else []),
        *doubts.implausible(problem.trials, {p.name: p.value for p in parameters}),
        *doubts.misfit(rms),
    ]
    return Fit(
        parameters=parameters,
        correlations=correlations,
        residuals=tuple(residuals),
        rms_k=rms,
        warnings=tuple(doubts.warnings(parameters, correlations, problem.sensor(x), rms)),
        refused=tuple(refused),
        runs_count=problem.runs_count,
        core_sd_k=problem.core_sd_k(jacobian, covariance, count),
    )


def _found(problem: Problem, x: Array, covariance: Array) -> tuple[Fitted, ...]:
    """Every parameter with its 95 % interval."""
    count = len(problem.free)
    sd = np.sqrt(np.maximum(np.diag(covariance)[:count], 0.0)) * problem.scale
    return tuple(
        Fitted(
            name=name,
            value=float(value),
            sd=float(s),
            low=float(value - NORMAL_95 * s),
            high=float(value + NORMAL_95 * s),
            before=float(before),
        )
        for name, value, s, before in zip(
            problem.free, x[:count] * problem.scale, sd, problem.before, strict=True
        )
    )


def _correlations(free: Sequence[str], covariance: Array) -> tuple[tuple[str, str, float], ...]:
    sd = np.sqrt(np.maximum(np.diag(covariance), 1e-300))
    return tuple(
        (free[i], free[j], float(covariance[i, j] / (sd[i] * sd[j])))
        for i, j in combinations(range(len(free)), 2)
    )
