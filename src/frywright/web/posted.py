"""What a page posts, read before its route runs: routes are plain functions and run in a thread of their own,
so that a write that waits for the store, a file or a password keeps nobody else waiting.
"""

from __future__ import annotations

import json
from collections.abc import AsyncIterator, Mapping
from dataclasses import replace
from typing import Annotated, Any, BinaryIO

from fastapi import Depends, Request
from fastapi.concurrency import run_in_threadpool
from starlette.datastructures import FormData, UploadFile

from frywright.model.errors import AccessError, InputError
from frywright.model.roles import SIGNERS, may_claim
from frywright.rooms.clock import enter, here
from frywright.rooms.records.people import confirm

DOERS, SECONDS, SECOND = ("who", "by", "read_by", "observed_by"), ("second", "checked_by"), " second"
"""Boxes that name who acts, boxes that name a second person, and where that one's confirmation is carried."""


def _sound(value: Any) -> None:
    """Nothing that a store cannot keep: no number without an end, no half a letter, no empty byte."""
    try:
        text = json.dumps(value, ensure_ascii=False, allow_nan=False)
        text.encode()
    except (ValueError, RecursionError) as error:
        raise InputError("body", "unsuited", "plain text and numbers") from error
    if "\\u0000" in text:
        raise InputError("body", "unsuited", "plain text and numbers")


def doer(request: Request, typed: str) -> str:
    """Who acts: whoever is signed in, whatever was sent; a device's program says it itself."""
    who = request.state.who
    return who.name if who is not None and who.person and typed.strip() else typed


def _by_whom(request: Request, texts: dict[str, str]) -> dict[str, str]:
    """Who acts is whoever is signed in, whatever was typed; a contractor's name is typed by who may certify.
    A second person's PIN is looked at here and goes no further.
    """
    who = request.state.who
    shown = {name: texts.pop(f"{name}_pin", "") for name in SECONDS}
    if who is None or not who.name:
        return texts
    role = texts.get("role", "")
    if role in SIGNERS and not may_claim(who.role, role):
        raise AccessError(
            "{name} as {account} may not sign as {role}.", name=who.name, account=who.role, role=role
        )
    if texts.get("role") != "licensed":
        texts |= {name: doer(request, texts[name]) for name in DOERS if name in texts}
    named = next((n for n in SECONDS if texts.get(n, "").strip() and shown[n]), "")
    if named:
        state, place = request.app.state, f"{who.name} {who.device_hash}"
        texts[SECOND] = confirm(state.context.store, texts[named], shown[named], place, state.tries)
    return texts


async def _acted(request: Request, texts: dict[str, str]) -> dict[str, str]:
    """The texts with who acts, and who confirmed it, for the room that keeps them."""
    found = await run_in_threadpool(_by_whom, request, texts)
    if SECOND in found:
        enter(replace(here(), second=found.pop(SECOND)))
    return found


async def _typed(request: Request) -> dict[str, str]:
    found = {name: str(value) for name, value in (await request.form()).items()}
    _sound(found)
    return await _acted(request, found)


async def _sent(request: Request) -> AsyncIterator[FormData]:
    async with request.form() as form:
        _sound(texts_of(form))
        texts = await _acted(request, texts_of(form))
        files = [(name, value) for name, value in form.multi_items() if not isinstance(value, str)]
        yield FormData([*texts.items(), *files])


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
    named = {name: doer(request, str(found[name])) for name in DOERS if found.get(name)}
    return {**found, **named}


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
