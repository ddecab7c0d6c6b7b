"""``frywright care``: site survey, energy, procedure cards, stop-use."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

import typer

from frywright.cli.shop import Shop, command, read_file, read_words
from frywright.cli.spoken import BARE
from frywright.model.plain import plain

app = typer.Typer()
YES_NO = {"": None, "yes": True, "no": False}


@command(app)
def site(
    shop: Shop,
    fuel: str = typer.Option("electric", help="electric or gas, from the plate."),
    plate_input: str = typer.Option(
        "", "--input", help="Input on the plate, such as 13.5kW or 80000Btu/h; a bare number is in kW."
    ),
    volts: str = typer.Option("", help="Volts on the plate."),
    phases: int = typer.Option(0, help="Phases on the plate."),
    gas: str = typer.Option("", help="Gas on the plate."),
    measured_volts: str = typer.Option("", help="Volts measured between legs."),
    measured_phases: int = typer.Option(None, help="Phases found."),
    breaker: str = typer.Option("", help="Breaker, A."),
    site_gas: str = typer.Option(None, help="Gas at the site."),
    altitude: str = typer.Option("0 m", show_default="0", help=f"Altitude, such as 1600m or 5250ft. {BARE}"),
    hood: str = typer.Option("", help="Hood runs: yes or no."),
    suppression: str = typer.Option("", help="Suppression covers it, by a certified contractor: yes or no."),
    flame: str = typer.Option("", help=f"Distance to an open flame, such as 40cm or 16in. {BARE}"),
    baffle: bool = typer.Option(False, help="A baffle stands between."),
) -> None:
    """Go, no-go or unknown for each point of a site, from the nameplate and what was measured."""
    from frywright.model.errors import InputError
    from frywright.rooms.care.site import Plate, SiteFacts, site_shown

    for name, word in (("--hood", hood), ("--suppression", suppression)):
        if word not in YES_NO:
            raise InputError(name, repr(word), "yes, no or left out")
    facts = SiteFacts(
        volts_n=shop.number(measured_volts, "--measured-volts"),
        phases_count=measured_phases,
        breaker_amps_n=shop.number(breaker, "--breaker"),
        gas=site_gas,
        altitude_m=shop.typed(altitude, "length", "altitude") or 0.0,
        hood_runs=YES_NO[hood],
        suppression_covers=YES_NO[suppression],
        flame_distance_m=shop.typed(flame, "length", "--flame"),
        baffle=baffle,
    )
    plate = Plate(
        fuel=fuel,
        power_w=shop.typed(plate_input, "power", "--input", "kw") or 0.0,
        volts_n=shop.number(volts, "--volts") or 0.0,
        phases_count=phases,
        gas=gas,
    )
    told = site_shown(plate, facts, shop.usual_units, shop.tr)
    if not shop.json(told):
        mark = {"meets": shop.tr("go"), "fails": shop.tr("NO-GO"), "unknown": shop.tr("look first")}
        for row in told.points:
            typer.echo(f"{mark[row.outcome]:<10} {shop.tr(row.point)}: {row.text}")
        shop.say(
            "The site: {mark}. Licensed electrician, gas fitter, hood and suppression contractors decide;"
            " the plate and the manual win.",
            mark=mark[told.outcome],
        )
    raise SystemExit(0 if told.ready else 1)


@command(app)
def card(
    shop: Shop,
    key: str = typer.Argument(
        help="Procedure: lid_seal, fill_vat, first_heat, between_loads, closing, boil_out."
    ),
    out: Path = typer.Option(Path("card.pdf"), help="PDF to write."),
    water: str = typer.Option(
        "", help="Boil-out: cold water, such as 20L or 5gal; a bare number is in the kitchen's unit."
    ),
    rate: str = typer.Option(
        "",
        help="Boil-out: rate on the cleaner's label, such as 1.5oz/gal or 11g/L; a bare number is in the"
        " kitchen's unit.",
    ),
) -> None:
    """Print a procedure card: gear first, one step a line, the hazard at its step; the kitchen's own where it
    has one.
    """
    from frywright.rooms.care.procedures import card_view, procedure_pdf

    if shop.json(card_view(*shop.both, key, shop.language) if shop.as_json else {}):
        return
    shop.written(
        out,
        procedure_pdf(
            *shop.both,
            key,
            shop.language,
            shop.tr,
            water_m3=shop.typed(water, "volume", "--water") or 0.0,
            rate_kg_m3=shop.typed(rate, "density", "--rate") or 0.0,
        ),
    )


@command(app)
def stop(
    shop: Shop,
    fryer: str = typer.Argument(help="Fryer."),
    reason: str = typer.Argument(help="Such as lid_moves, oil_leak, gas_smell."),
    who: str = typer.Option("", help="Who stops it."),
) -> None:
    """Take a fryer out of use; the plan and the board leave it out until a qualified person releases it."""
    from frywright.rooms.care.machines import first_act, hazards, stop_use

    opened, kitchen = shop.both
    kept = stop_use(opened, kitchen, fryer, reason, who)
    if not shop.json({"number": kept.number}):
        shop.say(
            "{fryer} is out of use: {why} {act} Tag it, and call a qualified person.",
            fryer=fryer,
            why=shop.tr(hazards()[reason].why),
            act=shop.tr(first_act(reason)),
        )


@command(app)
def reopen(
    shop: Shop,
    fryer: str = typer.Argument(help="Fryer."),
    who: str = typer.Option(help="Name of the qualified person."),
    role: str = typer.Option(help="technician or licensed."),
    finding: str = typer.Option(help="What was found and done."),
) -> None:
    """Release a fryer: a named qualified person, with what was found and done."""
    from frywright.rooms.care.machines import reopen as release

    opened, kitchen = shop.both
    kept = release(opened, kitchen, fryer, who, role, finding)
    if not shop.json({"number": kept.number}):
        shop.say("{fryer} is released by {who}.", fryer=fryer, who=who)


@command(app)
def energy(
    shop: Shop,
    on: str = typer.Argument(help="Time on, such as 13h; a bare number is in hours."),
    food: str = typer.Argument(
        help="Food a day, such as 36kg or 80lb; a bare number is in the kitchen's unit."
    ),
    capacity: str = typer.Argument(
        help="Food it can cook in an hour, such as 18kg or 40lb; a bare number is in the kitchen's unit."
    ),
    idle: str = typer.Option(
        "1 kW",
        show_default="1kW = 3412Btu/h",
        help="Idle rate, such as 1.2kW or 4000Btu/h; a bare number is in kW.",
    ),
    food_heat: str = typer.Option(
        "258 Btu/lb",
        show_default="258Btu/lb = 0.167kWh/kg",
        help="Heat the food takes up, in kWh/kg or Btu/lb; a bare number is in the kitchen's.",
    ),
    efficiency: str = typer.Option("80%", help="Cooking-energy efficiency, such as 80% or 0.8."),
    preheat: str = typer.Option(
        "2.4 kWh",
        show_default="2.4kWh = 8189Btu",
        help="Preheat, such as 2.4kWh or 8200Btu; a bare number is in kWh.",
    ),
) -> None:
    """Energy of a fryer's day: preheat, idle, cook."""
    from frywright.rooms.care.site import energy_day

    day = energy_day(
        shop.typed(on, "time", "ON", "h") or 0.0,
        shop.typed(food, "mass", "FOOD") or 0.0,
        (shop.typed(capacity, "mass", "CAPACITY") or 0.0) / 3600.0,
        shop.typed(idle, "power", "--idle", "kw") or 0.0,
        shop.typed(food_heat, "specific_energy", "--food-heat") or 0.0,
        shop.typed(efficiency, "fraction", "--efficiency", "frac") or 0.0,
        shop.typed(preheat, "energy", "--preheat", "kwh") or 0.0,
    )
    parts = {
        f"{name}_kwh": round(value / 3600000.0, 3)
        for name, value in (
            ("preheat", day.preheat_j),
            ("idle", day.idle_j),
            ("cook", day.cook_j),
            ("total", day.total_j),
        )
    }
    if not shop.json(parts):
        shop.say(
            "preheat {preheat_kwh} kWh, idle {idle_kwh} kWh, cook {cook_kwh} kWh, total {total_kwh} kWh",
            {name: f"{value:.2f}" for name, value in parts.items()},
        )


@command(app, engine=True)
def power(
    shop: Shop,
    date: str = typer.Option("", help="Day, such as 2026-11-27; without it the opening hours are taken."),
) -> None:
    """Start, setback and off of every fryer from the day's plan under the power cap; test-method quantities
    of full loads.
    """
    from frywright.model.business_day import day_typed
    from frywright.rooms.day.day import bench_for, morning
    from frywright.rooms.day.power import FryerDay, energy_view, full_load_rows
    from frywright.rooms.standing import assumed_day, stopped

    opened, kitchen = shop.both
    day = day_typed(date, "--date") if date else None
    bench = bench_for(opened, kitchen, day, down=tuple(stopped(opened))) if day else None
    view = energy_view(kitchen, bench, morning(bench) if bench else None, shop.tr)
    if shop.json({**plain(view), "loads": full_load_rows(kitchen)}):
        return
    if view.problem:
        typer.echo(view.problem)
    if not view.planned:
        shop.say("No plan of this day: opening hours are taken, and every fryer runs through.")
    if assumed := assumed_day(kitchen, shop.tr):
        typer.echo(assumed)
    for row in view.rows:
        if not isinstance(row, FryerDay):
            shop.say("{name}: stays off.", row)
            continue
        pauses = "".join(shop.tr(", set back {from} to {on_again}").format(**plain(p)) for p in row.pauses)
        shop.say(
            "{name}: start {start}, at heat {ready}, first drop {first_drop}{pauses}, off {off};"
            " {total_kwh} kWh",
            row,
            pauses=pauses,
        )
    shop.say(
        "{total_kwh} kWh, {idle} % of it idle; {currency}{money} for the electric ones.",
        view,
        idle=f"{100 * view.idle_frac:.0f}",
        money=f"{view.money:.2f}",
    )
    for load in full_load_rows(kitchen):
        shop.say(
            "{program}: {load}, efficiency {efficiency} %, {capacity}, recovery {recovery} s, food {food}",
            load,
            efficiency=f"{100 * load.efficiency_frac:.0f}",
            recovery=load.recovery_s,
        )


@command(app, "card-edit")
def card_edit(
    shop: Shop,
    key: str = typer.Argument(help="Procedure."),
    steps: Path = typer.Argument(
        None, help="Text file: one step a line, its hazard after !!; without it the lines as they are."
    ),
    who: str = typer.Option("", help="Who changes it."),
    gear: str = typer.Option("", help="What is worn first."),
    tools: str = typer.Option("", help="What is ready."),
    picture: Path = typer.Option(None, help="Picture."),
    picture_step: int = typer.Option(1, help="Step of the picture, from 1."),
) -> None:
    """Make a card the kitchen's own; a hazard may move to another step, never go."""
    from frywright.rooms.care.procedures import card_view, save_card

    opened, kitchen = shop.both
    view = card_view(opened, kitchen, key, shop.language)
    if steps is None and picture is None:
        if not shop.json(view):
            typer.echo(view.lines)
        return
    told = {
        "key": key,
        "language": shop.language,
        "gear": gear or view.gear,
        "tools": tools or view.tools,
        "who": who,
        "version": str(view.version),
        "steps": read_words(steps, "steps") if steps else view.lines,
        "picture_step": str(picture_step),
    }
    kept = save_card(opened, told, BytesIO(read_file(picture, "--picture")) if picture else None)
    if not shop.json({"number": kept.number, "version": kept.fact.version}):
        shop.say("Version {version} kept.", version=kept.fact.version)


@command(app, "card-sign")
def card_sign(
    shop: Shop,
    key: str = typer.Argument(help="Procedure."),
    fryer: str = typer.Argument(help="Fryer."),
    who: str = typer.Option(help="Who did it."),
    second: str = typer.Option(help="Who checked."),
    note: str = typer.Option("", help="Note."),
    photo: Path = typer.Option(None, help="Photo."),
) -> None:
    """Sign a procedure as done by one and checked by another."""
    from frywright.rooms.care.procedures import sign_card

    shop.confirm(second)
    told = {"key": key, "fryer": fryer, "who": who, "second": second, "note": note}
    stream = BytesIO(read_file(photo, "--photo")) if photo else None
    shop.kept(sign_card(*shop.both, told, stream).number)
