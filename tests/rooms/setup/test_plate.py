"""A fryer's plate, what is taken for what nobody measured, and what takes its place."""

from __future__ import annotations

import tomllib
from dataclasses import replace

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.facts.care import PlateTyped
from frywright.model.errors import InputError
from frywright.model.units import PSI
from frywright.rooms.cook import setup
from frywright.rooms.kitchen import kitchen_text, remembered_kitchen
from tests.rooms.setup.answers import US, kept, told


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
