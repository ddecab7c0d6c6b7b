"""Search, trade-off, window and transfer against rules that can be worked out by hand: no engine runs.

A margin here is a straight line in the seconds and degrees of a program, so what the search must find is
known; what follows from the engine is in ``test_search.py``.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import product
from types import SimpleNamespace

import numpy as np
import pytest

from frywright.design import offer, window
from frywright.design.offer import UnreachableError, _reason, offered, pareto, shown, stages_told
from frywright.design.search import (
    FACTORS,
    WORST,
    Candidate,
    Effort,
    Goals,
    Sizer,
    _child,
    off_colour,
    search,
)
from frywright.design.shape import longer
from frywright.model.errors import InputError
from frywright.model.program import Program, Stage
from frywright.verdicts.place import place_named

LIMIT = place_named("us_food_code_2022").cook_limit()
LOAD, OIL = FACTORS.index("load_frac"), FACTORS.index("oil_start_k")
GOALS = Goals(margin_k=3.0, longest_s=900.0, most_loss_frac=0.3)
ONE = Program(name="x", product="bone_in", fryer="cedar", stages=(Stage(set_c=160.0, duration_s=600.0),))
TWO = replace(
    ONE, fryer="alder", stages=(Stage(set_c=160.0, duration_s=300.0), Stage(set_c=150.0, duration_s=200.0))
)


def rule_k(program: Program, load: float, oil_k: float) -> np.ndarray:
    """Margins of two cuts: seconds and degrees add, load takes off, and a full load gains slower."""
    total, hot = sum(program.durations_s()), program.stages[0].set_c - 160.0
    margin = (0.06 - 0.02 * load) * total - 15.0 + 0.1 * hot + 0.5 * (oil_k + 8.0)
    return np.array([margin, margin + 1.0 - 0.002 * total])


class Picked:
    """Programs as the stand-in below reads them."""

    def __init__(self, programs):
        self.programs = list(programs)

    def at(self, which):
        return Picked([self.programs[i] for i in which])


class Even(Sizer):
    """A sizer whose margins, loss and colour follow straight lines."""

    def _asked(self, programs):
        return Picked(programs)

    def _at(self, asked, rows):
        margins = [rule_k(p, row[LOAD], row[OIL]) for p, row in zip(asked.programs, rows, strict=True)]
        return np.array(margins), np.array(
            [-8.0 if p.stages[0].set_c > 155.0 else -11.0 for p in asked.programs]
        )

    def judge(self, programs, loads_k):
        return [
            candidate(
                program=p,
                margin_k=float(m.min()),
                loads_k=tuple(m),
                time_s=sum(p.durations_s()),
                loss_frac=0.0005 * sum(p.durations_s()),
            )
            for p, m in zip(programs, loads_k, strict=True)
        ]


def candidate(**changes) -> Candidate:
    usual = {
        "program": ONE,
        "margin_k": 3.0,
        "loads_k": (3.0,),
        "time_s": 600.0,
        "vent_s": 0.0,
        "loss_frac": 0.2,
        "light_loss_frac": 0.25,
        "colour_n": 9.0,
        "yield_frac": 0.9,
        "core_c": 80.0,
        "crust_m": 0.002,
        "cost_n": 1.0,
    }
    return Candidate(**{**usual, **changes})


@pytest.fixture
def even(kitchen):
    return Even(kitchen, ONE, LIMIT, GOALS)


def test_every_program_is_judged_under_every_load_on_the_oil_a_full_one_leaves(even):
    """Smallest, half and full load, on the worst corner's oil or on what the one before left, if lower."""
    programs = [ONE, TWO, replace(ONE, stages=(Stage(set_c=150.0, duration_s=700.0),))]
    by, oil = even.by_load(programs)
    assert oil.tolist() == [WORST["oil_start_k"], WORST["oil_start_k"], -11.0]
    wanted = [[rule_k(p, f, o) for f in even.fractions] for p, o in zip(programs, oil, strict=True)]
    assert by == pytest.approx(np.array(wanted))
    assert even.margins(programs) == pytest.approx([np.min(x) for x in wanted])
    for seconds, weakest in ((400.0, 0), (700.0, 1)):
        one = replace(ONE, stages=(Stage(set_c=160.0, duration_s=seconds),))
        assert even.weakest_cut(one) == even.titles[weakest]
    assert even.loads[-1] == pytest.approx(even.plan.units_count)


@pytest.mark.parametrize("extra", [0.0, 0.5])
def test_the_main_stage_is_as_long_as_the_worst_load_needs_and_no_step_more(even, extra):
    """A point's extra adds 25 K times its cube; one step less and some load lacks its margin."""
    points = [np.array([x, 0.5, extra]) for x in (0.1, 0.5, 0.9)]
    programs, by, sized = even.fit(points)
    goal = 3.0 + 25.0 * extra**3
    assert by.min(axis=(1, 2)) == pytest.approx(even.margins(programs))
    assert (by.min(axis=(1, 2)) >= goal - 1e-9).all()
    assert even.margins(even.build_all(points, sized[:, 0] - even.step_s)).max() < goal
    assert sized[:, 1].tolist() == [2.0] * 3  # the full load gains slowest
    later = even.fit(points, sized)[2][:, 0] - sized[:, 0]  # a child begins with its parent's length
    assert (later >= 0.0).all() and (later <= 2.0 * even.step_s).all()


def test_a_load_that_turns_out_worse_than_the_one_sized_on_has_its_margin_too(even, monkeypatch):
    """At the first guess the smallest load is worst, at the length it needs, 500 s, the full one: that needs
    550 s, and gets no more than two steps above.
    """

    def crossing_k(program: Program, load: float, _oil_k: float) -> np.ndarray:
        total = sum(program.durations_s())
        return np.array([0.02 * total - 8.0 if load == 1.0 else 0.06 * total - 27.0] * 2)

    monkeypatch.setitem(globals(), "rule_k", crossing_k)
    programs, by, sized = even.fit([np.array([0.5, 0.5, 0.0])])
    assert 550.0 <= sum(programs[0].durations_s()) <= 550.0 + 2.0 * even.step_s
    assert by.min() >= 3.0 - 1e-9 and by.min() == pytest.approx(even.margins(programs)[0])
    assert sized[0, 1] == 2.0


def test_candidates_are_made_longer_until_each_has_what_was_asked_and_no_step_more(even):
    """Each to its own margin and half a kelvin; one that was short, to the margin that all must have."""
    told = even.judge([ONE, TWO], even.by_load([ONE, TWO])[0].min(axis=2))
    grown = even.lengthen(told, 0.5)
    for before, after in zip(told, grown, strict=True):
        goal = max(before.margin_k + 0.5, 3.0)
        assert after.margin_k == pytest.approx(even.margins([after.program])[0])
        assert goal <= after.margin_k < goal + 3 * 0.04 * even.step_s
        assert after.program == longer(before.program, after.time_s - before.time_s)
    kept = even.lengthen(grown, 0.0)
    assert [c.program for c in kept] == [c.program for c in grown]


def history(**changes) -> SimpleNamespace:
    """What the usual load gives: two usual pieces, and a heavy tracer at its light end."""
    usual = {"lift_s": 600.0, "vent_s": 0.0, "loss": 0.2, "light": 0.3, "colour": 9.0, "core": 80.0}
    told = {**usual, "crust": 0.002, **changes}

    def piece(heavy, core, crust, colour, loss):
        return SimpleNamespace(
            kind=SimpleNamespace(heavy=heavy),
            yields=SimpleNamespace(moisture_loss_frac=loss),
            browning_n=colour,
            core_at_lift_c=core,
            crust_at_lift_m=crust,
        )

    return SimpleNamespace(
        pieces=[
            piece(False, told["core"] + 5.0, told["crust"] + 0.001, told["colour"] + 1.0, 0.1),
            piece(False, told["core"], told["crust"] - 0.001, told["colour"] - 1.0, 0.1),
            piece(True, 30.0, 0.1, 50.0, told["light"]),
        ],
        lift_s=told["lift_s"],
        vent_s=told["vent_s"],
        moisture_loss_frac=told["loss"],
        yield_frac=0.9,
    )


@pytest.mark.parametrize(
    ("margin_k", "changes", "more"),
    [
        (3.0, {}, 0.0),
        (2.9, {}, 1.0),
        (5.0, {}, 0.0),
        (3.0, {"lift_s": 900.0}, 0.5),
        (3.0, {"lift_s": 960.0}, 0.6 + 0.02 * 60.0),
        (3.0, {"loss": 0.29}, 0.09 / 0.15),
        (3.0, {"loss": 0.32}, 0.12 / 0.15 + 20.0 * 0.02),
        (3.0, {"light": 0.45}, 0.25 * 0.15 / 0.15),
        (3.0, {"vent_s": 60.0}, 0.0),
        (3.0, {"vent_s": 70.0}, 0.02 * 10.0),
        (3.0, {"colour": 11.5}, 0.2 * 0.5),
        (3.0, {"colour": 14.0}, 0.2 + 30.0 * 0.02),
        (3.0, {"core": 72.0}, 0.5 * 2.0),
        (3.0, {"core": 101.0}, 0.5 * 2.0),
        (3.0, {"crust": 0.011}, 5e3 * 0.001),
    ],
)
def test_what_a_candidate_costs(even, margin_k, changes, more):
    """Ten minutes cost 1, 15 % loss 1, a quarter of that the driest piece, half a band off colour 0.1; and
    each goal that is missed by its own weight. Nothing where goals are met.
    """
    made = even._candidate(ONE, np.array([margin_k, margin_k + 1.0]), history(**changes))
    base = 600.0 / 600.0 + (0.2 + 0.25 * 0.3) / 0.15
    assert made.cost_n == pytest.approx(base + more)
    assert (made.margin_k, made.loads_k) == (margin_k, (margin_k, margin_k + 1.0))
    told = {"lift_s": 600.0, "core": 80.0, "crust": 0.002, "colour": 9.0, **changes}
    assert (made.time_s, made.core_c) == (told["lift_s"], told["core"])
    assert (made.crust_m, made.colour_n) == pytest.approx((told["crust"], told["colour"]))
    assert (made.light_loss_frac, made.yield_frac) == (changes.get("light", 0.3), 0.9)


class Bowl:
    """A sizer for :func:`search` whose cost is the distance of a point from a place, and which sees that a
    child begins with what its parent was sized to.
    """

    fryer = SimpleNamespace(controller=SimpleNamespace(stage_count=8), name="x")
    place = np.array([0.2, 0.9, 0.4])

    def __init__(self):
        self.of = {}

    def fit(self, points, sized=None):
        for i, row in enumerate(() if sized is None else sized):
            assert row[0] == pytest.approx(self.of[i])
        self.points = points
        return points, np.zeros((len(points), 1, 1)), np.array([[self.cost(x)] for x in points])

    def cost(self, x):
        return float(np.sum((x - self.place) ** 2))

    def judge(self, points, _):
        for i, x in enumerate(points):
            self.of[i] = min(self.of.get(i, np.inf), self.cost(x))
        assert all((x >= 0.0).all() and (x <= 1.0).all() for x in points)
        return [SimpleNamespace(cost_n=self.cost(x), x=x) for x in points]


def test_the_search_comes_near_the_lowest_cost_and_tells_how_far_it_is():
    """A hundredfold nearer than the first draws; the same seed gives the same, another seed another."""
    shares = []
    best, tried = search(Bowl(), Effort(stages=1, seed=3, progress=shares.append))
    assert len(tried) == 32 * 11 and best.cost_n == min(c.cost_n for c in tried)
    assert best.cost_n < 0.01 * np.median([c.cost_n for c in tried[:32]])
    assert shares == [pytest.approx(n / 11) for n in range(1, 11)]
    assert search(Bowl(), Effort(stages=1, seed=3))[0].cost_n == best.cost_n
    assert search(Bowl(), Effort(stages=1, seed=4))[0].cost_n != best.cost_n
    assert search(Bowl(), Effort(stages=1), Bowl.place)[0].cost_n == 0.0


def test_children_lie_between_their_parent_and_the_best_moved_by_a_difference():
    """Where all points are one, so is the child; of the coordinates about a third stay the parent's."""
    rng = np.random.default_rng(1)
    best = [SimpleNamespace(cost_n=c) for c in (2.0, 1.0, 3.0)]
    one = [np.full(5, 0.4)] * 3
    assert _child(one, best, 0, rng) == pytest.approx(np.full(5, 0.4))
    points = [np.full(4000, 0.3), np.full(4000, 0.5), np.full(4000, 0.4)]
    child = _child(points, best, 0, rng)
    assert np.mean(child == 0.3) == pytest.approx(0.35, abs=0.03)
    moved_to = child[child != 0.3] - (0.3 + 0.6 * (0.5 - 0.3))
    assert min(abs(moved_to[0] - 0.7 * d) for d in (-0.2, -0.1, 0.1, 0.2)) < 1e-12


@pytest.mark.parametrize(("asked", "held", "found"), [(None, 8, 6), (None, 4, 4), (1, 4, 1), (4, 4, 4)])
def test_stages_searched_are_those_asked_for_or_what_the_controller_holds(asked, held, found):
    fryer = SimpleNamespace(controller=SimpleNamespace(stage_count=held), name="cedar")
    assert Effort(stages=asked).stage_count(fryer) == found
    for wrong in (0, held + 1):
        with pytest.raises(InputError, match=f"1 to {held}: what cedar can hold"):
            Effort(stages=wrong).stage_count(fryer)


def test_a_trade_off_holds_each_that_none_beats_and_no_other():
    """By brute force over a lattice of times, losses and colours as they are shown; equals stand once, the
    cheaper of them.
    """
    rng = np.random.default_rng(2)
    drawn = [
        candidate(time_s=600.0 + t, loss_frac=0.2 + 0.001 * x, colour_n=9.0 + 0.25 * c, cost_n=rng.uniform())
        for t, x, c in rng.integers(0, 6, (60, 3)).tolist()
    ]

    def figures(c):
        return c.time_s, round(c.loss_frac, 3), abs(c.colour_n - 9.0)

    best = {
        f
        for f in map(figures, drawn)
        if not any(g != f and all(a <= b for a, b in zip(g, f, strict=True)) for g in map(figures, drawn))
    }
    front = pareto(drawn, GOALS)
    assert {figures(c) for c in front} == best and len(front) == len(best)
    for c in front:
        assert c.cost_n == min(o.cost_n for o in drawn if figures(o) == figures(c))
    assert [c.time_s for c in front] == sorted(c.time_s for c in front)
    assert [off_colour(n, GOALS) for n in (4.0, 9.0, 14.0, 16.5)] == [1.0, 0.0, 1.0, 1.5]


@pytest.mark.parametrize("count", [3, 12, 13, 40])
def test_at_most_twelve_rows_are_shown_with_both_ends_and_the_chosen(count):
    front = [candidate(time_s=600.0 + n, loss_frac=0.3 - 0.001 * n) for n in range(count)]
    front[count // 3] = replace(front[count // 3], loss_frac=0.01)
    for chosen in (front[0], front[count // 2], front[-2]):
        rows = shown(front, chosen)
        assert len(rows) == count if count <= 12 else 10 <= len(rows) <= 12
        assert {front[0].time_s, front[-1].time_s, chosen.time_s, front[count // 3].time_s} <= {
            c.time_s for c in rows
        }
        gaps = np.diff([c.time_s for c in rows])
        assert (gaps > 0).all() and gaps.max() <= (count - 1) / 9 + 1


def test_the_reason_of_a_design_says_who_is_quickest_and_who_juiciest():
    """And names the vent where it is near its longest with much more to spare than asked, at neither edge."""
    front = [candidate(time_s=500.0, loss_frac=0.3), candidate(time_s=800.0, loss_frac=0.1)]
    for vent_s, margin_k, by_vent in (
        (54.0, 9.0, False),
        (54.1, 9.0, True),
        (60.0, 6.0, False),
        (60.0, 6.1, True),
    ):
        note = _reason(candidate(vent_s=vent_s, margin_k=margin_k), front, GOALS)
        assert ("because of the vent" in note.text) is by_vent
        assert note.values == {
            "vent_s": vent_s,
            "most_s": 60.0,
            "time_s": 600.0,
            "loss_frac": 0.2,
            "margin_k": margin_k,
            "quick_s": 500.0,
            "quick_loss_frac": 0.3,
            "juicy_loss_frac": 0.1,
            "juicy_s": 800.0,
        }


@pytest.mark.parametrize(
    ("missed", "told"),
    [
        ({"margin_k": 1.0}, "margin: 1.0 °C to spare of 3.0 °C"),
        ({"time_s": 1000.0}, "time: 16:40 of 15:00"),
        ({"vent_s": 65.0}, "vent: 1:05 of 1:00"),
        ({"loss_frac": 0.31}, "moisture lost: 31.0 % of 30.0 %"),
        ({"core_c": 70.0}, "core: 70.0 °C, wanted 74.0 °C to 99.0 °C"),
        ({"crust_m": 0.02}, "crust: 20.0 mm, wanted 0.00 mm to 10.0 mm"),
        ({"colour_n": 15.0}, "colour: 15.0, wanted 4 to 14"),
        ({}, "margin: 3.0 °C to spare of 3.0 °C"),
    ],
)
def test_what_cannot_be_reached_is_said_with_how_near_it_came(even, missed, told):
    """The goal that binds with both figures, the stages of the nearest, what to do, the smallest load."""
    error = UnreachableError(even, candidate(**missed), GOALS)
    text = error.say(str, "metric")
    assert f"What binds is {told}." in text
    assert "Nearest program found: 160.0 °C · open · 10:00." in text
    assert offer.ADVICE[error.goal] in text
    assert f"{even.loads[0]:.3g} × head" in text
    assert stages_told(ONE, "us") == ["320 °F · open · 10:00"]


@pytest.mark.parametrize("fails", [0, 1, 3, 4])
def test_a_program_is_offered_once_its_proof_holds_or_not_at_all(even, monkeypatch, fails):
    """Each failed proof makes all longer by what it lacked and 0.2 K; after four it is given up. No two
    proofs draw the same loads.
    """
    lacks, seen, seeds = [-0.4] * fails + [0.1], [], []

    def prove(plan, limit, guard_k, samples, seed):
        seen.append(plan.program)
        seeds.append(seed)
        lowest = lacks[len(seen) - 1]
        return SimpleNamespace(holds=lowest >= 0.0, lowest_k=lowest)

    monkeypatch.setattr(offer, "prove", prove)
    vents = []
    monkeypatch.setattr(offer, "require_vent_of", vents.append)
    start = even.judge([ONE], even.by_load([ONE])[0].min(axis=2))
    wide = replace(GOALS, most_loss_frac=0.9)
    if fails == 4:
        with pytest.raises(UnreachableError) as refused:
            offered(even, start, wide)
        assert refused.value.nearest.margin_k == -0.4
        return
    best, front, proof = offered(even, start, wide)
    assert seeds == list(range(1, fails + 2))
    assert (front, proof.holds, len(vents), len(seen)) == ((best,), True, 1, fails + 1)
    assert best.margin_k >= start[0].margin_k + 0.6 * fails
    assert best.margin_k < start[0].margin_k + (0.6 + 0.12 * even.step_s) * max(fails, 0.01)
    tight = replace(wide, longest_s=start[0].time_s + 1.0)
    seen.clear()
    if fails:
        with pytest.raises(UnreachableError, match="time"):
            offered(even, start, tight)


def test_a_window_ends_at_the_last_step_that_meets_all_goals(kitchen, monkeypatch):
    """Every value both ways against a walk step by step, and what breaks one step on."""
    monkeypatch.setattr(window, "Sizer", Even)
    even = Even(kitchen, TWO, LIMIT, GOALS)
    start = replace(TWO, stages=tuple(replace(s, duration_s=s.duration_s + 50.0) for s in TWO.stages))
    goals = replace(GOALS, margin_k=2.0, longest_s=640.0, hottest_c=165.0, most_loss_frac=0.9)
    here, edges = window.window(kitchen, start, LIMIT, goals)
    assert here.margin_k == pytest.approx(even.margins([start])[0]) and here.margin_k > 2.0
    assert len(edges) == 8
    controller = even.fryer.controller
    step = {
        what: next(n * own for n in range(1, 9) if n * own >= least - 1e-9)
        for what, own, least in (
            ("time", controller.time_step_s, 5.0),
            ("set point", controller.temp_step_k, 1.0),
        )
    }
    for edge, (stage, what, sign) in zip(edges, product((0, 1), ("time", "set point"), (-1, 1)), strict=True):
        assert (edge.stage, edge.what, edge.sign) == (stage + 1, what, sign)
        assert edge.unit == ("s" if what == "time" else "K")
        by, breaks = 0.0, ""
        while not breaks and abs(by) + step[what] <= (180.0 if what == "time" else 25.0):
            trial = start.stages[stage]
            trial = (
                replace(trial, duration_s=trial.duration_s + by + sign * step[what])
                if what == "time"
                else replace(trial, set_c=trial.set_c + by + sign * step[what])
            )
            changed = replace(
                start, stages=tuple(trial if i == stage else s for i, s in enumerate(start.stages))
            )
            margin = even.margins([changed])[0]
            hot = max(s.set_c for s in changed.stages) > 165.0 + 1e-6
            breaks = "limit" if margin < 0.0 else "hottest oil" if hot else "margin" if margin < 1.95 else ""
            breaks = breaks or ("time" if sum(changed.durations_s()) > 640.0 else "")
            by += 0.0 if breaks else sign * step[what]
        assert edge.change == pytest.approx(by), edge
        assert edge.breaks == breaks, edge
        assert edge.piece in (even.titles if breaks in ("limit", "margin") else [""])
