"""The page of sales: a file in, its columns picked by eye, items mapped; a till that posts."""

from __future__ import annotations

import datetime as dt
import re

import pytest

from frywright.ledger.facts.day import BoardTap, ItemMapped, SalesPosted, SalesRead
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.kitchens import demo_text

MATRIX = b"Item,11:00,12:00,13:00,14:00\n<b>Strips</b> 3,2,4,6,1\nMystery box,1,1,1,1\n"


def test_a_file_waits_is_picked_and_its_items_are_mapped(client, store):
    """Without a day it waits with its first lines; then it counts; mapped items are asked no more."""
    page = client.post("/day/sales", files={"file": ("till.csv", MATRIX)})
    assert page.status_code == 200
    assert "no day" in page.text
    assert "&lt;b&gt;Strips" in page.text
    name = re.search(r'name="file" value="(\w{64})"', page.text)[1]
    wrong = client.post("/day/sales/columns", data={"file": name, "day": "24/11"})
    assert wrong.status_code == 422
    assert 'value="24/11"' in wrong.text
    page = client.post("/day/sales/columns", data={"file": name, "day": "2026-11-24"})
    assert page.status_code == 200
    assert "Mystery box" in page.text
    assert len(store.current_facts(SalesRead)) == 1
    typed = {"item_0": "<b>Strips</b> 3", "pieces_0": "unicorn 3", "item_1": "Mystery box", "pieces_1": "-"}
    wrong = client.post("/day/sales/items", data=typed)
    assert wrong.status_code == 422
    assert "unicorn 3" in wrong.text
    assert not list(store.facts(ItemMapped))
    page = client.post("/day/sales/items", data={**typed, "pieces_0": "tenders 3"})
    assert page.status_code == 200
    assert 'id="items"' not in page.text


def test_lines_of_days_to_come_are_said_on_the_page_and_so_is_a_mark_that_stays_open(client):
    """What, how many and which days, in both languages; a thousands mark that may be decimals waits."""
    text = b"Date,Time,Item,Qty\n2026-11-24,12:00,Box,1\n2098-03-02,12:00,Box,1\n2098-03-05,12:00,Box,1\n"
    page = client.post("/day/sales", files={"file": ("till.csv", text)}).text
    assert "till.csv: lines dated later than the day they were read in: 2 (2098-03-02 – 2098-03-05)." in page
    assert "No se aprende de ellas" in client.get("/day/sales?lang=es").text
    client.get("/day/sales?lang=en")
    mark = b"Date;Time;Item;Qty\n2026-11-24;12:00;Box;1,234\n"
    page = client.post("/day/sales", files={"file": ("mark.csv", mark)}).text
    assert "quantities such as 1,234 can be thousands or parts of a piece" in page


def test_a_file_can_be_left_out_and_what_is_none_is_refused(client, store):
    """Left out it is on the page no more; an unknown one is refused; a file that is no table is not kept."""
    page = client.post("/day/sales", files={"file": ("till.csv", MATRIX)})
    name = re.search(r'name="file" value="(\w{64})"', page.text)[1]
    assert name in client.get("/day/sales").text
    assert name not in client.post("/day/sales/leave", data={"file": name}).text
    assert client.post("/day/sales/leave", data={"file": "0" * 64}).status_code == 422
    assert client.get("/day/sales/file/nothing").status_code == 422
    assert client.post("/day/sales", files={"file": ("a.csv", b"\x00\x01nothing")}).status_code == 422
    assert client.post("/day/sales").status_code == 422


def test_several_files_at_once_and_a_day_of_two_readings(client, store):
    """A file a day, chosen together: each is read, the one without a day waits. 3/11 is the third of November
    where days stand first, March the eleventh where months do.
    """
    days = [f"Item;10h;11h;12h;13h\nDia {day}/11/2026\nBone;1;2;;\n".encode() for day in ("3", "24")]
    files = [("file", (f"{n}.csv", data)) for n, data in enumerate([*days, MATRIX])]
    page = client.post("/day/sales", files=files)
    assert page.url.path == "/day/sales"
    assert "Say what its columns are" in page.text
    read = {e.fact.name: e.fact.first for e in store.current_facts(SalesRead)}
    assert read == {"0.csv": dt.date(2026, 3, 11), "1.csv": dt.date(2026, 11, 24)}
    remember_kitchen(
        store, demo_text().replace('"us_food_code_2022"', '"spain"'), "k.toml", "It stands in Spain"
    )
    client.post("/day/sales", files=files[:1])
    read = {e.fact.name: e.fact.first for e in store.current_facts(SalesRead)}
    assert read["0.csv"] == dt.date(2026, 11, 3)


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_page_speaks_both_languages(client, language):
    """Every part of the page in its language."""
    page = client.get("/day/sales", params={"lang": language}).text
    assert ("exportación" in page) == (language == "es")


def post(client, key, lines, till="front"):
    """A post of a till."""
    body = {"till": till, "lines": lines}
    return client.post("/api/v1/sales", json=body, headers={"idempotency-key": key})


def test_a_till_posts_its_sales_once(client, store):
    """The same post again writes nothing; the same line in another post counts once; today's board hears."""
    client.post("/day/sales/items", data={"item_0": "Strips", "pieces_0": "tenders 3"})
    sold = {"line": "1", "at": now().isoformat(), "item": "Strips", "quantity": 2}
    first = post(client, "a", [sold]).json()
    assert (first["new"], first["new_lines"]) == (True, 1)
    assert post(client, "a", [sold]).json() == {**first, "new": False}
    assert post(client, "b", [sold, {**sold, "line": "2"}]).json()["new_lines"] == 1
    assert len(list(store.facts(SalesPosted))) == 2
    assert [(e.fact.product, e.fact.pieces_count) for e in store.facts(BoardTap)] == [("tenders", 6)] * 2


@pytest.mark.parametrize(
    "wrong",
    [
        {"at": "2026-11-24T12:00:00"},
        {"at": "2020-01-01T12:00:00Z"},
        {"at": "2099-01-01T12:00:00Z"},
        {"quantity": 1e9},
        {"item": ""},
        {"colour": "red"},
    ],
)
def test_a_post_that_cannot_be_is_refused_whole(client, store, wrong):
    """A time without its zone, long ago or to come, an amount nobody sells, no item, an unknown field."""
    good = {"line": "1", "at": now().isoformat(), "item": "Strips", "quantity": 2}
    assert post(client, "a", [good, {**good, "line": "2", **wrong}]).status_code == 422
    assert not list(store.facts(SalesPosted))
