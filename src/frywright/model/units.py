"""Units: one system inside (SI, temperature in degC), people's units at the edges.

A number's name ends in its unit. The suffixes below are the closed list; a house test knows
them. Conversion factors exist here once and are tested against ``pint``.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from frywright.model.errors import InputError


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
    "k": Unit("temperature_difference", sign="K"),
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
    "j_m3k": Unit("volumetric_heat", sign="J/(m³ K)"),
    "kg_m3": Unit("density", sign="kg/m³"),
    "kg_m2": Unit("area_density", sign="kg/m²"),
    "kg_spa": Unit("valve_slope", sign="kg/(s Pa)"),
    "j_mol": Unit("molar_energy", sign="J/mol"),
    "per_s": Unit("rate", sign="1/s"),
    "money": Unit("money"),
}

COUNTS = ("count", "heads", "n", "cells", "steps", "version", "passes", "core", "crust", "number", "year")
"""Name endings of pure numbers: counts, exponents, versions."""

_SPELLED = {
    "°c": "c", "degc": "c", "°f": "f", "degf": "f", "lbs": "lb", "sec": "s", "mins": "min",
    "hr": "h", "feet": "ft", "'": "ft", '"': "in", "psig": "psi", "kw": "kw", "%": "pct", "btu/h": "btu_h",
}  # fmt: skip
_NUMBER = re.compile(r"^\s*([-+]?\d+(?:[.,]\d+)?)\s*([^\d\s].*)?$")
_CLOCK = re.compile(r"^\s*(?:(\d+):)?(\d+):(\d{2})\s*$")


def suffix_of(name: str) -> str | None:
    """Longest known unit suffix of a name, or None."""
    parts = name.split("_")
    for length in (3, 2, 1):
        tail = "_".join(parts[-length:])
        if len(parts) > length and tail in UNITS:
            return tail
    return None


def to_inside(value: float, suffix: str) -> float:
    """People's value in unit ``suffix`` as inside value (SI, degC)."""
    unit = UNITS[suffix]
    return (value + unit.offset) * unit.factor


def to_people(value: float, suffix: str) -> float:
    """Inside value as people's value in unit ``suffix``."""
    unit = UNITS[suffix]
    return value / unit.factor - unit.offset


def parse_clock(text: str) -> float:
    """Seconds in ``m:ss`` or ``h:mm:ss``.

    Raises
    ------
    InputError
        The text is not a clock reading, or its seconds pass 59.
    """
    found = _CLOCK.match(text)
    if not found or int(found[3]) > 59 or (found[1] and int(found[2]) > 59):
        raise InputError("time", repr(text), "minutes:seconds such as 12:30 (seconds up to 59)")
    return int(found[1] or 0) * 3600.0 + int(found[2]) * 60.0 + int(found[3])


def clock(seconds: float) -> str:
    """Seconds as ``m:ss``."""
    whole = round(seconds)
    return f"{whole // 60}:{whole % 60:02d}"


def parse(text: str, dimension: str, name: str = "value") -> float:
    """Inside value of what a person typed: ``38F``, ``2.3 lb``, ``12:30``, ``5250 ft``.

    Raises
    ------
    InputError
        No number, an unknown unit, or a unit of another dimension.
    """
    if dimension == "time" and ":" in text:
        return parse_clock(text)
    found = _NUMBER.match(text)
    allowed = ", ".join(k for k, u in UNITS.items() if u.dimension == dimension)
    if not found:
        raise InputError(name, repr(text), "a number with one of these units: {units}", values={"units": allowed})
    word = (found[2] or "").strip().lower()
    suffix = _SPELLED.get(word, word)
    if suffix not in UNITS or UNITS[suffix].dimension != dimension:
        what = f"unit {word!r}" if word else "no unit"
        raise InputError(
            name, f"{text.strip()!r} ({what})", "a number with one of these units: {units}", values={"units": allowed}
        )
    return to_inside(float(found[1].replace(",", ".")), suffix)


SHOWN = {
    "us": {"temperature": ("f", 0), "temperature_difference": ("f_diff", 1), "mass": ("lb", 2),
           "pressure": ("psi", 1), "length": ("in", 3), "power": ("kw", 1)},
    "metric": {"temperature": ("c", 1), "temperature_difference": ("k", 1), "mass": ("kg", 2),
               "pressure": ("kpa", 1), "length": ("mm", 2), "power": ("kw", 1)},
}  # fmt: skip
"""Unit and digits in which each system shows a dimension."""


def show(value: float, suffix: str, system: str) -> str:
    """Inside value as people read it: number, unit, sensible digits."""
    unit = UNITS[suffix]
    if unit.dimension == "time":
        return clock(value) if value >= 60 else f"{value:.0f} s"
    if unit.dimension == "fraction":
        return f"{100 * value:.1f} %"
    wanted, digits = SHOWN[system].get(unit.dimension, (suffix, 2))
    return f"{to_people(value, wanted):.{digits}f} {UNITS[wanted].sign}"


def signed(value: float, suffix: str, system: str) -> str:
    """As :func:`show`, with a plus sign where the value is not negative."""
    text = show(value, suffix, system)
    return text if text.startswith("-") else f"+{text}"
