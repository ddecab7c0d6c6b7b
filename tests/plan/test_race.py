"""The race of actions over imagined days, its source run as plain Python on costs that are written down."""

from __future__ import annotations

import importlib.util

import numpy as np
import pytest

from frywright.physics import kernels
from frywright.plan import engine
from frywright.plan.model import Day, Item, LoadSize
from frywright.plan.replay import Look, Par, draw_days, replay


@pytest.fixture
def plain(monkeypatch):
    """The engine's source without a compiler."""
    monkeypatch.setattr(kernels, "njit", lambda **_: lambda function: function)
    monkeypatch.setattr(kernels, "inlined", lambda function: function)
    spec = importlib.util.spec_from_file_location("plain_engine", engine.__file__)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def bank(fryers: int, hold: int = 6) -> Day:
    """One product in ten pieces a load, asked for from the 30th slot to the 39th."""
    load = LoadSize(
        units_count=10,
        cook_slots_count=2,
        recovery_slots_count=1,
        batch_money=1.0,
        fryers=tuple(range(fryers)),
    )
    item = Item(name="tenders", loads=(load,), hold_slots_count=hold, short_money=2.0, waste_money=1.0)
    asked = np.zeros((1, 60))
    asked[0, 30:40] = 2.0
    return Day(items=(item,), fryers_count=fryers, slots_count=60, hands_count=4, mean_n=asked)


def race(plain, cost, z=0.5, last=0):
    """The load that wins; action n of the kitchen's one product costs ``cost[n]`` on the imagined days, and
    how many days each met; and the world after it. The last action is of product ``last``.
    """
    count, paths = cost.shape
    met = np.zeros(count, dtype=int)

    def candidates(f, t, world, base, given, out):
        out[:count] = [(0, n) for n in range(count)]
        out[count - 1, 0] = last
        return count

    def tried(where, action, dreams, worlds, beliefs, given, out):
        low, high = where[3:]
        out[1][low:high] = cost[action[1], low:high]
        met[action[1]] += high - low

    for name, stand_in in (
        ("believe", lambda *_: None),
        ("needs", lambda *_: True),
        ("rule_action", lambda *_: (0, 0)),
        ("_candidates", candidates),
        ("_try", tried),
    ):
        setattr(plain, name, stand_in)
    given = [None] * 19
    given[1], given[16] = np.ones((1, count, 1), dtype=bool), np.array([0])
    world = plain.fresh(
        (np.zeros((4, 1, count), dtype=int), *[None] * 4, np.zeros((1, 139)), 0, np.array([[0, 138]]))
    )
    found = plain.rollout((0, 5, 300, z), np.zeros((paths, 1, 1)), world, np.zeros((2, 2)), given, world)
    return found, met, world


@pytest.mark.parametrize(("paths", "few"), [(40, 24), (100, 36), (200, 72)])
def test_what_is_dropped_takes_no_place_of_what_is_left(plain, paths, few):
    """Three loads look well on the first days and are dropped for three that look better; on the other days
    two of those cost more than the rule. The third is the best there is and is chosen.
    """
    rng = np.random.default_rng(1)
    cost = 50.0 + rng.normal(0.0, 0.05, size=(7, paths))
    cost[1:, :few] -= np.array([1.2, 1.1, 1.0, 0.9, 0.8, 0.7])[:, None]
    cost[1:3, few:] += 3.0
    (i, k, gain, error), met, _ = race(plain, cost)
    assert (i, k) == (0, 3)
    assert gain == pytest.approx((cost[0] - cost[3]).mean())
    assert error == pytest.approx((cost[0] - cost[3]).std() / np.sqrt(paths))
    assert list(met) == [paths, paths, paths, paths, few, few, few]


def test_the_rule_stays_where_no_action_is_cheaper_beyond_doubt(plain):
    """A gain of half its error is not enough at a doubt of one, and is at none."""
    cost = np.full((2, 100), 50.0)
    cost[1] -= np.where(np.arange(100) % 2, 1.0, -1.0) + 0.05
    assert race(plain, cost, 1.0)[0][:2] == (0, 0)
    assert race(plain, cost, 0.0)[0][:2] == (0, 1)


def test_a_forbidden_action_never_wins(plain):
    """An action that a rule of the kitchen forbids costs without end."""
    cost = np.full((3, 100), 50.0)
    cost[1], cost[2] = np.inf, 49.0
    with np.errstate(invalid="ignore"):
        assert race(plain, cost)[0][:2] == (0, 2)


def test_a_small_bank_meets_more_days_and_keeps_more_actions():
    """One fryer looks at the most imagined days: enough for the wider race. From three on it is the quick
    one.
    """
    one, two, three = (Look.for_bank(bank(n)).paths_count for n in (1, 2, 3))
    assert one > engine.MANY_PATHS >= two > engine.FEW_PATHS >= three


def test_a_bank_of_five_and_more_looks_as_one_of_four():
    """More paths with less doubt saved more on drawn moments, and cost more on whole days."""
    assert Look.for_bank(bank(5)) == Look.for_bank(bank(8)) == Look.for_bank(bank(4))
    assert Look.for_bank(bank(8)).z_n > Look.for_bank(bank(1)).z_n


@pytest.mark.parametrize(("hold", "slots"), [(6, 36), (50, 64)])
def test_a_look_sees_a_load_until_it_is_too_old(hold, slots):
    """Small banks look to the close; large ones three hours, or one past the end of the longest hold."""
    assert Look.for_bank(bank(2, hold)).horizon_slots_count == 60
    assert Look.for_bank(bank(3, hold)).horizon_slots_count == slots
    assert Look.for_plan(bank(8, hold)).horizon_slots_count == slots


@pytest.mark.parametrize("fryers", [1, 2, 4])
def test_to_wait_is_to_wait_however_many_fryers_are_idle(fryers):
    """A rule that looks too far ahead drops loads that nobody asks for while they may be held. The engine
    waits with them, with one fryer and with several: what one leaves empty the next does not take up.
    """
    day = bank(fryers)
    days, rule = draw_days(day, 3, 5), Par(cover_slots=(16,), z_n=(0.0,))
    early = [drop.slot < 24 for plan in replay(day, days, rule).plans for drop in plan.drops]
    played = replay(day, days, rule, Look(paths_count=24, horizon_slots_count=60))
    assert sum(early) >= 6
    assert all(drop.slot + 2 + 6 > 30 for plan in played.plans for drop in plan.drops)
    assert played.price.total_money < 10.0


def test_what_is_waited_with_is_kept_out_of_every_fryer_for_this_slot(plain):
    """The rule's product is marked where leaving the fryer empty wins, and not where its own load wins."""
    for saved, action, mark in ((1.0, plain.NOTHING, 5), (-1.0, 0, -1)):
        cost = np.full((2, 100), 50.0)
        cost[1] -= saved
        found, _, world = race(plain, cost, last=plain.NOTHING)
        assert (found[0], world[5][2, 0]) == (action, mark)


@pytest.mark.parametrize(("product", "last"), [(0, 8), (-2, -1)])
def test_a_wait_of_four_slots_keeps_fryer_and_product_out_for_four(plain, product, last):
    """On imagined days a fryer that waits four slots from the fifth is free at the ninth, and so is what it
    waits with; where the rule had nothing to put in, no product is kept out.
    """
    plain.go_on = lambda *_: None
    given = [None] * 19
    given[16] = np.array([0])
    empty = (np.zeros((4, 1, 1), dtype=int), *[None] * 4, np.zeros((1, 139)), 0, np.array([[0, 138]]))
    world, scratch = plain.fresh(empty), plain.fresh(empty)
    dreams, belief, part, cost = np.zeros((1, 1, 138)), np.zeros((2, 2)), np.zeros(6), np.zeros(1)
    where, action = (0, 5, 138, 0, 1), (plain.NOTHING, 4, product)
    plain._try(where, action, dreams, (world, scratch), (belief, belief.copy()), given, (part, cost))
    assert (scratch[2][0, 0], scratch[5][2, 0]) == (9, last)


def test_what_stands_at_the_end_of_a_look_is_worth_a_fifth_of_its_sale(plain):
    """Ten pieces stand; three are asked for in the four slots they may be held, and of a second product all
    ten before the close. What is not asked for is thrown away.
    """
    ahead = np.cumsum(np.tile([[0.0] + [0.5] * 19], (2, 1)), axis=1)
    given = [None] * 19
    given[3], given[4] = np.array([4, 99]), np.array([[2.0, 1.0, 1.5], [3.0, 1.0, 1.5]])
    given[5], given[17] = ahead, np.zeros((2, 20), dtype=int)
    given[17][0, 8:], given[17][1, 12:] = 1, 8
    world = (np.zeros((2, 19)), np.array([[0, 0], [5, 2], [0, 0], [15, 12]]), *[None] * 3, np.ones((3, 2)))
    thrown, sold = 10.0 - 3.0, 3.0 * 2.0 + 10.0 * 3.0
    assert plain._left(6, world, given) == pytest.approx(thrown - 0.2 * sold)
