"""A day is tuned and planned before somebody opens it, once, whoever asks."""

from __future__ import annotations

import datetime as dt
import threading

import pytest

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.day import day as work
from frywright.web import serve
from frywright.web.benches import Benches
from frywright.web.kitchens import Kitchens
from tests.browsers import browser
from tests.demo import keep_demo_sales, kitchen_store


@pytest.fixture
def store(tmp_path):
    found = kitchen_store(tmp_path / "a.db")
    keep_demo_sales(found)
    yield found
    found.close()


@pytest.fixture
def made(monkeypatch):
    """Dates of the benches and plans that are worked out from now on; no rule is tuned, which takes long."""
    found = []

    def noted(name, date_of):
        does = getattr(work, name)

        def told(*given, **more):
            found.append((name, date_of(given)))
            return does(*given, **more)

        monkeypatch.setattr(work, name, told)

    monkeypatch.setattr(work, "_tuned_bench", lambda bench, kitchen: bench)
    noted("bench_for", lambda given: given[2])
    noted("morning", lambda given: given[0].date)
    return found


def test_today_and_tomorrow_are_ready_before_somebody_opens_them(store, made):
    """The pages then work nothing out; what changes a plan has it made anew, ahead of the next look."""
    pages = Kitchens(store)
    client = browser(pages)
    pages.ahead()
    today = pages.home.state.context.benches.today()
    days = [today, today + dt.timedelta(days=1)]
    assert made == [(name, day) for day in days for name in ("bench_for", "morning")]
    for day in days:
        assert client.get("/day", params={"date": day.isoformat()}).status_code == 200
    assert client.get("/day").status_code == 200
    pages.ahead()
    assert len(made) == 4
    work.note_day(store, days[1], "fair", 1.5)
    pages.ahead()
    assert made[4:] == made[:4]
    client.get("/day", params={"date": days[1].isoformat()})
    assert len(made) == 8


def test_without_a_kitchen_or_sales_there_is_nothing_to_have_ready(tmp_path, made):
    """And nothing is raised: the server looks again later."""
    empty = Store.file(tmp_path / "e.db", now)
    Kitchens(empty).ahead()
    Kitchens(kitchen_store(tmp_path / "k.db")).ahead()
    assert [name for name, _ in made] == ["bench_for"]


def test_who_asks_for_a_day_that_is_being_made_waits_for_it_and_for_no_other(store, made, monkeypatch):
    """One makes it; a day that is there is shown meanwhile."""
    benches, begun, go = Benches(store), threading.Event(), threading.Event()
    today = benches.today()
    there, later = benches.get(today), today + dt.timedelta(days=1)
    does = work.bench_for

    def slow(*given, **more):
        begun.set()
        assert go.wait(20)
        return does(*given, **more)

    monkeypatch.setattr(work, "bench_for", slow)
    found = []
    asking = [threading.Thread(target=lambda: found.append(benches.get(later))) for _ in range(3)]
    for one in asking:
        one.start()
    assert begun.wait(20)
    assert benches.get(today) is there
    go.set()
    for one in asking:
        one.join(20)
    assert len(found) == 3 and len({id(bench) for bench in found}) == 1
    assert made == [("bench_for", today), ("bench_for", later)]


def test_a_server_looks_once_a_minute(instead_of_sleep):
    slept, ready = [], []
    instead_of_sleep(slept.append)
    serve._ahead(lambda: ready.append(sum(slept)), lambda: sum(slept) < 300.0)
    assert ready == [60.0, 120.0, 180.0, 240.0, 300.0]
