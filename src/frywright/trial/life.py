"""The life of a version of a program, from a draft to service and out of use: what stands, what something has
undone, and what comes next. One rule, from what is known of the version and nothing else.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum


class Step(StrEnum):
    """Steps of a life, in their order."""

    DRAFT = "draft"
    DESIGNED = "designed"
    PROVEN = "proven by simulation"
    PROBED = "probed"
    CARD = "card printed"
    KEYED = "keyed"
    READ_BACK = "read back"
    SERVICE = "in service"


class State(StrEnum):
    """How a step stands. ``UNDONE`` was done, and something has happened since, or it was done and failed."""

    DONE = "done"
    PASSED = "not needed"
    OPEN = "to do"
    UNDONE = "undone"


STANDS = (State.DONE, State.PASSED)
MEASURED = {
    "calibrated": "Calibrated from probe logs, inside the range that was logged.",
    "read": "Readings of its slowest pieces at the lift decided that it meets the limit.",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """An entry that a step rests on: its number, when, by whom; number 0 stands in the kitchen file."""

    number: int = 0
    at: dt.datetime | None = None
    who: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Traces:
    """What is known of a version of a program and of its fryer.

    Parameters
    ----------
    origin : where its stages came from: ``designed``, ``carried`` or, by hand, empty
    ruled : a rule of the place or a house target speaks of its food
    short : it is predicted short of its limit, or its newest proof failed
    again : a change of the kitchen asks for a new proof
    measured : what the kitchen knows of its pieces now proves it: ``calibrated`` inside the range that was
        logged, or ``read`` at the lift; else empty
    probed : the newest readings that decided that it meets its limit, whatever has changed since
    read_version : the version that the newest read-back of its name compared, whether it ``matches``
    undone_number : the newest entry that took any step back, such as a read-back that differs
    newer : a later version was saved
    """

    saved: Mark
    origin: str = ""
    ruled: bool = True
    short: bool = False
    again: bool = False
    proof: Mark | None = None
    proof_holds: bool = False
    samples_count: int = 0
    measured: str = ""
    probed: Mark | None = None
    card: Mark | None = None
    card_slot: int = 0
    keyed: Mark | None = None
    read: Mark | None = None
    read_version: int = 0
    matches: bool = False
    service: Mark | None = None
    retired: Mark | None = None
    reason: str = ""
    undone_number: int = 0
    version: int = 1
    newer: Mark | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """How a step stands, on what evidence; ``text`` is a template. ``act`` is what does the step."""

    step: Step
    state: State
    text: str
    values: Mapping[str, float | str] = field(default_factory=dict)
    mark: Mark | None = None
    act: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Life:
    """The steps of a version in order; ``end`` says that it is over: ``changed``, ``retired`` or empty."""

    steps: tuple[Standing, ...]
    end: str
    ended: Mark | None
    reason: str
    wrong: bool
    """The fryer holds something else than its card says, an old version or other values."""

    @property
    def next(self) -> Standing | None:
        """The first step that does not stand; None when all do, or the version's life is over."""
        return None if self.end else next((s for s in self.steps if s.state not in STANDS), None)

    @property
    def serving(self) -> bool:
        """Whether it is in service with every step before it standing."""
        return not self.end and self.steps[-1].state is State.DONE

    @property
    def missing(self) -> tuple[Standing, ...]:
        """Steps before service that do not stand."""
        return tuple(s for s in self.steps[:-1] if s.state not in STANDS)


def life_of(traces: Traces) -> Life:
    """The life of a version, step by step."""
    before = (
        Standing(
            step=Step.DRAFT,
            state=State.DONE,
            text="Saved." if traces.saved.number else "Written in the kitchen file.",
            mark=traces.saved,
        ),
        _designed(traces),
        _proven(traces),
        _probed(traces),
        _card(traces),
        _keyed(traces),
        _read_back(traces),
    )
    retired = traces.retired
    gone = retired is not None and retired.number > (traces.service.number if traces.service else 0)
    end = "changed" if traces.newer else ("retired" if gone else "")
    wrong = before[-1].state is State.UNDONE
    return Life(
        steps=(*before, _service(traces, before, gone)),
        end=end,
        ended=traces.newer or (retired if gone else None),
        reason=traces.reason if end == "retired" else "",
        wrong=wrong,
    )


def _designed(traces: Traces) -> Standing:
    texts = {
        "designed": "Found by the search over every load.",
        "carried": "Carried over from another program.",
    }
    done = traces.origin in texts
    return Standing(
        step=Step.DESIGNED,
        state=State.DONE if done else State.PASSED,
        text=texts.get(traces.origin, "Stages set by hand: the proof decides."),
        mark=traces.saved if done else None,
    )


def _proven(traces: Traces) -> Standing:
    def standing(state: State, text: str, act: str = "prove") -> Standing:
        values = {"samples": float(traces.samples_count)}
        return Standing(step=Step.PROVEN, state=state, text=text, values=values, mark=traces.proof, act=act)

    if not traces.ruled:
        return standing(
            State.PASSED, "No rule here for this food, and no house target: nothing to prove.", ""
        )
    if traces.proof and not traces.proof_holds:
        return standing(State.UNDONE, "The proof failed: lengthen it, then prove it again.", "lengthen")
    if traces.short:
        return standing(State.OPEN, "Predicted short: lengthen it before anything else.", "lengthen")
    if traces.again:
        return standing(State.UNDONE, "The kitchen has changed since: prove it again.")
    if traces.proof is None:
        return standing(State.OPEN, "Not proved yet over the loads a kitchen meets.")
    return standing(State.DONE, "The proof over {samples} simulated loads holds.")


def _probed(traces: Traces) -> Standing:
    def standing(state: State, text: str, act: str = "") -> Standing:
        return Standing(step=Step.PROBED, state=state, text=text, mark=traces.probed, act=act)

    if not traces.ruled:
        return standing(State.PASSED, "No rule here for this food, and no house target.")
    if traces.measured:
        return standing(State.DONE, MEASURED[traces.measured])
    if traces.probed is None:
        return standing(State.OPEN, "Not probed yet: only a prediction stands behind it.", "probe")
    return standing(State.UNDONE, "Probed before something changed: probe it again.", "probe")


def _card(traces: Traces) -> Standing:
    if traces.card is None:
        return Standing(
            step=Step.CARD, state=State.OPEN, text="No card of this version was printed.", act="card"
        )
    return Standing(
        step=Step.CARD,
        state=State.DONE,
        text="Printed for slot {slot}.",
        values={"slot": float(traces.card_slot)},
        mark=traces.card,
    )


def _keyed(traces: Traces) -> Standing:
    read = traces.read if traces.read_version == traces.version else None
    mark = traces.keyed or read
    if mark is None:
        return Standing(step=Step.KEYED, state=State.OPEN, text="Not keyed into its fryer.", act="key")
    return Standing(step=Step.KEYED, state=State.DONE, text="Keyed into its fryer.", mark=mark)


def _read_back(traces: Traces) -> Standing:
    def standing(state: State, text: str) -> Standing:
        values = {"version": float(traces.read_version)}
        act = "" if state is State.DONE else "read_back"
        return Standing(step=Step.READ_BACK, state=state, text=text, values=values, mark=traces.read, act=act)

    if traces.read is None:
        return standing(State.OPEN, "What the fryer holds is not known: nobody has read it back.")
    if traces.keyed and traces.keyed.number > traces.read.number:
        return standing(State.OPEN, "Keyed since it was last read back.")
    if traces.read_version != traces.version:
        return standing(State.UNDONE, "The fryer still holds version {version}: key this one.")
    if not traces.matches:
        return standing(
            State.UNDONE,
            "The fryer holds other values or settings than the card and the sheet: do not cook by it.",
        )
    return standing(State.DONE, "The fryer holds what the card says.")


def _service(traces: Traces, before: tuple[Standing, ...], gone: bool) -> Standing:
    def standing(state: State, text: str) -> Standing:
        act = "" if state is State.DONE else "serve"
        return Standing(step=Step.SERVICE, state=state, text=text, mark=traces.service, act=act)

    if gone:
        return standing(State.UNDONE, "Retired.")
    if traces.service is None:
        return standing(State.OPEN, "Not in service: the crew does not cook guests' food by it yet.")
    if any(s.state not in STANDS for s in before):
        return standing(State.UNDONE, "Out of service until the steps before stand again.")
    if traces.service.number < traces.undone_number:
        return standing(State.UNDONE, "Out of service since a step was undone: decide again.")
    return standing(State.DONE, "In service.")
