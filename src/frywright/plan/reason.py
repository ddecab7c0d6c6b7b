"""Why something is advised, in a sentence."""

from __future__ import annotations

from math import floor

from frywright.model.findings import Note
from frywright.plan import engine
from frywright.plan.live import State
from frywright.plan.model import Day
from frywright.plan.short import WANTED_N, World, expected, forbids, whys_not

FORBIDS = {
    "hours": "This fryer would be off heat before a load is out.",
    "hands": "Nobody is free now, or when a load from here would be lifted.",
    "power": "One more fryer heating would take more power than the kitchen has.",
}
"""What is said of a fryer into which no load may go."""


def reasons_of(day: Day, state: State, world: World, action: tuple[int, int, int, int]) -> tuple[Note, ...]:
    """The reasons of an action (fryer, slot, product or -1 filter or -2 wait, load) before it is begun: one,
    or to wait beside empty shelves one of each product that is asked for.
    """
    f, t, i, _ = action
    if i == engine.NOTHING and state.since[f] < day.filter_every_count and not _closed(day, f, t):
        return whys_not(day, state, world, (f, t)) or (_waits(day, state, world, (f, t)),)
    return (_reason_of(day, state, world, action),)


def _closed(day: Day, f: int, t: int) -> bool:
    """Whether nothing that goes into a fryer would be lifted before the close."""
    loads = [load for item in day.items for load in item.loads if f in load.fryers]
    return all(t + load.cook_slots_count >= day.slots_count for load in loads)


def _reason_of(day: Day, state: State, world: World, action: tuple[int, int, int, int]) -> Note:
    f, t, i, k = action
    if i >= 0:
        load = day.items[i].loads[k]
        lift = t + load.cook_slots_count
        until = min(lift + day.items[i].hold_slots_count, day.slots_count)
        oil = float(world[1][3, i] - world[1][0, i])
        text = (
            "{shelf} on the shelf, {oil} in the oil or going in; about {wanted} will be asked for before"
            " this load's hold life ends."
        )
        values = {"shelf": state.shelf(i), "oil": oil, "wanted": round(expected(day, world, i, (t, until)))}
        if living := [
            x.ends_n for x in state.trays if x.item == i and x.left_n > 0 and x.ends_n > state.now_n
        ]:
            text = (
                "{shelf} on the shelf, the oldest for {minutes} min more, {oil} in the oil or going in; about"
                " {wanted} will be asked for before this load's hold life ends."
            )
            values["minutes"] = float(floor((min(living) - state.now_n) * day.slot_s / 60))
        return Note(kind="drop", text=text, values=values)
    if i == engine.FILTER:
        return Note(
            kind="filter",
            text=(
                "Loads since the last filter turn: {loads}. This is a quiet moment. Hot oil:"
                " gear on, heat as the manual says, one person at a time."
            ),
            values={"loads": float(state.since[f])},
        )
    if state.since[f] >= day.filter_every_count:
        return _turn_waits(day, state, f, t)
    return Note(kind="closed", text="Nothing that goes into this fryer would be lifted before the close.")


def _waits(day: Day, state: State, world: World, where: tuple[int, int]) -> Note:
    """Why a fryer (``where`` is fryer, slot) waits: what forbids every load of it; or else what there is of
    the product asked for that lacks most, and what is asked for before a load of it would be out.
    """
    f, t = where
    loads = [(i, load) for i, item in enumerate(day.items) if i not in state.out for load in item.loads]
    own = [(i, load) for i, load in loads if f in load.fryers]
    if not own:
        return Note(kind="none", text="No raw pieces are left of anything that goes into this fryer.")
    held = [forbids(day, world, where, load) for _, load in own]
    if all(held):
        return Note(kind=held[0], text=FORBIDS[held[0]])
    lacks = []
    for i, load in own:
        asked = expected(day, world, i, (t, min(t + load.cook_slots_count, day.slots_count)))
        there = float(world[1][3, i] - world[1][1, i])
        lacks.append((asked >= WANTED_N, asked - there, i, asked))
    *_, i, asked = max(lacks)
    return Note(
        kind="wait",
        text=(
            "{product}: {shelf} on the shelf, {oil} in the oil or going in; about {wanted} will be asked for"
            " before a load from here would be out. To wait costs less than a load now."
        ),
        values={
            "product": day.items[i].name,
            "shelf": state.shelf(i),
            "oil": float(world[1][3, i] - world[1][0, i]),
            "wanted": round(asked),
        },
    )


def _turn_waits(day: Day, state: State, f: int, t: int) -> Note:
    """Why a filter turn that is due does not begin."""
    ends = min(t + day.filter_slots_count, day.slots_count)
    text = (
        "Its filter turn is due; it waits for free hands or for another filter turn."
        " Loads since the last: {loads}."
    )
    if any(day.in_rush(s) for s in range(t, ends)):
        text = (
            "Its filter turn is due, but not in a rush; it rests until then. Loads since the last: {loads}."
        )
    elif t + day.filter_slots_count > day.slots_count:
        text = "Its filter turn is due, and none can be done before the close. Loads since the last: {loads}."
    return Note(kind="blocked", text=text, values={"loads": float(state.since[f])})
