"""What the commands of the record print: copies, anchors, packs, ends of terms, and the way to the office."""

from __future__ import annotations

import json
import tomllib
from contextlib import closing
from dataclasses import replace

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.client import replicate as client_side
from frywright.client.replicate import Sent
from frywright.ledger.accounts import Accounts
from frywright.ledger.store import Store
from frywright.model.errors import AccessError, RecordError
from frywright.rooms.clock import now
from frywright.rooms.records.people import add_account
from tests.demo import demo_store
from tests.paper import words
from tests.small import small_kitchen

SECRET = "oak leaf river stone"


@pytest.fixture
def run(said):
    """Runs a command on the store."""
    return said


def head(place) -> str:
    with closing(Store.named(place, now)) as store:
        return store.last().hash


def test_copies_say_what_is_in_them(run, place, tmp_path):
    """A backup, the store it is brought back into, and the store made of exported lines: one head."""
    assert run("records", "backup", "b.zip") == (
        "b.zip: entries 1, files 0, read back and checked."
        " Accounts, devices, birthdays and drafts are not in it."
    )
    back = ("records", "restore", "b.zip")
    assert run(*back, on="back.db") == "back.db: entries 1, files 0, chain unbroken."
    (tmp_path / "lines.jsonl").write_text(
        CliRunner().invoke(app, ["records", "export", place]).stdout, "utf-8"
    )
    assert run("records", "import", "lines.jsonl", on="lines.db") == "1 entry, chain unbroken."
    assert head("back.db") == head("lines.db") == head(place)
    assert run(*back, "--json", on="again.db")["last_hash"] == head(place)


def test_a_chain_is_walked_and_told(run, place):
    """How long it is, its head, and what was found beside it."""
    assert "1 entry, chain unbroken, checked " in run("records", "verify", place)
    assert run("records", "verify", place).endswith(f"last hash {head(place)}")
    told = run("records", "verify", place, "--json")
    assert (told["entries"], told["last_hash"], told["dropped"], told["guarded"]) == (1, head(place), 0, True)
    assert (told["files_lost"], told["strange"], told["clock_set_back"], told["others"]) == ({}, [], [], {})
    assert "No store" in run("records", "verify", "none.db", code=5)


def test_an_account_nobody_made_is_told_with_its_name(run, place):
    """As an error, so that a script notices."""
    with closing(Store.named(place, now)) as store:
        kept = add_account(store, "Ana Vale", "owner", SECRET)
        Accounts(store).keep(replace(kept, role="crew"))
    said = run("records", "verify", place, code=5)
    assert "Accounts, devices or sessions are not as the chain says: Ana Vale" in said


def test_an_anchor_kept_elsewhere_is_compared(run, place, tmp_path):
    """It is added to its file, drawn as a code, and found again; one of another store is not."""
    said = run("records", "anchor", "--out", "anchors.txt", "--picture", "a.svg")
    assert "Keep the line where nobody at the store can reach it." in said
    made = run("records", "anchor", "--out", "anchors.txt", "--json")
    with open("anchors.txt", encoding="utf-8") as file:
        lines = file.read().splitlines()
    assert len(lines) == 2 and lines[1] == made["anchor"] and lines[0] in said
    assert (made["number"], made["hash"], made["stamp"]) == (1, head(place), None)
    with open("a.svg", encoding="utf-8") as file:
        assert "<svg" in file.read()
    run("care", "person", "Kim Vale")
    seen = run("records", "verify", place, "--anchor", "anchors.txt")
    assert seen.count("anchor of entry 1 of ") == 2 and "as it was; key " in seen
    assert [
        a["number"] for a in run("records", "verify", place, "--anchor", "anchors.txt", "--json")["anchors"]
    ] == [1, 1]
    other = demo_store(tmp_path / "other.db")
    CliRunner().invoke(app, ["care", "person", "Lou Fell", "--store", other])
    run("records", "verify", other, "--anchor", "anchors.txt", code=5, on=other)
    assert "cannot be read" in run("records", "verify", place, "--anchor", "none.txt", code=5)


def test_a_pack_of_days_on_paper_and_in_tables(run, tmp_path):
    """Days that are none are refused with both; JSON is the pack's own view."""
    said = run("records", "pack", "2026-11-01", "2026-11-02", "--tables", "t.zip")
    assert said == "pack.pdf written."
    page = words((tmp_path / "pack.pdf").read_bytes())
    assert "2026-11-01" in page and "2026-11-02" in page
    assert (tmp_path / "t.zip").read_bytes().startswith(b"PK")
    assert run("records", "pack", "2026-11-01", "2026-11-02", "--json")["ok"]
    bad = run("records", "pack", "yesterday", "2026-11-02", code=2)
    assert bad == "range is yesterday to 2026-11-02; it must be days such as 2026-11-01."


def test_what_would_go_at_the_end_of_its_time(run, place):
    """Terms with their sources; nothing goes without --really, and then by two people."""
    terms = run("records", "drop-entries", "--json")["terms"]
    lines = run("records", "drop-entries")
    assert {t["key"] for t in terms} >= {"loads", "sales", "people", "care"}
    assert all(t["key"] in lines and t["source"] in lines for t in terms)
    assert all(t["least"] > 0 for t in terms)
    due = run("records", "drop-entries", "sales", "9", "--json")
    assert (due["count"], due["kinds"], due["dropped"]) == (0, {}, False)
    said = run("records", "drop-entries", "sales", "9")
    assert said.startswith("Entries of before ") and "that would be dropped: 0. Ask" in said
    files = run("records", "drop", "9")
    assert files.startswith("Files of before ") and "that would be dropped: 0 (0.0 MB)." in files
    assert run("records", "drop", "9", "--json")["dropped"] is False
    before = head(place)
    run("records", "drop", "9", "--really", "--who", "Ana", "--reason", "old", code=2)
    run("records", "drop-entries", "sales", "9", "--really", "--who", "Ana", "--reason", "old", code=2)
    assert head(place) == before


def test_the_way_to_the_office(run, monkeypatch, tmp_path):
    """Once, and it says what went; a token that is not there is refused; off this machine only over https."""
    (tmp_path / "token").write_text("abc\n", "utf-8")
    turn = ("fleet", "sync", "https://office.example", "--token-file", "token")
    seen = []

    def sent(store, client):
        seen.append((client.address, client.token, store.last().number))
        return Sent(entries_count=3, files_count=1, number=12, releases_count=2)

    monkeypatch.setattr(client_side, "replicate", sent)
    assert run(*turn) == "Sent: entries 3, files 1; the office holds 12. Releases that came: 2."
    assert run(*turn, "--json") == {"ok": True, "entries": 3, "files": 1, "number": 12, "releases": 2}
    assert seen == [("https://office.example", "abc", 1)] * 2
    assert "a file that can be read" in run(*turn[:-1], "none", code=2)


def test_a_line_that_breaks_is_tried_again_only_where_one_asked_for_it(
    run, monkeypatch, instead_of_sleep, tmp_path
):
    """With --every it says why and waits at least a second; without, it ends with the error."""
    (tmp_path / "token").write_text("abc", "utf-8")
    turn = ("fleet", "sync", "https://office.example", "--token-file", "token")
    errors, waits = [RecordError("the line is cut"), AccessError("no such token")], []

    def broken(store, client):
        if errors:
            raise errors.pop(0)
        return Sent(entries_count=0, files_count=0, number=12, releases_count=0)

    def rest(seconds):
        waits.append(seconds)
        if len(waits) == 3:
            raise KeyboardInterrupt

    monkeypatch.setattr(client_side, "replicate", broken)
    instead_of_sleep(rest)
    got = CliRunner().invoke(app, [*turn, "--every", "0.2", "--store", "s.db"])
    assert waits == [1.0, 1.0, 1.0]
    assert "the line is cut" in got.output and "no such token" in got.output
    assert "the office holds 12" in got.output
    errors.append(RecordError("the line is cut"))
    assert "the line is cut" in run(*turn, code=5)


def test_anchors_that_sites_signed_are_listed(run):
    """None before a site was sent."""
    assert run("fleet", "anchors").startswith("No site has sent an anchor yet")
    assert run("fleet", "anchors", "--json") == {"ok": True, "anchors": [], "rewritten": {}}


def test_the_demos_file_is_printed_as_it_is_and_a_file_is_counted(tmp_path):
    """The printed file can be read; a small bench is counted in words and in JSON."""
    file = tmp_path / "bench.toml"
    printed = CliRunner().invoke(app, ["kitchen", "demo"]).stdout
    assert tomllib.loads(printed)["kitchen"]["invented"] is True
    assert not printed.endswith("\n\n")
    file.write_text(small_kitchen("uk"), "utf-8")
    said = CliRunner().invoke(app, ["kitchen", "check", str(file)]).output
    assert said == "Bridge bench: fryers 1, products 1, programs 0. No problems.\n"
    told = json.loads(CliRunner().invoke(app, ["kitchen", "check", str(file), "--json"]).stdout)
    assert told == {
        "ok": True,
        "name": "Bridge bench",
        "fryers": 1,
        "products": 1,
        "programs": 0,
        "short": [],
    }


@pytest.mark.parametrize(
    ("make", "says"),
    [
        (lambda path: None, "no such file"),
        (lambda path: path.mkdir(), "this is a folder"),
        (lambda path: path.write_bytes(b"name = \xff"), "not UTF-8 text (byte 7)"),
        (lambda path: path.write_bytes(b"#" * 2_000_001), "larger than 2 MB"),
    ],
)
def test_a_file_that_is_no_kitchens_says_why_and_what_to_do(tmp_path, make, says):
    path = tmp_path / "k.toml"
    make(path)
    got = CliRunner().invoke(app, ["kitchen", "check", str(path)])
    assert got.exit_code != 0
    assert says in " ".join(got.output.split())


def test_a_link_to_the_company_in_words(run):
    run("people", "owner", "Ana Vale", "--password", SECRET)
    said = run(
        "people",
        "link",
        "Ana Vale",
        "--subject",
        "s-1",
        "--issuer",
        "https://id.example/",
        "--reason",
        "asked",
    )
    assert said == "Ana Vale is linked."


SECONDS = [
    ("records", "drop", "9", "--really", "--who", "Ana Vale", "--reason", "their time is over"),
    ("records", "drop-entries", "sales", "9", "--really", "--who", "Ana Vale", "--reason", "time is over"),
    ("care", "close", "alder", "oil_level", "--who", "Ana Vale"),
    ("care", "card-sign", "filter_open", "cedar", "--who", "Ana Vale"),
]


@pytest.mark.parametrize("typed", SECONDS, ids=lambda t: t[1])
def test_the_second_of_two_shows_a_secret_of_their_own(run, place, typed):
    """Where the store has accounts; without one nothing is done, whatever the act."""
    run("people", "owner", "Ana Vale", "--password", SECRET)
    before = head(place)
    got = CliRunner().invoke(app, [*typed, "--second", "Bo Vale", "--store", place], input="")
    assert got.exit_code != 0
    assert "PIN or password of Bo Vale" in got.output
    assert head(place) == before
