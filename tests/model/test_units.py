"""Units against pint, and what people type."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from frywright.model.errors import InputError
from frywright.model.units import UNITS, clock, parse, parse_clock, show, suffix_of, to_inside, to_people

PINT = {
    "f": "degF", "c": "degC", "k": "delta_degC", "f_diff": "delta_degF", "s": "second", "min": "minute", "h": "hour",
    "kg": "kilogram", "g": "gram", "lb": "pound", "oz": "ounce", "m": "meter", "cm": "centimeter",
    "mm": "millimeter", "in": "inch", "ft": "foot", "pa": "pascal", "kpa": "kilopascal", "bar": "bar",
    "psi": "psi", "mbar": "millibar", "inh2o": "inH2O", "w": "watt", "kw": "kilowatt", "btu_h": "Btu_it/hour", "j": "joule", "kwh": "kilowatt_hour",
    "btu": "Btu_it", "m2": "meter**2", "mm2": "millimeter**2", "m3": "meter**3", "l": "liter", "gal": "gallon",
    "w_mk": "watt/meter/delta_degC", "w_m2k": "watt/meter**2/delta_degC", "j_kgk": "joule/kilogram/delta_degC",
    "kg_m3": "kilogram/meter**3",
}  # fmt: skip
BASE = {
    "temperature": "degC", "temperature_difference": "delta_degC", "time": "second", "mass": "kilogram", "length": "meter",
    "pressure": "pascal", "power": "watt", "energy": "joule", "area": "meter**2", "volume": "meter**3",
    "conductivity": "watt/meter/delta_degC", "surface_coefficient": "watt/meter**2/delta_degC",
    "specific_heat": "joule/kilogram/delta_degC", "density": "kilogram/meter**3",
}  # fmt: skip


@pytest.mark.parametrize("suffix", sorted(PINT))
def test_factors_equal_pint(suffix):
    """Every conversion factor equals pint's."""
    import pint

    registry = pint.UnitRegistry()
    for value in (0.0, 1.0, 37.5):
        expected = registry.Quantity(value, PINT[suffix]).to(BASE[UNITS[suffix].dimension]).magnitude
        assert to_inside(value, suffix) == pytest.approx(expected, rel=1e-9, abs=1e-12)


@given(st.sampled_from(sorted(UNITS)), st.floats(-1e4, 1e4))
def test_there_and_back(suffix, value):
    """People's value survives the way inside and back."""
    assert to_people(to_inside(value, suffix), suffix) == pytest.approx(value, rel=1e-12, abs=1e-9)


@pytest.mark.parametrize(
    ("text", "dimension", "value"),
    [("4C", "temperature", 4.0), ("38 °F", "temperature", 10 / 3), ("2.75 lb", "mass", 1.2473790175),
     ("5250ft", "length", 1600.2), ("12:30", "time", 750.0), ("1:02:03", "time", 3723.0), ("12 psi", "pressure", 82737.08751),
     ("7,5 kg", "mass", 7.5), ("20 min", "time", 1200.0), ("10oz", "mass", 0.28349523125)],
)  # fmt: skip
def test_what_people_type(text, dimension, value):
    """Numbers with units, decimal commas, clock readings."""
    assert parse(text, dimension) == pytest.approx(value, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "dimension"),
    [
        ("warm", "temperature"),
        ("4 lb", "temperature"),
        ("12", "mass"),
        ("1:75", "time"),
        ("", "mass"),
        ("4 stone", "mass"),
    ],
)
def test_nonsense_is_refused_with_the_units_allowed(text, dimension):
    """The message names what is allowed."""
    with pytest.raises(InputError):
        parse(text, dimension)


def test_clock_and_show():
    """Times as m:ss, quantities in the unit and digits of the system."""
    assert clock(750.4) == "12:30"
    assert parse_clock(clock(59)) == 59.0
    assert show(73.888889, "c", "us") == "165 °F"
    assert show(73.888889, "c", "metric") == "73.9 °C"
    assert show(82737.09, "pa", "us") == "12.0 psi"
    assert suffix_of("oil_mass_kg") == "kg"
    assert suffix_of("heat_capacity_j_kgk") == "j_kgk"
    assert suffix_of("name") is None
