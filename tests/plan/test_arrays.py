"""What the engine is handed of a day, what is drawn of it, and what a change of it brings: by hand."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.plan.binds import _changes, compared
from frywright.plan.check import price
from frywright.plan.model import PROMISE_WEIGHT, Drop, Order, Plan
from frywright.plan.replay import KEEP_FRAC, Look, Par, Replay, Rule, _lead, draw_days, given, plan_of
from tests.plan.test_by_hand import DAY, day_of
from tests.plan.test_race import bank


def test_the_engine_is_handed_what_the_day_says():
    """Sizes, who may cook what, costs, holds, running sums, hands, windows, power, the rule by part."""
    mean = np.stack([np.arange(24.0), np.full(24, 0.5)])
    orders = (Order(item=0, slot=3, units_count=5), Order(item=0, slot=9, units_count=9))
    day = day_of(
        mean_n=mean,
        orders=orders,
        up=((0, 20), (4, 24)),
        rush=((5, 7),),
        power_w=(4e3, 6e3),
        cap_w=9e3,
        filter_money=1.5,
        hands_count=3,
        filter_slots_count=2,
        filters_at_once_count=1,
    )
    found = given(day, Par(cover_slots=(4, 6), z_n=(0.5, 1.0), quiet_frac=0.5))
    sizes, may, cost, holds, money, ahead, bank, windows, rush, power, prior = found[:11]
    assert sizes[:, 0].tolist() == [[4, 8], [2, 2], [1, 1], [2, 2]]
    assert sizes[:, 1, 0].tolist() == [3, 3, 0, 1] and sizes[3, 1, 1] == 1
    assert may.tolist() == [[[True, True], [True, True]], [[False, True], [False, False]]]
    assert cost.tolist() == [[0.5, 0.5], [0.0, 0.0]] and holds.tolist() == [6, 4]
    assert money.tolist() == [[2.0, 0.5, 1.5], [3.0, 0.5, 1.5]]
    assert ahead[0].tolist() == [0.0, *np.cumsum(mean[0])] and ahead[1, -1] == 12.0
    assert bank.tolist() == [3, 4, 2, 1, 2] and windows.tolist() == [[0, 20], [4, 24]]
    assert np.flatnonzero(rush).tolist() == [5, 6] and power.tolist() == [4e3, 6e3, 9e3]
    assert prior == pytest.approx([1 / day.level_cv_frac**2, 1 / 0.15**2, KEEP_FRAC, PROMISE_WEIGHT])
    filter_money, table, parts, span, cooks, order, firm, lead = found[11:]
    assert filter_money == 1.5 and table.shape == (5, 4, 2)
    assert [t.tolist() for t in table[:, 2]] == [[4.0, 6.0], [0.5, 1.0], [0.5, 0.5], [4.0, 6.0], [0.5, 1.0]]
    assert parts.tolist() == [0] * 6 + [1] * 6 + [2] * 6 + [3] * 6
    assert span.tolist() == [[[0, 0], [-1, 0]], [[1, 1], [-1, 0]]]
    assert cooks.tolist() == [2, 3] and order.tolist() == [0, 1]
    assert firm[0].tolist() == [0] * 4 + [5] * 6 + [14] * 15 and not firm[1].any()
    assert lead.tolist() == [5, 2]
    bare = given(DAY, Par(quiet_frac=2.0))
    assert bare[6].tolist()[-1] == 4 and bare[9].tolist() == [0.0, 0.0, float("inf")]
    rule = Rule(table_n=tuple(((float(n),) * 2,) * 4 for n in range(5)), quiet_frac=0.1)
    assert given(DAY, rule)[6].tolist()[-1] == 1 and given(DAY, rule)[12][3, 1, 0] == 3.0


@pytest.mark.parametrize(("units", "lead"), [(1, 5), (8, 5), (9, 5), (100, 5)])
def test_orders_are_cooked_for_ahead_by_rounds_of_half_the_fryers_within_the_hold_life(units, lead):
    """A round is three slots, two to spare; never longer than it may stand."""
    day = replace(DAY, orders=(Order(item=0, slot=20, units_count=units),))
    assert _lead(day, 0) == lead
    long = replace(day, items=(replace(DAY.items[0], hold_slots_count=20), DAY.items[1]))
    assert _lead(long, 0) == min(19, 3 * -(-units // 8) + 2)
    assert _lead(DAY, 0) == 2 and _lead(DAY, 1) == 2


def test_days_are_drawn_about_the_mean_with_their_spreads_and_what_is_promised():
    """Level with its variation, slots over-dispersed, orders on top; the same seed the same days."""
    day = replace(DAY, orders=(Order(item=1, slot=2, units_count=7),))
    drawn = draw_days(day, 4000, 3)
    assert np.array_equal(drawn, draw_days(day, 4000, 3)) and drawn[:, 1, 2].min() >= 7
    assert drawn[:, 0].mean() == pytest.approx(2.0, rel=0.02)
    total = drawn[:, 0].sum(axis=1)
    wanted = 48.0 * 1.5 + (DAY.level_cv_frac * 48.0) ** 2
    assert total.var() == pytest.approx(wanted, rel=0.1)


def test_a_plan_is_read_from_its_rows_and_priced_by_its_parts():
    rows = np.array([[1, 0, 1, 3], [0, -1, 0, 8], [-1, -1, -1, -1], [0, 1, 0, 9]])
    assert plan_of(rows) == Plan(
        drops=(Drop(fryer=1, item=0, load=1, slot=3), Drop(fryer=0, item=1, load=0, slot=9)),
        filters=((0, 8),),
    )
    day = replace(DAY, filter_money=1.5)
    demand = np.zeros((2, 2, 24), dtype=np.int64)
    demand[0, 0, 6], demand[1, 0, 6] = 5, 10
    plan = Plan(drops=(Drop(fryer=1, item=0, load=1, slot=3),), filters=((0, 8), (1, 12)))
    found = price(day, plan, demand)
    assert found.batches_money == 0.5 + 3.0 and (found.sold_n, found.short_n, found.waste_n) == (
        6.5,
        1.0,
        1.5,
    )
    assert (found.short_money, found.waste_money) == (2.0 * 1.0, 0.5 * 1.5)
    assert found.total_money == 3.5 + 2.0 + 0.75
    assert (found.fill_frac, found.waste_frac) == (6.5 / 7.5, 1.5 / 8.0)
    promised = replace(day, orders=(Order(item=0, slot=6, units_count=10),))
    assert price(promised, plan, demand[1:]).short_money == 2.0 * (2.0 + (PROMISE_WEIGHT - 1.0) * 2.0)


def replayed(sold, short, thrown, cost) -> Replay:
    parts = np.zeros((len(sold), 6))
    parts[:, 3], parts[:, 4], parts[:, 5] = sold, short, thrown
    return Replay(cost_money=np.array(cost), parts_money=parts, price=None)  # type: ignore[arg-type]


def test_what_a_change_brings_has_the_doubt_of_paired_days():
    """Shares are ratios of sums; money's half width is 1.96 standard errors of the differences by day."""
    rng = np.random.default_rng(5)
    sold, short, thrown = rng.uniform(50, 100, (3, 40))
    here = replayed(sold, short, thrown, rng.uniform(20, 40, 40))
    there = replayed(sold + 10.0, short - 10.0, 0.5 * thrown, here.cost_money - rng.uniform(1, 3, 40))
    found = compared("x", here, there)
    off = there.cost_money - here.cost_money
    assert found.money == pytest.approx(off.mean())
    assert found.half_width_money == pytest.approx(1.96 * off.std(ddof=1) / np.sqrt(40))
    asked = (sold + short).sum()
    assert found.fill_frac == pytest.approx(400.0 / asked)
    before, after = (
        thrown.sum() / (sold + thrown).sum(),
        0.5 * thrown.sum() / (sold + 10 + 0.5 * thrown).sum(),
    )
    assert found.waste_frac == pytest.approx(after - before)
    each = [10.0 - 400.0 / asked * (a + b) for a, b in zip(sold, short, strict=True)]
    assert found.fill_half_width_frac == pytest.approx(
        1.96 * np.std(np.array(each) / (asked / 40), ddof=1) / np.sqrt(40)
    )
    same = compared("x", here, here)
    assert (same.money, same.fill_frac, same.half_width_money, same.waste_half_width_frac) == (0.0,) * 4


def test_each_change_of_a_day_changes_one_thing():
    day = replace(DAY, up=((0, 24), (4, 20)), power_w=(4e3, 6e3), cap_w=9e3)
    held, halved, fryers, hands, filters, even = (changed for _, changed in _changes(day))
    assert [i.hold_slots_count for i in held.items] == [9, 6]
    assert [[x.units_count for x in i.loads] for i in halved.items] == [[2, 4, 8], [1, 3]]
    assert (fryers.fryers_count, fryers.up[2], fryers.power_w) == (3, (4, 20), (4e3, 6e3, 6e3))
    assert [i.fryers for i in fryers.items] == [(0, 1, 2), (1, 2)]
    assert (hands.hands_count, filters.filter_every_count, even) == (3, 8, None)
    wild = replace(day, items=(replace(DAY.items[0], spread_n=2.0, hold_slots_count=17), DAY.items[1]))
    changes = dict(_changes(wild))
    assert changes["Hold lives half as long again"] is None
    assert {i.spread_n for i in changes["Guests who come evenly, not in groups"].items} == {1.0}
    longest = replace(wild, items=(replace(wild.items[0], hold_slots_count=16), DAY.items[1]))
    assert dict(_changes(longest))["Hold lives half as long again"].items[0].hold_slots_count == 24


def test_a_look_is_as_wide_as_a_slots_time_allows():
    """Fewer paths the more fryers; a whole day's plan with fewer still."""
    days = {n: bank(n) for n in (1, 2, 3, 4, 5, 9)}
    looks = [Look.for_bank(days[n]) for n in (1, 2, 3, 4, 9)]
    assert [x.paths_count for x in looks] == sorted((x.paths_count for x in looks), reverse=True)
    assert looks[3] == looks[4] and looks[0].paths_count > looks[1].paths_count > looks[2].paths_count
    assert all(Look.for_plan(x).paths_count <= Look.for_bank(x).paths_count for x in days.values())
    assert Look.for_plan(days[4]).paths_count > Look.for_plan(days[5]).paths_count
