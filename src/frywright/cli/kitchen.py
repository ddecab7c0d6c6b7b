"""``frywright kitchen``: check a kitchen file, print the demo."""

from __future__ import annotations

from pathlib import Path

import typer

app = typer.Typer(help="Kitchen files.", no_args_is_help=True)


@app.command()
def demo() -> None:
    """Print the invented demo kitchen's file, to start your own from."""
    from frywright.trial.kitchens import demo_text

    typer.echo(demo_text(), nl=False)


@app.command()
def check(
    file: Path = typer.Argument(help="Kitchen file (TOML)."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Say what a kitchen file holds, or what is wrong with it and where."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.trial.kitchens import open_kitchen
        from frywright.trial.predicted import short_programs, unanswered_line

        found = open_kitchen(file)
        counts = {
            "fryers": len(found.fryers),
            "products": len(found.products),
            "programs": len(found.programs),
        }
        short = short_programs(found)
        if as_json:
            told = [{"name": p.name, "version": p.version, "margin_k": facts.margin_k} for p, facts in short]
            emit_json({"ok": True, "name": found.site.name, **counts, "short": told})
        else:
            typer.echo(
                f"{found.site.name}: "
                + ", ".join(f"{n} {what}" for what, n in counts.items())
                + (". The file reads well." if short else ". No problems.")
            )
            for program, facts in short:
                typer.echo(unanswered_line(found, program, facts))
