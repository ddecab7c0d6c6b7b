"""``frywright fleet``: proofs over many sites, versions, comparison, releases in waves."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import typer

from frywright.cli.shop import JSON, STORE, open_shop

app = typer.Typer(help="Many sites: sweep, versions, compare, release in waves.", no_args_is_help=True)
STORES = typer.Argument(help="Stores of the sites: files, or postgresql:// URLs.")


def _shops(names: list[str]) -> list[tuple[str, Any, Any]]:
    from frywright.model.errors import InputError

    for name in names:
        if "://" not in name and not Path(name).exists():
            raise InputError("store", name, "a file that exists")
    return [
        (Path(name).stem if "://" not in name else name.rsplit("/", 1)[1].split("?")[0], *open_shop(name))
        for name in names
    ]


@app.command()
def sweep(
    kitchens: list[Path] = typer.Argument(help="Kitchen files, one a site."),
    samples: int = typer.Option(128, help="Simulated loads a program."),
    cluster: str = typer.Option("", help="Address of a Dask scheduler; without it this process."),
    as_json: bool = JSON,
) -> None:
    """Prove every program of every site."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.fleet.fleet import Site
        from frywright.rooms.fleet.fleet import sweep as run
        from frywright.trial.kitchens import read_text

        rows = run([Site(name=p.stem, text=read_text(p)) for p in kitchens], samples=samples, address=cluster)
        if as_json:
            emit_json({"ok": True, "rows": rows})
            return
        for row in rows:
            typer.echo(f"{row['site']} {row['program']}: {row['problem'] or _proved(row)}")


def _proved(row: dict[str, Any]) -> str:
    bound = f"at least {100 * row['bound_frac']:.1f} % at {100 * row['confidence_frac']:.0f} % confidence"
    failed = f"{row['failed_count'] or 'none'} of {row['samples_count']} failed ({bound})"
    return (
        f"{row['outcome']}: {failed}, worst {row['worst_cut']} {row['worst_margin_k']:+.1f} K,"
        f" {row['breaks_first']}"
    )


@app.command()
def versions(stores: list[str] = STORES, as_json: bool = JSON) -> None:
    """Which version each site is known to hold, by its newest read-back; unknown is unknown."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.fleet.fleet import versions as told

        rows = told(_shops(stores))
        if as_json:
            emit_json({"ok": True, "rows": rows})
            return
        for row in rows:
            typer.echo(
                f"{row['site']} {row['program']}: newest {row['newest']}, held {row['held']} {row['read_at']}"
            )


@app.command()
def compare(stores: list[str] = STORES, as_json: bool = JSON) -> None:
    """Ratios that survive a site's size against control limits of all; too few is said."""
    import datetime as dt

    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.fleet.fleet import compare as told

        rows = told(_shops(stores), dt.datetime.now(dt.UTC).date())
        if as_json:
            emit_json({"ok": True, "rows": rows})
            return
        for row in rows:
            value = "unknown" if row["value"] is None else f"{row['value']:.3g}"
            typer.echo(f"{row['site']}: {row['title']} {value} ({row['count']}), {row['state']}")


@app.command()
def release(
    program: str = typer.Argument(help="Program of the office's kitchen."),
    sites: list[str] = typer.Argument(help="Names of the sites, in the order of the waves."),
    who: str = typer.Option(help="Who releases it."),
    most_below: float = typer.Option(0.02, help="Share of readings below the limit that stops it."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Release a program's newest version to sites in waves."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.fleet.release import open_release

        kept = open_release(*open_shop(store), program, sites, who, most_below)
        waves = kept.fact.waves
        (
            emit_json({"ok": True, "number": kept.number, "waves": waves})
            if as_json
            else typer.echo(
                f"Release {kept.number}: {len(waves)} waves of {', '.join(str(len(w)) for w in waves)} sites."
            )
        )


@app.command()
def wave(
    number: int = typer.Argument(help="Release."),
    stores: list[str] = STORES,
    who: str = typer.Option(help="Who lets it go on."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Begin the next wave: the stop rule and the read-backs of the waves before are looked at first."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.fleet.release import next_wave

        kept = next_wave(
            open_shop(store)[0], number, {name: opened for name, opened, _ in _shops(stores)}, who
        )
        (
            emit_json({"ok": True, "sites": kept.fact.sites})
            if as_json
            else typer.echo(f"Wave begun at {', '.join(kept.fact.sites)}.")
        )


@app.command()
def rollback(
    number: int = typer.Argument(help="Release."),
    out: Path = typer.Option(Path("rollback.pdf"), help="PDF to write."),
    language: str = typer.Option("en", help="Language, such as es."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Print the card of the version before."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.fleet.release import rollback_card
        from frywright.voice.tongue import translator

        out.write_bytes(rollback_card(*open_shop(store), number, language, translator(language)))
        emit_json({"ok": True, "file": str(out)}) if as_json else typer.echo(f"{out} written.")


@app.command()
def readbacks(
    file: Path = typer.Argument(help="JSON lines: program, slot, values, read_by, checked_by."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Read in the read-backs a site sent as a file; a line read in before is not kept twice."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.model.errors import InputError
        from frywright.rooms.cook.readbacks import readbacks_from

        if not file.exists():
            raise InputError("file", str(file), "a file that exists")
        with file.open(encoding="utf-8", errors="replace") as stream:
            rows = readbacks_from(*open_shop(store), stream)
        if as_json:
            emit_json({"ok": True, "rows": rows})
            return
        for row in rows:
            known = "" if row["new"] else ", known before"
            told = (
                row["problem"]
                or f"entry {row['number']}, {'matches' if row['matches'] else 'DIFFERS'}{known}"
            )
            typer.echo(f"line {row['line']}: {told}")
