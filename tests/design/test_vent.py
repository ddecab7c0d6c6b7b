"""No program is designed on a vent nobody timed or one too long: refused at once, saying what to measure."""

from __future__ import annotations

from dataclasses import replace

import pytest

from frywright.design.offer import design
from frywright.design.transfer import Target, transfer
from frywright.design.vent import require_vent, require_vent_of
from frywright.model.errors import InputError
from frywright.physics.plan import make_plan
from frywright.verdicts.place import place_named

LIMIT = place_named("us_food_code_2022").cook_limit()
WATCH = (
    "time the vent of a full load with a watch, from opening the valve until the gauge reads zero; write"
    ' vent = "0:25"'
)
NEVER = "never open a lid before the gauge reads zero"


def with_vent(kitchen, **vent):
    """The demo kitchen with another vent on both pressure fryers."""
    new = {"vent_s": None, "vent_area_m2": None, **vent}
    return replace(kitchen, fryers=tuple(replace(f, **new) for f in kitchen.fryers))


@pytest.mark.parametrize(
    ("vent", "says"),
    [({}, "vent is not known"), ({"vent_area_m2": 5e-6}, "at most 1:00"), ({"vent_s": 75.0}, "vent is 1:1")],
)
def test_design_and_transfer_are_refused(kitchen, vent, says):
    """Never told, an opening too small, a watch that said 1:15: each names the fryer, the watch and the
    lid.
    """
    unsure, open_program = with_vent(kitchen, **vent), kitchen.program("bone-in cedar")
    asked = [
        lambda: design(unsure, "bone_in", "alder", LIMIT),
        lambda: transfer(kitchen, open_program, Target(kitchen=unsure, fryer="alder"), LIMIT),
        lambda: transfer(
            unsure, unsure.program("bone-in birch"), Target(kitchen=kitchen, fryer="cedar"), LIMIT
        ),
    ]
    for ask in asked:
        with pytest.raises(InputError) as refused:
            ask()
        told = refused.value.say(str)
        assert says in told and WATCH in told and NEVER in told
        assert "vat" in refused.value.where


def test_a_vent_that_was_told_and_is_short_stops_nothing(kitchen):
    """A watch's time, a described opening, an open fryer, a program without pressure."""
    for told in (kitchen, with_vent(kitchen, vent_area_m2=4e-5), with_vent(kitchen, vent_s=45.0)):
        require_vent(told, "alder")
        require_vent(told, "birch")
    untold = with_vent(kitchen)
    require_vent(untold, "cedar")
    require_vent_of(make_plan(untold, untold.program("bone-in cedar")))


def test_a_program_is_carried_with_its_own_product_unless_another_is_named(kitchen):
    """No product named: the program's own, so that only the load is too large. A product nobody knows is said
    by its name.
    """
    program = kitchen.program("bone-in cedar")
    for product, says in ((None, "load"), ("nothing", "nothing")):
        target = Target(kitchen=kitchen, fryer="cedar", product=product, load_heads=99.0)
        with pytest.raises(InputError, match=says):
            transfer(kitchen, program, target, LIMIT)


def test_a_controller_of_one_stage_hears_of_its_vent_too(kitchen):
    """A pressure fryer without a vent told, whose controller holds one stage: the words are those of the
    vent.
    """
    one = with_vent(kitchen)
    fryers = tuple(
        replace(f, controller=replace(f.controller, stage_count=1)) if f.key == "alder" else f
        for f in one.fryers
    )
    with pytest.raises(InputError) as refused:
        require_vent(replace(one, fryers=fryers, programs=()), "alder")
    assert refused.value.field == "vent"
