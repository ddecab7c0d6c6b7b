"""Room Care: the oil of every vat, told with one hand, and its outlook."""

from __future__ import annotations

import uuid
from typing import Any

from fastapi import APIRouter, Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from frywright.catalog import load as catalog
from frywright.model.errors import FrywrightError, InputError
from frywright.web.app import Context
from frywright.workbench import vat as oil
from frywright.workbench.book import remembered_kitchen
from frywright.workbench.language import explain, translator


def router(context: Context) -> APIRouter:
    """Routes of the room."""
    routes = APIRouter()

    def shown(request: Request, problem: str = "", status: int = 200, typed: Any = None) -> Response:
        kitchen, tr = remembered_kitchen(context.store), translator(context.language(request))
        vats = [
            oil.vat_view(context.store, kitchen, f.key, tr=tr) | {"fill": oil.fill_view(kitchen, f.key)}
            for f in kitchen.fryers
        ]
        recent = [
            {**e.entry.payload, "number": e.number} for _, e in zip(range(12), context.store.entries(oil.KIND, newest_first=True), strict=False)
        ]  # fmt: skip
        limit, title = oil.limit_of(context.store)
        places = catalog.table("standards/oil_limits.toml")["limit"]
        return context.render(
            request, "care.html", status, room="care", vats=vats, recent=recent, problem=problem, typed=typed or {}, kitchen=kitchen, fresh=lambda: uuid.uuid4().hex,
            limit=limit, limit_title=title, places=places,
        )  # fmt: skip

    @routes.get("/care")
    def page(request: Request) -> Response:
        return shown(request)

    @routes.get("/care/oil.json")
    def as_json(request: Request) -> Response:
        kitchen, tr = remembered_kitchen(context.store), translator(context.language(request))
        return JSONResponse(
            {"ok": True, "vats": [oil.vat_view(context.store, kitchen, f.key, tr=tr) for f in kitchen.fryers]}
        )

    @routes.post("/care/oil")
    async def tell(request: Request) -> Response:
        form = await request.form()
        try:
            oil.tell_oil(context.store, remembered_kitchen(context.store), dict(form), str(form.get("key", ""))[:80])
        except InputError as error:
            return shown(request, explain(error, context.language(request)), 422, dict(form))
        return RedirectResponse("/care", 303)

    @routes.post("/care/limit")
    async def limit(request: Request) -> Response:
        form = await request.form()
        try:
            house = float(str(form.get("house", "")).replace(",", "."))
            oil.set_limit(
                context.store, str(form.get("place", "")), house, str(form.get("who", "")), str(form.get("reason", ""))
            )
        except ValueError:
            return shown(request, translator(context.language(request))("Write numbers only."), 422, dict(form))
        except FrywrightError as error:
            return shown(request, explain(error, context.language(request)), 422, dict(form))
        return RedirectResponse("/care", 303)

    return routes
