"""What binds a day is what was made to bind it; the rule in pieces is the rule."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.plan import engine
from frywright.plan.binds import _changes, binds, calls, compared
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import Par, Rule, draw_days, given, replay_par
from frywright.plan.tune import tuned, tuned_rule
from frywright.rooms.day.limits import BINDING

LONGER = "Hold lives half as long again"
FRYER = "One more fryer, as the one asked for most"


def one(slots: int = 120, **changed) -> Day:
    """One product in two fryers with room to spare, a long hold and small loads."""
    values = {
        "units": 4,
        "hold": 20,
        "mean": 1.5,
        "spread": 1.2,
        "fryers": 2,
        "cook": 2,
        "every": 99,
    } | changed
    fryers = tuple(range(values["fryers"]))
    loads = tuple(
        LoadSize(
            units_count=n * values["units"],
            cook_slots_count=values["cook"],
            batch_money=0.2,
            fryers=fryers,
        )
        for n in (1, 2)
    )
    item = Item(
        name="x",
        loads=loads,
        hold_slots_count=values["hold"],
        short_money=2.0,
        waste_money=0.8,
        spread_n=values["spread"],
    )
    return Day(
        items=(item,),
        fryers_count=values["fryers"],
        slots_count=slots,
        filter_every_count=values["every"],
        mean_n=np.full((1, slots), values["mean"]),
    )


def own_rule(day: Day) -> Rule:
    """A day's rule, tuned on days drawn for that."""
    drawn = draw_days(day, 60, 11)
    return tuned_rule(day, drawn, tuned(day, drawn, 1), 2)


def found(day: Day):
    """What binds a day under its own tuned rule."""
    return binds(day, own_rule(day), lambda changed: (changed, own_rule(changed)))


def test_an_easy_day_is_good_and_no_lever_is_large():
    """With room, small loads and long holds the aim is met."""
    told = found(one())
    assert told.good
    assert all(lever.fill_frac < 0.05 for lever in told.levers)


@pytest.mark.parametrize(
    ("changed", "best"),
    [
        ({"hold": 2, "units": 8}, LONGER),
        ({"fryers": 1, "mean": 3.0, "cook": 4, "units": 3}, FRYER),
        ({"hold": 4, "units": 16, "mean": 1.0}, "A smallest load half as large"),
    ],
    ids=["holds", "fryers", "loads"],
)
def test_what_was_made_to_bind_is_named(changed, best):
    """Short holds, too few fryers, loads too large: the lever that undoes it is among the two that bring
    most, and brings something.
    """
    told = found(one(**changed))
    assert not told.good
    assert best in [lever.what for lever in told.levers[:2]]
    assert told.levers[0].money < 0


def test_the_rule_in_pieces_is_the_rule():
    """On an empty kitchen's busiest slot the engine drops where the table says that the shelf is below its
    call, and not with that much on the shelf.
    """
    day = one(mean=2.0, spread=2.0)
    for call in calls(day, Par(cover_slots=(6,), z_n=(0.5,))):
        rules = given(day, Par(cover_slots=(6,), z_n=(0.5,)))
        t = int(np.flatnonzero(rules[13] == call.part)[0])
        for stock, drops in ((call.below_n - 1, True), (call.below_n + 1, False)):
            world = engine.fresh(rules)
            world[0][0, t] = stock
            world[1][3, 0] = world[1][0, 0] = stock
            assert (engine.needs(t, world, rules)) == drops
        assert call.fill_n >= call.below_n


def test_no_change_is_offered_that_cannot_be():
    """Demand that comes evenly is not evened, and a hold as long as the day is not made longer."""
    even = found(replace(one(hold=20, slots=24, units=8)))
    assert not {LONGER, "Guests who come evenly, not in groups"} & {lever.what for lever in even.levers}


def test_every_change_says_what_binds():
    """Whatever change would bring most, the page has a line that names what binds."""
    assert {what for what, _ in _changes(one())} == set(BINDING)


@pytest.mark.parametrize(
    "changed", [{"hold": 2, "units": 8}, {"fryers": 1, "mean": 3.0, "cook": 4, "units": 3}]
)
def test_what_the_first_change_promises_comes_on_other_days(changed):
    """The change made, and days that were not used for the promise: served, thrown away and money come as
    promised, each within both intervals (one and a half half widths: about three standard errors).
    """
    day = one(**changed)
    told = found(day)
    lever, other = told.levers[0], dict(_changes(day))[told.levers[0].what]
    fresh = draw_days(day, 200, 991)
    came = compared(
        lever.what, replay_par(day, fresh, own_rule(day)), replay_par(other, fresh, own_rule(other))
    )
    for name, half in (("fill_frac", "fill_half_width_frac"), ("waste_frac", "waste_half_width_frac")):
        wide = float(np.hypot(getattr(lever, half), getattr(came, half)))
        assert abs(getattr(lever, name) - getattr(came, name)) <= 1.5 * wide + 1e-9
    assert abs(lever.money - came.money) <= 1.5 * np.hypot(lever.half_width_money, came.half_width_money)
