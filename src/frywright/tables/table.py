"""The raw table inside a logger's file: encoding, separator, header, rows. Nothing is interpreted yet.

Lines are read one by one through the standard ``csv`` module, so a file of any size streams and
a stray quote cannot swallow the lines after it.
"""

from __future__ import annotations

import codecs
import csv
import io
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import BinaryIO

from frywright.model.errors import DataError
from frywright.model.findings import Problem
from frywright.tables.moments import looks_like_moment

HEAD_BYTES = 65536
HEAD_LINES = 400
LONGEST_LINE = 20_000
SEPARATORS = (";", "\t", ",", "|", " ")
SAMPLE_ROWS = 60
NUMBER = re.compile(r"^[-+]?(?:\d++(?:[.,]\d*+)?|[.,]\d++)(?:[eE][-+]?\d++)?\s*+(?:°|deg|º)?\s*+[CcFfKk]?$")
OPEN_MARKS = {
    "",
    "-",
    "--",
    "---",
    "----",
    "-----",
    "open",
    "o.l",
    "o.l.",
    "ol",
    "oc",
    "err",
    "error",
    "fault",
    "nan",
    "n/a",
    "na",
    "#n/a",
    "null",
    "none",
    "inf",
    "-inf",
    "no data",
    "nosensor",
    "no sensor",
    "over",
    "under",
    "*",
    "?",
}
"""Marks for a reading that is not there. Common practice, no source."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Shape:
    """How the table is laid out. Line numbers count from 1."""

    encoding: str
    separator: str
    header: tuple[str, ...]
    units: tuple[str, ...]
    preamble: tuple[str, ...]
    first_line_number: int
    width_count: int


@dataclass(slots=True)
class Row:
    """One line of the table."""

    line_number: int
    cells: list[str]
    text: str


@dataclass(slots=True)
class Lines:
    """Counts lines as they pass, and the bytes behind them."""

    read_count: int = 0
    blank_count: int = 0
    long_lines: list[int] = field(default_factory=list)


def is_number(cell: str) -> bool:
    """Whether a cell reads as a number, a comma as decimal mark or a unit behind it allowed."""
    return bool(NUMBER.match(cell.strip()))


def is_open_mark(cell: str) -> bool:
    """Whether a cell marks a reading that is not there."""
    return cell.strip().strip("<>").lower() in OPEN_MARKS


def encoding_of(head: bytes) -> str:
    """Encoding by byte-order mark, by zero bytes, else UTF-8 if it is, else Windows-1252."""
    for mark, name in (
        (codecs.BOM_UTF8, "utf-8-sig"),
        (codecs.BOM_UTF16_LE, "utf-16"),
        (codecs.BOM_UTF16_BE, "utf-16"),
    ):
        if head.startswith(mark):
            return name
    sample = head[:4096]
    if sample.count(0) > len(sample) // 4:
        return "utf-16-le" if sample[1::2].count(0) >= sample[::2].count(0) else "utf-16-be"
    try:
        codecs.getincrementaldecoder("utf-8")().decode(head)
    except UnicodeDecodeError:
        return "cp1252"
    return "utf-8"


def shape_of(head: bytes, name: str, words: bool = False) -> Shape:
    """Layout from the first bytes of a file; with ``words`` a line needs a time and any other cell, not a
    number. Raises DataError: the file is empty, has no readings, or uses a comma for two things.
    """
    encoding = encoding_of(head)
    text = head.decode(encoding, errors="replace")
    lines = io.StringIO(text, newline=None).read().split("\n")[:HEAD_LINES]
    if not text.strip():
        raise _refuse(name, "the file is empty", "Export the log again; the original is kept as it is.")
    odd = text.count("\ufffd") + sum(c < "\t" or "\r" < c < " " for c in text[:4096])
    if odd > 0.05 * min(len(text), 4096):
        raise _refuse(
            name, "the file is not text", "Export the log as CSV or text from the logger's own program."
        )
    best = max(
        ((_score(lines, mark, words), -SEPARATORS.index(mark), mark) for mark in SEPARATORS), default=None
    )
    assert best is not None
    if best[0] <= 0:
        raise _refuse(
            name,
            (
                "no lines with a time and a reading were found"
                if not words
                else "no lines with a date and an item were found"
            ),
            (
                "A log needs a column of times and a column of numbers."
                if not words
                else "Export sales by item with date, time and quantity as CSV."
            ),
        )
    separator = best[2]
    rows = [split(line, separator) for line in lines]
    first = _first_data(rows, words)
    body = [row for row in rows[first : first + SAMPLE_ROWS] if any(cell.strip() for cell in row)]
    width = max({len(row) for row in body}, key=lambda n: sum(len(row) == n for row in body))
    header, units = _header(rows, first, width, words)
    if separator == "," and header and width == 2 * len(header) - 1 and len(header) > 1:
        raise _refuse(
            name,
            "a comma stands both between the columns and in the numbers",
            "Export again with semicolons or tabs between the columns.",
            first + 1,
            lines[first],
        )
    return Shape(
        encoding=encoding,
        separator=separator,
        header=header,
        units=units,
        preamble=tuple(lines[:first]),
        first_line_number=first + 1,
        width_count=width,
    )


def _refuse(name: str, what: str, remedy: str, line: int = 0, text: str = "") -> DataError:
    return DataError(
        [Problem(what=what, remedy=remedy, file=name, line_number=line, column_number=0, line=text[:120])]
    )


def split(line: str, separator: str) -> list[str]:
    """Cells of one line; quotes that do not pair are taken as stray, so a line never runs into the next."""
    cells = (
        line.split(separator) if '"' not in line and separator != " " and line else _quoted(line, separator)
    )
    ends_open = len(cells) > 1 and not cells[-1].strip() and line.rstrip(" ").endswith(separator)
    return cells[:-1] if ends_open else cells


def _quoted(line: str, separator: str) -> list[str]:
    """Cells of a line with quotes, or with spaces between them."""
    spaced = separator == " "
    try:
        return next(csv.reader([line], delimiter=separator, skipinitialspace=spaced, strict='"' in line), [])
    except csv.Error:
        return next(csv.reader([line.replace('"', "")], delimiter=separator, skipinitialspace=spaced), [])


def _is_data(row: list[str], words: bool = False) -> bool:
    """A line of the table: something like a time, and a number or an open mark beside it."""
    cells = [cell.strip() for cell in row]
    times = [i for i, cell in enumerate(cells) if looks_like_moment(cell)]
    if times and words:
        return len(times) < sum(bool(cell) for cell in cells)
    if times:
        return any(is_number(c) or (is_open_mark(c) and c) for i, c in enumerate(cells) if i not in times)
    numbers = sum(is_number(cell) for cell in cells)
    return numbers >= 2 and numbers + sum(is_open_mark(cell) for cell in cells) >= 0.8 * len(cells)


def _score(lines: list[str], separator: str, words: bool = False) -> float:
    """How much of a table a separator makes of the lines: share of data lines of the usual width."""
    rows = [split(line, separator) for line in lines if line.strip()]
    data = [row for row in rows if _is_data(row, words)]
    if not data:
        return 0.0
    widths = [len(row) for row in data]
    usual = max(set(widths), key=widths.count)
    steady = widths.count(usual) / len(rows)
    spaced = 0.3 if separator == " " else 1.0
    clean = sum(all(" " not in c.strip() or looks_like_moment(c.strip()) for c in row) for row in data) / len(
        data
    )
    return float(spaced * steady * (0.5 + 0.5 * clean) * min(usual, 3) ** 0.25)


def _first_data(rows: list[list[str]], words: bool = False) -> int:
    """First line from which most lines are data."""
    flags = [_is_data(row, words) for row in rows]
    for i, flag in enumerate(flags):
        following = [
            f for f, row in zip(flags[i : i + 8], rows[i : i + 8], strict=True) if any(c.strip() for c in row)
        ]
        if flag and sum(following) >= 0.5 * len(following):
            return i
    return flags.index(True)


def _header(
    rows: list[list[str]], first: int, width: int, words: bool = False
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Names of the columns, and the line of units below them if there is one."""
    above = [row for row in rows[max(0, first - 3) : first] if len([c for c in row if c.strip()]) >= 2]
    fits = [row for row in above if abs(len(row) - width) <= max(1, width // 2) and not _is_data(row, words)]
    if not fits:
        return (), ()
    last = [cell.strip() for cell in fits[-1]]
    short = all(len(re.sub(r"[^A-Za-z]", "", cell)) <= 4 for cell in last)
    if len(fits) > 1 and short and len(fits[-2]) >= len(last) - 1:
        return tuple(cell.strip() for cell in fits[-2]), tuple(last)
    return tuple(last), ()


class _Counted(io.RawIOBase):
    """A byte stream that knows how many bytes went by."""

    def __init__(self, stream: BinaryIO) -> None:
        self._stream, self.passed_bytes = stream, 0

    def readable(self) -> bool:
        return True

    def readinto(self, buffer: memoryview) -> int:  # type: ignore[override]
        data = self._stream.read(len(buffer))
        buffer[: len(data)] = data
        self.passed_bytes += len(data)
        return len(data)


def rows_of(stream: BinaryIO, shape: Shape, count: Lines, passed: list[int] | None = None) -> Iterator[Row]:
    """Every line from the first data line on, as a row; blank ones are counted and left out.

    ``passed`` is a one-element list that follows the bytes read, for a progress bar.
    """
    counted = _Counted(stream)
    text = io.TextIOWrapper(
        io.BufferedReader(counted, 1 << 18), encoding=shape.encoding, errors="replace", newline=None
    )
    for line in text:
        count.read_count += 1
        if passed is not None:
            passed[0] = counted.passed_bytes
        if count.read_count < shape.first_line_number:
            continue
        if len(line) > LONGEST_LINE:
            count.long_lines.append(count.read_count)
            line = line[:200]
        line = line.rstrip("\n")
        if line.strip():
            yield Row(count.read_count, split(line, shape.separator), line)
        else:
            count.blank_count += 1
