"""What readings say of a program: the belief against brute force, the plan against what it promises, counts
against tables.
"""

from __future__ import annotations

import tracemalloc
from dataclasses import replace

import numpy as np
import pytest
from scipy.stats import multivariate_normal, norm

from frywright.calibrate import plan_probing
from frywright.calibrate.belief import (
    LOW_Z,
    SIGMA_LOG_SD,
    SIGMA_N,
    TAU_LOG_SD,
    TAU_N,
    PieceClass,
    Prior,
    Seen,
    believe,
    gain_k2,
)
from frywright.calibrate.plan_probing import Decision, expected_path, next_load, standing
from frywright.calibrate.sampling import count_without_failure

CLASSES = tuple(
    PieceClass(cut=cut, place=place, load=load)
    for load in ("half", "full")
    for cut in ("breast", "wing")
    for place in ("middle", "wall")
)


def prior(breast_k=6.0, wing_k=15.0, sigma_k=1.5, tau_k=1.0):
    """Two cuts, two places, two kinds of load; a cut's own error 4 K, a place's 1.5 K, a class's 0.8 K."""
    cut = np.array([c.cut == "wing" for c in CLASSES])
    place = np.array([c.place for c in CLASSES])
    covariance = 16.0 * (cut[:, None] == cut) + 2.25 * (place[:, None] == place) + 0.64 * np.eye(len(CLASSES))
    mean = np.where(cut, wing_k, breast_k).astype(float)
    return Prior(classes=CLASSES, mean_k=mean, covariance_k2=covariance, sigma_k=sigma_k, tau_k=tau_k)


SEEN = (
    Seen(number=1, load=1, margin_k=3.0),
    Seen(number=0, load=1, margin_k=4.5),
    Seen(number=5, load=2, margin_k=6.5),
)


def test_the_belief_is_that_of_brute_force():
    """400,000 kitchens drawn from the prior with spreads of their own, weighed by how well each explains the
    readings (SciPy's densities): the same chance, means and spread.
    """
    asked, rng = prior(), np.random.default_rng(5)
    margins = multivariate_normal(asked.mean_k, asked.covariance_k2).rvs(400_000, random_state=rng)

    def drawn(grid, log_sd):
        chance = norm.pdf(np.log(grid) / log_sd)
        return rng.choice(grid, size=len(margins), p=chance / chance.sum())

    sigma = asked.sigma_k * drawn(SIGMA_N, SIGMA_LOG_SD)
    tau = asked.tau_k * drawn(TAU_N, TAU_LOG_SD)
    shift = tau[:, None] * rng.standard_normal((len(margins), 2))
    weights = np.ones(len(margins))
    for one in SEEN:
        weights *= norm.pdf(one.margin_k, margins[:, one.number] + shift[:, one.load - 1], sigma)
    low = (margins - LOW_Z * np.hypot(sigma, tau)[:, None]).min(axis=1)
    weights /= weights.sum()
    size = 1.0 / np.sum(weights**2)
    assert size > 4000
    found = believe(asked, SEEN)
    assert found.chance_frac == pytest.approx(float(weights @ (low >= 0.0)), abs=0.03)
    assert found.mean_k == pytest.approx(weights @ margins, abs=0.15)
    assert found.low_k == pytest.approx(float(weights @ low), abs=0.3)


def test_the_belief_is_that_of_all_readings_together():
    """Sixty readings of twenty loads, at each pair of spreads that is still likely: the weights by SciPy's
    density of all of them together, means and covariances by conditioning on all of them at once.
    """
    asked, rng = prior(), np.random.default_rng(8)
    seen = tuple(
        Seen(number=int(rng.integers(len(CLASSES))), load=int(rng.integers(1, 21)), margin_k=float(k))
        for k in rng.normal(7.0, 3.0, 60)
    )
    found = believe(asked, seen)
    at, load = np.array([one.number for one in seen]), np.array([one.load for one in seen])
    left_k, cross = np.array([one.margin_k for one in seen]) - asked.mean_k[at], asked.covariance_k2[:, at]
    logs = []
    for n, (sigma, tau) in enumerate(zip(found.sigma_k, found.tau_k, strict=True)):
        gram = cross[at] + tau**2 * (load[:, None] == load) + sigma**2 * np.eye(60)
        gains = cross @ np.linalg.inv(gram)
        assert found.means_k[n] == pytest.approx(asked.mean_k + gains @ left_k, abs=1e-9)
        assert found.covariances_k2[n] == pytest.approx(asked.covariance_k2 - gains @ cross.T, abs=1e-9)
        spread = np.log([sigma / asked.sigma_k, tau / asked.tau_k]) / [SIGMA_LOG_SD, TAU_LOG_SD]
        logs.append(multivariate_normal(np.zeros(60), gram).logpdf(left_k) - 0.5 * spread @ spread)
    weights = np.exp(logs - np.max(logs))
    assert len(weights) > 2
    assert found.weights == pytest.approx(weights / weights.sum(), abs=1e-9)


def test_thousands_of_readings_take_no_more_room():
    """Four thousand readings of one program, as years of them leave: a few MB, and still one belief."""
    seen = tuple(Seen(number=n % len(CLASSES), load=1 + n // 3, margin_k=5.0 + n % 3) for n in range(4000))
    tracemalloc.start()
    found = believe(prior(), seen)
    peak_bytes = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak_bytes < 20e6
    assert found.mean_k == pytest.approx(np.full(len(CLASSES), 6.0), abs=0.1)


def test_without_readings_the_belief_is_the_prior():
    """Nothing read: means and covariance as the engine gives them."""
    asked = prior()
    found = believe(asked, ())
    assert found.mean_k == pytest.approx(asked.mean_k)
    assert found.covariances_k2[0] == pytest.approx(asked.covariance_k2)


def test_pieces_of_one_load_say_less_than_of_three():
    """Three readings of one load share what is wrong with it; of three loads they do not."""
    together = [Seen(number=0, load=1, margin_k=5.0) for _ in range(3)]
    apart = [replace(one, load=i) for i, one in enumerate(together)]
    asked = prior(tau_k=3.0)
    spread = [float(np.mean(believe(asked, s).covariances_k2[:, 0, 0])) for s in (together, apart)]
    assert spread[0] > 1.3 * spread[1]


def test_the_gain_of_a_reading_is_what_it_takes_off():
    """For one pair of spreads the variance falls by the gain: believed with the reading against without."""
    asked = prior()
    before = believe(asked, SEEN)
    one = int(np.argmax(before.weights))
    single = replace(
        before,
        weights=np.ones(1),
        means_k=before.means_k[[one]],
        covariances_k2=before.covariances_k2[[one]],
        sigma_k=before.sigma_k[[one]],
        tau_k=before.tau_k[[one]],
    )
    gains = gain_k2(single)
    spread, noise = single.covariances_k2[0], single.sigma_k[0] ** 2 + single.tau_k[0] ** 2
    for number in range(len(CLASSES)):
        design = np.zeros((1, len(CLASSES)))
        design[0, number] = 1.0
        left = np.linalg.inv(np.linalg.inv(spread) + design.T @ design / noise)
        assert gains[number] == pytest.approx(single.binding @ (np.diag(spread) - np.diag(left)), rel=1e-6)
    assert gain_k2(single, [0])[0] < gains[0]


def test_the_plan_asks_for_the_cut_that_binds():
    """Breasts 9 K below the wings are read first and more often, in more than one place."""
    picks = next_load(standing(prior(), ()))
    assert CLASSES[picks[0]].cut == "breast"
    assert [CLASSES[i].cut for i in picks].count("breast") == 2
    assert len({CLASSES[i].load for i in picks}) == 1
    assert len({CLASSES[i].place for i in picks}) == 2


def read_all(asked, margin_k, most=60):
    """Follow the plan with one margin for every reading."""
    seen: list[Seen] = []
    now = standing(asked, seen)
    while now.decision is Decision.OPEN:
        load = 1 + max((s.load for s in seen), default=0)
        picks = next_load(now)
        assert 1 <= len(picks) <= plan_probing.MOST_IN_LOAD
        seen += [Seen(number=i, load=load, margin_k=margin_k) for i in picks]
        assert len(seen) <= most
        now = standing(asked, seen)
    return now, seen


def test_decisions():
    """Well over meets after every cut was read twice; one below fails; near nothing is not shown."""
    met, seen = read_all(prior(), 9.0)
    assert met.decision is Decision.MEETS
    assert len(seen) >= plan_probing.LEAST_READINGS
    cuts = [CLASSES[s.number].cut for s in seen]
    assert min(cuts.count(cut) for cut in ("breast", "wing")) >= plan_probing.LEAST_OF_CUT
    failed, seen = read_all(prior(), -0.1)
    assert (failed.decision, len(seen)) == (Decision.FAILS, 3)
    near, _ = read_all(prior(), 0.2)
    assert near.decision is Decision.NOT_SHOWN


def test_fewer_readings_where_more_is_to_spare():
    """12 K to spare takes fewer readings than 5 K."""
    counts = [len(read_all(prior(k, k), k)[1]) for k in (12.0, 5.0)]
    assert counts[0] < counts[1]


def test_the_expected_path_ends_in_a_decision():
    """Readings as expected, along the path: decided at its end and not before."""
    asked = prior()
    path = expected_path(asked, ())
    seen: list[Seen] = []
    for load, picks in enumerate(path, start=1):
        now = standing(asked, seen)
        assert now.decision is Decision.OPEN
        expected = now.belief.mean_k
        seen += [Seen(number=i, load=load, margin_k=max(float(expected[i]), 0.0)) for i in picks]
    assert standing(asked, seen).decision is Decision.MEETS


@pytest.mark.parametrize(("coverage", "count"), [(0.90, 29), (0.95, 59), (0.99, 299)])
def test_readings_without_a_failure(coverage, count):
    """One-sided, 95 % confidence: 29, 59 and 299, as tabulated for non-parametric tolerance limits (Wilks
    1942, Annals of Mathematical Statistics 13; from memory).
    """
    assert count_without_failure(coverage) == count
