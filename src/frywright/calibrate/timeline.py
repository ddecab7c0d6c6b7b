"""One clock for a log: order, duplicates, jumps, daylight saving, gaps. Only order and clock are mended."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.model.findings import Note

Array = NDArray[np.float64]
Places = NDArray[np.int64]
HOUR_S, DAY_S = 3600.0, 86400.0
GAP_S = 15.0
"""Gaps longer than this are never bridged: the longest hold of an instant cook limit in force."""
NIGHT_H = (0.0, 4.5)
MOST_GAPS_TOLD = 20


@dataclass(frozen=True, slots=True, kw_only=True)
class ClockJump:
    """A place where the clock was set: row before it, size, and what it probably was."""

    row: int
    size_s: float
    kind: str  # daylight_saving, midnight, clock_set


@dataclass(frozen=True, slots=True, kw_only=True)
class Timeline:
    """Rows kept (places in the file's order) with rising times, and what was found."""

    keep: Places
    time_s: Array
    step_s: float
    jumps: tuple[ClockJump, ...]
    gaps: tuple[tuple[float, float], ...]
    moved_count: int
    spread_count: int
    same: Places  # rows that repeat another, word for word
    clash: Places  # rows with the time of another and other values
    turned: bool = False  # the newest line stood first


def _step(time: Array) -> float:
    forward = np.diff(time)
    forward = forward[forward > 0]
    return float(np.median(forward)) if len(forward) else 1.0


def mend(time_s: Array, values: Array, dated: bool) -> Timeline:
    """Put the rows of a log on one rising clock. A log whose newest line stands first is read from its end.

    Parameters
    ----------
    time_s : (n,) seconds as read, in file order
    values : (n, channels) readings, NaN where there is none
    dated : whether times carry dates; without, midnight runs the clock back by a day
    """
    if not _newest_first(time_s):
        return _rising(time_s, values, dated)
    line, last = _rising(time_s[::-1], values[::-1], dated), len(time_s) - 1
    return replace(
        line,
        keep=last - line.keep,
        same=last - line.same,
        clash=last - line.clash,
        jumps=tuple(replace(jump, row=last - jump.row) for jump in line.jumps),
        turned=True,
    )


def _newest_first(time_s: Array) -> bool:
    """Whether more lines step back in time than on."""
    change = np.diff(time_s)
    return bool(np.count_nonzero(change < 0) > np.count_nonzero(change > 0))


def _rising(time_s: Array, values: Array, dated: bool) -> Timeline:
    """Rows of a log whose oldest line stands first, on one rising clock."""
    time, spread = _spread_coarse(np.array(time_s, dtype=float))
    step = _step(time)
    time, jumps = _join_jumps(time, values, step, dated)
    order = np.argsort(time, kind="stable")
    moved = int(np.count_nonzero(order[1:] < order[:-1])) if len(order) > 1 else 0
    sorted_time, rows = time[order], values[order]
    twin = np.flatnonzero(np.diff(sorted_time) <= 0) + 1
    alike = np.all((rows[twin] == rows[twin - 1]) | (np.isnan(rows[twin]) & np.isnan(rows[twin - 1])), axis=1)
    kept = np.ones(len(order), dtype=bool)
    kept[twin] = False
    keep = order[kept]
    final = sorted_time[kept]
    wide = np.flatnonzero(np.diff(final) > max(GAP_S, 3.0 * step))
    gaps = tuple((float(final[i]), float(final[i + 1])) for i in wide)
    return Timeline(
        keep=keep,
        time_s=final,
        step_s=step,
        jumps=tuple(jumps),
        gaps=gaps,
        moved_count=moved,
        spread_count=spread,
        same=order[twin[alike]],
        clash=order[twin[~alike]],
    )


def _spread_coarse(time: Array) -> tuple[Array, int]:
    """Rows of a clock that shows whole minutes, set evenly inside their minute; others untouched.

    Only when most rows share their minute with others and every time is a whole minute.
    """
    if len(time) < 10 or np.any(time % 60.0 != 0):
        return time, 0
    starts = np.flatnonzero(np.r_[True, np.diff(time) != 0])
    counts = np.diff(np.r_[starts, len(time)])
    if np.median(counts) < 2:
        return time, 0
    usual = float(np.median(counts[1:-1])) if len(counts) > 2 else float(counts.max())
    spread = time.copy()
    for number, (start, count) in enumerate(zip(starts, counts, strict=True)):
        share = np.arange(count) / max(usual, count)
        if number == 0 and count < usual:  # a log that starts inside a minute ends it
            share += 1.0 - count / usual
        spread[start : start + count] += 60.0 * share
    return spread, len(time)


def _join_jumps(time: Array, values: Array, step: float, dated: bool) -> tuple[Array, list[ClockJump]]:
    """Times with lasting jumps of the clock taken out. Rows only out of order are left to sorting."""
    shift, jumps = np.zeros(len(time)), []
    change = np.diff(time)
    for i in np.flatnonzero((change < 0) | (np.abs(change - HOUR_S - step) <= 2 * step)):
        size = float(change[i])
        night = NIGHT_H[0] <= (time[i] % DAY_S) / 3600.0 <= NIGHT_H[1]
        if size > 0:
            kind, back = "daylight_saving", -HOUR_S
            if not (dated and night):
                continue
        elif not dated and abs(size + DAY_S - step) <= max(60.0, 3 * step):
            kind, back = "midnight", DAY_S
        elif dated and night and abs(size - step + HOUR_S) <= 2 * step:
            kind, back = "daylight_saving", HOUR_S
        elif _out_of_order(time, values, int(i), step):
            continue
        else:
            kind, back = "clock_set", step - size
        shift[i + 1 :] += back
        jumps.append(ClockJump(row=int(i), size_s=size, kind=kind))
    return time + shift, jumps


def _out_of_order(time: Array, values: Array, i: int, step: float) -> bool:
    """Whether rows after a step back in time are late or repeated rows, and no set clock.

    Late rows fill holes in what came before; repeated ones carry the same values; a clock that
    was set back runs over times that are taken, with other values.
    """
    past = time[: i + 1]
    if i > 0 and past[:-1].max() <= time[i + 1]:
        return True  # row i itself ran ahead
    beyond = np.flatnonzero(time[i + 1 :] > time[i])
    block = slice(i + 1, i + 1 + int(beyond[0])) if len(beyond) else slice(i + 1, len(time))
    late = time[block]
    if late.max() < past.min():
        return bool(past.min() - late.max() <= max(GAP_S, 3 * step))
    order = np.argsort(past, kind="stable")
    near = order[np.minimum(np.searchsorted(past[order], late), i)]
    taken = np.abs(past[near] - late) <= 0.25 * step
    if np.mean(taken) < 0.5:
        return True
    alike = np.all(
        (values[near] == values[block]) | (np.isnan(values[near]) & np.isnan(values[block])), axis=1
    )
    return bool(np.mean(alike[taken]) > 0.8)


def told(line: Timeline, place: NDArray[np.int64]) -> list[Note]:
    """What was mended, by the lines of the file."""
    notes: list[Note] = []
    words = {
        "daylight_saving": (
            "The clock changed by {size_s} after line {line}: daylight saving. Times go on without the"
            " change."
        ),
        "midnight": "Midnight after line {line}; times go on.",
        "clock_set": (
            "The clock was set back by {size_s} after line {line}; times after it are counted on from there."
        ),
    }
    for jump in line.jumps:
        notes.append(
            Note(
                kind=jump.kind,
                text=words[jump.kind],
                values={"size_s": abs(jump.size_s), "line": int(place[jump.row])},
            )
        )
    if line.turned:
        notes.append(Note(kind="order", text="The newest line stands first: the file is read from its end."))
    if line.moved_count:
        notes.append(
            Note(
                kind="order",
                text="Lines out of order were put in order. Places: {count}.",
                values={"count": line.moved_count},
            )
        )
    if line.spread_count:
        notes.append(
            Note(
                kind="coarse_clock",
                text="The clock shows whole minutes; the {count} lines are set evenly inside their minutes.",
                values={"count": line.spread_count},
            )
        )
    for a, b in line.gaps[:MOST_GAPS_TOLD]:
        notes.append(
            Note(
                kind="gap",
                text="No lines for {gap_s}, from {from_s} after the start.",
                values={"gap_s": b - a, "from_s": a - float(line.time_s[0])},
            )
        )
    return notes
