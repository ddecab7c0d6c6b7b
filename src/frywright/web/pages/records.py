"""Room Records: what is remembered so far, and whether the chain holds."""

from __future__ import annotations

from itertools import islice
from typing import Any

from fastapi import APIRouter, Request, Response

from frywright.model.entry import Recorded
from frywright.model.errors import RecordError
from frywright.web.app import Context

SHOWN = 200


def router(context: Context) -> APIRouter:
    """Routes of the room."""
    routes = APIRouter()

    @routes.get("/records")
    def page(request: Request) -> Response:
        latest = [_row(item) for item in islice(context.store.entries(newest_first=True), SHOWN)]
        try:
            chain, broken = context.store.verify()[0], ""
        except RecordError as error:
            chain, broken = 0, str(error)
        new = request.query_params.get("new", "")
        return context.render(request, "records.html", rows=latest, chain=chain, broken=broken, new=new, room="records")

    return routes


def _row(item: Recorded) -> dict[str, Any]:
    payload = item.entry.payload
    name = payload.get("name") or payload.get("program") or payload.get("file") or ""
    return {
        "number": item.number, "kind": item.entry.kind, "name": str(name), "version": payload.get("version", ""),
        "at": item.recorded_at.strftime("%Y-%m-%d %H:%M UTC"), "author": item.entry.author,
        "hash": item.hash[:12], "replaces": item.entry.replaces or "",
    }  # fmt: skip
