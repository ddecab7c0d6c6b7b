"""Loads of a kitchen's products with their evidence, and what is said of products before a day is planned."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import lru_cache
from math import ceil

import numpy as np

from frywright.catalog.capacity import most_units
from frywright.model.business_day import trade_of
from frywright.model.errors import InputError, Phrase
from frywright.model.findings import Note, Outcome
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.trade import Sell, Trade
from frywright.plan.forecast import Forecaster
from frywright.plan.model import Item, LoadSize
from frywright.trial.ask import CookRequest, ask


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadFact:
    """One load as the cook engine sees it: times, energy, and what the evidence says of it. ``lift_s`` is
    from drop to lift, as the card says; ``cook_s`` keeps the fryer until the load has drained.
    """

    product: str
    fryer: str
    program: str
    version: int
    units_n: float
    pieces_count: int
    load_kg: float
    lift_s: float
    cook_s: float
    vent_start_s: float | None
    recovery_s: float
    heat_kwh: float
    batch_money: float
    outcome: Outcome
    margin_k: float | None


def load_facts(kitchen: Kitchen, sell: Sell, serving: Collection[str] = ()) -> list[LoadFact]:
    """Every load of a product on every fryer that has a program for it, simulated; those that fail the limit
    are told by the caller. Where a product has programs in service, no other of its programs is used. A share
    is of what the fryer's plate takes by count and by mass, or of the program's own load where that is less.
    """
    found = []
    product = kitchen.product(sell.product)
    per_unit, names = (
        kitchen.pieces_per_unit(sell.product),
        {p.name for p in kitchen.own_programs if p.product == sell.product},
    )
    unit_kg, cut_set = kitchen.unit_kg(sell.product), kitchen.cut_set(product.cut_set)
    for name in sorted(names & set(serving) or names):
        program = kitchen.program(name)
        fryer = kitchen.fryer(program.fryer)
        most = most_units(fryer, cut_set, unit_kg)
        full = 1.001 * min(most, program.load_heads or most)
        sizes = sorted({max(1, min(round(share * full), int(full))) for share in sell.load_shares_frac})
        for units in sizes:
            if units <= full and units * unit_kg >= fryer.min_load_kg - 1e-9:
                found.append(_fact(kitchen, program, fryer, float(units), units * per_unit))
    return found


def _fact(kitchen: Kitchen, program: Program, fryer: Fryer, units: float, count: int) -> LoadFact:
    answer = _asked(kitchen, program, units)
    history, trade = answer.history, trade_of(kitchen)
    worst = answer.verdicts[0][1]
    oil = float(np.interp(history.lift_s, history.time_s, history.oil_c))
    first = program.stages[0].set_c - fryer.offset_k
    spare = fryer.heater_w - fryer.loss_w_k * (first - kitchen.site.room_temp_c)
    cp = history.plan.oil.cp_0c_j_kgk + history.plan.oil.cp_slope_j_kgk2 * first
    heat = (fryer.oil_mass_kg * cp + fryer.metal_heat_j_k) * max(first - oil, 0.0)
    money = (
        trade.handling_money
        + history.heat_kwh * trade.kwh_money
        + max(history.uptake_kg - history.rendered_kg, 0.0) * trade.oil_kg_money
    )
    return LoadFact(
        product=program.product,
        fryer=fryer.key,
        program=program.name,
        version=program.version,
        units_n=units,
        pieces_count=count,
        load_kg=history.plan.load_kg,
        lift_s=history.lift_s,
        cook_s=history.lift_s + program.drain_s,
        vent_start_s=history.vent_start_s,
        recovery_s=heat / max(spare, 100.0),
        heat_kwh=history.heat_kwh,
        batch_money=money,
        outcome=worst.outcome,
        margin_k=worst.margin_k,
    )


@lru_cache(maxsize=512)
def _asked(kitchen: Kitchen, program: Program, units: float):  # type: ignore[no-untyped-def]
    return ask(kitchen, CookRequest(program=program, units_count=units))


def item_of(
    kitchen: Kitchen,
    sell: Sell,
    trade: Trade,
    places: Mapping[str, int],
    notes: list[Note],
    serving: Collection[str] = (),
) -> tuple[Item, tuple[LoadFact, ...]]:
    """A product as the engine sees it, beside its loads; what is left out is added to ``notes``."""
    facts = []
    for fact in load_facts(kitchen, sell, serving):
        short = fact.outcome is Outcome.FAILS or (fact.margin_k is not None and fact.margin_k < 0)
        values: dict[str, float | str] = {"program": fact.program, "pieces": float(fact.pieces_count)}
        if short:
            notes.append(
                Note(
                    kind="left_out",
                    text=(
                        "{program}: a load of {pieces} pieces does not reach the limit and is left out of the"
                        " plan."
                    ),
                    values=values,
                )
            )
        else:
            facts.append(fact)
    if not facts:
        raise InputError(
            "program",
            Phrase("none for {product}", {"product": sell.product}),
            "one whose loads reach the limit",
            where=kitchen.site.name,
        )
    facts.sort(key=lambda f: (f.pieces_count, f.cook_s))
    if any(f.outcome is Outcome.UNKNOWN and f.program not in serving for f in facts):
        notes.append(
            Note(
                kind="scouting",
                text=(
                    "Loads of {product} are planned on simulations that no probe log supports yet: unknown"
                    " until probed."
                ),
                values={"product": kitchen.product(sell.product).name},
            )
        )
    loads = tuple(
        LoadSize(
            units_count=f.pieces_count,
            cook_slots_count=ceil(f.cook_s / trade.slot_s),
            recovery_slots_count=max(
                0, ceil((f.cook_s + f.recovery_s) / trade.slot_s) - ceil(f.cook_s / trade.slot_s)
            ),
            batch_money=f.batch_money,
            fryers=(places[f.fryer],),
        )
        for f in facts
    )
    hold = min(kitchen.program(f.program).hold_life_s for f in facts)
    name = kitchen.product(sell.product).name
    return Item(
        name=name,
        loads=loads,
        hold_slots_count=max(1, int(hold // trade.slot_s)),
        life_n=hold / trade.slot_s,
        short_money=sell.margin_money,
        waste_money=sell.cost_money,
    ), tuple(facts)


def unsold(kitchen: Kitchen, known: Forecaster) -> list[Note]:
    """Products of the menu that are forecast as none, and why."""
    why = (
        (known.fresh, "{product} has no sales yet: cook it to order today, and it is planned from tomorrow."),
        (
            known.away,
            "{product} has not sold for {days} days and is not planned. Cook it to order, or take it off the"
            " menu; after its next sale it is planned again.",
        ),
    )
    return [
        Note(
            kind="unsold",
            text=text,
            values={"product": kitchen.product(sell.product).name, "days": float(known.silent_n[n])},
        )
        for which, text in why
        for n, sell in enumerate(kitchen.sells)
        if which[n]
    ]


def shared_oil(kitchen: Kitchen) -> list[Note]:
    """What products take up from others in the same oil: proteins stay in it, so nothing from it is free of
    them.
    """
    notes, sold = [], {s.product for s in kitchen.sells}
    for fryer in kitchen.fryers:
        products = {p.product for p in kitchen.programs if p.fryer == fryer.key and p.product in sold}
        carried = {a for key in products for a in kitchen.allergens(key)}
        takes: dict[tuple[str, ...], list[str]] = {}
        for key in sorted(products):
            taken = tuple(sorted(carried - kitchen.allergens(key)))
            takes.setdefault(taken, []).append(kitchen.product(key).name)
        notes += [
            Note(
                kind="shared_oil",
                text=(
                    "{fryer} shares its oil: {product} takes up {allergens} from what else is fried in it;"
                    " claim nothing free of them."
                ),
                values={"fryer": fryer.name, "product": ", ".join(names), "allergens": taken},
            )
            for taken, names in takes.items()
            if taken
        ]
    return notes
