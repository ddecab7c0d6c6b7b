"""Many kitchens in one process: memory after every room of each was opened, and the page that lists them.

``python -m benchmarks.kitchens`` [--kitchens 40]. Every kitchen is a copy of the demo at its own address; six
pages of each are opened.
"""

from __future__ import annotations

import argparse
import resource
import tempfile
import time
from pathlib import Path

from fastapi.testclient import TestClient

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.fleet.kitchens import open_kitchen
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.kitchens import demo_text
from frywright.web.kitchens import Kitchens

PAGES = ("/", "/cook", "/cook/desk", "/care", "/records", "/day/board")


def memory_mb() -> float:
    """The most this process has held so far."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def main() -> None:
    """Run it and print the figures."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--kitchens", type=int, default=40)
    count = asked.parse_args().kitchens
    with tempfile.TemporaryDirectory() as folder:
        store = Store.file(Path(folder) / "many.db", now)
        remember_kitchen(store, demo_text(), "demo.toml")
        for number in range(count - 1):
            open_kitchen(store, {"name": f"Kitchen {number:03}", "like": "-"})
        client = TestClient(Kitchens(store), base_url="http://127.0.0.1", headers={"accept": "text/html"})
        before = memory_mb()
        for key in store.sites():
            for path in PAGES:
                assert client.get(f"/at/{key or '-'}{path}").status_code < 500
        after = memory_mb()
        print(f"{count} kitchens, {len(PAGES)} pages of each: {before:.0f} MB before, {after:.0f} MB after")
        views, waiting = 0, True
        while waiting:
            start, views = time.perf_counter(), views + 1
            waiting = "Not looked into yet" in client.get("/kitchens").text
        print(f"list of kitchens whole after {views} views; a view then {time.perf_counter() - start:.2f} s")
        store.close()


if __name__ == "__main__":
    main()
