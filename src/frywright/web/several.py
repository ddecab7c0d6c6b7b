"""Several processes at one address: a parent that starts them, and starts one anew that died."""

from __future__ import annotations

import logging
import os
import signal
import socket
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from multiprocessing import connection, get_context, parent_process
from multiprocessing.context import SpawnProcess
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from frywright.ledger.store import Store
from frywright.model.errors import RecordError
from frywright.rooms.clock import now
from frywright.web.door import Door

LOG = logging.getLogger(__name__)
MOST_PROCESSES = 8
SOON_S, MOST_SOON = 5.0, 5
"""A process that lives shorter than this died at its start; after so many in a row the server gives up
(project's own rules).
"""
LEAVE_S = 15.0
"""Seconds that a process has to end before it is killed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Seat:
    """Which of several processes one is, and where it finds the others."""

    number: int
    count: int
    folder: Path


@dataclass(frozen=True, slots=True, kw_only=True)
class Shared:
    """What every process is given."""

    url: str
    door: Door
    listener: socket.socket
    log: str
    count: int
    folder: Path


Run = Callable[[Store, Door, socket.socket, str, Seat], None]


def possible() -> bool:
    """Whether this system can have several: their sockets are files."""
    return hasattr(socket, "AF_UNIX") and os.name == "posix"


def run_several(store: Store, door: Door, listener: socket.socket, log: str, count: int, run: Run) -> None:
    """Answer with so many processes until stopped. Raises RecordError: they end as soon as they begin."""
    url = store.engine.url.render_as_string(hide_password=False)
    store.close()
    with TemporaryDirectory(prefix="frywright-", ignore_cleanup_errors=True) as folder:
        shared = Shared(url=url, door=door, listener=listener, log=log, count=count, folder=Path(folder))
        _Parent(shared, run).watch()


class _Parent:
    """Watches the processes."""

    def __init__(self, shared: Shared, run: Run) -> None:
        self._shared, self._run, self._soon = shared, run, 0
        self._here: dict[int, tuple[SpawnProcess, float]] = {}
        self._bell, self._ring = os.pipe()

    def watch(self) -> None:
        """Until somebody stops us."""
        stopping: list[int] = []

        def stop(signum: int, _frame: Any) -> None:
            stopping.append(signum)
            os.write(self._ring, b".")

        before = {one: signal.signal(one, stop) for one in (signal.SIGTERM, signal.SIGINT)}
        try:
            for number in range(self._shared.count):
                self._start(number)
            while not stopping:
                connection.wait([self._bell, *(one.sentinel for one, _ in self._here.values())])
                if not stopping:
                    self._mend()
        finally:
            self._end()
            for one, was in before.items():
                signal.signal(one, was)
            os.close(self._bell)
            os.close(self._ring)

    def _start(self, number: int) -> None:
        made = get_context("spawn").Process(
            target=_one, args=(self._shared, number, self._run), name=f"frywright {number}"
        )
        made.start()
        self._here[number] = made, time.monotonic()

    def _mend(self) -> None:
        """Start anew what died."""
        for number, (one, begun_s) in list(self._here.items()):
            if one.is_alive():
                continue
            LOG.warning("Process %d of the server ended (%s) and is started anew", number, one.exitcode)
            self._soon = self._soon + 1 if time.monotonic() - begun_s < SOON_S else 0
            if self._soon >= MOST_SOON:
                raise RecordError(
                    "The processes of the server end as soon as they begin. Start it with --processes 1 and"
                    " read what it says."
                )
            self._start(number)

    def _end(self) -> None:
        """First those that read, then the one that writes: what they passed on is answered."""
        for numbers in ([n for n in self._here if n], [n for n in self._here if not n]):
            some = [self._here[n][0] for n in numbers]
            for one in some:
                one.terminate()
            until_s = time.monotonic() + LEAVE_S
            for one in some:
                one.join(max(0.1, until_s - time.monotonic()))
                if one.is_alive():
                    one.kill()
                    one.join()


def _one(shared: Shared, number: int, run: Run) -> None:
    """What a process does."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the parent says when
    threading.Thread(target=_alone, name="parent", daemon=True).start()
    seat = Seat(number=number, count=shared.count, folder=shared.folder)
    run(Store(shared.url, now), shared.door, shared.listener, shared.log, seat)


def _alone() -> None:
    """A process whose parent was killed ends."""
    parent = parent_process()
    assert parent is not None
    connection.wait([parent.sentinel])
    os.kill(os.getpid(), signal.SIGTERM)
    time.sleep(LEAVE_S)
    os._exit(1)
