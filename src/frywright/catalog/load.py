"""Loads the bundled facts. Files never execute; every value keeps its source key."""

from __future__ import annotations

import csv
import tomllib
from functools import cache
from importlib import resources
from typing import Any

from frywright.model.care import Task
from frywright.model.food import Coating, Composition, Cut, CutSet, CutShare, Food
from frywright.model.fryer import Oil

VERSION = "2026.11"
"""Version of the bundled facts; stored with every record that used them."""


@cache
def table(path: str) -> dict[str, Any]:
    """One bundled TOML file, for example ``standards/fire.toml``."""
    return tomllib.loads(resources.files(__package__).joinpath(path).read_text("utf-8"))


@cache
def rows(path: str) -> tuple[dict[str, str], ...]:
    """One bundled CSV file as rows of text."""
    text = resources.files(__package__).joinpath(path).read_text("utf-8")
    return tuple(csv.DictReader(text.splitlines()))


@cache
def files(folder: str) -> tuple[str, ...]:
    """Names of the TOML files of a folder, sorted."""
    listing = resources.files(__package__).joinpath(folder).iterdir()
    return tuple(sorted(f"{folder}/{p.name}" for p in listing if p.name.endswith(".toml")))


@cache
def sources() -> dict[str, dict[str, str]]:
    """All sources by key."""
    return table("sources.toml")


@cache
def compositions() -> dict[str, Composition]:
    """Raw foods by key."""
    found = {}
    for path in files("foods"):
        t = table(path)
        if "water_pct" in t:
            parts = ("water", "protein", "fat", "carbohydrate", "ash")
            shares = {f"{p}_frac": t[f"{p}_pct"] / 100.0 for p in parts}
            found[t["key"]] = Composition(key=t["key"], title=t["title"], source=t["source"], **shares)
    return found


@cache
def cuts() -> dict[str, Cut]:
    """Cuts by key."""
    names = (
        "key",
        "title",
        "composition",
        "reference_mass_kg",
        "half_thickness_m",
        "shape_n",
        "heavy_ratio_n",
        "evaporable_frac",
        "bone_mass_frac",
        "drip",
        "geometry_origin",
    )
    tables = (table(path) for path in files("cuts") if not path.startswith("cuts/set_"))
    return {
        t["key"]: Cut(food=Food(t["food"]), rendered_frac=t.get("rendered_frac"), **{n: t[n] for n in names})
        for t in tables
    }


@cache
def cut_sets() -> dict[str, CutSet]:
    """Cut sets by key."""
    found = {}
    for path in files("cuts"):
        if path.startswith("cuts/set_"):
            t = table(path)
            parts = tuple(CutShare(**part) for part in t["part"])
            found[t["key"]] = CutSet(
                key=t["key"], title=t["title"], unit=t["unit"], unit_mass_kg=t["unit_mass_kg"], parts=parts
            )
    return found


@cache
def coatings() -> dict[str, Coating]:
    """Coatings by key."""
    names = (
        "key",
        "title",
        "film_kg_m2",
        "pickup_frac",
        "crust_conductivity_w_mk",
        "crust_heat_j_m3k",
        "oil_per_solids_n",
    )
    tables = [table(path) for path in files("coatings")]
    return {t["key"]: Coating(contains=tuple(t["contains"]), **{n: t[n] for n in names}) for t in tables}


@cache
def oils() -> dict[str, Oil]:
    """Oils by key."""
    names = (
        "key",
        "title",
        "density_20c_kg_m3",
        "density_slope_kg_m3k",
        "cp_0c_j_kgk",
        "cp_slope_j_kgk2",
        "smoke_low_c",
    )
    return {t["key"]: Oil(**{n: t[n] for n in names}) for t in map(table, files("oils"))}


@cache
def care_tasks() -> tuple[Task, ...]:
    """Care by calendar as the trade does it; a kitchen's own tasks stand before them."""
    return tuple(
        Task(takes_s=60.0 * t["takes_min"], **{k: v for k, v in t.items() if k != "takes_min"})
        for t in table("care/tasks.toml")["task"]
    )
