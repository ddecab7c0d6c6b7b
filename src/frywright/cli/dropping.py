"""``frywright records``, the end of an entry's time."""

from __future__ import annotations

import typer

from frywright.cli.records import app, there
from frywright.cli.shop import Shop, command

__all__ = ["app"]


@command(app)
def drop(
    shop: Shop,
    years: int = typer.Argument(help="Files older than so many years."),
    really: bool = typer.Option(False, "--really", help="Drop them; without it, only say what would go."),
    who: str = typer.Option("", help="Name."),
    second: str = typer.Option("", help="Second person, who looked as well."),
    reason: str = typer.Option("", help="Why."),
) -> None:
    """Drop photos of signed cards, sales files and reports whose time is over; their entries stay."""
    from frywright.rooms.records.retention import drop_old_files, old_files

    store = there(shop).store
    told = {"years": str(years), "who": who, "second": second, "reason": reason}
    if really:
        shop.confirm(second)
    found = drop_old_files(store, told) if really else old_files(store, years)
    row = {
        "count": len(found.names),
        "mb": f"{found.size_bytes / 1e6:.1f}",
        "before": found.before.isoformat(),
    }
    if not shop.json({**row, "dropped": really}):
        shop.say(
            "Files of before {before}, dropped: {count} ({mb} MB)."
            if really
            else "Files of before {before} that would be dropped: {count} ({mb} MB). Ask your"
            " inspector how long yours must be kept, make a backup, then say --really.",
            row,
        )


@command(app, "drop-entries")
def drop_entries(
    shop: Shop,
    term: str = typer.Argument(
        "", help="Which: loads, sales, people, care or anchors; without it all are listed."
    ),
    years: int = typer.Argument(0, help="Entries older than so many years."),
    really: bool = typer.Option(False, "--really", help="Drop them; without it, only say what would go."),
    who: str = typer.Option("", help="Name."),
    second: str = typer.Option("", help="Second person, who looked as well."),
    reason: str = typer.Option("", help="Why."),
) -> None:
    """Empty entries whose time is over. Number, moment and hash stay: the chain stays whole."""
    from frywright.ledger.terms import TERMS
    from frywright.rooms.records import dropping
    from frywright.rooms.records.kinds import kind_word

    if not term:
        rows = [{"key": t.key, "name": t.name, "least": t.least_years, "source": t.source} for t in TERMS]
        if not shop.json({"terms": rows}):
            for row in rows:
                typer.echo(f"{row['key']:<8}{shop.tr(str(row['name']))}: {shop.tr(str(row['source']))}")
        return
    store = there(shop).store
    told = {"term": term, "years": str(years), "who": who, "second": second, "reason": reason}
    if really:
        shop.confirm(second)
        found = dropping.drop_entries(store, told)
    else:
        found = dropping.due_entries(store, dropping.term_of(term), years)
    row = {"count": len(found.numbers), "before": found.before.isoformat()}
    if shop.json({**row, "kinds": dict(found.kinds), "dropped": really}):
        return
    for kind, count in found.kinds:
        typer.echo(f"  {count:>8} {kind_word(kind, shop.tr)}")
    shop.say(
        "Entries of before {before}, dropped: {count}."
        if really
        else "Entries of before {before} that would be dropped: {count}. Ask your inspector how"
        " long yours must be kept, make a backup and keep it, then say --really.",
        row,
    )
