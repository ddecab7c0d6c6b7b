"""``frywright records``: check, copy and bring back the store."""

from __future__ import annotations

import sys
from pathlib import Path

import typer

app = typer.Typer(
    help="The append-only store: verify, export, import, backup, restore.", no_args_is_help=True
)
NAMED = typer.Argument("var/frywright.db", help="File of the store, or postgresql://user@host/database.")
JSON = typer.Option(False, "--json", help="Print JSON.")


def _open(store: str, *, new: bool = False):  # type: ignore[no-untyped-def]
    from frywright.ledger.store import Store
    from frywright.model.errors import RecordError
    from frywright.rooms.clock import now

    if not new and "://" not in store and not Path(store).exists():
        raise RecordError(
            "No store at {store}. Name the file, or make one with: frywright serve --store {store}",
            store=store,
        )
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
def export(
    store: str = NAMED, csv: bool = typer.Option(False, "--csv", help="CSV instead of JSON lines.")
) -> None:
    """Print every entry as JSON lines (or CSV)."""
    from frywright.cli.output import speaking_errors

    with speaking_errors():
        from frywright.ledger.export import csv_table, json_lines

        (csv_table if csv else json_lines)(_open(store).entries(), sys.stdout)


@app.command("import")
def import_(
    file: Path = typer.Argument(help="Exported JSON lines."),
    store: str = typer.Option(help="New store to fill."),
    as_json: bool = JSON,
) -> None:
    """Fill a new store from exported JSON lines, against the chain."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.ledger.backup import import_lines
        from frywright.model.errors import RecordError

        if not file.exists():
            raise RecordError("No file at {file}.", file=file)
        with file.open("rb") as stream:
            count = import_lines(stream, _open(store, new=True))
        (
            emit_json({"ok": True, "entries": count})
            if as_json
            else typer.echo(f"{count} entries, chain unbroken.")
        )


@app.command()
def backup(
    out: Path = typer.Argument(help="File to write."),
    store: str = typer.Option("var/frywright.db", help="Store."),
    as_json: bool = JSON,
) -> None:
    """Copy every entry and original file into one checked file, while the store is in use."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.ledger.backup import backup as copy

        told = copy(_open(store), out)
        if as_json:
            emit_json(
                {
                    "ok": True,
                    "entries": told.entries_count,
                    "files": told.files_count,
                    "last_hash": told.last_hash,
                    "file": str(out),
                }
            )
        else:
            typer.echo(
                f"{out}: {told.entries_count} entries, {told.files_count} files, read back and checked."
            )


@app.command()
def restore(
    file: Path = typer.Argument(help="Backup."),
    store: str = typer.Option(help="New store to fill."),
    as_json: bool = JSON,
) -> None:
    """Fill a new store from a backup, entry by entry against the chain."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.ledger.backup import restore as bring_back

        told = bring_back(file, _open(store, new=True))
        if as_json:
            emit_json(
                {
                    "ok": True,
                    "entries": told.entries_count,
                    "files": told.files_count,
                    "last_hash": told.last_hash,
                }
            )
        else:
            typer.echo(f"{store}: {told.entries_count} entries, {told.files_count} files, chain unbroken.")


STORE = typer.Option(
    "var/frywright.db", "--store", help="File of the store, or postgresql://user@host/database."
)


@app.command()
def pack(
    first: str = typer.Argument(help="First day."),
    last: str = typer.Argument(help="Last day."),
    out: Path = typer.Option(Path("pack.pdf"), help="PDF to write."),
    tables: Path = typer.Option(None, help="Archive of CSV tables to write as well."),
    language: str = typer.Option("en", help="Language, such as es."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """The inspection pack of a range of days as one PDF, and its tables; gaps are shown."""
    import datetime as dt

    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.model.errors import InputError, Phrase
        from frywright.rooms.care.upkeep import care_rows
        from frywright.rooms.kitchen import remembered_kitchen
        from frywright.rooms.records import pack as packs
        from frywright.voice.tongue import translator

        try:
            days = dt.date.fromisoformat(first), dt.date.fromisoformat(last)
        except ValueError as error:
            raise InputError(
                "range",
                Phrase("{first} to {last}", {"first": first, "last": last}),
                "days such as 2026-11-01",
            ) from error
        opened = _open(store)
        kitchen, tr = remembered_kitchen(opened), translator(language)
        view = packs.pack_view(opened, kitchen, *days, tr, care_rows(opened, kitchen, tr, language))
        if as_json:
            view.pop("told")
            emit_json({"ok": True, **view})
            return
        out.write_bytes(packs.pack_pdf(kitchen, view, language, tr))
        if tables is not None:
            tables.write_bytes(packs.csv_zip(opened, kitchen, *days, tr))
        typer.echo(f"{out} written.")


@app.command()
def probe(
    fryer: str = typer.Argument(help="Fryer."),
    product: str = typer.Argument(help="Product."),
    temp: str = typer.Argument(help="Coldest piece, such as 172F."),
    thermometer: str = typer.Option(help="Mark on the thermometer."),
    pieces: int = typer.Option(0, help="Pieces in the load."),
    who: str = typer.Option("", help="Name."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Keep a probe reading of a load; below the limit a case opens."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.kitchen import remembered_kitchen
        from frywright.rooms.records.corrective import tell_probe

        opened = _open(store)
        told = {
            "fryer": fryer,
            "product": product,
            "temp": temp,
            "thermometer": thermometer,
            "pieces": str(pieces),
            "who": who,
        }
        reading, case = tell_probe(opened, remembered_kitchen(opened), told)
        if as_json:
            emit_json({"ok": True, "number": reading.number, "case": case.number if case else None})
        elif case is None:
            typer.echo(
                f"Entry {reading.number} kept: it meets the limit you set, with the thermometer's error taken"
                " off."
            )
        else:
            typer.echo(
                f"Below the limit: case {case.number} is open. The whole load back in the oil, then probe"
                " again."
            )


@app.command()
def case(
    number: int = typer.Argument(0, help="Case; without it all are listed."),
    step: str = typer.Argument("", help="recook, reprobe, disposition, cause, earlier or closed."),
    values: list[str] = typer.Argument(
        None,
        help="name=value, such as who=Ana temp=178F disposition=discarded cause=oil load=41 decision=held.",
    ),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Corrective action: what is open, what was done, what is missing; or tell a step."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.cli.fryers import read_values
        from frywright.rooms.kitchen import remembered_kitchen
        from frywright.rooms.records.corrective import case_of, case_view, cases, tell_step

        opened = _open(store)
        kitchen = remembered_kitchen(opened)
        if step:
            tell_step(opened, kitchen, number, read_values(values, step=step))
        found = [case_of(opened, number)] if number else cases(opened)
        views = [case_view(opened, kitchen, one) for one in found]
        if as_json:
            emit_json({"ok": True, "cases": views})
            return
        for view in views:
            typer.echo(
                f"{view['number']} {'closed' if view['closed'] else 'OPEN'} {view['product']}"
                f" {view['fryer']}: {view['found']}"
            )
            for done in view["steps"]:
                typer.echo(f"  {done['at']} {done['step']} {done['detail']} ({done['who']}) {done['note']}")
            if view["missing"] and not view["closed"]:
                typer.echo(f"  not before: {'; '.join(view['missing'])}")


@app.command()
def trace(
    product: str = typer.Argument(help="Product."),
    bought: str = typer.Argument(help="When, such as 2026-11-25T18:40-07:00."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Loads a guest's piece may have come from, with chances, evidence and gaps."""
    import datetime as dt
    from zoneinfo import ZoneInfo

    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.model.business_day import usual_trade
        from frywright.model.errors import InputError
        from frywright.rooms.kitchen import remembered_kitchen
        from frywright.rooms.records.corrective import trace as find

        opened = _open(store)
        kitchen = remembered_kitchen(opened)
        try:
            moment = dt.datetime.fromisoformat(bought)
        except ValueError as error:
            raise InputError("bought", repr(bought), "a day and time such as 2026-11-25T18:40") from error
        found = find(
            opened,
            kitchen,
            product,
            moment if moment.tzinfo else moment.replace(tzinfo=ZoneInfo(usual_trade(kitchen).zone)),
        )
        if as_json:
            emit_json({"ok": True, **found})
            return
        for row in found["loads"]:
            readings = ", ".join(r["core"] for r in row["readings"]) or "no reading"
            typer.echo(
                f"{100 * row['chance_frac']:.0f} % entry {row['number']}, lifted {row['lifted']},"
                f" {row['fryer']}, {row['program']}: {readings}"
            )
        for gap in found["gaps"]:
            typer.echo(f"  ? {gap}")
