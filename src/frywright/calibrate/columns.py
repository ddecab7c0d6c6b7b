"""Columns of a logger's table: which one is the time, which only counts lines, and what a cell says."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.calibrate import timeline
from frywright.model.errors import InputError
from frywright.model.units import is_count
from frywright.tables import moments, table

Array = NDArray[np.float64]
LEADING = re.compile(
    r"^\s*+([-+]?(?:\d++(?:[.,]\d*+)?|[.,]\d++)(?:[eE][-+]?\d++)?)"
    r"\s*+(?:°|º|deg)?\s*+(?:[CcFf]|psi|kPa|bar)?\s*+$"
)
TIME_WORDS = re.compile(r"time|sec|elapsed|min|hora|tiempo|segund|date|fecha|\bs\b|\bt\b|hour", re.I)
CLOCK_WORDS = re.compile(r"mm:ss|elapsed|dura|transcurr", re.I)
INDEX_WORDS = re.compile(r"^(no\.?|nr\.?|#|n|id|index|record|scan|sample|row|item|núm.*)$", re.I)


@dataclass(frozen=True, slots=True)
class Clock:
    """Where the time stands: columns, how to read it, seconds for each unit."""

    columns: tuple[int, ...]
    kind: str  # moment, number, none
    unit_s: float = 1.0
    short: bool = False  # two groups are minutes and seconds


def _column(rows: Sequence[Sequence[str]], i: int) -> list[str]:
    return [row[i].strip() if i < len(row) else "" for row in rows]


def _timed(rows: list[list[str]], width_count: int) -> tuple[list[int], list[int], list[int]]:
    """Columns of moments, of dates and of times of day."""
    both: list[int] = []
    dates: list[int] = []
    clocks: list[int] = []
    for i in range(width_count):
        found = [moments.read_moment(cell) for cell in _column(rows, i) if cell]
        known = [m for m in found if m is not None]
        if not found or len(known) < 0.6 * len(found):
            continue
        dated = sum(m.date is not None for m in known)
        timed = sum(m.second_s is not None for m in known)
        if dated > 0.5 * len(known) and timed > 0.5 * len(known):
            both.append(i)
        else:
            (dates if dated > timed else clocks).append(i)
    return both, dates, clocks


def clock_of(rows: list[list[str]], shape: table.Shape, told: Mapping[str, str]) -> Clock:
    """Where the time stands; a file without times is counted by the interval told, or by seconds.
    Raises InputError: the interval told is impossible.
    """
    both, dates, clocks = _timed(rows, shape.width_count)
    if both:
        return Clock((both[0],), "moment")
    if clocks:
        columns = (dates[0], clocks[0]) if dates else (clocks[0],)
        return Clock(
            columns,
            "moment",
            short=not dates and _is_short(_column(rows, clocks[0]), title_of(shape, clocks[0])),
        )
    for i in range(shape.width_count):
        if not is_index(i, rows, shape) and (
            found_unit := _number_clock(_column(rows, i), title_of(shape, i), i == 0)
        ):
            return Clock((i,), "number", found_unit)
    if "interval" in told:
        try:
            interval = float(told["interval"].replace(",", "."))
        except ValueError:
            interval = 0.0
        if not 0.01 <= interval <= 3600:
            raise InputError("interval", told["interval"], "seconds between two lines, 0.01 to 3600")
        return Clock((), "none", interval)
    return Clock((), "none", 1.0)


def title_of(shape: table.Shape, i: int) -> str:
    """Name and unit over a column."""
    name = shape.header[i] if i < len(shape.header) else ""
    unit = shape.units[i] if i < len(shape.units) else ""
    return f"{name} {unit}".strip()


def _is_short(cells: list[str], title: str) -> bool:
    """Whether ``a:bb`` means minutes and seconds: said so, or more than a day of hours."""
    parts = [cell.split(":") for cell in cells if cell]
    if any(len(p) != 2 or not is_count(p[0].strip()) for p in parts):
        return False
    return bool(CLOCK_WORDS.search(title)) or any(int(p[0]) > 23 for p in parts)


def _number_clock(cells: list[str], title: str, first: bool) -> float:
    """Seconds for each unit of a numeric time column, or 0 when it is none."""
    values = [number_of(cell) for cell in cells if table.is_number(cell)]
    known = np.array([v for v in values if v is not None])
    if len(known) < max(2, 0.8 * len(cells)) or not (TIME_WORDS.search(title) or (first and not title)):
        return 0.0
    rising = np.diff(known)
    if np.mean(rising >= 0) < 0.8 or known[-1] <= known[0]:
        return 0.0
    if 1e12 <= known[0] < 2.5e12:
        return 1e-3
    if 30_000 < known[0] < 80_000 and float(np.median(rising)) < 0.05:
        return timeline.DAY_S
    words = title.lower()
    if re.search(r"\bms\b|milli", words):
        return 1e-3
    if re.search(r"\bmin", words):
        return 60.0
    return 3600.0 if re.search(r"\bh\b|\bhours?\b|\bhoras?\b", words) else 1.0


def is_index(i: int, rows: list[list[str]], shape: table.Shape) -> bool:
    """A column that only counts the lines."""
    cells = _column(rows, i)
    if not cells or not all(is_count(cell) for cell in cells):
        return False
    steps = np.diff([int(cell) for cell in cells])
    counts = len(steps) > 2 and bool(np.all(steps == 1))
    title = shape.header[i] if i < len(shape.header) else ""
    return bool(INDEX_WORDS.match(title)) if title else counts and i == 0 and shape.width_count > 2


TOGETHER_COUNT = 64
"""Cells of a column that are read at once where one of the whole is no number (own choice)."""


def number_of(cell: str) -> float | None:
    """Number of a cell, its unit left out; None without one."""
    found = LEADING.match(cell)
    return float(found[1].replace(",", ".")) if found else None


def numbers_of(cells: Sequence[str]) -> tuple[Array, NDArray[np.int64], int]:
    """Values of a column's cells, places of cells that are neither a number nor an open mark, and open
    marks.
    """
    try:
        joined = "\n".join(cells)
        if "_" in joined or joined.count("\n") != len(cells) - 1:
            raise ValueError
        values = np.array([float(cell) for cell in joined.replace(",", ".").split("\n")])
        lost = ~np.isfinite(values)
        return np.where(lost, np.nan, values), np.empty(0, dtype=np.int64), int(lost.sum())
    except ValueError:
        if len(cells) > TOGETHER_COUNT:
            return _in_parts(cells)
        values, bad, opened = np.full(len(cells), np.nan), [], 0
        for i, cell in enumerate(cells):
            number = number_of(cell)
            if number is not None and np.isfinite(number):
                values[i] = number
            elif table.is_open_mark(cell):
                opened += 1
            else:
                bad.append(i)
        return values, np.array(bad, dtype=np.int64), opened


def _in_parts(cells: Sequence[str]) -> tuple[Array, NDArray[np.int64], int]:
    """The same part by part, so that one cell that is no number does not make all the others slow."""
    starts = range(0, len(cells), TOGETHER_COUNT)
    parts = [numbers_of(cells[a : a + TOGETHER_COUNT]) for a in starts]
    bad = [part[1] + a for part, a in zip(parts, starts, strict=True)]
    return np.concatenate([part[0] for part in parts]), np.concatenate(bad), sum(part[2] for part in parts)
