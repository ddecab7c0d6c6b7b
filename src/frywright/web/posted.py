"""What a page posts, read before its route runs: routes are plain functions and run in a thread of their own,
so that a write that waits for the store, a file or a password keeps nobody else waiting.
"""

from __future__ import annotations

import json
from collections.abc import AsyncIterator, Mapping
from typing import Annotated, Any, BinaryIO

from fastapi import Depends, Request
from starlette.datastructures import FormData, UploadFile

from frywright.model.errors import InputError


def _sound(value: Any) -> None:
    """Nothing that a store cannot keep: no number without an end, no half a letter, no empty byte."""
    try:
        text = json.dumps(value, ensure_ascii=False, allow_nan=False)
        text.encode()
    except (ValueError, RecursionError) as error:
        raise InputError("body", "unsuited", "plain text and numbers") from error
    if "\\u0000" in text:
        raise InputError("body", "unsuited", "plain text and numbers")


async def _typed(request: Request) -> dict[str, str]:
    found = {name: str(value) for name, value in (await request.form()).items()}
    _sound(found)
    return found


async def _sent(request: Request) -> AsyncIterator[FormData]:
    async with request.form() as form:
        _sound(texts_of(form))
        yield form


async def _told(request: Request) -> Mapping[str, Any]:
    if not request.headers.get("content-type", "").startswith("application/json"):
        return await _typed(request)
    try:
        found = await request.json()
    except (ValueError, RecursionError) as error:
        raise InputError("body", "not JSON", "a JSON object") from error
    if not isinstance(found, dict):
        raise InputError("body", type(found).__name__, "a JSON object")
    _sound(found)
    return found


Typed = Annotated[dict[str, str], Depends(_typed)]
"""The texts of a form."""
Sent = Annotated[FormData, Depends(_sent)]
"""A form with its files, which are closed when it is answered."""
Told = Annotated[Mapping[str, Any], Depends(_told)]
"""A form or a JSON object."""


def texts_of(form: FormData) -> dict[str, str]:
    """What was typed into a form that may carry files."""
    return {name: value for name, value in form.items() if isinstance(value, str)}


def photo_of(form: FormData) -> BinaryIO | None:
    """The photo of a form, if one was chosen."""
    photo = form.get("photo")
    return photo.file if isinstance(photo, UploadFile) and photo.filename else None
