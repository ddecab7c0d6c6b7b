"""Entries that were emptied at the end of their time. Number, moments, link and hash stay, so that the chain
goes on over them; a later entry says which ones, with a digest over all that is left. One that is empty
without that, or too early, or of a kind that stays for ever, is found by whoever walks the chain.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING

import sqlalchemy as sa

from frywright.ledger.facts.dropping import EntriesDropped, digest_of, emptied, kind_before, left_over
from frywright.ledger.facts.fact import Kept, kept
from frywright.ledger.tables import ENTRY
from frywright.ledger.terms import TERMS
from frywright.model.entry import DROPPED, Recorded
from frywright.model.errors import RecordError

if TYPE_CHECKING:
    from frywright.ledger.store import Store

SHORTEST = dt.timedelta(days=730)
"""No entry is emptied sooner: two years (21 CFR 117.315(a), from memory; it is written for plants). The
database itself refuses it too.
"""
MAY_GO = frozenset(cls.KIND for term in TERMS for cls in term.kinds)
NO_RIGHT = "42501"
"""What PostgreSQL answers to somebody who may not (SQLSTATE insufficient_privilege)."""
TOGETHER = 1000
"""Entries that one entry says were dropped."""
ENDS = "Entry {number} is empty, and no later entry says that it was dropped at the end of its time."
OTHER = "Entry {number} says which entries were dropped, and what is left of them is not what it says."
ALONE = "Entry {number} says which entries were dropped, and names no two people who did it."
SOON = (
    "Entry {number} was emptied, though its time is not over or its kind stays for ever; entry {by} says that"
    " it was dropped."
)


class Walk:
    """Empty entries that were met on a way along a chain, until an entry that says they were dropped."""

    def __init__(self) -> None:
        self._open: dict[int, Recorded] = {}

    def passed(self, items: Iterable[Recorded]) -> Iterator[Recorded]:
        """The same entries; at their end none that is empty may be left. Raises RecordError: an entry is
        empty and none says why, or another one than was dropped.
        """
        for item in items:
            if item.entry.kind == DROPPED:
                self._open[item.number] = item
            elif item.entry.kind == EntriesDropped.KIND:
                self._told(kept(item, EntriesDropped))
            yield item
        if self._open:
            raise RecordError(ENDS, number=min(self._open))

    def _told(self, by: Kept[EntriesDropped]) -> None:
        here = [self._open.pop(number) for number in by.fact.numbers if number in self._open]
        if here:  # a copy made before has them whole
            fits(by, here)


def fits(by: Kept[EntriesDropped], items: Sequence[Recorded]) -> None:
    """Whether entries are what an entry says was left, old enough and of kinds that may go.
    Raises RecordError: they are not.
    """
    kinds = [kind_before(i) if i.entry.kind == DROPPED else i.entry.kind for i in items]
    pairs = list(zip(items, kinds, strict=True))
    left = [digest_of(left_over(i, k, linked=linked) for i, k in pairs) for linked in (True, False)]
    if len(items) != by.fact.entries_count or by.fact.digest not in left:
        raise RecordError(OTHER, number=by.number)
    early = by.fact.before > (by.recorded_at - SHORTEST).date()
    for item, kind in zip(items, kinds, strict=True):
        newest = max(item.entry.happened_at, item.recorded_at).astimezone(dt.UTC).date()
        if early or newest >= by.fact.before or kind not in MAY_GO:
            raise RecordError(SOON, number=item.number, by=by.number)


class Told:
    """What a store says of entries that were dropped, for a walk along its chain in pieces."""

    def __init__(self, store: Store) -> None:
        self._store, self._checked = store, set[int]()
        found = [kept(item, EntriesDropped) for item in store.entries(EntriesDropped.KIND)]
        self._by = {number: item for item in found for number in item.fact.numbers if number < item.number}

    def check(self, number: int) -> None:
        """Whether an empty entry was dropped on record. Raises RecordError: it was not, or it is not what was
        left of it.
        """
        by = self._by.get(number)
        if by is None:
            raise RecordError(ENDS, number=number)
        if by.number not in self._checked:
            fits(by, list(entries_in(self._store, by.fact.stretches)))
            self._checked.add(by.number)


def entries_in(store: Store, stretches: Iterable[tuple[int, int]]) -> Iterator[Recorded]:
    """Entries of stretches of numbers."""
    for first, last in stretches:
        for item in store.entries(after=first - 1, block=last - first + 1):
            if item.number > last:
                break
            yield item


def follow(there: Store, by: Kept[EntriesDropped], now: dt.datetime) -> int:
    """Empty in a copy what its own record says was dropped where it is kept; how many entries were. In the
    block that took that entry, so that nobody who remembers what he read misses it. Raises RecordError: it
    does not fit what is here, names no two people, or something is too young by the clock here: everything
    stays whole.
    """
    items = list(entries_in(there, by.fact.stretches))
    whole = [item for item in items if item.entry.kind != DROPPED]
    if not whole:
        return 0
    if not by.fact.who or not by.fact.second or by.fact.who == by.fact.second:
        raise RecordError(ALONE, number=by.number)
    fits(by, items)
    for item in whole:
        if max(item.entry.happened_at, item.recorded_at) > now - SHORTEST:
            raise RecordError(SOON, number=item.number, by=by.number)
    with there.home.writing() as writer, writer.connection.begin_nested():
        empty(writer.connection, there.site, whole)
    return len(whole)


def empty(connection: sa.Connection, site: str, items: Iterable[Recorded]) -> None:
    """Empty entries, in the block that says they were dropped. Raises RecordError: the database lets this
    program alter nothing.
    """
    change = (
        ENTRY.update()
        .where(ENTRY.c.site == site, ENTRY.c.number == sa.bindparam("at"))
        .values(kind=DROPPED, author="", payload=sa.bindparam("left"), versions="{}")
    )
    rows = [{"at": item.number, "left": emptied(item.entry.kind)} for item in items]
    try:
        connection.execute(change, rows)
    except sa.exc.ProgrammingError as error:
        if getattr(error.orig, "sqlstate", "") != NO_RIGHT:
            raise
        raise RecordError(
            "This account of the database may empty no entry. Drop entries on the terminal, with the account"
            " that owns the database."
        ) from error
