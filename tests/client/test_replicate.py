"""A site's record at its office: every entry once, whatever the line does; releases there and back."""

from __future__ import annotations

import datetime as dt
import io
import json
import random
import re
from dataclasses import replace

import pytest
import sqlalchemy as sa
from fastapi.testclient import TestClient
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.client.http import Client
from frywright.client.replicate import replicate
from frywright.ledger.anchors import anchored, read_anchors
from frywright.ledger.attachments import attachments_of
from frywright.ledger.backup import backup, restore
from frywright.ledger.export import as_row
from frywright.ledger.facts.cook import ProgramSaved
from frywright.ledger.facts.fleet import ForkSeen
from frywright.ledger.facts.probing import LogKept
from frywright.ledger.store import Store
from frywright.model.entry import GENESIS, chain_hash
from frywright.model.errors import AccessError, InputError, RecordError
from frywright.rooms.clock import now
from frywright.rooms.cook.programs import save_program
from frywright.rooms.fleet import office as office_room
from frywright.rooms.fleet.arrivals import arrive, leave_release, take_release, waiting
from frywright.rooms.fleet.kitchens import await_kitchen, kitchen_at
from frywright.rooms.fleet.office import anchors_of, released_to, rewritten
from frywright.rooms.fleet.release import halt, next_wave, open_release
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records.people import add_account
from frywright.trial.predicted import Answerer
from frywright.web.kitchens import Kitchens
from tests.browsers import HOST, browser
from tests.demo import kitchen_store


class Line(Client):
    """The client over a line in the test's own hands: what it drops, doubles or cuts off after the answer."""

    def __init__(self, pages: TestClient, token: str, luck: random.Random | None = None) -> None:
        super().__init__(address=HOST, token=token)
        object.__setattr__(self, "pages", pages)
        object.__setattr__(self, "luck", luck)

    def _asked(self, method, path, data, headers, key):
        body = data if data is None or isinstance(data, bytes) else (data.seek(0), data.read())[1]
        sent = {"authorization": f"Bearer {self.token}", "accept": "application/json", **headers}
        chance = self.luck.random() if self.luck else 1.0
        if chance < 0.1:
            raise RecordError("the line is cut before it arrives")
        for _ in range(2 if chance < 0.2 else 1):
            answer = self.pages.request(method, f"{HOST}/api/v1/{path}", content=body, headers=sent)
        if 0.2 <= chance < 0.3:
            raise RecordError("the line is cut before the answer")
        if answer.status_code in (401, 403):
            raise AccessError(answer.json()["message"])
        if answer.status_code >= 400:
            raise RecordError(str(answer.json().get("message", answer.text)))
        return answer.json()


@pytest.fixture
def office(tmp_path):
    """An office with an owner and a kitchen of its own."""
    store = kitchen_store(tmp_path / "office.db")
    add_account(store, "Ana Vale", "owner", "a long enough one")
    yield store
    store.close()


@pytest.fixture
def pages(office):
    return TestClient(Kitchens(office), base_url=HOST)


@pytest.fixture
def site(tmp_path):
    """A site's own store, on its own machine."""
    store = kitchen_store(tmp_path / "site" / "own.db")
    yield store
    store.close()


def filled(store, count, name="log.csv"):
    """So many logs, each an entry with a file."""
    for n in range(count):
        sha, size = attachments_of(store).keep(io.BytesIO(f"{name} {n}".encode() * 50))
        write(store, LogKept(name=f"{n}.csv", sha256=sha, size_bytes=size))


def same(office, key, site):
    """The office holds what the site holds, entry for entry, and every file."""
    there = office.at(key)
    assert [(e.number, e.hash) for e in there.entries()] == [(e.number, e.hash) for e in site.entries()]
    assert there.verify() == site.verify()
    for item in site.facts(LogKept):
        attachments_of(office).open(item.fact.sha256).close()


def test_a_record_arrives_whole_and_goes_on_where_it_stood(office, pages, site):
    """Months offline, then everything; then what is new; then nothing."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    filled(site, 5)
    first = replicate(site, Line(pages, token))
    assert (first.entries_count, first.files_count) == (site.last().number, 5)
    same(office, key, site)
    filled(site, 2, "more")
    second = replicate(site, Line(pages, token))
    assert (second.entries_count, second.files_count) == (2, 2)
    assert replicate(site, Line(pages, token)).entries_count == 0
    same(office, key, site)
    assert remembered_kitchen(office.at(key)) == remembered_kitchen(site)


@pytest.mark.slow
@pytest.mark.parametrize("seed", range(4))
def test_a_bad_line_loses_nothing_and_doubles_nothing(office, pages, site, seed, monkeypatch):
    """A third of all calls is cut before or after it arrives, or comes twice; small messages."""
    monkeypatch.setattr("frywright.client.replicate.BLOCK_COUNT", 3)
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    line, failed = Line(pages, token, random.Random(seed)), 0
    for turn in range(60):
        if turn < 10:
            filled(site, 2, f"turn {turn}")
        try:
            replicate(site, line)
        except RecordError:
            failed += 1
    assert failed > 5
    replicate(site, Line(pages, token))
    same(office, key, site)


def test_what_comes_out_of_order_is_refused_and_what_comes_twice_is_known(office, pages, site):
    """The office says where it stands."""
    _, token = await_kitchen(office, "East Gate", "Ana Vale")
    filled(site, 3)
    rows = [as_row(item) for item in site.entries()]
    line = Line(pages, token)
    with pytest.raises(RecordError, match="does not follow entry 0"):
        line.write("sync/entries", {"rows": rows[1:]})
    assert line.read("sync")["number"] == 0
    line.write("sync/entries", {"rows": rows[:2]})
    line.write("sync/entries", {"rows": rows[:2]})
    told = line.write("sync/entries", {"rows": rows})
    assert (told["number"], told["hash"]) == (site.last().number, site.last().hash)


def test_a_changed_record_is_refused_and_noted_once(office, pages, site, tmp_path):
    """A store put back from an older backup, or bent: the office keeps the first and says so."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    replicate(site, Line(pages, token))
    other = kitchen_store(tmp_path / "other.db")
    filled(other, 1)
    for _ in range(2):
        with pytest.raises(RecordError, match="not the ones kept here"):
            replicate(other, Line(pages, token))
    rows = [as_row(item) for item in other.entries()]
    for _ in range(2):
        with pytest.raises(RecordError, match="not the one that was sent before"):
            Line(pages, token).write("sync/entries", {"rows": rows})
    assert [e.fact.key for e in office.facts(ForkSeen)] == [key]
    same(office, key, site)
    other.close()


def test_a_row_that_was_bent_on_the_way_is_refused(office, pages, site):
    """Its hash does not fit; nothing of the message is kept."""
    _, token = await_kitchen(office, "East Gate", "Ana Vale")
    rows = json.loads(json.dumps([as_row(item) for item in site.entries()]))
    rows[0]["author"] = "somebody else"
    with pytest.raises(RecordError, match="its hash does not fit"):
        Line(pages, token).write("sync/entries", {"rows": rows})
    rows[0] = {"number": 1}
    with pytest.raises(RecordError, match="is no entry of ours"):
        Line(pages, token).write("sync/entries", {"rows": rows})
    assert Line(pages, token).read("sync")["number"] == 0


def test_a_file_under_another_name_is_refused_and_harms_none(office, pages, site):
    """Not even one whose content is kept already."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    filled(site, 1)
    replicate(site, Line(pages, token))
    sha = next(iter(site.facts(LogKept))).fact.sha256
    with (
        attachments_of(site).open(sha) as stream,
        pytest.raises(RecordError, match="not the one of that name"),
    ):
        Line(pages, token).send(f"sync/files/{'0' * 64}", stream)
    same(office, key, site)


@pytest.mark.parametrize("named", ["", "../" * 8 + "etc/passwd"])
def test_what_a_site_has_not_sent_keeps_nobody_from_a_backup(office, pages, site, tmp_path, named):
    """A line that broke before the files, or a site that means harm; after a restore it sends them."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    filled(site, 1)
    if named:
        write(site, LogKept(name="x.csv", sha256=named, size_bytes=1))
    rows = [as_row(item) for item in site.entries()]
    Line(pages, token).write("sync/entries", {"rows": rows})
    assert backup(office, tmp_path / "b.zip").files_count == 0
    again = Store.file(tmp_path / "again.db", now)
    restore(tmp_path / "b.zip", again)
    assert again.at(key).verify() == site.verify()
    if not named:
        replicate(site, Line(pages, token))
        assert backup(office, tmp_path / "c.zip").files_count == 1
    filled(office, 1, "own")
    next(attachments_of(office).folder.glob(next(iter(office.facts(LogKept))).fact.sha256)).unlink()
    with pytest.raises(RecordError, match="is lost"):  # what it named itself
        backup(office, tmp_path / "d.zip")
    again.close()


def test_a_token_opens_its_own_record_only(office, pages, site):
    """Neither the pages, nor a record that nobody waits for; a tablet's token does not open it."""
    _, token = await_kitchen(office, "East Gate", "Ana Vale")
    from frywright.rooms.records.people import add_device

    stray = add_device(office, "stray", "site", "Ana Vale")
    crew = add_device(office, "tablet", "crew", "Ana Vale")
    with pytest.raises(AccessError, match="No kitchen here waits"):
        Line(pages, stray).read("sync")
    for bad in (crew, "nonsense"):
        with pytest.raises(AccessError):
            Line(pages, bad).read("sync")
    for path in ("/cook", "/records", "/api/v1/entries", "/at/east_gate/"):
        assert pages.get(path, headers={"authorization": f"Bearer {token}"}).status_code == 403


def test_nothing_is_written_into_a_copy_at_the_office(office, pages, site):
    """The record is the site's."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    replicate(site, Line(pages, token))
    there = kitchen_at(office, key)
    with pytest.raises(RecordError, match="keeps its own record elsewhere"):
        filled(there, 1)
    same(office, key, site)


def test_a_release_arrives_is_taken_and_its_halt_too(office, pages, site):
    """Nothing happens by itself: somebody takes it; a stop comes through as well."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    line = Line(pages, token)
    replicate(site, line)
    made = open_release(office, remembered_kitchen(office), "bone-in cedar", [key], "Ana Vale")
    assert replicate(site, line).releases_count == 0
    next_wave(office, made.number, {key: office.at(key)}, "Ana Vale")
    assert replicate(site, line).releases_count == 1
    assert replicate(site, line).releases_count == 0
    (one,) = waiting(site, remembered_kitchen(site))
    assert (one.program.name, one.halted, one.problem) == ("bone-in cedar", False, None)
    take_release(site, one.item.number, Answerer(by="Ana Vale", reason="the office asks"))
    assert not waiting(site, remembered_kitchen(site))
    assert not list(site.facts(ProgramSaved))  # it is the same as the version here already
    halt(office, made.number, "Ana Vale", "two readings below")
    replicate(site, line)
    (stop,) = waiting(site, remembered_kitchen(site))
    assert stop.halted
    with pytest.raises(InputError, match="not stopped"):
        take_release(site, stop.item.number)
    leave_release(site, stop.item.number, "version before is keyed")
    assert not waiting(site, remembered_kitchen(site))
    replicate(site, line)
    same(office, key, site)


@pytest.mark.slow
def test_a_changed_program_becomes_the_next_version_at_the_site(office, pages, site):
    """Under its own number there; what the page shows is what is saved; one that does not fit is left."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    line = Line(pages, token)
    replicate(site, line)
    kitchen = remembered_kitchen(office)
    program = kitchen.program("bone-in cedar").timed()
    stages = [
        *program.stages[:-1],
        replace(program.stages[-1], duration_s=program.stages[-1].duration_s + 60),
    ]
    for _ in range(2):
        kitchen = remembered_kitchen(office)
        newest = kitchen.program("bone-in cedar")
        stages[-1] = replace(stages[-1], duration_s=stages[-1].duration_s + 30.0)
        save_program(office, kitchen, replace(program, stages=tuple(stages), version=newest.version + 1))
    kitchen = remembered_kitchen(office)
    made = open_release(office, kitchen, "bone-in cedar", [key], "Ana Vale")
    next_wave(office, made.number, {key: office.at(key)}, "Ana Vale")
    replicate(site, line)
    before = remembered_kitchen(site).program("bone-in cedar").version
    own = browser(Kitchens(site), page=True)
    now_page = own.get("/").text
    assert "The office released bone-in cedar, version 3" in now_page and 'href="/releases"' in now_page
    page = own.get("/releases").text
    (one,) = waiting(site, remembered_kitchen(site))
    assert f"Against version {before} here" in page
    wrong = own.post("/releases/leave", data={"number": str(one.item.number), "reason": "no"})
    assert wrong.status_code == 422
    own.post("/releases/take", data={"number": str(one.item.number)})
    (saved,) = site.facts(ProgramSaved)
    assert (saved.fact.version, saved.fact.origin) == (before + 1, "carried")
    assert saved.fact.stages == kitchen.program("bone-in cedar").stages
    assert "Nothing from the office waits here" in own.get("/releases").text
    assert own.post("/releases/take", data={"number": str(one.item.number)}).status_code == 422


def test_the_office_shows_the_token_once_and_where_each_site_stands(office, pages, site):
    """On the page of kitchens; a fork is the loudest thing of its row."""
    pages.headers |= {"origin": HOST, "accept": "text/html"}
    pages.post("/sign-in", data={"name": "Ana Vale", "secret": "a long enough one"})
    made = pages.post("/kitchens/await", data={"name": "East Gate"}).text
    token = re.search(r"<pre>(\S+)", made)[1]
    assert token not in pages.get("/kitchens").text
    assert "Nothing has come from it yet" in pages.get("/kitchens").text
    bare = TestClient(Kitchens(office), base_url=HOST)
    replicate(site, Line(bare, token))
    assert "Newest entry: 2" in pages.get("/kitchens").text
    taken = pages.post("/kitchens/await", data={"name": "East Gate"})
    assert taken.status_code == 422 and 'aria-invalid="true"' in taken.text
    assert pages.post("/at/east_gate/cook/kitchen", data={"text": "x", "reason": "y"}).status_code in (
        409,
        422,
    )


@pytest.mark.parametrize(
    "address", ["http://office.example", "http://10.0.0.8:8377", "ftp://127.0.0.2", "office"]
)
def test_a_token_is_sent_over_tls_only(site, address):
    """But for this machine itself; nothing is asked before that is seen."""
    with pytest.raises(InputError, match="https://"):
        replicate(site, Client(address=address, token="secret"))


def test_an_entry_under_another_number_is_refused(office, pages, site):
    """Its hash is right for its place; only the number it gives itself is not."""
    _, token = await_kitchen(office, "East Gate", "Ana Vale")
    filled(site, 1)
    rows = [as_row(item) for item in site.entries()]
    with pytest.raises(RecordError, match="Entry 7 of the copy does not follow entry 1"):
        Line(pages, token).write("sync/entries", {"rows": [rows[0], {**rows[1], "number": 7}]})
    assert Line(pages, token).read("sync")["number"] == 0


def test_a_release_told_twice_arrives_once(office, pages, site):
    """Also where the office answers with what it told before."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    replicate(site, Line(pages, token))
    made = open_release(office, remembered_kitchen(office), "bone-in cedar", [key], "Ana Vale")
    next_wave(office, made.number, {key: office.at(key)}, "Ana Vale")
    told = released_to(office, key)
    assert (arrive(site, told), arrive(site, told)) == (1, 0)
    assert len(waiting(site, remembered_kitchen(site))) == 1


def rewrite(store, site=""):
    """Write a kitchen's chain anew behind the program's back: another first entry, every hash right."""
    items, link, rows = list(store.at(site).entries()), GENESIS, []
    for item in items:
        entry = replace(item.entry, author="somebody else") if item.number == 1 else item.entry
        own = chain_hash(link, item.number, entry, item.recorded_at)
        rows.append({"a": entry.author, "p": link, "h": own, "s": site, "n": item.number})
        link = own
    with store.engine.begin() as connection:
        connection.execute(sa.text("DROP TRIGGER IF EXISTS entry_no_update"))
        change = "UPDATE entry SET author = :a, previous_hash = :p, hash = :h WHERE site = :s AND number = :n"
        connection.execute(sa.text(change), rows)


def test_a_site_that_rewrote_its_past_is_found_by_the_offices_anchors_alone(office, pages, site, tmp_path):
    """Its own chain verifies; so does the office's copy, which was rewritten as well."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    filled(site, 2)
    replicate(site, Line(pages, token))
    (kept,) = anchors_of(office, key)
    assert read_anchors(kept.fact.text)[0].name == remembered_kitchen(site).site.name
    assert rewritten(office) == {}
    rewrite(site)
    rewrite(office, key)
    assert site.verify()[0] == office.at(key).verify()[0] == site.last().number
    assert "written anew" in str(rewritten(office)[key])
    runner, paper = CliRunner(), tmp_path / "anchors.txt"
    told = runner.invoke(app, ["fleet", "anchors", "--store", str(tmp_path / "office.db")])
    assert told.exit_code == 5 and kept.fact.text in told.stdout
    paper.write_text(told.stdout)
    verify = ["records", "verify", str(tmp_path / "site" / "own.db")]
    assert runner.invoke(app, verify).exit_code == 5  # for its triggers
    done = runner.invoke(app, [*verify, "--anchor", str(paper)])
    assert done.exit_code == 5 and "written anew" in done.output


def test_an_office_that_lost_its_copy_takes_no_other_past(office, pages, site):
    """The copy is gone, its anchor is not: what the site sends must be what it signed for."""
    key, token = await_kitchen(office, "East Gate", "Ana Vale")
    filled(site, 2)
    replicate(site, Line(pages, token))
    with office.engine.begin() as connection:
        connection.execute(sa.text("DROP TRIGGER IF EXISTS entry_no_delete"))
        connection.execute(sa.text("DELETE FROM entry WHERE site = :s"), {"s": key})
    before = list(site.entries())
    rewrite(site)
    with pytest.raises(RecordError, match="not the one that was sent before"):
        replicate(site, Line(pages, token))
    assert office.at(key).last().number == 0
    assert [e.fact.entry_number for e in office.facts(ForkSeen)] == [before[-1].number]


def test_an_office_keeps_an_anchor_of_a_site_twice_a_day_at_most(office, pages, site, monkeypatch):
    """However often it sends; one for another record, altered or doubled is refused."""
    _, token = await_kitchen(office, "East Gate", "Ana Vale")
    line = Line(pages, token)
    for n in range(3):
        filled(site, 1, f"turn {n}")
        replicate(site, line)
    (kept,) = anchors_of(office)
    with pytest.raises(RecordError, match="altered"):
        line.write("sync/anchor", {"text": kept.fact.text.replace("-2 - ", "-2 east ")})
    with pytest.raises(RecordError, match="anchor"):
        line.write("sync/anchor", {"text": f"{kept.fact.text} {kept.fact.text}"})
    other = anchored(office, office.last(), now(), "Office")
    with pytest.raises(RecordError):
        line.write("sync/anchor", {"text": other.text})
    monkeypatch.setattr(office_room, "ANCHOR_EVERY", dt.timedelta(0))
    filled(site, 1, "later")
    replicate(site, line)
    assert [e.fact.entry_number for e in anchors_of(office)] == [kept.fact.entry_number, site.last().number]
