"""Every card is read as text: what a crew needs stands on it, in both languages, for any kitchen."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.design.controller import render
from frywright.ledger.facts.cook import SlotChosen
from frywright.ledger.store import Store
from frywright.model.fryer import ClockStyle
from frywright.model.units import clock
from frywright.rooms.clock import Hall, acting, now
from frywright.rooms.cook.cards import CAUTIONS, FOOT, MINUTES, RULES, Approved, card_data, card_pdf
from frywright.rooms.cook.life import approvals, keep_card
from frywright.rooms.cook.programs import save_program
from frywright.rooms.cook.slots import tell_slot
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.standing import slot_of
from frywright.trial.ask import edit_program
from frywright.trial.kitchens import demo_kitchen, demo_text
from frywright.voice.tongue import translator
from tests import paper
from tests.browsers import browser
from tests.demo import kitchen_store
from tests.rooms.test_settings import OWN

PROGRAMS = [p.name for p in demo_kitchen().programs]


def plain(text: str) -> str:
    return re.sub(r"\s+", " ", text)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("name", PROGRAMS)
def test_the_words_of_every_demo_card(kitchen, name, language):
    """Place, altitude, load, weight, start temperature, program, version, units, rule, every value keyed,
    drain, hold, approval, cautions, page: all on one page.
    """
    tr, program = translator(language), kitchen.program(name)
    fryer = kitchen.fryer(program.fryer)
    data = card_pdf(card_data(kitchen, program, 1, language, tr))
    said = paper.words(data)
    assert paper.pages(data) == 1
    wanted = [
        kitchen.product(program.product).name,
        fryer.name,
        program.name,
        "Juniper Ridge Chicken (invented), 5,420 ft",
        "38 °F" if "wedges" not in name else "40 °F",
        f"{tr('version')} {program.version}",
        f"{tr('slot')} 1",
        "(°F)",
        tr(MINUTES),
        tr(RULES[fryer.controller.clock.counts_down]),
        tr("Drain {drain}. Hold at most {hold} min.").format(
            drain=clock(program.drain_s), hold=f"{program.hold_life_s / 60:g}"
        ),
        tr("Approved by ____________ on ____________"),
        tr(CAUTIONS["drop"]),
        tr(CAUTIONS["lift"]),
        tr(FOOT),
        "1 / 1",
        render(program, fryer.controller, 1).figure,
        *(v.text for v in render(program, fryer.controller, 1).values if v.what != "lid"),
    ]
    for text in wanted:
        assert plain(text) in said, text
    assert (tr(CAUTIONS["lid"]) in said) is program.under_pressure
    load = {"bone-in alder": "3 × ", "bone-in birch": "5 × ", "bone-in cedar": "3 × "}.get(name, "")
    assert load in said and " lb)" in said
    assert {"bone-in alder": "6.90 lb", "bone-in birch": "11.5 lb"}.get(name, "") in said


def test_a_load_of_many_pieces_is_whole(kitchen):
    """8 lb of wedges of 1.1 oz are 116.4 pieces: nobody counts to .4, and 117 would be too many."""
    data = card_data(kitchen, kitchen.program("wedges cedar"), 1, "en", str)
    assert data.load == "Load at most 116 × piece (8.00 lb), each 1.1 oz, 40 °F at the drop."


@pytest.mark.parametrize(
    ("style", "rows"),
    [
        ("left", [["1", "335", "12:00"], ["2", "310", "11:20"], ["3", "325", "1:00"], ["4", "0", "0:00"]]),
        ("waits", [["1", "335", "12:00"], ["2", "310", "11:20"], ["3", "325", "1:00"], ["4", "0", "0:00"]]),
        (
            "elapsed",
            [
                ["1", "335", "0:00", "0:40"],
                ["2", "310", "0:40", "11:00"],
                ["3", "325", "11:00", "12:00"],
                ["4", "0", "–", "0:00"],
            ],
        ),
    ],
)
def test_one_rule_for_rows(kitchen, style, rows):
    """Whatever the clock does, a row's first time is the one at which its stage begins, and it says so."""
    alder = kitchen.fryer("alder")
    fryer = replace(alder, controller=replace(alder.controller, clock=ClockStyle(style)))
    there = replace(kitchen, fryers=tuple(fryer if f.key == "alder" else f for f in kitchen.fryers))
    program = there.program("bone-in alder")
    data = card_data(there, program, 1, "en", str)
    assert [row[:-1] for row in data.rows] == rows
    assert len(data.header) == len(data.rows[0])
    starts, begun = [row[2] for row in rows[:3]], 0.0
    for start, length in zip(starts, program.durations_s(), strict=True):
        at = begun if style == "elapsed" else program.clock_s - begun
        assert start == clock(at)
        begun += length
    keyed = {v.text for v in render(program, fryer.controller).values if v.what in ("time", "total")}
    assert keyed <= {cell for row in data.rows for cell in row}
    assert data.rule.startswith("A row starts when ")


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_card_of_another_kitchen(language):
    """Metric, at the sea, a clock that waits, a bird weight nobody told: kilograms and degC, on one page."""
    kitchen, tr = parse_kitchen(OWN), translator(language)
    data = card_pdf(card_data(kitchen, kitchen.program("pollo uno"), 1, language, tr))
    said = paper.words(data)
    assert paper.pages(data) == 1
    start = {"en": "4.0 °C", "es": "4,0 °C"}[language]
    for text in ("Puesto de la playa (inventado), 40 m", "4 × ", " kg)", start, "(°C)", "13:00", "165"):
        assert text in said, text
    assert "°F" not in said and " lb" not in said and " oz" not in said


def test_who_stands_behind_a_version(tmp_path):
    """Nobody: a line to sign. Saved under a name: by whom, and a line. In service: by whom and when."""
    store = kitchen_store(tmp_path / "a.db")
    kitchen = remembered_kitchen(store)
    old = kitchen.program("bone-in cedar")
    assert approvals(store, kitchen) == {}
    with acting(Hall(author="Ana Vale")):
        longer = [replace(s, duration_s=s.duration_s + 30) for s in old.timed().stages]
        save_program(store, kitchen, edit_program(old, longer))
    found = approvals(store, remembered_kitchen(store))
    assert set(found) == {"bone-in cedar"}
    approved = found["bone-in cedar"]
    assert (approved.by, approved.in_service) == ("Ana Vale", False)
    program = remembered_kitchen(store).program("bone-in cedar")
    data = card_data(kitchen, program, 1, "en", str, approved=approved)
    assert data.approved == f"Saved by Ana Vale, {approved.at}. Approved by ____________"
    served = Approved(by="Kim", at="2026-11-20", in_service=True)
    told = card_data(kitchen, program, 1, "es", translator("es"), approved=served).approved
    assert told == "Aprobado por Kim, 2026-11-20."


def test_a_slot_is_chosen_on_the_page_and_never_shared_silently(tmp_path):
    """Ten slots: two programs get two. One put into the other's slot asks; only a tick overwrites."""
    store = Store.file(tmp_path / "s.db", now)
    text = (
        demo_text()
        .replace('fryer = "cedar"', 'fryer = "alder"')
        .replace('fryer = "dogwood"', 'fryer = "alder"')
    )
    remember_kitchen(store, text, "demo.toml")
    client = browser(store, page=True)
    names = [p.name for p in remembered_kitchen(store).programs if p.fryer == "alder"]
    assert len(names) > 2
    slots = [
        re.search(r'<option value="(\d+)" selected', client.get("/cook/card", params={"program": n}).text)[1]
        for n in names
    ]
    assert len(set(slots)) == len(names)
    form = {"program": names[1], "slot": slots[0]}
    asked = client.post("/cook/card", data=form)
    assert asked.status_code == 409
    assert names[0] in asked.text and 'name="overwrite"' in asked.text
    assert list(store.facts(SlotChosen)) == []
    told = client.post("/cook/card", data={**form, "overwrite": "1"})
    assert told.headers["content-type"] == "application/pdf"
    assert f"slot {slots[0]} " in paper.words(told.content)
    moved = client.get("/cook/card", params={"program": names[0]}).text
    assert f'<option value="{slots[0]}" selected' not in moved
    again = client.post("/cook/card", data={"program": names[0], "slot": slots[0]})
    assert again.status_code == 409 and names[1] in again.text
    free = client.post("/cook/card", data={"program": names[1], "slot": "9"})
    assert "slot 9" in paper.words(free.content) and "also has" not in paper.words(free.content)


def test_a_printed_slot_stays(tmp_path):
    """Once printed, a program keeps its slot, whatever programs come after it."""
    store = kitchen_store(tmp_path / "p.db")
    kitchen = remembered_kitchen(store)
    alder = kitchen.program("bone-in alder")
    assert slot_of(store, kitchen, alder) == 1
    keep_card(store, alder, 7)
    assert slot_of(store, kitchen, alder) == 7
    tell_slot(store, kitchen, alder, 3)
    assert slot_of(store, kitchen, alder) == 3


def test_no_curve_of_a_card_strikes_a_word_through(kitchen):
    """Each word of the picture stands on its own shape in white, drawn before it and after the curves."""
    curve = card_data(kitchen, kitchen.program("bone-in alder"), 1, "en", str).curve
    for word in ("oil", "Breast half", "lift"):
        found = [m for m in re.finditer(r"<text([^>]*)>([^<]*)</text>", curve) if word in m[2]]
        white = [m for m in found if 'stroke="white"' in m[1]]
        assert (len(found), len(white)) == (2, 1), word
        assert curve.rindex('stroke-width="3.5"') < white[0].start() < found[1].start(), word
