"""The end of an entry's time: what is old enough, named by nothing that stays and not the newest word on how
things stand is emptied, on record and by two people. Number, moment, hash and link stay: the chain is whole.
"""

from __future__ import annotations

import datetime as dt
from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from frywright.ledger.checking import checked, dropped_files
from frywright.ledger.dropped import TOGETHER, empty
from frywright.ledger.facts.dropping import (
    EntriesDropped,
    digest_of,
    left_over,
    named_numbers,
    said,
    stretches_of,
)
from frywright.ledger.facts.fact import Fact, Kept, kept
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.facts.probing import CaseOpened, CaseStep
from frywright.ledger.store import Store
from frywright.ledger.terms import MOST_YEARS, NEWEST_STAYS, OF_ANOTHER_RECORD, TERMS, Term
from frywright.model.entry import DROPPED, Recorded
from frywright.model.errors import InputError, one_of
from frywright.rooms.clock import now
from frywright.rooms.hall import in_turn, write
from frywright.rooms.records.corrective import cases
from frywright.rooms.records.retention import YEAR, agreed


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """Entries that may be dropped: whose last moment lies before a day; how many of each kind."""

    term: Term
    before: dt.date
    kinds: tuple[tuple[str, int], ...]
    numbers: tuple[int, ...]


def term_of(key: Any) -> Term:
    """A term by its key. Raises InputError: none has it."""
    known = {term.key: term for term in TERMS}
    return known[one_of(tuple(known), key, "term")]


def due_entries(store: Store, term: Term, years: int) -> Due:
    """What would be dropped; nothing is. Raises InputError: fewer years than these entries must stay, or more
    than any can have.
    """
    if not term.least_years <= years <= MOST_YEARS:
        raise InputError("years", years, "{low} to {high}", low=term.least_years, high=MOST_YEARS)
    before = (now() - years * YEAR).astimezone(dt.UTC).date()
    found = _Sorting(store, term, before).found()
    kinds = sorted(Counter(item.entry.kind for item in found).items())
    return Due(term=term, before=before, kinds=tuple(kinds), numbers=tuple(i.number for i in found))


class _Sorting:
    """What of a store goes and what stays. An entry names older ones only, so the newest are asked first."""

    def __init__(self, store: Store, term: Term, before: dt.date) -> None:
        self._store, self._before = store, before
        self._classes = {cls.KIND: cls for cls in term.kinds}
        self._filled = {i.fact.vat: i.number for i in store.facts(OilDone) if i.fact.what == "fill"}
        self._gone_files = dropped_files(store)
        self._case_of = {i.number: i.fact.case_number for i in store.facts(CaseStep)}
        self._case_of |= {i.number: i.number for i in store.facts(CaseOpened)}
        self._kept = {
            case.opened.number
            for case in cases(store)
            if self._young(case.opened.happened_at, case.opened.recorded_at)
            or any(self._young(step.happened_at, step.recorded_at) for step in case.steps)
        }

    def found(self) -> list[Recorded]:
        """Entries that may go, oldest first: a case goes whole or stays whole."""
        while True:
            going = self._pass()
            numbers = {item.number for item in going}
            more = {case for n, case in self._case_of.items() if n not in numbers} - self._kept
            if not more:
                return going[::-1]
            self._kept |= more

    def _pass(self) -> list[Recorded]:
        needed, seen, going = set[int](), set[tuple[str, ...]](), list[Recorded]()
        for item in self._store.entries(newest_first=True):
            cls = self._classes.get(item.entry.kind)
            if cls is not None and not self._stays(item, cls, needed, seen):
                going.append(item)
            else:
                if item.entry.kind not in OF_ANOTHER_RECORD:
                    needed.update(named_numbers(item.entry.payload))
                needed.add(item.entry.replaces or 0)
        return going

    def _young(self, *moments: dt.datetime) -> bool:
        return max(moments).astimezone(dt.UTC).date() >= self._before

    def _stays(self, item: Recorded, cls: type[Fact], needed: set[int], seen: set[tuple[str, ...]]) -> bool:
        newest = False
        if cls in NEWEST_STAYS:
            about = (item.entry.kind, *said(item, NEWEST_STAYS[cls]))
            newest = about not in seen
            seen.add(about)
        if newest or item.number in needed or self._young(item.entry.happened_at, item.recorded_at):
            return True
        if self._case_of.get(item.number) in self._kept:
            return True
        if cls is OilDone:  # the oil in the vat began with its last filling
            return item.number >= self._filled.get(kept(item, OilDone).fact.vat, 0)
        return bool(cls.FILES) and any(
            self._gone_files.get(name, 0) < item.number for name in kept(item, cls).fact.originals
        )


@in_turn
def drop_entries(store: Store, values: Mapping[str, Any]) -> Due:
    """Empty entries whose time is over. ``term``, ``years``, ``who``, ``second``, ``reason``. All or nothing,
    whatever happens meanwhile. Raises InputError: a case is open, one person alone, no reason, no whole
    number of years, or nothing is that old. Raises RecordError: the chain is broken: nothing goes before that
    is understood.
    """
    term, both = term_of(values.get("term")), agreed(store, values)
    checked(store, now(), read_files=False)
    found = due_entries(store, term, both.years)
    if not found.numbers:
        raise InputError("years", both.years, "fewer: no entry is that old")
    wanted = set(found.numbers)
    items = [item for item in store.entries() if item.number in wanted]
    for start in range(0, len(items), TOGETHER):
        some = items[start : start + TOGETHER]
        fact = EntriesDropped(
            term=term.key,
            before=found.before,
            stretches=stretches_of(item.number for item in some),
            entries_count=len(some),
            digest=digest_of(left_over(item, item.entry.kind) for item in some),
            who=both.who,
            second=both.second,
            reason=both.reason,
        )
        write(store, fact)
    with store.writing() as writer:
        empty(writer.connection, store.site, items)
    return found


def dropped_between(
    store: Store, since: dt.datetime, until: dt.datetime, within: Callable[[dt.datetime], bool]
) -> tuple[tuple[Kept[EntriesDropped], int], ...]:
    """What says that entries of some days were dropped, and how many each; the days lie in a span."""
    between = store.between(since, until, DROPPED)
    numbers = {item.number for item in between if within(item.entry.happened_at)}
    if not numbers:
        return ()
    counts = [(by, sum(n in numbers for n in by.fact.numbers)) for by in store.facts(EntriesDropped)]
    return tuple((by, count) for by, count in counts if count)


def dropped_by(store: Store, item: Recorded) -> int:
    """The entry that says that an entry was dropped, 0 where it was not."""
    if item.entry.kind != DROPPED:
        return 0
    told = (by.number for by in store.facts(EntriesDropped) if item.number in by.fact.numbers)
    return next(told, 0)
