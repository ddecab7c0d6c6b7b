"""``frywright probe`` as people run it."""

from __future__ import annotations

import json

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.trial.kitchens import demo_log, demo_text
from tests.paper import words

CHANNELS = ("Breast 1 (°F)", "Breast 2 (°F)", "Breast 3 (°F)")


@pytest.fixture
def files(tmp_path):
    (tmp_path / "kitchen.toml").write_text(demo_text(), "utf-8")
    (tmp_path / "log.csv").write_bytes(demo_log())
    return tmp_path


def run(*words, code=0):
    result = CliRunner().invoke(app, [str(w) for w in words])
    assert result.exit_code == code, result.output
    return result.stdout


def test_read_by_command(files):
    """Events, verdicts and a report by command; JSON carries inside units."""
    told = json.loads(
        run("probe", "read", files / "kitchen.toml", files / "log.csv", "--json", "--report", files / "r.pdf")
    )
    assert told["loads"][0]["drop_s"] == pytest.approx(1655.0, abs=3.0)
    assert [v["outcome"] for v in told["verdicts"]] == ["unknown"] * 3
    assert (files / "r.pdf").read_bytes().startswith(b"%PDF")
    assert "reads 5.0 °F high" in run("probe", "read", files / "kitchen.toml", files / "log.csv")


@pytest.mark.slow
def test_calibrate_by_command_makes_a_kitchen_file(files):
    """The table printed goes into the kitchen file, and the kitchen reads it."""
    probed = [
        w
        for c, m in zip(CHANNELS, ("203g", "220g", "240g"), strict=True)
        for w in ("--probed", f"{c}=breast_half:{m}")
    ]
    text = run(
        "probe", "calibrate", files / "kitchen.toml", files / "log.csv", "--program", "bone-in alder", *probed
    )
    table = text[text.index("[[calibration]]") :]
    (files / "kitchen.toml").write_text(demo_text() + "\n" + table, "utf-8")
    told = json.loads(run("cook", "simulate", files / "kitchen.toml", "--program", "bone-in alder", "--json"))
    outcomes = {v["piece"]: v["outcome"] for v in told["verdicts"]}
    assert "meets" in outcomes.values()


def test_sample_check_and_hold_by_command(files):
    """Sampling, a failed check and a hold study by command."""
    told = json.loads(
        run(
            "probe",
            "sample",
            files / "kitchen.toml",
            "178F 176F,181F,179 177 180 175 183",
            "--program",
            "bone-in alder",
            "--checked",
            "--json",
        )
    )
    assert (told["outcome"], told["program"], told["version"]) == ("passes", "bone-in alder", 3)
    check = (
        "probe",
        "check",
        files / "kitchen.toml",
        "--store",
        files / "s.db",
        "--thermometer",
        "P1",
        "--json",
    )
    assert json.loads(run(*check, "--ice", "32F"))["outcome"] == "good"
    assert json.loads(run(*check, "--ice", "40F"))["outcome"] == "failed"
    (files / "hold.csv").write_text(
        "repeat;minute;core_f;crust\n"
        + "".join(f"r{i};{m};150;{9 - m // 30}\n" for i in range(5) for m in (15, 30, 60, 90))
    )
    assert (
        json.loads(run("probe", "hold", files / "kitchen.toml", files / "hold.csv", "--json"))["life_s"]
        == 3600.0
    )


def test_lid_kettle_and_heat_up_by_command(files):
    """Without probed pieces the lid and the heater come out: 12 psi, 10 kW and 6 W/K made the demo log. A
    heat-up a third slower than the first day's hints at low voltage."""
    told = json.loads(
        run(
            "probe",
            "calibrate",
            files / "kitchen.toml",
            files / "log.csv",
            "--program",
            "bone-in alder",
            "--json",
        )
    )
    assert told["parameters"][0]["value"] == pytest.approx(82737.0, abs=500.0)
    assert told["kettle"]["heater_w"] == pytest.approx(10000.0, rel=0.03)
    assert told["kettle"]["loss_w_k"] == pytest.approx(6.0, rel=0.05)
    for name, rate in (("first.csv", 0.2), ("now.csv", 0.15)):
        (files / name).write_text(
            "s;Oil °C\n" + "".join(f"{t};{20 + rate * t:.1f}\n" for t in range(0, 1100, 2)), "utf-8"
        )
    told = json.loads(
        run(
            "probe",
            "heat-up",
            files / "kitchen.toml",
            files / "now.csv",
            files / "first.csv",
            "--fryer",
            "alder",
            "--json",
        )
    )
    assert told["ratio"] == pytest.approx(4 / 3, rel=0.01)
    assert "208 V" in told["hint"]


@pytest.mark.parametrize(
    "log", ["a;b;c\n1;2;3\n", "time,oil (F)\n" + "2026-03-02 10:00:00,1e308\n2026-03-02 10:00:01,inf\n"]
)
def test_a_log_without_a_curve_still_gives_its_report(tmp_path, log):
    """Nothing to draw is no picture; the report says what was read and what was not."""
    (tmp_path / "k.toml").write_text(demo_text(), "utf-8")
    (tmp_path / "log.csv").write_text(log, "utf-8")
    asked = ["probe", "read", str(tmp_path / "k.toml"), str(tmp_path / "log.csv")]
    got = CliRunner().invoke(app, [*asked, "--report", str(tmp_path / "r.pdf")])
    assert got.exit_code == 0, got.output
    assert "log.csv" in words((tmp_path / "r.pdf").read_bytes())
