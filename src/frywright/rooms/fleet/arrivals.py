"""At a site: what the office released or stopped, as it arrives, and what is done about it here. Nothing is
taken by itself: somebody looks, takes it as the next version, keys it and reads it back.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.fleet import ReleaseAnswered, ReleaseArrived
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.now import Harm, NowLine
from frywright.model.program import Program
from frywright.rooms.cook.programs import same_values, save_program
from frywright.rooms.hall import given_words, in_turn, write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.predicted import NOBODY, Answerer

ARRIVED = "The office released {program}, version {version}. Look at it and take it."
HALTED = "The office stopped {program}, version {version}: {reason} Do not cook by it until you decided."


@dataclass(frozen=True, slots=True, kw_only=True)
class Arrival:
    """A release that waits for an answer here: the newest program of its name here, if there is one."""

    item: Kept[ReleaseArrived]
    program: Program
    here: Program | None
    problem: InputError | None

    @property
    def halted(self) -> bool:
        """Whether the office stopped it."""
        return self.item.fact.what == "halted"


@in_turn
def arrive(store: Store, told: tuple[ReleaseArrived, ...]) -> int:
    """Keep what the office says, each once; how many were new."""
    newest = last_arrived(store)
    fresh = [one for one in told if one.office_number > newest]
    for one in fresh:
        write(store, one)
    return len(fresh)


def last_arrived(store: Store) -> int:
    """Entry of the office up to which releases have arrived."""
    return max((item.fact.office_number for item in store.facts(ReleaseArrived)), default=0)


def waiting(store: Store, kitchen: Kitchen) -> tuple[Arrival, ...]:
    """What nobody has answered yet; a release that was stopped waits no more, its stop does."""
    answered = {item.fact.arrived_number for item in store.facts(ReleaseAnswered)}
    arrived = list(store.facts(ReleaseArrived))
    stopped = {item.fact.release_number for item in arrived if item.fact.what == "halted"}
    found = []
    for item in arrived:
        if item.number in answered or (item.fact.what == "started" and item.fact.release_number in stopped):
            continue
        program = item.fact.text.program
        names = {p.name for p in kitchen.programs}
        here = kitchen.program(program.name) if program.name in names else None
        found.append(Arrival(item=item, program=program, here=here, problem=_unfit(kitchen, program)))
    return tuple(found)


def _unfit(kitchen: Kitchen, program: Program) -> InputError | None:
    """Why a program cannot run here as it is."""
    try:
        kitchen.check(program)
    except InputError as error:
        return error
    return None


def now_lines(store: Store, kitchen: Kitchen) -> list[NowLine]:
    """One line for each release that waits here."""
    return [
        NowLine(
            harm=Harm.WRONG if one.halted else Harm.NEXT,
            act="release",
            about=str(one.item.number),
            text=HALTED if one.halted else ARRIVED,
            values={
                "program": one.program.name,
                "version": f"{one.item.fact.text.version}",
                "reason": one.item.fact.reason,
            },
        )
        for one in waiting(store, kitchen)
    ]


@in_turn
def take_release(store: Store, number: int, who: Answerer = NOBODY) -> Kept[ReleaseAnswered]:
    """Save what was released as the next version here. Raises InputError: nothing of that number waits, it
    was stopped, the kitchen cannot run it, or it is predicted short here and nobody answers for it.
    """
    one = _waiting(store, number)
    if one.halted:
        raise InputError("release", number, "one that was not stopped")
    if one.problem is not None:
        raise one.problem
    here, program = one.here, one.program
    if here is not None and same_values(here, program):
        version = here.version
    else:
        version = here.version + 1 if here else 1
        made = replace(program, version=version)
        save_program(store, remembered_kitchen(store), made, who, origin="carried")
    return write(store, ReleaseAnswered(arrived_number=number, what="taken", version=version, reason=""))


@in_turn
def leave_release(store: Store, number: int, reason: str) -> Kept[ReleaseAnswered]:
    """Say why a release is not taken, or what was done about one that was stopped. Raises InputError: nothing
    of that number waits, or no reason.
    """
    one = _waiting(store, number)
    reason = given_words(reason)
    what: Literal["seen", "refused"] = "seen" if one.halted else "refused"
    told = ReleaseAnswered(arrived_number=number, what=what, version=None, reason=reason.strip()[:200])
    return write(store, told)


def _waiting(store: Store, number: int) -> Arrival:
    found = {one.item.number: one for one in waiting(store, remembered_kitchen(store))}
    if number not in found:
        raise InputError("release", number, "one that waits for an answer here")
    return found[number]
