"""How many writes one client may send: a bucket that fills steadily, so that a runaway script or a flood
stops itself and nobody else.
"""

from __future__ import annotations

from time import monotonic

BURST_COUNT, PER_S = 500, 100.0
"""Writes at once, and writes a second in the long run (project's own rules): two hundred tablets behind one
address stay far below.
"""
MOST_CLIENTS = 10_000


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
