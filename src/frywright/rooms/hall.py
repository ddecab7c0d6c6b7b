"""How every act keeps a fact: in turn, under its author, confirmed where two people must."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import wraps
from typing import Any, Concatenate, ParamSpec, TypeVar

from frywright.catalog import load as catalog
from frywright.ledger.facts.fact import F, Kept, kept
from frywright.ledger.names import without_names
from frywright.ledger.store import Store
from frywright.model.entry import Entry
from frywright.model.errors import InputError
from frywright.model.roles import same_person
from frywright.rooms.clock import here, now

AUTHOR = "unnamed on this machine"
"""Author until people have accounts."""

SHORTEST_REASON = 4
"""Letters of the shortest reason taken (project's own rule)."""

P = ParamSpec("P")
R = TypeVar("R")


def in_turn(act: Callable[Concatenate[Store, P], R]) -> Callable[Concatenate[Store, P], R]:
    """An act that looks at the record and then writes: nothing is written between the two."""

    @wraps(act)
    def alone(store: Store, /, *args: P.args, **kwargs: P.kwargs) -> R:
        with store.writing():
            return act(store, *args, **kwargs)

    return alone


def confirmed(second: str, field: str = "second") -> None:
    """The second of two people, who must have confirmed on the spot where people have accounts.
    Raises InputError: nobody of that name did.
    """
    known = here().second
    if known is not None and not same_person(second, known):
        raise InputError(
            field, repr(second), "confirmed here by that person, with a PIN or password of their own"
        )


def typed(values: Mapping[str, Any], name: str) -> str:
    """What was typed in a box, without the blanks around it; empty where nothing was."""
    return str(values.get(name, "") or "").strip()


def by_name(who: str, wanted: str = "the name of the person who did it", *, where: str = "") -> str:
    """Somebody's name as it is kept. Raises InputError: it is none."""
    if len(who.strip()) < 2:
        raise InputError("who", repr(who), wanted, where=where)
    return who.strip()[:80]


def given_words(text: str, name: str = "reason", wanted: str = "why, in words", *, where: str = "") -> str:
    """A reason without blanks around it. Raises InputError: it is too short to say why."""
    if len(text.strip()) < SHORTEST_REASON:
        raise InputError(name, repr(text), wanted, where=where)
    return text.strip()


def another(who: str, second: str, wanted: str, *, where: str = "") -> None:
    """The second of two people, confirmed as by :func:`confirmed`. Raises InputError: it is nobody else."""
    if len(second.strip()) < 2 or same_person(who, second):
        raise InputError("second", repr(second), wanted, where=where)
    confirmed(second)


def write(
    store: Store,
    fact: F,
    happened_at: dt.datetime | None = None,
    replaces: int | None = None,
    versions: Mapping[str, str] | None = None,
) -> Kept[F]:
    """Keep a fact, happening now or at a moment given."""
    entry = Entry(
        kind=fact.KIND,
        happened_at=happened_at or now(),
        author=here().author or AUTHOR,
        payload=fact.payload(),
        replaces=replaces,
        versions={"catalog": catalog.VERSION, **(versions or {})},
    )
    with store.writing() as writer:
        made = writer.add(without_names(writer.connection, entry, fact.PEOPLE, AUTHOR))
    return kept(replace(made, entry=entry), type(fact))
