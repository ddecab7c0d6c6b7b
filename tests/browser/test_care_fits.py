"""Care on a phone: what is due stands on the first screen, the rest is folded and nothing of it is lost."""

from __future__ import annotations

import datetime as dt

import pytest
from axe_playwright_python.sync_playwright import Axe

from frywright.care.gates import steps_for
from frywright.rooms.care.machines import stop_use
from frywright.rooms.care.upkeep import tasks_for, tick, today_of
from frywright.rooms.care.vat import tell_oil
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.kitchens import demo_text
from tests.browser.test_cook_room import SIZES, open_page, served
from tests.rooms.test_commissioning import begun
from tests.web.test_probes import FISH_AND_WEDGES

pytestmark = pytest.mark.browser
SCREEN = SIZES["phone"][1]
HEIGHT = "document.documentElement.scrollHeight"
LOW = "[...document.querySelectorAll('.todo li, .todo > details > summary')]"
LOWEST = f"Math.max(...{LOW}.filter(e => e.checkVisibility()).map(e => e.getBoundingClientRect().bottom))"


def all_done(store):
    """Every task ticked off today, every vat read today, every step of the first fryer signed."""
    kitchen = remembered_kitchen(store)
    for fryer in kitchen.fryers:
        tell_oil(store, kitchen, {"vat": fryer.key, "what": "reading", "amount": "6", "who": "Kim"})
        for task in tasks_for(kitchen, fryer):
            values = {"fryer": fryer.key, "task": task.key, "who": "Ana Lund", "role": "licensed"}
            figures = {"thermometer": "Ref 2", "set_temp": "170 C", "before_temp": "169 C"}
            tick(store, kitchen, {**values, **figures, "note": "report 4471"})
    if kitchen.fryers[0].key == "alder":
        begun(store, kitchen, *[step.key for step in steps_for(kitchen.fryers[0])])


def much_due(store):
    """A fryer out of use, another's oil over its limit, tasks overdue, the rest never recorded."""
    kitchen = remembered_kitchen(store)
    first, second = kitchen.fryers[0], kitchen.fryers[-1]
    stop_use(store, kitchen, first.key, "oil_leak", "Kim", "")
    tell_oil(store, kitchen, {"vat": second.key, "what": "reading", "amount": "27", "who": "Kim"})
    for task in [t for t in tasks_for(kitchen, second) if t.days_count and t.who == "crew"][:3]:
        date = today_of(kitchen) - dt.timedelta(days=task.days_count + 30)
        values = {"fryer": second.key, "task": task.key, "who": "Kim", "role": "crew", "date": str(date)}
        tick(store, kitchen, values)


@pytest.mark.parametrize("text", [demo_text(), FISH_AND_WEDGES], ids=["demo", "metric"])
def test_with_nothing_due_care_is_two_screens_at_most(browser, tmp_path, text):
    """Says that nothing is due; every vat's form is there, folded, and opens by keyboard."""
    with served(tmp_path, text, all_done) as address:
        for path in ("/care", "/care/new"):
            page = open_page(browser, address, "phone", f"{path}?lang=en")
            assert "due-first" in page.content()
            if path == "/care":
                assert "Nothing is due" in page.inner_text(".todo")
                vats = page.locator("details.tile").count()
                assert page.locator("form.oil").count() == vats == len(page.query_selector_all(".tile"))
                assert page.locator("details.tile[open]").count() == 0
            if path == "/care" or text == demo_text():
                assert page.evaluate(HEIGHT) <= 2 * SCREEN, path
            page.close()
        page = open_page(browser, address, "phone", "/care?lang=en")
        page.focus("details.tile >> nth=0 >> summary >> nth=0")
        page.keyboard.press("Enter")
        page.wait_for_selector("details.tile[open] form.oil:visible")
        for _ in range(12):
            page.keyboard.press("Tab")
            if page.evaluate("document.activeElement.name") == "amount":
                break
        assert page.evaluate("document.activeElement.name") == "amount"
        assert [v["id"] for v in Axe().run(page).response["violations"]] == []
        page.close()


@pytest.mark.parametrize("language", ["en", "es"])
def test_what_is_due_stands_on_the_first_screen_of_a_phone(browser, tmp_path, language):
    """The worst three with their buttons and the count of the rest; a button leads to the vat, unfolded."""
    with served(tmp_path, demo_text(), much_due) as address:
        page = open_page(browser, address, "phone", f"/care?lang={language}")
        rows = page.locator(".todo > ul > li")
        assert rows.count() == 3
        assert "Alder" in rows.nth(0).inner_text()  # what must not be used comes before oil
        assert "Dogwood" in rows.nth(1).inner_text()
        assert page.evaluate(LOWEST) <= SCREEN
        assert page.evaluate("document.documentElement.scrollWidth") <= SIZES["phone"][0]
        hidden = page.locator(".todo details li")
        assert hidden.count() >= 4
        assert not hidden.first.is_visible()
        page.click(".todo details summary")
        assert hidden.last.is_visible()
        rows.nth(1).locator("a").click()
        page.wait_for_selector("#vat-dogwood[open] [name=amount]:visible")
        assert "27.0 %" in page.inner_text("#vat-dogwood")
        page.fill("#vat-dogwood [name=amount]", "999")
        page.click("#vat-dogwood button[value=reading]")
        page.wait_for_selector("#vat-dogwood[open] .problem:visible")
        assert page.evaluate("document.activeElement.id") == "refused"
        box = page.locator("#vat-dogwood .problem").bounding_box()
        assert 0 <= box["y"] < SCREEN, "the refusal is in view, in its tile"
        assert page.input_value("#vat-dogwood [name=amount]") == "999"
        page.close()


def test_the_next_step_of_a_new_fryer_stands_on_the_first_screen(browser, tmp_path):
    """Before the plate it is the plate; later the first step that can be signed, open; done and locked ones
    are folded and counted.
    """

    def prepare(store):
        begun(store, remembered_kitchen(store), "plate", "survey", "place")

    with served(tmp_path, demo_text(), prepare) as address:
        for fryer, words in (("birch", "Nameplate"), ("alder", "Connected and measured under load")):
            page = open_page(browser, address, "phone", f"/care/new?fryer={fryer}&lang=en")
            assert words in page.inner_text(".todo")
            assert page.evaluate(LOWEST) <= SCREEN
            page.click(".todo a")
            page.wait_for_function("scrollY > 100")
            page.close()
        page = open_page(browser, address, "phone", "/care/new?fryer=alder&lang=en")
        form = "form:has(input[name=step][value=connection])"
        assert page.locator(form).is_visible()
        assert page.locator("details:not([open]) li.done").count() == 3
        page.fill(f"{form} [name=who]", "A")
        page.click(f"{form} button")
        page.wait_for_selector("#refused:visible")
        assert 0 <= page.locator("#refused").bounding_box()["y"] < SCREEN
        assert page.evaluate(HEIGHT) < 5 * SCREEN
        page.close()
