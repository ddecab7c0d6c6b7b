"""A command stands on a store or on a kitchen file alike, and speaks its language and units."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.facts.cook import ProgramSaved
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from tests.demo import kitchen_store
from tests.model.test_kitchen_files import GOOD

SPAIN = GOOD.replace('jurisdiction = "uk"', 'jurisdiction = "spain"')


def said(*words: str):
    """What a command printed, its errors beside it."""
    return CliRunner().invoke(app, list(words))


@pytest.fixture
def spain(tmp_path):
    path = tmp_path / "spain.toml"
    path.write_text(SPAIN, "utf-8")
    return str(path)


def test_a_kitchen_file_answers_in_its_place_language_and_units(spain):
    """The oil limit of Spain without a second question, in Spanish; --language speaks another."""
    got = said("oil", "limit", "--store", spain)
    assert (got.exit_code, "25 %" in got.stdout, "El aceite se cambia" in got.stdout) == (0, True, True)
    assert "Oil goes at 25 %" in said("oil", "limit", "--store", spain, "--language", "en").stdout
    assert json.loads(said("oil", "limit", "--store", spain, "--json").stdout)["limit_pct"] == 25.0
    wrong = said("oil", "limit", "--store", spain, "--language", "xx")
    assert (wrong.exit_code, "debe ser" in wrong.output) == (2, True)
    wrong = said("oil", "fill", "nowhere", "--store", spain)
    assert (wrong.exit_code, "debe ser" in wrong.output) == (2, True)


def test_a_kitchen_file_keeps_nothing(spain):
    """What would be kept is refused and says where it could be."""
    got = said("care", "stop", "one", "oil_leak", "--store", spain)
    assert got.exit_code != 0
    assert "--store" in got.output


def test_a_program_saved_on_a_page_is_known_to_the_terminal(tmp_path):
    """The same command takes the store in which it was saved."""
    path = tmp_path / "own.db"
    store = kitchen_store(path, GOOD)
    before = remembered_kitchen(store)
    made = replace(before.programs[0], name="saved on a page")
    write(store, ProgramSaved.of(made))
    counts = json.loads(said("kitchen", "check", str(path), "--json").stdout)
    assert counts["programs"] == len(before.programs) + 1
    lost = said("cook", "simulate", str(path), "--program", "nothing")
    assert "saved on a page" in lost.output


def test_a_store_that_is_not_there_is_not_made(tmp_path):
    """Asking after a record makes no store."""
    path = tmp_path / "none.db"
    assert said("records", "verify", str(path)).exit_code != 0
    assert said("records", "case", "--store", str(path)).exit_code != 0
    assert said("records", "restore", "x.zip").exit_code != 0
    assert not path.exists()
