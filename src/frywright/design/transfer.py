"""Carries a program to another fryer, load, bird, place or lid: same core, crust and loss.

The target program is sized to the margin the source has in *its* worst case, then set points and
stages are searched for the least mismatch of what the guest gets. What stays unmatched is said.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from frywright.design.search import Candidate, Effort, Goals, Sizer, search
from frywright.design.vent import require_vent, require_vent_of
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program
from frywright.physics.fry import FryHistory, simulate
from frywright.physics.plan import make_plan
from frywright.verdicts.limits import CookLimit

CORE_K, CRUST_M, LOSS_FRAC, COLOUR_N = 3.0, 2.0e-4, 0.015, 3.0
"""Differences that count alike in a mismatch, and within which a match is called a match (estimates)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Taste:
    """What the guest gets of a usual load, averaged over its cuts."""

    core_c: float
    crust_m: float
    loss_frac: float
    colour_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Transfer:
    """The program for the target, both tastes, and what is not matched."""

    program: Program
    margin_k: float
    source: Taste
    target: Taste
    unmatched: dict[str, float]  # quality and how many times what counts as a match


def taste(history: FryHistory) -> Taste:
    """Core at lift, crust, loss and colour of the usual pieces."""
    usual = [p for p in history.pieces if not p.kind.heavy]
    return Taste(
        core_c=float(np.mean([p.core_at_lift_c for p in usual])), crust_m=float(np.mean([p.crust_at_lift_m for p in usual])),
        loss_frac=history.moisture_loss_frac, colour_n=float(np.mean([p.browning_n for p in usual])),
    )  # fmt: skip


def mismatch(wanted: Taste, got: Taste) -> dict[str, float]:
    """Signed difference of each quality in units of what counts as a match."""
    return {
        "core": (got.core_c - wanted.core_c) / CORE_K, "crust": (got.crust_m - wanted.crust_m) / CRUST_M,
        "loss": (got.loss_frac - wanted.loss_frac) / LOSS_FRAC, "colour": (got.colour_n - wanted.colour_n) / COLOUR_N,
    }  # fmt: skip


class Matcher(Sizer):
    """Judges candidates by how little they differ from a taste."""

    def __init__(self, kitchen: Kitchen, base: Program, limit: CookLimit, goals: Goals, wanted: Taste) -> None:
        super().__init__(kitchen, base, limit, goals)
        self.wanted = wanted

    def _candidate(self, program: Program, margin: float, history: FryHistory) -> Candidate:
        plain = super()._candidate(program, margin, history)
        off = mismatch(self.wanted, taste(history))
        cost = sum(v * v for v in off.values()) + 10.0 * max(0.0, self.goals.margin_k - margin)
        return replace(plain, cost_n=float(cost))


@dataclass(frozen=True, slots=True, kw_only=True)
class Target:
    """Where a program is carried: kitchen (perhaps at another altitude), fryer, bird (another product, or another mass of the same), load."""

    kitchen: Kitchen
    fryer: str
    product: str | None = None
    load_heads: float | None = None
    unit_mass_kg: float | None = None


def transfer(
    source: Kitchen, program: Program, target: Target, limit: CookLimit, effort: Effort | None = None
) -> Transfer:
    """The program of another fryer, bird, load or place that gives the same food.

    Raises
    ------
    InputError
        The limit is not met even at the longest time; the message says how near it comes. Or a
        vent was never told, or takes too long.
    """
    found, kitchen = target.kitchen.fryer(target.fryer), target.kitchen
    require_vent(kitchen, target.fryer)
    require_vent_of(make_plan(source, program))
    wanted = taste(simulate(make_plan(source, program)))
    at_home = Sizer(source, program, limit, Goals())
    goal = float(np.clip(at_home.margins([program.timed()])[0], 0.0, 15.0))
    goods = kitchen.product(target.product or program.product)
    same = (target.fryer, goods.key) == (program.fryer, program.product)
    name = program.name if same else f"{goods.key} {target.fryer}"
    base = replace(
        program.timed(),
        name=name,
        product=goods.key,
        fryer=target.fryer,
        load_heads=target.load_heads,
        altitude_m=None,
        unit_mass_kg=target.unit_mass_kg,
    )
    first = replace(base, stages=(replace(base.stages[0], lid=LidState.OPEN),))
    matcher = Matcher(kitchen, first, limit, Goals(margin_k=goal), wanted)
    best, _ = search(matcher, effort or Effort())
    if best.margin_k < 0.0:
        raise InputError(
            "transfer", "not possible", "another fryer or load; the nearest program is {short} K short of the limit",
            where=f"{goods.name}, {found.name}", values={"short": f"{-best.margin_k:.1f}"},
        )  # fmt: skip
    require_vent_of(make_plan(kitchen, best.program))
    got = taste(simulate(make_plan(kitchen, best.program)))
    off = {name: value for name, value in mismatch(wanted, got).items() if abs(value) > 1.0}  # fmt: skip
    return Transfer(program=best.program, margin_k=best.margin_k, source=wanted, target=got, unmatched=off)
