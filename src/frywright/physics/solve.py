"""Packs explicit inputs, runs the kernels and returns raw histories."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError, SolveError
from frywright.physics import grid, ranges
from frywright.physics.inputs import ROUTINE, Lid, PieceClass, Precision, Span, Vat, quadratic
from frywright.physics.kernels import layout as at
from frywright.physics.kernels.march import STAGE_TIMED_OUT, TOO_MANY_STEPS, Given, Live, Trace, march
from frywright.physics.kernels.steam import boiling_temp_c
from frywright.physics.kernels.transport import make_cells

Array = NDArray[np.float64]
EVENT_STEPS, STEP_ROOM, MOST_STEPS = 4000, 2.5, 200_000
"""Steps a march may take: a fixed number for upsets and events, and so many times those of the longest step,
but never more than MOST_STEPS, which holds the trace of 16 lanes under 320 MB. Own estimates: the heater of
the smallest vat drawn in the tests switches every 20 s and costs 4 short steps each time; a program of two
hours at ``FINE`` takes about 30,000."""
LANES_TOGETHER = 16
CURVES = (("oil_temp_c", ranges.OIL_CURVE), ("pressure_pa", ranges.PRESSURE_CURVE))


@dataclass(frozen=True, slots=True, kw_only=True)
class Prescribed:
    """Curves that replace the kettle or the headspace: rows of (time s, value)."""

    oil_temp_c: Sequence[tuple[float, float]] | None = None
    pressure_pa: Sequence[tuple[float, float]] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Cook:
    """One question to the engine: this vat, these piece classes, these spans."""

    vat: Vat
    pieces: Sequence[PieceClass]
    spans: Sequence[Span]
    prescribed: Prescribed = Prescribed()

    def __post_init__(self) -> None:
        if not self.pieces:
            raise InputError("pieces", "none", "at least one piece class")
        if not self.spans:
            raise InputError("spans", "none", "at least one span")


@dataclass(frozen=True, slots=True, kw_only=True)
class SolveReport:
    """How the march went."""

    steps: int
    rejected: int
    smallest_step_s: float
    energy_gap_frac: float
    span_timed_out: bool
    forced: int = 0
    """Steps kept although their tries kept failing: an event in them is less sharp than it should be."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RawHistory:
    """Curves of one march. Lane arrays are (time, class).

    ``front_temp_c`` is the outer edge of the wet meat, under a wet coat. ``steam_pa`` is the partial pressure
    of steam over the oil. ``heat_j_m2`` is the heat a class took up since the drop, per square metre and, as
    ``heat_j``, in all. ``crust_temp_c`` (time, class, depth) are temperatures at
    :data:`~frywright.physics.kernels.layout.CRUST_DEPTHS` of the crust's thickness, outermost first; the
    front's where there is no crust yet.
    """

    time_s: Array
    oil_temp_c: Array
    pressure_pa: Array
    lid_temp_c: Array
    heater_j: Array
    steam_pa: Array
    span: NDArray[np.int64]
    core_temp_c: Array
    front_temp_c: Array
    surface_temp_c: Array
    crust_m: Array
    evaporated_kg_m2: Array
    htc_w_m2k: Array
    film_kg_m2: Array
    heat_j_m2: Array
    heat_j: Array
    crust_temp_c: Array
    final_core_c: Array
    final_core_share: Array
    report: SolveReport


def run(cook: Cook, precision: Precision = ROUTINE) -> RawHistory:
    """Solve one cook.

    Raises
    ------
    SolveError
        The march took more steps than :func:`most_steps` allows or left a temperature that is not finite.
    """
    return run_many([cook], precision)[0]


def run_many(cooks: Sequence[Cook], precision: Precision = ROUTINE) -> list[RawHistory]:
    """Solve many cooks; they are interleaved so that one instruction serves several."""
    histories: list[RawHistory] = []
    group: list[Cook] = []
    lanes = 0
    for cook in cooks:
        if group and lanes + len(cook.pieces) > LANES_TOGETHER:
            histories += _run_group(group, precision)
            group, lanes = [], 0
        group.append(cook)
        lanes += len(cook.pieces)
    return histories + (_run_group(group, precision) if group else [])


def _run_group(cooks: Sequence[Cook], precision: Precision) -> list[RawHistory]:
    given, live, trace = prepare(cooks, precision)
    march(given, live, trace)
    return [_history(given, live, trace, k) for k in range(len(cooks))]


def prepare(cooks: Sequence[Cook], precision: Precision) -> tuple[Given, Live, Trace]:
    """Packed arrays of a group of cooks, ready for :func:`march`."""
    lane, cook, stage, table = _pack(cooks, precision)
    mesh = grid.build(lane, precision.n_core, precision.n_crust, precision.grading)
    n_lane = lane.shape[1]
    live = Live(
        scalar=np.zeros((3, at.N_SCALAR, n_lane)),
        state=np.zeros((3, at.N_COOK_SCALAR, len(cooks))),
        control=np.zeros((at.N_CONTROL, len(cooks))),
        work=np.zeros((at.N_WORK, n_lane)),
        cells=make_cells(mesh.geo, grid.properties(lane, precision.n_core, precision.n_crust), n_lane),
    )
    _start(lane, live, cooks, precision)
    given = Given(
        lane, cook, stage, table, mesh.bone_dist, precision.n_core, precision.passes, precision.steady_m
    )
    rows = max(most_steps(c, precision) for c in cooks)
    trace = Trace(np.empty((rows, at.N_TRACE, len(cooks))), np.empty((rows, at.N_LANE_TRACE, n_lane)))
    return given, live, trace


def most_steps(cook: Cook, precision: Precision) -> int:
    """Most steps a march of this cook may take, from its spans and its longest step."""
    whole = sum(span.duration_s for span in cook.spans)
    return min(EVENT_STEPS + int(STEP_ROOM * whole / precision.max_step_s), MOST_STEPS)


def _pack(cooks: Sequence[Cook], precision: Precision) -> tuple[Array, Array, Array, Array]:
    n_lane = sum(len(c.pieces) for c in cooks)
    n_span = max(len(c.spans) for c in cooks)
    lane, vat = np.zeros((at.N_LANE, n_lane)), np.zeros((at.N_COOK, len(cooks)))
    stage = np.full((at.N_STAGE, n_span, len(cooks)), -1.0)
    first = 0
    for k, cook in enumerate(cooks):
        for i, piece in enumerate(cook.pieces, start=first):
            lane[:, i] = _lane_column(piece, k, precision)
        vat[:, k] = _vat_column(cook, first, precision)
        first += len(cook.pieces)
        for number, span in enumerate(cook.spans):
            ends_at = -1.0 if span.ends_at_s is None else span.ends_at_s
            stage[:, number, k] = (span.duration_s, span.set_c, span.lid, span.until, span.value, ends_at)
    return lane, vat, stage, _tables(cooks)


def _lane_column(piece: PieceClass, k: int, precision: Precision) -> Array:
    column = np.zeros(at.N_LANE)
    conductivity = quadratic(piece.conductivity_w_mk, "conductivity_w_mk")
    heat = np.array(quadratic(piece.heat_capacity_j_kgk, "heat_capacity_j_kgk")) * piece.density_kg_m3
    column[[at.K0, at.K1, at.K2]] = conductivity
    column[[at.C0, at.C1, at.C2]] = heat
    bone_cells = max(2, round(grid.BONE_SHARE * precision.n_core)) if piece.bone_radius_m > 0 else 0
    for row, value in (
        (at.SHAPE, piece.shape_n),
        (at.RADIUS, piece.half_thickness_m),
        (at.AREA, piece.area_m2),
        (at.BONE_RADIUS, piece.bone_radius_m),
        (at.K_BONE, piece.bone_conductivity_w_mk),
        (at.C_BONE, piece.bone_heat_j_m3k),
        (at.K_CRUST, piece.crust_conductivity_w_mk),
        (at.C_CRUST, piece.crust_heat_j_m3k),
        (at.WATER, piece.water_kg_m3),
        (at.FILM, piece.film_kg_m2),
        (at.START_TEMP, piece.start_temp_c),
        (at.H_STILL, piece.still_h_w_m2k),
        (at.H_GAIN, piece.gain_h_j_kgk),
        (at.H_CAP, piece.cap_h_w_m2k),
        (at.H_LAG, piece.lag_h_s),
        (at.VAPOUR_CP, piece.vapour_cp_j_kgk),
        (at.COOK, k),
        (at.BONE_CELLS, bone_cells),
        (at.DRIP, piece.drip_frac),
        (at.DRIP_LAG, piece.drip_lag_s),
        (at.COAT, piece.coat_thickness_m),
        (at.COAT_DRY, piece.coat_thickness_m / piece.coat_conductivity_w_mk),
        (at.COAT_WET, piece.coat_thickness_m / piece.coat_wet_conductivity_w_mk),
        (at.COAT_SOLIDS, piece.coat_heat_j_m2k),
        (at.STILL_REFERENCE, piece.still_reference_k),
        (at.DIFFUSIVITY, piece.vapour_diffusivity_m2_s),
    ):
        column[row] = value
    return column


def _vat_column(cook: Cook, first: int, precision: Precision) -> Array:
    vat, column = cook.vat, np.zeros(at.N_COOK)
    for row, value in (
        (at.OIL_MASS, vat.oil_mass_kg),
        (at.OIL_CP0, vat.oil_cp_j_kgk[0]),
        (at.OIL_CP1, vat.oil_cp_j_kgk[1]),
        (at.METAL_HEAT, vat.metal_heat_j_k),
        (at.HEATER, vat.heater_w),
        (at.SWING, vat.swing_k),
        (at.BAND, vat.band_k),
        (at.LOSS_UA, vat.loss_w_k),
        (at.ROOM_TEMP, vat.room_temp_c),
        (at.ATMOSPHERE, vat.atmosphere_pa),
        (at.HEAD_VOLUME, vat.head_volume_m3),
        (at.HEAD_TEMP_K, vat.head_temp_c + 273.15),
        (at.RELIEF_GAUGE, vat.relief_gauge_pa),
        (at.RELIEF_SLOPE, vat.relief_slope_kg_spa),
        (at.LEAK_AREA, vat.leak_area_m2),
        (at.VENT_AREA, vat.vent_area_m2),
        (at.BREATHER_AREA, vat.breather_area_m2),
        (at.LID_UA, vat.lid_ua_w_k),
        (at.LID_HEAT, vat.lid_heat_j_k),
        (at.LID_ROOM_UA, vat.lid_room_ua_w_k),
        (at.AIR_H, vat.air_h_w_m2k),
        (at.AIR_TEMP, vat.air_temp_c),
        (at.MAX_STEP, precision.max_step_s),
        (at.MAX_TSAT_STEP, precision.max_boiling_step_k),
        (at.FIRST_LANE, first),
        (at.FIRST_STEP, precision.first_step_s),
        (at.EARLY_STEP, precision.early_step_s),
        (at.EARLY_SHARE, precision.early_frac),
        (at.LAST_LANE, first + len(cook.pieces)),
        (at.OIL_TABLE, cook.prescribed.oil_temp_c is not None),
        (at.PRESSURE_TABLE, cook.prescribed.pressure_pa is not None),
        (at.ATMOSPHERE_BOILING, boiling_temp_c(vat.atmosphere_pa)),
        (at.AIR_VAPOUR, vat.air_vapour_kg_m3),
        (at.AIR_TRANSFER, vat.air_transfer_m_s),
    ):
        column[row] = value
    return column


def _tables(cooks: Sequence[Cook]) -> Array:
    curves = [(c.prescribed.oil_temp_c, c.prescribed.pressure_pa) for c in cooks]
    longest = max([1] + [len(curve) for pair in curves for curve in pair if curve is not None])
    table = np.zeros((2, 2, longest, len(cooks)))
    for k, pair in enumerate(curves):
        for which, curve in enumerate(pair):
            if curve is None:
                continue
            points = np.asarray(curve, dtype=float)
            if points.ndim != 2 or points.shape[1] != 2 or not np.all(np.isfinite(points)):
                raise InputError("prescribed", "curve", "rows of (time, value)")
            if np.any(np.diff(points[:, 0]) <= 0):
                raise InputError("prescribed", "curve", "rows of (time, value) with rising times")
            for value in (points[:, 1].min(), points[:, 1].max()):
                ranges.refuse(CURVES[which][0], float(value), CURVES[which][1], "prescribed")
            table[which, :, : len(points), k] = points.T
            table[which, :, len(points) :, k] = points[-1][:, None]
    return table


def _start(lane: Array, live: Live, cooks: Sequence[Cook], precision: Precision) -> None:
    n_lane, cells = lane.shape[1], live.cells
    n_cell = len(cells.v_up) // n_lane
    t, a = lane[at.START_TEMP], np.tile(lane[at.RADIUS], n_cell + 1)
    for level in (cells.t, cells.t_old, cells.t_older):
        level[:] = np.tile(t, n_cell + 1)
    live.scalar[:, at.FRONT] = lane[at.RADIUS]
    live.scalar[:, at.FRONT_VOLUME] = lane[at.FACE_VOLUME]
    bones = np.array([_bone_volume(lane, i) for i in range(n_lane)])
    live.scalar[:, at.FREE] = lane[at.FILM]
    live.scalar[:, at.HELD] = lane[at.WATER] * (lane[at.FACE_VOLUME] - bones)
    lane[at.WATER_START] = lane[at.FILM] + live.scalar[0, at.HELD]
    live.scalar[:, at.FRONT_THEN] = t
    _start_drip(lane, live, cooks)
    live.scalar[:, at.H_NOW] = lane[at.H_STILL]
    for level in (cells.v, cells.v_old, cells.v_older):
        level[:] = cells.v0 + a * (cells.v1 + a * (cells.v2 + a * cells.v3))
    sizes = np.diff(cells.v.reshape(-1, n_lane), axis=0)
    wet = t * (lane[at.C0] + t * (0.5 * lane[at.C1] + t * lane[at.C2] / 3))
    stored = sizes * wet
    for i in range(n_lane):
        bone = int(lane[at.BONE_CELLS, i])
        stored[:bone, i] = sizes[:bone, i] * lane[at.C_BONE, i] * t[i]
    for level in (cells.stored, cells.stored_older):
        level[: stored.size] = stored.ravel()
    live.work[at.RESTART] = 1.0
    live.work[[at.FRONT_TEMP, at.SURFACE_TEMP, at.FACE_TEMP, at.COLDEST]] = t
    for k, question in enumerate(cooks):
        vat, control = question.vat, live.control
        oil = question.prescribed.oil_temp_c
        live.state[:, at.OIL_TEMP, k] = oil[0][1] if oil is not None else vat.oil_start_c
        live.state[:, at.PRESSURE, k] = vat.atmosphere_pa
        live.state[:, at.AIR_PRESSURE, k] = vat.atmosphere_pa
        live.state[:, at.LID_TEMP, k] = vat.lid_start_c
        control[at.NEXT_STEP, k], control[at.LAST_STEP, k] = precision.first_step_s, precision.first_step_s
        control[at.SMALLEST, k], control[at.OIL_RESTART, k] = 1e9, 1.0
        control[at.CLOSED, k] = Lid.OPEN
        control[at.TSAT_OLD, k] = boiling_temp_c(vat.atmosphere_pa)
        control[at.CORE_OLD, k] = min(piece.start_temp_c for piece in question.pieces)


def _start_drip(lane: Array, live: Live, cooks: Sequence[Cook]) -> None:
    """All water held, and the drip of every meat cell; bone holds none."""
    pieces, cells = [piece for cook in cooks for piece in cook.pieces], live.cells
    n_lane = len(pieces)
    cells.phi[:], cells.phi_old[:] = 1.0, 1.0
    n_cell = len(cells.drip_mid) // n_lane
    cells.drip_mid[:] = np.tile([p.drip_mid_c for p in pieces], n_cell)
    cells.drip_half_steep[:] = np.tile([0.5 * p.drip_steep_per_k for p in pieces], n_cell)
    most = np.tile([0.5 * p.drip_frac for p in pieces], (n_cell, 1))
    for i in range(n_lane):
        most[: int(lane[at.BONE_CELLS, i]), i] = 0.0
    cells.drip_half[:] = most.ravel()


def _history(given: Given, live: Live, trace: Trace, k: int) -> RawHistory:
    control = live.control[:, k]
    steps = int(control[at.STEPS]) + 1
    first, last = int(given.cook[at.FIRST_LANE, k]), int(given.cook[at.LAST_LANE, k])
    cook, lane = trace.cook[:steps, :, k].copy(), trace.lane[:steps, :, first:last].copy()
    report = SolveReport(
        steps=steps - 1,
        rejected=int(control[at.REJECTED]),
        smallest_step_s=float(control[at.SMALLEST]),
        energy_gap_frac=energy_gap(given, live, k),
        span_timed_out=control[at.STATUS] == STAGE_TIMED_OUT,
        forced=int(control[at.FORCED]),
    )
    if control[at.STATUS] == TOO_MANY_STEPS or not np.all(np.isfinite(lane[:, at.TL_CORE])):
        raise SolveError("the march did not reach the end of the program", report)
    n_lane = given.lane.shape[1]
    sizes = np.diff(live.cells.v_old.reshape(-1, n_lane), axis=0)[: given.n_core, first:last]
    return RawHistory(
        time_s=cook[:, at.TR_TIME],
        oil_temp_c=cook[:, at.TR_OIL],
        pressure_pa=cook[:, at.TR_PRESSURE],
        lid_temp_c=cook[:, at.TR_LID_TEMP],
        heater_j=cook[:, at.TR_HEATER],
        steam_pa=cook[:, at.TR_STEAM],
        span=cook[:, at.TR_STAGE].astype(np.int64),
        core_temp_c=lane[:, at.TL_CORE],
        front_temp_c=lane[:, at.TL_FRONT_TEMP],
        surface_temp_c=lane[:, at.TL_SURFACE],
        crust_m=lane[:, at.TL_CRUST],
        evaporated_kg_m2=lane[:, at.TL_EVAPORATED],
        htc_w_m2k=lane[:, at.TL_H],
        film_kg_m2=lane[:, at.TL_FILM],
        heat_j_m2=lane[:, at.TL_HEAT],
        heat_j=lane[:, at.TL_HEAT] * given.lane[at.AREA, first:last],
        crust_temp_c=np.moveaxis(lane[:, at.TL_CRUST_OUTER : at.TL_CRUST_INNER + 1], 1, 2),
        final_core_c=live.cells.t_old.reshape(-1, n_lane)[: given.n_core, first:last].copy(),
        final_core_share=sizes / sizes.sum(axis=0),
        report=report,
    )


def energy_gap(given: Given, live: Live, k: int) -> float:
    """Largest share of the heat taken up that the books of a piece class do not explain."""
    first, last = int(given.cook[at.FIRST_LANE, k]), int(given.cook[at.LAST_LANE, k])
    worst = 0.0
    for i in range(first, last):
        stored = live.cells.stored[i :: given.lane.shape[1]].sum() + live.scalar[1, at.COAT_STORED, i]
        t, size = given.lane[at.START_TEMP, i], given.lane[at.FACE_VOLUME, i]
        bone = _bone_volume(given.lane, i)
        c0, c1, c2 = given.lane[[at.C0, at.C1, at.C2], i]
        start = (size - bone) * t * (c0 + t * (0.5 * c1 + t * c2 / 3))
        start += bone * given.lane[at.C_BONE, i] * t
        taken, gone = live.scalar[1, at.HEAT_IN, i], live.scalar[1, at.HEAT_OUT, i]
        worst = max(worst, abs(taken - gone - (stored - start)) / max(abs(taken) + abs(gone), 1.0))
    return float(worst)


def _bone_volume(lane: Array, i: int) -> float:
    n, a, b = lane[[at.SHAPE, at.RADIUS, at.BONE_RADIUS], i]
    return float(b ** (n + 1) / ((n + 1) * a**n)) if b > 0 else 0.0
