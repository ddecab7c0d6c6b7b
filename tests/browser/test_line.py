"""The board for the line: read from three metres, acts in the tile, two screens, a lost server, taps taken
back.
"""

from __future__ import annotations

import io

import pytest
from axe_playwright_python.sync_playwright import Axe
from PIL import Image

from tests.browser.test_cook_room import address, open_page  # noqa: F401
from tests.browser.test_day import FRIDAY, NEXT, day  # noqa: F401

pytestmark = pytest.mark.browser
TABLET = {"wide": (1280, 800), "upright": (800, 1280)}
PX_MM = 1280 / 217.5
"""CSS pixels of a millimetre of a 10.1-inch screen of 16 to 10 with 1280 x 800 of them: its long side
is 10.1 in x 16 / sqrt(16^2 + 10^2) = 217.5 mm.
"""
DIGITS_MM, TARGET_MM = 25.0, 18.0
BONE_IN = {
    "key": "a",
    "what": "drop",
    "fryer": "alder",
    "product": "bone_in",
    "pieces": 16,
    "at_s": 43190,
    "now_s": 43200,
}
MEASURE = """(count) => {
  const cooking = document.querySelector('[data-tile=cedar]'), fryers = cooking.parentElement;
  fryers.replaceChildren(...Array.from({length: count}, () => cooking.cloneNode(true)));
  fryers.dataset.count = count;
  return [false, true].map((last) => {
    const tiles = [...fryers.children];
    for (const tile of tiles) {
      tile.classList.toggle('last', last);
      tile.querySelector('.left b').textContent = last ? '00' : '48';
      tile.querySelector('.left i').textContent = '48';
    }
    const size = (e) => parseFloat(getComputedStyle(e).fontSize);
    const heights = tiles.map((tile) => {
      const shown = [...tile.querySelectorAll('.left b, .left i')].filter((e) => e.getClientRects().length)
        .sort((a, b) => size(b) - size(a))[0];
      const style = getComputedStyle(shown), pen = document.createElement('canvas').getContext('2d');
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      return pen.measureText('8').actualBoundingBoxAscent;
    });
    const cut = tiles.filter((tile) => {
      const face = tile.querySelector('.face').getBoundingClientRect();
      return [...tile.querySelectorAll('.left b, .left i')].some((e) => {
        const box = e.getBoundingClientRect();
        return box.width && (box.left < face.left - 1 || box.right > face.right + 1);
      }) || tile.getBoundingClientRect().bottom > innerHeight;
    });
    return [heights, cut.length];
  });
}"""


def told(page, **values):
    """A tap sent by the page, as another tablet would."""
    return page.evaluate(
        """(values) => fetch('/day/tap', {method: 'POST', headers: {'Content-Type': 'application/json'},
        body: JSON.stringify(values)}).then((answer) => answer.json())""",
        {"date": NEXT, **values},
    )


def alder_dropped(page, practice):
    """A load in Alder ten seconds ago, and the tile that counts it."""
    told(page, **BONE_IN, practice=practice)
    page.wait_for_selector("[data-tile=alder].cooking")


def opened(browser, day, seed, size=(1280, 800), now=43200, lang="en", context=None):  # noqa: F811
    """The line of a practice day at a time of it."""
    context = context or browser.new_context(viewport={"width": size[0], "height": size[1]})
    page = context.new_page()
    page.goto(f"{day}/day/board?practice={seed}&{FRIDAY}")
    page.evaluate(
        "([key, second]) => localStorage.setItem(key, JSON.stringify({second, at: Date.now(), speed: 1}))",
        [f"frywright.clock.{NEXT}.{seed}", now],
    )
    page.goto(f"{day}/day/line?practice={seed}&{FRIDAY}&now_s={now}&lang={lang}")
    page.wait_for_selector(".tile")
    page.wait_for_timeout(600)
    return page


@pytest.mark.parametrize("way", TABLET)
@pytest.mark.parametrize("count", [1, 2, 4, 5, 8])
def test_digits_are_read_from_three_metres(browser, day, way, count):  # noqa: F811
    """25 mm on a 10.1-inch tablet for one to eight fryers, all in view, nothing cut, to the last minute."""
    page = opened(browser, day, 400 + count, TABLET[way])
    told(
        page,
        key="a",
        what="drop",
        fryer="cedar",
        product="bone_in",
        pieces=8,
        at_s=43200,
        now_s=43200,
        practice=str(400 + count),
    )
    page.wait_for_selector("[data-tile=cedar].cooking")
    for last, (heights, cut) in zip((False, True), page.evaluate(MEASURE, count), strict=True):
        assert len(heights) == count
        assert min(heights) / PX_MM >= DIGITS_MM, (way, count, last, min(heights) / PX_MM)
        assert cut == 0, (way, count, last)
    page.context.close()


WITHIN = """(part) => {
  const inner = document.querySelector(part)?.getBoundingClientRect();
  const face = document.querySelector("[data-tile=alder] .face").getBoundingClientRect();
  return inner?.height > 0 && inner.top >= face.top && inner.bottom <= face.bottom + 1;
}"""
"""Whether a part is shown and stands whole in its tile."""


@pytest.mark.parametrize("size", [(1280, 800), (800, 1280), (390, 844)])
def test_a_load_under_pressure_that_is_due_says_all_of_it(browser, day, size):  # noqa: F811
    """On both boards the caution can be read and stands whole in its tile, with what is to be tapped; one
    word of state, never to lift now.
    """
    seed = 430 + size[0] % 7
    page = opened(browser, day, seed, size)
    told(page, **(BONE_IN | {"pieces": 24, "at_s": 42300}), practice=str(seed))
    page.wait_for_selector("[data-tile=alder].due.venting .vent:visible")
    for part in (
        ".vent",
        ".whole .mark",
    ):  # the tile is drawn anew at each poll: both are measured in one moment
        page.wait_for_function(WITHIN, arg=f"[data-tile=alder] {part}")
    shown = [w for w in page.locator("[data-tile=alder] .word").all() if w.is_visible()]
    assert [w.inner_text() for w in shown] == ["≋ pressure goes"]
    told(page, key="d", what="down", fryer="alder", at_s=43200, now_s=43200, practice=str(seed))
    page.wait_for_selector("[data-tile=alder] .about:has-text('✖ Out of use')")
    page.goto(f"{day}/day/board?practice={seed}&{FRIDAY}&now_s=43210")
    page.wait_for_selector("[data-tile=alder].due .vent:visible")
    page.wait_for_selector("[data-tile=alder].due .problem:visible")
    assert [v["id"] for v in Axe().run(page).response["violations"]] == []
    page.context.close()


FRAME_PX = """(tile) => {
  const due = document.querySelector(`[data-tile=${tile}]`), box = due.getBoundingClientRect();
  const [frame] = due.getAnimations();
  frame.pause();
  frame.currentTime = 999;
  const wide = parseFloat(getComputedStyle(due).boxShadow.split(" ").at(-2));
  frame.currentTime = 0;
  for (const part of due.querySelectorAll("*")) part.style.borderColor = "#000";
  return [wide, box.left + due.clientLeft, box.top + due.clientTop, due.clientWidth, due.clientHeight];
}"""
"""Width of the frame that flashes in a tile that is due, and the box it stands in; the tile stands still
without it, and without the lines between its parts.
"""


@pytest.mark.parametrize("size", [(1440, 900), (1280, 800), (820, 1180), (390, 844)])
@pytest.mark.parametrize(("fryer", "product", "pieces"), [("alder", "bone_in", 24), ("cedar", "tenders", 14)])
def test_the_frame_that_flashes_covers_nothing(browser, day, size, fryer, product, pieces):  # noqa: F811
    """Where it is drawn when a load is due stands no digit and no word of the caution."""
    seed = 470 + size[0] % 9
    page = opened(browser, day, seed, size)
    load = {"key": fryer, "fryer": fryer, "product": product, "pieces": pieces, "at_s": 42300}
    assert told(page, **(BONE_IN | load), practice=str(seed))["ok"]
    page.wait_for_selector(f"[data-tile={fryer}].due", timeout=60_000)
    page.context.set_offline(True)  # from here on nothing is drawn anew
    page.wait_for_selector("#link:not([hidden])", timeout=60_000)
    page.evaluate("document.querySelectorAll('#undo, #link').forEach((e) => e.remove())")
    wide, left, top, width, height = page.evaluate(FRAME_PX, fryer)
    assert wide >= 6, "still seen"
    clip = {"x": left, "y": top, "width": width, "height": height}
    picture = Image.open(io.BytesIO(page.screenshot(clip=clip))).convert("L")
    inner = (1, 1, width - 1, height - 1)  # less a pixel that the border may share
    for band in (
        (*inner[:3], wide),
        (1, height - wide, *inner[2:]),
        (1, 1, wide, inner[3]),
        (width - wide, *inner[1:]),
    ):
        assert picture.crop([round(edge) for edge in band]).getextrema()[1] < 60, band
    page.context.close()


def test_no_target_is_smaller_than_a_gloved_thumb(browser, day):  # noqa: F811
    """18 mm on a 10.1-inch tablet for everything that is pressed on the line, behind a tap too."""
    page = opened(browser, day, 420)
    page.wait_for_selector(".tile.acts")
    for sheet in ("#more-alder", "#shelf-wedges", "#menu"):
        page.click(f"{sheet} > summary")
        page.wait_for_selector(f"{sheet}[open]")
        small = page.evaluate(
            """(least) => [...document.querySelectorAll('main button, main summary, main a, main select')]
              .filter((e) => e.checkVisibility() && e.id !== 'silent')
              .map((e) => [e.textContent.trim().slice(0, 30), e.getBoundingClientRect()])
              .filter(([, box]) => box.height && Math.min(box.height, box.width) < least)
              .map(([text, box]) => `${text} ${box.width} x ${box.height}`)""",
            TARGET_MM * PX_MM - 0.5,
        )
        assert small == [], (sheet, small)
        page.mouse.click(1280 - 16 - 54, 800 - 0.72 * 800 + 54)  # the cross at the corner of what is open
        page.wait_for_selector(f"{sheet}:not([open])")
    page.context.close()


@pytest.mark.parametrize("lang", ["en", "es"])
@pytest.mark.parametrize("size", [(1280, 800), (390, 844), (1920, 1080)])
def test_the_line_is_all_in_view_and_sound(browser, day, size, lang):  # noqa: F811
    """No panning either way, nothing for the accessibility checker, no words of another language."""
    page = opened(browser, day, 421, size, lang=lang)
    assert page.evaluate("document.documentElement.scrollWidth") <= size[0]
    assert page.evaluate("document.documentElement.scrollHeight") <= size[1]
    assert [v["id"] for v in Axe().run(page).response["violations"]] == []
    page.click("#menu > summary")
    assert [v["id"] for v in Axe().run(page).response["violations"]] == []
    page.context.close()


def test_drop_undo_lift_on_two_screens(browser, day):  # noqa: F811
    """One tap drops, the other screen follows; undo takes it back; both press Lifted and one wins quietly."""
    here, there = opened(browser, day, 422), opened(browser, day, 422)
    tile = "[data-tile=cedar]"
    values = {"what": "drop", "fryer": "cedar", "product": "wedges", "pieces": 23, "practice": "422"}
    here.click("#shelf-wedges > summary")
    form = "#shelf-wedges form:has([name=fryer][value=cedar])"
    here.fill(f"{form} [name=pieces]", "23")
    here.click(f"{form} button")
    here.wait_for_selector(f"{tile}.cooking")
    there.wait_for_selector(f"{tile}.cooking")
    assert there.locator("#undo button").count() == 0
    here.click("#undo button")
    here.wait_for_selector(f"{tile}:not(.cooking)")
    there.wait_for_selector(f"{tile}:not(.cooking)")
    told(here, **values, key="early", at_s=42900, now_s=43200)
    for page in (here, there):
        page.wait_for_selector(f"{tile}.nearly:not(.due) .whole button, {tile}.due .whole button")
    here.click(f"{tile} .whole button")
    there.click(f"{tile} .whole button")
    for page in (here, there):
        page.wait_for_selector(f"{tile}:not(.cooking)")
        assert page.locator("#link").is_hidden()
        assert "without a drop" not in page.inner_text("main")
    here.context.close()
    there.context.close()


def test_what_can_be_taken_back_covers_no_fryer(browser, day):  # noqa: F811
    """Two taps in ten seconds: every tile stays in view, with its digits and its button."""
    page = opened(browser, day, 425)
    for fryer, product in (("cedar", "wedges"), ("dogwood", "tenders")):
        form = f"#shelf-{product} form:has([name=fryer][value={fryer}])"
        page.click(f"#shelf-{product} > summary")
        page.fill(f"{form} [name=pieces]", "14")
        page.click(f"{form} button")
        page.wait_for_selector(f"[data-tile={fryer}].runs, [data-tile={fryer}].cooking")
        page.keyboard.press("Escape")
    assert page.locator("#undo button").count() > 0
    for button in page.locator("#undo button").all():
        row, box = button.locator("xpath=..").bounding_box(), button.bounding_box()
        assert box["x"] + box["width"] <= row["x"] + row["width"] + 1, "an undo that cannot be reached"
    covered = page.evaluate(
        "() => { const top = document.querySelector('#undo').getBoundingClientRect().top;"
        " return [...document.querySelectorAll('[data-tile]')]"
        ".filter((tile) => tile.getBoundingClientRect().bottom > top + 1).length; }"
    )
    assert covered == 0
    page.context.close()


def test_an_early_tap_on_the_line_is_asked_and_a_drop_without_server_counts(browser, day):  # noqa: F811
    """Lifted early is asked in words; without the server the tile counts down at once and says so, and the
    line across the top says since when; back again, all of it is kept once.
    """
    page = opened(browser, day, 423)
    alder_dropped(page, "423")
    page.click("#more-alder > summary")
    page.click("#more-alder button:text-is('Lifted early')")
    page.wait_for_selector("#questions .asked")
    assert page.locator("#undo button").count() == 0
    page.click("#questions [data-answer='back in the oil']")
    page.context.set_offline(True)
    page.click("#shelf-tenders > summary")
    form = "#shelf-tenders form:has([name=fryer][value=dogwood])"
    page.fill(f"{form} [name=pieces]", "14")
    page.click(f"{form} button")
    page.wait_for_selector("[data-tile=dogwood].local.runs .left:visible")
    first = page.inner_text("[data-tile=dogwood] .left")
    page.wait_for_function(
        "(first) => document.querySelector('[data-tile=dogwood] .left').innerText < first", arg=first
    )
    assert "not sent yet" in page.inner_text("[data-tile=dogwood]")
    page.wait_for_selector("#link:not([hidden]):has-text('No connection since')", timeout=15_000)
    page.context.set_offline(False)
    page.wait_for_selector("[data-tile=dogwood].cooking:not(.local)")
    page.wait_for_selector("#link", state="hidden")
    page.context.close()


@pytest.mark.parametrize("status", [401, 403])
def test_a_screen_that_is_signed_out_keeps_its_taps_and_says_so(browser, day, status):  # noqa: F811
    """A server started anew, or a session that ended, answers and lets nobody in: that is no lost
    connection, the tap waits, its clock runs, and one link signs in again.
    """
    context = browser.new_context(viewport={"width": 1280, "height": 800}, service_workers="block")
    page, seed = opened(browser, day, 440 + status, context=context), str(440 + status)
    refuse = {"status": status, "json": {"ok": False, "error": "AccessError", "message": "Sign in first."}}
    for path in ("**/day/tap", "**/day/line/part*"):
        context.route(path, lambda route: route.fulfill(**refuse))
    form = "#shelf-wedges form:has([name=fryer][value=cedar])"
    page.click("#shelf-wedges > summary")
    page.fill(f"{form} [name=pieces]", "23")
    page.click(f"{form} button")
    page.wait_for_selector("#link:not([hidden]):has-text('does not let this screen in since')")
    assert "to be sent: 1" in page.inner_text("#link")
    page.wait_for_selector("[data-tile=cedar].local.runs .left:visible")
    again = page.locator("#link a")
    assert again.inner_text() == "Sign in on this screen"
    assert f"practice={seed}" in again.get_attribute("href")
    context.unroute_all()
    page.wait_for_selector("#link", state="hidden")
    page.wait_for_selector("[data-tile=cedar].cooking:not(.local)")
    assert page.evaluate(f"localStorage.getItem('frywright.taps.{NEXT}.{seed}')") == "[]"
    context.close()


def test_out_of_use_and_no_raw_ask_once_more_and_stay_on_the_line(browser, day):  # noqa: F811
    """Two steps, no other page, the load's clock goes on, and both come back the same way."""
    page = opened(browser, day, 424)
    alder_dropped(page, "424")
    page.click("#more-alder > summary")
    assert page.locator("#second-alder button").is_hidden()
    page.click("#second-alder > summary")
    assert "Its clock goes on" in page.inner_text("#second-alder")
    page.click("#second-alder button")
    page.wait_for_selector("[data-tile=alder].cooking:has-text('Out of use')")
    assert "/day/line" in page.url
    assert page.locator("[data-tile=alder] .left").is_visible()
    page.click("#shelf-wedges > summary")
    page.click("#raw-wedges > summary")
    page.click("#raw-wedges button")
    page.wait_for_selector(".chip:has(#shelf-wedges):has-text('no raw left')")
    page.click("#menu > summary")
    page.click("#menu form:has([name=what][value=people]) button:text-is('2')")
    page.wait_for_selector(".line-notes:has-text('2 on the line')")
    page.context.close()
