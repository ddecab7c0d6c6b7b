"""Residuals of all loads as a function of the parameters, and of what is not well known beside them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.parameters import LID, PARAMETERS
from frywright.calibrate.parts import parts_of, whitener
from frywright.calibrate.trial import FITTING, Trial, calm, engine_question, headspace_of, tracer
from frywright.model.food import Cut
from frywright.physics.plan import BONE_SHARE, FryPlan, drip_of
from frywright.physics.solve import Cook, RawHistory, run_many

Array = NDArray[np.float64]
Histories = list[tuple[RawHistory, FryPlan]]

DROP_EARLY_S, DROP_SD_S = 0.33, 0.28
"""How early a drop is found in an oil curve, and how surely, on logs of one reading a second. The mean is
that of synthetic logs; their spread is 0.39 s, of which the core curve itself takes some away: 0.28 s and
MISFIT_K were chosen so that intervals of seeds 0 to 399 are not too wide, and are judged on other seeds
(tests/calibrate/test_fit.py)."""
STEP, NUISANCE_STEP = 0.01, 0.5


class Problem:
    """Residuals of all trials as a function of scaled parameters and nuisances."""

    def __init__(self, trials: Sequence[Trial], free: tuple[str, ...], sensor_sd_k: float) -> None:
        self.free, self.sensor_sd_k = free, sensor_sd_k
        self.lid = any(name in LID for name in free)
        self.trials = [replace(t, probes=()) if self.lid else _in_the_oil(t) for t in trials]
        self.cuts = {p.cut for t in self.trials for p in t.probes}
        self.heads = [None if self.lid else headspace_of(t) for t in self.trials]
        self.first = [sum(len(t.probes) for t in self.trials[:i]) for i in range(len(self.trials))]
        self.parts = [
            part
            for i, trial in enumerate(self.trials)
            for part in parts_of(i, trial, self.heads[i], self.cuts, self.first[i])
        ]
        self.probes = sum(len(t.probes) for t in self.trials)
        self.nuisances = 2 * self.probes + len(self.trials)
        self.before = np.array([self._now(name) for name in free])
        self.scale = np.maximum(np.abs(self.before), [0.05 * PARAMETERS[n].high for n in free])
        low = np.array([PARAMETERS[n].low for n in free]) / self.scale
        high = np.array([PARAMETERS[n].high for n in free]) / self.scale
        self.start = np.r_[
            np.clip(self.before / self.scale, low + 1e-6, high - 1e-6), np.zeros(self.nuisances)
        ]
        self.bounds = (np.r_[low, np.full(self.nuisances, -6.0)], np.r_[high, np.full(self.nuisances, 6.0)])
        self.runs_count = 0
        self._oils = [None if t.oil is None else calm(*t.oil) for t in self.trials]
        self._known: dict[tuple[int, bytes], tuple[RawHistory, FryPlan]] = {}

    def _now(self, name: str) -> float:
        plan, place = self.trials[0].plan, PARAMETERS[name].place
        if place == "cut":
            cuts = [k.cut for k in plan.kinds if not self.cuts or k.cut.key in self.cuts]
            if name == "drip_frac":
                return drip_of(cuts[0]).get(name, 0.0) * cuts[0].evaporable_frac
            return float(getattr(cuts[0], name))
        return float(getattr(plan.fryer, name))

    def changed(self, trial: Trial, values: Array) -> FryPlan:
        """The plan of a trial with parameters put in."""
        plan = trial.plan
        at = dict(zip(self.free, values, strict=True))
        by = {
            place: {n: float(v) for n, v in at.items() if PARAMETERS[n].place == place}
            for place in ("cut", "fryer")
        }
        if by["cut"]:
            kinds = tuple(
                replace(k, cut=_resized(k.cut, by["cut"])) if not self.cuts or k.cut.key in self.cuts else k
                for k in plan.kinds
            )
            plan = replace(plan, kinds=kinds)
        if by["fryer"]:
            fryer = by["fryer"]
            if fryer.get("working_gauge_pa", 0.0) >= plan.fryer.relief_gauge_pa:
                fryer = {**fryer, "relief_gauge_pa": fryer["working_gauge_pa"] + 1e3}
            plan = replace(plan, fryer=replace(plan.fryer, **fryer))  # type: ignore[arg-type]
        return plan

    def histories(self, x: Array) -> Histories:
        """Engine runs of all trials; a probe's offset is taken off its start temperature.

        Drifts and moments of the drop change no run. Whoever asks for a point asks for its Jacobian next, so
        the runs beside it are solved with it, and all replace what was known.
        """
        wanted = [(i, self._asked(i, x)) for i in range(len(self.trials))]
        if any((i, asked.tobytes()) not in self._known for i, asked in wanted):
            self._solve(
                [x, *(point for k in range(len(self.free) + self.probes) for point in self._beside(x, k))]
            )
        return [self._known[i, asked.tobytes()] for i, asked in wanted]

    def _asked(self, i: int, x: Array) -> Array:
        """What of a point changes the run of trial ``i``: parameters, and the offsets of its own probes."""
        first = len(self.free) + self.first[i]
        return np.concatenate([x[: len(self.free)], x[first : first + len(self.trials[i].probes)]])

    def _solve(self, points: Sequence[Array]) -> None:
        """Runs of all trials at some points, solved together."""
        asked = {
            (i, a.tobytes()): a for x in points for i in range(len(self.trials)) for a in [self._asked(i, x)]
        }
        told = [self._question(i, a) for (i, _), a in asked.items()]
        raws = run_many([cook for cook, _ in told], FITTING)
        pairs = zip(raws, (plan for _, plan in told), strict=True)
        self._known = dict(zip(asked, pairs, strict=True))
        self.runs_count += len(told)

    def _question(self, i: int, asked: Array) -> tuple[Cook, FryPlan]:
        trial, count = self.trials[i], len(self.free)
        plan = self.changed(trial, asked[:count] * self.scale)
        pieces = [
            tracer(plan, probed, probed.curve.start_c - self.sensor_sd_k * offset)
            for probed, offset in zip(trial.probes, asked[count:], strict=True)
        ]
        return engine_question(plan, trial, pieces, self.heads[i], self._oils[i]), plan

    def residuals(self, x: Array) -> Array:
        """Weighted residuals, priors of the nuisances last."""
        count = len(self.free)
        shifts, drifts = x[count : count + self.probes], x[count + self.probes : count + 2 * self.probes]
        late = DROP_EARLY_S + DROP_SD_S * x[count + 2 * self.probes :]
        histories = self.histories(x)
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
        self.histories(x)
        columns = []
        for k in range(len(x)):
            up, down = self._beside(x, k)
            columns.append((self.residuals(up) - self.residuals(down)) / (up[k] - down[k]))
        return np.stack(columns, axis=1)

    def _beside(self, x: Array, k: int) -> tuple[Array, Array]:
        """Points on both sides of ``x`` along one of its numbers."""
        up, down, step = x.copy(), x.copy(), STEP if k < len(self.free) else NUISANCE_STEP
        up[k], down[k] = min(x[k] + step, self.bounds[1][k]), max(x[k] - step, self.bounds[0][k])
        return up, down

    def sensor(self, x: Array) -> Array:
        """Offsets and drifts of the probes, over their thermometer's error."""
        return x[len(self.free) : len(self.free) + 2 * self.probes]

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
                part.misfit, part.white, changed = rms, whitener(part.time_s, part.sd, rms), True
        return changed

    def core_sd_k(self, jacobian: Array, covariance: Array, count: int) -> float:
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


def _in_the_oil(trial: Trial) -> Trial:
    """A trial with its core curves up to the lift: how a piece cools in air says next to nothing of its size,
    while a lift found some seconds late would count as size.
    """
    probes = []
    for probed in trial.probes:
        curve, keep = probed.curve, probed.curve.time_s <= trial.lift_s
        curve = replace(curve, time_s=curve.time_s[keep], core_c=curve.core_c[keep])
        probes.append(replace(probed, curve=curve))
    return replace(trial, probes=tuple(probes))


def _resized(cut: Cut, values: dict[str, float]) -> Cut:
    """A cut with parameters put in; its bone never fills more than BONE_SHARE of it."""
    changed = replace(cut, **values)  # type: ignore[arg-type]
    return replace(changed, bone_radius_m=min(cut.bone_radius_m, BONE_SHARE * changed.half_thickness_m))
