"""A vat's oil through the workbench: events kept once, nonsense refused with its raw text, outlook, limits, cost, order, rotation."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.model.errors import InputError
from frywright.model.units import LB
from frywright.records.store import Store
from frywright.workbench import book, vat
from frywright.workbench.clock import now
from frywright.workbench.day import moment_of
from frywright.workbench.kitchens import demo_text
from frywright.workbench.language import translator

TODAY = dt.date(2026, 11, 25)


@pytest.fixture
def store(tmp_path):
    found = Store.file(tmp_path / "v.db", now)
    book.remember_kitchen(found, demo_text(), "demo.toml")
    return found


@pytest.fixture
def kitchen(store):
    return book.remembered_kitchen(store)


def tell(store, kitchen, day, **values):
    """One event at the close of a day of November."""
    return vat.tell_oil(
        store, kitchen, {"vat": "alder", **values}, at=moment_of(kitchen.trade, dt.date(2026, 11, day), 79_000.0)
    )


def week(store, kitchen):
    """Fresh oil on the 16th, readings that rise by two points a day, top-ups of three pounds."""
    tell(store, kitchen, 16, what="discard")
    for n, day in enumerate(range(17, 26)):
        tell(store, kitchen, day, what="reading", amount=f"{6 + 1.8 * n:.1f}")
        tell(store, kitchen, day, what="top_up", amount="3 lb")


def test_a_week_gives_a_dated_outlook(store, kitchen):
    """Growth is learned, the date lies ahead with its interval, more top-up and cooler oil buy days, in both languages."""
    week(store, kitchen)
    view = vat.vat_view(store, kitchen, "alder", TODAY)
    assert not view["default"]
    assert view["age_days_count"] == 9
    assert view["growth_pct"] == pytest.approx(2.6, abs=0.6)
    assert view["days_n"][0] <= view["days_n"][1] <= view["days_n"][2]
    now_days, more, cooler = (row["days_n"] for row in view["changes"])
    assert more > now_days
    assert cooler > now_days
    assert "límite" in vat.vat_view(store, kitchen, "alder", TODAY, translator("es"))["text"]


def test_oil_over_its_limit_is_to_be_discarded(store, kitchen):
    """Readings near the limit advise a discard tonight; after it the oil is fresh again."""
    tell(store, kitchen, 10, what="discard")
    for day in range(12, 26):
        tell(store, kitchen, day, what="reading", amount=f"{4 + 1.35 * (day - 10):.1f}")
    assert vat.vat_view(store, kitchen, "alder", TODAY)["advice"] == "discard"
    tell(store, kitchen, 25, what="discard")
    view = vat.vat_view(store, kitchen, "alder", TODAY)
    assert view["advice"] == "keep"
    assert view["level_pct"] == pytest.approx(4.0, abs=0.1)


def test_a_vat_nobody_told_of_says_default(store, kitchen):
    """No readings: default figures, the advice is unknown, in words too."""
    view = vat.vat_view(store, kitchen, "cedar", TODAY)
    assert (view["default"], view["advice"]) == (True, "unknown")
    assert view["text"].startswith("Unknown")


def test_a_reading_after_the_top_up_is_put_back(store, kitchen):
    """Told as after, the same number stands for a higher peak."""
    tell(store, kitchen, 24, what="discard")
    tell(store, kitchen, 25, what="top_up", amount="16 lb")
    for other in (store,):
        tell(other, kitchen, 25, what="reading", amount="12", after="1")
    after = vat.vat_state(store, kitchen, "alder", TODAY).belief.mean[0, 1]
    tell(store, kitchen, 25, what="reading", amount="12")
    assert vat.vat_state(store, kitchen, "alder", TODAY).belief.mean[0, 1] < after


@pytest.mark.parametrize("bad", [
    {"what": "reading", "amount": "140"}, {"what": "reading", "amount": "-3"}, {"what": "reading", "amount": "dark"}, {"what": "top_up", "amount": "-5 lb"},
    {"what": "top_up", "amount": "3500 F"}, {"what": "top_up", "amount": "900 lb"}, {"what": "polish"}, {"what": "discard", "vat": "nobody"},
])  # fmt: skip
def test_nonsense_is_refused_and_its_text_is_kept(store, kitchen, bad):
    """Nothing is lost: raw text and reason stand in the records; the outlook does not move."""
    with pytest.raises(InputError):
        tell(store, kitchen, 25, **bad)
    kept = list(store.entries(vat.REFUSED))
    assert kept[-1].entry.payload["raw"]["what"] == bad["what"]
    assert kept[-1].entry.payload["reason"]
    assert not list(store.entries(vat.KIND))


def test_the_same_tap_is_kept_once_and_cartons_are_pounds(store, kitchen):
    """A key sent again is one entry; a carton is 35 lb; a bare number is in the kitchen's unit."""
    values = {"vat": "alder", "what": "top_up", "amount": "1 carton"}
    first, again = vat.tell_oil(store, kitchen, values, "k1"), vat.tell_oil(store, kitchen, values, "k1")
    assert (first[1], again[1]) == (True, False)
    assert first[0].entry.payload["mass_kg"] == pytest.approx(35 * LB)
    assert vat.tell_oil(store, kitchen, {**values, "amount": "5"}, "k2")[0].entry.payload["mass_kg"] == pytest.approx(
        5 * LB
    )


def test_limits_tighten_freely_and_loosen_only_with_a_name(store):
    """The place's figure holds; looser without name and reason is refused; never above the place's."""
    assert vat.limit_of(store)[0] == 24.0
    vat.set_limit(store, "us", 22.0, "", "")
    with pytest.raises(InputError):
        vat.set_limit(store, "us", 25.0, "", "")
    vat.set_limit(store, "germany", 27.0, "R. Ode", "new oil, trial of a month")
    assert vat.limit_of(store)[0] == 24.0
    with pytest.raises(InputError):
        vat.set_limit(store, "atlantis", 20.0, "", "")


def test_cost_order_filling_and_rotation(store, kitchen):
    """Log gaps come first, uptake stands apart, cartons cover changes and safety, older oil never goes into fresher."""
    week(store, kitchen)
    told = vat.cost_view(store, kitchen, 150.0, TODAY)
    assert len(told["log_gaps"]) == 3
    assert told["uptake_money"] == pytest.approx(27 * LB / 10 * 2.4, abs=0.01)
    order = vat.order_view(store, kitchen, 7, 1.0, TODAY)
    assert order["cartons"] >= order["safety_cartons"] - 1
    assert vat.order_view(store, kitchen, 7, 50.0, TODAY)["cartons"] == 0
    assert vat.fill_view(kitchen, "alder")["cartons"] == 2
    assert any("Older oil" in note for note in vat.rotation_notes(kitchen, "alder", "cedar", store, TODAY))
    assert not any("Older oil" in note for note in vat.rotation_notes(kitchen, "cedar", "alder", store, TODAY))
