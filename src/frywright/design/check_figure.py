"""A two-digit figure over all values of a program: ISO/IEC 7064, MOD 97-10.

97 is prime, so any single wrong digit changes the remainder, and so does any swap of two
neighbours (their weights differ by 9 times a power of ten, which 97 does not divide).
"""

from __future__ import annotations

from collections.abc import Sequence

WORDS = {"open": "1", "pressure": "2", "–": "3"}
"""Values that are words, as digits."""


def digits_of(values: Sequence[str]) -> str:
    """Digits of all values in order; words become their digit, other signs are left out."""
    return "".join(WORDS.get(v) or "".join(c for c in v if c.isdigit()) for v in values)


def check_figure(values: Sequence[str]) -> str:
    """Check figure of values in keying order, ``00`` to ``97``."""
    digits = digits_of(values)
    return f"{98 - int(digits + '00') % 97:02d}" if digits else "00"


def holds(values: Sequence[str], figure: str) -> bool:
    """Whether values and figure belong together: digits followed by the figure leave 1 modulo 97."""
    digits = digits_of(values)
    return bool(digits) and figure.isdigit() and len(figure) == 2 and int(digits + figure) % 97 == 1
