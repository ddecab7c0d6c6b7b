"""The shape of staged programs, how far one has moved from another, and what a machine runs with the values
it holds: each worked out by hand.
"""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from frywright.design.controller import Keyed
from frywright.design.difference import Change, changes
from frywright.design.held import held_by
from frywright.design.loads import spans_of
from frywright.design.proof import HEAVY_QUANTILE_Z, weight_at
from frywright.design.shape import build, longer, merged
from frywright.design.slots import sharing, slots_of
from frywright.design.transfer import WIDE, Matcher, Shaped, Taste, _nearest, mismatch, moved, taste
from frywright.model.fryer import ClockStyle, Controller, TempUnit, UnusedStage
from frywright.model.program import LidState, Program, Stage
from frywright.physics.inputs import Lid, Span
from frywright.physics.pack import span_row
from frywright.verdicts.place import place_named

LIMIT = place_named("us_food_code_2022").cook_limit()
OPEN, SHUT = LidState.OPEN, LidState.PRESSURE


def program(*stages: tuple[float, LidState, float], **changes) -> Program:
    told = tuple(Stage(set_c=set_c, lid=lid, duration_s=length) for set_c, lid, length in stages)
    return Program(**{"name": "x", "product": "bone_in", "fryer": "alder", "stages": told, **changes})


def lengths(found: Program) -> list[float]:
    return [stage.duration_s for stage in found.stages]


@pytest.mark.parametrize(
    ("stages", "kept"),
    [
        ([(160.0, SHUT, 100.0), (160.0, SHUT, 50.0)], [(160.0, SHUT, 150.0)]),
        ([(160.0, OPEN, 100.0), (160.0, SHUT, 50.0)], [(160.0, OPEN, 100.0), (160.0, SHUT, 50.0)]),
        (
            [(150.0, SHUT, 100.0), (160.0, SHUT, 50.0), (160.0, SHUT, 25.0)],
            [(150.0, SHUT, 100.0), (160.0, SHUT, 75.0)],
        ),
        ([(160.0, SHUT, 100.0), (150.0, SHUT, 30.0), (160.0, SHUT, 50.0)], None),
    ],
)
def test_neighbours_of_one_set_point_and_lid_are_one_stage(stages, kept):
    assert merged(program(*stages)) == program(*(kept or stages))


def test_a_program_grows_in_its_longest_stage_under_pressure():
    """Or, where none is, in its longest."""
    shut = program((160.0, OPEN, 400.0), (165.0, SHUT, 200.0), (170.0, SHUT, 300.0), (160.0, OPEN, 100.0))
    assert lengths(longer(shut, 30.0)) == [400.0, 200.0, 330.0, 100.0]
    assert lengths(longer(program((160.0, OPEN, 100.0), (165.0, OPEN, 200.0)), 5.0)) == [100.0, 205.0]


@pytest.mark.parametrize(("unit", "step_k"), [(TempUnit.F, 25 / 9), (TempUnit.C, 2.0), (TempUnit.C, 5.0)])
def test_a_point_of_the_search_is_a_program_that_the_controller_holds(kitchen, unit, step_k):
    """Set points from 140 degC, or the lowest it takes, to the hottest step not above the one allowed; edge
    stages 20 to 150 s; the middle shares the main time as its numbers and 0.15 each say.
    """
    fryer = kitchen.fryer("alder")
    held = replace(
        fryer.controller, shows=unit, temp_step_k=step_k, time_step_s=1.0, stage_count=5, lowest_c=100.0
    )
    fryer, base = replace(fryer, controller=held), program((160.0, SHUT, 600.0))
    x = np.array([0.0, 1.0, 0.5, 1.0, 0.0, 0.15, 0.75, 1.0, 0.0])
    found = build(base, fryer, x, 480.0, 183.0)
    assert [stage.lid for stage in found.stages] == [OPEN, SHUT, SHUT, OPEN]
    assert lengths(found) == [20.0, 120.0, 360.0, 150.0]
    own = 1.8 * step_k if unit is TempUnit.F else step_k
    allowed = 183.0 * 1.8 + 32.0 if unit is TempUnit.F else 183.0
    hottest = own * (allowed // own)
    shown = [s.set_c * 1.8 + 32.0 if unit is TempUnit.F else s.set_c for s in found.stages]
    assert shown[1] == shown[3] == pytest.approx(hottest)
    low = 284.0 if unit is TempUnit.F else 140.0
    for got, share in zip(shown, x[:4], strict=True):
        assert got / own == pytest.approx(round(got / own))
        assert abs(got - (low + share * (hottest - low))) <= 0.5 * own + 1e-6
    lowest_c = (300.0 - 32.0) / 1.8 if unit is TempUnit.F else 150.0
    warm = replace(fryer, controller=replace(held, lowest_c=lowest_c, highest_c=160.0))
    for stage in build(base, warm, x, 480.0, 183.0).stages:
        assert lowest_c - 1e-6 <= stage.set_c <= 160.0 + 1e-6


def test_all_stages_of_an_open_fryer_and_of_two_shut_ones_share_the_main_time(kitchen):
    """Shares 0.25 and 0.55 with 0.15 each are 0.4 and 0.7 of 1.1; one stage has all of it."""
    fryer = replace(kitchen.fryer("alder"), controller=Controller(stage_count=5, shows=TempUnit.C))
    x = np.array([0.2, 0.8, 0.25, 0.55, 0.0])
    assert lengths(build(program((160.0, SHUT, 600.0)), fryer, x, 550.0, 180.0)) == [200.0, 350.0]
    one = build(program((160.0, SHUT, 600.0)), fryer, np.array([0.5, 0.0, 0.0]), 550.0, 180.0)
    assert (lengths(one), one.stages[0].set_c) == ([550.0], 160.0)
    cedar = replace(kitchen.fryer("cedar"), controller=fryer.controller)
    base = program((160.0, OPEN, 600.0), fryer="cedar")
    three = build(base, cedar, np.array([0.1, 0.5, 0.9, 0.05, 0.25, 0.45, 0.0]), 600.0, 180.0)
    assert lengths(three) == [100.0, 200.0, 300.0] and {s.lid for s in three.stages} == {OPEN}


def test_a_mismatch_counts_what_just_shows_as_one():
    """3 K of core, 0.2 mm of crust, 1.5 % of loss, 3 of colour: with its sign."""
    one = Taste(core_c=80.0, crust_m=0.002, loss_frac=0.2, colour_n=9.0)
    other = Taste(core_c=83.0, crust_m=0.0016, loss_frac=0.2075, colour_n=6.0)
    found = mismatch(one, other)
    assert found == pytest.approx({"core": 1.0, "crust": -2.0, "loss": 0.5, "colour": -1.0})


def test_a_taste_is_the_mean_of_the_usual_pieces():
    def piece(heavy, core, crust, colour):
        return SimpleNamespace(
            kind=SimpleNamespace(heavy=heavy), core_at_lift_c=core, crust_at_lift_m=crust, browning_n=colour
        )

    pieces = [piece(False, 80.0, 0.001, 8.0), piece(False, 90.0, 0.003, 10.0), piece(True, 50.0, 0.1, 99.0)]
    found = taste(SimpleNamespace(pieces=pieces, moisture_loss_frac=0.21))
    assert found == Taste(core_c=85.0, crust_m=0.002, loss_frac=0.21, colour_n=9.0)


def test_a_move_counts_set_points_and_all_lengths_but_the_main_one():
    """10 K count one, 60 s count one, squared; the main stage's length is free."""
    old = program((160.0, OPEN, 60.0), (165.0, SHUT, 300.0), (160.0, OPEN, 60.0))
    new = program((170.0, OPEN, 60.0), (160.0, SHUT, 900.0), (160.0, OPEN, 180.0))
    assert moved(old, new, 1) == pytest.approx(1.0 + 0.25 + 4.0)
    assert moved(old, old, 1) == 0.0


STAGED = program((160.0, OPEN, 60.0), (165.0, SHUT, 300.0), (160.0, SHUT, 90.0))


def test_a_shaped_point_moves_set_points_by_15_k_and_lengths_by_a_factor_of_two(kitchen):
    """Half is where they were; the main stage, the longest under pressure, takes what it is given."""
    fryer = kitchen.fryer("alder")
    held = replace(fryer.controller, shows=TempUnit.C, temp_step_k=1.0, time_step_s=1.0, stage_count=4)
    fryers = tuple(replace(f, controller=held) if f.key == "alder" else f for f in kitchen.fryers)
    wanted = Taste(core_c=80.0, crust_m=0.002, loss_frac=0.2, colour_n=9.0)
    shaped = Shaped(replace(kitchen, fryers=fryers), STAGED, LIMIT, WIDE, wanted)
    assert shaped.main == 1
    half, ends = np.full(7, 0.5), np.array([0.0, 1.0, 0.7, 0.0, 0.3, 1.0, 0.0])
    same, other = shaped.build_all([half, ends], np.array([300.0, 400.0]))
    assert same.stages == STAGED.stages
    assert [s.set_c for s in other.stages] == pytest.approx([145.0, 180.0, 166.0])
    assert lengths(other) == [30.0, 400.0, 180.0]
    edge = np.array([0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.0])
    cool = replace(shaped.fryer.controller, highest_c=162.0)
    shaped.fryer = replace(shaped.fryer, controller=cool)
    assert [s.set_c for s in shaped.build_all([edge], np.array([300.0]))[0].stages] == [160.0, 162.0, 160.0]


def test_a_match_costs_its_squares_what_it_lacks_of_the_margin_and_half_its_move(kitchen, monkeypatch):
    """Two qualities off by one and by two cost 5; a kelvin short of the source's margin 10; a set point moved
    by 10 K a half.
    """
    from frywright.design import transfer
    from frywright.design.search import Sizer

    wanted = Taste(core_c=80.0, crust_m=0.002, loss_frac=0.2, colour_n=9.0)
    got = replace(wanted, core_c=83.0, colour_n=3.0)
    monkeypatch.setattr(transfer, "taste", lambda _history: got)
    plain = SimpleNamespace(margin_k=4.0, cost_n=77.0)
    monkeypatch.setattr(Sizer, "_candidate", lambda *_: plain)
    monkeypatch.setattr(transfer, "replace", lambda of, **new: SimpleNamespace(**{**vars(of), **new}))
    goals = replace(WIDE, margin_k=5.0)
    matcher = Matcher(kitchen, program((160.0, SHUT, 600.0)), LIMIT, goals, wanted)
    assert matcher._candidate(None, None, None).cost_n == pytest.approx(5.0 + 10.0)
    matcher.goals = replace(goals, margin_k=3.0)
    assert matcher._candidate(None, None, None).cost_n == pytest.approx(5.0)
    shaped = Shaped(kitchen, program((160.0, SHUT, 600.0)), LIMIT, goals, wanted)
    there = program((170.0, SHUT, 900.0))
    assert shaped._candidate(there, None, None).cost_n == pytest.approx(15.0 + 0.5)


@pytest.mark.parametrize(
    ("short_k", "off_k", "kept"),
    [(0.0, 3.0, True), (0.0, -3.0, True), (0.0, 3.1, False), (0.0, -3.1, False), (0.1, 0.0, False)],
)
def test_the_sources_stages_are_kept_where_only_their_main_one_resized_matches(
    kitchen, monkeypatch, short_k, off_k, kept
):
    """Every quality within what counts as a match, and the margin there; else the search begins from them,
    with as many stages.
    """
    from frywright.design import transfer
    from frywright.design.search import Effort

    wanted = Taste(core_c=80.0, crust_m=0.002, loss_frac=0.2, colour_n=9.0)
    asked = []

    class Fake:
        base, goals, wanted = STAGED, replace(WIDE, margin_k=2.0), None

        def fit(self, points):
            asked.append(points[0].tolist())
            return [STAGED], np.zeros((1, 3, 2)), None

        def judge(self, programs, loads_k):
            assert loads_k.shape == (1, 3)
            return [SimpleNamespace(margin_k=2.0 - short_k, program=programs[0])]

        def plan_of(self, program):
            return program

    Fake.wanted = wanted
    monkeypatch.setattr(transfer, "simulate", lambda plan: plan)
    monkeypatch.setattr(transfer, "taste", lambda _: replace(wanted, core_c=80.0 + off_k))
    searched = []
    monkeypatch.setattr(
        transfer, "search", lambda m, effort, start: searched.append((effort.stages, start)) or ("found", [])
    )
    best = _nearest(Fake(), Effort())
    assert asked == [[0.5] * 6 + [0.0]]
    assert (best != "found", not searched) == (kept, kept)
    assert all(stages == 3 and start.tolist() == asked[0] for stages, start in searched)


def test_spans_of_loads_are_found_again_load_by_load():
    """Each load's own rows, and the number of its vent, whatever run of loads is asked for."""
    rng = np.random.default_rng(1)
    told = [
        [
            Span(duration_s=float(d), set_c=150.0 + n, lid=Lid.VENT if i == n else Lid.OPEN)
            for i, d in enumerate(rng.uniform(10.0, 90.0, count))
        ]
        for n, count in enumerate((2, 3, 1, 4, 5))
    ]
    found = spans_of(told)
    for part in (slice(0, 5), slice(1, 4), slice(3, 5)):
        some = found.of(part)
        for k, one in enumerate(told[part]):
            rows = some.rows[some.first[k] : some.first[k] + some.count[k]]
            assert rows == pytest.approx(np.array([span_row(span) for span in one], dtype=float))
        assert some.vent.tolist() == [0, 1, -1, 3, 4][part]


def test_a_weight_at_the_heavy_quantile_is_the_heavy_ratio(kitchen):
    """Log normal: the median is the mean piece, and as far below it as above in logarithms."""
    from scipy.stats import norm

    cut = next(c for c in kitchen.cuts if c.heavy_ratio_n > 1.0)
    heavy = float(norm.cdf(HEAVY_QUANTILE_Z))
    assert weight_at(cut, heavy) == pytest.approx(cut.heavy_ratio_n)
    assert weight_at(cut, 0.5) == pytest.approx(1.0)
    assert weight_at(cut, 1.0 - heavy) == pytest.approx(1.0 / cut.heavy_ratio_n)


def test_programs_take_the_lowest_free_slot_and_share_the_first_where_none_is(kitchen):
    programs = tuple(replace(STAGED, name=name) for name in ("a", "b", "c", "d"))
    for count, told, wanted in (
        (4, {}, {"a": 1, "b": 2, "c": 3, "d": 4}),
        (4, {"b": 1, "d": 4}, {"b": 1, "d": 4, "a": 2, "c": 3}),
        (2, {"c": 2}, {"c": 2, "a": 1, "b": 1, "d": 1}),
        (4, {"a": 0, "b": 5}, {"a": 1, "b": 2, "c": 3, "d": 4}),
    ):
        fryers = tuple(
            replace(f, controller=replace(f.controller, slot_count=count)) if f.key == "alder" else f
            for f in kitchen.fryers
        )
        there = replace(kitchen, programs=programs, fryers=fryers)
        assert slots_of(there, "alder", told) == wanted
        assert sharing(there, programs[0], 2, told) == tuple(
            name
            for name, slot in slots_of(there, "alder", {**told, "a": 2}).items()
            if slot == 2 and name != "a"
        )


def keyed(total: str | None, *rows: tuple[str, str]) -> list[Keyed]:
    """Values as they are keyed: set point and time of each stage, and a total where the clock counts down."""
    found = [] if total is None else [Keyed(stage=0, what="total", text=total)]
    for number, (set_text, time) in enumerate(rows, start=1):
        found.append(Keyed(stage=number, what="set", text=set_text))
        if time:
            found.append(Keyed(stage=number, what="time", text=time))
    return found


DOWN = Controller(stage_count=3, shows=TempUnit.C, clock=ClockStyle.LEFT)
UP = replace(DOWN, clock=ClockStyle.ELAPSED)
LIKE = program((160.0, OPEN, 60.0), (170.0, OPEN, 120.0))


def runs(held) -> list[list[tuple[float, float]]]:
    return [[(s.set_c, s.duration_s) for s in p.stages] for p in held.programs]


@pytest.mark.parametrize(
    ("controller", "total", "rows", "found", "in_order"),
    [
        (DOWN, "3:00", [("160", ""), ("170", "2:00")], [[(160, 60), (170, 120)]], True),
        (DOWN, "3:00", [("160", ""), ("170", "3:30")], [[(170, 180)]], False),
        (DOWN, "0:00", [("160", ""), ("170", "0:00")], [], False),
        (DOWN, "3:00", [("160", ""), ("170", "1:00"), ("150", "2:00")], None, False),
        (DOWN, "3:00", [("160", ""), ("170", "–")], [[(160, 180)]], False),
        (UP, None, [("160", "1:00"), ("170", "3:00")], [[(160, 60), (170, 120)]], True),
        (UP, None, [("160", "3:00"), ("170", "1:00")], [[(160, 180)], [(160, 60)]], False),
        (UP, None, [("160", "–"), ("170", "3:00")], [[(170, 180)]], False),
        (UP, None, [("400", "1:00"), ("20", "3:00")], [[(230, 60), (60, 120)]], True),
    ],
)
def test_what_a_machine_runs_with_the_values_it_holds(controller, total, rows, found, in_order):
    """In turn or by the clock alone where a stage would begin before the one before it; a slip beyond what
    any oil can be is simulated at the edge. None where no time is left.
    """
    held = held_by(keyed(total, *rows), controller, LIKE)
    assert held.in_order is in_order
    assert held.sets_c == pytest.approx([float(text) for text, _ in rows])
    if found is not None:
        assert runs(held) == [[(float(c), float(s)) for c, s in one] for one in found]
    else:  # the third stage begins a minute before the second: by the clock alone that one never runs
        assert runs(held) == [[(160.0, 120.0), (150.0, 60.0)], [(160.0, 60.0), (150.0, 60.0), (150.0, 60.0)]]
    assert held_by([], controller, LIKE).programs == ()
    assert UnusedStage.ZERO is controller.unused


def test_each_value_that_changed_is_told_once_with_what_it_was():
    old = program((160.0, OPEN, 60.0), (170.0, SHUT, 120.0), drain_s=30.0)
    new = replace(
        program((160.0, OPEN, 60.0), (175.0, OPEN, 120.0), (150.0, OPEN, 45.0), fryer="cedar"), drain_s=45.0
    )
    assert changes(old, new) == (
        Change(stage=0, what="fryer", before="alder", after="cedar"),
        Change(stage=0, what="drain", before="0:30", after="0:45"),
        Change(stage=2, what="set point", before="170.0 °C", after="175.0 °C"),
        Change(stage=2, what="lid", before="pressure", after="open"),
        Change(stage=3, what="set point", before="", after="150.0 °C"),
        Change(stage=3, what="lid", before="", after="open"),
        Change(stage=3, what="duration", before="", after="0:45"),
    )
    assert changes(old, replace(old, hold_life_s=old.hold_life_s + 60.0), "us")[0].what == "hold life"
    assert changes(old, old) == ()
