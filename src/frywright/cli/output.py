"""How commands speak: rich text for people, JSON for programs, exit codes from the error tree."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from typing import Any

from frywright.model.errors import DataError, FrywrightError
from frywright.model.tongues import SOURCE
from frywright.voice.tongue import explain, translator


def emit_json(value: Any) -> None:
    """Print a value as JSON."""
    sys.stdout.write(json.dumps(value, ensure_ascii=False, allow_nan=False) + "\n")


SPOKEN: ContextVar[tuple[str, str]] = ContextVar("spoken", default=(SOURCE, ""))
"""Language and units of the kitchen a command opened; errors are told in them."""


@contextmanager
def speaking_errors(as_json: bool = False) -> Iterator[None]:
    """Turn an error of ours into words on standard error and its exit code."""
    try:
        yield
    except FrywrightError as error:
        message = explain(error, *SPOKEN.get())
        if as_json:
            kind = type(error).__name__
            problems = (
                [p.say(translator(SPOKEN.get()[0])) for p in error.problems]
                if isinstance(error, DataError)
                else []
            )
            emit_json({"ok": False, "error": kind, "message": message, "problems": problems})
        else:
            sys.stderr.write(f"{message}\n")
        raise SystemExit(error.exit_code) from error


@contextmanager
def preparing() -> Iterator[None]:
    """Say so while kernels compile for the first time, which takes up to a minute."""
    from frywright.trial.warm import prepared

    if not prepared():
        sys.stderr.write("Preparing the cook engine for this machine (once, up to a minute) …\n")
    yield


@contextmanager
def working(title: str, *, quiet: bool) -> Iterator[Callable[[float], None]]:
    """A progress bar on standard error; yields the function that moves it."""
    if quiet:
        yield lambda _share: None
        return
    from rich.console import Console
    from rich.progress import Progress

    with Progress(console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task(title, total=1.0)
        yield lambda share: bar.update(task, completed=share)
