"""Plain text copies of the store: JSON lines and CSV."""

from __future__ import annotations

import csv
from collections.abc import Iterable
from typing import TextIO

from frywright.model.entry import Recorded, canonical, stamp

COLUMNS = (
    "number",
    "kind",
    "happened_at",
    "recorded_at",
    "author",
    "replaces",
    "payload",
    "versions",
    "previous_hash",
    "hash",
)
RISKY = ("=", "+", "-", "@", "\t", "\r")


def as_row(item: Recorded) -> dict[str, object]:
    """An entry in plain values."""
    entry = item.entry
    return {
        "number": item.number,
        "kind": entry.kind,
        "happened_at": stamp(entry.happened_at),
        "recorded_at": stamp(item.recorded_at),
        "author": entry.author,
        "replaces": entry.replaces,
        "payload": dict(entry.payload),
        "versions": dict(entry.versions),
        "previous_hash": item.previous_hash,
        "hash": item.hash,
    }


def json_lines(entries: Iterable[Recorded], out: TextIO) -> int:
    """Write one JSON object a line; returns how many."""
    count = 0
    for item in entries:
        out.write(canonical(as_row(item)) + "\n")
        count += 1
    return count


def csv_table(entries: Iterable[Recorded], out: TextIO) -> int:
    """Write a CSV table; text that a spreadsheet would run as a formula gets a leading quote."""
    writer = csv.DictWriter(out, COLUMNS)
    writer.writeheader()
    count = 0
    for item in entries:
        count += 1
        row = {k: canonical(v) if isinstance(v, dict) else v for k, v in as_row(item).items()}
        writer.writerow(
            {k: "'" + v if isinstance(v, str) and v.startswith(RISKY) else v for k, v in row.items()}
        )
    return count
