"""Room Day: orders promised for a day: told, seen, handed over or withdrawn."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.model import business_day
from frywright.model.errors import FrywrightError, InputError
from frywright.model.trade import time_of_day_s
from frywright.model.units import LONGEST_COUNT
from frywright.rooms.clock import now
from frywright.rooms.day import orders, views
from frywright.rooms.day.day import Bench
from frywright.web.app import Context
from frywright.web.forms import whole_number
from frywright.web.posted import Typed
from frywright.web.routes import Routes

ENDS = {"given": "handed over", "withdrawn": "withdrawn"}


def router(context: Context) -> Routes:
    """Routes of the page of promised orders."""
    routes = Routes()

    @routes.get("/day/orders")
    def page(request: Request) -> Response:
        return _shown(context, request, dict(request.query_params))

    @routes.post("/day/orders")
    def promise(request: Request, form: Typed) -> Response:
        try:
            bench, second = _bench(context, form)
            pieces = whole_number(form.get("pieces", ""), "pieces", LONGEST_COUNT) or 0
            ready_s = time_of_day_s(form.get("at", ""), "ready at")
            if ready_s < bench.trade.start_s:  # after midnight
                ready_s += 86400.0
            asked = form.get("product", ""), pieces, ready_s, form.get("ticket", "")
            product = orders.order_of(bench, asked, second).product
            board = context.benches.board(bench.date)
            found = views.promise_view(board, second, product, ready_s, pieces)
            if not found.feasible and not form.get("anyway"):
                return _shown(context, request, form, status=422, doubt=found)
            low = None if found.feasible else found.chance_frac
            orders.promise_order(context.store, bench, asked, second, low)
        except FrywrightError as error:
            return _shown(context, request, form, context.explain(request, error), error.http_status)
        return RedirectResponse(f"/day/orders?date={bench.date.isoformat()}", 303)

    @routes.post("/day/orders/end")
    def end(form: Typed) -> Response:
        state = ENDS.get(form.get("state", ""))
        if state is None:
            raise InputError("state", repr(form.get("state", "")), "given or withdrawn")
        number = whole_number(form.get("number", ""), "order", LONGEST_COUNT) or 0
        kept = orders.end_order(context.store, number, state, _now(context)[1])  # type: ignore[arg-type]
        back = (
            "/day/line" if form.get("screen") == "line" else f"/day/orders?date={kept.fact.date.isoformat()}"
        )
        return RedirectResponse(back, 303)

    return routes


def _now(context: Context) -> tuple[dt.date, float]:
    return business_day.business_time(business_day.trade_of(context.benches.kitchen()), now())


def _bench(context: Context, typed: Mapping[str, Any]) -> tuple[Bench, float]:
    """The day asked for, today or later, and the second of it from which on an order can be promised."""
    today, second = _now(context)
    text = str(typed.get("date", "") or "")
    date = business_day.day_typed(text) if text else today
    if not today <= date <= today + dt.timedelta(days=60):
        raise InputError("date", date.isoformat(), "today or one of the next 60 days")
    return context.benches.get(date), second if date == today else 0.0


def _shown(
    context: Context,
    request: Request,
    typed: Mapping[str, Any],
    problem: str = "",
    status: int = 200,
    doubt: views.PromiseView | None = None,
) -> Response:
    tr, bench = context.tr(request), None
    rows: tuple[orders.OrderRow, ...] = ()
    try:
        bench, second = _bench(context, typed)
        state = context.benches.board(bench.date).state(second)
        rows = orders.order_rows(context.store, bench, state, tr)
    except FrywrightError as error:
        problem, status = problem or context.explain(request, error), max(status, error.http_status)
    return context.render(
        request,
        "day/orders.html",
        status,
        room="day",
        bench=bench,
        rows=rows,
        problem=problem,
        doubt=doubt,
        typed=typed,
        letters=orders.MOST_LETTERS,
    )
