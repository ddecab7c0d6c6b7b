"""Cards and sheets are read at arm's length or from the wall: sizes of text, how full a page is."""

from __future__ import annotations

import io
from itertools import pairwise

import pytest

from frywright.catalog import load
from frywright.ledger.store import Store
from frywright.rooms.care.procedures import card_of, save_card
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from frywright.trial.kitchens import demo_text
from tests import paper
from tests.browsers import browser
from tests.rooms.test_commissioning import png
from tests.web.test_probes import FISH_AND_WEDGES

PAGE_PT = 780.0
"""Less than either sheet is high: letter 792 pt, A4 842 pt."""
CARDS = [load.table(path)["key"] for path in load.files("procedures")]
MM = 72 / 25.4
LEAST_PT, LEAST_BODY_PT, LEAST_WALL_PT = 11.0, 14.0, 16.0
LEAST_EMERGENCY_PT, LEAST_PACK_PT = 14.0, 12.0
DOSE = {"metric": "water_l=12&g_l=20&", "us": "water_gal=8&oz_gal=1&"}


@pytest.fixture(scope="module", params=["us", "metric"])
def kitchen(request, tmp_path_factory):
    """Units, store and client of the demo and of a small metric kitchen."""
    found = Store.file(tmp_path_factory.mktemp("fill") / "f.db", now)
    text = demo_text() if request.param == "us" else FISH_AND_WEDGES
    remember_kitchen(found, text, "k.toml")
    return request.param, found, browser(found)


def read(client, address):
    """Sizes of text of each page of a paper."""
    answer = client.get(address)
    assert answer.headers["content-type"] == "application/pdf", answer.text[:200]
    return paper.sizes(answer.content)


def usual(runs):
    """The size of most runs."""
    found = [size for _, size in runs]
    return max(set(found), key=found.count)


def widest_gap(runs):
    """The widest band without text between the first line and the last [pt]."""
    heights = sorted({y for y, _ in runs})
    return max(b - a for a, b in pairwise(heights))


@pytest.mark.slow
@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("key", CARDS)
def test_a_card_is_one_page_filled_at_reading_size(kitchen, key, language):
    """14 pt or more where it is read at work, no smaller word than 11 pt, no quarter of the page empty."""
    units, _, client = kitchen
    dose = DOSE[units] if key == "boil_out" else ""
    pages = read(client, f"/care/card/{key}.pdf?{dose}lang={language}")
    assert len(pages) == 1
    assert usual(pages[0]) >= LEAST_BODY_PT
    assert min(size for _, size in pages[0]) >= LEAST_PT
    assert widest_gap(pages[0]) < 0.25 * PAGE_PT
    assert max(y for y, _ in pages[0]) > 0.9 * PAGE_PT and min(y for y, _ in pages[0]) < 0.1 * PAGE_PT


@pytest.mark.parametrize("language", ["en", "es"])
def test_wall_cards_are_larger_and_the_emergency_card_begins_with_never(kitchen, language):
    """A page a fryer at 16 pt or more; the emergency card on one page, its caution first."""
    _, _, client = kitchen
    for page in read(client, f"/care/wall.pdf?lang={language}"):
        assert usual(page) >= LEAST_WALL_PT
        assert widest_gap(page) < 0.4 * PAGE_PT
    emergency = read(client, f"/care/emergency.pdf?lang={language}")
    assert len(emergency) == 1
    assert usual(emergency[0]) >= LEAST_EMERGENCY_PT
    said = paper.words(client.get("/care/emergency.pdf?lang=en").content)
    assert said.index("Never water on oil") < said.index("Fire in a fryer")


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_pack_of_a_fryer_is_two_pages_read_at_a_table(kitchen, language):
    """12 pt or more; a step stands on few lines."""
    units, _, client = kitchen
    pages = read(client, f"/care/new/{'alder' if units == 'us' else 'uno'}.pdf?lang={language}")
    assert len(pages) == 2
    assert min(size for page in pages for _, size in page) >= LEAST_PT
    assert all(usual(page) >= LEAST_PACK_PT for page in pages)


def test_a_photo_on_a_card_can_be_seen_and_stands_in_its_frame(kitchen):
    """A photo of 4 to 3 is 44 mm wide (was 20, over the frame); an upright one is no higher than 36 mm."""
    _, store, client = kitchen
    card = card_of(store, "seat_parts")
    lines = "\n".join(f"{text} !! {hazard}" if hazard else text for text, hazard in card.steps)
    values = {
        "key": "seat_parts",
        "language": "en",
        "gear": card.gear,
        "tools": card.tools,
        "who": "Ana Lund",
    }
    for step, size in (("1", (800, 600)), ("3", (300, 800))):
        save_card(store, {**values, "steps": lines, "picture_step": step}, io.BytesIO(png(*size)))
    data = client.get("/care/card/seat_parts.pdf?lang=en").content
    (wide, _, left), (_, high, _) = paper.pictures(data)
    assert wide == pytest.approx(44 * MM, abs=1.0) and high == pytest.approx(36 * MM, abs=1.0)
    frame_ends = (8.5 * 25.4 if kitchen[0] == "us" else 210.0) * MM - 13 * MM
    assert left + wide < frame_ends
    assert paper.pages(data) == 1


def test_short_and_long_cards_take_the_room_they_have(kitchen):
    """Four steps print larger than eight; a kitchen's own of twenty long lines with a photo keeps 14 pt and
    goes over the page rather than smaller.
    """
    _, store, client = kitchen
    short, usual_one = (
        usual(read(client, f"/care/card/{key}.pdf?lang=en")[0]) for key in ("between_loads", "oil_change")
    )
    assert short > usual_one + 2.0
    card = card_of(store, "drain")
    kept = [f"{text} !! {hazard}" for text, hazard in card.steps if hazard]
    lines = [*kept, *("Look again at every shut drain and say so aloud. " * 3 for _ in range(20 - len(kept)))]
    values = {"key": "drain", "language": "en", "gear": card.gear, "tools": card.tools, "who": "Ana Lund"}
    save_card(store, {**values, "steps": "\n".join(lines), "picture_step": "1"}, io.BytesIO(png(400, 300)))
    pages = read(client, "/care/card/drain.pdf?lang=en")
    assert len(pages) > 1
    assert min(usual(page) for page in pages) >= LEAST_BODY_PT
