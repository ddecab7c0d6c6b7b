"""Room Care, fryers: what is due and who ticks it off, timed figures, and a new fryer from its plate to its
handover.
"""

from __future__ import annotations

from typing import Any

from fastapi import Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from frywright.ledger.attachments import attachments_of
from frywright.model.errors import FrywrightError
from frywright.model.plain import plain
from frywright.model.roles import SIGNERS
from frywright.model.units import clock
from frywright.paper.paper import picture_type
from frywright.rooms.care import commissioning, nameplate, upkeep
from frywright.rooms.care.handover import PLATE_NAMES, emergency_pdf, handover_pack
from frywright.rooms.care.heat_check import ASKED
from frywright.rooms.care.vent_time import take_vent, vent_offer
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.posted import Sent, Typed, photo_of, texts_of
from frywright.web.routes import Routes

SITE_NAMES = {
    "volts": "volts between legs",
    "phases": "phases found",
    "breaker_amps": "breaker, A",
    "gas": "gas at the site",
    "gas_static": "gas pressure at rest",
    "gas_flowing": "gas pressure with all burners on",
    "altitude": "altitude",
    "flame": "distance to an open flame",
}


def router(context: Context) -> Routes:
    """Routes of the page."""
    routes = Routes()
    _add_care(routes, context)
    _add_new(routes, context)
    _add_paper(routes, context)
    return routes


def _care_page(
    context: Context, request: Request, refused: FrywrightError | None = None, typed: Any = None
) -> Response:
    kitchen, language = context.kitchen, context.language(request)
    tr = translator(language)
    return context.render(
        request,
        "care/fryers.html",
        room="care",
        part="fryers",
        kitchen=kitchen,
        rows=upkeep.care_rows(context.store, kitchen, tr, language),
        error=refused,
        wear=upkeep.wear_rows(context.store, kitchen, tr),
        who=SIGNERS,
        figures=upkeep.FIGURE_NAMES,
        typed=typed or {},
        today=upkeep.today_of(kitchen).isoformat(),
    )


def _add_care(routes: Routes, context: Context) -> None:
    @routes.get("/care/fryers")
    def page(request: Request) -> Response:
        return _care_page(context, request)

    @routes.get("/care/fryers.json")
    def as_json(request: Request) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        tr = translator(language)
        return JSONResponse(
            {
                "ok": True,
                "due": plain(upkeep.care_rows(context.store, kitchen, tr, language)),
                "wear": plain(upkeep.wear_rows(context.store, kitchen, tr)),
            }
        )

    @routes.post("/care/fryers/done")
    def done(request: Request, form: Typed) -> Response:
        try:
            asked = {name: form.get(f"{form.get('task', '')}_{name}", "") for name in ASKED}
            upkeep.tick(context.store, context.kitchen, {**asked, **form})
        except FrywrightError as error:
            return _care_page(context, request, error, form)
        return RedirectResponse(f"/care/fryers#f-{form['fryer']}", 303)

    @routes.post("/care/fryers/figure")
    def figure(request: Request, form: Typed) -> Response:
        try:
            upkeep.tell_figure(context.store, context.kitchen, form)
        except FrywrightError as error:
            return _care_page(context, request, error, form)
        return RedirectResponse("/care/fryers", 303)

    @routes.get("/care/calendar.ics")
    def calendar() -> Response:
        text = upkeep.calendar_text(context.store, context.kitchen)
        return Response(
            text,
            media_type="text/calendar",
            headers={"Content-Disposition": 'attachment; filename="fryer-care.ics"'},
        )


def _new_page(
    context: Context, request: Request, fryer: str, refused: FrywrightError | None = None, typed: Any = None
) -> Response:
    kitchen, language = context.kitchen, context.language(request)
    view = commissioning.commissioning_view(
        context.store, kitchen, fryer or kitchen.fryers[0].key, language, translator(language)
    )
    names = {s.key: s.title for s in view.steps}
    return context.render(
        request,
        "care/new_fryer.html",
        room="care",
        part="new",
        kitchen=kitchen,
        view=view,
        vent=vent_offer(context.store, kitchen, view.fryer),
        clock=clock,
        error=refused,
        typed=typed or {},
        who=SIGNERS,
        plate_names=PLATE_NAMES,
        site_names=SITE_NAMES,
        loads=commissioning.LOAD_NAMES,
        signs=nameplate.unit_signs(kitchen.site.units),
        titles=lambda keys: "; ".join(names.get(k, k) for k in keys),
    )


def _try(context: Context, request: Request, texts: dict[str, str], do: Any) -> Response:
    fryer = context.kitchen.fryer(texts.get("fryer", "")).key
    try:
        do()
    except FrywrightError as error:
        return _new_page(context, request, fryer, error, texts)
    return RedirectResponse(f"/care/new?fryer={fryer}", 303)


def _add_new(routes: Routes, context: Context) -> None:
    @routes.get("/care/new")
    def page(request: Request) -> Response:
        return _new_page(context, request, request.query_params.get("fryer", ""))

    @routes.get("/care/new/{fryer}.json")
    def as_json(request: Request, fryer: str) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        view = commissioning.commissioning_view(context.store, kitchen, fryer, language, translator(language))
        return JSONResponse({"ok": True, **plain(view)})

    @routes.post("/care/new/plate")
    def plate(request: Request, form: Sent) -> Response:
        texts, photo = texts_of(form), photo_of(form)
        return _try(
            context,
            request,
            texts,
            lambda: nameplate.keep_plate(context.store, context.kitchen, texts, photo),
        )

    @routes.post("/care/new/site")
    def site(request: Request, texts: Typed) -> Response:
        return _try(
            context, request, texts, lambda: nameplate.keep_site(context.store, context.kitchen, texts)
        )

    @routes.post("/care/new/step")
    def step(request: Request, texts: Typed) -> Response:
        return _try(
            context, request, texts, lambda: commissioning.sign_step(context.store, context.kitchen, texts)
        )

    @routes.post("/care/new/vent")
    def vent(request: Request, texts: Typed) -> Response:
        kitchen = context.kitchen
        reason = texts.get("vent_reason", "")
        return _try(
            context, request, texts, lambda: take_vent(context.store, kitchen, texts["fryer"], reason)
        )


def _add_paper(routes: Routes, context: Context) -> None:
    @routes.get("/care/new/{fryer}.pdf")
    def pack(request: Request, fryer: str) -> Response:
        language = context.language(request)
        data = handover_pack(context.store, context.kitchen, fryer, language, translator(language))
        return Response(data, media_type="application/pdf")

    @routes.get("/care/new/photo/{name}")
    def photo(name: str) -> Response:
        with attachments_of(context.store).open(name) as stream:
            content = stream.read()
        kind = picture_type(content)
        return (
            Response(content, media_type=f"image/{'jpeg' if kind == 'jpg' else kind}")
            if kind
            else Response(status_code=404)
        )

    @routes.get("/care/emergency.pdf")
    def emergency(request: Request) -> Response:
        language = context.language(request)
        data = emergency_pdf(context.kitchen, language, translator(language))
        return Response(data, media_type="application/pdf")
