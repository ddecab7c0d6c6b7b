"""Routes run in threads of their own: a write that waits keeps nobody else waiting, and two at once take
turns.
"""

from __future__ import annotations

import asyncio
import inspect
import os
import threading
import time
from concurrent.futures import ThreadPoolExecutor
from functools import partial

import pytest

from frywright.ledger.accounts import Accounts
from frywright.model.errors import AccessError, InputError
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.readings import tell_probe
from frywright.rooms.records import corrective, people
from frywright.web.app import make_app
from frywright.web.rates import InTurn
from tests.browsers import browser


def test_no_route_runs_on_the_loop_that_answers_everybody(store):
    """A coroutine would; the one that signs in, the one that answers an edit in its turn and the one that
    takes a site's file as it comes hand their work to a thread themselves.
    """
    routes = [route for route in make_app(store).routes if hasattr(route, "endpoint")]
    assert len(routes) > 100
    found = {r.path for r in routes if inspect.iscoroutinefunction(r.endpoint)}
    assert found == {"/sign-in", "/cook/view.json", "/api/v1/sync/files/{name}"}


def test_no_more_edits_are_worked_out_at_once_than_there_are_cores():
    """The others wait in the order they came."""
    here, most, order = [], [], []

    def work(number):
        here.append(number)
        most.append(len(here))
        order.append(number)
        time.sleep(0.02)
        here.remove(number)
        return number

    async def all_of_them():
        turn = InTurn()
        return await asyncio.gather(*(turn.run(partial(work, n)) for n in range(20)))

    assert asyncio.run(all_of_them()) == list(range(20))
    cores = os.cpu_count() or 1
    assert max(most) <= cores
    assert all(abs(n - place) < cores for place, n in enumerate(order))


def test_reading_goes_on_while_a_write_waits_for_the_store(store):
    """A writer elsewhere holds the store; pages are read meanwhile, and the write is done when it is free."""
    with browser(store) as client:
        held, free, posted = threading.Event(), threading.Event(), []

        def hold():
            with store.writing():
                held.set()
                free.wait(20)

        def post():
            posted.append(client.post("/care/oil", data={"vat": "alder", "what": "filter"}).status_code)

        with ThreadPoolExecutor(2) as pool:
            pool.submit(hold)
            held.wait(5)
            waiting = pool.submit(post)
            assert client.get("/api/v1/chain").status_code == 200
            assert posted == []
            free.set()
            waiting.result(30)
    assert posted == [200]


def test_of_many_who_close_a_case_at_once_one_does(store):
    """The look and the write are one."""
    kitchen = remembered_kitchen(store)
    short = {"fryer": "alder", "product": "bone_in", "temp": "150 F", "thermometer": "T1", "who": "Ana"}
    _, case = tell_probe(store, kitchen, short)
    for step in (
        {"step": "disposition", "disposition": "discarded"},
        {"step": "cause", "cause": "oil"},
    ):
        corrective.tell_step(store, kitchen, case.number, {**step, "who": "Ana"})

    def close(_):
        try:
            corrective.tell_step(store, kitchen, case.number, {"step": "closed", "who": "Ana"})
        except InputError:
            return 0
        return 1

    with ThreadPoolExecutor(8) as pool:
        assert sum(pool.map(close, range(8))) == 1


def test_of_many_first_owners_at_once_there_is_one(store):
    """Whoever comes second finds the kitchen owned."""

    def own(n):
        try:
            people.first_owner(store, f"Owner {n}", "oak leaf river stone")
        except AccessError:
            return 0
        return 1

    with ThreadPoolExecutor(6) as pool:
        assert sum(pool.map(own, range(6))) == 1
    assert len(Accounts(store).accounts()) == 1


def test_no_password_is_hashed_in_a_writers_turn(store, monkeypatch):
    """Whoever writes meanwhile waits for none: an owner's, a new account's, a changed one."""
    hashed, seen = people.hashed, []

    def look(secret):
        seen.append(store._queue._turn.locked())
        return hashed(secret)

    monkeypatch.setattr(people, "hashed", look)
    people.first_owner(store, "Olive Zed", "oak leaf river stone", "4321")
    people.add_account(store, "Sam Low", "crew", "fern moss river stone", "8765", "Olive Zed")
    people.change_account(store, "Sam Low", "Olive Zed", "forgotten", password="elm bark river stone")
    assert seen == [False] * 5
    signed = people.sign_in(store, "Sam Low", "elm bark river stone", "here", people.Tries())
    assert Accounts(store).session(signed, now()).name == "Sam Low"
    with pytest.raises(AccessError):
        people.first_owner(store, "Eve Mud", "oak leaf river stone")
