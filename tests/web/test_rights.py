"""Every route states its right; every role is tried on every route; sessions, PINs and tokens open no more
than they should.
"""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

import frywright
from frywright.ledger.accounts import Accounts, digest
from frywright.ledger.facts.people import AccountChanged
from frywright.model import roles
from frywright.rooms.clock import now
from frywright.rooms.records import people
from frywright.web.app import make_app
from frywright.web.rights import OPEN, RIGHTS, right_for, right_to_post
from tests.browsers import browser
from tests.demo import kitchen_store

PASSWORD = "oak leaf river stone"


@pytest.fixture(scope="module")
def shop(tmp_path_factory):
    """A kitchen with one account of each role, and its application."""
    store = kitchen_store(tmp_path_factory.mktemp("r") / "r.db")
    people.add_account(store, "Olive Owner", "owner", PASSWORD, "246810")
    for role in roles.RIGHTS:
        if role != "owner":
            people.add_account(store, f"the {role}", role, PASSWORD, "1357")
    return store, make_app(store)


def client_of(app, token="", device=""):
    """A browser with a session or on a device."""
    client = browser(app, follow_redirects=False)
    if token:
        client.cookies.set("session", token)
    if device:
        client.cookies.set("device", device)
    return client


def session_for(store, role):
    """A session of a role."""
    return session_of(store, "Olive Owner" if role == "owner" else f"the {role}")


def session_of(store, name):
    """A session of somebody."""
    return people.sign_in(store, name, PASSWORD, "test", people.Tries())


def routes(app):
    """Method and template of every route there is."""
    return [
        f"{method.upper()} {path}" for path, methods in app.openapi()["paths"].items() for method in methods
    ]


def test_every_route_has_a_rule_and_every_rule_a_route(shop):
    """A new route without a rule fails here; so does a rule that nothing uses."""
    found = set(routes(shop[1]))
    assert found - set(RIGHTS) == set()
    assert {r for r in RIGHTS if "openapi.json" not in r} - found == set()
    assert right_for("POST", "/new/route") is None


@pytest.mark.slow
@pytest.mark.parametrize("role", [*roles.RIGHTS, "nobody"])
def test_every_role_on_every_route(shop, role):
    """Refused wherever the right is missing, before anything is written; an auditor reaches everything that
    is to be read.
    """
    store, app = shop
    client = client_of(app, session_for(store, role) if role != "nobody" else "")
    before = store.last().number
    for route in routes(app):
        method, path = route.split(" ", 1)
        right = RIGHTS[route]
        allowed = role != "nobody" and right in roles.RIGHTS[role]
        if right == OPEN or (allowed and (role != "auditor" or route == "POST /records/check")):
            continue
        answer = client.request(method, re.sub(r"{\w+}", "1", path), data={} if method == "POST" else None)
        refused = 401 if role == "nobody" and path.startswith("/api/") else 403
        assert (answer.status_code == refused) is not allowed, (role, route, answer.status_code)
    assert store.last().number == before


def test_a_page_sends_a_stranger_to_sign_in_and_back(shop):
    """And only back to a page of ours."""
    store, app = shop
    client = client_of(app)
    sent = client.get("/records", headers={"accept": "text/html"})
    assert sent.headers["location"] == "/sign-in?next=/records"
    form = {"name": "Olive Owner", "secret": PASSWORD, "next": "//evil.example/x"}
    assert client.post("/sign-in", data=form).headers["location"] == "/"
    first = client.cookies["session"]
    client.post("/sign-in", data={**form, "next": "/records"})
    assert client.cookies["session"] != first
    assert Accounts(store).session(first, now()) is None
    assert client.get("/records").status_code == 200
    client.post("/sign-out")
    assert client.get("/records").status_code == 403


def test_entries_carry_the_name_of_whoever_is_signed_in(shop):
    """The author is the session's, not a constant; a device's is its own."""
    store, app = shop
    client = client_of(app, session_for(store, "crew"))
    client.post("/care/oil", data={"key": "n1", "vat": "alder", "what": "top_up", "amount": "5"})
    assert next(store.entries("oil_event", newest_first=True, named=True)).entry.author == "the crew"
    token = people.add_device(store, "Till", "crew", "Olive Owner")
    body = {"vat": "alder", "what": "filter"}
    told = client_of(app).post(
        "/api/v1/oil", json=body, headers={"authorization": f"Bearer {token}", "idempotency-key": "n2"}
    )
    assert told.status_code == 200
    assert store.entry(told.json()["number"], named=True).entry.author == "Till"


def test_a_pin_works_only_on_a_device_of_the_kitchen(shop):
    """Elsewhere the same PIN is a wrong password; a revoked tablet is a stranger."""
    store, app = shop
    token = people.add_device(store, "Wall tablet", "crew", "Olive Owner")
    form = {"name": "the lead", "secret": "1357"}
    assert client_of(app).post("/sign-in", data=form).status_code == 422
    tablet = client_of(app, device=token)
    assert tablet.get("/care").status_code == 200
    assert tablet.post("/day/note", data={}).status_code == 403
    assert tablet.post("/sign-in", data=form).status_code == 303
    assert tablet.post("/day/note", data={}).status_code != 403
    people.revoke_device(store, "Wall tablet", "Olive Owner", "lost at the beach")
    assert tablet.get("/care").status_code == 403


def test_wrong_tries_wait_where_they_come_from_and_lock_nobody_out_elsewhere(shop):
    """Six wrong passwords from one place make that place wait; the owner signs in from another at once; what
    was wrong is not said.
    """
    store, _ = shop
    tries = people.Tries()
    for _ in range(5):
        with pytest.raises(people.InputError, match="name and its password"):
            people.sign_in(store, "Olive Owner", "wrong", "203.0.113.9", tries)
    with pytest.raises(people.InputError, match="tried again in"):
        people.sign_in(store, "Olive Owner", PASSWORD, "203.0.113.9", tries)
    assert people.sign_in(store, "Olive Owner", PASSWORD, "198.51.100.7", tries)
    with pytest.raises(people.InputError, match="name and its password"):
        people.sign_in(store, "Nobody", PASSWORD, "198.51.100.7", tries)


def test_a_flood_of_writes_waits_and_nobody_else_does(tmp_path):
    """A bucket empties and fills again; one client's flood gets 429 with the seconds to wait, reading goes
    on, another client writes.
    """
    from frywright.web.rates import MOST_CLIENTS, Rates

    rates = Rates(burst=3, per_s=2.0)
    assert [rates.wait_s("a", 0.0) for _ in range(3)] == [0.0, 0.0, 0.0]
    assert rates.wait_s("a", 0.0) == pytest.approx(0.5)
    assert rates.wait_s("b", 0.0) == 0.0
    assert rates.wait_s("a", 0.6) == 0.0
    for n in range(MOST_CLIENTS + 50):
        rates.wait_s(f"c{n}", 1.0)
    assert len(rates._left) <= MOST_CLIENTS
    store = kitchen_store(tmp_path / "n.db")
    app = make_app(store)
    app.state.rates = Rates(burst=2, per_s=0.01)
    client = client_of(app)
    told = [client.post("/care/oil", data={"vat": "alder", "what": "filter"}).status_code for _ in range(3)]
    assert told == [303, 303, 429]
    assert client.get("/care").status_code == 200
    invented = {"authorization": "Bearer x", "cookie": "session=y; device=z"}
    again = client.post("/care/oil", data={"vat": "alder", "what": "filter"}, headers=invented)
    assert again.status_code == 429
    people.add_account(store, "Olive", "owner", PASSWORD)
    other = client_of(app, session_of(store, "Olive"))
    assert other.post("/care/oil", data={"vat": "alder", "what": "filter"}).status_code == 303


def test_the_program_hashes_at_the_cost_of_the_standard(own_hasher):
    """Argon2id with 64 MiB and three passes: the second option of RFC 9106, section 4, on one lane."""
    assert own_hasher.hash("x").startswith("$argon2id$v=19$m=65536,t=3,p=1$")


def test_secrets_are_kept_as_argon2id_and_leave_in_no_export(shop, tmp_path):
    """Not in entries, not in backups; tokens only as their hash."""
    store, _ = shop
    account = Accounts(store).account("Olive Owner")
    assert account.password_hash.startswith("$argon2id$")
    token = session_for(store, "owner")
    from frywright.ledger.backup import backup

    backup(store, tmp_path / "b.zip")
    import zipfile

    with zipfile.ZipFile(tmp_path / "b.zip") as archive:
        text = archive.read("entries.jsonl")
    for secret in (PASSWORD, account.password_hash, token, digest(token)):
        assert secret.encode() not in text


def test_changes_of_accounts_are_on_record_with_who_and_why(shop):
    """Role, password, a way in closed: each ends the sessions; the last owner stays; no reason, no change."""
    store, app = shop
    people.add_account(store, "Temp", "crew", PASSWORD)
    token = people.sign_in(store, "Temp", PASSWORD, "t", people.Tries())
    with pytest.raises(people.InputError, match="why"):
        people.change_account(store, "Temp", "Olive Owner", "", role="lead")
    people.change_account(store, "Temp", "Olive Owner", "runs the late shift", role="lead")
    assert client_of(app, token).get("/care").status_code == 403
    told = next(store.facts(AccountChanged, newest_first=True)).fact
    assert (told.by, told.reason, told.role) == ("Olive Owner", "runs the late shift", "lead")
    people.change_account(store, "Temp", "Olive Owner", "left the company", active=False)
    with pytest.raises(people.InputError):
        people.sign_in(store, "Temp", PASSWORD, "t", people.Tries())
    with pytest.raises(people.InputError, match="last owner"):
        people.change_account(store, "Olive Owner", "Olive Owner", "testing it", role="crew")
    for bad in (
        ("x", "crew", PASSWORD, ""),
        ("Temp", "crew", PASSWORD, ""),
        ("New", "king", PASSWORD, ""),
        ("New", "crew", "short", ""),
        ("New", "crew", PASSWORD, "12"),
    ):
        with pytest.raises(people.InputError):
            people.add_account(store, *bad)


def test_an_owner_adds_somebody_on_the_page(shop):
    """The form leads back to the list, which names the new account; a wrong one is shown with its reason."""
    store, app = shop
    client = client_of(app, session_for(store, "owner"))
    form = {"name": "Rae Moss", "role": "crew", "password": PASSWORD, "pin": ""}
    answer = client.post("/records/people/account", data=form)
    assert (answer.status_code, answer.headers.get("location")) == (303, "/records/people")
    assert "Rae Moss" in client.get("/records/people").text
    assert client.post("/records/people/account", data=form).status_code == 422
    change = {"name": "Rae Moss", "role": "lead", "reason": "runs the late shift"}
    assert client.post("/records/people/change", data=change).status_code == 303
    assert Accounts(store).account("Rae Moss").role == "lead"


def test_before_accounts_this_machine_is_open_and_the_first_owner_closes_it(tmp_path):
    """The first account must own; afterwards nobody makes another first one."""
    store = kitchen_store(tmp_path / "n.db")
    client = client_of(make_app(store))
    assert client.get("/records/people").status_code == 200
    with pytest.raises(people.InputError, match="first account"):
        people.add_account(store, "Kim", "crew", PASSWORD)
    assert client.post("/first-owner", data={"name": "Olive", "password": "short"}).status_code == 422
    made = client.post("/first-owner", data={"name": " Olive ", "password": PASSWORD, "pin": "246810"})
    assert (made.status_code, made.headers["location"]) == (303, "/records/people")
    assert {"httponly", "samesite=strict"} <= set(made.headers["set-cookie"].lower().split("; "))
    assert "Olive" in client.get("/records/people").text
    signed = [(e.entry.author, e.entry.payload["how"]) for e in store.entries("sign_in", named=True)]
    assert signed == [("Olive", "password")]
    other = client_of(make_app(store))
    for one in (client, other):
        again = one.post("/first-owner", data={"name": "Eve", "password": PASSWORD})
        assert again.status_code == 403 and "set-cookie" not in again.headers
    assert other.get("/records/people").status_code == 403
    assert Accounts(store).owners() == ["Olive"]


def test_a_host_that_others_reach_needs_an_owner(tmp_path):
    """It refuses to start and says how."""
    from frywright.rooms.kitchen import open_store
    from frywright.web.serve import serve_pages

    store = open_store(str(tmp_path / "s.db"))
    with pytest.raises(people.InputError, match="frywright people owner"):
        serve_pages(store, 0, False, "0.0.0.0")


def test_a_port_that_is_taken_is_said_and_kernels_are_warmed_behind_the_address(
    tmp_path, monkeypatch, capsys
):
    """The port is ours and the address is told before anything is compiled, and answers come meanwhile; a
    port in use names the option to change.
    """
    import socket
    import threading

    import uvicorn

    from frywright.rooms.kitchen import open_store
    from frywright.web import serve

    seen, warming, answered = [], threading.Event(), threading.Event()

    def warm():
        warming.set()
        assert answered.wait(20)
        seen.append("warm")

    def run(_, sockets):
        with socket.create_connection(sockets[0].getsockname()[:2], timeout=20):
            assert warming.wait(20)
        seen.append(("run", sockets[0].getsockname()[1], capsys.readouterr().out))
        answered.set()
        sockets[0].close()

    monkeypatch.setattr(serve, "warm", warm)
    monkeypatch.setattr(uvicorn.Server, "run", run)
    store = open_store(str(tmp_path / "s.db"))
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = taken.getsockname()[1]
        with pytest.raises(people.InputError, match=f"port.*{port}.*free"):
            serve.serve_pages(store, port, False)
    assert not warming.is_set()
    serve.serve_pages(store, 0, False)
    assert f"http://127.0.0.1:{seen[0][1]}/" in seen[0][2]


@pytest.mark.slow
@pytest.mark.parametrize("role", ["crew", "lead", "technician", "auditor"])
def test_a_page_shows_only_acts_that_whoever_looks_may_do(shop, role):
    """No form and no button that would be refused; a word says whose it is. The owner sees all."""
    store, app = shop
    mine = client_of(app, session_for(store, role))
    whole = client_of(app, session_for(store, "owner"))
    pages = [
        r.removeprefix("GET ") for r, right in RIGHTS.items() if r[:3] == "GET" and right in ("read", OPEN)
    ]
    seen, hidden = 0, 0
    for path in pages:
        if "{" in path or path.endswith((".pdf", ".json", ".svg", ".js", ".ics", ".csv", ".zip", "/part")):
            continue
        answer = mine.get(path, headers={"accept": "text/html"})
        if "text/html" not in answer.headers.get("content-type", ""):
            continue
        posts = re.findall(r'<form [^>]*method="post"[^>]*action="([^"]+)"', answer.text)
        posts += re.findall(r'<form [^>]*action="([^"]+)"[^>]*method="post"', answer.text)
        posts += re.findall(r'formaction="([^"]+)"', answer.text)
        for address in posts:
            right = right_to_post(address)
            assert right in (None, OPEN) or right in roles.RIGHTS[role], (path, address)
        seen += len(posts)
        all_of_it = whole.get(path, headers={"accept": "text/html"}).text
        hidden += all_of_it.count('method="post"') - answer.text.count('method="post"')
    assert seen > 0
    assert hidden > (60 if role == "auditor" else 0)


@pytest.mark.parametrize(
    ("address", "right"),
    [
        ("/cook/save", "owner"),
        ("/records/case/12", RIGHTS["POST /records/case/{number}"]),
        ("/records/case/12?next=/x#y", RIGHTS["POST /records/case/{number}"]),
        ("/nowhere", None),
        ("/cook/save/more", None),
    ],
)
def test_an_address_is_known_by_its_route(address, right):
    """With numbers in it, a question behind it, or none of ours."""
    assert right_to_post(address) == right


@pytest.mark.slow
def test_no_product_code_opens_the_pages_without_a_door():
    """Without one whoever reaches the application may do everything: that is for tests alone."""
    found = []
    for path in sorted(Path(frywright.__file__).parent.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            called = getattr(getattr(node, "func", None), "id", "")
            if isinstance(node, ast.Call) and called in ("make_app", "Kitchens"):
                doors = [*node.args[1:2], *(k.value for k in node.keywords if k.arg == "door")]
                bare = not doors or (isinstance(doors[0], ast.Constant) and doors[0].value is None)
                found.append((path.name, bare))
    assert len(found) >= 3 and not [name for name, bare in found if bare]
