"""Before a fryer stands at a site: its plate against what was measured there, and the energy of its day."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.care.commissioning import Plate, SiteFacts, go, survey
from frywright.care.energy import EnergyDay, energy_day
from frywright.model.findings import Outcome, say
from frywright.model.tongues import Translate

__all__ = ["EnergyDay", "Plate", "PointShown", "SiteFacts", "SiteShown", "energy_day", "site_shown"]


@dataclass(frozen=True, slots=True, kw_only=True)
class PointShown:
    """One point of a site in words."""

    point: str
    outcome: str  # meets, fails or unknown
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class SiteShown:
    """A site in words: *meets* is a go, *unknown* must be looked at before the fryer is sent."""

    outcome: str
    points: tuple[PointShown, ...]

    @property
    def ready(self) -> bool:
        """Whether it is a go."""
        return self.outcome == str(Outcome.MEETS)


def site_shown(plate: Plate, facts: SiteFacts, system: str, translate: Translate) -> SiteShown:
    """Every point of a site against the plate, in a kitchen's units and language. Raises InputError: a fuel
    that is neither electric nor gas, or a plate without its figures.
    """
    points = survey(plate, facts)
    return SiteShown(
        outcome=str(go(points)),
        points=tuple(
            PointShown(
                point=p.name, outcome=str(p.outcome), text=say(p.note.text, p.note.values, system, translate)
            )
            for p in points
        ),
    )
