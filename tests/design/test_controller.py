"""Rendering to keys and back, check figure by exhaustion, scouting sums."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from frywright.design.check_figure import check_figure, digits_of, holds
from frywright.design.controller import render, rounded
from frywright.design.held import held_by
from frywright.design.readback import tidy
from frywright.design.scouting import scouting_time
from frywright.model.errors import InputError
from frywright.model.fryer import ClockStyle, Controller, FryerKind, TempUnit, UnusedStage
from frywright.model.program import LidState, Program, Stage
from frywright.model.units import to_inside


@st.composite
def controllers(draw):
    return Controller(
        stage_count=draw(st.integers(1, 10)),
        temp_step_k=draw(st.sampled_from([0.5, 1.0, 5 / 9, 25 / 9])),
        time_step_s=draw(st.sampled_from([1.0, 5.0, 10.0, 15.0])),
        clock=draw(st.sampled_from(ClockStyle)),
        lid_control=draw(st.booleans()),
        slot_count=12,
        shows=draw(st.sampled_from(TempUnit)),
        unused=draw(st.sampled_from(UnusedStage)),
    )


@st.composite
def programs(draw):
    count = draw(st.integers(1, 6))
    first = draw(st.integers(0, count))
    last = draw(st.integers(first, count))
    stages = tuple(
        Stage(
            set_c=draw(st.floats(100.0, 200.0)),
            duration_s=draw(st.floats(20.0, 400.0)),
            lid=LidState.PRESSURE if first <= i < last else LidState.OPEN,
        )
        for i in range(count)
    )
    return Program(name="p", product="x", fryer="y", stages=stages, version=draw(st.integers(1, 99)))


@pytest.mark.slow
@settings(max_examples=500)
@given(programs(), controllers())
def test_render_and_held_give_the_same_program(program, controller):
    """Whatever the controller, what was keyed means the rounded program, and keys again as itself."""
    assume(len(program.stages) <= controller.stage_count)
    fitted = rounded(program, controller)
    keyed = render(program, controller, slot=3)
    held = held_by(keyed.values, controller, fitted)
    assert held.in_order
    (back,) = held.programs
    assert len(back.stages) == len(fitted.stages)
    for got, wanted in zip(back.stages, fitted.stages, strict=True):
        assert got.lid == wanted.lid
        assert got.set_c == pytest.approx(wanted.set_c, abs=0.06)
        assert got.duration_s == pytest.approx(wanted.duration_s, abs=1.0)
    assert render(back, controller, slot=3).values == render(fitted, controller, slot=3).values


def test_rounding_shown():
    """325 F is 163 on a Celsius controller; 12:34 is 12:30 on one with 15 s steps."""
    program = Program(
        name="p", product="x", fryer="y", stages=(Stage(set_c=to_inside(325, "f"), duration_s=754.0),)
    )
    celsius = Controller(shows=TempUnit.C, time_step_s=15.0, clock=ClockStyle.ELAPSED)
    texts = [v.text for v in render(program, celsius).values if v.what != "lid"]
    assert texts == ["163", "12:30"]


@pytest.mark.parametrize(("shows", "ends"), [(TempUnit.C, (152.0, 178.0)), (TempUnit.F, (303.0, 358.0))])
def test_what_lies_within_a_controller_stays_within_it(shows, ends):
    """Its ends need not lie on its steps (here of five degrees): the nearest step inside is keyed."""
    low, high = (to_inside(value, str(shows)) for value in ends)
    step_k = 5.0 if shows is TempUnit.C else 25 / 9
    held = Controller(shows=shows, temp_step_k=step_k, lowest_c=low, highest_c=high)
    for wanted, keyed in zip((low, high), (ends[0] // 5 * 5 + 5, ends[1] // 5 * 5), strict=True):
        stage = Stage(set_c=wanted, duration_s=600.0, lid=LidState.OPEN)
        program = Program(name="p", product="x", fryer="y", stages=(stage,))
        (found,) = rounded(program, held).stages
        assert found.set_c == pytest.approx(to_inside(keyed, str(shows)))
        for off_k in (-3.0, 3.0):
            outside = replace(program, stages=(replace(stage, set_c=wanted + off_k),))
            if not low <= wanted + off_k <= high:
                with pytest.raises(InputError):
                    rounded(outside, held)


def test_what_a_controller_cannot_hold_is_refused():
    """Too many stages, a condition, too long, too hot, no such slot."""
    stage = Stage(set_c=170.0, duration_s=100.0)
    two = Program(name="p", product="x", fryer="y", stages=(stage, stage))
    waits = Program(
        name="p", product="x", fryer="y", stages=(Stage(set_c=170.0, until_core_c=80.0, at_most_s=900.0),)
    )
    for program, controller, slot in (
        (two, Controller(), 1),
        (waits, Controller(), 1),
        (two, Controller(stage_count=2, longest_s=150.0), 1),
        (two, Controller(stage_count=2, highest_c=160.0), 1),
        (two, Controller(stage_count=2), 2),
    ):
        with pytest.raises(InputError):
            render(program, controller, slot)


def test_unreadable_values_are_named():
    """A word for a temperature, or a time that is none, says which stage."""
    controller = Controller(stage_count=2, clock=ClockStyle.ELAPSED)
    program = Program(name="p", product="x", fryer="y", stages=(Stage(set_c=170.0, duration_s=100.0),))
    values = {v.what: v for v in render(program, controller).values if v.stage == 1}
    for what, text in (("set", "hot"), ("time", "1:75"), ("time", "soon"), ("set", "3 35")):
        with pytest.raises(InputError, match="stage 1"):
            tidy(values[what], text, controller)


PROGRAMS = [
    (["1", "3", "12:40", "335", "open", "310", "12:00", "pressure", "325", "1:00", "open", "0", "0:00"]),
    (["10", "27", "4:00", "330", "pressure", "12:30", "310", "pressure"]),
    (["2", "1", "345", "4:30", "open"]),
]


@pytest.mark.parametrize("values", PROGRAMS)
def test_the_figure_catches_every_single_digit_slip_and_every_adjacent_swap(values):
    """Exhaustive: each digit replaced by each other digit, each pair of unequal neighbours swapped."""
    figure = check_figure(values)
    assert holds(values, figure)
    digits = digits_of(values)
    for i, digit in enumerate(digits):
        for other in "0123456789":
            if other != digit:
                assert not holds([digits[:i] + other + digits[i + 1 :]], figure)
    for i in range(len(digits) - 1):
        if digits[i] != digits[i + 1]:
            assert not holds([digits[:i] + digits[i + 1] + digits[i] + digits[i + 2 :]], figure)


@given(st.text("0123456789", min_size=1, max_size=60), st.data())
def test_the_figure_for_any_digits(digits, data):
    """The same for random values, by one random slip and one random swap."""
    figure = check_figure([digits])
    i = data.draw(st.integers(0, len(digits) - 1))
    other = data.draw(st.sampled_from([d for d in "0123456789" if d != digits[i]]))
    assert check_figure([digits[:i] + other + digits[i + 1 :]]) != figure
    if i + 1 < len(digits) and digits[i] != digits[i + 1]:
        assert check_figure([digits[:i] + digits[i + 1] + digits[i] + digits[i + 2 :]]) != figure


def test_iso_7064_example():
    """ISO/IEC 7064 MOD 97-10: 794 has the check characters 44 (from memory)."""
    assert check_figure(["794"]) == "44"
    assert holds(["794"], "44")


def test_scouting_sums():
    """9.0 to 11.5 oz x1.17-1.18; 38 to 50 F x0.95; 5000 ft x1.10 open, x1.04 pressure (common practice)."""
    base = {"weight_ratio": 1.0, "warmer_k": 0.0, "higher_m": 0.0, "kind": FryerKind.OPEN}
    assert 1.17 <= scouting_time(1.0, **{**base, "weight_ratio": 11.5 / 9.0}).time_s <= 1.18
    assert scouting_time(1.0, **{**base, "warmer_k": 12 / 1.8}).time_s == pytest.approx(0.95)
    assert scouting_time(1.0, **{**base, "higher_m": 1524.0}).time_s == pytest.approx(1.10)
    assert scouting_time(
        1.0, **{**base, "higher_m": 1524.0, "kind": FryerKind.PRESSURE}
    ).time_s == pytest.approx(1.04)
