"""The plan of a day: how it is shown, what binds it, and what another would be."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import numpy as np
import pytest

from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.plan.binds import Binds, Lever
from frywright.plan.model import Drop, Plan
from frywright.plan.replay import Rule, draw_days, replay
from frywright.rooms.clock import now
from frywright.rooms.day import day, limits, plan_view, what_if
from frywright.rooms.day import paper as day_paper
from frywright.rooms.day.orders import order_rows, promise_order
from frywright.rooms.day.pulling import pull_view
from tests.demo import FRIDAY
from tests.paper import words
from tests.rooms.floor.board import NOON


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
    first, planned = (
        next(d for d in drops if d.fryer == f) for drops, f in ((view.drops, "alder"), (found.plan.drops, 0))
    )
    from_h = 9 + 40 / 60 + planned.slot * 5 / 60
    assert (first.drop_h, first.lift_h) == (pytest.approx(from_h), pytest.approx(from_h + 12.75 / 60))
    assert first.drop == f"{int(from_h + 1e-6):02d}:{round(from_h % 1 * 60):02d}"
    heads = first.pieces // 8
    assert first.amount == f"{heads} head{'s' * (heads > 1)} ({first.pieces} pieces)"
    assert first.pieces == bench.day.items[planned.item].loads[planned.load].units_count
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
    busy = replace(quiet, day=replace(quiet.day, mean_n=40 * mean))
    told = limits.unplanned(busy, kitchen, planned)
    assert told[0].startswith("Tenders: pieces asked for: 40, planned in loads: 7. The smallest load has 7,")
    drops = tuple(Drop(fryer=2, item=1, load=0, slot=slot) for slot in (3, 9, 15))
    planned = replace(planned, plan=Plan(drops=drops))
    assert len(limits.unplanned(busy, kitchen, planned)) == 1, "21 of 40 is more than half"


def test_what_is_said_of_several_products_is_said_once(shop):
    """One note for all of a kind; a product without a load has no last drop but is cooked to order."""
    _, kitchen, bench = shop
    planned = replace(day.morning(bench), plan=Plan(drops=(Drop(fryer=2, item=1, load=0, slot=3),)))
    view = plan_view.plan_view(bench, planned, kitchen)
    told = [n for n in view.notes if "planned on simulations" in n]
    assert told == [
        "Loads of Bone-in chicken, 8-piece, Tenders, Potato wedges are planned on simulations that no probe"
        " log supports yet: unknown until probed."
    ]
    assert [bool(x.at) for x in view.last_drops] == [False, True, False]


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


def test_what_binds_is_worked_out_once_for_a_bench(shop, monkeypatch):
    """Asked again, in another language too, it is what was found; another bench is tried for itself, and of
    many only the last few are kept.
    """
    _, kitchen, bench = shop
    tried = []

    def found(day, rule, tune):
        tried.append(day)
        return Binds(fill_frac=0.5 + 0.01 * len(tried), waste_frac=0.08, levers=())

    monkeypatch.setattr(limits, "binds", found)
    monkeypatch.setattr(limits, "_KEPT", type(limits._KEPT)())
    rule = Rule(table_n=())
    benches = [replace(bench, par=rule) for _ in range(limits.KEPT_COUNT + 1)]
    first = limits.binds_view(benches[0], kitchen)
    assert limits.binds_view(benches[0], kitchen) == first
    assert limits.binds_view(benches[0], kitchen, lambda text: "·") != first
    assert len(tried) == 1
    for n, other in enumerate(benches[1:], start=2):
        assert f"{50 + n}.0 %" in limits.binds_view(other, kitchen).headline
    assert len(limits._KEPT) == limits.KEPT_COUNT
    limits.binds_view(benches[0], kitchen)
    assert len(tried) == len(benches) + 1


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
    for minutes in (-5.0, 0.0, 361.0):
        with pytest.raises(InputError, match=r"hold life is .* min .*; it must be above 0, up to 360 min"):
            what_if.what_if(store, kitchen, bench, what_if.Changed(hold_min={"bone_in": minutes}), 20)


def test_the_pull_sheet_counts_only_what_is_in_date(shop):
    """Whole cases of birds, stock in date taken off; what is past its day is said and not counted."""
    store, kitchen, _ = shop
    stock = [
        ("bone_in", "thawed", 20.0, FRIDAY + dt.timedelta(days=1)),
        ("bone_in", "thawed", 9.0, FRIDAY - dt.timedelta(days=1)),
    ]
    view = pull_view(store, kitchen, FRIDAY, stock)
    assert (view.use, view.pull_on) == ("2026-11-27", "2026-11-25")
    assert "Thaw at 41 °F or below" in view.caution
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
    alone = words(day_paper.plan_pdf(kitchen, view, (), "en"))
    assert "Promised orders" not in alone
    assert "not proven yet" in alone and "unknown" not in alone, "nobody must ask what is unknown"
