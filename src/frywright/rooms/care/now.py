"""What room Care wants done now: fryers out of use, oil at its limit, care due or never recorded."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from math import floor, isfinite

from frywright.ledger.store import Store
from frywright.model.business_day import moment_of, usual_trade
from frywright.model.kitchen import Kitchen
from frywright.model.now import Harm, NowLine
from frywright.oil.outlook import LEAST_READINGS
from frywright.rooms.care.machines import first_act
from frywright.rooms.care.oil_state import VatState, vat_states
from frywright.rooms.care.upkeep import due_list, today_of
from frywright.rooms.care.vat import advised, read_over
from frywright.rooms.standing import stopped

NEAR_DAYS = 2.0
"""Oil that may pass its limit within this many days is read every day (project's own rule)."""
STOPPED = "{fryer} is out of use. Do not use it before a qualified person releases it."
OVER = (
    "{fryer}: the oil was read at {reading} %, its limit is {limit} %. Change it tonight; in doubt read it"
    " again."
)
DISCARD = "{fryer}: tomorrow the oil may pass its limit of {limit} %. Change it tonight."
NEAR = "{fryer}: the oil may pass its limit by {date}. Read it today."
FEW = "Oil with fewer than four readings, so its limit is a guess: {fryers}. Read it."
OVERDUE = "{fryer}: {task}. Overdue since {date}."
DUE = "{fryer}: {task}. Due today."
COMING = "{fryer}: {task}."
NO_RECORD = "{fryer}: care tasks without a record of when they were last done: {count}. Look, do, sign."


def now_lines(
    store: Store, kitchen: Kitchen, language: str = "en", states: Mapping[str, VatState] | None = None
) -> list[NowLine]:
    """Lines of care, those to come among them with their day; ``states`` are today's vats where they are
    known already.
    """
    day = today_of(kitchen)
    if states is None:
        states = vat_states(store, kitchen, day) if kitchen.fryers else {}
    return [*_stopped(store, kitchen), *_oil(store, states, day), *_tasks(store, kitchen, day, language)]


def _stopped(store: Store, kitchen: Kitchen) -> list[NowLine]:
    known = {f.key: f.name for f in kitchen.fryers}
    return [
        NowLine(
            harm=Harm.STOPPED,
            act="reopen",
            about=key,
            text=STOPPED,
            then=first_act(item.fact.reason),
            values={"fryer": known[key]},
        )
        for key, item in stopped(store).items()
        if key in known
    ]


def _oil(store: Store, states: Mapping[str, VatState], day: dt.date) -> list[NowLine]:
    found, unread, held = [], [], stopped(store)
    for state in states.values():
        if state.fryer.key in held:
            continue
        limit = f"{state.limit_pct:g}"
        if read_over(state):
            found.append(_vat(state, "oil", OVER, {"reading": f"{state.right_pct:.3g}", "limit": limit}))
        elif advised(state, day) == "discard":
            found.append(_vat(state, "oil", DISCARD, {"limit": limit}))
        elif day in state.read_on:
            continue
        elif state.readings_count < LEAST_READINGS:
            unread.append(state.fryer)
        elif state.crossing.days_n[0] <= NEAR_DAYS:
            when = day + dt.timedelta(days=floor(state.crossing.days_n[0]))
            found.append(_vat(state, "oil_reading", NEAR, {"date": when.isoformat()}))
    if unread:
        few, first = {"fryers": tuple(f.name for f in unread)}, unread[0].key
        found.append(NowLine(harm=Harm.RECORD, act="oil_reading", about=first, text=FEW, values=few))
    return found


def _vat(state: VatState, act: str, text: str, values: dict[str, str]) -> NowLine:
    told = {"fryer": state.fryer.name, **values}
    return NowLine(harm=Harm.OIL, act=act, about=state.fryer.key, text=text, values=told)


def _tasks(store: Store, kitchen: Kitchen, day: dt.date, language: str) -> list[NowLine]:
    found, unknown, trade = [], dict.fromkeys((f.key for f in kitchen.fryers), 0), usual_trade(kitchen)
    names = {f.key: f.name for f in kitchen.fryers}
    for fryer, task, due, _ in due_list(store, kitchen, day):
        if due is None:
            unknown[fryer.key] += 1
        elif isfinite(due.days_n):
            days = floor(due.days_n)
            date = day + dt.timedelta(days=days)
            text = OVERDUE if due.days_n < 0 else (DUE if days < 1 else COMING)
            values = {"fryer": fryer.name, "task": task.said("title", language), "date": date.isoformat()}
            found.append(
                NowLine(
                    harm=Harm.CARE,
                    act="care",
                    about=fryer.key,
                    text=text,
                    values=values,
                    due_at=None if days < 1 else moment_of(trade, date, 0.0),
                )
            )
    return found + [
        NowLine(
            harm=Harm.RECORD,
            act="care",
            about=key,
            text=NO_RECORD,
            values={"fryer": names[key], "count": float(n)},
        )
        for key, n in unknown.items()
        if n
    ]
