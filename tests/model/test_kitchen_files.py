"""Kitchen files: a second kitchen written by hand, and every way to get one wrong."""

from __future__ import annotations

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.design.controller import render
from frywright.model.errors import DataError
from frywright.model.units import LB, PSI

GOOD = """[kitchen]
name = "Test bench (invented)"
altitude_m = 120
jurisdiction = "uk"
units = "metric"
language = "es"

[[fryer]]
key = "one"
name = "One"
kind = "pressure"
capacity_heads = 4
oil_mass_kg = 29
heater_kw = 12
working_gauge_psi = 12
relief_gauge_psi = 15

[fryer.controller]
stage_count = 3

[[product]]
key = "bird"
name = "Bird"
cut_set = "chicken_8"
coating = "dredge"
start_temp_c = 4

[[program]]
name = "bird one"
product = "bird"
fryer = "one"
total = "11:00"

[[program.stage]]
set_c = 165
until_left = "10:00"

[[program.stage]]
set_c = 155
lid = "pressure"
until_left = "0:00"
"""

BAD = {
    "not toml": ('name = "Test bench (invented)"', "name = Test bench", 2, "not valid TOML"),
    "no kitchen": ("[kitchen]\n", "[kitchens]\n", 0, "no [kitchen]"),
    "unknown table": ("[[product]]", "[[produce]]", 21, "unknown table"),
    "unknown key": ("altitude_m = 120", "altitud_m = 120", 3, "did you mean altitude_m"),
    "unit of another dimension": ("altitude_m = 120", "altitude_kg = 120", 3, "altitude_kg"),
    "altitude too high": (
        "altitude_m = 120",
        "altitude_m = 12000",
        3,
        "-500 m (-1640 ft) to 5000 m (16404 ft)",
    ),
    "altitude as text": ("altitude_m = 120", 'altitude_m = "120"', 3, "a number without quotes"),
    "jurisdiction": ('"uk"', '"mars"', 4, "unknown jurisdiction"),
    "units": ('units = "metric"', 'units = "cubits"', 5, "one of: us, metric"),
    "language": ('language = "es"', 'language = "tlh"', 6, "one of: en, es"),
    "fryer kind": ('kind = "pressure"', 'kind = "vacuum"', 11, "one of: open, pressure"),
    "one bracket": ("[[fryer]]", "[fryer]", 8, "two brackets"),
    "oil mass zero": ("oil_mass_kg = 29", "oil_mass_kg = 0", 13, "2.00 kg (4.41 lb) to 200 kg (441 lb)"),
    "oil mass not a number": ("oil_mass_kg = 29", "oil_mass_kg = nan", 13, "finite"),
    "oil mass twice": ("oil_mass_kg = 29", "oil_mass_kg = 29\noil_mass_lb = 64", 14, "same value"),
    "oil mass missing": ("oil_mass_kg = 29\n", "", 8, "lacks oil_mass_kg"),
    "heater in volts": ("heater_kw = 12", "heater_v = 240", 14, "heater_v"),
    "heater too small": ("heater_kw = 12", "heater_kw = 0.1", 14, "0.5 kW to 200.0 kW into the oil"),
    "capacity missing": ("capacity_heads = 4\n", "", 8, "capacity_heads or capacity_kg"),
    "capacity a fraction": ("capacity_heads = 4", "capacity_heads = 4.5", 12, "a whole number"),
    "pressure too high": (
        "working_gauge_psi = 12",
        "working_gauge_psi = 30",
        15,
        "10.0 kPa (1.5 psi) to 110.0 kPa (16.0 psi)",
    ),
    "relief under working": (
        "relief_gauge_psi = 15",
        "relief_gauge_psi = 10",
        16,
        "never set or test a relief valve",
    ),
    "unknown oil": ('name = "One"', 'name = "One"\noil = "crude"', 11, "unknown oil"),
    "vent without a unit": (
        "oil_mass_kg = 29",
        "oil_mass_kg = 29\nvent = 25",
        14,
        'vent_s = 25 or vent = "25 s"',
    ),
    "oil without a unit": ("oil_mass_kg = 29", "oil_mass = 29", 13, 'oil_mass_kg = 29 or oil_mass = "29 kg"'),
    "display": ("stage_count = 3", 'stage_count = 3\nshows = "k"', 20, "one of: f, c"),
    "no stages held": ("stage_count = 3", "stage_count = 0", 19, "1 to 20"),
    "cut set": ('cut_set = "chicken_8"', 'cut_set = "chicken_7"', 24, "chicken_8"),
    "coating": ('coating = "dredge"', 'coating = "gold"', 25, "dredge"),
    "frozen": ("start_temp_c = 4", "start_temp_c = 4\nfrozen = true", 27, "thaw fully"),
    "start too warm": ("start_temp_c = 4", "start_temp_c = 60", 26, "-1.0 °C (30 °F) to 40.0 °C (104 °F)"),
    "start missing": ("start_temp_c = 4\n", "", 21, "lacks start_temp_c"),
    "program without fryer": ('fryer = "one"', 'fryer = "two"', 0, "two"),
    "program without product": ('product = "bird"', 'product = "fish"', 0, "fish"),
    "set point too hot": ("set_c = 165", "set_c = 365", 35, "60.0 °C (140 °F) to 230.0 °C (446 °F)"),
    "set point in lb": ("set_c = 165", "set_lb = 165", 35, "set_lb"),
    "clock with 75 seconds": ('until_left = "10:00"', 'until_left = "10:75"', 36, "minutes:seconds"),
    "two ends": ('until_left = "10:00"', 'until_left = "10:00"\nduration_s = 60', 34, "exactly one"),
    "no end": ('until_left = "10:00"\n', "", 34, "exactly one"),
    "time left without total": ('total = "11:00"\n', "", 0, "total"),
    "time left past total": ('total = "11:00"', 'total = "9:00"', 28, "before its start"),
    "condition without longest wait": ('until_left = "10:00"', "until_core_c = 70", 34, "at_most"),
    "true for a number": ("set_c = 165", "set_c = true", 35, "a number without quotes"),
    "pressure in an open fryer": ('kind = "pressure"', 'kind = "open"', 28, "open fryer"),
    "load above the fryer": (
        'total = "11:00"',
        'total = "11:00"\nload_heads = 5',
        33,
        "at most 4, which is what One",
    ),
    "load of nothing": ('total = "11:00"', 'total = "11:00"\nload_heads = 0', 33, "above 0"),
    "a list for a number": ("altitude_m = 120", "altitude_m = [120]", 3, "a number without quotes"),
    "a table for a number": ("altitude_m = 120", "altitude_m = { up = 120 }", 3, "a number without quotes"),
    "a number for a table": ("[fryer.controller]\nstage_count = 3", "controller = 3", 18, "one bracket"),
    "several controls": ("[fryer.controller]", "[[fryer.controller]]", 18, "one bracket"),
    "a slip in a table's name": (
        "[fryer.controller]",
        "[fryer.controler]",
        18,
        "a known key; did you mean controller?",
    ),
    "a slip in a list's name": (
        "[[program.stage]]\nset_c = 155",
        "[[program.stages]]\nset_c = 155",
        38,
        "a known key; did you mean stage?",
    ),
    "stages that are none": (
        '[[program.stage]]\nset_c = 165\nuntil_left = "10:00"\n\n[[program.stage]]\nset_c = 155\nlid ='
        ' "pressure"\nuntil_left = "0:00"\n',
        "stage = [165, 155]\n",
        34,
        "two brackets",
    ),
    "a fryer that is a number": ("[kitchen]\n", "fryer = [1]\n[kitchen]\n", 0, "not valid TOML"),
    "a product in one bracket": ("[[product]]", "[product]", 0, "two brackets"),
    "fuel in capitals": ('name = "One"', 'name = "One"\nfuel = "Gas"', 11, "one of: electric, gas"),
    "no name": ('name = "One"', 'name = " "', 10, "1 to 200 letters on one line"),
    "turned letters": ('name = "Bird"', 'name = "\\u202eBird"', 23, "1 to 200 letters on one line"),
    "hold life below nothing": (
        'total = "11:00"',
        'total = "11:00"\nhold_life_min = -1',
        33,
        "1 s to 1440:00",
    ),
    "a smallest load of tons": (
        "capacity_heads = 4",
        "capacity_heads = 4\nmin_load_kg = 4000",
        13,
        "0.00 kg (0.00 lb) to 200 kg (441 lb)",
    ),
    "doubled key": (
        "[[product]]",
        (
            '[[product]]\nkey = "bird"\nname = "B"\ncut_set = "fish"\ncoating = "bare"\nstart_temp_c ='
            " 3\n\n[[product]]"
        ),
        0,
        "used once",
    ),
}


def test_a_kitchen_written_by_hand():
    """Metric, Spanish, one fryer: everything lands in SI."""
    kitchen = parse_kitchen(GOOD)
    fryer = kitchen.fryer("one")
    assert fryer.heater_w == 12000.0
    assert fryer.working_gauge_pa == pytest.approx(12 * PSI)
    assert kitchen.program("bird one").durations_s() == (60.0, 600.0)
    assert kitchen.site.language == "es"


@pytest.mark.parametrize(
    ("units", "controller", "shown"),
    [
        ("metric", "stage_count = 3", "165"),
        ("metric", 'stage_count = 3\nshows = "f"', "329"),
        ("us", "stage_count = 3", "329"),
        ("us", 'stage_count = 3\nshows = "c"', "165"),
    ],
)
def test_a_display_shows_the_kitchens_unit_where_the_file_names_none(units, controller, shown):
    """165 degC is keyed as 165 in a metric kitchen, 329 degF in the other; what the file says comes first."""
    text = GOOD.replace('units = "metric"', f'units = "{units}"').replace("stage_count = 3", controller)
    fryer = parse_kitchen(text).fryer("one")
    keyed = render(parse_kitchen(text).program("bird one"), fryer.controller)
    assert next(v.text for v in keyed.values if v.what == "set") == shown


def test_people_units_fill_the_same_field(kitchen):
    """oil_mass_lb = 45 of the demo's file fills oil_mass_kg."""
    assert kitchen.fryer("alder").oil_mass_kg == pytest.approx(45 * LB)
    assert kitchen.fryer("birch").oil_mass_kg == pytest.approx(72 * LB)
    assert kitchen.product("bone_in").unit_mass_kg == pytest.approx(2.3 * LB)


def test_there_are_at_least_thirty_kinds_of_bad_files():
    """The list below is as long as promised."""
    assert len(BAD) >= 30


@pytest.mark.parametrize("name", sorted(BAD))
def test_bad_files_say_what_where_and_what_to_do(name):
    """Each mistake names itself, its line with a caret, and a remedy."""
    old, new, line, words = BAD[name]
    assert old in GOOD
    with pytest.raises(DataError) as caught:
        parse_kitchen(GOOD.replace(old, new, 1), "k.toml")
    text = str(caught.value)
    assert words in text
    assert all(problem.remedy for problem in caught.value.problems)
    if line:
        assert any(problem.line_number == line for problem in caught.value.problems), text
        assert "^" in text


@pytest.mark.parametrize(
    ("old", "new", "under"),
    [
        ("altitude_m = 120", "    altitude_m = 12000", "altitude_m"),
        ("oil_mass_kg = 29", '\t"oil_mass_kg" = 0', '"oil_mass_kg"'),
        ("[[fryer]]\n", "   [[fryer]]\nlid = 4\n", "lid"),
        ("oil_mass_kg = 29\n", "", "[[fryer]]"),
        ("heater_kw = 12", "heater_kw = 12 kW", "kW"),
    ],
)
def test_the_caret_stands_under_what_is_wrong(old, new, under):
    """Under an indented key, a key in quotes, the header of a table that lacks one, and where TOML stops."""
    with pytest.raises(DataError) as caught:
        parse_kitchen(GOOD.replace(old, new, 1), "k.toml")
    shown = str(caught.value).split("\n")
    at = next(i for i, line in enumerate(shown) if line.strip() == "^")
    assert shown[at - 1][shown[at].index("^") :].startswith(under), "\n".join(shown)


SHEET = GOOD.replace(
    "[[product]]",
    """[[fryer.setting]]
name = "Höhe über Meer"
kind = "altitude"
value = "120 m"
lowers_k = 1.5
each_m = 300

[[fryer.setting]]
name = "Timer at the vent"
kind = "clock"
value = "goes on"

[[fryer.setting.wrong]]
reads = "halts"
clock = "waits"

[[product]]""",
)
BAD_SETTINGS = {
    "kind": (
        'kind = "clock"',
        'kind = "timer"',
        30,
        "one of: scale, lid, load, clock, altitude, alarm, other",
    ),
    "no value": ('value = "goes on"\n', "", 28, "lacks value"),
    "value of blanks": ('value = "goes on"', 'value = "  "', 31, "1 to 40 letters on one line"),
    "turned letters": ('name = "Timer at', 'name = "\\u202eTimer at', 29, "1 to 60 letters on one line"),
    "name twice": ('name = "Timer at the vent"', 'name = "höhe  über MEER"', 0, "used once"),
    "no height": ('value = "120 m"', 'value = "high"', 24, "is no height"),
    "half a correction": ("each_m = 300\n", "", 21, "both given, or neither"),
    "correction upwards": ("lowers_k = 1.5", "lowers_k = -1.5", 25, "above 0 and at most 20.0 °C"),
    "correction of a clock": ('kind = "altitude"', 'kind = "clock"', 25, "only an altitude setting has it"),
    "the right one as a wrong one": ('reads = "halts"', 'reads = "Goes  on"', 0, "another reading"),
    "a wrong clock that is right": ('clock = "waits"', 'clock = "left"', 0, "other than what the controller"),
    "scale of a clock": ('clock = "waits"', 'shows = "f"', 0, "only a setting of kind scale"),
    "oil far away": ('clock = "waits"', "set_change_k = 300", 35, "-60.0 °C"),
    "no time at all": ('clock = "waits"', "time_frac = 0", 35, "10 % to 500 %"),
    "unknown key": ('clock = "waits"', "colour = 1", 35, "one of: clock, does"),
    "one bracket": ("[[fryer.setting.wrong]]", "[fryer.setting.wrong]", 33, "Write [[fryer.setting.wrong]]"),
}


def test_machine_settings_are_the_kitchens_own():
    """As many as are written, in their words; none where none are."""
    first, second = parse_kitchen(SHEET).fryer("one").settings
    assert (first.name, first.value, first.lowers_k, first.each_m) == ("Höhe über Meer", "120 m", 1.5, 300.0)
    assert (second.wrong[0].reads, str(second.wrong[0].clock)) == ("halts", "waits")
    assert parse_kitchen(GOOD).fryer("one").settings == ()


@pytest.mark.parametrize("name", sorted(BAD_SETTINGS))
def test_a_setting_that_cannot_be_says_what_where_and_what_to_do(name):
    """Each with its line and a caret."""
    old, new, line, words = BAD_SETTINGS[name]
    assert SHEET.count(old) >= 1
    with pytest.raises(DataError) as caught:
        parse_kitchen(SHEET.replace(old, new, 1), "k.toml")
    (problem,) = caught.value.problems
    assert words in str(problem) and "^" in str(problem)
    assert problem.remedy
    assert line in (0, problem.line_number), str(problem)


def test_more_settings_than_a_sheet_holds_are_refused():
    """One and twenty."""
    more = "".join(f'[[fryer.setting]]\nname = "s{n}"\nkind = "other"\nvalue = "1"\n\n' for n in range(21))
    with pytest.raises(DataError, match="at most 20"):
        parse_kitchen(GOOD.replace("[[product]]", more + "[[product]]"))


def test_all_problems_are_told_at_once():
    """Three mistakes in three tables give three problems."""
    text = (
        GOOD.replace("altitude_m = 120", "altitude_m = 12000")
        .replace("heater_kw = 12", "heater_kw = 900")
        .replace("set_c = 165", "set_c = 999")
    )
    with pytest.raises(DataError) as caught:
        parse_kitchen(text)
    assert len(caught.value.problems) == 3
