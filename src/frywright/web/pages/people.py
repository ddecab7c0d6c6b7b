"""Room Care, people: skills with their expiry, age rules, drills, wall cards."""

from __future__ import annotations

from typing import Any

from fastapi import Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from frywright.model.errors import FrywrightError, InputError
from frywright.model.plain import plain
from frywright.model.units import is_count
from frywright.rooms.care import training
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.routes import Routes


def router(context: Context) -> Routes:
    """Routes of the page."""
    routes = Routes()
    _add_people(routes, context)
    _add_drills(routes, context)
    return routes


def _page(
    context: Context, request: Request, refused: FrywrightError | None = None, typed: Any = None
) -> Response:
    kitchen, language = context.kitchen, context.language(request)
    tr = translator(language)
    return context.render(
        request,
        "care/people.html",
        room="care",
        part="people",
        kitchen=kitchen,
        view=training.people_view(context.store, kitchen, language, tr),
        drills=training.drill_views(kitchen, language, tr),
        error=refused,
        typed=typed or {},
    )


def _add_people(routes: Routes, context: Context) -> None:
    @routes.get("/care/people")
    def page(request: Request) -> Response:
        return _page(context, request)

    @routes.get("/care/people.json")
    def as_json(request: Request) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        view = training.people_view(context.store, kitchen, language, translator(language))
        return JSONResponse({"ok": True, **plain(view)})

    @routes.post("/care/people/{what}")
    def keep(request: Request, what: str, form: Typed) -> Response:
        do = {"person": training.keep_person, "skill": training.sign_skill}.get(what)
        try:
            if do is None:
                raise InputError("form", repr(what), "person or skill")
            do(context.store, context.kitchen, form)
        except FrywrightError as error:
            return _page(context, request, error, form)
        return RedirectResponse("/care/people", 303)

    @routes.get("/care/wall.pdf")
    def wall(request: Request) -> Response:
        language = context.language(request)
        data = training.wall_card_pdf(context.store, context.kitchen, language, translator(language))
        return Response(data, media_type="application/pdf")


def _add_drills(routes: Routes, context: Context) -> None:
    def shown(request: Request, key: str, picked: int | None) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        drills = training.drill_views(kitchen, language, translator(language))
        drill = training.drill_view(kitchen, key, language, translator(language))
        keys = [d.key for d in drills]
        following = keys[(keys.index(key) + 1) % len(keys)]
        return context.render(
            request,
            "care/drill.html",
            room="care",
            part="people",
            drill=drill,
            picked=picked,
            following=following,
        )

    @routes.get("/care/drill/{key}")
    def drill(request: Request, key: str) -> Response:
        return shown(request, key, None)

    @routes.post("/care/drill/{key}")
    def answer(request: Request, key: str, form: Typed) -> Response:
        text = str(form.get("choice", ""))
        if not is_count(text):
            raise InputError("choice", repr(text), "one of the answers shown")
        training.answer_drill(context.store, context.kitchen, key, int(text), str(form.get("who", "")))
        return shown(request, key, int(text))
