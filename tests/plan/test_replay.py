"""The par rule keeps every rule of the kitchen, its replay prices like the independent check, and the check can fail."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from frywright.model.errors import InputError
from frywright.plan.check import broken_rules, price
from frywright.plan.model import Day, Drop, Item, LoadSize, Plan
from frywright.plan.replay import Par, draw_days, replay_par, replay_rollout, tuned


def kitchen_day(fryers: int = 3, items: int = 3, slots: int = 144, hands: int = 2, seed: int = 1) -> Day:
    """An invented day: lunch and dinner peaks, loads of half and full, holds of 6 to 15 slots."""
    rng = np.random.default_rng(seed)
    hours = np.arange(slots) / slots
    shape = np.exp(-(((hours - 0.2) / 0.08) ** 2)) + 1.6 * np.exp(-(((hours - 0.65) / 0.1) ** 2)) + 0.1
    found, mean = [], []
    for i in range(items):
        unit = int(rng.integers(4, 12))
        cook = int(rng.integers(1, 4))
        own = tuple(f for f in range(fryers) if (f + i) % 3 or fryers < 3)
        found.append(Item(
            name=f"item {i}", loads=(LoadSize(units_count=unit, cook_slots_count=cook), LoadSize(units_count=2 * unit, cook_slots_count=cook)),
            hold_slots_count=int(rng.integers(6, 16)), recovery_slots_count=int(rng.integers(0, 2)), fryers=own or (0,),
            short_money=2.0, waste_money=0.8, batch_money=0.6,
        ))  # fmt: skip
        mean.append(shape * rng.uniform(0.5, 2.0) * fryers / items)
    return Day(items=tuple(found), fryers_count=fryers, slots_count=slots, hands_count=hands, mean_n=np.array(mean))


@settings(max_examples=40, deadline=None)
@given(st.integers(1, 5), st.integers(1, 5), st.integers(1, 4), st.integers(0, 10_000))
def test_the_par_rule_breaks_no_rule_and_prices_like_the_check(fryers, items, hands, seed):
    """On any day, every plan that came of the rule passes the independent check and costs what the check says."""
    day = kitchen_day(fryers, items, 96, hands, seed)
    demand = draw_days(day, 3, seed)
    played = replay_par(day, demand, Par(), keep_plans=3)
    for n, plan in enumerate(played.plans):
        assert [str(p) for p in broken_rules(day, plan)] == []
        assert price(day, plan, demand[n : n + 1]).total_money == pytest.approx(played.cost_money[n])


def test_the_rule_does_cook():
    """A busy bank cooks, filters and sells most of what is asked for."""
    day = kitchen_day(4, 3)
    played = replay_par(day, draw_days(day, 20, 1), Par(), keep_plans=1)
    assert len(played.plans[0].drops) > 30
    assert played.plans[0].filters
    assert played.price.sold_n > 3 * played.price.short_n


def test_the_check_finds_every_kind_of_fault():
    """Each rule, broken on purpose, is named."""
    day = kitchen_day(3, 2, 60, 1)
    item = day.items[0]
    cook, fryer = item.loads[0].cook_slots_count, item.fryers[0]
    wrong = next(f for f in range(3) if f not in item.fryers) if len(item.fryers) < 3 else 9
    good = Drop(fryer=fryer, item=0, load=0, slot=5)
    faults = {
        "still busy": Plan(drops=(good, Drop(fryer=fryer, item=0, load=0, slot=5 + cook - 1))),
        "after the close": Plan(drops=(Drop(fryer=fryer, item=0, load=0, slot=59),)),
        "may not go" if wrong != 9 else "no such fryer": Plan(drops=(Drop(fryer=wrong, item=0, load=0, slot=5),)),
        "no such load": Plan(drops=(Drop(fryer=fryer, item=0, load=7, slot=5),)),
        "actions of": Plan(drops=(good,), filters=((2 if fryer != 2 else 1, 5),)),
        "without a filter turn": Plan(drops=tuple(Drop(fryer=fryer, item=0, load=0, slot=6 * n) for n in range(8))),
        "no such fryer or slot": Plan(filters=((77, 3),)),
    }
    for words, plan in faults.items():
        assert any(words in str(p) for p in broken_rules(day, plan)), words
    assert broken_rules(day, Plan(drops=(good,))) == []


def test_days_are_drawn_with_the_mean_and_the_same_seed_gives_the_same_days():
    """Demand paths keep the mean, are over-dispersed, and repeat by seed."""
    day = kitchen_day()
    days = draw_days(day, 4000, 3)
    assert days.sum(axis=(1, 2)).mean() == pytest.approx(day.mean_n.sum(), rel=0.02)
    assert days.sum(axis=(1, 2)).var() > 1.5 * day.mean_n.sum()
    assert np.array_equal(draw_days(day, 5, 9), draw_days(day, 5, 9))


def test_tuning_helps_on_other_days():
    """A rule tuned on one set of days costs less than the default on another."""
    day = kitchen_day(2, 3)
    rule = tuned(day, draw_days(day, 100, 1))
    fresh = draw_days(day, 200, 2)
    assert replay_par(day, fresh, rule).cost_money.mean() <= replay_par(day, fresh, Par()).cost_money.mean()


@pytest.mark.slow
def test_rollouts_beat_the_tuned_rule_and_break_nothing():
    """Two fryers, 30 paired days that neither was tuned on: rollouts cost less, the 95 % interval clear of zero, and
    every plan passes the check at the price the check gives."""
    from benchmarks.day import bank

    day = bank(2, 2)
    rule = tuned(day, draw_days(day, 200, 11))
    demand = draw_days(day, 30, 99)
    rolled, base = replay_rollout(day, demand, rule, paths=32), replay_par(day, demand, rule)
    change = rolled.cost_money - base.cost_money
    assert change.mean() + 1.96 * change.std() / np.sqrt(len(change)) < 0.0
    for n, plan in enumerate(rolled.plans):
        assert broken_rules(day, plan) == []
        assert price(day, plan, demand[n : n + 1]).total_money == pytest.approx(rolled.cost_money[n])


def test_impossible_days_are_refused():
    """Loads that fall, a fryer that is not there, a demand of another shape."""
    load = LoadSize(units_count=4, cook_slots_count=2)
    values = {
        "name": "x",
        "loads": (load,),
        "hold_slots_count": 6,
        "recovery_slots_count": 0,
        "fryers": (0,),
        "short_money": 1.0,
        "waste_money": 1.0,
        "batch_money": 0.0,
    }
    with pytest.raises(InputError):
        Item(**{**values, "loads": (load, load)})
    with pytest.raises(InputError):
        Day(items=(Item(**{**values, "fryers": (3,)}),), fryers_count=1, slots_count=4, mean_n=np.ones((1, 4)))
    with pytest.raises(InputError):
        Day(items=(Item(**values),), fryers_count=1, slots_count=4, mean_n=np.ones((1, 5)))
