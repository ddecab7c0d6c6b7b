"""Room Records in a browser: a raw piece on a phone, an auditor's visit, a tamper by hand found and located,
every size and language.
"""

from __future__ import annotations

import sqlite3

import pytest
from axe_playwright_python.sync_playwright import Axe

from frywright.rooms.records import people
from frywright.trial.kitchens import demo_text
from tests.browser.test_cook_room import SIZES, open_page, served

pytestmark = pytest.mark.browser
PASSWORD = "oak leaf river stone"


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("records")


@pytest.fixture(scope="module")
def address(folder):
    def prepare(store):
        people.add_account(store, "Olive Owner", "owner", PASSWORD)
        people.add_account(store, "Lee Lead", "lead", PASSWORD)
        people.add_account(store, "Ada Auditor", "auditor", PASSWORD)

    with served(folder, demo_text(), prepare) as found:
        yield found


def signed_in(browser, address, size, name, path):
    """A page after signing in, on the way that was asked for."""
    page = open_page(browser, address, size, path)
    page.fill("[name=name]", name)
    page.fill("[name=secret]", PASSWORD)
    page.click("form.sign button")
    page.wait_for_load_state("load")
    return page


def test_a_raw_piece_on_a_phone(browser, address):
    """The lead probes 158 °F: the case opens, serving is not offered before a probe meets the limit, it
    closes when all is decided, and the name is on the entries.
    """
    page = signed_in(browser, address, "phone", "Lee Lead", "/records/probing?lang=en")
    page.fill("form[action='/records/probing'] [name=temp]", "158")
    page.fill("form[action='/records/probing'] [name=thermometer]", "T1")
    page.click("form[action='/records/probing'] button.main")
    page.wait_for_url("**/records/case/*")
    assert page.locator("option[value=served]").count() == 0

    def tell(step, **more):
        form = f"form:has(input[name=step][value={step}])"
        page.fill(f"{form} [name=who]", "Lee Lead")
        for name, value in more.items():
            if page.locator(f"{form} select[name={name}]").count():
                page.select_option(f"{form} [name={name}]", value)
            else:
                page.fill(f"{form} [name={name}]", value)
        page.click(f"{form} button")
        page.wait_for_load_state("load")

    tell("recook")
    tell("reprobe", temp="181", thermometer="T2")
    tell("disposition", disposition="served")
    tell("cause", cause="oil")
    tell("closed")
    assert "closed" in page.inner_text(".headline").lower()
    page.close()


def test_an_auditors_visit(browser, address, folder):
    """Signs in, sees the pack with its gaps and its case, opens an entry, cannot write; then somebody edits
    the database by hand, and the room says where.
    """
    page = signed_in(browser, address, "desk", "Ada Auditor", "/records/pack?lang=en")
    assert "below the limit: 1." in page.inner_text(".headline")
    assert "Readings by a thermometer without a valid check: 1." in page.inner_text("main")
    assert page.request.get(f"{address}/records/pack.pdf").body().startswith(b"%PDF")
    page.click("a[href^='/records/case/']")
    assert "Lee Lead" in page.inner_text("main")
    page.goto(f"{address}/records")
    assert "Chain unbroken" in page.inner_text(".headline")
    assert page.locator("a[href='/records/people']").count() == 0
    page.click("tbody a >> nth=0")
    assert "recorded" in page.inner_text("main")
    refused = page.request.post(
        f"{address}/care/oil", form={"vat": "alder", "what": "filter"}, headers={"origin": address}
    )
    assert refused.status == 403
    with sqlite3.connect(folder / "b.db") as raw:
        raw.execute("DROP TRIGGER entry_no_update")
        (number,) = raw.execute("SELECT min(number) FROM entry WHERE kind='probe_reading'").fetchone()
        raw.execute(
            "UPDATE entry SET payload=replace(payload, '\"core_c\":70', '\"core_c\":77') WHERE number=?",
            (number,),
        )
    raw.close()
    page.goto(f"{address}/records")
    page.click("form[action='/records/check'] button")
    assert f"breaks at entry {number}" in page.inner_text("[role=alert]")
    page.close()


@pytest.mark.parametrize("size", SIZES)
def test_every_page_reads_well(browser, address, size):
    """No sideways scrolling in the longer language; nothing for the accessibility checker on a phone."""
    page = signed_in(browser, address, size, "Olive Owner", "/records?lang=es")
    for path in (
        "/records",
        "/records/probing",
        "/records/pack",
        "/records/people",
        "/records/entry/1",
        "/sign-in",
    ):
        page.goto(f"{address}{path}?lang=es")
        assert page.evaluate("document.documentElement.scrollWidth") <= page.viewport_size["width"], path
        if size == "phone":
            assert [v["id"] for v in Axe().run(page).response["violations"]] == [], path
    page.close()
