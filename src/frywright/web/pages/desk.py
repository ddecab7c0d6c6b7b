"""Program desk: describe, design, prove, transfer, card, read-back, versions."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Any

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.catalog.capacity import check_load
from frywright.design.search import Candidate, Effort, Goals
from frywright.design.transfer import Target
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.rooms.cook.break_even import break_even_of, break_even_rows
from frywright.rooms.cook.desk import (
    WindowRow,
    at_altitude,
    clock_sentence,
    design_program,
    design_view,
    program_rows,
    row_view,
    scouting_beside,
    take_row,
    transfer_program,
    transfer_view,
    window_of,
    window_rows,
)
from frywright.rooms.cook.follow import follower_of
from frywright.rooms.cook.goals import goals_typed
from frywright.rooms.cook.programs import record_proof, unanswered
from frywright.rooms.kitchen import kitchen_number
from frywright.trial.naming import away_words
from frywright.trial.proof import ProofAnswer, proof_view, prove_program
from frywright.verdicts.facts import Facts
from frywright.web.app import Context
from frywright.web.forms import whole_number
from frywright.web.jobs import Job, Jobs
from frywright.web.pages import settings
from frywright.web.pages.follow import Followed, add_follow
from frywright.web.pages.paper import add_paper, add_readback
from frywright.web.posted import Typed
from frywright.web.routes import Routes
from frywright.web.saving import save as save_program
from frywright.web.saving import save_choices

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


def router(context: Context) -> Routes:
    """Routes of the desk."""
    routes, jobs = Routes(), Jobs()

    def kitchen() -> Any:
        return context.kitchen

    def shown(request: Request, **more: Any) -> Response:
        place = kitchen()
        held = program_rows(context.store, place, context.tr(request))
        name = request.query_params.get("saved", "")
        saved = next((s for s in held if s.name == name), None)
        tr = context.tr(request)
        values = {"kitchen": place, "held": held, "saved": saved}
        values["unanswered"] = unanswered(context.store, place, tr)
        values |= {"wrong": "", **more}
        return context.render(request, "cook/desk.html", room="desk", **values)

    def refused(request: Request, form: dict[str, str], error: InputError) -> Response:
        """The desk with what was typed and the box marked; a program gets the error itself."""
        if "text/html" not in request.headers.get("accept", ""):
            raise error
        return shown(request, typed=form, wrong=_wrong_goal(form, error), error=error)

    @routes.get("/cook/desk")
    def desk(request: Request) -> Response:
        return shown(request)

    _add_work(routes, jobs, context.store, kitchen, refused)
    _add_transfer(routes, jobs, context, kitchen, refused)
    _add_follow(routes, jobs, context, kitchen)
    _add_jobs(routes, jobs, context, kitchen)
    add_paper(routes, context, kitchen)
    add_readback(routes, context, kitchen)
    settings.router(context).join(routes)
    return routes


Refused = Callable[[Request, dict[str, str], InputError], Response]


def _begin(jobs: Jobs, title: str, kind: str, work: Callable[..., Any]) -> Response:
    return RedirectResponse(f"/cook/desk/job/{jobs.start(title, kind, work).number}", 303)


def _add_transfer(
    routes: Routes, jobs: Jobs, context: Context, kitchen: Callable[[], Any], refused: Refused
) -> None:
    @routes.post("/cook/desk/transfer")
    def transfer(request: Request, typed: Typed) -> Response:
        form, place = {name: text.strip() for name, text in typed.items()}, kitchen()
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
        words = [product.name, fryer.name, *away_words(place, there, context.tr(request))]
        return _begin(
            jobs, f"{program.name} → {', '.join(words)}", "transfer", _carrying(place, program, target)
        )


def _add_work(routes: Routes, jobs: Jobs, store: Store, kitchen: Callable[[], Any], refused: Refused) -> None:
    def asked(request: Request, form: dict[str, str], work: Callable[..., Any], kind: str) -> Response:
        place = kitchen()
        product, fryer = place.product(form.get("product", "")), place.fryer(form.get("fryer", ""))
        try:
            goals = goals_typed(place.site, form, GOAL_NAMES)
            stages = whole_number(form.get("stages", ""), "stages")
            Effort(stages=stages).stage_count(fryer)
        except InputError as error:
            return refused(request, form, error)
        begun = work(place, product.key, fryer.key, goals, stages)
        return _begin(jobs, f"{product.name} · {fryer.name}", kind, begun)

    @routes.post("/cook/desk/design")
    def design(request: Request, form: Typed) -> Response:
        return asked(request, form, _designing, "design")

    @routes.post("/cook/desk/follow")
    def follow(request: Request, form: Typed) -> Response:
        return asked(request, form, partial(_following, kitchen_number(store)), "follow")

    @routes.post("/cook/desk/job/{number}/row/{row}")
    def take(number: int, row: int) -> Response:
        found, place = jobs.get(number), kitchen()
        rows = found.result.rows if found and found.result else ()
        if found is None or not 0 <= row < len(rows):
            raise InputError("row", row + 1, "a row of a finished trade-off")
        return _begin(jobs, found.title, "row", _taking(place, rows[row], found.result.goals))

    @routes.post("/cook/desk/prove")
    def prove(request: Request, form: Typed) -> Response:
        place = kitchen()
        program, number = place.program(str(form.get("program", ""))), kitchen_number(store)
        work = _proving(place, program, lambda told: record_proof(store, told, number))
        return _begin(jobs, program.name, "proof", work)


def _add_follow(routes: Routes, jobs: Jobs, context: Context, kitchen: Callable[[], Any]) -> None:
    def prove(title: str, row: Candidate, goals: Goals) -> Response:
        return _begin(jobs, title, "row", _taking(kitchen(), row, goals))

    def search(found: Followed, goals: Goals) -> Response:
        place, base = kitchen(), found.follower.sizer.base
        work = _designing(place, base.product, base.fryer, goals, found.stages)
        title = f"{place.product(base.product).name} · {place.fryer(base.fryer).name}"
        return _begin(jobs, title, "design", work)

    add_follow(routes, jobs, context, prove, search)


@dataclass(frozen=True, slots=True, kw_only=True)
class DeskWork:
    """What a job of the desk brings: how it is told, and a program that can be saved, where it made one; or
    what can be followed.
    """

    tell: Callable[[Translate], Any]
    made: Program | None = None
    origin: str = ""
    facts: Facts | None = None
    rows: Sequence[Candidate] = ()
    goals: Goals | None = None
    followed: Followed | None = None


def _following(
    number: int, place: Kitchen, product: str, fryer: str, goals: Goals, stages: int | None
) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> DeskWork:
        found = follower_of(place, product, fryer, goals, Effort(stages=stages, progress=progress))
        followed = Followed(follower=found, goals=goals, stages=stages, kitchen_number=number)
        return DeskWork(tell=lambda tr: None, followed=followed)

    return work


def _designing(
    place: Kitchen, product: str, fryer: str, goals: Goals, stages: int | None
) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> DeskWork:
        found, proof = design_program(place, product, fryer, goals, Effort(stages=stages, progress=progress))
        rows, system = _window(place, found.recommended.program, goals), place.site.units
        return DeskWork(
            tell=lambda tr: replace(
                design_view(found, proof, system, tr),
                window=rows(tr),
                clock=clock_sentence(place, found.recommended.program, tr),
            ),
            made=found.recommended.program,
            origin="designed",
            facts=proof.facts,
            rows=found.front,
            goals=goals,
        )

    return work


def _taking(place: Kitchen, row: Candidate, goals: Goals) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> DeskWork:
        taken, system = take_row(place, row, goals), place.site.units
        progress(0.5)
        rows = _window(place, taken[0].program, goals)
        return DeskWork(
            tell=lambda tr: replace(
                row_view(taken, system, tr),
                window=rows(tr),
                clock=clock_sentence(place, taken[0].program, tr),
            ),
            made=taken[0].program,
            origin="designed",
            facts=taken[1].facts,
        )

    return work


def _carrying(place: Kitchen, program: Program, target: Target) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> DeskWork:
        found, proof = transfer_program(place, program, target, Effort(progress=progress))
        beside = scouting_beside(place, program, found.program.product, target.kitchen.site.altitude_m)
        system = place.site.units
        return DeskWork(
            tell=lambda tr: replace(
                transfer_view(found, proof, system, tr),
                beside=beside,
                clock=clock_sentence(target.kitchen, found.program, tr),
            ),
            made=found.program,
            origin="carried",
            facts=proof.facts,
        )

    return work


def _proving(place: Kitchen, program: Program, record: Callable[[ProofAnswer], Any]) -> Callable[..., Any]:
    def work(progress: Callable[[float], None]) -> DeskWork:
        told, system = prove_program(place, program, samples=2048, progress=progress), place.site.units
        record(told)
        rows, fails = _window(place, program, None), break_even_of(place, program)
        return DeskWork(
            tell=lambda tr: {
                "proof": proof_view(told, system, tr),
                "window": rows(tr),
                "break_even": break_even_rows(fails, program, system, tr),
            }
        )

    return work


def _window(
    place: Kitchen, program: Program, goals: Goals | None
) -> Callable[[Translate], tuple[WindowRow, ...]]:
    edges = window_of(place, program, goals)
    return lambda tr: window_rows(edges, program, place.site.units, tr)


def _add_jobs(routes: Routes, jobs: Jobs, context: Context, kitchen: Callable[[], Any]) -> None:
    @routes.get("/cook/desk/job/{number}")
    def job(request: Request, number: int) -> Response:
        found = jobs.get(number)
        if found is None:
            return context.render(
                request, "cook/job.html", 404, job=Job(number=0, title="", kind=""), told="", room="desk"
            )
        found = replace(
            found, done=found.done
        )  # as it stands now, done read first: it may end while the page is made
        if found.done and found.result and found.result.followed:
            return RedirectResponse(f"/cook/desk/follow/{number}", 303)
        told = context.explain(request, found.error) if found.error else ""
        tr = context.tr(request)
        result = found.result.tell(tr) if found.result else None
        saving: dict[str, Any] = {}
        if found.result and found.result.made:
            saving = {
                "save": save_choices(kitchen(), found.result.made, found.result.facts, translate=tr),
                "hidden": {},
                "action": f"/cook/desk/job/{number}/save",
            }
        return context.render(
            request, "cook/job.html", job=found, told=told, result=result, room="desk", **saving
        )

    @routes.post("/cook/desk/job/{number}/cancel")
    def cancel(number: int) -> Response:
        found = jobs.get(number)
        if found:
            found.cancelled = True
        return RedirectResponse(f"/cook/desk/job/{number}", 303)

    @routes.post("/cook/desk/job/{number}/save")
    def save(request: Request, number: int, form: Typed) -> Response:
        found = jobs.get(number)
        if found is None or not found.result or found.result.made is None:
            raise InputError("job", number, "a finished design or transfer")
        place, made = kitchen(), found.result.made
        ways = save_choices(place, made)["follows"]
        default = f"{ways[0].version} {ways[0].name}" if ways else ""
        form = {"as": default, "name": made.name, **form}
        action = f"/cook/desk/job/{number}/save"
        origin = found.result.origin
        return save_program(context, request, place, made, form, action, found.result.facts, origin=origin)


def _wrong_goal(form: Mapping[str, str], error: InputError) -> str:
    """Box of the desk that an error speaks of: by its name, of two by what was typed."""
    boxes = [box for box, name in (*GOAL_NAMES.items(), *OTHER_BOXES) if name in error.field and box in form]
    typed = [box for box in boxes if repr(form[box].strip()) == error.value]
    return next(iter(typed or boxes), "")
