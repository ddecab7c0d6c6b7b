"""What the board believes: a lift too early or too late is asked about, amounts stand as typed, and one drop
pressed on two tablets is one.
"""

from __future__ import annotations

import datetime as dt
import itertools
from dataclasses import replace

import pytest

from frywright.ledger.facts.day import BoardTap, CloseStepSigned
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.rooms.care import machines
from frywright.rooms.clock import now
from frywright.rooms.day import day, twice
from frywright.rooms.day.board import Board, Tap
from frywright.rooms.day.board_view import NOTE_S, board_view
from frywright.rooms.day.compare import compare_out
from frywright.rooms.day.lifting import Answer, LiftAskedError
from frywright.rooms.day.paper import handover_pdf
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import taps_since
from frywright.voice.tongue import translator
from tests.demo import FRIDAY, sold_store
from tests.paper import words

pytestmark = [pytest.mark.slow, pytest.mark.usefixtures("any_hour")]
NOON = 12 * 3600.0


@pytest.fixture(scope="module")
def bench_and_kitchen(tmp_path_factory):
    store = sold_store(tmp_path_factory.mktemp("lift") / "d.db")
    kitchen = remembered_kitchen(store)
    return day.bench_for(store, kitchen, FRIDAY), kitchen


@pytest.fixture
def board(bench_and_kitchen, tmp_path):
    bench, kitchen = bench_and_kitchen
    return Board(store=Store.file(tmp_path / "b.db", now), kitchen=kitchen, bench=bench)


def drop(board, pieces=16, at=NOON, key="drop", **other):
    return board.tell(
        Tap(key=key, what="drop", at_s=at, fryer="alder", product="bone_in", pieces_count=pieces, **other)
    )


def lift(board, after_s, key="lift", reason="", at=NOON):
    return board.tell(Tap(key=key, what="lift", at_s=at + after_s, fryer="alder", reason=reason))


def shelf(board, after_s):
    """Pieces of bone-in that may be sold, and trays, some time after the drop."""
    view = board_view(board, NOON + after_s)
    row = next(s for s in view.shelf if s.product == "bone_in")
    return row.count, row.trays


def program_time(board):
    return next(
        x.lift_s
        for loads in board.bench.loads
        for x in loads
        if (x.fryer, x.product, x.pieces_count) == ("alder", "bone_in", 16)
    )


def test_the_countdown_is_the_cards_time(board):
    """The board counts to the lift of the card: 12:00, not the half minute of draining after it."""
    drop(board)
    row = board_view(board, NOON + 60).fryers[0]
    assert row.lift_s - NOON == program_time(board) == pytest.approx(720.0, abs=1.0)


@pytest.mark.parametrize("share", [0.1, 0.5, 0.89])
def test_an_early_lift_is_no_good_food(board, share):
    """Nothing stands on the shelf and the load stays in the oil until somebody says what happened."""
    drop(board)
    early = share * program_time(board)
    with pytest.raises(LiftAskedError) as asked:
        lift(board, early)
    assert "may be raw" in asked.value.question(str)
    assert [c.answer for c in asked.value.choices(str)] == [Answer.BACK, Answer.THROWN, Answer.PROBED]
    assert shelf(board, early + 5)[0] == 0
    assert board_view(board, NOON + early + 5).fryers[0].state == "cooking"
    lift(board, early, reason=Answer.THROWN)
    assert shelf(board, early + 5)[0] == 0
    assert [e.fact.what for e in board.taps()] == ["drop", "lift", "discard"]
    assert board.taps()[-1].fact.pieces_count == 16


def test_probed_counts_only_with_a_reading_since_the_drop(board):
    """Of this fryer and product, at or above its limit, after the drop; a bad newest reading beats a good
    older one.
    """
    drop(board)
    early = 0.8 * program_time(board)

    def read(core_c, after_s, fryer="alder"):
        fact = Reading(
            name="bone_in",
            thermometer="T1",
            core_c=core_c,
            limit_c=73.9,
            load="",
            units_count=16.0,
            fryer=fryer,
            product="bone_in",
        )
        write(board.store, fact, moment_of(board.bench.trade, FRIDAY, NOON + after_s))

    read(80.0, -60.0)
    read(80.0, early - 5, fryer="birch")
    with pytest.raises(InputError, match="entered first"):
        lift(board, early, reason=Answer.PROBED)
    read(80.0, early - 4)
    read(60.0, early - 3)
    with pytest.raises(InputError, match="entered first"):
        lift(board, early, reason=Answer.PROBED)
    read(79.0, early - 2)
    lift(board, early, reason=Answer.PROBED)
    assert shelf(board, early + 5)[0] == 16


def test_a_late_lift_starts_its_hold_when_it_was_lifted(board):
    """Ninety minutes late: asked; said to be in time, its hold starts at the card's time."""
    drop(board)
    late = program_time(board) + 90 * 60
    with pytest.raises(LiftAskedError) as asked:
        lift(board, late)
    assert "When was it lifted" in asked.value.question(str)
    assert "PROBED" not in [c.answer.name for c in asked.value.choices(str)]
    lift(board, late, reason=Answer.IN_TIME)
    count, trays = shelf(board, program_time(board) + 60)
    assert count == 16
    assert trays[0].lift == "12:12"


def test_a_late_load_may_be_kept_or_thrown(board):
    """Kept just now: its hold starts now. An answer that does not fit is asked again."""
    drop(board)
    late = program_time(board) + 600
    with pytest.raises(LiftAskedError):
        lift(board, late, reason=Answer.PROBED)
    with pytest.raises(LiftAskedError):
        lift(board, 60.0, reason=Answer.KEPT)
    lift(board, late, reason=Answer.KEPT)
    assert shelf(board, late + 5)[1][0].lift == "12:22"


def test_in_time_asks_nothing(board):
    """Two minutes late or a tenth early is how hands are."""
    for n, after in enumerate((0.91 * program_time(board), program_time(board) + 119)):
        at = NOON + 3600 * n
        drop(board, key=f"d{n}", at=at)
        lift(board, after, key=f"l{n}", at=at)
    assert len(board.taps()) == 4


@pytest.mark.parametrize("pieces", [1, 8, 13])
def test_amounts_stand_as_typed(board, pieces):
    """Pieces between the usual sizes stay what was typed, in the oil and on the shelf."""
    drop(board, pieces=pieces)
    row = board_view(board, NOON + 60).fryers[0]
    assert row.pieces == pieces
    assert str(pieces) in row.text
    lift(board, program_time(board))
    assert shelf(board, program_time(board) + 5)[0] == pieces


@pytest.mark.parametrize("pieces", [0, 25, 500])
def test_an_impossible_amount_is_refused(board, pieces):
    """None, or more than the fryer's largest load: nothing is kept."""
    with pytest.raises(InputError, match="the largest load of this fryer"):
        drop(board, pieces=pieces)
    assert board.taps() == []


def test_two_tablets_press_one_done(board):
    """The second tap within a minute is the first one's entry; another product or a later load is its own."""
    first, new = drop(board)
    again, renewed = drop(board, key="other tablet", at=NOON + 20)
    assert (new, renewed) == (True, False)
    assert again.number == first.number
    assert board_view(board, NOON + 60).notes == ()
    lift(board, program_time(board))
    _, third = drop(board, key="next", at=NOON + 1000)
    assert third


def test_two_tablets_lift_filter_and_throw_once(board):
    """The second tap of the same act is the first one's entry, and nothing scolds; answered questions too."""
    drop(board)
    late = program_time(board) + 600
    first, _ = lift(board, late, reason=Answer.IN_TIME)
    again, new = lift(board, late + 30, key="other", reason=Answer.IN_TIME)
    assert (again.number, new) == (first.number, False)
    quick, _ = lift(board, program_time(board) + 20, key="third")
    assert quick.number == first.number
    for what, more in (
        ("filter", {"fryer": "cedar"}),
        ("down", {"fryer": "birch"}),
        ("out", {"product": "wedges"}),
        ("discard", {"product": "bone_in", "pieces_count": 4, "reason": "expired"}),
    ):
        one, _ = board.tell(Tap(key=f"{what} a", what=what, at_s=NOON + 2000, **more))
        two, new = board.tell(Tap(key=f"{what} b", what=what, at_s=NOON + 2020, **more))
        assert (two.number, new) == (one.number, False)
        _, later = board.tell(Tap(key=f"{what} c", what=what, at_s=NOON + 2100, **more))
        assert later
    notes = board_view(board, NOON + 2030).notes
    assert not [n for n in notes if "without a drop" in n or "before the one" in n]


def test_thrown_away_on_one_tablet_stands_on_no_shelf(board):
    """Asked on two tablets, one says in time, the other thrown away: it is thrown away, once, in either
    order, also where the tap is sent again.
    """
    late = program_time(board) + 600
    for n, answers in enumerate([(Answer.IN_TIME, Answer.THROWN), (Answer.THROWN, Answer.IN_TIME)]):
        at = NOON + 3600 * n
        drop(board, key=f"d{n}", at=at)
        for told, key in (*zip(answers, "ab", strict=True), (answers[1], "b")):
            lift(board, late, key=f"{key}{n}", reason=told, at=at)
        assert shelf(board, 3600 * n + late + 5)[0] == 0
        thrown = board.state(at + late + 5).thrown
        assert [(t.units_n > 0, t.reason) for t in thrown] == [(True, "burnt")] * (n + 1)
    assert not [x for x in board_view(board, NOON + 3600 + late + 6).notes if "no lift entered" in x]


def test_a_spoilt_load_leaves_the_tray_before_it_its_own_life(board):
    """Some on the shelf, the next load lifted raw and thrown away: what was there keeps its own life."""
    drop(board)
    lift(board, program_time(board))
    at = NOON + 10 + program_time(board)
    drop(board, key="next", at=at)
    left, _ = shelf(board, at + 300 - NOON)
    lift(board, 300, key="spoilt", reason=Answer.THROWN, at=at)
    count, trays = shelf(board, at + 300 - NOON)
    assert (count, [t.lift for t in trays if t.left]) == (left, ["12:12"])
    assert 0 < left < 16
    assert [(x.units_n, x.reason) for x in board.state(at + 301).thrown] == [(16, "undercooked")]


def test_what_does_not_fit_is_said_a_while_and_on_the_hand_over(board):
    """A lift without a drop: on the board for a quarter of an hour, on paper all day."""
    lift(board, 0.0)
    said = "A lift from Alder, three-head pressure vat without a drop before it."
    assert board_view(board, NOON + NOTE_S - 1).notes == (said,)
    assert board_view(board, NOON + NOTE_S + 1).notes == ()
    assert said in words(handover_pdf(board, NOON + NOTE_S + 1, "en"))


def test_nothing_is_advised_where_everyone_leaves_the_kitchen(board):
    """It smells of gas at one fryer: no load goes into any, and the board says what to do, before all else; a
    leak stops its own fryer only. A practice day goes on.
    """
    machines.stop_use(board.store, board.kitchen, "alder", "oil_leak", "Kim")
    leak = board_view(board, NOON)
    assert leak.alarm == "" and {a.kind for a in leak.advice} >= {"drop"}
    machines.stop_use(board.store, board.kitchen, "birch", "gas_smell", "Kim")
    gas = board_view(board, NOON)
    assert gas.advice == () and all(f.state != "idle" or f.act is None for f in gas.fryers)
    assert gas.alarm.startswith(
        "Birch, five-head pressure vat: It smells of gas. No switch, no flame. Everyone"
    )
    spoken = board_view(board, NOON, translator("es")).alarm
    assert "gas" in spoken and "Everyone" not in spoken
    assert board_view(replace(board, practice=3), NOON).advice != ()


def undo(board, key, at_s, own="undo"):
    return board.tell(Tap(key=own, what="undo", at_s=at_s, undoes=key))


def test_a_tap_is_taken_back_and_stays_on_record(board):
    """A drop by mistake counts no more; the entry, and that it was taken back, are both kept."""
    drop(board)
    gone, new = undo(board, "drop", NOON + 8)
    assert new
    assert board_view(board, NOON + 9).fryers[0].state != "cooking"
    told = list(board.store.facts(BoardTap))
    assert [(e.fact.what, e.fact.reason) for e in told] == [("drop", ""), ("undo", "drop")]
    assert told[1].replaces == told[0].number == gone.replaces
    assert taps_since(board.store, FRIDAY) == []
    twice, new = undo(board, "drop", NOON + 9, own="again")
    assert (twice.number, new) == (gone.number, False)


def test_a_lift_thrown_away_is_taken_back_whole(board):
    """The lift and what it threw away go together; the load is in the oil again."""
    drop(board)
    lift(board, 300.0, reason=Answer.THROWN)
    undo(board, "lift", NOON + 305)
    view = board_view(board, NOON + 306)
    assert view.fryers[0].state == "cooking"
    assert board.state(NOON + 306).thrown == []
    assert [e.fact.what for e in board.taps()] == ["drop"]


def test_taking_back_has_its_bounds(board, monkeypatch):
    """Nothing unknown, nothing long ago, nothing that something else in the fryer already follows."""
    with pytest.raises(InputError, match="has kept"):
        undo(board, "nothing", NOON)
    drop(board)
    lift(board, program_time(board))
    drop(board, key="next", at=NOON + program_time(board) + 5)
    with pytest.raises(InputError, match="next act in this fryer"):
        undo(board, "lift", NOON + program_time(board) + 8)
    later = now() + dt.timedelta(seconds=60)
    monkeypatch.setattr(twice, "now", lambda: later)
    undo(board, "next", NOON + program_time(board) + 14)
    with pytest.raises(InputError, match="within ten seconds"):
        undo(board, "lift", NOON + program_time(board) + 40, own="late")
    assert [e.fact.what for e in board.taps()] == ["drop", "lift"]


def test_a_fryer_out_of_use_keeps_the_clock_of_its_load(board):
    """A load under pressure does not vanish from the board because its fryer failed."""
    drop(board)
    board.tell(Tap(key="down", what="down", at_s=NOON + 60, fryer="alder"))
    row = board_view(board, NOON + 70).fryers[0]
    assert (row.state, row.down, row.pieces) == ("cooking", True, 16)
    assert row.lift_s == NOON + program_time(board)
    lift(board, program_time(board))
    row = board_view(board, NOON + program_time(board) + 5).fryers[0]
    assert (row.state, row.text) == ("down", "Out of use")


def test_no_raw_pieces_is_compared_and_not_advised(board):
    """What the day loses without a product is told; an unknown one is refused; it comes back."""
    board.tell(Tap(key="out", what="out", at_s=NOON, product="wedges"))
    view = board_view(board, NOON + 5)
    assert "wedges" not in [a.product for a in view.advice]
    found = compare_out(board, NOON + 5, "wedges")
    assert found.product == "Potato wedges"
    assert found.short_n > 0
    with pytest.raises(InputError, match="product"):
        compare_out(board, NOON + 5, "ghost")
    board.tell(Tap(key="in", what="in", at_s=NOON + 100, product="wedges"))
    assert not next(s for s in board_view(board, NOON + 101).shelf if s.product == "wedges").out


def test_people_on_the_line(board):
    """The last number told holds from then on; nonsense is refused; acts stand apart when one works alone."""
    assert board_view(board, NOON).people == board.kitchen.trade.hands_count
    board.tell(Tap(key="one", what="people", at_s=NOON + 10, pieces_count=1))
    view = board_view(board, NOON + 20)
    assert view.people == 1
    starts = sorted(a.start_s for a in view.advice if a.kind != "wait")
    assert all(b - a >= 60 for a, b in itertools.pairwise(starts))
    for wrong in (0, 10):
        with pytest.raises(InputError, match="people"):
            board.tell(Tap(key=f"p{wrong}", what="people", at_s=NOON + 30, pieces_count=wrong))


def test_the_time_of_every_load_is_its_cards(board):
    """For every load of every product the countdown ends where the card says: at its lift, or where the
    pressure is let go; nothing is rounded.
    """
    for loads in board.bench.loads:
        for fact in loads:
            spans = board.kitchen.program(fact.program).durations_s()
            if fact.vent_start_s is None:
                assert fact.lift_s == pytest.approx(sum(spans), abs=1e-6), fact.program
            else:
                ends = list(itertools.accumulate(spans))
                assert min(abs(fact.vent_start_s - end) for end in ends) < 1e-6, fact.program
                assert fact.lift_s >= sum(spans) - 1e-6


def test_heat_signed_off_at_the_close_is_off_on_the_board(board):
    """Tonight's: nothing is advised for the fryer and the board says why; yesterday's is past."""
    for date, fryer in ((FRIDAY, "cedar"), (FRIDAY - dt.timedelta(days=1), "dogwood")):
        signed = CloseStepSigned(
            date=date, fryer=fryer, step="heat_off", who="Ana", second="", value="", plan="keep"
        )
        write(board.store, signed, moment_of(board.bench.trade, date, NOON))
    view = board_view(board, NOON + 60)
    rows = {f.key: f for f in view.fryers}
    assert (rows["cedar"].state, rows["cedar"].text) == ("down", "Heat off for the night")
    assert rows["dogwood"].state == "idle"
    assert "cedar" not in [a.fryer for a in view.advice]
