"""The order of a commissioning, what is measured against what was reckoned, and figures at their ends."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.care.acceptance import VENT_APART_S, control, timed
from frywright.care.commissioning import amps, power_share
from frywright.care.counters import _folded
from frywright.care.energy import energy_day
from frywright.care.gates import Signed, Step, check, missing, steps_for
from frywright.care.wear import _reaches
from frywright.model.errors import InputError, several
from frywright.model.findings import Outcome
from frywright.model.fryer import FryerKind

STEP = Step(key="boil", title="Boil-out", who="crew", why="oil", needs=("level",))
ANA = Signed(who="Ana", role="crew")


def refused(step: Step, signed: Signed, done=()) -> InputError:
    with pytest.raises(InputError) as caught:
        check(step, done, signed)
    return caught.value


def test_a_step_is_signed_after_what_it_needs():
    """Before it only with a name and a reason that are long enough to be ones; then it says what is open."""
    assert check(STEP, {"level"}, ANA) == ()
    assert missing(STEP, {"boil"}) == ("level",)
    early = refused(STEP, ANA)
    assert (early.field, early.value, early.where) == ("step", "too early", "Boil-out")
    assert early.values == {"needs": several(["level"])}
    passing = replace(ANA, pass_name="Bob", pass_reason="no time now")
    assert check(STEP, (), passing) == ("level",)
    assert refused(STEP, replace(passing, pass_name="Bo ")).field == "step"
    assert refused(STEP, replace(passing, pass_reason="no time n")).field == "step"
    assert check(STEP, (), replace(passing, pass_reason="no time no")) == ("level",)


def test_a_hard_step_has_no_way_past():
    passing = replace(ANA, pass_name="Bob Vale", pass_reason="there is no time today")
    assert "no way past" in str(refused(replace(STEP, hard=True), passing))
    assert check(replace(STEP, hard=True), ("level",), ANA) == ()


def test_who_may_sign_a_step():
    """The role it asks for or more, a name, a second person who is another, the number of a licence."""
    ready = ("level",)
    assert refused(replace(STEP, who="lead"), ANA, ready).field == "role"
    assert refused(STEP, replace(ANA, who="A "), ready).field == "who"
    assert check(STEP, ready, replace(ANA, who="Al")) == ()
    two = replace(STEP, people_count=2)
    for second in ("", "B", " ANA "):
        assert refused(two, replace(ANA, second=second), ready).field == "second"
    assert check(two, ready, replace(ANA, second="Bo")) == ()
    licensed = replace(STEP, who="licensed")
    fitter = replace(ANA, role="licensed")
    assert refused(licensed, replace(fitter, note="123"), ready).field == "note"
    assert check(licensed, ready, replace(fitter, note="1234")) == ()


def test_an_open_fryer_has_no_steps_nor_figures_of_pressure(kitchen):
    """What is left needs only what is left."""
    fryer = replace(kitchen.fryer("alder"), kind=FryerKind.OPEN)
    shut, opened = steps_for(replace(fryer, kind=FryerKind.PRESSURE)), steps_for(fryer)
    figures = {f for s in shut for f in s.figures}
    assert {"pressure_build", "vent_down"} <= figures
    assert not {"pressure_build", "vent_down"} & {f for s in opened for f in s.figures}
    keys = {s.key for s in opened}
    assert keys < {s.key for s in shut}
    assert all(set(s.needs) <= keys for s in opened)


TIMES = [
    (None, 60.0, Outcome.UNKNOWN, "missing", ""),
    (60.0, None, Outcome.UNKNOWN, "no_reckoning", "1:00"),
    (19.9, 19.9, Outcome.UNKNOWN, "no_reckoning", "1:00"),
    (20.0, 10.0, Outcome.MEETS, "fits", "1:00"),
    (10.0, 20.0, Outcome.MEETS, "fits", "1:00"),
    (130.0, 100.0, Outcome.MEETS, "fits", "1:00"),
    (131.0, 100.0, Outcome.FAILS, "slow", "1:00"),
    (50.0, 20.0, Outcome.MEETS, "near", "1:00"),
    (50.1, 20.0, Outcome.FAILS, "slow", "1:00"),
    (1.0, 22.0, Outcome.MEETS, "near", "1:00"),
    (40.0, 100.0, Outcome.UNKNOWN, "fast", "1:00"),
]


@pytest.mark.parametrize(("measured", "expected", "outcome", "kind", "shown"), TIMES)
def test_a_timed_figure_against_its_reckoning(measured, expected, outcome, kind, shown):
    """A third slower fails where it is also half a minute slower; below 20 s a watch tells nothing, and no
    ratio is said of what is near.
    """
    test = timed("recovery", measured, expected, ("1:00", "0:50"))
    assert (test.name, test.outcome, test.note.kind) == ("recovery", outcome, kind)
    assert (test.measured, test.reckoned) == (shown, "0:50")
    if kind in ("fits", "slow"):
        assert test.note.values == {"ratio": round(measured / max(expected, 20.0), 2)}
        assert ("technician" in test.note.text) is (kind == "slow")


@pytest.mark.parametrize(("measured", "outcome"), [(32.5, Outcome.MEETS), (35.5, Outcome.FAILS)])
def test_a_vent_that_is_half_as_slow_again_fails(measured, outcome):
    """Of a vent ten seconds are far: its passage may clog. For a recovery they are nothing."""
    assert timed("vent", measured, 25.0, ("", ""), VENT_APART_S).outcome is outcome
    assert timed("recovery", measured, 25.0, ("", "")).outcome is Outcome.MEETS


CYCLES = [
    (165.0, 167.0, 4.0, Outcome.MEETS, Outcome.MEETS),
    (165.0, 163.0, 5.7, Outcome.MEETS, Outcome.MEETS),
    (165.0, 167.1, 5.71, Outcome.FAILS, Outcome.FAILS),
    (165.0, 162.9, 0.0, Outcome.FAILS, Outcome.MEETS),
]


@pytest.mark.parametrize(("set_c", "mean_c", "swing_k", "at", "within"), CYCLES)
def test_cycles_against_the_set_point_and_the_swing(kitchen, set_c, mean_c, swing_k, at, within):
    """2 K of the set point, 1.3 times the swing and half a kelvin (a fryer of 4 K)."""
    fryer = replace(kitchen.fryer("alder"), swing_k=4.0)
    mean, swing = control(set_c, mean_c, swing_k, fryer, ("a", "b", "c"))
    assert [(t.name, t.outcome, t.measured, t.reckoned) for t in (mean, swing)] == [
        ("mean", at, "a", "b"),
        ("swing", within, "c", ""),
    ]
    assert ("offset" in mean.note.text) is (at is Outcome.FAILS)
    assert ("anew" in swing.note.text) is (within is Outcome.FAILS)
    assert swing.note.values == {"swing_k": 4.0}


@pytest.mark.parametrize(("watts", "volts", "phases"), [(0.0, 230.0, 1), (9000.0, 0.0, 1), (9e3, 230.0, 2)])
def test_a_current_needs_watts_volts_and_one_or_three_phases(watts, volts, phases):
    with pytest.raises(InputError) as caught:
        amps(watts, volts, phases)
    assert caught.value.field == "supply"


def test_a_share_of_power_needs_both_voltages():
    for plate, site in ((0.0, 230.0), (230.0, 0.0)):
        with pytest.raises(InputError) as caught:
            power_share(plate, site)
        assert caught.value.field == "volts"
    assert power_share(240.0, 208.0) == pytest.approx(0.7511, abs=1e-4)


DAY = {
    "food_kg": 10.0,
    "food_j_kg": 1e6,
    "on_s": 36000.0,
    "capacity_kg_s": 0.01,
    "idle_w": 1000.0,
    "efficiency_frac": 0.5,
    "preheat_j": 5e6,
}


@pytest.mark.parametrize(
    "wrong",
    [
        {"on_s": 0.0},
        {"capacity_kg_s": 0.0},
        {"efficiency_frac": 0.049},
        {"efficiency_frac": 1.001},
        {"food_kg": -1.0},
        {"idle_w": -1.0},
        {"food_j_kg": -1.0},
        {"preheat_j": -1.0},
        {"food_kg": 360.1},
    ],
    ids=str,
)
def test_a_day_of_energy_that_cannot_be_is_refused(wrong):
    """The food that fills the hours is the most there is."""
    with pytest.raises(InputError) as caught:
        energy_day(**{**DAY, **wrong})
    assert caught.value.field == ("food" if "food_kg" in wrong and wrong["food_kg"] > 0 else "energy")
    full = energy_day(**{**DAY, "food_kg": 360.0, "efficiency_frac": 1.0})
    assert (full.idle_j, full.cook_j, full.preheat_j) == (pytest.approx(0.0), 360e6, 5e6)


def test_a_long_line_of_a_calendar_is_folded_between_letters():
    """RFC 5545, 3.1: at most 75 octets a line, the next begins with a blank; a letter is not cut in two."""
    text = "SUMMARY:" + "ä" * 70
    lines = _folded(text)
    assert all(len(line.encode()) <= 75 for line in lines)
    assert lines[0] + "".join(line[1:] for line in lines[1:]) == text
    assert all(line.startswith(" ") for line in lines[1:])
    assert len(lines) == 3
    assert _folded("x" * 74) == ["x" * 74]
    assert _folded("x" * 75) == ["x" * 74, " x"]


def test_the_day_on_which_a_figure_passes_its_limit():
    """One second a day from 100: 130 is 26 days from the fifth reading; a level line never passes it."""
    days = [0.0, 1.0, 2.0, 3.0, 4.0]
    assert _reaches(130.0, days, [100.0, 101.0, 102.0, 103.0, 104.0]) == pytest.approx(26.0)
    assert _reaches(100.0, days, [100.0, 101.0, 102.0, 103.0, 104.0]) == 0.0
    assert _reaches(130.0, days, [100.0] * 5) == float("inf")
    assert _reaches(130.0, days[:1], [100.0]) == float("inf")
