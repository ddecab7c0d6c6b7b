"""The pack as an inspector reads it: who and where, the answer first, every failing reading and case whole,
local times with their zone, mistyped readings marked and still shown, reports, hot holding, the anchor.
Tried on a kitchen other than the demo as well: metric, another place, no permit, a fryer that is gone.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import re
import zipfile
from dataclasses import replace

import pytest

from frywright.ledger.anchors import KEY_SETTING, read_anchors
from frywright.ledger.facts.probing import CaseOpened, Reading
from frywright.ledger.store import Store
from frywright.model.business_day import moment_of, usual_trade
from frywright.model.errors import InputError
from frywright.model.plain import plain
from frywright.paper import paper
from frywright.rooms import hall
from frywright.rooms.care.upkeep import care_rows, tick, today_of
from frywright.rooms.clock import now, played
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.premises import name_place
from frywright.rooms.readings import mend_reading, tell_hold, tell_probe
from frywright.rooms.records import corrective, pack, pack_paper, reports
from frywright.rooms.records.gathered import gather
from frywright.rooms.records.sheets import SHEETS
from frywright.trial.kitchens import demo_text
from frywright.voice.tongue import translator
from tests.paper import pages as count_of
from tests.paper import words
from tests.rooms.taps import tap

DAY = dt.date(2026, 11, 20)
OTHER = """
[kitchen]
name = "Salzmarsch"
altitude_m = 12
jurisdiction = "uk"
units = "metric"
language = "en"
thermometer_error_k = 1

[day]
zone = "Europe/London"

[[fryer]]
key = "left"
name = "Left vat"
kind = "open"
capacity_kg = 6
oil = "sunflower_ho"
oil_mass_kg = 20
heater_kw = 9
swing_k = 4

[fryer.controller]
stage_count = 2
temp_step_c = 1
time_step_s = 1
clock = "left"
lid_control = false
slot_count = 10
"""
PDF = b"%PDF-1.4 a certificate"


def opened(path, text):
    """A store with a kitchen."""
    store = Store.file(path, now)
    with played(dt.datetime(2026, 11, 2, tzinfo=dt.UTC)):
        remember_kitchen(store, text, "k.toml")
    return store, remembered_kitchen(store)


@pytest.fixture
def store(tmp_path):
    return opened(tmp_path / "i.db", demo_text())[0]


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def at(kitchen, hour, day=DAY):
    """A moment of a business day."""
    return moment_of(usual_trade(kitchen), day, hour * 3600.0)


def probe(store, kitchen, hour, temp, **more):
    """A reading, kept when it was taken."""
    moment = at(kitchen, hour)
    form = {"fryer": "alder", "product": "bone_in", "thermometer": "T1", "pieces": "32", "who": "Ana", **more}
    with played(moment):
        return tell_probe(store, kitchen, {**form, "temp": temp}, moment)


def pack_here(store, kitchen, tr=str, first=DAY, last=DAY):
    """The pack of a day, with the entries it stands on."""
    return pack.pack_of(store, kitchen, first, last, tr, care_rows(store, kitchen, tr))


def view_of(*asked, **more):
    """The pack of a day as it is shown."""
    return pack_here(*asked, **more).view


def pages(found_pack, kitchen, language="en", monkeypatch=None):
    """The pack's pages as pictures, and its data."""
    found = {}

    def png(typst, path, name, data):
        import json

        found["data"] = data = plain(data)
        told = json.dumps(data, ensure_ascii=False)
        made = typst.compile(
            path,
            font_paths=[paper.folder()],
            ignore_system_fonts=True,
            format="png",
            ppi=200,
            sys_inputs={name: told},
        )
        found["pages"] = made if isinstance(made, list) else [made]
        return b""

    monkeypatch.setattr(paper, "_compiled", png)
    pack_paper.pack_pdf(kitchen, found_pack, language, translator(language))
    return found["pages"], found["data"]


def test_the_first_page_carries_an_anchor_that_reads_back(store, kitchen, monkeypatch):
    """The QR code on the printed page is the anchor of the chain that was walked."""
    import numpy as np
    import zxingcpp
    from PIL import Image

    probe(store, kitchen, 12, "158")
    found = pack_here(store, kitchen)
    view = found.view
    made, _ = pages(found, kitchen, monkeypatch=monkeypatch)
    picture = np.asarray(Image.open(io.BytesIO(made[0])).convert("L"))
    (code,) = zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode)
    (anchor,) = read_anchors(code.text)
    assert code.text == view.anchor
    assert (anchor.number, anchor.hash, anchor.signed) == (view.entry, view.hash, True)
    assert len(made) >= 2


def test_the_text_of_the_pdf_carries_the_anchor_too(store, kitchen):
    """Marked and copied from the PDF, it is the same line; every page says how many there are."""
    found = pack_here(store, kitchen)
    view = found.view
    data = pack_paper.pack_pdf(kitchen, found)
    text = words(data)
    assert [a.text for a in read_anchors(text)] == [view.anchor]
    assert all(f"{n} / {count_of(data)}" in text for n in range(1, count_of(data) + 1))


def test_who_and_where_stands_first_and_may_be_missing(store, kitchen, monkeypatch):
    """Typed once, shown from then on; what nobody said is *not stated*, in the reader's language."""
    assert view_of(store, kitchen).permit == "not stated"
    assert view_of(store, kitchen, translator("es")).permit == translator("es")("not stated")
    told = {"address": "1  Fern Lane", "permit": "", "operator": "Maple"}
    name_place(store, told)
    _, data = pages(pack_here(store, kitchen), kitchen, monkeypatch=monkeypatch)
    assert data["facts"] == [["address", "1 Fern Lane"], ["permit", "not stated"], ["operator", "Maple"]]
    with pytest.raises(InputError, match="200 letters"):
        name_place(store, {"address": "x" * 201})


@pytest.mark.slow
def test_every_failing_reading_is_printed_however_many_there_are(store, kitchen, monkeypatch):
    """Three hundred: each with time and zone, load, thermometer, who and its case; none is left out."""
    for n in range(300):
        probe(store, kitchen, 9 + n / 50, "158" if n % 2 else "150")
    found = pack_here(store, kitchen)
    view = found.view
    _, data = pages(found, kitchen, monkeypatch=monkeypatch)
    (table,) = [s for s in data["sections"] if "every one" in s["title"] and "Readings" in s["title"]]
    assert len(table["rows"]) == len(view.cases) == 300
    first = table["rows"][0]
    assert first[1] == "2026-11-20 09:00-07:00"
    assert "Bone-in chicken" in first[2] and "(32)" in first[2]
    assert first[3:6] == ["150 °F", "165 °F (167 °F)", "T1, not checked"]
    assert first[6] == f"Ana / {hall.AUTHOR}"


def test_a_reading_is_never_rounded_up_to_its_limit_or_its_level(store, kitchen):
    """164.6 is not 165; 166.6, short of 167 with the thermometer's error, is not 167."""
    probe(store, kitchen, 12, "164.6")
    probe(store, kitchen, 13, "166.6")
    found = pack_here(store, kitchen)
    view = found.view
    assert [r.read for r in view.failing] == ["164.6 °F", "166.6 °F"]
    header, rows = pack.tables(kitchen, found.told)["readings"]
    assert [row[header.index("read")] for row in rows] == ["164.6 °F", "166.6 °F"]


def test_a_case_stands_whole_with_times_thermometers_and_loads(store, kitchen, monkeypatch):
    """Found, recook, re-probe with its thermometer, disposition, cause with its words, each earlier load."""
    load = tap(DAY, "k", at_s=11 * 3600.0, fryer="alder", product="bone_in", pieces_count=24)
    with played(at(kitchen, 11)):
        hall.write(store, load, at(kitchen, 11))
    case = probe(store, kitchen, 12, "158")[1].number
    number = next(e.number for e in store.entries("day_event"))
    steps = (
        {"step": "recook"},
        {"step": "reprobe", "temp": "181", "thermometer": "T7"},
        {"step": "disposition", "disposition": "served"},
        {"step": "cause", "cause": "oil", "words": "oil stood at 300 F"},
        {"step": "earlier", "load": str(number), "decision": "discarded"},
        {"step": "closed"},
    )
    for n, step in enumerate(steps):
        with played(at(kitchen, 12.1 + n / 10)):
            corrective.tell_step(store, kitchen, case, {**step, "who": "Ana"})
    _, data = pages(pack_here(store, kitchen), kitchen, monkeypatch=monkeypatch)
    (table,) = [s for s in data["sections"] if s["title"].startswith("Corrective actions")]
    text = "\n".join(" ".join(row) for row in table["rows"])
    for said in (
        "181 °F T7",
        "oil stood at 300 F",
        "2026-11-20 11:00-07:00 24 Bone-in",
        "discarded",
        "closed",
    ):
        assert said in text
    assert len(re.findall(r"2026-11-20 1\d:\d\d-07:00", text)) >= 8


def test_a_mistyped_reading_is_marked_and_still_shown(store, kitchen):
    """118 for 168: below, with its case. Put right by two people it stays in the pack, counted and marked."""
    reading, case = probe(store, kitchen, 12, "118")
    told = {"temp": "168", "words": "the key beside it", "who": "Ana"}
    with pytest.raises(InputError, match="somebody else"):
        mend_reading(store, kitchen, reading.number, told)
    with pytest.raises(InputError, match="somebody else"):
        mend_reading(store, kitchen, reading.number, {**told, "second": "ana"})
    with pytest.raises(InputError, match="came to be wrong"):
        mend_reading(store, kitchen, reading.number, {**told, "words": ""})
    right, none = mend_reading(store, kitchen, reading.number, {**told, "second": "Ben"})
    assert none is None and right.replaces == reading.number
    found = pack_here(store, kitchen)
    view = found.view
    (row,) = view.failing
    assert row.number == reading.number and row.mark.endswith(f"mistyped, see {right.number}")
    assert (view.below, view.readings) == (1, 2)
    assert "marked as mistyped 1" in dict(view.answer)["Readings below their limit"]
    header, rows = pack.tables(kitchen, found.told)["readings"]
    assert any(row[header.index("mark")].endswith(f"see {right.number}") for row in rows)
    with pytest.raises(InputError, match="nothing has replaced"):
        mend_reading(store, kitchen, reading.number, {**told, "second": "Ben"})
    step = {"who": "Ana", "step": "disposition", "disposition": "served"}
    assert corrective.tell_step(store, kitchen, case.number, step).fact.disposition == "served"


def test_a_mistyped_good_reading_that_was_below_opens_a_case(store, kitchen):
    """198 for 158: the right figure is below, and a case opens; no second person is asked."""
    reading, none = probe(store, kitchen, 12, "198")
    assert none is None
    right, case = mend_reading(
        store, kitchen, reading.number, {"temp": "158", "words": "9 for 5", "who": "Ana"}
    )
    assert case.fact.reading_number == right.number
    assert [r.number for r in view_of(store, kitchen).failing] == [right.number]


def test_a_mistyped_reading_counts_once(store, kitchen):
    """Loads and readings: what was put right is one reading, not two."""
    load = tap(DAY, "k", at_s=11 * 3600.0, fryer="alder", product="bone_in")
    form = {"fryer": "alder", "product": "bone_in", "thermometer": "T1", "who": "Ana", "temp": "198"}
    with played(at(kitchen, 12)):
        hall.write(store, load, at(kitchen, 11))
        reading, _ = tell_probe(store, kitchen, form)
    mend_reading(store, kitchen, reading.number, {"temp": "189", "words": "turned round", "who": "Ana"})
    assert view_of(store, kitchen).loads[0].readings == 1
    assert len(store.current_facts(Reading)) == 1


def test_hot_holding_below_its_limit_opens_a_case(store, kitchen):
    """135 °F and the thermometer's 2: 136 is short of 137 and told so; 140 is kept; the day's gap closes."""
    with played(at(kitchen, 11)):
        hall.write(store, tap(DAY, "k", fryer="alder", product="bone_in"))
    assert any("hot-holding" in g for g in view_of(store, kitchen).gaps)
    form = {"kept_in": "Cabinet 1", "product": "bone_in", "thermometer": "T1", "who": "Ana"}
    with played(at(kitchen, 12)):
        _, none = tell_hold(store, kitchen, {**form, "temp": "140"})
    with played(at(kitchen, 13)):
        reading, case = tell_hold(store, kitchen, {**form, "temp": "136"})
    assert none is None and case.fact.what == "hold"
    found = pack_here(store, kitchen)
    view = found.view
    assert not any("hot-holding" in g for g in view.gaps)
    (row,) = view.failing
    assert (row.number, row.read, row.case) == (reading.number, "136 °F", case.number)
    assert "Cabinet 1" in row.load
    with pytest.raises(InputError, match="cabinet or shelf"):
        tell_hold(store, kitchen, {**form, "temp": "140", "kept_in": ""})
    with pytest.raises(InputError, match="mark on the thermometer"):
        tell_hold(store, kitchen, {**form, "temp": "140", "thermometer": ""})


def test_a_contractors_report_is_attached_and_travels_with_the_pack(store, kitchen):
    """Without it the pack says so; with it the file is in the archive, byte for byte."""
    form = {
        "fryer": "alder",
        "task": "hood_clean",
        "who": "A contractor",
        "role": "licensed",
        "note": "tag 9",
    }
    day = today_of(kitchen)
    done = tick(store, kitchen, form)
    gap = f"without its report attached: entries {done.number}"
    assert any(gap in g for g in view_of(store, kitchen, first=day, last=day).gaps)
    kept = reports.attach_report(store, done.number, "../../certificate 9.pdf", io.BytesIO(PDF), "Ana")
    assert kept.fact.name == "certificate 9.pdf"
    assert not any("report attached" in g for g in view_of(store, kitchen, first=day, last=day).gaps)
    with zipfile.ZipFile(io.BytesIO(pack.csv_zip(store, kitchen, day, day))) as archive:
        assert archive.read(f"reports/{kept.number}-certificate 9.pdf") == PDF
    sent = hall.write(
        store, replace(kept.fact, name="../../../etc/x.pdf")
    )  # as a site may send it its office
    with zipfile.ZipFile(io.BytesIO(pack.csv_zip(store, kitchen, day, day))) as archive:
        assert f"reports/{sent.number}-x.pdf" in archive.namelist()
    for bad, number in ((b"MZ a program", done.number), (PDF, 1)):
        with pytest.raises(InputError):
            reports.attach_report(store, number, "x.pdf", io.BytesIO(bad), "Ana")


def test_rules_stand_by_name_and_edition(store, kitchen):
    """Of each product, of hot holding and of the oil, with the level readings are judged by."""
    rows = {row[0]: row[1:] for row in view_of(store, kitchen).rules}
    rule, level = rows["Bone-in chicken, 8-piece"]
    assert "US FDA Food Code, poultry: Food Code 2022" in rule
    assert level == "165 °F (167 °F with the thermometer's error)"
    assert rows["Hot holding"][1] == "135 °F (137 °F with the thermometer's error)"


@pytest.mark.slow
def test_the_archive_has_every_row_and_the_paper_says_what_it_left_out(store, kitchen, monkeypatch):
    """Five hundred readings: the printed part is those that matter and the lowest, and it says so."""
    for n in range(500):
        hall.write(
            store,
            Reading(
                name="x",
                thermometer="T1",
                core_c=80.0 + n % 9,
                limit_c=73.9,
                load="x",
                units_count=1.0,
                fryer="alder",
                product="bone_in",
            ),
            at(kitchen, 9 + n / 60),
        )
    found = pack_here(store, kitchen)
    _, data = pages(found, kitchen, monkeypatch=monkeypatch)
    (table,) = [s for s in data["sections"] if s["title"] == "Readings (500)"]
    assert "of 500 rows" in table["note"] and "readings.csv" in table["note"]
    assert len(table["rows"]) < 300
    with zipfile.ZipFile(io.BytesIO(pack.csv_zip(store, kitchen, DAY, DAY))) as archive:
        assert len(list(csv.reader(io.StringIO(archive.read("readings.csv").decode())))) == 501
        assert read_anchors(archive.read("anchor.txt").decode())[0].signed


def test_a_kitchen_elsewhere_with_nothing_stated(tmp_path, monkeypatch):
    """Metric, UK rules, no product, no permit: a pack in both languages, times with summer time's offset."""
    store, kitchen = opened(tmp_path / "o.db", OTHER)
    summer = dt.date(2026, 7, 4)
    with played(at(kitchen, 12, summer)):
        hall.write(store, tap(summer, "k", fryer="left", product="gone"), at(kitchen, 12, summer))
    for language in ("en", "es"):
        found = pack_here(store, kitchen, translator(language), summer, summer)
        view = found.view
        made, data = pages(found, kitchen, language, monkeypatch)
        assert data["paper"] == "a4" and len(made) >= 2
        assert view.loads[0].run_from == "2026-07-04 12:00+01:00"
        assert view.loads[0].product == "gone"
    assert any("63" in level for _, _, level in view.rules)


def test_a_pack_without_a_key_says_so(store, kitchen, tmp_path, monkeypatch):
    """A key that cannot be used refuses no pack; the pack says it carries no anchor and why."""
    monkeypatch.setenv(KEY_SETTING, str(tmp_path / "nowhere" / "x.key"))
    found = pack_here(store, kitchen)
    view = found.view
    _, data = pages(found, kitchen, monkeypatch=monkeypatch)
    assert view.anchor == "" and "carries no anchor" in data["anchor_words"]


def test_a_pack_tells_of_accounts_changed_behind_its_back(store, kitchen):
    """Somebody who stands in no entry is a gap of the pack."""
    with store.engine.begin() as connection:
        connection.exec_driver_sql("INSERT INTO account VALUES ('Mallory', 'owner', 'x', 'x', 1)")
    assert any("Somebody changed them" in g for g in view_of(store, kitchen).gaps)


def test_a_case_outside_the_probe_still_opens_once(store, kitchen):
    """A reading below its limit has one case, also after the figure was put right below the limit again."""
    reading, case = probe(store, kitchen, 12, "118")
    _, again = mend_reading(
        store, kitchen, reading.number, {"temp": "158", "words": "the key beside it", "who": "Ana"}
    )
    assert case is not None and again is None
    assert len(list(store.facts(CaseOpened))) == 1
    found = pack_here(store, kitchen)
    view = found.view
    assert [r.case for r in view.failing] == [case.number] * 2
    assert not any("without a corrective action" in g for g in view.gaps)


def test_of_many_readings_the_lowest_are_printed_and_of_equal_ones_the_newest(store, kitchen, monkeypatch):
    """In the order in which they were taken."""
    monkeypatch.setattr(pack_paper, "MOST_ROWS", 3)
    form = {"fryer": "alder", "product": "bone_in", "thermometer": "T1", "pieces": "16", "who": "Ana Lund"}
    for temp in ("190", "185", "195", "190", "190"):
        tell_probe(store, kitchen, {**form, "temp": temp}, at(kitchen, 12))
    told = gather(store, kitchen, DAY, DAY)
    sheet = next(s for s in SHEETS if s.fact is Reading)
    every = told.of(Reading)
    monkeypatch.setattr(type(told), "matters", lambda *_: False)
    chosen = pack_paper._chosen(told, sheet, every)
    assert [every.index(item) for item in chosen] == [1, 3, 4]
