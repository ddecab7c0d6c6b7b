"""What was read of a store before. One small question a look finds what is new since; the rest is kept.

Entries are only ever added, so facts read once stay as they are, but for names that are removed and entries
that are dropped at the end of their time. Another
program may have added some, and a file may have been put in another one's place: each look asks for the
newest entry known, by number and hash, and for those after it. If that one is not there as it was, a name
was removed or entries were dropped, everything is read anew.
"""

from __future__ import annotations

import json
from bisect import bisect_left, bisect_right, insort
from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from itertools import islice
from threading import Lock, RLock
from typing import Any, Generic, TypeAlias

import sqlalchemy as sa

from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.facts.fact import F, Kept, kept
from frywright.ledger.names import named_rows
from frywright.ledger.tables import ENTRY, PERSON
from frywright.model.entry import GENESIS, Entry, Recorded, unstamp
from frywright.model.errors import RecordError

TAIL_COUNT = 10_000
"""Newest entries of a kind that are kept; one with fewer, or asked for from its first, is kept whole."""
MOST_KEPT = 120_000
"""Entries kept by one process, of all its kitchens together: about 150 MB (own estimate)."""
UNREADABLE = "Entry {number} cannot be read: it was changed outside the program."
MOST_NEW = 5000
"""More new entries than this at one look, and everything is read anew."""

_HERE: sa.BindParameter[str] = sa.bindparam("here")
_KIND: sa.BindParameter[str] = sa.bindparam("kind")
_FROM: sa.BindParameter[int] = sa.bindparam("from")
_UP_TO: sa.BindParameter[int] = sa.bindparam("up_to")
_MOST: sa.BindParameter[int] = sa.bindparam("most")
_MINE, _KNOWN = ENTRY.c.site == _HERE, ENTRY.c.number <= _UP_TO
_GONE = sa.select(sa.func.count()).where(PERSON.c.removed_on != "").scalar_subquery().label("gone")
"""Names that were removed: facts read before may still have them."""
_SINCE = (
    sa.select(ENTRY.c.number, ENTRY.c.kind, ENTRY.c.replaces, ENTRY.c.hash, _GONE)
    .where(_MINE, ENTRY.c.number >= _FROM)
    .order_by(ENTRY.c.number)
    .limit(_MOST)
)
_LAST = sa.select(ENTRY.c.number, ENTRY.c.hash, _GONE).where(_MINE).order_by(ENTRY.c.number.desc()).limit(1)
_NEWEST = sa.select(sa.func.max(ENTRY.c.number)).where(_MINE, _KNOWN, ENTRY.c.kind == _KIND)
_REPLACED = sa.select(ENTRY.c.replaces).where(_MINE, _KNOWN, ENTRY.c.replaces.is_not(None))
_OF_KIND = (
    sa.select(ENTRY)
    .where(_MINE, _KNOWN, ENTRY.c.kind == _KIND, ENTRY.c.number > _FROM)
    .order_by(ENTRY.c.number.desc())
    .limit(_MOST)
)


def recorded(row: Any) -> Recorded:
    """A row as the entry it holds. Raises RecordError: it holds none: somebody changed it."""
    try:
        entry = Entry(
            kind=row.kind,
            happened_at=unstamp(row.happened_at),
            author=row.author,
            payload=dict(json.loads(row.payload)),
            replaces=row.replaces,
            versions=dict(json.loads(row.versions)),
        )
        recorded_at = unstamp(row.recorded_at)
    except (ValueError, TypeError, RecursionError) as error:
        raise RecordError(UNREADABLE, number=row.number) from error
    return Recorded(
        number=row.number,
        entry=entry,
        recorded_at=recorded_at,
        previous_hash=row.previous_hash,
        hash=row.hash,
    )


class _Kept(Generic[F]):
    """A row, and its fact from the first time that somebody asks for it."""

    __slots__ = ("_fact", "_row", "happened", "number")

    def __init__(self, row: Any) -> None:
        self.number: int = row.number
        self.happened: str = row.happened_at
        self._row: Any = row
        self._fact: Kept[F] | None = None

    def fact(self, cls: type[F]) -> Kept[F]:
        """The fact."""
        row, found = self._row, self._fact  # in this order: another thread may let the row go meanwhile
        if found is None:
            found = self._fact = kept(recorded(row), cls)
            self._row = None
        return found


_Moment: TypeAlias = tuple[str, int, _Kept[F]]
"""When it happened, its number, and the fact itself."""


@dataclass(frozen=True, slots=True)
class Tail(Generic[F]):
    """The newest facts of a kind, oldest first, up to an entry; ``whole`` where there are no older ones."""

    cls: type[F]
    items: tuple[_Kept[F], ...]
    whole: bool
    up_to: int
    asked_whole: bool = False
    """Somebody asks for its first facts: it stays whole however long it grows."""
    by_time: list[list[_Moment[F]]] = field(default_factory=list, compare=False, repr=False)
    """All of them by when they happened, from the first time that somebody asks for a span."""

    def facts(self, after: int = 0) -> Iterator[Kept[F]]:
        """Oldest first, after a number."""
        begin = bisect_right(self.items, after, key=lambda item: item.number) if after else 0
        return (item.fact(self.cls) for item in islice(self.items, begin, None))

    def newest_first(self, before: int | None = None) -> Iterator[Kept[F]]:
        """Newest first, before a number."""
        return (x.fact(self.cls) for x in reversed(self.items) if before is None or x.number < before)

    def between(self, low: str, high: str) -> list[Kept[F]]:
        """Those of a span of moments, in order of when they happened."""
        if not self.by_time:
            self.by_time[:] = [sorted((item.happened, item.number, item) for item in self.items)]
        order = self.by_time[0]
        begin, end = (bisect_left(order, moment, key=_moment) for moment in (low, high))
        return [item.fact(self.cls) for _, _, item in order[begin:end]]

    def with_more(self, new: tuple[_Kept[F], ...], up_to: int) -> Tail[F]:
        """The same, with newer ones at its end."""
        by_time = [order.copy() for order in self.by_time]
        for order in by_time:
            for item in new:
                insort(order, (item.happened, item.number, item))
        return Tail(self.cls, self.items + new, self.whole, up_to, self.asked_whole, by_time)

    @property
    def first(self) -> int:
        """Number of its oldest fact; facts from there on are all here."""
        return 0 if self.whole else self.items[0].number


By: TypeAlias = Callable[[F], Any]
"""What is asked of a fact: its key, or what says which of two is the newer one. A function of a module: it is
known again by itself.
"""


@dataclass(frozen=True, slots=True)
class _Newest(Generic[F]):
    """The newest fact of each key, up to an entry; so many entries had been replaced by then."""

    items: dict[Hashable, Kept[F]]
    up_to: int
    replaced_count: int


def newest_of(
    items: Iterable[Kept[F]], key: By[F], by: By[F] | None, known: Mapping[Hashable, Kept[F]] | None = None
) -> dict[Hashable, Kept[F]]:
    """The newest fact of each key among those known and these, oldest first; no key (None) leaves one out."""
    found = dict(known or {})
    for item in items:
        name = key(item.fact)
        older = found.get(name) if by else None
        if name is not None and (older is None or by is None or by(item.fact) >= by(older.fact)):
            found[name] = item
    return found


def _moment(told: _Moment[Any]) -> str:
    return told[0]


_TAILS: OrderedDict[tuple[Memory, type[Any]], Tail[Any]] = OrderedDict()
_TURN = Lock()
"""Guards what all memories of this process keep together."""


class Memory:
    """What this process knows of one kitchen's entries, up to the newest one it has seen."""

    def __init__(self, site: str) -> None:
        self._site, self._last, self._turn = site, (0, GENESIS), RLock()
        self._newest: dict[str, int] = {}
        self._gone = 0
        self._replaced: set[int] | None = None
        self._by: dict[tuple[type[Any], By[Any], By[Any] | None], _Newest[Any]] = {}

    def look(self, connection: sa.Connection) -> None:
        """Find what is new, or see that the store is another one than before."""
        with self._turn:
            number, link = self._last
            known = {"here": self._site, "from": number, "most": MOST_NEW}
            rows = connection.execute(_SINCE, known).all() if number else []
            same = bool(rows) and (rows[0].number, rows[0].hash, rows[0].gone) == (number, link, self._gone)
            if not same or len(rows) == MOST_NEW or any(r.kind == EntriesDropped.KIND for r in rows[1:]):
                self._forget(connection)
                return
            for row in rows[1:]:
                if row.kind in self._newest:
                    self._newest[row.kind] = row.number
                if row.replaces is not None and self._replaced is not None:
                    self._replaced.add(row.replaces)
            self._last = rows[-1].number, rows[-1].hash

    def _forget(self, connection: sa.Connection) -> None:
        row = connection.execute(_LAST, {"here": self._site}).first()
        self._last = (row.number, row.hash) if row else (0, GENESIS)
        self._newest, self._replaced, self._gone = {}, None, row.gone if row else 0
        self._by = {}
        with _TURN:
            for key in [key for key in _TAILS if key[0] is self]:
                del _TAILS[key]

    def newest(self, connection: sa.Connection, kinds: tuple[str, ...]) -> int:
        """Number of the newest entry of any of these kinds, 0 where there is none."""
        with self._turn:
            for kind in kinds:
                if kind not in self._newest:
                    asked = {"here": self._site, "kind": kind, "up_to": self._last[0]}
                    self._newest[kind] = connection.execute(_NEWEST, asked).scalar() or 0
            return max((self._newest[kind] for kind in kinds), default=0)

    def replaced(self, connection: sa.Connection) -> set[int]:
        """Numbers of the entries that another one replaced."""
        with self._turn:
            if self._replaced is None:
                asked = {"here": self._site, "up_to": self._last[0]}
                self._replaced = set(connection.execute(_REPLACED, asked).scalars())
            return self._replaced

    def tail(self, connection: sa.Connection, cls: type[F], *, whole: bool = False) -> Tail[F]:
        """The newest facts of a class, or all of them."""
        key = self, cls
        with self._turn:
            newest, begun = self.newest(connection, (cls.KIND,)), self._found(key)
            found = self._longer(connection, begun, newest) if newest > begun.up_to else begun
            if whole and not found.whole:
                asked = {"here": self._site, "kind": cls.KIND, "from": 0, "up_to": found.first - 1}
                rows = connection.execute(_OF_KIND, {**asked, "most": newest}).all()
                older = tuple(_Kept[F](row) for row in reversed(rows))
                found = Tail(cls, older + found.items, True, newest, True)
            if found is not begun:
                self._keep(key, found)
            return found

    def current(self, connection: sa.Connection, cls: type[F]) -> list[Kept[F]]:
        """Facts of a class that nothing has replaced, oldest first."""
        tail, replaced = self.tail(connection, cls, whole=True), self.replaced(connection)
        return [item.fact(cls) for item in tail.items if item.number not in replaced]

    def newest_by(
        self, connection: sa.Connection, cls: type[F], key: By[F], by: By[F] | None
    ) -> Mapping[Hashable, Kept[F]]:
        """The newest fact of each key, of those that nothing has replaced; only what is new is looked at."""
        with self._turn:
            replaced, tail = self.replaced(connection), self.tail(connection, cls, whole=True)
            none: _Newest[F] = _Newest({}, 0, len(replaced))
            old = self._by.get((cls, key, by), none)
            if old.replaced_count != len(replaced) and any(e.number in replaced for e in old.items.values()):
                old = none
            if (old.up_to, old.replaced_count) != (tail.up_to, len(replaced)):
                new = (item for item in tail.facts(old.up_to) if item.number not in replaced)
                old = _Newest(newest_of(new, key, by, old.items), tail.up_to, len(replaced))
                self._by[cls, key, by] = old
            return old.items

    @staticmethod
    def _found(key: tuple[Memory, type[F]]) -> Tail[F]:
        with _TURN:
            if key in _TAILS:
                _TAILS.move_to_end(key)
            return _TAILS.get(key) or Tail(key[1], (), True, 0)

    @staticmethod
    def _keep(key: tuple[Memory, type[F]], tail: Tail[F]) -> None:
        """Keep a tail; those not asked for longest make room."""
        with _TURN:
            _TAILS[key] = tail
            while len(_TAILS) > 1 and sum(len(t.items) for t in _TAILS.values()) > MOST_KEPT:
                _TAILS.popitem(last=False)

    def _longer(self, connection: sa.Connection, old: Tail[F], newest: int) -> Tail[F]:
        """A tail with what was added since."""
        asked = {"here": self._site, "kind": old.cls.KIND, "from": old.up_to, "up_to": newest}
        rows = named_rows(connection, connection.execute(_OF_KIND, {**asked, "most": TAIL_COUNT}).all())
        new = tuple(_Kept[F](row) for row in reversed(rows))
        if len(rows) == TAIL_COUNT:  # there may be some between the two
            return Tail(old.cls, new, False, newest)
        if len(old.items) + len(new) > 2 * TAIL_COUNT and not old.asked_whole:
            return Tail(old.cls, (*old.items, *new)[-TAIL_COUNT:], False, newest)
        return old.with_more(new, newest)
