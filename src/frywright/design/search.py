"""Designs staged programs: every candidate just meets its margin in the worst case, then the
trade-off of time, moisture and colour decides.

A candidate is a set of set points and shares of time. Its main stage is lengthened until the
coldest heavy piece of a cold, full, weakly heated load has the wanted margin; so the search never
compares programs that do not meet the limit. Same seed, same answer.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog
from frywright.design.controller import rounded
from frywright.design.proof import FACTORS, question
from frywright.design.vent import require_vent, require_vent_of
from frywright.model.errors import InputError
from frywright.model.findings import Note
from frywright.model.fryer import Fryer, FryerKind
from frywright.model.kitchen import Kitchen
from frywright.model.program import LidState, Program, Stage
from frywright.physics.fry import FryHistory, simulate_many
from frywright.physics.inputs import ROUTINE
from frywright.physics.lift import lift_of
from frywright.physics.plan import FryPlan, make_plan
from frywright.physics.solve import run_many
from frywright.verdicts.limits import CookLimit
from frywright.verdicts.margin import margin_k

Array = NDArray[np.float64]
WORST = {
    "weight_quantile_frac": 0.98, "start_temp_k": -2.0, "load_frac": 1.0, "heater_frac": 0.85, "oil_level_frac": 0.95,
    "offset_k": 2.0, "oil_start_k": -8.0, "late_lid_s": 30.0, "surface_frac": 0.8, "altitude_m": 0.0,
}  # fmt: skip
"""The corner every candidate is sized on; the full proof follows for the chosen one (estimates)."""

COOLEST_C, HOTTEST_C = 140.0, 185.0
SHORTEST_S, LONGEST_S = 30.0, 2400.0
EDGE_STAGE_S = (20.0, 150.0)
POPULATION, GENERATIONS = 32, 10
MOST_EXTRA_K = 25.0  # a program may be made longer than its margin asks for, for colour
FIRST_GUESS_S, FIRST_PASSES, LATER_PASSES = 400.0, 7, 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Goals:
    """What is wanted. Colour is dE of the dry crust (kinetics/browning); loss of breaded weight."""

    margin_k: float = 3.0
    longest_s: float = 1500.0
    most_loss_frac: float = 0.35
    colour_low_n: float = 4.0
    colour_high_n: float = 14.0
    hottest_c: float = HOTTEST_C
    core_low_c: float = 74.0
    core_high_c: float = 99.0
    crust_low_m: float = 0.0
    crust_high_m: float = 0.01
    time_weight_n: float = 1.0
    loss_weight_n: float = 1.0
    colour_weight_n: float = 1.0

    def __post_init__(self) -> None:
        if not 0.0 <= self.margin_k <= 15.0:
            raise InputError(
                "margin", self.margin_k, "{low_k} to {high_k}", unit="k", values={"low_k": 0.0, "high_k": 15.0}
            )
        if not self.longest_s >= 60.0:
            raise InputError("longest time", self.longest_s, "{least_s} or more", unit="s", values={"least_s": 60.0})
        if not self.colour_low_n < self.colour_high_n:
            raise InputError("colour band", f"{self.colour_low_n:g} to {self.colour_high_n:g}", "low below high")
        if not (self.core_low_c < self.core_high_c and self.crust_low_m < self.crust_high_m):
            raise InputError("core or crust range", "empty", "low below high")
        if not COOLEST_C < self.hottest_c <= 200.0:
            raise InputError(
                "hottest oil",
                self.hottest_c,
                "{low_c} to {high_c}",
                unit="c",
                values={"low_c": COOLEST_C, "high_c": 200.0},
            )


@dataclass(frozen=True, slots=True, kw_only=True)
class Effort:
    """How to search: stages (default what the controller holds, at most 4), seed, progress.

    Same seed, same answer. ``progress`` is called with the share done and may raise to cancel.
    """

    stages: int | None = None
    seed: int = 1
    progress: Callable[[float], None] | None = None

    def stage_count(self, fryer: Fryer) -> int:
        """Stages to search with on a fryer."""
        return min(self.stages or 4, fryer.controller.stage_count)


@dataclass(frozen=True, slots=True, kw_only=True)
class Candidate:
    """A program with its worst-case margin and what the usual load gives."""

    program: Program
    margin_k: float
    time_s: float
    loss_frac: float
    colour_n: float
    yield_frac: float
    core_c: float  # coldest usual piece at the lift
    crust_m: float  # mean of the usual pieces
    cost_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Design:
    """Recommended program, trade-off front (no candidate beats another in all), and why."""

    recommended: Candidate
    front: tuple[Candidate, ...]
    tried_count: int
    reason: Note


def lids_of(fryer: Fryer, stages: int) -> list[LidState]:
    """Lid of each stage: open to set the crust, pressure in the middle, open to finish."""
    if fryer.kind is FryerKind.OPEN:
        return [LidState.OPEN] * stages
    if stages <= 2:
        return [LidState.PRESSURE] * stages
    return [LidState.OPEN, *[LidState.PRESSURE] * (stages - 2), LidState.OPEN]


def build(base: Program, fryer: Fryer, x: Array, main_s: float, hottest_c: float) -> Program:
    """Program of a point ``x`` in [0, 1]^(2n+1): n set points, n shares, extra margin; the main part takes ``main_s``."""
    n = len(x) // 2
    lids = lids_of(fryer, n)
    sets = COOLEST_C + x[:n] * (hottest_c - COOLEST_C)
    inner = [i for i, lid in enumerate(lids) if lid is LidState.PRESSURE] or list(range(n))
    if len(inner) == n and n > 1:
        shares = x[n : 2 * n] + 0.15
    else:
        shares = np.where(np.isin(np.arange(n), inner), x[n : 2 * n] + 0.15, 0.0)
    stages = []
    for i in range(n):
        length = main_s * shares[i] / shares.sum() if i in inner else EDGE_STAGE_S[0] + x[n + i] * (EDGE_STAGE_S[1] - EDGE_STAGE_S[0])  # fmt: skip
        stages.append(Stage(set_c=float(sets[i]), lid=lids[i], duration_s=float(length)))
    return rounded(replace(base, stages=tuple(stages), total_s=None), fryer.controller)


class Sizer:
    """Sizes and judges programs of one product on one fryer."""

    def __init__(self, kitchen: Kitchen, base: Program, limit: CookLimit, goals: Goals) -> None:
        self.kitchen, self.base, self.limit, self.goals = kitchen, base, limit, goals
        self.fryer = kitchen.fryer(base.fryer)
        self.row = np.array([WORST[name] for name in FACTORS])
        self.step_s = self.fryer.controller.time_step_s
        first = make_plan(kitchen, base)
        tracers = [k for k in first.kinds if k.heavy]
        self.weights = np.array([k.cut.heavy_ratio_n**1.25 for k in tracers])
        self.titles = [k.cut.title for k in tracers]
        self.fat = [100.0 * catalog.compositions()[k.cut.composition].fractions["fat"] for k in tracers]

    def margins(self, programs: Sequence[Program]) -> Array:
        """Lowest margin of the worst case of each program [K]."""
        return np.asarray(self.margins_by_cut(programs).min(axis=1))

    def margins_by_cut(self, programs: Sequence[Program]) -> Array:
        """Margin of the heavy piece of every cut in the worst case [K], (program, cut)."""
        plans = [replace(make_plan(self.kitchen, p), rest_s=1.0) for p in programs]  # judged at the lift
        cooks = [question(plan, self.row, self.weights) for plan in plans]
        guard, found = self.kitchen.site.thermometer_error_k + ROUTINE.error_k, []
        for plan, cook, raw in zip(plans, cooks, run_many(cooks), strict=True):
            lift = lift_of(plan, cook, raw).earliest_s
            first = raw.core_temp_c.shape[1] - len(self.fat)
            cores = raw.core_temp_c[:, first:].T
            found.append([margin_k(raw.time_s, core, lift, self.limit, guard, fat) for core, fat in zip(cores, self.fat, strict=True)])  # fmt: skip
        return np.array(found)

    def weakest_cut(self, program: Program) -> str:
        """Title of the cut whose heavy piece has the lowest margin in the worst case."""
        return self.titles[int(np.argmin(self.margins_by_cut([program])[0]))]

    def fit(self, points: Sequence[Array], start_s: Array | None = None) -> tuple[list[Program], Array, Array]:
        """Programs whose main stage is just long enough, their margins, and that length [s]."""
        count = len(points)
        goal = self.goals.margin_k + MOST_EXTRA_K * np.array([x[-1] for x in points]) ** 3
        length = np.full(count, FIRST_GUESS_S) if start_s is None else start_s.copy()
        low, high = np.full(count, SHORTEST_S), np.full(count, LONGEST_S)
        slope, last = np.full(count, 0.15), None
        for _ in range(FIRST_PASSES if start_s is None else LATER_PASSES):
            gap = self.margins(self.build_all(points, length)) - goal
            low, high = np.where(gap < 0, length, low), np.where(gap >= 0, np.minimum(high, length), high)
            if last is not None:
                moved = length - last[0]
                rate = np.divide(gap - last[1], moved, out=slope.copy(), where=np.abs(moved) > 1.0)
                slope = np.clip(rate, 0.02, 1.0)
            last = (length.copy(), gap)
            trial = length - gap / slope
            length = np.where((trial <= low) | (trial >= high), 0.5 * (low + high), trial)
        length = np.ceil(length / self.step_s) * self.step_s
        programs = self.build_all(points, length)
        margins = self.margins(programs)
        short = margins < goal
        if short.any():  # rounding may cost a step or two
            length = np.where(short, length + 2.0 * self.step_s, length)
            programs = self.build_all(points, length)
            margins = self.margins(programs)
        return programs, margins, length

    def build_all(self, points: Sequence[Array], length: Array) -> list[Program]:
        """Programs of all points with their main stages."""
        return [build(self.base, self.fryer, x, s, self.goals.hottest_c) for x, s in zip(points, length, strict=True)]

    def judge(self, programs: Sequence[Program], margins: Array) -> list[Candidate]:
        """Candidates with the usual load's time, loss, colour and cost."""
        plans: list[FryPlan] = [make_plan(self.kitchen, p) for p in programs]
        return [
            self._candidate(p, float(m), h) for p, m, h in zip(programs, margins, simulate_many(plans), strict=True)
        ]

    def _candidate(self, program: Program, margin: float, history: FryHistory) -> Candidate:
        goals = self.goals
        usual = [p for p in history.pieces if not p.kind.heavy]
        colour = float(np.mean([p.browning_n for p in usual]))
        core, crust = min(p.core_at_lift_c for p in usual), float(np.mean([p.crust_at_lift_m for p in usual]))
        middle = 0.5 * (goals.colour_low_n + goals.colour_high_n)
        half = 0.5 * (goals.colour_high_n - goals.colour_low_n)
        off = abs(colour - middle) / half
        cost = goals.time_weight_n * history.lift_s / 600.0 + goals.loss_weight_n * history.moisture_loss_frac / 0.15
        cost += goals.colour_weight_n * (0.2 * off + 30.0 * max(0.0, off - 0.98))
        cost += 10.0 * max(0.0, goals.margin_k - margin) + 20.0 * max(
            0.0, history.moisture_loss_frac - goals.most_loss_frac
        )
        cost += 0.02 * max(0.0, history.lift_s - goals.longest_s)
        cost += 0.5 * max(0.0, goals.core_low_c - core, core - goals.core_high_c)
        cost += 5e3 * max(0.0, goals.crust_low_m - crust, crust - goals.crust_high_m)
        return Candidate(
            program=program, margin_k=margin, time_s=history.lift_s, loss_frac=history.moisture_loss_frac,
            colour_n=colour, yield_frac=history.yield_frac, core_c=core, crust_m=crust,
            cost_n=float(cost),
        )  # fmt: skip


def binding(candidate: Candidate, goals: Goals) -> str:
    """The first goal that a candidate misses: margin, time, loss, core, crust or colour; empty when none."""
    if candidate.margin_k < goals.margin_k - 0.05:
        return "margin"
    if candidate.time_s > goals.longest_s:
        return "time"
    if candidate.loss_frac > goals.most_loss_frac:
        return "loss"
    if not goals.core_low_c <= candidate.core_c <= goals.core_high_c:
        return "core"
    if not goals.crust_low_m <= candidate.crust_m <= goals.crust_high_m:
        return "crust"
    return "" if goals.colour_low_n <= candidate.colour_n <= goals.colour_high_n else "colour"


def shortfall(candidate: Candidate, goals: Goals, goal: str) -> str:
    """How near a candidate comes to a goal, in numbers."""
    return {
        "margin": f"{candidate.margin_k:.1f} K of {goals.margin_k:.1f} K",
        "time": f"{candidate.time_s:.0f} s of {goals.longest_s:.0f} s",
        "loss": f"{100 * candidate.loss_frac:.1f} % of {100 * goals.most_loss_frac:.1f} %",
        "core": f"{candidate.core_c:.1f} °C, wanted {goals.core_low_c:.0f} to {goals.core_high_c:.0f}",
        "crust": f"{1e3 * candidate.crust_m:.2f} mm, wanted {1e3 * goals.crust_low_m:g} to {1e3 * goals.crust_high_m:g}",
        "colour": f"dE {candidate.colour_n:.1f}, wanted {goals.colour_low_n:g} to {goals.colour_high_n:g}",
    }[goal]


def design(
    kitchen: Kitchen,
    product: str,
    fryer: str,
    limit: CookLimit,
    goals: Goals | None = None,
    effort: Effort | None = None,
) -> Design:
    """Search the best staged program of a product on a fryer.

    Raises
    ------
    InputError
        No program meets the goals; the message names the goal that binds and the nearest found. Or
        the fryer's vent was never told, or takes too long.
    """
    goals, effort = goals or Goals(), effort or Effort()
    found = kitchen.fryer(fryer)
    require_vent(kitchen, fryer)
    base = Program(
        name=f"{product} {fryer}", product=kitchen.product(product).key, fryer=fryer,
        stages=(Stage(set_c=165.0, duration_s=600.0),),
    )  # fmt: skip
    sizer = Sizer(kitchen, base, limit, goals)
    best, tried = search(sizer, effort)
    barred = binding(best, goals)
    if barred:
        raise InputError(
            "goals", "not reachable together", "looser; what binds is the {goal}, {nearest} (nearest program found)",
            where=f"{product} on {found.name}", values={"goal": barred, "nearest": shortfall(best, goals, barred)},
        )  # fmt: skip
    require_vent_of(make_plan(kitchen, best.program))
    front = pareto([c for c in tried if not binding(c, goals)])
    return Design(recommended=best, front=front, tried_count=len(tried), reason=_reason(best, front))


def search(sizer: Sizer, effort: Effort) -> tuple[Candidate, list[Candidate]]:
    """Differential evolution over set points and shares; best candidate and all tried."""
    rng, stages = np.random.default_rng(effort.seed), effort.stage_count(sizer.fryer)
    points: list[Array] = [rng.uniform(size=2 * stages + 1) for _ in range(POPULATION)]
    programs, margins, lengths = sizer.fit(points)
    best = sizer.judge(programs, margins)
    tried = list(best)
    for turn in range(GENERATIONS):
        children = [_child(points, best, i, rng) for i in range(POPULATION)]
        programs, margins, sized = sizer.fit(children, lengths)
        judged = sizer.judge(programs, margins)
        tried += judged
        for i, candidate in enumerate(judged):
            if candidate.cost_n <= best[i].cost_n:
                points[i], best[i], lengths[i] = children[i], candidate, sized[i]
        if effort.progress:
            effort.progress((turn + 1) / GENERATIONS)
    return min(best, key=lambda c: c.cost_n), tried


def _child(points: Sequence[Array], best: Sequence[Candidate], i: int, rng: np.random.Generator) -> Array:
    """Differential evolution, current to best: half of the coordinates move."""
    top = points[int(np.argmin([c.cost_n for c in best]))]
    a, b = (points[k] for k in rng.choice(len(points), 2, replace=False))
    trial = points[i] + 0.6 * (top - points[i]) + 0.7 * (a - b)
    keep = rng.uniform(size=len(trial)) < 0.35
    return np.asarray(np.clip(np.where(keep, points[i], trial), 0.0, 1.0))


def pareto(candidates: Sequence[Candidate]) -> tuple[Candidate, ...]:
    """Candidates that none beats in time, loss and closeness of colour at once, by time."""
    ordered = sorted(candidates, key=lambda c: (c.time_s, c.loss_frac, c.colour_n))
    front: list[Candidate] = []
    for c in ordered:
        beaten = any(f.time_s <= c.time_s and f.loss_frac <= c.loss_frac and f.colour_n >= c.colour_n for f in front)
        if not beaten:
            front.append(c)
    return tuple(front)


def _reason(chosen: Candidate, front: Sequence[Candidate]) -> Note:
    quickest, juiciest = min(front, key=lambda c: c.time_s), min(front, key=lambda c: c.loss_frac)
    return Note(
        kind="design_reason",
        text="Takes {time_s} and loses {loss_frac} with {margin_k} to spare in the worst case; the quickest found takes {quick_s} and loses {quick_loss_frac}, the juiciest loses {juicy_loss_frac} in {juicy_s}.",
        values={
            "time_s": chosen.time_s, "loss_frac": chosen.loss_frac, "margin_k": chosen.margin_k,
            "quick_s": quickest.time_s, "quick_loss_frac": quickest.loss_frac,
            "juicy_loss_frac": juiciest.loss_frac, "juicy_s": juiciest.time_s,
        },
    )  # fmt: skip
