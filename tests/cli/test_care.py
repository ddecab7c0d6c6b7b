"""``frywright care`` as people run it."""

from __future__ import annotations

import json
from contextlib import closing

import pytest
from typer.testing import CliRunner

from frywright.care.gates import steps_for
from frywright.catalog.kitchen import parse_kitchen
from frywright.cli.main import app
from frywright.ledger.facts.people import DrillAnswered
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.trial.kitchens import demo_text
from tests.demo import demo_store
from tests.terminal import frywright


@pytest.mark.slow
def test_site_and_energy_by_command():
    """A 240 V unit on 208 V is a no-go with its three quarters; a day's energy adds up; exit codes tell go
    from no-go.
    """
    plate = ("care", "site", "--input", "13.5", "--volts", "240", "--phases", "3", "--measured-phases", "3")
    around = ("--breaker", "50", "--hood", "yes", "--suppression", "yes", "--flame", "20in")
    bad = frywright(*plate, *around, "--measured-volts", "208", "--json")
    told = json.loads(bad.stdout)
    assert bad.returncode == 1
    assert told["outcome"] == "fails"
    assert "75.1 %" in told["points"][0]["text"]
    good = frywright(*plate, *around, "--measured-volts", "238")
    assert good.returncode == 0
    assert "20.96 kWh" in frywright("care", "energy", "13", "80lb", "40lb", "--food-heat", "258Btu/lb").stdout
    assert frywright("care", "site", "--hood", "maybe").returncode == 2


@pytest.mark.slow
def test_care_that_is_due_by_command(tmp_path):
    """Done, due and the calendar; a contractor's task is not the crew's."""
    store = ("--store", demo_store(tmp_path / "s.db"))
    refused = frywright("care", "done", "alder", "suppression", "--who", "Ana", *store)
    assert refused.returncode == 2
    assert "nobody else" in refused.stderr
    frywright("care", "done", "alder", "lid_seal", "--who", "Ana", *store)
    rows = json.loads(frywright("care", "due", "--json", *store).stdout)["due"]
    assert [r["state"] for r in rows if (r["fryer"], r["task"]) == ("alder", "lid_seal")] == ["later"]
    frywright("care", "calendar", "--out", str(tmp_path / "c.ics"), *store)
    assert (tmp_path / "c.ics").read_bytes().count(b"BEGIN:VEVENT\r\n") == 1


@pytest.mark.slow
def test_the_help_of_signing_names_every_figure_a_step_asks_for():
    """On the terminal a figure is typed by its key, and the key stands nowhere else."""
    alder = parse_kitchen(demo_text()).fryer("alder")
    asked = {figure for step in steps_for(alder) for figure in step.figures}
    assert len(asked) == 4
    for language in ("en", "es"):
        shown = frywright("care", "sign", "--help", "--language", language).stdout
        assert [figure for figure in asked if f"{figure}=" not in shown] == []


def test_a_new_fryer_by_command(tmp_path):
    """Plate, site, a gate that holds, and the pack."""
    store = ("--store", demo_store(tmp_path / "s.db"))
    kept = frywright(
        "care",
        "plate",
        "alder",
        "serial=A-1",
        "fuel=electric",
        "volts=208",
        "phases=3",
        "power=10 kW",
        *store,
    )
    assert kept.returncode == 0, kept.stderr
    told = json.loads(frywright("care", "measured", "alder", "volts=240", "--json", *store).stdout)
    assert told["go"] == "fails"
    who = ("who=Ana", "role=technician", "pass_name=Olive", "pass_reason=electrician comes on Monday")
    signed = json.loads(frywright("care", "sign", "alder", "survey", *who, "--json", *store).stdout)
    assert "survey" not in signed["open"]
    assert "place" in signed["open"]
    refused = frywright("care", "sign", "alder", "fill", "who=Ana", "role=lead", *store)
    assert refused.returncode == 2
    assert "no way past" in refused.stderr
    assert frywright("care", "handover", "alder", "--out", str(tmp_path / "h.pdf"), *store).returncode == 0
    assert (tmp_path / "h.pdf").read_bytes().startswith(b"%PDF")


@pytest.mark.slow
def test_people_and_drills_by_command(tmp_path):
    """A person, a signed skill, and drills with an explained answer."""
    store = ("--store", demo_store(tmp_path / "s.db"))
    frywright("care", "person", "Kim Vale", "--born", "1999-04-02", *store)
    assert "until" in frywright("care", "skill", "Kim Vale", "lid", "--seen-by", "Ana Lund", *store).stdout
    told = json.loads(frywright("care", "people", "--json", *store).stdout)
    assert told["people"][0]["skills"][0]["standing"] == "holds"
    drills = json.loads(frywright("care", "drill", "--json", *store).stdout)["drills"]
    assert sum(d["simulated"] for d in drills) >= 20
    answered = frywright("care", "drill", "bone-in_alder-v3-gauge", "--choice", "1", *store)
    assert "right:" in answered.stdout


def test_a_day_of_energy_is_typed_in_any_unit(tmp_path, monkeypatch):
    """Pounds and kilograms of the same food give the same day; without a kitchen a bare number has no unit
    and is refused.
    """
    monkeypatch.chdir(tmp_path)
    run = CliRunner().invoke
    pounds = run(app, ["care", "energy", "13", "80lb", "40lb", "--json"])
    kilos = run(
        app, ["care", "energy", "13", "36.2874 kg", "18.1437 kg", "--food-heat", "0.166667 kWh/kg", "--json"]
    )
    assert json.loads(pounds.stdout)["total_kwh"] == pytest.approx(20.96, abs=0.01)
    assert json.loads(kilos.stdout)["total_kwh"] == pytest.approx(
        json.loads(pounds.stdout)["total_kwh"], abs=2e-3
    )
    bare = run(app, ["care", "energy", "13", "80", "40"])
    assert bare.exit_code == 2
    assert "kg, g, lb, oz" in bare.stderr


def test_a_drill_is_asked_without_its_answer_and_answered_by_a_choice(tmp_path):
    """Nothing is kept and nothing given away until somebody chooses."""
    place = demo_store(tmp_path / "d.db")
    run = CliRunner().invoke
    named = ["care", "drill", "bone-in_alder-v3-gauge", "--store", place]
    asked = run(app, named)
    assert (asked.exit_code, "1. " in asked.stdout, "right:" in asked.stdout) == (0, True, False)
    with closing(Store.named(place, now)) as store:
        assert not list(store.facts(DrillAnswered))
    answered = run(app, [*named, "--choice", "2", "--who", "Kim Vale"])
    assert (answered.exit_code, answered.stdout.count("right:")) == (0, 1)
    with closing(Store.named(place, now)) as store:
        assert len(list(store.facts(DrillAnswered))) == 1
