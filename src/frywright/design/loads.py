"""Many loads of one product at once: their questions as arrays, their margins from the march's own rows.

Says the same as asking each load alone (tests compare them); what a load varies is a column.
"""

from __future__ import annotations

import hashlib
import os
from collections.abc import Callable, Iterator, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, fields, replace

import numpy as np
from numpy.typing import NDArray

from frywright.model.kitchen import pressure_at_pa
from frywright.model.program import LidState, Program
from frywright.physics import ranges
from frywright.physics.engine import COOK_FIELDS, Marched, march
from frywright.physics.inputs import Lid, PieceClass, Precision, Span
from frywright.physics.lift import Lifts, lifts_of
from frywright.physics.pack import (
    COOK_ROW,
    PIECE_ROW,
    Packed,
    cook_rows,
    piece_columns,
    piece_rows,
    span_row,
    structure,
    vat_columns,
)
from frywright.physics.plan import FryPlan, spans, vat
from frywright.physics.solve import check, steps_of
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.margin import Curves, margins_k

Array = NDArray[np.float64]
Numbers = NDArray[np.int64]
CHUNK, FEW = 256, 16
"""Loads that march together: every lane stays busy, and a chunk's rows fit the processor's cache. So few
march where they are asked for: threads would take longer to begin than the march does (measured).
"""
VARIED = ("mass_kg", "half_thickness_m", "start_temp_c", "gain_h_j_kgk", "cap_h_w_m2k")


@dataclass(frozen=True, slots=True)
class Spans:
    """Spans of many loads: those of all loads one after another, and where each begins."""

    rows: Array
    first: Numbers
    count: Numbers
    vent: Numbers  # number of the vent, -1 without

    def of(self, part: slice) -> Spans:
        """Those of a run of loads."""
        first, count = self.first[part], self.count[part]
        start = int(first[0])
        return Spans(self.rows[start : int(first[-1] + count[-1])], first - start, count, self.vent[part])

    def at(self, which: Numbers) -> Spans:
        """Those of loads picked out, each as often as it is asked for."""
        count = self.count[which]
        first = np.cumsum(count) - count
        rows = np.repeat(self.first[which] - first, count) + np.arange(count.sum())
        return Spans(self.rows[rows], first, count, self.vent[which])


def spans_of(told: Sequence[Sequence[Span]]) -> Spans:
    """Spans of loads that share nothing."""
    count = np.array([len(one) for one in told])
    vents = [next((i for i, s in enumerate(one) if s.lid is Lid.VENT), -1) for one in told]
    rows = np.array([span_row(span) for one in told for span in one], dtype=float)
    return Spans(rows, np.cumsum(count) - count, count, np.array(vents))


def late_spans(plan: FryPlan, late_s: Array, close_late: Callable[[Program, float], Program]) -> Spans:
    """Spans of loads of one program whose lid closes late by so much: one set of spans where it can, the
    program's own where it cannot.
    """
    lids = [stage.lid for stage in plan.program.stages]
    at = lids.index(LidState.PRESSURE) if LidState.PRESSURE in lids else 0
    length = plan.program.stages[at].duration_s
    late = (late_s > 0.0) & (late_s < (length or 0.0)) & (LidState.PRESSURE in lids)
    plain = spans_of([spans(plan)])
    if not late.any():
        sets = [plain] * 2
    else:
        one = float(late_s[np.argmax(late)])
        sets = [plain, spans_of([spans(replace(plan, program=close_late(plan.program, one)))])]
    count = np.array([s.count[0] for s in sets])[late.astype(int)]
    first = np.cumsum(count) - count
    rows = np.empty((int(count.sum()), plain.rows.shape[1]))
    for which, found in enumerate(sets):
        mine = np.flatnonzero(late == bool(which))
        rows[(first[mine][:, None] + np.arange(found.count[0])).ravel()] = np.tile(found.rows, (len(mine), 1))
    rows[first[late] + at, 0] = late_s[late]
    rows[first[late] + at + 1, 0] = (length or 0.0) - late_s[late]
    return Spans(rows, first, count, np.array([s.vent[0] for s in sets])[late.astype(int)])


@dataclass(frozen=True, slots=True, kw_only=True)
class Loads:
    """Loads to march: one plan's pieces and vat, varied by row. ``at`` are the factors of a proof by name,
    ``weights`` (load, tracer) multiples of the mean piece, ``oil_start_c`` what each load is dropped into
    before its factor.
    """

    plan: FryPlan
    base: Sequence[PieceClass]
    at: Mapping[str, Array]
    weights: Array
    oil_start_c: Array
    spans: Spans

    def packed(self, part: slice, precision: Precision) -> Packed:
        """Arrays of a run of loads."""
        told = self.spans.of(part)
        count, n_class = len(told.count), len(self.base)
        row, shapes, grid_of = piece_rows(self._pieces(part, count), precision)
        cook = cook_rows(self._vats(part, count), precision)
        long = np.add.reduceat(told.rows[:, 0], told.first)
        cook[:, COOK_ROW.index("most_steps")] = steps_of(long, precision)
        cold = row[:, PIECE_ROW.index("start_temp")].reshape(-1, n_class).min(axis=1)
        cook[:, COOK_ROW.index("coldest_start")] = cold
        rows = told.rows.copy()
        rows[:, 1] -= np.repeat(self.at["offset_k"][part], told.count)
        none = np.zeros(2 * count, dtype=np.int64)
        return Packed(
            piece=row,
            cook=cook,
            span=rows,
            first_span=told.first,
            span_count=told.count,
            grid=shapes,
            grid_of=grid_of,
            table=np.zeros((1, 2)),
            table_start=none,
            table_count=none,
            bone=np.array(structure(self.base, precision)),
            precision=precision,
        )

    def mark(self, precision: Precision) -> bytes:
        """The same for loads in which the march reads the same numbers, whatever their kitchen is called."""
        packed = self.packed(slice(0, len(self.oil_start_c)), precision)
        told = hashlib.sha256(repr(precision).encode())
        for field in fields(Packed):
            if field.name != "precision":
                numbers = np.ascontiguousarray(getattr(packed, field.name))
                told.update(f"{field.name} {numbers.dtype} {numbers.shape}".encode())
                told.update(numbers.data)
        return told.digest()

    def _pieces(self, part: slice, count: int) -> dict[str, Array]:
        at = {name: column[part, None] for name, column in self.at.items()}
        one, each = piece_columns(self.base), np.tile(np.arange(len(self.base)), count)
        found = {name: column[each] for name, column in one.items()}
        thick = np.tile(one["half_thickness_m"], (count, 1))
        for tracer, i in enumerate(i for i, kind in enumerate(self.plan.kinds) if kind.heavy):
            ratio = self.plan.kinds[i].cut.heavy_ratio_n
            thick[:, i] *= (self.weights[part, tracer] / ratio) ** (1.0 / 3.0)
        varied = (
            one["mass_kg"] * at["load_frac"],
            thick,
            np.maximum(one["start_temp_c"] + at["start_temp_k"], -1.0),
            one["gain_h_j_kgk"] * at["surface_frac"],
            one["cap_h_w_m2k"] * at["surface_frac"],
        )
        for name, values in zip(VARIED, varied, strict=True):
            _refuse(name, values, ranges.PIECE)
            found[name] = values.ravel()
        return found

    def _vats(self, part: slice, count: int) -> dict[str, Array]:
        at = {name: column[part] for name, column in self.at.items()}
        one = vat_columns([vat(self.plan)])
        found = {name: np.repeat(v, count) for name, v in one.items()}
        start = self.oil_start_c[part] + at["oil_start_k"]
        found["oil_mass_kg"] = found["oil_mass_kg"] * at["oil_level_frac"]
        found["heater_w"] = found["heater_w"] * at["heater_frac"]
        found["oil_start_c"] = start - (self.plan.fryer.offset_k + at["offset_k"])
        found["lid_start_c"] = np.minimum(80.0, start)
        site = self.plan.site
        for i in np.flatnonzero(at["altitude_m"]):
            found["atmosphere_pa"][i] = pressure_at_pa(site.altitude_m + float(at["altitude_m"][i]))
        for name in ("oil_mass_kg", "heater_w", "oil_start_c", "lid_start_c", "atmosphere_pa"):
            _refuse(name, found[name], ranges.VAT)
        return found

    def march(self, precision: Precision) -> Iterator[tuple[slice, Marched]]:
        """March all loads in chunks on all cores; chunks come in order."""
        count = len(self.oil_start_c)
        parts = [slice(i, min(i + CHUNK, count)) for i in range(0, count, CHUNK)]
        cores = os.cpu_count() or 1
        if count > FEW and len(parts) < cores:
            size = -(-count // cores)
            parts = [slice(i, min(i + size, count)) for i in range(0, count, size)]

        def one(part: slice) -> Marched:
            done = march(self.packed(part, precision), full=False)
            check(done)
            return done

        if len(parts) == 1:
            yield parts[0], one(parts[0])
            return
        with ThreadPoolExecutor(cores) as pool:
            yield from zip(parts, pool.map(one, parts), strict=True)


def _refuse(name: str, values: Array, table: ranges.Ranges) -> None:
    """Refuse a column whose ends are out of range."""
    for value in (values.min(), values.max()):
        ranges.refuse(name, float(value), table[name], "load")


def lifts(loads: Loads, part: slice, done: Marched, clock_s: Array, runs_on: NDArray[np.bool_]) -> Lifts:
    """Lifts of a chunk."""
    return lifts_of(
        done, loads.spans.vent[part], credit_s=loads.plan.vent_credit_s, clock_s=clock_s, runs_on=runs_on
    )


def tracer_margins(
    done: Marched, earliest_s: Array, limit: CookLimit, guard_k: float, fat_pct: Sequence[float]
) -> Array:
    """Margins of the tracers by each load's earliest lift [K]."""
    return margins_k(tracer_curves(done, earliest_s, len(fat_pct)), limit, guard_k, fat_pct)


def tracer_curves(done: Marched, earliest_s: Array, count: int) -> Curves:
    """Core curves of the tracers, which stand last."""
    end = len(COOK_FIELDS) + done.packed.classes
    return Curves(done.trace[:, 0], done.trace[:, end - count : end], done.first_row, earliest_s)


def highest_pressure(done: Marched) -> Array:
    """Highest gauge pressure of each load [Pa]."""
    top = np.maximum.reduceat(done.trace[:, COOK_FIELDS.index("pressure")], done.first_row[:-1])
    return np.asarray(top - done.packed.cook[:, COOK_ROW.index("atmosphere")])


def oils_left_k(done: Marched, lift_s: Array, drain_s: Array) -> Array:
    """How far the oil is below the first set point when the next load is dropped straight after this one [K].

    Between lift and drop the heater has the drain time of the program to bring it back.
    """
    oil = done.trace[:, COOK_FIELDS.index("oil"), None]
    at_lift = Curves(done.trace[:, 0], oil, done.first_row, lift_s).at(lift_s)[1][:, 0]
    vat_ = dict(zip(COOK_ROW, done.packed.cook.T, strict=True))
    heat = vat_["oil_mass"] * (vat_["oil_cp0"] + vat_["oil_cp1"] * at_lift) + vat_["metal_heat"]
    first_set = done.packed.span[done.packed.first_span, 1]
    return np.asarray(np.minimum(0.0, at_lift + vat_["heater"] * drain_s / heat - first_set))
