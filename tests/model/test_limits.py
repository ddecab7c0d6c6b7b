"""Every range of the model at its ends: the end itself is taken, a step beyond is refused in its field."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.model.calibration import Calibration
from frywright.model.care import Task
from frywright.model.errors import InputError
from frywright.model.food import Coating, Composition, Cut, CutSet, CutShare, Food, Product
from frywright.model.fryer import (
    ClockStyle,
    Controller,
    Fryer,
    FryerKind,
    MachineSetting,
    SettingKind,
    WrongValue,
)
from frywright.model.kitchen import Kitchen, Site
from frywright.model.program import LidState, Program, Stage
from frywright.model.trade import AMOUNTS, MenuItem, Sell, Trade, time_of_day, time_of_day_s
from frywright.model.units import PSI, show_below

CUT = Cut(
    key="leg",
    title="Leg",
    composition="chicken",
    reference_mass_kg=0.2,
    half_thickness_m=0.02,
    shape_n=1.0,
)
CALIBRATION = Calibration(
    cut="leg",
    coating="bare",
    lid="open",
    half_thickness_m=0.02,
    shape_n=1.0,
    reference_mass_kg=0.2,
    pieces_count=3,
    mass_low_kg=0.1,
    mass_high_kg=0.2,
    oil_low_c=160.0,
    oil_high_c=170.0,
    start_low_c=2.0,
    start_high_c=6.0,
    error_k=1.0,
)
PRODUCT = Product(key="bird", name="Bird", cut_set="legs", coating="bare", start_temp_c=4.0)
OPEN = Fryer(key="one", name="One", kind=FryerKind.OPEN, oil_mass_kg=20.0, heater_w=12000.0, capacity_kg=4.0)
PRESSURE = replace(OPEN, kind=FryerKind.PRESSURE)
ALTITUDE = MachineSetting(
    name="Altitude", kind=SettingKind.ALTITUDE, value="120 m", lowers_k=1.5, each_m=300.0
)
SELL = Sell(product="bird", margin_money=1.0, cost_money=0.5)
TASK = Task(key="t", title="Wipe", who="crew", days_count=1)
STAGE = Stage(set_c=165.0, duration_s=60.0)
PROGRAM = Program(name="bird one", product="bird", fryer="one", stages=(STAGE,))
MIXED = Composition(key="meat", title="Meat", water_frac=0.7, protein_frac=0.2, fat_frac=0.1)
SITE = Site(name="Bench")
DREDGE = Coating(
    key="own",
    title="Own",
    film_kg_m2=0.3,
    pickup_frac=0.2,
    crust_conductivity_w_mk=0.1,
    crust_heat_j_m3k=1e6,
)

ENDS = [
    (CALIBRATION, "half_thickness_m", 0.003, 0.045, 1e-6, "half_thickness"),
    (CALIBRATION, "shape_n", 0.0, 2.0, 1e-6, "half_thickness"),
    (CALIBRATION, "error_k", 0.0, 10.0, 1e-6, "error"),
    (CALIBRATION, "pieces_count", 1, None, 1, "pieces_count"),
    (CALIBRATION, "mass_low_kg", None, 0.2, 1e-6, "mass_low and mass_high"),
    (CUT, "heavy_ratio_n", 1.0, 3.0, 1e-6, "heavy_ratio_n"),
    (CUT, "bone_mass_frac", 0.0, None, 1e-6, "bone_mass"),
    (CUT, "drip_frac", 0.0, 0.6, 1e-6, "drip"),
    (PRODUCT, "start_temp_c", -1.0, 40.0, 1e-6, "start_temp"),
    (PRODUCT, "unit_mass_kg", 0.005, 5.0, 1e-6, "unit_mass"),
    (PRODUCT, "house_core_c", 40.0, 100.0, 1e-6, "house_core"),
    (OPEN, "oil_mass_kg", 2.0, 200.0, 1e-6, "oil_mass"),
    (OPEN, "heater_w", 500.0, 200e3, 1e-3, "heater"),
    (OPEN, "swing_k", 0.0, 30.0, 1e-6, "swing"),
    (OPEN, "oil_area_m2", 0.0, 2.0, 1e-6, "oil_area, upper_line"),
    (OPEN, "upper_line_m", 0.0, 1.0, 1e-6, "oil_area, upper_line"),
    (replace(PRESSURE, relief_gauge_pa=120e3), "working_gauge_pa", 10e3, 110e3, 1e-3, "working_gauge"),
    (PRESSURE, "vent_area_m2", None, 1e-3, 1e-9, "vent_area"),
    (PRESSURE, "vent_s", 2.0, 300.0, 1e-6, "vent"),
    (PRESSURE, "zero_gauge_pa", None, 3 * PSI, 1e-3, "zero_gauge"),
    (ALTITUDE, "lowers_k", None, 20.0, 1e-6, "lowers"),
    (ALTITUDE, "each_m", 50.0, 3000.0, 1e-6, "each"),
    (SITE, "thermometer_error_k", 0.0, 5.0, 1e-6, "thermometer_error"),
    (OPEN, "capacity_heads", 0, 500, 1, "capacity_heads"),
    (OPEN, "capacity_kg", None, 200.0, 1e-6, "capacity"),
    (OPEN, "min_load_kg", 0.0, 200.0, 1e-6, "min_load"),
    (OPEN, "head_volume_m3", 0.0005, 0.5, 1e-6, "head_volume"),
    (OPEN, "lid_heat_j_k", 0.0, 1e6, 1e-3, "lid_heat"),
    (OPEN, "metal_heat_j_k", 0.0, 1e6, 1e-3, "metal_heat"),
    (OPEN, "loss_w_k", 0.0, 500.0, 1e-6, "loss"),
    (OPEN, "offset_k", -30.0, 30.0, 1e-6, "offset"),
    (PRESSURE, "relief_gauge_pa", None, 250e3, 1e-3, "relief_gauge"),
    (CUT, "shape_n", 0.0, 2.0, 1e-6, "shape_n"),
    (CUT, "half_thickness_m", None, 0.2, 1e-6, "half_thickness"),
    (DREDGE, "pickup_frac", 0.0, 0.9, 1e-6, "pickup"),
    (DREDGE, "crust_conductivity_w_mk", 0.01, 2.0, 1e-6, "crust_conductivity"),
    (SITE, "room_temp_c", -10.0, 60.0, 1e-6, "room_temp"),
    (SITE, "altitude_m", -500.0, 5000.0, 1e-3, "altitude"),
    (Controller(), "stage_count", 1, 20, 1, "stage_count"),
    (Controller(), "slot_count", 1, 200, 1, "slot_count"),
    (Controller(), "temp_step_k", None, 30.0, 1e-6, "temp_step"),
    (Controller(), "time_step_s", None, 600.0, 1e-3, "time_step"),
    (TASK, "loads_count", 0, 1_000_000, 1, "loads_count"),
    (TASK, "days_count", None, 36_500, 1, "days_count"),
    (TASK, "takes_s", 0.0, 604800.0, 1e-3, "takes"),
    (STAGE, "set_c", 60.0, 230.0, 1e-6, "set"),
    (STAGE, "duration_s", None, 7200.0, 1e-6, "duration"),
    (PROGRAM, "version", 1, 9999, 1, "version"),
    (PROGRAM, "drain_s", 0.0, 3600.0, 1e-3, "drain"),
    (PROGRAM, "hold_life_s", 1.0, 86400.0, 1e-3, "hold_life"),
    (PROGRAM, "unit_mass_kg", 0.005, 10.0, 1e-6, "bird size"),
    (PROGRAM, "altitude_m", -500.0, 5000.0, 1e-3, "altitude"),
    (SELL, "margin_money", None, 1e9, 1.0, "margin"),
    (SELL, "cost_money", None, 1e9, 1.0, "cost"),
    (SELL, "case_count", 1, 100_000, 1, "case_count"),
    (SELL, "keep_days_count", 1, 365, 1, "keep_days_count"),
    (SELL, "thaw_s", 0.0, 604800.0, 1e-3, "thaw"),
    (SELL, "case_thickness_m", 0.0, 1.0, 1e-6, "case_thickness"),
    (Trade(), "hands_count", 1, 100, 1, "hands_count"),
    (Trade(), "filter_every_count", 1, 10_000, 1, "filter_every_count"),
    (Trade(), "catering_count", 1, 1_000_000, 1, "catering_count"),
    (Trade(), "filter_s", 0.0, 14400.0, 1e-3, "filter"),
    (Trade(), "warm_up_s", 0.0, 43200.0, 1e-3, "warm_up"),
    (Trade(), "oil_change_s", 0.0, 43200.0, 1e-3, "oil_change"),
    *((Trade(), name, 0.0, 1e9, 1e-6, name.removesuffix("_money")) for name in AMOUNTS),
    (Trade(), "slot_s", 60.0, 1800.0, 60.0, "slot"),
]


@pytest.mark.parametrize("row", ENDS, ids=lambda row: f"{type(row[0]).__name__}.{row[1]}")
def test_an_end_of_a_range_is_taken_and_a_step_beyond_is_refused(row):
    """In the field that people know, with what it was."""
    item, name, low, high, step, field = row
    for end, beyond in ((low, -step), (high, step)):
        if end is None:
            continue
        assert getattr(replace(item, **{name: end}), name) == end
        with pytest.raises(InputError) as refused:
            replace(item, **{name: end + beyond})
        assert refused.value.field == field


ZEROS = [
    (CALIBRATION, "mass_low_kg", "mass_low and mass_high"),
    (CALIBRATION, "reference_mass_kg", "mass_low and mass_high"),
    (CUT, "reference_mass_kg", "reference_mass_kg and half_thickness_m"),
    (CUT, "half_thickness_m", "reference_mass_kg and half_thickness_m"),
    (PRESSURE, "vent_area_m2", "vent_area"),
    (PRESSURE, "zero_gauge_pa", "zero_gauge"),
    (ALTITUDE, "lowers_k", "lowers"),
    (Controller(), "temp_step_k", "temp_step and time_step"),
    (Controller(), "time_step_s", "temp_step and time_step"),
    (SELL, "margin_money", "margin and cost"),
    (SELL, "cost_money", "margin and cost"),
]


@pytest.mark.parametrize("row", ZEROS, ids=lambda row: f"{type(row[0]).__name__}.{row[1]}")
def test_nothing_is_no_value_where_it_must_be_above_nothing(row):
    """A hair above is taken."""
    item, name, field = row
    assert getattr(replace(item, **{name: 1e-9}), name) == 1e-9
    with pytest.raises(InputError) as refused:
        replace(item, **{name: 0.0})
    assert refused.value.field == field


def refused(item, /, **changes) -> str:
    """The field that stands in the error."""
    with pytest.raises(InputError) as caught:
        replace(item, **changes)
    return caught.value.field


def test_words_of_closed_lists():
    """A lid of a calibration, who does a task, where it applies and what it asks, a meat's water loss."""
    assert refused(CALIBRATION, lid="ajar") == "lid"
    assert refused(TASK, who="guest") == "who"
    assert refused(TASK, applies="steam") == "applies"
    assert refused(TASK, asks="mood") == "asks"
    assert refused(CUT, drip="wet") == "drip"
    assert refused(SITE, language="tlh") == "language"
    assert refused(OPEN, estimates=("colour",)) == "estimates"
    assert replace(TASK, applies="gas", asks="calibration").asks == "calibration"
    assert replace(CUT, drip="none").drip_kind == "none"
    assert (CUT.drip_kind, replace(CUT, food=Food.FISH).drip_kind) == ("light", "none")


@pytest.mark.parametrize("name", ["loads_count", "heat_s", "turns_count", "days_count", "takes_s"])
def test_an_interval_is_not_below_nothing(name):
    assert refused(TASK, **{name: -1}) == name.removesuffix("_s")


@pytest.mark.parametrize("name", ["loads_count", "heat_s", "turns_count", "days_count"])
def test_one_interval_is_enough_and_none_is_too_few(name):
    """How long a task takes is no interval."""
    none = {"loads_count": 0, "heat_s": 0.0, "turns_count": 0, "days_count": 0}
    assert refused(TASK, **none, takes_s=60.0) == "interval"
    assert getattr(replace(TASK, **{**none, name: 1}), name) == 1


def test_a_composition_sums_to_one_within_three_hundredths():
    """As tables of food print them; the shares used sum to one."""
    assert refused(MIXED, water_frac=0.669) == refused(MIXED, water_frac=0.731) == "composition"
    assert refused(MIXED, ash_frac=0.05) == refused(MIXED, carbohydrate_frac=0.05) == "composition"
    for water in (0.6701, 0.7299):
        shares = replace(MIXED, water_frac=water).fractions
        assert sum(shares.values()) == pytest.approx(1.0)
        assert shares["water"] == pytest.approx(water / (water + 0.3))
    assert set(MIXED.fractions) == {"water", "protein", "fat", "carbohydrate", "ash"}


def test_pieces_of_a_cut_set_make_one_whole():
    """Count times share, within half a hundredth."""

    def made(frac):
        return CutSet(
            key="legs", title="Legs", parts=(CutShare(cut="leg", count=2, mass_frac=frac),), unit_mass_kg=1.0
        )

    for frac in (0.4976, 0.5, 0.5024):
        assert made(frac).parts[0].mass_frac == frac
    for frac in (0.497, 0.503):
        with pytest.raises(InputError, match="sum to"):
            made(frac)


def test_weighed_pieces_are_five_or_more():
    """Each above nothing."""
    assert len(replace(CUT, sample_kg=(0.1,) * 5).sample_kg) == 5
    assert refused(CUT, sample_kg=(0.1,) * 4) == refused(CUT, sample_kg=(0.1,) * 5 + (0.0,)) == "sample"
    assert refused(CUT, bone_mass_frac=0.7) == "bone_mass"
    assert refused(PRODUCT, frozen=True) == "frozen"


def test_a_relief_valve_lets_go_above_the_working_gauge():
    """Equal is refused, with the advice to leave it alone; an open fryer has no gauge to compare."""
    assert refused(PRESSURE, relief_gauge_pa=PRESSURE.working_gauge_pa) == "relief_gauge"
    assert replace(PRESSURE, relief_gauge_pa=PRESSURE.working_gauge_pa + 1.0)
    assert replace(OPEN, relief_gauge_pa=OPEN.working_gauge_pa, vent_s=1.0).vent_told
    assert refused(OPEN, capacity_kg=0.0) == "capacity"
    assert replace(OPEN, capacity_kg=0.0, capacity_heads=1).capacity_heads == 1


def test_the_vent_is_told_by_its_opening_or_by_a_watch():
    assert not PRESSURE.vent_told
    assert replace(PRESSURE, vent_s=60.0).vent_told
    assert replace(PRESSURE, vent_area_m2=1e-5).vent_told


def test_a_correction_for_the_altitude_is_whole_and_of_an_altitude_setting():
    assert refused(ALTITUDE, each_m=None) == refused(ALTITUDE, lowers_k=None) == "lowers, each"
    assert refused(ALTITUDE, kind=SettingKind.OTHER) == "lowers"
    plain = replace(ALTITUDE, kind=SettingKind.OTHER, lowers_k=None, each_m=None)
    assert (plain.tells_scale, plain.tells_clock) == (False, False)
    with pytest.raises(InputError, match="used once among a fryer's settings"):
        replace(OPEN, settings=(plain, replace(plain, name=" altitude ")))


SHAPES = [
    ({"until_core_c": 70.0, "duration_s": None}, "at_most"),
    ({"until_left_s": 10.0}, "stage end"),
    ({"duration_s": None}, "stage end"),
    ({"duration_s": None, "until_oil_c": 170.0, "at_most_s": 7200.1}, "at_most"),
    ({"duration_s": None, "until_left_s": -1.0}, "until_left"),
    ({"duration_s": None, "until_elapsed_s": 7201.0}, "until_elapsed"),
]


@pytest.mark.parametrize(("changes", "field"), SHAPES)
def test_a_stage_ends_once_and_in_time(changes, field):
    assert refused(STAGE, **changes) == field


def test_a_program_has_stages_and_one_span_under_pressure():
    """Open, shut, open again is one span; shut twice is not."""
    shut = replace(STAGE, lid=LidState.PRESSURE)
    assert refused(PROGRAM, stages=()) == "stage"
    assert len(replace(PROGRAM, stages=(STAGE, shut, STAGE)).stages) == 3
    assert refused(PROGRAM, stages=(shut, STAGE, shut, STAGE)) == "lid"


@pytest.mark.parametrize(
    "shares", [(), (0.5, 0.25), (0.25, 0.25, 1.0), (0.0, 1.0), (0.5, 1.01)], ids=lambda s: f"{s}"
)
def test_shares_of_a_load_rise_from_above_nothing_to_a_full_vat(shares):
    assert refused(SELL, load_shares_frac=shares) == "load_shares"
    assert replace(SELL, load_shares_frac=(0.01, 1.0)).load_shares_frac[-1] == 1.0


DAYS = [
    ({"slot_s": 700.0}, "slot"),
    ({"closes": "10:30"}, None),
    ({"first_drop": "10:30"}, None),
    ({"first_drop": "10:31"}, "first_drop, opens, closes"),
    ({"opens": "25:00"}, "opens"),
    ({"rolls_over": "4"}, "rolls_over"),
    ({"rush": ("17:00",)}, "rush"),
    ({"rush": ("17:00-20:00-21:00",)}, "rush"),
    ({"rush": ("17:00-20:60",)}, "rush"),
    ({"rush": ("17:00-20:00",)}, None),
]


@pytest.mark.parametrize(("changes", "field"), DAYS)
def test_a_day_runs_in_its_order(changes, field):
    """The first drop may be at the opening; a close at the opening's own hour is a day later."""
    if field is None:
        assert replace(Trade(), **changes)
    else:
        assert refused(Trade(), **changes) == field


def test_spans_slots_and_the_close_past_midnight():
    """Seconds since midnight; slots from the first drop."""
    day = Trade(opens="17:00", closes="02:00", first_drop="16:30", slot_s=600.0, rush=("18:00-19:30",))
    assert (day.opens_s, day.closes_s, day.start_s) == (61200.0, 93600.0, 59400.0)
    assert day.slots_count == 57
    assert day.rush_s == ((64800.0, 70200.0),)
    assert [day.slot_of(t) for t in (59399.0, 59400.0, 60000.0)] == [-1, 0, 1]
    assert day.clock_of(54) == "01:30"


@pytest.mark.parametrize(("text", "seconds"), [("00:00", 0.0), ("9:05", 32700.0), ("23:59", 86340.0)])
def test_a_time_of_day_there_and_back(text, seconds):
    assert time_of_day_s(text) == seconds
    assert time_of_day(seconds + 86400.0).lstrip("0") == text.lstrip("0")


@pytest.mark.parametrize("text", ["24:00", "12:60", "noon", "12.30", ""])
def test_what_is_no_time_of_day(text):
    with pytest.raises(InputError) as caught:
        time_of_day_s(text, "opens")
    assert caught.value.field == "opens"


def test_an_item_of_the_menu_has_a_name_and_whole_pieces():
    """Up to a thousand; none is for what is not fried."""
    assert refused(MenuItem(item="Cola"), item="  ") == "item"
    for text in ("legs", "legs 0", "legs 1001", "legs/", "3 legs"):
        assert refused(MenuItem(item="Box"), pieces=(text,)) == "pieces"
    (one, other) = MenuItem(item="Box", also=(" Big  BOX",), pieces=("bird/leg 1000", "bird 1.5")).parts
    assert (one.product, one.cut, one.count) == ("bird", "leg", 1000.0)
    assert (other.product, other.cut, other.count) == ("bird", "", 1.5)
    assert MenuItem(item="Box", also=(" Big  BOX",)).names == ("box", "big box")


LEGS = CutSet(
    key="legs", title="Legs", parts=(CutShare(cut="leg", count=2, mass_frac=0.5),), unit_mass_kg=1.0
)


def bench(**changes) -> Kitchen:
    """One open fryer and one product."""
    given = {"site": SITE, "fryers": (OPEN,), "products": (PRODUCT,), "cuts": (CUT,), "cut_sets": (LEGS,)}
    return Kitchen(**{**given, "programs": (), **changes})


MENUS = [
    ((MenuItem(item="Box"), MenuItem(item="BOX ")), "item"),
    ((MenuItem(item="Box", pieces=("bird/wing 1",)),), "cut"),
    ((MenuItem(item="Box", pieces=("fish 1",)),), "product"),
]


@pytest.mark.parametrize(("menu", "field"), MENUS)
def test_a_menu_names_each_item_once_and_what_the_kitchen_has(menu, field):
    with pytest.raises(InputError) as caught:
        bench(menu=menu)
    assert caught.value.field == field
    assert bench(menu=(MenuItem(item="Box", pieces=("bird/leg 2",)),)).menu


def test_a_kitchen_has_each_key_once_and_sells_what_it_has():
    """A program fits the fryer it names: its lid and how many stages its controller holds."""
    with pytest.raises(InputError, match="used once among fryers"):
        bench(fryers=(OPEN, OPEN))
    with pytest.raises(InputError) as caught:
        bench(sells=(replace(SELL, product="fish"),))
    assert caught.value.field == "product"
    assert bench(sells=(SELL,)).sells == (SELL,)
    kitchen = bench(programs=(PROGRAM,))
    with pytest.raises(InputError, match="at most 1, which is what One can hold"):
        kitchen.check(replace(PROGRAM, stages=(STAGE, STAGE)))
    with pytest.raises(InputError, match="One is an open fryer"):
        kitchen.check(replace(PROGRAM, stages=(replace(STAGE, lid=LidState.PRESSURE),)))


def test_a_wrong_value_of_a_setting_is_not_what_the_control_does():
    setting = MachineSetting(
        name="Clock",
        kind=SettingKind.CLOCK,
        value="goes on",
        wrong=(WrongValue(reads="halts", clock=ClockStyle.WAITS),),
    )
    assert replace(OPEN, settings=(setting,)).settings[0].tells_clock
    control = replace(OPEN.controller, clock=ClockStyle.WAITS)
    assert refused(OPEN, settings=(setting,), controller=control) == "clock"
    for changes, field in [
        ({"does": "x" * 500}, "does"),
        ({"set_change_k": 61.0}, "set_change"),
        ({"time_frac": 0.09}, "time"),
        ({"time_frac": 5.01}, "time"),
    ]:
        assert refused(setting.wrong[0], **changes) == field
    kept = replace(setting.wrong[0], set_change_k=-60.0, time_frac=5.0, clock=None)
    assert kept.known and not WrongValue(reads="halts").known


OUTSIDE = [
    ({}, ()),
    ({"mass": 0.2201}, ("the piece is heavier than any probed",)),
    ({"mass": 0.0899}, ("the piece is lighter than any probed",)),
    ({"oil": (151.9, 165.0)}, ("the oil is outside what was logged",)),
    ({"oil": (165.0, 178.1)}, ("the oil is outside what was logged",)),
    ({"start": -1.1}, ("the start temperature is outside what was logged",)),
    ({"start": 9.1}, ("the start temperature is outside what was logged",)),
    ({"mass": 0.2199, "oil": (152.0, 178.0), "start": 9.0}, ()),
    ({"mass": 0.0901, "start": -1.0}, ()),
]


@pytest.mark.parametrize(("asked", "reasons"), OUTSIDE)
def test_a_calibration_speaks_a_little_beyond_what_was_logged(asked, reasons):
    """A tenth of the mass, 8 K of the oil, 3 K of the start; no further."""
    given = {"mass": 0.15, "oil": (160.0, 170.0), "start": 4.0, **asked}
    assert CALIBRATION.outside(given["mass"], given["oil"], given["start"]) == reasons


def test_a_calibration_of_two_pieces_or_of_the_lift_alone_says_so():
    few = replace(CALIBRATION, pieces_count=2).outside(0.15, (160.0, 170.0), 4.0)
    lift = replace(CALIBRATION, road="lift").outside(0.15, (160.0, 170.0), 4.0)
    assert few == ("fewer than three pieces were probed",)
    assert lift == ("its pieces were read at the lift only, without a curve",)


def test_a_calibration_counts_for_its_own_program_and_less_for_another():
    """Under another at least 2 K come off; a larger error of its own stays."""
    logged = replace(CALIBRATION, program="a")
    assert (logged.error_for_k("a"), logged.error_for_k("b"), logged.error_for_k("")) == (1.0, 2.0, 2.0)
    assert replace(logged, error_k=2.5).error_for_k("b") == 2.5


@pytest.mark.parametrize(
    ("value", "limit", "text"),
    [
        (73.9, 74.0, "73.9 °C"),
        (73.96, 74.0, "73.96 °C"),
        (73.999, 74.0, "73.999 °C"),
        (74.0, 74.0, "74.0 °C"),
        (74.04, 74.0, "74.0 °C"),
    ],
)
def test_a_core_below_its_limit_never_reads_as_its_limit(value, limit, text):
    assert show_below(value, limit, "c", "metric") == text


def test_a_core_below_its_limit_in_fahrenheit():
    """165 °F is 73.889 °C."""
    limit = (165.0 - 32.0) / 1.8
    assert show_below(limit - 0.001, limit, "c", "us") == "164.998 °F"
    assert show_below(limit, limit, "c", "us") == "165 °F"
