"""Sites, setbacks, wear, calendars and drills at their edges; figures by hand and by other laws."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace
from math import exp, inf
from types import SimpleNamespace

import numpy as np
import pytest

from frywright.care import acceptance
from frywright.care.acceptance import reckoned_s
from frywright.care.commissioning import Plate, SiteFacts, altitude_share, survey
from frywright.care.counters import Use, calendar, due
from frywright.care.drills import Change, _changes, _coldest, _mixed, _stages, _values, _worst
from frywright.care.energy import Start, energy_day, heat_up, idle_w, setback, start_times
from frywright.care.lid_drills import lid_drills
from frywright.care.wear import wear
from frywright.catalog import load
from frywright.model.care import Task
from frywright.model.errors import InputError
from frywright.model.findings import Outcome
from frywright.model.program import LidState, Program, Stage
from frywright.model.units import INCH

OIL = load.oils()["canola"]
OPEN, SHUT = LidState.OPEN, LidState.PRESSURE
ELECTRIC = Plate(fuel="electric", power_w=12_000.0, volts_n=240.0, phases_count=1)
GAS = Plate(fuel="gas", power_w=35e3, gas="natural")
YES, NO, UNKNOWN = Outcome.MEETS, Outcome.FAILS, Outcome.UNKNOWN


def points(plate, **site):
    return {p.name: p for p in survey(plate, SiteFacts(**site))}


@pytest.mark.parametrize(
    ("plate", "site", "name", "outcome", "values"),
    [
        (ELECTRIC, {}, "voltage", UNKNOWN, {}),
        (
            ELECTRIC,
            {"volts_n": 228.0},
            "voltage",
            YES,
            {"volts": 228.0, "plate": 240.0, "share_frac": 0.9025, "longer": 1.11},
        ),
        (ELECTRIC, {"volts_n": 227.9}, "voltage", NO, None),
        (ELECTRIC, {"volts_n": 252.0}, "voltage", YES, None),
        (ELECTRIC, {"volts_n": 252.1}, "voltage", NO, None),
        (ELECTRIC, {}, "breaker", UNKNOWN, {"amps": 50.0, "least": 62.5}),
        (ELECTRIC, {"breaker_amps_n": 62.5}, "breaker", YES, None),
        (ELECTRIC, {"breaker_amps_n": 62.4}, "breaker", NO, None),
        (ELECTRIC, {"phases_count": 1}, "phase", YES, {"phases": 1.0}),
        (ELECTRIC, {"phases_count": 3}, "phase", NO, None),
        (ELECTRIC, {"flame_distance_m": 16 * INCH}, "clearance", YES, {"least_m": 16 * INCH}),
        (ELECTRIC, {"flame_distance_m": 15.9 * INCH}, "clearance", NO, None),
        (ELECTRIC, {"flame_distance_m": 8 * INCH, "baffle": True}, "clearance", YES, {"least_m": 8 * INCH}),
        (ELECTRIC, {"flame_distance_m": 7.9 * INCH, "baffle": True}, "clearance", NO, None),
        (ELECTRIC, {}, "clearance", UNKNOWN, None),
        (ELECTRIC, {}, "hood", UNKNOWN, {}),
        (ELECTRIC, {"hood_runs": True}, "hood", YES, None),
        (ELECTRIC, {"suppression_covers": False}, "suppression", NO, None),
        (GAS, {}, "gas type", UNKNOWN, {"gas": "natural"}),
        (replace(GAS, gas=""), {"gas": "propane"}, "gas type", NO, {"gas": "nothing"}),
        (GAS, {"gas": "natural"}, "gas type", YES, None),
        (
            GAS,
            {"gas_static_pa": 2600.0, "gas_flowing_pa": 1200.0, "gas_plate_pa": (1200.0, 2600.0)},
            "gas pressure",
            YES,
            {},
        ),
        (
            GAS,
            {"gas_static_pa": 2600.1, "gas_flowing_pa": 1200.0, "gas_plate_pa": (1200.0, 2600.0)},
            "gas pressure",
            NO,
            None,
        ),
        (
            GAS,
            {"gas_static_pa": 2600.0, "gas_flowing_pa": 1199.9, "gas_plate_pa": (1200.0, 2600.0)},
            "gas pressure",
            NO,
            None,
        ),
        (GAS, {"gas_static_pa": 2600.0, "gas_flowing_pa": 1300.0}, "gas pressure", UNKNOWN, None),
        (GAS, {"gas_static_pa": 2600.0, "gas_plate_pa": (1200.0, 2600.0)}, "gas pressure", UNKNOWN, None),
        (GAS, {"altitude_m": 610.0}, "altitude", YES, {"share_frac": 1.0}),
        (GAS, {"altitude_m": 611.0}, "altitude", UNKNOWN, None),
    ],
)
def test_a_point_of_a_site_turns_at_its_edge(plate, site, name, outcome, values):
    """5 % of volts, 125 % of amperes, 16 inches or 8 with a baffle, the plate's range of gas, 2000 ft."""
    found = points(plate, **site)[name]
    assert found.outcome is outcome
    if values is not None:
        assert found.note.values == pytest.approx(values)


def test_a_survey_has_its_points_in_order_and_needs_a_plate():
    assert list(points(ELECTRIC)) == ["voltage", "phase", "breaker", "hood", "suppression", "clearance"]
    assert list(points(GAS))[:3] == ["gas type", "gas pressure", "altitude"]
    assert altitude_share(610.0 + 304.8) == pytest.approx(0.96) and altitude_share(1e6) == 0.0
    for plate in (
        replace(ELECTRIC, volts_n=0.0),
        replace(ELECTRIC, volts_n=1001.0),
        replace(ELECTRIC, phases_count=2),
        replace(ELECTRIC, power_w=0.0),
        replace(GAS, fuel="coal"),
    ):
        with pytest.raises(InputError):
            survey(plate, SiteFacts())
    with pytest.raises(InputError, match="input is missing; it must be the power printed on the plate"):
        survey(replace(ELECTRIC, power_w=0.0), SiteFacts())


def test_a_pause_saves_what_the_cooler_oil_does_not_lose(kitchen):
    """Newton's cooling in steps of ten seconds: how cool, heat on again when, what is saved."""
    fryer = replace(kitchen.fryer("cedar"), loss_w_k=10.0)
    flat = replace(OIL, cp_slope_j_kgk2=0.0)
    heat = fryer.oil_mass_kg * flat.cp_0c_j_kgk + fryer.metal_heat_j_k
    found = setback(fryer, flat, 170.0, 60.0, 3600.0, 20.0)
    cooled = 20.0 + 150.0 * exp(-10.0 * found.on_again_s / heat)
    assert found.coolest_c == pytest.approx(cooled, abs=0.1)
    back = heat * (170.0 - cooled) / (fryer.heater_w - idle_w(fryer, 170.0, 20.0))
    assert found.on_again_s == pytest.approx(3600.0 - back, abs=15.0)
    lost = heat * (170.0 - cooled) + idle_w(fryer, 0.5 * (170.0 + cooled), 20.0) * (3600.0 - found.on_again_s)
    assert found.saved_j == pytest.approx(1500.0 * 3600.0 - lost, rel=0.02)
    held = setback(fryer, flat, 170.0, 165.0, 36000.0, 20.0)
    assert held.coolest_c == 165.0 and held.on_again_s > 35000.0
    assert held.saved_j == pytest.approx(10.0 * 5.0 * 36000.0, rel=0.1)
    for set_c, lowest, pause in ((170.0, 170.0, 60.0), (170.0, 20.0, 60.0), (170.0, 120.0, 0.0)):
        with pytest.raises(InputError, match="between the room"):
            setback(fryer, flat, set_c, lowest, pause, 20.0)


def test_heat_ups_add_up_and_end_at_the_last_temperature_oil_may_have(kitchen):
    """From 40 to 100 and on to 170 takes as long as at once; in one step the mean heat capacity counts."""
    fryer = replace(kitchen.fryer("cedar"), loss_w_k=5.0)
    one, two, whole = (
        heat_up(fryer, OIL, a, b, 20.0) for a, b in ((40.0, 100.0), (100.0, 170.0), (40.0, 170.0))
    )
    assert one.duration_s + two.duration_s == pytest.approx(whole.duration_s, rel=1e-6)
    assert one.energy_j + two.energy_j == pytest.approx(whole.energy_j, rel=1e-6)
    step = heat_up(fryer, OIL, 100.0, 100.5, 20.0)
    takes = fryer.oil_mass_kg * (OIL.cp_0c_j_kgk + OIL.cp_slope_j_kgk2 * 100.25) + fryer.metal_heat_j_k
    assert step.duration_s == pytest.approx(0.5 * takes / (fryer.heater_w - 5.0 * 80.25))
    assert heat_up(fryer, OIL, -10.0, 230.0, 20.0).duration_s > whole.duration_s
    edge = replace(fryer, loss_w_k=fryer.heater_w / 1.02 / 150.0)
    assert heat_up(replace(edge, loss_w_k=0.999 * edge.loss_w_k), OIL, 20.0, 170.0, 20.0).duration_s > 0
    for other, low, high in (
        (edge, 20.0, 170.0),
        (fryer, -10.1, 170.0),
        (fryer, 20.0, 230.1),
        (fryer, 90.0, 90.0),
    ):
        with pytest.raises(InputError):
            heat_up(other, OIL, low, high, 20.0)


def test_starts_wait_for_each_other_under_a_cap():
    """Two heaters of 10 kW that hold at 1 kW: at a cap of 12 kW one after the other, the later ready last."""
    two = [Start(ready_s=3600.0, heat_up_s=600.0, power_w=1e4, idle_w=1e3)] * 2
    assert start_times(two) == [3000.0, 3000.0]
    assert sorted(start_times(two, 12e3)) == [2400.0, 3000.0]
    assert start_times(two, 20e3) == [3000.0, 3000.0]
    later = [replace(two[0], ready_s=4000.0), two[1]]
    assert start_times(later, 12e3) == [3400.0, 2800.0]
    with pytest.raises(InputError) as refused:
        start_times(two, 10.9e3)
    assert refused.value.values == {"least_w": 11e3}
    day = energy_day(36000.0, 100.0, 0.01, 1000.0, 5e5, 0.5, 2e6)
    assert (day.preheat_j, day.idle_j, day.cook_j) == (2e6, 26e6, 100e6) and day.total_j == 128e6


@pytest.mark.parametrize(
    ("values", "ratio", "kind", "outcome"),
    [
        ([114.9] * 4, 1.149, "normal", YES),
        ([115.0] * 4, 1.15, "watch", YES),
        ([129.9] * 4, 1.299, "watch", YES),
        ([130.0] * 4, 1.30, "out", NO),
        ([200.0, 100.0, 101.0, 102.0], 1.01, "normal", YES),
        ([100.0, 101.0], 1.005, "normal", YES),
    ],
)
def test_wear_is_the_middle_of_the_last_three_over_the_first_day(values, ratio, kind, outcome):
    found = wear("vent_down", 100.0, list(range(0, 10 * len(values), 10)), values)
    assert (found.ratio_n, found.note.kind, found.outcome) == (pytest.approx(ratio), kind, outcome)
    assert (found.figure, found.first_s, found.last_s) == ("vent_down", 100.0, pytest.approx(100.0 * ratio))
    assert (found.reaches_days_n == 0.0) is (outcome is NO)


@pytest.mark.parametrize(("a_day", "kind"), [(0.30, "watch"), (0.27, "normal")])
def test_a_figure_that_passes_its_limit_within_sixty_days_is_watched(a_day, kind):
    """From 112 the 130 is 18 away: at 0.30 a day 60 days less a hair, at 0.27 more."""
    days = [0.0, 10.0, 20.0, 30.0]
    values = [112.1 - a_day * (30.0 - d) for d in days]
    found = wear("heat_up", 100.0, days, values)
    assert found.reaches_days_n == pytest.approx(17.9 / a_day) and found.note.kind == kind
    assert wear("heat_up", 100.0, days[1:], values[1:]).reaches_days_n == inf
    fresh = wear("heat_up", None, days, values)
    assert (fresh.note.kind, fresh.first_s, fresh.ratio_n, fresh.reaches_days_n) == (
        "no_first_day",
        0.0,
        0.0,
        inf,
    )
    for wrong in ((100.0, days, values[:3]), (100.0, days[:1], [0.0]), (-1.0, days, values)):
        with pytest.raises(InputError, match="one or more times above 0"):
            wear("heat_up", *wrong)


USE = Use(
    loads_count=390,
    heat_s=3.6e5,
    turns_count=20,
    days_count=12,
    loads_a_day_n=20.0,
    heat_a_day_s=36e3,
    turns_a_day_n=0.0,
)


@pytest.mark.parametrize(
    ("every", "days", "counter"),
    [
        ({"loads_count": 400}, 0.5, "loads"),
        ({"heat_s": 3.96e5}, 1.0, "hours at heat"),
        ({"turns_count": 21}, inf, "filter turns"),
        ({"turns_count": 18}, -2.0, "filter turns"),
        ({"turns_count": 20}, 0.0, "filter turns"),
        ({"days_count": 10}, -2.0, "days"),
        ({"days_count": 13, "loads_count": 400}, 0.5, "loads"),
        ({"days_count": 12, "heat_s": 3.96e5}, 0.0, "days"),
    ],
)
def test_care_is_due_by_the_counter_that_is_first(every, days, counter):
    found = due(Task(key="x", title="X", who="crew", **every), USE)
    assert (found.days_n, found.counter) == (days, counter)


def test_a_calendar_has_each_task_on_its_day_and_none_that_never_comes():
    """Whole days from today, overdue ones today; a moment of the stamp in UTC."""
    tasks = [
        due(Task(key=key, title="A; b", who="lead", **every), USE)
        for key, every in (
            ("soon", {"days_count": 15}),
            ("late", {"days_count": 2}),
            ("never", {"turns_count": 99}),
        )
    ]
    zone = dt.timezone(dt.timedelta(hours=-7))
    now = dt.datetime(2026, 11, 25, 18, 30, 5, tzinfo=zone)
    text = calendar([("Fry 1", t) for t in tasks], dt.date(2026, 11, 25), now)
    lines = text.replace("\r\n ", "").split("\r\n")
    assert lines.count("BEGIN:VEVENT") == lines.count("END:VEVENT") == 2
    assert "UID:Fry-1-soon-20261128@frywright" in lines and "DTSTART;VALUE=DATE:20261128" in lines
    assert "UID:Fry-1-late-20261125@frywright" in lines
    assert lines.count("DTSTAMP:20261126T013005Z") == 2 and "SUMMARY:Fry 1: A\\; b" in lines
    assert "DESCRIPTION:Due by days\\; to be done by: lead." in lines


def program(*stages) -> Program:
    told = tuple(Stage(set_c=165.0, lid=lid, duration_s=length) for lid, length in stages)
    return Program(name="bone in", product="x", fryer="y", stages=told, version=3)


STAGED = program((OPEN, 60.0), (SHUT, 200.0), (SHUT, 100.0), (OPEN, 60.0))


@pytest.mark.parametrize(
    ("change", "stages"),
    [
        ({"early_s": 120.0}, [(OPEN, 60.0), (SHUT, 200.0), (SHUT, 40.0)]),
        ({"early_s": 160.0}, [(OPEN, 60.0), (SHUT, 200.0)]),
        ({"late_s": 90.0}, [(OPEN, 60.0), (OPEN, 90.0), (SHUT, 110.0), (SHUT, 100.0), (OPEN, 60.0)]),
        ({"late_s": 150.0}, [(OPEN, 60.0), (OPEN, 100.0), (SHUT, 100.0), (SHUT, 100.0), (OPEN, 60.0)]),
        ({"never_closed": True}, [(OPEN, 60.0), (OPEN, 200.0), (OPEN, 100.0), (OPEN, 60.0)]),
        ({}, [(OPEN, 60.0), (SHUT, 200.0), (SHUT, 100.0), (OPEN, 60.0)]),
    ],
)
def test_a_slip_changes_the_stages_it_says(change, stages):
    """Lifted early the end is cut off; a lid shut late takes at most half of its stage."""
    made = _stages(STAGED, Change(key="x", text="", why="", trap="reach", **change))
    assert [(s.lid, s.duration_s) for s in made] == stages


def test_slips_that_a_program_cannot_have_are_not_drilled():
    """Lid slips of an open one; two minutes too early of one under five minutes."""
    keys = {c.key for c in _changes(STAGED)}
    assert {"early", "late_lid", "open_lid"} <= keys
    open_keys = {c.key for c in _changes(program((OPEN, 300.1)))}
    assert "early" in open_keys and not {"late_lid", "open_lid"} & open_keys
    assert "early" not in {c.key for c in _changes(program((OPEN, 300.0)))}


def run(core, key="big", browning=4.0, poultry=True):
    """A run of a drill with a core at the lift."""
    piece = SimpleNamespace(
        core_at_lift_c=core,
        browning_n=browning,
        kind=SimpleNamespace(cut=SimpleNamespace(title="Thigh", poultry=poultry)),
    )
    history = SimpleNamespace(
        lift_s=300.0,
        time_s=np.array([0.0, 100.0, 300.0, 400.0]),
        gauge_pa=np.array([0.0, 5e4, 8e4, 0.0]),
        oil_c=np.array([170.0, 150.0, 160.0, 155.0]),
        pieces=[piece],
    )
    plan = SimpleNamespace(
        oil_start_c=171.0,
        product=SimpleNamespace(start_temp_c=3.0),
        program=SimpleNamespace(name="bone in"),
        fryer=SimpleNamespace(name="Alder"),
    )
    change = Change(key=key, text=f"{key} happened.", why="because", trap="reach")
    return SimpleNamespace(piece=piece, history=history, plan=plan, change=change)


def test_a_drill_tells_the_figures_of_its_run():
    found = _values(run(80.0, browning=8.0), run(70.0, browning=2.0))
    assert found == {
        "piece": "Thigh",
        "core_c": 70.0,
        "usual_c": 80.0,
        "less_k": 10.0,
        "brown_frac": 0.25,
        "gauge_pa": 8e4,
        "oil_end_c": 160.0,
        "oil_c": 171.0,
        "start_c": 3.0,
        "program": "bone in",
        "fryer": "Alder",
    }
    hotter = _values(run(80.0, browning=0.5), run(85.0, browning=9.0))
    assert (hotter["less_k"], hotter["brown_frac"]) == (0.0, 1.0)
    assert _values(run(80.0, browning=0.8), run(70.0, browning=0.2))["brown_frac"] == pytest.approx(0.25)
    wedge = SimpleNamespace(core_at_lift_c=60.0, kind=SimpleNamespace(cut=SimpleNamespace(poultry=False)))
    two = SimpleNamespace(pieces=[wedge, run(75.0).piece, run(72.0).piece])
    assert _coldest(two).core_at_lift_c == 72.0


def test_the_rawest_of_three_is_asked_only_where_they_lie_apart():
    """The coldest first, each next at least as far apart as a probe tells; two slips at once are left out."""
    from frywright.care.drills import LEAST_K

    a, b, c = 60.0, 60.0 + LEAST_K, 60.0 + 2 * LEAST_K
    drill = _worst(STAGED, [run(c, "c"), run(a, "a"), run(b, "b"), run(50.0, "cold_and_big"), run(99.0, "d")])
    assert [(x.text, x.right, x.values["core_c"]) for x in drill.choices] == [
        ("a happened.", True, a),
        ("b happened.", False, b),
        ("c happened.", False, c),
    ]
    assert drill.question.values == {"program": "bone in", "fryer": "Alder"}
    assert _worst(STAGED, [run(a), run(b - 0.1), run(c - 0.2)]) is None
    mixed = _mixed(drill)
    assert sorted(mixed.choices, key=lambda x: x.text) == list(drill.choices) and _mixed(drill) == mixed


@pytest.mark.parametrize(("peak", "small"), [(71.9e3, True), (72e3, False)])
@pytest.mark.parametrize("vent_s", [20.0, None])
def test_drills_of_a_lid_ask_of_a_small_load_where_it_does_not_fill(peak, small, vent_s):
    """Below nine tenths of the working gauge; the vent's time is said only where somebody timed it."""
    fryer = SimpleNamespace(name="Alder", working_gauge_pa=80e3)
    usual = SimpleNamespace(told_vent_s=vent_s)
    alone = SimpleNamespace(gauge_pa=np.array([0.0, peak, 10.0]))
    found = lid_drills(STAGED, SimpleNamespace(fryer=fryer), usual, alone)
    assert [d.key for d in found] == [
        f"bone_in-v3-{name}" for name in ("gauge", "stuck", *(["small"] if small else []))
    ]
    for drill in found:
        assert (drill.program, drill.version, drill.fryer) == ("bone in", 3, "y")
        assert sum(c.right for c in drill.choices) == 1 and drill.choices[0].right
        assert drill.question.values["half_pa"] == 40e3 and drill.question.values["alone_pa"] == peak
        assert (
            drill.question.values["vent_s"] == (vent_s or 0.0) and drill.question.values["gauge_pa"] == 80e3
        )
    hurts = [[c.hurts for c in d.choices] for d in found]
    assert (
        hurts[:2] == [[False, True, True, True], [False, True, True]] and hurts[2:] == [[False] * 3] * small
    )
    assert (
        ("{vent_s}" in found[0].choices[0].why)
        is (vent_s is not None)
        is ("{vent_s}" in found[1].question.text)
    )


def test_times_of_a_first_day_are_told_from_the_lids_close(kitchen, monkeypatch):
    """Full pressure at 150 s of a lid that closes after a minute is 90 s of building."""
    fryer = kitchen.fryer("alder")
    monkeypatch.setattr(acceptance, "heavy_load", lambda history: SimpleNamespace(recovery_s=77.0))
    made = SimpleNamespace(plan=SimpleNamespace(program=STAGED), full_pressure_s=150.0, told_vent_s=25.0)
    warm = heat_up(fryer, OIL, 60.0, 160.0, 20.0).duration_s
    assert reckoned_s(fryer, OIL, None, (60.0, 160.0), 20.0) == {"heat_up": warm}
    full = {"heat_up": warm, "recovery": 77.0, "pressure_build": 90.0, "vent_down": 25.0}
    assert reckoned_s(fryer, OIL, made, (60.0, 160.0), 20.0) == full
    made.told_vent_s = None
    assert "vent_down" not in reckoned_s(fryer, OIL, made, (60.0, 160.0), 20.0)
    made.full_pressure_s = None
    assert set(reckoned_s(fryer, OIL, made, (60.0, 160.0), 20.0)) == {"heat_up", "recovery"}
    made.full_pressure_s, made.plan.program = 150.0, program((OPEN, 300.0))
    assert set(reckoned_s(fryer, OIL, made, (60.0, 160.0), 20.0)) == {"heat_up", "recovery"}
