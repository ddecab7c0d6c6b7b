"""Did the probe sit at the coldest spot? Fits the curve as a centre reading and as one off the centre.

A reading off the centre starts to rise sooner and is hotter all the way; no size of piece makes a
centre reading look like it. Conduction between centre and boiling front is solved here with the
front's temperature and depth taken from the engine.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate.trial import FITTING, Probed, Trial, calm, engine_question, headspace_of, tracer
from frywright.model.findings import Note
from frywright.physics.inputs import PieceClass, quadratic
from frywright.physics.solve import RawHistory, run_many

Array = NDArray[np.float64]
NODES = 48
STEP_S = 4.0
PLACES = np.array([0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7])
SIZES = np.geomspace(0.65, 1.6, 10)
CLEARLY_N = 2.0
LEAST_PLACE = 0.2
LEAST_MISFIT_K = 0.5
"""When a probe is named: this many times the misfit, this far out, this much misfit at least. Estimates from
synthetic logs.
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Placement:
    """Where a probe seems to have sat: share of the way from the centre to the surface."""

    place_frac: float
    centre_rms_k: float
    best_rms_k: float
    colder_k: float  # how much colder the centre was at the lift
    note: Note

    @property
    def off_centre(self) -> bool:
        """Whether the curve clearly fits an off-centre reading better."""
        return self.note.kind == "off_centre"


def profiles(pieces: Sequence[PieceClass], raws: Sequence[RawHistory], time_s: Array) -> Array:
    """Temperatures (piece, time, node) on even nodes from the centre to the surface [degC]; each piece is the
    first lane of its run.

    Pieces of one shape and food, which differ in size, are solved side by side.
    """
    piece, n = pieces[0], pieces[0].shape_n
    r = np.stack([np.linspace(0.0, p.half_thickness_m, NODES) for p in pieces])
    half, faces = r[:, -1:], 0.5 * (r[:, 1:] + r[:, :-1])
    edges = np.concatenate([np.zeros_like(half), faces, half], axis=1)
    volume, area, apart = np.diff(edges ** (n + 1)) / (n + 1), faces**n, np.diff(r)
    k0, k1, k2 = quadratic(piece.conductivity_w_mk, "conductivity_w_mk")
    c0, c1, c2 = quadratic(piece.heat_capacity_j_kgk, "heat_capacity_j_kgk")
    bone = r < np.array([[p.bone_radius_m] for p in pieces])
    grid = np.arange(0.0, time_s[-1] + STEP_S, STEP_S)
    front_c = np.array([np.interp(grid, raw.time_s, raw.front_temp_c[:, 0]) for raw in raws])
    front_m = half - np.array([np.interp(grid, raw.time_s, raw.crust_m[:, 0]) for raw in raws])
    out = np.empty((len(grid), *r.shape))
    out[0] = temp = np.full(r.shape, piece.start_temp_c)
    for i in range(1, len(grid)):
        conduct = np.where(bone, piece.bone_conductivity_w_mk, k0 + temp * (k1 + k2 * temp))
        heat = np.where(bone, piece.bone_heat_j_m3k, piece.density_kg_m3 * (c0 + temp * (c1 + c2 * temp)))
        flow = STEP_S * 0.5 * (conduct[:, 1:] + conduct[:, :-1]) * area / apart
        outside = r >= front_m[:, i, None] - 0.5 * half / NODES
        temp = out[i] = _implicit(temp, flow, heat * volume, outside, front_c[:, i])
    return np.array(
        [[np.interp(time_s, grid, node) for node in one.T] for one in out.swapaxes(0, 1)]
    ).swapaxes(1, 2)


def _implicit(temp: Array, flow: Array, store: Array, outside: NDArray[np.bool_], front_c: Array) -> Array:
    """One implicit step of all pieces, as one system of equations whose blocks touch nowhere."""
    from scipy.linalg.lapack import dgtsv

    none = np.zeros((len(temp), 1))
    lower, upper = np.hstack([-flow, none]), np.hstack([none, -flow])
    middle = store + np.hstack([flow, none]) + np.hstack([none, flow])
    right = np.where(outside, front_c[:, None], store * temp)
    middle[outside] = 1.0
    upper[:, 1:][outside[:, :-1]] = 0.0
    lower[:, :-1][outside[:, 1:]] = 0.0
    found = dgtsv(lower.ravel()[:-1], middle.ravel(), upper.ravel()[1:], right.ravel())[3]
    return np.asarray(found).reshape(temp.shape)


def placement(trial: Trial, centre_rms_k: float, n: int = 0) -> Placement:
    """Judge where probe ``n`` of a trial sat.

    ``centre_rms_k`` is what a fit as centre reading, size and shape free, leaves over
    (:func:`frywright.calibrate.fit.fit`); readings off the centre are tried with the size free.
    """
    probed = trial.probes[n]
    end = trial.pressed.vent_s if trial.pressed is not None else trial.lift_s  # a vent boils hot cores down
    inside = probed.curve.time_s <= min(end, trial.lift_s)
    time = np.arange(0.0, float(probed.curve.time_s[inside][-1]), 5.0)
    read = np.interp(time, probed.curve.time_s, probed.curve.core_c)
    rms = np.empty((len(SIZES), len(PLACES)))
    lifts = np.empty((len(SIZES), len(PLACES)))
    for i, curves in enumerate(_by_size(trial, probed, time)):
        for j, place in enumerate(PLACES):
            at = curves[:, round(place * (NODES - 1))]
            rms[i, j] = np.sqrt(np.mean((at - read) ** 2))
            lifts[i, j] = at[-1] - curves[-1, 0]
    least = [_lowest(rms[:, j]) for j in range(len(PLACES))]
    centre, best = min(centre_rms_k, least[0]), int(np.argmin(least))
    colder = float(lifts[int(np.argmin(rms[:, best])), best])
    values: dict[str, float | str] = {
        "channel": probed.curve.channel,
        "place_frac": float(PLACES[best]),
        "rms_k": least[best],
        "centre_k": centre,
        "colder_k": colder,
    }
    if centre > max(LEAST_MISFIT_K, CLEARLY_N * least[best]) and PLACES[best] >= LEAST_PLACE:
        text = (
            "{channel} did not sit at the coldest spot: its curve fits a reading {place_frac} of the way to"
            " the surface, where it is {colder_k} hotter at the lift. Probe again; no verdict from it."
        )
        note = Note(kind="off_centre", text=text, values=values)
    elif centre > 3.0 * LEAST_MISFIT_K:
        note = Note(
            kind="odd_curve",
            text=(
                "{channel} fits no reading inside such a piece (misfit {centre_k}): look at the probe and the"
                " cut chosen."
            ),
            values=values,
        )
    else:
        note = Note(
            kind="centre", text="{channel} fits a reading at the centre (misfit {centre_k}).", values=values
        )
    return Placement(
        place_frac=float(PLACES[best]),
        centre_rms_k=centre,
        best_rms_k=least[best],
        colder_k=colder,
        note=note,
    )


def _by_size(trial: Trial, probed: Probed, time: Array) -> Array:
    """Temperatures (size, time, node) inside the probed piece, were it of each of the sizes."""
    head, oil = headspace_of(trial), None if trial.oil is None else calm(*trial.oil)
    base = tracer(trial.plan, probed, probed.curve.start_c)
    pieces = [
        replace(base, half_thickness_m=base.half_thickness_m * size, bone_radius_m=0.0) for size in SIZES
    ]
    return profiles(
        pieces, run_many([engine_question(trial.plan, trial, [p], head, oil) for p in pieces], FITTING), time
    )


def _lowest(rms: Array) -> float:
    """Smallest misfit over size, by a parabola through the squares around the lowest."""
    i = int(np.clip(np.argmin(rms), 1, len(rms) - 2))
    a, b, c = rms[i - 1 : i + 2] ** 2
    bend = a - 2 * b + c
    shift = 0.5 * (a - c) / bend if bend > 0 else 0.0
    return float(max(np.sqrt(max(b - 0.25 * (a - c) * shift, 0.0)), 0.3 * np.sqrt(b)))
