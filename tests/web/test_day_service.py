"""The day refuses programs that are not in service: plan and live board say so, practice goes on."""

from __future__ import annotations

import datetime as dt
import re

import pytest

from frywright.rooms.cook import life
from frywright.rooms.day.loads import load_facts
from frywright.rooms.kitchen import remembered_kitchen
from frywright.web.benches import Benches
from frywright.web.pages import day as page
from tests.browsers import browser
from tests.demo import sold_store

pytestmark = [pytest.mark.slow, pytest.mark.usefixtures("any_hour")]
FRIDAY = "2026-11-27"
NOON = dt.datetime(2026, 11, 27, 19, 0, tzinfo=dt.UTC)  # 12:00 there


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    return sold_store(tmp_path_factory.mktemp("service") / "s.db")


def client_of(store):
    return browser(store)


@pytest.fixture
def at_noon(store, monkeypatch):
    """A server at noon of the day, and what says which programs are in service."""
    monkeypatch.setattr(page, "now", lambda: NOON)

    def served(*programs):
        monkeypatch.setattr(Benches, "serving", lambda _: frozenset(programs))
        return client_of(store)

    return served


def drops(client, query=""):
    """Loads that the board advises, and loads that it refuses, by program."""
    acts = client.get(f"/day/board.json{query}").json()["advice"]
    found = [a for a in acts if a["kind"] == "drop"]
    return {a["program"] for a in found if a["in_service"]}, {
        a["program"] for a in found if not a["in_service"]
    }


def test_a_live_board_advises_only_what_is_in_service(at_noon):
    """Nothing in service: every load is refused in red with the way to the missing step and no tap that drops
    it, on board and line; a practice day of the same store advises.
    """
    client = at_noon()
    advised, refused = drops(client)
    assert not advised and refused
    name = min(refused)
    for path in ("/day/board/part", "/day/line/part"):
        text = client.get(f"{path}?lang=en").text
        assert f'href="/cook/changes?program={name.replace(" ", "%20")}#next"' in text
        assert "ot in service" in text
    board = client.get("/day/board/part?lang=en").text
    assert f"Not advised: {name}" in board.split('class="tiles"')[1], "in its fryer's tile, above no timer"
    assert "Not advised" not in board.split('class="tiles"')[0]
    assert "No drop is advised: what would go in now is not in service." in board
    assert not re.search(r'name="what" value="drop"', board.split('class="tiles"')[0])
    assert "No está en servicio" in client.get("/day/board/part?lang=es").text
    practice = f"?practice=3&date={FRIDAY}&now_s=43200"
    advised, refused = drops(client, practice)
    assert advised and not refused
    assert "Not advised" not in client.get(f"/day/board/part{practice}").text


def test_a_drop_that_was_done_all_the_same_is_kept_and_timed(at_noon):
    """Food in hot oil needs its clock, whatever the papers lack."""
    client = at_noon()
    tap = {"key": "k1", "what": "drop", "fryer": "cedar", "product": "tenders", "pieces": 9, "at_s": 43100}
    answer = client.post("/day/tap", json=tap)
    assert answer.status_code == 200, answer.text
    tile = next(f for f in client.get("/day/board.json").json()["fryers"] if f["key"] == "cedar")
    assert tile["state"] == "cooking" and tile["lift_s"] > 43100
    client.post("/day/tap", json={"key": "k2", "what": "undo", "undoes": "k1", "at_s": 43105})


def test_a_product_with_a_program_in_service_is_planned_with_that_one_only(store, at_noon):
    """Two programs cook the same product: the one in service is used, and alone."""
    kitchen = remembered_kitchen(store)
    by_product = {}
    for program in kitchen.own_programs:
        by_product.setdefault(program.product, set()).add(program.name)
    product, names = next((p, n) for p, n in sorted(by_product.items()) if len(n) > 1)
    sell = next(s for s in kitchen.sells if s.product == product)
    chosen = max(names)
    assert {f.program for f in load_facts(kitchen, sell)} == names
    assert {f.program for f in load_facts(kitchen, sell, {chosen})} == {chosen}
    client = at_noon(chosen)
    text = client.get(f"/day?date={FRIDAY}&lang=en").text
    red = text.split('id="not-in-service"')[1].split("</section>")[0]
    assert chosen not in red
    others = {n for p, found in by_product.items() if p in {s.product for s in kitchen.sells} for n in found}
    left = {n for n in others if f"{n} is not in service" in red}
    assert left and left.isdisjoint(names)
    assert red.count("<li>") == red.count('class="button"') == len(left)


def test_with_all_in_service_nothing_is_red(store, at_noon):
    unknown = "planned on simulations that no probe log supports yet"
    assert unknown in at_noon().get(f"/day?date={FRIDAY}").text
    client = at_noon(*{p.name for p in remembered_kitchen(store).programs})
    page = client.get(f"/day?date={FRIDAY}").text
    assert "not-in-service" not in page and unknown not in page
    assert not drops(client)[1]


def test_what_is_in_service_follows_the_life_of_programs(store, monkeypatch):
    """Read anew when an entry of a life comes, and only then."""
    asked = []
    real = life.serving
    monkeypatch.setattr("frywright.web.benches.serving", lambda *a: asked.append(a) or real(*a))
    benches = Benches(store)
    assert benches.serving() == frozenset() and len(asked) == 1
    benches.serving()
    assert len(asked) == 1
    kitchen = remembered_kitchen(store)
    life.keep_card(store, kitchen.program("tenders dogwood"), 1)
    assert benches.serving() == frozenset() and len(asked) == 2
