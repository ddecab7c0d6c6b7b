"""Facts of people: who works here, skills shown, drills answered, accounts changed."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from frywright.ledger.facts.fact import Fact


@dataclass(frozen=True, slots=True, kw_only=True)
class PersonListed(Fact):
    """A person by name; the birthday, empty where age rules do not matter; whether they left."""

    KIND: ClassVar[str] = "person"
    name: str
    born: str
    left: bool

    @property
    def born_on(self) -> dt.date | None:
        """The birthday, or None."""
        return dt.date.fromisoformat(self.born) if self.born else None


@dataclass(frozen=True, slots=True, kw_only=True)
class SkillShown(Fact):
    """A skill performed by one person and seen by another."""

    KIND: ClassVar[str] = "skill"
    LABELS: ClassVar[Mapping[str, str]] = {"observed_by": "seen by"}
    person: str
    skill: str
    observed_by: str
    date: dt.date
    expires: dt.date


@dataclass(frozen=True, slots=True, kw_only=True)
class DrillAnswered(Fact):
    """An answer to a drill: explained, never scored."""

    KIND: ClassVar[str] = "drill_answer"
    drill: str
    who: str
    choice_number: int
    right: bool
    hurts: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class AccountChanged(Fact):
    """An account or a device added, changed or revoked, by whom and why. Version 1 had no seal: the hash of
    what is kept of the account or device from then on, its secrets' hashes among it.
    """

    KIND: ClassVar[str] = "account_change"
    VERSION: ClassVar[int] = 2
    name: str
    what: str
    role: str
    by: str
    reason: str
    active: bool | None = None
    seal: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SignedIn(Fact):
    """The entry's author signed in. ``mark`` is the hash of what is kept of the session's token and opens
    nothing; ``device`` is the shared device, where it was there by PIN.
    """

    KIND: ClassVar[str] = "sign_in"
    how: Literal["password", "pin"]
    device: str
    mark: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SignInsRefused(Fact):
    """So many wrong passwords or PINs in a row that whoever tries must wait. ``name`` is an account's, empty
    where nobody has the name that was typed.
    """

    KIND: ClassVar[str] = "sign_in_refused"
    name: str
    device: str
    tries_count: int


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceNamed(Fact):
    """What an inspector finds a kitchen by: address, permit, who runs it; empty where it was not stated."""

    KIND: ClassVar[str] = "place_named"
    address: str
    permit: str
    operator: str
    who: str
