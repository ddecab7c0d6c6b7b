"""The Cook room in Chromium: its first paint and what it loads, and an edit from key to redrawn curves, as
the page measures them.
"""

from __future__ import annotations

import shutil
import threading
import time
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory

import uvicorn
from playwright.sync_api import Browser, sync_playwright
from tests.browser.conftest import FLAGS
from tests.browser.test_cook_room import edit, open_page

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.ask import warm_up
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app

LOOKS = 9

PAINT = "performance.getEntriesByName('first-contentful-paint')[0].startTime"
LOADED = "performance.getEntries().reduce((sum, e) => sum + (e.transferSize ?? 0), 0)"


def first_looks(browser: Browser, address: str) -> tuple[list[float], float]:
    """First paints of a browser that knows nothing of the page [ms], and the bytes it loaded."""
    paints, size = [], 0.0
    for _ in range(LOOKS):
        page = open_page(browser, address)
        page.wait_for_selector("#curves svg path.core")
        page.wait_for_load_state("networkidle")
        paints.append(page.evaluate(PAINT))
        size = page.evaluate(LOADED)
        page.close()
    return paints, size


def main() -> None:
    """Print first paints, and best and median of twenty edits."""
    warm_up()
    with TemporaryDirectory() as folder, sync_playwright() as playwright:
        store = Store.file(Path(folder) / "p.db", now)
        remember_kitchen(store, demo_text(), "demo.toml")
        server = uvicorn.Server(uvicorn.Config(make_app(store), port=0, log_level="error"))
        threading.Thread(target=server.run, daemon=True).start()
        while not server.started:
            time.sleep(0.02)
        address = f"http://127.0.0.1:{server.servers[0].sockets[0].getsockname()[1]}"
        browser = playwright.chromium.launch(executable_path=shutil.which("chromium"), args=FLAGS)
        paints, size = first_looks(browser, address)
        print("| the Cook room, first look | |\n|---|---|")
        print(f"| first paint, best, median of {LOOKS} | {min(paints):.0f}, {median(paints):.0f} ms |")
        print(f"| loaded, packed | {size / 1000:.0f} kB |\n")
        page = open_page(browser, address)
        page.wait_for_selector("#curves svg path.core")
        times = [edit(page, "s1_value", f"{5 + i // 4}:{15 * (i % 4):02d}") for i in range(20)]
        print("| edit in the Cook room, key to new curves | ms |\n|---|---|")
        print(f"| best, median of twenty | {min(times)}, {median(times):.0f} |")
        browser.close()
        server.should_exit = True


if __name__ == "__main__":
    main()
