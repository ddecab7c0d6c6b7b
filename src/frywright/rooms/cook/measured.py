"""A value of a fryer that was an estimate, measured: it goes into the kitchen file as a change with its
reason.
"""

from __future__ import annotations

from collections.abc import Mapping

from frywright.catalog.edit import with_measured
from frywright.ledger.facts.cook import KitchenSet
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError, one_of
from frywright.model.fryer import ESTIMATES, SHORTEST_VENT_S
from frywright.rooms.cook.setup_read import Asked, called, room_under_lid
from frywright.rooms.cook.setup_text import line
from frywright.rooms.kitchen import kitchen_text, remember_kitchen, remembered_kitchen

VALUE = {
    "vent": ("vent_s", "time", (SHORTEST_VENT_S, 120.0, "s")),
    "swing": ("swing_k", "temperature_difference", (0.0, 30.0, "k")),
    "heater": ("heater_w", "power", (500.0, 200e3, "w")),
    "relief_gauge": ("relief_gauge_pa", "pressure", (10e3, 150e3, "pa")),
}
"""What each name is in the model, how it is read, and its bounds."""


def keep_measured(
    store: Store, fryer: str, name: str, typed: Mapping[str, str], reason: str
) -> Kept[KitchenSet]:
    """Put a measured value into the kitchen file; it is an estimate no longer, and programs it moves are to
    be proved again. Raises InputError: a value that cannot be read or cannot be, or no reason where the
    change moves a prediction.
    """
    one_of(ESTIMATES, name, "estimates")
    with store.writing():
        kitchen = remembered_kitchen(store)
        found = kitchen.fryer(fryer)
        asked = Asked(kitchen.site, typed)
        if name == "head_volume":
            key, value = "head_volume_m3", room_under_lid(asked)
        else:
            key, dimension, bounds = VALUE[name]
            value = asked.amount(name, dimension, bounds)
        for error in asked.wrong.values():
            raise error
        if value is None:
            raise InputError(called(name), "empty", "given", where=found.name)
        text = with_measured(kitchen_text(store), found.key, name, line(key, value, kitchen.site.units))
        return remember_kitchen(store, text, "kitchen.toml", reason)
