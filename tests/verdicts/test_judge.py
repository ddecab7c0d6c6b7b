"""Verdicts: three words, guard band, editions, and never *meets* from a scouting estimate."""

from __future__ import annotations

import datetime as dt

import numpy as np
import pytest

from frywright.model.errors import InputError
from frywright.model.findings import Outcome
from frywright.verdicts.evidence import Evidence, EvidenceKind
from frywright.verdicts.judge import CoreCurve, best_row, judge
from frywright.verdicts.limits import edition_on
from frywright.verdicts.place import place_named
from frywright.verdicts.pressure import judge_opening
from frywright.verdicts.tables import fsis_poultry, uk_equivalents

PROBE = Evidence(kind=EvidenceKind.PROBE, error_k=1.0)
US = place_named("us_food_code_2022")
LIMIT_C = (165.0 - 32.0) / 1.8


def curve(peak: float, lift_s: float = 600.0, hold_s: float = 120.0, **changes) -> CoreCurve:
    t = np.array([0.0, lift_s - hold_s, lift_s, lift_s + 60.0])
    return CoreCurve(
        piece="breast", time_s=t, core_c=np.array([4.0, peak, peak, peak - 3.0]), lift_s=lift_s, **changes
    )


def test_meets_and_fails_by_the_guard_band():
    """74.9 degC read with 1 K of possible error fails 73.9; 75.0 meets it."""
    limit = US.cook_limit()
    assert judge(curve(LIMIT_C + 1.01), limit, PROBE).outcome is Outcome.MEETS
    verdict = judge(curve(LIMIT_C + 0.99), limit, PROBE)
    assert verdict.outcome is Outcome.FAILS
    assert verdict.margin_k == pytest.approx(-0.01, abs=1e-6)


def test_fifteen_seconds_were_needed_until_2013():
    """A level touched for 5 s meets the 2017 edition and fails the 2013 one."""
    t = np.array([0.0, 595.0, 597.5, 600.0, 700.0])
    core = np.array([4.0, LIMIT_C + 1.0, LIMIT_C + 1.2, LIMIT_C + 1.0, 60.0])
    touched = CoreCurve(piece="wing", time_s=t, core_c=core, lift_s=600.0)
    assert judge(touched, place_named("us_food_code_2017").cook_limit(), PROBE).outcome is Outcome.MEETS
    late = judge(touched, place_named("us_food_code_2013").cook_limit(), PROBE)
    assert late.outcome is Outcome.FAILS
    assert "does not hold" in late.say()


def test_scouting_never_meets_and_says_what_is_missing():
    """An uncalibrated simulation yields unknown with its predicted margin, high or low."""
    scouting = Evidence(kind=EvidenceKind.SCOUTING, error_k=1.0)
    for peak in (60.0, 74.0, 95.0):
        verdict = judge(curve(peak), US.cook_limit(), scouting)
        assert verdict.outcome is Outcome.UNKNOWN
        assert verdict.missing
        assert verdict.margin_k == pytest.approx(peak - 1.0 - LIMIT_C, abs=1e-6)
        assert "Predicted, not proven" in verdict.say()


def test_an_unchecked_thermometer_is_no_evidence():
    """Readings of an unchecked probe give unknown."""
    verdict = judge(curve(90.0), US.cook_limit(), Evidence(kind=EvidenceKind.PROBE, checked=False))
    assert verdict.outcome is Outcome.UNKNOWN
    assert verdict.missing == ("thermometer check",)


def test_a_missing_rule_is_unknown_never_meets():
    """No rule for the food or the place: unknown, with the reason and no margin."""
    verdict = judge(curve(90.0), None, PROBE, "nobody wrote one")
    assert verdict.outcome is Outcome.UNKNOWN
    assert verdict.margin_k is None
    assert verdict.say() == "No rule here for this food: nobody wrote one."
    with pytest.raises(InputError, match="jurisdiction"):
        place_named("atlantis").cook_limit()


def test_uk_row_reached():
    """120 s at 71 degC minus 1 K of error just reaches the 70 degC row; 110 s does not."""
    limit = place_named("uk").cook_limit()
    assert judge(curve(71.01, hold_s=125.0), limit, PROBE).outcome is Outcome.MEETS
    assert judge(curve(71.01, hold_s=60.0), limit, PROBE).outcome is Outcome.FAILS


def test_best_row_reached_rescues_a_missed_one():
    """A curve that misses 160 F may still meet the 150 F row of the 12 % column (4.2 min)."""
    table = fsis_poultry("chicken", 12)
    t = np.array([0.0, 10.0, 270.0, 280.0])
    row = best_row(table, t, np.array([20.0, 66.0, 66.0, 20.0]))
    assert row is not None
    assert row[0] == pytest.approx((150 - 32) / 1.8)


def test_the_level_must_be_reached_by_the_lift():
    """Carry-over alone does not meet an instantaneous limit."""
    t = np.array([0.0, 600.0, 700.0])
    late = CoreCurve(piece="breast", time_s=t, core_c=np.array([4.0, 72.0, 80.0]), lift_s=600.0)
    assert judge(late, US.cook_limit(), Evidence(kind=EvidenceKind.PROBE)).outcome is Outcome.FAILS


def test_editions_by_date():
    """The edition in force on a day; before the first there is none, which means unknown."""
    assert edition_on("us_food_code", dt.date(2016, 12, 31)).hold_s == 15.0
    assert edition_on("us_food_code", dt.date(2017, 1, 1)).hold_s == 0.0
    assert edition_on("us_food_code", dt.date(1980, 1, 1)) is None


def test_hot_hold_limits():
    """135 F in the US, 140 F in New York City, 63 degC in the UK, 60 degC in Australia; else unknown."""
    assert US.hot_hold_c() == pytest.approx(57.2, abs=0.03)
    assert place_named("us_nyc").hot_hold_c() == pytest.approx(60.0, abs=0.01)
    assert place_named("uk").hot_hold_c() == 63.0
    assert place_named("australia").hot_hold_c() == 60.0
    assert place_named("spain").hot_hold_c() is None


def test_a_lid_is_never_called_openable():
    """Above zero gauge the lid rule fails; at zero it is still only unknown until seen at the fryer."""
    t = [0.0, 100.0]
    assert judge_opening(t, [80e3, 20e3], 100.0, 1000.0).outcome is Outcome.FAILS
    assert judge_opening(t, [80e3, 500.0], 100.0, 1000.0).outcome is Outcome.UNKNOWN


def test_log_reduction_by_d_and_z():
    """7 log at a steady 66 degC needs 7 D: D 4.2 s at 70 degC, z 5.34 K gives 165 s; 10 s less fails."""
    limit = edition_on("log7_salmonella", dt.date(2026, 1, 1))
    needed = 7.0 * 4.2 * 10 ** ((70.0 - 66.0) / 5.34)
    exact = Evidence(kind=EvidenceKind.PROBE)
    for seconds, outcome in ((needed + 1.0, Outcome.MEETS), (needed - 10.0, Outcome.FAILS)):
        steady = CoreCurve(piece="x", time_s=[0.0, seconds], core_c=[66.0, 66.0], lift_s=seconds)
        assert judge(steady, limit, exact).outcome is outcome
    assert needed == pytest.approx(165.0, abs=1.0)


def test_the_inspected_establishment_is_judged_by_the_table():
    """FSIS table by fat: 66.7 degC (152 F) for a minute and a half fails, for four minutes meets."""
    limit = place_named("us_fsis_inspected").cook_limit()
    for hold, outcome in ((60.0, Outcome.FAILS), (300.0, Outcome.MEETS)):
        verdict = judge(curve(66.7, hold_s=hold, fat_pct=3.0), limit, Evidence(kind=EvidenceKind.PROBE))
        assert verdict.outcome is outcome
        assert (verdict.margin_s > 0) == (outcome is Outcome.MEETS)


@pytest.mark.parametrize("over_k", [-3.0, -0.5, 0.5, 3.0])
def test_the_margin_of_a_log_reduction_is_the_shift_that_just_makes_it(over_k):
    """At a steady temperature 7 log take 7 D: a core held for the time that 64 degC needs has as many kelvin
    to spare as it is above 64 (D 4.2 s at 70 degC, z 5.34 K: Murphy 2004).
    """
    limit = edition_on("log7_salmonella", dt.date(2026, 1, 1))
    seconds = 7.0 * 4.2 * 10 ** ((70.0 - 64.0) / 5.34)
    core = 64.0 + over_k
    steady = CoreCurve(piece="x", time_s=[0.0, seconds], core_c=[core, core], lift_s=seconds)
    verdict = judge(steady, limit, Evidence(kind=EvidenceKind.PROBE))
    assert verdict.margin_k == pytest.approx(over_k, abs=1e-3)
    assert verdict.values["margin_k"] == pytest.approx(abs(over_k), abs=1e-3)
    reached = min(7.0 * 10 ** (over_k / 5.34), 12.0)  # more is shown as more than twelve
    assert verdict.values["reached"] == pytest.approx(reached, abs=0.06)


def _met(table: list[tuple[float, float]], time: np.ndarray, core: np.ndarray) -> bool:
    """Whether a curve holds a row for its time, looked at every hundredth of a second."""
    fine = np.arange(time[0], time[-1] + 0.005, 0.01)
    temp = np.interp(fine, time, core)
    for level, needed in table:
        there = np.flatnonzero(np.diff(np.concatenate([[0], (temp >= level).astype(int), [0]])))
        if len(there) and 0.01 * max(there[1::2] - there[::2] - 1) >= needed - 0.015:
            return True
    return False


CURVES = {
    "rises": ([0, 60, 300, 420], [4.0, 5.0, 60.0, 78.0]),
    "rises and falls": ([0, 100, 250, 330, 500], [4.0, 10.0, 71.0, 79.0, 66.0]),
    "boils": ([0, 100, 200, 300, 400, 500], [4.0, 40.0, 100.0, 100.0 + 5e-14, 100.0, 100.0 + 7e-14]),
    "stands low": ([0, 200, 400, 700], [4.0, 64.0, 64.0, 64.0]),
    "two summits": ([0, 100, 150, 160, 230, 300], [4.0, 74.0, 60.0, 61.0, 72.0, 50.0]),
    "held after a first summit": (
        [0, 50, 100, 110, 130, 140, 400],
        [4.0, 40.0, 85.0, 60.0, 60.0, 76.0, 76.0],
    ),
    "falls late": ([0, 10, 100, 300, 310], [4.0, 20.0, 80.0, 78.0, 60.0]),
    "stands on its way": ([0, 50, 100, 300, 400], [4.0, 30.0, 64.0, 64.0, 90.0]),
    "stands on its way, lower": ([0, 50, 100, 130, 160], [4.0, 30.0, 69.0, 69.0, 70.0]),
    "cold": ([0, 100, 200], [4.0, 4.2, 4.4]),
    "cools from the start": ([0, 50, 100], [80.0, 70.0, 60.0]),
}


@pytest.mark.parametrize("rule", ["us_food_code_2013", "us_fsis_inspected", "uk"])
@pytest.mark.parametrize("shape", CURVES)
def test_a_margin_is_the_shift_at_which_the_rule_is_just_met(rule, shape):
    """Lowered by the margin less a hair the curve still meets the rule, by a hair more it does not, whatever
    its shape: against a look at every hundredth of a second.
    """
    time, core = (np.array(part, dtype=float) for part in CURVES[shape])
    limit = place_named(rule).cook_limit()
    rows = {
        "us_food_code_2013": [(limit.level_c, limit.hold_s)],
        "us_fsis_inspected": list(zip(fsis_poultry().temp_c, fsis_poultry().time_s, strict=True)),
        "uk": list(zip(uk_equivalents().temp_c, uk_equivalents().time_s, strict=True)),
    }[rule]
    given = CoreCurve(piece="x", time_s=time, core_c=core, lift_s=float(time[-1]), carry_over_counts=True)
    found = judge(given, limit, Evidence(kind=EvidenceKind.PROBE, error_k=0.0))
    hair = 0.02 * max(1.0, float(np.max(np.abs(np.diff(core) / np.diff(time)))))
    if found.margin_k > -100.0:
        assert _met(rows, time, core - found.margin_k + hair)
    assert not _met(rows, time, core - found.margin_k - hair)
