"""Every kitchen of a store under an address of its own: the first at ``/``, any other at ``/at/its_key/``.

Each has pages of its own, so that nothing one page remembers reaches another kitchen. Who is signed in, and
how often somebody knocked, counts for all.
"""

from __future__ import annotations

import re
from collections.abc import MutableMapping
from threading import Lock
from typing import Any

from fastapi import FastAPI
from fastapi.concurrency import run_in_threadpool
from starlette.types import Message, Receive, Scope, Send

from frywright.ledger.store import Store
from frywright.ledger.writer import HOME
from frywright.model.errors import InputError, NotKeptError
from frywright.rooms.fleet.kitchens import kitchen_at
from frywright.web.app import make_app
from frywright.web.door import Door

AT = re.compile(r"/at/(-|[a-z0-9_]{1,40})(/.*)?")
SHARED = ("rates", "knocks", "tries", "pauses", "turns", "watch")
"""What counts for all kitchens together."""


class Kitchens:
    """The application over all kitchens of a store."""

    def __init__(self, store: Store, door: Door | None = None) -> None:
        self.store, self.door, self._lock = store.home, door, Lock()
        self.home = make_app(self.store, door)
        self._apps: dict[str, FastAPI] = {HOME: self.home}

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Hand a request to the pages of its kitchen."""
        found = AT.fullmatch(scope["path"]) if scope["type"] == "http" else None
        if found is None:
            await self.home(scope, receive, send)
            return
        key, path = found[1].removeprefix("-"), found[2] or "/"
        app = await run_in_threadpool(self._app, key)
        if app is None:
            await self.home(scope, receive, send)  # which has no page of that address
            return

        async def own(message: Message) -> None:
            if key and message["type"] == "http.response.start":
                message = {**message, "headers": [_own(header, key) for header in message["headers"]]}
            await send(message)

        inner: MutableMapping[str, Any] = {**scope, "path": path, "raw_path": path.encode()}
        await app(inner, receive, own)

    def ahead(self) -> None:
        """Have the days of every kitchen ready whose pages were opened."""
        for app in list(self._apps.values()):
            app.state.context.benches.ahead()

    def _app(self, key: str) -> FastAPI | None:
        """The pages of a kitchen, made when first asked for; None where the store has no such kitchen."""
        with self._lock:
            if key not in self._apps:
                try:
                    store = kitchen_at(self.store, key)
                except (InputError, NotKeptError):
                    return None
                app = self._apps[key] = make_app(store, self.door)
                for name in SHARED:
                    setattr(app.state, name, getattr(self.home.state, name))
            return self._apps[key]


def _own(header: tuple[bytes, bytes], key: str) -> tuple[bytes, bytes]:
    """A header whose address of our own stays within its kitchen."""
    name, value = header
    if name == b"location" and value.startswith(b"/") and not value.startswith((b"/at/", b"//")):
        return name, b"/at/" + key.encode() + value
    return header
