"""Why something is advised, in a sentence."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from frywright.model.findings import Note
from frywright.plan import engine
from frywright.plan.live import State
from frywright.plan.model import Day

Array = NDArray[np.float64]
WANTED_N = 0.5
"""Pieces expected in a slot from which a product without any is called short (own choice)."""


def reason_of(day: Day, state: State, world: tuple[Array, ...], action: tuple[int, int, int, int]) -> Note:
    """The reason of an action (fryer, slot, product or -1 filter or -2 wait, load) before it is begun."""
    f, t, i, k = action
    if i >= 0:
        load = day.items[i].loads[k]
        lift = t + load.cook_slots_count
        until = min(lift + day.items[i].hold_slots_count, day.slots_count)
        oil = float(world[1][3, i] - world[1][0, i])
        return Note(
            kind="drop",
            text=(
                "{shelf} on the shelf, {oil} in the oil; about {wanted} will be asked for before this load's"
                " hold life ends."
            ),
            values={
                "shelf": state.shelf(i),
                "oil": oil,
                "wanted": round(float(world[5][0, i] * day.mean_n[i, t:until].sum())),
            },
        )
    if i == engine.FILTER:
        return Note(
            kind="filter",
            text=(
                "{loads} loads since the last filter turn, and this is a quiet moment. Hot oil: gear on, heat"
                " as the manual says, one person at a time."
            ),
            values={"loads": float(state.since[f])},
        )
    if state.since[f] >= day.filter_every_count:
        return Note(
            kind="blocked",
            text="Its filter turn is due after {loads} loads, but not in a rush; it rests until then.",
            values={"loads": float(state.since[f])},
        )
    if all(
        f not in load.fryers or t + load.cook_slots_count >= day.slots_count
        for item in day.items
        for load in item.loads
    ):
        return Note(kind="closed", text="Nothing that goes into this fryer would be lifted before the close.")
    bare = [
        i
        for i, item in enumerate(day.items)
        if f in item.fryers and i not in state.out and _bare(i, t, world) and day.mean_n[i, t] >= WANTED_N
    ]
    if bare:
        return Note(
            kind="short",
            text=(
                "{product}: none on the shelf or in the oil. No load of it can go in here now, or none is"
                " expected to bring more than it costs: food, hands, and a fryer that others need."
            ),
            values={"product": day.items[bare[0]].name},
        )
    return Note(
        kind="wait",
        text=(
            "What is on the shelf and in the oil covers what will be asked for; waiting costs less than a"
            " load now."
        ),
    )


def _bare(item: int, t: int, world: tuple[Array, ...]) -> bool:
    """Whether none of a product stands there or is in the oil."""
    return bool(world[1][3, item] - world[1][1, item] <= 0 and not world[0][item, t:].any())
