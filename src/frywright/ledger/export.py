"""Plain text copies of the store: JSON lines and CSV."""

from __future__ import annotations

import csv
import re
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
RISKY = re.compile(r"(^|[;\t\r\n])(?=[=+\-@\uff1d\uff0b\uff0d\uff20])")
"""Where a spreadsheet may begin a formula: in front of a text, and behind what spreadsheets of some countries
split or break a line at; by a wide sign too, which some read as the narrow one (common practice, no source).
"""


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


def inert(text: str) -> str:
    """A text with a quote before whatever a spreadsheet would run as a formula."""
    return RISKY.sub(r"\1'", text)


def json_lines(entries: Iterable[Recorded], out: TextIO) -> int:
    """Write one JSON object a line; returns how many."""
    count = 0
    for item in entries:
        out.write(canonical(as_row(item)) + "\n")
        count += 1
    return count


def csv_table(entries: Iterable[Recorded], out: TextIO) -> int:
    """Write a CSV table; what a spreadsheet would run as a formula gets a quote before it."""
    writer = csv.DictWriter(out, COLUMNS)
    writer.writeheader()
    count = 0
    for item in entries:
        count += 1
        row = {k: canonical(v) if isinstance(v, dict) else v for k, v in as_row(item).items()}
        writer.writerow({k: inert(v) if isinstance(v, str) else v for k, v in row.items()})
    return count
