"""The strip of stages under the curves: what the clock has left, where the vent stands."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import pairwise

import pytest

from frywright.catalog.kitchen import parse_kitchen
from frywright.model.program import Stage
from frywright.rooms.cook.view import cook_view, saved_view
from frywright.trial.ask import CookRequest, ask
from frywright.trial.kitchens import demo_text


def strip_of(kitchen, program, system="us"):
    """The answer and its strip."""
    answer = ask(kitchen, CookRequest(program=program))
    return answer, cook_view(answer, system).strip


@pytest.mark.parametrize("clock", ["left", "waits"])
def test_left_is_what_the_clock_keyed_with_the_total_shows(clock):
    """Stages begin at the times keyed, also where the clock stands still during the vent, which has none."""
    kitchen = parse_kitchen(re.sub(r'clock = "\w+"', f'clock = "{clock}"', demo_text()))
    answer, strip = strip_of(kitchen, kitchen.program("bone-in alder"))
    assert [row.left for row in strip] == ["12:00 left", "11:20 left", "", "1:00 left"]
    assert [row.number for row in strip] == ["1", "2", "", "3"]
    assert strip[2].lid == "vent"
    assert strip[0].start_s == 0.0
    assert strip[-1].end_s == pytest.approx(answer.history.lift_s)
    for one, following in pairwise(strip):
        assert one.end_s == following.start_s


def test_a_stage_that_waits_for_the_oil_has_no_clock_and_the_words_follow_the_kitchen():
    """Nobody can key what is left until an oil temperature is reached."""
    kitchen = parse_kitchen(demo_text())
    program = kitchen.program("bone-in alder")
    first = Stage(set_c=168.0, until_oil_c=160.0, at_most_s=60.0)
    program = replace(program, stages=(first, *program.stages[1:]), total_s=None)
    _, strip = strip_of(kitchen, program, "metric")
    assert {row.left for row in strip} == {""}
    assert strip[0].words == "168.0 °C · open"
    assert strip[0].set == 168.0


def test_the_saved_version_says_its_margin():
    """What is drawn behind an edit is the saved program on the same load."""
    kitchen = parse_kitchen(demo_text())
    answer = ask(kitchen, CookRequest(program=kitchen.program("bone-in alder"), units_count=1.0))
    saved = saved_view(answer, "us")
    assert saved.sentence.startswith("Dotted behind it: version 3 as saved, +")
    assert len(saved.cores) == len([p for p in answer.history.pieces if p.kind.heavy])
    assert all(len(core) == len(saved.time_s) for core in saved.cores)


def test_the_table_has_a_row_a_cut_and_every_figure_of_both_its_pieces():
    """Usual and heavy one side by side; one figure where they are alike, the unit once."""
    kitchen = parse_kitchen(demo_text())
    view = cook_view(ask(kitchen, CookRequest(program=kitchen.program("bone-in alder"))), "us")
    assert len(view.pieces) == 2 * len(view.cuts) == 8
    for n, row in enumerate(view.cuts):
        usual, heavy = view.pieces[n], view.pieces[n + 4]
        assert row.name == usual.name
        number = usual.core_at_lift.removesuffix(" °F")
        both = f"{number} / {heavy.core_at_lift}"
        assert row.cells[1] == (both if usual.core_at_lift != heavy.core_at_lift else usual.core_at_lift)
        assert row.cells[1].count("°F") == 1
        assert row.cells[5] == (usual.logs if usual.logs == heavy.logs else f"{usual.logs} / {heavy.logs}")
