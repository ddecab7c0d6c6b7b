"""One list of roles: each signs what those before it may; an account never makes a licence."""

from __future__ import annotations

from itertools import pairwise

import pytest

from frywright.model.roles import QUALIFIED, RIGHTS, SIGNERS, may_sign, same_person

ORDER = tuple(SIGNERS)


@pytest.mark.parametrize("role", [*ORDER, "owner", "auditor", ""])
@pytest.mark.parametrize("least", ORDER)
def test_who_may_sign(role, least):
    """From least to most; owners and auditors sign nothing by that name."""
    wanted = role in ORDER and ORDER.index(role) >= ORDER.index(least)
    assert may_sign(role, least) is wanted
    if role not in ORDER:
        assert not wanted


def test_accounts_and_signatures_meet_in_one_list():
    """Rights grow from crew to owner, an auditor reads only, a contractor has no account; a release asks for
    a qualified person.
    """
    grown = [set(RIGHTS[r]) for r in ("crew", "lead", "technician", "owner")]
    assert all(a < b for a, b in pairwise(grown))
    assert RIGHTS["auditor"] == ("read",)
    assert "licensed" not in RIGHTS
    assert [may_sign(r, "technician") for r in QUALIFIED] == [True, True]
    assert not may_sign("lead", "technician")
    assert not may_sign("technician", "licensed")


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [
        ("Ana Lund", "ana  LUND", True),
        ("Ana Lund", "Ana\u00a0Lund ", True),
        ("José", "Jose\u0301", True),
        ("Ana", "Ａna", True),
        ("STRASSE", "Straße", True),
        ("Ana Lund", "Ana Lunt", False),
        ("Ana Lund", "Lund Ana", False),
    ],
)
def test_one_person_under_two_spellings_is_not_two(one, other, same):
    """Where two people must sign, letters large or small, blanks and composed letters make nobody else."""
    assert same_person(one, other) is same
