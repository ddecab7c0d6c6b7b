"""The inspection pack: everything an inspector asks for over a range of days, gaps shown; its page, and every
row of its tables.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import zipfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, cast
from zoneinfo import ZoneInfo

from frywright.catalog import load as catalog
from frywright.ledger.anchors import Anchor, anchor_or_why
from frywright.ledger.attachments import attachments_of
from frywright.ledger.export import inert
from frywright.ledger.facts.care import ReportAttached
from frywright.ledger.facts.columns import cell, heading
from frywright.ledger.facts.day import GapExplained
from frywright.ledger.facts.fact import Fact, Kept
from frywright.ledger.facts.probing import CaseOpened, HoldRead, Reading, ThermometerChecked
from frywright.ledger.store import Point, Store
from frywright.model.business_day import business_time, local_time, usual_trade
from frywright.model.errors import RecordError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.plain import plain
from frywright.model.tongues import Translate
from frywright.model.units import show_below
from frywright.rooms.clock import now
from frywright.rooms.premises import STATED, place_named
from frywright.rooms.records.case_rows import CaseView
from frywright.rooms.records.corrective import case_view, cases
from frywright.rooms.records.coverage import Covered, covered
from frywright.rooms.records.gathered import Gathered, checked_line, gaps, gather, notes_of
from frywright.rooms.records.reports import file_name
from frywright.rooms.records.rules import rule_rows
from frywright.rooms.records.sheets import OUTSIDE, SHEETS, Sheet
from frywright.rooms.standing import CareRow, fryer_name, oil_limit_here, product_name, stopped

# ---------------------------------------------------------------- tables


def header_of(sheet: Sheet, tr: Translate = str) -> list[str]:
    """Names of a table's columns."""
    own = [heading(sheet.fact, name) for name in sheet.columns]
    return [tr(name) for name in ("number", "business day", "time", "mark", *own, "entered by")]


def rows_of(told: Gathered, sheet: Sheet) -> list[Kept[Any]]:
    """Entries of a table, by when they happened."""
    return [e for e in told.items[sheet.fact] if not sheet.taps or e.fact.what in sheet.taps]


class Rows:
    """Entries as rows of text, as people of a language and a kitchen read them."""

    def __init__(self, kitchen: Kitchen, told: Gathered, tr: Translate = str) -> None:
        self.told, self.tr, self.system = told, tr, kitchen.site.units
        self.kitchen, self.trade = kitchen, usual_trade(kitchen)
        self.zone = ZoneInfo(self.trade.zone)
        self.mistyped = told.mistyped
        self.levels = {e.fact.reading_number: e.fact.limit_c for e in told.of(CaseOpened)}
        self.names = {
            "fryer": {f.key: f.name for f in kitchen.fryers},
            "vat": {f.key: f.name for f in kitchen.fryers},
            "product": {p.key: p.name for p in kitchen.products},
            "task": {t.key: tr(t.title) for t in (*catalog.care_tasks(), *kitchen.care)},
        }

    def row(self, item: Kept[Any], columns: Sequence[str]) -> list[str]:
        """One row: number, business day, local time, what marks it, its columns, who entered it."""
        date, _ = business_time(self.trade, item.happened_at)
        at = item.happened_at.astimezone(self.zone).isoformat(" ", "minutes")
        cells = [self.cell(item, name) for name in columns]
        return [str(item.number), date.isoformat(), at, self.mark(item), *cells, self.tr(item.author)]

    def mark(self, item: Kept[Any]) -> str:
        """Why a row is not like others: late, by a clock set back, mistyped or in a mistyped one's place."""
        found = []
        if self.told.set_back(item.number):
            found.append(self.tr("clock set back"))
        elif late := self.told.late(item):
            found.append(_how_late(late, self.tr))
        if item.number in self.mistyped:
            right = self.mistyped[item.number]
            found.append(self.tr("mistyped, see {number}").format(number=right))
        if item.replaces is not None:
            found.append(self.tr("in place of {number}").format(number=item.replaces))
        return "; ".join(found)

    def apart(self, item: Kept[Any]) -> str:
        """A reading with its thermometer's error taken off, where that lowers what people see."""
        fact = item.fact
        if fact.corrected_c is None or fact.corrected_c >= fact.core_c:
            return ""
        text = self.cell(item, "corrected_c")
        return "" if text == self.cell(item, "core_c") else text

    def cell(self, item: Kept[Any], name: str) -> str:
        """One column. A reading below its limit is never rounded up to it, nor to the level of its case."""
        fact: Fact = item.fact
        value = getattr(fact, name)
        if name in ("core_c", "corrected_c") and value is not None:
            limit, level = getattr(fact, "limit_c", None), self.levels.get(item.number)
            shown = next((x for x in (limit, level) if x is not None and value < x), None)
            if shown is not None:
                return show_below(value, shown, "c", self.system)
        if name in self.names and value:
            return self.names[name].get(value, str(value))
        if name == "load" and isinstance(fact, Reading) and fact.product and fact.fryer:
            return f"{product_name(self.kitchen, fact.product)}, {fryer_name(self.kitchen, fact.fryer)}"
        return cell(fact, name, self.system, self.tr)


def _how_late(late_s: float, tr: Translate) -> str:
    """How late an entry came, in a unit that people read."""
    if late_s < 2 * 3600:
        return tr("{count} min late").format(count=f"{late_s / 60:.0f}")
    if late_s < 2 * 86400:
        return tr("{count} h late").format(count=f"{late_s / 3600:.0f}")
    return tr("{count} days late").format(count=f"{late_s / 86400:.0f}")


def tables(
    kitchen: Kitchen, told: Gathered, tr: Translate = str
) -> dict[str, tuple[list[str], list[list[str]]]]:
    """Every table of the pack: its header and all rows, as people of a language and a kitchen read them."""
    made = Rows(kitchen, told, tr)
    return {
        sheet.name: (header_of(sheet, tr), [made.row(e, sheet.columns) for e in rows_of(told, sheet)])
        for sheet in SHEETS
    }


def csv_zip(store: Store, kitchen: Kitchen, first: dt.date, last: dt.date, tr: Translate = str) -> bytes:
    """Every row of every table as CSV in one archive, gaps and their explanations, the anchor, and the
    reports attached. What a spreadsheet would run as a formula gets a quote before it.
    """
    told, out = gather(store, kitchen, first, last), io.BytesIO()
    anchor, why = _anchor(store, kitchen, told)
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, (header, rows) in tables(kitchen, told, tr).items():
            _write_csv(archive, f"{name}.csv", header, rows)
        said = [tr(word) for word in ("date", "what is missing", "why", "who", "recorded")]
        _write_csv(archive, "explained.csv", said, explained(store, kitchen, first, last, tr))
        archive.writestr("checked.txt", checked_line(kitchen, told.chain, tr) + "\n")
        archive.writestr("anchor.txt", (anchor.text if anchor else why.say(tr) if why else "") + "\n")
        archive.writestr("gaps.txt", "\n".join(gaps(kitchen, told, tr)) + "\n")
        for item in told.of(ReportAttached):
            try:
                with attachments_of(store).open(item.fact.sha256) as stream:
                    archive.writestr(f"reports/{item.number}-{file_name(item.fact.name)}", stream.read())
            except RecordError as error:
                archive.writestr(f"reports/{item.number}-missing.txt", error.say(tr) + "\n")
    return out.getvalue()


def _write_csv(
    archive: zipfile.ZipFile, name: str, header: Sequence[str], rows: Sequence[Sequence[str]]
) -> None:
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(header)
    writer.writerows([[inert(cell) for cell in row] for row in rows])
    archive.writestr(name, text.getvalue())


# ---------------------------------------------------------------- the page


def explained(
    store: Store, kitchen: Kitchen, first: dt.date, last: dt.date, tr: Translate = str
) -> list[list[str]]:
    """What was said of gaps of these days: day, what was missing, why, who, when it was recorded."""
    return [
        [
            e.fact.date.isoformat(),
            tr(e.fact.lack),
            e.fact.words,
            e.fact.who,
            local_time(kitchen, e.recorded_at),
        ]
        for e in store.facts(GapExplained)
        if first <= e.fact.date <= last
    ]


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadRow:
    """Loads of a product in a fryer, readings of them, and the longest run without one."""

    product: str
    fryer: str
    count: int
    readings: int
    share: str
    run: int
    run_from: str
    run_to: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FailingRow:
    """A reading below its limit, and the case that it opened; 0 for none."""

    number: int
    at: str
    load: str
    pieces: int
    read: str
    corrected: str
    limit: str
    level: str
    thermometer: str
    checked: bool
    who: str
    author: str
    mark: str
    case: int


@dataclass(frozen=True, slots=True, kw_only=True)
class PackView:
    """The pack as a page and its paper show it. ``answer`` is a question and its answer in a row each."""

    from_: str
    to: str
    place: str
    address: str
    permit: str
    operator: str
    stated: Mapping[str, str]
    zone: str
    days: int
    loads: tuple[LoadRow, ...]
    fryers: tuple[LoadRow, ...]
    readings: int
    below: int
    failing: tuple[FailingRow, ...]
    checks: int
    gaps: Sequence[str]
    explained: list[list[str]]
    patterns: Sequence[str]
    cases: tuple[CaseView, ...]
    open_cases: int
    rules: list[list[str]]
    contractors: tuple[CareRow, ...]
    unreported: tuple[int, ...]
    oil_limit: str
    counts: Mapping[str, int]
    entry: int
    hash: str
    checked_at: str
    checked: str
    anchor: str
    anchor_key: str
    anchor_missing: str
    made_at: str
    answer: Sequence[Sequence[str]] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Pack:
    """The pack as it is shown, and the entries that it stands on."""

    view: PackView
    told: Gathered


def pack_of(
    store: Store,
    kitchen: Kitchen,
    first: dt.date,
    last: dt.date,
    tr: Translate = str,
    care: Sequence[CareRow] = (),
) -> Pack:
    """The pack as a page and the PDF show it: the answer in short, sums, gaps, patterns, readings below their
    limit, cases, rules, dates of contractors, and where the chain stands.

    Parameters
    ----------
    care : rows of room Care; those that contractors do go into the pack
    """
    told = gather(store, kitchen, first, last)
    every, numbers = cases(store), {e.number for e in told.of(CaseOpened)}
    within = [c for c in every if c.opened.number in numbers]
    limit, title = oil_limit_here(store, kitchen, last)
    anchor, why = _anchor(store, kitchen, told)
    place = place_named(store)
    missing, drops = tr("not stated"), told.drops
    stated = {name: getattr(place, name) for name in STATED}
    view = PackView(
        from_=first.isoformat(),
        to=last.isoformat(),
        place=kitchen.site.name,
        **{name: value or missing for name, value in stated.items()},
        stated=stated,
        zone=usual_trade(kitchen).zone,
        days=len(told.days),
        loads=tuple(_load(kitchen, row) for row in covered(drops, told.sound)),
        fryers=tuple(_load(kitchen, row) for row in covered(drops, told.sound, by_product=False)),
        readings=len(told.of(Reading)),
        below=len(told.below),
        failing=_failing(kitchen, told, tr),
        checks=len(told.of(ThermometerChecked)),
        gaps=gaps(kitchen, told, tr),
        explained=explained(store, kitchen, first, last, tr),
        patterns=notes_of(kitchen, told, tr),
        cases=tuple(case_view(store, kitchen, c, tr) for c in within),
        open_cases=sum(not c.closed for c in every),
        rules=rule_rows(store, kitchen, last, tr),
        contractors=tuple(r for r in care if r.task in OUTSIDE),
        unreported=tuple(e.number for e in told.unreported),
        oil_limit=f"{limit:g} %: {title.say(tr)}",
        counts={cls.KIND: len(items) for cls, items in told.items.items() if items},
        entry=told.chain.entries_count,
        hash=told.chain.head,
        checked_at=told.chain.at.isoformat(),
        checked=checked_line(kitchen, told.chain, tr),
        anchor=anchor.text if anchor else "",
        anchor_key=anchor.key_mark if anchor else "",
        anchor_missing=why.say(tr) if why else "",
        made_at=local_time(kitchen, now()),
    )
    out_of_use = [fryer_name(kitchen, key) for key in stopped(store)]
    return Pack(view=replace(view, answer=_answer(kitchen, view, told, out_of_use, tr)), told=told)


def _anchor(store: Store, kitchen: Kitchen, told: Gathered) -> tuple[Anchor | None, Any]:
    head = Point(number=told.chain.entries_count, hash=told.chain.head)
    return anchor_or_why(store, head, told.chain.at, kitchen.site.name)


def _load(kitchen: Kitchen, row: Covered) -> LoadRow:
    return LoadRow(
        product=product_name(kitchen, row.product),
        fryer=fryer_name(kitchen, row.fryer),
        count=row.loads_count,
        readings=row.readings_count,
        share=f"{100 * row.readings_count / row.loads_count:.1f}",
        run=row.longest_run_count,
        run_from=local_time(kitchen, row.run_from) if row.run_from else "",
        run_to=local_time(kitchen, row.run_to) if row.run_to else "",
    )


def _failing(kitchen: Kitchen, told: Gathered, tr: Translate = str) -> tuple[FailingRow, ...]:
    """Every reading below its limit, mistyped ones among them, with the case that it opened."""
    made, of_case = Rows(kitchen, told, tr), {e.fact.reading_number: e for e in told.of(CaseOpened)}
    found, items = [], [*told.below, *(e for e in told.of(HoldRead) if _short(e, of_case))]
    for item in sorted(cast(list[Kept[Any]], items), key=_when):
        case, fact = of_case.get(item.number) or of_case.get(item.replaces or 0), item.fact
        load = made.cell(item, "load") if isinstance(fact, Reading) else made.cell(item, "product")
        level = case.fact.limit_c if case else None
        found.append(
            FailingRow(
                number=item.number,
                at=local_time(kitchen, item.happened_at),
                load=load if isinstance(fact, Reading) else f"{load}, {fact.kept_in}",
                pieces=int(fact.units_count) if isinstance(fact, Reading) else 0,
                read=made.cell(item, "core_c"),
                corrected=made.apart(item),
                limit=made.cell(item, "limit_c"),
                level=show_below(level, level, "c", made.system) if level is not None else "",
                thermometer=fact.thermometer,
                checked=bool(fact.checked),
                who=fact.who or "",
                author=tr(item.author),
                mark=made.mark(item),
                case=case.number if case else 0,
            )
        )
    return tuple(found)


def _when(item: Kept[Any]) -> tuple[dt.datetime, int]:
    return item.happened_at, item.number


def _short(item: Kept[HoldRead], of_case: Mapping[int, Any]) -> bool:
    return item.fact.below or item.number in of_case


def _answer(
    kitchen: Kitchen, view: PackView, told: Gathered, out_of_use: Sequence[str], tr: Translate
) -> list[list[str]]:
    """The pack on one page: question and answer in a row each."""
    loads, readings = sum(r.count for r in view.loads), view.readings
    longest = max(view.fryers, key=lambda r: r.run, default=None)
    short = [r for r in view.failing if not r.case]
    held = told.of(HoldRead)
    overdue = [r for r in view.contractors if r.state in ("overdue", "unknown")]
    bare = len(told.unreported)
    failed = sum(e.fact.outcome != "good" for e in told.of(ThermometerChecked))

    def line(text: str, **values: Any) -> str:
        return say(text, {k: str(v) for k, v in values.items()}, kitchen.site.units, tr)

    run = line("–")
    if longest is not None and longest.run:
        run = line("{run} in {fryer}, {run_from} – {run_to}", **plain(longest))
    return [
        [tr("Loads dropped, probe readings"), line("{loads} / {readings}", loads=loads, readings=readings)],
        [tr("Most loads in a row without a reading"), run],
        [
            tr("Readings below their limit"),
            line(
                "{below}; of them without a corrective action {bare}, marked as mistyped {wrong}",
                below=len(view.failing),
                bare=len(short),
                wrong=sum(r.number in told.mistyped for r in view.failing),
            ),
        ],
        [
            tr("Corrective actions"),
            line("{within} in these days; open today: {open}", within=len(view.cases), open=view.open_cases),
        ],
        [tr("Hot-holding readings"), str(len(held))],
        [tr("Thermometer checks"), line("{count}; failed: {failed}", count=view.checks, failed=failed)],
        [
            tr("Contractors and certified calibration"),
            line(
                "overdue or without a record: {late} of {all}; done in these days without a report attached:"
                " {bare}",
                late=len(overdue),
                all=len(view.contractors),
                bare=bare,
            ),
        ],
        [tr("Fryers out of use today"), ", ".join(out_of_use) or tr("none")],
        [tr("Gaps"), line("{count}, listed below", count=len(view.gaps))],
    ]
