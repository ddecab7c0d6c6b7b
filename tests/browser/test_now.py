"""Now and a program's life in Chromium, on the lived-in demo: three sizes, two languages, axe, keyboard."""

from __future__ import annotations

from shutil import copytree

import pytest

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from tests.browser.test_cook_room import SIZES, open_page, serving

pytestmark = pytest.mark.browser
LEAST_PX = 68
"""18 mm on the tablet of a line: targets of gloved hands."""
PATHS = (
    "/",
    "/cook/desk",
    "/cook/changes?program=bone-in+alder",
    "/cook/changes?program=bone-in+birch",
    "/cook/changes?program=wings+birch",
    "/records/gaps",
)


@pytest.fixture(scope="module")
def address(fortnight, tmp_path_factory):
    store = Store.file(copytree(fortnight, tmp_path_factory.mktemp("now") / "copy") / "f.db", now)
    with serving(store) as found:
        yield found


@pytest.mark.parametrize("size", sorted(SIZES))
@pytest.mark.parametrize("language", ["en", "es"])
def test_pages_fit_and_pass_axe(browser, address, size, language):
    """No sideways panning, no axe violation, targets for gloves, no complaint."""
    from axe_playwright_python.sync_playwright import Axe

    for path in PATHS:
        joint = "&" if "?" in path else "?"
        page = open_page(browser, address, size, f"{path}{joint}lang={language}", bypass_csp=True)
        assert page.evaluate("document.documentElement.scrollWidth") <= SIZES[size][0], path
        found = [(v["id"], v["nodes"][0]["html"][:120]) for v in Axe().run(page).response["violations"]]
        assert found == [], path
        if path == "/":
            heights = page.evaluate(
                "[...document.querySelectorAll('.todo .button')].map(b => b.getBoundingClientRect().height)"
            )
            assert len(heights) >= 10
            assert min(heights) >= LEAST_PX
        assert page.complaints == [], path
        page.close()


def test_every_line_leads_where_it_can_be_done(browser, address):
    """Each button opens a page that answers, and what it points at is on it."""
    page = open_page(browser, address, "tablet", "/")
    lines = page.evaluate("[...document.querySelectorAll('.todo .button')].map(b => b.getAttribute('href'))")
    assert len(lines) >= 10
    for href in dict.fromkeys(lines):
        answer = page.goto(address + href)
        assert answer.status == 200, href
        assert page.locator("form[method=post], #answer").count(), href
        _, _, place = href.partition("#")
        if place:
            assert page.locator(f"[id='{place}']").count() == 1, href
    assert page.complaints == []
    page.close()


def test_a_line_is_done_by_keyboard_and_gone(browser, address):
    """The gap of yesterday: reached with Tab, explained, and no more on Now."""
    page = open_page(browser, address, "phone", "/?lang=en")
    assert page.locator("li[data-act=gap]").count() == 1
    page.focus("li[data-act=gap] .button")
    page.keyboard.press("Enter")
    page.wait_for_url("**/records/gaps")
    page.focus("form [name=words] >> nth=0")
    page.keyboard.type("the slush machine was broken")
    page.keyboard.press("Tab")
    page.keyboard.type("Maple")
    page.keyboard.press("Enter")
    page.wait_for_load_state("networkidle")
    assert "the slush machine was broken (Maple)" in page.inner_text("main")
    page.goto(address + "/")
    assert page.locator("li[data-act=gap]").count() == 0
    page.close()
