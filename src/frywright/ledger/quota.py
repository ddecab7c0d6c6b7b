"""How much people handed in: files and bytes by kitchen, day and person (by reference)."""

from __future__ import annotations

from dataclasses import dataclass

import sqlalchemy as sa

from frywright.ledger.names import referred
from frywright.ledger.store import Store
from frywright.ledger.tables import HANDED_IN


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """What a kitchen's files take, and what one person handed in on a day."""

    kitchen_bytes: int
    day_count: int
    day_bytes: int


def held(store: Store, who: str = "", day: str = "") -> Held:
    """What is held of a kitchen, and of a person and a day in it; an empty name stands for who is not
    signed in.
    """
    table, mine = HANDED_IN, HANDED_IN.c.site == store.site
    with store.looking() as connection:
        total = connection.execute(sa.select(sa.func.sum(table.c.size_bytes)).where(mine)).scalar()
        row = connection.execute(
            sa.select(table).where(mine, table.c.day == day, table.c.who == _ref(connection, who))
        ).first()
    return Held(
        kitchen_bytes=int(total or 0),
        day_count=row.files_count if row else 0,
        day_bytes=row.size_bytes if row else 0,
    )


def hand_in(store: Store, who: str, day: str, size: int) -> None:
    """Count a file."""
    before = held(store, who, day)
    table = HANDED_IN
    with store.writing() as writer:
        ref = _ref(writer.connection, who)
        counted = {"files_count": before.day_count + 1, "size_bytes": before.day_bytes + size}
        mine = (table.c.site == store.site, table.c.day == day, table.c.who == ref)
        done = writer.connection.execute(table.update().where(*mine).values(**counted))
        if not done.rowcount:
            values = {"site": store.site, "day": day, "who": ref, **counted}
            writer.connection.execute(table.insert().values(**values))


def _ref(connection: sa.Connection, who: str) -> str:
    return referred(connection, who) if who else ""
