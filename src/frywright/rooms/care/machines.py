"""Fryers as machines: stop-use and who may reopen, procedure cards, the dose of a boil-out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from frywright.catalog import load as catalog
from frywright.ledger.facts.care import Reopened, StopUse
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError, Phrase, one_of
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.roles import QUALIFIED
from frywright.rooms.hall import in_turn, write
from frywright.rooms.standing import stopped


@dataclass(frozen=True, slots=True, kw_only=True)
class Hazard:
    """A condition under which a fryer is not used: why, and what to do first. ``fuel`` and ``kind`` limit it
    to fryers of that fuel or kind; with ``everyone_out`` nobody stays in the kitchen.
    """

    key: str
    why: str
    act: str
    fuel: str = ""
    kind: str = ""
    everyone_out: bool = False


DOSE: Mapping[str, Any] = {"least_m3": 0.001, "most_m3": 0.5, "low_kg_m3": 0.7, "high_kg_m3": 120.0}
"""Water in a vat, and rates that labels print: 0.1 to 16 oz a gallon (own choice)."""
ANY_HAZARD = "Turn it off at the breaker or gas stop, tag it, and call a qualified person."
"""What to do where somebody wrote a reason of their own."""


def hazards(fryer: Fryer | None = None) -> dict[str, Hazard]:
    """Conditions of stop-use by their keys, those that this fryer can have where one is named."""
    known = (Hazard(**row) for row in catalog.table("care/stop_use.toml")["hazard"])
    return {
        h.key: h
        for h in known
        if fryer is None or (h.fuel in ("", fryer.fuel) and h.kind in ("", str(fryer.kind)))
    }


def first_act(reason: str) -> str:
    """What to do first at a hazard."""
    found = hazards().get(reason)
    return found.act if found else ANY_HAZARD


def stop_use(
    store: Store, kitchen: Kitchen, fryer: str, reason: str, who: str, words: str = ""
) -> Kept[StopUse]:
    """Take a fryer out of use. Anyone may; nobody is asked twice. Raises InputError: an unknown fryer or
    reason.
    """
    kitchen.fryer(fryer)
    if not words.strip():
        one_of(hazards(), reason, "reason")
    return write(store, StopUse(fryer=fryer, reason=reason, words=words[:300], who=who[:80]))


@in_turn
def reopen(store: Store, kitchen: Kitchen, fryer: str, who: str, role: str, finding: str) -> Kept[Reopened]:
    """Release a fryer: only a named qualified person who says what was found and done. Raises InputError: the
    fryer is in use, or name, qualification or finding are missing.
    """
    kitchen.fryer(fryer)
    held = stopped(store).get(fryer)
    if held is None:
        raise InputError("fryer", repr(fryer), "one that is out of use")
    if role not in QUALIFIED:
        raise InputError("role", repr(role), "technician or licensed: nobody else may release it")
    if len(who.strip()) < 3 or len(finding.strip()) < 10:
        raise InputError(
            "release",
            "without a name or a finding",
            "given with the person's name and what was found and done",
        )
    release = Reopened(
        fryer=fryer, who=who[:80], role=role, finding=finding[:600], releases_number=held.number
    )
    return write(store, release)


def boil_out_dose(water_m3: float, rate_kg_m3: float) -> float:
    """Cleaner for a boil-out [kg]: water times the rate on the label. Raises InputError: no water, or a rate
    no label prints.
    """
    water_fits = DOSE["least_m3"] <= water_m3 <= DOSE["most_m3"]
    if not water_fits or not DOSE["low_kg_m3"] <= rate_kg_m3 <= DOSE["high_kg_m3"]:
        raise InputError(
            "boil-out",
            Phrase("{water_m3} at {rate_kg_m3}", {"water_m3": water_m3, "rate_kg_m3": rate_kg_m3}),
            "{least_m3} to {most_m3} of water and the rate from the cleaner's label, {low_kg_m3} to"
            " {high_kg_m3}",
            **DOSE,
        )
    return water_m3 * rate_kg_m3
