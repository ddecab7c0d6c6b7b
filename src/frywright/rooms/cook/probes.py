"""What does this logger file say? Read, judge, calibrate; everything a person does with a log."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, field, replace

import numpy as np

from frywright.calibrate.analyse import Analysis, LoadFound, analyse
from frywright.calibrate.channels import Role
from frywright.calibrate.core import ProbeCurve, unbridged
from frywright.calibrate.fit import Fit, fit
from frywright.calibrate.kettle import Kettle, kettle_of
from frywright.calibrate.placement import Placement, placement
from frywright.calibrate.readings import Log
from frywright.calibrate.trial import Probed, Trial
from frywright.catalog import load as catalog
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CalibrationKept, FittedValue
from frywright.ledger.store import Store
from frywright.model.calibration import Calibration
from frywright.model.errors import InputError
from frywright.model.findings import Note, Verdict
from frywright.model.food import Food
from frywright.model.kitchen import Kitchen
from frywright.physics.plan import lid_of, make_plan
from frywright.rooms.clock import now
from frywright.rooms.kitchen import judged_on
from frywright.rooms.thermometers import check_valid, checks_in, correction_of
from frywright.trial.ask import product_limit, why_none
from frywright.trial.evidence import logged_as
from frywright.verdicts.evidence import Evidence, EvidenceKind
from frywright.verdicts.judge import NO_RULE_KNOWN, CoreCurve, best_row, judge, salmonella_log
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.place import place_of
from frywright.verdicts.tables import fsis_poultry, uk_equivalents

FIRST_KINDS = ("scale", "lifted", "out_of_oil")
GEOMETRY = ("half_thickness_m", "shape_n")


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbeAsk:
    """What a person says about a log: the program run, what was probed, how heavy, with which
    thermometers.
    """

    program: str
    cuts: Mapping[str, str]  # channel -> cut
    masses_kg: Mapping[str, float]  # channel -> weight of the probed piece
    thermometers: Mapping[str, str]  # channel -> thermometer
    display_c: float | None = None
    units_count: float | None = None
    loss_frac: float | None = None  # moisture lost of breaded weight by the probed pieces
    weighed_kg: Mapping[str, tuple[float, float]] = field(default_factory=dict)
    # channel -> its piece breaded, and fried, drained and blotted


WEIGHED_ERROR = 0.02
"""Error of a weight lost beside the simulated one: oil taken up and fat given off are known to about a fifth,
and a blot takes some of the oil (own estimate).
"""
LEAST_LOST, MOST_LOST = 0.02, 0.6
"""Share of breaded weight that frying takes, at the widest (own rule): beyond it a weight was misread."""


def weight_lost_frac(asked: ProbeAsk, cut: str) -> float | None:
    """Weight lost of breaded weight by the weighed pieces of a cut; None where none was weighed.
    Raises InputError: a piece that gained weight, or lost more than frying takes.
    """
    found = [(c, w) for c, w in asked.weighed_kg.items() if asked.cuts.get(c) == cut]
    for channel, (before, after) in found:
        lost = 1.0 - after / before if before > 0.0 else 0.0
        if not LEAST_LOST <= lost <= MOST_LOST:
            values = {"low_frac": LEAST_LOST, "high_frac": MOST_LOST}
            raise InputError(
                "weight lost",
                lost,
                "{low_frac} to {high_frac} of the breaded weight",
                where=channel,
                unit="frac",
                **values,
            )
    if not found:
        return None
    return 1.0 - sum(after for _, (_, after) in found) / sum(before for _, (before, _) in found)


@dataclass(frozen=True, slots=True, kw_only=True)
class JudgedCurve:
    """A core curve with its verdict and what supports it."""

    load_number: int
    curve: ProbeCurve
    cut: str
    verdict: Verdict
    row: tuple[float, float] | None
    logs_n: float
    checked: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """Everything told about a log."""

    analysis: Analysis
    judged: tuple[JudgedCurve, ...]
    notes: tuple[Note, ...]

    @property
    def log(self) -> Log:
        """The log as read."""
        return self.analysis.log


def tell(kitchen: Kitchen, log: Log, asked: ProbeAsk | None = None, store: Store | None = None) -> Answer:
    """Events, thermostat, recovery, and a verdict for every core curve.

    A thermometer's correction is applied first; a curve of a thermometer without a valid check is no
    evidence.
    """
    used = asked.thermometers if asked else {}
    when = log.start_at or now().replace(tzinfo=None)
    kitchen = judged_on(store, kitchen, when.date()) if store else kitchen
    checks = checks_in(store) if store else []
    corrections = (
        {channel: correction_of(checks, name, when) for channel, name in used.items()} if store else {}
    )
    found = analyse(
        log,
        corrections=corrections,
        display_c=asked.display_c if asked else None,
        atmosphere_pa=kitchen.site.atmosphere_pa,
    )
    judged = []
    for number, load in enumerate(found.loads, start=1):
        for curve in load.curves:
            valid = bool(store and used.get(curve.channel) and check_valid(store, used[curve.channel], when))
            cut = (asked.cuts.get(curve.channel) if asked else None) or ""
            judged.append(
                _judge(kitchen, number, curve, cut, valid, asked.program if asked else "", when.date())
            )
    first = sorted(found.notes, key=lambda note: note.kind not in FIRST_KINDS)
    return Answer(analysis=found, judged=tuple(judged), notes=(*first, *log.notes))


def _judge(
    kitchen: Kitchen, number: int, curve: ProbeCurve, cut_key: str, valid: bool, program: str, day: dt.date
) -> JudgedCurve:
    cut = kitchen.cut(cut_key) if cut_key else None
    food = cut.food if cut else Food.POULTRY
    limit, why = _rule_of(kitchen, food, program, day)
    fat = 100.0 * catalog.compositions()[cut.composition].fractions["fat"] if cut else 12.0
    time, core = unbridged(curve)
    evidence = Evidence(kind=EvidenceKind.PROBE, error_k=kitchen.site.thermometer_error_k, checked=valid)
    lift = min(curve.lift_s, float(time[-1]))
    piece = f"{curve.channel} ({cut.title})" if cut else curve.channel
    told = CoreCurve(piece=piece, time_s=time, core_c=core, lift_s=lift, fat_pct=fat, carry_over_counts=True)
    verdict = judge(told, limit, evidence, why)
    table = (
        uk_equivalents() if limit is not None and limit.rule == "uk_core" else fsis_poultry("chicken", fat)
    )
    guarded = core - evidence.error_k
    return JudgedCurve(
        load_number=number,
        curve=curve,
        cut=cut_key,
        verdict=verdict,
        row=best_row(table, time, guarded) if food is Food.POULTRY else None,
        logs_n=salmonella_log(time, guarded),
        checked=valid,
    )


def _rule_of(kitchen: Kitchen, food: Food, program: str, day: dt.date) -> tuple[CookLimit | None, str]:
    """What judges a curve on its day: its program's product (with its house target) where it is known, else
    the rule of its food.
    """
    if program:
        product = kitchen.product(kitchen.program(program).product)
        return product_limit(kitchen, product, day), why_none(kitchen, product)
    place = place_of(kitchen)
    return place.cook_limit(food, day), place.why_no_rule(food) or NO_RULE_KNOWN


@dataclass(frozen=True, slots=True, kw_only=True)
class Calibrated:
    """A calibration of one cut from a log: the fit, where the probes sat, and what it would be kept as."""

    cut: str
    fit: Fit
    placements: tuple[Placement, ...]
    draft: Calibration | None
    notes: tuple[Note, ...]


def calibrate(
    kitchen: Kitchen, answer: Answer, asked: ProbeAsk, cut: str, free: Sequence[str] = ()
) -> Calibrated:
    """Fit a cut's geometry to every probed piece of it in a log; with pieces weighed before and after, also
    the share of its water that it lets go. ``free`` names other parameters. Raises InputError: nothing in the
    log was a probe of this cut, or a weight is missing.
    """
    trials = trials_of(kitchen, answer, asked, cut)
    if not trials:
        raise InputError(
            "cut", cut, "probed in this log: say which channel was in which cut", where=answer.log.name
        )
    free = free or (GEOMETRY if weight_lost_frac(asked, cut) is None else (*GEOMETRY, "drip_frac"))
    sensor = 0.5 * kitchen.site.thermometer_error_k
    single = [replace(t, probes=(p,)) for t in trials for p in t.probes]
    found = fit(trials, free, sensor_sd_k=sensor)
    notes: list[Note] = []
    places = (
        tuple(placement(t, _rms(fit([t], GEOMETRY, sensor_sd_k=sensor))) for t in single)
        if found.parameters
        else ()
    )
    usable = found.usable and not any(p.off_centre for p in places)
    notes += [p.note for p in places]
    draft = _draft(kitchen, trials, found, single, sensor) if usable and set(GEOMETRY) & set(free) else None
    return Calibrated(cut=cut, fit=found, placements=places, draft=draft, notes=tuple(notes))


def calibrate_lid(
    kitchen: Kitchen, answer: Answer, asked: ProbeAsk, free: Sequence[str] = ("working_gauge_pa",)
) -> Fit:
    """Fit the lid of the fryer to the gauge curve of every load under pressure in a log.
    Raises InputError: no load in the log was under pressure.
    """
    trials = [t for t in trials_of(kitchen, answer, asked) if t.gauge is not None]
    if not trials:
        raise InputError(
            "gauge", "missing", "a channel with pressure and a load under pressure", where=answer.log.name
        )
    return fit(trials, free)


def kettle_found(kitchen: Kitchen, answer: Answer, program: str) -> Kettle | None:
    """Heater and idle loss of the fryer that ran a program, from a log with cycles enough; else None."""
    found = answer.analysis
    if found.heat is None or found.control is None or not found.control.enough or not program:
        return None
    fryer = kitchen.fryer(kitchen.program(program).fryer)
    return kettle_of(
        found.heat, found.control.mean_c, fryer, catalog.oils()[fryer.oil], kitchen.site.room_temp_c
    )


def _rms(found: Fit) -> float:
    return found.rms_k if found.parameters else float("inf")


def trials_of(kitchen: Kitchen, answer: Answer, asked: ProbeAsk, cut: str = "") -> list[Trial]:
    """Trials of a log: one for each finished load, with the probes of one cut (or none)."""
    program = kitchen.program(asked.program)
    log, found = answer.log, answer.analysis
    if found.oil is None:
        return []
    oil_channel = next(c for c in log.of(Role.OIL) if c.name == found.oil_channel)
    trials = []
    for load in found.loads:
        if load.load.lift_s is None or load.load.overlapping:
            continue
        probes = []
        for curve in load.curves:
            stayed = curve.left_s is None or curve.left_s >= curve.lift_s
            if not cut or asked.cuts.get(curve.channel) != cut or not stayed:
                continue
            if curve.channel not in asked.masses_kg:
                raise InputError(
                    "weight",
                    "missing",
                    "the weight of the probed piece, for example 210g",
                    where=curve.channel,
                )
            probes.append(Probed(cut=cut, piece_mass_kg=asked.masses_kg[curve.channel], curve=curve))
        if cut and not probes:
            continue
        trials.append(_trial(kitchen, log, load, oil_channel.values, tuple(probes), program, asked, cut))
    return trials


def _trial(kitchen, log, load: LoadFound, oil, probes, program, asked: ProbeAsk, cut: str) -> Trial:  # type: ignore[no-untyped-def]
    drop, lift = load.load.drop_s, load.load.lift_s
    assert lift is not None  # only finished loads get here
    end = max([lift + 60.0, *(drop + float(p.curve.time_s[-1]) for p in probes)])
    inside = (log.time_s >= drop) & (log.time_s <= end)
    time = log.time_s[inside] - drop
    start_c = float(np.mean([p.curve.start_c for p in probes])) if probes else None
    plan = make_plan(kitchen, program, units_count=asked.units_count, start_temp_c=start_c)
    lost = weight_lost_frac(asked, cut)
    gauges = log.of(Role.GAUGE)
    pressed = load.pressed
    if pressed is not None:
        zero = None if pressed.zero_s is None else pressed.zero_s - drop
        pressed = replace(
            pressed,
            closed_s=pressed.closed_s - drop,
            full_s=None if pressed.full_s is None else pressed.full_s - drop,
            vent_s=pressed.vent_s - drop,
            zero_s=zero,
        )
    return Trial(
        plan=plan,
        lift_s=lift - drop,
        probes=probes,
        oil=(time, oil[inside]),
        gauge=(time, gauges[0].values[inside]) if gauges and pressed is not None else None,
        pressed=pressed,
        loss=(asked.loss_frac, 0.01) if asked.loss_frac is not None else None,
        weight=None if lost is None else (lost, WEIGHED_ERROR),
    )


def _draft(
    kitchen: Kitchen, trials: Sequence[Trial], found: Fit, single: Sequence[Trial], sensor: float
) -> Calibration:
    """The calibration to keep: range of the logs, error from the fit, the thermometer and how pieces
    differ.
    """
    plan = trials[0].plan
    cut = next(k.cut for k in plan.kinds if k.cut.key == single[0].probes[0].cut)
    names = {p.name: p.value for p in found.parameters}
    masses = [t.probes[0].piece_mass_kg for t in single]
    starts = [t.probes[0].curve.start_c for t in single]
    oils = [np.asarray(t.oil[1])[np.asarray(t.oil[0]) <= t.lift_s] for t in trials if t.oil is not None]
    each = (
        _sizes(single, sensor) if len(single) > 1 else [names.get("half_thickness_m", cut.half_thickness_m)]
    )
    spread = float(np.std(each, ddof=1)) if len(each) > 1 else 0.0
    size = names.get("half_thickness_m", cut.half_thickness_m)
    per_size = _core_per_size(trials[0], size)
    error = float(
        np.sqrt(
            kitchen.site.thermometer_error_k**2
            + (2 * found.rms_k) ** 2
            + (2 * found.core_sd_k) ** 2
            + (2 * per_size * spread) ** 2
        )
    )
    return Calibration(
        cut=cut.key,
        coating=plan.coating.key,
        lid=lid_of(plan.program),
        half_thickness_m=size,
        shape_n=names.get("shape_n", cut.shape_n),
        area_factor_n=names.get("area_factor_n"),
        drip_frac=names.get("drip_frac"),
        program=logged_as(plan.program),
        reference_mass_kg=cut.reference_mass_kg,
        pieces_count=len(single),
        mass_low_kg=min(masses),
        mass_high_kg=max(masses),
        oil_low_c=float(min(np.nanmin(o) for o in oils)),
        oil_high_c=float(max(np.nanmax(o) for o in oils)),
        start_low_c=min(starts),
        start_high_c=max(starts),
        error_k=min(error, 10.0),
        made_on=now().date().isoformat(),
    )


def _sizes(single: Sequence[Trial], sensor: float) -> list[float]:
    """Size of every piece by itself, the shape held: how pieces of one cut differ."""
    found = [fit([t], ("half_thickness_m",), sensor_sd_k=sensor) for t in single]
    return [f["half_thickness_m"].value for f in found if f.parameters]


def _core_per_size(trial: Trial, size_m: float) -> float:
    """Fall of the core at the lift for one metre more of half thickness [K/m], from the curve itself.

    Core time goes with the square of size, so dT/da = 2 t/a dT/dt.
    """
    curve = trial.probes[0].curve
    time = min(trial.lift_s, float(curve.time_s[-1]))
    slope = (
        np.interp(time, curve.time_s, curve.core_c) - np.interp(time - 60.0, curve.time_s, curve.core_c)
    ) / 60.0
    return float(2.0 * time / size_m * max(slope, 0.0))


def keep_calibration(
    store: Store, made: Calibrated, log_sha: str, residual_rms_k: float
) -> Kept[CalibrationKept]:
    """Keep a calibration; from now on simulations use it, and programs it moves are to be proved again.
    Raises InputError: the fit was refused or a probe sat off the coldest spot.
    """
    from frywright.rooms.kitchen import remember_calibration

    if made.draft is None:
        raise InputError("calibration", "refused", "one that the log supports; see its notes")
    fact = CalibrationKept.of(
        replace(made.draft, log=log_sha),
        rms_k=residual_rms_k,
        fitted=tuple(FittedValue(**asdict(p)) for p in made.fit.parameters),
        runs_count=made.fit.runs_count,
    )
    return remember_calibration(store, fact)


def calibration_toml(draft: Calibration) -> str:
    """A calibration as a table for a kitchen file."""
    lines = ["[[calibration]]"]
    for name, value in asdict(draft).items():
        if value is None or value == "":
            continue
        lines.append(f"{name} = {value!r}" if not isinstance(value, str) else f'{name} = "{value}"')
    return "\n".join(lines) + "\n"


def log_time(log: Log, seconds: float) -> str:
    """A moment of a log as people read it: clock time when the file has one, else minutes since the start."""
    from frywright.model.units import clock

    if log.start_at is None:
        return clock(seconds)
    return (log.start_at + dt.timedelta(seconds=seconds)).strftime("%H:%M:%S")
