"""Compiles the march and runs it over packed questions.

``lanes/*.h`` and ``lanes/march.cpp`` are the engine; ``lanes/march_*.ll`` is what clang makes of them, for
lanes of cooks or of the classes of one cook, for no processor in particular (``scripts/lanes.py``). LLVM,
which comes with llvmlite, turns that into code for this processor in a fraction of a second. The march knows
no Python and holds no lock.
"""

from __future__ import annotations

import ctypes
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

import numpy as np
from numpy.typing import NDArray

from frywright.physics.machine import loaded
from frywright.physics.pack import PIECE_ROW, Packed

Array = NDArray[np.float64]
Numbers = NDArray[np.int64]
WIDE, NARROW, ONE = "8", "2", "one"
"""Versions of the march: lanes of eight cooks, of two, and of the piece classes of one cook."""
MOST_CLASSES = 8
BLOCK_STEPS = 32
COOK_FIELDS = ("time", "span", "pressure", "oil")
MORE_COOK_FIELDS = ("heater", "lid", "steam")
PIECE_FIELDS = (
    "front_temp",
    "surface",
    "crust",
    "evaporated",
    "h",
    "film",
    "heat",
    "outer",
    "middle",
    "inner",
)
FINAL_PIECE = ("gap", "evaporated", "free", "held", "front_volume")
FINAL_COOK = ("steps", "rejected", "smallest", "status", "forced")
TOO_MANY_STEPS, STAGE_TIMED_OUT = 1, 2
CRUST_DEPTHS = (0.25, 0.5, 0.75)
"""Depths of the three crust temperatures, as shares of the crust's thickness from the outside."""


class _Job(ctypes.Structure):
    """``Job`` of lanes/group.h."""

    _fields_ = [
        *[(n, ctypes.c_int64) for n in ("cooks", "classes", "n_core", "n_crust", "passes", "full_trace")],
        *[(n, ctypes.c_int64) for n in ("trace_width", "block_steps")],
        ("steady", ctypes.c_double),
        *[(n, ctypes.c_void_p) for n in ("piece", "cook", "span", "grid", "grid_of", "first_span")],
        *[
            (n, ctypes.c_void_p)
            for n in ("span_count", "table_start", "table_count", "table", "bone", "order")
        ],
        *[(n, ctypes.c_void_p) for n in ("blocks", "block_cook")],
        *[(n, ctypes.c_int64) for n in ("block_count", "blocks_used")],
        *[(n, ctypes.c_void_p) for n in ("final_cells", "final_piece", "final_cook")],
    ]


@dataclass(frozen=True, slots=True)
class Marched:
    """What a march wrote down. ``trace`` rows of all cooks stand one after another, cook by cook.

    Columns: time, span, pressure, oil, core of every class; with ``full`` also heater, lid, steam and
    ``PIECE_FIELDS`` of every class. ``cells`` (cook, class, 3, cell) are final temperatures, holding shares
    and volumes; they and ``piece`` are written with ``full`` alone (``piece`` is not a number else).
    """

    packed: Packed
    full: bool
    trace: Array
    first_row: Numbers
    cells: Array
    piece: Array
    cook: Array

    def rows(self, k: int) -> Array:
        """Trace of cook k."""
        return self.trace[self.first_row[k] : self.first_row[k + 1]]


@dataclass(frozen=True, slots=True)
class _Engine:
    """The compiled march, what it needs of space, and the code that must not be let go."""

    march: Callable[..., int]
    space: Callable[..., int]
    code: object


@cache
def _engine(version: str) -> _Engine:
    text = files("frywright.physics").joinpath(f"lanes/march_{version}.ll").read_text("utf-8")
    code = loaded("march", text)
    job = ctypes.POINTER(_Job)
    march_type = ctypes.CFUNCTYPE(ctypes.c_int64, job, ctypes.c_void_p, ctypes.c_int64)
    space_type = ctypes.CFUNCTYPE(ctypes.c_int64, job)
    return _Engine(
        march_type(code.get_function_address(f"march_{version}")),
        space_type(code.get_function_address(f"work_space_{version}")),
        code,
    )


def _address(array: NDArray[np.generic]) -> int:
    return int(array.__array_interface__["data"][0])


def _version(packed: Packed) -> str:
    """The version that answers soonest: a cook's classes side by side where fewer cooks than classes are
    asked for and no two of them have bones of different cells, else cooks side by side.
    """
    cooks, classes = len(packed.cook), packed.classes
    if cooks < classes <= MOST_CLASSES and len(set(packed.bone.tolist())) == 1:
        return ONE
    return NARROW if cooks <= int(NARROW) else WIDE


def _longest_first(packed: Packed) -> Numbers:
    """Cooks in the order in which they take lanes: those of most steps first, so that lanes end together and
    cooks side by side are in like stages. A vent takes longer the more there is in the oil (own choice).
    """
    if len(packed.cook) <= int(WIDE):  # all begin at once
        return np.arange(len(packed.cook))
    length = np.add.reduceat(packed.span[:, 0], packed.first_span)
    area = packed.piece[:, PIECE_ROW.index("area")].reshape(len(packed.cook), -1).sum(axis=1)
    return np.argsort(-length * np.sqrt(area), kind="stable")


def march(packed: Packed, *, full: bool = True) -> Marched:
    """March packed cooks to the end of their programs; the answer of a cook does not depend on the others."""
    engine = _engine(_version(packed))
    cooks, classes, p = len(packed.cook), packed.classes, packed.precision
    width = len(COOK_FIELDS) + classes
    if full:
        width += len(MORE_COOK_FIELDS) + len(PIECE_FIELDS) * classes
    given = {
        "piece": packed.piece,
        "cook": packed.cook,
        "span": packed.span,
        "grid": packed.grid,
        "grid_of": packed.grid_of,
        "first_span": packed.first_span,
        "span_count": packed.span_count,
        "table_start": packed.table_start,
        "table_count": packed.table_count,
        "table": packed.table,
        "bone": packed.bone,
        "order": _longest_first(packed),
    }
    given = {name: np.ascontiguousarray(a) for name, a in given.items()}
    final = {
        "final_cells": np.zeros((cooks, classes, 3, p.n_core)),
        "final_piece": np.full((cooks, classes, len(FINAL_PIECE)), 0.0 if full else np.nan),
        "final_cook": np.zeros((cooks, len(FINAL_COOK))),
    }
    job = _Job(
        cooks=cooks,
        classes=classes,
        n_core=p.n_core,
        n_crust=p.n_crust,
        passes=p.passes,
        full_trace=full,
        trace_width=width,
        block_steps=BLOCK_STEPS,
        steady=p.steady_m,
        **{name: _address(a) for name, a in (given | final).items()},
    )
    space = np.zeros(engine.space(ctypes.byref(job)) + 64, dtype=np.uint8)
    at = _address(space)
    at += -at % 64
    blocks = list(_march_blocks(engine, job, at, cooks, width))
    trace, first = _in_order(blocks, final["final_cook"][:, 0].astype(np.int64) + 1)
    return Marched(packed, full, trace, first, *final.values())


def _march_blocks(
    engine: _Engine, job: _Job, at: int, cooks: int, width: int
) -> Iterator[tuple[Array, Numbers]]:
    """Call the march until it is over; each call fills blocks of the trace, told with their cooks."""
    over, begin = 0, 1
    count = 2 * int(WIDE) + 16 * min(cooks, 256)
    while not over:
        block, owner = np.empty((count, BLOCK_STEPS, width)), np.zeros(count, dtype=np.int64)
        job.blocks, job.block_cook, job.block_count, job.blocks_used = (
            _address(block),
            _address(owner),
            count,
            0,
        )
        over, begin = engine.march(ctypes.byref(job), at, begin), 0
        yield block[: job.blocks_used], owner[: job.blocks_used]


def _in_order(blocks: list[tuple[Array, Numbers]], steps: Numbers) -> tuple[Array, Numbers]:
    """Rows of the blocks, cook by cook, and the first row of each."""
    owner = np.concatenate([o for _, o in blocks])
    block = np.concatenate([b for b, _ in blocks]) if len(blocks) > 1 else blocks[0][0]
    order = np.argsort(owner, kind="stable")
    first = np.concatenate([[0], np.cumsum(steps)])
    used = -(-steps // BLOCK_STEPS)
    row = np.arange(first[-1]) - np.repeat(first[:-1], steps)
    part = row // BLOCK_STEPS
    mine = BLOCK_STEPS * (order[np.repeat(np.cumsum(used) - used, steps) + part] - part) + row
    return np.take(block.reshape(-1, block.shape[2]), mine, axis=0), first
