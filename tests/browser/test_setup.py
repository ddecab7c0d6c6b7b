"""From an empty store to a printed card on a phone, as somebody who read nothing: every tap counted."""

from __future__ import annotations

import threading
import time
from contextlib import contextmanager
from pathlib import Path

import pytest
import uvicorn
from axe_playwright_python.sync_playwright import Axe

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remembered_kitchen
from frywright.web.app import make_app
from tests.browser.test_cook_room import open_page
from tests.browser.test_desk import finish

pytestmark = pytest.mark.browser
MOST_TAPS, LONGEST_S, SECOND_FRYER_S = 40, 600.0, 180.0
"""What the whole way and a second fryer may take; a person also reads and looks at the plate."""
THINK_S = 4.0
"""Time somebody takes over one tap or box, on top of what the program takes (own estimate)."""


@contextmanager
def empty(folder):
    """The application over a store with nothing in it; the store and its address."""
    store = Store.file(folder / "e.db", now)
    server = uvicorn.Server(uvicorn.Config(make_app(store), port=0, log_level="error"))
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    while not server.started:
        time.sleep(0.02)
    yield store, f"http://127.0.0.1:{server.servers[0].sockets[0].getsockname()[1]}"
    server.should_exit = True
    thread.join(timeout=10)


class Thumb:
    """A person on a phone: each tap, each box typed and each choice counts as one."""

    def __init__(self, page, shots: Path | None = None, axe: bool = False):
        self.page, self.taps, self.shots, self.axe, self.begun = page, 0, shots, axe, time.monotonic()
        self.looked: list[str] = []

    def look(self, name):
        """What stands here: nothing runs off the side, targets are large, axe finds nothing."""
        page = self.page
        page.wait_for_load_state("networkidle")
        self.looked.append(name)
        assert page.evaluate("document.documentElement.scrollWidth") <= 390, name
        small = page.evaluate(
            "[...document.querySelectorAll('main button, main select, main a.button, .tick, main input')]"
            ".filter(e => e.offsetParent && e.type != 'checkbox' && e.type != 'radio' && e.type != 'hidden'"
            " && e.getBoundingClientRect().height < 44).map(e => e.outerHTML.slice(0, 80))"
        )
        assert small == [], name
        if self.axe:
            found = [(v["id"], v["nodes"][0]["html"][:120]) for v in Axe().run(page).response["violations"]]
            assert found == [], name
        if self.shots:
            self.shots.mkdir(parents=True, exist_ok=True)
            page.screenshot(path=self.shots / f"{name}.png")

    def tap(self, what):
        self.taps += 1
        self.page.click(what)

    def fill(self, name, text):
        self.taps += 1
        self.page.fill(f"[name={name}]", text)

    def choose(self, name, value):
        self.taps += 1
        self.page.select_option(f"[name={name}]", value)

    def tick(self, name, value):
        self.tap(f"label.tick:has([name={name}][value={value}])")

    def next(self):
        self.tap("button[value=next]")

    @property
    def taken_s(self):
        """Time of the program and of a person together."""
        return time.monotonic() - self.begun + THINK_S * self.taps


def describe_fryer(thumb, us=True):
    """Four screens of one pressure fryer."""
    thumb.look("kind")
    thumb.tap("button[value=pressure]")
    thumb.look("plate")
    thumb.fill("name", "Left vat")
    thumb.tick("fuel", "electric")
    thumb.fill("power", "10")
    thumb.fill("oil_mass", "46" if us else "21")
    thumb.choose("oil", "canola")
    thumb.fill("birds", "3")
    thumb.next()
    thumb.look("lid")
    thumb.fill("working_gauge", "12" if us else "80")
    thumb.fill("relief_gauge", "14.5" if us else "100")
    thumb.fill("vent", "0:20")
    thumb.next()
    thumb.look("control")
    thumb.fill("stages", "3")
    thumb.fill("temp_step", "1")
    thumb.fill("time_step", "1")
    thumb.tick("clock", "left")
    thumb.next()


def describe_bird(thumb, us=True, core=""):
    """What is fried, and its weight."""
    thumb.look("food")
    thumb.tap("button[value=chicken_8]")
    thumb.look("birds")
    thumb.fill("mean", "2.3" if us else "1,05")
    thumb.choose("coating", "dredge")
    thumb.fill("start_temp", "38" if us else "4")
    if core:
        thumb.fill("house_core", core)
    thumb.next()


@pytest.mark.slow
def test_from_nothing_to_a_printed_card(browser, tmp_path, capsys):
    """One fryer, one product, one card: at most 40 taps and ten minutes; then a second fryer."""
    with empty(tmp_path) as (store, address):
        page = open_page(browser, address, "phone", "/", bypass_csp=True)
        thumb = Thumb(page, tmp_path / "shots", axe=True)
        thumb.look("start")
        thumb.tap("a.button.main")
        thumb.look("place")
        thumb.fill("name", "Mill Lane Chicken")
        thumb.choose("jurisdiction", "us_food_code_2022")
        thumb.next()
        thumb.look("altitude")
        thumb.fill("altitude", "1,200")
        thumb.next()
        describe_fryer(thumb)
        describe_bird(thumb)
        thumb.look("check")
        thumb.tap("form[action$=keep] button.main")
        thumb.look("first")
        thumb.tap("form[action$=design] button.main")
        finish(page)
        thumb.look("designed")
        thumb.tap(".save-as button.main")
        page.wait_for_url("**saved=*")
        thumb.look("saved")
        thumb.tap("a:has-text('card') >> nth=0")
        thumb.look("print")
        with page.expect_response(lambda r: "card.pdf" in r.url) as got:
            thumb.tap("form[action$=card] button")
        assert got.value.status == 200
        taps, taken = thumb.taps, thumb.taken_s
        assert remembered_kitchen(store).programs
        card = page.request.get(
            f"{address}/cook/card.pdf?program={remembered_kitchen(store).programs[0].name}"
        )
        assert card.body().startswith(b"%PDF")
        second = Thumb(page)
        page.goto(f"{address}/cook/kitchen")
        second.tap("a:has-text('Add a fryer')")
        describe_fryer(second)
        second.tap("form[action$=keep] button.main")
        page.wait_for_url("**/setup/first**")
        assert len(remembered_kitchen(store).fryers) == 2
        product, fryer = remembered_kitchen(store).products[0].key, remembered_kitchen(store).fryers[1].key
        page.goto(f"{address}/setup/own?fryer={fryer}&product={product}")
        thumb.look("own")
        page.goto(f"{address}/cook/kitchen")
        page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)")
        thumb.look("kitchen")
        with capsys.disabled():
            print(f"\nfirst card: {taps} taps, {taken:.0f} s")
            print(f"second fryer: {second.taps} taps, {second.taken_s:.0f} s")
        assert taps <= MOST_TAPS
        assert taken <= LONGEST_S
        assert second.taken_s <= SECOND_FRYER_S
        page.close()


def test_a_closed_browser_loses_nothing(browser, tmp_path):
    """Half a screen typed, the browser closed: opened again it stands there, and a second tab is warned."""
    with empty(tmp_path) as (_, address):
        page = open_page(browser, address, "phone", "/setup/kitchen/place")
        with page.expect_response(lambda r: r.request.method == "POST"):
            page.fill("[name=name]", "Half a name")
        page.close()
        page = open_page(browser, address, "phone", "/setup/kitchen/place")
        other = open_page(browser, address, "phone", "/setup/kitchen/place")
        assert page.input_value("[name=name]") == "Half a name"
        with page.expect_response(lambda r: r.request.method == "POST"):
            page.fill("[name=name]", "Tab one")
        with other.expect_response(lambda r: r.request.method == "POST"):
            other.fill("[name=name]", "Tab two")
        other.wait_for_selector("[data-kept]:not([hidden])")
        assert "Another page changed this screen" in other.inner_text("[data-kept]")
        page.reload()
        assert page.input_value("[name=name]") == "Tab one"
        page.close()
        other.close()


def test_in_spanish_in_a_metric_kitchen_high_up(browser, tmp_path):
    """Altitude from boiling water, a place without a rule in the catalog, decimal commas, as far as the page
    of the first program; nothing runs off the side, no violation.
    """
    with empty(tmp_path) as (store, address):
        page = open_page(browser, address, "phone", "/?lang=es", bypass_csp=True, locale="es-ES")
        thumb = Thumb(page, axe=True)
        thumb.look("start")
        thumb.tap("a.button.main")
        thumb.fill("name", "Asador del Cerro")
        thumb.choose("jurisdiction", "spain")
        thumb.tick("units", "metric")
        thumb.next()
        thumb.look("altitude")
        thumb.tap("details summary")
        thumb.fill("boiled", "93,2")
        thumb.next()
        describe_fryer(thumb, us=False)
        describe_bird(thumb, us=False, core="74")
        thumb.look("check")
        said = page.inner_text("main")
        for words in ("estimación", "2030 m, por el agua hirviendo", "temperatura interna pedida: 74"):
            assert words in said
        thumb.tap("form[action$=keep] button.main")
        thumb.look("first")
        kitchen = remembered_kitchen(store)
        assert kitchen.site.altitude_m == pytest.approx(2034.6, abs=10)  # CoolProp and ISO 2533, by hand
        assert kitchen.site.language == "es"
        assert kitchen.products[0].unit_mass_kg == pytest.approx(1.05)
        page.close()
