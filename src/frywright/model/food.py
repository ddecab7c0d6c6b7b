"""Food: compositions, cuts, cut sets, coatings, products."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from frywright.model.errors import InputError, Phrase, check_text
from frywright.model.fryer import LONGEST_CALLED
from frywright.model.units import within

DRIPS = ("light", "dark", "formed", "none")
"""Whose water loss a cut follows (catalog/kinetics/drip.toml); none: not meat, or no figure found."""


class Food(StrEnum):
    """What a piece is, as cook rules speak of it; a mixed product is judged by the first of its foods that
    has a rule.
    """

    POULTRY = "poultry"
    FISH = "fish"
    OTHER = "other"
    PLANT = "plant"


@dataclass(frozen=True, slots=True, kw_only=True)
class Composition:
    """Mass fractions of raw food as printed by its source; they are normalised before use."""

    key: str
    title: str
    water_frac: float
    protein_frac: float
    fat_frac: float
    carbohydrate_frac: float = 0.0
    ash_frac: float = 0.0
    source: str = ""

    def __post_init__(self) -> None:
        total = self.water_frac + self.protein_frac + self.fat_frac + self.carbohydrate_frac + self.ash_frac
        if not 0.97 <= total <= 1.03:
            raise InputError(
                "composition",
                Phrase("a sum of {total}", {"total": f"{total:.3f}"}),
                "0.97 to 1.03",
                where=self.key,
            )

    @property
    def fractions(self) -> dict[str, float]:
        """Component fractions that sum to 1."""
        parts = {
            "water": self.water_frac,
            "protein": self.protein_frac,
            "fat": self.fat_frac,
            "carbohydrate": self.carbohydrate_frac,
            "ash": self.ash_frac,
        }
        total = sum(parts.values())
        return {name: share / total for name, share in parts.items()}


@dataclass(frozen=True, slots=True, kw_only=True)
class Cut:
    """One kind of piece and its effective geometry at a reference mass.

    ``sample_kg`` holds weighed pieces; with it a proof draws weights from them instead of from the heavy
    ratio. Size scales with mass to the power 1/3. Geometry is *effective*: it makes a one-dimensional piece
    heat like the real one and is the first thing to calibrate from probe logs.
    """

    key: str
    title: str
    composition: str
    reference_mass_kg: float
    half_thickness_m: float
    shape_n: float
    bone_radius_m: float = 0.0
    area_factor_n: float = 1.0
    heavy_ratio_n: float = 1.15
    evaporable_frac: float = 0.9
    bone_mass_frac: float = 0.0
    drip: str | None = None
    drip_frac: float | None = None  # largest share of its water let go, weighed; None takes the tissue's
    rendered_frac: float | None = None  # share of its fat that leaves it; None takes the tissue's
    sample_kg: tuple[float, ...] = ()
    food: Food = Food.POULTRY
    geometry_origin: str = "estimate"

    def __post_init__(self) -> None:
        if not self.reference_mass_kg > 0 or not self.half_thickness_m > 0:
            raise InputError(
                "reference_mass_kg and half_thickness_m", "not positive", "above 0", where=self.key
            )
        within(
            self,
            self.key,
            reference_mass_kg=(0.0, 10.0),
            half_thickness_m=(0.0, 0.2),
            shape_n=(0.0, 2.0),
            area_factor_n=(0.1, 10.0),
        )
        if not 1.0 <= self.heavy_ratio_n <= 3.0:
            raise InputError("heavy_ratio_n", self.heavy_ratio_n, "1 to 3", where=self.key)
        if not 0.0 <= self.bone_mass_frac < 0.7:
            raise InputError("bone_mass", self.bone_mass_frac, "0 to 0.7 of the piece", where=self.key)
        if self.drip not in (None, *DRIPS):
            raise InputError("drip", self.drip, "one of: {known}", where=self.key, known=", ".join(DRIPS))
        if self.drip_frac is not None and not 0.0 <= self.drip_frac <= 0.6:
            raise InputError("drip", self.drip_frac, "0 to 0.6 of the water", where=self.key)
        if self.sample_kg and (len(self.sample_kg) < 5 or min(self.sample_kg) <= 0):
            raise InputError(
                "sample",
                Phrase("{count} weights", {"count": len(self.sample_kg)}),
                "5 or more weights above 0",
                where=self.key,
            )

    @property
    def poultry(self) -> bool:
        """Whether it is poultry."""
        return self.food is Food.POULTRY

    @property
    def drip_kind(self) -> str:
        """Which meat's water loss it follows; poultry follows light meat unless it says otherwise."""
        return self.drip or ("light" if self.poultry else "none")


@dataclass(frozen=True, slots=True, kw_only=True)
class CutShare:
    """How many pieces of a cut a head (or a unit) has, and each one's share of its mass."""

    cut: str
    count: int
    mass_frac: float


MANY = 10
"""From so many on a load is said in whole heads too (own choice)."""


def counted(count: float, unit: str) -> str:
    """How many units of a load, in figures: pieces are whole, rounded down, and heads from ten on."""
    whole = unit == "piece" or count >= MANY
    return str(max(1, int(count + 1e-9))) if whole else f"{count:.4g}"


@dataclass(frozen=True, slots=True, kw_only=True)
class CutSet:
    """How a bird, or a pack, is divided into pieces. Shares of all pieces sum to 1."""

    key: str
    title: str
    parts: tuple[CutShare, ...]
    unit: str = "head"
    unit_mass_kg: float

    def __post_init__(self) -> None:
        total = sum(p.count * p.mass_frac for p in self.parts)
        if abs(total - 1.0) > 0.005:
            raise InputError(
                "parts",
                Phrase("shares that sum to {total}", {"total": f"{total:.3f}"}),
                "1 (count x mass_frac)",
                where=self.key,
            )


@dataclass(frozen=True, slots=True, kw_only=True)
class Coating:
    """Breading or batter: its water at the drop, its mass, the crust it makes and the oil its solids take up.

    ``pickup_frac`` is coating over raw weight of pieces with the mean outer area a kilogram
    (catalog/kinetics/coat.toml); a coat belongs to the area, so small pieces carry more of it.
    """

    key: str
    title: str
    film_kg_m2: float
    pickup_frac: float
    crust_conductivity_w_mk: float
    crust_heat_j_m3k: float
    oil_per_solids_n: float = 0.4
    contains: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        within(
            self,
            self.key,
            film_kg_m2=(0.0, 10.0),
            pickup_frac=(0.0, 0.9),
            crust_conductivity_w_mk=(0.01, 2.0),
            crust_heat_j_m3k=(1e4, 1e7),
            oil_per_solids_n=(0.0, 5.0),
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Product:
    """What a kitchen sells from a fryer: a cut set at a mass, coated, at a start temperature.

    ``house_core_c`` is the kitchen's own core for a food that no rule of its place speaks of.
    """

    key: str
    name: str
    cut_set: str
    coating: str
    start_temp_c: float
    unit_mass_kg: float | None = None
    frozen: bool = False
    house_core_c: float | None = None

    def __post_init__(self) -> None:
        check_text("name", self.name, LONGEST_CALLED, self.key)
        if self.frozen:
            raise InputError(
                "frozen", "true", "false: thaw fully first; ice in hot oil boils over", where=self.name
            )
        if not -1.0 <= self.start_temp_c <= 40.0:
            raise InputError(
                "start_temp",
                self.start_temp_c,
                "{low_c} to {high_c}",
                where=self.name,
                unit="c",
                low_c=-1.0,
                high_c=40.0,
            )
        if self.unit_mass_kg is not None and not 0.005 <= self.unit_mass_kg <= 5.0:
            raise InputError(
                "unit_mass",
                self.unit_mass_kg,
                "{low_kg} to {high_kg}",
                where=self.name,
                unit="kg",
                low_kg=0.005,
                high_kg=5.0,
            )
        if self.house_core_c is not None and not 40.0 <= self.house_core_c <= 100.0:
            raise InputError(
                "house_core",
                self.house_core_c,
                "{low_c} to {high_c}",
                where=self.name,
                unit="c",
                low_c=40.0,
                high_c=100.0,
            )
