"""Room Care in a browser: the close of a day on a phone, every size and both languages."""

from __future__ import annotations

import time

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.test_cook_room import SIZES, address, browser, open_page  # noqa: F401

pytestmark = pytest.mark.browser


def test_a_closer_logs_with_one_hand(browser, address):  # noqa: F811
    """Reading, top-up and filter turn of a vat on a phone: each one number and one tap, within ten seconds, on targets a glove can hit."""
    page = open_page(browser, address, "phone", "/care")
    tile = ".tile:has(h2:text-is('Alder, four-head pressure vat'))"
    for amount, what in (("12.5", "reading"), ("5", "top_up"), ("", "filter")):
        start = time.time()
        if amount:
            page.fill(f"{tile} [name=amount]", amount)
        box = page.locator(f"{tile} button[value={what}]").bounding_box()
        assert box["height"] >= 68
        page.click(f"{tile} button[value={what}]")
        page.wait_for_load_state("load")
        assert time.time() - start < 10
    told = page.inner_text("table:has-text('12.5')")
    assert "12.5" in told
    page.fill(f"{tile} [name=amount]", "140")
    page.click(f"{tile} button[value=reading]")
    assert "look at the meter again" in page.inner_text("[role=alert]")
    assert page.input_value(f"{tile} [name=amount]") == "140"
    page.close()


@pytest.mark.parametrize("size", SIZES)
def test_every_size_reads_well(browser, address, size):  # noqa: F811
    """No sideways scrolling and nothing for the accessibility checker to find, in both languages."""
    for language in ("en", "es"):
        page = open_page(browser, address, size, f"/care?lang={language}")
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
        assert [v["id"] for v in Axe().run(page).response["violations"]] == []
        page.close()
