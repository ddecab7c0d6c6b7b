"""What a site sends its office: entries in order, original files, and a question for what was released."""

from __future__ import annotations

from hashlib import sha256
from tempfile import SpooledTemporaryFile
from typing import Annotated, Any, BinaryIO, cast

from fastapi import Path, Query, Request
from fastapi.concurrency import run_in_threadpool
from pydantic import BaseModel, ConfigDict, Field

from frywright.ledger.backup import as_recorded
from frywright.ledger.replica import Taken, standing
from frywright.model.errors import RecordError
from frywright.rooms.files import keep_file
from frywright.rooms.fleet.office import keep_anchor, released_to, sender, took
from frywright.web.app import Context
from frywright.web.routes import Routes

MOST_TOGETHER, IN_MEMORY_BYTES = 2_000, 1_000_000
"""Entries of one message, and how much of a file waits in memory before it waits on disk (project's own
rules).
"""


class EntriesIn(BaseModel):
    """Entries as they stand in the site's own record, in order."""

    model_config = ConfigDict(extra="forbid")
    rows: list[dict[str, Any]] = Field(max_length=MOST_TOGETHER)


class AnchorIn(BaseModel):
    """One anchor, its line of text."""

    model_config = ConfigDict(extra="forbid")
    text: str = Field(max_length=2_000)


class TakenOut(BaseModel):
    """Where the copy ends now, and original files that are still to be sent."""

    number: int
    hash: str
    wants: list[str]


def _out(taken: Taken) -> TakenOut:
    return TakenOut(number=taken.end.number, hash=taken.end.hash, wants=list(taken.wants))


def router(context: Context) -> Routes:
    """Routes of the interface for sites."""
    routes, store = Routes(prefix="/api/v1/sync"), context.store.home

    @routes.get("")
    def where(request: Request) -> TakenOut:
        """Where the site's record ends here."""
        return _out(standing(store, sender(store, request.state.who.name)))

    @routes.post("/entries")
    def entries(request: Request, body: EntriesIn) -> TakenOut:
        """Entries that follow. What is here already is compared and not kept twice."""
        key = sender(store, request.state.who.name)
        items = [as_recorded(row, number) for number, row in enumerate(body.rows, 1)]
        return _out(took(store, key, items))

    @routes.post("/files/{name}")
    async def file(request: Request, name: Annotated[str, Path(pattern=r"^[0-9a-f]{64}$")]) -> dict[str, Any]:
        """An original file, named by its SHA-256."""
        key = await run_in_threadpool(sender, store, request.state.who.name)
        digest = sha256()
        with SpooledTemporaryFile(IN_MEMORY_BYTES) as part:
            async for piece in request.stream():
                digest.update(piece)
                await run_in_threadpool(part.write, piece)
            if digest.hexdigest() != name:
                raise RecordError("The file that came is not the one of that name. Send it again.")
            part.seek(0)
            _, size = await run_in_threadpool(
                keep_file, store.at(key), cast(BinaryIO, part), "file", by_person=False
            )
        return {"name": name, "size": size}

    @routes.post("/anchor")
    def anchor(request: Request, body: AnchorIn) -> dict[str, Any]:
        """An anchor that the site signed for the record it sent."""
        key = sender(store, request.state.who.name)
        return {"kept": keep_anchor(store, key, body.text)}

    @routes.get("/releases")
    def releases(request: Request, after: Annotated[int, Query(ge=0, le=2**53)] = 0) -> list[dict[str, Any]]:
        """What was released to the site or stopped there since an entry of the office."""
        key = sender(store, request.state.who.name)
        return [one.payload() for one in released_to(store, key, after)]

    return routes
