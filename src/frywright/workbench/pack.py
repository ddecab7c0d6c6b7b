"""The inspection pack: everything an inspector asks for over a range of days, gaps shown, as one PDF and as
tables.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import zipfile
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

from frywright.catalog import load as catalog
from frywright.ledger.export import RISKY
from frywright.ledger.facts.care import CardSigned, CareDone, Reopened, StepSigned, StopUse
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.fact import facts_of
from frywright.ledger.facts.oil import OilDone, OilRefused
from frywright.ledger.facts.people import SkillShown
from frywright.ledger.facts.probing import CaseOpened, CaseStep, LookedBack, Reading, ThermometerChecked
from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.units import show, to_people
from frywright.paper.paper import PAPER, pdf
from frywright.verdicts.patterns import Told, patterns
from frywright.workbench.clock import now
from frywright.workbench.corrective import case_view, cases
from frywright.workbench.day import business_time, moment_of, usual_trade
from frywright.workbench.upkeep import care_rows
from frywright.workbench.vat import limit_of

Translate = Callable[[str], str]
LONGEST_DAYS = 400
MOST_ROWS = 60
"""Rows of a table on paper; the tables carry every row."""
KINDS = (
    BoardTap.KIND,
    Reading.KIND,
    ThermometerChecked.KIND,
    LookedBack.KIND,
    CaseOpened.KIND,
    CaseStep.KIND,
    "calibration",
    "readback",
    SkillShown.KIND,
    CareDone.KIND,
    CardSigned.KIND,
    OilDone.KIND,
    OilRefused.KIND,
    StopUse.KIND,
    Reopened.KIND,
    StepSigned.KIND,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Gathered:
    """Everything of a range of business days, by kind."""

    first: dt.date
    last: dt.date
    items: dict[str, list[Recorded]]

    def of(self, kind: str) -> list[Recorded]:
        """Entries of a kind, by when they happened."""
        return self.items.get(kind, [])

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
    if not 0 <= (last - first).days < LONGEST_DAYS:
        raise InputError("range", f"{first} to {last}", "forward, up to 400 days")
    trade = usual_trade(kitchen)
    since, until = (
        moment_of(trade, first, 0.0),
        moment_of(trade, last + dt.timedelta(days=1), 0.0) + dt.timedelta(hours=4),
    )
    items: dict[str, list[Recorded]] = defaultdict(list)
    for kind in KINDS:
        for item in store.between(since, until, kind):
            if first <= business_time(trade, item.entry.happened_at)[0] <= last:
                items[kind].append(item)
    return Gathered(first=first, last=last, items=dict(items))


def gaps(kitchen: Kitchen, told: Gathered, tr: Translate = str) -> list[str]:
    """What is missing, day by day, in plain words: honest gaps are part of the pack."""
    trade = usual_trade(kitchen)

    def days(kind: str, wanted: Callable[[Any], bool] = lambda p: True) -> set[dt.date]:
        return {
            business_time(trade, e.entry.happened_at)[0] for e in told.of(kind) if wanted(e.entry.payload)
        }

    dropped, read, checked = (
        days(BoardTap.KIND, lambda p: p["what"] == "drop"),
        days(Reading.KIND),
        days(ThermometerChecked.KIND),
    )
    anything = set().union(*(days(kind) for kind in told.items)) if told.items else set()
    rows = (
        (sorted(set(told.days) - anything), "No entry of any kind on {count} days: {which}."),
        (sorted(dropped - read), "Loads dropped and no probe reading on {count} days: {which}."),
        (sorted(dropped - checked), "Loads dropped and no thermometer check on {count} days: {which}."),
    )
    told_gaps = [
        say(text, {"count": float(len(found)), "which": _listed(found)}, translate=tr)
        for found, text in rows
        if found
    ]
    unchecked = sum(not e.fact.checked for e in facts_of(told.of(Reading.KIND), Reading))
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
    for kind in (Reading.KIND, ThermometerChecked.KIND, OilDone.KIND):
        entries = [
            Told(
                number=e.number,
                happened_at=e.entry.happened_at,
                recorded_at=e.recorded_at,
                who=str(e.entry.payload.get("who", "")),
                reading_n=to_people(e.entry.payload["core_c"], unit) if kind == Reading.KIND else None,
            )
            for e in told.of(kind)
        ]
        found += [
            f"{tr(kind)}: {say(n.text, n.values, str(kitchen.site.units), tr)}" for n in patterns(entries)
        ]
    return found


# ---------------------------------------------------------------- tables


def _clock(kitchen: Kitchen, item: Recorded) -> tuple[str, str]:
    date, second = business_time(usual_trade(kitchen), item.entry.happened_at)
    return date.isoformat(), f"{int(second // 3600) % 24:02d}:{int(second // 60) % 60:02d}"


def tables(store: Store, kitchen: Kitchen, told: Gathered) -> dict[str, tuple[list[str], list[list[str]]]]:
    """Every table of the pack: its header and all rows, values as text."""
    system = str(kitchen.site.units)

    def rows(
        kind: str,
        names: list[str],
        cells: Callable[[Any], list[Any]],
        wanted: Callable[[Any], bool] = lambda p: True,
    ) -> tuple[list[str], list[list[str]]]:
        found = [
            [str(e.number), *_clock(kitchen, e), _late(e), *(_text(c) for c in cells(e.entry.payload))]
            for e in told.of(kind)
            if wanted(e.entry.payload)
        ]
        return ["number", "date", "time", "late", *names], found

    def temp(value: float | None) -> str:
        return show(value, "c", system) if value is not None else ""

    return {
        "cooks": rows(
            BoardTap.KIND,
            ["what", "fryer", "product", "pieces", "reason", "who"],
            lambda p: [p[k] for k in ("what", "fryer", "product", "pieces_count", "reason", "who")],
            lambda p: p["what"] in ("drop", "lift"),
        ),
        "discards": rows(
            BoardTap.KIND,
            ["what", "product", "pieces", "reason", "who"],
            lambda p: [p["what"], p["product"], p["pieces_count"], p.get("reason", ""), p.get("who", "")],
            lambda p: p["what"] in ("discard", "count"),
        ),
        "readings": rows(
            Reading.KIND,
            ["load", "thermometer", "read", "limit", "checked", "who"],
            lambda p: [
                p["load"],
                p["thermometer"],
                temp(p["core_c"]),
                temp(p["limit_c"]),
                p.get("checked", ""),
                p.get("who", ""),
            ],
        ),
        "thermometers": rows(
            ThermometerChecked.KIND,
            ["thermometer", "ice", "boiling", "outcome"],
            lambda p: [p["thermometer"], temp(p.get("ice_c")), temp(p.get("boil_c")), p["outcome"]],
        ),
        "corrective": rows(
            CaseOpened.KIND,
            ["what", "fryer", "product", "pieces", "found", "limit", "words"],
            lambda p: [
                p["what"],
                p["fryer"],
                p["product"],
                p["pieces_count"],
                temp(p["core_c"]),
                temp(p["limit_c"]),
                p["words"],
            ],
        ),
        "corrective_steps": rows(
            CaseStep.KIND,
            ["case", "step", "detail", "words", "who"],
            lambda p: [
                p["case_number"],
                p["step"],
                p.get("disposition") or p.get("cause") or p.get("decision") or temp(p.get("core_c")),
                p["words"],
                p["who"],
            ],
        ),
        "calibration": rows(
            "calibration",
            ["what", "source"],
            lambda p: [
                f"{p.get('cut', '')} {p.get('coating', '')} {p.get('lid', '')}".strip(),
                p.get("source", ""),
            ],
        ),
        "read_backs": rows(
            "readback",
            ["program", "version", "fryer", "matches", "read by", "checked by"],
            lambda p: [p["name"], p["version"], p["fryer"], p["matches"], p["read_by"], p["checked_by"]],
        ),
        "training": rows(
            SkillShown.KIND,
            ["person", "skill", "seen by", "expires"],
            lambda p: [p["person"], p["skill"], p["observed_by"], p["expires"]],
        ),
        "care": rows(
            CareDone.KIND,
            ["fryer", "task", "who", "role", "note", "done on"],
            lambda p: [p["fryer"], p["task"], p["who"], p["role"], p["note"], p["date"]],
        ),
        "procedures": rows(
            CardSigned.KIND,
            ["card", "version", "fryer", "who", "second", "note"],
            lambda p: [p["key"], p["version"], p["fryer"], p["who"], p["second"], p["note"]],
        ),
        "oil": rows(
            OilDone.KIND,
            ["vat", "what", "as typed", "who"],
            lambda p: [p["vat"], p["what"], p["raw"], p["who"]],
        ),
        "refused": rows(
            OilRefused.KIND,
            ["as typed", "why"],
            lambda p: [" ".join(f"{k}={v}" for k, v in p["raw"].items() if v), p["reason"]],
        ),
        "stop_use": rows(
            StopUse.KIND,
            ["fryer", "reason", "words", "who"],
            lambda p: [p["fryer"], p["reason"], p["words"], p["who"]],
        ),
        "releases": rows(
            Reopened.KIND,
            ["fryer", "who", "role", "finding"],
            lambda p: [p["fryer"], p["who"], p["role"], p["finding"]],
        ),
        "commissioning": rows(
            StepSigned.KIND,
            ["fryer", "step", "who", "second", "note", "passed over"],
            lambda p: [p["fryer"], p["step"], p["who"], p["second"], p["note"], ", ".join(p["passed_over"])],
        ),
    }


def _late(item: Recorded) -> str:
    late = (item.recorded_at - item.entry.happened_at).total_seconds()
    return f"{late / 60:.0f} min" if late > 1800 else ""


def _text(value: Any) -> str:
    return "" if value is None else str(value)


def csv_zip(store: Store, kitchen: Kitchen, first: dt.date, last: dt.date) -> bytes:
    """Every table as CSV in one archive; a text that a spreadsheet would run as a formula gets a leading
    quote.
    """
    told, out = gather(store, kitchen, first, last), io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, (header, rows) in tables(store, kitchen, told).items():
            text = io.StringIO()
            writer = csv.writer(text)
            writer.writerow(header)
            writer.writerows([[f"'{c}" if c.startswith(RISKY) else c for c in row] for row in rows])
            archive.writestr(f"{name}.csv", text.getvalue())
        archive.writestr("gaps.txt", "\n".join(gaps(kitchen, told)) + "\n")
    return out.getvalue()


# ---------------------------------------------------------------- paper


def pack_view(
    store: Store, kitchen: Kitchen, first: dt.date, last: dt.date, language: str = "en", tr: Translate = str
) -> dict[str, Any]:
    """The pack as a page and the PDF show it: sums, gaps, patterns, cases, dates of contractors, and where
    the chain stands.
    """
    told = gather(store, kitchen, first, last)
    loads = Counter(
        (e.entry.payload["product"], e.entry.payload["fryer"])
        for e in told.of(BoardTap.KIND)
        if e.entry.payload["what"] == "drop"
    )
    below = [e for e in told.of(Reading.KIND) if Reading.read(e.entry.payload).below]
    outside = {
        "suppression",
        "hood_clean",
        "yearly_electric",
        "yearly_gas",
        "yearly_relief",
        "calibration_formal",
    }
    contractors = [r for r in care_rows(store, kitchen, tr, language) if r["task"] in outside]
    every, numbers = cases(store), {e.number for e in told.of(CaseOpened.KIND)}
    open_cases, within = [c for c in every if not c.closed], [c for c in every if c.opened.number in numbers]
    limit, title = limit_of(store)
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
        "readings": len(told.of(Reading.KIND)),
        "below": len(below),
        "checks": len(told.of(ThermometerChecked.KIND)),
        "gaps": gaps(kitchen, told, tr),
        "patterns": notes_of(kitchen, told, tr),
        "cases": [case_view(store, kitchen, c, tr) for c in within],
        "open_cases": len(open_cases),
        "contractors": contractors,
        "oil_limit": f"{limit:g} %: {tr(title)}",
        "counts": {kind: len(items) for kind, items in told.items.items()},
        "entry": end.number,
        "hash": end.hash,
        "told": told,
    }


def pack_pdf(
    store: Store, kitchen: Kitchen, first: dt.date, last: dt.date, language: str = "en", tr: Translate = str
) -> bytes:
    """The pack on paper: sums and gaps first, then the newest rows of each table; the archive of tables
    carries every row.
    """
    view = pack_view(store, kitchen, first, last, language, tr)
    all_tables = tables(store, kitchen, view["told"])

    def section(
        title: str, header: list[str], columns: list[int], rows: Iterable[list[str]], empty: str = ""
    ) -> dict[str, Any]:
        return {
            "title": title,
            "header": header,
            "columns": columns,
            "rows": list(rows),
            "empty": empty or tr("None on record."),
        }

    sections = [
        section(tr("Gaps"), [], [1], [[g] for g in view["gaps"]], tr("No gap found.")),
        section(
            tr("Loads dropped"),
            [tr("product"), tr("fryer"), tr("loads")],
            [4, 4, 1],
            [[r["product"], r["fryer"], str(r["count"])] for r in view["loads"]],
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
            [
                [
                    str(c["number"]),
                    f"{c['product']} {c['fryer']}: {c['found']}",
                    "; ".join(f"{s['words']} {s['detail']} ({s['who']})" for s in c["steps"]),
                    tr("closed") if c["closed"] else tr("open"),
                ]
                for c in view["cases"]
            ],
        ),
        section(
            tr("Contractors and certified calibration"),
            [tr("fryer"), tr("task"), tr("last"), tr("due")],
            [3, 6, 2, 2],
            [
                [r["name"], r["title"], r["last_date"] or tr("no record"), r["date"] or "–"]
                for r in view["contractors"]
            ],
        ),
    ]
    for name, (header, rows) in all_tables.items():
        if name in ("corrective", "corrective_steps", "refused"):
            continue
        shown = rows[-MOST_ROWS:]
        title = f"{tr(name)} ({len(rows)})" + (
            f", {tr('the newest')} {MOST_ROWS}" if len(rows) > MOST_ROWS else ""
        )
        widths = [1, 2, 1, 1, *([2] * (len(header) - 4))]
        sections.append(section(title, [tr(h) for h in header], widths, shown))
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
            "sections": sections,
            "signs": [tr("handed over by"), tr("received by")],
            "caution": (
                tr(
                    "What is recorded, with its gaps; nothing in it says that any food was free of risk. Oil"
                    " limit here"
                )
                + f": {view['oil_limit']}."
            ),
            "foot": (
                f"{tr('Last entry')} {view['entry']}, {view['hash'][:16]}… · {tr('catalog')}"
                f" {catalog.VERSION}"
            ),
        },
    )
