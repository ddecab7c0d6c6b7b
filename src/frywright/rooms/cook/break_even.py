"""Where loads of a program begin to fail: time and set point of its main stage, as people read them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import ceil, floor

from frywright.design.break_even import SHARES, BreakEven, break_even
from frywright.design.proof import all_loads
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.model.tongues import Translate
from frywright.model.units import UNITS, clock, show, to_people
from frywright.physics.plan import make_plan
from frywright.trial.ask import product_limit
from frywright.trial.proof import guard_of

FOUND, NONE = "{at} ({low} to {high})", "not found from {low} to {high}"


def break_even_of(
    kitchen: Kitchen, program: Program, shares: Sequence[float] = SHARES
) -> tuple[BreakEven, ...]:
    """Changes of a program's main stage at which these shares of its loads fail; none without a limit.
    Raises InputError: a share is too small or too large to be found.
    """
    plan = make_plan(kitchen, program)
    limit = product_limit(kitchen, plan.product)
    if limit is None:
        return ()
    return break_even(plan, limit, guard_of(kitchen, plan), all_loads(plan), shares)


@dataclass(frozen=True, slots=True, kw_only=True)
class BreakEvenRow:
    """At which value of the main stage a share of the loads fails; changes are to the program [s or K]."""

    stage: int
    what: str
    keyed: str
    share_frac: float
    share: str
    at: str
    change: float | None
    low: float
    high: float
    solved_count: int


def break_even_rows(
    found: Sequence[BreakEven], program: Program, system: str, translate: Translate = str
) -> tuple[BreakEvenRow, ...]:
    """Each share with the value at which it fails; an interval is rounded outwards."""
    rows = []
    for one in found:
        stage = program.timed().stages[one.stage - 1]
        keyed = stage.end_value if one.what == "time" else stage.set_c
        values = {
            "low": _value(one.what, keyed + one.low, system, floor),
            "high": _value(one.what, keyed + one.high, system, ceil),
            "at": _value(one.what, keyed + (one.change or 0.0), system, round),
        }
        row = BreakEvenRow(
            stage=one.stage,
            what=translate(one.what),
            keyed=_value(one.what, keyed, system, round),
            share_frac=one.share_frac,
            share=show(one.share_frac, "frac", system),
            at=say(NONE if one.change is None else FOUND, values, system, translate),
            change=one.change,
            low=one.low,
            high=one.high,
            solved_count=one.solved_count,
        )
        rows.append(row)
    return tuple(rows)


def _value(what: str, value: float, system: str, rounded: Callable[[float], int]) -> str:
    """A time, or a set point in whole degrees."""
    if what == "time":
        return clock(rounded(value))
    unit = "f" if system == "us" else "c"
    return f"{rounded(to_people(value, unit))} {UNITS[unit].sign}"
