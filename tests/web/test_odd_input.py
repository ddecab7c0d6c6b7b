"""No page and no write dies of what is typed or sent: numbers of other alphabets or without end, half letters
and days outside every calendar, structures nested too deep. A generated round tries every route.
"""

from __future__ import annotations

import re
from pathlib import Path
from urllib.parse import quote

import psycopg
import pytest
from examples.postgres import new_database

from frywright import web
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from frywright.rooms.records import people
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app
from frywright.web.rates import Rates
from frywright.web.rights import RIGHTS
from tests.browsers import browser
from tests.web.drawn import broken_by

ODD = ("²", "9" * 26, "-1", "1e400", "nan", "\u202e", "0001-01-01T00:00", "9999-12-31T23:59", "[" * 300)
TEMPLATES = Path(web.__file__).parent / "templates"
FIELDS = {
    *(n for page in TEMPLATES.rglob("*.html") for n in re.findall(r'name="([a-z_0-9]+)"', page.read_text())),
    *(
        "before",
        "after",
        "limit",
        "kind",
        "done",
        "bought",
        "from",
        "to",
        "date",
        "now_s",
        "practice",
        "slot",
    ),
}
"""Boxes of every form, and what addresses carry."""


@pytest.fixture(scope="module", params=["sqlite", pytest.param("postgres", marks=pytest.mark.slow)])
def client(request, tmp_path_factory):
    """Nobody's browser on a kitchen without accounts, on both databases."""
    folder = tmp_path_factory.mktemp("odd")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("FRYWRIGHT_FILES", str(folder / "files"))
        on_file = request.param == "sqlite"
        name = str(folder / "o.db") if on_file else new_database(request.getfixturevalue("postgres"), "odd")
        store = Store.named(name, now)
        remember_kitchen(store, demo_text(), "demo.toml")
        app = make_app(store)
        app.state.rates = app.state.knocks = Rates(10**9, 10**9)
        yield browser(app, raise_server_exceptions=False)
        store.close()


@pytest.mark.parametrize(
    "address",
    [
        "/records?before=²",
        "/records?before=" + "9" * 23,
        "/records/entry/" + "9" * 26,
        "/records/entry/0",
        "/records/case/" + "9" * 26,
        "/records/probing?done=²",
        "/records/probing?product=bone_in&bought=0001-01-01T00:00",
        "/records/probing?product=bone_in&bought=9999-12-31T23:59",
        "/records/pack?from=9999-12-01&to=9999-12-31",
        "/records/pack.pdf?from=9999-12-01&to=9999-12-31",
        "/records/pack?to=0001-01-01",
        "/day/board?practice=²",
        "/api/v1/entries?kind=%00",
        "/api/v1/entries/" + "9" * 26,
    ],
)
@pytest.mark.parametrize("accept", ["text/html", "application/json"])
def test_an_address_with_something_odd_is_answered(client, address, accept):
    """A page of it or a refusal in words, never a bare 500."""
    assert client.get(address, headers={"accept": accept}).status_code < 500


@pytest.mark.parametrize(
    ("address", "body"),
    [
        ("/day/tap", b"[" * 100_000),
        ("/day/tap", b'{"\\ud800": 1}'),
        ("/day/tap", b'{"key": "a\\u0000"}'),
        ("/day/tap", b'{"key": "k", "at_s": 1e400}'),
        ("/api/v1/readings", b'{"temp_c": NaN}'),
        ("/api/v1/readings", b'{"temp_c": 1e400}'),
        ("/api/v1/readings", b'{"fryer": "\\ud800"}'),
        ("/api/v1/readings", b'{"\\ud800": 1}'),
        ("/api/v1/readings", b"[" * 100_000),
    ],
)
def test_a_body_with_something_odd_is_refused_in_words(client, address, body):
    """Its answer is JSON that anybody reads."""
    answer = client.post(
        address, content=body, headers={"content-type": "application/json", "idempotency-key": "k"}
    )
    assert 400 <= answer.status_code < 500
    assert answer.json()


@pytest.mark.parametrize(
    ("address", "form"),
    [
        ("/records/probing", {"fryer": "alder", "product": "bone_in", "temp": "80 C", "pieces": "²"}),
        ("/records/probing", {"fryer": "alder", "product": "bone_in", "temp": "80 C", "thermometer": "a\0b"}),
        ("/care/drill/fire", {"choice": "²"}),
        ("/sign-in", {"name": "a\0b", "secret": "x"}),
        ("/cook/kitchen", {"text": "[" * 50_000}),
        ("/cook/kitchen", {"text": "x = " + "9" * 5_000}),
    ],
)
def test_a_form_with_something_odd_is_refused_in_words(client, address, form):
    """On the page it came from or on one that says why."""
    answer = client.post(address, data=form, headers={"accept": "text/html"})
    assert 400 <= answer.status_code < 500


def test_a_load_of_no_pieces_is_refused_and_one_on_record_breaks_no_trace(client):
    """A program that misspells the count hears of it; older entries of nothing still give their chances."""
    body = {"key": "k1", "what": "drop", "fryer": "alder", "product": "bone_in", "pieces_count": 32}
    assert client.post("/day/tap", json=body).status_code == 422


@pytest.mark.slow
@pytest.mark.parametrize("route", sorted(r for r in RIGHTS if "desk/prove" not in r and "design" not in r))
def test_no_route_dies_of_a_generated_form(client, route):
    """Every route with every odd value in every field; what it says is its own affair."""
    method, path = route.split(" ", 1)
    for odd in ODD:
        address = re.sub(r"{\w+}", quote(odd[:40], safe=""), path)
        values = dict.fromkeys(FIELDS, odd)
        if method == "GET":
            short = {name: text[:60] for name, text in values.items()}
            answer = client.get(address, params=short, headers={"accept": "text/html"})
        else:
            answer = client.post(address, data=values, headers={"accept": "text/html"})
        assert answer.status_code < 500, (route, odd, answer.text[-400:])


@pytest.fixture
def shop(postgres, tmp_path, monkeypatch):
    """A kitchen on PostgreSQL with an owner and a till's token."""
    monkeypatch.setenv("FRYWRIGHT_FILES", str(tmp_path / "files"))
    store = Store.named(new_database(postgres, "drawn"), now)
    remember_kitchen(store, demo_text(), "demo.toml")
    people.add_account(store, "Olive", "owner", "oak leaf river stone")
    app = make_app(store)
    app.state.rates = app.state.knocks = Rates(10**9, 10**9)
    yield store, app, people.add_device(store, "Till", "crew", "Olive")
    store.close()


@pytest.mark.slow
def test_what_is_drawn_from_the_description_breaks_nothing_on_postgres(shop):
    """It refuses what a file takes: a zero letter, a number that is too large, half a letter."""
    store, app, token = shop
    assert broken_by(app, token, 15) == []
    store.verify()


@pytest.mark.slow
def test_a_lost_database_says_not_kept_and_goes_on_when_it_is_back(shop):
    """Every connection is cut and none is let in: 503 in words, to a page and a program; then as before."""
    store, app, token = shop
    pages = browser(app, raise_server_exceptions=False)
    till = {"authorization": f"Bearer {token}", "accept": "application/json", "idempotency-key": "lost"}
    reading = {"fryer": "alder", "product": "bone_in", "temp_c": 80.0, "thermometer": "T1", "pieces": 4}
    url, count = store.engine.url, store.last().number
    server = url.set(drivername="postgresql", database="postgres").render_as_string(hide_password=False)
    cut = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = 'drawn'"
    with psycopg.connect(server, autocommit=True) as other:
        other.execute("ALTER DATABASE drawn ALLOW_CONNECTIONS false")
        other.execute(cut)
        written = pages.post("/api/v1/readings", json=reading, headers=till)
        assert written.status_code == 503 and "NOT kept" in written.text
        for path in ("/records", "/sign-in", "/api/v1/chain"):
            assert pages.get(path, headers=till).status_code == 503
        other.execute("ALTER DATABASE drawn ALLOW_CONNECTIONS true")
    assert pages.get("/api/v1/chain", headers=till).json()["number"] == count
    assert pages.post("/api/v1/readings", json=reading, headers=till).status_code in (200, 201)
    assert store.last().number > count
