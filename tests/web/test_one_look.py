"""A page looks once: one connection for all its reads, one kitchen built."""

from __future__ import annotations

import pytest
import sqlalchemy as sa
from fastapi.testclient import TestClient

from frywright.rooms import kitchen as kitchens_kept
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app
from frywright.web.rights import RIGHTS
from tests.demo import kitchen_store
from tests.web.addresses import ADDRESSES

PLAIN = {
    route.removeprefix("GET ")
    for route in RIGHTS
    if route.startswith("GET ") and "{" not in route and not route.endswith("zip")
}
PAGES = sorted(PLAIN | set(ADDRESSES))
MOST_CONNECTIONS = 2


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    return kitchen_store(tmp_path_factory.mktemp("look") / "l.db")


@pytest.fixture(scope="module")
def client(store):
    return TestClient(make_app(store), base_url="http://127.0.0.1")


@pytest.mark.parametrize("path", PAGES)
def test_a_page_opens_two_connections_at_most_and_builds_the_kitchen_once(store, client, monkeypatch, path):
    """Counted on the engine and on the one place that builds a kitchen from the ledger, on a cold start."""
    opened, built = [], []
    build = kitchens_kept._kitchen_of
    monkeypatch.setattr(kitchens_kept, "_kitchen_of", lambda s: built.append(s) or build(s))
    monkeypatch.setattr(kitchens_kept, "_BUILT", type(kitchens_kept._BUILT)())

    def count(*_):
        opened.append(path)

    sa.event.listen(store.engine, "connect", count)
    try:
        answer = client.get(path, follow_redirects=False)
    finally:
        sa.event.remove(store.engine, "connect", count)
    assert answer.status_code < 500
    assert len(opened) <= MOST_CONNECTIONS
    assert len(built) <= 1


def test_what_is_written_during_a_request_is_seen(store):
    """No snapshot is held: a read after a write sees it, and the kitchen is built anew."""
    kitchen = remembered_kitchen(store)
    with store.reading():
        before = store.newest("kitchen")
        changed = demo_text().replace("Juniper", "Larch")
        remember_kitchen(store, changed, "demo.toml", "another name")
        assert store.newest("kitchen") > before
        assert remembered_kitchen(store).site.name != kitchen.site.name


def test_an_answer_sent_in_pieces_reads_on(store):
    """A generator begun inside a request still reads when the request is over."""
    with store.reading():
        entries = store.entries()
        first = next(entries)
    assert [first, *entries] == list(store.entries())
