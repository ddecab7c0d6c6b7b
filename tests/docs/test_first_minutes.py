"""The first ten minutes are as the page tells them: the steps of the Cook room, tried on the demo."""

from __future__ import annotations

import pytest

from tests.browsers import browser
from tests.demo import kitchen_store

STAGES = {
    "s0_set": "335",
    "s0_value": "0:40",
    "s1_set": "310",
    "s1_lid": "pressure",
    "s1_value": "10:20",
    "s2_set": "325",
    "s2_lid": "open",
    "s2_value": "1:00",
}


@pytest.fixture
def view(tmp_path):
    """What the Cook room shows of *bone-in alder*, with what is typed."""
    store = kitchen_store(tmp_path / "demo.db")
    pages = browser(store)

    def asked(**typed):
        return pages.get("/cook/view.json", params={"program": "bone-in alder", **typed}).json()

    yield asked
    store.close()


def shown(view, name):
    """A figure of the room's list."""
    return next(row["value"] for row in view["summary"] if row["name"] == name)


def test_two_minutes_less_move_what_the_page_says(view):
    """Predicted and proven stand apart; a shorter stage 2 moves crust, loss and margin and is not proven."""
    as_kept, shorter = view(), view(**{**STAGES, "s1_value": "8:20"})
    assert view(**STAGES)["headline"] == as_kept["headline"]
    assert as_kept["facts"]["predicted"] and not as_kept["facts"]["proven"]
    assert shorter["headline"]["margin_k"] < as_kept["headline"]["margin_k"]
    for name in ("Clock as keyed", "Moisture lost, of breaded weight"):
        assert shown(shorter, name) != shown(as_kept, name)
    assert [p["crust"] for p in shorter["pieces"]] != [p["crust"] for p in as_kept["pieces"]]
    assert not shorter["facts"]["proven"]


def test_one_head_builds_pressure_later_and_is_below_what_the_fryer_takes(view):
    """Less heat goes into the oil; its lowest is the same, where the heater comes on for the set point."""
    full, one = view(), view(load="1")

    def seconds(text):
        minutes, rest = text.split(":")
        return 60 * int(minutes) + int(rest)

    assert seconds(shown(one, "Full pressure after")) > seconds(shown(full, "Full pressure after"))
    assert float(shown(one, "Heat into the oil").split()[0]) < float(
        shown(full, "Heat into the oil").split()[0]
    )
    assert any("below this fryer's smallest load" in note["text"] for note in one["notes"])
