"""The inspection pack: everything an inspector asks for over a range of days, gaps shown, as one PDF and as
tables.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import zipfile
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, TypeVar, cast

from frywright.calibrate.thermometer import ThermometerCheck
from frywright.catalog import load as catalog
from frywright.ledger.checking import Checked, checked
from frywright.ledger.export import RISKY
from frywright.ledger.facts.columns import cell, heading
from frywright.ledger.facts.day import BoardTap, standing
from frywright.ledger.facts.fact import Fact, Kept
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.facts.probing import (
    CaseOpened,
    Reading,
    ThermometerChecked,
)
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, moment_of, usual_trade
from frywright.model.errors import InputError, Phrase
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.units import show_below, to_people
from frywright.paper.paper import PAPER, Section, pdf, section
from frywright.rooms.clock import now
from frywright.rooms.records.corrective import EARLIEST_YEAR, LATEST_YEAR, case_view, cases
from frywright.rooms.records.coverage import covered, gaps_of, listed, unchecked_days, without_case
from frywright.rooms.records.sheets import GATHERED, OUTSIDE, SHEETS
from frywright.rooms.standing import oil_limit_here
from frywright.rooms.thermometers import checks_in
from frywright.verdicts.patterns import Told, patterns

Translate = Callable[[str], str]
LONGEST_DAYS = 400
MOST_ROWS = 60
"""Rows of a table on paper; the tables carry every row."""
LATE_S = 1800.0
"""An entry recorded this long after it happened is late (common practice, no source)."""
F = TypeVar("F", bound=Fact)


@dataclass(frozen=True, slots=True, kw_only=True)
class Gathered:
    """Everything of a range of business days, by kind of fact, and the days that have one."""

    first: dt.date
    last: dt.date
    items: dict[type[Fact], list[Kept[Any]]]
    days_of: dict[type[Fact], set[dt.date]]
    chain: Checked
    checks: tuple[ThermometerCheck, ...]

    def of(self, cls: type[F]) -> list[Kept[F]]:
        """Facts of a class, by when they happened."""
        return cast(list[Kept[F]], self.items[cls])

    def set_back(self, number: int) -> bool:
        """Whether an entry was recorded by a clock that ran backwards."""
        return any(number in step.numbers for step in self.chain.set_back)

    @property
    def drops(self) -> list[Kept[BoardTap]]:
        """Loads dropped."""
        return [e for e in standing(self.of(BoardTap)) if e.fact.what == "drop"]

    @property
    def sound(self) -> list[Kept[Reading]]:
        """Readings whose time can be relied on."""
        return [e for e in self.of(Reading) if not self.set_back(e.number)]

    @property
    def below(self) -> list[Kept[Reading]]:
        """Readings below their limit, and those that a case was opened for, with the thermometer's error."""
        cased = {e.fact.reading_number for e in self.of(CaseOpened)}
        return [e for e in self.of(Reading) if e.fact.below or e.number in cased]

    @property
    def days(self) -> list[dt.date]:
        """Every day of the range."""
        return [self.first + dt.timedelta(days=n) for n in range((self.last - self.first).days + 1)]


def gather(store: Store, kitchen: Kitchen, first: dt.date, last: dt.date) -> Gathered:
    """Walk the chain, then read a range of days once.

    Raises
    ------
    InputError
        A range that runs backwards or is longer than 400 days.
    RecordError
        The chain is broken: nothing is made of it.
    """
    possible = first.year >= EARLIEST_YEAR and last.year < LATEST_YEAR
    if not possible or not 0 <= (last - first).days < LONGEST_DAYS:
        raise InputError(
            "range", Phrase("{first} to {last}", {"first": first, "last": last}), "forward, up to 400 days"
        )
    trade = usual_trade(kitchen)
    since, until = (
        moment_of(trade, first, 0.0),
        moment_of(trade, last + dt.timedelta(days=1), 0.0) + dt.timedelta(hours=4),
    )
    told = Gathered(
        first=first,
        last=last,
        items={c: [] for c in GATHERED},
        days_of={c: set() for c in GATHERED},
        chain=checked(store, now(), read_files=False),
        checks=tuple(checks_in(store)),
    )
    for cls in GATHERED:
        for item in store.facts_between(since, until, cls):
            day = business_time(trade, item.happened_at)[0]
            if first <= day <= last:
                told.items[cls].append(item)
                told.days_of[cls].add(day)
    return told


def gaps(kitchen: Kitchen, told: Gathered, tr: Translate = str) -> list[str]:
    """What is missing, day by day, in plain words: honest gaps are part of the pack."""
    anything = set().union(*told.days_of.values())
    found = [*_chain_gaps(told, tr)]
    for days, text in (
        (set(told.days) - anything, "No entry of any kind on {count} days: {which}."),
        (
            unchecked_days(kitchen, told.drops, told.checks),
            "Loads dropped and no thermometer with a valid check on {count} days: {which}.",
        ),
    ):
        if days:
            values = {"count": float(len(days)), "which": listed(days)}
            found.append(say(text, values, translate=tr))
    found += gaps_of(kitchen, told.drops, told.sound, tr)
    unchecked = sum(not e.fact.checked for e in told.of(Reading))
    if unchecked:
        text = "{count} readings by a thermometer without a valid check."
        found.append(say(text, {"count": float(unchecked)}, translate=tr))
    alone = without_case(told.of(Reading), [e.fact for e in told.of(CaseOpened)])
    if alone:
        text = "Readings below the limit without a corrective action: entries {which}."
        found.append(say(text, {"which": ", ".join(map(str, alone))}, translate=tr))
    return found


def _chain_gaps(told: Gathered, tr: Translate) -> list[str]:
    """What the chain itself shows: a clock that ran backwards, original files that are gone."""
    found = [
        say(
            "The clock ran backwards: entries {first} to {last} were recorded from {at} on, after an entry of"
            " {before}. They fill no gap here.",
            {
                "first": str(step.number),
                "last": str(step.last_number),
                "at": f"{step.recorded_at:%Y-%m-%d %H:%M} UTC",
                "before": f"{step.before_at:%Y-%m-%d %H:%M} UTC",
            },
            translate=tr,
        )
        for step in told.chain.set_back
    ]
    if told.chain.lost:
        text = "Original files are missing; entries that name them: {which}."
        which = ", ".join(str(n) for n in sorted(told.chain.lost.values()))
        found.append(say(text, {"which": which}, translate=tr))
    return found


def checked_line(chain: Checked, tr: Translate = str) -> str:
    """What was checked, when, and the whole head, to be kept elsewhere."""
    return say(
        "Chain checked at {at}: {count} entries, unbroken. Last hash {head}",
        {"at": f"{chain.at:%Y-%m-%d %H:%M} UTC", "count": str(chain.entries_count), "head": chain.head},
        translate=tr,
    )


def notes_of(kitchen: Kitchen, told: Gathered, tr: Translate = str) -> list[str]:
    """Patterns that deserve a look, with their figures, in neutral words."""
    unit = "f" if kitchen.site.units == "us" else "c"
    found = []
    for cls in (Reading, ThermometerChecked, OilDone):
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
        found += [
            f"{tr(cls.KIND)}: {say(n.text, n.values, str(kitchen.site.units), tr)}" for n in patterns(entries)
        ]
    return found


# ---------------------------------------------------------------- tables


def tables(
    kitchen: Kitchen, told: Gathered, tr: Translate = str
) -> dict[str, tuple[list[str], list[list[str]]]]:
    """Every table of the pack: its header and all rows, as people of a language and a kitchen read them."""
    system, trade = str(kitchen.site.units), usual_trade(kitchen)

    def row(item: Kept[Any], columns: tuple[str, ...]) -> list[str]:
        date, second = business_time(trade, item.happened_at)
        at = f"{int(second // 3600) % 24:02d}:{int(second // 60) % 60:02d}"
        cells = [_cell(item.fact, name, system, tr) for name in columns]
        late = tr("clock set back") if told.set_back(item.number) else _late(item)
        return [str(item.number), date.isoformat(), at, late, *cells, tr(item.author)]

    found = {}
    for sheet in SHEETS:
        header = [
            "number",
            "date",
            "time",
            "late",
            *(heading(sheet.fact, name) for name in sheet.columns),
            "entered by",
        ]
        items = [e for e in told.items[sheet.fact] if not sheet.taps or e.fact.what in sheet.taps]
        found[sheet.name] = ([tr(name) for name in header], [row(item, sheet.columns) for item in items])
    return found


def _cell(fact: Fact, name: str, system: str, tr: Translate) -> str:
    """A cell; a reading below its limit is never rounded up to it."""
    limit = getattr(fact, "limit_c", None)
    if name == "core_c" and limit is not None and getattr(fact, name) is not None:
        return show_below(getattr(fact, name), limit, "c", system)
    return cell(fact, name, system, tr)


def _local(kitchen: Kitchen, moment: dt.datetime | None) -> str:
    """A moment by the kitchen's own clock."""
    if moment is None:
        return ""
    date, second = business_time(usual_trade(kitchen), moment)
    return f"{date.isoformat()} {int(second // 3600) % 24:02d}:{int(second // 60) % 60:02d}"


def _run(row: Mapping[str, Any]) -> str:
    """Loads in a row without a reading, and from when to when."""
    return f"{row['run']}: {row['run_from']} – {row['run_to']}" if row["run"] else "–"


def _late(item: Kept[Any]) -> str:
    late = (item.recorded_at - item.happened_at).total_seconds()
    return f"{late / 60:.0f} min" if late > LATE_S else ""


def csv_zip(store: Store, kitchen: Kitchen, first: dt.date, last: dt.date, tr: Translate = str) -> bytes:
    """Every table as CSV in one archive; a text that a spreadsheet would run as a formula gets a leading
    quote.
    """
    told, out = gather(store, kitchen, first, last), io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, (header, rows) in tables(kitchen, told, tr).items():
            text = io.StringIO()
            writer = csv.writer(text)
            writer.writerow(header)
            writer.writerows([[f"'{c}" if c.startswith(RISKY) else c for c in row] for row in rows])
            archive.writestr(f"{name}.csv", text.getvalue())
        archive.writestr("checked.txt", checked_line(told.chain, tr) + "\n")
        archive.writestr("gaps.txt", "\n".join(gaps(kitchen, told, tr)) + "\n")
    return out.getvalue()


# ---------------------------------------------------------------- paper


def pack_view(
    store: Store,
    kitchen: Kitchen,
    first: dt.date,
    last: dt.date,
    tr: Translate = str,
    care: Sequence[Mapping[str, Any]] = (),
) -> dict[str, Any]:
    """The pack as a page and the PDF show it: sums, gaps, patterns, cases, dates of contractors, and where
    the chain stands.

    Parameters
    ----------
    care : rows of room Care; those that contractors do go into the pack
    """
    told = gather(store, kitchen, first, last)
    readings = told.of(Reading)
    contractors = [r for r in care if r["task"] in OUTSIDE]
    every, numbers = cases(store), {e.number for e in told.of(CaseOpened)}
    open_cases, within = [c for c in every if not c.closed], [c for c in every if c.opened.number in numbers]
    limit, title = oil_limit_here(store, kitchen, last)
    return {
        "from": first.isoformat(),
        "to": last.isoformat(),
        "place": kitchen.site.name,
        "days": len(told.days),
        "loads": [
            {
                "product": kitchen.product(row.product).name,
                "fryer": kitchen.fryer(row.fryer).name,
                "count": row.loads_count,
                "readings": row.readings_count,
                "run": row.longest_run_count,
                "run_from": _local(kitchen, row.run_from),
                "run_to": _local(kitchen, row.run_to),
            }
            for row in covered(told.drops, told.sound)
        ],
        "readings": len(readings),
        "below": len(told.below),
        "checks": len(told.of(ThermometerChecked)),
        "gaps": gaps(kitchen, told, tr),
        "patterns": notes_of(kitchen, told, tr),
        "cases": [case_view(store, kitchen, c, tr) for c in within],
        "open_cases": len(open_cases),
        "contractors": contractors,
        "oil_limit": f"{limit:g} %: {title.say(tr)}",
        "counts": {cls.KIND: len(items) for cls, items in told.items.items() if items},
        "entry": told.chain.entries_count,
        "hash": told.chain.head,
        "checked_at": told.chain.at.isoformat(),
        "checked": checked_line(told.chain, tr),
        "told": told,
    }


def pack_pdf(kitchen: Kitchen, view: Mapping[str, Any], language: str = "en", tr: Translate = str) -> bytes:
    """The pack on paper: sums and gaps first, then the newest rows of each table; the archive of tables
    carries every row.
    """
    caution = tr(
        "What is recorded, with its gaps; nothing in it says that any food was free of risk. Oil limit here"
    )
    return pdf(
        "handover.typ",
        "handover",
        {
            "title": tr("Inspection pack"),
            "place": kitchen.site.name,
            "when": f"{view['from']} – {view['to']} · {now():%Y-%m-%d %H:%M} UTC",
            "language": language,
            "size_pt": 8.5,
            "paper": PAPER[str(kitchen.site.units)],
            "sections": [*_sums(view, tr), *_newest(tables(kitchen, view["told"], tr), tr)],
            "signs": [tr("handed over by"), tr("received by")],
            "caution": f"{caution}: {view['oil_limit']}.",
            "foot": f"{view['checked']} · {tr('catalog')} {catalog.VERSION}",
        },
    )


def _sums(view: Mapping[str, Any], tr: Translate) -> list[Section]:
    """What stands first on paper: gaps, loads, patterns, cases, dates of contractors."""
    none = tr("None on record.")
    cases = [
        [
            str(c["number"]),
            f"{c['product']} {c['fryer']}: {c['found']}",
            "; ".join(f"{s['words']} {s['detail']} ({s['who']})" for s in c["steps"]),
            tr("closed") if c["closed"] else tr("open"),
        ]
        for c in view["cases"]
    ]
    dates = [
        [r["name"], r["title"], r["last_date"] or tr("no record"), r["date"] or "–"]
        for r in view["contractors"]
    ]
    return [
        section(tr("Gaps"), [], [1], [[g] for g in view["gaps"]], tr("No gap found.")),
        section(
            tr("Loads and readings"),
            [tr(w) for w in ("product", "fryer", "loads", "readings", "most loads in a row without one")],
            [4, 4, 1, 1, 5],
            [[r["product"], r["fryer"], str(r["count"]), str(r["readings"]), _run(r)] for r in view["loads"]],
            none,
        ),
        section(
            tr("Patterns that deserve a look"),
            [],
            [1],
            [[n] for n in view["patterns"]],
            tr("Nothing stands out."),
        ),
        section(
            tr("Corrective actions"),
            [tr("number"), tr("found"), tr("done"), tr("state")],
            [1, 5, 6, 2],
            cases,
            none,
        ),
        section(
            tr("Contractors and certified calibration"),
            [tr("fryer"), tr("task"), tr("last"), tr("due")],
            [3, 6, 2, 2],
            dates,
            none,
        ),
    ]


def _newest(found: dict[str, tuple[list[str], list[list[str]]]], tr: Translate) -> list[Section]:
    """The newest rows of every table that stands on paper."""
    sections = []
    for sheet in SHEETS:
        if not sheet.paper:
            continue
        header, rows = found[sheet.name]
        title = f"{tr(sheet.name)} ({len(rows)})"
        if len(rows) > MOST_ROWS:
            title += f", {tr('the newest')} {MOST_ROWS}"
        widths = [1, 2, 1, 1, *([2] * len(sheet.columns)), 2]
        sections.append(section(title, header, widths, rows[-MOST_ROWS:], tr("None on record.")))
    return sections
