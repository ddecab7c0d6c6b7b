"""Everything of a range of business days, read once after the chain was walked: what there is, what is
missing, what deserves a look.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, TypeVar, cast

from frywright.calibrate.thermometer import ThermometerCheck
from frywright.ledger.checking import Checked, checked
from frywright.ledger.facts.care import CareDone, ReportAttached
from frywright.ledger.facts.day import BoardTap, standing
from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.facts.fact import Fact, Kept
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.facts.probing import CaseOpened, HoldRead, Reading, ThermometerChecked
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, local_time, moment_of, usual_trade
from frywright.model.errors import InputError, Phrase
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.units import to_people
from frywright.rooms.clock import now
from frywright.rooms.records.corrective import EARLIEST_YEAR, LATEST_YEAR
from frywright.rooms.records.coverage import gaps_of, in_time, listed, unchecked_days, without_case
from frywright.rooms.records.dropping import dropped_between
from frywright.rooms.records.sheets import GATHERED, Sheet
from frywright.rooms.thermometers import checks_in
from frywright.verdicts.patterns import LATE_S, Told, patterns

LONGEST_DAYS = 400
F = TypeVar("F", bound=Fact)


@dataclass(frozen=True, slots=True, kw_only=True)
class Gathered:
    """Everything of a range of business days, by kind of fact."""

    first: dt.date
    last: dt.date
    items: dict[type[Fact], list[Kept[Any]]]
    days_told: frozenset[dt.date]
    """Days of anything recorded by a clock that can be relied on."""
    days_held: frozenset[dt.date]
    """Days with a reading of hot holding that came in time."""
    chain: Checked
    checks: tuple[ThermometerCheck, ...]
    reported: frozenset[int]
    """Entries that a report is attached to."""
    dropped: tuple[tuple[Kept[EntriesDropped], int], ...]
    """What says that entries of these days were dropped at the end of their time, and how many."""

    def of(self, cls: type[F]) -> list[Kept[F]]:
        """Facts of a class, by when they happened."""
        return cast(list[Kept[F]], self.items[cls])

    def set_back(self, number: int) -> bool:
        """Whether an entry was recorded by a clock that ran backwards."""
        return _set_back(self.chain, number)

    @property
    def drops(self) -> list[Kept[BoardTap]]:
        """Loads dropped."""
        return [e for e in standing(self.of(BoardTap)) if e.fact.what == "drop"]

    @property
    def mistyped(self) -> dict[int, int]:
        """Readings that were mistyped, and the number of the right one of each."""
        return {e.replaces: e.number for e in self.of(Reading) if e.replaces is not None}

    @property
    def sound(self) -> list[Kept[Reading]]:
        """Readings that stand, came in time and whose time can be relied on."""
        readings, wrong = self.of(Reading), self.mistyped
        known = {e.number: e for e in readings}
        return [e for e in readings if e.number not in wrong and _fills(self.chain, _first(e, known))]

    @property
    def too_late(self) -> list[Kept[Any]]:
        """Readings and checks of a thermometer, of a load or in hot holding, that came too late to fill a
        gap.
        """
        return [e for cls in (Reading, HoldRead, ThermometerChecked) for e in self.of(cls) if not in_time(e)]

    @property
    def unreported(self) -> list[Kept[CareDone]]:
        """Contractors' work without a report attached."""
        done = self.of(CareDone)
        return [e for e in done if e.fact.role == "licensed" and e.number not in self.reported]

    def late(self, item: Kept[Any]) -> float:
        """Seconds that an entry came after what it tells of, 0 where it came in time."""
        late = (item.recorded_at - item.happened_at).total_seconds()
        return late if late > LATE_S else 0.0

    def matters(self, sheet: Sheet, item: Kept[Any]) -> bool:
        """Whether a row is one of those that are printed first."""
        marked = self.late(item) > 0 or self.set_back(item.number) or item.replaces is not None
        return marked or item.number in self.mistyped or bool(sheet.matters(item.fact))

    @property
    def below(self) -> list[Kept[Reading]]:
        """Readings below their limit, and those that a case was opened for, with the thermometer's error."""
        cased = {e.fact.reading_number for e in self.of(CaseOpened)}
        return [e for e in self.of(Reading) if e.fact.below or e.number in cased]

    @property
    def days(self) -> list[dt.date]:
        """Every day of the range."""
        return [self.first + dt.timedelta(days=n) for n in range((self.last - self.first).days + 1)]


def _set_back(chain: Checked, number: int) -> bool:
    return any(number in step.numbers for step in chain.set_back)


def _fills(chain: Checked, item: Kept[Any]) -> bool:
    """Whether an entry fills a gap: it came in time, by a clock that did not run backwards."""
    return in_time(item) and not _set_back(chain, item.number)


def _first(item: Kept[F], known: Mapping[int, Kept[F]]) -> Kept[F]:
    """The mistyped entry in whose place one stands, and the one before that."""
    older = known.get(item.replaces or 0)
    return item if older is None else _first(older, known)


def gather(store: Store, kitchen: Kitchen, first: dt.date, last: dt.date) -> Gathered:
    """Walk the chain, then read a range of days once. Raises InputError: a range that runs backwards or is
    longer than 400 days. Raises RecordError: the chain is broken: nothing is made of it.
    """
    possible = first.year >= EARLIEST_YEAR and last.year < LATEST_YEAR
    if not possible or not 0 <= (last - first).days < LONGEST_DAYS:
        raise InputError(
            "range", Phrase("{first} to {last}", {"first": first, "last": last}), "forward, up to 400 days"
        )
    trade = usual_trade(kitchen)
    since, until = moment_of(trade, first, 0.0), moment_of(trade, last + dt.timedelta(days=2), 0.0)
    chain = checked(store, now(), read_files=False)

    def within(moment: dt.datetime) -> bool:
        return first <= business_time(trade, moment)[0] <= last

    items: dict[type[Fact], list[Kept[Any]]] = {
        cls: [e for e in store.facts_between(since, until, cls) if within(e.happened_at)] for cls in GATHERED
    }

    def days(found: Iterable[Kept[Any]]) -> frozenset[dt.date]:
        return frozenset(business_time(trade, e.happened_at)[0] for e in found)

    return Gathered(
        first=first,
        last=last,
        items=items,
        days_told=days(e for some in items.values() for e in some if not _set_back(chain, e.number)),
        days_held=days(e for e in items[HoldRead] if _fills(chain, e)),
        chain=chain,
        checks=tuple(checks_in(store, lambda item: _fills(chain, item))),
        reported=frozenset(e.fact.of_number for e in store.facts(ReportAttached)),
        dropped=dropped_between(store, since, until, within),
    )


def gaps(kitchen: Kitchen, told: Gathered, tr: Translate = str) -> list[str]:
    """What is missing, day by day, in plain words: honest gaps are part of the pack."""
    drops = told.drops
    worked = {business_time(usual_trade(kitchen), e.happened_at)[0] for e in drops}
    found = [*_chain_gaps(kitchen, told, tr), *_dropped(kitchen, told, tr)]
    for days, text in (
        (set(told.days) - told.days_told, "No entry of any kind. Days: {count} ({which})."),
        (
            unchecked_days(kitchen, drops, told.checks),
            "Loads dropped and no thermometer with a valid check. Days: {count} ({which}).",
        ),
        (worked - told.days_held, "Loads dropped and no hot-holding temperature. Days: {count} ({which})."),
    ):
        if days:
            values = {"count": float(len(days)), "which": listed(days)}
            found.append(say(text, values, translate=tr))
    found += gaps_of(kitchen, drops, told.sound, tr)
    unchecked = sum(not e.fact.checked for e in told.of(Reading))
    if unchecked:
        text = "Readings by a thermometer without a valid check: {count}."
        found.append(say(text, {"count": float(unchecked)}, translate=tr))
    if told.too_late:
        text = "Entered more than a day after they were taken: entries {which}. They fill no gap here."
        found.append(say(text, {"which": ", ".join(str(e.number) for e in told.too_late)}, translate=tr))
    alone = without_case(told.of(Reading), [e.fact for e in told.of(CaseOpened)])
    if alone:
        text = "Readings below the limit without a corrective action: entries {which}."
        found.append(say(text, {"which": ", ".join(map(str, alone))}, translate=tr))
    bare = [e.number for e in told.unreported]
    if bare:
        text = "Contractors' work without its report attached: entries {which}."
        found.append(say(text, {"which": ", ".join(map(str, bare))}, translate=tr))
    return found


def _dropped(kitchen: Kitchen, told: Gathered, tr: Translate) -> list[str]:
    """Entries of these days whose time was over, and who dropped them."""
    text = (
        "Entries of these days dropped at the end of their time: {count}, on {date}, by {who}"
        " and {second} (entry {number}): {reason}"
    )
    return [
        say(
            text,
            {
                "count": float(count),
                "date": business_time(usual_trade(kitchen), by.recorded_at)[0].isoformat(),
                "who": by.fact.who,
                "second": by.fact.second,
                "number": str(by.number),
                "reason": by.fact.reason,
            },
            translate=tr,
        )
        for by, count in told.dropped
    ]


def _chain_gaps(kitchen: Kitchen, told: Gathered, tr: Translate) -> list[str]:
    """What the chain itself shows: a clock that ran backwards, original files that are gone, accounts that
    somebody changed behind the program's back.
    """
    found = [
        say(
            "The clock ran backwards: entries {first} to {last} were recorded from {at} on, after an entry of"
            " {before}. They fill no gap here.",
            {
                "first": str(step.number),
                "last": str(step.last_number),
                "at": local_time(kitchen, step.recorded_at),
                "before": local_time(kitchen, step.before_at),
            },
            translate=tr,
        )
        for step in told.chain.set_back
    ]
    if told.chain.lost:
        text = "Original files are missing; entries that name them: {which}."
        which = ", ".join(str(n) for n in sorted(told.chain.lost.values()))
        found.append(say(text, {"which": which}, translate=tr))
    if told.chain.strange:
        text = "Accounts, devices or sessions that are not as the chain says: {count}. Somebody changed them."
        found.append(say(text, {"count": float(len(told.chain.strange))}, translate=tr))
    if not told.chain.guarded:
        found.append(tr("The database no longer refuses to change entries: its triggers were taken away."))
    return found


def checked_line(kitchen: Kitchen, chain: Checked, tr: Translate = str) -> str:
    """What was checked, when, and the whole head, to be kept elsewhere."""
    return say(
        "Chain checked at {at}: {count} entries, unbroken. Last hash {head}",
        {"at": local_time(kitchen, chain.at), "count": str(chain.entries_count), "head": chain.head},
        translate=tr,
    )


def notes_of(kitchen: Kitchen, told: Gathered, tr: Translate = str) -> list[str]:
    """Patterns that deserve a look, with their figures, in neutral words."""
    unit = "f" if kitchen.site.units == "us" else "c"
    found = []
    for cls, name in ((Reading, "readings"), (ThermometerChecked, "thermometers"), (OilDone, "oil")):
        entries = [
            Told(
                number=e.number,
                happened_at=e.happened_at,
                recorded_at=e.recorded_at,
                who=getattr(e.fact, "who", None) or "",
                reading_n=to_people(e.fact.core_c, unit) if isinstance(e.fact, Reading) else None,
            )
            for e in told.items[cls]
        ]
        found += [f"{tr(name)}: {say(n.text, n.values, kitchen.site.units, tr)}" for n in patterns(entries)]
    return found
