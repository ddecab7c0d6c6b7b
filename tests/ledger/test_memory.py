"""What a process remembers of a store: nothing is read twice, and nothing that others add is missed."""

from __future__ import annotations

import datetime as dt
import random
import shutil
import sqlite3
from contextlib import contextmanager

import pytest
import sqlalchemy as sa

from frywright.ledger import memory
from frywright.ledger.facts.day import DayNoted
from frywright.ledger.store import Store
from frywright.model.entry import Entry
from frywright.model.errors import RecordError

MOMENT = dt.datetime(2026, 11, 26, 12, 0, tzinfo=dt.UTC)


def note(store, event, day=0, replaces=None):
    """Keep a note of a day; its number."""
    fact = DayNoted(date=MOMENT.date() + dt.timedelta(days=day), event=event, factor_n=1.5)
    kept = Entry(
        kind=DayNoted.KIND,
        happened_at=MOMENT + dt.timedelta(days=day),
        author="Ada",
        payload=fact.payload(),
        replaces=replaces,
    )
    with store.writing() as writer:
        return writer.add(kept).number


def events(found):
    """What the notes say."""
    return [item.fact.event for item in found]


@pytest.fixture
def path(tmp_path):
    return tmp_path / "m.db"


@pytest.fixture
def store(path):
    return Store.file(path, lambda: MOMENT)


@contextmanager
def counted(store):
    """Rows of entries read inside."""
    rows = []

    def seen(connection, cursor, statement, *_):
        rows.append(statement)

    sa.event.listen(store.engine, "after_cursor_execute", seen)
    try:
        yield rows
    finally:
        sa.event.remove(store.engine, "after_cursor_execute", seen)


def test_facts_are_read_once_and_one_question_a_look_finds_that_nothing_is_new(store):
    """The same objects come back, for any order and way to ask."""
    for n in range(5):
        note(store, f"e{n}", n)
    first = list(store.facts(DayNoted))
    store.current_facts(DayNoted)
    with store.reading(), counted(store) as asked:
        again = list(store.facts(DayNoted))
        back = list(store.facts(DayNoted, newest_first=True))
        now = store.current_facts(DayNoted)
        span = list(store.facts_between(MOMENT, MOMENT + dt.timedelta(days=3), DayNoted))
        assert store.newest(DayNoted.KIND) == 5
    assert all(a is b for a, b in zip(first, again, strict=True))
    assert back == first[::-1] and now == first and span == first[:3]
    assert len(asked) == 1


def test_what_another_program_adds_is_seen_at_the_next_look(store, path):
    """Two programs on one file."""
    other = Store.file(path, lambda: MOMENT)
    note(store, "one")
    assert events(other.facts(DayNoted)) == ["one"]
    number = note(other, "two")
    assert events(store.facts(DayNoted)) == ["one", "two"] and store.newest(DayNoted.KIND) == number
    note(other, "three", replaces=number)
    assert events(store.current_facts(DayNoted)) == ["one", "three"]
    assert events(store.facts(DayNoted, after=number)) == ["three"]


def test_a_block_sees_what_it_wrote_and_nobody_what_was_undone(store):
    """Also inside a look that was begun before."""
    note(store, "one")
    with store.reading():
        assert events(store.facts(DayNoted)) == ["one"]
        with pytest.raises(ZeroDivisionError), store.writing():
            number = note(store, "two")
            assert events(store.facts(DayNoted)) == ["one", "two"] and store.newest(DayNoted.KIND) == number
            assert events(store.facts(DayNoted, newest_first=True)) == ["two", "one"]
            assert events(store.current_facts(DayNoted)) == ["one", "two"]
            assert len(list(store.facts_between(MOMENT, MOMENT + dt.timedelta(days=1), DayNoted))) == 2
            raise ZeroDivisionError
        assert events(store.facts(DayNoted)) == ["one"]
        note(store, "three")
        assert events(store.facts(DayNoted)) == ["one", "three"]


def test_kitchens_of_one_store_remember_apart(store):
    """Numbers begin anew in each."""
    second = store.at("second")
    note(store, "home")
    note(second, "there")
    assert events(store.facts(DayNoted)) == ["home"] and events(second.facts(DayNoted)) == ["there"]
    with store.writing():
        note(second, "more")
        assert events(second.facts(DayNoted)) == ["there", "more"]
        assert events(store.facts(DayNoted)) == ["home"]


@pytest.mark.parametrize("notes", [1, 2, 5])
def test_a_file_put_in_the_place_of_the_store_is_read_anew(store, path, tmp_path, notes):
    """A shorter, an equally long and a longer record of other entries."""
    other = Store.file(tmp_path / "o.db", lambda: MOMENT)
    for n in range(notes):
        note(other, f"other {n}")
    for n in range(2):
        note(store, f"mine {n}")
    assert len(list(store.facts(DayNoted))) == 2
    with sqlite3.connect(tmp_path / "o.db") as raw:
        raw.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    for end in ("-wal", "-shm"):
        path.with_name(path.name + end).unlink(missing_ok=True)
    shutil.copy(tmp_path / "o.db", path)
    assert events(store.facts(DayNoted)) == [f"other {n}" for n in range(notes)]
    assert store.newest(DayNoted.KIND) == notes


def test_a_long_kind_keeps_its_newest_and_reads_the_older_ones(store, monkeypatch):
    """Every way to ask gives the same as one that keeps all."""
    numbers = [note(store, f"e{n}", n % 7) for n in range(9)]
    note(store, "changed", replaces=numbers[2])
    fresh = Store.file(store.files.with_suffix(""), lambda: MOMENT)
    monkeypatch.setattr(memory, "TAIL_COUNT", 3)
    span = MOMENT + dt.timedelta(days=1), MOMENT + dt.timedelta(days=4)
    for more in ("", "ten", "eleven", "twelve", "thirteen", "fourteen"):
        if more:
            note(store, more)
        whole = [item.number for item in store.entries(DayNoted.KIND)]
        tail = fresh._memory
        for after in (None, 0, 2, 7, 8, 9, 50):
            found = [item.number for item in fresh.facts(DayNoted, after=after)]
            assert found == [n for n in whole if n > (after or 0)]
            found = [item.number for item in fresh.facts(DayNoted, newest_first=True, after=after)]
            assert found == [n for n in whole[::-1] if after is None or n < after]
        between = store.between(*span, DayNoted.KIND)
        assert [x.number for x in fresh.facts_between(*span, DayNoted)] == [x.number for x in between]
        kept = memory._TAILS[tail, DayNoted]
        assert not kept.whole and 3 <= len(kept.items) <= 6


def test_a_span_of_the_newest_of_a_long_kind_is_not_read_again(store, monkeypatch):
    """One question finds that no older entry happened in it; one entered long ago for that day stands in its
    place.
    """
    monkeypatch.setattr(memory, "TAIL_COUNT", 3)
    early = note(store, "entered ahead", 8)
    numbers = [note(store, f"e{n}", n) for n in range(9)]
    fresh = Store.file(store.files.with_suffix(""), lambda: MOMENT)
    read = []
    monkeypatch.setattr("frywright.ledger.store.kept", lambda *told: read.append(told) or memory.kept(*told))

    def between(first, last):
        span = MOMENT + dt.timedelta(days=first), MOMENT + dt.timedelta(days=last)
        found = [x.number for x in fresh.facts_between(*span, DayNoted)]
        assert found == [x.number for x in store.between(*span, DayNoted.KIND)]
        return found

    assert between(7, 8) == numbers[7:8] and between(7, 8) and not read
    assert not memory._TAILS[fresh._memory, DayNoted].whole
    assert between(8, 9) == [early, numbers[8]] and len(read) == 1
    assert between(0, 9) == [*numbers[:8], early, numbers[8]]


def test_a_long_kind_asked_for_from_its_first_is_read_once_and_stays_whole(store, monkeypatch):
    """However long it grows: what nothing replaced is told as the store itself finds it, with no more read
    than what is new.
    """
    monkeypatch.setattr(memory, "TAIL_COUNT", 3)
    numbers = [note(store, f"e{n}", n % 7) for n in range(9)]
    fresh = Store.file(store.files.with_suffix(""), lambda: MOMENT)
    assert len(list(fresh.facts(DayNoted, newest_first=True))) == 9
    assert [x.number for x in fresh.facts(DayNoted)] == numbers
    for n in range(8):
        note(store, f"changed {n}", replaces=numbers[n] if n < 4 else None)
        current = [x.number for x in store.current(DayNoted.KIND)]
        with fresh.reading(), counted(fresh) as asked:
            assert [x.number for x in fresh.current_facts(DayNoted)] == current
            assert len(list(fresh.facts(DayNoted))) == 10 + n
        assert len(asked) == (4 if n == 0 else 2)
    assert memory._TAILS[fresh._memory, DayNoted].whole


def test_memory_stays_bounded_over_kitchens(store, monkeypatch):
    """The kinds not asked for longest make room."""
    for key in ("a", "b", "c"):
        for n in range(4):
            note(store.at(key), f"{key}{n}")
    monkeypatch.setattr(memory, "MOST_KEPT", 9)
    for _ in range(2):
        for key in ("a", "b", "c"):
            assert events(store.at(key).facts(DayNoted)) == [f"{key}{n}" for n in range(4)]
            assert sum(len(tail.items) for tail in memory._TAILS.values()) <= 9


def test_what_is_changed_behind_the_program_is_found_by_the_chain_and_moves_no_page(store, path):
    """Facts stay as they were when they were read; a program that starts later reads the changed row, and
    both say that the chain is broken.
    """
    note(store, "fair")
    assert events(store.facts(DayNoted)) == ["fair"]
    with sqlite3.connect(path) as raw:
        raw.execute("DROP TRIGGER entry_no_update")
        raw.execute("UPDATE entry SET payload = replace(payload, 'fair', 'rain')")
    later = Store.file(path, lambda: MOMENT)
    assert events(store.facts(DayNoted)) == ["fair"] and events(later.facts(DayNoted)) == ["rain"]
    for one in (store, later):
        with pytest.raises(RecordError, match="breaks at entry 1"):
            one.verify()


def test_a_server_never_reads_a_file_that_another_took_the_place_of(store, path, tmp_path):
    """Connections that stay open are to the file that lies there now."""
    rest = store.stay_open()
    note(store, "mine")
    assert events(store.facts(DayNoted)) == ["mine"]
    other = Store.file(tmp_path / "o.db", lambda: MOMENT)
    note(other, "other")
    with sqlite3.connect(tmp_path / "o.db") as raw:
        raw.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    (tmp_path / "o.db").replace(path)
    for end in ("-wal", "-shm"):
        path.with_name(path.name + end).unlink(missing_ok=True)
    assert events(store.facts(DayNoted)) == ["other"]
    note(store, "more")
    assert events(Store.file(path, lambda: MOMENT).facts(DayNoted)) == ["other", "more"]
    rest()


def test_a_server_that_rests_leaves_one_whole_file(store, path):
    """Its connections stay while they are used, and are let go once nobody used one between two looks."""
    rest, journal = store.stay_open(), path.with_name(path.name + "-wal")
    second = store.at("second")
    note(second, "there")
    assert journal.exists() and store.engine.pool.checkedin() == 1
    rest()
    assert journal.exists()
    note(store, "mine")
    rest()
    assert journal.exists()
    rest()
    assert not journal.exists()
    assert events(store.facts(DayNoted)) == ["mine"] and events(second.facts(DayNoted)) == ["there"]


def test_a_look_that_let_go_reads_on_with_a_connection_of_its_own(store):
    """Whoever reads an answer slowly holds none between two pieces."""
    store.stay_open()
    note(store, "mine")
    with store.reading() as let_go:
        assert store.last().number == 1 and store.engine.pool.checkedout() == 1
        let_go()
        assert store.engine.pool.checkedout() == 0
        assert store.last().number == 1 and store.engine.pool.checkedout() == 0


def test_a_span_of_a_kind_is_the_same_by_memory_as_by_the_database(store):
    """Entries told out of order, some of one moment, more of them later; both ends, an empty span."""
    luck = random.Random(3)
    for turn in range(4):
        for _ in range(25):
            note(store, f"{turn}", luck.randrange(9))
        assert list(store.facts(DayNoted))  # kept whole
        for low, high in ((0, 9), (2, 5), (3, 3), (4, 5), (8, 20)):
            span = [MOMENT + dt.timedelta(days=day) for day in (low, high)]
            told = [item.number for item in store.facts_between(*span, DayNoted)]
            assert told == [item.number for item in store.between(*span, DayNoted.KIND)]


def test_a_span_reads_no_more_facts_than_lie_in_it(store, monkeypatch):
    """However many there are of the kind."""
    for day in range(60):
        note(store, "fair", day)
    read, own = [], memory._Kept.fact
    monkeypatch.setattr(memory._Kept, "fact", lambda self, cls: read.append(self.number) or own(self, cls))
    span = MOMENT + dt.timedelta(days=40), MOMENT + dt.timedelta(days=43)
    assert len(list(store.facts_between(*span, DayNoted))) == 3 == len(read)


def _event(fact):
    return fact.event or None


def _date(fact):
    return fact.date


def _read_whole(store, by):
    """The newest of each event by a walk over all that stands."""
    found = {}
    for item in store.current(DayNoted.KIND):
        fact = DayNoted(
            date=dt.date.fromisoformat(str(item.entry.payload["date"])),
            event=str(item.entry.payload["event"]),
            factor_n=1.5,
        )
        older = found.get(fact.event)
        if fact.event and (older is None or by is None or fact.date >= older[1].date):
            found[fact.event] = item.number, fact
    return {event: number for event, (number, _) in found.items()}


@pytest.mark.parametrize("by", [None, _date])
def test_the_newest_of_each_key_is_what_a_walk_over_all_finds(store, path, by):
    """Two programs on one file, notes that replace others, the newest too, and looks inside a block that is
    undone.
    """
    luck, other, numbers = random.Random(11), Store.file(path, lambda: MOMENT), []
    for n in range(150):
        writer = other if n % 5 == 0 else store
        place = luck.randrange(len(numbers)) if n % 4 == 3 else -1
        replaces = numbers.pop(place) if n % 4 == 3 or n % 9 == 8 else None
        numbers.append(note(writer, luck.choice(("", "fair", "rain", "game")), luck.randrange(6), replaces))
        if n % 3 == 0:
            found = store.newest_by(DayNoted, _event, by)
            assert {key: item.number for key, item in found.items()} == _read_whole(store, by)
            assert found is store.newest_by(DayNoted, _event, by)
        if n % 20 == 0:
            with pytest.raises(ZeroDivisionError), store.writing():
                mine = note(store, "fair", 9)
                assert store.newest_by(DayNoted, _event, by)["fair"].number == mine
                raise ZeroDivisionError


def test_the_newest_of_each_key_looks_only_at_what_is_new(store, monkeypatch):
    for n in range(40):
        note(store, f"e{n % 3}", n % 7)
    store.newest_by(DayNoted, _event)
    seen, own = [], memory._Kept.fact
    monkeypatch.setattr(memory._Kept, "fact", lambda self, cls: seen.append(self.number) or own(self, cls))
    number = note(store, "e1")
    assert store.newest_by(DayNoted, _event)["e1"].number == number
    assert seen == [number]
