"""What a machine would run with the values it holds, right or wrong.

A slip may leave values that no card would have: a stage that begins before the one before it, no time at all,
oil no fryer reaches. What the machine does then is often not known, so there may be more than one reading;
the worst one counts.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from frywright.design.controller import Keyed
from frywright.design.readback import clock_of, degrees_c, is_unused
from frywright.model.errors import InputError
from frywright.model.fryer import CEILING_C, Controller
from frywright.model.program import LidState, Program, Stage

COOLEST_SET_C, LONGEST_STAGE_S = 60.0, 7200.0
"""What a stage of a program can be (``Stage``); a slip beyond it is simulated at it."""

Span = tuple[float, float, int]
"""Start and end [s] of a stretch, and the stage that runs in it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """Readings of what is held; none where it cannot run. ``in_order`` when no time is missing or runs
    backwards.
    """

    programs: tuple[Program, ...]
    sets_c: tuple[float, ...]
    in_order: bool


@dataclass(frozen=True, slots=True)
class _Row:
    number: int
    set_c: float
    time_s: float | None
    lid: LidState


def held_by(values: Sequence[Keyed], controller: Controller, like: Program) -> Held:
    """Readings of values as :func:`frywright.design.controller.render` orders them; name and version are
    taken from ``like``.
    """
    found = {(v.stage, v.what): v.text for v in values}
    rows = [row for n in range(1, controller.stage_count + 1) if (row := _row(found, n, controller))]
    if not rows:
        return Held(programs=(), sets_c=(), in_order=False)
    if controller.clock.counts_down:
        total = clock_of(found.get((0, "total"), "")) or 0.0
        begins = [0.0, *(total - (total + 1.0 if row.time_s is None else row.time_s) for row in rows[1:])]
        readings, in_order = _counting_down(rows, total), begins == sorted(begins) and total > 0
    else:
        ends = [-1.0 if row.time_s is None else row.time_s for row in rows]
        readings, in_order = _counting_up(rows), ends == sorted(ends) and ends[0] >= 0
    programs = []
    for spans in readings:
        made = _program(spans, {row.number: row for row in rows}, like)
        if made is not None and made not in programs:
            programs.append(made)
    whole = bool(programs) and len(programs[0].stages) == len(like.stages)
    return Held(programs=tuple(programs), sets_c=tuple(r.set_c for r in rows), in_order=in_order and whole)


def _row(found: dict[tuple[int, str], str], number: int, controller: Controller) -> _Row | None:
    """A stage that holds a set point; a stage without one is passed over."""
    text = found.get((number, "set"), "")
    if is_unused(text):
        return None
    lid = found.get((number, "lid"), "open")
    return _Row(number, degrees_c(text, controller), clock_of(found.get((number, "time"), "")), LidState(lid))


def _counting_down(rows: Sequence[_Row], total: float) -> list[list[Span]]:
    """A stage begins when the time left falls to its value; the first one at the drop."""
    starts = [0.0, *(max(total - (row.time_s or 0.0), 0.0) for row in rows[1:])]
    numbers = [row.number for row in rows]
    in_turn = [max(starts[: i + 1]) for i in range(len(starts))]
    one = list(zip(in_turn, [*in_turn[1:], total], numbers, strict=True))
    edges = sorted({*starts, total})
    other = [
        (a, b, numbers[max(i for i, start in enumerate(starts) if start <= a)]) for a, b in pairwise(edges)
    ]
    return [[(a, min(b, total), n) for a, b, n in spans if a < total] for spans in (one, other)]


def _counting_up(rows: Sequence[_Row]) -> list[list[Span]]:
    """A stage ends at its time since the drop; in turn, or by the last stage's time."""
    timed = [row for row in rows if row.time_s is not None]
    ends = [row.time_s or 0.0 for row in timed]
    in_turn = [max(ends[: i + 1]) for i in range(len(ends))]
    one = [(a, b, row.number) for a, b, row in zip([0.0, *in_turn], in_turn, timed, strict=False)]
    last = ends[-1] if ends else 0.0
    return [one, [(a, min(b, last), n) for a, b, n in one if a < last]]


def _program(spans: Sequence[Span], rows: dict[int, _Row], like: Program) -> Program | None:
    stages = [
        Stage(
            set_c=min(max(rows[n].set_c, COOLEST_SET_C), CEILING_C),
            lid=rows[n].lid,
            duration_s=min(end - start, LONGEST_STAGE_S),
        )
        for start, end, n in spans
        if end > start
    ]
    try:
        return replace(like.timed(), stages=tuple(stages))
    except InputError:  # no time at all, or a lid closed and opened twice: no fryer runs that
        return None
