"""Pages of hot holding, a mistyped reading, reports and who runs the kitchen: kept, refused in words, and
only by those who may.
"""

from __future__ import annotations

import pytest

from frywright.rooms.records import people
from frywright.web.app import make_app
from tests.browsers import browser
from tests.demo import kitchen_store

PASSWORD = "oak leaf river stone"
PROBE = {"fryer": "alder", "product": "bone_in", "thermometer": "T1", "pieces": "8", "who": "Cam"}
HOLD = {"kept_in": "Cabinet 1", "product": "bone_in", "thermometer": "T1", "who": "Cam"}
PDF = b"%PDF-1.4 a certificate"


@pytest.fixture
def app(tmp_path, monkeypatch):
    store = kitchen_store(tmp_path / "w.db")
    for name, role, pin in (
        ("Olive", "owner", "246810"),
        ("Cam", "crew", "1357"),
        ("Tess", "technician", "8642"),
        ("Ada", "auditor", ""),
    ):
        people.add_account(store, name, role, PASSWORD, pin)
    found = make_app(store)
    found.own_store = store
    return found


def as_(app, name):
    """A client signed in."""
    client = browser(app, follow_redirects=False)
    client.cookies.set("session", people.sign_in(app.own_store, name, PASSWORD, "a", people.Tries()))
    return client


def test_hot_holding_is_kept_and_below_it_a_case_opens(app):
    """The crew keeps it; what is wrong is said on the page with what was typed still there."""
    crew = as_(app, "Cam")
    assert (
        crew.post("/records/holding", data={**HOLD, "temp": "145"})
        .headers["location"]
        .startswith("/records/entry/")
    )
    case = crew.post("/records/holding", data={**HOLD, "temp": "120"}).headers["location"]
    assert "120 °F" in crew.get(case).text
    wrong = crew.post("/records/holding", data={**HOLD, "temp": "warm"})
    assert wrong.status_code == 422 and 'value="Cabinet 1"' in wrong.text
    assert as_(app, "Ada").post("/records/holding", data={**HOLD, "temp": "145"}).status_code == 403


def test_a_mistyped_reading_is_put_right_by_two(app):
    """A second person with a PIN of their own; a name alone is refused; a number that is none is told."""
    crew = as_(app, "Cam")
    case = crew.post("/records/probing", data={**PROBE, "temp": "118"}).headers["location"]
    page = f"/records/reading/{int(case.rsplit('/', 1)[1]) - 1}"
    assert page in crew.get(case).text
    form = {"temp": "168", "words": "the key beside it", "who": "Cam"}
    assert crew.post(page, data=form).status_code == 422
    assert crew.post(page, data={**form, "second": "Tess"}).status_code == 422
    assert crew.post(page, data={**form, "second": "Tess", "second_pin": "0000"}).status_code == 422
    done = crew.post(page, data={**form, "second": "Tess", "second_pin": "8642"})
    assert done.status_code == 303
    assert "mistyped" in crew.get(page).text
    assert "mistyped" in as_(app, "Ada").get("/records/pack").text
    for number in ("0", "99999999999999999999999999", "1"):
        assert crew.get(f"/records/reading/{number}").status_code == 422


def test_a_report_is_attached_by_who_may_change_machines(app):
    """The technician attaches it, the auditor reads it as a file; crew may not; a program is refused."""
    tech = as_(app, "Tess")
    form = {
        "fryer": "alder",
        "task": "hood_clean",
        "role": "licensed",
        "who": "A contractor",
        "note": "tag 1",
    }
    assert tech.post("/care/fryers/done", data=form).status_code == 303
    number = app.own_store.last().number
    page = f"/records/entry/{number}"
    file = {"report": ("c.pdf", PDF, "application/pdf")}
    assert as_(app, "Cam").post(f"{page}/report", data={"who": "Cam"}, files=file).status_code == 403
    assert 'name="report"' not in as_(app, "Cam").get(page).text
    bad = {"report": ("c.exe", b"MZ", "application/pdf")}
    assert tech.post(f"{page}/report", data={"who": "Tess"}, files=bad).status_code == 422
    for most, code in ((13_000_001, 413), (12_000_001, 422), (12_000_000, 303)):
        large = {"report": ("l.pdf", PDF.ljust(most), "application/pdf")}
        assert tech.post(f"{page}/report", data={"who": "Tess"}, files=large).status_code == code
    assert tech.post(f"{page}/report", data={"who": "Tess"}, files=file).status_code == 303
    report = app.own_store.last().number
    answer = as_(app, "Ada").get(f"/records/report/{report}")
    assert answer.content == PDF
    assert answer.headers["content-disposition"].startswith("attachment")
    assert f"/records/report/{report}" in tech.get(page).text


def test_who_runs_the_kitchen_is_the_owners_to_say(app):
    """Typed once, on the pack from then on."""
    told = {"address": "1 Fern Lane", "permit": "P-77", "operator": "Olive"}
    assert as_(app, "Tess").post("/records/pack/place", data=told).status_code == 403
    assert as_(app, "Olive").post("/records/pack/place", data=told).status_code == 303
    page = as_(app, "Ada").get("/records/pack").text
    assert "1 Fern Lane" in page and "P-77" in page
    assert "/records/pack/place" not in page
