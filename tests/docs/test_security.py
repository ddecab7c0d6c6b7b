"""The walk through the standard: every point of levels 1 and 2 once, and no test that does not exist."""

from __future__ import annotations

import re
from pathlib import Path

HERE = Path(__file__).parents[2]
DOC = (HERE / "docs/reference/security.md").read_text("utf-8")
LAST = {
    "1": {1: 2, 2: 9, 3: 11, 4: 3, 5: 2},
    "2": {1: 3, 2: 3, 3: 4, 4: 1},
    "3": {2: 2, 3: 4, 4: 6, 5: 5, 7: 2},
    "4": {1: 3, 2: 1, 3: 2, 4: 4},
    "5": {1: 1, 2: 3, 3: 2, 4: 3},
    "6": {1: 3, 2: 12, 3: 4, 4: 4, 5: 5, 6: 3, 8: 4},
    "7": {1: 3, 2: 4, 3: 2, 4: 5, 5: 2, 6: 2},
    "8": {1: 2, 2: 3, 3: 1, 4: 1},
    "9": {1: 3, 2: 4},
    "10": {1: 2, 2: 2, 3: 4, 4: 11, 5: 5, 6: 2, 7: 3},
    "11": {1: 2, 2: 3, 3: 3, 4: 4, 5: 1, 6: 1},
    "12": {1: 3, 2: 2, 3: 4},
    "13": {1: 1, 2: 5, 3: 2, 4: 5},
    "14": {1: 2, 2: 4, 3: 3},
    "15": {1: 3, 2: 3, 3: 7},
    "16": {1: 1, 2: 5, 3: 4, 4: 3, 5: 3},
    "17": {1: 1, 2: 4, 3: 2},
}
"""Points of levels 1 and 2 of OWASP ASVS 5.0.0: chapter, section, last point. They come
first in each section."""


def test_every_point_has_its_answer_once():
    """253 of them; each row says yes, partly, no, none or host, and then how."""
    wanted = sorted(
        f"V{chapter}.{section}.{point}"
        for chapter, sections in LAST.items()
        for section, last in sections.items()
        for point in range(1, last + 1)
    )
    assert len(wanted) == 70 + 183
    assert sorted(re.findall(r"V\d+\.\d+\.\d+", DOC)) == wanted
    rows = [line.split("|") for line in DOC.splitlines() if line.startswith("| V")]
    assert {row[2].strip() for row in rows} <= {"yes", "partly", "no", "none", "host"}
    assert all(len(row) == 5 and len(row[3].strip()) > 8 for row in rows)


def test_every_test_named_exists():
    """A renamed test takes its name in the walk with it."""
    named = re.findall(r"`(tests/[\w/]+\.py)(?:::(\w+))?`", DOC)
    assert len(named) > 40
    for file, name in named:
        assert (HERE / file).exists(), file
        assert not name or f"def {name}(" in (HERE / file).read_text("utf-8"), (file, name)
