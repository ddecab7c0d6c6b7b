"""Small acts of the pages: what is kept, where one comes back to, and what is refused."""

from __future__ import annotations

import pytest

from frywright.ledger.accounts import Accounts
from frywright.ledger.facts.people import AccountChanged
from frywright.rooms.care.training import drill_views
from frywright.rooms.fleet.kitchens import kitchens_of
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records import people
from tests.browsers import browser
from tests.paper import words

SECRET = "oak leaf river stone"


@pytest.fixture
def client(store):
    return browser(store, follow_redirects=False)


@pytest.fixture
def owner(store):
    """A browser of the owner."""
    people.add_account(store, "Ana Vale", "owner", SECRET)
    client = browser(store, follow_redirects=False)
    client.cookies.set("session", people.sign_in(store, "Ana Vale", SECRET, "test", people.Tries()))
    return client


def test_a_device_is_let_in_and_parted_with(owner, store):
    """Its token is shown once and opens as its role; without a reason it stays; revoked it opens nothing."""
    made = owner.post("/records/people/device", data={"name": "tablet one", "role": "crew"})
    assert made.status_code == 200
    (device,) = Accounts(store).devices()
    assert (device.name, device.role, device.active) == ("tablet one", "crew", True)
    assert owner.post("/records/people/device", data={"name": "x", "role": "owner"}).status_code == 422
    assert (
        owner.post("/records/people/device", data={"name": "tablet one", "role": "crew"}).status_code == 422
    )
    part = {"name": "tablet one", "reason": ""}
    assert owner.post("/records/people/revoke", data=part).status_code == 422
    assert Accounts(store).devices()[0].active
    gone = owner.post("/records/people/revoke", data={**part, "reason": "broken screen"})
    assert (gone.status_code, gone.headers["location"]) == (303, "/records/people")
    assert not Accounts(store).devices()[0].active
    last = list(store.facts(AccountChanged))[-1].fact
    assert (last.what, last.name, last.by, last.reason) == (
        "device revoked",
        "tablet one",
        "Ana Vale",
        "broken screen",
    )


def test_an_account_is_changed_by_its_owner(owner, store):
    """Role and whether it may sign in; what was changed, by whom and why is on record."""
    added = {"name": "Kim Vale", "role": "crew", "password": SECRET}
    assert owner.post("/records/people/account", data=added).status_code == 303
    change = {"name": "Kim Vale", "role": "lead", "active": "no", "reason": "leads the evening"}
    assert owner.post("/records/people/change", data=change).status_code == 303
    kim = next(a for a in Accounts(store).accounts() if a.name == "Kim Vale")
    assert (kim.role, kim.active) == ("lead", False)
    assert owner.post("/records/people/change", data={**change, "active": "yes"}).status_code == 303
    kim = next(a for a in Accounts(store).accounts() if a.name == "Kim Vale")
    assert kim.active
    last = list(store.facts(AccountChanged))[-1].fact
    assert (last.name, last.by, last.reason) == ("Kim Vale", "Ana Vale", "leads the evening")


def test_the_settings_of_a_fryer_go_on_paper(client):
    """The one asked for, else the first; an unknown one is refused."""
    first = words(client.get("/cook/settings.pdf").content)
    cedar = words(client.get("/cook/settings.pdf", params={"fryer": "cedar"}).content)
    assert "Alder" in first and "Cedar" not in first
    assert "Cedar" in cedar
    assert client.get("/cook/settings.pdf", params={"fryer": "elm"}).status_code == 422


def test_a_timed_vent_is_taken_only_where_one_was_offered(client, store):
    """A fryer whose vent nobody timed has nothing to take; what was typed stays."""
    before = len(list(store.entries()))
    page = client.post("/care/new/vent", data={"fryer": "alder", "vent_reason": "timed with a watch"})
    assert page.status_code == 422
    assert len(list(store.entries())) == before


def test_a_second_kitchen_is_begun_and_one_is_awaited(owner, store):
    """It has its own key and goes on with its set-up; without a name nothing is made; a site has a token."""
    assert owner.post("/kitchens", data={"name": ""}).status_code == 422
    made = owner.post("/kitchens", data={"name": "East Gate"})
    assert (made.status_code, made.headers["location"]) == (303, "/at/east_gate/setup")
    assert owner.post("/kitchens", data={"name": "East Gate", "like": "nowhere"}).status_code == 422
    assert [k.key for k in kitchens_of(store)][1:] == ["east_gate"]
    waits = owner.post("/kitchens/await", data={"name": "North Gate"})
    assert waits.status_code == 200 and "north_gate" in waits.text
    assert any(d.role == "site" for d in Accounts(store).devices())
    assert owner.post("/kitchens/await", data={"name": ""}).status_code == 422


def test_each_drill_leads_to_the_next_and_the_last_to_the_first(client, store):
    """Nobody has to go back to the list."""
    kitchen = remembered_kitchen(store)
    keys = [drill.key for drill in drill_views(kitchen, "en")]
    for key, following in ((keys[0], keys[1]), (keys[-1], keys[0])):
        answered = client.post(f"/care/drill/{key}", data={"choice": "0"})
        assert (answered.status_code, f'href="/care/drill/{following}"' in answered.text) == (200, True)
