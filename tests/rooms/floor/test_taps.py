"""What the board keeps, refuses, takes for the same and takes back."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import numpy as np
import pytest

from frywright.ledger.facts.day import UNDO
from frywright.model.business_day import moment_of, usual_trade
from frywright.model.errors import InputError
from frywright.rooms.clock import now, played
from frywright.rooms.day import twice, views
from frywright.rooms.day.board import Followed, Tap, tap_of
from frywright.rooms.day.lifting import Answer
from tests.demo import FRIDAY
from tests.rooms.floor.board import NOON, shelf, tell


@pytest.mark.slow
@pytest.mark.parametrize("seed", [1, *(pytest.param(n, marks=pytest.mark.slow) for n in (2, 3))])
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


def test_what_a_form_tells_is_read_or_refused_by_its_field():
    """Numbers as numbers, words cut to length; no time is none of the day; what is no number is refused."""
    told = {"key": "k", "what": "drop", "at_s": "43200.5", "fryer": "alder", "product": "bone_in"}
    read = tap_of({**told, "pieces": "16", "who": "Kim", "reason": "x" * 200})
    assert read == Tap(**{**told, "at_s": 43200.5}, pieces_count=16, who="Kim", reason="x" * 120)
    empty = tap_of({"at_s": None, "pieces": ""})
    assert (empty.at_s, empty.pieces_count, empty.undoes) == (-1.0, 0, "")
    for what in ("sold", "count", "discard"):
        for pieces in ({}, {"pieces": ""}, {"pieces": None}):
            with pytest.raises(InputError, match="missing"):
                tap_of({"what": what, **pieces})
    assert tap_of({"what": "count", "pieces": 0}).pieces_count == 0, "an empty shelf can be counted"
    for field in ("at_s", "pieces"):
        for text in ("soon", "nan", "inf"):
            with pytest.raises(InputError) as refused:
                tap_of({field: text})
            assert refused.value.field == field


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


REFUSED = [
    ("key", {"key": ""}),
    ("key", {"key": "k" * 81}),
    ("what", {"what": "dance"}),
    ("at", {"at_s": -1.0}),
    ("at", {"at_s": 172801.0}),
    ("pieces", {"what": "sold", "pieces_count": -1}),
    ("pieces", {"what": "sold", "pieces_count": 10_001}),
    ("pieces", {"what": "sold", "product": "tenders", "pieces_count": 0}),
    ("pieces", {"what": "discard", "product": "tenders", "pieces_count": 0}),
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
