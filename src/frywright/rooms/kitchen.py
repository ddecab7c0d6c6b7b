"""The kitchen as the ledger knows it: its file, saved programs, calibrations, what must be proved again."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from functools import lru_cache
from pathlib import Path
from threading import Lock
from weakref import WeakKeyDictionary

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.facts.cook import KitchenSet, ProgramProved, ProgramSaved, ProofsAsked
from frywright.ledger.facts.fact import F, Kept
from frywright.ledger.facts.life import ProgramRetired, ServiceBegun
from frywright.ledger.facts.probing import CalibrationKept, LookedBack, ProgramProbed, Reading
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, moment_of, usual_trade
from frywright.model.errors import DataError, InputError, KeptKitchenError, NoKitchenError
from frywright.model.kitchen import FailedProof, Kitchen, ProbedProgram, ProveAgain
from frywright.model.program import Program
from frywright.model.trade import time_of_day_s
from frywright.rooms.clock import now
from frywright.rooms.hall import SHORTEST_REASON, write
from frywright.trial.kitchens import read_text
from frywright.trial.prove_again import CALIBRATED, joined, moved, touched


def open_store(path: str, kitchen_file: str = "", reason: str = "") -> Store:
    """Open the store, a file or a PostgreSQL URL, and load the kitchen file given; a new store has no kitchen
    until its set-up is done.
    """
    store = Store.named(path, now)
    if kitchen_file:
        remember_kitchen(store, read_text(Path(kitchen_file)), kitchen_file, reason)
    return store


def has_kitchen(store: Store) -> bool:
    """Whether a kitchen was described here."""
    return store.newest(KitchenSet.KIND) > 0


def kitchen_name(store: Store) -> str:
    """The name the kitchen gives itself; empty where it is not described."""
    return remembered_kitchen(store).site.name if has_kitchen(store) else ""


def remember_kitchen(store: Store, text: str, file: str, reason: str = "") -> Kept[KitchenSet]:
    """Keep a kitchen file's text; a changed one replaces the last, the same one is not doubled.
    Raises DataError: the text is not a sound kitchen file; nothing is written. Raises InputError: no reason,
    and a limit that judges cooks changes (another place's rule, a smaller thermometer error), or what is
    predicted of a program. Or a saved program does not go with the new kitchen.
    """
    new = parse_kitchen(text, file)
    business_time(usual_trade(new), now())  # a zone that is none is refused before it is kept
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
    given = len(reason) >= SHORTEST_REASON
    try:
        old = _kept(last)
    except KeptKitchenError:
        return _all_marked(_with_saved(store, new), reason[:200] if given else "")
    if old.site.invented and not new.site.invented:
        return ()
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
            programs=", ".join(names),
        )
    return ()


def _all_marked(new: Kitchen, reason: str) -> Sequence[ProveAgain]:
    """Every program, where the kitchen before cannot be read to compare with."""
    if not reason:
        raise InputError(
            "reason", "empty", "given where the kitchen before cannot be read", where=new.site.name
        )
    none = {"margin_before_k": None, "margin_after_k": None}
    return [ProveAgain(name=p.name, version=p.version, reason=reason, **none) for p in new.programs]


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
                what=name,
            )


_BUILT: WeakKeyDictionary[Store, tuple[int, Kitchen]] = WeakKeyDictionary()
_PARTS = (
    KitchenSet,
    ProgramSaved,
    CalibrationKept,
    ProgramProved,
    ProofsAsked,
    ProgramRetired,
    ServiceBegun,
    ProgramProbed,
    LookedBack,
)
OF_KITCHEN = tuple(f.KIND for f in _PARTS)
"""Kinds of entry that a kitchen is made of; it is built anew when one of them is added."""


def remembered_kitchen(store: Store) -> Kitchen:
    """The kitchen in the store, with programs saved since its file was read. Raises NoKitchenError: the store
    holds no kitchen yet. Raises KeptKitchenError: it holds one that an earlier version took and this one
    refuses.
    """
    mark = store.newest(*OF_KITCHEN)
    built = _BUILT.get(store)
    if built is None or built[0] != mark:
        built = _BUILT[store] = (mark, _kitchen_of(store))
    return built[1]


def _kitchen_of(store: Store) -> Kitchen:
    fact = _in_force(store).fact
    known = _with_saved(store, _kept(fact))
    marks, failed, retired = _standing_marks(store), _failed_proofs(store), _retired(store, known)
    return replace(known, marks=marks, failed=failed, retired=retired, probed=_probed(store))


def _in_force(store: Store) -> Kept[KitchenSet]:
    last = _kitchen_set(store)
    if last is None:
        raise NoKitchenError
    return last


def judged_at(store: Store, kitchen: Kitchen, at: dt.datetime) -> Kitchen:
    """A kitchen with what judges its entries as its file in force at a moment said it: the place whose rules
    hold, the thermometers' error, house targets. What the demo said judges nothing of a kitchen of one's own,
    and a moment before the first file is judged by the first. A file that this version refuses is passed
    over: the one before it judges.
    """
    then = None
    for item in store.facts(KitchenSet, newest_first=True):
        try:
            older = _kept(item.fact)
        except KeptKitchenError:
            continue
        if older.site.invented and not kitchen.site.invented:
            continue
        then = older
        if item.recorded_at <= at:
            break
    if then is None:
        return kitchen
    site = replace(
        kitchen.site, jurisdiction=then.site.jurisdiction, thermometer_error_k=then.site.thermometer_error_k
    )
    targets = {product.key: product.house_core_c for product in then.products}
    products = tuple(
        replace(product, house_core_c=targets.get(product.key, product.house_core_c))
        for product in kitchen.products
    )
    return replace(kitchen, site=site, products=products)


def judged_on(store: Store, kitchen: Kitchen, day: dt.date) -> Kitchen:
    """As :func:`judged_at`, at the end of a business day."""
    trade = usual_trade(kitchen)
    over = moment_of(trade, day + dt.timedelta(days=1), time_of_day_s(trade.rolls_over))
    return judged_at(store, kitchen, over)


def _with_saved(store: Store, kitchen: Kitchen) -> Kitchen:
    """A kitchen with the programs saved for its fryers and products, and its calibrations."""
    keys = {item.key for item in kitchen.fryers}, {item.key for item in kitchen.products}
    saved = tuple(p for p in _saved(store) if p.fryer in keys[0] and p.product in keys[1])
    newest = {p.name: p for p in kitchen.programs}
    earlier: dict[str, list[Program]] = {}
    for program in (*kitchen.programs, *saved):
        known = newest.setdefault(program.name, program)
        if known is not program:
            old, newest[program.name] = sorted((program, known), key=lambda p: p.version)
            earlier.setdefault(program.name, []).append(old)
    fitted = tuple(item.fact.calibration for item in store.current_facts(CalibrationKept))
    return replace(
        kitchen,
        programs=tuple(newest.values()),
        earlier={name: tuple(versions) for name, versions in earlier.items()},
        calibrations=kitchen.calibrations + fitted,
    )


@dataclass(slots=True)
class _Saved:
    """Programs saved up to an entry, oldest first."""

    last: Kept[ProgramSaved] | None = None
    programs: list[Program] = field(default_factory=list)


_SAVED: WeakKeyDictionary[Store, _Saved] = WeakKeyDictionary()
_TURN = Lock()


def _saved(store: Store) -> list[Program]:
    """Every program saved, oldest first; those known before are not read again."""
    with _TURN:
        known = _SAVED.setdefault(store, _Saved())
        if known.last is not None and store.fact(known.last.number, ProgramSaved) != known.last:
            known = _SAVED[store] = _Saved()  # another file was put in the place of this one
        for item in store.facts(ProgramSaved, after=known.last.number if known.last else None):
            known.last = item
            known.programs.append(item.fact.program)
        return list(known.programs)


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


def _retired(store: Store, kitchen: Kitchen) -> tuple[tuple[str, int], ...]:
    """Versions that were taken out of use for good and not put in service since."""
    served = {(e.fact.name, e.fact.version): e.number for e in store.facts(ServiceBegun)}
    gone = {(e.fact.name, e.fact.version): e.number for e in store.facts(ProgramRetired)}
    known = {p.name for p in kitchen.programs}
    return tuple(key for key, number in gone.items() if key[0] in known and number > served.get(key, 0))


def since_change(store: Store, name: str, version: int) -> int:
    """Number of the newest entry that changed what this version of a program cooks: its pieces read before
    it count no more. What is only known better, by a calibration, changes no piece.
    """
    found = [_own_since(store)]
    for item in store.facts(ProofsAsked):
        for mark in item.fact.programs:
            if (mark.name, mark.version) == (name, version) and mark.reason != CALIBRATED:
                found.append(item.number)
    return max(found)


def _own_since(store: Store) -> int:
    """Number of the entry with which the demo gave way to a kitchen of one's own, or 0."""
    found, invented = 0, None
    for item in store.facts(KitchenSet):
        now_invented = _parsed(item.fact.text, item.fact.file).site.invented
        if invented and not now_invented:
            found = item.number
        invented = now_invented
    return found


def doubted_readings(store: Store) -> set[int]:
    """Numbers of readings that a failed check of their thermometer threw doubt on."""
    return {doubt.entry for look in store.facts(LookedBack) for doubt in look.fact.doubts}


def _probed(store: Store) -> tuple[ProbedProgram, ...]:
    """What readings have decided of programs, while the readings stand and nothing has changed since."""
    decided = list(store.facts(ProgramProbed))
    if not decided:
        return ()
    standing = {item.number for item in store.current_facts(Reading)} - doubted_readings(store)
    newest: dict[tuple[str, int, str], ProbedProgram] = {}
    for item in decided:
        fact = item.fact
        key = fact.name, fact.version, fact.stages
        newest.pop(key, None)
        since = since_change(store, fact.name, fact.version)
        if standing.issuperset(fact.readings) and min(fact.readings, default=0) > since:
            newest[key] = ProbedProgram(
                name=fact.name,
                version=fact.version,
                stages=fact.stages,
                outcome=fact.outcome,
                low_k=fact.low_k,
                readings_count=len(fact.readings),
            )
    return tuple(newest.values())


def kitchen_number(store: Store) -> int:
    """Number of the newest change of the kitchen or its calibrations: what a proof was made for."""
    fitted = store.current_facts(CalibrationKept)
    return max(_in_force(store).number, *(item.number for item in fitted), 0)


def kitchen_text(store: Store) -> str:
    """Text of the kitchen file in force."""
    return _in_force(store).fact.text


def _kept(fact: KitchenSet) -> Kitchen:
    """A kitchen file of the record by the rules of this version."""
    try:
        return _parsed(fact.text, fact.file)
    except DataError as error:
        raise KeptKitchenError(error.problems) from error


@lru_cache(maxsize=16)
def _parsed(text: str, file: str) -> Kitchen:
    """A kitchen file is read once while it stays the same."""
    return parse_kitchen(text, file)
