"""The life of a program: its steps with the next one as a button, its versions, service and retirement."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any
from urllib.parse import quote

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.model.errors import InputError
from frywright.model.tongues import Translate
from frywright.model.units import is_count
from frywright.rooms.cook.desk import clock_sentence, differences
from frywright.rooms.cook.life import life_of_program, life_shown, put_in_service, retire, tell_keyed
from frywright.rooms.kitchen import remembered_kitchen
from frywright.trial.predicted import program_facts, show_facts
from frywright.trial.prove_again import again_line
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.routes import Routes

TOLD_COUNT = 10
"""Changes of a program on one page, newest first (own choice); each of its versions is cooked."""

Act = Callable[[Mapping[str, str], Translate], Any]


def router(context: Context) -> Routes:
    """Routes of the page."""
    routes = Routes()

    @routes.get("/cook/changes")
    def versions(request: Request, program: str, before: str = "") -> Response:
        return _shown(context, request, program, before=before)

    def act(path: str, do: Act) -> None:
        @routes.post(path)
        def told(request: Request, form: Typed) -> Response:
            tr = context.tr(request)
            try:
                do(form, tr)
            except InputError as error:
                name = form.get("program", "")
                if error.field == "program" and error.where != name:
                    raise
                return _shown(context, request, name, typed=form, wrong=error.field, asked=path, error=error)
            return RedirectResponse(f"/cook/changes?program={quote(form['program'])}", 303)

    store = context.store
    act(
        "/cook/keyed",
        lambda form, _: tell_keyed(
            store, remembered_kitchen(store), form.get("program", ""), form.get("who", "")
        ),
    )
    act(
        "/cook/service",
        lambda form, tr: put_in_service(
            store, remembered_kitchen(store), form.get("program", ""), form.get("who", ""), tr
        ),
    )
    act(
        "/cook/retire",
        lambda form, _: retire(
            store,
            remembered_kitchen(store),
            form.get("program", ""),
            form.get("who", ""),
            form.get("reason", ""),
        ),
    )
    return routes


def _shown(context: Context, request: Request, name: str, *, before: str = "", **more: Any) -> Response:
    """The page of one program, with its changes up to version ``before``; ``more`` is what was typed and what
    is wrong with it.
    """
    place, tr = context.kitchen, context.tr(request)
    system, newest = place.site.units, place.program(name)
    last = int(before) if is_count(before) else newest.version
    found = tuple(p for p in place.versions(name) if p.version <= last) or place.versions(name)
    values = {
        "title": name,
        "fryer": place.fryer(newest.fryer).name,
        "life": life_shown(place, newest, life_of_program(context.store, place, newest), tr),
        "again": again_line(place, newest, tr),
        "told": differences(place, found[-TOLD_COUNT - 1 :], tr),
        "older": found[-TOLD_COUNT - 1].version if len(found) > TOLD_COUNT + 1 else 0,
        "newest": newest.version,
        "facts_now": show_facts(program_facts(place, newest), system, tr),
        "system": system,
        "clock": clock_sentence(place, newest, tr),
        "wrong": "",
        "asked": "",
        **more,
    }
    return context.render(request, "cook/changes.html", room="desk", kitchen=place, **values)
