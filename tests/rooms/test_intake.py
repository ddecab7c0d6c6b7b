"""Readings that stream in: order, repeats, late ones, wrong clocks, bounds, hostile names."""

from __future__ import annotations

import math

import pytest

from frywright.model.errors import InputError
from frywright.rooms.cook.intake import (
    MOST_CHANNELS,
    MOST_KEPT,
    MOST_TOGETHER,
    Intake,
    Sample,
    gaps_of,
    moment_of,
    named,
    temp_of,
)

NOW = 1_800_000_000.0


def sent(intake: Intake, second: float, at: float | None, temp: float = 20.0, channel: str = "K1") -> int:
    return intake.add("box", [Sample(channel=channel, temp_c=temp, at_s=at)], NOW + second)


def seconds(intake: Intake, channel: str = "box/K1") -> list[float]:
    return [round(t - NOW, 2) for t, _ in intake.readings(channel)]


def test_readings_come_out_in_order_whatever_order_they_came_in():
    intake = Intake()
    for second in (0, 1, 2, 3):
        sent(intake, second, NOW + second, temp=20.0 + second)
    sent(intake, 3.5, NOW + 1.5, temp=21.5)
    told = intake.readings("box/K1")
    assert [(t - NOW, c) for t, c in told] == [(0, 20.0), (1, 21.0), (1.5, 21.5), (2, 22.0), (3, 23.0)]
    assert seconds(intake)[2:] == [round(t - NOW, 2) for t, _ in intake.readings("box/K1", NOW + 1)]


def test_a_reading_delivered_again_counts_once():
    intake = Intake()
    new = [sent(intake, s, NOW + at) for s, at in ((0, 0), (1, 1), (1.2, 1), (2, 2), (2.1, 0), (3, 3))]
    assert new == [1, 1, 0, 1, 0, 1]
    assert seconds(intake) == [0, 1, 2, 3]
    assert intake.clocks()[0].dropped == {"repeated": 2}


@pytest.mark.parametrize("off", [3 * 3600.0, -86400.0 * 20_000, 95.0, -12.0])
def test_a_device_clock_off_by_a_constant_is_taken_off(off):
    """Fast, slow, or at 1970 after a power cut: times are ours, and the page can say by how much."""
    intake = Intake()
    for second in range(20):
        sent(intake, second + 0.3, NOW + second + off)
    assert seconds(intake) == pytest.approx([s + 0.3 for s in range(20)])
    assert intake.clocks()[0].off_s == pytest.approx(off - 0.3)
    assert intake.clocks()[0].set_count == 0


def test_readings_kept_back_while_the_line_was_down_keep_their_own_times():
    intake = Intake()
    for second in range(10):
        sent(intake, second + 0.2, NOW + second + 500.0)
    for second in range(10, 40):
        sent(intake, 40.0 + 0.01 * second, NOW + second + 500.0)
    for second in range(41, 50):
        sent(intake, second + 0.2, NOW + second + 500.0)
    assert seconds(intake) == pytest.approx([s + 0.2 for s in (*range(40), *range(41, 50))])
    assert intake.clocks()[0].set_count == 0


def test_a_start_from_a_backlog_is_put_right_when_fresh_readings_come():
    """The first message is a minute old: its delay is taken for the clock until fresher ones show less, and
    whoever used the times is told to start again.
    """
    intake = Intake()
    before = intake.revision
    for second in range(60):
        sent(intake, 60.0 + 0.01 * second, NOW + second)
    for second in range(61, 70):
        sent(intake, float(second), NOW + second)
    assert seconds(intake)[:3] == pytest.approx([0, 1, 2], abs=0.1)
    assert intake.revision > before
    assert intake.clocks()[0].set_count == 0


@pytest.mark.parametrize("jump", [3600.0, -3600.0, 30.0, -30.0])
def test_a_clock_that_is_set_while_it_reports_begins_a_new_stretch(jump):
    """Set forward it is seen at once; set back, after five seconds at the pace of life. No reading is lost or
    moved by more than a second.
    """
    intake = Intake()
    for second in range(20):
        sent(intake, second + 0.1, NOW + second, temp=second)
    for second in range(20, 45):
        sent(intake, second + 0.1, NOW + second + jump, temp=second)
    told = intake.readings("box/K1")
    assert len(told) == 45
    late = [(t - NOW - c) for t, c in told if c < 20 or c >= 26]
    assert max(abs(x) for x in late) < 1.0
    assert intake.clocks()[0].set_count == 1


def test_a_source_that_tells_no_times_is_timed_by_arrival():
    intake = Intake()
    for second in range(5):
        sent(intake, second, None)
    assert seconds(intake) == [0, 1, 2, 3, 4]
    assert not intake.clocks()[0].told


def test_what_is_impossible_is_left_out_and_counted():
    intake = Intake()
    for second, temp in enumerate((20.0, 5000.0, -300.0, math.nan, math.inf, 21.0)):
        sent(intake, second, NOW + second, temp=temp)
    assert seconds(intake) == [0, 5]
    assert intake.clocks()[0].dropped == {"impossible": 4}


def test_a_flood_without_times_is_cut_to_twenty_a_second():
    intake = Intake()
    for _ in range(20):
        intake.add("box", [Sample(channel="K1", temp_c=20.0)] * MOST_TOGETHER, NOW)
    assert len(intake.readings("box/K1")) <= 40
    assert intake.clocks()[0].dropped["too_many"] >= 20 * MOST_TOGETHER - 40


def test_memory_stays_bounded():
    intake = Intake()
    for block in range(MOST_KEPT // MOST_TOGETHER + 3):
        first = block * MOST_TOGETHER
        samples = [Sample(channel="K1", temp_c=20.0, at_s=NOW + first + i) for i in range(MOST_TOGETHER)]
        intake.add("box", samples, NOW + first + MOST_TOGETHER)
    assert len(intake.readings("box/K1")) == MOST_KEPT
    assert intake.readings("box/K1")[-1][0] == max(t for t, _ in intake.readings("box/K1"))
    for i in range(MOST_CHANNELS - 1):
        sent(intake, 0, None, channel=f"C{i}")
    with pytest.raises(InputError, match="at most 32"):
        sent(intake, 0, None, channel="one more")
    with pytest.raises(InputError, match="at most 500"):
        intake.add("box", [Sample(channel="K1", temp_c=1.0)] * (MOST_TOGETHER + 1), NOW)


@pytest.mark.parametrize("name", ["", "   ", "a" * 41, "a\nb", "a\x00b", "\u202etxt", "a\tb"])
def test_a_name_that_nobody_can_read_is_refused_whole(name):
    intake = Intake()
    with pytest.raises(InputError, match="letters that can be read"):
        intake.add("box", [Sample(channel="K1", temp_c=1.0), Sample(channel=name, temp_c=1.0)], NOW)
    assert intake.channels() == []
    with pytest.raises(InputError):
        named(name, "channel")


def test_units_and_moments_are_read_once():
    assert temp_of(212.0, "F") == pytest.approx(100.0)
    assert temp_of(100.0, "°c") == 100.0
    with pytest.raises(InputError, match="C or F"):
        temp_of(1.0, "K")
    assert moment_of("2026-11-26T05:00:00-07:00") == moment_of("2026-11-26T12:00:00Z")
    assert moment_of(1_800_000_000_500) == 1_800_000_000.5 == moment_of(1_800_000_000.5)
    assert moment_of(None) is None is moment_of("")
    for wrong in ("yesterday", "2026-11-26T05:00:00", "12:00"):
        with pytest.raises(InputError, match="zone"):
            moment_of(wrong)
    with pytest.raises(InputError, match="zone"):
        sent(Intake(), 0, math.inf)


def test_gaps_longer_than_the_longest_hold_are_marked():
    assert gaps_of([0.0, 1.0, 16.0, 32.0, 33.0]) == [(16.0, 32.0)]
