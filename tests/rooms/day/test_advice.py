"""What the board advises: worked out once, kept for a minute, moved by what happens."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.rooms.day.board import Board, Tap
from frywright.rooms.day.board_view import board_view

pytestmark = [pytest.mark.slow, pytest.mark.usefixtures("any_hour")]


def test_advice_is_worked_out_once_and_anew_for_all_that_counts(bench, monkeypatch):
    """Kept advice is what would be advised at any moment of a day of random taps."""
    import random

    from frywright.plan.advice import advise
    from frywright.plan.live import Happening, What, state_of
    from frywright.rooms.day import advised as module

    done = []

    def counted(*args):
        done.append(1)
        return advise(*args)

    monkeypatch.setattr(module, "advise", counted)
    module._KEPT.clear()
    dice, facts, slots = random.Random(7), [], bench.day.slots_count
    for _ in range(60):
        at, item = dice.uniform(0, slots - 1), dice.randrange(len(bench.products))
        what = dice.choice([What.DROP, What.LIFT, What.SOLD, What.DOWN, What.UP, What.OUT, What.FILTER])
        load = dice.randrange(len(bench.loads[item]))
        fryer = bench.fryers.index(bench.loads[item][load].fryer)
        facts.append(
            Happening(what=what, at_n=at, fryer=fryer, item=item, load=load, units_n=dice.randint(1, 9))
        )
    facts.sort(key=lambda f: f.at_n)
    moments = sorted(dice.uniform(0, slots - 1) for _ in range(12))
    for now_n in moments:
        state = state_of(bench.day, facts, now_n)
        wanted = advise(bench.day, state, bench.par, bench.look)
        again = module.advised(bench, state, bench.day)
        assert module.advised(bench, state, bench.day) == again == wanted
    assert 8 <= len(done) <= 12


def test_advice_stands_for_a_minute(bench, monkeypatch):
    """What a board says to drop or filter it says for a minute, though a mark of the clock passes and sales
    come in; advice worked out anew turns at some of those marks.
    """
    from benchmarks import practice

    from frywright.plan.replay import Look, draw_days, replay

    asked = draw_days(bench.day, 1, 77)
    look = Look(paths_count=6, horizon_slots_count=40, seed_count=3)
    monkeypatch.setattr(type(bench), "look", property(lambda own: look))
    played = replay(bench.day, asked, bench.par)
    one = practice.Played(plan=played.plans[0], asked=asked[0], shelf=played.shelf[0])
    turned, anew, all_of_them = practice.contradictions(bench, one, list(range(6, 100, 2)))
    assert turned == 0
    assert 0 < anew < all_of_them


def test_what_ends_the_minute_of_an_advice(bench):
    """A minute, a load that was not advised, a fryer down, other people: then nothing stands firm; a load
    that was advised leaves the rest as it is.
    """
    from frywright.plan.live import Happening, What, state_of
    from frywright.rooms.day import advised as module

    at, second = 40.0, 1.0 / bench.day.slot_s
    state = state_of(bench.day, [], at)
    advice = module.advised(bench, state, bench.day, 901)
    shown = module._SHOWN[(id(bench), 901)]
    drops = [a for a in advice if a.kind == "drop"]
    assert drops

    def firm(seconds, *happened, day=bench.day):
        later = state_of(bench.day, list(happened), at + seconds * second)
        before = module._before(shown, later, day)
        return before is not None and drops[-1].fryer in before.firm

    def drop(item, load, fryer):
        return Happening(what=What.DROP, at_n=at + 10 * second, fryer=fryer, item=item, load=load)

    first = drops[0]
    other = next(i for i in range(len(bench.products)) if i != first.item)
    assert firm(20)
    assert firm(20, drop(first.item, first.load, first.fryer))
    assert not firm(20, drop(other, 0, first.fryer))
    assert not firm(61)
    assert not firm(20, Happening(what=What.DOWN, at_n=at + second, fryer=first.fryer))
    assert not firm(20, day=replace(bench.day, hands_count=bench.day.hands_count + 1))
    assert module._before(shown, state_of(bench.day, [], at + 1.5), bench.day) is None


def test_a_late_truck_takes_a_product_off(store, kitchen, bench):
    """While a product is out nothing of it is advised or planned and the loss is told; when it is in again it
    is.
    """
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=508)
    noon = 12 * 3600.0

    def first(at_s):
        drops = [d.slot for d in board.rest_of_day(board.state(at_s)).plan.drops if d.item == 1]
        return bench.trade.start_s + min(drops, default=999) * bench.trade.slot_s - at_s

    assert first(noon) <= 1800.0
    board.tell(Tap(key="out", what="out", at_s=noon - 60, product="tenders"))
    view = board_view(board, noon)
    assert not any(a.product == "tenders" for a in view.advice)
    assert [s.out for s in view.shelf] == [False, True, False]
    assert not [d for d in board.rest_of_day(board.state(noon)).plan.drops if d.item == 1]
    board.tell(Tap(key="in", what="in", at_s=noon + 60, product="tenders"))
    assert first(noon + 120) <= 1800.0


def test_a_jump_in_sales_moves_the_day(store, kitchen, bench):
    """Half as much again sold by noon raises the level and the loads to come."""
    board = Board(store=store, kitchen=kitchen, bench=bench)
    usual = board.rest_of_day(board.state(12 * 3600.0))
    for slot in range(0, 28):
        for i, product in enumerate(bench.products):
            sold = round(1.6 * bench.day.mean_n[i, slot])
            if sold:
                board.tell(
                    Tap(
                        key=f"s{slot}{i}",
                        what="sold",
                        at_s=bench.trade.start_s + slot * 300.0 + 10,
                        product=product,
                        pieces_count=sold,
                    )
                )
    state = board.state(12 * 3600.0)
    assert board_view(board, 12 * 3600.0).level_n > 1.1
    assert sum(
        board.bench.day.items[d.item].loads[d.load].units_count for d in board.rest_of_day(state).plan.drops
    ) > sum(board.bench.day.items[d.item].loads[d.load].units_count for d in usual.plan.drops)
