"""Is this program good enough over everything a store meets?"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from frywright.design.proof import Proof, Spread, prove
from frywright.model.findings import Note, Outcome, say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.plan import make_plan
from frywright.verdicts.limits import cook_limit

FACTOR_WORDS = {
    "weight_quantile_frac": "piece weight", "start_temp_k": "start temperature", "load_frac": "load",
    "heater_frac": "heater strength", "oil_level_frac": "oil level", "offset_k": "thermostat offset",
    "oil_start_k": "oil not back at heat", "late_lid_s": "lid closed late", "surface_frac": "oil age and surface",
    "altitude_m": "altitude",
}  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofAnswer:
    """A proof and what it means here. Uncalibrated pieces make it a scouting proof: *unknown*."""

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
    guard = kitchen.site.thermometer_error_k
    proof = prove(
        make_plan(kitchen, program), limit, guard, samples=samples, seed=seed, spread=spread, progress=progress
    )
    worst = min(proof.cuts, key=lambda cut: cut.worst_margin_k)
    bound = min(cut.bound_frac for cut in proof.cuts)
    values: dict[str, float | str] = {
        "samples": float(proof.samples_count), "bound_frac": bound, "title": limit.title, "confidence_frac": proof.confidence_frac,
        "cut": worst.cut, "margin_k": abs(worst.worst_margin_k), "factor": FACTOR_WORDS.get(proof.breaks_first, "nothing"),
    }  # fmt: skip
    text = (
        "Unknown until probed; scouting proof over {samples} loads: at least {bound_frac} of the pieces are predicted to meet {title} ({confidence_frac} confidence). The worst, {cut}, is {margin_k} above it; {factor} moves it most."
        if worst.worst_margin_k >= 0
        else "Unknown until probed; scouting proof over {samples} loads: at least {bound_frac} of the pieces are predicted to meet {title} ({confidence_frac} confidence). The worst, {cut}, is {margin_k} short of it; {factor} moves it most."
    )
    note = Note(kind="proof", text=text, values=values)
    return ProofAnswer(program=program, proof=proof, outcome=Outcome.UNKNOWN, note=note)


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
