"""Room Day: sales in: a till's files, their columns picked by eye, items mapped once."""

from __future__ import annotations

from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse
from starlette.datastructures import UploadFile

from frywright.model.business_day import day_typed
from frywright.model.errors import FrywrightError, InputError
from frywright.rooms.day import sales
from frywright.rooms.day.sales_page import sales_page
from frywright.web.app import Context
from frywright.web.posted import Sent, Typed
from frywright.web.routes import Routes


def router(context: Context) -> Routes:
    """Routes of the page of sales."""
    routes = Routes()
    _add_page(routes, context)
    _add_columns(routes, context)
    return routes


def _shown(
    context: Context, request: Request, refused: FrywrightError | None = None, typed: Any = None
) -> Response:
    kitchen = context.kitchen
    return context.render(
        request,
        "day/sales.html",
        room="day",
        kitchen=kitchen,
        error=refused,
        typed=typed or {},
        view=sales_page(context.store, kitchen),
    )


def _add_page(routes: Routes, context: Context) -> None:
    @routes.get("/day/sales")
    def page(request: Request) -> Response:
        return _shown(context, request)

    @routes.post("/day/sales")
    def upload(request: Request, form: Sent) -> Response:
        kitchen, order, waits = context.kitchen, str(form.get("order", "")), []
        files = [file for file in form.getlist("file") if isinstance(file, UploadFile) and file.filename]
        try:
            if not files:
                raise InputError("file", "missing", "the till's export")
            for file in files:
                name = file.filename or ""
                if order:
                    sales.keep_sales(context.store, kitchen, file.file, name, order)
                    continue
                kept, problem = sales.take_file(context.store, kitchen, file.file, name)
                waits += [kept.fact.sha256] if problem else []
        except FrywrightError as error:
            return _shown(context, request, error)
        alone = f"/file/{waits[0]}" if waits and len(files) == 1 else ""
        return RedirectResponse(f"/day/sales{alone}", 303)

    @routes.post("/day/sales/items")
    def items(request: Request, form: Typed) -> Response:
        told = {
            form[f"item_{n}"]: form.get(f"pieces_{n}", "") for n in range(len(form)) if f"item_{n}" in form
        }
        try:
            sales.map_items(context.store, context.kitchen, told, form.get("who", ""))
        except FrywrightError as error:
            return _shown(context, request, error, told)
        return RedirectResponse("/day/sales#items", 303)

    @routes.post("/day/sales/leave")
    def leave(form: Typed) -> Response:
        sales.leave_out(context.store, form.get("file", ""))
        return RedirectResponse("/day/sales", 303)


def _add_columns(routes: Routes, context: Context) -> None:
    def shown(
        request: Request, name: str, refused: FrywrightError | None = None, typed: Any = None
    ) -> Response:
        file, looked = sales.preview_of(context.store, name)
        picked = list(getattr(file, "columns", None) or [])
        return context.render(
            request,
            "day/sales_columns.html",
            room="day",
            kitchen=context.kitchen,
            file=file,
            preview=looked,
            error=refused,
            reason=getattr(file, "reason", ""),
            typed=typed or {f"column_{n}": role for n, role in enumerate(picked)},
        )

    @routes.get("/day/sales/file/{name}")
    def page(request: Request, name: str) -> Response:
        return shown(request, name)

    @routes.post("/day/sales/columns")
    def pick(request: Request, form: Typed) -> Response:
        name = form.get("file", "")
        try:
            _, looked = sales.preview_of(context.store, name)
            day = form.get("day", "").strip()
            sales.pick_columns(
                context.store,
                context.kitchen,
                name,
                [form.get(f"column_{n}", "") for n in range(len(looked.header))],
                day_typed(day, "day") if day else None,
                form.get("order", ""),
            )
        except FrywrightError as error:
            if isinstance(error, InputError) and error.field == "file":
                raise
            return shown(request, name, error, form)
        return RedirectResponse("/day/sales", 303)
