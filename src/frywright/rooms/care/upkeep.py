"""Care of the fryers: what is due by loads, hours at heat, filter turns or days, who may tick it off, and how
timed figures drift.
"""

from __future__ import annotations

import datetime as dt
from collections import Counter
from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from itertools import takewhile
from math import floor, inf
from typing import Any

from frywright.calibrate.recovery import HINTS
from frywright.care.counters import Due, Use, calendar, due
from frywright.care.wear import FIGURES, Wear, wear
from frywright.catalog import load as catalog
from frywright.ledger.facts.care import CareDone, FigureTimed, FirstDayTimed
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.oil import OilDone
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, day_typed, usual_trade
from frywright.model.care import Task
from frywright.model.errors import InputError, one_of
from frywright.model.findings import say
from frywright.model.fryer import SHORTEST_VENT_S, Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.roles import SIGNERS, may_sign
from frywright.model.tongues import Translate
from frywright.model.trade import Trade
from frywright.model.units import clock, parse_clock
from frywright.rooms.care.heat_check import heat_check
from frywright.rooms.clock import now
from frywright.rooms.hall import by_name, typed, write
from frywright.rooms.standing import CareRow, taps_since

RATE_DAYS, SOON_DAYS = 28, 7
LONGEST_FIGURE_S = 4 * 3600.0
LEAST_S = {"heat_up": 120.0, "vent_down": SHORTEST_VENT_S, "pressure_build": 5.0}
"""No fryer is faster. Heat-up: a kilogram of oil takes some 300 kJ, and a kilowatt and a half for each is
more than fryers have; pressure build: the food's steam has the room over the oil to fill (own estimates).
"""
FIGURE_NAMES = {
    "heat_up": "heat-up",
    "pressure_build": "pressure build",
    "vent_down": "vent to zero",
    "recovery": "recovery after a full load",
}
COUNTERS = {
    "loads": "loads",
    "hours at heat": "hours at heat",
    "filter turns": "filter turns",
    "days": "days",
}
STATES = {
    "overdue": "overdue",
    "today": "due today",
    "soon": "due within a week",
    "later": "later",
    "unknown": "no record",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Worked:
    """Days on which each fryer dropped a load or was filtered: (fryer, day) once for each load or turn."""

    loads: tuple[tuple[str, dt.date], ...]
    turns: tuple[tuple[str, dt.date], ...]


def tasks_for(kitchen: Kitchen, fryer: Fryer) -> list[Task]:
    """Tasks of a fryer; the kitchen's own stand before the calendar of common practice."""
    kinds = ("", str(fryer.kind), fryer.fuel)
    found: dict[str, Task] = {}
    for task in (*catalog.care_tasks(), *kitchen.care):
        if task.applies in kinds and task.fryer in ("", fryer.key):
            found[task.key] = task
    return list(found.values())


def worked(store: Store, since: dt.date) -> Worked:
    """What the fryers did since a day, from the board and the oil log; practice days do not count, a turn
    told in both places counts once.
    """
    loads: list[tuple[str, dt.date]] = []
    at_board: Counter[tuple[str, dt.date]] = Counter()
    in_log: Counter[tuple[str, dt.date]] = Counter()
    early = since - dt.timedelta(days=2)
    for tap in taps_since(store, since):
        if tap.fact.what == "drop":
            loads.append((tap.fact.fryer, tap.fact.date))
        elif tap.fact.what == "filter":
            at_board[tap.fact.fryer, tap.fact.date] += 1
    for act in takewhile(lambda e: e.fact.date >= early, store.facts(OilDone, newest_first=True)):
        if act.fact.date >= since and act.fact.what == "filter":
            in_log[act.fact.vat, act.fact.date] += 1
    return Worked(loads=tuple(loads), turns=tuple((at_board | in_log).elements()))


def last_done(store: Store) -> dict[tuple[str, str], CareDone]:
    """Newest record of every task, by fryer and key."""
    found = store.newest_by(CareDone, _task_of, _done_on)
    return {_task_of(item.fact): item.fact for item in found.values()}


def _task_of(done: CareDone) -> tuple[str, str]:
    return done.fryer, done.task


def _done_on(done: CareDone) -> dt.date:
    return done.date


def today_of(kitchen: Kitchen) -> dt.date:
    """The business day it is now in a kitchen."""
    return business_time(usual_trade(kitchen), now())[0]


def due_list(
    store: Store, kitchen: Kitchen, today: dt.date | None = None
) -> list[tuple[Fryer, Task, Due | None, CareDone | None]]:
    """Every task of every fryer with when it is due; None where no record says when it was last done.
    Earliest first, no record before all.
    """
    day, trade = today or today_of(kitchen), usual_trade(kitchen)
    done = last_done(store)
    counted = {
        (f.key, t.key)
        for f in kitchen.fryers
        for t in tasks_for(kitchen, f)
        if t.loads_count or t.heat_s or t.turns_count
    }
    since = min((last.date for key, last in done.items() if key in counted), default=day)
    history = worked(store, max(min(since, day - dt.timedelta(days=RATE_DAYS)), day - dt.timedelta(days=400)))
    rows: list[tuple[Fryer, Task, Due | None, CareDone | None]] = []
    for fryer in kitchen.fryers:
        for task in tasks_for(kitchen, fryer):
            last = done.get((fryer.key, task.key))
            found = None
            if last is not None:
                found = due(task, _use(history, fryer.key, last.date, day, trade))
            rows.append((fryer, task, found, last))
    return sorted(rows, key=lambda row: (row[2].days_n if row[2] else -inf, row[0].key, row[1].key))


def _use(history: Worked, fryer: str, since: dt.date, today: dt.date, trade: Trade) -> Use:
    """Counters of a fryer since a day. Hours at heat are the kitchen's hours on days with a drop, until
    somebody meters them.
    """
    recent = today - dt.timedelta(days=RATE_DAYS)
    hours = trade.closes_s - trade.start_s + trade.warm_up_s

    def counted(items: tuple[tuple[str, dt.date], ...], start: dt.date) -> list[dt.date]:
        return [date for key, date in items if key == fryer and date > start]

    loads, turns = counted(history.loads, since), counted(history.turns, since)
    seen = [date for key, date in (*history.loads, *history.turns) if key == fryer]
    span = float(min(RATE_DAYS, max(1, (today - min(seen, default=today)).days + 1)))
    lately, filtered = counted(history.loads, recent), counted(history.turns, recent)
    return Use(
        loads_count=len(loads),
        heat_s=hours * len(set(loads)),
        turns_count=len(turns),
        days_count=(today - since).days,
        loads_a_day_n=len(lately) / span,
        heat_a_day_s=hours * len(set(lately)) / span,
        turns_a_day_n=len(filtered) / span,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class WearRow:
    """A timed figure: its first day, now, their ratio, when it would be out, and the usual cause."""

    fryer: str
    name: str
    figure: str
    title: str
    first: str
    last: str
    ratio_n: float | None
    outcome: str
    text: str
    out_in_days: int | None


def care_rows(
    store: Store, kitchen: Kitchen, tr: Translate = str, language: str = "en", today: dt.date | None = None
) -> list[CareRow]:
    """The due list in people's words."""
    day = today or today_of(kitchen)
    rows = []
    for fryer, task, found, last in due_list(store, kitchen, day):
        days = floor(found.days_n) if found and found.days_n != inf else None
        state = _state(found)
        row = CareRow(
            fryer=fryer.key,
            name=fryer.name,
            task=task.key,
            title=tr(task.said("title", language)),
            who=task.who,
            who_words=tr(SIGNERS[task.who]),
            takes_min=round(task.takes_s / 60),
            asks=task.asks,
            parts=tr(task.said("parts", language)),
            state=state,
            state_words=tr(STATES[state]),
            days=days,
            date=(day + dt.timedelta(days=max(0, days))).isoformat() if days is not None else "",
            counter=tr(COUNTERS[found.counter]) if found else "",
            last_date=last.date.isoformat() if last else "",
            last_who=last.who if last else "",
            last_note=last.note if last else "",
        )
        rows.append(row)
    return rows


def _state(found: Due | None) -> str:
    if found is None:
        return "unknown"
    if found.days_n < 0:
        return "overdue"
    return "today" if found.days_n < 1 else ("soon" if found.days_n <= SOON_DAYS else "later")


def tick(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], today: dt.date | None = None
) -> Kept[CareDone]:
    """Record a task as done. Raises InputError: an unknown task, no name, a role that may not do it, a
    contractor's task without its report, or a day to come.

    Parameters
    ----------
    values : fryer, task, who, role, note (what was found; for contractors the number of their report or tag),
        date (ISO, today where empty); a calibration's thermometer, set_temp, before_temp and after_temp
    """
    fryer = kitchen.fryer(str(values.get("fryer", "")))
    known = {task.key: task for task in tasks_for(kitchen, fryer)}
    key, who, role = (typed(values, name) for name in ("task", "who", "role"))
    one_of(known, key, "task", fryer.name)
    task, note = known[key], typed(values, "note")
    if not may_sign(role, task.who):
        raise InputError(
            "role", repr(role), "{who}: nobody else may tick it off", where=task.title, who=SIGNERS[task.who]
        )
    who = by_name(who, where=task.title)
    if task.who == "licensed" and len(note) < 4:
        raise InputError("note", repr(note), "the contractor's report or tag number", where=task.title)
    date = _date(str(values.get("date", "") or ""), today or today_of(kitchen))
    figures = asdict(heat_check(kitchen, values, task.title)) if task.asks else {}
    done = CareDone(fryer=fryer.key, task=key, who=who, role=role, note=note[:300], date=date, **figures)
    return write(store, done)


def _date(text: str, today: dt.date) -> dt.date:
    date = day_typed(text) if text else today
    if date > today:
        raise InputError("date", date.isoformat(), "today or earlier")
    return date


def calendar_text(store: Store, kitchen: Kitchen, today: dt.date | None = None) -> str:
    """Everything with a due day as an iCalendar file."""
    moment = now()
    day = today or business_time(usual_trade(kitchen), moment)[0]
    items = [(fryer.name, found) for fryer, _, found, _ in due_list(store, kitchen, day) if found]
    return calendar(items, day, moment)


# ---------------------------------------------------------------- timed figures


def tell_figure(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], *, first: bool = False
) -> Kept[FigureTimed]:
    """Keep a timed figure of a fryer; the first day's is kept for life and superseded only with a name and a
    reason. Raises InputError: an unknown figure, a time that is none or longer than four hours, or a first
    day changed without name and reason.

    Parameters
    ----------
    values : fryer, figure, time as ``m:ss`` or ``h:mm:ss``, who, note (temperatures, load, oil level), reason
    """
    fact, replaces = figure_fact(store, kitchen, values, first=first)
    return write(store, fact, replaces=replaces)


def figure_fact(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], *, first: bool = False
) -> tuple[FigureTimed, int | None]:
    """The fact of :func:`tell_figure` and the entry it replaces, for whoever writes it together with
    others.
    """
    fryer, figure = kitchen.fryer(str(values.get("fryer", ""))), str(values.get("figure", ""))
    one_of(FIGURES, figure, "figure")
    seconds = parse_clock(typed(values, "time"))
    if not 0 < seconds <= LONGEST_FIGURE_S:
        raise InputError("time", clock(seconds), "above 0, up to four hours", where=fryer.name)
    if seconds < LEAST_S.get(figure, 0.0):
        raise InputError(
            FIGURE_NAMES[figure],
            clock(seconds),
            "{least} or more: no fryer is faster; look at the watch and write minutes:seconds",
            where=fryer.name,
            least=clock(LEAST_S[figure]),
        )
    who, note, reason = (typed(values, name) for name in ("who", "note", "reason"))
    old = first_day(store).get((fryer.key, figure)) if first else None
    if old is not None and not (who and reason):
        raise InputError(
            "first day", "kept for life", "changed only with a name and a reason", where=fryer.name
        )
    fact = (FirstDayTimed if first else FigureTimed)(
        fryer=fryer.key,
        figure=figure,
        value_s=seconds,
        who=who[:80],
        note=note[:200],
        reason=reason[:200],
        date=today_of(kitchen),
    )
    return fact, old.number if old else None


def first_day(store: Store) -> dict[tuple[str, str], Kept[FirstDayTimed]]:
    """The first day's figures that hold, by fryer and figure."""
    return {(e.fact.fryer, e.fact.figure): e for e in store.current_facts(FirstDayTimed)}


def wear_rows(store: Store, kitchen: Kitchen, tr: Translate = str) -> list[WearRow]:
    """Every figure that was ever read."""
    firsts, read = first_day(store), store.current_facts(FigureTimed)
    rows = []
    for fryer in kitchen.fryers:
        for figure in FIGURES:
            told = [e.fact for e in read if (e.fact.fryer, e.fact.figure) == (fryer.key, figure)]
            first = firsts.get((fryer.key, figure))
            if not told and first is None:
                continue
            row = WearRow(
                fryer=fryer.key,
                name=fryer.name,
                figure=figure,
                title=tr(FIGURE_NAMES[figure]),
                first=clock(first.fact.value_s) if first else "",
                last="",
                ratio_n=None,
                outcome="unknown",
                text=tr("Not read since its first day."),
                out_in_days=None,
            )
            if told:
                days = [float(t.date.toordinal()) for t in told]
                found = wear(figure, first.fact.value_s if first else None, days, [t.value_s for t in told])
                row = replace(
                    row,
                    last=clock(found.last_s),
                    ratio_n=round(found.ratio_n, 2) if first else None,
                    outcome=str(found.outcome),
                    text=_wear_text(figure, found, tr),
                    out_in_days=round(found.reaches_days_n) if found.reaches_days_n < 3650 else None,
                )
            rows.append(row)
    return rows


def _wear_text(figure: str, found: Wear, tr: Translate) -> str:
    if figure == "heat_up" and found.ratio_n > 1.1:
        return tr(next((text for most, _, text in HINTS if found.ratio_n <= most), HINTS[-1][2]))
    return say(found.note.text, found.note.values, translate=tr)
