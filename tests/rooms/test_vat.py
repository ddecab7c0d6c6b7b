"""A vat's oil through its acts: events kept once, nonsense refused with its raw text, outlook, limits,
cost, order, rotation.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import pytest

from frywright.ledger.facts.oil import MeterChecked, OilDone, OilLimitSet, OilRefused
from frywright.ledger.store import Store
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.model.units import LB
from frywright.rooms import hall
from frywright.rooms.care import meter, oil_money, oil_moves, oil_state, vat
from frywright.rooms.clock import now
from frywright.rooms.hall import write
from frywright.rooms.kitchen import remembered_kitchen
from frywright.rooms.standing import oil_limit_here
from frywright.voice.tongue import translator
from tests.rooms.taps import tap

TODAY = dt.date(2026, 11, 25)


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def tell(store, kitchen, day, **values):
    """One event at the close of a day of November."""
    return vat.tell_oil(
        store,
        kitchen,
        {"vat": "alder", **values},
        at=moment_of(kitchen.trade, dt.date(2026, 11, day), 79_000.0),
    )


def week(store, kitchen):
    """Fresh oil on the 16th, readings that rise by two points a day, top-ups of three pounds."""
    tell(store, kitchen, 16, what="discard")
    for n, day in enumerate(range(17, 26)):
        tell(store, kitchen, day, what="reading", amount=f"{6 + 1.6 * n:.1f}")
        tell(store, kitchen, day, what="top_up", amount="3 lb")


def test_a_week_gives_a_dated_outlook(store, kitchen):
    """Growth is learned, the date lies ahead with its interval, more top-up and cooler oil buy days, in both
    languages.
    """
    week(store, kitchen)
    view = vat.vat_view(store, kitchen, "alder", TODAY)
    assert not view.default
    assert view.age_days_count == 9
    assert view.growth_pct == pytest.approx(2.3, abs=0.6)
    assert view.days_n[0] <= view.days_n[1] <= view.days_n[2]
    now_days, more, cooler, _ = (
        row.days_n
        for row in oil_money.changes_view(
            kitchen, oil_state.vat_states(store, kitchen, TODAY), "alder"
        ).changes
    )
    assert more > now_days
    assert cooler > now_days
    assert "límite" in vat.vat_view(store, kitchen, "alder", TODAY, translator("es")).text


def test_oil_over_its_limit_is_to_be_discarded(store, kitchen):
    """Readings near the limit advise a discard tonight; after it the oil is fresh again."""
    tell(store, kitchen, 10, what="discard")
    for day in range(12, 26):
        tell(store, kitchen, day, what="reading", amount=f"{4 + 1.35 * (day - 10):.1f}")
    assert vat.vat_view(store, kitchen, "alder", TODAY).advice == "discard"
    tell(store, kitchen, 25, what="discard")
    view = vat.vat_view(store, kitchen, "alder", TODAY)
    assert view.advice == "keep"
    assert view.level_pct == pytest.approx(4.0, abs=0.1)


@pytest.mark.parametrize("readings", [["30"], ["18", "30"], ["30", "27", "26"], ["24.0"]])
def test_a_reading_over_the_limit_is_not_argued_away(store, kitchen, readings):
    """A vat of unknown age: one reading over 24 % is *discard or read again*, and so is the third; the first
    reading sets the level; once read again below, or changed, it is no longer.
    """
    for n, amount in enumerate(readings):
        tell(store, kitchen, 20 + n, what="reading", amount=amount)
    view = vat.vat_view(store, kitchen, "alder", dt.date(2026, 11, 20 + len(readings) - 1))
    assert view.advice == "discard"
    assert f"{float(readings[-1]):g} %" in view.text
    assert view.last_reading_pct == float(readings[-1])
    assert view.level_pct > (20.0 if len(readings) == 1 else 23.0)
    tell(store, kitchen, 20 + len(readings), what="discard")
    after = vat.vat_view(store, kitchen, "alder", dt.date(2026, 11, 20 + len(readings)))
    assert after.advice != "discard"
    assert after.last_reading_pct is None


def test_oil_of_unknown_age_follows_its_readings(store, kitchen):
    """Readings of 14.5 to 17.6 % of a vat nobody saw filled: level and growth follow them, and no oil is
    thrown away days early.
    """
    for n, amount in enumerate(("14.5", "15.6", "16.5", "17.6")):
        tell(store, kitchen, 22 + n, what="reading", amount=amount)
    view = vat.vat_view(store, kitchen, "alder", TODAY)
    assert view.level_pct == pytest.approx(17.5, abs=0.8)
    assert view.growth_pct == pytest.approx(1.2, abs=0.6)
    assert view.advice == "keep"


@pytest.mark.parametrize(
    ("days", "said", "left_out"),
    [
        ((20.0, 40.0, 60.0), "about 2027-01-04, most likely between 2026-12-15 and 2027-01-24", "90"),
        ((20.0, 40.0, 91.0), "not before 2026-12-15; it may take over 90 days", "between"),
        ((20.0, 91.0, 91.0), "not reached within 90 days. Taste", "2026"),
    ],
)
def test_an_outlook_says_no_day_beyond_those_simulated(store, kitchen, days, said, left_out):
    """A limit that comes after the 90 days simulated has no date, and oil is not said to settle."""
    week(store, kitchen)
    state = oil_state.vat_states(store, kitchen, TODAY)["alder"]
    crossing = replace(state.crossing, days_n=days, tomorrow_frac=0.0)
    states = {"alder": replace(state, crossing=crossing)}
    view = vat.vat_view(store, kitchen, "alder", TODAY, states=states)
    assert view.advice == "keep"
    assert said in view.text and left_out not in view.text


def test_what_a_habit_buys_is_no_figure_beyond_the_days_simulated(store, kitchen):
    """More than 90 days is said, never 91 days."""
    week(store, kitchen)
    rows = oil_money.changes_view(kitchen, states_of(store, kitchen), "dogwood").changes
    assert any(row.days_n > 90 for row in rows)
    assert {row.days for row in rows if row.days_n > 90} == {"more than 90 days"}
    assert all(row.days == f"{row.days_n:g} days" or row.days_n > 90 for row in rows)


def test_a_vat_nobody_told_of_says_default(store, kitchen):
    """No readings: default figures, the advice is unknown, in words too."""
    view = vat.vat_view(store, kitchen, "cedar", TODAY)
    assert (view.default, view.advice) == (True, "unknown")
    assert view.text.startswith("Unknown")


def test_a_reading_after_the_top_up_is_put_back(store, kitchen):
    """Told as after, the same number stands for a higher peak."""
    tell(store, kitchen, 24, what="discard")
    tell(store, kitchen, 25, what="top_up", amount="16 lb")
    for other in (store,):
        tell(other, kitchen, 25, what="reading", amount="6.5", after="1")
    after = oil_state.vat_states(store, kitchen, TODAY)["alder"].belief.growth[0]
    tell(store, kitchen, 25, what="reading", amount="6.5")
    assert oil_state.vat_states(store, kitchen, TODAY)["alder"].belief.growth[0] < after


@pytest.mark.parametrize(
    "bad",
    [
        {"what": "reading", "amount": "140"},
        {"what": "reading", "amount": "-3"},
        {"what": "reading", "amount": "dark"},
        {"what": "top_up", "amount": "-5 lb"},
        {"what": "top_up", "amount": "3500 F"},
        {"what": "top_up", "amount": "900 lb"},
        {"what": "polish"},
        {"what": "discard", "vat": "nobody"},
    ],
)
def test_nonsense_is_refused_and_its_text_is_kept(store, kitchen, bad):
    """Nothing is lost: raw text and reason stand in the records; the outlook does not move."""
    with pytest.raises(InputError):
        tell(store, kitchen, 25, **bad)
    kept = list(store.facts(OilRefused))
    assert kept[-1].fact.raw["what"] == bad["what"]
    assert kept[-1].fact.reason
    assert not list(store.facts(OilDone))


def test_the_same_tap_is_kept_once_and_cartons_are_pounds(store, kitchen):
    """A key sent again is one entry; a carton is 35 lb; a bare number is in the kitchen's unit."""
    values = {"vat": "alder", "what": "top_up", "amount": "1 carton"}
    first, again = vat.tell_oil(store, kitchen, values, "k1"), vat.tell_oil(store, kitchen, values, "k1")
    assert (first[1], again[1]) == (True, False)
    assert first[0].fact.mass_kg == pytest.approx(35 * LB)
    assert vat.tell_oil(store, kitchen, {**values, "amount": "5"}, "k2")[0].fact.mass_kg == pytest.approx(
        5 * LB
    )


def test_limits_tighten_freely_and_loosen_only_with_a_name(store, kitchen):
    """The place's figure holds; looser without name and reason is refused; never above the place's."""
    assert oil_limit_here(store, kitchen)[0] == 24.0
    vat.set_limit(store, kitchen, 22.0, "", "")
    with pytest.raises(InputError):
        vat.set_limit(store, kitchen, 25.0, "", "")
    vat.set_limit(store, kitchen, 27.0, "R. Ode", "new oil, trial of a month")
    assert oil_limit_here(store, kitchen)[0] == 27.0
    there = replace(kitchen, site=replace(kitchen.site, jurisdiction="spain"))
    assert oil_limit_here(store, there)[0] == 25.0
    write(store, OilLimitSet(place="germany", house_pct=30.0, who="R. Ode", reason="as older stores have it"))
    assert oil_limit_here(store, kitchen)[0] == 24.0
    yesterday = now().date() - dt.timedelta(days=2)
    assert oil_limit_here(store, kitchen, yesterday)[0] == 24.0
    assert oil_limit_here(store, kitchen, yesterday)[1].say(str).startswith("no national figure")


def test_cost_order_filling_and_rotation(store, kitchen):
    """Log gaps come first, uptake stands apart, cartons cover changes and safety, older oil never goes into
    fresher.
    """
    week(store, kitchen)
    told = oil_money.cost_view(store, kitchen, 150.0, TODAY)
    assert len(told.log_gaps) == 3
    assert told.uptake_money == pytest.approx(27 * LB / 10 * 2.4, abs=0.01)
    order = oil_moves.order_view(store, kitchen, 7, 1.0, TODAY)
    assert order.cartons >= order.safety_cartons - 1
    assert oil_moves.order_view(store, kitchen, 7, 50.0, TODAY).cartons == 0
    fill = oil_moves.fill_view(kitchen, "alder")
    assert (fill.mass, fill.cartons) == ("45.0 lb", 2)
    assert fill.pour == "cartons of 35.0 lb: 1 whole and 10.0 lb of the next", "two whole ones fill too much"
    states = oil_state.vat_states(store, kitchen, TODAY)
    assert any(
        "Older oil" in note for note in oil_moves.rotation_notes(kitchen, states["alder"], states["cedar"])
    )
    assert not any(
        "Older oil" in note for note in oil_moves.rotation_notes(kitchen, states["cedar"], states["alder"])
    )


def states_of(store, kitchen):
    """Every vat today."""
    return oil_state.vat_states(store, kitchen, TODAY)


def test_advice_in_money(store, kitchen):
    """More top-up and a filter turn have their price, the filter's effect is not claimed before the log shows
    it, a change has its worth.
    """
    week(store, kitchen)
    view = oil_money.changes_view(kitchen, states_of(store, kitchen), "alder")
    now_row, more, cooler, turn = view.changes
    assert not view.filter_told
    assert "does not show yet" in turn.what
    assert more.money != now_row.money
    assert cooler.saves_money > 0
    assert 0 <= view.left_money <= view.change_money == pytest.approx(45 * LB * 2.4, abs=0.01)
    spanish = oil_money.changes_view(kitchen, states_of(store, kitchen), "alder", translator("es"))
    assert "no muestra" in spanish.changes[3].what


def test_a_filter_effect_in_the_log_is_learned(store, kitchen):
    """Days with three turns gain half of what days with none gain: the log says so and the row uses it."""
    level = 4.0
    tell(store, kitchen, 1, what="discard")
    for n, day in enumerate(range(2, 14)):
        turns = 3 * (n % 2)
        for k in range(turns):
            vat.tell_oil(
                store,
                kitchen,
                {"vat": "alder", "what": "filter"},
                f"f{day}{k}",
                at=moment_of(kitchen.trade, dt.date(2026, 11, day), 60_000.0 + k),
            )
        level += 2.0 - 0.3 * turns
        tell(store, kitchen, day, what="reading", amount=f"{level:.2f}")
    state = oil_state.vat_states(store, kitchen, dt.date(2026, 11, 13))
    view = oil_money.changes_view(kitchen, state, "alder")
    assert view.filter_told
    assert view.filter_points == pytest.approx(0.3, abs=0.05)
    assert view.changes[3].days_n > view.changes[0].days_n


def test_oil_that_stayed_cold_does_not_age(store, kitchen):
    """A day on which the board dropped only in another fryer adds nothing to this vat's outlook."""
    week(store, kitchen)
    before = states_of(store, kitchen)["alder"].belief.growth[0]
    for day in (22, 23):
        hall.write(store, tap(dt.date(2026, 11, day), f"c{day}", fryer="cedar", pieces_count=24))
    after = states_of(store, kitchen)["alder"].belief.growth[0]
    assert after > before


def test_the_bill_takes_the_board_and_names_causes(store, kitchen):
    """Raw product from the drops; too much and too little top-up and an early change are named, after the
    gaps.
    """
    with pytest.raises(InputError, match="empty"):
        oil_money.cost_view(store, kitchen, 150.0, TODAY)
    tell(store, kitchen, 24, what="top_up", amount="1 lb")
    with pytest.raises(InputError, match="dropped on the board"):
        oil_money.cost_view(store, kitchen, today=TODAY)
    for day in (24, 25):
        for n in range(10):
            hall.write(store, tap(dt.date(2026, 11, day), f"d{day}{n}"))
    view = oil_money.cost_view(store, kitchen, today=TODAY)
    assert view.per_raw_lb_money == pytest.approx(view.day_money / (10 * 4 * 2.3), abs=5.1e-5)
    assert any("2026-11-25" in gap for gap in view.log_gaps)
    assert any("not all of it is entered" in cause for cause in view.causes)
    tell(store, kitchen, 25, what="top_up", amount="40 lb")
    tell(store, kitchen, 25, what="reading", amount="12")
    tell(store, kitchen, 25, what="discard")
    view = oil_money.cost_view(store, kitchen, today=TODAY)
    assert "early" in view.causes[0]
    assert "short draining" in view.causes[1]
    (row,) = oil_money.site_rows([("a", store, kitchen)], TODAY)
    assert row.per_hundred_n == view.per_hundred_n


def test_filling_heights_and_a_vat_that_is_overfilled(kitchen):
    """With surface and upper line known the cold height is told; more oil than stays under the line is warned
    of; solid shortening has its melt.
    """
    from dataclasses import replace

    view = oil_moves.fill_view(kitchen, "alder")
    assert "cold" in view.heights
    assert not view.warning
    low = replace(kitchen.fryer("alder"), upper_line_m=0.2, solid_fat=True)
    other = replace(kitchen, fryers=tuple(low if f.key == "alder" else f for f in kitchen.fryers))
    view = oil_moves.fill_view(other, "alder")
    assert "boils over" in view.warning
    assert "kWh" in view.melt
    assert oil_moves.fill_view(kitchen, "cedar").heights == ""


def test_worn_oil_moves_down_only_where_nothing_speaks_against_it(store, kitchen):
    """Into a vat about to be changed with the same proteins it is worth money; into a fresher or another one
    it is not offered; the map prints.
    """
    week(store, kitchen)
    for day in range(12, 26):
        vat.tell_oil(
            store,
            kitchen,
            {"vat": "birch", "what": "reading", "amount": f"{10 + day - 12}"},
            at=moment_of(kitchen.trade, dt.date(2026, 11, day), 79_000.0),
        )
    view = oil_money.changes_view(kitchen, states_of(store, kitchen), "alder")
    old = states_of(store, kitchen)["alder"].belief.level[0]
    assert old < 24
    assert [m.into for m in view.moves] == ["birch"]
    assert view.moves[0].saves_money >= 0
    rotation = oil_moves.rotation_view(kitchen, states_of(store, kitchen), translator("es"))
    assert len(rotation.moves) == 12
    assert any("proteínas" in n or "aceite" in n for m in rotation.moves for n in m.notes)
    assert oil_moves.oil_map_pdf(store, kitchen, "es", translator("es")).startswith(b"%PDF")


def test_acid_value_and_colour_are_kept_beside(store, kitchen):
    """Shown as last told; they do not move the outlook; nonsense is refused."""
    tell(store, kitchen, 24, what="acid", amount="1,8")
    tell(store, kitchen, 25, what="colour", amount="6")
    view = vat.vat_view(store, kitchen, "alder", TODAY)
    assert (view.acid_n, view.colour_n) == (1.8, 6.0)
    assert view.readings_count == 0
    for amount in ("-1", "acid", "", "900"):
        with pytest.raises(InputError):
            tell(store, kitchen, 25, what="acid", amount=amount)


def test_an_entry_can_be_told_for_an_earlier_day(store, kitchen):
    """A forgotten day is told later and counts on its own day, before what was entered since; a day to come,
    one too long ago or none at all is refused in its field.
    """
    today = vat.business_time(kitchen.trade, now())[0]
    first, second = today - dt.timedelta(days=6), today - dt.timedelta(days=3)
    oil = {"vat": "alder"}
    vat.tell_oil(store, kitchen, {**oil, "what": "reading", "amount": "9", "date": second.isoformat()})
    late, _ = vat.tell_oil(store, kitchen, {**oil, "what": "fill", "date": first.isoformat()})
    assert (late.fact.date, late.happened_at.date() >= first) == (first, True)
    state = oil_state.vat_states(store, kitchen)["alder"]
    assert [e.what for e in state.events] == ["fill", "reading"]
    assert (state.age_days_count, state.last_reading_pct) == (6, 9.0)
    for bad in ("yesterday", (today + dt.timedelta(days=1)).isoformat(), "2019-01-01"):
        with pytest.raises(InputError) as refused:
            vat.tell_oil(store, kitchen, {**oil, "what": "filter", "date": bad})
        assert refused.value.field == "date"


def test_a_reading_of_the_new_oil_is_no_peak_of_the_old(store, kitchen):
    """Read after a change on the same day: it is the last reading, and says nothing of the growth before."""
    week(store, kitchen)
    before = states_of(store, kitchen)["alder"].belief.growth[0]
    tell(store, kitchen, 25, what="discard")
    tell(store, kitchen, 25, what="reading", amount="4.5")
    state = states_of(store, kitchen)["alder"]
    assert state.last_reading_pct == 4.5
    assert state.belief.growth[0] == pytest.approx(before, abs=0.6)


def test_fat_from_the_food_thins_the_oil(store, kitchen):
    """Chicken fat of the loads counts as fresh oil: with many loads the level stands lower, and what is said
    to be topped up does not change.
    """
    week(store, kitchen)
    before = states_of(store, kitchen)["alder"]
    for day in range(17, 26):
        for n in range(12):
            hall.write(store, tap(dt.date(2026, 11, day), f"f{day}{n}", pieces_count=32))
    after = states_of(store, kitchen)["alder"]
    assert after.share_frac > before.share_frac + 0.005
    assert after.top_up_kg == pytest.approx(before.top_up_kg)


def check_of(**values):
    """A check of the meter as typed."""
    told = {"low_known": "4", "low_read": "6", "high_known": "22", "high_read": "24.2", "who": "Kim"}
    return meter.CheckTyped(**{**told, **values})


def test_a_meter_is_checked_on_two_oils_when_it_pays(store, kitchen):
    """Unchecked it is asked for, with days and money; checked, the outlook moves by what it was off, the
    doubt is split, and it is not asked for again.
    """
    week(store, kitchen)
    rates = oil_money.rates_of(kitchen.trade)
    states = states_of(store, kitchen)
    asked = meter.meter_view(store, kitchen, states, rates)
    assert "Check the meter" in asked["ask"]
    assert asked["worth"]["days_n"] > 0
    split = vat.vat_view(store, kitchen, "alder", TODAY, states=states)
    assert split.meter_days_n > 0
    kept, new = meter.keep_check(store, kitchen, check_of(), "k1")
    assert new and not meter.keep_check(store, kitchen, check_of(), "k1")[1]
    write(store, replace(kept.fact, date=dt.date(2026, 11, 20), key="k2"))
    after = states_of(store, kitchen)
    assert after["alder"].belief.level[0] < states["alder"].belief.level[0] - 1.0
    view = meter.meter_view(store, kitchen, after, rates, translator("es"))
    assert view["worth"]["days_n"] < asked["worth"]["days_n"]
    assert "+2.0" in view["last"]


@pytest.mark.parametrize(
    ("typed", "field"),
    [
        ({"low_known": "dark"}, "low_known"),
        ({"high_known": "60"}, "high_known"),
        ({"high_known": "9"}, "high_known"),
        ({"low_read": "15"}, "low_read"),
        ({"high_read": "9"}, "high_read"),
        ({"low_read": "-1"}, "low_read"),
    ],
)
def test_a_check_that_cannot_be_is_refused_in_its_field(store, kitchen, typed, field):
    """No number, no worn oil, two oils alike, a meter too far off to be used."""
    with pytest.raises(InputError) as refused:
        meter.keep_check(store, kitchen, check_of(**typed))
    assert refused.value.field == field
    assert not list(store.facts(MeterChecked))


def test_a_vat_is_learned_from_its_last_year_however_long_its_log(tmp_path, kitchen):
    """Four years of fillings: what is believed is as from the last fifteen months, and so is what is read."""
    day, told = TODAY, []
    stores = [Store.file(tmp_path / f"{n}.db", now) for n in range(2)]
    for n, days in enumerate((1460, 455)):
        with stores[n].writing():
            for back in range(days, 0, -1):
                what = "discard" if back % 10 == 5 else "reading" if back % 2 else "top_up"
                date = day - dt.timedelta(days=back)
                fact = OilDone(vat="alder", what=what, raw="", who="", how="meter", key=f"{back}", date=date)
                if what == "reading":
                    fact = replace(fact, reading_pct=6.0 + 1.5 * ((5 - back) % 10), peak=True)
                elif what == "top_up":
                    fact = replace(fact, mass_kg=1.4)
                write(stores[n], fact, moment_of(kitchen.trade, date, 79_000.0))
        told.append(oil_state.vat_states(stores[n], kitchen, day)["alder"])
    long, short = told
    assert len(long.events) == len(short.events) < 400
    assert long.belief.level == short.belief.level and long.crossing == short.crossing
