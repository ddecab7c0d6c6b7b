"""The first page: what should be done now, by whoever looks. Every room says what it wants; here it is put in
order, and each line gets the one button that leads to the act.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace
from typing import Any
from urllib.parse import quote
from zoneinfo import ZoneInfo

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.ledger.store import Store
from frywright.model.business_day import usual_trade
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.now import Harm, NowLine
from frywright.model.roles import RIGHTS as ROLES
from frywright.model.tongues import Translate
from frywright.rooms.care import now as care
from frywright.rooms.clock import now
from frywright.rooms.cook import now as cook
from frywright.rooms.fleet import arrivals
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.records import now as records
from frywright.rooms.records.gaps import LOOKED_BACK_DAYS, TEXTS, explain_gap, gaps_of, yesterday
from frywright.rooms.records.people import Who
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.rights import RIGHTS
from frywright.web.routes import Routes


@dataclass(frozen=True, slots=True)
class Act:
    """Where an act is done, the route that does it, whose right is asked, and the words of its button."""

    address: str
    route: str
    button: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """A line as a page shows it: what, the button that leads to the act, and whose act it is where not the
    reader's.
    """

    text: str
    address: str
    button: str
    who: str = ""
    act: str = ""


PROGRAM = "/cook/changes?program={about}#next"
ACTS = {
    "first_program": Act("/cook/desk", "/cook/desk/design", "Design it"),
    "lengthen": Act("/cook?program={about}", "/cook/save", "Lengthen it"),
    "prove": Act(PROGRAM, "/cook/desk/prove", "Prove it"),
    "probe": Act("/cook/probing?program={about}", "/cook/probing", "Probe it"),
    "card": Act("/cook/card?program={about}", "/cook/card", "Print the card"),
    "key": Act(PROGRAM, "/cook/keyed", "Key it in"),
    "release": Act("/releases", "/releases/take", "Look at it"),
    "life": Act(PROGRAM, "/cook/keyed", "See what to do"),
    "read_back": Act("/cook/readback?program={about}", "/cook/readback", "Read it back"),
    "serve": Act(PROGRAM, "/cook/service", "Decide"),
    "reopen": Act("/care?vat={about}#vat-{about}", "/care/reopen", "See why"),
    "oil": Act("/care?vat={about}#vat-{about}", "/care/oil", "Change the oil"),
    "oil_reading": Act("/care?vat={about}#vat-{about}", "/care/oil", "Read the oil"),
    "care": Act("/care/fryers#f-{about}", "/care/fryers/done", "Sign it"),
    "case": Act("/records/case/{about}", "/records/case/{number}", "Open the case"),
    "cases": Act("/records/probing?still=1#cases", "/records/case/{number}", "See them"),
    "open_case": Act("/records/probing", "/records/case", "Open a case"),
    "reading": Act("/records/probing", "/records/probing", "Probe a piece"),
    "check": Act("/cook/probes", "/cook/probes/check", "Check it"),
    "gap": Act("/records/gaps", "/records/gaps", "Say why"),
}
GROUPS = (("halt", "Stop", Harm.WRONG), ("today", "Today", Harm.GAP), ("next", "Next", Harm.RECORD))
"""Parts of the page, each up to a harm."""
FOR_ALL = Harm.CASE
"""Up to this harm everybody sees a line, whoever may act on it."""


def router(context: Context) -> Routes:
    """Routes of the page, and of the gaps it leads to."""
    routes = Routes()

    @routes.get("/")
    def page(request: Request) -> Response:
        kitchen, tr = context.kitchen, context.tr(request)
        lines = gather(context.store, kitchen, context.language(request))
        seen = sorted((x for x in lines if _sees(request.state.who, x)), key=_order)
        due, later = [x for x in seen if _is_due(x)], [x for x in seen if not _is_due(x)]
        values: dict[str, Any] = {
            "kitchen": kitchen,
            "groups": [
                (key, tr(title), [_shown(kitchen, request.state.who, x, tr) for x in group])
                for (key, title, _), group in zip(GROUPS, _grouped(due), strict=True)
                if group
            ],
            "until": _until(kitchen, later, tr),
        }
        return context.render(request, "now.html", room="now", **values)

    _add_gaps(routes, context)
    return routes


def gather(store: Store, kitchen: Kitchen, language: str = "en") -> list[NowLine]:
    """What every room wants done, in no order."""
    return [
        *cook.now_lines(store, kitchen),
        *care.now_lines(store, kitchen, language),
        *records.now_lines(store, kitchen),
        *arrivals.now_lines(store, kitchen),
    ]


def due_views(lines: Iterable[NowLine], request: Request, kitchen: Kitchen, tr: Translate) -> list[Due]:
    """What of these lines is due now for whoever looks, what can hurt first."""
    who = request.state.who
    due = (x for x in lines if _is_due(x) and _sees(who, x))
    return [_shown(kitchen, who, x, tr) for x in sorted(due, key=_order)]


def due_texts(lines: Iterable[NowLine], request: Request, kitchen: Kitchen, tr: Translate) -> list[str]:
    """As :func:`due_views`, for paper: what is to be done to several programs stands on one line."""
    who = request.state.who
    groups: dict[tuple[str, ...], list[NowLine]] = {}
    for n, line in enumerate(sorted((x for x in lines if _is_due(x) and _sees(who, x)), key=_order)):
        alone = () if "program" in line.values else (str(n),)
        groups.setdefault((line.text, line.then, *alone), []).append(line)
    found = []
    for first, *rest in groups.values():
        others = ", ".join(str(line.values["program"]) for line in rest)
        more = " " + tr("The same for: {others}.").format(others=others) if rest else ""
        found.append(_text(kitchen, first, tr) + more)
    return found


def not_serving(store: Store, request: Request, programs: Collection[str], tr: Translate) -> list[Due]:
    """Programs that the day counts on and that are not in service, each with the act of its missing step."""
    if not programs:
        return []
    kitchen, who = remembered_kitchen(store), request.state.who
    steps = {line.about: line for line in cook.now_lines(store, kitchen)}
    found = []
    for name in sorted(programs):
        line = steps.get(name) or NowLine(harm=Harm.NEXT, act="life", about=name, text="")
        text = tr("{program} is not in service: the board does not advise it.").format(program=name)
        found.append(replace(_shown(kitchen, who, line, tr), text=text))
    return found


def _is_due(line: NowLine) -> bool:
    return line.due_at is None or line.due_at <= now()


def _order(line: NowLine) -> tuple[Any, ...]:
    """Lines of one act stay in the order of their room: the newest case first."""
    return line.harm, line.due_at is not None, line.due_at or now(), line.act


def _grouped(lines: Iterable[NowLine]) -> list[list[NowLine]]:
    """Lines of each part of the page."""
    found: list[list[NowLine]] = [[] for _ in GROUPS]
    for line in lines:
        found[next(i for i, (_, _, most) in enumerate(GROUPS) if line.harm <= most)].append(line)
    return found


def _may(who: Who | None, line: NowLine) -> bool:
    return who is not None and who.may(RIGHTS[f"POST {ACTS[line.act].route}"])


def _sees(who: Who | None, line: NowLine) -> bool:
    """Who may act on a line sees it; what can hurt, everybody does; an auditor reads all."""
    return _may(who, line) or line.harm <= FOR_ALL or (who is not None and who.role == "auditor")


def _shown(kitchen: Kitchen, who: Who | None, line: NowLine, tr: Translate) -> Due:
    act, may = ACTS[line.act], _may(who, line)
    right = RIGHTS[f"POST {act.route}"]
    return Due(
        text=_text(kitchen, line, tr),
        address=act.address.format(about=quote(line.about, safe="")),
        button=tr(act.button) if may else tr("Look at it"),
        who="" if may else tr(next(role for role, rights in ROLES.items() if right in rights)),
        act=line.act,
    )


def _text(kitchen: Kitchen, line: NowLine, tr: Translate) -> str:
    system = kitchen.site.units
    return " ".join(say(text, line.values, system, tr) for text in (line.text, line.then) if text)


def _until(kitchen: Kitchen, later: list[NowLine], tr: Translate) -> str:
    """Until when nothing is due, and what is due then; empty where nothing is known to come."""
    if not later:
        return ""
    first = min(later, key=lambda x: x.due_at or dt.datetime.max.replace(tzinfo=dt.UTC))
    at = (first.due_at or now()).astimezone(ZoneInfo(usual_trade(kitchen).zone))
    when = at.date().isoformat() + (f"{at:, %H:%M}" if (at.hour, at.minute) != (0, 0) else "")
    return tr("All is well until {when}. Then: {what}").format(when=when, what=_text(kitchen, first, tr))


def _add_gaps(routes: Routes, context: Context) -> None:
    def shown(request: Request, status: int = 200, **more: Any) -> Response:
        kitchen, tr = context.kitchen, context.tr(request)
        last = yesterday(kitchen)
        found = gaps_of(context.store, kitchen, last - dt.timedelta(days=LOOKED_BACK_DAYS), last)
        rows = [
            {
                "date": g.date.isoformat(),
                "lack": g.lack,
                "text": tr(TEXTS[g.lack]).format(date=g.date.isoformat()),
                "why": g.explained.fact.words if g.explained else "",
                "who": g.explained.fact.who if g.explained else "",
            }
            for g in found
        ]
        values = {"kitchen": kitchen, "rows": rows, "days": LOOKED_BACK_DAYS, "wrong": "", **more}
        return context.render(request, "records/gaps.html", room="records", part="gaps", **values)

    @routes.get("/records/gaps")
    def gaps(request: Request) -> Response:
        return shown(request)

    @routes.post("/records/gaps")
    def explain(request: Request, form: Typed) -> Response:
        try:
            explain_gap(context.store, context.kitchen, form)
        except InputError as error:
            return shown(request, typed=form, wrong=error.field, error=error)
        return RedirectResponse("/records/gaps", 303)
