"""Loads packed at once say what each load says alone."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import numpy as np
import pytest

from frywright.design import loads
from frywright.design.loads import (
    FEW,
    Loads,
    highest_pressure,
    late_spans,
    lifts,
    oils_left_k,
    spans_of,
    tracer_margins,
)
from frywright.design.proof import (
    FACTORS,
    Spread,
    base_pieces,
    close_late,
    cores_at_lift_c,
    draw,
    oil_left_k,
    prove,
    question,
    weights_of,
)
from frywright.design.proof import loads_of as loads_under
from frywright.design.search import WORST, Goals, Sizer
from frywright.model.errors import InputError
from frywright.model.fryer import ClockStyle
from frywright.model.program import LidState, Stage
from frywright.physics.engine import march
from frywright.physics.inputs import ROUTINE, SCAN
from frywright.physics.lift import lift_of
from frywright.physics.pack import pack
from frywright.physics.plan import make_plan, spans
from frywright.physics.solve import most_steps, run
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.margin import Curves, margin_k, margins_k
from frywright.verdicts.place import place_named

WIDE = Spread(altitude_m=(-100.0, 1500.0), late_lid_s=(-20.0, 60.0))
NAMES = ("bone-in alder", "bone-in cedar", "tenders cedar")


def loads_of(kitchen, name: str, count: int):
    """Loads of a demo program under drawn conditions, and the rows and weights they were drawn with."""
    plan = replace(make_plan(kitchen, kitchen.program(name)), rest_s=1.0)
    rows = draw(WIDE, count, 5)
    rows[0, FACTORS.index("altitude_m")] = 0.0
    weights = weights_of(plan, rows, 5)
    at = dict(zip(FACTORS, rows.T, strict=True))
    late = late_spans(plan, at["late_lid_s"], close_late)
    start = np.full(count, plan.oil_start_c)
    made = Loads(plan=plan, base=base_pieces(plan), at=at, weights=weights, oil_start_c=start, spans=late)
    return made, rows, weights


@pytest.mark.parametrize("name", NAMES)
def test_packed_at_once_is_packed_one_by_one(kitchen, name):
    """Every number that the march reads, to rounding: pieces, vats, spans, steps allowed."""
    made, rows, weights = loads_of(kitchen, name, 24)
    at_once = made.packed(slice(0, 24), ROUTINE)
    cooks = [question(made.plan, row, w) for row, w in zip(rows, weights, strict=True)]
    alone = pack(cooks, ROUTINE, [most_steps(cook, ROUTINE) for cook in cooks])
    for part in ("piece", "cook", "span"):
        assert getattr(at_once, part) == pytest.approx(getattr(alone, part), rel=1e-12, abs=1e-12), part
    for part in ("first_span", "span_count", "bone", "table", "table_count"):
        assert np.array_equal(getattr(at_once, part), getattr(alone, part)), part
    assert np.array_equal(at_once.grid[at_once.grid_of], alone.grid[alone.grid_of])
    assert len({tuple(x) for x in made.spans.count[:, None]}) == (2 if "alder" in name else 1)


@pytest.mark.parametrize("place", ["us_food_code_2022", "uk", "us_fsis_inspected"])
@pytest.mark.parametrize("name", NAMES[:2])
def test_margins_and_pressures_are_those_of_each_load_alone(kitchen, name, place):
    """Margins within 1e-6 K of one load's own history and limit, the highest gauge within 1e-3 Pa."""
    limit = place_named(place).cook_limit()
    made, rows, weights = loads_of(kitchen, name, 24)
    fat = [9.0, 12.0] * (weights.shape[1] // 2) + [12.0] * (weights.shape[1] % 2)
    plan, seen = made.plan, 0
    for part, done in made.march(ROUTINE):
        found = lifts(made, part, done, np.array(plan.program.clock_s), np.array(plan.runs_on))
        margins = tracer_margins(done, found.earliest_s, limit, 0.7, fat)
        gauge = highest_pressure(done)
        left = oils_left_k(done, found.lift_s, np.array(plan.program.drain_s))
        for k in range(part.stop - part.start):
            cook = question(plan, rows[part][k], weights[part][k])
            raw = run(cook)
            alone = lift_of(plan, cook, raw)
            assert found.lift_s[k] == pytest.approx(alone.lift_s, abs=1e-6)
            assert found.earliest_s[k] == pytest.approx(alone.earliest_s, abs=1e-6)
            cores = raw.core_temp_c[:, -len(fat) :].T
            each = [
                margin_k(raw.time_s, c, alone.earliest_s, limit, 0.7, f)
                for c, f in zip(cores, fat, strict=True)
            ]
            assert margins[k] == pytest.approx(each, abs=1e-6)
            assert gauge[k] == pytest.approx(raw.pressure_pa.max() - cook.vat.atmosphere_pa, abs=1e-3)
            assert left[k] == pytest.approx(oil_left_k(plan, cook, raw), abs=1e-6)
            seen += 1
    assert seen == 24


@pytest.mark.parametrize("name", NAMES)
def test_cores_at_the_lift_are_those_of_each_load_alone(kitchen, name):
    """Of every heavy piece, at the earliest lift, which is before a vent that nobody described."""
    made, rows, weights = loads_of(kitchen, name, 12)
    fryer = made.plan.fryer
    waits = replace(fryer, controller=replace(fryer.controller, clock=ClockStyle.WAITS))
    plan = replace(made.plan, vent_told=False, fryer=waits)
    found, early = cores_at_lift_c(plan, rows, weights, ROUTINE), []
    for row, weight, cores in zip(rows, weights, found, strict=True):
        cook = question(plan, row, weight)
        raw = run(cook)
        lift = lift_of(plan, cook, raw)
        heavy = raw.core_temp_c[:, -weights.shape[1] :].T
        assert cores == pytest.approx([np.interp(lift.earliest_s, raw.time_s, c) for c in heavy], abs=1e-6)
        early.append(lift.earliest_s < lift.lift_s - 1.0)
    assert any(early) == ("alder" in name)


@pytest.mark.parametrize("name", NAMES)
def test_what_follows_the_lift_changes_nothing_before_it(kitchen, name):
    """A proof leaves the rest out: rows, lifts, pressures and oils up to the lift are those of a load that
    rests for 5 s, to the bit.
    """
    made = loads_of(kitchen, name, 16)[0]
    found = []
    for rest_s in (0.0, 5.0):
        plan = replace(made.plan, rest_s=rest_s)
        late = late_spans(plan, made.at["late_lid_s"], close_late)
        loads = replace(made, plan=plan, spans=late)
        for part, done in loads.march(SCAN):
            lift = lifts(loads, part, done, np.array(plan.program.clock_s), np.array(plan.runs_on))
            cook = np.repeat(np.arange(len(done.first_row) - 1), np.diff(done.first_row))
            rows = done.trace[done.trace[:, 0] <= lift.lift_s[cook]]
            found.append((rows, lift.lift_s, lift.earliest_s, oils_left_k(done, lift.lift_s, np.array(60.0))))
            assert (len(rows) == len(done.trace)) == (rest_s == 0.0)
    half = len(found) // 2
    for short, long in zip(found[:half], found[half:], strict=True):
        assert all(np.array_equal(a, b) for a, b in zip(short, long, strict=True))


@pytest.mark.parametrize("hold_s", [0.0, 15.0, 400.0])
def test_margins_of_curves_that_fall_before_their_lift(hold_s):
    """Rising, falling and wavering curves, a lift between rows and on a row: as one by one."""
    rng = np.random.default_rng(3)
    limit = CookLimit(
        rule="r",
        kind="instant",
        edition="e",
        title="t",
        valid_from=place_named("us_food_code_2022").cook_limit().valid_from,
        applies_to=("poultry",),
        source="s",
        level_c=70.0,
        hold_s=hold_s,
    )
    times, cores, first, lift = [], [], [0], []
    for _ in range(60):
        count = int(rng.integers(5, 40))
        time = np.concatenate([[0.0], np.cumsum(rng.uniform(0.5, 20.0, count - 1))])
        summit = rng.uniform(0.3, 1.4) * time[-1]
        core = 80.0 - 70.0 * np.abs(time - summit)[:, None] / summit * np.array([1.0, 0.8])
        times.append(time)
        cores.append(core)
        first.append(first[-1] + count)
        lift.append(rng.choice([time[-2], time[-1], 0.9 * time[-1]]))
    curves = Curves(np.concatenate(times), np.concatenate(cores), np.array(first), np.array(lift))
    found = margins_k(curves, limit, 0.5, [12.0, 12.0])
    for k, (time, core) in enumerate(zip(times, cores, strict=True)):
        each = [margin_k(time, core[:, i], lift[k], limit, 0.5) for i in range(2)]
        assert found[k] == pytest.approx(each, abs=1e-6)


def test_loads_out_of_range_are_refused(kitchen):
    """A column past its range is refused as one load's value is, with its name."""
    made, _, weights = loads_of(kitchen, NAMES[0], 8)
    with pytest.raises(InputError, match="half thickness"):
        replace(made, weights=weights * 1e6).packed(slice(0, 8), ROUTINE)


def test_spans_picked_out_are_those_of_each(kitchen):
    """In another order and one of them twice: rows, counts and vents as if told anew."""
    told = [spans(make_plan(kitchen, kitchen.program(name))) for name in NAMES]
    which = np.array([2, 0, 2, 1])
    found, known = spans_of(told).at(which), spans_of([told[i] for i in which])
    for part in ("rows", "first", "count", "vent"):
        assert np.array_equal(getattr(found, part), getattr(known, part)), part


def test_programs_sized_together_are_sized_as_each_alone(kitchen):
    """Unlike stages, drain times and first set points in one batch: margins by load and oil, to the bit."""
    old = kitchen.program("bone-in alder").timed()
    short = replace(old, stages=old.stages[1:], drain_s=0.0)
    hot = replace(old, stages=(replace(old.stages[0], set_c=178.0), *old.stages[1:]), drain_s=200.0)
    sizer = Sizer(kitchen, old, place_named("us_food_code_2022").cook_limit(), Goals())
    by, oil = sizer.by_load([old, short, hot])
    for k, program in enumerate((old, short, hot)):
        alone = sizer.by_load([program])
        assert np.array_equal(by[k], alone[0][0])
        assert oil[k] == alone[1][0]
    assert len(np.unique(by.min(axis=(1, 2)))) == 3


def test_a_load_that_builds_no_pressure_needs_no_vent(kitchen):
    """A leaking lid, a program that ends under pressure and no rest: the vent takes no step, also of the last
    load, after which nothing stands. Lifts are those of each load alone, and a proof comes to its end.
    """
    plan = replace(make_plan(kitchen, kitchen.program("bone-in alder")), rest_s=0.0)
    stages = [
        Stage(set_c=165.0, duration_s=40.0),
        Stage(set_c=165.0, lid=LidState.PRESSURE, duration_s=500.0),
    ]
    fryer = replace(plan.fryer, leak_area_m2=5e-3)
    plan = replace(plan, fryer=fryer, program=replace(plan.program, stages=tuple(stages)))
    rows, weights = draw(Spread(), 9, 3), np.ones((9, sum(k.heavy for k in plan.kinds)))
    loads = loads_under(plan, rows, weights)
    ((part, done),) = list(loads.march(ROUTINE))[-1:]
    found = lifts(loads, part, done, np.array(plan.program.clock_s), np.array(plan.runs_on))
    for k, number in enumerate(range(part.start, part.stop)):
        cook = question(plan, rows[number], weights[number])
        alone = lift_of(plan, cook, run(cook))
        assert alone.vent_s == 0.0
        assert found.lift_s[k] == pytest.approx(alone.lift_s, abs=1e-6)
        assert found.earliest_s[k] == pytest.approx(alone.earliest_s, abs=1e-6)
    limit = place_named("us_food_code_2022").cook_limit()
    assert not prove(plan, limit, 1.0, samples=8).full_pressure.any()


def test_few_loads_are_asked_for_once_and_without_threads(kitchen, monkeypatch):
    """A full load that leaves the oil warm is its own answer; threads begin where there is work for them."""
    old = kitchen.program("bone-in alder").timed()
    hot = replace(old, stages=(replace(old.stages[0], set_c=182.0), *old.stages[1:]), drain_s=0.0)
    sizer = Sizer(kitchen, old, place_named("us_food_code_2022").cook_limit(), Goals())
    marched, begun = [], []
    monkeypatch.setattr(loads, "march", lambda p, **how: marched.append(len(p.cook)) or march(p, **how))
    monkeypatch.setattr(loads, "ThreadPoolExecutor", lambda n: begun.append(n) or ThreadPoolExecutor(n))
    by, oil = sizer.by_load([old, hot])
    assert [o == WORST["oil_start_k"] for o in oil] == [True, False]
    assert marched == [2, 5] and not begun, "the full load after a full one of the second program alone"
    many, left = sizer.by_load([old, hot] * FEW)
    assert begun and sum(marched[2:]) == 7 * FEW
    assert np.array_equal(many, np.tile(by, (FEW, 1, 1))) and np.array_equal(left, np.tile(oil, FEW))
