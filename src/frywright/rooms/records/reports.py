"""Reports of contractors, certificates of calibration and commissioning reports, kept byte for byte with the
entry they belong to.
"""

from __future__ import annotations

import io
import re
from pathlib import PurePath
from typing import BinaryIO

from frywright.ledger.facts.care import CareDone, ReportAttached, StepSigned
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import ThermometerChecked
from frywright.ledger.store import Store
from frywright.model.errors import InputError, Phrase
from frywright.paper.paper import is_picture
from frywright.rooms.files import keep_file
from frywright.rooms.hall import by_name, write

REPORTED = (CareDone.KIND, StepSigned.KIND, ThermometerChecked.KIND)
"""Kinds of entry that a report may belong to."""
LARGEST_BYTES = 12_000_000
PDF = b"%PDF-"
ODD = re.compile(r"[^\w .()+-]")


def takes_report(store: Store, number: int) -> bool:
    """Whether a report may be attached to an entry."""
    item = store.entry(number)
    return item is not None and item.entry.kind in REPORTED


def reports_of(store: Store, number: int) -> list[Kept[ReportAttached]]:
    """Reports attached to an entry, oldest first."""
    return [e for e in store.facts(ReportAttached) if e.fact.of_number == number]


def attach_report(store: Store, number: int, name: str, stream: BinaryIO, who: str) -> Kept[ReportAttached]:
    """Keep a report with an entry. Raises InputError: an entry that no report belongs to, no name, or a file
    that is neither a PDF nor a picture, or too large.
    """
    if not takes_report(store, number):
        raise InputError("entry", number, "care done, a step of a commissioning, or a thermometer's check")
    who = by_name(who, "the name of the person who attaches it")
    data = stream.read(LARGEST_BYTES + 1)
    if len(data) > LARGEST_BYTES or not (data.startswith(PDF) or is_picture(data)):
        raise InputError(
            "report",
            Phrase("{count} bytes", {"count": len(data)}),
            "a PDF or a picture (JPEG, PNG, GIF, WebP) of up to 12 MB",
        )
    sha256, size = keep_file(store, io.BytesIO(data), "report")
    fact = ReportAttached(of_number=number, name=file_name(name), sha256=sha256, size_bytes=size, who=who)
    return write(store, fact)


def file_name(name: str) -> str:
    """The name of a report as a file of any folder may have it."""
    return ODD.sub("_", PurePath(name.replace("\\", "/")).name).strip(" .")[:80] or "report"
