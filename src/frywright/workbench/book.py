"""What is remembered: kitchens, programs and kept simulations, as entries."""

from __future__ import annotations

import dataclasses
import datetime as dt
from collections.abc import Iterable
from contextvars import ContextVar
from functools import lru_cache
from pathlib import Path
from typing import Any

from frywright.catalog import load as catalog
from frywright.catalog.kitchen import parse_kitchen
from frywright.model.calibration import Calibration
from frywright.model.entry import Entry, Recorded
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program, Stage
from frywright.model.units import clock
from frywright.records.store import Store
from frywright.verdicts.facts import Facts
from frywright.workbench.cards import ReadBack
from frywright.workbench.clock import now
from frywright.workbench.cook import CookAnswer
from frywright.workbench.facts import NOBODY, Answerer, answered
from frywright.workbench.kitchens import demo_text, read_text
from frywright.workbench.view import plain_json

AUTHOR = "unnamed on this machine"
"""Author until people have accounts."""
AUTHOR_NOW: ContextVar[str] = ContextVar("author", default="")
"""Name of whoever is signed in while something is done for them."""


def open_store(path: str, kitchen_file: str) -> Store:
    """Open the store, a file or a PostgreSQL URL; load the kitchen file given, or the demo into an empty store."""
    store = Store.named(path, now)
    if kitchen_file:
        remember_kitchen(store, read_text(Path(kitchen_file)), kitchen_file)
    elif not store.current("kitchen"):
        remember_kitchen(store, demo_text(), "demo/kitchen.toml")
    return store


def remember_kitchen(store: Store, text: str, file: str, reason: str = "") -> Recorded:
    """Keep a kitchen file's text; a changed one replaces the last, the same one is not doubled.

    Raises
    ------
    DataError
        The text is not a sound kitchen file; nothing is written.
    InputError
        A limit that judges cooks changes, another place's rule or a smaller thermometer error, without a reason.
    """
    new = parse_kitchen(text, file)
    last = store.current("kitchen")
    if last and last[-1].entry.payload.get("text") == text:
        return last[-1]
    if last and len(reason.strip()) < 4:
        _no_limit_changed(_parsed(last[-1].entry.payload["text"], last[-1].entry.payload["file"]), new)
    payload = {"file": file, "text": text, "reason": reason.strip()[:200]}
    entry = _entry("kitchen", payload, replaces=last[-1].number if last else None)
    with store.writing() as writer:
        return writer.add(entry)


def _no_limit_changed(old: Kitchen, new: Kitchen) -> None:
    """The demo may give way to a kitchen of one's own; a kitchen of one's own changes its limits only with a reason."""
    if old.site.invented:
        return
    for name, changed in (
        ("jurisdiction", old.site.jurisdiction != new.site.jurisdiction),
        ("thermometer_error", new.site.thermometer_error_k < old.site.thermometer_error_k),
    ):
        if changed:
            raise InputError("reason", "empty", "given where {what} changes: it moves the limit that cooks are judged by", where=new.site.name, values={"what": name})  # fmt: skip


def remembered_kitchen(store: Store) -> Kitchen:
    """The kitchen in the store, with programs saved since its file was read.

    Raises
    ------
    InputError
        The store holds no kitchen yet.
    """
    last = store.current("kitchen")
    if not last:
        raise InputError("kitchen", "missing in this store", "loaded first")
    payload = last[-1].entry.payload
    kitchen = _parsed(payload["text"], payload["file"])
    saved = tuple(program_from(item.entry.payload) for item in store.entries("program"))
    names = {f.name for f in dataclasses.fields(Calibration)}
    fitted = tuple(
        Calibration(**{k: v for k, v in item.entry.payload.items() if k in names})
        for item in store.current("calibration")
    )
    return dataclasses.replace(kitchen, programs=kitchen.programs + saved, calibrations=kitchen.calibrations + fitted)


@lru_cache(maxsize=16)
def _parsed(text: str, file: str) -> Kitchen:
    """A kitchen file is read once while it stays the same."""
    return parse_kitchen(text, file)


def save_program(store: Store, kitchen: Kitchen, program: Program, who: Answerer = NOBODY, *seen: Facts) -> Recorded:
    """Keep a program as the next version of its name.

    Parameters
    ----------
    who : answers for a program that is predicted short
    seen : facts of it besides its full load's, such as its proof's

    Raises
    ------
    InputError
        The fryer cannot do it, its version was taken in the meantime, or it is predicted short and nobody answers for it.
    """
    kitchen.check(program)
    lock = answered(kitchen, program, who, *seen)
    with store.writing() as writer:
        newest = max((p.version for p in remembered_kitchen(store).programs if p.name == program.name), default=0)
        if program.version != newest + 1:
            raise InputError(
                "version", program.version, f"{newest + 1}: someone saved version {newest} meanwhile; compare both",
                where=program.name,
            )  # fmt: skip
        return writer.add(_entry("program", {**program_payload(program), **lock}, {"program": str(program.version)}))


def keep_print(store: Store, kitchen: Kitchen, programs: Iterable[Program], who: Answerer) -> None:
    """Keep who answers for the printed cards of programs that are predicted short; nothing for the others.

    Raises
    ------
    InputError
        One is predicted short and nobody answers for it.
    """
    locks = [(program, answered(kitchen, program, who)) for program in programs]
    with store.writing() as writer:
        for program, lock in locks:
            if lock:
                payload = {"name": program.name, "version": program.version, "fryer": program.fryer, **lock}
                writer.add(_entry("short_card", payload, {"program": str(program.version)}))


def keep_simulation(store: Store, kitchen: Kitchen, answer: CookAnswer, who: Answerer = NOBODY) -> Recorded:
    """Keep a simulation with its question, verdicts and curves.

    Raises
    ------
    InputError
        Its program is predicted short and nobody answers for it.
    """
    lock = answered(kitchen, answer.plan.program, who, answer.facts)
    payload = {**plain_json(answer), "stages": program_payload(answer.plan.program)["stages"], **lock}
    editions = {v.rule: v.edition for _, v in answer.verdicts}
    versions = {"program": str(answer.plan.program.version), "catalog": answer.history.catalog_version, **editions}
    with store.writing() as writer:
        return writer.add(_entry("simulation", payload, versions))


def record_readback(store: Store, program: Program, slot: int, result: ReadBack, people: tuple[str, str], started_at: str) -> Recorded:  # fmt: skip
    """Keep a read-back: who read, who checked, what was found.

    Raises
    ------
    InputError
        The two people are not two.
    """
    reader, checker = (p.strip() for p in people)
    if not reader or not checker or reader.lower() == checker.lower():
        raise InputError(
            "people", f"{reader or 'nobody'} and {checker or 'nobody'}", "two different people: one reads, one compares"
        )
    payload = {
        "name": program.name, "version": program.version, "fryer": program.fryer, "slot": slot, "read_by": reader,
        "checked_by": checker, "started_at": started_at, "matches": result.matches, "figure_card": result.figure_card,
        "figure_read": result.figure_read,
        "mismatches": [{"stage": m.stage, "what": m.what, "card": m.wanted, "machine": m.found, "slip": m.slip} for m in result.mismatches],
    }  # fmt: skip
    with store.writing() as writer:
        return writer.add(_entry("readback", payload, {"program": str(program.version)}))


def record(store: Store, kind: str, payload: dict[str, Any], happened_at: dt.datetime | None = None, replaces: int | None = None) -> Recorded:  # fmt: skip
    """Keep one entry of a kind, happening now or at a moment told."""
    with store.writing() as writer:
        return writer.add(entry_of(kind, payload, happened_at, replaces))


def entry_of(kind: str, payload: dict[str, Any], happened_at: dt.datetime | None = None, replaces: int | None = None) -> Entry:  # fmt: skip
    """An entry with this machine's author and catalog."""
    entry = _entry(kind, payload, replaces=replaces)
    return entry if happened_at is None else dataclasses.replace(entry, happened_at=happened_at)


def held_status(store: Store, kitchen: Kitchen) -> list[dict[str, str]]:
    """What each fryer is known to hold of each program: by its newest read-back, else unknown."""
    newest: dict[str, Recorded] = {item.entry.payload["name"]: item for item in store.entries("readback")}
    rows = []
    for name in sorted({p.name for p in kitchen.programs}):
        program = kitchen.program(name)
        item = newest.get(name)
        if item is None:
            state = "unknown"
        elif not item.entry.payload["matches"]:
            state = "differs"
        else:
            state = "current" if item.entry.payload["version"] == program.version else "old version"
        rows.append({
            "name": name, "fryer": kitchen.fryer(program.fryer).name, "version": str(program.version), "state": state,
            "clock": clock(program.clock_s),
            "read_at": item.recorded_at.strftime("%Y-%m-%d %H:%M UTC") if item else "",
            "read_version": str(item.entry.payload["version"]) if item else "",
        })  # fmt: skip
    return rows


def kept_simulations(store: Store) -> list[Recorded]:
    """Simulations kept, newest first."""
    return list(store.entries("simulation", newest_first=True))


def _entry(kind: str, payload: dict[str, Any], versions: dict[str, str] | None = None, replaces: int | None = None) -> Entry:  # fmt: skip
    return Entry(
        kind=kind, happened_at=now(), author=AUTHOR_NOW.get() or AUTHOR, payload=payload, replaces=replaces,
        versions={"catalog": catalog.VERSION, **(versions or {})},
    )  # fmt: skip


def program_payload(program: Program) -> dict[str, Any]:
    """A program as plain values with unit-suffixed keys."""
    fields = {f.name: getattr(program, f.name) for f in dataclasses.fields(program) if f.name != "stages"}
    stages = [
        {k: str(v) if k == "lid" else v for k, v in dataclasses.asdict(stage).items() if v is not None}
        for stage in program.stages
    ]
    return {**fields, "stages": stages}


def program_from(payload: Any) -> Program:
    """The program written down by :func:`program_payload`."""
    values = {k: v for k, v in payload.items() if k != "short"}
    stages = tuple(Stage(**{**s, "lid": LidState(s["lid"])}) for s in values.pop("stages"))
    return Program(stages=stages, **values)
