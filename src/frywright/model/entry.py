"""One recorded fact. Never altered, only superseded."""

from __future__ import annotations

import datetime as dt
import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from json.encoder import encode_basestring
from typing import Any

from frywright.model.errors import InputError

GENESIS = "0" * 64
DROPPED = "dropped"
"""Kind of an entry that was emptied at the end of its time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """Kind, both times, author, payload with unit-suffixed keys, what it replaces, versions."""

    kind: str
    happened_at: dt.datetime
    author: str
    payload: Mapping[str, Any]
    replaces: int | None = None
    versions: Mapping[str, str] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if not self.kind or not self.kind.replace("_", "").isalnum():
            raise InputError("kind", repr(self.kind), "a plain word such as program")
        if self.happened_at.tzinfo is None:
            raise InputError("happened_at", self.happened_at.isoformat(), "a time with its zone")


@dataclass(frozen=True, slots=True, kw_only=True)
class Recorded:
    """An entry as the store holds it."""

    number: int
    entry: Entry
    recorded_at: dt.datetime
    previous_hash: str
    hash: str


def stamp(moment: dt.datetime) -> str:
    """UTC text of a moment, to the microsecond, sortable."""
    return moment.astimezone(dt.UTC).strftime("%Y-%m-%dT%H:%M:%S.%fZ")


def unstamp(text: str) -> dt.datetime:
    """The moment of a text by :func:`stamp`; ValueError for anything else."""
    if len(text) != 27 or (text[10], text[19], text[26]) != ("T", ".", "Z"):
        raise ValueError(f"{text!r} is no moment of ours")
    return dt.datetime.fromisoformat(text)


def canonical(value: Any) -> str:
    """JSON text that is the same for the same value."""
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False, allow_nan=False)


def chain_hash(previous: str, number: int, entry: Entry, recorded_at: dt.datetime) -> str:
    """Hash over the previous hash and everything an entry says."""
    texts = (canonical(dict(entry.payload)), canonical(dict(entry.versions)))
    return row_hash(
        previous,
        number,
        (entry.kind, entry.author, entry.replaces),
        (stamp(entry.happened_at), stamp(recorded_at)),
        texts,
    )


def row_hash(
    previous: str,
    number: int,
    who: tuple[str, str, int | None],
    stamps: tuple[str, str],
    texts: tuple[str, str],
) -> str:
    """The same hash from an entry's stored texts: payload and versions are canonical already, so nothing is
    parsed to verify them.

    ``who`` is (kind, author, replaces), ``stamps`` (happened, recorded), ``texts`` (payload, versions).
    """
    kind, author, replaces = who
    text = (
        f'{{"author":{_quoted(author)},"happened_at":"{stamps[0]}","kind":{_quoted(kind)},"number":{number},'
        f'"payload":{texts[0]},"recorded_at":"{stamps[1]}",'
        f'"replaces":{"null" if replaces is None else replaces},"versions":{texts[1]}}}'
    )
    return hashlib.sha256(f"{previous}\n{text}".encode()).hexdigest()


def _quoted(text: str) -> str:
    if type(text) is str:
        return encode_basestring(text)
    return json.dumps(text, ensure_ascii=False)  # somebody wrote something else into the row
