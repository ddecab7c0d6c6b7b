"""What the machine's clock is keyed with, and when the lift comes: the same words on card, page, read-back
and versions.
"""

from __future__ import annotations

from frywright.model.findings import Note
from frywright.model.fryer import Fryer
from frywright.model.program import LidState, Program
from frywright.model.units import clock
from frywright.physics.fry import FryHistory

PLAIN = "Clock {total}. Lift when it ends."
RUNS_ON = "Clock {total}. It runs on during the vent. Lift when it has ended and the gauge reads zero."
WAITS = (
    "Clock {total}, and the vent on top, about {vent}: the clock stands still meanwhile. Lift when it ends."
)
WAITS_UNTIMED = (
    "Clock {total}, and the vent on top, not timed yet: the clock stands still meanwhile. Lift when it ends."
)
AFTER = "Clock {total}, then the vent, about {vent}. Lift when the gauge reads zero."
AFTER_UNTIMED = "Clock {total}, then the vent, not timed yet. Lift when the gauge reads zero."
NO_CLOCK = "A stage waits for what is measured: no clock says when to lift. At most {total}."


def clock_note(fryer: Fryer, program: Program, vent_s: float | None = None) -> Note:
    """The keyed total and when the lift comes. ``vent_s`` is the vent of a full load, None where nobody timed
    it.
    """
    return Note(
        kind="clock",
        text=_text(fryer, program, vent_s is not None),
        values={"total": clock(program.clock_s), "vent": clock(vent_s or 0.0)},
    )


def clock_note_of(history: FryHistory) -> Note:
    """As :func:`clock_note`, with the vent of a simulation where the fryer's vent was told."""
    return clock_note(history.plan.fryer, history.plan.program, history.told_vent_s)


def _text(fryer: Fryer, program: Program, timed: bool) -> str:
    if program.has_condition:
        return NO_CLOCK
    if not program.under_pressure:
        return PLAIN
    if program.stages[-1].lid is LidState.PRESSURE:
        return AFTER if timed else AFTER_UNTIMED
    if fryer.controller.clock.runs_on:
        return RUNS_ON
    return WAITS if timed else WAITS_UNTIMED
