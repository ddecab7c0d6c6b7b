"""Outside figures as bands. What misses is listed with its reason and must go on missing, or leave the
list.
"""

from __future__ import annotations

from collections import Counter
from pathlib import Path

import pytest

from tests.reference.rows import KINDS, USES, inside, rows, value_of

ROWS = rows()
DOC = (Path(__file__).parents[2] / "docs/theory/validation.md").read_text("utf-8")


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["key"])
def test_row_lies_in_its_band(row):
    """The engine's figure lies in the band, or the row says why it misses and the docs repeat it."""
    found = value_of(row)
    if "miss" in row:
        assert not inside(row, found), (
            f"{found:.4g} is no longer a miss: take its reason off and tell the docs"
        )
        assert row["miss"] in DOC
    else:
        assert inside(row, found), f"{found:.4g} {row['unit']} outside {row['low']:g} to {row['high']:g}"


def test_every_row_says_what_it_is():
    """Inputs, expectation, band with its reason, source and place, kind and use; no key twice."""
    for row in ROWS:
        told = ("title", "inputs", "expected", "unit", "why", "source", "place")
        assert all(row[name] for name in told), row["key"]
        assert row["kind"] in KINDS
        assert row["use"] in USES
        assert row["low"] <= row["high"]
    assert max(Counter(row["key"] for row in ROWS).values()) == 1


def test_rows_enough_and_apart():
    """At least 30 rows were never looked at; what something was tuned to is not among the counted."""
    uses = Counter(row["use"] for row in ROWS)
    assert uses["untouched"] >= 30
    assert {row["key"] for row in ROWS if row["use"] == "tuned"} == {"pressure_minutes", "open_minutes"}


def test_docs_are_made_from_the_rows():
    """Every row and both hit rates stand in docs/theory/validation.md."""
    for row in ROWS:
        assert f"| {row['title']} |" in DOC, "run make validation"
    for use in ("untouched", "developed"):
        mine = [row for row in ROWS if row["use"] == use]
        hits = sum("miss" not in row for row in mine)
        assert f"{hits} of {len(mine)} in band" in DOC, "run make validation"
