"""Why a log cannot carry a fit, and what to doubt of one that was made."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.parameters import LID, PARAMETERS, Fitted
from frywright.calibrate.trial import Probed, Trial
from frywright.model.findings import Note

Array = NDArray[np.float64]
TOO_ALIKE = 0.9
WEAK_SHARE = 0.25
LEAST_RISE_K, MOST_HOLES = 25.0, 0.3
MOST_MISFIT_K, BOUND_MISFIT_K = 1.5, 0.7
MOST_SENSOR_N = 3.0
"""When to warn and when to refuse. Estimates."""
RAW_KG_M3, LEAST_OF_BALL, MOST_OF_BALL = 1050.0, 0.2, 1.0
"""Raw meat's density (Choi-Okos, engine), and the half thickness of a piece over the radius of a ball of its
volume: flat pieces of the catalog have 0.37 to 0.52, a ball 1."""
MIXED = "Probes of more than one cut cannot be fitted together; calibrate one cut at a time."
NO_PROBE = "The shape of a piece needs the core curve of a probed piece; there is none."
NO_OIL = "A fit needs the oil curve of the load; there is none."
NO_GAUGE = "The lid needs a gauge curve with a time under pressure; there is none."
APART = "Calibrate the lid by itself, then the pieces."
NO_WEIGHT = "The area factor needs weights before and after."
NO_WEIGHT_DRIP = "The share of water let go needs weights before and after."


def _lid_refusals(trials: Sequence[Trial], free: Sequence[str]) -> list[Note]:
    """Why a lid's figures cannot be fitted."""
    notes = []
    if any(trial.gauge is None or trial.pressed is None for trial in trials):
        notes.append(Note(kind="no_gauge", text=NO_GAUGE))
    if not set(free) <= set(LID):
        notes.append(Note(kind="apart", text=APART))
    return notes


def refusals(trials: Sequence[Trial], free: Sequence[str]) -> list[Note]:
    """Why this cannot be fitted, before trying."""
    lid = bool(set(LID) & set(free))
    probes = [] if lid else [(trial, probed) for trial in trials for probed in trial.probes]
    cuts = {probed.cut for _, probed in probes}
    notes = []
    if len(cuts) > 1 and any(PARAMETERS[name].place == "cut" for name in free):
        notes.append(Note(kind="mixed", text=MIXED))
    if {"half_thickness_m", "shape_n"} & set(free) and not probes:
        notes.append(Note(kind="no_probe", text=NO_PROBE))
    for trial, probed in probes:
        notes += _holes(trial, probed)
    if any(trial.oil is None for trial in trials):
        notes.append(Note(kind="no_oil", text=NO_OIL))
    if lid:
        notes += _lid_refusals(trials, free)
    weighed = any(trial.loss is not None or trial.weight is not None for trial in trials)
    asked = {"area_factor_n": NO_WEIGHT, "drip_frac": NO_WEIGHT_DRIP}
    missing = [] if weighed else [text for name, text in asked.items() if name in free]
    return notes + [Note(kind="no_weight", text=text) for text in missing]


def _holes(trial: Trial, probed: Probed) -> list[Note]:
    """Too little of the cook in a core curve, up to the lift."""
    curve, notes = probed.curve, []
    inside = curve.time_s <= trial.lift_s
    rise = float(np.max(curve.core_c[inside], initial=curve.start_c) - curve.start_c)
    if rise < LEAST_RISE_K:
        text = "{channel} rises only {rise_k}: too little of the cook to fit."
        notes.append(Note(kind="short", text=text, values={"channel": curve.channel, "rise_k": rise}))
    hole = sum(min(b, trial.lift_s) - a for a, b in curve.gaps if a < trial.lift_s)
    if hole > MOST_HOLES * min(trial.lift_s, float(curve.time_s[-1])):
        text = "{channel} has gaps of {gap_s} in all: too many to fit."
        notes.append(Note(kind="holes", text=text, values={"channel": curve.channel, "gap_s": hole}))
    return notes


def implausible(trials: Sequence[Trial], values: dict[str, float]) -> list[Note]:
    """A size that cannot belong to the weight given: a weight in the wrong unit, or another piece."""
    for trial in trials if "half_thickness_m" in values else ():
        for probed in trial.probes:
            cut = next(k.cut for k in trial.plan.kinds if k.cut.key == probed.cut)
            size = values["half_thickness_m"] * (probed.piece_mass_kg / cut.reference_mass_kg) ** (1.0 / 3.0)
            ball = (0.75 * probed.piece_mass_kg / (np.pi * RAW_KG_M3)) ** (1.0 / 3.0)
            if not LEAST_OF_BALL < size / ball < MOST_OF_BALL:
                text = (
                    "{channel}: a half thickness of {size_m} does not belong to a piece of {mass_kg}; check"
                    " the weight and its unit."
                )
                told = {"size_m": size, "mass_kg": probed.piece_mass_kg}
                return [Note(kind="implausible", text=text, values={"channel": probed.curve.channel, **told})]
    return []


def blind(free: Sequence[str]) -> Note:
    """The log does not feel what was asked of it."""
    text = "The log does not feel {names}; nothing can be said about them."
    return Note(kind="blind", text=text, values={"names": ", ".join(free)})


def misfit(rms_k: float) -> list[Note]:
    """A log that the engine misses by too much."""
    text = (
        "The model misses the log by {rms_k}: another cut, a moved probe or a wrong weight. Nothing is"
        " calibrated."
    )
    return [Note(kind="misfit", text=text, values={"rms_k": rms_k})] if rms_k > MOST_MISFIT_K else []


def warnings(
    parameters: Sequence[Fitted], correlations: Sequence[tuple[str, str, float]], sensor: Array, rms_k: float
) -> list[Note]:
    """What to doubt of a fit.

    ``sensor`` are offsets and drifts of the probes over their thermometer's error.
    """
    notes = []
    for a, b, share in correlations:
        if abs(share) > TOO_ALIKE:
            text = (
                "{first} and {second} can hardly be told apart from this log (correlation {share}); only"
                " together do they mean something."
            )
            values: dict[str, float | str] = {"first": a, "second": b, "share": round(share, 3)}
            notes.append(Note(kind="alike", text=text, values=values))
    for p in parameters:
        notes += _ends(p, rms_k)
    worst = float(np.max(np.abs(sensor), initial=0.0))
    if worst > MOST_SENSOR_N:
        text = "A probe would have to be {times} times further off than its thermometer's error; check it."
        notes.append(Note(kind="sensor", text=text, values={"times": round(worst, 1)}))
    return notes


def _ends(p: Fitted, rms_k: float) -> list[Note]:
    bound, notes = PARAMETERS[p.name], []
    if p.sd > WEAK_SHARE * max(abs(p.value), 0.02 * bound.high):
        text = "{name} is hardly felt in this log; its interval is wide."
        notes.append(Note(kind="weak", text=text, values={"name": p.name}))
    if min(p.value - bound.low, bound.high - p.value) < 1e-4 * (bound.high - bound.low):
        text = "{name} ran to the end of its range; look at the log again."
        notes.append(Note(kind="at_bound", text=text, values={"name": p.name}))
        if p.name == "shape_n" and rms_k > BOUND_MISFIT_K:
            text = (
                "The shape ran to the end of its range and the model still misses the log by {rms_k}: such"
                " meat conducts otherwise than the model's. Do not rely on it under another program."
            )
            notes.append(Note(kind="shape_at_bound", text=text, values={"rms_k": rms_k}))
    return notes
