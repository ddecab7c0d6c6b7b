"""Nothing a page reads or looks up grows with the versions saved before, nor does saving another one: entries
read as facts, look-ups in the kitchen and questions to the store are counted, no seconds. A walk over what
is in memory is not: where every program stands costs some 3 µs a version.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace

import pytest
import sqlalchemy as sa
from fastapi.testclient import TestClient

from frywright.ledger import memory
from frywright.ledger import store as ledger
from frywright.ledger.facts.cook import ProgramSaved
from frywright.ledger.store import Store
from frywright.model.kitchen import Kitchen
from frywright.rooms.clock import now
from frywright.rooms.cook import desk
from frywright.rooms.cook.programs import save_program
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.web.app import make_app
from tests.browsers import browser
from tests.demo import kitchen_store

NAME = "bone-in alder"
FEW, MANY = 25, 150
PAGES = ("/", "/care", "/care/close", "/cook", "/cook/desk", "/cook/kitchen", "/cook/probing", "/records")
PAGES += ("/setup/first", f"/cook/changes?program={NAME}", "/api/v1/programs", "/cook/view.json")


def saved(path, count):
    """A store with so many versions of a program saved, each its own stages."""
    store = kitchen_store(path)
    program = remembered_kitchen(store).program(NAME)
    with store.writing():
        for n in range(count):
            write(store, ProgramSaved.of(another(program, n + 1), short=None, origin=None))
    return store


def another(program, more):
    """A later version of a program, cooked a second longer."""
    first, *rest = program.stages
    stages = (replace(first, duration_s=first.duration_s + more), *rest)
    return replace(program, version=program.version + more, stages=stages)


@pytest.fixture(scope="module")
def stores(tmp_path_factory):
    folder = tmp_path_factory.mktemp("history")
    return [saved(folder / f"{count}.db", count) for count in (FEW, MANY)]


@pytest.fixture
def work(monkeypatch, stores):
    """What is done from now on."""
    found = Counter()

    def counted(owner, name):
        does = getattr(owner, name)

        def told(*args, **kwargs):
            found[name] += 1
            return does(*args, **kwargs)

        monkeypatch.setattr(owner, name, told)

    counted(Kitchen, "_one")
    counted(Kitchen, "check")
    counted(memory, "kept")
    counted(ledger, "kept")

    def asked(*_):
        found["asked"] += 1

    for store in stores:
        sa.event.listen(store.engine, "after_cursor_execute", asked)
    yield found
    for store in stores:
        sa.event.remove(store.engine, "after_cursor_execute", asked)


@pytest.mark.parametrize("page", PAGES)
def test_a_page_does_the_same_work_after_few_versions_and_after_many(stores, work, page):
    """Looked at for the second time, so that what was saved is known."""
    told = []
    for store in stores:
        client = TestClient(make_app(store), base_url="http://127.0.0.1", headers={"accept": "text/html"})
        assert client.get(page).status_code == 200
        work.clear()
        assert client.get(page).status_code == 200
        told.append(dict(work))
    few, many = told
    assert few["asked"] > 0
    for what, count in many.items():
        assert count <= 1.2 * few.get(what, 0) + 20, (what, few, many)


def test_saving_another_version_reads_none_of_those_before(stores, work):
    """Two saves each; the second one's work is counted."""
    told = []
    for store in stores:
        for _ in range(2):
            kitchen = remembered_kitchen(store)
            work.clear()
            save_program(store, kitchen, another(kitchen.program(NAME), 1), based_on=None)
            assert remembered_kitchen(store).program(NAME).version == kitchen.program(NAME).version + 1
        told.append(dict(work))
    few, many = told
    for what, count in many.items():
        assert count <= 1.2 * few.get(what, 0) + 20, (what, few, many)


def test_changes_are_cooked_when_first_looked_at(tmp_path, monkeypatch):
    """Eleven versions for the ten changes of a page; none again until the next one is saved."""
    store, cooked, does = saved(tmp_path / "c.db", 30), [], desk.simulate_many
    monkeypatch.setattr(desk, "simulate_many", lambda plans: cooked.append(len(plans)) or does(plans))
    client = browser(store, page=True)
    for _ in range(3):
        page = client.get(f"/cook/changes?program={NAME}")
    assert cooked == [11] and "Printed cards of the old version are void." in page.text
    kitchen = remembered_kitchen(store)
    save_program(store, kitchen, another(kitchen.program(NAME), 1))
    assert client.get(f"/cook/changes?program={NAME}").text != page.text
    assert cooked == [11, 11]


def test_versions_before_the_newest_are_all_there(stores):
    """In order, and none of them is a program of the kitchen by itself."""
    kitchen = remembered_kitchen(saved_again(stores[0]))
    versions = kitchen.versions(NAME)
    first = versions[0].version
    assert [p.version for p in versions] == list(range(first, first + len(versions)))
    assert len(versions) > FEW
    assert [p for p in kitchen.programs if p.name == NAME] == [versions[-1]] == [kitchen.program(NAME)]
    assert kitchen.versions("nothing") == ()


def saved_again(store):
    """The same file as another program finds it."""
    return Store.file(store.files.with_suffix(""), now)
