"""How commands speak: rich text for people, JSON for programs, exit codes from the error tree."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from frywright.model.errors import DataError, FrywrightError, InputError
from frywright.model.plain import plain

if TYPE_CHECKING:
    from frywright.cli.shop import Shop


def emit_json(value: object) -> None:
    """Print a value or a view as JSON."""
    sys.stdout.write(json.dumps(plain(value), ensure_ascii=False, allow_nan=False) + "\n")


@contextmanager
def speaking_errors(shop: Shop | None = None) -> Iterator[None]:
    """Turn an error of ours into words and its exit code, in a shop's language and units."""
    try:
        yield
    except (FrywrightError, OSError) as fault:
        error = _in_words(fault)
        tell, system = (shop.tr, str(getattr(shop.site, "units", ""))) if shop else (str, "")
        message = error.say(tell, system)
        if shop and shop.as_json:
            kind = type(error).__name__
            problems = [p.say(tell, system) for p in error.problems] if isinstance(error, DataError) else []
            emit_json({"ok": False, "error": kind, "message": message, "problems": problems})
        else:
            sys.stderr.write(f"{message}\n")
        raise SystemExit(error.exit_code) from error


def _in_words(fault: FrywrightError | OSError) -> FrywrightError:
    """What is told of a fault: of a file that cannot be used which, and why. Any other is raised as it is."""
    if isinstance(fault, FrywrightError):
        return fault
    if fault.filename is None:
        raise fault
    return InputError("file", str(fault.filename)[:80], "one that can be used ({why})", why=fault.strerror)


@contextmanager
def preparing() -> Iterator[None]:
    """Say so while kernels compile for the first time, which takes some seconds."""
    from frywright.trial.prepared import prepared

    if not prepared():
        sys.stderr.write("Preparing the cook engine for this machine (once, some seconds) …\n")
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
