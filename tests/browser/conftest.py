"""Shared by what is played in a browser: one Chromium a worker, the demo's fortnight played once, order."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, sync_playwright

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.demo import play_demo

FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-features=WebUIOmniboxPopup,WebUIOmniboxAimPopup,HttpsUpgrades,LensOverlay,MediaRouter,PaintHolding,"
    "OptimizationHints,NetworkTimeServiceQuerying",
]
"""The last flag: Chromium 156 draws pages of its own under each window's address bar, half a second of the
processor for every page a test opens (measured: 0.84 s, without 0.35 s). The flag stands in for Playwright's
own of that name, so what matters here of Playwright's is named again.
"""
LONGEST_FIRST = (
    "every_page",
    "desk",
    "now",
    "day",
    "line",
    "care",
    "rush",
    "setup",
    "live",
    "probes",
    "care_fits",
    "cook_room",
    "follow",
    "probing",
    "records",
)
"""Files by how long they take, so that no long one begins when the other worker has run out; of two workers
the first gets the first and the third, which share the demo's fortnight.
"""


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """The longest files played here come first; any other test keeps its place."""
    rank = {f"test_{name}": number for number, name in enumerate(LONGEST_FIRST)}
    places = [n for n, item in enumerate(items) if item.path.parent == Path(__file__).parent]
    here = sorted((items[n] for n in places), key=lambda item: rank.get(item.path.stem, len(rank)))
    for place, item in zip(places, here, strict=True):
        items[place] = item


PATIENCE_MS = 180_000
"""How long a page may take where a test says nothing else: a machine that others use fails no test."""


def patient(make: Callable[..., Any]) -> Callable[..., Any]:
    """What makes a page or a context, with patience."""

    def made(**options: Any) -> Any:
        found = make(**options)
        found.set_default_timeout(PATIENCE_MS)
        return found

    return made


@pytest.fixture(scope="package")
def browser() -> Iterator[Browser]:
    """Closed after the last file played here: while it is open, its event loop is the thread's."""
    path = shutil.which("chromium") or shutil.which("chromium-browser") or shutil.which("google-chrome")
    assert path, "Chromium is missing: run scripts/install-browser.sh"
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=path, args=FLAGS)
        with pytest.MonkeyPatch.context() as patch:
            for name in ("new_page", "new_context"):
                patch.setattr(running, name, patient(getattr(running, name)))
            yield running
        running.close()


@pytest.fixture(scope="session")
def fortnight(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the demo's fortnight in a store, to be copied."""
    folder = tmp_path_factory.mktemp("fortnight")
    store = Store.file(folder / "f.db", now)
    play_demo(store)
    store.close()
    return folder
