"""Room Day over its pages, the rule not tuned: papers, pictures, orders, stock, a lift asked about."""

from __future__ import annotations

import datetime as dt
import re
from types import SimpleNamespace

import pytest

from frywright.ledger.facts.day import OrderPromised, PracticeTap
from frywright.rooms.day import day, orders, views
from tests.browsers import browser
from tests.demo import keep_demo_sales, kitchen_store
from tests.paper import words

PRACTICE = {"practice": "7", "date": "2026-11-27"}
NOON = {**PRACTICE, "now_s": "43200"}


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    found = kitchen_store(tmp_path_factory.mktemp("day") / "w.db")
    yield found
    found.close()


@pytest.fixture(scope="module")
def client(store):
    """The demo with invented sales read in on the page, once they were asked for."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(day, "_tuned_bench", lambda bench, kitchen: bench)
        client = browser(store, follow_redirects=False)
        assert "No sales are read in yet" in client.get("/day").text
        read = client.post("/day/sales/demo")
        assert (read.status_code, read.headers["location"]) == (303, "/day")
        keep_demo_sales(store)
        yield client


def tap(client, at_s, **changes):
    """Two heads into Alder on the practice day; the page asked for is not followed."""
    told = {
        **PRACTICE,
        "key": f"k{at_s}{changes.get('what', '')}{changes.get('reason', '')}",
        "what": "drop",
        "at_s": str(at_s),
        "fryer": "alder",
        "product": "bone_in",
        "pieces": "16",
    }
    return client.post("/day/tap", data={**told, **changes})


def test_an_order_is_promised_as_typed(client, monkeypatch):
    """After midnight it is of the same business day; what may not be there is kept with its chance once
    it is promised all the same. What cannot be read is promised to nobody.
    """
    asked, found = [], SimpleNamespace(feasible=True, chance_frac=0.4)
    monkeypatch.setattr(orders, "order_of", lambda bench, typed, second: SimpleNamespace(product=typed[0]))
    monkeypatch.setattr(views, "promise_view", lambda board, second, *about: asked.append(about) or found)
    monkeypatch.setattr(
        orders, "promise_order", lambda store, bench, typed, second, low: asked.append((typed, low))
    )
    typed = {"date": "2026-11-27", "product": "bone_in", "pieces": "16", "at": "18:30", "ticket": "T7"}
    for at, second, feasible, low in (("18:30", 66600.0, True, None), ("0:15", 87300.0, False, 0.4)):
        found.feasible, asked[:] = feasible, []
        answer = client.post("/day/orders", data={**typed, "at": at, "anyway": "1"})
        assert (answer.status_code, answer.headers["location"]) == (303, "/day/orders?date=2026-11-27")
        assert asked == [("bone_in", second, 16), (("bone_in", 16, second, "T7"), low)]
    asked.clear()
    for wrong in ({"pieces": "many"}, {"at": "later"}):
        assert client.post("/day/orders", data={**typed, **wrong}).status_code == 422
    assert asked == []


def test_a_picture_that_is_none_is_refused(client):
    answer = client.get("/day/roof.svg", params={"date": "2026-11-27"})
    assert answer.status_code == 422 and "fryers or shelf" in answer.text


@pytest.mark.slow
def test_the_plan_on_paper_and_as_a_picture(client):
    """For its date; a picture that is none is refused, a date that is none too."""
    paper = client.get("/day/plan.pdf", params={"date": "2026-11-27", "lang": "es"})
    assert paper.headers["content-type"] == "application/pdf"
    text = words(paper.content)
    assert all(said in text for said in ("Plan del día", "2026-11-27", "Alder"))
    assert len(set(re.findall(r"\b\d\d:\d\d\b", text))) > 20, "loads of the whole day"
    for name, says in (("fryers", "Loads and filter turns"), ("shelf", "Pieces on the shelf")):
        picture = client.get(f"/day/{name}.svg", params={"date": "2026-11-27"})
        assert picture.headers["content-type"].startswith("image/svg+xml")
        assert picture.text.startswith("<svg") and says in picture.text
    assert client.get("/day/oven.svg").status_code == 422
    assert "a day such as 2026-11-27" in client.get("/day/plan.pdf", params={"date": "soon"}).text


def test_stock_typed_is_counted_or_said(client):
    """In date it is taken off; more than a million or no number is refused beside what was typed."""
    asked = {"date": "2026-11-27", "bone_in_thawed": "20", "bone_in_thawed_until": "2090-01-01"}
    page = client.get("/day/pull", params=asked)
    assert page.status_code == 200
    bare = client.get("/day/pull", params={"date": "2026-11-27"})
    assert page.text != bare.text
    for wrong in ("-1", "2000000", "many"):
        page = client.get("/day/pull", params={**asked, "bone_in_thawed": wrong})
        assert (page.status_code, f'value="{wrong}"' in page.text) == (422, True)


def test_a_change_that_cannot_be_read_is_said_beside_what_was_typed(client):
    """A factor that is no number, a hold life of a product that is held for letters."""
    for typed in ({"factor": "more"}, {"hold_bone_in": "long"}, {"filter_every": "1.5"}):
        page = client.get("/day/replay", params={"date": "2026-11-27", **typed})
        assert (page.status_code, 'role="alert"' in page.text) == (422, True)
        assert f'value="{next(iter(typed.values()))}"' in page.text


def test_nothing_is_said_of_a_change_before_one_is_typed(client):
    """Neither on the bare page nor where the form is sent as it came; a change typed has its price."""
    asked = {"date": "2026-11-27", "hold_bone_in": "", "filter_every": "", "factor": ""}
    for typed in ({}, asked):
        page = client.get("/day/replay", params=typed)
        assert (page.status_code, "The change costs" in page.text) == (200, False)
    for typed in ({"filter_every": "4"}, {"off_cedar": "1"}):
        assert "The change costs" in client.get("/day/replay", params={**asked, **typed}).text
    longer = client.get("/day/replay", params={**asked, "hold_bone_in": "240"}).text
    assert "The change saves" in longer and "−" not in longer.split("The change saves")[1].split("a day")[0]


def test_a_load_dropped_and_lifted_too_early_is_asked_about(client, store):
    """The page asks and offers answers; a script gets them with its refusal; answered, it goes on."""
    dropped = tap(client, 43200)
    assert dropped.status_code == 303
    assert dropped.headers["location"] == "/day/board?practice=7&date=2026-11-27&now_s=43200"
    assert (
        tap(client, 43260, screen="line", what="filter", fryer="birch")
        .headers["location"]
        .startswith("/day/line?")
    )
    asked = tap(client, 43300, what="lift")
    assert asked.status_code == 409
    assert "This load has had 1:40 of 12:00. It may be raw inside." in asked.text
    assert "It was thrown away" in asked.text
    told = {**PRACTICE, "key": "s", "what": "lift", "at_s": 43300, "fryer": "alder"}
    script = client.post("/day/tap", json=told)
    assert script.status_code == 409
    assert (script.json()["ok"], script.json()["error"]) == (False, "LiftAskedError")
    assert [c["answer"] for c in script.json()["choices"]][:2] == ["back in the oil", "thrown away"]
    lifted = client.post("/day/tap", json={**told, "at_s": 43200 + 720})
    assert (lifted.status_code, lifted.json()["new"]) == (200, True)
    again = client.post("/day/tap", json={**told, "at_s": 43200 + 720})
    assert (again.json()["number"], again.json()["new"]) == (lifted.json()["number"], False)
    facts = [item.fact for item in store.facts(PracticeTap)]
    assert [(f.what, f.fryer) for f in facts] == [("drop", "alder"), ("filter", "birch"), ("lift", "alder")]
    label = words(client.get("/day/labels.pdf", params={**PRACTICE, "now_s": "44000"}).content)
    assert "12:12" in label and "dropped 12:00" in label
    sheet = words(client.get("/day/handover.pdf", params={**PRACTICE, "now_s": "44000"}).content)
    assert "12:13" in sheet and "Never evidence" in sheet


def test_what_the_kitchen_has_to_do_is_no_part_of_practice(client, monkeypatch):
    """The hand-over of a real day says what is due, that of a practice day asks for nothing of it."""
    asked = []
    monkeypatch.setattr("frywright.web.pages.day.gather", lambda *told: asked.append(told) or [])
    monkeypatch.setattr("frywright.web.pages.day.day_paper.handover_pdf", lambda *told: b"%PDF-")
    assert client.get("/day/handover.pdf", params=NOON).content == b"%PDF-"
    assert asked == []
    assert client.get("/day/handover.pdf", params={"date": "2026-11-27"}).content == b"%PDF-"
    assert len(asked) == 1


def test_a_practice_clock_stands_within_its_day(client):
    """No number is no practice day; the clock of the page is kept, and where none is told the day begins."""
    view = client.get("/day/board.json", params=NOON).json()
    assert (view["ok"], view["practice"], view["clock"], view["date"]) == (True, 7, "12:00", "2026-11-27")
    assert client.get("/day/board.json", params=PRACTICE).json()["clock"] == "09:40"
    late = client.get("/day/board.json", params={**PRACTICE, "now_s": "1e9"}).json()
    assert (late["now_s"], late["open"], late["advice"]) == (172800.0, False, [])
    for wrong in ({"practice": "x"}, {"practice": "1000001"}, {"now_s": "noon"}):
        assert client.get("/day/board.json", params={**NOON, **wrong}).status_code == 422
    began = client.get("/day/practice", params={"date": "2026-11-27", "screen": "line"})
    assert began.headers["location"].startswith("/day/line?practice=")


@pytest.mark.slow
def test_an_order_is_promised_on_its_page_and_handed_over(client, store):
    """Kept with its pieces and time; ended it is no longer shown; an impossible one is refused."""
    today = dt.date.fromisoformat(client.get("/day/board.json").json()["date"])
    date = (today + dt.timedelta(days=1)).isoformat()
    typed = {"date": date, "product": "tenders", "pieces": "12", "at": "13:00", "ticket": "no. 17"}
    for wrong in ({"pieces": "0"}, {"pieces": "many"}, {"at": "soon"}, {"product": "fish"}, {"date": "soon"}):
        page = client.post("/day/orders", data={**typed, **wrong})
        assert (page.status_code, 'role="alert"' in page.text) == (422, True)
    promised = client.post("/day/orders", data=typed)
    assert (promised.status_code, promised.headers["location"]) == (303, f"/day/orders?date={date}")
    (one,) = store.current_facts(OrderPromised)
    fact = one.fact
    assert (fact.product, fact.pieces_count, fact.ticket, fact.ready_s) == ("tenders", 12, "no. 17", 46800.0)
    assert "no. 17" in client.get("/day/orders", params={"date": date}).text
    end = {"number": str(one.number)}
    assert client.post("/day/orders/end", data={**end, "state": "eaten"}).status_code == 422
    ended = client.post("/day/orders/end", data={**end, "state": "given"})
    assert (ended.status_code, ended.headers["location"]) == (303, f"/day/orders?date={date}")
    assert store.current_facts(OrderPromised)[0].fact.state == "handed over"
    assert "no. 17" not in client.get("/day/orders", params={"date": date}).text
    many = {**typed, "pieces": "4000", "ticket": "no. 18"}
    asked = client.post("/day/orders", data=many)
    assert (asked.status_code, "Promise 4000 pieces all the same" in asked.text) == (422, True)
    assert "no. 18" not in client.get("/day/orders", params={"date": date}).text
    assert client.post("/day/orders", data={**many, "anyway": "1"}).status_code == 303
    assert "Promised all the same: " in client.get("/day/orders", params={"date": date}).text
    kept = store.current_facts(OrderPromised)[-1].fact
    assert kept.ticket == "no. 18" and 0.0 <= kept.chance_frac < 0.9
    assert fact.chance_frac is None
    far = (today + dt.timedelta(days=61)).isoformat()
    assert client.post("/day/orders", data={**typed, "date": far}).status_code == 422


def test_an_order_of_a_long_record_is_handed_over(client, monkeypatch):
    """After a thousand entries an order's number has four digits and more; letters are no number."""
    asked = []
    fact = OrderPromised(
        date=dt.date(2026, 11, 27), product="", pieces_count=1, ready_s=0.0, ticket="", state="handed over"
    )

    def ended(store, number, state, now_s):
        asked.append((number, state))
        return SimpleNamespace(fact=fact)

    monkeypatch.setattr(orders, "end_order", ended)
    for number in ("1204", "98765432"):
        told = client.post("/day/orders/end", data={"number": number, "state": "given"})
        assert told.status_code == 303
    assert asked == [(1204, "handed over"), (98765432, "handed over")]
    assert client.post("/day/orders/end", data={"number": "x", "state": "given"}).status_code == 422


def test_the_plan_as_json_is_the_plan_of_its_date(client):
    """Every drop names a fryer and a product of the day."""
    told = client.get("/day/plan.json", params={"date": "2026-11-27"}).json()
    assert told["ok"] and told["date"] == "2026-11-27"
    assert told["drops"] and all(drop["fryer"] and drop["product"] for drop in told["drops"])


def test_the_board_and_its_part_show_the_time_asked_for(client):
    """The page holds what its part is drawn anew with."""
    for page, part in (("/day/board", "/day/board/part"), ("/day/line", "/day/line/part")):
        shown, piece = (client.get(path, params=NOON) for path in (page, part))
        assert (shown.status_code, piece.status_code) == (200, 200)
        assert 'data-now="43200.0"' in piece.text and "Alder" in piece.text
        assert "<html" in shown.text and "<html" not in piece.text


@pytest.mark.slow
def test_what_a_fryer_that_is_down_costs_is_asked_of_the_board(client):
    """For a fryer and for a product; the way back keeps the time."""
    down = client.get("/day/board/down", params={**NOON, "fryer": "alder"})
    assert down.status_code == 200 and "today without this fryer: about " in down.text
    assert "New plan from 12:00" in down.text and "now_s=43200" in down.text
    out = client.get("/day/board/down", params={**NOON, "product": "wedges"})
    assert out.status_code == 200 and "today without this product: about " in out.text
    assert client.get("/day/board/down", params={**NOON, "fryer": "elm"}).status_code == 422
    for screen in ("line", "board"):
        for page in (f"/day/{screen}", f"/day/{screen}/part"):
            assert ('name="screen" value="line"' in client.get(page, params=NOON).text) == (screen == "line")
    for path, asked in (("down", {"product": "wedges"}), ("promise", {})):
        page = client.get(f"/day/board/{path}", params={**NOON, **asked, "screen": "line"})
        assert 'href="/day/line?practice=7' in page.text, "back to the screen it was asked on"


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ({"pieces": "many", "at": "17:00"}, "Write pieces as a whole number."),
        ({"pieces": "8", "at": "5 pm"}, "a time of day"),
        ({"pieces": "8", "at": "17:00", "product": "fish"}, "fish"),
    ],
)
def test_a_promise_that_cannot_be_read_is_said_beside_what_was_typed(client, asked, says):
    page = client.get("/day/board/promise", params={**NOON, "product": "bone_in", **asked})
    assert page.status_code == 422
    assert says in page.text and f'value="{asked["pieces"]}"' in page.text


def test_a_promise_is_asked_before_anything_is_typed(client):
    assert client.get("/day/board/promise", params=NOON).status_code == 200


def test_the_close_of_a_practice_day_is_shown(client):
    page = client.get("/day/close", params={**PRACTICE, "now_s": "79200"})
    assert page.status_code == 200 and "practice" in page.text


def test_an_export_is_chosen_before_it_is_sent(client):
    """Without a file the page says what is wanted; with an order of the date it is read as told."""
    assert client.post("/day/sales", data={"order": ""}).status_code == 422
    line = b"Date,Time,Item,Quantity\n03/04/2026,12:00,Wings,2\n"
    told = client.post("/day/sales", data={"order": "dmy"}, files={"file": ("t.csv", line)})
    assert (told.status_code, told.headers.get("location")) == (303, "/day/sales"), told.text[:500]
