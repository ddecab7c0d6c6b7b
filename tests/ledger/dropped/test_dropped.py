"""Entries whose time is over are emptied on record; what is asked for or named stays; all or nothing."""

from __future__ import annotations

import signal
import subprocess
import sys
from pathlib import Path

import pytest
import sqlalchemy as sa

from frywright.ledger.anchors import anchored, compare
from frywright.ledger.checking import checked
from frywright.ledger.dropped import empty
from frywright.ledger.facts.care import CareDone, ReportAttached
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.day import BoardTap
from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.store import Point, Store
from frywright.ledger.tables import ENTRY
from frywright.model.entry import DROPPED
from frywright.model.errors import InputError
from frywright.rooms.clock import Hall, acting, now, played
from frywright.rooms.hall import write
from frywright.rooms.readings import tell_probe
from frywright.rooms.records.corrective import cases, tell_step
from frywright.rooms.records.dropping import drop_entries, due_entries, term_of
from tests.ledger.dropped.drops import LONG_AGO, TOLD, filled, tap


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
