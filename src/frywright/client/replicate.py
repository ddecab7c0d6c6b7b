"""Sends a site's record to its office: what the office lacks, in order, and nothing twice. Brings back what
the office released. Whatever breaks off goes on at the next try where the office says it stands.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any
from urllib.parse import urlsplit

from frywright.client.http import Client
from frywright.ledger.anchors import anchor_or_why
from frywright.ledger.attachments import attachments_of
from frywright.ledger.checking import dropped_files
from frywright.ledger.export import as_row
from frywright.ledger.facts.fleet import ReleaseArrived
from frywright.ledger.store import Point, Store
from frywright.model.errors import InputError, RecordError
from frywright.rooms.clock import now
from frywright.rooms.fleet.arrivals import arrive, last_arrived
from frywright.rooms.kitchen import kitchen_name

BLOCK_BYTES, BLOCK_COUNT = 600_000, 2_000
"""A message holds at most so much, but always one entry (project's own rule; the office takes 1 MB)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sent:
    """What one turn did: entries and files sent, where the office stands, releases that came."""

    entries_count: int
    files_count: int
    number: int
    releases_count: int


def replicate(store: Store, client: Client) -> Sent:
    """One turn: send what the office lacks, then take what it released. Raises InputError: the address is not
    https. Raises RecordError: the office holds another record of this site, or cannot be reached; what was
    sent up to there stays.
    """
    _private(client.address)
    there = client.read("sync")
    _same(store, there)
    entries = files = 0
    files += _send_files(store, client, there["wants"])
    for block in _blocks(store, int(there["number"])):
        there = client.write("sync/entries", {"rows": block})
        entries += len(block)
        files += _send_files(store, client, there["wants"])
    if entries:
        _send_anchor(store, client, Point(number=int(there["number"]), hash=there["hash"]))
    told = tuple(ReleaseArrived.read(row) for row in client.read("sync/releases", after=last_arrived(store)))
    return Sent(
        entries_count=entries,
        files_count=files,
        number=int(there["number"]),
        releases_count=arrive(store, told) if told else 0,
    )


def _send_anchor(store: Store, client: Client, head: Point) -> None:
    """The office keeps what this site signs for its record; a site whose key cannot be used sends none."""
    anchor, _ = anchor_or_why(store, head, now(), kitchen_name(store))
    if anchor is not None:
        client.write("sync/anchor", {"text": anchor.text})


def _private(address: str) -> None:
    """The token opens a kitchen's record at the office: it goes over TLS, or not off this machine.
    Raises InputError: the address is neither.
    """
    parts = urlsplit(address)
    if parts.scheme != "https" and parts.hostname not in ("127.0.0.1", "localhost", "::1"):
        raise InputError("address", repr(address), "one that starts with https://")


def _same(store: Store, there: dict[str, Any]) -> None:
    """What the office holds must be this site's own record."""
    number = int(there["number"])
    item = store.entry(number) if number else None
    if number and (item is None or item.hash != there["hash"]):
        raise RecordError(
            "Entries of this kitchen at the office that are not the ones kept here: {number}."
            " Nothing was sent. Was this store put back from an older backup, or is the token"
            " another kitchen's?",
            number=number,
        )


def _blocks(store: Store, after: int) -> Iterator[list[dict[str, object]]]:
    """Entries after a number, in messages that are not too large."""
    block: list[dict[str, object]] = []
    size = 0
    for item in store.entries(after=after):
        row = as_row(item)
        length = len(json.dumps(row))
        if block and (size + length > BLOCK_BYTES or len(block) == BLOCK_COUNT):
            yield block
            block, size = [], 0
        block.append(row)
        size += length
    if block:
        yield block


def _send_files(store: Store, client: Client, wants: list[str]) -> int:
    files, gone = attachments_of(store), dropped_files(store)
    here = [name for name in wants if name not in gone or (files.folder / name).is_file()]
    for name in here:
        with files.open(name) as stream:
            client.send(f"sync/files/{name}", stream)
    return len(here)
