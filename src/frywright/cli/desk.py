"""``frywright cook design|transfer|window|changes``: the program desk on the terminal."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import typer

from frywright.cli import cook
from frywright.cli.output import emit_json, working
from frywright.cli.shop import Shop, command
from frywright.cli.spoken import BARE

if TYPE_CHECKING:
    from frywright.design.search import Goals
    from frywright.model.kitchen import Site
    from frywright.rooms.cook.desk import DesignView

app = cook.app


def _pair(text: str, name: str) -> list[str]:
    from frywright.model.errors import InputError

    parts = text.split("-")
    if len(parts) != 2:
        raise InputError(name, repr(text), "a range such as 165F-195F")
    return parts


def goals_of(site: Site, typed: dict[str, str], core: str, crust: str) -> Goals:
    """The goals typed, core and crust as ranges."""
    from frywright.rooms.cook.goals import goals_typed

    for name, text in (("core", core), ("crust", crust)):
        typed |= dict(zip((f"{name}_low", f"{name}_high"), _pair(text, f"--{name}"), strict=True))
    options = {"loss": "--most-loss", "colour_low": "--colour-low", "colour_high": "--colour-high"}
    return goals_typed(site, typed, {b: options.get(b, f"--{b.partition('_')[0]}") for b in typed})


@command(app, kitchen=True, engine=True)
def design(
    shop: Shop,
    product: str = typer.Option(..., help="Key of the product."),
    fryer: str = typer.Option(..., help="Key of the fryer."),
    margin: str = typer.Option(
        "3C",
        show_default="3C = 5.4F",
        help=(
            "To spare over all loads in the worst case, for example 3C or 5F; a bare number is in the"
            " kitchen's degrees."
        ),
    ),
    longest: str = typer.Option("25:00", help="Longest time, drop to lift."),
    most_loss: str = typer.Option(
        "35%", help="Most moisture loss of the breaded weight; a bare number is in %."
    ),
    colour_low: str = typer.Option("4", help="Least colour change."),
    colour_high: str = typer.Option("14", help="Most colour change."),
    core: str = typer.Option(
        "74C-99C",
        show_default="74C-99C = 165F-210F",
        help=f"Core of the usual load at the lift, low-high. {BARE}",
    ),
    crust: str = typer.Option(
        "0mm-10mm",
        show_default="0mm-10mm = 0in-0.39in",
        help="Crust of the usual load, low-high; a bare number is in mm, or in inches where pounds are used.",
    ),
    hottest: str = typer.Option(
        "185C", show_default="185C = 365F", help=f"Hottest oil allowed, for its life. {BARE}"
    ),
    stages: int | None = typer.Option(None, help="Stages; default is what the controller holds, at most 6."),
    row: int | None = typer.Option(
        None, help="Row of the trade-off to take instead of the chosen one; it is proved first."
    ),
    seed: int = typer.Option(1, help="Same seed, same answer."),
) -> None:
    """Design a staged program for a product on a fryer; Ctrl+C cancels."""
    from frywright.design.search import Effort
    from frywright.model.errors import InputError
    from frywright.rooms.cook.desk import (
        clock_sentence,
        design_program,
        design_view,
        row_view,
        take_row,
        window_of,
        window_rows,
    )

    place = shop.kitchen
    system = place.site.units
    typed = {"margin": margin, "longest": longest, "loss": most_loss, "hottest": hottest}
    typed |= {"colour_low": colour_low, "colour_high": colour_high}
    goals = goals_of(place.site, typed, core, crust)
    with working(shop.tr("Designing"), quiet=shop.as_json) as progress:
        effort = Effort(stages=stages, seed=shop.seed(seed), progress=progress)
        found, proof = design_program(place, product, fryer, goals, effort)
        made, told = found.recommended.program, design_view(found, proof, system, shop.tr)
        if row is not None:
            if not 1 <= row <= len(found.front):
                raise InputError("--row", row, "1 to {most}", most=len(found.front))
            taken = take_row(place, found.front[row - 1], goals)
            made, told = taken[0].program, replace(row_view(taken, system, shop.tr), front=told.front)
    rows = window_rows(window_of(place, made, goals), made, system, shop.tr)
    told = replace(told, window=rows, clock=clock_sentence(place, made, shop.tr))
    if shop.as_json:
        emit_json(told)
    else:
        print_design(shop, told)


def print_design(shop: Shop, told: DesignView) -> None:
    """A design on the terminal: stages, clock, why, margins by load, trade-off, window."""
    shop.say("{name}, version {version}", told.recommended.program)
    typer.echo("\n".join(told.recommended.stages))
    typer.echo(told.clock + "\n")
    for line in filter(None, (told.reason, told.late, told.proof.sentence)):
        typer.echo(line)
    for load in told.loads:
        shop.say("  {load}: {margin} in the worst case, straight after a full load", load)
    typer.echo()
    shop.say("Trade-off (take one with --row):")
    for number, c in enumerate(told.front, start=1):
        shop.say(
            "{mark}{number}  {time}  {loss} %  colour {colour}  {stages}",
            mark="*" if c.chosen else " ",
            number=f"{number:>3}",
            time=f"{c.time:>6}",
            loss=f"{100 * c.loss_frac:.1f}",
            colour=f"{c.colour_n:.1f}",
            stages="; ".join(c.stages),
        )
    typer.echo()
    shop.say("Window, each value alone over all loads:")
    for w in told.window:
        shop.say("  stage {stage}, {what} {keyed}: less: {less}; more: {more}", w)


@command(app, kitchen=True, engine=True)
def transfer(
    shop: Shop,
    program: str = typer.Option(..., help="Name of the program to carry."),
    fryer: str = typer.Option(..., help="Key of the target fryer."),
    product: str = typer.Option("", help="Key of another product, for another bird size."),
    bird: str = typer.Option(
        "", help=f"Weight of one bird (or piece) there, for example 2.9lb; default is the product's. {BARE}"
    ),
    heads: str = typer.Option("", help="Load of the target in heads or pieces; default is full."),
    altitude: str = typer.Option("", help=f"Altitude of the target, for example 1600m. {BARE}"),
    stages: int | None = typer.Option(
        None, help="Stages of the target; default is what its controller holds."
    ),
    seed: int = typer.Option(1, help="Same seed, same answer."),
) -> None:
    """Carry a program to another fryer, bird or place with the same core, crust and loss."""
    from frywright.design.search import Effort
    from frywright.design.transfer import Target
    from frywright.rooms.cook.desk import at_altitude, transfer_program, transfer_view

    place = shop.kitchen
    with working(shop.tr("Carrying over"), quiet=shop.as_json) as progress:
        there = at_altitude(place, shop.read(altitude, "length", "--altitude"))
        target = Target(
            kitchen=there,
            fryer=fryer,
            product=product or None,
            load_heads=shop.number(heads, "--heads"),
            unit_mass_kg=shop.read(bird, "mass", "--bird"),
        )
        effort = Effort(stages=stages, seed=shop.seed(seed), progress=progress)
        found, proof = transfer_program(place, place.program(program), target, effort)
    told = transfer_view(found, proof, shop.units, shop.tr)
    if shop.as_json:
        emit_json(told)
        return
    shop.say("{name}, version {version}", told.program)
    typer.echo("\n".join(told.stages))
    for line in told.unmatched or [shop.tr("core, crust, loss and colour match")]:
        typer.echo(f"  {line}")
    typer.echo(told.proof.sentence)
