"""Writes that may be sent again: the first answer to a key is kept in the same transaction as what it wrote,
and given again.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable
from typing import Any

import sqlalchemy as sa

from frywright.ledger.facts.fact import F, Kept
from frywright.ledger.store import Store
from frywright.ledger.tables import ANSWERED
from frywright.model.entry import canonical
from frywright.model.errors import InputError, RecordError

_MARK: sa.BindParameter[str] = sa.bindparam("mark")
_ANSWER = sa.select(ANSWERED.c.answer).where(ANSWERED.c.mark == _MARK)
_KEEP = ANSWERED.insert()
"""Asked at every write, so they are built once."""


def once(
    store: Store, what: str, key: str, body: Any, write: Callable[[], dict[str, Any]], who: str = ""
) -> tuple[dict[str, Any], bool]:
    """The answer to a write and whether it was made now; a crash leaves both or neither.
    Raises InputError: the key was used for another write before.

    Parameters
    ----------
    who : sender, whose keys count by themselves; an older store knows a key without its sender
    """
    what = f"{store.site}/{what}" if store.site else what
    older = hashlib.sha256(f"{what}\n{key}".encode()).hexdigest()
    mark = hashlib.sha256(f"{what}\n{who}\n{key}".encode()).hexdigest() if who else older
    text = hashlib.sha256(canonical(body).encode()).hexdigest()
    with store.writing() as writer:
        query = sa.select(ANSWERED).where(
            sa.or_(ANSWERED.c.mark == mark, sa.and_(ANSWERED.c.mark == older, ANSWERED.c.body == text))
        )
        known = writer.connection.execute(query).first()
        if known is not None:
            if known.body != text:
                raise InputError("Idempotency-Key", key, "new for every write: this one was used for another")
            return dict(json.loads(known.answer)), False
        answer = write()
        writer.connection.execute(_KEEP, {"mark": mark, "body": text, "answer": canonical(answer)})
        return answer, True


def kept_once(store: Store, cls: type[F], key: str, write: Callable[[], Kept[F]]) -> tuple[Kept[F], bool]:
    """The fact of a key, and whether it was written now: one sent again finds the first, whatever it says."""
    mark = hashlib.sha256(f"{store.site}entry {cls.KIND}\n{key}".encode()).hexdigest()
    with store.writing() as writer:
        known = writer.connection.execute(_ANSWER, {"mark": mark}).scalar()
        if known is None:
            made = write()
            writer.connection.execute(_KEEP, {"mark": mark, "body": "", "answer": str(made.number)})
            return made, True
    found = store.fact(int(known), cls)
    if found is None:
        raise RecordError(
            "Entry {known}, which this key stands for, is missing: check the chain.", known=known
        )
    return found, False
