"""What a machine would do to the food with the values it holds, beside what the card does; and what to do
now.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from frywright.catalog import load as catalog
from frywright.design.held import Held
from frywright.design.readback import Mismatch
from frywright.model.findings import Note, say
from frywright.model.fryer import CEILING_C
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import clock, show
from frywright.trial.ask import CookAnswer, CookRequest, ask
from frywright.trial.naming import crust_words

NEAR_SMOKE_K = 20.0
"""Distance to the fresh oil's smoke point from which on a set point is called hot (own estimate, as in the
notes of a simulation).
"""
HOTTER_K = 10.0
"""Set above the card's hottest from which on the oil itself is the danger (own estimate)."""
ORDERS = {
    "total": "Key the total time again: {wanted}.",
    "set": "Key the set point of stage {stage} again: {wanted}.",
    "time": "Key the time of stage {stage} again: {wanted}.",
    "lid": "Set the lid of stage {stage} again: {wanted}.",
    "scale": "Set the display to {wanted} again.",
    "clock": "Set the clock to count {wanted} again.",
    "clock during the vent": "Set the clock again: during the vent it {wanted}.",
    "setting": "Set {name} again: {wanted}.",
}
STOP = "Do not cook with this program until a new read-back matches the card."
CANNOT_RUN = "This cannot run as a program. What the machine makes of it is not known."
NOT_KNOWN = (
    "Times are missing or run backwards. What the machine does with them is not known; the worst of it is"
    " shown."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Figures:
    """What an answer says of the food: the lowest margin (None without a rule), crust and colour of the usual
    load, oil until the lift, time.
    """

    margin_k: float | None
    core_c: float
    crust_m: float
    colour_n: float
    oil_low_c: float
    oil_high_c: float
    lift_s: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """The card's figures, those of what is held (None where it cannot run), warnings about the oil, and the
    orders.
    """

    card: Figures
    held: Figures | None
    warnings: tuple[Note, ...]
    orders: tuple[Note, ...]


def figures_of(answer: CookAnswer) -> Figures:
    """Figures of an answer; margins at the earliest lift."""
    history = answer.history
    usual = [p for p in history.pieces if not p.kind.heavy]
    weights = np.array([p.kind.class_mass_kg for p in usual])
    margins = [v.margin_k for _, v in answer.verdicts if v.margin_k is not None]
    oil = history.oil_c[history.time_s <= history.earliest_lift_s + 1e-6]
    return Figures(
        margin_k=min(margins, default=None),
        core_c=history.coldest.core_at_lift_c,
        crust_m=float(np.average([p.crust_at_lift_m for p in usual], weights=weights)),
        colour_n=float(np.average([p.browning_n for p in usual], weights=weights)),
        oil_low_c=float(oil.min()),
        oil_high_c=float(oil.max()),
        lift_s=history.earliest_lift_s,
    )


def worst_answer(kitchen: Kitchen, programs: Sequence[Program]) -> CookAnswer | None:
    """The answer with the coldest food among the readings of what is held; None where there are none."""
    answers = [ask(kitchen, CookRequest(program=program)) for program in programs]
    return min(answers, key=lambda a: a.history.coldest.core_at_lift_c, default=None)


def effect_of(
    kitchen: Kitchen,
    program: Program,
    held: Held,
    answer: CookAnswer | None,
    found: Sequence[Mismatch],
    notes: Sequence[Note] = (),
) -> Effect:
    """Consequence of what is held against the card's program, and what to do now; ``notes`` are what wrong
    settings do.
    """
    card = figures_of(ask(kitchen, CookRequest(program=program)))
    warnings = [*_oil_warnings(kitchen, program, held), *notes]
    if answer is None:
        warnings.append(Note(kind="cannot_run", text=CANNOT_RUN))
    elif not held.in_order:
        warnings.append(Note(kind="not_known", text=NOT_KNOWN))
    orders = [
        Note(
            kind=m.what,
            text=ORDERS[m.what],
            values={"stage": str(m.stage), "wanted": m.wanted, "name": m.name},
        )
        for m in found
    ]
    return Effect(
        card=card,
        held=figures_of(answer) if answer else None,
        warnings=tuple(warnings),
        orders=(*orders, Note(kind="stop", text=STOP)),
    )


def _oil_warnings(kitchen: Kitchen, program: Program, held: Held) -> list[Note]:
    """Oil far hotter than the card asks, near its smoke point, or past what the fryer may reach; oil too cold
    to fry.
    """
    fryer = kitchen.fryer(program.fryer)
    smoke = catalog.oils()[fryer.oil].smoke_low_c
    hottest, usual = max(held.sets_c, default=0.0), max(stage.set_c for stage in program.stages)
    most = min(fryer.controller.highest_c, CEILING_C)
    found = []
    if hottest > most + 1e-6:
        found.append(
            Note(
                kind="past_limit",
                text="Hot oil: {set_c} is above {most_c}, the most this fryer may be set to. Do not heat it.",
                values={"set_c": hottest, "most_c": most},
            )
        )
    if smoke is not None and hottest >= smoke - NEAR_SMOKE_K - 1e-6:
        found.append(
            Note(
                kind="near_smoke",
                text=(
                    "Hot oil: at {set_c} this oil comes near its smoke point ({smoke_c} fresh, less when"
                    " used). Smoke comes before fire. Do not heat it."
                ),
                values={"set_c": hottest, "smoke_c": smoke},
            )
        )
    elif hottest > usual + HOTTER_K:
        found.append(
            Note(
                kind="hotter",
                text=(
                    "Hot oil: {set_c} is hotter than this program ever asks ({usual_c}). It burns worse and"
                    " ages the oil."
                ),
                values={"set_c": hottest, "usual_c": usual},
            )
        )
    if any(set_c < 60.0 for set_c in held.sets_c):
        found.append(
            Note(
                kind="cold_oil",
                text="{set_c} does not fry. The figures are for oil held at {least_c}; it would be worse.",
                values={"set_c": min(held.sets_c), "least_c": 60.0},
            )
        )
    return found


@dataclass(frozen=True, slots=True, kw_only=True)
class EffectRow:
    """One figure, as the card says and as the machine would make it."""

    name: str
    card: str
    held: str


@dataclass(frozen=True, slots=True, kw_only=True)
class EffectView:
    """An effect as people read it: five rows of card beside machine, warnings and orders."""

    rows: tuple[EffectRow, ...] = ()
    short: bool = False
    warnings: tuple[str, ...] = ()
    orders: tuple[str, ...] = ()


def effect_view(effect: Effect, system: str, translate: Translate = str) -> EffectView:
    """An effect in the kitchen's units and language."""
    sides = [_told(side, system, translate) for side in (effect.card, effect.held)]
    rows = tuple(
        EffectRow(name=translate(name), card=sides[0][i], held=sides[1][i])
        for i, name in enumerate(("coldest piece", "crust", "colour change", "oil", "drop to earliest lift"))
    )
    return EffectView(
        rows=rows,
        short=effect.held is None or (effect.held.margin_k is not None and effect.held.margin_k < 0),
        warnings=tuple(say(n.text, n.values, system, translate) for n in effect.warnings),
        orders=tuple(say(n.text, n.values, system, translate) for n in effect.orders),
    )


def _told(side: Figures | None, system: str, translate: Translate) -> list[str]:
    """The five figures of one side in words."""
    if side is None:
        return [translate("cannot run")] * 5
    core = show(side.core_c, "c", system)
    if side.margin_k is not None:
        text = "{spare_k} over" if side.margin_k >= 0 else "{spare_k} short"
        core += ", " + say(text, {"spare_k": abs(side.margin_k)}, system, translate)
    else:
        core += ", " + translate("no rule for this food here")
    return [
        core,
        crust_words(side.crust_m, system),
        f"{side.colour_n:.0f}",
        f"{show(side.oil_low_c, 'c', system)} – {show(side.oil_high_c, 'c', system)}",
        clock(side.lift_s),
    ]
