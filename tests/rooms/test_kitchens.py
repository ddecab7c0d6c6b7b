"""Several kitchens in one store: a copy with its differences, or a set-up from nothing."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.catalog.edit import for_another_place, with_place
from frywright.catalog.kitchen import parse_kitchen
from frywright.ledger.backup import backup, check, restore
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.cook.programs import save_program
from frywright.rooms.cook.setup import setup_of
from frywright.rooms.fleet.kitchens import kitchen_at, kitchens_of, open_kitchen
from frywright.rooms.kitchen import kitchen_text, remember_kitchen, remembered_kitchen
from frywright.trial.predicted import Answerer
from tests.demo import kitchen_store

METRIC = """
[kitchen]
name = "Puerto Aster"  # invented
altitude_m = 120
jurisdiction = "spain"
language = "es"
units = "metric"

[[fryer]]
key = "uno"
name = "Uno"
kind = "open"
oil_mass_kg = 18
heater_kw = 14
capacity_kg = 2
estimates = ["swing",
  "heater"]

[[product]]
key = "tiras"
name = "Tiras"
cut_set = "tenders"
coating = "dredge"
unit_mass_g = 55
start_temp_c = 4
"""


@pytest.fixture
def store(tmp_path):
    """A store with the demo, changed once since."""
    found = kitchen_store(tmp_path / "k.db")
    kitchen = remembered_kitchen(found)
    program = kitchen.program("bone-in cedar")
    stages = list(program.timed().stages)
    stages[-1] = replace(stages[-1], duration_s=stages[-1].duration_s + 60.0)
    made = replace(program.timed(), stages=tuple(stages), version=program.version + 1)
    save_program(found, kitchen, made, Answerer(by="Ana Vale", reason="a minute more"))
    yield found
    found.close()


def test_a_copy_has_the_fryers_and_newest_programs_and_proves_nothing(store):
    """What is particular to the other machines stays behind; its own place is its own."""
    key = open_kitchen(store, {"name": "East Gate", "like": "-", "altitude": "900 ft"})
    there, kitchen, here = store.at(key), remembered_kitchen(store.at(key)), remembered_kitchen(store)
    assert key == "east_gate"
    assert kitchen.site.name == "East Gate"
    assert kitchen.site.altitude_m == pytest.approx(900 * 0.3048)
    assert here.site.altitude_m != kitchen.site.altitude_m
    assert [f.key for f in kitchen.fryers] == [f.key for f in here.fryers]
    newest = here.program("bone-in cedar")
    assert kitchen.program("bone-in cedar") == newest
    assert here.emergency.address and not kitchen.emergency.address
    assert kitchen.calibrations == () and kitchen.probed == () and kitchen.failed == ()
    closed = next(f for f in kitchen.fryers if f.kind == "pressure")
    opened = next(f for f in kitchen.fryers if f.kind == "open")
    assert set(closed.estimates) == {"vent", "head_volume", "swing", "heater", "relief_gauge"}
    assert set(opened.estimates) == {"swing", "heater"}
    assert there.verify()[0] == there.last().number > 0
    assert {h.key: h.name for h in kitchens_of(store)} == {"": here.site.name, key: "East Gate"}


def test_a_change_in_one_kitchen_is_none_in_the_other(store):
    """Same program, same name: each kitchen has its own versions."""
    key = open_kitchen(store, {"name": "East Gate", "like": "-"})
    before = remembered_kitchen(store)
    text = kitchen_text(store.at(key)).replace('name = "East Gate"', 'name = "East Gate, level 2"')
    remember_kitchen(store.at(key), text, "kitchen.toml", "moved upstairs")
    assert remembered_kitchen(store) == before
    assert remembered_kitchen(store.at(key)).site.name == "East Gate, level 2"


def test_a_kitchen_without_a_copy_begins_with_its_set_up(store):
    """Its name stands in the first screen already; nothing else is taken over."""
    key = open_kitchen(store, {"name": "Harbour Steps"})
    assert setup_of(store.at(key), "kitchen").typed("place", "name") == "Harbour Steps"
    assert not kitchens_of(store)[1].described
    assert store.at(key).last().number == 0


def test_a_metric_kitchen_is_copied_in_its_own_units(tmp_path):
    """An altitude with a comma, a list of estimates on two lines, no pressure fryer, another country."""
    store = kitchen_store(tmp_path / "m.db", METRIC)
    key = open_kitchen(
        store, {"name": "Sierra", "like": "-", "altitude": "1.240,5 m", "jurisdiction": "us_food_code_2022"}
    )
    kitchen = remembered_kitchen(store.at(key))
    assert kitchen.site.altitude_m == pytest.approx(1240.5)
    assert (kitchen.site.jurisdiction, kitchen.site.language) == ("us_food_code_2022", "es")
    assert kitchen.fryers[0].estimates == ("swing", "heater")
    again = open_kitchen(store, {"name": "Sierra Dos", "like": key, "altitude": ""})
    assert remembered_kitchen(store.at(again)).site.altitude_m == pytest.approx(1240.5)
    store.close()


@pytest.mark.parametrize(
    ("typed", "field"),
    [
        ({"name": " "}, "name"),
        ({"name": "x" * 61}, "name"),
        ({"name": "east  GATE", "like": "-"}, "name"),
        ({"name": "North", "like": "nowhere"}, "kitchen"),
        ({"name": "North", "like": "-", "altitude": "high"}, "altitude"),
        ({"name": "North", "like": "-", "altitude": "90000 ft"}, "altitude"),
        ({"name": "North", "like": "-", "jurisdiction": "atlantis"}, "jurisdiction"),
    ],
)
def test_what_cannot_be_opened_is_refused_whole(store, typed, field):
    """The box is named, and no half kitchen stays behind."""
    open_kitchen(store, {"name": "East Gate", "like": "-"})
    before = (kitchens_of(store), store.last())
    with pytest.raises(InputError) as caught:
        open_kitchen(store, typed)
    assert caught.value.field == field
    assert (kitchens_of(store), store.last()) == before
    assert store.sites() == ("", "east_gate")


def test_names_without_letters_of_ours_get_a_key_too(store):
    """Two of them get two keys."""
    keys = [open_kitchen(store, {"name": name}) for name in ("東門", "西門", "East Gate", "East-Gate")]
    assert len(set(keys)) == 4
    with pytest.raises(InputError, match="kitchen"):
        kitchen_at(store, "nobody")


def test_a_backup_brings_every_kitchen_back(store, tmp_path):
    """Each chain to its last hash; one kitchen left out of the manifest or slipped in is found."""
    key = open_kitchen(store, {"name": "East Gate", "like": "-"})
    told = backup(store, tmp_path / "b.zip")
    assert check(tmp_path / "b.zip") == told
    back = Store.file(tmp_path / "back.db", now)
    restore(tmp_path / "b.zip", back)
    for site in ("", key):
        assert back.at(site).last() == store.at(site).last()
        assert back.at(site).verify()[0] > 0
    assert remembered_kitchen(back.at(key)) == remembered_kitchen(store.at(key))
    back.close()


def test_what_was_fitted_on_other_machines_stays_with_them(tmp_path):
    """A calibration that stands in the file itself is not copied; the table behind it is."""
    fitted = (
        '[[calibration]] # fitted\ncut = "tender"\ncoating = "dredge"\nlid = "open"\n'
        "half_thickness_m = 0.009\nshape_n = 1.0\nreference_mass_g = 55\npieces_count = 6\n"
        "mass_low_g = 45\nmass_high_g = 65\n"
        "oil_low_c = 165\noil_high_c = 180\nstart_low_c = 3\nstart_high_c = 5\nerror_k = 1.2\n\n"
    )
    store = kitchen_store(tmp_path / "f.db", METRIC.replace("[[product]]", fitted + "[[product]]"))
    assert len(remembered_kitchen(store).calibrations) == 1
    key = open_kitchen(store, {"name": "Sierra", "like": "-"})
    there = remembered_kitchen(store.at(key))
    assert there.calibrations == () and [p.key for p in there.products] == ["tiras"]
    store.close()


def test_a_line_of_the_place_is_put_where_it_stood():
    """Other lines stay to the letter, comments too."""
    text = with_place(METRIC, {"altitude": "altitude_m = 300"})
    assert text.splitlines()[3] == "altitude_m = 300"
    rest = [line for line in METRIC.splitlines() if not line.startswith("altitude")]
    assert [line for line in text.splitlines() if not line.startswith("altitude")] == rest
    assert parse_kitchen(for_another_place(METRIC), "k.toml").fryers[0].estimates == ("swing", "heater")
