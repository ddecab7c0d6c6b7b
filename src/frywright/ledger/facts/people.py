"""Facts of people: who works here, skills shown, drills answered, accounts changed."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, ClassVar, Literal

from frywright.ledger.facts.fact import Fact
from frywright.model.entry import Recorded
from frywright.model.roles import folded


@dataclass(frozen=True, slots=True, kw_only=True)
class PersonListed(Fact):
    """A person by name, and whether they left. Version 1 held the birthday itself; from version 2 on ``born``
    is empty and ``born_ref`` refers to it outside the chain, where age rules matter and until they leave.
    """

    KIND: ClassVar[str] = "person"
    VERSION: ClassVar[int] = 2
    PEOPLE: ClassVar[tuple[str, ...]] = ("name",)
    name: str
    born: str
    left: bool
    born_ref: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SkillShown(Fact):
    """A skill performed by one person and seen by another."""

    KIND: ClassVar[str] = "skill"
    PEOPLE: ClassVar[tuple[str, ...]] = ("person", "observed_by")
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
    PEOPLE: ClassVar[tuple[str, ...]] = ("name", "by")
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
    how: Literal["password", "pin", "company"]
    device: str
    mark: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SignedOut(Fact):
    """The session of ``mark`` was ended by its person, who signed out or signed in anew in its place. One
    that ends by itself, unused or after its longest time, leaves no entry.
    """

    KIND: ClassVar[str] = "sign_out"
    how: Literal["out", "anew"]
    mark: str


@dataclass(frozen=True, slots=True, kw_only=True)
class AccountLinked(Fact):
    """Whoever signs in elsewhere as ``mark`` acts here as the account; an empty mark ends that. The mark is
    the hash of who vouches and of their own name for the person.
    """

    KIND: ClassVar[str] = "account_linked"
    PEOPLE: ClassVar[tuple[str, ...]] = ("name", "by")
    name: str
    mark: str
    by: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SignInsRefused(Fact):
    """So many wrong passwords or PINs in a row that whoever tries must wait. ``name`` is an account's, empty
    where nobody has the name that was typed.
    """

    KIND: ClassVar[str] = "sign_in_refused"
    PEOPLE: ClassVar[tuple[str, ...]] = ("name",)
    name: str
    device: str
    tries_count: int


@dataclass(frozen=True, slots=True, kw_only=True)
class NameRemoved(Fact):
    """A person's name was taken away; entries go on holding their references, and nothing leads back."""

    KIND: ClassVar[str] = "name_removed"
    refs: tuple[str, ...]
    by: str
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceNamed(Fact):
    """What an inspector finds a kitchen by: address, permit, who runs it; empty where it was not stated."""

    KIND: ClassVar[str] = "place_named"
    address: str
    permit: str
    operator: str
    who: str


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleAnswered(Fact):
    """What an authority said of work or food at this place, where the catalog knows no rule of it or where
    more is asked than its rule does: years of age, or the hot-holding limit. Without a figure the answer
    before it is taken back.
    """

    KIND: ClassVar[str] = "local_rule"
    PEOPLE: ClassVar[tuple[str, ...]] = ("who", "said_by")
    WORDS: ClassVar[frozenset[str]] = frozenset({"subject"})
    LABELS: ClassVar[Mapping[str, str]] = {
        "jurisdiction": "place",
        "years_count": "from this age",
        "hold_c": "hot holding",
        "said_by": "said by",
        "said_on": "said on",
    }
    subject: str
    jurisdiction: str
    years_count: int | None
    hold_c: float | None
    said_by: str
    said_on: dt.date
    words: str
    who: str


HIDDEN = {(PersonListed.KIND, "born")}
"""Fields of older entries that nobody is shown: kind and field. Newer entries hold a reference."""


def as_shown(item: Recorded) -> dict[str, Any]:
    """What an entry says, without what is private."""
    kind = item.entry.kind
    return {k: "" if (kind, k) in HIDDEN else v for k, v in item.entry.payload.items()}


def about_person(item: Recorded, name: str) -> bool:
    """Whether somebody wrote an entry or stands in it by name."""
    return _named([item.entry.author, item.entry.payload], folded(name))


def _named(value: Any, name: str) -> bool:
    if isinstance(value, str):
        return folded(value) == name
    parts = value.values() if isinstance(value, Mapping) else value if isinstance(value, list | tuple) else ()
    return any(_named(part, name) for part in parts)
