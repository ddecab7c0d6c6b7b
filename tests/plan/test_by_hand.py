"""The books of a day, its words and its files on days small enough to work out by hand."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest
from scipy.stats import nbinom

from frywright.model.errors import DataError, InputError
from frywright.model.trade import Trade
from frywright.plan import engine
from frywright.plan.advice import (
    Advice,
    Before,
    bank_now,
    belief_of,
    expected_path,
    from_now,
    last_drops,
    level_of,
    promise,
    world_of,
)
from frywright.plan.explain import explain, total
from frywright.plan.forecast import Forecast, Forecaster
from frywright.plan.live import Happening, State, Thrown, Tray, What, state_of
from frywright.plan.model import Day, Drop, Item, LoadSize, Order
from frywright.plan.pull import Stock, heads_for, pull
from frywright.plan.reason import reasons_of
from frywright.plan.replay import Par
from frywright.plan.sales import STEP_S, History, _moment
from frywright.plan.short import bare, wanted, whys_not
from frywright.plan.till import Picks, preview, readable

NAN = float("nan")


def day_of(**changes) -> Day:
    """Two fryers; loads of 4 and 8 that cook 2 slots, rest 1 and hold 6, and loads of 3 of another."""
    first = tuple(
        LoadSize(units_count=n, cook_slots_count=2, recovery_slots_count=1, batch_money=0.5, fryers=(0, 1))
        for n in (4, 8)
    )
    other = (LoadSize(units_count=3, cook_slots_count=3, fryers=(1,)),)
    items = (
        Item(name="a", loads=first, hold_slots_count=6, short_money=2.0, waste_money=0.5),
        Item(name="b", loads=other, hold_slots_count=4, short_money=3.0, waste_money=0.5),
    )
    usual = {"items": items, "fryers_count": 2, "slots_count": 24, "hands_count": 2, "filter_every_count": 4}
    mean = np.stack([np.full(24, 2.0), np.full(24, 1.0)])
    return Day(**{**usual, "mean_n": mean, **changes})


DAY = day_of()


def drop(at, fryer=0, item=0, load=0, **more):
    return Happening(what=What.DROP, at_n=at, fryer=fryer, item=item, load=load, **more)


def lift(at, fryer=0, **more):
    return Happening(what=What.LIFT, at_n=at, fryer=fryer, **more)


def did(what, at, item=0, units=0.0, **more):
    return Happening(what=what, at_n=at, item=item, units_n=units, **more)


def test_the_books_of_a_morning():
    """A load dropped at 1.5 is due at 3.5, back at heat a slot after its lift, good for six slots from it."""
    state = state_of(DAY, [drop(1.5, entry_number=7)], 2.0)
    (load,) = state.in_oil
    assert (load.units_n, load.drop_n, load.lift_n, load.entry_number) == (4.0, 1.5, 3.5, 7)
    assert (state.since, state.drops) == ([1, 0], [(Drop(fryer=0, item=0, load=0, slot=1), 1.5)])
    state = state_of(DAY, [drop(1.5, units_n=3.0), lift(3.75, entry_number=8)], 9.0)
    (tray,) = state.trays
    assert (tray.units_n, tray.left_n, tray.drop_n, tray.lift_n, tray.ends_n) == (3.0, 3.0, 1.5, 3.75, 9.75)
    assert (tray.load, tray.fryer, tray.entry_number) == (0, 0, 8)
    assert (state.lifts[0].fryer, state.lifts[0].at_n, state.lifts[0].ready_n) == (0, 3.75, 4.75)
    assert (state.shelf(0), state.shelf(1), state.expired) == (3.0, 0, [])
    state = state_of(DAY, [drop(1.5), lift(3.75, units_n=5.0)], 9.75)
    assert (state.shelf(0), [t.left_n for t in state.expired]) == (0, [5.0])


def test_a_product_that_is_out_comes_in_again_and_a_fryer_that_is_down_comes_up():
    out, back = did(What.OUT, 1, item=1), did(What.IN, 3, item=1)
    assert state_of(DAY, [out], 2).out == {1} and state_of(DAY, [out, back], 4).out == set()
    down = Happening(what=What.DOWN, at_n=2.0, fryer=1)
    up = Happening(what=What.UP, at_n=5.0, fryer=1, units_n=2.5)
    state = state_of(DAY, [down], 3)
    assert (state.down, state.back_n) == ({1: 2.0}, {})
    assert bank_now(DAY, state).up == ((0, 24), (24, 24))
    state = state_of(DAY, [down, up], 6)
    assert (state.down, state.back_n) == ({}, {1: 7.5})
    assert bank_now(DAY, state).up == ((0, 24), (8, 24))
    again = state_of(DAY, [down, up, replace(down, at_n=9.0)], 10)
    assert (again.down, again.back_n) == ({1: 9.0}, {})
    turned = state_of(DAY, [drop(0), lift(2), Happening(what=What.FILTER, at_n=3.0, fryer=0)], 4)
    assert (turned.since, turned.filters) == ([0, 0], [(0, 3.0)])


TWO = [drop(0), lift(2), drop(3.5), lift(6)]  # trays of 4 that end at 8 and at 12


def test_what_is_sold_counted_and_thrown_leaves_the_oldest_first():
    sold = state_of(DAY, [*TWO, did(What.SOLD, 6.2, units=5.0), did(What.SOLD, 6.9, units=1.0)], 7)
    assert [t.left_n for t in sold.trays] == [2.0]
    assert sold.sold_n[0, 6] == 6.0 and np.isnan(sold.sold_n[0, 5]) and np.isnan(sold.sold_n[1]).all()
    assert (sold.bare[0, 6], sold.notes) == (False, [])
    bare_now = state_of(DAY, [*TWO, did(What.SOLD, 6.2, units=9.0)], 7)
    assert bare_now.bare[0, 6] and [n.kind for n in bare_now.notes] == ["oversold"]
    stale = state_of(
        DAY, [*TWO, did(What.SOLD, 8.0, units=3.0)], 9
    )  # what is past its hold is not sold first
    assert [(t.ends_n, t.left_n) for t in stale.trays] == [(8.0, 4.0), (12.0, 1.0)]
    counted = state_of(DAY, [*TWO, did(What.COUNT, 7, units=3.0)], 7)
    assert [(t.ends_n, t.left_n) for t in counted.trays] == [(12.0, 3.0)]
    same = state_of(DAY, [*TWO, did(What.COUNT, 7, units=8.0)], 7)
    assert (same.shelf(0), same.notes) == (8.0, [])
    more = state_of(DAY, [*TWO, did(What.COUNT, 7, units=9.5)], 7)
    assert (more.shelf(0), more.notes[0].kind, more.notes[0].values) == (8.0, "more_counted", {"units": 1.5})
    thrown = state_of(DAY, [*TWO, did(What.DISCARD, 7, units=6.0, reason="expired")], 7)
    assert [(x.units_n, x.tray.ends_n, x.tray.left_n, x.reason) for x in thrown.thrown] == [
        (4.0, 8.0, 4.0, "expired"),
        (2.0, 12.0, 4.0, "expired"),
    ]
    assert thrown.notes == []
    much = state_of(DAY, [*TWO, did(What.DISCARD, 7, units=9.0)], 7)
    assert (much.notes[0].kind, much.notes[0].values, much.trays) == ("more_thrown", {"units": 1.0}, [])


def test_guests_take_what_stands_there_in_each_slot_that_has_ended():
    """Three, then two of four, then one of nothing; where no till tells it, nothing is told."""
    guests = np.zeros((2, 24), dtype=np.int64)
    guests[0, 2:5] = [3, 2, 1]
    state = state_of(DAY, TWO[:2], 5.5, guests)
    assert state.sold_n[0, :5].tolist() == [0.0, 0.0, 3.0, 1.0, 0.0] and np.isnan(state.sold_n[0, 5])
    assert state.bare[0, :5].tolist() == [False, False, False, True, True]
    silent = state_of(DAY, TWO[:2], 5.5, guests, told=False)
    assert np.isnan(silent.sold_n).all() and silent.shelf(0) == 0


@pytest.mark.parametrize(
    ("fact", "field"),
    [
        (drop(0, fryer=2), "fryer"),
        (drop(0, fryer=-1), "fryer"),
        (drop(0, item=2), "product"),
        (drop(0, load=2), "load"),
        (lift(0, fryer=2), "fryer"),
        (did(What.SOLD, 0, item=2, units=1.0), "product"),
        (did(What.SOLD, 0, units=-0.5), "units"),
        (did(What.COUNT, 0, units=NAN), "units"),
        (Happening(what=What.DOWN, at_n=0, fryer=2), "fryer"),
        (Happening(what=What.OUT, at_n=0, item=-1), "product"),
    ],
)
def test_what_the_day_does_not_have_is_refused(fact, field):
    with pytest.raises(InputError) as refused:
        state_of(DAY, [fact], 1)
    assert refused.value.field == field


def test_the_level_of_a_day_is_what_was_seen_over_what_was_expected():
    """Each slot weighs by the spread 1.5, older ones fade, the prior counts as 1 / cv^2 of pieces; a slot
    whose shelf ran bare counts as expected at least.
    """
    keep = engine_keep()
    seen = np.full((2, 24), NAN)
    seen[:, :3] = [[4.0, 3.0, 0.0], [1.0, 2.0, 1.0]]
    state = State(now_n=4.0, since=[0, 0], sold_n=seen, bare=np.zeros((2, 24), dtype=bool))
    fades = keep ** np.arange(4, 1, -1.0) * keep**-1.0
    sums = np.array([[4.0, 3.0, 0.0], [1.0, 2.0, 1.0]]) / 1.5
    hoped = np.array([[2.0] * 3, [1.0] * 3]) / 1.5
    belief = belief_of(DAY, state, 4)
    assert belief[0, 1:] == pytest.approx(sums @ fades) and belief[1, 1:] == pytest.approx(hoped @ fades)
    assert belief[:, 0] == pytest.approx(belief[:, 1:].sum(axis=1))
    prior = 1.0 / DAY.level_cv_frac**2
    assert level_of(DAY, state) == pytest.approx((prior + belief[0, 0]) / (prior + belief[1, 0]))
    state.bare[0, 2] = True
    before = belief_of(DAY, state, 2)
    level = (prior + keep * before[0, 0]) / (prior + keep * before[1, 0])
    assert belief_of(DAY, state, 3)[0, 1] == pytest.approx(keep * before[0, 1] + 2.0 * level / 1.5)
    ordered = replace(DAY, orders=(Order(item=0, slot=0, units_count=3),))
    assert belief_of(ordered, state, 1)[0, 1] == pytest.approx(1.0 / 1.5)


def engine_keep() -> float:
    from frywright.plan.replay import KEEP_FRAC

    return KEEP_FRAC


def test_a_day_from_now_on_is_cut_into_slots_from_this_moment():
    """A quarter into a slot each new slot holds three quarters of its own and a quarter of the next."""
    mean = np.stack([np.arange(24.0), np.ones(24)])
    orders = tuple(Order(item=0, slot=s, units_count=1) for s in (3, 5, 9))
    day = day_of(mean_n=mean, up=((0, 24), (8, 20)), rush=((0, 3), (10, 14)), orders=orders)
    found = from_now(day, State(now_n=5.25))
    assert found.mean_n[0] == pytest.approx(np.r_[0.75 * mean[0, :-1] + 0.25 * mean[0, 1:], 0.75 * 23.0])
    assert found.up == ((0, 24), (8, 20)) and found.rush == ((0, 3), (9, 14))
    assert [o.slot for o in found.orders] == [3, 5, 8]
    assert from_now(day, State(now_n=5.8)).up == ((0, 24), (8, 20))
    assert from_now(replace(day, up=((6, 24), (8, 20))), State(now_n=5.8)).up == ((6, 24), (8, 20))
    assert from_now(day, State(now_n=5.0)) is day and from_now(day, State(now_n=24.5)) is day


def test_the_world_of_the_engine_holds_what_the_state_holds():
    """Shelf, oil, fryers that are busy, hands that moved, power that is drawn."""
    day = replace(DAY, power_w=(5e3, 7e3), cap_w=20e3)
    happened = [drop(0), lift(2), drop(4.0, load=1), drop(5.0, fryer=1, item=1)]
    t, (made, stock, fryers, slots, watts, _), _ = world_of(day, state_of(day, happened, 5.0))
    assert (t, made[0, 2], made[0, 6], made[1, 8]) == (5, 4, 8, 3)
    assert (stock[0].tolist(), stock[3].tolist()) == ([4, 0], [12, 3])
    assert fryers[0].tolist() == [7, 8] and fryers[1].tolist() == [2, 1]
    assert (slots[0, 5], slots[0, 6], slots[0, 8]) == (1, 1, 1)
    assert watts[4:9].tolist() == [0.0, 12e3, 12e3, 7e3, 0.0]
    filters = [Happening(what=What.FILTER, at_n=4.5, fryer=0)]
    _, (_, _, fryers, slots, _, _), _ = world_of(day, state_of(day, filters, 5.0))
    assert fryers[0].tolist()[0] == 7 and slots[1, 4:8].tolist() == [0, 1, 1, 0]
    resting = state_of(day, [drop(0), lift(4.5)], 5.0)
    _, (_, _, fryers, slots, watts, _), _ = world_of(day, resting)
    assert fryers[0, 0] == 6 and watts[4:7].tolist() == [0.0, 5e3, 0.0]
    broken = [drop(4.0), Happening(what=What.DOWN, at_n=4.5, fryer=0)]
    _, (made, _, fryers, _, _, _), _ = world_of(day, state_of(day, broken, 5.0))
    assert fryers[0, 0] == 24 and not made.any()


def test_advice_that_stands_is_known_by_its_fryer():
    note = SimpleNamespace()
    told = {
        0: Advice(fryer=0, kind="drop", item=1, load=2, gain_money=0.7, reason=note),
        1: Advice(fryer=1, kind="wait", gain_money=0.1, reason=note),
        2: Advice(fryer=2, kind="filter", gain_money=0.2, reason=note),
    }
    before = Before(advice=told)
    assert [before.of(f) for f in range(4)] == [
        (1, 2),
        (engine.NOTHING, 0),
        (engine.FILTER, 0),
        (engine.NOTHING, 0),
    ]
    assert [before.gain(f) for f in range(4)] == [0.7, 0.1, 0.2, 0.0]


def test_a_last_drop_still_sells_by_half_and_a_path_keeps_its_sum():
    """Two a slot to the close: a load of four lifted with a slot left sells its half; the path is whole."""
    assert last_drops(DAY) == (21, 19)
    assert last_drops(DAY, 0.5) == (20, 18)
    assert last_drops(replace(DAY, mean_n=np.zeros((2, 24)))) == (-1, -1)
    mean = np.stack([np.full(24, 0.3), np.full(24, 1.5)])
    day = day_of(mean_n=mean, orders=(Order(item=0, slot=3, units_count=5),))
    path = expected_path(day)
    assert path.sum(axis=1).tolist() == [7 + 5, 36] and path[0, 3] - 5 in (0, 1)
    assert np.abs(np.cumsum(path - day.firm_n, axis=1) - np.cumsum(mean, axis=1)).max() <= 0.5
    assert expected_path(day, 2.0).sum(axis=1).tolist() == [14 + 5, 72]


@pytest.mark.parametrize("order", [(2, 9, 4), (-1, 9, 4), (0, 3, 4), (0, 24, 4), (0, 9, 0), (0, 9, 10_001)])
def test_orders_that_cannot_be_are_refused(order):
    with pytest.raises(InputError, match="1 to 10,000"):
        promise(DAY, state_of(DAY, [], 3.5), Par(), order, paths=2)


def test_a_small_order_far_ahead_is_kept_and_one_no_bank_can_make_is_not():
    """Eight in two hours: sure, by drops that still hold then. Five hundred: no chance, and the largest that
    has one is found between.
    """
    quiet = replace(DAY, mean_n=np.full((2, 24), 0.05))
    state = state_of(quiet, [], 2.0)
    small = promise(quiet, state, Par(), (0, 12, 8), paths=20)
    assert (small.feasible, small.largest_n, small.chance_frac) == (True, 8, 1.0)
    assert 4 <= small.first_drop < 12 and set(small.fryers) <= {0, 1} and small.fryers
    large = promise(quiet, state, Par(), (0, 12, 500), paths=20)
    assert (large.feasible, large.chance_frac) == (False, 0.0)
    assert 8 <= large.largest_n < 100 and large.others_short_n >= 0.0


def tray(**changes) -> Tray:
    usual = {"item": 0, "units_n": 8.0, "left_n": 0.0, "drop_n": 2.0, "lift_n": 4.0, "ends_n": 10.0}
    return Tray(load=0, fryer=0, **{**usual, **changes})


@pytest.mark.parametrize(
    ("units", "sold", "mix", "planned", "at", "reason", "parts"),
    [
        (2.0, 6.0, 1.0, (), 10.0, "", {"forecast": 2.0}),
        (8.0, 0.0, 1.0, (), 10.0, "", {"forecast": 8.0}),
        (8.0, 11.0, 1.0, (), 10.0, "", {"forecast": 1.0, "hold": 7.0}),
        (5.0, 12.0, 1.0, (), 10.0, "burnt in the basket", {"error": 5.0}),
        (5.0, 12.0, 1.25, (), 10.0, "", {"mix": 1.6, "hold": 3.4}),
        (5.0, 12.0, 1.0, (3, 9), 10.0, "", {"hold": 5.0}),
        (5.0, 12.0, 1.0, (4, 9), 10.0, "", {"late or early drop": 5.0}),
        (5.0, 12.0, 1.0, (), 22.0, "", {"close": 5.0}),
        (5.0, 12.0, 1.0, (), 21.9, "", {"hold": 5.0}),
    ],
)
def test_each_piece_thrown_away_has_its_cause(units, sold, mix, planned, at, reason, parts):
    """A tray of eight that lived six slots in which twelve were expected: what was expected and not sold is
    the forecast's, what the cuts' mix makes too many the mix's; then a drop more than a slot and a half off.
    """
    seen = np.full((2, 24), NAN)
    seen[0, 4:10] = sold / 6.0
    thrown = Thrown(tray=tray(), units_n=units, at_n=at, reason=reason)
    state = State(now_n=24.0, sold_n=seen, thrown=[thrown, replace(thrown, units_n=0.0)])
    drops = [Drop(fryer=0, item=0, load=0, slot=s) for s in planned]
    drops += [Drop(fryer=0, item=1, load=0, slot=2)] if planned else []
    (waste,) = explain(DAY, state, drops, [mix, 1.0])
    assert {k: v for k, v in waste.parts_n.items() if v} == pytest.approx(parts)
    assert (waste.item, waste.lift_n, waste.units_n) == (0, 4.0, pytest.approx(units))
    assert total([waste, waste]) == pytest.approx({k: 2.0 * v for k, v in waste.parts_n.items()})


def test_a_load_larger_than_the_forecast_could_sell_is_its_own_cause():
    small = replace(DAY, mean_n=np.stack([np.full(24, 0.5), np.zeros(24)]))
    thrown = Thrown(tray=tray(), units_n=7.0, at_n=10.0, reason="")
    seen = np.zeros((2, 24))
    seen[0, 4] = 1.0
    (waste,) = explain(small, State(now_n=24.0, sold_n=seen, thrown=[thrown]))
    assert {k: v for k, v in waste.parts_n.items() if v} == pytest.approx({"load size": 5.0, "forecast": 2.0})
    for mix in ([1.0], [0.9, 1.0]):
        with pytest.raises(InputError, match="one factor"):
            explain(small, State(now_n=1.0), (), mix)


def reason(day, happened, now, action):
    state = state_of(day, happened, now)
    t, world, _ = world_of(day, state)
    world[5][0] = 1.0
    return reasons_of(day, state, world, (action[0], t, *action[1:]))[0]


def test_reasons_tell_what_is_there_and_what_will_be_asked_for():
    """Of a drop: shelf, oil, and what is expected in two slots of cooking and its six of hold life."""
    told = reason(DAY, [*TWO[:2], drop(4.0, fryer=1, load=1)], 5.0, (0, 0, 0))
    there = {"shelf": 4.0, "oil": 8.0, "wanted": 16, "minutes": 15.0}  # lifted at 2, out at 8, now it is 5
    assert (told.kind, told.values) == ("drop", there)
    assert "the oldest for {minutes} min more" in told.text
    late = reason(DAY, [], 20.0, (0, 0, 0))
    assert late.values == {"shelf": 0.0, "oil": 0.0, "wanted": 8}
    assert "oldest" not in late.text
    assert reason(DAY, TWO, 7.0, (0, engine.FILTER, 0)).values == {"loads": 2.0}
    assert reason(DAY, [*TWO, drop(6.5, fryer=1, item=1)], 7.0, (0, engine.NOTHING, 0)).kind == "wait"
    assert reason(DAY, TWO, 22.0, (0, engine.NOTHING, 0)).kind == "closed"
    loads = [x for n in range(4) for x in (drop(3.0 * n), lift(3.0 * n + 2))]
    for day, words in (
        (DAY, "free hands"),
        (replace(DAY, rush=((13, 14),)), "not in a rush"),
        (replace(DAY, filter_slots_count=13), "before the close"),
    ):
        due = reason(day, loads, 12.0, (0, engine.NOTHING, 0))
        assert (due.kind, due.values) == ("blocked", {"loads": 4.0}) and words in due.text


@pytest.mark.parametrize(
    ("changes", "happened", "kind"),
    [
        ({"mean_n": np.full((2, 24), 0.6)}, [], "too_large"),
        ({"up": ((0, 7), (0, 24))}, [], "hours"),
        ({"hands_count": 1}, [Happening(what=What.FILTER, at_n=5.0, fryer=1)], "hands"),
        ({}, [], "power"),
    ],
)
def test_why_nothing_goes_into_an_empty_fryer_beside_an_empty_shelf(changes, happened, kind):
    """The first reason that holds: size, hours, hands; what is left is power."""
    day = day_of(**changes)
    state = state_of(day, happened, 5.0)
    t, world, _ = world_of(day, state)
    world[5][0] = 1.0
    assert bare(day, state, world, (0, t)) == [0]
    (told,) = whys_not(day, state, world, (0, t))
    assert told.kind == kind
    if kind == "too_large":
        assert told.values == {"product": "a", "pieces": 4.0, "wanted": 3.0}
    assert wanted(
        replace(day, orders=(Order(item=0, slot=9, units_count=5),)), world, (0, t), 0
    ) == pytest.approx(6 * day.mean_n[0, 0] + 5.0)


def test_a_load_that_costs_more_than_it_sells_for_is_dear_and_what_stands_or_is_out_is_not_bare():
    dear = tuple(replace(x, batch_money=8.0) for x in DAY.items[0].loads)
    day = replace(DAY, items=(replace(DAY.items[0], loads=dear), DAY.items[1]))
    state = state_of(day, [], 5.0)
    _, world, _ = world_of(day, state)
    world[5][0] = 1.0
    assert whys_not(day, state, world, (0, 5))[0].kind == "dear"
    assert bare(day, state, world, (1, 5)) == [0, 1]  # 2 x 2.00 is lost before 1 x 3.00
    for happened, left in (([did(What.OUT, 1)], [1]), ([drop(4.0)], [1]), (TWO[:2], [1])):
        state = state_of(day, happened, 5.0)
        assert bare(day, state, world_of(day, state)[1], (1, 5)) == left
    few = replace(day, mean_n=np.stack([np.full(24, 0.49), np.full(24, 0.5)]))
    assert bare(few, state_of(few, [], 5.0), world_of(few, state_of(few, [], 5.0))[1], (1, 5)) == [1]


def test_totals_of_a_forecast_spread_by_slots_and_by_days():
    """Negative binomial with variance over mean of 1.5 inside the day and a day's own 20 %."""
    mean = np.array([[3.0, 5.0, 2.0]])
    found = Forecast(mean_n=mean, spread_n=np.array([1.5]), level_cv_frac=np.array([0.2]))
    for total_n, got in ((mean.sum(), found.total_quantile), (5.0, lambda s: found.quantile(s)[:, :, 1])):
        ratio = 1.5 + 0.2**2 * total_n
        law = nbinom(total_n / (ratio - 1.0), 1.0 / ratio)
        assert got((0.1, 0.5, 0.9))[:, 0].tolist() == law.ppf([0.1, 0.5, 0.9]).tolist()


@pytest.mark.parametrize("shape", [(0, 4), (4, 0), (-1, 4)])
def test_a_forecaster_of_nothing_is_refused(shape):
    with pytest.raises(InputError, match="1 or more"):
        Forecaster(series_count=shape[0], slots_count=shape[1])


def test_quarter_hours_become_slots_of_any_length_and_lose_nothing():
    """Slots of 20 minutes from 9:40: each takes its minutes' share, the ends what lies outside."""
    trade = Trade(opens="10:00", closes="12:00", first_drop="09:40", slot_s=1200.0)
    history = History(
        series=(), dates=(), start_s=9.5 * 3600, pieces_n=np.zeros(0), unmapped=(), catering=(), outages=()
    )
    mean = np.array([[6.0, 3.0, 9.0, 3.0, 0.0, 0.0, 0.0, 0.0, 0.0, 12.0]])
    found = history.by_slot(mean, trade)[0]
    assert STEP_S == 900.0 and len(found) == trade.slots_count == 7
    assert found.sum() == pytest.approx(33.0)
    assert found[:3] == pytest.approx([6.0 + 3.0, 9.0 + 3.0 / 3.0, 2.0])  # to 10:00, 10:20, 10:40
    assert found[-1] == pytest.approx(12.0)


@pytest.mark.parametrize(
    ("cell", "second"),
    [
        ("11:15-11:30", 11.25 * 3600),
        ("11:15 – 11:30", None),
        ("11:15", 11.25 * 3600),
        ("-11", None),
        ("11-12", None),
    ],
)
def test_an_interval_counts_from_its_start(cell, second):
    found = _moment(cell)
    assert (found and found.second_s) == second


def test_a_preview_has_the_line_of_names_and_eight_rows_below_it():
    """Titles above are passed over; a line as long is padded; one column, or nothing, is no table."""
    rows = "".join(f"{n};x{n};{n}\n" for n in range(12))
    found = preview(f"Sales\n;\nNo;What; Count \n{rows}".encode(), "x")
    assert found.header == ("No", "What", "Count")
    assert found.rows == tuple((str(n), f"x{n}", str(n)) for n in range(8))
    assert preview(b"a;b;c\n1;2\n3;4;5;6\n", "x").rows == (("1", "2", ""), ("3", "4", "5"))
    wide = ";".join(f"c{n}" for n in range(70))
    assert len(preview(f"{wide}\n{wide}\n".encode(), "x").header) == 60
    for text in (b"", b"\n\n", b"alone\nand alone\n"):
        with pytest.raises(DataError, match="no table"):
            preview(text, "x")
    picked = readable(b"no;what\n1;a;9\n2\n", "x", Picks(columns=("", "item"), day=dt.date(2026, 11, 25)))
    assert picked == b"date;item\n2026-11-25;a\n2026-11-25;\n"


def test_heads_cover_the_worst_cut_and_pieces_of_any_cut_fill_up():
    per = {"thigh": 2, "wing": 2, "drum": 2, "breast": 2}
    assert heads_for({"thigh": 30.0, "wing": 10.0}, per) == (15.0, "thigh")
    assert heads_for({"thigh": 30.0, "wing": 10.0}, per, 80.0) == (15.0, "thigh")
    assert heads_for({"thigh": 30.0, "wing": 10.0}, per, 88.0) == (16.0, "")
    assert heads_for({}, per, 8.0) == (1.0, "") and heads_for({"leg": 0.0}, per) == (0.0, "")
    for pieces, any_cut in (({"leg": 1.0}, 0.0), ({"thigh": -1.0}, 0.0), ({}, -1.0)):
        with pytest.raises(InputError):
            heads_for(pieces, per, any_cut)


def test_cases_are_pulled_whole_with_both_risks_told():
    """Against SciPy's law of what is asked for: one too few costs three times one too many."""
    law = nbinom(40.0 / 0.5, 1.0 / 1.5)
    stock = [Stock(units_n=7.0, in_date_days_count=0), Stock(units_n=9.0, in_date_days_count=-1)]
    found = pull(40.0, 1.5, (3.0, 1.0), stock, 10)
    wanted_n = law.ppf(0.75)
    assert (found.needed_n, found.on_hand_n, found.expired_n) == (wanted_n, 7.0, 9.0)
    assert found.cases_count == np.ceil((wanted_n - 7.0) / 10.0) and found.units_n == 10.0 * found.cases_count
    there, counts = 7.0 + found.units_n, np.arange(400)
    assert found.short_frac == pytest.approx(1.0 - law.cdf(there))
    assert found.over_frac == pytest.approx(law.cdf(there - 10.0))
    assert found.expected_over_n == pytest.approx(np.maximum(there - counts, 0.0) @ law.pmf(counts))
    twice = pull(40.0, 1.5, (3.0, 1.0), (), 1, 2.0)
    assert (twice.needed_n, twice.mean_n, twice.units_n) == (2.0 * wanted_n, 80.0, 2.0 * wanted_n)
    none = pull(0.0, 1.5, (3.0, 1.0), stock, 10)
    assert (none.cases_count, none.short_frac, none.over_frac, none.expected_over_n) == (0, 0.0, 0.0, 7.0)
    for money, case, factor in (((0.0, 1.0), 1, 1.0), ((1.0, 1.0), 0, 1.0), ((1.0, 1.0), 1, 0.9)):
        with pytest.raises(InputError):
            pull(1.0, 1.5, money, (), case, factor)
