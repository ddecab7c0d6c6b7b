"""Tills' exports in many layouts give the same pieces; nothing is dropped in silence."""

from __future__ import annotations

import datetime as dt
import io

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from frywright.model.errors import DataError, InputError
from frywright.model.trade import MenuItem, Trade, time_of_day, time_of_day_s
from frywright.plan.sales import pieces, read_sales

TRADE = Trade()
MENU = (
    MenuItem(item="Plate dark", also=("2PC DARK",), pieces=("bone_in/thigh 1", "bone_in/drum 1", "wedges 6")),
    MenuItem(item="Bucket", pieces=("bone_in 8",)),
    MenuItem(item="Lemonade"),
)
LINES = {
    "seconds": (
        "Date,Time,Item,Qty\n2026-11-20,12:01:10,Plate"
        " dark,2\n2026-11-20,12:20:00,Bucket,1\n2026-11-21,18:05:30,Plate dark,3\n"
    ),
    "one stamp, semicolons, decimal comma": (
        "Fecha y hora;Artículo;Cantidad\n20/11/2026 12:01;Plate dark;2,0\n20/11/2026"
        " 12:20;Bucket;1,0\n21/11/2026 18:05;2pc  dark;3,0\n"
    ),
    "twelve hours, tabs": (
        "Order #\tOrder date\tTime\tMenu item\tQuantity\n1\t11/20/2026\t12:01 PM\tPlate"
        " dark\t2\n2\t11/20/2026\t12:20 PM\tBucket\t1\n3\t11/21/2026\t6:05 PM\tPlate dark\t3\n"
    ),
    "intervals": (
        "Date,Interval,Item,Sold\n2026-11-20,12:00-12:15,Plate"
        " dark,2\n2026-11-20,12:15-12:30,Bucket,1\n2026-11-21,18:00-18:15,Plate dark,3\n"
    ),
    "one column an item": (
        "Date,Time,Plate"
        " dark,Bucket,Lemonade\n2026-11-20,12:00,2,,4\n2026-11-20,12:15,,1,2\n2026-11-21,18:00,3,,1\n"
    ),
    "preamble and totals": (
        "Sales by item (made up)\n\nDate,Time,Item,Qty\n2026-11-20,12:01,Plate"
        " dark,2\n2026-11-20,12:20,Bucket,1\n2026-11-21,18:05,Plate dark,3\nTotal,,,6\n"
    ),
    "figures of a spreadsheet": (
        "Date,Time,Item,Qty\n2026-11-20,12:01,Plate dark,2E+00\n2026-11-20,12:20,Bucket,1.0E+00\n"
        "2026-11-21,18:05,Plate dark,0.3e1\n"
    ),
    "one line a sale": (
        "Date,Time,Item\n2026-11-20,12:01,Plate dark\n2026-11-20,12:02,Plate dark\n2026-11-20,12:20,Bucket\n"
        + "2026-11-21,18:05,Plate dark\n" * 3
    ),
}


def told(text: str, **options):
    """Sales of a text."""
    return read_sales(io.BytesIO(text.encode()), "till.csv", TRADE, MENU, **options)


@pytest.mark.parametrize("layout", LINES)
def test_every_layout_gives_the_same_pieces(layout):
    """Two plates and a bucket on the first day, three plates on the second, whatever the columns."""
    history = pieces([told(LINES[layout])], TRADE, MENU)
    assert history.dates == (dt.date(2026, 11, 20), dt.date(2026, 11, 21))
    assert history.of("bone_in").sum(axis=1) == pytest.approx([12, 6])
    assert history.of("bone_in", "thigh").sum(axis=1) == pytest.approx([2, 3])
    assert history.of("wedges").sum(axis=1) == pytest.approx([12, 18])
    noon = int((time_of_day_s("12:00") - history.start_s) // 900)
    assert history.of("bone_in")[0, noon] == 4
    assert history.of("bone_in")[0, noon + 1] == 8


def test_what_the_menu_does_not_know_is_listed():
    """An unmapped item is listed with its count and counts nowhere."""
    history = pieces([told(LINES["seconds"] + "2026-11-21,18:10,Mystery box,4\n")], TRADE, MENU)
    assert history.unmapped == (("Mystery box", 4.0),)
    assert history.of("bone_in").sum() == 18
    wide = "Date,Time,Plate dark,Mystery box,Total\n2026-11-20,12:00,2,3,5\n2026-11-20,12:15,,1,1\n"
    history = pieces([told(wide)], TRADE, MENU)
    assert history.unmapped == (("Mystery box", 4.0),), "a column of its own is listed too, a total is none"
    assert history.of("bone_in").sum() == 4


def test_late_sales_belong_to_the_day_before_and_refunds_are_taken_back():
    """01:20 is still the evening before; a refund lowers its quarter hour; a void is no sale."""
    trade = Trade(closes="02:00")
    text = (
        "Date,Time,Item,Qty,Status\n2026-11-20,23:50,Bucket,2,\n2026-11-21,01:20,Bucket,3,\n2026-11-21,12:00,Bucket,2,\n"
        "2026-11-21,12:05,Bucket,-1,\n2026-11-21,12:06,Bucket,9,VOID\n"
    )
    sales = read_sales(io.BytesIO(text.encode()), "till.csv", trade, MENU)
    history = pieces([sales], trade, MENU)
    assert history.of("bone_in").sum(axis=1) == pytest.approx([40, 8])
    assert history.voided_n == 1
    assert sales.refused == ((6, "void", "2026-11-21,12:06,Bucket,9,VOID"),)


@pytest.mark.parametrize("head", ["Type", "Transaction", "Action", "Línea"])
@pytest.mark.parametrize("word", ["Void", "REFUND", "anulado"])
def test_a_void_is_no_sale_whatever_its_column_is_called(head, word):
    """Nine voided buckets are left out with their line; one that the till takes back itself is taken back."""
    text = f"Date,Time,Item,Qty,{head}\n2026-11-20,12:00,Bucket,3,Sale\n2026-11-20,12:05,Bucket,9,{word}\n"
    sales = told(text + f"2026-11-20,12:06,Bucket,-1,{word}\n2026-11-20,18:00,Bucket,3,Sale\n")
    assert pieces([sales], TRADE, MENU).of("bone_in").sum() == 40
    assert sales.refused == ((3, "void", f"2026-11-20,12:05,Bucket,9,{word}"),)


def test_sales_outside_of_the_hours_count_to_the_first_and_the_last_quarter_hour():
    """Before the first drop, in the last quarter hour, at the close and after it."""
    trade = Trade(opens="10:00", closes="12:00", first_drop="09:40")
    rows = [("05:00", 1), ("09:30", 2), ("11:44", 3), ("11:45", 4), ("12:00", 5), ("23:00", 6)]
    text = "Date,Time,Item,Qty\n" + "".join(f"2026-11-20,{time},Bucket,{n}\n" for time, n in rows)
    found = pieces([read_sales(io.BytesIO(text.encode()), "till.csv", trade, MENU)], trade, MENU).of(
        "bone_in"
    )[0]
    assert found.tolist() == [24.0, *[0.0] * 7, 24.0, 120.0]


def test_silence_in_open_hours_is_missing_and_quiet_hours_are_zero():
    """Two hours without any sale at a busy time are missing; an early quarter hour that is often empty stays
    zero.
    """
    rng = np.random.default_rng(3)
    rows = ["Date,Time,Item,Qty"]
    for day in range(1, 22):
        for second in np.arange(time_of_day_s("11:00"), time_of_day_s("21:00"), 900.0):
            if day == 9 and 12 * 3600 <= second < 14 * 3600:
                continue
            rows.append(f"2026-11-{day:02d},{time_of_day(second)},Bucket,{1 + rng.poisson(2)}")
    history = pieces([told("\n".join(rows) + "\n")], TRADE, MENU)
    assert [(d.day, a, b) for d, a, b in history.outages] == [(9, 12 * 3600.0, 14 * 3600.0)]
    assert np.isnan(history.of("bone_in")[8]).sum() == 8
    assert np.isnan(history.pieces_n).sum() == 8 * len(history.series)


def test_catering_is_set_apart():
    """An order of sixty pieces, and a line that says catering, do not teach the usual day."""
    text = (
        "Date,Time,Order no,Type,Item,Qty\n"
        "2026-11-20,12:00,7,Counter,Bucket,8\n"
        "2026-11-20,12:01,8,Counter,Bucket,1\n"
        "2026-11-20,12:02,9,Catering,Plate dark,2\n"
    )
    history = pieces([told(text)], TRADE, MENU)
    assert history.of("bone_in").sum() == 8
    assert ("bone_in", "", 64.0) in [(p, c, n) for _, p, c, n in history.catering]


def test_hours_are_spread_over_their_quarters():
    """An export by the hour gives each quarter hour its part, and slots of the day keep the total."""
    history = pieces(
        [
            told(
                "Date,Hour,Item,Qty\n2026-11-20,12:00,Bucket,4\n2026-11-20,13:00,Bucket,8\n2026-11-20,18:00,Bucket,1\n"
            )
        ],
        TRADE,
        MENU,
    )
    assert history.of("bone_in")[0].max() == 16
    slots = history.by_slot(history.of("bone_in"), TRADE)
    assert slots.shape == (1, TRADE.slots_count)
    assert slots.sum() == pytest.approx(104)


@pytest.mark.parametrize(
    "text", ["", "hello\n", "a,b\n1,2\n3,4\n", "Date,Item,Qty\n45/45/2026,Bucket,1\n45/46/2026,Bucket,1\n"]
)
def test_what_is_no_export_is_refused(text):
    """With a reason and a remedy."""
    with pytest.raises(DataError) as error:
        told(text)
    assert error.value.problems[0].remedy


def test_two_meanings_of_a_date_are_told():
    """Days up to the twelfth can be read both ways: a note says what was taken, the answer changes it."""
    text = "Date,Time,Item,Qty\n03/04/2026,12:00,Bucket,1\n04/04/2026,12:00,Bucket,1\n"
    assert told(text).notes
    assert {line.date.month for line in told(text, order="dmy").lines} == {4}


@settings(max_examples=150, deadline=None)
@given(st.binary(max_size=400))
def test_any_bytes_are_read_or_refused(data):
    """Nothing else than our own error comes out of any file, and every line is taken or listed."""
    try:
        sales = read_sales(
            io.BytesIO(b"Date,Time,Item,Qty\n2026-11-20,12:00,Bucket,1\n" * 3 + data), "x.csv", TRADE, MENU
        )
    except DataError:
        return
    pieces([sales], TRADE, MENU)
    assert len({n for n, _, _ in sales.refused}) == len(sales.refused)
    assert len(sales.lines) + len(sales.refused) >= sales.lines_count


def test_impossible_menus_and_days_are_refused():
    """A piece text that is none, hours out of order, a span that is none."""
    with pytest.raises(InputError):
        MenuItem(item="x", pieces=("bone_in thigh",))
    with pytest.raises(InputError):
        Trade(opens="25:00")
    with pytest.raises(InputError):
        Trade(first_drop="12:00", opens="10:00")
    with pytest.raises(InputError):
        Trade(rush=("noon",))
