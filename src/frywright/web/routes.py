"""The routes of a page: each asks for its right, and is made ready when it is first asked for."""

from __future__ import annotations

from collections.abc import Callable
from threading import RLock
from typing import Any

from fastapi import APIRouter, Depends, Request
from fastapi.routing import APIRoute
from starlette.routing import compile_path

from frywright.model.errors import AccessError, UnknownError
from frywright.web.rights import OPEN, right_for

API = "/api/"
_READY = RLock()


async def authorise(request: Request) -> None:
    """Every route states its right; whoever asks must have it."""
    right = right_for(request.method, request.scope["route"].path)
    if right == OPEN:
        return
    who = request.state.who
    if who is None:
        raise (UnknownError if request.url.path.startswith(API) else AccessError)("Sign in first.")
    if right == "owner" and who.by_pin and who.role == "owner":
        raise AccessError("Sign in with your password for this: a PIN does not open what only the owner may.")
    if right is None or not who.may(right):
        raise AccessError("{name} as {role} may not do this.", name=who.name, role=who.role)


class LateRoute(APIRoute):
    """A route that knows its address. What its function takes and answers is read when somebody needs it: an
    application has two hundred, and every kitchen of a store an application.
    """

    def __init__(self, path: str, endpoint: Callable[..., Any], **told: Any) -> None:
        self.path, self.endpoint, self._told = path, endpoint, told
        self.path_regex, self.path_format, self.param_convertors = compile_path(path)
        self.methods = {method.upper() for method in told.get("methods") or ["GET"]}

    def __getattr__(self, name: str) -> Any:
        with _READY:  # two may ask at once; whoever asks for more while it is made ready finds nothing
            told = self.__dict__.pop("_told", None)
            if told is not None:
                super().__init__(self.path, self.endpoint, **told)
        try:
            return self.__dict__[name]
        except KeyError:
            raise AttributeError(name) from None


class Routes(APIRouter):
    """The routes of a page."""

    def __init__(self, prefix: str = "") -> None:
        super().__init__(prefix=prefix, route_class=LateRoute, dependencies=[Depends(authorise)])

    def join(self, others: APIRouter) -> None:
        """Stand among the routes of an application or of another page. Taken in as FastAPI does it, each
        would be made ready twice, and all of them at the first request.
        """
        others.routes.extend(self.routes)
