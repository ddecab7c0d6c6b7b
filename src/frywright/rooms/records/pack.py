"""The inspection pack: everything an inspector asks for over a range of days, gaps shown, as one PDF and as
tables.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import zipfile
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, TypeVar, cast

from frywright.catalog import load as catalog
from frywright.ledger.export import RISKY
from frywright.ledger.facts.care import CardSigned, CareDone, Reopened, StepSigned, StopUse
from frywright.ledger.facts.columns import cell, heading
from frywright.ledger.facts.cook import ReadBackTaken
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.fact import Fact, Kept
from frywright.ledger.facts.oil import OilDone, OilRefused
from frywright.ledger.facts.people import SkillShown
from frywright.ledger.facts.probing import (
    CalibrationKept,
    CaseOpened,
    CaseStep,
    LookedBack,
    Reading,
    ThermometerChecked,
)
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, moment_of, usual_trade
from frywright.model.errors import InputError, Phrase
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.units import to_people
from frywright.paper.paper import PAPER, pdf, section
from frywright.rooms.clock import now
from frywright.rooms.records.corrective import EARLIEST_YEAR, LATEST_YEAR, case_view, cases
from frywright.rooms.standing import oil_limit_here
from frywright.verdicts.patterns import Told, patterns

Translate = Callable[[str], str]
LONGEST_DAYS = 400
MOST_ROWS = 60
"""Rows of a table on paper; the tables carry every row."""
LATE_S = 1800.0
"""An entry recorded this long after it happened is late (common practice, no source)."""
OUTSIDE = {
    "suppression",
    "hood_clean",
    "yearly_electric",
    "yearly_gas",
    "yearly_relief",
    "calibration_formal",
}
"""Tasks of contractors and of certified calibration."""
F = TypeVar("F", bound=Fact)


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A table of the pack: a kind of fact, its columns, the taps it takes, and whether it stands on paper."""

    name: str
    fact: type[Fact]
    columns: tuple[str, ...]
    taps: tuple[str, ...] = ()
    paper: bool = True


SHEETS = (
    Sheet(
        name="cooks",
        fact=BoardTap,
        columns=("what", "fryer", "product", "pieces_count", "reason", "who"),
        taps=("drop", "lift"),
    ),
    Sheet(
        name="discards",
        fact=BoardTap,
        columns=("what", "product", "pieces_count", "reason", "who"),
        taps=("discard", "count"),
    ),
    Sheet(
        name="readings",
        fact=Reading,
        columns=("load", "thermometer", "core_c", "limit_c", "checked", "who"),
    ),
    Sheet(
        name="thermometers",
        fact=ThermometerChecked,
        columns=("thermometer", "ice_c", "boil_c", "outcome"),
    ),
    Sheet(
        name="corrective",
        fact=CaseOpened,
        columns=("what", "fryer", "product", "pieces_count", "core_c", "limit_c", "words"),
        paper=False,
    ),
    Sheet(
        name="corrective_steps",
        fact=CaseStep,
        columns=("case_number", "step", "disposition", "cause", "decision", "core_c", "words", "who"),
        paper=False,
    ),
    Sheet(
        name="calibration",
        fact=CalibrationKept,
        columns=("cut", "coating", "lid", "program", "made_on"),
    ),
    Sheet(
        name="read_backs",
        fact=ReadBackTaken,
        columns=("name", "version", "fryer", "matches", "read_by", "checked_by"),
    ),
    Sheet(name="training", fact=SkillShown, columns=("person", "skill", "observed_by", "expires")),
    Sheet(name="care", fact=CareDone, columns=("fryer", "task", "who", "role", "note", "date")),
    Sheet(
        name="procedures",
        fact=CardSigned,
        columns=("key", "version", "fryer", "who", "second", "note"),
    ),
    Sheet(name="oil", fact=OilDone, columns=("vat", "what", "raw", "who")),
    Sheet(name="refused", fact=OilRefused, columns=("raw", "reason"), paper=False),
    Sheet(name="stop_use", fact=StopUse, columns=("fryer", "reason", "words", "who")),
    Sheet(name="releases", fact=Reopened, columns=("fryer", "who", "role", "finding")),
    Sheet(
        name="commissioning",
        fact=StepSigned,
        columns=("fryer", "step", "who", "second", "note", "passed_over"),
    ),
)
GATHERED: tuple[type[Fact], ...] = tuple(dict.fromkeys([*(s.fact for s in SHEETS), LookedBack]))


@dataclass(frozen=True, slots=True, kw_only=True)
class Gathered:
    """Everything of a range of business days, by kind of fact, and the days that have one."""

    first: dt.date
    last: dt.date
    items: dict[type[Fact], list[Kept[Any]]]
    days_of: dict[type[Fact], set[dt.date]]

    def of(self, cls: type[F]) -> list[Kept[F]]:
        """Facts of a class, by when they happened."""
        return cast(list[Kept[F]], self.items[cls])

    @property
    def days(self) -> list[dt.date]:
        """Every day of the range."""
        return [self.first + dt.timedelta(days=n) for n in range((self.last - self.first).days + 1)]


def gather(store: Store, kitchen: Kitchen, first: dt.date, last: dt.date) -> Gathered:
    """Read a range of days once.

    Raises
    ------
    InputError
        A range that runs backwards or is longer than 400 days.
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
        first=first, last=last, items={c: [] for c in GATHERED}, days_of={c: set() for c in GATHERED}
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
    trade = usual_trade(kitchen)
    dropped = {business_time(trade, e.happened_at)[0] for e in told.of(BoardTap) if e.fact.what == "drop"}
    anything = set().union(*told.days_of.values())
    rows = (
        (set(told.days) - anything, "No entry of any kind on {count} days: {which}."),
        (
            dropped - told.days_of[Reading],
            "Loads dropped and no probe reading on {count} days: {which}.",
        ),
        (
            dropped - told.days_of[ThermometerChecked],
            "Loads dropped and no thermometer check on {count} days: {which}.",
        ),
    )
    told_gaps = [
        say(text, {"count": float(len(found)), "which": _listed(sorted(found))}, translate=tr)
        for found, text in rows
        if found
    ]
    unchecked = sum(not e.fact.checked for e in told.of(Reading))
    if unchecked:
        told_gaps.append(
            say(
                "{count} readings by a thermometer without a valid check.",
                {"count": float(unchecked)},
                translate=tr,
            )
        )
    return told_gaps


def _listed(days: list[dt.date]) -> str:
    shown = ", ".join(d.isoformat() for d in days[:8])
    return shown + (" …" if len(days) > 8 else "")


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
        cells = [cell(item.fact, name, system, tr) for name in columns]
        return [str(item.number), date.isoformat(), at, _late(item), *cells]

    found = {}
    for sheet in SHEETS:
        header = ["number", "date", "time", "late", *(heading(sheet.fact, name) for name in sheet.columns)]
        items = [e for e in told.items[sheet.fact] if not sheet.taps or e.fact.what in sheet.taps]
        found[sheet.name] = ([tr(name) for name in header], [row(item, sheet.columns) for item in items])
    return found


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
    loads = Counter((e.fact.product, e.fact.fryer) for e in told.of(BoardTap) if e.fact.what == "drop")
    readings = told.of(Reading)
    contractors = [r for r in care if r["task"] in OUTSIDE]
    every, numbers = cases(store), {e.number for e in told.of(CaseOpened)}
    open_cases, within = [c for c in every if not c.closed], [c for c in every if c.opened.number in numbers]
    limit, title = oil_limit_here(store, kitchen, last)
    end = store.last()
    return {
        "from": first.isoformat(),
        "to": last.isoformat(),
        "place": kitchen.site.name,
        "days": len(told.days),
        "loads": [
            {"product": kitchen.product(p).name, "fryer": kitchen.fryer(f).name, "count": n}
            for (p, f), n in sorted(loads.items())
        ],
        "readings": len(readings),
        "below": sum(e.fact.below for e in readings),
        "checks": len(told.of(ThermometerChecked)),
        "gaps": gaps(kitchen, told, tr),
        "patterns": notes_of(kitchen, told, tr),
        "cases": [case_view(store, kitchen, c, tr) for c in within],
        "open_cases": len(open_cases),
        "contractors": contractors,
        "oil_limit": f"{limit:g} %: {title.say(tr)}",
        "counts": {cls.KIND: len(items) for cls, items in told.items.items() if items},
        "entry": end.number,
        "hash": end.hash,
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
            "foot": (
                f"{tr('Last entry')} {view['entry']}, {view['hash'][:16]}… · {tr('catalog')}"
                f" {catalog.VERSION}"
            ),
        },
    )


def _sums(view: Mapping[str, Any], tr: Translate) -> list[dict[str, Any]]:
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
            tr("Loads dropped"),
            [tr("product"), tr("fryer"), tr("loads")],
            [4, 4, 1],
            [[r["product"], r["fryer"], str(r["count"])] for r in view["loads"]],
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


def _newest(found: dict[str, tuple[list[str], list[list[str]]]], tr: Translate) -> list[dict[str, Any]]:
    """The newest rows of every table that stands on paper."""
    sections = []
    for sheet in SHEETS:
        if not sheet.paper:
            continue
        header, rows = found[sheet.name]
        title = f"{tr(sheet.name)} ({len(rows)})"
        if len(rows) > MOST_ROWS:
            title += f", {tr('the newest')} {MOST_ROWS}"
        widths = [1, 2, 1, 1, *([2] * len(sheet.columns))]
        sections.append(section(title, header, widths, rows[-MOST_ROWS:], tr("None on record.")))
    return sections
