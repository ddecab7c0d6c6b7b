"""What stands behind a curve. Only evidence can make a verdict say *meets*."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

NO_RULE = "a rule for this food, or a house target"
SCOUTING_MISSING = ("probe log of the coldest piece, or a calibrated piece",)


class EvidenceKind(StrEnum):
    """Where a curve comes from."""

    SCOUTING = "scouting"  # simulation with estimated geometry
    CALIBRATED = "calibrated"  # simulation inside a calibrated range
    PROBE = "probe"  # readings of a checked thermometer


@dataclass(frozen=True, slots=True, kw_only=True)
class Evidence:
    """Kind of curve, and the error its thermometer (or calibration) may have."""

    kind: EvidenceKind
    error_k: float = 0.0
    checked: bool = True

    def missing(self) -> tuple[str, ...]:
        """What this evidence lacks before it can support *meets*."""
        if self.kind is EvidenceKind.SCOUTING:
            return SCOUTING_MISSING
        if not self.checked:
            return ("thermometer check",)
        return ()
