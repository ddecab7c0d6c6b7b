"""Room Care: the oil of every vat, told with one hand, and its outlook."""

from __future__ import annotations

import uuid
from typing import Any

from fastapi import APIRouter, Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from frywright.catalog import load as catalog
from frywright.model.errors import FrywrightError, InputError
from frywright.model.units import GALLON
from frywright.web.app import Context
from frywright.workbench import machines
from frywright.workbench import vat as oil
from frywright.workbench.book import remembered_kitchen
from frywright.workbench.language import explain, translator


def router(context: Context) -> APIRouter:
    """Routes of the room."""
    routes = APIRouter()
    _add_oil(routes, context)
    _add_machines(routes, context)
    return routes


def _shown(context: Context, request: Request, problem: str = "", status: int = 200, typed: Any = None) -> Response:
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
        request, "care.html", status, room="care", part="oil", vats=vats, recent=recent, problem=problem, typed=typed or {}, kitchen=kitchen, fresh=lambda: uuid.uuid4().hex,
        limit=limit, limit_title=title, places=places, held={k: e.entry.payload for k, e in machines.stopped(context.store).items()}, reasons=machines.REASONS,
        cards=[(key, catalog.table(f"procedures/{key}.toml")["title_es" if context.language(request) == "es" else "title"]) for key in machines.procedures()],
    )  # fmt: skip


def _add_oil(routes: APIRouter, context: Context) -> None:
    @routes.get("/care")
    def page(request: Request) -> Response:
        return _shown(context, request)

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
            return _shown(context, request, explain(error, context.language(request)), 422, dict(form))
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
            return _shown(
                context, request, translator(context.language(request))("Write numbers only."), 422, dict(form)
            )
        except FrywrightError as error:
            return _shown(context, request, explain(error, context.language(request)), 422, dict(form))
        return RedirectResponse("/care", 303)


def _add_machines(routes: APIRouter, context: Context) -> None:
    @routes.post("/care/stop")
    async def stop(request: Request) -> Response:
        form = {k: str(v) for k, v in (await request.form()).items()}
        machines.stop_use(
            context.store,
            remembered_kitchen(context.store),
            form.get("fryer", ""),
            form.get("reason", ""),
            form.get("who", ""),
            form.get("words", ""),
        )
        return RedirectResponse("/care", 303)

    @routes.post("/care/reopen")
    async def reopen(request: Request) -> Response:
        form = {k: str(v) for k, v in (await request.form()).items()}
        try:
            machines.reopen(
                context.store,
                remembered_kitchen(context.store),
                form.get("fryer", ""),
                form.get("who", ""),
                form.get("role", ""),
                form.get("finding", ""),
            )
        except InputError as error:
            return _shown(context, request, explain(error, context.language(request)), 422, form)
        return RedirectResponse("/care", 303)

    @routes.get("/care/card/{key}.pdf")
    def card(request: Request, key: str) -> Response:
        language = context.language(request)
        try:
            water, rate = (
                float(str(request.query_params.get(name, "0") or 0).replace(",", "."))
                for name in ("water_gal", "oz_gal")
            )
        except ValueError as error:
            raise InputError("water and rate", "not numbers", "numbers") from error
        data = machines.procedure_pdf(
            remembered_kitchen(context.store),
            key,
            language,
            translator(language),
            water_m3=water * GALLON,
            label_oz_gal=rate,
        )
        return Response(data, media_type="application/pdf")
