"""A view as an answer in JSON, written in one walk, and a curve's hundreds of numbers in one call. The bytes
are those that the standard library writes of its plain values; a test compares them.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from json.encoder import encode_basestring
from typing import Any

from fastapi import Response
from pydantic_core import to_json

from frywright.model.plain import field_names

_FLOAT, _SINGLE = frozenset({float}), frozenset({float, int, bool, type(None)})
_PLAINLY = json.JSONEncoder(ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode
LEAST_COUNT = 8
"""Numbers from which a list is written in one call."""
OTHERWISE = (b"e", b"N", b"I", b"0.0000")
"""What the two writers of numbers do not write alike: powers of ten, numbers near nothing, no numbers."""


def view_json(view: Any) -> Response:
    """``{"ok": true}`` and the fields of a view."""
    return Response('{"ok":true,' + written(view)[1:], media_type="application/json")


def written(value: Any) -> str:
    """A view, or a part of one, as JSON.

    Raises
    ------
    ValueError
        A number is not finite.
    """
    kind = type(value)
    if kind is str:
        return encode_basestring(value)
    if kind in _SINGLE:
        return _PLAINLY(value)
    if kind is list or kind is tuple:
        if len(value) >= LEAST_COUNT and _FLOAT.issuperset(map(type, value)):
            return _numbers(value)
        return "[" + ",".join(map(written, value)) + "]"
    if (named := field_names(kind)) is not None:
        return "{" + ",".join([f'"{key}":{written(getattr(value, name))}' for key, name in named]) + "}"
    if isinstance(value, Mapping):
        return "{" + ",".join([f"{_PLAINLY(key)}:{written(part)}" for key, part in value.items()]) + "}"
    return _PLAINLY(value)


def _numbers(values: list[float] | tuple[float, ...]) -> str:
    text = to_json(values)
    return _PLAINLY(values) if any(sign in text for sign in OTHERWISE) else text.decode()
