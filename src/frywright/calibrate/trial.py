"""One load with what was measured on it, as a question to the engine: measured oil, measured pressure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.core import ProbeCurve
from frywright.calibrate.gauge import Pressed
from frywright.calibrate.heat import noise_of
from frywright.model.errors import InputError
from frywright.physics.inputs import CLOSE, Lid, PieceClass, Span
from frywright.physics.plan import TRACER_SHARE, FryPlan, PieceKind, piece_class, spans, vat
from frywright.physics.solve import Cook, Prescribed, RawHistory, run

Array = NDArray[np.float64]
FITTING = replace(
    CLOSE, n_core=60, n_crust=15, max_step_s=2.0, max_boiling_step_k=0.25, first_step_s=0.02, early_step_s=0.2
)
THIN_S, SHORTEST_SPAN_S = 5.0, 0.05
REST_S, REST_PA = 20.0, 200.0
"""A pressure has come to rest where it is this close to the mean of its last seconds: 200 Pa move the boiling
point by 0.06 K (own computation). Own choice."""
STEEP_N = 40.0
"""A curve is steep where nine thinned readings differ by this many times the noise. Estimate."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Probed:
    """A probed piece: its cut, weight and curve."""

    cut: str
    piece_mass_kg: float
    curve: ProbeCurve


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial:
    """One load with everything that was measured on it. Curves are (time from the drop, value)."""

    plan: FryPlan
    lift_s: float
    probes: tuple[Probed, ...] = ()
    oil: tuple[Array, Array] | None = None
    gauge: tuple[Array, Array] | None = None
    loss: tuple[float, float] | None = (
        None  # moisture lost of breaded weight by the probed cut, or the load; its error
    )
    weight: tuple[float, float] | None = (
        None  # weight lost of breaded weight by the cut on a scale; its error
    )
    pressed: Pressed | None = None  # when the lid closed, vented and came to zero, from the drop


def thin(time: Array, read: Array) -> tuple[Array, Array]:
    """About one reading every THIN_S seconds, the mean of those around it."""
    known = np.isfinite(read)
    time, read = time[known], read[known]
    bins = np.floor(time / THIN_S).astype(np.int64)
    edges = np.flatnonzero(np.r_[True, np.diff(bins) != 0])
    counts = np.diff(np.r_[edges, len(time)])
    return np.add.reduceat(time, edges) / counts, np.add.reduceat(read, edges) / counts


def calm(time: Array, read: Array) -> Array:
    """A measured curve as a table for the engine, (reading, time and value), its noise smoothed away where it
    is level.

    Noise in pressure would make the engine boil at every peak and never condense, so it must go; where a
    curve rises or falls by far more than the noise (a vent, a load dropped) every reading stays.
    """
    t, y = thin(time, read)
    noise = max(noise_of(y), 1e-9)
    wide = np.convolve(np.pad(y, 4, mode="edge"), np.ones(9) / 9, mode="valid")
    narrow = np.convolve(np.pad(y, 1, mode="edge"), np.ones(3) / 3, mode="valid")
    spread = np.ptp(np.lib.stride_tricks.sliding_window_view(np.pad(y, 4, mode="edge"), 9), axis=1)
    level = np.clip((8.0 * noise - spread) / (3.0 * noise), 0.0, 1.0)
    smooth = level * wide + (1.0 - level) * narrow
    steep = spread > STEEP_N * noise
    known = np.isfinite(read)
    sharp = steep[np.searchsorted(0.5 * (t[1:] + t[:-1]), time[known])]
    times = np.concatenate([t[~steep], time[known][sharp]])
    values = np.concatenate([smooth[~steep], read[known][sharp]])
    order = np.argsort(times, kind="stable")
    last = np.append(np.diff(times[order]) > 0.0, True)  # of two at one time the reading itself
    return np.asarray(np.column_stack([times, values])[order[last]])


def tracer(plan: FryPlan, probed: Probed, start_c: float) -> PieceClass:
    """The probed piece as a class of next to no mass, so that it follows the load without changing it."""
    cut = next((k.cut for k in plan.kinds if k.cut.key == probed.cut), None)
    if cut is None:
        known = ", ".join(sorted({k.cut.key for k in plan.kinds}))
        raise InputError("cut", probed.cut, "one of: {known}", known=known)
    kind = PieceKind(
        cut=cut,
        heavy=True,
        piece_mass_kg=probed.piece_mass_kg,
        class_mass_kg=TRACER_SHARE * max(plan.load_kg, 0.1),
    )
    return replace(piece_class(plan, kind), name=probed.curve.channel, start_temp_c=start_c)


class Headspace(NamedTuple):
    """Absolute pressure over a load as a curve, and what the lid did; nothing where the lid stayed open."""

    curve: Array | None = None
    pressed: Pressed | None = None

    def let_go(self) -> tuple[float, float] | None:
        """From when pressure is let go to when it has come to rest; None where there was none.

        A lid is opened with a little pressure left, and meat at boiling keeps up what is left for minutes: it
        is over where the curve stays at what it ends with, not where a gauge first reads zero.
        """
        if self.pressed is None or self.curve is None:
            return None
        time, pressure = self.curve.T
        over = pressure - np.median(pressure[time >= time[-1] - REST_S])
        above = time[(time > self.pressed.vent_s) & (over > REST_PA)]
        return self.pressed.vent_s, float(above[-1]) if len(above) else self.pressed.vent_s


def headspace_of(trial: Trial) -> Headspace:
    """The headspace of a load: measured, or by the fryer's model when it has a lid under pressure."""
    atmosphere = trial.plan.site.atmosphere_pa
    if trial.gauge is not None:
        time, gauge = calm(*trial.gauge).T
        return Headspace(np.column_stack([time, atmosphere + np.maximum(gauge, 0.0)]), trial.pressed)
    if not trial.plan.program.under_pressure:
        return Headspace()
    told = spans(trial.plan)
    pieces = [piece_class(trial.plan, k) for k in trial.plan.kinds]
    raw = run(Cook(vat=vat(trial.plan), pieces=pieces, spans=told))
    keep = np.r_[True, np.diff(raw.time_s) > 1e-6]
    curve = np.column_stack([raw.time_s[keep], raw.pressure_pa[keep]])
    return Headspace(curve, trial.pressed or _modelled(raw, told))


def _modelled(raw: RawHistory, told: Sequence[Span]) -> Pressed | None:
    """What the lid did in a simulation: closed, let go, at zero."""
    lids = np.array([span.lid for span in told])[np.minimum(raw.span, len(told) - 1)]
    closed, vented = np.flatnonzero(lids == Lid.PRESSURE), np.flatnonzero(lids == Lid.VENT)
    if not len(closed) or not len(vented):
        return None
    start, vent, zero = max(closed[0] - 1, 0), max(vented[0] - 1, 0), vented[-1]
    times = raw.time_s[[start, vent, zero]].tolist()
    plateau = float(raw.pressure_pa[vent] - raw.pressure_pa[0])
    return Pressed(closed_s=times[0], full_s=None, vent_s=times[1], zero_s=times[2], plateau_pa=plateau)


def engine_question(
    plan: FryPlan,
    trial: Trial,
    tracers: list[PieceClass],
    head: Headspace | None = None,
    oil: Array | None = None,
) -> Cook:
    """The engine's question: measured oil, and measured pressure unless the lid itself is asked about
    (``head`` None). ``oil`` is the trial's calmed oil, given by callers that ask often.
    """
    last = max([trial.lift_s + 1.0, *(float(p.curve.time_s[-1]) for p in trial.probes)])
    whole = trial.loss is not None or trial.weight is not None or head is None
    pieces = [*tracers, *([piece_class(plan, k) for k in plan.kinds if not k.heavy] if whole else [])]
    assert trial.oil is not None
    calmed = calm(*trial.oil) if oil is None else oil
    told = Prescribed(oil_temp_c=calmed, pressure_pa=None if head is None else head.curve)
    set_c = plan.oil_start_c
    rest = Span(duration_s=max(last - trial.lift_s, 1.0), set_c=set_c, lid=Lid.REST)
    lids = _lid_spans(trial.pressed if head is None else head.pressed, trial.lift_s, set_c)
    return Cook(vat=vat(plan), pieces=pieces, spans=[*lids, rest], prescribed=told)


def _lid_spans(pressed: Pressed | None, lift_s: float, set_c: float) -> list[Span]:
    """The time in the oil by the state of the lid: steps end where it changes, and a vent is stepped as a
    vent.
    """
    marks = [(0.0, Lid.OPEN)]
    if pressed is not None:
        zero = lift_s if pressed.zero_s is None else pressed.zero_s
        full = pressed.closed_s if pressed.full_s is None else pressed.full_s
        marks += [
            (pressed.closed_s, Lid.PRESSURE),
            (full, Lid.PRESSURE),
            (pressed.vent_s, Lid.VENT),
            (zero, Lid.OPEN),
        ]
    ends = [*(time for time, _ in marks[1:]), lift_s]
    clipped = [
        (min(max(a, 0.0), lift_s), min(b, lift_s), lid) for (a, lid), b in zip(marks, ends, strict=True)
    ]
    return [Span(duration_s=b - a, set_c=set_c, lid=lid) for a, b, lid in clipped if b - a > SHORTEST_SPAN_S]
