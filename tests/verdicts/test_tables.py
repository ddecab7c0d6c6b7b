"""Time-temperature tables and lethality against their printed cells and closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from frywright.catalog import load
from frywright.model.errors import InputError
from frywright.model.units import to_inside
from frywright.verdicts.lethality import equivalent_time_s, first_above_s, log_reduction, longest_above_s
from frywright.verdicts.tables import fsis_poultry, uk_equivalents

CELLS = load.rows("standards/fsis_poultry_7log.csv")


def test_both_tables_are_whole():
    """720 cells: chicken and turkey, 136..165 F, fat 1..12 % (FSIS-GD-2021-0014, tables 3 and 4)."""
    assert len(CELLS) == 720
    assert {(r["species"], r["fat_pct"]) for r in CELLS} == {
        (s, str(f)) for s in ("chicken", "turkey") for f in range(1, 13)
    }


@pytest.mark.parametrize("species", ["chicken", "turkey"])
def test_every_printed_cell_returns_its_own_time(species):
    """Each cell gives exactly its printed time."""
    for row in CELLS:
        if row["species"] == species:
            table = fsis_poultry(species, float(row["fat_pct"]))
            assert table.time_at(to_inside(float(row["temperature_f"]), "f")) == float(row["time_s"])


def test_printed_excerpt():
    """Cells typed again from the printed page: 136 F 63.3 min at 1 %, 150 F 3.5 min at 10 %, 160 F 14.8 s at
    5 %.
    """
    for f, fat, seconds in ((136, 1, 63.3 * 60), (150, 10, 3.5 * 60), (160, 5, 14.8), (165, 12, 0.0)):
        assert fsis_poultry("chicken", fat).time_at((f - 32) / 1.8) == pytest.approx(seconds)


def test_no_credit_outside_the_table():
    """Below the first row nothing; above the last row no more than the last row; unknown fat is 12 %."""
    table = fsis_poultry("chicken", 5)
    assert table.time_at(57.0) is None
    assert table.time_at(90.0) == table.time_s[-1]
    assert float(table.rate(np.array([40.0]))[0]) == 0.0
    assert float(table.rate(np.array([120.0]))[0]) == pytest.approx(1.0 / table.instant_s)
    assert fsis_poultry("chicken", 30.0) == fsis_poultry("chicken", 12.0)
    with pytest.raises(InputError, match="species"):
        fsis_poultry("duck")


@given(st.floats(58.0, 71.0), st.integers(1, 12))
def test_interpolation_lies_between_its_rows(temp, fat):
    """Between rows the time lies between theirs and a steady hold of that time collects exactly 1."""
    table = fsis_poultry("chicken", fat)
    needed = table.time_at(temp)
    i = np.searchsorted(table.temp_c, temp)
    assert min(table.time_s[i - 1 : i + 1]) - 1e-9 <= needed <= max(table.time_s[i - 1 : i + 1]) + 1e-9
    if needed > table.instant_s:
        assert table.share(np.array([0.0, needed]), np.array([temp, temp])) == pytest.approx(1.0, rel=1e-6)


def test_uk_equivalents_follow_z_and_round_up():
    """Printed UK rows are 120 s x 10^((70-T)/7.5) rounded to the safe side."""
    table = uk_equivalents()
    for temp, seconds in ((60.0, 2700.0), (65.0, 600.0), (70.0, 120.0), (75.0, 30.0), (80.0, 6.0)):
        assert table.time_at(temp) == seconds
        assert seconds >= 120.0 * 10 ** ((70.0 - temp) / 7.5) - 1e-6


def test_linear_ramp_closed_form():
    """z/(b ln 10) x [10^((T1-Tr)/z) - 10^((T0-Tr)/z)]: 0.11189 and 3.186834 min; 1.721 log at D 3.9 s."""
    for end, minutes in ((66.0, 0.11189), (74.0, 3.186834)):
        seconds = (end - 40.0) / 4.0 * 60.0
        for samples in (2, 7, 200):
            t = np.linspace(0.0, seconds, samples)
            got = equivalent_time_s(t, 40.0 + 4.0 * t / 60.0, 70.0, 5.5) / 60.0
            exact = 5.5 / (4.0 * math.log(10)) * (10 ** ((end - 70) / 5.5) - 10 ** ((40 - 70) / 5.5))
            assert got == pytest.approx(exact, rel=1e-9)
            assert got == pytest.approx(minutes, rel=1e-4)
    t = np.linspace(0.0, 390.0, 40)
    assert log_reduction(t, 40.0 + 4.0 * t / 60.0, 3.9, 70.0, 5.5) == pytest.approx(1.721, abs=1e-3)


def test_murphy_z_value():
    """Murphy et al. 2004: z from D(55) 43.33 and D(70) 0.07 min is 5.37, printed 5.34 K."""
    t = load.table("kinetics/salmonella.toml")
    assert 15.0 / math.log10(43.33 / 0.07) == pytest.approx(t["z_k"], abs=0.04)
    assert t["d_reference_s"] == pytest.approx(0.07 * 60.0)


def test_credit_floor_and_ceiling():
    """No credit below the range of the data, and none beyond its top."""
    t = np.array([0.0, 100.0, 200.0])
    assert equivalent_time_s(t, np.array([40.0, 54.0, 40.0]), 70.0, 5.34, low_c=55.0) == 0.0
    hot = equivalent_time_s(t, np.array([90.0, 90.0, 90.0]), 70.0, 5.34, ceiling_c=74.0)
    assert hot == pytest.approx(200.0 * 10 ** (4.0 / 5.34))


def test_crossings_are_interpolated():
    """First and longest times above a level use the crossing, not the sample."""
    t, temp = [0.0, 10.0, 20.0, 30.0], [60.0, 80.0, 60.0, 80.0]
    assert first_above_s(t, temp, 70.0) == pytest.approx(5.0)
    assert longest_above_s(t, temp, 70.0) == pytest.approx(10.0)
    assert first_above_s(t, temp, 99.0) is None
