"""Which goal a program misses first, at the edge of each."""

from __future__ import annotations

import pytest

from frywright.design.search import Candidate, Goals, binding
from frywright.design.shape import lids_of
from frywright.model.program import LidState
from frywright.physics.plan import MOST_VENT_S

GOALS = Goals(
    margin_k=3.0,
    longest_s=900.0,
    most_loss_frac=0.3,
    core_low_c=75.0,
    core_high_c=95.0,
    crust_low_m=0.001,
    crust_high_m=0.003,
    colour_low_n=5.0,
    colour_high_n=12.0,
)
AT_THE_EDGE = {
    "margin_k": 3.0,
    "time_s": 900.0,
    "vent_s": MOST_VENT_S,
    "loss_frac": 0.3,
    "core_c": 95.0,
    "crust_m": 0.003,
    "colour_n": 12.0,
}


def missed(kitchen, **changes):
    rest = {"loads_k": (3.0,), "light_loss_frac": 0.3, "yield_frac": 0.9, "cost_n": 1.0}
    program = kitchen.program("tenders cedar")
    return binding(Candidate(program=program, **{**AT_THE_EDGE, **rest, **changes}), GOALS)


@pytest.mark.parametrize(
    ("changes", "goal"),
    [
        ({}, ""),
        ({"margin_k": 2.96}, ""),
        ({"margin_k": 2.9}, "margin"),
        ({"margin_k": 2.5, "time_s": 950.0}, "margin"),
        ({"time_s": 901.0}, "time"),
        ({"vent_s": MOST_VENT_S + 1.0}, "vent"),
        ({"loss_frac": 0.31}, "moisture lost"),
        ({"core_c": 95.5}, "core"),
        ({"core_c": 75.0}, ""),
        ({"core_c": 74.5}, "core"),
        ({"crust_m": 0.0031}, "crust"),
        ({"crust_m": 0.001}, ""),
        ({"crust_m": 0.0009}, "crust"),
        ({"colour_n": 12.1}, "colour"),
        ({"colour_n": 5.0}, ""),
        ({"colour_n": 4.9}, "colour"),
    ],
)
def test_a_goal_is_missed_beyond_its_edge_and_not_at_it(kitchen, changes, goal):
    """A twentieth of a kelvin of the margin is the search's own rounding; the first goal missed is named."""
    assert missed(kitchen, **changes) == goal


@pytest.mark.parametrize(("stages", "lids"), [(1, "p"), (2, "pp"), (3, "opo"), (5, "opppo")])
def test_lids_of_a_design_open_first_and_last_where_there_are_three_stages(kitchen, stages, lids):
    """Two stages or one stay shut on a pressure fryer; an open one has no lid to shut."""
    shut = [{"o": LidState.OPEN, "p": LidState.PRESSURE}[lid] for lid in lids]
    assert lids_of(kitchen.fryer("alder"), stages) == shut
    assert lids_of(kitchen.fryer("cedar"), stages) == [LidState.OPEN] * stages
