"""What is typed at the terminal is read as on a page: with its unit, or in the kitchen's; either mark."""

from __future__ import annotations

import json

import pytest
from typer.main import get_command
from typer.testing import CliRunner

from frywright.cli.main import app
from tests.small import small_kitchen

FIXED = (
    "_kw",
    "_kwh",
    "_kg",
    "_lb",
    "_c",
    "_f",
    "_k",
    "_min",
    "_h",
    "_mm",
    "_in",
    "_l",
    "_gal",
    "_oz",
    "_pct",
)


@pytest.fixture(params=["us", "metric"])
def kitchen(request, tmp_path):
    """A kitchen in pounds, or one in kilograms that speaks Spanish and writes a decimal comma."""
    place, language = ("us_food_code_2022", "en") if request.param == "us" else ("uk", "es")
    path = tmp_path / "own.toml"
    path.write_text(small_kitchen(place, units=request.param, language=language, altitude_m=900), "utf-8")
    return request.param, str(path)


def run(*words):
    """Exit code, and what was answered as JSON."""
    got = CliRunner().invoke(app, [*words, "--json"])
    return got.exit_code, json.loads(got.stdout)


def options(command, path=""):
    """Every option and argument of every command."""
    for name, below in getattr(command, "commands", {}).items():
        yield from options(below, f"{path} {name}")
    for param in [] if hasattr(command, "commands") else command.params:
        yield f"{path} {param.name}", param


def test_no_option_has_a_unit_in_its_name_or_a_number_of_its_own_reader():
    """Nothing asks for kW or minutes by its name; a number with a fraction is read as typed values are.

    Seconds of a pause between turns are the machine's, not a kitchen's.
    """
    known = dict(options(get_command(app)))
    assert len(known) > 150
    assert [name for name in known if name.endswith(FIXED)] == []
    fractions = {
        name for name, param in known.items() if param.type_descriptor.annotation in (float, float | None)
    }
    assert fractions == {" cook live seconds", " day watch every_s", " fleet sync every"}


def test_a_bare_number_is_in_the_unit_of_the_kitchen(kitchen):
    """80 and 40 are pounds or kilograms; 258 Btu/lb of heat is 0.1667 kWh/kg."""
    units, path = kitchen
    food = {"us": ("80", "40", "258"), "metric": ("36,2874", "18,1437", "0,1666667")}[units]
    code, told = run("care", "energy", "13", food[0], food[1], "--food-heat", food[2], "--store", path)
    assert code == 0
    assert told["total_kwh"] == pytest.approx(20.96, abs=0.01)
    code, same = run(
        "care",
        "energy",
        "780 min",
        "80lb",
        "18.1437kg",
        "--food-heat",
        "258Btu/lb",
        "--idle",
        "3412.14 Btu/h",
        "--preheat",
        "2.4kWh",
        "--efficiency",
        "0.8",
        "--store",
        path,
    )
    assert code == 0
    assert same["total_kwh"] == pytest.approx(told["total_kwh"], abs=0.005)


def test_a_plate_is_typed_in_kilowatts_or_btu(kitchen):
    """13.5 kW at 240 V and three phases draw 32.5 A, in either unit and with either mark."""
    units, path = kitchen
    mark = "." if units == "us" else ","
    rest = (
        "--volts",
        "240",
        "--phases",
        "3",
        "--measured-volts",
        f"208{mark}0",
        "--breaker",
        "50",
        "--store",
        path,
    )
    plain = run("care", "site", "--input", f"13{mark}5", *rest)
    other = run("care", "site", "--input", "46064 Btu/h", *rest)
    assert plain[0] == other[0] == 1
    assert "32.5 A" in plain[1]["points"][2]["text"]
    assert plain[1] == other[1]


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (("care", "energy", "13", "80 apples", "40"), "lb"),
        (("care", "card", "boil_out", "--water", "20", "--rate", "2 spoons"), "oz/gal"),
        (("oil", "order", "7", "--on-hand", "two"), "on-hand"),
    ],
)
def test_what_cannot_be_read_names_its_option_and_the_units(kitchen, words, says, tmp_path):
    """A refusal of ours, not of the parser, and nothing like a traceback."""
    got = CliRunner().invoke(
        app,
        [*words, "--store", kitchen[1], *(["--out", str(tmp_path / "x.pdf")] if words[1] == "card" else [])],
    )
    assert got.exit_code == 2
    assert says in got.stderr


def test_a_label_is_read_in_either_rate(kitchen, tmp_path):
    """1.5 oz/gal is 11.23 g/L: the same card, whichever is typed; bare in the kitchen's own."""
    from tests.paper import words

    units, path = kitchen
    bare = "1.5" if units == "us" else "11,2348"
    made = []
    for number, rate in enumerate((bare, "1.5 oz/gal", "11.2348 g/L")):
        out = tmp_path / f"{number}.pdf"
        water = "8 gal"
        got = CliRunner().invoke(
            app,
            [
                "care",
                "card",
                "boil_out",
                "--water",
                water,
                "--rate",
                rate,
                "--out",
                str(out),
                "--store",
                path,
            ],
        )
        assert got.exit_code == 0, got.stderr
        made.append(words(out.read_bytes()))
    assert made[0] == made[1] == made[2]


def test_an_idle_rate_counts_in_either_unit(kitchen):
    """2 kW bare and 6824.28 Btu/h give one day, and more of it idle than the usual 1 kW."""
    food = ("care", "energy", "13", "80lb", "40lb")
    usual, bare, typed = (
        run(*food, *more, "--store", kitchen[1])[1]["idle_kwh"]
        for more in ((), ("--idle", "2"), ("--idle", "6824.28 Btu/h"))
    )
    assert bare == pytest.approx(typed, abs=0.002)
    assert bare == pytest.approx(2 * usual, rel=1e-3)


def test_a_number_has_the_kitchens_mark(kitchen):
    """1,250 volts: far too many where a point is the mark, two readings where a comma is."""
    units, path = kitchen
    got = CliRunner().invoke(
        app, ["care", "site", "--volts", "240", "--measured-volts", "1,250", "--store", path]
    )
    assert got.exit_code == 2
    assert ("1,25 " in got.stderr) is (units == "metric")
