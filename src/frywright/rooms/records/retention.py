"""The end of a file's time: photos, sales files and reports that are old enough are dropped, their entries
stay. The chain holds each file's hash and what was dropped, so nothing can be dropped unseen.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from frywright.ledger.attachments import attachments_of
from frywright.ledger.checking import WITH_FILES, dropped_files
from frywright.ledger.facts.care import CardSigned, ReportAttached
from frywright.ledger.facts.day import FilesDropped, SalesRead
from frywright.ledger.facts.fact import Fact
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.units import is_count
from frywright.rooms.clock import now
from frywright.rooms.hall import another, given_words, in_turn, write
from frywright.rooms.records.open_cases import still_open

LEAST_YEARS, MOST_YEARS = 2, 30
"""Files stay at least so long: two years after they were made (21 CFR 117.315(a), from memory; it is written
for plants, a kitchen's own rule may ask for more); the longest is the project's own rule.
"""
MAY_GO: tuple[type[Fact], ...] = (CardSigned, SalesRead, ReportAttached)
"""Facts whose files may be dropped. Logs and plates stay: calibrations and programs stand on them."""
TOGETHER = 1000
"""Names in one entry."""
YEAR = dt.timedelta(days=365.25)


@dataclass(frozen=True, slots=True, kw_only=True)
class Old:
    """Files of a kitchen that may be dropped: older than a day, needed by nothing that stays."""

    before: dt.date
    names: tuple[str, ...]
    size_bytes: int


def old_files(store: Store, years: int) -> Old:
    """What would be dropped; nothing is. Raises InputError: fewer years than files must stay, or more than
    any file can have.
    """
    if not LEAST_YEARS <= years <= MOST_YEARS:
        raise InputError("years", years, "{low} to {high}", low=LEAST_YEARS, high=MOST_YEARS)
    end = now() - years * YEAR
    gone, may, must = dropped_files(store), set[str](), set[str]()
    for site in store.sites():
        for cls in WITH_FILES:
            mine = site == store.site and cls in MAY_GO
            for item in store.at(site).facts(cls):
                old = mine and max(item.happened_at, item.recorded_at) < end
                (may if old else must).update(item.fact.originals)
    folder = attachments_of(store).folder
    names = sorted(n for n in may - must if n not in gone and (folder / n).is_file())
    size = sum((folder / name).stat().st_size for name in names)
    return Old(before=end.date(), names=tuple(names), size_bytes=size)


def drop_old_files(store: Store, values: Mapping[str, Any]) -> Old:
    """Drop files whose time is over, on record and confirmed by a second person. ``years``, ``who``,
    ``second``, ``reason``. Raises InputError: a case is open, one person alone, no reason, no whole number of
    years; nothing is dropped.
    """
    found = _put_on_record(store, values)
    folder = attachments_of(store).folder
    for name in found.names:  # on record first: a file that is left by a power cut is one too many
        (folder / name).unlink(missing_ok=True)
    return found


@dataclass(frozen=True, slots=True, kw_only=True)
class Agreed:
    """What two people agreed to: older than so many years, and why."""

    years: int
    who: str
    second: str
    reason: str


def agreed(store: Store, values: Mapping[str, Any]) -> Agreed:
    """Whether two people agreed, for a reason, and no case is open. ``years``, ``who``, ``second``,
    ``reason``. Raises InputError: what of it is not so.
    """
    years, who, second, reason = (
        " ".join(str(values.get(name, "") or "").split()) for name in ("years", "who", "second", "reason")
    )
    if not is_count(years):
        raise InputError("years", repr(years), "a whole number")
    if still_open(store):
        raise InputError("case", "open", "closed first: its records may be asked for")
    given_words(reason)
    another(who, second, "another person")
    return Agreed(years=int(years), who=who, second=second, reason=reason[:200])


@in_turn
def _put_on_record(store: Store, values: Mapping[str, Any]) -> Old:
    both = agreed(store, values)
    found = old_files(store, both.years)
    if not found.names:
        raise InputError("years", both.years, "fewer: no file is that old")
    for start in range(0, len(found.names), TOGETHER):
        names = found.names[start : start + TOGETHER]
        fact = FilesDropped(
            before=found.before, names=names, who=both.who, second=both.second, reason=both.reason
        )
        write(store, fact)
    return found
