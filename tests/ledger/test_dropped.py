"""Entries whose time is over are emptied on record; the chain stays whole, and nothing is emptied unseen."""

from __future__ import annotations

import datetime as dt
import hashlib
import io
import json
import signal
import sqlite3
import subprocess
import sys
from pathlib import Path

import psycopg
import pytest
import sqlalchemy as sa
from examples.postgres import new_database
from fastapi.testclient import TestClient
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.anchors import anchored, compare, read_anchors
from frywright.ledger.backup import backup, check, import_lines, restore
from frywright.ledger.checking import checked
from frywright.ledger.dropped import empty
from frywright.ledger.export import json_lines
from frywright.ledger.facts.care import CareDone, ReportAttached
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.dropping import EntriesDropped, digest_of, left_over, stretches_of
from frywright.ledger.facts.fleet import AnchorKept
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.facts.probing import Reading
from frywright.ledger.replica import Followed, follow_all, take
from frywright.ledger.store import Point, Store
from frywright.ledger.tables import ENTRY
from frywright.model.entry import DROPPED, chain_hash, row_hash
from frywright.model.errors import InputError, RecordError
from frywright.rooms.clock import Hall, acting, now, played
from frywright.rooms.fleet.office import newest_anchor
from frywright.rooms.hall import write
from frywright.rooms.readings import tell_probe
from frywright.rooms.records import people
from frywright.rooms.records.corrective import cases, tell_step
from frywright.rooms.records.dropping import drop_entries, due_entries, term_of
from frywright.rooms.records.pack import gaps, gather
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app

HOST = "http://127.0.0.1"
PASSWORD = "oak leaf river stone"
LONG_AGO = dt.timedelta(days=4 * 366)
TOLD = {
    "term": "loads",
    "years": "2",
    "who": "Ana Vale",
    "second": "Ben Ford",
    "reason": "the time of these is over",
}


def tap(store, number):
    """A load dropped on the line."""
    fact = BoardTap(
        key=f"k{number}",
        date=now().date(),
        what="drop",
        at_s=40000.0 + number,
        fryer="alder",
        product="bone_in",
        pieces_count=8,
        reason="",
        who="Ana Vale",
        practice_count=None,
    )
    return write(store, fact)


def reading(store, load_number):
    """A probe reading of a load."""
    fact = Reading(
        name="alder 11:04",
        thermometer="T1",
        core_c=80.0,
        limit_c=74.0,
        load="alder 11:04",
        units_count=8.0,
        who="Ana Vale",
        load_number=load_number,
    )
    return write(store, fact)


def filled(store):
    """Loads and readings of four years ago, one load named by a reading of now; care, and a kitchen file."""
    with played(now() - LONG_AGO):
        write(store, KitchenSet(file="k.toml", text=demo_text()))
        first = [tap(store, n) for n in range(6)]
        reading(store, first[0].number)
        done = {"note": "", "date": now().date(), "role": "crew", "who": "Ana Vale"}
        write(store, CareDone(fryer="alder", task="boil_out", **done))
        write(store, CareDone(fryer="alder", task="boil_out", **done))
    reading(store, first[5].number)
    tap(store, 9)
    return store


@pytest.fixture(params=["file", pytest.param("postgres", marks=pytest.mark.slow)])
def store(request, tmp_path, monkeypatch):
    """A store in a file, and one in PostgreSQL."""
    if request.param == "file":
        found = Store.file(tmp_path / "d.db", now)
    else:
        monkeypatch.setenv("FRYWRIGHT_FILES", str(tmp_path / "files"))
        monkeypatch.setenv("FRYWRIGHT_KEY", str(tmp_path / "key"))
        found = Store.named(new_database(request.getfixturevalue("postgres"), "dropped"), now)
    yield filled(found)
    found.close()


@pytest.fixture
def filed(tmp_path):
    """A store in a file."""
    found = filled(Store.file(tmp_path / "f.db", now))
    yield found
    found.close()


def behind(store, *statements):
    """What somebody with the database does to it without the program, triggers taken away."""
    if not store.sqlite:
        url = store.engine.url.set(drivername="postgresql").render_as_string(hide_password=False)
        with psycopg.connect(url, autocommit=True) as there:
            there.execute("ALTER TABLE entry DISABLE TRIGGER USER")
            for text, values in statements:
                there.execute(text.replace("?", "%s"), values)
        return
    there = sqlite3.connect(store.engine.url.database)
    for (name,) in there.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'").fetchall():
        there.execute(f"DROP TRIGGER {name}")
    for text, values in statements:
        there.execute(text, values)
    there.commit()
    there.close()


EMPTY = (
    "UPDATE entry SET payload = '{\"kind\":\"' || kind || '\"}', kind = 'dropped', author = '',"
    " versions = '{}' WHERE number = ?"
)


def test_what_is_over_goes_and_the_chain_stays_whole(store):
    """Loads and readings of then; not what something of now names, nor care, nor the kitchen file. Heads of
    before still fit.
    """
    before = [item.hash for item in store.entries()]
    anchor = anchored(store, store.last(), now())
    assert len(list(store.facts(BoardTap))) == 7
    found = drop_entries(store, TOLD)
    assert found.numbers == (2, 3, 4, 5, 6, 8) and found.kinds == (("day_event", 5), ("probe_reading", 1))
    assert [i.number for i in store.facts(BoardTap)] == [7, 12]
    assert len(list(store.facts(CareDone))) == 2 and len(list(store.facts(KitchenSet))) == 1
    (said,) = store.facts(EntriesDropped)
    assert (said.fact.who, said.fact.second, said.fact.entries_count) == ("Ana Vale", "Ben Ford", 6)
    assert [item.hash for item in store.entries()][: len(before)] == before
    compare(store, [anchor])
    assert checked(store, now()).guarded
    assert store.verify() == (13, store.last().hash)
    step = store.verify_piece(Point(), 3)
    assert store.verify_piece(step, None) == store.last()
    with store.looking() as connection:
        texts = connection.execute(sa.select(ENTRY.c.payload, ENTRY.c.author).where(ENTRY.c.kind == DROPPED))
        assert {tuple(row) for row in texts} == {
            ('{"kind":"day_event"}', ""),
            ('{"kind":"probe_reading"}', ""),
        }
    with pytest.raises(InputError, match="no entry is that old"):
        drop_entries(store, TOLD)


def test_another_program_sees_that_they_are_gone(filed):
    """What it read before is read anew."""
    other = Store.file(Path(filed.engine.url.database), now)
    assert len(list(other.facts(BoardTap))) == 7
    drop_entries(filed, TOLD)
    assert len(list(other.facts(BoardTap))) == 2
    other.close()


@pytest.mark.parametrize(
    "change",
    [
        {"years": "1"},
        {"years": "31"},
        {"years": "²"},
        {"years": "9"},
        {"term": "kitchen"},
        {"term": "sales"},
        {"second": "ana vale"},
        {"second": ""},
        {"reason": "x"},
    ],
)
def test_it_is_refused_and_nothing_goes(filed, change):
    """Too young, none that old, no such term, nothing of it, one person alone, no reason."""
    before = list(filed.entries())
    with pytest.raises(InputError):
        drop_entries(filed, {**TOLD, **change})
    assert list(filed.entries()) == before


def test_a_second_person_who_did_not_confirm_keeps_everything(filed):
    """Their name alone is not enough where people have accounts."""
    with acting(Hall(author="Ana Vale", second="")), pytest.raises(InputError, match="confirmed here"):
        drop_entries(filed, TOLD)
    assert not list(filed.facts(EntriesDropped))


def closed(store, kitchen, opened):
    """A case that was closed now, however old."""
    steps = {"recook": {}, "reprobe": {"temp": "190F", "thermometer": "T1"}}
    steps |= {"disposition": {"disposition": "discarded"}, "cause": {"cause": "oil", "words": "oil too cool"}}
    for step, more in {**steps, "closed": {}}.items():
        tell_step(store, kitchen, opened.number, {"step": step, "who": "Ana Vale", **more})


def test_an_open_case_keeps_everything_and_one_goes_whole_or_not_at_all(tmp_path, kitchen):
    """Its records may be asked for; closed lately, its old reading and its opening stay with it."""
    store = Store.file(tmp_path / "c.db", now)
    told = {"fryer": "cedar", "product": "bone_in", "temp": "150F", "thermometer": "T1", "who": "Ana Vale"}
    with played(now() - LONG_AGO):
        tap(store, 1)
        old, young = (tell_probe(store, kitchen, told)[1] for _ in range(2))
        closed(store, kitchen, old)
    with pytest.raises(InputError, match="closed first"):
        drop_entries(store, TOLD)
    closed(store, kitchen, young)
    going = set(drop_entries(store, TOLD).numbers)
    assert {old.number, old.number - 1} <= going and not {young.number, young.number - 1} & going
    (left,) = cases(store)
    assert left.opened.number == young.number and left.closed
    store.close()


def test_a_case_that_a_report_names_stays_with_all_its_steps(tmp_path, kitchen):
    """Else it would read as open."""
    store = Store.file(tmp_path / "c.db", now)
    told = {"fryer": "cedar", "product": "bone_in", "temp": "150F", "thermometer": "T1", "who": "Ana Vale"}
    with played(now() - LONG_AGO):
        old = tell_probe(store, kitchen, told)[1]
        closed(store, kitchen, old)
        tap(store, 1)
        report = ReportAttached(of_number=old.number, name="r", sha256="0" * 64, size_bytes=1, who="Ana Vale")
        write(store, report)
    assert len(drop_entries(store, TOLD).numbers) == 1
    assert [case.closed for case in cases(store)] == [True]
    store.close()


def test_oil_since_the_last_filling_of_a_vat_stays(tmp_path):
    """What is older goes; where no filling is on record all of it stays."""
    store = Store.file(tmp_path / "o.db", now)
    with played(now() - LONG_AGO):
        rest = {"raw": "", "who": "Ana Vale", "how": "page", "key": "", "date": now().date()}
        for vat, what in (("alder", "filter"), ("alder", "fill"), ("alder", "filter"), ("birch", "filter")):
            write(store, OilDone(vat=vat, what=what, **rest))
    assert due_entries(store, term_of("care"), 3).numbers == (1,)
    store.close()


def test_a_dry_run_drops_nothing(filed):
    """It counts by kind."""
    before = list(filed.entries())
    found = due_entries(filed, term_of("loads"), 2)
    assert dict(found.kinds) == {"day_event": 5, "probe_reading": 1}
    assert due_entries(filed, term_of("care"), 3).numbers == (9,)  # the newest of a task stays
    assert list(filed.entries()) == before


def test_an_entry_emptied_behind_the_program_is_found(store):
    """Nothing says that it was dropped."""
    behind(store, (EMPTY, (4,)))
    with pytest.raises(RecordError, match="Entry 4 is empty, and no later entry"):
        store.verify()


def test_one_more_than_was_dropped_is_found(store):
    """The entry of the drop does not name it."""
    drop_entries(store, TOLD)
    behind(store, (EMPTY, (7,)))
    with pytest.raises(RecordError, match="Entry 7 is empty"):
        store.verify()


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("happened_at", "2019-01-01T00:00:00.000000Z"),
        ("recorded_at", "2019-01-01T00:00:00.000000Z"),
        ("payload", '{"kind":"probe_reading"}'),
        ("payload", '{"kind":"day_event","more":1}'),
        ("author", "x"),
    ],
)
def test_what_is_left_of_a_dropped_entry_cannot_be_changed(filed, field, value):
    """Its moments and its kind are in the digest of the entry that says so; nothing is added to it."""
    drop_entries(filed, TOLD)
    behind(filed, (f"UPDATE entry SET {field} = ? WHERE number = 3", (value,)))
    with pytest.raises(RecordError, match="Entry 13 says which entries were dropped"):
        filed.verify()


def test_another_hash_in_place_of_a_dropped_ones_is_found(filed):
    """The link of the next entry or the digest does not fit."""
    drop_entries(filed, TOLD)
    other = hashlib.sha256(b"other").hexdigest()
    behind(
        filed,
        ("UPDATE entry SET hash = ? WHERE number = 3", (other,)),
        ("UPDATE entry SET previous_hash = ? WHERE number = 4", (other,)),
    )
    with pytest.raises(RecordError):
        filed.verify()


def test_what_came_before_a_dropped_entry_cannot_be_written_anew(store):
    """Its own hash can no longer be worked out, and every hash after it would still fit: its link is in the
    digest. A drop from before links were in it still verifies.
    """
    drop_entries(store, TOLD)
    one = store.entry(1)
    with store.looking() as connection:
        row = connection.execute(sa.select(ENTRY).where(ENTRY.c.number == 1)).one()
    text = row.payload.replace("alder", "older")
    link = row_hash(
        one.previous_hash,
        1,
        (row.kind, row.author, None),
        (row.happened_at, row.recorded_at),
        (text, row.versions),
    )
    behind(
        store,
        ("UPDATE entry SET payload = ?, hash = ? WHERE number = 1", (text, link)),
        ("UPDATE entry SET previous_hash = ? WHERE number = 2", (link,)),
    )
    with pytest.raises(RecordError, match="Entry 13 says which entries were dropped"):
        store.verify()


def test_a_drop_whose_digest_has_no_links_still_verifies(filed):
    """The first that were made."""
    items = [filed.entry(n) for n in (3, 4)]
    forged(filed, numbers=(3, 4), digest=digest_of(left_over(i, i.entry.kind, linked=False) for i in items))
    assert filed.verify() == (13, filed.last().hash)


@pytest.mark.parametrize(
    ("number", "field", "value"),
    [
        (3, "payload", '{"kind"'),
        (3, "payload", "[1]"),
        (3, "happened_at", "2026-13-02T15:00:00.000000Z"),
        (3, "recorded_at", "x"),
        (13, "payload", '{"stretches"'),
        (13, "payload", '{"stretches":[[1,2,3]]}'),
        (13, "recorded_at", "x"),
        (12, "payload", "[1]"),
    ],
)
def test_what_nobody_can_read_is_named_not_stumbled_over(filed, number, field, value):
    """By verify, and by a page that asks for the pack."""
    drop_entries(filed, TOLD)
    behind(filed, (f"UPDATE entry SET {field} = ? WHERE number = ?", (value, number)))
    with pytest.raises(RecordError):
        filed.verify()
    client = TestClient(make_app(filed), base_url=HOST, raise_server_exceptions=False)
    for page in ("/records", "/records/pack.json", f"/records/entry/{number}"):
        assert client.get(page).status_code in (200, 409), page


@pytest.mark.parametrize(("letter", "other"), [("T", "x"), (".", ",")])
def test_the_moment_of_a_dropped_entry_is_written_as_it_was(filed, letter, other):
    """The same moment in other letters is no moment of ours."""
    drop_entries(filed, TOLD)
    behind(
        filed, ("UPDATE entry SET happened_at = replace(happened_at, ?, ?) WHERE number = 3", (letter, other))
    )
    with pytest.raises(RecordError, match="Entry 3 cannot be read"):
        filed.verify()


def forged(store, **change):
    """A drop that one person writes into the database: the right digest, the right chain."""
    from frywright.model.entry import Entry, canonical, stamp

    numbers = change.pop("numbers")
    items = [store.entry(n) for n in numbers]
    values = {
        "term": "loads",
        "before": now().date() - dt.timedelta(days=731),
        "stretches": stretches_of(numbers),
        "entries_count": len(items),
        "digest": digest_of(left_over(i, i.entry.kind) for i in items),
        "who": "A",
        "second": "B",
        "reason": "r",
    }
    fact, last = EntriesDropped(**{**values, **change}), store.last()
    entry = Entry(kind=fact.KIND, happened_at=now(), author="x", payload=fact.payload())
    link = chain_hash(last.hash, last.number + 1, entry, now())
    row = (last.number + 1, fact.KIND, stamp(entry.happened_at), stamp(now()), "x", canonical(fact.payload()))
    insert = (
        "INSERT INTO entry (site, number, kind, happened_at, recorded_at, author, payload, versions,"
        " previous_hash, hash) VALUES ('', ?, ?, ?, ?, ?, ?, '{}', ?, ?)"
    )
    moment = row[3]
    link = row_hash(last.hash, row[0], (row[1], "x", None), (row[2], moment), (row[5], "{}"))
    behind(store, (insert, (*row, last.hash, link)), *[(EMPTY, (n,)) for n in numbers])


@pytest.mark.parametrize(
    ("numbers", "change", "found"),
    [
        ((12,), {}, "Entry 12 was emptied, though its time is not over"),
        ((12,), {"before": dt.date(2100, 1, 1)}, "Entry 12 was emptied, though its time is not over"),
        ((1,), {}, "Entry 1 was emptied, though its time is not over or its kind stays for ever"),
        ((3, 4), {"digest": "0" * 64}, "Entry 13 says which entries were dropped"),
        ((3, 4), {"entries_count": 3}, "Entry 13 says which entries were dropped"),
    ],
)
def test_a_forged_drop_hides_nothing_that_may_not_go(filed, numbers, change, found):
    """What is young, a kitchen file, a digest that does not fit: found, though the chain itself is right."""
    forged(filed, numbers=numbers, **change)
    with pytest.raises(RecordError, match=found):
        filed.verify()


def test_the_database_refuses_every_other_change(store):
    """What is young, what no entry says was dropped, and any other text; what was emptied stays empty."""
    with store.writing() as writer, pytest.raises(sa.exc.DatabaseError):
        empty(writer.connection, store.site, [store.entry(3)])
        pytest.fail("an entry was emptied and nothing says so")
    drop_entries(store, TOLD)
    for number, text in ((7, '{"kind":"probe_reading"}'), (12, '{"kind":"day_event"}'), (3, "{}"), (7, "{}")):
        change = (
            ENTRY.update()
            .where(ENTRY.c.number == number)
            .values(kind=DROPPED, author="", payload=text, versions="{}")
        )
        with store.engine.connect() as connection, pytest.raises(sa.exc.DatabaseError, match="never altered"):
            connection.execute(change)
    assert store.verify()[0] == 13


def test_all_or_nothing_when_it_fails_in_the_middle(store, monkeypatch):
    """The entry that says so and the emptied ones are kept together."""
    before = list(store.entries())

    def cut(connection, site, items):
        empty(connection, site, items[:3])
        raise KeyboardInterrupt

    monkeypatch.setattr("frywright.rooms.records.dropping.empty", cut)
    with pytest.raises(KeyboardInterrupt):
        drop_entries(store, TOLD)
    assert list(store.entries()) == before and store.verify()[0] == 12


def test_a_backup_an_export_and_a_copy_hold_what_is_left(store, tmp_path):
    """Each verifies alone; one with a dropped entry more is refused."""
    drop_entries(store, TOLD)
    told = backup(store, tmp_path / "b.zip")
    assert check(tmp_path / "b.zip") == told
    back = Store.file(tmp_path / "back" / "b.db", now)
    restore(tmp_path / "b.zip", back)
    assert back.verify() == store.verify()
    lines = io.StringIO()
    json_lines(store.entries(), lines)
    out = Store.file(tmp_path / "out" / "o.db", now)
    assert import_lines(io.BytesIO(lines.getvalue().encode()), out) == 13
    assert out.verify() == store.verify()
    rows = [json.loads(line) for line in lines.getvalue().splitlines()]
    rows[6] |= {"kind": DROPPED, "author": "", "versions": {}, "payload": {"kind": rows[6]["kind"]}}
    text = "\n".join(json.dumps(row) for row in rows)
    with pytest.raises(RecordError, match="Entry 7 is empty"):
        import_lines(io.BytesIO(text.encode()), Store.file(tmp_path / "bad" / "o.db", now))
    back.close()
    out.close()


def rows_of(store, key=""):
    """Every row of a kitchen, whole."""
    query = sa.select(ENTRY).where(ENTRY.c.site == key).order_by(ENTRY.c.number)
    with store.looking() as connection:
        return [tuple(row)[1:] for row in connection.execute(query)]


def test_an_office_follows_what_two_people_dropped_at_the_site(filed, store, tmp_path):
    """Sent whole before: emptied when the entry arrives that says so. Sent afterwards: it comes empty. Both
    are then the site's own record row for row, and what the office remembered of them is gone.
    """
    early, late = store, Store.file(tmp_path / "late" / "o.db", now)
    take(early, "lane", list(filed.entries()), now())
    before = rows_of(early)
    assert len(list(early.at("lane").facts(BoardTap))) == 7
    drop_entries(filed, TOLD)
    items = list(filed.entries())
    take(early, "lane", items, now())
    take(early, "lane", items, now())
    take(late, "lane", items[:5], now())
    with pytest.raises(RecordError, match="is empty, and no later entry"):
        late.at("lane").verify()
    take(late, "lane", items[5:], now())
    for office in (early, late):
        assert office.at("lane").verify() == filed.verify()
        assert rows_of(office, "lane") == rows_of(filed)
        assert len(list(office.at("lane").facts(BoardTap))) == 2
        assert follow_all(office, "lane", now()) == Followed(count=0, left=())
    assert rows_of(early) == before  # its own of the same numbers stay
    late.close()


@pytest.mark.parametrize(
    ("change", "why"),
    [
        ({"second": "Ana Vale"}, "names no two people"),
        ({"who": ""}, "names no two people"),
        ({"digest": "0" * 64}, "not what it says"),
        ({"entries_count": 2}, "not what it says"),
    ],
)
def test_an_office_follows_nothing_that_does_not_fit(filed, tmp_path, change, why):
    """The entry is taken, for it is the site's word; what was sent before stays whole; the office hears."""
    office = Store.file(tmp_path / "office" / "o.db", now)
    take(office, "lane", list(filed.entries()), now())
    drop_entries(filed, TOLD)
    (told,) = filed.facts(EntriesDropped)
    told = EntriesDropped.read({**told.fact.payload(), **change})
    number = write(office.at("lane"), told).number  # as a forger at the site would send it
    found = follow_all(office, "lane", now())
    assert found.count == 0 and [n for n, _ in found.left] == [number] and why in str(found.left[0][1])
    assert len(list(office.at("lane").facts(BoardTap))) == 7
    office.close()


def test_a_site_whose_clock_ran_ahead_empties_nothing_at_the_office(filed, tmp_path):
    """Two years by the office's own clock; the site's is three years ahead."""
    office = Store.file(tmp_path / "office" / "o.db", now)
    take(office, "lane", list(filed.entries()), now())
    drop_entries(filed, TOLD)
    early = now() - dt.timedelta(days=3 * 365)
    take(office, "lane", list(filed.entries()), early)
    assert len(list(office.at("lane").facts(BoardTap))) == 7
    assert "its time is not over" in str(follow_all(office, "lane", early).left[0][1])
    assert follow_all(office, "lane", now()).count == 6
    assert office.at("lane").verify() == filed.verify()
    office.close()


def test_an_office_drops_its_own_old_anchors_and_keeps_the_newest_of_each_site(tmp_path):
    """An anchor says all that an older one of the same site said."""
    office, site = (Store.file(tmp_path / name / "o.db", now) for name in ("office", "site"))
    with played(now() - LONG_AGO):
        for n in range(3):
            tap(site, n)
            take(office, "lane", list(site.entries()), now())
            anchor = anchored(site, site.last(), now()).text
            for key in ("lane", "mill"):
                write(office, AnchorKept(key=key, entry_number=n + 1, text=anchor))
    found = drop_entries(office, {**TOLD, "term": "anchors", "years": "3"})
    assert found.numbers == (1, 2, 3, 4)
    assert [(a.fact.key, a.fact.entry_number) for a in office.facts(AnchorKept)] == [("lane", 3), ("mill", 3)]
    assert office.verify()[0] == 7
    (kept,) = read_anchors(newest_anchor(office, "lane").fact.text)
    compare(office.at("lane"), [kept])
    office.close()
    site.close()


def test_a_backup_of_before_put_back_is_noticed(filed, tmp_path):
    """It ends before the anchor that was kept after the drop."""
    backup(filed, tmp_path / "b.zip")
    drop_entries(filed, TOLD)
    anchor = anchored(filed, filed.last(), now())
    back = Store.file(tmp_path / "back" / "b.db", now)
    restore(tmp_path / "b.zip", back)
    with pytest.raises(RecordError, match="an older copy stands in place"):
        compare(back, [anchor])
    back.close()


def test_a_kitchen_beside_it_keeps_its_own(filed):
    """Numbers are those of one kitchen."""
    filled(filed.at("lane"))
    drop_entries(filed.at("lane"), TOLD)
    assert len(list(filed.facts(BoardTap))) == 7 and len(list(filed.at("lane").facts(BoardTap))) == 2
    assert filed.verify()[0] == 12 and filed.at("lane").verify()[0] == 13


@pytest.mark.slow
def test_a_killed_program_leaves_all_or_nothing(tmp_path):
    """Killed once it has written that entries were dropped, and again once it has emptied them: nothing is
    kept, and the store is sound.
    """
    path = tmp_path / "k.db"
    store = filled(Store.file(path, now))
    before = list(store.entries())
    for cut in ("before", "after"):
        done = subprocess.run([sys.executable, "-c", KILLED, str(path), cut], check=False)
        assert done.returncode == -signal.SIGKILL
        assert list(store.entries()) == before and store.verify()[0] == 12
    assert len(drop_entries(store, TOLD).numbers) == 6
    store.close()


KILLED = f"""
import os, signal, sys
from pathlib import Path
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.records import dropping
empty = dropping.empty
def cut(connection, site, items):
    if sys.argv[2] == "after":
        empty(connection, site, items)
    os.kill(os.getpid(), signal.SIGKILL)
dropping.empty = cut
dropping.drop_entries(Store.file(Path(sys.argv[1]), now), {TOLD!r})
"""


def test_the_pack_of_those_days_says_what_was_dropped(tmp_path, kitchen):
    """How many, when, by whom and why; the pack of other days does not."""
    store = filled(Store.file(tmp_path / "p.db", now))
    drop_entries(store, TOLD)
    day = (now() - LONG_AGO).date()
    told = " ".join(gaps(kitchen, gather(store, kitchen, day - dt.timedelta(days=1), day)))
    assert "6 entries of these days were dropped at the end of their time" in told
    assert "by Ana Vale and Ben Ford (entry 13): the time of these is over" in told
    today = now().date()
    assert "dropped at the end" not in " ".join(gaps(kitchen, gather(store, kitchen, today, today)))
    store.close()


@pytest.mark.parametrize(("typed", "done"), [("1357", True), ("9999", False)])
def test_on_the_terminal_the_second_person_confirms_with_a_pin(filed, typed, done):
    """Counted first; the PIN is asked for, not shown, and stands in no option."""
    people.add_account(filed, "Olive Zed", "owner", PASSWORD)
    people.add_account(filed, "Kim Vale", "lead", PASSWORD, "1357", "Olive Zed")
    run = CliRunner()
    command = ["records", "drop-entries", "loads", "2", "--store", str(filed.engine.url.database)]
    said = run.invoke(app, command)
    assert said.exit_code == 0 and "6 entries" in said.output and "would be dropped" in said.output
    assert not list(filed.facts(EntriesDropped))
    more = ["--really", "--who", "Olive Zed", "--second", "Kim Vale", "--reason", "time is over", "--json"]
    told = run.invoke(app, [*command, *more], input=f"{typed}\n")
    assert (told.exit_code == 0) == done == bool(list(filed.facts(EntriesDropped)))
    assert typed not in told.output
    if done:
        checked_now = run.invoke(app, ["records", "verify", str(filed.engine.url.database)])
        assert checked_now.exit_code == 0 and "6 of them were dropped" in checked_now.output
    listed = run.invoke(app, ["records", "drop-entries", "--json", "--store", str(filed.engine.url.database)])
    assert [row["least"] for row in json.loads(listed.output)["terms"]] == [2, 3, 3, 3, 3]


@pytest.mark.slow
def test_the_owner_drops_them_on_the_page_with_a_second_person(tmp_path):
    """Shown first, by kind; without that person's PIN nothing goes; the entry's page says what it was."""
    store = Store.file(tmp_path / "w.db", now)
    filled(store)
    people.add_account(store, "Olive Zed", "owner", PASSWORD)
    people.add_account(store, "Kim Vale", "lead", PASSWORD, "1357", "Olive Zed")
    client = TestClient(make_app(store), base_url=HOST, headers={"origin": HOST, "accept": "text/html"})
    client.post("/sign-in", data={"name": "Olive Zed", "secret": PASSWORD})
    page = client.get("/records/people?term=loads&entry_years=2").text
    assert "6 entries of before" in page and "21 CFR 117.315(a)" in page
    assert client.get("/records/people?term=care&entry_years=2").status_code == 422
    assert client.get("/records/people?term=x&entry_years=2").status_code == 422
    form = {"term": "loads", "years": "2", "second": "Kim Vale", "reason": "time is over"}
    assert client.post("/records/people/entries", data={**form, "second_pin": "9999"}).status_code == 422
    assert not list(store.facts(EntriesDropped))
    done = client.post("/records/people/entries", data={**form, "second_pin": "1357"})
    assert done.status_code in (200, 303)
    (said,) = store.facts(EntriesDropped)
    assert (said.fact.who, said.fact.second) == ("Olive Zed", "Kim Vale")
    first = next(said.fact.numbers)
    shown = client.get(f"/records/entry/{first}").text
    assert "dropped" in shown and f'href="/records/entry/{said.number}"' in shown
    assert client.get("/records").status_code == 200
    store.close()
