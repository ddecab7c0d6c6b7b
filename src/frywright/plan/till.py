"""A till's export in whatever layout, made into the one that :mod:`frywright.plan.sales` reads: workbooks,
item-by-hour tables, and columns that a person picked by eye.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal, get_args

from frywright.model.errors import DataError, InputError
from frywright.model.findings import Problem
from frywright.tables import sheet, table
from frywright.tables.moments import looks_like_moment, read_moment

Role = Literal["", "date", "time", "item", "quantity", "order", "kind", "void"]
ROLES: tuple[Role, ...] = get_args(Role)
HEADS = {"kind": "type", "void": "void status"}
"""How a role is called in the layout that is read."""
HOUR = re.compile(
    r"^(?P<hour>\d{1,2})(?:[:.h](?P<minute>\d{2})?)?(?::\d{2})?\s?(?P<half>[ap])?\.?m?\.?"
    r"(?:\s?(?:-|–|to|a)\s?\d{1,2}(?:[:.h]\d{0,2})?(?::\d{2})?\s?[ap]?\.?m?\.?)?$",
    re.I,
)
LEAST_HOURS, LEAST_BARE = 4, 6
"""Hours in a row, and bare numbers, from which they are taken as the hours of a table (own choice)."""
DAY = re.compile(
    r"(?<!\d)(?P<year>20\d{2})(?P<dash>-?)(?P<month>0[1-9]|1[0-2])(?P=dash)(?P<day>0[1-9]|[12]\d|3[01])(?!\d)"
    r"|(?<![\w/.-])(?P<told>\d{1,2}(?P<mark>[/.-])\d{1,2}(?P=mark)(?:20)?\d{2})(?![\d/-])"
)
"""A day in a text: year first, or two short figures and the year, whose order the whole file decides."""
PREVIEW_ROWS, MOST_COLUMNS = 8, 60


@dataclass(frozen=True, slots=True, kw_only=True)
class Picks:
    """What a person said of a file: the role of each column, and the day where the file does not say it."""

    columns: tuple[str, ...] = ()
    day: dt.date | None = None

    def __post_init__(self) -> None:
        if any(role not in ROLES for role in self.columns):
            raise InputError("columns", ", ".join(self.columns), "roles of columns")
        if self.columns and ("item" not in self.columns or self.columns.count("item") > 1):
            raise InputError("columns", "without one item", "picked, with one column for the item")
        if self.columns and "date" not in self.columns and self.day is None:
            raise InputError("day", "missing", "given, or a column picked for the date")


@dataclass(frozen=True, slots=True, kw_only=True)
class Preview:
    """The first rows of a file as columns, for a person to say what each is."""

    header: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


def readable(data: bytes, name: str, picks: Picks | None = None) -> bytes:
    """The bytes in the layout that is read; as they are where nothing has to be done. Raises DataError: a
    workbook that cannot be read, or an item-by-hour table without a day.
    """
    text = sheet.text_of(data, name) if sheet.is_workbook(data) else data
    if picks and picks.columns:
        return _picked(text, picks)
    return _by_hour(text, name, picks.day if picks else None) or text


def preview(data: bytes, name: str) -> Preview:
    """How a file looks, whatever it is. Raises DataError: it is no table at all."""
    rows = _rows(sheet.text_of(data, name) if sheet.is_workbook(data) else data)
    start = _header_of(rows)
    if not rows or len(rows[start]) < 2:
        raise DataError(
            [
                Problem(
                    what="no table was found in the file",
                    remedy="Export sales by item with date, time and quantity as CSV.",
                    file=name,
                )
            ]
        )
    width = min(len(rows[start]), MOST_COLUMNS)
    body = [tuple((row + [""] * width)[:width]) for row in rows[start + 1 : start + 1 + PREVIEW_ROWS]]
    return Preview(header=tuple(cell.strip() for cell in rows[start][:width]), rows=tuple(body))


def _rows(text: bytes) -> list[list[str]]:
    """Every line that says something, as cells, by the separator that makes most even columns."""
    lines = text.decode(table.encoding_of(text[: table.HEAD_BYTES]), errors="replace").splitlines()
    lines = [line[: table.LONGEST_LINE] for line in lines if line.strip()]

    def even(mark: str) -> tuple[int, int]:
        widths = [len(table.split(line, mark)) for line in lines[:60]]
        wide = [w for w in widths if w > 1]
        usual = max(set(wide), key=wide.count) if wide else 1
        return wide.count(usual), usual

    mark = max((m for m in table.SEPARATORS if m != " "), key=even)
    return [[cell.strip() for cell in table.split(line, mark)] for line in lines]


def _header_of(rows: Sequence[Sequence[str]]) -> int:
    """The line of column names: the first as wide as most lines."""
    widths = [sum(bool(cell) for cell in row) for row in rows[:60]]
    usual = max(set(widths), key=lambda w: (widths.count(w), w), default=1)
    return next((n for n, w in enumerate(widths) if w >= max(2, usual - 1)), 0)


def _picked(text: bytes, picks: Picks) -> bytes:
    rows = _rows(text)
    start, roles = _header_of(rows), picks.columns
    heads = [HEADS.get(role, role) for role in roles if role]
    lines = [[*([] if "date" in roles else ["date"]), *heads]]
    for row in rows[start + 1 :]:
        cells = [row[n] if n < len(row) else "" for n, role in enumerate(roles) if role]
        lines.append([*([] if "date" in roles else [str(picks.day)]), *cells])
    return _written(lines)


def _written(lines: Sequence[Sequence[str]]) -> bytes:
    out = io.StringIO()
    csv.writer(out, delimiter=";", lineterminator="\n").writerows(lines)
    return out.getvalue().encode()


def _hour(cell: str) -> str:
    """A cell that names an hour, or an interval by its start, as HH:MM; empty for any other."""
    found = HOUR.match(cell)
    if not found or not (
        cell.isdigit() or found["minute"] or found["half"] or set(cell.lower()) & set("-–h")
    ):
        return ""
    hour, half = int(found["hour"]), (found["half"] or "").lower()
    if (half and not 1 <= hour <= 12) or hour > 23:
        return ""
    hour = hour % 12 + (12 if half == "p" else 0) if half else hour
    minute = int(found["minute"] or 0)
    return f"{hour:02d}:{minute:02d}" if minute < 60 else ""


def _run(cells: Sequence[str]) -> list[int]:
    """Places of cells that name hours one after another, none where there are too few or they do not rise.
    Bare numbers are hours only where each is one more than the last.
    """
    named = [n for n, cell in enumerate(cells) if _hour(cell)]
    clear = [n for n in named if not cells[n].isdigit()]
    bare = [n for n in named if cells[n].isdigit()]
    if len(clear) >= LEAST_HOURS:
        hours = [_hour(cells[n]) for n in clear]
        turns = sum(a >= b for a, b in pairwise(hours))
        return clear if turns <= 1 and len(set(hours)) == len(hours) else []
    steps = {int(cells[b]) - int(cells[a]) for a, b in pairwise(bare)}
    plain = not any(looks_like_moment(cell) for cell in cells if not cell.isdigit())
    return bare if plain and len(bare) >= LEAST_BARE and steps <= {1, -23} else []


def _by_hour(text: bytes, name: str, day: dt.date | None) -> bytes | None:
    """An item-by-hour table as lines of date, time, item and quantity; None where the file is none."""
    rows = _rows(text)
    for n, row in enumerate(rows[:60]):
        places = _run(row)
        if places and places[0] > 0:
            return _across(rows, n, places, name, day)
    column = [row[0] if row else "" for row in rows]
    places = _run(column)
    if places and len(places) >= 0.6 * (len(rows) - places[0]) and places[0] > 0:
        return _down(rows, places, name, day)
    return None


def _names_of(rows: Sequence[Sequence[str]], names: Sequence[int]) -> tuple[int, int | None]:
    """The column of items, and that of dates where there is one. Of two columns of words the one that names
    more is the item, the other its kind.
    """
    first = {n: _at(rows, 0, n) for n in names}
    dated = next((n for n in names if _dated(first[n])), None) if len(names) > 1 else None
    words = [n for n in names[::-1] if n != dated and not table.is_number(first[n])]
    named = {n: len({_at([row], 0, n) for row in rows} - {""}) for n in words}
    return max(words, key=named.__getitem__, default=names[-1]), dated


def _between(row: Sequence[str], places: Sequence[int]) -> bool:
    """Whether a line stands between lines of items: a word or two, and no count of an hour."""
    filled = [cell for cell in row if cell]
    return len(filled) <= 2 and not any(table.is_number(_at([row], 0, n)) for n in places)


def _across(
    rows: Sequence[Sequence[str]], head: int, places: Sequence[int], name: str, day: dt.date | None
) -> bytes:
    """Hours along the top, an item in each line; a date stands in its own column, in a line between, above,
    or in the file's name. A day may have its own line of hours.
    """
    known, hours = str(day or "") or _day_in([*rows[:head], [name]]), rows[head]
    item, dated = _names_of(rows[head + 1 :], [n for n in range(places[0]) if n not in places])
    lines = [["date", "time", "item", "quantity"]]
    for row in rows[head + 1 :]:
        if (again := _run(row)) and _at([row], 0, item) == hours[item]:
            places, hours = again, row
            continue
        if _between(row, places):
            known = _day_in([row]) or known
            continue
        known = _at([row], 0, dated) or known if dated is not None else known
        title = _at([row], 0, item)
        counts = [(n, row[n]) for n in places if n < len(row) and row[n] not in ("", "0", "-")]
        lines += [[known or _no_day(name), _hour(hours[n]), title, count] for n, count in counts]
    return _written(lines)


def _down(
    rows: Sequence[Sequence[str]], places: Sequence[int], name: str, day: dt.date | None
) -> bytes | None:
    """Hours down the side, an item in each column."""
    heads = rows[places[0] - 1]
    numbers = [
        n for n in range(1, len(heads)) if heads[n] and table.is_number(_at(rows, places[0], n) or "x")
    ]
    items = [n for n in numbers if not re.match(r"(sub|grand )?total", heads[n], re.I)]
    cells = [_at(rows, places[0], n) for n in range(1, len(heads))]
    if not items or not all(table.is_number(cell) for cell in cells if cell):
        return None
    known = str(day or "") or _day_in([*rows[: places[0]], [name]]) or _no_day(name)
    lines = [["date", "time", "item", "quantity"]]
    for place in places:
        row = rows[place]
        lines += [
            [known, _hour(row[0]), heads[n], row[n]]
            for n in items
            if n < len(row) and row[n] and row[n] not in ("0", "-")
        ]
    return _written(lines)


def _at(rows: Sequence[Sequence[str]], row: int, column: int) -> str:
    return rows[row][column] if row < len(rows) and column < len(rows[row]) else ""


def _dated(cell: str) -> bool:
    """Whether a cell is a date, in whatever order."""
    moment = read_moment(cell)
    return bool(moment and moment.date) or DAY.fullmatch(cell) is not None


def _day_in(rows: Sequence[Sequence[str]]) -> str:
    """The one day that lines name, as 2026-11-25 or as it stands there; empty where there is none or more
    than one.
    """
    found = set()
    for row in rows:
        for day in DAY.finditer(" ".join(row)):
            found.add(day["told"] or f"{day['year']}-{day['month']}-{day['day']}")
    return found.pop() if len(found) == 1 else ""


def _no_day(name: str) -> str:
    raise DataError(
        [
            Problem(
                what="the table has hours and items, but no day",
                remedy="Say which day it is of, or name the file with the day, such as sales 2026-11-25.csv.",
                file=name,
            )
        ]
    )
