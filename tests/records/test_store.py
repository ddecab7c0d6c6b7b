"""The store: append-only, chained, one way to write, nothing half done."""

from __future__ import annotations

import datetime as dt
import io
import json
import os
import signal
import sqlite3
import subprocess
import sys
import time

import pytest

from frywright.model.entry import Entry
from frywright.model.errors import InputError, RecordError
from frywright.records.export import csv_table, json_lines
from frywright.records.store import Store

MOMENT = dt.datetime(2026, 11, 25, 18, 10, tzinfo=dt.UTC)


def entry(**changes) -> Entry:
    return Entry(**{"kind": "program", "happened_at": MOMENT, "author": "kim", "payload": {"set_c": 165.0}, **changes})


@pytest.fixture
def store(tmp_path):
    return Store.file(tmp_path / "a.db", lambda: MOMENT + dt.timedelta(hours=1))


def fill(store, count=5):
    with store.writing() as writer:
        return [writer.add(entry(payload={"n": i})) for i in range(count)]


def test_entries_come_back_as_written(store):
    """Both times, author, payload and link survive; numbers run without gaps."""
    written = fill(store, 3)
    read = list(store.entries())
    assert read == written
    assert [r.number for r in read] == [1, 2, 3]
    assert read[0].recorded_at - read[0].entry.happened_at == dt.timedelta(hours=1)
    assert store.verify()[0] == 3


def test_a_block_that_raises_leaves_nothing(store):
    """All or nothing."""
    with pytest.raises(RuntimeError), store.writing() as writer:
        writer.add(entry())
        raise RuntimeError
    assert list(store.entries()) == []


def test_the_database_itself_refuses_changes(store, tmp_path):
    """UPDATE and DELETE are refused by triggers."""
    fill(store)
    raw = sqlite3.connect(tmp_path / "a.db")
    for sql in ("UPDATE entry SET author='x' WHERE number=2", "DELETE FROM entry WHERE number=2"):
        with pytest.raises(sqlite3.IntegrityError, match="never altered"):
            raw.execute(sql)
    raw.close()


@pytest.mark.parametrize(
    ("sql", "at"),
    [("UPDATE entry SET payload='{\"n\":99}' WHERE number=3", 3), ("DELETE FROM entry WHERE number=2", 3),
     ("UPDATE entry SET hash='0' WHERE number=5", 5), ("UPDATE entry SET happened_at='2020-01-01T00:00:00.000000Z' WHERE number=1", 1)],
)  # fmt: skip
def test_tampering_by_hand_is_found_and_located(store, tmp_path, sql, at):
    """With the triggers dropped, a change, a removal or a forged link breaks the chain at its place."""
    fill(store)
    raw = sqlite3.connect(tmp_path / "a.db")
    raw.execute("DROP TRIGGER entry_no_update")
    raw.execute("DROP TRIGGER entry_no_delete")
    raw.execute(sql)
    raw.commit()
    raw.close()
    with pytest.raises(RecordError, match=f"entry {at}"):
        store.verify()


def test_supersession(store):
    """A correction names what it replaces; the second to try is told who was first."""
    fill(store, 2)
    with store.writing() as writer:
        writer.add(entry(payload={"n": 10}, replaces=1))
    with pytest.raises(RecordError, match="already replaced by entry 3"), store.writing() as writer:
        writer.add(entry(replaces=1))
    with pytest.raises(RecordError, match="does not exist"), store.writing() as writer:
        writer.add(entry(replaces=40))
    assert [r.number for r in store.current("program")] == [2, 3]
    assert store.verify()[0] == 3


def test_two_writers_take_turns(store, tmp_path):
    """Two open stores on one file never write the same number."""
    other = Store.file(tmp_path / "a.db", lambda: MOMENT)
    for i in range(10):
        with (store if i % 2 else other).writing() as writer:
            writer.add(entry(payload={"n": i}))
    assert store.verify()[0] == 10


KILLED = """
import sys, datetime as dt
from pathlib import Path
from frywright.model.entry import Entry
from frywright.records.store import Store
now = lambda: dt.datetime.now(dt.UTC)
store = Store.file(Path(sys.argv[1]), now)
i = 0
while True:
    with store.writing() as writer:
        n = writer.add(Entry(kind="probe", happened_at=now(), author="k", payload={"i": i})).number
    sys.stdout.write(f"{n}\\n"); sys.stdout.flush()
    i += 1
"""


@pytest.mark.slow
def test_a_killed_writer_loses_nothing_acknowledged(tmp_path):
    """Kill -9 at random instants: every acknowledged entry is there and the chain verifies."""
    path = tmp_path / "k.db"
    acknowledged = 0
    for turn in range(8):
        child = subprocess.Popen(
            [sys.executable, "-c", KILLED, str(path)], stdout=subprocess.PIPE, text=True, env=os.environ
        )
        time.sleep(1.0 + 0.13 * turn)
        os.kill(child.pid, signal.SIGKILL)
        lines = child.communicate()[0].split("\n")
        acknowledged = max([acknowledged] + [int(x) for x in lines[:-1] if x])
        count, _ = Store.file(path, lambda: MOMENT).verify()
        assert count >= acknowledged
    assert acknowledged > 20


def test_a_newer_or_foreign_file_is_left_alone(store, tmp_path):
    """A store of a newer program and a file that is no database are refused in words."""
    raw = sqlite3.connect(tmp_path / "a.db")
    raw.execute("UPDATE alembic_version SET version_num='9999'")
    raw.commit()
    raw.close()
    with pytest.raises(RecordError, match="newer"):
        Store.file(tmp_path / "a.db", lambda: MOMENT)
    (tmp_path / "b.db").write_bytes(b"not a database at all" * 100)
    with pytest.raises(RecordError, match="not a store"):
        Store.file(tmp_path / "b.db", lambda: MOMENT)


def test_exports(store):
    """JSON lines carry everything; CSV disarms text that a spreadsheet would run."""
    with store.writing() as writer:
        writer.add(entry(author="=1+1"))
    lines, table = io.StringIO(), io.StringIO()
    assert json_lines(store.entries(), lines) == 1
    assert json.loads(lines.getvalue())["payload"] == {"set_c": 165.0}
    csv_table(store.entries(), table)
    assert "'=1+1" in table.getvalue()


def test_impossible_entries_are_refused():
    """No kind, no zone, no NaN."""
    with pytest.raises(InputError, match="kind"):
        entry(kind="")
    with pytest.raises(InputError, match="zone"):
        entry(happened_at=dt.datetime(2026, 1, 1))


def test_numbers_that_are_none_are_refused(store):
    """NaN never reaches the store."""
    with pytest.raises(ValueError, match="JSON"), store.writing() as writer:
        writer.add(entry(payload={"set_c": float("nan")}))
