"""The table of places in the how-to says of each what the catalog knows."""

from __future__ import annotations

import re
from pathlib import Path

from frywright.catalog import load
from frywright.verdicts.place import HOUSE_OIL_PCT, place_named

PAGE = (Path(__file__).parents[2] / "docs/how-to/kitchen-file.md").read_text("utf-8")
NOT_KNOWN = "not known"
ROW = re.compile(r"^\| (`[^|]*`) \| ([^|]*) \| ([^|]*) \| ([^|]*) \| ([^|]*) \|$", re.M)


def test_every_place_of_the_catalog_stands_there_with_what_is_known_of_it():
    """Cook limit, hot holding, the oil's law and age rules; nothing more is claimed, and nothing less."""
    told = {}
    for keys, *known in ROW.findall(PAGE)[1:]:
        told |= {key: tuple(known) for key in re.findall(r"`(\w+)`", keys)}
    found = {}
    for row in load.table("standards/jurisdictions.toml")["jurisdiction"]:
        place = place_named(row["key"])
        cook = "yes" if place.cook_limit() else NOT_KNOWN
        hold = NOT_KNOWN if place.hot_hold_c() is None else "yes"
        by_law = place.oil_limit(house_pct=100.0)[0] != 100.0
        found[place.key] = (cook, hold, "yes" if by_law else "house", "yes" if place.age else NOT_KNOWN)
    assert {
        key: (known[0].replace("that edition", "yes"), *known[1:]) for key, known in told.items()
    } == found
    assert HOUSE_OIL_PCT == 24.0
