"""Takes the screenshots of docs/start from a running server of the demo.

    python scripts/screenshots.py http://127.0.0.1:8377 ADDRESS

ADDRESS is the one with the code that the server prints while the kitchen has no owner.
"""

import shutil
import sys
from pathlib import Path

from playwright.sync_api import sync_playwright

SIZES = {"phone": (390, 844), "tablet": (820, 1180), "desk": (1440, 900)}
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-sync",
]


def sized(page, width: int, height: int):
    """A page of a size."""
    page.set_viewport_size({"width": width, "height": height})
    return page


OUT = Path(__file__).parent.parent / "docs/start"

with sync_playwright() as playwright:
    browser = playwright.chromium.launch(executable_path=shutil.which("chromium"), args=FLAGS)
    context = browser.new_context()
    for opened in sys.argv[2:]:
        context.new_page().goto(opened)
    for size, (width, height) in SIZES.items():
        for language in ("en", "es"):
            page = sized(context.new_page(), width, height)
            page.goto(f"{sys.argv[1]}/cook?program=bone-in+alder&lang={language}")
            page.wait_for_selector("#curves svg path.core")
            page.screenshot(path=OUT / f"cook-{size}-{language}.png", full_page=True)
            page.close()
    page = sized(context.new_page(), 1440, 900)
    page.goto(f"{sys.argv[1]}/cook/probes?lang=en")
    page.click("form[action$=demo] button")
    page.wait_for_selector("figure svg")
    page.screenshot(path=OUT / "probe-desk-en.png", full_page=True)
    page.goto(f"{sys.argv[1]}/day?lang=en")
    if page.locator("form[action$=demo] button").count():  # the lived-in demo has sales already
        page.click("form[action$=demo] button")
    page.wait_for_selector("text=Live board", timeout=60_000)
    page.goto(f"{sys.argv[1]}/day?date=2026-11-27")
    page.wait_for_load_state("networkidle")
    page.screenshot(path=OUT / "day-desk-en.png")
    for size, language in (("tablet", "en"), ("phone", "es")):
        width, height = SIZES[size]
        board = sized(context.new_page(), width, height)
        board.goto(f"{sys.argv[1]}/day/board?practice={len(size)}&date=2026-11-27&lang={language}")
        board.select_option("#speed", "1200")
        board.click("#auto")
        while board.inner_text("#clock") < "12:05":
            board.wait_for_timeout(100)
        board.click("#auto")
        board.select_option("#speed", "1")
        board.wait_for_timeout(1500)
        board.screenshot(path=OUT / f"board-{size}-{language}.png")
        board.close()
    seed, start = 7, 42_600  # a lunch rush, by the advice
    for size, language, width, height in (
        ("phone", "es", 390, 844),
        ("tablet", "en", 1280, 800),
        ("tablet-upright", "es", 800, 1280),
        ("wall", "en", 1920, 1080),
    ):
        seed += 1
        line = sized(context.new_page(), width, height)
        line.goto(f"{sys.argv[1]}/day/line?practice={seed}&date=2026-11-27&lang={language}")
        line.evaluate(
            "([key, second]) =>"
            " localStorage.setItem(key, JSON.stringify({second, at: Date.now(), speed: 1}))",
            [f"frywright.clock.2026-11-27.{seed}", start],
        )
        line.reload()
        line.click("#menu > summary")
        line.click("#auto")
        line.select_option("#speed", "30")
        while line.inner_text("#clock") < "12:04":
            line.wait_for_timeout(100)
        line.click("#auto")
        line.select_option("#speed", "1")
        line.evaluate("document.querySelector('#menu').open = false")
        line.wait_for_timeout(1500)
        line.screenshot(path=OUT / f"line-{size}-{language}.png")
        line.close()
    for size, language, path, name in (
        ("desk", "en", "/", "now"),
        ("tablet", "en", "/", "now"),
        ("phone", "es", "/", "now"),
        ("phone", "en", "/cook/desk", "programs"),
        ("desk", "en", "/care?vat=birch", "oil"),
        ("phone", "es", "/care/close", "close"),
        ("tablet", "en", "/care/new", "new-fryer"),
        ("desk", "en", "/records/probing", "probing"),
    ):
        width, height = SIZES[size]
        page = sized(context.new_page(), width, height)
        page.goto(f"{sys.argv[1]}{path}{'&' if '?' in path else '?'}lang={language}")
        page.screenshot(path=OUT / f"{name}-{size}-{language}.png")
        page.close()
    browser.close()
