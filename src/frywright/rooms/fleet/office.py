"""At the office: records that sites send, the anchors they sign for them, and what it released to each."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence

from frywright.ledger.anchors import compare, read_anchors
from frywright.ledger.checking import copies
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.fleet import (
    AnchorKept,
    ForkSeen,
    ProgramReleased,
    ReleaseArrived,
    WaveTold,
)
from frywright.ledger.replica import Followed, ForkError, Taken, follow_all, take
from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import AccessError, InputError, RecordError
from frywright.rooms.clock import now
from frywright.rooms.hall import in_turn, write

ANCHOR_EVERY = dt.timedelta(hours=12)
"""An office keeps an anchor of a site no more often than so (project's own rule)."""


def sender(store: Store, key: str) -> str:
    """The kitchen a token sends for. Raises AccessError: no kitchen here waits for a record of that name."""
    if key not in copies(store):
        raise AccessError("No kitchen here waits for a record from {name}.", name=key)
    return key


def took(store: Store, key: str, items: Sequence[Recorded]) -> Taken:
    """Keep what a site sent. A record that is not the one sent before, or not the one its anchor was signed
    for, is refused and noted once. Raises RecordError: as :func:`frywright.ledger.replica.take`.
    """
    try:
        _as_anchored(store, key, items)
        return take(store, key, items, now())
    except ForkError as error:
        seen = ForkSeen(key=key, entry_number=error.number, hash_here=error.here, hash_sent=error.sent)
        if all(e.fact != seen for e in store.home.facts(ForkSeen)):
            write(store.home, seen)
        raise


def followed(store: Store, key: str = "") -> dict[str, Followed]:
    """Empty in the copies here, of one site or of all, what their own records say was dropped there. It is
    done as the entry that says so arrives; what is left is of a server that may not, on PostgreSQL.
    """
    return {one: follow_all(store, one, now()) for one in sorted(copies(store)) if key in ("", one)}


def _as_anchored(store: Store, key: str, items: Sequence[Recorded]) -> None:
    """The entry that the site's newest anchor names must come as it was signed: all before it follows from
    its hash. That holds where the copy here is gone as well.
    """
    newest = newest_anchor(store, key)
    if newest is None:
        return
    (anchor,) = read_anchors(newest.fact.text)
    sent = next((item for item in items if item.number == anchor.number), None)
    if sent is not None and sent.hash != anchor.hash:
        raise ForkError(anchor.number, anchor.hash, sent.hash)


def newest_anchor(store: Store, key: str) -> Kept[AnchorKept] | None:
    """The newest anchor of a site that is kept here."""
    kept = store.home.facts(AnchorKept, newest_first=True)
    return next((item for item in kept if item.fact.key == key), None)


@in_turn
def keep_anchor(store: Store, key: str, text: str) -> bool:
    """Keep an anchor that a site signed for what it sent, at most every half day; whether it was kept now.
    Raises InputError: it is not one anchor. Raises RecordError: it was altered, or the copy here is not the
    record it was signed for.
    """
    anchors = read_anchors(text)
    if len(anchors) != 1:
        raise InputError("anchor", len(anchors), "one line")
    compare(store.at(key), anchors)
    newest = newest_anchor(store, key)
    if newest is not None:
        fresh = anchors[0].number > newest.fact.entry_number
        if not fresh or now() - newest.recorded_at < ANCHOR_EVERY:
            return False
    write(store.home, AnchorKept(key=key, entry_number=anchors[0].number, text=anchors[0].text))
    return True


def anchors_of(store: Store, key: str = "") -> list[Kept[AnchorKept]]:
    """Every anchor kept here, of one site or of all, oldest first."""
    return [item for item in store.home.facts(AnchorKept) if key in ("", item.fact.key)]


def rewritten(store: Store) -> dict[str, RecordError]:
    """Sites whose copy here is not the record that their newest anchor was signed for, and what is wrong."""
    newest = {item.fact.key: item.fact.text for item in anchors_of(store)}
    found = {}
    for key, text in newest.items():
        try:
            store.at(key).verify()
            compare(store.at(key), read_anchors(text))
        except RecordError as error:
            found[key] = error
    return found


def forks(store: Store) -> dict[str, int]:
    """Kitchens whose site sent another record than before, and the first entry that differed."""
    found: dict[str, int] = {}
    for item in store.home.facts(ForkSeen):
        found[item.fact.key] = min(item.fact.entry_number, found.get(item.fact.key, item.fact.entry_number))
    return found


def released_to(store: Store, key: str, after: int = 0) -> tuple[ReleaseArrived, ...]:
    """What was released to a site or stopped there since an entry of the office, oldest first, as the site
    keeps it.
    """
    opened = {item.number: item.fact for item in store.home.facts(ProgramReleased)}
    reached: set[int] = set()
    found = []
    for item in store.home.facts(WaveTold):
        wave = item.fact
        if wave.what == "started" and key in wave.sites:
            reached.add(wave.release_number)
        elif wave.what == "started" or wave.release_number not in reached:
            continue
        if item.number > after:
            found.append(
                ReleaseArrived(
                    office_number=item.number,
                    release_number=wave.release_number,
                    what=wave.what,
                    text=opened[wave.release_number].text,
                    who=wave.who,
                    reason=wave.reason,
                )
            )
    return tuple(found)
