"""Sampling proof, thermometers and hold study against published figures and by hand."""

from __future__ import annotations

import datetime as dt

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from frywright.calibrate.hold import HoldAim, HoldReading, hold_life
from frywright.calibrate.sampling import (
    MOST_PIECES,
    SampleAim,
    SampleOutcome,
    count_needed,
    prove_sample,
    tolerance_factor,
    zero_failure_coverage,
)
from frywright.calibrate.thermometer import CheckOutcome, ProbeReading, ThermometerCheck, corrected, look_back
from frywright.model.errors import InputError
from frywright.model.kitchen import pressure_at_pa
from frywright.model.units import to_inside

F = lambda value: to_inside(value, "f")  # noqa: E731


@pytest.mark.parametrize(
    ("count", "coverage", "factor"),
    [
        (20, 0.95, 2.396),
        (10, 0.95, 2.911),
        (5, 0.95, 4.203),
        (15, 0.95, 2.566),
        (30, 0.95, 2.220),
        (60, 0.95, 2.022),
        (20, 0.99, 3.295),
        (30, 0.99, 3.064),
    ],
)
def test_tolerance_factors(count, coverage, factor):
    """One-sided factors at 95 % confidence as tabulated (Lieberman 1958, Industrial Quality Control 14; from
    memory).
    """
    assert tolerance_factor(count, coverage) == pytest.approx(factor, abs=6e-4)


def test_tolerance_factor_by_simulation():
    """With k the bound covers 95 % of a normal population in 95 % of samples (20,000 drawn)."""
    rng = np.random.default_rng(4)
    draws = rng.normal(size=(20_000, 12))
    bound = draws.mean(axis=1) - tolerance_factor(12) * draws.std(axis=1, ddof=1)
    assert np.mean(bound <= -1.6448536) == pytest.approx(0.95, abs=0.005)


def test_zero_failures():
    """30 without a failure show 90 %, 59 show 95 % (ln 0.05 / ln 0.95 = 58.4)."""
    assert zero_failure_coverage(30) == pytest.approx(0.905, abs=1e-3)
    assert zero_failure_coverage(59) >= 0.95 > zero_failure_coverage(58)


def sample(mean_f: float, sd_f: float, count: int) -> list[float]:
    """Readings with exactly this mean and spread."""
    z = np.random.default_rng(count).normal(size=count)
    z = (z - z.mean()) / z.std(ddof=1)
    return [F(mean_f + sd_f * float(v)) for v in z]


AIM = SampleAim(limit_c=F(165.0))


def test_a_proof_that_holds():
    """20 pieces, mean 178, s 4.5 degF: bound 167.2 degF, passes."""
    found = prove_sample(sample(178, 4.5, 20), AIM, thermometer_checked=True)
    assert found.outcome is SampleOutcome.PASSES
    assert found.bound_c == pytest.approx(F(167.2), abs=0.03)


def test_a_proof_that_does_not():
    """10 pieces, mean 176, s 4.5 degF: bound 162.9 degF although every piece read above 165; 19 would do."""
    readings = [max(v, F(165.2)) for v in sample(176, 4.5, 10)]
    found = prove_sample(readings, AIM, thermometer_checked=True)
    assert found.outcome is SampleOutcome.FAILS
    assert found.bound_c < F(165.0)
    assert found.needed_count == count_needed(found.mean_c, found.sd_k, F(165.0)) > 10
    assert count_needed(176, 4.5, 165) == 19


def test_any_reading_below_the_limit_fails():
    """One cold piece among sixty fails whatever the bound says."""
    found = prove_sample([*sample(185, 1.0, 60), F(164.5)], AIM, thermometer_checked=True)
    assert found.outcome is SampleOutcome.FAILS
    assert "below" in found.sentence.text


def test_no_check_no_evidence():
    """Without a thermometer check nothing is shown."""
    assert (
        prove_sample(sample(185, 1.0, 60), AIM, thermometer_checked=False).outcome
        is SampleOutcome.NO_EVIDENCE
    )


def test_impossible_readings_are_refused():
    """3500 degF in a piece of chicken is refused by name, as is a single reading."""
    with pytest.raises(InputError, match="core of a piece"):
        prove_sample([F(170), F(3500)], AIM, thermometer_checked=True)
    with pytest.raises(InputError, match="2 or more"):
        prove_sample([F(170)], AIM, thermometer_checked=True)


def test_equal_readings_are_remarked_in_neutral_words():
    """Ten times the same number is remarked, not accused."""
    found = prove_sample([F(168)] * 10, AIM, thermometer_checked=True)
    assert [n.kind for n in found.notes] == ["alike"]


@given(st.floats(80, 95), st.floats(0.3, 5.0))
@example(82.5, 5.0)
def test_the_needed_count_does_what_it_says(mean, sd):
    """At the count needed the bound reaches the limit; one fewer does not. None where the most that may be
    read do not reach it either.
    """
    needed = count_needed(mean, sd, 74.0)
    if needed is None:
        assert mean - tolerance_factor(MOST_PIECES) * sd < 74.0
        return
    assert mean - tolerance_factor(needed) * sd >= 74.0
    assert needed == 2 or mean - tolerance_factor(needed - 1) * sd < 74.0


AT = dt.datetime(2026, 3, 2, 7, 40, tzinfo=dt.UTC)


def check(ice_f=None, boil_f=None, altitude_m=0.0, days=0):
    return ThermometerCheck(
        thermometer="P1",
        at=AT + dt.timedelta(days=days),
        ice_c=None if ice_f is None else F(ice_f),
        boil_c=None if boil_f is None else F(boil_f),
        atmosphere_pa=pressure_at_pa(altitude_m),
    )


@pytest.mark.parametrize(("feet", "boils_f"), [(0, 212.0), (2000, 208.4), (5000, 203.0), (7500, 198.4)])
def test_water_boils_lower_higher_up(feet, boils_f):
    """212, 208, 203 and 198 degF at 0, 2000, 5000 and 7500 ft (US extension altitude tables, from memory)."""
    assert check(32, altitude_m=feet * 0.3048).boiling_point_c == pytest.approx(F(boils_f), abs=0.35)


def test_check_limits():
    """Ice within 2 degF is good, beyond it failed; boiling is judged at the place's own boiling point."""
    assert check(33.9).outcome is CheckOutcome.GOOD
    assert check(34.1).outcome is CheckOutcome.FAILED
    assert check(32, 203.0, altitude_m=1524).outcome is CheckOutcome.GOOD
    assert check(32, 212.0, altitude_m=1524).outcome is CheckOutcome.FAILED
    with pytest.raises(InputError, match="unnamed probe"):
        ThermometerCheck(thermometer=" ", at=AT, ice_c=0.0, boil_c=None)
    with pytest.raises(InputError, match="ice"):
        check(75.0)
    assert check(32).due_at == AT + dt.timedelta(days=7)


def test_correction_is_interpolated_between_points():
    """1 K low in ice and 1 K high in boiling water: right in the middle, never extrapolated."""
    points = ((-1.0, 1.0), (101.0, -1.0))
    assert corrected([-1.0, 50.0, 101.0, 160.0], points) == pytest.approx([0.0, 50.0, 100.0, 159.0])


def test_look_back_after_a_probe_found_six_degrees_high():
    """Read 6 degF high: logged 168 becomes 162, in doubt; logged 172 becomes 166, clear; earlier than the
    last good check or of another probe: not touched."""
    good, bad = check(32, days=-3), check(38.0)
    read = [
        ProbeReading(
            number=n,
            at=AT + dt.timedelta(days=d),
            thermometer=t,
            core_c=F(f),
            limit_c=F(165),
            load=f"load {n}",
        )
        for n, d, t, f in ((1, -4, "P1", 160), (2, -2, "P1", 168), (3, -1, "P1", 172), (4, -1, "P2", 150))
    ]
    found = look_back(read, [good], bad)
    assert bad.outcome is CheckOutcome.FAILED
    assert [(d.reading.number, d.in_doubt) for d in found] == [(2, True), (3, False)]
    assert found[0].corrected_c == pytest.approx(F(162))
    assert len(look_back(read, [], bad)) == 3


def hold(rows):
    return [
        HoldReading(repeat=r, after_s=60.0 * m, core_c=c, scores={"crust": s, "juice": 8})
        for r, m, c, s in rows
    ]


def test_hold_life_by_quality():
    """Life is the last time, as at every time before, at which nine in ten repeats pass every score."""
    rows = [(f"r{i}", m, 68.0, 8 if m < 60 or i else 6) for m in (15, 30, 45, 60, 75) for i in range(10)]
    rows = [(r, m, c, 6 if m == 75 and r in ("r1", "r0") else s) for r, m, c, s in rows]
    found = hold_life(hold(rows), HoldAim(hot_c=57.2, least_scores={"crust": 7}))
    assert found.life_s == 60 * 60.0
    assert found.ended_by == "quality"


def test_the_safety_limit_wins():
    """One repeat below the hot-holding limit ends the life whatever the scores."""
    rows = [(f"r{i}", m, 56.0 if (m, i) == (45, 3) else 68.0, 9) for m in (15, 30, 45, 60) for i in range(10)]
    found = hold_life(hold(rows), HoldAim(hot_c=57.2, least_scores={"crust": 7}))
    assert found.life_s == 30 * 60.0
    assert found.ended_by == "safety"


def test_what_fails_at_the_first_look_has_no_hold_life():
    """Cold or poor at the first time: the life is 0, in figure and words, whatever comes later."""
    for core, score, ended in ((50.0, 9, "safety"), (68.0, 3, "quality")):
        rows = [("a", 15, core, score), ("a", 30, 68.0, 9)]
        found = hold_life(hold(rows), HoldAim(hot_c=57.2, least_scores={"crust": 7}))
        assert (found.life_s, found.note.values["life_s"], found.ended_by) == (0.0, 0.0, ended)


def test_hold_study_input_is_checked():
    """No readings or a missing score are refused by name."""
    with pytest.raises(InputError):
        hold_life([], HoldAim(hot_c=57.2, least_scores={}))
    with pytest.raises(InputError, match="given in every reading"):
        hold_life(hold([("a", 15, 60.0, 8)]), HoldAim(hot_c=57.2, least_scores={"smell": 5}))
