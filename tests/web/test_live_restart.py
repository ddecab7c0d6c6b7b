"""A load under way goes on when its server is killed: same number, same drop, the readings of before."""

from __future__ import annotations

import stat
import time

import httpx
import pytest

from frywright.ledger.facts.probing import LogKept
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.cook import live_journal
from frywright.rooms.cook.intake import Sample
from frywright.rooms.cook.live import FORGET_S, LiveAsk, LiveRoom, Use
from frywright.rooms.kitchen import remembered_kitchen
from tests.own_server import OwnServer

NOW = 1_800_000_000.0


def room_at(store, second=0.0):
    """A server's room as it is made at a moment."""
    return LiveRoom(store, lambda: NOW + second)


def ask(**changes) -> LiveAsk:
    uses = (Use(channel="box/K1", cut="tender", mass_kg=0.06, thermometer="T1"), Use(channel="box/T1"))
    return LiveAsk(**{"program": "tenders cedar", "uses": uses, "drop_s": NOW, **changes})


def report(room, first, last, oil_c=165.0):
    """A reading a second of a piece that warms, and of the oil."""
    for second in range(first, last):
        samples = [
            Sample(channel="K1", temp_c=4.0 + 0.2 * max(second, 0), at_s=NOW + second),
            Sample(channel="T1", temp_c=oil_c, at_s=NOW + second),
        ]
        room.take("box", samples, NOW + second)


def test_a_new_server_goes_on_as_the_old_one_would_have(store):
    """The same readings, drop, number and forecast as a server that was never stopped."""
    through, old = room_at(store), room_at(store)
    through.journal._path = None
    for room in (through, old):
        report(room, -30, 60)
        room.start(remembered_kitchen(store), ask(), NOW)
    new = room_at(store, 61.0)
    load, whole = new.load(1), through.load(1)
    assert load.went_on and not whole.went_on
    assert load.ask == whole.ask and load.drop_s == whole.drop_s and load.began_s == whole.began_s
    assert new.intake.readings("box/K1") == through.intake.readings("box/K1")
    for room in (new, through):
        report(room, 75, 120)
        room.tend(room.load(1), NOW + 120.0)
    (_, here), (_, there) = (r.outlooks(r.load(1), NOW + 120.0)[0] for r in (new, through))
    assert here == there and here is not None


def test_ended_old_and_unknown_loads_do_not_come_back(store):
    """Stopped before the stop, older than a load is followed, or of a program that is gone."""
    room, kitchen = room_at(store), remembered_kitchen(store)
    report(room, -5, 5)
    room.start(kitchen, ask(), NOW)
    room.stop(1)
    room.start(kitchen, ask(drop_s=NOW + 60.0), NOW + 60.0)
    room.journal.write({"what": "start", "number": 7, "began_s": NOW, "ask": {"program": "gone", "uses": []}})
    assert [load.number for load in room_at(store, 70.0).loads()] == [2]
    late = room_at(store, FORGET_S + 61.0)
    assert late.loads() == []
    later = late.start(kitchen, ask(drop_s=NOW + FORGET_S + 61.0), NOW + FORGET_S + 61.0)
    assert later.number == 8
    with pytest.raises(InputError, match="under way"):
        late.load(2)


def test_a_drop_tapped_or_found_in_the_oil_is_the_same_after_a_stop(store):
    room, kitchen = room_at(store), remembered_kitchen(store)
    report(room, -40, 0)
    waiting = room.start(kitchen, ask(drop_s=None), NOW - 30.0)
    tapped = room.start(kitchen, ask(drop_s=None, units_count=1.0), NOW - 5.0)
    room.drop(tapped.number, NOW - 3.0, NOW)
    report(room, 0, 40, oil_c=158.0)
    room.tend(waiting, NOW + 40.0)
    new = room_at(store, 41.0)
    assert new.load(tapped.number).drop_s == NOW - 3.0
    new.tend(new.load(waiting.number), NOW + 41.0)
    assert new.load(waiting.number).drop_s == waiting.drop_s is not None


def test_the_journal_is_bounded_its_owners_alone_and_survives_a_torn_line(store, monkeypatch):
    """Two files of a size at most; loads outlive the older one; half a line and rubbish are left out."""
    monkeypatch.setattr(live_journal, "MOST_BYTES", 4_000)
    room = room_at(store)
    room.start(remembered_kitchen(store), ask(), NOW)
    report(room, 0, 400)
    files = sorted(store.files.glob("live-*.jsonl"))
    assert len(files) == 2
    assert all(f.stat().st_size < 6_000 and stat.S_IMODE(f.stat().st_mode) == 0o600 for f in files)
    with files[-1].open("ab") as file:
        file.write(b'[1]\n{"what": "readings", "sour')
    room.take("box", [Sample(channel="K1", temp_c=80.0, at_s=NOW + 400.0)], NOW + 400.0)
    new = room_at(store, 401.0)
    assert new.load(1).went_on
    assert new.intake.readings("box/K1")[-1][1] == 80.0


def test_a_disk_that_takes_no_more_stops_no_reading_and_is_said(store, monkeypatch):
    def full(*_):
        raise OSError(28, "No space left on device")

    room = room_at(store)
    monkeypatch.setattr(live_journal.os, "write", full)
    report(room, 0, 3)
    assert len(room.intake.readings("box/K1")) == 3
    assert room.journal.lost == "No space left on device"


@pytest.mark.slow
def test_a_killed_server_goes_on_and_keeps_one_curve(store, tmp_path):
    """SIGKILL in the middle of a load; the page says that it went on; the log kept has both parts."""
    store.close()
    server = OwnServer(tmp_path / "demo.db")
    address = server.address
    client = httpx.Client(base_url=address, headers={"origin": address}, timeout=60, follow_redirects=True)

    def send(temps):
        for temp in temps:
            rows = [{"channel": "K1", "temp": temp, "at": time.time()}, {"channel": "T1", "temp": 165.0}]
            assert client.post("/api/v1/live", json={"source": "box", "samples": rows}).status_code == 200
            time.sleep(0.15)

    try:
        server.start()
        send([4.0, 4.1, 4.2])
        form = {"program": "tenders cedar", "drop": "now", "ago": "0:30"}
        form |= {"channel_0": "box/K1", "where_0": "tender", "channel_1": "box/T1", "where_1": "oil"}
        assert client.post("/cook/live/start", data=form).url.query == b"load=1"
        assert "started again" not in client.get("/cook/live?load=1&lang=en").text
        server.kill()
        server.start()
        send([14.5, 14.6])
        page = client.get("/cook/live?load=1&lang=en").text
        assert "This load goes on from the readings that were kept" in page
        assert "La carga" not in page and "since the drop" in page
        assert "not followed any more" in client.get("/cook/live?load=9&lang=en").text
        assert client.post("/cook/live/1/keep").status_code == 200
    finally:
        client.close()
        server.kill()
    again = Store.file(tmp_path / "demo.db", now)
    (kept,) = again.facts(LogKept)
    with (again.files / kept.fact.sha256).open() as file:
        text = file.read()
    assert all(f",{t:.2f}" in text for t in (4.0, 4.2, 14.5, 14.6)), text
    again.close()
