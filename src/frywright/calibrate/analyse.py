"""What happened in a log: loads, thermostat, recovery, lid, probes. One call over a log that was read."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.channels import Channel, Role
from frywright.calibrate.core import ProbeCurve, curve_of, moves_in, scale_note
from frywright.calibrate.cycles import Control, control, display_mean, oil_mean
from frywright.calibrate.events import Load, loads_in, out_of_oil
from frywright.calibrate.gauge import Pressed, pressed_in
from frywright.calibrate.heat import HeatState, Oil, idle_runs, oil_of
from frywright.calibrate.readings import Log
from frywright.calibrate.recovery import Recovery, recovery
from frywright.calibrate.thermometer import corrected
from frywright.calibrate.timeline import GAP_S
from frywright.model.findings import Note
from frywright.physics.steam import boiling_temp_c

Array = NDArray[np.float64]
Points = Sequence[tuple[float, float]]
LEAST_SHIFT_S, MOST_SHIFT_S = 2.0, 60.0
SETTLE_S = 40.0
SETTLE_CORE_S, WARMEST_START_C, LEAST_RISE_K = 15.0, 45.0, 25.0
LEAST_LIKENESS = 0.5


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadFound:
    """A load with what it did to the oil, when the lid was under pressure, and its core curves."""

    load: Load
    recovery: Recovery | None
    pressed: Pressed | None
    curves: tuple[ProbeCurve, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Analysis:
    """Everything found in a log. ``idle`` are stretches [s] without load and with the probe in the oil."""

    log: Log
    oil: Oil | None
    oil_channel: str
    heat: HeatState | None
    idle: tuple[tuple[float, float], ...]
    control: Control | None
    display_mean_c: float | None
    offset_k: float | None
    loads: tuple[LoadFound, ...]
    out_of_oil: tuple[tuple[float, float], ...]
    notes: tuple[Note, ...]


def analyse(
    log: Log,
    *,
    corrections: Mapping[str, Points] | None = None,
    display_c: float | None = None,
    atmosphere_pa: float = 101325.0,
) -> Analysis:
    """Find what happened.

    Parameters
    ----------
    log : a log that was read
    corrections : points (reading, correction) of the probe on a channel
    display_c : what the fryer's display said while idle, when no channel logs it
    atmosphere_pa : air pressure at the place, for the boiling point
    """
    given = dict(corrections or {})
    oils = log.of(Role.OIL)
    if not oils:
        return _without_oil(log, given, atmosphere_pa)
    channel = oils[0]
    oil = oil_of(log.time_s, corrected(channel.values, given.get(channel.name, ())), GAP_S)
    lifted = out_of_oil(oil)
    oil = _without(oil, lifted)
    seen = loads_in(oil)
    loads = seen.loads if seen else ()
    notes = _oil_notes(channel.name, lifted, seen is not None)
    idle = _idle(oil, seen.heat if seen else None, loads)
    held = control(oil, seen.heat, idle) if seen else None
    shown = log.of(Role.DISPLAY)
    display = display_mean(log.time_s, shown[0].values, idle) if shown else display_c
    offset = None
    if held and display is not None and np.isfinite(display):
        offset = display - (oil_mean(oil, idle) if shown else held.mean_c)
    found = tuple(_load(log, oil, loads, i, held, given) for i in range(len(loads)))
    if not found:
        found, more = _from_cores(log, given, atmosphere_pa)
        notes += more
    for load in found if loads else ():
        notes += _load_notes(load, atmosphere_pa)
    notes += _shifts(log, oils)
    return Analysis(
        log=log,
        oil=oil,
        oil_channel=channel.name,
        heat=seen.heat if seen else None,
        idle=tuple(idle),
        control=held,
        display_mean_c=display,
        offset_k=offset,
        loads=found,
        out_of_oil=tuple(lifted),
        notes=tuple(notes),
    )


def _without_oil(log: Log, given: Mapping[str, Points], atmosphere_pa: float) -> Analysis:
    """A log without a channel in the oil: core curves by themselves."""
    text = "No channel reads like frying oil; drops and thermostat cannot be found."
    found, more = _from_cores(log, given, atmosphere_pa)
    return Analysis(
        log=log,
        oil=None,
        oil_channel="",
        heat=None,
        idle=(),
        control=None,
        display_mean_c=None,
        offset_k=None,
        loads=found,
        out_of_oil=(),
        notes=(Note(kind="no_oil", text=text), *more),
    )


def _oil_notes(channel: str, lifted: Sequence[tuple[float, float]], kinks: bool) -> list[Note]:
    """Stretches out of the oil, and a heater that leaves no trace in it."""
    text = "{channel} was out of the oil from {from_s} for {length_s}; that stretch is not used."
    notes = [
        Note(kind="out_of_oil", text=text, values={"channel": channel, "from_s": a, "length_s": b - a})
        for a, b in lifted
    ]
    if not kinks:
        text = "The heater leaves no clear cut-ins and cut-outs in {channel}: loads are not searched."
        notes.append(Note(kind="no_kinks", text=text, values={"channel": channel}))
    return notes


def _load_notes(load: LoadFound, atmosphere_pa: float) -> list[Note]:
    notes = _curve_notes(load, atmosphere_pa)
    if load.load.overlapping:
        text = "The load dropped at {drop_s} overlaps another: its times are less sure."
        notes.append(Note(kind="overlap", text=text, values={"drop_s": load.load.drop_s}))
    return notes


def _curve_notes(load: LoadFound, atmosphere_pa: float) -> list[Note]:
    """What the curves of a load told, and whether their scale can be right."""
    notes: list[Note] = []
    boiling = float(boiling_temp_c(atmosphere_pa + (load.pressed.plateau_pa if load.pressed else 0.0)))
    for curve in load.curves:
        mis = scale_note(curve, boiling)
        notes += [*curve.notes, *([mis] if mis else [])]
    return notes


def _from_cores(
    log: Log, given: Mapping[str, Points], atmosphere_pa: float
) -> tuple[tuple[LoadFound, ...], list[Note]]:
    """Where the oil shows no load: warming core curves by themselves, judged to their end."""
    curves, starts = [], []
    for channel in log.of(Role.CORE):
        true_c = corrected(channel.values, given.get(channel.name, ()))
        edges = [0.0, *moves_in(log.time_s, true_c), float(log.time_s[-1]) + 1.0]
        for a, b in pairwise(edges):
            inside = (log.time_s >= a + SETTLE_CORE_S * (a > 0)) & (log.time_s < b) & np.isfinite(true_c)
            if inside.sum() < 30:
                continue
            time, core = log.time_s[inside], true_c[inside]
            start = float(np.median(core[:10]))
            if start > WARMEST_START_C or float(core.max()) - start < LEAST_RISE_K:
                continue
            warming = float(time[int(np.argmax(core > start + 1.0))])
            curve = curve_of(
                channel.name,
                log.time_s,
                channel.values,
                warming,
                float(time[-1]),
                float(time[-1]),
                given.get(channel.name, ()),
            )
            if curve is not None:
                curves.append(curve)
                starts.append(warming)
            break
    if not curves:
        return (), []
    load = Load(drop_s=min(starts), lift_s=None, overlapping=False, drawn_k=0.0)
    found = LoadFound(load=load, recovery=None, pressed=None, curves=tuple(curves))
    note = Note(
        kind="core_only",
        text=(
            "No drop was found in the oil: core curves are judged by themselves, from where they warm to"
            " their end."
        ),
    )
    return (found,), [note, *_curve_notes(found, atmosphere_pa)]


def _without(oil: Oil, stretches: Sequence[tuple[float, float]]) -> Oil:
    if not stretches:
        return oil
    temp, read, time = oil.temp_c.copy(), oil.read.copy(), oil.time_s
    for a, b in stretches:
        inside = (time >= a - 5.0) & (time <= b + 20.0)
        temp[inside], read[inside] = np.nan, False
    return Oil(step_s=oil.step_s, temp_c=temp, noise_k=oil.noise_k, read=read)


def _idle(oil: Oil, heat: HeatState | None, loads: Sequence[Load]) -> list[tuple[float, float]]:
    """Stretches [s] without a load, from when the oil is back at its usual cycle."""
    if heat is None:
        return []
    runs = [(a * oil.step_s, b * oil.step_s) for a, b in idle_runs(oil, heat.drawn_k, heat.heater_k_s)]
    out = []
    for a, b in runs:
        for load in loads:
            if load.lift_s is not None and a < load.lift_s + SETTLE_S and b > load.lift_s:
                a = load.lift_s + SETTLE_S
            if load.drop_s < b and (load.lift_s is None or load.lift_s > a):
                b = min(b, load.drop_s)
        outs = [k * oil.step_s for k, sign in heat.kinks if sign < 0 and a <= k * oil.step_s <= b]
        if outs and any(load.lift_s is not None and load.lift_s <= a for load in loads):
            a = outs[0] - oil.step_s
        if b - a > 60.0:
            out.append((a, b))
    return out


def _load(
    log: Log, oil: Oil, loads: Sequence[Load], i: int, held: Control | None, given: Mapping[str, Points]
) -> LoadFound:
    load = loads[i]
    following = loads[i + 1].drop_s if i + 1 < len(loads) else float(log.time_s[-1])
    back = recovery(oil, load, held.mean_c, following) if held and np.isfinite(held.mean_c) else None
    lift = load.lift_s if load.lift_s is not None else float(log.time_s[-1])
    pressed = None
    for channel in log.of(Role.GAUGE)[:1]:
        inside = slice(*np.searchsorted(log.time_s, (load.drop_s, lift + 60.0)))
        times = pressed_in(log.time_s[inside], channel.values[inside])
        pressed = times[0] if times else None
    curves = [
        curve_of(c.name, log.time_s, c.values, load.drop_s, lift, following, given.get(c.name, ()))
        for c in log.of(Role.CORE)
    ]
    return LoadFound(
        load=load, recovery=back, pressed=pressed, curves=tuple(c for c in curves if c is not None)
    )


def _shifts(log: Log, oils: Sequence[Channel]) -> list[Note]:
    """Channels of the same vat whose events come later or earlier than the first one's."""
    notes = []
    first = oil_of(log.time_s, oils[0].values, GAP_S)
    for other in [*oils[1:], *log.of(Role.DISPLAY)]:
        second = oil_of(log.time_s, other.values, GAP_S)
        shift = shift_between(first, second)
        if shift is not None and abs(shift) >= LEAST_SHIFT_S:
            text = (
                "{channel} runs {shift_s} behind {first}."
                if shift > 0
                else "{channel} runs {shift_s} ahead of {first}."
            )
            notes.append(
                Note(
                    kind="shift",
                    text=text,
                    values={"channel": other.name, "first": oils[0].name, "shift_s": abs(shift)},
                )
            )
    return notes


def shift_between(first: Oil, second: Oil) -> float | None:
    """Seconds by which the second curve follows the first, by correlation of their slopes; None if they are
    not alike.
    """
    count = min(len(first.temp_c), len(second.temp_c))
    most = max(1, round(MOST_SHIFT_S / first.step_s))
    enough = min(int(np.isfinite(o.temp_c[:count]).sum()) for o in (first, second))
    if count < 6 * most + 20 or enough < 0.5 * count:
        return None
    slopes = []
    for oil in (first, second):
        temp = np.nan_to_num(oil.temp_c[:count], nan=float(np.nanmean(oil.temp_c)))
        slope = np.gradient(np.convolve(temp, np.ones(9) / 9, mode="valid"))
        slopes.append((slope - slope.mean()) / (slope.std() + 1e-12))
    a, b = slopes
    inner = slice(most, len(a) - most)
    scores = [float(np.mean(a[inner] * b[most + k : len(b) - most + k])) for k in range(-most, most + 1)]
    best = int(np.argmax(scores))
    return (best - most) * first.step_s if scores[best] > LEAST_LIKENESS else None
