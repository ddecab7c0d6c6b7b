"""The server under many clients, and under a flood of sign-ins: a real one on the demo's fortnight, with an
owner, asked over loopback by a process of its own.

python -m benchmarks.hosting [--clients 200] [--per-s 152] [--seconds 30] [--processes 2]
"""

from __future__ import annotations

import argparse
import asyncio
import json
import os
import random
import subprocess
import sys
import tempfile
import time
import urllib.parse
from collections.abc import Awaitable, Callable
from pathlib import Path

from frywright.ledger.accounts import Accounts
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.demo import play_demo
from frywright.rooms.records import people
from frywright.web.app import SESSION_COOKIE

SERVE = "from frywright.cli.main import run; run()"
PAGES = ("/", "/records", "/care", "/care/close", "/records/gaps", "/day/board", "/cook/desk")
FLOODERS = 20
SETTLE_S, IDLE_S = 120.0, 0.1
"""The longest wait for a server that has just been started, and what two idle seconds use of a processor."""


class Line:
    """One keep-alive connection of one client."""

    def __init__(self, port: int, cookie: str = "") -> None:
        self._port, self._cookie = port, cookie
        self._here: tuple[asyncio.StreamReader, asyncio.StreamWriter] | None = None

    async def ask(self, method: str, path: str, body: bytes = b"", kind: str = "") -> int:
        """Status of the answer, read whole; a connection that was closed meanwhile is made anew."""
        if self._here is None:
            self._here = await asyncio.open_connection("127.0.0.1", self._port)
        reader, writer = self._here
        head = f"{method} {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nOrigin: http://127.0.0.1\r\n"
        head += f"Cookie: {SESSION_COOKIE}={self._cookie}\r\nAccept: application/json\r\n"
        if body:
            head += f"Content-Type: {kind}\r\nContent-Length: {len(body)}\r\n"
        writer.write(head.encode() + b"\r\n" + body)
        told = (await reader.readuntil(b"\r\n\r\n")).decode("latin-1").lower()
        status = int(told.split(" ", 2)[1])
        if "content-length:" in told:
            await reader.readexactly(int(told.split("content-length:")[1].split("\r\n")[0]))
        elif "transfer-encoding: chunked" in told:
            while size := int((await reader.readline()).strip(), 16):
                await reader.readexactly(size + 2)
            await reader.readline()
        if "connection: close" in told:
            writer.close()
            self._here = None
        return status


async def one(line: Line, dice: random.Random, number: int) -> tuple[str, int]:
    """One request of a kitchen's day: half looks at the board, a quarter taps, an eighth forms, an eighth
    pages.
    """
    drawn = dice.random()
    if drawn < 0.5:
        return "board", await line.ask("GET", "/day/board.json")
    if drawn < 0.75:
        tap = {"key": f"b{number}-{dice.random()}", "what": "sold", "product": "bone_in", "pieces": 4}
        return "tap", await line.ask("POST", "/day/tap", json.dumps(tap).encode(), "application/json")
    if drawn < 0.875:
        form = urllib.parse.urlencode({"key": f"f{number}-{dice.random()}", "vat": "alder", "what": "filter"})
        return "form", await line.ask("POST", "/care/oil", form.encode(), "application/x-www-form-urlencoded")
    return "page", await line.ask("GET", dice.choice(PAGES))


async def clients(port: int, cookie: str, count: int, per_s: float, seconds: float) -> list[tuple]:
    """Every request of so many clients who ask at a steady rate in all: what, status, seconds."""
    done: list[tuple] = []
    end = time.monotonic() + seconds

    async def client(number: int) -> None:
        dice, line = random.Random(number), Line(port, cookie)
        due = time.monotonic() + dice.random() * count / per_s
        while due < end:
            await asyncio.sleep(max(0.0, due - time.monotonic()))
            begun = time.monotonic()
            what, status = await one(line, dice, number)
            done.append((what, status, time.monotonic() - begun))
            due = max(time.monotonic(), due + count / per_s)

    await asyncio.gather(*(client(n) for n in range(count)))
    return done


async def looks(port: int, cookie: str, seconds: float) -> list[float]:
    """Seconds of each look at the chain by one who is signed in, ten a second."""
    line, times = Line(port, cookie), []
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        begun = time.monotonic()
        assert await line.ask("GET", "/api/v1/chain") == 200
        times.append(time.monotonic() - begun)
        await asyncio.sleep(0.1)
    return times


async def flooded(port: int, cookie: str, seconds: float) -> tuple[list[float], list[int]]:
    """The looks while strangers post fresh names as fast as they can, and what these were told."""
    told: list[int] = []
    end = time.monotonic() + seconds

    async def stranger(number: int) -> None:
        line, count = Line(port), 0
        while time.monotonic() < end:
            form = urllib.parse.urlencode({"name": f"n{number}-{count}", "secret": "x" * 20}).encode()
            told.append(await line.ask("POST", "/sign-in", form, "application/x-www-form-urlencoded"))
            count += 1

    found, *_ = await asyncio.gather(looks(port, cookie, seconds), *(stranger(n) for n in range(FLOODERS)))
    return found, told


def worked_s(process: int) -> float:
    """Processor seconds that a process and those it started have used: what load by others does not change
    much.
    """
    used = Path(f"/proc/{process}/stat").read_text().rsplit(") ", 1)[1].split()
    started = Path(f"/proc/{process}/task/{process}/children").read_text().split()
    own = (int(used[11]) + int(used[12])) / os.sysconf("SC_CLK_TCK")
    return own + sum(worked_s(int(one)) for one in started)


def settled(process: int) -> None:
    """Wait until every process has read in its pages and kernels and is idle."""
    until = time.monotonic() + SETTLE_S
    while time.monotonic() < until:
        before_s = worked_s(process)
        time.sleep(2.0)
        if worked_s(process) - before_s < IDLE_S:
            return


def share(times: list[float], frac: float) -> float:
    """A quantile in milliseconds."""
    return 1000 * sorted(times)[min(len(times) - 1, int(frac * len(times)))]


def with_server(processes: int, do: Callable[[int, int, str], Awaitable[None]]) -> None:
    """Run against a server of its own on the demo's fortnight."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "h.db"
        store = Store.file(path, now)
        play_demo(store)
        people.add_account(store, "Olive", "owner", "oak leaf river stone")
        cookie = Accounts(store).begin("Olive", now())
        command = [sys.executable, "-c", SERVE, "serve", "--no-open", "--port", "0", "--store", str(path)]
        command += ["--processes", str(processes)]
        server = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
        try:
            assert server.stdout
            port = int(server.stdout.readline().split(" is at http://127.0.0.1:")[1].split("/")[0])
            asyncio.run(do(server.pid, port, cookie))
        finally:
            server.terminate()
            server.wait(timeout=30)
        store.verify()


def main() -> None:
    """Both, as rows of a table."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--clients", type=int, default=200)
    parser.add_argument("--per-s", type=float, default=152.0)
    parser.add_argument("--seconds", type=float, default=30.0)
    parser.add_argument("--processes", type=int, default=2)
    asked = parser.parse_args()

    async def do(process: int, port: int, cookie: str) -> None:
        settled(process)
        await clients(port, cookie, 20, 40.0, 5.0)
        settled(process)
        begun, before_s = time.monotonic(), worked_s(process)
        done = await clients(port, cookie, asked.clients, asked.per_s, asked.seconds)
        took, times = time.monotonic() - begun, [t for _, _, t in done]
        each_ms = 1000 * (worked_s(process) - before_s) / len(done)
        print(f"| {asked.clients} clients, {asked.processes} processes: requests/s, p50, p99 |", end=" ")
        print(f"{len(done) / took:.0f}, {share(times, 0.5):.0f} ms, {share(times, 0.99):.0f} ms |")
        print(f"| processor time of the server a request | {each_ms:.1f} ms |")
        for what in ("board", "tap", "form", "page"):
            some = [t for w, _, t in done if w == what]
            print(f"| of these {what}: p50, p99 | {share(some, 0.5):.0f}, {share(some, 0.99):.0f} ms |")
        print(f"| answers that were no success | {sum(status >= 400 for _, status, _ in done)} |")
        quiet = await looks(port, cookie, 5.0)
        loud, told = await flooded(port, cookie, 10.0)
        print("| look of one who is signed in: p50 quiet, p50 in a flood of sign-ins, ratio |", end=" ")
        print(f"{share(quiet, 0.5):.1f}, {share(loud, 0.5):.1f} ms,", end=" ")
        print(f"{share(loud, 0.5) / share(quiet, 0.5):.2f} |")
        print(f"| sign-ins of the flood answered, turned away | {len(told)}, {told.count(429)} |")

    with_server(asked.processes, do)


if __name__ == "__main__":
    main()
