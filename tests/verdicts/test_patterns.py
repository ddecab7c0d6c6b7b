"""Patterns in a log: the binomial tail against SciPy, honest logs mostly left alone, copied ones found, in
neutral words.
"""

from __future__ import annotations

import datetime as dt

import numpy as np
import pytest
from scipy.stats import binom

from frywright.verdicts.patterns import Told, binomial_tail, patterns

START = dt.datetime(2026, 11, 1, 10, 0, tzinfo=dt.UTC)


def log(values, late_s=20.0, who="Ana"):
    """Readings half an hour apart, recorded soon after."""
    return [
        Told(
            number=n + 1,
            happened_at=START + dt.timedelta(minutes=30 * n),
            recorded_at=START + dt.timedelta(minutes=30 * n, seconds=late_s),
            who=who,
            reading_n=float(v),
        )
        for n, v in enumerate(values)
    ]


@pytest.mark.parametrize(
    ("count", "least", "share"),
    [(20, 7, 0.1), (60, 12, 0.1), (400, 60, 0.1), (1000, 140, 0.1), (30, 0, 0.2), (5, 5, 1.0)],
)
def test_the_tail_is_scipys(count, least, share):
    """Exact sums for small counts, logarithms for large ones."""
    assert binomial_tail(count, least, share) == pytest.approx(binom.sf(least - 1, count, share), rel=1e-9)


def test_honest_logs_are_left_alone():
    """Two hundred drawn logs of sixty readings that spread as pieces do: at most one in fifty is remarked
    on.
    """
    rng = np.random.default_rng(1)
    told = sum(bool(patterns(log(np.round(rng.normal(176, 6, 60))))) for _ in range(200))
    assert told <= 4


def test_copied_and_rounded_logs_are_told_with_their_figures():
    """165 165 165, and readings that all end in five or nought."""
    same = patterns(log([165] * 15 + [171, 168, 174, 180, 169, 177]))
    assert same[0].kind == "repeats"
    assert same[0].values["times"] == 15
    rng = np.random.default_rng(2)
    fives = patterns(log(5 * np.round(rng.uniform(33, 38, 60))))
    assert any(n.kind == "digits" for n in fives)
    for note in (*same, *fives):
        assert not any(word in note.text.lower() for word in ("fake", "fraud", "lie", "cheat", "false"))


def test_blocks_late_and_early_entries():
    """Six entries within a minute that tell of a whole shift; late ones counted; a time to come named."""
    shift = [
        Told(
            number=n,
            happened_at=START + dt.timedelta(hours=n),
            recorded_at=START + dt.timedelta(hours=12, seconds=5 * n),
            who="Ana",
        )
        for n in range(6)
    ]
    kinds = {n.kind: n for n in patterns(shift)}
    assert kinds["block"].values["count"] == 6
    assert kinds["block"].values["who"] == "Ana"
    assert kinds["late"].values["count"] == 6
    early = patterns([Told(number=9, happened_at=START + dt.timedelta(hours=1), recorded_at=START)])
    assert [n.kind for n in early] == ["early"]
    two_people = [
        Told(
            number=n,
            happened_at=START + dt.timedelta(hours=n),
            recorded_at=START + dt.timedelta(hours=12),
            who=f"p{n % 3}",
        )
        for n in range(6)
    ]
    assert not any(n.kind == "block" for n in patterns(two_people))
