"""What a person keeps: kitchens, programs, simulations."""

from __future__ import annotations

import pytest

from frywright.ledger.facts.cook import SimulationKept
from frywright.ledger.store import Store
from frywright.model.errors import DataError, InputError, NoKitchenError
from frywright.model.program import Stage
from frywright.rooms.clock import now
from frywright.rooms.cook.programs import Overtaken, keep_simulation, save_program
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.ask import CookRequest, ask, edit_program
from frywright.trial.kitchens import demo_text
from tests.demo import kitchen_store


@pytest.fixture
def store(tmp_path):
    return kitchen_store(tmp_path / "a.db")


def test_a_kitchen_is_kept_once_and_replaced_when_changed(store):
    """The same text is not doubled; a changed one supersedes; a broken one writes nothing."""
    remember_kitchen(store, demo_text(), "demo.toml")
    assert len(list(store.entries("kitchen"))) == 1
    remember_kitchen(
        store, demo_text().replace("altitude_ft = 5420", "altitude_ft = 10"), "demo.toml", "moved to the sea"
    )
    assert len(store.current("kitchen")) == 1
    assert remembered_kitchen(store).site.altitude_m < 5
    with pytest.raises(DataError):
        remember_kitchen(store, "[kitchen]", "demo.toml")
    assert len(list(store.entries("kitchen"))) == 2


def test_a_saved_program_is_the_next_version(store):
    """Saving gives version 4 of 3; the same again is unchanged, another change of version 3 comes too
    late.
    """
    kitchen = remembered_kitchen(store)
    old = kitchen.program("bone-in alder")
    new = edit_program(old, [*old.stages[:-1], Stage(set_c=160.0, duration_s=90.0)])
    save_program(store, kitchen, new)
    assert remembered_kitchen(store).program("bone-in alder") == new
    with pytest.raises(InputError, match="version 4 holds the same"):
        save_program(store, kitchen, new)
    late = edit_program(old, [*old.stages[:-1], Stage(set_c=160.0, duration_s=80.0)])
    with pytest.raises(Overtaken, match="version 4 was saved since version 3"):
        save_program(store, kitchen, late)
    assert remembered_kitchen(store).program("bone-in alder") == new


def test_a_kept_simulation_holds_its_question_and_editions(store):
    """Curves, verdicts, stages, and the versions of program, catalog and rule."""
    kitchen = remembered_kitchen(store)
    recorded = keep_simulation(
        store, kitchen, ask(kitchen, CookRequest(program=kitchen.program("bone-in cedar")))
    )
    fact, versions = recorded.fact, recorded.versions
    assert len(fact.time_s) == len(fact.oil_c)
    assert fact.stages[0].duration_s == 930.0
    assert {v.outcome for v in fact.verdicts} == {"unknown"}
    assert versions["us_food_code"] == "us_food_code_2022"
    assert store.fact(recorded.number, SimulationKept) == recorded
    assert store.verify()[0] == 2


def test_an_empty_store_has_no_kitchen(tmp_path):
    """Asked before anything was loaded, it says so."""
    with pytest.raises(NoKitchenError, match="no kitchen here yet"):
        remembered_kitchen(Store.file(tmp_path / "b.db", now))


def test_a_kitchen_of_ones_own_changes_its_limits_only_with_a_reason(store):
    """The invented demo may give way; afterwards another place's rule or a smaller thermometer error needs
    one, and it stands on record.
    """
    own = demo_text().replace("invented = true\n", "")
    remember_kitchen(store, own, "own.toml")
    other = own.replace("us_food_code_2022", "uk")
    for text in (other, own.replace("thermometer_error_f = 2", "thermometer_error_f = 1")):
        with pytest.raises(InputError, match="moves the limit"):
            remember_kitchen(store, text, "own.toml")
    remember_kitchen(
        store,
        own.replace("thermometer_error_f = 2", "thermometer_error_f = 3"),
        "own.toml",
        "a cheaper thermometer",
    )
    kept = remember_kitchen(store, other, "own.toml", "moved across the sea")
    assert kept.fact.reason == "moved across the sea"
    assert remembered_kitchen(store).site.jurisdiction == "uk"
