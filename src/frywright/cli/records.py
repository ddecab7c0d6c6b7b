"""``frywright records``: check, copy and bring back the store."""

from __future__ import annotations

import sys
from pathlib import Path

import typer

app = typer.Typer(help="The append-only store: verify, export, import, backup, restore.", no_args_is_help=True)
NAMED = typer.Argument("var/frywright.db", help="File of the store, or postgresql://user@host/database.")
JSON = typer.Option(False, "--json", help="Print JSON.")


def _open(store: str, *, new: bool = False):  # type: ignore[no-untyped-def]
    from frywright.model.errors import RecordError
    from frywright.records.store import Store
    from frywright.workbench.clock import now

    if not new and "://" not in store and not Path(store).exists():
        raise RecordError(f"No store at {store}. Name the file, or make one with: frywright serve --store {store}")
    return Store.named(store, now)


@app.command()
def verify(store: str = NAMED, as_json: bool = JSON) -> None:
    """Walk the hash chain; say whether any entry was changed behind the program's back."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        count, last = _open(store).verify()
        if as_json:
            emit_json({"ok": True, "entries": count, "last_hash": last})
        else:
            typer.echo(f"{count} entries, chain unbroken, last hash {last[:12]}…")


@app.command()
def export(store: str = NAMED, csv: bool = typer.Option(False, "--csv", help="CSV instead of JSON lines.")) -> None:
    """Print every entry as JSON lines (or CSV)."""
    from frywright.cli.output import speaking_errors

    with speaking_errors():
        from frywright.records.export import csv_table, json_lines

        (csv_table if csv else json_lines)(_open(store).entries(), sys.stdout)


@app.command("import")
def import_(file: Path = typer.Argument(help="Exported JSON lines."), store: str = typer.Option(help="New store to fill."), as_json: bool = JSON) -> None:  # fmt: skip
    """Fill a new store from exported JSON lines, against the chain."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.model.errors import RecordError
        from frywright.records.backup import import_lines

        if not file.exists():
            raise RecordError(f"No file at {file}.")
        with file.open("rb") as stream:
            count = import_lines(stream, _open(store, new=True))
        emit_json({"ok": True, "entries": count}) if as_json else typer.echo(f"{count} entries, chain unbroken.")


@app.command()
def backup(out: Path = typer.Argument(help="File to write."), store: str = typer.Option("var/frywright.db", help="Store."), as_json: bool = JSON) -> None:  # fmt: skip
    """Copy every entry and original file into one checked file, while the store is in use."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.records.backup import backup as copy

        told = copy(_open(store), out)
        if as_json:
            emit_json({"ok": True, "entries": told.entries_count, "files": told.files_count, "last_hash": told.last_hash, "file": str(out)})  # fmt: skip
        else:
            typer.echo(f"{out}: {told.entries_count} entries, {told.files_count} files, read back and checked.")


@app.command()
def restore(file: Path = typer.Argument(help="Backup."), store: str = typer.Option(help="New store to fill."), as_json: bool = JSON) -> None:  # fmt: skip
    """Fill a new store from a backup, entry by entry against the chain."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.records.backup import restore as bring_back

        told = bring_back(file, _open(store, new=True))
        if as_json:
            emit_json({"ok": True, "entries": told.entries_count, "files": told.files_count, "last_hash": told.last_hash})  # fmt: skip
        else:
            typer.echo(f"{store}: {told.entries_count} entries, {told.files_count} files, chain unbroken.")
