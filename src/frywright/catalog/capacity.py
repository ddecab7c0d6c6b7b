"""How much a fryer takes, and the check of a program's own load against it."""

from __future__ import annotations

from frywright.catalog import load
from frywright.model.errors import InputError
from frywright.model.food import CutSet
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.program import Program


def capacity_units(fryer: Fryer, cut_set: CutSet, unit_mass_kg: float) -> float:
    """Most units (heads or pieces) the fryer takes."""
    if cut_set.unit == "head" and fryer.capacity_heads:
        return float(fryer.capacity_heads)
    limit_kg = fryer.capacity_kg or fryer.capacity_heads * load.cut_sets()["chicken_8"].unit_mass_kg
    return limit_kg / unit_mass_kg


def most_units(fryer: Fryer, cut_set: CutSet, unit_mass_kg: float) -> float:
    """Most units the fryer takes by its plate, by count and by mass."""
    by_mass = fryer.capacity_kg / unit_mass_kg if fryer.capacity_kg else float("inf")
    return min(capacity_units(fryer, cut_set, unit_mass_kg), by_mass)


def check_load(kitchen: Kitchen, program: Program) -> None:
    """Refuse a program whose own full load is more than its fryer takes. Raises InputError: ``load_heads`` is
    0 or less, or above the fryer's capacity.
    """
    if program.load_heads is None:
        return
    fryer, cut_set = kitchen.fryer(program.fryer), kitchen.cut_set(kitchen.product(program.product).cut_set)
    most = most_units(fryer, cut_set, program.unit_mass_kg or kitchen.unit_kg(program.product))
    if not 0.0 < program.load_heads <= 1.001 * most:
        raise InputError(
            "load",
            f"{program.load_heads:g} × {cut_set.unit}",
            "above 0 and at most {most}, which is what {fryer} takes: give a smaller load, or leave it out"
            " for a full one",
            where=program.name,
            most=f"{most:.3g}",
            fryer=fryer.name,
        )
