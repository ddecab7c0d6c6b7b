"""Units against pint, and what people type."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from frywright.model.errors import InputError
from frywright.model.kitchen import Site, UnitSystem
from frywright.model.units import (
    BARE,
    UNITS,
    at_least,
    clock,
    parse,
    parse_clock,
    show,
    suffix_of,
    to_inside,
    to_people,
    write,
)

PINT = {
    "f": "degF",
    "c": "degC",
    "k": "delta_degC",
    "f_diff": "delta_degF",
    "s": "second",
    "min": "minute",
    "h": "hour",
    "kg": "kilogram",
    "g": "gram",
    "lb": "pound",
    "oz": "ounce",
    "m": "meter",
    "cm": "centimeter",
    "mm": "millimeter",
    "in": "inch",
    "ft": "foot",
    "pa": "pascal",
    "kpa": "kilopascal",
    "bar": "bar",
    "psi": "psi",
    "mbar": "millibar",
    "inh2o": "inH2O",
    "w": "watt",
    "kw": "kilowatt",
    "btu_h": "Btu_it/hour",
    "j": "joule",
    "kwh": "kilowatt_hour",
    "btu": "Btu_it",
    "m2": "meter**2",
    "mm2": "millimeter**2",
    "m3": "meter**3",
    "l": "liter",
    "gal": "gallon",
    "w_mk": "watt/meter/delta_degC",
    "w_m2k": "watt/meter**2/delta_degC",
    "j_kgk": "joule/kilogram/delta_degC",
    "j_kg": "joule/kilogram",
    "kwh_kg": "kilowatt_hour/kilogram",
    "btu_lb": "Btu_it/pound",
    "kg_m3": "kilogram/meter**3",
    "g_l": "gram/liter",
    "oz_gal": "ounce/gallon",
}
BASE = {
    "temperature": "degC",
    "temperature_difference": "delta_degC",
    "time": "second",
    "mass": "kilogram",
    "length": "meter",
    "pressure": "pascal",
    "power": "watt",
    "energy": "joule",
    "area": "meter**2",
    "volume": "meter**3",
    "conductivity": "watt/meter/delta_degC",
    "surface_coefficient": "watt/meter**2/delta_degC",
    "specific_heat": "joule/kilogram/delta_degC",
    "specific_energy": "joule/kilogram",
    "density": "kilogram/meter**3",
}


@pytest.fixture(scope="module")
def registry():
    import pint

    return pint.UnitRegistry()


@pytest.mark.slow
@pytest.mark.parametrize("suffix", sorted(PINT))
def test_factors_equal_pint(suffix, registry):
    """Every conversion factor equals pint's."""
    for value in (0.0, 1.0, 37.5):
        expected = registry.Quantity(value, PINT[suffix]).to(BASE[UNITS[suffix].dimension]).magnitude
        assert to_inside(value, suffix) == pytest.approx(expected, rel=1e-9, abs=1e-12)


@given(st.sampled_from(sorted(UNITS)), st.floats(-1e4, 1e4))
def test_there_and_back(suffix, value):
    """People's value survives the way inside and back."""
    assert to_people(to_inside(value, suffix), suffix) == pytest.approx(value, rel=1e-12, abs=1e-9)


@pytest.mark.parametrize(
    ("text", "dimension", "value"),
    [
        ("4C", "temperature", 4.0),
        ("38 °F", "temperature", 10 / 3),
        ("2.75 lb", "mass", 1.2473790175),
        ("5250ft", "length", 1600.2),
        ("12:30", "time", 750.0),
        ("1:02:03", "time", 3723.0),
        ("12 psi", "pressure", 82737.08751),
        ("7,5 kg", "mass", 7.5),
        ("20 min", "time", 1200.0),
        ("10oz", "mass", 0.28349523125),
    ],
)
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


def test_a_share_lists_no_empty_unit():
    """A bare fraction has no sign: only the per cent is named."""
    with pytest.raises(InputError) as refused:
        parse("abc", "fraction")
    assert refused.value.values == {"units": "%"}


def test_a_share_is_rounded_down_to_what_is_shown():
    """None of 10,000 failed is 99.97 % (Clopper and Pearson): never "at least 100.0 %"; whole shares stay."""
    bound = 0.05 ** (1 / 10_000)
    assert show(at_least(bound), "frac", "metric") == "99.9 %" != show(bound, "frac", "metric") == "100.0 %"
    assert at_least(2047 / 2048) == 0.999
    tenths = [n / 1000 for n in range(1001)]
    assert [at_least(share) for share in tenths] == tenths


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


# ---------------------------------------------------------------- the one reader of typed values

KITCHENS = {
    "us": ("us", "en"),
    "metric": ("metric", "en"),
    "metric es": ("metric", "es"),
    "us es": ("us", "es"),
}


def site(kind):
    units, language = KITCHENS[kind]
    return Site(name="somewhere", units=UnitSystem(units), language=language)


@pytest.mark.parametrize(
    ("kind", "text", "dimension", "value"),
    [
        ("us", "7,200", "length", 7200 * 0.3048),
        ("us", "7200", "length", 7200 * 0.3048),
        ("us", "7 200 ft", "length", 7200 * 0.3048),
        ("us", "1,234.5", "length", 1234.5 * 0.3048),
        ("us", "2.194,5 m", "length", 2194.5),
        ("metric", "2,194", "length", 2194.0),
        ("metric es", "2.194", "length", 2194.0),
        ("metric es", "2.194,5", "length", 2194.5),
        ("us es", "7,200", "length", 7200 * 0.3048),
        ("us", "335", "temperature", 1515 / 9),
        ("metric", "170", "temperature", 170.0),
        ("us", "335.0", "temperature", 1515 / 9),
        ("metric es", "163,5", "temperature", 163.5),
        ("us", "335 °", "temperature", 1515 / 9),
        ("us", "170ºC", "temperature", 170.0),
        ("us", "−4", "temperature", -20.0),
        ("us", "10:20", "time", 620.0),
        ("us", "10.5", "time", 630.0),
        ("us", "45", "time", 2700.0),
        ("us", "10 min 20 s", "time", 620.0),
        ("us", "10.2 min", "time", 612.0),
        ("us", "1200 s", "time", 1200.0),
        ("us", "9 libras", "mass", 9 * 0.45359237),
        ("metric", "1.250", "mass", 1.25),
        ("metric es", "1,250", "mass", 1.25),
        ("metric", "1,250 g", "mass", 1.25),
        ("metric es", "1.250 g", "mass", 1.25),
        ("us", "5 F", "temperature_difference", 25 / 9),
    ],
)
def test_each_kitchen_reads_what_its_people_type(kind, text, dimension, value):
    """Units of the kitchen for bare numbers; the mark that groups by three is the one that is not its decimal
    mark.
    """
    assert site(kind).read(text, dimension) == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    ("kind", "text", "dimension", "one", "other"),
    [
        ("us", "10.20", "time", "10:20", "10.2 min"),
        ("us", "10,20", "time", "10:20", "10.2 min"),
        ("us", "1200", "time", "12:00", "1200 s"),
        ("us", "90", "time", "1:30", "90 min"),
        ("us", "7.200", "length", "7.2", "7200"),
        ("metric es", "7,200", "length", "7,2", "7200"),
        ("metric", "1,250 kg", "mass", "1.25", "1250"),
        ("metric es", "1.250", "mass", "1,25", "1250"),
    ],
)
def test_what_has_two_readings_asks(kind, text, dimension, one, other):
    """The refusal names both readings as they are to be typed, and each of them is then taken."""
    with pytest.raises(InputError, match=f"type {one} or type {other}"):
        site(kind).read(text, dimension)
    readings = {site(kind).read(t, dimension) for t in (one, other)}
    assert len(readings) == 2


@pytest.mark.parametrize(
    "text",
    [
        "٣",
        "３３５",
        "½",
        "3²",
        "৪ lb",
        "1e3",
        "0x10",
        "3 35",
        "1,2,3",
        "1.2.3",
        "--5",
        "5-",
        "9" * 40,
        "nan",
        "inf",
        "1_000",
    ],
)
@pytest.mark.parametrize("kind", KITCHENS)
def test_other_digits_and_half_numbers_are_refused_with_words(kind, text):
    """Nothing but 0 to 9 is read as a digit, by any part of the reader."""
    for dimension in ("temperature", "mass", "length", "time"):
        with pytest.raises(InputError):
            site(kind).read(text, dimension)
    with pytest.raises(InputError):
        site(kind).number(text)


SPANS = {
    "temperature": (-40.0, 250.0),
    "mass": (0.001, 400.0),
    "length": (-500.0, 5000.0),
    "pressure": (0.0, 120e3),
}
"""What kitchens write, inside units."""


@given(st.sampled_from(sorted(KITCHENS)), st.sampled_from(sorted(SPANS)), st.data())
def test_what_is_written_is_read_back(kind, dimension, data):
    """A value written in the kitchen's unit comes back to six digits of that unit, whatever its decimals."""
    low, high = SPANS[dimension]
    value = data.draw(st.floats(low, high))
    unit = BARE[KITCHENS[kind][0]][dimension]
    back = site(kind).read(write(value, unit), dimension)
    assert to_people(back, unit) == pytest.approx(to_people(value, unit), rel=5.001e-6, abs=1e-6)


def test_a_time_of_many_digits_is_an_error_not_a_crash():
    """400 nines are no time; nothing overflows."""
    with pytest.raises(InputError, match="at most 15 digits"):
        site(sorted(KITCHENS)[0]).read("9" * 400, "time")


@given(st.sampled_from(sorted(KITCHENS)), st.integers(0, 7200))
def test_a_clock_is_read_back(kind, seconds):
    """Every whole second up to two hours, with and without a leading zero."""
    assert site(kind).read(clock(seconds), "time") == seconds
    assert site(kind).read(f"{seconds // 60:02d}:{seconds % 60:02d}", "time") == seconds


@given(
    st.sampled_from(sorted(KITCHENS)),
    st.sampled_from(["length", "mass", "temperature"]),
    st.integers(0, 99_999),
    st.integers(0, 999),
    st.integers(0, 3),
    st.data(),
)
def test_no_factor_of_ten_or_thousand(kind, dimension, whole, part, digits, data):
    """A number as its own kitchen writes it, grouped or not, any decimals, is read as that number or asked
    about, never as another.
    """
    decimal = site(kind).decimal_mark
    group = data.draw(st.sampled_from(["", "\u2009", " ", "." if decimal == "," else ","]))
    behind = f"{part:03d}"[:digits]
    text = f"{whole:,}".replace(",", group) + (decimal + behind if behind else "")
    unit = BARE[KITCHENS[kind][0]][dimension]
    meant = to_inside(float(f"{whole}.{behind or 0}"), unit)
    try:
        assert site(kind).read(text, dimension) == pytest.approx(meant, rel=1e-12, abs=1e-12)
    except InputError as error:
        assert "clear" in str(error)
        assert len(behind) == 3 or unit in ("kg", "lb")


@pytest.mark.parametrize(
    ("kind", "text", "degrees"),
    [
        ("us", "165, 166.5;170", [165, 166.5, 170]),
        ("us", "165,166,170", [165, 166, 170]),
        ("us", "165 F 166 °F", [165, 166]),
        ("metric es", "74,5 75,2", [74.5, 75.2]),
        ("metric es", "74,5; 75", [74.5, 75]),
        ("metric es", "74,5, 75,2", [74.5, 75.2]),
        ("metric", "74.5 75.2", [74.5, 75.2]),
    ],
)
def test_lists_are_read_without_tearing_decimals(kind, text, degrees):
    """A comma that is a decimal mark parts no readings: 74,5 is never 74 and 5."""
    unit = BARE[KITCHENS[kind][0]]["temperature"]
    assert site(kind).read_list(text, "temperature") == pytest.approx([to_inside(d, unit) for d in degrees])


def test_a_comma_that_may_part_or_point_asks():
    """74,5 in a kitchen that writes 74.5 may be either; 1,2,3 are three readings."""
    with pytest.raises(InputError, match=r"type 74\.5 or type 74 5"):
        site("metric").read_list("74,5 75", "temperature")
    assert len(site("metric").read_list("10,20,30", "temperature")) == 3
