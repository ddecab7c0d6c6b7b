"""Tables and time cells as loggers and tills write them: encodings, separators, headers, dates, workbooks."""

from __future__ import annotations

import datetime as dt
import io

import pytest

from frywright.model.errors import DataError
from frywright.tables.moments import Moment, date_order, day_number, read_moment
from frywright.tables.sheet import _measured, _sheet_measured, is_workbook
from frywright.tables.table import (
    LONGEST_LINE,
    Lines,
    encoding_of,
    is_number,
    is_open_mark,
    rows_of,
    shape_of,
    split,
)
from frywright.tables.workbook import _cell

LOG = "Time;Oil °C;Core °C\n" + "".join(f"10:00:{s:02d};170,{s % 10};{4 + s},5\n" for s in range(30))


@pytest.mark.parametrize(
    ("codec", "mark", "name"),
    [
        ("utf-8", b"", "utf-8"),
        ("utf-8", b"\xef\xbb\xbf", "utf-8-sig"),
        ("utf-16-le", b"\xff\xfe", "utf-16"),
        ("utf-16-be", b"\xfe\xff", "utf-16"),
        ("utf-16-le", b"", "utf-16-le"),
        ("utf-16-be", b"", "utf-16-be"),
        ("cp1252", b"", "cp1252"),
    ],
)
def test_a_log_is_read_whatever_its_encoding(codec, mark, name):
    """With and without a byte-order mark, in either order of bytes."""
    data = mark + LOG.encode(codec)
    assert encoding_of(data) == name
    shape = shape_of(data, "x")
    assert (shape.encoding, shape.separator, shape.header) == (name, ";", ("Time", "Oil °C", "Core °C"))
    rows = list(rows_of(io.BytesIO(data), shape, Lines()))
    assert [row.cells for row in rows] == [line.split(";") for line in LOG.splitlines()[1:]]
    assert [row.line_number for row in rows] == list(range(2, 32))


@pytest.mark.parametrize("mark", [";", "\t", ",", "|"])
@pytest.mark.parametrize("above", [0, 4])
def test_a_header_stands_above_its_table_with_its_units_between(mark, above):
    """After a preamble of any length; short words below the names are units."""
    body = "".join(mark.join((f"10:00:{s:02d}", f"170.{s % 10}", f"{4 + s}.5")) + "\n" for s in range(20))
    head = mark.join(("Time", "Oil", "Core piece")) + "\n" + mark.join(("s", "°C", "°C")) + "\n"
    shape = shape_of(("Logger 5\n" * above + head + body).encode(), "x")
    assert (shape.separator, shape.width_count, shape.first_line_number) == (mark, 3, above + 3)
    assert (shape.header, shape.units) == (("Time", "Oil", "Core piece"), ("s", "°C", "°C"))
    assert shape.preamble == (*["Logger 5"] * above, *head.splitlines())
    bare = shape_of(body.encode(), "x")
    assert (bare.header, bare.units, bare.first_line_number) == ((), (), 1)


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("", "empty"),
        (" \n\n", "empty"),
        ("words only\nand more words\n", "no lines with a time and a reading"),
        ("\x00\x01\x02" * 400, "not text"),
        (
            "Time,Oil,Core\n" + "".join(f"10:00:{s:02d},170,5,4,{s % 10}\n" for s in range(30)),
            "both between the columns and in the numbers",
        ),
    ],
)
def test_what_is_no_table_is_refused_with_what_to_do(text, what):
    with pytest.raises(DataError) as refused:
        shape_of(text.encode(), "x.csv")
    (problem,) = refused.value.problems
    assert what in problem.what and problem.remedy and problem.file == "x.csv"
    with pytest.raises(DataError, match="a date and an item"):
        shape_of(b"only words\nhere\n", "x", words=True)


def test_lines_are_split_and_odd_ones_do_not_swallow_their_neighbours():
    assert split('a;"b;c";d', ";") == ["a", "b;c", "d"]
    assert split('a;"b;c', ";") == ["a", "b", "c"]
    assert split("1;2;", ";") == ["1", "2"] and split("1;2;;", ";") == ["1", "2", ""]
    assert split("1 ;2 ;  ", ";") == ["1 ", "2 "] and split(";", ";") == [""] and split("", ";") == []
    assert split("10:00   170.5  4.5", " ") == ["10:00", "170.5", "4.5"]
    data = b"10:00:00;1;2\n\n10:00:01;" + b"9" * LONGEST_LINE + b"\n10:00:02;3;4"
    shape, count, passed = shape_of(b"10:00:00;1;2\n10:00:01;3;4\n", "x"), Lines(), [0]
    rows = list(rows_of(io.BytesIO(data), shape, count, passed))
    assert [row.line_number for row in rows] == [1, 3, 4] and len(rows[1].text) == 200
    assert (count.read_count, count.blank_count, count.long_lines, passed) == (4, 1, [3], [len(data)])


@pytest.mark.parametrize(
    ("cell", "number"),
    [
        ("1", 1),
        ("-1.5", 1),
        ("+1,5", 1),
        (".5", 1),
        ("1.", 1),
        ("2e3", 1),
        ("170 °C", 1),
        ("170f", 1),
        ("1.2.3", 0),
        ("", 0),
        ("-", 0),
        ("10:00", 0),
        ("psi", 0),
        ("5 kg", 0),
    ],
)
def test_a_number_may_have_a_unit_behind_it(cell, number):
    assert is_number(cell) is bool(number)


def test_marks_of_a_reading_that_is_not_there():
    assert all(is_open_mark(m) for m in ("", "OPEN", " O.L. ", "<over>", "---", "n/a", "-inf"))
    assert not any(is_open_mark(m) for m in ("0", "opened", "1"))


@pytest.mark.parametrize(
    ("cell", "moment"),
    [
        ("10:05", Moment(None, 36300.0)),
        ("10:05:07.5", Moment(None, 36307.5)),
        ("12:05 AM", Moment(None, 300.0)),
        ("12:05 pm", Moment(None, 43500.0)),
        ("1:05 PM", Moment(None, 47100.0)),
        ("25:00", Moment(None, 90000.0)),
        ("2026-11-25", Moment(("2026", "11", "25"), None)),
        ("2026-11-25 10:05:07Z", Moment(("2026", "11", "25"), 36307.0, 0.0)),
        ("2026-11-25T10:05:07+02:30", Moment(("2026", "11", "25"), 36307.0, 9000.0)),
        ("2026-11-25T10:05:07-07:00", Moment(("2026", "11", "25"), 36307.0, -25200.0)),
        ("25 Nov 2026 10:05", Moment(("25", "Nov", "2026"), 36300.0)),
        ("10:60", None),
        ("10:05:60", None),
        ("13:05 PM", None),
        ("0:05 PM", None),
        ("2026-11-25 24:00", None),
        ("170.5", None),
        ("text", None),
    ],
)
def test_a_time_cell_is_taken_apart(cell, moment):
    assert read_moment(cell) == moment


@pytest.mark.parametrize(
    ("date", "order", "day"),
    [
        (("2026", "11", "25"), "ymd", dt.date(2026, 11, 25)),
        (("26", "11", "25"), "ymd", dt.date(2026, 11, 25)),
        (("25", "11", "2026"), "dmy", dt.date(2026, 11, 25)),
        (("11", "25", "26"), "mdy", dt.date(2026, 11, 25)),
        (("2026", "25", "11"), "ydm", dt.date(2026, 11, 25)),
        (("25", "Nov", "26"), "mdy", dt.date(2026, 11, 25)),
        (("2026", "dic", "3"), "dmy", dt.date(2026, 12, 3)),
        (("31", "11", "2026"), "dmy", None),
        (("25", "xyz", "2026"), "dmy", None),
        (("025", "11", "2026"), "dmy", None),
        (("25", "11", "026"), "dmy", None),
    ],
)
def test_a_date_is_the_day_of_its_order(date, order, day):
    assert day_number(date, order) == (day.toordinal() if day else None)


def words(text: str) -> list[tuple[str, str, str]]:
    return [tuple(day.split("/")) for day in text.split()]  # type: ignore[misc]


@pytest.mark.parametrize(
    ("dates", "mark", "choices"),
    [
        ("2026/11/25 2026/11/26", "-", ("ymd",)),
        ("2026/25/11", "-", ("ydm",)),
        ("25/11/2026", "/", ("dmy",)),
        ("11/25/2026", "/", ("mdy",)),
        ("5/11/2026", "/", ("mdy", "dmy")),
        ("5/11/2026", ".", ("dmy",)),
        ("11/25/2026", ".", ("mdy",)),
        ("5/11/2026 6/11/2026 7/11/2026 8/11/2026", "/", ("dmy",)),
        ("11/5/2026 11/6/2026 11/7/2026 11/8/2026", "/", ("mdy",)),
        ("10/11/12", "-", ("mdy", "dmy", "ymd")),
        ("10/11/12", "/", ("mdy", "dmy")),
        ("25/Nov/2026", " ", ("dmy",)),
        ("31/31/2026", "/", ()),
        ("3/4/2026 1/5/2026", "/", ("dmy",)),
        ("3/4/2026 1/5/2026 3/4/2026", "/", ("mdy", "dmy")),
    ],
)
def test_an_order_of_dates_is_what_keeps_a_file_together(dates, mark, choices):
    found = date_order(words(dates), mark)
    assert found.choices == choices and found.order == (choices[0] if choices else "") and found.reason


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (dt.datetime(2026, 11, 25, 10, 5, 7), "2026-11-25 10:05:07"),
        (dt.datetime(2026, 11, 25), "2026-11-25"),
        (dt.date(2026, 11, 25), "2026-11-25"),
        (dt.timedelta(hours=30, minutes=5, seconds=59), "30:05"),
        (dt.time(10, 5), "10:05:00"),
        (3.0, "3"),
        (3.25, "3.25"),
        ("a \t b\n", "a b"),
        (None, ""),
        (7, "7"),
    ],
)
def test_a_cell_of_a_workbook_as_text(value, text):
    assert _cell(value) == text


def test_a_workbook_is_measured_before_it_is_opened():
    """Three million cells, by place or by count; a cell far away counts all before it."""
    assert is_workbook(b"PK\x03\x04rest") and not is_workbook(b"PK\x05\x06rest")

    def sheet(*cells):
        return b"".join(b'<c r="%s"/>' % c for c in cells)

    _sheet_measured(sheet(b"A1", b"Z115384", b"B2"), "x")
    _sheet_measured(sheet(b"AA111111"), "x")
    for far in (b"Z115385", b"AA111112", b"XFD1048576", b"AAAA165"):
        with pytest.raises(DataError, match="too large"):
            _sheet_measured(sheet(b"A1", far), "x")
    for data in (b"", b"PK\x03\x04", b"text"):
        with pytest.raises(DataError, match="cannot be read"):
            _measured(data, "x")
