"""Answers become the kitchen they say; what is wrong stays in its box; tabs never overwrite."""

from __future__ import annotations

import math
import tomllib
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.drafts import read_draft
from frywright.ledger.facts.people import PlaceNamed
from frywright.ledger.store import Store
from frywright.model.errors import InputError, NoKitchenError
from frywright.model.fryer import ClockStyle
from frywright.model.kitchen import altitude_at_m, key_of, pressure_at_pa
from frywright.model.units import LB, PSI
from frywright.rooms.clock import now
from frywright.rooms.cook import setup, setup_text
from frywright.rooms.cook.setup_read import altitude_of_boiling_m, heavy_ratio
from frywright.rooms.kitchen import kitchen_text, remembered_kitchen
from frywright.rooms.premises import place_named
from tests.demo import remember_demo
from tests.rooms.setup.answers import METRIC, US, kept, told


def test_answers_become_the_kitchen_they_say(store):
    """Pressure, US units: every value arrives in SI, estimates are marked, the draft is gone."""
    made = kept(store, "kitchen", US)
    kitchen = remembered_kitchen(store)
    fryer, product = kitchen.fryer(made.fryer), kitchen.product(made.product)
    assert kitchen.site.altitude_m == pytest.approx(1150 * 0.3048, abs=0.01)
    assert fryer.oil_mass_kg == pytest.approx(45 * LB, rel=1e-6)
    assert (fryer.heater_w, fryer.vent_s, fryer.capacity_heads) == (pytest.approx(10e3), 21.0, 3)
    assert fryer.working_gauge_pa == pytest.approx(11 * PSI, rel=1e-5)
    assert fryer.relief_gauge_pa == pytest.approx(14.5 * PSI, rel=1e-5)
    assert fryer.estimates == ("head_volume", "heater", "swing")
    control = fryer.controller
    assert (control.stage_count, control.clock, control.lid_control) == (3, ClockStyle.WAITS, True)
    assert control.temp_step_k == pytest.approx(25 / 9, rel=1e-6)
    assert (control.time_step_s, control.slot_count) == (10.0, 8)
    assert product.unit_mass_kg == pytest.approx(2.4 * LB, rel=1e-5)
    assert product.start_temp_c == pytest.approx(38 / 1.8 - 32 / 1.8, abs=1e-4)
    assert read_draft(store, "setup kitchen").revision == 0
    assert len(list(store.entries())) == 1, "a draft leaves no entry"
    assert parse_kitchen(kitchen_text(store)) == replace(kitchen, marks=(), failed=())


def test_a_metric_kitchen_in_spanish_at_altitude(store):
    """Decimal commas, gas, altitude from boiling water, a food without a rule, ten weights."""
    made = kept(store, "kitchen", METRIC)
    kitchen = remembered_kitchen(store)
    fryer, product = kitchen.fryer(made.fryer), kitchen.product(made.product)
    assert kitchen.site.altitude_m == pytest.approx(1720, abs=15)
    assert fryer.heater_w == pytest.approx(0.4 * 16e3)
    assert (fryer.oil_mass_kg, fryer.capacity_kg, fryer.controller.temp_step_k) == (18.5, 3.0, 2.0)
    assert product.house_core_c == 75.0
    assert product.unit_mass_kg == pytest.approx(0.0455)
    cut = kitchen.cut(kitchen.cut_set(product.cut_set).parts[0].cut)
    assert 1.05 < cut.heavy_ratio_n < 1.3
    assert cut.composition == kitchen.cut("tender").composition


def test_boiling_water_gives_the_altitude():
    """Against a published table (standard atmosphere and steam by CoolProp, an outside library): boiling
    points at known altitudes lead back to them; and the air pressure is the inverse of ISO 2533's.
    """
    from CoolProp.CoolProp import PropsSI

    for altitude_m, air_pa in ((0.0, 101325.0), (1000.0, 89874.6), (2000.0, 79495.2), (3000.0, 70108.5)):
        # ISO 2533 table: pressure at geopotential altitude
        boils_c = PropsSI("T", "P", air_pa, "Q", 0, "Water") - 273.15
        assert altitude_of_boiling_m(boils_c) == pytest.approx(altitude_m, abs=10.0)
        assert altitude_at_m(pressure_at_pa(altitude_m)) == pytest.approx(altitude_m, abs=1e-6)


def test_the_heavy_end_of_ten_weights():
    """Worked by hand: ratios of 1.1 around the mean have a log spread of ln(1.1) times the root of 10/9; the
    heavy end is 1.645 times its upper limit, 1.2934 times as wide.
    """
    spread = math.log(1.1) * math.sqrt(10 / 9)
    assert heavy_ratio([0.2 / 1.1, 0.2 * 1.1] * 5) == pytest.approx(
        math.exp(1.6449 * 1.2934 * spread), rel=1e-3
    )


@pytest.mark.parametrize(
    ("key", "box", "text", "says"),
    [
        ("place", "jurisdiction", "atlantis", "place"),
        ("place", "name", "  ", "name"),
        ("altitude", "altitude", "40000", "altitude"),
        ("altitude", "boiled", "150", "boiling water"),
        ("plate", "power", "10 psi", "power"),
        ("plate", "oil_mass", "4500", "oil"),
        ("plate", "birds", "2.5", "birds at once"),
        ("lid", "relief_gauge", "9", "never set or test"),
        ("lid", "vent", "9:00", "vent time"),
        ("control", "stages", "0", "number of stages"),
        ("control", "time_step", "-5", "step of a time"),
        ("birds", "start_temp", "28", "temperature at the drop"),
        ("birds", "ten", "8 8 8", "3 weights"),
        ("birds", "ten", "8 8 8 8 8 8 8 8 8 90", "one of these is far"),
    ],
)
def test_a_wrong_answer_is_marked_in_its_box_and_kept(store, key, box, text, says):
    """Nothing typed is lost, nothing is done, and the box says what, in the kitchen's units."""
    told(store, "kitchen", US)
    before = setup.setup_of(store, "kitchen")
    after = setup.answer(
        store, "kitchen", key, {**US[key], box: text}, setup.Seen(revision=before.revision), "next"
    )
    assert after.screen(key).typed.get(box, "").strip() == text.strip()
    assert not after.screen(key).done
    assert says in setup.checked(after, key)[box].say(str, "us")
    if key != "birds":
        with pytest.raises(InputError, match="not finished"):
            setup.keep(store, "kitchen", after.revision)


def test_names_that_mean_harm_stay_names(store):
    """Quotes, brackets, line ends and marks in a name open no table of the file."""
    bad = 'x"\n[[fryer]]\nkey = "evil" # \\ é 名'
    answers = {**US, "place": {**US["place"], "name": bad}, "plate": {**US["plate"], "name": bad}}
    kept(store, "kitchen", answers)
    kitchen = remembered_kitchen(store)
    assert len(kitchen.fryers) == 1
    assert kitchen.fryers[0].key.isascii()
    assert kitchen.fryers[0].name == " ".join(bad.split())


@given(st.text(max_size=40), st.floats(0.001, 400, allow_nan=False))
def test_a_line_reads_back_as_it_was(text, value):
    """Any text and any number come back through TOML, to six digits."""
    lines = setup_text.table("[t]", {"a": text, "oil_mass_kg": value, "b": True, "c": ("x", text)}, "metric")
    back = tomllib.loads(lines)["t"]
    assert back["a"] == text.replace("\x7f", "")
    assert back["b"] is True
    mass = back["oil_mass_kg"] if "oil_mass_kg" in back else back["oil_mass_g"] / 1000
    assert mass == pytest.approx(value, rel=1e-5)


def test_two_tabs_never_overwrite_silently(store):
    """The second tab's other answer is refused and kept nowhere; another screen is no clash; seen, it goes
    through.
    """
    told(store, "kitchen", US)
    seen = setup.setup_of(store, "kitchen").revision
    setup.answer(store, "kitchen", "altitude", {"altitude": "900"}, setup.Seen(revision=seen), "next")
    with pytest.raises(setup.Overtaken):
        setup.answer(store, "kitchen", "altitude", {"altitude": "5000"}, setup.Seen(revision=seen), "stay")
    assert setup.setup_of(store, "kitchen").typed("altitude", "altitude") == "900"
    setup.answer(store, "kitchen", "kind", {"kind": "open"}, setup.Seen(revision=seen), "next")
    own = setup.Seen(revision=seen, page="tab two", turn_count=4)
    setup.answer(store, "kitchen", "control", {"stages": "2"}, own, "stay")
    setup.answer(
        store, "kitchen", "control", {"stages": "3"}, setup.Seen(revision=seen, page="tab two", turn_count=5)
    )
    setup.answer(store, "kitchen", "control", {"stages": "1"}, own, "stay")
    assert setup.setup_of(store, "kitchen").typed("control", "stages") == "3", "what comes late is older"
    now_seen = setup.setup_of(store, "kitchen").revision
    setup.answer(store, "kitchen", "altitude", {"altitude": "5000"}, setup.Seen(revision=now_seen), "next")
    assert setup.setup_of(store, "kitchen").typed("altitude", "altitude") == "5000"
    with pytest.raises(setup.Overtaken):
        setup.keep(store, "kitchen", seen)


def test_half_a_screen_survives(store, tmp_path):
    """What is typed stays as it is typed, wrong or not, in a store opened anew; it is not taken for done."""
    here = setup.setup_of(store, "kitchen")
    setup.answer(store, "kitchen", "place", {"name": "Half"}, setup.Seen(revision=here.revision), "stay")
    again = setup.setup_of(Store.file(tmp_path / "s.db", now), "kitchen")
    assert again.typed("place", "name") == "Half"
    assert again.next == "place"


def test_another_unit_asks_again_what_was_typed_without_one(store):
    """45 was pounds; after the change to metric it must be looked at, and keeps standing there."""
    here = told(store, "kitchen", US)
    place = {**US["place"], "units": "metric"}
    here = setup.answer(store, "kitchen", "place", place, setup.Seen(revision=here.revision), "next")
    assert here.typed("plate", "oil_mass") == "45"
    assert {"plate", "altitude", "control"} <= set(here.missing)


def test_a_second_fryer_and_product_join_the_file(store):
    """Every line of the file stays; names that meet get keys of their own; no reason is asked."""
    kept(store, "kitchen", US)
    before = kitchen_text(store)
    fryer = {k: US[k] for k in ("kind", "plate", "lid", "control")}
    made = kept(store, "fryer", {**fryer, "lid": {"working_gauge": "11"}})
    assert made.fryer == "left_2"
    assert kitchen_text(store).startswith(before.rstrip("\n"))
    more = kept(
        store,
        "product",
        {
            "food": {"cut_set": "wings"},
            "birds": {**METRIC["birds"], "ten": "", "mean": "2.2", "start_temp": "38 F"},
        },
    )
    kitchen = remembered_kitchen(store)
    assert len(kitchen.fryers) == 2
    assert kitchen.fryer("left_2").estimates == ("head_volume", "heater", "relief_gauge", "swing", "vent")
    assert kitchen.fryer("left_2").vent_s == 10.0
    assert kitchen.product(more.product).unit_mass_kg == pytest.approx(2.2 * LB / 16, rel=1e-5)


def test_what_may_be_described_when(store):
    """No fryer before a kitchen, no second kitchen over one's own; the demo gives way."""
    with pytest.raises(NoKitchenError):
        setup.setup_of(store, "fryer")
    with pytest.raises(InputError, match="set-up"):
        setup.setup_of(store, "moon")
    remember_demo(store)
    kept(store, "kitchen", US)
    assert remembered_kitchen(store).site.name == "Ford End"
    with pytest.raises(InputError, match="second kitchen"):
        setup.setup_of(store, "kitchen")


def test_what_an_inspector_asks_for_may_be_told_with_the_place(store):
    """It stands on the pack from the first day; nobody must say it, and a text too long is marked."""
    long = {**METRIC["place"], "permit": "x" * 201}
    seen = setup.Seen(revision=0)
    assert "200 letters" in str(
        setup.checked(setup.answer(store, "kitchen", "place", long, seen), "place")["permit"]
    )
    more = {"address": "Calle  Fuente 3", "permit": "", "operator": "Maple & Söhne"}
    kept(store, "kitchen", {**METRIC, "place": {**METRIC["place"], **more}})
    named = place_named(store)
    assert (named.address, named.permit, named.operator) == ("Calle Fuente 3", "", "Maple & Söhne")
    assert "Fuente" not in kitchen_text(store)


def test_nothing_is_kept_of_the_premises_where_nobody_said(store):
    """The pack says *not stated*."""
    kept(store, "kitchen", US)
    assert not list(store.facts(PlaceNamed))


def test_a_product_may_wait(store):
    """A kitchen without a product is kept; what was typed of one goes on as a draft of its own."""
    here = told(store, "kitchen", {k: v for k, v in US.items() if k != "birds"})
    here = setup.answer(
        store, "kitchen", "birds", {"mean": "2.4 kg"}, setup.Seen(revision=here.revision), "skip"
    )
    assert here.missing == ()
    setup.keep(store, "kitchen", here.revision)
    assert remembered_kitchen(store).products == ()
    assert setup.setup_of(store, "product").typed("birds", "mean") == "2.4 kg"
    assert setup.setup_of(store, "product").next == "birds"


def test_a_first_program_is_called_as_people_say_it(store):
    """By the names that were typed where the keys are made of them; the demo keeps its short keys."""
    from frywright.model.program import Program, Stage
    from frywright.trial.kitchens import demo_kitchen
    from frywright.trial.naming import new_name

    plate = {**US["plate"], "name": "Left vat"}
    made = kept(store, "kitchen", {**US, "plate": plate, "birds": {**US["birds"], "name": "8-piece bird"}})
    stages = (Stage(set_c=165.0, duration_s=600.0),)
    first = Program(name="x", product=made.product, fryer=made.fryer, stages=stages)
    assert new_name(remembered_kitchen(store), first) == "8-piece bird Left vat"
    assert key_of("Nº  1 (left)") == "n_1_left"
    demo = Program(name="x", product="bone_in", fryer="dogwood", stages=stages)
    assert new_name(demo_kitchen(), demo) == "bone-in dogwood"
