"""The Cook room in Chromium: three sizes, two languages, an edit within a blink, no scripts, axe."""

from __future__ import annotations

import re
import threading
import time
from contextlib import contextmanager

import pytest
import uvicorn

from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app
from tests.demo import kitchen_store
from tests.web.test_probes import FISH_AND_WEDGES

pytestmark = pytest.mark.browser
SIZES = {"phone": (390, 844), "tablet": (820, 1180), "desk": (1440, 900)}


@contextmanager
def served(folder, text, prepare=lambda store: None):
    """The application over a new store with a kitchen file's text; its address."""
    store = kitchen_store(folder / "b.db", text)
    prepare(store)
    with serving(store) as found:
        yield found


@contextmanager
def serving(store):
    """The application over a store; its address."""
    server = uvicorn.Server(uvicorn.Config(make_app(store), port=0, log_level="error"))
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    while not server.started:
        time.sleep(0.02)
    yield f"http://127.0.0.1:{server.servers[0].sockets[0].getsockname()[1]}"
    server.should_exit = True
    thread.join(timeout=10)


@pytest.fixture(scope="module")
def address(tmp_path_factory):
    with served(tmp_path_factory.mktemp("browser"), demo_text()) as found:
        yield found


def open_page(browser, address, size="desk", path="/cook?program=bone-in+alder", **options):
    width, height = SIZES[size]
    page = browser.new_page(viewport={"width": width, "height": height}, **options)
    page.complaints = []
    page.on("console", lambda m: page.complaints.append(m.text) if m.type in ("error", "warning") else None)
    page.on("pageerror", lambda e: page.complaints.append(str(e)))
    page.goto(address + path)
    page.evaluate("document.fonts.ready.then(() => 0)")  # another face is wider, and lines break elsewhere
    return page


@pytest.mark.parametrize("size", sorted(SIZES))
@pytest.mark.parametrize("language", ["en", "es"])
def test_three_sizes_two_languages(browser, address, size, language):
    """Nothing runs off the side, nothing complains, the curves are drawn, targets are big enough."""
    page = open_page(browser, address, size, f"/cook?program=bone-in+alder&lang={language}")
    page.wait_for_selector("#curves svg path.core")
    assert page.evaluate("document.documentElement.scrollWidth") <= SIZES[size][0]
    small = page.evaluate(
        "[...document.querySelectorAll('input,select,button:not([hidden]),nav a')].filter(e => e.offsetParent"
        " && e.getBoundingClientRect().height < 44).length"
    )
    assert small == 0
    assert page.evaluate("document.documentElement.lang") == language
    assert page.evaluate("getComputedStyle(document.body).fontFamily").startswith('"Atkinson Hyperlegible"')
    assert page.complaints == []
    page.close()


@pytest.mark.parametrize("language", ["en", "es"])
def test_axe_finds_nothing(browser, address, language):
    """No accessibility violation by axe-core on Cook and Records."""
    from axe_playwright_python.sync_playwright import Axe

    for path in ("/cook?program=bone-in+alder", "/records"):
        joint = "&" if "?" in path else "?"
        page = open_page(browser, address, "desk", f"{path}{joint}lang={language}", bypass_csp=True)
        page.wait_for_load_state("networkidle")
        results = Axe().run(page)
        found = [(v["id"], v["nodes"][0]["html"][:120]) for v in results.response["violations"]]
        assert found == []
        page.close()


def edit(page, name, value):
    before = int(page.evaluate("document.body.dataset.turn || '0'"))
    page.fill(f"[name={name}]", value)
    for _ in range(200):
        if int(page.evaluate("document.body.dataset.turn || '0'")) > before:
            return int(page.evaluate("document.body.dataset.lastEditMs"))
        page.wait_for_timeout(10)
    raise AssertionError("the page did not answer the edit")


def test_an_edit_redraws_and_survives_reload(browser, address):
    """Each key changes the curves and the verdict; the address keeps what was typed. Timed in
    benchmarks/page.py.
    """
    page = open_page(browser, address)
    page.wait_for_selector("#curves svg path.core")
    before = page.inner_text("#headline")
    for minutes in (9, 8, 7, 6, 5):
        edit(page, "s1_value", f"{minutes}:00")
    after = page.inner_text("#headline")
    assert after != before
    page.reload()
    assert page.input_value("[name=s1_value]") == "5:00"
    assert page.inner_text("#headline") == after
    assert page.complaints == []
    page.close()


BAD = {
    "load": ("6", "boils over"),
    "start": ("28", "30 °F to 104 °F"),
    "oil": ("999", "140 °F to 446 °F"),
    "altitude": ("40000", "-1640 ft to 16404 ft"),
    "s0_set": ("9999", "140 °F to 446 °F"),
    "s1_set": ("", "a temperature"),
    "s1_value": ("10:75", "seconds up to 59"),
    "s2_value": ("10.20", "type 10:20 or type 10.2 min"),
}
"""What is typed into a box of the demo, and words of its refusal."""
IN_VIEW = (
    "(e) => { const b = e.getBoundingClientRect(); return b.height > 0 && b.top >= 0 && b.bottom <="
    " innerHeight; }"
)


@pytest.mark.parametrize("size", sorted(SIZES))
def test_a_mistake_leaves_no_answer_that_could_be_read_as_its_own(browser, address, size):
    """At every size each bad value hides the verdict, greys the curves, says why on screen wherever the page
    stands, and marks its box.
    """
    page = open_page(browser, address, size)
    page.wait_for_selector("#curves svg path.core")
    for name, (text, says) in BAD.items():
        box = page.locator(f"[name={name}]")
        good = box.input_value()
        box.fill(text)
        page.wait_for_selector("#problem:not([hidden])")
        assert says in page.inner_text("#problem"), name
        assert not page.is_visible("#headline"), name
        assert box.get_attribute("aria-invalid") == "true", name
        assert says in page.inner_text(f"label:has([name={name}]) .wrong"), name
        for scroll in (0, 700, 100_000):
            page.evaluate(f"scrollTo(0, {scroll})")
            assert page.locator("#problem").evaluate(IN_VIEW), (name, scroll)
        assert page.evaluate("document.getElementById('answer').inert")
        assert float(page.locator("#curves").evaluate("(e) => getComputedStyle(e).opacity")) < 0.5
        assert "Not for what is typed now" in page.inner_text(".stale-note")
        box.fill(good)
        page.wait_for_selector("#headline", state="visible")
        assert page.locator("[aria-invalid]").count() == 0, name
        assert page.locator("#problem").is_hidden()
        assert page.locator("#curves").evaluate("(e) => getComputedStyle(e).opacity") == "1"
    page.close()


def test_a_mistake_without_scripts_and_a_page_that_opens_with_one(browser, address):
    """The server says it on top and at the box, without an old answer; with scripts the mended page gets its
    answer whole.
    """
    bad = "/cook?program=bone-in+alder&load=6"
    page = open_page(browser, address, "phone", bad, java_script_enabled=False)
    assert page.locator("#problem").evaluate(IN_VIEW)
    assert page.locator("#headline, #pieces").count() == 0
    assert page.get_attribute("[name=load]", "aria-invalid") == "true"
    page.close()
    page = open_page(browser, address, "phone", bad)
    page.fill("[name=load]", "3")
    page.wait_for_selector("#curves svg path.core")
    assert page.is_visible("#headline")
    page.close()


def test_a_server_that_is_away_leaves_no_answer_either(browser, address):
    """When nothing comes back, the last verdict goes too."""
    page = open_page(browser, address)
    page.wait_for_selector("#curves svg path.core")
    page.route("**/view.json*", lambda route: route.abort())
    page.fill("[name=s1_value]", "5:00")
    page.wait_for_selector("#problem:not([hidden])")
    assert "does not answer" in page.inner_text("#problem")
    assert not page.is_visible("#headline")
    page.close()


def test_stages_can_be_added_and_removed_up_to_what_the_fryer_holds(browser, address):
    """Alder holds four stages: one can be added to three, then no more; removing renumbers."""
    page = open_page(browser, address)
    page.wait_for_selector("#curves svg path.core")
    page.click("button.add")
    assert page.locator(".stage").count() == 4
    assert not page.is_visible("button.add")
    page.locator("button.remove").first.click()
    assert page.locator(".stage").count() == 3
    assert page.locator("[name=s0_set]").count() == 1
    assert page.input_value("[name=s0_set]") == "310"
    page.close()


def test_an_edit_stands_before_the_version_saved(browser, address):
    """Set points and stages are drawn; an edit puts the saved version behind it, and saving is the loudest
    button; undone, both go.
    """
    page = open_page(browser, address)
    page.wait_for_selector("#curves svg path.core")
    assert page.locator("#curves .set-point").count() == 1
    assert page.locator("#curves .stage-block").count() == 4
    assert "310 °F · under pressure" in page.locator("#curves .stage-block.pressure").text_content()
    assert "11:20 left" in page.locator("#curves .stage-block.pressure").text_content()
    assert page.locator("#curves .ghost").count() == 0
    assert page.locator("#pieces tbody tr").count() == 4
    saved = page.inner_text("#headline .amount")
    edit(page, "s1_value", "8:20")
    assert page.locator("#curves .ghost").count() == 5
    assert page.inner_text("#saved-text") == f"Dotted behind it: version 3 as saved, {saved}."
    assert page.inner_text("#headline .amount") != saved
    assert "main" in page.get_attribute("#save", "class")
    assert page.locator("#pieces tbody tr").count() == 4
    page.reload()
    page.wait_for_selector("#curves svg path.ghost")
    edit(page, "s1_value", "10:20")
    assert page.locator("#curves .ghost").count() == 0
    assert page.is_hidden("#saved-text")
    assert "main" not in page.get_attribute("#save", "class")
    page.close()


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_phone_shows_the_curves_first_and_the_rooms_on_one_line(browser, address, language):
    """The picture stands above the form, and the rooms do not wrap."""
    page = open_page(browser, address, "phone", f"/cook?program=bone-in+alder&lang={language}")
    page.wait_for_selector("#curves svg path.core")
    tops = [page.locator(name).bounding_box()["y"] for name in ("#headline", "#curves", "#ask", "#pieces")]
    assert tops == sorted(tops)
    rooms = page.locator(".top nav:not(.tongues) a")
    boxes = [rooms.nth(i).bounding_box() for i in range(rooms.count())]
    assert len({box["y"] for box in boxes}) == 1
    assert all(box["x"] >= 0 and box["x"] + box["width"] <= 390 for box in boxes)
    page.close()


def test_readout_follows_the_finger(browser, address):
    """Moving over the curves changes the readout line."""
    page = open_page(browser, address)
    page.wait_for_selector("#curves svg path.core")
    box = page.locator("#curves svg").first.bounding_box()
    page.mouse.move(box["x"] + 0.3 * box["width"], box["y"] + 60)
    early = page.inner_text(".readout")
    page.mouse.move(box["x"] + 0.8 * box["width"], box["y"] + 60)
    assert page.inner_text(".readout") != early
    page.close()


def test_it_works_without_scripts(browser, address):
    """With scripts off the form asks the server, and the picture, verdict and tables are there."""
    page = open_page(browser, address, java_script_enabled=False)
    page.fill("[name=load]", "2")
    page.click("button.show")
    assert "load=2" in page.url
    assert "2 ×" in page.inner_text("#load-text")
    assert page.locator("#curves img").count() == 1
    page.close()


def test_keeping_a_simulation_by_hand(browser, address):
    """Keep leads to Records, where the new entry stands first and the chain holds."""
    page = open_page(browser, address)
    page.wait_for_selector("#curves svg path.core")
    page.click("text=Keep this simulation")
    page.wait_for_url("**/records*")
    assert "Chain unbroken" in page.inner_text("main")
    assert "simulation" in page.inner_text("tr.new")
    page.close()


def test_what_a_script_writes_has_the_mark_of_the_language(browser, tmp_path):
    """A set point typed with a comma in a metric kitchen in Spanish: the answer comes with points and
    stands on the page with commas, in the pieces and under the curves; in English it keeps its points.
    """
    text = FISH_AND_WEDGES.replace('units = "metric"', 'units = "metric"\nlanguage = "es"\naltitude_m = 2000')
    measure = re.compile(r"\d[.,]\d+ (?:°C|kPa|%|mm|kg)")
    with served(tmp_path, text) as address:
        for language, mark in (("es", ","), ("en", ".")):
            page = open_page(browser, address, "phone", f"/cook?program=bird+uno&lang={language}")
            page.wait_for_selector("#curves svg path.core")
            with page.expect_response(lambda answer: "view.json" in answer.url) as told:
                page.fill("[name=s0_set]", "176,5")
            assert measure.search(told.value.text())[0].count(".") == 1
            page.wait_for_function("document.body.dataset.lastEditMs")
            shown = measure.findall(page.inner_text("main"))
            assert len(shown) > 10 and all(mark in figure for figure in shown), shown
            assert page.complaints == []
            page.close()
