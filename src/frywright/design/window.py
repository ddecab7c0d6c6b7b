"""How far a program may be changed, value by value, before it breaks something over all loads."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import ceil

from frywright.design.search import Candidate, Goals, Sizer, binding
from frywright.design.shape import changed
from frywright.model.fryer import Controller
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.units import to_inside
from frywright.verdicts.limits import CookLimit

SPAN_S, SPAN_K = 180.0, 25.0
FINEST_S, FINEST_K = 5.0, 1.0
"""Farthest change tried, and the finest: a controller with smaller steps is tried in multiples of them (own
choice).
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Edge:
    """How far one value may move one way with all goals met (``change``, signed), and what breaks beyond it.

    ``breaks`` is *limit* where the cook limit itself is missed, *margin* where only the margin asked for is,
    or another goal; empty where nothing breaks as far as was tried.
    """

    stage: int
    what: str
    sign: int
    change: float
    unit: str
    breaks: str = ""
    piece: str = ""  # the cut whose heavy end fails, where the limit or the margin breaks


@dataclass(slots=True)
class _Walk:
    """Search of one edge in whole steps: ``good`` still meets, ``bad`` does not."""

    stage: int
    what: str
    sign: int
    step_n: float
    most: int
    good: int = 0
    bad: int = 0
    breaks: str = ""
    open: bool = True

    @property
    def trial(self) -> int:
        return self.most if not self.bad else (self.good + self.bad) // 2

    def learn(self, barred: str) -> None:
        """Narrow the search by what the trial broke."""
        if barred:
            self.bad, self.breaks = self.trial, barred
        else:
            self.good = self.trial
        self.open = self.good != self.most and self.bad - self.good != 1


def window(
    kitchen: Kitchen, program: Program, limit: CookLimit, goals: Goals | None = None
) -> tuple[Candidate, tuple[Edge, ...]]:
    """The program's own figures, and for every value keyed the distance to its edge both ways.

    Goals that the program itself misses are left out; a program short of the limit has no window.
    """
    goals = goals or Goals(margin_k=0.0)
    plain = program.timed()
    sizer = Sizer(kitchen, plain, limit, goals)
    here = sizer.judged(plain)
    if here.margin_k < 0.0:
        return here, ()
    while (barred := binding(here, goals)) and barred != "vent":
        goals = _without(goals, barred)
    walks = [walk for stage in range(len(plain.stages)) for walk in _walks(sizer, plain, stage)]
    while running := [walk for walk in walks if walk.open]:
        trials = [_changed(plain, walk, walk.trial) for walk in running]
        for walk, barred in zip(running, _barred(sizer, trials, goals), strict=True):
            walk.learn(barred)
    return here, tuple(_edge(sizer, plain, walk) for walk in walks)


def _without(goals: Goals, name: str) -> Goals:
    """The goals with one of them as wide as can be."""
    return {
        "margin": replace(goals, margin_k=0.0),
        "time": replace(goals, longest_s=7200.0),
        "moisture lost": replace(goals, most_loss_frac=0.9),
        "core": replace(goals, core_low_c=0.0, core_high_c=120.0),
        "crust": replace(goals, crust_low_m=0.0, crust_high_m=0.05),
        "colour": replace(goals, colour_low_n=0.0, colour_high_n=60.0),
    }[name]


def reach(controller: Controller, program: Program, number: int) -> dict[str, tuple[float, float]]:
    """How far time [s] and set point [K] of a stage are tried, less and more: as far as controller and clock
    go; stages count from 0.
    """
    stage = program.stages[number]
    shorter = (stage.duration_s or 0.0) - controller.time_step_s
    room = controller.longest_s - sum(program.durations_s())
    return {
        "time": (-min(SPAN_S, shorter), min(SPAN_S, room)),
        "set point": (
            -min(SPAN_K, stage.set_c - controller.lowest_c),
            min(SPAN_K, controller.highest_c - stage.set_c),
        ),
    }


def _walks(sizer: Sizer, program: Program, number: int) -> list[_Walk]:
    """Both ways of both values of a stage."""
    controller = sizer.fryer.controller
    second = controller.time_step_s * ceil(FINEST_S / controller.time_step_s)
    degree_step = (
        controller.temp_step_k
        if str(controller.shows) == "c"
        else to_inside(controller.temp_step_k * 1.8, "f_diff")
    )
    degree = degree_step * ceil(FINEST_K / degree_step - 1e-9)
    found = []
    for (what, (low, high)), step in zip(
        reach(controller, program, number).items(), (second, degree), strict=True
    ):
        found += [
            _Walk(number, what, -1, step, int(-low // step)),
            _Walk(number, what, 1, step, int(high // step)),
        ]
    for walk in found:
        walk.open = walk.most > 0
    return found


def _changed(program: Program, walk: _Walk, steps: int) -> Program:
    return changed(program, walk.stage, walk.what, walk.sign * steps * walk.step_n)


def _barred(sizer: Sizer, programs: Sequence[Program], goals: Goals) -> list[str]:
    """What each program breaks: the limit itself, the margin asked for, the hottest oil, or another goal."""
    found = []
    for c in sizer.judge(programs, sizer.by_load(programs)[0].min(axis=2)):
        hot = max(stage.set_c for stage in c.program.stages) > goals.hottest_c + 1e-6
        found.append("limit" if c.margin_k < 0.0 else "hottest oil" if hot else binding(c, goals))
    return found


def _edge(sizer: Sizer, program: Program, walk: _Walk) -> Edge:
    piece = sizer.weakest_cut(_changed(program, walk, walk.bad)) if walk.breaks in ("limit", "margin") else ""
    return Edge(
        stage=walk.stage + 1,
        what=walk.what,
        sign=walk.sign,
        change=walk.sign * walk.good * walk.step_n,
        unit="s" if walk.what == "time" else "K",
        breaks=walk.breaks,
        piece=piece,
    )
