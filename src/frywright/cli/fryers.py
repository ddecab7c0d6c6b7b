"""``frywright care``, fryers: what is due, timed figures, and a new fryer from its plate to its handover."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING

import typer

from frywright.cli.care import app
from frywright.cli.shop import Shop, command, read_file
from frywright.cli.spoken import BARE
from frywright.model.plain import plain

if TYPE_CHECKING:
    from frywright.rooms.care.close import StepRow

__all__ = ["app"]
VALUES = typer.Argument(None, help="Values as name=value, such as volts=208 phases=3.")
FRYER = typer.Argument(help="Fryer.")


def read_values(pairs: Sequence[str] | None, **fixed: str) -> dict[str, str]:
    """Values typed as name=value; InputError for anything else."""
    from frywright.model.errors import InputError

    found = dict(fixed)
    for pair in pairs or ():
        name, sign, value = pair.partition("=")
        if not sign or not name:
            raise InputError("value", repr(pair), "name=value, such as volts=208")
        found[name] = value
    return found


@command(app)
def due(shop: Shop, soon: bool = typer.Option(False, help="Only what is due within a week.")) -> None:
    """Care that is due by loads, hours at heat, filter turns or days, the earliest first; and timed figures
    against the first day.
    """
    from frywright.rooms.care.upkeep import care_rows, wear_rows

    opened, kitchen = shop.both
    rows = [
        r
        for r in care_rows(opened, kitchen, shop.tr, shop.language)
        if not soon or r.state in ("overdue", "today", "soon")
    ]
    wear = wear_rows(opened, kitchen, shop.tr)
    if shop.json({"due": rows, "wear": wear}):
        return
    if not rows and not wear:
        shop.say("Nothing is due within a week." if soon else "Nothing is due.")
    for row in rows:
        parts = f"; {row.parts}" if row.parts else ""
        shop.say(
            "{state_words} {date} {counter} {name}: {title} ({who_words}, {takes_min} min{parts})",
            row,
            state_words=f"{row.state_words:<18}",
            date=f"{row.date:<10}",
            counter=f"{row.counter:<13}",
            parts=parts,
        )
    for w in wear:
        shop.say(
            "{name}, {title}: {first} first day, {last} now. {text}",
            w,
            first=w.first or "?",
            last=w.last or "?",
        )


@command(app)
def done(
    shop: Shop,
    fryer: str = FRYER,
    task: str = typer.Argument(help="Task, such as lid_seal."),
    who: str = typer.Option(help="Who did it."),
    role: str = typer.Option("crew", help="crew, lead, technician or licensed."),
    note: str = typer.Option("", help="What was found; a contractor's report number."),
    on: str = typer.Option("", help="Day, if not today."),
    thermometer: str = typer.Option("", help="Of a calibration: the reference thermometer."),
    set_temp: str = typer.Option("", help=f"Of a calibration: the set point. {BARE}"),
    before_temp: str = typer.Option("", help=f"Of a calibration: mean of five cycles, before. {BARE}"),
    after_temp: str = typer.Option("", help=f"Of a calibration: the same after, if adjusted. {BARE}"),
) -> None:
    """Record a care task as done; contractors' tasks cannot be ticked off by others."""
    from frywright.rooms.care.heat_check import ASKED
    from frywright.rooms.care.upkeep import tick

    figures = dict(zip(ASKED, (thermometer, set_temp, before_temp, after_temp), strict=True))
    told = {"fryer": fryer, "task": task, "who": who, "role": role, "note": note, "date": on}
    kept = tick(*shop.both, {**told, **figures})
    shop.kept(kept.number)


@command(app)
def figure(
    shop: Shop,
    fryer: str = FRYER,
    what: str = typer.Argument(help="heat_up, pressure_build, vent_down or recovery."),
    time: str = typer.Argument(help="m:ss."),
    who: str = typer.Option("", help="Who timed it."),
    note: str = typer.Option("", help="Temperatures, load, level."),
) -> None:
    """Keep a timed figure; it is compared with the first day's."""
    from frywright.rooms.care.upkeep import tell_figure, wear_rows

    opened, kitchen = shop.both
    kept = tell_figure(
        opened, kitchen, {"fryer": fryer, "figure": what, "time": time, "who": who, "note": note}
    )
    row = next(w for w in wear_rows(opened, kitchen, shop.tr) if (w.fryer, w.figure) == (fryer, what))
    if not shop.json({"number": kept.number, **plain(row)}):
        shop.say("Entry {number} kept. {text}", row, number=kept.number)


@command(app)
def calendar(shop: Shop, out: Path = typer.Option(Path("fryer-care.ics"), help="File to write.")) -> None:
    """Write everything with a due day as an iCalendar file."""
    from frywright.rooms.care.upkeep import calendar_text

    shop.written(out, calendar_text(*shop.both).encode())


@command(app)
def plate(
    shop: Shop,
    fryer: str = FRYER,
    values: list[str] = VALUES,
    photo: Path = typer.Option(None, help="Photo of the plate."),
) -> None:
    """Keep a fryer's nameplate: maker, model, serial, fuel, volts, phases, hz, power, gas, gas_low, gas_high,
    oil, year; units may be typed, such as power=80000Btu/h.
    """
    from frywright.rooms.care.nameplate import keep_plate

    opened, kitchen = shop.both
    told = read_values(values, fryer=fryer)
    stream = BytesIO(read_file(photo, "--photo")) if photo else None
    shop.kept(keep_plate(opened, kitchen, told, stream).number)


@command(app)
def measured(shop: Shop, fryer: str = FRYER, values: list[str] = VALUES) -> None:
    """Keep what was measured at the site: volts, phases, breaker_amps, gas, gas_static, gas_flowing,
    altitude, flame, hood, suppression.
    """
    from frywright.rooms.care.commissioning import commissioning_view
    from frywright.rooms.care.nameplate import keep_site

    opened, kitchen = shop.both
    keep_site(opened, kitchen, read_values(values, fryer=fryer))
    view = commissioning_view(opened, kitchen, fryer, shop.language, shop.tr)
    if shop.json({"go": view.go, "points": view.points}):
        return
    for point in view.points:
        typer.echo(f"{point.outcome:<8} {point.name}: {point.text}")


@command(app)
def sign(
    shop: Shop,
    fryer: str = FRYER,
    step: str = typer.Argument(help="Step, such as dry."),
    values: list[str] = VALUES,
) -> None:
    """Sign a step of a commissioning in its order: who=, role=, second=, note=.

    Figures as m:ss: first_heat takes heat_up= and the marks from_temp= and to_temp=, proof takes recovery=
    and, under pressure, pressure_build= and vent_down=. fill takes oil=.
    """
    from frywright.rooms.care.commissioning import commissioning_view, sign_step

    opened, kitchen = shop.both
    told = read_values(values, fryer=fryer, step=step)
    shop.confirm(told.get("second", ""))
    sign_step(opened, kitchen, told)
    view = commissioning_view(opened, kitchen, fryer, shop.language, shop.tr)
    if not shop.json({"open": view.open}):
        shop.say("Signed. Still open: {open}.", open=", ".join(view.open) or shop.tr("nothing"))


@command(app, engine=True)
def handover(
    shop: Shop, fryer: str = FRYER, out: Path = typer.Option(Path("handover.pdf"), help="PDF to write.")
) -> None:
    """Print a fryer's handover pack as one PDF; with --json the commissioning as it stands."""
    from frywright.rooms.care.commissioning import commissioning_view
    from frywright.rooms.care.handover import handover_pack

    opened, kitchen = shop.both
    if shop.as_json:
        shop.json(commissioning_view(opened, kitchen, fryer, shop.language, shop.tr))
        return
    shop.written(out, handover_pack(opened, kitchen, fryer, shop.language, shop.tr))


@command(app)
def emergency(shop: Shop, out: Path = typer.Option(Path("emergency.pdf"), help="PDF to write.")) -> None:
    """Print the emergency card from the store's own facts."""
    from frywright.rooms.care.handover import emergency_pdf

    shop.written(out, emergency_pdf(shop.kitchen, shop.language, shop.tr))


def _step_line(where: str, step: StepRow) -> str:
    """A step of the night: signed, shut and why, or open with its hazard."""
    mark = "x" if step.done else "#" if step.shut else " "
    line = f"  [{mark}] {where} {step.key}: {step.title}" + (f" ({step.shut})" if step.shut else "")
    return f"{line}\n      ! {step.hazard}" if mark == " " and step.hazard else line


@command(app, engine=True)
def close(
    shop: Shop,
    fryer: str = typer.Argument("", help="Fryer or store; without it tonight's list."),
    step: str = typer.Argument("", help="Step to sign."),
    who: str = typer.Option("", help="Who did it."),
    second: str = typer.Option("", help="Second person."),
    value: str = typer.Option(
        "", help="Oil temperature, pH, per cent polar or how much. A bare number is in the kitchen's unit."
    ),
) -> None:
    """The close of the day in its order: what each vat gets tonight, what is open, what is shut and why; or
    sign a step.
    """
    from frywright.rooms.care.close import close_day_view, sign_close

    opened, kitchen = shop.both
    if step:
        shop.confirm(second)
        sign_close(
            opened, kitchen, {"fryer": fryer, "step": step, "who": who, "second": second, "value": value}
        )
    view = close_day_view(opened, kitchen, shop.language, shop.tr)
    if shop.json(view):
        return
    shop.say(
        "Two people for every move of oil, one move at a time, never in haste. Heat off and tagged before"
        " draining. No water near hot oil, no oil before dry is signed by two."
    )
    for one in view.fryers:
        typer.echo(f"{one.name}: {one.plan_words}. {one.why}")
        for s in one.steps:
            typer.echo(_step_line(one.key, s))
    for s in view.store:
        typer.echo(_step_line("store", s))
