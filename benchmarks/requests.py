"""Processor time of a request in the application, without a network: on the demo's fortnight, and with so
many versions of programs saved before.

python -m benchmarks.requests [--versions 10000]
"""

from __future__ import annotations

import argparse
import asyncio
import tempfile
import time
from collections.abc import MutableMapping
from dataclasses import replace
from pathlib import Path
from typing import Any

from frywright.ledger.accounts import Accounts
from frywright.ledger.facts.cook import ProgramSaved
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.demo import play_demo
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records import people
from frywright.web.app import SESSION_COOKIE
from frywright.web.kitchens import Kitchens

POLLS = ("/day/board.json", "/day/line/part")
PAGES = ("/", "/day/board", "/day/line", "/day", "/cook", "/cook/view.json", "/cook/desk", "/care")
PAGES += ("/care/close", "/records", "/records/gaps", "/api/v1/programs", "/api/v1/entries")
PAGES += ("/cook/changes?program=bone-in%20alder",)
TIMES = 15


async def ask(app: Kitchens, path: str, cookie: str) -> tuple[int, int]:
    """Status of an answer, and its bytes, packed as for a browser."""
    told: list[bytes] = []
    status = 0
    kind = b"application/json" if path.endswith(".json") or path.startswith("/api") else b"text/html"
    scope = {
        "type": "http",
        "asgi": {"version": "3.0"},
        "http_version": "1.1",
        "method": "GET",
        "path": path.partition("?")[0],
        "raw_path": path.partition("?")[0].encode(),
        "query_string": path.partition("?")[2].encode(),
        "root_path": "",
        "scheme": "http",
        "headers": [
            (b"host", b"127.0.0.1"),
            (b"cookie", f"{SESSION_COOKIE}={cookie}".encode()),
            (b"accept", kind),
            (b"accept-encoding", b"gzip"),
        ],
        "client": ("127.0.0.1", 1),
        "server": ("127.0.0.1", 80),
    }
    sent = False

    async def receive() -> dict[str, Any]:
        nonlocal sent
        if sent:
            await asyncio.sleep(3600)
        sent = True
        return {"type": "http.request", "body": b"", "more_body": False}

    async def send(message: MutableMapping[str, Any]) -> None:
        nonlocal status
        if message["type"] == "http.response.start":
            status = message["status"]
        told.append(message.get("body", b""))

    await app(scope, receive, send)
    return status, sum(map(len, told))


async def costs(store: Store, cookie: str) -> dict[str, tuple[float, int]]:
    """Milliseconds of the processor of a later look at each page, the least of several; its bytes."""
    app, found = Kitchens(store), {}
    for path in (*POLLS, *PAGES):
        status, size = await ask(app, path, cookie)
        assert status == 200, (path, status)
        least = float("inf")
        for _ in range(TIMES):
            begun_s = time.process_time()
            await ask(app, path, cookie)
            least = min(least, 1000 * (time.process_time() - begun_s))
        found[path] = least, size
    return found


def main() -> None:
    """Each page as a row."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--versions", type=int, default=10_000)
    count = parser.parse_args().versions
    with tempfile.TemporaryDirectory() as folder:
        store = Store.file(Path(folder) / "r.db", now)
        play_demo(store)
        people.add_account(store, "Olive", "owner", "oak leaf river stone")
        cookie = Accounts(store).begin("Olive", now())
        short = asyncio.run(costs(store, cookie))
        kitchen = remembered_kitchen(store)
        with store.writing():
            for n in range(count):
                old = kitchen.programs[n % len(kitchen.programs)]
                new = replace(old, version=old.version + 1 + n // len(kitchen.programs))
                write(store, ProgramSaved.of(new, short=None, origin=None))
        long = asyncio.run(costs(store, cookie))
    print(f"| page | processor time, ms | after {count:,} versions saved | kB packed |\n|---|---|---|---|")
    for path, (cost, size) in short.items():
        print(f"| `{path}` | {cost:.1f} | {long[path][0]:.1f} | {size / 1000:.1f} |")


if __name__ == "__main__":
    main()
