"""What a search may offer: undominated programs, the chosen one with a proof that holds, or a refusal that
says why.

A program whose own proof fails is made longer until it holds; where a goal then breaks, nothing is offered.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from frywright.design.proof import Proof, prove
from frywright.design.search import Candidate, Effort, Goals, Sizer, binding, off_colour, search
from frywright.design.shape import lids_of
from frywright.design.vent import require_vent, require_vent_of
from frywright.model.errors import InputError
from frywright.model.findings import Note, Values, say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program, Stage
from frywright.model.tongues import Translate
from frywright.model.units import clock, show
from frywright.physics.fry import FryHistory, simulate
from frywright.physics.plan import MOST_VENT_S, make_plan
from frywright.verdicts.limits import CookLimit

PROOF_SAMPLES, PROOF_TRIES, PROOF_STEP_K = 256, 4, 0.2
MOST_ROWS = 12
LATE_S = 60.0
REACHED = {
    "margin": "{margin_k} to spare of {goal_k}",
    "time": "{time_s} of {goal_s}",
    "vent": "{vent_s} of {most_s}",
    "moisture lost": "{loss_frac} of {goal_frac}",
    "core": "{core_c}, wanted {low_c} to {high_c}",
    "crust": "{crust_m}, wanted {low_m} to {high_m}",
    "colour": "{colour}, wanted {low} to {high}",
}
ADVICE = {
    "margin": "Allow more time or hotter oil, or ask for less margin.",
    "time": "Allow more time or hotter oil, or ask for less margin.",
    "vent": (
        "This load still steams too much to be let down in a minute: a smaller load, more time or an open"
        " fryer."
    ),
    "moisture lost": "Allow more moisture lost, or ask for less margin.",
    "core": "Widen the core, or ask for less margin.",
    "crust": "Widen the crust, or allow more stages.",
    "colour": "Widen the colour, or allow more stages.",
}
REASON = (
    "Takes {time_s} and loses {loss_frac} with {margin_k} to spare in the worst case; the quickest found"
    " takes {quick_s} and loses {quick_loss_frac}, the juiciest loses {juicy_loss_frac} in {juicy_s}."
)
REASON_BY_VENT = (
    "Takes {time_s} and loses {loss_frac} with {margin_k} to spare in the worst case; the quickest found"
    " takes {quick_s} and loses {quick_loss_frac}, the juiciest loses {juicy_loss_frac} in {juicy_s}. It is"
    " long because of the vent, not of the core: a full load still steams, its vent takes {vent_s}, and"
    " {most_s} is the most. To shorten it: time the vent again with a watch and correct it in the kitchen"
    " file; clean the passages as the manual says; carry it over to a smaller load; or fry it open."
)
VENT_NEAR_FRAC, SPARE_BEYOND_K = 0.9, 3.0
"""A vent this near its longest, with this much more to spare than asked, is what makes a program long (own
estimate).
"""
SMALLEST = "Sized over all loads from {load}; a larger smallest load of the fryer takes less time."


class UnreachableError(InputError):
    """No program meets the goals and its own proof: which goal binds, how near the nearest comes, and its
    stages.
    """

    def __init__(self, sizer: Sizer, nearest: Candidate, goals: Goals) -> None:
        self.nearest, self.goals, self.system = nearest, goals, sizer.kitchen.site.units
        self.goal = binding(nearest, goals) or "margin"
        self.place = f"{sizer.plan.product.name} · {sizer.fryer.name}"
        self.load = (sizer.loads[0], sizer.plan.cut_set.unit)
        super().__init__("goals", "not reachable together", "looser", where=self.place)

    def say(self, translate: Translate, system: str = "") -> str:
        """The message in a language, in the units asked or the kitchen's own."""
        system = system or self.system
        reached = say(REACHED[self.goal], _figures(self.nearest, self.goals), system, translate)
        told = say(
            "{place}: no program meets all goals. What binds is {goal}: {reached}.",
            {"place": self.place, "goal": self.goal, "reached": reached},
            system,
            translate,
        )
        stages = "; ".join(stages_told(self.nearest.program, system, translate))
        near = say("Nearest program found: {stages}.", {"stages": stages}, system, translate)
        load = say(SMALLEST, {"load": f"{self.load[0]:.3g} × {translate(self.load[1])}"}, system, translate)
        return " ".join((told, near, translate(ADVICE[self.goal]), load))


@dataclass(frozen=True, slots=True, kw_only=True)
class Late:
    """What a lift too late does to a usual full load."""

    late_s: float
    loss_frac: float
    light_loss_frac: float
    core_c: float  # hottest usual piece at that lift


@dataclass(frozen=True, slots=True, kw_only=True)
class Design:
    """The chosen program with its proof, the trade-off (no row beats another; the chosen one is in it), and
    why.
    """

    recommended: Candidate
    front: tuple[Candidate, ...]
    loads_n: tuple[float, ...]  # heads or pieces that the margins by load stand for
    unit: str
    proof: Proof
    late: Late
    tried_count: int
    reason: Note


def stages_told(program: Program, system: str, translate: Translate = str) -> list[str]:
    """Each stage of a program in words: set point, lid, length."""
    return [
        f"{show(s.set_c, 'c', system)} · {translate(str(s.lid))} · {clock(s.end_value)}"
        for s in program.timed().stages
    ]


def design(
    kitchen: Kitchen,
    product: str,
    fryer: str,
    limit: CookLimit,
    goals: Goals | None = None,
    effort: Effort | None = None,
) -> Design:
    """Search the best staged program of a product on a fryer, over all loads; its own proof holds.
    Raises InputError: no program meets the goals; the message names the goal that binds and the nearest
    found. Or the fryer's vent was never told, or takes too long.
    """
    goals, effort = goals or Goals(), effort or Effort()
    require_vent(kitchen, fryer)
    sizer = sizer_for(kitchen, product, fryer, limit, goals)
    best, tried = search(sizer, effort)
    good = [c for c in tried if not binding(c, goals)]
    if not good:
        raise UnreachableError(sizer, best, goals)
    best, front, proof = offered(sizer, good, goals)
    return Design(
        recommended=best,
        front=front,
        loads_n=sizer.loads,
        unit=sizer.plan.cut_set.unit,
        proof=proof,
        late=late(kitchen, best.program),
        tried_count=len(tried),
        reason=_reason(best, front, goals),
    )


def sizer_for(kitchen: Kitchen, product: str, fryer: str, limit: CookLimit, goals: Goals) -> Sizer:
    """Sizer of new programs of a product on a fryer."""
    found = kitchen.fryer(fryer)
    base = Program(
        name=f"{product} {fryer}",
        product=kitchen.product(product).key,
        fryer=fryer,
        stages=(Stage(set_c=165.0, lid=lids_of(found, 1)[0], duration_s=600.0),),
    )
    return Sizer(kitchen, base, limit, goals)


def offered(
    sizer: Sizer, good: Sequence[Candidate], goals: Goals
) -> tuple[Candidate, tuple[Candidate, ...], Proof]:
    """The cheapest undominated candidate whose proof holds, the trade-off it stands in, and the proof.

    While the proof fails, all candidates are made longer by what it lacked, and compared again. Each proof
    draws loads of its own: what a program was made long enough for proves nothing of it.
    Raises InputError: made long enough for its proof, no candidate meets the goals; or its vent takes too
    long.
    """
    for seed in range(1, PROOF_TRIES + 1):
        front = pareto(good, goals)
        best = min(front, key=lambda c: c.cost_n)
        plan = sizer.plan_of(best.program)
        proof = prove(plan, sizer.limit, sizer.guard_k, samples=PROOF_SAMPLES, seed=seed)
        if proof.holds:
            require_vent_of(plan)
            return best, shown(front, best), proof
        grown = sizer.lengthen(front, PROOF_STEP_K - proof.lowest_k)
        good = [c for c in grown if not binding(c, goals)]
        if not good:
            nearest = min(grown, key=lambda c: c.cost_n)
            raise UnreachableError(sizer, nearest, goals)
    raise UnreachableError(sizer, replace(best, margin_k=proof.lowest_k), goals)


def pareto(candidates: Sequence[Candidate], goals: Goals) -> tuple[Candidate, ...]:
    """Candidates that none beats, by time. Compared as they are shown: time, loss and closeness to the colour
    wanted.
    """

    def figures(c: Candidate) -> tuple[int, int, int]:
        return round(c.time_s), round(1000 * c.loss_frac), round(20 * off_colour(c.colour_n, goals))

    front: list[Candidate] = []
    for c in sorted(candidates, key=lambda c: (figures(c), c.cost_n)):
        mine = figures(c)
        if not any(all(a <= b for a, b in zip(figures(f), mine, strict=True)) for f in front):
            front.append(c)
    return tuple(front)


def shown(front: Sequence[Candidate], chosen: Candidate) -> tuple[Candidate, ...]:
    """At most twelve rows of a trade-off: the quickest, the juiciest and the chosen are always among them."""
    if len(front) <= MOST_ROWS:
        return tuple(front)
    juiciest = min(front, key=lambda c: c.loss_frac)
    step = (len(front) - 1) / (MOST_ROWS - 3)
    kept = {round(i * step) for i in range(MOST_ROWS - 2)} | {front.index(chosen), front.index(juiciest)}
    return tuple(front[i] for i in sorted(kept))


def late(kitchen: Kitchen, program: Program) -> Late:
    """The usual full load lifted a minute late."""
    plain = program.timed()
    last = plain.stages[-1]
    after = replace(
        plain, stages=(*plain.stages[:-1], replace(last, duration_s=(last.duration_s or 0.0) + LATE_S))
    )
    told: FryHistory = simulate(make_plan(kitchen, after))
    usual = [p for p in told.pieces if not p.kind.heavy]
    return Late(
        late_s=LATE_S,
        loss_frac=told.moisture_loss_frac,
        light_loss_frac=max(p.yields.moisture_loss_frac for p in usual),
        core_c=max(p.core_at_lift_c for p in usual),
    )


def _figures(c: Candidate, goals: Goals) -> Values:
    return {
        "margin_k": c.margin_k,
        "goal_k": goals.margin_k,
        "time_s": c.time_s,
        "goal_s": goals.longest_s,
        "vent_s": c.vent_s,
        "most_s": MOST_VENT_S,
        "loss_frac": c.loss_frac,
        "goal_frac": goals.most_loss_frac,
        "core_c": c.core_c,
        "low_c": goals.core_low_c,
        "high_c": goals.core_high_c,
        "crust_m": c.crust_m,
        "low_m": goals.crust_low_m,
        "high_m": goals.crust_high_m,
        "colour": f"{c.colour_n:.1f}",
        "low": goals.colour_low_n,
        "high": goals.colour_high_n,
    }


def _reason(chosen: Candidate, front: Sequence[Candidate], goals: Goals) -> Note:
    quickest, juiciest = min(front, key=lambda c: c.time_s), min(front, key=lambda c: c.loss_frac)
    vent_binds = (
        chosen.vent_s > VENT_NEAR_FRAC * MOST_VENT_S and chosen.margin_k > goals.margin_k + SPARE_BEYOND_K
    )
    return Note(
        kind="design_reason",
        text=REASON_BY_VENT if vent_binds else REASON,
        values={
            "vent_s": chosen.vent_s,
            "most_s": MOST_VENT_S,
            "time_s": chosen.time_s,
            "loss_frac": chosen.loss_frac,
            "margin_k": chosen.margin_k,
            "quick_s": quickest.time_s,
            "quick_loss_frac": quickest.loss_frac,
            "juicy_loss_frac": juiciest.loss_frac,
            "juicy_s": juiciest.time_s,
        },
    )
