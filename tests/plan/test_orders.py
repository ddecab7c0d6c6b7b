"""Promised orders are in the plan: cooked for in time, not scaled with the day's level, priced, told apart
from what guests ask for.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.model.errors import InputError
from frywright.plan.advice import advise, expected_path, outlook, promise
from frywright.plan.check import broken_rules, price
from frywright.plan.live import Happening, State, What, state_of
from frywright.plan.model import PROMISE_WEIGHT, Day, Order, Plan
from frywright.plan.replay import Look, Par, draw_days, replay
from tests.plan.test_replay import hard_day, kitchen_day

LOOK = Look(paths_count=24, horizon_slots_count=40)
SLOT = 40


def with_order(units: int = 30) -> tuple[Day, Day]:
    """A quiet two-fryer day, and the same with one order before its lunch is over."""
    day = kitchen_day(2, 2, 96, 3, 6)
    return day, replace(day, orders=(Order(item=0, slot=SLOT, units_count=units),))


def missed(day: Day, demand, played) -> np.ndarray:
    """Pieces of the first order that were not there, by day."""
    order = day.orders[0]
    sold = demand[:, order.item, order.slot] - played.shelf[:, 1, order.item, order.slot]
    return np.maximum(order.units_count - sold, 0)


@pytest.mark.slow
def test_an_order_comes_on_top_and_is_met():
    """The same days with an order of 30: guests ask for as much as before, the order is there on nine days of
    ten by rule and engine, and without knowing of it it is not.
    """
    day, knows = with_order()
    demand = draw_days(knows, 20, 4)
    assert (demand - draw_days(day, 20, 4)).sum() == 20 * 30
    blind = missed(knows, demand, replay(day, demand, Par(), LOOK))
    for look in (None, LOOK):
        played = replay(knows, demand, Par(), look)
        assert (missed(knows, demand, played) == 0).mean() >= 0.9
        assert [broken_rules(knows, plan) for plan in played.plans] == [[]] * 20
    assert (blind == 0).mean() < 0.5


def test_a_missed_promise_is_priced_alike_by_engine_and_check():
    """Each promised piece that is not there counts three times; engine and check agree to the cent."""
    day, knows = with_order(400)
    demand = draw_days(knows, 3, 4)
    played = replay(knows, demand, Par())
    lost = missed(knows, demand, played)
    assert lost.min() > 0
    for n, plan in enumerate(played.plans):
        told = price(knows, plan, demand[n : n + 1])
        assert told.total_money == pytest.approx(played.cost_money[n])
        plain = price(day, plan, demand[n : n + 1])
        extra = (PROMISE_WEIGHT - 1.0) * day.items[0].short_money * lost[n]
        assert told.total_money - plain.total_money == pytest.approx(extra)


def test_the_rule_keeps_every_rule_with_orders():
    """Orders press the bank, yet break no rule of it."""
    day = hard_day(2, 2, 1, 3)
    day = replace(day, orders=tuple(Order(item=n % 2, slot=20 + 15 * n, units_count=40) for n in range(4)))
    played = replay(day, draw_days(day, 4, 3), Par(), LOOK)
    assert not any(broken_rules(day, plan) for plan in played.plans)


def test_a_slow_day_does_not_shrink_an_order():
    """Nothing was sold all morning: at the last moment the load for the order is advised all the same."""
    _, knows = with_order(2 * kitchen_day(2, 2, 96, 3, 6).items[0].loads[-1].units_count)
    day = replace(knows, mean_n=np.full((2, 96), 0.02))
    now = SLOT - day.items[0].loads[-1].cook_slots_count
    none = [Happening(what=What.SOLD, at_n=s, item=i, units_n=0.0) for s in range(now) for i in range(2)]
    found = advise(day, state_of(day, none, float(now)), Par(), LOOK)
    assert {(a.kind, a.item) for a in found} == {("drop", 0)}
    without = advise(replace(day, orders=()), state_of(day, none, float(now)), Par(), LOOK)
    assert {a.kind for a in without} == {"wait"}


def test_the_plan_has_it_and_a_second_order_counts_the_first():
    """The morning plan drops for the order before its slot; the expected path has it; a bank that is full
    with one order promises less for the next.
    """
    day, knows = with_order(60)
    assert expected_path(knows)[0, SLOT] - expected_path(day)[0, SLOT] == 60

    def before(plan: Plan) -> int:
        """Pieces that are lifted before the order and still held for it."""
        loads = [(d.slot, day.items[0].loads[d.load]) for d in plan.drops if d.item == 0]
        stale = SLOT - day.items[0].hold_slots_count
        return sum(x.units_count for slot, x in loads if stale < slot + x.cook_slots_count <= SLOT)

    assert before(outlook(knows, None, Par(), LOOK, paths=2).plan) >= 60
    state = State(now_n=0.0, since=[0] * 2, sold_n=np.full(day.mean_n.shape, np.nan))
    first = promise(day, state, Par(), (0, SLOT, 2000), paths=40).largest_n
    second = promise(knows, state, Par(), (0, SLOT, 2000), paths=40).largest_n
    assert 0 <= second < first


@pytest.mark.parametrize("wrong", [{"item": 9}, {"slot": 96}, {"slot": -1}, {"units_count": 0}])
def test_impossible_orders_are_refused(wrong):
    """An order names a product and a slot of the day, and one piece or more."""
    day, knows = with_order()
    with pytest.raises(InputError):
        replace(day, orders=(replace(knows.orders[0], **wrong),))
