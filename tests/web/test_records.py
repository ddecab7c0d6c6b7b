"""Room Records without a browser: entries with both versions, a break shown, a case from probe to close, a
complaint, the pack.
"""

from __future__ import annotations

import datetime as dt
import re
import sqlite3
from collections import Counter

from frywright.ledger.facts.day import DayNoted
from frywright.ledger.facts.probing import LogKept
from frywright.model.entry import row_hash
from frywright.rooms import hall
from frywright.web.pages import records

PROBE = {
    "fryer": "alder",
    "product": "bone_in",
    "temp": "158",
    "thermometer": "T1",
    "pieces": "32",
    "who": "Ana Lund",
}


def test_a_case_from_probe_to_close(client):
    """Each refusal keeps the page and says why; the pack has the case; both languages."""
    page = client.post("/records/probing", data=PROBE)
    assert "/records/case/" in str(page.url)
    case = str(page.url).rsplit("/", 1)[1]
    assert "back in the oil" in page.text
    assert "vuelta en el aceite" in client.get(f"/records/case/{case}?lang=es").text

    def tell(step, **more):
        return client.post(f"/records/case/{case}?lang=en", data={"step": step, "who": "Ana Lund", **more})

    assert tell("closed").status_code == 422
    tell("recook")
    assert tell("disposition", disposition="served").status_code == 422
    assert "Still below" in tell("reprobe", temp="160", thermometer="T2").text
    assert 'value="served"' in tell("reprobe", temp="180", thermometer="T2").text
    tell("disposition", disposition="served")
    tell("cause", cause="oil")
    assert "closed" in tell("closed").text
    assert f"/records/case/{case}" in client.get("/records/pack").text
    assert client.get("/records/pack.json").json()["below"] == 1
    good = client.post("/records/probing?lang=en", data={**PROBE, "temp": "180"})
    assert "meets the limit you set" in good.text
    assert client.post("/records/probing", data={**PROBE, "temp": "hot"}).status_code == 422


def test_entries_show_both_versions_and_pages_stay_short(client, store):
    """What replaced what is shown with both texts; names in HTML stay text; older ones by page, kinds
    alone.
    """
    first = hall.write(
        store, DayNoted(date=dt.date(2026, 11, 27), event="<script>alert(1)</script>", factor_n=1.0)
    ).number
    hall.write(store, DayNoted(date=dt.date(2026, 11, 27), event="better", factor_n=1.0), replaces=first)
    page = client.get(f"/records/entry/{first}", params={"lang": "en"})
    assert "replaced by" in page.text
    assert "better" in page.text
    assert "\n  &#34;event&#34;: " in page.text  # one value a line, two spaces in
    assert "<script>alert" not in client.get("/records").text + page.text
    for n in range(120):
        hall.write(store, LogKept(name=f"n{n}", sha256="0" * 64, size_bytes=1))
    listing = client.get("/records", params={"kind": "probe_log"})
    assert listing.text.count("/records/entry/") == 100
    assert "before=" in listing.text
    assert client.get("/records/entry/99999").status_code == 422


def test_a_tamper_by_hand_is_found_and_located(client, store, tmp_path):
    """Somebody edits the database file: the page says at which entry, once the chain is checked from the
    start.
    """
    for n in range(5):
        hall.write(store, LogKept(name=f"n{n}", sha256="0" * 64, size_bytes=1))
    page = client.get("/records", params={"lang": "en"}).text
    assert "Chain unbroken over 6 entries" in page
    assert store.last().hash in page
    with sqlite3.connect(tmp_path / "demo.db") as raw:
        raw.execute("DROP TRIGGER entry_no_update")
        raw.execute("UPDATE entry SET payload=replace(payload, 'n1', 'n7') WHERE number=3")
    raw.close()
    client.post("/records/check")
    assert "The chain breaks at entry 3" in client.get("/records").text
    assert "La cadena se rompe en la" in client.get("/records", params={"lang": "es"}).text


def test_an_end_cut_off_between_two_looks_is_not_called_unbroken(client, store, tmp_path, monkeypatch):
    """The page walks on from where it was, which is gone: it begins anew."""
    monkeypatch.setattr(records, "CHECKED_AT_ONCE", 4)
    monkeypatch.setattr("frywright.ledger.store.READ_BLOCK", 4)
    for n in range(5):
        hall.write(store, LogKept(name=f"n{n}", sha256="0" * 64, size_bytes=1))
    assert "Chain checked up to entry 4 of 6" in client.get("/records", params={"lang": "en"}).text
    with sqlite3.connect(tmp_path / "demo.db") as raw:
        raw.execute("DROP TRIGGER entry_no_delete")
        raw.execute("DELETE FROM entry WHERE number > 2")
    raw.close()
    assert "Chain unbroken over 2 entries" in client.get("/records").text


def test_trace_and_pack_refuse_nonsense_in_words(client):
    """A product nobody sells, a time that is none, a range that runs backwards."""
    assert (
        client.get("/records/probing", params={"product": "pie", "bought": "2026-11-25T18:40"}).status_code
        == 422
    )
    assert client.get("/records/probing", params={"product": "tenders", "bought": "noon"}).status_code == 422
    told = client.get("/records/probing", params={"product": "tenders", "bought": "2026-11-25T18:40"})
    assert "No load on record" in told.text
    assert client.get("/records/pack", params={"from": "2026-11-25", "to": "2026-11-01"}).status_code == 422
    assert client.get("/records/pack", params={"from": "x"}).status_code == 422
    assert client.get("/records/pack.pdf").content.startswith(b"%PDF")
    assert client.get("/records/pack.zip").content.startswith(b"PK")
    assert (
        client.post("/records/case", data={"what": "hold", "words": "too cold for an hour"}).status_code
        == 200
    )


def test_open_cases_are_listed_page_by_page_and_counted_on_the_first(client, store):
    """What has no line of its own on the first page is one press away."""
    for n in range(45):
        client.post("/records/case", data={"what": "hold", "words": f"too cold for an hour {n}"})
    first = client.get("/", params={"lang": "en"}).text
    assert len(re.findall(r'href="/records/case/\d+"', first)) == 12
    assert "Older cases that are open: 33." in first and "/records/probing?still=1#cases" in first
    listed = client.get("/records/probing?still=1").text
    numbers = [int(n) for n in re.findall(r"/records/case/(\d+)", listed)]
    assert "Open cases" in listed and len(numbers) == 40
    rest = re.search(r"/records/probing\?before=(\d+)&amp;still=1", listed)
    assert rest and int(rest[1]) == numbers[-1]
    older = client.get("/records/probing", params={"before": rest[1], "still": "1"}).text
    numbers += [int(n) for n in re.findall(r"/records/case/(\d+)", older)]
    assert len(set(numbers)) == 45 and "Older cases" not in older


def test_a_look_walks_a_piece_of_the_chain_and_the_button_the_whole(client, store, monkeypatch):
    """However long the record, a look reads no more of it; whoever asks for the whole need not load the page
    again and again.
    """
    monkeypatch.setattr(records, "CHECKED_AT_ONCE", 4)
    for n in range(20):
        hall.write(store, LogKept(name=f"n{n}", sha256="0" * 64, size_bytes=1))
    read = Counter()

    def noted(*row):
        read["rows"] += 1
        return row_hash(*row)

    monkeypatch.setattr("frywright.ledger.store.row_hash", noted)
    for place in (4, 8):
        assert f"Chain checked up to entry {place} of 21" in client.get("/records").text
        assert read["rows"] == place
    client.post("/records/check", data={"on": "1"}, follow_redirects=False)
    assert read["rows"] == 21
    page = client.get("/records").text
    assert "Chain unbroken over 21 entries" in page and "Go on checking" not in page
    monkeypatch.setattr(records, "CHECKED_S", -1.0)
    client.post("/records/check", follow_redirects=False)
    assert "Chain checked up to entry 8 of 21" in client.get("/records").text, "time was up after a piece"
