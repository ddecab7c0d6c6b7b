"""Every paper is read as text, in both languages: its caution, what is missing, the number of every page."""

from __future__ import annotations

import re
import time

import pytest
from fastapi.testclient import TestClient

from frywright.catalog import load
from frywright.design.controller import render
from frywright.ledger.store import Store
from frywright.model.errors import Phrase
from frywright.model.units import suffix_of
from frywright.rooms.clock import now
from frywright.rooms.cook.cards import CAUTIONS, FOOT
from frywright.rooms.cook.probe_report import FOOT as LOG_FOOT
from frywright.rooms.cook.probing_view import CAUTIONS as PROBING
from frywright.rooms.cook.settings import CAUTION
from frywright.rooms.cook.slots import tell_slot
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text
from frywright.voice.figures import mark_of, written
from frywright.voice.tongue import translator
from frywright.web.rights import RIGHTS
from tests import paper
from tests.browsers import browser
from tests.demo import keep_demo_sales, kitchen_store
from tests.rooms.test_settings import OWN

pytestmark = pytest.mark.slow
DAY = "date=2026-11-27&practice=62&now_s=43200"
WINS = "The maker's manual, local codes and licensed technicians win."
NEVER = (
    "Never water or ice near hot oil.",
    "Never move, filter or top up hot oil alone or in a rush.",
    "Never serve by colour: probe the coldest piece.",
)
SHIFT = (
    "Never move, filter or top up hot oil in a rush or alone; a lid opens only at zero on the gauge and a"
    " silent vent."
)
HOT_OIL = (
    "Hot oil burns: face shield, long gloves and apron on, heat off before draining, dry pan, one oil move"
    " at a time."
)
PLAN_FOOT = (
    "Written before the day began. The live board decides anew at every tap and sale; where they differ,"
    " follow the board."
)
FREE = "Fish, shellfish and gluten proteins stay in oil: claim nothing free of what the vat carries."
HANDED = (
    "Measured and signed as written here; nothing in it says that this fryer may be used against the maker's"
    " manual, local codes or a licensed technician's word."
)
BURNING = "Never water on oil. Never carry a burning vat. When in doubt: out, and call."
RECORDED = (
    "What is recorded, with its gaps; nothing in it says that any food was free of risk. Oil limit here"
)
DRAWN = (
    "Written from general practice. The maker's manual for this fryer, local codes and licensed technicians"
    " win."
)
LINE = "______________"
PAPERS = {
    "/cook/card.pdf": ("?program=pollo+uno", (CAUTIONS["drop"], CAUTIONS["lid"], CAUTIONS["lift"], FOOT), ()),
    "/cook/cards.pdf": ("", (CAUTIONS["drop"], CAUTIONS["lid"], FOOT), ()),
    "/cook/settings.pdf": ("", (CAUTION, "must read", "set by"), ()),
    "/cook/probing/sheet.pdf": ("?program=pollo+uno", PROBING, ()),
    "/care/oil-map.pdf": ("", (FREE, WINS), ()),
    "/care/new/{fryer}.pdf": (
        "uno",
        (HANDED, WINS),
        ("No plate is on record: no program for this fryer.", "unknown", "Nothing."),
    ),
    "/care/emergency.pdf": ("", (BURNING, "Local first-aid and fire guidance wins."), (LINE,)),
    "/care/card/{key}.pdf": ("closing", (DRAWN, "done by", "checked by a second person"), ()),
    "/care/wall.pdf": ("", NEVER, ("–",)),
    "/records/pack.pdf": ("", (RECORDED, "received by"), ("Gaps", "None on record.", "no record")),
}
"""Each paper of a kitchen that has recorded nothing: its address, its cautions, its gaps."""
READ_APART = {
    "/day/labels.pdf": "needs a tray on the shelf",
    "/day/handover.pdf": "needs a day",
    "/day/plan.pdf": "needs a day",
    "/cook/probes/{number}/report.pdf": "needs a log",
}


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    return kitchen_store(tmp_path_factory.mktemp("papers") / "p.db", OWN)


def client_of(store) -> TestClient:
    return browser(store, page=True)


@pytest.fixture(scope="module")
def client(store):
    return client_of(store)


def test_every_paper_is_read_here():
    """A new paper joins the list with its caution."""
    papers = {route.removeprefix("GET ") for route in RIGHTS if route.startswith("GET ") and "pdf" in route}
    assert papers == set(PAPERS) | set(READ_APART)


def numbered(data: bytes, said: str) -> bool:
    """Whether every page bears its number and how many there are."""
    count = paper.pages(data)
    return all(re.search(rf"(?<!\d){n} / {count}(?!\d)", said) for n in range(1, count + 1))


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("path", sorted(PAPERS))
def test_a_paper_warns_says_what_is_missing_and_counts_its_pages(client, path, language):
    """Of a Spanish kitchen in metric units without emergency facts, logs, plates or sales."""
    rest, cautions, gaps = PAPERS[path]
    tr = translator(language)
    address = re.sub(r"{\w+}", rest, path) if "{" in path else path + rest
    answer = client.get(f"{address}{'&' if '?' in address else '?'}lang={language}")
    assert answer.headers["content-type"] == "application/pdf", answer.text[:300]
    said = paper.words(answer.content)
    assert numbered(answer.content, said), (paper.pages(answer.content), said[-200:])
    for text in (*cautions, *gaps):
        assert tr(text) in said, tr(text)
    assert not re.search(r"\d (°F|lb\b)", said)
    assert paper.faces_of_digits(answer.content) == {"Arimo"}, "the other face's zero reads as 8 from afar"
    if language == "es":
        assert not any(text in said for text in cautions)


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("key", [load.table(path)["key"] for path in load.files("procedures")])
def test_every_procedure_card_warns_at_its_step(client, key, language):
    """Each hazard stands behind its own step."""
    tr = translator(language)
    dose = "water_l=12&g_l=20&" if key == "boil_out" else ""
    answer = client.get(f"/care/card/{key}.pdf?{dose}lang={language}")
    said = paper.words(answer.content)
    table = next(t for t in map(load.table, load.files("procedures")) if t["key"] == key)
    at = 0
    for step in table["step"]:
        figures = {name: float(value) for name, value in step.items() if suffix_of(name)}
        text = Phrase(step["text"], figures).say(tr, "metric")
        at = said.index(written(text, mark_of(language, "metric")), at)
        if step.get("hazard"):
            at = said.index(f"⚠ {tr(step['hazard'])}", at)
    assert any(step.get("hazard") for step in table["step"])
    assert numbered(answer.content, said)


def test_the_figure_on_wall_and_handover_is_the_cards(tmp_path):
    """Whatever slot a program is in, every paper shows the figure of its card."""
    store = kitchen_store(tmp_path / "f.db")
    kitchen = remembered_kitchen(store)
    program = kitchen.program("bone-in alder")
    tell_slot(store, kitchen, program, 6)
    figure = render(program, kitchen.fryer("alder").controller, 6).figure
    assert figure != render(program, kitchen.fryer("alder").controller, 1).figure
    client = client_of(store)
    for address in ("/cook/card.pdf?program=bone-in+alder", "/care/wall.pdf", "/care/new/alder.pdf"):
        said = paper.words(client.get(address).content)
        assert re.search(rf"(?<!\d){figure}(?!\d)", said), address
    wall = client.get("/care/wall.pdf").content
    assert paper.pages(wall) == len(kitchen.fryers) == 4 and numbered(wall, paper.words(wall))


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_shifts_papers_and_the_report_of_a_log(tmp_path, language):
    """A tray's label says when it goes; a report says what it rests on, and every question it guessed."""
    store = kitchen_store(tmp_path / "l.db")
    client, tr = client_of(store), translator(language)
    client.cookies.set("lang", language)
    keep_demo_sales(store)
    tap = {"date": "2026-11-27", "practice": "62", "fryer": "alder", "product": "bone_in", "pieces": "16"}
    for what, at in (("drop", "42000"), ("lift", "42750")):
        client.post("/day/tap", json={**tap, "key": what, "what": what, "at_s": at})
    labels = client.get(f"/day/labels.pdf?{DAY}").content
    said = paper.words(labels)
    assert tr("throw away at") in said and tr("lifted") in said and numbered(labels, said)
    shift = client.get(f"/day/handover.pdf?{DAY}").content
    said = paper.words(shift)
    assert numbered(shift, said)
    assert tr("Due in the kitchen") in said
    assert paper.pages(shift) == 1 and min(size for _, size in paper.sizes(shift)[0]) >= 11
    for text in (
        SHIFT,
        WINS,
        "taken over by",
        "Nothing.",
        "Practice day with invented guests. Never evidence.",
    ):
        assert tr(text) in said, text
    plan = client.get(f"/day/plan.pdf?{DAY}").content
    said = paper.words(plan)
    assert numbered(plan, said)
    for text in (HOT_OIL, PLAN_FOOT, "Last drops", "filter turn"):
        assert tr(text) in said, text
    address = str(client.post("/cook/probes/demo").url)
    deadline = time.monotonic() + 300
    while "http-equiv" in client.get(address).text and time.monotonic() < deadline:
        time.sleep(0.5)
    report = client.get(f"{address}/report.pdf?program=bone-in+alder").content
    for data in (labels, shift, plan, report):
        assert paper.faces_of_digits(data) == {"Arimo"}
    said = paper.words(report)
    assert tr(LOG_FOOT) in said and numbered(report, said)
    assert tr("Verdicts") in said and "SHA-256" in said


@pytest.mark.parametrize("language", ["en", "es"])
def test_what_is_due_for_several_programs_is_one_line_of_the_hand_over(tmp_path, language):
    """No page is filled with one sentence; every program is still named."""
    store, tr = Store.file(tmp_path / "h.db", now), translator(language)
    remember_kitchen(store, demo_text(), "demo.toml")
    keep_demo_sales(store)
    kitchen = remembered_kitchen(store)
    said = paper.words(client_of(store).get(f"/day/handover.pdf?lang={language}").content)
    first, *others = sorted({p.name for p in kitchen.own_programs})
    text = tr("{program} is not proved yet. Prove it over the loads your kitchen meets.")
    same = tr("The same for: {others}.").format(others=", ".join(others))
    assert f"{text.format(program=first)} {same}" in said, said[-900:]
    assert said.count(text.format(program="").strip()[:20]) == 1
