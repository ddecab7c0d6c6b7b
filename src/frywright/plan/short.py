"""A product of which none is left while guests ask for it: the load that ends it, or why none goes in.

The look ahead may find that to wait a little is cheaper by its count, where the rest of the day only falls
into step better. A cook does not leave a fryer empty beside an empty shelf for that. So a load goes in where
all of it is expected to sell within its hold life and no rule of the kitchen forbids it; where none does, the
reason is one that can be checked: hands, power, the fryer's hours, or a smallest load that is too large.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from frywright.model.findings import Note
from frywright.plan import engine
from frywright.plan.live import State
from frywright.plan.model import Day, LoadSize

Array = NDArray[np.float64]
WANTED_N = 0.5
"""Pieces expected in a slot from which a product without any is called short (own choice)."""
NONE_LEFT = {
    "hours": "{product}: none left, but this fryer would be off heat before a load is out.",
    "hands": "{product}: none left, but nobody is free now, or when this load would be lifted.",
    "power": "{product}: none left, but one more fryer heating would take more power than the kitchen has.",
}
"""What is said where a rule of the kitchen forbids the load."""
World = tuple[Array, ...]


def bare(day: Day, state: State, world: World, where: tuple[int, int]) -> list[int]:
    """Products of a fryer (``where`` is fryer, slot) that are asked for now, of which none is on the shelf or
    in the oil; the one that loses most first.
    """
    f, t = where
    found = [
        i
        for i, item in enumerate(day.items)
        if f in item.fryers
        and i not in state.out
        and day.mean_n[i, t] >= WANTED_N
        and world[1][3, i] - world[1][1, i] <= 0
        and not world[0][i, t:].any()
    ]
    return sorted(found, key=lambda i: -day.mean_n[i, t] * day.items[i].short_money)


def wanted(day: Day, world: World, where: tuple[int, int], load: int) -> float:
    """Pieces of a product (``where`` is product, slot) that are expected to be asked for while a load dropped
    now holds.
    """
    i, t = where
    lift = t + day.items[i].loads[load].cook_slots_count
    end = min(lift + day.items[i].hold_slots_count, day.slots_count)
    return expected(day, world, i, (lift, end))


def expected(day: Day, world: World, item: int, slots: tuple[int, int]) -> float:
    """Pieces of a product that are expected to be asked for in slots, with what is promised."""
    first, end = slots
    return float(world[5][0, item] * day.mean_n[item, first:end].sum() + day.firm_n[item, first:end].sum())


def load_for(
    day: Day, state: State, world: World, rules: tuple[Any, ...], where: tuple[int, int]
) -> tuple[int, int] | None:
    """Product and load that an empty fryer (``where`` is fryer, slot) takes, the largest that all sells; None
    where nothing is bare or none would.
    """
    f, t = where
    for i in bare(day, state, world, where):
        for k in reversed(range(len(day.items[i].loads))):
            load, short = day.items[i].loads[k], day.items[i].short_money
            sells = load.units_count <= wanted(day, world, (i, t), k)
            pays = load.units_count * short > load.batch_money
            if sells and pays and engine.may_drop(f, t, i, k, world, rules):
                return i, k
    return None


def whys_not(day: Day, state: State, world: World, where: tuple[int, int]) -> tuple[Note, ...]:
    """Why none of the bare products goes into an empty fryer (``where`` is fryer, slot) whose filter turn is
    not due: of each, the one that loses most first.
    """
    return tuple(_why_not(day, world, where, i) for i in bare(day, state, world, where))


def _why_not(day: Day, world: World, where: tuple[int, int], i: int) -> Note:
    """Why product ``i`` does not go in."""
    f, t = where
    item = day.items[i]
    k = next(n for n, load in enumerate(item.loads) if f in load.fryers)
    load, asked = item.loads[k], wanted(day, world, (i, t), k)
    values: dict[str, float | str] = {"product": item.name}
    if load.units_count > asked:
        return Note(
            kind="too_large",
            text=(
                "{product}: none left. The smallest load here is {pieces} pieces, and about {wanted} will be"
                " asked for before its hold life ends. Cook it when it is ordered."
            ),
            values=values | {"pieces": float(load.units_count), "wanted": float(int(asked))},
        )
    if load.units_count * item.short_money <= load.batch_money:
        text = "{product}: none left, but a load costs more in oil, energy and work than it brings."
        return Note(kind="dear", text=text, values=values)
    kind = forbids(day, world, where, load) or "power"
    return Note(kind=kind, text=NONE_LEFT[kind], values=values)


def forbids(day: Day, world: World, where: tuple[int, int], load: LoadSize) -> str:
    """What forbids a load in a filtered fryer (``where`` is fryer, slot): hours, hands or power; empty where
    nothing does.
    """
    f, t = where
    lift = t + load.cook_slots_count
    if lift >= min(day.window(f)[1], day.slots_count):
        return "hours"
    if max(world[3][0, t], world[3][0, lift]) >= day.hands_count:
        return "hands"
    heats = world[4][t : lift + load.recovery_slots_count]
    return "power" if day.power_w and (heats + day.power_w[f] > day.cap_w).any() else ""
