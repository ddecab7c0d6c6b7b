"""Promised orders: kept once, in the plan of their day, on the board until handed over; another kitchen's day
with other hours.
"""

from __future__ import annotations

import datetime as dt
import io
from dataclasses import replace

import pytest

from frywright.ledger.facts.day import OrderPromised
from frywright.model.errors import InputError
from frywright.rooms.day import day, orders, sales
from frywright.rooms.day.board import Board, Tap
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.practice import demo_sales
from frywright.rooms.kitchen import remembered_kitchen
from tests.demo import FRIDAY, kitchen_store

NOON_S, ONE_S = 12 * 3600.0, 13 * 3600.0


@pytest.fixture
def shop(tmp_path):
    """A store with the demo's sales and Friday's bench, the rule not tuned."""
    store = kitchen_store(tmp_path / "d.db")
    kitchen = remembered_kitchen(store)
    sales.keep_sales(store, kitchen, io.BytesIO(demo_sales(kitchen, FRIDAY - dt.timedelta(days=1))), "s.csv")
    return store, kitchen, day.bench_for(store, kitchen, FRIDAY, tune=False)


def test_an_order_is_in_the_day_and_on_the_board_until_it_is_handed_over(shop):
    """Told, it is in the bench a little before its time, on the board with where its pieces are; two orders
    do not count one tray twice; handed over it leaves the board, withdrawn the plan.
    """
    store, kitchen, bench = shop
    product = bench.products[1]
    first = orders.promise_order(store, bench, (product, 12, ONE_S, " 17 "), NOON_S)
    second = orders.promise_order(store, bench, (product, 12, ONE_S + 600, ""), NOON_S)
    assert first.fact.ticket == "17"
    knows = orders.with_orders(store, bench)
    assert [(o.item, o.units_count) for o in knows.day.orders] == [(1, 12), (1, 12)]
    assert knows.day.orders[0].slot == bench.trade.slot_of(ONE_S - orders.READY_BEFORE_S)
    assert orders.with_orders(store, knows) is knows
    other = replace(bench, date=FRIDAY + dt.timedelta(days=1))
    assert orders.with_orders(store, other) is other

    board = Board(store=store, kitchen=kitchen, bench=knows, practice=3)
    load = next(x for x in bench.loads[1] if x.pieces_count >= 12)
    drop = {"fryer": load.fryer, "product": product, "pieces_count": load.pieces_count}
    board.tell(Tap(key="a", what="drop", at_s=NOON_S, **drop))
    shown = board_view(board, NOON_S + 60).orders
    enough = 1 + (load.pieces_count >= 24)
    assert [row.stands for row in shown] == ["oil", "oil" if enough == 2 else "cook"]
    assert (shown[0].at, shown[0].pieces, shown[0].ticket) == ("13:00", 12, "17")

    done = orders.end_order(store, first.number, "handed over", ONE_S - 1800)
    assert done.fact.ready_s == ONE_S - 1800
    assert orders.end_order(store, first.number, "withdrawn", ONE_S).number == first.number
    assert orders.end_order(store, done.number, "withdrawn", ONE_S).fact.state == "handed over"
    orders.end_order(store, second.number, "withdrawn", ONE_S)
    assert orders.order_rows(store, bench) == ()
    left = orders.with_orders(store, bench).day.orders
    assert [o.slot for o in left] == [bench.trade.slot_of(ONE_S - 1800 - orders.READY_BEFORE_S)]
    assert len(store.current_facts(OrderPromised)) == 2


def test_an_order_that_will_hardly_be_there_says_so_until_it_is_cooked(shop):
    """Promised all the same, it is marked with its chance until all of it is on the shelf; one that had to be
    in the oil by now is late; a likely one has no mark.
    """
    store, kitchen, bench = shop
    product = bench.products[1]
    low = orders.promise_order(store, bench, (product, 12, ONE_S, "9"), NOON_S, 0.12)
    orders.promise_order(store, bench, (product, 12, ONE_S + 600, ""), NOON_S)
    board = Board(store=store, kitchen=kitchen, bench=orders.with_orders(store, bench), practice=3)
    said = "Promised all the same: all of it is there in only 12 % of the days imagined."
    assert [row.warning for row in orders.order_rows(store, bench)] == [said, ""]
    assert [row.warning for row in board_view(board, NOON_S).orders] == [said, ""]
    late = f"Late: it had to be in the oil by {board_view(board, NOON_S).orders[0].in_by}."
    assert [row.warning for row in board_view(board, ONE_S - 60).orders] == [late, ""]
    load = next(x for x in bench.loads[1] if x.pieces_count >= 12)
    drop = {"fryer": load.fryer, "product": product, "pieces_count": load.pieces_count}
    board.tell(Tap(key="a", what="drop", at_s=ONE_S - 120, **drop))
    assert board_view(board, ONE_S - 60).orders[0].warning == said
    lift_s = ONE_S - 120 + load.lift_s
    board.tell(Tap(key="b", what="lift", at_s=lift_s, fryer=load.fryer))
    assert board_view(board, lift_s + 1).orders[0].warning == ""
    assert orders.end_order(store, low.number, "handed over", ONE_S).fact.chance_frac == 0.12


@pytest.mark.parametrize(
    ("asked", "field"),
    [
        (("none", 12, ONE_S, ""), "product"),
        ((None, 0, ONE_S, ""), "pieces"),
        ((None, 10_001, ONE_S, ""), "pieces"),
        ((None, 12, NOON_S + 60, ""), "ready at"),
        ((None, 12, 23 * 3600.0, ""), "ready at"),
    ],
)
def test_impossible_orders_are_refused_and_nothing_is_kept(shop, asked, field):
    """Each is refused with its field; an order cannot be ready sooner than a load takes."""
    store, _, bench = shop
    product = asked[0] or bench.products[1]
    with pytest.raises(InputError) as refused:
        orders.promise_order(store, bench, (product, *asked[1:]), NOON_S)
    assert refused.value.field == field
    with pytest.raises(InputError):
        orders.end_order(store, 1, "withdrawn", NOON_S)
    assert store.current_facts(OrderPromised) == []
