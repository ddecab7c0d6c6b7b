"""Who may do what: one list of roles, what each may do in the program, and what each may sign and certify."""

from __future__ import annotations

import unicodedata

SIGNERS = {
    "crew": "trained crew, age rules apply",
    "lead": "shift lead",
    "technician": "technician of the house",
    "licensed": "licensed or certified contractor",
}
"""Who may sign care work, from least to most, with its words; each signs what those before it may. What a
licence or certificate covers, and nothing else, only ``licensed`` certifies, with a report or tag number.
"""
QUALIFIED = ("technician", "licensed")
"""Who may release a fryer that was stopped."""
RIGHTS = {
    "crew": ("read", "floor"),
    "lead": ("read", "floor", "shift"),
    "technician": ("read", "floor", "shift", "machine"),
    "owner": ("read", "floor", "shift", "machine", "owner"),
    "auditor": ("read",),
}
"""Rights of each account: read, the floor's own work, running a shift, machines, and what only the owner
changes. A contractor has no account: somebody of the house types the name and the number.
"""
SITE = "site"
"""Role of the token with which a site sends its own record to its office. It may do that and nothing else; no
person has it.
"""
ALL_RIGHTS = {**RIGHTS, SITE: ("sync",)}
"""Rights of people and of devices."""

CLAIMS = {
    "crew": ("crew",),
    "lead": ("crew", "lead"),
    "technician": tuple(SIGNERS),
    "owner": tuple(SIGNERS),
    "auditor": (),
}
"""As what each account may sign; a contractor's work is entered by who may change machines."""


def plain_name(name: str) -> str:
    """A name as it is kept: composed letters, single spaces."""
    return " ".join(unicodedata.normalize("NFC", name).split())


def folded(name: str) -> str:
    """What two names that people take for the same have in common."""
    return unicodedata.normalize("NFKC", plain_name(name)).casefold()


def same_person(one: str, other: str) -> bool:
    """Whether people take two names for the same: letters large or small, blanks between them."""
    return folded(one) == folded(other)


def may_claim(account: str, role: str) -> bool:
    """Whether an account may sign under a role."""
    return role in CLAIMS[account]


def may_sign(role: str, least: str) -> bool:
    """Whether a role may sign what asks for at least another."""
    order = tuple(SIGNERS)
    return role in order and order.index(role) >= order.index(least)
