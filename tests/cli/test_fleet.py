"""``frywright fleet`` as the office runs it."""

from __future__ import annotations

from typer.testing import CliRunner

from frywright.cli.main import app
from frywright.ledger.store import Store
from frywright.rooms.clock import now
from tests.demo import demo_store


def test_every_program_of_every_site_is_listed_with_the_version_it_holds(tmp_path):
    """Of a site that was never read back the version in the fryer is unknown, and it says so."""
    places = [demo_store(tmp_path / f"{name}.db") for name in ("east", "west")]
    told = CliRunner().invoke(app, ["fleet", "versions", *places])
    assert told.exit_code == 0
    lines = [line for line in told.stdout.splitlines() if "bone-in alder" in line]
    assert len(lines) == 2
    assert all("unknown" in line for line in lines)


def test_an_office_without_releases_says_so(tmp_path):
    """An empty list says why and what fills it, in both languages."""
    store = str(tmp_path / "office.db")
    Store.named(store, now).close()
    for language, said in (("en", "No release is planned yet"), ("es", "Aún no hay")):
        got = CliRunner().invoke(app, ["fleet", "releases", "--store", store, "--language", language])
        assert (got.exit_code, said in got.output) == (0, True), got.output
