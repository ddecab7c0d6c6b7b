"""When will this core reach its limit? Many pieces that could be the one probed, weighed by each reading.

A Rao-Blackwellised particle filter (Doucet and others, 2000, from memory): each of some thousand draws is a
piece, a place of the probe's tip, a lag and a moment of the drop; its curve comes from the engine's
:mod:`family <frywright.calibrate.family>`. The probe's offset and a slow misfit of the engine are Gaussian
given the draw, so one Kalman filter each follows them; its covariance is the same for all.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.family import LEVELS, NAMES, Course, Family, normal_draws
from frywright.catalog import load as catalog
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.tables import fsis_poultry, log_mean, uk_equivalents

Array = NDArray[np.float64]
DRAWS, SEED = 1024, 21
DIMENSIONS = len(NAMES) + 3
HEAVY_N = 0.04
"""Tails of the size: a draw of z stands for z (1 + 0.04 z^2) standard deviations. Own choice: a piece nobody
expected is rare, not impossible."""
FRESH, LEAST_SHARE, WIDER_N, WIDEST_LEAST, PRIOR_SHARE, AGAIN_COUNT = 5, 0.15, 1.25, 0.03, 0.1, 12
"""New draws at most every so many readings, below this share that counts; how much wider they are drawn than
what is left, at least; share drawn from the prior again; readings are shown again as so many means."""
MOST_PLACE = 0.6
PLACE_SD, LAG_S, LAG_LN, LATE_SD_S = 0.12, 3.0, 0.5, 3.0
"""Tip off the coldest spot as a share of the way to the surface (half normal); lag of the probe (log normal);
how far the drop lies beside the moment given. Estimates of this project: a thin probe in moving liquid
follows within a few seconds, a thumb on a button is good to a few seconds."""
MISFIT_K, MISFIT_S = 0.27, 120.0
OIL_OFFSET_K, OIL_MISFIT_K, OIL_MISFIT_S, OIL_NOISE_K = 1.0, 3.0, 120.0, 0.5
"""What the engine leaves unexplained of a core and of the oil, and for how long it stays. Chosen on seeds of
benchmarks/live.py below 1000, judged on those from 1000 on."""
NOISE_K = 0.15  # of one reading beside the misfit (own estimate)
SURPRISE_SD, MOVED_COUNT = 5.0, 8
"""A reading so many spreads off what is expected is odd; so many odd ones say that the probe has moved (own
choice).
"""
NINETY = (0.05, 0.95)
VENT_REST_S = 20.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Goal:
    """What a core must do: hold one of the ``rows`` (degC, s), or collect ``log_n`` of Salmonella; with
    ``guard_k`` taken off every core.
    """

    rows: tuple[tuple[float, float], ...]
    guard_k: float
    log_n: float = 0.0

    @property
    def level_c(self) -> float:
        """The core that is surely enough [degC], guard band added."""
        return max(row[0] for row in self.rows) + self.guard_k


def goal_of(limit: CookLimit, guard_k: float, fat_pct: float) -> Goal:
    """What a limit asks of a core, as :func:`frywright.verdicts.judge.judge` judges it."""
    if limit.level_c is not None:
        return Goal(rows=((limit.level_c, limit.hold_s),), guard_k=guard_k)
    if limit.kind == "log_reduction":
        ceiling = float(catalog.table("kinetics/salmonella.toml")["credit_ceiling_c"])
        return Goal(rows=((ceiling, 0.0),), guard_k=guard_k, log_n=limit.log_n)
    table = uk_equivalents() if limit.rule == "uk_core" else fsis_poultry("chicken", fat_pct)
    return Goal(rows=tuple(zip(table.temp_c, table.time_s, strict=True)), guard_k=guard_k)


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook:
    """What is expected of one piece now. Times are from the drop [s]; low and high bound 90 %."""

    core_c: float
    core_low_c: float
    core_high_c: float
    limit_s: float
    low_s: float
    high_s: float
    makes_it_frac: float
    size_frac: float  # size against the one expected
    moved: bool


class Drift:
    """A Kalman filter of a constant offset and a wandering misfit, one mean for each draw, one covariance."""

    def __init__(self, count: int, offset_k: float, misfit_k: float, misfit_s: float) -> None:
        self.mean = np.zeros((count, 2))
        self.covariance = np.diag([offset_k**2, misfit_k**2])
        self.misfit_k, self.misfit_s = misfit_k, misfit_s
        self.last_s: float | None = None

    def weigh(self, time_s: float, off: Array, noise_k: float) -> tuple[Array, Array, float]:
        """Let time pass; what each draw leaves unexplained of a reading, and its variance."""
        passed = 0.0 if self.last_s is None else max(time_s - self.last_s, 0.0)
        keep = np.exp(-passed / self.misfit_s)
        self.mean[:, 1] *= keep
        self.covariance = self.covariance * np.array([[1.0, keep], [keep, keep**2]])
        self.covariance[1, 1] += (1.0 - keep**2) * self.misfit_k**2
        self.last_s = time_s
        left = off - self.mean.sum(axis=1)
        variance = float(self.covariance.sum() + noise_k**2)
        return left, self.covariance.sum(axis=1) / variance, variance

    def take(self, left: Array, gain: Array, variance: float) -> None:
        """Believe the reading."""
        self.mean += left[:, None] * gain
        self.covariance = self.covariance - variance * np.outer(gain, gain)


class Ahead:
    """The filter of one probed piece. Readings come in the order of their times.

    Where few draws are left that count, new ones are drawn around them, weighed by the prior over what they
    were drawn from, and shown every reading again (population Monte Carlo; Cappé and others, 2004, from
    memory).
    """

    def __init__(self, family: Family, course: Course, goal: Goal, sensor_k: float) -> None:
        self.family, self.course, self.goal, self.sensor_k = family, course, goal, sensor_k
        self.told_oil = np.array(course.oil_c).T
        self.noise = normal_draws(DRAWS, DIMENSIONS + 1, SEED)
        self.reads: list[tuple[float, float, float]] = []
        self.oils: list[tuple[float, float]] = []
        self.odd_count, self.fresh_count = 0, 0
        self._begin(self.noise[:, :DIMENSIONS], np.zeros(DRAWS))

    def _begin(self, draws: Array, score: Array) -> None:
        """Start from draws of the prior's own standard normal numbers."""
        own = draws[:, : len(NAMES)].copy()
        own[:, 0] *= 1.0 + HEAVY_N * own[:, 0] ** 2
        family = self.family
        self.draws, self.score = draws, score
        self.size = np.exp(family.spread.size_ln * own[:, 0])
        self.times, self.starts = family.times_s(own), family.starts_c(own)
        self.lead_s = (
            family.lead_s(np.minimum(PLACE_SD * half_normal(draws[:, -3]), MOST_PLACE)) * self.size**2
        )
        self.lag_s = LAG_S * np.exp(LAG_LN * draws[:, -2])
        self.late_s = LATE_SD_S * draws[:, -1]
        self.oil_k = family.spread.oil_k * own[:, 4]
        self.core = Drift(len(draws), self.sensor_k, MISFIT_K, MISFIT_S)
        self.oil = Drift(len(draws), OIL_OFFSET_K, OIL_MISFIT_K, OIL_MISFIT_S)
        self.limit_s = self._limits(self.noise[:, -1])

    def _at(self, time_s: Array) -> Array:
        """Core of each draw at its own time."""
        times, rows = self.times, np.arange(len(self.times))
        place = np.minimum(np.count_nonzero(times <= time_s[:, None], axis=1), len(LEVELS) - 1)
        before = np.maximum(place - 1, 0)
        early = np.where(place > 0, times[rows, before], 0.0)
        low = np.where(place > 0, LEVELS[before], 0.0)
        share = np.clip((time_s - early) / np.maximum(times[rows, place] - early, 1e-9), 0.0, 1.0)
        level = low + share * (LEVELS[place] - low)
        return np.asarray(self.starts + level * (self.family.top_c - self.starts), dtype=float)

    def expected(self, time_s: float) -> Array:
        """What the probe would read in each draw: off the coldest spot by its lead, behind by its lag.

        Two points of the curve stand in for the fourth order in the distance as well: of
        ``T + g T' + c g^2 T''`` with ``c = (n+1) / (2 (n+3))``, the series of the conduction equation.
        """
        n = self.family.piece.shape_n
        far = (n + 3.0) / (n + 1.0)
        own = time_s - self.late_s - self.lag_s
        return (1.0 - far) * self._at(own) + far * self._at(own + self.lead_s / far)

    def read(self, time_s: float, core_c: float, noise_k: float = NOISE_K) -> None:
        """Take in a reading of the probe, a time after the drop as it was given [s]."""
        if time_s <= 0 or self._venting(time_s):
            return
        if self._take(time_s, core_c, noise_k):
            self.reads.append((time_s, core_c, noise_k))
            self._renew()

    def _take(self, time_s: float, core_c: float, noise_k: float) -> bool:
        """Weigh every draw by a reading; False for one that no piece explains: a knock, a spike."""
        left, gain, variance = self.core.weigh(time_s, core_c - self.expected(time_s), noise_k)
        weight = self.weights
        middle = float(weight @ left)
        spread = float(np.sqrt(weight @ (left - middle) ** 2 + variance))
        odd = abs(middle) > SURPRISE_SD * spread
        self.odd_count = self.odd_count + 1 if odd else 0
        if odd:
            return False
        self.score = self.score - 0.5 * left**2 / variance
        self.core.take(left, gain, variance)
        return True

    def read_oil(self, time_s: float, oil_c: float) -> None:
        """Take in a reading of the oil."""
        if time_s > 0:
            self.oils.append((time_s, oil_c))
            self._take_oil(time_s, oil_c)

    def _take_oil(self, time_s: float, oil_c: float) -> None:
        off = oil_c - float(np.interp(time_s, *self.told_oil)) - self.oil_k
        left, gain, variance = self.oil.weigh(time_s, off, OIL_NOISE_K)
        self.score = self.score - 0.5 * np.minimum(left**2 / variance, SURPRISE_SD**2)
        self.oil.take(left, gain, variance)

    def _renew(self) -> None:
        """New draws where few still count, and every reading again, as AGAIN_COUNT means."""
        self.fresh_count += 1
        if self.fresh_count < FRESH or self.draws_count > LEAST_SHARE * DRAWS:
            return
        weight = self.weights
        middle = weight @ self.draws
        off = self.draws - middle
        wide = WIDER_N**2 * (off.T @ (weight[:, None] * off)) + WIDEST_LEAST**2 * np.eye(DIMENSIONS)
        root = np.linalg.cholesky(wide)
        new = middle + self.noise[:, :DIMENSIONS] @ root.T
        kept = int(PRIOR_SHARE * DRAWS)
        new[:kept] = self.noise[:kept, :DIMENSIONS]
        prior = -0.5 * np.sum(new**2, axis=1)
        apart = np.linalg.solve(root, (new - middle).T)
        near = -0.5 * np.sum(apart**2, axis=0) - np.log(np.diag(root)).sum()
        drawn = np.logaddexp(np.log(PRIOR_SHARE) + prior, np.log(1.0 - PRIOR_SHARE) + near)
        odd = self.odd_count
        self._begin(new, prior - drawn)
        for time_s, core_c, noise_k in means(self.reads):
            left, gain, variance = self.core.weigh(time_s, core_c - self.expected(time_s), noise_k)
            self.score = self.score - 0.5 * left**2 / variance
            self.core.take(left, gain, variance)
        for time_s, oil_c, _ in means([(*pair, OIL_NOISE_K) for pair in self.oils]):
            self._take_oil(time_s, oil_c)
        self.odd_count, self.fresh_count = odd, 0

    def _venting(self, time_s: float) -> bool:
        vent = self.course.vent_s
        return vent is not None and vent[0] - VENT_REST_S <= time_s <= vent[1] + VENT_REST_S

    @property
    def weights(self) -> Array:
        """How much each draw counts; they sum to 1."""
        weight = np.exp(self.score - self.score.max())
        return np.asarray(weight / weight.sum(), dtype=float)

    @property
    def draws_count(self) -> float:
        """How many draws still count (Kish)."""
        return float(1.0 / np.sum(self.weights**2))

    def outlook(self, time_s: float, lift_s: float) -> Outlook:
        """What is expected at a time, with the lift that is planned."""
        weight = self.weights
        core = self._at(np.full(len(weight), time_s) - self.late_s) + self.core.mean[:, 1]
        low, middle, high = quantiles(self.limit_s, weight, (NINETY[0], 0.5, NINETY[1]))
        core_low, core_middle, core_high = quantiles(core, weight, (NINETY[0], 0.5, NINETY[1]))
        return Outlook(
            core_c=core_middle,
            core_low_c=core_low,
            core_high_c=core_high,
            limit_s=middle,
            low_s=low,
            high_s=high,
            makes_it_frac=float(weight @ (self.limit_s <= lift_s)),
            size_frac=float(weight @ self.size),
            moved=self.odd_count >= MOVED_COUNT,
        )

    def _limits(self, noise: Array) -> Array:
        """Time at which each draw meets the goal, from the drop as it was given [s].

        The misfit that stays with the engine moves it by as much as the core takes to rise by that.
        """
        met = met_s(self.goal, self.times, self.starts, self.family.top_c)
        level = (self.goal.level_c - self.starts) / (self.family.top_c - self.starts)
        place = np.clip(np.searchsorted(LEVELS, float(np.median(level))), 4, len(LEVELS) - 5)
        rise = (LEVELS[place + 4] - LEVELS[place - 4]) * (self.family.top_c - self.starts)
        took = self.times[:, place + 4] - self.times[:, place - 4]
        wander = np.hypot(MISFIT_K * took / rise, self.family.error_ln * met)
        return np.asarray(met + self.late_s + noise * wander, dtype=float)


def half_normal(z: Array) -> Array:
    """A half normal number for each standard normal one, rising with it."""
    from scipy.special import ndtr, ndtri

    return np.asarray(ndtri(0.5 + 0.5 * ndtr(z)), dtype=float)


def means(
    reads: list[tuple[float, float, float]], count: int = AGAIN_COUNT
) -> list[tuple[float, float, float]]:
    """Readings as means over equal stretches of their time: time, value, noise of the mean."""
    if not reads:
        return []
    time, value, noise = np.array(reads).T
    place = np.minimum((count * (time - time[0]) / max(time[-1] - time[0], 1e-9)).astype(np.int64), count - 1)
    edges = np.flatnonzero(np.r_[True, np.diff(place) != 0])
    counts = np.diff(np.r_[edges, len(time)])
    summed = [np.add.reduceat(x, edges) / counts for x in (time, value, noise)]
    return list(
        zip(summed[0].tolist(), summed[1].tolist(), (summed[2] / np.sqrt(counts)).tolist(), strict=True)
    )


def met_s(goal: Goal, times: Array, starts: Array, top_c: float) -> Array:
    """Times at which rising cores meet a goal: the first row held, or the logs collected."""
    if goal.log_n:
        return _collected_s(goal, times, starts, top_c)
    held = [_reaches(c + goal.guard_k, times, starts, top_c) + hold for c, hold in goal.rows]
    return np.asarray(np.min(held, axis=0), dtype=float)


def _collected_s(goal: Goal, times: Array, starts: Array, top_c: float) -> Array:
    """When rising cores have collected the logs: D and z between levels, exact for straight pieces."""
    t = catalog.table("kinetics/salmonella.toml")
    core = starts[:, None] + LEVELS * (top_c - starts)[:, None] - goal.guard_k
    rate = (
        10.0 ** ((np.minimum(core, t["credit_ceiling_c"]) - t["reference_c"]) / t["z_k"]) / t["d_reference_s"]
    )
    middle = 0.5 * (core[:, 1:] + core[:, :-1]) >= t["low_c"]
    gained = log_mean(rate[:, :-1], rate[:, 1:]) * np.diff(times, axis=1) * middle
    summed = np.cumsum(gained, axis=1)
    place = np.clip((summed < goal.log_n).sum(axis=1), 0, len(LEVELS) - 2)
    rows = np.arange(len(times))
    before = np.where(place > 0, summed[rows, np.maximum(place - 1, 0)], 0.0)
    part = np.clip((goal.log_n - before) / np.maximum(gained[rows, place], 1e-12), 0.0, 1.0)
    grows = np.maximum(np.log(rate[rows, place + 1] / rate[rows, place]), 1e-9)  # exponential between levels
    share = np.log1p(part * np.expm1(grows)) / grows
    return np.asarray(times[rows, place] + share * (times[rows, place + 1] - times[rows, place]), dtype=float)


def _reaches(level_c: float, times: Array, starts: Array, top_c: float) -> Array:
    level = (level_c - starts) / (top_c - starts)
    place = np.clip(np.searchsorted(LEVELS, level), 1, len(LEVELS) - 1)
    rows = np.arange(len(times))
    share = (level - LEVELS[place - 1]) / (LEVELS[place] - LEVELS[place - 1])
    before, after = times[rows, place - 1], times[rows, place]
    return np.asarray(before + np.clip(share, 0.0, 1.0) * (after - before), dtype=float)


def quantiles(values: Array, weight: Array, shares: tuple[float, ...]) -> list[float]:
    """Weighted quantiles."""
    order = np.argsort(values)
    summed = np.cumsum(weight[order])
    return [float(values[order[min(int(np.searchsorted(summed, s)), len(values) - 1)]]) for s in shares]
