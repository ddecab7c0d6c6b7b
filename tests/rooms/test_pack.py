"""The pack's tables: a column is a field of its fact, in the reader's language and the kitchen's units."""

from __future__ import annotations

import csv
import dataclasses
import datetime as dt
import io
import zipfile

import pytest

from frywright.calibrate.thermometer import CheckOutcome
from frywright.ledger.facts.columns import cell, heading
from frywright.ledger.facts.oil import OilDone, OilRefused
from frywright.ledger.facts.probing import CaseStep, Reading
from frywright.ledger.store import Store
from frywright.model.tongues import SOURCE, tongues
from frywright.rooms import hall
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.records import pack
from frywright.rooms.records.corrective import CAUSES, DECISIONS, DISPOSITIONS, STEPS
from frywright.rooms.records.pack_paper import pack_pdf
from frywright.rooms.records.rules import NO_HOLD_RULE, rule_rows
from frywright.voice.tongue import translator
from tests.demo import kitchen_store
from tests.house.words import translations
from tests.paper import words
from tests.rooms.taps import tap
from tests.web.test_probes import FISH_AND_WEDGES

READING = Reading(
    name="x", thermometer="P1", core_c=74.0, limit_c=73.9, load="x", units_count=8.0, checked=True
)


@pytest.mark.parametrize("sheet", pack.SHEETS, ids=lambda s: s.name)
def test_every_column_is_a_field_and_has_a_name_in_every_language(sheet):
    """A column that its fact does not have, or that stays English in another language, is found here."""
    fields = {f.name for f in dataclasses.fields(sheet.fact)}
    assert set(sheet.columns) <= fields
    for language in tongues():
        if language != SOURCE:
            known = translations(language)
            names = {heading(sheet.fact, c) for c in sheet.columns} | {
                "number",
                "business day",
                "time",
                "mark",
            }
            assert {n for n in names if not known.get(n)} == set()


@pytest.mark.parametrize("language", [key for key in tongues() if key != SOURCE])
def test_a_pack_speaks_one_language(language):
    """Outcomes of a check, names of tables and steps of a case each have a word, and reports are papers."""
    known = translations(language)
    words = [*map(str, CheckOutcome), *STEPS, *DISPOSITIONS, *DECISIONS, *CAUSES.values(), "holding"]
    tables = [sheet.name for sheet in pack.SHEETS if sheet.paper]
    assert [w for w in (*words, *tables) if not known.get(w) and not known.get(w.replace("_", " "))] == []
    assert known["reports"].casefold() == known["Reports"].casefold()


def test_a_pack_without_records_or_rules_says_so(tmp_path):
    """In a place whose holding rule nobody holds here, before the first load: no rule is named for holding,
    nothing is said to be in order, and tables without a record stand under a heading of their own.
    """
    store = Store.file(tmp_path / "p.db", now)
    text = FISH_AND_WEDGES.replace("[kitchen]", '[kitchen]\njurisdiction = "spain"', 1)
    remember_kitchen(store, text, "k.toml")
    kitchen = remembered_kitchen(store)
    rows = {row[0]: row for row in rule_rows(store, kitchen, dt.date(2026, 11, 27))}
    assert rows["Hot holding"][1:] == [NO_HOLD_RULE, "–"]
    told = pack.pack_of(store, kitchen, dt.date(2026, 11, 20), dt.date(2026, 11, 26))
    said = words(pack_pdf(kitchen, told))
    assert "Nothing stands out" not in said
    assert "No load and no reading: nothing to look at." in said
    assert "Tables with nothing on record" in said


def test_how_late_is_said_in_a_unit_that_people_read():
    """Minutes up to two hours, hours up to two days, then days."""
    assert pack._how_late(40 * 60.0, str) == "40 min late"
    assert pack._how_late(5 * 3600.0, str) == "5 h late"
    assert pack._how_late(3 * 86400.0, str) == "3 days late"


def test_names_drop_their_units_and_labels_win():
    """What a person reads has no unit in its name."""
    assert heading(Reading, "core_c") == "read"
    assert heading(Reading, "limit_c") == "limit"
    assert heading(CaseStep, "case_number") == "case"
    assert heading(OilDone, "raw") == "as typed"


def test_cells_are_in_the_kitchens_units_and_the_readers_words():
    """74 °C are 165 °F; yes is sí; what nobody said is empty; our words are translated, names are not."""
    spanish = translator("es")
    assert cell(READING, "core_c", "metric") == "74.0 °C"
    assert cell(READING, "core_c", "us") == "165 °F"
    assert cell(READING, "checked", "us", spanish) == "sí"
    assert cell(READING, "who", "us") == ""
    drop = tap(dt.date(2026, 11, 20), "k", who="drop")
    assert cell(drop, "what", "us", spanish) == spanish("drop") != "drop"
    assert cell(drop, "who", "us", spanish) == "drop"
    typed = OilRefused(raw={"vat": "alder", "amount": "140", "who": ""}, reason="no")
    assert cell(typed, "raw", "us") == "vat=alder amount=140"


def test_the_archive_speaks_the_readers_language(tmp_path):
    """Headers of the CSV tables and the gaps are Spanish in a Spanish pack."""
    store = kitchen_store(tmp_path / "p.db")
    kitchen, day = remembered_kitchen(store), dt.date(2026, 11, 20)
    moment = dt.datetime(2026, 11, 20, 19, tzinfo=dt.UTC)
    hall.write(store, tap(day, "a"), moment)
    hall.write(store, tap(day, "b", what="discard", reason="burnt"), moment)
    data = pack.csv_zip(store, kitchen, day, day, translator("es"))
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        cooks = list(csv.reader(io.StringIO(archive.read("cooks.csv").decode())))
        thrown = list(csv.reader(io.StringIO(archive.read("discards.csv").decode())))
        gaps = archive.read("gaps.txt").decode()
    assert cooks[0][:4] == [translator("es")(w) for w in ("number", "business day", "time", "mark")]
    assert "quién" in cooks[0] and "who" not in cooks[0]
    assert (len(cooks), len(thrown)) == (2, 2)
    assert translator("es")("burnt") in thrown[1]
    assert "Loads dropped" not in gaps and gaps.strip()
