"""Backups are whole and checked, come back on either database, and a damaged, forged or hostile one is
refused at its place.
"""

from __future__ import annotations

import datetime as dt
import errno
import io
import json
import zipfile
from dataclasses import replace
from shutil import copyfile, copytree

import pytest

from frywright.ledger.attachments import Attachments
from frywright.ledger.backup import FORMAT, backup, check, import_lines, read_lines, restore
from frywright.ledger.export import json_lines
from frywright.ledger.store import Store
from frywright.model.entry import GENESIS, Entry, canonical, chain_hash
from frywright.model.errors import RecordError

MOMENT = dt.datetime(2026, 11, 25, 18, 10, tzinfo=dt.UTC)


def now():
    return MOMENT


@pytest.fixture(scope="module")
def once(tmp_path_factory):
    """A store with a correction, letters beyond ASCII, and two original files; and its backup."""
    folder = tmp_path_factory.mktemp("once")
    store = Store.file(folder / "a.db", now)
    with store.writing() as writer:
        for n in range(2100):
            writer.add(
                Entry(
                    kind="probe", happened_at=MOMENT, author="José", payload={"n": n, "text": 'ñ \u2028 \\ "'}
                )
            )
        writer.add(Entry(kind="probe", happened_at=MOMENT, author="kim", payload={}, replaces=7))
    for content in (b"one" * 100, bytes(range(256)) * 9):
        Attachments(store.files).keep(io.BytesIO(content))
    backup(store, folder / "b.zip")
    store.close()
    return folder


@pytest.fixture
def full(once, tmp_path):
    """The store, in files of the test's own."""
    copyfile(once / "a.db", tmp_path / "a.db")
    copytree(once / "a.db.files", tmp_path / "a.db.files")
    return Store.file(tmp_path / "a.db", now)


@pytest.fixture(scope="module")
def whole(once):
    """Its backup, which no test changes."""
    return once / "b.zip"


def test_there_and_back(full, tmp_path):
    """Every entry with its hash and every file; the copy verifies and is equal."""
    told = backup(full, tmp_path / "b.zip")
    assert (told.entries_count, told.files_count) == (2101, 2)
    assert check(tmp_path / "b.zip") == told
    other = Store.file(tmp_path / "c.db", now)
    assert restore(tmp_path / "b.zip", other) == told
    assert list(other.entries()) == list(full.entries())
    assert other.verify() == full.verify()
    assert {p.name for p in other.files.iterdir()} == {p.name for p in full.files.iterdir()}
    with pytest.raises(RecordError, match="holds entries already"):
        restore(tmp_path / "b.zip", other)


@pytest.mark.slow
def test_from_a_file_to_postgres_and_back(full, tmp_path, postgres, monkeypatch):
    """The same chain on both databases."""
    from examples.postgres import new_database

    monkeypatch.setenv("FRYWRIGHT_FILES", str(tmp_path / "pg"))
    backup(full, tmp_path / "b.zip")
    server = Store.named(new_database(postgres, "moved"), now)
    restore(tmp_path / "b.zip", server)
    assert server.verify() == full.verify()
    backup(server, tmp_path / "d.zip")
    assert check(tmp_path / "d.zip") == check(tmp_path / "b.zip")
    server.close()


def test_exported_lines_come_back(full, tmp_path):
    """Without the files, against the chain."""
    text = io.StringIO()
    json_lines(full.entries(), text)
    other = Store.file(tmp_path / "c.db", now)
    assert import_lines(io.BytesIO(text.getvalue().encode()), other) == 2101
    assert other.verify() == full.verify()


def test_a_broken_store_makes_no_backup(full, tmp_path):
    """A file changed beside the store, or a chain that does not hold: nothing takes the name."""
    next(full.files.iterdir()).write_bytes(b"swapped")
    with pytest.raises(RecordError, match="changed outside"):
        backup(full, tmp_path / "b.zip")
    assert not list(tmp_path.glob("b.zip*"))


def rewritten(path, out, change):
    """A copy of a backup with its parts run through ``change(name, content)``."""
    with zipfile.ZipFile(path) as old, zipfile.ZipFile(out, "w") as new:
        for name in old.namelist():
            for told in change(name, old.read(name)):
                new.writestr(*told)
    return out


def lines(change):
    """A change of the entries only."""
    return lambda name, data: [
        (name, b"\n".join(change(data.split(b"\n"))) if name == "entries.jsonl" else data)
    ]


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (
            lines(lambda ls: [*ls[:9], ls[9].replace(b'"n":9', b'"n":8'), *ls[10:]]),
            "changed|breaks at entry 10",
        ),
        (lines(lambda ls: [*ls[:5], *ls[6:]]), "does not follow entry 5|breaks at entry 7"),
        (lines(lambda ls: ls[:40]), "ends at entry 40"),
        (lines(lambda ls: [b"{", *ls]), "Line 1 is no entry"),
        (lines(lambda ls: [b'{"number": "x"}', *ls]), "Line 1 is no entry"),
        (lines(lambda ls: [b" " * 9_000_000, *ls]), "longer than any entry"),
        (lambda name, data: [] if name == "manifest.json" else [(name, data)], "manifest cannot be read"),
        (
            lambda name, data: (
                [(name, json.dumps({"format": "other"}))] if name == "manifest.json" else [(name, data)]
            ),
            "format",
        ),
        (
            lambda name, data: (
                [(name, data), ("files/../../evil", b"x")] if name == "manifest.json" else [(name, data)]
            ),
            "no hash",
        ),
        (
            lambda name, data: (
                [(name, data), ("files/" + "a" * 64, b"x")] if name == "manifest.json" else [(name, data)]
            ),
            "does not fit its name",
        ),
    ],
)
def test_what_does_not_fit_is_refused_at_its_place(whole, tmp_path, change, words):
    """Changed, removed, cut short, hostile names: said what and where; nothing outside the folder is
    written.
    """
    bad = rewritten(whole, tmp_path / "bad.zip", change)
    other = Store.file(tmp_path / "deep" / "c.db", now)
    with pytest.raises(RecordError, match=words):
        restore(bad, other)
    other.verify()
    assert not (tmp_path / "evil").exists()
    assert not list(tmp_path.rglob("evil"))


def test_a_bomb_stops_at_its_first_line(tmp_path):
    """Gigabytes of zeros in a small archive are not read into memory: the first line that is longer than any
    entry ends it.
    """
    bomb = tmp_path / "bomb.zip"
    with zipfile.ZipFile(bomb, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr(
            "manifest.json",
            json.dumps(
                {"format": "frywright-backup-1", "entries_count": 1, "last_hash": "0" * 64, "files_count": 0}
            ),
        )
        with archive.open("entries.jsonl", "w", force_zip64=True) as stream:
            for _ in range(60):
                stream.write(bytes(1 << 20))
    with pytest.raises(RecordError, match="longer than any entry"):
        restore(bomb, Store.file(tmp_path / "c.db", now))
    (tmp_path / "none.zip").write_bytes(b"no zip at all")
    with pytest.raises(RecordError, match="not a backup"):
        check(tmp_path / "none.zip")


@pytest.mark.slow
def test_two_sites_on_one_server_by_one_script():
    """The example runs from a clean folder and says what it should."""
    import subprocess
    import sys
    from pathlib import Path

    script = Path(__file__).parent.parent.parent / "examples/two_sites.py"
    done = subprocess.run([sys.executable, str(script)], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert "saltmarsh: 158 °F is below the limit" in done.stdout
    assert "into a plain file, the same chain" in done.stdout


def forged(path, out, *, number=1, last_hash=None, previous_hash=None):
    """A backup of one entry that says of itself what is asked; its own hash is always right."""
    with zipfile.ZipFile(path) as old:
        first = next(read_lines(old.open("entries.jsonl")))
    again = replace(first, number=number, hash=chain_hash(GENESIS, number, first.entry, first.recorded_at))
    again = replace(again, previous_hash=previous_hash or again.previous_hash)
    text = io.StringIO()
    json_lines([again], text)
    told = {
        "format": FORMAT,
        "entries_count": number,
        "last_hash": last_hash or again.hash,
        "files_count": 0,
    }
    with zipfile.ZipFile(out, "w") as new:
        new.writestr("entries.jsonl", text.getvalue())
        new.writestr("manifest.json", canonical(told))
    return out


@pytest.mark.parametrize(
    ("lie", "words"),
    [
        ({"number": 2}, "breaks at entry 2"),
        ({"previous_hash": "f" * 64}, "breaks at entry 1"),
        ({"last_hash": "f" * 64}, "ends at entry 1"),
    ],
)
def test_reading_a_backup_back_finds_each_lie_by_itself(whole, tmp_path, lie, words):
    """A number left out, a link to another entry, a manifest that ends elsewhere: each alone is found by the
    check that writes nothing, and the same backup without a lie passes.
    """
    assert check(forged(whole, tmp_path / "good.zip")).entries_count == 1
    with pytest.raises(RecordError, match=words):
        check(forged(whole, tmp_path / "bad.zip", **lie))


def test_reading_a_backup_back_finds_a_changed_entry_and_a_missing_one(whole, tmp_path):
    """A digit changed in entry 10; the last entries cut off; the manifest told of one entry more."""
    changes = (
        (lines(lambda ls: [*ls[:9], ls[9].replace(b'"n":9', b'"n":8'), *ls[10:]]), "breaks at entry 10"),
        (lines(lambda ls: ls[:40]), "ends at entry 40, its manifest says 2101"),
        (
            lambda name, data: [(name, data.replace(b"2101", b"2102") if name == "manifest.json" else data)],
            "ends at entry 2101, its manifest says 2102",
        ),
    )
    for change, words in changes:
        with pytest.raises(RecordError, match=words):
            check(rewritten(whole, tmp_path / "bad.zip", change))


def test_a_full_disk_is_said_and_leaves_no_half_backup(full, tmp_path, monkeypatch):
    """No space while it is written, none for its folder: words, and no file under any name."""

    def refuse(*_given, **_named):
        raise OSError(errno.ENOSPC, "No space left on device")

    for what in ("frywright.ledger.backup.json_lines", "pathlib.Path.mkdir"):
        with monkeypatch.context() as patch:
            patch.setattr(what, refuse)
            with pytest.raises(RecordError, match="cannot be written: No space left on device"):
                backup(full, tmp_path / "out" / "b.zip")
        assert not list(tmp_path.rglob("b.zip*"))


def test_a_store_that_cannot_be_opened_is_not_said_to_be_anothers(tmp_path):
    """A folder in its place, as a full or locked disk would: the words name disk and rights; a file of
    another kind is still no store of ours.
    """
    (tmp_path / "a.db").mkdir()
    with pytest.raises(RecordError, match="cannot be opened: unable to open database file"):
        Store.file(tmp_path / "a.db", now)
    (tmp_path / "b.db").write_text("a letter " * 200)
    with pytest.raises(RecordError, match="not a store of ours"):
        Store.file(tmp_path / "b.db", now)
