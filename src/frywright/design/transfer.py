"""Carries a program to another fryer, load, bird, place or lid: same core, crust and loss, by the nearest
program.

The target program is sized over all its loads to the margin the source has over *its* loads. Where the target
can hold the source's stages, only the main stage is made longer or shorter; if that does not match, set
points and the other stages move, and each move counts against the result. Where it cannot, stages are
searched anew. What stays unmatched is said, and the proof of the result holds.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.catalog.capacity import check_load
from frywright.design.controller import rounded
from frywright.design.offer import offered
from frywright.design.proof import Proof
from frywright.design.search import Candidate, Effort, Goals, Sizer, search
from frywright.design.shape import lids_of, merged
from frywright.design.vent import require_vent, require_vent_of
from frywright.model.fryer import Fryer, FryerKind
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program, Stage
from frywright.physics.fry import FryHistory, simulate
from frywright.physics.plan import make_plan
from frywright.verdicts.limits import CookLimit

Array = NDArray[np.float64]
CORE_K, CRUST_M, LOSS_FRAC, COLOUR_N = 3.0, 2.0e-4, 0.015, 3.0
"""Differences that count alike in a mismatch, and within which a match is called a match (estimates)."""
WIDE = Goals(
    margin_k=0.0,
    longest_s=7200.0,
    most_loss_frac=0.9,
    colour_low_n=0.0,
    colour_high_n=60.0,
    core_low_c=0.0,
    core_high_c=120.0,
    crust_high_m=0.05,
    hottest_c=200.0,
)
"""A transfer is judged by its match, not by goals."""
MOVE_K, MOVE_S, MOVE_WEIGHT_N = 10.0, 60.0, 0.5
"""A set point moved by 10 K, or a stage other than the main one by 60 s, counts half as much as a mismatch
that just shows (own estimate).
"""
SET_SPAN_K = 15.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Taste:
    """What the guest gets of a usual load, averaged over its cuts."""

    core_c: float
    crust_m: float
    loss_frac: float
    colour_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Transfer:
    """The program for the target with its proof, both tastes, and what is not matched."""

    program: Program
    margin_k: float
    source: Taste
    target: Taste
    unmatched: dict[str, float]  # quality and how many times what counts as a match
    proof: Proof


def taste(history: FryHistory) -> Taste:
    """Core at lift, crust, loss and colour of the usual pieces."""
    usual = [p for p in history.pieces if not p.kind.heavy]
    return Taste(
        core_c=float(np.mean([p.core_at_lift_c for p in usual])),
        crust_m=float(np.mean([p.crust_at_lift_m for p in usual])),
        loss_frac=history.moisture_loss_frac,
        colour_n=float(np.mean([p.browning_n for p in usual])),
    )


def mismatch(wanted: Taste, got: Taste) -> dict[str, float]:
    """Signed difference of each quality in units of what counts as a match."""
    return {
        "core": (got.core_c - wanted.core_c) / CORE_K,
        "crust": (got.crust_m - wanted.crust_m) / CRUST_M,
        "loss": (got.loss_frac - wanted.loss_frac) / LOSS_FRAC,
        "colour": (got.colour_n - wanted.colour_n) / COLOUR_N,
    }


class Matcher(Sizer):
    """Judges candidates by how little they differ from a taste."""

    def __init__(
        self, kitchen: Kitchen, base: Program, limit: CookLimit, goals: Goals, wanted: Taste
    ) -> None:
        super().__init__(kitchen, base, limit, goals)
        self.wanted = wanted

    def _candidate(self, program: Program, loads_k: Array, history: FryHistory) -> Candidate:
        plain = super()._candidate(program, loads_k, history)
        off = mismatch(self.wanted, taste(history))
        cost = sum(v * v for v in off.values()) + 10.0 * max(0.0, self.goals.margin_k - plain.margin_k)
        return replace(plain, cost_n=float(cost))


class Shaped(Matcher):
    """Keeps the stages of a program: points move its set points and the lengths of all but the main stage."""

    def __init__(
        self, kitchen: Kitchen, base: Program, limit: CookLimit, goals: Goals, wanted: Taste
    ) -> None:
        super().__init__(kitchen, base, limit, goals, wanted)
        closed = [i for i, s in enumerate(base.stages) if s.lid is LidState.PRESSURE] or range(
            len(base.stages)
        )
        self.main = max(closed, key=lambda i: base.stages[i].duration_s or 0.0)

    def build_all(self, points: Sequence[Array], length: Array) -> list[Program]:
        """The source's stages moved by each point; half is where they were."""
        return [self._moved(x, float(s)) for x, s in zip(points, length, strict=True)]

    def _moved(self, x: Array, main_s: float) -> Program:
        n, controller, stages = len(self.base.stages), self.fryer.controller, []
        for i, stage in enumerate(self.base.stages):
            set_c = float(
                np.clip(
                    stage.set_c + (2.0 * x[i] - 1.0) * SET_SPAN_K, controller.lowest_c, controller.highest_c
                )
            )
            length = (
                main_s if i == self.main else (stage.duration_s or 0.0) * 2.0 ** (2.0 * float(x[n + i]) - 1.0)
            )
            stages.append(replace(stage, set_c=set_c, duration_s=length))
        return rounded(replace(self.base, stages=tuple(stages)), controller)

    def _candidate(self, program: Program, loads_k: Array, history: FryHistory) -> Candidate:
        plain = super()._candidate(program, loads_k, history)
        return replace(plain, cost_n=plain.cost_n + MOVE_WEIGHT_N * moved(self.base, program, self.main))


def moved(old: Program, new: Program, main: int) -> float:
    """How far a program of the same stages has moved: squares of set points in 10 K and of lengths in 60 s,
    the main stage's length free.
    """
    total = 0.0
    for i, (a, b) in enumerate(zip(old.stages, new.stages, strict=True)):
        total += ((b.set_c - a.set_c) / MOVE_K) ** 2
        if i != main:
            total += (((b.duration_s or 0.0) - (a.duration_s or 0.0)) / MOVE_S) ** 2
    return total


@dataclass(frozen=True, slots=True, kw_only=True)
class Target:
    """Where a program is carried: kitchen (perhaps at another altitude), fryer, bird (another product, or
    another mass of the same), load.
    """

    kitchen: Kitchen
    fryer: str
    product: str | None = None
    load_heads: float | None = None
    unit_mass_kg: float | None = None


def transfer(
    source: Kitchen, program: Program, target: Target, limit: CookLimit, effort: Effort | None = None
) -> Transfer:
    """The program of another fryer, bird, load or place that gives the same food. Raises InputError: the
    limit is not met over all loads even at the longest time; the message says how near it comes. Or a vent
    was never told, or takes too long.
    """
    kitchen, effort = target.kitchen, effort or Effort()
    require_vent(kitchen, target.fryer)
    require_vent_of(make_plan(source, program))
    plain = program.timed()
    wanted = taste(simulate(make_plan(source, program)))
    goal = float(np.clip(Sizer(source, plain, limit, WIDE).margins([plain])[0], 0.0, 15.0))
    goods = kitchen.product(target.product or program.product)
    same = (target.fryer, goods.key) == (program.fryer, program.product)
    name = program.name if same else f"{goods.key} {target.fryer}"
    base = replace(
        plain,
        name=name,
        product=goods.key,
        fryer=target.fryer,
        load_heads=target.load_heads,
        altitude_m=None,
        unit_mass_kg=target.unit_mass_kg,
    )
    check_load(kitchen, base)
    goals = replace(WIDE, margin_k=goal)
    fryer = kitchen.fryer(target.fryer)
    if _kept(fryer, base, source.fryer(program.fryer).kind, effort):
        matcher: Matcher = Shaped(kitchen, base, limit, goals, wanted)
        best = _nearest(matcher, effort)
    else:
        lid = lids_of(fryer, 1)[0]
        first = replace(base, stages=(Stage(set_c=base.stages[0].set_c, lid=lid, duration_s=600.0),))
        matcher = Matcher(kitchen, first, limit, goals, wanted)
        best = search(matcher, effort)[0]
    best, _, proof = offered(matcher, [best], WIDE)
    made = merged(best.program)
    got = taste(simulate(make_plan(kitchen, made)))
    off = {name: value for name, value in mismatch(wanted, got).items() if abs(value) > 1.0}
    return Transfer(
        program=made, margin_k=best.margin_k, source=wanted, target=got, unmatched=off, proof=proof
    )


def _kept(fryer: Fryer, base: Program, kind: FryerKind, effort: Effort) -> bool:
    """Whether the target's fryer can hold the source's stages: of the same kind, as many, and no other number
    asked.
    """
    count = len(base.stages)
    return fryer.kind is kind and count <= fryer.controller.stage_count and effort.stages in (None, count)


def _nearest(matcher: Matcher, effort: Effort) -> Candidate:
    """The source's stages with only the main one resized where that matches; else the nearest that does."""
    count = len(matcher.base.stages)
    start = np.full(2 * count + 1, 0.5)
    start[-1] = 0.0
    programs, by, _ = matcher.fit([start])
    plain = matcher.judge(programs, by.min(axis=2))[0]
    got = taste(simulate(matcher.plan_of(plain.program)))
    if plain.margin_k >= matcher.goals.margin_k and all(
        abs(v) <= 1.0 for v in mismatch(matcher.wanted, got).values()
    ):
        return plain
    return search(matcher, replace(effort, stages=count), start)[0]
