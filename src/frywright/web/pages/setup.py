"""The set-up: from an empty store to the first card, one subject a screen."""

from __future__ import annotations

from collections.abc import Mapping
from secrets import token_urlsafe
from typing import Any, BinaryIO
from urllib.parse import quote
from zoneinfo import available_timezones

from fastapi import Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from frywright.ledger.store import Store
from frywright.model.errors import DataError, FrywrightError, InputError, KeptKitchenError
from frywright.rooms.cook import setup as work
from frywright.rooms.cook import setup_view as view
from frywright.rooms.cook.measured import keep_measured
from frywright.rooms.cook.own_day import day_typed, keep_day
from frywright.rooms.cook.own_program import own_program, rows_of
from frywright.rooms.cook.setup_read import Asked
from frywright.rooms.demo import play_demo
from frywright.rooms.kitchen import has_kitchen, kitchen_text, remember_kitchen
from frywright.voice.tongue import explain
from frywright.web.app import Context
from frywright.web.posted import Sent, Typed, photo_of, texts_of
from frywright.web.routes import Routes
from frywright.web.saving import ask_name
from frywright.web.saving import save as save_program


def router(context: Context) -> Routes:
    """Routes of the set-up."""
    routes = Routes()
    _add_kitchen(routes, context)
    _add_start(routes, context)
    _add_first(routes, context)
    _add_own(routes, context)
    _add_day(routes, context)
    _add_screens(routes, context)
    _add_keeping(routes, context)
    return routes


def _add_kitchen(routes: Routes, context: Context) -> None:
    @routes.get("/cook/kitchen")
    def show(request: Request) -> Response:
        return _kitchen_page(
            context, request, kitchen_text(context.store) if has_kitchen(context.store) else ""
        )

    @routes.post("/cook/kitchen")
    def keep(request: Request, form: Typed) -> Response:
        text, reason = form.get("text", "").replace("\r\n", "\n"), form.get("reason", "")
        try:
            remember_kitchen(context.store, text, "kitchen.toml", reason)
        except (InputError, DataError) as error:
            return _kitchen_page(context, request, text, reason=reason, error=error)
        return RedirectResponse("/cook/desk", 303)

    @routes.post("/cook/kitchen/measured")
    def measured(request: Request, form: Typed) -> Response:
        fryer, name = form.get("fryer", ""), form.get("estimate", "")
        try:
            keep_measured(context.store, fryer, name, form, form.get("why", ""))
        except (InputError, DataError) as error:
            said = context.explain(request, error)
            told = {"typed": form, "wrong": said, "status": error.http_status}
            return _kitchen_page(context, request, kitchen_text(context.store), **told)
        return RedirectResponse("/cook/kitchen", 303)


def _kitchen_page(context: Context, request: Request, text: str, **more: Any) -> Response:
    """What the kitchen has, what to add, and its file."""
    tr, place = context.tr(request), None
    try:
        place = context.kitchen if has_kitchen(context.store) else None
    except KeptKitchenError as error:
        more = {"problem": context.explain(request, error)} | more
    found = view.pairs(place) if place else []
    fryers = [
        {
            "fryer": f,
            "pairs": [p for p in found if p.fryer == f.key],
            "estimates": view.estimates_of(f, place.site, tr) if place else (),
        }
        for f in (place.fryers if place else ())
    ]
    more = {"begun": work.unfinished(context.store), "reason": "", "wrong": "", **more}
    return context.render(
        request, "cook/kitchen.html", room="desk", kitchen=place, fryers=fryers, text=text, **more
    )


def _add_start(routes: Routes, context: Context) -> None:
    @routes.get("/setup")
    def start(request: Request) -> Response:
        if has_kitchen(context.store):
            return RedirectResponse("/cook/kitchen", 303)
        setup = work.setup_of(context.store, "kitchen", context.language(request))
        return context.render(request, "cook/setup.html", room="setup", setup=setup)

    @routes.post("/setup/demo")
    def demo() -> Response:
        play_demo(context.store)
        return RedirectResponse("/", 303)


def _add_first(routes: Routes, context: Context) -> None:
    @routes.get("/setup/first")
    def first(request: Request, fryer: str = "", product: str = "") -> Response:
        place = context.kitchen
        found = [
            p
            for p in view.pairs(place)
            if p.fryer == (fryer or p.fryer) and p.product == (product or p.product)
        ]
        open_ones = [p for p in found if not p.programs]
        return context.render(request, "cook/setup_first.html", room="setup", kitchen=place, pairs=open_ones)


def _add_own(routes: Routes, context: Context) -> None:
    @routes.get("/setup/own")
    def own(request: Request) -> Response:
        return _own_page(context, request, request.query_params)

    @routes.post("/setup/own")
    def save(request: Request, form: Typed) -> Response:
        place, language = context.kitchen, context.language(request)
        asked = Asked(place.site, form)
        try:
            program = own_program(place, asked)
        except InputError as error:
            return _own_page(context, request, form, error=error)
        if program is None:
            system = place.site.units
            wrong = {box: explain(error, language, system) for box, error in asked.wrong.items()}
            return _own_page(context, request, form, status=422, wrong=wrong)
        if "name" in form:
            return save_program(context, request, place, program, form, "/setup/own")
        return ask_name(context, request, place, program, form, "/setup/own", None)


def _own_page(context: Context, request: Request, typed: Mapping[str, str], **more: Any) -> Response:
    """The boxes of a program that is cooked by already."""
    place = context.kitchen
    fryer, product = place.fryer(typed.get("fryer", "")), place.product(typed.get("product", ""))
    values: dict[str, Any] = {
        "fryer": fryer,
        "product": product,
        "rows": rows_of(place, fryer.key),
        "typed": dict(typed),
        "us": place.site.units == "us",
        "setup": {"found": {}},
        "wrong": {},
        **more,
    }
    return context.render(request, "cook/setup_own.html", room="setup", **values)


def _add_day(routes: Routes, context: Context) -> None:
    @routes.get("/setup/day")
    def show(request: Request) -> Response:
        return _day_page(context, request, day_typed(context.kitchen))

    @routes.post("/setup/day")
    def keep(request: Request, form: Typed) -> Response:
        language, place = context.language(request), context.kitchen
        try:
            made, wrong = keep_day(context.store, form, form.get("reason", ""))
        except (InputError, DataError) as error:
            return _day_page(context, request, form, error=error)
        if made is None:
            marks = {box: explain(e, language, place.site.units) for box, e in wrong.items()}
            return _day_page(context, request, form, status=422, wrong=marks)
        return RedirectResponse("/day", 303)


def _day_page(context: Context, request: Request, typed: Mapping[str, str], **more: Any) -> Response:
    """The boxes of a kitchen's day."""
    place = context.kitchen
    values: dict[str, Any] = {"kitchen": place, "typed": dict(typed), "setup": {"found": {}}, "wrong": {}}
    values |= {"zones": sorted(available_timezones()), **more}
    return context.render(request, "cook/setup_day.html", room="day", **values)


def _shown(
    context: Context, request: Request, setup: work.Setup, key: str, status: int = 200, **more: Any
) -> Response:
    """A screen, with what is typed and what is wrong with it."""
    language, tr = context.language(request), context.tr(request)
    screen = setup.screen(key)
    keys = [s.key for s in setup.screens]
    found = {box: text for box, text in setup.found.items() if box in work.BOXES[key]}
    values: dict[str, Any] = {
        "setup": setup,
        "screen": screen,
        "key": key,
        "at": keys.index(key) + 1,
        "before": keys[keys.index(key) - 1] if keys.index(key) else "",
        "typed": {**found, **screen.typed},
        "from_photo": bool(found),
        "offered": view.offered(tr),
        "usual": view.usual_words(setup.site, tr),
        "us": setup.site.units == "us",
        "limits": view.limits_here(setup.site.jurisdiction, setup.site, tr)
        if setup.site.jurisdiction
        else (),
        "asks_core": view.asks_core(setup),
        "goods_title": next(
            (t for k, t in view.offered(tr)["cut_set"] if k == setup.typed("food", "cut_set")), ""
        ),
        "page_language": language,
        "page": token_urlsafe(9),
        "wrong": {},
        "problem": "",
        **more,
    }
    return context.render(request, "cook/setup_screen.html", status, room="setup", **values)


def _marks(request: Request, context: Context, setup: work.Setup, key: str) -> dict[str, str]:
    """What is wrong in each box, in the visitor's language and the units of the draft."""
    language, system = context.language(request), setup.site.units
    return {box: explain(error, language, system) for box, error in work.checked(setup, key).items()}


def _add_screens(routes: Routes, context: Context) -> None:
    @routes.get("/setup/{what}/check")
    def check(request: Request, what: str) -> Response:
        return _check_page(context, request, work.setup_of(context.store, what, context.language(request)))

    @routes.get("/setup/{what}/{key}")
    def screen(request: Request, what: str, key: str) -> Response:
        return _shown(context, request, work.setup_of(context.store, what, context.language(request)), key)

    @routes.post("/setup/{what}/keep")
    def keep(request: Request, form: Typed, what: str) -> Response:
        if what not in work.unfinished(context.store):
            return RedirectResponse("/cook/kitchen", 303)  # pressed twice: it is kept already
        try:
            made = work.keep(context.store, what, _count(form, "revision"))
        except (InputError, DataError, work.Overtaken) as error:
            setup = work.setup_of(context.store, what, context.language(request))
            return _check_page(context, request, setup, error)
        return RedirectResponse(f"/setup/first?fryer={quote(made.fryer)}&product={quote(made.product)}", 303)


def _check_page(
    context: Context, request: Request, setup: work.Setup, error: FrywrightError | None = None
) -> Response:
    tr = context.tr(request)
    said = explain(error, context.language(request), setup.site.units) if error else ""
    values: dict[str, Any] = {
        "setup": setup,
        "lines": view.summary(setup, tr),
        "boiling": view.boiling_words(setup, tr) if setup.what == "kitchen" else "",
        "limits": view.limits_here(setup.site.jurisdiction, setup.site, tr)
        if setup.site.jurisdiction
        else (),
        "problem": said,
        "status": error.http_status if error else 200,
    }
    return context.render(request, "cook/setup_check.html", room="setup", **values)


def _add_keeping(routes: Routes, context: Context) -> None:
    @routes.post("/setup/{what}/{key}")
    def keep(request: Request, sent: Sent, what: str, key: str) -> Response:
        form, photo = texts_of(sent), photo_of(sent)
        how = form.get("how", "next")
        seen = work.Seen(
            revision=_count(form, "revision"), page=form.get("page", "")[:40], turn_count=_count(form, "turn")
        )
        language = context.language(request)
        try:
            setup = _answer(context.store, what, key, form, seen, how)
        except work.Overtaken as error:
            return _overtaken(
                context, request, work.setup_of(context.store, what, language), key, form, error
            )
        if how == "photo" and photo is not None:
            return _photo(context, request, setup, photo)
        if how == "stay":
            return JSONResponse({"ok": True, "revision": setup.revision})
        if how != "skip" and not setup.screen(key).done:
            return _shown(context, request, setup, key, 422, wrong=_marks(request, context, setup, key))
        return RedirectResponse(f"/setup/{what}/{setup.after(key)}", 303)


def _photo(context: Context, request: Request, setup: work.Setup, photo: BinaryIO) -> Response:
    """Keep the photo of a plate and show the screen with what was read."""
    try:
        work.keep_plate_photo(context.store, setup.what, photo)
    except InputError as error:
        said = context.explain(request, error)
        return _shown(context, request, setup, "plate", error.http_status, problem=said)
    return RedirectResponse(f"/setup/{setup.what}/plate", 303)


def _count(form: Mapping[str, str], name: str) -> int:
    """A number of the page's own; nonsense is 0, which has seen nothing."""
    text = form.get(name, "")
    return int(text) if text.isascii() and text.isdigit() and len(text) < 10 else 0


def _answer(
    store: Store, what: str, key: str, form: Mapping[str, str], seen: work.Seen, how: str
) -> work.Setup:
    """Keep what was typed; before a photo is read it stays as it is typed."""
    return work.answer(
        store, what, key, form, seen, how={"photo": "stay", "stay": "stay", "skip": "skip"}.get(how, "next")
    )


def _overtaken(
    context: Context,
    request: Request,
    setup: work.Setup,
    key: str,
    form: Mapping[str, str],
    error: FrywrightError,
) -> Response:
    """The screen with what was typed here; what stands there now is said, and nothing is lost."""
    said = context.explain(request, error)
    if form.get("how") == "stay":
        return JSONResponse({"ok": False, "message": said}, status_code=error.http_status)
    there = {box: text for box, text in setup.screen(key).typed.items() if text != form.get(box, "")}
    return _shown(
        context, request, setup, key, error.http_status, typed=dict(form), problem=said, there=there
    )
