"""Room Care in a browser: the close of a day on a phone, every size and both languages."""

from __future__ import annotations

import time

import pytest
from axe_playwright_python.sync_playwright import Axe

from frywright.trial.kitchens import demo_text
from tests.browser.test_cook_room import SIZES, open_page, served

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def address(tmp_path_factory):
    """The demo without its rush, in which no oil may be moved, so that the close can be played at any
    hour.
    """
    text = demo_text().replace('rush = ["11:30-13:15", "17:00-20:00"]', "rush = []")
    assert "rush = []" in text
    with served(tmp_path_factory.mktemp("care"), text) as found:
        yield found


def test_a_closer_logs_with_one_hand(browser, address):
    """Reading, top-up and filter turn of a vat on a phone: each one number and one tap, within ten seconds,
    on targets a glove can hit.
    """
    page = open_page(browser, address, "phone", "/care")
    tile = ".tile:has(h2:text-is('Alder, three-head pressure vat'))"
    page.click(f"{tile} > summary")
    for amount, what in (("12.5", "reading"), ("5", "top_up"), ("", "filter")):
        start = time.time()
        if amount:
            page.fill(f"{tile} [name=amount]", amount)
        box = page.locator(f"{tile} button[value={what}]").bounding_box()
        assert box["height"] >= 68
        page.click(f"{tile} button[value={what}]")
        page.wait_for_load_state("load")
        assert time.time() - start < 10
    page.click("#lately > summary")
    told = page.inner_text("table:has-text('12.5')")
    assert "12.5" in told
    page.fill(f"{tile} [name=amount]", "140")
    page.click(f"{tile} button[value=reading]")
    assert "look at the meter again" in page.inner_text("[role=alert]")
    assert page.input_value(f"{tile} [name=amount]") == "140"
    page.close()


@pytest.mark.parametrize("size", SIZES)
def test_every_size_reads_well(browser, address, size):
    """No sideways scrolling and nothing for the accessibility checker to find, in both languages."""
    for language in ("en", "es"):
        page = open_page(browser, address, size, f"/care?lang={language}")
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
        assert [v["id"] for v in Axe().run(page).response["violations"]] == []
        page.close()


PAGES = (
    "/care/close",
    "/care/fryers",
    "/care/new",
    "/care/people",
    "/care/energy",
    "/care/card/boil_out",
    "/care/drill/bone-in_alder-v3-gauge",
)


@pytest.mark.parametrize("size", SIZES)
def test_every_page_of_the_room_reads_well(browser, address, size):
    """No sideways scrolling in the longer language; nothing for the accessibility checker to find where room
    is scarcest.
    """
    for path in PAGES:
        page = open_page(browser, address, size, f"{path}?lang=es")
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"], path
        if size == "phone":
            assert [v["id"] for v in Axe().run(page).response["violations"]] == [], path
        page.close()


def test_the_close_of_a_day_on_a_phone(browser, address):
    """Heat off of two vats with the name typed once; no filter turn can have been done seconds later, and the
    page says from when; what is refused stands in its box.
    """
    page = open_page(browser, address, "phone", "/care/close?lang=en")

    def do(step, who="Ana Lund"):
        form = f"#{step} form"
        if page.input_value(f"{form} [name=who]") == "":
            page.fill(f"{form} [name=who]", who)
        assert page.locator(f"{form} button").bounding_box()["height"] >= 68
        page.click(f"{form} button")
        page.wait_for_load_state("load")

    do("birch-heat_off", "A")
    assert "the name of the person who did it" in page.inner_text("[role=alert]")
    assert page.input_value("#birch-heat_off form [name=who]") == "A"
    page.fill("#birch-heat_off form [name=who]", "Ana Lund")
    do("birch-heat_off")
    assert page.input_value("#cedar-heat_off form [name=who]") == "Ana Lund"
    do("cedar-heat_off")
    for summary in page.locator("summary:has-text('Later')").all():
        summary.click()
    for fryer in ("birch", "cedar"):
        assert page.locator(f"#{fryer}-filter form").count() == 0
        shut = page.inner_text(f"#{fryer}-filter")
        assert "not before" in shut or "not in the rush" in shut
    page.close()


def test_a_new_fryer_from_the_photo_of_its_plate_to_its_pack(browser, address, tmp_path):
    """Photo and figures typed beside it, site measured, steps signed in their order with two at the dry
    check, the pack downloaded.
    """
    from tests.rooms.test_commissioning import FIGURES, PLATE, SITE, png

    (tmp_path / "plate.png").write_bytes(png())
    page = open_page(browser, address, "tablet", "/care/new?fryer=dogwood&lang=en")
    page.set_input_files("[name=photo]", str(tmp_path / "plate.png"))
    plate = "form[action='/care/new/plate']"
    for name, value in {**PLATE, "power": "14", "oil": "50"}.items():
        if name not in ("fryer", "fuel"):
            page.fill(f"{plate} [name={name}]", value)
    assert page.input_value(f"{plate} [name=fuel]") == "", "nobody chose it yet"
    page.select_option(f"{plate} [name=fuel]", "electric")
    page.click(f"{plate} button")
    assert page.locator("figure img").evaluate("i => i.decode().then(() => i.naturalWidth)") == 40
    site = "form[action='/care/new/site']"
    for name, value in SITE.items():
        if name in ("hood", "suppression"):
            page.select_option(f"{site} [name={name}]", value)
        elif name != "fryer":
            page.fill(f"{site} [name={name}]", value)
    page.click(f"{site} button")
    assert "GO" in page.inner_text(".headline").upper()
    order = (
        "plate",
        "survey",
        "place",
        "connection",
        "fire",
        "clean",
        "dry",
        "settings",
        "fill",
        "first_heat",
        "calibration",
        "programs",
        "proof",
        "training",
        "handover",
    )
    assert page.locator("input[value=fill]").count() == 0  # shut until two signed dry
    for step in order:
        form = f"form:has(input[name=step][value={step}])"
        if not page.locator(form).is_visible():
            page.click(f"details:has(> {form}) > summary")
        fields = {"who": "Ana Lund", "note": "licence 4471", "second": "Ben Roe", **FIGURES.get(step, {})}
        for name, value in fields.items():
            if page.locator(f"{form} [name={name}]").count():
                page.fill(f"{form} [name={name}]", value)
        page.select_option(f"{form} [name=role]", "licensed")
        page.click(f"{form} button")
        page.wait_for_load_state("load")
        assert page.locator("[role=alert]").count() == 0, page.inner_text("main")[:600]
    assert "Steps open: 1." in page.inner_text(".headline")  # the look for leaks waits a day
    assert "24 hours after the first heat" in page.inner_text("main")
    assert page.locator("input[value=leak]").count() == 0
    assert page.request.get(f"{address}/care/new/dogwood.pdf").body().startswith(b"%PDF")
    page.close()
