"""Probe next in a browser: a load read by the plan; every size, both languages, a closed browser."""

from __future__ import annotations

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.test_cook_room import SIZES, address, open_page  # noqa: F401

pytestmark = pytest.mark.browser
PAGE = "/cook/probing?program=bone-in+birch"


def test_a_load_is_read_by_the_plan(browser, address):  # noqa: F811
    """Check the thermometer, read the first load's pieces one by one: the plan goes on to the next load."""
    page = open_page(browser, address, "phone", "/cook/probes")
    page.fill("form[action$=check] [name=thermometer]", "K7")
    page.fill("form[action$=check] [name=ice]", "32.2")
    page.click("form[action$=check] button")
    page.goto(address + PAGE)
    first = page.inner_text("h2 >> nth=0")
    for _ in range(3):
        page.click("table th a.button >> nth=0")
        page.fill("[name=temp]", "188")
        if not page.input_value("[name=thermometer]"):
            page.fill("[name=thermometer]", "K7")
        page.click("text=Keep the reading")
        page.wait_for_load_state("networkidle")
    assert "3 of about" in page.inner_text("main")
    assert page.inner_text("h2 >> nth=0") != first
    assert page.locator("table >> nth=-1 >> text=yes").count() == 3
    page.close()


def test_a_half_typed_reading_survives_a_closed_page(browser, address):  # noqa: F811
    """Typed and not sent: the next page on this device has it again; sent, it is gone."""
    context = browser.new_context(viewport={"width": 390, "height": 844})
    page = context.new_page()
    page.goto(address + PAGE)
    page.fill("[name=temp]", "18")
    page.fill("[name=thermometer]", "K8")
    page.close()
    page = context.new_page()
    page.goto(address + PAGE)
    assert page.input_value("[name=temp]") == "18"
    assert page.input_value("[name=thermometer]") == "K8"
    page.fill("[name=temp]", "187")
    page.click("text=Keep the reading")
    page.wait_for_load_state("networkidle")
    assert page.input_value("[name=temp]") == ""
    context.close()


@pytest.mark.parametrize("size", SIZES)
def test_every_size_reads_well(browser, address, size):  # noqa: F811
    """No sideways scrolling, nothing for the accessibility checker to find, in both languages."""
    for language in ("en", "es"):
        page = open_page(browser, address, size, f"{PAGE}&lang={language}")
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
        found = Axe().run(page).response["violations"]
        assert [v["id"] for v in found] == []
        page.close()
