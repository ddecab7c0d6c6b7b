"""The filter of a probed piece against what it should be by the books: one normal law of all readings, each
draw's own curve point by point, and draws weighed by what they were drawn from. No engine: cores rise evenly.
"""

from __future__ import annotations

from copy import deepcopy

import numpy as np
import pytest
from scipy.stats import multivariate_normal

from frywright.calibrate.ahead import Ahead, Goal, Outlook, means, quantiles
from frywright.calibrate.family import CALIBRATED, LEVELS, SCOUTING, Course, Family, Spread
from tests.conftest import piece

TOP_C, START_C, TOOK_S = 79.0, 4.0, 400.0
GOAL = Goal(rows=((74.0, 0.0),), guard_k=0.6)
COURSE = Course(
    plan=None,  # type: ignore[arg-type]
    oil_c=[(0.0, 170.0), (100.0, 160.0), (600.0, 168.0)],
    pressure_pa=[],
    spans=(),
    lift_s=TOOK_S,
    vent_s=(330.0, 350.0),
)


def even(spread: Spread = SCOUTING, error_ln: float = 0.01) -> Family:
    """Cores that rise evenly to ``TOP_C``, slower by the square of their size."""
    weights = np.zeros((21, len(LEVELS)))
    weights[0], weights[1] = np.log(TOOK_S * LEVELS), 2.0 * spread.size_ln
    return Family(
        piece=piece(n=0.0), spread=spread, start_c=START_C, top_c=TOP_C, weights=weights, error_ln=error_ln
    )


def core_of(ahead: Ahead, time_s: np.ndarray) -> np.ndarray:
    """The core of each draw at its own time, draw by draw."""
    shares = [np.interp(t, [0.0, *row], [0.0, *LEVELS]) for t, row in zip(time_s, ahead.times, strict=True)]
    return ahead.starts + np.array(shares) * (TOP_C - ahead.starts)


def together(time_s: list[float], offset_k: float, misfit_k: float, noise_k: float) -> np.ndarray:
    """Covariance of readings: an offset that stays, a misfit that fades over 120 s, noise of each."""
    apart = np.abs(np.subtract.outer(time_s, time_s))
    return offset_k**2 + misfit_k**2 * np.exp(-apart / 120.0) + noise_k**2 * np.eye(len(time_s))


def log_chance(off: np.ndarray, covariance: np.ndarray) -> np.ndarray:
    """Logarithm of the normal law of each draw's residuals (reading, draw), but for what all share."""
    return -0.5 * np.einsum("ri,ri->i", off, np.linalg.solve(covariance, off))


@pytest.mark.parametrize("time_s", [2.0, 60.0, 250.0, 399.0, 900.0])
def test_what_a_probe_would_read_is_each_draws_own_curve(time_s):
    """Off the coldest spot, late and lagging, as the two points of the series say (n = 0: a factor of 3)."""
    ahead = Ahead(even(), COURSE, GOAL, 0.3)
    own = time_s - ahead.late_s - ahead.lag_s
    wanted = 3.0 * core_of(ahead, own + ahead.lead_s / 3.0) - 2.0 * core_of(ahead, own)
    assert ahead.expected(time_s) == pytest.approx(wanted, abs=1e-9)


def test_levels_passed_at_nearly_the_same_time_are_read_between_each_other():
    """Where the parabola in the draws folds, two levels come within less than a second, or at once."""
    family = even()
    family.weights[0, 30] = family.weights[0, 29] + 0.002
    family.weights[0, 31] = family.weights[0, 30]
    ahead = Ahead(family, COURSE, GOAL, 0.3)
    for own in (ahead.times[:, 29] + 0.1, ahead.times[:, 30] + 0.1):
        assert ahead._at(own) == pytest.approx(core_of(ahead, own), abs=1e-9)


@pytest.mark.parametrize("spread", [SCOUTING, CALIBRATED])
def test_draws_spread_as_the_estimates_say(spread):
    """Moments of the draws: of z + 0.04 z^3 the variance is 1 + 6 c + 15 c^2, of a log normal the median."""
    ahead = Ahead(even(spread), COURSE, GOAL, 0.3)
    size = np.log(ahead.size) / spread.size_ln
    assert (size.mean(), size.std()) == pytest.approx((0.0, np.sqrt(1 + 6 * 0.04 + 15 * 0.04**2)), abs=0.02)
    lag = np.log(ahead.lag_s / 3.0) / 0.5
    for drawn in (lag, ahead.late_s / 3.0, ahead.oil_k / spread.oil_k, (ahead.starts - 4.0) / spread.start_k):
        assert (drawn.mean(), drawn.std()) == pytest.approx((0.0, 1.0), abs=0.02)
    half = (
        ahead.lead_s / ahead.size**2 / float(ahead.family.lead_s(1.0))
    ) ** 0.5  # n = 0: lead goes with r^2
    assert half.mean() == pytest.approx(0.12 * np.sqrt(2 / np.pi), rel=0.02)
    assert half.max() <= 0.6 + 1e-12


def test_readings_of_the_oil_weigh_draws_as_one_normal_law_does():
    """Offset 1 K, misfit 3 K for 120 s, noise 0.5 K: taken in one by one they count as all at once."""
    ahead, time_s = Ahead(even(), COURSE, GOAL, 0.3), [20.0, 50.0, 90.0, 200.0]
    told = np.interp(time_s, *np.array(COURSE.oil_c).T)
    read = told + np.array([1.5, -0.5, 0.7, 1.0])
    for time, oil_c in zip(time_s, read, strict=True):
        ahead.read_oil(time, float(oil_c))
    ahead.read_oil(0.0, 90.0)  # before the drop: says nothing
    off = (read - told)[:, None] - ahead.oil_k
    wanted = log_chance(off, together(time_s, 1.0, 3.0, 0.5))
    assert ahead.score - ahead.score[0] == pytest.approx(wanted - wanted[0], abs=1e-9)


def read_core(ahead: Ahead, time_s: list[float], off_k: list[float]) -> np.ndarray:
    """Readings beside what the middle draw expects, taken in; they, less what each draw expects."""
    found = []
    for time, off in zip(time_s, off_k, strict=True):
        expected = ahead.expected(time)
        read = float(np.median(expected)) + off
        found.append(read - expected)
        ahead.read(time, read)
    return np.array(found)


def test_readings_of_the_core_weigh_draws_as_one_normal_law_does():
    """The thermometer's 0.3 K, misfit 0.27 K for 120 s, noise 0.15 K; and what is expected of the core now is
    each draw's curve with the misfit that the same law expects.
    """
    ahead, time_s = Ahead(even(), COURSE, GOAL, 0.3), [40.0, 55.0, 80.0, 130.0]
    off = read_core(ahead, time_s, [0.5, -0.3, 0.4, 0.2])
    covariance = together(time_s, 0.3, 0.27, 0.15)
    wanted = log_chance(off, covariance)
    assert ahead.score - ahead.score[0] == pytest.approx(wanted - wanted[0], abs=1e-9)
    fades = 0.27**2 * np.exp(-(130.0 - np.array(time_s)) / 120.0)
    misfit = fades @ np.linalg.solve(covariance, off)
    assert ahead.core.mean[:, 1] == pytest.approx(misfit, abs=1e-9)
    weight = np.exp(wanted - wanted.max())
    weight /= weight.sum()
    core = core_of(ahead, 130.0 - ahead.late_s) + misfit
    told = ahead.outlook(130.0, TOOK_S)
    assert told == Outlook(
        core_c=pytest.approx(quantiles(core, weight, (0.5,))[0]),
        core_low_c=pytest.approx(quantiles(core, weight, (0.05,))[0]),
        core_high_c=pytest.approx(quantiles(core, weight, (0.95,))[0]),
        limit_s=pytest.approx(quantiles(ahead.limit_s, weight, (0.5,))[0]),
        low_s=pytest.approx(quantiles(ahead.limit_s, weight, (0.05,))[0]),
        high_s=pytest.approx(quantiles(ahead.limit_s, weight, (0.95,))[0]),
        makes_it_frac=pytest.approx(float(weight[ahead.limit_s <= TOOK_S].sum())),
        size_frac=pytest.approx(float(weight @ ahead.size)),
        moved=False,
    )
    assert ahead.draws_count == pytest.approx(1.0 / np.sum(weight**2))


def test_readings_beside_a_vent_and_before_the_drop_say_nothing():
    """From 20 s before a vent to 20 s after it: a hot core boils off degrees in seconds."""
    ahead = Ahead(even(), COURSE, GOAL, 0.3)
    for time_s in (-1.0, 0.0, 310.0, 340.0, 370.0):
        ahead.read(time_s, 60.0)
    assert not ahead.reads and not ahead.score.any()
    for time_s in (309.9, 370.1):
        read_core(ahead, [time_s], [0.0])
    assert [time for time, _, _ in ahead.reads] == [309.9, 370.1]


def test_the_limit_is_met_where_each_draws_curve_meets_it_and_wanders_with_what_is_left_unexplained():
    """An even rise meets 74.6 °C at its share of the way; 0.27 K of misfit move that by 0.27 K over the rise,
    and the parabola's own error by 1 % of the time.
    """
    ahead = Ahead(even(), COURSE, GOAL, 0.3)
    took = ahead.times[:, -1]
    met = took * (74.6 - ahead.starts) / (TOP_C - ahead.starts)
    wander = np.hypot(0.27 * took / (TOP_C - ahead.starts), 0.01 * met)
    assert ahead.limit_s == pytest.approx(met + ahead.late_s + ahead.noise[:, -1] * wander, rel=1e-9)


def test_new_draws_are_weighed_by_the_prior_over_what_they_were_drawn_from():
    """A tenth from the prior, the rest around what is left, 1.25 times as wide; then every reading again, as
    means. Densities and covariance by SciPy and NumPy.
    """
    ahead, time_s = Ahead(even(), COURSE, GOAL, 0.3), [60.0, 90.0, 120.0, 150.0, 180.0, 210.0, 240.0]
    read_core(ahead, time_s[:4], [2.0] * 4)
    for time in (30.0, 130.0):
        ahead.read_oil(time, float(np.interp(time, *ahead.told_oil)) + 1.0)
    ahead.fresh_count = -99
    read_core(ahead, time_s[4:6], [2.0] * 2)
    before = deepcopy(ahead)
    ahead.fresh_count = 4
    read_core(ahead, time_s[6:], [2.0])
    read_core(before, time_s[6:], [2.0])
    assert before.draws_count < 0.15 * 1024 and ahead.fresh_count == 0
    assert ahead.draws[:102] == pytest.approx(ahead.noise[:102, :8])
    assert not np.allclose(ahead.draws[102:], ahead.noise[102:, :8])
    middle = before.weights @ before.draws
    wide = 1.25**2 * np.cov(before.draws.T, aweights=before.weights, ddof=0) + 0.03**2 * np.eye(8)
    prior = multivariate_normal(np.zeros(8), np.eye(8)).logpdf(ahead.draws)
    near = multivariate_normal(middle, wide).logpdf(ahead.draws)
    again = means(ahead.reads)
    off = np.array([core_c - ahead.expected(time) for time, core_c, _ in again])
    covariance = together([time for time, _, _ in again], 0.3, 0.27, 0.0)
    covariance += np.diag([noise**2 for _, _, noise in again])
    oil = np.array([1.0 - ahead.oil_k] * 2)
    wanted = prior - np.logaddexp(np.log(0.1) + prior, np.log(0.9) + near)
    wanted += log_chance(off, covariance) + log_chance(oil, together([30.0, 130.0], 1.0, 3.0, 0.5))
    likely = wanted > wanted.max() - 12.0
    gap = ahead.score - wanted
    assert likely.sum() > 100
    assert gap[likely] - gap[likely][0] == pytest.approx(0.0, abs=1e-6)
