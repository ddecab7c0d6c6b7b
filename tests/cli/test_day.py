"""``frywright day`` as people run it: sales, forecast, pull, plan, replay, board, and a Friday whose fryer
dies.
"""

from __future__ import annotations

import json
from contextlib import closing
from pathlib import Path

import pytest

from frywright.ledger.store import Store
from frywright.rooms.clock import now
from tests.demo import demo_store, keep_demo_sales
from tests.terminal import frywright

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    path = demo_store(tmp_path_factory.mktemp("cli") / "s.db")
    got = frywright("day", "sales", "--store", path)
    assert got.returncode == 0, got.stderr
    assert "not on the menu: Honey sauce" in got.stdout
    with closing(Store.file(Path(path), now)) as kept:
        keep_demo_sales(kept)
    return path


def answer(*words):
    """JSON of a command."""
    got = frywright("day", *words, "--json")
    assert got.returncode == 0, got.stderr + got.stdout
    return json.loads(got.stdout)


def test_forecast_pull_and_replay(store):
    """Each in words and as JSON."""
    assert answer("forecast", "--store", store, "--date", "2026-11-27")["weekday"] == "Friday"
    assert "pull" in frywright("day", "pull", "--store", store, "--stock", "bone_in=20@2030-01-01").stdout
    told = answer("replay", "--store", store, "--days", "50", "--engine", "2", "--off", "birch")
    assert told["base"]["days_count"] == 50
    assert "change" in told


def test_the_rule_of_a_day_is_searched_for_overnight(store):
    """In words and as JSON; what it costs is that of days it was not searched on."""
    told = frywright("day", "tune", "--store", store, "--date", "2026-11-27", "--tries", "2").stdout
    assert "The rule found costs" in told
    assert "Both on 3000 drawn days of which neither knew." in told
    found = answer("tune", "--store", store, "--date", "2026-11-27", "--tries", "2")
    assert found["days_count"] == 3000
    assert 0.0 < found["after_money"] < 1.2 * found["before_money"]
    assert "--tries" in frywright("day", "tune", "--store", store, "--tries", "0").stderr


def test_plan_its_picture_and_a_plan_by_hand(store, tmp_path):
    """The plan keeps its rules; a plan by hand with a filter turn in the rush fails with exit code 1 and says
    why.
    """
    picture, hand = tmp_path / "p.svg", tmp_path / "hand.json"
    assert answer("plan", "--store", store, "--date", "2026-11-27", "--picture", str(picture))["broken"] == []
    assert picture.read_text("utf-8").startswith("<svg")
    hand.write_text(json.dumps([{"fryer": "alder", "filter": "12:00"}]), "utf-8")
    got = frywright("day", "plan", "--store", store, "--check", str(hand))
    assert got.returncode == 1
    assert "rush" in got.stdout


def test_a_friday_by_command(store):
    """Played with birch failing at 17:40; then the board of that moment says so."""
    told = answer(
        "board",
        "--store",
        store,
        "--practice",
        "7",
        "--date",
        "2026-11-27",
        "--play",
        "--down",
        "birch@17:40",
    )
    assert any(t["what"] == "down" and t["at"] == "17:40" for t in told["told"])
    assert told["drops_count"] > 50
    assert sum(c["pieces_n"] for c in told["causes"]) == pytest.approx(told["thrown_n"], abs=1.0)
    assert told["score"]["money"] == pytest.approx(sum(r["money"] for r in told["score"]["rows"]), abs=0.01)
    board = answer("board", "--store", store, "--practice", "7", "--date", "2026-11-27", "--at", "18:00")
    assert {f["key"]: f["state"] for f in board["fryers"]}["birch"] == "down"


def test_errors_say_what_to_do(store, tmp_path):
    """No sales, a day that is none, stock that cannot be read."""
    for words in (
        ("forecast", "--store", demo_store(tmp_path / "empty.db")),
        ("plan", "--store", store, "--date", "soon"),
        ("pull", "--store", store, "--stock", "20"),
        ("board", "--store", store, "--play"),
    ):
        got = frywright("day", *words)
        assert got.returncode == 2
        assert "must be" in got.stderr
