"""Design, window and transfer on the demo kitchen."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from frywright.design.search import Effort, Goals, Sizer, binding, design, pareto
from frywright.design.transfer import Target, mismatch, taste, transfer
from frywright.design.window import window
from frywright.model.errors import InputError
from frywright.model.program import Program, Stage
from frywright.physics.fry import simulate
from frywright.physics.plan import make_plan
from frywright.verdicts.limits import cook_limit
from frywright.workbench.cook import edit_program
from frywright.workbench.desk import differences, scouting_beside

LIMIT = cook_limit("us_food_code_2022")
pytestmark = pytest.mark.slow
ONE = Effort(stages=1)


@pytest.fixture(scope="module")
def found(kitchen):
    return design(kitchen, "bone_in", "alder", LIMIT)


def test_the_recommended_program_meets_every_goal(kitchen, found):
    """Margin, time, loss and colour, checked afresh; and it is what the controller can hold."""
    best, goals = found.recommended, Goals()
    assert binding(best, goals) == ""
    sizer = Sizer(kitchen, best.program, LIMIT, goals)
    assert sizer.margins([best.program])[0] == pytest.approx(best.margin_k, abs=0.05)
    assert len(best.program.stages) <= kitchen.fryer("alder").controller.stage_count
    assert all(float(s.duration_s).is_integer() for s in best.program.stages)


def test_same_seed_same_design(kitchen, found):
    """Twice the same program and front."""
    again = design(kitchen, "bone_in", "alder", LIMIT)
    assert again.recommended == found.recommended
    assert len(again.front) == len(found.front)


def test_no_program_of_the_front_beats_another(found):
    """Time, loss and colour: each is better in something; and the reason speaks of both ends."""
    front = found.front
    assert pareto(front) == front
    assert found.reason.values["quick_s"] == min(c.time_s for c in front)


def test_within_two_percent_of_an_exhaustive_search(kitchen):
    """Single stage on the open fryer: every 5 F step sized to its margin; the search is at most 2 % above the best."""
    goals = Goals()
    got = design(kitchen, "bone_in", "cedar", LIMIT, goals, ONE).recommended
    base = Program(name="x", product="bone_in", fryer="cedar", stages=(Stage(set_c=160.0, duration_s=600.0),))
    sizer = Sizer(kitchen, base, LIMIT, goals)
    points = [np.array([x, 0.5, extra]) for x in np.linspace(0.0, 1.0, 17) for extra in (0.0, 0.3, 0.5, 0.7)]
    programs, margins, _ = sizer.fit(points)
    best = min(sizer.judge(programs, margins), key=lambda c: c.cost_n)
    assert got.cost_n <= 1.02 * best.cost_n


def test_every_pair_of_the_demo_gets_a_design_or_a_reason(kitchen):
    """Each product on each fryer: a program that meets its goals, or a refusal that names what binds."""
    for product in kitchen.products:
        for fryer in kitchen.fryers:
            try:
                assert binding(design(kitchen, product.key, fryer.key, LIMIT, effort=ONE).recommended, Goals()) == ""
            except InputError as error:
                assert "what binds is" in str(error)


@pytest.mark.parametrize(
    "goals",
    [{"margin_k": 40.0}, {"margin_k": -1.0}, {"longest_s": 10.0}, {"colour_low_n": 9.0, "colour_high_n": 5.0}, {"hottest_c": 400.0}],
)  # fmt: skip
def test_impossible_goals_are_refused(goals):
    """Wild margins, no time, an empty colour band, burning oil."""
    with pytest.raises(InputError):
        Goals(**goals)


def test_unreachable_goals_name_what_binds(kitchen):
    """Six minutes for bone-in chicken: the time binds."""
    with pytest.raises(InputError, match=r"the (time|margin)"):
        design(kitchen, "bone_in", "cedar", LIMIT, Goals(longest_s=360.0), ONE)


def test_cancelling_stops_the_search(kitchen):
    """An exception from the progress function comes through."""

    def stop(_share: float) -> None:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        design(kitchen, "tenders", "cedar", LIMIT, effort=Effort(stages=1, progress=stop))


def test_the_window_tells_how_much_less_still_meets(kitchen):
    """Just inside the edge the program meets, just outside it does not."""
    program = kitchen.program("bone-in cedar")
    goals = Goals(margin_k=0.0, colour_low_n=0.0, colour_high_n=60.0, most_loss_frac=0.6, longest_s=3600.0)
    here, edges = window(kitchen, program, LIMIT, goals)
    edge = next(e for e in edges if e.what == "time" and e.change <= 0)
    sizer = Sizer(kitchen, program, LIMIT, goals)

    def margin(by):
        return sizer.margins(
            [replace(program, stages=(replace(program.stages[0], duration_s=program.stages[0].duration_s + by),))]
        )[0]

    assert here.margin_k > 0
    assert margin(edge.change) >= 0
    assert margin(edge.change - 10.0) < 0
    assert edge.breaks == "margin"
    assert edge.piece == "Breast half"


def test_there_and_back(kitchen):
    """Alder to birch and back: core within 3 K, crust 0.2 mm, loss 1.5 points, colour 3 of the first."""
    first = kitchen.program("bone-in alder")
    there = transfer(kitchen, first, Target(kitchen=kitchen, fryer="birch"), LIMIT)
    assert there.unmatched == {}
    back = transfer(kitchen, there.program, Target(kitchen=kitchen, fryer="alder"), LIMIT)
    home = taste(simulate(make_plan(kitchen, first)))
    assert max(abs(v) for v in mismatch(home, back.target).values()) <= 1.0
    assert back.margin_k >= 0


def test_open_for_pressure_says_what_does_not_match(kitchen):
    """Four stages under pressure to one open stage: meets the limit, and the crust is told as unmatched."""
    found = transfer(kitchen, kitchen.program("bone-in alder"), Target(kitchen=kitchen, fryer="cedar"), LIMIT)
    assert len(found.program.stages) == 1
    assert found.margin_k >= 0
    assert "crust" in found.unmatched


def test_to_the_sea(kitchen):
    """At sea level an open program carried down from 5420 ft gets shorter."""
    low = replace(kitchen, site=replace(kitchen.site, altitude_m=0.0))
    old = kitchen.program("bone-in cedar")
    found = transfer(kitchen, old, Target(kitchen=low, fryer="cedar"), LIMIT)
    assert sum(found.program.durations_s()) < sum(old.durations_s())


def test_differences_tell_the_effect(kitchen):
    """Thirty seconds less: one change, a colder core, less loss, void cards."""
    old = kitchen.program("bone-in cedar")
    new = edit_program(old, [Stage(set_c=old.stages[0].set_c, duration_s=960.0)])
    told = differences(kitchen, old, new)
    assert [c["what"] for c in told["changes"]] == ["duration"]
    assert told["effect"]["core_at_lift_k"] < 0
    assert told["effect"]["loss_frac"] < 0
    assert told["effect"]["time_s"] == pytest.approx(-30.0, abs=0.5)
    assert "void" in told["cards"]


def test_scouting_stands_beside(kitchen):
    """The rule of thumb is labelled as one and follows its factors."""
    told = scouting_beside(kitchen, kitchen.program("bone-in cedar"), "bone_in", kitchen.site.altitude_m + 1524.0)
    assert told["altitude_n"] == pytest.approx(1.10)
    assert "not approved" in told["label"]
