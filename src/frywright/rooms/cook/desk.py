"""The program desk: design, window, transfer, differences with their effect, scouting sums."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, fields, replace
from functools import lru_cache
from itertools import pairwise

from frywright.design.difference import Change, changes
from frywright.design.offer import Design, Late, offered, stages_told
from frywright.design.offer import design as search_design
from frywright.design.offer import late as lifted_late
from frywright.design.scouting import scouting_time
from frywright.design.search import Candidate, Effort, Goals, Sizer
from frywright.design.transfer import Target, Taste, Transfer
from frywright.design.transfer import transfer as search_transfer
from frywright.design.window import Edge, window
from frywright.ledger.store import Store
from frywright.model.findings import say
from frywright.model.food import counted
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import clock, show, signed
from frywright.physics.fry import simulate, simulate_many
from frywright.physics.plan import make_plan
from frywright.rooms.cook.life import LifeShown, lives_shown
from frywright.rooms.cook.programs import program_json
from frywright.rooms.standing import Held, held_status
from frywright.trial.ask import needed_limit, product_limit
from frywright.trial.keyed_clock import clock_note_of
from frywright.trial.naming import named
from frywright.trial.predicted import FactsTold, facts_told, program_facts
from frywright.trial.proof import ProofAnswer, ProofView, answer, proof_view


def design_program(
    kitchen: Kitchen, product: str, fryer: str, goals: Goals | None = None, effort: Effort | None = None
) -> tuple[Design, ProofAnswer]:
    """Best staged program within the fryer's controller over all loads, with its proof, which holds.
    Raises InputError: the goals cannot be met together; the message names what binds and the nearest program.
    """
    found = search_design(
        kitchen, product, fryer, needed_limit(kitchen, kitchen.product(product)), goals, effort
    )
    made = named(kitchen, found.recommended.program)
    chosen = replace(found.recommended, program=made)
    front = tuple(chosen if c == found.recommended else c for c in found.front)
    return replace(found, recommended=chosen, front=front), answer(
        kitchen, make_plan(kitchen, made), found.proof
    )


def take_row(kitchen: Kitchen, row: Candidate, goals: Goals) -> tuple[Candidate, ProofAnswer, Late]:
    """Another row of a trade-off as a program of its own: proved, and made longer until its proof holds.
    Raises InputError: long enough for its proof it misses a goal; the message says which.
    """
    sizer = Sizer(kitchen, row.program, needed_limit(kitchen, kitchen.product(row.program.product)), goals)
    best, _, proof = offered(sizer, [row], goals)
    made = named(kitchen, best.program)
    told = answer(kitchen, make_plan(kitchen, made), proof)
    return replace(best, program=made), told, lifted_late(kitchen, made)


def window_of(kitchen: Kitchen, program: Program, goals: Goals | None = None) -> tuple[Edge, ...]:
    """Distance of each value of a program to the edge at which the limit over all loads, or another goal,
    fails; none without a limit.
    """
    limit = product_limit(kitchen, kitchen.product(program.product))
    if limit is None:
        return ()
    return window(kitchen, program, limit, replace(goals or Goals(), margin_k=0.0))[1]


def transfer_program(
    kitchen: Kitchen, program: Program, target: Target, effort: Effort | None = None
) -> tuple[Transfer, ProofAnswer]:
    """The same food from another fryer, bird, load or place: a program of that place under a name of its own,
    with a proof that holds. Raises InputError: it cannot be done; the message says how near the nearest
    comes.
    """
    limit = needed_limit(kitchen, kitchen.product(target.product or program.product))
    found = search_transfer(kitchen, program, target, limit, effort)
    made = named(kitchen, replace(found.program, altitude_m=target.kitchen.site.altitude_m))
    if kitchen.belongs(replace(made, unit_mass_kg=None)):
        made = replace(made, altitude_m=None)
    return replace(found, program=made), answer(target.kitchen, make_plan(target.kitchen, made), found.proof)


def at_altitude(kitchen: Kitchen, altitude_m: float | None) -> Kitchen:
    """The same kitchen at another altitude; None leaves it where it is."""
    return (
        kitchen if altitude_m is None else replace(kitchen, site=replace(kitchen.site, altitude_m=altitude_m))
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangeEffect:
    """What a change does to a full load: after less before."""

    core_at_lift_k: float
    loss_frac: float
    time_s: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Differences:
    """Two versions of a program beside each other; ``clocks`` and ``facts`` before and after."""

    name: str
    from_version: int
    to_version: int
    changes: tuple[Change, ...]
    effect: ChangeEffect
    clocks: tuple[str, str]
    facts: tuple[FactsTold, FactsTold]
    cards: str


@lru_cache(maxsize=32)
def differences(
    kitchen: Kitchen, versions: tuple[Program, ...], translate: Translate = str
) -> tuple[Differences, ...]:
    """What changed from each version to the next, value by value, and what that does to core, loss and time.
    Each is cooked once; what was worked out last is kept.
    """
    system = kitchen.site.units
    cooks = simulate_many([make_plan(kitchen, program) for program in versions])
    facts = [facts_told(program_facts(kitchen, program), system, translate) for program in versions]
    return tuple(
        Differences(
            name=new.name,
            from_version=old.version,
            to_version=new.version,
            changes=changes(old, new, system),
            effect=ChangeEffect(
                core_at_lift_k=after.coldest.core_at_lift_c - before.coldest.core_at_lift_c,
                loss_frac=after.moisture_loss_frac - before.moisture_loss_frac,
                time_s=after.lift_s - before.lift_s,
            ),
            clocks=(clock(old.clock_s), clock(new.clock_s)),
            facts=(was, now),
            cards=f"Cards of version {old.version} are void.",
        )
        for (old, new), (before, after), (was, now) in zip(
            pairwise(versions), pairwise(cooks), pairwise(facts), strict=True
        )
    )


def clock_sentence(kitchen: Kitchen, program: Program, translate: Translate = str) -> str:
    """The clock a program is keyed with and when its lift comes, at a full load."""
    history = simulate(make_plan(kitchen, program))
    note = clock_note_of(history)
    return say(note.text, note.values, kitchen.site.units, translate)


@dataclass(frozen=True, slots=True, kw_only=True)
class RuleOfThumb:
    """The rule-of-thumb time and its factors, never approved."""

    time: str
    time_s: float
    weight_n: float
    start_n: float
    altitude_n: float
    label: str = "rule of thumb, not approved"


def scouting_beside(kitchen: Kitchen, known: Program, product: str, altitude_m: float) -> RuleOfThumb:
    """The rule-of-thumb time for another bird or altitude, beside nothing but itself."""
    old, new = kitchen.product(known.product), kitchen.product(product)
    sets = kitchen.cut_set(old.cut_set), kitchen.cut_set(new.cut_set)
    ratio = (new.unit_mass_kg or sets[1].unit_mass_kg) / (old.unit_mass_kg or sets[0].unit_mass_kg)
    told = scouting_time(
        sum(known.durations_s()),
        weight_ratio=ratio,
        warmer_k=new.start_temp_c - old.start_temp_c,
        higher_m=altitude_m - kitchen.site.altitude_m,
        kind=kitchen.fryer(known.fryer).kind,
    )
    return RuleOfThumb(
        time=clock(told.time_s),
        time_s=told.time_s,
        weight_n=told.weight_n,
        start_n=told.start_n,
        altitude_n=told.altitude_n,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class ProgramRow(Held):
    """A program on the desk: what its fryer holds of it, its two facts, its life."""

    facts: FactsTold
    life: LifeShown


def program_rows(store: Store, kitchen: Kitchen, translate: Translate = str) -> list[ProgramRow]:
    """Every program: what its fryer is known to hold, what is predicted and what is proven of it, and where
    its life stands; the retired last.
    """
    system, lives = kitchen.site.units, lives_shown(store, kitchen, translate)
    rows = [
        ProgramRow(
            **asdict(row),
            facts=facts_told(program_facts(kitchen, kitchen.program(row.name)), system, translate),
            life=lives[row.name],
        )
        for row in held_status(store, kitchen, translate)
    ]
    return sorted(rows, key=lambda row: row.life.end == "retired")


@dataclass(frozen=True, slots=True, kw_only=True)
class CandidateView:
    """A candidate as figures and in words."""

    program: Mapping[str, object]
    margin_k: float
    time_s: float
    loads_k: tuple[float, ...]
    loss_frac: float
    light_loss_frac: float
    colour_n: float
    yield_frac: float
    core_c: float
    crust_m: float
    time: str
    margin: str
    stages: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class FrontRow(CandidateView):
    """A row of a trade-off."""

    chosen: bool


def candidate_view(candidate: Candidate, system: str, translate: Translate = str) -> CandidateView:
    """A candidate as plain values and in words."""
    return CandidateView(
        program=program_json(candidate.program),
        margin_k=candidate.margin_k,
        time_s=candidate.time_s,
        loads_k=tuple(candidate.loads_k),
        loss_frac=candidate.loss_frac,
        light_loss_frac=candidate.light_loss_frac,
        colour_n=candidate.colour_n,
        yield_frac=candidate.yield_frac,
        core_c=candidate.core_c,
        crust_m=candidate.crust_m,
        time=clock(candidate.time_s),
        margin=signed(candidate.margin_k, "k", system),
        stages=tuple(stages_told(candidate.program, system, translate)),
    )


def _front(found: Design, system: str, translate: Translate) -> tuple[FrontRow, ...]:
    rows = []
    for one in found.front:
        view = candidate_view(one, system, translate)
        values = {f.name: getattr(view, f.name) for f in fields(view)}
        rows.append(FrontRow(**values, chosen=one == found.recommended))
    return tuple(rows)


BREAKS = {
    "limit": "{piece} is short of the limit",
    "margin": "{piece} has less than the margin asked for",
    "time": "it takes longer than asked for",
    "vent": "letting the pressure down takes more than a minute",
    "moisture lost": "it loses more than asked for",
    "core": "the core leaves what was asked for",
    "crust": "the crust leaves what was asked for",
    "colour": "the colour leaves what was asked for",
    "hottest oil": "the oil is hotter than asked for",
}
LATE = (
    "Lifted {late_s} late, a full load loses {loss_frac}, its driest piece {light_loss_frac}, and its hottest"
    " core is {core_c}. Lifted early it may be raw: the time shown is the least."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class WindowRow:
    """One value keyed, and how far it may move less and more before what breaks."""

    stage: int
    what: str
    keyed: str
    less: str
    more: str
    less_change: float
    more_change: float
    less_breaks: str
    more_breaks: str


def window_rows(
    edges: Sequence[Edge], program: Program, system: str, translate: Translate = str
) -> tuple[WindowRow, ...]:
    """The window as a table: every value keyed, and how far it may move less and more before what breaks."""
    rows = []
    for less, more in zip(edges[::2], edges[1::2], strict=True):
        stage = program.timed().stages[less.stage - 1]
        row = WindowRow(
            stage=less.stage,
            what=translate(less.what),
            keyed=clock(stage.end_value) if less.unit == "s" else show(stage.set_c, "c", system),
            less=edge_words(less, system, translate),
            more=edge_words(more, system, translate),
            less_change=less.change,
            more_change=more.change,
            less_breaks=less.breaks,
            more_breaks=more.breaks,
        )
        rows.append(row)
    return tuple(rows)


def edge_words(edge: Edge, system: str, translate: Translate = str) -> str:
    """One edge in words: how far, and what breaks beyond."""
    amount = show(abs(edge.change), "s" if edge.unit == "s" else "k", system)
    if not edge.breaks:
        return (
            say("up to {amount} nothing breaks", {"amount": amount}, system, translate)
            if edge.change
            else translate("cannot move")
        )
    why = say(BREAKS[edge.breaks], {"piece": edge.piece}, system, translate)
    text = "{amount}, beyond that {why}" if edge.change else "not at all: {why}"
    return say(text, {"amount": amount, "why": why}, system, translate)


def late_sentence(late: Late, system: str, translate: Translate = str) -> str:
    """What a late lift does, in words."""
    values = {
        "late_s": late.late_s,
        "loss_frac": late.loss_frac,
        "light_loss_frac": late.light_loss_frac,
        "core_c": late.core_c,
    }
    return say(LATE, values, system, translate)


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadRow:
    """Margin of one load, dropped straight after a full one."""

    load_count: float
    load: str
    margin_k: float
    margin: str


def load_rows(
    loads: Sequence[float], unit: str, margins_k: Sequence[float], system: str, translate: Translate = str
) -> tuple[LoadRow, ...]:
    """Margin of each load, each dropped straight after a full one."""
    return tuple(
        LoadRow(
            load_count=count,
            load=f"{counted(count, unit)} × {translate(unit)}",
            margin_k=k,
            margin=signed(k, "k", system),
        )
        for count, k in zip(loads, margins_k, strict=True)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class DesignView:
    """A design with its trade-off and proof, or a row taken from a trade-off; ``window`` and ``clock`` where
    they were asked for.
    """

    recommended: CandidateView
    tried_count: int = 0
    reason: str = ""
    late: str
    loads: tuple[LoadRow, ...] = ()
    front: tuple[FrontRow, ...] = ()
    proof: ProofView
    window: tuple[WindowRow, ...] = ()
    clock: str = ""


def design_view(found: Design, proof: ProofAnswer, system: str, translate: Translate = str) -> DesignView:
    """A design as people and programs read it."""
    best = found.recommended
    return DesignView(
        recommended=candidate_view(best, system, translate),
        tried_count=found.tried_count,
        reason=say(found.reason.text, found.reason.values, system, translate),
        late=late_sentence(found.late, system, translate),
        loads=load_rows(found.loads_n, found.unit, best.loads_k, system, translate),
        front=_front(found, system, translate),
        proof=proof_view(proof, system, translate),
    )


def row_view(
    taken: tuple[Candidate, ProofAnswer, Late], system: str, translate: Translate = str
) -> DesignView:
    """A row taken from a trade-off as people and programs read it."""
    row, proof, late = taken
    return DesignView(
        recommended=candidate_view(row, system, translate),
        late=late_sentence(late, system, translate),
        proof=proof_view(proof, system, translate),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class TransferView:
    """A program carried over, what of the food could not be matched, its proof."""

    program: Mapping[str, object]
    margin_k: float
    source: Taste
    target: Taste
    unmatched: tuple[str, ...]
    proof: ProofView
    stages: tuple[str, ...]
    beside: RuleOfThumb | None = None
    clock: str = ""


def transfer_view(
    found: Transfer, proof: ProofAnswer, system: str, translate: Translate = str
) -> TransferView:
    """A transfer as people and programs read it."""
    return TransferView(
        program=program_json(found.program),
        margin_k=found.margin_k,
        source=found.source,
        target=found.target,
        unmatched=tuple(_unlike(name, found, system, translate) for name in found.unmatched),
        proof=proof_view(proof, system, translate),
        stages=tuple(stages_told(found.program, system, translate)),
    )


def _unlike(name: str, found: Transfer, system: str, translate: Translate) -> str:
    def told(taste: Taste) -> str:
        return {
            "core": show(taste.core_c, "c", system),
            "crust": show(taste.crust_m, "m", system),
            "loss": show(taste.loss_frac, "frac", system),
            "colour": f"{taste.colour_n:.0f}",
        }[name]

    words = {"core": "core", "crust": "crust", "loss": "moisture lost", "colour": "colour"}
    values = {"quality": words[name], "there": told(found.target), "here": told(found.source)}
    return say("{quality}: {there} there, {here} here", values, system, translate)
