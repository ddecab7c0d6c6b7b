"""The end of a file's time: what may go goes, on record, by two people; what is needed stays, and nothing
goes unseen.
"""

from __future__ import annotations

import datetime as dt
import io
import json

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.attachments import attachments_of
from frywright.ledger.backup import backup, restore
from frywright.ledger.checking import checked
from frywright.ledger.facts.care import ReportAttached
from frywright.ledger.facts.day import FilesDropped
from frywright.ledger.facts.probing import LogKept
from frywright.ledger.store import Store
from frywright.model.errors import InputError, RecordError
from frywright.rooms.clock import Hall, acting, here, now, played
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.rooms.readings import tell_probe
from frywright.rooms.records import people, retention
from frywright.trial.kitchens import demo_text
from tests.browsers import browser

PASSWORD = "oak leaf river stone"
TOLD = {"years": "3", "who": "Ana Vale", "second": "Ben Ford", "reason": "three years are over"}


def kept_file(store, text):
    """A file beside the store."""
    return attachments_of(store).keep(io.BytesIO(text.encode()))[0]


def report(store, sha):
    """A report, of the present moment."""
    write(store, ReportAttached(of_number=1, name="r.pdf", sha256=sha, size_bytes=9, who="Ana Vale"))


@pytest.fixture
def store(tmp_path):
    """A kitchen whose files are of four years ago, one of them needed by a log, one attached again now."""
    found = Store.file(tmp_path / "r.db", now)
    with played(now() - dt.timedelta(days=4 * 366)):
        remember_kitchen(found, demo_text(), "demo.toml")
        for text in ("old one", "old two", "needed by a log", "attached again"):
            report(found, kept_file(found, text))
        sha = kept_file(found, "needed by a log")
        write(found, LogKept(name="l.csv", sha256=sha, size_bytes=15))
    report(found, kept_file(found, "attached again"))
    report(found, kept_file(found, "new"))
    yield found
    found.close()


def there(store):
    """Texts of the files beside the store."""
    return {p.read_text() for p in attachments_of(store).folder.iterdir()}


def test_only_what_is_old_and_not_needed_goes_and_the_record_stays_whole(store, tmp_path):
    """The chain as before, verify content, a backup is made and put back; what went is on record."""
    before = [item.hash for item in store.entries()]
    found = retention.drop_old_files(store, TOLD)
    assert len(found.names) == 2 and found.size_bytes == 14
    assert there(store) == {"needed by a log", "attached again", "new"}
    assert [item.hash for item in store.entries()][: len(before)] == before
    assert checked(store, now()).lost == {}
    (fact,) = store.facts(FilesDropped)
    assert (fact.fact.names, fact.fact.second) == (found.names, "Ben Ford")
    with pytest.raises(RecordError, match="dropped at the end of its time, or is lost"):
        attachments_of(store).open(found.names[0])
    backup(store, tmp_path / "b.zip")
    new = Store.file(tmp_path / "new" / "n.db", now)
    restore(tmp_path / "b.zip", new)
    assert checked(new, now()).lost == {}
    with pytest.raises(InputError, match="no file is that old"):
        retention.drop_old_files(store, TOLD)


def test_a_dry_run_drops_nothing(store):
    """It says what would go."""
    assert len(retention.old_files(store, 3).names) == 2
    assert retention.old_files(store, 5).names == ()
    assert len(there(store)) == 5 and not list(store.facts(FilesDropped))


@pytest.mark.parametrize(
    "change",
    [
        {"years": "1"},
        {"years": "31"},
        {"years": "²"},
        {"years": ""},
        {"years": "5"},
        {"second": ""},
        {"second": "ana vale"},
        {"reason": "x"},
    ],
)
def test_it_is_refused_and_nothing_goes(store, change):
    """Too young, no number, nothing that old, one person alone, no reason."""
    with pytest.raises(InputError):
        retention.drop_old_files(store, {**TOLD, **change})
    assert len(there(store)) == 5 and not list(store.facts(FilesDropped))


def test_an_open_case_keeps_every_file(store):
    """It may ask for them; nor does anything go where the second person did not confirm."""
    with acting(Hall(author="Ana Vale", second="")), pytest.raises(InputError, match="confirmed here"):
        retention.drop_old_files(store, TOLD)
    told = {"fryer": "cedar", "product": "bone_in", "temp": "150F", "thermometer": "T1", "who": "Ana Vale"}
    tell_probe(store, remembered_kitchen(store), told)
    with pytest.raises(InputError, match="closed first"):
        retention.drop_old_files(store, TOLD)
    assert len(there(store)) == 5


def test_a_file_taken_away_by_hand_is_still_missed(store):
    """Only what was dropped on record is not; one that is attached again afterwards is needed again."""
    found = retention.drop_old_files(store, TOLD)
    next(p for p in attachments_of(store).folder.iterdir() if p.read_text() == "new").unlink()
    assert len(checked(store, now()).lost) == 1
    report(store, found.names[0])
    assert len(checked(store, now()).lost) == 2


def test_a_file_handed_in_lately_stays_however_old_its_day(store):
    """Its time begins when it came."""
    fact = ReportAttached(of_number=1, name="r.pdf", sha256=kept_file(store, "late"), size_bytes=4, who="Ana")
    write(store, fact, happened_at=now() - dt.timedelta(days=4 * 366))
    assert len(retention.drop_old_files(store, TOLD).names) == 2
    assert "late" in there(store)


def test_another_kitchen_of_the_store_keeps_what_it_needs(store):
    """Files belong to all of them."""
    with played(now() - dt.timedelta(days=4 * 366)):
        report(store.at("east"), kept_file(store, "old one"))
    assert len(retention.drop_old_files(store, TOLD).names) == 1
    assert "old one" in there(store)


def test_the_terminal_says_first_and_drops_when_told(store, tmp_path):
    """Without --really nothing goes."""
    run = CliRunner()
    command = ["records", "drop", "3", "--store", str(tmp_path / "r.db")]
    said = run.invoke(app, command)
    assert said.exit_code == 0 and "that would be dropped: 2 (" in said.output
    assert len(there(store)) == 5
    more = ["--really", "--who", "Ana Vale", "--second", "Ben Ford", "--reason", "time is over", "--json"]
    done = run.invoke(app, [*command, *more])
    assert json.loads(done.output)["dropped"] is True and len(there(store)) == 3


def test_the_owner_drops_them_on_the_page_with_a_second_person(store):
    """Shown first; without that person's PIN nothing goes."""
    people.add_account(store, "Olive Zed", "owner", PASSWORD)
    people.add_account(store, "Kim Vale", "lead", PASSWORD, "1357", "Olive Zed")
    client = browser(store, page=True)
    client.post("/sign-in", data={"name": "Olive Zed", "secret": PASSWORD})
    page = client.get("/records/people?years=3").text
    assert "Files of before " in page and ": 2, " in page and 'name="second_pin"' in page
    assert client.get("/records/people?years=1").status_code == 422
    form = {"years": "3", "second": "Kim Vale", "reason": "time is over"}
    assert client.post("/records/people/files", data={**form, "second_pin": "9999"}).status_code == 422
    assert len(there(store)) == 5
    assert client.post("/records/people/files", data={**form, "second_pin": "1357"}).status_code in (200, 303)
    assert len(there(store)) == 3
    (fact,) = store.facts(FilesDropped)
    assert (fact.fact.who, fact.fact.second) == ("Olive Zed", "Kim Vale")


@pytest.mark.parametrize(
    ("second", "typed", "done"),
    [
        ("Kim Vale", "1357", True),
        ("Kim Vale", "9999", False),
        ("Kim Vale", PASSWORD, True),
        ("Ben Ford", "1357", False),
    ],
)
def test_on_the_terminal_the_second_person_confirms_with_a_secret_of_their_own(
    store, tmp_path, second, typed, done
):
    """Where people have accounts; the PIN is asked for, not shown, and stands in no option."""
    people.add_account(store, "Olive Zed", "owner", PASSWORD)
    people.add_account(store, "Kim Vale", "lead", PASSWORD, "1357", "Olive Zed")
    command = ["records", "drop", "3", "--store", str(tmp_path / "r.db"), "--really", "--json"]
    command += ["--who", "Olive Zed", "--second", second, "--reason", "time is over"]
    told = CliRunner().invoke(app, command, input=f"{typed}\n")
    assert (told.exit_code == 0) == done
    assert len(there(store)) == (3 if done else 5)
    assert typed not in told.output and here().second is None
