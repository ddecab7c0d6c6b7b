"""What a command prints and keeps: amounts in the kitchen's units, who did it, and what is refused."""

from __future__ import annotations

import io
import json
from contextlib import closing, contextmanager
from dataclasses import replace

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.accounts import Accounts
from frywright.ledger.facts.oil import MeterChecked
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.day import day
from frywright.rooms.fleet import fleet
from frywright.rooms.fleet.swept import SiteProof
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.kitchens import demo_text
from tests.demo import demo_store
from tests.paper import words

SECRET = "oak leaf river stone"


@pytest.fixture
def told(said):
    """Runs a command on the store with --json."""
    return lambda *typed, code=0: said(*typed, "--json", code=code)


@contextmanager
def opened(place):
    with closing(Store.named(place, now)) as store:
        yield store


def newest(place, fact=None):
    """The newest entry, as a fact of its kind where one is named."""
    with opened(place) as store:
        return list(store.facts(fact))[-1].fact if fact else list(store.entries(named=True))[-1].entry


# ---------------------------------------------------------------- people


def test_one_owner_is_made_and_is_rescued_at_the_machine(place, said, told):
    """A second first owner is refused; the list names roles; a new password has its reason on record."""
    assert said("people", "owner", "Ana Vale", "--password", SECRET, "--pin", "2468") == (
        "Ana Vale owns this kitchen."
    )
    assert "has an owner already" in said("people", "owner", "Bo Vale", "--password", SECRET, code=6)
    assert said("people", "list") == "Ana Vale: owner"
    (row,) = told("people", "list")["accounts"]
    assert row == {"name": "Ana Vale", "role": "owner", "active": True, "device": False}
    with opened(place) as store:
        before = Accounts(store).accounts()[0]
    rescue = ("people", "rescue", "Ana Vale", "--password", "another long one", "--reason", "forgotten")
    assert said(*rescue) == "Ana Vale may sign in with the new password."
    with opened(place) as store:
        after = Accounts(store).accounts()[0]
    assert before.password_hash != after.password_hash
    assert newest(place).payload["reason"] == "forgotten"
    assert said("people", "rescue", "Nobody", "--password", SECRET, "--reason", "x", code=2)


def test_an_account_is_linked_to_the_company_and_the_link_ended(said, told):
    """With a key of the company it is linked; without one the link ends."""
    said("people", "owner", "Ana Vale", "--password", SECRET)
    name = ("people", "link", "Ana Vale", "--reason", "the company asks")
    key = ("--subject", "s-1", "--issuer", "https://id.example/")
    assert told(*name, *key) == {"ok": True, "name": "Ana Vale", "linked": True}
    assert told(*name) == {"ok": True, "name": "Ana Vale", "linked": False}


def test_a_person_a_skill_and_what_a_minor_may_not_do(said, told):
    """Kept with the day on which it expires; age stands beside the skill where the rules say something."""
    assert said("care", "person", "Kim Vale", "--born", "1999-04-02").endswith("kept.")
    assert ", until 20" in said("care", "skill", "Kim Vale", "lid", "--seen-by", "Ana Lund")
    assert said("care", "skill", "Kim Vale", "lid", "--seen-by", "Kim Vale", code=2)
    said("care", "person", "Lou Fell", "--born", f"{now().year - 15}-01-01")
    assert "forbids this work" in said("care", "skill", "Lou Fell", "lid", "--seen-by", "Ana Lund", code=2)
    held = {p["name"]: p["skills"][0]["standing"] for p in told("care", "people")["people"]}
    assert held == {"Kim Vale": "holds", "Lou Fell": "missing"}
    lines = said("care", "people")
    assert "Kim Vale holds 20" in lines
    assert "; by age: " in lines
    said("care", "person", "Lou Fell", "--left")
    assert "; by age: " not in said("care", "people")


# ---------------------------------------------------------------- care


def test_a_fryer_is_stopped_and_released_by_name(place, said):
    """What to do first is said; only a qualified role releases, and its words are on record."""
    stop = said("care", "stop", "alder", "oil_leak", "--who", "Kim")
    assert "alder is out of use" in stop
    assert "Cut the heat" in stop
    assert "call a qualified person" in stop
    release = ("care", "reopen", "alder", "--who", "Olive Ash", "--finding", "seal replaced and tried")
    said(*release, "--role", "crew", code=2)
    assert said(*release, "--role", "licensed") == "alder is released by Olive Ash."
    assert newest(place).payload["finding"] == "seal replaced and tried"


def test_a_card_becomes_the_kitchens_own_and_keeps_its_hazards(tmp_path, said, told):
    """As it is, it can be read and given back; a step without its hazard is refused; versions count."""
    text = (
        CliRunner().invoke(app, ["care", "card-edit", "lid_seal", "--store", str(tmp_path / "s.db")]).stdout
    )
    assert text.count("!!") == 3
    steps = tmp_path / "steps.txt"
    steps.write_text("Heat off.\n", "utf-8")
    assert "must be kept" in said("care", "card-edit", "lid_seal", str(steps), "--who", "Ana Vale", code=2)
    steps.write_text(text + "Wipe the groove.\n", "utf-8")
    edit = ("care", "card-edit", "lid_seal", str(steps), "--who", "Ana Vale")
    assert said(*edit, "--tools", "a soft cloth") == "Version 1 kept."
    view = told("care", "card-edit", "lid_seal")
    assert view["lines"].endswith("Wipe the groove.")
    assert (view["version"], view["tools"]) == (1, "a soft cloth")


def test_a_card_is_signed_by_two(place, said, told):
    """The same name twice is one person."""
    signed = ("care", "card-sign", "lid_seal", "alder", "--who", "Ana Vale")
    said(*signed, "--second", "Ana Vale", code=2)
    number = told(*signed, "--second", "Kim Vale", "--note", "seal turned")["number"]
    entry = newest(place)
    with opened(place) as store:
        assert store.last().number == number
    assert (entry.payload["who"], entry.payload["second"], entry.payload["note"]) == (
        "Ana Vale",
        "Kim Vale",
        "seal turned",
    )


def test_a_task_is_ticked_and_a_time_is_compared_with_the_first_day(said, told):
    """A contractor's task is nobody else's; two and a half minutes on top of ten is a quarter slower."""
    assert "nobody else" in said("care", "done", "alder", "suppression", "--who", "Ana Vale", code=2)
    assert "kept" in said("care", "done", "alder", "lid_seal", "--who", "Ana Vale")
    rows = {(r["fryer"], r["task"]): r["state"] for r in told("care", "due")["due"]}
    assert (rows["alder", "lid_seal"], rows["birch", "lid_seal"]) != ("later", "later")
    assert rows["alder", "lid_seal"] == "later"
    soon = {r["state"] for r in told("care", "due", "--soon")["due"]}
    assert soon <= {"overdue", "today", "soon"}
    assert "No figure of its first day" in said("care", "figure", "alder", "heat_up", "12:30")
    assert said("care", "figure", "alder", "heat_up", "soon", code=2)
    row = told("care", "figure", "alder", "heat_up", "12:30")
    assert (row["fryer"], row["figure"], row["last"]) == ("alder", "heat_up", "12:30")


def test_a_plate_a_measurement_and_a_step_of_commissioning(said, told):
    """Volts too many are a no-go in words; what is not name=value is named; signed, a step is done."""
    plate = ("serial=A-1", "fuel=electric", "volts=208", "phases=3", "power=10 kW")
    assert "kept" in said("care", "plate", "alder", *plate)
    assert "name=value" in said("care", "plate", "alder", "serial", code=2)
    line = said("care", "measured", "alder", "volts=240")
    assert "fails voltage: 240 V measured, 208 V on the plate: 133.1 %" in line
    who = ("who=Ana", "role=technician", "pass_name=Olive", "pass_reason=electrician comes on Monday")
    line = said("care", "sign", "alder", "survey", *who)
    assert line.startswith("Signed. Still open: ")
    still = line.removeprefix("Signed. Still open: ").rstrip(".").split(", ")
    assert "survey" not in still and "first_heat" in still
    assert said("care", "sign", "alder", "fill", "who=Ana", "role=lead", code=2)
    assert told("care", "handover", "alder")["open"] == still


def test_the_second_of_two_is_asked_for_a_secret_of_their_own(place, said):
    """Where there are accounts, and before anything is kept."""
    who = ("who=Kim Vale", "role=technician", "pass_name=Olive", "pass_reason=electrician comes on Monday")
    sign = ["care", "sign", "alder", "survey", *who, "second=Ana Vale", "--store", place]
    said("care", "plate", "alder", "serial=A-1", "fuel=electric", "volts=208", "phases=3", "power=10 kW")
    said("people", "owner", "Ana Vale", "--password", SECRET)
    with opened(place) as store:
        before = store.last().number
    left = CliRunner().invoke(app, sign, input="")
    assert "PIN or password of Ana Vale" in left.output
    assert left.exit_code != 0
    with opened(place) as store:
        assert store.last().number == before
    good = CliRunner().invoke(app, sign, input=f"{SECRET}\n")
    assert (good.exit_code, "Signed. Still open: " in good.output) == (0, True)


def test_the_close_of_the_day_says_what_is_open_and_what_is_shut(said, told):
    """The lid waits for the heat to be off; signed, the step has its mark and opens the next."""
    before = said("care", "close")
    assert "[ ] alder heat_off" in before
    assert "[#] alder lid" in before
    assert said("care", "close", "alder", "filter", "--who", "Ana Vale", code=2)
    after = said("care", "close", "alder", "heat_off", "--who", "Ana Vale")
    assert "[x] alder heat_off" in after
    assert "[ ] alder lid" in after
    assert "[#] birch lid" in after
    view = told("care", "close")
    alder = next(f for f in view["fryers"] if f["key"] == "alder")
    assert [s["key"] for s in alder["steps"] if s["done"]] == ["heat_off"]
    lid = next(s for s in alder["steps"] if s["key"] == "lid")
    assert after.startswith("Two people for every move of oil")
    assert f"{lid['title']} ! {lid['hazard']}" in after
    steps = [s for f in view["fryers"] for s in f["steps"]] + view["store"]
    now_open = [s for s in steps if s["hazard"] and not s["done"] and not s["shut"]]
    assert after.count(" ! ") == len(now_open)


@pytest.mark.parametrize(
    ("typed", "name", "holds"),
    [
        (("care", "wall"), "w.pdf", ("Alder", "Dogwood")),
        (("care", "emergency"), "e.pdf", ("extinguisher", "Juniper Ridge")),
        (("care", "handover", "alder"), "h.pdf", ("Alder",)),
        (("oil", "moves"), "m.pdf", ("Oil map", "egg, milk, wheat", "Cedar", "claim nothing free")),
    ],
)
def test_a_paper_is_written_where_it_is_asked_for(said, tmp_path, typed, name, holds):
    """It says what it is for; a place that cannot be written is said and no traceback."""
    said(*typed, "--out", name)
    text = words((tmp_path / name).read_bytes())
    assert all(part in text for part in holds)


def test_the_calendar_is_written(said, tmp_path):
    """One event once something has a day."""
    said("care", "done", "alder", "lid_seal", "--who", "Ana Vale")
    assert said("care", "calendar", "--out", "c.ics") == "c.ics written."
    assert (tmp_path / "c.ics").read_bytes().count(b"BEGIN:VEVENT\r\n") == 1
    assert "can be written" in said("care", "calendar", "--out", "nowhere/c.ics", code=2)


# ---------------------------------------------------------------- oil


def test_a_check_of_the_meter_is_kept_as_typed(place, said, told):
    """Fresh and worn oil, known and read, and whose meter; one too far off is refused."""
    number = told("oil", "meter", "8", "9", "24", "23.5", "--meter", "M1", "--who", "Ana Vale")["number"]
    assert number == 2
    fact = newest(place, MeterChecked)
    assert (fact.low_known_pct, fact.low_read_pct, fact.high_known_pct, fact.high_read_pct) == (
        8,
        9,
        24,
        23.5,
    )
    assert fact.meter == "M1"
    assert said("oil", "meter", "8", "19", "24", "23.5", code=2)


def test_moves_of_oil_are_listed_with_what_is_against_them(place, said, told):
    """Both ways between each two vats; older oil never goes into fresher."""
    assert len(told("oil", "moves")["moves"]) == 12
    said("oil", "log", "alder", "reading", "20", "--who", "Ana Vale")
    lines = said("oil", "moves")
    assert "Cedar, open fryer: Bone-in chicken, 8-piece, Potato wedges, Tenders; carries egg, milk" in lines
    assert "into Birch, five-head pressure vat: Older oil never goes into fresher" in lines
    assert "Birch, five-head pressure vat into Cedar, open fryer: nothing is against it." in lines


def test_cartons_are_ordered_less_those_on_hand(said, told):
    """Two on hand are two fewer to order; sixty-one days are refused."""
    need = told("oil", "order", "7")
    line = said("oil", "order", "7", "--on-hand", "1")
    assert f"Order cartons: {need['cartons'] - 1}. Top-up {need['top_up_cartons']}" in line
    assert "less 1 on hand" in line
    assert said("oil", "order", "61", code=2)


def test_the_bill_of_the_oil_takes_time_and_pay(said, told):
    """An hour's change at twenty an hour costs more than at none; gaps in the log come first."""
    said("oil", "log", "alder", "top_up", "5 lb")
    said("oil", "log", "alder", "discard")
    bare = told("oil", "cost", "60 kg", "--hour-money", "0")
    paid = told("oil", "cost", "60 kg", "--change", "60 min", "--hour-money", "20")
    assert bare["labour_money"] == 0
    assert paid["labour_money"] > bare["labour_money"]
    assert paid["day_money"] == pytest.approx(
        paid["uptake_money"] + paid["discard_money"] + paid["labour_money"], abs=0.02
    )
    lines = said("oil", "cost", "60 kg", "--change", "60 min", "--hour-money", "20")
    assert lines.startswith("Log gap, before anything else: Birch")
    assert f"labour {paid['labour_money']:.2f}" in lines
    assert f"{paid['per_raw_lb_money']:.3f} a raw lb" in lines


def test_stores_stand_side_by_side(place, said):
    """One without raw product on record is unknown, and why; a file that is not there is named."""
    line = said("oil", "sites", place)
    assert "Juniper Ridge Chicken (invented)" in line
    assert ": unknown. oil log is empty" in line
    assert "a file that exists" in said("oil", "sites", "none.db", code=2)


# ---------------------------------------------------------------- records


def test_a_reading_below_its_limit_opens_a_case(said, told):
    """Above it an entry; below it a case that is open, what was found and what is missing."""
    probe = ("records", "probe", "alder", "bone_in")
    who = ("--thermometer", "T1", "--pieces", "16", "--who", "Ana Vale")
    assert "it meets the limit you set" in said(*probe, "180F", *who)
    assert told(*probe, "181F", *who)["case"] is None
    below = said(*probe, "150F", *who)
    assert below.startswith("Below the limit: case ")
    assert "The whole load back in the oil" in below
    number = int(below.split("case ")[1].split()[0])
    line = said("records", "case")
    assert f"{number} OPEN Bone-in chicken, 8-piece Alder" in line
    assert "read 150 °F" in line
    assert "not before: " in line
    recook = said("records", "case", str(number), "recook", "who=Ana Vale")
    assert "recook" in recook and "(Ana Vale)" in recook
    assert said("records", "case", str(number), "closed", "who=Ana Vale", code=2)


def test_a_sale_is_traced_and_gaps_are_said(said):
    """Without a board no load could have been there; a day that is none is refused."""
    assert "No load on record" in said("records", "trace", "bone_in", "2026-11-25T18:40")
    assert "a day and time" in said("records", "trace", "bone_in", "yesterday", code=2)


def test_a_record_is_copied_and_brought_into_new_stores(place, said, told, tmp_path):
    """Export into an empty store and a backup: the same entries with the same hashes."""
    said("care", "person", "Kim Vale")
    got = CliRunner().invoke(app, ["records", "export", place])
    (tmp_path / "lines.jsonl").write_text(got.stdout, "utf-8")
    assert "2 entries, chain unbroken" in got.stderr
    assert json.loads(got.stdout.splitlines()[0])["number"] == 1
    table = CliRunner().invoke(app, ["records", "export", place, "--csv"]).stdout
    assert table.splitlines()[0].count(",") > 4
    assert len(table.splitlines()) > 2
    copy = told("records", "backup", "b.zip")
    assert (copy["entries"], copy["files"], copy["file"]) == (2, 0, "b.zip")
    for typed, name in ((("import", "lines.jsonl"), "a.db"), (("restore", "b.zip"), "b.db")):
        got = CliRunner().invoke(app, ["records", *typed, "--store", name, "--json"])
        assert json.loads(got.stdout)["entries"] == 2
        with opened(name) as store, opened(place) as first:
            assert store.verify() == first.verify()
            assert remembered_kitchen(store) == remembered_kitchen(first)
    lost = CliRunner().invoke(app, ["records", "import", "none.jsonl", "--store", "c.db"])
    assert (lost.exit_code != 0, "No file at none.jsonl" in lost.output) == (True, True)


# ---------------------------------------------------------------- many sites


def test_a_release_goes_out_in_waves_and_is_halted(place, said, told, tmp_path):
    """Waves of one, two and the rest; the first begins, the second waits for read-backs; halted it stays."""
    others = [demo_store(tmp_path / f"{name}.db") for name in ("one", "two", "three", "four")]
    release = ("fleet", "release", "tenders dogwood", "one", "two", "three", "four", "--who", "Ana Vale")
    assert said(*release, "--most-below", "3%") == "Release 2: waves 3, sites in each 1, 2, 1."
    assert newest(place).payload["most_below_frac"] == pytest.approx(0.03)
    assert said(*release, code=2)
    wave = ("fleet", "wave", "2", *others, "--who", "Ana Vale")
    assert said(*wave) == "Wave begun at one."
    assert "read back by every site" in said(*wave, code=2)
    assert said("fleet", "releases") == "2 tenders dogwood version 1: wave 1 of 3, open"
    assert said("fleet", "halt", "2", "--who", "Ana Vale", "--reason", "two readings below") == (
        "Release 2 is halted."
    )
    assert told("fleet", "releases")["rows"][0]["state"] == "halted"
    assert "version before" in said("fleet", "rollback", "2", code=2)


def test_read_backs_of_a_file_are_kept_once(said, tmp_path):
    """A line that cannot be read says why; the same line again is known."""
    (tmp_path / "backs.jsonl").write_text('{"program": "x"}\n\nnonsense\n', "utf-8")
    lines = said("fleet", "readbacks", "backs.jsonl")
    assert "line 1: " in lines and "an object with program" in lines
    assert "line 3: " in lines and "line 2" not in lines
    assert "a file that can be read" in said("fleet", "readbacks", "none.jsonl", code=2)


def test_sites_are_compared_and_too_few_is_said(place, said):
    """One store alone: every ratio is unknown or too few, none is called good."""
    lines = CliRunner().invoke(app, ["fleet", "compare", place]).stdout.splitlines()
    assert lines
    assert all(line.startswith("s: ") for line in lines)
    assert any("unknown (0)" in line for line in lines)
    assert "a file that exists" in said("fleet", "compare", "none.db", code=2)


def test_a_name_is_taken_out_when_its_bearer_has_left(place, said):
    """Still at work it stays; gone, no entry tells it, and the chain holds."""
    said("care", "person", "Kim Vale")
    reason = ("--reason", "left, and asked for it")
    assert "say so on the page of people first" in said("people", "remove", "Kim Vale", *reason, code=2)
    said("care", "person", "Kim Vale", "--left")
    gone = said("people", "remove", "Kim Vale", *reason)
    assert gone.startswith("Kim Vale is removed. ") and "It stays in backups" in gone
    got = CliRunner().invoke(app, ["records", "export", place, "--csv"])
    assert (got.exit_code, "Kim Vale" in got.stdout, "removed" in got.stdout) == (0, False, True)


def test_a_hash_kept_elsewhere_is_looked_for(place):
    """The entry of that number must still have it; a text that is none is refused."""
    with opened(place) as store:
        head = store.last()
    verify = ["records", "verify", place, "--expect"]
    good = CliRunner().invoke(app, [*verify, f"{head.number}:{head.hash[:8].upper()}"])
    assert (good.exit_code, "1 entry, chain unbroken" in good.output) == (0, True)
    for kept, says in (("1:00000000", "is not the one"), ("9:00000000", "is not the one")):
        bad = CliRunner().invoke(app, [*verify, kept])
        assert (bad.exit_code != 0, says in " ".join(bad.output.split())) == (True, True)
    for text in ("1", "1:0000000", "x:00000000", "1:zzzzzzzz"):
        bad = CliRunner().invoke(app, [*verify, text])
        assert (bad.exit_code, "a number and a hash" in bad.output) == (2, True)


def test_a_sweep_says_of_each_site_how_many_failed_and_what_breaks_first(tmp_path, monkeypatch):
    """In the kitchen's degrees where one is there, else in kelvin; a site that cannot be proved says why."""
    row = SiteProof(
        site="east",
        program="tenders",
        outcome="fails",
        failed_count=3,
        samples_count=128,
        bound_frac=0.93599,
        confidence_frac=0.95,
        worst_cut="Tender",
        worst_margin_k=-2.0,
        breaks_first="load_frac",
    )
    bad = SiteProof(site="west", problem="nonsense")
    monkeypatch.setattr(
        fleet, "sweep", lambda sites, **asked: [replace(row, site=s.name) for s in sites] + [bad]
    )
    for name in ("east", "north"):
        (tmp_path / f"{name}.toml").write_text(demo_text(), "utf-8")
    files = [str(tmp_path / f"{name}.toml") for name in ("east", "north")]
    got = CliRunner().invoke(app, ["fleet", "sweep", *files, "--store", files[0]])
    lines = got.stdout.splitlines()
    assert got.exit_code == 0, got.output
    assert [line.split()[0] for line in lines] == ["east", "north", "west"]
    assert "3 of 128 failed (at least 93.5 % at 95 % confidence)" in lines[0]
    assert "worst Tender −3.6 °F" in lines[0] or "worst Tender -3.6 °F" in lines[0]
    assert lines[2].endswith(": nonsense")
    assert "fit" not in got.stdout

    def quick(sites, *, few, **asked):
        return [replace(row, fitted_count=99 * few)]

    monkeypatch.setattr(fleet, "sweep", quick)
    told = CliRunner().invoke(app, ["fleet", "sweep", files[0], "--few", "--store", files[0]]).stdout
    assert "; 99 of them counted by a fit, so this is no certificate" in told


def test_a_log_is_exported_to_any_stream(place):
    """The lines are the chain's own bytes: read in again they verify."""
    from frywright.ledger.backup import import_lines

    text = CliRunner().invoke(app, ["records", "export", place]).stdout
    with opened("again.db") as store:
        assert import_lines(io.BytesIO(text.encode()), store) == 1


@pytest.mark.parametrize(
    "typed",
    [
        ("care", "card-edit", "lid_seal", "none.txt", "--who", "Ana"),
        ("care", "card-edit", "lid_seal", "--picture", "none.png", "--who", "Ana"),
        ("care", "card-sign", "lid_seal", "alder", "--who", "Ana", "--second", "Bo", "--photo", "none.png"),
        ("care", "plate", "alder", "volts=208", "--photo", "none.png"),
        ("probe", "hold", "s.db", "none.csv"),
        ("day", "plan", "--check", "none.json"),
        ("fleet", "readbacks", "none.csv"),
    ],
)
def test_a_file_that_is_not_there_is_named(said, typed, monkeypatch):
    """And nothing is a fault of ours."""
    monkeypatch.setattr(day, "_tuned_bench", lambda bench, kitchen: bench)
    if typed[0] == "day":
        said("day", "sales")
    line = said(*typed, code=2)
    assert "a file that can be read" in line and "none." in line


def test_steps_that_are_no_text_are_refused(said, tmp_path):
    """A picture taken for the steps of a card."""
    (tmp_path / "steps.png").write_bytes(b"\x89PNG\r\n\xff")
    assert "a text file in UTF-8" in said(
        "care", "card-edit", "lid_seal", "steps.png", "--who", "Ana", code=2
    )
