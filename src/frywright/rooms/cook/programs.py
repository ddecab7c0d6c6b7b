"""Programs, their proofs, papers, simulations and read-backs, as facts."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from frywright.catalog.capacity import check_load
from frywright.ledger.facts.cook import (
    Origin,
    ProgramProved,
    ProgramSaved,
    ReadBackTaken,
    ShortCardPrinted,
    SimulationKept,
    ValueDiffers,
)
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError, Phrase, RecordError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.roles import same_person
from frywright.model.tongues import Translate
from frywright.rooms.cook.compare import ReadBack
from frywright.rooms.cook.life import version_of
from frywright.rooms.cook.told import cook_told
from frywright.rooms.hall import confirmed, write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.ask import CookAnswer
from frywright.trial.naming import called, same_use
from frywright.trial.predicted import NOBODY, Answerer, answered, short_programs, unanswered_line
from frywright.trial.proof import ProofAnswer
from frywright.verdicts.facts import Facts


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


class Overtaken(RecordError):
    """Somebody saved a newer version of a program than the one a change was made on."""

    def __init__(self, base: Program, newest: Program) -> None:
        self.base, self.newest = base, newest
        super().__init__(
            "{name}: version {newest} was saved since version {base}; nothing was saved over it.",
            name=newest.name,
            newest=newest.version,
            base=base.version,
        )


def save_program(
    store: Store,
    kitchen: Kitchen,
    program: Program,
    who: Answerer = NOBODY,
    *seen: Facts,
    based_on: int | None = None,
    origin: Origin | None = None,
) -> Kept[ProgramSaved]:
    """Keep a program as the next version of its name, or as the first of a new one. Raises InputError: the
    fryer cannot do it, the name reads like another or belongs to another use, nothing has changed, or it is
    predicted short and nobody answers for it. Raises Overtaken: its version was taken in the meantime.

    Parameters
    ----------
    who : answers for a program that is predicted short
    seen : facts of it besides its full load's, such as its proof's
    based_on
        Version the change was made on, as the form carried it; None takes the one before the program's own.
    origin : where its stages came from; None is a person's hand
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
                    version=newest.version,
                )
            if base != newest.version:
                older = [p for p in known.versions(newest.name) if p.version == base]
                raise Overtaken(older[0] if older else replace(newest, version=max(base, 1)), newest)
        program = called(known, program, program.name)
        fact = ProgramSaved.of(program, short=lock, origin=origin)
        return write(store, fact, versions={"program": str(program.version)})


def same_values(one: Program, other: Program) -> bool:
    """Whether two versions hold the same in every value, however their ends are written."""
    plain = [replace(p.timed(), version=1, name="same") for p in (one, other)]
    return plain[0] == plain[1]


def keep_print(store: Store, kitchen: Kitchen, programs: Iterable[Program], who: Answerer) -> None:
    """Keep who answers for the printed cards of programs that are predicted short; nothing for the others.
    Raises InputError: one is predicted short and nobody answers for it.
    """
    locks = [(program, answered(kitchen, program, who)) for program in programs]
    with store.writing():
        for program, lock in locks:
            if lock:
                fact = ShortCardPrinted(
                    name=program.name, version=program.version, fryer=program.fryer, short=lock
                )
                write(store, fact, versions={"program": str(program.version)})


def unanswered(store: Store, kitchen: Kitchen, translate: Translate = str) -> list[str]:
    """A line for each program that is predicted short and that nobody has answered for with name and reason,
    such as one written straight into the kitchen file.
    """
    answers = store.newest_by(ProgramSaved, _answered), store.newest_by(ShortCardPrinted, version_of)
    found = [row for row in short_programs(kitchen) if not any(version_of(row[0]) in a for a in answers)]
    return [unanswered_line(kitchen, program, facts, translate) for program, facts in found]


def _answered(saved: ProgramSaved) -> tuple[str, int] | None:
    return version_of(saved) if saved.short else None


def keep_simulation(
    store: Store, kitchen: Kitchen, answer: CookAnswer, who: Answerer = NOBODY
) -> Kept[SimulationKept]:
    """Keep a simulation with its question, verdicts and curves. Raises InputError: its program is predicted
    short and nobody answers for it.
    """
    lock = answered(kitchen, answer.plan.program, who, answer.facts)
    editions = {v.rule: v.edition for _, v in answer.verdicts}
    versions = {
        "program": str(answer.plan.program.version),
        "catalog": answer.history.catalog_version,
        **editions,
    }
    return write(store, replace(cook_told(answer), short=lock), versions=versions)


def record_readback(
    store: Store, program: Program, slot: int, result: ReadBack, people: tuple[str, str], started_at: str
) -> Kept[ReadBackTaken]:
    """Keep a read-back: who read, who checked, what was found. Raises InputError: they are not two people."""
    reader, checker = (p.strip() for p in people)
    if not reader or not checker or same_person(reader, checker):
        raise InputError(
            "people",
            Phrase("{one} and {other}", {"one": reader or "nobody", "other": checker or "nobody"}),
            "two different people: one reads, one compares",
        )
    confirmed(checker, "checked_by")
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
            ValueDiffers(
                stage=m.stage, what=m.what, card=m.wanted, machine=m.found, slip=m.slip, name=m.name or None
            )
            for m in result.mismatches
        ),
        settings=result.settings,
    )
    return write(store, fact, versions={"program": str(program.version)})


def program_json(program: Program) -> Mapping[str, object]:
    """A program as plain values with unit-suffixed keys, as it is stored."""
    return ProgramSaved.of(program).payload()
