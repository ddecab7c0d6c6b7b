"""The table of roles says what the program's one list of roles does."""

from __future__ import annotations

import re
from pathlib import Path

from frywright.model.roles import ALL_RIGHTS, CLAIMS, QUALIFIED, RIGHTS, SIGNERS, SITE, may_claim, may_sign

PAGE = (Path(__file__).parents[2] / "docs/reference/roles.md").read_text("utf-8")
ROWS = {
    key: rest
    for key, *rest in re.findall(r"^\| `(\w+)` \| ([^|]*) \| ([^|]*) \| ([^|]*) \| ([^|]*) \|$", PAGE, re.M)
}
STEPS = {
    "read": ("read",),
    "read, the floor's own work": ("read", "floor"),
    "also run a shift": ("read", "floor", "shift"),
    "also change machines": ("read", "floor", "shift", "machine"),
    "everything": ("read", "floor", "shift", "machine", "owner"),
}
"""What an account may, in the table's words."""


def test_every_role_stands_there_with_its_rights():
    """And a contractor without an account, a site's token with nothing but its record."""
    assert set(ROWS) == {*RIGHTS, *SIGNERS, SITE}
    assert {key: STEPS[ROWS[key][0]] for key in RIGHTS} == RIGHTS
    assert ROWS["licensed"][0].startswith("no account") and "licensed" not in RIGHTS
    assert "no person" in ROWS[SITE][0] and ALL_RIGHTS[SITE] == ("sync",)


def test_who_signs_and_who_releases_a_stopped_fryer_is_as_it_says():
    """From least to most each signs what those before it may; qualified people alone release."""
    asks = {"crew": "crew", "lead": "a lead", "technician": "a technician", "licensed": "a licence"}
    assert {
        key: ROWS[key][1].endswith(f"what asks for {words}") for key, words in asks.items()
    } == dict.fromkeys(SIGNERS, True)
    order = tuple(SIGNERS)
    for key in order:
        assert [may_sign(key, least) for least in order] == [n <= order.index(key) for n in range(4)]
    assert {key for key in SIGNERS if ROWS[key][3] == "yes"} == set(QUALIFIED)
    assert {key for key in RIGHTS if ROWS[key][1] == "nothing"} == {key for key in RIGHTS if not CLAIMS[key]}
    assert [role for role in RIGHTS if may_claim(role, "licensed")] == ["technician", "owner"]
