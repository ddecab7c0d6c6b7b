"""The vent and the clock: how long a vent takes, what the clock does meanwhile, when the crew lifts."""

from __future__ import annotations

from dataclasses import replace
from itertools import accumulate

import numpy as np
import pytest

from frywright.model.fryer import ClockStyle
from frywright.model.program import LidState, Stage
from frywright.model.units import PSI
from frywright.physics.fry import simulate, vent_finding
from frywright.physics.inputs import Lid, Span, Until
from frywright.physics.plan import MOST_VENT_S, make_plan, question, spans, timed_load, vent_area_m2
from frywright.physics.solve import Cook, run
from frywright.physics.vent import area_for, stretch_of
from tests.conftest import four_classes, vat

STYLES = tuple(ClockStyle)


def changed(kitchen, program, clock=None, **fryer):
    """The demo kitchen with another clock or vent on the program's fryer."""
    old = kitchen.fryer(program.fryer)
    controller = replace(old.controller, clock=clock or old.controller.clock)
    new = replace(old, controller=controller, **fryer)
    return replace(kitchen, fryers=tuple(new if f.key == old.key else f for f in kitchen.fryers))


def plan_of(kitchen, name, clock=None, units_count=None, stages=None, **fryer):
    program = kitchen.program(name)
    if stages:
        program = replace(program, stages=stages, total_s=None)
    return make_plan(changed(kitchen, program, clock, **fryer), program, units_count=units_count)


@pytest.mark.parametrize("name", ["alder", "birch"])
@pytest.mark.parametrize("told_s", [6.0, 15.0, 25.0, 50.0])
def test_a_timed_vent_gives_the_opening(kitchen, name, told_s):
    """With the opening found from the watch, the simulated full load vents that long to 1 %."""
    fryer = replace(kitchen.fryer(name), vent_s=told_s, vent_area_m2=None)
    known = replace(fryer, vent_area_m2=vent_area_m2(fryer, kitchen.site))
    assert simulate(timed_load(known, kitchen.site)).vent_s == pytest.approx(told_s, rel=0.01)


def test_an_opening_told_is_taken_and_one_beyond_reach_is_the_nearest(kitchen):
    """A described opening is not touched; times no opening reaches give the nearer end."""
    fryer = replace(kitchen.fryer("alder"), vent_area_m2=4e-5, vent_s=30.0)
    assert vent_area_m2(fryer, kitchen.site) == 4e-5
    cook = question(timed_load(fryer, kitchen.site))
    assert area_for(cook, 1e-3) > 9e-4
    assert area_for(cook, 1e4) < 3e-6
    leaking = replace(cook, vat=replace(cook.vat, leak_area_m2=5e-3))
    assert area_for(leaking, 20.0) == pytest.approx(1e-3)


def test_a_vent_ends_at_what_a_person_reads_as_zero(kitchen):
    """The lid opens at the gauge's resolution, 1 psi by default; a finer gauge makes the vent longer."""
    plan = plan_of(kitchen, "bone-in alder")
    assert plan.fryer.zero_gauge_pa == PSI
    usual, finer = (
        simulate(plan_of(kitchen, "bone-in alder", vent_area_m2=2e-5, zero_gauge_pa=zero))
        for zero in (PSI, 0.2 * PSI)
    )
    end = usual.vent_start_s + usual.vent_s
    assert np.interp(end - 1e-3, usual.time_s, usual.gauge_pa) == pytest.approx(PSI, rel=0.05)
    assert finer.vent_s > usual.vent_s + 2.0


def test_without_pressure_all_clocks_give_the_same_history(kitchen):
    """An open program, and a small load under a lid that leaks too much to build a pressure a person reads:
    the same to the last bit.
    """
    bit = 0.05  # of a head
    for name, count in (("bone-in cedar", None), ("bone-in alder", bit), ("bone-in birch", bit)):
        first, *others = (
            simulate(plan_of(kitchen, name, style, count, zero_gauge_pa=3 * PSI, leak_area_m2=2e-3))
            for style in STYLES
        )
        assert first.vent_s == 0.0 and first.vent_start_s is None
        assert first.lift_s == pytest.approx(first.plan.program.clock_s)
        for other in others:
            assert np.array_equal(first.time_s, other.time_s)
            for a, b in zip(first.pieces, other.pieces, strict=True):
                assert np.array_equal(a.core_c, b.core_c)


def test_a_clock_that_runs_on_takes_the_vent_out_of_the_next_stage(kitchen):
    """Counting down or up: lift at the keyed total. Waiting: at the total and the vent."""
    for style in (ClockStyle.LEFT, ClockStyle.ELAPSED):
        history = simulate(plan_of(kitchen, "bone-in alder", style))
        assert history.vent_s > 5.0
        assert history.lift_s == history.earliest_lift_s == pytest.approx(720.0)
    waited = simulate(plan_of(kitchen, "bone-in alder", ClockStyle.WAITS))
    assert waited.lift_s == pytest.approx(720.0 + waited.vent_s)
    assert waited.lift_s - 20.0 <= waited.earliest_lift_s <= waited.lift_s


def test_the_set_point_during_the_vent(kitchen):
    """The controller has gone on to the next stage where its clock runs, and stands in the last one where it
    waits.
    """
    stages = kitchen.program("bone-in alder").stages
    for style in STYLES:
        vent = next(s for s in spans(plan_of(kitchen, "bone-in alder", style)) if s.lid is Lid.VENT)
        assert vent.set_c == (stages[2] if style.runs_on else stages[1]).set_c


def test_a_vent_longer_than_what_is_left_decides_the_lift(kitchen):
    """Stages whose time is over by the end of the vent are left out; the lift is when the vent ends."""
    last = [Stage(set_c=160.0, duration_s=3.0), Stage(set_c=165.0, duration_s=4.0)]
    stages = (Stage(set_c=165.0, lid=LidState.PRESSURE, duration_s=600.0), *last)
    history = simulate(plan_of(kitchen, "bone-in alder", ClockStyle.LEFT, stages=stages))
    end = history.vent_start_s + history.vent_s
    assert end > 607.0
    assert history.lift_s == pytest.approx(end)
    longer = simulate(
        plan_of(
            kitchen, "bone-in alder", ClockStyle.LEFT, stages=(*stages[:2], replace(last[1], duration_s=60.0))
        )
    )
    assert longer.lift_s == pytest.approx(663.0)


def test_a_program_that_ends_under_pressure(kitchen):
    """The clock ends, then comes the vent, then the lift, on every clock."""
    for style in STYLES:
        history = simulate(plan_of(kitchen, "bone-in birch", style))
        assert history.vent_start_s == pytest.approx(history.plan.program.clock_s)
        assert history.lift_s == pytest.approx(history.plan.program.clock_s + history.vent_s)


@pytest.mark.parametrize("style", STYLES)
def test_the_earliest_lift_counts_no_more_vent_than_was_told(kitchen, style):
    """Never told: nothing. Told 10 s with a slow opening: 10 s. Described slow opening: a minute at most."""
    total = kitchen.program("bone-in birch").clock_s
    untold = simulate(plan_of(kitchen, "bone-in birch", style, vent_s=None, vent_area_m2=None))
    assert untold.earliest_lift_s == pytest.approx(total)
    told = simulate(plan_of(kitchen, "bone-in birch", style, vent_s=10.0, vent_area_m2=1.2e-5))
    assert told.vent_s > 30.0
    assert told.earliest_lift_s == pytest.approx(total + 10.0)
    slow = simulate(plan_of(kitchen, "bone-in birch", style, vent_s=None, vent_area_m2=5e-6))
    assert slow.vent_s > MOST_VENT_S
    assert slow.earliest_lift_s == pytest.approx(total + MOST_VENT_S)
    for history in (untold, told, slow):
        for piece in history.pieces:
            assert piece.core_at_lift_c == np.interp(history.earliest_lift_s, history.time_s, piece.core_c)


def test_findings_on_the_vent(kitchen):
    """Never told, too long, or nothing to say; nothing of a program without pressure."""
    untold = plan_of(kitchen, "bone-in alder", vent_s=None, vent_area_m2=None)
    assert vent_finding(untold, 5.0).kind == "vent_unknown"
    assert "gauge reads zero" in vent_finding(untold, 5.0).text
    assert "vent_unknown" in {n.kind for n in simulate(untold).notes}
    slow = plan_of(kitchen, "bone-in alder", vent_s=None, vent_area_m2=5e-6)
    assert "vent_long" in {n.kind for n in simulate(slow).notes}
    assert vent_finding(plan_of(kitchen, "bone-in alder"), 20.0) is None
    told = vent_finding(plan_of(kitchen, "bone-in alder"), 80.0)  # a wetter load than the one that was timed
    assert told.kind == "vent_long" and told.values["vent_s"] == 80.0
    assert vent_finding(plan_of(kitchen, "bone-in alder", vent_s=75.0), 5.0).values["vent_s"] == 75.0
    assert vent_finding(plan_of(kitchen, "bone-in cedar", vent_s=None, vent_area_m2=None), 0.0) is None


def test_a_span_that_ends_on_the_clock():
    """Whatever the span before took, it ends at its time; where that is over it is left out."""
    wait = Span(duration_s=300.0, set_c=150.0, until=Until.OIL_ABOVE, value=171.0)
    heat = vat(oil_start_c=169.0, heater_w=40e3)
    for ends_at_s in (120.0, 0.5):
        later = Span(duration_s=200.0, set_c=165.0, ends_at_s=ends_at_s)
        hot = replace(wait, set_c=175.0)
        cook = Cook(vat=heat, pieces=four_classes(), spans=[hot, later, Span(duration_s=20.0, set_c=165.0)])
        got = run(cook)
        met = got.time_s[got.span == 0].max()
        assert met > 0.5
        assert (got.span == 1).any() == (ends_at_s > 0.5)
        assert got.time_s[-1] == pytest.approx(max(ends_at_s, met) + 20.0)


def test_times_of_a_vent_are_read_from_the_march(kitchen):
    """The stretch under a lid runs from the end of the span before to its own end; None where there is
    none.
    """
    cook = question(plan_of(kitchen, "bone-in alder"))
    got = run(cook)
    start, end = stretch_of(got, cook, Lid.VENT)
    ends = list(accumulate(kitchen.program("bone-in alder").durations_s()))
    assert start == pytest.approx(ends[1])
    assert end > start
    assert stretch_of(run(question(plan_of(kitchen, "bone-in cedar"))), cook, Lid.VENT) is None
