"""The web application: security headers, languages, errors; pages live in ``web.pages``."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from contextlib import nullcontext, suppress
from functools import cache
from math import ceil
from pathlib import Path
from time import monotonic
from types import ModuleType
from typing import Any, cast
from urllib.parse import quote, urlsplit

from fastapi import Depends, FastAPI, Request, Response
from fastapi.concurrency import run_in_threadpool
from fastapi.exceptions import RequestValidationError
from fastapi.middleware.gzip import GZipMiddleware
from fastapi.responses import HTMLResponse, JSONResponse, RedirectResponse
from fastapi.templating import Jinja2Templates
from starlette.datastructures import MutableHeaders
from starlette.requests import ClientDisconnect
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from frywright.ledger.accounts import Accounts
from frywright.ledger.store import Store
from frywright.model.errors import (
    AccessError,
    BrokenOffError,
    FrywrightError,
    InputError,
    KeptKitchenError,
    NoKitchenError,
    NotKeptError,
    UnknownError,
)
from frywright.model.kitchen import Kitchen, Site
from frywright.model.plain import plain
from frywright.model.tongues import SOURCE, Translate, tongues
from frywright.model.trade import money
from frywright.rooms.clock import Hall, enter
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records.people import NOBODY_HERE, Who, who_is
from frywright.rooms.records.tries import Tries
from frywright.trial.proof import FACTOR_WORDS
from frywright.voice.figures import mark_of, written_page
from frywright.voice.tongue import explain, translator
from frywright.web.allowed import only_allowed
from frywright.web.benches import Benches
from frywright.web.door import Door
from frywright.web.files import Marked
from frywright.web.rates import KNOCKS_COUNT, KNOCKS_PER_S, OneByOne, Pauses, Rates, place
from frywright.web.rights import RIGHTS
from frywright.web.routes import authorise
from frywright.web.watch import Watch

HERE = Path(__file__).parent
SESSION_COOKIE, DEVICE_COOKIE, PASS_COOKIE = "session", "device", "pass"
KNOCKS = ("/sign-in", "/code", "/first-owner")
"""Where strangers try to come in."""
HEALTH = "/health/"
STAY_ON_TLS = "max-age=31536000; includeSubDomains"
"""Told a browser that came by TLS: for a year it comes by nothing else."""
LEAST_PACKED_BYTES, PACKING_LEVEL = 1000, 4
"""Answers from this size are compressed. No page repeats what a stranger sent beside a secret: cookies go
to our own pages only. Packed one level harder, an edit's answer is 5 % smaller and takes twice as long.
"""
OWN_ADDRESS = re.compile(r'( (?:href|action|formaction|src|data-part)=")/(?!at/|static/|/)')
"""Addresses of our own in a page; in each of several kitchens they begin with that kitchen's."""
LARGEST_BODY_BYTES = 1_000_000
LARGEST_LOG_BYTES = 150_000_000
LARGEST_PHOTO_BYTES = 13_000_000
UPLOADS = re.compile(r"/cook/probes/upload|/day/sales|/api/v1/sync/files/\w+")
PHOTO_FORM = re.compile(r"/care/(new/plate|card/\w+/(save|sign))|/setup/\w+/plate|/records/entry/\d+/report")
HEADERS = {
    "Content-Security-Policy": (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self';"
        " connect-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
    ),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
}


@cache
def _templates() -> Jinja2Templates:
    """The templates, read and compiled once a process however many applications it makes."""
    found = Jinja2Templates(directory=HERE / "templates")
    found.env.globals["money"] = money
    found.env.policies["json.dumps_kwargs"] = {"sort_keys": True, "default": plain}
    return found


class Context:
    """What a page needs besides its request: the store, the templates, the days lately planned."""

    def __init__(self, store: Store, door: Door | None = None) -> None:
        self.store, self.door, self.company = store, door, False
        self.root = f"/at/{store.site}" if store.site else ""
        self.templates = _templates()
        self.benches = Benches(store)
        self.files = Marked(HERE / "static")
        self._seen: Site | None = None

    @property
    def kitchen(self) -> Kitchen:
        """The kitchen as its store knows it. Raises NoKitchenError, KeptKitchenError."""
        return remembered_kitchen(self.store)

    def tr(self, request: Request) -> Translate:
        """Says a text in the visitor's language."""
        return translator(self.language(request))

    def language(self, request: Request, *, look: bool = True) -> str:
        """Language asked for in the address, else the last one chosen, else the kitchen's; before there is
        one, the browser's. ``look`` says whether the store may be asked.
        """
        asked = request.query_params.get("lang") or request.cookies.get("lang") or ""
        if asked in tongues():
            return asked
        wanted = re.findall(r"[a-z]{2}", request.headers.get("accept-language", "").lower())
        site = self._site() if look else self._seen
        return site.language if site else next((key for key in wanted if key in tongues()), SOURCE)

    def explain(self, request: Request, error: FrywrightError, *, look: bool = True) -> str:
        """An error in the visitor's language and the kitchen's units."""
        site = self._site() if look else self._seen
        return explain(error, self.language(request, look=look), str(getattr(site, "units", "")))

    def _site(self) -> Site | None:
        """The kitchen's place, None before there is one; as last seen while the store is away."""
        with suppress(NotKeptError, NoKitchenError, KeptKitchenError):
            self._seen = remembered_kitchen(self.store).site
        return self._seen

    def who(self, request: Request) -> Who | None:
        """Who a request comes from, by its session, its shared device or its bearer token."""
        device = _token(request) or request.cookies.get(DEVICE_COOKIE, "")
        found = who_is(self.store, request.cookies.get(SESSION_COOKIE, ""), device)
        if found is NOBODY_HERE and self.door and not self.door.passed(request.cookies.get(PASS_COOKIE, "")):
            return None
        return found

    def render(
        self,
        request: Request,
        name: str,
        status: int = 200,
        *,
        error: FrywrightError | None = None,
        **values: Any,
    ) -> Response:
        """A page in the visitor's language; ``error`` is why what was typed was not taken."""
        language, site = self.language(request), self._site()
        if error is not None:
            status, values["problem"] = error.http_status, self.explain(request, error)
        values = {"problem": "", "typed": {}} | values
        values |= {
            "who_acts": request.state.who,
            "me": request.state.who.name if request.state.who and request.state.who.person else "",
            "may": lambda path: _may(request.state.who, f"POST {path}"),
            "_": translator(language),
            "root": self.root,
            "here": site.name if site else "",
            "files": f"/static/{self.files.mark}",
            "language": language,
            "decimal": mark_of(language, site.units if site else ""),
            "languages": {key: t.name for key, t in tongues().items()},
            "words": FACTOR_WORDS,
        }
        text = self.templates.get_template(name).render({"request": request, **values})
        text = only_allowed(text, request.state.who, translator(language))
        page = HTMLResponse(self.own(written_page(text, values["decimal"])), status)
        if request.query_params.get("lang") == language:
            page.set_cookie("lang", language, samesite="strict", httponly=True)
        return page

    def picture(self, request: Request, drawn: str) -> Response:
        """A picture of its own address, its figures in the visitor's language."""
        site = self._site()
        mark = mark_of(self.language(request), site.units if site else "")
        return Response(written_page(drawn, mark), media_type="image/svg+xml")

    def own(self, text: str) -> str:
        """A page whose addresses stay within this kitchen."""
        return OWN_ADDRESS.sub(rf"\1{self.root}/", text) if self.root else text


def make_app(store: Store, door: Door | None = None) -> FastAPI:
    """The application over an open store; one without a kitchen begins with its set-up.

    Parameters
    ----------
    door : asks for its code while the kitchen has no owner; without one whoever reaches the application acts
    """
    context = Context(store, door)
    app = FastAPI(
        title="Frywright", docs_url=None, redoc_url=None, openapi_url=None, dependencies=[Depends(authorise)]
    )
    app.state.context, app.state.rates = context, Rates()
    app.state.knocks, app.state.tries = Rates(KNOCKS_COUNT, KNOCKS_PER_S), Tries()
    app.state.pauses, app.state.turns, app.state.watch = Pauses(), OneByOne(), Watch()
    app.mount("/static", context.files, name="static")
    for page in _pages():
        page.router(context).join(app.router)
    app.add_middleware(Guard)
    app.add_middleware(GZipMiddleware, minimum_size=LEAST_PACKED_BYTES, compresslevel=PACKING_LEVEL)
    _tell_errors(app, context)
    return app


def _pages() -> tuple[ModuleType, ...]:
    """Every page, in the order in which its routes are asked. Each stands on this module."""
    from frywright.web.pages import (
        accounts,
        api,
        cards,
        care,
        company,
        cook,
        day,
        desk,
        fryers,
        health,
        kitchens,
        life,
        live,
        now,
        orders,
        people,
        probes,
        probing,
        readings,
        records,
        releases,
        sales,
        setup,
        sync,
    )

    return (
        now,
        kitchens,
        releases,
        sync,
        cook,
        desk,
        setup,
        life,
        live,
        probes,
        probing,
        day,
        sales,
        orders,
        care,
        fryers,
        cards,
        people,
        records,
        readings,
        accounts,
        company,
        api,
        health,
    )


def _tell_errors(app: FastAPI, context: Context) -> None:
    """Every error in words, in a page or in JSON; none of them waits on the loop."""

    @app.exception_handler(FrywrightError)
    def tell(request: Request, error: FrywrightError) -> Response:
        if isinstance(error, NotKeptError):
            error = NotKeptError(error.cause, writing=request.method not in ("GET", "HEAD"))
        page = "text/html" in request.headers.get("accept", "")
        if isinstance(error, AccessError) and getattr(request.state, "who", None) is None and page:
            way = "/sign-in" if context.door is None or Accounts(context.store).any() else "/code"
            return RedirectResponse(f"{way}?next={quote(request.url.path)}", 303)
        if isinstance(error, NoKitchenError) and page:
            return RedirectResponse("/setup", 303)
        if isinstance(error, KeptKitchenError) and page:
            return RedirectResponse("/cook/kitchen", 303)
        message = context.explain(request, error)
        if page:
            return context.render(request, "error.html", error.http_status, message=message, room="")
        body = {"ok": False, "error": type(error).__name__, "message": message}
        headers = {"WWW-Authenticate": "Bearer"} if isinstance(error, UnknownError) else None
        return JSONResponse(body, error.http_status, headers)

    @app.exception_handler(RequestValidationError)
    async def refuse(request: Request, error: RequestValidationError) -> Response:
        if "text/html" not in request.headers.get("accept", ""):
            return JSONResponse({"detail": [_wrong(e) for e in error.errors()]}, 422)
        first = error.errors()[0]
        name = str(first["loc"][-1])
        if first["type"] == "missing":
            return await run_in_threadpool(tell, request, InputError(name, "missing", "given"))
        typed = ascii(first["input"])[:80]
        return await run_in_threadpool(tell, request, InputError(name, typed, "a number"))

    @app.exception_handler(ClientDisconnect)
    async def gone(request: Request, error: ClientDisconnect) -> Response:
        return Response(status_code=400)  # nobody reads it: who sent a part of something has left

    @app.exception_handler(Exception)
    def broke_off(request: Request, error: Exception) -> Response:
        answer: Response = tell(request, BrokenOffError(error))
        answer.headers.update(HEADERS)
        _seen(request, answer.status_code)
        return answer


def _token(request: Request) -> str:
    """The token that a device's program shows, if it shows one."""
    return request.headers.get("authorization", "").removeprefix("Bearer ").strip()


def _may(who: Who | None, route: str) -> bool:
    """Whether somebody has the right that a route asks for."""
    return who is not None and who.may(RIGHTS[route])


def _wrong(error: Mapping[str, Any]) -> dict[str, Any]:
    """What is wrong with a body, in letters that any answer can carry, and nothing that was sent."""
    place = [ascii(part).strip("'") for part in error["loc"]]
    return {"type": error["type"], "loc": place, "msg": ascii(error["msg"])[1:-1]}


class Guard:
    """What stands before every page: who knocks too often or may not come is told so, who asks is found, and
    every answer is counted and carries the headers of a safe one.
    """

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Hand a request on, or turn it away."""
        if scope["type"] != "http":
            await self.app(scope, receive, send)
            return
        request = Request(scope, receive)
        request.state.who, request.state.begun_s = None, monotonic()

        let_go: Callable[[], None] | None = None

        async def counted(message: Message) -> None:
            if message["type"] == "http.response.start":
                if let_go is not None:
                    let_go()  # whoever reads an answer slowly keeps no connection to the store
                _finish(request, message)
            await send(message)

        store: Store = request.app.state.context.store
        with store.reading() if request.method in ("GET", "HEAD") else nullcontext():
            response = await _knocked_too_often(request)
            if response is None:
                with store.reading():
                    response = await run_in_threadpool(_turned_back, request)
            if response is not None:
                await response(scope, receive, counted)
                return
            who: Who | None = request.state.who
            name = who.name if who else ""
            program = who is not None and not who.person and bool(_token(request))
            enter(Hall(author=name, second="" if name and not program else None))
            with store.reading() as let_go:  # nor does a body that comes slowly
                await self.app(scope, receive, counted)


def _finish(request: Request, start: Message) -> None:
    """The headers that every answer carries; it is counted."""
    headers = MutableHeaders(scope=start)
    for name, value in HEADERS.items():
        headers[name] = value
    if request.url.scheme == "https":
        headers["Strict-Transport-Security"] = STAY_ON_TLS
    if request.state.who is not None and request.state.who.name:
        headers.setdefault("Cache-Control", "no-store")  # nothing stays behind after signing out
    _seen(request, start["status"])


def _seen(request: Request, status: int) -> None:
    """Count and log an answer."""
    begun_s = getattr(request.state, "begun_s", monotonic())
    request.app.state.watch.answered(request, status, monotonic() - begun_s)


def _turned_back(request: Request) -> Response | None:
    """The answer to a request that no page sees; else who it comes from is found."""
    if request.url.path.startswith(HEALTH):
        return None  # nobody is asked who they are, and the store may be away
    if refused := _refusal(request):
        return refused
    try:
        request.state.who = request.app.state.context.who(request)
    except NotKeptError as error:
        tell = request.app.exception_handlers[FrywrightError]
        return cast(Response, tell(request, error))
    return _too_many(request)


def _too_many(request: Request) -> Response | None:
    """Writes of one client beyond what a kitchen needs wait. A client is whoever is signed in, else an
    address; what a stranger sends along as a cookie or a token makes no new one.
    """
    if request.method in ("GET", "HEAD"):
        return None
    state, who = request.app.state, request.state.who
    host = request.client.host if request.client else ""
    wait = state.rates.wait_s(f"{who.name}\n{who.device_hash}" if who and who.name else place(host))
    if wait <= 0:
        return None
    answer = _turned_away(request, 429, "Rate", "Too many writes at once; send it again.")
    answer.headers["Retry-After"] = str(ceil(wait))
    return answer


async def _knocked_too_often(request: Request) -> Response | None:
    """Tries to come in beyond what one address may: turned away, late, before the store or a thread is
    asked; where too many are, the connection ends too.
    """
    if request.url.path not in KNOCKS or request.method in ("GET", "HEAD"):
        return None
    wait = request.app.state.knocks.wait_s(place(request.client.host if request.client else ""))
    if wait <= 0:
        return None
    error = FrywrightError("Too many writes at once; send it again.")
    message = request.app.state.context.explain(request, error, look=False)
    body = {"ok": False, "error": "Rate", "message": message}
    answer = JSONResponse(body, 429, {"Retry-After": str(ceil(wait))})
    if not await request.app.state.pauses.pause():
        answer.headers["Connection"] = "close"
    return answer


def _refusal(request: Request) -> Response | None:
    """Writes must come from our own pages and be of sensible size."""
    if request.method in ("GET", "HEAD"):
        return None
    if request.headers.get("authorization", "").startswith("Bearer "):
        return _too_large(request)  # a token is no cookie: no page of others can send it
    origin = request.headers.get("origin") or request.headers.get("referer") or ""
    if _host_of(origin) != request.headers.get("host"):
        return _turned_away(request, 403, "Origin", "Writes are taken from this page only.")
    return _too_large(request)


def _host_of(address: str) -> str | None:
    """Host and port of an address; None where it is none."""
    try:
        return urlsplit(address).netloc or None
    except ValueError:  # such as half an IPv6 address
        return None


def _too_large(request: Request) -> Response | None:
    length = request.headers.get("content-length", "")
    path = request.url.path
    most = (
        LARGEST_LOG_BYTES
        if UPLOADS.fullmatch(path)
        else (LARGEST_PHOTO_BYTES if PHOTO_FORM.fullmatch(path) else LARGEST_BODY_BYTES)
    )
    if not (length.isascii() and length.isdigit()):
        return _turned_away(request, 411, "Size", "The request must say how large it is.")
    if int(length[:20]) > most:
        megabytes = most // 1_000_000
        return _turned_away(request, 413, "Size", "The request is larger than {most} MB.", most=megabytes)
    return None


def _turned_away(request: Request, status: int, kind: str, template: str, **values: Any) -> Response:
    """A request that no page answers, in words all the same."""
    message = request.app.state.context.explain(request, FrywrightError(template, **values))
    return JSONResponse({"ok": False, "error": kind, "message": message}, status)
