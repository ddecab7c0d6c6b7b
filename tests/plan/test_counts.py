"""A point or comma in a till's quantity: by the cell, else by the whole file, else refused."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from frywright.model.errors import DataError
from frywright.plan.counts import count_of, decimal_mark
from tests.plan.test_sales import told

HEAD = "Date;Time;Item;Qty\n"


def sold(*cells: str) -> list[float]:
    """Quantities of a file with these cells."""
    lines = "".join(f"2026-11-20;12:{n:02d};Bucket;{cell}\n" for n, cell in enumerate(cells))
    return [line.quantity_n for line in told(HEAD + lines).lines]


@pytest.mark.parametrize(
    ("cells", "meant"),
    [
        (("1,234", "2", "15"), [1234.0, 2.0, 15.0]),
        (("1.234", "2", "15"), [1234.0, 2.0, 15.0]),
        (("1,234", "2.5"), [1234.0, 2.5]),
        (("1.234", "2,5"), [1234.0, 2.5]),
        (("1,234", "2,0"), [1.234, 2.0]),
        (("1,234", "12,345,000", "1"), [1234.0, 1.0]),
        (("1,234.50", "1.5", "1,000"), [1234.5, 1.5, 1000.0]),
        (("1.234,50", "1,000"), [1234.5, 1.0]),
        (("1,000", "2,000", "12,000"), [1.0, 2.0, 12.0]),
        (("0,500", "1,250"), [0.5, 1.25]),
        (("-1,200", "3"), [-1200.0, 3.0]),
        (("1.5E+00", "1,234"), [1.5, 1234.0]),
        (("2,5", "2.5"), [2.5, 2.5]),
        (("1234", "2"), [1234.0, 2.0]),
        (("1,234", "-", "", "2"), [1234.0, 2.0]),
    ],
)
def test_the_whole_file_says_what_a_mark_means(cells, meant):
    """Whole numbers, another mark, decimals, marks at every third digit, three decimals in every count."""
    assert sold(*cells) == meant


def test_a_count_with_letters_behind_it_is_no_count():
    """Neither thousands nor a temperature: the line is refused."""
    assert [count_of(text, "") for text in ("1.2K", "2k", "12 C", "12°F")] == [None] * 4


@pytest.mark.parametrize(
    "cells",
    [
        ("1,234",),
        ("1,000", "2,000"),
        ("1,234", "2,500"),
        ("1,234", "1.234", "2"),
        ("1,234", "2,5", "2.5"),
        ("1,234", "1500"),
        ("1,234", "0", "-"),
    ],
)
def test_what_stays_open_is_refused_with_its_line(cells):
    """Never a part of a piece in silence."""
    with pytest.raises(DataError) as refused:
        sold(*cells)
    (problem,) = refused.value.problems
    assert "thousands or parts of a piece" in problem.what
    assert (problem.line_number, problem.line.endswith(cells[0])) == (2, True)


def test_a_column_an_item_and_a_quoted_comma():
    """Columns of items decide together; a comma between columns and in quotes."""
    wide = told("Date;Time;Bucket;Lemonade\n2026-11-20;12:00;1,234;3\n").lines
    assert [line.quantity_n for line in wide] == [1234.0, 3.0]
    text = 'Date,Time,Item,Qty\n2026-11-20,12:00,Bucket,"1,234"\n2026-11-20,12:01,Bucket,2\n'
    assert [line.quantity_n for line in told(text).lines] == [1234.0, 2.0]


@given(st.lists(st.integers(0, 99_999), min_size=1, max_size=20), st.sampled_from(".,"))
def test_whole_numbers_written_with_thousands_are_read_back_or_refused(counts, mark):
    """Round trip of what a till would write."""
    texts = [f"{n:,}".replace(",", mark) for n in counts]
    found = decimal_mark(texts)
    large = [n for n in counts if n >= 1000]
    alone = bool(large) and all(n == 0 or n >= 1000 for n in counts)
    if alone and len(large) >= 3 and all(n % 1000 == 0 for n in large):
        assert found == mark  # 1,000 in every line is one piece with three decimals
    elif alone:
        assert found is None
    else:
        assert [count_of(text, found) for text in texts] == counts


@pytest.mark.slow
@given(st.text(max_size=12))
def test_any_cell_is_read_or_none(text):
    """No text breaks it."""
    mark = decimal_mark([text])
    assert mark in (None, "", ".", ",")
    value = count_of(text, mark or ".")
    assert value is None or abs(value) <= 1e5
