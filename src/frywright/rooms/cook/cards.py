"""Programs on paper: cards."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from typing import Any

from frywright.design.controller import Rendered, render, rounded
from frywright.design.slots import sharing, slots_of
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Answered, Program
from frywright.paper.chart import card_spec, svg
from frywright.paper.paper import pdf
from frywright.rooms.clock import now
from frywright.rooms.cook.view import cook_view
from frywright.trial.ask import CookRequest, ask
from frywright.trial.naming import altitude_words, away_words
from frywright.trial.predicted import (
    NOBODY,
    Answerer,
    amount_of,
    answered,
    show_facts,
    with_failed_proof,
    with_probing,
)
from frywright.trial.prove_again import again_line
from frywright.verdicts.facts import Facts, Prediction

Translate = Callable[[str], str]
NOT_FOR_SERVICE = "Not for service until the coldest pieces are probed and the limit is met."
SHORT = "SHORT BY {amount}"
"""Stamp across the card of a program that is predicted short."""
SHORT_CARD = "SHORT: not for service. {predicted} Printed for {by}, who answers for it: {reason}"
CAUTIONS = {
    "drop": "Thaw fully, shake off ice, lower slowly: wet or iced food makes hot oil boil over and burn.",
    "lid": (
        "Close and lock the lid as the maker says. Open only at zero on the gauge and a silent vent: steam"
        " scalds. The timer is no proof. Never force a lid."
    ),
    "lift": "Drain over the vat, sleeves and gloves on: hot oil burns. Probe the coldest piece.",
}
FOOT = "The maker's manual and local codes win. A changed program makes this card void: compare the version."

SHARED = "The same slot also has:"
MANY_VALUES = 8
CURVE_MM = {False: 72, True: 58}
"""Height of the curve, smaller where many values are to be keyed, so that a card stays one page."""


def card_data(
    kitchen: Kitchen,
    program: Program,
    slot: int,
    language: str,
    translate: Translate,
    who: Answerer = NOBODY,
    shared: Sequence[str] = (),
) -> dict[str, Any]:
    """Everything on a card, in a language. The rounded program is what is simulated and drawn; ``shared`` are
    other programs of the slot.

    It carries what is predicted and what is proven; a program predicted short has SHORT across it and who
    answers for it.

    Raises
    ------
    InputError
        The fryer's controller cannot hold the program, or it is predicted short and nobody answers for it.
    """
    fryer = kitchen.fryer(program.fryer)
    keyed = render(program, fryer.controller, slot)
    fitted = rounded(program, fryer.controller)
    answer = ask(kitchen, CookRequest(program=fitted))
    system = str(kitchen.site.units)
    facts = with_probing(kitchen, program, with_failed_proof(kitchen, program, answer.facts))
    lock = answered(kitchen, program, who, facts)
    view = cook_view(answer, system, translate)
    words = {
        "oil": translate("oil"),
        "minutes": translate("minutes since the drop"),
        "pressure": translate("gauge"),
    }
    sign = "°F" if str(fryer.controller.shows) == "f" else "°C"
    when = "time left" if fryer.controller.clock.counts_down else "time since the drop"
    version = program.version
    return {
        "title": f"{program.name} v{version}",
        "paper": "us-letter" if str(kitchen.site.units) == "us" else "a4",
        "language": language,
        "product": kitchen.product(program.product).name,
        "fryer": fryer.name,
        "program": program.name,
        "place": place_line(kitchen, program, translate),
        "again": again_line(kitchen, program, translate),
        "slot": str(slot),
        "version": str(version),
        "date": now().date().isoformat(),
        "replaces": f"{translate('replaces version')} {version - 1}" if version > 1 else "",
        "figure": keyed.figure,
        "shared": f"{translate(SHARED)} {', '.join(shared)}" if shared else "",
        "words": {
            "check": translate("check figure"),
            "slot": translate("slot"),
            "version": translate("version"),
            "total": translate("total time"),
        },
        "header": [
            translate("stage"),
            f"{translate('set point')} ({sign})",
            translate(when),
            translate("lid"),
        ],
        "rows": _rows(keyed, translate),
        "total": view["clock"]["total"],
        "lift": view["clock"]["sentence"],
        "banner": _banner(facts, lock, system, translate),
        "facts": asdict(show_facts(facts, system, translate)),
        "stamp": say(SHORT, {"amount": amount_of(facts, system)}, system, translate) if lock else "",
        "foot": translate(FOOT),
        "cautions": {
            k: translate(v) if k != "lid" or program.under_pressure else "" for k, v in CAUTIONS.items()
        },
        "curve": svg(card_spec(view, words)),
        "curve_mm": CURVE_MM[len(keyed.values) > MANY_VALUES],
        "alt": view["headline"]["sentence"],
    }


def _banner(facts: Facts, lock: Answered | None, system: str, translate: Translate) -> str:
    """One of three states, predicted but not proven, no rule here, proven; or the lock of a short one."""
    told = show_facts(facts, system, translate)
    if lock:
        values = {"predicted": told.predicted, "by": lock.by, "reason": lock.reason}
        return say(SHORT_CARD, values, system, translate)
    if facts.prediction is Prediction.NO_RULE or facts.proven:
        return f"{told.predicted} {told.evidence}" if facts.proven else told.predicted
    return f"{told.predicted} {translate('Not proven yet.')} {translate(NOT_FOR_SERVICE)}"


def place_line(kitchen: Kitchen, program: Program, translate: Translate) -> str:
    """Which kitchen, altitude, bird and load a program is for, in words."""
    home = f"{kitchen.site.name}, {altitude_words(kitchen.site.altitude_m, str(kitchen.site.units))}"
    away = ", ".join(away_words(kitchen, program, translate))
    if not away:
        return home
    if kitchen.belongs(program):
        return f"{home}, {away}"
    return translate("For {place}. Not for {home}.").format(place=away, home=home)


def _rows(keyed: Rendered, translate: Translate) -> list[list[str]]:
    rows = []
    for stage in sorted({v.stage for v in keyed.values if v.stage}):
        cells = {v.what: v for v in keyed.values if v.stage == stage}
        lid = cells.get("lid")
        text = ""
        if lid:
            word = translate("open" if lid.text == "open" else "under pressure")
            text = f"{word} ({translate('by hand')})" if lid.by_crew and lid.text == "pressure" else word
        rows.append([str(stage), cells["set"].text, cells["time"].text if "time" in cells else "", text])
    return rows


def card_pdf(
    kitchen: Kitchen,
    program: Program,
    slot: int,
    language: str,
    translate: Translate,
    who: Answerer = NOBODY,
    shared: Sequence[str] = (),
) -> bytes:
    """The card as a one-page PDF."""
    return pdf("card.typ", "cards", [card_data(kitchen, program, slot, language, translate, who, shared)])


def site_cards_pdf(
    kitchen: Kitchen,
    languages: dict[str, Translate],
    who: Answerer = NOBODY,
    told: Mapping[str, int] | None = None,
) -> bytes:
    """Cards of the newest version of every program for this kitchen, in each language given, as one PDF; each
    in its own slot where there is one.
    """
    cards = []
    for name in sorted({p.name for p in kitchen.own_programs}):
        program = kitchen.program(name)
        slot = slots_of(kitchen, program.fryer, told)[name]
        shared = sharing(kitchen, program, slot, told)
        cards += [card_data(kitchen, program, slot, lang, tr, who, shared) for lang, tr in languages.items()]
    return pdf("card.typ", "cards", cards)
