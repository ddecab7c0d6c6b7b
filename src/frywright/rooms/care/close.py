"""The close of a day: which vat is filtered, changed or boiled out tonight, in which order, and what may not
be done before what.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from frywright.catalog import load as catalog
from frywright.ledger.facts.care import CareDone
from frywright.ledger.facts.day import CloseStepSigned
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError, several
from frywright.model.findings import say
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.model.units import show, to_inside
from frywright.rooms.care.oil_state import vat_states
from frywright.rooms.care.upkeep import care_rows, today_of
from frywright.rooms.care.vat import check_likely, keep_refused, oil_fact, vat_view
from frywright.rooms.care.waits import Told, check_cooled, opens_at
from frywright.rooms.clock import now
from frywright.rooms.hall import another, by_name, typed, write
from frywright.rooms.standing import closed_steps, stopped, taps_since

PLANS = {
    "keep": "filter and keep",
    "discard": "change the oil",
    "boil_out": "change the oil, boil-out",
    "stopped": "out of use: leave it",
}
STORE_KEY = "store"


@dataclass(frozen=True, slots=True, kw_only=True)
class Tonight:
    """One fryer tonight and why."""

    fryer: Fryer
    plan: str
    why: str
    steps: tuple[Mapping[str, Any], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class StepRow:
    """A step of the night: open, signed by whom and when, or shut and why."""

    key: str
    title: str
    hazard: str
    people: int
    asks: str
    minutes: int
    done: bool
    shut: str
    who: str
    second: str
    value: str
    at: str


@dataclass(frozen=True, slots=True, kw_only=True)
class FryerNight:
    """A fryer's steps tonight, and why these."""

    key: str
    name: str
    plan: str
    plan_words: str
    why: str
    steps: tuple[StepRow, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class CloseDayView:
    """Tonight: fryers in order, the whole store's steps, and about how long the rest takes."""

    date: str
    fryers: tuple[FryerNight, ...]
    store: tuple[StepRow, ...]
    minutes_left: int
    open_count: int
    closes: str


def tonight(
    store: Store, kitchen: Kitchen, tr: Translate = str, today: dt.date | None = None
) -> list[Tonight]:
    """Every fryer's plan for the night: changes first, so that there is time to cool, then the oldest oil."""
    day = today or today_of(kitchen)
    held, due = stopped(store), {(r.fryer, r.task): r for r in care_rows(store, kitchen, tr, today=day)}
    begun = {e.fact.fryer: e.fact.plan for e in closed_steps(store, day) if e.fact.fryer != STORE_KEY}
    rows, states = [], vat_states(store, kitchen, day)
    for fryer in kitchen.fryers:
        view = vat_view(store, kitchen, fryer.key, day, tr, states)
        boil = due[fryer.key, "boil_out"].state in ("overdue", "today")
        plan = (
            "stopped"
            if fryer.key in held
            else ("boil_out" if boil else ("discard" if view.advice == "discard" else "keep"))
        )
        plan = (
            begun.get(fryer.key, plan) if plan != "stopped" else plan
        )  # what was begun tonight is finished, whatever the log says since
        why = tr("The boil-out is due.") if plan == "boil_out" and boil else view.text
        rows.append((plan, view.level_pct if view.readings_count else 0.0, fryer, why))
    rank = {"boil_out": 0, "discard": 1, "keep": 2, "stopped": 3}
    rows.sort(key=lambda row: (rank[row[0]], -row[1]))
    return [Tonight(fryer=f, plan=plan, why=why, steps=_steps(f, plan)) for plan, _, f, why in rows]


def _steps(fryer: Fryer, plan: str) -> tuple[Mapping[str, Any], ...]:
    if plan == "stopped":
        return ()
    whens = {"keep": ("", "keep"), "discard": ("", "discard"), "boil_out": ("", "discard", "boil_out")}[plan]
    steps = [
        s
        for s in catalog.table("care/closing.toml")["step"]
        if s.get("when", "") in whens and s.get("applies", "") in ("", str(fryer.kind))
    ]
    keys = {s["key"] for s in steps}
    return tuple({**s, "needs": [n for n in s["needs"] if n in keys]} for s in steps)


def sign_close(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], at: dt.datetime | None = None
) -> Kept[CloseStepSigned]:
    """Sign a step of the close; what it tells of the oil goes into the oil log in the same breath.
    Raises InputError: a step before what it needs, a second hot-oil move at once, one in a rush, hot oil
    moved by hand, a pH outside, no second person, no name.

    Parameters
    ----------
    values : fryer (or ``store``), step, who, second, value (oil temperature, pH, per cent polar, or how much
        was topped up), twice (the meter read so again)
    """
    moment = at or now()
    day, _ = business_time(usual_trade(kitchen), moment)
    key, who, second = (typed(values, n) for n in ("step", "who", "second"))
    where = str(values.get("fryer", ""))
    done = _signed(store, day, where, key)
    who = by_name(who)
    signed = CloseStepSigned(date=day, fryer=where, step=key, who=who, second=second[:80], value="", plan="")
    if where == STORE_KEY:
        _store_gate(store, kitchen, day, key, done)
        return write(store, signed, moment)
    kitchen.fryer(where)
    plans = tonight(store, kitchen, today=day)
    mine = next(t for t in plans if t.fryer.key == where)
    step = next((s for s in mine.steps if s["key"] == key), None)
    if step is None:
        raise InputError("step", repr(key), "one of tonight's", where=mine.fryer.name)
    told = {(e.fact.fryer, e.fact.step): e for e in closed_steps(store, day)}
    _gates(kitchen, plans, mine, step, told, moment)
    if key == "heat_off":
        _no_load_in(store, mine.fryer, day)
    if step.get("people", 1) > 1:
        another(who, second, "another person, who did it or looked too", where=step["title"])
    value = _value(kitchen, step, typed(values, "value"))
    if step.get("asks") == "oil_temp":
        check_cooled(
            store, kitchen, mine.fryer, told, (moment, kitchen.site.read(value, "temperature", "oil"))
        )
    signed = replace(signed, value=value, plan=mine.plan)
    oil = _oil_told(store, kitchen, step, signed, moment, bool(values.get("twice")))
    with store.writing():
        _signed(store, day, where, key)
        kept = write(store, signed, moment)
        if oil is not None:
            write(store, oil, moment)
        if mine.plan == "boil_out" and key == "dry":
            write(store, _boiled_out(signed), moment)
    return kept


def _store_gate(store: Store, kitchen: Kitchen, day: dt.date, key: str, done: set[tuple[str, str]]) -> None:
    """Whether a step of the whole store may be signed: some wait for a step of every fryer."""
    steps = {s["key"]: s for s in catalog.table("care/closing.toml")["store_step"]}
    if key not in steps:
        raise InputError("step", repr(key), "one of tonight's")
    if "needs_each" not in steps[key]:
        return
    waiting = _waiting(tonight(store, kitchen, today=day), steps[key], done)
    if waiting:
        raise InputError("step", "too early", "after the heat is off at: {fryers}", fryers="; ".join(waiting))


def _waiting(plans: list[Tonight], step: Mapping[str, Any], done: set[tuple[str, str]]) -> list[str]:
    """Fryers that have not done what a step of the whole store needs of each."""
    first = step.get("needs_each")
    return [
        t.fryer.name
        for t in plans
        if first in {s["key"] for s in t.steps} and (t.fryer.key, first) not in done
    ]


def _no_load_in(store: Store, fryer: Fryer, day: dt.date) -> None:
    """Whether the board holds a load in a fryer whose heat is to go off: its last drop was not lifted."""
    for item in taps_since(store, day):
        if item.fact.fryer == fryer.key and item.fact.what in ("drop", "lift"):
            if item.fact.what == "drop":
                raise InputError(
                    "fryer",
                    "not empty",
                    "emptied first: lift the load, and tap it on the board",
                    where=fryer.name,
                )
            return


def _signed(store: Store, day: dt.date, where: str, key: str) -> set[tuple[str, str]]:
    """What is signed tonight; the step to sign must not be among it."""
    done = {(e.fact.fryer, e.fact.step) for e in closed_steps(store, day)}
    if (where, key) in done:
        raise InputError("step", "signed", "one that is not signed yet tonight")
    return done


def _oil_told(
    store: Store,
    kitchen: Kitchen,
    step: Mapping[str, Any],
    signed: CloseStepSigned,
    moment: dt.datetime,
    twice: bool,
) -> OilDone | None:
    """What a step tells the oil log, or None; one that is refused there is kept as it was typed."""
    what = step.get("logs") or {"reading": "reading", "mass": "top_up"}.get(step.get("asks", ""))
    if not what or (what == "top_up" and signed.value == "0"):
        return None
    told = {
        "vat": signed.fryer,
        "what": what,
        "amount": signed.value if step.get("asks") else "",
        "who": signed.who,
        "after": "",
    }
    try:
        fact = oil_fact(kitchen, told, f"close-{signed.date}-{signed.fryer}-{signed.step}", moment)
        if not twice:
            check_likely(store, kitchen, fact)
        return fact
    except InputError as error:
        keep_refused(store, told, error)
        raise


def _boiled_out(signed: CloseStepSigned) -> CareDone:
    """The boil-out that the close's last step of it finishes, as a task of care."""
    return CareDone(
        fryer=signed.fryer, task="boil_out", who=signed.who, role="crew", note=signed.second, date=signed.date
    )


def _gates(
    kitchen: Kitchen,
    plans: list[Tonight],
    mine: Tonight,
    step: Mapping[str, Any],
    told: Told,
    moment: dt.datetime,
) -> None:
    done, trade = set(told), usual_trade(kitchen)
    titles = {s["key"]: s["title"] for s in mine.steps}
    open_needs = [titles[n] for n in step["needs"] if (mine.fryer.key, n) not in done]
    if open_needs:
        raise InputError(
            "step",
            "too early",
            "after {needs}: this order has no way past",
            where=mine.fryer.name,
            needs=several(open_needs),
        )
    opens = opens_at(mine.fryer.key, step, told)
    if opens is not None and moment < opens:
        at = time_of_day(business_time(trade, opens)[1])
        raise InputError(
            "step",
            "too early",
            "after {at}: it takes {minutes} min or more",
            where=mine.fryer.name,
            at=at,
            minutes=step["least_min"],
        )
    if not step.get("hot"):
        return
    second_s = business_time(trade, moment)[1]
    if any(a <= second_s < b for a, b in trade.rush_s):
        raise InputError(
            "step",
            "too early",
            "outside the rush: no hot oil is moved while people run",
            where=mine.fryer.name,
        )
    first = _next_move(plans, done)
    if first is not None and first != mine.fryer.key:
        raise InputError(
            "step",
            "too early",
            "after {fryer}: one move of oil at a time",
            where=mine.fryer.name,
            fryer=kitchen.fryer(first).name,
        )


def _next_move(plans: list[Tonight], done: set[tuple[str, str]]) -> str | None:
    """The fryer whose oil may be moved now: the first in order whose move is ready and not done."""
    for one in plans:
        for step in one.steps:
            ready = all((one.fryer.key, n) in done for n in step["needs"])
            if step.get("hot") and ready and (one.fryer.key, step["key"]) not in done:
                return one.fryer.key
    return None


def _value(kitchen: Kitchen, step: Mapping[str, Any], text: str) -> str:
    """The figure a step asks for, checked; the oil log checks its own."""
    asks, table, system = step.get("asks", ""), catalog.table("care/closing.toml"), kitchen.site.units
    if asks in ("reading", "mass") and not text:
        raise InputError(
            "value", "empty", "what was read or topped up; 0 where nothing was", where=step["title"]
        )
    if asks == "oil_temp":
        most = to_inside(table["coolest_move_f"], "f")
        found = kitchen.site.read(text, "temperature", "oil")
        if not -10.0 <= found <= most:
            raise InputError(
                "oil",
                show(found, "c", system),
                "{most} or cooler before anybody moves it",
                where=step["title"],
                most=show(most, "c", system),
            )
    if asks == "ph":
        number = kitchen.site.number(text, "pH")
        if not table["ph_low"] <= number <= table["ph_high"]:
            raise InputError(
                "pH",
                f"{number:g}",
                "{low} to {high}: rinse again, test again",
                where=step["title"],
                low=table["ph_low"],
                high=table["ph_high"],
            )
    return text[:40]


def close_day_view(
    store: Store, kitchen: Kitchen, language: str = "en", tr: Translate = str, at: dt.datetime | None = None
) -> CloseDayView:
    """Tonight as a page shows it: fryers in order, each step signed, open or shut and why, and about how long
    the rest takes.
    """
    trade, moment = usual_trade(kitchen), at or now()
    day, second_s = business_time(trade, moment)
    told = {(e.fact.fryer, e.fact.step): e for e in closed_steps(store, day)}
    plans, done = tonight(store, kitchen, tr, day), set(told)
    move, rush = _next_move(plans, done), any(a <= second_s < b for a, b in trade.rush_s)

    def row(where: str, step: Mapping[str, Any], titles: Mapping[str, str]) -> StepRow:
        entry, opens = told.get((where, step["key"])), opens_at(where, step, told)
        needs = [titles[n] for n in step.get("needs", []) if (where, n) not in done]
        shut = ""
        if needs:
            shut = tr("after") + ": " + "; ".join(needs)
        elif where == STORE_KEY and _waiting(plans, step, done):
            shut = tr("after") + ": " + tr("heat off") + ", " + "; ".join(_waiting(plans, step, done))
        elif step.get("hot") and rush:
            shut = tr("not in the rush: no hot oil is moved while people run")
        elif opens is not None and moment < opens:
            shut = say("not before {at}", {"at": time_of_day(business_time(trade, opens)[1])}, translate=tr)
        elif step.get("hot") and move not in (None, where):
            shut = tr("one move of oil at a time; first") + ": " + kitchen.fryer(str(move)).name
        return StepRow(
            key=step["key"],
            title=tr(step["title"]),
            hazard=tr(step["hazard"]) if "hazard" in step else "",
            people=step.get("people", 1),
            asks=step.get("asks", ""),
            minutes=step["takes_min"],
            done=entry is not None,
            shut=shut,
            who=entry.fact.who if entry else "",
            second=entry.fact.second if entry else "",
            value=entry.fact.value if entry else "",
            at=time_of_day(business_time(trade, entry.happened_at)[1]) if entry else "",
        )

    fryers = []
    for one in plans:
        titles = {s["key"]: tr(s["title"]) for s in one.steps}
        fryers.append(
            FryerNight(
                key=one.fryer.key,
                name=one.fryer.name,
                plan=one.plan,
                plan_words=tr(PLANS[one.plan]),
                why=one.why,
                steps=tuple(row(one.fryer.key, s, titles) for s in one.steps),
            )
        )
    rest = tuple(row(STORE_KEY, s, {}) for s in catalog.table("care/closing.toml")["store_step"])
    steps = [*(s for f in fryers for s in f.steps), *rest]
    return CloseDayView(
        date=day.isoformat(),
        fryers=tuple(fryers),
        store=rest,
        minutes_left=sum(s.minutes for s in steps if not s.done),
        open_count=sum(not s.done for s in steps),
        closes=time_of_day(trade.closes_s),
    )
