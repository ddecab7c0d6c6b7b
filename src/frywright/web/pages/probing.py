"""Probe next: the plan of a program's probing, its readings one by one, the sheet for the clipboard."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any
from urllib.parse import urlencode

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.model.errors import FrywrightError, InputError
from frywright.rooms.cook.lift_calibration import calibrate_at_lift, weighed
from frywright.rooms.cook.next_probing import keep_planned, next_probing
from frywright.rooms.cook.probing_view import ProbingShown, probing_view, sheet_pdf
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.routes import Routes

KEPT_ON = ("thermometer", "who")
"""What stays in the form for the next reading."""
BOXES = ("cut", "place", "load_kind", "load_number", "temp", "thermometer", "weight", "rest", "rest_time")


def router(context: Context) -> Routes:
    """Routes of the page."""
    routes = Routes()

    @routes.get("/cook/probing")
    def page(request: Request) -> Response:
        return _page(context, request, dict(request.query_params))

    @routes.post("/cook/probing")
    def keep(request: Request, form: Typed) -> Response:
        try:
            kept = keep_planned(context.store, context.kitchen, form.get("program", ""), form)
        except FrywrightError as error:
            return _page(context, request, form, error)
        again = {name: form[name] for name in KEPT_ON if form.get(name)}
        if kept.case:
            again["case"] = str(kept.case.number)
        return RedirectResponse(f"/cook/probing?{urlencode({'program': form['program'], **again})}", 303)

    @routes.post("/cook/probing/calibrate")
    def calibrate(request: Request, form: Typed) -> Response:
        kitchen, name = context.kitchen, form.get("program", "")
        try:
            kept = calibrate_at_lift(context.store, kitchen, name, form.get("cut", ""))
        except FrywrightError as error:
            return _page(context, request, {"program": name}, error)
        return RedirectResponse(f"/records?new={kept.number}", 303)

    @routes.get("/cook/probing/sheet.pdf")
    def sheet(request: Request, program: str) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        found = next_probing(context.store, kitchen, program)
        if not found.rows:
            raise InputError("program", repr(program), "one with pieces still to probe")
        data = sheet_pdf(kitchen, found, language, translator(language))
        return Response(data, media_type="application/pdf")

    return routes


def _page(
    context: Context, request: Request, typed: Mapping[str, str], error: FrywrightError | None = None
) -> Response:
    """The page; with an error what was typed and what stood in the way, in its box."""
    kitchen = context.kitchen
    names = sorted({p.name for p in kitchen.own_programs})
    if not names:
        raise InputError("program", "missing", "made first: describe a fryer and save a program")
    name = typed.get("program") or names[0]
    found = next_probing(context.store, kitchen, name)
    view = probing_view(kitchen, found, context.tr(request))
    said = context.explain(request, error) if error else ""
    box = error.field if isinstance(error, InputError) and error.field in BOXES else ""
    values: dict[str, Any] = {
        "kitchen": kitchen,
        "programs": names,
        "view": view,
        "typed": _filled(view, typed),
        "wrong": {box: said} if box else {},
        "problem": said if error and not box else "",
        "case": typed.get("case", "") if typed.get("case", "").isdigit() else "",
        "weighed": weighed(found),
    }
    return context.render(
        request, "cook/probe_next.html", error.http_status if error else 200, room="probes", **values
    )


def _filled(view: ProbingShown, typed: Mapping[str, str]) -> dict[str, str]:
    """The form: what was typed, else the first piece of the plan."""
    planned: dict[str, str] = {}
    if view.loads:
        first = view.loads[0].rows[0].key
        planned = {
            "cut": first.cut,
            "place": first.place,
            "load_kind": first.load,
            "load_number": str(view.loads[0].number),
        }
    return {**planned, **{name: value for name, value in typed.items() if value}}
