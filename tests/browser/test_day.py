"""Room Day in a browser: a simulated Friday whose fryer dies at 17:40, every size and both languages, a lost
server, no clock while pressure is let go.
"""

from __future__ import annotations

import datetime as dt
import time

import pytest
from axe_playwright_python.sync_playwright import Axe

from tests.browser.test_cook_room import SIZES, address, open_page  # noqa: F401

pytestmark = pytest.mark.browser
NEXT = (dt.date.today() + dt.timedelta(days=(4 - dt.date.today().weekday()) % 7)).isoformat()
"""The coming Friday: the page reads in sales up to yesterday."""
FRIDAY = f"date={NEXT}"


@pytest.fixture(scope="module")
def day(browser, address):  # noqa: F811
    """Address of a kitchen with invented sales read in."""
    page = open_page(browser, address, "desk", "/day")
    page.click("form[action$=demo] button")
    page.wait_for_selector("text=Live board")
    page.close()
    return address


def until(page, clock, seconds=120):
    """Wait until the board's clock shows a time."""
    end = time.time() + seconds
    while page.inner_text("#clock") < clock:
        assert time.time() < end, page.inner_text("main")
        page.wait_for_timeout(100)


def test_a_friday_whose_fryer_dies(browser, day):
    """Played fast by the advice; at 17:40 birch fails, the new plan is told, nothing more goes into it; at
    the close waste is explained.
    """
    page = open_page(browser, day, "tablet", f"/day/board?practice=7&{FRIDAY}")
    page.select_option("#speed", "1200")
    page.click("#auto")
    until(page, "17:30")
    page.select_option("#speed", "1")
    tile = ".tile:has(h2:text-is('Birch, five-head pressure vat'))"
    assert not page.locator(f"{tile} .second button").is_visible(), "out of use is no bare tap"
    page.click(f"{tile} .second summary")
    page.click(f"{tile} .second button")
    page.click(f"{tile} a:text-is('What the day loses without it')")
    page.wait_for_url("**/day/board/down*")
    told = page.inner_text("main")
    assert "today without this fryer: about" in told
    assert "Pieces asked for in vain" in told
    page.click("text=Back to the board")
    page.wait_for_selector("#speed")
    birch = page.inner_text(".tile:has(h2:text-is('Birch, five-head pressure vat'))")
    assert "Out of use" in birch
    page.select_option("#speed", "1200")
    if page.get_attribute("#auto", "aria-pressed") != "true":
        page.click("#auto")
    until(page, "21:58")
    page.select_option("#speed", "1")
    page.reload()
    until(page, "21:58")
    assert "Out of use" in page.inner_text(".tile:has(h2:text-is('Birch, five-head pressure vat'))")
    page.click("summary:text-is('Enter something else')")
    page.click("text=Waste explained")
    page.wait_for_url("**/day/close*")
    assert "the causes add up" in page.inner_text("main")
    assert [c for c in page.complaints if "favicon" not in c] == []
    page.close()


def test_a_lost_server_loses_no_tap(browser, day):
    """Offline, timers go on and a tap waits; back on line it is there, once."""
    context = browser.new_context(viewport={"width": 820, "height": 1180})
    page = context.new_page()
    page.goto(f"{day}/day/board?practice=31&{FRIDAY}&now_s=43200")
    page.wait_for_selector(".tile")
    context.set_offline(True)
    page.click("summary:text-is('Enter something else')")
    form = "form:has(input[value=drop]):has(legend)"
    page.select_option(f"{form} [name=fryer]", "cedar")
    page.select_option(f"{form} [name=product]", "wedges")
    page.fill(f"{form} [name=pieces]", "26")
    page.click(f"{form} button")
    page.wait_for_selector("#link:not([hidden]):has-text('to be sent: 1')")
    before = page.inner_text("#clock")
    page.select_option("#speed", "120")
    page.wait_for_timeout(1500)
    page.wait_for_function("(before) => document.querySelector('#clock').textContent > before", arg=before)
    context.set_offline(False)
    page.wait_for_selector("#link", state="hidden", timeout=20_000)
    page.wait_for_selector(".tile.cooking, .tile.due")
    assert page.evaluate(f"localStorage.getItem('frywright.taps.{NEXT}.31')") == "[]"
    page.select_option(f"{form} [name=fryer]", "dogwood")
    page.fill(f"{form} [name=pieces]", "26")
    page.click(f"{form} button")
    page.wait_for_function("() => document.querySelectorAll('.tile.cooking, .tile.due').length === 2")
    context.close()


def test_without_the_server_clocks_go_on_and_it_is_loud(browser, day):
    """A real day's board, the line cut: the copy the tablet kept is never taken for an answer. The clock
    goes on steadily, also after a reload; a drop tapped meanwhile counts down; the line says since when.
    """
    context = browser.new_context(viewport={"width": 820, "height": 1180})
    page = context.new_page()
    page.goto(f"{day}/day/board")
    page.wait_for_selector(".tile")
    page.wait_for_function("() => navigator.serviceWorker.controller !== null")
    page.wait_for_timeout(4500)  # opened once; the worker keeps what the page is made of
    context.set_offline(True)
    page.wait_for_selector("#link:not([hidden])", timeout=15_000)
    assert "No connection since" in page.inner_text("#link")
    assert page.locator("#link").bounding_box()["y"] >= 0
    assert page.evaluate("getComputedStyle(document.querySelector('#link')).position") == "sticky"
    page.click("summary:text-is('Enter something else')")
    form = "form:has(input[value=drop]):has(legend)"
    page.select_option(f"{form} [name=fryer]", "cedar")
    page.select_option(f"{form} [name=product]", "wedges")
    page.fill(f"{form} [name=pieces]", "10")
    page.click(f"{form} button")
    page.wait_for_selector(".tile .unsent:not([hidden])")
    read = (
        "() => document.querySelector('.tile.local .left').textContent.match(/([0-9]+):([0-9]+)/).slice(1)"
        ".map(Number)"
    )
    left = []
    for _ in range(6):
        minutes, seconds = page.evaluate(read)
        left.append(60 * minutes + seconds)
        read_s = time.monotonic()
        page.wait_for_timeout(1500)
    assert left == sorted(left, reverse=True), "the countdown never goes back up"
    assert left[0] - left[-1] >= 6
    page.reload()
    page.wait_for_selector(".tile .unsent:not([hidden])")
    minutes, seconds = page.evaluate(read)
    gone_s = time.monotonic() - read_s
    assert 0 <= left[-1] - (60 * minutes + seconds) <= gone_s + 5, "a reload carries the clock on"
    context.set_offline(False)
    page.wait_for_selector("#link", state="hidden", timeout=20_000)
    context.close()


def test_a_lift_that_is_due_is_seen_and_heard(browser, day):
    """The tile turns dark, the title calls, and a tone is started that rises; it ends with the lift."""
    page = open_page(browser, day, "tablet", f"/day/board?practice=44&{FRIDAY}&now_s=43200")
    page.evaluate(
        """() => {
          window.tones = [];
          const make = AudioContext.prototype.createOscillator;
          AudioContext.prototype.createOscillator = function () {
            const tone = make.call(this), start = tone.start;
            tone.start = function (...at) {
              window.tones.push(tone.frequency.value);
              return start.apply(this, at);
            };
            return tone;
          };
        }"""
    )
    page.evaluate(
        """(date) => fetch('/day/tap', {method: 'POST', headers: {'Content-Type': 'application/json'},
        body: JSON.stringify({key: 'due', what: 'drop', fryer: 'cedar', product: 'wedges', pieces: 10,
        practice: '44', date, at_s: 34200, now_s: 34200})})""",
        NEXT,
    )
    page.mouse.click(5, 5)
    page.select_option("#speed", "120")
    page.wait_for_selector(".tile.due")
    page.select_option("#speed", "1")
    page.wait_for_function("() => window.tones.some((t) => t > window.tones[0] * 1.04)")
    assert page.evaluate("window.tones.filter((t) => t === window.tones[0]).length") == 3, "the third fryer"
    first, *others = page.evaluate("window.tones")
    assert any(later > first * 1.04 for later in others), "a semitone higher when it calls again"
    assert page.title().startswith("▲ Lift (1)")
    page.click(".tile.due button:text-is('Lifted')")
    page.wait_for_function(
        "() => !document.title.startsWith('▲') || document.querySelector('#questions .asked')"
    )
    page.close()


def test_a_lift_much_too_early_is_asked_about_over_a_reload(browser, day):
    """The question stands big on the board, survives a reload, and its answer is what is kept."""
    page = open_page(browser, day, "phone", f"/day/board?practice=43&{FRIDAY}&now_s=43200")
    page.wait_for_selector(".tile")
    page.click("summary:text-is('Enter something else')")
    form = "form:has(input[value=drop]):has(legend)"
    page.select_option(f"{form} [name=fryer]", "alder")
    page.select_option(f"{form} [name=product]", "bone_in")
    page.fill(f"{form} [name=pieces]", "8")
    page.click(f"{form} button")
    tile = ".tile:has(h2:text-is('Alder, three-head pressure vat'))"
    page.click(f"{tile} button:text-is('Lifted')")
    page.wait_for_selector("#questions .asked")
    assert "Alder, three-head pressure vat: This load has had" in page.inner_text("#questions")
    assert page.locator("#questions button").count() == 3
    assert page.evaluate("document.querySelector('#questions button').getBoundingClientRect().height") >= 68
    page.reload()
    page.wait_for_selector("#questions .asked")
    assert page.locator(f"{tile}.cooking, {tile}.due").count() == 1
    assert page.evaluate("document.documentElement.scrollWidth") <= 390
    page.click("#questions button[data-answer='thrown away']")
    page.wait_for_selector(f"{tile}:not(.cooking):not(.due)")
    assert page.locator("#questions .asked").count() == 0
    assert (
        page.inner_text(
            ".tile:has(h2:text-is('Bone-in chicken')) .timer, .tile:has(h2:has-text('one-in')) .timer"
        )
        == "0"
    )
    page.close()


def test_no_clock_runs_while_pressure_is_let_go(browser, day):
    """A pressure load counts down to the vent and no further; then only the words stand there."""
    page = open_page(browser, day, "phone", f"/day/board?practice=41&{FRIDAY}&now_s=43200")
    key = "vent-test"
    page.evaluate(
        """([key, at, date]) => fetch('/day/tap', {method: 'POST',
        headers: {'Content-Type': 'application/json'},
        body: JSON.stringify({key, what: 'drop', fryer: 'alder', product: 'bone_in', pieces: 16,
        practice: '41', date, at_s: at, now_s: at})})""",
        [key, 34800, NEXT],
    )
    tile = ".tile:has(h2:text-is('Alder, three-head pressure vat'))"
    page.wait_for_selector(f"{tile} .timer")
    assert ":" in page.inner_text(f"{tile} .timer")
    page.select_option("#speed", "120")
    page.wait_for_selector(f"{tile} .vent:not([hidden])")
    assert page.locator(f"{tile} .timer").is_hidden()
    assert "zero on the gauge" in page.inner_text(tile)
    page.close()


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize(
    "path",
    [
        "/day",
        "/day/board?practice=7",
        "/day/line?practice=7",
        "/day/pull",
        "/day/sales",
        "/day/replay",
        "/day/close?practice=7",
    ],
)
def test_every_size_reads_well(browser, day, size, path):
    """No sideways scrolling, targets large enough, nothing for the accessibility checker to find; the longer
    language where room is scarce.
    """
    for language in ("en", "es") if path == "/day" else (("en",) if size == "desk" else ("es",)):
        mark = "&" if "?" in path else "?"
        page = open_page(browser, day, size, f"{path}{mark}{FRIDAY}&lang={language}")
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"]
        small = page.evaluate(
            "[...document.querySelectorAll('.tap button')].filter(e => e.offsetParent &&"
            " e.getBoundingClientRect().height < 44).length"
        )
        assert small == 0
        assert [v["id"] for v in Axe().run(page).response["violations"]] == []
        page.close()


@pytest.mark.parametrize("path", ["/day", "/day/line"])
def test_no_zero_is_slashed(browser, day, path):
    """The middle of a zero is empty, in plain and bold: slashed it reads as 8 from afar. Letters stay in
    the page's own font.
    """
    page = open_page(browser, day, "desk", path)
    page.evaluate("document.fonts.ready")
    inked = page.evaluate(
        """() => ['400', '700'].map((weight) => ['0', 'O'].map((sign) => {
          const pen = document.createElement('canvas').getContext('2d', {willReadFrequently: true});
          pen.font = `${weight} 100px ${getComputedStyle(document.body).fontFamily}`;
          pen.fillText(sign, 10, 110);
          const {width, actualBoundingBoxAscent: high} = pen.measureText(sign);
          const [x, y, step] = [10 + width / 2 - 8, 110 - high / 2 - 8, 16];
          return pen.getImageData(x, y, step, step).data.filter((value, n) => n % 4 === 3 && value).length;
        }))"""
    )
    assert inked == [[0, 0], [0, 0]]
    assert "Atkinson" in page.evaluate("getComputedStyle(document.body).fontFamily")
    page.close()


def test_the_board_works_without_scripts(browser, day):
    """A form alone confirms a drop and comes back to the board."""
    context = browser.new_context(java_script_enabled=False, viewport={"width": 820, "height": 1180})
    page = context.new_page()
    page.goto(f"{day}/day/board?practice=51&{FRIDAY}&now_s=45000")
    page.click("form.advice button.main")
    page.wait_for_url("**/day/board?practice=51*")
    assert page.locator(".tile.cooking, .tile.filter").count() >= 1
    context.close()


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_pull_sheet_prints_with_every_column(browser, day, language):
    """On A4 upright, 210 mm less margins of 1 cm; the last column is the day to use it by. No form prints."""
    page = open_page(browser, day, "desk", f"/day/pull?lang={language}")
    page.set_viewport_size({"width": 718, "height": 1047})
    page.emulate_media(media="print")
    table = page.locator(".scroll table").first.bounding_box()
    assert table["x"] + table["width"] <= 718
    assert not page.locator("form:visible").count()
    page.close()
