"""What is private of people. The chain holds a reference: the hash of the value and of a salt that is kept
with it, so that a value cannot be changed unseen, nor guessed once it is erased.
"""

from __future__ import annotations

import hashlib
import secrets

import sqlalchemy as sa

from frywright.ledger.store import Store
from frywright.ledger.tables import PRIVATE


def _ref(salt: str, value: str) -> str:
    return hashlib.sha256(f"{salt}\n{value}".encode()).hexdigest()


class Private:
    """The private values of a store."""

    def __init__(self, store: Store) -> None:
        self._store = store

    def keep(self, value: str) -> str:
        """Keep a value; its reference."""
        salt = secrets.token_hex(16)
        ref = _ref(salt, value)
        with self._store.writing() as writer:
            writer.connection.execute(PRIVATE.insert().values(ref=ref, salt=salt, value=value))
        return ref

    def value(self, ref: str) -> str:
        """The value of a reference; empty where it was erased, or is not the one that was kept."""
        with self._store.looking() as connection:
            row = connection.execute(sa.select(PRIVATE).where(PRIVATE.c.ref == ref)).first()
        return row.value if row is not None and _ref(row.salt, row.value) == ref else ""

    def erase(self, *refs: str) -> None:
        """Erase values; the chain stays as it is."""
        with self._store.writing() as writer:
            writer.connection.execute(PRIVATE.delete().where(PRIVATE.c.ref.in_(refs)))
