"""A lunch rush on a tablet, a phone and a wall screen: early and late taps, the server killed and back; and a
bank of eight fryers in a kitchen that is not the demo.
"""

from __future__ import annotations

import io

import pytest
from axe_playwright_python.sync_playwright import Axe

from frywright.ledger.facts.day import PracticeTap
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.day import sales
from frywright.rooms.day.practice import demo_sales
from frywright.rooms.kitchen import remembered_kitchen
from tests.browser.test_day import FRIDAY
from tests.browser.test_line import DIGITS_MM, MEASURE, PX_MM, opened, told
from tests.demo import kitchen_store
from tests.eight_fryers import DAY, furnish
from tests.own_server import OwnServer

pytestmark = [pytest.mark.browser, pytest.mark.slow]
SCREENS = {"phone": (390, 844), "tablet": (1280, 800), "wall": (1920, 1080)}
SEED = "611"
IN_VIEW = """() => [...document.querySelectorAll('[data-tile]')].filter((tile) => {
  const box = tile.getBoundingClientRect();
  return box.width && box.height && box.left >= 0 && box.top >= 0
    && box.right <= innerWidth + 1 && box.bottom <= innerHeight + 1;
}).length"""

WHOLE = """(selector) => {
  const tile = document.querySelector(selector), face = tile.querySelector('.face').getBoundingClientRect();
  return [...tile.querySelectorAll('.face .left, .face .unsent')].filter((e) => e.checkVisibility())
    .map((e) => [e.className, e.getBoundingClientRect()])
    .filter(([, box]) => box.top < face.top - 1 || box.bottom > face.bottom + 1 || box.right > face.right + 1)
    .map(([name, box]) => `${name} ${box.top}-${box.bottom} outside ${face.top}-${face.bottom}`);
}"""
"""Digits and the note of a tap not sent that do not stand whole in their tile."""


def dropped(page, product, fryer, pieces):
    """A drop told on the line by hand."""
    form = f"#shelf-{product} form:has([name=fryer][value={fryer}])"
    page.click(f"#shelf-{product} > summary")
    page.fill(f"{form} [name=pieces]", str(pieces))
    page.click(f"{form} button")
    page.keyboard.press("Escape")


def seen(page, path, name):
    """A picture of a screen, with every tile in view."""
    page.screenshot(path=path / f"{name}.png")
    assert page.evaluate(IN_VIEW) == page.locator("[data-tile]").count() > 0, name


@pytest.fixture
def demo(tmp_path):
    """The demo with sales, on a server of its own."""
    store = kitchen_store(tmp_path / "r.db")
    kitchen = remembered_kitchen(store)
    sales.keep_sales(store, kitchen, io.BytesIO(demo_sales(kitchen, DAY)), "till.csv")
    store.close()
    with OwnServer(tmp_path / "r.db") as server:
        yield server


def test_a_lunch_rush_with_the_server_killed_and_back(browser, demo, tmp_path):
    """Three screens see one truth: a drop here is seen there; while the server is away clocks run, a drop
    counts at once and the loss is loud; back again each tap is kept once; an early and a late tap are asked.
    """
    screens = {name: opened(browser, demo.address, SEED, size, now=42300) for name, size in SCREENS.items()}
    tablet, phone, wall = screens["tablet"], screens["phone"], screens["wall"]
    dropped(tablet, "wedges", "cedar", 23)
    for page in screens.values():
        page.wait_for_selector("[data-tile=cedar].cooking")
    for name, page in screens.items():
        seen(page, tmp_path, f"before-{name}")

    demo.kill()
    for page in screens.values():
        page.wait_for_selector("#link:not([hidden]):has-text('No connection since')", timeout=30_000)
    dropped(phone, "tenders", "dogwood", 14)
    phone.wait_for_selector("[data-tile=dogwood].local.runs .left:visible")
    for page, tile in ((phone, "dogwood"), (wall, "cedar"), (tablet, "cedar")):
        first = page.inner_text(f"[data-tile={tile}] .left")
        page.wait_for_function(
            f"(first) => document.querySelector('[data-tile={tile}] .left').innerText < first", arg=first
        )
    for name, page in screens.items():
        seen(page, tmp_path, f"lost-{name}")
    assert "not sent yet" in phone.inner_text("[data-tile=dogwood]")
    for page in (
        tablet,
        phone,
    ):  # a tab opened anew shows what is in the oil, with a tap that waits and without
        again = page.context.new_page()
        again.goto(page.url)
        again.wait_for_selector("[data-tile=cedar].runs .left:visible")
        again.wait_for_selector("#link:not([hidden]):has-text('No connection since')")
        again.close()
    for page, tile in ((phone, "dogwood"), (phone, "cedar"), (wall, "cedar"), (tablet, "cedar")):
        assert page.evaluate(WHOLE, f"[data-tile={tile}]") == [], (tile, page.viewport_size)
    assert not phone.locator("[data-tile=dogwood] .state").is_visible(), "ready, and cooking, at once"
    undo = phone.locator("#undo button").last.bounding_box()
    assert undo is None or undo["x"] + undo["width"] <= SCREENS["phone"][0]

    demo.start()
    for page in screens.values():
        page.wait_for_selector("#link", state="hidden", timeout=60_000)
        page.wait_for_selector("[data-tile=dogwood].cooking:not(.local)")

    tablet.click("#more-dogwood > summary")
    tablet.click("#more-dogwood button:text-is('Lifted early')")
    tablet.wait_for_selector("#questions .asked:has-text('It may be raw inside')")
    tablet.click("#questions [data-answer='back in the oil']")
    tablet.wait_for_selector("#questions .asked", state="detached")
    assert phone.locator("[data-tile=dogwood].cooking").count() == 1

    late = {"what": "drop", "fryer": "alder", "product": "bone_in", "pieces": 16, "practice": SEED}
    told(wall, **late, key="long ago", at_s=41300, now_s=42310)
    for page in screens.values():
        page.wait_for_selector("[data-tile=alder].due")
    for name, page in screens.items():
        seen(page, tmp_path, f"due-{name}")
    wall.click("[data-tile=alder] .whole button")
    wall.wait_for_selector("#questions .asked:has-text('When was it lifted?')")
    wall.click("#questions [data-answer='lifted in time']")
    for page in screens.values():
        page.wait_for_selector("[data-tile=alder]:not(.cooking)")
        assert page.locator("#link").is_hidden()
    for page in screens.values():
        page.context.close()
    demo.kill()
    store = Store.file(tmp_path / "r.db", now)
    taps = [e.fact for e in store.facts(PracticeTap) if e.fact.what in ("drop", "lift")]
    assert sorted((t.what, t.fryer) for t in taps) == [
        ("drop", "alder"),
        ("drop", "cedar"),
        ("drop", "dogwood"),
        ("lift", "alder"),
    ]
    (lift,) = (t for t in taps if t.what == "lift")
    assert lift.at_s < 42310, "the lift stands at its planned time, not at the tap"
    store.close()


@pytest.fixture
def bank(tmp_path):
    """Eight fryers, metric, high up."""
    store = Store.file(tmp_path / "e.db", now)
    furnish(store)
    store.close()
    with OwnServer(tmp_path / "e.db") as server:
        yield server


def test_a_bank_of_eight_on_board_and_line_at_three_sizes(browser, bank, tmp_path):
    """All tiles in view on the line, digits of 25 mm on the tablet, no word of another kitchen's units, board
    without panning, nothing for the accessibility checker.
    """
    tap = {"what": "drop", "product": "alas", "pieces": 12, "now_s": 43200, "practice": "5"}
    for name, size in SCREENS.items():
        page = opened(browser, bank.address, 5, size, lang="es")
        for fryer, at_s in (("f3", 43100), ("f6", 42590)):
            told(page, **tap, key=f"{fryer} {name}", fryer=fryer, at_s=at_s)
        page.wait_for_selector("[data-tile=f3].cooking")
        assert page.locator("[data-tile]").count() == 8
        seen(page, tmp_path, f"eight-{name}")
        assert page.evaluate("document.documentElement.scrollWidth") <= size[0]
        assert [v["id"] for v in Axe().run(page).response["violations"]] == []
        assert "°F" not in page.inner_text("main") and " lb" not in page.inner_text("main")
        if name == "tablet":
            script = MEASURE.replace("[data-tile=cedar]", "[data-tile=f3]")
            for heights, cut in page.evaluate(script, 8):
                assert min(heights) / PX_MM >= DIGITS_MM and cut == 0
        page.goto(f"{bank.address}/day/board?practice=5&{FRIDAY}&now_s=43200&lang=es")
        page.wait_for_selector(".tile")
        assert page.evaluate("document.documentElement.scrollWidth") <= size[0]
        assert page.locator(".tiles").first.locator(".tile").count() == 8
        page.screenshot(path=tmp_path / f"eight-board-{name}.png", full_page=True)
        page.context.close()
