"""The state of a day from what happened: nothing lost, nothing doubled, advice that keeps every rule, waste
whose causes add up.
"""

from __future__ import annotations

from copy import deepcopy
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from frywright.model.errors import InputError
from frywright.plan import engine
from frywright.plan.advice import (
    Advice,
    Before,
    _until_done,
    advise,
    bank_now,
    last_drops,
    outlook,
    promise,
    world_of,
)
from frywright.plan.check import broken_rules
from frywright.plan.explain import CAUSES, explain, total
from frywright.plan.live import Happening, State, What, played_on, state_of
from frywright.plan.model import Plan
from frywright.plan.replay import Look, Par, draw_days
from tests.plan.test_replay import hard_day, kitchen_day

FAST = Look(paths_count=8, horizon_slots_count=20)
EVENTS = st.lists(
    st.builds(
        Happening,
        what=st.sampled_from(list(What)),
        at_n=st.floats(0, 95),
        fryer=st.integers(0, 2),
        item=st.integers(0, 2),
        load=st.integers(0, 1),
        units_n=st.sampled_from([0.0, 1.0, 4.0, 9.0, 30.0]),
        reason=st.sampled_from(["", "expired", "burnt"]),
    ),
    max_size=60,
)


def units(day, load):
    """Units of a load in the oil."""
    return day.items[load.item].loads[load.load].units_count


@pytest.mark.slow
@settings(max_examples=60, deadline=None)
@given(EVENTS, st.floats(0, 95), st.integers(0, 50))
def test_any_happenings_keep_the_books(events, now, seed):
    """What was lifted is on the shelf, sold, counted away or thrown away, and nothing is negative; advice
    breaks no rule from there.
    """
    day = hard_day(3, 3, 3, seed)
    events = [
        h if h.what is not What.UP else Happening(what=What.UP, at_n=h.at_n, fryer=h.fryer, units_n=2.0)
        for h in events
    ]
    state = state_of(day, events, now)
    lifted = state_of(day, [h for h in events if h.what in (What.DROP, What.LIFT)], now)
    before, after = sum(t.units_n for t in lifted.trays), sum(t.left_n for t in state.trays)
    assert 0 <= after <= before + 1e-9
    assert all(t.left_n >= 0 for t in state.trays)
    assert len({load.fryer for load in state.in_oil}) == len(state.in_oil)
    assert sum(t.units_n for t in state.thrown) + after <= before + 1e-9
    t, world, belief = world_of(day, state)
    assert (world[1][0] - world[1][1] >= 0).all()
    assert (belief >= 0).all()
    busy = {load.fryer for load in state.in_oil} | set(state.down)
    found = advise(day, state, Par(), FAST)
    assert not busy & {a.fryer for a in found}
    for advice in found:
        low, high = bank_now(day, state).window(advice.fryer)
        if advice.kind == "drop":
            load = day.items[advice.item].loads[advice.load]
            assert advice.fryer in load.fryers
            assert low <= t and t + load.cook_slots_count < high
            assert state.since[advice.fryer] < day.filter_every_count
        if advice.kind == "filter":
            assert not any(day.in_rush(s) for s in range(t, t + day.filter_slots_count))


def follow(day, demand, par, until, down=None):
    """Follow the advice for a day; every lift and drop becomes a happening."""
    events, slot = [], 0
    while slot < until:
        if down and slot == down[1]:
            events.append(Happening(what=What.DOWN, at_n=slot, fryer=down[0]))
        state = state_of(day, events, slot + 0.01, demand)
        for load in state.in_oil:
            if load.lift_n <= slot and load.fryer not in state.down:
                events.append(Happening(what=What.LIFT, at_n=slot, fryer=load.fryer))
        state = state_of(day, events, slot + 0.02, demand)
        for tray in state.expired:
            events.append(
                Happening(
                    what=What.DISCARD, at_n=slot + 0.02, item=tray.item, units_n=tray.left_n, reason="expired"
                )
            )
        for advice in advise(day, state, par, FAST):
            if advice.kind == "drop":
                events.append(
                    Happening(
                        what=What.DROP,
                        at_n=slot + 0.03,
                        fryer=advice.fryer,
                        item=advice.item,
                        load=advice.load,
                    )
                )
            elif advice.kind == "filter":
                events.append(Happening(what=What.FILTER, at_n=slot + 0.03, fryer=advice.fryer))
        slot += 1
    return events


@pytest.mark.parametrize("seed", [2, 5])
def test_a_day_by_the_advice_breaks_no_rule(seed):
    """The drops and filter turns that came of a whole day's advice pass the independent check, a fryer
    failing on the way.
    """
    day = hard_day(3, 3, 3, seed)
    demand = draw_days(day, 1, seed)[0]
    events = follow(day, demand, Par(), 96, down=(1, 50))
    state = state_of(day, events, 96, demand)
    plan = Plan(drops=tuple(d for d, _ in state.drops), filters=tuple((f, int(t)) for f, t in state.filters))
    assert len(plan.drops) > 5
    assert broken_rules(day, plan) == []
    assert not [d for d in plan.drops if d.fryer == 1 and d.slot > 50]


def test_waste_adds_up_to_every_piece():
    """Over a followed day, causes sum to what was thrown away, tray by tray; a slip of hands is an error."""
    day = kitchen_day(2, 3, 96, 2, 4)
    demand = draw_days(day, 1, 4)[0] // 2
    events = follow(day, demand, Par(), 96)
    state = state_of(day, events, 96, demand)
    left = [
        Happening(what=What.DISCARD, at_n=95.9, item=t.item, units_n=t.left_n, reason="close")
        for t in state.trays
    ]
    if left:
        left[0] = Happening(
            what=What.DISCARD, at_n=95.9, item=left[0].item, units_n=left[0].units_n, reason="burnt"
        )
    state = state_of(day, events + left, 96, demand)
    wastes = explain(day, state, [d for d, _ in state.drops], [1.1, 1.0, 1.2])
    assert sum(w.units_n for w in wastes) == pytest.approx(sum(t.units_n for t in state.thrown))
    for waste, thrown in zip(wastes, [t for t in state.thrown if t.units_n > 0], strict=True):
        assert waste.units_n == pytest.approx(thrown.units_n)
        assert min(waste.parts_n.values()) >= 0
        assert set(waste.parts_n) == set(CAUSES)
    assert total(wastes)["mix"] > 0
    if left:
        assert total(wastes)["error"] == pytest.approx(left[0].units_n)
    without = total(explain(day, state))
    assert without["mix"] == 0.0
    assert sum(without.values()) == pytest.approx(sum(total(wastes).values()))


def test_first_out_and_count_and_hold():
    """Oldest goes first, a count puts the shelf right, past its hold a tray is expired and not for sale."""
    day = kitchen_day(1, 1, 60, 3, 1)
    item = day.items[0]
    size, cook = item.loads[0].units_count, item.loads[0].cook_slots_count
    events = []
    for start in (0.0, 4.0):
        events += [
            Happening(what=What.DROP, at_n=start, fryer=0, item=0, load=0),
            Happening(what=What.LIFT, at_n=start + cook, fryer=0),
        ]
    sold = Happening(what=What.SOLD, at_n=4 + cook, item=0, units_n=float(size))
    state = state_of(day, [*events, sold], 4 + cook)
    assert [t.drop_n for t in state.trays] == [4.0]
    counted = Happening(what=What.COUNT, at_n=4 + cook, item=0, units_n=1.0)
    assert state_of(day, [*events, counted], 4 + cook).shelf(0) == 1.0
    late = state_of(day, events, 4 + cook + item.hold_slots_count)
    assert late.shelf(0) == 0
    assert sum(t.left_n for t in late.expired) == 2 * size


def test_a_load_too_many_and_a_lift_of_nothing_are_told():
    """Neither changes the books; both are said."""
    day = kitchen_day(1, 1, 60, 3, 1)
    drop = Happening(what=What.DROP, at_n=0, fryer=0, item=0, load=0)
    state = state_of(
        day,
        [drop, drop, Happening(what=What.LIFT, at_n=5, fryer=0), Happening(what=What.LIFT, at_n=6, fryer=0)],
        7,
    )
    assert [n.kind for n in state.notes] == ["still_in", "nothing_in"]
    assert sum(t.units_n for t in state.trays) == day.items[0].loads[0].units_count
    with pytest.raises(InputError):
        state_of(day, [Happening(what=What.DROP, at_n=0, fryer=9, item=0, load=0)], 1)


def test_two_who_play_on_from_the_same_day_do_not_meet():
    """Everything that can happen, played on twice from the same place: both find the same, and the place
    stays as it was.
    """
    day = hard_day(3, 3, 3, 3)
    first = [
        Happening(what=What.DROP, at_n=0, fryer=0, item=0, load=0, entry_number=1),
        Happening(what=What.LIFT, at_n=5, fryer=0, entry_number=2),
        Happening(what=What.DROP, at_n=6, fryer=0, item=0, load=0, entry_number=3),
        Happening(what=What.DOWN, at_n=6, fryer=2, entry_number=4),
        Happening(what=What.OUT, at_n=6, item=1, entry_number=5),
    ]
    later = [
        Happening(what=What.SOLD, at_n=7, item=0, units_n=2.0, entry_number=6),
        Happening(what=What.SOLD, at_n=7, item=1, units_n=9.0, entry_number=7),
        Happening(what=What.DISCARD, at_n=7, item=0, units_n=1.0, entry_number=8),
        Happening(what=What.LIFT, at_n=11, fryer=0, entry_number=9),
        Happening(what=What.FILTER, at_n=12, fryer=0, entry_number=10),
        Happening(what=What.UP, at_n=12, fryer=2, units_n=2.0, entry_number=11),
        Happening(what=What.IN, at_n=12, item=1, entry_number=12),
    ]
    before = played_on(day, tuple(first))
    kept = deepcopy(before.state)
    one = played_on(day, (*first, *later), before).state
    two = played_on(day, (*first, *later), before).state
    anew = state_of(day, [*later, *first], 12)
    none = np.zeros((0, 0))
    for a, b in ((one, two), (one, replace(anew, now_n=one.now_n)), (kept, before.state)):
        assert np.array_equal(a.sold_n, b.sold_n, equal_nan=True) and (a.bare == b.bare).all()
        assert replace(a, sold_n=none, bare=none) == replace(b, sold_n=none, bare=none)
    assert one.trays and one.thrown and one.notes and one.lifts and one.filters and one.back_n and one.drops


def test_the_outlook_has_bands_and_keeps_the_rules():
    """Bands are in order, the plan passes the check, a fryer less costs money, and last drops leave time to
    cook.
    """
    day = hard_day(3, 3, 3, 3)
    whole = outlook(day, None, Par(), FAST, paths=40)
    assert broken_rules(day, whole.plan) == []
    assert (whole.shelf_n[0] <= whole.shelf_n[1]).all() and (whole.shelf_n[1] <= whole.shelf_n[2]).all()
    state = State(now_n=20.0, since=[0] * 3, sold_n=np.full(day.mean_n.shape, np.nan))
    hurt = State(now_n=20.0, since=[0] * 3, sold_n=np.full(day.mean_n.shape, np.nan), down={0: 20.0})
    assert (
        outlook(day, hurt, Par(), FAST, paths=40).rest_money
        > outlook(day, state, Par(), FAST, paths=40).rest_money
    )
    assert not [d for d in outlook(day, hurt, Par(), FAST, paths=10).plan.drops if d.fryer == 0]
    for item, slot in zip(day.items, last_drops(day), strict=True):
        assert slot + item.loads[0].cook_slots_count < day.slots_count


def test_orders_are_promised_only_within_what_the_bank_can_do():
    """A small order is feasible, one of thousands is not, and the largest named is feasible itself."""
    day = kitchen_day(3, 2, 96, 4, 6)
    state = State(now_n=0.0, since=[0] * 3, sold_n=np.full(day.mean_n.shape, np.nan))
    assert promise(day, state, Par(), (0, 40, 4), paths=40).feasible
    refused = promise(day, state, Par(), (0, 40, 5000), paths=40)
    assert not refused.feasible
    assert 0 < refused.largest_n < 5000
    assert promise(day, state, Par(), (0, 40, refused.largest_n), paths=40).chance_frac >= 0.85
    with pytest.raises(InputError):
        promise(day, state, Par(), (0, 0, 4))


def test_no_advice_is_a_load_that_cannot_sell():
    """With a full shelf and little demand nothing is dropped; with an empty one at the peak something is."""
    day = kitchen_day(1, 1, 96, 3, 2)
    tray = [
        Happening(what=What.DROP, at_n=0, fryer=0, item=0, load=1),
        Happening(what=What.LIFT, at_n=4, fryer=0, units_n=500.0),
    ]
    full = advise(day, state_of(day, tray, 6.0), Par(), FAST)
    assert [a.kind for a in full] == ["wait"]
    empty = advise(day, state_of(day, [], 60.0), Par(), FAST)
    assert [a.kind for a in empty] == ["drop"]
    assert engine.NOTHING < engine.FILTER < 0


def shelf_of(item: int) -> list[Happening]:
    """Two hundred pieces of a product, lifted out of the first fryer in slot 23."""
    return [
        Happening(what=What.DROP, at_n=19.0, fryer=0, item=item, load=0, units_n=200.0),
        Happening(what=What.LIFT, at_n=23.0, fryer=0),
    ]


def test_what_was_advised_stands_while_it_may_be_done():
    """A firm one stays though others are cheaper, but not once its product is out; one that is far too dear
    goes; the same again keeps its gain.
    """
    day = kitchen_day(1, 2, 144, 3, 2)
    state = state_of(day, [], 26.0)
    plain = advise(day, state, Par(), FAST)[0]
    assert plain.kind == "drop"
    other = next(
        Advice(fryer=0, kind="drop", item=i, load=k, reason=plain.reason)
        for i in range(2)
        for k in range(len(day.items[i].loads))
        if (i, k) != (plain.item, plain.load)
    )
    firm = Before(advice={0: other}, firm=frozenset({0}))
    kept = advise(day, state, Par(), FAST, firm)[0]
    assert (kept.item, kept.load) == (other.item, other.load)
    out = state_of(day, [Happening(what=What.OUT, at_n=9.0, item=other.item)], 26.0)
    assert advise(day, out, Par(), FAST, firm)[0].item != other.item
    full = state_of(day, shelf_of(other.item), 26.0)
    assert advise(day, full, Par(), FAST, firm)[0].item == other.item
    assert advise(day, full, Par(), FAST, Before(advice={0: other}))[0].item != other.item
    same = advise(day, state, Par(), FAST, Before(advice={0: plain}))[0]
    assert (same.item, same.load, same.gain_money) == (plain.item, plain.load, plain.gain_money)


def test_a_fryer_that_waits_beside_an_empty_shelf_says_why():
    """Never that the shelf covers what will be asked for, where there is none."""
    day = kitchen_day(1, 1, 144, 1, 2)
    dear = tuple(replace(load, batch_money=500.0) for load in day.items[0].loads)
    day = replace(day, items=(replace(day.items[0], loads=dear),))
    found = advise(day, state_of(day, [], 26.0), Par(), Look(paths_count=40, horizon_slots_count=60))[0]
    assert (found.kind, found.reason.kind) == ("wait", "too_large")
    assert found.reason.values["product"] == day.items[0].name
    assert advise(day, state_of(day, shelf_of(0), 26.0), Par(), FAST)[0].reason.kind == "wait"


def test_heat_goes_on_a_slot_where_advice_stands():
    """In a fryer whose advice is firm and that has heat yet; never past the close, nowhere else."""
    day = replace(kitchen_day(3), up=((0, 10), (4, 4), (0, 10)))
    assert _until_done(day, frozenset({0, 1})).up == ((0, 11), (4, 4), (0, 10))
    end = day.slots_count
    late = replace(day, up=((0, end), (0, end - 1), (2, 3)))
    assert _until_done(late, frozenset({0, 1, 2})).up == ((0, end), (0, end), (2, 4))
