"""Goals of a design as they are typed, on a page or in the terminal."""

from __future__ import annotations

from collections.abc import Mapping

from frywright.design.search import Goals
from frywright.model.kitchen import Site

BOXES = {
    "margin": ("margin_k", "temperature_difference"),
    "longest": ("longest_s", "time"),
    "loss": ("most_loss_frac", "fraction"),
    "colour_low": ("colour_low_n", ""),
    "colour_high": ("colour_high_n", ""),
    "crust_low": ("crust_low_m", "length"),
    "crust_high": ("crust_high_m", "length"),
    "core_low": ("core_low_c", "temperature"),
    "core_high": ("core_high_c", "temperature"),
    "hottest": ("hottest_c", "temperature"),
}
"""Goal of each box, and what is typed in it; a plain number without."""


def goals_typed(site: Site, typed: Mapping[str, str], names: Mapping[str, str]) -> Goals:
    """Goals typed; a box left empty keeps the goal's default. ``names`` is what errors call each box.
    Raises InputError: a text that cannot be read, or goals that cannot be.
    """
    bare = {"fraction": "pct", "length": "in" if site.units == "us" else "mm"}
    found = {}
    for box, (goal, dimension) in BOXES.items():
        text = typed.get(box, "").strip()
        if text and dimension:
            found[goal] = site.read(text, dimension, names[box], bare.get(dimension, ""))
        elif text:
            found[goal] = site.number(text, names[box])
    return Goals(**found)
