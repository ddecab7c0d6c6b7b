"""The invented fortnight: played through the acts, at its own clock, and never over anybody's records."""

from __future__ import annotations

import datetime as dt
from collections import Counter

import pytest
from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms import demo
from frywright.rooms.clock import now, played
from frywright.rooms.cook.life import lives
from frywright.rooms.demo import play_demo
from frywright.rooms.hall import AUTHOR
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records.corrective import cases
from frywright.trial.kitchens import demo_text
from frywright.trial.life import State, Step
from frywright.web.app import make_app
from frywright.web.pages.now import gather
from tests.demo import kitchen_store
from tests.web.test_life import OWN

pytestmark = pytest.mark.slow
NOON = dt.datetime(2026, 11, 26, 19, 0, tzinfo=dt.UTC)
"""Noon of a Thursday where the demo stands."""
SERVING = ["bone-in alder", "bone-in birch", "tenders cedar", "wedges cedar", "wedges dogwood"]


def fortnight(folder, moment=NOON):
    """The demo as it opens at a moment."""
    store = Store.file(folder / "d.db", now)
    with played(moment):
        play_demo(store)
    return store


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    return fortnight(tmp_path_factory.mktemp("demo"))


def told(store):
    """Every entry with the names it refers to, without its hash: references are salted anew in each store."""
    return [
        (e.entry.kind, e.entry.happened_at, e.recorded_at, e.entry.payload) for e in store.entries(named=True)
    ]


def test_it_is_played_in_order_and_nothing_of_it_lies_ahead(store):
    """The chain fits, entries are recorded when they happen, by people who say that they are invented."""
    store.verify()
    entries = list(store.entries(named=True))
    times = [e.recorded_at for e in entries]
    assert times == sorted(times)
    assert NOON - dt.timedelta(days=15) < times[0] < times[-1] <= NOON
    assert all(abs(e.recorded_at - e.entry.happened_at) < dt.timedelta(minutes=1) for e in entries)
    authors = Counter(e.entry.author for e in entries)
    assert all("(invented)" in name for name in authors if name != AUTHOR)
    assert authors[AUTHOR] == 2  # the kitchen and its sales, before anybody works there
    assert remembered_kitchen(store).site.invented


def test_it_is_the_same_on_every_machine(store, tmp_path):
    """Opened at the same moment it is the same, entry by entry."""
    assert told(fortnight(tmp_path)) == told(store)


def test_every_state_of_a_program_is_there_to_see(store):
    """Each step is next of some program; each product sold has one in service; one is retired, one changed,
    one undone by the kitchen, one by a read-back.
    """
    with played(NOON):
        place = remembered_kitchen(store)
        found = lives(store, place)
    nexts = {life.next.step for life in found.values() if life.next}
    assert nexts == {Step.PROVEN, Step.PROBED, Step.CARD, Step.KEYED, Step.READ_BACK, Step.SERVICE}
    assert [name for name, life in found.items() if life.serving] == SERVING
    assert {name: life.end for name, life in found.items() if life.end} == {"tenders dogwood": "retired"}
    assert place.program("bone-in cedar").version == 2
    origin = {s.step: s.state for s in found["bone-in cedar"].steps}
    assert origin[Step.DESIGNED] is State.DONE
    again = place.mark(place.program("wings dogwood"))
    assert again.reason == "heat-up timed, one element is weak"
    assert again.margin_after_k < again.margin_before_k
    assert found["wings dogwood"].steps[-1].state is State.UNDONE
    assert found["wings birch"].wrong


def test_every_room_has_something_to_show_and_to_do(store):
    """A case closed and one open; Now has lines of every room; every page opens."""
    with played(NOON):
        assert sorted(c.closed for c in cases(store)) == [False, True]
        lines = gather(store, remembered_kitchen(store))
        acts = {x.act for x in lines if x.due_at is None}
        wanted = {"read_back", "case", "prove", "check", "care", "gap", "card", "probe", "serve", "key"}
        assert wanted <= acts
        client = TestClient(make_app(store), base_url="http://127.0.0.1", headers={"accept": "text/html"})
        for path in ("/", "/cook", "/cook/desk", "/cook/probing", "/care", "/care/fryers", "/care/people"):
            assert client.get(path).status_code == 200, path
        for path in ("/day", "/records", "/records/probing", "/records/gaps", "/records/pack"):
            assert client.get(path).status_code == 200, path
        assert "(invented)" in client.get("/care").text


@pytest.mark.parametrize("hour", [1, 10, 17, 23])
def test_it_opens_at_any_time_of_the_day(tmp_path, hour):
    """After midnight, before opening, in the rush, after the close: nothing lies ahead, the chain fits."""
    moment = NOON + dt.timedelta(hours=hour - 12)
    found = fortnight(tmp_path, moment)
    found.verify()
    assert max(e.recorded_at for e in found.entries()) <= moment
    assert len(list(found.entries("day_event"))) >= 14 * 9


def test_nobody_s_records_are_made_up(tmp_path, monkeypatch):
    """A kitchen that is there stays as it is; a scenario on a kitchen that is not invented is refused."""
    own = kitchen_store(tmp_path / "o.db", OWN)
    play_demo(own)
    assert own.last().number == 1
    real = demo_text().replace("invented = true", "invented = false")
    monkeypatch.setattr(demo, "demo_text", lambda: real)
    empty = Store.file(tmp_path / "r.db", now)
    with pytest.raises(InputError, match="an invented one"):
        play_demo(empty)
    assert empty.last().number == 0
