"""Saving a program from a page: under which name, on which version, and what to say when that cannot be."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any
from urllib.parse import quote

from fastapi import Request, Response
from fastapi.responses import RedirectResponse

from frywright.design.difference import changes
from frywright.ledger.facts.cook import Origin
from frywright.model.errors import FrywrightError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.rooms.cook.programs import Overtaken, save_program
from frywright.trial.naming import away_words, chosen, follows, new_name
from frywright.trial.predicted import Answerer, program_facts
from frywright.verdicts.facts import Facts
from frywright.web.app import Context

ASKED = ("as", "name", "by", "reason")
"""Boxes of the form that saves; everything else typed is sent along."""


def save_choices(
    kitchen: Kitchen, program: Program, *seen: Facts, translate: Translate = str
) -> dict[str, Any]:
    """What a page needs to ask for a name: the programs this may follow, a new name, where it belongs,
    whether somebody must answer for it.
    """
    short = any(facts.short for facts in (program_facts(kitchen, program), *seen))
    place = ", ".join(away_words(kitchen, program, translate))
    return {
        "follows": follows(kitchen, program),
        "new_name": new_name(kitchen, program),
        "place": place,
        "short": short,
    }


def ask_name(
    context: Context,
    request: Request,
    kitchen: Kitchen,
    program: Program,
    form: Mapping[str, str],
    action: str,
    error: FrywrightError | None,
    *seen: Facts,
) -> Response:
    """The page that asks how to save a program; with an error it says what stood in the way and what has
    changed since.
    """
    since: list[Any] = []
    if isinstance(error, Overtaken):
        since = list(changes(error.base, error.newest, kitchen.site.units))
    values: dict[str, Any] = {
        "hidden": {k: v for k, v in form.items() if k not in ASKED},
        "action": action,
        "since": since,
        "overtaken": error if isinstance(error, Overtaken) else None,
        "save": save_choices(kitchen, program, *seen, translate=context.tr(request)),
    }
    return context.render(request, "cook/save.html", room="desk", error=error, **values)


def save(
    context: Context,
    request: Request,
    kitchen: Kitchen,
    program: Program,
    form: Mapping[str, str],
    action: str,
    *seen: Facts,
    origin: Origin | None = None,
) -> Response:
    """Save as the form says and go back to the desk; what cannot be saved is asked about again."""
    who = Answerer(by=form.get("by", ""), reason=form.get("reason", ""))
    try:
        made, based_on = chosen(kitchen, program, form.get("as", ""), form.get("name", ""))
        save_program(context.store, kitchen, made, who, *seen, based_on=based_on, origin=origin)
    except FrywrightError as error:
        return ask_name(context, request, kitchen, program, form, action, error, *seen)
    return RedirectResponse(f"/cook/desk?saved={quote(made.name)}", 303)
