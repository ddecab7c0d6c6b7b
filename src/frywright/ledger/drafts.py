"""Drafts: what somebody is still filling in, kept as it is typed. A draft is no entry; what it becomes is."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

import sqlalchemy as sa

from frywright.ledger.store import Store
from frywright.ledger.tables import DRAFT
from frywright.model.entry import canonical
from frywright.model.errors import InputError

LARGEST_LETTERS = 60_000
"""Most letters of a draft: twenty times a kitchen described in full (project's own rule)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Draft:
    """What is filled in so far, and how often it was changed; 0 is a draft nobody began."""

    revision: int = 0
    body: Mapping[str, Any] = field(default_factory=dict)


def _named(store: Store, name: str) -> tuple[sa.ColumnElement[bool], ...]:
    """A kitchen's draft of a name."""
    return DRAFT.c.site == store.site, DRAFT.c.name == name


def read_draft(store: Store, name: str) -> Draft:
    """The draft of a name."""
    with store.looking() as connection:
        row = connection.execute(DRAFT.select().where(*_named(store, name))).first()
    return Draft(revision=row.revision, body=json.loads(row.body)) if row else Draft()


def change_draft(store: Store, name: str, change: Callable[[Draft], Mapping[str, Any]]) -> Draft:
    """Change a draft as one step: ``change`` sees it as it stands, so that no writer overtakes another.
    Raises InputError: it grew beyond what answers of people need.
    """
    with store.writing() as writer:
        row = writer.connection.execute(DRAFT.select().where(*_named(store, name))).first()
        old = Draft(revision=row.revision, body=json.loads(row.body)) if row else Draft()
        body = canonical(dict(change(old)))
        if len(body) > LARGEST_LETTERS:
            raise InputError("draft", len(body), "shorter than {most} letters", most=LARGEST_LETTERS)
        values = {"revision": old.revision + 1, "body": body}
        statement = DRAFT.update().where(*_named(store, name)) if row else DRAFT.insert()
        writer.connection.execute(
            statement.values(**values) if row else statement.values(site=store.site, name=name, **values)
        )
    return Draft(revision=old.revision + 1, body=json.loads(body))


def drop_draft(store: Store, name: str) -> None:
    """Throw a draft away."""
    with store.writing() as writer:
        writer.connection.execute(DRAFT.delete().where(*_named(store, name)))
