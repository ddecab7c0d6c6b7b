"""What room Cook wants done now: programs that may not be cooked by, that must be proved again, and the next
step of the others.
"""

from __future__ import annotations

from dataclasses import replace

from frywright.ledger.store import Store
from frywright.model.kitchen import Kitchen
from frywright.model.now import Harm, NowLine
from frywright.model.program import Program
from frywright.rooms.cook.life import lives
from frywright.trial.life import Life, State, Step
from frywright.trial.predicted import program_facts
from frywright.trial.prove_again import again_text, again_values

NO_PROGRAM = "No program yet: design the first one."
SHORT_HELD = "{fryer} may hold {program}, which is predicted short. Do not cook by it: lengthen it."
SHORT = "{program} is predicted short. Lengthen it before it goes to a fryer."
DIFFERS = "{fryer} holds other values than the card of {program}. Do not cook by it: key it again, read back."
OLD = "{fryer} still holds version {held} of {program}; version {version} is newer. Key it, then read back."
OLD_SHORT = (
    "{fryer} still holds version {held} of {program}, which is predicted short. Do not cook by it: key"
    " version {version}."
)
NEXT = {
    Step.PROVEN: "{program} is not proved yet. Prove it over the loads your kitchen meets.",
    Step.PROBED: "{program} is only predicted. Probe its coldest pieces.",
    Step.CARD: "{program} has no card of version {version}. Print it.",
    Step.KEYED: "{program}, version {version}, is not keyed into {fryer} yet.",
    Step.READ_BACK: "Nobody has read back what {fryer} holds of {program}.",
    Step.SERVICE: "{program} is ready. Decide whether it goes in service.",
}
UNDONE = {
    Step.PROBED: "{program} was probed before something changed. Probe it again.",
    Step.SERVICE: "{program} is out of service since something changed. Decide again.",
}


def now_lines(store: Store, kitchen: Kitchen) -> list[NowLine]:
    """One line for each program that wants something, the worst of it."""
    if not kitchen.programs:
        return [NowLine(harm=Harm.NEXT, act="first_program", text=NO_PROGRAM)]
    own = {p.name for p in kitchen.own_programs}
    found = [
        _line(kitchen, kitchen.program(name), life)
        for name, life in lives(store, kitchen).items()
        if name in own and not life.end
    ]
    return [line for line in found if line]


def _line(kitchen: Kitchen, program: Program, life: Life) -> NowLine | None:
    states = {s.step: s for s in life.steps}
    proven, read = states[Step.PROVEN], states[Step.READ_BACK]
    values: dict[str, float | str | tuple[str, ...]] = {
        "program": program.name,
        "fryer": kitchen.fryer(program.fryer).name,
        "version": f"{program.version}",
        "held": f"{read.values['version']:g}",
    }

    def line(harm: Harm, act: str, text: str) -> NowLine:
        return NowLine(harm=harm, act=act, about=program.name, text=text, values=values)

    if proven.act == "lengthen":
        held = states[Step.KEYED].state is State.DONE
        return line(Harm.WRONG if held else Harm.NEXT, "lengthen", SHORT_HELD if held else SHORT)
    if life.wrong and int(read.values["version"]) == program.version:
        return line(Harm.WRONG, "read_back", DIFFERS)
    if life.wrong and _held_short(kitchen, program.name, int(read.values["version"])):
        return line(Harm.WRONG, "life", OLD_SHORT)
    mark = kitchen.mark(program)
    if mark is not None:
        values |= {**again_values(mark), "reason": tuple(mark.reason.split("; "))}
        return replace(line(Harm.AGAIN, "prove", "{program}:"), then=again_text(mark))
    if life.next is None:
        return None
    if life.wrong and life.next.step in (Step.KEYED, Step.READ_BACK):
        return line(Harm.AGAIN, "life", OLD)
    text = (UNDONE if life.next.state is State.UNDONE else {}).get(life.next.step, NEXT[life.next.step])
    return line(Harm.NEXT, life.next.act, text)


def _held_short(kitchen: Kitchen, name: str, version: int) -> bool:
    """Whether an older version that a fryer still holds is predicted short."""
    found = [p for p in kitchen.versions(name) if p.version == version]
    return any(program_facts(kitchen, p).short for p in found)
