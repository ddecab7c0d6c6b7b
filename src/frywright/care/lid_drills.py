"""Drills of the lid: pressure that is left, a vent that is shut, a load too small to fill the head.

None of them has a choice that opens a lid before zero.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from frywright.model.findings import Note, Values
from frywright.model.program import Program
from frywright.physics.fry import FryHistory
from frywright.physics.plan import FryPlan

BURST = (
    "At {half_pa} steam pushes on the lid with more than your weight; when it gives, steam and hot oil hit"
    " face and arms, and the food's own water flashes into more."
)
VENT_TIMED = (
    "Simulated: a full load takes about {vent_s} from working pressure; clogged passages take longer. The"
    " timer is no proof."
)
VENT_UNTIMED = "Nobody has timed this vent, and clogged passages take longer. The timer is no proof."
STUCK_TIMED = (
    "Four times the usual vent time of {vent_s} has passed on {fryer} and the gauge has not fallen to zero."
    " What now?"
)
STUCK_UNTIMED = (
    "Four times the usual vent time has passed on {fryer} and the gauge has not fallen to zero. What now?"
)
FULL_FRAC = 0.9
"""A single load that reaches less of the working pressure than this gives a drill (project's own rule)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One answer; ``hurts`` marks one that injures a person."""

    text: str
    why: str
    right: bool = False
    hurts: bool = False
    values: Values = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Drill:
    """One question with its choices; the order of the choices is fixed by the key."""

    key: str
    program: str
    version: int
    fryer: str
    question: Note
    choices: tuple[Choice, ...]


def drill_key(program: Program, name: str) -> str:
    """Key of a drill: a changed program gives others."""
    return f"{program.name.replace(' ', '_')}-v{program.version}-{name}"


def lid_drills(program: Program, plan: FryPlan, usual: FryHistory, alone: FryHistory) -> list[Drill]:
    """Drills of a program under pressure, from its usual load and from a single unit."""
    fryer, timed = plan.fryer, usual.told_vent_s is not None
    values: dict[str, float | str] = {
        "program": program.name,
        "fryer": fryer.name,
        "vent_s": usual.told_vent_s or 0.0,
        "gauge_pa": fryer.working_gauge_pa,
        "half_pa": 0.5 * fryer.working_gauge_pa,
        "alone_pa": float(alone.gauge_pa.max()),
        "raw": BURST,
    }
    found = [_gauge_left(program, values, timed), _stuck(program, values, timed)]
    if float(alone.gauge_pa.max()) < FULL_FRAC * fryer.working_gauge_pa:
        found.append(_too_small(program, values))
    return found


def _gauge_left(program: Program, values: Values, timed: bool) -> Drill:
    return Drill(
        key=drill_key(program, "gauge"),
        program=program.name,
        version=program.version,
        fryer=program.fryer,
        question=Note(
            kind="gauge",
            text=(
                "The timer of {program} on {fryer} has ended, the vent is open, the gauge reads {half_pa}."
                " Guests wait. What now?"
            ),
            values=values,
        ),
        choices=(
            Choice(
                text="Wait until the gauge reads zero and the vent is silent.",
                why=VENT_TIMED if timed else VENT_UNTIMED,
                right=True,
                values=values,
            ),
            Choice(text="Turn the lid now; it is nearly down.", why=BURST, hurts=True, values=values),
            Choice(
                text="Lever it with the basket handle to help it along.", why=BURST, hurts=True, values=values
            ),
            Choice(
                text="Reset the timer and open when it rings again.",
                why="A timer knows nothing of pressure. {raw}",
                hurts=True,
                values=values,
            ),
        ),
    )


def _stuck(program: Program, values: Values, timed: bool) -> Drill:
    return Drill(
        key=drill_key(program, "stuck"),
        program=program.name,
        version=program.version,
        fryer=program.fryer,
        question=Note(kind="stuck", text=STUCK_TIMED if timed else STUCK_UNTIMED, values=values),
        choices=(
            Choice(
                text="Leave it shut, heat off, keep people away, stop-use, call a qualified person.",
                why=(
                    "A passage is blocked. Pressure that cannot leave through the vent leaves through the"
                    " lid."
                ),
                right=True,
                values=values,
            ),
            Choice(
                text="Tap the vent or the relief valve until it goes.",
                why=(
                    "A valve that lets go blows steam over whoever taps it; only a qualified person"
                    " touches it."
                ),
                hurts=True,
                values=values,
            ),
            Choice(text="Open the lid slowly, it has had time enough.", why=BURST, hurts=True, values=values),
        ),
    )


def _too_small(program: Program, values: Values) -> Drill:
    return Drill(
        key=drill_key(program, "small"),
        program=program.name,
        version=program.version,
        fryer=program.fryer,
        question=Note(
            kind="small",
            text="A single unit goes into {fryer} with {program}. What will the gauge show at most?",
            values=values,
        ),
        choices=(
            Choice(
                text="{alone_pa}: too little steam to fill the head.",
                why=(
                    "Simulated. Water then boils cooler and the cook is another one: small loads need"
                    " a program of their own."
                ),
                right=True,
                values=values,
            ),
            Choice(
                text="{gauge_pa}, as always.",
                why=("Pressure comes from the food's own steam, not from the lid. Simulated: {alone_pa}."),
                values=values,
            ),
            Choice(
                text="More: there is more room for steam.",
                why="More room and less steam mean less pressure. Simulated: {alone_pa}.",
                values=values,
            ),
        ),
    )
