"""Signing in and out, the first owner, and the owner's page of people and devices."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.ledger.accounts import Accounts
from frywright.ledger.terms import TERMS
from frywright.model.errors import AccessError, FrywrightError, InputError
from frywright.model.roles import RIGHTS
from frywright.model.units import is_count
from frywright.rooms.files import room_of
from frywright.rooms.records import people
from frywright.rooms.records.dropping import Due, drop_entries, due_entries, term_of
from frywright.rooms.records.kinds import kind_word
from frywright.rooms.records.privacy import BEYOND, NOT_HERE, own_data, remove_name
from frywright.rooms.records.retention import LEAST_YEARS, Old, drop_old_files, old_files
from frywright.voice.tongue import translator
from frywright.web.app import DEVICE_COOKIE, PASS_COOKIE, SESSION_COOKIE, Context
from frywright.web.posted import Typed
from frywright.web.rates import place
from frywright.web.routes import Routes

YEAR_S = 366 * 86400


def router(context: Context) -> Routes:
    """Routes of the pages."""
    routes = Routes()
    _add_sign_in(routes, context)
    _add_code(routes, context)
    _add_first_owner(routes, context)
    _add_owner(routes, context)
    _add_own(routes, context)
    return routes


def keep_cookie(
    response: Response, request: Request, name: str, value: str, age_s: int | None = None
) -> None:
    """A cookie of ours: for our own pages alone, by TLS where the request came so."""
    response.set_cookie(
        name,
        value,
        httponly=True,
        samesite="strict",
        secure=request.url.scheme == "https",
        max_age=age_s,
        path="/",
    )


def _add_sign_in(routes: Routes, context: Context) -> None:
    def shown(request: Request, refused: FrywrightError | None = None, typed: Any = None) -> Response:
        shared = Accounts(context.store).device(request.cookies.get(DEVICE_COOKIE, "")) is not None
        return context.render(
            request,
            "sign_in.html",
            room="",
            error=refused,
            typed=typed or {},
            shared=shared,
            company=context.company,
            next=inside(request.query_params.get("next", "/")),
        )

    @routes.get("/sign-in")
    def page(request: Request) -> Response:
        return shown(request)

    @routes.post("/sign-in")
    async def sign_in(request: Request, form: Typed) -> Response:
        answer: Response = await request.app.state.turns.run(lambda: signed_in(request, form))
        return answer

    def signed_in(request: Request, form: Mapping[str, str]) -> Response:
        try:
            token = people.sign_in(
                context.store,
                form.get("name", ""),
                form.get("secret", ""),
                place(request.client.host if request.client else ""),
                request.app.state.tries,
                device_token=request.cookies.get(DEVICE_COOKIE, ""),
                old=request.cookies.get(SESSION_COOKIE, ""),
            )
        except InputError as error:
            return shown(request, error, {"name": form.get("name", "")})
        back = RedirectResponse(inside(form.get("next", "/")), 303)
        keep_cookie(back, request, SESSION_COOKIE, token)
        return back

    @routes.post("/sign-out")
    def sign_out(request: Request) -> Response:
        people.sign_out(context.store, request.cookies.get(SESSION_COOKIE, ""))
        back = RedirectResponse("/sign-in", 303)
        back.delete_cookie(SESSION_COOKIE, path="/")
        return back


def _add_code(routes: Routes, context: Context) -> None:
    def answer(request: Request, code: str, following: str) -> Response:
        opened = context.door.open_with(code) if context.door else ""
        if opened:
            back = RedirectResponse(inside(following), 303)
            keep_cookie(back, request, PASS_COOKIE, opened)
            return back
        wrong = InputError("code", "not the one printed", "as it stands in the window where Frywright runs")
        refused = wrong if code else None
        return context.render(request, "code.html", room="", error=refused, next=inside(following))

    @routes.get("/code")
    def page(request: Request, code: str = "", next: str = "/") -> Response:
        return answer(request, code, next)

    @routes.post("/code")
    def typed(request: Request, form: Typed) -> Response:
        return answer(request, form.get("code", ""), form.get("next", "/"))


def _add_first_owner(routes: Routes, context: Context) -> None:
    @routes.get("/first-owner")
    def first(request: Request) -> Response:
        return context.render(request, "first_owner.html", room="", taken=Accounts(context.store).any())

    @routes.post("/first-owner")
    def make_first(request: Request, form: Typed) -> Response:
        if request.state.who is None and not Accounts(context.store).any():
            raise AccessError("Show the code that Frywright printed first.")
        try:
            owner = people.first_owner(
                context.store, form.get("name", ""), form.get("password", ""), form.get("pin", "")
            )
        except InputError as error:
            typed = {"name": form.get("name", "")}
            return context.render(request, "first_owner.html", room="", error=error, typed=typed, taken=False)
        back = RedirectResponse("/records/people", 303)
        token = people.begun(
            context.store, owner.name, "password", old=request.cookies.get(SESSION_COOKIE, "")
        )
        keep_cookie(back, request, SESSION_COOKIE, token)
        return back


def inside(path: str) -> str:
    """A way back that stays on these pages."""
    return path if path.startswith("/") and not path.startswith("//") and "\\" not in path else "/"


def _owner_page(
    context: Context,
    request: Request,
    refused: FrywrightError | None = None,
    typed: Any = None,
    token: str = "",
) -> Response:
    accounts = Accounts(context.store)
    return context.render(
        request,
        "records/accounts.html",
        room="records",
        part="people",
        kitchen=context.kitchen,
        accounts=accounts.accounts(),
        devices=accounts.devices(),
        roles=RIGHTS,
        room_left=room_of(context.store),
        old=_old(context, request),
        ages=range(LEAST_YEARS, LEAST_YEARS + 9),
        terms=TERMS,
        beyond=BEYOND,
        due=_due(context, request),
        kind_word=kind_word,
        error=refused,
        typed=typed or {},
        token=token,
    )


def _old(context: Context, request: Request) -> Old | None:
    """Files whose time would be over, where somebody asked how many those are."""
    years = request.query_params.get("years", "")
    return old_files(context.store, int(years)) if is_count(years) else None


def _due(context: Context, request: Request) -> Due | None:
    """Entries whose time would be over, where somebody asked how many those are."""
    asked = request.query_params
    years = asked.get("entry_years", "")
    return due_entries(context.store, term_of(asked.get("term")), int(years)) if is_count(years) else None


def _done(context: Context, request: Request, form: Mapping[str, str], do: Any) -> Response:
    try:
        token = do(form, request.state.who.name)
    except FrywrightError as error:
        kept = {k: v for k, v in form.items() if k not in ("password", "pin")}
        return _owner_page(context, request, error, kept)
    if not isinstance(token, str):
        return RedirectResponse("/records/people", 303)
    page = _owner_page(context, request, token=token)
    if form.get("here"):
        keep_cookie(page, request, DEVICE_COOKIE, token, YEAR_S)
    return page


def _add_owner(routes: Routes, context: Context) -> None:
    @routes.get("/records/people")
    def page(request: Request) -> Response:
        return _owner_page(context, request)

    @routes.post("/records/people/account")
    def add(request: Request, form: Typed) -> Response:
        return _done(
            context,
            request,
            form,
            lambda f, by: people.add_account(
                context.store,
                f.get("name", ""),
                f.get("role", ""),
                f.get("password", ""),
                f.get("pin", ""),
                by,
            ),
        )

    @routes.post("/records/people/change")
    def change(request: Request, form: Typed) -> Response:
        def do(f: dict[str, str], by: str) -> Any:
            active = {"": None, "yes": True, "no": False}.get(f.get("active", ""))
            return people.change_account(
                context.store,
                f.get("name", ""),
                by,
                f.get("reason", ""),
                role=f.get("role", ""),
                password=f.get("password", ""),
                pin=f.get("pin", ""),
                active=active,
            )

        return _done(context, request, form, do)

    @routes.post("/records/people/device")
    def device(request: Request, form: Typed) -> Response:
        return _done(
            context,
            request,
            form,
            lambda f, by: people.add_device(context.store, f.get("name", ""), f.get("role", ""), by),
        )

    _add_partings(routes, context)


def _add_partings(routes: Routes, context: Context) -> None:
    @routes.post("/records/people/files")
    def files(request: Request, form: Typed) -> Response:
        return _done(context, request, form, lambda f, by: drop_old_files(context.store, {**f, "who": by}))

    @routes.post("/records/people/entries")
    def entries(request: Request, form: Typed) -> Response:
        return _done(context, request, form, lambda f, by: drop_entries(context.store, {**f, "who": by}))

    @routes.post("/records/people/remove")
    def remove(request: Request, form: Typed) -> Response:
        tr = translator(context.kitchen.site.language)
        return _done(
            context,
            request,
            form,
            lambda f, by: remove_name(context.store, f.get("name", ""), by, f.get("reason", ""), tr),
        )

    @routes.post("/records/people/revoke")
    def revoke(request: Request, form: Typed) -> Response:
        return _done(
            context,
            request,
            form,
            lambda f, by: people.revoke_device(context.store, f.get("name", ""), by, f.get("reason", "")),
        )


def _add_own(routes: Routes, context: Context) -> None:
    def shown(request: Request, refused: FrywrightError | None = None) -> Response:
        return context.render(request, "records/own.html", room="records", error=refused, not_here=NOT_HERE)

    @routes.get("/records/own")
    def page(request: Request) -> Response:
        return shown(request)

    @routes.get("/records/own/data.jsonl")
    def data(request: Request) -> Response:
        who = request.state.who
        if not who.person:
            raise InputError("name", repr(who.name), "somebody who is signed in")
        beside = {"not_here": context.tr(request)(NOT_HERE)}
        told = (*own_data(context.store, who.name), beside)
        rows = "".join(json.dumps(row, ensure_ascii=False) + "\n" for row in told)
        named = {"Content-Disposition": 'attachment; filename="own.jsonl"'}
        return Response(rows, media_type="application/jsonl", headers=named)

    @routes.post("/records/own")
    def change(request: Request, form: Typed) -> Response:
        who = request.state.who
        try:
            if not who.person:
                raise InputError("name", repr(who.name), "somebody who is signed in")
            people.change_own(
                context.store, who.name, form.get("old", ""), form.get("password", ""), form.get("pin", "")
            )
        except InputError as error:
            return shown(request, error)
        return RedirectResponse("/sign-in", 303)
