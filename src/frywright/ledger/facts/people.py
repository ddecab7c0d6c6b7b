"""Facts of people: who works here, skills shown, drills answered, accounts changed."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

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
    """An account or a device added, changed or revoked, by whom and why."""

    KIND: ClassVar[str] = "account_change"
    name: str
    what: str
    role: str
    by: str
    reason: str
    active: bool | None = None
