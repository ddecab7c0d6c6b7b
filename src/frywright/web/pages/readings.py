"""Room Records: hot holding, a mistyped reading put right, reports attached, who runs the kitchen."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse
from starlette.datastructures import UploadFile

from frywright.ledger.attachments import attachments_of
from frywright.ledger.facts.care import ReportAttached
from frywright.ledger.facts.probing import Reading
from frywright.model.errors import FrywrightError, InputError
from frywright.model.units import show
from frywright.rooms.premises import name_place
from frywright.rooms.readings import mend_reading, tell_hold
from frywright.rooms.records.reports import attach_report
from frywright.web.app import Context
from frywright.web.pages.records import probe_page
from frywright.web.posted import Sent, Typed, texts_of
from frywright.web.routes import Routes


def router(context: Context) -> Routes:
    """Routes of these pages."""
    routes = Routes()
    _add_readings(routes, context)
    _add_reports(routes, context)
    return routes


def _add_readings(routes: Routes, context: Context) -> None:
    def shown(
        request: Request, number: int, refused: FrywrightError | None = None, typed: Any = None
    ) -> Response:
        kitchen, item = context.kitchen, context.store.fact(number, Reading)
        newer = context.store.replaced_by(number)
        if item is None:
            raise InputError("reading", number, "the number of a reading")
        return context.render(
            request,
            "records/reading.html",
            room="records",
            part="probing",
            kitchen=kitchen,
            item=item,
            read=show(item.fact.core_c, "c", kitchen.site.units),
            newer=newer.number if newer else 0,
            error=refused,
            typed=typed or {},
        )

    @routes.get("/records/reading/{number}")
    def reading(request: Request, number: int) -> Response:
        return shown(request, number)

    @routes.post("/records/reading/{number}")
    def mend(request: Request, number: int, form: Typed) -> Response:
        try:
            kept, case = mend_reading(context.store, context.kitchen, number, form)
        except FrywrightError as error:
            return shown(request, number, error, form)
        return RedirectResponse(
            f"/records/case/{case.number}" if case else f"/records/entry/{kept.number}", 303
        )

    @routes.post("/records/holding")
    def holding(request: Request, form: Typed) -> Response:
        try:
            kept, case = tell_hold(context.store, context.kitchen, form)
        except FrywrightError as error:
            return probe_page(context, request, error, form)
        return RedirectResponse(
            f"/records/case/{case.number}" if case else f"/records/entry/{kept.number}", 303
        )


def _add_reports(routes: Routes, context: Context) -> None:
    @routes.post("/records/pack/place")
    def place(form: Typed) -> Response:
        name_place(context.store, form)
        return RedirectResponse("/records/pack", 303)

    @routes.post("/records/entry/{number}/report")
    def attach(number: int, form: Sent) -> Response:
        texts: Mapping[str, str] = texts_of(form)
        file = form.get("report")
        if not isinstance(file, UploadFile) or not file.filename:
            raise InputError("report", "missing", "a PDF or a picture (JPEG, PNG, GIF, WebP) of up to 12 MB")
        attach_report(context.store, number, file.filename, file.file, texts.get("who", ""))
        return RedirectResponse(f"/records/entry/{number}", 303)

    @routes.get("/records/report/{number}")
    def report(number: int) -> Response:
        kept = context.store.fact(number, ReportAttached)
        if kept is None:
            raise InputError("report", number, "the number of a report")
        with attachments_of(context.store).open(kept.fact.sha256) as stream:
            content = stream.read()
        told = {
            "Content-Disposition": f"attachment; filename=report-{number}",
            "X-Content-Type-Options": "nosniff",
        }
        return Response(content, media_type="application/octet-stream", headers=told)
