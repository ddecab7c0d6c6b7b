"""A server in a process of its own, which a test can kill and start again at the same address."""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import sys
import time
from pathlib import Path

import httpx

PROGRAM = """
import pathlib, sys, uvicorn
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.web.app import make_app
uvicorn.run(make_app(Store.file(pathlib.Path(sys.argv[1]), now)), port=int(sys.argv[2]), log_level="error")
"""


class OwnServer:
    """Started when entered, gone when left."""

    def __init__(self, path: Path) -> None:
        self.path, self.running = path, None
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        self.address = f"http://127.0.0.1:{self.port}"

    def __enter__(self):
        self.start()
        return self

    def __exit__(self, *_):
        self.kill()

    def start(self) -> None:
        """Start it, and wait until it answers."""
        self.running = subprocess.Popen([sys.executable, "-c", PROGRAM, str(self.path), str(self.port)])
        for _ in range(900):
            try:
                if httpx.get(f"{self.address}/health/live").status_code < 500:
                    return
            except httpx.TransportError:
                time.sleep(0.1)
        self.kill()
        raise AssertionError("the server did not start")

    def kill(self) -> None:
        """Kill it without a word."""
        if self.running is not None and self.running.poll() is None:
            os.kill(self.running.pid, signal.SIGKILL)
            self.running.wait()
