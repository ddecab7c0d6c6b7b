"""The life of a program on pages: one step after the other by its button, on a kitchen of one's own."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from frywright.ledger.facts.cook import ProgramSaved
from frywright.ledger.facts.life import CardPrinted, ProgramKeyed, ProgramRetired, ServiceBegun
from frywright.model.errors import InputError
from frywright.rooms.cook.compare import value_names
from frywright.rooms.cook.life import lives, put_in_service, retire, tell_keyed
from frywright.rooms.cook.next_probing import keep_planned, next_probing
from frywright.rooms.cook.programs import record_proof, save_program
from frywright.rooms.kitchen import kitchen_number, kitchen_text, remember_kitchen, remembered_kitchen
from frywright.rooms.records import people
from frywright.rooms.thermometers import record_check
from frywright.trial.life import Step
from frywright.trial.machine import settings_of
from frywright.trial.proof import prove_program
from tests.browsers import browser
from tests.demo import kitchen_store

PASSWORD = "oak leaf river stone"
NAME = "fillets one"
OWN = """
[kitchen]
name = "Harbour hatch"
jurisdiction = "uk"
language = "en"
units = "metric"
altitude_m = 40

[[fryer]]
key = "one"
name = "Vat one"
kind = "open"
capacity_kg = 4
oil_mass_kg = 20
heater_kw = 12

[fryer.controller]
stage_count = 2
temp_step_c = 1
time_step_s = 5

[[product]]
key = "fillets"
name = "Fillets"
cut_set = "tenders"
coating = "dredge"
unit_mass_g = 45
start_temp_c = 4

[[program]]
name = "fillets one"
product = "fillets"
fryer = "one"

[[program.stage]]
set_c = 175
duration = "6:30"
"""


@pytest.fixture
def store(tmp_path):
    return kitchen_store(tmp_path / "l.db", OWN)


def next_step(store, name=NAME):
    found = lives(store, remembered_kitchen(store))[name]
    return found.next.step if found.next else None


def prove(store, name=NAME, samples=16):
    place = remembered_kitchen(store)
    told = prove_program(place, place.program(name), samples=samples)
    record_proof(store, told, kitchen_number(store))
    return told


def probe(store, temp="95 C", name=NAME):
    """Readings at the lift, as the plan asks for them, until they decide; by a checked thermometer."""
    record_check(store, remembered_kitchen(store), "T9", 0.0, 99.9)
    for _ in range(60):
        place = remembered_kitchen(store)
        found = next_probing(store, place, name)
        if found.state != "open":
            break
        piece = found.rows[0].piece
        typed = {"temp": temp, "thermometer": "T9", "cut": piece.cut, "place": piece.place}
        typed |= {"load_kind": piece.load, "load_number": "", "who": "Kim"}
        typed["last"] = str(found.readings[-1].kept.number if found.readings else 0)
        keep_planned(store, place, name, typed)
    assert found.state == "meets"


def read_back(client, store, name=NAME, time=""):
    """Type what the card says, or something else, into the read-back."""
    place = remembered_kitchen(store)
    program = place.program(name)
    form = {"program": name, "slot": "1", "read_by": "Kim", "checked_by": "Ana"}
    for i, v in enumerate(value_names(place, program, 1)):
        form[f"v{i}"] = time if time and v.what == "time" else v.text
    for s in settings_of(place, program):
        form[s.key] = s.card
    return client.post("/cook/readback", data=form)


def carry_on(client, store):
    """Every step before service."""
    assert prove(store).proof.holds
    probe(store)
    client.post("/cook/card", data={"program": NAME, "slot": "1"})
    client.post("/cook/keyed", data={"program": NAME, "who": "Kim"})
    assert "holds what the card says" in read_back(client, store).text


def test_one_step_after_the_other_by_its_button(client, store):
    """From the kitchen file to service: each act ends its step, and the page offers the next one only."""
    assert next_step(store) is Step.PROVEN
    assert 'action="/cook/desk/prove"' in client.get("/cook/changes", params={"program": NAME}).text
    assert prove(store).proof.holds
    assert next_step(store) is Step.PROBED
    probe(store)
    assert next_step(store) is Step.CARD
    page = client.post("/cook/card", data={"program": NAME, "slot": "1"})
    assert page.headers["content-type"] == "application/pdf"
    assert next_step(store) is Step.KEYED
    page = client.post("/cook/keyed", data={"program": NAME, "who": "Kim"})
    assert "Read it back" in page.text
    assert next_step(store) is Step.READ_BACK
    read_back(client, store)
    assert next_step(store) is Step.SERVICE
    page = client.post("/cook/service", data={"program": NAME, "who": "Olive"})
    assert "In service: every step stands." in page.text
    assert next_step(store) is None
    told = next(store.facts(ServiceBegun)).fact
    assert (told.who, told.proof_number > 0, told.readback_number > told.proof_number) == (
        "Olive",
        True,
        True,
    )
    assert [e.fact.slot for e in store.facts(CardPrinted)] == [1]


def test_service_is_refused_with_all_that_is_missing(client, store):
    """Typed by hand into the form of somebody who knows the address; nothing is written."""
    answer = client.post("/cook/service", data={"program": NAME, "who": "Olive"})
    assert answer.status_code == 422
    assert "proven by simulation; probed; card printed; keyed; read back" in answer.text
    assert not list(store.facts(ServiceBegun))


def test_nothing_is_keyed_without_its_card_or_by_nobody(client, store):
    answer = client.post("/cook/keyed", data={"program": NAME, "who": "Kim"})
    assert (answer.status_code, "printed first" in answer.text) == (422, True)
    client.post("/cook/card", data={"program": NAME, "slot": "1"})
    assert prove(store).proof.holds
    probe(store)
    answer = client.post("/cook/keyed", data={"program": NAME, "who": " "})
    assert (answer.status_code, 'aria-invalid="true"' in answer.text) == (422, True)
    assert not list(store.facts(ProgramKeyed))


def test_a_changed_kitchen_undoes_service_and_a_new_proof_alone_does_not_give_it_back(client, store):
    """The thermostat swings wider: prove again with both margins on the page, probe again, decide again."""
    carry_on(client, store)
    client.post("/cook/service", data={"program": NAME, "who": "Olive"})
    changed = kitchen_text(store).replace("heater_kw = 12", "heater_kw = 10\nswing_c = 9")
    remember_kitchen(store, changed, "own.toml", "new thermostat")
    assert next_step(store) is Step.PROVEN
    page = client.get("/cook/changes", params={"program": NAME}).text
    assert re.search(r"Prove again: .*new thermostat.*Predicted .* before, .* now", page)
    assert prove(store).proof.holds
    assert next_step(store) is Step.PROBED
    probe(store)
    assert next_step(store) is Step.SERVICE
    client.post("/cook/service", data={"program": NAME, "who": "Olive"})
    assert next_step(store) is None


def test_a_wrong_read_back_takes_it_out_of_service_until_somebody_decides(client, store):
    carry_on(client, store)
    client.post("/cook/service", data={"program": NAME, "who": "Olive"})
    assert "differs from the card" in read_back(client, store, time="5:30").text
    assert next_step(store) is Step.READ_BACK
    read_back(client, store)
    assert next_step(store) is Step.SERVICE


def test_a_new_version_begins_anew_and_the_fryer_still_holds_the_old_one(client, store):
    carry_on(client, store)
    place = remembered_kitchen(store)
    program = place.program(NAME)
    longer = replace(program, version=2, stages=(replace(program.stages[0], duration_s=400.0),))
    save_program(store, place, longer, origin="designed")
    life = lives(store, remembered_kitchen(store))[NAME]
    assert life.next.step is Step.PROVEN
    assert life.wrong
    assert next(store.facts(ProgramSaved)).fact.origin == "designed"
    assert "The fryer still holds version 1" in client.get("/cook/changes", params={"program": NAME}).text


def test_a_retired_program_leaves_day_cards_and_now_and_keeps_its_reason(client, store):
    """The reason is asked; it stays on its page, last on the desk."""
    answer = client.post("/cook/retire", data={"program": NAME, "who": "Olive", "reason": " "})
    assert (answer.status_code, "why it is not used any more" in answer.text) == (422, True)
    form = {"program": NAME, "who": "Olive", "reason": "off the menu"}
    assert "off the menu" in client.post("/cook/retire", data=form).text
    assert remembered_kitchen(store).own_programs == ()
    assert NAME not in client.get("/").text
    assert "off the menu" in client.get("/cook/desk").text
    with pytest.raises(InputError, match="one that is in use"):
        retire(store, remembered_kitchen(store), NAME, "Olive", "twice")
    assert len(list(store.facts(ProgramRetired))) == 1


def test_who_may_not_decide_is_offered_no_form(store):
    """The crew keys and reads back; service and retirement are the owner's."""
    people.add_account(store, "Olive", "owner", PASSWORD)
    people.add_account(store, "Cory", "crew", PASSWORD)
    prove(store)
    probe(store)
    crew = browser(store)
    crew.cookies.set("session", people.sign_in(store, "Cory", PASSWORD, "t", people.Tries()))
    page = crew.get("/cook/changes", params={"program": NAME}).text
    assert "/cook/retire" not in page
    for path in ("/cook/service", "/cook/retire"):
        assert crew.post(path, data={"program": NAME, "who": "Cory", "reason": "mine"}).status_code == 403


def test_an_unknown_program_and_a_nameless_decision_are_refused(store):
    place = remembered_kitchen(store)
    for act in (put_in_service, tell_keyed):
        with pytest.raises(InputError, match="one of: fillets one"):
            act(store, place, "nuggets", "Olive")
        with pytest.raises(InputError, match="name of the person"):
            act(store, place, NAME, "")
