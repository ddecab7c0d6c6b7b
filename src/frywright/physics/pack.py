"""Packs questions into the arrays of the march: one row a piece class, one row a cook."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Sequence
from dataclasses import dataclass
from operator import attrgetter
from typing import Any

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError
from frywright.physics import grid, ranges
from frywright.physics.heat import by_heat
from frywright.physics.inputs import Cook, PieceClass, Precision, Span, Vat, polynomial
from frywright.physics.steam import boiling_temp_c

Array = NDArray[np.float64]
Numbers = NDArray[np.int64]

_PIECE = (
    "half_thickness_m",
    "bone_radius_m",
    "bone_conductivity_w_mk",
    "bone_heat_j_m3k",
    "crust_conductivity_w_mk",
    "crust_heat_j_m3k",
    "water_kg_m3",
    "film_kg_m2",
    "start_temp_c",
    "still_h_w_m2k",
    "gain_h_j_kgk",
    "cap_h_w_m2k",
    "lag_h_s",
    "vapour_cp_j_kgk",
    "drip_frac",
    "drip_lag_s",
    "drip_mid_c",
    "drip_steep_per_k",
    "coat_thickness_m",
    "coat_conductivity_w_mk",
    "coat_wet_conductivity_w_mk",
    "coat_heat_j_m2k",
    "still_reference_k",
    "vapour_diffusivity_m2_s",
    "shape_n",
    "mass_kg",
    "density_kg_m3",
    "area_factor_n",
)
PIECE_ROW = (
    "radius",
    "bone_radius",
    "area",
    "c0",
    "c1",
    "c2",
    "d0",
    "d1",
    "d2",
    "d3",
    "d4",
    "w1",
    "w2",
    "w3",
    "w4",
    "k_bone",
    "c_bone",
    "k_crust",
    "c_crust",
    "water",
    "film",
    "start_temp",
    "h_still",
    "h_gain",
    "h_cap",
    "h_lag",
    "vapour_cp",
    "centre_weight",
    "face_volume",
    "floor_volume",
    "bone_volume",
    "water_start",
    "drip_half",
    "drip_lag",
    "drip_mid",
    "drip_half_steep",
    "coat",
    "coat_dry",
    "coat_wet",
    "coat_solids",
    "still_reference",
    "diffusivity",
    "a0",
    "a1",
    "a2",
    "a3",
    "v0",
    "v1",
    "v2",
    "v3",
    "bone_half",
    "meat_half",
)
"""Fields of ``PieceGiven`` in lanes/group.h, in order."""
_VAT = (
    "oil_mass_kg",
    "metal_heat_j_k",
    "heater_w",
    "swing_k",
    "band_k",
    "loss_w_k",
    "room_temp_c",
    "atmosphere_pa",
    "head_volume_m3",
    "head_temp_c",
    "relief_gauge_pa",
    "relief_slope_kg_spa",
    "leak_area_m2",
    "vent_area_m2",
    "breather_area_m2",
    "lid_ua_w_k",
    "lid_heat_j_k",
    "lid_room_ua_w_k",
    "lid_start_c",
    "oil_start_c",
    "air_h_w_m2k",
    "air_temp_c",
    "air_vapour_kg_m3",
    "air_transfer_m_s",
)
COOK_ROW = (
    "oil_mass",
    "oil_cp0",
    "oil_cp1",
    "metal_heat",
    "heater",
    "swing",
    "band",
    "loss_ua",
    "room_temp",
    "atmosphere",
    "head_volume",
    "head_temp_k",
    "relief_gauge",
    "relief_slope",
    "leak_area",
    "vent_area",
    "breather_area",
    "lid_ua",
    "lid_heat",
    "lid_room_ua",
    "lid_start",
    "oil_start",
    "air_h",
    "air_temp",
    "oil_table",
    "pressure_table",
    "max_step",
    "max_tsat_step",
    "atmosphere_boiling",
    "first_step",
    "early_step",
    "early_share",
    "air_vapour",
    "air_transfer",
    "most_steps",
    "coldest_start",
    "dry_share",
)
"""Fields of ``CookGiven`` in lanes/group.h, in order."""
CURVES = (("oil_temp_c", ranges.OIL_CURVE), ("pressure_pa", ranges.PRESSURE_CURVE))


@dataclass(frozen=True, slots=True, kw_only=True)
class Packed:
    """Questions of one structure (piece classes, cells in bones) as arrays; rows follow the cooks."""

    piece: Array  # (cook * class, PIECE_ROW)
    cook: Array  # (cook, COOK_ROW)
    span: Array  # (span of all cooks, 6)
    first_span: Numbers
    span_count: Numbers
    grid: Array  # (shape, numbers of a grid)
    grid_of: Numbers  # (cook * class)
    table: Array  # (point of all curves, time and value)
    table_start: Numbers  # (cook * 2): oil, pressure
    table_count: Numbers
    bone: Numbers  # (class) cells inside the bone
    precision: Precision

    @property
    def classes(self) -> int:
        """Piece classes of a cook."""
        return len(self.bone)


def structure(pieces: Sequence[PieceClass], precision: Precision) -> tuple[int, ...]:
    """Cells inside the bone of each piece class: cooks alike in this march together."""
    return tuple(grid.bone_cells(p.bone_radius_m, precision.n_core) for p in pieces)


def pack(cooks: Sequence[Cook], precision: Precision, most_steps: Sequence[int]) -> Packed:
    """Arrays of cooks of one :func:`structure`."""
    pieces = [piece for cook in cooks for piece in cook.pieces]
    row, shapes, grid_of = piece_rows(piece_columns(pieces), precision)
    table, start, count = _tables(cooks)
    cook = cook_rows(vat_columns([c.vat for c in cooks]), precision)
    told = count.reshape(-1, 2) > 0
    n_class = len(cooks[0].pieces)
    cook[:, COOK_ROW.index("oil_table")], cook[:, COOK_ROW.index("pressure_table")] = told.T
    first = np.array([0 if n == 0 else s for s, n in zip(start[::2], count[::2], strict=True)])
    oil = COOK_ROW.index("oil_start")
    cook[:, oil] = np.where(told[:, 0], table[first, 1], cook[:, oil])
    cook[:, COOK_ROW.index("most_steps")] = most_steps
    cold = row[:, PIECE_ROW.index("start_temp")].reshape(-1, n_class).min(axis=1)
    cook[:, COOK_ROW.index("coldest_start")] = cold
    spans = [span for c in cooks for span in c.spans]
    counts = np.array([len(c.spans) for c in cooks])
    return Packed(
        piece=row,
        cook=cook,
        span=np.array([span_row(span) for span in spans], dtype=float),
        first_span=np.cumsum(counts) - counts,
        span_count=counts,
        grid=shapes,
        grid_of=grid_of,
        table=table,
        table_start=start,
        table_count=count,
        bone=np.array(structure(cooks[0].pieces, precision)),
        precision=precision,
    )


def span_row(span: Span) -> tuple[float, ...]:
    """A span as the march reads it."""
    ends_at = -1.0 if span.ends_at_s is None else span.ends_at_s
    return span.duration_s, span.set_c, span.lid, span.until, span.value, ends_at


def piece_columns(pieces: Sequence[PieceClass]) -> dict[str, Array]:
    """Fields of piece classes, and what their meat is by its heat, as columns."""
    named = attrgetter(*_PIECE)
    table = np.array([named(p) for p in pieces], dtype=float)
    found = dict(zip(_PIECE, table.T, strict=True))
    found["by_heat"] = np.array(
        [
            by_heat(
                polynomial(p.conductivity_w_mk, "conductivity_w_mk"),
                polynomial(p.heat_capacity_j_kgk, "heat_capacity_j_kgk"),
                p.density_kg_m3,
            )
            for p in pieces
        ]
    )
    return found


def piece_rows(p: dict[str, Array], precision: Precision) -> tuple[Array, Array, Numbers]:
    """Rows of the march from columns of piece classes; the grids of their shapes, and which is whose."""
    a, n, bone = p["half_thickness_m"], p["shape_n"], p["bone_radius_m"]
    shapes, grid_of = np.unique(n + 1j * (bone / a), return_inverse=True)
    grids = [grid.build(float(x.real), float(x.imag), precision.n_core, precision.grading) for x in shapes]
    powers = a[:, None] ** np.arange(4)
    area = np.array([g.area for g in grids])[grid_of] / powers
    volume = np.array([g.volume for g in grids])[grid_of] * a[:, None] / powers
    face, bone_volume = a / (n + 1), bone ** (n + 1) / ((n + 1) * a**n)
    floor = np.maximum(grid.LOWEST_FRONT * a, grid.FLOOR_PAST_BONE * bone)
    cells = np.where(bone > 0.0, grid.bone_cells(1.0, precision.n_core), 1)
    thick, zero = p["coat_thickness_m"], np.zeros_like(a)
    columns = [
        a,
        bone,
        p["area_factor_n"] * (n + 1) * p["mass_kg"] / p["density_kg_m3"] / a,
        *p["by_heat"].T,
        p["bone_conductivity_w_mk"],
        p["bone_heat_j_m3k"],
        p["crust_conductivity_w_mk"],
        p["crust_heat_j_m3k"],
        p["water_kg_m3"],
        p["film_kg_m2"],
        p["start_temp_c"],
        p["still_h_w_m2k"],
        p["gain_h_j_kgk"],
        p["cap_h_w_m2k"],
        p["lag_h_s"],
        p["vapour_cp_j_kgk"],
        np.array([g.centre_weight_n for g in grids])[grid_of],
        face,
        floor ** (n + 1) / ((n + 1) * a**n),
        bone_volume,
        zero,
        0.5 * p["drip_frac"],
        p["drip_lag_s"],
        p["drip_mid_c"],
        0.5 * p["drip_steep_per_k"],
        thick,
        thick / p["coat_conductivity_w_mk"],
        thick / p["coat_wet_conductivity_w_mk"],
        p["coat_heat_j_m2k"],
        p["still_reference_k"],
        p["vapour_diffusivity_m2_s"],
        *area.T,
        *volume.T,
        0.5 * bone / cells,
        np.array([g.meat_half_frac for g in grids])[grid_of],
    ]
    width = max(len(g.flat) for g in grids)
    flat = np.zeros((len(grids), width))
    for number, g in enumerate(grids):
        flat[number, : len(g.flat)] = g.flat
    return _side_by_side(columns), flat, grid_of


def _unlike(values: Iterable[Hashable]) -> tuple[list[Any], Numbers]:
    """The unlike ones among values, in the order they first came, and which of them each is."""
    found: dict[Hashable, int] = {}
    which = [found.setdefault(value, len(found)) for value in values]
    return list(found), np.array(which)


def _side_by_side(columns: Sequence[Array]) -> Array:
    """Columns as one array of rows."""
    found = np.empty((len(columns[0]), len(columns)))
    for number, column in enumerate(columns):
        found[:, number] = column
    return found


def vat_columns(vats: Sequence[Vat]) -> dict[str, Array]:
    """Fields of vats as columns."""
    named = attrgetter(*_VAT)
    found = dict(zip(_VAT, np.array([named(v) for v in vats], dtype=float).T, strict=True))
    found["cp0"], found["cp1"] = np.array([v.oil_cp_j_kgk for v in vats], dtype=float).T
    return found


def cook_rows(v: dict[str, Array], precision: Precision) -> Array:
    """Rows of the march from columns of vats; what depends on spans and curves is filled in by the caller."""
    air, zero = v["atmosphere_pa"], np.zeros_like(v["atmosphere_pa"])
    places, which = _unlike(air.tolist())
    boiling = np.array([boiling_temp_c(place) for place in places])[which]
    alike = {
        "oil_mass": v["oil_mass_kg"],
        "oil_cp0": v["cp0"],
        "oil_cp1": v["cp1"],
        "metal_heat": v["metal_heat_j_k"],
        "heater": v["heater_w"],
        "swing": v["swing_k"],
        "band": v["band_k"],
        "loss_ua": v["loss_w_k"],
        "room_temp": v["room_temp_c"],
        "atmosphere": air,
        "head_volume": v["head_volume_m3"],
        "head_temp_k": v["head_temp_c"] + 273.15,
        "relief_gauge": v["relief_gauge_pa"],
        "relief_slope": v["relief_slope_kg_spa"],
        "leak_area": v["leak_area_m2"],
        "vent_area": v["vent_area_m2"],
        "breather_area": v["breather_area_m2"],
        "lid_ua": v["lid_ua_w_k"],
        "lid_heat": v["lid_heat_j_k"],
        "lid_room_ua": v["lid_room_ua_w_k"],
        "lid_start": v["lid_start_c"],
        "oil_start": v["oil_start_c"],
        "air_h": v["air_h_w_m2k"],
        "air_temp": v["air_temp_c"],
        "atmosphere_boiling": boiling,
        "max_step": zero + precision.max_step_s,
        "max_tsat_step": zero + precision.max_boiling_step_k,
        "first_step": zero + precision.first_step_s,
        "early_step": zero + precision.early_step_s,
        "early_share": zero + precision.early_frac,
        "dry_share": zero + precision.dry_frac,
        "air_vapour": v["air_vapour_kg_m3"],
        "air_transfer": v["air_transfer_m_s"],
    }
    return _side_by_side([alike.get(name, zero) for name in COOK_ROW])


def _tables(cooks: Sequence[Cook]) -> tuple[Array, Numbers, Numbers]:
    """Prescribed curves of all cooks one after another: points, first point and length of each. A curve that
    several cooks were given stands there once.
    """
    found, at = [np.zeros((1, 2))], 1
    known: dict[tuple[str, int], tuple[int, int]] = {}
    places = []
    for cook in cooks:
        for name, bounds in CURVES:
            curve = getattr(cook.prescribed, name)
            place = known.get((name, id(curve)))
            if place is None:
                points = np.zeros((0, 2)) if curve is None else _points(curve, name, bounds)
                place = known[name, id(curve)] = at, len(points)
                found.append(points)
                at += len(points)
            places.append(place)
    start, count = np.array(places).T
    return np.concatenate(found), start, count


def _points(
    curve: Sequence[tuple[float, float]] | Array, name: str, bounds: tuple[float, float, str]
) -> Array:
    points = np.asarray(curve, dtype=float)
    if points.ndim != 2 or points.shape[1] != 2 or not np.all(np.isfinite(points)):
        raise InputError("prescribed", "curve", "rows of (time, value)")
    if np.any(np.diff(points[:, 0]) <= 0):
        raise InputError("prescribed", "curve", "rows of (time, value) with rising times")
    for value in (points[:, 1].min(), points[:, 1].max()):
        ranges.refuse(name, float(value), bounds, "prescribed")
    return points
