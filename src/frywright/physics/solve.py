"""Puts questions to the engine and gives their histories."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import SolveError
from frywright.physics.engine import (
    COOK_FIELDS,
    CRUST_DEPTHS,
    FINAL_COOK,
    FINAL_PIECE,
    MORE_COOK_FIELDS,
    PIECE_FIELDS,
    STAGE_TIMED_OUT,
    TOO_MANY_STEPS,
    Marched,
    march,
)
from frywright.physics.inputs import ROUTINE, Cook, Precision, Prescribed
from frywright.physics.pack import PIECE_ROW, pack, structure

__all__ = ["ROUTINE", "Cook", "Prescribed", "RawHistory", "SolveReport", "most_steps", "run", "run_many"]

Array = NDArray[np.float64]
EVENT_STEPS, STEP_ROOM, MOST_STEPS = 4000, 2.5, 200_000
"""Steps a march may take: a fixed number for upsets and events, and so many times those of the longest step,
but never more than MOST_STEPS. Own estimates: the heater of
the smallest vat drawn in the tests switches every 20 s and costs 4 short steps each time; a program of two
hours at ``FINE`` takes about 30,000."""
TOGETHER = 256
"""Cooks whose histories are written down at once: enough to keep every lane busy, few enough for memory."""


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
    :data:`~frywright.physics.engine.CRUST_DEPTHS` of the crust's thickness, outermost first; the
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
    """Solve one cook. Raises SolveError: the march took more steps than :func:`most_steps` allows or left a
    temperature that is not finite.
    """
    return run_many([cook], precision)[0]


def run_many(cooks: Sequence[Cook], precision: Precision = ROUTINE) -> list[RawHistory]:
    """Solve many cooks; each answer is the same, to the bit, as alone."""
    alike: dict[tuple[int, ...], list[int]] = {}
    for number, cook in enumerate(cooks):
        alike.setdefault(structure(cook.pieces, precision), []).append(number)
    found: dict[int, RawHistory] = {}
    for numbers in alike.values():
        for first in range(0, len(numbers), TOGETHER):
            part = numbers[first : first + TOGETHER]
            done = march_cooks([cooks[i] for i in part], precision)
            found |= {number: history(done, k) for k, number in enumerate(part)}
    return [found[number] for number in range(len(cooks))]


def march_cooks(cooks: Sequence[Cook], precision: Precision) -> Marched:
    """March cooks of one structure."""
    return march(pack(cooks, precision, [most_steps(cook, precision) for cook in cooks]))


def most_steps(cook: Cook, precision: Precision) -> int:
    """Most steps a march of this cook may take, from its spans and its longest step."""
    return int(steps_of(sum(span.duration_s for span in cook.spans), precision))


def steps_of(whole_s: float | Array, precision: Precision) -> Array:
    """:func:`most_steps` of cooks that last so long."""
    wanted = EVENT_STEPS + np.floor(STEP_ROOM * np.asarray(whole_s) / precision.max_step_s)
    return np.asarray(np.minimum(wanted, MOST_STEPS))


def check(done: Marched) -> None:
    """Refuse a march that one cook did not finish. Raises SolveError: it ran out of steps or left a
    temperature that is not finite.
    """
    failed = done.cook[:, FINAL_COOK.index("status")] == TOO_MANY_STEPS
    last = done.trace[done.first_row[1:] - 1]
    for k in np.flatnonzero(failed | ~np.isfinite(last).all(axis=1)):
        report_of(done, int(k))


def report_of(done: Marched, k: int) -> SolveReport:
    """How the march of cook k went. Raises SolveError: it ran out of steps or left a temperature that is not
    finite.
    """
    steps, rejected, smallest, status, forced = done.cook[k, : len(FINAL_COOK)]
    report = SolveReport(
        steps=int(steps),
        rejected=int(rejected),
        smallest_step_s=float(smallest),
        energy_gap_frac=float(done.piece[k, :, FINAL_PIECE.index("gap")].max()),
        span_timed_out=status == STAGE_TIMED_OUT,
        forced=int(forced),
    )
    cores = slice(len(COOK_FIELDS), len(COOK_FIELDS) + done.packed.classes)
    if status == TOO_MANY_STEPS or not np.all(np.isfinite(done.rows(k)[:, cores])):
        raise SolveError("the march did not reach the end of the program", report)
    return report


def history(done: Marched, k: int) -> RawHistory:
    """Curves of cook k of a full march."""
    n = done.packed.classes
    report, rows = report_of(done, k), done.rows(k).copy()
    names = (*COOK_FIELDS, *["core"] * n, *MORE_COOK_FIELDS)
    at = {name: i for i, name in enumerate(names)}
    lane = rows[:, len(names) :].reshape(len(rows), n, len(PIECE_FIELDS))
    of = {name: lane[:, :, i] for i, name in enumerate(PIECE_FIELDS)}
    area = done.packed.piece[k * n : (k + 1) * n, PIECE_ROW.index("area")]
    cells = done.cells[k]
    return RawHistory(
        time_s=rows[:, at["time"]],
        oil_temp_c=rows[:, at["oil"]],
        pressure_pa=rows[:, at["pressure"]],
        lid_temp_c=rows[:, at["lid"]],
        heater_j=rows[:, at["heater"]],
        steam_pa=rows[:, at["steam"]],
        span=rows[:, at["span"]].astype(np.int64),
        core_temp_c=rows[:, len(COOK_FIELDS) : len(COOK_FIELDS) + n],
        front_temp_c=of["front_temp"],
        surface_temp_c=of["surface"],
        crust_m=of["crust"],
        evaporated_kg_m2=of["evaporated"],
        htc_w_m2k=of["h"],
        film_kg_m2=of["film"],
        heat_j_m2=of["heat"],
        heat_j=of["heat"] * area,
        crust_temp_c=lane[:, :, -len(CRUST_DEPTHS) :],
        final_core_c=cells[:, 0].T,
        final_core_share=(cells[:, 2] / cells[:, 2].sum(axis=1, keepdims=True)).T,
        report=report,
    )
