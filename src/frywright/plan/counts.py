"""How many were sold, as tills write it: a point or a comma may mark thousands or decimals. A cell decides
for itself where it can, else the whole file does; where neither does, the file is refused.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from frywright.tables import table

FORM = re.compile(
    r"[+-]?(?:\d{1,3}(?:(?P<mark>[.,])\d{3})(?:(?P=mark)\d{3})*(?:[.,]\d*)?|\d*(?:[.,]\d*)?(?:e[+-]?\d+)?)"
)
"""A number with a mark at every third digit, or with none."""
OPEN = re.compile(r"[+-]?[1-9]\d{0,2}[.,]\d{3}")
"""What can be read in two ways, such as 1,234."""
MOST = 1e5
"""Largest count of a line (own choice)."""
LEAST_ALIKE = 3
"""Counts that all end in three zeros, from which these are taken as decimals (own choice)."""


def _bare(text: str) -> str:
    """A number as it stands; empty for what is none."""
    found = text.strip().lower()
    return found if any(c.isdigit() for c in found) and FORM.fullmatch(found) else ""


def _own_mark(number: str) -> str:
    """The decimal mark that a number shows by itself; empty where it has none or is open."""
    marks = re.findall(r"[.,]", number)
    if not marks or OPEN.fullmatch(number):
        return ""
    if len(marks) == 1 or marks[-1] != marks[0]:
        return str(marks[-1])
    return "." if marks[0] == "," else ","


def decimal_mark(texts: Iterable[str]) -> str | None:
    """The decimal mark by which a file's open counts are read; empty where none is open, None where they
    stay open.

    Where nothing else decides, a mark beside whole numbers below 1,000 is one of thousands, as counts are
    whole; and one before three zeros in every count of several is one of decimals.
    """
    numbers = [number for number in map(_bare, texts) if number]
    read = [number for number in numbers if OPEN.fullmatch(number)]
    if not read:
        return ""
    own = {mark for mark in map(_own_mark, numbers) if mark}
    if own:
        return own.pop() if len(own) == 1 else None
    marks = {re.sub(r"[^.,]", "", number) for number in read}
    if len(marks) > 1:
        return None
    (mark,) = marks
    plain = [float(number) for number in numbers if not OPEN.fullmatch(number)]
    if not any(plain):
        alike = len(read) >= LEAST_ALIKE and all(number.endswith("000") for number in read)
        return mark if alike else None
    other = "." if mark == "," else ","
    return other if max(map(abs, plain)) < 1000 else None


def count_of(text: str, mark: str) -> float | None:
    """How many a cell says, by the file's decimal mark where it is open; None where it says no number."""
    if not text or table.is_open_mark(text):
        return 0.0
    number = _bare(text)
    if not number:
        return None
    decimal = mark if OPEN.fullmatch(number) else _own_mark(number) or "."
    thousands = "." if decimal == "," else ","
    value = float(number.replace(thousands, "").replace(decimal, "."))
    return value if abs(value) <= MOST else None
