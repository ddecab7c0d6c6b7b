"""Options of the terminal: what a bare number means stands at the option, and no default speaks one system of
units alone.
"""

from __future__ import annotations

import re
from dataclasses import asdict, replace

import pytest
import typer.core as printing
from typer.main import get_command
from typer.testing import CliRunner

from frywright.cli.desk import goals_of
from frywright.cli.main import app
from frywright.cli.spoken import BARE, speak
from frywright.design.search import Goals
from frywright.ledger.facts.people import DrillAnswered
from frywright.model.kitchen import UnitSystem
from frywright.model.units import parse
from frywright.rooms.care.training import drill_views
from frywright.rooms.cook.goals import goals_typed
from frywright.rooms.kitchen import remembered_kitchen
from frywright.voice.tongue import translator
from tests.demo import kitchen_store

UNIT = re.compile(r"\d\s*(C|F|mm|in|m|ft|kg|lb|kW|kWh|Btu\S*|kWh/kg)\b")
DIMENSIONS = {
    "C": "temperature",
    "mm": "length",
    "kW": "power",
    "kWh": "energy",
    "F": "temperature",
    "Btu/lb": "specific_energy",
}


def params(command=None, path=()):
    """Every argument and option of the terminal, with its command."""
    command = command or get_command(app)
    below = getattr(command, "commands", {})
    for name, one in below.items():
        yield from params(one, (*path, name))
    if not below:
        yield from ((" ".join(path), one) for one in command.params)


SPOKEN = [
    (where, one)
    for where, one in params()
    if isinstance(one.default, str) and one.default != "0 m" and UNIT.search(one.default)
]


def test_there_are_such_defaults():
    """What the next test looks at."""
    assert {one.name for _, one in SPOKEN} >= {"margin", "core", "hottest", "low", "high", "idle", "preheat"}


@pytest.mark.parametrize(("where", "one"), SPOKEN, ids=[f"{w} {o.name}" for w, o in SPOKEN])
def test_a_default_is_said_in_both_systems(where, one):
    """The same value twice, within what the shown digits hold (1.5 %, or one degree)."""
    first, other = one.show_default.split(" = ")
    assert first.replace(" ", "") == one.default.replace(" ", "")
    if one.name == "margin":
        kind = "temperature_difference"
    else:
        kind = DIMENSIONS[re.search(r"[A-Z][\w/]*$|[a-z][\w/]*$", first)[0]]
    least = 0.7 if kind.startswith("temperature") else 1e-9
    for a, b in zip(first.split("-"), other.split("-"), strict=True):
        assert parse(a, kind) == pytest.approx(parse(b, kind), rel=0.015 if least < 0.1 else 0.0, abs=least)


def test_a_design_of_the_terminal_has_the_goals_own_defaults(kitchen):
    """What its help says is what a design has where nothing is typed, as on the page."""
    told = {one.name: one.default for where, one in params() if where == "cook design"}
    boxes = {box: told[box] for box in ("margin", "longest", "hottest", "colour_low", "colour_high")}
    boxes["loss"] = told["most_loss"]
    assert asdict(goals_of(kitchen.site, boxes, told["core"], told["crust"])) == pytest.approx(
        asdict(Goals())
    )
    assert goals_typed(kitchen.site, {}, {}) == Goals()
    metric, typed = replace(kitchen.site, units=UnitSystem.METRIC), {"crust_high": "0.2", "loss": "30"}
    for site, depth_m in ((kitchen.site, 0.2 * 0.0254), (metric, 0.2e-3)):
        found = goals_typed(site, typed, {"crust_high": "crust", "loss": "loss"})
        assert found.crust_high_m == pytest.approx(depth_m) and found.most_loss_frac == pytest.approx(0.3)


def test_what_a_bare_number_means_is_said_in_every_language(monkeypatch):
    """One sentence, translated once, behind the help of each option that it is true of."""
    monkeypatch.setattr(printing, "_", printing._)  # put back after the test
    command = get_command(app)
    speak(command, translator("es"))
    told = {f"{where} {one.name}": one.help for where, one in params(command) if one.help}
    said = [name for name, text in told.items() if text.endswith(translator("es")(BARE))]
    assert {
        *("cook design core", "cook simulate oil_temp", "probe heat-up low", "probe calibrate probed"),
        *("care done set_temp", "care close value", "oil log amount"),
    } <= set(said)
    assert not [name for name, text in told.items() if BARE in text]


@pytest.fixture
def drilled(tmp_path):
    """A store with the demo kitchen, and the key of one of its drills."""
    store = kitchen_store(tmp_path / "s.db")
    return store, str(tmp_path / "s.db"), drill_views(remembered_kitchen(store))[0]


def test_an_answer_that_is_not_on_the_list_is_refused(drilled):
    """None, less than one, more than there are, or no drill named: each says so, and nothing is kept."""
    store, path, drill = drilled
    most = len(drill.choices)
    for choice in ("0", "-1", str(most + 1)):
        done = CliRunner().invoke(app, ["care", "drill", drill.key, "--choice", choice, "--store", path])
        assert done.exit_code == 2 and f"1 to {most}" in done.stderr and choice in done.stderr, choice
    done = CliRunner().invoke(app, ["care", "drill", "--choice", "1", "--store", path])
    assert done.exit_code == 2 and "name it before --choice" in done.stderr
    assert not list(store.facts(DrillAnswered))
    done = CliRunner().invoke(app, ["care", "drill", drill.key, "--choice", str(most), "--store", path])
    assert done.exit_code == 0 and [e.fact.choice_number for e in store.facts(DrillAnswered)] == [most - 1]
