"""``frywright day``: sales in, forecast, pull sheet, plan, replay, board."""

from __future__ import annotations

import datetime as dt
from pathlib import Path
from typing import Any

import typer

from frywright.cli.shop import Shop, command, read_file, read_words, write_file
from frywright.model.plain import plain

app = typer.Typer()
DATE = typer.Option("", "--date", help="Business day such as 2026-11-27; without it today.")


def _day(kitchen: Any, text: str) -> dt.date:
    from frywright.model.business_day import business_time, day_typed, trade_of
    from frywright.rooms.clock import now

    return day_typed(text, "--date") if text else business_time(trade_of(kitchen), now())[0]


def _bench(shop: Shop, date: str, tune: bool = True) -> tuple[Any, Any, Any]:
    from frywright.rooms.cook.life import serving
    from frywright.rooms.day.day import bench_for

    opened, kitchen = shop.both
    names = serving(opened, kitchen)
    return opened, kitchen, bench_for(opened, kitchen, _day(kitchen, date), tune=tune, serving=names)


@command(app, engine=True)
def sales(
    shop: Shop,
    file: Path = typer.Argument(
        None, help="The till's export; without it the invented sales of the demo kitchen."
    ),
    order: str = typer.Option("", help="Order of the date: mdy, dmy or ymd."),
) -> None:
    """Read a till's export in; say what was taken, what not, and what the menu does not know."""
    import io

    from frywright.model.errors import InputError
    from frywright.rooms.day.practice import demo_sales
    from frywright.rooms.day.sales import keep_sales
    from frywright.rooms.day.sales_page import lines_ahead
    from frywright.rooms.day.views import sales_view

    opened, kitchen = shop.both
    if file is None:
        if not kitchen.site.invented:
            raise InputError(
                "file", "missing", "named: invented sales belong to the invented demo kitchen only"
            )
        data, name = (demo_sales(kitchen, _day(kitchen, "") - dt.timedelta(days=1)), "invented-sales.csv")
    else:
        data, name = (read_file(file), file.name)
    kept, read = keep_sales(opened, kitchen, io.BytesIO(data), name, order)
    ahead = lines_ahead(opened, kitchen, kept)
    if ahead and not shop.as_json:
        shop.say(
            "{name}: lines dated later than the day they were read in: {lines_count} ({first} – {last})."
            " Nothing is learned from them. Check the order of day and month, and the till's clock.",
            ahead,
        )
    view = sales_view(opened, kitchen)
    refused = [{"line": n, "why": why, "text": text} for n, why, text in read.refused]
    if shop.json(
        {"file": name, "lines_count": read.lines_count, "refused": refused, "ahead": ahead, **plain(view)}
    ):
        return
    shop.say(
        "{name}: lines {lines_count}, not used {refused}. Days in all: {days_count}, {start} to {to}.",
        view,
        name=name,
        lines_count=read.lines_count,
        refused=len(refused),
        start=view.from_,
    )
    for line in refused[:10]:
        shop.say("  line {line}: {why}: {text}", line)
    for item in view.unmapped[:10]:
        shop.say("  not on the menu: {item} ({sold} sold)", item, sold=f"{item.sold_n:.0f}")
    for hole in view.outages[:10]:
        shop.say("  silence taken as missing: {date} {start}-{to}", hole, start=hole.from_)


@command(app)
def watch(
    shop: Shop,
    folder: Path = typer.Argument(help="Folder into which the till writes its exports."),
    once: bool = typer.Option(False, help="Look once and end."),
    every_s: float = typer.Option(30.0, help="Seconds between looks."),
) -> None:
    """Read every export that appears in a folder; files are left where they are. One that cannot be read
    waits on the page of sales until somebody says what its columns are.
    """
    from frywright.rooms.day.folder import Watched

    opened, kitchen = shop.both
    shop.pause(every_s, "--every-s")
    watched = Watched(opened, kitchen, folder, shop.tr)
    while True:
        for name, problem in watched.look(settled=once):
            if problem:
                shop.say("{name} waits: {why}.", name=name, why=problem.removesuffix("."))
            else:
                shop.say("{name} was read in.", name=name)
        if once:
            return
        watched.rest(every_s)


@command(app)
def items(
    shop: Shop,
    item: str = typer.Argument("", help="Item as the till calls it; without it those to map are listed."),
    pieces: str = typer.Argument("", help="What it takes, such as 'tenders 3', or - for what is not fried."),
    who: str = typer.Option("", help="Who says so."),
) -> None:
    """Say once what an item of the till takes from the fryers."""
    from frywright.rooms.day.sales import items_asked, map_items

    opened, kitchen = shop.both
    if item:
        map_items(opened, kitchen, {item: pieces}, who)
    rows = items_asked(opened, kitchen)
    if shop.json({"items": [{"item": i.item, "sold_n": i.sold_n, "guess": i.guess} for i in rows]}):
        return
    if not rows:
        shop.say("Every item of the sales is on the menu.")
    for row in rows:
        shop.say(
            "{item}: {n} sold, perhaps {guess}", item=row.item, n=f"{row.sold_n:.0f}", guess=row.guess or "?"
        )


@command(app, engine=True)
def forecast(shop: Shop, date: str = DATE) -> None:
    """Pieces by half hour and product, with the day's 80 % band."""
    from frywright.rooms.day.plan_view import forecast_view

    view = forecast_view(_bench(shop, date, tune=False)[2])
    if shop.json(view):
        return
    typer.echo(f"{shop.tr(view.weekday)} {view.date}")
    for product in view.products:
        shop.say(
            "{name}: {total} ({low} to {high})",
            product,
            total=f"{product.total_n:.0f}",
            low=f"{product.low_n:.0f}",
            high=f"{product.high_n:.0f}",
        )
        pairs = [f"{at} {n:.0f}" for at, n in zip(view.halves, product.halves, strict=True)]
        for low in range(0, len(pairs), 8):
            typer.echo("  " + "  ".join(pairs[low : low + 8]))


@command(app, engine=True)
def pull(
    shop: Shop,
    date: str = typer.Option("", "--date", help="Day of use; without it two days from today."),
    stock: list[str] = typer.Option(
        [], help="On hand: product=units@last day, such as bone_in=24@2026-11-28."
    ),
) -> None:
    """The pull and marinate sheet: whole cases, stock in date taken off, both risks."""
    from frywright.rooms.day.pulling import pull_view

    opened, kitchen = shop.both
    use = _day(kitchen, date) if date else _day(kitchen, "") + dt.timedelta(days=2)
    view = pull_view(opened, kitchen, use, [_stock(kitchen, text) for text in stock], shop.tr)
    if shop.json(view):
        return
    shop.say("First pull on {pull_on} for use on {use}. {caution}", view)
    cases = (
        "{name}: needs {needed} {unit}, {on_hand} in date, {expired} out of date: on {pull_on} pull cases"
        " of {case_count}: {cases}; short {short} %, a case left {over} %"
    )
    loose = (
        "{name}: needs {needed} {unit}, {on_hand} in date, {expired} out of date: on {pull_on} pull {pull}"
        " {unit}; short {short} %"
    )
    for row in view.rows:
        shop.say(
            cases if row.case_count > 1 else loose,
            row,
            pull=f"{row.pull_n:.0f}",
            needed=f"{row.needed_n:.0f}",
            on_hand=f"{row.on_hand_n:.0f}",
            expired=f"{row.expired_n:.0f}",
            short=f"{100 * row.short_frac:.0f}",
            over=f"{100 * row.over_frac:.0f}",
        )
        if row.warning:
            typer.echo(f"  {row.warning}")


def _stock(kitchen: Any, text: str) -> tuple[str, str, float, dt.date]:
    from frywright.model.errors import InputError

    try:
        product, rest = text.split("=")
        units, last = rest.split("@")
        return product, "on hand", kitchen.site.number(units, "--stock"), dt.date.fromisoformat(last)
    except ValueError as error:
        raise InputError(
            "--stock", repr(text), "product=units@last day, such as bone_in=24@2026-11-28"
        ) from error


@command(app, engine=True)
def plan(
    shop: Shop,
    date: str = DATE,
    check: Path = typer.Option(None, help="A plan by hand (JSON rows) to check and price instead."),
    picture: Path = typer.Option(None, help="Write the fryers' picture to this SVG file."),
) -> None:
    """The drop plan of a day; or a plan by hand checked and priced by the same rules."""
    from frywright.paper.chart import svg
    from frywright.rooms.day.day import morning
    from frywright.rooms.day.plan_view import gantt, plan_view
    from frywright.rooms.day.what_if import check_view, hand_plan

    _, kitchen, bench = _bench(shop, date)
    if check is not None:
        found = check_view(bench, hand_plan(bench, _rows(check)))
        if not shop.json({"ok": not found.broken, **plain(found)}):
            typer.echo("\n".join(found.broken) or shop.tr("No rule is broken."))
            shop.say(
                "By hand: {hand} a day. The engine: {engine}.",
                hand=f"{found.price.total_money:.2f}",
                engine=f"{found.engine.total_money:.2f}",
            )
        raise SystemExit(1 if found.broken else 0)
    view = plan_view(bench, morning(bench), kitchen, shop.tr)
    if picture is not None:
        write_file(picture, svg(gantt(view)).encode(), "--picture")
    if shop.json(view):
        return
    for note in view.notes:
        typer.echo(note)
    for drop in view.drops:
        shop.say(
            "{drop}  {fryer_name} {product_name} {amount} lift {lift}  {evidence}",
            drop,
            evidence=shop.tr(drop.evidence_said),
            fryer_name=f"{drop.fryer_name:<28}",
            product_name=f"{drop.product_name:<26}",
            amount=f"{drop.amount:<22}",
        )
    for turn in view.filters:
        shop.say(
            "{at}  {fryer_name} filter turn (hot oil: gear on, heat as the manual says)",
            turn,
            fryer_name=f"{turn.fryer_name:<28}",
        )
    last = ", ".join(f"{x.name} {x.at or shop.tr('cook to order')}" for x in view.last_drops)
    shop.say("Last drops: {drops}", drops=last)


def _rows(path: Path) -> list[dict[str, Any]]:
    import json

    from frywright.model.errors import InputError

    try:
        rows = json.loads(read_words(path, "--check"))
    except ValueError as error:
        raise InputError(
            "--check", str(path), "a JSON file with a list of rows ({cause})", cause=error
        ) from error
    if not isinstance(rows, list) or not all(isinstance(row, dict) for row in rows):
        raise InputError("--check", str(path), "a JSON list of rows")
    return rows


@command(app, engine=True)
def tune(
    shop: Shop,
    date: str = DATE,
    tries: int = typer.Option(1500, min=1, help="Changes to try; a minute or more with one fryer."),
) -> None:
    """Search longer for the rule of a day, overnight: its plan and its board then begin from it. Run it
    when the last sales are in.
    """
    from frywright.rooms.day.day import search_rule

    found = search_rule(_bench(shop, date, tune=False)[2].day, tries)
    if shop.json(found):
        return
    shop.say(
        "The rule found costs {after} a day, the one before {before}: it is kept."
        if found.better
        else "The rule found costs {after} a day, the one before {before}: that one stays.",
        after=f"{found.after_money:.2f}",
        before=f"{found.before_money:.2f}",
    )
    shop.say("Both on {days} drawn days of which neither knew.", days=found.days_count)


@command(app, engine=True)
def replay(
    shop: Shop,
    date: str = DATE,
    days: int = typer.Option(200, help="Drawn days."),
    engine: int = typer.Option(0, help="Also this many days by the engine."),
    hold: list[str] = typer.Option(
        [], help="What if: product=time, such as bone_in=60; a bare number is in minutes."
    ),
    off: list[str] = typer.Option([], help="What if: a fryer that is off."),
    filter_every: int = typer.Option(0, help="What if: loads between filter turns."),
    factor: str = typer.Option("", help="What if: factor on the forecast."),
) -> None:
    """Play drawn days: share served, share thrown away, money, with 95 % intervals; and what a change would
    cost.
    """
    from frywright.model.errors import InputError
    from frywright.rooms.day.what_if import Changed, ChangeView, ReplayView, replay_view, what_if

    opened, kitchen, bench = _bench(shop, date)
    try:
        pairs = dict(text.split("=") for text in hold)
    except ValueError as error:
        raise InputError("--hold", hold, "product=time, such as bone_in=60") from error
    holds = {key: kitchen.site.read(text, "time", "--hold") / 60.0 for key, text in pairs.items()}
    share = shop.number(factor, "--factor")
    if holds or off or filter_every or share is not None:
        asked = Changed(hold_min=holds, off=tuple(off), filter_every_count=filter_every, factor=share)
        view: ReplayView = what_if(opened, kitchen, bench, asked, days)
    else:
        view = replay_view(bench, days, engine_days=engine)
    if shop.json(view):
        return
    for name, title in (("base", "order-up-to rule"), ("engine", "engine"), ("other", "with the change")):
        told = getattr(view, name, None)
        if told is not None:
            shop.say(
                "{title}: {fill} % served (± {fill_half_width}), {waste} % thrown away (±"
                " {waste_half_width}), {total} a day (± {half_width}) (days: {days_count})",
                told,
                title=shop.tr(title),
                fill=f"{100 * told.fill_frac:.1f}",
                fill_half_width=f"{100 * told.fill_half_width_frac:.1f}",
                waste=f"{100 * told.waste_frac:.1f}",
                waste_half_width=f"{100 * told.waste_half_width_frac:.1f}",
                total=f"{told.total_money:.2f}",
                half_width=f"{told.half_width_money:.2f}",
            )
    if isinstance(view, ChangeView):
        shop.say(
            "The change saves {money} a day (± {half_width}, 95 %)."
            if view.change.money < 0
            else "The change costs {money} a day (± {half_width}, 95 %).",
            money=f"{abs(view.change.money):.2f}",
            half_width=f"{view.change.half_width_money:.2f}",
        )


@command(app, engine=True)
def board(
    shop: Shop,
    at: str = typer.Option("", help="Time of day, such as 17:40; without it now."),
    date: str = typer.Option("", "--date", help="Business day of a practice board."),
    practice: int = typer.Option(None, help="Seed of a practice day with invented guests."),
    tell: str = typer.Option(
        "", help="Enter on the board first: drop, lift, filter, down, up, sold, count or discard."
    ),
    fryer: str = typer.Option("", help="Fryer it is about."),
    product: str = typer.Option("", help="Product it is about."),
    pieces: int = typer.Option(0, help="Pieces it is about."),
    reason: str = typer.Option("", help="Why it was thrown away."),
    play: bool = typer.Option(False, help="Play a practice day to its end, following the advice."),
    down: str = typer.Option("", help="While playing: fryer@time that fails, such as birch@17:40."),
) -> None:
    "What to drop now; or enter something on the board; or play a practice day."
    from frywright.model.business_day import business_time
    from frywright.model.errors import InputError
    from frywright.model.trade import time_of_day_s
    from frywright.rooms.clock import now
    from frywright.rooms.day.board import Board, Tap
    from frywright.rooms.day.board_rows import Cooking
    from frywright.rooms.day.board_view import board_view
    from frywright.rooms.day.compare import compare_down

    if play and practice is None:
        raise InputError("--play", "a real day", "a practice day: add --practice 7")
    practice = None if practice is None else shop.seed(practice, "--practice")
    opened, kitchen, bench = _bench(shop, date if practice is not None else "")
    live = Board(store=opened, kitchen=kitchen, bench=bench, practice=practice, serving=bench.serving)
    if play:
        _play(shop, live, down)
        return
    second = time_of_day_s(at) if at else business_time(bench.trade, now())[1]
    if tell:
        import uuid

        live.tell(
            Tap(
                key=uuid.uuid4().hex,
                what=tell,
                at_s=second,
                fryer=fryer,
                product=product,
                pieces_count=pieces,
                reason=reason,
            )
        )
    view = board_view(live, second, shop.tr)
    new = {"new_plan": compare_down(live, second, fryer)} if tell == "down" else {}
    if shop.json({**plain(view), **new}):
        return
    typer.echo(f"{view.date} {view.clock}")
    if view.alarm:
        typer.echo(f"  {view.alarm}")
    for act in view.advice:
        typer.echo(f"  {act.headline} ({act.start}). {act.reason} {act.caution}")
    for row in view.fryers:
        lift = shop.tr(", lift {lift}").format(lift=row.lift) if isinstance(row, Cooking) else ""
        typer.echo(f"  {row.name}: {row.text}{lift}")
    for item in view.shelf:
        late = (
            shop.tr(", {expired} past their hold life").format(expired=item.expired) if item.expired else ""
        )
        shop.say("  {name}: {count} on the shelf{late}", item, late=late)
    for note in view.notes:
        typer.echo(f"  {note}")


def _play(shop: Shop, live: Any, down: str) -> None:
    """Play a practice day to its end and tell how it went."""
    from frywright.model.trade import money
    from frywright.rooms.day.round import play_day
    from frywright.rooms.day.score import score_view
    from frywright.rooms.day.views import close_view

    told = play_day(live, down, shop.tr)
    end_s = live.bench.trade.closes_s
    close, score = close_view(live, end_s, shop.tr), score_view(live, end_s, shop.tr)
    if shop.json({"told": told, **plain(close), "score": plain(score)}):
        return
    for line in told:
        typer.echo(f"{line.at}  {line.text}")
    shop.say(
        "Loads: {drops_count}. Filter turns: {filters_count}. Pieces thrown away: {thrown}. {reasons}",
        close,
        thrown=f"{close.thrown_n:.0f}",
        reasons=", ".join(f"{c.cause} {c.pieces_n:.0f}" for c in close.causes),
    )
    if score:
        shop.say(
            "{pct} % of what guests asked for was served. Lost: {money}.",
            score,
            pct=f"{100 * score.served_frac:.1f}",
            money=money(score.money, score.currency),
        )
