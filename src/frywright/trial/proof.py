"""Is this program good enough over everything a store meets?"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from frywright.catalog.capacity import check_load
from frywright.design.fewer import look
from frywright.design.proof import Proof, Spread, all_loads, prove, weight_at
from frywright.model.findings import Note, Outcome, say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import at_least, show, signed
from frywright.physics.inputs import CLOSE, SCAN
from frywright.physics.plan import FryPlan, lid_of, make_plan
from frywright.trial.ask import product_limit, why_none
from frywright.trial.evidence import NEVER, evidence_for
from frywright.trial.predicted import FactsTold, facts_told
from frywright.verdicts.evidence import SCOUTING_MISSING, EvidenceKind
from frywright.verdicts.facts import Facts, facts_from, no_rule
from frywright.verdicts.judge import NO_RULE_SENTENCE
from frywright.verdicts.limits import HOUSE, stand_in

SCOUTING, CALIBRATED = "Predicted, not proven.", "Calibrated proof, the calibration's error taken off."
NONE_FAILED = (
    "None of {samples} loads failed {title} (at least {bound_frac} of loads pass, at {confidence}"
    " confidence)."
)
SOME_FAILED = (
    "{failed} of {samples} loads failed {title} (at least {bound_frac} of loads pass, at {confidence}"
    " confidence)."
)
ABOVE = "The worst, {cut}, is {margin_k} above it; {factor} moves it most."
SHORT = "The worst, {cut}, is {margin_k} short of it; {factor} moves it most."
CORNER_SHORT = (
    "Only in a corner where everything is bad at once, {cut} is {margin_k} short of it; {factor} moves it"
    " most."
)
SMALL_LOADS = (
    "Loads below {load_frac} of the full load do not always build full pressure: give them a program of their"
    " own."
)
FACTOR_WORDS = {
    "weight_quantile_frac": "piece weight",
    "start_temp_k": "start temperature",
    "load_frac": "load",
    "heater_frac": "heater strength",
    "oil_level_frac": "oil level",
    "offset_k": "thermostat offset",
    "oil_start_k": "oil not back at heat",
    "late_lid_s": "lid closed late",
    "surface_frac": "oil age and surface",
    "altitude_m": "altitude",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofAnswer:
    """A proof and what it means here. Pieces not calibrated over the whole spread make it a scouting proof:
    *unknown*.
    """

    program: Program
    proof: Proof
    outcome: Outcome
    notes: tuple[Note, ...]
    facts: Facts
    ruled: bool = True  # whether a rule of the place, or a house target, speaks of the food


def prove_program(
    kitchen: Kitchen,
    program: Program,
    *,
    samples: int = 1024,
    seed: int | None = None,
    spread: Spread | None = None,
    progress: Callable[[float], None] | None = None,
    few: bool = False,
) -> ProofAnswer:
    """Simulate the worst cases of a program and say what breaks first; with ``few`` loads far above the limit
    are counted by a fit (:mod:`frywright.design.fewer`), which is no certificate. Without a ``seed`` each
    version draws loads of its own: one that was lengthened for the loads of a failed proof meets others.
    Raises InputError: the program, the samples or the spread are impossible.
    """
    check_load(kitchen, program)
    plan = make_plan(kitchen, program)
    limit = product_limit(kitchen, plan.product) or stand_in()
    spread = spread or all_loads(plan)
    guard = guard_of(kitchen, plan)
    seed = program.version if seed is None else seed
    if few:
        proof = look(plan, limit, guard, spread, samples, seed)
    else:
        proof = prove(plan, limit, guard, samples=samples, seed=seed, spread=spread, progress=progress)
    return answer(kitchen, plan, proof)


def guard_of(kitchen: Kitchen, plan: FryPlan) -> float:
    """Error of the thermometer, or of a calibration, that a proof takes off every core [K]."""
    return max(evidence_for(kitchen, plan, kind).error_k for kind in plan.kinds)


def answer(kitchen: Kitchen, plan: FryPlan, proof: Proof) -> ProofAnswer:
    """What a proof of a plan means in a kitchen: a scouting proof, a calibrated one, or no rule to prove."""
    limit = product_limit(kitchen, plan.product)
    if limit is None:
        facts = no_rule(why_none(kitchen, plan.product))
        note = Note(kind="proof", text=NO_RULE_SENTENCE, values={"why": facts.why})
        return ProofAnswer(
            program=plan.program,
            proof=proof,
            outcome=Outcome.UNKNOWN,
            notes=(note,),
            facts=facts,
            ruled=False,
        )
    reasons = _outside(kitchen, plan, proof.spread)
    worst = min(proof.cuts, key=lambda cut: cut.worst_margin_k)
    values: dict[str, float | str] = {
        "samples": float(proof.samples_count),
        "failed": float(proof.failed_count),
        "bound_frac": at_least(proof.bound_frac),
        "title": limit.title,
        "confidence": f"{100 * proof.confidence_frac:g} %",
        "cut": worst.cut,
        "margin_k": abs(worst.worst_margin_k),
        "factor": FACTOR_WORDS.get(proof.breaks_first, "nothing"),
    }
    short = SHORT if proof.failed_count else CORNER_SHORT
    texts = (
        SCOUTING if reasons else CALIBRATED,
        SOME_FAILED if proof.failed_count else NONE_FAILED,
        ABOVE if proof.holds else short,
    )
    told = Outcome.MEETS if proof.holds else Outcome.FAILS
    notes = tuple(Note(kind="proof", text=text, values=values) for text in texts)
    facts = facts_from(
        proof.lowest_k,
        house=limit.rule == HOUSE,
        title=limit.title,
        level_c=limit.level_c,
        worst=True,
        evidence="" if reasons else str(EvidenceKind.CALIBRATED),
        missing=SCOUTING_MISSING if reasons else (),
    )
    fitted = proof.holds and proof.fitted_count > 0  # a fit is no evidence that a load meets the limit
    outcome = Outcome.UNKNOWN if reasons or fitted else told
    return ProofAnswer(program=plan.program, proof=proof, outcome=outcome, notes=notes, facts=facts)


def _outside(kitchen: Kitchen, plan: FryPlan, spread: Spread) -> tuple[str, ...]:
    """Why the spread of a proof leaves what was calibrated; empty when every corner lies inside."""
    found: list[str] = []
    sets = [stage.set_c - plan.fryer.offset_k for stage in plan.program.stages]
    oil = (min(sets) + spread.offset_k[0], max(sets) + spread.offset_k[1])
    for kind in plan.kinds:
        calibration = kitchen.calibration(kind.cut.key, plan.coating.key, lid_of(plan.program))
        if calibration is None:
            return (NEVER,)
        if kind.heavy:
            continue
        for quantile, start in zip(spread.weight_quantile_frac, spread.start_temp_k, strict=True):
            mass = kind.piece_mass_kg * weight_at(kind.cut, quantile)
            found += calibration.outside(mass, oil, plan.product.start_temp_c + start)
    return tuple(found)


@dataclass(frozen=True, slots=True, kw_only=True)
class CutProved:
    """One cut over every load of a proof."""

    cut: str
    name: str
    meets_frac: float
    bound_frac: float
    worst_margin_k: float
    meets: str
    bound: str
    worst: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofView:
    """A proof with unit-suffixed figures; its sentence in people's units and language.

    ``lowest_corners`` are the conditions of the five lowest loads by name, with their margin.
    """

    program: str
    version: int
    outcome: str
    facts: FactsTold
    sentence: str
    samples_count: int
    solved_close_count: int
    close_error_k: float
    scan_error_k: float
    failed_count: int
    bound_frac: float
    confidence_frac: float
    holds: bool
    ruled: bool
    loads_meeting_frac: float
    cuts: tuple[CutProved, ...]
    breaks_first: str
    sensitivity: dict[str, float]
    lowest_corners: tuple[dict[str, float | str], ...]
    full_pressure_frac: float
    smallest_full_pressure_load_frac: float | None
    small_loads: str


def proof_view(answer: ProofAnswer, system: str = "metric", translate: Translate = str) -> ProofView:
    """A proof as people and programs read it."""
    proof = answer.proof
    lowest = sorted(proof.corners, key=lambda corner: corner[1])[:5]
    smallest = proof.smallest_full_pressure_frac
    return ProofView(
        program=answer.program.name,
        version=answer.program.version,
        outcome=str(answer.outcome),
        facts=facts_told(answer.facts, system, translate),
        sentence=" ".join(say(n.text, n.values, system, translate) for n in answer.notes),
        samples_count=proof.samples_count,
        solved_close_count=proof.close_count,
        close_error_k=CLOSE.error_k,
        scan_error_k=SCAN.error_k,
        failed_count=proof.failed_count,
        bound_frac=proof.bound_frac,
        confidence_frac=proof.confidence_frac,
        holds=proof.holds,
        ruled=answer.ruled,
        loads_meeting_frac=proof.meets_frac,
        cuts=tuple(
            CutProved(
                cut=c.cut,
                name=translate(c.cut),
                meets_frac=c.meets_frac,
                bound_frac=c.bound_frac,
                worst_margin_k=c.worst_margin_k,
                meets=show(at_least(c.meets_frac), "frac", system),
                bound=show(at_least(c.bound_frac), "frac", system),
                worst=signed(c.worst_margin_k, "k", system),
            )
            for c in proof.cuts
            if answer.ruled
        ),
        breaks_first=proof.breaks_first,
        sensitivity=dict(proof.sensitivity),
        lowest_corners=tuple(
            {"margin_k": margin, "margin": signed(margin, "k", system), **conditions}
            for conditions, margin in lowest
        ),
        full_pressure_frac=float(proof.full_pressure.mean()),
        smallest_full_pressure_load_frac=smallest,
        small_loads=say(SMALL_LOADS, {"load_frac": smallest or 0.0}, system, translate),
    )
