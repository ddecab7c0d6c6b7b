"""Is a fryer wearing? Timed figures against its first day, their trend, and what usually lies behind a slow
one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import combinations
from math import inf
from statistics import median

from frywright.model.errors import InputError, one_of
from frywright.model.findings import Note, Outcome

LIMIT_N, WATCH_N = 1.30, 1.15
"""A figure 30 % above its first day is out (common practice for pressure build, no source; taken for the
others by this project), half of that is watched.
"""
RECOVERED_S = 20.0
"""A recovery shorter than this counts as this long: the oil was back as good as at once, and a watch tells no
ratio of it (project's own rule). The other figures are never so short, or a short one matters.
"""
LEAST_COUNT = 4
"""Readings below which no trend is told (project's own rule)."""
FIGURES = {
    "heat_up": (
        "Slow heat: voltage, a lost phase or element, low gas, scale, low oil, a draught under the hood."
    ),
    "pressure_build": "Slow pressure: the lid seal, a load smaller than usual, or a vent that leaks.",
    "vent_down": (
        "Slow vent: a passage that clogs. Clean it by the manual; where the gauge does not fall to zero it is"
        " stop-use."
    ),
    "recovery": "Slow recovery: weak heat, a load larger than usual, low or old oil.",
}
"""Timed figures, and their usual causes, most likely first (common practice, no source)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Wear:
    """Where a figure stands: ratio of the middle of its last three to the first day, and days until it would
    pass the limit.
    """

    figure: str
    first_s: float
    last_s: float
    ratio_n: float
    reaches_days_n: float
    outcome: Outcome
    note: Note


def wear(figure: str, first_s: float | None, days: Sequence[float], values_s: Sequence[float]) -> Wear:
    """Judge a figure's readings. Raises InputError: an unknown figure, or readings that are no times.

    Parameters
    ----------
    first_s : the first day's; None where nobody kept it
    days, values_s : when it was read (days, rising) and what was read, oldest first
    """
    one_of(FIGURES, figure, "figure")
    if (
        len(days) != len(values_s)
        or not values_s
        or min(values_s) <= 0
        or (first_s is not None and first_s <= 0)
    ):
        raise InputError("readings", f"{len(values_s)}", "one or more times above 0")
    last = median(values_s[-3:])
    if first_s is None:
        note = Note(
            kind="no_first_day", text="No figure of its first day is kept, so nothing can be said of wear."
        )
        return Wear(
            figure=figure,
            first_s=0.0,
            last_s=last,
            ratio_n=0.0,
            reaches_days_n=inf,
            outcome=Outcome.UNKNOWN,
            note=note,
        )
    base = max(first_s, RECOVERED_S) if figure == "recovery" else first_s
    ratio = last / base
    reaches = _reaches(base * LIMIT_N, days, values_s) if ratio < LIMIT_N else 0.0
    if ratio >= LIMIT_N:
        note = Note(kind="out", text=FIGURES[figure])
    elif ratio >= WATCH_N or reaches < 60.0:
        note = Note(kind="watch", text=FIGURES[figure])
    else:
        note = Note(kind="normal", text="As on its first day.")
    outcome = Outcome.FAILS if ratio >= LIMIT_N else Outcome.MEETS
    return Wear(
        figure=figure,
        first_s=first_s,
        last_s=last,
        ratio_n=ratio,
        reaches_days_n=reaches,
        outcome=outcome,
        note=note,
    )


def _reaches(limit: float, days: Sequence[float], values: Sequence[float]) -> float:
    """Days from the last reading until the line of middle slopes (Theil-Sen) passes the limit."""
    if len(values) < LEAST_COUNT:
        return inf
    slopes = [
        (b - a) / (t - s) for (s, a), (t, b) in combinations(zip(days, values, strict=True), 2) if t > s
    ]
    slope = median(slopes) if slopes else 0.0
    level = median([v + slope * (days[-1] - d) for d, v in zip(days, values, strict=True)])
    return max(0.0, (limit - level) / slope) if slope > 0 else inf
