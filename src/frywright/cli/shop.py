"""What every command over a store begins with."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import typer

from frywright.cli.output import SPOKEN

STORE = typer.Option(
    "var/frywright.db", "--store", help="File of the store, or postgresql://user@host/database."
)
JSON = typer.Option(False, "--json", help="Print JSON.")


def open_shop(store: str) -> tuple[Any, Any]:
    """The store, made with the demo kitchen where there is none, and its kitchen."""
    from frywright.rooms.kitchen import open_store, remembered_kitchen

    opened = open_store(store, "")
    kitchen = remembered_kitchen(opened)
    SPOKEN.set((kitchen.site.language, str(kitchen.site.units)))
    return opened, kitchen


def open_kitchen(path: Path) -> Any:
    """The kitchen of a file; from here on errors are told in its language and units."""
    from frywright.trial.kitchens import open_kitchen

    kitchen = open_kitchen(path)
    SPOKEN.set((kitchen.site.language, str(kitchen.site.units)))
    return kitchen
