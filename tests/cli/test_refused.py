"""What a command cannot do it says in words: where it may not write, numbers it cannot take."""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

import pytest

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.day import day
from frywright.rooms.records.people import add_account


@pytest.mark.parametrize(
    "typed",
    [
        ("day", "plan", "--picture", "no/folder.svg"),
        ("oil", "moves", "--out", "no/folder.pdf"),
        ("care", "wall", "--out", "no/folder.pdf"),
        ("records", "anchor", "--out", "no/folder.txt"),
        ("records", "anchor", "--picture", "no/folder.svg"),
    ],
)
def test_a_place_that_cannot_be_written_is_named(said, typed, monkeypatch):
    """And nothing is a fault of ours."""
    monkeypatch.setattr(day, "_tuned_bench", lambda bench, kitchen: bench)
    if typed[0] == "day":
        said("day", "sales")
    line = said(*typed, code=2)
    assert f"{typed[2]} is {typed[3]}; it must be a place that can be written" in line


@pytest.mark.parametrize(
    "typed",
    [
        ("kitchen", "check", "x" * 300),
        ("oil", "sites", "x" * 300),
        ("cook", "simulate", "x" * 300, "--program", "a"),
    ],
)
def test_a_name_no_file_can_have_is_refused(said, typed):
    """A text that was pasted in the place of a file's name."""
    assert "file is xxx" in said(*typed, code=2)


def test_an_anchor_is_added_to_no_file_of_another_kind(said):
    """A picture is left as it is."""
    Path("a.png").write_bytes(b"\x89PNG\r\n\xff")
    assert "a.png cannot be read" in said("records", "anchor", "--out", "a.png", code=5)
    assert Path("a.png").read_bytes() == b"\x89PNG\r\n\xff"


@pytest.mark.parametrize(
    ("typed", "option"),
    [
        (("cook", "prove", "s.db", "--program", "wedges cedar"), "--seed"),
        (("cook", "design", "s.db", "--product", "tenders", "--fryer", "cedar"), "--seed"),
        (("cook", "transfer", "s.db", "--program", "wedges cedar", "--fryer", "dogwood"), "--seed"),
        (("day", "board"), "--practice"),
    ],
)
def test_a_seed_below_nothing_is_refused(said, typed, option):
    """No row of random numbers begins there."""
    assert f"{option} is -1; it must be 0 or more." in said(*typed, f"{option}=-1", code=2)


@pytest.mark.parametrize(
    ("typed", "pause"),
    [
        (("day", "watch", "."), "--every-s"),
        (("fleet", "sync", "https://office.example", "--token-file", "none"), "--every"),
        (("cook", "live", "--source", "file:none.csv"), "--seconds"),
    ],
)
@pytest.mark.parametrize("seconds", ["nan", "-1", "inf"])
def test_a_pause_that_is_none_is_refused(said, typed, pause, seconds):
    """Before anything is read."""
    assert f"{pause} is {seconds}; it must be 0 to 86400." in said(*typed, f"{pause}={seconds}", code=2)


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        (("--port", "99999"), "--port is 99999; it must be 0 to 65535."),
        (("--port=-1",), "--port is -1; it must be 0 to 65535."),
        (("--host", "203.0.113.7"), "--host is 203.0.113.7; it must be an address of this machine."),
    ],
)
def test_a_place_where_nobody_can_listen_is_refused(place, said, typed, says):
    """Another machine's address (RFC 5737 keeps it for examples) and ports that are none."""
    with closing(Store.named(place, now)) as store:
        add_account(store, "Olive", "owner", "oak leaf river stone")
    assert says in said("serve", "--no-open", *typed, code=2)


def test_more_loads_than_memory_are_refused(said):
    """Before any is drawn."""
    asked = ("cook", "prove", "s.db", "--program", "wedges cedar", "--samples")
    assert "samples is 1000001; it must be 1 to 1000000." in said(*asked, "1000001", code=2)
