"""The first day's vent time carried into the kitchen file, as a change of the kitchen with its reason."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.catalog.edit import with_measured
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.model.units import clock
from frywright.rooms.care.upkeep import first_day
from frywright.rooms.kitchen import kitchen_text, remember_kitchen

SAME_S = 0.5
"""A watch is read to the second."""


@dataclass(frozen=True, slots=True, kw_only=True)
class VentOffer:
    """A vent time measured on the first day that the kitchen does not have."""

    measured_s: float
    told_s: float | None


def vent_offer(store: Store, kitchen: Kitchen, fryer: str) -> VentOffer | None:
    """What the kitchen may take over; None where nothing was measured, the kitchen has it, or names the
    opening itself.
    """
    found, told = first_day(store).get((fryer, "vent_down")), kitchen.fryer(fryer)
    if found is None or told.vent_area_m2 is not None:
        return None
    measured_s = found.fact.value_s
    if told.vent_s is not None and abs(told.vent_s - measured_s) < SAME_S:
        return None
    return VentOffer(measured_s=measured_s, told_s=told.vent_s)


def take_vent(store: Store, kitchen: Kitchen, fryer: str, reason: str) -> Kept[KitchenSet]:
    """Write the measured vent time into the kitchen file. Raises InputError: there is nothing to take over,
    no reason where the change moves a prediction, or a time no watch told.
    """
    offer = vent_offer(store, kitchen, fryer)
    if offer is None:
        raise InputError("vent", "none to take over", "timed on the first day and other than the kitchen's")
    text = with_measured(kitchen_text(store), fryer, "vent", f'vent = "{clock(offer.measured_s)}"')
    return remember_kitchen(store, text, "kitchen.toml", reason)
