"""``frywright oil``: fill, log, outlook, cost, order, limit."""

from __future__ import annotations

from pathlib import Path

import typer

from frywright.cli.shop import Shop, command, write_file
from frywright.cli.spoken import BARE
from frywright.model.plain import plain

app = typer.Typer()


@command(app)
def fill(shop: Shop, vat: str = typer.Argument(help="Fryer.")) -> None:
    """How much oil a vat takes, cold and hot."""
    from frywright.rooms.care.oil_moves import fill_view

    view = fill_view(shop.kitchen, vat, shop.tr)
    if shop.json(view):
        return
    shop.say(
        "{name}: {mass}, {pour}; {cold} cold, {hot} at heat ({swells} % more).\nFill to the"
        " cold line, drains closed, heat off; check the level again at heat. Too little uncovers the heat"
        " surfaces and can ignite; too much boils over with a wet load.",
        view,
        swells=f"{100 * view.swells_frac:.0f}",
    )
    for text in (
        view.heights,
        view.warning,
        shop.tr("Solid shortening: {melt} to melt, low heat, attended.").format(melt=view.melt)
        if view.melt
        else "",
    ):
        if text:
            typer.echo(text)


@command(app)
def log(
    shop: Shop,
    vat: str = typer.Argument(help="Fryer."),
    what: str = typer.Argument(help="top_up, reading, filter, discard, fill, acid or colour."),
    amount: str = typer.Argument(
        "",
        help="Such as '5 lb', '1 carton' or 17.5 (per cent polar). A bare number is in the kitchen's unit.",
    ),
    after: bool = typer.Option(False, help="The reading was after the top-up."),
    strip: bool = typer.Option(False, help="Read with a strip."),
    twice: bool = typer.Option(False, help="The meter was read twice and says so."),
    who: str = typer.Option("", help="Who did it."),
    date: str = typer.Option("", help="Business day such as 2026-11-27; without it today."),
) -> None:
    """Record what was done to a vat's oil."""
    from frywright.rooms.care.vat import tell_oil

    opened, kitchen = shop.both
    values = {
        "vat": vat,
        "what": what,
        "amount": amount,
        "after": "1" if after else "",
        "how": "strip" if strip else "meter",
        "twice": "1" if twice else "",
        "who": who,
        "date": date,
    }
    kept, _ = tell_oil(opened, kitchen, values)
    shop.kept(kept.number)


@command(app)
def meter(
    shop: Shop,
    low_known: str = typer.Argument(help="Fresh oil: its known level in per cent."),
    low_read: str = typer.Argument(help="Fresh oil: the mean of four readings."),
    high_known: str = typer.Argument(help="Worn oil: its known level in per cent."),
    high_read: str = typer.Argument(help="Worn oil: the mean of four readings."),
    name: str = typer.Option("", "--meter", help="Which meter."),
    who: str = typer.Option("", help="Who did it."),
) -> None:
    """Keep a check of the oil meter on two oils of known level."""
    from frywright.rooms.care.meter import CheckTyped, keep_check

    opened, kitchen = shop.both
    typed = CheckTyped(
        low_known=low_known,
        low_read=low_read,
        high_known=high_known,
        high_read=high_read,
        meter=name,
        who=who,
    )
    shop.kept(keep_check(opened, kitchen, typed)[0].number)


@command(app, engine=True)
def outlook(shop: Shop, vat: str = typer.Argument("", help="Fryer; without it all.")) -> None:
    """When each vat's oil reaches its limit, with an interval, and what a change would buy."""
    from frywright.rooms.care.oil_money import changes_view
    from frywright.rooms.care.oil_state import vat_states
    from frywright.rooms.care.vat import vat_view
    from frywright.rooms.standing import assumed_day

    opened, kitchen = shop.both
    keys = [vat] if vat else [f.key for f in kitchen.fryers]
    states = vat_states(opened, kitchen)
    views = [
        (vat_view(opened, kitchen, k, tr=shop.tr, states=states), changes_view(kitchen, states, k, shop.tr))
        for k in keys
    ]
    if shop.json({"vats": [{**plain(view), **plain(buys)} for view, buys in views]}):
        return
    for view, buys in views:
        told = shop.tr(
            "default figures, fewer than 4 readings" if view.default else "{readings_count} readings"
        )
        shop.say(
            "{name}: {level} % polar, +{growth} a day ({told}); limit {limit} % ({limit_title}).",
            view,
            level=view.level_pct,
            growth=view.growth_pct,
            told=told.format(readings_count=view.readings_count),
            limit=f"{view.limit_pct:g}",
            limit_title=shop.tr(view.limit_title),
        )
        typer.echo(f"  {view.text} {view.split}".rstrip())
        for row in buys.changes:
            shop.say(
                "  {what}: {days}, {currency}{money} a day",
                row,
                currency=buys.currency,
                money=f"{row.money:.2f}",
            )
        for move in buys.moves:
            typer.echo(f"  {move.text}")
    if assumed := assumed_day(kitchen, shop.tr):
        typer.echo(assumed)


@command(app, engine=True)
def cost(
    shop: Shop,
    raw_day: str = typer.Argument(
        "", help=f"Raw breaded product a day, such as 60kg; without it what the board dropped. {BARE}"
    ),
    change: str = typer.Option("", help="Time a vat change takes; a bare number is in minutes."),
    hour_money: str = typer.Option("", help="Pay by hour."),
) -> None:
    """The oil bill of the last four weeks; what the food takes up stands apart. Gaps in the log come first,
    then likely causes.
    """
    from dataclasses import replace

    from frywright.model.business_day import usual_trade
    from frywright.model.units import BARE, UNITS
    from frywright.rooms.care.oil_money import cost_view, rates_of
    from frywright.rooms.standing import assumed_day

    opened, kitchen = shop.both
    rates = rates_of(usual_trade(kitchen))
    if (change_s := shop.read(change, "time", "--change")) is not None:
        rates = replace(rates, change_h=change_s / 3600.0)
    if (pay := shop.number(hour_money, "--hour-money")) is not None:
        rates = replace(rates, hour_money=pay)
    raw_kg = shop.read(raw_day, "mass", "RAW_DAY") or 0.0
    view = cost_view(opened, kitchen, raw_kg, rates=rates, tr=shop.tr)
    if shop.json(view):
        return
    unit = BARE[shop.units]["mass"]
    for name in view.log_gaps:
        shop.say("Log gap, before anything else: {name}.", name=name)
    shop.say(
        "{day} a day, days counted: {days_count}. Taken up by the food {uptake}, thrown away"
        " {discard}, labour {labour}; {per_raw} a raw {unit}; {per_hundred} of oil by 100 of"
        " raw.",
        view,
        day=f"{view.day_money:.2f}",
        uptake=f"{view.uptake_money:.2f}",
        discard=f"{view.discard_money:.2f}",
        labour=f"{view.labour_money:.2f}",
        per_raw=f"{view.per_raw_lb_money if unit == 'lb' else view.per_raw_kg_money:.3f}",
        unit=UNITS[unit].sign,
        per_hundred=f"{view.per_hundred_n:g}",
    )
    if view.carried_off:
        shop.say(
            "By the engine, a day: {carried_off} of oil leaves with the food, {fat_in} of chicken fat"
            " comes into the vats.",
            view,
        )
    for cause in view.causes:
        typer.echo(f"  {cause}")
    if assumed := assumed_day(kitchen, shop.tr):
        typer.echo(assumed)


@command(app, engine=True)
def sites(shop: Shop, stores: list[Path] = typer.Argument(help="Files of several stores.")) -> None:
    """Several stores side by side: oil by hundred of raw product, money by raw kilogram, log gaps first, then
    likely causes.
    """
    from frywright.model.errors import InputError
    from frywright.rooms.care.oil_money import SiteBill, site_rows

    lost = next((path for path in stores if not path.exists()), None)
    if lost is not None:
        raise InputError("store", str(lost), "a file that exists")
    rows = site_rows([(str(path), *shop.beside(str(path)).both) for path in stores], tr=shop.tr)
    if shop.json({"sites": rows}):
        return
    for row in rows:
        if not isinstance(row, SiteBill):
            shop.say("{place} ({site}): unknown. {unknown}", row)
            continue
        shop.say(
            "{place} ({site}): {per_hundred} of oil by 100 of raw, {per_raw_kg} a raw kg",
            row,
            per_hundred=f"{row.per_hundred_n:g}",
            per_raw_kg=f"{row.per_raw_kg_money:.3f}",
        )
        for text in [*(shop.tr("log gap: {gap}").format(gap=gap) for gap in row.log_gaps), *row.causes]:
            typer.echo(f"  {text}")


@command(app)
def moves(shop: Shop, out: Path = typer.Option(None, help="PDF of the oil map to write.")) -> None:
    """What each vat's oil carries, and what is against moving it into another."""
    from frywright.rooms.care.oil_moves import oil_map_pdf, rotation_view
    from frywright.rooms.care.oil_state import vat_states

    opened, kitchen = shop.both
    if out is not None:
        write_file(out, oil_map_pdf(opened, kitchen, shop.language, shop.tr))
    view = rotation_view(kitchen, vat_states(opened, kitchen), shop.tr)
    if shop.json(view):
        return
    for one in view.vats:
        shop.say(
            "{name}: {products}; carries {carries}", one, carries=one.carries or shop.tr("nothing listed")
        )
    for move in view.moves:
        shop.say(
            "{start} into {into}: {notes}",
            move,
            start=move.from_,
            notes=" ".join(move.notes) or shop.tr("nothing is against it."),
        )


@command(app, engine=True)
def order(
    shop: Shop,
    days: int = typer.Argument(help="Days to the next delivery."),
    on_hand: str = typer.Option("0", help="Cartons on hand."),
) -> None:
    """Cartons to order, planned changes and a vat's safety included."""
    from frywright.rooms.care.oil_moves import order_view

    cartons = shop.number(on_hand, "--on-hand") or 0.0
    view = order_view(*shop.both, days, cartons)
    if not shop.json(view):
        shop.say(
            "Order cartons: {cartons}. Top-up {top_up_cartons}, changes {change_cartons},"
            " safety {safety_cartons}, less {on_hand} on hand.",
            view,
            on_hand=f"{cartons:g}",
        )


@command(app)
def limit(
    shop: Shop,
    house: str = typer.Option("", help="House limit to set, per cent polar."),
    who: str = typer.Option("", help="Name, for a looser limit."),
    reason: str = typer.Option("", help="Reason, for a looser limit."),
) -> None:
    """The limit of the oil: the place's, tightened by the house's; without --house as it stands."""
    from frywright.rooms.care.vat import set_limit
    from frywright.rooms.standing import oil_limit_here

    opened, kitchen = shop.both
    if (pct := shop.number(house, "--house")) is not None:
        set_limit(opened, kitchen, pct, who, reason)
    value, place = oil_limit_here(opened, kitchen)
    title = place.say(shop.tr)
    if not shop.json({"limit_pct": value, "title": title}):
        shop.say("Oil goes at {value} % polar compounds. {title}.", value=f"{value:g}", title=title)
