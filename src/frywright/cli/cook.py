"""``frywright cook``: ask the engine."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import typer

from frywright.cli.output import emit_json, working
from frywright.cli.shop import Shop, command, write_file
from frywright.cli.spoken import BARE

if TYPE_CHECKING:
    from frywright.model.program import Program
    from frywright.rooms.cook.break_even import BreakEvenRow
    from frywright.rooms.cook.compare import ReadBackView
    from frywright.rooms.cook.view import CookView
    from frywright.trial.predicted import FactsShown
    from frywright.trial.proof import ProofView

app = typer.Typer()


@command(app, kitchen=True, engine=True)
def simulate(
    shop: Shop,
    program: str = typer.Option(..., help="Name of the program."),
    heads: str = typer.Option("", help="Load in heads (or pieces); default is the full load."),
    load: str = typer.Option(
        "", help="Load by mass, for example 12lb or 5.4kg; a bare number is in the kitchen's unit."
    ),
    start_temp: str = typer.Option(
        "", help=f"Temperature of the food at the drop, for example 4C or 38F. {BARE}"
    ),
    oil_temp: str = typer.Option(
        "", help=f"Oil temperature at the drop, for example 335F; default is the first set point. {BARE}"
    ),
    altitude: str = typer.Option(
        "", help=f"Altitude, for example 1600m or 5250ft; default is the kitchen's. {BARE}"
    ),
    chart: Path | None = typer.Option(None, help="Write the curves as a picture (SVG)."),
) -> None:
    """Simulate a program on a load and judge the coldest spot of every piece."""
    from frywright.rooms.cook.told import cook_told
    from frywright.rooms.cook.view import cook_view
    from frywright.trial.ask import CookRequest, ask

    place = shop.kitchen
    answer = ask(
        place,
        CookRequest(
            program=place.program(program),
            units_count=shop.number(heads, "--heads"),
            load_kg=shop.read(load, "mass", "--load"),
            start_temp_c=shop.read(start_temp, "temperature", "--start-temp"),
            oil_start_c=shop.read(oil_temp, "temperature", "--oil-temp"),
            altitude_m=shop.read(altitude, "length", "--altitude"),
        ),
    )
    view = cook_view(answer, shop.units, shop.tr)
    if chart is not None:
        write_chart(shop, view, chart)
    if shop.as_json:
        emit_json(cook_told(answer).payload())
    else:
        print_view(shop, view)


def facts_lines(facts: FactsShown) -> list[tuple[str, str]]:
    """Two lines, each with its head: what is predicted, and what is proven."""
    sign = "▼" if facts.short else {"over": "▲"}.get(facts.state, "◇")
    head = " ".join(part for part in (sign, facts.word.upper(), facts.amount) if part)
    shape = "●" if facts.proven else "○"
    return [
        (head, f"  {facts.predicted}"),
        (f"{shape} {facts.proven_word.upper()}", f"  {facts.evidence}"),
    ]


def write_chart(shop: Shop, view: CookView, path: Path) -> None:
    """Write the curves of a view to an SVG file."""
    from frywright.model.errors import InputError
    from frywright.paper.chart import cook_spec, svg

    words = {
        "oil": shop.tr("oil"),
        "minutes": shop.tr("minutes since the drop"),
        "pressure": shop.tr("gauge"),
    }
    if path.suffix.lower() != ".svg":
        raise InputError("--chart", str(path), "a file name that ends in .svg")
    write_file(path, svg(cook_spec(view.picture, words)).encode(), "--chart")


class Words:
    """Words on the terminal, as they are: brackets in a name are no style, and no word is a picture."""

    def __init__(self) -> None:
        from rich.console import Console

        self.print = Console(highlight=False, markup=False, emoji=False).print

    def headed(self, head: str, rest: str, style: str = "bold") -> None:
        """A line whose head stands out."""
        from rich.text import Text

        self.print(Text.assemble((head, style), rest))


def print_view(shop: Shop, view: CookView) -> None:
    """A view on the terminal: verdict first, then pieces, sums and notes."""
    from rich.table import Table

    console = Words()
    head, load = view.program, view.load
    console.headed(head.name, f" v{head.version} · {head.fryer}")
    console.print(f"{head.product} · {load.count} × {load.unit} ({load.mass}) · {view.altitude}\n")
    for line in facts_lines(view.facts):
        console.headed(*line)
    console.print(view.headline.sentence)
    if view.lid:
        console.headed(f"{shop.tr('LID')} {view.lid.word.upper()}", f"  {view.lid.sentence}")
    console.print(view.clock.sentence)
    table = Table(box=None, pad_edge=False, header_style="bold")
    for name in (
        "piece",
        "mass",
        "core at lift",
        "peak, not counted",
        "crust",
        "colour change",
        "log",
        "yield",
    ):
        table.add_column(shop.tr(name), justify="left" if name == "piece" else "right", overflow="fold")
    for p in view.pieces:
        table.add_row(p.name, p.mass, p.core_at_lift, p.core_peak, p.crust, p.colour, p.logs, p.yield_)
    console.print()
    console.print(table)
    console.print()
    for row in view.summary:
        console.print(f"  {row.name}: {row.value}")
    console.print()
    for note in view.notes:
        console.headed(shop.tr("note"), f" {note.text}", "dim")


@command(app, kitchen=True, engine=True)
def prove(
    shop: Shop,
    program: str = typer.Option(..., help="Name of the program."),
    heads: str = typer.Option(
        "", help="Largest load of the program in heads (or pieces); default is the full load."
    ),
    samples: int = typer.Option(1024, help="Simulated loads."),
    seed: int | None = typer.Option(
        None, help="Same seed, same answer; default is the number of the version, so that each draws its own."
    ),
    break_even: str = typer.Option(
        "",
        help=(
            "Estimate also at which time, or set point, of its main stage this share of the loads fails, such"
            " as 1%; a bare number is in %."
        ),
    ),
) -> None:
    """Prove a program over the worst cases a store meets; Ctrl+C cancels."""
    from dataclasses import asdict, replace

    from frywright.trial.proof import proof_view, prove_program

    place = shop.kitchen
    found = place.program(program)
    if (most := shop.number(heads, "--heads")) is not None:
        found = replace(found, load_heads=most)
    share = shop.read(break_even, "fraction", "--break-even", "pct")
    seed = None if seed is None else shop.seed(seed)
    with working(shop.tr("Proving"), quiet=shop.as_json) as progress:
        answer = prove_program(place, found, samples=samples, seed=seed, progress=progress)
    rows = _break_even(shop, found, share) if share is not None else ()
    if shop.as_json:
        more = {} if share is None else {"break_even": rows}
        emit_json({**asdict(proof_view(answer)), **more})
        return
    print_proof(shop, proof_view(answer, shop.units, shop.tr))
    if rows:
        typer.echo()
        shop.say("Where loads begin to fail, estimated from some 400 simulated loads each (no proof):")
    for row in rows:
        shop.say("  {share} of the loads fail: stage {stage}, {what} {keyed}: {at}", row)


def _break_even(shop: Shop, program: Program, share: float) -> tuple[BreakEvenRow, ...]:
    from frywright.rooms.cook.break_even import break_even_of, break_even_rows

    found = break_even_of(shop.kitchen, program, (share,))
    return break_even_rows(found, program, shop.kitchen.site.units, shop.tr)


def print_proof(shop: Shop, proof: ProofView) -> None:
    """A proof on the terminal: sentence, cuts, what moves it, lowest corners."""
    from frywright.trial.proof import FACTOR_WORDS

    console = Words()
    for line in facts_lines(proof.facts):
        console.headed(*line)
    console.print(f"{proof.sentence}\n")
    for cut in proof.cuts:
        shop.say("  {name}: {meets} meet, at least {bound}, worst margin {worst}", cut)
    typer.echo()
    shop.say("What moves the lowest margin (rank correlation):")
    for factor, value in proof.sensitivity.items():
        bar = "█" * round(20 * abs(value))
        console.print(f"  {shop.tr(FACTOR_WORDS[factor]):<22} {value:+.2f} {bar}")
    if proof.smallest_full_pressure_load_frac is not None:
        console.print(f"\n{proof.small_loads}")
    if proof.ruled:
        typer.echo()
        shop.say("Lowest corner: {margin}", proof.lowest_corners[0])


@command(app, kitchen=True, engine=True)
def card(
    shop: Shop,
    program: str = typer.Option(..., help="Name of the program."),
    out: Path = typer.Option(..., help="PDF to write."),
    slot: int = typer.Option(0, help="Slot of the controller; default is the next free one of its fryer."),
    by: str = typer.Option("", help="Name of who answers for a program that is predicted short."),
    reason: str = typer.Option("", help="Why it is printed all the same."),
) -> None:
    """Print a program as a one-page card with its check figure."""
    from frywright.design.slots import sharing
    from frywright.paper.paper import pdf
    from frywright.rooms.cook.cards import card_data
    from frywright.rooms.cook.life import approvals
    from frywright.rooms.standing import slot_of, told_slots
    from frywright.trial.predicted import Answerer

    place = shop.kitchen
    found, who = (place.program(program), Answerer(by=by, reason=reason))
    slot = slot or slot_of(shop.store, place, found)
    shared = sharing(place, found, slot, told_slots(shop.store))
    approved = approvals(shop.store, place).get(found.name)
    data = card_data(place, found, slot, shop.language, shop.tr, who, shared, approved)
    if data.stamp:
        keep_short_card(shop, found, who)
    write_file(out, pdf("card.typ", "cards", [data]))
    if shop.as_json:
        shown = (
            "title",
            "slot",
            "version",
            "figure",
            "header",
            "rows",
            "rule",
            "load",
            "after",
            "approved",
            "shared",
            "total",
            "banner",
            "stamp",
            "facts",
            "alt",
        )
        emit_json({k: getattr(data, k) for k in shown})
    else:
        shop.say("{out}: {title}, check figure {figure}. {banner}", data, out=out)
        shop.say("As rounded for this controller: {alt}", data)
        if shared:
            typer.echo(f"⚠ {data.shared}")


def keep_short_card(shop: Shop, program: Any, who: Any) -> None:
    """Keep who answers for the card of a program that is predicted short."""
    from frywright.model.errors import InputError
    from frywright.rooms.cook.programs import keep_print

    if shop.store.sealed:
        raise InputError(
            "--store", "missing", "given: the card of a program that is predicted short is recorded"
        )
    keep_print(shop.store, shop.kitchen, [program], who)


@command(app, kitchen=True, engine=True)
def readback(
    shop: Shop,
    program: str = typer.Option(..., help="Name of the program."),
    values: list[str] = typer.Option(
        [], "--value", help="A value read from the machine, in order; without any you are asked one by one."
    ),
    setting: list[str] = typer.Option(
        [], help="scale=°F, clock=down, vent=runs on, lid1=open or NAME=VALUE, as the machine has it."
    ),
    slot: int = typer.Option(0, help="Slot of the controller; default is the next free one of its fryer."),
) -> None:
    """Compare what a machine holds with the card, the card hidden, and say what a slip would do."""
    from frywright.rooms.cook.compare import read_back, readback_view, value_names
    from frywright.rooms.standing import slot_of
    from frywright.trial.machine import settings_of

    place = shop.kitchen
    found = place.program(program)
    slot = slot or slot_of(shop.store, place, found)
    told = dict(pair.split("=", 1) for pair in setting if "=" in pair)
    if not values:
        for s in settings_of(place, found):
            name = (
                shop.tr("stage {stage}, {what}").format(stage=s.stage, what=shop.tr(s.what))
                if s.stage
                else s.name or shop.tr(s.what)
            )
            told[s.key] = typer.prompt(f"{name} ({' / '.join(s.choices)})" if s.choices else name)
    read = values or [
        typer.prompt(
            shop.tr("stage {stage}, {what}").format(stage=v.stage, what=shop.tr(v.what))
            if v.stage
            else shop.tr(v.what),
            default="",
            show_default=False,
        )
        for v in value_names(place, found, slot)
    ]
    result = read_back(place, found, slot, read, told)
    if shop.as_json:
        emit_json(readback_view(result, "metric"))
    else:
        print_readback(shop, readback_view(result, shop.units, shop.tr))
    if not result.matches:
        raise SystemExit(1)


def print_readback(shop: Shop, result: ReadBackView) -> None:
    """A read-back in words: what to do now, each mismatch, its likely slip, and what it would do."""
    if result.matches:
        shop.say("The machine holds what the card says (check figure {figure_card}).", result)
        return
    for line in (*result.orders, *result.warnings):
        typer.echo(line)
    for m in result.mismatches:
        place = shop.tr("stage {stage}, ").format(stage=m.stage) if m.stage else ""
        shop.say("✖ {place}{what}: card {card}, machine {machine} ({likely_slip})", m, place=place)
    shop.say("Check figure of the machine {figure_read}, of the card {figure_card}.", result)
    shop.say("As keyed, predicted:")
    for row in result.as_keyed:
        shop.say("  {name}: {held} (card {card})", row)


@command(app)
def live(
    shop: Shop,
    source: str = typer.Option(
        ..., help="mqtt://host/topic, mqtts://host/topic, serial:/dev/name?baud=9600 or file:path."
    ),
    to: str = typer.Option("", help="Server that follows the load, such as http://127.0.0.1:8000."),
    token: str = typer.Option("", envvar="FRYWRIGHT_TOKEN", help="Token of this device on that server."),
    seconds: float = typer.Option(0.0, help="Stop after so long; 0 goes on until Ctrl+C."),
) -> None:
    """Listen to probes while a load cooks: print their readings, or hand them on to the server."""
    import threading
    from time import monotonic

    from frywright.client.forward import Forward
    from frywright.client.http import Client
    from frywright.client.sources import open_source

    shop.pause(seconds, "--seconds")
    stop = threading.Event()
    forward = Forward(Client(address=to, token=token, timeout_s=5.0)) if to else None
    take = forward.take if forward is not None else lambda name, samples: _print_samples(shop, name, samples)
    heard, listen = open_source(source, take, stop)
    worker = _listening(listen, stop)
    began, said = monotonic(), ""
    try:
        while not stop.wait(1.0) and not (seconds and monotonic() - began >= seconds):
            said = _say_link(shop, heard, forward, said)
    except KeyboardInterrupt:
        pass
    finally:
        stop.set()
        worker.join(timeout=10.0)
        if forward is not None:
            forward.close()
        _say_link(shop, heard, forward, "")
    if worker.error is not None:
        raise worker.error


def _listening(listen: Callable[[], None], stop: Any) -> Any:
    """A thread that listens and keeps what broke it."""
    import threading

    class Listening(threading.Thread):
        error: Exception | None = None

        def run(self) -> None:
            try:
                listen()
            except Exception as error:
                self.error = error
            finally:
                stop.set()

    worker = Listening(daemon=True)
    worker.start()
    return worker


def _print_samples(shop: Shop, source: str, samples: list[Any]) -> None:
    """Readings on the terminal, in the kitchen's units where one is known."""
    from frywright.model.units import show

    system = shop.usual_units
    for sample in samples:
        if shop.as_json:
            told = {"source": source, "channel": sample.channel, "temp_c": sample.temp_c, "at_s": sample.at_s}
            emit_json(told)
        else:
            typer.echo(f"{source}/{sample.channel}  {show(sample.temp_c, 'c', system)}")


def _say_link(shop: Shop, heard: Any, forward: Any, said: str) -> str:
    """How the line, the server and the readings stand, where it changed."""
    parts = [shop.tr("Line: {link}.").format(link=heard.link)]
    if forward is not None:
        if forward.trouble:
            told = {"why": forward.trouble, "count": forward.waiting_count}
            parts.append(shop.tr("Server: {why} Readings that wait: {count}.").format(**told))
        if forward.lost_count:
            parts.append(shop.tr("Readings lost: {count}.").format(count=forward.lost_count))
    parts += [f"{count} × {why}" for why, count in sorted(heard.left_out.items())]
    text = " ".join(parts)
    if text != said and not shop.as_json:
        typer.echo(text, err=True)
    return text
