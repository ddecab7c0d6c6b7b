"""A cook answer in inside units with unit-suffixed names: what the record keeps and other programs read."""

from __future__ import annotations

from dataclasses import asdict

from frywright.ledger.facts.cook import (
    PredictedAndProven,
    SimulatedNote,
    SimulatedPiece,
    SimulatedVerdict,
    SimulationKept,
)
from frywright.model.findings import say
from frywright.physics.fry import FryHistory, PieceHistory
from frywright.physics.inputs import CLOSE
from frywright.rooms.cook.view import logs_by_lift
from frywright.trial.ask import CookAnswer, piece_name
from frywright.trial.predicted import facts_told


def cook_told(answer: CookAnswer) -> SimulationKept:
    """The answer as it is kept; sentences in English and metric units."""
    history, plan = answer.history, answer.plan
    facts = asdict(facts_told(answer.facts))
    return SimulationKept(
        program=plan.program.name,
        version=plan.program.version,
        fryer=plan.fryer.key,
        product=plan.product.key,
        stages=plan.program.stages,
        units_count=plan.units_count,
        load_kg=plan.load_kg,
        altitude_m=plan.site.altitude_m,
        lift_s=history.lift_s,
        vent_s=history.vent_s,
        clock_s=plan.program.clock_s,
        earliest_lift_s=history.earliest_lift_s,
        vent_told=plan.vent_told,
        full_pressure_s=history.full_pressure_s,
        lowest_oil_c=history.lowest_oil_c,
        moisture_loss_frac=history.moisture_loss_frac,
        uptake_frac=history.uptake_frac,
        yield_frac=history.yield_frac,
        heat_kwh=history.heat_kwh,
        pieces=tuple(_piece(history, p) for p in history.pieces),
        facts=PredictedAndProven(**{**facts, "missing": tuple(facts["missing"])}),
        time_s=tuple(history.time_s.tolist()),
        oil_c=tuple(history.oil_c.tolist()),
        gauge_pa=tuple(history.gauge_pa.tolist()),
        verdicts=tuple(
            SimulatedVerdict(
                piece=piece_name(p),
                outcome=str(v.outcome),
                rule=v.rule,
                edition=v.edition,
                margin_k=v.margin_k,
                margin_s=v.margin_s,
                missing=tuple(v.missing),
                sentence=v.say(),
            )
            for p, v in answer.verdicts
        ),
        notes=tuple(
            SimulatedNote(kind=n.kind, text=say(n.text, n.values)) for n in (*history.notes, *answer.notes)
        ),
        energy_gap_frac=history.report.energy_gap_frac,
        setting="close",
        setting_error_k=CLOSE.error_k,
        catalog_version=history.catalog_version,
    )


def _piece(history: FryHistory, piece: PieceHistory) -> SimulatedPiece:
    return SimulatedPiece(
        name=piece_name(piece),
        piece_mass_kg=piece.kind.piece_mass_kg,
        core_at_lift_c=piece.core_at_lift_c,
        core_peak_c=piece.core_peak_c,
        crust_at_lift_m=piece.crust_at_lift_m,
        browning_n=piece.browning_n,
        salmonella_log_n=logs_by_lift(history, piece),
        yield_frac=piece.yields.yield_frac,
        core_c=tuple(piece.core_c.tolist()),
    )
