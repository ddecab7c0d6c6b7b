"""Pages of several kitchens: each under an address of its own, nothing of one in another."""

from __future__ import annotations

import re

import pytest

from frywright.rooms.fleet.kitchens import open_kitchen
from frywright.rooms.kitchen import remembered_kitchen
from frywright.web.kitchens import Kitchens
from frywright.web.rights import RIGHTS
from tests.browsers import browser
from tests.demo import kitchen_store

PAGES = sorted(
    route.removeprefix("GET ")
    for route in RIGHTS
    if route.startswith("GET ") and "{" not in route and not route.endswith((".pdf", "zip", ".json", ".svg"))
)


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    found = kitchen_store(tmp_path_factory.mktemp("kitchens") / "k.db")
    open_kitchen(found, {"name": "East Gate", "like": "-", "altitude": "900 ft"})
    return found


@pytest.fixture(scope="module")
def client(store):
    return browser(Kitchens(store), page=True)


@pytest.mark.parametrize("path", PAGES)
def test_every_link_and_form_of_a_page_stays_in_its_kitchen(client, path):
    """But for files, which are the same for all, and the list of kitchens, which leads to each."""
    page = client.get(f"/at/east_gate{path}")
    assert page.status_code < 500
    if "text/html" not in page.headers["content-type"]:
        return
    own = re.findall(r'[ ](?:href|action|formaction|src|data-part)="(/[^"]*)"', page.text)
    assert own or path.endswith("/part")
    strays = {a for a in own if not a.startswith(("/at/", "/static/"))}
    assert strays == set()
    if page.status_code == 200 and own:
        assert ">East Gate</a>" in page.text
        assert "Juniper Ridge" not in page.text or path == "/kitchens"


def test_the_first_kitchen_keeps_its_addresses(client):
    """No link of it begins with /at/, but for those that lead elsewhere."""
    page = client.get("/cook/desk").text
    assert 'href="/cook"' in page and 'href="/at/' not in page
    assert client.get("/at/-/cook/desk").text.count('href="/cook"') == page.count('href="/cook"')


def test_a_kitchen_nobody_opened_has_no_page(client):
    """Nor has an address that only looks like one."""
    for path in ("/at/nowhere/", "/at/nowhere/cook", "/at/UP/cook", "/at/../cook/desk.x", "/at/"):
        assert client.get(path).status_code == 404, path


def test_what_is_done_in_one_kitchen_is_done_there(store, client):
    """A redirect stays there too, and its record is its own."""
    before = store.last()
    answer = client.post(
        "/at/east_gate/cook/kitchen",
        data={"text": "[kitchen", "reason": ""},
        follow_redirects=False,
    )
    assert answer.status_code == 422
    text = store.at("east_gate").current("kitchen")[-1].entry.payload["text"]
    answer = client.post(
        "/at/east_gate/cook/kitchen",
        data={"text": text + "# looked through\n", "reason": "looked through"},
        follow_redirects=False,
    )
    assert (answer.status_code, answer.headers["location"]) == (303, "/at/east_gate/cook/desk")
    assert store.last() == before
    assert store.at("east_gate").current("kitchen")[-1].entry.payload["reason"] == "looked through"


def test_another_kitchen_is_opened_on_the_page(tmp_path):
    """A wrong box comes back with what was typed; a copy leads to its fryers, a new one to its set-up."""
    found = kitchen_store(tmp_path / "o.db")
    client = browser(Kitchens(found), page=True)
    wrong = client.post("/kitchens", data={"name": "North", "like": "-", "altitude": "high"})
    assert wrong.status_code == 422
    assert 'value="North"' in wrong.text and 'value="high" aria-invalid="true"' in wrong.text
    made = client.post(
        "/kitchens", data={"name": "North", "like": "-", "altitude": "2000 ft"}, follow_redirects=False
    )
    assert made.headers["location"] == "/at/north/cook/kitchen"
    assert client.get("/at/north/").status_code == 200
    fresh = client.post("/at/north/kitchens", data={"name": "South"}, follow_redirects=False)
    assert fresh.headers["location"] == "/at/south/setup"
    assert 'value="South"' in client.get("/at/south/setup/kitchen/place").text
    assert client.get("/at/south/").url.path == "/at/south/setup"
    listed = client.get("/at/north/kitchens?lang=es").text
    assert (
        "<title>Cocinas · Frywright</title>" in listed
        and 'href="/at/-/"' in listed
        and 'href="/at/south/"' in listed
    )
    found.close()


def test_whoever_is_signed_in_is_so_in_every_kitchen_and_tries_count_for_all(tmp_path):
    """A guess at one kitchen's door is a guess at the other's."""
    found = kitchen_store(tmp_path / "p.db")
    open_kitchen(found, {"name": "East Gate", "like": "-"})
    client = browser(Kitchens(found), page=True)
    client.post("/first-owner", data={"name": "Ana Vale", "password": "a long enough one", "pin": ""})
    assert remembered_kitchen(found).site.name
    stranger = browser(Kitchens(found), page=True)
    assert stranger.get("/at/east_gate/cook", follow_redirects=False).headers["location"] == (
        "/at/east_gate/sign-in?next=/cook"
    )
    for turn in range(5):
        where = "/at/east_gate" if turn % 2 else ""
        stranger.post(f"{where}/sign-in", data={"name": "Ana Vale", "password": "wrong wrong"})
    told = stranger.post("/at/east_gate/sign-in", data={"name": "Ana Vale", "password": "a long enough one"})
    assert "too many wrong tries" in told.text
    assert [e.entry.kind for e in found.entries() if e.entry.kind == "account_change"] == ["account_change"]
    assert not list(found.at("east_gate").entries("account_change"))
    found.close()


def test_the_list_looks_into_what_changed_only_and_stops_when_time_is_up(store, client, monkeypatch):
    """A kitchen that did not change is not looked into again; one whose turn never came says so."""
    from frywright.web.pages import kitchens

    looked = []
    gather = kitchens.gather
    monkeypatch.setattr(kitchens, "gather", lambda s, k: looked.append(s.site) or gather(s, k))
    fresh = browser(Kitchens(store), page=True)
    fresh.get("/kitchens")
    assert sorted(looked) == ["", "east_gate"]
    fresh.get("/kitchens")
    assert len(looked) == 2
    text = store.at("east_gate").current("kitchen")[-1].entry.payload["text"]
    fresh.post("/at/east_gate/cook/kitchen", data={"text": text + "# again\n", "reason": "looked again"})
    fresh.get("/kitchens")
    assert looked[2:] == ["east_gate"]
    monkeypatch.setattr(kitchens, "LOOK_S", -1.0)
    late = browser(Kitchens(store), page=True).get("/kitchens").text
    assert late.count("Not looked into yet") == 2 and "not looked into yet: 2." in late


def test_a_record_that_cannot_be_read_is_said_in_its_row(store, monkeypatch):
    """Such as one of a newer program: the other kitchens are shown all the same."""
    from frywright.model.errors import RecordError
    from frywright.web.pages import kitchens

    def fails(asked, _):
        if asked.site:
            raise RecordError("An entry of kind {kind} does not fit: {cause}", kind="oil", cause="new")
        return []

    monkeypatch.setattr(kitchens, "gather", fails)
    page = browser(Kitchens(store), page=True).get("/kitchens")
    assert page.status_code == 200
    assert "An entry of kind oil does not fit" in page.text and "Nothing to do now" in page.text
