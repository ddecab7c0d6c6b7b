"""What a day's answers look like, for pages, JSON and paper: sales in hold, a promise, the waste at close."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np

from frywright.ledger.store import Store
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.plan.advice import promise
from frywright.rooms.day.board import Board
from frywright.rooms.day.orders import order_of, slot_of
from frywright.rooms.day.sales import history_of


@dataclass(frozen=True, slots=True, kw_only=True)
class UnmappedItem:
    """An item that the menu does not know."""

    item: str
    sold_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Outage:
    """A silence taken as missing."""

    date: str
    from_: str
    to: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CateringRow:
    """An order too large for a guest, set apart."""

    date: str
    product: str
    cut: str
    pieces_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SalesView:
    """What the sales read in hold."""

    days_count: int
    from_: str
    to: str
    unmapped: tuple[UnmappedItem, ...]
    voided_n: float
    outages: tuple[Outage, ...]
    catering: tuple[CateringRow, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class PromiseView:
    """Can an order be promised? Chance, largest order, start, fryers, and what the other guests lose."""

    feasible: bool
    chance_frac: float
    largest_n: int
    others_short_n: float
    fryer_names: tuple[str, ...]
    start: str
    fryers: tuple[str, ...]
    at: str
    pieces: int
    product: str


@dataclass(frozen=True, slots=True, kw_only=True)
class WasteRow:
    """A product: what was served, what was thrown away, by cause, and what that costs."""

    name: str
    sold_n: float
    thrown_n: float
    money: float
    causes: Mapping[str, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class CauseRow:
    """A cause, and pieces thrown away for it."""

    cause: str
    pieces_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CloseView:
    """At close: what was thrown away and why; the causes add up. Pieces sold, by product."""

    date: str
    causes: tuple[CauseRow, ...]
    products: tuple[WasteRow, ...]
    thrown_n: float
    sold_n: tuple[float, ...]
    money: float
    currency: str
    filters_count: int
    drops_count: int


def sales_view(store: Store, kitchen: Kitchen) -> SalesView:
    """What the sales read in hold: days, outages, catering, and items the menu does not know."""
    history = history_of(store, kitchen)
    return SalesView(
        days_count=len(history.dates),
        from_=history.dates[0].isoformat(),
        to=history.dates[-1].isoformat(),
        unmapped=tuple(UnmappedItem(item=item, sold_n=count) for item, count in history.unmapped),
        voided_n=history.voided_n,
        outages=tuple(
            Outage(date=d.isoformat(), from_=time_of_day(a), to=time_of_day(b)) for d, a, b in history.outages
        ),
        catering=tuple(
            CateringRow(date=d.isoformat(), product=p, cut=c, pieces_n=n)
            for d, p, c, n in history.catering[-30:]
        ),
    )


def promise_view(board: Board, now_s: float, product: str, at_s: float, pieces: int) -> PromiseView:
    """Can an order be promised? Chance, largest order, start, fryers, and what the other guests lose.
    Raises InputError: what no order can be: a product that is not sold, no pieces, a time before a load could
    be out.
    """
    bench = board.bench
    _ = order_of(bench, (product, pieces, at_s, ""), now_s)
    state = board.state(now_s)
    state = replace(state, now_n=max(state.now_n, 0.0))
    slot = max(slot_of(bench, at_s), int(state.now_n) + 1)
    found = promise(bench.day, state, bench.par, (bench.products.index(product), slot, pieces))
    return PromiseView(
        feasible=found.feasible,
        chance_frac=found.chance_frac,
        largest_n=found.largest_n,
        others_short_n=round(found.others_short_n, 1),
        start=bench.trade.clock_of(found.first_drop) if found.first_drop >= 0 else "",
        fryers=tuple(bench.fryers[f] for f in found.fryers),
        fryer_names=tuple(board.kitchen.fryer(bench.fryers[f]).name for f in found.fryers),
        at=time_of_day(at_s),
        pieces=pieces,
        product=product,
    )


def close_view(board: Board, now_s: float, tr: Translate = str) -> CloseView:
    """At close: what was thrown away and why, by product; the causes add up."""
    state = board.state(now_s)
    wastes, whole = board.waste(state)
    by_product = []
    for i, item in enumerate(board.bench.day.items):
        parts = {cause: round(sum(w.parts_n[cause] for w in wastes if w.item == i), 1) for cause in whole}
        thrown = round(sum(w.units_n for w in wastes if w.item == i), 1)
        row = WasteRow(
            name=tr(item.name),
            sold_n=round(float(np.nansum(state.sold_n[i])), 1),
            thrown_n=thrown,
            money=round(thrown * item.waste_money, 2),
            causes=parts,
        )
        by_product.append(row)
    return CloseView(
        date=board.bench.date.isoformat(),
        causes=tuple(CauseRow(cause=tr(c), pieces_n=round(n, 1)) for c, n in whole.items()),
        products=tuple(by_product),
        thrown_n=round(sum(t.units_n for t in state.thrown), 1),
        sold_n=tuple(row.sold_n for row in by_product),
        money=round(sum(row.money for row in by_product), 2),
        currency=board.bench.trade.currency,
        filters_count=len(state.filters),
        drops_count=len(state.drops),
    )
