"""Kitchens and programs at random: any fryer, load, vent, clock, place and altitude that the model takes."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from frywright.catalog import load as catalog
from frywright.model.errors import InputError
from frywright.model.food import Product
from frywright.model.fryer import ClockStyle, Controller, Fryer, FryerKind
from frywright.model.kitchen import Kitchen, Site
from frywright.model.program import LidState, Program, Stage
from frywright.physics.inputs import ROUTINE, Precision
from frywright.physics.lift import lift_of
from frywright.physics.plan import FryPlan, make_plan, question
from frywright.physics.solve import run_many
from frywright.trial.ask import CookRequest
from frywright.verdicts.margin import margin_k
from frywright.verdicts.place import place_named

PSI_PA = 6894.757293168361
AIM_ROUNDS = 5
PLACES = ("us_food_code_2022", "us_food_code_2013", "uk")
FOODS = (
    ("chicken_8", "dredge"),
    ("chicken_10", "dredge"),
    ("tenders", "dredge"),
    ("wings", "bare"),
    ("wings", "batter"),
    ("chicken_8", "batter"),
)


@dataclass(frozen=True)
class Chance:
    """Where random values come from: ``between(low, high)`` and ``one_of(options)``."""

    between: Callable[[float, float], float]
    one_of: Callable[[Sequence[Any]], Any]


def chance_of(rng: np.random.Generator) -> Chance:
    """Values from a generator of NumPy."""
    return Chance(
        between=lambda low, high: float(rng.uniform(low, high)),
        one_of=lambda options: options[int(rng.integers(len(options)))],
    )


def fryer(chance: Chance) -> Fryer:
    """An open or a pressure fryer; its vent never told, timed, described, or so narrow that it runs long."""
    kind = chance.one_of((FryerKind.PRESSURE, FryerKind.PRESSURE, FryerKind.OPEN))
    mass = chance.between(12.0, 40.0)
    changes: dict[str, Any] = {}
    if kind is FryerKind.PRESSURE:
        vent = chance.one_of(("untold", "timed", "area"))
        if vent == "timed":
            changes["vent_s"] = chance.between(5.0, 90.0)
        if vent == "area":
            changes["vent_area_m2"] = chance.between(1.0e-5, 8.0e-5)
        changes["working_gauge_pa"] = chance.between(5.0, 14.0) * PSI_PA
        changes["zero_gauge_pa"] = chance.one_of((1000.0, 1.0 * PSI_PA))
    return Fryer(
        key="vat",
        name="vat",
        kind=kind,
        oil_mass_kg=mass,
        heater_w=mass * chance.between(250.0, 520.0),
        capacity_heads=int(mass // 6.0),
        capacity_kg=mass / 5.0,
        swing_k=chance.between(1.0, 8.0),
        proportional_k=chance.one_of((0.0, 0.0, 5.0)),
        head_volume_m3=chance.between(0.008, 0.03),
        lid_ua_w_k=chance.between(20.0, 90.0),
        loss_w_k=chance.between(2.0, 8.0),
        offset_k=chance.between(-3.0, 3.0),
        controller=Controller(stage_count=10, clock=chance.one_of(tuple(ClockStyle))),
        **changes,
    )


def stages(chance: Chance, pressure: bool, most_s: float) -> tuple[Stage, ...]:
    """One to four stages: open, or a span under pressure with open stages before and after it as it comes."""
    lids = [LidState.OPEN] * chance.one_of((1, 1, 2, 3))
    if pressure:
        before, after = chance.one_of((0, 0, 1)), chance.one_of((0, 1, 2))
        closed = [LidState.PRESSURE] * chance.one_of((1, 2))
        lids = [LidState.OPEN] * before + closed + [LidState.OPEN] * after
    whole = chance.between(0.25, 1.0) * most_s
    shares = [chance.between(0.05, 0.2) if lid is LidState.OPEN and pressure else 1.0 for lid in lids]
    made = []
    for number, (lid, share) in enumerate(zip(lids, shares, strict=True)):
        ends: dict[str, Any] = {"duration_s": whole * share / sum(shares)}
        if number == 0 and len(lids) > 1 and chance.one_of((False,) * 7 + (True,)):
            ends = {"until_oil_c": 150.0, "at_most_s": chance.between(5.0, 60.0)}
        made.append(Stage(set_c=chance.between(145.0, 185.0), lid=lid, **ends))
    return tuple(made)


def asked(chance: Chance) -> tuple[Kitchen, CookRequest]:
    """A kitchen and a question at random; a load that the fryer cannot take is halved until it can.

    No thermometer error: what is taken off a core is the engine's own alone.
    """
    vat = fryer(chance)
    food, coating = chance.one_of(FOODS)
    product = Product(
        key="food", name="food", cut_set=food, coating=coating, start_temp_c=chance.between(0.0, 8.0)
    )
    longest = 1300.0 if food.startswith("chicken") else 600.0
    told = stages(chance, vat.kind is FryerKind.PRESSURE, longest)
    program = Program(name="program", product="food", fryer="vat", stages=told)
    place, altitude = chance.one_of(PLACES), chance.between(0.0, 3000.0)
    kitchen = Kitchen(
        site=Site(name="random", altitude_m=altitude, jurisdiction=place, thermometer_error_k=0.0),
        fryers=(vat,),
        products=(product,),
        programs=(program,),
        cuts=tuple(catalog.cuts().values()),
        cut_sets=tuple(catalog.cut_sets().values()),
        coatings=tuple(catalog.coatings().values()),
    )
    oil = told[0].set_c + chance.between(-8.0, 3.0)
    load = chance.between(0.15, 1.2) * vat.capacity_kg
    while True:
        try:
            request = CookRequest(program=program, load_kg=load, oil_start_c=oil)
            plan_of(kitchen, request)
        except InputError:
            load *= 0.5
            if load < 0.01:
                raise
        else:
            return kitchen, request


def plan_of(kitchen: Kitchen, request: CookRequest) -> FryPlan:
    """The plan that a question comes down to."""
    return make_plan(kitchen, request.program, load_kg=request.load_kg, oil_start_c=request.oil_start_c)


def lengthened(request: CookRequest, more_s: float) -> CookRequest:
    """The question with its longest timed stage longer or shorter by some seconds, never below a second or
    over two hours.
    """
    told = request.program.stages
    longest = max(range(len(told)), key=lambda i: told[i].duration_s or 0.0)
    length = min(max((told[longest].duration_s or 0.0) + more_s, 1.0), 7200.0)
    changed = replace(told[longest], duration_s=length)
    program = replace(request.program, stages=(*told[:longest], changed, *told[longest + 1 :]))
    return replace(request, program=program)


def margins(plans: Sequence[FryPlan], precision: Precision) -> np.ndarray:
    """Lowest margin of each plan's pieces at the earliest lift, no guard taken off [K]."""
    short = [replace(p, rest_s=1.0) for p in plans]
    cooks, found = [question(p) for p in short], []
    for p, cook, raw in zip(short, cooks, run_many(cooks, precision), strict=True):
        end, limit = lift_of(p, cook, raw).earliest_s, place_named(p.site.jurisdiction).cook_limit()
        fat = [100.0 * catalog.compositions()[k.cut.composition].fractions["fat"] for k in p.kinds]
        found.append(
            min(margin_k(raw.time_s, raw.core_temp_c[:, i], end, limit, 0.0, f) for i, f in enumerate(fat))
        )
    return np.array(found)


def aimed(cases: Sequence[tuple[Kitchen, CookRequest]], within_k: float) -> list[tuple[Kitchen, CookRequest]]:
    """Questions made so long that their ROUTINE margin comes near a random place within some kelvin of the
    limit.
    """
    aim = np.random.default_rng(len(cases)).uniform(-within_k, within_k, len(cases))
    kitchens, now = [kitchen for kitchen, _ in cases], [request for _, request in cases]

    def solved(requests: Sequence[CookRequest]) -> np.ndarray:
        return margins([plan_of(k, r) for k, r in zip(kitchens, requests, strict=True)], ROUTINE)

    found = solved(now)
    for _ in range(AIM_ROUNDS):
        slope = (solved([lengthened(r, 30.0) for r in now]) - found) / 30.0
        more = np.clip((aim - found) / np.clip(slope, 0.01, 1.0), -200.0, 300.0)
        now = [lengthened(r, float(m)) for r, m in zip(now, more, strict=True)]
        found = solved(now)
    return list(zip(kitchens, now, strict=True))
