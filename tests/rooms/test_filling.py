"""How a vat is filled: volumes against the density of the oil, in litres and in gallons."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.rooms.care.oil_moves import fill_view

GALLON_L = 3.785411784
"""US liquid gallon: 231 cubic inches of 25.4 mm (NIST Handbook 44, appendix C)."""


def litres(text, unit):
    value, _, sign = text.partition(" ")
    assert sign == unit
    return float(value) * (GALLON_L if unit == "gal" else 1.0)


@pytest.mark.parametrize(("units", "unit", "near"), [("us", "gal", 0.2), ("metric", "L", 0.06)])
def test_a_vat_takes_its_mass_over_the_density_of_its_oil(kitchen, units, unit, near):
    """Refined vegetable oils weigh 0.91 to 0.93 kg/L at 20 to 25 °C (Codex Stan 210, relative densities) and
    swell by 0.07 to 0.075 % a kelvin (from memory): 11 to 13 % more at frying heat.
    """
    here = replace(kitchen, site=replace(kitchen.site, units=units))
    view = fill_view(here, "alder")
    mass = kitchen.fryer("alder").oil_mass_kg
    cold, hot = litres(view.cold, unit), litres(view.hot, unit)
    assert mass / 0.93 - near < cold < mass / 0.905 + near
    assert hot / cold == pytest.approx(1.0 + view.swells_frac, abs=0.02)
    assert 0.10 < view.swells_frac < 0.14
    assert view.name == kitchen.fryer("alder").name
    assert ("lb" in view.mass) is (units == "us")
    assert view.melt == ""


def test_too_much_oil_for_the_largest_load_is_warned_of(kitchen):
    """Under the upper line there is nothing to say; half as much again boils over."""
    assert fill_view(kitchen, "alder").warning == ""
    fryer = kitchen.fryer("alder")
    assert fryer.oil_area_m2 and fryer.upper_line_m
    full = replace(fryer, oil_mass_kg=1.5 * fryer.oil_mass_kg, solid_fat=True)
    others = tuple(full if f.key == "alder" else f for f in kitchen.fryers)
    view = fill_view(replace(kitchen, fryers=others), "alder")
    assert "boils over with the largest load" in view.warning
    assert view.melt.endswith("kWh")
    bare = replace(fryer, oil_area_m2=0.0, upper_line_m=0.0)
    others = tuple(bare if f.key == "alder" else f for f in kitchen.fryers)
    assert fill_view(replace(kitchen, fryers=others), "alder").heights == ""
