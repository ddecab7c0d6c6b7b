"""At the office: records that sites send, and what it released to each of them."""

from __future__ import annotations

from collections.abc import Sequence

from frywright.ledger.facts.fleet import ForkSeen, KitchenOpened, ProgramReleased, ReleaseArrived, WaveTold
from frywright.ledger.replica import ForkError, Taken, take
from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import AccessError
from frywright.rooms.hall import write


def sender(store: Store, key: str) -> str:
    """The kitchen a token sends for.

    Raises
    ------
    AccessError
        No kitchen here waits for a record under that name.
    """
    if not any(e.fact.key == key and e.fact.sent_here for e in store.home.facts(KitchenOpened)):
        raise AccessError("No kitchen here waits for a record from {name}.", name=key)
    return key


def took(store: Store, key: str, items: Sequence[Recorded]) -> Taken:
    """Keep what a site sent. A record that is not the one sent before is refused and noted once.

    Raises
    ------
    RecordError
        As :func:`frywright.ledger.replica.take`.
    """
    try:
        return take(store, key, items)
    except ForkError as error:
        seen = ForkSeen(key=key, entry_number=error.number, hash_here=error.here, hash_sent=error.sent)
        if all(e.fact != seen for e in store.home.facts(ForkSeen)):
            write(store.home, seen)
        raise


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
