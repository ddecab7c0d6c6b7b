"""A day on the floor, its rule not tuned: what the board keeps, asks and takes back, what is promised, thrown
away and printed, and what another plan would be.
"""

from __future__ import annotations

import datetime as dt
import io
from dataclasses import replace

import numpy as np
import pytest

from frywright.ledger.facts.day import UNDO
from frywright.ledger.facts.probing import Reading
from frywright.ledger.store import Store
from frywright.model.business_day import moment_of, usual_trade
from frywright.model.errors import InputError
from frywright.plan.binds import Binds, Lever
from frywright.plan.model import Drop, Plan
from frywright.plan.replay import draw_days, replay
from frywright.rooms.clock import now, played
from frywright.rooms.day import day, limits, plan_view, sales, twice, views, what_if
from frywright.rooms.day import paper as day_paper
from frywright.rooms.day.board import Board, Followed, Tap, tap_of
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.compare import compare_down, compare_out
from frywright.rooms.day.lifting import Answer, LiftAskedError
from frywright.rooms.day.orders import order_rows, promise_order
from frywright.rooms.day.practice import demo_sales
from frywright.rooms.day.pulling import pull_view
from frywright.rooms.day.round import play_day
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text
from tests.paper import words

FRIDAY = dt.date(2026, 11, 27)
NOON, NINE = 12 * 3600.0, 21 * 3600.0
TIME = 720.0
"""Drop to lift of the demo's bone-in program in Alder: 10:00 and 2:00, as its card adds them up."""


@pytest.fixture(scope="module")
def shop(tmp_path_factory):
    """The demo with eight weeks of sales, and its Friday."""
    store = Store.file(tmp_path_factory.mktemp("floor") / "d.db", now)
    remember_kitchen(store, demo_text(), "demo.toml")
    kitchen = remembered_kitchen(store)
    sales.keep_sales(store, kitchen, io.BytesIO(demo_sales(kitchen, FRIDAY - dt.timedelta(days=1))), "s.csv")
    yield store, kitchen, day.bench_for(store, kitchen, FRIDAY, tune=False)
    store.close()


@pytest.fixture(scope="module")
def found(shop):
    """The plan of the Friday."""
    return day.morning(shop[2])


@pytest.fixture
def board(shop, tmp_path):
    """A board whose record is empty, after its day."""
    store = Store.file(tmp_path / "b.db", now)
    with played(moment_of(usual_trade(shop[1]), FRIDAY, 27 * 3600.0)):
        yield Board(store=store, kitchen=shop[1], bench=shop[2])
    store.close()


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_a_day_followed_tap_by_tap_is_the_day_read_anew(board, seed):
    """80 drawn taps on a board that plays on from the last look, some told late, some taken back, looked at
    now and before: at each the state is the one of a board that has seen nothing.
    """
    followed, rng = replace(board, followed=Followed()), np.random.default_rng(seed)
    at_s, last, late_count = NOON, "", 0
    for n in range(80):
        at_s += float(rng.integers(1, 40))
        key, drawn = f"k{n}", rng.random()
        if drawn < 0.1 and last:
            tap = Tap(key=key, what=UNDO, at_s=at_s, undoes=last)
        elif drawn < 0.2:
            what, fryer = (
                str(rng.choice(["drop", "filter", "down", "up"])),
                str(rng.choice(["alder", "birch"])),
            )
            sizes = [
                (bench_i, x) for bench_i, xs in enumerate(board.bench.loads) for x in xs if x.fryer == fryer
            ]
            i, load = sizes[rng.integers(len(sizes))]
            told = {"product": board.bench.products[i], "pieces_count": load.pieces_count}
            tap = Tap(key=key, what=what, at_s=at_s, fryer=fryer, **(told if what == "drop" else {}))
        else:
            late_count += (late := rng.random() < 0.2)
            what = str(rng.choice(["sold", "sold", "sold", "discard", "count"]))
            product = str(rng.choice(board.bench.products))
            moment = at_s - (float(rng.integers(60, 900)) if late else 0.0)
            tap = Tap(key=key, what=what, at_s=moment, product=product, pieces_count=int(rng.integers(1, 9)))
        try:
            followed.tell(tap)
            last = key
        except InputError:
            pass  # taken back too late, or twice
        for moment_s in (at_s + 1.0, at_s - 300.0) if n % 5 == 0 else (at_s + 1.0,):
            one, other = followed.state(moment_s), board.state(moment_s)
            assert np.array_equal(one.sold_n, other.sold_n, equal_nan=True) and (one.bare == other.bare).all()
            empty = np.zeros((0, 0))
            assert replace(one, sold_n=empty, bare=empty) == replace(other, sold_n=empty, bare=empty)
            assert followed.taps() == board.taps() and followed.entries() == board.entries()
    assert late_count > 3 and any(e.fact.what == UNDO for e in board.entries())


def test_a_tap_that_was_not_kept_leaves_nothing_behind(board):
    """The power goes while a tap is written: what was read of the day within that act is not shown after."""
    followed = replace(board, followed=Followed())
    tell(followed, "sold", NOON, product="tenders", pieces_count=3)
    with pytest.raises(RuntimeError), board.store.writing():
        tell(followed, "sold", NOON + 5, product="tenders", pieces_count=4)
        assert np.nansum(followed.state(NOON + 10).sold_n) == 7.0
        raise RuntimeError
    tell(board, "sold", NOON + 6, product="tenders", pieces_count=2)  # as another process would
    assert np.nansum(followed.state(NOON + 10).sold_n) == 5.0


def tell(board, what, at_s, key="", **other):
    """A tap; a drop is two heads into Alder."""
    if what in ("drop", "lift"):
        other = {"fryer": "alder", **other}
    if what == "drop":
        other = {"product": "bone_in", "pieces_count": 16, **other}
    return board.tell(Tap(key=key or f"{what} {at_s}", what=what, at_s=at_s, **other))


def shelf(board, at_s, product="bone_in"):
    """Pieces that may be sold, and pieces in the oil."""
    row = next(s for s in board_view(board, at_s).shelf if s.product == product)
    return row.count, row.coming


def till_tells(board):
    """From here on pieces leave the shelf when the till says so, not by the forecast."""
    tell(board, "sold", NOON - 7200, product="wedges", pieces_count=1)


# ---------------------------------------------------------------- taps


def test_what_a_form_tells_is_read_or_refused_by_its_field():
    """Numbers as numbers, words cut to length; no time is none of the day; what is no number is refused."""
    told = {"key": "k", "what": "drop", "at_s": "43200.5", "fryer": "alder", "product": "bone_in"}
    read = tap_of({**told, "pieces": "16", "who": "Kim", "reason": "x" * 200})
    assert read == Tap(**{**told, "at_s": 43200.5}, pieces_count=16, who="Kim", reason="x" * 120)
    empty = tap_of({"at_s": None, "pieces": ""})
    assert (empty.at_s, empty.pieces_count, empty.undoes) == (-1.0, 0, "")
    for field in ("at_s", "pieces"):
        for text in ("soon", "nan", "inf"):
            with pytest.raises(InputError) as refused:
                tap_of({field: text})
            assert refused.value.field == field


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


def test_a_second_tablet_tells_nothing_new(board):
    """The same drop within a minute is one load; other pieces, another minute or fryer are another."""
    first, _ = tell(board, "drop", NOON)
    for key, more, new in (
        ("same", {}, False),
        ("pieces", {"pieces_count": 24}, True),
        ("fryer", {"fryer": "cedar"}, True),
    ):
        kept, told = tell(board, "drop", NOON + 60, key=key, **more)
        assert (key, told, kept.number == first.number) == (key, new, not new)
    filters = [
        tell(board, "filter", at, key=str(at), fryer="birch")[1] for at in (NOON, NOON + 60, NOON + 61)
    ]
    assert filters == [True, False, True]
    gone = [
        tell(board, what, NOON, key=f"{n}", product="wedges")[1]
        for n, what in enumerate(("out", "out", "in", "in", "out"))
    ]
    assert gone == [True, False, True, False, True]
    thrown = [
        tell(board, "discard", NOON, key=key, product="wedges", pieces_count=n, reason=why)[1]
        for key, n, why in (
            ("a", 5, "expired"),
            ("b", 5, "expired"),
            ("c", 6, "expired"),
            ("d", 5, "burnt"),
            ("e", 5, "burnt"),
        )
    ]
    assert thrown == [True, False, True, True, True]


def test_a_tap_of_a_time_to_come_or_with_the_key_of_another_is_refused(board):
    """A clock may run ahead a little; a key used again for something else loses no load unseen."""
    with played(moment_of(usual_trade(board.kitchen), FRIDAY, 12 * 3600.0)):
        tell(board, "drop", 12 * 3600.0 + 540, key="k")
        with pytest.raises(InputError, match="a time that has come"):
            tell(board, "drop", 12 * 3600.0 + 660)
    assert tell(board, "drop", 12 * 3600.0 + 540, key="k")[1] is False
    for other in ({"what": "filter"}, {"fryer": "cedar"}):
        told = {"what": "drop", "at_s": 13 * 3600.0, "key": "k", "fryer": "alder", **other}
        with pytest.raises(InputError, match="no other tap of the day has"):
            tell(board, **told)
    assert len(board.taps()) == 1


def test_a_mistake_is_taken_back_at_once_and_stays_on_record(board):
    """It counts no more; the entry and its taking back are both kept; told twice it is one."""
    tell(board, "drop", NOON, key="oops")
    back, new = tell(board, UNDO, NOON + 5, key="u", undoes="oops")
    assert (new, back.fact.fryer, back.fact.pieces_count, back.fact.reason) == (True, "alder", 16, "drop")
    assert shelf(board, NOON + 10) == (0, 0)
    assert [e.fact.key for e in board.entries()] == ["oops", "u"]
    again, new = tell(board, UNDO, NOON + 6, key="v", undoes="oops")
    assert (again.number, new) == (back.number, False)


def test_taking_back_a_lift_takes_back_what_was_thrown_away_with_it(board):
    """The load is in the oil again and no piece is in the waste."""
    tell(board, "drop", NOON)
    tell(board, "lift", NOON + 100, key="lift", reason=Answer.THROWN)
    tell(board, UNDO, NOON + 105, key="u", undoes="lift")
    assert shelf(board, NOON + 110) == (0, 16)
    assert views.close_view(board, NOON + 110).thrown_n == 0


@pytest.mark.parametrize(
    ("undoes", "after_s", "says"),
    [("nothing", 5.0, "this board has kept"), ("oops", 15.1, "ten seconds"), ("oops", 5.0, "next act")],
)
def test_what_cannot_be_taken_back_is_refused(board, undoes, after_s, says):
    """No such tap, too late, or the fryer went on."""
    tell(board, "drop", NOON, key="oops")
    if says == "next act":
        tell(board, "down", NOON + 2, fryer="alder")
    with played(now() + dt.timedelta(seconds=after_s)), pytest.raises(InputError, match=says):
        tell(board, UNDO, NOON + after_s, key="u", undoes=undoes)
    assert shelf(board, NOON + 16)[1] == 16


def test_a_board_knows_whether_its_day_has_a_load_for_every_drop(board):
    """Another bench without Alder's loads cannot play a drop into Alder."""
    tell(board, "drop", NOON)
    assert board.knows_drops()
    other = tuple(tuple(x for x in loads if x.fryer != "alder") for loads in board.bench.loads)
    assert not replace(board, bench=replace(board.bench, loads=other)).knows_drops()


# ---------------------------------------------------------------- promises, waste, comparison


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


def test_a_practice_morning_is_played_by_the_advice(board):
    """Every drop follows an advice and is lifted by its card; the fryer that fails takes no more."""
    short = replace(board.bench.trade, closes="10:35")
    practice = replace(board, practice=7, bench=replace(board.bench, trade=short))
    told = play_day(practice, "cedar@09:55")
    drops = [d for d in told if d.what == "drop"]
    assert drops and all(d.pieces_count > 0 for d in drops)
    (failed,) = [d for d in told if d.what == "down"]
    assert (failed.at, failed.fryer) == ("09:55", "cedar")
    assert "cedar fails: about" in failed.text
    assert not [d for d in drops if d.fryer == "cedar" and d.at >= "09:55"]
    lifted = [d for d in told if d.what == "lift"]
    assert len(lifted) >= len([d for d in drops if d.at < "10:00"]) - 1
    assert {d.at for d in told if d.reason == "close"} == {"10:35"}
    view = views.close_view(practice, short.closes_s)
    assert view.drops_count == len(drops)
    assert view.thrown_n == pytest.approx(sum(d.pieces_count for d in told if d.what == "discard"), abs=1.0)
    with pytest.raises(InputError, match="practice"):
        play_day(board)


# ---------------------------------------------------------------- plan


def test_the_forecast_is_shown_by_half_hour(shop):
    """Halves begin with the clock's half hours, the first with the day; they add up to the day."""
    bench = shop[2]
    view = plan_view.forecast_view(bench)
    assert (view.date, view.weekday, view.halves[:3]) == (
        "2026-11-27",
        "Friday",
        ("09:40", "10:00", "10:30"),
    )
    assert len(view.halves) == 25
    for n, row in enumerate(view.products):
        assert len(row.halves) == 25
        assert sum(row.halves) == pytest.approx(bench.day.mean_n[n].sum(), abs=25 * 0.05)
        assert row.low_n < row.total_n < row.high_n
        assert (row.key, row.mix_n) == (bench.products[n], bench.mix_n[n])
        assert row.total_n * row.mix_n == pytest.approx(sum(row.halves), rel=0.01)


def test_the_rule_has_a_part_of_the_day_in_each_column(shop):
    """Four parts without a gap from the first drop to the close."""
    view = limits.rule_view(shop[2])
    assert view.parts == ("09:40–12:45", "12:45–15:50", "15:50–18:55", "18:55–22:00")
    assert [row.name for row in view.rows] == [item.name for item in shop[2].day.items]
    assert all(len(row.cells) == 4 and all(0 < a <= b for a, b in row.cells) for row in view.rows)


def test_the_plan_is_shown_in_order_with_its_evidence(shop, found):
    """Loads as the fryers' programs take, lifted by their cards; nothing unprobed is called proven."""
    _, kitchen, bench = shop
    view = plan_view.plan_view(bench, found, kitchen)
    assert (view.broken, view.currency, len(view.hours)) == ((), "$", bench.day.slots_count)
    assert [d.drop for d in view.drops] == sorted(d.drop for d in view.drops)
    assert len(view.drops) == len(found.plan.drops)
    first = view.drops[0]
    assert (first.drop, first.lift, first.fryer, first.amount) == (
        "09:40",
        "09:52",
        "alder",
        "2 heads (16 pieces)",
    )
    assert (first.drop_h, first.lift_h) == (pytest.approx(9 + 40 / 60), pytest.approx(9 + 52.75 / 60))
    assert {d.evidence for d in view.drops} == {"unknown"}
    for turn in view.filters:
        assert turn.to_h - turn.from_h == pytest.approx(600 / 3600)
        assert not any(a < turn.to_h and turn.from_h < b for a, b in ((11.5, 13.25), (17.0, 20.0)))
        assert turn.at == f"{int(turn.from_h + 1e-6):02d}:{round(turn.from_h % 1 * 60):02d}"
    assert [(f.from_, f.to, f.used) for f in view.fryers] == [("09:40", "22:00", True)] * 4
    assert [x.name for x in view.last_drops] == [item.name for item in bench.day.items]
    assert all("21:00" < x.at < "22:00" for x in view.last_drops)
    assert view.good is (view.fill_frac >= 0.95 and view.waste_frac <= 0.05)
    assert len(view.notes) == len(set(view.notes))
    mixed = plan_view.in_order(view)
    assert len(mixed) == len(view.drops) + len(view.filters)
    times = [getattr(x, "drop_h", getattr(x, "from_h", None)) for x in mixed]
    assert times == sorted(times)


def test_the_picture_has_a_row_for_each_product_of_a_fryer(shop, found):
    """A filter turn goes over all rows of its fryer; the shelf has a band for each product and slot."""
    _, kitchen, bench = shop
    view = plan_view.plan_view(bench, found, kitchen)
    rows = plan_view.gantt(view)["data"]["values"]
    pairs = {(d.fryer_name, d.product_name) for d in view.drops}
    loads = [r for r in rows if r["name"] != "filter turn"]
    assert len(loads) == len(view.drops)
    assert {r["row"] for r in loads} == {f"{f} · {p}" for f, p in pairs}
    assert [r["text"] for r in loads] == [str(d.pieces) for d in view.drops]
    assert all(r["to"] > r["from"] for r in rows)
    per_turn = sum(len([1 for f, _ in pairs if f == turn.fryer_name]) for turn in view.filters)
    assert len(rows) - len(loads) == per_turn
    bands = plan_view.shelf_curves(view)["data"]["values"]
    assert len(bands) == 3 * len(view.hours)
    assert all(b["low"] <= b["mid"] <= b["high"] for b in bands)


def test_a_product_no_load_pays_for_and_a_cold_fryer_are_said(shop):
    """Each in a sentence; a product nobody asks for is not."""
    _, kitchen, bench = shop
    mean = np.zeros_like(bench.day.mean_n)
    mean[1] = 1.0 / bench.day.slots_count
    up = ((0, 148), (148, 148), (0, 148), (0, 148))
    quiet = replace(bench, day=replace(bench.day, mean_n=mean, up=up))
    nothing = replace(day.morning(quiet), plan=Plan())
    told = limits.unplanned(quiet, kitchen, nothing)
    assert len(told) == 2
    assert told[0].startswith("No load of Tenders pays today: the smallest is 7 pieces, and at most about 0")
    assert told[1] == "Birch, five-head pressure vat stays off: the others do today's loads."
    planned = replace(nothing, plan=Plan(drops=(Drop(fryer=2, item=1, load=0, slot=3),)))
    assert len(limits.unplanned(quiet, kitchen, planned)) == 1


def test_a_fryer_is_at_heat_only_while_the_drawn_days_use_it(shop, monkeypatch):
    """Hours begin with its first drop; one that no load may go into stays off all day."""
    _, kitchen, bench = shop
    monkeypatch.setattr(day, "TUNE_DAYS", 4)
    days, idle_money = draw_days(bench.day, 4, day.TUNE_SEED), day._idle_money(bench, kitchen)
    hours = day._windows(bench.day, idle_money, bench.par)
    end = bench.day.slots_count
    assert len(hours) == 4
    assert all((a, b) == (end, end) or 0 <= a < b <= end for a, b in hours)
    served = replay(replace(bench.day, up=hours), days, bench.par).plans
    used = {d.fryer for plan in served for d in plan.drops}
    assert used == {f for f, (a, _) in enumerate(hours) if a < end}
    items = tuple(
        replace(item, loads=tuple(x for x in item.loads if x.fryers != (1,))) for item in bench.day.items
    )
    idle = day._windows(replace(bench.day, items=items), idle_money, bench.par)
    assert idle[1] == (end, end)


def test_heat_that_costs_more_than_it_serves_is_left_off(shop, monkeypatch):
    """With heat at a hundred a kilowatt-hour some fryer is not worth it."""
    _, kitchen, bench = shop
    monkeypatch.setattr(day, "TUNE_DAYS", 4)
    dear = replace(bench, trade=replace(bench.trade, kwh_money=100.0))
    end = bench.day.slots_count
    assert (end, end) in day._windows(bench.day, day._idle_money(dear, kitchen), bench.par)


def test_what_binds_a_day_is_said_with_its_best_change_first(shop):
    """A day that is good names no change; one that is not names what binds, in points and money saved."""
    bench = shop[2]
    hands = Lever(
        what="One more person at the fryers",
        fill_frac=0.021,
        waste_frac=-0.013,
        money=-12.5,
        fill_half_width_frac=0.004,
        waste_half_width_frac=0.006,
        half_width_money=3.25,
    )
    bad = limits._said(Binds(fill_frac=0.91, waste_frac=0.08, levers=(hands,)), bench, str)
    assert not bad.good
    assert bad.headline.startswith("Hands bind most. By the rule 91.0 % is served from the shelf and 8.0 %")
    (row,) = bad.rows
    assert (row.fill_points, row.waste_points, row.money) == ("+2.1 ± 0.4", "-1.3 ± 0.6", "$12.50 ± $3.25")
    assert row.says.startswith(
        "Of 100 pieces asked for, 93 are on the shelf instead of 91; of 100 cooked, 7 are"
    )
    none = limits._said(Binds(fill_frac=0.91, waste_frac=0.08, levers=()), bench, str)
    assert none.headline.startswith("No change tried alone would help. ")
    good = limits._said(Binds(fill_frac=0.999, waste_frac=0.001, levers=(hands,)), bench, str)
    assert (good.good, good.headline.startswith("By the rule 99.9 %")) == (True, True)
    assert "as good as a kitchen aims at" in good.headline


# ---------------------------------------------------------------- another plan


def test_a_plan_by_hand_is_read_row_by_row(shop):
    """A drop is a proven load of its fryer; what cannot be read names its row and what may stand there."""
    bench = shop[2]
    rows = [
        {"drop": "11:00", "fryer": "alder", "product": "bone_in", "pieces": 16},
        {"fryer": "birch", "filter": "10:40"},
    ]
    plan = what_if.hand_plan(bench, rows)
    assert plan.drops == (Drop(fryer=0, item=0, load=1, slot=16),)
    assert plan.filters == ((1, 12),)
    for wrong, field, says in (
        ({"fryer": "elm"}, "fryer", "alder, birch, cedar, dogwood"),
        ({"product": "fish"}, "product", "bone_in, tenders, wedges"),
        ({"pieces": 17}, "pieces", "16, 24"),
        ({"drop": "soon"}, "time", "10:30"),
        ({"product": "tenders", "pieces": 7}, "pieces", "none"),
    ):
        with pytest.raises(InputError, match=says) as refused:
            what_if.hand_plan(bench, [*rows, {**rows[0], **wrong}])
        assert refused.value.field == field
        if field != "time":
            assert refused.value.where == "row 3"


def test_a_plan_by_hand_is_priced_beside_the_engines(shop, monkeypatch):
    """No load at all serves nobody and throws nothing away; a filter turn in the rush breaks a rule."""
    monkeypatch.setattr(what_if, "WHAT_IF_DAYS", 2)
    bench = shop[2]
    view = what_if.check_view(bench, what_if.hand_plan(bench, [{"fryer": "alder", "filter": "12:00"}]))
    assert len(view.broken) == 1 and "rush" in view.broken[0]
    assert (view.price.fill_frac, view.price.waste_n, view.price.sold_n) == (0.0, 0.0, 0.0)
    assert view.price.short_money > 0
    assert view.price.total_money == pytest.approx(
        view.price.batches_money + view.price.short_money + view.price.waste_money, abs=0.02
    )
    assert view.price.batches_money == pytest.approx(bench.trade.filter_money)
    assert view.engine.fill_frac > 0.8
    assert view.engine.total_money < view.price.total_money


def test_drawn_days_are_told_with_their_intervals(shop):
    """Shares are of what was asked for and of what was cooked; too few or too many days are refused."""
    bench = shop[2]
    view = what_if.replay_view(bench, 30)
    base = view.base
    assert (view.days_count, base.days_count) == (30, 30)
    assert base.fill_frac == pytest.approx(base.sold_n / (base.sold_n + base.short_n), abs=1e-3)
    assert base.waste_frac == pytest.approx(base.waste_n / (base.sold_n + base.waste_n), abs=1e-3)
    assert base.worst_fill_frac < base.fill_frac
    assert base.worst_waste_frac > base.waste_frac
    assert 0 < base.fill_half_width_frac < 0.1
    assert 0 < base.waste_half_width_frac < 0.1
    assert 0 < base.half_width_money < base.total_money
    for days, engine, field in ((1, 0, "days"), (20_001, 0, "days"), (5, -1, "engine"), (5, 2001, "engine")):
        with pytest.raises(InputError) as refused:
            what_if.replay_view(bench, days, engine)
        assert refused.value.field == field


def test_what_a_change_costs_is_the_difference_on_the_same_days(shop, monkeypatch):
    """Without Cedar and Dogwood no tender is served: the change costs money, by the same guests."""
    monkeypatch.setattr(day, "_tuned_bench", lambda bench, kitchen: bench)
    store, kitchen, bench = shop
    view = what_if.what_if(store, kitchen, bench, what_if.Changed(off=("cedar", "dogwood")), 20)
    assert view.change.money == pytest.approx(view.other.total_money - view.base.total_money, abs=0.02)
    assert view.change.money > 0
    assert view.other.fill_frac < view.base.fill_frac
    assert view.change.half_width_money > 0
    same = what_if.what_if(store, kitchen, bench, what_if.Changed(), 20)
    assert (same.change.money, same.change.half_width_money) == (0.0, 0.0)
    held = what_if.what_if(store, kitchen, bench, what_if.Changed(hold_min={"bone_in": 10.0}), 20)
    assert held.other.waste_frac > held.base.waste_frac
    turns = what_if.what_if(store, kitchen, bench, what_if.Changed(filter_every_count=2), 20)
    assert turns.other.batches_money > turns.base.batches_money
    with pytest.raises(InputError):
        what_if.what_if(store, kitchen, bench, what_if.Changed(hold_min={"fish": 10.0}), 20)


def test_the_pull_sheet_counts_only_what_is_in_date(shop):
    """Whole cases of birds, stock in date taken off; what is past its day is said and not counted."""
    store, kitchen, _ = shop
    stock = [
        ("bone_in", "thawed", 20.0, FRIDAY + dt.timedelta(days=1)),
        ("bone_in", "thawed", 9.0, FRIDAY - dt.timedelta(days=1)),
    ]
    view = pull_view(store, kitchen, FRIDAY, stock)
    assert (view.use, view.pull_on) == ("2026-11-27", "2026-11-25")
    assert "5 °C (41 °F) or below" in view.caution
    row = view.rows[0]
    assert (row.unit, row.on_hand_n, row.expired_n) == ("heads", 20.0, 9.0)
    assert row.pull_n == row.cases * row.case_count
    assert row.pull_n - row.case_count < row.needed_n - 20.0 <= row.pull_n
    assert (row.thaw_h, row.use_by, row.warning) == (48.0, "2026-11-29", "")
    assert 10.0 < row.thaw_least_h < 48.0
    bare = pull_view(store, kitchen, FRIDAY, []).rows[0]
    assert bare.cases > row.cases


def test_a_block_planned_to_thaw_too_fast_is_warned_of(shop):
    """A case 120 mm thick does not thaw in six hours; loose pieces and fresh goods are not warned of."""
    store, kitchen, _ = shop

    def warned(**changes):
        sells = (replace(kitchen.sells[0], **changes), *kitchen.sells[1:])
        return pull_view(store, replace(kitchen, sells=sells), FRIDAY, []).rows[0].warning

    told = warned(thaw_s=6 * 3600.0, case_thickness_m=0.12)
    assert "6 h are planned" in told
    assert "undercook" in told
    assert warned(thaw_s=6 * 3600.0, case_thickness_m=0.004) == ""
    assert warned(thaw_s=0.0, case_thickness_m=0.12) == ""


# ---------------------------------------------------------------- paper


def test_the_plan_hangs_up_with_its_orders(shop, found, tmp_path):
    """Each load, each order with its ticket, the hours of the fryers and the caution of hot oil."""
    _, kitchen, bench = shop
    store = Store.file(tmp_path / "o.db", now)
    promise_order(store, bench, ("tenders", 12, NOON, "17"), 10 * 3600.0)
    view = plan_view.plan_view(bench, found, kitchen)
    text = words(day_paper.plan_pdf(kitchen, view, order_rows(store, bench), "en"))
    store.close()
    for said in (
        "Plan of the day",
        "2026-11-27",
        "Promised orders",
        "12:00",
        "17",
        "Last drops",
        "09:40–22:00",
        "filter turn",
        "2 heads (16 pieces)",
        "Hot oil burns",
        "follow the board",
    ):
        assert said in text
    assert "Promised orders" not in words(day_paper.plan_pdf(kitchen, view, (), "en"))


def test_labels_and_the_hand_over_say_what_stands_there(board):
    """A label has its lift, its end and where it came from; the hand-over what is in the oil and overdue."""
    with pytest.raises(InputError, match="lift"):
        day_paper.labels_pdf(board, NOON, "en")
    tell(board, "drop", NOON)
    tell(board, "lift", NOON + TIME)
    tell(board, "discard", NOON + 800, product="bone_in", pieces_count=3, reason="burnt")
    tell(board, "drop", NOON + 900)
    ends = board.bench.day.items[0].hold_slots_count * 300.0 + NOON + TIME
    label = words(day_paper.labels_pdf(board, NOON + 1000, "en"))
    for said in (
        "12:12",
        f"{int(ends // 3600)}:{int(ends % 3600 // 60):02d}",
        "16",
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
    assert "Practice day" not in text
    practice = words(day_paper.handover_pdf(replace(board, practice=3), NOON, "en"))
    assert "Never evidence" in practice
    assert "Nothing." in practice


REFUSED = [
    ("key", {"key": ""}),
    ("key", {"key": "k" * 81}),
    ("what", {"what": "dance"}),
    ("at", {"at_s": -1.0}),
    ("at", {"at_s": 172801.0}),
    ("pieces", {"what": "sold", "pieces_count": -1}),
    ("pieces", {"what": "sold", "pieces_count": 10_001}),
    ("people", {"what": "people", "pieces_count": 0}),
    ("people", {"what": "people", "pieces_count": 10}),
    ("fryer", {"what": "filter", "fryer": "elm"}),
    ("product", {"what": "sold", "product": "fish"}),
    ("product", {"product": "tenders"}),
    ("pieces", {"pieces_count": 0}),
]


@pytest.mark.parametrize(("field", "wrong"), REFUSED, ids=str)
def test_a_tap_of_what_the_day_does_not_have_is_refused_at_its_field(board, field, wrong):
    """And nothing is kept; the largest load of the fryer is the most that can be dropped."""
    good = {
        "key": "k",
        "what": "drop",
        "at_s": NOON,
        "fryer": "alder",
        "product": "bone_in",
        "pieces_count": 16,
    }
    with pytest.raises(InputError) as caught:
        board.tell(Tap(**{**good, **wrong}))
    assert caught.value.field == field
    assert board.entries() == []


@pytest.mark.parametrize("told", [{"key": "k" * 80}, {"what": "sold", "pieces_count": 10_000}], ids=str)
def test_a_tap_at_the_end_of_what_can_be_told_is_kept(board, told):
    good = {
        "key": "k",
        "what": "people",
        "at_s": NOON,
        "fryer": "alder",
        "product": "bone_in",
        "pieces_count": 9,
    }
    kept, new = board.tell(Tap(**{**good, **told}))
    assert new and board.entries() == [kept]


def test_the_largest_load_of_a_fryer_is_the_most(board):
    """One piece more is refused, and the error names the fryer."""
    most = max(x.pieces_count for x in board.bench.loads[0] if x.fryer == "alder")
    product = board.bench.products[0]
    told = {"what": "drop", "at_s": NOON, "fryer": "alder", "product": product}
    with pytest.raises(InputError) as caught:
        board.tell(Tap(key="a", pieces_count=most + 1, **told))
    assert (caught.value.field, caught.value.values) == ("pieces", {"most": most})
    assert caught.value.where == board.kitchen.fryer("alder").name
    assert board.tell(Tap(key="b", pieces_count=most, **told))[1]


def test_a_tap_is_taken_back_by_the_clock_of_its_day(board, monkeypatch):
    """However late it came in: five seconds of the day after the tap it is taken back, a minute after not."""
    tell(board, "drop", NOON, key="oops")
    monkeypatch.setattr(twice, "now", lambda: now() + dt.timedelta(hours=1))
    with pytest.raises(InputError, match="too late"):
        tell(board, UNDO, NOON + 60, key="late", undoes="oops")
    back, new = tell(board, UNDO, NOON + 5, key="u", undoes="oops")
    assert new and back.fact.what == UNDO
