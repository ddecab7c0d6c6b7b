"""What the pack, the terminal and the page say of entries that were dropped."""

from __future__ import annotations

import datetime as dt
import json
import re

import pytest
from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.facts.dropping import EntriesDropped
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from frywright.rooms.records import people
from frywright.rooms.records.dropping import drop_entries
from frywright.rooms.records.pack import gaps, gather
from tests.browsers import browser
from tests.ledger.dropped.drops import LONG_AGO, PASSWORD, TOLD, filled


def test_the_pack_of_those_days_says_what_was_dropped(tmp_path, kitchen):
    """How many, when, by whom and why; the pack of other days does not."""
    store = filled(Store.file(tmp_path / "p.db", now))
    drop_entries(store, TOLD)
    day = (now() - LONG_AGO).date()
    told = " ".join(gaps(kitchen, gather(store, kitchen, day - dt.timedelta(days=1), day)))
    assert "Entries of these days dropped at the end of their time: 6" in told
    assert "by Ana Vale and Ben Ford (entry 13): the time of these is over" in told
    today = now().date()
    assert "at the end of their time" not in " ".join(gaps(kitchen, gather(store, kitchen, today, today)))
    store.close()


@pytest.mark.parametrize(("typed", "done"), [("1357", True), ("9999", False)])
def test_on_the_terminal_the_second_person_confirms_with_a_pin(filed, typed, done):
    """Counted first; the PIN is asked for, not shown, and stands in no option."""
    people.add_account(filed, "Olive Zed", "owner", PASSWORD)
    people.add_account(filed, "Kim Vale", "lead", PASSWORD, "1357", "Olive Zed")
    run = CliRunner()
    command = ["records", "drop-entries", "loads", "2", "--store", str(filed.engine.url.database)]
    said = run.invoke(app, command)
    assert said.exit_code == 0 and "that would be dropped: 6." in said.output
    assert not list(filed.facts(EntriesDropped))
    more = ["--really", "--who", "Olive Zed", "--second", "Kim Vale", "--reason", "time is over", "--json"]
    told = run.invoke(app, [*command, *more], input=f"{typed}\n")
    assert (told.exit_code == 0) == done == bool(list(filed.facts(EntriesDropped)))
    assert typed not in told.output
    if done:
        checked_now = run.invoke(app, ["records", "verify", str(filed.engine.url.database)])
        assert checked_now.exit_code == 0 and "6 of them were dropped" in checked_now.output
    listed = run.invoke(app, ["records", "drop-entries", "--json", "--store", str(filed.engine.url.database)])
    assert [row["least"] for row in json.loads(listed.output)["terms"]] == [2, 3, 3, 3, 3]


@pytest.mark.slow
def test_the_owner_drops_them_on_the_page_with_a_second_person(tmp_path):
    """Shown first, by kind; without that person's PIN nothing goes; the entry's page says what it was."""
    store = Store.file(tmp_path / "w.db", now)
    filled(store)
    people.add_account(store, "Olive Zed", "owner", PASSWORD)
    people.add_account(store, "Kim Vale", "lead", PASSWORD, "1357", "Olive Zed")
    client = browser(store, page=True)
    client.post("/sign-in", data={"name": "Olive Zed", "secret": PASSWORD})
    page = client.get("/records/people?term=loads&entry_years=2").text
    assert re.search(r"Entries of before [\d-]+: 6\.", page) and "21 CFR 117.315(a)" in page
    assert client.get("/records/people?term=care&entry_years=2").status_code == 422
    assert client.get("/records/people?term=x&entry_years=2").status_code == 422
    form = {"term": "loads", "years": "2", "second": "Kim Vale", "reason": "time is over"}
    assert client.post("/records/people/entries", data={**form, "second_pin": "9999"}).status_code == 422
    assert not list(store.facts(EntriesDropped))
    done = client.post("/records/people/entries", data={**form, "second_pin": "1357"})
    assert done.status_code in (200, 303)
    (said,) = store.facts(EntriesDropped)
    assert (said.fact.who, said.fact.second) == ("Olive Zed", "Kim Vale")
    first = next(said.fact.numbers)
    shown = client.get(f"/records/entry/{first}").text
    assert "dropped" in shown and f'href="/records/entry/{said.number}"' in shown
    assert client.get("/records").status_code == 200
    store.close()
