"""Programs: ends by duration, elapsed time, time left or a condition."""

from __future__ import annotations

import pytest

from frywright.ledger.facts.cook import ProgramSaved
from frywright.model.errors import InputError
from frywright.model.program import LidState, Program, Stage


def program(*stages: Stage, **changes) -> Program:
    return Program(name="p", product="x", fryer="y", stages=stages, **changes)


def test_three_ways_to_say_the_same_times():
    """Durations, elapsed ends and time-left ends give one timetable."""
    a = program(Stage(set_c=170, duration_s=120), Stage(set_c=160, duration_s=480))
    b = program(Stage(set_c=170, until_elapsed_s=120), Stage(set_c=160, until_elapsed_s=600))
    c = program(Stage(set_c=170, until_left_s=480), Stage(set_c=160, until_left_s=0), total_s=600.0)
    assert a.durations_s() == b.durations_s() == c.durations_s() == (120.0, 480.0)
    assert b.timed() == a
    assert c.timed() == a


@pytest.mark.parametrize(
    "build",
    [
        lambda: program(),
        lambda: program(Stage(set_c=170)),
        lambda: program(Stage(set_c=170, duration_s=10, until_elapsed_s=20)),
        lambda: program(Stage(set_c=300, duration_s=10)),
        lambda: program(Stage(set_c=170, until_core_c=70.0)),
        lambda: program(Stage(set_c=170, until_left_s=10)),
        lambda: program(Stage(set_c=170, until_elapsed_s=100), Stage(set_c=170, until_elapsed_s=50)),
        lambda: program(Stage(set_c=170, duration_s=0)),
        lambda: program(Stage(set_c=170, duration_s=10), version=0),
        lambda: program(
            *(
                Stage(set_c=170, duration_s=9, lid=x)
                for x in (LidState.PRESSURE, LidState.OPEN, LidState.PRESSURE, LidState.OPEN)
            )
        ),
    ],
)
def test_contradictions_are_refused(build):
    """No stages, no or two ends, too hot, no longest wait, no total, backwards, no time, lid shut twice."""
    with pytest.raises(InputError):
        build()


def test_payload_round_trip():
    """What the store writes reads back as the same program."""
    p = program(
        Stage(set_c=170, duration_s=12),
        Stage(set_c=160, until_core_c=80.0, at_most_s=600.0),
        version=4,
        hold_life_s=100.0,
    )
    assert ProgramSaved.read(ProgramSaved.of(p).payload()).program == p
