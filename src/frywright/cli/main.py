"""The ``frywright`` command. Everything heavy is imported inside the commands, and a room's commands only
where its name was typed.
"""

from __future__ import annotations

import sys
from collections.abc import Collection
from importlib import import_module

import typer

ROOMS = {
    "cook": (("cook", "desk"), "Cook programs: simulate and judge."),
    "kitchen": (("kitchen",), "Kitchen files."),
    "probe": (("probe",), "Probe logs, calibration, sampling proof, thermometers."),
    "day": (("day",), "The day: sales, forecast, pull sheet, drop plan, replay, live board."),
    "oil": (("oil",), "Oil: filling, log, outlook, cost, cartons."),
    "care": (("care", "fryers", "people"), "Care: site survey, energy of a day, procedure cards, stop-use."),
    "records": (("records", "dropping"), "The append-only store: verify, export, import, backup, restore."),
    "people": (("accounts",), "Accounts of people and devices."),
    "fleet": (("fleet",), "Many sites: sweep, versions, compare, release in waves."),
}
"""Modules that hold a room's commands, where each adds to the first one's, and what the room is for."""


own = typer.Typer()
"""Commands of no room."""


@own.command()
def serve(
    store: str = typer.Option("var/frywright.db", help="File that remembers everything."),
    kitchen_file: str = typer.Option(
        "", "--kitchen", help="Kitchen file to load; without it the store's, or its set-up begins."
    ),
    demo: bool = typer.Option(False, "--demo", help="Play the invented demo into a new store."),
    reason: str = typer.Option(
        "", help="Why the kitchen file changes; needed where it moves what is predicted."
    ),
    port: int = typer.Option(8377, help="Port."),
    host: str = typer.Option(
        "127.0.0.1", help="Address to listen on; any but this machine's own needs an owner."
    ),
    open_page: bool = typer.Option(True, "--open/--no-open", help="Open the page in a browser."),
    log: str = typer.Option("none", help="A line a request to the standard error: none, plain or json."),
    processes: int = typer.Option(1, help="How many processes answer; two for some hundred tablets."),
) -> None:
    """Serve the pages on this machine and open them."""
    from frywright.cli.output import preparing, speaking_errors

    with speaking_errors(), preparing():
        from frywright.rooms.kitchen import open_store
        from frywright.web.serve import serve_pages

        opened = open_store(store, kitchen_file, reason)
        if demo:
            from frywright.rooms.demo import play_demo

            play_demo(opened)
        serve_pages(opened, port, open_page, host, log, processes)


@own.command()
def prepare() -> None:
    """Compile the engines for this machine, so that nobody waits for them later."""
    from frywright.cli.output import preparing, speaking_errors

    with speaking_errors(), preparing():
        from frywright.trial.warm import warm_up

        typer.echo(f"Engines ready after {warm_up():.1f} s.")


def commands(named: Collection[str]) -> typer.Typer:
    """All commands; rooms that are not named have none of their own yet."""
    app = typer.Typer(
        help=(
            "Workbench for the fryers of a fried-chicken kitchen. It plans, records and checks; it never "
            "controls a fryer, and the maker's manual, local codes and licensed technicians come first. "
            "A value may be typed with its unit; a number alone is in the kitchen's unit."
        ),
        no_args_is_help=True,
        add_completion=False,
        pretty_exceptions_enable=False,
        rich_markup_mode=None,
    )
    app.registered_commands += own.registered_commands
    for name, (modules, purpose) in ROOMS.items():
        read = [import_module(f"frywright.cli.{module}").app for module in modules if name in named]
        app.add_typer(read[0] if read else typer.Typer(), name=name, help=purpose, no_args_is_help=True)
    return app


def __getattr__(name: str) -> typer.Typer:
    """``app``, with the commands of every room."""
    if name != "app":
        raise AttributeError(name)
    return commands(ROOMS)


def run() -> None:
    """Entry point: help and refusals in a person's language; a closed pipe is not an error."""
    from typer.main import get_command

    from frywright.cli.spoken import UsageError, asks_help, language_of, refusal, speak
    from frywright.voice.tongue import translator

    words = sys.argv[1:]
    command = get_command(commands(words))
    try:
        if asks_help(command, words):
            speak(command, translator(language_of(words)))
        sys.exit(command.main(args=words, prog_name="frywright", standalone_mode=False))
    except UsageError as error:
        sys.stderr.write(refusal(error, translator(language_of(words))) + "\n")
        sys.exit(2)
    except typer.Abort:
        sys.exit(1)
    except BrokenPipeError:
        sys.exit(0)
