"""How far a program may be changed, value by value, before it breaks something."""

from __future__ import annotations

from dataclasses import dataclass, replace

from frywright.design.search import Candidate, Goals, Sizer, binding
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.verdicts.limits import CookLimit

SPAN_S, SPAN_K, HALVINGS = 180.0, 25.0, 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Edge:
    """Distance of one value to the edge of the window, and what breaks there; None if nothing does."""

    stage: int
    what: str
    change: float
    unit: str
    breaks: str
    piece: str = ""  # the cut whose heavy end fails, where the margin breaks


def _changed(program: Program, stage: int, what: str, by: float) -> Program | None:
    old = program.stages[stage]
    if what == "time":
        length = (old.duration_s or 0.0) + by
        if length < 0:
            return None
        new = replace(old, duration_s=length)
    else:
        if not 60.0 <= old.set_c + by <= 230.0:
            return None
        new = replace(old, set_c=old.set_c + by)
    return replace(program, stages=(*program.stages[:stage], new, *program.stages[stage + 1 :]))


def window(kitchen: Kitchen, program: Program, limit: CookLimit, goals: Goals | None = None) -> tuple[Candidate, tuple[Edge, ...]]:  # fmt: skip
    """The program's own figures, and for each stage the distance to each edge.

    Each edge is found by halving between the program and the far end (180 s, 25 K); a value whose
    far end still meets the goals has no edge within that span and is left out.
    """
    goals = goals or Goals(margin_k=0.0)
    sizer = Sizer(kitchen, program, limit, goals)
    plain = program.timed()
    here = sizer.judge([plain], sizer.margins([plain]))[0]
    edges = []
    for stage in range(len(plain.stages)):
        for what, span, unit in (("time", SPAN_S, "s"), ("set point", SPAN_K, "K")):
            for sign in (-1.0, 1.0):
                edge = _edge(sizer, plain, stage, what, sign * span, unit, goals)
                if edge:
                    edges.append(edge)
    return here, tuple(edges)


def _edge(sizer: Sizer, program: Program, stage: int, what: str, far: float, unit: str, goals: Goals) -> Edge | None:
    good, bad, breaks = 0.0, far, ""
    for turn in range(HALVINGS + 1):
        by = far if turn == 0 else 0.5 * (good + bad)
        trial = _changed(program, stage, what, by)
        barred = "time" if trial is None else _barred(sizer, trial, goals)
        if barred:
            bad, breaks = by, barred
        elif turn == 0:
            return None
        else:
            good = by
    failed = _changed(program, stage, what, bad)
    piece = sizer.weakest_cut(failed) if breaks == "margin" and failed else ""
    return Edge(stage=stage + 1, what=what, change=good, unit=unit, breaks=breaks, piece=piece)


def _barred(sizer: Sizer, program: Program, goals: Goals) -> str:
    return binding(sizer.judge([program], sizer.margins([program]))[0], goals)
