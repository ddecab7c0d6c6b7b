"""A log's answer in inside units with unit-suffixed keys, for other programs."""

from __future__ import annotations

from dataclasses import asdict
from math import isfinite
from typing import Any

from frywright.model.findings import say
from frywright.rooms.cook.probes import Answer, Calibrated
from frywright.rooms.cook.sampling import Sampled
from frywright.trial.predicted import show_facts
from frywright.verdicts.facts import facts_of


def probe_json(answer: Answer) -> dict[str, Any]:
    """What was read, found and judged."""
    log, found = answer.log, answer.analysis
    return {
        "ok": True,
        "file": log.name,
        "started_at": log.start_at.isoformat() if log.start_at else None,
        "lines_count": log.lines_count,
        "kept_count": len(log.time_s),
        "step_s": log.step_s,
        "dropped": [
            {"reason": d.reason, "count": d.count, "lines": [n for n, _ in d.examples]} for d in log.dropped
        ],
        "questions": [
            {"key": q.key, "text": say(q.text, q.values), "choices": list(q.choices), "guess": q.guess}
            for q in log.questions
        ],
        "channels": [
            {"name": c.name, "role": str(c.role), "unit": c.unit, "open_count": c.open_count}
            for c in log.channels
        ],
        "gaps": [{"from_s": a, "to_s": b} for a, b in log.gaps],
        "control": (
            None
            if found.control is None or not isfinite(found.control.mean_c)
            else {
                "mean_c": found.control.mean_c,
                "swing_k": found.control.swing_k,
                "cycles_count": found.control.cycles_count,
                "display_mean_c": found.display_mean_c,
                "offset_k": found.offset_k,
            }
        ),
        "loads": [
            {
                "drop_s": load.load.drop_s,
                "lift_s": load.load.lift_s,
                "overlapping": load.load.overlapping,
                "recovery": asdict(load.recovery) if load.recovery else None,
                "pressed": asdict(load.pressed) if load.pressed else None,
            }
            for load in found.loads
        ],
        "verdicts": [
            {
                "load": j.load_number,
                "channel": j.curve.channel,
                "cut": j.cut,
                "outcome": str(j.verdict.outcome),
                "sentence": j.verdict.say(),
                "margin_k": j.verdict.margin_k,
                "salmonella_log_n": j.logs_n,
                "row": list(j.row) if j.row else None,
                "missing": list(j.verdict.missing),
                "facts": asdict(show_facts(facts_of([j.verdict]), "metric", measured=True)),
            }
            for j in answer.judged
        ],
        "notes": [{"kind": n.kind, "text": say(n.text, n.values)} for n in answer.notes],
    }


def calibrated_json(made: Calibrated) -> dict[str, Any]:
    """A calibration with intervals and reasons."""
    found = made.fit
    return {
        "ok": made.draft is not None,
        "cut": made.cut,
        "parameters": [asdict(p) for p in found.parameters],
        "correlations": [{"first": a, "second": b, "correlation": r} for a, b, r in found.correlations],
        "rms_k": found.rms_k if found.parameters else None,
        "warnings": [{"kind": n.kind, "text": say(n.text, n.values)} for n in found.warnings],
        "refused": [{"kind": n.kind, "text": say(n.text, n.values)} for n in found.refused],
        "placements": [
            {"kind": p.note.kind, "place_frac": p.place_frac, "text": say(p.note.text, p.note.values)}
            for p in made.placements
        ],
        "calibration": asdict(made.draft) if made.draft else None,
    }


def sample_json(found: Sampled) -> dict[str, Any]:
    """A sampling proof with the program it is of; outcome and why where no rule speaks of the food."""
    program, proof = found.program, found.proof
    told = {
        "ok": True,
        "program": program.name,
        "version": program.version,
        "fryer": program.fryer,
        "outcome": found.outcome,
    }
    if proof is None:
        return {**told, "why": found.why, "count": len(found.readings_c), "limit_c": None}
    return {
        **told,
        "sentence": say(proof.sentence.text, proof.sentence.values),
        "count": proof.count,
        "mean_c": proof.mean_c,
        "sd_k": proof.sd_k,
        "factor_n": proof.factor_n,
        "bound_c": proof.bound_c,
        "limit_c": proof.limit_c,
        "coverage_frac": proof.coverage_frac,
        "confidence_frac": proof.confidence_frac,
        "needed_count": proof.needed_count,
        "zero_failure_frac": proof.zero_failure_frac,
        "notes": [say(n.text, n.values) for n in proof.notes],
    }
