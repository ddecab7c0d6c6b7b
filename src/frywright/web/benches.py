"""Days ready to plan and their morning plans, kept while nothing in the store changes them."""

from __future__ import annotations

import datetime as dt
from typing import Any

from frywright.ledger.facts.care import Reopened, StopUse
from frywright.ledger.facts.cook import (
    KitchenSet,
    ProgramProved,
    ProgramSaved,
    ProofsAsked,
    ReadBackTaken,
    ShortCardPrinted,
    SlotChosen,
)
from frywright.ledger.facts.day import DayNoted, ItemMapped, SalesRead
from frywright.ledger.facts.life import CardPrinted, ProgramKeyed, ProgramRetired, ServiceBegun
from frywright.ledger.facts.probing import CalibrationKept, ProgramProbed
from frywright.ledger.store import Store
from frywright.model import business_day
from frywright.rooms.clock import now
from frywright.rooms.cook.life import lives
from frywright.rooms.day import day as work
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import stopped

KEPT = 6
MARKS = (
    KitchenSet.KIND,
    ProgramSaved.KIND,
    CalibrationKept.KIND,
    SalesRead.KIND,
    ItemMapped.KIND,
    DayNoted.KIND,
    StopUse.KIND,
    Reopened.KIND,
)
"""Kinds of entries that change a plan."""
LIFE_MARKS = (
    ProgramProved.KIND,
    ProofsAsked.KIND,
    ReadBackTaken.KIND,
    ShortCardPrinted.KIND,
    CardPrinted.KIND,
    ProgramKeyed.KIND,
    ProgramRetired.KIND,
    ServiceBegun.KIND,
    ProgramProbed.KIND,
    SlotChosen.KIND,
)
"""Kinds of entries that put a program into service or out of it."""


class Benches:
    """Benches and morning plans lately asked for; anything new in the store that touches them makes a new
    one.
    """

    def __init__(self, store: Store) -> None:
        self.store = store
        self._kept: dict[tuple[Any, ...], work.Bench] = {}
        self._plans: dict[int, Any] = {}
        self._serving: tuple[int, frozenset[str]] = (-1, frozenset())

    def kitchen(self) -> Any:
        """The kitchen as remembered."""
        return remembered_kitchen(self.store)

    def today(self) -> dt.date:
        """The business day of this moment."""
        return business_day.business_time(business_day.trade_of(self.kitchen()), now())[0]

    def serving(self) -> frozenset[str]:
        """Names of the programs in service."""
        newest = self.store.newest(*MARKS, *LIFE_MARKS)
        if self._serving[0] != newest:
            found = lives(self.store, self.kitchen())
            self._serving = newest, frozenset(name for name, life in found.items() if life.serving)
        return self._serving[1]

    def get(self, date: dt.date) -> work.Bench:
        """The bench of a date."""
        store = self.store
        serving = self.serving()
        key = (date, store.newest(*MARKS), serving)
        if key not in self._kept:
            held = tuple(stopped(store)) if date >= self.today() else ()
            self._kept[key] = work.bench_for(store, self.kitchen(), date, down=held, serving=serving)
            for old in list(self._kept)[:-KEPT]:
                self._plans.pop(id(self._kept.pop(old)), None)
        return self._kept[key]

    def plan(self, bench: work.Bench) -> Any:
        """The morning plan of a bench."""
        if id(bench) not in self._plans:
            self._plans[id(bench)] = work.morning(bench)
        return self._plans[id(bench)]
