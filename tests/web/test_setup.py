"""The pages of the set-up: an empty store leads there, every screen goes on, nothing typed is lost."""

from __future__ import annotations

import io
import json
import re
import shutil

import pytest
from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.cook import plate_photo
from frywright.rooms.kitchen import remembered_kitchen
from frywright.web.app import make_app
from tests.browsers import HOST
from tests.demo import remember_demo
from tests.rooms.setup.answers import DAY, METRIC, US, told


def client_of(store, **headers):
    return TestClient(
        make_app(store), base_url=HOST, headers={"origin": HOST, "accept": "text/html", **headers}
    )


@pytest.fixture
def store(tmp_path):
    return Store.file(tmp_path / "s.db", now)


def revision(page: str) -> str:
    return re.search(r'name="revision" value="(\d+)"', page)[1]


def send(client, what, key, typed, **more):
    page = client.get(f"/setup/{what}/{key}").text
    return client.post(f"/setup/{what}/{key}", data={**typed, "revision": revision(page), **more})


@pytest.mark.parametrize(
    "path",
    ["/", "/cook", "/cook/desk", "/day", "/day/board", "/care", "/records", "/records/pack", "/setup/first"],
)
def test_an_empty_store_leads_to_the_set_up(store, path):
    """A page no error; a program is told so in words."""
    client = client_of(store)
    found = client.get(path)
    assert (found.status_code, found.url.path) == (200, "/setup")
    assert "Set up your kitchen" in found.text
    told = client.get("/cook/view.json", headers={"accept": "application/json"})
    assert told.status_code == 409
    assert "no kitchen here yet" in told.json()["message"]


def test_the_browsers_language_is_spoken_before_there_is_a_kitchen(store):
    """Spanish is asked for and spoken; an unknown one is English."""
    assert "Prepare su cocina" in client_of(store, **{"accept-language": "fr-FR,es;q=0.8"}).get("/setup").text
    assert "Set up your kitchen" in client_of(store, **{"accept-language": "fr"}).get("/setup").text


@pytest.mark.parametrize("answers", [US, METRIC], ids=["us", "metric"])
def test_from_nothing_to_a_kitchen_screen_by_screen(store, answers):
    """Each screen leads to the next, the last to the check and the kept kitchen to its first program."""
    client = client_of(store)
    for key, typed in answers.items():
        page = send(client, "kitchen", key, typed)
        assert page.status_code == 200, key
        assert 'class="wrong"' not in page.text, key
    assert page.url.path == "/setup/kitchen/check"
    done = client.post("/setup/kitchen/keep", data={"revision": revision(page.text)})
    assert (done.status_code, done.url.path) == (200, "/setup/first")
    kitchen = remembered_kitchen(store)
    assert kitchen.site.name == answers["place"]["name"]
    assert f'name="fryer" value="{kitchen.fryers[0].key}"' in done.text
    listed = client.get("/cook/kitchen").text
    assert kitchen.fryers[0].name in listed
    twice = client.post("/setup/kitchen/keep", data={"revision": revision(page.text)})
    assert (twice.status_code, twice.url.path) == (200, "/cook/kitchen"), "pressed twice"
    assert client.get("/cook").url.path == "/setup/first", "a kitchen without programs is no error"


def test_a_wrong_answer_stays_on_its_screen(store):
    """Marked for eyes and screen readers, with everything typed still there."""
    client = client_of(store)
    told(store, "kitchen", {k: US[k] for k in ("place", "altitude", "kind")})
    page = send(client, "kitchen", "plate", {**US["plate"], "oil_mass": "45 psi"})
    assert page.status_code == 422
    assert re.search(
        r'name="oil_mass" value="45 psi"[^>]*aria-invalid="true" aria-describedby="wrong-oil_mass"', page.text
    )
    assert "kg, g, lb, oz" in page.text
    assert 'name="name" value="Left"' in page.text


def test_two_tabs_on_one_screen(store):
    """The later one sees both answers, and nothing is written until it goes on knowingly."""
    client = client_of(store)
    told(store, "kitchen", {"place": US["place"]})
    old = revision(client.get("/setup/kitchen/altitude").text)
    assert send(client, "kitchen", "altitude", {"altitude": "900"}).status_code == 200
    late = client.post("/setup/kitchen/altitude", data={"altitude": "7200", "revision": old})
    assert late.status_code == 409
    assert "Another page changed this screen" in late.text
    assert 'name="altitude" value="7200"' in late.text
    assert "The other page says: 900" in late.text
    stay = client.post("/setup/kitchen/altitude", data={"altitude": "7200", "revision": old, "how": "stay"})
    assert stay.status_code == 409
    assert not stay.json()["ok"]
    again = {"altitude": "7200", "revision": revision(late.text)}
    assert client.post("/setup/kitchen/altitude", data=again).url.path == "/setup/kitchen/kind"


def test_a_screen_can_wait(store):
    """Left for later it is listed as open, and the kitchen is not kept without it."""
    client = client_of(store)
    assert (
        send(client, "kitchen", "place", {"name": "Half"}, how="skip").url.path == "/setup/kitchen/altitude"
    )
    check = client.get("/setup/kitchen/check").text
    assert "Still to answer" in check
    assert "Yes, keep it" not in check
    refused = client.post(
        "/setup/kitchen/keep", data={"revision": revision(client.get("/setup/kitchen/place").text)}
    )
    assert refused.status_code == 422
    assert 'value="Half"' in client.get("/setup/kitchen/place").text


def test_unknown_screens_and_subjects_are_said(store):
    """A wrong address is an answer in words."""
    client = client_of(store)
    for path in ("/setup/moon/place", "/setup/kitchen/moon", "/setup/kitchen/lid"):
        assert client.get(path).status_code == 422, path
    assert client.get("/setup/fryer/kind").url.path == "/setup"


@pytest.mark.slow
def test_the_demo_can_be_looked_at_and_gives_way(store):
    """One button loads it; its page offers one's own kitchen, which takes its place."""
    client = client_of(store)
    client.post("/setup/demo")
    assert remembered_kitchen(store).site.invented
    assert "/setup/kitchen/place" in client.get("/cook/kitchen").text
    page = told(store, "kitchen", US)
    client.post("/setup/kitchen/keep", data={"revision": str(page.revision)})
    assert not remembered_kitchen(store).site.invented


PLATE_LINES = (
    "MODEL NONE-1",
    "SERIAL NO. QX-10482",
    "480 V  3 PH  60 HZ",
    "9.5 KW",
    "OIL CAPACITY 44 LBS",
    "RELIEF VALVE 14.5 PSI",
)


def test_what_a_plate_says_goes_into_its_boxes():
    """Text as it comes off a picture: figures with their units; what is not there stays empty."""
    found = plate_photo.figures("\n".join(PLATE_LINES))
    assert found == {
        "power": "9.5 kW",
        "oil_mass": "44 lb",
        "relief_gauge": "14.5 psi",
        "fuel": "electric",
        "serial": "QX-10482",
    }
    gas = plate_photo.figures("INPUT 52,000 BTU/HR  Natural gas\nShortening cap. 20,5 kg operating 12 psi")
    assert gas == {"power": "52000 Btu/h", "fuel": "gas", "oil_mass": "20,5 kg", "working_gauge": "12 psi"}
    assert plate_photo.figures("♥ nothing 12") == {}


def picture() -> bytes:
    """A made-up plate as a picture."""
    import vl_convert

    marks = [
        {
            "mark": {"type": "text", "fontSize": 34, "align": "left", "font": "DejaVu Sans"},
            "encoding": {"text": {"value": line}, "x": {"value": 30}, "y": {"value": 50 + 60 * n}},
        }
        for n, line in enumerate(PLATE_LINES)
    ]
    spec = {"width": 900, "height": 420, "data": {"values": [{}]}, "layer": marks, "background": "white"}
    return bytes(vl_convert.vegalite_to_png(json.dumps(spec), scale=2))


@pytest.mark.slow
def test_a_photo_of_a_plate_is_read_kept_and_compared_by_eye(store):
    """With Tesseract (scripts/install-tesseract.sh): the boxes fill, and count only once ticked."""
    assert shutil.which("tesseract"), "run scripts/install-tesseract.sh"
    client = client_of(store)
    told(store, "kitchen", {k: US[k] for k in ("place", "altitude", "kind")})
    rev = revision(client.get("/setup/kitchen/plate").text)
    page = client.post(
        "/setup/kitchen/plate",
        data={"revision": rev, "how": "photo", "name": "Left"},
        files={"photo": ("p.png", io.BytesIO(picture()), "image/png")},
    )
    assert page.status_code == 200
    assert 'name="name" value="Left"' in page.text
    for value in ("9.5 kW", "44 lb", "QX-10482"):
        assert f'value="{value}"' in page.text
    shown = re.search(r'src="(/care/new/photo/\w+)"', page.text)[1]
    assert client.get(shown).content == picture()
    plate = {**US["plate"], "power": "9.5 kW", "from_photo": "1"}
    assert send(client, "kitchen", "plate", plate).status_code == 422
    assert send(client, "kitchen", "plate", {**plate, "seen": "1"}).url.path == "/setup/kitchen/lid"


def test_what_was_read_off_a_photo_stands_on_the_screen_of_the_plate_alone(store, monkeypatch):
    """Behind what is typed there; no other screen asks for a tick."""
    monkeypatch.setattr(plate_photo, "text_of", lambda content: "\n".join(PLATE_LINES))
    client = client_of(store)
    told(store, "kitchen", {k: US[k] for k in ("place", "altitude", "kind")})
    rev = revision(client.get("/setup/kitchen/plate").text)
    photo = {"photo": ("p.png", io.BytesIO(picture()), "image/png")}
    page = client.post("/setup/kitchen/plate", data={"revision": rev, "how": "photo"}, files=photo).text
    assert 'value="9.5 kW"' in page and "from_photo" in page
    for key in ("place", "altitude", "kind"):
        other = client.get(f"/setup/kitchen/{key}").text
        assert "from_photo" not in other and "9.5 kW" not in other, key


def test_without_tesseract_the_same_form_works(store, monkeypatch):
    """The photo is kept, nothing is read, nothing asks for a tick; a file that is no picture is refused."""
    monkeypatch.setattr(plate_photo, "reader", lambda: "")
    client = client_of(store)
    told(store, "kitchen", {k: US[k] for k in ("place", "altitude", "kind")})

    def photo(content):
        rev = revision(client.get("/setup/kitchen/plate").text)
        return client.post(
            "/setup/kitchen/plate",
            data={"revision": rev, "how": "photo"},
            files={"photo": ("p.png", io.BytesIO(content), "image/png")},
        )

    assert photo(b"#!/bin/sh\nrm -rf /").status_code == 422
    page = photo(picture())
    assert "/care/new/photo/" in page.text
    assert "from_photo" not in page.text


def test_a_reader_that_hangs_or_breaks_reads_nothing(monkeypatch, tmp_path):
    """Time is up after its limit; a failed program is no text."""
    slow = tmp_path / "tesseract"
    slow.write_text("#!/bin/sh\nsleep 30\n")
    slow.chmod(0o755)
    monkeypatch.setattr(plate_photo, "reader", lambda: str(slow))
    monkeypatch.setattr(plate_photo, "READ_S", 1)
    assert plate_photo.text_of(b"x") == ""
    slow.write_text("#!/bin/sh\necho 9.5 KW\nexit 3\n")
    assert plate_photo.text_of(b"x") == ""


def test_the_kitchen_page_lists_and_offers(store):
    """On the demo: every fryer, its products and programs, what to add, and the file."""
    remember_demo(store)
    page = client_of(store).get("/cook/kitchen").text
    for words in ("Alder", "Add a fryer", "Add a product", "no program yet: look for one", "[[fryer]]"):
        assert words in page


def test_an_estimate_is_measured_on_the_kitchen_page(store):
    """A wrong value is said beside its box and kept; a right one takes the mark away."""
    client = client_of(store)
    here = told(store, "kitchen", {**US, "lid": {"working_gauge": "11"}})
    client.post("/setup/kitchen/keep", data={"revision": str(here.revision)})
    form = {"fryer": "left", "estimate": "vent", "vent": "9 psi", "why": "a watch"}
    page = client.post("/cook/kitchen/measured", data=form)
    assert page.status_code == 422
    assert 'name="vent" autocomplete="off" value="9 psi" aria-invalid="true"' in page.text
    assert "vent time is &#39;9 psi&#39;" in page.text
    page = client.post("/cook/kitchen/measured", data={**form, "vent": "0:24"})
    assert page.status_code == 200
    assert remembered_kitchen(store).fryers[0].vent_s == 24.0
    assert 'value="vent"' not in page.text
    assert 'value="swing"' in page.text
    assert client.post("/cook/kitchen/measured", data={**form, "estimate": "x"}).status_code == 422


def test_a_program_one_cooks_by_is_typed_and_answered_for_where_it_is_short(store):
    """A box that is wrong is marked; a short program asks who answers for it; a good one is saved, not
    proven.
    """
    client = client_of(store)
    here = told(store, "kitchen", US)
    client.post("/setup/kitchen/keep", data={"revision": str(here.revision)})
    pair = {"fryer": "left", "product": "bone_in"}
    page = client.get("/setup/own", params=pair).text
    assert page.count('name="set') == 3
    rows = {
        "set1": "340",
        "time1": "0:20",
        "lid1": "open",
        "set2": "335",
        "time2": "9:30",
        "lid2": "pressure",
    }
    page = client.post("/setup/own", data={**pair, **rows, "time2": "soon"})
    assert page.status_code == 422
    assert 'name="time2" value="soon"' in page.text
    assert "time is &#39;soon&#39;" in page.text
    asked = client.post("/setup/own", data={**pair, **rows, "time2": "2:00"})
    assert "Who answers for it" in asked.text
    refused = client.post("/setup/own", data={**pair, **rows, "time2": "2:00", "as": "", "name": "short"})
    assert refused.status_code == 422
    assert remembered_kitchen(store).programs == ()
    good = {**pair, **rows, "set3": "350", "time3": "1:30", "lid3": "open"}
    asked = client.post("/setup/own", data=good)
    assert "Who answers for it" not in asked.text
    assert 'name="set3" value="350"' in asked.text
    done = client.post("/setup/own", data={**good, "as": "", "name": "Bone-in Left"})
    assert done.status_code == 200, done.text
    made = remembered_kitchen(store).program("Bone-in Left")
    assert [round(s.set_c) for s in made.stages] == [171, 168, 177]
    assert client.get("/cook").status_code == 200
    assert client.get("/setup/own").status_code == 422


def test_a_kitchen_without_a_file_gets_its_day_on_a_page(store):
    """The day leads there; a wrong box is marked and nothing typed is lost; then sales are asked for."""
    client = client_of(store)
    here = told(store, "kitchen", US)
    client.post("/setup/kitchen/keep", data={"revision": str(here.revision)})
    assert 'href="/setup/day"' in client.get("/day").text
    money = {"margin_bone_in": "2.60", "cost_bone_in": "0.95"}
    page = client.post("/setup/day", data={**DAY, **money, "opens": "25:00"})
    assert page.status_code == 422
    assert 'name="opens" value="25:00" aria-invalid="true"' in page.text
    assert "13:00 – 15:30, 20:30-22:00" in page.text and 'value="2.60"' in page.text
    done = client.post("/setup/day", data={**DAY, **money})
    assert done.status_code == 200 and "No sales are read in yet" in done.text
    assert remembered_kitchen(store).trade.zone == "Europe/Madrid"
    assert 'name="hands" value="2"' in client.get("/setup/day").text
