"""The day of the demo kitchen through its acts: sales kept, bench built, taps kept once, practice day to
its end.
"""

from __future__ import annotations

import datetime as dt
import io
from dataclasses import asdict, replace
from functools import partial

import numpy as np
import pytest
from benchmarks import practice
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from frywright.ledger.store import Store
from frywright.model import business_day
from frywright.model.errors import DataError, InputError
from frywright.model.findings import say
from frywright.plan.binds import binds
from frywright.plan.check import broken_rules
from frywright.plan.live import What
from frywright.plan.model import Order, Plan
from frywright.plan.replay import Par
from frywright.rooms.clock import now
from frywright.rooms.day import day, limits, plan_view, pulling, twice, what_if
from frywright.rooms.day import paper as day_paper
from frywright.rooms.day import sales as day_sales
from frywright.rooms.day import views as day_view
from frywright.rooms.day.board import Board, Tap, tap_of
from frywright.rooms.day.board_view import board_view
from frywright.rooms.day.compare import compare_down
from frywright.rooms.day.orders import order_rows, promise_order
from frywright.rooms.day.practice import demo_sales, guests, next_practice
from frywright.rooms.day.round import play_day
from frywright.rooms.day.score import score_view
from frywright.rooms.kitchen import remember_kitchen, remembered_kitchen
from frywright.trial.kitchens import demo_text
from tests.paper import words

pytestmark = pytest.mark.slow
FRIDAY = dt.date(2026, 11, 27)


@pytest.fixture(autouse=True)
def any_hour(monkeypatch):
    """The board takes taps of the whole day, whatever the hour at which the tests run."""
    monkeypatch.setattr("frywright.rooms.day.board.AHEAD", dt.timedelta(days=3))


@pytest.fixture(scope="module")
def store(tmp_path_factory):
    found = Store.file(tmp_path_factory.mktemp("day") / "d.db", now)
    remember_kitchen(found, demo_text(), "demo.toml")
    kitchen = remembered_kitchen(found)
    day_sales.keep_sales(
        found, kitchen, io.BytesIO(demo_sales(kitchen, FRIDAY - dt.timedelta(days=1))), "sales.csv"
    )
    return found


@pytest.fixture(scope="module")
def kitchen(store):
    return remembered_kitchen(store)


@pytest.fixture(scope="module")
def bench(store, kitchen):
    return day.bench_for(store, kitchen, FRIDAY)


def test_sales_are_kept_once_and_told(store, kitchen):
    """The same file again is the same entry; what the menu lacks and the silence are listed; no file that is
    none is kept.
    """
    again, _ = day_sales.keep_sales(
        store, kitchen, io.BytesIO(demo_sales(kitchen, FRIDAY - dt.timedelta(days=1))), "sales.csv"
    )
    assert len(store.current("sales_file")) == 1
    assert again.number == store.current("sales_file")[0].number
    view = day_view.sales_view(store, kitchen)
    assert view.days_count == 56
    assert [u.item for u in view.unmapped] == ["Honey sauce, cup"]
    assert len(view.outages) == 1
    with pytest.raises(DataError):
        day_sales.keep_sales(store, kitchen, io.BytesIO(b"nothing"), "x.csv")
    assert len(store.current("sales_file")) == 1


def test_loads_come_from_the_cook_engine(bench, kitchen):
    """Cook times are those of each fryer's own program; no load is under the fryer's least or over its most;
    the evidence goes with it.
    """
    for item, facts in zip(bench.day.items, bench.loads, strict=True):
        for load, fact in zip(item.loads, facts, strict=True):
            program, fryer = kitchen.program(fact.program), kitchen.fryer(fact.fryer)
            assert fact.cook_s >= sum(program.durations_s())
            assert load.cook_slots_count * bench.day.slot_s >= fact.cook_s
            assert fact.load_kg >= fryer.min_load_kg - 1e-9
            assert fact.outcome in ("unknown", "meets")
    assert {n.kind for n in bench.notes} == {"scouting", "shared_oil"}


def test_the_morning_plan_keeps_the_rules_and_fridays_are_busier(store, kitchen, bench):
    """The plan passes the check, has bands, filter turns outside the rush, and more on a Friday than on a
    Monday.
    """
    found = day.morning(bench)
    view = plan_view.plan_view(bench, found, kitchen)
    assert view.broken == ()
    assert len(view.drops) > 40
    assert view.filters
    monday = day.forecaster_of(store, kitchen, FRIDAY)[0].forecast(FRIDAY + dt.timedelta(days=3))
    assert bench.forecast.mean_n.sum() > 1.2 * monday.mean_n.sum()
    told = plan_view.forecast_view(bench)
    assert all(p.low_n < p.total_n < p.high_n for p in told.products)
    assert sum(told.products[0].halves) == pytest.approx(bench.day.mean_n[0].sum(), abs=3)


def test_the_rule_and_what_binds_are_said(bench, kitchen):
    """Every product has a rule in every part of the day; a demo day misses the aim and names what binds."""
    rule = limits.rule_view(bench)
    assert [row.name for row in rule.rows] == [item.name for item in bench.day.items]
    assert all(0 < below <= fill for row in rule.rows for below, fill in row.cells)
    binds = limits.binds_view(bench, kitchen)
    assert binds is not None and not binds.good
    assert binds.rows and "95 %" in binds.headline
    assert binds.headline.startswith(limits.BINDING[binds.rows[0].what])
    assert limits.binds_view(replace(bench, par=Par()), kitchen) is None


@pytest.mark.parametrize("shop", ["demo", "9101"])
def test_following_the_first_change_brings_what_the_page_promises(shop, store, kitchen, bench, tmp_path):
    """The demo and a kitchen drawn fresh: hold lives half as long again are named first. With programs that
    hold so long the day is planned anew and played on other days: served, thrown away and money come as the
    page said, within both 95 % intervals (three standard errors). Before, the page promised the demo 12.5
    points less thrown away, and 7.1 came.
    """
    if shop != "demo":
        kitchen, bench = practice.bench_of(int(shop), tmp_path)
        store = Store.file(tmp_path / f"{shop}.db", now)
    lever = binds(bench.day, bench.par, partial(day.tuned_day, bench, kitchen)).levers[0]
    assert lever.what == "Hold lives half as long again"
    minutes = {
        key: round(1.5 * item.hold_slots_count) * bench.trade.slot_s / 60.0 + 0.01
        for key, item in zip(bench.products, bench.day.items, strict=True)
    }
    view = what_if.what_if(store, kitchen, bench, what_if.Changed(hold_min=minutes))
    fill = view.other.fill_frac - view.base.fill_frac
    waste = view.other.waste_frac - view.base.waste_frac
    assert abs(lever.money - view.change.money) <= 1.5 * np.hypot(
        lever.half_width_money, view.change.half_width_money
    )
    assert abs(lever.fill_frac - fill) <= 1.5 * np.sqrt(2.0) * lever.fill_half_width_frac
    assert abs(lever.waste_frac - waste) <= 1.5 * np.sqrt(2.0) * lever.waste_half_width_frac


def test_a_product_that_no_load_pays_is_said(bench, kitchen):
    """Three tenders a day are planned as none, and that is said; a fryer that nothing needs stays off."""
    mean = bench.day.mean_n.copy()
    mean[1] *= 3.0 / mean[1].sum()
    few = replace(bench, day=replace(bench.day, mean_n=mean))
    texts = limits.unplanned(few, kitchen, day.morning(few))
    assert [t for t in texts if "Tenders" in t and "to order" in t]
    calm = day._tuned_bench(replace(bench, day=replace(bench.day, mean_n=0.05 * bench.day.mean_n)), kitchen)
    cold = [f for f, (a, b) in zip(calm.fryers, calm.day.up, strict=True) if a >= b]
    assert cold
    told = limits.unplanned(calm, kitchen, day.morning(calm))
    assert all(any(kitchen.fryer(f).name in t for t in told) for f in cold)


def test_a_plan_by_hand_is_checked_and_priced(bench):
    """Good rows pass, a filter turn in the rush is told, unknown loads are refused by row."""
    alder = next(x for x in bench.loads[0] if x.fryer == "alder")
    rows = [{"drop": "10:00", "fryer": "alder", "product": "bone_in", "pieces": alder.pieces_count}]
    plan = what_if.hand_plan(bench, rows)
    if bench.day.window(0)[0] <= plan.drops[0].slot:
        assert broken_rules(bench.day, plan) == []
    view = what_if.check_view(bench, what_if.hand_plan(bench, [*rows, {"fryer": "alder", "filter": "12:00"}]))
    assert any("rush" in b for b in view.broken)
    assert view.price.total_money > view.engine.total_money
    with pytest.raises(InputError, match="row 1"):
        what_if.hand_plan(bench, [{"drop": "10:00", "fryer": "alder", "product": "bone_in", "pieces": 7}])


def test_events_and_what_if(store, kitchen, bench):
    """A factor told for a day raises its forecast; a shorter hold and a fryer off cost money on the same
    days.
    """
    day.note_day(store, FRIDAY + dt.timedelta(days=1), "derby", 1.5)
    usual = day.bench_for(store, kitchen, FRIDAY + dt.timedelta(days=1), factor=1.0)
    raised = day.bench_for(store, kitchen, FRIDAY + dt.timedelta(days=1))
    assert raised.day.mean_n.sum() == pytest.approx(1.5 * usual.day.mean_n.sum())
    changed = what_if.what_if(
        store, kitchen, bench, what_if.Changed(hold_min={"bone_in": 30.0}, off=("dogwood",)), 60
    )
    assert changed.change.money > changed.change.half_width_money > 0


def test_what_if_nothing_changes_nothing(store, kitchen):
    """With a program in service, a fryer held out of use and an order, the same day asked about again costs
    the same to the cent.
    """
    served = day.bench_for(store, kitchen, FRIDAY, down=("dogwood",), serving={"bone-in alder"})
    order = Order(item=0, slot=60, units_count=40)
    promised = replace(served, day=replace(served.day, orders=(order,)))
    same = what_if.what_if(store, kitchen, promised, what_if.Changed(), 20)
    assert same.change.money == 0.0
    assert asdict(same.base) == asdict(same.other)


def test_pull_sheet(store, kitchen):
    """Stock in date is taken off, out of date is not, and the sheet says when to pull."""
    stock = [
        ("bone_in", "thawed", 20.0, FRIDAY - dt.timedelta(days=1)),
        ("bone_in", "marinated", 30.0, FRIDAY),
    ]
    view = pulling.pull_view(store, kitchen, FRIDAY, stock)
    row = view.rows[0]
    assert (row.on_hand_n, row.expired_n) == (30, 20)
    assert row.pull_n == row.cases * 14 >= row.needed_n - 30
    assert view.pull_on == "2026-11-25"
    thick = replace(kitchen, sells=(replace(kitchen.sells[0], case_thickness_m=0.15), *kitchen.sells[1:]))
    assert "needs at least" in pulling.pull_view(store, thick, FRIDAY, []).rows[0].warning


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
    assert view.halves[0].from_ == "17:40"
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


@pytest.mark.parametrize(
    ("sold", "said"),
    [
        (lambda date: date >= FRIDAY - dt.timedelta(days=30), ""),
        (lambda date: date < FRIDAY - dt.timedelta(days=9), "has not sold for 9 days"),
        (lambda date: False, "has no sales yet"),
    ],
    ids=["launched", "withdrawn", "never sold"],
)
def test_a_product_new_or_gone_breaks_no_day(tmp_path, sold, said):
    """Tenders first sold 30 days ago are planned; withdrawn or never sold they are not, and that is said."""
    found = Store.file(tmp_path / "x.db", now)
    remember_kitchen(found, demo_text(), "demo.toml")
    kitchen, lines = remembered_kitchen(found), []
    for line in demo_sales(kitchen, FRIDAY - dt.timedelta(days=1)).decode().splitlines():
        date = line.split(";")[0]
        if "Tender" in line and not sold(dt.datetime.strptime(date, "%m/%d/%Y").date()):
            continue
        lines.append(line)
    day_sales.keep_sales(found, kitchen, io.BytesIO("\n".join(lines).encode()), "sales.csv")
    bench = day.bench_for(found, kitchen, FRIDAY, tune=False)
    asked = bench.day.mean_n.sum(axis=1)
    assert (asked > 0).tolist() == [True, not said, True]
    texts = [say(n.text, n.values) for n in bench.notes]
    assert (
        any("Tenders" in t and said in t for t in texts)
        if said
        else not [n for n in bench.notes if n.kind == "unsold"]
    )


def test_a_kitchen_without_a_day_says_what_to_add(tmp_path):
    """The error names the tables."""
    text = demo_text().split("# The day: hours")[0]
    empty = Store.file(tmp_path / "x.db", now)
    remember_kitchen(empty, text, "k.toml")
    with pytest.raises(InputError, match=r"\[day\]"):
        day.bench_for(empty, remembered_kitchen(empty), FRIDAY)


def test_the_plan_on_paper_holds_every_load_turn_and_promised_order(store, kitchen, bench):
    """In the order of the day, with its cautions; the hand-over holds what is promised as well."""
    promise_order(store, bench, ("bone_in", 16, 61200.0, "Ticket 81"), 39000.0)
    view = plan_view.plan_view(bench, day.morning(bench), kitchen)
    rows = plan_view.in_order(view)
    assert len(rows) == len(view.drops) + len(view.filters)
    times = [getattr(x, "drop", None) or x.at for x in rows]
    assert times == sorted(times)
    said = words(day_paper.plan_pdf(kitchen, view, order_rows(store, bench), "en"))
    for x in (*view.drops, *view.filters):
        assert x.fryer_name in said
    assert said.count("filter turn") >= len(view.filters) > 0
    assert "Ticket 81" in said and "Hot oil burns" in said
    board = Board(store=store, kitchen=kitchen, bench=bench)
    assert "Ticket 81" in words(day_paper.handover_pdf(board, 40000.0, "en"))


def test_the_forecast_is_by_the_halves_of_the_clock(bench):
    """Whatever minute the day begins at; nothing of the day is left out."""
    view = plan_view.forecast_view(bench)
    assert all(at.endswith((":00", ":30")) for at in view.halves[1:])
    for row, item in zip(view.products, bench.day.mean_n, strict=True):
        assert sum(row.halves) == pytest.approx(float(item.sum()), abs=0.05 * len(row.halves) + 0.01)


def test_a_practice_day_begins_without_the_taps_of_before(store, kitchen, bench):
    """The next number nobody played, on that date."""
    date = bench.date
    first = next_practice(store, date)
    board = Board(store=store, kitchen=kitchen, bench=bench, practice=first)
    board.tell(Tap(key="p", what="drop", at_s=39000.0, fryer="alder", product="bone_in", pieces_count=16))
    assert next_practice(store, date) != first
    assert not Board(store=store, kitchen=kitchen, bench=bench, practice=next_practice(store, date)).taps()
    assert next_practice(store, date + dt.timedelta(days=1)) == 1
