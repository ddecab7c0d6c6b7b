"""What the records of a day lack, and why, in the words of whoever answers for it. A gap is never filled in
afterwards; it is explained.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, get_args

from frywright.ledger.facts.day import BoardTap, CloseStepSigned, GapExplained, Lack, standing
from frywright.ledger.facts.fact import Kept
from frywright.ledger.facts.probing import Reading, ThermometerChecked
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, day_typed, moment_of, usual_trade
from frywright.model.errors import InputError, one_of
from frywright.model.kitchen import Kitchen
from frywright.rooms.clock import now
from frywright.rooms.hall import by_name, given_words, in_turn, typed, write
from frywright.rooms.records.coverage import in_time

LACKS = get_args(Lack)
LOOKED_BACK_DAYS = 14
TEXTS = {
    "readings": "Loads were dropped on {date} and no piece was probed.",
    "checks": "Loads were dropped on {date} and no thermometer was checked.",
    "close": "Loads were dropped on {date} and no step of the close was signed.",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Gap:
    """Something the records of a day lack, and its explanation if there is one."""

    date: dt.date
    lack: str
    explained: Kept[GapExplained] | None = None


def gaps_of(store: Store, kitchen: Kitchen, first: dt.date, last: dt.date) -> list[Gap]:
    """What the records of each business day lack, newest day first. A day without a load lacks nothing."""
    trade = usual_trade(kitchen)
    since = moment_of(trade, first, 0.0)
    until = moment_of(trade, last + dt.timedelta(days=2), 0.0)
    days: dict[str, set[dt.date]] = {lack: set() for lack in LACKS}
    for lack, cls in (("readings", Reading), ("checks", ThermometerChecked), ("close", CloseStepSigned)):
        for item in filter(in_time, store.facts_between(since, until, cls)):
            days[lack].add(business_time(trade, item.happened_at)[0])
    dropped = {
        business_time(trade, e.happened_at)[0]
        for e in standing(store.facts_between(since, until, BoardTap))
        if e.fact.what == "drop"
    }
    told = {(e.fact.date, e.fact.lack): e for e in store.facts(GapExplained)}
    return [
        Gap(date=day, lack=lack, explained=told.get((day, lack)))
        for day in sorted((d for d in dropped if first <= d <= last), reverse=True)
        for lack in LACKS
        if day not in days[lack]
    ]


def yesterday(kitchen: Kitchen) -> dt.date:
    """The business day before this one."""
    return business_time(usual_trade(kitchen), now())[0] - dt.timedelta(days=1)


@in_turn
def explain_gap(store: Store, kitchen: Kitchen, values: Mapping[str, Any]) -> Kept[GapExplained]:
    """Keep why the records of a day lack something. Raises InputError: no such gap, no name, or nothing said.

    Parameters
    ----------
    values : date, lack (readings, checks, close), words, who
    """
    lack = one_of(LACKS, values.get("lack"), "lack")
    words, who = (typed(values, name) for name in ("words", "who"))
    date = day_typed(str(values.get("date", "")))
    if not any(g.lack == lack for g in gaps_of(store, kitchen, date, date)):
        raise InputError("date", date.isoformat(), "a day whose records lack this")
    who = by_name(who, "the name of the person who says why")
    given_words(words, "words", "a few words: why it was not done")
    return write(store, GapExplained(date=date, lack=lack, words=words[:300], who=who))
