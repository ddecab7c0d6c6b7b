"""A day of drops in slots: fryers, products, hands, power, money; and a plan as a list of drops and filter
turns.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError, Phrase

Array = NDArray[np.float64]
MOST_SLOTS = 72
LEVEL_CV_FRAC = 0.15
"""Spread of whole days about their forecast: prior of the day's level. Estimate."""
PROMISE_WEIGHT = 3.0
"""A promised piece that is not there counts as so many that guests miss (own choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadSize:
    """One way to load a product: units that come out, slots from drop to lift and back to heat, and which
    fryers may.

    ``fryers`` are places in the day's bank with a program proven at this load and oil that suits the product.
    """

    units_count: int
    cook_slots_count: int
    recovery_slots_count: int = 0
    batch_money: float = 0.0
    fryers: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Item:
    """A product of the day. Loads do not fall in units."""

    name: str
    loads: tuple[LoadSize, ...]
    hold_slots_count: int
    short_money: float
    waste_money: float
    spread_n: float = 1.5
    """Variance over mean of what is asked for in a slot; pieces that go out by the box have a large one."""
    life_n: float = 0.0
    """Hold life in slots as the program has it, for trays; 0 where it is ``hold_slots_count``."""

    def __post_init__(self) -> None:
        sizes = [load.units_count for load in self.loads]
        if not sizes or sizes != sorted(sizes) or sizes[0] < 1:
            raise InputError("loads", sizes, "one or more sizes, not falling, above 0", where=self.name)
        longest = max(
            self.hold_slots_count, *(load.cook_slots_count + load.recovery_slots_count for load in self.loads)
        )
        if (
            min(load.cook_slots_count for load in self.loads) < 1
            or self.hold_slots_count < 1
            or longest > MOST_SLOTS
        ):
            raise InputError(
                "cook and hold",
                Phrase("up to {longest} slots", {"longest": longest}),
                "1 to {most} slots",
                where=self.name,
                most=MOST_SLOTS,
            )
        if min(load.recovery_slots_count for load in self.loads) < 0:
            raise InputError("recovery", "below 0 slots", "0 or more", where=self.name)
        if not 1.0 <= self.spread_n <= 1000.0:
            raise InputError("spread", self.spread_n, "1 to 1000", where=self.name)
        if min(self.short_money, self.waste_money) <= 0 or min(load.batch_money for load in self.loads) < 0:
            raise InputError(
                "money",
                "not positive",
                "above 0 for a unit too few or too many, 0 or more for a batch",
                where=self.name,
            )

    @property
    def fryers(self) -> tuple[int, ...]:
        """Every fryer that may cook some load of it."""
        return tuple(sorted({f for load in self.loads for f in load.fryers}))


@dataclass(frozen=True, slots=True, kw_only=True)
class Order:
    """Units of a product promised for the start of a slot; they come on top of what guests ask for."""

    item: int
    slot: int
    units_count: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Day:
    """Everything about a day but what will be asked for. Slot 0 is the first in which a crew may drop.

    A crew action is a drop, a lift or the start of a filter turn. ``up`` gives each fryer's first slot at
    heat and the slot by which it must be done; ``rush`` are spans of slots in which no filter turn may run.
    """

    items: tuple[Item, ...]
    fryers_count: int
    slots_count: int
    slot_s: float = 300.0
    hands_count: int = 3
    filter_every_count: int = 6
    filter_slots_count: int = 2
    filters_at_once_count: int = 1
    filter_money: float = 0.0
    up: tuple[tuple[int, int], ...] = ()
    rush: tuple[tuple[int, int], ...] = ()
    power_w: tuple[float, ...] = ()
    cap_w: float = float("inf")
    level_cv_frac: float = LEVEL_CV_FRAC
    orders: tuple[Order, ...] = ()
    mean_n: Array  # (items, slots) expected units asked for, without promised orders

    def __post_init__(self) -> None:
        if self.mean_n.shape != (len(self.items), self.slots_count):
            raise InputError(
                "demand",
                self.mean_n.shape,
                "{items} items by {slots} slots",
                items=len(self.items),
                slots=self.slots_count,
            )
        if not np.isfinite(self.mean_n).all() or self.mean_n.min(initial=0.0) < 0:
            raise InputError("demand", "negative or not a number", "0 or more in every slot")
        counts = (
            self.fryers_count,
            self.hands_count,
            self.filter_every_count,
            self.filter_slots_count,
            self.filters_at_once_count,
        )
        if min(counts) < 1:
            raise InputError("fryers, hands and filter", "0", "1 or more")
        if not 0.0 < self.level_cv_frac <= 2.0:
            raise InputError("level_cv", self.level_cv_frac, "above 0 to 2")
        for order in self.orders:
            if (
                not (0 <= order.item < len(self.items) and 0 <= order.slot < self.slots_count)
                or order.units_count < 1
            ):
                raise InputError("order", order.units_count, "1 or more of a product in a slot of the day")
        for name in ("up", "power_w"):
            if getattr(self, name) and len(getattr(self, name)) != self.fryers_count:
                raise InputError(
                    name, len(getattr(self, name)), "one for each of {count} fryers", count=self.fryers_count
                )
        for item in self.items:
            for load in item.loads:
                if not load.fryers or not all(0 <= f < self.fryers_count for f in load.fryers):
                    raise InputError(
                        "fryers",
                        load.fryers,
                        "places 0 to {most}",
                        where=item.name,
                        most=self.fryers_count - 1,
                    )

    @property
    def firm_n(self) -> NDArray[np.int64]:
        """Promised units (item, slot)."""
        found = np.zeros(self.mean_n.shape, dtype=np.int64)
        for order in self.orders:
            found[order.item, order.slot] += order.units_count
        return found

    @property
    def spreads_n(self) -> Array:
        """Variance over mean of every item."""
        return np.array([item.spread_n for item in self.items])

    def window(self, fryer: int) -> tuple[int, int]:
        """First slot at heat and the slot by which a fryer must be done."""
        return self.up[fryer] if self.up else (0, self.slots_count)

    def in_rush(self, slot: int) -> bool:
        """Whether a filter turn may not run in a slot."""
        return any(a <= slot < b for a, b in self.rush)


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
