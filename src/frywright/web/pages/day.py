"""Room Day: sales, forecast, plan, pull sheet, what-ifs, live board, labels, hand-over."""

from __future__ import annotations

import datetime as dt
import io
import uuid
from collections.abc import Mapping
from dataclasses import asdict
from typing import Any

from fastapi import Request, Response
from fastapi.responses import FileResponse, JSONResponse, RedirectResponse

from frywright.model import business_day
from frywright.model.business_day import usual_trade
from frywright.model.errors import FrywrightError, InputError
from frywright.model.kitchen import Kitchen
from frywright.model.trade import time_of_day, time_of_day_s
from frywright.model.units import is_count
from frywright.paper.chart import svg
from frywright.rooms.clock import now
from frywright.rooms.day import day as work
from frywright.rooms.day import limits, orders, plan_view, pulling, sales, views, what_if
from frywright.rooms.day import paper as day_paper
from frywright.rooms.day.board import Board, Tap, tap_of
from frywright.rooms.day.compare import compare_down, compare_out
from frywright.rooms.day.lifting import LiftAskedError
from frywright.rooms.day.practice import demo_sales, next_practice
from frywright.rooms.day.score import score_view
from frywright.voice.tongue import translator
from frywright.web.app import HERE, Context
from frywright.web.benches import Benches
from frywright.web.forms import whole_number
from frywright.web.pages.now import due_texts, gather, not_serving
from frywright.web.posted import Told, Typed
from frywright.web.routes import Routes
from frywright.web.written import view_json


def router(context: Context) -> Routes:
    """Routes of the room."""
    routes, benches = Routes(), context.benches
    _add_plan(routes, context, benches)
    _add_practice(routes, context, benches)
    _add_drawn_plan(routes, context, benches)
    _add_sales(routes, context, benches)
    _add_questions(routes, context, benches)
    _add_what_if(routes, context, benches)
    _add_board(routes, context, benches)
    _add_board_questions(routes, context, benches)
    _add_close(routes, context, benches)
    _add_worker(routes)
    _add_paper(routes, context, benches)
    return routes


def _date(values: Mapping[str, Any], benches: Benches) -> dt.date:
    text = str(values.get("date", "") or "")
    return business_day.day_typed(text) if text else benches.today()


def _add_plan(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.get("/day")
    def page(request: Request) -> Response:
        tr = context.tr(request)
        values: dict[str, Any] = {
            "room": "day",
            "problem": "",
            "plan": None,
            "forecast": None,
            "sales": None,
            "rule": None,
            "kitchen": benches.kitchen(),
            "event": ("", 1.0),
            "unsold": False,
        }
        status = 200
        try:
            date = _date(request.query_params, benches)
            values |= {"date": date.isoformat(), "event": work.events_of(context.store).get(date, ("", 1.0))}
            values["sales"] = views.sales_view(context.store, benches.kitchen())
            bench = benches.get(date)
            values["forecast"] = plan_view.forecast_view(bench)
            plan = plan_view.plan_view(bench, benches.plan(bench), benches.kitchen(), tr)
            values |= {"plan": plan, "order": plan_view.in_order(plan), "bench": bench}
            used = {fact.program for loads in bench.loads for fact in loads}
            values["refused"] = not_serving(context.store, request, used - benches.serving(), tr)
            values["rule"] = limits.rule_view(bench, tr)
        except FrywrightError as error:
            missing = isinstance(error, InputError) and error.field == "sales"
            values["problem"] = "" if missing else context.explain(request, error)
            values["unsold"], status = missing, 200 if missing else error.http_status
        return context.render(request, "day/day.html", status, **values)


def _add_practice(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.get("/day/practice")
    def begin_practice(request: Request) -> Response:
        date = _date(request.query_params, benches)
        number = next_practice(context.store, date)
        return RedirectResponse(f"/day/{_screen(request.query_params)}?practice={number}&date={date}", 303)


def _add_drawn_plan(routes: Routes, context: Context, benches: Benches) -> None:
    """The plan for programs, on paper and as pictures."""

    @routes.get("/day/plan.json")
    def plan(request: Request) -> Response:
        bench = benches.get(_date(request.query_params, benches))
        tr = context.tr(request)
        view = plan_view.plan_view(bench, benches.plan(bench), benches.kitchen(), tr)
        return view_json(view)

    @routes.get("/day/plan.pdf")
    def paper(request: Request) -> Response:
        bench, kitchen = benches.get(_date(request.query_params, benches)), benches.kitchen()
        language = context.language(request)
        tr = translator(language)
        view = plan_view.plan_view(bench, benches.plan(bench), kitchen, tr)
        promised = orders.order_rows(context.store, bench, None, tr)
        return Response(
            day_paper.plan_pdf(kitchen, view, promised, language, tr), media_type="application/pdf"
        )

    @routes.get("/day/{picture}.svg")
    def picture(request: Request, picture: str) -> Response:
        draw = {"fryers": plan_view.gantt, "shelf": plan_view.shelf_curves}.get(picture)
        if draw is None:
            raise InputError("picture", repr(picture), "fryers or shelf")
        tr, bench = context.tr(request), benches.get(_date(request.query_params, benches))
        view = plan_view.plan_view(bench, benches.plan(bench), benches.kitchen(), tr)
        return context.picture(request, svg(draw(view, tr)))


def _add_sales(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.post("/day/sales/demo")
    def demo() -> Response:
        kitchen = benches.kitchen()
        if not kitchen.site.invented:
            raise InputError(
                "kitchen",
                kitchen.site.name,
                "the invented demo for invented sales; read in your own till's export",
            )
        last = benches.today() - dt.timedelta(days=1)
        sales.keep_sales(
            context.store, kitchen, io.BytesIO(demo_sales(kitchen, last)), "invented-sales.csv", "mdy"
        )
        return RedirectResponse("/day", 303)

    @routes.post("/day/note")
    def note(request: Request, form: Typed) -> Response:
        date = _date(form, benches)
        factor = benches.kitchen().site.number(str(form.get("factor", "")).strip() or "1", "factor")
        work.note_day(context.store, date, str(form.get("event", "")), factor)
        return RedirectResponse(f"/day?date={date.isoformat()}", 303)


def _add_questions(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.get("/day/pull")
    def pull(request: Request) -> Response:
        query, kitchen = request.query_params, benches.kitchen()
        use = _date(query, benches) + dt.timedelta(days=0 if query.get("date") else 2)
        typed, problem, view = dict(query), "", None
        try:
            stock = _stock(kitchen, query, use)
            view = pulling.pull_view(context.store, kitchen, use, stock, context.tr(request))
        except ValueError:
            problem = context.tr(request)("Write amounts as numbers and days as 2026-11-27.")
        except FrywrightError as error:
            problem = context.explain(request, error)
        return context.render(
            request,
            "day/pull.html",
            422 if problem else 200,
            room="day",
            view=view,
            problem=problem,
            kitchen=kitchen,
            use=use.isoformat(),
            typed=typed,
        )


def _add_what_if(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.get("/day/replay")
    def replay(request: Request) -> Response:
        query, kitchen = request.query_params, benches.kitchen()
        date, problem, view, binds = _date(query, benches), "", None, None
        try:
            bench = benches.get(date)
            number = kitchen.site.number
            holds = {
                p: number(query[f"hold_{p}"], "hold life") for p in bench.products if query.get(f"hold_{p}")
            }
            off = tuple(f for f in bench.fryers if query.get(f"off_{f}"))
            every = whole_number(query.get("filter_every", ""), "loads between filter turns")
            asked = what_if.Changed(
                hold_min=holds,
                off=off,
                factor=number(query["factor"], "factor") if query.get("factor") else None,
                filter_every_count=every or 0,
            )
            binds = limits.binds_view(bench, kitchen, context.tr(request))
            if asked != what_if.Changed():
                view = what_if.what_if(context.store, kitchen, bench, asked)
        except FrywrightError as error:
            problem = context.explain(request, error)
        return context.render(
            request,
            "day/replay.html",
            422 if problem else 200,
            room="day",
            view=view,
            binds=binds,
            problem=problem,
            kitchen=kitchen,
            currency=usual_trade(kitchen).currency,
            date=date.isoformat(),
            typed=dict(query),
        )


def _stock(kitchen: Kitchen, query: Mapping[str, str], use: dt.date) -> list[tuple[str, str, float, dt.date]]:
    """Stock typed: product, state, units and the last day it may be used."""
    stock = []
    for sell in kitchen.sells:
        for what in ("thawed", "marinated"):
            units = query.get(f"{sell.product}_{what}", "").strip()
            last = query.get(f"{sell.product}_{what}_until", "") or use.isoformat()
            if units:
                amount = kitchen.site.number(units, "stock")
                stock.append((sell.product, what, amount, dt.date.fromisoformat(last)))
    return stock


def _board(request_values: Mapping[str, Any], benches: Benches) -> tuple[Board, float]:
    """The board asked for and its time: a practice day's clock comes from the page, a real day's from
    here.
    """
    kitchen = benches.kitchen()
    trade = business_day.trade_of(kitchen)
    text = str(request_values.get("practice", "") or "")
    today, second = business_day.business_time(trade, now())
    practice = None
    if text:
        if not is_count(text) or int(text) > 10**6:
            raise InputError("practice", repr(text), "a number up to a million")
        practice = int(text)
        today = _date(request_values, benches)
        told = str(request_values.get("now_s", "") or "")
        try:
            second = float(told) if told else trade.start_s
        except ValueError as error:
            raise InputError("now_s", repr(told), "seconds since midnight") from error
        second = min(max(second, 0.0), 2 * 86400.0)
    return benches.board(today, practice), second


def _add_board(routes: Routes, context: Context, benches: Benches) -> None:
    def shown(request: Request, page: str) -> Response:
        """A screen of the board, or the part of it that is drawn anew."""
        board, second = _board(request.query_params, benches)
        view = benches.look(board, second, context.language(request))
        return context.render(
            request,
            page,
            room="day",
            view=view,
            board=board,
            fresh=_fresh,
            open_s=board.bench.trade.start_s,
            screen="line" if page.startswith("day/line") else "board",
            same=_same(request.query_params, second),
        )

    def whole(request: Request, page: str) -> Response:
        try:
            return shown(request, page)
        except InputError as error:
            if error.field != "sales":
                raise
            return RedirectResponse("/day", 303)

    @routes.get("/day/board")
    def page(request: Request) -> Response:
        return whole(request, "day/board.html")

    @routes.get("/day/line")
    def line(request: Request) -> Response:
        return whole(request, "day/line.html")

    @routes.get("/day/board/part")
    def part(request: Request) -> Response:
        return shown(request, "day/board_part.html")

    @routes.get("/day/line/part")
    def line_part(request: Request) -> Response:
        return shown(request, "day/line_part.html")

    @routes.get("/day/board.json")
    def as_json(request: Request) -> Response:
        board, second = _board(request.query_params, benches)
        view = benches.look(board, second, context.language(request))
        return view_json(view)

    @routes.post("/day/tap")
    def tap(request: Request, values: Told) -> Response:
        as_json = request.headers.get("content-type", "").startswith("application/json")
        board, second = _board(values, benches)
        told = tap_of(values)
        if told.at_s < 0:
            told = tap_of({**dict(values), "at_s": second})
        try:
            kept, new = board.tell(told)
        except LiftAskedError as asked:
            return _lift_asked(context, request, board, told, asked, dict(values) if not as_json else None)
        if as_json:
            return JSONResponse({"ok": True, "number": kept.number, "new": new})
        return RedirectResponse(f"/day/{_screen(values)}?{_same(values, told.at_s)}", 303)


def _lift_asked(
    context: Context,
    request: Request,
    board: Board,
    tap: Tap,
    asked: LiftAskedError,
    typed: dict[str, object] | None,
) -> Response:
    """The question about an early or late lift, with its answers: for the script, or as a page."""
    tr = context.tr(request)
    question, choices = asked.question(tr), [asdict(choice) for choice in asked.choices(tr)]
    if typed is None:
        told = {"ok": False, "error": "LiftAskedError", "message": question, "choices": choices}
        return JSONResponse(told, status_code=asked.http_status)
    return context.render(
        request,
        "day/lift_ask.html",
        asked.http_status,
        room="day",
        fryer=board.kitchen.fryer(tap.fryer).name,
        question=question,
        choices=choices,
        tap={k: v for k, v in typed.items() if k not in ("at_s", "reason")},
        at_s=tap.at_s,
        back=_same(typed, tap.at_s),
    )


def _add_worker(routes: Routes) -> None:
    @routes.get("/day/worker.js")
    def worker() -> Response:
        return FileResponse(HERE / "static" / "worker.js", media_type="text/javascript")


def _add_board_questions(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.get("/day/board/down")
    def down(request: Request) -> Response:
        board, second = _board(request.query_params, benches)
        asked, tr = request.query_params, context.tr(request)
        if asked.get("product"):
            view = compare_out(board, second, asked["product"], tr)
        else:
            view = compare_down(board, second, str(asked.get("fryer", "")), tr)
        return context.render(
            request,
            "day/down.html",
            room="day",
            view=view,
            board=board,
            currency=board.bench.trade.currency,
            back=_same(request.query_params, second),
            screen=_screen(request.query_params),
            clock=time_of_day(second),
        )

    @routes.get("/day/board/promise")
    def promise(request: Request) -> Response:
        query = request.query_params
        board, second = _board(query, benches)
        view, problem = None, ""
        try:
            if query.get("pieces"):
                view = views.promise_view(
                    board,
                    second,
                    str(query.get("product", "")),
                    time_of_day_s(str(query.get("at", ""))),
                    int(query["pieces"]),
                )
        except ValueError:
            problem = context.tr(request)("Write pieces as a whole number.")
        except FrywrightError as error:
            problem = context.explain(request, error)
        return context.render(
            request,
            "day/promise.html",
            422 if problem else 200,
            room="day",
            view=view,
            problem=problem,
            board=board,
            back=_same(query, second),
            screen=_screen(query),
            typed=dict(query),
        )


def _add_close(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.get("/day/close")
    def close(request: Request) -> Response:
        board, second = _board(request.query_params, benches)
        tr = context.tr(request)
        return context.render(
            request,
            "day/close.html",
            room="day",
            view=views.close_view(board, second, tr),
            score=score_view(board, second, tr),
            board=board,
            back=_same(request.query_params, second),
        )


def _fresh() -> str:
    return uuid.uuid4().hex


def _screen(values: Mapping[str, Any]) -> str:
    """The screen that a form came from."""
    return "line" if values.get("screen") == "line" else "board"


def _same(values: Mapping[str, Any], second: float) -> str:
    """Query of the same board."""
    practice, date = str(values.get("practice", "") or ""), str(values.get("date", "") or "")
    return f"practice={practice}&date={date}&now_s={second:.0f}" if practice else ""


def _add_paper(routes: Routes, context: Context, benches: Benches) -> None:
    @routes.get("/day/labels.pdf")
    def labels(request: Request) -> Response:
        board, second = _board(request.query_params, benches)
        language = context.language(request)
        return Response(
            day_paper.labels_pdf(board, second, language, translator(language)), media_type="application/pdf"
        )

    @routes.get("/day/handover.pdf")
    def handover(request: Request) -> Response:
        board, second = _board(request.query_params, benches)
        language, kitchen = context.language(request), context.kitchen
        tr = translator(language)
        lines = gather(context.store, kitchen, language) if board.practice is None else []
        due = due_texts(lines, request, kitchen, tr)
        return Response(
            day_paper.handover_pdf(board, second, language, tr, due), media_type="application/pdf"
        )
