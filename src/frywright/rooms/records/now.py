"""What room Records wants done now: cases, loads in doubt, readings and checks that are due, gaps of
yesterday.
"""

from __future__ import annotations

import datetime as dt

from frywright.ledger.facts.day import BoardTap, standing
from frywright.ledger.facts.probing import CaseOpened, LookedBack, Reading
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, moment_of, usual_trade
from frywright.model.kitchen import Kitchen
from frywright.model.now import Harm, NowLine
from frywright.rooms.clock import now
from frywright.rooms.readings import level_of
from frywright.rooms.records.gaps import TEXTS, gaps_of, yesterday
from frywright.rooms.records.open_cases import still_open
from frywright.rooms.thermometers import due_list

WORDS = {
    "probe": "a piece read below its limit",
    "hold": "hold below its limit or over its time",
    "thermometer": "a thermometer failed its check",
    "complaint": "a guest complained",
}
CASE = "Case {number} is open: {what}. Decide the load and close it."
CASES_SHOWN = 12
"""Open cases with a line of their own, the newest (own choice)."""
MORE_CASES = "Older cases that are open: {count}. Decide each load and close them."
DOUBT = "{thermometer} failed its check. Loads that it read and are in doubt: {count}. Open a case."
UNPROBED = "{fryer} dropped {product} today and nobody has probed a piece of it. Probe the coldest."
NO_THERMOMETER = "No thermometer was ever checked here. Check one in ice water or boiling water."
CHECK = "{thermometer} is due for its check in ice water or boiling water."


def now_lines(store: Store, kitchen: Kitchen) -> list[NowLine]:
    """Lines of the records, checks to come among them."""
    return [
        *_cases(store),
        *_readings(store, kitchen),
        *_thermometers(store),
        *(
            NowLine(
                harm=Harm.GAP,
                act="gap",
                about=gap.lack,
                text=TEXTS[gap.lack],
                values={"date": gap.date.isoformat()},
            )
            for gap in gaps_of(store, kitchen, yesterday(kitchen), yesterday(kitchen))
            if gap.explained is None
        ),
    ]


def _kind(opened: CaseOpened) -> str:
    return opened.what


def _cases(store: Store) -> list[NowLine]:
    still = still_open(store)
    found = [
        NowLine(
            harm=Harm.CASE,
            act="case",
            about=str(item.number),
            text=CASE,
            values={"number": float(item.number), "what": WORDS[item.fact.what]},
        )
        for item in still[:CASES_SHOWN]
    ]
    more = len(still) - CASES_SHOWN
    if more > 0:
        told = {"count": float(more)}
        found.append(NowLine(harm=Harm.CASE, act="cases", text=MORE_CASES, values=told, count=more))
    newest = store.newest_by(CaseOpened, _kind).get("thermometer")
    last = newest.number if newest else 0
    for item in store.current_facts(LookedBack):
        count = sum(d.in_doubt for d in item.fact.doubts)
        if count and item.number > last:
            values: dict[str, float | str | tuple[str, ...]] = {
                "thermometer": item.fact.thermometer,
                "count": float(count),
            }
            found.append(NowLine(harm=Harm.CASE, act="open_case", text=DOUBT, values=values))
    return found


def _readings(store: Store, kitchen: Kitchen) -> list[NowLine]:
    """Products of a fryer that were dropped today and never probed: each is probed once a day at the least
    (project's own rule; a place or a house may want more).
    """
    trade, moment = usual_trade(kitchen), now()
    since = moment_of(trade, business_time(trade, moment)[0], 0.0)
    until = moment + dt.timedelta(minutes=1)
    fryers, products = {f.key: f for f in kitchen.fryers}, {p.key: p for p in kitchen.products}
    probed = {(e.fact.fryer, e.fact.product) for e in store.facts_between(since, until, Reading)}
    dropped = dict.fromkeys(
        (e.fact.fryer, e.fact.product)
        for e in standing(store.facts_between(since, until, BoardTap))
        if e.fact.what == "drop"
    )
    return [
        NowLine(
            harm=Harm.READING,
            act="reading",
            about=f"{fryer} {product}",
            text=UNPROBED,
            values={"fryer": fryers[fryer].name, "product": products[product].name},
        )
        for fryer, product in dropped
        if (fryer, product) not in probed
        and fryer in fryers
        and product in products
        and level_of(kitchen, product, moment) is not None
    ]


def _thermometers(store: Store) -> list[NowLine]:
    known = due_list(store)
    if not known:
        return [NowLine(harm=Harm.READING, act="check", text=NO_THERMOMETER)]
    return [
        NowLine(
            harm=Harm.READING,
            act="check",
            about=row.thermometer,
            text=CHECK,
            values={"thermometer": row.thermometer},
            due_at=None if row.overdue else row.due_at,
        )
        for row in known
    ]
