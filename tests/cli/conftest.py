"""What every test of a command looks at besides its own claim."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from click.testing import Result
from typer.testing import CliRunner

from frywright.cli.main import app
from tests.demo import demo_store

SILENT = (("day", "watch"),)
"""Commands that have nothing to say where nothing is new."""


@pytest.fixture(scope="session", autouse=True)
def a_command_says_what_it_did() -> Iterator[None]:
    """One that ends well has printed something; with --json an object that does not say that it is bad."""
    own = CliRunner.invoke

    def invoke(self: CliRunner, tree, args=None, **more) -> Result:
        got, typed = own(self, tree, args, **more), tuple(args or ())
        if got.exit_code == 0 and "--json" in typed and "live" not in typed:
            assert json.loads(got.stdout).get("ok", True) is True, typed
        elif got.exit_code == 0 and typed[:2] not in SILENT:
            assert got.output.strip(), typed
        return got

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(CliRunner, "invoke", invoke)
        yield


@pytest.fixture
def place(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """A store with the demo's kitchen, in a folder of its own."""
    monkeypatch.chdir(tmp_path)
    return demo_store(tmp_path / "s.db")


@pytest.fixture
def said(place: str) -> Callable[..., Any]:
    """Runs a command on the store: what it printed on one line, or as JSON; ``code`` is how it ends."""

    def run(*typed: str, code: int = 0, on: str = place) -> Any:
        got = CliRunner().invoke(app, [*typed, "--store", on])
        assert got.exit_code == code, got.output
        return json.loads(got.stdout) if "--json" in typed else " ".join(got.output.split())

    return run
