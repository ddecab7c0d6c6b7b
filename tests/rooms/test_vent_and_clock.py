"""What a verdict may count: no vent nobody timed, no carry-over of a simulation, no gain from overloading."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from frywright.catalog.kitchen import parse_kitchen
from frywright.design.proof import FACTORS, Spread, prove
from frywright.model.fryer import ClockStyle
from frywright.model.program import LidState, Stage
from frywright.physics.plan import make_plan
from frywright.trial.ask import CookRequest, ask
from frywright.trial.kitchens import demo_text
from frywright.verdicts.place import place_named

WAYSIDE = """
[kitchen]
name = "Wayside kitchen (invented)"
altitude_ft = 900
units = "us"
thermometer_error_f = 2

[[fryer]]
key = "six"
name = "Six-head pressure vat"
kind = "pressure"
capacity_heads = 6
oil_mass_kg = 33
heater_kw = 13.8
working_gauge_psi = 12
relief_gauge_psi = 14.5
{vent}

[fryer.controller]
stage_count = 4
clock = "{clock}"

[[product]]
key = "bird"
name = "Bone-in, 8-piece"
cut_set = "chicken_8"
coating = "dredge"
unit_mass_kg = 1.12
start_temp_f = 38

[[program]]
name = "bird six"
product = "bird"
fryer = "six"

[[program.stage]]
set_f = 365
duration = "0:44"

[[program.stage]]
set_f = 319
lid = "pressure"
duration = "1:04"

[[program.stage]]
set_f = 293
lid = "pressure"
duration = "6:01"

[[program.stage]]
set_f = 288
duration = "0:20"
"""
STYLES = tuple(ClockStyle)


def wayside(vent: str = "", clock: str = "left"):
    return parse_kitchen(WAYSIDE.format(vent=vent, clock=clock))


def margin(kitchen, name, program=None, **conditions) -> float:
    """Lowest margin of all pieces [K]."""
    answer = ask(kitchen, CookRequest(program=program or kitchen.program(name), **conditions))
    return min(verdict.margin_k for _, verdict in answer.verdicts)


@pytest.mark.parametrize("style", STYLES)
def test_a_program_that_leaned_on_its_vent_is_short(style):
    """A kitchen that tells nothing of its vent: 8:09 keyed is judged at 8:09, about 16 K short whatever the
    load.

    Counting a simulated vent of minutes the same program once read 5.5 K above the limit with a full load.
    """
    kitchen = wayside(clock=style)
    found = [margin(kitchen, "bird six", units_count=heads) for heads in (1, 2, 3, 4, 5, 6, 7)]
    assert max(found) < -14.0
    assert max(found) - min(found) < 2.0
    answer = ask(kitchen, CookRequest(program=kitchen.program("bird six")))
    assert answer.history.earliest_lift_s == pytest.approx(489.0)
    assert "vent_unknown" in {n.kind for n in answer.history.notes}


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("number", range(4))
def test_a_second_more_moves_the_margin_by_a_sane_amount(style, number):
    """One second of any stage is worth 0 to 0.2 K (a core rises about 0.1 K a second near the end)."""
    kitchen = wayside('vent = "0:25"', style)
    program = kitchen.program("bird six")
    before = margin(kitchen, "", program)
    for more_s in (1.0, 2.0, 7.0):
        stages = list(program.stages)
        stages[number] = replace(stages[number], duration_s=stages[number].duration_s + more_s)
        gained = margin(kitchen, "", replace(program, stages=tuple(stages))) - before
        assert -0.02 <= gained <= 0.2 * more_s


@pytest.mark.parametrize("style", STYLES)
@pytest.mark.parametrize("name", ["bone-in alder", "bone-in birch"])
def test_leaving_the_vent_out_never_raises_the_margin(style, name):
    """A demo file without its vent lines is judged the same or lower, at every load."""
    text = re.sub(r'clock = "\w+"', f'clock = "{style}"', demo_text())
    told, untold = parse_kitchen(text), parse_kitchen(re.sub(r"(?m)^vent.*$", "", text))
    assert not untold.fryer("alder").vent_told
    for heads in (1, 2, 3):
        assert margin(untold, name, units_count=heads) <= margin(told, name, units_count=heads) + 1e-6


@st.composite
def overloads(draw):
    """A pressure or an open fryer, a program, and a load above its capacity."""
    closed = draw(st.booleans())
    vent = draw(st.sampled_from(["", 'vent = "0:20"', "vent_area_mm2 = 14", "vent_area_mm2 = 60"]))
    text = WAYSIDE.format(vent=vent, clock=draw(st.sampled_from([str(s) for s in STYLES])))
    if not closed:
        text = text.replace('kind = "pressure"', 'kind = "open"').replace('lid = "pressure"', 'lid = "open"')
    kitchen = parse_kitchen(text)
    lid = LidState.PRESSURE if closed else LidState.OPEN
    main = Stage(set_c=draw(st.floats(150.0, 175.0)), lid=lid, duration_s=draw(st.floats(120.0, 900.0)))
    last = [Stage(set_c=170.0, duration_s=draw(st.floats(5.0, 90.0)))] if draw(st.booleans()) else []
    program = replace(kitchen.program("bird six"), stages=(Stage(set_c=165.0, duration_s=40.0), main, *last))
    return kitchen, program, draw(st.floats(6.05, 7.5))


@pytest.mark.slow
@settings(max_examples=120, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
@given(overloads())
def test_more_than_capacity_never_raises_a_margin(question):
    """Above the plate's capacity a load is judged no better than a full one, piece by piece."""
    kitchen, program, heads = question
    full = ask(kitchen, CookRequest(program=program, units_count=6.0))
    over = ask(kitchen, CookRequest(program=program, units_count=heads))
    assert over.plan.overloaded and not full.plan.overloaded
    best = {(p.kind.cut.key, p.kind.heavy): v.margin_k for p, v in full.verdicts}
    for piece, verdict in over.verdicts:
        assert verdict.margin_k <= best[piece.kind.cut.key, piece.kind.heavy] + 1e-9  # rounding
    assert "over_capacity" in {n.kind for n in over.history.notes}


@pytest.mark.parametrize("place", ["us_fsis_inspected", "uk"])
def test_a_simulated_carry_over_meets_no_table(place):
    """The demo's open program cut to 10:00 lifts the heavy breast at about 63 degC: no row of a table is met.

    Its simulated carry-over once met both, with the thermometer's error at nought.
    """
    text = (
        demo_text()
        .replace("us_food_code_2022", place)
        .replace("thermometer_error_f = 2", "thermometer_error_f = 0")
    )
    kitchen = parse_kitchen(text)
    program = kitchen.program("bone-in cedar")
    for minutes, met in ((10.0, False), (11.0, False), (16.5, True)):
        short = replace(program, stages=(replace(program.stages[0], duration_s=60.0 * minutes),))
        answer = ask(kitchen, CookRequest(program=short))
        assert (answer.verdicts[0][1].margin_k > 0) is met
        coldest = answer.history.coldest
        assert coldest.core_peak_c > coldest.core_at_lift_c + 2.0


@pytest.mark.slow
@pytest.mark.parametrize("place", ["us_food_code_2022", "us_food_code_2013", "us_fsis_inspected", "uk"])
@pytest.mark.parametrize("name", ["bone-in alder", "bone-in birch", "bone-in cedar"])
def test_a_proof_counts_what_the_verdict_counts(place, name):
    """With every condition at the plan's own, the proof's margins of the heavy pieces are the verdict's. They
    may be 0.1 K above (another setting) and, as a proof's scan reads low, 0.25 K below
    (docs/theory/speed.md).
    """
    text = re.sub(r'clock = "\w+"', 'clock = "waits"', demo_text().replace("us_food_code_2022", place))
    kitchen = parse_kitchen(text)
    plan = make_plan(kitchen, kitchen.program(name))
    own = {
        "weight_quantile_frac": 0.95,
        "load_frac": 1.0,
        "heater_frac": 1.0,
        "oil_level_frac": 1.0,
        "surface_frac": 1.0,
    }
    spread = Spread(**{factor: (own.get(factor, 0.0),) * 2 for factor in FACTORS})
    proof = prove(
        plan, place_named(place).cook_limit(), kitchen.site.thermometer_error_k, samples=1, spread=spread
    )
    told = {
        p.kind.cut.title: v.margin_k
        for p, v in ask(kitchen, CookRequest(program=plan.program)).verdicts
        if p.kind.heavy
    }
    counted = {c.cut: c.worst_margin_k for c in proof.cuts}
    assert counted.keys() == told.keys()
    assert all(-0.25 <= counted[cut] - told[cut] <= 0.1 for cut in told), (counted, told)
