"""What the office released to this kitchen, or stopped: look at it, take it, or say why not."""

from __future__ import annotations

from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.design.difference import changes
from frywright.model.errors import FrywrightError
from frywright.model.kitchen import Kitchen
from frywright.model.units import clock, is_count, show
from frywright.rooms.fleet.arrivals import Arrival, leave_release, take_release, waiting
from frywright.trial.predicted import Answerer, program_facts, show_facts
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.routes import Routes


def router(context: Context) -> Routes:
    """Routes of the page."""
    routes = Routes()

    def shown(request: Request, **more: Any) -> Response:
        kitchen = context.kitchen
        rows = [_row(context, request, kitchen, one) for one in waiting(context.store, kitchen)]
        return context.render(request, "fleet/releases.html", room="desk", kitchen=kitchen, rows=rows, **more)

    def answer(request: Request, form: dict[str, str], act: Any) -> Response:
        text = form.get("number", "")
        try:
            act(int(text) if is_count(text) else 0)
        except FrywrightError as error:
            return shown(request, typed=form, error=error)
        return RedirectResponse("/releases", 303)

    @routes.get("/releases")
    def page(request: Request) -> Response:
        return shown(request)

    @routes.post("/releases/take")
    def take(request: Request, form: Typed) -> Response:
        who = Answerer(by=form.get("by", ""), reason=form.get("reason", ""))
        return answer(request, form, lambda number: take_release(context.store, number, who))

    @routes.post("/releases/leave")
    def leave(request: Request, form: Typed) -> Response:
        why = form.get("reason", "")
        return answer(request, form, lambda number: leave_release(context.store, number, why))

    return routes


def _row(context: Context, request: Request, kitchen: Kitchen, one: Arrival) -> dict[str, Any]:
    """One release in words: what it holds, what it changes, what is predicted of it here."""
    tr, system = context.tr(request), kitchen.site.units
    told, program = one.item.fact, one.program
    known = kitchen.fryer(program.fryer).name if one.problem is None else program.fryer
    return {
        "number": one.item.number,
        "name": program.name,
        "version": told.text.version,
        "fryer": known,
        "halted": one.halted,
        "who": told.who,
        "reason": told.reason,
        "stages": [
            (show(stage.set_c, "c", system), tr(str(stage.lid)), clock(stage.duration_s or 0.0))
            for stage in program.timed().stages
        ],
        "here": one.here.version if one.here else 0,
        "changes": changes(one.here, program, system) if one.here else (),
        "facts": show_facts(program_facts(kitchen, program), system, tr) if one.problem is None else None,
        "problem": context.explain(request, one.problem) if one.problem else "",
    }
