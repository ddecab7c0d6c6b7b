"""The record of a kitchen that is kept elsewhere, copied here entry by entry against its own chain. What two
people dropped there at the end of its time is emptied here too.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from frywright.ledger.attachments import attachments_of
from frywright.ledger.checking import WITH_FILES, originals
from frywright.ledger.dropped import follow
from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.facts.fact import kept
from frywright.ledger.store import Point, Store
from frywright.model.entry import Recorded
from frywright.model.errors import RecordError


class ForkError(RecordError):
    """An entry that was sent is not the one of that number that is kept here."""

    def __init__(self, number: int, here: str, sent: str) -> None:
        self.number, self.here, self.sent = number, here, sent
        super().__init__(
            "Entry {number} is not the one that was sent before: the record was changed, or began anew.",
            number=number,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Taken:
    """Where the copy ends now, and original files that it names and that are not here yet."""

    end: Point
    wants: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Followed:
    """What of a copy was emptied, and what says that more was dropped and could not be followed, with why."""

    count: int
    left: tuple[tuple[int, RecordError], ...]


def take(store: Store, site: str, items: Sequence[Recorded], now: dt.datetime) -> Taken:
    """Add what follows of a kitchen's entries; what is here already is compared and not kept twice. What the
    new ones say was dropped is emptied, where that can be done. Raises ForkError: an entry differs from the
    one kept here. Raises RecordError: entries in between are missing, or one does not fit its chain: nothing
    is kept.
    """
    there = store.at(site)
    with store.home.writing() as home:
        end = there.last()
        for item in items:
            if item.number <= end.number:
                known = there.entry(item.number)
                if known is None or known.hash != item.hash:
                    raise ForkError(item.number, known.hash if known else "", item.hash)
        fresh = [item for item in items if item.number > end.number]
        home.at(site).extend(fresh)
        _followed(there, fresh, now)
        end = there.last()
    return Taken(end=end, wants=_missing(store, _named(items)))


def follow_all(store: Store, site: str, now: dt.datetime) -> Followed:
    """Empty in a kitchen's copy whatever its record says was dropped and is still whole here."""
    there = store.at(site)
    return _followed(there, there.entries(EntriesDropped.KIND), now)


def _followed(there: Store, items: Iterable[Recorded], now: dt.datetime) -> Followed:
    count, left = 0, list[tuple[int, RecordError]]()
    for item in items:
        if item.entry.kind == EntriesDropped.KIND:
            try:
                count += follow(there, kept(item, EntriesDropped), now)
            except RecordError as error:
                left.append((item.number, error))
    return Followed(count=count, left=tuple(left))


def standing(store: Store, site: str) -> Taken:
    """Where the copy of a kitchen ends, and every original file it still lacks."""
    there = store.at(site)
    return Taken(end=there.last(), wants=_missing(store, originals(there)))


def _named(items: Iterable[Recorded]) -> list[str]:
    """Original files that entries name."""
    known = {cls.KIND: cls for cls in WITH_FILES}
    facts = (kept(item, known[item.entry.kind]).fact for item in items if item.entry.kind in known)
    return [name for fact in facts for name in fact.originals]


def _missing(store: Store, names: Iterable[str]) -> tuple[str, ...]:
    folder = attachments_of(store).folder
    return tuple(sorted({name for name in names if not (folder / name).is_file()}))
