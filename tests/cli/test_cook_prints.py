"""What the commands of cook and probe print and write: words and JSON say the same, on a small metric bench
and on the demo in °F.
"""

from __future__ import annotations

import json
import re
from contextlib import closing
from math import ceil, floor
from pathlib import Path

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.facts.cook import ShortCardPrinted
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.kitchen import remember_kitchen
from tests.demo import demo_store
from tests.paper import words
from tests.small import small_kitchen

PROGRAM = """
[[program]]
name = "wings left"
product = "wings"
fryer = "left"

[[program.stage]]
set_c = 175
duration = "{time}"
"""
WINGS = ("--program", "wings left")


def bench(path, time="9:00"):
    """A kitchen file: one open fryer in °C, one program."""
    path.write_text(small_kitchen("uk") + PROGRAM.format(time=time), "utf-8")
    return str(path)


@pytest.fixture
def run(tmp_path):
    """Runs a command of two words on the bench: its output as it is."""
    file = bench(tmp_path / "bench.toml")

    def ran(group, name, *typed, code=0, on=file):
        got = CliRunner().invoke(app, [group, name, on, *typed])
        assert got.exit_code == code, got.output
        return got.output

    return ran


def flat(text: str) -> str:
    return " ".join(text.split())


def test_a_cook_in_words_is_the_cook_in_json(run):
    """The verdict first, each piece with its core, the sums, the notes; in the units of the bench."""
    said, told = (run("cook", "simulate", *WINGS, *more) for more in ((), ("--json",)))
    cook, lines = json.loads(told), said.splitlines()
    assert lines[0] == "wings left v1 · Left"
    assert lines[1] == "Wings · 57 × piece (4.00 kg) · 610 m"
    assert lines[3].startswith("▲ OVER +")
    assert lines[4].startswith("○ NOT PROVEN YET")
    assert "Clock 9:00. Lift when it ends." in said
    usual = next(line for line in lines if line.startswith("Wing ") and "heavy" not in line)
    assert re.split(r"\s{2,}", usual)[1] == "0.07 kg"
    cores = {p["name"]: p["core_at_lift_c"] for p in cook["pieces"]}
    assert f"{cores['Wing']:.1f} °C" in usual
    assert "Lowest oil: " in said and "Drop to lift: 9:00" in said
    assert f"Lowest oil: {cook['lowest_oil_c']:.1f} °C" in said
    assert f"Heat into the oil: {cook['heat_kwh']:.2f} kWh" in said
    assert f"Yield, of breaded weight: {100 * cook['yield_frac']:.1f} %" in said
    assert "°F" not in said


@pytest.mark.parametrize("name", ["wings [new]", "wings [/bold] :fire: [red]", "{count} %s [link=x]"])
def test_names_in_brackets_are_printed_as_they_are(run, tmp_path, name):
    """They are no style of the terminal, no picture and no place to be filled."""
    path = tmp_path / "named.toml"
    text = Path(bench(path)).read_text("utf-8").replace('name = "Wings"', f'name = "Big {name}"')
    path.write_text(text.replace('"wings left"', f'"{name}"'), "utf-8")
    said = flat(run("cook", "simulate", "--program", name, on=str(path)))
    assert said.startswith(f"{name} v1 · Left Big {name} · ")
    unknown = run("cook", "prove", "--program", "x", "--samples", "8", on=str(path), code=2)
    assert f"one of: {name}." in unknown


def test_no_head_of_a_column_is_cut_off(run, monkeypatch):
    """Spanish words are longer; eighty columns show them whole, on two lines if need be."""
    monkeypatch.setenv("COLUMNS", "80")
    told = run("cook", "simulate", *WINGS, "--language", "es")
    assert "…" not in told and "corteza" in told


def test_a_cook_takes_what_is_asked_of_it(run):
    """A smaller load, colder food, colder oil and the height of another place each make their difference."""

    def core(*asked):
        cook = json.loads(run("cook", "simulate", *WINGS, *asked, "--json"))
        return min(p["core_at_lift_c"] for p in cook["pieces"])

    usual = core()
    assert core("--load", "1kg") > usual
    assert core("--heads", "10") > usual
    assert core("--start-temp", "1") < usual
    assert core("--oil-temp", "150") < usual
    assert core("--altitude", "2500") < usual


def test_a_cook_has_its_picture(run, tmp_path):
    """Under a name that ends in .svg; another name is refused and nothing is written."""
    run("cook", "simulate", *WINGS, "--chart", str(tmp_path / "c.svg"))
    picture = (tmp_path / "c.svg").read_text("utf-8")
    assert picture.startswith("<svg") and "oil" in picture and "minutes since the drop" in picture
    said = run("cook", "simulate", *WINGS, "--chart", str(tmp_path / "c.png"), code=2)
    assert "ends in .svg" in said
    assert not (tmp_path / "c.png").exists()


def test_a_proof_in_words_is_the_proof_in_json(run):
    """How many failed, each cut, what moves the lowest margin, the lowest corner."""
    said, told = (run("cook", "prove", *WINGS, "--samples", "16", *more) for more in ((), ("--json",)))
    proof = json.loads(told)
    assert "None of 16 loads failed" in flat(said)
    assert "Wing: 100.0 % meet, at least 82.9 %, worst margin +" in said
    moves = {k: v for k, v in proof["sensitivity"].items() if abs(v) >= 0.005}
    shown = re.findall(r"^  (\S.*?)\s{2,}([+-]\d\.\d\d) ?(█*)", said, re.M)
    assert [f"{v:+.2f}" for v in moves.values()] == [value for _, value, _ in shown][: len(moves)]
    assert all(len(bar) == round(20 * abs(float(value))) for _, value, bar in shown)
    assert re.search(r"Lowest corner: [+−-]\d", said)


def test_where_loads_begin_to_fail_is_told_where_it_is_asked(run):
    """In words as in JSON, the interval rounded outwards, in whole degrees; a share is a share."""
    asked = ("cook", "prove", *WINGS, "--samples", "16")
    said, told = (run(*asked, "--break-even", "1", *more) for more in ((), ("--json",)))
    time, hotter = json.loads(told)["break_even"]
    assert 0.0 > time["high"] > time["change"] > time["low"] > -180.0
    shown = re.search(
        r"  1.0 % of the loads fail: stage 1, time 9:00: (\d):(\d\d) \((\d):(\d\d) to (\d):(\d\d)\)", said
    )
    at, low, high = (int(shown[i]) * 60 + int(shown[i + 1]) for i in (1, 3, 5))
    assert low == floor(540.0 + time["low"]) and high == ceil(540.0 + time["high"])
    assert abs(at - 540.0 - time["change"]) <= 0.5
    assert "  1.0 % of the loads fail: stage 1, set point 175 °C: " in said and hotter["keyed"] == "175 °C"
    assert "(no proof)" in said
    assert "begin to fail" not in run(*asked) and "break_even" not in json.loads(run(*asked, "--json"))
    refused = run(*asked, "--break-even", "60%", code=2)
    assert "share of loads that fail is 60.0 %; it must be 0.1 % to 50.0 %" in flat(refused)


def test_a_card_in_words_is_the_card_on_paper(run, tmp_path):
    """Its check figure, its banner, and the verdict of the values as this controller rounds them."""
    out = tmp_path / "c.pdf"
    told = json.loads(run("cook", "card", *WINGS, "--out", str(out), "--json"))
    assert (told["title"], told["slot"], told["version"]) == ("wings left v1", "1", "1")
    assert [row[1:4] for row in told["rows"]] == [["175", "9:00", "open"]]
    page = words(out.read_bytes())
    assert "wings left" in page and told["banner"][:40] in flat(page)
    said = flat(run("cook", "card", *WINGS, "--out", str(out)))
    assert f"c.pdf: wings left v1, check figure {told['figure']}." in said
    assert "As rounded for this controller: Predicted, not proven" in said
    assert "⚠" not in said
    assert "slot is 3; it must be 1 to 1." in run(
        "cook", "card", *WINGS, "--out", str(out), "--slot", "3", code=2
    )


def test_a_card_of_a_program_that_is_short_needs_somebody_and_a_record(run, tmp_path):
    """In a kitchen file there is nowhere to keep who answers for it; in a store it is kept once."""
    raw = bench(tmp_path / "raw.toml", "2:00")
    out, who = str(tmp_path / "c.pdf"), ("--by", "Ana Lund", "--reason", "for the fire drill")
    assert "61.4 °C short, so somebody must answer for it" in flat(
        run("cook", "card", *WINGS, "--out", out, code=2, on=raw)
    )
    said = flat(run("cook", "card", *WINGS, "--out", out, *who, code=2, on=raw))
    assert "--store is missing" in said
    place = str(tmp_path / "s.db")
    with closing(Store.named(place, now)) as store:
        remember_kitchen(store, (tmp_path / "raw.toml").read_text("utf-8"), "raw.toml")
    run("cook", "card", *WINGS, "--out", out, *who, on=place)
    with closing(Store.named(place, now)) as store:
        (fact,) = [item.fact for item in store.facts(ShortCardPrinted)]
    assert (fact.short.by, fact.short.reason) == ("Ana Lund", "for the fire drill")


def test_a_read_back_says_the_slip_and_what_it_would_do(run, tmp_path):
    """What matches is said with the check figure; each value that does not with what it looks like."""
    place, bird = demo_store(tmp_path / "s.db"), ("--program", "bone-in birch")
    card = run("cook", "card", *bird, "--out", str(tmp_path / "c.pdf"), "--json", on=place)
    told = json.loads(card)

    def read(values, code):
        return run(
            "cook", "readback", *bird, *(w for v in values for w in ("--value", v)), on=place, code=code
        )

    right = [value for row in told["rows"] for value in (row[1], row[3])]
    match = f"The machine holds what the card says (check figure {told['figure']})."
    assert flat(read(right, 0)) == match
    bad = read([value.replace("310", "130") for value in right], 1)
    lines = bad.splitlines()
    assert lines[0].startswith("Key the set point of stage 2 again: 310")
    assert re.search(r"^✖ stage 2, set: card 310, machine 130 \(.+\)$", bad, re.M)
    assert re.search(rf"^Check figure of the machine \d+, of the card {told['figure']}\.$", bad, re.M)
    as_keyed = lines[lines.index("As keyed, predicted:") + 1 :]
    assert as_keyed and all(re.match(r"  .+: .+ \(card .+\)$", line) for line in as_keyed)
    assert "read every value" in flat(read(right[:2], 2))


def test_readings_prove_a_program_or_say_why_not(run):
    """An unchecked thermometer is no evidence; shares and confidence are typed in percent."""
    cores = "80 81 82 79.5 83"
    said = flat(run("probe", "sample", cores, *WINGS, "--checked"))
    assert said.startswith(
        "wings left, version 1, Left Meets 73.9 °C: with 95.0 % confidence at least 95.0 %"
    )
    assert "n 5 · k 4.203 · mean 80.1 °C" in said
    assert "no failure among them would show at least 54.9 %" in said
    told = json.loads(
        run("probe", "sample", cores, *WINGS, "--coverage", "90", "--confidence", "90%", "--json")
    )
    assert (told["outcome"], told["count"]) == ("no_evidence", 5)
    assert (told["coverage_frac"], told["confidence_frac"]) == (0.9, 0.9)
    # Five without a failure at 90 %: 0.1 ** (1 / 5) (binomial, Clopper and Pearson 1934).
    assert told["zero_failure_frac"] == pytest.approx(0.1**0.2)
    assert told["mean_c"] == pytest.approx(80.1)
    low = flat(run("probe", "sample", cores, *WINGS, "--confidence", "0.9", code=2))
    assert low == "confidence is 0.9 %; it must be 50.0 % to below 100.0 %."


@pytest.mark.slow
def test_a_program_is_carried_to_another_height(run):
    """Its stages, what does not match, and its proof; the words say what JSON says."""
    asked = ("cook", "transfer", *WINGS, "--fryer", "left", "--stages", "1", "--altitude", "1500")
    said = run(*asked)
    lines = said.strip().splitlines()
    assert lines[0] == "wings left, 1500 m, version 1"
    assert re.fullmatch(r"\d{3}\.\d °C · open · \d+:\d\d", lines[1])
    assert lines[2] == "  core, crust, loss and colour match"
    assert "None of 256 loads failed" in flat(said)


def test_a_design_tells_its_stages_its_trade_off_and_its_window(run):
    """One row of the trade-off is the chosen one."""
    asked = ("cook", "design", "--product", "wings", "--fryer", "left", "--stages", "1")
    said = run(*asked)
    lines = said.splitlines()
    rows = [line for line in lines if re.match(r"^[* ]\s*\d+\s+\d+:\d\d", line)]
    assert rows and sum(line.startswith("*") for line in rows) == 1
    assert [int(re.match(r"[* ]\s*(\d+)", line)[1]) for line in rows] == list(range(1, len(rows) + 1))
    loads = [line for line in lines if "in the worst case, straight after a full load" in line]
    assert [line.split(" × ")[0].strip() for line in loads] == ["1", "28", "57"]
    for value in ("time", "set point"):
        assert any(line.startswith(f"  stage 1, {value} ") and "more: " in line for line in lines)
    assert "None of 256 loads failed" in flat(said)


@pytest.mark.parametrize(("option", "text"), [("--core", "70"), ("--crust", "1mm-2mm-3mm")])
def test_a_range_of_a_design_has_two_ends(run, option, text):
    said = run("cook", "design", "--product", "wings", "--fryer", "left", option, text, code=2)
    assert flat(said) == f"{option} is '{text}'; it must be a range such as 165F-195F."
