"""Paper for a fryer and its place: the handover pack of a commissioning, the emergency card from the store's
own facts.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields
from itertools import zip_longest
from typing import Any

from frywright.catalog import load as catalog
from frywright.ledger.attachments import attachments_of
from frywright.ledger.store import Store
from frywright.model.business_day import local_time
from frywright.model.errors import FrywrightError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.roles import SIGNERS
from frywright.model.tongues import Translate
from frywright.paper.paper import PAPER, Section, pdf, picture_type, section
from frywright.rooms.care.commissioning import CommissioningView, commissioning_view
from frywright.rooms.care.nameplate import unit_signs
from frywright.rooms.clock import now
from frywright.rooms.standing import figure_of, held_status

MARK = {"meets": "go", "fails": "NO-GO", "unknown": "look first"}
PLATE_NAMES = {
    "maker": "maker",
    "model": "model",
    "serial": "serial number",
    "year": "year",
    "fuel": "fuel",
    "volts": "volts",
    "phases": "phases",
    "hz": "hertz",
    "power": "input",
    "gas": "gas",
    "gas_low": "gas pressure from",
    "gas_high": "gas pressure to",
    "oil": "oil",
}
FACT_WIDTHS = [2, 3, 2, 3]
"""The store's own facts stand two a row, so that what to do is as large as the page allows."""
FACT_NAMES = {
    "address": "this address",
    "call": "call",
    "pull_station": "pull station",
    "extinguisher": "extinguisher",
    "fuel_stop": "gas stop and breakers",
    "meeting_point": "meeting point",
    "first_aid": "first aid",
    "eyewash": "eyewash",
    "fire_contractor": "fire contractor",
    "service": "fryer service",
}


def handover_pack(
    store: Store, kitchen: Kitchen, fryer: str, language: str = "en", tr: Translate = str
) -> bytes:
    """The pack of a fryer as one PDF: plate with photo, site, steps with who signed and what was passed over,
    acceptance, programs, what is open, emergency. Raises InputError: an unknown fryer.
    """
    view = commissioning_view(store, kitchen, fryer, language, tr)
    pictures, files = _photo(store, view.plate, tr)
    return pdf(
        "handover.typ",
        "handover",
        {
            "title": f"{tr('Handover')}: {view.name}",
            "place": kitchen.site.name,
            "when": f"{local_time(kitchen, now())} · {_open_words(len(view.open), tr)}",
            "language": language,
            "size_pt": 12,
            "paper": PAPER[kitchen.site.units],
            "sections": _sections(store, kitchen, view, tr),
            "pictures": pictures,
            "signs": [tr("handed over by"), tr("taken over by")],
            "caution": tr(
                "Measured and signed as written here; nothing in it says that this fryer may be used against"
                " the maker's manual, local codes or a licensed technician's word."
            ),
            "foot": tr("The maker's manual, local codes and licensed technicians win."),
        },
        files,
    )


def _open_words(count: int, tr: Translate) -> str:
    """How many steps of a commissioning nobody signed."""
    return (
        say("Steps NOT SIGNED: {count}", {"count": float(count)}, translate=tr)
        if count
        else tr("all steps signed")
    )


def _sections(store: Store, kitchen: Kitchen, view: CommissioningView, tr: Translate) -> list[Section]:
    """Every table of the pack, in the order of the work."""
    steps, none = view.steps, tr("Nothing.")
    unsigned = tr("NOT SIGNED")
    passed = [[s.title, ", ".join(s.passed_over), s.pass_name, s.pass_reason] for s in steps if s.passed_over]
    signed = [
        [s.title, f"{s.by} ({tr(SIGNERS[s.role])}), {s.at}" if s.done else unsigned, s.note] for s in steps
    ]
    tests = [[t.name, t.measured or "–", t.worked_out or "–", t.word, t.text] for t in view.tests]
    return [
        *_plate_and_site(store, kitchen, view, tr),
        section(tr("Steps"), [tr("step"), tr("signed by"), tr("number or note")], [7, 4, 3], signed),
        section(
            tr("Passed over by name and reason"),
            [tr("step"), tr("before"), tr("name"), tr("reason")],
            [4, 3, 2, 4],
            passed,
            none,
        ),
        section(
            tr("First day and acceptance"),
            [tr("test"), tr("measured"), tr("worked out"), tr("outcome"), tr("note")],
            [3, 3, 2, 2, 5],
            tests,
            tr("Nothing was measured."),
        ),
        section(
            tr("Programs"),
            [tr("program"), tr("slot"), tr("version"), tr("check figure"), tr("in the fryer now")],
            [4, 2, 2, 2, 4],
            _programs(store, kitchen, view.fryer, tr),
            tr("No program of this fryer."),
        ),
        section(tr("In an emergency"), [tr("what"), tr("here")] * 2, FACT_WIDTHS, _facts(kitchen, tr)),
    ]


def _plate_and_site(store: Store, kitchen: Kitchen, view: CommissioningView, tr: Translate) -> list[Section]:
    """The plate as printed, what of it differs from the kitchen file, and the site against it."""
    signs, typed = unit_signs(kitchen.site.units), view.plate_typed
    shown = [
        [tr(name), tr(typed[k]) if k == "fuel" else f"{typed[k]} {signs.get(k, '')}".strip()]
        for k, name in PLATE_NAMES.items()
        if k in typed
    ]
    if view.plate:
        shown += [[tr("photo"), tr(_photo_state(store, view.plate["photo"]))]]
    return [
        section(
            tr("Nameplate"),
            [tr("what"), tr("as printed")],
            [2, 3],
            shown,
            tr("No plate is on record: no program for this fryer."),
        ),
        section(
            tr("Plate against the kitchen file"),
            [tr("note")],
            [1],
            [[t] for t in view.differences],
            tr("No difference found.") if view.plate else tr("Nothing to compare: no plate."),
        ),
        section(
            tr("Site"),
            [tr("point"), tr("outcome"), tr("note")],
            [2, 2, 6],
            [[p.name, tr(MARK[p.outcome]), p.text] for p in view.points],
            tr("Nothing was measured."),
        ),
    ]


def _programs(store: Store, kitchen: Kitchen, fryer: str, tr: Translate) -> list[list[str]]:
    held = {row.name: row for row in held_status(store, kitchen)}
    rows = []
    for name in sorted({p.name for p in kitchen.programs if p.fryer == fryer}):
        program = kitchen.program(name)
        slot, figure = figure_of(store, kitchen, program)
        rows.append([name, str(slot), str(program.version), figure, tr(held[name].state)])
    return rows


def _photo(
    store: Store, plate: Mapping[str, Any], tr: Translate
) -> tuple[list[dict[str, str]], dict[str, bytes]]:
    """The plate's photo for the pack; nothing where there is none."""
    if not plate.get("photo"):
        return [], {}
    try:
        with attachments_of(store).open(plate["photo"]) as stream:
            content = stream.read()
    except FrywrightError:
        return [], {}
    name = f"plate.{picture_type(content)}"
    return [{"file": name, "caption": f"{tr('Nameplate')} · {plate['photo'][:12]}"}], {name: content}


def _photo_state(store: Store, photo: object) -> str:
    """Whether the plate's photo is there; one that was swapped or lost on disk is said, not hidden."""
    if not photo:
        return "NO PHOTO"
    try:
        with attachments_of(store).open(str(photo)):
            return "above"
    except FrywrightError:
        return "LOST: the file is not the one that was kept"


def _facts(kitchen: Kitchen, tr: Translate) -> list[list[str]]:
    told = {f.name: getattr(kitchen.emergency, f.name) for f in fields(kitchen.emergency)}
    cells = [[tr(FACT_NAMES[name]), value or "______________"] for name, value in told.items()]
    half = (len(cells) + 1) // 2
    return [a + b for a, b in zip_longest(cells[:half], cells[half:], fillvalue=["", ""])]


def emergency_pdf(kitchen: Kitchen, language: str = "en", tr: Translate = str) -> bytes:
    """The emergency card: what to do, and this store's own facts; what is missing is a line to write on."""
    table = catalog.table("care/emergency.toml")
    sections = [
        section(tr(part["title"]), [], [1], [[f"{n}. {tr(line)}"] for n, line in enumerate(part["lines"], 1)])
        for part in table["part"]
    ]
    sections.append(section(tr("Here"), [], FACT_WIDTHS, _facts(kitchen, tr)))
    return pdf(
        "handover.typ",
        "handover",
        {
            "title": tr("Emergency"),
            "place": kitchen.site.name,
            "when": "",
            "language": language,
            "paper": PAPER[kitchen.site.units],
            "sections": sections,
            "signs": [],
            "caution_first": True,
            "inset_em": 0.2,
            "caution": tr("Never water on oil. Never carry a burning vat. When in doubt: out, and call."),
            "foot": tr("Local first-aid and fire guidance wins."),
        },
    )
