"""Between the processes of one server. One of them writes and holds what lives in memory: wrong tries,
limits, sign-ins that wait, work in the background, loads followed live. The others answer what only reads the
record, and pass every other request to it, so that each of these counts once.

They speak over sockets in a folder that only this user can open: a letter, a length, and so many bytes.
"""

from __future__ import annotations

import asyncio
import json
import re
import socket
import struct
from collections.abc import Callable, Iterable
from contextlib import suppress
from pathlib import Path
from time import monotonic
from typing import TypedDict, cast

import uvicorn
from fastapi.concurrency import run_in_threadpool
from starlette.requests import Request
from starlette.responses import Response
from starlette.types import Message, Receive, Scope, Send

from frywright.model.errors import BusyError, FrywrightError, NotKeptError
from frywright.web.app import HEADERS
from frywright.web.kitchens import AT, Kitchens
from frywright.web.watch import Counts

ASK, BODY, END, GONE = b"A", b"B", b"E", b"G"
"""What the one who passes a request on says: the request, a piece of its body, that this was all of it, that
whoever asked has left.
"""
START, PIECE, DONE = b"S", b"P", b"D"
"""What the one who answers says: status and headers, a piece of the answer, that this was all of it."""
COUNTS = b"C"
"""A question for the counts of a process, and their answer."""
HEAD = struct.Struct(">cI")
PIECE_BYTES = 1 << 18
WRITER = 0
"""Number of the process that writes."""
WAIT_S, AGAIN_S = 10.0, 0.1
"""So long a request waits for a writer that is started anew (project's own rule), and how often it looks."""
COUNTS_WAIT_S = 2.0
QUEUE = 2048
"""Connections that wait to be taken by any of the processes."""
READS = re.compile(
    r"/|/static/.*|/health/.*|/kitchens|/day(/.*)?|/care(/.*)?|/records/(gaps|probing|(entry|case|reading|report)/.*)"
    r"|/records/pack(\..*)?|/api/v1/(entries(/.*)?|chain|programs|oil|care|cases)"
    r"|/cook(/(view\.json|chart\.svg|changes|desk|cards?\.pdf|card|readback|settings(\.pdf)?|probing))?"
)
"""Pages that any process may answer: all they show is in the record. Any other address is the writer's."""


def reads_only(method: str, path: str) -> bool:
    """Whether any process may answer a request."""
    inside = AT.fullmatch(path)
    return method in ("GET", "HEAD") and READS.fullmatch(inside[2] or "/" if inside else path) is not None


class _Line:
    """One connection between two processes: a question and its answer at a time."""

    def __init__(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        self._reader, self._writer = reader, writer
        self._head: tuple[bytes, int] | None = None

    @property
    def over(self) -> bool:
        """Whether the other end has left."""
        return self._reader.at_eof() or self._writer.is_closing()

    async def put(self, kind: bytes, data: bytes = b"") -> None:
        """Send one thing."""
        self._writer.write(HEAD.pack(kind, len(data)) + data)
        await self._writer.drain()

    async def get(self) -> tuple[bytes, bytes]:
        """The next thing; whoever stops waiting for it loses nothing."""
        if self._head is None:
            kind, size = HEAD.unpack(await self._reader.readexactly(HEAD.size))
            self._head = kind, size
        kind, size = self._head
        data = await self._reader.readexactly(size)
        self._head = None
        return kind, data

    def close(self) -> None:
        """Leave."""
        self._writer.close()

    async def closed(self) -> None:
        """Leave, and see it done."""
        self.close()
        with suppress(OSError):
            await self._writer.wait_closed()


class Passing:
    """The application of a process that only reads: what is not for it goes to the one that writes."""

    def __init__(self, app: Kitchens, folder: Path) -> None:
        self.app, self._address = app, str(folder / str(WRITER))
        self._free: list[_Line] = []

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer here, or pass on."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            for one in self._free:
                await one.closed()
            return
        if reads_only(scope["method"], scope["path"]):
            await self.app(scope, receive, send)
            return
        begun = False

        async def noted(message: Message) -> None:
            nonlocal begun
            begun = True
            await send(message)

        line = None
        try:
            line = await self._line()
            again = await self._exchange(line, scope, receive, noted)
        except (OSError, EOFError):
            if line is not None:
                line.close()
            if begun:
                raise
            lost: FrywrightError = NotKeptError("the program begins anew")
            if line is not None:
                lost = BusyError(
                    "The answer was lost: the program began anew. Look whether what you sent is there before"
                    " you send it again."
                )
            await self._tell(scope, receive, send, lost)
            return
        except BaseException:
            if line is not None:
                line.close()
            raise
        if again:
            self._free.append(line)
        else:
            line.close()

    async def _line(self) -> _Line:
        """A connection to the writer; one that is being started anew is waited for."""
        while self._free:
            line = self._free.pop()
            if not line.over:
                return line
            line.close()
        until_s = monotonic() + WAIT_S
        while True:
            try:
                return _Line(*await asyncio.open_unix_connection(self._address))
            except OSError:
                if monotonic() > until_s:
                    raise
            await asyncio.sleep(AGAIN_S)

    async def _exchange(self, line: _Line, scope: Scope, receive: Receive, send: Send) -> bool:
        """One question and its answer; whether the connection may be used again."""
        await line.put(ASK, json.dumps(_asked(scope)).encode())
        sent = False

        async def body() -> None:
            nonlocal sent
            while True:
                message = await receive()
                if message["type"] == "http.disconnect":
                    await line.put(GONE)
                    return
                whole, more = memoryview(message.get("body", b"")), message.get("more_body", False)
                for at in range(0, len(whole), PIECE_BYTES):
                    await line.put(BODY, bytes(whole[at : at + PIECE_BYTES]))
                if not more:
                    await line.put(END)
                    sent = True
                    return

        pump = asyncio.create_task(body())
        try:
            while True:
                kind, data = await line.get()
                if kind == START:
                    told = json.loads(data)
                    headers = [(k.encode("latin-1"), v.encode("latin-1")) for k, v in told["headers"]]
                    await send({"type": "http.response.start", "status": told["status"], "headers": headers})
                elif kind == PIECE:
                    await send({"type": "http.response.body", "body": data, "more_body": True})
                else:
                    await send({"type": "http.response.body", "body": b"", "more_body": False})
                    return sent
        finally:
            pump.cancel()
            with suppress(asyncio.CancelledError, OSError, EOFError):
                await pump

    async def _tell(self, scope: Scope, receive: Receive, send: Send, lost: FrywrightError) -> None:
        """A request that found no writer is answered in words."""
        home = self.app.home
        request = Request({**scope, "app": home}, receive)
        request.state.who = None
        tell = cast(Callable[[Request, FrywrightError], Response], home.exception_handlers[FrywrightError])
        response = await run_in_threadpool(tell, request, lost)
        response.headers.update({**HEADERS, "Retry-After": "1"})
        await response(scope, receive, send)


class Asked(TypedDict):
    """A request as it is passed on."""

    method: str
    path: str
    scheme: str
    http_version: str
    query: str
    raw: str
    headers: list[tuple[str, str]]
    client: tuple[str, int] | None
    server: tuple[str, int] | None


def _asked(scope: Scope) -> Asked:
    """A request, to be passed on."""
    return {
        "method": scope["method"],
        "path": scope["path"],
        "scheme": scope["scheme"],
        "http_version": scope["http_version"],
        "query": scope["query_string"].decode("latin-1"),
        "raw": scope["raw_path"].decode("latin-1"),
        "headers": [(k.decode("latin-1"), v.decode("latin-1")) for k, v in scope["headers"]],
        "client": scope["client"],
        "server": scope["server"],
    }


def _scope(told: Asked) -> Scope:
    """The request that was passed on."""
    return {
        "type": "http",
        "asgi": {"version": "3.0", "spec_version": "2.3"},
        "method": told["method"],
        "path": told["path"],
        "scheme": told["scheme"],
        "http_version": told["http_version"],
        "query_string": told["query"].encode("latin-1"),
        "raw_path": told["raw"].encode("latin-1"),
        "root_path": "",
        "headers": [(k.encode("latin-1"), v.encode("latin-1")) for k, v in told["headers"]],
        "client": tuple(told["client"]) if told["client"] else None,
        "server": tuple(told["server"]) if told["server"] else None,
        "state": {},
    }


class Other:
    """What one process is to the others: its counts, and if it is the one that writes, its answers."""

    def __init__(self, app: Kitchens, folder: Path, number: int) -> None:
        self._app, self._folder, self._number = app, folder, number
        self._line: asyncio.AbstractServer | None = None

    async def listen(self) -> None:
        """Wait for the others."""
        self._line = await asyncio.start_unix_server(self._heard, str(self._folder / str(self._number)))

    async def leave(self) -> None:
        """Answer nobody any more."""
        if self._line is not None:
            self._line.close()

    async def _heard(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        line = _Line(reader, writer)
        try:
            while await self._told(line, *await line.get()):
                pass
        except (OSError, EOFError, asyncio.CancelledError):
            pass  # the other end has left, or this one leaves
        finally:
            line.close()

    async def _told(self, line: _Line, kind: bytes, data: bytes) -> bool:
        """Answer one question; whether another may follow."""
        if kind == COUNTS:
            await line.put(COUNTS, json.dumps(self._app.home.state.watch.told()).encode())
            return True
        if kind == ASK and self._number == WRITER:
            return await self._answered(line, _scope(json.loads(data)))
        return False

    async def _answered(self, line: _Line, scope: Scope) -> bool:
        """Answer a request that was passed on, in a context of its own; whether another may follow."""
        ended = left = finished = False

        async def receive() -> Message:
            nonlocal ended, left
            kind, data = GONE, b""
            with suppress(OSError, EOFError):
                if not left:
                    kind, data = await line.get()
            if kind == BODY:
                return {"type": "http.request", "body": data, "more_body": True}
            if kind == END:
                ended = True
                return {"type": "http.request", "body": b"", "more_body": False}
            left = True
            return {"type": "http.disconnect"}

        async def send(message: Message) -> None:
            nonlocal finished
            if message["type"] == "http.response.start":
                headers = [(k.decode("latin-1"), v.decode("latin-1")) for k, v in message["headers"]]
                await line.put(START, json.dumps({"status": message["status"], "headers": headers}).encode())
                return
            whole = memoryview(message.get("body", b""))
            for at in range(0, len(whole), PIECE_BYTES):
                await line.put(PIECE, bytes(whole[at : at + PIECE_BYTES]))
            if not message.get("more_body", False):
                finished = True
                await line.put(DONE)

        await asyncio.create_task(_run(self._app, scope, receive, send))
        if not ended and not left:
            with suppress(OSError, EOFError):  # nobody asked for the body: what is left of it is not kept
                while not ended and (await receive())["type"] == "http.request":
                    pass
        return finished and ended and not left


async def _run(app: Kitchens, scope: Scope, receive: Receive, send: Send) -> None:
    with suppress(Exception):  # it was logged, and answered where that could be done
        await app(scope, receive, send)


class Server(uvicorn.Server):
    """One of several processes at the same address."""

    def __init__(self, config: uvicorn.Config, other: Other) -> None:
        super().__init__(config)
        self._other = other

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        """Take connections one at a time, so that the process that has least to do takes most of them."""
        await self._other.listen()
        await super().startup(sockets)
        for one in sockets or []:
            one.listen(QUEUE)

    async def shutdown(self, sockets: list[socket.socket] | None = None) -> None:
        """Answer those who came, then the others no more."""
        await super().shutdown(sockets)
        await self._other.leave()


def counts_of(folder: Path, numbers: Iterable[int]) -> list[Counts]:
    """The counts of other processes; one that is being started anew has none."""
    found: list[Counts] = []
    for number in numbers:
        with suppress(OSError, EOFError, ValueError), socket.socket(socket.AF_UNIX) as line:
            line.settimeout(COUNTS_WAIT_S)
            line.connect(str(folder / str(number)))
            line.sendall(HEAD.pack(COUNTS, 0))
            with line.makefile("rb") as answer:
                _, size = HEAD.unpack(answer.read(HEAD.size))
                found.append(json.loads(answer.read(size)))
    return found
