"""A log's answer as people read it: page, terminal, JSON and paper share it."""

from __future__ import annotations

from dataclasses import asdict, dataclass, replace

import numpy as np

from frywright.calibrate.analyse import Analysis, LoadFound
from frywright.calibrate.channels import Channel, Role
from frywright.calibrate.cycles import advise, offset_note
from frywright.calibrate.fit import Fit
from frywright.calibrate.kettle import Kettle
from frywright.calibrate.parameters import Fitted
from frywright.calibrate.readings import Log
from frywright.model.findings import Note, say
from frywright.model.tongues import Translate
from frywright.model.units import SHOWN, UNITS, show, suffix_of
from frywright.paper.curves import LogCurve, LogCurves, LogMark, ResidualCurve
from frywright.rooms.cook.probes import Answer, Calibrated, JudgedCurve, log_time
from frywright.rooms.cook.view import NoteShown, notes_shown
from frywright.trial.predicted import FactsShown, show_facts
from frywright.verdicts.facts import facts_of

MOST_POINTS = 900
PARAMETER_WORDS = {
    "half_thickness_m": "half thickness",
    "shape_n": "shape",
    "area_factor_n": "area factor",
    "drip_frac": "share of water let go",
    "vent_area_m2": "vent opening",
    "lid_ua_w_k": "heat into the lid",
    "working_gauge_pa": "working pressure",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class QuestionShown:
    """What the file does not say, and what was taken meanwhile."""

    key: str
    text: str
    choices: list[str]
    guess: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DroppedLine:
    """A line that was left out, as it stands in the file."""

    line: int
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DroppedLines:
    """Lines left out for one reason, with a few of them."""

    reason: str
    count: int
    lines: tuple[DroppedLine, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadShown:
    """How the file was read: lines counted, kept and dropped."""

    lines: int
    kept: int
    before: int
    blank: int
    dropped: tuple[DroppedLines, ...]
    dropped_count: int
    step: str
    encoding: str
    separator: str
    ignored: list[str]


@dataclass(frozen=True, slots=True, kw_only=True)
class ChannelShown:
    """One channel: what part it is taken for, why, and between which values it lies."""

    name: str
    role: str
    role_word: str
    unit: str
    reason: str
    low: str
    high: str
    missing: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ThermostatShown:
    """How the oil was held, and what to do about its offset."""

    mean: str
    swing: str
    cycles: int
    error: str
    enough: bool
    display: str
    advice: str
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class LogLoadShown:
    """One load of a log; times of its lid and gauge only where it was under pressure."""

    number: int
    drop: str
    drop_s: float
    lift_s: float | None
    lift: str
    length: str
    overlapping: bool
    dip: str = "–"
    lowest: str = "–"
    recovered: str = "–"
    debt: str = "–"
    full: str = "–"
    vent: str = "–"
    zero: str = "–"
    vent_s: float | None = None
    gauge: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class CurveVerdict(FactsShown):
    """The verdict on one core curve, with its two facts."""

    load: int
    channel: str
    cut: str
    sentence: str
    row: str
    logs: str
    at_lift: str
    start: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbeView:
    """Everything a screen shows of a log."""

    name: str
    started: str
    length: str
    read: ReadShown
    questions: tuple[QuestionShown, ...]
    channels: tuple[ChannelShown, ...]
    thermostat: ThermostatShown | None
    loads: tuple[LogLoadShown, ...]
    verdicts: tuple[CurveVerdict, ...]
    notes: tuple[NoteShown, ...]


def probe_view(answer: Answer, system: str, translate: Translate = str) -> ProbeView:
    """A log's answer in a kitchen's units and language."""
    found, log = answer.analysis, answer.log
    return ProbeView(
        name=log.name,
        started=log.start_at.strftime("%Y-%m-%d %H:%M:%S") if log.start_at else "",
        length=show(float(log.time_s[-1]), "s", system),
        read=_read(log, translate),
        questions=tuple(
            QuestionShown(
                key=q.key,
                text=say(q.text, q.values, system, translate),
                choices=list(q.choices),
                guess=q.guess,
            )
            for q in log.questions
        ),
        channels=tuple(_channel(c, system, translate) for c in log.channels),
        thermostat=_thermostat(found, system, translate),
        loads=tuple(
            _load(log, load, number, system, translate) for number, load in enumerate(found.loads, start=1)
        ),
        verdicts=tuple(_verdict(judged, system, translate) for judged in answer.judged),
        notes=notes_shown(answer.notes, system, translate),
    )


def _read(log: Log, translate: Translate) -> ReadShown:
    shape = log.shape
    return ReadShown(
        lines=log.lines_count,
        kept=len(log.time_s),
        before=shape.first_line_number - 1,
        blank=log.blank_count,
        dropped=tuple(
            DroppedLines(
                reason=translate(d.reason),
                count=d.count,
                lines=tuple(DroppedLine(line=n, text=t) for n, t in d.examples),
            )
            for d in log.dropped
        ),
        dropped_count=sum(d.count for d in log.dropped),
        step=f"{log.step_s:g} s",
        encoding=shape.encoding,
        separator={"\t": "tab", " ": "space"}.get(shape.separator, shape.separator),
        ignored=list(log.ignored),
    )


def _channel(channel: Channel, system: str, translate: Translate) -> ChannelShown:
    known = channel.values[np.isfinite(channel.values)]
    unit = "pa" if channel.role is Role.GAUGE else "c"
    return ChannelShown(
        name=channel.name,
        role=str(channel.role),
        role_word=translate(str(channel.role)),
        unit=UNITS[channel.unit].sign,
        reason=translate(channel.reason),
        low=show(float(known.min()), unit, system) if len(known) else "–",
        high=show(float(known.max()), unit, system) if len(known) else "–",
        missing=str(int(len(channel.values) - len(known))),
    )


def _thermostat(found: Analysis, system: str, translate: Translate) -> ThermostatShown | None:
    held = found.control
    if held is None or not np.isfinite(held.mean_c):
        return None
    lines, advice = [], ""
    if found.offset_k is not None:
        note = offset_note(found.offset_k)
        lines.append(say(note.text, note.values, system, translate))
        advice_kind, note = advise(held, found.offset_k)
        advice = str(advice_kind)
        lines.append(say(note.text, note.values, system, translate))
    return ThermostatShown(
        mean=show(held.mean_c, "c", system),
        swing=show(held.swing_k, "k", system),
        cycles=held.cycles_count,
        error=show(held.error_k, "k", system) if np.isfinite(held.error_k) else "–",
        enough=held.enough,
        display=show(found.display_mean_c, "c", system) if found.display_mean_c is not None else "",
        advice=advice,
        lines=tuple(lines),
    )


def _load(log: Log, load: LoadFound, number: int, system: str, translate: Translate) -> LogLoadShown:
    back, lift, pressed = load.recovery, load.load.lift_s, load.pressed
    row = LogLoadShown(
        number=number,
        drop=log_time(log, load.load.drop_s),
        drop_s=load.load.drop_s,
        lift_s=lift,
        lift=log_time(log, lift) if lift is not None else translate("not in the log"),
        length=show(lift - load.load.drop_s, "s", system) if lift is not None else "–",
        overlapping=load.load.overlapping,
    )
    if back is not None:
        scale, sign = (1.8, "°F") if system == "us" else (1.0, "°C")
        row = replace(
            row,
            dip=show(back.dip_k, "k", system),
            lowest=f"{show(back.lowest_c, 'c', system)} ({show(back.lowest_after_s, 's', system)})",
            recovered=(
                show(back.recovered_s, "s", system)
                if back.recovered_s is not None
                else translate("not before the next drop")
            ),
            debt=f"{back.debt_k_s / 60 * scale:.0f} {sign} min",
        )
    if pressed is not None:
        row = replace(
            row,
            vent=log_time(log, pressed.vent_s),
            vent_s=pressed.vent_s,
            full=show((pressed.full_s or pressed.vent_s) - load.load.drop_s, "s", system),
            zero=log_time(log, pressed.zero_s) if pressed.zero_s is not None else translate("not in the log"),
            gauge=show(pressed.plateau_pa, "pa", system),
        )
    return row


def _verdict(judged: JudgedCurve, system: str, translate: Translate) -> CurveVerdict:
    verdict, row, curve = judged.verdict, judged.row, judged.curve
    facts = show_facts(facts_of([verdict]), system, translate, measured=True)
    return CurveVerdict(
        **asdict(facts),
        load=judged.load_number,
        channel=curve.channel,
        cut=judged.cut,
        sentence=verdict.say(system, translate),
        row=f"{show(row[0], 'c', system)} · {show(row[1], 's', system)}" if row else translate("none"),
        logs="> 12" if judged.logs_n > 12 else f"{judged.logs_n:.1f}",
        at_lift=show(float(np.interp(curve.lift_s, curve.time_s, curve.core_c)), "c", system),
        start=show(curve.start_c, "c", system),
    )


def shown(fitted: Fitted, value: float, system: str) -> str:
    """A fitted value in people's units."""
    suffix = suffix_of(fitted.name)
    return f"{value:.3f}" if suffix in (None, "frac") else _close(value, suffix or "", system)


def _close(value: float, suffix: str, system: str) -> str:
    unit, digits = SHOWN[system].get(UNITS[suffix].dimension, (suffix, 3))
    if suffix == "m":
        unit, digits = "mm", 2
    if suffix == "m2":
        unit, digits = "mm2", 1
    return f"{value / UNITS[unit].factor - UNITS[unit].offset:.{digits}f} {UNITS[unit].sign}"


def kettle_lines(kettle: Kettle | None, system: str, translate: Translate = str) -> list[str]:
    """Heater and idle loss in words; nothing when the log did not show them."""
    if kettle is None:
        return []
    heater = (
        f"{translate('Heat into the oil')}: {kettle.heater_w / 1e3:.1f} ±"
        f" {kettle.heater_error_w / 1e3:.1f} kW"
    )
    scale, degree = (UNITS["f_diff"].factor, "°F") if system == "us" else (1.0, "°C")
    each, doubt = scale * kettle.loss_w_k, scale * kettle.loss_error_w_k
    loss = f"{translate('idle loss')}: {each:.1f} ± {doubt:.1f} W/{degree}"
    return [f"{heater} · {loss}", say(kettle.note.text, kettle.note.values, system, translate)]


@dataclass(frozen=True, slots=True, kw_only=True)
class ParameterShown:
    """A fitted value with its 95 % interval and what it was before."""

    name: str
    key: str
    value: str
    low: str
    high: str
    before: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FitView:
    """A calibration on a screen: values with intervals, warnings, refusals, residuals; ``picture`` (SVG) and
    ``lid`` where a page sets them.
    """

    cut: str
    usable: bool
    parameters: tuple[ParameterShown, ...]
    rms: str
    error: str
    pieces: int
    warnings: tuple[str, ...]
    refused: tuple[str, ...]
    placements: tuple[NoteShown, ...]
    residuals: tuple[ResidualCurve, ...]
    lid: bool = False
    picture: str = ""


def fit_view(made: Calibrated, system: str, translate: Translate = str) -> FitView:
    """A calibration in a kitchen's units and language."""
    found: Fit = made.fit

    def told(notes: tuple[Note, ...]) -> tuple[str, ...]:
        return tuple(say(n.text, _named(n, translate), system, translate) for n in notes)

    return FitView(
        cut=made.cut,
        usable=made.draft is not None,
        parameters=tuple(
            ParameterShown(
                name=translate(PARAMETER_WORDS.get(p.name, p.name)),
                key=p.name,
                value=shown(p, p.value, system),
                low=shown(p, p.low, system),
                high=shown(p, p.high, system),
                before=shown(p, p.before, system),
            )
            for p in found.parameters
        ),
        rms=show(found.rms_k, "k", system) if found.parameters else "–",
        error=show(made.draft.error_k, "k", system) if made.draft else "–",
        pieces=made.draft.pieces_count if made.draft else 0,
        warnings=told(found.warnings),
        refused=told(found.refused),
        placements=notes_shown([p.note for p in made.placements], system, translate),
        residuals=tuple(
            ResidualCurve(
                name=r.name,
                time_s=[round(float(t), 1) for t in r.time_s],
                left_k=[round(float(v), 4) for v in r.left],
                shown_in=SHOWN[system]["temperature_difference"][0],
                rms=r.rms,
            )
            for r in found.residuals
        ),
    )


def _named(note: Note, translate: Translate) -> dict[str, float | str]:
    return {
        k: translate(PARAMETER_WORDS.get(v, v)) if isinstance(v, str) else v for k, v in note.values.items()
    }


def log_curves(answer: Answer, system: str) -> LogCurves:
    """Curves for a picture, thinned evenly to what a screen can show; marks of what was found."""
    log, found = answer.log, answer.analysis
    every = max(1, len(log.time_s) // MOST_POINTS)
    unit = UNITS[SHOWN[system]["temperature"][0]]
    channels = tuple(
        LogCurve(
            name=c.name,
            role=str(c.role),
            values=[
                None if np.isnan(v) else round(float(v / unit.factor - unit.offset), 2)
                for v in c.values[::every]
            ],
        )
        for c in log.channels
        if c.role not in (Role.OTHER, Role.GAUGE)
    )
    marks = []
    for load in found.loads:
        marks.append(LogMark(time_s=load.load.drop_s, kind="drop"))
        if load.load.lift_s is not None:
            marks.append(LogMark(time_s=load.load.lift_s, kind="lift"))
        if load.pressed is not None:
            marks.append(LogMark(time_s=load.pressed.vent_s, kind="vent"))
    marks += [LogMark(time_s=a, kind="probe out of the oil") for a, _ in found.out_of_oil]
    return LogCurves(
        time_s=[round(float(t), 1) for t in log.time_s[::every]],
        degree=unit.sign,
        channels=channels,
        marks=tuple(marks),
    )
