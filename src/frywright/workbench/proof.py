"""Is this program good enough over everything a store meets?"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from frywright.design.proof import Proof, Spread, prove
from frywright.model.findings import Outcome
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
    sentence: str


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
    short = "short of" if worst.worst_margin_k < 0 else "above"
    sentence = (
        f"Scouting proof over {proof.samples_count} loads: at least {100 * bound:.1f} % of pieces are predicted to meet "
        f"{limit.title} ({100 * proof.confidence_frac:.0f} % confidence); the worst {worst.cut.lower()} is "
        f"{abs(worst.worst_margin_k):.1f} K {short} it; {FACTOR_WORDS[proof.breaks_first] if proof.breaks_first else 'nothing'} "
        "moves it most. Unknown until probed."
    )
    return ProofAnswer(program=program, proof=proof, outcome=Outcome.UNKNOWN, sentence=sentence)


def proof_json(answer: ProofAnswer) -> dict[str, Any]:
    """The proof with unit-suffixed keys, for other programs."""
    proof = answer.proof
    lowest = sorted(proof.corners, key=lambda corner: corner[1])[:5]
    return {
        "program": answer.program.name, "version": answer.program.version, "outcome": str(answer.outcome),
        "sentence": answer.sentence, "samples_count": proof.samples_count, "confidence_frac": proof.confidence_frac,
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
