"""Procedure cards become the kitchen's own without losing a hazard, carry pictures, and are signed by two."""

from __future__ import annotations

import io

import pytest

from frywright.ledger.facts.care import CardSigned, CardWritten
from frywright.model.business_day import local_time
from frywright.model.errors import InputError
from frywright.rooms.care import procedures
from frywright.rooms.kitchen import remembered_kitchen
from frywright.voice.tongue import translator
from tests import paper
from tests.demo import kitchen_store
from tests.rooms.test_commissioning import png
from tests.web.test_probes import FISH_AND_WEDGES


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def edit(store, key="closing", language="en", **more):
    """The card saved as it stands, with changes."""
    card = procedures.card_of(store, key, language)
    values = {
        "key": key,
        "language": language,
        "gear": card.gear,
        "tools": card.tools,
        "steps": procedures.lines_of(card),
        "who": "Ana Lund",
        "version": str(card.version),
    }
    return procedures.save_card(store, {**values, **more}, more.pop("photo", None))


def test_a_card_becomes_the_kitchens_own(store, kitchen):
    """A step added and the order changed: the next version, in that language only; older ones stay on record;
    it prints with its picture.
    """
    lines = procedures.lines_of(procedures.card_of(store, "closing")).splitlines()
    edit(store, steps="\n".join(["Tell the lead that you begin.", *lines]))
    card = procedures.card_of(store, "closing")
    assert card.version == 1
    assert card.steps[0] == ("Tell the lead that you begin.", "")
    assert procedures.card_of(store, "closing", "es").version == 0
    assert procedures.card_view(store, kitchen, "closing").elsewhere == ""
    assert "English" in procedures.card_view(store, kitchen, "closing", "es").elsewhere
    spanish = paper.words(procedures.procedure_pdf(store, kitchen, "closing", "es", translator("es")))
    assert "Escrita solo en English" in " ".join(spanish.split())
    edit(store, photo=io.BytesIO(png()), picture_step="2")
    assert procedures.card_of(store, "closing").pictures.keys() == {1}
    data = procedures.procedure_pdf(store, kitchen, "closing", "en", translator("en"))
    assert b"/Image" in data
    assert len(list(store.facts(CardWritten))) == 2


def test_no_hazard_is_lost(store):
    """Dropping one is refused; moving it to another step is not; nor are empty cards, nameless editors or
    stale versions kept.
    """
    lines = procedures.lines_of(procedures.card_of(store, "boil_out"))
    assert procedures.HAZARD_MARK in lines
    bare = "\n".join(line.split(procedures.HAZARD_MARK)[0] for line in lines.splitlines())
    with pytest.raises(InputError, match="kept with a step"):
        edit(store, "boil_out", steps=bare)
    hazards = " ".join(
        line.split(procedures.HAZARD_MARK)[1] for line in lines.splitlines() if procedures.HAZARD_MARK in line
    )
    assert hazards
    for bad in (
        {"steps": ""},
        {"steps": "x\n" * 21},
        {"who": ""},
        {"gear": ""},
        {"version": "7"},
        {"steps": "y" * 201},
    ):
        with pytest.raises(InputError):
            edit(store, "closing", **bad)
    with pytest.raises(InputError):
        edit(store, photo=io.BytesIO(png()), picture_step="99")
    with pytest.raises(InputError):
        edit(store, photo=io.BytesIO(b"no picture"), picture_step="1")
    assert not store.current_facts(CardWritten)


def test_sign_off_takes_two_and_carries_its_evidence(store, kitchen):
    """One person is not two; the entry names card, version, fryer and photo; the view lists it."""
    told = {"key": "lid_seal", "fryer": "alder", "who": "Ana Lund", "second": "Ben Roe"}
    for bad in ({"second": "ana lund"}, {"who": ""}, {"fryer": "elm"}, {"key": "dancing"}):
        with pytest.raises(InputError):
            procedures.sign_card(store, kitchen, {**told, **bad})
    kept = procedures.sign_card(store, kitchen, told, io.BytesIO(png())).fact
    assert (kept.key, kept.version, kept.fryer, len(kept.photo)) == ("lid_seal", 0, "alder", 64)
    signed = procedures.card_view(store, kitchen, "lid_seal").signed[0]
    assert (signed["second"], signed["name"]) == ("Ben Roe", "Alder, three-head pressure vat")
    assert str(signed["at"]) == local_time(kitchen, next(store.facts(CardSigned)).recorded_at)
    assert str(signed["at"]).endswith("-07:00"), "by the kitchen's clock"


def test_a_lost_picture_leaves_its_slot_empty(store, kitchen, tmp_path):
    """The file deleted beside the store: the card still prints."""
    edit(store, photo=io.BytesIO(png()), picture_step="1")
    for file in (tmp_path / "demo.db.files").iterdir():
        file.unlink()
    assert procedures.procedure_pdf(store, kitchen, "closing", "en").startswith(b"%PDF")


@pytest.mark.parametrize("key", ["filter_turn", "oil_change", "seat_parts", "drain"])
def test_hot_oil_has_its_cards(store, kitchen, key):
    """Each says what is worn, names two people or a second one, and puts a hazard to its steps; one page."""
    card = procedures.card_of(store, key)
    assert "second person" in f"{card.tools} {procedures.lines_of(card)}"
    assert sum(bool(hazard) for _, hazard in card.steps) >= 3
    for language in ("en", "es"):
        data = procedures.procedure_pdf(store, kitchen, key, language, translator(language))
        assert paper.pages(data) == 1


def test_the_lid_seal_card_is_for_pressure_fryers(store, kitchen):
    """An open fryer has none to sign for."""
    signed = {"key": "lid_seal", "language": "en", "who": "Ana Lund", "second": "Ben Roe"}
    with pytest.raises(InputError, match="no lid seal"):
        procedures.sign_card(store, kitchen, {**signed, "fryer": "cedar"})
    procedures.sign_card(store, kitchen, {**signed, "fryer": "alder"})


@pytest.mark.parametrize(("units", "said", "not_said"), [("us", "120 °F", "°C"), ("metric", "49,0 °C", "°F")])
def test_a_card_has_the_kitchens_unit_alone(tmp_path, units, said, not_said):
    """When oil may be moved: one figure, on paper with the mark of its language."""
    text = FISH_AND_WEDGES.replace('units = "metric"', f'units = "{units}"\naltitude_m = 2000')
    own = kitchen_store(tmp_path / "k.db", text)
    here = remembered_kitchen(own)
    words = paper.words(procedures.procedure_pdf(own, here, "oil_change", "es", translator("es")))
    assert said in words and not_said not in words
    step = procedures.card_of(own, "oil_change", "en").steps[0][0]
    assert said.replace(",", ".") in step and not_said not in step and "{" not in step
