"""Facts of many sites: a program released in waves, each wave and what stopped it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated, Any, ClassVar, Literal

from pydantic import Field

from frywright.ledger.facts.cook import PLACE_OF_A_PROGRAM, ProgramText
from frywright.ledger.facts.fact import Fact


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramReleased(Fact):
    """A version of a program, the sites it goes to in waves, and the rule that stops it. Version 1 knew no
    altitude and no bird size of a program.
    """

    KIND: ClassVar[str] = "release"
    VERSION: ClassVar[int] = 2
    program: str
    version: int
    text: Annotated[ProgramText, Field(alias="payload")]
    waves: tuple[tuple[str, ...], ...]
    most_below_frac: float
    who: str

    @classmethod
    def older(cls, payload: Mapping[str, Any]) -> Mapping[str, Any]:
        """A program of version 1 is for the kitchen's own altitude and bird."""
        text = payload.get("payload")
        return (
            {**payload, "payload": {**PLACE_OF_A_PROGRAM, **text}} if isinstance(text, Mapping) else payload
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class WaveTold(Fact):
    """A wave of a release begun, or the release halted."""

    KIND: ClassVar[str] = "release_wave"
    release_number: int
    what: Literal["started", "halted"]
    sites: tuple[str, ...]
    who: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class KitchenOpened(Fact):
    """A further kitchen in this store: its key, the name it was given, the kitchen it is a copy of (None for
    none), and whether its own site keeps the record and sends it here.
    """

    KIND: ClassVar[str] = "kitchen_opened"
    key: str
    name: str
    copy_of: str | None
    sent_here: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class ForkSeen(Fact):
    """A site sent an entry that is not the one of that number it had sent before."""

    KIND: ClassVar[str] = "fork_seen"
    key: str
    entry_number: int
    hash_here: str
    hash_sent: str


@dataclass(frozen=True, slots=True, kw_only=True)
class AnchorKept(Fact):
    """At an office: an anchor that a site signed for its own record, as it came (its line of text)."""

    KIND: ClassVar[str] = "anchor_kept"
    key: str
    entry_number: int
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReleaseArrived(Fact):
    """At a site: the office released a version of a program to it, or stopped that release. ``office_number``
    is the entry of the office that says so.
    """

    KIND: ClassVar[str] = "release_arrived"
    office_number: int
    release_number: int
    what: Literal["started", "halted"]
    text: Annotated[ProgramText, Field(alias="payload")]
    who: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ReleaseAnswered(Fact):
    """At a site: what was done about a release that arrived."""

    KIND: ClassVar[str] = "release_answered"
    arrived_number: int
    what: Literal["taken", "refused", "seen"]
    version: int | None
    reason: str
