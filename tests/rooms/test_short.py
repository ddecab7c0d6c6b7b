"""A program that is predicted short is red and locked at every door; wedges and fish say the same
everywhere.
"""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.facts.cook import ShortCardPrinted
from frywright.model.errors import InputError
from frywright.model.plain import plain
from frywright.rooms.cook.cards import card_data, card_pdf, site_cards_pdf
from frywright.rooms.cook.compare import read_back
from frywright.rooms.cook.desk import design_program, program_rows
from frywright.rooms.cook.programs import keep_simulation, record_proof, save_program, unanswered
from frywright.rooms.cook.readbacks import tell_readback
from frywright.rooms.cook.told import cook_told
from frywright.rooms.cook.view import cook_view
from frywright.rooms.fleet import release
from frywright.rooms.kitchen import kitchen_number, remembered_kitchen
from frywright.trial.ask import CookRequest, ask, edit_program
from frywright.trial.kitchens import demo_text
from frywright.trial.predicted import Answerer, facts_told, program_facts, show_facts
from frywright.trial.proof import proof_view, prove_program
from frywright.voice.tongue import translator
from tests.browsers import browser
from tests.demo import kitchen_store
from tests.paper import pages, words

WHO = Answerer(by="Kim Vale", reason="trial with the inspector")
FORM = {
    "program": "bone-in alder",
    "s0_set": "335",
    "s0_value": "0:40",
    "s1_set": "310",
    "s1_lid": "pressure",
    "s1_value": "2:00",
    "s2_set": "325",
    "s2_value": "1:00",
}
SPOKEN = {"by": WHO.by, "reason": WHO.reason}


@pytest.fixture
def raw(kitchen):
    """The demo's pressure program with its long stage cut to two minutes."""
    good = kitchen.program("bone-in alder")
    return edit_program(good, [good.stages[0], replace(good.stages[1], duration_s=120.0), good.stages[2]])


@pytest.fixture
def with_raw(kitchen, raw):
    return replace(kitchen, programs=(*kitchen.programs, raw))


@pytest.fixture
def client(store):
    return browser(store, page=True)


def test_the_raw_program_is_short_and_the_good_one_over(kitchen, raw):
    """Signed and in the kitchen's unit; neither is proven."""
    good, bad = (show_facts(program_facts(kitchen, p), "us") for p in (kitchen.program("bone-in alder"), raw))
    assert (good.state, good.short, good.word) == ("over", False, "over")
    assert (bad.state, bad.short, bad.word) == ("short", True, "short")
    assert good.amount.startswith("+")
    assert bad.amount.startswith("−")
    assert bad.amount.endswith("°F")
    assert not good.proven
    assert "probe log" in good.evidence
    assert show_facts(program_facts(kitchen, raw), "metric").amount.endswith(" °C")


def test_saving_a_short_program_needs_a_name_and_a_reason(store, kitchen, raw):
    """Refused without; with both, the entry says who and why, and the program reads back from it."""
    for who in (
        Answerer(),
        Answerer(by="Kim Vale"),
        Answerer(reason="because I say so"),
        Answerer(by=" ", reason="    "),
    ):
        with pytest.raises(InputError, match="somebody must answer"):
            save_program(store, kitchen, raw, who)
    kept = save_program(store, kitchen, raw, WHO).fact.short
    assert (kept.by, kept.reason) == (WHO.by, WHO.reason)
    assert kept.margin_k == program_facts(kitchen, raw).margin_k
    assert remembered_kitchen(store).program("bone-in alder") == raw
    cedar = kitchen.program("bone-in cedar")
    longer = edit_program(cedar, [replace(cedar.stages[0], duration_s=cedar.stages[0].duration_s + 30.0)])
    saved = save_program(store, kitchen, longer)
    assert saved.fact.short is None
    assert "short" not in saved.fact.payload()


def short_file():
    """The demo's file with a program cut in the file itself."""
    good = 'duration = "10:20"'
    text = demo_text()
    assert good in text
    return text.replace(good, 'duration = "2:00"', 1)


def test_a_short_program_of_the_kitchen_file_is_named_and_locked(tmp_path):
    """The desk names it until somebody answers for its card; no card without, no read-back at all."""
    store = kitchen_store(tmp_path / "f.db", short_file())
    page = browser(store, page=True)
    name = "bone-in alder"
    desk = page.get("/cook/desk").text
    assert f"▼ {name}, version 3: predicted" in desk
    assert "nobody answers for it" in desk
    assert "nadie responde por él" in page.get("/cook/desk?lang=es").text
    page.get("/cook/desk?lang=en")
    assert page.get("/cook/card.pdf", params={"program": name}).status_code == 422
    read = page.get("/cook/readback", params={"program": name})
    assert (read.status_code, 'name="v0"' in read.text) == (422, False)
    printed = page.post(f"/cook/card.pdf?program={name}", data={"by": WHO.by, "reason": WHO.reason})
    assert printed.headers["content-type"] == "application/pdf"
    assert "nobody answers for it" not in page.get("/cook/desk").text
    assert page.get("/cook/readback", params={"program": name}).status_code == 422


def test_a_sound_kitchen_has_nothing_to_answer_for(store, kitchen, raw):
    """The demo names none; a short version saved with name and reason is answered for, one without is not."""
    assert unanswered(store, kitchen) == []
    save_program(store, kitchen, raw, WHO)
    assert unanswered(store, remembered_kitchen(store)) == []
    assert (
        len(unanswered(store, replace(kitchen, programs=(*kitchen.programs, replace(raw, version=9))))) == 1
    )


def test_a_proof_that_is_short_locks_a_program_whose_full_load_is_over(store, kitchen, raw):
    """The shortest of what was seen speaks."""
    good = replace(kitchen.program("bone-in cedar"), version=2)
    with pytest.raises(InputError, match="somebody must answer"):
        save_program(store, kitchen, good, Answerer(), program_facts(kitchen, raw))


def test_a_proof_that_failed_locks_its_version_until_one_holds(store, client, kitchen):
    """Over at a full load and short in the worst case: red on the desk, no card without a name, no read-back;
    the next version is free, and a proof that holds frees this one.
    """
    name = "bone-in alder"
    good = kitchen.program(name)
    failed = replace(prove_program(kitchen, good, samples=16), program=good)
    proof = failed.proof
    low = replace(proof, cuts=tuple(replace(c, worst_margin_k=-4.0) for c in proof.cuts))
    record_proof(store, replace(failed, proof=low), kitchen_number(store))
    place = remembered_kitchen(store)
    told = show_facts(program_facts(place, good), "us")
    assert (told.word, told.amount) == ("short", "−7.2 °F")
    assert "worst case simulated" in told.predicted
    with pytest.raises(InputError, match="somebody must answer"):
        card_data(place, good, 1, "en", str)
    assert card_data(place, good, 1, "en", str, WHO).stamp == "SHORT BY 7.2 °F"
    assert client.get("/cook/readback", params={"program": name}).status_code == 422
    assert "nobody answers for it" in client.get("/cook/desk").text
    assert not program_facts(place, replace(good, version=good.version + 1)).short
    held = replace(proof, cuts=tuple(replace(c, worst_margin_k=1.0) for c in proof.cuts))
    record_proof(store, replace(failed, proof=held), kitchen_number(store))
    assert not program_facts(remembered_kitchen(store), good).short
    assert client.get("/cook/readback", params={"program": name}).status_code == 200


def test_keeping_a_short_simulation_needs_a_name_and_a_reason(store, kitchen, raw):
    """The simulation's entry carries both; a load that is short in itself is locked too."""
    with pytest.raises(InputError, match="somebody must answer"):
        keep_simulation(store, kitchen, ask(kitchen, CookRequest(program=raw)))
    cold = ask(
        kitchen, CookRequest(program=kitchen.program("bone-in alder"), oil_start_c=60.0, start_temp_c=-1.0)
    )
    assert cold.facts.short
    with pytest.raises(InputError, match="somebody must answer"):
        keep_simulation(store, kitchen, cold)
    assert keep_simulation(store, kitchen, cold, WHO).fact.short.by == WHO.by


@pytest.mark.slow
@pytest.mark.parametrize(("language", "stamp"), [("en", "SHORT BY "), ("es", "NO LLEGA: FALTAN ")])
def test_the_card_of_a_short_program_has_short_across_it(kitchen, with_raw, raw, language, stamp):
    """Only with a name; the word and the amount are on the sheet itself, one page, and not on a good card."""
    tr = translator(language)
    for paper in (
        lambda: card_pdf(card_data(with_raw, raw, 1, language, tr)),
        lambda: site_cards_pdf(with_raw, {language: tr}),
    ):
        with pytest.raises(InputError, match="somebody must answer"):
            paper()
    amount = show_facts(program_facts(kitchen, raw), "us").amount.lstrip("−")
    sheet = card_pdf(card_data(with_raw, raw, 1, language, tr, WHO))
    assert pages(sheet) == 1
    told = words(sheet)
    across = (stamp + amount).replace(" ", "")  # across the sheet, in two faces
    assert across in told.replace(" ", "")
    assert WHO.by in told
    assert WHO.reason in told
    assert stamp not in words(card_pdf(card_data(kitchen, kitchen.program("bone-in alder"), 1, language, tr)))
    site = site_cards_pdf(with_raw, {language: tr}, WHO)
    assert words(site).replace(" ", "").count(across) == 1
    assert pages(site) == len({p.name for p in with_raw.programs})


def test_read_back_of_a_short_program_is_refused(store, kitchen, with_raw, raw):
    """By every way in: the comparison itself, the interface for programs, and a release."""
    with pytest.raises(InputError, match="before a machine is keyed"):
        read_back(with_raw, raw, 1, ["3:40", "335", "310", "3:00", "325", "1:00", "0", "0:00"])
    with pytest.raises(InputError, match="before a machine is keyed"):
        tell_readback(store, with_raw, raw.name, 1, [], ("Kim", "Ana"))
    with pytest.raises(InputError, match="before a machine is keyed"):
        release.open_release(store, with_raw, raw.name, ["one"], "Kim Vale")
    assert list(store.entries("readback")) == []


def test_the_pages_lock_a_short_program(client, store):
    """Cook shows it red and asks who answers; one click saves nothing; the desk says short; print and
    read-back are shut.
    """
    page = client.get("/cook", params=FORM).text
    assert "▼" in page
    assert 'class="headline short short"' in page
    assert 'id="lock" hidden' not in page
    assert 'id="lock" hidden' in client.get("/cook", params={"program": "bone-in alder"}).text
    for path in ("/cook/save", "/cook/keep"):
        refused = client.post(path, data=FORM)
        assert refused.status_code == 422
        assert "somebody must answer" in refused.text
    assert remembered_kitchen(store).program("bone-in alder").version == 3
    assert client.post("/cook/save", data={**FORM, **SPOKEN}).status_code == 200
    assert (
        "unknown"
        not in client.get("/cook", params={"program": "bone-in alder"}).text.split('id="ask"')[0].lower()
    )
    row = client.get("/cook/desk").text.split('aria-label="bone-in alder"')[1].split("</article>")[0]
    assert "▼" in row
    assert "°F" in row
    assert "−" in client.get("/cook/changes", params={"program": "bone-in alder"}).text
    shut = client.get("/cook/readback", params={"program": "bone-in alder"})
    assert shut.status_code == 422
    assert "lengthen the program" in shut.text
    assert 'name="v0"' not in shut.text
    typed = {"program": "bone-in alder", "v0": "3:40", "read_by": "Kim", "checked_by": "Ana"}
    tried = client.post("/cook/readback", data=typed)
    assert "✔" not in tried.text
    assert tried.status_code == 422


@pytest.mark.slow
def test_the_pages_print_a_short_program_only_for_somebody(client, store, kitchen, raw):
    """Asked first, recorded then; all cards as well; a good card stays one click."""
    save_program(store, kitchen, raw, WHO)
    assert client.get("/cook/card.pdf", params={"program": "bone-in cedar"}).content.startswith(b"%PDF")
    for path in ("/cook/card.pdf?program=bone-in+alder", "/cook/cards.pdf"):
        asked = client.get(path)
        assert asked.status_code == 422
        assert "who answers" in asked.text
        assert client.post(path, data={"by": "Kim Vale"}).status_code == 422
    assert list(store.entries("short_card")) == []
    for path in ("/cook/card.pdf?program=bone-in+alder", "/cook/cards.pdf"):
        sheet = client.post(path, data=SPOKEN)
        assert "SHORT BY" in words(sheet.content)
    kept = [e.fact for e in store.facts(ShortCardPrinted)]
    assert [(p.name, p.version, p.short.by) for p in kept] == [("bone-in alder", 4, WHO.by)] * 2


WEDGES = "No rule here for this food. House target 185 °F: predicted"


def test_wedges_say_the_same_everywhere(client, kitchen):
    """Page, proof, card, JSON and desk: no rule here, the house target, and how much over it."""
    program = kitchen.program("wedges cedar")
    card = card_data(kitchen, program, 1, "en", str)
    proof = proof_view(prove_program(kitchen, program, samples=16), "us")
    rows = {r.name: r.facts for r in program_rows(_store(client), kitchen)}
    view = cook_view(ask(kitchen, CookRequest(program=program)), "us")
    told = [view.facts, card.facts, proof.facts, rows["wedges cedar"]]
    for facts in told:
        assert facts.state == "no_rule"
        assert facts.word == "no rule here"
        assert facts.predicted.startswith(WEDGES)
        assert not facts.proven
    assert card.banner.startswith(WEDGES)
    assert "Not for service" not in card.banner
    assert "Food Code" not in json.dumps(plain(proof))
    assert cook_told(ask(kitchen, CookRequest(program=program))).facts.state == "no_rule"
    assert WEDGES in client.get("/cook", params={"program": "wedges cedar"}).text


def _store(client):
    return client.app.state.context.store


def test_without_a_house_target_there_is_nothing_to_prove_against(kitchen):
    """Page, card and proof say no rule and why, with no margin; a design asks for the target instead of
    borrowing the poultry rule.
    """
    bare = replace(kitchen, products=tuple(replace(p, house_core_c=None) for p in kitchen.products))
    card = card_data(bare, bare.program("wedges cedar"), 1, "en", str)
    assert card.banner.startswith("No rule here for this food: the Food Code names raw animal foods only")
    assert card.stamp == ""
    proof = proof_view(prove_program(bare, bare.program("wedges cedar"), samples=16), "us")
    assert proof.facts == facts_told(program_facts(bare, bare.program("wedges cedar")), "us")
    assert proof.facts.amount == ""
    with pytest.raises(InputError, match="house core is missing"):
        design_program(bare, "wedges", "cedar")


FISH = """
[kitchen]
name = "Pier kitchen (invented)"
invented = true
altitude_m = 5
jurisdiction = "{place}"
units = "metric"

[[fryer]]
key = "north"
name = "North vat"
kind = "open"
capacity_kg = 3
oil = "sunflower_ho"
oil_mass_kg = 21
heater_kw = 11

[[product]]
key = "fish"
name = "Fish fillets"
cut_set = "fish"
coating = "batter"
start_temp_c = 4

[[program]]
name = "fish north"
product = "fish"
fryer = "north"

[[program.stage]]
set_c = 178
duration = "{time}"
"""


@pytest.mark.parametrize(
    ("place", "title", "state"),
    [
        ("us_food_code_2022", "Food Code 2022, fish", None),
        ("uk", "70 degC for 2 min or equivalent", None),
        ("us_fsis_inspected", "", "no_rule"),
    ],
)
def test_fish_is_judged_by_the_rule_of_its_place(place, title, state):
    """Fresh metric kitchen: twenty seconds of frying are short, nine minutes over; where no rule speaks of
    fish it says so.
    """
    for time, sign in (("0:20", "short"), ("9:00", "over")):
        kitchen = parse_kitchen(FISH.format(place=place, time=time))
        facts = program_facts(kitchen, kitchen.program("fish north"))
        assert str(facts.prediction) == (state or sign)
        assert facts.title == title
        assert show_facts(facts, "metric").amount.endswith(" °C") == (state is None)


def test_two_facts_in_spanish(client):
    """No English word of the two facts on the Spanish page, and not the one word."""
    page = client.get("/cook", params={**FORM, "lang": "es"}).text.split('id="ask"')[0]
    assert "no llega" in page
    assert "aún no probado" in page
    for word in ("desconocido", "short of", "not proven", "Predicted"):
        assert word not in page
