"""A day of drops in slots: fryers, products, hands, money; and a plan as a list of drops and filter turns."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError

Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadSize:
    """One way to load a product: units that come out, and slots from drop to lift (proven at that load)."""

    units_count: int
    cook_slots_count: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Item:
    """A product of the day. Loads rise in units; ``fryers`` are places in the day's bank that may cook it."""

    name: str
    loads: tuple[LoadSize, ...]
    hold_slots_count: int
    recovery_slots_count: int
    fryers: tuple[int, ...]
    short_money: float
    waste_money: float
    batch_money: float

    def __post_init__(self) -> None:
        sizes = [load.units_count for load in self.loads]
        if not sizes or sizes != sorted(set(sizes)) or sizes[0] < 1:
            raise InputError("loads", sizes, "one or more sizes, rising, above 0", where=self.name)
        if min(load.cook_slots_count for load in self.loads) < 1 or self.hold_slots_count < 1:
            raise InputError("cook and hold", "0 slots", "1 slot or more", where=self.name)
        if min(self.short_money, self.waste_money) <= 0 or self.batch_money < 0:
            raise InputError("money", "not positive", "above 0 for a unit too few or too many, 0 or more for a batch", where=self.name)  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class Day:
    """Everything about a day but its demand. Slot 0 is the first in which a crew may drop."""

    items: tuple[Item, ...]
    fryers_count: int
    slots_count: int
    slot_s: float = 300.0
    hands_count: int = 3
    """Crew actions a slot: a drop, a lift and the start of a filter turn are one each."""
    filter_every_count: int = 6
    filter_slots_count: int = 2
    mean_n: Array  # (items, slots) expected units asked for

    def __post_init__(self) -> None:
        if self.mean_n.shape != (len(self.items), self.slots_count):
            raise InputError("demand", self.mean_n.shape, f"{len(self.items)} items by {self.slots_count} slots")
        if self.fryers_count < 1 or self.hands_count < 1 or self.filter_every_count < 1:
            raise InputError("fryers, hands and filter", "0", "1 or more")
        for item in self.items:
            if not item.fryers or not all(0 <= f < self.fryers_count for f in item.fryers):
                raise InputError("fryers", item.fryers, f"places 0 to {self.fryers_count - 1}", where=item.name)


@dataclass(frozen=True, slots=True, kw_only=True)
class Drop:
    """One planned or real load: fryer, item, which load size, slot of the drop."""

    fryer: int
    item: int
    load: int
    slot: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """Drops and filter turns (fryer, slot) of a day."""

    drops: tuple[Drop, ...] = ()
    filters: tuple[tuple[int, int], ...] = ()
