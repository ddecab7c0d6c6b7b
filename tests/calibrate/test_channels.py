"""What a column may be, at the edges of what it reads."""

from __future__ import annotations

import csv

import numpy as np
import pytest

from frywright.calibrate.channels import guess_role, guess_unit, inside_values, unit_in
from frywright.calibrate.columns import numbers_of
from frywright.tables.table import split

NAN = float("nan")


@pytest.mark.parametrize(
    ("high", "low", "unit"),
    [
        (250.0, 10.0, "f"),
        (240.0, 10.0, "c"),
        (76.0, 19.0, "c"),
        (74.0, 19.0, ""),
        (76.0, 21.0, ""),
        (136.0, 101.0, "c"),
        (134.0, 101.0, ""),
        (214.0, 101.0, "c"),
        (216.0, 101.0, ""),
        (170.0, 99.0, ""),
    ],
)
def test_a_unit_is_guessed_at_the_edges_of_what_can_be(high, low, unit):
    assert guess_unit(np.array([low] * 50 + [high] * 50 + [NAN]))[0] == unit


@pytest.mark.parametrize(
    ("low", "middle", "high", "role"),
    [
        (90.0, 111.0, 120.0, "oil"),
        (90.0, 109.0, 120.0, "other"),
        (44.0, 50.0, 56.0, "core"),
        (46.0, 50.0, 56.0, "other"),
        (44.0, 50.0, 54.0, "other"),
        (44.0, 50.0, 124.0, "core"),
        (44.0, 50.0, 126.0, "other"),
    ],
)
def test_a_part_is_guessed_at_the_edges_of_what_it_reads(low, middle, high, role):
    values = np.array([low] * 30 + [middle] * 40 + [high] * 30 + [NAN])
    assert guess_role("CH1", "c", values)[0] == role


def test_impossible_readings_are_taken_out_and_counted():
    """Below -45 or above 400 degC; a gauge below -60 or above 300 kPa."""
    values, count = inside_values(np.array([-45.0, -45.1, 400.0, 400.1, NAN]), "c")
    assert count == 2 and np.isnan(values).tolist() == [False, True, False, True, True]
    values, count = inside_values(np.array([-60.0, -60.1, 300.0, 300.1]), "kpa")
    assert count == 2 and values[[0, 2]].tolist() == [-60e3, 300e3]
    assert inside_values(np.array([212.0]), "f")[0][0] == pytest.approx(100.0)
    assert (unit_in("Oil (°F)"), unit_in("T °C or °F", "kPa"), unit_in("plain")) == ("f", "kpa", "")


def test_a_cell_that_is_no_number_costs_no_other_its_value():
    """Of 200 cells one is a word, one an open mark: their places and all other values as each cell says."""
    cells = [f"{n / 8:.3f}" for n in range(200)]
    cells[70], cells[130] = "lid up", "----"
    values, bad, opened = numbers_of(cells)
    wanted = np.arange(200) / 8
    wanted[[70, 130]] = np.nan
    np.testing.assert_array_equal(values, wanted)
    assert (bad.tolist(), opened) == ([70], 1)


@pytest.mark.parametrize("line", ["a;b;c", "a;b;", ";;", "a", '"a;b";c', '1;2" ;3', "a ; b ;"])
def test_a_line_falls_into_the_cells_of_the_csv_reader(line):
    """With quotes and without, by Python's reader; an empty end is left out."""
    cells = next(csv.reader([line], delimiter=";"))
    assert split(line, ";") == (cells if cells[-1].strip() or len(cells) == 1 else cells[:-1])
