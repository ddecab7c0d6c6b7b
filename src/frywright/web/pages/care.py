"""Room Care: the oil of every vat, told with one hand, and its outlook."""

from __future__ import annotations

import uuid
from collections.abc import Iterable, Mapping
from dataclasses import fields
from itertools import islice
from typing import Any
from urllib.parse import quote, unquote

from fastapi import Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from frywright.catalog import load as catalog
from frywright.ledger.facts.oil import OilDone
from frywright.model.business_day import business_time, day_typed, usual_trade
from frywright.model.errors import FrywrightError, InputError
from frywright.model.kitchen import Kitchen
from frywright.model.plain import plain
from frywright.model.tongues import Translate
from frywright.rooms.care import close, machines, oil_moves
from frywright.rooms.care import meter as oil_meter
from frywright.rooms.care import now as care_now
from frywright.rooms.care import oil_money as money
from frywright.rooms.care import procedures as cards
from frywright.rooms.care import vat as oil
from frywright.rooms.care.oil_picture import oil_pictures
from frywright.rooms.care.oil_state import VatState, vat_states
from frywright.rooms.clock import now
from frywright.rooms.day import power
from frywright.rooms.standing import assumed_day, oil_limit_here, stopped
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.pages.now import Due, due_views
from frywright.web.posted import Typed
from frywright.web.routes import Routes
from frywright.web.written import view_json


def router(context: Context) -> Routes:
    """Routes of the room."""
    routes = Routes()
    _add_oil(routes, context)
    _add_machines(routes, context)
    _add_close(routes, context)
    _add_energy(routes, context)
    return routes


def _shown(
    context: Context,
    request: Request,
    refused: FrywrightError | None = None,
    typed: Any = None,
    *,
    kept: bool = False,
    meter_typed: Any = None,
) -> Response:
    """The room's page; ``kept`` says that what was typed is kept as refused, ``meter_typed`` is a check of
    the meter that was refused.
    """
    kitchen, tr = context.kitchen, context.tr(request)
    states = vat_states(context.store, kitchen)
    keys = [f.key for f in kitchen.fryers]
    vats = [oil.vat_view(context.store, kitchen, key, tr=tr, states=states) for key in keys]
    fills = {key: oil_moves.fill_view(kitchen, key, tr) for key in keys}
    pictures = oil_pictures(kitchen, states, {v.vat: v.text for v in vats}, tr)
    meter = oil_meter.meter_view(context.store, kitchen, states, money.rates_of(usual_trade(kitchen)), tr)
    recent = [e.fact for e in islice(context.store.facts(OilDone, newest_first=True), 12)]
    limit, title = oil_limit_here(context.store, kitchen)
    return context.render(
        request,
        "care/care.html",
        refused.http_status if refused else 200,
        room="care",
        part="oil",
        vats=vats,
        fills=fills,
        buys={key: money.changes_view(kitchen, states, key, tr) for key in keys},
        assumed=assumed_day(kitchen, tr),
        pictures=pictures,
        recent=recent,
        due=_due(context, request, kitchen, states) + _doubts(fills.values(), meter["ask"], tr),
        opened=request.query_params.get("vat") or request.query_params.get("open", ""),
        bill_asked="raw" in request.query_params,
        error=None if meter_typed else refused,
        kept=kept,
        typed=typed or {},
        meter_typed=meter_typed or {},
        meter_problem=context.explain(request, refused) if refused and meter_typed else "",
        meter=meter,
        today=business_time(usual_trade(kitchen), now())[0].isoformat(),
        kitchen=kitchen,
        fresh=lambda: uuid.uuid4().hex,
        limit=limit,
        limit_title=title.say(tr),
        rotation=oil_moves.rotation_view(kitchen, states, tr),
        **_bill(context, kitchen, request, tr),
        held={k: e.fact for k, e in stopped(context.store).items()},
        hazards={f.key: machines.hazards(f) for f in kitchen.fryers},
        first_act=machines.first_act,
        hazard_known=machines.hazards(),
        cards=[(key, tr(catalog.table(f"procedures/{key}.toml")["title"])) for key in cards.procedures()],
    )


def _due(context: Context, request: Request, kitchen: Kitchen, states: Mapping[str, VatState]) -> list[Due]:
    """What is due in the room for whoever looks."""
    language = context.language(request)
    lines = care_now.now_lines(context.store, kitchen, language, states)
    return due_views(lines, request, kitchen, translator(language))


def _doubts(fills: Iterable[oil_moves.FillView], meter_ask: Any, tr: Any) -> list[Due]:
    """A filling that cannot be right, and a meter that should be checked, as lines of what is due."""
    found = [
        Due(text=f"{fill.name}: {fill.warning}", address=_vat_address(fill.vat), button=tr("See why"))
        for fill in fills
        if fill.warning
    ]
    if meter_ask:
        found.append(Due(text=meter_ask, address="/care?open=meter#meter", button=tr("Check it")))
    return found


def _bill(context: Context, kitchen: Kitchen, request: Request, tr: Translate) -> dict[str, object]:
    """The oil bill, or why there is none."""
    try:
        text = str(request.query_params.get("raw", "") or "").strip()
        raw = kitchen.site.read(text, "mass", "raw") if text else 0.0
        return {"bill": money.cost_view(context.store, kitchen, raw, tr=tr), "no_bill": ""}
    except InputError as error:
        return {"bill": None, "no_bill": context.explain(request, error)}


def _oil_told(context: Context, request: Request) -> Response:
    """Outlook, changes and advice in money of every vat."""
    kitchen, tr = context.kitchen, context.tr(request)
    states = vat_states(context.store, kitchen)
    vats = [
        plain(oil.vat_view(context.store, kitchen, f.key, tr=tr, states=states))
        | plain(money.changes_view(kitchen, states, f.key, tr))
        for f in kitchen.fryers
    ]
    return JSONResponse({"ok": True, "vats": vats})


def _vat_address(vat: str) -> str:
    """The room's page with a vat unfolded."""
    return f"/care?vat={quote(vat)}#vat-{quote(vat)}"


def _add_oil(routes: Routes, context: Context) -> None:
    @routes.get("/care")
    def page(request: Request) -> Response:
        return _shown(context, request)

    @routes.get("/care/oil.json")
    def as_json(request: Request) -> Response:
        return _oil_told(context, request)

    @routes.get("/care/oil-map.pdf")
    def oil_map(request: Request) -> Response:
        language = context.language(request)
        data = oil_moves.oil_map_pdf(context.store, context.kitchen, language, translator(language))
        return Response(data, media_type="application/pdf")

    @routes.post("/care/oil")
    def tell(request: Request, form: Typed) -> Response:
        try:
            oil.tell_oil(context.store, context.kitchen, dict(form), str(form.get("key", ""))[:80])
        except InputError as error:
            return _shown(context, request, error, dict(form), kept=True)
        return RedirectResponse(_vat_address(form.get("vat", "")), 303)

    @routes.post("/care/meter")
    def meter(request: Request, form: Typed) -> Response:
        told = {f.name: form.get(f.name, "") for f in fields(oil_meter.CheckTyped)}
        try:
            oil_meter.keep_check(
                context.store, context.kitchen, oil_meter.CheckTyped(**told), form.get("key", "")[:80]
            )
        except InputError as error:
            return _shown(context, request, error, meter_typed=told)
        return RedirectResponse("/care?open=meter#meter", 303)

    @routes.post("/care/limit")
    def limit(request: Request, form: Typed) -> Response:
        try:
            kitchen, typed = context.kitchen, str(form.get("house", ""))
            house = round(100.0 * kitchen.site.read(typed, "fraction", "house limit", "pct"), 6)
            oil.set_limit(
                context.store, kitchen, house, str(form.get("who", "")), str(form.get("reason", ""))
            )
        except FrywrightError as error:
            return _shown(context, request, error, dict(form))
        return RedirectResponse("/care", 303)


def _add_machines(routes: Routes, context: Context) -> None:
    @routes.post("/care/stop")
    def stop(request: Request, form: Typed) -> Response:
        machines.stop_use(
            context.store,
            context.kitchen,
            form.get("fryer", ""),
            form.get("reason", ""),
            form.get("who", ""),
            form.get("words", ""),
        )
        return RedirectResponse(_vat_address(form.get("fryer", "")), 303)

    @routes.post("/care/reopen")
    def reopen(request: Request, form: Typed) -> Response:
        try:
            machines.reopen(
                context.store,
                context.kitchen,
                form.get("fryer", ""),
                form.get("who", ""),
                form.get("role", ""),
                form.get("finding", ""),
            )
        except InputError as error:
            return _shown(context, request, error, form)
        return RedirectResponse(_vat_address(form.get("fryer", "")), 303)


def _add_close(routes: Routes, context: Context) -> None:
    def shown(
        request: Request, refused: FrywrightError | None = None, typed: Any = None, who: str = ""
    ) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        view = close.close_day_view(context.store, kitchen, language, translator(language))
        return context.render(
            request,
            "care/close_day.html",
            room="care",
            part="close",
            kitchen=kitchen,
            view=view,
            error=refused,
            typed=typed or {},
            who=who,
        )

    @routes.get("/care/close")
    def page(request: Request) -> Response:
        return shown(request, who=unquote(request.cookies.get("closer", "")))

    @routes.get("/care/close.json")
    def as_json(request: Request) -> Response:
        kitchen, language = context.kitchen, context.language(request)
        view = close.close_day_view(context.store, kitchen, language, translator(language))
        return view_json(view)

    @routes.post("/care/close")
    def sign(request: Request, form: Typed) -> Response:
        try:
            close.sign_close(context.store, context.kitchen, form)
        except FrywrightError as error:
            return shown(request, error, form)
        back = RedirectResponse(f"/care/close#c-{form.get('fryer', '')}", 303)
        back.set_cookie(
            "closer", quote(form.get("who", "")[:80]), samesite="strict", httponly=True, max_age=6 * 3600
        )
        return back


def _add_energy(routes: Routes, context: Context) -> None:
    def told(request: Request) -> tuple[power.EnergyView, str, str]:
        """The day's energy, its date, and why there is no plan of it."""
        kitchen, tr = context.kitchen, context.tr(request)
        text = request.query_params.get("date", "")
        asked = day_typed(text) if text else None
        try:
            date = asked or context.benches.today()
            bench = context.benches.get(date)
            return power.energy_view(kitchen, bench, context.benches.plan(bench), tr), date.isoformat(), ""
        except FrywrightError as error:
            return power.energy_view(kitchen, tr=tr), "", context.explain(request, error)

    @routes.get("/care/energy")
    def page(request: Request) -> Response:
        view, date, problem = told(request)
        kitchen = context.kitchen
        return context.render(
            request,
            "care/energy.html",
            room="care",
            part="energy",
            kitchen=kitchen,
            view=view,
            date=date,
            problem=problem,
            assumed=assumed_day(kitchen, context.tr(request)),
            loads=power.full_load_rows(kitchen),
        )

    @routes.get("/care/energy.json")
    def as_json(request: Request) -> Response:
        view, date, problem = told(request)
        return JSONResponse(
            {
                "ok": True,
                "date": date,
                "no_plan": problem,
                **plain(view),
                "loads": plain(power.full_load_rows(context.kitchen)),
            }
        )
