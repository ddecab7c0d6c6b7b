"""What a pack certifies: a chain walked before anything is made of it, a clock that ran backwards, originals
that are gone, readings by load and fryer, and no reading rounded up to its limit.
"""

from __future__ import annotations

import datetime as dt
import io
import os
import sqlite3
import zipfile

import pytest

from frywright.ledger.backup import backup, restore
from frywright.ledger.checking import checked, set_backs
from frywright.ledger.facts.probing import LogKept
from frywright.ledger.store import Store
from frywright.model.business_day import moment_of, usual_trade
from frywright.model.errors import InputError, RecordError
from frywright.model.units import show_below, to_inside
from frywright.rooms import hall
from frywright.rooms.cook.logs import keep_log
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.readings import mend_reading, tell_hold, tell_probe
from frywright.rooms.records import pack
from frywright.rooms.records.coverage import listed
from frywright.rooms.thermometers import record_check
from frywright.trial.kitchens import demo_text
from tests.browsers import browser
from tests.rooms.taps import tap

DAY = dt.date(2026, 11, 12)
NOON = dt.datetime(2026, 11, 20, 19, tzinfo=dt.UTC)
SECOND = demo_text().replace('units = "us"', 'units = "metric"')
"""Another kitchen than the demo: its people read degrees Celsius."""


class Clock:
    """A machine's clock, which somebody may set."""

    def __init__(self):
        self.at = NOON

    def __call__(self):
        self.at += dt.timedelta(seconds=1)
        return self.at


@pytest.fixture
def clock(monkeypatch):
    found = Clock()
    for module in ("rooms.hall", "rooms.readings", "rooms.thermometers"):
        monkeypatch.setattr(f"frywright.{module}.now", found)
    return found


@pytest.fixture
def store(tmp_path, clock):
    found = Store.file(tmp_path / "e.db", clock)
    clock.at -= dt.timedelta(days=60)
    remember_kitchen(found, SECOND, "second.toml")
    clock.at = NOON
    return found


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def at(kitchen, day, hour):
    return moment_of(usual_trade(kitchen), day, hour * 3600.0)


def probe(store, kitchen, day, hour, temp="85 C", fryer="alder"):
    form = {"fryer": fryer, "product": "bone_in", "temp": temp, "thermometer": "T1", "who": "Ana"}
    return tell_probe(store, kitchen, form, at(kitchen, day, hour))


def drop(store, kitchen, day, hour, fryer="alder", **more):
    fact = tap(day, f"{day}{hour}{fryer}", fryer=fryer, **more)
    return hall.write(store, fact, at(kitchen, day, hour))


def falsify(store, number, old, new):
    """Change an entry behind the program's back, as somebody with the file would."""
    with sqlite3.connect(store.engine.url.database) as db:
        names = [n for (n,) in db.execute("select name from sqlite_master where type = 'trigger'")]
        for name in names:
            db.execute(f"drop trigger {name}")
        text = db.execute("select payload from entry where number = ?", (number,)).fetchone()[0]
        assert old in text
        db.execute("update entry set payload = ? where number = ?", (text.replace(old, new), number))


@pytest.mark.parametrize("way", ["pack", "pack.json", "pack.pdf", "pack.zip"])
def test_no_pack_is_made_of_a_falsified_record(store, kitchen, way):
    """A failing reading that somebody changed to a good one: the pack is refused and names the entry, on a
    server that has checked the chain before.
    """
    client = browser(store)
    reading, _ = probe(store, kitchen, DAY, 12.0, "70 C")
    asked = f"/records/{way}?from={DAY}&to={DAY}"
    assert client.get("/records", params={"lang": "en"}).text.count("Chain unbroken") == 1
    assert client.get(asked).status_code == 200
    falsify(store, reading.number, '"core_c":70.0', '"core_c":85.0')
    refused = client.get(asked)
    assert refused.status_code == 409
    assert f"entry {reading.number}" in refused.json()["message"]
    page = client.get("/records", params={"lang": "en"})
    assert "Chain unbroken" not in page.text
    assert f"entry {reading.number}" in page.text


def test_a_pack_says_what_was_checked_when_and_the_whole_head(store, kitchen):
    """On the page, in JSON and in the archive, so that it can be kept elsewhere."""
    drop(store, kitchen, DAY, 12.0)
    view = pack.pack_of(store, kitchen, DAY, DAY).view
    head = store.last()
    assert view.hash == head.hash and len(head.hash) == 64
    assert view.checked.startswith("Chain checked at ")
    assert f"{head.number} entries" in view.checked and head.hash in view.checked
    with zipfile.ZipFile(io.BytesIO(pack.csv_zip(store, kitchen, DAY, DAY))) as archive:
        assert head.hash in archive.read("checked.txt").decode()


def test_a_clock_set_back_fills_no_gap_and_is_told(store, kitchen, clock):
    """A day without a reading stays one when somebody sets the clock back and types it in; verify, the pack's
    gaps and its table say so, and every entry until the clock has caught up is marked.
    """
    drop(store, kitchen, DAY, 12.0)
    before = pack.pack_of(store, kitchen, DAY, DAY).view
    assert any("no probe reading" in g for g in before.gaps)
    assert set_backs(store) == ()
    clock.at = at(kitchen, DAY, 12.1)
    filled, _ = probe(store, kitchen, DAY, 12.1)
    second, _ = probe(store, kitchen, DAY, 12.2)
    clock.at = NOON + dt.timedelta(hours=1)
    after, _ = probe(store, kitchen, DAY + dt.timedelta(days=8), 12.0)
    [step] = set_backs(store)
    assert (step.number, step.last_number) == (filled.number, second.number)
    assert after.number not in step.numbers
    view = pack.pack_of(store, kitchen, DAY, DAY).view
    assert any("no probe reading" in g for g in view.gaps)
    assert any("The clock ran backwards" in g and f"entries {filled.number} to" in g for g in view.gaps)
    header, rows = pack.tables(kitchen, pack.gather(store, kitchen, DAY, DAY))["readings"]
    assert [row[header.index("mark")] for row in rows] == ["clock set back"] * 2
    assert store.verify()[0] == store.last().number


def test_a_clock_set_back_little_by_little_is_told(store, kitchen, clock):
    """Each step is less than a network's correction; together they are an hour."""
    probe(store, kitchen, DAY, 12.0)
    for _ in range(70):
        clock.at -= dt.timedelta(seconds=56)
        last, _ = probe(store, kitchen, DAY, 12.0)
    [step] = set_backs(store)
    assert step.last_number == last.number == step.number + 68
    clock.at = NOON + dt.timedelta(hours=1)
    probe(store, kitchen, DAY, 13.0)
    assert set_backs(store) == (step,)


def test_a_clock_set_back_fills_no_gap_of_checks_nor_of_hot_holding(store, kitchen, clock):
    """Nor one of a day without any entry."""
    drop(store, kitchen, DAY, 12.0)
    texts = ("valid check. Days: 1 ", "hot-holding temperature. Days: 1 ", "No entry of any kind. Days: 2 ")
    days = DAY - dt.timedelta(days=2), DAY

    def missing():
        gaps = pack.pack_of(store, kitchen, *days).view.gaps
        return [text for text in texts if any(text in gap for gap in gaps)]

    assert missing() == list(texts)
    clock.at = at(kitchen, DAY - dt.timedelta(days=1), 9.0)
    record_check(store, kitchen, "T1", 0.0, None)
    held = {"kept_in": "Cabinet 1", "product": "bone_in", "temp": "80 C", "thermometer": "T1"}
    for back in range(3):
        tell_hold(store, kitchen, held, at(kitchen, DAY - dt.timedelta(days=back), 12.2))
    clock.at = NOON
    assert missing() == list(texts)


def test_what_is_entered_days_later_fills_no_gap_and_is_told(store, kitchen, clock):
    """A tablet that was off line tells the next morning; a week later is too late, and putting it right does
    not make it a reading in time.
    """
    clock.at = at(kitchen, DAY, 12.0)
    drop(store, kitchen, DAY, 12.0)
    clock.at = at(kitchen, DAY, 12.0) + dt.timedelta(days=1, minutes=3)
    late, _ = probe(store, kitchen, DAY, 12.0)
    form = {"temp": "86 C", "words": "turned round", "who": "Ana"}
    right, _ = mend_reading(store, kitchen, late.number, form)
    gaps = pack.pack_of(store, kitchen, DAY, DAY).view.gaps
    assert any(f"entries {late.number}, {right.number}. They fill no gap" in gap for gap in gaps)
    assert any("no reading. Loads: " in gap for gap in gaps)
    clock.at = at(kitchen, DAY + dt.timedelta(days=2), 8.0)
    drop(store, kitchen, DAY + dt.timedelta(days=1), 20.0)
    probe(store, kitchen, DAY + dt.timedelta(days=1), 20.2)
    view = pack.pack_of(store, kitchen, DAY, DAY + dt.timedelta(days=1)).view
    assert any("no probe reading. Days: 1 (2026-11-12)." in gap for gap in view.gaps)


def test_a_business_day_that_ends_late_is_whole(tmp_path, clock):
    """Where the day rolls over at six, a reading at half past five is of the day before."""
    store = Store.file(tmp_path / "r.db", clock)
    remember_kitchen(store, SECOND.replace('rolls_over = "04:00"', 'rolls_over = "06:00"'), "night.toml")
    kitchen = remembered_kitchen(store)
    assert usual_trade(kitchen).rolls_over == "06:00"
    low, _ = probe(store, kitchen, DAY, 29.5, "60 C")
    probe(store, kitchen, DAY, 5.5, "61 C")
    assert [row.number for row in pack.pack_of(store, kitchen, DAY, DAY).view.failing] == [low.number]


def test_a_clock_that_its_network_corrects_is_none_that_was_set_back(store, kitchen, clock):
    """Half a minute is a correction; two minutes are told."""
    probe(store, kitchen, DAY, 12.0)
    clock.at -= dt.timedelta(seconds=32)
    probe(store, kitchen, DAY, 12.0)
    assert set_backs(store) == ()
    clock.at -= dt.timedelta(seconds=150)
    probe(store, kitchen, DAY, 12.0)
    assert len(set_backs(store)) == 1


def test_an_honest_store_has_no_gap_of_the_chain(store, kitchen):
    """Nothing is said of a clock or of files where there is nothing to say."""
    keep_log(store, io.BytesIO(b"time,oil\n0,170\n"), "log.csv")
    probe(store, kitchen, DAY, 12.0)
    found = checked(store, NOON)
    assert (found.set_back, found.lost) == ((), {})
    assert (found.entries_count, found.head) == store.verify()


def test_readings_are_counted_by_load_and_fryer(store, kitchen, clock):
    """A reading of one fryer clears no other; the longest run of loads without one has its times."""
    clock.at = at(kitchen, DAY, 16.0)
    for n in range(6):
        drop(store, kitchen, DAY, 10.0 + n)
    for n in range(3):
        drop(store, kitchen, DAY, 10.5 + n, fryer="birch")
    probe(store, kitchen, DAY, 11.2)
    rows = {row.fryer: row for row in pack.pack_of(store, kitchen, DAY, DAY).view.loads}
    alder, birch = rows[kitchen.fryer("alder").name], rows[kitchen.fryer("birch").name]
    assert (alder.count, alder.readings, alder.run) == (6, 1, 4)
    assert (alder.run_from, alder.run_to) == ("2026-11-12 12:00-07:00", "2026-11-12 15:00-07:00")
    assert (birch.count, birch.readings, birch.run) == (3, 0, 3)
    gaps = pack.pack_of(store, kitchen, DAY, DAY).view.gaps
    name = kitchen.fryer("birch").name
    assert any(g.endswith(f"{name}: no reading. Loads: 3.") for g in gaps)
    assert any(g.startswith(f"{name}: loads dropped and no probe reading. Days: 1 ") for g in gaps)
    assert not any(kitchen.fryer("alder").name in g for g in gaps)


def test_every_day_of_a_gap_is_named(store, kitchen, clock):
    """Thirty days, as spans: nothing ends in three dots."""
    clock.at = at(kitchen, DAY - dt.timedelta(days=10), 16.0)
    for n in range(30):
        drop(store, kitchen, DAY - dt.timedelta(days=n), 12.0)
    probe(store, kitchen, DAY - dt.timedelta(days=10), 12.2)
    gaps = pack.pack_of(store, kitchen, DAY - dt.timedelta(days=29), DAY).view.gaps
    assert not any("…" in g for g in gaps)
    assert any("Days: 29 (2026-10-14 – 2026-11-01, 2026-11-03 – 2026-11-12)." in g for g in gaps)
    assert listed([DAY, DAY + dt.timedelta(days=2)]) == "2026-11-12, 2026-11-14"


def test_a_good_check_is_valid_for_its_days_and_no_longer(store, kitchen, clock):
    """A thermometer checked on Monday is no gap on Tuesday; after its week it is."""
    clock.at = at(kitchen, DAY, 9.0)
    record_check(store, kitchen, "T1", 0.0, None)
    for n in (0, 3, 6, 8, 9):
        drop(store, kitchen, DAY + dt.timedelta(days=n), 12.0)
    clock.at = NOON + dt.timedelta(days=5)
    gaps = pack.pack_of(store, kitchen, DAY, DAY + dt.timedelta(days=9)).view.gaps
    [told] = [g for g in gaps if "valid check. Days: " in g]
    assert told.endswith("Days: 2 (2026-11-20 – 2026-11-21).")


def test_the_count_and_the_cases_go_by_the_same_limit(store, kitchen):
    """A reading between the limit and the limit with the thermometer's error has a case, and is counted."""
    reading, case = probe(store, kitchen, DAY, 12.0, "74.4 C")
    assert case is not None and not reading.fact.below
    probe(store, kitchen, DAY, 13.0, "60 C")
    probe(store, kitchen, DAY, 14.0, "90 C")
    view = pack.pack_of(store, kitchen, DAY, DAY).view
    assert view.below == len(view.cases) == 2


def test_a_reading_below_without_a_case_is_a_gap(store, kitchen):
    """However it came into the record."""
    reading, _ = probe(store, kitchen, DAY, 12.0, "90 C")
    told = reading.fact.payload() | {"core_c": 50.0}
    alone = hall.write(store, type(reading.fact).read(told), at(kitchen, DAY, 13.0))
    gaps = pack.pack_of(store, kitchen, DAY, DAY).view.gaps
    assert any(f"without a corrective action: entries {alone.number}." in g for g in gaps)


@pytest.mark.parametrize(
    ("value_f", "shown"),
    [(164.6, "164.6 °F"), (164.4, "164 °F"), (165.0, "165 °F"), (164.98, "164.98 °F"), (165.4, "165 °F")],
)
def test_a_failing_reading_is_never_rounded_up_to_its_limit(value_f, shown):
    """It takes the digits it needs; one that meets the limit stays short."""
    assert show_below(to_inside(value_f, "f"), to_inside(165.0, "f"), "c", "us") == shown


def test_the_table_of_readings_rounds_nothing_up(tmp_path, clock):
    """164.6 °F beside a limit of 165 °F stands as 164.6."""
    store = Store.file(tmp_path / "us.db", clock)
    remember_kitchen(store, demo_text(), "demo.toml")
    kitchen = remembered_kitchen(store)
    probe(store, kitchen, DAY, 12.0, "164.6 F")
    header, rows = pack.tables(kitchen, pack.gather(store, kitchen, DAY, DAY))["readings"]
    assert rows[0][header.index("read")] == "164.6 °F"
    assert rows[0][header.index("limit")] == "165 °F"
    assert rows[0][header.index("entered by")] == hall.AUTHOR


@pytest.mark.parametrize("harm", ["deleted", "changed", "folder", "a folder of its name", "a pipe"])
def test_an_original_that_is_gone_or_changed_is_told_everywhere(store, tmp_path, harm):
    """By verify, by backup, which keeps nothing then, and a missing one by the pack."""
    kept = keep_log(store, io.BytesIO(b"time,oil\n0,170\n"), "log.csv")
    keep_log(store, io.BytesIO(b"time,oil\n0,171\n"), "other.csv")
    file = store.files / kept.fact.sha256
    if harm == "deleted":
        file.unlink()
    elif harm == "a folder of its name":
        file.unlink()
        file.mkdir()
    elif harm == "a pipe":
        file.unlink()
        os.mkfifo(file)
    elif harm == "changed":
        file.write_bytes(b"time,oil\n0,190\n")
    else:
        store.files.rename(tmp_path / "elsewhere")
    lost = checked(store, NOON).lost
    assert lost[kept.fact.sha256] == kept.number
    assert len(lost) == (2 if harm == "folder" else 1)
    with pytest.raises(RecordError):
        backup(store, tmp_path / "b.zip")
    assert not (tmp_path / "b.zip").exists()
    day = kept.happened_at.date()
    gaps = pack.pack_of(store, remembered_kitchen(store), day, day).view.gaps
    assert any(f"{kept.number}" in g and "Original files are missing" in g for g in gaps) is (
        harm != "changed"
    )


@pytest.mark.parametrize("manifest", ["as it was", "made to fit"])
def test_a_backup_without_its_files_is_not_restored(store, tmp_path, clock, manifest):
    """Cut out of the archive, with the manifest left or made to fit: both are told."""
    keep_log(store, io.BytesIO(b"time,oil\n0,170\n"), "log.csv")
    backup(store, tmp_path / "b.zip")
    with zipfile.ZipFile(tmp_path / "b.zip") as whole, zipfile.ZipFile(tmp_path / "cut.zip", "w") as cut:
        for name in whole.namelist():
            if not name.startswith("files/"):
                data = whole.read(name)
                if name == "manifest.json" and manifest == "made to fit":
                    data = data.replace(b'"files_count":1', b'"files_count":0')
                cut.writestr(name, data)
    with pytest.raises(RecordError, match=r"[Oo]riginal files"):
        restore(tmp_path / "cut.zip", Store.file(tmp_path / "new.db", clock))


def test_a_damaged_backup_is_told_wherever_it_breaks(store, tmp_path, clock):
    """One bit in any place: words, never a traceback."""
    keep_log(store, io.BytesIO(b"time,oil\n0,170\n" * 50), "log.csv")
    backup(store, tmp_path / "b.zip")
    whole = (tmp_path / "b.zip").read_bytes()
    refused = 0
    for n, place in enumerate(range(40, len(whole), max(1, len(whole) // 25))):
        bad = bytearray(whole)
        bad[place] ^= 0x10
        (tmp_path / "bad.zip").write_bytes(bad)
        try:
            restore(tmp_path / "bad.zip", Store.file(tmp_path / f"n{n}.db", clock))
        except RecordError:
            refused += 1
    assert refused >= 20


def test_a_database_says_where_its_originals_lie(monkeypatch):
    """No folder is guessed: a backup made from elsewhere would find none and say nothing."""
    monkeypatch.delenv("FRYWRIGHT_FILES", raising=False)
    away = Store.__new__(Store)
    away.sqlite = False
    with pytest.raises(RecordError, match="FRYWRIGHT_FILES"):
        _ = away.files
    monkeypatch.setenv("FRYWRIGHT_FILES", "/srv/fry")
    assert str(away.files) == "/srv/fry"


def test_a_text_that_looks_like_a_hash_accuses_nobody(store):
    """Only the fields that name files do."""
    fact = LogKept(name="a" * 64, sha256="", size_bytes=0)
    hall.write(store, fact)
    assert checked(store, NOON).lost == {}


@pytest.mark.parametrize("zone", ["America/Phenix", "/etc/passwd", "../UTC", "", "America", "x" * 400])
def test_a_zone_that_is_none_is_refused_before_it_is_kept(tmp_path, clock, zone):
    """With the kitchen's other pages still readable; a good one is kept."""
    store = Store.file(tmp_path / "z.db", clock)
    remember_kitchen(store, demo_text(), "demo.toml")
    bad = demo_text().replace('zone = "Etc/GMT+7"', f'zone = "{zone}"')
    assert bad != demo_text()
    with pytest.raises(InputError, match="zone"):
        remember_kitchen(store, bad, "bad.toml", "another place")
    assert store.last().number == 1
    remember_kitchen(store, bad.replace(f'"{zone}"', '"America/Denver"'), "good.toml", "another place")


def test_a_new_store_is_its_owners_alone(tmp_path, clock):
    """Nobody else on the machine reads it; one that is there keeps the rights it has."""
    store = Store.file(tmp_path / "mine.db", clock)
    remember_kitchen(store, demo_text(), "demo.toml")
    assert (tmp_path / "mine.db").stat().st_mode & 0o077 == 0
    (tmp_path / "mine.db").chmod(0o640)
    Store.file(tmp_path / "mine.db", clock)
    assert (tmp_path / "mine.db").stat().st_mode & 0o777 == 0o640
