"""Writes what the set-up asked as text of the kitchen file, in the units of the kitchen; the file's one
reader reads it back.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from frywright.catalog import load
from frywright.model.codec import PREFERRED
from frywright.model.codec import write as plain
from frywright.model.kitchen import key_of
from frywright.model.units import UNITS, clock, suffix_of, to_people

LIGHT_KG = 0.25
FILE_UNIT = {
    "us": PREFERRED["us"] | {"power": "kw", "volume": "l"},
    "metric": PREFERRED["metric"] | {"pressure": "kpa", "power": "kw", "volume": "l"},
}
"""Units that a file is written in; the others stay as they are inside."""


def line(name: str, value: Any, system: str) -> str:
    """One line of a file: a value of the model under its key, a number in the kitchen's unit."""
    if isinstance(value, bool):
        return f"{name} = {str(value).lower()}"
    if isinstance(value, str):
        return f"{name} = {_quoted(value)}"
    if isinstance(value, tuple):
        return f"{name} = [{', '.join(_quoted(v) for v in value)}]"
    suffix = suffix_of(name)
    if suffix is None or isinstance(value, int):
        return f"{name} = {value:.10g}"
    dimension, stem = UNITS[suffix].dimension, name[: -len(suffix)]
    if dimension == "time" and float(value).is_integer():
        return f'{stem.rstrip("_")} = "{clock(value)}"'
    unit = FILE_UNIT[system].get(dimension, suffix)
    if dimension == "mass" and value < LIGHT_KG:
        unit = "oz" if system == "us" else "g"
    return f"{stem}{'f' if unit == 'f_diff' else unit} = {_number(to_people(value, unit))}"


def table(head: str, values: Mapping[str, Any], system: str) -> str:
    """A table of a file; what is None is left out."""
    lines = [line(name, value, system) for name, value in values.items() if value is not None]
    return "\n".join([head, *lines]) + "\n"


def kitchen_table(site: Mapping[str, Any]) -> str:
    """The first table of a kitchen file."""
    return table("[kitchen]", site, site["units"])


def fryer_tables(key: str, fryer: Mapping[str, Any], control: Mapping[str, Any], system: str) -> str:
    """A fryer and its control."""
    shown = "us" if control["shows"] == "f" else "metric"
    return (
        table("[[fryer]]", {"key": key, **fryer}, system) + "\n" + table("[fryer.controller]", control, shown)
    )


def product_tables(key: str, product: Mapping[str, Any], system: str) -> str:
    """A product; with weights of its own pieces also its cuts: the catalog's but for their spread."""
    told = dict(product)
    ratio, found = told.pop("heavy_ratio_n"), ""
    if ratio is not None:
        known = load.cut_sets()[told["cut_set"]]
        for part in known.parts:
            cut = replace(load.cuts()[part.cut], key=f"{part.cut}_{key}", heavy_ratio_n=round(ratio, 4))
            found += table("[[cut]]", plain(cut, "metric"), system) + "\n"
        told["cut_set"] = f"{known.key}_{key}"
        found += table("[[cut_set]]", {**plain(known, "metric"), "key": told["cut_set"]}, system)
        for part in known.parts:
            share = {**plain(part, "metric"), "cut": f"{part.cut}_{key}"}
            found += "\n" + table("[[cut_set.part]]", share, system)
        found += "\n"
    return found + table("[[product]]", {"key": key, **told}, system)


def key_for(name: str, stem: str, taken: set[str]) -> str:
    """A short key of the file for a name, of its own among those taken."""
    wanted = key_of(name) or stem
    found, count = wanted, 2
    while found in taken:
        found, count = f"{wanted}_{count}", count + 1
    return found


def _quoted(text: str) -> str:
    """A text in quotes as TOML and JSON both read it."""
    return json.dumps(text.replace("\x7f", ""), ensure_ascii=False)


def _number(value: float) -> str:
    text = f"{value:.6g}"
    return text if "e" not in text else f"{value:.9f}".rstrip("0")
