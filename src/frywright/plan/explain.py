"""Why every piece that was thrown away was thrown away; the parts add up to the whole.

Causes are taken off a tray's thrown pieces in this order, each at most what is left: a slip of hands; the mix
of cuts; a load larger than the forecast could sell; demand below the forecast; a drop earlier or later than
the plan; and what remains was held too long or left at the close.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from frywright.model.errors import InputError
from frywright.plan.live import State, Thrown
from frywright.plan.model import Day, Drop

CAUSES = ("forecast", "late or early drop", "load size", "mix", "hold", "error", "close")
SLIPS = ("error", "dropped", "burnt", "wrong", "undercooked")


@dataclass(frozen=True, slots=True, kw_only=True)
class Waste:
    """Pieces thrown away of one tray by cause."""

    item: int
    lift_n: float
    parts_n: dict[str, float]

    @property
    def units_n(self) -> float:
        """All of them."""
        return sum(self.parts_n.values())


def explain(day: Day, state: State, planned: Sequence[Drop] = (), mix: Sequence[float] = ()) -> list[Waste]:
    """Waste of a day by tray and cause.

    Parameters
    ----------
    state : the day at its close, with what was sold and thrown away
    planned : drops of the plan that was followed; without it no drop counts as early or late
    mix : for each product, pieces cooked for one asked for (bird balance), 1 or more
    """
    factors = list(mix) or [1.0] * len(day.items)
    if len(factors) != len(day.items) or min(factors) < 1.0:
        raise InputError("mix", factors, "one factor for each product, 1 or more")
    return [
        _one(day, state, thrown, planned, factors[thrown.tray.item])
        for thrown in state.thrown
        if thrown.units_n > 0
    ]


def _one(day: Day, state: State, thrown: Thrown, planned: Sequence[Drop], factor: float) -> Waste:
    tray = thrown.tray
    left, parts = thrown.units_n, dict.fromkeys(CAUSES, 0.0)

    def take(cause: str, units: float) -> None:
        nonlocal left
        share = min(left, max(0.0, units))
        parts[cause] += share
        left -= share

    if any(word in thrown.reason.lower() for word in SLIPS):
        take("error", left)
    take("mix", tray.units_n * (1.0 - 1.0 / factor))
    hoped, sold = _life(day, state, thrown)
    take("load size", tray.units_n - hoped)
    take("forecast", hoped - sold)
    if planned:
        near = [abs(d.slot - tray.drop_n) for d in planned if d.item == tray.item]
        if min(near, default=99.0) > 1.5:
            take("late or early drop", left)
    take("close" if thrown.at_n >= day.slots_count - 2 else "hold", left)
    return Waste(item=tray.item, lift_n=tray.lift_n, parts_n=parts)


def _life(day: Day, state: State, thrown: Thrown) -> tuple[float, float]:
    """Pieces of a product forecast and sold while a tray lived."""
    tray = thrown.tray
    low, high = int(tray.lift_n), int(min(thrown.at_n, tray.ends_n, day.slots_count))
    seen = state.sold_n[tray.item, low:high]
    sold = float(np.nansum(seen))
    return float(day.mean_n[tray.item, low:high].sum()), sold


def total(wastes: Sequence[Waste]) -> dict[str, float]:
    """Pieces by cause over trays."""
    return {cause: sum(w.parts_n[cause] for w in wastes) for cause in CAUSES}
