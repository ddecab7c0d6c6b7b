"""The program desk: design, window, transfer, differences with their effect, scouting sums."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from frywright.design.difference import changes
from frywright.design.scouting import scouting_time
from frywright.design.search import Candidate, Design, Effort, Goals
from frywright.design.search import design as search_design
from frywright.design.transfer import Target, Transfer
from frywright.design.transfer import transfer as search_transfer
from frywright.design.window import Edge, window
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.units import clock, show
from frywright.physics.fry import simulate
from frywright.physics.plan import make_plan
from frywright.records.store import Store
from frywright.workbench.book import held_status, program_payload
from frywright.workbench.cook import needed_limit
from frywright.workbench.facts import facts_json, program_facts
from frywright.workbench.keyed_clock import clock_note_of
from frywright.workbench.naming import named
from frywright.workbench.proof import ProofAnswer, proof_json, prove_program

ROBUST_SAMPLES = 256
Translate = Callable[[str], str]


def design_program(
    kitchen: Kitchen, product: str, fryer: str, goals: Goals | None = None, effort: Effort | None = None
) -> tuple[Design, ProofAnswer]:
    """Best staged program within the fryer's controller, with a proof over 256 samples.

    Raises
    ------
    InputError
        The goals cannot be met together; the message names what binds.
    """
    limit = needed_limit(kitchen, kitchen.product(product))
    found = search_design(kitchen, product, fryer, limit, goals, effort)
    chosen = replace(found.recommended, program=named(kitchen, found.recommended.program))
    return replace(found, recommended=chosen), prove_program(kitchen, chosen.program, samples=ROBUST_SAMPLES)


def window_of(kitchen: Kitchen, program: Program) -> tuple[Candidate, tuple[Edge, ...]]:
    """Distance of each value of a program to the edge at which the worst case fails."""
    wide = Goals(
        margin_k=0.0, colour_low_n=0.0, colour_high_n=60.0, most_loss_frac=0.6, longest_s=3600.0, core_low_c=0.0
    )
    return window(kitchen, program, needed_limit(kitchen, kitchen.product(program.product)), wide)


def transfer_program(
    kitchen: Kitchen, program: Program, target: Target, effort: Effort | None = None
) -> tuple[Transfer, ProofAnswer]:
    """The same food from another fryer, bird, load or place: a program of that place under a name of its own, with a proof of its own.

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
    return replace(found, program=made), prove_program(target.kitchen, made, samples=ROBUST_SAMPLES)


def at_altitude(kitchen: Kitchen, altitude_m: float | None) -> Kitchen:
    """The same kitchen at another altitude; None leaves it where it is."""
    return kitchen if altitude_m is None else replace(kitchen, site=replace(kitchen.site, altitude_m=altitude_m))


def differences(kitchen: Kitchen, old: Program, new: Program, translate: Translate = str) -> dict[str, Any]:
    """What changed between versions, value by value, and what that does to core, loss and time."""
    system = str(kitchen.site.units)
    before, after = (simulate(make_plan(kitchen, p)) for p in (old, new))
    return {
        "name": new.name, "from_version": old.version, "to_version": new.version,
        "changes": [{"stage": c.stage, "what": c.what, "before": c.before, "after": c.after} for c in changes(old, new, system)],
        "effect": {
            "core_at_lift_k": after.coldest.core_at_lift_c - before.coldest.core_at_lift_c,
            "loss_frac": after.moisture_loss_frac - before.moisture_loss_frac, "time_s": after.lift_s - before.lift_s,
        },
        "clocks": [clock(p.clock_s) for p in (old, new)],
        "facts": [facts_json(program_facts(kitchen, p), system, translate) for p in (old, new)],
        "cards": f"Cards of version {old.version} are void.",
    }  # fmt: skip


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
        sum(known.durations_s()), weight_ratio=ratio, warmer_k=new.start_temp_c - old.start_temp_c,
        higher_m=altitude_m - kitchen.site.altitude_m, kind=kitchen.fryer(known.fryer).kind,
    )  # fmt: skip
    return {"time": clock(told.time_s), "time_s": told.time_s, "weight_n": told.weight_n, "start_n": told.start_n,
            "altitude_n": told.altitude_n, "label": "rule of thumb, not approved"}  # fmt: skip


def program_rows(store: Store, kitchen: Kitchen, translate: Translate = str) -> list[dict[str, Any]]:
    """Every program: what its fryer is known to hold, what is predicted and what is proven of it."""
    system = str(kitchen.site.units)
    return [
        {**row, "facts": facts_json(program_facts(kitchen, kitchen.program(row["name"])), system, translate)}
        for row in held_status(store, kitchen, translate)
    ]


def candidate_json(candidate: Candidate, system: str) -> dict[str, Any]:
    """A candidate as plain values and in words."""
    return {
        "program": program_payload(candidate.program), "margin_k": candidate.margin_k, "time_s": candidate.time_s,
        "loss_frac": candidate.loss_frac, "colour_n": candidate.colour_n, "yield_frac": candidate.yield_frac,
        "core_c": candidate.core_c, "crust_m": candidate.crust_m,
        "stages": [f"{show(s.set_c, 'c', system)} · {s.lid} · {clock(s.end_value)}" for s in candidate.program.timed().stages],
    }  # fmt: skip


EDGE_TEXTS = {
    ("s", True): "Stage {stage}, {what}: {amount_s} less still meets; beyond that the {goal} fails.",
    ("s", False): "Stage {stage}, {what}: {amount_s} more still meets; beyond that the {goal} fails.",
    ("K", True): "Stage {stage}, {what}: {amount_k} less still meets; beyond that the {goal} fails.",
    ("K", False): "Stage {stage}, {what}: {amount_k} more still meets; beyond that the {goal} fails.",
}


def edge_sentence(edge: Edge, system: str, translate: Translate = str) -> str:
    """One edge of the window in words: how much less (or more) still meets, and what fails beyond."""
    less = edge.change < 0 or (edge.change == 0 and edge.breaks in ("margin", "time"))
    values: dict[str, float | str] = {
        "stage": float(edge.stage), "what": edge.what, "goal": edge.breaks,
        ("amount_s" if edge.unit == "s" else "amount_k"): abs(edge.change),
    }  # fmt: skip
    told = say(EDGE_TEXTS[edge.unit, less], values, system, translate)
    if edge.piece:
        told += " " + say("It is the {piece} at the heavy end.", {"piece": edge.piece}, system, translate)
    return told


def design_json(found: Design, proof: ProofAnswer, system: str, translate: Translate = str) -> dict[str, Any]:
    """A design with its front and proof as plain values."""
    return {
        "recommended": candidate_json(found.recommended, system), "reason": say(found.reason.text, found.reason.values, system, translate), "tried_count": found.tried_count,
        "front": [candidate_json(c, system) for c in found.front[:: max(1, len(found.front) // 12)]],
        "proof": proof_json(proof, system, translate),
    }  # fmt: skip


def transfer_json(found: Transfer, proof: ProofAnswer, system: str, translate: Translate = str) -> dict[str, Any]:
    """A transfer with its proof as plain values."""
    from dataclasses import asdict

    return {
        "program": program_payload(found.program), "margin_k": found.margin_k, "source": asdict(found.source),
        "target": asdict(found.target), "unmatched": [
            say("{quality}: {times} times what counts as a match", {"quality": name, "times": f"{value:+.1f}"}, system, translate)
            for name, value in found.unmatched.items()
        ], "proof": proof_json(proof, system, translate),
        "stages": [f"{show(s.set_c, 'c', system)} · {s.lid} · {clock(s.end_value)}" for s in found.program.timed().stages],
    }  # fmt: skip
