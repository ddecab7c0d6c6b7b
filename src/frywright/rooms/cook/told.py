"""A cook answer in inside units with unit-suffixed names, for other programs and for the record."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.physics.inputs import CLOSE
from frywright.rooms.cook.view import NoteShown, logs_by_lift, notes_shown
from frywright.trial.ask import CookAnswer, piece_name
from frywright.trial.predicted import FactsTold, facts_told


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceTold:
    """One class of piece, lowest margin first."""

    name: str
    piece_mass_kg: float
    core_at_lift_c: float
    core_peak_c: float
    crust_at_lift_m: float
    browning_n: float
    salmonella_log_n: float
    yield_frac: float
    core_c: list[float]


@dataclass(frozen=True, slots=True, kw_only=True)
class VerdictTold:
    """The verdict on one class of piece."""

    piece: str
    outcome: str
    rule: str
    edition: str
    margin_k: float | None
    margin_s: float | None
    missing: list[str]
    sentence: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CookTold:
    """A cook: question, times, sums, curves, verdicts, how it was solved."""

    program: str
    version: int
    fryer: str
    product: str
    units_count: float
    load_kg: float
    altitude_m: float
    lift_s: float
    vent_s: float
    clock_s: float
    earliest_lift_s: float
    vent_told: bool
    full_pressure_s: float | None
    lowest_oil_c: float
    moisture_loss_frac: float
    uptake_frac: float
    yield_frac: float
    heat_kwh: float
    pieces: list[PieceTold]
    facts: FactsTold
    time_s: list[float]
    oil_c: list[float]
    gauge_pa: list[float]
    verdicts: list[VerdictTold]
    notes: tuple[NoteShown, ...]
    energy_gap_frac: float
    setting: str
    setting_error_k: float
    catalog_version: str


def cook_told(answer: CookAnswer) -> CookTold:
    """The answer for other programs; sentences in English and metric units."""
    history, plan = answer.history, answer.plan
    return CookTold(
        program=plan.program.name,
        version=plan.program.version,
        fryer=plan.fryer.key,
        product=plan.product.key,
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
        pieces=[
            PieceTold(
                name=piece_name(p),
                piece_mass_kg=p.kind.piece_mass_kg,
                core_at_lift_c=p.core_at_lift_c,
                core_peak_c=p.core_peak_c,
                crust_at_lift_m=p.crust_at_lift_m,
                browning_n=p.browning_n,
                salmonella_log_n=logs_by_lift(history, p),
                yield_frac=p.yields.yield_frac,
                core_c=p.core_c.tolist(),
            )
            for p in history.pieces
        ],
        facts=facts_told(answer.facts),
        time_s=history.time_s.tolist(),
        oil_c=history.oil_c.tolist(),
        gauge_pa=history.gauge_pa.tolist(),
        verdicts=[
            VerdictTold(
                piece=piece_name(p),
                outcome=str(v.outcome),
                rule=v.rule,
                edition=v.edition,
                margin_k=v.margin_k,
                margin_s=v.margin_s,
                missing=list(v.missing),
                sentence=v.say(),
            )
            for p, v in answer.verdicts
        ],
        notes=notes_shown([*history.notes, *answer.notes], "metric"),
        energy_gap_frac=history.report.energy_gap_frac,
        setting="close",
        setting_error_k=CLOSE.error_k,
        catalog_version=history.catalog_version,
    )
