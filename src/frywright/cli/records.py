"""``frywright records``: check, copy and bring back the store."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import typer

from frywright.cli.shop import Shop, command, is_store, write_file
from frywright.cli.spoken import BARE

if TYPE_CHECKING:
    from frywright.ledger.anchors import Anchor
    from frywright.ledger.checking import Checked
    from frywright.ledger.stamps import Stamped
    from frywright.ledger.store import Store

app = typer.Typer()
NAMED = typer.Argument("", metavar="[STORE]", help="The store; the same as --store.")


def _open(where: str, *, new: bool = False) -> Store:
    """A store that is there, or a new one; nothing is put into it."""
    from frywright.ledger.store import Store
    from frywright.model.errors import RecordError
    from frywright.rooms.clock import now

    if not new and "://" not in where and not Path(where).exists():
        raise RecordError(
            "No store at {store}. Name the file, or make one with: frywright serve --store {store}",
            store=where,
        )
    return Store.named(where, now)


def there(shop: Shop) -> Shop:
    """The shop, if its store is there."""
    if is_store(shop.where):
        _open(shop.where)
    return shop


def _new(shop: Shop) -> Store:
    """The new store that was named, to be filled."""
    from frywright.model.errors import InputError

    if not shop.named:
        raise InputError("--store", "missing", "the new store to fill")
    return _open(shop.named, new=True)


@command(app)
def verify(
    shop: Shop,
    name: str = NAMED,
    expect: str = typer.Option("", help="Number and hash kept elsewhere, such as 5605:6fc2db91."),
    anchor: list[Path] = typer.Option(None, help="File with anchors kept elsewhere; may be given again."),
    roots: Path = typer.Option(
        None, envvar="FRYWRIGHT_TIME_ROOTS", help="PEM file of the root certificates of the time service."
    ),
) -> None:
    """Walk the hash chain, the recorded times, the original files and the accounts; say what does not fit."""
    from frywright.ledger.anchors import compare, compare_each, read_anchors
    from frywright.ledger.checking import checked
    from frywright.rooms.clock import now

    opened = shop.pick(_open(name or shop.where))
    found = checked(opened, now())
    if expect:
        _as_kept(opened, expect)
    texts = [_text_of(file) for file in anchor or ()]
    anchors = [one for text in texts for one in read_anchors(text)]
    (compare if shop.key else compare_each)(opened, anchors)
    stamps, unchecked_count = _stamps_of("\n".join(texts), anchors, roots)
    back, others = _set_back(found), {} if shop.key else _others(opened)
    told = {
        "entries": found.entries_count,
        "last_hash": found.head,
        "checked_at": found.at.isoformat(),
        "dropped": found.dropped_count,
        "clock_set_back": back,
        "files_lost": found.lost,
        "strange": list(found.strange),
        "guarded": found.guarded,
        "anchors": [
            {"number": one.number, "kitchen": one.name, "at": one.at.isoformat(), "key": one.key}
            for one in anchors
        ],
        "stamps": [{"number": one.number, "at": one.at.isoformat(), "by": one.by} for one in stamps],
        "stamps_unchecked": unchecked_count,
        "others": others,
    }
    if not shop.json(told):
        shop.say(
            "{count} entries, chain unbroken, checked {at}, last hash {last}",
            count=found.entries_count,
            at=f"{found.at:%Y-%m-%d %H:%M} UTC",
            last=found.head,
        )
        if found.dropped_count:
            shop.say("  {count} of them were dropped at the end of their time", count=found.dropped_count)
        for step in back:
            shop.say("  ? the clock ran backwards: entries {from} to {to} from {at}, after {after}", step)
        _tell_marks(shop, anchors, stamps, unchecked_count)
        for site, end in others.items():
            shop.say("{site}: {count} entries, chain unbroken, last hash {last}", end, site=site)
    _tell_strange(found)


def _tell_marks(shop: Shop, anchors: list[Anchor], stamps: list[Stamped], unchecked_count: int) -> None:
    """Anchors and time stamps that fit."""
    for one in anchors:
        shop.say(
            "  anchor of entry {number} of {kitchen}, {at}: as it was; key {key}",
            number=one.number,
            kitchen=one.name or "-",
            at=f"{one.at:%Y-%m-%d %H:%M} UTC",
            key=one.key_mark,
        )
    for stamp in stamps:
        shop.say(
            "  entry {number} was there at {at}, stamped by {by}",
            number=stamp.number,
            at=f"{stamp.at:%Y-%m-%d %H:%M} UTC",
            by=stamp.by,
        )
    if unchecked_count:
        shop.say("  ? {count} time stamps were not checked: name --roots", count=unchecked_count)


def _set_back(found: Checked) -> list[dict[str, Any]]:
    """Where the clock ran backwards."""
    return [
        {
            "from": step.number,
            "to": step.last_number,
            "at": step.recorded_at.isoformat(),
            "after": step.before_at.isoformat(),
        }
        for step in found.set_back
    ]


def _others(opened: Store) -> dict[str, dict[str, Any]]:
    """The other kitchens of a store, whose chains are walked as well."""
    from frywright.ledger.checking import checked
    from frywright.rooms.clock import now

    found = {}
    for site in opened.sites():
        if site:
            other = checked(opened.at(site), now())
            _tell_strange(other)
            found[site] = {"count": other.entries_count, "last": other.head}
    return found


def _tell_strange(found: Checked) -> None:
    """What was found beside a chain that is whole, as the error it is."""
    from frywright.model.errors import RecordError

    if found.lost:
        raise RecordError(
            "Original files missing or changed: {count}; entries that name them: {numbers}.",
            count=len(found.lost),
            numbers=", ".join(str(n) for n in sorted(found.lost.values())),
        )
    if found.strange:
        raise RecordError(
            "Accounts, devices or sessions are not as the chain says: {names}. Somebody changed"
            " them behind the program's back.",
            names=", ".join(found.strange),
        )
    if not found.guarded:
        raise RecordError("The database no longer refuses to change entries: its triggers were taken away.")


def _stamps_of(text: str, anchors: list[Anchor], roots: Path | None) -> tuple[list[Stamped], int]:
    """Time stamps that were checked, and how many were not for want of root certificates."""
    from frywright.ledger.stamps import check_stamps, roots_of, stamps_in

    if roots is None:
        return [], len(stamps_in(text))
    return check_stamps(text, anchors, roots_of(roots)), 0


def _text_of(file: Path) -> str:
    """Text of a file of anchors."""
    from frywright.model.errors import RecordError

    try:
        return file.read_text("utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise RecordError("{file} cannot be read: {cause}", file=file, cause=error) from error


@command(app)
def anchor(
    shop: Shop,
    out: Path = typer.Option(None, help="File to add it to, kept where nobody at the store can reach it."),
    picture: Path = typer.Option(None, help="SVG of its QR code to write."),
    time_service: str = typer.Option(
        "", envvar="FRYWRIGHT_TIME_SERVICE", help="Address of a time-stamping service (RFC 3161) to ask."
    ),
) -> None:
    """Sign the head of the chain with the store's key, to be kept elsewhere; see verify --anchor."""
    from frywright.ledger.anchors import anchored
    from frywright.ledger.checking import checked
    from frywright.ledger.store import Point
    from frywright.paper.code import code_svg
    from frywright.rooms.clock import now
    from frywright.rooms.kitchen import kitchen_name

    opened = shop.pick(_open(shop.where))
    found = checked(opened, now(), read_files=False)
    head = Point(number=found.entries_count, hash=found.head)
    made = anchored(opened, head, found.at, kitchen_name(opened))
    lines = [made.text]
    if time_service:
        from frywright.ledger.stamps import stamp_of

        lines.append(stamp_of(made, time_service))
    text = "\n".join(lines)
    if picture is not None:
        write_file(picture, code_svg(made.text).encode(), "--picture")
    if out is not None:
        older = _text_of(out) if out.exists() else ""
        write_file(out, f"{older}{text}\n".encode(), "--out")
    told = {
        "anchor": made.text,
        "kitchen": made.name,
        "number": made.number,
        "hash": made.hash,
        "key": made.key,
    }
    if not shop.json({**told, "stamp": lines[1] if time_service else None}):
        typer.echo(text)
        shop.say("Key {mark}. Keep the line where nobody at the store can reach it.", mark=made.key_mark)


def _as_kept(opened: Store, expect: str) -> None:
    """The entry of a number must have the hash that was kept elsewhere."""
    from frywright.model.errors import InputError, RecordError
    from frywright.model.units import is_count

    number, _, kept = expect.partition(":")
    kept = kept.strip().lower()
    if not is_count(number) or len(kept) < 8 or not set(kept) <= set("0123456789abcdef"):
        raise InputError("--expect", repr(expect), "a number and a hash, such as 5605:6fc2db91c8da3f19")
    item = opened.entry(int(number))
    if item is None or not item.hash.startswith(kept):
        raise RecordError(
            "Entry {number} is not the one whose hash was kept: entries were removed, or the chain was"
            " written anew.",
            number=number,
        )


@command(app)
def export(
    shop: Shop, name: str = NAMED, csv: bool = typer.Option(False, "--csv", help="CSV instead of JSON lines.")
) -> None:
    """Print every entry as JSON lines (or CSV), after the chain was walked; what was checked goes to the
    standard error.
    """
    from frywright.ledger.export import csv_table, json_lines
    from frywright.rooms.clock import now

    opened = shop.pick(_open(name or shop.where))
    count, head = opened.verify()
    (csv_table if csv else json_lines)(opened.entries(named=csv), sys.stdout)
    told = shop.tr("{count} entries, chain unbroken, checked {at}, last hash {last}")
    typer.echo(told.format(count=count, at=f"{now():%Y-%m-%d %H:%M} UTC", last=head), err=True)


@command(app, "import")
def import_(shop: Shop, file: Path = typer.Argument(help="Exported JSON lines.")) -> None:
    """Fill a new store from exported JSON lines, against the chain."""
    from frywright.ledger.backup import import_lines
    from frywright.model.errors import RecordError

    if not file.exists():
        raise RecordError("No file at {file}.", file=file)
    with file.open("rb") as stream:
        count = import_lines(stream, _new(shop))
    if not shop.json({"entries": count}):
        shop.say("{count} entries, chain unbroken.", count=count)


@command(app)
def backup(shop: Shop, out: Path = typer.Argument(help="File to write.")) -> None:
    """Copy every entry and original file into one checked file, while the store is in use."""
    from frywright.ledger.backup import backup as copy

    told = copy(_open(shop.where), out)
    if not shop.json(
        {
            "entries": told.entries_count,
            "files": told.files_count,
            "last_hash": told.last_hash,
            "file": str(out),
        }
    ):
        shop.say(
            "{out}: entries {entries_count}, files {files_count}, read back and checked.",
            out=out,
            entries_count=told.entries_count,
            files_count=told.files_count,
        )
        shop.say("Accounts, devices, birthdays and drafts are not in it.")


@command(app)
def restore(shop: Shop, file: Path = typer.Argument(help="Backup.")) -> None:
    """Fill a new store from a backup, entry by entry against the chain."""
    from frywright.ledger.backup import restore as bring_back

    told = bring_back(file, _new(shop))
    if not shop.json({"entries": told.entries_count, "files": told.files_count, "last_hash": told.last_hash}):
        shop.say(
            "{store}: entries {entries_count}, files {files_count}, chain unbroken.",
            store=shop.named,
            entries_count=told.entries_count,
            files_count=told.files_count,
        )


@command(app)
def pack(
    shop: Shop,
    first: str = typer.Argument(help="First day."),
    last: str = typer.Argument(help="Last day."),
    out: Path = typer.Option(Path("pack.pdf"), help="PDF to write."),
    tables: Path = typer.Option(None, help="Archive of CSV tables to write as well."),
) -> None:
    """The inspection pack of a range of days as one PDF, and its tables; gaps are shown."""
    import datetime as dt

    from frywright.model.errors import InputError, Phrase
    from frywright.rooms.care.upkeep import care_rows
    from frywright.rooms.records import pack as packs
    from frywright.rooms.records.pack_paper import pack_pdf

    try:
        days = (dt.date.fromisoformat(first), dt.date.fromisoformat(last))
    except ValueError as error:
        raise InputError(
            "range", Phrase("{first} to {last}", {"first": first, "last": last}), "days such as 2026-11-01"
        ) from error
    opened, kitchen = there(shop).both
    tr = shop.tr
    found = packs.pack_of(opened, kitchen, *days, tr, care_rows(opened, kitchen, tr, shop.language))
    if shop.json(found.view):
        return
    if tables is not None:
        write_file(tables, packs.csv_zip(opened, kitchen, *days, tr), "--tables")
    shop.written(out, pack_pdf(kitchen, found, shop.language, tr))


@command(app)
def probe(
    shop: Shop,
    fryer: str = typer.Argument(help="Fryer."),
    product: str = typer.Argument(help="Product."),
    temp: str = typer.Argument(help=f"Coldest piece, such as 172F. {BARE}"),
    thermometer: str = typer.Option(help="Mark on the thermometer."),
    pieces: int = typer.Option(0, help="Pieces in the load."),
    who: str = typer.Option("", help="Name."),
) -> None:
    """Keep a probe reading of a load; below the limit a case opens."""
    from frywright.rooms.readings import tell_probe

    opened, kitchen = there(shop).both
    told = {
        "fryer": fryer,
        "product": product,
        "temp": temp,
        "thermometer": thermometer,
        "pieces": str(pieces),
        "who": who,
    }
    reading, case = tell_probe(opened, kitchen, told)
    if not shop.json({"number": reading.number, "case": case.number if case else None}):
        if case is None:
            shop.say(
                "Entry {number} kept: it meets the limit you set, with the thermometer's error taken off.",
                number=reading.number,
            )
        else:
            shop.say(
                "Below the limit: case {number} is open. The whole load back in the oil, then probe again.",
                number=case.number,
            )


@command(app)
def case(
    shop: Shop,
    number: int = typer.Argument(0, help="Case; without it all are listed."),
    step: str = typer.Argument("", help="recook, reprobe, disposition, cause, earlier or closed."),
    values: list[str] = typer.Argument(
        None,
        help="name=value, such as who=Ana temp=178F disposition=discarded cause=oil load=41 decision=held.",
    ),
) -> None:
    "Corrective action: what is open, what was done, what is missing; or enter a step."
    from frywright.cli.fryers import read_values
    from frywright.rooms.records.corrective import case_of, case_view, cases, tell_step

    opened, kitchen = there(shop).both
    if step:
        tell_step(opened, kitchen, number, read_values(values, step=step))
    found = [case_of(opened, number)] if number else cases(opened)
    views = [case_view(opened, kitchen, one, shop.tr) for one in found]
    if shop.json({"cases": views}):
        return
    for view in views:
        state = shop.tr("closed" if view.closed else "OPEN")
        typer.echo(f"{view.number} {state} {view.product} {view.fryer}: {view.found}")
        for done in view.steps:
            typer.echo(f"  {done.at} {done.step} {done.detail} ({done.who}) {done.note}")
        if view.missing and (not view.closed):
            shop.say("  not before: {missing}", missing="; ".join(view.missing))


@command(app)
def trace(
    shop: Shop,
    product: str = typer.Argument(help="Product."),
    bought: str = typer.Argument(help="When, such as 2026-11-25T18:40-07:00."),
) -> None:
    """Loads a guest's piece may have come from, with chances, evidence and gaps."""
    from frywright.model.business_day import moment_typed
    from frywright.rooms.records.corrective import trace as find

    opened, kitchen = there(shop).both
    found = find(opened, kitchen, product, moment_typed(kitchen, bought, "bought"))
    if shop.json(found):
        return
    for row in found.loads:
        readings = ", ".join(r.core for r in row.readings) or shop.tr("no reading")
        shop.say(
            "{chance} % entry {number}, lifted {lifted}, {fryer}, {program}: {readings}",
            row,
            chance=f"{100 * row.chance_frac:.0f}",
            readings=readings,
        )
    for gap in found.gaps:
        typer.echo(f"  ? {shop.tr(gap)}")
