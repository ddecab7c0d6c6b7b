"""The inspection pack on paper: the answer on its first page, then gaps, every reading below its limit, every
case whole, and of the tables the rows that matter; the archive of tables carries every row.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from frywright.catalog import load as catalog
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import HoldRead, Reading
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.paper.code import code_svg
from frywright.paper.paper import PAPER, Section, pdf, section
from frywright.rooms.premises import STATED
from frywright.rooms.records.case_rows import CaseView, StepRow
from frywright.rooms.records.gathered import Gathered
from frywright.rooms.records.pack import LoadRow, Pack, PackView, Rows, header_of, rows_of
from frywright.rooms.records.sheets import SHEETS, Sheet

MOST_MARKED, MOST_ROWS = 200, 40
"""Rows of a table on paper: so many of those that matter, and filled up to so many with others."""
CODE = "anchor.svg"
WIDTHS = {
    "load": 7,
    "fryer": 5,
    "vat": 5,
    "product": 5,
    "task": 7,
    "words": 5,
    "note": 5,
    "sha256": 6,
    "name": 4,
}
"""Widths of columns that need more than others."""


def pack_pdf(kitchen: Kitchen, pack: Pack, language: str = "en", tr: Translate = str) -> bytes:
    """The pack on paper."""
    view = pack.view
    caution = tr(
        "What is recorded, with its gaps; nothing in it says that any food was free of risk. Oil limit here"
    )
    data = {
        "title": tr("Inspection pack"),
        "place": view.place,
        "facts": [[tr(name), getattr(view, name)] for name in STATED],
        "when": f"{view.from_} – {view.to}",
        "made": f"{tr('made')} {view.made_at}",
        "zone": say(
            "Times are by the kitchen's own clock ({zone}), each with its distance from UTC.",
            {"zone": view.zone},
            translate=tr,
        ),
        "answer": view.answer,
        "language": language,
        "paper": PAPER[kitchen.site.units],
        "sections": [*_sums(view, tr), *_cases(view, tr), *_tables(kitchen, pack.told, tr)],
        "contents": tr("Contents"),
        "signs": [tr("handed over by"), tr("received by")],
        "caution": f"{caution}: {view.oil_limit}.",
        "checked": view.checked,
        "anchor": view.anchor.split(),
        "anchor_words": _anchor_words(view, tr),
        "foot": f"{view.place} · {view.from_} – {view.to} · {view.entry}:{view.hash[:16]}…",
        "catalog": f"{tr('catalog')} {catalog.VERSION}",
    }
    pictures = {CODE: code_svg(view.anchor).encode()} if view.anchor else {}
    return pdf("pack.typ", "pack", {**data, "code": CODE if pictures else ""}, pictures)


def _anchor_words(view: PackView, tr: Translate) -> str:
    if not view.anchor:
        return f"{tr('This pack carries no anchor.')} {view.anchor_missing}"
    return say(
        "Anchor of this pack, key {mark}. Keep it away from the kitchen: with it anybody can see later"
        " whether entries up to {number} were changed or removed.",
        {"mark": view.anchor_key, "number": str(view.entry)},
        translate=tr,
    )


def _load_rows(rows: Sequence[LoadRow], *names: str) -> list[list[str]]:
    return [
        [
            *(getattr(row, name) for name in names),
            str(row.count),
            str(row.readings),
            f"{row.share} %",
            f"{row.run}: {row.run_from} – {row.run_to}" if row.run else "–",
        ]
        for row in rows
    ]


def _sums(view: PackView, tr: Translate) -> list[Section]:
    """What stands before the tables."""
    none = tr("None on record.")
    counted = [tr(w) for w in ("loads", "readings", "of loads", "most loads in a row without one")]
    dates = [
        [r.name, r.title, r.last_date or tr("no record"), r.last_note or "–", r.date or "–"]
        for r in view.contractors
    ]
    said = [tr(w) for w in ("date", "what is missing", "why", "who", "recorded")]
    return [
        section(tr("Gaps"), [], [1], [[g] for g in view.gaps], tr("No gap found.")),
        section(tr("Gaps explained"), said, [2, 2, 6, 2, 3], view.explained, none),
        _failing(view, tr),
        section(
            tr("Rules"),
            [tr(w) for w in ("what", "rule and edition", "limit of a hand reading")],
            [3, 6, 4],
            view.rules,
        ),
        section(
            tr("Loads and readings by product and fryer"),
            [tr("product"), tr("fryer"), *counted],
            [4, 4, 2, 2, 2, 6],
            _load_rows(view.loads, "product", "fryer"),
            none,
        ),
        section(
            tr("Loads and readings by fryer"),
            [tr("fryer"), *counted],
            [8, 2, 2, 2, 6],
            _load_rows(view.fryers, "fryer"),
            none,
        ),
        section(
            tr("Patterns that deserve a look"),
            [],
            [1],
            [[n] for n in view.patterns],
            tr("Nothing stands out.") if view.loads else tr("No load and no reading: nothing to look at."),
        ),
        section(
            tr("Contractors and certified calibration"),
            [tr("fryer"), tr("task"), tr("last"), tr("report or tag"), tr("due")],
            [3, 5, 2, 3, 2],
            dates,
            none,
        ),
    ]


def _failing(view: PackView, tr: Translate) -> Section:
    """Every reading below its limit, with its case."""
    read = [
        [
            str(r.number),
            r.at,
            f"{r.load} ({r.pieces})" if r.pieces else r.load,
            f"{r.read} ({r.corrected} {tr('corrected')})" if r.corrected else r.read,
            f"{r.limit} ({r.level})" if r.level else r.limit,
            f"{r.thermometer}, {tr('checked') if r.checked else tr('not checked')}",
            f"{r.who} / {r.author}",
            f"{r.case} {r.mark}".strip() if r.case else f"{tr('none')} {r.mark}".strip(),
        ]
        for r in view.failing
    ]
    columns = ("number", "time", "load (pieces)", "read", "limit (with the thermometer's error)")
    marks = ("thermometer", "read by / entered by", "case")
    return section(
        tr("Readings below their limit: every one"),
        [tr(w) for w in (*columns, *marks)],
        [2, 4, 5, 3, 3, 3, 4, 3],
        read,
        tr("None on record."),
    )


def _case_rows(case: CaseView, tr: Translate) -> list[list[str]]:
    """A case in its lines: what was found, every step, loads before it, and what stands in its way."""
    state = tr("closed") if case.closed else tr("open")
    about = " ".join(w for w in (case.product, case.fryer) if w)
    pieces = f" ({case.pieces})" if case.pieces else ""
    note = case.note if case.note != case.found else ""
    found = [f"{tr(case.title)}: {case.found}", note, case.thermometer]
    words = " · ".join(dict.fromkeys(w for w in found if w))
    rows = [[str(case.number), case.at, f"{about}{pieces}", f"{words} · {state}", _two(case)]]
    for step in case.steps:
        done = " · ".join(w for w in (step.detail, step.note) if w)
        rows.append(["", step.at, step.words, done, _two(step)])
    for load in case.earlier:
        if not load.decision or not case.closed:
            words = tr(load.decision or "undecided")
            rows.append(["", load.at, tr("earlier"), f"{load.pieces} {load.product}: {words}", ""])
    if case.unknown_before:
        rows.append(["", "", tr("earlier"), case.unknown_before, ""])
    if case.missing and not case.closed:
        rows.append(["", "", tr("Not before"), "; ".join(case.missing), ""])
    return rows


def _cases(view: PackView, tr: Translate) -> list[Section]:
    """Every case whole: what was found, every step with its time, who, who entered it."""
    if not view.cases:
        return [section(tr("Corrective actions: every one, whole"), [], [1], [], tr("None on record."))]
    rows = [row for case in view.cases for row in _case_rows(case, tr)]
    header = [tr(w) for w in ("case", "time", "load (pieces), step", "found, done", "by / entered by")]
    return [section(tr("Corrective actions: every one, whole"), header, [2, 4, 5, 10, 4], rows)]


def _two(row: CaseView | StepRow) -> str:
    return f"{row.who} / {row.author}" if row.who != row.author else row.who


def _tables(kitchen: Kitchen, told: Gathered, tr: Translate) -> list[Section]:
    """Of every table that stands on paper the rows that matter, and what was left out."""
    made, sections, empty = Rows(kitchen, told, tr), [], []
    for sheet in SHEETS:
        items, title = rows_of(told, sheet), _title(tr(sheet.name))
        if not sheet.paper:
            continue
        if not items:
            empty.append(title)
            continue
        chosen = _chosen(told, sheet, items)
        found = _table(made, sheet, chosen, f"{title} ({len(items)})")
        if len(chosen) < len(items):
            text = (
                "{shown} of {count} rows: those that are below, failed, late, mistyped or in a mistyped one's"
                " place, then {rest}. Every row is in {file} of the archive."
            )
            low = tr("the lowest") if sheet.fact in (Reading, HoldRead) else tr("the newest")
            values = {
                "shown": str(len(chosen)),
                "count": str(len(items)),
                "rest": low,
                "file": f"{sheet.name}.csv",
            }
            found = replace(found, note=say(text, values, translate=tr))
        sections.append(found)
    if empty:
        sections.append(section(tr("Tables with nothing on record"), [], [1], [[", ".join(empty)]]))
    return sections


def _title(word: str) -> str:
    """A table's name as a heading."""
    return word[:1].upper() + word[1:].replace("_", " ")


def _table(made: Rows, sheet: Sheet, chosen: list[Kept[Any]], title: str) -> Section:
    """Rows on paper, without columns that say nothing; the business day only where it is another day."""
    header, rows = header_of(sheet, made.tr), [made.row(e, sheet.columns) for e in chosen]
    widths = [2, 3, 5, 3, *(WIDTHS.get(name, 3) for name in sheet.columns), 3]
    if "corrected_c" in sheet.columns:
        at = 4 + sheet.columns.index("corrected_c")
        for row, item in zip(rows, chosen, strict=True):
            row[at] = made.apart(item)
    shown = [
        n
        for n in range(len(header))
        if (any(row[1] != row[2][:10] for row in rows) if n == 1 else any(row[n] for row in rows))
    ]
    return section(
        title,
        [header[n] for n in shown],
        [widths[n] for n in shown],
        [[row[n] for n in shown] for row in rows],
    )


def _chosen(told: Gathered, sheet: Sheet, items: list[Kept[Any]]) -> list[Kept[Any]]:
    """Rows of a table that are printed, by when they happened."""
    first = [e for e in items if told.matters(sheet, e)][-MOST_MARKED:]
    taken = {e.number for e in first}
    rest = [e for e in items if e.number not in taken]
    if sheet.fact in (Reading, HoldRead):
        rest.sort(key=lambda e: (e.fact.core_c, -e.number))
    else:
        rest.reverse()
    more = rest[: max(0, MOST_ROWS - len(first))]
    return sorted([*first, *more], key=lambda e: (e.happened_at, e.number))
