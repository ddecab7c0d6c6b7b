"""A view as plain values: what is written as JSON, or fills a text."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from typing import Any

_AS_THEY_ARE = frozenset({float, int, str, bool, type(None)})


_FIELDS: dict[type, tuple[tuple[str, str], ...] | None] = {}


def _fields(cls: type) -> tuple[tuple[str, str], ...] | None:
    """Key and field of a dataclass, in the order of its fields; None of any other class."""
    if cls not in _FIELDS:
        named = tuple((f.name.removesuffix("_"), f.name) for f in fields(cls)) if is_dataclass(cls) else None
        _FIELDS[cls] = named
    return _FIELDS[cls]


def plain(view: Any) -> Any:
    """Frozen dataclasses, mappings and sequences as dicts and lists, in the order of their fields.

    A field whose name would be a word of Python (``yield_``) loses its last underscore.
    """
    if type(view) in _AS_THEY_ARE:
        return view
    if (named := _fields(type(view))) is not None:
        return {key: plain(getattr(view, name)) for key, name in named}
    if isinstance(view, Mapping):
        return {key: plain(value) for key, value in view.items()}
    if isinstance(view, list | tuple):
        if _AS_THEY_ARE.issuperset(
            map(type, view)
        ):  # a curve's thousands of numbers are not asked one by one
            return list(view)
        return [plain(value) for value in view]
    return view
