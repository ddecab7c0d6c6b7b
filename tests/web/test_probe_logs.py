"""Logs of room Probes: small ones read at once, large ones in the background."""

from __future__ import annotations

import io
import threading
from types import SimpleNamespace

import pytest

from frywright.calibrate.readings import read_log
from frywright.model.errors import DataError
from frywright.rooms.cook import logs as logs_kept
from frywright.rooms.cook.logs import keep_log
from frywright.web.jobs import Job
from frywright.web.pages import probes


def kept_log(store, text):
    """A log of oil readings without a unit, kept beside the store."""
    return keep_log(store, io.BytesIO(text), "oil.csv")


@pytest.fixture
def logs(store):
    return probes.Logs(SimpleNamespace(store=store))


PLAIN = b"s;Oil\n" + b"".join(b"%d;150.0\n" % t for t in range(0, 4000, 2))


def test_a_small_log_is_read_at_once_and_a_large_one_in_the_background(store, logs, monkeypatch):
    """Both with the answers given: 150 said to be °F is 65.6 °C. The large one hands back a job whose work
    goes on after the answer, with its progress, and is then the log.
    """
    item, told = kept_log(store, PLAIN), {"unit": "f"}
    small = logs.get(item, told)
    assert small.channels[0].values[0] == pytest.approx(65.56, abs=0.01)
    assert logs.get(item, {}).channels[0].values[0] == 150.0

    go, shares = threading.Event(), []

    def reading(stream, name, answers, progress, size_bytes):
        assert go.wait(60)
        return read_log(stream, name, answers, lambda s: (shares.append(s), progress(s)), size_bytes)

    monkeypatch.setattr(logs_kept, "read_log", reading)
    monkeypatch.setattr(probes, "INLINE_BYTES", len(PLAIN) - 1)
    large = probes.Logs(logs.context)
    job = large.get(item, told)
    assert isinstance(job, Job)
    assert not job.done
    assert large.get(item, told) is job
    go.set()
    while not job.done:
        threading.Event().wait(0.01)
    assert job.error is None
    assert shares and max(shares) == pytest.approx(1.0)
    found = large.get(item, told)
    assert found.channels[0].values[0] == pytest.approx(65.56, abs=0.01)
    assert large.get(item, told) is found


def test_a_page_waits_while_a_large_log_is_read(client, store, monkeypatch):
    """How far it is, and the page comes again by itself; read through, it shows the log."""
    item, go = kept_log(store, PLAIN), threading.Event()

    def reading(stream, name, answers, progress, size_bytes):
        progress(0.25)
        assert go.wait(60)
        return read_log(stream, name, answers, progress, size_bytes)

    monkeypatch.setattr(logs_kept, "read_log", reading)
    monkeypatch.setattr(probes, "INLINE_BYTES", len(PLAIN) - 1)
    address = f"/cook/probes/{item.number}"
    waits = client.get(address)
    assert waits.status_code == 200
    assert 'http-equiv="refresh"' in waits.text and "oil.csv" in waits.text
    while " 25 %" not in waits.text:
        waits = client.get(address)
    go.set()
    while 'http-equiv="refresh"' in waits.text:
        waits = client.get(address)
    assert waits.status_code == 200 and "oil.csv" in waits.text


def test_a_large_log_that_is_none_is_said_on_every_try(store, logs, monkeypatch):
    """The background reading ends in the reader's own words, and the next try reads again."""
    monkeypatch.setattr(probes, "INLINE_BYTES", 0)
    item = kept_log(store, b"only words\nand no reading\n")
    for _ in range(2):
        job = logs.get(item, {})
        while not job.done:
            threading.Event().wait(0.01)
        with pytest.raises(DataError):
            logs.get(item, {})
