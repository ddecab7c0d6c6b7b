"""The day as it is: what was dropped, lifted, sold and thrown away so far.

Happenings are facts in order of time; the state is worked out from them anew, so that nothing can get out of
step. What does not fit (a lift without a drop, more sold than there was) is told and kept.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from enum import StrEnum

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError
from frywright.model.findings import Note
from frywright.plan.model import Day, Drop

Array = NDArray[np.float64]


class What(StrEnum):
    """Kinds of happenings. A product is out while its raw pieces are not there (a late truck), and in
    again.
    """

    DROP = "drop"
    LIFT = "lift"
    FILTER = "filter"
    SOLD = "sold"
    COUNT = "count"
    DISCARD = "discard"
    DOWN = "down"
    UP = "up"
    OUT = "out"
    IN = "in"


LATE_SLOTS = 3
"""Slots before food is thrown away whose sales may have come in after somebody looked (own choice)."""
CAME_OUT_WRONG = ("burnt", "undercooked")
"""Reasons for which a load is thrown away as it is lifted."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Happening:
    """One fact. ``at_n`` is the time in slots since slot 0 (a fraction inside a slot)."""

    what: What
    at_n: float
    fryer: int = -1
    item: int = -1
    load: int = -1
    units_n: float = 0.0
    reason: str = ""
    entry_number: int = 0


@dataclass(slots=True, kw_only=True)
class Tray:
    """Units of one load on the shelf, with what it was when it was lifted."""

    item: int
    units_n: float
    left_n: float
    drop_n: float
    lift_n: float
    ends_n: float
    load: int
    fryer: int
    entry_number: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class InOil:
    """A load in the oil. ``units_n`` are the pieces dropped, whatever the load's usual size."""

    fryer: int
    item: int
    load: int
    units_n: float
    drop_n: float
    lift_n: float
    entry_number: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Lifted:
    """A load taken out: its fryer, when, and when that fryer is back at heat."""

    fryer: int
    at_n: float
    ready_n: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Thrown:
    """Units thrown away from one tray."""

    tray: Tray
    units_n: float
    at_n: float
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class DayNote(Note):
    """What does not fit together in what was told, and since when."""

    at_n: float


@dataclass(slots=True, kw_only=True)
class State:
    """Where the day stands at a moment. ``trays`` go out in order; ``expired`` are past their hold life and
    must be thrown away.
    """

    now_n: float
    in_oil: list[InOil] = field(default_factory=list)
    trays: list[Tray] = field(default_factory=list)
    thrown: list[Thrown] = field(default_factory=list)
    sold_n: Array = field(default_factory=lambda: np.zeros((0, 0)))  # (item, slot), NaN where not told
    bare: NDArray[np.bool_] = field(default_factory=lambda: np.zeros((0, 0), dtype=bool))  # shelf ran out
    since: list[int] = field(default_factory=list)
    filters: list[tuple[int, float]] = field(default_factory=list)
    lifts: list[Lifted] = field(default_factory=list)
    down: dict[int, float] = field(default_factory=dict)
    back_n: dict[int, float] = field(default_factory=dict)
    out: set[int] = field(default_factory=set)
    notes: list[DayNote] = field(default_factory=list)
    drops: list[tuple[Drop, float]] = field(default_factory=list)

    @property
    def expired(self) -> list[Tray]:
        """Trays past their hold life with something left."""
        return [tray for tray in self.trays if tray.left_n > 0 and tray.ends_n <= self.now_n]

    def shelf(self, item: int) -> float:
        """Units of a product that may be sold now."""
        return sum(tray.left_n for tray in self.trays if tray.item == item and tray.ends_n > self.now_n)

    def copy(self) -> State:
        """One that may change while this one stays."""
        return replace(
            self,
            in_oil=list(self.in_oil),
            trays=[replace(tray) for tray in self.trays],
            thrown=list(self.thrown),
            sold_n=self.sold_n.copy(),
            bare=self.bare.copy(),
            since=list(self.since),
            filters=list(self.filters),
            lifts=list(self.lifts),
            down=dict(self.down),
            back_n=dict(self.back_n),
            out=set(self.out),
            notes=list(self.notes),
            drops=list(self.drops),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Played:
    """Happenings in order of time and the state after the last of them: from there a longer day goes on."""

    happened: tuple[Happening, ...]
    state: State


def when(fact: Happening) -> tuple[float, int]:
    """What happenings are ordered by: their time, and of the same time their entry."""
    return fact.at_n, fact.entry_number


def until(ordered: Sequence[Happening], now_n: float) -> tuple[Happening, ...]:
    """Of happenings in order of time those up to ``now_n``."""
    return tuple(ordered[: bisect_right(ordered, now_n + 1e-9, key=lambda h: h.at_n)])


def played_on(day: Day, happened: tuple[Happening, ...], before: Played | None = None) -> Played:
    """The state after what happened, in order of time. A day played before is not played again as far as it
    is the same. Nobody takes from the shelf but by a happening. Raises InputError: a happening names a fryer,
    product or load the day does not have.
    """
    known = len(before.happened) if before else 0
    same = before is not None and before.happened == happened[:known]
    state = before.state.copy() if before and same else _morning(day)
    for fact in happened[known if same else 0 :]:
        _known(day, fact)
        _apply(day, state, fact)
    state.trays = [tray for tray in state.trays if tray.left_n > 0]
    return Played(happened=happened, state=state)


def _morning(day: Day) -> State:
    """The state before anything happened."""
    none = np.full(day.mean_n.shape, np.nan)
    return State(now_n=0.0, since=[0] * day.fryers_count, sold_n=none, bare=np.zeros(none.shape, dtype=bool))


def state_of(
    day: Day,
    happened: Sequence[Happening],
    now_n: float,
    guests: NDArray[np.int64] | None = None,
    told: bool = True,
) -> State:
    """The day at ``now_n`` from what happened up to then; later happenings are left out. Raises InputError: a
    happening names a fryer, product or load the day does not have.

    Parameters
    ----------
    guests : (item, slot) what guests ask for in every slot that has ended; they take what stands there
    told : whether those sales are known to the crew (a practice day) or only expected (a day without a till)
    """
    order = until(sorted(happened, key=when), now_n)
    if guests is None:
        return replace(played_on(day, order).state, now_n=now_n)
    state, served = replace(_morning(day), now_n=now_n), 0
    for fact in order:
        _known(day, fact)
        served = _serve(day, state, guests, (served, int(fact.at_n)), told)
        _apply(day, state, fact)
    _serve(day, state, guests, (served, int(now_n)), told)
    state.trays = [tray for tray in state.trays if tray.left_n > 0]
    return state


def _serve(day: Day, state: State, guests: NDArray[np.int64], slots: tuple[int, int], told: bool) -> int:
    """Let guests of whole slots take what stands there; returns the slot up to which they were served."""
    low, high = slots
    for slot in range(low, min(high, day.slots_count)):
        for i in range(len(day.items)):
            asked = float(guests[i, slot])
            there = sum(t.left_n for t in state.trays if t.item == i and t.ends_n > slot)
            sale = min(asked, there)
            if sale > 0:
                _take(state, i, sale, slot)
            if told:
                state.sold_n[i, slot] = sale
                state.bare[i, slot] = sale < asked
    return max(low, high)


def _known(day: Day, fact: Happening) -> None:
    needs = {What.DROP: "fil", What.LIFT: "f", What.FILTER: "f", What.DOWN: "f", What.UP: "f"}.get(
        fact.what, "i"
    )
    if "f" in needs and not 0 <= fact.fryer < day.fryers_count:
        raise InputError("fryer", fact.fryer, "0 to {most}", where=str(fact.what), most=day.fryers_count - 1)
    if "i" in needs and not 0 <= fact.item < len(day.items):
        raise InputError("product", fact.item, "0 to {most}", where=str(fact.what), most=len(day.items) - 1)
    if "l" in needs and not 0 <= fact.load < len(day.items[fact.item].loads):
        raise InputError("load", fact.load, "one of the product's", where=day.items[fact.item].name)
    if not np.isfinite(fact.units_n) or fact.units_n < 0:
        raise InputError("units", fact.units_n, "0 or more", where=str(fact.what))


def _apply(day: Day, state: State, fact: Happening) -> None:
    if fact.what is What.DROP:
        _dropped(day, state, fact)
    elif fact.what is What.LIFT:
        _lifted(day, state, fact)
    elif fact.what is What.FILTER:
        state.since[fact.fryer] = 0
        state.filters.append((fact.fryer, fact.at_n))
    elif fact.what is What.SOLD:
        _sold(day, state, fact)
    elif fact.what is What.COUNT:
        _counted(state, fact)
    elif fact.what is What.DISCARD:
        _throw(state, fact)
    elif fact.what is What.OUT:
        state.out.add(fact.item)
    elif fact.what is What.IN:
        state.out.discard(fact.item)
    elif fact.what is What.DOWN:
        state.down[fact.fryer] = fact.at_n
        state.back_n.pop(fact.fryer, None)
    else:
        state.down.pop(fact.fryer, None)
        state.back_n[fact.fryer] = fact.at_n + fact.units_n


def _dropped(day: Day, state: State, fact: Happening) -> None:
    if any(load.fryer == fact.fryer for load in state.in_oil):
        state.notes.append(
            DayNote(
                at_n=fact.at_n,
                kind="still_in",
                text="A load was dropped into {fryer} before the one in it was lifted; lift that one first.",
                values={"fryer": str(fact.fryer)},
            )
        )
        return
    load = day.items[fact.item].loads[fact.load]
    state.in_oil.append(
        InOil(
            fryer=fact.fryer,
            item=fact.item,
            load=fact.load,
            units_n=fact.units_n or float(load.units_count),
            drop_n=fact.at_n,
            lift_n=fact.at_n + load.cook_slots_count,
            entry_number=fact.entry_number,
        )
    )
    state.since[fact.fryer] += 1
    state.drops.append(
        (Drop(fryer=fact.fryer, item=fact.item, load=fact.load, slot=int(fact.at_n)), fact.at_n)
    )


def _lifted(day: Day, state: State, fact: Happening) -> None:
    load = next((x for x in state.in_oil if x.fryer == fact.fryer), None)
    if load is None:
        state.notes.append(
            DayNote(
                at_n=fact.at_n,
                kind="nothing_in",
                text="A lift from {fryer} without a drop before it.",
                values={"fryer": str(fact.fryer)},
            )
        )
        return
    state.in_oil.remove(load)
    item = day.items[load.item]
    ready = fact.at_n + item.loads[load.load].recovery_slots_count
    state.lifts.append(Lifted(fryer=load.fryer, at_n=fact.at_n, ready_n=ready))
    units = fact.units_n or load.units_n
    state.trays.append(
        Tray(
            item=load.item,
            units_n=units,
            left_n=units,
            drop_n=load.drop_n,
            lift_n=fact.at_n,
            ends_n=fact.at_n + (item.life_n or item.hold_slots_count),
            load=load.load,
            fryer=load.fryer,
            entry_number=fact.entry_number,
        )
    )


def _sold(day: Day, state: State, fact: Happening) -> None:
    slot = min(max(int(fact.at_n), 0), day.slots_count - 1)
    before = state.sold_n[fact.item, slot]
    state.sold_n[fact.item, slot] = fact.units_n + (0.0 if np.isnan(before) else before)
    missing = _take(state, fact.item, fact.units_n, fact.at_n)
    state.bare[fact.item, slot] = state.shelf(fact.item) <= 0
    if missing > 1e-9:
        state.notes.append(
            DayNote(
                at_n=fact.at_n,
                kind="oversold",
                text="More {product} were sold than the shelf held; count the shelf.",
                values={"product": day.items[fact.item].name},
            )
        )


def _take(state: State, item: int, units: float, at: float) -> float:
    """Take units off the shelf, first out first; returns what was not there."""
    for tray in sorted(
        (t for t in state.trays if t.item == item and t.left_n > 0), key=lambda t: (t.ends_n <= at, t.ends_n)
    ):
        taken = min(units, tray.left_n)
        tray.left_n -= taken
        units -= taken
        if units <= 0:
            break
    return units


def _counted(state: State, fact: Happening) -> None:
    there = sum(t.left_n for t in state.trays if t.item == fact.item)
    if fact.units_n < there:
        _take(state, fact.item, there - fact.units_n, fact.at_n)
    elif fact.units_n > there:
        state.notes.append(
            DayNote(
                at_n=fact.at_n,
                kind="more_counted",
                text="Counted on the shelf, with no lift entered: {units}. Enter the lift that is missing.",
                values={"units": fact.units_n - there},
            )
        )


def _throw(state: State, fact: Happening) -> None:
    """Take thrown pieces off their trays, the oldest first; those of a load that came out wrong off the
    newest, so that what was there before it keeps its own hold life. Where food is past its life the board
    says how much; guests who took some of it meanwhile are no missing lift.
    """
    units = fact.units_n
    for tray in sorted(
        (t for t in state.trays if t.item == fact.item and t.left_n > 0),
        key=lambda t: t.ends_n,
        reverse=fact.reason in CAME_OUT_WRONG,
    ):
        taken = min(units, tray.left_n)
        if taken > 0:
            state.thrown.append(Thrown(tray=replace(tray), units_n=taken, at_n=fact.at_n, reason=fact.reason))
        tray.left_n -= taken
        units -= taken
    slot = max(0, int(fact.at_n))
    sold = float(np.nansum(state.sold_n[fact.item, max(0, slot - LATE_SLOTS) : slot + 1]))
    if units > (sold if fact.reason == "expired" else 0.0) + 1e-9:
        state.notes.append(
            DayNote(
                at_n=fact.at_n,
                kind="more_thrown",
                text="Thrown away, with no lift entered: {units}. Enter the lift that is missing.",
                values={"units": units},
            )
        )
