"""Which slot of a fryer's controller holds which program: the one told, else the next free one."""

from __future__ import annotations

from collections.abc import Mapping

from frywright.model.kitchen import Kitchen
from frywright.model.program import Program


def slots_of(kitchen: Kitchen, fryer: str, told: Mapping[str, int] | None = None) -> dict[str, int]:
    """Slot of every program on a fryer: as told, else the lowest free one; where none is free they share the
    first.
    """
    names = list(dict.fromkeys(p.name for p in kitchen.programs if kitchen.program(p.name).fryer == fryer))
    count = kitchen.fryer(fryer).controller.slot_count
    found = {name: slot for name in names if 1 <= (slot := (told or {}).get(name, 0)) <= count}
    for name in names:
        if name not in found:
            found[name] = next((n for n in range(1, count + 1) if n not in found.values()), 1)
    return found


def sharing(
    kitchen: Kitchen, program: Program, slot: int, told: Mapping[str, int] | None = None
) -> tuple[str, ...]:
    """Other programs of the fryer that are in a slot: whoever keys one overwrites the other."""
    there = slots_of(kitchen, program.fryer, {**(told or {}), program.name: slot})
    return tuple(name for name, held in there.items() if held == slot and name != program.name)
