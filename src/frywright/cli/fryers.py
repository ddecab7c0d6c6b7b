"""``frywright care``, fryers: what is due, timed figures, and a new fryer from its plate to its handover."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import typer

from frywright.cli.care import app
from frywright.cli.shop import JSON, STORE, open_shop

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


@app.command()
def due(
    language: str = typer.Option("en", help="Language, such as es."),
    soon: bool = typer.Option(False, help="Only what is due within a week."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Care that is due by loads, hours at heat, filter turns or days, the earliest first; and timed figures
    against the first day.
    """
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.upkeep import care_rows, wear_rows
        from frywright.voice.tongue import translator

        opened, kitchen = open_shop(store)
        tr = translator(language)
        rows = [
            r
            for r in care_rows(opened, kitchen, tr, language)
            if not soon or r["state"] in ("overdue", "today", "soon")
        ]
        wear = wear_rows(opened, kitchen, tr)
        if as_json:
            emit_json({"ok": True, "due": rows, "wear": wear})
            return
        for row in rows:
            parts = f"; {row['parts']}" if row["parts"] else ""
            typer.echo(
                f"{row['state_words']:<18} {row['date']:<10} {row['counter']:<13} {row['name']}:"
                f" {row['title']} ({row['who_words']}, {row['takes_min']} min{parts})"
            )
        for w in wear:
            typer.echo(
                f"{w['name']}, {w['title']}: {w['first'] or '?'} first day, {w['last'] or '?'} now."
                f" {w['text']}"
            )


@app.command()
def done(
    fryer: str = FRYER,
    task: str = typer.Argument(help="Task, such as lid_seal."),
    who: str = typer.Option(help="Who did it."),
    role: str = typer.Option("crew", help="crew, lead, technician or licensed."),
    note: str = typer.Option("", help="What was found; a contractor's report number."),
    on: str = typer.Option("", help="Day, if not today."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Record a care task as done; contractors' tasks cannot be ticked off by others."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.upkeep import tick

        kept = tick(
            *open_shop(store),
            {"fryer": fryer, "task": task, "who": who, "role": role, "note": note, "date": on},
        )
        (
            emit_json({"ok": True, "number": kept.number})
            if as_json
            else typer.echo(f"Entry {kept.number} kept.")
        )


@app.command()
def figure(
    fryer: str = FRYER,
    what: str = typer.Argument(help="heat_up, pressure_build, vent_down or recovery."),
    time: str = typer.Argument(help="m:ss."),
    who: str = typer.Option("", help="Who timed it."),
    note: str = typer.Option("", help="Temperatures, load, level."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Keep a timed figure; it is compared with the first day's."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.upkeep import tell_figure, wear_rows

        opened, kitchen = open_shop(store)
        kept = tell_figure(
            opened, kitchen, {"fryer": fryer, "figure": what, "time": time, "who": who, "note": note}
        )
        row = next(w for w in wear_rows(opened, kitchen) if (w["fryer"], w["figure"]) == (fryer, what))
        (
            emit_json({"ok": True, "number": kept.number, **row})
            if as_json
            else typer.echo(f"Entry {kept.number} kept. {row['text']}")
        )


@app.command()
def calendar(
    out: Path = typer.Option(Path("fryer-care.ics"), help="File to write."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Write everything with a due day as an iCalendar file."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.upkeep import calendar_text

        out.write_text(calendar_text(*open_shop(store)), encoding="utf-8", newline="")
        emit_json({"ok": True, "file": str(out)}) if as_json else typer.echo(f"{out} written.")


@app.command()
def plate(
    fryer: str = FRYER,
    values: list[str] = VALUES,
    photo: Path = typer.Option(None, help="Photo of the plate."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Keep a fryer's nameplate: maker, model, serial, fuel, volts, phases, hz, power, gas, gas_low, gas_high,
    oil, year; units may be typed, such as power=80000Btu/h.
    """
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.nameplate import keep_plate

        opened, kitchen = open_shop(store)
        told = read_values(values, fryer=fryer)
        if photo is None:
            kept = keep_plate(opened, kitchen, told)
        else:
            with photo.open("rb") as stream:
                kept = keep_plate(opened, kitchen, told, stream)
        (
            emit_json({"ok": True, "number": kept.number})
            if as_json
            else typer.echo(f"Entry {kept.number} kept.")
        )


@app.command()
def measured(
    fryer: str = FRYER, values: list[str] = VALUES, store: str = STORE, as_json: bool = JSON
) -> None:
    """Keep what was measured at the site: volts, phases, breaker_amps, gas, gas_static, gas_flowing,
    altitude, flame, hood, suppression.
    """
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.commissioning import commissioning_view
        from frywright.rooms.care.nameplate import keep_site

        opened, kitchen = open_shop(store)
        keep_site(opened, kitchen, read_values(values, fryer=fryer))
        view = commissioning_view(opened, kitchen, fryer)
        if as_json:
            emit_json({"ok": True, "go": view["go"], "points": view["points"]})
            return
        for point in view["points"]:
            typer.echo(f"{point['outcome']:<8} {point['name']}: {point['text']}")


@app.command()
def sign(
    fryer: str = FRYER,
    step: str = typer.Argument(help="Step, such as dry."),
    values: list[str] = VALUES,
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Sign a step of a commissioning in its order: who=, role=, second=, note=, figures as m:ss."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.commissioning import commissioning_view, sign_step

        opened, kitchen = open_shop(store)
        sign_step(opened, kitchen, read_values(values, fryer=fryer, step=step))
        view = commissioning_view(opened, kitchen, fryer)
        if as_json:
            emit_json({"ok": True, "open": view["open"]})
        else:
            typer.echo("Signed. Still open: " + (", ".join(view["open"]) or "nothing") + ".")


@app.command()
def handover(
    fryer: str = FRYER,
    out: Path = typer.Option(Path("handover.pdf"), help="PDF to write."),
    language: str = typer.Option("en", help="Language, such as es."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Print a fryer's handover pack as one PDF; with --json the commissioning as it stands."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.care.commissioning import commissioning_view
        from frywright.rooms.care.handover import handover_pack
        from frywright.voice.tongue import translator

        opened, kitchen = open_shop(store)
        if as_json:
            emit_json(
                {"ok": True, **commissioning_view(opened, kitchen, fryer, language, translator(language))}
            )
            return
        out.write_bytes(handover_pack(opened, kitchen, fryer, language, translator(language)))
        typer.echo(f"{out} written.")


@app.command()
def emergency(
    out: Path = typer.Option(Path("emergency.pdf"), help="PDF to write."),
    language: str = typer.Option("en", help="Language, such as es."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Print the emergency card from the store's own facts."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.handover import emergency_pdf
        from frywright.voice.tongue import translator

        out.write_bytes(emergency_pdf(open_shop(store)[1], language, translator(language)))
        emit_json({"ok": True, "file": str(out)}) if as_json else typer.echo(f"{out} written.")


@app.command()
def close(
    fryer: str = typer.Argument("", help="Fryer or store; without it tonight's list."),
    step: str = typer.Argument("", help="Step to sign."),
    who: str = typer.Option("", help="Who did it."),
    second: str = typer.Option("", help="Second person."),
    value: str = typer.Option("", help="Oil temperature, pH, per cent polar or how much."),
    language: str = typer.Option("en", help="Language, such as es."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """The close of the day in its order: what each vat gets tonight, what is open, what is shut and why; or
    sign a step.
    """
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.care.close import close_day_view, sign_close
        from frywright.voice.tongue import translator

        opened, kitchen = open_shop(store)
        if step:
            sign_close(
                opened, kitchen, {"fryer": fryer, "step": step, "who": who, "second": second, "value": value}
            )
        view = close_day_view(opened, kitchen, language, translator(language))
        if as_json:
            emit_json({"ok": True, **view})
            return
        for one in [
            *view["fryers"],
            {"key": "store", "name": "", "plan_words": "", "why": "", "steps": view["store"]},
        ]:
            if one["name"]:
                typer.echo(f"{one['name']}: {one['plan_words']}. {one['why']}")
            for s in one["steps"]:
                mark = "x" if s["done"] else ("#" if s["shut"] else " ")
                typer.echo(
                    f"  [{mark}] {one['key']} {s['key']}: {s['title']}"
                    + (f" ({s['shut']})" if s["shut"] else "")
                )
