"""Loads lifted, promised, sold, thrown away and handed over on the floor."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from frywright.ledger.facts.probing import Reading
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.plan.advice import world_of
from frywright.rooms.day import paper as day_paper
from frywright.rooms.day import views
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.compare import compare_down, compare_out
from frywright.rooms.day.lifting import Answer, LiftAskedError
from frywright.rooms.day.loads import item_of
from frywright.rooms.day.round import play_day
from frywright.rooms.hall import write
from tests.demo import FRIDAY
from tests.paper import sizes, words
from tests.rooms.floor.board import NINE, NOON, TIME, shelf, tell, till_tells


def test_a_load_stands_on_the_shelf_from_its_lift_to_the_end_of_its_hold(board):
    """In the oil, then on the shelf as typed; past its hold it is not for sale, and it is said."""
    till_tells(board)
    tell(board, "drop", NOON, pieces_count=14)
    assert shelf(board, NOON + 60) == (0, 14)
    tell(board, "lift", NOON + TIME)
    assert shelf(board, NOON + TIME + 10) == (14, 0)
    row = next(s for s in board_view(board, NOON + TIME + 10).shelf if s.product == "bone_in")
    assert row.hold_s == board.bench.day.items[0].hold_slots_count * 300.0
    ends = NOON + TIME + row.hold_s
    assert row.ends_s == pytest.approx(ends)
    late = board_view(board, ends + 60)
    assert next(s for s in late.shelf if s.product == "bone_in").expired > 0
    assert any("past their hold life" in note for note in late.notes)


@pytest.mark.parametrize(("hold_min", "slots"), [(8, 1), (12, 2), (3, 1), (20, 4)])
def test_a_tray_lives_as_long_as_its_program_says_and_no_slot_decides(board, hold_min, slots):
    """To the second on shelf and label, shorter than a slot too; the engine's shelf has it while it lives."""
    items = list(board.bench.day.items)
    items[0] = replace(items[0], hold_slots_count=slots, life_n=hold_min / 5)
    board = replace(board, bench=replace(board.bench, day=replace(board.bench.day, items=tuple(items))))
    till_tells(board)
    tell(board, "drop", NOON)
    tell(board, "lift", NOON + TIME)
    ends = NOON + TIME + 60 * hold_min
    row = next(s for s in board_view(board, ends - 5).shelf if s.product == "bone_in")
    assert (row.count, row.hold_s, row.ends_s) == (16, 60 * hold_min, pytest.approx(ends))
    assert shelf(board, ends + 5)[0] == 0
    for at in (NOON + TIME + 5, ends - 5):
        state = board.state(at)
        slot, world, _ = world_of(board.bench.day, state)
        made = world[0][0, : slot + 1]
        assert made.sum() == world[1][0, 0] == 16
        assert made[max(0, slot - slots) :].sum() == 16, "none is older than the engine lets it be"


def test_a_kitchen_file_gives_trays_their_exact_life(shop):
    """Minutes of the program, not whole slots."""
    _, kitchen, bench = shop
    odd = replace(kitchen, programs=tuple(replace(p, hold_life_s=8 * 60.0) for p in kitchen.programs))
    item = item_of(odd, odd.sells[0], bench.trade, {f: n for n, f in enumerate(bench.fryers)}, [])[0]
    assert (item.hold_slots_count, item.life_n) == (1, 1.6)


def test_food_past_its_life_that_a_guest_took_is_no_missing_lift(board):
    """The board says 16; one is sold before somebody taps: 15 are thrown away and nothing is missing. What
    nobody sold is asked for.
    """
    till_tells(board)
    tell(board, "drop", NOON)
    tell(board, "lift", NOON + TIME)
    late = board_view(board, NOON + 7200).shelf[0]
    assert late.expired == 16
    tell(board, "sold", NOON + 7210, product="bone_in", pieces_count=1)
    tell(board, "discard", NOON + 7220, product="bone_in", pieces_count=16, reason="expired")
    state = board.state(NOON + 7230)
    assert sum(t.units_n for t in state.thrown) == 15
    assert not [n for n in state.notes if n.kind == "more_thrown"]
    tell(board, "discard", NOON + 7240, product="bone_in", pieces_count=500, reason="expired")
    notes = board_view(board, NOON + 7250).notes
    assert "Thrown away, with no lift entered: 500. Enter the lift that is missing." in notes


@pytest.mark.parametrize("share", [0.5, 0.89])
def test_a_load_lifted_early_is_no_food_until_somebody_answers(board, share):
    """It stays in the oil; thrown away it never reaches the shelf, and the pieces are in the waste."""
    tell(board, "drop", NOON)
    early = NOON + share * TIME
    with pytest.raises(LiftAskedError) as asked:
        tell(board, "lift", early)
    assert "may be raw inside" in asked.value.question(str)
    assert "12:00" in asked.value.question(str)
    assert [c.answer for c in asked.value.choices(str)] == [Answer.BACK, Answer.THROWN, Answer.PROBED]
    assert asked.value.http_status == 409
    assert shelf(board, early + 5) == (0, 16)
    tell(board, "lift", early, reason=Answer.THROWN)
    assert shelf(board, early + 5) == (0, 0)
    last = board.taps()[-1].fact
    assert (last.what, last.product, last.pieces_count, last.reason) == (
        "discard",
        "bone_in",
        16,
        "undercooked",
    )


def test_probed_is_believed_only_with_a_good_reading_since_the_drop(board):
    """Not one from before, not another fryer's or product's, not one below its limit."""
    tell(board, "drop", NOON)
    early = NOON + 0.8 * TIME

    def read(core_c, at_s, fryer="alder", product="bone_in", limit_c=73.9):
        fact = Reading(
            name="r",
            thermometer="T1",
            core_c=core_c,
            limit_c=limit_c,
            load="",
            units_count=16.0,
            fryer=fryer,
            product=product,
        )
        write(board.store, fact, moment_of(board.bench.trade, FRIDAY, at_s))

    def refused():
        with pytest.raises(InputError, match="entered first"):
            tell(board, "lift", early, reason=Answer.PROBED)
        return True

    read(80.0, NOON - 60)
    read(80.0, early - 9, fryer="birch")
    read(80.0, early - 8, product="tenders")
    read(80.0, early - 7, limit_c=None)
    assert refused()
    read(80.0, early - 6)
    read(60.0, early - 5)
    assert refused()
    read(80.0, early - 4)
    tell(board, "lift", early, reason=Answer.PROBED)
    assert shelf(board, early + 5) == (16, 0)


def test_a_load_lifted_late_is_asked_when(board):
    """Said to be in time it stands on the shelf from the card's time; burnt, it is thrown away."""
    tell(board, "drop", NOON)
    late = NOON + TIME + 121
    with pytest.raises(LiftAskedError) as asked:
        tell(board, "lift", late)
    assert asked.value.question(str) == "This load was due at 12:12. When was it lifted?"
    choices = asked.value.choices(str)
    assert [(c.answer, c.at_s) for c in choices] == [
        (Answer.IN_TIME, NOON + TIME),
        (Answer.THROWN, None),
        (Answer.KEPT, None),
    ]
    assert choices[0].text == "At 12:12, in time"
    kept, new = tell(board, "lift", late, reason=Answer.IN_TIME)
    assert (kept.fact.at_s, new) == (NOON + TIME, True)
    again, new = tell(board, "lift", late + 20, key="other tablet", reason=Answer.KEPT)
    assert (again.number, new) == (kept.number, False)
    tell(board, "drop", NOON + 1800)
    tell(board, "lift", NOON + 1800 + TIME + 130, reason=Answer.THROWN)
    assert board.taps()[-1].fact.reason == "burnt"


def test_two_minutes_late_is_in_time_and_nothing_in_the_oil_is_no_question(board):
    """The questions begin past the bounds, not at them."""
    tell(board, "lift", NOON - 600)
    tell(board, "drop", NOON)
    kept, _ = tell(board, "lift", NOON + TIME + 120)
    assert kept.fact.at_s == NOON + TIME + 120


def test_an_order_is_promised_with_its_start_and_its_chance(board):
    """Sixteen pieces can be had in an hour, a thousand cannot; an unknown product is named."""
    view = views.promise_view(board, NOON, "bone_in", NOON + 3600, 16)
    assert (view.feasible, view.pieces, view.at, view.product) == (True, 16, "13:00", "bone_in")
    assert 0.5 < view.chance_frac <= 1.0
    assert "12:00" <= view.start < "13:00"
    assert set(view.fryers) <= {"alder", "birch", "cedar"}
    assert view.largest_n >= 16
    big = views.promise_view(board, NOON, "bone_in", NOON + 3600, 1000)
    assert (big.feasible, 16 <= big.largest_n < 1000) == (False, True)
    early = views.promise_view(board, 8 * 3600.0, "bone_in", NOON, 16)
    assert early.start >= "09:40"
    with pytest.raises(InputError, match="one of: bone_in, tenders, wedges"):
        views.promise_view(board, NOON, "fish", NOON + 3600, 16)
    for at_s in (NOON - 3600, NOON, NOON + 60, 26 * 3600.0):
        with pytest.raises(InputError, match=r"ready at is \d\d:\d\d; it must be a time from 12:\d\d, when"):
            views.promise_view(board, NOON, "bone_in", at_s, 16)
    with pytest.raises(InputError, match="pieces is -3; it must be 1 to 10,000"):
        views.promise_view(board, NOON, "bone_in", NOON + 3600, -3)


def test_at_close_the_causes_add_up_to_what_was_thrown_away(board):
    """Eleven pieces on the floor: in the product's row, under its cause, and in the whole."""
    till_tells(board)
    tell(board, "drop", NOON)
    tell(board, "lift", NOON + TIME)
    tell(board, "discard", NOON + 900, product="bone_in", pieces_count=11, reason="dropped on the floor")
    tell(board, "filter", NOON + 7200, fryer="birch")
    view = views.close_view(board, NOON + 7300)
    assert (view.date, view.drops_count, view.filters_count, view.thrown_n) == ("2026-11-27", 1, 1, 11.0)
    assert [row.thrown_n for row in view.products] == [11.0, 0, 0]
    assert sum(c.pieces_n for c in view.causes) == pytest.approx(11.0)
    assert sum(view.products[0].causes.values()) == pytest.approx(11.0)
    assert (view.products[0].money, view.money, view.currency) == (10.45, 10.45, "$")  # 0.95 a piece
    assert [row.sold_n for row in view.products] == list(view.sold_n) == [0, 0, 1]
    assert {c.cause: c.pieces_n for c in view.causes}["error"] == pytest.approx(11.0)
    assert len(view.sold_n) == 3


def test_the_rest_of_a_day_is_compared_with_and_without_a_fryer_or_a_product(board):
    """Without Cedar and then without tenders more is asked for in vain, from this half hour to the close."""
    view = compare_down(board, NINE - 5400, "cedar")
    assert (view.what, view.halves[0].from_, view.halves[-1].from_) == ("cedar", "19:30", "21:30")
    assert view.short_n > 0
    assert view.new_money > view.old_money
    assert view.fill_new_frac < view.fill_old_frac
    assert view.new_drops < view.old_drops
    assert sum(h.new_n for h in view.halves) > sum(h.old_n for h in view.halves)
    out = compare_out(board, NINE, "tenders")
    assert (out.product, out.trim, out.halves[0].from_) == ("Tenders", "", "21:00")
    assert out.short_n > 0
    with pytest.raises(InputError, match="one of: bone_in"):
        compare_out(board, NINE, "fish")
    with pytest.raises(InputError):
        compare_down(board, NINE, "elm")


def test_a_comparison_leaves_what_is_out_already_as_it_is(board):
    """Birch is down: Cedar's comparison begins with the day without Birch. The day with Birch, which is down,
    has Birch again and not Cedar, which is down too.
    """
    at = NINE - 5400
    whole, cedar = (compare_down(board, at, fryer) for fryer in ("birch", "cedar"))
    tell(board, "down", at, fryer="birch")
    both, again = compare_down(board, at, "cedar"), compare_down(board, at, "birch")
    assert (both.old_money, both.old_drops) == (whole.new_money, whole.new_drops)
    assert again.halves == whole.halves and again.old_money == whole.old_money
    tell(board, "down", at, key="second", fryer="cedar")
    last = compare_down(board, at, "birch")
    assert (last.old_money, last.new_money) == (cedar.new_money, both.new_money)
    assert len({whole.old_money, whole.new_money, cedar.new_money, both.new_money}) == 4


@pytest.mark.slow
def test_a_practice_morning_is_played_by_the_advice(board):
    """Every drop follows an advice and is lifted by its card; the fryer that fails takes no more."""
    short = replace(board.bench.trade, closes="10:35")
    practice = replace(board, practice=7, bench=replace(board.bench, trade=short))
    told = play_day(practice, "cedar@09:55")
    drops = [d for d in told if d.what == "drop"]
    assert drops and all(d.pieces_count > 0 for d in drops)
    (failed,) = [d for d in told if d.what == "down"]
    assert (failed.at, failed.fryer) == ("09:55", "cedar")
    assert "cedar fails: more pieces that will be missing: about" in failed.text
    assert not [d for d in drops if d.fryer == "cedar" and d.at >= "09:55"]
    lifted = [d for d in told if d.what == "lift"]
    assert len(lifted) >= len([d for d in drops if d.at < "10:00"]) - 1
    assert {d.at for d in told if d.reason == "close"} == {"10:35"}
    view = views.close_view(practice, short.closes_s)
    assert view.drops_count == len(drops)
    assert view.thrown_n == pytest.approx(sum(d.pieces_count for d in told if d.what == "discard"), abs=1.0)
    with pytest.raises(InputError, match="practice"):
        play_day(board)


def test_labels_and_the_hand_over_say_what_stands_there(board):
    """A label has its lift, its end and where it came from; the hand-over what is in the oil and overdue."""
    with pytest.raises(InputError, match="lift"):
        day_paper.labels_pdf(board, NOON, "en")
    tell(board, "drop", NOON)
    tell(board, "lift", NOON + TIME)
    tell(board, "discard", NOON + 800, product="bone_in", pieces_count=3, reason="burnt")
    tell(board, "drop", NOON + 900)
    ends = board.bench.day.items[0].hold_slots_count * 300.0 + NOON + TIME
    data = day_paper.labels_pdf(board, NOON + 1000, "en")
    label, frame_ends = words(data), 792 - (10 + 52) * 72 / 25.4
    assert not [y for y, _ in sizes(data)[0] if 40 < y < frame_ends + 4], "all of a label stands in its frame"
    for said in (
        "12:12",
        f"{int(ends // 3600)}:{int(ends % 3600 // 60):02d}",
        "16 pieces",
        "Alder",
        "dropped 12:00",
    ):
        assert said in label
    text = words(day_paper.handover_pdf(board, NOON + 900 + TIME + 300, "en", due=["The lid seal of Birch"]))
    for said in (
        "Shift hand-over",
        "5 min overdue",
        "The lid seal of Birch",
        "burnt",
        "Bone-in chicken, 8-piece",
        "zero on the gauge",
        "2/14",
    ):
        assert said in text
    assert re.search(r"· lift 12:2\d · 5 min overdue", text), "the time beside a load is said to be its lift"
    assert "first to throw away last drop" in text
    till_tells(board)
    past = words(day_paper.handover_pdf(board, ends + 60, "en"))
    assert re.search(r"Bone-in chicken, 8-piece \d+ now \d\d:\d\d", past), "a tray past its life goes first"
    soon = words(day_paper.handover_pdf(board, ends - 60, "en"))
    assert re.search(r"Bone-in chicken, 8-piece \d+ \d\d:\d\d \d\d:\d\d", soon)
    assert "Practice day" not in text
    practice = words(day_paper.handover_pdf(replace(board, practice=3), NOON, "en"))
    assert "Never evidence" in practice
    assert "Nothing." in practice
