"""A view as plain values: what is written as JSON, or fills a text."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from typing import Any

_AS_THEY_ARE = frozenset({float, int, str, bool, type(None)})


def plain(view: Any) -> Any:
    """Frozen dataclasses, mappings and sequences as dicts and lists, in the order of their fields.

    A field whose name would be a word of Python (``yield_``) loses its last underscore.
    """
    if is_dataclass(view) and not isinstance(view, type):
        return {f.name.removesuffix("_"): plain(getattr(view, f.name)) for f in fields(view)}
    if isinstance(view, Mapping):
        return {key: plain(value) for key, value in view.items()}
    if isinstance(view, list | tuple):
        if _AS_THEY_ARE.issuperset(
            map(type, view)
        ):  # a curve's thousands of numbers are not asked one by one
            return list(view)
        return [plain(value) for value in view]
    return view
