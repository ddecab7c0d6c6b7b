"""Entries as they stand in stores today: each is read as a fact and would be written again byte for byte."""

from __future__ import annotations

import pytest

from frywright.ledger.facts.people import AccountChanged, DrillAnswered, PersonListed, SkillShown
from frywright.model.entry import canonical

PEOPLE = [
    (PersonListed, {"name": "Kim Vale", "born": "1999-04-02", "left": False}),
    (PersonListed, {"name": "Lee Ford", "born": "", "left": True}),
    (
        SkillShown,
        {
            "person": "Kim Vale",
            "skill": "lid",
            "observed_by": "Ana Lund",
            "date": "2026-11-20",
            "expires": "2027-05-19",
        },
    ),
    (
        DrillAnswered,
        {
            "drill": "bone-in alder v3 gauge",
            "who": "Kim",
            "choice_number": 2,
            "right": False,
            "hurts": True,
        },
    ),
    (
        AccountChanged,
        {"name": "Olive Owner", "what": "added", "role": "owner", "by": "Olive Owner", "reason": ""},
    ),
    (
        AccountChanged,
        {
            "name": "Temp",
            "what": "role, active",
            "role": "lead",
            "active": False,
            "by": "Olive Owner",
            "reason": "left the company",
        },
    ),
]


@pytest.mark.parametrize(("cls", "payload"), PEOPLE, ids=lambda x: getattr(x, "KIND", ""))
def test_old_entries_keep_their_bytes(cls, payload):
    """Same keys, same values, same explicit nulls."""
    assert canonical(cls.read(payload).payload()) == canonical(payload)
