"""How far readings cover the loads of a range of days: by product and fryer, the longest run without one,
days and cases that have none.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Any

from frywright.calibrate.thermometer import CheckOutcome, ThermometerCheck
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import CaseOpened, Reading
from frywright.model.business_day import business_time, usual_trade
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.rooms.standing import fryer_name, product_name

FILLS = dt.timedelta(days=1)
"""What is entered later than this after it happened fills no gap (project's own rule: a tablet that was off
line tells the next morning).
"""


def in_time(item: Kept[Any]) -> bool:
    """Whether an entry came soon enough to fill a gap."""
    return item.recorded_at - item.happened_at <= FILLS


@dataclass(frozen=True, slots=True, kw_only=True)
class Covered:
    """Loads of one product in one fryer and the readings taken of them. A run is loads in a row between two
    readings of that fryer.
    """

    product: str
    fryer: str
    loads_count: int
    readings_count: int
    longest_run_count: int
    run_from: dt.datetime | None
    run_to: dt.datetime | None


def covered(
    drops: Sequence[Kept[BoardTap]], readings: Sequence[Kept[Reading]], *, by_product: bool = True
) -> list[Covered]:
    """Every product and fryer that had a load, or every fryer whatever it cooked. A reading whose product
    nobody named counts for every product of its fryer; one without a fryer counts for none.
    """
    found = []
    pairs: dict[tuple[str, str], list[Kept[BoardTap]]] = {}
    for e in drops:
        pairs.setdefault((e.fact.product if by_product else "", e.fact.fryer), []).append(e)
    for (product, fryer), mine in sorted(pairs.items()):
        taken = [
            e
            for e in readings
            if e.fact.fryer == fryer and (not product or e.fact.product in (product, None, ""))
        ]
        run = _longest_run(mine, taken)
        found.append(
            Covered(
                product=product,
                fryer=fryer,
                loads_count=len(mine),
                readings_count=len(taken),
                longest_run_count=len(run),
                run_from=run[0].happened_at if run else None,
                run_to=run[-1].happened_at if run else None,
            )
        )
    return found


def _longest_run(drops: Sequence[Kept[BoardTap]], readings: Sequence[Kept[Reading]]) -> list[Kept[BoardTap]]:
    """Most loads in a row dropped without a reading between them; the reading after a load is of it."""
    events = sorted(
        [(e.happened_at, 0, e) for e in drops] + [(e.happened_at, 1, None) for e in readings],
        key=lambda row: row[:2],
    )
    longest: list[Any] = []
    run: list[Any] = []
    for _, reading, drop in events:
        if reading:
            run = run[:-1]  # the load just lifted is the one that was read
            longest = max(longest, run, key=len)
            run = []
        else:
            run.append(drop)
    return max(longest, run, key=len)


def gaps_of(
    kitchen: Kitchen, drops: Sequence[Kept[BoardTap]], readings: Sequence[Kept[Reading]], tr: Translate = str
) -> list[str]:
    """What readings are missing, by fryer, with every day named."""
    trade, found = usual_trade(kitchen), []
    for row in covered(drops, readings):
        if not row.readings_count:
            found.append(
                say(
                    "{product}, {fryer}: no reading. Loads: {count}.",
                    {
                        "product": product_name(kitchen, row.product),
                        "fryer": fryer_name(kitchen, row.fryer),
                        "count": float(row.loads_count),
                    },
                    translate=tr,
                )
            )
    for fryer in sorted({e.fact.fryer for e in drops}):
        loads = {business_time(trade, e.happened_at)[0] for e in drops if e.fact.fryer == fryer}
        read = {business_time(trade, e.happened_at)[0] for e in readings if e.fact.fryer == fryer}
        if loads - read:
            found.append(
                say(
                    "{fryer}: loads dropped and no probe reading. Days: {count} ({which}).",
                    {
                        "fryer": fryer_name(kitchen, fryer),
                        "count": float(len(loads - read)),
                        "which": listed(loads - read),
                    },
                    translate=tr,
                )
            )
    return found


def without_case(readings: Iterable[Kept[Reading]], cases: Iterable[CaseOpened]) -> list[int]:
    """Readings below their limit that no case was opened for, for them or for the mistyped one before."""
    found, known = list(readings), {case.reading_number for case in cases}
    known |= with_the_right_ones(found, known)
    return [e.number for e in found if e.fact.below and e.number not in known]


def with_the_right_ones(readings: Iterable[Kept[Reading]], numbers: Iterable[int]) -> set[int]:
    """Numbers of readings, and of those that took the place of a mistyped one among them."""
    found = set(numbers)
    for item in sorted(readings, key=lambda e: e.number):
        if item.replaces in found:
            found.add(item.number)
    return found


def unchecked_days(
    kitchen: Kitchen, drops: Iterable[Kept[BoardTap]], checks: Sequence[ThermometerCheck]
) -> set[dt.date]:
    """Days with loads on which no thermometer had a good check that was still valid."""
    trade = usual_trade(kitchen)
    good = [(c.at, c.due_at) for c in checks if c.outcome is CheckOutcome.GOOD]
    found: dict[dt.date, bool] = {}
    for item in drops:
        day = business_time(trade, item.happened_at)[0]
        if not found.get(day):
            found[day] = any(at <= item.happened_at <= due for at, due in good)
    return {day for day, valid in found.items() if not valid}


def listed(days: Iterable[dt.date]) -> str:
    """Every day, days in a row as a span."""
    rows = groupby(enumerate(sorted(days)), key=lambda row: row[1].toordinal() - row[0])
    spans = [[day for _, day in group] for _, group in rows]
    return ", ".join(
        f"{span[0].isoformat()} – {span[-1].isoformat()}" if len(span) > 1 else span[0].isoformat()
        for span in spans
    )
