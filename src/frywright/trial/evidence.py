"""What stands behind a simulated curve: a calibration inside its range, or only an estimate."""

from __future__ import annotations

import hashlib

from frywright.model.findings import Note
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.plan import FryPlan, PieceKind, lid_of
from frywright.verdicts.evidence import Evidence, EvidenceKind

NEVER = "never calibrated from probe logs"


def reasons_for(kitchen: Kitchen, plan: FryPlan, kind: PieceKind) -> tuple[str, ...]:
    """Why a class of pieces is only estimated under a plan; empty when it is calibrated evidence."""
    calibration = kitchen.calibration(kind.cut.key, plan.coating.key, lid_of(plan.program))
    if calibration is None:
        return (NEVER,)
    sets = [stage.set_c - plan.fryer.offset_k for stage in plan.program.stages]
    return calibration.outside(kind.piece_mass_kg, (min(sets), max(sets)), plan.product.start_temp_c)


def logged_as(program: Program) -> str:
    """What a calibration keeps of the program that was logged: its name and a hash of its stages."""
    return f"{program.name} {stages_mark(program)}"


def stages_mark(program: Program) -> str:
    """A hash of a program's stages: what was cooked when a piece was read."""
    return hashlib.sha256(repr(program.timed().stages).encode()).hexdigest()[:12]


def evidence_for(kitchen: Kitchen, plan: FryPlan, kind: PieceKind) -> Evidence:
    """Evidence of one class: calibrated inside the range that was logged, else scouting."""
    reasons = reasons_for(kitchen, plan, kind)
    calibration = kitchen.calibration(kind.cut.key, plan.coating.key, lid_of(plan.program))
    if reasons or calibration is None:
        return Evidence(kind=EvidenceKind.SCOUTING, error_k=kitchen.site.thermometer_error_k)
    error = calibration.error_for_k(logged_as(plan.program))
    return Evidence(kind=EvidenceKind.CALIBRATED, error_k=max(error, kitchen.site.thermometer_error_k))


def range_notes(kitchen: Kitchen, plan: FryPlan) -> tuple[Note, ...]:
    """Notes on calibrated pieces that this plan takes outside their range."""
    notes = []
    for kind in plan.kinds:
        reasons = reasons_for(kitchen, plan, kind)
        if reasons and reasons != (NEVER,):
            title = f"{kind.cut.title} (heavy end)" if kind.heavy else kind.cut.title
            for reason in reasons:
                notes.append(
                    Note(
                        kind="outside",
                        text="{piece} is outside its calibration: {reason}. Scouting only.",
                        values={"piece": title, "reason": reason},
                    )
                )
    return tuple(notes)
