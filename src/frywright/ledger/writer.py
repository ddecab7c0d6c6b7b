"""The one that writes: appends entries of a kitchen to its chain, inside one ``writing`` block."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Sequence
from typing import Any

import sqlalchemy as sa

from frywright.ledger.tables import ENTRY
from frywright.model.entry import DROPPED, GENESIS, Entry, Recorded, canonical, chain_hash, stamp
from frywright.model.errors import RecordError

HOME = ""
"""Key of the kitchen a store begins with."""
_HERE: sa.BindParameter[str] = sa.bindparam("here")
_LAST = (
    sa.select(ENTRY.c.number, ENTRY.c.hash)
    .where(ENTRY.c.site == _HERE)
    .order_by(ENTRY.c.number.desc())
    .limit(1)
)
_INSERT = ENTRY.insert()
"""Asked at every write, so they are built once."""


class Writer:
    """Adds entries of one kitchen inside one ``writing`` block."""

    def __init__(self, connection: sa.Connection, now: Callable[[], dt.datetime], site: str = HOME) -> None:
        self.connection, self._now, self._site = connection, now, site
        self.others: dict[str, Writer] = {site: self}
        self.fresh: set[str] = set()
        """Kitchens whose memory was looked after in this block; nobody else adds to them meanwhile."""
        last = connection.execute(_LAST, {"here": site}).first()
        self._number: int = last.number if last else 0
        self._hash: str = last.hash if last else GENESIS
        self._begun = self._number

    @property
    def wrote(self) -> bool:
        """Whether this block has added an entry here."""
        return self._number > self._begun

    def at(self, site: str) -> Writer:
        """The writer of another kitchen, in the same block."""
        if site not in self.others:
            made = self.others[site] = Writer(self.connection, self._now, site)
            made.others = self.others
        return self.others[site]

    def add(self, entry: Entry) -> Recorded:
        """Append an entry. Raises RecordError: the entry replaces one that does not exist or was replaced
        already; the message names the entry that did.
        """
        return self._append(entry, self._now())

    def extend(self, items: Sequence[Recorded]) -> None:
        """Append entries of a backup or of a kitchen elsewhere as they were; they must be the next links of
        the same chain. Raises RecordError: a number, a link or a content does not fit, or one replaces what
        is not there or was replaced: nothing of this block is kept.
        """
        rows, number, link = [], self._number, self._hash
        for item in items:
            if item.number != number + 1 or item.previous_hash != link:
                raise RecordError(
                    "Entry {number} of the copy does not follow entry {last}; nothing of this block was"
                    " written.",
                    number=item.number,
                    last=number,
                )
            whole = item.entry.kind != DROPPED  # of one that was dropped, a later entry tells
            if whole and chain_hash(link, number + 1, item.entry, item.recorded_at) != item.hash:
                raise RecordError(
                    "Entry {number} of the copy was changed: its hash does not fit.", number=item.number
                )
            if item.entry.replaces is not None and not 0 < item.entry.replaces <= number:
                raise _replaces_nothing(item.entry.replaces)
            rows.append(self._row(item))
            number, link = item.number, item.hash
        if rows:
            try:
                self.connection.execute(ENTRY.insert(), rows)
            except sa.exc.IntegrityError as error:
                raise RecordError(
                    "Two entries of the copy replace the same one; nothing of this block was written."
                ) from error
        self._number, self._hash = number, link

    def _row(self, item: Recorded) -> dict[str, Any]:
        """An entry as its row."""
        entry = item.entry
        return {
            "site": self._site,
            "number": item.number,
            "kind": entry.kind,
            "happened_at": stamp(entry.happened_at),
            "recorded_at": stamp(item.recorded_at),
            "author": entry.author,
            "payload": canonical(dict(entry.payload)),
            "replaces": entry.replaces,
            "versions": canonical(dict(entry.versions)),
            "previous_hash": item.previous_hash,
            "hash": item.hash,
        }

    def _append(self, entry: Entry, recorded_at: dt.datetime) -> Recorded:
        if entry.replaces is not None:
            self._check_replaced(entry.replaces)
        number = self._number + 1
        link = chain_hash(self._hash, number, entry, recorded_at)
        done = Recorded(
            number=number, entry=entry, recorded_at=recorded_at, previous_hash=self._hash, hash=link
        )
        self.connection.execute(_INSERT, self._row(done))
        self._number, self._hash = number, link
        return done

    def _check_replaced(self, number: int) -> None:
        if number > self._number or number < 1:
            raise _replaces_nothing(number)
        mine = sa.select(ENTRY.c.number).where(ENTRY.c.site == self._site, ENTRY.c.replaces == number)
        newer = self.connection.execute(mine).scalar()
        if newer is not None:
            raise RecordError(
                "Entry {number} was already replaced by entry {newer}. Look at both and replace {newer}"
                " instead.",
                number=number,
                newer=newer,
            )


def _replaces_nothing(number: int) -> RecordError:
    return RecordError("Entry {number} does not exist; nothing was written.", number=number)
