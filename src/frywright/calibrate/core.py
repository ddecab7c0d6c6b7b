"""The core curve of a probe, made fit for a verdict: where it was lifted, what it misreads, where it has
gaps.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.thermometer import corrected
from frywright.calibrate.timeline import GAP_S
from frywright.model.findings import Note

Array = NDArray[np.float64]
FASTEST_CORE_K_S = 1.5
"""A core 6 mm deep warms slower than this in any oil; a probe that leaves the meat does not. Estimate."""
LEAST_MOVE_K = 5.0
MOVE_WINDOW_S = 4.0
NO_CREDIT_C = -40.0
CARRY_S = 300.0
BEFORE_S = 30.0
FIRST_S = 8.0
ABOVE_BOILING_K = 4.0
COLD_C, WARM_C = -3.0, 40.0


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbeCurve:
    """Readings of one probe from the drop on, corrected; ``time_s`` 0 is the drop. NaN are left out."""

    channel: str
    time_s: Array
    core_c: Array
    start_c: float
    lift_s: float
    gaps: tuple[tuple[float, float], ...]
    left_s: float | None  # when the probe left the meat, from the drop
    notes: tuple[Note, ...]


def moves_in(time_s: Array, core_c: Array) -> list[float]:
    """Moments [s] at which a probe moved: changes faster than heat gets into meat."""
    known = np.isfinite(core_c)
    t, y = time_s[known], core_c[known]
    if len(t) < 3:
        return []
    later = np.minimum(np.searchsorted(t, t + MOVE_WINDOW_S), len(t) - 1)
    span, change = t[later] - t, y[later] - y
    fast = (
        (np.abs(change) > FASTEST_CORE_K_S * np.maximum(span, 1e-9))
        & (np.abs(change) > LEAST_MOVE_K)
        & (span > 0)
        & (span <= GAP_S)
    )
    places = np.flatnonzero(fast)
    if not len(places):
        return []
    first = places[np.r_[True, np.diff(places) > 5]]
    return [float(t[i]) for i in first]


def curve_of(
    channel: str,
    time_s: Array,
    core_c: Array,
    drop_s: float,
    lift_s: float,
    until_s: float,
    correction: Sequence[tuple[float, float]] = (),
) -> ProbeCurve | None:
    """The curve of a probe over one load, correction first; None when it was in no cold piece at the drop.

    It ends when the probe leaves the meat, at ``until_s`` (the next drop) or after the carry-over.
    """
    end = min(until_s, lift_s + CARRY_S)
    part = slice(*np.searchsorted(time_s, (drop_s - BEFORE_S, end + GAP_S)))
    time_s, true_c = time_s[part], corrected(core_c[part], correction)
    moved = [m for m in moves_in(time_s, true_c) if m >= drop_s + 5.0]
    left = next((m for m in moved if m < end), None)
    if left is not None:
        end = left
    inside = (time_s >= drop_s) & (time_s <= end) & np.isfinite(true_c)
    before = (time_s >= drop_s - BEFORE_S) & (time_s < drop_s) & np.isfinite(true_c)
    if inside.sum() < 10:
        return None
    t, y = time_s[inside] - drop_s, true_c[inside]
    first = float(np.median(y[: max(1, int(np.searchsorted(t, FIRST_S)))]))
    start = float(np.median(true_c[before])) if before.any() else first
    if abs(start - first) > 2.0:  # the probe went in at the drop
        start = first
    notes = []
    if left is not None:
        kind, text = (
            "lifted",
            "{channel}: the probe left the meat at {left_s} after the drop; what came after is not used.",
        )
        notes.append(Note(kind=kind, text=text, values={"channel": channel, "left_s": left - drop_s}))
    wide = np.flatnonzero(np.diff(t) > GAP_S)
    gaps = tuple((float(t[i]), float(t[i + 1])) for i in wide)
    for a, b in gaps:
        notes.append(
            Note(
                kind="gap",
                text=(
                    "{channel}: no readings for {gap_s} from {from_s} after the drop; the gap is not bridged."
                ),
                values={"channel": channel, "gap_s": b - a, "from_s": a},
            )
        )
    return ProbeCurve(
        channel=channel,
        time_s=t,
        core_c=y,
        start_c=start,
        lift_s=lift_s - drop_s,
        gaps=gaps,
        left_s=None if left is None else left - drop_s,
        notes=tuple(notes),
    )


def unbridged(curve: ProbeCurve) -> tuple[Array, Array]:
    """Times and temperatures for a verdict: inside a gap nothing is credited."""
    t, y = curve.time_s, curve.core_c
    for a, b in reversed(curve.gaps):
        i = int(np.searchsorted(t, b))
        t = np.insert(t, i, (a + 1e-3, b - 1e-3))
        y = np.insert(y, i, (NO_CREDIT_C, NO_CREDIT_C))
    return t, y


def scale_note(curve: ProbeCurve, boiling_c: float) -> Note | None:
    """Whether the readings can be the core of a piece at all; a wrong unit is named."""
    start, high = curve.start_c, float(np.max(curve.core_c))
    as_f = ((start - 32.0) / 1.8, (high - 32.0) / 1.8)
    as_c = (start * 1.8 + 32.0, high * 1.8 + 32.0)
    values: dict[str, float | str] = {"channel": curve.channel, "start_c": start, "high_c": high}
    if high > boiling_c + ABOVE_BOILING_K:
        if COLD_C <= as_f[0] <= WARM_C and as_f[1] <= boiling_c + ABOVE_BOILING_K:
            return Note(
                kind="scale",
                text=(
                    "{channel} starts at {start_c} and reaches {high_c}, above boiling: these look like °F"
                    " read as °C."
                ),
                values=values,
            )
        return Note(
            kind="scale",
            text=(
                "{channel} reaches {high_c}, above boiling water at this pressure: the probe is not in the"
                " meat, or it is mis-scaled."
            ),
            values=values,
        )
    if start < COLD_C and COLD_C <= as_c[0] <= WARM_C and as_c[1] <= boiling_c + ABOVE_BOILING_K:
        return Note(
            kind="scale",
            text="{channel} starts at {start_c}, frozen: these look like °C read as °F.",
            values=values,
        )
    if not COLD_C <= start <= WARM_C:
        return Note(
            kind="scale",
            text=(
                "{channel} starts at {start_c}: no piece is dropped at that temperature. The probe is"
                " mis-scaled or was not in a piece."
            ),
            values=values,
        )
    return None
