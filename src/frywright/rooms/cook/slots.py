"""Slots as a kitchen chooses them: kept when a card is printed."""

from __future__ import annotations

from frywright.design.slots import slots_of
from frywright.ledger.facts.cook import SlotChosen
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.rooms.hall import write
from frywright.rooms.standing import told_slots


def held_in(store: Store, kitchen: Kitchen, program: Program, slot: int) -> tuple[str, ...]:
    """Other programs that are in a slot of a program's fryer now."""
    there = slots_of(kitchen, program.fryer, told_slots(store))
    return tuple(name for name, held in there.items() if held == slot and name != program.name)


def tell_slot(store: Store, kitchen: Kitchen, program: Program, slot: int) -> Kept[SlotChosen] | None:
    """Keep the slot chosen for a program; nothing is written where it is known already.
    Raises InputError: the controller has no such slot.
    """
    most = kitchen.fryer(program.fryer).controller.slot_count
    if not 1 <= slot <= most:
        raise InputError("slot", slot, "1 to {most}", most=most)
    if told_slots(store).get(program.name) == slot:
        return None
    return write(store, SlotChosen(name=program.name, fryer=program.fryer, slot=slot))
