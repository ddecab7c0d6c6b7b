"""What a page keeps of a long record is what reading it all would give, and no page reads it twice."""

from __future__ import annotations

import datetime as dt
import io
import random

import pytest

from frywright.ledger.attachments import Attachments
from frywright.ledger.facts.day import UNDO, BoardTap, SalesPosted, SalesRead, standing
from frywright.ledger.facts.oil import MeterChecked, OilDone, OilLimitSet
from frywright.ledger.store import Store
from frywright.rooms.care.oil_loads import fat_kg
from frywright.rooms.care.oil_money import cost_view
from frywright.rooms.care.oil_state import _fat, _vat_states, vat_states
from frywright.rooms.clock import now, played
from frywright.rooms.day.practice import demo_sales
from frywright.rooms.day.sales import LEARNT_DAYS, all_sales, history_of, keep_sales
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from tests.demo import FRIDAY
from tests.rooms.taps import tap

FRYERS = (("alder", "bone_in"), ("birch", "bone_in"), ("cedar", "tenders"), ("dogwood", "wedges"))


def fat_read_whole(store, kitchen, since):
    """The same by reading every tap."""
    found = {}
    for item in standing(store.facts(BoardTap)):
        fact = item.fact
        if fact.what == "drop" and fact.date >= since:
            day = found.setdefault(fact.date, {})
            kg = fat_kg(kitchen, fact.fryer, fact.product, fact.pieces_count)
            day[fact.fryer] = day.get(fact.fryer, 0.0) + kg
    return found


def same(one, other):
    assert one.keys() == other.keys()
    for date, fryers in one.items():
        assert fryers == pytest.approx(other[date], rel=1e-9)


def test_fat_of_the_loads_is_added_up_once_and_is_right_after_any_taps(store):
    """Drops, some taken back at once or later, days that go back and forth, an earlier beginning, and another
    program that writes beside this one.
    """
    kitchen, luck = remembered_kitchen(store), random.Random(5)
    since, drops = FRIDAY - dt.timedelta(days=5), []
    other = Store.named(str(store.engine.url.database), now)
    for n in range(120):
        fryer, product = luck.choice(FRYERS)
        date = since + dt.timedelta(days=luck.choice((-1, 0, 0, 1, 2)))
        writer = other if n % 7 == 0 else store
        told = tap(
            date, f"k{n}", what="drop", fryer=fryer, product=product, pieces_count=luck.randrange(4, 30)
        )
        if drops and n % 5 == 0:
            gone = drops.pop(luck.randrange(len(drops)))
            write(writer, tap(date, f"k{n}", what=UNDO, fryer=fryer, product=product), replaces=gone)
        else:
            drops.append(write(writer, told).number)
        if n % 3 == 0:
            same(_fat(store, kitchen, since), fat_read_whole(store, kitchen, since))
    early = since - dt.timedelta(days=3)
    same(_fat(store, kitchen, early), fat_read_whole(store, kitchen, early))
    assert _fat(store, kitchen, early)
    other.close()


def test_a_block_that_is_undone_leaves_no_fat_behind(store):
    """What was read inside it is forgotten with it, and a tap of the same number counts by itself."""
    kitchen = remembered_kitchen(store)
    write(store, tap(FRIDAY, "a", what="drop", fryer="alder", product="bone_in", pieces_count=8))
    whole = _fat(store, kitchen, FRIDAY)
    with pytest.raises(ZeroDivisionError), store.writing():
        write(store, tap(FRIDAY, "b", what="drop", fryer="alder", product="bone_in", pieces_count=24))
        assert _fat(store, kitchen, FRIDAY) != whole
        raise ZeroDivisionError
    assert _fat(store, kitchen, FRIDAY) == whole
    write(store, tap(FRIDAY, "c", what="drop", fryer="cedar", product="tenders", pieces_count=8))
    same(_fat(store, kitchen, FRIDAY), fat_read_whole(store, kitchen, FRIDAY))


def test_nothing_is_read_again_for_a_second_look_at_the_oil(store, monkeypatch):
    """Neither taps nor the log of the oil, however long they are."""
    kitchen = remembered_kitchen(store)
    for n in range(30):
        write(store, tap(FRIDAY, f"k{n}", what="drop", fryer="alder", product="bone_in", pieces_count=8))
        oil(store, FRIDAY - dt.timedelta(days=30 - n), "filter")
    first = vat_states(store, kitchen, FRIDAY)
    read = []
    facts = store.facts

    def counted(cls, **asked):
        for item in facts(cls, **asked):
            read.append(item)
            yield item

    monkeypatch.setattr(store, "facts", counted)
    second = vat_states(store, kitchen, FRIDAY)
    assert len(read) <= 2  # the newest of each, to see that nothing is new
    assert second["alder"].belief.mean == pytest.approx(first["alder"].belief.mean)


METER = MeterChecked(
    date=FRIDAY,
    low_known_pct=5.0,
    low_read_pct=8.0,
    high_known_pct=20.0,
    high_read_pct=23.0,
    meter="",
    who="",
    key="",
)


def test_the_oil_that_is_kept_is_the_oil_worked_out_anew(store):
    """After loads, oil, a check of the meter, a limit of the house, another day and an undone block."""
    kitchen = remembered_kitchen(store)
    acts = [
        lambda: oil(store, FRIDAY - dt.timedelta(days=9), "fill", 20.0),
        lambda: oil(store, FRIDAY - dt.timedelta(days=2), "reading", reading=15.0),
        lambda: write(
            store, tap(FRIDAY, "w", what="drop", fryer="alder", product="bone_in", pieces_count=24)
        ),
        lambda: write(store, METER),
        lambda: write(store, OilLimitSet(place="", house_pct=18.0, who="", reason="")),
    ]
    for act in acts:
        before = vat_states(store, kitchen, FRIDAY)["alder"]
        assert vat_states(store, kitchen, FRIDAY)["alder"] is before
        with pytest.raises(ZeroDivisionError), store.writing():
            act()
            vat_states(store, kitchen, FRIDAY)
            raise ZeroDivisionError
        assert told(vat_states(store, kitchen, FRIDAY)) == told(_vat_states(store, kitchen, FRIDAY))
        assert told({"alder": vat_states(store, kitchen, FRIDAY)["alder"]}) == told({"alder": before})
        act()
        for day in (FRIDAY, FRIDAY + dt.timedelta(days=1), FRIDAY):
            assert told(vat_states(store, kitchen, day)) == told(_vat_states(store, kitchen, day))
        assert told({"alder": vat_states(store, kitchen, FRIDAY)["alder"]}) != told({"alder": before})


def told(states):
    """What pages show of the oil."""
    return {
        key: (s.belief.mean.tolist(), s.crossing, s.limit_pct, s.age_days_count) for key, s in states.items()
    }


def oil(store, date, what, mass=None, reading=None):
    fact = OilDone(
        vat="alder",
        what=what,
        raw="",
        who="",
        how="meter",
        key="",
        date=date,
        mass_kg=mass,
        reading_pct=reading,
    )
    return write(store, fact)


def test_the_bill_has_what_was_told_late_and_stops_at_nothing_told_for_an_old_day(store):
    """An entry for a day of three months ago, made today, hides none of the entries before it."""
    kitchen, today = remembered_kitchen(store), now().date()
    with played(now() - dt.timedelta(days=3)):
        oil(store, today - dt.timedelta(days=3), "top_up", 2.0)
    oil(store, today - dt.timedelta(days=90), "top_up", 50.0)
    with_it = cost_view(store, kitchen, 40.0, today)
    oil(store, today - dt.timedelta(days=2), "top_up", 1.0)
    more = cost_view(store, kitchen, 40.0, today)
    assert with_it.top_up_kg_day > 0 and more.top_up_kg_day > with_it.top_up_kg_day


def test_sales_are_read_once_until_there_are_new_ones_and_old_ones_are_left(store, monkeypatch):
    """A second look opens no file; what is more than two years older than the newest is not opened at all."""
    kitchen = remembered_kitchen(store)
    for back in (0, 14, LEARNT_DAYS + 30):
        last = FRIDAY - dt.timedelta(days=1 + back)
        text = demo_sales(kitchen, last, 2, seed=2)
        keep_sales(store, kitchen, io.BytesIO(text), f"to-{last}.csv", "mdy")
    opened, own = [], Attachments.open
    monkeypatch.setattr(Attachments, "open", lambda self, name: opened.append(name) or own(self, name))
    first = history_of(store, kitchen)
    assert len(opened) == 2 and len(first.dates) == 28
    assert history_of(store, kitchen) is first and len(opened) == 2
    assert [len({line.date for line in one.lines}) for one in all_sales(store, kitchen)] == [14, 14]
    text = demo_sales(kitchen, FRIDAY, 1, seed=3)
    keep_sales(store, kitchen, io.BytesIO(text), "new.csv", "mdy")
    later = history_of(store, kitchen)
    assert later is not first and max(later.dates) == FRIDAY


def test_a_file_with_a_day_far_ahead_does_not_push_the_others_out(store):
    """A slip in a year is no reason to forget what was sold."""
    kitchen = remembered_kitchen(store)
    text = demo_sales(kitchen, FRIDAY - dt.timedelta(days=1), 2, seed=2)
    keep_sales(store, kitchen, io.BytesIO(text), "now.csv", "mdy")
    ahead = demo_sales(kitchen, FRIDAY.replace(year=FRIDAY.year + 20), 1, seed=2)
    keep_sales(store, kitchen, io.BytesIO(ahead), "ahead.csv", "mdy")
    assert min(history_of(store, kitchen).dates) < FRIDAY
    assert len(list(store.facts(SalesRead))) == 2 and not list(store.facts(SalesPosted))
