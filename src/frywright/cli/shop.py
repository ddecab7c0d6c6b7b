"""What every command over a store begins with."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import typer

STORE = typer.Option(Path("var/frywright.db"), "--store", help="File of the store.")
JSON = typer.Option(False, "--json", help="Print JSON.")


def open_shop(store: Path) -> tuple[Any, Any]:
    """The store, made with the demo kitchen where there is none, and its kitchen."""
    from frywright.workbench.book import open_store, remembered_kitchen

    opened = open_store(str(store), "")
    return opened, remembered_kitchen(opened)
