"""Room Records: entries and their chain, probing a load with its corrective action, complaints traced, the
inspection pack.
"""

from __future__ import annotations

import datetime as dt
import json
from itertools import islice
from time import monotonic
from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.ledger.facts.fact import about
from frywright.ledger.facts.people import as_shown
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Point
from frywright.model.business_day import local_time, moment_typed
from frywright.model.entry import Recorded
from frywright.model.errors import FrywrightError, InputError, Phrase, RecordError
from frywright.model.kitchen import Kitchen
from frywright.model.units import is_count
from frywright.rooms import local_rules
from frywright.rooms.care.upkeep import care_rows, today_of
from frywright.rooms.clock import now
from frywright.rooms.readings import tell_probe
from frywright.rooms.records import corrective, pack, pack_paper
from frywright.rooms.records.dropping import dropped_by
from frywright.rooms.records.kinds import kind_choices, kind_word
from frywright.rooms.records.reports import reports_of, takes_report
from frywright.rooms.standing import place_here
from frywright.verdicts.patterns import LATE_S
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.posted import Typed
from frywright.web.routes import Routes
from frywright.web.written import view_json

SHOWN, CASES_SHOWN, PACK_DAYS = 100, 40, 30
CHECKED_AT_ONCE, CHECKED_S = 1_000, 2.0
"""Entries of the chain that a look at the page walks, and how long its button goes on (own choices)."""


class Chain:
    """The chain as this page walks it: a bounded piece at each look, from the first entry again once the end
    is reached. What was changed behind a place already walked is found on the next round.
    """

    def __init__(self, context: Context) -> None:
        self.context, self.point = context, Point()
        self.broken: RecordError | None = None
        self.whole_count, self.whole_hash = 0, ""
        self.whole_at: dt.datetime | None = None

    def step(self) -> None:
        """Walk on, a bounded piece at a time."""
        if self.broken:
            return
        if self.point.number > self.context.store.last().number:
            self.restart()  # somebody cut the end off meanwhile
        try:
            self.point = self.context.store.verify_piece(self.point, CHECKED_AT_ONCE)
        except RecordError as error:
            self.broken = error
            return
        if self.point.number >= self.context.store.last().number:
            self.whole_count, self.whole_hash = self.point.number, self.point.hash
            self.whole_at = now()
            self.point = Point()

    def go_on(self) -> None:
        """Walk on to the end, as long as somebody waits who asked for it."""
        until = monotonic() + CHECKED_S
        self.step()
        while self.point.number and not self.broken and monotonic() < until:
            self.step()

    def restart(self) -> None:
        """Begin from the first entry."""
        self.point, self.broken, self.whole_count = Point(), None, 0


def router(context: Context) -> Routes:
    """Routes of the room."""
    routes, chain = Routes(), Chain(context)
    _add_entries(routes, context, chain)
    _add_cases(routes, context)
    _add_case(routes, context)
    _add_local_rules(routes, context)
    _add_pack(routes, context)
    return routes


def _add_entries(routes: Routes, context: Context, chain: Chain) -> None:
    @routes.get("/records")
    def page(request: Request) -> Response:
        chain.step()
        asked = request.query_params
        kind, before = asked.get("kind", ""), asked.get("before", "")
        after = int(before) if is_count(before) else None
        items = list(
            islice(
                context.store.entries(kind or None, newest_first=True, after=after, named=True, block=SHOWN),
                SHOWN,
            )
        )
        end = context.store.last().number
        return context.render(
            request,
            "records/records.html",
            room="records",
            part="entries",
            rows=[_row(context, request, i) for i in items],
            chain=chain.point.number,
            whole=chain.whole_count,
            whole_at=local_time(context.kitchen, chain.whole_at) if chain.whole_at else "",
            whole_hash=chain.whole_hash,
            broken=context.explain(request, chain.broken) if chain.broken else "",
            end=end,
            kind=kind,
            kinds=kind_choices(context.tr(request)),
            new=asked.get("new", ""),
            older=items[-1].number if len(items) == SHOWN else 0,
            kitchen=context.kitchen,
        )

    @routes.post("/records/check")
    def check(form: Typed) -> Response:
        if not form.get("on"):
            chain.restart()
        chain.go_on()
        return RedirectResponse("/records", 303)

    _add_entry(routes, context)


def _add_entry(routes: Routes, context: Context) -> None:
    @routes.get("/records/entry/{number}")
    def entry(request: Request, number: int) -> Response:
        item = context.store.entry(number, named=True)
        if item is None:
            raise InputError(
                "entry", number, "a number between 1 and {last}", last=context.store.last().number
            )
        older = context.store.entry(item.entry.replaces, named=True) if item.entry.replaces else None
        both = [("entry", item), ("replaces", older), ("replaced by", context.store.replaced_by(number))]
        shown = [
            {
                "title": title,
                **_row(context, request, i),
                "happened": local_time(context.kitchen, i.entry.happened_at),
                "text": json.dumps(as_shown(i), indent=2, ensure_ascii=False),
                "versions": dict(i.entry.versions),
                "dropped_by": dropped_by(context.store, i),
            }
            for title, i in both
            if i
        ]
        return context.render(
            request,
            "records/entry.html",
            room="records",
            part="entries",
            shown=shown,
            reports=reports_of(context.store, number),
            takes_report=takes_report(context.store, number),
            reading=number if item.entry.kind == Reading.KIND else 0,
            kitchen=context.kitchen,
        )


def _row(context: Context, request: Request, item: Recorded) -> dict[str, Any]:
    name, version = about(item)
    late = (item.recorded_at - item.entry.happened_at).total_seconds() > LATE_S
    return {
        "number": item.number,
        "kind": kind_word(item.entry.kind, context.tr(request)),
        "name": name,
        "version": version,
        "late": late,
        "at": local_time(context.kitchen, item.recorded_at),
        "author": item.entry.author,
        "hash": item.hash[:12],
        "replaces": item.entry.replaces or "",
    }


# ---------------------------------------------------------------- probing and cases


def probe_page(
    context: Context,
    request: Request,
    refused: FrywrightError | None = None,
    typed: Any = None,
    told: Any = None,
    traced: Any = None,
) -> Response:
    """The page of probing, with what was typed and what is wrong with it."""
    kitchen, tr = context.kitchen, context.tr(request)
    before, still = request.query_params.get("before", ""), bool(request.query_params.get("still", ""))
    cases = corrective.newest_lines(
        context.store, kitchen, CASES_SHOWN, tr, before=int(before) if is_count(before) else None, still=still
    )
    return context.render(
        request,
        "records/probing.html",
        room="records",
        part="probing",
        kitchen=kitchen,
        error=refused,
        typed=typed or {},
        told=told,
        traced=traced,
        hold_c=place_here(context.store, kitchen).hot_hold_c(),
        cases=cases,
        still=still,
        older=cases[-1].number if len(cases) == CASES_SHOWN else 0,
    )


def _add_cases(routes: Routes, context: Context) -> None:
    @routes.get("/records/probing")
    def page(request: Request) -> Response:
        asked, traced = dict(request.query_params), None
        if asked.get("bought"):
            try:
                kitchen, bought = context.kitchen, asked["bought"]
                moment = moment_typed(kitchen, bought, "bought")
                traced = corrective.trace(context.store, kitchen, asked.get("product", ""), moment)
            except FrywrightError as error:
                return probe_page(context, request, error, asked)
        done = asked.get("done", "")
        told = context.store.entry(int(done), named=True) if is_count(done) else None
        return probe_page(context, request, typed=asked, told=told, traced=traced)

    @routes.post("/records/probing")
    def probe(request: Request, form: Typed) -> Response:
        try:
            reading, case = tell_probe(context.store, context.kitchen, form)
        except FrywrightError as error:
            return probe_page(context, request, error, form)
        return RedirectResponse(
            f"/records/case/{case.number}" if case else f"/records/probing?done={reading.number}", 303
        )

    @routes.post("/records/case")
    def begin(request: Request, form: Typed) -> Response:
        try:
            case = corrective.open_case(context.store, context.kitchen, form)
        except FrywrightError as error:
            return probe_page(context, request, error, form)
        return RedirectResponse(f"/records/case/{case.number}", 303)


def _add_case(routes: Routes, context: Context) -> None:
    def shown(
        request: Request, number: int, refused: FrywrightError | None = None, typed: Any = None
    ) -> Response:
        kitchen, tr = context.kitchen, context.tr(request)
        view = corrective.case_view(context.store, kitchen, corrective.case_of(context.store, number), tr)
        return context.render(
            request,
            "records/case.html",
            room="records",
            part="probing",
            kitchen=kitchen,
            case=view,
            error=refused,
            typed=typed or {},
            causes=corrective.CAUSES,
        )

    @routes.get("/records/case/{number}")
    def case(request: Request, number: int) -> Response:
        return shown(request, number)

    @routes.post("/records/case/{number}")
    def step(request: Request, number: int, form: Typed) -> Response:
        try:
            corrective.tell_step(context.store, context.kitchen, number, form)
        except FrywrightError as error:
            return shown(request, number, error, form)
        return RedirectResponse(f"/records/case/{number}", 303)


def _add_local_rules(routes: Routes, context: Context) -> None:
    def shown(request: Request, refused: FrywrightError | None = None, typed: Any = None) -> Response:
        kitchen = context.kitchen
        return context.render(
            request,
            "records/local_rules.html",
            room="records",
            part="local",
            kitchen=kitchen,
            place=local_rules.place_title(kitchen),
            rows=local_rules.rule_subjects(context.store, kitchen, context.tr(request)),
            error=refused,
            typed=typed or {},
        )

    @routes.get("/records/local-rules")
    def local(request: Request) -> Response:
        return shown(request)

    @routes.post("/records/local-rules")
    def keep(request: Request, form: Typed) -> Response:
        try:
            local_rules.keep_answer(context.store, context.kitchen, form)
        except FrywrightError as error:
            return shown(request, error, form)
        return RedirectResponse("/records/local-rules", 303)


# ---------------------------------------------------------------- inspection pack


def _add_pack(routes: Routes, context: Context) -> None:
    def asked(request: Request) -> tuple[dt.date, dt.date]:
        today, texts = today_of(context.kitchen), request.query_params
        try:
            last = dt.date.fromisoformat(texts.get("to", "") or today.isoformat())
            first = dt.date.fromisoformat(
                texts.get("from", "") or (last - dt.timedelta(days=PACK_DAYS - 1)).isoformat()
            )
        except (ValueError, OverflowError) as error:
            raise InputError(
                "range",
                Phrase("{first} to {last}", {"first": texts.get("from", ""), "last": texts.get("to", "")}),
                "days such as 2026-11-01",
            ) from error
        return first, last

    def packed(request: Request) -> tuple[Kitchen, pack.Pack]:
        kitchen, language = context.kitchen, context.language(request)
        tr = translator(language)
        care = care_rows(context.store, kitchen, tr, language)
        return kitchen, pack.pack_of(context.store, kitchen, *asked(request), tr, care)

    @routes.get("/records/pack")
    def page(request: Request) -> Response:
        kitchen, found = packed(request)
        return context.render(
            request, "records/pack.html", room="records", part="pack", kitchen=kitchen, view=found.view
        )

    @routes.get("/records/pack.json")
    def as_json(request: Request) -> Response:
        return view_json(packed(request)[1].view)

    @routes.get("/records/pack.pdf")
    def paper(request: Request) -> Response:
        language, (kitchen, found) = context.language(request), packed(request)
        data = pack_paper.pack_pdf(kitchen, found, language, translator(language))
        return Response(data, media_type="application/pdf")

    @routes.get("/records/pack.zip")
    def archive(request: Request) -> Response:
        tr = context.tr(request)
        data = pack.csv_zip(context.store, context.kitchen, *asked(request), tr)
        return Response(
            data,
            media_type="application/zip",
            headers={"Content-Disposition": 'attachment; filename="inspection-pack.zip"'},
        )
