"""No program is designed on a vent that nobody timed, or on one too long to stand through."""

from __future__ import annotations

from dataclasses import replace

from frywright.model.errors import InputError
from frywright.model.fryer import FryerKind
from frywright.model.kitchen import Kitchen
from frywright.model.units import clock
from frywright.physics.fry import simulate, vent_finding
from frywright.physics.plan import MOST_VENT_S, FryPlan, timed_load, vent_area_m2

TIME_IT = (
    "timed first: time the vent of a full load with a watch, from opening the valve until the gauge reads"
    ' zero; write vent = "0:25" with your own time under the fryer in the kitchen file; never open a lid'
    " before the gauge reads zero"
)
TOO_LONG = (
    "at most {most}: time the vent of a full load with a watch, from opening the valve until the gauge reads"
    ' zero; write vent = "0:25" with your own time under the fryer; if it is that slow, a passage may be'
    " clogged: clean it as the manual says; never open a lid before the gauge reads zero"
)


def require_vent(kitchen: Kitchen, fryer: str) -> None:
    """Raise InputError when a pressure fryer's vent was never told, or a full load vents for more than a
    minute.
    """
    found, site = kitchen.fryer(fryer), kitchen.site
    if found.kind is FryerKind.PRESSURE:
        known = replace(found, vent_area_m2=vent_area_m2(found, site))
        require_vent_of(replace(timed_load(known, site), vent_told=found.vent_told))


def require_vent_of(plan: FryPlan) -> None:
    """Raise InputError when the vent of this plan cannot be counted on."""
    if not plan.program.under_pressure:
        return
    finding = vent_finding(plan, simulate(plan).vent_s)
    if finding is None:
        return
    if finding.kind == "vent_unknown":
        raise InputError("vent", "not known", TIME_IT, where=plan.fryer.name)
    taken = float(finding.values["vent_s"])
    raise InputError("vent", clock(taken), TOO_LONG, where=plan.fryer.name, most=clock(MOST_VENT_S))
