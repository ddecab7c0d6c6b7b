"""Every page that the table of rights knows, on the demo's fortnight: no violation by axe-core, nothing off
the side, every size, both languages.
"""

from __future__ import annotations

import re
from shutil import copytree

import pytest
from axe_playwright_python.sync_playwright import Axe

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.fleet.kitchens import await_kitchen, open_kitchen
from frywright.web.rights import RIGHTS
from tests.browser.test_cook_room import SIZES, serving

pytestmark = [pytest.mark.browser, pytest.mark.slow]
NO_PAGE = re.compile(
    r".*\.(json|jsonl|svg|pdf|js|ics|zip|csv)|.*/part|/api/.*|/health/.*|/metrics|/sign-in/company.*"
)
ASKED = {
    "/cook/card": "program=bone-in+alder",
    "/cook/changes": "program=bone-in+alder",
    "/cook/readback": "program=bone-in+alder",
    "/cook/probing": "program=bone-in+cedar",
    "/day/board/down": "fryer=alder",
    "/setup/own": "fryer=alder&product=bone_in",
}
SCREENS = ("kind", "plate", "lid", "control", "check")
PATHS = sorted(
    path
    for path in (route.removeprefix("GET ") for route in RIGHTS if route.startswith("GET "))
    if "{" not in path and not NO_PAGE.fullmatch(path)
)
PAGES = [*PATHS, *(f"/setup/fryer/{screen}" for screen in SCREENS), "/setup/product/birds", "/cook/probes/1"]


@pytest.fixture(scope="module")
def lived_in(fortnight, tmp_path_factory):
    """The demo's fortnight, a second kitchen and one that is waited for."""
    store = Store.file(copytree(fortnight, tmp_path_factory.mktemp("pages") / "copy") / "f.db", now)
    open_kitchen(store, {"name": "East Gate (invented)", "like": "-"})
    await_kitchen(store, "Harbour Steps (invented)", "")
    with serving(store) as address:
        yield address
    store.close()


@pytest.mark.parametrize(
    ("size", "language"), [("phone", "en"), ("tablet", "es"), ("desk", "en"), ("phone", "es")]
)
def test_axe_finds_nothing_and_nothing_runs_off_the_side(browser, lived_in, size, language):
    """Each page answers; where an answer is an error, its page is looked at all the same."""
    width, height = SIZES[size]
    context = browser.new_context(viewport={"width": width, "height": height})
    page, found, seen = context.new_page(), [], 0
    for path in PAGES:
        answer = page.goto(f"{lived_in}{path}?lang={language}&{ASKED.get(path, '')}")
        if path in ASKED or path in ("/", "/kitchens", "/care", "/records", "/day", "/day/line"):
            assert answer.status == 200, path
        assert answer.status < 500, path
        seen += 1
        if page.evaluate("document.documentElement.scrollWidth") > width:
            found.append((path, "runs off the side"))
        if size == "phone":  # rules of axe-core look at what is there, not at how wide it is
            found += [(path, v["id"]) for v in Axe().run(page).response["violations"]]
    context.close()
    assert seen == len(PAGES) > 40
    assert found == []
