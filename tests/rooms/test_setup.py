"""The set-up: answers in people's units become the kitchen their file describes; drafts lose and overwrite
nothing.
"""

from __future__ import annotations

import math
import tomllib
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.drafts import read_draft
from frywright.ledger.facts.care import PlateTyped
from frywright.ledger.facts.people import PlaceNamed
from frywright.ledger.store import Store
from frywright.model.errors import InputError, NoKitchenError
from frywright.model.fryer import ClockStyle
from frywright.model.kitchen import altitude_at_m, key_of, pressure_at_pa
from frywright.model.units import LB, PSI
from frywright.rooms.clock import now
from frywright.rooms.cook import setup, setup_text
from frywright.rooms.cook.own_day import day_typed, keep_day
from frywright.rooms.cook.setup_read import altitude_of_boiling_m, heavy_ratio
from frywright.rooms.kitchen import kitchen_text, remembered_kitchen
from frywright.rooms.premises import place_named
from tests.demo import remember_demo

US = {
    "place": {"name": "Ford End", "jurisdiction": "us_food_code_2022", "language": "en", "units": "us"},
    "altitude": {"altitude": "1,150"},
    "kind": {"kind": "pressure"},
    "plate": {
        "name": "Left",
        "fuel": "electric",
        "power": "10",
        "oil_mass": "45",
        "oil": "canola",
        "birds": "3",
    },
    "lid": {"working_gauge": "11", "relief_gauge": "14.5", "vent": "0:21"},
    "control": {
        "shows": "f",
        "stages": "3",
        "temp_step": "5",
        "time_step": "10",
        "clock": "waits",
        "lid": "tied",
        "slots": "8",
    },
    "food": {"cut_set": "chicken_8"},
    "birds": {"name": "Bone-in", "mean": "2.4", "coating": "dredge", "start_temp": "38"},
}
METRIC = {
    "place": {"name": "Peña Alta", "jurisdiction": "germany", "language": "es", "units": "metric"},
    "altitude": {"boiled": "94,2"},
    "kind": {"kind": "open"},
    "plate": {
        "name": "Nº 1",
        "fuel": "gas",
        "power": "16",
        "oil_mass": "18,5",
        "oil": "sunflower_ho",
        "weight": "3",
    },
    "control": {
        "shows": "c",
        "stages": "1",
        "temp_step": "2",
        "time_step": "15",
        "clock": "elapsed",
        "lid": "hand",
    },
    "food": {"cut_set": "tenders"},
    "birds": {
        "name": "Tiras",
        "ten": "44 47 51 40 46 43 49 45 48 42",
        "coating": "batter",
        "start_temp": "4",
        "house_core": "75",
    },
}


@pytest.fixture
def store(tmp_path):
    return Store.file(tmp_path / "s.db", now)


def told(store, what, answers):
    for key, typed in answers.items():
        here = setup.setup_of(store, what)
        here = setup.answer(store, what, key, typed, setup.Seen(revision=here.revision))
        assert here.screen(key).done, (key, {b: str(e) for b, e in setup.checked(here, key).items()})
    return here


def kept(store, what, answers):
    return setup.keep(store, what, told(store, what, answers).revision)


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


def test_the_plate_goes_on_record(store):
    """With a serial number Care has the plate, at the power printed and not what reaches the oil."""
    gas = {**US["plate"], "fuel": "gas", "power": "50,000", "serial": "K-77"}
    kept(store, "kitchen", {**US, "plate": gas})
    plate = store.current_facts(PlateTyped)[0].fact
    assert plate.serial == "K-77"
    assert plate.power_w == pytest.approx(50_000 * 1055.05585262 / 3600, rel=1e-6)
    assert remembered_kitchen(store).fryers[0].heater_w == pytest.approx(0.4 * plate.power_w, rel=1e-5)


def test_the_demo_says_nothing_of_estimates():
    """The marks are a kitchen's own; a file that names another value is refused with the list."""
    from frywright.model.errors import DataError
    from frywright.trial.kitchens import demo_text

    text = demo_text().replace('kind = "pressure"', 'kind = "pressure"\nestimates = ["weather"]', 1)
    with pytest.raises(DataError, match="vent, head_volume"):
        parse_kitchen(text)
    assert all(not f.estimates for f in parse_kitchen(demo_text()).fryers)


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


@pytest.mark.parametrize(
    ("name", "typed", "field", "value"),
    [
        ("vent", {"vent": "0:24"}, "vent_s", 24.0),
        ("swing", {"swing": "9"}, "swing_k", 5.0),
        ("heater", {"heater": "9.2"}, "heater_w", 9200.0),
        ("relief_gauge", {"relief_gauge": "15"}, "relief_gauge_pa", 15 * PSI),
        ("head_volume", {"gap": "5", "width": "12", "length": "16"}, "head_volume_m3", 960 * 0.0254**3),
    ],
)
def test_a_measured_value_is_an_estimate_no_longer(store, name, typed, field, value):
    """It takes the place of the estimate; the other marks and every other line stay."""
    from frywright.rooms.cook.measured import keep_measured

    kept(store, "kitchen", {**US, "lid": {"working_gauge": "11"}})
    before = kitchen_text(store).splitlines()
    with pytest.raises(InputError):
        keep_measured(store, "left", name, {}, "with a watch")
    keep_measured(store, "left", name, typed, "with a watch")
    fryer = remembered_kitchen(store).fryer("left")
    assert getattr(fryer, field) == pytest.approx(value, rel=1e-5)
    assert name not in fryer.estimates
    assert len(fryer.estimates) == 4
    after = kitchen_text(store).splitlines()
    assert len(after) == len(before)
    assert sum(a != b for a, b in zip(before, after, strict=True)) == 2


def test_a_list_of_estimates_over_lines_is_read_as_well():
    """A file may be written by hand; a fryer that is not there is said."""
    from frywright.catalog.edit import with_measured

    text = '[[fryer]]\nkey = "a"\nestimates = [\n  "vent",\n  "swing",\n]\nswing_f = 9\n'
    found = tomllib.loads(with_measured(text, "a", "swing", "swing_k = 4"))["fryer"][0]
    assert found == {"key": "a", "estimates": ["vent"], "swing_k": 4}
    with pytest.raises(InputError, match="one of: a"):
        with_measured(text, "b", "swing", "swing_k = 4")


@pytest.mark.slow
def test_what_is_taken_for_an_estimate_cooks_no_more_than_what_is_usual(store):
    """By the engine: a longer vent, less swing, less room or more heat never lowers the lowest margin by more
    than a twentieth of a kelvin, which is a step of the solver.
    """
    from frywright.model.program import LidState, Program, Stage
    from frywright.rooms.cook.setup_read import usual
    from frywright.trial.prove_again import lowest_margin_k

    gas = {**US["plate"], "fuel": "gas", "power": "60,000"}
    made = kept(store, "kitchen", {**US, "plate": gas, "lid": {"working_gauge": "11"}})
    kitchen = remembered_kitchen(store)
    fryer, lids = kitchen.fryers[0], (LidState.OPEN, LidState.PRESSURE, LidState.OPEN)
    stages = tuple(
        Stage(set_c=c, lid=lid, duration_s=s)
        for c, lid, s in zip((172, 168, 176), lids, (20, 590, 60), strict=True)
    )
    full = Program(name="x", product=made.product, fryer=made.fryer, stages=stages)

    def margin_k(**changes):
        return lowest_margin_k(replace(kitchen, fryers=(replace(fryer, **changes),)), full)

    taken = margin_k()
    power = fryer.heater_w / usual("gas_share_frac")["taken"]
    for changes in (
        {"vent_s": usual("vent_s")["high"]},
        {"swing_k": usual("swing_k")["low"]},
        {"head_volume_m3": 1e-3 * usual("head_l_kg")["low"] * fryer.oil_mass_kg},
        {"heater_w": power * usual("gas_share_frac")["high"]},
    ):
        assert margin_k(**changes) > taken - 0.05, changes


@pytest.mark.parametrize(("key", "answers"), [("plate", US["plate"]), ("lid", US["lid"])])
def test_figures_off_a_photo_count_once_they_are_compared(store, key, answers):
    """Without the tick the screen is not done; with it, it is."""
    told(store, "kitchen", US)
    seen = setup.Seen(revision=setup.setup_of(store, "kitchen").revision)
    here = setup.answer(store, "kitchen", key, {**answers, "from_photo": "1"}, seen)
    assert not here.screen(key).done
    assert "ticked once you compared" in setup.checked(here, key)["seen"].say(str, "us")
    seen = setup.Seen(revision=here.revision)
    assert (
        setup.answer(store, "kitchen", key, {**answers, "from_photo": "1", "seen": "1"}, seen)
        .screen(key)
        .done
    )


DAY = {
    "zone": "Europe/Madrid",
    "first_drop": "11:30",
    "opens": "12:00",
    "closes": "23:30",
    "rush": "13:00 – 15:30, 20:30-22:00",
    "hands": "2",
    "filter_every": "10",
    "currency": "€",
}


def test_the_day_is_described_without_a_file(store):
    """What is typed is the kitchen's day; typed anew it changes, and nothing else does."""
    made = kept(store, "kitchen", METRIC)
    before = kitchen_text(store)
    money = {f"margin_{made.product}": "1,5", f"cost_{made.product}": "0,40"}
    done, wrong = keep_day(store, {**DAY, **money})
    assert done is not None and not wrong
    kitchen = remembered_kitchen(store)
    trade, (sell,) = kitchen.trade, kitchen.sells
    assert (trade.zone, trade.opens, trade.closes, trade.first_drop) == (
        "Europe/Madrid",
        "12:00",
        "23:30",
        "11:30",
    )
    assert trade.rush == ("13:00-15:30", "20:30-22:00")
    assert (trade.hands_count, trade.filter_every_count, trade.currency) == (2, 10, "€")
    assert (sell.product, sell.margin_money, sell.cost_money) == (made.product, 1.5, 0.4)
    assert kitchen_text(store).startswith(before.rstrip("\n"))
    again = day_typed(kitchen)
    assert {name: again[name] for name in money} == {**money, f"cost_{made.product}": "0,4"}
    changed, wrong = keep_day(store, {**again, "hands": "3"})
    assert changed is not None and not wrong
    assert remembered_kitchen(store).trade.hands_count == 3
    assert remembered_kitchen(store).sells == (sell,)
    assert kitchen_text(store).count("[day]") == kitchen_text(store).count("[[sell]]") == 1


@pytest.mark.parametrize(
    ("box", "typed", "marked"),
    [
        ("zone", "Mars/North", "zone"),
        ("opens", "25:00", "opens"),
        ("first_drop", "12:30", "first_drop"),
        ("rush", "12-13", "rush"),
        ("hands", "2,5", "hands"),
        ("filter_every", "0", "filter_every"),
        ("currency", "pesos de aquí", "currency"),
        ("margin_{p}", "-1", "margin_{p}"),
        ("cost_{p}", "", "cost_{p}"),
        ("cost_{p}", "1e9", "cost_{p}"),
    ],
)
def test_a_day_that_cannot_be_is_marked_in_its_box_and_not_kept(store, box, typed, marked):
    """The file stays as it was."""
    product = kept(store, "kitchen", METRIC).product
    before = kitchen_text(store)
    asked = {**DAY, f"margin_{product}": "1,5", f"cost_{product}": "0,4", box.format(p=product): typed}
    made, wrong = keep_day(store, asked)
    assert made is None
    assert list(wrong) == [marked.format(p=product)]
    assert kitchen_text(store) == before


def test_a_day_without_any_product_sold_is_refused(store):
    """There would be nothing to plan."""
    product = kept(store, "kitchen", METRIC).product
    made, wrong = keep_day(store, DAY)
    assert made is None and list(wrong) == [f"margin_{product}"]


def test_a_product_is_taken_off_sale_and_every_other_line_stays(store):
    """Also where lists of the day stand on several lines, with notes beside them."""
    remember_demo(store)
    text = kitchen_text(store).replace(
        'rush = ["11:30-13:15", "17:00-20:00"]', 'rush = [\n  "11:30-13:15", # lunch\n  "17:00-20:00",\n]'
    )
    setup.remember_kitchen(store, text, "demo.toml")
    typed = day_typed(remembered_kitchen(store))
    typed |= {"margin_tenders": "", "cost_tenders": "", "rush": "11:30-13:00"}
    menu = [m for m in remembered_kitchen(store).menu if "tenders" in {p.product for p in m.parts}]
    made, wrong = keep_day(store, typed)
    assert made is not None and not wrong
    kitchen = remembered_kitchen(store)
    assert [s.product for s in kitchen.sells] == ["bone_in", "wedges"]
    assert kitchen.trade.rush == ("11:30-13:00",)
    assert kitchen.trade.cap_w == 35e3 and kitchen.trade.handling_money == 0.25
    assert [m for m in kitchen.menu if "tenders" in {p.product for p in m.parts}] == menu
