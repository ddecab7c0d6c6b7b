"""Room Cook: choose a program and a load, edit its stages, see what happens and why."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

from fastapi import Request, Response
from fastapi.responses import JSONResponse, RedirectResponse

from frywright.model.errors import FrywrightError, InputError
from frywright.model.tongues import Translate
from frywright.paper.chart import cook_spec, svg
from frywright.rooms.cook.life import LifeShown, life_of_program, life_shown
from frywright.rooms.cook.programs import keep_simulation
from frywright.rooms.cook.view import CookView, SavedView, cook_view, saved_beside
from frywright.trial.ask import CookRequest, ask
from frywright.trial.predicted import program_facts, with_probing
from frywright.trial.prove_again import again_line
from frywright.web.app import Context
from frywright.web.forms import CookForm
from frywright.web.posted import Typed
from frywright.web.rates import InTurn
from frywright.web.routes import Routes
from frywright.web.saving import ask_name
from frywright.web.saving import save as save_as
from frywright.web.written import view_json


def _again(context: Context, form: CookForm, request: Request) -> str:
    """That the saved program must be proved again, if it must."""
    if form.program_name not in form.names:
        return ""
    translate = context.tr(request)
    return again_line(form.kitchen, form.kitchen.program(form.program_name), translate)


def _life(context: Context, form: CookForm, request: Request) -> LifeShown | None:
    """Where the saved program stands."""
    if form.program_name not in form.names:
        return None
    program = form.kitchen.program(form.program_name)
    life = life_of_program(context.store, form.kitchen, program)
    return life_shown(form.kitchen, program, life, context.tr(request))


def router(context: Context) -> Routes:
    """Routes of the room."""
    routes = Routes()
    _add_answers(routes, context)
    _add_keeping(routes, context)
    return routes


def _view(context: Context, request: Request, form: CookForm) -> CookView:
    """The answer to what is typed, and whether somebody must answer for the program."""
    kitchen, asked = form.kitchen, form.request()
    answer = ask(kitchen, asked)
    system, translate = kitchen.site.units, context.tr(request)
    if asked == CookRequest(program=asked.program):
        shown = own = with_probing(kitchen, asked.program, answer.facts)
    else:
        shown, own = answer.facts, program_facts(kitchen, asked.program)
    view = cook_view(answer, system, translate, shown)
    return replace(view, locked=answer.facts.short or own.short, saved=_saved(form, asked, translate))


def _saved(form: CookForm, asked: CookRequest, translate: Translate) -> SavedView | None:
    """The version saved under the stages typed, on the same load, where they differ and it can run."""
    if not form.stored or asked.program.stages == form.program.stages:
        return None
    try:
        return saved_beside(form.kitchen, replace(asked, program=form.program), translate)
    except InputError:
        return None


def _marks(context: Context, request: Request, form: CookForm, error: FrywrightError) -> dict[str, str]:
    """What is wrong in each box, by its name."""
    wrong = form.wrong(error) if isinstance(error, InputError) else {}
    return {box: context.explain(request, said) for box, said in wrong.items()}


def _page(
    context: Context, request: Request, form: CookForm, refused: FrywrightError | None = None
) -> Response:
    """The room with what is typed: its answer, or what is wrong and where (``refused``: why not kept)."""
    view = None
    try:
        view = _view(context, request, form)
    except FrywrightError as error:
        refused = error
    return context.render(
        request,
        "cook/cook.html",
        error=refused,
        room="cook",
        form=form,
        view=view,
        wrong=_marks(context, request, form, refused) if refused else {},
        again=_again(context, form, request),
        life=_life(context, form, request),
    )


def _live(context: Context, request: Request) -> Response:
    """The answer to an edit, or what is wrong in which box."""
    form = CookForm(context.kitchen, request.query_params)
    try:
        return view_json(_view(context, request, form))
    except InputError as error:
        told = {"ok": False, "error": "InputError", "message": context.explain(request, error)}
        marks = _marks(context, request, form, error)
        return JSONResponse({**told, "box": form.box_of(error), "boxes": marks}, error.http_status)


def _add_answers(routes: Routes, context: Context) -> None:
    @routes.get("/cook")
    def page(request: Request) -> Response:
        form = CookForm(context.kitchen, request.query_params)
        if not form.names:
            return RedirectResponse("/setup/first", 303)
        return _page(context, request, form)

    edits = InTurn()

    @routes.get("/cook/view.json")
    async def live(request: Request) -> Response:
        return await edits.run(partial(_live, context, request))

    @routes.get("/cook/chart.svg")
    def chart(request: Request) -> Response:
        form = CookForm(context.kitchen, request.query_params)
        tr = context.tr(request)
        words = {"oil": tr("oil"), "minutes": tr("minutes since the drop"), "pressure": tr("gauge")}
        return context.picture(request, svg(cook_spec(_view(context, request, form).picture, words)))


def _add_keeping(routes: Routes, context: Context) -> None:
    @routes.post("/cook/keep")
    def keep(request: Request, typed: Typed) -> Response:
        form = CookForm(context.kitchen, typed)
        try:
            answer = ask(form.kitchen, form.request())
            recorded = keep_simulation(context.store, form.kitchen, answer, form.answerer())
        except InputError as error:
            return _page(context, request, form, error)
        return RedirectResponse(f"/records?new={recorded.number}", 303)

    @routes.post("/cook/save")
    def save(request: Request, typed: Typed) -> Response:
        form = CookForm(context.kitchen, typed)
        try:
            program = form.edited()
            seen = ask(form.kitchen, form.request()).facts
        except InputError as error:
            return _page(context, request, form, error)
        if "as" not in typed and not form.stored:
            return ask_name(context, request, form.kitchen, program, typed, "/cook/save", None, seen)
        return save_as(
            context, request, form.kitchen, program, {"as": form.base, **typed}, "/cook/save", seen
        )
