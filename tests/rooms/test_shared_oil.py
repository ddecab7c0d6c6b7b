"""What stays in an oil: the allergens of coatings, and fish of fish itself."""

from __future__ import annotations

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.rooms.care.oil_moves import oil_map_pdf, rotation_view
from frywright.rooms.care.vat import vat_states
from frywright.rooms.day.loads import shared_oil
from frywright.rooms.kitchen import remember_kitchen
from frywright.voice.tongue import translator
from tests import paper

FRYER = """
[[fryer]]
key = "{key}"
name = "{key}"
kind = "open"
capacity_kg = 3
oil_mass_kg = 17
heater_kw = 11
"""
SOLD = """
[[product]]
key = "{key}"
name = "{key}"
cut_set = "{key}"
coating = "{coating}"
start_temp_c = 4

[[sell]]
product = "{key}"
margin_money = 2.0
cost_money = 0.5
load_shares_frac = [0.5, 1.0]
"""
PROGRAM = """
[[program]]
name = "{product} {fryer}"
product = "{product}"
fryer = "{fryer}"

[[program.stage]]
set_c = 175
duration = "9:00"
"""
FRIED = (("wings", "mixed"), ("fish", "mixed"), ("wedges", "mixed"), ("wings", "birds"))
TEXT = (
    '[kitchen]\nname = "Pier (invented)"\nunits = "metric"\naltitude_m = 1600\n\n[day]\nzone = "UTC"\n'
    + "".join(FRYER.format(key=key) for key in ("mixed", "birds"))
    + "".join(
        SOLD.format(key=k, coating=c) for k, c in (("wings", "dredge"), ("fish", "bare"), ("wedges", "bare"))
    )
    + "".join(PROGRAM.format(product=product, fryer=fryer) for product, fryer in FRIED)
)


@pytest.fixture
def pier(store):
    remember_kitchen(store, TEXT, "pier.toml")
    return parse_kitchen(TEXT, "pier.toml")


def test_fish_stays_in_its_oil_though_its_coating_is_bare(store, pier):
    """The map names it, on paper too, and it speaks against moving that oil under chicken."""
    view = rotation_view(pier, vat_states(store, pier))
    assert {v.name: v.carries for v in view.vats} == {
        "mixed": "egg, fish, milk, wheat",
        "birds": "egg, milk, wheat",
    }
    (notes,) = (m.notes for m in view.moves if (m.from_, m.into) == ("mixed", "birds"))
    assert notes == ("The oil carries fish into a vat that had none; claim nothing free of them.",)
    said = paper.words(oil_map_pdf(store, pier, "es", translator("es")))
    assert "huevo, leche, pescado, trigo" in said
    assert "hacia birds mixed" in said, "only the oil without fish may move"


def test_each_product_is_named_with_what_it_takes_up_from_the_others(pier):
    """Coated chicken takes up fish; fish takes up the coating; wedges take up both."""
    found = {str(n.values["product"]): n.values["allergens"] for n in shared_oil(pier)}
    assert found == {
        "fish": ("egg", "milk", "wheat"),
        "wedges": ("egg", "fish", "milk", "wheat"),
        "wings": ("fish",),
    }
    assert {n.values["fryer"] for n in shared_oil(pier)} == {"mixed"}
