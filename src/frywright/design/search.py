"""Searches staged programs: every candidate just meets its margin over all loads, then time, moisture and
colour decide.

A candidate is a set of set points and shares of time. Its main stage is lengthened until the coldest heavy
piece of a cold, weakly heated load has the wanted margin, for the smallest load the fryer may take, half of
it and the full one, each dropped straight after a full load on the oil that one left; so the search never
compares programs that do not meet the limit. Sizing runs on the load that turned out worst; all loads confirm
it. Same seed, same answer.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, replace
from itertools import chain
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog
from frywright.design.loads import FEW, Loads, Spans, lifts, oils_left_k, spans_of, tracer_margins
from frywright.design.proof import FACTORS, base_pieces, close_late, load_fractions
from frywright.design.shape import COOLEST_C, EDGE_STAGE_S, build, longer
from frywright.model.errors import Amount, InputError
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.physics.fry import FryHistory, histories
from frywright.physics.inputs import SCAN
from frywright.physics.plan import MOST_VENT_S, FryPlan, lid_of, make_plan, spans, vat
from frywright.physics.solve import Cook
from frywright.verdicts.limits import CookLimit

Array = NDArray[np.float64]
Number = TypeVar("Number", float, Array)
WORST = {
    "weight_quantile_frac": 0.98,
    "start_temp_k": -2.0,
    "load_frac": 1.0,
    "heater_frac": 0.85,
    "oil_level_frac": 0.95,
    "offset_k": 2.0,
    "oil_start_k": -8.0,
    "late_lid_s": 30.0,
    "surface_frac": 0.8,
    "altitude_m": 0.0,
}
"""The corner every load is sized on; oil starts lower where the load before leaves it lower. The full proof
follows (estimates).
"""
LOAD, OIL = FACTORS.index("load_frac"), FACTORS.index("oil_start_k")

HOTTEST_C = 185.0
SHORTEST_S, LONGEST_S = 30.0, 2400.0
MOST_STAGES = 6
"""Stages searched where nothing else is asked: more change little and double the search (own trials)."""
POPULATION, GENERATIONS = 32, 10
MOST_EXTRA_K = 25.0  # a program may be made longer than its margin asks for, for colour
FIRST_GUESS_S, FIRST_PASSES, LATER_PASSES, CONFIRMS, LENGTHENINGS = 400.0, 6, 2, 2, 10
USUAL_SLOPE_K_S = 0.08
LIGHT_WEIGHT_N = 0.25
"""Weight of the driest light piece beside the loss of the whole load (own estimate)."""


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
        _within("margin", self.margin_k, 0.0, 15.0, "k")
        _within("longest time", self.longest_s, 60.0, 7200.0, "s")
        _within("most moisture lost", self.most_loss_frac, 0.01, 0.9, "frac")
        _within("hottest oil", self.hottest_c, COOLEST_C, 200.0, "c")
        for name, low, high, most, unit in (
            ("colour", self.colour_low_n, self.colour_high_n, 60.0, ""),
            ("core", self.core_low_c, self.core_high_c, 120.0, "c"),
            ("crust", self.crust_low_m, self.crust_high_m, 0.05, "m"),
        ):
            _within(name, low, 0.0, most, unit)
            _within(name, high, 0.0, most, unit)
            if not low < high:
                raise InputError(name, Amount(low, unit), "below {high}", high=Amount(high, unit))


def _within(name: str, value: float, low: float, high: float, unit: str) -> None:
    if not low <= value <= high:
        least, most = Amount(low, unit), Amount(high, unit)
        raise InputError(name, Amount(value, unit), "{low} to {high}", low=least, high=most)


@dataclass(frozen=True, slots=True, kw_only=True)
class Effort:
    """How to search: stages (default what the controller holds, at most 6), seed, progress.

    Same seed, same answer. ``progress`` is called with the share done and may raise to cancel.
    """

    stages: int | None = None
    seed: int = 1
    progress: Callable[[float], None] | None = None

    def stage_count(self, fryer: Fryer) -> int:
        """Stages to search with on a fryer; InputError where its controller does not hold as many."""
        most = fryer.controller.stage_count
        if self.stages is None:
            return min(MOST_STAGES, most)
        if not 1 <= self.stages <= most:
            raise InputError(
                "stages", self.stages, "1 to {most}: what {fryer} can hold", most=most, fryer=fryer.name
            )
        return self.stages


@dataclass(frozen=True, slots=True, kw_only=True)
class Candidate:
    """A program with its lowest margin over all loads and what the usual full load gives."""

    program: Program
    margin_k: float
    loads_k: tuple[
        float, ...
    ]  # margin of the smallest, half and full load, each back to back after a full one
    time_s: float
    vent_s: float
    loss_frac: float
    light_loss_frac: float  # of the driest piece at the light end
    colour_n: float
    yield_frac: float
    core_c: float  # coldest usual piece at the lift
    crust_m: float  # mean of the usual pieces
    cost_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Figures:
    """The figures of many programs that their cost is made of, each as an array."""

    margin_k: Array
    time_s: Array
    vent_s: Array
    loss_frac: Array
    light_loss_frac: Array
    colour_n: Array
    core_c: Array
    crust_m: Array


@dataclass(frozen=True, slots=True)
class _Asked:
    """Programs of one product as the march reads them, their lids closed as late as the worst corner says."""

    spans: Spans
    oil_start_c: Array
    clock_s: Array
    drain_s: Array
    runs_on: NDArray[np.bool_]

    def at(self, which: NDArray[np.int64]) -> _Asked:
        """Programs picked out, each as often as it is asked for."""
        return _Asked(
            self.spans.at(which),
            self.oil_start_c[which],
            self.clock_s[which],
            self.drain_s[which],
            self.runs_on[which],
        )


class Sizer:
    """Sizes and judges programs of one product on one fryer."""

    def __init__(self, kitchen: Kitchen, base: Program, limit: CookLimit, goals: Goals) -> None:
        self.kitchen, self.base, self.limit, self.goals = kitchen, base, limit, goals
        self.fryer = kitchen.fryer(base.fryer)
        self.step_s = self.fryer.controller.time_step_s
        most = self.fryer.controller.longest_s - 2.0 * EDGE_STAGE_S[1]
        self.longest_s = max(SHORTEST_S, min(LONGEST_S, most))
        self.plan = make_plan(kitchen, base)
        self.pieces = base_pieces(self.plan)
        self.light = _light_ends(self.plan)
        tracers = [k for k in self.plan.kinds if k.heavy]
        self.weights = np.array([k.cut.heavy_ratio_n**1.25 for k in tracers])
        self.titles = [k.cut.title for k in tracers]
        self.fat = [100.0 * catalog.compositions()[k.cut.composition].fractions["fat"] for k in tracers]
        self.fractions = load_fractions(self.plan)
        made = [kitchen.calibration(k.cut.key, self.plan.coating.key, lid_of(base)) for k in tracers]
        self.guard_k = max([kitchen.site.thermometer_error_k, *(c.error_k for c in made if c)])

    @property
    def loads(self) -> tuple[float, ...]:
        """Heads or pieces of each load sized on."""
        return tuple(fraction * self.plan.units_count for fraction in self.fractions)

    def plan_of(self, program: Program) -> FryPlan:
        """Plan of the full load of a program."""
        return replace(self.plan, program=program, oil_start_c=program.stages[0].set_c)

    def margins(self, programs: Sequence[Program]) -> Array:
        """Lowest margin over all loads of each program [K]."""
        return np.asarray(self.by_load(programs)[0].min(axis=(1, 2)))

    def by_load(self, programs: Sequence[Program]) -> tuple[Array, Array]:
        """Margins of the heavy piece of every cut [K], (program, load, cut), and the oil each load starts on
        [K to the set point].

        The load before is full; where it leaves the oil lower than the worst corner says, all loads start
        there. Where it does not, it is the full load that is asked for.
        """
        asked, count = self._asked(programs), len(self.fractions)
        full, left = self._at(asked, self._rows(np.full(len(programs), count - 1), None))
        oil = np.minimum(WORST["oil_start_k"], left)
        found = np.tile(full, (count, 1, 1))
        load, which = np.nonzero((np.arange(count) < count - 1)[:, None] | (oil < WORST["oil_start_k"]))
        if len(which):
            found[load, which] = self._at(asked.at(which), self._rows(load, oil[which]))[0]
        return found.swapaxes(0, 1), oil

    def _rows(self, load: NDArray[np.int64], oil_k: Array | None) -> Array:
        rows = np.tile([WORST[name] for name in FACTORS], (len(load), 1))
        rows[:, LOAD] = np.array(self.fractions)[load]
        if oil_k is not None:
            rows[:, OIL] = oil_k
        return np.asarray(rows)

    def _asked(self, programs: Sequence[Program]) -> _Asked:
        late_s = WORST["late_lid_s"]
        plans = [replace(self.plan, program=close_late(p, late_s), rest_s=0.0) for p in programs]
        return _Asked(
            spans_of([spans(plan) for plan in plans]),
            np.array([p.stages[0].set_c for p in programs]),
            np.array([p.clock_s for p in programs]),
            np.array([p.drain_s for p in programs]),
            np.array([plan.runs_on for plan in plans]),
        )

    def _at(self, asked: _Asked, rows: Array) -> tuple[Array, Array]:
        """Margin of every cut of each program under its own row, and the oil the next load would start on."""
        loads = Loads(
            plan=replace(self.plan, rest_s=0.0),  # judged by the earliest lift
            base=self.pieces,
            at=dict(zip(FACTORS, rows.T, strict=True)),
            weights=np.tile(self.weights, (len(rows), 1)),
            oil_start_c=asked.oil_start_c,
            spans=asked.spans,
        )
        margins, left = np.empty((len(rows), len(self.fat))), np.empty(len(rows))
        for part, done in loads.march(SCAN):
            lift = lifts(loads, part, done, asked.clock_s[part], asked.runs_on[part])
            guard_k = self.guard_k + SCAN.error_k
            margins[part] = tracer_margins(done, lift.earliest_s, self.limit, guard_k, self.fat)
            left[part] = oils_left_k(done, lift.lift_s, asked.drain_s[part])
        return margins, left

    def weakest_cut(self, program: Program) -> str:
        """Title of the cut whose heavy piece has the lowest margin over all loads."""
        return self.titles[int(np.argmin(self.by_load([program])[0][0].min(axis=0)))]

    def fit(self, points: Sequence[Array], sized: Array | None = None) -> tuple[list[Program], Array, Array]:
        """Programs whose main stage is just long enough, their margins by load, and how they were sized.

        ``sized`` rows hold the main stage [s], the worst load and the oil it starts on; a child begins with
        its parent's.
        """
        goal = self.goals.margin_k + MOST_EXTRA_K * np.array([x[-1] for x in points]) ** 3
        if sized is None:
            length, passes = np.full(len(points), FIRST_GUESS_S), FIRST_PASSES
            by, oil = self.by_load(self.build_all(points, length))
            worst = by.min(axis=2).argmin(axis=1)
        else:
            length, passes, worst, oil = (
                sized[:, 0].copy(),
                LATER_PASSES,
                sized[:, 1].astype(np.int64),
                sized[:, 2],
            )
        length, slope = self._sized(points, goal, length, self._rows(worst, oil), passes)
        return self._confirmed(points, goal, length, slope)

    def _sized(
        self, points: Sequence[Array], goal: Array, length: Array, rows: Array, passes: int
    ) -> tuple[Array, Array]:
        """Length of the main stage [s] that gives each program its margin under one row, and the margin's
        slope [K/s].
        """
        low, high = np.full(len(points), SHORTEST_S), np.full(len(points), self.longest_s)
        slope, last = np.full(len(points), 2.0 * USUAL_SLOPE_K_S), None
        for _ in range(passes):
            gap = self._at(self._asked(self.build_all(points, length)), rows)[0].min(axis=1) - goal
            low, high = np.where(gap < 0, length, low), np.where(gap >= 0, np.minimum(high, length), high)
            if last is not None:
                moved = length - last[0]
                rate = np.divide(gap - last[1], moved, out=slope.copy(), where=np.abs(moved) > 1.0)
                slope = np.clip(rate, 0.02, 1.0)
            last = (length.copy(), gap)
            trial = length - gap / slope
            length = np.where((trial <= low) | (trial >= high), 0.5 * (low + high), trial)
        return np.ceil(length / self.step_s) * self.step_s, slope

    def _confirmed(
        self, points: Sequence[Array], goal: Array, length: Array, slope: Array
    ) -> tuple[list[Program], Array, Array]:
        """Programs long enough for every load: where another load is worse than the one sized on, the main
        stage grows.
        """
        programs = self.build_all(points, length)
        by, oil = self.by_load(programs)
        for _ in range(CONFIRMS):
            short = [int(i) for i in np.flatnonzero(by.min(axis=(1, 2)) < goal)]
            if not short:
                break
            more = np.maximum((goal[short] - by[short].min(axis=(1, 2))) / slope[short], 2.0 * self.step_s)
            length[short] = np.minimum(
                length[short] + np.ceil(more / self.step_s) * self.step_s, self.longest_s
            )
            again = self.build_all([points[i] for i in short], length[short])
            by[short], oil[short] = self.by_load(again)
            for i, program in zip(short, again, strict=True):
                programs[i] = program
        return programs, by, np.column_stack([length, by.min(axis=2).argmin(axis=1), oil])

    def lengthen(self, candidates: Sequence[Candidate], extra_k: float) -> list[Candidate]:
        """Each candidate with its main stage longer, until its margin over all loads is ``extra_k`` higher,
        and at least the one asked for.
        """
        programs = [c.program for c in candidates]
        goal = np.maximum(np.array([c.margin_k for c in candidates]) + extra_k, self.goals.margin_k)
        by = np.array([c.loads_k for c in candidates])
        slope = np.full(len(programs), USUAL_SLOPE_K_S)
        for _ in range(LENGTHENINGS):
            short = np.flatnonzero(by.min(axis=1) < goal)
            if not len(short):
                break
            was = by[short].min(axis=1)
            more = (
                np.ceil(np.maximum((goal[short] - was) / slope[short], self.step_s) / self.step_s)
                * self.step_s
            )
            for i, s in zip(short, more, strict=True):
                programs[i] = longer(programs[i], float(s))
            by[short] = self.by_load([programs[i] for i in short])[0].min(axis=2)
            slope[short] = np.maximum((by[short].min(axis=1) - was) / more, 0.02)
        return self.judge(programs, by)

    def build_all(self, points: Sequence[Array], length: Array) -> list[Program]:
        """Programs of all points with their main stages."""
        return [
            build(self.base, self.fryer, x, s, self.goals.hottest_c)
            for x, s in zip(points, length, strict=True)
        ]

    def judge(self, programs: Sequence[Program], loads_k: Array) -> list[Candidate]:
        """Candidates with their margins by load, and the usual load's time, loss, colour and cost."""
        plans = [replace(self.light, program=p, oil_start_c=p.stages[0].set_c) for p in programs]
        pieces = base_pieces(self.light)

        def told(some: Sequence[FryPlan]) -> list[FryHistory]:
            return histories(some, [Cook(vat=vat(p), pieces=pieces, spans=spans(p)) for p in some])

        if len(plans) <= FEW:  # threads would take longer to begin
            return [self._candidate(*one) for one in zip(programs, loads_k, told(plans), strict=True)]
        half = (len(plans) + 1) // 2
        with ThreadPoolExecutor(2) as pool:  # the march runs side by side
            found = chain.from_iterable(pool.map(told, (plans[:half], plans[half:])))
        return [self._candidate(p, m, h) for p, m, h in zip(programs, loads_k, found, strict=True)]

    def judged(self, program: Program) -> Candidate:
        """One program as a candidate."""
        return self.judge([program], self.by_load([program])[0].min(axis=2))[0]

    def _candidate(self, program: Program, loads_k: Array, history: FryHistory) -> Candidate:
        usual = [p for p in history.pieces if not p.kind.heavy]
        light = max(p.yields.moisture_loss_frac for p in history.pieces if p.kind.heavy)
        colour = float(np.mean([p.browning_n for p in usual]))
        core, crust = min(p.core_at_lift_c for p in usual), float(np.mean([p.crust_at_lift_m for p in usual]))
        found = Candidate(
            program=program,
            margin_k=float(loads_k.min()),
            loads_k=tuple(map(float, loads_k)),
            time_s=history.lift_s,
            vent_s=history.vent_s,
            loss_frac=history.moisture_loss_frac,
            light_loss_frac=light,
            colour_n=colour,
            yield_frac=history.yield_frac,
            core_c=core,
            crust_m=crust,
            cost_n=0.0,
        )
        return replace(found, cost_n=float(cost(found, self.goals)))


def cost(c: Candidate | Figures, goals: Goals) -> Array:
    """What a program costs against the goals: its time, moisture and colour, and far more for every goal it
    misses (own weights).
    """
    off = off_colour(np.asarray(c.colour_n), goals)
    found = goals.time_weight_n * c.time_s / 600.0
    found += goals.loss_weight_n * (c.loss_frac + LIGHT_WEIGHT_N * c.light_loss_frac) / 0.15
    found += goals.colour_weight_n * (0.2 * off + 30.0 * np.maximum(0.0, off - 0.98))
    short_k, over_frac = goals.margin_k - c.margin_k, c.loss_frac - goals.most_loss_frac
    found += 10.0 * np.maximum(0.0, short_k) + 20.0 * np.maximum(0.0, over_frac)
    late_s, vent_s = c.time_s - goals.longest_s, c.vent_s - MOST_VENT_S
    found += 0.02 * np.maximum(0.0, late_s) + 0.02 * np.maximum(0.0, vent_s)
    found += 0.5 * np.maximum(0.0, np.maximum(goals.core_low_c - c.core_c, c.core_c - goals.core_high_c))
    found += 5e3 * np.maximum(0.0, np.maximum(goals.crust_low_m - c.crust_m, c.crust_m - goals.crust_high_m))
    return np.asarray(found)


def off_colour(colour_n: Number, goals: Goals) -> Number:
    """Distance of a colour from the middle of the band wanted, in halves of the band."""
    middle, half = (
        0.5 * (goals.colour_low_n + goals.colour_high_n),
        0.5 * (goals.colour_high_n - goals.colour_low_n),
    )
    return abs(colour_n - middle) / half


def _light_ends(plan: FryPlan) -> FryPlan:
    """The plan with its tracers at the light end of each cut: those dry out first."""
    kinds = tuple(
        replace(k, piece_mass_kg=k.piece_mass_kg / k.cut.heavy_ratio_n**2) if k.heavy else k
        for k in plan.kinds
    )
    return replace(plan, kinds=kinds)


def binding(candidate: Candidate, goals: Goals) -> str:
    """The first goal that a candidate misses: margin, time, vent, moisture lost, core, crust or colour; empty
    when none.
    """
    if candidate.margin_k < goals.margin_k - 0.05:
        return "margin"
    if candidate.time_s > goals.longest_s:
        return "time"
    if candidate.vent_s > MOST_VENT_S:
        return "vent"
    if candidate.loss_frac > goals.most_loss_frac:
        return "moisture lost"
    if not goals.core_low_c <= candidate.core_c <= goals.core_high_c:
        return "core"
    if not goals.crust_low_m <= candidate.crust_m <= goals.crust_high_m:
        return "crust"
    return "" if goals.colour_low_n <= candidate.colour_n <= goals.colour_high_n else "colour"


def search(sizer: Sizer, effort: Effort, start: Array | None = None) -> tuple[Candidate, list[Candidate]]:
    """Differential evolution over set points and shares, one point at ``start`` if given; best candidate and
    all tried.
    """
    rng, stages = np.random.default_rng(effort.seed), effort.stage_count(sizer.fryer)
    points: list[Array] = [rng.uniform(size=2 * stages + 1) for _ in range(POPULATION)]
    if start is not None:
        points[0] = start
    programs, by, sized = sizer.fit(points)
    best = sizer.judge(programs, by.min(axis=2))
    tried = list(best)
    for turn in range(GENERATIONS):
        children = [_child(points, best, i, rng) for i in range(POPULATION)]
        programs, by, sizes = sizer.fit(children, sized)
        judged = sizer.judge(programs, by.min(axis=2))
        tried += judged
        for i, candidate in enumerate(judged):
            if candidate.cost_n <= best[i].cost_n:
                points[i], best[i], sized[i] = children[i], candidate, sizes[i]
        if effort.progress:
            effort.progress((turn + 1) / (GENERATIONS + 1))
    return min(best, key=lambda c: c.cost_n), tried


def _child(points: Sequence[Array], best: Sequence[Candidate], i: int, rng: np.random.Generator) -> Array:
    """Differential evolution, current to best: half of the coordinates move."""
    top = points[int(np.argmin([c.cost_n for c in best]))]
    a, b = (points[k] for k in rng.choice(len(points), 2, replace=False))
    trial = points[i] + 0.6 * (top - points[i]) + 0.7 * (a - b)
    keep = rng.uniform(size=len(trial)) < 0.35
    return np.asarray(np.clip(np.where(keep, points[i], trial), 0.0, 1.0))
