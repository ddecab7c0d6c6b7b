"""Routes of pages: guarded, and made ready when they are asked for, once."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor, wait

import pytest
from fastapi import APIRouter, FastAPI
from fastapi.dependencies.utils import get_dependant
from fastapi.routing import APIRoute
from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.web import app as application
from frywright.web.app import make_app
from frywright.web.rights import RIGHTS
from frywright.web.routes import LateRoute, Routes, authorise
from tests.web.addresses import NOT_READ, READ


@pytest.fixture
def app(tmp_path):
    return make_app(Store.file(tmp_path / "t.db", now))


def ready(app: FastAPI) -> list[str]:
    """Addresses of the routes that were made ready."""
    return [r.path for r in app.routes if isinstance(r, LateRoute) and "dependant" in vars(r)]


def test_an_application_makes_ready_what_is_asked_for_only(app):
    """None when it is made, one for one page, the same one for the same page."""
    assert ready(app) == []
    with TestClient(app) as client:
        for _ in range(2):
            assert client.get("/health/live").status_code == 200
    assert ready(app) == ["/health/live"]


def test_every_page_asks_for_rights(app, monkeypatch):
    """Whatever its route says besides; a page whose routes would not ask does not come in at all."""
    pages = [r for r in app.routes if isinstance(r, APIRoute)]
    assert len(pages) > 150
    for route in pages:
        asks = route.dependant.dependencies[0]
        assert asks.call is authorise, route.path
    monkeypatch.setattr(application, "_pages", lambda: [type("Page", (), {"router": lambda _: APIRouter()})])
    with pytest.raises(AttributeError, match="join"):
        make_app(app.state.context.store)


def test_who_asks_while_a_route_is_made_ready_waits_for_it(monkeypatch):
    """No half of a route answers, and it is made ready once."""
    routes, made, second = Routes(), [], []

    def slowly(**told):
        made.append(told["call"])
        second.append(pool.submit(lambda: routes.routes[0].response_field))
        wait(second, 0.1)  # long enough to fail without waiting for its turn
        return get_dependant(**told)

    monkeypatch.setattr("fastapi.routing.get_dependant", slowly)

    @routes.get("/there/{number}")
    def there(number: int) -> dict[str, int]:
        return {"number": number}

    with ThreadPoolExecutor(1) as pool:
        assert routes.routes[0].app is not None
        assert second[0].result(60) is not None
    assert made == [there]
    with pytest.raises(AttributeError, match="no_such_name"):
        _ = routes.routes[0].no_such_name


def test_a_route_takes_and_refuses_what_its_function_says():
    """Methods, parts of the address and types as without waiting."""
    own, app = Routes(prefix="/a"), FastAPI()

    @own.get("/{number}")
    def there(number: int) -> dict[str, int]:
        return {"number": number}

    own.add_api_route("/said/short", lambda: {})  # no method said: it is read
    assert [r.methods for r in own.routes] == [{"GET"}, {"GET"}]
    own.routes[0]._told["dependencies"] = []
    own.join(app.router)
    client = TestClient(app)
    assert client.get("/a/7").json() == {"number": 7}
    assert client.get("/a/x").status_code == 422
    answer = client.post("/a/7")
    assert (answer.status_code, answer.headers["allow"]) == (405, "GET")
    assert client.get("/b/7").status_code == 404


def test_every_page_is_read_in_another_language_or_says_why_not():
    """A new page joins the list of those whose words are read in another language."""
    pages = {r.removeprefix("GET ") for r in RIGHTS if r.startswith("GET ")}
    pages -= {p for p in pages if p.endswith(".json") or p.startswith("/api/")}
    assert pages == set(READ) | set(NOT_READ)
