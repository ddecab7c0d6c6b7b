"""A cook answer as people read it: their units, their language. Page, JSON and terminal share it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict, replace
from itertools import accumulate
from typing import Any

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog
from frywright.model.findings import Note, Outcome, Verdict, say
from frywright.model.program import LidState
from frywright.model.units import SHOWN, UNITS, clock, show
from frywright.physics.colour import crust_hex
from frywright.physics.fry import FryHistory, PieceHistory, vent_finding
from frywright.physics.inputs import CLOSE, Lid
from frywright.physics.plan import spans
from frywright.trial.ask import CookAnswer, piece_name
from frywright.trial.keyed_clock import clock_note_of
from frywright.trial.naming import altitude_words
from frywright.trial.predicted import facts_json, show_facts
from frywright.verdicts.facts import facts_of
from frywright.verdicts.judge import MOST_LOGS_SHOWN, salmonella_log
from frywright.verdicts.margin import until

Translate = Callable[[str], str]
LID_STATES = {LidState.OPEN: "open", LidState.PRESSURE: "under pressure"}
LID_WORDS = {Outcome.FAILS: "not at zero", Outcome.UNKNOWN: "predicted at zero"}


def piece_label(piece: PieceHistory, translate: Translate) -> str:
    """Name of a class in a language."""
    title = translate(piece.kind.cut.title)
    return f"{title} ({translate('heavy end')})" if piece.kind.heavy else title


def cook_view(answer: CookAnswer, system: str, translate: Translate = str) -> dict[str, Any]:
    """Everything a screen shows of an answer; numbers of curves in people's units."""
    history, plan = answer.history, answer.plan
    return {
        "program": {
            "name": plan.program.name,
            "version": plan.program.version,
            "fryer": plan.fryer.name,
            "product": plan.product.name,
        },
        "load": {
            "count": f"{plan.units_count:.4g}",
            "unit": translate(plan.cut_set.unit),
            "mass": show(plan.load_kg, "kg", system),
        },
        "altitude": altitude_words(plan.site.altitude_m, system),
        "system": system,
        "curves": _curves(history, system, translate),
        "marks": _marks(history, translate),
        "strip": _strip(history, system, translate),
        "limit": _limit(answer, system),
        "facts": asdict(show_facts(answer.facts, system, translate)),
        "headline": _verdict(*answer.verdicts[0], system, translate),
        "verdicts": [_verdict(piece, v, system, translate) for piece, v in answer.verdicts],
        "lid": _lid(answer.lid, system, translate),
        "clock": {"total": clock(plan.program.clock_s), **_said(clock_note_of(history), system, translate)},
        "vent": _said(vent_finding(plan, history.vent_s), system, translate),
        "summary": _summary(history, system, translate),
        "pieces": [_piece(history, p, system, translate) for p in history.pieces],
        "darkest": f"{catalog.table('kinetics/browning.toml')['end_n']:.0f}",
        "notes": [
            {"kind": n.kind, "text": say(n.text, n.values, system, translate)}
            for n in (*history.notes, *answer.notes)
        ],
        "report": {
            "steps": history.report.steps,
            "energy_gap_frac": history.report.energy_gap_frac,
            "setting": "close",
            "setting_error_k": CLOSE.error_k,
            "catalog_version": history.catalog_version,
        },
    }


def _said(note: Note | None, system: str, translate: Translate) -> dict[str, str]:
    return {"sentence": say(note.text, note.values, system, translate) if note else ""}


def _people(values: NDArray[np.float64], suffix: str, system: str) -> tuple[list[float], str]:
    wanted, _ = SHOWN[system].get(UNITS[suffix].dimension, (suffix, 0))
    unit = UNITS[wanted]
    return np.round(values / unit.factor - unit.offset, 3).tolist(), unit.sign


def _curves(history: FryHistory, system: str, translate: Translate) -> dict[str, Any]:
    oil, degree = _people(history.oil_c, "c", system)
    gauge, pressure = _people(history.gauge_pa, "pa", system)
    pieces = []
    for piece in history.pieces:
        pieces.append(
            {
                "name": piece_label(piece, translate),
                "cut": piece.kind.cut.key,
                "heavy": piece.kind.heavy,
                "core": _people(piece.core_c, "c", system)[0],
                "surface": _people(piece.surface_c, "c", system)[0],
                "crust_mm": np.round(1e3 * piece.crust_m, 4).tolist(),
                "loss_pct": np.round(100 * piece.water_lost_frac, 3).tolist(),
            }
        )
    return {
        "time_s": np.round(history.time_s, 2).tolist(),
        "degree": degree,
        "pressure_unit": pressure,
        "oil": oil,
        "gauge": gauge,
        "pieces": pieces,
    }


def _marks(history: FryHistory, translate: Translate) -> list[dict[str, Any]]:
    marks = []
    if history.full_pressure_s is not None:
        marks.append({"time_s": history.full_pressure_s, "text": translate("full pressure")})
    if history.vent_start_s is not None:
        marks.append({"time_s": history.vent_start_s, "text": translate("vent")})
    return [*marks, {"time_s": history.lift_s, "text": translate("lift")}]


def _strip(history: FryHistory, system: str, translate: Translate) -> list[dict[str, Any]]:
    """Stages and vents in the order of the clock, with what is left on a clock keyed with the total."""
    program, out = history.plan.program, []
    stages = zip(program.stages, accumulate(program.durations_s(), initial=0.0), strict=False)
    start = 0.0
    for span, end in zip(spans(history.plan), history.span_ends_s, strict=True):
        if span.lid is Lid.REST:
            break
        when = {"start_s": start, "end_s": end}
        if span.lid is Lid.VENT:
            out.append({**when, "lid": "vent", "number": "", "words": translate("vent"), "left": ""})
        else:
            stage, gone = next(stages)
            left = "" if program.has_condition else clock(program.clock_s - gone)
            words = f"{show(stage.set_c, 'c', system)} · {translate(LID_STATES[stage.lid])}"
            set_point = _people(np.array([stage.set_c]), "c", system)[0][0]
            number = str(len([row for row in out if row["number"]]) + 1)
            out.append(
                {
                    **when,
                    "lid": str(stage.lid),
                    "number": number,
                    "words": words,
                    "set": set_point,
                    "left": left and translate("{time} left").format(time=left),
                }
            )
        start = end
    return out


def saved_view(answer: CookAnswer, system: str, translate: Translate = str) -> dict[str, Any]:
    """The saved version under what is typed, to draw behind it: its curves, its margin."""
    history, program = answer.history, answer.plan.program
    text = translate("Dotted behind it: version {version} as saved, {amount}.")
    return {
        "time_s": np.round(history.time_s, 2).tolist(),
        "oil": _people(history.oil_c, "c", system)[0],
        "cores": [_people(p.core_c, "c", system)[0] for p in history.pieces if p.kind.heavy],
        "sentence": text.format(
            version=program.version, amount=show_facts(answer.facts, system, translate).amount
        ),
    }


def _limit(answer: CookAnswer, system: str) -> dict[str, Any] | None:
    level = answer.verdicts[0][1].values.get("limit_c")
    if not isinstance(level, float):
        return None
    return {"value": _people(np.array([level]), "c", system)[0][0], "text": show(level, "c", system)}


def _verdict(piece: PieceHistory, verdict: Verdict, system: str, translate: Translate) -> dict[str, Any]:
    named = replace(verdict, values={**verdict.values, "piece": piece_label(piece, translate)})
    facts = show_facts(facts_of([verdict]), system, translate)
    return {
        "piece": piece_label(piece, translate),
        "outcome": str(verdict.outcome),
        "state": facts.state,
        "short": facts.short,
        "word": facts.word,
        "amount": facts.amount,
        "sentence": named.say(system, translate),
        "rule": verdict.rule,
        "edition": verdict.edition,
        "margin_k": _round(verdict.margin_k),
        "margin_s": _round(verdict.margin_s),
        "missing": [translate(m) for m in verdict.missing],
        "source": verdict.source,
    }


def _round(value: float | None) -> float | None:
    return None if value is None else round(value, 2)


def _lid(verdict: Verdict | None, system: str, translate: Translate) -> dict[str, str] | None:
    if verdict is None:
        return None
    return {
        "outcome": str(verdict.outcome),
        "word": translate(LID_WORDS[verdict.outcome]),
        "sentence": verdict.say(system, translate),
    }


def _summary(history: FryHistory, system: str, translate: Translate) -> list[dict[str, str]]:
    rows = [
        ("Clock as keyed", clock(history.plan.program.clock_s)),
        ("Drop to lift", show(history.lift_s, "s", system)),
        ("Earliest lift, which verdicts look at", show(history.earliest_lift_s, "s", system)),
        ("Vent", show(history.vent_s, "s", system) if history.vent_s and history.plan.vent_told else "–"),
        (
            "Full pressure after",
            show(history.full_pressure_s, "s", system) if history.full_pressure_s else "–",
        ),
        (
            "Lowest oil",
            f"{show(history.lowest_oil_c, 'c', system)} ({show(history.lowest_oil_at_s, 's', system)})",
        ),
        ("Moisture lost, of breaded weight", show(history.moisture_loss_frac, "frac", system)),
        ("Oil taken up, of breaded weight", show(history.uptake_frac, "frac", system)),
        ("Yield, of breaded weight", show(history.yield_frac, "frac", system)),
        ("Heat into the oil", f"{history.heat_kwh:.2f} kWh"),
    ]
    return [{"name": translate(name), "value": value} for name, value in rows]


def _piece(history: FryHistory, piece: PieceHistory, system: str, translate: Translate) -> dict[str, str]:
    return {
        "name": piece_label(piece, translate),
        "mass": show(piece.kind.piece_mass_kg, "kg", system),
        "core_at_lift": show(piece.core_at_lift_c, "c", system),
        "core_peak": show(piece.core_peak_c, "c", system),
        "crust": f"{1e3 * piece.crust_at_lift_m:.1f} mm",
        "colour": f"{piece.browning_n:.0f}",
        "swatch": crust_hex(piece.browning_n),
        "logs": _logs(history, piece),
        "yield": show(piece.yields.yield_frac, "frac", system),
    }


def _logs(history: FryHistory, piece: PieceHistory) -> str:
    if not piece.kind.cut.poultry:
        return "–"
    reached = logs_by_lift(history, piece)
    return f"> {MOST_LOGS_SHOWN:.0f}" if reached > MOST_LOGS_SHOWN else f"{reached:.1f}"


def logs_by_lift(history: FryHistory, piece: PieceHistory) -> float:
    """Decimal reductions of Salmonella that a core collects by the earliest lift."""
    return salmonella_log(*until(history.time_s, piece.core_c, history.earliest_lift_s))


def plain_json(answer: CookAnswer) -> dict[str, Any]:
    """The answer in inside units with unit-suffixed keys, for other programs."""
    history, plan = answer.history, answer.plan
    return {
        "program": plan.program.name,
        "version": plan.program.version,
        "fryer": plan.fryer.key,
        "product": plan.product.key,
        "units_count": plan.units_count,
        "load_kg": plan.load_kg,
        "altitude_m": plan.site.altitude_m,
        "lift_s": history.lift_s,
        "vent_s": history.vent_s,
        "clock_s": plan.program.clock_s,
        "earliest_lift_s": history.earliest_lift_s,
        "vent_told": plan.vent_told,
        "full_pressure_s": history.full_pressure_s,
        "lowest_oil_c": history.lowest_oil_c,
        "moisture_loss_frac": history.moisture_loss_frac,
        "uptake_frac": history.uptake_frac,
        "yield_frac": history.yield_frac,
        "heat_kwh": history.heat_kwh,
        "pieces": [
            {
                "name": piece_name(p),
                "piece_mass_kg": p.kind.piece_mass_kg,
                "core_at_lift_c": p.core_at_lift_c,
                "core_peak_c": p.core_peak_c,
                "crust_at_lift_m": p.crust_at_lift_m,
                "browning_n": p.browning_n,
                "salmonella_log_n": logs_by_lift(history, p),
                "yield_frac": p.yields.yield_frac,
                "core_c": p.core_c.tolist(),
            }
            for p in history.pieces
        ],
        "facts": facts_json(answer.facts),
        "time_s": history.time_s.tolist(),
        "oil_c": history.oil_c.tolist(),
        "gauge_pa": history.gauge_pa.tolist(),
        "verdicts": [
            {
                "piece": piece_name(p),
                "outcome": str(v.outcome),
                "rule": v.rule,
                "edition": v.edition,
                "margin_k": v.margin_k,
                "margin_s": v.margin_s,
                "missing": list(v.missing),
                "sentence": v.say(),
            }
            for p, v in answer.verdicts
        ],
        "notes": [
            {"kind": n.kind, "text": say(n.text, n.values, "metric")} for n in (*history.notes, *answer.notes)
        ],
        "energy_gap_frac": history.report.energy_gap_frac,
        "setting": "close",
        "setting_error_k": CLOSE.error_k,
        "catalog_version": history.catalog_version,
    }
