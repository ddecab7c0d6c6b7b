"""``frywright fleet``: proofs over many sites, versions, comparison, releases in waves."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

import typer

from frywright.cli.shop import Shop, command, read_file, read_words

if TYPE_CHECKING:
    from frywright.rooms.fleet.swept import SiteProof

app = typer.Typer()
STORES = typer.Argument(help="Stores of the sites: files, or postgresql:// URLs.")


def _shops(shop: Shop, names: list[str]) -> list[tuple[str, Any, Any]]:
    from frywright.model.errors import InputError
    from frywright.rooms.fleet.kitchens import kitchens_of
    from frywright.rooms.kitchen import remembered_kitchen

    for name in names:
        if "://" not in name and not Path(name).exists():
            raise InputError("store", name, "a file that exists")
    found = []
    for name in names:
        title = Path(name).stem if "://" not in name else name.rsplit("/", 1)[1].split("?")[0]
        store, kitchen = shop.beside(name).both
        others = [
            (here.key, store.at(here.key), remembered_kitchen(store.at(here.key)))
            for here in kitchens_of(store)[1:]
            if here.described
        ]
        found += [(title, store, kitchen), *others]
    return found


@command(app, engine=True)
def sweep(
    shop: Shop,
    kitchens: list[Path] = typer.Argument(help="Kitchen files, one a site."),
    samples: int = typer.Option(128, help="Simulated loads a program."),
    few: bool = typer.Option(False, help="Count loads far above the limit by a fit: a look, no certificate."),
    cluster: str = typer.Option("", help="Address of a Dask scheduler; without it this process."),
    keep: Path | None = typer.Option(None, help="File of what is proved; a stopped sweep goes on from it."),
) -> None:
    """Prove every program of every site."""
    from frywright.cli.output import working
    from frywright.rooms.fleet.fleet import Site
    from frywright.rooms.fleet.fleet import sweep as run
    from frywright.trial.kitchens import read_text

    sites = [Site(name=p.stem, text=read_text(p)) for p in kitchens]
    with working(shop.tr("Proving"), quiet=shop.as_json) as progress:
        rows = run(sites, samples=samples, few=few, address=cluster, progress=progress, keep=keep)
    if shop.json({"rows": rows}):
        return
    for row in rows:
        typer.echo(f"{row.site} {row.program}: {row.problem or _proved(shop, row)}")


def _proved(shop: Shop, row: SiteProof) -> str:
    from frywright.model.units import at_least, signed
    from frywright.trial.proof import FACTOR_WORDS

    text = shop.tr(
        "{outcome}: {failed} of {samples_count} failed (at least {bound} % at {confidence} % confidence),"
        " worst {worst_cut} {margin}, {breaks_first}"
    )
    if row.fitted_count:
        text += shop.tr("; {fitted_count} of them counted by a fit, so this is no certificate")
    return text.format(
        fitted_count=row.fitted_count,
        outcome=shop.tr(row.outcome),
        failed=row.failed_count or shop.tr("none"),
        samples_count=row.samples_count,
        bound=f"{100 * at_least(row.bound_frac or 0.0):.1f}",
        confidence=f"{100 * (row.confidence_frac or 0.0):.0f}",
        worst_cut=shop.tr(row.worst_cut),
        margin=signed(row.worst_margin_k or 0.0, "k", shop.usual_units),
        breaks_first=shop.tr(FACTOR_WORDS.get(row.breaks_first, row.breaks_first)),
    )


@command(app)
def versions(shop: Shop, stores: list[str] = STORES) -> None:
    """Which version each site is known to hold, by its newest read-back; unknown is unknown."""
    from frywright.rooms.fleet.fleet import versions as told

    rows = told(_shops(shop, stores))
    if shop.json({"rows": rows}):
        return
    for row in rows:
        shop.say(
            "{site} {program}: newest {newest}, in the fryer {held} {read_at}", row, held=shop.tr(row.held)
        )


def _ratio(shop: Shop, ratio: str, value: float) -> str:
    """A ratio in the units of whoever asks."""
    from frywright.model.units import show

    return show(value, "c", shop.usual_units) if ratio.endswith("_c") else f"{value:.3g}"


@command(app)
def compare(shop: Shop, stores: list[str] = STORES) -> None:
    """Ratios that survive a site's size against control limits of all; too few is said."""
    import datetime as dt

    from frywright.rooms.fleet.fleet import compare as told

    rows = told(_shops(shop, stores), dt.datetime.now(dt.UTC).date())
    if shop.json({"rows": rows}):
        return
    for row in rows:
        value = shop.tr("unknown") if row.value is None else _ratio(shop, row.ratio, row.value)
        typer.echo(f"{row.site}: {shop.tr(row.title)} {value} ({row.count}), {shop.tr(row.state)}")


@command(app)
def release(
    shop: Shop,
    program: str = typer.Argument(help="Program of the office's kitchen."),
    sites: list[str] = typer.Argument(help="Names of the sites, in the order of the waves."),
    who: str = typer.Option(help="Who releases it."),
    most_below: str = typer.Option(
        "2%", help="Share of readings below the limit that stops it, such as 2% or 0.02."
    ),
) -> None:
    """Release a program's newest version to sites in waves."""
    from frywright.rooms.fleet.release import open_release

    share = shop.typed(most_below, "fraction", "--most-below", "frac") or 0.0
    kept = open_release(*shop.both, program, sites, who, share)
    waves = kept.fact.waves
    if not shop.json({"number": kept.number, "waves": waves}):
        shop.say(
            "Release {number}: waves {count}, sites in each {sizes}.",
            number=kept.number,
            count=len(waves),
            sizes=", ".join(str(len(w)) for w in waves),
        )


@command(app)
def wave(
    shop: Shop,
    number: int = typer.Argument(help="Release."),
    stores: list[str] = STORES,
    who: str = typer.Option(help="Who lets it go on."),
) -> None:
    """Begin the next wave: the stop rule and the read-backs of the waves before are looked at first."""
    from frywright.rooms.fleet.release import next_wave

    kept = next_wave(shop.store, number, {name: opened for name, opened, _ in _shops(shop, stores)}, who)
    if not shop.json({"sites": kept.fact.sites}):
        shop.say("Wave begun at {sites}.", sites=", ".join(kept.fact.sites))


@command(app)
def halt(
    shop: Shop,
    number: int = typer.Argument(help="Release."),
    who: str = typer.Option(help="Who halts it."),
    reason: str = typer.Option(help="Why."),
) -> None:
    """Halt a release; nothing starts it again."""
    from frywright.rooms.fleet.release import halt as stop

    kept = stop(shop.store, number, who, reason)
    if not shop.json({"number": kept.number}):
        shop.say("Release {number} is halted.", number=number)


@command(app)
def releases(shop: Shop) -> None:
    """Every release of this office: its version, waves begun, whether it is halted."""
    from frywright.rooms.fleet.release import releases as told

    rows = told(shop.store)
    if shop.json({"rows": rows}):
        return
    if not rows:
        shop.say("No release is planned yet: frywright fleet release plans one.")
    for row in rows:
        state = shop.tr(row.state)
        shop.say("{number} {program} version {version}: wave {started} of {waves}, {state}", row, state=state)


@command(app)
def rollback(
    shop: Shop,
    number: int = typer.Argument(help="Release."),
    out: Path = typer.Option(Path("rollback.pdf"), help="PDF to write."),
) -> None:
    """Print the card of the version before."""
    from frywright.rooms.fleet.release import rollback_card

    shop.written(out, rollback_card(*shop.both, number, shop.language, shop.tr))


@command(app)
def readbacks(
    shop: Shop, file: Path = typer.Argument(help="JSON lines: program, slot, values, read_by, checked_by.")
) -> None:
    """Read in the read-backs a site sent as a file; a line read in before is not kept twice."""
    from frywright.rooms.cook.readbacks import readbacks_from

    rows = readbacks_from(*shop.both, read_file(file).decode("utf-8", "replace").splitlines())
    if shop.json({"rows": rows}):
        return
    for row in rows:
        told = shop.tr("entry {number}, matches" if row.matches else "entry {number}, DIFFERS")
        known = "" if row.new else shop.tr(", known before")
        shop.say("line {line}: {told}", row, told=row.problem or told.format(number=row.number) + known)


@command(app)
def anchors(shop: Shop) -> None:
    """Print the anchors that sites signed for their records (--site for one of them), and compare each site's
    copy with its newest.
    """
    from frywright.rooms.fleet.office import anchors_of, rewritten

    kept, bad = anchors_of(shop.store, shop.key), rewritten(shop.store)
    if shop.json({"anchors": [item.fact.text for item in kept], "rewritten": {k: str(bad[k]) for k in bad}}):
        raise typer.Exit(5 if bad else 0)
    if not kept:
        shop.say("No site has sent an anchor yet: frywright fleet sync at the site sends one.")
    for item in kept:
        typer.echo(item.fact.text)
    for key, error in bad.items():
        typer.echo(f"{key}: {error.say(shop.tr)}", err=True)
    raise typer.Exit(5 if bad else 0)


@command(app)
def follow(shop: Shop) -> None:
    """Empty in the copies here what two people dropped at its site (--site for one of them). A server does so
    by itself where it may; on PostgreSQL do it as the owner of the database.
    """
    from frywright.rooms.fleet.office import followed

    found = followed(shop.store, shop.key)
    rows = {
        key: {"emptied": one.count, "left": {number: str(error) for number, error in one.left}}
        for key, one in found.items()
    }
    bad = any(one.left for one in found.values())
    if shop.json({"sites": rows}):
        raise typer.Exit(5 if bad else 0)
    if not found:
        shop.say("No site's record is kept here yet: frywright fleet sync at the site sends it.")
    for key, one in found.items():
        shop.say("{site}: {count} entries emptied.", site=key, count=one.count)
        for number, error in one.left:
            why = error.say(shop.tr)
            shop.say(
                "  Entry {number} was not followed; nothing of it was emptied: {why}", number=number, why=why
            )
    if any(one.count for one in found.values()):
        shop.say("A server that runs shows them until it is started anew.")
    raise typer.Exit(5 if bad else 0)


@command(app)
def sync(
    shop: Shop,
    office: str = typer.Argument(help="Address of the office's server, such as https://office.example."),
    token_file: Path = typer.Option(help="File with the token that the office showed."),
    every: float = typer.Option(0.0, help="Go on, with so many seconds between turns; without it, once."),
) -> None:
    """Send this kitchen's record to its office, and bring what the office released."""
    import time

    from frywright.client.http import Client
    from frywright.client.replicate import replicate
    from frywright.model.errors import AccessError, RecordError
    from frywright.voice.tongue import explain

    shop.pause(every, "--every")
    client = Client(address=office, token=read_words(token_file, "--token-file").strip())
    while True:
        try:
            sent = replicate(shop.store, client)
        except (RecordError, AccessError) as error:
            if not every:
                raise
            typer.echo(explain(error, shop.language), err=True)
        else:
            row = {
                "entries": sent.entries_count,
                "files": sent.files_count,
                "number": sent.number,
                "releases": sent.releases_count,
            }
            if not shop.json(row):
                shop.say(
                    "Sent: entries {entries}, files {files}; the office holds {number}."
                    " Releases that came: {releases}.",
                    row,
                )
        if not every:
            return
        time.sleep(max(every, 1.0))
