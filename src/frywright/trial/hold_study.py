"""How long may it be held? Reads a hold study's table and judges it by the place's hot-holding limit."""

from __future__ import annotations

import csv

from frywright.calibrate.hold import HoldAim, HoldLife, HoldReading, hold_life
from frywright.model.errors import DataError, InputError
from frywright.model.findings import Problem
from frywright.model.kitchen import Kitchen
from frywright.model.units import to_inside
from frywright.verdicts.place import place_of

FIXED = ("repeat", "minute", "core_f", "core_c")


def _table(text: str, file: str) -> tuple[list[dict[str, str]], str, list[str]]:
    """Rows of the table, the column of the core and those of scores."""
    first = text.splitlines()[0] if text.strip() else ""
    rows = list(csv.DictReader(text.splitlines(), delimiter=max(",;\t", key=first.count)))
    names = [n.strip() for n in (rows[0].keys() if rows else ())]
    core = next((n for n in ("core_c", "core_f") if n in names), "")
    if not rows or "repeat" not in names or "minute" not in names or not core:
        raise DataError(
            [
                Problem(
                    what="the table lacks repeat, minute and core_f (or core_c)",
                    remedy="Name the columns in the first line.",
                    file=file,
                )
            ]
        )
    return rows, core, [n for n in names if n not in FIXED]


def study(
    kitchen: Kitchen,
    text: str,
    file: str,
    least_score: float,
    share_frac: float,
    hot_hold_c: float | None = None,
) -> HoldLife:
    """Hold life from a table with columns repeat, minute, core_f or core_c, and one column for each score.
    ``hot_hold_c`` is the limit of hot holding where the authority said one; else the catalog's counts.
    Raises DataError: columns are missing or a cell is no number; every such line is named.
    Raises InputError: no hot-holding limit is known for the place.
    """
    rows, core, scores = _table(text, file)
    number = kitchen.site.number
    problems, readings = [], []
    for line, row in enumerate(rows, start=2):
        cells = {k.strip(): (v or "").strip() for k, v in row.items() if k}
        try:
            readings.append(
                HoldReading(
                    repeat=cells["repeat"],
                    after_s=60.0 * number(cells["minute"], "minute"),
                    core_c=to_inside(number(cells[core], core), core[-1]),
                    scores={n: number(cells[n], n) for n in scores},
                )
            )
        except InputError as error:
            problems.append(
                Problem(
                    what="a cell is no number: {cause}",
                    remedy="Mend it or leave the line out.",
                    file=file,
                    line_number=line,
                    line=", ".join(cells.values()),
                    values={"cause": error},
                )
            )
    if problems:
        raise DataError(problems)
    limit = place_of(kitchen).hot_hold_c() if hot_hold_c is None else hot_hold_c
    if limit is None:
        raise InputError(
            "hot holding limit", "unknown", "known for the place", where=kitchen.site.jurisdiction
        )
    return hold_life(
        readings, HoldAim(hot_c=limit, least_scores=dict.fromkeys(scores, least_score), share_frac=share_frac)
    )
