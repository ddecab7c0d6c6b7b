"""The live probe on a phone: it follows by itself, says loudly what is wrong, and keeps the curve."""

from __future__ import annotations

import threading
import time

import pytest
import uvicorn
from axe_playwright_python.sync_playwright import Axe

from frywright.ledger.facts.probing import LogKept
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.trial.kitchens import demo_text
from tests.browser.test_cook_room import SIZES, open_page
from tests.web.live_loads import Fryer

pytestmark = pytest.mark.browser
PROBES = {"K1": ("tender", 1.0), "K2": ("tender", 1.3)}


@pytest.fixture
def served(tmp_path, monkeypatch):
    """A fryer whose server a browser can reach, and what stops it."""
    store = Store.file(tmp_path / "live.db", now)
    fryer = Fryer(store, demo_text(), "tenders cedar", PROBES, monkeypatch)
    server = uvicorn.Server(uvicorn.Config(fryer.client.app, port=0, log_level="critical"))
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    while not server.started:
        time.sleep(0.05)
    port = server.servers[0].sockets[0].getsockname()[1]

    def stop():
        server.should_exit = True
        thread.join(20)

    yield fryer, f"http://127.0.0.1:{port}", stop
    stop()


def test_a_load_on_a_phone_from_the_start_to_the_kept_curve(browser, served):
    """Two probes and the oil are placed; the page goes on by itself; short, silent and lost are loud; the
    keyboard reaches the buttons while the page renews itself.
    """
    fryer, address, stop = served
    fryer.report(-1)
    page = open_page(browser, address, "phone", "/cook/live")
    for i, place in enumerate(("tender", "tender", "oil")):
        page.select_option(f"[name=where_{i}]", place)
    page.select_option("[name=program]", "tenders cedar")
    page.select_option("[name=drop]", "oil")
    page.click("text=Start")
    page.wait_for_selector("text=Waiting for the drop")
    fryer.report(100)
    page.wait_for_selector("text=Short: will not reach the limit")
    assert "Do not lift early" in page.inner_text("main")
    assert "Short" in page.text_content("#say")
    page.focus("text=End and keep the curve")
    fryer.report(130, silent=("K1",))
    page.wait_for_selector("text=No readings")
    assert page.evaluate("document.activeElement.textContent") == "End and keep the curve"
    fryer.report(140)
    page.keyboard.press("Enter")
    page.wait_for_url("**/cook/probes/*")
    assert "Tender box/K2" in page.inner_text("main")
    assert len(list(fryer.store.facts(LogKept))) == 1
    page.goto(f"{address}/cook/live")
    stop()
    page.wait_for_selector("#link:not([hidden])", timeout=60_000)
    assert "The server does not answer" in page.inner_text("#link")


@pytest.mark.parametrize("size", SIZES)
def test_every_size_reads_well_in_both_languages(browser, served, size):
    """No sideways scrolling, targets fit for gloves, nothing for the accessibility checker to find."""
    fryer, address, _ = served
    fryer.report(-1)
    fryer.start()
    fryer.report(100)
    for path in ("/cook/live", "/cook/live?load=1"):
        for language in ("en", "es"):
            mark = "&" if "?" in path else "?"
            page = open_page(browser, address, size, f"{path}{mark}lang={language}")
            page.wait_for_timeout(1500)
            assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
            for button in page.locator(".live-acts button").all():
                assert button.bounding_box()["height"] >= 68.0
            found = Axe().run(page).response["violations"]
            assert [v["id"] for v in found] == []
            page.close()
