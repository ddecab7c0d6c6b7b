"""Whether the server lives and may be used, and its counts."""

from __future__ import annotations

from contextlib import suppress
from time import monotonic

from fastapi import Request, Response
from fastapi.responses import JSONResponse, PlainTextResponse

from frywright.ledger.accounts import Accounts
from frywright.model.errors import NotKeptError
from frywright.web.app import Context
from frywright.web.routes import Routes

FRESH_S = 1.0
"""Whoever asks more often whether the store is there is told what was found last (project's own rule)."""
PROMETHEUS = "text/plain; version=0.0.4; charset=utf-8"


class _Ready:
    """Whether the store is there, looked at once in a while."""

    def __init__(self, context: Context) -> None:
        self._context, self._good, self._at_s = context, False, -FRESH_S

    def good(self) -> bool:
        """As found now, or a moment ago."""
        if monotonic() - self._at_s >= FRESH_S:
            self._at_s = monotonic()
            self._good = False
            with suppress(NotKeptError):
                self._context.store.last()
                self._good = True
        return self._good


def router(context: Context) -> Routes:
    """Routes for whoever runs the server."""
    routes, ready = Routes(), _Ready(context)

    @routes.get("/health/live")
    def live() -> Response:
        return JSONResponse({"ok": True})

    @routes.get("/health/ready")
    def is_ready() -> Response:
        good = ready.good()
        return JSONResponse({"ok": good}, 200 if good else 503)

    @routes.get("/metrics")
    def metrics(request: Request) -> Response:
        store = context.store
        last = store.last().number
        newest = store.entry(last)
        here = {"frywright_entries": float(last)}
        if newest is not None:
            here["frywright_newest_entry_seconds"] = newest.recorded_at.timestamp()
        here["frywright_sessions"] = float(Accounts(store).sessions_count())
        text = "\n".join(request.app.state.watch.lines(here))
        return PlainTextResponse(text + "\n", media_type=PROMETHEUS)

    return routes
