"""Programs on paper: cards."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from frywright.design.controller import BLANK, Rendered, render, rounded
from frywright.design.slots import sharing, slots_of
from frywright.model.findings import say
from frywright.model.food import counted
from frywright.model.fryer import Controller, TempUnit
from frywright.model.kitchen import Kitchen
from frywright.model.program import Answered, Program
from frywright.model.tongues import Translate
from frywright.model.units import clock, show
from frywright.paper.chart import card_spec, svg
from frywright.paper.paper import pdf
from frywright.rooms.clock import now
from frywright.rooms.cook.view import cook_view
from frywright.trial.ask import CookAnswer, CookRequest, ask
from frywright.trial.naming import altitude_words, away_words, mass_words
from frywright.trial.predicted import (
    NOBODY,
    Answerer,
    FactsShown,
    amount_of,
    answered,
    show_facts,
    with_failed_proof,
    with_probing,
)
from frywright.trial.prove_again import again_line
from frywright.verdicts.facts import Facts, Prediction

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
LOAD = "Load at most {count} × {unit} ({mass}), each {each}, {start_c} at the drop."
AFTER = "Drain {drain}. Hold at most {hold} min."
RULES = {
    True: "A row starts when the clock shows its time left. Key the total, then these times.",
    False: "A row starts when the time since the drop is as shown. Key the time at which it ends.",
}
"""The one rule for rows, by whether the clock counts down: each begins at its time."""
MINUTES = "Times are minutes:seconds."
APPROVED = "Approved by {by}, {at}."
SAVED = "Saved by {by}, {at}. Approved by ____________"
UNSIGNED = "Approved by ____________ on ____________"
FOOT = "The maker's manual and local codes win. A changed program makes this card void: compare the version."

SHARED = "The same slot also has:"


@dataclass(frozen=True, slots=True, kw_only=True)
class Approved:
    """Who stands behind a version of a program and since when: put it in service, or else saved it."""

    by: str
    at: str
    in_service: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class CardWords:
    """Words beside a card's figures."""

    check: str
    slot: str
    version: str
    total: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Cautions:
    """Cautions at the step where they bite; none for a lid that stays open."""

    drop: str
    lid: str
    lift: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CardView:
    """Everything on a card, in a language; ``rows`` are the cells of the table of stages below ``header``."""

    title: str
    paper: str
    language: str
    product: str
    fryer: str
    program: str
    place: str
    again: str
    slot: str
    version: str
    date: str
    replaces: str
    figure: str
    shared: str
    words: CardWords
    header: list[str]
    rows: list[list[str]]
    rule: str
    load: str
    after: str
    approved: str
    total: str
    lift: str
    banner: str
    facts: FactsShown
    stamp: str
    foot: str
    cautions: Cautions
    curve: str  # SVG
    alt: str


def card_data(
    kitchen: Kitchen,
    program: Program,
    slot: int,
    language: str,
    translate: Translate,
    who: Answerer = NOBODY,
    shared: Sequence[str] = (),
    approved: Approved | None = None,
) -> CardView:
    """Everything on a card, in a language. The rounded program is what is simulated and drawn; ``shared`` are
    other programs of the slot, ``approved`` who stands behind this version.

    It carries what is predicted and what is proven; a program predicted short has SHORT across it and who
    answers for it. Raises InputError: the fryer's controller cannot hold the program, or it is predicted
    short and nobody answers for it.
    """
    fryer = kitchen.fryer(program.fryer)
    keyed = render(program, fryer.controller, slot)
    fitted = rounded(program, fryer.controller)
    answer = ask(kitchen, CookRequest(program=fitted))
    system = kitchen.site.units
    facts = with_probing(kitchen, program, with_failed_proof(kitchen, program, answer.facts))
    lock = answered(kitchen, program, who, facts)
    view = cook_view(answer, system, translate)
    words = {
        "oil": translate("oil"),
        "minutes": translate("minutes since the drop"),
        "pressure": translate("gauge"),
    }
    version = program.version
    return CardView(
        title=f"{program.name} v{version}",
        paper="us-letter" if kitchen.site.units == "us" else "a4",
        language=language,
        product=kitchen.product(program.product).name,
        fryer=fryer.name,
        program=program.name,
        place=place_line(kitchen, program, translate),
        again=again_line(kitchen, program, translate),
        slot=str(slot),
        version=str(version),
        date=now().date().isoformat(),
        replaces=f"{translate('replaces version')} {version - 1}" if version > 1 else "",
        figure=keyed.figure,
        shared=f"{translate(SHARED)} {', '.join(shared)}" if shared else "",
        words=CardWords(
            check=translate("check figure"),
            slot=translate("slot"),
            version=translate("version"),
            total=translate("total time"),
        ),
        header=_header(fryer.controller, translate),
        rows=_rows(keyed, fryer.controller.clock.counts_down, translate),
        rule=f"{translate(RULES[fryer.controller.clock.counts_down])} {translate(MINUTES)}",
        load=load_line(kitchen, answer, translate),
        after=translate(AFTER).format(drain=clock(program.drain_s), hold=f"{program.hold_life_s / 60.0:.4g}"),
        approved=_approved(approved, translate),
        total=view.clock.total,
        lift=view.clock.sentence,
        banner=_banner(facts, lock, system, translate),
        facts=show_facts(facts, system, translate),
        stamp=say(SHORT, {"amount": amount_of(facts, system)}, system, translate) if lock else "",
        foot=translate(FOOT),
        cautions=Cautions(
            drop=translate(CAUTIONS["drop"]),
            lid=translate(CAUTIONS["lid"]) if program.under_pressure else "",
            lift=translate(CAUTIONS["lift"]),
        ),
        curve=svg(card_spec(view.picture, words)),
        alt=view.headline.sentence,
    )


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
    home = f"{kitchen.site.name}, {altitude_words(kitchen.site.altitude_m, kitchen.site.units)}"
    away = ", ".join(away_words(kitchen, program, translate))
    if not away:
        return home
    if kitchen.belongs(program):
        return f"{home}, {away}"
    return translate("For {place}. Not for {home}.").format(place=away, home=home)


def load_line(kitchen: Kitchen, answer: CookAnswer, translate: Translate) -> str:
    """The load a card is for: how many at most, their mass, the mass of one, how cold."""
    plan, system = answer.plan, kitchen.site.units
    values = {
        "count": counted(plan.units_count, plan.cut_set.unit),
        "unit": plan.cut_set.unit,
        "mass": show(plan.load_kg, "kg", system),
        "each": mass_words(plan.program.unit_mass_kg or kitchen.unit_kg(plan.program.product), system),
        "start_c": plan.product.start_temp_c,
    }
    return say(LOAD, values, system, translate)


def _approved(approved: Approved | None, translate: Translate) -> str:
    """Who stands behind a version and since when; a line to sign where nobody does yet."""
    if approved is None:
        return translate(UNSIGNED)
    text = APPROVED if approved.in_service else SAVED
    return translate(text).format(by=approved.by, at=approved.at)


def _header(controller: Controller, translate: Translate) -> list[str]:
    sign = "°F" if controller.shows is TempUnit.F else "°C"
    times = ["time left"] if controller.clock.counts_down else ["time since the drop", "key: it ends at"]
    return [
        translate("stage"),
        f"{translate('set point')} ({sign})",
        *(translate(text) for text in times),
        translate("lid"),
    ]


def _rows(keyed: Rendered, counts_down: bool, translate: Translate) -> list[list[str]]:
    """A row for each stage with the time at which it begins; counting up, also the time keyed."""
    rows, starts = [], "0:00"
    total = next((v.text for v in keyed.values if v.what == "total"), "")
    for stage in sorted({v.stage for v in keyed.values if v.stage}):
        cells = {v.what: v for v in keyed.values if v.stage == stage}
        time = cells["time"].text if "time" in cells else total
        times = [time] if counts_down else [starts if cells.get("lid") else BLANK, time]
        starts = time
        lid = cells.get("lid")
        text = ""
        if lid:
            word = translate("open" if lid.text == "open" else "under pressure")
            text = f"{word} ({translate('by hand')})" if lid.by_crew and lid.text == "pressure" else word
        rows.append([str(stage), cells["set"].text, *times, text])
    return rows


def card_pdf(card: CardView) -> bytes:
    """The card as a one-page PDF."""
    return pdf("card.typ", "cards", [card])


def site_cards_pdf(
    kitchen: Kitchen,
    languages: dict[str, Translate],
    who: Answerer = NOBODY,
    told: Mapping[str, int] | None = None,
    approved: Mapping[str, Approved] | None = None,
) -> bytes:
    """Cards of the newest version of every program for this kitchen, in each language given, as one PDF; each
    in its own slot where there is one.
    """
    cards = []
    for name in sorted({p.name for p in kitchen.own_programs}):
        program = kitchen.program(name)
        slot = slots_of(kitchen, program.fryer, told)[name]
        shared = sharing(kitchen, program, slot, told)
        by = (approved or {}).get(name)
        cards += [
            card_data(kitchen, program, slot, lang, tr, who, shared, by) for lang, tr in languages.items()
        ]
    return pdf("card.typ", "cards", cards)
