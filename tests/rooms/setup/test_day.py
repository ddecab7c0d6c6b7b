"""The day described without a file."""

from __future__ import annotations

import pytest

from frywright.rooms.cook import setup
from frywright.rooms.cook.own_day import day_typed, keep_day
from frywright.rooms.kitchen import kitchen_text, remembered_kitchen
from tests.demo import remember_demo
from tests.rooms.setup.answers import DAY, METRIC, kept


def test_the_day_is_described_without_a_file(store):
    """What is typed is the kitchen's day; typed anew it changes, and nothing else does."""
    made = kept(store, "kitchen", METRIC)
    before = kitchen_text(store)
    money = {f"margin_{made.product}": "1,5", f"cost_{made.product}": "0,40"}
    done, wrong = keep_day(store, {**DAY, **money})
    assert done is not None and not wrong
    kitchen = remembered_kitchen(store)
    trade, (sell,) = kitchen.trade, kitchen.sells
    assert (trade.zone, trade.opens, trade.closes, trade.first_drop) == (
        "Europe/Madrid",
        "12:00",
        "23:30",
        "11:30",
    )
    assert trade.rush == ("13:00-15:30", "20:30-22:00")
    assert (trade.hands_count, trade.filter_every_count, trade.currency) == (2, 10, "€")
    assert (sell.product, sell.margin_money, sell.cost_money) == (made.product, 1.5, 0.4)
    assert kitchen_text(store).startswith(before.rstrip("\n"))
    again = day_typed(kitchen)
    assert {name: again[name] for name in money} == {**money, f"cost_{made.product}": "0,4"}
    changed, wrong = keep_day(store, {**again, "hands": "3"})
    assert changed is not None and not wrong
    assert remembered_kitchen(store).trade.hands_count == 3
    assert remembered_kitchen(store).sells == (sell,)
    assert kitchen_text(store).count("[day]") == kitchen_text(store).count("[[sell]]") == 1


@pytest.mark.parametrize(
    ("box", "typed", "marked"),
    [
        ("zone", "Mars/North", "zone"),
        ("opens", "25:00", "opens"),
        ("first_drop", "12:30", "first_drop"),
        ("rush", "12-13", "rush"),
        ("hands", "2,5", "hands"),
        ("filter_every", "0", "filter_every"),
        ("currency", "pesos de aquí", "currency"),
        ("margin_{p}", "-1", "margin_{p}"),
        ("cost_{p}", "", "cost_{p}"),
        ("cost_{p}", "1e9", "cost_{p}"),
    ],
)
def test_a_day_that_cannot_be_is_marked_in_its_box_and_not_kept(store, box, typed, marked):
    """The file stays as it was."""
    product = kept(store, "kitchen", METRIC).product
    before = kitchen_text(store)
    asked = {**DAY, f"margin_{product}": "1,5", f"cost_{product}": "0,4", box.format(p=product): typed}
    made, wrong = keep_day(store, asked)
    assert made is None
    assert list(wrong) == [marked.format(p=product)]
    assert kitchen_text(store) == before


def test_a_day_without_any_product_sold_is_refused(store):
    """There would be nothing to plan."""
    product = kept(store, "kitchen", METRIC).product
    made, wrong = keep_day(store, DAY)
    assert made is None and list(wrong) == [f"margin_{product}"]


def test_a_product_is_taken_off_sale_and_every_other_line_stays(store):
    """Also where lists of the day stand on several lines, with notes beside them."""
    remember_demo(store)
    text = kitchen_text(store).replace(
        'rush = ["11:30-13:15", "17:00-20:00"]', 'rush = [\n  "11:30-13:15", # lunch\n  "17:00-20:00",\n]'
    )
    setup.remember_kitchen(store, text, "demo.toml")
    typed = day_typed(remembered_kitchen(store))
    typed |= {"margin_tenders": "", "cost_tenders": "", "rush": "11:30-13:00"}
    menu = [m for m in remembered_kitchen(store).menu if "tenders" in {p.product for p in m.parts}]
    made, wrong = keep_day(store, typed)
    assert made is not None and not wrong
    kitchen = remembered_kitchen(store)
    assert [s.product for s in kitchen.sells] == ["bone_in", "wedges"]
    assert kitchen.trade.rush == ("11:30-13:00",)
    assert kitchen.trade.cap_w == 35e3 and kitchen.trade.handling_money == 0.25
    assert [m for m in kitchen.menu if "tenders" in {p.product for p in m.parts}] == menu
