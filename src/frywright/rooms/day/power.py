"""Energy of the fryers: start, setback and off from the day's plan under the power cap; test-method
quantities of full loads.
"""

from __future__ import annotations

from dataclasses import dataclass

from frywright.care.energy import Start, Warming, heat_up, heavy_load, idle_w, setback, start_times
from frywright.catalog import load as catalog
from frywright.model.business_day import usual_trade
from frywright.model.errors import InputError
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.model.units import BTU, LB, show, to_inside
from frywright.plan.advice import Outlook
from frywright.rooms.day.day import Bench
from frywright.trial.ask import CookRequest, ask

MARGIN_S = 600.0
"""A fryer stands at heat this long before its first drop (project's own rule)."""
LEAST_SAVED_J = 0.1 * 3.6e6
"""A setback that saves less than a tenth of a kilowatt hour is worth no hand (own rule)."""
PAUSE_S, SETBACK_C = 45 * 60.0, to_inside(250.0, "f")
"""Pauses from this length on are set back, to this temperature (250 degF: common practice, no source; the
maker's manual wins).
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Use:
    """One fryer's day: when it is in use (seconds of the business day) and what its loads take."""

    fryer: Fryer
    set_c: float
    busy: tuple[tuple[float, float], ...]
    cook_kwh: float


@dataclass(frozen=True, slots=True, kw_only=True)
class FryerEnergy:
    """A fryer that stays off; those in use say more."""

    fryer: str
    name: str
    used: bool = False
    fuel: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Pause:
    """A setback between loads, times of day."""

    from_: str
    on_again: str
    coolest: str
    saved_kwh: float


@dataclass(frozen=True, slots=True, kw_only=True)
class FryerDay(FryerEnergy):
    """A fryer's day: times of day, and its energy by part."""

    start: str
    ready: str
    first_drop: str
    off: str
    heat_up_min: float
    pauses: tuple[Pause, ...]
    preheat_kwh: float
    idle_kwh: float
    cook_kwh: float
    total_kwh: float
    idle: str
    melts: str


@dataclass(frozen=True, slots=True, kw_only=True)
class EnergyView:
    """The energy of a day; ``problem`` where the starts do not fit under the cap."""

    planned: bool
    rows: tuple[FryerEnergy, ...]
    total_kwh: float
    money: float
    currency: str
    idle_frac: float
    cap_kw: float | None
    problem: str
    gas: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class FullLoad:
    """Test-method quantities of a program's full load, in the kitchen's units."""

    program: str
    fryer: str
    load: str
    efficiency_frac: float
    capacity: str
    recovery_s: int
    cooking_rate_kw: float
    food: str
    idle_kw: float


def _uses(kitchen: Kitchen, bench: Bench | None, found: Outlook | None) -> list[_Use]:
    trade = bench.trade if bench else usual_trade(kitchen)
    uses = []
    for n, fryer in enumerate(kitchen.fryers):
        programs = [p for p in kitchen.programs if p.fryer == fryer.key]
        set_c = max((p.stages[0].set_c for p in programs), default=to_inside(335.0, "f")) - fryer.offset_k
        busy, cooked = [(trade.start_s, trade.closes_s)], 0.0
        if bench is not None and found is not None:
            busy = []
            for drop in found.plan.drops:
                if drop.fryer == n:
                    fact = bench.loads[drop.item][drop.load]
                    start = trade.start_s + drop.slot * trade.slot_s
                    busy.append((start, start + fact.cook_s + fact.recovery_s))
                    cooked += fact.heat_kwh + fact.recovery_s * fryer.heater_w / 3.6e6
            length = bench.day.filter_slots_count * trade.slot_s
            busy += [
                (trade.start_s + t * trade.slot_s, trade.start_s + t * trade.slot_s + length)
                for f, t in found.plan.filters
                if f == n
            ]
        uses.append(_Use(fryer=fryer, set_c=set_c, busy=tuple(sorted(busy)), cook_kwh=cooked))
    return uses


def energy_view(
    kitchen: Kitchen, bench: Bench | None = None, found: Outlook | None = None, tr: Translate = str
) -> EnergyView:
    """Each fryer's start, setbacks and off with its energy by part; without a plan the opening hours are
    taken, and that is said.

    Cold oil is taken at room temperature. Gas is counted as heat into the oil: what the burner takes for it
    is on no record.
    """
    trade, room, uses = usual_trade(kitchen), kitchen.site.room_temp_c, _uses(kitchen, bench, found)
    oils, used = catalog.oils(), [u for u in uses if u.busy]
    warm = [heat_up(u.fryer, oils[u.fryer.oil], min(room, u.set_c - 1.0), u.set_c, room) for u in used]
    problem, starts = "", [u.busy[0][0] - MARGIN_S - w.duration_s for u, w in zip(used, warm, strict=True)]
    try:
        starts = start_times([_start(u, w, room) for u, w in zip(used, warm, strict=True)], trade.cap_w)
    except InputError as error:
        problem = error.say(tr)
    mine = [_row(kitchen, u, w, s, tr) for u, w, s in zip(used, warm, starts, strict=True)]
    off = [FryerEnergy(fryer=u.fryer.key, name=u.fryer.name, fuel=u.fryer.fuel) for u in uses if not u.busy]
    total = sum(r.total_kwh for r in mine)
    paid = sum(r.total_kwh for r in mine if r.fuel == "electric")
    share = sum(r.idle_kwh for r in mine) / total if total else 0.0
    return EnergyView(
        planned=bench is not None and found is not None,
        rows=(*mine, *off),
        total_kwh=round(total, 1),
        money=round(paid * trade.kwh_money, 2),
        currency=trade.currency,
        idle_frac=round(share, 3),
        cap_kw=trade.cap_w / 1000 if trade.cap_w != float("inf") else None,
        problem=problem,
        gas=any(r.fuel == "gas" for r in mine),
    )


def _start(use: _Use, warm: Warming, room_c: float) -> Start:
    """A gas fryer draws nothing under the electric cap."""
    electric = use.fryer.fuel == "electric"
    return Start(
        ready_s=use.busy[0][0] - MARGIN_S,
        heat_up_s=warm.duration_s,
        power_w=use.fryer.heater_w if electric else 0.0,
        idle_w=idle_w(use.fryer, use.set_c, room_c) if electric else 0.0,
    )


def _row(kitchen: Kitchen, use: _Use, warm: Warming, start_s: float, tr: Translate) -> FryerDay:
    room, fryer = kitchen.site.room_temp_c, use.fryer
    oil, off = catalog.oils()[fryer.oil], max(b for _, b in use.busy)
    cooking = sum(b - a for a, b in use.busy) if use.cook_kwh else 0.0
    ready = start_s + warm.duration_s
    pauses, saved, last = [], 0.0, use.busy[0][1]
    for a, b in use.busy[1:]:
        if a - last >= PAUSE_S and use.set_c > SETBACK_C:
            back = setback(fryer, oil, use.set_c, SETBACK_C, a - last, room)
            pause = Pause(
                from_=time_of_day(last),
                on_again=time_of_day(last + back.on_again_s),
                coolest=show(back.coolest_c, "c", kitchen.site.units),
                saved_kwh=round(back.saved_j / 3.6e6, 2),
            )
            if back.saved_j >= LEAST_SAVED_J:
                pauses.append(pause)
                saved += back.saved_j
        last = max(last, b)
    idle = (idle_w(fryer, use.set_c, room) * max(0.0, off - ready - cooking) - saved) / 3.6e6
    preheat = warm.energy_j / 3.6e6
    return FryerDay(
        fryer=fryer.key,
        name=fryer.name,
        used=True,
        fuel=fryer.fuel,
        start=time_of_day(start_s),
        ready=time_of_day(ready),
        first_drop=time_of_day(use.busy[0][0]),
        off=time_of_day(off),
        heat_up_min=round(warm.duration_s / 60),
        pauses=tuple(pauses),
        preheat_kwh=round(preheat, 2),
        idle_kwh=round(idle, 2),
        cook_kwh=round(use.cook_kwh, 2),
        total_kwh=round(preheat + idle + use.cook_kwh, 2),
        idle=show(idle_w(fryer, use.set_c, room), "w", kitchen.site.units),
        melts=tr("melt first, low heat, attended") if fryer.solid_fat else "",
    )


def full_load_rows(kitchen: Kitchen) -> list[FullLoad]:
    """Test-method quantities of every program's full load (definitions of ASTM F1361, F1964), simulated:
    efficiency, production capacity, recovery, rates.
    """
    system, rows = kitchen.site.units, []
    for name in sorted({p.name for p in kitchen.programs}):
        program = kitchen.program(name)
        fryer = kitchen.fryer(program.fryer)
        told = heavy_load(ask(kitchen, CookRequest(program=program)).history)
        hourly = told.capacity_kg_s * 3600.0
        per = told.food_j / told.load_kg
        row = FullLoad(
            program=name,
            fryer=fryer.name,
            load=show(told.load_kg, "kg", system),
            efficiency_frac=round(told.efficiency_frac, 3),
            capacity=f"{hourly / LB:.1f} lb/h" if system == "us" else f"{hourly:.1f} kg/h",
            recovery_s=round(told.recovery_s),
            cooking_rate_kw=round(told.cooking_rate_w / 1000, 2),
            food=f"{per / BTU * LB:.0f} Btu/lb" if system == "us" else f"{per / 3.6e6:.3f} kWh/kg",
            idle_kw=round(idle_w(fryer, program.stages[0].set_c, kitchen.site.room_temp_c) / 1000, 2),
        )
        rows.append(row)
    return rows
