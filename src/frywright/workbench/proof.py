"""Is this program good enough over everything a store meets?"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from frywright.design.proof import Proof, Spread, prove, weight_at
from frywright.model.findings import Note, Outcome, say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.plan import FryPlan, lid_of, make_plan
from frywright.verdicts.limits import cook_limit
from frywright.workbench.evidence import NEVER, evidence_for

SCOUTING_ABOVE = "Unknown until probed; scouting proof over {samples} loads: at least {bound_frac} of the pieces are predicted to meet {title} ({confidence_frac} confidence). The worst, {cut}, is {margin_k} above it; {factor} moves it most."
SCOUTING_SHORT = "Unknown until probed; scouting proof over {samples} loads: at least {bound_frac} of the pieces are predicted to meet {title} ({confidence_frac} confidence). The worst, {cut}, is {margin_k} short of it; {factor} moves it most."
CALIBRATED_ABOVE = "Calibrated proof over {samples} loads: at least {bound_frac} of the pieces meet {title} ({confidence_frac} confidence), the calibration's error taken off. The worst, {cut}, is {margin_k} above it; {factor} moves it most."
CALIBRATED_SHORT = "Calibrated proof over {samples} loads: at least {bound_frac} of the pieces meet {title} ({confidence_frac} confidence), the calibration's error taken off. The worst, {cut}, is {margin_k} short of it; {factor} moves it most."
FACTOR_WORDS = {
    "weight_quantile_frac": "piece weight", "start_temp_k": "start temperature", "load_frac": "load",
    "heater_frac": "heater strength", "oil_level_frac": "oil level", "offset_k": "thermostat offset",
    "oil_start_k": "oil not back at heat", "late_lid_s": "lid closed late", "surface_frac": "oil age and surface",
    "altitude_m": "altitude",
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofAnswer:
    """A proof and what it means here. Pieces not calibrated over the whole spread make it a scouting proof: *unknown*."""

    program: Program
    proof: Proof
    outcome: Outcome
    note: Note


def prove_program(
    kitchen: Kitchen, program: Program, *, samples: int = 1024, seed: int = 1,
    spread: Spread | None = None, progress: Callable[[float], None] | None = None,
) -> ProofAnswer:  # fmt: skip
    """Simulate the worst cases of a program and say what breaks first.

    Raises
    ------
    InputError
        The program, the samples or the spread are impossible.
    """
    limit = cook_limit(kitchen.site.jurisdiction)
    plan, spread = make_plan(kitchen, program), spread or Spread()
    reasons = _outside(kitchen, plan, spread)
    guard = max(evidence_for(kitchen, plan, kind).error_k for kind in plan.kinds)
    proof = prove(plan, limit, guard, samples=samples, seed=seed, spread=spread, progress=progress)
    worst = min(proof.cuts, key=lambda cut: cut.worst_margin_k)
    bound = min(cut.bound_frac for cut in proof.cuts)
    values: dict[str, float | str] = {
        "samples": float(proof.samples_count), "bound_frac": bound, "title": limit.title, "confidence_frac": proof.confidence_frac,
        "cut": worst.cut, "margin_k": abs(worst.worst_margin_k), "factor": FACTOR_WORDS.get(proof.breaks_first, "nothing"),
    }  # fmt: skip
    meets = worst.worst_margin_k >= 0
    if reasons:
        text = SCOUTING_ABOVE if meets else SCOUTING_SHORT
        outcome = Outcome.UNKNOWN
    else:
        text = CALIBRATED_ABOVE if meets else CALIBRATED_SHORT
        outcome = Outcome.MEETS if meets else Outcome.FAILS
    note = Note(kind="proof", text=text, values=values)
    return ProofAnswer(program=program, proof=proof, outcome=outcome, note=note)


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


def proof_json(answer: ProofAnswer, system: str = "metric", translate: Callable[[str], str] = str) -> dict[str, Any]:
    """The proof with unit-suffixed keys; its sentence in people's units and language."""
    proof = answer.proof
    lowest = sorted(proof.corners, key=lambda corner: corner[1])[:5]
    return {
        "program": answer.program.name, "version": answer.program.version, "outcome": str(answer.outcome),
        "sentence": say(answer.note.text, answer.note.values, system, translate), "samples_count": proof.samples_count, "confidence_frac": proof.confidence_frac,
        "loads_meeting_frac": proof.meets_frac,
        "cuts": [
            {"cut": c.cut, "meets_frac": c.meets_frac, "bound_frac": c.bound_frac, "worst_margin_k": c.worst_margin_k}
            for c in proof.cuts
        ],
        "breaks_first": proof.breaks_first, "sensitivity": dict(proof.sensitivity),
        "lowest_corners": [{"margin_k": margin, **conditions} for conditions, margin in lowest],
        "full_pressure_frac": float(proof.full_pressure.mean()),
        "smallest_full_pressure_load_frac": proof.smallest_full_pressure_frac,
    }  # fmt: skip
