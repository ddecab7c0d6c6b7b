"""``frywright oil``: fill, log, outlook, cost, order, limit."""

from __future__ import annotations

from pathlib import Path

import typer

from frywright.cli.shop import JSON, STORE, open_shop

app = typer.Typer(help="Oil: filling, log, outlook, cost, cartons.", no_args_is_help=True)


@app.command()
def fill(vat: str = typer.Argument(help="Fryer."), store: str = STORE, as_json: bool = JSON) -> None:
    """How much oil a vat takes, cold and hot."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.oil_moves import fill_view

        view = fill_view(open_shop(store)[1], vat)
        if as_json:
            emit_json({"ok": True, **view})
            return
        typer.echo(
            f"{view['name']}: {view['mass']}, {view['cartons']} cartons; {view['cold']} cold, {view['hot']}"
            f" at heat ({100 * view['swells_frac']:.0f} % more).\nFill to the cold line, drains closed, heat"
            " off; check the level again at heat. Too little uncovers the heat surfaces and can ignite; too"
            " much boils over with a wet load."
        )
        for text in (
            view["heights"],
            view["warning"],
            f"Solid shortening: {view['melt']} to melt, low heat, attended." if view["melt"] else "",
        ):
            if text:
                typer.echo(text)


@app.command()
def log(
    vat: str = typer.Argument(help="Fryer."),
    what: str = typer.Argument(help="top_up, reading, filter, discard, fill, acid or colour."),
    amount: str = typer.Argument("", help="Such as '5 lb', '1 carton' or 17.5 (per cent polar)."),
    after: bool = typer.Option(False, help="The reading was after the top-up."),
    strip: bool = typer.Option(False, help="Read with a strip."),
    who: str = typer.Option("", help="Who did it."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Record what was done to a vat's oil."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.vat import tell_oil

        opened, kitchen = open_shop(store)
        values = {
            "vat": vat,
            "what": what,
            "amount": amount,
            "after": "1" if after else "",
            "how": "strip" if strip else "meter",
            "who": who,
        }
        kept, _ = tell_oil(opened, kitchen, values)
        if as_json:
            emit_json({"ok": True, "number": kept.number})
        else:
            typer.echo(f"Entry {kept.number} kept.")


@app.command()
def outlook(
    vat: str = typer.Argument("", help="Fryer; without it all."), store: str = STORE, as_json: bool = JSON
) -> None:
    """When each vat's oil reaches its limit, with an interval, and what a change would buy."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.care.oil_money import changes_view
        from frywright.rooms.care.vat import vat_states, vat_view

        opened, kitchen = open_shop(store)
        keys = [vat] if vat else [f.key for f in kitchen.fryers]
        states = vat_states(opened, kitchen)
        views = [vat_view(opened, kitchen, k, states=states) | changes_view(kitchen, states, k) for k in keys]
        if as_json:
            emit_json({"ok": True, "vats": views})
            return
        for view in views:
            told = (
                "default figures, fewer than 4 readings"
                if view["default"]
                else f"{view['readings_count']} readings"
            )
            typer.echo(
                f"{view['name']}: {view['level_pct']} % polar, +{view['growth_pct']} a day ({told}); limit"
                f" {view['limit_pct']:g} % ({view['limit_title']})."
            )
            typer.echo(f"  {view['text']}")
            for row in view["changes"]:
                typer.echo(
                    f"  {row['what']}: {row['days_n']:g} days, {view['currency']}{row['money']:.2f} a day"
                )
            for move in view["moves"]:
                typer.echo(f"  {move['text']}")


@app.command()
def cost(
    raw_lb_day: float = typer.Argument(
        0.0, help="Raw breaded product a day, lb; without it what the board dropped."
    ),
    change_min: float = typer.Option(None, help="Minutes a vat change."),
    hour_money: float = typer.Option(None, help="Pay by hour."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """The oil bill of the last four weeks; what the food takes up stands apart. Gaps in the log come first,
    then likely causes.
    """
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from dataclasses import replace

        from frywright.model.business_day import usual_trade
        from frywright.model.units import LB
        from frywright.rooms.care.oil_money import cost_view, rates_of

        opened, kitchen = open_shop(store)
        rates = rates_of(usual_trade(kitchen))
        if change_min is not None:
            rates = replace(rates, change_h=change_min / 60.0)
        if hour_money is not None:
            rates = replace(rates, hour_money=hour_money)
        view = cost_view(opened, kitchen, raw_lb_day * LB, rates=rates)
        if as_json:
            emit_json({"ok": True, **view})
            return
        for name in view["log_gaps"]:
            typer.echo(f"Log gap, before anything else: {name}.")
        typer.echo(
            f"{view['day_money']:.2f} a day over {view['days_count']} days: taken up by the food"
            f" {view['uptake_money']:.2f}, thrown away {view['discard_money']:.2f}, labour"
            f" {view['labour_money']:.2f}; {view['per_raw_lb_money']:.3f} a raw lb; {view['per_hundred_n']:g}"
            " of oil by 100 of raw."
        )
        if view["carried_off"]:
            typer.echo(
                f"By the engine, a day: {view['carried_off']} of oil leaves with the food, {view['fat_in']}"
                " of chicken fat comes into the vats."
            )
        for cause in view["causes"]:
            typer.echo(f"  {cause}")


@app.command()
def sites(stores: list[Path] = typer.Argument(help="Files of several stores."), as_json: bool = JSON) -> None:
    """Several stores side by side: oil by hundred of raw product, money by raw kilogram, log gaps first, then
    likely causes.
    """
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.model.errors import InputError
        from frywright.rooms.care.oil_money import site_rows

        lost = next((path for path in stores if not path.exists()), None)
        if lost is not None:
            raise InputError("store", str(lost), "a file that exists")
        rows = site_rows([(str(path), *open_shop(str(path))) for path in stores])
        if as_json:
            emit_json({"ok": True, "sites": rows})
            return
        for row in rows:
            if row["unknown"]:
                typer.echo(f"{row['place']} ({row['site']}): unknown. {row['unknown']}")
                continue
            typer.echo(
                f"{row['place']} ({row['site']}): {row['per_hundred_n']:g} of oil by 100 of raw,"
                f" {row['per_raw_kg_money']:.3f} a raw kg"
            )
            for text in [*(f"log gap: {gap}" for gap in row["log_gaps"]), *row["causes"]]:
                typer.echo(f"  {text}")


@app.command()
def moves(
    store: str = STORE,
    out: Path = typer.Option(None, help="PDF of the oil map to write."),
    language: str = typer.Option("en", help="Language, such as es."),
    as_json: bool = JSON,
) -> None:
    """What each vat's oil carries, and what speaks against moving it into another."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.oil_moves import oil_map_pdf, rotation_view
        from frywright.rooms.care.vat import vat_states
        from frywright.voice.tongue import translator

        opened, kitchen = open_shop(store)
        if out is not None:
            out.write_bytes(oil_map_pdf(opened, kitchen, language, translator(language)))
        view = rotation_view(kitchen, vat_states(opened, kitchen), translator(language))
        if as_json:
            emit_json({"ok": True, **view})
            return
        for one in view["vats"]:
            typer.echo(f"{one['name']}: {one['products']}; carries {one['carries'] or 'nothing listed'}")
        for move in view["moves"]:
            typer.echo(
                f"{move['from']} into {move['into']}:"
                f" {' '.join(move['notes']) or 'nothing speaks against it.'}"
            )


@app.command()
def order(
    days: int = typer.Argument(help="Days to the next delivery."),
    on_hand: float = typer.Option(0.0, help="Cartons on hand."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """Cartons to order, planned changes and a vat's safety included."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.care.oil_moves import order_view

        view = order_view(*open_shop(store), days, on_hand)
        if as_json:
            emit_json({"ok": True, **view})
        else:
            typer.echo(
                f"Order {view['cartons']} cartons: top-up {view['top_up_cartons']}, changes"
                f" {view['change_cartons']}, safety {view['safety_cartons']}, less {on_hand:g} on hand."
            )


@app.command()
def limit(
    house: float | None = typer.Option(None, help="House limit to set, per cent polar."),
    who: str = typer.Option("", help="Name, for a looser limit."),
    reason: str = typer.Option("", help="Reason, for a looser limit."),
    store: str = STORE,
    as_json: bool = JSON,
) -> None:
    """The limit of the oil: the place's, tightened by the house's; without --house as it stands."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.rooms.care.vat import set_limit
        from frywright.rooms.standing import oil_limit_here

        opened, kitchen = open_shop(store)
        if house is not None:
            set_limit(opened, kitchen, house, who, reason)
        value, title = oil_limit_here(opened, kitchen)
        if as_json:
            emit_json({"ok": True, "limit_pct": value, "title": title})
        else:
            typer.echo(f"Oil goes at {value:g} % polar compounds. {title}.")
