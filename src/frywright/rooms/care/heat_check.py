"""What a calibration of the oil's heat must say: set point, reference thermometer, what it read before and
after.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from frywright.care.acceptance import MEAN_K
from frywright.model.errors import InputError
from frywright.model.kitchen import Kitchen
from frywright.rooms.hall import typed

ASKED = ("thermometer", "set_temp", "before_temp", "after_temp")
SET_C = (80.0, 230.0)
"""Set points of a fryer that is checked: below it melts fat or cooks nothing, above oil smokes and can ignite
(own estimate, wider than any program).
"""
FURTHEST_K = 60.0
"""No thermostat that still holds is further off (own estimate): the figure or its unit is another."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatCheck:
    """Mean oil temperatures over several cycles by the reference; ``after_c`` is None where nothing was
    adjusted.
    """

    thermometer: str
    set_c: float
    before_c: float
    after_c: float | None = None


def heat_check(kitchen: Kitchen, values: Mapping[str, Any], where: str) -> HeatCheck:
    """The figures of a calibration as typed. Raises InputError: one is missing or cannot be, or the oil is
    still off its set point.
    """
    thermometer, set_text, before, after = (typed(values, n) for n in ASKED)
    if len(thermometer) < 2:
        raise InputError(
            "thermometer", repr(thermometer), "the name or number of the reference thermometer", where=where
        )
    read = kitchen.site.read
    set_c = read(set_text, "temperature", "set point")
    if not SET_C[0] <= set_c <= SET_C[1]:
        raise InputError(
            "set point", set_c, "{low_c} to {high_c}", where=where, low_c=SET_C[0], high_c=SET_C[1], unit="c"
        )
    before_c = _near(read(before, "temperature", "read before"), set_c, "read before", where)
    after_c = _near(read(after, "temperature", "read after"), set_c, "read after", where) if after else None
    if abs((before_c if after_c is None else after_c) - set_c) > MEAN_K:
        raise InputError(
            "read before" if after_c is None else "read after",
            before_c if after_c is None else after_c,
            "within {near_k} of the set point: enter the offset by the maker's manual and read again."
            " If it stays off, stop the fryer and call a technician",
            where=where,
            near_k=MEAN_K,
            unit="c",
        )
    return HeatCheck(thermometer=thermometer[:60], set_c=set_c, before_c=before_c, after_c=after_c)


def _near(read_c: float, set_c: float, name: str, where: str) -> float:
    if abs(read_c - set_c) > FURTHEST_K:
        raise InputError(
            name,
            read_c,
            "within {far_k} of the set point: look at the thermometer, its unit and the set point",
            where=where,
            far_k=FURTHEST_K,
            unit="c",
        )
    return read_c
