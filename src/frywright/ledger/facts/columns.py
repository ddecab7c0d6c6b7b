"""A fact in people's columns: what a field is called, and what it says in a kitchen's units."""

from __future__ import annotations

from collections.abc import Mapping

from frywright.ledger.facts.fact import Fact
from frywright.model.tongues import Translate
from frywright.model.units import COUNTS, show, suffix_of


def heading(cls: type[Fact], field: str) -> str:
    """Name of a field's column: its label, or its name in plain words without its unit."""
    if field in cls.LABELS:
        return cls.LABELS[field]
    ending = suffix_of(field) or next((e for e in COUNTS if field.endswith(f"_{e}")), "")
    return (field.removesuffix(f"_{ending}") if ending else field).replace("_", " ")


def cell(fact: Fact, field: str, system: str, tr: Translate = str) -> str:
    """A field's value as people of a kitchen read it; empty where nobody said."""
    value = getattr(fact, field)
    if value is None:
        return ""
    if isinstance(value, bool):
        return tr("yes" if value else "no")
    if isinstance(value, float):
        unit = suffix_of(field)
        return show(value, unit, system) if unit else f"{value:g}"
    if isinstance(value, Mapping):
        return " ".join(f"{name}={text}" for name, text in value.items() if text)
    if isinstance(value, tuple):
        return ", ".join(map(str, value))
    return tr(value).replace("_", " ") if field in fact.WORDS and value else str(value)
