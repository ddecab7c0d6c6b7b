"""How many writes one client may send: a bucket that fills steadily, so that a runaway script or a flood
stops itself and nobody else.
"""

from __future__ import annotations

import os
from collections.abc import Callable
from ipaddress import IPv6Network
from time import monotonic
from typing import TypeVar

import anyio

from frywright.model.errors import BusyError

R = TypeVar("R")

BURST_COUNT, PER_S = 500, 100.0
"""Writes at once, and writes a second in the long run (project's own rules): two hundred tablets behind one
address stay far below.
"""
KNOCKS_COUNT, KNOCKS_PER_S = 40, 1.0
"""Tries to come in, at once and in the long run, from one address (project's own rules): a shift that signs
in together, and no more than one password a second hashed for a stranger.
"""
MOST_CLIENTS = 10_000
PAUSE_S, PAUSED_COUNT = 1.0, 64
"""Whoever is turned away waits this long for the answer, so that a flood slows itself; and how many wait so
at once (project's own rules).
"""
WAITING_COUNT = 12
"""Tries to come in that wait for their turn; more are sent away at once (project's own rule)."""


class Rates:
    """One bucket a client; old ones are forgotten, so memory stays bounded."""

    def __init__(self, burst: int = BURST_COUNT, per_s: float = PER_S) -> None:
        self._burst, self._per_s = burst, per_s
        self._left: dict[str, tuple[float, float]] = {}

    def wait_s(self, client: str, now_s: float | None = None) -> float:
        """Take one write from a client's bucket; 0 if there was one, else seconds until there is."""
        moment = monotonic() if now_s is None else now_s
        left, last = self._left.pop(client, (float(self._burst), moment))
        left = min(float(self._burst), left + (moment - last) * self._per_s)
        taken = left >= 1.0
        self._left[client] = (left - 1.0 if taken else left, moment)
        if len(self._left) > MOST_CLIENTS:
            self._left.pop(next(iter(self._left)))
        return 0.0 if taken else (1.0 - left) / self._per_s


def place(host: str) -> str:
    """What an address counts as: of an IPv6 network, which is one household's, the network."""
    return str(IPv6Network(f"{host}/64", strict=False)) if ":" in host else host


class Pauses:
    """Answers that come late on purpose, a few at once; beyond them they come at once."""

    def __init__(self) -> None:
        self._here = 0

    async def pause(self) -> bool:
        """Wait a moment; False where too many wait already."""
        if self._here >= PAUSED_COUNT:
            return False
        self._here += 1
        try:
            await anyio.sleep(PAUSE_S)
        finally:
            self._here -= 1
        return True


class OneByOne:
    """Costly work for strangers, one piece at a time and in a thread; while it waits it takes none."""

    def __init__(self, waiting: int = WAITING_COUNT) -> None:
        self._most, self._here, self._turn = waiting, 0, anyio.CapacityLimiter(1)

    async def run(self, work: Callable[[], R]) -> R:
        """What the work gives, in its turn. Raises BusyError: too many wait."""
        if self._here >= self._most:
            raise BusyError("Too many sign-ins at once; try again in a few seconds.")
        self._here += 1
        try:
            return await anyio.to_thread.run_sync(work, limiter=self._turn)
        finally:
            self._here -= 1


class InTurn:
    """Answers that are worked out, as many at once as there are cores, the others in the order they came.
    All at once would be late together, and take each other's processor.
    """

    def __init__(self) -> None:
        self._turn = anyio.CapacityLimiter(os.cpu_count() or 1)

    async def run(self, work: Callable[[], R]) -> R:
        """What the work gives, from a thread, in its turn."""
        return await anyio.to_thread.run_sync(work, limiter=self._turn)
