"""The kitchens of this store: what each wants done now, and a further one."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request, Response
from fastapi.responses import RedirectResponse

from frywright.model.errors import InputError
from frywright.model.now import Harm
from frywright.rooms.cook import setup_view as view
from frywright.rooms.fleet.kitchens import Here, await_kitchen, kitchens_of, open_kitchen
from frywright.rooms.fleet.office import forks
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
        values |= {
            "typed": {},
            "wrong": {},
            "problem": "",
            "typed_site": {},
            "wrong_site": "",
            "token": "",
            **more,
        }
        return context.render(request, "fleet/kitchens.html", status, room="kitchens", **values)

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

    @routes.post("/kitchens/await")
    def awaited(request: Request, form: Typed) -> Response:
        by = request.state.who.name if request.state.who else ""
        try:
            key, token = await_kitchen(context.store, form.get("name", ""), by)
        except InputError as error:
            told = {"typed_site": form, "wrong_site": context.explain(request, error)}
            return shown(request, error.http_status, **told)
        return shown(request, key=key, token=token)

    return routes


def _row(context: Context, here: Here) -> dict[str, Any]:
    """One kitchen and what it wants done, by how much it matters."""
    lines = gather(context.store.at(here.key), here.kitchen) if here.kitchen else []
    last = next(iter(context.store.at(here.key).entries(newest_first=True)), None)
    return {
        "sent": f"{last.recorded_at:%Y-%m-%d %H:%M} UTC" if here.sent_here and last else "",
        "fork": forks(context.store).get(here.key, 0),
        "here": here,
        "mine": here.key == context.store.site,
        "stop": sum(line.harm <= Harm.WRONG for line in lines),
        "more": sum(line.harm > Harm.WRONG for line in lines),
    }
