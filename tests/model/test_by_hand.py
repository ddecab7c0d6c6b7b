"""Small parts of the vocabulary: entries, days, orders of things, and what a kitchen answers of itself."""

from __future__ import annotations

import datetime as dt
import hashlib
import json
from dataclasses import replace
from zoneinfo import ZoneInfo

import pytest

from frywright.catalog import check as catalog_check
from frywright.catalog import edit, load
from frywright.catalog.capacity import capacity_units, check_load, most_units
from frywright.catalog.kitchen import parse_kitchen
from frywright.catalog.settings import off_place
from frywright.model.business_day import business_time, local_time, moment_of, trade_of, usual_trade
from frywright.model.codec import Source, write
from frywright.model.entry import Entry, chain_hash, row_hash, stamp, unstamp
from frywright.model.errors import DataError, InputError, one_of
from frywright.model.findings import Note, Problem, say
from frywright.model.food import counted
from frywright.model.fryer import FryerKind, MachineSetting, SettingKind, TempUnit
from frywright.model.kitchen import ProveAgain, Site
from frywright.model.program import LidState, Program, Stage
from frywright.model.roles import may_claim, may_sign
from frywright.model.tongues import tongues
from frywright.model.trade import Trade, money
from frywright.model.units import LB, PSI, clock, show, show_below, signed, suffix_of
from frywright.model.units import write as write_value
from frywright.trial.kitchens import demo_text

UTC = dt.UTC
NOON = dt.datetime(2026, 11, 25, 12, 0, 0, 250000, tzinfo=UTC)


def test_an_entry_is_of_a_plain_kind_at_a_time_with_its_zone():
    usual = {"kind": "probe_2", "happened_at": NOON, "author": "Ana", "payload": {}}
    assert Entry(**usual).replaces is None
    for wrong, field in (
        ({"kind": ""}, "kind"),
        ({"kind": "two words"}, "kind"),
        ({"kind": "x.y"}, "kind"),
        ({"happened_at": NOON.replace(tzinfo=None)}, "happened_at"),
    ):
        with pytest.raises(InputError) as refused:
            Entry(**{**usual, **wrong})
        assert refused.value.field == field


def test_a_stamp_is_read_back_and_nothing_else_is():
    local = NOON.astimezone(ZoneInfo("America/Denver"))
    assert stamp(local) == "2026-11-25T12:00:00.250000Z" and unstamp(stamp(local)) == NOON
    for text in (
        "2026-11-25T12:00:00Z",
        "2026-11-25 12:00:00.250000Z",
        "2026-11-25T12:00:00.250000+",
        "2026-11-25T12:00:00,250000Z",
        "",
    ):
        with pytest.raises(ValueError, match="no moment"):
            unstamp(text)


@pytest.mark.parametrize("replaces", [None, 7])
def test_a_hash_is_of_the_canonical_text_of_everything_an_entry_says(replaces):
    entry = Entry(
        kind="probe",
        happened_at=NOON,
        author='Ana "ä"',
        payload={"b": 1, "a": [1.5, None]},
        replaces=replaces,
        versions={"fact": "2"},
    )
    told = {
        "author": 'Ana "ä"',
        "happened_at": stamp(NOON),
        "kind": "probe",
        "number": 9,
        "payload": {"a": [1.5, None], "b": 1},
        "recorded_at": stamp(NOON),
        "replaces": replaces,
        "versions": {"fact": "2"},
    }
    text = json.dumps(told, separators=(",", ":"), ensure_ascii=False)
    assert chain_hash("0" * 64, 9, entry, NOON) == hashlib.sha256(f"{'0' * 64}\n{text}".encode()).hexdigest()


@pytest.mark.parametrize(
    ("local", "day", "seconds"),
    [
        ((25, 4, 0, 0), 25, 4 * 3600.0),
        ((25, 3, 59, 59), 24, 86400.0 + 14399.0),
        ((25, 0, 0, 0), 24, 86400.0),
        ((25, 13, 7, 9), 25, 47229.0),
    ],
)
def test_a_business_day_rolls_over_at_its_hour(local, day, seconds):
    trade = Trade(zone="America/Denver", rolls_over="04:00")
    moment = dt.datetime(2026, 11, local[0], *local[1:], tzinfo=ZoneInfo("America/Denver"))
    assert business_time(trade, moment.astimezone(UTC)) == (dt.date(2026, 11, day), seconds)
    assert moment_of(trade, dt.date(2026, 11, day), seconds) == moment
    with pytest.raises(InputError, match="time zone"):
        business_time(replace(trade, zone="Mars/Base"), moment)


def test_a_day_is_cut_at_the_clocks_half_hours_from_any_slot_on():
    """From 9:40 in slots of five minutes: to 10:00, half hours, and what is left to 11:10."""
    trade = Trade(first_drop="09:40", opens="10:00", closes="11:10", slot_s=300.0)
    assert trade.half_hours() == [(0, 4), (4, 10), (10, 16), (16, 18)]
    assert trade.half_hours(2) == [(2, 4), (4, 10), (10, 16), (16, 18)]
    assert trade.half_hours(4) == [(4, 10), (10, 16), (16, 18)] and trade.half_hours(17) == [(17, 18)]
    assert trade.half_hours(18) == trade.half_hours(40) == []  # after the close


def test_a_kitchen_without_a_day_says_so_and_uses_the_usual_one(kitchen):
    assert trade_of(kitchen) is kitchen.trade is usual_trade(kitchen)
    for none in (replace(kitchen, trade=None), replace(kitchen, sells=())):
        with pytest.raises(InputError, match="Hours and money"):
            trade_of(none)
    assert usual_trade(replace(kitchen, trade=None)) == Trade()
    there = replace(kitchen, trade=replace(kitchen.trade, zone="America/Denver"))
    assert local_time(there, NOON) == "2026-11-25 05:00-07:00"


def test_the_source_language_comes_first_and_the_others_by_their_key():
    keys = list(tongues.__wrapped__())  # the folder read anew
    assert keys[0] == "en" and keys[1:] == sorted(keys[1:]) and "es" in keys
    assert {t.key for t in tongues().values()} == set(keys) and tongues()["es"].decimal == ","


def test_who_may_sign_what_and_claim_what():
    """Crew, lead, technician, licensed: each may sign its own and what asks for less."""
    order = ["crew", "lead", "technician", "licensed"]
    known = [r for r in order if may_sign(r, r)]
    assert known[0] == "crew" and not may_sign("nobody", "crew")
    for i, role in enumerate(known):
        assert [may_sign(role, least) for least in known] == [j <= i for j in range(len(known))]
    assert may_claim("crew", "crew") and not may_claim("crew", "lead") and not may_claim("auditor", "crew")
    assert one_of(("a", "b"), "b", "x") == "b"
    for text in ("c", None, ""):
        with pytest.raises(InputError, match="one of: a, b"):
            one_of(("a", "b"), text, "x")


def test_values_of_a_note_are_shown_by_the_unit_in_their_name():
    values = {"core_c": 100.0, "share": 2.5, "names": ("thigh", "wing"), "word": "thigh"}
    text = "{core_c} {share} {names} {word}"
    assert say(text, values, "us", lambda t: t if "{" in t else t.upper()) == "212 °F 2.5 THIGH, WING THIGH"
    assert Note(kind="x", text=text, values=values).values["share"] == 2.5
    problem = Problem(
        what="bad {one}",
        remedy="Mend.",
        values={"one": 3},
        file="k.toml",
        line_number=2,
        column_number=4,
        line="a = b",
    )
    assert str(problem) == "k.toml:2: bad 3\n    a = b\n        ^\n  Mend."
    assert str(replace(problem, line_number=0, line="")) == "k.toml: bad 3\n  Mend."
    assert str(replace(problem, line_number=0, line="", file="")) == "bad 3\n  Mend."


def test_next_to_nothing_has_no_sign():
    """0.04 K below a limit is no "-0.0 °C"; a tenth of a degree Fahrenheit is one."""
    assert (show(-0.04, "k", "metric"), show(-0.04, "k", "us")) == ("0.0 °C", "-0.1 °F")
    assert (show(-1e-4, "pa", "metric"), show(-0.3, "kg", "metric")) == ("0.0 kPa", "-0.30 kg")


@pytest.mark.parametrize(
    ("value", "suffix", "us", "metric"),
    [
        (59.4, "s", "59 s", "59 s"),
        (60.0, "s", "1:00", "1:00"),
        (3725.0, "s", "62:05", "62:05"),
        (0.125, "frac", "12.5 %", "12.5 %"),
        (29.9, "m", "1177 in", "29900 mm"),
        (0.2242, "m", "8.83 in", "224 mm"),
        (29.0, "kg", "63.9 lb", "29.0 kg"),
        (30.0, "m", "98 ft", "30 m"),
        (1.0, "kg", "2.20 lb", "1.00 kg"),
        (0.02, "kg", "0.04 lb", "0.02 kg"),
        (0.005, "kg", "0.2 oz", "5 g"),
        (6894.757, "pa", "1.0 psi", "6.9 kPa"),
        (5.0, "k", "9.0 °F", "5.0 °C"),
        (3.6e6, "j", "3600000.00 J", "3600000.00 J"),
    ],
)
def test_amounts_as_each_kitchen_reads_them(value, suffix, us, metric):
    assert (show(value, suffix, "us"), show(value, suffix, "metric")) == (us, metric)
    assert signed(-value, suffix, "us") == f"−{us}" and signed(value, suffix, "us") == f"+{us}"
    assert clock(59.6) == "1:00" and suffix_of("a_kg_m3") == "kg_m3" and suffix_of("kg") is None
    assert (
        show_below(73.96, 74.0, "c", "metric") == "73.96 °C"
        and show_below(73.9, 74.0, "c", "metric") == "73.9 °C"
    )
    assert [write_value(v, "m") for v in (1.25, 1.255, 2.0, 1234567.0)] == [
        "1.25",
        "1.2550",
        "2",
        "1234567",
    ]


@pytest.mark.parametrize(
    ("amount", "currency", "text"),
    [
        (1.5, "$", "$1.50"),
        (-1.5, "$", "−$1.50"),
        (1.5, "EUR", "1.50 EUR"),
        (-0.004, "$", "$0.00"),
        (-0.006, "", "−0.01"),
    ],
)
def test_money_as_people_write_it(amount, currency, text):
    assert money(amount, currency) == text


@pytest.mark.parametrize(
    ("amount", "spread", "text"),
    [
        (580.25, 137.04, "$580"),
        (137.04, 137.04, "$140"),
        (-58.4, 13.7, "−$58"),
        (96.0, 1_370.0, "$100"),
        (5.44, 9.99, "$5.44"),
    ],
)
def test_an_estimate_of_money_shows_no_more_than_its_spread_allows(amount, spread, text):
    assert money(amount, "$", spread) == text


def test_a_dataclass_is_written_in_the_kitchens_units(kitchen):
    fryer = replace(kitchen.fryer("alder"), oil_mass_kg=65 * LB, kind=FryerKind.PRESSURE, vent_s=None)
    us, metric = write(fryer, "us"), write(fryer, "metric")
    assert us["oil_mass_lb"] == 65.0 and metric["oil_mass_kg"] == 65 * LB
    assert us["kind"] == metric["kind"] == "pressure"
    for told in (us, metric):
        assert not {"vent_s", "controller", "settings"} & set(told) and "heater_w" in told
        assert told["swing_k"] == fryer.swing_k  # a difference stays in kelvin
    assert us["working_gauge_psi"] == pytest.approx(fryer.working_gauge_pa / PSI, abs=1e-6)


STAGES = (
    Stage(set_c=165.0, duration_s=100.0),
    Stage(set_c=165.0, until_elapsed_s=160.0),
    Stage(set_c=160.0, until_left_s=30.0),
)


def test_ends_of_stages_make_their_lengths():
    """A length, a time since the drop, a time left of ten minutes; a condition counts its longest."""
    made = Program(name="x", product="p", fryer="f", stages=STAGES, total_s=600.0)
    assert made.durations_s() == (100.0, 60.0, 410.0) and made.clock_s == 570.0
    assert [s.duration_s for s in made.timed().stages] == [
        100.0,
        60.0,
        410.0,
    ] and made.timed().total_s is None
    waits = replace(made, stages=(*STAGES[:2], Stage(set_c=160.0, until_core_c=80.0, at_most_s=200.0)))
    assert waits.durations_s()[2] == 200.0 and waits.has_condition and not made.has_condition
    with pytest.raises(InputError, match="total"):
        replace(made, total_s=None)
    with pytest.raises(InputError, match="before its start"):
        replace(made, stages=(STAGES[0], Stage(set_c=165.0, until_elapsed_s=99.0)))
    assert replace(made, stages=(STAGES[0], Stage(set_c=165.0, until_elapsed_s=100.0))).clock_s == 100.0
    shut = Stage(set_c=165.0, duration_s=60.0, lid=LidState.PRESSURE)
    assert replace(made, stages=(STAGES[0], shut, STAGES[0])).under_pressure and not made.under_pressure
    with pytest.raises(InputError, match="one span under pressure"):
        replace(made, stages=(shut, STAGES[0], shut, STAGES[0]))


def test_what_a_kitchen_answers_of_its_programs(kitchen):
    """Newest versions, those before them, marks, and which are for this place and bird."""
    own = kitchen.program("bone-in alder")
    newer = replace(own, version=own.version + 2)
    there = replace(
        kitchen, programs=(newer, *kitchen.programs), earlier={own.name: (replace(own, version=1),)}
    )
    assert there.program(own.name) == newer
    assert [p.version for p in there.versions(own.name)] == [1, own.version, newer.version]
    assert there.versions("none") == ()
    mark = ProveAgain(name=own.name, version=own.version, reason="x", margin_before_k=1.0, margin_after_k=0.5)
    marked = replace(there, marks=(mark,))
    assert marked.mark(own) == mark and marked.mark(newer) is None
    near = kitchen.site.altitude_m
    assert kitchen.belongs(own) and kitchen.belongs(replace(own, altitude_m=near + 1.0))
    assert not kitchen.belongs(replace(own, altitude_m=near + 1000.0))
    bird = kitchen.unit_kg(own.product)
    assert kitchen.belongs(replace(own, unit_mass_kg=bird)) and not kitchen.belongs(
        replace(own, unit_mass_kg=2 * bird)
    )
    gone = replace(there, retired=((own.name, newer.version),))
    assert own.name not in {p.name for p in gone.own_programs}
    old = replace(there, retired=((own.name, own.version),))
    assert own.name in {p.name for p in old.own_programs}
    parts = kitchen.cut_set(kitchen.product(own.product).cut_set).parts
    assert kitchen.pieces_per_unit(own.product) == sum(p.count for p in parts)
    with pytest.raises(InputError, match="is an open fryer"):
        kitchen.check(replace(own, fryer="cedar"))
    lone = replace(
        kitchen,
        programs=(),
        fryers=tuple(replace(f, controller=replace(f.controller, stage_count=1)) for f in kitchen.fryers),
    )
    assert len(own.stages) > 1
    with pytest.raises(InputError, match="at most 1"):
        lone.check(own)


def test_a_fryer_takes_its_heads_or_its_weight(kitchen):
    """Heads where the plate counts heads, else its weight over a unit's, else so many eight-piece heads."""
    heads, packs = load.cut_sets()["chicken_8"], next(c for c in load.cut_sets().values() if c.unit != "head")
    fryer = replace(kitchen.fryer("alder"), capacity_heads=4, capacity_kg=6.0)
    assert capacity_units(fryer, heads, 1.2) == 4.0 and most_units(fryer, heads, 1.2) == 4.0
    assert most_units(fryer, heads, 2.0) == 3.0
    assert capacity_units(fryer, packs, 0.5) == 12.0 == most_units(fryer, packs, 0.5)
    only_heads = replace(fryer, capacity_kg=0.0)
    assert capacity_units(only_heads, packs, 0.5) == pytest.approx(4 * heads.unit_mass_kg / 0.5)
    assert most_units(only_heads, heads, 9.0) == 4.0
    assert capacity_units(replace(fryer, capacity_heads=0), heads, 1.5) == 4.0
    program = kitchen.program("bone-in alder")
    most = most_units(kitchen.fryer("alder"), kitchen.cut_set("chicken_8"), kitchen.unit_kg("bone_in"))
    check_load(kitchen, replace(program, load_heads=None))
    check_load(kitchen, replace(program, load_heads=1.0009 * most))
    for load_heads in (0.0, 1.0011 * most):
        with pytest.raises(InputError, match="above 0 and at most"):
            check_load(kitchen, replace(program, load_heads=load_heads))


def test_facts_of_the_catalog_are_complained_of_in_words(monkeypatch):
    """An unknown and an unused source, an unknown origin, a figure that cannot be."""
    assert catalog_check.problems() == []
    real = load.table

    def spoilt(path):
        table = dict(real(path))
        if path == "coatings/dredge.toml":
            table |= {
                "film_kg_m2": 1.6,
                "film_origin": "hearsay",
                "film_source": "nobody",
                "density_slope": 1e9,
            }
        if path == "oils/canola.toml":
            table = {"key": "canola", "density_20c_kg_m3": 499.0}
        return table

    monkeypatch.setattr(load, "table", spoilt)
    monkeypatch.setattr(load, "sources", lambda: {**real("sources.toml"), "never_used": {}})
    found = catalog_check.problems()
    for words in (
        "coatings/dredge.toml: unknown source 'nobody'",
        "coatings/dredge.toml: unknown origin 'hearsay'",
        "coatings/dredge.toml: film_kg_m2 = 1.6 is outside 0 to 1.5",
        "oils/canola.toml names no source",
        "oils/canola.toml: density_20c_kg_m3 = 499 is outside 500 to 2500",
        "sources.toml: never_used is not used",
    ):
        assert words in found
    slope = [words for words in found if "density_slope" in words]
    assert slope == ["coatings/dredge.toml: density_slope names no source"]


def test_a_kitchen_file_is_edited_line_by_line_and_read_back():
    """A measured value, a place, a day, a product on sale and off it; every other line stays as it was."""
    text = demo_text()
    before = parse_kitchen(text)
    measured = edit.with_measured(text, "alder", "oil_mass", "oil_mass_kg = 30.5")
    kitchen = parse_kitchen(measured)
    assert kitchen.fryer("alder").oil_mass_kg == 30.5 and "oil_mass" not in kitchen.fryer("alder").estimates
    assert kitchen.fryer("cedar") == before.fryer("cedar")
    placed = parse_kitchen(
        edit.with_place(text, {"altitude": "altitude_m = 12", "room_temp": "room_temp_c = 31"})
    )
    assert (placed.site.altitude_m, placed.site.room_temp_c, placed.site.name) == (
        12.0,
        31.0,
        before.site.name,
    )
    day = parse_kitchen(edit.with_day(text, {"opens": 'opens = "11:00"', "hands_count": "hands_count = 5"}))
    assert (day.trade.opens, day.trade.hands_count, day.trade.closes) == ("11:00", 5, before.trade.closes)
    sold = before.sells[0].product
    off = edit.without_sell(text, sold)
    assert [s.product for s in parse_kitchen(off).sells] == [s.product for s in before.sells[1:]]
    again = edit.with_sell(off, sold, {"margin": "margin_money = 1.5", "cost": "cost_money = 0.5"})
    assert (parse_kitchen(again).sells[-1].product, parse_kitchen(again).sells[-1].margin_money) == (
        sold,
        1.5,
    )
    moved = parse_kitchen(edit.for_another_place(text))
    assert moved.calibrations == () and moved.emergency.address == ""
    assert "vent" in moved.fryer("alder").estimates and "vent" not in moved.fryer("cedar").estimates
    with pytest.raises(InputError, match="one of: "):
        edit.with_measured(text, "elm", "oil_mass", "oil_mass_kg = 30.5")
    bare = edit.with_day('[kitchen]\nname = "x"\n', {"opens": 'opens = "11:00"'})
    assert bare == '[kitchen]\nname = "x"\n\n[day]\nopens = "11:00"\n'


def test_a_kitchen_file_nested_too_deep_is_refused_in_words():
    """Short enough for a line, deeper than any kitchen is: no crash and no kitchen."""
    with pytest.raises(DataError, match="nested too deep"):
        Source("a = " + "[" * 990 + "]" * 990, "kitchen.toml").load()


def test_a_display_is_the_kitchens_unless_its_fryer_says_otherwise():
    text = demo_text()
    assert TempUnit.F in {f.controller.shows for f in parse_kitchen(text).fryers}
    plain = text.replace('shows = "f"', "").replace('shows = "c"', "")
    for units, shown in (("us", TempUnit.F), ("metric", TempUnit.C)):
        told = edit.with_place(plain, {"units": f'units = "{units}"'})
        assert {f.controller.shows for f in parse_kitchen(told).fryers} == {shown}


def test_the_catalogs_sets_and_tasks_are_those_of_its_files():
    sets = load.cut_sets.__wrapped__()
    assert sets["chicken_8"].unit == "head" and sum(p.count for p in sets["chicken_8"].parts) == 8
    rows = load.table("care/tasks.toml")["task"]
    tasks = load.care_tasks.__wrapped__()
    assert [t.key for t in tasks] == [r["key"] for r in rows]
    assert [t.takes_s for t in tasks] == [60.0 * r["takes_min"] for r in rows]


@pytest.mark.parametrize(
    ("name", "folder"),
    [("cuts", "cuts"), ("coatings", "coatings"), ("oils", "oils"), ("compositions", "foods")],
)
def test_what_is_read_of_the_catalog_is_what_its_files_say(name, folder):
    """Read anew: each file's values, field by field."""
    found = getattr(load, name).__wrapped__()
    tables = [load.table(path) for path in load.files.__wrapped__(folder)]
    tables = [t for t in tables if "key" in t and "part" not in t]
    told = {t["key"]: t for t in tables if t["key"] in found}
    assert found and set(found) == set(told)
    for key, item in found.items():
        for field, value in told[key].items():
            own = getattr(item, field, value)
            assert own == (tuple(value) if isinstance(own, tuple) else value), (key, field)


@pytest.mark.parametrize(
    ("count", "unit", "said"),
    [
        (72.73, "piece", "72"),
        (2.5, "piece", "2"),
        (0.4, "piece", "1"),
        (72.0 - 1e-12, "piece", "72"),
        (2.5, "head", "2.5"),
        (9.9994, "head", "9.999"),
        (12.7, "head", "12"),
    ],
)
def test_a_load_is_counted_in_whole_pieces(count, unit, said):
    """Rounded down, as the fryer takes no more; a part of a bird is a load, below ten."""
    assert counted(count, unit) == said


def test_a_hash_of_a_row_that_somebody_changed_is_of_what_stands_there():
    """A number in the place of a text is no text: its hash is another one, and no error hides it."""
    text = '{"author":5,"happened_at":"h","kind":"note","number":3,"payload":{},"recorded_at":"r"'
    wanted = hashlib.sha256(f'p\n{text},"replaces":null,"versions":{{}}}}'.encode()).hexdigest()
    assert row_hash("p", 3, ("note", 5, None), ("h", "r"), ("{}", "{}")) == wanted
    assert row_hash("p", 3, ("note", "5", None), ("h", "r"), ("{}", "{}")) != wanted


@pytest.mark.parametrize(("each_m", "near_m"), [(300.0, 150.0), (500.0, 250.0), (None, 150.0)])
def test_an_altitude_on_a_sheet_is_the_places_own_within_half_a_step(each_m, near_m):
    """150 m, or half of what the control moves at a time where that is more, below and above alike."""
    more = {} if each_m is None else {"lowers_k": 1.0, "each_m": each_m}
    for told_m in (1600.0 - near_m, 1600.0 + near_m):
        setting = MachineSetting(name="Altitude", kind=SettingKind.ALTITUDE, value=f"{told_m:g} m", **more)
        away = 1.0 if told_m > 1600.0 else -1.0
        for altitude_m, off in ((1600.0, False), (1600.0 - away, True)):
            assert off_place(setting, Site(name="Bench", altitude_m=altitude_m)) is off


def test_a_program_that_is_not_there_is_asked_for_by_the_names_that_are():
    """Each once, in their order, or that there are none."""
    kitchen = parse_kitchen(demo_text(), "demo.toml")
    known = ", ".join(sorted({p.name for p in kitchen.programs}))
    for programs, names in ((kitchen.programs, known), ((), "none")):
        with pytest.raises(InputError) as told:
            replace(kitchen, programs=programs).program("gone")
        assert str(told.value).endswith(f"it must be one of: {names}.")
