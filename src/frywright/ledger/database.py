"""The database under a store: how it is opened and brought to the newest schema, and its faults in words."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Lock
from typing import Any

import sqlalchemy as sa
from sqlalchemy import event

from frywright.ledger.tables import METADATA
from frywright.model.errors import NotKeptError, RecordError

NEWEST_SCHEMA = "0013"
NO_FILE = (
    "{database} cannot be opened: {cause}. See that the disk has room and that this user may read and write"
    " there; the record itself was not touched."
)
NO_SERVER = (
    "{database} cannot be opened: {cause} See that its server runs and takes this user; the record itself was"
    " not touched."
)
LONGEST_QUEUE_S = 20.0
"""A writer that waits longer for its turn keeps nothing and says so (project's own rule)."""
KEPT_OPEN = 8
"""Connections to a file that a server keeps while it is busy; more are closed after their block (own
choice).
"""
WRITER_LOCK = 7_310_221
"""Number of the advisory lock under which PostgreSQL writers take turns."""


def opened(url: str, *, passing: bool = False) -> sa.Engine:
    """The engine of a database, at the newest schema. A file is opened for each block and closed after it, so
    that nothing lingers. One that is soon gone gets its tables at once, without the steps that led to them.
    Raises RecordError: it is no store, or one of a newer program.
    """
    try:
        engine = (
            _of_file(url, poolclass=sa.NullPool)
            if is_file(url)
            else sa.create_engine(url, pool_pre_ping=True, hide_parameters=True)
        )
    except ModuleNotFoundError as error:
        raise RecordError("A PostgreSQL store needs the extra: pip install 'frywright[postgres]'.") from error
    try:
        METADATA.create_all(engine) if passing else _upgrade(engine)
    except BaseException:
        engine.dispose()  # nobody will use it: no connection stays open behind
        raise
    return engine


def _of_file(url: str | sa.URL, **pool: Any) -> sa.Engine:
    engine = sa.create_engine(
        url,
        connect_args={"check_same_thread": False},
        hide_parameters=True,  # no log or error tells what was written
        **pool,
    )
    event.listen(engine, "connect", _prepare)
    return engine


def staying(url: sa.URL) -> tuple[sa.Engine, Callable[[], None]]:
    """The engine of a file whose connections stay open between blocks, and what closes them when nobody has
    used one since it was last called. One to a file that is no longer at its place is never used again.
    """
    engine, path = _of_file(url, pool_size=KEPT_OPEN, max_overflow=-1, pool_use_lifo=True), str(url.database)
    used = [0, 0]  # since the start; by the last call

    def opened_now(_connection: Any, record: Any) -> None:
        record.info["file"] = _which(path)

    def taken(_connection: Any, record: Any, _proxy: Any) -> None:
        used[0] += 1
        if record.info["file"] != _which(path):
            raise sa.exc.DisconnectionError("another file is in its place")

    def rest() -> None:
        if used[0] == used[1]:
            engine.dispose()
        used[1] = used[0]

    event.listen(engine, "connect", opened_now)
    event.listen(engine, "checkout", taken)
    return engine, rest


def _which(path: str) -> tuple[int, int] | None:
    """Which file lies at a path, None for none."""
    try:
        found = os.stat(path)
    except OSError:
        return None
    return found.st_dev, found.st_ino


def is_file(url: str) -> bool:
    """Whether a database is an SQLite file."""
    return sa.make_url(url).get_backend_name() == "sqlite"


def take_turn(connection: sa.Connection) -> None:
    """Begin to write: the next writer waits until this one is done."""
    if connection.dialect.name == "sqlite":
        connection.exec_driver_sql("BEGIN IMMEDIATE")
    else:
        connection.execute(sa.select(sa.func.pg_advisory_xact_lock(WRITER_LOCK)))


class Queue:
    """Where the writers of one program wait, so that none waits with a connection, or asks over and over for
    a lock that the others hold.
    """

    def __init__(self) -> None:
        self._turn = Lock()

    @contextmanager
    def turn(self) -> Iterator[None]:
        """Alone until the block ends; who waits too long gives up."""
        if not self._turn.acquire(timeout=LONGEST_QUEUE_S):
            raise sa.exc.TimeoutError("other writers took too long")
        try:
            yield
        finally:
            self._turn.release()


@contextmanager
def in_words(*, writing: bool) -> Iterator[None]:
    """A database that is away, full, locked or cannot be written is told in words. What is wrong with a
    statement stays a fault of ours.
    """
    try:
        yield
    except (sa.exc.IntegrityError, sa.exc.DataError, sa.exc.ProgrammingError, sa.exc.NotSupportedError):
        raise
    except sa.exc.DBAPIError as error:
        raise NotKeptError(error.orig or error, writing=writing) from error
    except sa.exc.TimeoutError as error:
        raise NotKeptError(error, writing=writing) from error


def _prepare(connection: Any, _record: Any) -> None:
    connection.isolation_level = None  # transactions are begun by us, at once for writing
    cursor = connection.cursor()
    for pragma in (
        "journal_mode=WAL",
        "synchronous=FULL",
        "foreign_keys=ON",
        "busy_timeout=10000",
        "secure_delete=ON",
    ):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _upgrade(engine: sa.Engine) -> None:
    try:
        with engine.connect() as connection:
            found = _schema(connection)
    except sa.exc.OperationalError as error:
        raise RecordError(
            NO_FILE if engine.dialect.name == "sqlite" else NO_SERVER,
            database=engine.url.database,
            cause=str(error.orig).strip(),
        ) from error
    except sa.exc.DatabaseError as error:
        raise RecordError(
            "{database} is not a store of ours: {cause}", database=engine.url.database, cause=error.orig
        ) from error
    if found is not None and found > NEWEST_SCHEMA:
        raise RecordError(
            "The store has schema {found}, newer than this program knows ({known}). Update the"
            " program; nothing was written.",
            found=found,
            known=NEWEST_SCHEMA,
        )
    if found != NEWEST_SCHEMA:
        from alembic import command
        from alembic.config import Config

        config = Config()
        config.set_main_option("script_location", str(Path(__file__).parent / "migrations"))
        with engine.begin() as connection:
            config.attributes["connection"] = connection
            command.upgrade(config, "head")


def _schema(connection: sa.Connection) -> str | None:
    if not sa.inspect(connection).has_table("alembic_version"):
        return None
    return connection.execute(sa.text("SELECT version_num FROM alembic_version")).scalar()
