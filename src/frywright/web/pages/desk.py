"""Program desk: describe, design, prove, transfer, card, read-back, versions."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Any
from urllib.parse import quote

from fastapi import APIRouter, Request, Response
from fastapi.concurrency import run_in_threadpool
from fastapi.responses import RedirectResponse

from frywright.catalog.capacity import check_load
from frywright.design.controller import Keyed
from frywright.design.search import Candidate, Effort, Goals
from frywright.design.slots import sharing, slots_of
from frywright.design.transfer import Target
from frywright.ledger.store import Store
from frywright.model.errors import DataError, FrywrightError, InputError
from frywright.model.kitchen import Kitchen, Site
from frywright.model.program import Program
from frywright.web.app import Context
from frywright.web.jobs import Job, Jobs
from frywright.web.saving import save as save_program
from frywright.web.saving import save_choices
from frywright.workbench import book, slots
from frywright.workbench.cards import card_pdf, read_back, settings_of, site_cards_pdf, value_names
from frywright.workbench.clock import now
from frywright.workbench.desk import (
    at_altitude,
    clock_sentence,
    design_json,
    design_program,
    differences,
    program_rows,
    row_json,
    scouting_beside,
    take_row,
    transfer_json,
    transfer_program,
    window_of,
    window_rows,
)
from frywright.workbench.effect import effect_view
from frywright.workbench.facts import NOBODY, Answerer, program_facts, refuse_short, show_facts
from frywright.workbench.language import LANGUAGES, translator
from frywright.workbench.naming import away_words
from frywright.workbench.proof import ProofAnswer, proof_json, prove_program
from frywright.workbench.prove_again import again_line
from frywright.workbench.view import cook_view

PDF = "application/pdf"
Translate = Callable[[str], str]
GOAL_NAMES = {
    "margin": "margin",
    "longest": "longest time",
    "loss": "most moisture lost",
    "colour_low": "colour",
    "colour_high": "colour",
    "crust_low": "crust",
    "crust_high": "crust",
    "core_low": "core",
    "core_high": "core",
    "hottest": "hottest oil",
}
"""Names of the goals by box."""
OTHER_BOXES = tuple((name, name) for name in ("altitude", "stages", "load", "bird"))


def router(context: Context) -> APIRouter:
    """Routes of the desk."""
    routes, jobs = APIRouter(), Jobs()

    def kitchen() -> Any:
        return book.remembered_kitchen(context.store)

    def shown(request: Request, status: int = 200, **more: Any) -> Response:
        place = kitchen()
        held = program_rows(context.store, place, translator(context.language(request)))
        name = request.query_params.get("saved", "")
        saved = next((s for s in held if s["name"] == name), None)
        values = {"kitchen": place, "held": held, "saved": saved}
        values |= {"typed": {}, "wrong": "", "problem": "", **more}
        return context.render(request, "desk.html", status, room="desk", **values)

    def refused(request: Request, form: dict[str, str], error: InputError) -> Response:
        """The desk with what was typed and the box marked; a program gets the error itself."""
        if "text/html" not in request.headers.get("accept", ""):
            raise error
        told = {"typed": form, "wrong": _wrong_goal(form, error), "problem": context.explain(request, error)}
        return shown(request, error.http_status, **told)

    @routes.get("/cook/desk")
    def desk(request: Request) -> Response:
        return shown(request)

    _add_work(routes, jobs, context.store, kitchen, refused)
    _add_transfer(routes, jobs, kitchen, refused)
    _add_jobs(routes, jobs, context, kitchen)
    _add_paper(routes, context, kitchen)
    _add_readback(routes, context, kitchen)
    _add_kitchen(routes, context)
    return routes


Refused = Callable[[Request, dict[str, str], InputError], Response]


def _begin(jobs: Jobs, title: str, kind: str, work: Callable[..., Any]) -> Response:
    return RedirectResponse(f"/cook/desk/job/{jobs.start(title, kind, work).number}", 303)


def _add_transfer(routes: APIRouter, jobs: Jobs, kitchen: Callable[[], Any], refused: Refused) -> None:
    @routes.post("/cook/desk/transfer")
    async def transfer(request: Request) -> Response:
        form, place = {k: str(v).strip() for k, v in (await request.form()).items()}, kitchen()
        program, fryer = place.program(form.get("program", "")), place.fryer(form.get("fryer", ""))
        product = place.product(form.get("product") or program.product)
        try:
            altitude = (
                place.site.read(form["altitude"], "length", "altitude") if form.get("altitude") else None
            )
            mass = place.site.read(form["bird"], "mass", "bird") if form.get("bird") else None
            heads = place.site.number(form["load"], "load") if form.get("load") else None
            target = Target(
                kitchen=at_altitude(place, altitude),
                fryer=fryer.key,
                product=product.key,
                load_heads=heads,
                unit_mass_kg=mass,
            )
            there = replace(
                program,
                fryer=fryer.key,
                product=product.key,
                altitude_m=altitude,
                unit_mass_kg=mass,
                load_heads=heads,
            )
            check_load(target.kitchen, there)
        except InputError as error:
            return refused(request, form, error)
        words = [product.name, fryer.name, *away_words(place, there)]
        return _begin(
            jobs, f"{program.name} → {', '.join(words)}", "transfer", _carrying(place, program, target)
        )


def _add_work(
    routes: APIRouter, jobs: Jobs, store: Store, kitchen: Callable[[], Any], refused: Refused
) -> None:
    @routes.post("/cook/desk/design")
    async def design(request: Request) -> Response:
        form, place = {k: str(v) for k, v in (await request.form()).items()}, kitchen()
        product, fryer = place.product(form.get("product", "")), place.fryer(form.get("fryer", ""))
        try:
            goals, stages = _goals(place.site, form), _whole(form.get("stages", ""), "stages")
            Effort(stages=stages).stage_count(fryer)
        except InputError as error:
            return refused(request, form, error)
        work = _designing(place, product.key, fryer.key, goals, stages)
        return _begin(jobs, f"{product.name} · {fryer.name}", "design", work)

    @routes.post("/cook/desk/job/{number}/row/{row}")
    def take(number: int, row: int) -> Response:
        found, place = jobs.get(number), kitchen()
        rows = found.result.get("rows", ()) if found and found.result else ()
        if found is None or not 0 <= row < len(rows):
            raise InputError("row", row + 1, "a row of a finished trade-off")
        return _begin(jobs, found.title, "row", _taking(place, rows[row], found.result["goals"]))

    @routes.post("/cook/desk/prove")
    async def prove(request: Request) -> Response:
        form, place = await request.form(), kitchen()
        program, number = place.program(str(form.get("program", ""))), book.kitchen_number(store)
        work = _proving(place, program, lambda told: book.record_proof(store, told, number))
        return _begin(jobs, program.name, "proof", work)


def _designing(
    place: Kitchen, product: str, fryer: str, goals: Goals, stages: int | None
) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> dict[str, Any]:
        found, proof = design_program(place, product, fryer, goals, Effort(stages=stages, progress=progress))
        rows, system = _window(place, found.recommended.program, goals), str(place.site.units)
        return {
            "tell": lambda tr: {
                **design_json(found, proof, system, tr),
                "window": rows(tr),
                "clock": clock_sentence(place, found.recommended.program, tr),
            },
            "made": found.recommended.program,
            "facts": proof.facts,
            "rows": found.front,
            "goals": goals,
        }

    return work


def _taking(place: Kitchen, row: Candidate, goals: Goals) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> dict[str, Any]:
        taken, system = take_row(place, row, goals), str(place.site.units)
        progress(0.5)
        rows = _window(place, taken[0].program, goals)
        return {
            "tell": lambda tr: {
                **row_json(taken, system, tr),
                "window": rows(tr),
                "clock": clock_sentence(place, taken[0].program, tr),
            },
            "made": taken[0].program,
            "facts": taken[1].facts,
        }

    return work


def _carrying(place: Kitchen, program: Program, target: Target) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> dict[str, Any]:
        found, proof = transfer_program(place, program, target, Effort(progress=progress))
        beside = scouting_beside(place, program, found.program.product, target.kitchen.site.altitude_m)
        system = str(place.site.units)
        return {
            "tell": lambda tr: {
                **transfer_json(found, proof, system, tr),
                "beside": beside,
                "clock": clock_sentence(target.kitchen, found.program, tr),
            },
            "made": found.program,
            "facts": proof.facts,
        }

    return work


def _proving(place: Kitchen, program: Program, record: Callable[[ProofAnswer], Any]) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> dict[str, Any]:
        told, system = prove_program(place, program, samples=2048, progress=progress), str(place.site.units)
        record(told)
        rows = _window(place, program, None)
        return {"tell": lambda tr: {"proof": proof_json(told, system, tr), "window": rows(tr)}}

    return work


def _window(
    place: Kitchen, program: Program, goals: Goals | None
) -> Callable[[Translate], list[dict[str, Any]]]:
    edges = window_of(place, program, goals)
    return lambda tr: window_rows(edges, program, str(place.site.units), tr)


def _add_jobs(routes: APIRouter, jobs: Jobs, context: Context, kitchen: Callable[[], Any]) -> None:
    @routes.get("/cook/desk/job/{number}")
    def job(request: Request, number: int) -> Response:
        found = jobs.get(number)
        if found is None:
            return context.render(
                request, "job.html", 404, job=Job(number=0, title="", kind=""), told="", room="desk"
            )
        found = replace(
            found, done=found.done
        )  # as it stands now, done read first: it may end while the page is made
        told = context.explain(request, found.error) if found.error else ""
        result = found.result["tell"](translator(context.language(request))) if found.result else None
        saving: dict[str, Any] = {}
        if found.result and "made" in found.result:
            saving = {
                "save": save_choices(kitchen(), found.result["made"], found.result["facts"]),
                "hidden": {},
                "action": f"/cook/desk/job/{number}/save",
            }
        return context.render(request, "job.html", job=found, told=told, result=result, room="desk", **saving)

    @routes.post("/cook/desk/job/{number}/cancel")
    def cancel(number: int) -> Response:
        found = jobs.get(number)
        if found:
            found.cancelled = True
        return RedirectResponse(f"/cook/desk/job/{number}", 303)

    @routes.post("/cook/desk/job/{number}/save")
    async def save(request: Request, number: int) -> Response:
        form = {k: str(v) for k, v in (await request.form()).items()}
        found = jobs.get(number)
        if found is None or not found.result or "made" not in found.result:
            raise InputError("job", number, "a finished design or transfer")
        place, made = kitchen(), found.result["made"]
        ways = save_choices(place, made)["follows"]
        default = f"{ways[0].version} {ways[0].name}" if ways else ""
        form = {"as": default, "name": made.name, **form}
        return save_program(
            context, request, place, made, form, f"/cook/desk/job/{number}/save", found.result["facts"]
        )


def _add_paper(routes: APIRouter, context: Context, kitchen: Callable[[], Any]) -> None:
    def paper(
        request: Request, programs: list[Program], make: Callable[[Kitchen, Answerer], bytes], who: Answerer
    ) -> Response:
        """The paper; where something on it is predicted short, the page that asks who answers for it."""
        place, language = kitchen(), context.language(request)
        system, tr = str(place.site.units), translator(language)
        told = [(p, show_facts(program_facts(place, p), system, tr)) for p in programs]
        short = [(p, facts) for p, facts in told if facts.short]
        try:
            data = make(place, who)
            book.keep_print(context.store, place, programs, who)
        except InputError as error:
            if not short:
                raise
            values = {"short": short, "who": who, "problem": context.explain(request, error)}
            return context.render(request, "short.html", error.http_status, room="desk", **values)
        return Response(data, media_type=PDF)

    def one(request: Request, program: str, slot: int, who: Answerer) -> Response:
        language, found = context.language(request), kitchen().program(program)
        tr = translator(language)
        slot = slot or slots.slot_of(context.store, kitchen(), found)
        shared = sharing(kitchen(), found, slot, slots.told_slots(context.store))
        return paper(
            request, [found], lambda place, who: card_pdf(place, found, slot, language, tr, who, shared), who
        )

    def every(request: Request, both: bool, who: Answerer) -> Response:
        place = kitchen()
        tongues = {n: translator(n) for n in (LANGUAGES if both else [context.language(request)])}
        programs = [place.program(name) for name in sorted({p.name for p in place.own_programs})]
        held = slots.told_slots(context.store)
        return paper(request, programs, lambda place, who: site_cards_pdf(place, tongues, who, held), who)

    @routes.get("/cook/card.pdf")
    def card(request: Request, program: str, slot: int = 0) -> Response:
        return one(request, program, slot, NOBODY)

    @routes.post("/cook/card.pdf")
    async def short_card(request: Request, program: str, slot: int = 0) -> Response:
        return one(request, program, slot, _answerer(await request.form()))

    @routes.get("/cook/cards.pdf")
    def cards(request: Request, both: bool = False) -> Response:
        return every(request, both, NOBODY)

    @routes.post("/cook/cards.pdf")
    async def short_cards(request: Request, both: bool = False) -> Response:
        return every(request, both, _answerer(await request.form()))

    _add_slots(routes, context, kitchen)

    @routes.get("/cook/changes")
    def versions(request: Request, program: str) -> Response:
        place = kitchen()
        found = sorted(
            (p for p in place.programs if p.name == place.program(program).name), key=lambda p: p.version
        )
        tr, system = translator(context.language(request)), str(place.site.units)
        told = [differences(place, a, b, tr) for a, b in pairwise(found)]
        now_held = show_facts(program_facts(place, found[-1]), system, tr)
        values = {
            "title": program,
            "told": told,
            "newest": found[-1].version,
            "facts_now": now_held,
            "system": system,
        }
        values["clock"] = clock_sentence(place, found[-1], tr)
        return context.render(request, "changes.html", room="desk", **values)


def _add_slots(routes: APIRouter, context: Context, kitchen: Callable[[], Any]) -> None:
    @routes.get("/cook/card")
    def choose(request: Request, program: str) -> Response:
        place = kitchen()
        found = place.program(program)
        told = slots.told_slots(context.store)
        fryer, held = place.fryer(found.fryer), slots_of(place, found.fryer, told)
        rows = [
            {"slot": n, "names": [name for name, slot in held.items() if slot == n and name != found.name]}
            for n in range(1, fryer.controller.slot_count + 1)
        ]
        slot = held[found.name]
        values = {"program": found, "fryer": fryer, "rows": rows, "slot": slot}
        shared = sharing(place, found, slot, told)
        return context.render(request, "print_card.html", room="desk", shared=shared, **values)

    @routes.post("/cook/card")
    async def tell(request: Request) -> Response:
        form, place = await request.form(), kitchen()
        found, slot = place.program(str(form.get("program", ""))), _slot(str(form.get("slot", "")))
        slots.tell_slot(context.store, place, found, slot)
        return RedirectResponse(f"/cook/card.pdf?program={quote(found.name)}&slot={slot}", 303)


def _answerer(form: Mapping[str, Any]) -> Answerer:
    return Answerer(by=str(form.get("by", "")), reason=str(form.get("reason", "")))


def _slot(text: str) -> int:
    return _whole(text, "slot") or 1


def _whole(text: str, name: str) -> int | None:
    text = text.strip()
    if text and not (text.isascii() and text.isdigit() and len(text) < 4):
        raise InputError(name, repr(text), "a small whole number")
    return int(text) if text else None


def _goals(site: Site, form: dict[str, str]) -> Goals:
    """Goals typed; a box left empty takes the default of the desk."""
    typed = {name: text.strip() for name, text in form.items() if text.strip()}
    degrees, depth = ("f_diff", "in") if str(site.units) == "us" else ("k", "mm")

    def number(name: str, default: float) -> float:
        return site.number(typed[name], GOAL_NAMES[name]) if name in typed else default

    def read(name: str, dimension: str, default: str, bare: str = "") -> float:
        return site.read(typed.get(name, default), dimension, GOAL_NAMES[name], bare)

    return Goals(
        margin_k=read("margin", "temperature_difference", "3 K", degrees),
        longest_s=read("longest", "time", "25:00"),
        most_loss_frac=read("loss", "fraction", "35 %", "pct"),
        colour_low_n=number("colour_low", 4.0),
        colour_high_n=number("colour_high", 14.0),
        crust_low_m=read("crust_low", "length", "0", depth),
        crust_high_m=read("crust_high", "length", "10 mm", depth),
        core_low_c=read("core_low", "temperature", "74 C"),
        core_high_c=read("core_high", "temperature", "99 C"),
        hottest_c=read("hottest", "temperature", "185 C"),
    )


def _wrong_goal(form: Mapping[str, str], error: InputError) -> str:
    """Box of the desk that an error speaks of: by its name, of two by what was typed."""
    boxes = [box for box, name in (*GOAL_NAMES.items(), *OTHER_BOXES) if name in error.field and box in form]
    typed = [box for box in boxes if repr(form[box].strip()) == error.value]
    return next(iter(typed or boxes), "")


def _add_readback(routes: APIRouter, context: Context, kitchen: Callable[[], Any]) -> None:
    def shown(
        request: Request, found: Program, slot: int, typed: Mapping[str, Any], status: int = 200, **more: Any
    ) -> Response:
        place = kitchen()
        refused, fields = "", []
        try:
            refuse_short(place, found)
            fields = [{"stage": v.stage, "what": v.what} for v in value_names(place, found, slot)]
        except InputError as error:
            refused, status = context.explain(request, error), 422
        values = {
            "program": found,
            "slot": slot,
            "fields": fields,
            "settings": settings_of(place, found),
            "typed": typed,
            "started_at": str(typed.get("started_at", "")) or now().isoformat(),
            "result": None,
            "problem": refused,
            "again": again_line(place, found, translator(context.language(request))),
            "wrong": "",
            **more,
        }
        return context.render(request, "readback.html", status, room="desk", **values)

    @routes.get("/cook/readback")
    def ask(request: Request, program: str, slot: str = "") -> Response:
        place = kitchen()
        found = place.program(program)
        return shown(request, found, _slot(slot) if slot else slots.slot_of(context.store, place, found), {})

    @routes.post("/cook/readback")
    async def compare(request: Request) -> Response:
        form, place = {k: str(v) for k, v in (await request.form()).items()}, kitchen()
        found, slot = place.program(form.get("program", "")), _slot(form.get("slot", ""))
        names = value_names(place, found, slot)
        try:
            read = [form.get(f"v{i}", "") for i in range(len(names))]
            settings = {s.key: form.get(s.key, "") for s in settings_of(place, found)}
            result = read_back(place, found, slot, read, settings)
            people = (form.get("read_by", ""), form.get("checked_by", ""))
            book.record_readback(context.store, found, slot, result, people, form.get("started_at", ""))
        except FrywrightError as error:
            wrong = _wrong_box(error, names) if isinstance(error, InputError) else ""
            said = context.explain(request, error)
            return shown(request, found, slot, form, problem=said, wrong=wrong, status=error.http_status)
        tr = translator(context.language(request))
        effect = effect_view(result.effect, str(place.site.units), tr) if result.effect else None
        keyed = ""
        if result.consequence:
            keyed = cook_view(result.consequence, str(place.site.units), tr)["clock"]["sentence"]
        elif result.matches:
            keyed = clock_sentence(place, found, tr)
        return shown(request, found, slot, form, result=result, effect=effect, keyed=keyed)


def _wrong_box(error: InputError, names: Sequence[Keyed]) -> str:
    """Box of the read-back that an error speaks of; empty where it is none of them."""
    places = {(v.what, f"stage {v.stage}" if v.stage else ""): f"v{i}" for i, v in enumerate(names)}
    return "checked_by" if error.field == "people" else places.get((error.field, error.where), "")


def _add_kitchen(routes: APIRouter, context: Context) -> None:
    @routes.get("/cook/kitchen")
    def show(request: Request) -> Response:
        text = context.store.current("kitchen")[-1].entry.payload["text"]
        return context.render(request, "kitchen.html", text=text, problems=[], room="desk")

    @routes.post("/cook/kitchen")
    async def keep(request: Request) -> Response:
        form = await request.form()
        text, reason = str(form.get("text", "")).replace("\r\n", "\n"), str(form.get("reason", ""))
        try:
            await run_in_threadpool(book.remember_kitchen, context.store, text, "kitchen.toml", reason)
        except InputError as error:
            said = context.explain(request, error)
            return context.render(
                request, "kitchen.html", 422, text=text, reason=reason, problems=[said], room="desk"
            )
        except DataError as error:
            return context.render(
                request, "kitchen.html", 422, text=text, reason=reason, problems=error.problems, room="desk"
            )
        return RedirectResponse("/cook/desk", 303)
