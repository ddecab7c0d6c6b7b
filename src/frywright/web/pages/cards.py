"""Room Care, procedure cards: shown, printed, made the kitchen's own, signed as done."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, BinaryIO

from fastapi import Request, Response
from fastapi.responses import RedirectResponse
from starlette.datastructures import FormData

from frywright.model.errors import FrywrightError
from frywright.model.units import GALLON, to_inside
from frywright.rooms.care import procedures
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.posted import Sent, photo_of, texts_of
from frywright.web.routes import Routes
from frywright.web.written import view_json


def router(context: Context) -> Routes:
    """Routes of the cards."""
    routes = Routes()
    _add_paper(routes, context)
    _add_forms(routes, context)
    return routes


def _add_paper(routes: Routes, context: Context) -> None:
    @routes.get("/care/card/{key}.pdf")
    def paper(request: Request, key: str) -> Response:
        language, asked = context.language(request), request.query_params
        kitchen = context.kitchen
        boxes = {"water_gal": "water", "oz_gal": "rate", "water_l": "water", "g_l": "rate"}
        gal, oz_gal, litres, g_l = (
            kitchen.site.number(asked.get(box, "").strip() or "0", name) for box, name in boxes.items()
        )
        water, rate = gal * GALLON or litres / 1000.0, to_inside(oz_gal, "oz_gal") or g_l
        data = procedures.procedure_pdf(
            context.store, kitchen, key, language, translator(language), water_m3=water, rate_kg_m3=rate
        )
        return Response(data, media_type="application/pdf")

    @routes.get("/care/card/{key}.json")
    def as_json(request: Request, key: str) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        return view_json(procedures.card_view(context.store, kitchen, key, language))


def _add_forms(routes: Routes, context: Context) -> None:
    def shown(
        request: Request, key: str, refused: FrywrightError | None = None, typed: Any = None
    ) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        view = procedures.card_view(context.store, kitchen, key, language)
        return context.render(
            request,
            "care/card.html",
            room="care",
            part="oil",
            kitchen=kitchen,
            view=view,
            error=refused,
            typed=typed or {},
        )

    def posted(
        request: Request,
        key: str,
        form: FormData,
        form_name: str,
        do: Callable[[dict[str, str], BinaryIO | None], Any],
    ) -> Response:
        texts = texts_of(form) | {"key": key, "language": context.language(request), "form": form_name}
        try:
            do(texts, photo_of(form))
        except FrywrightError as error:
            return shown(request, key, error, texts)
        return RedirectResponse(f"/care/card/{key}", 303)

    @routes.get("/care/card/{key}")
    def page(request: Request, key: str) -> Response:
        return shown(request, key)

    @routes.post("/care/card/{key}/save")
    def save(request: Request, key: str, form: Sent) -> Response:
        return posted(
            request, key, form, "save", lambda texts, photo: procedures.save_card(context.store, texts, photo)
        )

    @routes.post("/care/card/{key}/sign")
    def sign(request: Request, key: str, form: Sent) -> Response:
        return posted(
            request,
            key,
            form,
            "sign",
            lambda texts, photo: procedures.sign_card(context.store, context.kitchen, texts, photo),
        )
