"""A store that cannot be used says "NOT kept"; a fault of ours is a page in words, with the usual headers."""

from __future__ import annotations

import datetime as dt
import os
import sqlite3
from pathlib import Path

import pytest
import sqlalchemy as sa

from frywright.ledger.attachments import Attachments
from frywright.ledger.facts.day import DayNoted
from frywright.ledger.store import Store
from frywright.model.errors import NotKeptError
from frywright.rooms import hall
from tests.browsers import browser

READING = {
    "fryer": "alder",
    "product": "bone_in",
    "temp": "150 C",
    "thermometer": "T1",
    "pieces": "8",
    "who": "Ana",
}


def client_of(store):
    return browser(store, raise_server_exceptions=False)


@pytest.mark.parametrize("message", ["database or disk is full", "disk I/O error", "database is locked"])
@pytest.mark.parametrize("accept", ["text/html", "application/json"])
def test_a_write_that_the_store_refuses_says_so(store, message, accept):
    """503 and NOT kept, on a page and in JSON, in Spanish too; the program's own client tries again."""
    client = client_of(store)
    client.get("/records")

    def full(*_):
        raise sqlite3.OperationalError(message)

    before = store.last().number
    sa.event.listen(store.engine, "before_cursor_execute", full_on("INSERT INTO entry", full))
    answer = client.post("/records/probing", data={**READING, "temp": "80 C"}, headers={"accept": accept})
    assert answer.status_code == 503
    assert "NOT kept" in answer.text
    assert message in answer.text
    assert "frame-ancestors" in answer.headers["content-security-policy"]
    spanish = client.post("/records/probing?lang=es", data={**READING, "temp": "80 C"})
    assert "NO se guardó" in spanish.text
    assert store.last().number == before


def full_on(start, full):
    def before(_connection, _cursor, statement, *_):
        if statement.startswith(start):
            full()

    return before


@pytest.mark.parametrize("path", ["/records", "/cook", "/api/v1/chain", "/sign-in"])
@pytest.mark.parametrize("accept", ["text/html", "application/json"])
def test_a_store_that_is_away_is_told_in_words(store, monkeypatch, path, accept):
    """While it is away every page says so; when it is back they go on."""
    client = client_of(store)
    assert client.get(path, headers={"accept": accept}).status_code == 200
    connect = store.engine.connect

    def away():
        raise sa.exc.OperationalError("connect", {}, sqlite3.OperationalError("unable to open database file"))

    monkeypatch.setattr(store.engine, "connect", away)
    answer = client.get(path, headers={"accept": accept})
    assert answer.status_code == 503
    assert "unable to open database file" in answer.text
    monkeypatch.setattr(store.engine, "connect", connect)
    assert client.get(path).status_code == 200


def test_a_disk_that_is_full_keeps_no_original(tmp_path, monkeypatch):
    """The half that was written is gone, and the caller hears of it."""

    def full(_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with Path(__file__).open("rb") as stream, pytest.raises(NotKeptError, match="No space left"):
        Attachments(tmp_path / "files").keep(stream)
    assert list((tmp_path / "files").iterdir()) == []


def test_a_fault_of_ours_is_a_page_with_its_headers(store, monkeypatch):
    """No bare line: words, the usual headers, and no trace of the code."""
    client = client_of(store)
    client.get("/records")
    monkeypatch.setattr(Store, "last", lambda *_: 1 / 0)
    for accept in ("text/html", "application/json"):
        answer = client.get("/records", headers={"accept": accept})
        assert answer.status_code == 500
        assert "ZeroDivisionError" in answer.text
        assert "Traceback" not in answer.text
        assert "frame-ancestors" in answer.headers["content-security-policy"]


def test_what_was_acknowledged_before_stays(store):
    """A write that fails leaves the ones before it whole."""
    hall.write(store, DayNoted(date=dt.date(2026, 11, 27), event="fair", factor_n=1.0))
    count = store.last().number
    sa.event.listen(
        store.engine,
        "before_cursor_execute",
        full_on("INSERT INTO entry", lambda: (_ for _ in ()).throw(sqlite3.OperationalError("full"))),
    )
    with pytest.raises(NotKeptError):
        hall.write(store, DayNoted(date=dt.date(2026, 11, 28), event="fair", factor_n=1.0))
    assert store.verify()[0] == count
