"""A crash at any instant loses nothing acknowledged: killed writers on both databases, and a power cut played
on the file.
"""

from __future__ import annotations

import datetime as dt
import os
import random
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from examples.postgres import new_database

from frywright.ledger.store import Store
from frywright.model.entry import Entry

pytestmark = pytest.mark.slow(5)
KILLS = 200


def now():
    return dt.datetime.now(dt.UTC)


@pytest.mark.parametrize("database", ["sqlite", "postgres"])
def test_two_hundred_kills_lose_nothing_acknowledged(database, tmp_path, request):
    """Kill -9 at 200 random instants under write load: every acknowledged entry is there with its hash, and
    the chain verifies.
    """
    if database == "sqlite":
        name = str(tmp_path / "k.db")
    else:
        name = new_database(request.getfixturevalue("postgres"), "killed")
    done = subprocess.run(
        [sys.executable, str(Path(__file__).parent / "killed.py"), name, str(KILLS), "11"],
        capture_output=True,
        text=True,
        env=os.environ,
    )
    assert done.returncode == 0, done.stderr
    store = Store.named(name, now)
    count, _ = store.verify()
    store.close()
    assert count >= int(done.stdout) > KILLS


def test_a_power_cut_at_any_byte_keeps_what_was_acknowledged(tmp_path):
    """The write-ahead file is cut at random bytes after the last acknowledged flush and filled with noise, as
    a disk may leave it: every entry acknowledged before is there.
    """
    path, draw = tmp_path / "p.db", random.Random(3)
    wal = tmp_path / "p.db-wal"
    store = Store.file(path, now)
    holder = store.engine.connect()  # keeps the write-ahead file from being folded in when each block closes
    holder.exec_driver_sql("BEGIN")
    holder.exec_driver_sql("SELECT count(*) FROM entry").fetchall()
    sizes = []
    for n in range(120):
        with store.writing() as writer:
            for _ in range(1 + n % 4):
                last = writer.add(
                    Entry(
                        kind="probe",
                        happened_at=now(),
                        author="k",
                        payload={"n": n, "text": "x" * (n * 37 % 3000)},
                    )
                )
        sizes.append((wal.stat().st_size, last.number, last.hash))
    whole = wal.read_bytes()
    for turn in range(60):
        size, number, link = draw.choice(sizes[:-1])
        cut = draw.randint(size, len(whole))
        noise = bytes(draw.getrandbits(8) for _ in range(draw.choice((0, 17, 512, 4096))))
        copy = tmp_path / f"cut{turn}"
        copy.mkdir()
        shutil.copy(path, copy / "p.db")
        (copy / "p.db-wal").write_bytes(whole[:cut] + noise)
        back = Store.file(copy / "p.db", now)
        count, _ = back.verify()
        assert count >= number
        assert back.entry(number).hash == link
        with back.writing() as writer:  # and it can be written to again
            writer.add(Entry(kind="probe", happened_at=now(), author="k", payload={}))
        assert back.verify()[0] == count + 1
        shutil.rmtree(copy)
    holder.close()
