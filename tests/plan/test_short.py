"""No fryer stays empty beside an empty shelf unless the reason can be checked."""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest
from benchmarks import practice

from frywright.plan.advice import Before, advise
from frywright.plan.live import Happening, What, state_of
from frywright.plan.model import Day, Item, LoadSize, Order, Plan
from frywright.plan.replay import Look, Rule, draw_days, replay
from frywright.rooms.day import advised as board

NEVER_CALLS = Rule(table_n=tuple(((v,) * 2,) * 4 for v in (0.0, 0.0, 99.0, 0.0, 0.0)))
"""A rule that finds every shelf full."""
LOOK = Look(paths_count=12, horizon_slots_count=24, z_n=99.0)
"""A look that never finds anything better than the rule."""
T = 20.0


def day_of(**changed) -> Day:
    """Two fryers for a product in loads of 4 and 8 and one that is not asked for, asked for evenly."""
    values = {"mean": 2.0, "batch": 0.1, "hands": 2} | changed
    loads = tuple(
        LoadSize(units_count=n, cook_slots_count=2, batch_money=values["batch"], fryers=(0, 1))
        for n in (4, 8)
    )
    items = tuple(
        Item(name=name, loads=loads, hold_slots_count=6, short_money=2.0, waste_money=0.5) for name in "ab"
    )
    mean = np.array([[values["mean"]] * 60, [0.0] * 60])
    return Day(
        items=items,
        fryers_count=2,
        slots_count=60,
        hands_count=values["hands"],
        filter_every_count=8,
        mean_n=mean,
    )


def shown(day: Day, happened: list[Happening] | None = None):
    """The board's advice where rule and look would wait."""
    return advise(day, state_of(day, happened or [], T), NEVER_CALLS, LOOK)


def test_an_empty_fryer_takes_the_largest_load_that_all_sells():
    """Twelve are asked for while it holds: eight go in, once, and the other fryer's shelf is no longer bare;
    six: four; an order due within its life counts.
    """
    both = shown(day_of())
    assert [(a.kind, a.item, a.load) for a in both] == [("drop", 0, 1), ("wait", -1, -1)]
    assert both[1].reason.kind == "wait"
    assert shown(day_of(mean=1.1))[0].load == 0
    ordered = replace(day_of(mean=0.6), orders=(Order(item=0, slot=24, units_count=5),))
    assert [a.kind for a in shown(day_of(mean=0.6))] == ["wait", "wait"]
    assert (shown(ordered)[0].kind, shown(ordered)[0].load) == ("drop", 1)


@pytest.mark.parametrize(
    ("happened", "waits"),
    [
        ([Happening(what=What.DROP, at_n=19.5, fryer=0, item=0, load=0)], True),
        ([Happening(what=What.OUT, at_n=19.5, item=0)], True),
        ([Happening(what=What.DROP, at_n=17.0, fryer=0, item=0, load=0)], False),
    ],
    ids=["in the oil", "no raw left", "sold again"],
)
def test_nothing_is_forced_where_some_is_coming_or_none_is_there(happened, waits):
    """A load in the oil, or no raw pieces: to wait is right; lifted and sold out, it goes in again."""
    day = day_of()
    if not waits:
        happened = [
            *happened,
            Happening(what=What.LIFT, at_n=19.0, fryer=0),
            Happening(what=What.SOLD, at_n=19.5, item=0, units_n=4.0),
        ]
    kinds = {a.kind for a in shown(day, happened)}
    assert kinds == ({"wait"} if waits else {"drop", "wait"})


@pytest.mark.parametrize(
    ("day", "kind"),
    [
        (day_of(mean=0.6), "too_large"),
        (day_of(batch=30.0), "dear"),
        (replace(day_of(), up=((0, 22), (0, 22))), "hours"),
        (replace(day_of(), power_w=(9e3, 9e3), cap_w=5e3), "power"),
    ],
    ids=lambda x: x if isinstance(x, str) else "",
)
def test_a_fryer_that_waits_beside_an_empty_shelf_says_what_forbids_it(day, kind):
    """A smallest load too large, one that costs more than it brings, a fryer that goes off heat, power."""
    for advice in shown(day):
        assert (advice.kind, advice.reason.kind) == ("wait", kind)
        assert advice.reason.values["product"] == "a"


def test_nothing_is_forced_beside_a_shelf_with_some_on_it():
    """Four lifted and one sold: three stand there, and the rule and the look are left alone."""
    happened = [
        Happening(what=What.DROP, at_n=17.0, fryer=0, item=0, load=0),
        Happening(what=What.LIFT, at_n=19.0, fryer=0),
        Happening(what=What.SOLD, at_n=19.5, item=0, units_n=1.0),
    ]
    assert {a.reason.kind for a in shown(day_of(), happened)} == {"wait"}


SOME_LEFT = [
    Happening(what=What.DROP, at_n=17.0, fryer=0, item=0, load=0),
    Happening(what=What.LIFT, at_n=19.0, fryer=0),
    Happening(what=What.COUNT, at_n=19.5, item=0, units_n=3.0),
]
"""Four lifted, three counted since; nothing is known of what was sold."""


def test_a_wait_says_what_there_is_and_what_is_asked_for_until_a_load_is_out():
    """Of the product that lacks most; no word that the shelf covers what it does not: eight go in beside an
    empty shelf and four are asked for before more would be out; three stand there, and four are.
    """
    first, second = shown(day_of())
    assert second.reason.values == {"product": "a", "shelf": 0.0, "oil": 8.0, "wanted": 4}
    assert first.reason.values["oil"] == 0.0
    busy = shown(day_of(), SOME_LEFT)[0].reason
    assert (busy.values["shelf"], busy.values["oil"], busy.values["wanted"]) == (3.0, 0.0, 4)
    other = [replace(one, fryer=1, item=1) for one in SOME_LEFT]
    for means, lacking in (((1.0, 2.0), "a"), ((2.0, 1.0), "b")):  # a load of the other goes in
        both = replace(day_of(), mean_n=np.array(means)[:, None] * np.ones((1, 60)))
        assert shown(both, SOME_LEFT + other)[1].reason.values["product"] == lacking
    for note in (first.reason, second.reason, busy):
        assert "covers" not in note.text


@pytest.mark.parametrize(
    ("day", "more", "kind"),
    [
        (day_of(hands=1), [Happening(what=What.FILTER, at_n=T, fryer=0)], "hands"),
        (replace(day_of(), power_w=(9e3, 9e3), cap_w=5e3), [], "power"),
        (replace(day_of(), up=((0, 22), (0, 22))), [], "hours"),
        (day_of(), [Happening(what=What.OUT, at_n=T, item=n) for n in (0, 1)], "none"),
    ],
    ids=lambda x: x if isinstance(x, str) else "",
)
def test_a_wait_that_a_rule_forces_is_not_called_cheaper(day, more, kind):
    """With food on the shelf: hands, power, hours or raw pieces are what the fryer waits for."""
    for advice in shown(day, SOME_LEFT + more):
        assert (advice.kind, advice.reason.kind) == ("wait", kind)
        assert "costs less" not in advice.reason.text


def test_too_large_is_said_with_its_numbers():
    """Four pieces in the smallest load, three wanted: never the same number twice."""
    note = shown(day_of(mean=0.65))[0].reason
    assert (note.values["pieces"], note.values["wanted"]) == (4.0, 3.0)


def test_every_product_without_any_left_has_its_own_reason():
    """Two are asked for and none is there: a load of one is too large, of the other too dear. Both are said,
    the one that loses most first, and a spell of either is answered.
    """
    day = replace(day_of(), mean_n=np.array([[0.6] * 60, [2.0] * 60]))
    dear = tuple(replace(load, batch_money=30.0) for load in day.items[1].loads)
    day = replace(day, items=(day.items[0], replace(day.items[1], loads=dear)))
    for advice in shown(day):
        said = [(note.kind, note.values["product"]) for note in (advice.reason, *advice.also)]
        assert (advice.kind, said) == ("wait", [("dear", "b"), ("too_large", "a")])
    bench = SimpleNamespace(day=day, par=NEVER_CALLS, look=LOOK)
    asked = draw_days(day, 1, 3)
    one = practice.Played(plan=Plan(), asked=asked[0], shelf=np.stack([0 * asked[0], asked[0], 0 * asked[0]]))
    assert practice.answers(bench, one, (0, 30)) == "too_large"  # type: ignore[arg-type]
    assert practice.answers(bench, one, (1, 30)) == "dear"  # type: ignore[arg-type]


def test_busy_hands_are_said():
    """One person, who has just begun a filter turn."""
    day = day_of(hands=1)
    (only,) = shown(day, [Happening(what=What.FILTER, at_n=T, fryer=0)])
    assert (only.kind, only.reason.kind) == ("wait", "hands")


@pytest.mark.parametrize(
    ("every", "rush", "words"), [(1, (), "waits for free hands"), (1, ((0, 60),), "not in a rush")]
)
def test_a_turn_that_waits_says_what_for(every, rush, words):
    """A turn that is due and cannot begin: a rush only where there is one."""
    day = replace(day_of(hands=1), filter_every_count=every, rush=rush)
    happened = [
        Happening(what=What.DROP, at_n=10.0, fryer=0, item=0, load=0),
        Happening(what=What.LIFT, at_n=12.0, fryer=0),
        Happening(what=What.FILTER, at_n=T, fryer=1),
    ]
    (only,) = shown(day, happened)
    assert only.kind == "wait" and words in only.reason.text


def test_advice_that_stands_outlives_the_planned_end_of_heat():
    """A load advised just before the last drop of a fryer's hours stands while the mark goes by; a new one is
    not begun there.
    """
    day = replace(day_of(), up=((0, 23), (0, 0)))
    (first,) = advise(day, state_of(day, [], 20.9), NEVER_CALLS, LOOK)
    firm = Before(advice={0: first}, firm=frozenset({0}))
    (then,) = advise(day, state_of(day, [], 21.0), NEVER_CALLS, LOOK, firm)
    (new,) = advise(day, state_of(day, [], 21.0), NEVER_CALLS, LOOK)
    assert [(a.kind, a.load) for a in (first, then, new)] == [("drop", 1), ("drop", 1), ("wait", -1)]


@pytest.mark.parametrize(("mean", "said"), [(2.0, "used"), (0.6, "too_large")])
def test_a_spell_is_told_apart_by_what_the_board_says(mean, said):
    """A day on which nothing was cooked: the board would have dropped, or says that the load is too large;
    where it says neither the spell stays a fault.
    """
    day = replace(day_of(mean=mean))
    asked = draw_days(day, 1, 3)
    bench = SimpleNamespace(day=day, par=NEVER_CALLS, look=LOOK)
    one = practice.Played(plan=Plan(), asked=asked[0], shelf=np.stack([0 * asked[0], asked[0], 0 * asked[0]]))
    assert practice.answers(bench, one, (0, 30)) == said  # type: ignore[arg-type]
    assert practice.answers(bench, one, (1, 30)) in ("", "used")  # type: ignore[arg-type]
    full = replay(day, asked, NEVER_CALLS)
    assert full.plans[0].drops == ()


def test_every_event_makes_the_board_decide_anew_and_time_alone_does_not(monkeypatch):
    """A load lifted, a shelf emptied by a sale in the slot that runs, a fryer down and back, no raw pieces, a
    filter turn, people: each asks the engine again in the same slot; three minutes of nothing do not. A new
    order is a new bench.
    """
    asked: list[float] = []

    def counted(day, state, par, look, before):
        asked.append(state.now_n)
        return advise(day, state, par, look, before)

    monkeypatch.setattr(board, "advise", counted)
    day = day_of()
    bench = SimpleNamespace(day=day, par=NEVER_CALLS, look=LOOK)
    happened = [Happening(what=What.DROP, at_n=18.0, fryer=0, item=0, load=0)]
    events = [
        Happening(what=What.LIFT, at_n=20.1, fryer=0),
        Happening(what=What.SOLD, at_n=20.2, item=0, units_n=4.0),
        Happening(what=What.DOWN, at_n=20.3, fryer=1),
        Happening(what=What.UP, at_n=20.4, fryer=1),
        Happening(what=What.OUT, at_n=20.5, item=0),
        Happening(what=What.FILTER, at_n=20.6, fryer=0),
    ]
    board.advised(bench, state_of(day, happened, 20.0), day)
    for count, event in enumerate(events, start=2):
        happened.append(event)
        for later in (0.0, 0.05):
            board.advised(bench, state_of(day, happened, event.at_n + later), day)
        assert len(asked) == count, event.what
    board.advised(bench, state_of(day, happened, 20.95), day)
    assert len(asked) == 7
    board.advised(bench, state_of(day, happened, 20.95), replace(day, hands_count=1))
    board.advised(SimpleNamespace(day=day, par=NEVER_CALLS, look=LOOK), state_of(day, happened, 20.95), day)
    assert len(asked) == 9
