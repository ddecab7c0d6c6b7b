"""What every command over a store begins with."""

from __future__ import annotations

from typing import Any

import typer

STORE = typer.Option("var/frywright.db", "--store", help="File of the store, or postgresql://user@host/database.")
JSON = typer.Option(False, "--json", help="Print JSON.")


def open_shop(store: str) -> tuple[Any, Any]:
    """The store, made with the demo kitchen where there is none, and its kitchen."""
    from frywright.workbench.book import open_store, remembered_kitchen

    opened = open_store(store, "")
    return opened, remembered_kitchen(opened)
