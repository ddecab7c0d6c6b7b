"""What the close cannot have done yet: a step takes its time, one move of oil ends before the next, and oil
cools no faster than its vat lets it.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from math import exp
from typing import Any

from frywright.catalog import load as catalog
from frywright.ledger.facts.day import CloseStepSigned
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.units import show
from frywright.rooms.standing import taps_since

FASTEST_N = 3.0
"""A vat under a running hood with its lid off loses at most this many times what it is told to lose at heat
(own estimate; a board that is wrong here only asks for one more look at the thermometer).
"""
METER_K = 5.0
"""What a kitchen thermometer may be off by (own estimate)."""
USUAL_HOT_C = 150.0
"""Oil of a fryer without a program was at least so hot at work (own estimate)."""
Told = Mapping[tuple[str, str], Kept[CloseStepSigned]]


def opens_at(where: str, step: Mapping[str, Any], told: Told) -> dt.datetime | None:
    """When a step can be done at the earliest, once what it needs is signed; None where nothing waits."""
    before = [told[where, n].happened_at for n in step.get("needs", ()) if (where, n) in told]
    if step.get("hot"):
        hot = {s["key"] for s in catalog.table("care/closing.toml")["step"] if s.get("hot")}
        before += [e.happened_at for (_, key), e in told.items() if key in hot]
    least = dt.timedelta(minutes=step.get("least_min", 0))
    return max(before) + least if before and least else None


def check_cooled(
    store: Store, kitchen: Kitchen, fryer: Fryer, told: Told, at: tuple[dt.datetime, float]
) -> None:
    """Whether oil can have cooled to what was read; ``at`` is the moment and the oil's temperature [degC].
    Raises InputError: cooler than the vat can be by then.
    """
    moment, oil_c = at
    off = told[fryer.key, "heat_off"]
    worked = [e.happened_at for e in taps_since(store, off.fact.date) if e.fact.fryer == fryer.key]
    since_s = (moment - max(worked, default=off.happened_at)).total_seconds()
    coolest = coolest_c(kitchen, fryer, max(since_s, 0.0))
    if oil_c < coolest - METER_K:
        system = kitchen.site.units
        raise InputError(
            "oil",
            show(oil_c, "c", system),
            "about {coolest} or hotter {minutes} min after it was last at heat: stir, read again, in the oil",
            where=fryer.name,
            coolest=show(coolest, "c", system),
            minutes=round(since_s / 60),
        )


def coolest_c(kitchen: Kitchen, fryer: Fryer, since_s: float) -> float:
    """The coolest that oil of a fryer can be some time after it was at heat [degC]: one lump that loses heat
    to the room.
    """
    room_c, oil = kitchen.site.room_temp_c, catalog.oils()[fryer.oil]
    sets = [stage.set_c for p in kitchen.programs if p.fryer == fryer.key for stage in p.stages]
    hot_c = min(sets, default=USUAL_HOT_C)
    cp = oil.cp_0c_j_kgk + oil.cp_slope_j_kgk2 * 0.5 * (hot_c + room_c)
    heat_j_k = fryer.oil_mass_kg * cp + fryer.metal_heat_j_k
    return room_c + (hot_c - room_c) * exp(-FASTEST_N * fryer.loss_w_k * since_s / heat_j_k)
