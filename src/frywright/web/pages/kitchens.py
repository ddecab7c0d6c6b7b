"""The kitchens of this store: what each wants done now, and a further one."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request, Response
from fastapi.responses import RedirectResponse

from frywright.model.errors import InputError
from frywright.model.now import Harm
from frywright.rooms.cook import setup_view as view
from frywright.rooms.fleet.kitchens import Here, kitchens_of, open_kitchen
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.pages.now import gather
from frywright.web.posted import Typed


def router(context: Context) -> APIRouter:
    """Routes of the page."""
    routes = APIRouter()

    def shown(request: Request, status: int = 200, **more: Any) -> Response:
        tr, here = translator(context.language(request)), kitchens_of(context.store)
        values = {
            "rows": [_row(context, one) for one in here],
            "described": [one for one in here if one.kitchen],
            "places": view.offered(tr)["jurisdiction"],
        }
        values |= {"typed": {}, "wrong": {}, "problem": "", **more}
        return context.render(request, "kitchens.html", status, room="kitchens", **values)

    @routes.get("/kitchens")
    def page(request: Request) -> Response:
        return shown(request)

    @routes.post("/kitchens")
    def another(request: Request, form: Typed) -> Response:
        try:
            key = open_kitchen(context.store, form)
        except InputError as error:
            said = context.explain(request, error)
            told = {"typed": form, "wrong": {error.field: said}, "problem": said}
            return shown(request, error.http_status, **told)
        return RedirectResponse(f"/at/{key}/{'cook/kitchen' if form.get('like') else 'setup'}", 303)

    return routes


def _row(context: Context, here: Here) -> dict[str, Any]:
    """One kitchen and what it wants done, by how much it matters."""
    lines = gather(context.store.at(here.key), here.kitchen) if here.kitchen else []
    return {
        "here": here,
        "mine": here.key == context.store.site,
        "stop": sum(line.harm <= Harm.WRONG for line in lines),
        "more": sum(line.harm > Harm.WRONG for line in lines),
    }
