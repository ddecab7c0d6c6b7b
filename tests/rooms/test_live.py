"""A load that is followed starts again where its times have moved; a load started twice is one."""

from __future__ import annotations

import pytest

from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.cook.intake import Sample
from frywright.rooms.cook.live import LiveAsk, LiveRoom, Use

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
