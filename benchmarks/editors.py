"""Many people who edit a program at the same time: from the edit's question to its answer, read whole, on a
real server over loopback.

python -m benchmarks.editors [--editors 50] [--seconds 20] [--processes 1]
"""

from __future__ import annotations

import argparse
import asyncio
import os
import time
from urllib.parse import urlencode

from benchmarks.hosting import Line, settled, share, with_server, worked_s

SETS = (("s0", 335, "open", "1:00"), ("s1", 320, "pressure", "8:30"), ("s2", 330, "open", "1:30"))


def edit(editor: int, turn: int) -> str:
    """Address of an answer that nobody has asked for before: each editor has an oil temperature of their own,
    and moves a time by a second an edit.
    """
    values = {"program": "bone-in alder", "oil": f"{330 + editor / 10:.1f}"}
    for name, set_point, lid, length in SETS:
        values |= {f"{name}_set": str(set_point), f"{name}_lid": lid, f"{name}_end": "duration"}
        values[f"{name}_value"] = length if name != "s1" else f"{8 + turn // 60}:{turn % 60:02d}"
    return f"/cook/view.json?{urlencode(values)}"


async def edits(port: int, cookie: str, editors: int, seconds: float) -> list[float]:
    """Seconds of every edit, one a second from each editor."""
    times: list[float] = []

    async def editor(number: int) -> None:
        line, begun = Line(port, cookie), time.monotonic() + number / editors
        for turn in range(int(seconds)):
            await asyncio.sleep(max(0.0, begun + turn - time.monotonic()))
            asked = time.monotonic()
            assert await line.ask("GET", edit(number, turn)) == 200
            times.append(time.monotonic() - asked)

    await asyncio.gather(*(editor(n) for n in range(editors)))
    return times


def main() -> None:
    """One row."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--editors", type=int, default=50)
    parser.add_argument("--seconds", type=float, default=20.0)
    parser.add_argument("--processes", type=int, default=1)
    asked = parser.parse_args()

    async def do(process: int, port: int, cookie: str) -> None:
        settled(process)
        await edits(port, cookie, 5, 3.0)
        before_s = worked_s(process)
        times = await edits(port, cookie, asked.editors, asked.seconds)
        each_ms = 1000 * (worked_s(process) - before_s) / len(times)
        print("| editors at one edit a second | p50, p95 | processor time of the server an edit | load |")
        print("|---|---|---|---|")
        print(f"| {asked.editors}, {asked.processes} processes | {share(times, 0.5):.0f},", end=" ")
        print(f"{share(times, 0.95):.0f} ms | {each_ms:.1f} ms | {os.getloadavg()[0]:.1f} |")

    with_server(asked.processes, do)


if __name__ == "__main__":
    main()
