"""A view as an answer in JSON."""

from __future__ import annotations

from typing import Any

from fastapi import Response
from pydantic_core import to_json

from frywright.model.plain import plain


def view_json(view: Any) -> Response:
    """``{"ok": true}`` and the fields of a view."""
    return Response(to_json({"ok": True, **plain(view)}), media_type="application/json")
