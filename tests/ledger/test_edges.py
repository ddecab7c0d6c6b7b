"""Edges of the record: a write sent twice, files that are gone or changed, names of a backup, a walk through
many entries, a database that is away.
"""

from __future__ import annotations

import datetime as dt
import io
import json
from dataclasses import asdict

import pytest
import sqlalchemy as sa

from frywright.ledger.attachments import Attachments
from frywright.ledger.database import in_words
from frywright.ledger.facts.probing import LogKept
from frywright.ledger.names import Person, read_person, ref_of
from frywright.ledger.once import kept_once, once
from frywright.ledger.store import Store
from frywright.model.errors import InputError, NotKeptError, RecordError
from frywright.rooms.clock import now
from frywright.rooms.hall import write


@pytest.fixture
def store(tmp_path):
    found = Store.file(tmp_path / "e.db", now)
    yield found
    found.close()


def log(store, name="a.csv"):
    return write(store, LogKept(name=name, sha256="0" * 64, size_bytes=1))


def test_a_write_sent_again_is_answered_and_not_done_again(store):
    """The same key of the same sender and text; another text is refused; another sender is another write."""
    done = []

    def act():
        done.append(len(done))
        return {"n": len(done)}

    assert once(store, "w", "k", {"a": 1}, act, who="tablet") == ({"n": 1}, True)
    assert once(store, "w", "k", {"a": 1}, act, who="tablet") == ({"n": 1}, False)
    with pytest.raises(InputError) as caught:
        once(store, "w", "k", {"a": 2}, act, who="tablet")
    assert caught.value.field == "Idempotency-Key"
    assert once(store, "w", "k", {"a": 1}, act, who="other") == ({"n": 2}, True)
    assert once(store, "another", "k", {"a": 1}, act, who="tablet") == ({"n": 3}, True)
    assert done == [0, 1, 2]


def test_a_key_without_its_sender_is_known_by_an_older_store(store):
    """The same text is the same write, whoever sends it now; another text is not."""
    assert once(store, "w", "k", {"a": 1}, lambda: {"n": 1}) == ({"n": 1}, True)
    assert once(store, "w", "k", {"a": 1}, lambda: {"n": 2}, who="tablet") == ({"n": 1}, False)
    assert once(store, "w", "k", {"a": 2}, lambda: {"n": 3}, who="tablet") == ({"n": 3}, True)


def test_a_fact_of_a_key_is_kept_once(store):
    first, new = kept_once(store, LogKept, "k", lambda: log(store))
    again, more = kept_once(store, LogKept, "k", lambda: log(store, "b.csv"))
    assert (new, more, again.number, again.fact.name) == (True, False, first.number, "a.csv")
    assert len(list(store.entries())) == 1


def test_a_kept_file_is_what_its_name_says(tmp_path):
    """Asked for by no name, gone or changed it is not handed out."""
    files = Attachments(tmp_path / "files")
    name, size = files.keep(io.BytesIO(b"breast 240 g"))
    assert size == 12
    assert files.keep(io.BytesIO(b"breast 240 g")) == (name, 12)
    assert [p.name for p in (tmp_path / "files").iterdir()] == [name]
    with files.open(name) as stream:
        assert stream.read() == b"breast 240 g"
    for wrong in ("x" * 64, name[:-1], "../" + name):
        with pytest.raises(RecordError, match="not the name of a kept file"):
            files.open(wrong)
    with pytest.raises(RecordError, match="dropped at the end of its time"):
        files.open("0" * 64)
    (tmp_path / "files" / name).write_bytes(b"breast 140 g")
    with pytest.raises(RecordError, match="changed outside"):
        files.open(name)


def test_a_file_that_cannot_be_kept_leaves_nothing(tmp_path):
    """A stream that breaks off, a folder that is a file."""

    class Broken(io.BytesIO):
        def read(self, size=-1):
            raise OSError("the line is cut")

    files = Attachments(tmp_path / "files")
    with pytest.raises(NotKeptError):
        files.keep(Broken())
    assert list((tmp_path / "files").iterdir()) == []
    (tmp_path / "file").write_bytes(b"")
    with pytest.raises(NotKeptError):
        Attachments(tmp_path / "file").keep(io.BytesIO(b"a"))


def test_a_name_of_a_backup_is_the_one_its_reference_was_made_of():
    """Anything else was changed, or is none."""
    kim = Person(ref=ref_of("5a", "Kim Vale"), salt="5a", name="Kim Vale", removed_on="")
    row = asdict(kim)
    assert read_person(json.dumps(row).encode()) == kim
    for wrong in ({"name": "Lou Fell"}, {"ref": "x" * 64}, {"salt": "0" * 33}):
        with pytest.raises(RecordError, match="was changed"):
            read_person(json.dumps({**row, **wrong}).encode())
    for line in (b"", b"{}", b"[" * 5000, b"nonsense"):
        with pytest.raises(RecordError, match="cannot be read"):
            read_person(line)


@pytest.mark.parametrize(
    ("error", "told"),
    [
        (sa.exc.OperationalError("s", {}, Exception("locked")), NotKeptError),
        (sa.exc.TimeoutError("none is free"), NotKeptError),
        (sa.exc.IntegrityError("s", {}, Exception("twice")), sa.exc.IntegrityError),
        (sa.exc.ProgrammingError("s", {}, Exception("no table")), sa.exc.ProgrammingError),
    ],
)
def test_a_database_that_is_away_is_told_in_words_and_a_fault_of_ours_is_not(error, told):
    with pytest.raises(told) as caught, in_words(writing=True):
        raise error
    assert isinstance(caught.value, told)


def test_entries_between_two_moments_are_all_found_once(store, monkeypatch):
    """Also where a block ends among entries of one moment."""
    monkeypatch.setattr("frywright.ledger.store.READ_BLOCK", 3)
    moment = dt.datetime(2026, 11, 20, 12, tzinfo=dt.UTC)
    for n in range(8):
        write(
            store,
            LogKept(name=f"{n}.csv", sha256="0" * 64, size_bytes=1),
            moment + dt.timedelta(seconds=n // 5),
        )
    found = [item.number for item in store.between(moment, moment + dt.timedelta(seconds=2))]
    assert found == [1, 2, 3, 4, 5, 6, 7, 8]
    first = [item.number for item in store.between(moment, moment + dt.timedelta(seconds=1))]
    assert first == [1, 2, 3, 4, 5]
