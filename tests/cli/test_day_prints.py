"""``frywright day`` and the cooking commands in this process, the rule of the day not tuned: what is printed,
kept and refused.
"""

from __future__ import annotations

import json
import re
from contextlib import closing
from pathlib import Path

import pytest
from typer.testing import CliRunner

from frywright.cli.day import _rows
from frywright.cli.main import app
from frywright.ledger.facts.day import PracticeTap
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.rooms.clock import now
from frywright.rooms.day import day
from tests.demo import demo_store, keep_demo_sales

FRIDAY = ("--date", "2026-11-27")


@pytest.fixture(scope="module")
def place(tmp_path_factory):
    """The demo with its invented sales."""
    made = demo_store(tmp_path_factory.mktemp("day") / "s.db")
    got = CliRunner().invoke(app, ["day", "sales", "--store", made])
    assert got.exit_code == 0, got.output
    assert "not on the menu: Honey sauce, cup (" in got.output
    assert "silence taken as missing: " in got.output
    assert "not used 0. Days in all: 56, 20" in got.output
    with closing(Store.file(Path(made), now)) as kept:
        keep_demo_sales(kept)
    return made


@pytest.fixture(autouse=True)
def untuned(tmp_path, monkeypatch):
    """Days are planned by the rule as it is."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(day, "_tuned_bench", lambda bench, kitchen: bench)


def test_what_an_item_takes_is_said_once(said, tmp_path):
    """It is asked for until somebody says so; a file that is none waits, one that is not there is named."""
    assert re.match(r"Honey sauce, cup: \d+ sold", said("day", "items"))
    assert (
        said("day", "items", "Honey sauce, cup", "-", "--who", "Ana Vale")
        == "Every item of the sales is on the menu."
    )
    assert "a file that can be read" in said("day", "sales", "none.csv", code=2)
    (tmp_path / "till").mkdir()
    assert said("day", "watch", "till", "--once") == ""
    (tmp_path / "till/x.csv").write_text("nonsense", "utf-8")
    waits = said("day", "watch", "till", "--once")
    assert waits.startswith("x.csv waits: no table was found")
    assert waits.rstrip().endswith(".") and ".." not in waits
    assert said("day", "watch", "till", "--once", "--language", "es") == (
        "x.csv espera: no se encontró ninguna tabla en el archivo"
        " Exporte las ventas por artículo con fecha, hora y cantidad en CSV."
    )


def test_a_forecast_and_a_pull_sheet_in_words(said):
    """Halves add up to the day within their band; stock in date is taken off; nonsense names its form."""
    line = said("day", "forecast", *FRIDAY)
    assert line.startswith("Friday 2026-11-27 Bone-in chicken, 8-piece: ")
    total, low, high = (
        float(x.strip("():")) for x in line.split("8-piece: ")[1].replace("to", "").split()[:3]
    )
    assert low < total < high
    halves = line.split(") ")[1].split(" Tenders")[0].split()
    assert halves[0] == "09:40" and halves[-2] == "21:30"
    assert sum(float(n) for n in halves[1::2]) == pytest.approx(total, abs=13)
    sheet = said("day", "pull", "--stock", "bone_in=20@2090-01-01")
    assert re.search(
        r"heads, 20 in date, 0 out of date: on \d{4}-\d\d-\d\d pull cases of \d+: \d+; short", sheet
    )
    assert "cases of 14: " in sheet
    assert "bone_in=24@2026-11-28" in said("day", "pull", "--stock", "20", code=2)
    assert "bone_in, tenders, wedges" in said("day", "pull", "--stock", "ghost=4@2090-01-01", code=2)
    assert "stock is -4 (bone_in)" in said("day", "pull", "--stock", "bone_in=-4@2090-01-01", code=2)
    assert "a day such as" in said("day", "forecast", "--date", "soon", code=2)


def test_a_plan_in_words_its_picture_and_one_by_hand(said, tmp_path):
    """Each load with its evidence; a plan by hand that breaks a rule says which and ends with 1."""
    line = said("day", "plan", *FRIDAY, "--picture", "p.svg")
    row = r"(\d\d):(\d\d) Alder, three-head pressure vat .*? (\d) heads? \((\d+) pieces\)"
    row += r" lift (\d\d):(\d\d) not proven yet"
    loads = [[int(x) for x in found] for found in re.findall(row, line)]
    assert len(loads) > 5
    for hour, minute, heads, pieces, to_hour, to_minute in loads:
        assert (pieces, 60 * to_hour + to_minute) == (8 * heads, 60 * hour + minute + 12)  # its card: 12:45
    assert "filter turn (hot oil: gear on, heat as the manual says)" in line
    assert "Last drops: Bone-in chicken, 8-piece 21:" in line
    assert (tmp_path / "p.svg").read_text("utf-8").startswith("<svg")


@pytest.mark.parametrize("text", ["nothing", "{}", "[1]", None])
def test_a_file_that_is_no_plan_is_refused(tmp_path, text):
    """It must be a list of rows, and be there."""
    path = tmp_path / "h.json"
    if text is not None:
        path.write_text(text, "utf-8")
    with pytest.raises(InputError, match=r"list of rows|can be read") as refused:
        _rows(path)
    assert refused.value.field == "--check"


@pytest.mark.slow
def test_a_plan_by_hand_is_priced(said, tmp_path, monkeypatch):
    """Beside the engine's own; with --json it is no success where a rule is broken."""
    from frywright.rooms.day import what_if

    price = what_if.PriceView(**dict.fromkeys(what_if.PriceView.__dataclass_fields__, 1.25))

    def checked(bench, plan):
        broken = ("a turn in the rush",) if plan.filters else ()
        return what_if.CheckView(broken=broken, price=price, engine=price)

    monkeypatch.setattr(what_if, "check_view", checked)
    (tmp_path / "h.json").write_text(json.dumps([{"fryer": "alder", "filter": "12:00"}]), "utf-8")
    line = said("day", "plan", *FRIDAY, "--check", "h.json", code=1)
    assert line == "a turn in the rush By hand: 1.25 a day. The engine: 1.25."
    assert said("day", "plan", *FRIDAY, "--check", "h.json", "--json", code=1)["ok"] is False
    (tmp_path / "h.json").write_text("[]", "utf-8")
    assert said("day", "plan", *FRIDAY, "--check", "h.json").startswith("No rule is broken. By hand: 1.25")


@pytest.mark.slow
def test_drawn_days_and_a_change_in_words(said):
    """Shares with their intervals; without two fryers less is served and the change has its price."""
    assert "% served (±" in said("day", "replay", *FRIDAY, "--days", "10")
    line = said("day", "replay", *FRIDAY, "--days", "10", "--off", "cedar", "--off", "dogwood")
    served = [float(part.split()[-1]) for part in line.split(" % served")[:2]]
    assert served[1] < served[0]
    assert "with the change" in line
    assert float(line.split("The change costs ")[1].split()[0]) > 0
    for typed, says in ((("--hold", "x"), "product=time"), (("--hold", "bone_in=60"), "60 min")):
        assert says in said("day", "replay", *FRIDAY, *typed, code=2)


def test_a_practice_board_is_told_and_answers(place, said):
    """A drop is in the oil with its lift; without a fryer there is another plan; no real day is played."""
    board = ("day", "board", "--practice", "7", *FRIDAY)
    drop = ("--tell", "drop", "--fryer", "alder", "--product", "bone_in", "--pieces", "16")
    line = said(*board, "--at", "12:00", *drop)
    assert line.startswith("2026-11-27 12:00 ")
    assert "Alder, three-head pressure vat: 2 heads (16 pieces), lift 12:12" in line
    assert "on the shelf" in line
    with closing(Store.named(place, now)) as store:
        (tap,) = store.facts(PracticeTap)
    assert (tap.fact.what, tap.fact.at_s, tap.fact.pieces_count, tap.fact.practice_count) == (
        "drop",
        43200.0,
        16,
        7,
    )
    down = said(*board, "--at", "21:00", "--tell", "down", "--fryer", "birch", "--json")
    assert (down["practice"], down["clock"], down["new_plan"]["what"]) == (7, "21:00", "birch")
    assert "add --practice 7" in said("day", "board", "--play", code=2)


def test_a_practice_day_that_was_played_is_told(said, monkeypatch):
    """Each deed with its time, then loads, filter turns and what was thrown away, by cause."""
    from frywright.rooms.day import round as rounds

    asked = []

    def played(board, down, tr):
        asked.append((board.practice, down))
        return [rounds.Deed(at="12:00", what="drop", text="Drop two heads into Alder")]

    monkeypatch.setattr(rounds, "play_day", played)
    day_played = ("day", "board", "--practice", "8", *FRIDAY, "--play", "--down", "birch@17:40")
    line = said(*day_played)
    assert line.startswith(
        "12:00 Drop two heads into Alder Loads: 0. Filter turns: 0. Pieces thrown away: 0."
    )
    told = said(*day_played, "--json")
    assert (told["ok"], told["told"][0]["at"], told["drops_count"]) == (True, "12:00", 0)
    assert asked == [(8, "birch@17:40")] * 2


def test_power_by_the_plan_and_by_the_hours(said):
    """Heated before its first drop, off by its last; energy adds up; a day that is none is refused."""
    line = said("care", "power")
    assert "Alder, three-head pressure vat: start 09:17, at heat 09:30, first drop 09:40, off 22:00;" in line
    rows = [float(part.split()[-1]) for part in line.split(" kWh")[:4]]
    assert float(line.split(" kWh, ")[0].split()[-1]) == pytest.approx(sum(rows), abs=0.1)
    assert "bone-in alder: 6.90 lb, efficiency" in line
    assert "a day such as" in said("care", "power", "--date", "soon", code=2)
