"""Facts of a program's life at the fryer: its card printed, keyed in, put in service, taken out again."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from frywright.ledger.facts.fact import Fact


@dataclass(frozen=True, slots=True, kw_only=True)
class CardPrinted(Fact):
    """The card of a version of a program was printed for a slot of its fryer."""

    KIND: ClassVar[str] = "card_printed"
    name: str
    version: int
    fryer: str
    slot: int


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramKeyed(Fact):
    """A version of a program was keyed into a slot of its fryer."""

    KIND: ClassVar[str] = "program_keyed"
    name: str
    version: int
    fryer: str
    slot: int
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ServiceBegun(Fact):
    """A version of a program was put in service, with the entries of the proof and the read-back that it
    rests on (0 where the food has no rule to prove) and what was probed.
    """

    KIND: ClassVar[str] = "in_service"
    name: str
    version: int
    fryer: str
    who: str
    proof_number: int
    readback_number: int
    evidence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramRetired(Fact):
    """A version of a program was taken out of use for good, and why."""

    KIND: ClassVar[str] = "retired"
    name: str
    version: int
    fryer: str
    who: str
    reason: str
