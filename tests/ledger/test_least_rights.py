"""The role under which a server runs on PostgreSQL: it works, and can alter nothing that was kept."""

from __future__ import annotations

import datetime as dt
import subprocess
from pathlib import Path

import psycopg
import pytest
import sqlalchemy as sa
from examples import postgres as example
from examples.postgres import new_database
from fastapi.testclient import TestClient

from frywright.ledger.facts.probing import HoldRead
from frywright.ledger.replica import Followed, follow_all, take
from frywright.ledger.store import Store
from frywright.ledger.tables import METADATA
from frywright.model.errors import RecordError
from frywright.rooms import hall
from frywright.rooms.clock import now, played
from frywright.rooms.kitchen import remember_kitchen
from frywright.rooms.records import people
from frywright.rooms.records.dropping import drop_entries
from frywright.trial.kitchens import demo_text
from frywright.web.app import make_app
from tests.browsers import HOST, browser

RECIPE = Path(example.__file__).parent / "least_rights.sql"
PASSWORD = "oak leaf river stone"
HELD = {
    "kept_in": "cabinet",
    "product": "bone_in",
    "core_c": 65.0,
    "limit_c": 57.0,
    "thermometer": "T1",
    "checked": True,
    "corrected_c": None,
    "who": "Olive",
}


@pytest.fixture(scope="module")
def served(postgres, tmp_path_factory):
    """URL of a store as the server's role sees it, made by the owner and the recipe."""
    owner = new_database(postgres, "least")
    with psycopg.connect(owner, autocommit=True) as connection:
        connection.execute("DROP ROLE IF EXISTS fry_app")
        connection.execute("CREATE ROLE fry_app LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("FRYWRIGHT_FILES", str(tmp_path_factory.mktemp("files")))
        store = Store.named(owner, now)
        remember_kitchen(store, demo_text(), "demo.toml")
        store.close()
        psql = str(example.binaries() / "psql")
        command = [psql, "-q", "-v", "ON_ERROR_STOP=1", "-v", "app=fry_app", "-f", str(RECIPE), owner]
        done = subprocess.run(command, capture_output=True, text=True)
        assert done.returncode == 0, done.stderr
        yield owner.replace("//fry@", "//fry_app@")


@pytest.mark.slow
def test_the_server_works_under_its_role(served):
    """Reading, writing, accounts, devices and sessions, a repeat by its key; the chain is sound."""
    store = Store.named(served, now)
    people.add_account(store, "Olive", "owner", PASSWORD)
    token = people.add_device(store, "Till", "crew", "Olive")
    client = browser(store)
    assert client.post("/sign-in", data={"name": "Olive", "secret": PASSWORD}).status_code == 200
    assert client.get("/records").status_code == 200
    till = TestClient(make_app(store), base_url=HOST, headers={"authorization": f"Bearer {token}"})
    body, key = {"vat": "alder", "what": "filter"}, {"idempotency-key": "a"}
    assert till.post("/api/v1/oil", json=body, headers=key).json()["new"]
    assert not till.post("/api/v1/oil", json=body, headers=key).json()["new"]
    assert client.post("/sign-out").status_code in (200, 303)
    people.revoke_device(store, "Till", "Olive", "lost it")
    assert store.verify()[0] > 4
    store.close()


@pytest.mark.slow
@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE entry SET author = 'x'",
        "DELETE FROM entry",
        "TRUNCATE entry",
        "ALTER TABLE entry DISABLE TRIGGER ALL",
        "DROP TRIGGER entry_no_change ON entry",
        "DROP TABLE entry",
        "SET session_replication_role = replica",
        "CREATE TABLE mine (a int)",
        "CREATE OR REPLACE FUNCTION entry_kept() RETURNS trigger LANGUAGE sql AS $$ SELECT NULL $$",
        "UPDATE alembic_version SET version_num = '0001'",
        "GRANT ALL ON entry TO fry_app",
        "SELECT pg_read_file('/etc/passwd')",
        "COPY entry TO PROGRAM 'cat'",
    ],
)
def test_the_role_alters_nothing(served, statement):
    """What a stolen password of the server's role could try; each ends in the database's own refusal."""
    with psycopg.connect(served, autocommit=True) as connection:
        if statement.startswith("GRANT"):
            connection.execute(statement)  # PostgreSQL warns, and grants nothing
            statement = "DELETE FROM entry"
        with pytest.raises(psycopg.errors.InsufficientPrivilege):
            connection.execute(statement)


@pytest.mark.slow
def test_the_role_empties_no_entry_at_the_end_of_its_time(served):
    """Dropping is the owner's, on the terminal: the server says so, and keeps everything."""
    store = Store.named(served, now)
    with played(now() - dt.timedelta(days=4 * 366)):
        hall.write(store, HoldRead(**HELD))
    before = store.last()
    told = {"term": "loads", "years": "2", "who": "Olive", "second": "Ben Ford", "reason": "time is over"}
    with pytest.raises(RecordError, match="with the account that owns the database"):
        drop_entries(store, told)
    assert store.last() == before and len(list(store.facts(HoldRead))) == 1
    store.close()


@pytest.mark.slow
def test_a_server_that_may_empty_nothing_leaves_a_sites_drop_to_the_owner(served, tmp_path):
    """The site's entries are taken all the same, and stay whole until the owner follows on the terminal."""
    site = Store.file(tmp_path / "site.db", now)
    with played(now() - dt.timedelta(days=4 * 366)):
        hall.write(site, HoldRead(**HELD))
    server, owner = Store.named(served, now), Store.named(served.replace("//fry_app@", "//fry@"), now)
    take(server, "lane", list(site.entries()), now())
    told = {"term": "loads", "years": "2", "who": "Olive", "second": "Ben Ford", "reason": "time is over"}
    drop_entries(site, told)
    assert take(server, "lane", list(site.entries()), now()).end == site.last()
    assert len(list(server.at("lane").facts(HoldRead))) == 1
    assert "may empty no entry" in str(follow_all(server, "lane", now()).left[0][1])
    assert follow_all(owner, "lane", now()) == Followed(count=1, left=())
    assert list(owner.at("lane").facts(HoldRead)) == []
    assert owner.at("lane").verify() == site.verify()
    for store in (site, server, owner):
        store.close()


def test_the_recipe_names_every_table():
    """A new table is thought of here, or the server stops under its role."""
    text = RECIPE.read_text("utf-8")
    assert {name for name in METADATA.tables if name not in text} == set()


@pytest.mark.slow
def test_an_update_is_made_by_the_owner(served, postgres):
    """Opened under the server's role a store of an older program is refused, not half changed."""
    owner = served.replace("//fry_app@", "//fry@")
    with psycopg.connect(owner, autocommit=True) as connection:
        newest = connection.execute("SELECT version_num FROM alembic_version").fetchone()[0]
        connection.execute("UPDATE alembic_version SET version_num = '0001'")
        with pytest.raises(sa.exc.ProgrammingError):
            Store.named(served, now)
        assert connection.execute("SELECT version_num FROM alembic_version").fetchone()[0] == "0001"
        connection.execute("UPDATE alembic_version SET version_num = %s", (newest,))
