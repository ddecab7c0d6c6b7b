"""The desk, start to finish, as a new user: describe, design, window, prove, card, read back with a slip."""

from __future__ import annotations

import pytest

from tests.browser.test_cook_room import SIZES, address, open_page  # noqa: F401

pytestmark = pytest.mark.browser
CHOSEN = {"scale": "°F", "clock": "up", "vent": "runs on", "lid1": "pressure", "lid2": "pressure"}
"""What birch's read-back asks with a list to choose from, answered as its sheet says."""


def finish(page):
    """Wait for the work on the page to end."""
    page.wait_for_selector(".headline, .problem")
    page.wait_for_load_state("networkidle")


def test_the_whole_path(browser, address):  # noqa: F811
    """From a fryer described in words to a machine that holds a wrong digit, and what that would do."""
    page = open_page(browser, address, "desk", "/cook/kitchen")
    text = page.input_value("textarea")
    page.click("summary")
    page.fill("textarea", text.replace("heater_kw = 10", "heater_kw = 1000"))
    page.click("button.main")
    assert "0.5 kW to 200.0 kW" in page.inner_text("main")
    page.fill("textarea", text.replace("heater_kw = 10", "heater_kw = 9.7"))
    page.click("button.main")
    assert "must be proved again" in page.inner_text("main")
    page.fill("[name=reason]", "measured with a meter")
    page.click("button.main")
    page.wait_for_url("**/cook/desk")

    page.click(".design summary")
    page.select_option("form[action$=design] [name=product]", "tenders")
    page.select_option("form[action$=design] [name=fryer]", "cedar")
    page.click("form[action$=design] button")
    page.wait_for_url("**/job/*")
    finish(page)
    told = page.inner_text("main")
    assert "Predicted, not proven" in told
    assert "beyond that" in told
    assert "chosen" in told
    page.click(".save-as button")
    page.wait_for_url("**/cook/desk?saved=*")
    assert "Saved: tenders cedar, version 2" in page.inner_text("main")
    assert "measured with a meter" in page.locator("article", has_text="bone-in alder").inner_text()
    row = page.locator("article", has_text="bone-in birch")
    assert "unknown" in row.inner_text()
    row.locator("button", has_text="Prove it").click()
    page.wait_for_url("**/job/*")
    finish(page)
    assert "piece weight" in page.inner_text("main")

    card = page.request.get(f"{address}/cook/card.pdf?program=bone-in+birch")
    assert card.body().startswith(b"%PDF")

    page.goto(f"{address}/cook/readback?program=bone-in+birch")
    assert "12:30" not in page.content()  # blind
    for i, value in enumerate(("330", "4:00")):
        page.fill(f"[name=v{i}]", value)
    page.goto(f"{address}/cook/readback?program=bone-in+birch")  # closed and opened again
    assert page.input_value("[name=v1]") == "4:00"
    for i, value in enumerate(("330", "4:00", "310", "10:30")):
        page.fill(f"[name=v{i}]", value)
    for name, value in CHOSEN.items():
        page.select_option(f"[name={name}]", value)
    page.fill("[name=own0]", "5,400 ft")
    page.fill("[name=read_by]", "Kim")
    page.fill("[name=checked_by]", "kim")
    page.click("#readback button.main")
    assert "two different people" in page.inner_text("main")
    page.fill("[name=checked_by]", "Ana")
    page.click("#readback button.main")
    told = page.inner_text("main")
    assert "one digit" in told
    assert "As keyed" in told
    assert "Key the time of stage 2 again: 12:30." in told
    assert "Do not cook" in told
    page.goto(address + "/cook/desk")
    assert "differs" in page.locator("article", has_text="bone-in birch").inner_text()
    assert page.complaints == [c for c in page.complaints if "422" in c]
    page.close()


@pytest.mark.parametrize("size", sorted(SIZES))
def test_one_at_a_time_shows_one_box(browser, address, size):  # noqa: F811
    """One box fills the form; Enter goes on, an empty one means nothing held; after the last the form is
    whole and can be sent.
    """
    page = open_page(browser, address, size, "/cook/readback?program=bone-in+birch")
    boxes = page.locator("#readback label:visible")
    whole = boxes.count()
    page.click("[data-one]")
    assert boxes.count() == 1
    answers = {
        **CHOSEN,
        "own0": "5400 FT",
        "v0": "330",
        "v1": "04:00",
        "v2": "310 F",
        "v3": "12.30",
        "read_by": "Kim",
        "checked_by": "Ana",
    }
    for done in range(whole):
        name = page.evaluate("document.activeElement.name")
        if name in CHOSEN:
            page.keyboard.press("Enter")
            assert page.evaluate("document.activeElement.name") == name, "a choice cannot be passed over"
            page.select_option(f"[name={name}]", answers[name])
        else:
            page.keyboard.type(answers[name])
        page.keyboard.press("Enter")
        assert boxes.count() == (1 if done < whole - 1 else whole)
    page.click("#readback button.main")
    assert "The machine holds what the card says." in page.inner_text("main")
    page.close()


def test_a_value_that_asks_is_marked_and_kept(browser, address):  # noqa: F811
    """1200 for a time asks; the box is marked, what was typed stays, nothing is written."""
    page = open_page(browser, address, "phone", "/cook/readback?program=bone-in+birch")
    for name, value in CHOSEN.items():
        page.select_option(f"[name={name}]", value)
    page.fill("[name=own0]", "5,400 ft")
    for name, value in {
        "v0": "330",
        "v1": "4:00",
        "v2": "310",
        "v3": "1230",
        "read_by": "Kim",
        "checked_by": "Ana",
    }.items():
        page.fill(f"[name={name}]", value)
    page.click("#readback button.main")
    assert "type 12:30 or type 20:30" in page.inner_text(".stop")
    assert page.get_attribute("[name=v3]", "aria-invalid") == "true"
    assert page.input_value("[name=v0]") == "330"
    page.close()


def test_work_can_be_cancelled(browser, address):  # noqa: F811
    """Cancel ends the work and says that nothing was saved."""
    page = open_page(browser, address, "phone", "/cook/desk")
    page.click(".design summary")
    page.select_option("form[action$=transfer] [name=program]", "bone-in cedar")
    page.select_option("form[action$=transfer] [name=fryer]", "alder")
    page.click("form[action$=transfer] button")
    page.wait_for_url("**/job/*")
    page.click("text=Cancel")
    assert "Nothing was saved" in page.inner_text("main")
    page.close()


@pytest.mark.parametrize("size", sorted(SIZES))
@pytest.mark.parametrize("language", ["en", "es"])
def test_desk_pages_fit_and_pass_axe(browser, address, size, language):  # noqa: F811
    """Desk, read-back, versions and kitchen file: no overflow, no axe violation, both languages."""
    from axe_playwright_python.sync_playwright import Axe

    for path in (
        "/",
        "/records/gaps",
        "/cook/desk",
        "/cook/settings?fryer=alder",
        "/cook/readback?program=bone-in+alder",
        "/cook/changes?program=bone-in+alder",
        "/cook/kitchen",
    ):
        joint = "&" if "?" in path else "?"
        page = open_page(browser, address, size, f"{path}{joint}lang={language}", bypass_csp=True)
        assert page.evaluate("document.documentElement.scrollWidth") <= SIZES[size][0], path
        found = [(v["id"], v["nodes"][0]["html"][:120]) for v in Axe().run(page).response["violations"]]
        assert found == [], path
        page.close()
