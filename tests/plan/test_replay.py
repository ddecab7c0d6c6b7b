"""Replays keep every rule of the kitchen, price like the independent check, and the engine beats the tuned
rule; the check can fail.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from frywright.model.errors import InputError
from frywright.plan import engine, tune
from frywright.plan.check import broken_rules, price
from frywright.plan.model import MOST_SLOTS, Day, Drop, Item, LoadSize, Plan
from frywright.plan.replay import Look, Par, draw_days, replay, replay_par
from frywright.plan.tune import tuned, tuned_rule


def kitchen_day(
    fryers: int = 3, items: int = 3, slots: int = 144, hands: int = 2, seed: int = 1, **more
) -> Day:
    """An invented day: lunch and dinner peaks, loads of half and full, holds of 6 to 15 slots."""
    rng = np.random.default_rng(seed)
    hours = np.arange(slots) / slots
    shape = np.exp(-(((hours - 0.2) / 0.08) ** 2)) + 1.6 * np.exp(-(((hours - 0.65) / 0.1) ** 2)) + 0.1
    found, mean = [], []
    for i in range(items):
        unit, cook = int(rng.integers(4, 12)), int(rng.integers(1, 4))
        own = tuple(f for f in range(fryers) if (f + i) % 3 or fryers < 3) or (0,)
        loads = tuple(
            LoadSize(
                units_count=n * unit,
                cook_slots_count=cook,
                recovery_slots_count=int(rng.integers(0, 2)),
                batch_money=0.6,
                fryers=own,
            )
            for n in (1, 2)
        )
        found.append(
            Item(
                name=f"item {i}",
                loads=loads,
                hold_slots_count=int(rng.integers(6, 16)),
                short_money=2.0,
                waste_money=0.8,
            )
        )
        mean.append(shape * rng.uniform(0.5, 2.0) * fryers / items)
    return Day(
        items=tuple(found),
        fryers_count=fryers,
        slots_count=slots,
        hands_count=hands,
        mean_n=np.array(mean),
        **more,
    )


def hard_day(fryers, items, hands, seed):
    """The same with everything that can stand in the way: windows, rush, power cap, filter cost."""
    return kitchen_day(
        fryers,
        items,
        96,
        hands,
        seed,
        up=tuple((3 * f, 90 - 5 * f) for f in range(fryers)),
        rush=((15, 25), (55, 68)),
        power_w=tuple(10e3 + 1e3 * f for f in range(fryers)),
        cap_w=10.5e3 * max(1, fryers - 1) + 2e3,
        filter_money=1.5,
        filter_every_count=5,
    )


@pytest.mark.slow
@settings(max_examples=40, deadline=None)
@given(st.integers(1, 5), st.integers(1, 5), st.integers(1, 4), st.integers(0, 10_000), st.booleans())
def test_no_rule_is_broken_and_the_price_is_the_checks(fryers, items, hands, seed, engine):
    """On any day every plan passes the independent check (capacity, compatibility, hold, crew, power,
    windows, filter turns) at the check's price.
    """
    day = hard_day(fryers, items, hands, seed)
    demand = draw_days(day, 2, seed)
    look = Look(paths_count=6, horizon_slots_count=24, seed_count=seed) if engine else None
    played = replay(day, demand, Par(cover_slots=(3, 6), z_n=(0.5, 0.0)), look)
    for n, plan in enumerate(played.plans):
        assert [str(p) for p in broken_rules(day, plan)] == []
        assert price(day, plan, demand[n : n + 1]).total_money == pytest.approx(played.cost_money[n])
        assert played.shelf[n, 1].sum() == played.parts_money[n, 4]
        assert played.shelf[n, 2].sum() == played.parts_money[n, 5]


@settings(max_examples=15, deadline=None)
@given(st.integers(1, 3), st.integers(1, 4), st.integers(0, 10_000))
def test_no_filter_turn_comes_before_it_is_half_due(fryers, items, seed):
    """Nobody moves hot oil after one load: rule and engine turn to the filter from half of its loads on, and
    never without a load since the last turn.
    """
    day = hard_day(fryers, items, 3, seed)
    demand = draw_days(day, 1, seed)
    for look in (None, Look(paths_count=6, horizon_slots_count=24, seed_count=seed)):
        plan = replay(day, demand, Par(quiet_frac=0.5), look).plans[0]
        for fryer, slot in plan.filters:
            before = max((t for f, t in plan.filters if f == fryer and t < slot), default=-1)
            loads = sum(d.fryer == fryer and before < d.slot < slot for d in plan.drops)
            assert 2 * loads >= day.filter_every_count - 1


def test_costs_only_is_the_same_replay():
    """The fast replay of many days gives the costs of the full one."""
    day = hard_day(3, 3, 2, 4)
    demand = draw_days(day, 10, 1)
    assert replay_par(day, demand, Par()).cost_money == pytest.approx(replay(day, demand, Par()).cost_money)


def test_the_rule_does_cook():
    """A busy bank cooks, filters and sells most of what is asked for."""
    day = kitchen_day(4, 3)
    played = replay(day, draw_days(day, 20, 1), Par())
    assert len(played.plans[0].drops) > 30
    assert played.plans[0].filters
    assert played.price.fill_frac > 0.75


def test_the_check_finds_every_kind_of_fault():
    """Each rule, broken on purpose, is named."""
    day = replace(
        kitchen_day(3, 2, 60, 1),
        up=((0, 60), (0, 60), (0, 30)),
        rush=((40, 50),),
        power_w=(1e3,) * 3,
        cap_w=1.5e3,
    )
    item = day.items[0]
    cook, fryer = item.loads[0].cook_slots_count, item.fryers[0]
    wrong = next(f for f in range(3) if f not in item.fryers)
    good = Drop(fryer=fryer, item=0, load=0, slot=5)
    twin = Drop(fryer=item.fryers[1], item=0, load=0, slot=6)
    faults = {
        "still busy": Plan(drops=(good, Drop(fryer=fryer, item=0, load=0, slot=5 + cook - 1))),
        "after the close": Plan(drops=(Drop(fryer=fryer, item=0, load=0, slot=59),)),
        "may not go": Plan(drops=(Drop(fryer=wrong, item=0, load=0, slot=5),)),
        "no such load": Plan(drops=(Drop(fryer=fryer, item=0, load=7, slot=5),)),
        "actions of": Plan(drops=(good,), filters=((2 if fryer != 2 else 1, 5),)),
        "without a filter turn": Plan(
            drops=tuple(Drop(fryer=fryer, item=0, load=0, slot=6 * n) for n in range(8))
        ),
        "no such fryer or slot": Plan(filters=((77, 3),)),
        "into a rush": Plan(filters=((0, 39),)),
        "turns at once": Plan(filters=((0, 10), (1, 11))),
        "filter turn in slot 40: fryer 2 is not at heat": Plan(filters=((2, 40),)),
        "would end after the close": Plan(filters=((0, 59),)),
        "2 is not at heat": Plan(
            drops=(Drop(fryer=2, item=1 if 2 in day.items[1].fryers else 0, load=0, slot=40),)
        ),
        "kW of": Plan(drops=(good, twin)),
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


def test_the_kernels_know_the_longest_load():
    """The constant that a kernel file must hold itself is the model's."""
    assert engine.MOST_SLOTS == MOST_SLOTS


@pytest.mark.slow
def test_tuning_helps_on_other_days():
    """A rule tuned on one set of days costs less than the default on another, and each product's own rule
    less than one for all.
    """
    day = kitchen_day(2, 3, seed=3)
    fresh, drawn = draw_days(day, 300, 2), draw_days(day, 100, 1)
    default, common, own = (
        float(replay_par(day, fresh, rule).cost_money.mean())
        for rule in (Par(), tuned(day, drawn, 0), tuned(day, drawn))
    )
    assert common <= default
    assert own <= 1.01 * common


def test_a_rule_is_played_once_while_par_is_tuned(monkeypatch):
    """And costs what it costs anywhere else; the day is laid out as arrays once."""
    day = kitchen_day(2, 3, seed=3)
    drawn, laid, played = draw_days(day, 20, 1), [], []
    does, plays = tune.given, engine.play_rule
    monkeypatch.setattr(tune, "given", lambda *told: laid.append(told) or does(*told))

    def noted(days, rules, parts):
        plays(days, rules, parts)
        played.append((rules[tune.TABLE].tobytes(), float(parts[:, :3].sum(axis=1).mean())))

    monkeypatch.setattr(engine, "play_rule", noted)
    best = tuned(day, drawn, 1)
    assert len(laid) == 1 and len({table for table, _ in played}) == len(played)
    assert min(cost for _, cost in played) == float(replay_par(day, drawn, best).cost_money.mean())


@pytest.mark.slow(20)
def test_a_large_bank_looks_past_the_end_of_long_holds():
    """Four fryers, holds of two to three hours: the engine costs less than its rule. A look that ends after
    three hours, while such loads still stand, fills up to what nobody takes in time.
    """
    from benchmarks.day import bank

    day = bank(4, 4)
    items = tuple(replace(x, hold_slots_count=2 * x.hold_slots_count) for x in day.items)
    day = replace(day, items=items)
    rule, demand = tuned(day, draw_days(day, 60, 11), 1), draw_days(day, 12, 99)
    played = replay(day, demand, rule, Look.for_bank(day))
    assert played.price.total_money < replay_par(day, demand, rule).price.total_money


@pytest.mark.slow(25)
def test_the_engine_beats_the_tuned_rule():
    """Two fryers, 40 paired days that none was tuned on: the rule by part of the day costs less than par, the
    engine less than both, the 95 % intervals clear of zero.
    """
    from benchmarks.day import bank

    day = bank(2, 2)
    drawn, demand = draw_days(day, 160, 11), draw_days(day, 40, 99)
    par = tuned(day, drawn)
    rule, many = tuned_rule(day, drawn, par), draw_days(day, 600, 98)
    played = replay(day, demand, rule, Look.for_bank(day)).cost_money
    for one, other in (
        (replay_par(day, many, rule).cost_money, replay_par(day, many, par).cost_money),
        (played, replay_par(day, demand, par).cost_money),
        (played, replay_par(day, demand, rule).cost_money),
    ):
        change = one - other
        assert change.mean() + 1.96 * change.std() / np.sqrt(len(change)) < 0.0


def test_impossible_days_are_refused():
    """Loads that fall, a fryer that is not there, a demand of another shape, a hold beyond the engine's
    reach.
    """
    load = LoadSize(units_count=4, cook_slots_count=2, fryers=(0,))
    values = {"name": "x", "loads": (load,), "hold_slots_count": 6, "short_money": 1.0, "waste_money": 1.0}
    with pytest.raises(InputError):
        Item(**{**values, "loads": (replace(load, units_count=8), load)})
    with pytest.raises(InputError):
        Item(**{**values, "hold_slots_count": 73})
    with pytest.raises(InputError):
        Day(
            items=(Item(**{**values, "loads": (replace(load, fryers=(3,)),)}),),
            fryers_count=1,
            slots_count=4,
            mean_n=np.ones((1, 4)),
        )
    with pytest.raises(InputError):
        Day(items=(Item(**values),), fryers_count=1, slots_count=4, mean_n=np.ones((1, 5)))
    with pytest.raises(InputError):
        replay(
            Day(items=(Item(**values),), fryers_count=1, slots_count=4, mean_n=np.ones((1, 4))),
            np.ones((2, 1, 5)),
            Par(),
        )
