"""A kitchen: where it is, what it owns, what it cooks and how."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field, fields
from enum import StrEnum
from typing import cast

from frywright.model.calibration import Calibration
from frywright.model.care import Emergency, Task
from frywright.model.errors import InputError, Phrase, one_of, spoken
from frywright.model.food import Coating, Cut, CutSet, Food, Product
from frywright.model.fryer import Fryer, FryerKind
from frywright.model.program import Program, check_altitude
from frywright.model.tongues import tongues
from frywright.model.trade import MenuItem, Sell, Trade
from frywright.model.units import BARE, parse, read_number, within

UNIT_APART = re.compile(r"(?<=[0-9])\s+(?=[°ºCcFf])")
"""Space between a number of a list and its degree sign or unit."""


class UnitSystem(StrEnum):
    """Units people see."""

    US = "us"
    METRIC = "metric"


SAME_PLACE_M, SAME_BIRD_FRAC = 15.0, 0.01
"""Places and birds that count as one: 15 m move the boiling point by 0.05 K, a hundredth of a bird its time
by a hundredth (own estimates).
"""
SEA_LEVEL_PA, LAPSE_K_M, SEA_LEVEL_K, EXPONENT_N = 101325.0, 0.0065, 288.15, 5.255786
"""International standard atmosphere (ISO 2533), troposphere."""


def pressure_at_pa(altitude_m: float) -> float:
    """Air pressure [Pa] at an altitude [m], -500 to 5000 m, by the standard atmosphere."""
    return float(SEA_LEVEL_PA * (1.0 - LAPSE_K_M * altitude_m / SEA_LEVEL_K) ** EXPONENT_N)


LONGEST_KEY = 24


def key_of(name: str) -> str:
    """A name as a short key of the file: small plain letters, digits and single underlines; empty where it
    has none.
    """
    plain = "".join(c if c.isascii() and c.isalnum() else "_" for c in name.lower())
    return "_".join(part for part in plain.split("_") if part)[:LONGEST_KEY].strip("_")


def altitude_at_m(pressure_pa: float) -> float:
    """Altitude [m] at which the standard atmosphere (ISO 2533) has an air pressure [Pa]."""
    return float(SEA_LEVEL_K / LAPSE_K_M * (1.0 - (pressure_pa / SEA_LEVEL_PA) ** (1.0 / EXPONENT_N)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """Place and habits of a kitchen."""

    name: str
    altitude_m: float = 0.0
    jurisdiction: str = "us_food_code_2022"
    language: str = "en"
    units: UnitSystem = UnitSystem.US
    room_temp_c: float = 25.0
    thermometer_error_k: float = 1.0
    invented: bool = False

    def __post_init__(self) -> None:
        check_altitude(self.altitude_m, self.name)
        within(self, self.name, room_temp_c=(-10.0, 60.0))
        if self.language not in tongues():
            raise InputError(
                "language", self.language, "one of: {known}", where=self.name, known=", ".join(tongues())
            )
        if not 0.0 <= self.thermometer_error_k <= 5.0:
            raise InputError(
                "thermometer_error",
                self.thermometer_error_k,
                "{low_k} to {high_k}",
                where=self.name,
                unit="k",
                low_k=0.0,
                high_k=5.0,
            )

    @property
    def decimal_mark(self) -> str:
        """How numbers are written here: a comma in a metric kitchen that speaks Spanish, else a point."""
        return tongues()[self.language].decimal if self.units is UnitSystem.METRIC else "."

    def read(self, text: str, dimension: str, name: str = "value", bare: str = "") -> float:
        """Inside value of what a person here typed; a bare number takes the kitchen's unit, or ``bare``.
        Raises InputError: as :func:`frywright.model.units.parse`.
        """
        unit = bare or BARE[str(self.units)].get(dimension, "")
        return parse(text, dimension, name, bare=unit, decimal=self.decimal_mark)

    def read_list(self, text: str, dimension: str, name: str = "values") -> list[float]:
        """Inside values of a list typed with spaces, lines or semicolons; with commas too where a comma is no
        decimal mark. Raises InputError: as :meth:`read`; or a comma with one digit behind it, which may be a
        list or a decimal.
        """
        found = []
        for word in UNIT_APART.sub("", text.replace(";", " ")).split():
            parts = [word.strip(",")] if self.decimal_mark == "," else word.strip(",").split(",")
            if len(parts) == 2 and re.fullmatch(r"[0-9]", parts[1]):
                values = {"one": ".".join(parts), "other": " ".join(parts)}
                raise InputError(name, repr(word), "clear: type {one} or type {other}", **values)
            found += [self.read(part, dimension, name) for part in parts if part]
        return found

    def number(self, text: str, name: str = "value") -> float:
        """A number without a unit, as a person here types it."""
        return read_number(text, name, decimal=self.decimal_mark)

    @property
    def atmosphere_pa(self) -> float:
        """Air pressure at the kitchen [Pa]."""
        return pressure_at_pa(self.altitude_m)


@dataclass(frozen=True, slots=True, kw_only=True)
class ProveAgain:
    """A change of the kitchen moved what is predicted of a program: why, and its margin before and after
    (None where no limit speaks).
    """

    name: str
    version: int
    reason: str
    margin_before_k: float | None
    margin_after_k: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class FailedProof:
    """The newest proof of this version of a program failed: its lowest margin, below 0."""

    name: str
    version: int
    margin_k: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbedProgram:
    """Readings decided these stages of a version of a program: the outcome (``meets``, ``fails``, ``not
    shown``), by how much its slowest pieces are over the limit, and how many were read.
    """

    name: str
    version: int
    stages: str
    outcome: str
    low_k: float
    readings_count: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Kitchen:
    """Everything a kitchen file holds. Cuts, cut sets and coatings include the catalog's. As the ledger knows
    it, ``programs`` are the newest versions, and ``earlier`` holds those before them by name: they change
    nothing that is predicted, so nothing here grows with them.
    """

    site: Site
    fryers: tuple[Fryer, ...]
    products: tuple[Product, ...]
    programs: tuple[Program, ...]
    cuts: tuple[Cut, ...] = ()
    cut_sets: tuple[CutSet, ...] = ()
    coatings: tuple[Coating, ...] = ()
    calibrations: tuple[Calibration, ...] = ()
    menu: tuple[MenuItem, ...] = ()
    sells: tuple[Sell, ...] = ()
    trade: Trade | None = None
    care: tuple[Task, ...] = ()
    emergency: Emergency = field(default_factory=Emergency)
    marks: tuple[ProveAgain, ...] = ()
    failed: tuple[FailedProof, ...] = ()
    retired: tuple[tuple[str, int], ...] = ()
    probed: tuple[ProbedProgram, ...] = ()
    earlier: Mapping[str, tuple[Program, ...]] = field(default_factory=dict, compare=False, repr=False)
    _hash: int | None = field(default=None, init=False, compare=False, repr=False)

    def __hash__(self) -> int:
        """Worked out once: answers are kept by their kitchen, and it is asked thousands of times a page."""
        if self._hash is None:
            compared = (getattr(self, f.name) for f in fields(self) if f.compare)
            object.__setattr__(self, "_hash", hash(tuple(compared)))
        return cast(int, self._hash)

    def __post_init__(self) -> None:
        for kind in ("fryers", "products", "cuts", "cut_sets", "coatings"):
            keys = [item.key for item in getattr(self, kind)]
            double = next((k for k in keys if keys.count(k) > 1), None)
            if double:
                raise InputError(
                    "key", double, "used once among {kind}", where=self.site.name, kind=spoken(kind)
                )
        for program in self.programs:
            self.check(program)
        self._check_menu()

    def _check_menu(self) -> None:
        names = [name for item in self.menu for name in item.names]
        double = next((n for n in names if names.count(n) > 1), None)
        if double:
            raise InputError("item", repr(double), "named once on the menu", where=self.site.name)
        for item in self.menu:
            for part in item.parts:
                cuts = [p.cut for p in self.cut_set(self.product(part.product).cut_set).parts]
                if part.cut:
                    one_of(cuts, part.cut, "cut", item.item)
        for sell in self.sells:
            self.product(sell.product)

    def check(self, program: Program) -> None:
        """Raise InputError when a program names what the kitchen lacks or its fryer can't do."""
        fryer = self.fryer(program.fryer)
        self.product(program.product)
        if program.under_pressure and fryer.kind is FryerKind.OPEN:
            raise InputError(
                "lid", "pressure", "open: {fryer} is an open fryer", where=program.name, fryer=fryer.name
            )
        if len(program.stages) > fryer.controller.stage_count:
            raise InputError(
                "stage",
                Phrase("{count} stages", {"count": len(program.stages)}),
                "at most {most}, which is what {fryer} can hold",
                where=program.name,
                most=fryer.controller.stage_count,
                fryer=fryer.name,
            )

    def _one(self, kind: str, key: str):  # type: ignore[no-untyped-def]
        items = getattr(self, kind)
        found = next((item for item in items if item.key == key), None)
        if found is None:
            one_of([item.key for item in items], key, kind.removesuffix("s"), self.site.name)
        return found

    def fryer(self, key: str) -> Fryer:
        """The fryer called ``key``; InputError names the known ones."""
        return self._one("fryers", key)  # type: ignore[no-any-return]

    def product(self, key: str) -> Product:
        """The product called ``key``."""
        return self._one("products", key)  # type: ignore[no-any-return]

    def cut(self, key: str) -> Cut:
        """The cut called ``key``."""
        return self._one("cuts", key)  # type: ignore[no-any-return]

    def cut_set(self, key: str) -> CutSet:
        """The cut set called ``key``."""
        return self._one("cut_sets", key)  # type: ignore[no-any-return]

    def coating(self, key: str) -> Coating:
        """The coating called ``key``."""
        return self._one("coatings", key)  # type: ignore[no-any-return]

    def allergens(self, product: str) -> set[str]:
        """What a product leaves in its oil: the allergens of its coating, and fish of fish itself (one of the
        major food allergens of 21 U.S.C. 321(qq), from memory).
        """
        goods = self.product(product)
        fish = any(self.cut(part.cut).food is Food.FISH for part in self.cut_set(goods.cut_set).parts)
        return {*self.coating(goods.coating).contains, *(("fish",) if fish else ())}

    def calibration(self, cut: str, coating: str, lid: str) -> Calibration | None:
        """The newest calibration of a cut with a coating under a state of the lid, or None."""
        found = [c for c in self.calibrations if (c.cut, c.coating, c.lid) == (cut, coating, lid)]
        return found[-1] if found else None

    def belongs(self, program: Program) -> bool:
        """Whether a program is for this kitchen: its own altitude, and the bird it buys."""
        near = program.altitude_m is None or abs(program.altitude_m - self.site.altitude_m) < SAME_PLACE_M
        own_kg = self.unit_kg(program.product)
        return near and (
            program.unit_mass_kg is None or abs(program.unit_mass_kg - own_kg) < SAME_BIRD_FRAC * own_kg
        )

    @property
    def own_programs(self) -> tuple[Program, ...]:
        """The programs for this kitchen; those carried to another place or bird, and all versions of one
        whose newest is retired, are left out.
        """
        gone = {name for name, version in self.retired if self.program(name).version == version}
        return tuple(p for p in self.programs if self.belongs(p) and p.name not in gone)

    def mark(self, program: Program) -> ProveAgain | None:
        """What asks for a new proof of this version of a program, or None."""
        return next((m for m in self.marks if (m.name, m.version) == (program.name, program.version)), None)

    def failed_proof(self, program: Program) -> FailedProof | None:
        """The failed proof of this version of a program, or None."""
        return next((f for f in self.failed if (f.name, f.version) == (program.name, program.version)), None)

    def probed_as(self, program: Program, stages: str) -> ProbedProgram | None:
        """What readings have decided of these stages of a version of a program, or None."""
        key = program.name, program.version, stages
        return next((p for p in self.probed if (p.name, p.version, p.stages) == key), None)

    def unit_kg(self, product: str) -> float:
        """Mass of one head (or piece) of a product as this kitchen buys it."""
        goods = self.product(product)
        return goods.unit_mass_kg or self.cut_set(goods.cut_set).unit_mass_kg

    def pieces_per_unit(self, product: str) -> int:
        """Pieces a head (or pack) of a product gives."""
        return sum(part.count for part in self.cut_set(self.product(product).cut_set).parts)

    def program(self, name: str) -> Program:
        """The newest version of the program called ``name``."""
        found = [p for p in self.programs if p.name == name]
        if not found:
            known = ", ".join(sorted({p.name for p in self.programs})) or "none"
            raise InputError("program", repr(name), "one of: {known}", where=self.site.name, known=known)
        return max(found, key=lambda p: p.version)

    def versions(self, name: str) -> tuple[Program, ...]:
        """Every version of the program called ``name``, oldest first; empty where there is none."""
        found = (*self.earlier.get(name, ()), *(p for p in self.programs if p.name == name))
        return tuple(sorted(found, key=lambda p: p.version))
