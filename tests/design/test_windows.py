"""How much less still meets the limit, and a program carried over to another bird, fryer or place."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.design.search import Goals, Sizer
from frywright.design.transfer import WIDE, Matcher, Shaped, Target, mismatch, moved, taste, transfer
from frywright.design.window import window
from frywright.model.program import Stage
from frywright.physics.fry import simulate
from frywright.physics.plan import make_plan
from frywright.rooms.cook.desk import differences, scouting_beside
from frywright.trial.ask import edit_program
from frywright.verdicts.place import place_named

pytestmark = pytest.mark.slow
LIMIT = place_named("us_food_code_2022").cook_limit()


def test_the_window_tells_how_much_less_still_meets(kitchen):
    """Just inside the edge the program meets, just outside it does not."""
    program = kitchen.program("bone-in cedar")
    goals = Goals(margin_k=0.0, colour_low_n=0.0, colour_high_n=60.0, most_loss_frac=0.6, longest_s=3600.0)
    here, edges = window(kitchen, program, LIMIT, goals)
    edge = next(e for e in edges if e.what == "time" and e.sign < 0)
    sizer = Sizer(kitchen, program, LIMIT, goals)

    def margin(by):
        return sizer.margins(
            [
                replace(
                    program,
                    stages=(replace(program.stages[0], duration_s=program.stages[0].duration_s + by),),
                )
            ]
        )[0]

    assert here.margin_k > 0
    assert margin(edge.change) >= 0
    assert margin(edge.change - 10.0) < 0
    assert edge.breaks == "limit"
    assert edge.piece == "Breast half"


def test_the_window_speaks_of_every_value_both_ways(kitchen):
    """Times and set points of each stage, less and more; the margin asked for is told apart from the
    limit.
    """
    program = kitchen.program("bone-in alder").timed()
    plain = Goals(margin_k=0.0, colour_low_n=0.0)
    here, edges = window(kitchen, program, LIMIT, plain)
    wanted = {
        (n, what, sign)
        for n in range(1, len(program.stages) + 1)
        for what in ("time", "set point")
        for sign in (-1, 1)
    }
    assert {(e.stage, e.what, e.sign) for e in edges} == wanted
    assert len(edges) == len(wanted)
    main = next(e for e in edges if (e.stage, e.what, e.sign) == (2, "time", -1))
    assert main.breaks == "limit"
    asked = window(kitchen, program, LIMIT, replace(plain, margin_k=here.margin_k - 0.3))[1]
    near = next(e for e in asked if (e.stage, e.what, e.sign) == (2, "time", -1))
    assert near.breaks == "margin"
    assert abs(near.change) < abs(main.change)
    hot = next(e for e in edges if (e.stage, e.what, e.sign) == (1, "set point", 1))
    assert program.stages[0].set_c + hot.change <= 185.0 + 1e-6
    assert hot.breaks == "hottest oil"


def test_a_short_program_has_no_window(kitchen):
    """Two minutes for bone-in chicken: nothing to move, the proof says why."""
    old = kitchen.program("bone-in cedar").timed()
    raw = replace(old, stages=(replace(old.stages[0], duration_s=120.0),))
    here, edges = window(kitchen, raw, LIMIT)
    assert here.margin_k < 0.0
    assert edges == ()


def test_a_heavier_bird_lengthens_one_stage(kitchen):
    """Ten percent heavier on the same fryer: set points and the other stages stay, the main stage grows."""
    old = kitchen.program("bone-in alder").timed()
    goods = kitchen.product("bone_in")
    heavy = replace(goods, key="bone_in_heavy", unit_mass_kg=1.1 * goods.unit_mass_kg)
    place = replace(kitchen, products=(*kitchen.products, heavy))
    found = transfer(place, old, Target(kitchen=place, fryer="alder", product="bone_in_heavy"), LIMIT)
    new = found.program
    assert [s.set_c for s in new.stages] == pytest.approx([s.set_c for s in old.stages], abs=0.3)
    assert (new.stages[0].duration_s, new.stages[2].duration_s) == (
        old.stages[0].duration_s,
        old.stages[2].duration_s,
    )
    assert new.stages[1].duration_s > old.stages[1].duration_s
    assert moved(old, new, 1) < 0.01
    assert found.proof.holds


def test_moves_count_by_the_metric_told(kitchen):
    """10 K is 1, 60 s of another stage is 1, the main stage is free."""
    old = kitchen.program("bone-in alder").timed()
    a, b, c = old.stages
    assert moved(old, replace(old, stages=(replace(a, set_c=a.set_c + 10.0), b, c)), 1) == pytest.approx(1.0)
    assert moved(
        old, replace(old, stages=(a, b, replace(c, duration_s=c.duration_s + 60.0))), 1
    ) == pytest.approx(1.0)
    assert moved(old, replace(old, stages=(a, replace(b, duration_s=1.0), c)), 1) == 0.0
    wanted = taste(simulate(make_plan(kitchen, old)))
    far = replace(old, stages=(replace(a, set_c=a.set_c + 10.0), b, c))
    plain, shaped = (kind(kitchen, old, LIMIT, WIDE, wanted).judged(far).cost_n for kind in (Matcher, Shaped))
    assert shaped - plain == pytest.approx(0.5)


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
    new = edit_program(old, [Stage(set_c=old.stages[0].set_c, duration_s=old.stages[0].duration_s - 30.0)])
    (told,) = differences(kitchen, (old, new))
    assert [c.what for c in told.changes] == ["duration"]
    assert told.effect.core_at_lift_k < 0
    assert told.effect.loss_frac < 0
    assert told.effect.time_s == pytest.approx(-30.0, abs=0.5)
    assert "void" in told.cards


def test_scouting_stands_beside(kitchen):
    """The rule of thumb is labelled as one and follows its factors."""
    told = scouting_beside(
        kitchen, kitchen.program("bone-in cedar"), "bone_in", kitchen.site.altitude_m + 1524.0
    )
    assert told.altitude_n == pytest.approx(1.10)
    assert "not approved" in told.label
