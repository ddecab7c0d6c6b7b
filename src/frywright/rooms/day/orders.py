"""Promised orders: told once, in the plan and on the board until they are handed over or withdrawn."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass, replace
from math import ceil

from frywright.ledger.facts.day import OrderPromised, OrderState
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.model.findings import say
from frywright.model.tongues import Translate
from frywright.model.trade import time_of_day
from frywright.plan.live import State
from frywright.plan.model import Order
from frywright.rooms.day.day import Bench
from frywright.rooms.hall import write

MOST_PIECES = 10_000
READY_BEFORE_S = 300.0
"""The plan has an order ready so long before its time (own choice)."""
MOST_LETTERS = 40


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderRow:
    """A promised order as it is shown: what, when, and how far it is (shelf, oil or cook). ``warning`` says
    that it will hardly be there in time, or is late; empty where all of it is cooked.
    """

    number: int
    ticket: str
    product: str
    name: str
    pieces: int
    at: str
    in_by: str
    stands: str
    text: str
    warning: str = ""


def orders_of(store: Store, date: dt.date) -> list[Kept[OrderPromised]]:
    """Orders of a date that were not withdrawn, the next first."""
    found = [e for e in store.current_facts(OrderPromised) if e.fact.date == date]
    return sorted((e for e in found if e.fact.state != "withdrawn"), key=lambda e: e.fact.ready_s)


def with_orders(store: Store, bench: Bench) -> Bench:
    """A bench that knows what is promised for its date; what the kitchen no longer sells is left out."""
    orders = tuple(
        Order(item=bench.products.index(e.fact.product), slot=slot, units_count=e.fact.pieces_count)
        for e in orders_of(store, bench.date)
        for slot in (slot_of(bench, e.fact.ready_s),)
        if e.fact.product in bench.products and 0 <= slot < bench.day.slots_count
    )
    return replace(bench, day=replace(bench.day, orders=orders)) if orders != bench.day.orders else bench


def slot_of(bench: Bench, ready_s: float) -> int:
    """Slot of the day by which an order is wanted, a little before it is handed over."""
    return max(0, bench.trade.slot_of(ready_s - READY_BEFORE_S))


def order_of(bench: Bench, asked: tuple[str, int, float, str], now_s: float) -> OrderPromised:
    """An order that can be written down: product, pieces, second of the business day at which it is ready,
    and what it is called. Raises InputError: a product that is not sold, an amount or a time that cannot be.
    """
    product, pieces, ready_s, ticket = asked
    one_of(bench.products, product, "product")
    if not 1 <= pieces <= MOST_PIECES:
        raise InputError("pieces", pieces, "1 to 10,000")
    soonest = min(x.cook_s for x in bench.loads[bench.products.index(product)])
    low = max(now_s, bench.trade.start_s) + soonest
    last = bench.trade.start_s + bench.day.slots_count * bench.trade.slot_s
    if not low <= ready_s < last:
        raise InputError(
            "ready at",
            time_of_day(ready_s),
            "a time from {low}, when a load can be out, to before {close}",
            low=time_of_day(60.0 * ceil(low / 60.0)),
            close=time_of_day(last),
        )
    return OrderPromised(
        date=bench.date,
        product=product,
        pieces_count=pieces,
        ready_s=ready_s,
        ticket=ticket.strip()[:MOST_LETTERS],
        state="promised",
    )


def promise_order(
    store: Store,
    bench: Bench,
    asked: tuple[str, int, float, str],
    now_s: float,
    chance_frac: float | None = None,
) -> Kept[OrderPromised]:
    """Keep an order. Whether it can be kept is asked before (:func:`frywright.rooms.day.views.promise_view`);
    ``chance_frac`` where it hardly can. Raises InputError: a product that is not sold, an amount or a time
    that cannot be.
    """
    return write(store, replace(order_of(bench, asked, now_s), chance_frac=chance_frac))


def end_order(store: Store, number: int, state: OrderState, now_s: float) -> Kept[OrderPromised]:
    """Say that an order was handed over or withdrawn; told twice it is one. One that went out early is no
    longer cooked for. Raises InputError: no such order.
    """
    with store.writing():
        standing = {e.number: e for e in store.current_facts(OrderPromised)}
        known = standing.get(number) or next(
            (e for e in store.facts(OrderPromised) if e.number == number), None
        )
        if known is None:
            raise InputError("order", number, "the number of a promised order")
        if number not in standing or known.fact.state != "promised":
            return known
        early = min(known.fact.ready_s, max(now_s, 0.0)) if state == "handed over" else known.fact.ready_s
        return write(store, replace(known.fact, state=state, ready_s=early), replaces=number)


def order_rows(
    store: Store, bench: Bench, state: State | None = None, tr: Translate = str
) -> tuple[OrderRow, ...]:
    """Orders still to be handed over, the next first: each takes its pieces from the shelf and the oil before
    the one after it.
    """
    rows, left = [], {}
    for entry in orders_of(store, bench.date):
        fact = entry.fact
        if fact.state != "promised" or fact.product not in bench.products:
            continue
        i = bench.products.index(fact.product)
        if state is not None and i not in left:
            oil = sum(x.units_n for x in state.in_oil if x.item == i)
            left[i] = [state.shelf(i), oil]
        stands = _stands(left[i], fact.pieces_count) if i in left else "cook"
        longest = max(x.cook_s for x in bench.loads[i])
        words = {"shelf": "on the shelf: set it apart", "oil": "in the oil", "cook": "to be cooked"}
        row = OrderRow(
            number=entry.number,
            ticket=fact.ticket,
            product=fact.product,
            name=tr(bench.day.items[i].name),
            pieces=fact.pieces_count,
            at=time_of_day(fact.ready_s),
            in_by=time_of_day(fact.ready_s - longest),
            stands=stands,
            text=tr(words[stands]),
        )
        now_s = None if state is None else bench.trade.start_s + state.now_n * bench.trade.slot_s
        late = now_s is not None and now_s > fact.ready_s - longest
        rows.append(replace(row, warning=_warning(fact, row, late, tr)))
    return tuple(rows)


def _warning(fact: OrderPromised, row: OrderRow, late: bool, tr: Translate) -> str:
    """What is wrong with an order that is not all cooked."""
    if row.stands == "cook" and late:
        return say("Late: it had to be in the oil by {at}.", {"at": row.in_by}, translate=tr)
    if row.stands != "shelf" and fact.chance_frac is not None:
        text = "Promised all the same: all of it is there in only {chance} % of the days imagined."
        return say(text, {"chance": round(100 * fact.chance_frac)}, translate=tr)
    return ""


def _stands(left: list[float], pieces: int) -> str:
    """Where an order's pieces are; they are taken off what is left for the next."""
    shelf = min(left[0], pieces)
    oil = min(left[1], pieces - shelf)
    left[0] -= shelf
    left[1] -= oil
    if shelf >= pieces:
        return "shelf"
    return "oil" if shelf + oil >= pieces else "cook"
