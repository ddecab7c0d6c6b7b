"""A simulated fry: drop to lift and carry-over, with what a cook wants to know of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog
from frywright.model.findings import Note
from frywright.model.fryer import FryerKind
from frywright.physics.inputs import ROUTINE, PieceClass, Precision
from frywright.physics.lift import Lift, lift_of
from frywright.physics.plan import MOST_VENT_S, FryPlan, PieceKind, question, solids_kg_m2
from frywright.physics.solve import Cook, RawHistory, SolveReport, run_many
from frywright.physics.yields import Yields, yields_of

GAS_J_MOLK = 8.31446261815324  # CODATA 2018, exact
FULL_PRESSURE_SHARE = 0.9
DRY_SHARE = 0.5  # crust of the half thickness from which a note says so; own rule
VENT_UNKNOWN = (
    "Nobody has timed how long this fryer vents, so no second of its vent counts. Time the vent of a full"
    ' load with a watch, from opening the valve until the gauge reads zero; write vent = "0:25" with your'
    " own time under the fryer in the kitchen file. Never open a lid before the gauge reads zero."
)
VENT_LONG = (
    "The vent takes {vent_s}; no more than {most_s} of it counts. Time the vent of a full load with a watch,"
    " from opening the valve until the gauge reads zero; write your own time as vent under the fryer in"
    " the kitchen file. A slow vent may be a clogged passage. Never open a lid before the gauge reads zero."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceHistory:
    """Curves and sums of one class. Curves follow ``FryHistory.time_s``; crust is dry meat and dry coat.

    ``core_at_lift_c`` is read at the earliest lift; ``core_peak_c`` is after it and counts in no verdict.
    """

    kind: PieceKind
    core_c: NDArray[np.float64]
    surface_c: NDArray[np.float64]
    crust_m: NDArray[np.float64]
    water_lost_frac: NDArray[np.float64]
    core_at_lift_c: float
    core_peak_c: float
    crust_at_lift_m: float
    browning_n: float
    yields: Yields


@dataclass(frozen=True, slots=True, kw_only=True)
class FryHistory:
    """Everything one simulation says; it keeps its question. Verdicts look no further than
    ``earliest_lift_s``. ``span_ends_s`` are the ends of the plan's spans, vent and rest among them.
    """

    plan: FryPlan
    time_s: NDArray[np.float64]
    oil_c: NDArray[np.float64]
    gauge_pa: NDArray[np.float64]
    pieces: tuple[PieceHistory, ...]
    lift_s: float
    earliest_lift_s: float
    vent_s: float
    vent_start_s: float | None
    span_ends_s: tuple[float, ...]
    full_pressure_s: float | None
    lowest_oil_c: float
    lowest_oil_at_s: float
    heat_kwh: float
    moisture_loss_frac: float
    uptake_frac: float
    yield_frac: float
    uptake_kg: float
    rendered_kg: float
    notes: tuple[Note, ...]
    report: SolveReport
    catalog_version: str

    @property
    def told_vent_s(self) -> float | None:
        """The vent to speak of [s]: by the watch, else simulated with the opening described; None where
        nobody told either.
        """
        if not self.plan.vent_told:
            return None
        return self.vent_s if self.plan.fryer.vent_s is None else self.plan.fryer.vent_s

    @property
    def coldest(self) -> PieceHistory:
        """The class whose core is lowest at the earliest lift."""
        return min(self.pieces, key=lambda piece: piece.core_at_lift_c)


def simulate(plan: FryPlan, precision: Precision = ROUTINE) -> FryHistory:
    """Simulate one plan."""
    return simulate_many([plan], precision)[0]


def simulate_many(plans: Sequence[FryPlan], precision: Precision = ROUTINE) -> list[FryHistory]:
    """Simulate many plans; the engine interleaves them."""
    return histories(plans, [question(plan) for plan in plans], precision)


def histories(
    plans: Sequence[FryPlan], cooks: Sequence[Cook], precision: Precision = ROUTINE
) -> list[FryHistory]:
    """Histories of plans whose questions are given, by callers that ask for what they share once."""
    raws = run_many(cooks, precision)
    return [_history(p, r, c) for p, r, c in zip(plans, raws, cooks, strict=True)]


def _history(plan: FryPlan, raw: RawHistory, cook: Cook) -> FryHistory:
    times = lift_of(plan, cook, raw)
    lift = times.lift_s
    pieces = pieces_of(plan, cook.pieces, raw, 0, (lift, times.earliest_s))
    gauge = raw.pressure_pa - plan.site.atmosphere_pa
    full = gauge >= FULL_PRESSURE_SHARE * plan.fryer.working_gauge_pa
    low = int(np.argmin(np.where(raw.time_s <= lift, raw.oil_temp_c, np.inf)))
    usual = [p for p in pieces if not p.kind.heavy]
    share = np.array([p.kind.class_mass_kg for p in usual]) / plan.load_kg

    def mean(name: str) -> float:
        return float(share @ np.array([getattr(p.yields, name) for p in usual]))

    full_s = float(raw.time_s[np.argmax(full)]) if full.any() else None
    return FryHistory(
        plan=plan,
        time_s=raw.time_s,
        oil_c=raw.oil_temp_c,
        gauge_pa=gauge,
        pieces=pieces,
        lift_s=lift,
        earliest_lift_s=times.earliest_s,
        vent_s=times.vent_s,
        vent_start_s=times.vent_start_s,
        span_ends_s=tuple(float(raw.time_s[raw.span <= i].max()) for i in range(len(cook.spans))),
        full_pressure_s=full_s,
        lowest_oil_c=float(raw.oil_temp_c[low]),
        lowest_oil_at_s=float(raw.time_s[low]),
        heat_kwh=float(np.interp(lift, raw.time_s, raw.heater_j)) / 3.6e6,
        moisture_loss_frac=mean("moisture_loss_frac"),
        uptake_frac=mean("uptake_frac"),
        yield_frac=mean("yield_frac"),
        uptake_kg=plan.load_kg * mean("uptake_raw_frac"),
        rendered_kg=plan.load_kg * mean("rendered_raw_frac"),
        notes=_notes(plan, raw, full_s, times, pieces),
        report=raw.report,
        catalog_version=catalog.VERSION,
    )


def pieces_of(
    plan: FryPlan, asked: Sequence[PieceClass], raw: RawHistory, first: int, lift_s: tuple[float, float]
) -> tuple[PieceHistory, ...]:
    """Piece histories of a plan's kinds, asked as these classes, when they stand from lane ``first`` on in a
    raw history; ``lift_s`` is the lift and the earliest one.
    """
    surface = np.ascontiguousarray(raw.surface_temp_c[:, first:].T)
    colours = browning(raw.time_s, surface).tolist()
    return tuple(
        _piece(plan, raw, first + i, kind, piece, lift_s, colours[i])
        for i, (kind, piece) in enumerate(zip(plan.kinds, asked, strict=True))
    )


def _piece(
    plan: FryPlan,
    raw: RawHistory,
    i: int,
    kind: PieceKind,
    piece: PieceClass,
    lift_s: tuple[float, float],
    browning_n: float,
) -> PieceHistory:
    cut, area = kind.cut, piece.area_m2 / kind.class_mass_kg
    at_lift = np.searchsorted(raw.time_s, lift_s[0], side="right") - 1
    found = yields_of(
        cut,
        plan.coating,
        area_m2_kg=area,
        evaporated_kg_m2=float(raw.evaporated_kg_m2[-1, i]),
        core_c=raw.final_core_c[:, i],
        core_share=raw.final_core_share[:, i],
    )
    film = plan.coating.film_kg_m2
    breaded = 1.0 + area * (film + solids_kg_m2(plan.coating))
    dry_coat = 1.0 - np.clip(raw.film_kg_m2[:, i] / film, 0.0, 1.0) if film > 0 else np.zeros(len(raw.time_s))
    crust = raw.crust_m[:, i] + piece.coat_thickness_m * dry_coat
    return PieceHistory(
        kind=kind,
        core_c=raw.core_temp_c[:, i],
        surface_c=raw.surface_temp_c[:, i],
        crust_m=crust,
        water_lost_frac=raw.evaporated_kg_m2[:, i] * area / breaded,
        core_at_lift_c=float(np.interp(lift_s[1], raw.time_s, raw.core_temp_c[:, i])),
        core_peak_c=float(raw.core_temp_c[:, i].max()),
        crust_at_lift_m=float(crust[at_lift]),
        browning_n=browning_n,
        yields=found,
    )


def browning(time_s: NDArray[np.float64], surface_c: NDArray[np.float64]) -> NDArray[np.float64]:
    """Colour difference dE of outer surfaces, (piece, time) (first order, Arrhenius; Zanoni 1995); a surface
    past low_c is dry.
    """
    t = catalog.table("kinetics/browning.toml")
    rate = t["rate_per_s"] * np.exp(-t["activation_j_mol"] / (GAS_J_MOLK * (surface_c + 273.15)))
    rate = np.where(surface_c >= t["low_c"], rate, 0.0)
    progress = np.sum(0.5 * (rate[..., 1:] + rate[..., :-1]) * np.diff(time_s), axis=-1)
    return np.asarray(t["end_n"] * (1.0 - np.exp(-progress)))


def vent_finding(plan: FryPlan, vent_s: float) -> Note | None:
    """What stands against counting on a vent: nobody described it, or it takes too long; None where nothing
    does.
    """
    if not plan.program.under_pressure:
        return None
    if not plan.vent_told:
        return Note(kind="vent_unknown", text=VENT_UNKNOWN)
    taken = max(vent_s, plan.fryer.vent_s or 0.0)
    if taken > MOST_VENT_S:
        return Note(kind="vent_long", text=VENT_LONG, values={"vent_s": taken, "most_s": MOST_VENT_S})
    return None


def _notes(plan, raw, full_s, times: Lift, pieces) -> tuple[Note, ...]:  # type: ignore[no-untyped-def]
    scouting = Note(
        kind="scouting",
        text="Scouting estimate: piece geometry is not calibrated from this kitchen's probe logs.",
    )
    estimates = Note(
        kind="estimates",
        text=(
            "Crust, juice, oil and colour rest on estimates: surface coefficient under pressure, crust"
            " conductivity, lag of the drip, oil uptake."
        ),
    )
    calibrated = all(k.cut.geometry_origin == "calibrated" for k in plan.kinds)
    return (
        *(() if calibrated else (scouting,)),
        *_pressure_notes(plan, raw, full_s, times),
        *_forced_notes(raw),
        *_load_notes(plan),
        *_smoke_notes(plan),
        *_crust_notes(pieces),
        estimates,
    )


def _pressure_notes(plan: FryPlan, raw: RawHistory, full_s: float | None, times: Lift) -> list[Note]:
    """Pressure never reached, a vent that cannot be counted on, stages that waited too long."""
    found = []
    if plan.fryer.kind is FryerKind.PRESSURE and plan.program.under_pressure:
        if full_s is None:
            found.append(
                Note(
                    kind="no_full_pressure",
                    text=(
                        "The load never builds full pressure; it peaks at {gauge_pa}. Small loads need a"
                        " program of their own."
                    ),
                    values={"gauge_pa": float(raw.pressure_pa.max() - plan.site.atmosphere_pa)},
                )
            )
        unsure = vent_finding(plan, times.vent_s)
        found += [unsure] if unsure else []
        if raw.report.span_timed_out:
            found.append(
                Note(
                    kind="vent_slow",
                    text=(
                        "A waiting stage or the vent ran into its longest time. Never open a lid before the"
                        " gauge reads zero and the vent is silent."
                    ),
                )
            )
    elif raw.report.span_timed_out:
        found.append(
            Note(kind="wait_long", text="A stage that waits for a condition ran into its longest time.")
        )
    return found


def _forced_notes(raw: RawHistory) -> list[Note]:
    """Moments the engine could not settle."""
    found = []
    if raw.report.forced:
        found.append(
            Note(
                kind="forced_steps",
                text=(
                    "The calculation could not settle {moments} moments of this cook. Do not rely on it:"
                    " change a value a little and ask again."
                ),
                values={"moments": raw.report.forced},
            )
        )
    return found


def _load_notes(plan: FryPlan) -> list[Note]:
    """A load above or below what the fryer takes."""
    found = []
    if plan.overloaded:
        found.append(
            Note(
                kind="over_capacity",
                text=(
                    "The load is above this fryer's capacity: hot oil can boil over and burn. It is judged no"
                    " better than a full load."
                ),
            )
        )
    if plan.fryer.min_load_kg and plan.load_kg < plan.fryer.min_load_kg:
        found.append(
            Note(
                kind="under_load",
                text="The load is below this fryer's smallest load of {load_kg}.",
                values={"load_kg": plan.fryer.min_load_kg},
            )
        )
    return found


def _smoke_notes(plan: FryPlan) -> list[Note]:
    """A set point close to where the oil smokes."""
    found = []
    smoke, hottest = plan.oil.smoke_low_c, max(stage.set_c for stage in plan.program.stages)
    if smoke is not None and hottest > smoke - 20.0:
        found.append(
            Note(
                kind="near_smoke",
                text=(
                    "A set point of {set_c} is close to where this oil smokes fresh ({smoke_c}); used oil"
                    " smokes earlier."
                ),
                values={"set_c": hottest, "smoke_c": smoke},
            )
        )
    return found


def _crust_notes(pieces: Sequence[PieceHistory]) -> list[Note]:
    """A crust deeper than the model is good for."""
    found = []
    depth = {p.kind.cut.title: p.crust_at_lift_m / p.kind.half_thickness_m for p in pieces}
    driest = max(depth, key=lambda title: depth[title])
    if depth[driest] > DRY_SHARE:
        found.append(
            Note(
                kind="dried_through",
                text=(
                    "The crust takes {crust_frac} of the half thickness of: {piece}. Past one half the model"
                    " is a guess; past seven tenths it only lets the rest of the water boil off."
                ),
                values={"piece": driest, "crust_frac": depth[driest]},
            )
        )
    return found
