"""The interface for programs: writes once whatever the line does, hostile input never breaks it, the client
speaks it.
"""

from __future__ import annotations

import threading
import time

import pytest
import uvicorn
from fastapi.testclient import TestClient

from frywright.client.http import Client
from frywright.ledger.anchors import read_anchors
from frywright.ledger.store import Store
from frywright.model.errors import AccessError, FrywrightError, RecordError
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records import people
from frywright.web.app import make_app
from tests.browsers import HOST
from tests.demo import kitchen_store
from tests.web.drawn import broken_by

READING = {"fryer": "alder", "product": "bone_in", "temp_c": 78.0, "thermometer": "T1", "pieces": 32}


@pytest.fixture
def shop(tmp_path):
    """A kitchen with an owner and a till's token."""
    store = kitchen_store(tmp_path / "a.db")
    people.add_account(store, "Olive", "owner", "oak leaf river stone")
    return store, make_app(store), people.add_device(store, "Till", "crew", "Olive")


@pytest.fixture
def client(shop):
    _, app, token = shop
    return TestClient(app, base_url=HOST, headers={"authorization": f"Bearer {token}"})


def test_the_same_key_writes_once(client, shop):
    """Sent again it gives the first answer; with another body it is refused; without a key nothing is
    written.
    """
    store = shop[0]
    before = store.last().number
    first = client.post(
        "/api/v1/readings", json={**READING, "temp_c": 60.0}, headers={"idempotency-key": "a"}
    ).json()
    again = client.post(
        "/api/v1/readings", json={**READING, "temp_c": 60.0}, headers={"idempotency-key": "a"}
    ).json()
    assert first["new"]
    assert first["case"]
    assert again == {**first, "new": False}
    assert store.last().number == before + 2
    assert client.post("/api/v1/readings", json=READING, headers={"idempotency-key": "a"}).status_code == 422
    assert client.post("/api/v1/readings", json=READING).status_code == 422
    assert client.post(
        "/api/v1/oil", json={"vat": "alder", "what": "filter"}, headers={"idempotency-key": "a"}
    ).json()["new"]
    assert store.verify()[0] == before + 3


@pytest.mark.parametrize("moment", ["2099-01-01T00:00:00Z", "2000-01-01T00:00:00Z", "2026-11-25T18:40:00"])
def test_a_reading_of_a_time_that_cannot_be_is_refused(shop, moment):
    """To come, long past, or without its zone."""
    _, app, till = shop
    client = TestClient(
        app, base_url=HOST, headers={"authorization": f"Bearer {till}", "idempotency-key": "t"}
    )
    assert client.post("/api/v1/readings", json={**READING, "happened_at": moment}).status_code == 422


def test_two_devices_that_number_alike_are_no_repeats_of_each_other(shop):
    """Wall and Till both send load-1: each is kept, each once; a key answered before keys had senders still
    counts.
    """
    from frywright.ledger.once import once

    store, app, till = shop
    wall = people.add_device(store, "Wall", "crew", "Olive")
    before = store.last().number
    for token in (till, wall, till, wall):
        sent = TestClient(app, base_url=HOST, headers={"authorization": f"Bearer {token}"}).post(
            "/api/v1/readings", json=READING, headers={"idempotency-key": "load-1"}
        )
        assert sent.status_code == 200
    assert store.last().number == before + 2
    assert once(store, "old", "k", {"a": 1}, lambda: {"number": 1}) == ({"number": 1}, True)
    assert once(store, "old", "k", {"a": 1}, lambda: {"number": 2}, "Till") == ({"number": 1}, False)
    assert once(store, "old", "k", {"a": 2}, lambda: {"number": 2}, "Till") == ({"number": 2}, True)


def test_a_refused_write_keeps_no_answer(client, shop):
    """Mended and sent with the same key it is written."""
    bad = client.post("/api/v1/oil", json={"vat": "elm", "what": "filter"}, headers={"idempotency-key": "b"})
    assert bad.status_code == 422
    assert client.post(
        "/api/v1/oil", json={"vat": "alder", "what": "filter"}, headers={"idempotency-key": "b"}
    ).json()["new"]


def test_as_many_entries_are_read_as_are_shown(client, monkeypatch):
    """Two asked for: the record is read two at a time, not by its usual block; the next follow."""
    blocks, rows = [], Store._rows
    monkeypatch.setattr(Store, "_rows", lambda store, *told: blocks.append(told[-1]) or rows(store, *told))
    first = client.get("/api/v1/entries?limit=2").json()
    then = client.get(f"/api/v1/entries?limit=2&after={first[-1]['number']}").json()
    assert [e["number"] for e in first + then] == [1, 2, 3]
    assert blocks.count((True, 2)) == 2


def test_reads_and_their_description(client):
    """Entries in blocks, one by number, the chain's end, programs, oil, care, cases; described by OpenAPI."""
    kinds = {e["kind"] for e in client.get("/api/v1/entries").json()}
    assert "kitchen" in kinds
    assert client.get("/api/v1/entries/1").json()["number"] == 1
    assert client.get("/api/v1/entries/999").status_code == 422
    end = client.get("/api/v1/chain").json()
    assert end["number"] >= 3
    (anchor,) = read_anchors(end["anchor"])
    assert (anchor.number, anchor.hash, anchor.signed) == (end["number"], end["hash"], True)
    assert len(client.get("/api/v1/programs").json()) == 7
    assert len(client.get("/api/v1/oil").json()) == 4
    assert client.get("/api/v1/care").json()
    assert client.get("/api/v1/cases").json() == []
    described = client.get("/api/v1/openapi.json").json()
    assert set(described["paths"]) >= {"/api/v1/readings", "/api/v1/entries"}
    assert all(path.startswith("/api/v1/") for path in described["paths"])


def test_the_description_says_who_may_ask_and_every_answer(client, shop):
    """A token for all of it; a stranger is told 401 and how; each refusal has the form that is described."""
    told = client.get("/api/v1/openapi.json").json()
    assert told["security"] == [{"token": []}]
    assert told["components"]["securitySchemes"]["token"]["scheme"] == "bearer"
    for methods in told["paths"].values():
        for operation in methods.values():
            assert {"401", "403", "413", "422", "429", "503"} <= set(operation["responses"])
    stranger = TestClient(shop[1], base_url=HOST)
    for headers in ({}, {"authorization": "Bearer nobody"}):
        answer = stranger.get("/api/v1/entries", headers=headers)
        assert answer.status_code == 401
        assert answer.headers["www-authenticate"] == "Bearer"
    problem = set(told["components"]["schemas"]["Problem"]["properties"])
    refused = [
        answer,
        client.post("/api/v1/oil", json={"vat": "elm", "what": "filter"}, headers={"idempotency-key": "q"}),
    ]
    refused.append(client.get("/api/v1/entries?limit=none"))
    assert [r.status_code for r in refused] == [401, 422, 422]
    assert all(set(r.json()) <= problem for r in refused)
    in_pieces = client.post("/api/v1/oil", content=iter([b"{}"]), headers={"idempotency-key": "c"})
    assert in_pieces.status_code == 411


def test_a_read_back_by_a_program(client, shop):
    """The values of the card match; one digit off does not, and both stay on record; one person is not
    two.
    """
    from frywright.design.controller import render

    kitchen = remembered_kitchen(shop[0])
    program = kitchen.program("wedges dogwood")
    values = [v.text for v in render(program, kitchen.fryer("dogwood").controller, 1).values if not v.by_crew]
    body = {"program": "wedges dogwood", "slot": 1, "values": values, "read_by": "Ana", "checked_by": "Ben"}
    assert client.post("/api/v1/read-backs", json=body, headers={"idempotency-key": "c"}).json()["matches"]
    wrong = {**body, "values": [*values[:-1], "359"]}
    assert not client.post("/api/v1/read-backs", json=wrong, headers={"idempotency-key": "d"}).json()[
        "matches"
    ]
    unsaid = {k: v for k, v in body.items() if k != "slot"}
    assert client.post("/api/v1/read-backs", json=unsaid, headers={"idempotency-key": "s"}).status_code == 422
    alone = {**body, "checked_by": "ana"}
    assert client.post("/api/v1/read-backs", json=alone, headers={"idempotency-key": "e"}).status_code == 422


@pytest.mark.slow
def test_schemathesis_breaks_nothing(shop):
    """Whatever the description allows and forbids, no answer is a 500, and the chain holds after it."""
    store, app, token = shop
    assert broken_by(app, token, 60) == []
    store.verify()


@pytest.mark.slow
def test_the_client_writes_once_over_a_line_that_breaks(shop):
    """A real server; a wrong token is refused in words; the same key twice is one entry; entries come in
    blocks.
    """
    store, app, token = shop
    server = uvicorn.Server(uvicorn.Config(app, port=0, log_level="error"))
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    while not server.started:
        time.sleep(0.02)
    address = f"http://127.0.0.1:{server.servers[0].sockets[0].getsockname()[1]}"
    client = Client(address=address, token=token)
    assert client.write("readings", READING, "k1")["new"]
    assert not client.write("readings", READING, "k1")["new"]
    assert [e["number"] for e in client.entries()] == list(range(1, store.last().number + 1))
    with pytest.raises(AccessError):
        Client(address=address, token="wrong").read("oil")
    with pytest.raises(FrywrightError, match="fryer"):
        client.write("readings", {**READING, "fryer": "elm"})
    server.should_exit = True
    thread.join(timeout=10)
    with pytest.raises(RecordError, match="cannot be reached"):
        client.read("oil")
