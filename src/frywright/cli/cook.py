"""``frywright cook``: ask the engine."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import typer

app = typer.Typer(help="Cook programs: simulate and judge.", no_args_is_help=True)


@app.callback()
def main() -> None:
    """Cook programs: simulate and judge."""


@app.command()
def simulate(
    kitchen: Path = typer.Argument(help="Kitchen file (TOML)."),
    program: str = typer.Option(..., help="Name of the program."),
    heads: float | None = typer.Option(None, help="Load in heads (or pieces); default is the full load."),
    load: str = typer.Option("", help="Load by mass, for example 12lb or 5.4kg."),
    load_kg: float | None = typer.Option(None, help="Load in kilograms."),
    start_temp: str = typer.Option("", help="Temperature of the food at the drop, for example 4C or 38F."),
    oil_temp: str = typer.Option(
        "", help="Oil temperature at the drop, for example 335F; default is the first set point."
    ),
    altitude: str = typer.Option("", help="Altitude, for example 1600m or 5250ft; default is the kitchen's."),
    as_json: bool = typer.Option(False, "--json", help="Print JSON in SI units."),
    chart: Path | None = typer.Option(None, help="Write the curves as a picture (SVG)."),
) -> None:
    """Simulate a program on a load and judge the coldest spot of every piece."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.model.errors import InputError
        from frywright.workbench.cook import CookRequest, ask
        from frywright.workbench.kitchens import open_kitchen
        from frywright.workbench.view import cook_view, plain_json

        if load and load_kg is not None:
            raise InputError("load", "given twice", "either --load or --load-kg")
        place = open_kitchen(kitchen)
        answer = ask(place, CookRequest(
            program=place.program(program), units_count=heads,
            load_kg=_value(load, "mass", "--load") if load else load_kg,
            start_temp_c=_value(start_temp, "temperature", "--start-temp"),
            oil_start_c=_value(oil_temp, "temperature", "--oil-temp"),
            altitude_m=_value(altitude, "length", "--altitude"),
        ))  # fmt: skip
        view = cook_view(answer, str(place.site.units))
        if chart is not None:
            write_chart(view, chart)
        if as_json:
            emit_json(plain_json(answer))
        else:
            print_view(view)


def _value(text: str, dimension: str, name: str) -> float | None:
    from frywright.model.units import parse

    return parse(text, dimension, name) if text else None


def write_chart(view: dict[str, Any], path: Path) -> None:
    """Write the curves of a view to an SVG file."""
    from frywright.model.errors import InputError
    from frywright.reports.chart import cook_spec, svg

    words = {"oil": "oil", "minutes": "minutes since the drop", "pressure": "gauge"}
    if path.suffix.lower() != ".svg":
        raise InputError("--chart", str(path), "a file name that ends in .svg")
    try:
        path.write_text(svg(cook_spec(view, words)), "utf-8")
    except OSError as error:
        raise InputError("--chart", str(path), f"a place that can be written ({error.strerror})") from error


def print_view(view: dict[str, Any]) -> None:
    """A view on the terminal: verdict first, then pieces, sums and notes."""
    from rich.console import Console
    from rich.table import Table

    console = Console(highlight=False)
    head, load = view["program"], view["load"]
    console.print(f"[bold]{head['name']}[/bold] v{head['version']} · {head['fryer']}")
    console.print(f"{head['product']} · {load['count']} × {load['unit']} ({load['mass']}) · {view['altitude']}\n")
    console.print(f"[bold]{view['headline']['word'].upper()}[/bold]  {view['headline']['sentence']}")
    if view["lid"]:
        console.print(f"[bold]LID {view['lid']['word'].upper()}[/bold]  {view['lid']['sentence']}")
    table = Table(box=None, pad_edge=False, header_style="bold")
    for name in ("piece", "mass", "core at lift", "core peak", "crust", "colour dE", "log", "yield"):
        table.add_column(name, justify="left" if name == "piece" else "right")
    for piece in view["pieces"]:
        table.add_row(
            *(piece[k] for k in ("name", "mass", "core_at_lift", "core_peak", "crust", "colour", "logs", "yield"))
        )
    console.print()
    console.print(table)
    console.print()
    for row in view["summary"]:
        console.print(f"  {row['name']}: {row['value']}")
    console.print()
    for note in view["notes"]:
        console.print(f"[dim]note[/dim] {note['text']}")
