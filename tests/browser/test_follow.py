"""A goal dragged on the page of a search: by keyboard, mouse and finger, at three sizes, in two languages."""

from __future__ import annotations

import time

import pytest

from tests.browser.test_cook_room import SIZES, address, open_page  # noqa: F401

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def path(browser, address):  # noqa: F811
    """A search of a product with one cut, started at the desk."""
    page = open_page(browser, address, "desk", "/cook/desk")
    page.click(".design summary")
    page.select_option("form[action$=design] [name=product]", "tenders")
    page.select_option("form[action$=design] [name=fryer]", "cedar")
    page.click("button[formaction$=follow]")
    page.wait_for_url("**/follow/*")
    found = page.url.removeprefix(address)
    page.close()
    return found


def followed(page, act):
    """Do something to a goal and wait for the proposal that follows; how its curves began and ended."""
    curve, turn = (
        "document.querySelector('#curves path.core').getAttribute('d')",
        "document.body.dataset.turn",
    )
    before, last = page.evaluate(curve), page.evaluate(turn)
    act()
    until = time.monotonic() + 60.0
    while page.evaluate(turn) == last and time.monotonic() < until:
        time.sleep(0.02)
    return before, page.evaluate(curve)


@pytest.mark.parametrize("size", sorted(SIZES))
@pytest.mark.parametrize("language", ["en", "es"])
def test_the_program_follows_the_keyboard(browser, address, path, size, language):  # noqa: F811
    """Each key is answered; what is shown is marked as a proposal, fits, and leaves the goal in sight."""
    from axe_playwright_python.sync_playwright import Axe

    page = open_page(browser, address, size, f"{path}?lang={language}")
    page.wait_for_selector("#curves path.core")
    page.focus("#margin_k")
    before, after = followed(page, lambda: page.keyboard.press("PageUp"))
    assert before != after
    assert page.inner_text("output[for=margin_k]") == page.get_attribute("#margin_k", "aria-valuetext")
    said = {"en": "PROPOSAL, NOT PROVED", "es": "PROPUESTA, SIN PROBAR"}[language]
    assert said in page.inner_text("#proposal").upper()
    assert page.evaluate("document.documentElement.scrollWidth") <= SIZES[size][0]
    slider, curves = page.locator("#margin_k").bounding_box(), page.locator("#shown").bounding_box()
    beside = slider["x"] + slider["width"] <= curves["x"]
    assert beside or slider["y"] >= curves["y"] + curves["height"] - 1, "the curves hide the goal"
    assert page.locator("#curves svg").first.is_visible() and curves["y"] < SIZES[size][1]
    short = "[...document.querySelectorAll('main input,main button')].filter(e => e.offsetParent"
    assert page.evaluate(f"{short} && e.getBoundingClientRect().height < 44).length") == 0
    assert Axe().run(page).response["violations"] == []
    assert page.complaints == []
    page.close()


def test_the_program_follows_a_finger(browser, address, path):  # noqa: F811
    """A tap on the track moves the goal there, and the curves with it."""
    page = open_page(browser, address, "phone", path, has_touch=True, is_mobile=True)
    page.wait_for_selector("#curves path.core")
    page.locator("#most_loss_frac").scroll_into_view_if_needed()
    box = page.locator("#margin_k").bounding_box()
    before, after = followed(
        page, lambda: page.touchscreen.tap(box["x"] + 0.7 * box["width"], box["y"] + box["height"] / 2)
    )
    assert before != after and float(page.input_value("#margin_k")) == pytest.approx(0.7 * 27, abs=2)
    page.close()


def test_a_drag_is_followed_to_its_end(browser, address, path):  # noqa: F811
    """Many places in a row: what is shown in the end answers the last; bands do not cross; the address brings
    it back; the proof is asked for there.
    """
    page = open_page(browser, address, "desk", path)
    page.wait_for_selector("#curves path.core")
    box = page.locator("#colour_low_n").bounding_box()
    page.mouse.move(box["x"] + box["width"] * 4 / 30, box["y"] + box["height"] / 2)
    page.mouse.down()
    for step in range(40):
        page.mouse.move(box["x"] + box["width"] * (4 + 16 * step / 39) / 30, box["y"] + box["height"] / 2)
    page.mouse.up()
    page.wait_for_load_state("networkidle")
    low, high = (float(page.input_value(f"#colour_{end}_n")) for end in ("low", "high"))
    assert 18 <= low < high
    page.wait_for_url(f"**colour_low_n={low:g}&*")
    told = page.inner_text("#shown, #reached")
    page.reload()
    page.wait_for_selector("#curves path.core")
    assert page.inner_text("#shown, #reached") == told
    assert float(page.input_value("#colour_low_n")) == low
    page.goto(address + path)
    page.click("#prove")
    page.wait_for_url("**/job/*")
    page.wait_for_selector(".save-as button")
    page.close()


def test_without_scripts_a_button_shows_it(browser, address, path):  # noqa: F811
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(f"{address}{path}")
    first = page.inner_text("#stages")
    page.focus("#margin_k")
    for _ in range(3):
        page.keyboard.press("PageUp")
    page.click("button.show")
    assert page.inner_text("#stages") != first
    context.close()
