"""The page of machine settings: shown, changed, refused with what was typed, hostile names, rights."""

from __future__ import annotations

import html
import re

import pytest

from frywright.rooms.kitchen import kitchen_text, remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text
from frywright.web.rights import right_for
from tests.browsers import browser


@pytest.fixture
def client(store):
    return browser(store, page=True)


def seen(page: str) -> str:
    return re.search(r'name="seen" value="(\d+)"', page)[1]


def test_a_setting_is_added_changed_and_taken_off(client, store):
    """Through the page; the sheet, its paper and the read-back follow."""
    page = client.get("/cook/settings?fryer=cedar").text
    assert "Cedar, open fryer" in page
    form = {
        "fryer": "cedar",
        "number": "",
        "seen": seen(page),
        "name": "Melt",
        "kind": "other",
        "value": "off",
    }
    page = client.post(
        "/cook/settings", data={**form, "w0_reads": "on", "w0_effect": "oil", "w0_amount": "-40"}
    ).text
    assert "<strong>on</strong>: " in page and "coldest piece" in page
    assert 'name="own0"' in client.get("/cook/readback?program=wedges+cedar").text
    form |= {"number": "0", "value": "never", "seen": seen(page)}
    refused = client.post("/cook/settings", data=form)
    assert refused.status_code == 422
    assert "why does this setting change" in refused.text and 'value="never"' in refused.text
    page = client.post("/cook/settings", data={**form, "reason": "solid fat no more"}).text
    assert remembered_kitchen(store).fryer("cedar").settings[0].value == "never"
    gone = {**form, "act": "remove", "reason": "new panel", "seen": seen(page)}
    assert client.post("/cook/settings", data=gone).status_code == 200
    assert kitchen_text(store) == demo_text()


def test_words_of_a_hostile_hand_stay_words(client, store):
    """A name that is a script, a value that is a template: shown as they are, on page and read-back."""
    page = client.get("/cook/settings?fryer=cedar").text
    form = {"fryer": "cedar", "seen": seen(page), "kind": "alarm", "value": "{0.__class__}"}
    form |= {"name": "<script>x</script>", "w0_reads": "{reads!r}", "w0_does": "{x} %s <b>"}
    page = client.post("/cook/settings", data=form).text
    assert "<script>x" not in page and html.escape("<script>x</script>") in page
    assert "{x} %s &lt;b&gt;" in page
    values = {"v0": "325", "v1": "15:30", "own0": "{reads!r}", "scale": "°F", "clock": "down"}
    names = re.findall(r'name="(v\d)"', client.get("/cook/readback?program=bone-in+cedar").text)
    values = {**values, **dict(zip(names, ("15:30", "325"), strict=False))}
    told = client.post(
        "/cook/readback",
        data={"program": "bone-in cedar", "slot": "1", "read_by": "Kim", "checked_by": "Ana", **values},
    ).text
    assert "{x} %s &lt;b&gt;" in told and "<script>x" not in told


def test_an_overtaken_form_keeps_what_was_typed(client):
    """Two tabs: the second is told, and its words stay in their boxes."""
    page = client.get("/cook/settings?fryer=alder").text
    form = {"fryer": "alder", "number": "2", "seen": seen(page), "name": "End bell", "kind": "alarm"}
    assert (
        client.post("/cook/settings", data={**form, "value": "loud", "reason": "too quiet"}).status_code
        == 200
    )
    late = client.post("/cook/settings", data={**form, "value": "soft", "reason": "too loud"})
    assert late.status_code == 422
    assert "changed since this page was shown" in late.text and 'value="soft"' in late.text


def test_a_kitchen_that_moved_is_told_on_its_sheet(client, store):
    """The sheet of 5,420 ft in a kitchen at 7,200 ft."""
    moved = demo_text().replace("altitude_ft = 5420", "altitude_ft = 7200")
    remember_kitchen(store, moved, "demo.toml", "moved up the hill")
    page = client.get("/cook/settings?fryer=alder").text
    assert "Height above the sea: the sheet is not for this place. It must read 7,200 ft here." in page


def test_who_may(client):
    """Everybody on the floor reads the sheet; only who may change the kitchen changes it."""
    assert right_for("GET", "/cook/settings") == right_for("GET", "/cook/settings.pdf") == "read"
    assert right_for("POST", "/cook/settings") == right_for("POST", "/cook/kitchen")
    assert client.get("/cook/settings?fryer=zz").status_code == 422
