"""Words of fryer care: who does what, tasks with their intervals, and a store's own facts for an
emergency.
"""

from __future__ import annotations

from dataclasses import dataclass

from frywright.model.errors import InputError, one_of
from frywright.model.roles import SIGNERS
from frywright.model.units import within

ASKS = ("calibration",)
APPLIES = ("open", "pressure", "electric", "gas")


@dataclass(frozen=True, slots=True, kw_only=True)
class Task:
    """One care task. An interval of 0 does not count; of the others the earliest decides.

    ``who`` is the least role that may do it; ``applies`` narrows it to a kind of fryer or fuel, ``fryer`` to
    one fryer. ``asks`` names the figures without which it is not done: those of a calibration, or none.
    """

    key: str
    title: str
    who: str
    applies: str = ""
    fryer: str = ""
    parts: str = ""
    loads_count: int = 0
    heat_s: float = 0.0
    turns_count: int = 0
    days_count: int = 0
    takes_s: float = 0.0
    asks: str = ""
    in_languages: tuple[tuple[str, str], ...] = ()

    def said(self, field: str, language: str) -> str:
        """A text in a language where the kitchen's file gives it, such as ``title_es``; else its own."""
        return dict(self.in_languages).get(f"{field}_{language}") or str(getattr(self, field))

    def __post_init__(self) -> None:
        one_of(SIGNERS, self.who, "who", self.key)
        if self.applies:
            one_of(APPLIES, self.applies, "applies", self.key)
        if self.asks:
            one_of(ASKS, self.asks, "asks", self.key)
        within(
            self,
            self.key,
            loads_count=(0, 1_000_000),
            heat_s=(0.0, 1e9),
            turns_count=(0, 1_000_000),
            days_count=(0, 36_500),
            takes_s=(0.0, 7 * 86400.0),
        )
        if not any((self.loads_count, self.heat_s, self.turns_count, self.days_count)):
            raise InputError("interval", "none", "loads, hours at heat, filter turns or days", where=self.key)


@dataclass(frozen=True, slots=True, kw_only=True)
class Emergency:
    """What a store's emergency card says of this place; what is empty is left as a line to write on."""

    address: str = ""
    call: str = ""
    pull_station: str = ""
    extinguisher: str = ""
    fuel_stop: str = ""
    meeting_point: str = ""
    first_aid: str = ""
    eyewash: str = ""
    fire_contractor: str = ""
    service: str = ""
