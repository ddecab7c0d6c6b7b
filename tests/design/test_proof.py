"""Worst-case proofs: reproducible, bounded, monotone, and the fast margin equals the verdict's."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import binom, norm, rankdata

from frywright.design.loads import Loads
from frywright.design.proof import (
    FACTORS,
    HEAVY_QUANTILE_Z,
    Spread,
    all_loads,
    close_late,
    corner_points,
    draw,
    load_fractions,
    prove,
    weights_of,
)
from frywright.design.ranks import ranks
from frywright.model.errors import InputError
from frywright.model.program import LidState, Stage
from frywright.physics.plan import make_plan
from frywright.trial.ask import CookRequest, ask, edit_program
from frywright.trial.proof import answer, proof_view, prove_program
from frywright.verdicts.evidence import Evidence, EvidenceKind
from frywright.verdicts.judge import CoreCurve, judge
from frywright.verdicts.margin import held_level_c, margin_k
from frywright.verdicts.place import place_named
from frywright.voice.tongue import translator

LIMIT = place_named("us_food_code_2022").cook_limit()


@pytest.fixture(scope="module")
def plan(kitchen):
    return make_plan(kitchen, kitchen.program("bone-in alder"))


@pytest.fixture(scope="module")
def proof(plan):
    return prove(plan, LIMIT, 1.1, samples=256)


@settings(max_examples=60, deadline=None)
@given(
    st.floats(65.0, 95.0),
    st.floats(100.0, 900.0),
    st.floats(20.0, 400.0),
    st.sampled_from(["us_food_code_2013", "us_food_code_2022", "uk", "us_fsis_inspected"]),
)
def test_the_fast_margin_says_what_the_verdict_says(peak, rise_s, hold_s, place):
    """On one-summit curves the fast margin equals the verdict's to 0.01 K."""
    t = np.array([0.0, rise_s, rise_s + hold_s, rise_s + hold_s + 300.0])
    core = np.array([4.0, peak - 2.0, peak, 40.0])
    limit = place_named(place).cook_limit()
    lift = rise_s + hold_s
    told = judge(
        CoreCurve(piece="x", time_s=t, core_c=core, lift_s=lift, fat_pct=9.0),
        limit,
        Evidence(kind=EvidenceKind.PROBE, error_k=0.7),
    )
    assert margin_k(t, core, lift, limit, 0.7, 9.0) == pytest.approx(told.margin_k, abs=0.01)


def test_held_level():
    """A triangle of slope 1 K/s held for 10 s loses 5 K."""
    t, core = np.array([0.0, 50.0, 100.0]), np.array([20.0, 70.0, 20.0])
    assert held_level_c(t, core, 10.0) == pytest.approx(65.0, abs=1e-6)
    assert held_level_c(t, core, 0.0) == 70.0


def test_same_seed_same_answer(plan, proof):
    """Twice the same proof, to the last bit; another seed differs."""
    again = prove(plan, LIMIT, 1.1, samples=256)
    assert np.array_equal(again.margins_k, proof.margins_k)
    assert not np.array_equal(prove(plan, LIMIT, 1.1, samples=256, seed=2).margins_k, proof.margins_k)


def test_points_fill_their_ranges():
    """Points stay inside and fill every factor evenly; corners hold both ends of six factors."""
    spread = Spread()
    points = draw(spread, 32768, 3)
    for i, name in enumerate(FACTORS):
        low, high = getattr(spread, name)
        assert points[:, i].min() >= low
        assert points[:, i].max() <= high
        if high > low:  # of so many random points a spread is known to 0.25 %
            assert np.std(points[:, i]) == pytest.approx((high - low) / np.sqrt(12), rel=0.01)
    assert len(corner_points(spread)) == 64
    with pytest.raises(InputError):
        draw(spread, 0, 1)


def test_loads_are_drawn_without_regard_to_each_other(plan):
    """Clopper and Pearson's bound asks for it: means of 64 loads scatter as those of any random loads (evenly
    spread points scatter a tenth as much), and no cut's weight follows a condition or another cut's.
    """
    spread = Spread()
    means = np.array([draw(spread, 64, seed).mean(axis=0) for seed in range(400)])
    for i, name in enumerate(FACTORS):
        low, high = getattr(spread, name)
        if high > low:  # the variance of 400 means is known to 7 %
            assert np.var(means[:, i]) * 64 * 12 / (high - low) ** 2 == pytest.approx(1.0, abs=0.3)
    rows = draw(spread, 4096, 5)
    own = np.column_stack([np.log(weights_of(plan, rows, 5)), rows[:, 1:9]])
    apart = np.corrcoef(own.T) - np.eye(own.shape[1])
    assert np.abs(apart).max() < 5.0 / np.sqrt(4096)  # five standard deviations
    rows = np.vstack([corner_points(spread), rows])  # so that weights are drawn between the ends
    heavy = next(kind for kind in plan.kinds if kind.heavy and kind.cut is not plan.kinds[0].cut)
    at = [kind for kind in plan.kinds if kind.heavy].index(heavy)
    low, high = spread.weight_quantile_frac
    part = np.log(weights_of(plan, rows, 5)[:, at]) * HEAVY_QUANTILE_Z / np.log(heavy.cut.heavy_ratio_n)
    drawn = (norm.cdf(part) - low) / (high - low)
    ends = np.array([getattr(spread, name) for name in FACTORS[:9]]).T
    used = (rows[64:, :9] - ends[0]) / (ends[1] - ends[0])
    assert not set(np.round(drawn, 12)) & set(np.round(used.ravel(), 12))  # no number twice


def test_ranks_are_those_of_scipy():
    """Equal values share the mean of their ranks, as ``scipy.stats.rankdata`` has it."""
    values = np.random.default_rng(2).integers(0, 30, 200).astype(float)
    assert ranks(values) == pytest.approx(rankdata(values))


def test_bounds_are_clopper_pearson(proof):
    """At the bound, as many successes or more have the stated 5 % chance (binomial)."""
    for cut, margins in zip(proof.cuts, proof.margins_k.T, strict=True):
        good = int(np.sum(margins >= 0))
        assert binom.sf(good - 1, len(margins), cut.bound_frac) == pytest.approx(0.05, abs=1e-6)
        assert cut.bound_frac < cut.meets_frac


def test_heavy_pieces_decide_and_the_worst_corner_is_heavy_and_cold(proof):
    """Weight moves the margin most, downwards; the lowest corner has the heavy end and the cold start."""
    assert proof.breaks_first == "weight_quantile_frac"
    assert dict(proof.sensitivity)["weight_quantile_frac"] < -0.4
    conditions, _ = min(proof.corners, key=lambda corner: corner[1])
    assert conditions["weight_quantile_frac"] == 0.98
    assert conditions["start_temp_k"] == -2.0


def test_a_shorter_program_meets_less(kitchen, plan, proof):
    """Two and a half minutes off the pressure stage: the share falls and pieces fail."""
    old = kitchen.program("bone-in alder")
    short = Stage(
        set_c=old.stages[1].set_c, lid=LidState.PRESSURE, duration_s=old.stages[1].duration_s - 150.0
    )
    less = prove(
        make_plan(kitchen, edit_program(old, [old.stages[0], short, old.stages[2]])), LIMIT, 1.1, samples=256
    )
    assert less.meets_frac < proof.meets_frac - 0.2
    assert min(c.worst_margin_k for c in less.cuts) < 0


def test_small_loads_that_never_build_pressure_are_found(kitchen):
    """With a leaky lid a quarter load stays below full pressure, and the threshold is told."""
    base = make_plan(kitchen, kitchen.program("bone-in alder"))
    leaky = replace(base, fryer=replace(base.fryer, leak_area_m2=5.5e-7))
    found = prove(leaky, LIMIT, 1.1, samples=256, spread=Spread())
    assert 0.0 < found.full_pressure.mean() < 1.0
    assert 0.4 < found.smallest_full_pressure_frac < 0.9


def test_weights_follow_the_heavy_ratio(plan):
    """The 95 % quantile of the weights is the cut's heavy ratio."""
    rows = draw(Spread(weight_quantile_frac=(0.0001, 0.9999)), 4096, 1)
    weights = weights_of(plan, rows, 1)
    assert np.quantile(weights[:, 0], 0.95) == pytest.approx(plan.kinds[0].cut.heavy_ratio_n, rel=0.01)
    assert np.median(weights[:, 1]) == pytest.approx(1.0, rel=0.02)


def test_a_late_lid_keeps_the_clock(kitchen):
    """Closing 30 s late takes 30 s of pressure away and changes no total."""
    program = kitchen.program("bone-in alder").timed()
    late = close_late(program, 30.0)
    assert sum(late.durations_s()) == sum(program.durations_s())
    closed = [s for s in late.stages if s.lid is LidState.PRESSURE]
    assert closed[0].duration_s == program.stages[1].duration_s - 30.0
    assert close_late(kitchen.program("bone-in cedar"), 30.0) == kitchen.program("bone-in cedar")


def test_progress_can_cancel(plan):
    """An exception from the progress function stops the proof."""

    def stop(_share: float) -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        prove(plan, LIMIT, 1.1, samples=500, progress=stop)


def test_impossible_confidence(plan):
    """A confidence of one is refused."""
    with pytest.raises(InputError, match="confidence"):
        prove(plan, LIMIT, 1.1, samples=16, confidence=1.0)


def test_weighed_pieces_win_over_the_ratio(kitchen):
    """A cut with weighed pieces draws its weights from them, whatever their unit in the file."""
    from frywright.catalog.kitchen import parse_kitchen
    from frywright.trial.kitchens import demo_text

    text = (
        demo_text()
        + """
[[cut]]
key = "own_tender"
title = "Own tender"
composition = "chicken_breast_meat"
reference_mass_oz = 1.6
half_thickness_mm = 8
shape_n = 0.7
sample_g = [38, 40, 44, 45, 47, 70]

[[cut_set]]
key = "own_tenders"
title = "Own tenders"
unit = "piece"
unit_mass_oz = 1.6

[[cut_set.part]]
cut = "own_tender"
count = 1
mass_frac = 1.0
""".replace("\n[[", "\n[[")
    )
    own = parse_kitchen(text.replace('cut_set = "tenders"', 'cut_set = "own_tenders"'))
    plan = make_plan(own, own.program("tenders cedar"))
    weights = weights_of(plan, draw(Spread(), 512, 1), 1)
    assert weights.max() <= 0.070 / 0.0453592 + 1e-3
    assert weights.max() > 1.4
    assert weights.min() >= 0.038 / 0.0453592 - 1e-3


def test_a_proof_runs_from_the_smallest_load_to_the_full(kitchen, plan, proof):
    """Alder takes 3 lb or more of 6.9 lb; without a smallest load it is one head; samples reach both ends."""
    assert load_fractions(plan)[0] == pytest.approx(3.0 / 6.9, rel=1e-6)
    assert load_fractions(plan)[-1] == 1.0
    loads = proof.conditions[:, FACTORS.index("load_frac")]
    assert loads.min() == pytest.approx(3.0 / 6.9, abs=0.01)
    assert loads.max() == pytest.approx(1.0, abs=0.01)
    any_load = replace(plan, fryer=replace(plan.fryer, min_load_kg=0.0))
    assert load_fractions(any_load)[0] == pytest.approx(1 / 3)
    one = make_plan(kitchen, replace(kitchen.program("bone-in alder"), load_heads=1.0))
    assert load_fractions(one) == (1.0,)


def test_back_to_back_loads_start_on_the_oil_that_the_load_before_left(kitchen):
    """A program that ends 60 degF below its first set point leaves cool oil to the next drop; a long drain
    gives it back.
    """
    old = kitchen.program("bone-in alder")
    stages = (
        replace(old.stages[0], set_c=182.0),
        replace(old.stages[1], set_c=150.0),
        replace(old.stages[2], set_c=149.0),
    )
    falling = replace(old, stages=stages, drain_s=0.0)
    low = all_loads(make_plan(kitchen, falling)).oil_start_k[0]
    assert -40.0 < low < -27.0
    slow = all_loads(make_plan(kitchen, replace(falling, drain_s=90.0))).oil_start_k[0]
    assert slow > low + 5.0
    assert all_loads(make_plan(kitchen, replace(falling, drain_s=900.0))).oil_start_k == Spread().oil_start_k


def test_corners_count_for_the_worst_margin(proof):
    """The lowest margin told is that of samples and corners together; the bound is that of loads."""
    assert proof.lowest_k == min(proof.margins_k.min(), min(k for _, k in proof.corners))
    assert proof.holds == (proof.lowest_k >= 0.0)
    good = proof.samples_count - proof.failed_count
    assert binom.sf(good - 1, proof.samples_count, proof.bound_frac) == pytest.approx(0.05, abs=1e-6)


def test_a_proof_says_none_failed_with_its_bound(kitchen):
    """In words, in both languages; with failures their number; never a share below the bound alone."""
    told = proof_view(prove_program(kitchen, kitchen.program("bone-in cedar"), samples=256))
    assert "None of 256 loads failed" in told.sentence
    assert "at least 98.8 % of loads pass, at 95 % confidence" in told.sentence
    old = kitchen.program("bone-in cedar")
    raw = edit_program(old, [replace(old.stages[0], duration_s=600.0)])
    answer = prove_program(kitchen, raw, samples=64)
    assert "64 of 64 loads failed" in proof_view(answer).sentence
    assert "64 de 64 cargas" in proof_view(answer, "metric", translator("es")).sentence
    assert not answer.proof.holds


def test_at_least_is_never_more_than_the_bound(kitchen):
    """None of 10,000 failed is 99.97 %, told as 99.9; of 2,048 one that failed leaves no cut at 100 %."""
    plan = make_plan(kitchen, kitchen.program("bone-in cedar"))
    found = prove_program(kitchen, plan.program, samples=16).proof
    told = proof_view(answer(kitchen, plan, replace(found, samples_count=10_000)))
    assert "at least 99.9 % of loads pass" in told.sentence
    cut = replace(found.cuts[0], meets_frac=2047 / 2048, bound_frac=0.99769)
    shown = proof_view(answer(kitchen, plan, replace(found, cuts=(cut,)))).cuts[0]
    assert (shown.meets, shown.bound) == ("99.9 %", "99.7 %")


def test_each_version_draws_loads_of_its_own(kitchen):
    """A version that was lengthened for the loads of a failed proof meets others; a seed asked for counts."""
    program = kitchen.program("wedges cedar")
    second = replace(program, version=2)

    def loads(of, **seed):
        return prove_program(kitchen, of, samples=4, **seed).proof.conditions

    assert np.array_equal(loads(program), loads(program, seed=1))
    assert np.array_equal(loads(second), loads(program, seed=2))
    assert not np.array_equal(loads(second), loads(program))


def test_a_food_without_a_rule_is_told_as_simulate_tells_it(kitchen):
    """Potatoes: no share of a rule that does not speak of them, and the words of the verdict."""
    program = kitchen.program("wedges cedar")
    bare = replace(kitchen, products=tuple(replace(p, house_core_c=None) for p in kitchen.products))
    told = proof_view(prove_program(bare, program, samples=32))
    verdict = ask(bare, CookRequest(program=program)).verdicts[0][1]
    assert told.sentence == verdict.say()
    assert told.cuts == ()
    assert "%" not in told.sentence


def test_sites_that_ask_the_same_numbers_are_marched_once(kitchen, plan, monkeypatch):
    """Another name asks nothing new; another altitude, heater, guard or limit does and has its own answer."""
    marched = []
    march = Loads.march
    monkeypatch.setattr(Loads, "march", lambda self, precision: marched.append(1) or march(self, precision))
    monkeypatch.setattr("frywright.design.proof._kept", {})
    first = prove(plan, LIMIT, 1.1, samples=64)
    assert len(marched) == 2  # at the scan's setting, and those near the limit again
    renamed = replace(plan, site=replace(plan.site, name="Elsewhere"))
    again = prove(renamed, LIMIT, 1.1, samples=64)
    assert len(marched) == 2
    assert np.array_equal(again.margins_k, first.margins_k)
    told = again.margins_k.copy()
    first.margins_k[:] = 0.0
    assert np.array_equal(prove(plan, LIMIT, 1.1, samples=64).margins_k, told)
    higher = replace(plan, site=replace(plan.site, altitude_m=plan.site.altitude_m + 500.0))
    weaker = replace(plan, fryer=replace(plan.fryer, heater_w=0.9 * plan.fryer.heater_w))
    other = place_named("uk").cook_limit()
    for asked in ((higher, LIMIT, 1.1), (weaker, LIMIT, 1.1), (plan, other, 1.1), (plan, LIMIT, 2.1)):
        before = len(marched)
        found = prove(*asked, samples=64, spread=all_loads(plan))
        assert len(marched) > before
        assert not np.array_equal(found.margins_k, again.margins_k)


def test_no_more_proofs_are_kept_than_are_worth_it(plan, monkeypatch):
    """Few, and small ones only."""
    kept = {}
    monkeypatch.setattr("frywright.design.proof._kept", kept)
    monkeypatch.setattr("frywright.design.proof.MOST_KEPT", 3)
    for seed in range(3):
        prove(plan, LIMIT, 1.1, samples=16, seed=seed)
        assert 1 <= len(kept) <= 3
    kept.clear()
    monkeypatch.setattr("frywright.design.proof.KEPT_LOADS", 50)
    prove(plan, LIMIT, 1.1, samples=64)  # with its corners above the most; those near the limit below
    assert len(kept) == 1
