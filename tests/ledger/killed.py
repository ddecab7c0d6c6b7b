"""Writes entries in children that are killed at random instants; prints how many entries were acknowledged.
Run by test_crash.
"""

from __future__ import annotations

import datetime as dt
import os
import random
import signal
import sys
import time

from frywright.ledger.store import Store
from frywright.model.entry import Entry


def now():
    return dt.datetime.now(dt.UTC)


def child(name: str, turn: int, pipe: int) -> None:
    store, n = Store.named(name, now), 0
    while True:
        with store.writing() as writer:
            for _ in range(1 + n % 3):  # blocks of one to three entries
                last = writer.add(
                    Entry(kind="probe", happened_at=now(), author="k", payload={"turn": turn, "n": n})
                )
        os.write(pipe, f"{last.number} {last.hash}\n".encode())
        n += 1


def awaited(receive: int, draw: random.Random) -> bytes:
    """Wait for some acknowledgements, then for a random part of the time the next one would take.

    Counted by events, so that a slow machine kills in the middle of a write as often as a fast one.
    """
    told, wanted, gap_s = b"", draw.randint(1, 6), 0.0
    while told.count(b"\n") < wanted:
        before = time.monotonic()
        told += os.read(receive, 4096)
        gap_s = time.monotonic() - before
    time.sleep(draw.uniform(0.0, 1.5) * gap_s)
    return told


def main(name: str, kills: int, seed: int) -> None:
    draw, acknowledged = random.Random(seed), 0
    Store.named(name, now).close()
    for turn in range(kills):
        receive, send = os.pipe()
        pid = os.fork()
        if pid == 0:
            os.close(receive)
            child(name, turn, send)
        os.close(send)
        told = awaited(receive, draw)
        os.kill(pid, signal.SIGKILL)
        os.waitpid(pid, 0)
        while piece := os.read(receive, 1 << 16):
            told += piece
        os.close(receive)
        lines = [line.split() for line in told.decode().split("\n")[:-1]]
        store = Store.named(name, now)
        for number, link in lines[-3:]:
            kept = store.entry(int(number))
            assert kept is not None and kept.hash == link, f"entry {number} was acknowledged and is lost"
        acknowledged = max([acknowledged, *(int(number) for number, _ in lines)])
        store.close()
    sys.stdout.write(f"{acknowledged}\n")


if __name__ == "__main__":
    main(sys.argv[1], int(sys.argv[2]), int(sys.argv[3]))
