"""Units: one system inside (SI, temperature in degC), people's units at the edges.

A number's name ends in its unit. The suffixes below are the closed list; a house test knows
them. Conversion factors exist here once and are tested against ``pint``.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from math import floor, log10

from frywright.model.errors import Amount, InputError


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit of one dimension: inside value = (people's value + offset) * factor."""

    dimension: str
    factor: float = 1.0
    offset: float = 0.0
    sign: str = ""


# Exact by definition (NIST SP 811, appendix B): inch, pound, degF, psi from lb and in, Btu (IT).
LB = 0.45359237
INCH = 0.0254
PSI = LB * 9.80665 / INCH**2
BTU = 1055.05585262
GALLON = 231 * INCH**3
INCH_WATER = 1000.0 * 9.80665 * INCH
"""Conventional inch of water, 4 degC (NIST SP 811)."""

UNITS: dict[str, Unit] = {
    "c": Unit("temperature", sign="°C"),
    "f": Unit("temperature", 5 / 9, -32.0, "°F"),
    "k": Unit("temperature_difference", sign="°C"),
    "f_diff": Unit("temperature_difference", 5 / 9, sign="°F"),
    "s": Unit("time", sign="s"),
    "min": Unit("time", 60.0, sign="min"),
    "h": Unit("time", 3600.0, sign="h"),
    "kg": Unit("mass", sign="kg"),
    "g": Unit("mass", 1e-3, sign="g"),
    "lb": Unit("mass", LB, sign="lb"),
    "oz": Unit("mass", LB / 16, sign="oz"),
    "m": Unit("length", sign="m"),
    "cm": Unit("length", 1e-2, sign="cm"),
    "mm": Unit("length", 1e-3, sign="mm"),
    "in": Unit("length", INCH, sign="in"),
    "ft": Unit("length", 12 * INCH, sign="ft"),
    "pa": Unit("pressure", sign="Pa"),
    "kpa": Unit("pressure", 1e3, sign="kPa"),
    "bar": Unit("pressure", 1e5, sign="bar"),
    "psi": Unit("pressure", PSI, sign="psi"),
    "mbar": Unit("pressure", 100.0, sign="mbar"),
    "inh2o": Unit("pressure", INCH_WATER, sign="inH₂O"),
    "w": Unit("power", sign="W"),
    "kw": Unit("power", 1e3, sign="kW"),
    "btu_h": Unit("power", BTU / 3600, sign="Btu/h"),
    "j": Unit("energy", sign="J"),
    "kwh": Unit("energy", 3.6e6, sign="kWh"),
    "btu": Unit("energy", BTU, sign="Btu"),
    "m2": Unit("area", sign="m²"),
    "mm2": Unit("area", 1e-6, sign="mm²"),
    "m3": Unit("volume", sign="m³"),
    "l": Unit("volume", 1e-3, sign="L"),
    "gal": Unit("volume", GALLON, sign="gal"),
    "frac": Unit("fraction"),
    "pct": Unit("fraction", 0.01, sign="%"),
    "w_mk": Unit("conductivity", sign="W/(m K)"),
    "w_m2k": Unit("surface_coefficient", sign="W/(m² K)"),
    "w_k": Unit("heat_loss", sign="W/K"),
    "j_k": Unit("heat_capacity", sign="J/K"),
    "j_kgk": Unit("specific_heat", sign="J/(kg K)"),
    "j_kg": Unit("specific_energy", sign="J/kg"),
    "kwh_kg": Unit("specific_energy", 3.6e6, sign="kWh/kg"),
    "btu_lb": Unit("specific_energy", BTU / LB, sign="Btu/lb"),
    "j_m3k": Unit("volumetric_heat", sign="J/(m³ K)"),
    "kg_m3": Unit("density", sign="kg/m³"),
    "g_l": Unit("density", sign="g/L"),
    "oz_gal": Unit("density", LB / 16 / GALLON, sign="oz/gal"),
    "kg_m2": Unit("area_density", sign="kg/m²"),
    "kg_spa": Unit("valve_slope", sign="kg/(s Pa)"),
    "j_mol": Unit("molar_energy", sign="J/mol"),
    "per_s": Unit("rate", sign="1/s"),
    "money": Unit("money"),
}

COUNTS = ("count", "heads", "n", "cells", "steps", "version", "passes", "core", "crust", "number", "year")
"""Name endings of pure numbers: counts, exponents, versions."""

BARE = {
    "us": {
        "temperature": "f",
        "temperature_difference": "f_diff",
        "mass": "lb",
        "pressure": "psi",
        "length": "ft",
        "time": "min",
        "power": "kw",
        "energy": "kwh",
        "volume": "gal",
        "density": "oz_gal",
        "specific_energy": "btu_lb",
    },
    "metric": {
        "temperature": "c",
        "temperature_difference": "k",
        "mass": "kg",
        "pressure": "kpa",
        "length": "m",
        "time": "min",
        "power": "kw",
        "energy": "kwh",
        "volume": "l",
        "density": "g_l",
        "specific_energy": "kwh_kg",
    },
}
"""Unit that a number typed without one takes in each system."""

_SPELLED = {
    "°": "",
    "°c": "c",
    "ºc": "c",
    "degc": "c",
    "celsius": "c",
    "°f": "f",
    "ºf": "f",
    "degf": "f",
    "fahrenheit": "f",
    "lbs": "lb",
    "pound": "lb",
    "pounds": "lb",
    "libra": "lb",
    "libras": "lb",
    "ounce": "oz",
    "ounces": "oz",
    "onza": "oz",
    "onzas": "oz",
    "kilo": "kg",
    "kilos": "kg",
    "gram": "g",
    "grams": "g",
    "gramo": "g",
    "gramos": "g",
    "sec": "s",
    "secs": "s",
    "second": "s",
    "seconds": "s",
    "seg": "s",
    "segundo": "s",
    "segundos": "s",
    "mins": "min",
    "minute": "min",
    "minutes": "min",
    "minuto": "min",
    "minutos": "min",
    "hr": "h",
    "hour": "h",
    "hours": "h",
    "hora": "h",
    "horas": "h",
    "foot": "ft",
    "feet": "ft",
    "pie": "ft",
    "pies": "ft",
    "'": "ft",
    "inch": "in",
    "inches": "in",
    '"': "in",
    "psig": "psi",
    "%": "pct",
    "btu/h": "btu_h",
    "btu/lb": "btu_lb",
    "oz/gal": "oz_gal",
    "g/l": "g_l",
    "kwh/kg": "kwh_kg",
}
_TYPED = re.compile(r"([-+−]?)\s*+((?:[0-9]|[.,][0-9])[0-9.,]*+(?:\s++[0-9.,]++)*+)\s*+([^0-9\s.,].*+)?")
_CLOCK = re.compile(r"(?:([0-9]{1,4}):)?([0-9]{1,5}):([0-9]{2})")
_MINUTES = re.compile(r"([0-9]{1,5})\s*min\s*([0-9]{1,2})\s*s", re.IGNORECASE)
_SPACE = re.compile(r"(?<=[0-9])[ \u00a0\u2009\u202f](?=[0-9]{3}(?![0-9]))")
EXACT = ("kg", "lb")
"""Units read off a scale with three decimals, and never in thousands by a kitchen: 1.250 kg is no doubt,
1,250 kg is.
"""
LONGEST_NUMBER, LONGEST_COUNT = 15, 9


def is_count(text: str) -> bool:
    """Whether a text is a whole number in the digits 0 to 9, of a length that people mean."""
    return text.isascii() and text.isdigit() and len(text) <= LONGEST_COUNT


@lru_cache(maxsize=4096)
def suffix_of(name: str) -> str | None:
    """Longest known unit suffix of a name, or None."""
    parts = name.split("_")
    for length in (3, 2, 1):
        tail = "_".join(parts[-length:])
        if len(parts) > length and tail in UNITS:
            return tail
    return None


def within(item: object, where: str, **bounds: tuple[float, float]) -> None:
    """Refuse the first field of an item that lies outside its lowest and highest value. Bounds without a
    source beside them are wide, against slips of the pen (own rules). Raises InputError: it names the field
    without its unit, and both bounds in people's units.
    """
    for name, (low, high) in bounds.items():
        value = getattr(item, name)
        if value is None or low <= value <= high:
            continue
        suffix = suffix_of(name) or ""
        told = {"low": Amount(low, suffix), "high": Amount(high, suffix)}
        field = name.removesuffix(f"_{suffix}")
        raise InputError(field, value, "{low} to {high}", where=where, unit=suffix, **told)


def to_inside(value: float, suffix: str) -> float:
    """People's value in unit ``suffix`` as inside value (SI, degC)."""
    unit = UNITS[suffix]
    return (value + unit.offset) * unit.factor


def to_people(value: float, suffix: str) -> float:
    """Inside value as people's value in unit ``suffix``."""
    unit = UNITS[suffix]
    return value / unit.factor - unit.offset


def parse_clock(text: str, name: str = "time") -> float:
    """Seconds in ``m:ss`` or ``h:mm:ss``. Raises InputError: the text is not a clock reading, or its seconds
    pass 59.
    """
    found = _CLOCK.fullmatch(text.strip())
    if not found or int(found[3]) > 59 or (found[1] and int(found[2]) > 59):
        raise InputError(name, repr(text), "minutes:seconds such as 12:30 (seconds up to 59)")
    return int(found[1] or 0) * 3600.0 + int(found[2]) * 60.0 + int(found[3])


def clock(seconds: float) -> str:
    """Seconds as ``m:ss``."""
    whole = round(seconds)
    return f"{whole // 60}:{whole % 60:02d}"


def parse(text: str, dimension: str, name: str = "value", *, bare: str = "", decimal: str = ".") -> float:
    """Inside value of what a person typed: ``38F``, ``2.3 lb``, ``12:30``, ``7,200 ft``. The one reader of
    typed values. Raises InputError: no number, an unknown unit, a unit of another dimension, or a text with
    two readings: the message says how to type each.

    Parameters
    ----------
    bare : unit of a number without one; empty where it needs a unit
    decimal : decimal mark of the kitchen; the other mark groups by three
    """
    text = text.strip()
    if dimension == "time" and ":" in text:
        return parse_clock(text, name)
    if dimension == "time" and (found := _MINUTES.fullmatch(text)):
        return int(found[1]) * 60.0 + int(found[2])
    sign, digits, word = _split(text, name, dimension)
    word = _SPELLED.get(word, word)
    if dimension == "temperature_difference":
        word = {"f": "f_diff", "c": "k"}.get(word, word)
    suffix = word or bare
    if suffix not in UNITS or UNITS[suffix].dimension != dimension:
        raise _no_unit(name, text, dimension)
    value = _figure(digits, text, name, decimal, exact=suffix in EXACT)
    if dimension == "time" and not word:
        _ask_which_time(digits, text, name)
    return to_inside(-value if sign in ("-", "−") else value, suffix)


def read_number(text: str, name: str = "value", *, decimal: str = ".") -> float:
    """A number without a unit, read as every typed value is: a count, a share, a score.
    Raises InputError: not a number, or a text with two readings.
    """
    sign, digits, word = _split(text.strip(), name, "")
    if word:
        raise InputError(name, repr(text), "a number")
    value = _figure(digits, text.strip(), name, decimal)
    return -value if sign in ("-", "−") else value


def _split(text: str, name: str, dimension: str) -> tuple[str, str, str]:
    """Sign, digits and unit of a typed text."""
    if any(c.isnumeric() and not c.isascii() for c in text):
        raise InputError(name, repr(text), "typed with the digits 0 to 9")
    found = _TYPED.fullmatch(text)
    if not found:
        raise _no_unit(name, text, dimension) if dimension else InputError(name, repr(text), "a number")
    return found[1], found[2], (found[3] or "").strip().lower()


def _no_unit(name: str, text: str, dimension: str) -> InputError:
    if not text:
        return InputError(name, "empty", "given")
    allowed = ", ".join(u.sign for u in UNITS.values() if u.dimension == dimension and u.sign)
    return InputError(name, repr(text), "a number with one of these units: {units}", units=allowed)


def _two_readings(name: str, text: str, one: str, other: str) -> InputError:
    return InputError(name, repr(text), "clear: type {one} or type {other}", one=one, other=other)


def _figure(digits: str, text: str, name: str, decimal: str, exact: bool = False) -> float:
    """Value of digits with marks. Two marks: the last is the decimal one. One mark with three digits behind
    it groups where it is not the kitchen's decimal mark, and has two readings where it is."""
    plain = _SPACE.sub("", digits)
    if len(plain) > LONGEST_NUMBER:
        raise InputError(name, repr(text[:20]), "a number of at most {most} digits", most=LONGEST_NUMBER)
    last = max(plain.rfind("."), plain.rfind(","))
    if last < 0 and plain.isdigit():
        return float(plain)
    mark, whole, rest = plain[last], plain[:last], plain[last + 1 :]
    other = "," if mark == "." else "."
    if not (whole + rest).replace(".", "").replace(",", "").isdigit():  # a space that groups nothing
        raise InputError(name, repr(text), "one number")
    if other in whole:
        if mark in whole or not _grouped(whole, other):
            raise InputError(name, repr(text), "a number such as {one}", one=f"7200{decimal}5")
        return float(f"{whole.replace(other, '')}.{rest or 0}")
    if mark in whole:
        if not _grouped(plain, mark):
            raise InputError(name, repr(text), "a number such as {one}", one="7200")
        return float(plain.replace(mark, ""))
    if not _grouped(plain, mark) or (mark == decimal and exact):
        return float(f"{whole or 0}.{rest or 0}")
    if mark != decimal and not exact:
        return float(whole + rest)
    behind = rest.rstrip("0")
    raise _two_readings(name, text, whole + (decimal + behind if behind else ""), whole + rest)


def _grouped(digits: str, mark: str) -> bool:
    return re.fullmatch(rf"[1-9][0-9]{{0,2}}(?:{re.escape(mark)}[0-9]{{3}})+", digits) is not None


def _ask_which_time(digits: str, text: str, name: str) -> None:
    """A bare time with two readings: ``10.20`` may be a clock's or minutes, ``1200`` a clock's or seconds,
    ``90`` seconds or minutes.
    """
    whole, mark, rest = digits.replace(",", ".").partition(".")
    if mark and len(rest) == 2 and rest < "60":
        raise _two_readings(name, text, f"{whole or 0}:{rest}", f"{whole or 0}.{rest.rstrip('0') or 0} min")
    if not mark and whole.isdigit() and int(whole) >= 60:
        keyed = len(whole) > 2 and whole[-2:] < "60"
        one, other = (
            (f"{int(whole[:-2])}:{whole[-2:]}", f"{whole} s")
            if keyed
            else (clock(float(whole)), f"{whole} min")
        )
        raise _two_readings(name, text, one, other)


def write(value: float, suffix: str) -> str:
    """Inside value as :func:`parse` reads it back in unit ``suffix``, without the unit; never with three
    decimals, which could be thousands.
    """
    text = f"{to_people(value, suffix):.6g}"
    if "e" in text:
        text = f"{to_people(value, suffix):.6f}".rstrip("0").rstrip(".")
    return text + "0" if len(text.partition(".")[2]) == 3 else text


SHOWN = {
    "us": {
        "temperature": ("f", 0),
        "temperature_difference": ("f_diff", 1),
        "mass": ("lb", 2),
        "pressure": ("psi", 1),
        "length": ("in", 3),
        "power": ("kw", 1),
        "volume": ("gal", 1),
        "density": ("oz_gal", 2),
    },
    "metric": {
        "temperature": ("c", 1),
        "temperature_difference": ("k", 1),
        "mass": ("kg", 2),
        "pressure": ("kpa", 1),
        "length": ("mm", 2),
        "power": ("kw", 1),
        "volume": ("l", 1),
        "density": ("g_l", 1),
    },
}
"""Unit and digits in which each system shows a dimension."""


ALTITUDE_FROM_M = 30.0
"""Lengths from here on are altitudes: feet or whole metres."""


SMALL_KG = 0.02
"""Masses below are shown in grams or ounces: two decimals of a kilogram would leave one figure of them."""


def show(value: float, suffix: str, system: str) -> str:
    """Inside value as people read it: number, unit, sensible digits."""
    unit = UNITS[suffix]
    if unit.dimension == "time":
        return clock(value) if value >= 60 else f"{value:.0f} s"
    if unit.dimension == "fraction":
        return f"{100 * value:.1f} %"
    if unit.dimension == "length" and abs(value) >= ALTITUDE_FROM_M:
        return f"{to_people(value, 'ft'):.0f} ft" if system == "us" else f"{value:.0f} m"
    if unit.dimension == "mass" and 0.0 < abs(value) < SMALL_KG:
        return f"{to_people(value, 'oz'):.1f} oz" if system == "us" else f"{to_people(value, 'g'):.0f} g"
    wanted, digits = _shown(value, suffix, system)
    figure = round(to_people(value, wanted), digits) + 0.0  # next to nothing is 0.0, not -0.0
    return f"{figure:.{digits}f} {UNITS[wanted].sign}"


def _shown(value: float, suffix: str, system: str) -> tuple[str, int]:
    """Unit and digits: three figures for masses and lengths from one unit on; nobody measures more."""
    dimension = UNITS[suffix].dimension
    wanted, digits = SHOWN[system].get(dimension, (suffix, 2))
    size = abs(to_people(value, wanted))
    if dimension in ("mass", "length") and size >= 1.0:
        digits = max(0, min(digits, 2 - floor(log10(size) + 1e-9)))  # 9.9999999999 is 10.0
    return wanted, digits


def show_below(value: float, limit: float, suffix: str, system: str) -> str:
    """Inside value as people read it, never rounded up to a limit that it is below: it takes as many digits
    as tell it from the limit.
    """
    text = show(value, suffix, system)
    if value >= limit or text != show(limit, suffix, system):
        return text
    wanted, digits = _shown(value, suffix, system)
    while digits < 6 and f"{to_people(value, wanted):.{digits}f}" == f"{to_people(limit, wanted):.{digits}f}":
        digits += 1
    return f"{to_people(value, wanted):.{digits}f} {UNITS[wanted].sign}"


def at_least(frac: float) -> float:
    """A share rounded down to a tenth of a percent, as it is shown: "at least" stays true, and one load that
    failed keeps it below 100 %.
    """
    return floor(1000.0 * frac + 1e-9) / 1000.0


def signed(value: float, suffix: str, system: str) -> str:
    """As :func:`show`, with a plus or a minus sign."""
    return f"{'−' if value < 0 else '+'}{show(abs(value), suffix, system)}"
