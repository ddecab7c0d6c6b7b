"""Entries whose time is over: what says that they were dropped, and what is left of them."""

from __future__ import annotations

import datetime as dt
import hashlib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, ClassVar

from frywright.ledger.facts.fact import Fact
from frywright.model.entry import Recorded, canonical, stamp


@dataclass(frozen=True, slots=True, kw_only=True)
class EntriesDropped(Fact):
    """Entries that were emptied at the end of their time: ``stretches`` of their numbers, first and last of
    each, and a ``digest`` over all that is left of them.
    """

    KIND: ClassVar[str] = "entries_dropped"
    term: str
    before: dt.date
    stretches: tuple[tuple[int, int], ...]
    entries_count: int
    digest: str
    who: str
    second: str
    reason: str

    @property
    def numbers(self) -> Iterator[int]:
        """Numbers of the entries."""
        return (number for first, last in self.stretches for number in range(first, last + 1))


def emptied(kind: str) -> str:
    """What an emptied entry holds: the kind it was of."""
    return canonical({"kind": kind})


def kind_before(item: Recorded) -> str:
    """The kind an emptied entry was of; empty where that is not all it holds."""
    payload = item.entry.payload
    bare = set(payload) == {"kind"} and not item.entry.author and not item.entry.versions
    return str(payload.get("kind")) if bare else ""


def left_over(item: Recorded, kind: str, *, linked: bool = True) -> str:
    """All that is left of an entry of a kind, as a line. Its hash can no longer be worked out, so its link to
    the entry before is part of it: else what came before could be written anew. The first digests that were
    made are without it.
    """
    moments = stamp(item.entry.happened_at), stamp(item.recorded_at)
    link = (item.previous_hash,) if linked else ()
    return canonical([item.number, kind, *moments, item.entry.replaces, item.hash, *link])


def digest_of(lines: Iterable[str]) -> str:
    """Digest over what is left of entries, in order of number."""
    return hashlib.sha256("\n".join(lines).encode()).hexdigest()


def stretches_of(numbers: Iterable[int]) -> tuple[tuple[int, int], ...]:
    """Ascending numbers as stretches without a hole."""
    found: list[tuple[int, int]] = []
    for number in numbers:
        if found and number == found[-1][1] + 1:
            found[-1] = found[-1][0], number
        else:
            found.append((number, number))
    return tuple(found)


def named_numbers(value: Any, key: str = "") -> Iterator[int]:
    """Entries that a payload names by their number; a number too many keeps an entry too many."""
    if isinstance(value, Mapping):
        for name, part in value.items():
            yield from named_numbers(part, name)
    elif isinstance(value, list | tuple):
        for part in value:
            yield from named_numbers(part, key)
    elif type(value) is int and (key.endswith("_number") or key in ("entry", "readings")):
        yield value


def said(item: Recorded, fields: Iterable[str]) -> tuple[str, ...]:
    """What an entry says in some of its fields."""
    return tuple(str(item.entry.payload.get(field)) for field in fields)
