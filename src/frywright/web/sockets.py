"""Connections with an end to every wait: a header, a body or a reader that never comes holds no place that
somebody else needs.
"""

from __future__ import annotations

import asyncio
from collections import Counter
from contextlib import suppress
from time import monotonic
from typing import Any

from uvicorn.protocols.http.h11_impl import H11Protocol

HEADER_S, KEPT_S = 10.0, 75.0
"""A request's header comes within this time of its first byte, or of the connection; a connection that asks
nothing more is kept so long for the next question (project's own rules).
"""
BODY_S, SLOWEST_BODY_BYTES_PER_S = 20.0, 1000.0
"""A body may take this long, and longer for what has come of it at this pace (project's own rules: a photo
over the poorest mobile line is ten times as fast).
"""
READER_S = 60.0
"""An answer that nobody reads on is dropped after this time (project's own rule)."""
LOOK_S = 1.0
BACKLOG = 128
MOST_CONNECTIONS, FILES_BESIDE = 2000, 160
"""Connections at once, and open files left for stores, originals and the program itself."""
LEAST_CONNECTIONS = 32
FULL = b"HTTP/1.1 503 Service Unavailable\r\nRetry-After: 1\r\nConnection: close\r\nContent-Length: 0\r\n\r\n"


def most_connections() -> int:
    """As many connections as the files that this process may open allow, after asking for all it may have."""
    with suppress(ImportError, OSError, ValueError):
        import resource

        soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
        wanted = MOST_CONNECTIONS + BACKLOG + FILES_BESIDE
        if soft < wanted:
            soft = min(wanted, hard) if hard != resource.RLIM_INFINITY else wanted
            resource.setrlimit(resource.RLIMIT_NOFILE, (soft, hard))
        return max(LEAST_CONNECTIONS, min(MOST_CONNECTIONS, soft - BACKLOG - FILES_BESIDE))
    return MOST_CONNECTIONS


class Connection(H11Protocol):
    """One connection of a browser, a device or a stranger."""

    most = MOST_CONNECTIONS

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Look after it from now on; when all places are taken, one that waits makes room."""
        super().connection_made(transport)
        self._since_s, self._came_bytes, self._stuck_s = monotonic(), 0, 0.0
        self._asked: Any = None
        self._begun = True
        if len(self.connections) > self.most and not self._make_room():
            transport.write(FULL)
            transport.close()
        self._look_again = self.loop.call_later(LOOK_S, self._look)

    def connection_lost(self, exc: Exception | None) -> None:
        """It needs no looking after."""
        self._look_again.cancel()
        super().connection_lost(exc)

    def data_received(self, data: bytes) -> None:
        """Count what comes; the first byte of a question begins its time."""
        if self.waits and not self._begun:
            self._begun, self._since_s = True, monotonic()
        self._came_bytes += len(data)
        super().data_received(data)
        self._see_request()

    def on_response_complete(self) -> None:
        """The next question's time begins with its first byte."""
        self._begun, self._since_s = False, monotonic()
        super().on_response_complete()
        self._see_request()

    @property
    def waits(self) -> bool:
        """Whether no request is being answered."""
        return self.cycle is None or self.cycle.response_complete

    @property
    def waited_s(self) -> float:
        """Seconds since the last question was answered, or since this one's first byte."""
        return monotonic() - self._since_s

    def _see_request(self) -> None:
        if self.cycle is not self._asked:
            self._asked, self._since_s, self._came_bytes = self.cycle, monotonic(), 0

    def _make_room(self) -> bool:
        """Close the one that has waited longest of the place that keeps most waiting."""
        waiting = [one for one in self.connections if isinstance(one, Connection) and one.waits]
        waiting = [one for one in waiting if one is not self and not one.transport.is_closing()]
        if not waiting:
            return False
        places = Counter(one.place for one in waiting)
        max(waiting, key=lambda one: (places[one.place], one.waited_s)).transport.abort()
        return True

    @property
    def place(self) -> str:
        """Address at the other end; a proxy's where there is one."""
        return self.client[0] if self.client else ""

    def _look(self) -> None:
        if self._over():
            self.transport.abort()
            return
        self._look_again = self.loop.call_later(LOOK_S, self._look)

    def _over(self) -> bool:
        """Whether somebody was waited for long enough."""
        unread = self.transport.is_closing() or self.flow.write_paused
        self._stuck_s = self._stuck_s + LOOK_S if unread else 0.0
        if self._stuck_s > READER_S:
            return True
        if self.waits:
            return self.waited_s > (HEADER_S if self._begun else KEPT_S + READER_S)
        if not self.cycle.more_body:
            return False
        if self.flow.read_paused:
            self._since_s += LOOK_S  # we are the slow ones
        return self.waited_s > BODY_S + self._came_bytes / SLOWEST_BODY_BYTES_PER_S
