"""A program that follows its goals: out of the programs of a finished search, each made longer or shorter,
the best for the goals asked now.

How the figures of a program move with its main stage is learned once, from one change of it, and taken as a
straight line. The few that look best are then sized and judged as the search does it, so what is shown is
never the straight line. It is a proposal: no proof stands behind it.
"""

from __future__ import annotations

from collections.abc import Sequence
from copy import copy
from dataclasses import fields, replace

import numpy as np
from numpy.typing import NDArray

from frywright.design.search import Candidate, Effort, Figures, Goals, Sizer, cost, search
from frywright.design.shape import cooled, longer, main_stage

Array = NDArray[np.float64]
PROBE_S, REACH_S, PLACES = 30.0, 240.0, 33
"""The change that is learned from, how far a main stage may move, and in how many places it is looked at."""
BEST = 3
"""Programs that are sized and judged at each change of a goal (own choice)."""
DOUBT_N = 0.001
"""What a straight line costs a second of its length: of two programs that look alike the one nearer to what
was judged comes first (own trials).
"""


class Follower:
    """Programs of a search, and how each moves with its main stage."""

    def __init__(self, sizer: Sizer, effort: Effort) -> None:
        self.sizer = sizer
        tried = search(sizer, effort)[1]
        self.tried = list({c.program: c for c in tried}.values())
        moved = [longer(c.program, PROBE_S) for c in self.tried]
        after = _figures(sizer.judge(moved, sizer.by_load(moved)[0].min(axis=2)))
        self.here = _figures(self.tried)
        self.slope = {name: (after[name] - now) / PROBE_S for name, now in self.here.items()}
        self.main_s = np.array([c.program.durations_s()[main_stage(c.program)] for c in self.tried])

    def propose(self, goals: Goals) -> Candidate:
        """The best program found for these goals, sized and judged over all loads; it may miss one."""
        sizer = copy(self.sizer)
        sizer.goals = goals
        steps = np.round(np.linspace(-REACH_S, REACH_S, PLACES) / sizer.step_s) * sizer.step_s
        guess = {name: now[:, None] + self.slope[name][:, None] * steps for name, now in self.here.items()}
        found = cost(Figures(**guess), goals) + DOUBT_N * np.abs(steps)
        main_s = self.main_s[:, None] + steps
        found[(main_s < sizer.step_s) | (main_s > sizer.longest_s)] = np.inf
        at = found.argmin(axis=1)
        best = np.argsort(found.min(axis=1), kind="stable")[:BEST]
        chosen = [longer(self.tried[i].program, float(steps[at[i]])) for i in best]
        programs = [cooled(p, goals.hottest_c, sizer.fryer.controller) for p in chosen]
        by = sizer.by_load(programs)[0].min(axis=2)
        sized = [
            replace(self.tried[i], program=program, margin_k=float(loads_k.min()), loads_k=tuple(loads_k))
            for i, program, loads_k in zip(best, programs, by, strict=True)
        ]
        return min(sizer.lengthen(sized, 0.0), key=lambda c: c.cost_n)


def _figures(candidates: Sequence[Candidate]) -> dict[str, Array]:
    return {f.name: np.array([getattr(c, f.name) for c in candidates]) for f in fields(Figures)}
