"""What the desk, a read-back and a calibration say of their figures, without a search or a fit."""

from __future__ import annotations

import math
import tomllib
from dataclasses import replace

import numpy as np
import pytest
from typer.testing import CliRunner

from frywright.calibrate.fit import Fit, Residual
from frywright.calibrate.parameters import Fitted
from frywright.calibrate.placement import Placement
from frywright.cli import cook as cook_cli
from frywright.cli import desk as desk_cli
from frywright.cli.shop import Shop
from frywright.client.sources import Heard
from frywright.design.offer import Design, Late
from frywright.design.proof import all_loads
from frywright.design.search import Candidate, Goals
from frywright.design.transfer import Taste, Transfer
from frywright.ledger.facts.probing import CalibrationKept
from frywright.model.calibration import Calibration
from frywright.model.errors import InputError
from frywright.model.findings import Note
from frywright.physics.plan import make_plan
from frywright.rooms.cook import desk, lift_calibration, probes
from frywright.rooms.cook.compare import read_back, readback_view, value_names
from frywright.rooms.cook.intake import Sample
from frywright.rooms.cook.probe_report import _fit
from frywright.rooms.cook.probe_view import fit_view
from frywright.rooms.cook.probes import Calibrated
from frywright.trial.at_lift import LiftFit, LiftPoint
from frywright.trial.proof import prove_program
from tests.calibrations import calibration
from tests.demo import demo_store, kitchen_store


@pytest.fixture(scope="module")
def program(kitchen):
    return kitchen.program("tenders cedar")


@pytest.fixture(scope="module")
def proof(kitchen, program):
    return prove_program(kitchen, program, samples=16)


def test_a_proof_covers_all_loads_where_nobody_says_less(kitchen, program, proof):
    """From the smallest load of the fryer to the largest; a spread that was asked for is kept to."""
    spread = all_loads(make_plan(kitchen, program))
    assert proof.proof.spread == spread
    narrow = replace(spread, load_frac=(1.0, 1.0))
    assert prove_program(kitchen, program, samples=16, spread=narrow).proof.spread == narrow


def candidate(program, **changes):
    values = {
        "program": program,
        "margin_k": 5.0,
        "loads_k": (5.0, 7.0, 9.0),
        "time_s": 330.0,
        "vent_s": 0.0,
        "loss_frac": 0.123,
        "light_loss_frac": 0.2,
        "colour_n": 41.0,
        "yield_frac": 0.85,
        "core_c": 80.0,
        "crust_m": 0.001,
        "cost_n": 1.0,
    }
    return Candidate(**{**values, **changes})


@pytest.fixture
def view(program, proof):
    """A design of two rows, the first chosen."""
    best, other = candidate(program), candidate(program, time_s=400.0, loss_frac=0.1)
    found = Design(
        recommended=best,
        front=(best, other),
        loads_n=(7.0, 28.0, 56.0),
        unit="piece",
        proof=proof.proof,
        late=Late(late_s=60.0, loss_frac=0.25, light_loss_frac=0.3, core_c=88.0),
        tried_count=321,
        reason=Note(kind="why", text="Takes {time_s}.", values={"time_s": 330.0}),
    )
    return desk.design_view(found, proof, "us")


def test_a_design_is_told_in_the_units_of_its_reader(view, program):
    """Five kelvin are nine degrees Fahrenheit; the chosen row has its mark; loads have their margins."""
    best = view.recommended
    assert (best.time, best.margin, best.loads_k) == ("5:30", "+9.0 °F", (5.0, 7.0, 9.0))
    assert best.stages == ("345 °F · open · 5:30",)
    assert [row.chosen for row in view.front] == [True, False]
    assert [row.time for row in view.front] == ["5:30", "6:40"]
    assert [(x.load, x.margin) for x in view.loads] == [
        ("7 × piece", "+9.0 °F"),
        ("28 × piece", "+12.6 °F"),
        ("56 × piece", "+16.2 °F"),
    ]
    assert (view.tried_count, view.reason) == (321, "Takes 5:30.")
    assert "Lifted 1:00 late, a full load loses 25" in view.late
    assert "190" in view.late
    assert view.proof.program == program.name


def test_a_row_taken_is_proved_and_kept_as_long_as_it_holds(kitchen, program, proof):
    """Its view has its own late lift and proof and no trade-off; the real row holds over every sample."""
    lifted = Late(late_s=60.0, loss_frac=0.2, light_loss_frac=0.3, core_c=88.0)
    told = desk.row_view((candidate(program), proof, lifted), "metric")
    assert (told.front, told.loads, told.recommended.margin) == ((), (), "+5.0 °C")
    taken, answer, late = desk.take_row(kitchen, candidate(program), Goals(longest_s=900.0, margin_k=0.5))
    assert answer.proof.holds
    assert taken.time_s >= 330.0
    assert taken.program.name == answer.program.name
    assert late.late_s == 60.0


def test_what_could_not_be_carried_over_is_said_beside_what_was(program, proof):
    """There and here, each in its unit."""
    found = Transfer(
        program=program,
        margin_k=2.0,
        source=Taste(core_c=80.0, crust_m=0.001, loss_frac=0.2, colour_n=40.0),
        target=Taste(core_c=90.0, crust_m=0.002, loss_frac=0.3, colour_n=55.0),
        unmatched={"core": 2.0, "crust": 1.5, "loss": 3.0, "colour": 4.0},
        proof=proof.proof,
    )
    lines = desk.transfer_view(found, proof, "metric").unmatched
    assert lines[0].startswith("core: 90.0 °C there, 80.0 °C here")
    assert lines[1].startswith("crust: 2.00 mm there, 1.00 mm here")
    assert lines[2].startswith("moisture lost: 30")
    assert lines[3] == "colour: 55 there, 40 here"


# ---------------------------------------------------------------- at the terminal


@pytest.fixture
def shop(tmp_path):
    return Shop(store=demo_store(tmp_path / "s.db"))


def test_a_design_and_a_proof_are_printed(shop, view, proof, capsys):
    """The chosen row has a star; each cut its share and worst margin; what moves it by its bar."""
    desk_cli.print_design(shop, view)
    text = capsys.readouterr().out
    assert "tenders cedar, version 1" in text
    assert "*  1    5:30  12.3 %  colour 41.0" in text
    assert "   2    6:40  10.0 %  colour 41.0" in text
    assert "7 × piece: +9.0 °F in the worst case, straight after a full load" in text
    assert "Takes 5:30." in text
    from frywright.trial.proof import proof_view

    told = proof_view(proof, "us")
    cook_cli.print_proof(shop, told)
    text = capsys.readouterr().out
    assert told.sentence in " ".join(text.split())
    assert f"Tender: 100.0 % meet, at least {100 * told.cuts[0].bound_frac:.1f} %, worst margin" in text
    assert "Lowest corner: " in text
    value = max(told.sensitivity.values(), key=abs)
    assert f"{value:+.2f} {'█' * round(20 * abs(value))}" in text


def test_two_values_of_a_pair_are_read_and_nothing_else(shop):
    """A range has both its ends."""
    assert list(desk_cli._pair("70C-80C", "--core")) == ["70C", "80C"]
    for text in ("70C", "70C-80C-90C"):
        with pytest.raises(InputError) as refused:
            desk_cli._pair(text, "--core")
        assert refused.value.field == "--core"


def test_how_a_line_and_a_server_stand_is_said_when_it_changes(shop, capsys):
    """Once for the same; what waits, what is lost and what was left out by its reason."""

    class Waiting:
        trouble, waiting_count, lost_count = "the line is cut", 7, 3

    heard = Heard(link="connected")
    heard.left_out["retained"] = 2
    text = cook_cli._say_link(shop, heard, Waiting(), "")
    assert text == (
        "Line: connected. Server: the line is cut Readings that wait: 7. Readings lost: 3. 2 × retained"
    )
    assert capsys.readouterr().err.strip() == text
    assert cook_cli._say_link(shop, heard, Waiting(), text) == text
    assert capsys.readouterr().err == ""
    cook_cli._print_samples(shop, "vat", [Sample(channel="core", temp_c=100.0, at_s=5.0)])
    assert capsys.readouterr().out == "vat/core  212 °F\n"
    shop.as_json = True
    cook_cli._print_samples(shop, "vat", [Sample(channel="core", temp_c=100.0, at_s=5.0)])
    assert '"temp_c": 100.0' in capsys.readouterr().out
    cook_cli._say_link(shop, heard, None, "")
    assert capsys.readouterr().err == ""


def test_what_broke_a_listener_is_known_afterwards():
    """A listener that fails stops the rest and keeps its error."""
    import threading

    stop = threading.Event()

    def fails():
        raise InputError("topic", "x", "a topic")

    worker = cook_cli._listening(fails, stop)
    worker.join(timeout=10)
    assert stop.is_set()
    assert isinstance(worker.error, InputError)


# ---------------------------------------------------------------- read back


def test_a_minute_less_on_the_machine_is_named_and_judged(kitchen, program, shop, capsys):
    """The value, its stage, what the card says; the food as keyed has less to spare; figures differ."""
    values = [v.text for v in value_names(kitchen, program, 1)]
    same = readback_view(read_back(kitchen, program, 1, values), "us")
    assert (same.matches, same.mismatches, same.margin_k, same.clock_s) == (True, (), None, None)
    cook_cli.print_readback(shop, same)
    assert f"check figure {same.figure_card}" in capsys.readouterr().out
    values[0] = "4:30"
    wrong = readback_view(read_back(kitchen, program, 1, values), "us")
    (row,) = wrong.mismatches
    assert (wrong.matches, row.card, row.machine) == (False, "5:30", "4:30")
    assert wrong.clock_s == 270.0
    assert wrong.figure_card == same.figure_card != wrong.figure_read
    assert wrong.as_keyed and wrong.orders
    cook_cli.print_readback(shop, wrong)
    text = capsys.readouterr().out
    assert text.startswith(wrong.orders[0])
    assert "card 5:30, machine 4:30" in text
    assert f"Check figure of the machine {wrong.figure_read}, of the card {same.figure_card}." in text
    with pytest.raises(InputError, match="read every value"):
        read_back(kitchen, program, 1, values[:1])


def test_a_machine_is_read_back_at_the_terminal(shop, program):
    """Asked one by one where nothing is given; a difference ends with 1."""
    from frywright.cli.main import app

    typed = ["cook", "readback", shop.where, "--program", program.name]
    good = CliRunner().invoke(app, [*typed, "--value", "5:30", "--value", "345"])
    assert (good.exit_code, "holds what the card says" in good.output) == (0, True)
    bad = CliRunner().invoke(app, [*typed, "--value", "4:30", "--value", "345", "--json"])
    assert (bad.exit_code, '"matches": false' in bad.output) == (1, True)


# ---------------------------------------------------------------- calibrations


FITTED = Fitted(name="half_thickness_m", value=0.016, sd=0.0002, low=0.0156, high=0.0164, before=0.0155)


def made(**changes):
    note = Note(kind="off_centre", text="Sat {parameter} off.", values={"parameter": "half_thickness_m"})
    fit = Fit(
        parameters=(FITTED,),
        residuals=(Residual(name="K1", time_s=np.array([0.0, 1.26]), left=np.array([0.1, -0.2]), rms=0.16),),
        rms_k=0.5,
        warnings=(note,),
        runs_count=9,
    )
    values = {
        "cut": "breast_half",
        "fit": fit,
        "placements": (Placement(place_frac=0.3, centre_rms_k=1.0, best_rms_k=0.4, colder_k=2.0, note=note),),
        "draft": calibration(),
        "notes": (),
    }
    return Calibrated(**{**values, **changes})


def test_a_calibration_is_shown_with_its_intervals():
    """Lengths in millimetres in either system, misfit and error in the reader's degrees; refused it has no
    error and no pieces.
    """
    view = fit_view(made(), "us")
    (row,) = view.parameters
    assert (row.value, row.low, row.high, row.before) == ("16.00 mm", "15.60 mm", "16.40 mm", "15.50 mm")
    assert (view.usable, view.rms, view.error, view.pieces) == (True, "0.9 °F", "3.6 °F", 3)
    assert row.name != row.key == "half_thickness_m"
    assert view.warnings == (f"Sat {row.name} off.",)
    assert view.residuals[0].time_s == [0.0, 1.3]
    assert view.residuals[0].left_k == [0.1, -0.2]
    refused = Fit(refused=(Note(kind="x", text="Too few.", values={}),))
    none = fit_view(made(draft=None, fit=refused), "metric")
    assert (none.usable, none.rms, none.error, none.pieces) == (False, "–", "–", 0)
    assert none.refused == ("Too few.",)
    table = _fit(made(), "metric", str)
    assert table.rows == [[row.name, "16.00 mm", "15.60 mm", "16.40 mm"]]
    assert table.lines[0].startswith("misfit 0.5 °C")
    assert len(table.lines) == 3


def test_a_calibration_is_kept_with_its_log_or_not_at_all(tmp_path):
    """A refused one leaves no entry; a kept one has its fit beside it."""
    store = kitchen_store(tmp_path / "c.db")
    with pytest.raises(InputError, match="supports"):
        probes.keep_calibration(store, made(draft=None), "0" * 64, 0.5)
    kept = probes.keep_calibration(store, made(), "a" * 64, 0.5).fact
    assert kept == next(store.facts(CalibrationKept)).fact
    assert (kept.log, kept.rms_k, kept.runs_count) == ("a" * 64, 0.5, 9)
    assert (kept.fitted[0].name, kept.fitted[0].value, kept.fitted[0].before) == (
        "half_thickness_m",
        0.016,
        0.0155,
    )
    store.close()


def test_a_calibration_for_a_kitchen_file_reads_back_as_itself():
    """What is empty is left out."""
    text = probes.calibration_toml(calibration())
    (row,) = tomllib.loads(text)["calibration"]
    assert Calibration(**row) == calibration()
    assert "drip_frac" not in row and "log" not in row


def test_a_calibration_at_the_lift_keeps_what_it_may_be_off(kitchen):
    """Thermometer, pieces and core together, at most ten kelvin; 95 % of a value is 1.96 standard deviations;
    the shape is kept only where carry-over was read.
    """
    program = kitchen.program("bone-in alder")
    fit = LiftFit(
        half_thickness_m=0.016,
        shape_n=0.5,
        size_sd_frac=0.01,
        shape_sd_n=0.05,
        core_sd_k=1.0,
        spread_k=1.5,
        rise_k=None,
    )
    usual = LiftPoint(mass_kg=0.2, load="full", core_c=80.0, rest_core_c=None, rest_s=0.0)
    points = [usual, replace(usual, mass_kg=0.3)]
    kept = lift_calibration._fact(kitchen, program, "breast_half", points, fit)
    error = math.hypot(kitchen.site.thermometer_error_k, 3.0, 2.0)
    assert kept.error_k == pytest.approx(error)
    assert (kept.pieces_count, kept.mass_low_kg, kept.mass_high_kg, kept.road) == (2, 0.2, 0.3, "lift")
    assert (kept.rms_k, kept.runs_count, [f.name for f in kept.fitted]) == (1.5, 2, ["half_thickness_m"])
    (half,) = kept.fitted
    assert (half.high - half.value) / half.sd == pytest.approx(1.96, abs=1e-4)
    assert (half.value - half.low) == pytest.approx(half.high - half.value)
    assert half.sd == pytest.approx(0.016 * 0.01)
    assert half.before == kitchen.cut("breast_half").half_thickness_m
    wide = replace(fit, rise_k=2.0, spread_k=9.0)
    rested = lift_calibration._fact(kitchen, program, "breast_half", points, wide)
    assert [f.name for f in rested.fitted] == ["half_thickness_m", "shape_n"]
    assert rested.error_k == 10.0
