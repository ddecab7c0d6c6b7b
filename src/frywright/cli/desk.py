"""``frywright cook design|transfer|window|changes``: the program desk on the terminal."""

from __future__ import annotations

from pathlib import Path

import typer

from frywright.cli import cook
from frywright.cli.cook import _value

app = cook.app


def _pair(text: str, name: str) -> list[str]:
    from frywright.model.errors import InputError

    parts = text.split("-")
    if len(parts) != 2:
        raise InputError(name, repr(text), "a range such as 165F-195F")
    return parts


@app.command()
def design(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    product: str = typer.Option(..., help="Key of the product."),
    fryer: str = typer.Option(..., help="Key of the fryer."),
    margin: float = typer.Option(3.0, help="Kelvin to spare in the worst case."),
    longest: str = typer.Option("25:00", help="Longest time, drop to lift."),
    most_loss: float = typer.Option(35.0, help="Most moisture loss, % of breaded weight."),
    colour_low: float = typer.Option(4.0, help="Least colour change dE."),
    colour_high: float = typer.Option(14.0, help="Most colour change dE."),
    core: str = typer.Option("74C-99C", help="Core of the usual load at the lift, low-high."),
    crust: str = typer.Option("0-10", help="Crust of the usual load, low-high in mm."),
    hottest: str = typer.Option("185C", help="Hottest oil allowed, for its life."),
    stages: int | None = typer.Option(None, help="Stages; default is what the controller holds, at most 4."),
    seed: int = typer.Option(1, help="Same seed, same answer."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Design a staged program for a product on a fryer; Ctrl+C cancels."""
    from frywright.cli.output import emit_json, preparing, speaking_errors, working

    with speaking_errors(as_json), preparing():
        from frywright.cli.shop import open_kitchen
        from frywright.design.search import Effort, Goals
        from frywright.workbench.desk import design_json, design_program, edge_sentence, window_of

        place = open_kitchen(kitchen)
        system = str(place.site.units)
        core_low, core_high = (_value(place, part, "temperature", "--core") or 0.0 for part in _pair(core, "--core"))
        crust_low, crust_high = (
            _value(place, part + "mm", "length", "--crust") or 0.0 for part in _pair(crust, "--crust")
        )
        goals = Goals(
            core_low_c=core_low, core_high_c=core_high, crust_low_m=crust_low, crust_high_m=crust_high,
            margin_k=margin, longest_s=_value(place, longest, "time", "--longest") or 0.0, most_loss_frac=most_loss / 100,
            colour_low_n=colour_low, colour_high_n=colour_high, hottest_c=_value(place, hottest, "temperature", "--hottest") or 0.0,
        )  # fmt: skip
        with working("Designing", quiet=as_json) as progress:
            found, proof = design_program(
                place, product, fryer, goals, Effort(stages=stages, seed=seed, progress=progress)
            )
        told = design_json(found, proof, system)
        if as_json:
            emit_json(told)
            return
        made = told["recommended"]["program"]
        typer.echo(f"{made['name']}, version {made['version']}")
        typer.echo("\n".join(told["recommended"]["stages"]))
        typer.echo(f"\n{told['reason']}\n{told['proof']['sentence']}\n")
        for edge in window_of(place, found.recommended.program)[1]:
            typer.echo(f"  {edge_sentence(edge, system)}")


@app.command()
def transfer(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    program: str = typer.Option(..., help="Name of the program to carry."),
    fryer: str = typer.Option(..., help="Key of the target fryer."),
    product: str = typer.Option("", help="Key of another product, for another bird size."),
    bird: str = typer.Option(
        "", help="Weight of one bird (or piece) there, for example 2.9lb; default is the product's."
    ),
    heads: float | None = typer.Option(None, help="Load of the target in heads or pieces; default is full."),
    altitude: str = typer.Option("", help="Altitude of the target, for example 1600m."),
    stages: int | None = typer.Option(None, help="Stages of the target; default is what its controller holds."),
    seed: int = typer.Option(1, help="Same seed, same answer."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON."),
) -> None:
    """Carry a program to another fryer, bird or place with the same core, crust and loss."""
    from frywright.cli.output import emit_json, preparing, speaking_errors, working

    with speaking_errors(as_json), preparing():
        from frywright.cli.shop import open_kitchen
        from frywright.design.search import Effort
        from frywright.design.transfer import Target
        from frywright.workbench.desk import at_altitude, transfer_json, transfer_program

        place = open_kitchen(kitchen)
        with working("Carrying over", quiet=as_json) as progress:
            there = at_altitude(place, _value(place, altitude, "length", "--altitude"))
            target = Target(
                kitchen=there,
                fryer=fryer,
                product=product or None,
                load_heads=heads,
                unit_mass_kg=_value(place, bird, "mass", "--bird"),
            )
            effort = Effort(stages=stages, seed=seed, progress=progress)
            found, proof = transfer_program(place, place.program(program), target, effort)
        told = transfer_json(found, proof, str(place.site.units))
        if as_json:
            emit_json(told)
            return
        typer.echo(f"{told['program']['name']}, version {told['program']['version']}")
        typer.echo("\n".join(told["stages"]))
        for line in told["unmatched"] or ["core, crust, loss and colour match"]:
            typer.echo(f"  {line}")
        typer.echo(told["proof"]["sentence"])
