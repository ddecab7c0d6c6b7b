"""What probe logs have shown about a cut, and the range in which that counts as evidence."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.model.errors import InputError

LEAST_PIECES = 3
"""Fewer probed pieces say nothing about how pieces differ. The project's own rule, no source."""
MASS_SHARE, OIL_K, START_K = 0.10, 8.0, 3.0
"""How far beyond what was logged a calibration still speaks. The project's own rule, no source: a tenth of
the mass is 3 % of the size, and the engine carries oil and start temperature over that far with small error.
"""


OTHER_PROGRAM_K = 2.0
"""Least error of a calibration under another program than the one logged, lid alike. Own computation:
geometry fitted to three-dimensional pieces on one program predicts four others within -1.7 to +0.3 K, up to
1.6 K too hot where meat conducts 30 % less once cooked. A calibration made open says nothing about pressure,
and the other way round (up to 3.7 K)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Calibration:
    """Geometry of a cut fitted to probe logs or readings at the lift, for one coating and state of the lid.

    ``error_k`` is what is taken off every simulated core before a verdict. Ranges are those of the
    logs; :meth:`outside` widens them by the project's rule.
    """

    cut: str
    coating: str
    lid: str  # open or pressure
    half_thickness_m: float
    shape_n: float
    reference_mass_kg: float
    pieces_count: int
    mass_low_kg: float
    mass_high_kg: float
    oil_low_c: float
    oil_high_c: float
    start_low_c: float
    start_high_c: float
    error_k: float
    area_factor_n: float | None = None
    drip_frac: float | None = None
    program: str = ""  # name and stages of the program that was logged
    made_on: str = ""
    log: str = ""
    road: str | None = None  # None: core curves; lift: readings at the lift

    def __post_init__(self) -> None:
        if self.lid not in ("open", "pressure"):
            raise InputError("lid", self.lid, "open or pressure", where=self.cut)
        if not 0.003 <= self.half_thickness_m <= 0.045 or not 0.0 <= self.shape_n <= 2.0:
            raise InputError(
                "half_thickness",
                self.half_thickness_m,
                "{low_m} to {high_m}, with a shape of 0 to 2",
                where=self.cut,
                unit="m",
                low_m=0.003,
                high_m=0.045,
            )
        if not 0.0 < self.mass_low_kg <= self.mass_high_kg or not self.reference_mass_kg > 0:
            raise InputError("mass_low and mass_high", "out of order", "above 0 and rising", where=self.cut)
        if not 0.0 <= self.error_k <= 10.0:
            raise InputError(
                "error", self.error_k, "{low_k} to {high_k}", where=self.cut, unit="k", low_k=0.0, high_k=10.0
            )
        if self.pieces_count < 1:
            raise InputError("pieces_count", self.pieces_count, "1 or more", where=self.cut)

    def error_for_k(self, program: str) -> float:
        """What is taken off a core under a program: at least OTHER_PROGRAM_K under any but the one logged."""
        return self.error_k if program and program == self.program else max(self.error_k, OTHER_PROGRAM_K)

    def outside(self, piece_mass_kg: float, oil_c: tuple[float, float], start_c: float) -> tuple[str, ...]:
        """Why a question lies outside what was logged; empty inside. Words are translated on display."""
        reasons = [] if self.road is None else ["its pieces were read at the lift only, without a curve"]
        if self.pieces_count < LEAST_PIECES:
            reasons.append("fewer than three pieces were probed")
        if piece_mass_kg > self.mass_high_kg * (1.0 + MASS_SHARE):
            reasons.append("the piece is heavier than any probed")
        if piece_mass_kg < self.mass_low_kg * (1.0 - MASS_SHARE):
            reasons.append("the piece is lighter than any probed")
        if oil_c[0] < self.oil_low_c - OIL_K or oil_c[1] > self.oil_high_c + OIL_K:
            reasons.append("the oil is outside what was logged")
        if not self.start_low_c - START_K <= start_c <= self.start_high_c + START_K:
            reasons.append("the start temperature is outside what was logged")
        return tuple(reasons)
