"""Checks of the bundled facts: sources named and used, magnitudes plausible."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from frywright.catalog import load

FOLDERS = ("foods", "oils", "coatings", "cuts", "kinetics", "standards", "procedures", "care", "setup")
BY_NAME = ("oils", "coatings", "cuts")
"""Folders whose files a kitchen file names by their key: the name of the file, without ``set_``."""
ORIGINS = ("measured", "correlation", "standard", "estimate", "common practice", "recalled", "secondary")

PLAUSIBLE = {
    "density": (500.0, 2500.0),
    "cp": (500.0, 5000.0),
    "conductivity": (0.02, 3.0),
    "half_thickness_m": (0.002, 0.08),
    "film_kg_m2": (0.0, 1.5),
    "temp_c": (-5.0, 260.0),
}
"""Magnitudes outside which a printed value is taken for a slip of unit."""


def _walk(node: Any, path: str) -> list[tuple[str, str, Any]]:
    if isinstance(node, dict):
        return [hit for key, value in node.items() for hit in [(path, key, value), *_walk(value, path)]]
    if isinstance(node, list):
        return [hit for value in node for hit in _walk(value, path)]
    return []


def problems() -> list[str]:
    """All complaints about the bundled facts, in words; empty when there are none."""
    known, used, found = set(load.sources()), set(), []
    for path in (p for folder in FOLDERS for p in load.files(folder)):
        table = load.table(path)
        hits = _walk(table, path)
        if path.startswith(BY_NAME) and table["key"] != Path(path).stem.removeprefix("set_"):
            found.append(f"{path}: key {table['key']!r} is not the file's name")
        if path.startswith("coatings"):
            found += _without_source(path, table)
        named = [value for _, key, value in hits if key == "source" or key.endswith("_source")]
        if not named:
            found.append(f"{path} names no source")
        used.update(named)
        found += [f"{path}: unknown source {name!r}" for name in named if name not in known]
        for _, key, value in hits:
            if (key == "origin" or key.endswith("_origin")) and value not in ORIGINS:
                found.append(f"{path}: unknown origin {value!r}")
            if isinstance(value, float | int):
                found += _implausible(path, key, float(value))
    return found + [f"sources.toml: {name} is not used" for name in sorted(known - used)]


def _without_source(path: str, table: Mapping[str, object]) -> list[str]:
    """Numbers that no source beside them speaks for: ``film_source`` is that of ``film_kg_m2``."""
    told = tuple(key.removesuffix("source") for key in table if key.endswith("_source"))
    numbers = [key for key, value in table.items() if isinstance(value, float | int)]
    return [f"{path}: {key} names no source" for key in numbers if not key.startswith(told)]


def _implausible(path: str, key: str, value: float) -> list[str]:
    for start, (low, high) in PLAUSIBLE.items():
        sloped = "slope" in key
        if key.startswith(start) and not sloped and not low <= value <= high:
            return [f"{path}: {key} = {value:g} is outside {low:g} to {high:g}"]
    return []
