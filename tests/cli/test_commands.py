"""Commands as people run them, with good and bad input."""

from __future__ import annotations

import json
import subprocess
import sys
import xml.etree.ElementTree as ElementTree

import pytest

from frywright.trial.kitchens import demo_text
from tests.model.test_kitchen_files import GOOD
from tests.terminal import frywright


def by_process(*words: str) -> subprocess.CompletedProcess[str]:
    """In a process of its own, as from a terminal."""
    program = "from frywright.cli.main import run; run()"
    return subprocess.run(
        [sys.executable, "-c", program, *words], capture_output=True, text=True, timeout=300
    )


@pytest.fixture
def demo(tmp_path):
    path = tmp_path / "kitchen.toml"
    path.write_text(demo_text(), "utf-8")
    return str(path)


@pytest.mark.slow
def test_simulate_in_words(demo):
    """The demo gives a verdict, the pieces and the sums; the same run here, as the other tests do."""
    words = ("cook", "simulate", demo, "--program", "bone-in alder")
    got, here = by_process(*words), frywright(*words)
    assert got.returncode == 0, got.stderr
    assert (here.returncode, here.stdout, here.stderr) == (0, got.stdout, got.stderr)
    for words in ("▲ OVER +", "○ NOT PROVEN YET", "Breast half", "Drop to lift", "5,420 ft"):
        assert words in got.stdout


@pytest.mark.slow
def test_simulate_as_json_with_people_units(demo, tmp_path):
    """Options take people's units; JSON is in SI; the chart is an SVG with text in it."""
    chart = tmp_path / "out.svg"
    got = frywright(
        "cook",
        "simulate",
        demo,
        "--program",
        "bone-in alder",
        "--load",
        "6lb",
        "--start-temp",
        "45F",
        "--altitude",
        "1600m",
        "--json",
        "--chart",
        str(chart),
    )
    assert got.returncode == 0, got.stderr
    answer = json.loads(got.stdout)
    assert answer["load_kg"] == pytest.approx(6 * 0.45359237)
    assert answer["altitude_m"] == 1600.0
    assert answer["pieces"][0]["core_c"][0] == pytest.approx((45 - 32) / 1.8)
    assert {v["outcome"] for v in answer["verdicts"]} == {"unknown"}
    assert ElementTree.parse(chart).getroot().tag.endswith("svg")


@pytest.mark.slow
def test_a_second_kitchen_written_by_hand(tmp_path):
    """Another kitchen, metric and at another altitude, just works."""
    path = tmp_path / "other.toml"
    path.write_text(GOOD, "utf-8")
    got = frywright("cook", "simulate", str(path), "--program", "bird one", "--heads", "3")
    assert got.returncode == 0, got.stderr
    assert "°C" in got.stdout
    assert "120 m" in got.stdout


@pytest.mark.slow
@pytest.mark.parametrize(
    ("words", "code", "says"),
    [
        (["--program", "nothing"], 2, "one of: bone-in alder"),
        (["--program", "bone-in alder", "--heads", "0"], 2, "boils over"),
        (["--program", "bone-in alder", "--heads", "40"], 2, "boils over"),
        (["--program", "bone-in alder", "--heads", "2", "--load", "3kg"], 2, "either"),
        (["--program", "bone-in alder", "--start-temp", "lukewarm"], 2, "number with one of these units"),
        (["--program", "bone-in alder", "--start-temp", "60C"], 2, "must be 30 °F to 104 °F"),
        (["--program", "bone-in alder", "--altitude", "9000m"], 2, "16404 ft"),
        (["--program", "bone-in alder", "--oil-temp", "20C"], 2, "140 °F"),
        (["--program", "bone-in alder", "--chart", "x.png"], 2, ".svg"),
    ],
)
def test_bad_options_give_words_and_a_code(demo, words, code, says):
    """Each bad option names what is allowed; nothing like a traceback."""
    got = frywright("cook", "simulate", demo, *words)
    assert got.returncode == code
    assert says in got.stderr
    assert "Traceback" not in got.stderr


@pytest.mark.slow
def test_bad_files_exit_with_the_data_code(tmp_path):
    """Missing file, folder, bytes and a mistake inside: code 3 with file and line."""
    (tmp_path / "bytes.toml").write_bytes(b"\xff\xfe\x00name")
    (tmp_path / "bad.toml").write_text(GOOD.replace('kind = "pressure"', 'kind = "vacuum"'), "utf-8")
    for name, says in (
        ("none.toml", "no such file"),
        (".", "folder"),
        ("bytes.toml", "UTF-8"),
        ("bad.toml", "bad.toml:11"),
    ):
        got = frywright("kitchen", "check", str(tmp_path / name))
        assert got.returncode == 3, name
        assert says in got.stderr
    as_json = frywright("kitchen", "check", str(tmp_path / "bad.toml"), "--json")
    assert json.loads(as_json.stdout)["error"] == "DataError"


@pytest.mark.slow
def test_check_names_a_program_that_is_short(tmp_path, demo):
    """The file reads well, and the program cut in it is named with what is locked; the demo has none."""
    from tests.rooms.test_short import short_file

    assert "No problems" in frywright("kitchen", "check", demo).stdout
    path = tmp_path / "short.toml"
    path.write_text(short_file(), "utf-8")
    got = frywright("kitchen", "check", str(path))
    assert "bone-in alder, version 3: predicted" in got.stdout
    assert "No problems" not in got.stdout
    told = json.loads(frywright("kitchen", "check", str(path), "--json").stdout)["short"]
    assert [(row["name"], row["margin_k"] < 0) for row in told] == [("bone-in alder", True)]


@pytest.mark.slow
def test_records_commands(tmp_path, demo):
    """Verify and export speak about the store; a missing one is refused."""
    from pathlib import Path

    from frywright.ledger.store import Store
    from frywright.rooms.clock import now
    from frywright.rooms.kitchen import remember_kitchen

    path = tmp_path / "s.db"
    remember_kitchen(Store.file(path, now), Path(demo).read_text("utf-8"), "k.toml")
    assert json.loads(frywright("records", "verify", str(path), "--json").stdout)["entries"] == 1
    assert json.loads(frywright("records", "export", str(path)).stdout)["kind"] == "kitchen"
    (tmp_path / "e.jsonl").write_text(frywright("records", "export", str(path)).stdout, "utf-8")
    again = ("records", "import", str(tmp_path / "e.jsonl"), "--store")
    told = frywright(*again, str(tmp_path / "t.db"), "--json")
    assert json.loads(told.stdout) == {"ok": True, "entries": 1}
    assert frywright(*again, str(tmp_path / "u.db")).stdout == "1 entry, chain unbroken.\n"
    missing = frywright("records", "verify", str(tmp_path / "no.db"))
    assert missing.returncode == 5
    assert "No store" in missing.stderr


@pytest.mark.slow
def test_prove_in_words_and_json(demo):
    """A proof names what moves it most; the same seed gives the same JSON; it stays unknown."""
    words = ("cook", "prove", demo, "--program", "bone-in alder", "--samples", "64")
    got = frywright(*words)
    assert got.returncode == 0, got.stderr
    assert "NOT PROVEN YET" in got.stdout
    assert "UNKNOWN" not in got.stdout
    assert " K" not in got.stdout  # a kitchen in °F
    assert "piece weight" in got.stdout
    first, second = (json.loads(frywright(*words, "--json").stdout) for _ in range(2))
    assert first == second
    assert first["outcome"] == "unknown"
    assert frywright(*words[:-1], "0").returncode == 2
    assert "of 64 loads failed" in got.stdout
    two = json.loads(frywright(*words, "--heads", "2", "--json").stdout)
    assert two["cuts"] != first["cuts"]
    assert frywright(*words, "--heads", "0").returncode == 2
    assert frywright(*words, "--heads", "9").returncode == 2


@pytest.mark.slow
def test_card_and_readback(demo, tmp_path):
    """A card is written as PDF; a wrong digit is named with its slip and its consequence; a match is said."""
    card = tmp_path / "c.pdf"
    made = frywright("cook", "card", demo, "--program", "bone-in birch", "--out", str(card), "--json")
    assert made.returncode == 0, made.stderr
    assert card.read_bytes().startswith(b"%PDF")
    told = json.loads(made.stdout)
    assert [r[1:4] for r in told["rows"]] == [["330", "0:00", "4:00"], ["310", "4:00", "12:30"]]
    right = [w for r in told["rows"] for v in (r[1], r[3]) for w in ("--value", v)]
    same = frywright("cook", "readback", demo, "--program", "bone-in birch", *right)
    assert same.returncode == 0, same.stderr
    assert told["figure"] in same.stdout
    wrong = [w.replace("12:30", "10:30") for w in right]
    slipped = frywright("cook", "readback", demo, "--program", "bone-in birch", *wrong)
    assert slipped.returncode == 1
    assert "one digit" in slipped.stdout
    assert slipped.stdout.startswith("Key the time of stage 2 again: 12:30.\nDo not cook")
    assert "coldest piece" in slipped.stdout
    assert "°F" in slipped.stdout
    assert "°C" not in slipped.stdout
    assert " K" not in slipped.stdout
    scaled = frywright(
        "cook", "readback", demo, "--program", "bone-in birch", *right, "--setting", "scale=°C"
    )
    assert "Do not heat it" in scaled.stdout
    few = frywright("cook", "readback", demo, "--program", "bone-in birch", *right[:2])
    assert few.returncode == 2
    assert "read every value" in few.stderr


@pytest.mark.slow
def test_design_and_transfer(demo):
    """A design tells stages, reason, proof and window; a transfer what does not match; bad goals a reason."""
    made = frywright("cook", "design", demo, "--product", "tenders", "--fryer", "cedar", "--stages", "1")
    assert made.returncode == 0, made.stderr
    assert "Predicted, not proven" in made.stdout
    assert "None of 256 loads failed" in made.stdout
    assert made.stdout.count("\n* ") == 1
    for value in ("time", "set point"):
        assert f"stage 1, {value}" in made.stdout
    row = frywright(
        "cook",
        "design",
        demo,
        "--product",
        "tenders",
        "--fryer",
        "cedar",
        "--stages",
        "1",
        "--row",
        "1",
        "--json",
    )
    told = json.loads(row.stdout)
    assert told["proof"]["holds"]
    assert told["recommended"]["loss_frac"] == pytest.approx(told["front"][0]["loss_frac"], abs=0.02)
    barred = frywright(
        "cook",
        "design",
        demo,
        "--product",
        "bone_in",
        "--fryer",
        "cedar",
        "--stages",
        "1",
        "--longest",
        "5:00",
    )
    assert barred.returncode == 2
    assert "What binds is" in barred.stderr
    assert "Nearest program found" in barred.stderr
    refused = frywright(
        "cook", "design", demo, "--product", "bone_in", "--fryer", "cedar", "--most-loss", "-3"
    )
    assert refused.returncode == 2
    assert "most moisture lost is -3.0 %" in refused.stderr
    carried = frywright("cook", "transfer", demo, "--program", "bone-in alder", "--fryer", "cedar", "--json")
    assert carried.returncode == 0, carried.stderr
    assert json.loads(carried.stdout)["unmatched"]
    words = (
        "--program",
        "tenders cedar",
        "--fryer",
        "cedar",
        "--stages",
        "1",
        "--altitude",
        "7,200",
        "--bird",
        "2oz",
    )
    away = frywright("cook", "transfer", demo, *words)
    assert away.stdout.startswith("tenders cedar, 7,200 ft, 2.0 oz, version 1"), away.stderr


@pytest.mark.slow
def test_an_error_is_told_in_the_language_of_the_kitchen(tmp_path):
    """A Spanish kitchen reads Spanish, in words and in JSON."""
    path = tmp_path / "cocina.toml"
    path.write_text(demo_text().replace('language = "en"', 'language = "es"'), "utf-8")
    ask = ("cook", "simulate", str(path), "--program", "bone-in alder", "--start-temp", "60C")
    said = "debe ser de 30 °F a 104 °F"
    got = frywright(*ask)
    assert (got.returncode, said in got.stderr) == (2, True), got.stderr
    assert said in json.loads(frywright(*ask, "--json").stdout)["message"]
