"""``frywright day``: sales in, forecast, pull sheet, plan, replay, board."""

from __future__ import annotations

import datetime as dt
from pathlib import Path
from typing import Any

import typer

from frywright.cli.shop import JSON, STORE, open_shop

app = typer.Typer(
    help="The day: sales, forecast, pull sheet, drop plan, replay, live board.", no_args_is_help=True
)
DATE = typer.Option("", "--date", help="Business day such as 2026-11-27; without it today.")


def _day(kitchen: Any, text: str) -> dt.date:
    from frywright.model.business_day import business_time, trade_of
    from frywright.model.errors import InputError
    from frywright.rooms.clock import now

    if not text:
        return business_time(trade_of(kitchen), now())[0]
    try:
        return dt.date.fromisoformat(text)
    except ValueError as error:
        raise InputError("--date", repr(text), "a day such as 2026-11-27") from error


def _bench(store: str, date: str, tune: bool = True) -> tuple[Any, Any, Any]:
    from frywright.rooms.day.day import bench_for

    opened, kitchen = open_shop(store)
    return opened, kitchen, bench_for(opened, kitchen, _day(kitchen, date), tune=tune)


@app.command()
def sales(
    file: Path = typer.Argument(
        None, help="The till's export; without it the invented sales of the demo kitchen."
    ),
    store: str = STORE,
    order: str = typer.Option("", help="Order of the date: mdy, dmy or ymd."),
    as_json: bool = JSON,
) -> None:
    """Read a till's export in; say what was taken, what not, and what the menu does not know."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        import io

        from frywright.model.errors import InputError
        from frywright.rooms.day import day as work
        from frywright.rooms.day.practice import demo_sales
        from frywright.rooms.day.views import sales_view

        opened, kitchen = open_shop(store)
        if file is None:
            if not kitchen.site.invented:
                raise InputError(
                    "file", "missing", "named: invented sales belong to the invented demo kitchen only"
                )
            data, name = demo_sales(kitchen, _day(kitchen, "") - dt.timedelta(days=1)), "invented-sales.csv"
        elif not file.is_file():
            raise InputError("file", str(file), "a file that exists")
        else:
            data, name = file.read_bytes(), file.name
        _, read = work.keep_sales(opened, kitchen, io.BytesIO(data), name, order)
        view = sales_view(opened, kitchen)
        refused = [{"line": n, "why": why, "text": text} for n, why, text in read.refused]
        if as_json:
            emit_json({"ok": True, "file": name, "lines_count": read.lines_count, "refused": refused, **view})
            return
        typer.echo(
            f"{name}: {read.lines_count} lines, {len(refused)} not used. In all {view['days_count']} days,"
            f" {view['from']} to {view['to']}."
        )
        for item in refused[:10]:
            typer.echo(f"  line {item['line']}: {item['why']}: {item['text']}")
        for item in view["unmapped"][:10]:
            typer.echo(f"  not on the menu: {item['item']} ({item['sold_n']:.0f} sold)")
        for hole in view["outages"][:10]:
            typer.echo(f"  silence taken as missing: {hole['date']} {hole['from']}-{hole['to']}")


@app.command()
def forecast(store: str = STORE, date: str = DATE, as_json: bool = JSON) -> None:
    """Pieces by half hour and product, with the day's 80 % band."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.day.views import forecast_view

        view = forecast_view(_bench(store, date, tune=False)[2])
        if as_json:
            emit_json({"ok": True, **view})
            return
        typer.echo(f"{view['weekday']} {view['date']}")
        for product in view["products"]:
            typer.echo(
                f"{product['name']}: {product['total_n']:.0f} ({product['low_n']:.0f} to"
                f" {product['high_n']:.0f})"
            )
            pairs = [f"{at} {n:.0f}" for at, n in zip(view["halves"], product["halves"], strict=True)]
            for low in range(0, len(pairs), 8):
                typer.echo("  " + "  ".join(pairs[low : low + 8]))


@app.command()
def pull(
    store: str = STORE,
    date: str = typer.Option("", "--date", help="Day of use; without it two days from today."),
    stock: list[str] = typer.Option(
        [], help="On hand: product=units@last day, such as bone_in=24@2026-11-28."
    ),
    as_json: bool = JSON,
) -> None:
    """The pull and marinate sheet: whole cases, stock in date taken off, both risks."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.rooms.day.views import pull_view

        opened, kitchen = open_shop(store)
        use = _day(kitchen, date) if date else _day(kitchen, "") + dt.timedelta(days=2)
        view = pull_view(opened, kitchen, use, [_stock(text) for text in stock])
        if as_json:
            emit_json({"ok": True, **view})
            return
        typer.echo(f"Pull on {view['pull_on']} for use on {view['use']}. {view['caution']}")
        for row in view["rows"]:
            typer.echo(
                f"{row['name']}: needs {row['needed_n']:.0f} {row['unit']}, {row['on_hand_n']:.0f} in date,"
                f" {row['expired_n']:.0f} out of date: pull {row['cases']} cases of {row['case_count']};"
                f" short {100 * row['short_frac']:.0f} %, a case left {100 * row['over_frac']:.0f} %"
            )
            if row["warning"]:
                typer.echo(f"  {row['warning']}")


def _stock(text: str) -> tuple[str, str, float, dt.date]:
    from frywright.model.errors import InputError

    try:
        product, rest = text.split("=")
        units, last = rest.split("@")
        return product, "on hand", float(units), dt.date.fromisoformat(last)
    except ValueError as error:
        raise InputError(
            "--stock", repr(text), "product=units@last day, such as bone_in=24@2026-11-28"
        ) from error


@app.command()
def plan(
    store: str = STORE,
    date: str = DATE,
    check: Path = typer.Option(None, help="A plan by hand (JSON rows) to check and price instead."),
    picture: Path = typer.Option(None, help="Write the fryers' picture to this SVG file."),
    as_json: bool = JSON,
) -> None:
    """The drop plan of a day; or a plan by hand checked and priced by the same rules."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.paper.chart import svg
        from frywright.rooms.day.day import morning
        from frywright.rooms.day.views import check_view, gantt, hand_plan, plan_view

        _, kitchen, bench = _bench(store, date)
        if check is not None:
            view = check_view(bench, hand_plan(bench, _rows(check)))
            if as_json:
                emit_json({"ok": not view["broken"], **view})
            else:
                typer.echo("\n".join(view["broken"]) or "No rule is broken.")
                typer.echo(
                    f"By hand: {view['price']['total_money']:.2f} a day. The engine:"
                    f" {view['engine']['total_money']:.2f}."
                )
            raise SystemExit(1 if view["broken"] else 0)
        view = plan_view(bench, morning(bench), kitchen)
        if picture is not None:
            picture.write_text(svg(gantt(view)), "utf-8")
        if as_json:
            emit_json({"ok": True, **view})
            return
        for note in view["notes"]:
            typer.echo(note)
        for drop in view["drops"]:
            typer.echo(
                f"{drop['drop']}  {drop['fryer_name']:<28} {drop['product_name']:<26} {drop['amount']:<22}"
                f" lift {drop['lift']}  {drop['evidence']}"
            )
        for turn in view["filters"]:
            typer.echo(
                f"{turn['at']}  {turn['fryer_name']:<28} filter turn (hot oil: gear on, heat as the manual"
                " says)"
            )
        typer.echo("Last drops: " + ", ".join(f"{x['name']} {x['at']}" for x in view["last_drops"]))


def _rows(path: Path) -> list[dict[str, Any]]:
    import json

    from frywright.model.errors import InputError

    try:
        rows = json.loads(path.read_text("utf-8"))
    except (OSError, ValueError) as error:
        raise InputError(
            "--check", str(path), "a JSON file with a list of rows ({cause})", values={"cause": error}
        ) from error
    if not isinstance(rows, list) or not all(isinstance(row, dict) for row in rows):
        raise InputError("--check", str(path), "a JSON list of rows")
    return rows


@app.command()
def replay(
    store: str = STORE,
    date: str = DATE,
    days: int = typer.Option(200, help="Drawn days."),
    engine: int = typer.Option(0, help="Also this many days by the engine."),
    hold: list[str] = typer.Option([], help="What if: product=minutes."),
    off: list[str] = typer.Option([], help="What if: a fryer that is off."),
    filter_every: int = typer.Option(0, help="What if: loads between filter turns."),
    factor: float = typer.Option(None, help="What if: factor on the forecast."),
    as_json: bool = JSON,
) -> None:
    """Play drawn days: share served, share thrown away, money, with 95 % intervals; and what a change would
    cost.
    """
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.model.errors import InputError
        from frywright.rooms.day.views import replay_view, what_if

        opened, kitchen, bench = _bench(store, date)
        try:
            holds = {k: float(v) for k, v in (text.split("=") for text in hold)}
        except ValueError as error:
            raise InputError("--hold", hold, "product=minutes, such as bone_in=60") from error
        if holds or off or filter_every or factor is not None:
            view = what_if(
                opened,
                kitchen,
                bench,
                {"hold_min": holds, "off": off, "filter_every_count": filter_every, "factor": factor},
                days,
            )
        else:
            view = replay_view(bench, days, engine_days=engine)
        if as_json:
            emit_json({"ok": True, **view})
            return
        for name, title in (("base", "order-up-to rule"), ("engine", "engine"), ("other", "with the change")):
            if name in view:
                told = view[name]
                typer.echo(
                    f"{title}: {100 * told['fill_frac']:.1f} % served (±"
                    f" {100 * told['fill_half_width_frac']:.1f}), {100 * told['waste_frac']:.1f} % thrown"
                    f" away (± {100 * told['waste_half_width_frac']:.1f}), {told['total_money']:.2f} a day (±"
                    f" {told['half_width_money']:.2f}) over {told['days_count']} days"
                )
        if "change" in view:
            typer.echo(
                f"The change costs {view['change']['money']:.2f} a day (±"
                f" {view['change']['half_width_money']:.2f}, 95 %)."
            )


@app.command()
def board(
    store: str = STORE,
    at: str = typer.Option("", help="Time of day, such as 17:40; without it now."),
    date: str = typer.Option("", "--date", help="Business day of a practice board."),
    practice: int = typer.Option(None, help="Seed of a practice day with invented guests."),
    tell: str = typer.Option(
        "", help="Tell the board first: drop, lift, filter, down, up, sold, count or discard."
    ),
    fryer: str = typer.Option("", help="Fryer told of."),
    product: str = typer.Option("", help="Product told of."),
    pieces: int = typer.Option(0, help="Pieces told of."),
    reason: str = typer.Option("", help="Why it was thrown away."),
    play: bool = typer.Option(False, help="Play a practice day to its end, following the advice."),
    down: str = typer.Option("", help="While playing: fryer@time that fails, such as birch@17:40."),
    as_json: bool = JSON,
) -> None:
    """What to drop now; or tell the board something; or play a practice day."""
    from frywright.cli.output import emit_json, preparing, speaking_errors

    with speaking_errors(as_json), preparing():
        from frywright.model.business_day import business_time
        from frywright.model.errors import InputError
        from frywright.model.trade import time_of_day_s
        from frywright.rooms.clock import now
        from frywright.rooms.day.board import Board, Tap, board_view, compare_down

        if play and practice is None:
            raise InputError("--play", "a real day", "a practice day: add --practice 7")
        opened, kitchen, bench = _bench(store, date if practice is not None else "")
        live = Board(store=opened, kitchen=kitchen, bench=bench, practice=practice)
        if play:
            _play(live, down, as_json)
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
        view = board_view(live, second)
        if tell == "down":
            view["new_plan"] = compare_down(live, second, fryer)
        if as_json:
            emit_json({"ok": True, **view})
            return
        typer.echo(f"{view['date']} {view['clock']}")
        for item in view["advice"]:
            typer.echo(f"  {item['headline']} ({item['start']}). {item['reason']} {item['caution']}")
        for item in view["fryers"]:
            typer.echo(
                f"  {item['name']}: {item['text']}"
                + (f", lift {item['lift']}" if item["state"] == "cooking" else "")
            )
        for item in view["shelf"]:
            typer.echo(
                f"  {item['name']}: {item['count']} on the shelf"
                + (f", {item['expired']} past their hold life" if item["expired"] else "")
            )
        for note in view["notes"]:
            typer.echo(f"  {note}")


def _play(live: Any, down: str, as_json: bool) -> None:
    """Play a practice day to its end and tell how it went."""
    from frywright.cli.output import emit_json
    from frywright.rooms.day.round import play_day
    from frywright.rooms.day.views import close_view

    told = play_day(live, down)
    close = close_view(live, live.bench.trade.closes_s)
    if as_json:
        emit_json({"ok": True, "told": told, **close})
        return
    for line in told:
        typer.echo(f"{line['at']}  {line['text']}")
    typer.echo(
        f"{close['drops_count']} loads, {close['filters_count']} filter turns, {close['thrown_n']:.0f} pieces"
        " thrown away: " + ", ".join(f"{c['cause']} {c['pieces_n']:.0f}" for c in close["causes"])
    )
