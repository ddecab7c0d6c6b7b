"""The order of a commissioning: what must be done before what, who may sign, and which steps have no way
past.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace
from functools import cache

from frywright.catalog import load as catalog
from frywright.model.errors import InputError, several
from frywright.model.fryer import Fryer
from frywright.model.roles import SIGNERS, may_sign, same_person


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One step. ``needs`` are done before it; of a hard step's needs none can be passed over, not even with a
    name and a reason.
    """

    key: str
    title: str
    who: str
    why: str
    needs: tuple[str, ...] = ()
    hard: bool = False
    people_count: int = 1
    applies: str = ""
    figures: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Signed:
    """Who signs a step, with whom and as what; a name and a reason where a soft step goes before what it
    needs.
    """

    who: str
    role: str
    second: str = ""
    note: str = ""
    pass_name: str = ""
    pass_reason: str = ""


@cache
def _steps() -> tuple[Step, ...]:
    names = ("key", "title", "who", "why", "hard")
    return tuple(
        Step(
            needs=tuple(t["needs"]),
            people_count=t.get("people", 1),
            applies=t.get("applies", ""),
            figures=tuple(t.get("figures", ())),
            **{n: t[n] for n in names},
        )
        for t in catalog.table("care/commissioning.toml")["step"]
    )


def steps_for(fryer: Fryer) -> tuple[Step, ...]:
    """Steps of a fryer in order; an open one has no pressure test and no pressure figures."""
    kept = [s for s in _steps() if s.applies in ("", str(fryer.kind), fryer.fuel)]
    keys = {s.key for s in kept}
    unknown = () if fryer.kind == "pressure" else ("pressure_build", "vent_down")
    return tuple(
        replace(
            s,
            needs=tuple(n for n in s.needs if n in keys),
            figures=tuple(f for f in s.figures if f not in unknown),
        )
        for s in kept
    )


def missing(step: Step, done: Collection[str]) -> tuple[str, ...]:
    """What must be done before a step and is not."""
    return tuple(key for key in step.needs if key not in done)


def titles_of(keys: Collection[str]) -> dict[str, str]:
    """Titles of steps by their keys, in order."""
    known = {s.key: s.title for s in _steps()}
    return {key: known.get(key, key) for key in keys}


def check(step: Step, done: Collection[str], signed: Signed) -> tuple[str, ...]:
    """Whether a step may be signed; the needs it passes over by name and reason, mostly none.
    Raises InputError: a role that may not sign it, no second person where two must look, or a step before
    what it needs.
    """
    if not may_sign(signed.role, step.who):
        raise InputError(
            "role",
            SIGNERS.get(signed.role, repr(signed.role)),
            "{who} or more: nobody else signs this step",
            where=step.title,
            who=SIGNERS[step.who],
        )
    if len(signed.who.strip()) < 2:
        raise InputError("who", repr(signed.who), "the name of the person who did it", where=step.title)
    if step.people_count > 1 and (len(signed.second.strip()) < 2 or same_person(signed.who, signed.second)):
        raise InputError("second", repr(signed.second), "another person, who looked too", where=step.title)
    if step.who == "licensed" and len(signed.note.strip()) < 4:
        raise InputError("note", repr(signed.note), "the licence, report or tag number", where=step.title)
    open_needs = missing(step, done)
    if not open_needs:
        return ()
    if step.hard:
        raise InputError(
            "step",
            "too early",
            "after {needs}: this order has no way past",
            where=step.title,
            needs=several([*titles_of(open_needs).values()]),
        )
    if len(signed.pass_name.strip()) < 3 or len(signed.pass_reason.strip()) < 10:
        raise InputError(
            "step",
            "too early",
            "after {needs}, or with a name and a reason that stand on the handover",
            where=step.title,
            needs=several([*titles_of(open_needs).values()]),
        )
    return open_needs
