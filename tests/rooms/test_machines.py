"""Stop-use has no way past but a named qualified person; procedure cards carry the hazard at its step in both
languages.
"""

from __future__ import annotations

import datetime as dt
import io
from dataclasses import replace

import pytest

from frywright.catalog import load as catalog
from frywright.ledger.facts.care import Reopened, StopUse
from frywright.model.errors import InputError
from frywright.rooms.care import machines, procedures
from frywright.rooms.day import day
from frywright.rooms.day import sales as day_sales
from frywright.rooms.day.board import Board, Tap
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.practice import demo_sales
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import stopped
from frywright.voice.tongue import translator
from tests.paper import pages

pytestmark = pytest.mark.usefixtures("any_hour")


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def test_only_a_named_qualified_person_releases(store, kitchen):
    """Anyone stops it at once; crew, a blank name or an empty finding do not release it; a technician with a
    finding does, and both stay on record.
    """
    machines.stop_use(store, kitchen, "alder", "lid_moves", "")
    assert set(stopped(store)) == {"alder"}
    for who, role, finding in (
        ("Kim", "crew", "all looks well now"),
        ("", "licensed", "latch pin replaced, tested"),
        ("Kim", "licensed", "ok"),
    ):
        with pytest.raises(InputError):
            machines.reopen(store, kitchen, "alder", who, role, finding)
    assert set(stopped(store)) == {"alder"}
    machines.reopen(store, kitchen, "alder", "R. Ode", "licensed", "latch pin replaced, pressure test passed")
    assert stopped(store) == {}
    assert [e.entry.kind for e in store.entries() if e.entry.kind in (StopUse.KIND, Reopened.KIND)] == [
        "stop_use",
        "reopen",
    ]
    with pytest.raises(InputError):
        machines.reopen(store, kitchen, "alder", "R. Ode", "licensed", "nothing was wrong with it")
    with pytest.raises(InputError):
        machines.stop_use(store, kitchen, "alder", "mood", "")


def test_what_to_do_first_follows_the_hazard(kitchen):
    """A smell of gas switches nothing and says what the emergency card says; bare heat surfaces get no oil; a
    moving lid is not touched; only fryers with a flame offer the flame.
    """
    (card,) = next(
        part["lines"]
        for part in catalog.table("care/emergency.toml")["part"]
        if part["title"] == "Smell of gas"
    )
    assert machines.first_act("gas_smell") == card
    assert "breaker" not in card
    assert "No switch" in card
    assert "Add no oil" in machines.first_act("low_oil")
    assert "Touch neither lid nor latch" in machines.first_act("lid_moves")
    assert machines.first_act("a reason of their own") == machines.ANY_HAZARD
    electric = kitchen.fryer("alder")
    assert electric.fuel == "electric"
    assert "flame" not in machines.hazards(electric)
    assert "flame" in machines.hazards(replace(electric, fuel="gas"))
    assert "gas_smell" in machines.hazards(electric), "the kitchen may have gas"
    lids = {"lid_moves", "relief", "lid_falls"}
    assert lids.isdisjoint(machines.hazards(kitchen.fryer("cedar"))), "an open fryer closes under no pressure"
    assert lids <= set(machines.hazards(kitchen.fryer("alder")))


@pytest.mark.slow
def test_the_plan_and_the_board_leave_it_out(store, kitchen):
    """A fryer in stop-use gets no drop and cannot be tapped back into use."""
    friday = dt.date(2026, 11, 27)
    day_sales.keep_sales(
        store, kitchen, io.BytesIO(demo_sales(kitchen, friday - dt.timedelta(days=1))), "s.csv"
    )
    board = Board(store=store, kitchen=kitchen, bench=day.bench_for(store, kitchen, friday))
    noon = 12 * 3600.0
    assert any(a.fryer == "alder" for a in board_view(board, noon).advice)
    machines.stop_use(store, kitchen, "alder", "oil_leak", "")
    board.tell(Tap(key="up", what="up", at_s=noon - 4000, fryer="alder"))
    view = board_view(board, noon)
    assert not any(a.fryer == "alder" for a in view.advice)
    assert view.fryers[0].held
    held = day.bench_for(store, kitchen, friday, down=tuple(stopped(store)))
    assert not [d for d in day.morning(held).plan.drops if d.fryer == 0]


@pytest.mark.parametrize("key", procedures.procedures())
def test_every_card_prints_in_both_languages(store, kitchen, key):
    """Every step has both languages, every hazard too, and gear comes with the card."""
    table = catalog.table(f"procedures/{key}.toml")
    spanish = translator("es")
    assert table["gear"] and spanish(table["gear"]) != table["gear"]
    for step in table["step"]:
        assert spanish(step["text"]) != step["text"]
        assert "hazard" not in step or spanish(step["hazard"]) != step["hazard"]
    assert any("hazard" in step for step in table["step"])
    for language in ("en", "es"):
        data = procedures.procedure_pdf(
            store, kitchen, key, language, translator(language), water_m3=0.03, rate_kg_m3=11.2
        )
        assert data.startswith(b"%PDF")
        assert pages(data) == 1


def test_the_dose_of_a_boil_out_is_the_labels(store, kitchen):
    """Eight gallons at 1.5 oz a gallon are 12 oz; without a label there is no card."""
    from frywright.model.units import GALLON, LB, to_inside

    rate_kg_m3 = to_inside(1.5, "oz_gal")
    assert rate_kg_m3 == pytest.approx(1.5 * 7.489, abs=0.002)
    mass_kg = machines.boil_out_dose(8 * GALLON, rate_kg_m3)
    assert mass_kg == pytest.approx(12 * LB / 16)
    us, metric = (
        procedures._dose_text(*given, str)
        for given in (("us", mass_kg, 8 * GALLON, rate_kg_m3), ("metric", 0.3, 0.03, 10.0))
    )
    assert us == "12 oz of cleaner into 8 gal of cold water, by its label at 1.5 oz/gal."
    assert metric == "300 g of cleaner into 30 L of cold water, by its label at 10 g/L."
    with pytest.raises(InputError) as refused:
        machines.boil_out_dose(0.03, 300.0)
    assert "30.0 L at 300.0 g/L; it must be 1.0 L to 500.0 L" in refused.value.say(str, "metric")
    assert "7.9 gal at 40.06 oz/gal; it must be 0.3 gal to 132.1 gal" in refused.value.say(str, "us")
    with pytest.raises(InputError):
        procedures.procedure_pdf(store, kitchen, "boil_out", "en")
    with pytest.raises(InputError):
        procedures.procedure_pdf(store, kitchen, "dancing", "en")
    steps = [s["text"] for s in catalog.table("procedures/boil_out.toml")["step"]]
    cold = next(n for n, s in enumerate(steps) if "cold water, well below" in s)
    cleaner = next(n for n, s in enumerate(steps) if "cleaner to the cold water" in s)
    dry = next(n for n, s in enumerate(steps) if s.startswith("Dry vat"))
    assert cold < cleaner < dry == len(steps) - 1
