"""The goals of a design as sliders in the kitchen's units, and the program that follows them: a proposal, not
proved.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from frywright.design.follow import Follower
from frywright.design.offer import UnreachableError, sizer_for, stages_told
from frywright.design.search import Candidate, Effort, Goals, binding
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.units import UNITS, clock, show, signed, to_inside, to_people
from frywright.physics.plan import MOST_VENT_S
from frywright.rooms.cook.view import CookView, cook_view
from frywright.trial.ask import CookRequest, ask, needed_limit

Scale = tuple[str, float, float, float]
"""A unit, and lowest, highest and step of a slider in it (own choice, within what a design may be asked)."""
SLIDERS: Mapping[str, tuple[str, Scale, Scale]] = {
    "margin_k": ("Margin over all loads", ("k", 0.0, 15.0, 0.2), ("f_diff", 0.0, 27.0, 0.2)),
    "longest_s": ("Longest time", ("min", 3.0, 40.0, 0.5), ("min", 3.0, 40.0, 0.5)),
    "most_loss_frac": ("Most moisture lost", ("pct", 5.0, 60.0, 0.5), ("pct", 5.0, 60.0, 0.5)),
    "hottest_c": ("Hottest oil, for its life", ("c", 150.0, 200.0, 1.0), ("f", 300.0, 390.0, 1.0)),
    "crust_low_m": ("Crust at least", ("mm", 0.0, 10.0, 0.1), ("in", 0.0, 0.4, 0.005)),
    "crust_high_m": ("Crust at most", ("mm", 0.0, 10.0, 0.1), ("in", 0.0, 0.4, 0.005)),
    "core_low_c": ("Core at the lift at least", ("c", 60.0, 105.0, 0.5), ("f", 140.0, 220.0, 1.0)),
    "core_high_c": ("Core at the lift at most", ("c", 60.0, 105.0, 0.5), ("f", 140.0, 220.0, 1.0)),
    "colour_low_n": ("Colour change at least", ("", 0.0, 30.0, 0.5), ("", 0.0, 30.0, 0.5)),
    "colour_high_n": ("Colour change at most", ("", 0.0, 30.0, 0.5), ("", 0.0, 30.0, 0.5)),
}
"""Goals by name, with what they are called, metric and US."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Slider:
    """A goal that is dragged, its places as text in the kitchen's units; ``partner`` stays on its own side of
    it.
    """

    name: str
    title: str
    sign: str
    low: str
    high: str
    step: str
    value: str
    partner: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Reached:
    """What the proposal reaches of a goal, beside what is asked."""

    name: str
    value: str
    asked: str
    missed: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """The program that follows the goals, and the cook it gives."""

    stages: tuple[str, ...]
    time: str
    margin: str
    meets: bool
    reached: tuple[Reached, ...]
    cook: CookView


def follower_of(kitchen: Kitchen, product: str, fryer: str, goals: Goals, effort: Effort) -> Follower:
    """A search, and what it takes to follow goals from there. Raises InputError: no rule speaks of the
    product, and it has no target of its own.
    """
    limit = needed_limit(kitchen, kitchen.product(product))
    return Follower(sizer_for(kitchen, product, fryer, limit, goals), effort)


def sliders(goals: Goals, system: str) -> tuple[Slider, ...]:
    """A slider for each goal, at its nearest place."""
    found = []
    for name, (title, *scales) in SLIDERS.items():
        unit, low, high, step = scales[system == "us"]
        value = to_people(getattr(goals, name), unit) if unit else getattr(goals, name)
        place = low + step * round((min(max(value, low), high) - low) / step)
        partner = name.replace("_low_", "_high_") if "_low_" in name else name.replace("_high_", "_low_")
        slider = Slider(
            name=name,
            title=title,
            sign=UNITS[unit].sign if unit else "",
            low=f"{low:g}",
            high=f"{high:g}",
            step=f"{step:g}",
            value=f"{place:.6g}",
            partner="" if partner == name else partner,
        )
        found.append(slider)
    return tuple(found)


def goals_at(places: Mapping[str, str], system: str) -> Goals:
    """The goals of sliders at these places, in the kitchen's units; one that is not named is at its default.
    Raises InputError: a place that is no number, or goals that cannot be asked together.
    """
    found = {}
    for name, (title, *scales) in SLIDERS.items():
        if name in places:
            unit = scales[system == "us"][0]
            try:
                value = float(places[name])
            except ValueError as error:
                raise InputError(title, repr(places[name]), "a number") from error
            found[name] = to_inside(value, unit) if unit else value
    return Goals(**found)


def propose(follower: Follower, goals: Goals, translate: Translate = str) -> Proposal:
    """The proposal for these goals, as people read it."""
    kitchen, found = follower.sizer.kitchen, follower.propose(goals)
    system = kitchen.site.units
    reached = _reached(found, goals, system, translate)
    return Proposal(
        stages=tuple(stages_told(found.program, system, translate)),
        time=clock(found.time_s),
        margin=signed(found.margin_k, "k", system),
        meets=not binding(found, goals),
        reached=reached,
        cook=cook_view(ask(kitchen, CookRequest(program=found.program)), system, translate),
    )


def to_prove(follower: Follower, goals: Goals) -> Candidate:
    """The proposal for these goals, to be proved. Raises InputError: it misses a goal; the message says
    which.
    """
    found = follower.propose(goals)
    if binding(found, goals):
        raise UnreachableError(follower.sizer, found, goals)
    return found


def _reached(c: Candidate, goals: Goals, system: str, translate: Translate) -> tuple[Reached, ...]:
    hottest_c = max(stage.set_c for stage in c.program.stages)

    def row(name: str, value: str, asked: str, missed: bool) -> Reached:
        return Reached(name=translate(name), value=value, asked=asked, missed=missed)

    def most(name: str, value: float, bound: float, unit: str) -> Reached:
        text = translate("at most {value}").format(value=show(bound, unit, system))
        return row(name, show(value, unit, system), text, value > bound + 1e-6)

    def band(name: str, value: float, low: float, high: float, unit: str) -> Reached:
        told = [show(v, unit, system) if unit else f"{v:.1f}" for v in (value, low, high)]
        text = translate("{low} to {high}").format(low=told[1], high=told[2])
        return row(name, told[0], text, not low <= value <= high)

    least = translate("at least {value}").format(value=show(goals.margin_k, "k", system))
    return (
        row(
            "Margin over all loads",
            signed(c.margin_k, "k", system),
            least,
            c.margin_k < goals.margin_k - 0.05,
        ),
        most("Drop to lift", c.time_s, goals.longest_s, "s"),
        *([most("Vent", c.vent_s, MOST_VENT_S, "s")] if c.vent_s else []),
        most("Moisture lost, of breaded weight", c.loss_frac, goals.most_loss_frac, "frac"),
        most("Hottest set point", hottest_c, goals.hottest_c, "c"),
        band("Crust, mean of usual pieces", c.crust_m, goals.crust_low_m, goals.crust_high_m, "m"),
        band("Core at the lift, coldest usual piece", c.core_c, goals.core_low_c, goals.core_high_c, "c"),
        band("Colour change, mean of usual pieces", c.colour_n, goals.colour_low_n, goals.colour_high_n, ""),
    )
