"""Taps kept once, a practice day played to its end, labels, hand-over and promises."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from frywright.model import business_day
from frywright.model.errors import InputError
from frywright.plan.check import broken_rules
from frywright.plan.live import What
from frywright.plan.model import Plan
from frywright.rooms.day import paper as day_paper
from frywright.rooms.day import twice
from frywright.rooms.day import views as day_view
from frywright.rooms.day.board import Board, Tap, tap_of
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.compare import compare_down
from frywright.rooms.day.practice import guests, next_practice
from frywright.rooms.day.round import play_day
from frywright.rooms.day.score import score_view
from frywright.voice.tongue import translator
from tests.demo import FRIDAY
from tests.paper import page_words, pages, words

pytestmark = [pytest.mark.slow, pytest.mark.usefixtures("any_hour")]


def test_a_tap_is_kept_once_with_both_times(store, kitchen, bench):
    """The same key sent again, as a tablet does that lost the server, is one entry; a late one keeps when it
    happened.
    """
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=501)
    tap = Tap(key="once", what="drop", at_s=36000.0, fryer="alder", product="bone_in", pieces_count=16)
    first, second = board.tell(tap), board.tell(tap)
    assert (first[1], second[1]) == (True, False)
    assert first[0].number == second[0].number
    assert first[0].happened_at == business_day.moment_of(bench.trade, FRIDAY, 36000.0)
    assert len(board.taps()) == 1
    assert board_view(board, 36100.0).fryers[0].state == "cooking"
    other = Board(store=store, kitchen=kitchen, bench=bench, practice=502)
    assert board_view(other, 36100.0).fryers[0].state != "cooking"


@pytest.mark.parametrize(
    "bad",
    [
        {"what": "drop", "fryer": "nobody", "product": "bone_in"},
        {"what": "drop", "fryer": "alder", "product": "tenders"},
        {"what": "dance"},
        {"what": "sold", "product": "x"},
        {"what": "lift", "fryer": "alder", "at_s": "noon"},
        {"what": "count", "product": "bone_in", "pieces": "1e9"},
        {"what": "drop", "fryer": "alder", "product": "bone_in", "pieces": "3.5"},
        {"what": "lift", "fryer": "alder", "key": ""},
    ],
)
def test_impossible_taps_are_refused_and_nothing_is_kept(store, kitchen, bench, bad):
    """Each with our own error."""
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=503)
    with pytest.raises(InputError):
        board.tell(tap_of({"key": "k", "at_s": 36000, **bad}))
    assert board.taps() == []


def test_no_clock_while_pressure_is_let_go(store, kitchen, bench):
    """A pressure load's timer ends where venting starts, and the words to wait for zero are there; an open
    fryer has none.
    """
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=504)
    board.tell(Tap(key="a", what="drop", at_s=40000.0, fryer="alder", product="bone_in", pieces_count=16))
    board.tell(Tap(key="b", what="drop", at_s=40000.0, fryer="cedar", product="wedges", pieces_count=26))
    alder, _, cedar, _ = board_view(board, 40100.0).fryers
    assert 40000 < alder.vent_s < alder.lift_s
    assert "zero on the gauge" in alder.vent_text
    assert cedar.vent_s is None


def test_a_fryer_that_the_plan_keeps_off_takes_a_load_cooked_to_order(store, kitchen, bench):
    """It says that the plan has it off; one that is out of use, or has a load in it, takes none. A load in it
    has its clock.
    """
    off = replace(bench, day=replace(bench.day, up=((0, 0), *((0, bench.day.slots_count),) * 3)))
    board = Board(store=store, kitchen=kitchen, bench=off, practice=505)
    board.tell(Tap(key="d", what="down", at_s=39000.0, fryer="birch"))

    def into(at_s):
        row = next(s for s in board_view(board, at_s).shelf if s.product == "bone_in")
        return {x.fryer: (x.free, x.off) for x in row.into}

    off_now, ready = (True, "Stays off today by the plan"), (True, "")
    assert into(39100.0) == {"alder": off_now, "birch": (False, ""), "cedar": ready}
    board.tell(Tap(key="o", what="drop", at_s=39200.0, fryer="alder", product="bone_in", pieces_count=16))
    assert board_view(board, 39300.0).fryers[0].state == "cooking"
    assert into(39300.0)["alder"] == (False, "")


def test_a_practice_friday_with_a_fryer_that_fails(store, kitchen, bench):
    """Played to its end by the advice: nothing goes into the dead fryer, hot-oil rules hold, waste is
    explained to the last piece.
    """
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=7)
    told = play_day(board, "birch@17:40")
    assert any("birch fails" in t.text for t in told)
    assert not [t for t in told if t.at > "17:40" and t.what == "drop" and t.fryer == "birch"]
    state = board.state(bench.trade.closes_s)
    assert broken_rules(bench.day, Plan(filters=tuple((f, int(t)) for f, t in state.filters))) == []
    close = day_view.close_view(board, bench.trade.closes_s)
    assert sum(c.pieces_n for c in close.causes) == pytest.approx(close.thrown_n, abs=1.0)
    assert len(board.taps()) == len(told)
    assert np.nansum(state.sold_n) > 0.6 * bench.day.mean_n.sum()
    with pytest.raises(InputError):
        play_day(replace(board, practice=None))
    end_s = board.bench.trade.closes_s + 60.0
    score = score_view(board, end_s)
    asked = guests(bench.day, 7).sum(axis=1)
    thrown = board.state(end_s).thrown
    for i, (row, item) in enumerate(zip(score.rows, bench.day.items, strict=True)):
        assert row.asked_n == asked[i] == row.served_n + row.missed_n
        assert row.thrown_n == sum(t.units_n for t in thrown if t.tray.item == i)
        lost = row.missed_n * item.short_money + (row.thrown_n + row.left_n) * item.waste_money
        assert row.money == pytest.approx(lost)
    assert score.money == pytest.approx(sum(row.money for row in score.rows)) and score.money > 0
    assert 0.8 < score.served_frac < 1.0
    assert score_view(replace(board, practice=None), end_s) is None


def test_a_failed_fryer_is_compared(store, kitchen, bench):
    """Old and new plan side by side by half hour."""
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=505)
    view = compare_down(board, 17 * 3600 + 2400.0, "alder")
    assert [h.from_ for h in view.halves[:3]] == ["17:40", "18:00", "18:30"]
    assert view.halves[-1].from_ == "21:30"
    assert view.fill_new_frac < view.fill_old_frac
    assert view.short_n > 0
    assert view.trim


@settings(
    max_examples=4,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(st.integers(0, 10**6))
def test_a_full_day_of_random_taps_loses_no_entry(store, kitchen, bench, seed):
    """Two hundred taps in any order, some twice, some impossible: every good one is kept once, the rest
    refused, and the board can always be drawn.
    """
    rng = np.random.default_rng(seed)
    board, good = Board(store=store, kitchen=kitchen, bench=bench, practice=1000 + seed), set()
    for n in range(200):
        key = f"r{rng.integers(0, 150)}"
        tap = Tap(
            key=key,
            what=str(rng.choice([*What, "dance"])),
            at_s=float(rng.integers(34000, 80000)),
            fryer=str(rng.choice([*bench.fryers, "nobody"])),
            product=str(rng.choice([*bench.products, ""])),
            pieces_count=int(rng.choice([0, 1, 8, 16, 40, 200])),
            reason="other",
        )
        try:
            recorded, new = board.tell(tap)
        except InputError:
            continue
        if not new and recorded.fact.key != key:
            told = recorded.fact
            assert tap.what == told.what, "only the same act told by another tablet is taken for one"
            assert tap.fryer == told.fryer or tap.product == told.product
            assert abs(tap.at_s - told.at_s) <= twice.SAME_S
            continue
        assert new == (key not in good)
        assert recorded.fact.key == key
        good.add(key)
        if n % 50 == 49:
            view = board_view(board, float(rng.integers(34000, 80000)))
            assert all(s.count >= 0 for s in view.shelf)
    assert sorted(e.fact.key for e in board.taps()) == sorted(good)
    assert store.verify()[0] >= len(good)


def test_labels_and_handover(store, kitchen, bench):
    """Both are PDFs in both languages; no tray, no label."""
    from frywright.voice.tongue import translator

    board = Board(store=store, kitchen=kitchen, bench=bench, practice=506)
    with pytest.raises(InputError):
        day_paper.labels_pdf(board, 40000.0, "en")
    board.tell(Tap(key="a", what="drop", at_s=39000.0, fryer="alder", product="bone_in", pieces_count=16))
    board.tell(Tap(key="b", what="lift", at_s=39800.0, fryer="alder"))
    for language in ("en", "es"):
        tr = translator(language)
        assert day_paper.labels_pdf(board, 40000.0, language, tr).startswith(b"%PDF")
        assert day_paper.handover_pdf(board, 40000.0, language, tr).startswith(b"%PDF")
    board.tell(Tap(key="c", what="drop", at_s=40000.0, fryer="alder", product="bone_in", pieces_count=16))
    for late_s, due in ((0.0, ()), (600.0, ["Fryer care is due."])):
        at_s = 40000.0 + lift_time_s(board) + late_s
        said = words(day_paper.handover_pdf(board, at_s, "en", str, due))
        assert ("10 min overdue" in said) == bool(late_s)
        assert ("Fryer care is due." in said) == bool(due)


def test_a_full_handover_has_its_signatures_on_the_first_page(store, kitchen, bench):
    """With more due than a page takes, and with little; the longer goes on over the next page."""
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=507)
    many = [f"Care task {n} of a long list that is due in the kitchen." for n in range(60)]
    for due, length in (((), 1), (many, 2)):
        data = day_paper.handover_pdf(board, 40000.0, "en", str, due)
        assert pages(data) >= length
        assert "handed over by" in page_words(data)[0]
        assert " ".join(page_words(data)).count("handed over by") == 1


def lift_time_s(board):
    """From the drop to the lift of the load in the first fryer [s]."""
    row = next(f for f in board_view(board, 40001.0).fryers if f.state == "cooking")
    return row.lift_s - row.drop_s


def test_promises(store, kitchen, bench):
    """A small order can be promised, a huge one is answered with the largest."""
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=507)
    assert day_view.promise_view(board, bench.trade.start_s, "bone_in", 15 * 3600.0, 16).feasible
    refused = day_view.promise_view(board, bench.trade.start_s, "bone_in", 17 * 3600.0, 2000)
    assert not refused.feasible
    assert 0 < refused.largest_n < 2000


def test_a_practice_day_begins_without_the_taps_of_before(store, kitchen, bench):
    """The next number nobody played, on that date."""
    date = bench.date
    first = next_practice(store, date)
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=first)
    board.tell(Tap(key="p", what="drop", at_s=39000.0, fryer="alder", product="bone_in", pieces_count=16))
    assert next_practice(store, date) != first
    assert not Board(store=store, kitchen=kitchen, bench=bench, practice=next_practice(store, date)).taps()
    assert next_practice(store, date + dt.timedelta(days=1)) == 1


def test_one_piece_is_not_called_pieces(store, kitchen, bench):
    """Of a load on the board, in both languages."""
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=506)
    board.tell(Tap(key="one", what="drop", at_s=40000.0, fryer="cedar", product="tenders", pieces_count=1))
    for language, said in (("en", "1 piece"), ("es", "1 pieza")):
        row = next(f for f in board_view(board, 40010.0, translator(language)).fryers if f.key == "cedar")
        assert row.text == said
