"""The program desk: design, window, transfer, differences with their effect, scouting sums."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import asdict, replace
from typing import Any

from frywright.design.difference import changes
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
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.units import clock, show, signed
from frywright.physics.fry import simulate
from frywright.physics.plan import make_plan
from frywright.rooms.cook.life import lives_shown
from frywright.rooms.cook.programs import program_json
from frywright.rooms.standing import held_status
from frywright.trial.ask import needed_limit, product_limit
from frywright.trial.keyed_clock import clock_note_of
from frywright.trial.naming import named
from frywright.trial.predicted import facts_json, program_facts
from frywright.trial.proof import ProofAnswer, answer, proof_json

Translate = Callable[[str], str]


def design_program(
    kitchen: Kitchen, product: str, fryer: str, goals: Goals | None = None, effort: Effort | None = None
) -> tuple[Design, ProofAnswer]:
    """Best staged program within the fryer's controller over all loads, with its proof, which holds.

    Raises
    ------
    InputError
        The goals cannot be met together; the message names what binds and the nearest program.
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

    Raises
    ------
    InputError
        Long enough for its proof it misses a goal; the message says which.
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
    with a proof that holds.

    Raises
    ------
    InputError
        It cannot be done; the message says how near the nearest comes.
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


def differences(kitchen: Kitchen, old: Program, new: Program, translate: Translate = str) -> dict[str, Any]:
    """What changed between versions, value by value, and what that does to core, loss and time."""
    system = str(kitchen.site.units)
    before, after = (simulate(make_plan(kitchen, p)) for p in (old, new))
    return {
        "name": new.name,
        "from_version": old.version,
        "to_version": new.version,
        "changes": [
            {"stage": c.stage, "what": c.what, "before": c.before, "after": c.after}
            for c in changes(old, new, system)
        ],
        "effect": {
            "core_at_lift_k": after.coldest.core_at_lift_c - before.coldest.core_at_lift_c,
            "loss_frac": after.moisture_loss_frac - before.moisture_loss_frac,
            "time_s": after.lift_s - before.lift_s,
        },
        "clocks": [clock(p.clock_s) for p in (old, new)],
        "facts": [facts_json(program_facts(kitchen, p), system, translate) for p in (old, new)],
        "cards": f"Cards of version {old.version} are void.",
    }


def clock_sentence(kitchen: Kitchen, program: Program, translate: Translate = str) -> str:
    """The clock a program is keyed with and when its lift comes, at a full load."""
    history = simulate(make_plan(kitchen, program))
    note = clock_note_of(history)
    return say(note.text, note.values, str(kitchen.site.units), translate)


def scouting_beside(kitchen: Kitchen, known: Program, product: str, altitude_m: float) -> dict[str, Any]:
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
    return {
        "time": clock(told.time_s),
        "time_s": told.time_s,
        "weight_n": told.weight_n,
        "start_n": told.start_n,
        "altitude_n": told.altitude_n,
        "label": "rule of thumb, not approved",
    }


def program_rows(store: Store, kitchen: Kitchen, translate: Translate = str) -> list[dict[str, Any]]:
    """Every program: what its fryer is known to hold, what is predicted and what is proven of it, and where
    its life stands; the retired last.
    """
    system, lives = str(kitchen.site.units), lives_shown(store, kitchen, translate)
    rows = [
        {
            **row,
            "facts": facts_json(program_facts(kitchen, kitchen.program(row["name"])), system, translate),
            "life": lives[row["name"]],
        }
        for row in held_status(store, kitchen, translate)
    ]
    return sorted(rows, key=lambda row: row["life"].end == "retired")


def candidate_json(candidate: Candidate, system: str, translate: Translate = str) -> dict[str, Any]:
    """A candidate as plain values and in words."""
    return {
        "program": program_json(candidate.program),
        "margin_k": candidate.margin_k,
        "time_s": candidate.time_s,
        "loads_k": list(candidate.loads_k),
        "loss_frac": candidate.loss_frac,
        "light_loss_frac": candidate.light_loss_frac,
        "colour_n": candidate.colour_n,
        "yield_frac": candidate.yield_frac,
        "core_c": candidate.core_c,
        "crust_m": candidate.crust_m,
        "time": clock(candidate.time_s),
        "margin": signed(candidate.margin_k, "k", system),
        "stages": stages_told(candidate.program, system, translate),
    }


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


def window_rows(
    edges: Sequence[Edge], program: Program, system: str, translate: Translate = str
) -> list[dict[str, Any]]:
    """The window as a table: every value keyed, and how far it may move less and more before what breaks."""
    rows = []
    for less, more in zip(edges[::2], edges[1::2], strict=True):
        stage = program.timed().stages[less.stage - 1]
        keyed = clock(stage.end_value) if less.unit == "s" else show(stage.set_c, "c", system)
        rows.append(
            {
                "stage": less.stage,
                "what": translate(less.what),
                "keyed": keyed,
                "less": edge_words(less, system, translate),
                "more": edge_words(more, system, translate),
                "less_change": less.change,
                "more_change": more.change,
                "less_breaks": less.breaks,
                "more_breaks": more.breaks,
            }
        )
    return rows


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


def loads_json(
    loads: Sequence[float], unit: str, margins_k: Sequence[float], system: str, translate: Translate = str
) -> list[dict[str, Any]]:
    """Margin of each load, each dropped straight after a full one."""
    return [
        {
            "load_count": count,
            "load": f"{count:.3g} × {translate(unit)}",
            "margin_k": k,
            "margin": signed(k, "k", system),
        }
        for count, k in zip(loads, margins_k, strict=True)
    ]


def design_json(found: Design, proof: ProofAnswer, system: str, translate: Translate = str) -> dict[str, Any]:
    """A design with its trade-off and proof as plain values."""
    best = found.recommended
    return {
        "recommended": candidate_json(best, system, translate),
        "tried_count": found.tried_count,
        "reason": say(found.reason.text, found.reason.values, system, translate),
        "late": late_sentence(found.late, system, translate),
        "loads": loads_json(found.loads_n, found.unit, best.loads_k, system, translate),
        "front": [{**candidate_json(c, system, translate), "chosen": c == best} for c in found.front],
        "proof": proof_json(proof, system, translate),
    }


def row_json(
    taken: tuple[Candidate, ProofAnswer, Late], system: str, translate: Translate = str
) -> dict[str, Any]:
    """A row taken from a trade-off as plain values."""
    row, proof, late = taken
    return {
        "recommended": candidate_json(row, system, translate),
        "late": late_sentence(late, system, translate),
        "proof": proof_json(proof, system, translate),
    }


def transfer_json(
    found: Transfer, proof: ProofAnswer, system: str, translate: Translate = str
) -> dict[str, Any]:
    """A transfer with its proof as plain values."""
    return {
        "program": program_json(found.program),
        "margin_k": found.margin_k,
        "source": asdict(found.source),
        "target": asdict(found.target),
        "unmatched": [_unlike(name, found, system, translate) for name in found.unmatched],
        "proof": proof_json(proof, system, translate),
        "stages": stages_told(found.program, system, translate),
    }


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
