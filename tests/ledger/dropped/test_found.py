"""Nothing is emptied, changed or added unseen: the chain says so."""

from __future__ import annotations

import datetime as dt
import hashlib

import pytest
import sqlalchemy as sa
from fastapi.testclient import TestClient

from frywright.ledger.dropped import empty
from frywright.ledger.facts.dropping import EntriesDropped, digest_of, left_over, stretches_of
from frywright.ledger.tables import ENTRY
from frywright.model.entry import DROPPED, chain_hash, row_hash
from frywright.model.errors import RecordError
from frywright.rooms.clock import now
from frywright.rooms.records.dropping import drop_entries
from frywright.web.app import make_app
from tests.browsers import HOST
from tests.ledger.dropped.drops import EMPTY, TOLD, behind


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
