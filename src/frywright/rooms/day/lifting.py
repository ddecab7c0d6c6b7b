"""A tap on *Lifted* is checked against what the fryer can have done: a load lifted early or late is asked
about before it may stand on the shelf as good.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum
from typing import TYPE_CHECKING, ClassVar

from frywright.ledger.facts.probing import Reading
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.model.units import clock

if TYPE_CHECKING:
    from frywright.rooms.day.board import Board, Tap

EARLY_SHARE, LATE_S = 0.9, 120.0
"""A load that had less than this share of its time was lifted early; one tapped more than this after its time
was lifted late, or long ago (own choice).
"""


class Answer(StrEnum):
    """What happened to a load that was lifted early or late."""

    BACK = "back in the oil"
    THROWN = "thrown away"
    PROBED = "probed"
    IN_TIME = "lifted in time"
    KEPT = "lifted just now"


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One answer in words; ``at_s`` is the time of the lift where the answer names another than the tap's."""

    answer: Answer
    text: str
    at_s: float | None = None


class LiftAskedError(InputError):
    """A lift that nobody may take for good before it is said what happened; carries the choices."""

    http_status: ClassVar[int] = 409

    def __init__(self, early: bool, had_s: float, time_s: float, planned_s: float, at_s: float) -> None:
        self.early, self.had_s, self.time_s = early, had_s, time_s
        self.planned_s, self.at_s = planned_s, at_s
        super().__init__("lift", clock(had_s), "answered: what happened to this load?")

    def question(self, tr: Translate) -> str:
        """The question, as the crew reads it."""
        text = (
            "This load has had {had} of {time}. It may be raw inside. Do not serve it. What happened?"
            if self.early
            else "This load was due at {at}. When was it lifted?"
        )
        values: dict[str, float | str] = {
            "had": clock(self.had_s),
            "time": clock(self.time_s),
            "at": time_of_day(self.planned_s),
        }
        return say(tr(text), values)

    def choices(self, tr: Translate) -> list[Choice]:
        """The answers offered."""
        if self.early:
            return [
                Choice(answer=Answer.BACK, text=tr("It is still in the oil: go on cooking")),
                Choice(answer=Answer.THROWN, text=tr("It was thrown away")),
                Choice(
                    answer=Answer.PROBED,
                    text=tr("It was probed, and the reading is entered under Records, Probing"),
                ),
            ]
        in_time = tr("At {at}, in time").format(at=time_of_day(self.planned_s))
        return [
            Choice(answer=Answer.IN_TIME, text=in_time, at_s=self.planned_s),
            Choice(answer=Answer.THROWN, text=tr("Just now, overcooked: thrown away")),
            Choice(answer=Answer.KEPT, text=tr("Just now, looked at and kept")),
        ]


def thrown_key(key: str) -> str:
    """Key of the discard that goes with a lift."""
    return f"{key[:70]} thrown"


def lifts_of(board: Board, tap: Tap) -> list[Tap]:
    """The taps that a lift becomes: itself, moved to its time, or followed by throwing the load away.
    Raises LiftAskedError: it was early or late, and nothing is said of it. Raises InputError: it is said to
    be probed, and no reading at or above its limit was entered since the drop.
    """
    load = next((x for x in board.state(tap.at_s).in_oil if board.bench.fryers[x.fryer] == tap.fryer), None)
    if load is None:
        return [tap]
    bench = board.bench
    fact = bench.loads[load.item][load.load]
    drop_s = bench.trade.start_s + load.drop_n * bench.trade.slot_s
    had_s, planned_s = tap.at_s - drop_s, drop_s + fact.lift_s
    early, late = had_s < EARLY_SHARE * fact.lift_s, had_s > fact.lift_s + LATE_S
    if not early and not late:
        return [tap]
    pieces = tap.pieces_count or round(load.units_n)
    thrown = replace(
        tap,
        key=thrown_key(tap.key),
        what="discard",
        product=fact.product,
        pieces_count=pieces,
        reason="undercooked" if early else "burnt",
    )
    if tap.reason == Answer.THROWN:
        return [tap, thrown]
    if early and tap.reason == Answer.PROBED:
        _probed(board, tap, fact.product, drop_s)
        return [tap]
    if late and tap.reason == Answer.IN_TIME:
        return [replace(tap, at_s=planned_s)]
    if late and tap.reason == Answer.KEPT:
        return [tap]
    raise LiftAskedError(early, had_s, fact.lift_s, planned_s, tap.at_s)


def _probed(board: Board, tap: Tap, product: str, drop_s: float) -> None:
    """Whether a reading of this fryer and product at or above its limit was entered since the drop."""
    since = moment_of(board.bench.trade, board.bench.date, drop_s)
    for item in board.store.facts(Reading, newest_first=True):
        if item.happened_at < since:
            break
        fact = item.fact
        if (fact.fryer, fact.product) == (tap.fryer, product) and fact.limit_c is not None:
            if fact.below:
                break
            return
    raise InputError(
        "reading",
        "missing",
        "entered first under Records, Probing: the coldest piece of this load, at or above its limit",
    )
