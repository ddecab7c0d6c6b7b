"""The history of speed tells a program that fell from a machine that is another."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from benchmarks.history import FALL, LAST, TURNS, Row, fell, multiple, read, usual, write

ROW = Row("2026-11-26", "a processor, 2 cores", "avx2", "3.11.7", "0.50.0", "one cook", 2.0)


def test_a_row_fell_where_it_is_fifteen_in_a_hundred_above_the_median_of_the_last_five():
    """Older rows and a single bad day count for nothing; faster is never a fall."""
    history = [replace(ROW, ratio=r) for r in (9.0, 9.0, 2.0, 2.1, 1.9, 5.0, 2.0)]
    assert len(history) > LAST
    assert usual(history, ROW) == 2.0
    assert fell(history, replace(ROW, ratio=2.0 * FALL + 0.01))
    assert not fell(history, replace(ROW, ratio=2.0 * FALL - 0.01))
    assert not fell(history, replace(ROW, ratio=0.5))


@pytest.mark.parametrize(
    "other", [{"name": "two"}, {"processor": "b"}, {"features": "neon"}, {"llvm": "0.51"}]
)
def test_another_machine_or_row_is_not_compared(other):
    """Where nothing was measured nothing fell."""
    assert usual([replace(ROW, **other)], ROW) is None
    assert not fell([replace(ROW, ratio=0.1, **other)], ROW)


def test_rows_come_back_as_they_were_written(tmp_path):
    """To four digits, one file for many days."""
    path = tmp_path / "history.csv"
    assert read(path) == []
    write([ROW], path)
    write([replace(ROW, date="2026-11-27", ratio=1.23456)], path)
    assert read(path) == [ROW, replace(ROW, date="2026-11-27", ratio=1.235)]


def test_a_multiple_is_of_the_least_times():
    """A clock that jumps once, as when another program takes the processor, changes nothing."""
    lengths = [3.0, 6.0, 80.0, 4.0, 2.0, 100.0, *[2.5, 4.5] * TURNS]  # yardstick, action, yardstick, ...
    ends = np.cumsum(lengths)
    moments = iter(np.stack([ends - lengths, ends], axis=1).ravel())

    def clock() -> float:
        return float(next(moments))

    calls = []
    told = multiple(lambda: calls.append("action"), lambda: calls.append("yardstick"), clock)
    assert told == pytest.approx(4.0 / 2.0)
    assert calls[:4] == ["yardstick", "action"] * 2
