"""Settings sheets: a change of the kitchen, only their own lines; a second kitchen; hostile words."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.facts.cook import KitchenSet
from frywright.model.errors import InputError
from frywright.model.fryer import ClockStyle, MachineSetting, SettingKind, TempUnit, WrongValue
from frywright.model.kitchen import UnitSystem
from frywright.rooms.clock import now
from frywright.rooms.cook import sheet_text
from frywright.rooms.cook.compare import read_back, value_names
from frywright.rooms.cook.programs import record_readback
from frywright.rooms.cook.settings import (
    CAUTION,
    FOOT,
    SettingRefused,
    change_setting,
    sheet,
    sheet_pdf,
    typed_setting,
)
from frywright.rooms.cook.sheet_text import with_settings
from frywright.rooms.kitchen import kitchen_number, kitchen_text, remembered_kitchen
from frywright.rooms.standing import held_status
from frywright.trial.kitchens import demo_text
from frywright.voice.figures import mark_of, written
from frywright.voice.tongue import translator
from tests import paper
from tests.demo import kitchen_store

OWN = """
[kitchen]
name = "Puesto de la playa (inventado)"
altitude_m = 40
jurisdiction = "spain"
units = "metric"
language = "es"

[[fryer]]
key = "uno"
name = "Uno"
kind = "pressure"
capacity_heads = 4
oil_mass_kg = 24
heater_kw = 11
vent = "0:22"

[fryer.controller]
stage_count = 2
clock = "waits"          # how its clock counts

# the second one came later
[[fryer]]
key = "dos"
name = "Dos"
kind = "open"
capacity_kg = 3
oil_mass_kg = 15
heater_kw = 9

[[product]]
key = "pollo"
name = "Pollo"
cut_set = "chicken_8"
coating = "dredge"
start_temp_c = 4
house_core_c = 76

[[program]]
name = "pollo uno"
product = "pollo"
fryer = "uno"

[[program.stage]]
set_c = 165
lid = "pressure"
duration = "11:30"

[[program.stage]]
set_c = 160
duration = "1:30"
"""


@pytest.fixture
def store(tmp_path):
    return kitchen_store(tmp_path / "s.db", OWN)


def post(store, **form):
    told = {"fryer": "uno", "number": "", "seen": str(kitchen_number(store)), "kind": "other", **form}
    return change_setting(store, told)


def test_a_sheet_grows_in_its_own_words_and_nothing_else_of_the_file_moves(store):
    """Added to the first fryer of two, in metric and Spanish; comments stay; the reason is in the record."""
    post(store, name="Altitud", kind="altitude", value="40 m", lowers="1,5", each="300")
    post(
        store,
        name="Reloj",
        kind="clock",
        value="espera",
        w0_reads="sigue",
        w0_effect="clock_left",
        w1_reads="¿?",
        w1_does="Nadie lo sabe.",
    )
    text = kitchen_text(store)
    kept = [line for line in text.splitlines() if line.strip()]
    assert [line for line in OWN.splitlines() if line.strip()] == [
        line for line in kept if line in OWN.splitlines()
    ]
    altitude, clock = remembered_kitchen(store).fryer("uno").settings
    assert (altitude.lowers_k, altitude.each_m) == (1.5, 300.0)
    assert clock.wrong == (
        WrongValue(reads="sigue", clock=ClockStyle.LEFT),
        WrongValue(reads="¿?", does="Nadie lo sabe."),
    )
    assert remembered_kitchen(store).fryer("dos").settings == ()
    post(store, number="0", name="Altura", kind="altitude", value="40 m", reason="así lo llama la máquina")
    last = store.current_facts(KitchenSet)[-1].fact
    assert last.reason == "así lo llama la máquina"
    assert [s.name for s in remembered_kitchen(store).fryer("uno").settings] == ["Altura", "Reloj"]
    post(store, number="1", act="remove", reason="el mando nuevo no lo tiene")
    assert [s.name for s in remembered_kitchen(store).fryer("uno").settings] == ["Altura"]


def test_what_a_wrong_setting_does_is_said_in_the_kitchens_words_and_units(store):
    """The clock that waits, set to run on: earlier by the vent, in kelvin and Spanish."""
    tr = translator("es")
    post(store, name="Reloj", kind="clock", value="espera", w0_reads="sigue", w0_effect="clock_left")
    kitchen = remembered_kitchen(store)
    rows = {row.name: row for row in sheet(store, kitchen, kitchen.fryer("uno"), tr).rows}
    assert set(rows) == {"escala", "Reloj"}
    (wrong,) = rows["Reloj"].wrong
    assert wrong.reads == "sigue"
    assert (
        wrong.text.startswith("pollo uno: pieza más fría ") and " °C" in wrong.text and "°F" not in wrong.text
    )
    lift = wrong.text.rpartition(" ")[2].rstrip(".")
    assert lift == "13:00"
    dos = sheet(store, kitchen, kitchen.fryer("dos"), tr)
    assert dos.program == "" and [row.name for row in dos.rows] == ["escala", "reloj"]
    assert all(w.text for row in dos.rows for w in row.wrong)


@pytest.mark.parametrize(
    ("form", "box", "words"),
    [
        ({"name": " ", "value": "on"}, "name", "1 to 60 letters"),
        ({"name": "Bell", "value": ""}, "value", "1 to 40 letters"),
        ({"name": "Bell", "value": "on", "kind": "bell"}, "kind", "one of"),
        (
            {"name": "H", "kind": "altitude", "value": "high", "lowers": "2", "each": "300"},
            "value",
            "a height",
        ),
        ({"name": "H", "kind": "altitude", "value": "40 m", "lowers": "2"}, "lowers", "both given"),
        (
            {"name": "H", "kind": "altitude", "value": "40 m", "lowers": "x", "each": "300"},
            "lowers",
            "lowers is",
        ),
        ({"name": "Bell", "value": "on", "w1_reads": "ON"}, "name", "another reading"),
        ({"name": "Bell", "value": "on", "w1_does": "silent"}, "w1_reads", "1 to 40 letters"),
        (
            {"name": "Bell", "value": "on", "w2_reads": "off", "w2_effect": "oil", "w2_amount": "400"},
            "w2_amount",
            "-60.0 °C",
        ),
        (
            {"name": "Bell", "value": "on", "w2_reads": "off", "w2_effect": "time", "w2_amount": ""},
            "w2_amount",
            "a number",
        ),
        ({"name": "Bell", "value": "on", "w0_reads": "off", "w0_amount": "5"}, "w0_amount", "left empty"),
        ({"name": "Bell", "value": "on", "w0_reads": "off", "w0_effect": "boom"}, "w0_effect", "one of"),
        (
            {"name": "Bell", "value": "on", "w0_reads": "off", "w0_effect": "file"},
            "w0_effect",
            "does not know",
        ),
        ({"name": "Bell", "value": "on", "w0_reads": "off", "w0_effect": "scale"}, "name", "kind scale"),
        (
            {"name": "C", "kind": "clock", "value": "a", "w0_reads": "b", "w0_effect": "clock_waits"},
            "name",
            "other than",
        ),
        ({"name": "Bell\u202eno", "value": "on"}, "name", "on one line"),
    ],
)
def test_bad_values_say_which_box(store, form, box, words):
    """Nothing is kept."""
    before = kitchen_text(store)
    with pytest.raises(SettingRefused, match=words) as caught:
        post(store, **form)
    assert caught.value.box == box
    assert kitchen_text(store) == before


def test_two_tabs_a_name_twice_and_no_reason_are_refused(store):
    """A form shown before another change; the same name in capitals; a change without a reason."""
    old = str(kitchen_number(store))
    post(store, name="Bell", kind="alarm", value="on")
    with pytest.raises(InputError, match="changed since this page was shown"):
        post(store, name="Other", value="1", seen=old)
    with pytest.raises(SettingRefused, match="used once") as caught:
        post(store, name="BELL", value="1")
    assert caught.value.box == "name"
    for act in ("keep", "remove"):
        with pytest.raises(SettingRefused, match="why does this setting change") as caught:
            post(store, number="0", act=act, name="Bell", value="off")
        assert caught.value.box == "reason"
    for number in ("7", "-1", "x", "٣"):
        with pytest.raises(InputError, match="one of this fryer's settings"):
            post(store, number=number, name="Bell", value="off", reason="why not")


HOSTILE = st.text(st.characters(codec="utf-8"), min_size=1, max_size=30)


@settings(max_examples=150, deadline=None, derandomize=True)
@given(HOSTILE, HOSTILE, st.sampled_from(["[[fryer]]", "#", '"', "\\", "'''", "]]\n[kitchen]", ""]))
def test_no_word_breaks_out_of_its_setting(name, value, edge):
    """Quotes, brackets, comments, other scripts: kept as they are, or refused; nothing else moves."""
    try:
        setting = MachineSetting(
            name=(edge + name).strip()[:60], kind=SettingKind.OTHER, value=(value + edge)[:40]
        )
    except InputError:
        return
    made = parse_kitchen(with_settings(OWN, "uno", [setting], UnitSystem.METRIC))
    assert made.fryer("uno").settings == (setting,)
    bare = replace(made, fryers=(replace(made.fryers[0], settings=()), *made.fryers[1:]))
    assert bare == parse_kitchen(OWN)


@pytest.mark.parametrize("units", list(UnitSystem))
def test_every_effect_comes_back_as_it_was_written(units):
    """Every field of a setting and of its wrong values, in both systems of units."""
    known = (
        MachineSetting(
            name="Height",
            kind=SettingKind.ALTITUDE,
            value="40 m",
            lowers_k=2.5,
            each_m=300.0,
            wrong=(WrongValue(reads="0 m", does="Hotter."), WrongValue(reads="off", set_change_k=-7.5)),
        ),
        MachineSetting(
            name="Lid",
            kind=SettingKind.LID,
            value="tied",
            wrong=(WrongValue(reads="by hand", lid_open=True),),
        ),
        MachineSetting(
            name="Load",
            kind=SettingKind.LOAD,
            value="full",
            wrong=(WrongValue(reads="half", time_frac=0.85, set_change_k=5.0),),
        ),
        MachineSetting(
            name="Degrees",
            kind=SettingKind.SCALE,
            value="C",
            wrong=(WrongValue(reads="F", shows=TempUnit.F),),
        ),
    )
    got = parse_kitchen(with_settings(OWN, "uno", known, units)).fryer("uno").settings
    assert got[1:2] + got[3:] == known[1:2] + known[3:]
    assert got[0].lowers_k == pytest.approx(2.5) and got[0].each_m == pytest.approx(300.0)
    assert got[0].wrong[1].set_change_k == pytest.approx(-7.5)
    assert (got[2].wrong[0].time_frac, got[2].wrong[0].set_change_k) == pytest.approx((0.85, 5.0))


def test_a_change_of_one_setting_loses_nothing_of_the_others(tmp_path):
    """The demo: comments of the untouched stay, and a value that does two things keeps both."""
    text = demo_text().replace("time_pct = 85 ", "set_change_f = 4\ntime_pct = 85 ")
    store = kitchen_store(tmp_path / "d.db", text)
    alder = remembered_kitchen(store).fryer("alder")
    form = {**typed_setting(alder.settings[1], remembered_kitchen(store).site), "value": "3 heads"}
    assert form["w0_effect"] == "file"
    post(store, **{**form, "fryer": "alder", "number": "1", "reason": "a new panel"})
    changed = remembered_kitchen(store).fryer("alder").settings[1]
    assert changed.value == "3 heads"
    assert changed.wrong[0].set_change_k == pytest.approx(4 / 1.8)
    assert changed.wrong[0].time_frac == pytest.approx(0.85)
    assert "lowers_f = 3               # its control takes" in kitchen_text(store)


def test_a_file_written_another_way_is_left_alone():
    """Fryers in one line of TOML: said, not broken."""
    inline = (
        '[kitchen]\nname = "x"\n[[fryer]]\nkey="a"\nname="A"\nkind="open"\ncapacity_kg=3\noil_mass_kg=15\n'
        'heater_kw=9\nsetting=[{name="s",kind="other",value="1"}]\n'
    )
    setting = parse_kitchen(inline).fryer("a").settings[0]
    with pytest.raises(InputError, match="change it in the kitchen file"):
        with_settings(inline, "a", [replace(setting, value="2")], UnitSystem.US)


def test_nothing_else_of_the_file_may_move(monkeypatch):
    """Should the lines of a fryer be cut wrongly, the file as it would be is not what was wanted: refused."""
    cut = sheet_text._parts

    def wrongly(text, fryer):
        head, blocks, tail = cut(text, fryer)
        return [line.replace("heater_kw = 11", "heater_kw = 12") for line in head], blocks, tail

    setting = MachineSetting(name="Bell", kind=SettingKind.ALARM, value="on")
    assert with_settings(OWN, "uno", [setting], UnitSystem.METRIC)
    monkeypatch.setattr(sheet_text, "_parts", wrongly)
    with pytest.raises(InputError, match="change it in the kitchen file"):
        with_settings(OWN, "uno", [setting], UnitSystem.METRIC)


def test_a_changed_sheet_asks_for_a_new_read_back(store):
    """Read back whole the program is current; a setting added, or changed, and it is so no longer."""

    def taken(**read):
        kitchen = remembered_kitchen(store)
        program = kitchen.program("pollo uno")
        values = [v.text for v in value_names(kitchen, program, 1)]
        result = read_back(kitchen, program, 1, values, read)
        record_readback(store, program, 1, result, ("Ana", "Kim"), now().isoformat())
        return held_status(store, kitchen)[0].state

    def state():
        return held_status(store, remembered_kitchen(store))[0].state

    assert taken() == "current"
    post(store, name="Bell", kind="alarm", value="on")
    assert state() == "settings not read"
    assert taken(own0="OFF") == "differs"
    assert taken(own0="On") == "current"
    post(store, number="0", name="Bell", kind="alarm", value="loud", reason="a new panel")
    assert state() == "settings not read"


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_sheet_on_paper(store, language):
    """Every setting, every wrong value with what it does, place, caution, signatures; one page."""
    tr, mark = translator(language), mark_of(language, "metric")
    post(store, name="Altitud del local", kind="altitude", value="40 m", lowers="1,5", each="300")
    kitchen = remembered_kitchen(store)
    fryer = kitchen.fryer("uno")
    data = sheet_pdf(store, kitchen, fryer, language, tr)
    said = paper.words(data)
    assert paper.pages(data) == 1
    for row in sheet(store, kitchen, fryer, tr).rows:
        assert row.name in said and row.value in said
        for wrong in row.wrong:
            assert written(wrong.text, mark) in said, wrong.text
    for text in (
        "Puesto de la playa (inventado), 40 m",
        tr("Machine settings"),
        tr(CAUTION),
        tr(FOOT),
        tr("set by"),
        tr("read back by"),
    ):
        assert text in said


def test_what_a_wrong_setting_does_is_said_in_spanish_words(store):
    """By how much a piece falls short, not a figure that "does not arrive"."""
    said = paper.words(
        sheet_pdf(
            store, remembered_kitchen(store), remembered_kitchen(store).fryer("uno"), "es", translator("es")
        )
    )
    assert re.search(r"faltan \d+,\d °C \(bien puesto \d+,\d °C, sobran \d+,\d °C\)", said), said
