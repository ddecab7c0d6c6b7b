"""``frywright records``: check and copy the store."""

from __future__ import annotations

import sys
from pathlib import Path

import typer

app = typer.Typer(help="The append-only store.", no_args_is_help=True)


def _open(store: Path):  # type: ignore[no-untyped-def]
    from frywright.model.errors import RecordError
    from frywright.records.store import Store
    from frywright.workbench.clock import now

    if not store.exists():
        raise RecordError(f"No store at {store}. Name the file, or make one with: frywright serve --store {store}")
    return Store.file(store, now)


@app.command()
def verify(
    store: Path = typer.Argument(Path("var/frywright.db"), help="File of the store."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Walk the hash chain; say whether any entry was changed behind the program's back."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        count, last = _open(store).verify()
        if as_json:
            emit_json({"ok": True, "entries": count, "last_hash": last})
        else:
            typer.echo(f"{count} entries, chain unbroken, last hash {last[:12]}…")


@app.command()
def export(
    store: Path = typer.Argument(Path("var/frywright.db"), help="File of the store."),
    csv: bool = typer.Option(False, "--csv", help="CSV instead of JSON lines."),
) -> None:
    """Print every entry as JSON lines (or CSV)."""
    from frywright.cli.output import speaking_errors

    with speaking_errors():
        from frywright.records.export import csv_table, json_lines

        (csv_table if csv else json_lines)(_open(store).entries(), sys.stdout)
