"""Calibration: parameters of piece, coating, fryer and lid from logs and weights, by least squares on the
engine.

A fit says what it found with its uncertainty, which parameters cannot be told apart, and refuses when the log
cannot carry it. Intervals rest on the Jacobian at the best fit, with white noise and a misfit that hangs
together over minutes; every probe has an offset and a drift of its own within its thermometer's error.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass, field, replace
from itertools import combinations
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.core import ProbeCurve
from frywright.calibrate.gauge import Pressed
from frywright.calibrate.heat import noise_of
from frywright.model.errors import InputError, SolveError
from frywright.model.findings import Note
from frywright.model.food import Cut
from frywright.physics.fry import pieces_of
from frywright.physics.inputs import CLOSE, Lid, PieceClass, Span
from frywright.physics.plan import (
    BONE_SHARE,
    TRACER_SHARE,
    FryPlan,
    PieceKind,
    drip_of,
    piece_class,
    spans,
    vat,
)
from frywright.physics.solve import Cook, Prescribed, RawHistory, run

Array = NDArray[np.float64]
FITTING = replace(
    CLOSE, n_core=60, n_crust=15, max_step_s=2.0, max_boiling_step_k=0.25, first_step_s=0.02, early_step_s=0.2
)
DROP_EARLY_S, DROP_SD_S = 0.33, 0.28
"""How early a drop is found in an oil curve, and how surely, on logs of one reading a second. The mean is
that of synthetic logs; their spread is 0.36 s, of which the core curve itself takes some away: 0.28 s and
MISFIT_K were chosen so that intervals of seeds 0 to 399 are not too wide, and are judged on other seeds
(tests/calibrate/test_fit.py)."""
NORMAL_95 = 1.959963984540054
TOO_ALIKE = 0.9
WEAK_SHARE = 0.25
LEAST_RISE_K = 25.0
MOST_MISFIT_K, BOUND_MISFIT_K = 1.5, 0.7
"""When to warn and when to refuse. Estimates."""
RAW_KG_M3, LEAST_OF_BALL, MOST_OF_BALL = 1050.0, 0.2, 1.0
"""Raw meat's density (Choi-Okos, engine), and the half thickness of a piece over the radius of a ball of its
volume: flat pieces of the catalog have 0.37 to 0.52, a ball 1."""
THIN_S, SHORTEST_SPAN_S = 5.0, 0.05
STEEP_N = 40.0
"""A curve is steep where nine thinned readings differ by this many times the noise. Estimate."""
STEP = 0.01
LEAST_NOISE_K, GAUGE_NOISE_PA = 0.05, 1000.0
MISFIT_K, MISFIT_S = 0.02, 120.0
"""What engine, oil curve and start temperature leave unexplained at best: size, and how long it stays.
Estimate from synthetic logs; a fit that is worse takes its own residuals instead."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Parameter:
    """Something that can be calibrated: its place, bounds and the prior spread when it is not well known."""

    place: str  # cut, coating, fryer
    low: float
    high: float


Predict = Callable[[RawHistory, FryPlan, float], Array]
PARAMETERS: dict[str, Parameter] = {
    "half_thickness_m": Parameter(place="cut", low=0.003, high=0.045),
    "shape_n": Parameter(place="cut", low=0.0, high=2.0),
    "area_factor_n": Parameter(place="cut", low=0.3, high=3.0),
    "drip_frac": Parameter(place="cut", low=0.0, high=0.6),
    "vent_area_m2": Parameter(place="fryer", low=2e-6, high=1e-3),
    "lid_ua_w_k": Parameter(place="fryer", low=1.0, high=500.0),
    "working_gauge_pa": Parameter(place="fryer", low=10e3, high=110e3),
}
LID = ("vent_area_m2", "lid_ua_w_k", "working_gauge_pa")


@dataclass(frozen=True, slots=True, kw_only=True)
class Probed:
    """A probed piece: its cut, weight and curve."""

    cut: str
    piece_mass_kg: float
    curve: ProbeCurve


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial:
    """One load with everything that was measured on it. Curves are (time from the drop, value)."""

    plan: FryPlan
    lift_s: float
    probes: tuple[Probed, ...] = ()
    oil: tuple[Array, Array] | None = None
    gauge: tuple[Array, Array] | None = None
    loss: tuple[float, float] | None = (
        None  # moisture lost of breaded weight by the probed cut, or the load; its error
    )
    crust: tuple[float, float] | None = None  # crust of the usual load [m], and its error
    pressed: Pressed | None = None  # when the lid closed, vented and came to zero, from the drop


@dataclass(frozen=True, slots=True, kw_only=True)
class Fitted:
    """One parameter found. ``low`` and ``high`` bound 95 %."""

    name: str
    value: float
    sd: float
    low: float
    high: float
    before: float


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

    parameters: tuple[Fitted, ...]
    correlations: tuple[tuple[str, str, float], ...]
    residuals: tuple[Residual, ...]
    rms_k: float
    warnings: tuple[Note, ...]
    refused: tuple[Note, ...]
    runs_count: int
    core_sd_k: float = 0.0

    @property
    def usable(self) -> bool:
        """Whether the data carried the fit."""
        return not self.refused

    def __getitem__(self, name: str) -> Fitted:
        return next(p for p in self.parameters if p.name == name)


@dataclass(slots=True)
class _Part:
    """One measured curve or number: how to predict it, what was read, how well."""

    name: str
    trial: int
    time_s: Array
    read: Array
    sd: float
    misfit: float
    predict: Predict
    probe: int = -1  # number among all probes, -1 for none
    white: Array = field(init=False)

    def __post_init__(self) -> None:
        self.white = _whitener(self.time_s, self.sd, self.misfit)


def fit(trials: Sequence[Trial], free: Sequence[str], *, sensor_sd_k: float = 0.5) -> Fit:
    """Fit ``free`` parameters to all trials together.

    The moment of every drop may lie a second beside what was found.

    Parameters
    ----------
    trials : loads of one product on one fryer
    free : names from :data:`PARAMETERS`
    sensor_sd_k : standard deviation of a probe's offset, and of its drift over a load [K]

    Raises
    ------
    InputError
        No trial, an unknown parameter, or nothing measured that could carry a fit.
    """
    for name in free:
        if name not in PARAMETERS:
            raise InputError("parameter", name, "one of: " + ", ".join(PARAMETERS))
    if not trials or not free:
        raise InputError("trials", len(trials), "at least one, with at least one free parameter")
    problem = _Problem(trials, tuple(free), sensor_sd_k)
    refused = problem.refusals()
    if refused:
        return Fit(
            parameters=(),
            correlations=(),
            residuals=(),
            rms_k=float("nan"),
            warnings=(),
            refused=tuple(refused),
            runs_count=0,
        )
    return problem.solve()


class _Problem:
    """Residuals of all trials as a function of scaled parameters and nuisances."""

    def __init__(self, trials: Sequence[Trial], free: tuple[str, ...], sensor_sd_k: float) -> None:
        self.trials, self.free, self.sensor_sd_k = list(trials), free, sensor_sd_k
        self.lid = any(name in LID for name in free)
        if self.lid:
            self.trials = [replace(t, probes=()) for t in self.trials]
        self.cuts = {p.cut for t in self.trials for p in t.probes}
        self.parts = [part for i, trial in enumerate(self.trials) for part in self._parts(i, trial)]
        self.probes = sum(len(t.probes) for t in self.trials)
        self.nuisances = 2 * self.probes + len(self.trials)
        self.before = np.array([self._now(name) for name in free])
        self.runs_count = 0
        self.heads = [None if self.lid else headspace_of(t) for t in self.trials]

    def _now(self, name: str) -> float:
        plan, place = self.trials[0].plan, PARAMETERS[name].place
        if place == "cut":
            cuts = [k.cut for k in plan.kinds if not self.cuts or k.cut.key in self.cuts]
            if name == "drip_frac":
                return drip_of(cuts[0]).get(name, 0.0) * cuts[0].evaporable_frac
            return float(getattr(cuts[0], name))
        return float(getattr(plan.coating if place == "coating" else plan.fryer, name))

    def refusals(self) -> list[Note]:
        """Why this cannot be fitted, before trying."""
        notes = []
        touched = [name for name in self.free if PARAMETERS[name].place == "cut"]
        if touched and len(self.cuts) > 1:
            notes.append(
                Note(
                    kind="mixed",
                    text=(
                        "Probes of more than one cut cannot be fitted together; calibrate one cut at a time."
                    ),
                )
            )
        if {"half_thickness_m", "shape_n"} & set(self.free) and not self.probes:
            notes.append(
                Note(
                    kind="no_probe",
                    text="The shape of a piece needs the core curve of a probed piece; there is none.",
                )
            )
        for trial in self.trials:
            for probed in trial.probes:
                curve = probed.curve
                rise = float(np.max(curve.core_c) - curve.start_c)
                if rise < LEAST_RISE_K:
                    notes.append(
                        Note(
                            kind="short",
                            text="{channel} rises only {rise_k}: too little of the cook to fit.",
                            values={"channel": curve.channel, "rise_k": rise},
                        )
                    )
                hole = sum(b - a for a, b in curve.gaps)
                if hole > 0.3 * float(curve.time_s[-1]):
                    notes.append(
                        Note(
                            kind="holes",
                            text="{channel} has gaps of {gap_s} in all: too many to fit.",
                            values={"channel": curve.channel, "gap_s": hole},
                        )
                    )
            if trial.oil is None:
                notes.append(
                    Note(kind="no_oil", text="A fit needs the oil curve of the load; there is none.")
                )
            if self.lid and (trial.gauge is None or trial.pressed is None):
                notes.append(
                    Note(
                        kind="no_gauge",
                        text="The lid needs a gauge curve with a time under pressure; there is none.",
                    )
                )
        if self.lid and not set(self.free) <= set(LID):
            notes.append(Note(kind="apart", text="Calibrate the lid by itself, then the pieces."))
        if "area_factor_n" in self.free and all(t.loss is None for t in self.trials):
            notes.append(Note(kind="no_weight", text="The area factor needs weights before and after."))
        if "drip_frac" in self.free and all(t.loss is None for t in self.trials):
            notes.append(
                Note(kind="no_weight", text="The share of water let go needs weights before and after.")
            )
        return notes

    def _parts(self, i: int, trial: Trial) -> list[_Part]:
        parts = []
        first = sum(len(t.probes) for t in self.trials[:i])
        for n, probed in enumerate(trial.probes):
            time, read = _thin(probed.curve.time_s, probed.curve.core_c)
            keep = _calm_times(time, trial.pressed)
            time, read = time[keep], read[keep]
            sd = max(LEAST_NOISE_K, noise_of(probed.curve.core_c)) / np.sqrt(
                max(1.0, len(probed.curve.time_s) / len(time))
            )
            parts.append(
                _Part(probed.curve.channel, i, time, read, sd, MISFIT_K, _core_reader(n, time), first + n)
            )
        if self.lid and trial.gauge is not None:
            time, read = _thin(*trial.gauge)
            keep = (time >= 0) & (time <= trial.lift_s)
            parts.append(
                _Part(
                    "gauge",
                    i,
                    time[keep],
                    read[keep],
                    GAUGE_NOISE_PA,
                    GAUGE_NOISE_PA,
                    _gauge_reader(time[keep]),
                )
            )
        if trial.loss is not None:
            parts.append(
                _Part(
                    "loss",
                    i,
                    np.zeros(1),
                    np.array([trial.loss[0]]),
                    trial.loss[1],
                    0.0,
                    _loss_reader(self.cuts),
                )
            )
        if trial.crust is not None:
            parts.append(
                _Part(
                    "crust", i, np.zeros(1), np.array([trial.crust[0]]), trial.crust[1], 0.0, _crust_reader()
                )
            )
        return parts

    def changed(self, trial: Trial, values: Array) -> FryPlan:
        """The plan of a trial with parameters put in."""
        plan = trial.plan
        at = dict(zip(self.free, values, strict=True))
        by = {
            place: {n: float(v) for n, v in at.items() if PARAMETERS[n].place == place}
            for place in ("cut", "coating", "fryer")
        }
        if by["cut"]:
            kinds = tuple(
                replace(k, cut=_resized(k.cut, by["cut"])) if not self.cuts or k.cut.key in self.cuts else k
                for k in plan.kinds
            )
            plan = replace(plan, kinds=kinds)
        if by["coating"]:
            plan = replace(plan, coating=replace(plan.coating, **by["coating"]))  # type: ignore[arg-type]
        if by["fryer"]:
            fryer = by["fryer"]
            if fryer.get("working_gauge_pa", 0.0) >= plan.fryer.relief_gauge_pa:
                fryer = {**fryer, "relief_gauge_pa": fryer["working_gauge_pa"] + 1e3}
            plan = replace(plan, fryer=replace(plan.fryer, **fryer))  # type: ignore[arg-type]
        return plan

    def histories(self, values: Array, shifts: Array) -> list[tuple[RawHistory, FryPlan]]:
        """Engine runs of all trials; ``shifts`` are the probes' offsets, taken off the start temperatures."""
        out, probe = [], 0
        for i, trial in enumerate(self.trials):
            plan = self.changed(trial, values)
            pieces = []
            for probed in trial.probes:
                pieces.append(tracer(plan, probed, probed.curve.start_c - shifts[probe]))
                probe += 1
            out.append((run(engine_question(plan, trial, pieces, self.heads[i]), FITTING), plan))
            self.runs_count += 1
        return out

    def residuals(self, x: Array) -> Array:
        """Weighted residuals, priors of the nuisances last."""
        count = len(self.free)
        values = x[:count] * self.scale
        shifts, drifts = x[count : count + self.probes], x[count + self.probes : count + 2 * self.probes]
        late = DROP_EARLY_S + DROP_SD_S * x[count + 2 * self.probes :]
        histories = self.histories(values, shifts * self.sensor_sd_k)
        out = []
        for part in self.parts:
            raw, plan = histories[part.trial]
            expected = part.predict(raw, plan, late[part.trial])
            if part.probe >= 0:
                share = part.time_s / max(part.time_s[-1], 1.0)
                expected = expected + self.sensor_sd_k * (shifts[part.probe] + drifts[part.probe] * share)
            out.append(part.white @ (part.read - expected))
        return np.concatenate([*out, x[count:]])

    def jacobian(self, x: Array) -> Array:
        """Central differences with steps wide enough that the engine's own step control does not show."""
        columns = []
        for k, step in enumerate(self.steps):
            up, down = x.copy(), x.copy()
            up[k], down[k] = min(x[k] + step, self.bounds[1][k]), max(x[k] - step, self.bounds[0][k])
            columns.append((self.residuals(up) - self.residuals(down)) / (up[k] - down[k]))
        return np.stack(columns, axis=1)

    def solve(self) -> Fit:
        """Least squares with bounds, then uncertainties and warnings."""
        from scipy.optimize import least_squares

        self.scale = np.maximum(np.abs(self.before), [0.05 * PARAMETERS[n].high for n in self.free])
        low = np.array([PARAMETERS[n].low for n in self.free]) / self.scale
        high = np.array([PARAMETERS[n].high for n in self.free]) / self.scale
        start = np.r_[np.clip(self.before / self.scale, low + 1e-6, high - 1e-6), np.zeros(self.nuisances)]
        self.bounds = (np.r_[low, np.full(self.nuisances, -6.0)], np.r_[high, np.full(self.nuisances, 6.0)])
        self.steps = np.r_[np.full(len(self.free), STEP), np.full(self.nuisances, 0.5)]
        try:
            found = least_squares(
                self.residuals,
                start,
                jac=self.jacobian,
                bounds=self.bounds,
                xtol=2e-5,
                ftol=1e-5,
                gtol=1e-8,
                max_nfev=40,
            )
        except SolveError:
            return Fit(
                parameters=(),
                correlations=(),
                residuals=(),
                rms_k=float("nan"),
                warnings=(),
                runs_count=self.runs_count,
                refused=(Note(kind="no_solution", text="No values in range explain the log."),),
            )
        return self._report(found.x, found.jac, found.fun)

    def _report(self, x: Array, jacobian: Array, weighted: Array) -> Fit:
        count = len(self.free)
        lefts = self.lefts(weighted)
        if self.loosen(lefts):
            jacobian, weighted = self.jacobian(x), self.residuals(x)
        covariance: Array = np.asarray(np.linalg.pinv(jacobian.T @ jacobian), dtype=float)
        singular = np.linalg.matrix_rank(jacobian[:, :count], tol=1e-3) < count
        sd = np.sqrt(np.maximum(np.diag(covariance)[:count], 0.0)) * self.scale
        values = x[:count] * self.scale
        parameters = tuple(
            Fitted(
                name=n,
                value=float(v),
                sd=float(s),
                low=float(v - NORMAL_95 * s),
                high=float(v + NORMAL_95 * s),
                before=float(b),
            )
            for n, v, s, b in zip(self.free, values, sd, self.before, strict=True)
        )
        residuals = [
            Residual(name=part.name, time_s=part.time_s, left=left, rms=float(np.sqrt(np.mean(left**2))))
            for part, left in zip(self.parts, lefts, strict=True)
        ]
        curves = [r for r, p in zip(residuals, self.parts, strict=True) if p.probe >= 0]
        rms = max((r.rms for r in curves), default=0.0)
        correlations = self._correlations(covariance)
        warnings = self._warnings(parameters, correlations, x, rms)
        refused = []
        if singular:
            refused.append(
                Note(
                    kind="blind",
                    text="The log does not feel {names}; nothing can be said about them.",
                    values={"names": ", ".join(self.free)},
                )
            )
        refused += self._implausible({p.name: p.value for p in parameters})
        if rms > MOST_MISFIT_K:
            refused.append(
                Note(
                    kind="misfit",
                    text=(
                        "The model misses the log by {rms_k}: another cut, a moved probe or a wrong weight."
                        " Nothing is calibrated."
                    ),
                    values={"rms_k": rms},
                )
            )
        return Fit(
            parameters=parameters,
            correlations=correlations,
            residuals=tuple(residuals),
            rms_k=rms,
            warnings=tuple(warnings),
            refused=tuple(refused),
            runs_count=self.runs_count,
            core_sd_k=self._core_sd(jacobian, covariance, count),
        )

    def _implausible(self, values: dict[str, float]) -> list[Note]:
        """A size that cannot belong to the weight given: a weight in the wrong unit, or another piece."""
        for trial in self.trials if "half_thickness_m" in values else ():
            for probed in trial.probes:
                cut = next(k.cut for k in trial.plan.kinds if k.cut.key == probed.cut)
                size = values["half_thickness_m"] * (probed.piece_mass_kg / cut.reference_mass_kg) ** (
                    1.0 / 3.0
                )
                ball = (0.75 * probed.piece_mass_kg / (np.pi * RAW_KG_M3)) ** (1.0 / 3.0)
                if not LEAST_OF_BALL < size / ball < MOST_OF_BALL:
                    return [
                        Note(
                            kind="implausible",
                            text=(
                                "{channel}: a half thickness of {size_m} does not belong to a piece of"
                                " {mass_kg}; check the weight and its unit."
                            ),
                            values={
                                "channel": probed.curve.channel,
                                "size_m": size,
                                "mass_kg": probed.piece_mass_kg,
                            },
                        )
                    ]
        return []

    def lefts(self, weighted: Array) -> list[Array]:
        """Residuals of every part in its own unit."""
        out: list[Array] = []
        place = 0
        for part in self.parts:
            out.append(np.linalg.solve(part.white, weighted[place : place + len(part.read)]).astype(float))
            place += len(part.read)
        return out

    def loosen(self, lefts: list[Array]) -> bool:
        """Give parts that fit worse than assumed their own misfit; whether any did."""
        changed = False
        for part, left in zip(self.parts, lefts, strict=True):
            rms = float(np.sqrt(np.mean(left**2)))
            if part.misfit > 0 and rms > 1.5 * np.hypot(part.misfit, part.sd):
                part.misfit, part.white, changed = rms, _whitener(part.time_s, part.sd, rms), True
        return changed

    def _core_sd(self, jacobian: Array, covariance: Array, count: int) -> float:
        """Standard deviation of the predicted core at the lift from the parameters alone [K]."""
        place, worst = 0, 0.0
        for part in self.parts:
            if part.probe >= 0:
                rows = np.linalg.solve(part.white, jacobian[place : place + len(part.read), :count])
                row = rows[
                    min(int(np.searchsorted(part.time_s, self.trials[part.trial].lift_s)), len(part.read) - 1)
                ]
                worst = max(worst, float(np.sqrt(row @ covariance[:count, :count] @ row)))
            place += len(part.read)
        return worst

    def _correlations(self, covariance: Array) -> tuple[tuple[str, str, float], ...]:
        sd = np.sqrt(np.maximum(np.diag(covariance), 1e-300))
        pairs = combinations(range(len(self.free)), 2)
        return tuple(
            (self.free[i], self.free[j], float(covariance[i, j] / (sd[i] * sd[j]))) for i, j in pairs
        )

    def _warnings(
        self,
        parameters: Sequence[Fitted],
        correlations: Sequence[tuple[str, str, float]],
        x: Array,
        rms: float,
    ) -> list[Note]:
        notes = []
        for a, b, share in correlations:
            if abs(share) > TOO_ALIKE:
                notes.append(
                    Note(
                        kind="alike",
                        text=(
                            "{first} and {second} can hardly be told apart from this log (correlation"
                            " {share}); only together do they mean something."
                        ),
                        values={"first": a, "second": b, "share": round(share, 3)},
                    )
                )
        for p in parameters:
            bound = PARAMETERS[p.name]
            if p.sd > WEAK_SHARE * max(abs(p.value), 0.02 * bound.high):
                notes.append(
                    Note(
                        kind="weak",
                        text="{name} is hardly felt in this log; its interval is wide.",
                        values={"name": p.name},
                    )
                )
            if min(p.value - bound.low, bound.high - p.value) < 1e-4 * (bound.high - bound.low):
                notes.append(
                    Note(
                        kind="at_bound",
                        text="{name} ran to the end of its range; look at the log again.",
                        values={"name": p.name},
                    )
                )
                if p.name == "shape_n" and rms > BOUND_MISFIT_K:
                    text = (
                        "The shape ran to the end of its range and the model still misses the log by {rms_k}:"
                        " such meat conducts otherwise than the model's. Do not rely on it under another"
                        " program."
                    )
                    notes.append(Note(kind="shape_at_bound", text=text, values={"rms_k": rms}))
        count = len(self.free)
        worst = float(np.max(np.abs(x[count : count + 2 * self.probes]), initial=0.0))
        if worst > 3.0:
            notes.append(
                Note(
                    kind="sensor",
                    text=(
                        "A probe would have to be {times} times further off than its thermometer's error;"
                        " check it."
                    ),
                    values={"times": round(worst, 1)},
                )
            )
        return notes


def _resized(cut: Cut, values: dict[str, float]) -> Cut:
    """A cut with parameters put in; its bone never fills more than BONE_SHARE of it."""
    changed = replace(cut, **values)  # type: ignore[arg-type]
    return replace(changed, bone_radius_m=min(cut.bone_radius_m, BONE_SHARE * changed.half_thickness_m))


def _thin(time: Array, read: Array) -> tuple[Array, Array]:
    """About one reading every THIN_S seconds, the mean of those around it."""
    known = np.isfinite(read)
    time, read = time[known], read[known]
    bins = np.floor(time / THIN_S).astype(np.int64)
    edges = np.flatnonzero(np.r_[True, np.diff(bins) != 0])
    counts = np.diff(np.r_[edges, len(time)])
    return np.add.reduceat(time, edges) / counts, np.add.reduceat(read, edges) / counts


def _calm_times(time: Array, pressed: Pressed | None) -> NDArray[np.bool_]:
    """Times away from the vent: while pressure falls, a hot core boils off degrees in seconds."""
    if pressed is None:
        return np.ones(len(time), dtype=bool)
    zero = pressed.zero_s if pressed.zero_s is not None else pressed.vent_s + 60.0
    return (time < pressed.vent_s - 2 * THIN_S) | (time > zero + 4 * THIN_S)


def _whitener(time: Array, noise: float, misfit: float) -> Array:
    """Matrix that makes residuals independent: white noise, and a misfit that stays for MISFIT_S."""
    together = misfit**2 * np.exp(-np.abs(time[:, None] - time[None, :]) / MISFIT_S)
    return np.linalg.inv(np.linalg.cholesky(together + noise**2 * np.eye(len(time))))


def _calm(time: Array, read: Array) -> list[tuple[float, float]]:
    """A measured curve as a table for the engine, its noise smoothed away where it is level.

    Noise in pressure would make the engine boil at every peak and never condense, so it must go; where a
    curve rises or falls by far more than the noise (a vent, a load dropped) every reading stays.
    """
    t, y = _thin(time, read)
    noise = max(noise_of(y), 1e-9)
    wide = np.convolve(np.pad(y, 4, mode="edge"), np.ones(9) / 9, mode="valid")
    narrow = np.convolve(np.pad(y, 1, mode="edge"), np.ones(3) / 3, mode="valid")
    spread = np.array([np.ptp(y[max(0, i - 4) : i + 5]) for i in range(len(y))])
    level = np.clip((8.0 * noise - spread) / (3.0 * noise), 0.0, 1.0)
    smooth = level * wide + (1.0 - level) * narrow
    steep = spread > STEEP_N * noise
    known = np.isfinite(read)
    sharp = steep[np.searchsorted(0.5 * (t[1:] + t[:-1]), time[known])]
    points = {float(a): float(b) for a, b in zip(t[~steep], smooth[~steep], strict=True)}
    points |= {float(a): float(b) for a, b in zip(time[known][sharp], read[known][sharp], strict=True)}
    return sorted(points.items())


def tracer(plan: FryPlan, probed: Probed, start_c: float) -> PieceClass:
    """The probed piece as a class of next to no mass, so that it follows the load without changing it."""
    cut = next((k.cut for k in plan.kinds if k.cut.key == probed.cut), None)
    if cut is None:
        raise InputError(
            "cut", probed.cut, "one of this product: " + ", ".join(sorted({k.cut.key for k in plan.kinds}))
        )
    kind = PieceKind(
        cut=cut,
        heavy=True,
        piece_mass_kg=probed.piece_mass_kg,
        class_mass_kg=TRACER_SHARE * max(plan.load_kg, 0.1),
    )
    return replace(piece_class(plan, kind), name=probed.curve.channel, start_temp_c=start_c)


class Headspace(NamedTuple):
    """Absolute pressure over a load as a curve, and what the lid did; nothing where the lid stayed open."""

    curve: list[tuple[float, float]] | None = None
    pressed: Pressed | None = None


def headspace_of(trial: Trial) -> Headspace:
    """The headspace of a load: measured, or by the fryer's model when it has a lid under pressure."""
    atmosphere = trial.plan.site.atmosphere_pa
    if trial.gauge is not None:
        time, gauge = trial.gauge
        return Headspace([(t, atmosphere + max(p, 0.0)) for t, p in _calm(time, gauge)], trial.pressed)
    if not trial.plan.program.under_pressure:
        return Headspace()
    told = spans(trial.plan)
    pieces = [piece_class(trial.plan, k) for k in trial.plan.kinds]
    raw = run(Cook(vat=vat(trial.plan), pieces=pieces, spans=told))
    keep = np.r_[True, np.diff(raw.time_s) > 1e-6]
    curve = list(zip(raw.time_s[keep].tolist(), raw.pressure_pa[keep].tolist(), strict=True))
    return Headspace(curve, trial.pressed or _modelled(raw, told))


def _modelled(raw: RawHistory, told: Sequence[Span]) -> Pressed | None:
    """What the lid did in a simulation: closed, let go, at zero."""
    lids = np.array([span.lid for span in told])[np.minimum(raw.span, len(told) - 1)]
    closed, vented = np.flatnonzero(lids == Lid.PRESSURE), np.flatnonzero(lids == Lid.VENT)
    if not len(closed) or not len(vented):
        return None
    start, vent, zero = max(closed[0] - 1, 0), max(vented[0] - 1, 0), vented[-1]
    times = raw.time_s[[start, vent, zero]].tolist()
    plateau = float(raw.pressure_pa[vent] - raw.pressure_pa[0])
    return Pressed(closed_s=times[0], full_s=None, vent_s=times[1], zero_s=times[2], plateau_pa=plateau)


def engine_question(
    plan: FryPlan, trial: Trial, tracers: list[PieceClass], head: Headspace | None = None
) -> Cook:
    """The engine's question: measured oil, and measured pressure unless the lid itself is asked about
    (``head`` None).
    """
    last = max([trial.lift_s + 1.0, *(float(p.curve.time_s[-1]) for p in trial.probes)])
    whole = trial.loss is not None or trial.crust is not None or head is None
    pieces = [*tracers, *([piece_class(plan, k) for k in plan.kinds if not k.heavy] if whole else [])]
    assert trial.oil is not None
    told = Prescribed(oil_temp_c=_calm(*trial.oil), pressure_pa=None if head is None else head.curve)
    set_c = plan.oil_start_c
    rest = Span(duration_s=max(last - trial.lift_s, 1.0), set_c=set_c, lid=Lid.REST)
    lids = _lid_spans(trial.pressed if head is None else head.pressed, trial.lift_s, set_c)
    return Cook(vat=vat(plan), pieces=pieces, spans=[*lids, rest], prescribed=told)


def _lid_spans(pressed: Pressed | None, lift_s: float, set_c: float) -> list[Span]:
    """The time in the oil by the state of the lid: steps end where it changes, and a vent is stepped as a
    vent.
    """
    marks = [(0.0, Lid.OPEN)]
    if pressed is not None:
        zero = lift_s if pressed.zero_s is None else pressed.zero_s
        full = pressed.closed_s if pressed.full_s is None else pressed.full_s
        marks += [
            (pressed.closed_s, Lid.PRESSURE),
            (full, Lid.PRESSURE),
            (pressed.vent_s, Lid.VENT),
            (zero, Lid.OPEN),
        ]
    ends = [*(time for time, _ in marks[1:]), lift_s]
    clipped = [
        (min(max(a, 0.0), lift_s), min(b, lift_s), lid) for (a, lid), b in zip(marks, ends, strict=True)
    ]
    return [Span(duration_s=b - a, set_c=set_c, lid=lid) for a, b, lid in clipped if b - a > SHORTEST_SPAN_S]


def _core_reader(n: int, time: Array) -> Predict:
    return lambda raw, _plan, late: np.interp(time - late, raw.time_s, raw.core_temp_c[:, n])


def _gauge_reader(time: Array) -> Predict:
    return lambda raw, plan, late: np.interp(
        time - late, raw.time_s, raw.pressure_pa - plan.site.atmosphere_pa
    )


def _loss_reader(cuts: set[str]) -> Predict:
    return lambda raw, plan, _late: np.array([_usual(raw, plan, cuts)[0]])


def _crust_reader() -> Predict:
    return lambda raw, plan, _late: np.array([_usual(raw, plan)[1]])


def _usual(raw: RawHistory, plan: FryPlan, cuts: Collection[str] = ()) -> tuple[float, float]:
    """Moisture lost of breaded weight and crust, means by mass over the usual load, or over some cuts of
    it.
    """
    usual = tuple(k for k in plan.kinds if not k.heavy)
    first = raw.core_temp_c.shape[1] - len(usual)
    lift = float(raw.time_s[np.flatnonzero(raw.span < raw.span.max())[-1]])
    pieces = pieces_of(replace(plan, kinds=usual), raw, first, lift, lift)
    mass = np.array([k.class_mass_kg if not cuts or k.cut.key in cuts else 0.0 for k in usual])
    share = mass / mass.sum()
    loss = float(share @ np.array([p.yields.moisture_loss_frac for p in pieces]))
    return loss, float(share @ np.array([p.crust_at_lift_m for p in pieces]))
