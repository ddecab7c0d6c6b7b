"""Times in a logger's column: many spellings, one meaning, and a question where two are possible."""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

MOMENT = re.compile(
    r"^\s*+(?:(\d{1,4})[-/. ](\d{1,2}|[A-Za-zÀ-ÿ]{3,10})\.?[-/. ]{1,2}(\d{1,4})(?:[T, ]++|$))?"
    r"(?:(\d{1,4}):(\d{2})(?::(\d{2})(?:[.,:](\d{1,6}))?)?"
    r"\s*+([AaPp])?\.?\s?(?:[Mm]\.?)?\s*+(Z|[+-]\d{2}:?\d{2})?)?\s*+$"
)
MONTHS = {
    name: i // 2 + 1
    for i, name in enumerate(
        (
            "jan",
            "ene",
            "feb",
            "feb",
            "mar",
            "mar",
            "apr",
            "abr",
            "may",
            "may",
            "jun",
            "jun",
            "jul",
            "jul",
            "aug",
            "ago",
            "sep",
            "sep",
            "oct",
            "oct",
            "nov",
            "nov",
            "dec",
            "dic",
        )
    )
}
ORDERS = ("ymd", "dmy", "mdy", "ydm")
LIKELY_SPAN_DAYS = 62
DateText = tuple[str, str, str]


@dataclass(frozen=True, slots=True)
class Moment:
    """A time cell taken apart: date words (or None), seconds of the day, offset from UTC."""

    date: DateText | None
    second_s: float | None
    offset_s: float | None = None


def looks_like_moment(cell: str) -> bool:
    """Whether a cell has a date or a clock reading in it."""
    return read_moment(cell) is not None


def read_moment(cell: str) -> Moment | None:
    """A time cell, or None when it is none. Dates are not ordered yet."""
    found = MOMENT.match(cell)
    if found is None:
        return None
    first, middle, last, hour, minute, second, part, half, zone = found.groups()
    if hour is None:
        return Moment((first, middle, last), None) if first is not None else None
    if int(minute) > 59 or (second and int(second) > 59):
        return None
    hours = int(hour)
    if half:
        if not 1 <= hours <= 12:
            return None
        hours = hours % 12 + (12 if half in "pP" else 0)
    seconds = hours * 3600.0 + int(minute) * 60 + (int(second) if second else 0)
    if part:
        seconds += float(f"0.{part}")
    offset = None
    if zone:
        sign = -1 if zone[0] == "-" else 1
        offset = 0.0 if zone == "Z" else sign * (int(zone[1:3]) * 3600.0 + int(zone[-2:]) * 60)
    date = (first, middle, last) if first is not None else None
    return Moment(date, seconds, offset) if date is None or hours < 24 else None


def day_number(date: DateText, order: str) -> int | None:
    """Days since year 1 of date words read in an order such as ``dmy``, or None when impossible."""
    if not date[1].isdigit():
        month = MONTHS.get(date[1].lower()[:3], 0)
        year, day = (date[0], date[2]) if len(date[0]) == 4 else (date[2], date[0])
        return _ordinal(year, str(month), day)
    at = {letter: date[i] for i, letter in enumerate(order)}
    return _ordinal(at["y"], at["m"], at["d"])


def _ordinal(year: str, month: str, day: str) -> int | None:
    if len(year) not in (2, 4) or len(day) > 2 or len(month) > 2:
        return None
    full = int(year) + (2000 if len(year) == 2 else 0)
    if not YEARS[0] <= full <= YEARS[1]:
        return None
    try:
        return dt.date(full, int(month), int(day)).toordinal()
    except ValueError:
        return None


YEARS = (1970, 2199)
"""Years that a device's clock may show; others are slips or noise (own rule)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderFound:
    """Order of day, month and year; ``choices`` has more than one where the file leaves it open."""

    order: str
    choices: tuple[str, ...]
    reason: str


def _possible(dates: Sequence[DateText]) -> dict[str, list[int]]:
    """Orders in which every date is one, with their days."""
    found = {}
    for order in ORDERS:
        days = [day for day in (day_number(date, order) for date in dates) if day is not None]
        if len(days) == len(dates):
            found[order] = days
    return found


def _likely(possible: dict[str, list[int]]) -> dict[str, list[int]]:
    """Orders that keep a log together, of those the ones in which it goes forward."""
    spans = {order: max(days) - min(days) for order, days in possible.items()}
    shortest = min(spans.values())
    close = [o for o in possible if spans[o] <= shortest + LIKELY_SPAN_DAYS or spans[o] < 2 * shortest]
    rising = [o for o in close if all(b >= a for a, b in pairwise(possible[o]))]
    return {o: possible[o] for o in rising or close}


def date_order(dates: Sequence[DateText], separator: str) -> OrderFound:
    """Order of the dates of a file, in order of appearance.

    Orders that make an impossible date fall out first; then the ones that scatter a log over
    months that another order keeps within weeks. What remains is asked.
    """
    if any(not date[1].isdigit() for date in dates):
        return OrderFound(order="dmy", choices=("dmy",), reason="the month is spelled out")
    possible = _possible(dates)
    if not possible:
        return OrderFound(order="", choices=(), reason="no order of day, month and year fits every date")
    if len(dates[0][0]) == 4:
        possible.pop("ydm", None) if "ymd" in possible else None
        order = next(iter(possible))
        return OrderFound(order=order, choices=(order,), reason="the year stands first")
    possible.pop("ydm", None)
    if len(dates[0][2]) == 4 or (separator == "/" and len(possible) > 1):
        possible.pop("ymd", None)  # a two-digit year first is not written with slashes
    if separator == "." and "dmy" in possible:
        return OrderFound(order="dmy", choices=("dmy",), reason="dates with points put the day first")
    if len(possible) > 1 and len(set(dates)) > 1:
        possible = _likely(possible)
    if not possible:
        return OrderFound(order="", choices=(), reason="no order of day, month and year fits every date")
    choices = tuple(o for o in ("mdy", "dmy", "ymd") if o in possible)
    reason = (
        "only this order gives possible dates in a row"
        if len(choices) == 1
        else "more than one order is possible"
    )
    return OrderFound(order=choices[0], choices=choices, reason=reason)
