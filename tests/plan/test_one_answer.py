"""Plan, live bank and the search on known demand give one answer to what may happen when: the check, which
knows nothing of how plans are made, is the measure of all three.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from frywright.plan import engine
from frywright.plan.advice import bank_now, rules_now, world_of
from frywright.plan.check import broken_rules, price
from frywright.plan.live import Happening, What, state_of
from frywright.plan.model import Day, Drop, Item, LoadSize, Plan
from frywright.plan.replay import Look, Par, draw_days, replay
from tests.plan.test_replay import hard_day, kitchen_day
from tests.reference.best_day import best_plan, bound


def told(day: Day, plan: Plan, now: int) -> list[Happening]:
    """What was told of a plan before slot ``now``: drops and filter turns begun, lifts up to it."""
    found = []
    for drop in plan.drops:
        if drop.slot < now:
            values = {"fryer": drop.fryer, "item": drop.item, "load": drop.load}
            lift = drop.slot + day.items[drop.item].loads[drop.load].cook_slots_count
            found.append(Happening(what=What.DROP, at_n=drop.slot, **values))
            if lift <= now:
                found.append(Happening(what=What.LIFT, at_n=lift, fryer=drop.fryer))
    found += [Happening(what=What.FILTER, at_n=t, fryer=f) for f, t in plan.filters if t < now]
    return sorted(found, key=lambda h: (h.at_n, h.what is not What.LIFT))


def up_to(plan: Plan, now: int) -> Plan:
    """A plan as far as it was begun before a slot."""
    return Plan(
        drops=tuple(d for d in plan.drops if d.slot < now),
        filters=tuple(x for x in plan.filters if x[1] < now),
    )


def one_more(day: Day, plan: Plan, now: int) -> dict[tuple[int, int, int], bool]:
    """Whether a fryer may take each load, or (product -1) begin a filter turn, in a slot: by the check."""
    found = {}
    for f in range(day.fryers_count):
        turn = replace(plan, filters=(*plan.filters, (f, now)))
        found[f, -1, 0] = not broken_rules(day, turn)
        for i, item in enumerate(day.items):
            for k in range(len(item.loads)):
                drop = Drop(fryer=f, item=i, load=k, slot=now)
                found[f, i, k] = not broken_rules(day, replace(plan, drops=(*plan.drops, drop)))
    return found


@settings(max_examples=25, deadline=None)
@given(st.integers(1, 3), st.integers(1, 3), st.integers(1, 3), st.integers(0, 10_000), st.integers(1, 94))
def test_the_live_bank_allows_what_the_check_allows(fryers, items, hands, seed, now):
    """From any moment of a played day the bank, built anew from what was told, allows exactly the drops and
    filter turns with which the plan still breaks no rule: hands, recovery, power, filter turns, rushes,
    windows.
    """
    same_answer(hard_day(fryers, items, hands, seed), seed, now)


@pytest.mark.parametrize("hands", [1, 2])
def test_it_does_so_at_every_mark_of_a_day(hands):
    """One day from its first to its last slot, few hands and fryers that take a slot to come back to heat."""
    day = hard_day(2, 2, hands, 4)
    slow = (replace(x, loads=tuple(replace(y, recovery_slots_count=2) for y in x.loads)) for x in day.items)
    day = replace(day, items=tuple(slow))
    for now in range(1, 95):
        same_answer(day, 4, now)


def same_answer(day: Day, seed: int, now: int) -> None:
    """A day played by the rule up to a slot: bank and check allow the same from there."""
    plan = up_to(replay(day, draw_days(day, 1, seed), Par(quiet_frac=0.5)).plans[0], now)
    assert broken_rules(day, plan) == []
    state = state_of(day, told(day, plan, now), float(now))
    today = bank_now(day, state)
    rules, (t, world, _) = rules_now(today, state, Par()), world_of(today, state)
    assert t == now
    for (f, i, k), allowed in one_more(day, plan, now).items():
        free = bool(world[2][0, f] <= t)
        if i < 0:
            live = free and bool(engine.may_filter(f, t, world, rules))
        else:
            live = free and bool(engine.may_drop(f, t, i, k, world, rules))
        assert live == allowed, (f, i, k)


def tight(fryers: int, slots: int, seed: int) -> Day:
    """A short day with every rule in the way: a filter turn due after two loads, a rush, windows, a cap, one
    pair of hands.
    """
    return kitchen_day(
        fryers,
        2,
        slots,
        1,
        seed,
        up=tuple((1 + f, slots - 2 * f) for f in range(fryers)),
        rush=((6, 9), (15, 18)),
        power_w=(10e3,) * fryers,
        cap_w=15e3,
        filter_money=1.5,
        filter_every_count=2,
    )


@pytest.mark.slow
@pytest.mark.parametrize(("fryers", "slots", "seed"), [(1, 24, 4), (1, 24, 5), (1, 30, 2), (2, 20, 3)])
def test_known_demand_with_every_rule_is_solved_to_the_proven_optimum(fryers, slots, seed):
    """Annealing with filter turns, rush, windows, power cap and hands meets what integer programming (HiGHS)
    proves for the same day, and breaks no rule.
    """
    day = tight(fryers, slots, seed)
    day = replace(day, mean_n=3.0 * day.mean_n)
    demand = draw_days(day, 1, seed)[0]
    plan, cost = best_plan(day, demand, passes=1_600_000)
    assert broken_rules(day, plan) == []
    assert price(day, plan, demand[None]).total_money == pytest.approx(cost)
    proven = bound(day, demand, 60.0)
    assert proven.gap_frac < 1e-3
    assert cost == pytest.approx(proven.found_money, rel=1e-3)


def tiled(filters: bool) -> tuple[Day, float]:
    """One product asked for evenly, three a slot; a load of nine every three slots serves all from its first
    lift on. With filter turns of three slots after four loads each turn takes the place of a load.
    """
    load = LoadSize(units_count=9, cook_slots_count=2, recovery_slots_count=1, batch_money=1.0, fryers=(0,))
    item = Item(name="x", loads=(load,), hold_slots_count=3, short_money=2.0, waste_money=0.8, spread_n=1.0)
    day = Day(
        items=(item,),
        fryers_count=1,
        slots_count=38,
        hands_count=2,
        filter_every_count=4 if filters else 99,
        filter_slots_count=3,
        filter_money=0.5,
        mean_n=np.full((1, 38), 3.0),
    )
    # 38 slots: the first two have nothing to sell; then 36 slots in spans of three, one load each
    loads, turns = (10, 2) if filters else (12, 0)
    return day, 2.0 * 3 * 2 + loads * 1.0 + turns * (0.5 + 2.0 * 9)


@pytest.mark.slow
@pytest.mark.parametrize("filters", [False, True])
def test_a_perfect_tiling_is_found(filters):
    """Even demand has a plan without a piece thrown away, worked out by hand; the search finds its cost."""
    day, by_hand = tiled(filters)
    demand = np.full((1, 38), 3, dtype=np.int64)
    plan, cost = best_plan(day, demand, passes=800_000)
    assert broken_rules(day, plan) == []
    assert cost == pytest.approx(by_hand)


@pytest.mark.slow
def test_no_engine_beats_a_seer_who_keeps_the_rules():
    """On days with filter turns, rushes, windows and a cap, knowing the demand is worth something and nothing
    does better.
    """
    day = replace(hard_day(2, 3, 2, 7), slots_count=96)
    demand = draw_days(day, 2, 5)
    played = replay(day, demand, Par(), Look(paths_count=16, horizon_slots_count=40))
    for n in range(2):
        plan, cost = best_plan(day, demand[n], passes=600_000)
        assert broken_rules(day, plan) == []
        assert cost < played.cost_money[n]
