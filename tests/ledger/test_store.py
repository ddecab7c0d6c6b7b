"""The store: append-only, chained, one way to write, nothing half done."""

from __future__ import annotations

import datetime as dt
import hashlib
import io
import json
import sqlite3
from concurrent.futures import ThreadPoolExecutor

import pytest
import sqlalchemy as sa
from examples.postgres import new_database

from frywright.ledger.export import csv_table, inert, json_lines
from frywright.ledger.store import Point, Store
from frywright.model.entry import GENESIS, Entry, canonical, chain_hash, stamp
from frywright.model.errors import InputError, RecordError

MOMENT = dt.datetime(2026, 11, 25, 18, 10, tzinfo=dt.UTC)


def entry(**changes) -> Entry:
    return Entry(
        **{"kind": "program", "happened_at": MOMENT, "author": "kim", "payload": {"set_c": 165.0}, **changes}
    )


def later():
    return MOMENT + dt.timedelta(hours=1)


@pytest.fixture(params=["sqlite", pytest.param("postgres", marks=pytest.mark.slow)])
def url(request, tmp_path):
    """The name of a new store, on both databases."""
    if request.param == "sqlite":
        return str(tmp_path / "a.db")
    return new_database(
        request.getfixturevalue("postgres"), "t" + hashlib.sha256(request.node.name.encode()).hexdigest()[:20]
    )


@pytest.fixture
def named(monkeypatch, tmp_path):
    """Opens stores by name and closes them after the test."""
    monkeypatch.setenv("FRYWRIGHT_FILES", str(tmp_path / "files"))
    found = []

    def opened(name):
        found.append(Store.named(name, later))
        return found[-1]

    yield opened
    for store in found:
        store.close()


@pytest.fixture
def store(url, named):
    return named(url)


def by_hand(store, *statements):
    """Change the database behind the program's back, as somebody with its password would."""
    with store.engine.connect() as connection:
        if not store.sqlite:
            connection.execute(sa.text("SET session_replication_role = replica"))
        else:
            for what in ("update", "delete"):
                connection.exec_driver_sql(f"DROP TRIGGER entry_no_{what}")
        for statement in statements:
            connection.exec_driver_sql(statement)
        connection.commit()


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


def test_an_act_sees_what_it_wrote_and_nobody_else_before_it_is_kept(store, url, named):
    """Inside a block the entry added is read back, also where reads share a connection; another store sees it
    when the block ends.
    """
    other = named(url)
    with store.reading(), store.writing() as writer:
        assert list(store.entries()) == []
        number = writer.add(entry()).number
        assert [e.number for e in store.entries()] == [number]
        assert store.newest("program") == number
        assert list(other.entries()) == []
    assert [e.number for e in other.entries()] == [number]


def test_the_database_itself_refuses_changes(store):
    """UPDATE and DELETE are refused by triggers on both databases."""
    fill(store)
    for sql in ("UPDATE entry SET author='x' WHERE number=2", "DELETE FROM entry WHERE number=2"):
        with pytest.raises(sa.exc.DatabaseError, match="never altered"), store.engine.begin() as connection:
            connection.exec_driver_sql(sql)
    assert store.verify()[0] == 5


@pytest.mark.parametrize(
    ("sql", "at"),
    [
        ("UPDATE entry SET payload='{\"n\":99}' WHERE number=3", 3),
        ("DELETE FROM entry WHERE number=2", 3),
        ("UPDATE entry SET payload='{\"n\": 2}' WHERE number=3", 3),
        ("UPDATE entry SET author='kim2' WHERE number=4", 4),
        ("UPDATE entry SET hash='0' WHERE number=5", 5),
        ("UPDATE entry SET happened_at='2020-01-01T00:00:00.000000Z' WHERE number=1", 1),
    ],
)
def test_tampering_by_hand_is_found_and_located(store, sql, at):
    """With the triggers out of the way, a change, a removal or a forged link breaks the chain at its
    place.
    """
    fill(store)
    by_hand(store, sql)
    with pytest.raises(RecordError, match=f"entry {at}"):
        store.verify()


def test_a_piece_of_the_chain_is_checked_from_a_point(store):
    """Pieces add up to the whole; a break behind the point is found only from the start."""
    fill(store, 10)
    point = store.verify_piece(Point(), None)
    assert (point.number, point.hash) == store.verify()
    fill(store, 5)
    assert store.verify_piece(point, None).number == 15
    by_hand(store, "UPDATE entry SET author='x' WHERE number=3")
    assert store.verify(point)[0] == 15
    with pytest.raises(RecordError, match="entry 3"):
        store.verify()


def test_spans_of_time_and_single_entries(store):
    """Entries of a span come by when they happened, late ones in their place; single ones by number, with
    what replaced them.
    """
    for hours in (5, 1, 3):
        with store.writing() as writer:
            writer.add(entry(happened_at=MOMENT + dt.timedelta(hours=hours), payload={"h": hours}))
    found = store.between(MOMENT, MOMENT + dt.timedelta(hours=4))
    assert [e.entry.payload["h"] for e in found] == [1, 3]
    assert [e.number for e in store.between(MOMENT, MOMENT + dt.timedelta(hours=9), "other")] == []
    with store.writing() as writer:
        writer.add(entry(replaces=1))
    assert store.replaced_by(1).number == 4
    assert store.entry(1).entry.payload == {"h": 5}
    assert store.entry(99) is None


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


def test_two_writers_take_turns(store, url, named):
    """Writers of two open stores never write the same number, not even at the same moment."""
    stores = [store, named(url)]

    def write(which):
        for i in range(15):
            with stores[which].writing() as writer:
                writer.add(entry(payload={"n": i, "by": which}))

    with ThreadPoolExecutor(2) as pool:
        list(pool.map(write, (0, 1)))
    assert store.verify()[0] == 30


def test_two_writers_on_one_entry(store, url, named):
    """One wins; the other is told the number of the entry that won, so that both can be looked at."""
    fill(store, 1)
    other, told = named(url), []

    def correct(which):
        try:
            with (store, other)[which].writing() as writer:
                return writer.add(entry(payload={"by": which}, replaces=1)).number
        except RecordError as error:
            told.append(str(error))
            return 0

    with ThreadPoolExecutor(2) as pool:
        assert sorted(pool.map(correct, (0, 1))) == [0, 2]
    assert "already replaced by entry 2" in told[0]
    assert store.replaced_by(1).number == 2


def test_a_newer_or_foreign_file_is_left_alone(tmp_path):
    """A store of a newer program and a file that is no database are refused in words."""
    Store.file(tmp_path / "a.db", later)
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


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("=1+1", "'=1+1"),
        ("@SUM(A1)", "'@SUM(A1)"),
        ("\t=1", "\t'=1"),
        ("two lines\n+1", "two lines\n'+1"),
        ("Kim;=1+1", "Kim;'=1+1"),
        ("\uff1d1+1", "'\uff1d1+1"),
        ("Kim; 3 = three, 4-5", "Kim; 3 = three, 4-5"),
        ("", ""),
    ],
)
def test_what_a_spreadsheet_would_run_has_a_quote_before_it(text, kept):
    """Wherever it splits a line, by country: behind a semicolon, a tab or a line break as well."""
    assert inert(text) == kept


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


def test_a_store_of_the_first_schema_is_migrated(tmp_path):
    """A file as the first release wrote it opens, keeps its entries and their chain, and has the new
    index.
    """
    from alembic import command
    from alembic.config import Config

    import frywright.ledger.store as module

    path = tmp_path / "old.db"
    config = Config()
    config.set_main_option("script_location", str(module.Path(module.__file__).parent / "migrations"))
    engine = sa.create_engine(f"sqlite:///{path}")
    with engine.begin() as connection:
        config.attributes["connection"] = connection
        command.upgrade(config, "0001")
    engine.dispose()
    with sqlite3.connect(path) as raw:
        assert raw.execute("SELECT version_num FROM alembic_version").fetchone() == ("0001",)
        first = entry()
        link = chain_hash(GENESIS, 1, first, MOMENT)
        row = (
            1,
            first.kind,
            stamp(MOMENT),
            stamp(MOMENT),
            first.author,
            canonical(dict(first.payload)),
            None,
            "{}",
            GENESIS,
            link,
        )
        raw.execute("INSERT INTO entry VALUES (?,?,?,?,?,?,?,?,?,?)", row)
    store = Store.file(path, later)
    assert store.verify() == (1, link)
    assert [e.entry for e in store.entries("program")] == [first]
    assert "ix_entry_kind_number" in {i["name"] for i in sa.inspect(store.engine).get_indexes("entry")}


@pytest.mark.parametrize("name", ["mysql://a@b/c", "http://x", "postgresql://nobody@127.0.0.1:1/none"])
def test_what_is_no_store_is_refused_in_words(name):
    """Another scheme, or a server that does not answer."""
    with pytest.raises(RecordError, match=r"no store we know|not a store|that its server runs"):
        Store.named(name, later)


def test_two_kitchens_in_one_store_have_a_chain_each(store):
    """Each counts from 1, sees its own entries only, supersedes its own only, and is checked by itself."""
    here, there = store.home, store.at("second")
    for text in ("a", "b"):
        with here.writing() as writer:
            writer.add(entry(payload={"at": text}))
    with there.writing() as writer:
        made = writer.add(entry(payload={"at": "c"}))
    assert made.number == 1
    assert [e.entry.payload["at"] for e in here.entries()] == ["a", "b"]
    assert [e.entry.payload["at"] for e in there.entries()] == ["c"]
    assert (here.verify()[0], there.verify()[0]) == (2, 1)
    assert (here.newest("program"), there.newest("program")) == (2, 1)
    assert there.entry(2) is None
    assert [e.number for e in there.between(MOMENT, later())] == [1]
    with there.writing() as writer:
        writer.add(entry(replaces=1, payload={"at": "d"}))
    assert [e.entry.payload["at"] for e in there.current("program")] == ["d"]
    assert [e.entry.payload["at"] for e in here.current("program")] == ["a", "b"]
    assert here.replaced_by(1) is None and there.replaced_by(1).number == 2
    with pytest.raises(RecordError, match="Entry 3 does not exist"), there.writing() as writer:
        writer.add(entry(replaces=3))


def test_a_kitchen_changed_by_hand_breaks_its_own_chain(store):
    """The other kitchen of the store is whole still."""
    for one in (store.home, store.at("second")):
        with one.writing() as writer:
            writer.add(entry())
    by_hand(store, "UPDATE entry SET author='x' WHERE site='second'")
    assert store.home.verify()[0] == 1
    with pytest.raises(RecordError, match="breaks at entry 1"):
        store.at("second").verify()


def test_what_two_kitchens_keep_in_one_block_is_kept_together_or_not_at_all(store):
    """A block inside a block belongs to the outer one, whichever kitchen it writes for."""
    with pytest.raises(ZeroDivisionError), store.home.writing() as writer:
        writer.add(entry())
        with store.at("second").writing() as inner:
            inner.add(entry())
        raise ZeroDivisionError
    assert not store.home.last().number and not store.at("second").last().number
    with store.at("second").writing() as writer:
        writer.add(entry())
        with store.home.writing() as inner:
            inner.add(entry())
    assert (store.home.last().number, store.at("second").last().number) == (1, 1)


@pytest.mark.parametrize("key", ["A", "a b", "a/b", "a" * 41, "é"])
def test_a_key_that_is_none_is_refused(store, key):
    """It stands in addresses and file names."""
    with pytest.raises(InputError, match="kitchen"):
        store.at(key)


def test_writers_that_wait_for_their_turn_hold_no_connection(store, monkeypatch):
    """Twenty at once: one connection at a time; one that waits too long keeps nothing and says so."""
    from frywright.ledger import database as module
    from frywright.model.errors import NotKeptError

    here, most = [], []
    connect = store.engine.connect

    def counted():
        most.append(len(here) + 1)
        here.append(1)
        made = connect()
        close = made.close
        made.close = lambda: (here.pop(), close())[1]
        return made

    monkeypatch.setattr(store.engine, "connect", counted)

    def write(n):
        with store.writing() as writer:
            writer.add(entry(payload={"n": n}))

    with ThreadPoolExecutor(20) as pool:
        list(pool.map(write, range(20)))
    assert max(most) == 1
    monkeypatch.setattr(store.engine, "connect", connect)
    assert store.last().number == 20
    monkeypatch.setattr(module, "LONGEST_QUEUE_S", 0.1)
    with store.writing(), ThreadPoolExecutor(1) as pool, pytest.raises(NotKeptError, match="NOT kept"):
        pool.submit(write, 1).result()
