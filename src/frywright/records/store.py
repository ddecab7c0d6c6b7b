"""The append-only store. ``with store.writing() as w`` is the only way to write.

Everything added inside one ``writing`` block is kept together when the block ends, or not at
all. Entries are numbered without gaps and chained by hash, so a change made behind the
program's back shows in :meth:`Store.verify`.
"""

from __future__ import annotations

import datetime as dt
import json
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from sqlalchemy import event

from frywright.model.entry import GENESIS, Entry, Recorded, canonical, chain_hash, stamp
from frywright.model.errors import RecordError
from frywright.records.tables import ENTRY

NEWEST_SCHEMA = "0001"
READ_BLOCK = 2000


def _prepare(connection: Any, _record: Any) -> None:
    connection.isolation_level = None  # transactions are begun by us, at once for writing
    cursor = connection.cursor()
    for pragma in ("journal_mode=WAL", "synchronous=FULL", "foreign_keys=ON", "busy_timeout=10000"):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


class Writer:
    """Adds entries inside one ``writing`` block."""

    def __init__(self, connection: sa.Connection, now: Callable[[], dt.datetime]) -> None:
        self._connection, self._now = connection, now
        last = connection.execute(
            sa.select(ENTRY.c.number, ENTRY.c.hash).order_by(ENTRY.c.number.desc()).limit(1)
        ).first()
        self._number: int = last.number if last else 0
        self._hash: str = last.hash if last else GENESIS

    def add(self, entry: Entry) -> Recorded:
        """Append an entry.

        Raises
        ------
        RecordError
            The entry replaces one that does not exist or was replaced already; the message
            names the entry that did.
        """
        if entry.replaces is not None:
            self._check_replaced(entry.replaces)
        number, recorded_at = self._number + 1, self._now()
        link = chain_hash(self._hash, number, entry, recorded_at)
        self._connection.execute(ENTRY.insert().values(
            number=number, kind=entry.kind, happened_at=stamp(entry.happened_at),
            recorded_at=stamp(recorded_at), author=entry.author, payload=canonical(dict(entry.payload)),
            replaces=entry.replaces, versions=canonical(dict(entry.versions)),
            previous_hash=self._hash, hash=link,
        ))  # fmt: skip
        done = Recorded(number=number, entry=entry, recorded_at=recorded_at, previous_hash=self._hash, hash=link)
        self._number, self._hash = number, link
        return done

    def _check_replaced(self, number: int) -> None:
        if number > self._number or number < 1:
            raise RecordError(f"Entry {number} does not exist; nothing was written.")
        newer = self._connection.execute(sa.select(ENTRY.c.number).where(ENTRY.c.replaces == number)).scalar()
        if newer is not None:
            raise RecordError(
                f"Entry {number} was already replaced by entry {newer}. Look at both and replace {newer} instead."
            )


class Store:
    """A file or database of entries."""

    def __init__(self, url: str, now: Callable[[], dt.datetime]) -> None:
        self._now = now
        sqlite = sa.make_url(url).get_backend_name() == "sqlite"
        # A file is opened for each block and closed after it, so that nothing lingers.
        self.engine = sa.create_engine(url, poolclass=sa.NullPool) if sqlite else sa.create_engine(url)
        if sqlite:
            event.listen(self.engine, "connect", _prepare)
        self._upgrade()

    @classmethod
    def file(cls, path: Path, now: Callable[[], dt.datetime]) -> Store:
        """Open or create an SQLite store at ``path``."""
        path.parent.mkdir(parents=True, exist_ok=True)
        return cls(f"sqlite:///{path}", now)

    def _upgrade(self) -> None:
        try:
            with self.engine.connect() as connection:
                found = self._schema(connection)
        except sa.exc.DatabaseError as error:
            raise RecordError(f"{self.engine.url.database} is not a store of ours: {error.orig}") from error
        if found is not None and found > NEWEST_SCHEMA:
            raise RecordError(f"The store has schema {found}, newer than this program knows ({NEWEST_SCHEMA}). Update the program; nothing was written.")  # fmt: skip
        if found != NEWEST_SCHEMA:
            from alembic import command
            from alembic.config import Config

            config = Config()
            config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
            with self.engine.begin() as connection:
                config.attributes["connection"] = connection
                command.upgrade(config, "head")

    @staticmethod
    def _schema(connection: sa.Connection) -> str | None:
        if not sa.inspect(connection).has_table("alembic_version"):
            return None
        return connection.execute(sa.text("SELECT version_num FROM alembic_version")).scalar()

    @contextmanager
    def writing(self) -> Iterator[Writer]:
        """One transaction; kept when the block ends, undone when it raises."""
        with self.engine.connect() as connection:
            if self.engine.dialect.name == "sqlite":
                connection.exec_driver_sql("BEGIN IMMEDIATE")
            try:
                yield Writer(connection, self._now)
            except BaseException:
                connection.rollback()
                raise
            connection.commit()

    def entries(self, kind: str | None = None, *, newest_first: bool = False) -> Iterator[Recorded]:
        """Entries in order of number, read in blocks so that memory stays bounded."""
        after = None
        while True:
            order = ENTRY.c.number.desc() if newest_first else ENTRY.c.number
            query = sa.select(ENTRY).order_by(order).limit(READ_BLOCK)
            if kind is not None:
                query = query.where(ENTRY.c.kind == kind)
            if after is not None:
                query = query.where(ENTRY.c.number < after if newest_first else ENTRY.c.number > after)
            with self.engine.connect() as connection:
                block = connection.execute(query).all()
            yield from (_recorded(row) for row in block)
            if len(block) < READ_BLOCK:
                return
            after = block[-1].number

    def current(self, kind: str) -> list[Recorded]:
        """Entries of a kind that nothing has replaced, oldest first."""
        newer = ENTRY.alias()
        query = (
            sa.select(ENTRY)
            .outerjoin(newer, newer.c.replaces == ENTRY.c.number)
            .where(ENTRY.c.kind == kind, newer.c.number.is_(None))
            .order_by(ENTRY.c.number)
        )
        with self.engine.connect() as connection:
            return [_recorded(row) for row in connection.execute(query)]

    def verify(self) -> tuple[int, str]:
        """Walk the chain; number of entries and the last hash.

        Raises
        ------
        RecordError
            Names the first entry whose number, content or link does not fit.
        """
        previous, count = GENESIS, 0
        for item in self.entries():
            count += 1
            fits = item.number == count and item.previous_hash == previous
            if not fits or chain_hash(previous, item.number, item.entry, item.recorded_at) != item.hash:
                raise RecordError(f"The chain breaks at entry {item.number}: it was changed, removed or added outside the program.")  # fmt: skip
            previous = item.hash
        return count, previous


def _moment(text: str) -> dt.datetime:
    return dt.datetime.strptime(text, "%Y-%m-%dT%H:%M:%S.%fZ").replace(tzinfo=dt.UTC)


def _recorded(row: Any) -> Recorded:
    entry = Entry(
        kind=row.kind, happened_at=_moment(row.happened_at), author=row.author, payload=json.loads(row.payload),
        replaces=row.replaces, versions=json.loads(row.versions),
    )  # fmt: skip
    return Recorded(
        number=row.number, entry=entry, recorded_at=_moment(row.recorded_at),
        previous_hash=row.previous_hash, hash=row.hash,
    )  # fmt: skip
