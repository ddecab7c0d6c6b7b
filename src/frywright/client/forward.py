"""Hands readings on to a kitchen's server, in order and none lost while it does not answer, within bounds."""

from __future__ import annotations

import threading
from collections import deque
from dataclasses import replace
from typing import Any

from frywright.client.http import Client
from frywright.model.errors import AccessError, FrywrightError, RecordError
from frywright.rooms.clock import now
from frywright.rooms.cook.intake import MOST_TOGETHER, Sample

MOST_WAITING = 50_000
"""Readings kept while the server does not answer: three hours of four probes at one a second. Own choice."""
EVERY_S, AGAIN_S = 0.5, 2.0


class Forward:
    """A queue of readings and the thread that sends them. ``trouble`` says why the last try failed."""

    def __init__(self, client: Client) -> None:
        self.client = client
        self.sent_count = self.lost_count = 0
        self.trouble = ""
        self._waiting: deque[tuple[str, Sample]] = deque()
        self._lock, self._stop = threading.Lock(), threading.Event()
        self._thread = threading.Thread(target=self._run, daemon=True)
        self._thread.start()

    def take(self, source: str, samples: list[Sample]) -> None:
        """Queue readings, those without a time with that of now; the oldest go where there is no room."""
        moment = now().timestamp()
        timed = [s if s.at_s is not None else replace(s, at_s=moment) for s in samples]
        with self._lock:
            self._waiting.extend((source, sample) for sample in timed)
            while len(self._waiting) > MOST_WAITING:
                self._waiting.popleft()
                self.lost_count += 1

    @property
    def waiting_count(self) -> int:
        """How many wait."""
        return len(self._waiting)

    def _run(self) -> None:
        while not self._stop.is_set():
            sent = self._send()
            self._stop.wait(EVERY_S if sent else AGAIN_S)

    def _send(self) -> bool:
        """Send what waits, a message a source; what the server refuses is given up, what it never got is
        kept.
        """
        while True:
            with self._lock:
                batch = self._next()
            if not batch:
                return True
            source, samples = batch[0][0], [sample for _, sample in batch]
            try:
                self.client.write("live", {"source": source, "samples": [_told(s) for s in samples]})
            except (RecordError, AccessError) as error:
                self.trouble = str(error)
                return False
            except FrywrightError as error:
                self.trouble = str(error)
                self.lost_count += len(samples)
            else:
                self.trouble, self.sent_count = "", self.sent_count + len(samples)
            with self._lock:
                for pair in batch:
                    if self._waiting and self._waiting[0] is pair:
                        self._waiting.popleft()

    def _next(self) -> list[tuple[str, Sample]]:
        """The oldest readings of one source."""
        batch: list[tuple[str, Sample]] = []
        for pair in self._waiting:
            if len(batch) == MOST_TOGETHER or (batch and pair[0] != batch[0][0]):
                break
            batch.append(pair)
        return batch

    def close(self) -> None:
        """Try once more to send what waits, then stop."""
        self._stop.set()
        self._thread.join(timeout=30.0)
        if self._waiting and not self.trouble:
            self._send()


def _told(sample: Sample) -> dict[str, Any]:
    return {"channel": sample.channel, "temp": sample.temp_c, "unit": "C", "at": sample.at_s}
