"""A load that is followed starts again where its times have moved; a load started twice is one."""

from __future__ import annotations

import re

import pytest

from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.cook.intake import Sample
from frywright.rooms.cook.live import LiveAsk, LiveRoom, Use
from frywright.rooms.cook.live_journal import Journal
from frywright.rooms.cook.live_view import _reads

NOW = 1_800_000_000.0


@pytest.fixture
def room(tmp_path):
    return LiveRoom(Store.file(tmp_path / "live.db", now))


def ask(**changes) -> LiveAsk:
    told = {"program": "tenders cedar", "uses": (Use(channel="box/K1", cut="tender"),), "drop_s": NOW + 5.0}
    return LiveAsk(**told | changes)


def test_times_that_move_start_the_forecast_again(kitchen, room):
    """The first minute comes late in one burst; fresh readings then show that it was a minute late."""
    for second in range(60):
        samples = [Sample(channel="K1", temp_c=4.0, at_s=NOW + second)]
        room.intake.add("box", samples, NOW + 60.0 + 0.01 * second)
    load = room.start(kitchen, ask(), NOW + 61.0)
    room.tend(load, NOW + 61.0)
    before = load.pieces[0].ahead
    assert before is not None
    for second in range(61, 70):
        room.intake.add("box", [Sample(channel="K1", temp_c=4.0, at_s=NOW + second)], NOW + second)
    room.tend(load, NOW + 70.0)
    after = load.pieces[0].ahead
    assert after is not before
    assert len(after.reads) == 69 - 5 - 1  # every reading after the drop but the one a second is missing of


def test_the_oil_is_read_on_the_clock_of_the_drop(kitchen, room):
    """A reading 20 s after the drop counts as 20 s after it, and none before it counts."""
    for second in range(60):
        for channel, temp in (("K1", 4.0), ("T1", 168.0)):
            samples = [Sample(channel=channel, temp_c=temp, at_s=NOW + second)]
            room.intake.add("box", samples, NOW + second + 0.1)
    load = room.start(kitchen, ask(uses=(*ask().uses, Use(channel="box/T1"))), NOW + 61.0)
    room.tend(load, NOW + 61.0)
    times = [time for time, _ in load.pieces[0].ahead.oils]
    assert len(times) > 40
    assert 0.0 < times[0] <= 2.0
    assert times[-1] == pytest.approx(54.0, abs=1.0)


def test_a_start_pressed_twice_is_one_load_and_another_is_another(kitchen, room):
    first = room.start(kitchen, ask(), NOW + 6.0)
    assert room.start(kitchen, ask(drop_s=NOW + 6.5), NOW + 7.5) is first
    oil = (*ask().uses, Use(channel="box/T1"))
    waiting = room.start(kitchen, ask(uses=oil, drop_s=None), NOW + 7.6)
    assert room.start(kitchen, ask(uses=oil, drop_s=None), NOW + 7.7) is waiting
    assert room.start(kitchen, ask(uses=oil), NOW + 7.8) is not waiting  # it is in, says the second
    assert room.start(kitchen, ask(units_count=1.0), NOW + 8.0) is not first
    assert room.start(kitchen, ask(drop_s=NOW + 300.0), NOW + 301.0) is not first
    with pytest.raises(InputError, match="within the last hour"):
        room.start(kitchen, ask(), NOW + 2 * 3600.0)


def reported(room, seconds, cores):
    """A reading a second from the drop on: the oil and one piece."""
    for second in range(seconds):
        room.intake.add("box", [Sample(channel="T1", temp_c=168.0, at_s=NOW + second)], NOW + second + 0.1)
        core = [Sample(channel="K1", temp_c=cores(second), at_s=NOW + second)]
        room.intake.add("box", core, NOW + second + 0.1)


def test_a_load_is_kept_once_as_a_log_of_its_channels(kitchen, room):
    """Oil first, then its pieces by name; a row a reading; without a reading there is nothing to keep."""
    uses = (*ask().uses, Use(channel="box/T1"))
    load = room.start(kitchen, ask(uses=uses, drop_s=NOW), NOW + 1.0)
    with pytest.raises(InputError) as caught:
        room.keep(load, {})
    assert caught.value.field == "readings"
    reported(room, 5, lambda second: 4.0 + second)
    text, name = room.log_of(load, {"tender": "Tender"})
    lines = text.decode().splitlines()
    assert lines[0].count(",") == 2 and lines[0].startswith("Time,Oil ") and "Tender " in lines[0]
    assert re.fullmatch(r"2027-01-15 08:00:00\.\dZ,168\.00,4\.00", lines[1])
    assert [line.split(",")[2] for line in lines[1:]] == ["4.00", "5.00", "6.00", "7.00", "8.00"]
    assert name == "live tenders cedar 2027-01-15 0800.csv"
    kept = room.keep(load, {"tender": "Tender"})
    assert (kept.fact.name, kept.fact.size_bytes) == (name, len(text))
    reported(room, 8, lambda second: 4.0 + second)
    assert room.keep(load, {}).number == kept.number


def test_a_load_that_waits_for_the_oil_is_told_its_drop(kitchen, room):
    """Once: the first word counts. An hour ago is the earliest; forgotten it is no load any more."""
    uses = (*ask().uses, Use(channel="box/T1"))
    load = room.start(kitchen, ask(uses=uses, drop_s=None), NOW)
    for drop_s in (NOW - 3601.0, NOW + 3600.0):
        with pytest.raises(InputError) as caught:
            room.drop(load.number, drop_s, NOW)
        assert (caught.value.field, load.drop_s) == ("drop", None)
    room.drop(load.number, NOW - 3600.0, NOW)
    room.drop(load.number, NOW - 60.0, NOW)
    assert load.drop_s == NOW - 3600.0
    assert room.loads() == [load]
    room.stop(load.number)
    assert room.loads() == []
    with pytest.raises(InputError):
        room.drop(load.number, NOW, NOW)


READS = [
    (lambda t: 95.0, 30, True),
    (lambda t: 60.0, 30, False),
    (lambda t: 95.0, 1, False),
]


@pytest.mark.parametrize(("core", "seconds", "meets"), READS)
def test_readings_meet_the_limit_by_themselves_or_not(kitchen, room, core, seconds, meets):
    """One reading is none; before the drop none counts."""
    load = room.start(kitchen, ask(drop_s=NOW), NOW + 1.0)
    read = [(float(t), core(t)) for t in range(seconds)]
    assert _reads(kitchen, load, read) is meets
    assert not _reads(kitchen, load, [(t - 100.0, c) for t, c in read])


def test_acts_of_a_load_are_on_the_disk_and_readings_wait_for_nobody(tmp_path, monkeypatch):
    """A load begun, dropped or stopped is forced to the disk at once; readings are not, once a second."""
    forced: list[int] = []
    monkeypatch.setattr("frywright.rooms.cook.live_journal.os.fsync", forced.append)
    journal = Journal(Store.file(tmp_path / "j.db", now))
    forced.clear()
    for count, what in enumerate(("start", "drop", "stop"), start=1):
        journal.write({"what": what, "number": 1})
        assert len(forced) == count
        journal.write({"what": "readings", "source": "a", "got_s": 1.0, "samples": []})
        assert len(forced) == count
    assert [row["what"] for row in journal.rows()][::2] == ["start", "drop", "stop"]
