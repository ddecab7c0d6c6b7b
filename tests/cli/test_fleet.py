"""``frywright fleet`` as the office runs it."""

from __future__ import annotations

from typer.testing import CliRunner

from frywright.cli.main import app
from tests.demo import demo_store


def test_every_program_of_every_site_is_listed_with_the_version_it_holds(tmp_path):
    """Of a site that was never read back the version in the fryer is unknown, and it says so."""
    places = [demo_store(tmp_path / f"{name}.db") for name in ("east", "west")]
    told = CliRunner().invoke(app, ["fleet", "versions", *places])
    assert told.exit_code == 0
    lines = [line for line in told.stdout.splitlines() if "bone-in alder" in line]
    assert len(lines) == 2
    assert all("unknown" in line for line in lines)
