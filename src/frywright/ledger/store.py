"""The append-only store. ``with store.writing() as w`` is the only way to write.

Everything added inside one ``writing`` block is kept together when the block ends, or not at
all. Entries are numbered without gaps and chained by hash, so a change made behind the
program's back shows in :meth:`Store.verify`. SQLite in one file is the default; a PostgreSQL
database is named by its URL. Both behave alike.

A store may hold several kitchens. Each has entries and a chain of its own; :meth:`Store.at` is the same
store as one kitchen sees it.
"""

from __future__ import annotations

import datetime as dt
import os
import re
from collections.abc import Callable, Hashable, Iterator, Mapping
from contextlib import contextmanager, suppress
from contextvars import ContextVar
from copy import copy
from dataclasses import dataclass, field
from functools import lru_cache
from heapq import merge
from itertools import takewhile
from pathlib import Path
from tempfile import TemporaryDirectory
from threading import RLock
from typing import Any

import sqlalchemy as sa

from frywright.ledger.database import Queue, in_words, is_file, opened, staying, take_turn
from frywright.ledger.dropped import Told
from frywright.ledger.facts.fact import F, Kept, kept
from frywright.ledger.memory import By, Memory, newest_of, recorded
from frywright.ledger.names import named_rows
from frywright.ledger.tables import ENTRY
from frywright.ledger.writer import HOME, Writer
from frywright.model.entry import DROPPED, GENESIS, Recorded, row_hash, stamp
from frywright.model.errors import InputError, RecordError

READ_BLOCK, LARGEST_NUMBER = 2000, 2**53
REMEMBERED = 10_000
"""Rows whose facts stay in memory, about 20 MB."""
SEALED_FILE = "A kitchen file keeps no records; nothing was written. Name a store with --store."
SEALED_COPY = (
    "This is the copy of a kitchen that keeps its own record elsewhere. Nothing was written: act there."
)
KEY = re.compile(r"[a-z0-9_]{1,40}")
"""Key of any other kitchen."""
FILES_SETTING = "FRYWRIGHT_FILES"
"""Environment variable: folder of original files beside a PostgreSQL store."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Point:
    """A place in the chain that was checked: entries up to ``number`` fit, the last one's hash."""

    number: int = 0
    hash: str = GENESIS


@dataclass(slots=True)
class _Look:
    """The connection that reads share."""

    lock: RLock = field(default_factory=RLock)
    connection: sa.Connection | None = None
    over: bool = False
    fresh: set[str] = field(default_factory=set)
    """Kitchens whose memory was looked after in this look."""

    def end(self) -> None:
        """Let the connection go; whoever reads on opens one of their own."""
        with self.lock:
            self.over = True
            if self.connection is not None:
                self.connection.close()
                self.connection = None


class Store:
    """A file or database of entries."""

    def __init__(self, url: str, now: Callable[[], dt.datetime], *, passing: bool = False) -> None:
        self._now, self.sealed, self.site = now, "", HOME
        self._open: ContextVar[Writer | None] = ContextVar("writer", default=None)
        self._held: ContextVar[_Look | None] = ContextVar("look", default=None)
        self._queue, self._memory = Queue(), Memory(HOME)
        self._sites: dict[str, Store] = {HOME: self}
        self.sqlite = is_file(url)
        self.engine = opened(url, passing=passing)

    def at(self, site: str) -> Store:
        """The same store as one of its kitchens sees it: its entries, its chain, its drafts. Accounts and
        original files belong to the whole store. Raises InputError: the key is none: small letters, digits
        and ``_``, 40 at most.
        """
        found = self._sites.get(site)
        if found is None:
            if not KEY.fullmatch(site):
                raise InputError("kitchen", repr(site), "a key of small letters, digits and _, 40 at most")
            found = copy(self)
            found.site, found._memory = site, Memory(site)
            found = self._sites.setdefault(site, found)
        return found

    def sites(self) -> tuple[str, ...]:
        """Keys of the kitchens that have entries, the first kitchen always."""
        with self.looking() as connection:
            found = connection.execute(sa.select(ENTRY.c.site).distinct()).scalars().all()
        return tuple(sorted({HOME, *found}))

    @property
    def home(self) -> Store:
        """The store as its first kitchen sees it; what concerns all kitchens is written there."""
        return self._sites[HOME]

    @classmethod
    def file(cls, path: Path, now: Callable[[], dt.datetime]) -> Store:
        """Open or create an SQLite store at ``path``."""
        path.parent.mkdir(parents=True, exist_ok=True)
        with suppress(OSError):
            path.touch(mode=0o600, exist_ok=False)  # a new store is its owner's alone
        return cls(f"sqlite:///{path}", now)

    @classmethod
    @contextmanager
    def passing(cls, now: Callable[[], dt.datetime]) -> Iterator[Store]:
        """A store that is gone when its block ends."""
        with TemporaryDirectory(prefix="frywright-", ignore_cleanup_errors=True) as folder:
            yield cls(f"sqlite:///{folder}/passing.db", now, passing=True)

    @classmethod
    def named(cls, name: str, now: Callable[[], dt.datetime]) -> Store:
        """Open a store by the name people give it: a file, or the URL of a PostgreSQL database."""
        if "://" not in name:
            return cls.file(Path(name), now)
        if name.startswith(("postgresql://", "postgres://")):
            name = "postgresql+psycopg://" + name.split("://", 1)[1]
        if not name.startswith("postgresql+psycopg://"):
            raise RecordError(
                "{kind} is no store we know: name a file, or postgresql://user@host/database.",
                kind=name.split("://")[0],
            )
        return cls(name, now)

    def close(self) -> None:
        """Let go of connections kept open."""
        self.engine.dispose()

    def stay_open(self) -> Callable[[], None]:
        """Keep connections to a file between blocks, as a server does; what it gives is called now and then
        and lets go of them once nobody has used one since the last call.
        """
        if not self.sqlite:
            return lambda: None
        self.close()
        engine, rest = staying(self.engine.url)
        for one in self._sites.values():
            one.engine = engine
        return rest

    @property
    def files(self) -> Path:
        """Folder of original files: beside an SQLite store; for PostgreSQL the one that ``FRYWRIGHT_FILES``
        names. None is guessed: a backup made from another folder would miss them. Raises RecordError: a
        PostgreSQL store, and the folder is not named.
        """
        if self.sqlite:
            return Path(f"{self.engine.url.database}.files")
        named = os.environ.get(FILES_SETTING)
        if not named:
            raise RecordError(
                "Say where the original files of this database lie: set {name} to a folder, the same for"
                " every program that uses it.",
                name=FILES_SETTING,
            )
        return Path(named)

    @contextmanager
    def writing(self) -> Iterator[Writer]:
        """One transaction; kept when the block ends, undone when it raises. Writers take turns; a block
        inside a block belongs to the outer one. A sealed store takes nothing, and says why.
        """
        if self.sealed:
            raise RecordError(self.sealed)
        outer = self._open.get()
        if outer is not None:
            yield outer.at(self.site)
            return
        with in_words(writing=True), self._queue.turn(), self.engine.connect() as connection:
            take_turn(connection)
            writer = Writer(connection, self._now, self.site)
            mark = self._open.set(writer)
            try:
                yield writer
            except BaseException:
                connection.rollback()
                raise
            finally:
                self._open.reset(mark)
            connection.commit()
        look = self._held.get()
        if look is not None:
            look.fresh.clear()

    @contextmanager
    def reading(self) -> Iterator[Callable[[], None]]:
        """All reads inside share one connection, opened by the first. Facts are those of the first look at
        them, with what is written inside; everything else is read as it is at that moment. What it gives
        lets the connection go before the block ends.
        """
        held = self._held.get()
        if held is not None:
            yield held.end
            return
        look = _Look()
        mark = self._held.set(look)
        try:
            yield look.end
        finally:
            self._held.reset(mark)
            look.end()

    @contextmanager
    def looking(self) -> Iterator[sa.Connection]:
        """A connection to read with: inside :meth:`writing` the writer's own, so that an act sees what it
        wrote; else the one of :meth:`reading`, else one of its own.
        """
        writer = self._open.get()
        if writer is not None:
            yield writer.connection
            return
        look = self._held.get()
        if look is None or look.over:  # an answer that is sent in pieces reads on after its request
            with in_words(writing=False), self.engine.connect() as connection:
                yield connection
            return
        with in_words(writing=False), look.lock:
            if look.over:
                with self.engine.connect() as connection:
                    yield connection
                return
            if look.connection is None:
                look.connection = self.engine.connect()
            try:
                yield look.connection
            finally:
                look.connection.rollback()  # nothing is held between two reads

    @property
    def _mine(self) -> sa.ColumnElement[bool]:
        """Entries of this kitchen."""
        return ENTRY.c.site == self.site

    def has_unkept(self) -> bool:
        """Whether this block has written here what is not kept yet."""
        writer = self._open.get()
        mine = writer.others.get(self.site) if writer is not None else None
        return mine is not None and mine.wrote

    @contextmanager
    def _remembering(self) -> Iterator[sa.Connection | None]:
        """A connection to read with and the memory up to date; None inside a block that has written here:
        what it added is not kept yet, and in no memory.
        """
        with self.looking() as connection:
            writer, look = self._open.get(), self._held.get()
            if self.has_unkept():
                yield None
                return
            fresh = writer.fresh if writer is not None else look.fresh if look and not look.over else set()
            if self.site not in fresh:
                self._memory.look(connection)
                fresh.add(self.site)
            yield connection

    def newest(self, *kinds: str) -> int:
        """Number of the newest entry of any of these kinds, 0 where there is none."""
        with self._remembering() as connection:
            if connection is not None:
                return self._memory.newest(connection, kinds)
        query = sa.select(sa.func.max(ENTRY.c.number)).where(self._mine, ENTRY.c.kind.in_(kinds))
        with self.looking() as connection:
            return connection.execute(query).scalar() or 0

    def entries(
        self,
        kind: str | None = None,
        *,
        newest_first: bool = False,
        after: int | None = None,
        named: bool = False,
        block: int = READ_BLOCK,
    ) -> Iterator[Recorded]:
        """Entries in order of number, read in blocks so that memory stays bounded; ``after`` a number, or
        before it when newest come first. They are as they were hashed: people stand in them by reference,
        unless ``named``. Who wants a few reads them in a smaller ``block``.
        """
        return (recorded(row) for row in self._rows(kind, newest_first, after, (named, block)))

    def _rows(
        self,
        kind: str | None,
        newest_first: bool,
        after: int | None,
        how: tuple[bool, int] = (False, READ_BLOCK),
    ) -> Iterator[Any]:
        named, most = how
        while True:
            order = ENTRY.c.number.desc() if newest_first else ENTRY.c.number
            query = sa.select(ENTRY).where(self._mine).order_by(order).limit(most)
            if kind is not None:
                query = query.where(ENTRY.c.kind == kind)
            if after is not None:
                query = query.where(ENTRY.c.number < after if newest_first else ENTRY.c.number > after)
            with self.looking() as connection:
                block = connection.execute(query).all()
                told = named_rows(connection, block) if named else block
            yield from told
            if len(block) < most:
                return
            after = block[-1].number

    def between(
        self, since: dt.datetime, until: dt.datetime, kind: str | None = None, before: int = LARGEST_NUMBER
    ) -> Iterator[Recorded]:
        """Entries that happened in a span, by when they happened, read in blocks; those before a number."""
        low, last, mine = stamp(since), 0, sa.and_(self._mine, ENTRY.c.number < before)
        while True:
            place = sa.or_(
                ENTRY.c.happened_at > low, sa.and_(ENTRY.c.happened_at == low, ENTRY.c.number > last)
            )
            query = sa.select(ENTRY).where(
                mine, ENTRY.c.happened_at >= low, place, ENTRY.c.happened_at < stamp(until)
            )
            if kind is not None:
                query = query.where(ENTRY.c.kind == kind)
            query = query.order_by(ENTRY.c.happened_at, ENTRY.c.number).limit(READ_BLOCK)
            with self.looking() as connection:
                block = connection.execute(query).all()
                told = named_rows(connection, block)
            yield from (recorded(row) for row in told)
            if len(block) < READ_BLOCK:
                return
            low, last = block[-1].happened_at, block[-1].number

    def current(self, kind: str) -> list[Recorded]:
        """Entries of a kind that nothing has replaced, oldest first."""
        newer = ENTRY.alias()
        query = (
            sa.select(ENTRY)
            .outerjoin(newer, sa.and_(newer.c.site == ENTRY.c.site, newer.c.replaces == ENTRY.c.number))
            .where(self._mine, ENTRY.c.kind == kind, newer.c.number.is_(None))
            .order_by(ENTRY.c.number)
        )
        with self.looking() as connection:
            return [recorded(row) for row in named_rows(connection, connection.execute(query).all())]

    def entry(self, number: int, *, named: bool = False) -> Recorded | None:
        """The entry of a number, or None; as it was hashed, unless ``named``."""
        return self._one(ENTRY.c.number == number, named) if 0 < number <= LARGEST_NUMBER else None

    def _one(self, which: sa.ColumnElement[bool], named: bool) -> Recorded | None:
        with self.looking() as connection:
            rows = connection.execute(sa.select(ENTRY).where(self._mine, which)).all()
            told = named_rows(connection, rows) if named else rows
        return recorded(told[0]) if told else None

    def facts(
        self, cls: type[F], *, newest_first: bool = False, after: int | None = None
    ) -> Iterator[Kept[F]]:
        """Facts of a class, as :meth:`entries`; what was read before is not read again."""
        with self._remembering() as connection:
            tail = self._memory.tail(connection, cls) if connection is not None else None
        if tail is None:
            yield from self._facts_read(cls, newest_first, after)
        elif newest_first:
            yield from tail.newest_first(after)
            if not tail.whole:
                older = tail.first if after is None else min(tail.first, after)
                yield from self._facts_read(cls, True, older)
        else:
            older_ones = self._facts_read(cls, False, after) if (after or 0) + 1 < tail.first else iter(())
            yield from takewhile(lambda item: item.number < tail.first, older_ones)
            yield from tail.facts(after or 0)

    def _facts_read(self, cls: type[F], newest_first: bool, after: int | None) -> Iterator[Kept[F]]:
        rows = self._rows(cls.KIND, newest_first, after, (True, READ_BLOCK))
        return (_fact(row, cls) for row in rows)  # type: ignore[arg-type]

    def facts_between(self, since: dt.datetime, until: dt.datetime, cls: type[F]) -> Iterator[Kept[F]]:
        """Facts of a class that happened in a span, as :meth:`between`."""
        with self._remembering() as connection:
            tail = self._memory.tail(connection, cls) if connection is not None else None
        before = LARGEST_NUMBER if tail is None else tail.first
        older = self.between(since, until, cls.KIND, before=before) if before else ()
        newer = tail.between(stamp(since), stamp(until)) if tail is not None else ()
        yield from merge((kept(item, cls) for item in older), newer, key=lambda e: (e.happened_at, e.number))

    def current_facts(self, cls: type[F]) -> list[Kept[F]]:
        """Facts of a class that nothing has replaced, oldest first."""
        with self._remembering() as connection:
            if connection is not None:
                return self._memory.current(connection, cls)
        return [kept(item, cls) for item in self.current(cls.KIND)]

    def newest_by(self, cls: type[F], key: By[F], by: By[F] | None = None) -> Mapping[Hashable, Kept[F]]:
        """The newest fact of a class for each key, of those that nothing has replaced. What it is made of is
        kept, so that it takes no longer in a long record.

        Parameters
        ----------
        key : function of a module; what a fact is newest of, None leaves it out
        by : function of a module; which of two is the newer, else the one entered later
        """
        with self._remembering() as connection:
            if connection is not None:
                return self._memory.newest_by(connection, cls, key, by)
        return newest_of(self.current_facts(cls), key, by)

    def fact(self, number: int, cls: type[F]) -> Kept[F] | None:
        """The fact of a number, or None where there is none of its class."""
        item = self.entry(number, named=True)
        return kept(item, cls) if item is not None and item.entry.kind == cls.KIND else None

    def replaced_by(self, number: int) -> Recorded | None:
        """The entry that replaced another, with its names, or None."""
        return self._one(ENTRY.c.replaces == number, True) if 0 < number <= LARGEST_NUMBER else None

    def last(self) -> Point:
        """Number and hash of the newest entry, unchecked."""
        newest = sa.select(ENTRY.c.number, ENTRY.c.hash).where(self._mine)
        query = newest.order_by(ENTRY.c.number.desc()).limit(1)
        with self.looking() as connection:
            row = connection.execute(query).first()
        return Point(number=row.number, hash=row.hash) if row else Point()

    def verify(self, since: Point | None = None) -> tuple[int, str]:
        """Walk the chain from its start, or from a place already checked; number of entries and the last
        hash. Raises RecordError: names the first entry whose number, content or link does not fit.
        """
        point = self.verify_piece(since or Point(), None)
        return point.number, point.hash

    def verify_piece(self, point: Point, most: int | None) -> Point:
        """Walk on from a place already checked, at most so many entries; the place reached.
        Raises RecordError: as :meth:`verify`.
        """
        count, previous = point.number, point.hash
        told: Told | None = None
        while most is None or count < point.number + most:
            size = READ_BLOCK if most is None else min(READ_BLOCK, point.number + most - count)
            later = sa.select(ENTRY).where(self._mine, ENTRY.c.number > count)
            query = later.order_by(ENTRY.c.number).limit(size)
            with self.looking() as connection:
                block = connection.execute(query).all()
            for row in block:
                count += 1
                who, stamps = (row.kind, row.author, row.replaces), (row.happened_at, row.recorded_at)
                found = row_hash(previous, row.number, who, stamps, (row.payload, row.versions))
                if row.kind == DROPPED and row.previous_hash == previous:
                    told = told or Told(self)
                    told.check(row.number)
                    found = row.hash
                if row.number != count or row.previous_hash != previous or found != row.hash:
                    raise RecordError(
                        "The chain breaks at entry {number}: it was changed, removed or added outside the"
                        " program.",
                        number=row.number,
                    )
                previous = row.hash
            if len(block) < size:
                break
        return Point(number=count, hash=previous)


@lru_cache(REMEMBERED)
def _fact(row: sa.Row[Any], cls: type[F]) -> Kept[F]:
    """The fact of a row, by all that stands in it."""
    return kept(recorded(row), cls)
