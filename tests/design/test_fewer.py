"""A look from fewer cooks: what lies near the limit is solved, what a fit says is far above lies there."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.design.fewer import FIRST, look, margins_from_fewer
from frywright.design.proof import NEAR_K, all_loads, prove
from frywright.model.findings import Outcome
from frywright.physics.plan import make_plan
from frywright.rooms.fleet import fleet
from frywright.trial import proof as trial_proof
from frywright.verdicts.place import place_named
from tests.rooms.test_fleet import site_text

COUNT, CUTS = 1500, 2
LIMIT = place_named("us_food_code_2022").cook_limit()


@pytest.fixture
def loads():
    """Conditions and weights of loads, and margins that are a quadratic of them."""
    rng = np.random.default_rng(4)
    x, weights = rng.uniform(-1.0, 3.0, (COUNT, 4)), rng.normal(0.0, 0.1, (COUNT, CUTS))
    margins = 6.0 + (x @ [2.0, -1.0, 0.5, 1.5])[:, None] - 30.0 * weights + (x[:, 1] * x[:, 2])[:, None]
    return x, weights, margins


def asked_of(margins):
    """Something to ask, and the numbers it was asked."""
    asked = []

    def ask(part):
        asked.extend(part.tolist())
        return margins[part]

    return ask, asked


def test_loads_near_the_limit_are_solved_and_no_others(loads):
    """A quadratic is fitted to rounding: solved are the first, and every load within a kelvin or below."""
    x, weights, margins = loads
    ask, asked = asked_of(margins)
    found, cooked = margins_from_fewer(x, weights, FIRST, ask)
    near = (margins < NEAR_K).any(axis=1)
    assert 20 < near[FIRST:].sum() < 400
    assert np.array_equal(cooked, near | (np.arange(COUNT) < FIRST))
    assert sorted(asked) == np.flatnonzero(cooked).tolist()
    assert found == pytest.approx(margins, abs=1e-9)


def test_a_fit_that_is_off_is_given_up(loads):
    """Margins that drop by 9 K near the limit, unseen by the first loads: every load is solved."""
    x, weights, margins = loads
    kinked = margins - 9.0 * ((margins < 1.0) & (np.arange(COUNT) >= FIRST)[:, None])
    ask, asked = asked_of(kinked)
    found, cooked = margins_from_fewer(x, weights, FIRST, ask)
    assert cooked.all()
    assert np.array_equal(found, kinked)
    assert sorted(asked) == list(range(COUNT))


def test_noise_widens_what_is_solved(loads):
    """What the fit cannot say is taken off three times at its worst: half a kelvin of noise hides no load."""
    x, weights, margins = loads
    noisy = margins + np.random.default_rng(5).normal(0.0, 0.5, margins.shape)
    found, cooked = margins_from_fewer(x, weights, FIRST, asked_of(noisy)[0])
    assert 0 < (~cooked).sum() < COUNT - FIRST
    assert noisy[~cooked].min() > NEAR_K
    assert np.array_equal(found[cooked], noisy[cooked])


def test_few_loads_are_all_solved_and_a_column_that_never_changes_is_left_out(loads):
    """Twice as many loads as the first ones gain nothing; one weight for all pieces is no condition."""
    x, weights, margins = loads
    assert margins_from_fewer(x[:384], weights[:384], FIRST, asked_of(margins)[0])[1].all()
    same = np.zeros_like(weights)
    flat = margins + 30.0 * weights
    assert margins_from_fewer(x, same, FIRST, asked_of(flat)[0])[0] == pytest.approx(flat, abs=1e-9)


@pytest.mark.parametrize(("name", "shorter_s"), [("tenders cedar", 0.0), ("tenders cedar", 30.0)])
def test_a_look_counts_as_the_proof(kitchen, name, shorter_s):
    """Failing loads, the worst margin and what was solved are the proof's; of pressure it says nothing."""
    program = kitchen.program(name).timed()
    last = program.stages[-1]
    stages = (*program.stages[:-1], replace(last, duration_s=last.duration_s - shorter_s))
    plan = make_plan(kitchen, replace(program, stages=stages))
    few = look(plan, LIMIT, 1.1, all_loads(plan), 1024, 3)
    whole = prove(plan, LIMIT, 1.1, samples=1024, seed=3)
    assert (few.failed_count > 0) == (shorter_s > 0.0)
    assert (few.failed_count, few.lowest_k) == (whole.failed_count, whole.lowest_k)
    assert few.fitted_count == np.sum(few.margins_k != whole.margins_k) > 200
    assert whole.margins_k[few.margins_k != whole.margins_k].min() > NEAR_K
    assert (len(few.full_pressure), few.smallest_full_pressure_frac, whole.fitted_count) == (0, None, 0)


def test_a_look_is_no_evidence(kitchen, monkeypatch):
    """Where nothing is missing the proof says meets, the look unknown; loads it found failing do fail."""
    monkeypatch.setattr(trial_proof, "_outside", lambda *_: ())
    plan = make_plan(kitchen, kitchen.program("wedges cedar"))
    few = look(plan, LIMIT, 1.1, all_loads(plan), 1024)
    whole = prove(plan, LIMIT, 1.1, samples=1024)
    assert few.holds and few.fitted_count
    assert trial_proof.answer(kitchen, plan, whole).outcome is Outcome.MEETS
    assert trial_proof.answer(kitchen, plan, few).outcome is Outcome.UNKNOWN
    short = replace(
        few, margins_k=few.margins_k - 40.0, cuts=tuple(replace(c, worst_margin_k=-1.0) for c in few.cuts)
    )
    assert trial_proof.answer(kitchen, plan, short).outcome is Outcome.FAILS


def test_a_sweep_from_fewer_cooks_says_so(tmp_path):
    """The same counts, with how many of them a fit made; rows of the one are none of the other."""
    sites = [fleet.Site(name="low", text=site_text(0)), fleet.Site(name="high", text=site_text(9000))]
    path = tmp_path / "sweep.jsonl"
    few = fleet.sweep(sites, samples=640, few=True, keep=path)
    whole = fleet.sweep(sites, samples=640, keep=path)
    assert all(row.fitted_count > 0 for row in few)
    assert [replace(row, fitted_count=0) for row in few] == whole
    assert fleet.sweep(sites, samples=640, few=True, keep=path) == few
