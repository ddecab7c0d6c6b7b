"""What the cook engine is told, with every property explicit.

Anyone can drive the engine from here with constants and compare it with a closed form
(``docs/theory/engine.md`` shows how); :mod:`frywright.physics.fry` fills these from a
kitchen's fryer, load and program.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields
from enum import IntEnum
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from frywright.model.errors import InputError, Phrase
from frywright.physics import ranges

Curve = float | Sequence[float] | Sequence[tuple[float, float]]
"""A constant, polynomial coefficients (c0, c1, c2) in degC, or a table of (degC, value)."""

TABLE_FIT_SHARE = 0.01  # largest relative gap allowed between a table and its quadratic


class Lid(IntEnum):
    """State of the lid during a span."""

    OPEN = 0
    PRESSURE = 1
    VENT = 2
    REST = 3  # out of the oil, in air


class Until(IntEnum):
    """What ends a span, besides its longest duration."""

    TIME = 0
    OIL_ABOVE = 1
    CORE_ABOVE = 2
    GAUGE_ABOVE = 3
    GAUGE_BELOW = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceClass:
    """Pieces of one kind in the load, as the engine sees them (geometry may be effective)."""

    name: str
    mass_kg: float
    half_thickness_m: float
    shape_n: float
    start_temp_c: float
    density_kg_m3: float
    conductivity_w_mk: Curve
    heat_capacity_j_kgk: Curve
    water_kg_m3: float
    area_factor_n: float = 1.0
    film_kg_m2: float = 0.0
    crust_conductivity_w_mk: float = 0.15
    crust_heat_j_m3k: float = 1.0e6
    still_h_w_m2k: float = 260.0
    gain_h_j_kgk: float = 2.0e4
    cap_h_w_m2k: float = 900.0
    lag_h_s: float = 1.0
    vapour_cp_j_kgk: float = 2000.0
    bone_radius_m: float = 0.0
    bone_conductivity_w_mk: float = 0.4
    bone_heat_j_m3k: float = 2.4e6
    drip_frac: float = 0.0  # largest share of the water that protein lets go; 0: none
    drip_mid_c: float = 65.3
    drip_steep_per_k: float = 0.205
    drip_lag_s: float = 60.0
    coat_thickness_m: float = 0.0
    coat_conductivity_w_mk: float = 0.15  # dry
    coat_wet_conductivity_w_mk: float = 0.5
    coat_heat_j_m2k: float = 0.0  # of the coat's solids
    still_reference_k: float = 0.0  # 0: the still coefficient is constant
    vapour_diffusivity_m2_s: float = 0.0  # in crust and dry coat; 0: after the lift only boiling evaporates

    def __post_init__(self) -> None:
        ranges.check(self, ranges.PIECE, _PIECE_FIELDS, self.name)
        if not self.water_kg_m3 <= self.density_kg_m3:
            raise InputError("water_kg_m3", self.water_kg_m3, "no more than density_kg_m3", where=self.name)
        for name, bounds in (
            ("conductivity_w_mk", ranges.CONDUCTIVITY),
            ("heat_capacity_j_kgk", ranges.HEAT_CAPACITY),
        ):
            ranges.check_curve(name, polynomial(getattr(self, name), name), bounds, self.name)
        if not 0 <= self.bone_radius_m < 0.8 * self.half_thickness_m:
            raise InputError(
                "bone_radius_m", self.bone_radius_m, "0 to 0.8 of half_thickness_m", where=self.name
            )

    @property
    def area_m2(self) -> float:
        """Outer area of the whole class [m2]: area_factor_n (n+1) M / (rho a)."""
        volume = self.mass_kg / self.density_kg_m3
        return self.area_factor_n * (self.shape_n + 1) * volume / self.half_thickness_m


@dataclass(frozen=True, slots=True, kw_only=True)
class Vat:
    """Oil, heater, headspace and lid of one fryer."""

    oil_mass_kg: float
    oil_start_c: float
    heater_w: float
    oil_cp_j_kgk: tuple[float, float] = (1933.0, 2.55)
    metal_heat_j_k: float = 0.0
    swing_k: float = 4.0
    band_k: float = 0.0
    loss_w_k: float = 0.0
    room_temp_c: float = 25.0
    atmosphere_pa: float = 101325.0
    head_volume_m3: float = 0.02
    head_temp_c: float = 115.0
    relief_gauge_pa: float = 82737.0
    relief_slope_kg_spa: float = 2e-6
    leak_area_m2: float = 0.0
    vent_area_m2: float = 3e-5
    breather_area_m2: float = 1e-4
    lid_ua_w_k: float = 0.0
    lid_heat_j_k: float = 5000.0
    lid_room_ua_w_k: float = 2.0
    lid_start_c: float = 60.0
    air_h_w_m2k: float = 20.0
    air_temp_c: float = 25.0
    air_vapour_kg_m3: float = 0.010
    air_transfer_m_s: float = 0.018

    def __post_init__(self) -> None:
        ranges.check(self, ranges.VAT, _VAT_FIELDS, "vat")
        ranges.check_curve("oil_cp_j_kgk", self.oil_cp_j_kgk, ranges.OIL_CAPACITY, "vat")


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """A stretch of the march with one set point and one lid state.

    With ``ends_at_s`` it ends at that time since the drop, however long the spans before it took;
    it is left out where that time is over.
    """

    duration_s: float
    set_c: float
    lid: Lid = Lid.OPEN
    until: Until = Until.TIME
    value: float = 0.0
    ends_at_s: float | None = None

    def __post_init__(self) -> None:
        ranges.check(self, ranges.SPAN, _SPAN_FIELDS, "span")


@dataclass(frozen=True, slots=True, kw_only=True)
class Prescribed:
    """Curves that replace the kettle or the headspace: rows of (time s, value)."""

    oil_temp_c: Sequence[tuple[float, float]] | NDArray[np.float64] | None = None
    pressure_pa: Sequence[tuple[float, float]] | NDArray[np.float64] | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Cook:
    """One question to the engine: this vat, these piece classes, these spans."""

    vat: Vat
    pieces: Sequence[PieceClass]
    spans: Sequence[Span]
    prescribed: Prescribed = Prescribed()

    def __post_init__(self) -> None:
        if not self.pieces:
            raise InputError("pieces", "none", "at least one piece class")
        if not self.spans:
            raise InputError("spans", "none", "at least one span")


@dataclass(frozen=True, slots=True, kw_only=True)
class Precision:
    """Grid and step limits.

    ``ROUTINE`` is for everyday questions: heat within 0.3 % of the exact series, cells behind a front within
    0.2 K. ``CLOSE`` is for what people rely on: heat within 0.1 %, centre within 0.1 K in every geometry.
    ``FINE`` is for references. ``SCAN`` is for the cores of many loads at once, of which those that
    matter are solved again: crust may be 20 um off, water 3e-3.
    tests/physics/test_against_closed_forms.py and test_drawn.py hold them to it.
    """

    n_core: int = 26
    n_crust: int = 2
    grading: float = 1.2  # above 1: cells get finer towards the front
    max_step_s: float = 16.0
    max_boiling_step_k: float = 2.0
    passes: int = 1  # over the equations, at most, in a step
    steady_m: float = 2e-6  # passes end when the fronts move less
    first_step_s: float = 0.05  # after an upset (drop, lid)
    early_step_s: float = 1.0  # after an upset steps stay below this
    early_frac: float = 0.05  # plus this share of the time since
    dry_frac: float = 1e-3  # of its water that a coating may keep, or lose too much, where it counts as dry
    error_k: float = 0.3  # a core at the lift may be predicted that much too hot; taken off in verdicts

    def __post_init__(self) -> None:
        ranges.check(self, ranges.PRECISION, ranges.PRECISION, "precision")


def _numbers(kind: type, *others: str) -> tuple[str, ...]:
    """Fields of a class that hold one number each."""
    return tuple(f.name for f in fields(kind) if f.name not in others)


_PIECE_FIELDS = _numbers(PieceClass, "name", "conductivity_w_mk", "heat_capacity_j_kgk")
_VAT_FIELDS = _numbers(Vat, "oil_cp_j_kgk")
_SPAN_FIELDS = _numbers(Span, "lid", "until")

ROUTINE = Precision()
SCAN = Precision(
    n_core=15, max_boiling_step_k=3.0, first_step_s=0.3, early_step_s=1.5, early_frac=0.07, error_k=0.3
)
CLOSE = Precision(
    n_core=44,
    grading=1.3,
    n_crust=10,
    max_step_s=4.0,
    max_boiling_step_k=0.5,
    first_step_s=0.05,
    early_step_s=0.5,
    early_frac=0.03,
    error_k=0.15,
)
FINE = Precision(
    n_core=160,
    grading=1.3,
    n_crust=40,
    max_step_s=0.25,
    max_boiling_step_k=0.05,
    passes=12,
    steady_m=1e-11,
    first_step_s=0.01,
    early_step_s=0.1,
    early_frac=0.01,
    dry_frac=1e-4,
    error_k=0.02,
)


def polynomial(curve: Curve, name: str) -> tuple[float, float, float]:
    """:func:`quadratic`, kept for curves that cannot change."""
    try:
        return _kept_quadratic(curve, name)
    except TypeError:  # a list or an array can change
        return quadratic(curve, name)


def quadratic(curve: Curve, name: str) -> tuple[float, float, float]:
    """Coefficients c0 + c1 T + c2 T^2 of a property curve over temperature [degC]."""
    if isinstance(curve, int | float):
        return float(curve), 0.0, 0.0
    try:
        points = np.asarray(curve, dtype=float)
    except (TypeError, ValueError):
        raise InputError(
            name, curve, "a number, polynomial coefficients or a table of (degC, value)"
        ) from None
    if points.ndim == 1:
        if not 1 <= len(points) <= 3:
            raise InputError(name, curve, "1 to 3 polynomial coefficients")
        c = np.zeros(3)
        c[: len(points)] = points
        return float(c[0]), float(c[1]), float(c[2])
    if (
        points.ndim != 2
        or points.shape[1] != 2
        or not np.all(np.isfinite(points))
        or np.any(points[:, 1] <= 0)
    ):
        raise InputError(name, "table", "rows of (degC, value) with values above 0")
    degree = min(2, len(points) - 1)
    fit = np.polyfit(points[:, 0], points[:, 1], degree)[::-1]
    gap = np.max(np.abs(np.polyval(fit[::-1], points[:, 0]) / points[:, 1] - 1))
    if gap > TABLE_FIT_SHARE:
        raise InputError(
            name,
            Phrase("table with a {gap} gap to its quadratic", {"gap": f"{gap:.1%}"}),
            "within {most}",
            most=f"{TABLE_FIT_SHARE:.0%}",
        )
    c = np.zeros(3)
    c[: degree + 1] = fit
    return float(c[0]), float(c[1]), float(c[2])


_kept_quadratic = lru_cache(maxsize=256)(quadratic)
