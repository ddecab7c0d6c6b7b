"""``frywright oil``: fill, log, outlook, cost, order, limit."""

from __future__ import annotations

from pathlib import Path

import typer

from frywright.cli.shop import JSON, STORE, open_shop

app = typer.Typer(help="Oil: filling, log, outlook, cost, cartons.", no_args_is_help=True)


@app.command()
def fill(vat: str = typer.Argument(help="Fryer."), store: Path = STORE, as_json: bool = JSON) -> None:
    """How much oil a vat takes, cold and hot."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.workbench.vat import fill_view

        view = fill_view(open_shop(store)[1], vat)
        if as_json:
            emit_json({"ok": True, **view})
            return
        typer.echo(
            f"{view['name']}: {view['mass']}, {view['cartons']} cartons; {view['cold']} cold, {view['hot']} at heat ({100 * view['swells_frac']:.0f} % more).\n"
            "Fill to the cold line, drains closed, heat off; check the level again at heat. Too little uncovers the heat surfaces and can ignite; "
            "too much boils over with a wet load."
        )


@app.command()
def log(
    vat: str = typer.Argument(help="Fryer."), what: str = typer.Argument(help="top_up, reading, filter, discard or fill."),
    amount: str = typer.Argument("", help="Such as '5 lb', '1 carton' or 17.5 (per cent polar)."), after: bool = typer.Option(False, help="The reading was after the top-up."),
    strip: bool = typer.Option(False, help="Read with a strip."), who: str = typer.Option("", help="Who did it."), store: Path = STORE, as_json: bool = JSON,
) -> None:  # fmt: skip
    """Record what was done to a vat's oil."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.workbench.vat import tell_oil

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
    vat: str = typer.Argument("", help="Fryer; without it all."), store: Path = STORE, as_json: bool = JSON
) -> None:
    """When each vat's oil reaches its limit, with an interval, and what a change would buy."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.workbench.vat import vat_view

        opened, kitchen = open_shop(store)
        views = [vat_view(opened, kitchen, key) for key in ([vat] if vat else [f.key for f in kitchen.fryers])]
        if as_json:
            emit_json({"ok": True, "vats": views})
            return
        for view in views:
            told = "default figures, fewer than 4 readings" if view["default"] else f"{view['readings_count']} readings"
            typer.echo(
                f"{view['name']}: {view['level_pct']} % polar, +{view['growth_pct']} a day ({told}); limit {view['limit_pct']:g} % ({view['limit_title']})."
            )
            typer.echo(f"  {view['text']}")
            for row in view["changes"]:
                typer.echo(f"  {row['what']}: {row['days_n']:g} days")


@app.command()
def cost(
    raw_lb_day: float = typer.Argument(help="Raw breaded product a day, lb."), change_min: float = typer.Option(45.0, help="Minutes a vat change."),
    hour_money: float = typer.Option(0.0, help="Pay by hour."), store: Path = STORE, as_json: bool = JSON,
) -> None:  # fmt: skip
    """The oil bill of the last four weeks; what the food takes up stands apart. Vats without entries come first."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.model.units import LB
        from frywright.workbench.vat import cost_view

        opened, kitchen = open_shop(store)
        view = cost_view(opened, kitchen, raw_lb_day * LB, change_h=change_min / 60.0, hour_money=hour_money)
        if as_json:
            emit_json({"ok": True, **view})
            return
        for name in view["log_gaps"]:
            typer.echo(f"No entries for {name} in this time: a log gap, before anything else.")
        typer.echo(
            f"{view['day_money']:.2f} a day over {view['days_count']} days: taken up by the food {view['uptake_money']:.2f}, thrown away {view['discard_money']:.2f}, "
            f"labour {view['labour_money']:.2f}; {view['per_raw_lb_money']:.3f} a raw lb."
        )


@app.command()
def order(
    days: int = typer.Argument(help="Days to the next delivery."), on_hand: float = typer.Option(0.0, help="Cartons on hand."), store: Path = STORE, as_json: bool = JSON,
) -> None:  # fmt: skip
    """Cartons to order, planned changes and a vat's safety included."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.workbench.vat import order_view

        view = order_view(*open_shop(store), days, on_hand)
        if as_json:
            emit_json({"ok": True, **view})
        else:
            typer.echo(
                f"Order {view['cartons']} cartons: top-up {view['top_up_cartons']}, changes {view['change_cartons']}, safety {view['safety_cartons']}, less {on_hand:g} on hand."
            )


@app.command()
def limit(
    place: str = typer.Argument(help="Place, such as germany or us."), house: float = typer.Option(24.0, help="House limit, per cent polar."),
    who: str = typer.Option("", help="Name, for a looser limit."), reason: str = typer.Option("", help="Reason, for a looser limit."), store: Path = STORE, as_json: bool = JSON,
) -> None:  # fmt: skip
    """Choose the limit: the place's, tightened by the house."""
    from frywright.cli.output import emit_json, speaking_errors

    with speaking_errors(as_json):
        from frywright.workbench.vat import limit_of, set_limit

        opened, _ = open_shop(store)
        set_limit(opened, place, house, who, reason)
        value, title = limit_of(opened)
        if as_json:
            emit_json({"ok": True, "limit_pct": value, "title": title})
        else:
            typer.echo(f"Oil goes at {value:g} % polar compounds. {title}.")
