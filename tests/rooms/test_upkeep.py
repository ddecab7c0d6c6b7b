"""Care that is due by counters, who may tick it off, first-day figures kept for life."""

from __future__ import annotations

import datetime as dt

import pytest

from frywright.ledger.facts.care import CareDone, FirstDayTimed
from frywright.model.business_day import moment_of
from frywright.model.errors import InputError
from frywright.rooms import hall
from frywright.rooms.care import upkeep, vat
from frywright.rooms.kitchen import remembered_kitchen
from frywright.voice.tongue import translator
from tests.rooms.taps import tap

TODAY = dt.date(2026, 11, 25)


@pytest.fixture
def kitchen(store):
    return remembered_kitchen(store)


def done(store, kitchen, task, date, **more):
    """A task of Alder done by the lead."""
    values = {"fryer": "alder", "task": task, "who": "Ana Lund", "role": "lead", "date": date, **more}
    return upkeep.tick(store, kitchen, values, TODAY)


def row(store, kitchen, task, fryer="alder", **more):
    """The row of a task."""
    return next(
        r for r in upkeep.care_rows(store, kitchen, today=TODAY, **more) if (r.fryer, r.task) == (fryer, task)
    )


def drops(store, count, day):
    """Loads dropped in Alder on a day, as the board records them."""
    for n in range(count):
        hall.write(store, tap(dt.date(2026, 11, day), f"{day}-{n}"))


def test_the_earliest_counter_decides(store, kitchen):
    """450 loads or 30 days: forty loads a day make it ten days; without loads the calendar decides; no record
    is unknown, not due.
    """
    assert row(store, kitchen, "lid_seal").state == "unknown"
    done(store, kitchen, "lid_seal", "2026-11-21")
    assert row(store, kitchen, "lid_seal").days == 26
    for day in (22, 23, 24, 25):
        drops(store, 40, day)
    found = row(store, kitchen, "lid_seal")
    assert (found.days, found.counter) == (7, "loads")
    assert found.parts == "Lid seal, shelf B2"
    assert found.date == "2026-12-02"
    assert "sello" in row(store, kitchen, "lid_seal", language="es", tr=translator("es")).title


def test_a_filter_turn_told_in_two_places_counts_once(store, kitchen):
    """The board's tap and the oil log's button on one day are one turn; two in the log are two."""
    hall.write(store, tap(dt.date(2026, 11, 24), "x", what="filter"))
    for n in range(2):
        moment = moment_of(kitchen.trade, dt.date(2026, 11, 24), 70_000.0 + n)
        vat.tell_oil(store, kitchen, {"vat": "alder", "what": "filter"}, at=moment)
    assert upkeep.worked(store, dt.date(2026, 11, 1)).turns == (("alder", dt.date(2026, 11, 24)),) * 2


def test_tasks_fit_the_fryer_and_the_kitchens_own_stand_first(kitchen):
    """An open electric fryer has neither lid nor gas; a kitchen's own interval replaces the calendar of
    common practice.
    """
    cedar = {t.key: t for t in upkeep.tasks_for(kitchen, kitchen.fryer("cedar"))}
    birch = {t.key: t for t in upkeep.tasks_for(kitchen, kitchen.fryer("birch"))}
    assert not {"lid_seal", "yearly_relief", "yearly_gas"} & set(cedar)
    assert {"lid_seal", "yearly_relief", "yearly_gas"} <= set(birch)
    assert birch["lid_seal"].loads_count == 450
    assert "heat_surfaces" in cedar


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"role": "crew", "task": "suppression"}, "licensed or certified contractor: nobody else"),
        ({"role": "licensed", "task": "suppression"}, "report or tag number"),
        ({"role": "lead", "task": "dancing"}, "one of"),
        ({"role": "lead", "task": "hoses", "who": ""}, "name of the person"),
        ({"role": "lead", "task": "hoses", "date": "2026-11-26"}, "today or earlier"),
        ({"role": "lead", "task": "hoses", "date": "yesterday"}, "a day such as"),
    ],
)
def test_what_is_refused(store, kitchen, values, words):
    """Contractors' work is not ticked off by crew, nor without its report; nobody unnamed, no day to come."""
    with pytest.raises(InputError, match=words):
        done(store, kitchen, values.pop("task"), values.pop("date", "2026-11-25"), **values)
    assert not store.current_facts(CareDone)


def test_the_calendar_holds_what_has_a_day(store, kitchen):
    """Only tasks with a record are events; contractors' work says who does it."""
    done(store, kitchen, "suppression", "2026-06-01", role="licensed", note="tag 5521")
    text = upkeep.calendar_text(store, kitchen, TODAY)
    assert text.count("BEGIN:VEVENT") == 1
    assert "DTSTART;VALUE=DATE:20261130" in text
    assert "licensed" in text


def test_the_first_day_is_kept_for_life(store, kitchen):
    """Changed only with a name and a reason, and then superseded; later figures are compared with it."""
    told = {"fryer": "alder", "figure": "heat_up", "time": "15:00"}
    upkeep.tell_figure(store, kitchen, told, first=True)
    with pytest.raises(InputError, match="name and a reason"):
        upkeep.tell_figure(store, kitchen, {**told, "time": "19:00"}, first=True)
    upkeep.tell_figure(store, kitchen, {**told, "time": "20:00"})
    (found,) = upkeep.wear_rows(store, kitchen)
    assert found.outcome == "fails"
    assert found.ratio_n == 1.33
    assert "208 V" in found.text
    upkeep.tell_figure(
        store, kitchen, {**told, "time": "16:00", "who": "Ana", "reason": "wrong marks"}, first=True
    )
    assert len(list(store.facts(FirstDayTimed))) == 2
    assert upkeep.wear_rows(store, kitchen)[0].first == "16:00"
    for bad in (
        {"time": "0:00"},
        {"time": "5:00:00"},
        {"time": "soon"},
        {"figure": "mood"},
        {"fryer": "elm"},
    ):
        with pytest.raises(InputError):
            upkeep.tell_figure(store, kitchen, {**told, **bad})


def test_a_task_takes_as_long_as_its_calendar_says(store, kitchen):
    """Half an hour to time a heat-up, ten minutes to look over the hoses: the minutes of the calendar."""
    minutes = {r.task: r.takes_min for r in upkeep.care_rows(store, kitchen, today=TODAY)}
    assert (minutes["heat_up"], minutes["hoses"]) == (30, 10)


@pytest.mark.parametrize("time", ["0:03", "1:59"])
def test_a_heat_up_faster_than_any_vat_is_a_slip_of_the_watch(store, kitchen, time):
    """Three seconds are refused with what to do, and nothing is kept for life."""
    with pytest.raises(InputError, match="look at the watch"):
        upkeep.tell_figure(store, kitchen, {"fryer": "alder", "figure": "heat_up", "time": time}, first=True)
    assert upkeep.first_day(store) == {}


HEAT = {"thermometer": "Ref 2", "set_temp": "340", "before_temp": "337"}


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"thermometer": ""}, "reference thermometer"),
        ({"set_temp": ""}, "set point"),
        ({"set_temp": "34"}, "176 °F"),
        ({"before_temp": ""}, "read before"),
        ({"before_temp": "170"}, "look at the thermometer"),
        ({"before_temp": "330"}, "enter the offset"),
        ({"before_temp": "330", "after_temp": "346"}, "read after"),
        ({"after_temp": "warm"}, "read after"),
    ],
)
def test_a_calibration_is_not_done_without_its_figures(store, kitchen, changes, said):
    """Missing, impossible, or still off the set point: refused with what to do, and nothing is kept."""
    with pytest.raises(InputError) as refused:
        done(store, kitchen, "calibration_cycles", TODAY.isoformat(), **{**HEAT, **changes})
    assert said in refused.value.say(str, "us")
    assert row(store, kitchen, "calibration_cycles").state == "unknown"


def test_a_calibration_keeps_its_figures_and_other_tasks_ask_none(store, kitchen):
    """Within 2 K untouched, or put right: kept in degC; the lid seal has none."""
    kept = done(store, kitchen, "calibration_cycles", TODAY.isoformat(), **HEAT).fact
    assert (round(kept.set_c, 2), round(kept.before_c, 2), kept.after_c) == (171.11, 169.44, None)
    adjusted = {**HEAT, "before_temp": "320", "after_temp": "340"}
    right = done(store, kitchen, "calibration_cycles", TODAY.isoformat(), **adjusted).fact
    assert (round(right.before_c), round(right.after_c, 2), right.thermometer) == (160, 171.11, "Ref 2")
    seal = done(store, kitchen, "lid_seal", TODAY.isoformat()).fact
    assert seal.set_c is seal.thermometer is None
    assert {t.key for t in upkeep.tasks_for(kitchen, kitchen.fryer("alder")) if t.asks} == {
        "calibration_cycles",
        "calibration_formal",
    }
