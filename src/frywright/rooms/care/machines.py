"""Fryers as machines: stop-use and who may reopen, procedure cards, the dose of a boil-out."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.catalog import load as catalog
from frywright.ledger.facts.care import Reopened, StopUse
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen
from frywright.model.roles import QUALIFIED
from frywright.model.units import GALLON, LB
from frywright.rooms.hall import in_turn, write
from frywright.rooms.standing import stopped


@dataclass(frozen=True, slots=True, kw_only=True)
class Hazard:
    """A condition under which a fryer is not used: why, and what to do first. ``fuel`` limits it to fryers of
    that fuel; with ``everyone_out`` nobody stays in the kitchen.
    """

    key: str
    why: str
    act: str
    fuel: str = ""
    everyone_out: bool = False


OZ_KG = LB / 16
OZ_GAL_G_L = OZ_KG * 1000.0 / (GALLON * 1000.0)
"""Grams a litre in an ounce a gallon."""
ANY_HAZARD = "Turn it off at the breaker or gas stop, tag it, and call a qualified person."
"""What to do where somebody wrote a reason of their own."""


def hazards(fryer: Fryer | None = None) -> dict[str, Hazard]:
    """Conditions of stop-use by their keys, those that this fryer can have where one is named."""
    known = (Hazard(**row) for row in catalog.table("care/stop_use.toml")["hazard"])
    return {h.key: h for h in known if fryer is None or h.fuel in ("", fryer.fuel)}


def first_act(reason: str) -> str:
    """What to do first at a hazard."""
    found = hazards().get(reason)
    return found.act if found else ANY_HAZARD


def stop_use(
    store: Store, kitchen: Kitchen, fryer: str, reason: str, who: str, words: str = ""
) -> Kept[StopUse]:
    """Take a fryer out of use. Anyone may; nobody is asked twice.

    Raises
    ------
    InputError
        An unknown fryer or reason.
    """
    kitchen.fryer(fryer)
    known = hazards()
    if reason not in known and not words.strip():
        raise InputError("reason", repr(reason), "one of: {known}", values={"known": ", ".join(known)})
    return write(store, StopUse(fryer=fryer, reason=reason, words=words[:300], who=who[:80]))


@in_turn
def reopen(store: Store, kitchen: Kitchen, fryer: str, who: str, role: str, finding: str) -> Kept[Reopened]:
    """Release a fryer: only a named qualified person who says what was found and done.

    Raises
    ------
    InputError
        The fryer is in use, or name, qualification or finding are missing.
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


def boil_out_dose(water_m3: float, label_oz_gal: float) -> float:
    """Cleaner for a boil-out [kg]: water times the rate on the label.

    Raises
    ------
    InputError
        No water, or a rate no label prints.
    """
    if not 0.001 <= water_m3 <= 0.5 or not 0.1 <= label_oz_gal <= 16.0:
        raise InputError(
            "boil-out",
            f"{water_m3 * 1000:.1f} L, {label_oz_gal:g} oz/gal",
            "1 to 500 L of water and the rate from the cleaner's label, 0.1 to 16 oz/gal",
        )
    return water_m3 / GALLON * label_oz_gal * OZ_KG
