"""The desk's paper and what is checked by it: cards, slots, read-back."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any
from urllib.parse import quote

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.design.controller import Keyed
from frywright.design.slots import sharing, slots_of
from frywright.model.errors import FrywrightError, InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import tongues
from frywright.rooms.clock import now
from frywright.rooms.cook import slots
from frywright.rooms.cook.cards import card_data, card_pdf, site_cards_pdf
from frywright.rooms.cook.compare import read_back, value_names
from frywright.rooms.cook.desk import clock_sentence
from frywright.rooms.cook.life import approvals, keep_card, keep_cards
from frywright.rooms.cook.programs import keep_print, record_readback
from frywright.rooms.cook.view import cook_view
from frywright.rooms.standing import slot_of, told_slots
from frywright.trial.effect import effect_view
from frywright.trial.machine import settings_of
from frywright.trial.predicted import NOBODY, Answerer, program_facts, refuse_short, show_facts
from frywright.trial.prove_again import again_line
from frywright.voice.tongue import translator
from frywright.web.app import Context
from frywright.web.forms import whole_number
from frywright.web.posted import Typed
from frywright.web.routes import Routes

PDF = "application/pdf"
ASKED = {
    "scale": "The display shows",
    "clock": "The clock counts",
    "clock during the vent": "During the vent the clock",
}
"""How the read-back asks for what every control has."""


def add_paper(routes: Routes, context: Context, kitchen: Callable[[], Any]) -> None:
    """Cards, one or all."""

    def one(request: Request, program: str, slot: int, who: Answerer) -> Response:
        language, found = context.language(request), kitchen().program(program)
        tr = translator(language)
        slot = slot or slot_of(context.store, kitchen(), found)
        shared = sharing(kitchen(), found, slot, told_slots(context.store))
        approved = approvals(context.store, kitchen()).get(found.name)
        return _paper(
            context,
            request,
            [found],
            lambda place, who: card_pdf(card_data(place, found, slot, language, tr, who, shared, approved)),
            who,
        )

    def every(request: Request, both: bool, who: Answerer) -> Response:
        place = kitchen()
        translators = {n: translator(n) for n in (tongues() if both else [context.language(request)])}
        programs = [place.program(name) for name in sorted({p.name for p in place.own_programs})]
        held, approved = told_slots(context.store), approvals(context.store, place)
        return _paper(
            context,
            request,
            programs,
            lambda place, who: site_cards_pdf(place, translators, who, held, approved),
            who,
        )

    @routes.get("/cook/card.pdf")
    def card(request: Request, program: str, slot: int = 0) -> Response:
        return one(request, program, slot, NOBODY)

    @routes.post("/cook/card.pdf")
    def short_card(request: Request, form: Typed, program: str, slot: int = 0) -> Response:
        return one(request, program, slot, _answerer(form))

    @routes.get("/cook/cards.pdf")
    def cards(request: Request, both: bool = False) -> Response:
        return every(request, both, NOBODY)

    @routes.post("/cook/cards.pdf")
    def every_card(request: Request, form: Typed, both: bool = False) -> Response:
        answer = every(request, both, _answerer(form))
        if answer.status_code == 200:
            place = kitchen()
            keep_cards(context.store, place, {p.name for p in place.own_programs})
        return answer

    _add_slots(routes, context, kitchen)


def _add_slots(routes: Routes, context: Context, kitchen: Callable[[], Any]) -> None:
    def asked(request: Request, program: str, wanted: int = 0, status: int = 200) -> Response:
        place = kitchen()
        found = place.program(program)
        told = told_slots(context.store)
        told = {**told, found.name: wanted} if wanted else told
        fryer, held = place.fryer(found.fryer), slots_of(place, found.fryer, told)
        rows = [
            {"slot": n, "names": [name for name, slot in held.items() if slot == n and name != found.name]}
            for n in range(1, fryer.controller.slot_count + 1)
        ]
        slot = held[found.name]
        values = {"program": found, "fryer": fryer, "rows": rows, "slot": slot}
        shared = (
            slots.held_in(context.store, place, found, slot) if wanted else sharing(place, found, slot, told)
        )
        confirm = bool(wanted)
        return context.render(
            request, "cook/print_card.html", status, room="desk", shared=shared, confirm=confirm, **values
        )

    @routes.get("/cook/card")
    def choose(request: Request, program: str) -> Response:
        return asked(request, program)

    @routes.post("/cook/card")
    def tell(request: Request, form: Typed) -> Response:
        place = kitchen()
        found, slot = place.program(str(form.get("program", ""))), _slot(str(form.get("slot", "")))
        others = slots.held_in(context.store, place, found, slot)
        if others and place.fryer(found.fryer).controller.slot_count > 1 and not form.get("overwrite"):
            return asked(request, found.name, slot, 409)
        with context.store.writing():
            slots.tell_slot(context.store, place, found, slot)
            keep_card(context.store, found, slot)
        return RedirectResponse(f"/cook/card.pdf?program={quote(found.name)}&slot={slot}", 303)


def _paper(
    context: Context,
    request: Request,
    programs: list[Program],
    make: Callable[[Kitchen, Answerer], bytes],
    who: Answerer,
) -> Response:
    """The paper; where something on it is predicted short, the page that asks who answers for it."""
    place, language = context.kitchen, context.language(request)
    system, tr = place.site.units, translator(language)
    told = [(p, show_facts(program_facts(place, p), system, tr)) for p in programs]
    short = [(p, facts) for p, facts in told if facts.short]
    try:
        data = make(place, who)
        keep_print(context.store, place, programs, who)
    except InputError as error:
        if not short:
            raise
        return context.render(request, "cook/short.html", room="desk", short=short, who=who, error=error)
    return Response(data, media_type=PDF)


def _answerer(form: Mapping[str, Any]) -> Answerer:
    return Answerer(by=str(form.get("by", "")), reason=str(form.get("reason", "")))


def _slot(text: str) -> int:
    return whole_number(text, "slot") or 1


def add_readback(routes: Routes, context: Context, kitchen: Callable[[], Any]) -> None:
    """Two people read a machine back, blind to the card."""

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
            "asked": ASKED,
            "typed": typed,
            "started_at": str(typed.get("started_at", "")) or now().isoformat(),
            "result": None,
            "problem": refused,
            "again": again_line(place, found, context.tr(request)),
            "wrong": "",
            **more,
        }
        return context.render(request, "cook/readback.html", status, room="desk", **values)

    @routes.get("/cook/readback")
    def ask(request: Request, program: str, slot: str = "") -> Response:
        place = kitchen()
        found = place.program(program)
        return shown(request, found, _slot(slot) if slot else slot_of(context.store, place, found), {})

    @routes.post("/cook/readback")
    def compare(request: Request, form: Typed) -> Response:
        place = kitchen()
        found, slot = place.program(form.get("program", "")), _slot(form.get("slot", ""))
        names = value_names(place, found, slot)
        try:
            read = [form.get(f"v{i}", "") for i in range(len(names))]
            settings = {s.key: form.get(s.key, "") for s in settings_of(place, found)}
            result = read_back(place, found, slot, read, settings)
            people = (form.get("read_by", ""), form.get("checked_by", ""))
            record_readback(context.store, found, slot, result, people, form.get("started_at", ""))
        except FrywrightError as error:
            wrong = _wrong_box(error, names, form) if isinstance(error, InputError) else ""
            return shown(request, found, slot, form, wrong=wrong, error=error)
        tr = context.tr(request)
        effect = effect_view(result.effect, place.site.units, tr) if result.effect else None
        keyed = ""
        if result.consequence:
            keyed = cook_view(result.consequence, place.site.units, tr).clock.sentence
        elif result.matches:
            keyed = clock_sentence(place, found, tr)
        return shown(request, found, slot, form, result=result, effect=effect, keyed=keyed)


def _wrong_box(error: InputError, names: Sequence[Keyed], form: Mapping[str, str]) -> str:
    """Box of the read-back that an error speaks of; empty where it is none of them."""
    if error.field in form:
        return error.field
    places = {(v.what, f"stage {v.stage}" if v.stage else ""): f"v{i}" for i, v in enumerate(names)}
    return "checked_by" if error.field == "people" else places.get((error.field, error.where), "")
