"""Drills from a kitchen's own fryers and programs: each is simulated, each wrong answer is explained by what
happens in vat, lid or piece.

A drill belongs to a version of a program; a changed program gives other drills. Nothing is scored.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass, replace

from frywright.care.lid_drills import Choice, Drill, drill_key, lid_drills
from frywright.model.errors import InputError
from frywright.model.findings import Note
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program, Stage
from frywright.physics.fry import FryHistory, PieceHistory, simulate_many
from frywright.physics.plan import OVERLOAD_N, FryPlan, make_plan
from frywright.verdicts.place import place_of

LEAST_K = 1.5
"""A change that moves the coldest piece by less is no question of how much (project's own rule: a probe
cannot tell it).
"""
LEAST_NOW_K = 0.5
LATE_S, EARLY_S = 90.0, 120.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What goes wrong in a drill, and what it does to the piece."""

    key: str
    text: str
    why: str
    oil_k: float = 0.0
    mass_n: float = 1.0
    start_k: float = 0.0
    load_n: float = 1.0
    early_s: float = 0.0
    late_s: float = 0.0
    never_closed: bool = False
    trap: str = "hotter"


COLD = (
    "The oil gives heat in proportion to how much hotter it is than the boiling water at the crust: colder"
    " oil feeds the core later."
)
BIG = "Time to the core grows with the square of thickness: a quarter more weight is about a sixth more time."
CHILL = "Every degree colder at the drop must be heated first, and the core starts last."
FULL = "More food boils off more water: the oil falls further and stays low while the crust still boils."
SHORT = "The core is still climbing at the lift: the last minutes are the steepest."
LATE = (
    "Without the lid the water boils at the kitchen's own boiling point: the core is heated from a cooler"
    " front until pressure builds."
)
CHANGES = (
    Change(key="cold_oil", text="The oil stood at {oil_c} at the drop.", why=COLD, oil_k=-20.0),
    Change(
        key="colder_oil",
        text="The oil stood at {oil_c} at the drop: it had just been filled up.",
        why=COLD,
        oil_k=-35.0,
    ),
    Change(
        key="big",
        text="The supplier sent bigger birds: pieces a quarter heavier than the card's.",
        why=BIG,
        mass_n=1.25,
        trap="warmer",
    ),
    Change(
        key="chilled",
        text="The pieces came straight from the coldest shelf, at {start_c}.",
        why=CHILL,
        start_k=-4.0,
        trap="warmer",
    ),
    Change(
        key="overload",
        text="The load was a quarter above the card's.",
        why=FULL,
        load_n=OVERLOAD_N,
        trap="reach",
    ),
    Change(
        key="early",
        text="Somebody lifted two minutes early: guests were waiting.",
        why=SHORT,
        early_s=EARLY_S,
        trap="warmer",
    ),
    Change(
        key="late_lid",
        text="The lid was closed a minute and a half late; the timer ran on from the drop.",
        why=LATE,
        late_s=LATE_S,
        trap="peek",
    ),
    Change(
        key="open_lid",
        text="The lid was never closed; the timer ran on.",
        why=LATE,
        never_closed=True,
        trap="hotter",
    ),
    Change(
        key="cold_and_big",
        text="The oil stood at {oil_c} at the drop, and the pieces were a quarter heavier than the card's.",
        why=COLD,
        oil_k=-20.0,
        mass_n=1.25,
        trap="warmer",
    ),
)
"""Sizes of the changes are this project's choice, about the worst a shift sees."""
WHAT_NOW = "{situation} The timer of {program} on {fryer} ends. What now?"
PROBE = "Probe the coldest piece; below its limit the whole load goes back in the oil and is probed again."
PROBE_WHY = (
    "Simulated: the coldest piece, {piece}, leaves the oil at {core_c}; on a usual day {usual_c}. {why} Only"
    " a probe tells the two apart."
)
TIMER = "Lift and rack it: the timer has ended."
TIMER_WHY = "The timer counts minutes, not heat. The coldest piece, {piece}, would go out at {core_c}. {raw}"
COLOUR = "Lift what is golden, leave what is pale."
COLOUR_WHY = (
    "Colour comes from the surface alone. Here the crust has browned to {brown_frac} of a usual day while the"
    " core is {less_k} colder. {raw}"
)
RAW = "That is below the limit of {limit_c}: germs live on in it and make guests ill."
NEAR = (
    "The simulation passes the limit of {limit_c} here, but it is an estimate of one load: the piece that"
    " fails is the one nobody probed."
)
NO_LEVEL = "Whether that meets this place's rule needs the time at temperature: only a probe shows it."
TRAPS = {
    "hotter": (
        "Turn the oil up for the last minutes.",
        (
            "The crust darkens at once, the core hardly notices: heat takes minutes through the meat. Probe,"
            " and cook on at the set point."
        ),
        False,
    ),
    "warmer": (
        "Rack it; the hold cabinet finishes what is short.",
        (
            "A hold cabinet keeps heat, it does not cook: a core that is short stays short for an hour. This"
            " one went in at {core_c}. {raw}"
        ),
        False,
    ),
    "reach": (
        "Fish part of it out by hand, so that the rest gets hot.",
        (
            "Reaching over a boiling vat splashes hot oil on hands and face; a full basket lifted crooked"
            " tips. Let it cook, probe, and load less."
        ),
        True,
    ),
    "peek": (
        "Open the lid a crack while it cooks, to look.",
        (
            "Under pressure the gauge reads {gauge_pa}: the lid flies, steam and oil at {oil_end_c} hit face"
            " and arms. Zero on the gauge and a silent vent first."
        ),
        True,
    ),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class _Run:
    """A program with one thing changed, simulated beside the usual day."""

    change: Change | None
    plan: FryPlan
    history: FryHistory
    piece: PieceHistory


def drills_for(kitchen: Kitchen) -> tuple[Drill, ...]:
    """Every drill of a kitchen, by program. Raises InputError: the kitchen has no program to drill."""
    programs = [kitchen.program(name) for name in sorted({p.name for p in kitchen.programs})]
    programs = [
        p
        for p in programs
        if any(
            kitchen.cut(part.cut).poultry
            for part in kitchen.cut_set(kitchen.product(p.product).cut_set).parts
        )
    ]
    if not programs:
        raise InputError("program", "none", "at least one for poultry", where=kitchen.site.name)
    asked = [(program, change) for program in programs for change in (None, *_changes(program))]
    plans = [_plan(kitchen, program, change) for program, change in asked]
    small = [make_plan(kitchen, p, units_count=1.0) for p in programs if p.under_pressure]
    histories = simulate_many([*plans, *small])
    runs = [
        _Run(change=c, plan=plan, history=h, piece=_coldest(h))
        for (_, c), plan, h in zip(asked, plans, histories, strict=False)
    ]
    alone = {h.plan.program.name: h for h in histories[len(plans) :]}
    found: list[Drill] = []
    for program in programs:
        own = [run for run in runs if run.plan.program.name == program.name]
        found += _about(program, own[0], own[1:], getattr(place_of(kitchen).cook_limit(), "level_c", None))
        if program.under_pressure:
            found += lid_drills(program, own[0].plan, own[0].history, alone[program.name])
    return tuple(_mixed(drill) for drill in found)


def _changes(program: Program) -> list[Change]:
    closed = program.under_pressure
    total = sum(program.durations_s())
    return [
        c
        for c in CHANGES
        if (closed or not (c.late_s or c.never_closed)) and (not c.early_s or total > 2.5 * c.early_s)
    ]


def _plan(kitchen: Kitchen, program: Program, change: Change | None) -> FryPlan:
    if change is None:
        return make_plan(kitchen, program)
    product = kitchen.product(program.product)
    mass = (product.unit_mass_kg or kitchen.cut_set(product.cut_set).unit_mass_kg) * change.mass_n
    start = max(-1.0, product.start_temp_c + change.start_k)
    heavier = replace(product, unit_mass_kg=mass, start_temp_c=start)
    fryer = kitchen.fryer(program.fryer)
    roomy = replace(fryer, controller=replace(fryer.controller, stage_count=20))
    changed = replace(
        kitchen,
        products=tuple(heavier if p.key == product.key else p for p in kitchen.products),
        fryers=tuple(roomy if f.key == fryer.key else f for f in kitchen.fryers),
    )
    usual = make_plan(kitchen, program)
    edited = replace(program.timed(), stages=_stages(program, change))
    return make_plan(
        changed,
        edited,
        units_count=usual.units_count * change.load_n,
        oil_start_c=usual.oil_start_c + change.oil_k,
    )


def _stages(program: Program, change: Change) -> tuple[Stage, ...]:
    """The stages as the change makes them; the total time stays, but for an early lift."""
    stages = program.timed().stages
    if change.never_closed:
        return tuple(replace(s, lid=LidState.OPEN) for s in stages)
    if change.late_s:
        at = next(n for n, s in enumerate(stages) if s.lid is LidState.PRESSURE)
        length = stages[at].duration_s or 0.0
        late = min(change.late_s, 0.5 * length)
        split = (
            replace(stages[at], lid=LidState.OPEN, duration_s=late),
            replace(stages[at], duration_s=length - late),
        )
        return (*stages[:at], *split, *stages[at + 1 :])
    left, kept = sum(program.durations_s()) - change.early_s, []
    for stage in stages:
        length = min(stage.duration_s or 0.0, left)
        left -= length
        if length > 0:
            kept.append(replace(stage, duration_s=length))
    return tuple(kept)


def _coldest(history: FryHistory) -> PieceHistory:
    return min((p for p in history.pieces if p.kind.cut.poultry), key=lambda p: p.core_at_lift_c)


# ---------------------------------------------------------------- questions


def _about(program: Program, usual: _Run, changed: Sequence[_Run], limit_c: float | None) -> list[Drill]:
    found = []
    for run in changed:
        less = usual.piece.core_at_lift_c - run.piece.core_at_lift_c
        if less < LEAST_NOW_K:
            continue  # a closed lid can make up for it; there is nothing to learn from that here
        found.append(_now(program, usual, run, limit_c))
        if less >= LEAST_K and run.change is not None and not run.change.early_s:
            found.append(_how_much(program, run, less))
    worst = _worst(program, changed)
    return [*found, worst] if worst else found


NESTED = ("situation", "why", "raw")
"""Values that are templates themselves, filled from the same values."""


def _values(usual: _Run, run: _Run) -> dict[str, float | str]:
    less = usual.piece.core_at_lift_c - run.piece.core_at_lift_c
    lift = run.history.lift_s
    end = int((run.history.time_s <= lift).sum()) - 1
    return {
        "piece": run.piece.kind.cut.title,
        "core_c": run.piece.core_at_lift_c,
        "usual_c": usual.piece.core_at_lift_c,
        "less_k": max(less, 0.0),
        "brown_frac": min(1.0, run.piece.browning_n / max(usual.piece.browning_n, 1e-9)),
        "gauge_pa": float(run.history.gauge_pa.max()),
        "oil_end_c": float(run.history.oil_c[end]),
        "oil_c": run.plan.oil_start_c,
        "start_c": run.plan.product.start_temp_c,
        "program": run.plan.program.name,
        "fryer": run.plan.fryer.name,
    }


def _now(program: Program, usual: _Run, run: _Run, limit_c: float | None) -> Drill:
    change, values = run.change, _values(usual, run)
    assert change is not None
    raw = NO_LEVEL if limit_c is None else (RAW if run.piece.core_at_lift_c < limit_c else NEAR)
    values |= {"why": change.why, "raw": raw, "limit_c": limit_c or 0.0}
    trap, trap_why, hurts = TRAPS[change.trap]
    choices = (
        Choice(text=PROBE, why=PROBE_WHY, right=True, values=values),
        Choice(text=TIMER, why=TIMER_WHY, values=values),
        Choice(text=COLOUR, why=COLOUR_WHY, values=values),
        Choice(text=trap, why=trap_why, hurts=hurts, values=values),
    )
    question = Note(kind="now", text=WHAT_NOW, values={**values, "situation": change.text})
    return Drill(
        key=drill_key(program, f"now-{change.key}"),
        program=program.name,
        version=program.version,
        fryer=program.fryer,
        question=question,
        choices=choices,
    )


def _how_much(program: Program, run: _Run, less: float) -> Drill:
    change = run.change
    assert change is not None
    told: dict[str, float | str] = {
        "oil_c": run.plan.oil_start_c,
        "start_c": run.plan.product.start_temp_c,
        "less_k": less,
        "why": change.why,
    }
    why = "Simulated: {less_k} colder. {why}"
    choices = (
        Choice(text="No colder: the time is the same.", why=why, values=told),
        Choice(text="About {guess_k} colder.", why=why, right=True, values={**told, "guess_k": less}),
        Choice(text="About {guess_k} colder.", why=why, values={**told, "guess_k": 3.0 * less}),
    )
    text = "{situation} How much colder than usual is the coldest piece of {program} at the lift?"
    question = Note(
        kind="how_much", text=text, values={**told, "situation": change.text, "program": program.name}
    )
    return Drill(
        key=drill_key(program, f"much-{change.key}"),
        program=program.name,
        version=program.version,
        fryer=program.fryer,
        question=question,
        choices=choices,
    )


def _worst(program: Program, changed: Sequence[_Run]) -> Drill | None:
    """Which of three leaves the coldest piece rawest; only where the simulation tells them well apart."""
    single = sorted(
        (r for r in changed if r.change and r.change.key != "cold_and_big"),
        key=lambda r: r.piece.core_at_lift_c,
    )
    kept = single[:1]
    for run in single[1:]:
        if run.piece.core_at_lift_c - kept[-1].piece.core_at_lift_c >= LEAST_K and len(kept) < 3:
            kept.append(run)
    if len(kept) < 3:
        return None
    choices = tuple(
        Choice(
            text=r.change.text,
            why="Simulated: it leaves the coldest piece at {core_c}. {why}",
            right=r is kept[0],
            values={
                "core_c": r.piece.core_at_lift_c,
                "why": r.change.why,
                "oil_c": r.plan.oil_start_c,
                "start_c": r.plan.product.start_temp_c,
            },
        )
        for r in kept
        if r.change
    )
    question = Note(
        kind="worst",
        text="Which of these leaves the coldest piece of {program} on {fryer} rawest?",
        values={"program": program.name, "fryer": kept[0].plan.fryer.name},
    )
    return Drill(
        key=drill_key(program, "worst"),
        program=program.name,
        version=program.version,
        fryer=program.fryer,
        question=question,
        choices=choices,
    )


def _mixed(drill: Drill) -> Drill:
    """Choices in an order fixed by the key, so that the right one is not always first."""
    order = sorted(
        range(len(drill.choices)), key=lambda n: hashlib.sha256(f"{drill.key}{n}".encode()).hexdigest()
    )
    return replace(drill, choices=tuple(drill.choices[n] for n in order))
