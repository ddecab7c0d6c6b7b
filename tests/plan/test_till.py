"""Exports in other layouts: item by hour, hours down the side, columns picked by eye."""

from __future__ import annotations

import datetime as dt
import io

import pytest

from frywright.model.errors import DataError, InputError
from frywright.model.trade import Trade
from frywright.plan.sales import read_sales
from frywright.plan.till import Picks, preview, readable

ACROSS = """Sales by item and hour;;;;;
Day: 2026-11-25;;;;;
Item;{hours};Total
Bone-in 8 pc;1;4;6;2;13
Tenders 3;0;2;;1;3
Total;1;6;6;3;16
"""
WANTED = [
    "2026-11-25;10:00;Bone-in 8 pc;1",
    "2026-11-25;11:00;Bone-in 8 pc;4",
    "2026-11-25;12:00;Bone-in 8 pc;6",
    "2026-11-25;13:00;Bone-in 8 pc;2",
    "2026-11-25;11:00;Tenders 3;2",
    "2026-11-25;13:00;Tenders 3;1",
]
DOWN = (
    "Hour,Bone,Tenders,Total\n10:00-11:00,1,2,3\n11:00-12:00,1,2,3\n12:00-13:00,0,5,5\n13:00-14:00,2,2,4\n"
    "Total,4,11,15\n"
)


def lines(text, name="sales.csv", picks=None):
    """The lines of the layout that is read, without its header."""
    return readable(text.encode(), name, picks).decode().strip().split("\n")[1:]


@pytest.mark.parametrize(
    "hours",
    [
        "10:00;11:00;12:00;13:00",
        "10 AM;11 AM;12 PM;1 PM",
        "10:00-11:00;11:00-12:00;12:00-13:00;13:00-14:00",
        "10h;11h;12h;13h",
        "10:00 AM - 11:00 AM;11:00 AM - 12:00 PM;12:00 PM - 1:00 PM;1:00 PM - 2:00 PM",
    ],
)
def test_items_by_hours_are_read(hours):
    """Five ways to write the hours give the same lines; empty cells and noughts are none."""
    assert [x for x in lines(ACROSS.format(hours=hours)) if "Total" not in x] == WANTED


def test_bare_hours_are_read_where_they_run():
    """9 10 11 12 13 14 along the top; a number of the item before them is no item."""
    text = "Item,PLU,9,10,11,12,13,14\nBone,12,1,2,3,4,0,0\n"
    found = lines(text, picks=Picks(day=dt.date(2026, 11, 25)))
    assert found[0] == "2026-11-25;09:00;Bone;1"
    assert len(found) == 4


def test_hours_down_the_side_are_read():
    """An item in each column, the day in the file's name."""
    found = lines(DOWN, "sales 2026-11-25.csv")
    assert found[0] == "2026-11-25;10:00;Bone;1"
    assert len(found) == 7
    assert not any("Total" in x for x in found)


@pytest.mark.parametrize("hours", [range(11, 20), range(9, 22)])
@pytest.mark.parametrize("form", ["{}", "{}:00"])
def test_each_day_may_have_its_own_line_of_hours(hours, form):
    """A line of hours that comes again is no item called Item, and its hours are those of its own day."""

    def day(date, hours):
        top = ";".join(form.format(hour) for hour in hours)
        return f"Sales by hour;{date}\nItem;{top}\nBone" + ";2" * len(hours) + "\n"

    found = lines(day("2026-11-24", range(10, 22)) + day("2026-11-25", hours))
    assert found == [
        *(f"2026-11-24;{hour:02d}:00;Bone;2" for hour in range(10, 22)),
        *(f"2026-11-25;{hour:02d}:00;Bone;2" for hour in hours),
    ]


@pytest.mark.parametrize("columns", [("Item", "Category"), ("Category", "Item")])
def test_the_item_is_not_its_category(columns):
    """Of two columns of words the item is the one that names more."""
    rows = [{"Item": "Bone", "Category": "Chicken"}, {"Item": "Wings", "Category": ""}]
    text = ",".join(columns) + ",10am,11am,12pm,1pm\n"
    text += "".join(",".join(row[c] for c in columns) + ",1,,,\n" for row in rows)
    found = lines(text, picks=Picks(day=dt.date(2026, 11, 25)))
    assert found == ["2026-11-25;10:00;Bone;1", "2026-11-25;10:00;Wings;1"]


def test_days_between_the_lines_are_followed():
    """Two days in one file, each under its own line."""
    text = "Item,10:00,11:00,12:00,13:00\n2026-11-24,,,,\nBone,1,,,\n2026-11-25,,,,\nBone,2,,,\n"
    assert lines(text) == ["2026-11-24;10:00;Bone;1", "2026-11-25;10:00;Bone;2"]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Ventas;;;;\nFecha;Item;10-11;11-12;12-13;13-14\n{0};Bone;1,0;;;\n;Wings;;2,0;;\n", "x.csv"),
        ("Ventas\nItem;10:00;11:00;12:00;13:00\nFecha: {0}\nBone;1,0;;;\nWings;;2,0;;\n", "x.csv"),
        ("Fecha: {0}\nItem;10h;11h;12h;13h\nBone;1,0;;;\nWings;;2,0;;\n", "x.csv"),
        ("Item;10:00;11:00;12:00;13:00\nBone;1,0;;;\nWings;;2,0;;\n", "ventas {0}.csv"),
        (
            "De 01.10.2026 a 31.10.2026\nFecha;Item;10h;11h;12h;13h\n{0};Bone;1,0;;;\n{0};Wings;;2,0;;\n",
            "x",
        ),
    ],
)
@pytest.mark.parametrize("day", ["30-10-2026", "30.10.2026", "10-30-26"])
def test_a_day_is_read_as_the_till_writes_it(text, name, day):
    """Day first or month first, in a column of its own, above, between the lines or in the file's name; a
    date stands once for the lines below it.
    """
    found = readable(text.format(day).encode(), name.format(day))
    sold = read_sales(io.BytesIO(found), name, Trade()).lines
    assert [(x.date, x.second_s / 3600, x.item, x.quantity_n) for x in sold] == [
        (dt.date(2026, 10, 30), 10, "Bone", 1),
        (dt.date(2026, 10, 30), 11, "Wings", 2),
    ]


@pytest.mark.parametrize("text", ["1/2/3;4;5", "v1.2.26;x", "10.10;11.11"])
def test_a_text_that_only_looks_like_a_day_is_none(text):
    """A version, a fraction, two numbers: still no day."""
    with pytest.raises(DataError):
        readable(f"{text}\nItem;10h;11h;12h;13h\nBone;1;2;;\n".encode(), "x.csv")


@pytest.mark.parametrize(
    "text", [DOWN, ACROSS.replace("2026-11-25", "Wednesday").format(hours="10:00;11:00;12:00;13:00")]
)
def test_without_a_day_it_says_so(text):
    """No day anywhere: the error says what to do."""
    with pytest.raises(DataError) as refused:
        readable(text.encode(), "x.csv")
    assert "no day" in refused.value.problems[0].what


@pytest.mark.parametrize(
    "text",
    [
        "date,time,item,qty\n2026-11-24,10:00,Bone,1\n2026-11-24,11:00,Bone,2\n",
        "date,time,A,B,C,D\n2026-11-24,10:00,1,2,3,4\n2026-11-24,11:00,5,6,7,8\n",
        "date,time,A,B,C,D,E,F\n2026-11-24,10:00,1,2,3,4,5,6\n2026-11-24,11:00,5,6,7,8,9,9\n",
        "Item,PLU,7,9,3,11,2,5\nBone,1,2,3,4,5,6,9\n",
        "time,item,qty\n10:00,Bone,1\n11:00,Bone,1\n12:00,Bone,1\n13:00,Bone,1\n14:00,Bone,1\n",
        "",
    ],
)
def test_other_layouts_are_left_as_they_are(text):
    """Lines of items, a column an item, and nothing at all."""
    assert readable(text.encode(), "x.csv") == text.encode()


def test_columns_are_taken_as_picked():
    """Headers in another tongue, columns in any order; a day for all lines where the file has none."""
    text = "Was|egal|Wann|Wieviel\nBone|x|24.11.2026 10:05|2\n"
    assert preview(text.encode(), "x").header == ("Was", "egal", "Wann", "Wieviel")
    found = lines(text, picks=Picks(columns=("item", "", "date", "quantity")))
    assert found == ["Bone;24.11.2026 10:05;2"]
    found = lines("Was|Uhr\nBone|10:05\n", picks=Picks(columns=("item", "time"), day=dt.date(2026, 11, 24)))
    assert found == ["2026-11-24;Bone;10:05"]


@pytest.mark.parametrize(
    ("picks", "field"),
    [
        ({"columns": ("date", "quantity")}, "columns"),
        ({"columns": ("item", "item", "date")}, "columns"),
        ({"columns": ("item", "colour")}, "columns"),
        ({"columns": ("item", "time")}, "day"),
    ],
)
def test_picks_that_cannot_be_are_refused(picks, field):
    """No item, two items, an unknown role, no day."""
    with pytest.raises(InputError) as refused:
        Picks(**picks)
    assert refused.value.field == field
