"""Takes the screenshots of docs/start from a running server: python scripts/screenshots.py http://127.0.0.1:8377"""

import sys
from pathlib import Path

from playwright.sync_api import sync_playwright

SIZES = {"phone": (390, 844), "tablet": (820, 1180), "desk": (1440, 900)}
FLAGS = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking", "--disable-sync"]
OUT = Path(__file__).parent.parent / "docs/start"

with sync_playwright() as playwright:
    browser = playwright.chromium.launch(executable_path="/usr/bin/chromium", args=FLAGS)
    for size, (width, height) in SIZES.items():
        for language in ("en", "es"):
            page = browser.new_page(viewport={"width": width, "height": height})
            page.goto(f"{sys.argv[1]}/cook?program=bone-in+alder&lang={language}")
            page.wait_for_selector("#curves svg path.core")
            page.screenshot(path=OUT / f"cook-{size}-{language}.png", full_page=True)
            page.close()
    page = browser.new_page(viewport={"width": 1440, "height": 900})
    page.goto(f"{sys.argv[1]}/cook/probes?lang=en")
    page.click("form[action$=demo] button")
    page.wait_for_selector("figure svg")
    page.screenshot(path=OUT / "probe-desk-en.png", full_page=True)
    browser.close()
