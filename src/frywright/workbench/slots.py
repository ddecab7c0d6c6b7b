"""Slots as a kitchen has told them: kept when a card is printed."""

from __future__ import annotations

from frywright.design.slots import slots_of
from frywright.ledger.store import Store
from frywright.model.entry import Recorded
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program
from frywright.workbench.book import record

KIND = "slot"


def told_slots(store: Store) -> dict[str, int]:
    """Slots told with a card, newest last, by program."""
    return {e.entry.payload["name"]: int(e.entry.payload["slot"]) for e in store.entries(KIND)}


def slot_of(store: Store, kitchen: Kitchen, program: Program) -> int:
    """Slot of a program here."""
    return slots_of(kitchen, program.fryer, told_slots(store))[program.name]


def tell_slot(store: Store, kitchen: Kitchen, program: Program, slot: int) -> Recorded | None:
    """Keep the slot chosen for a program; nothing is written where it is known already.

    Raises
    ------
    InputError
        The controller has no such slot.
    """
    most = kitchen.fryer(program.fryer).controller.slot_count
    if not 1 <= slot <= most:
        raise InputError("slot", slot, "1 to {most}", values={"most": most})
    if told_slots(store).get(program.name) == slot:
        return None
    return record(store, KIND, {"name": program.name, "fryer": program.fryer, "slot": slot})
