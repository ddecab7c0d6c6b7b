"""Signing in at the company: there, and back."""

from __future__ import annotations

import os
from math import ceil

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.model.errors import AccessError, BusyError, InputError
from frywright.rooms.records.company import sign_in_as
from frywright.web.app import SESSION_COOKIE, Context
from frywright.web.company import ASKED_S, BACK, Company, provider_of
from frywright.web.pages.accounts import inside, keep_cookie
from frywright.web.rates import place
from frywright.web.routes import Routes

STATE_COOKIE = "company"


def router(context: Context) -> Routes:
    """Routes there and back; without a provider they say so."""
    routes, provider = Routes(), provider_of(os.environ)
    company = Company(provider) if provider else None
    context.company = company is not None

    def known() -> Company:
        if company is None:
            raise InputError("company", "none", "set up by whoever runs this server")
        return company

    def knocked(request: Request) -> None:
        host = request.client.host if request.client else ""
        if ceil(request.app.state.knocks.wait_s(place(host))) > 0:
            raise BusyError("Too many sign-ins at once; try again in a few seconds.")

    @routes.get("/sign-in/company")
    def there(request: Request, next: str = "/") -> Response:
        knocked(request)
        address, state = known().begin(inside(next))
        away = RedirectResponse(address, 303)
        away.set_cookie(
            STATE_COOKIE,
            state,
            max_age=int(ASKED_S),
            path="/sign-in",
            httponly=True,
            samesite="lax",  # the company's page sends the browser back, and it must show this then
            secure=request.url.scheme == "https",
        )
        return away

    @routes.get(BACK)
    def back(request: Request, state: str = "", code: str = "", iss: str = "") -> Response:
        knocked(request)
        try:
            mark, following = known().finish(state, request.cookies.get(STATE_COOKIE, ""), code, iss)
            token = sign_in_as(context.store, mark, request.cookies.get(SESSION_COOKIE, ""))
        except AccessError as error:
            return context.render(
                request, "sign_in.html", room="", error=error, shared=False, company=True, next="/"
            )
        page = context.render(request, "company.html", room="", following=following)
        page.delete_cookie(STATE_COOKIE, path="/sign-in")
        keep_cookie(page, request, SESSION_COOKIE, token)
        return page

    return routes
