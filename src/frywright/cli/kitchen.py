"""``frywright kitchen``: check a kitchen file, print the demo."""

from __future__ import annotations

import typer

from frywright.cli.shop import Shop, command

app = typer.Typer()


@app.command()
def demo() -> None:
    """Print the invented demo kitchen's file, to start your own from."""
    from frywright.trial.kitchens import demo_text

    typer.echo(demo_text(), nl=False)


@command(app, kitchen=True, engine=True)
def check(shop: Shop) -> None:
    """Say what a kitchen file holds, or what is wrong with it and where."""
    from frywright.trial.predicted import short_programs, unanswered_line

    found = shop.kitchen
    counts = {"fryers": len(found.fryers), "products": len(found.products), "programs": len(found.programs)}
    short = short_programs(found)
    told = [{"name": p.name, "version": p.version, "margin_k": facts.margin_k} for p, facts in short]
    if shop.json({"name": found.site.name, **counts, "short": told}):
        return
    end = shop.tr("The file reads well." if short else "No problems.")
    shop.say(
        "{name}: fryers {fryers}, products {products}, programs {programs}. {end}",
        counts,
        name=found.site.name,
        end=end,
    )
    for program, facts in short:
        typer.echo(unanswered_line(found, program, facts, shop.tr))
