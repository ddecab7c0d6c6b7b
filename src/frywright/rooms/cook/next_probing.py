"""Probe next: which pieces of which load would decide a program soonest, what was read, where it stands."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

from frywright.calibrate.belief import COVERAGE, PieceClass, Prior, Seen
from frywright.calibrate.plan_probing import RISK, Decision, Standing, expected_path, next_load, standing
from frywright.calibrate.thermometer import corrected
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CaseOpened, ProgramProbed, Reading
from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.rooms.hall import in_turn, write
from frywright.rooms.kitchen import doubted_readings, since_change
from frywright.rooms.readings import ProbedFor, read_core, tell_probe
from frywright.rooms.thermometers import checks_in, correction_of
from frywright.trial.ask import hand_limit_c
from frywright.trial.evidence import stages_mark
from frywright.trial.predicted import program_facts
from frywright.trial.probing import known_prior

UNCHECKED = "its thermometer had no valid check"
DOUBTED = "its thermometer failed the check that followed"
BEFORE = "the kitchen has changed since"
OTHER_STAGES = "the stages were others then"
NO_CLASS = "its piece or its load is not of this program"
MEANWHILE = "the ones this page showed: another reading was kept meanwhile. Look at it, then keep yours"
State = Literal["open", "meets", "fails", "not shown", "short", "no rule"]


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanRow:
    """Pieces to read in one load: how many, of what, where."""

    count: int
    piece: PieceClass


@dataclass(frozen=True, slots=True, kw_only=True)
class Used:
    """One reading of a program: what it was of, its margin, and why it does not count (empty if it does)."""

    kept: Kept[Reading]
    margin_k: float
    left_out: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Probing:
    """Where the probing of a program stands, and what to probe next.

    Parameters
    ----------
    state : decided, still open, or why there is nothing to plan: predicted short, or no rule for its food
    chance_frac : chance that the program meets its limit, by what is known now
    load_number : number of the load to probe next
    rows : pieces to read in it
    later : loads after it, if all comes as expected
    low_k : margin that the slowest pieces are expected to reach, or the lowest one read where that decided
    """

    program: Program
    state: State
    limit_c: float | None
    chance_frac: float
    low_k: float
    load_number: int
    rows: tuple[PlanRow, ...]
    later: tuple[tuple[PlanRow, ...], ...]
    readings: tuple[Used, ...]
    pieces: tuple[PieceClass, ...]

    @property
    def read_count(self) -> int:
        """Readings that count."""
        return sum(not used.left_out for used in self.readings)

    @property
    def expected_count(self) -> int:
        """Readings it takes in all, if all comes as expected."""
        more = (self.rows, *self.later)
        return self.read_count + sum(row.count for load in more for row in load)


def next_probing(store: Store, kitchen: Kitchen, name: str) -> Probing:
    """Where the probing of a program stands. Raises InputError: no program has the name, or the kitchen
    cannot run it.
    """
    program = kitchen.program(name)
    prior = known_prior(without_lift(kitchen), program)
    limit_c = hand_limit_c(kitchen, kitchen.product(program.product))
    own = [
        e
        for e in store.current_facts(Reading)
        if (e.fact.program, e.fact.version) == (program.name, program.version)
    ]
    readings = _judged(store, kitchen, program, prior, own)
    idle = Probing(
        program=program,
        state="no rule",
        limit_c=limit_c,
        chance_frac=0.0,
        low_k=0.0,
        load_number=1 + max((used.kept.fact.load_number or 0 for used in readings), default=0),
        rows=(),
        later=(),
        readings=readings,
        pieces=prior.classes if prior else (),
    )
    if prior is None:
        return idle
    seen = _seen(prior, readings)
    now, load, rows, later = _planned(_Same(prior), seen)
    decided = kitchen.probed_as(program, stages_mark(program))
    state: State = now.decision.value if decided is None else decided.outcome  # type: ignore[assignment]
    if state != "fails" and program_facts(kitchen, program).short:
        state = "short"
    lowest = min((one.margin_k for one in seen), default=0.0)
    return replace(
        idle,
        state=state,
        chance_frac=now.belief.chance_frac,
        low_k=lowest if state == "fails" else now.belief.low_k,
        load_number=load,
        rows=rows if state == "open" else (),
        later=later if state == "open" else (),
    )


def without_lift(kitchen: Kitchen) -> Kitchen:
    """A kitchen without what moves no prediction, so that its engine answers are kept; calibrations made from
    readings at the lift are left out, or the readings would count twice.
    """
    logged = tuple(c for c in kitchen.calibrations if c.road != "lift")
    return replace(kitchen, marks=(), failed=(), retired=(), probed=(), calibrations=logged)


@dataclass(frozen=True, eq=False)
class _Same:
    """A prior by its identity: the same kitchen and program ask the same plan."""

    prior: Prior

    def __hash__(self) -> int:
        return id(self.prior)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and other.prior is self.prior


@lru_cache(maxsize=128)
def _planned(
    of: _Same, seen: tuple[Seen, ...]
) -> tuple[Standing, int, tuple[PlanRow, ...], tuple[tuple[PlanRow, ...], ...]]:
    """Where it stands, the number of the next load, its rows, and the loads after it.

    The pieces of a load are chosen from what was read before it, so that a load half read goes on as planned.
    """
    prior, now = of.prior, standing(of.prior, seen)
    load = max((one.load for one in seen), default=0)
    if now.decision is not Decision.OPEN:
        return now, load, (), ()
    left: tuple[int, ...] = ()
    if load:
        before = standing(prior, tuple(one for one in seen if one.load < load))
        picks = Counter(next_load(before)) - Counter(one.number for one in seen if one.load == load)
        left = tuple(picks.elements())
    if left:
        told = [*seen, *(_expected(now, number, load) for number in left)]
        later = expected_path(prior, told)
        return now, load, _rows(prior, left), tuple(_rows(prior, picks) for picks in later)
    path = expected_path(prior, seen)
    return now, load + 1, _rows(prior, path[0]), tuple(_rows(prior, picks) for picks in path[1:])


def _expected(now: Standing, number: int, load: int) -> Seen:
    return Seen(number=number, load=load, margin_k=max(float(now.belief.mean_k[number]), 0.0))


def _rows(prior: Prior, picks: Sequence[int]) -> tuple[PlanRow, ...]:
    return tuple(PlanRow(count=n, piece=prior.classes[i]) for i, n in Counter(picks).items())


def _judged(
    store: Store, kitchen: Kitchen, program: Program, prior: Prior | None, found: Sequence[Kept[Reading]]
) -> tuple[Used, ...]:
    """Readings of this version of a program, oldest first, each with its margin and why it does not count."""
    if not found:
        return ()
    limit_c = hand_limit_c(kitchen, kitchen.product(program.product))
    doubted, since = doubted_readings(store), since_change(store, program.name, program.version)
    stages, known = stages_mark(program), set(prior.classes if prior else ())
    checks, used = checks_in(store), []
    for item in found:
        fact = item.fact
        points = correction_of(checks, fact.thermometer, item.happened_at)
        core_c = float(corrected(fact.core_c, points))
        margin = core_c - kitchen.site.thermometer_error_k - limit_c if limit_c is not None else 0.0
        why = ""
        if not fact.checked:
            why = UNCHECKED
        elif item.number in doubted:
            why = DOUBTED
        elif item.number <= since:
            why = BEFORE
        elif fact.stages != stages:
            why = OTHER_STAGES
        elif _class_of(fact) not in known:
            why = NO_CLASS
        used.append(Used(kept=item, margin_k=margin, left_out=why))
    return tuple(used)


def _class_of(fact: Reading) -> PieceClass:
    return PieceClass(cut=fact.cut or "", place=fact.place or "", load=fact.load_kind or "")


def _seen(prior: Prior, readings: Sequence[Used]) -> tuple[Seen, ...]:
    number = {piece: i for i, piece in enumerate(prior.classes)}
    return tuple(
        Seen(
            number=number[_class_of(used.kept.fact)],
            load=used.kept.fact.load_number or 1,
            margin_k=used.margin_k,
        )
        for used in readings
        if not used.left_out
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptPlanned:
    """What a reading of the plan has led to."""

    reading: Kept[Reading]
    case: Kept[CaseOpened] | None
    decided: Kept[ProgramProbed] | None


@in_turn
def keep_planned(store: Store, kitchen: Kitchen, name: str, values: Mapping[str, str]) -> KeptPlanned:
    """Keep one reading of a program's plan; a case opens where it is below the limit, and the program is
    decided where it is the last one needed. Raises InputError: something typed cannot be read, or the piece
    is none of this program; or somebody else kept a reading meanwhile. The same form sent twice keeps one
    reading.

    Parameters
    ----------
    values : temp, thermometer, cut, place, load_kind, load_number, who; where known weight, rest (highest
        core after the lift) and rest_time; ``last``, the newest reading that whoever typed had seen
    """
    program = kitchen.program(name)
    before = next_probing(store, kitchen, name)
    if not before.pieces:
        raise InputError("program", repr(name), "one whose food has a rule here, or a house target")
    piece = _piece_typed(before.pieces, values)
    newest = before.readings[-1].kept if before.readings else None
    if str(newest.number if newest else 0) != values.get("last", ""):
        core_c = read_core(kitchen, values.get("temp", ""), "temp")
        twice = newest is not None and (_class_of(newest.fact), newest.fact.core_c) == (piece, core_c)
        if newest is not None and twice:
            return KeptPlanned(reading=newest, case=None, decided=None)
        raise InputError("readings", "changed", MEANWHILE)
    rest, weight = values.get("rest", "").strip(), values.get("weight", "").strip()
    weighed = "oz" if kitchen.site.units == "us" else "g"
    rest_c = read_core(kitchen, rest, "rest") if rest else None
    bound = ProbedFor(
        program=program.name,
        version=program.version,
        stages=stages_mark(program),
        cut=piece.cut,
        place=piece.place,
        load_kind=piece.load,
        load_number=_load_typed(values.get("load_number", ""), before.load_number),
        mass_kg=kitchen.site.read(weight, "mass", "weight", weighed) if weight else None,
        rest_core_c=rest_c,
        rest_s=kitchen.site.read(values.get("rest_time") or "3:00", "time", "rest_time") if rest else None,
    )
    told = {**values, "fryer": program.fryer, "product": program.product}
    reading, case = tell_probe(store, kitchen, told, bound=bound)
    now = next_probing(store, kitchen, name)
    return KeptPlanned(reading=reading, case=case, decided=_decide(store, before, now))


def _piece_typed(known: Sequence[PieceClass], values: Mapping[str, str]) -> PieceClass:
    named = {
        name: one_of(tuple(dict.fromkeys(getattr(p, field) for p in known)), values.get(name), name)
        for name, field in (("cut", "cut"), ("place", "place"), ("load_kind", "load"))
    }
    return PieceClass(cut=named["cut"], place=named["place"], load=named["load_kind"])


def _load_typed(text: str, planned: int) -> int:
    word = text.strip() or str(planned)
    if not word.isascii() or not word.isdigit() or not 1 <= int(word) <= 999:
        raise InputError("load_number", repr(word), "a whole number from 1: the first load probed is 1")
    return int(word)


def _decide(store: Store, before: Probing, now: Probing) -> Kept[ProgramProbed] | None:
    """Keep what the readings have decided, where the last one decides."""
    if before.state not in ("open", "short") or now.limit_c is None:
        return None
    if now.state not in ("meets", "fails", "not shown"):
        return None
    fact = ProgramProbed(
        name=now.program.name,
        version=now.program.version,
        stages=stages_mark(now.program),
        fryer=now.program.fryer,
        product=now.program.product,
        outcome=now.state,
        chance_frac=now.chance_frac,
        coverage_frac=COVERAGE,
        risk_frac=RISK,
        limit_c=now.limit_c,
        low_k=now.low_k,
        readings=tuple(used.kept.number for used in now.readings if not used.left_out),
    )
    return write(store, fact, now.readings[-1].kept.happened_at)
