"""Days ready to plan and their morning plans, kept while nothing in the store changes them."""

from __future__ import annotations

import datetime as dt
from collections.abc import Collection
from contextlib import suppress
from dataclasses import replace
from threading import Lock
from typing import Any, NamedTuple

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
from frywright.ledger.facts.day import (
    BoardTap,
    CloseStepSigned,
    DayNoted,
    ItemMapped,
    OrderPromised,
    SalesRead,
)
from frywright.ledger.facts.life import CardPrinted, ProgramKeyed, ProgramRetired, ServiceBegun
from frywright.ledger.facts.probing import CalibrationKept, ProgramProbed
from frywright.ledger.store import Store
from frywright.model import business_day
from frywright.model.errors import FrywrightError
from frywright.rooms.clock import now
from frywright.rooms.cook.life import serving
from frywright.rooms.day import day as work
from frywright.rooms.day.board import Board, Followed
from frywright.rooms.day.board_rows import BoardView
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.orders import with_orders
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import stopped
from frywright.voice.tongue import translator

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

BOARD_MARKS = (BoardTap.KIND, CloseStepSigned.KIND, OrderPromised.KIND)
"""Kinds of entries that a board shows beside its plan."""
SAME_S = 1.0
"""A board is worked out once a second for all who look at it (project's own rule)."""


class _Seen(NamedTuple):
    """A board as it was shown last: of which bench and programs, after which entry."""

    bench: int
    serving: Collection[str] | None
    newest: int
    view: BoardView


class Benches:
    """Benches and morning plans lately asked for; anything new in the store that touches them makes a new
    one.
    """

    def __init__(self, store: Store) -> None:
        self.store = store
        self._kept: dict[tuple[Any, ...], work.Bench] = {}
        self._plans: dict[int, Any] = {}
        self._serving: tuple[int, frozenset[str]] = (-1, frozenset())
        self._told: dict[int, tuple[int, work.Bench, work.Bench]] = {}
        self._followed = Followed()
        self._turn, self._making, self._seen = Lock(), Lock(), dict[str, _Seen]()

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
            self._serving = newest, serving(self.store, self.kitchen())
        return self._serving[1]

    def get(self, date: dt.date, *, every: bool = False) -> work.Bench:
        """The bench of a date, with programs in service; or with ``every`` one. Who asks for a day that
        somebody else is having tuned waits for that.
        """
        store = self.store
        serving = frozenset[str]() if every else self.serving()
        key = (date, store.newest(*MARKS), serving)
        if key not in self._kept:
            with self._making:
                if key not in self._kept:
                    held = tuple(stopped(store)) if date >= self.today() else ()
                    made = work.bench_for(store, self.kitchen(), date, down=held, serving=serving)
                    self._kept[key] = made
                    for old in list(self._kept)[:-KEPT]:
                        self._forget(self._kept.pop(old))
        return self._with_orders(self._kept[key])

    def _with_orders(self, bench: work.Bench) -> work.Bench:
        """The bench with what is promised for its day; the same one until an order comes or goes."""
        newest = self.store.newest(OrderPromised.KIND)
        known = self._told.get(id(bench))
        if known is None or known[0] != newest:
            if known is not None:
                self._plans.pop(id(known[2]), None)
            known = self._told[id(bench)] = newest, bench, with_orders(self.store, bench)
        return known[2]

    def _forget(self, bench: work.Bench) -> None:
        self._plans.pop(id(bench), None)
        told = self._told.pop(id(bench), None)
        if told is not None:
            self._plans.pop(id(told[2]), None)

    def board(self, date: dt.date, practice: int | None = None) -> Board:
        """The board of a date. A load cooked by a program that is no longer in service is on it too."""
        serving, bench = self.serving() if practice is None else None, self.get(date)
        board = Board(
            store=self.store,
            kitchen=self.kitchen(),
            bench=bench,
            practice=practice,
            serving=serving,
            followed=self._followed if practice is None else None,
        )
        return board if board.knows_drops() else replace(board, bench=self.get(date, every=True))

    def look(self, board: Board, second: float, language: str) -> BoardView:
        """What a board shows. Within a second it is the same for everybody, unless something happened that
        it shows; its time is that of the look.
        """
        if board.practice is not None:
            return board_view(board, second, translator(language))
        newest = self.store.newest(*MARKS, *LIFE_MARKS, *BOARD_MARKS)
        with self._turn:
            seen = self._seen.get(language)
            same = seen is not None and (seen.bench, seen.serving, seen.newest) == (
                id(board.bench),
                board.serving,
                newest,
            )
            if seen is None or not same or not 0.0 <= second - seen.view.now_s < SAME_S:
                view = board_view(board, second, translator(language))
                seen = self._seen[language] = _Seen(id(board.bench), board.serving, newest, view)
        return replace(seen.view, now_s=second)

    def plan(self, bench: work.Bench) -> Any:
        """The morning plan of a bench."""
        if id(bench) not in self._plans:
            with self._making:
                if id(bench) not in self._plans:
                    self._plans[id(bench)] = work.morning(bench)
        return self._plans[id(bench)]

    def ahead(self) -> None:
        """Have today and tomorrow ready, so that whoever looks first does not wait; where there is no kitchen
        or no sale yet, nothing.
        """
        with suppress(FrywrightError):
            today = self.today()
            for date in (today, today + dt.timedelta(days=1)):
                self.plan(self.get(date))
