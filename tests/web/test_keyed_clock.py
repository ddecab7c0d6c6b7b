"""One total everywhere: what the clock is keyed with, on page, card, read-back, versions and in JSON, and
when the lift comes.
"""

from __future__ import annotations

import re

import pytest
from fastapi.testclient import TestClient

from frywright.catalog.kitchen import parse_kitchen
from frywright.rooms.cook.cards import card_data
from frywright.rooms.cook.compare import value_names
from frywright.rooms.cook.told import cook_told
from frywright.rooms.cook.view import cook_view
from frywright.trial.ask import CookRequest, ask
from frywright.trial.kitchens import demo_text
from frywright.voice.tongue import translator
from tests.browsers import browser
from tests.demo import kitchen_store

ALDER = {
    "left": "Clock 12:00. It runs on during the vent. Lift when it has ended and the gauge reads zero.",
    "elapsed": "Clock 12:00. It runs on during the vent. Lift when it has ended and the gauge reads zero.",
    "waits": (
        "Clock 12:00, and the vent on top, about 0:20: the clock stands still meanwhile. Lift when it ends."
    ),
}
BIRCH = "Clock 12:30, then the vent, about 0:18. Lift when the gauge reads zero."


def text_of(clock: str, untimed: bool = False) -> str:
    text = re.sub(r'clock = "\w+"', f'clock = "{clock}"', demo_text())
    return re.sub(r"(?m)^vent.*$", "", text) if untimed else text


def client_of(tmp_path, text: str) -> TestClient:
    store = kitchen_store(tmp_path / "w.db", text)
    return browser(store)


@pytest.mark.parametrize("clock", ["left", "elapsed", "waits"])
def test_card_view_and_json_say_the_same_total(clock):
    """Every clock style: 12:00 keyed, 12:00 on the card, 12:00 in the view; the card repeats the view's
    sentence.
    """
    kitchen = parse_kitchen(text_of(clock))
    for name, sentence in (
        ("bone-in alder", ALDER[clock]),
        ("bone-in birch", BIRCH),
        ("bone-in cedar", "Clock 15:30. Lift when it ends."),
    ):
        program = kitchen.program(name)
        answer = ask(kitchen, CookRequest(program=program))
        view, told = cook_view(answer, "us"), cook_told(answer)
        card = card_data(kitchen, program, 1, "en", str)
        assert view.clock.sentence == card.lift == sentence
        assert card.total == view.clock.total == sentence[6:11]
        assert told.clock_s == sum(program.durations_s())
        assert told.earliest_lift_s <= told.lift_s
        assert told.lift_s >= told.clock_s
    spanish = cook_view(answer, "us", translator("es")).clock.sentence
    assert spanish == "Reloj 15:30. Suba cuando termine."


def test_a_vent_nobody_timed_is_told_where_the_lift_is_told(tmp_path):
    """Page and JSON carry the finding and its words; the card says that the vent is not timed; no seconds are
    made up.
    """
    kitchen = parse_kitchen(text_of("waits", untimed=True))
    for name in ("bone-in alder", "bone-in birch"):
        answer = ask(kitchen, CookRequest(program=kitchen.program(name)))
        view = cook_view(answer, "us")
        assert "not timed yet" in view.clock.sentence
        assert "Time the vent of a full load with a watch" in view.vent.sentence
        assert {"vent_unknown"} <= {n.kind for n in cook_told(answer).notes}
        assert not cook_told(answer).vent_told
        assert next(row.value for row in view.summary if row.name == "Vent") == "–"
    client = client_of(tmp_path, text_of("waits", untimed=True))
    page = client.get("/cook", params={"program": "bone-in alder"}).text
    assert "Never open a lid before the gauge reads zero" in page
    assert 'id="vent-text" class="caution" hidden' not in page
    assert (
        'id="vent-text" class="caution" hidden'
        in client.get("/cook", params={"program": "bone-in cedar"}).text
    )


def test_the_pages_say_the_same_total(tmp_path, kitchen):
    """Cook, the desk's list, versions and a read-back that matches."""
    client = client_of(tmp_path, demo_text())
    assert ALDER["left"] in client.get("/cook", params={"program": "bone-in alder"}).text
    assert "clock 12:00 ·" in client.get("/cook/desk").text
    changes = client.get("/cook/changes", params={"program": "bone-in alder"}).text
    assert ALDER["left"] in changes
    texts = [v.text for v in value_names(kitchen, kitchen.program("bone-in alder"), 1)]
    form = {"program": "bone-in alder", "slot": "1", "read_by": "Kim", "checked_by": "Ana"}
    matched = client.post(
        "/cook/readback", data={**form, **{f"v{i}": text for i, text in enumerate(texts)}}
    ).text
    assert ALDER["left"] in matched
    texts[0] = "12:40"
    slipped = client.post(
        "/cook/readback", data={**form, **{f"v{i}": text for i, text in enumerate(texts)}}
    ).text
    assert ALDER["left"].replace("12:00", "12:40") in slipped
