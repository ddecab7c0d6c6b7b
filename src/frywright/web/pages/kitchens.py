"""The kitchens of this store: what each wants done now, and a further one."""

from __future__ import annotations

import datetime as dt
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from time import monotonic
from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.ledger.store import Point
from frywright.model.errors import FrywrightError, InputError
from frywright.model.now import Harm
from frywright.rooms.clock import now
from frywright.rooms.cook import setup_view as view
from frywright.rooms.fleet.kitchens import Here, await_kitchen, kitchens_of, open_kitchen
from frywright.rooms.fleet.office import forks
from frywright.rooms.kitchen import remembered_kitchen
from frywright.web.app import Context
from frywright.web.pages.now import gather
from frywright.web.posted import Typed
from frywright.web.routes import Routes

LOOK_S = 2.0
"""So long one view of the page looks into kitchens that have changed; the others follow at the next view
(project's own rule).
"""
COLUMNS = (
    ("stop", "Stop", (Harm.STOPPED, Harm.WRONG)),
    ("case", "Cases", (Harm.CASE,)),
    ("again", "Prove again", (Harm.AGAIN,)),
    ("reading", "Readings", (Harm.READING,)),
    ("oil", "Oil", (Harm.OIL,)),
    ("care", "Care", (Harm.CARE,)),
    ("gap", "Gaps", (Harm.GAP,)),
    ("next", "Programs", (Harm.NEXT,)),
    ("record", "Never recorded", (Harm.RECORD,)),
)
"""Columns of the list, the worst first, and what each counts."""
Mark = tuple[Point, dt.date]


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """What a kitchen wants done, by column; why it cannot be said where its record cannot be read."""

    counts: dict[str, int]
    problem: FrywrightError | None = None


class Lookout:
    """What each kitchen wants done, kept until its record or the day changes."""

    def __init__(self, context: Context) -> None:
        self.context = context
        self._kept: dict[str, tuple[Mark, Looked]] = {}

    def rows(self) -> Iterator[dict[str, Any]]:
        """A row a kitchen; ``looked`` is None where time was up."""
        store, until, known = self.context.store, monotonic() + LOOK_S, forks(self.context.store)
        for here in kitchens_of(store):
            end = store.at(here.key).last()
            newest = store.at(here.key).entry(end.number) if here.sent_here else None
            yield {
                "here": here,
                "mine": here.key == store.site,
                "looked": self._look(here, end, until) if here.described else None,
                "sent": f"{newest.recorded_at:%Y-%m-%d %H:%M} UTC" if newest else "",
                "fork": known.get(here.key, 0),
            }

    def _look(self, here: Here, end: Point, until: float) -> Looked | None:
        mark = end, now().date()
        kept = self._kept.get(here.key)
        if kept is not None and kept[0] == mark:
            return kept[1]
        if monotonic() > until:
            return None
        store = self.context.store.at(here.key)
        try:
            harms = Counter[Harm]()
            for line in gather(store, remembered_kitchen(store)):
                harms[line.harm] += line.count
            found = Looked(counts={key: sum(harms[h] for h in of) for key, _, of in COLUMNS})
        except FrywrightError as error:  # such as entries of a newer program
            found = Looked(counts={}, problem=error)
        self._kept[here.key] = mark, found
        return found


def router(context: Context) -> Routes:
    """Routes of the page."""
    routes, lookout = Routes(), Lookout(context)

    def shown(request: Request, **more: Any) -> Response:
        tr, rows = context.tr(request), list(lookout.rows())
        values = {
            "rows": rows,
            "columns": [(key, tr(title)) for key, title, _ in COLUMNS],
            "waiting": sum(r["here"].described and r["looked"] is None for r in rows),
            "described": [r["here"] for r in rows if r["here"].described],
            "places": view.offered(tr)["jurisdiction"],
            "explain": lambda error: context.explain(request, error),
        }
        values |= {"wrong": {}, "typed_site": {}, "wrong_site": "", "token": "", **more}
        return context.render(request, "fleet/kitchens.html", room="kitchens", **values)

    @routes.get("/kitchens")
    def page(request: Request) -> Response:
        return shown(request)

    @routes.post("/kitchens")
    def another(request: Request, form: Typed) -> Response:
        try:
            key = open_kitchen(context.store, form)
        except InputError as error:
            wrong = {error.field: context.explain(request, error)}
            return shown(request, typed=form, wrong=wrong, error=error)
        return RedirectResponse(f"/at/{key}/{'cook/kitchen' if form.get('like') else 'setup'}", 303)

    @routes.post("/kitchens/await")
    def awaited(request: Request, form: Typed) -> Response:
        by = request.state.who.name if request.state.who else ""
        try:
            key, token = await_kitchen(context.store, form.get("name", ""), by)
        except InputError as error:
            wrong = context.explain(request, error)
            return shown(request, status=error.http_status, typed_site=form, wrong_site=wrong)
        return shown(request, key=key, token=token)

    return routes
