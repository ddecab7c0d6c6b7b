"""Fryer care and new fryers without a browser: forms become entries, refusals keep what was typed, papers
print.
"""

from __future__ import annotations

import pytest

from frywright.ledger.facts.care import CareDone
from frywright.rooms.kitchen import remembered_kitchen
from tests.rooms.test_commissioning import PLATE, SITE, begun, png


def test_a_task_is_ticked_off_and_stands_in_the_calendar(client, store):
    """One form post; a role that may not do it is told so and loses nothing typed."""
    page = client.get("/care/fryers")
    assert page.status_code == 200
    assert page.text.count("No record of when it was last done: ") == 4
    form = {"fryer": "alder", "task": "suppression", "who": "Ana", "role": "crew", "note": "tag 5521"}
    refused = client.post("/care/fryers/done", data=form)
    assert refused.status_code == 422
    assert "nobody else may tick it off" in refused.text
    assert 'value="tag 5521"' in refused.text
    assert "nadie más" in client.post("/care/fryers/done?lang=es", data=form).text
    assert client.post("/care/fryers/done", data={**form, "role": "licensed"}).url.path == "/care/fryers"
    assert len(store.current_facts(CareDone)) == 1
    calendar = client.get("/care/calendar.ics")
    assert calendar.headers["content-type"].startswith("text/calendar")
    assert calendar.text.count("BEGIN:VEVENT") == 1
    told = client.get("/care/fryers.json", params={"lang": "en"}).json()
    assert sum(r["state"] == "later" for r in told["due"]) == 1


def test_a_figure_is_kept(client):
    """A time typed wrongly is answered in words."""
    form = {"fryer": "alder", "figure": "heat_up", "time": "soon"}
    assert client.post("/care/fryers/figure", data=form).status_code == 422
    page = client.post("/care/fryers/figure", data={**form, "time": "15:30"})
    assert "No figure of its first day is kept" in page.text


def test_plate_photo_site_and_pack(client):
    """The photo is shown beside what was typed, the survey says go, a hard step is shut, the pack prints."""
    plate = client.post("/care/new/plate", data=PLATE, files={"photo": ("plate.png", png(), "image/png")})
    assert plate.status_code == 200
    photo = client.get("/care/new/alder.json").json()["plate"]["photo"]
    assert client.get(f"/care/new/photo/{photo}").headers["content-type"] == "image/png"
    page = client.post("/care/new/site", data=SITE)
    assert '<p class="headline meets">' in page.text
    assert client.get("/care/new/alder.json").json()["go"] == "meets"
    step = {"fryer": "alder", "step": "fill", "who": "Ana", "role": "lead"}
    refused = client.post("/care/new/step", data=step)
    assert refused.status_code == 422
    assert "no way past" in refused.text
    assert client.get("/care/new/alder.pdf").content.startswith(b"%PDF")
    assert client.get("/care/emergency.pdf").content.startswith(b"%PDF")


@pytest.mark.parametrize("name", ["..%2f..%2fetc%2fpasswd", "a" * 64, "x"])
def test_only_kept_photos_are_served(client, name):
    """A path or an unknown hash is refused."""
    assert client.get(f"/care/new/photo/{name}").status_code in (404, 409)


@pytest.mark.parametrize(
    "data", [b"", b"GIF8 nothing", b"<svg onload=alert(1)>", b"\x89PNG\r\n\x1a\n" + bytes(200)]
)
def test_what_is_no_picture_is_refused(client, data):
    """By its content, whatever it calls itself; what was typed stays in the form and nothing is kept."""
    found = client.post("/care/new/plate", data=PLATE, files={"photo": ("plate.png", data, "image/png")})
    assert found.status_code == 422
    assert 'value="A-1"' in found.text
    assert not client.get("/care/new/alder.json").json()["plate"]


def test_people_skills_and_a_drill(client, store):
    """A person, a refused self-observation, a drill answered: every answer is explained, none is scored."""
    assert client.post("/care/people/person", data={"name": "Kim Vale"}).status_code == 200
    refused = client.post(
        "/care/people/skill", data={"person": "Kim Vale", "skill": "probe", "observed_by": "kim vale"}
    )
    assert refused.status_code == 422
    assert "another person, who saw it done" in refused.text
    page = client.post(
        "/care/people/skill", data={"person": "Kim Vale", "skill": "probe", "observed_by": "Ana"}
    )
    assert "✔ holds" in page.text
    assert client.post("/care/people/dance", data={}).status_code == 422
    key = "bone-in_alder-v3-gauge"
    assert "⚠" not in client.get(f"/care/drill/{key}").text
    told = client.post(f"/care/drill/{key}", data={"choice": "0", "who": "Kim"})
    assert told.text.count("<li class=") == 4
    assert "this injures" in told.text
    assert client.get("/care/drill/none").status_code == 422
    assert client.post(f"/care/drill/{key}", data={"choice": "x"}).status_code == 422
    assert client.get("/care/wall.pdf").content.startswith(b"%PDF")
    assert client.get("/care/people.json").json()["people"][0]["name"] == "Kim Vale"


def test_a_card_is_edited_and_signed_on_its_page(client):
    """The page shows the hazards; a lost one is refused with what was typed; a sign-off with a photo is
    listed.
    """
    page = client.get("/care/card/closing", params={"lang": "en"})
    assert page.text.count('class="hazard"') >= 2
    form = {"version": "0", "gear": "Shield", "tools": "Cloths", "steps": "Just wipe it.", "who": "Ana"}
    refused = client.post("/care/card/closing/save", data=form)
    assert refused.status_code == 422
    assert "Just wipe it." in refused.text
    lines = client.get("/care/card/closing.json").json()["lines"]
    saved = client.post("/care/card/closing/save", data={**form, "steps": lines + "\nHang up the tag."})
    assert "Hang up the tag." in saved.text
    signed = client.post(
        "/care/card/closing/sign",
        data={"fryer": "alder", "who": "Ana", "second": "Ben"},
        files={"photo": ("a.png", png(), "image/png")},
    )
    assert "Ana, Ben" in signed.text
    assert client.get("/care/card/closing.pdf").content.startswith(b"%PDF")
    assert client.get("/care/card/dance").status_code == 422


def test_the_close_on_its_page(client):
    """A step done shows who; one too early is refused with the reason; the name is remembered for the
    next.
    """
    page = client.post("/care/close", data={"fryer": "alder", "step": "heat_off", "who": "Ana Lund"})
    assert "Ana Lund" in page.text
    assert page.text.count('value="Ana Lund"') >= 3
    refused = client.post("/care/close", data={"fryer": "cedar", "step": "filter", "who": "Ana"})
    assert refused.status_code == 422
    assert "no way past" in refused.text
    assert client.get("/care/close.json").json()["open_count"] > 10


def test_energy_and_oil_map(client):
    """Without sales the opening hours are taken and that is said; the map prints."""
    page = client.get("/care/energy")
    assert page.status_code == 200
    assert "No plan of this day" in page.text
    assert len(client.get("/care/energy.json").json()["loads"]) == 7
    assert client.get("/care/energy", params={"date": "soon"}).status_code == 422
    assert client.get("/care/oil-map.pdf").content.startswith(b"%PDF")


def test_the_page_of_a_new_fryer_says_what_a_test_was_worked_out_to_be(client, store):
    """Beside what was measured, as JSON and the handover have it."""
    kitchen = remembered_kitchen(store)
    begun(store, kitchen, "plate")
    row = next(t for t in client.get("/care/new/alder.json").json()["tests"] if t["name"] == "heat-up")
    assert row["worked_out"]
    assert f"<td>{row['worked_out']}</td>" in client.get("/care/new", params={"fryer": "alder"}).text
