"""What is remembered: kitchens, programs and kept simulations, as entries."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Iterable, Mapping, Sequence
from contextvars import ContextVar
from dataclasses import replace
from functools import lru_cache
from pathlib import Path
from typing import Any
from weakref import WeakKeyDictionary

from frywright.catalog import load as catalog
from frywright.catalog.capacity import check_load
from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.facts.cook import (
    KitchenSet,
    ProgramProved,
    ProgramSaved,
    ProofsAsked,
    ReadBackTaken,
    ShortCardPrinted,
    SimulationKept,
    ValueDiffers,
)
from frywright.ledger.facts.fact import F, Kept, kept
from frywright.ledger.facts.probing import CalibrationKept
from frywright.ledger.store import Store
from frywright.model.entry import Entry
from frywright.model.errors import InputError, RecordError
from frywright.model.kitchen import FailedProof, Kitchen, ProveAgain
from frywright.model.program import Program
from frywright.model.units import clock
from frywright.verdicts.facts import Facts
from frywright.workbench.cards import ReadBack
from frywright.workbench.clock import now
from frywright.workbench.cook import CookAnswer
from frywright.workbench.facts import NOBODY, Answerer, answered, short_programs, unanswered_line
from frywright.workbench.kitchens import demo_text, read_text
from frywright.workbench.naming import away_words, called, same_use
from frywright.workbench.proof import ProofAnswer
from frywright.workbench.prove_again import CALIBRATED, again_line, joined, moved, touched
from frywright.workbench.view import plain_json

AUTHOR = "unnamed on this machine"
"""Author until people have accounts."""
SHORTEST_REASON = 4
"""Letters of the shortest reason taken."""
AUTHOR_NOW: ContextVar[str] = ContextVar("author", default="")
"""Name of whoever is signed in while something is done for them."""


def open_store(path: str, kitchen_file: str, reason: str = "") -> Store:
    """Open the store, a file or a PostgreSQL URL; load the kitchen file given, or the demo into an empty
    store.
    """
    store = Store.named(path, now)
    if kitchen_file:
        remember_kitchen(store, read_text(Path(kitchen_file)), kitchen_file, reason)
    elif not store.current(KitchenSet.KIND):
        remember_kitchen(store, demo_text(), "demo/kitchen.toml")
    return store


def remember_kitchen(store: Store, text: str, file: str, reason: str = "") -> Kept[KitchenSet]:
    """Keep a kitchen file's text; a changed one replaces the last, the same one is not doubled.

    Raises
    ------
    DataError
        The text is not a sound kitchen file; nothing is written.
    InputError
        No reason, and a limit that judges cooks changes (another place's rule, a smaller thermometer error),
        or what is predicted of a program. Or a saved program does not go with the new kitchen.
    """
    new = parse_kitchen(text, file)
    last = _kitchen_set(store)
    if last and last.fact.text == text:
        return last
    marks = _marks_of_change(store, last.fact, new, reason.strip()) if last else ()
    fact = KitchenSet(file=file, text=text, reason=reason.strip()[:200])
    return _changed(store, fact, marks, replaces=last.number if last else None)


def remember_calibration(store: Store, fact: CalibrationKept) -> Kept[CalibrationKept]:
    """Keep a calibration; programs it moves are marked *prove again* with their margin before and after."""
    before = remembered_kitchen(store)
    after = replace(before, calibrations=(*before.calibrations, fact.calibration))
    return _changed(store, fact, moved(before, after, CALIBRATED))


def _changed(store: Store, fact: F, marks: Sequence[ProveAgain], replaces: int | None = None) -> Kept[F]:
    """Keep what changes predictions, and the marks on the programs it moves."""
    with store.writing():
        made = write(store, fact, replaces=replaces)
        if marks:
            write(store, ProofsAsked(kitchen_number=made.number, programs=tuple(marks)))
        return made


def _kitchen_set(store: Store) -> Kept[KitchenSet] | None:
    """The kitchen file in force."""
    found = store.current_facts(KitchenSet)
    return found[-1] if found else None


def _marks_of_change(store: Store, last: KitchenSet, new: Kitchen, reason: str) -> Sequence[ProveAgain]:
    """What a change of the kitchen asks to be proved again; refused without a reason. The demo may give way
    to a kitchen of one's own.
    """
    old = _parsed(last.text, last.file)
    if old.site.invented and not new.site.invented:
        return ()
    given = len(reason) >= SHORTEST_REASON
    if not given:
        _no_limit_changed(old, new)
    before, after = _with_saved(store, old), _with_saved(store, new)
    if given:
        return moved(before, after, reason[:200])
    names = touched(before, after)
    if names:
        raise InputError(
            "reason",
            "empty",
            "given where the kitchen changes what is predicted: {programs} must be proved again",
            where=new.site.name,
            values={"programs": ", ".join(names)},
        )
    return ()


def _no_limit_changed(old: Kitchen, new: Kitchen) -> None:
    """The demo may give way to a kitchen of one's own; a kitchen of one's own changes its limits only with a
    reason.
    """
    if old.site.invented:
        return
    for name, changed in (
        ("jurisdiction", old.site.jurisdiction != new.site.jurisdiction),
        ("thermometer_error", new.site.thermometer_error_k < old.site.thermometer_error_k),
    ):
        if changed:
            raise InputError(
                "reason",
                "empty",
                "given where {what} changes: it moves the limit that cooks are judged by",
                where=new.site.name,
                values={"what": name},
            )


_BUILT: WeakKeyDictionary[Store, tuple[int, Kitchen]] = WeakKeyDictionary()
OF_KITCHEN = tuple(f.KIND for f in (KitchenSet, ProgramSaved, CalibrationKept, ProgramProved, ProofsAsked))
"""Kinds of entry that a kitchen is made of; it is built anew when one of them is added."""


def remembered_kitchen(store: Store) -> Kitchen:
    """The kitchen in the store, with programs saved since its file was read.

    Raises
    ------
    InputError
        The store holds no kitchen yet.
    """
    mark = store.newest(*OF_KITCHEN)
    built = _BUILT.get(store)
    if built is None or built[0] != mark:
        built = _BUILT[store] = (mark, _kitchen_of(store))
    return built[1]


def _kitchen_of(store: Store) -> Kitchen:
    fact = _in_force(store).fact
    known = _with_saved(store, _parsed(fact.text, fact.file))
    return replace(known, marks=_standing_marks(store), failed=_failed_proofs(store))


def _in_force(store: Store) -> Kept[KitchenSet]:
    last = _kitchen_set(store)
    if last is None:
        raise InputError("kitchen", "missing in this store", "loaded first")
    return last


def _with_saved(store: Store, kitchen: Kitchen) -> Kitchen:
    """A kitchen with the programs saved for its fryers and products, and its calibrations."""
    keys = {item.key for item in kitchen.fryers}, {item.key for item in kitchen.products}
    saved = tuple(item.fact.program for item in store.facts(ProgramSaved))
    saved = tuple(p for p in saved if p.fryer in keys[0] and p.product in keys[1])
    fitted = tuple(item.fact.calibration for item in store.current_facts(CalibrationKept))
    return replace(kitchen, programs=kitchen.programs + saved, calibrations=kitchen.calibrations + fitted)


def _standing_marks(store: Store) -> tuple[ProveAgain, ...]:
    """What still asks for a new proof: changes of the kitchen that no proof of that version has followed."""
    proven: dict[tuple[str, int], int] = {}
    for proof in store.facts(ProgramProved):
        if proof.fact.holds:
            proven[proof.fact.name, proof.fact.version] = proof.fact.kitchen_number
    found: dict[tuple[str, int], ProveAgain] = {}
    for item in store.facts(ProofsAsked):
        for mark in item.fact.programs:
            key = mark.name, mark.version
            if proven.get(key, 0) < item.fact.kitchen_number:
                found[key] = joined(found.get(key), mark)
    return tuple(found.values())


def _failed_proofs(store: Store) -> tuple[FailedProof, ...]:
    """Versions whose newest proof failed; whatever changes since, only a proof that holds ends it."""
    newest = {(e.fact.name, e.fact.version): e.fact for e in store.facts(ProgramProved)}
    return tuple(
        FailedProof(name=proof.name, version=proof.version, margin_k=proof.lowest_k)
        for proof in newest.values()
        if not proof.holds
    )


def kitchen_number(store: Store) -> int:
    """Number of the newest change of the kitchen or its calibrations: what a proof was made for."""
    fitted = store.current_facts(CalibrationKept)
    return max(_in_force(store).number, *(item.number for item in fitted), 0)


def kitchen_text(store: Store) -> str:
    """Text of the kitchen file in force."""
    return _in_force(store).fact.text


def record_proof(store: Store, answer: ProofAnswer, kitchen_number: int) -> Kept[ProgramProved]:
    """Keep that a program was proved for a kitchen, and whether it held; one that held ends a call for a new
    proof.
    """
    fact = ProgramProved(
        name=answer.program.name,
        version=answer.program.version,
        kitchen_number=kitchen_number,
        holds=answer.proof.holds,
        outcome=str(answer.outcome),
        samples_count=answer.proof.samples_count,
        lowest_k=answer.proof.lowest_k,
    )
    return write(store, fact)


@lru_cache(maxsize=16)
def _parsed(text: str, file: str) -> Kitchen:
    """A kitchen file is read once while it stays the same."""
    return parse_kitchen(text, file)


class Overtaken(RecordError):
    """Somebody saved a newer version of a program than the one a change was made on."""

    def __init__(self, base: Program, newest: Program) -> None:
        self.base, self.newest = base, newest
        super().__init__(
            f"{newest.name}: version {newest.version} was saved since version {base.version}; nothing was"
            " saved over it."
        )


def save_program(
    store: Store,
    kitchen: Kitchen,
    program: Program,
    who: Answerer = NOBODY,
    *seen: Facts,
    based_on: int | None = None,
) -> Kept[ProgramSaved]:
    """Keep a program as the next version of its name, or as the first of a new one.

    Parameters
    ----------
    who : answers for a program that is predicted short
    seen : facts of it besides its full load's, such as its proof's
    based_on
        Version the change was made on, as the form carried it; None takes the one before the program's own.

    Raises
    ------
    InputError
        The fryer cannot do it, the name reads like another or belongs to another use, nothing has changed, or
        it is predicted short and nobody answers for it.
    Overtaken
        Its version was taken in the meantime.
    """
    kitchen.check(program)
    check_load(kitchen, program)
    lock = answered(kitchen, program, who, *seen)
    with store.writing():
        known = remembered_kitchen(store)
        if any(p.name == program.name for p in known.programs):
            newest = known.program(program.name)
            base = program.version - 1 if based_on is None else based_on
            if same_use(known, newest, program) and same_values(newest, program):
                raise InputError(
                    "program",
                    "unchanged",
                    "changed in at least one value: version {version} holds the same, and nothing was saved",
                    where=program.name,
                    values={"version": newest.version},
                )
            if base != newest.version:
                older = [p for p in known.programs if p.name == newest.name and p.version == base]
                raise Overtaken(older[0] if older else replace(newest, version=max(base, 1)), newest)
        program = called(known, program, program.name)
        return write(store, ProgramSaved.of(program, short=lock), versions={"program": str(program.version)})


def same_values(one: Program, other: Program) -> bool:
    """Whether two versions hold the same in every value, however their ends are written."""
    plain = [replace(p.timed(), version=1, name="same") for p in (one, other)]
    return plain[0] == plain[1]


def keep_print(store: Store, kitchen: Kitchen, programs: Iterable[Program], who: Answerer) -> None:
    """Keep who answers for the printed cards of programs that are predicted short; nothing for the others.

    Raises
    ------
    InputError
        One is predicted short and nobody answers for it.
    """
    locks = [(program, answered(kitchen, program, who)) for program in programs]
    with store.writing():
        for program, lock in locks:
            if lock:
                fact = ShortCardPrinted(
                    name=program.name, version=program.version, fryer=program.fryer, short=lock
                )
                write(store, fact, versions={"program": str(program.version)})


def unanswered(store: Store, kitchen: Kitchen, translate: Callable[[str], str] = str) -> list[str]:
    """A line for each program that is predicted short and that nobody has answered for with name and reason,
    such as one written straight into the kitchen file.
    """
    answers = {(e.fact.name, e.fact.version) for e in store.facts(ProgramSaved) if e.fact.short}
    answers |= {(e.fact.name, e.fact.version) for e in store.facts(ShortCardPrinted)}
    found = [row for row in short_programs(kitchen) if (row[0].name, row[0].version) not in answers]
    return [unanswered_line(kitchen, program, facts, translate) for program, facts in found]


def keep_simulation(
    store: Store, kitchen: Kitchen, answer: CookAnswer, who: Answerer = NOBODY
) -> Kept[SimulationKept]:
    """Keep a simulation with its question, verdicts and curves.

    Raises
    ------
    InputError
        Its program is predicted short and nobody answers for it.
    """
    lock = answered(kitchen, answer.plan.program, who, answer.facts)
    told = SimulationKept.read({**plain_json(answer), "stages": answer.plan.program.stages})
    editions = {v.rule: v.edition for _, v in answer.verdicts}
    versions = {
        "program": str(answer.plan.program.version),
        "catalog": answer.history.catalog_version,
        **editions,
    }
    return write(store, replace(told, short=lock), versions=versions)


def record_readback(
    store: Store, program: Program, slot: int, result: ReadBack, people: tuple[str, str], started_at: str
) -> Kept[ReadBackTaken]:
    """Keep a read-back: who read, who checked, what was found.

    Raises
    ------
    InputError
        The two people are not two.
    """
    reader, checker = (p.strip() for p in people)
    if not reader or not checker or reader.lower() == checker.lower():
        raise InputError(
            "people",
            f"{reader or 'nobody'} and {checker or 'nobody'}",
            "two different people: one reads, one compares",
        )
    fact = ReadBackTaken(
        name=program.name,
        version=program.version,
        fryer=program.fryer,
        slot=slot,
        read_by=reader,
        checked_by=checker,
        started_at=started_at,
        matches=result.matches,
        figure_card=result.figure_card,
        figure_read=result.figure_read,
        mismatches=tuple(
            ValueDiffers(stage=m.stage, what=m.what, card=m.wanted, machine=m.found, slip=m.slip)
            for m in result.mismatches
        ),
    )
    return write(store, fact, versions={"program": str(program.version)})


def write(
    store: Store,
    fact: F,
    happened_at: dt.datetime | None = None,
    replaces: int | None = None,
    versions: Mapping[str, str] | None = None,
) -> Kept[F]:
    """Keep a fact, happening now or at a moment given."""
    entry = Entry(
        kind=fact.KIND,
        happened_at=happened_at or now(),
        author=AUTHOR_NOW.get() or AUTHOR,
        payload=fact.payload(),
        replaces=replaces,
        versions={"catalog": catalog.VERSION, **(versions or {})},
    )
    with store.writing() as writer:
        return kept(writer.add(entry), type(fact))


def held_status(
    store: Store, kitchen: Kitchen, translate: Callable[[str], str] = str
) -> list[dict[str, str]]:
    """What each fryer is known to hold of each program: by its newest read-back, else unknown."""
    newest = {item.fact.name: item for item in store.facts(ReadBackTaken)}
    rows = []
    for name in sorted({p.name for p in kitchen.programs}):
        program = kitchen.program(name)
        item = newest.get(name)
        if item is None:
            state = "unknown"
        elif not item.fact.matches:
            state = "differs"
        else:
            state = "current" if item.fact.version == program.version else "old version"
        rows.append(
            {
                "name": name,
                "place": ", ".join(away_words(kitchen, program, translate)),
                "again": again_line(kitchen, program, translate),
                "fryer": kitchen.fryer(program.fryer).name,
                "version": str(program.version),
                "state": state,
                "clock": clock(program.clock_s),
                "read_at": item.recorded_at.strftime("%Y-%m-%d %H:%M UTC") if item else "",
                "read_version": str(item.fact.version) if item else "",
            }
        )
    return rows


def program_json(program: Program) -> dict[str, Any]:
    """A program as plain values with unit-suffixed keys, as it is stored."""
    return ProgramSaved.of(program).payload()
