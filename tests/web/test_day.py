"""Room Day without a browser: every page in both languages, errors that keep what was typed, taps by form and
JSON.
"""

from __future__ import annotations

import datetime as dt
import re
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from frywright.rooms.clock import now
from frywright.web.benches import Benches
from tests.browsers import HOST, browser
from tests.demo import keep_demo_sales, kitchen_store

pytestmark = pytest.mark.slow
PRACTICE = {"practice": "7", "date": "2026-11-27", "now_s": "43200"}


@pytest.fixture(scope="module")
def client(tmp_path_factory):
    store = kitchen_store(tmp_path_factory.mktemp("web") / "w.db")
    client = browser(store)
    assert "No sales are read in yet" in client.get("/day").text
    assert client.post("/day/sales/demo").status_code == 200
    keep_demo_sales(store)
    return client


@pytest.mark.parametrize(
    "path",
    [
        "/day?date=2026-11-27",
        "/day/pull?date=2026-11-27",
        "/day/replay?date=2026-11-27&hold_bone_in=60",
        "/day/board",
        "/day/board?practice=7&date=2026-11-27&now_s=43200",
        "/day/board/part?practice=7&date=2026-11-27&now_s=43200",
        "/day/line?practice=7&date=2026-11-27&now_s=43200",
        "/day/line/part?practice=7&date=2026-11-27&now_s=43200",
        "/day/board/down?practice=7&date=2026-11-27&now_s=43200&product=wedges",
        "/day/board/down?practice=7&date=2026-11-27&now_s=63600&fryer=birch",
        "/day/close?practice=7&date=2026-11-27&now_s=63600",
        "/day/board/promise?practice=7&date=2026-11-27&now_s=43200&product=bone_in&pieces=40&at=17:00",
    ],
)
def test_pages_in_both_languages(client, path):
    """Every page answers, says the language it is in, and loads nothing from elsewhere."""
    for language in ("en", "es"):
        page = client.get(
            path,
            params=(
                dict(p.split("=") for p in path.split("?")[1].split("&")) | {"lang": language}
                if "?" in path
                else {"lang": language}
            ),
        )
        assert page.status_code == 200, page.text[:500]
        assert "http://" not in page.text.replace(HOST, "").replace("http://testserver", "")


def test_the_line_drops_into_a_fryer_that_the_plan_keeps_off_and_says_so(client, monkeypatch):
    """A form for each fryer of the bone-in, with its caution where the plan has the fryer off."""
    monkeypatch.setattr(
        "frywright.rooms.day.board_view.bank_now", lambda day, _: replace(day, up=((0, 0),) * 4)
    )
    page = client.get("/day/line/part", params=PRACTICE | {"lang": "en"}).text
    sheet = page.split('id="shelf-bone_in"')[1].split("</details>")[0]
    assert sheet.count('name="what" value="drop"') == sheet.count("Drop only if its oil is at heat.") == 3
    assert "1: Stays off today by the plan. Drop only if its oil is at heat." in sheet
    assert "No fryer for it is free now" not in sheet


def test_pictures_and_json(client):
    """Fryers and shelf are SVG; the board and plan are JSON."""
    for picture in ("fryers", "shelf"):
        assert client.get(f"/day/{picture}.svg", params={"date": "2026-11-27"}).text.startswith("<svg")
    assert client.get("/day/other.svg").status_code == 422
    assert client.get("/day/plan.json", params={"date": "2026-11-27"}).json()["broken"] == []
    assert client.get("/day/board.json", params=PRACTICE).json()["clock"] == "12:00"
    assert client.get("/day/plan.pdf", params={"date": "2026-11-27"}).content.startswith(b"%PDF")
    assert client.get("/day/plan.pdf", params={"date": "zz"}).status_code == 422


def test_a_new_practice_day_has_none_of_the_taps_of_before(client):
    """On the board and on the line: each time another number, on the day asked for."""
    for screen, where in (("", "/day/board"), ("line", "/day/line")):
        asked = {"date": "2026-11-27", "screen": screen}
        began = client.get("/day/practice", params=asked, follow_redirects=False).headers["location"]
        assert began.startswith(f"{where}?practice=") and began.endswith("&date=2026-11-27")
        number = began.split("practice=")[1].split("&")[0]
        tap = {"practice": number, "date": "2026-11-27", "key": f"again-{where}", "at_s": 43000}
        tap |= {"what": "drop", "fryer": "alder", "product": "bone_in", "pieces": 16}
        assert client.post("/day/tap", json=tap).status_code == 200
        assert client.get("/day/practice", params=asked, follow_redirects=False).headers["location"] != began
    assert client.get("/day/practice", params={"date": "zz"}).status_code == 422


def test_taps_by_form_and_by_json(client):
    """Both are kept; the same key is one entry; a tap of another site's page is refused."""
    tap = {
        **PRACTICE,
        "practice": "61",
        "key": "k1",
        "what": "drop",
        "fryer": "alder",
        "product": "bone_in",
        "pieces": "16",
        "at_s": "43200",
    }
    first, again = client.post("/day/tap", json=tap).json(), client.post("/day/tap", json=tap).json()
    assert (first["new"], again["new"]) == (True, False)
    assert (
        client.post(
            "/day/tap", data={**tap, "key": "k2", "what": "filter", "fryer": "cedar"}, follow_redirects=False
        ).status_code
        == 303
    )
    assert client.post("/day/tap", json=tap, headers={"origin": "http://elsewhere"}).status_code == 403
    board = client.get("/day/board.json", params={**PRACTICE, "practice": "61"}).json()
    assert {f["key"]: f["state"] for f in board["fryers"]}["alder"] == "cooking"
    down = client.post(
        "/day/tap",
        data={**tap, "key": "k3", "what": "down", "fryer": "birch", "screen": "line"},
        follow_redirects=False,
    )
    assert down.headers["location"].startswith("/day/line?practice=61")
    out = client.post("/day/tap", data={**tap, "key": "k4", "what": "out", "product": "wedges"})
    assert out.status_code == 200
    assert "/day/board/down?product=wedges" in out.text
    assert "birch" not in [
        d["fryer"]
        for d in client.get("/day/board.json", params={**PRACTICE, "practice": "61"}).json()["advice"]
    ]


def test_an_early_lift_is_asked_about_by_json_and_by_form(client):
    """The script gets question and choices; the form a page whose buttons answer, in the page's language.
    Nothing is kept before.
    """
    tap = {**PRACTICE, "practice": "63", "fryer": "alder", "product": "bone_in", "pieces": "16"}
    client.post("/day/tap", json={**tap, "key": "a", "what": "drop", "at_s": "42000"})
    early = {**PRACTICE, "practice": "63", "fryer": "alder", "key": "b", "what": "lift", "at_s": "42360"}
    asked = client.post("/day/tap?lang=en", json=early)
    assert asked.status_code == 409
    assert asked.json()["message"].startswith("This load has had 6:00 of 12:00. It may be raw inside.")
    assert [c["answer"] for c in asked.json()["choices"]] == ["back in the oil", "thrown away", "probed"]
    page = client.post("/day/tap?lang=es", data=early)
    assert page.status_code == 409
    assert "Puede estar cruda por dentro" in page.text
    assert client.get("/day/board.json", params={**PRACTICE, "practice": "63"}).json()["fryers"][0][
        "state"
    ] == ("cooking")
    client.post("/day/tap", data={**early, "reason": "thrown away"})
    board = client.get("/day/board.json", params={**PRACTICE, "practice": "63"}).json()
    assert board["fryers"][0]["state"] != "cooking"
    assert next(s for s in board["shelf"] if s["product"] == "bone_in")["count"] == 0
    client.get("/day?lang=en")


@settings(
    max_examples=60,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(
    st.dictionaries(
        st.sampled_from(
            ["key", "what", "fryer", "product", "pieces", "at_s", "practice", "date", "now_s", "reason"]
        ),
        st.text(max_size=12) | st.integers() | st.none(),
        max_size=8,
    )
)
def test_any_tap_is_kept_or_refused_in_words(client, values):
    """No body makes the server stumble."""
    answer = client.post("/day/tap", json={"practice": 99, **values})
    assert answer.status_code in (200, 422)
    assert answer.json()["ok"] is (answer.status_code == 200)


@pytest.mark.parametrize(
    "path",
    [
        "/day?date=tomorrow",
        "/day/pull?date=2026-11-27&bone_in_thawed=many",
        "/day/replay?date=2026-11-27&hold_bone_in=long",
        "/day/board?practice=x",
        "/day/board/down?practice=7&fryer=nobody",
        "/day/board/down?practice=7&product=ghost",
        "/day/labels.pdf?practice=8&date=2026-11-27&now_s=43200",
    ],
)
def test_bad_questions_are_answered_in_words(client, path):
    """422 with a sentence, never a stumble."""
    answer = client.get(path, headers={"accept": "text/html"})
    assert answer.status_code == 422
    assert "Traceback" not in answer.text


def test_an_order_is_promised_shown_on_the_line_and_handed_over(client):
    """Kept by the page of its day, shown there and on the line; what is wrong is said beside what was typed;
    handed over once, it is gone from both.
    """
    day = (now() + dt.timedelta(days=3)).date().isoformat()
    typed = {"date": day, "product": "tenders", "pieces": "24", "at": "13:00", "ticket": "<b>17</b>"}
    wrong = client.post("/day/orders", data=typed | {"pieces": "many"})
    assert (
        wrong.status_code == 422 and "&lt;b&gt;17&lt;/b&gt;" in wrong.text and 'value="13:00"' in wrong.text
    )
    for bad in ({"at": "04:30"}, {"product": "?"}, {"date": "2020-01-01"}, {"date": "soon"}):
        assert client.post("/day/orders", data=typed | bad).status_code == 422
    page = client.post("/day/orders", data=typed)
    number = page.text.split('name="number" value="')[1].split('"')[0]
    line = {"practice": "7", "date": day, "now_s": "43200"}
    assert f'id="order-{number}"' in client.get("/day/line/part", params=line).text
    assert client.get("/day/board.json", params=line).json()["orders"][0]["pieces"] == 24
    assert "24" in client.get("/day/orders", params={"date": day, "lang": "es"}).text
    for state in ("given", "withdrawn"):  # the second finds it gone
        ended = client.post("/day/orders/end", data={"number": number, "state": state})
        assert ended.status_code == 200 and 'name="number"' not in ended.text
    assert client.get("/day/board.json", params=line).json()["orders"] == []
    for bad in ({"number": "999999", "state": "given"}, {"number": number, "state": "eaten"}):
        assert client.post("/day/orders/end", data=bad).status_code == 422


def test_an_order_that_cannot_be_there_is_said_before_it_is_promised(client):
    """Nine hundred pieces at one: nothing is kept, what was typed is there, and the largest that can be is
    offered; the same order all the same is kept when it is said twice.
    """
    day = (now() + dt.timedelta(days=4)).date().isoformat()
    typed = {"date": day, "product": "tenders", "pieces": "999", "at": "13:00", "ticket": "party"}

    def kept() -> list[str]:
        return re.findall(r"<h3>13:00 · (\d+) ", client.get("/day/orders", params={"date": day}).text)

    page = client.post("/day/orders", params={"lang": "en"}, data=typed)
    assert page.status_code == 422 and "Nothing is promised yet" in page.text
    assert 'value="999"' in page.text and 'value="party"' in page.text
    assert kept() == []
    most = page.text.split('name="pieces" value="')[1].split('"')[0]
    assert 0 < int(most) < 999
    client.post("/day/orders", data=typed | {"pieces": most})
    assert kept() == [most]
    client.post("/day/orders", data=typed | {"anyway": "1"})
    assert sorted(kept()) == sorted([most, "999"])


def test_files_and_notes(client):
    """A till's export is read in; one that is none is refused; a factor is kept and shown."""
    good = b"Date,Time,Item,Qty\n2026-11-01,12:00,Bucket of sixteen,2\n2026-11-02,12:00,Bucket of sixteen,1\n"
    assert client.post("/day/sales", files={"file": ("till.csv", good)}).status_code == 200
    assert client.post("/day/sales", files={"file": ("till.csv", b"\x00\x01nothing")}).status_code == 422
    page = client.post("/day/note", data={"date": "2026-12-24", "event": "<b>eve</b>", "factor": "1,4"})
    assert "1.4" in page.text
    assert "<b>eve</b>" not in page.text
    for wrong in ("lots", "1.200"):
        assert client.post("/day/note", data={"date": "2026-12-24", "factor": wrong}).status_code == 422
    nameless = client.post("/day/note", data={"date": "2026-12-24", "event": " ", "factor": "2"})
    assert nameless.status_code == 422
    assert "event is missing" in nameless.text
    assert client.post("/day/note", data={"date": "2026-12-24", "factor": "1"}).status_code == 200


def test_papers(client):
    """Hand-over is a PDF at any time; labels once a tray stands there."""
    assert client.get("/day/handover.pdf", params=PRACTICE).content.startswith(b"%PDF")
    tap = {**PRACTICE, "practice": "62", "fryer": "alder", "product": "bone_in", "pieces": "16"}
    client.post("/day/tap", json={**tap, "key": "a", "what": "drop", "at_s": "42000"})
    client.post("/day/tap", json={**tap, "key": "b", "what": "lift", "at_s": "42720"})
    assert client.get("/day/labels.pdf", params={**PRACTICE, "practice": "62"}).content.startswith(b"%PDF")


def test_a_load_of_a_program_out_of_service_stays_on_the_board(tmp_path, monkeypatch):
    """It was dropped while its program was in service; the board is there, with the load and its clock."""
    store = kitchen_store(tmp_path / "s.db")
    client = browser(store)
    client.post("/day/sales/demo")
    drop = {"key": "d1", "what": "drop", "fryer": "birch", "product": "bone_in", "pieces": 32}
    assert client.post("/day/tap", json=drop).status_code == 200
    monkeypatch.setattr(Benches, "serving", lambda _: frozenset({"bone-in alder"}))
    board = client.get("/day/board.json")
    assert board.status_code == 200, board.text
    birch = next(row for row in board.json()["fryers"] if row["key"] == "birch")
    assert birch["state"] == "cooking" and birch["pieces"] == 32
    for page in ("/day/line", "/day/orders", "/day/close"):
        assert client.get(page).status_code == 200, page
