"""Room Cook, machine settings: a fryer's sheet, shown, changed with a reason, printed."""

from __future__ import annotations

from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.model.errors import InputError
from frywright.model.fryer import Fryer, SettingKind
from frywright.model.kitchen import Kitchen
from frywright.rooms.cook.settings import (
    CAUTION,
    EFFECTS,
    WRONG_ROWS,
    SettingRefused,
    change_setting,
    sheet,
    sheet_pdf,
    typed_setting,
)
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.routes import Routes


def router(context: Context) -> Routes:
    """Routes of the page."""
    routes = Routes()

    def shown(request: Request, fryer: Fryer, kitchen: Kitchen, **more: Any) -> Response:
        tr = context.tr(request)
        values = {
            "kitchen": kitchen,
            "sheet": sheet(context.store, kitchen, fryer, tr),
            "forms": [typed_setting(setting, kitchen.site) for setting in fryer.settings],
            "kinds": [str(kind) for kind in SettingKind],
            "effects": EFFECTS,
            "wrong_rows": range(WRONG_ROWS),
            "caution": CAUTION,
            "wrong": "",
            **more,
        }
        return context.render(request, "cook/settings.html", room="desk", **values)

    @routes.get("/cook/settings")
    def page(request: Request, fryer: str = "") -> Response:
        kitchen = context.kitchen
        return shown(request, kitchen.fryer(fryer) if fryer else kitchen.fryers[0], kitchen)

    @routes.get("/cook/settings.pdf")
    def paper(request: Request, fryer: str = "") -> Response:
        kitchen, language = context.kitchen, context.language(request)
        found = kitchen.fryer(fryer) if fryer else kitchen.fryers[0]
        data = sheet_pdf(context.store, kitchen, found, language, translator(language))
        return Response(data, media_type="application/pdf")

    @routes.post("/cook/settings")
    def change(request: Request, form: Typed) -> Response:
        try:
            change_setting(context.store, form)
        except InputError as error:
            kitchen = context.kitchen
            known = [f for f in kitchen.fryers if f.key == form.get("fryer")]
            box = error.box if isinstance(error, SettingRefused) else ""
            fryer = known[0] if known else kitchen.fryers[0]
            return shown(request, fryer, kitchen, typed=form, wrong=box, error=error)
        return RedirectResponse(f"/cook/settings?fryer={form['fryer']}", 303)

    return routes
