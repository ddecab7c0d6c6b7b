"""What each column of a log is: its unit and its part in the cook, guessed with a reason, asked if open."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from frywright.model.units import UNITS

Array = NDArray[np.float64]
LOWEST_C, HIGHEST_C = -45.0, 400.0
"""Readings outside are impossible here: below a freezer, above burning oil."""
HIGHEST_GAUGE_PA = 300e3
BURNING_C = 245.0
"""Vegetable oil is near its fire point above this; an oil column that stays above it is in degF."""
UNIT_WORDS = (
    (re.compile(r"(?:°|º|deg\.?\s*|\b)F\b|fahrenheit", re.I), "f"),
    (re.compile(r"(?:°|º|deg\.?\s*|\b)C\b|celsius", re.I), "c"),
    (re.compile(r"\bpsi?g?\b", re.I), "psi"),
    (re.compile(r"\bkpa\b", re.I), "kpa"),
    (re.compile(r"\bbar\b", re.I), "bar"),
)
ROLE_WORDS = (
    (re.compile(r"displ|panel|pantalla|set\s?p|consigna", re.I), "display"),
    (re.compile(r"press|gauge|presi|psi|kpa|\bbar\b", re.I), "gauge"),
    (re.compile(r"oil|vat|aceite|cuba", re.I), "oil"),
    (
        re.compile(
            r"core|meat|breast|thigh|drum|wing|tender|piece|pieza|pechuga|muslo|ala\b|centro|center|centre",
            re.I,
        ),
        "core",
    ),
    (
        re.compile(
            r"ambi|room|air|aire|lid|tapa|hood|cold.?junc|\bcj\b|board|battery|bat\b|volt|humid|%", re.I
        ),
        "other",
    ),
)


class Role(StrEnum):
    """Part of a channel in the cook."""

    OIL = "oil"
    CORE = "core"
    GAUGE = "gauge"
    DISPLAY = "display"
    OTHER = "other"


@dataclass(frozen=True, slots=True, kw_only=True)
class Channel:
    """One column. ``values`` are degC for temperatures, Pa for gauge; NaN where there is none."""

    name: str
    role: Role
    unit: str
    reason: str
    values: Array
    open_count: int = 0
    impossible_count: int = 0


def unit_in(*texts: str) -> str:
    """Unit named in a header, a unit line or a preamble, or an empty text."""
    for text in texts:
        found = [unit for pattern, unit in UNIT_WORDS if pattern.search(text)]
        if len(set(found)) == 1:
            return found[0]
    return ""


def guess_unit(values: Array) -> tuple[str, str]:
    """Unit of unlabelled temperatures by what is physically possible, and the reason; "" if open."""
    known = values[np.isfinite(values)]
    if not len(known):
        return "c", "no readings"
    high, low = float(np.percentile(known, 99)), float(np.percentile(known, 1))
    if high > BURNING_C:
        return "f", "oil at this many °C would be near its fire point"
    if low < 20.0 and high > 75.0:
        return "c", "starts at refrigerator or room temperature if in °C"
    if 135.0 <= high <= 215.0 and low > 100.0:
        return "c", "frying oil if in °C; in °F it would be too cold to fry"
    return "", "both units are possible"


def guess_role(name: str, unit: str, values_c: Array) -> tuple[Role, str]:
    """Part of a channel by its name, else by what its readings do."""
    for pattern, role in ROLE_WORDS:
        if pattern.search(name):
            return Role(role), "named so"
    if unit and UNITS[unit].dimension == "pressure":
        return Role.GAUGE, "a pressure unit"
    known = values_c[np.isfinite(values_c)]
    if not len(known):
        return Role.OTHER, "no readings"
    low, middle, high = (float(np.percentile(known, q)) for q in (2, 50, 98))
    if middle > 110.0:
        return Role.OIL, "stays at frying temperature"
    if low < 45.0 and high > 55.0 and high < 125.0:
        return Role.CORE, "starts cold and warms slowly"
    return Role.OTHER, "neither oil nor the core of a piece"


def inside_values(raw: Array, unit: str) -> tuple[Array, int]:
    """Raw readings in inside units, impossible ones set to NaN and counted."""
    values = (raw + UNITS[unit].offset) * UNITS[unit].factor
    known = np.isfinite(values)
    if UNITS[unit].dimension == "pressure":
        bad = known & ((values < -60e3) | (values > HIGHEST_GAUGE_PA))
    else:
        bad = known & ((values < LOWEST_C) | (values > HIGHEST_C))
    return np.where(bad, np.nan, values), int(bad.sum())
