"""What stands of a program and of a kitchen file: the newest proof, a short program named, the words of an
emergency, a stage made longer or hotter.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from typer.testing import CliRunner

from frywright.catalog.kitchen import parse_kitchen
from frywright.cli.main import app
from frywright.design.window import _changed, _Walk
from frywright.ledger.facts.cook import ProgramProved
from frywright.model.business_day import business_time, usual_trade
from frywright.model.care import Emergency
from frywright.rooms.clock import now
from frywright.rooms.cook.life import keep_card, lives_shown
from frywright.rooms.cook.live import Use, column_of
from frywright.rooms.cook.live_view import _long
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.kitchens import demo_text
from tests.model.test_kitchen_files import GOOD


def test_a_program_whose_newest_proof_failed_is_known_as_failed(store):
    """One that holds since ends it; a proof that holds of another version says nothing."""

    def proved(holds, lowest_k, version=1):
        proof = ProgramProved(
            name="tenders cedar",
            version=version,
            kitchen_number=1,
            holds=holds,
            outcome="meets" if holds else "fails",
            samples_count=16,
            lowest_k=lowest_k,
        )
        write(store, proof)
        return [(f.name, f.version, f.margin_k) for f in remembered_kitchen(store).failed]

    assert proved(True, 2.0) == []
    assert proved(False, -1.5) == [("tenders cedar", 1, -1.5)]
    assert proved(True, 2.0, version=2) == [("tenders cedar", 1, -1.5)]
    assert proved(True, 0.5) == []


def test_a_kitchen_file_with_a_short_program_names_it(tmp_path):
    """It reads well, and says how far the program is short; one without says that there is no problem."""
    path = tmp_path / "own.toml"
    text = demo_text()
    path.write_text(text, "utf-8")
    good = CliRunner().invoke(app, ["kitchen", "check", str(path)])
    assert (good.exit_code, "No problems." in good.output) == (0, True)
    head, mark, rest = text.partition('name = "tenders cedar"')
    raw = head + mark + rest.replace("5:30", "1:00", 1)
    assert raw != text
    path.write_text(raw, "utf-8")
    short = CliRunner().invoke(app, ["kitchen", "check", str(path)])
    lines = short.output.splitlines()
    assert short.exit_code == 0
    assert lines[0].endswith("The file reads well.")
    assert "tenders cedar" in " ".join(lines[1:])


def test_a_kitchens_own_words_of_an_emergency_are_kept():
    """Without them the card has lines to write on."""
    assert parse_kitchen(GOOD, "own.toml").emergency == Emergency()
    own = parse_kitchen(GOOD + '\n[emergency]\nextinguisher = "left of the sink"\n', "own.toml").emergency
    assert own == Emergency(extinguisher="left of the sink")


@pytest.mark.parametrize(
    ("what", "sign", "steps", "seconds", "degrees"),
    [("time", 1, 3, 15.0, 0.0), ("time", -1, 2, -10.0, 0.0), ("set point", 1, 2, 0.0, 10.0)],
)
def test_a_value_of_a_window_is_moved_its_own_way(kitchen, what, sign, steps, seconds, degrees):
    """More steps are longer or hotter, fewer shorter or cooler; nothing else of the program moves."""
    program = kitchen.program("bone-in alder")
    moved = _changed(program, _Walk(1, what, sign, 5.0, 10), steps)
    old = program.stages[1]
    assert moved.stages[1] == replace(old, duration_s=old.duration_s + seconds, set_c=old.set_c + degrees)
    assert (moved.stages[0], moved.stages[2:]) == (program.stages[0], program.stages[2:])


@pytest.mark.parametrize(
    ("off_s", "says"),
    [(75.0, "1:15"), (48 * 3600.0, "2880:00"), (48 * 3600.0 + 10.0, "2 days"), (9.4 * 86400.0, "9 days")],
)
def test_a_clock_off_by_more_than_two_days_is_told_in_days(off_s, says):
    """Up to there by its minutes; whose clock it is stands before it."""
    assert _long("{source} is off by {off_s}", "logger", off_s, "metric", str) == f"logger is off by {says}"


def test_a_column_of_a_kept_curve_is_one_column():
    """Its place and channel by name; what would part a table is left out of it."""
    cut = Use(channel='K"1,a;b', cut="breast_half", mass_kg=0.25)
    assert column_of(cut, {"breast_half": "Breast half"}) == "Breast half K 1 a b (°C)"
    assert column_of(replace(cut, cut=""), {}) == "Oil K 1 a b (°C)"


def test_a_step_of_a_life_that_is_not_done_has_no_day(store):
    """Nothing is dated before it happened; what was done has its day by the kitchen's own clock."""
    kitchen = remembered_kitchen(store)
    assert {step.when for step in lives_shown(store, kitchen)["tenders cedar"].steps} == {""}
    keep_card(store, kitchen.program("tenders cedar"), 1)
    today = business_time(usual_trade(kitchen), now())[0].isoformat()
    days = {step.key: step.when for step in lives_shown(store, kitchen)["tenders cedar"].steps}
    assert {key for key, day in days.items() if day == today} == {"card"}
    assert set(days.values()) == {"", today}
