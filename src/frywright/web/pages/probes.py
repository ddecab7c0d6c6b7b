"""Room Probes: logger files, calibration, thermometers, sampling proof."""

from __future__ import annotations

import io
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import partial
from itertools import islice
from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse
from starlette.datastructures import UploadFile

from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import HoldStudied, LogKept
from frywright.model.business_day import local_time
from frywright.model.errors import FrywrightError, InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.units import show
from frywright.rooms import hall, thermometers
from frywright.rooms.cook.hold_picture import hold_picture
from frywright.rooms.cook.logs import ROLES, Log, core_channels, has_gauge, keep_log, read_kept
from frywright.rooms.cook.probe_report import log_picture, report_pdf, residual_picture
from frywright.rooms.cook.probe_view import FitView, fit_view, kettle_lines, probe_view
from frywright.rooms.cook.probes import (
    Calibrated,
    ProbeAsk,
    calibrate,
    calibrate_lid,
    keep_calibration,
    kettle_found,
    tell,
)
from frywright.rooms.cook.sampling import keep_sample, sample_program, sampled_view
from frywright.rooms.standing import place_here
from frywright.trial.hold_study import study
from frywright.trial.kitchens import demo_log
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.jobs import Job, Jobs
from frywright.web.posted import Sent, Typed
from frywright.web.routes import Routes

KEPT_LOGS = 4
INLINE_BYTES = 8_000_000
"""Larger files are read in the background with a progress bar."""


class Logs:
    """Logs read lately, by content and answers; large ones are read in the background."""

    def __init__(self, context: Context) -> None:
        self.context, self.jobs = context, Jobs()
        self._read: dict[tuple[Any, ...], Log | Job] = {}

    def get(self, item: Kept[LogKept], answers: Mapping[str, str]) -> Log | Job:
        """The log, or the job that is reading it. Raises DataError: the file is no log."""
        key = (item.fact.sha256, tuple(sorted(answers.items())))
        found = self._read.get(key)
        if isinstance(found, Job) and found.done:
            if found.error:
                del self._read[key]
                raise found.error
            found = found.result if found.result is not None else None
        if found is None:
            found = self._start(item.fact, answers)
        self._read[key] = found
        for old in list(self._read)[:-KEPT_LOGS]:
            del self._read[old]
        return found

    def _start(self, kept: LogKept, answers: Mapping[str, str]) -> Log | Job:
        store = self.context.store
        if kept.size_bytes <= INLINE_BYTES:
            return read_kept(store, kept, answers)

        def work(progress: Callable[[float], None]) -> Log:
            return read_kept(store, kept, answers, progress)

        return self.jobs.start(kept.name, "read", work)


def router(context: Context) -> Routes:
    """Routes of the room."""
    routes, logs = Routes(), Logs(context)

    def kitchen() -> Any:
        return context.kitchen

    _add_list(routes, context, kitchen)
    _add_log(routes, context, kitchen, logs)
    _add_checks(routes, context, kitchen)
    _add_hold(routes, context, kitchen)
    _add_sample(routes, context, kitchen)
    return routes


def _overview(context: Context, place: Any, **values: Any) -> dict[str, Any]:
    store, system = context.store, place.site.units
    due = [
        {"check": row, "errors": [show(e, "k", system) for e in row.errors_k]}
        for row in thermometers.due_list(store)
    ]
    doubts = [
        {
            "thermometer": d.thermometer,
            "entry": d.reading.entry,
            "load": d.reading.load,
            "read": show(d.reading.read_c, "c", system),
            "corrected": show(d.reading.corrected_c, "c", system),
            "limit": show(d.reading.limit_c, "c", system),
        }
        for d in thermometers.open_doubts(store)
    ]
    return {
        "kitchen": place,
        "local": partial(local_time, place),
        "programs": sorted({p.name for p in place.programs}),
        "logs": list(islice(store.facts(LogKept, newest_first=True), 50)),
        "due": due,
        "doubts": doubts,
        "sample": None,
        "hold": None,
        "check": None,
        "room": "probes",
        **values,
    }


def _add_list(routes: Routes, context: Context, kitchen: Any) -> None:
    @routes.get("/cook/probes")
    def probes(request: Request) -> Response:
        return context.render(request, "cook/probes.html", **_overview(context, kitchen()))

    @routes.post("/cook/probes/upload")
    def upload(request: Request, form: Sent) -> Response:
        file = form.get("file")
        if not isinstance(file, UploadFile) or not file.filename:
            problem = context.tr(request)("Choose the file that the logger wrote.")
            return context.render(
                request, "cook/probes.html", 422, **_overview(context, kitchen(), problem=problem)
            )
        kept = keep_log(context.store, file.file, file.filename)
        return RedirectResponse(f"/cook/probes/{kept.number}", 303)

    @routes.post("/cook/probes/demo")
    def demo() -> Response:
        kept = keep_log(context.store, io.BytesIO(demo_log()), "probe-log.csv")
        return RedirectResponse(f"/cook/probes/{kept.number}", 303)


def _log(context: Context, number: int) -> Kept[LogKept]:
    found = context.store.fact(number, LogKept)
    if found is None:
        raise InputError("log", number, "one of the logs kept here")
    return found


def _answered_only(form: Mapping[str, str]) -> dict[str, str]:
    """What was typed without the calibration asked for: the log as it is read."""
    return {name: text for name, text in form.items() if name.startswith("q_")}


def _add_log(routes: Routes, context: Context, kitchen: Any, logs: Logs) -> None:
    @routes.get("/cook/probes/{number}")
    def show_log(request: Request, number: int) -> Response:
        item, place, form = _log(context, number), kitchen(), dict(request.query_params)
        values: dict[str, Any] = {
            "kitchen": place,
            "number": number,
            "item": item,
            "typed": form,
            "room": "probes",
            "fits": [],
            "query": request.url.query,
        }
        try:
            log = logs.get(item, _answers(form))
            if isinstance(log, Job):
                return context.render(request, "cook/probe_wait.html", job=log, **values)
            try:
                values |= _told(context, request, place, log, form)
            except InputError as error:
                values |= _told(context, request, place, log, _answered_only(form))
                return context.render(request, "cook/probe.html", error=error, **values)
        except FrywrightError as error:
            return context.render(request, "cook/probe.html", error=error, **values)
        return context.render(request, "cook/probe.html", **values)

    @routes.get("/cook/probes/{number}/report.pdf")
    def report(request: Request, number: int) -> Response:
        item, place, form = _log(context, number), kitchen(), dict(request.query_params)
        log = logs.get(item, _answers(form))
        if isinstance(log, Job):
            raise InputError("log", number, "read to its end first")
        asked = _asked(place, log, form)
        told = tell(place, log, asked, context.store)
        made = (
            [calibrate(place, told, asked, cut) for cut in sorted(set(asked.cuts.values()))]
            if asked.masses_kg
            else []
        )
        language = context.language(request)
        data = report_pdf(place, told, made, language, translator(language), item.fact.sha256)
        return Response(data, media_type="application/pdf")

    @routes.post("/cook/probes/{number}/keep")
    def keep(request: Request, number: int, form: Typed) -> Response:
        item, place = _log(context, number), kitchen()
        log = logs.get(item, _answers(form))
        if isinstance(log, Job):
            raise InputError("log", number, "read to its end first")
        asked = _asked(place, log, form)
        told = tell(place, log, asked, context.store)
        made = calibrate(place, told, asked, form.get("cut", ""))
        kept = keep_calibration(context.store, made, item.fact.sha256, made.fit.rms_k)
        return RedirectResponse(f"/records?new={kept.number}", 303)


def _told(context: Context, request: Request, place: Any, log: Log, form: dict[str, str]) -> dict[str, Any]:
    system, translate = place.site.units, context.tr(request)
    asked = _asked(place, log, form)
    told = tell(place, log, asked, context.store)
    fits, problem = list[FitView](), ""
    kettle = kettle_found(place, told, asked.program if form.get("program") else "")
    said = kettle_lines(kettle, system, translate)
    if form.get("do") == "calibrate":
        try:
            cuts = sorted(set(asked.cuts.values()))
            if form.get("lid") == "yes":
                lid = Calibrated(
                    cut=translate("lid"),
                    fit=calibrate_lid(place, told, asked),
                    placements=(),
                    draft=None,
                    notes=(),
                )
                fits.append(replace(fit_view(lid, system, translate), lid=True))
            elif not cuts:
                raise InputError("cut", "missing", "chosen for at least one probe")
            fits += [fit_view(calibrate(place, told, asked, cut), system, translate) for cut in cuts]
            fits = [replace(f, picture=residual_picture(f, translate)) for f in fits]
        except FrywrightError as error:
            problem = context.explain(request, error)
    return {
        "view": probe_view(told, system, translate),
        "fits": fits,
        "problem": problem,
        "kettle": said,
        "gauges": has_gauge(log),
        "channels": core_channels(log),
        "roles": ROLES,
        "picture": log_picture(told, system, translate),
    }


def _answers(form: Mapping[str, str]) -> dict[str, str]:
    return {key[2:]: value.strip() for key, value in form.items() if key.startswith("q_") and value.strip()}


def _asked(place: Any, log: Log, form: Mapping[str, str]) -> ProbeAsk:
    cuts, masses, used, scaled = {}, {}, {}, {}
    weighed = "oz" if place.site.units == "us" else "g"
    for i, channel in enumerate(core_channels(log)):
        if cut := form.get(f"cut_{i}", "").strip():
            cuts[channel] = place.cut(cut).key
        if mass := form.get(f"mass_{i}", "").strip():
            masses[channel] = place.site.read(mass, "mass", "weight", weighed)
        if name := form.get(f"thermo_{i}", "").strip():
            used[channel] = name
        pair = [form.get(f"{box}_{i}", "").strip() for box in ("before", "after")]
        if any(pair):
            before, after = (place.site.read(text or "-", "mass", "weight", weighed) for text in pair)
            scaled[channel] = before, after
    display = form.get("display", "").strip()
    program = form.get("program", "").strip() or (place.programs[0].name if place.programs else "")
    return ProbeAsk(
        program=program,
        cuts=cuts,
        masses_kg=masses,
        thermometers=used,
        weighed_kg=scaled,
        display_c=place.site.read(display, "temperature", "display") if display else None,
    )


def _refused(
    context: Context, request: Request, place: Kitchen, form: Mapping[str, str], error: FrywrightError
) -> Response:
    """The page with what was typed and what stood in the way."""
    return context.render(request, "cook/probes.html", error=error, **_overview(context, place, typed=form))


def _add_checks(routes: Routes, context: Context, kitchen: Any) -> None:
    @routes.post("/cook/probes/check")
    def check(request: Request, form: Typed) -> Response:
        place = kitchen()
        try:
            ice, boil = (
                place.site.read(form[n], "temperature", n) if form.get(n, "").strip() else None
                for n in ("ice", "boil")
            )
            made, _ = thermometers.record_check(context.store, place, form.get("thermometer", ""), ice, boil)
        except FrywrightError as error:
            return _refused(context, request, place, form, error)
        told = {
            "name": made.thermometer,
            "outcome": str(made.outcome),
            "boils": show(made.boiling_point_c, "c", place.site.units),
            "due": made.due_at,
        }
        return context.render(request, "cook/probes.html", **_overview(context, place, check=told))


def _add_hold(routes: Routes, context: Context, kitchen: Any) -> None:
    @routes.post("/cook/probes/hold")
    def hold(request: Request, form: Typed) -> Response:
        place = kitchen()
        try:
            limit_c = place_here(context.store, place).hot_hold_c()
            told = _hold(place, form, limit_c, context.tr(request))
        except FrywrightError as error:
            return _refused(context, request, place, form, error)
        fact = HoldStudied(
            name=form.get("product", ""), table=form.get("table", "")[:20000], result=told["text"]
        )
        hall.write(context.store, fact)
        return context.render(request, "cook/probes.html", **_overview(context, place, hold=told, typed=form))


def _add_sample(routes: Routes, context: Context, kitchen: Any) -> None:
    @routes.post("/cook/probes/sample")
    def sample(request: Request, form: Typed) -> Response:
        place = kitchen()
        try:
            readings = place.site.read_list(form.get("readings", ""), "temperature", "readings")
            checked = form.get("checked") == "yes"
            found = sample_program(place, form.get("program", ""), readings, checked=checked)
        except FrywrightError as error:
            return _refused(context, request, place, form, error)
        keep_sample(context.store, place, found)
        told = sampled_view(place, found, context.tr(request))
        return context.render(
            request, "cook/probes.html", **_overview(context, place, sample=told, typed=form)
        )


def _hold(place: Any, form: Mapping[str, str], limit_c: float | None, translate: Any) -> dict[str, str]:
    least, share = (
        place.site.number(form.get(name, "").strip() or default, "score")
        for name, default in (("least", "7"), ("share", "90"))
    )
    found = study(place, form.get("table", ""), "hold", least, share / 100.0, limit_c)
    text = say(found.note.text, found.note.values, place.site.units, translate)
    return {
        "text": text,
        "ended_by": found.ended_by,
        "picture": hold_picture(found, share / 100.0, text, translate),
    }
