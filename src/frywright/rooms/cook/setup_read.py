"""Reads the answers of the set-up: each screen's boxes as typed, into the names and units of the model."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from functools import partial
from math import exp, log, sqrt
from typing import Any

from frywright.catalog import load
from frywright.design.proof import HEAVY_QUANTILE_Z
from frywright.model.errors import Amount, InputError, Phrase, one_of
from frywright.model.food import CutSet
from frywright.model.fryer import SHORTEST_VENT_S, ClockStyle, FryerKind, TempUnit
from frywright.model.kitchen import Site, UnitSystem, altitude_at_m
from frywright.model.program import HIGHEST_M, LOWEST_M
from frywright.model.tongues import tongues
from frywright.model.units import PSI
from frywright.physics.steam import saturation_pa
from frywright.rooms.premises import STATED, stated
from frywright.verdicts.place import place_named

LONGEST_NAME = 60
BOIL_LOW_C, BOIL_HIGH_C = 83.0, 101.7
"""Water boils here from 5000 m down to 500 m below the sea (IAPWS-IF97 over ISO 2533)."""
BOIL_METHOD_K = 1.0
"""What a reading in boiling water is good to: 1 to 2 degF (common practice, no source)."""
SPREAD_80 = 1.2934
"""Upper limit, at 80 % confidence, of a spread from ten weights, as a multiple of the spread found: the root
of 9 over 5.380, the fifth part of the chi-square distribution with 9 degrees of freedom (any table of it).
"""
WEIGHTS_COUNT = 10
FUELS, LIDS, STEPS_AT_MOST = ("electric", "gas"), ("hand", "tied"), 20
USUAL_OIL_KG = 20.0
PLATE_POWER = {("electric", "us"): "kw", ("electric", "metric"): "kw", ("gas", "us"): "btu_h"}
NAMES = {
    "boiled": "boiling water",
    "seen": "the tick",
    "birds": "birds at once",
    "weight": "weight at once",
    "ten": "ten weights",
    "mean": "weight of one",
    "stages": "number of stages",
    "slots": "number of programs",
    "vent": "vent time",
    "temp_step": "step of a set point",
    "time_step": "step of a time",
    "jurisdiction": "place",
    "working_gauge": "working pressure",
    "relief_gauge": "relief pressure on the plate",
    "start_temp": "temperature at the drop",
    "house_core": "core asked for",
    "cut_set": "food",
    "shows": "degrees",
    "oil_mass": "oil",
    "zone": "time zone",
    "first_drop": "first drop",
    "hands": "people on the line",
    "filter_every": "loads between filter turns",
}
"""What a box is called where something is wrong with it."""
BARE_SMALL = {"us": ("in", "oz"), "metric": ("cm", "g")}


def usual(key: str) -> Mapping[str, Any]:
    """What is usual of a value nobody can read off a fryer, and what is taken until it is measured."""
    return next(row for row in load.table("setup/usual.toml")["value"] if row["key"] == key)


def called(box: str) -> str:
    """What a box is called in an error."""
    return NAMES.get(box, box)


@dataclass(slots=True)
class Asked:
    """What was typed on one screen, and what is wrong with it, box by box."""

    site: Site
    typed: Mapping[str, str]
    wrong: dict[str, InputError] = field(default_factory=dict)

    def text(self, box: str) -> str:
        """What stands in a box."""
        return " ".join(self.typed.get(box, "").split())

    def read(self, box: str, reads: Callable[[str], Any], needed: bool = True) -> Any:
        """The value of a box, None where it is empty or wrong."""
        text = self.text(box)
        try:
            if not text and not needed:
                return None
            return reads(text)
        except InputError as error:
            self.wrong[box] = error
            return None

    def amount(
        self,
        box: str,
        dimension: str,
        bounds: tuple[float, float, str],
        *,
        bare: str = "",
        needed: bool = True,
    ) -> float | None:
        """A number with its unit, within bounds in SI."""
        low, high, unit = bounds

        def reads(text: str) -> float:
            value = self.site.read(text, dimension, called(box), bare)
            if not low <= value <= high:
                ends = Amount(low, unit), Amount(high, unit)
                raise InputError(called(box), value, "{low} to {high}", unit=unit, low=ends[0], high=ends[1])
            return value

        found: float | None = self.read(box, reads, needed)
        return found

    def count(self, box: str, low: int, high: int, needed: bool = True) -> int | None:
        """A whole number."""

        def reads(text: str) -> int:
            value = self.site.number(text, called(box))
            if value != int(value) or not low <= value <= high:
                raise InputError(
                    called(box), repr(text), "a whole number, {low} to {high}", low=low, high=high
                )
            return int(value)

        found: int | None = self.read(box, reads, needed)
        return found

    def choice(self, box: str, known: tuple[str, ...]) -> str:
        """One of the answers offered; empty where it is none of them."""
        return str(self.read(box, lambda text: one_of(known, text, called(box))) or "")

    def name(self, box: str) -> str:
        """A name that people read."""

        def reads(text: str) -> str:
            if not any(c.isalnum() for c in text) or len(text) > LONGEST_NAME:
                raise InputError(
                    called(box), repr(text[:20]), "a few words, up to {most} letters", most=LONGEST_NAME
                )
            return "".join(c for c in text if c.isprintable())

        return str(self.read(box, reads) or "")

    def refuse(self, box: str, error: InputError) -> None:
        """Mark a box that was read well and does not go with another."""
        self.wrong.setdefault(box, error)


@dataclass(frozen=True, slots=True, kw_only=True)
class ScreenRead:
    """What a screen's answers come to, in the names and units of the model; None or empty where an answer is
    wrong or left out.
    """


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceRead(ScreenRead):
    """Name, place, language and units of a kitchen."""

    name: str
    jurisdiction: str
    language: str
    units: str


@dataclass(frozen=True, slots=True, kw_only=True)
class AltitudeRead(ScreenRead):
    """How high the kitchen stands."""

    altitude_m: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class KindRead(ScreenRead):
    """Open, or closed under pressure."""

    kind: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PlateRead(ScreenRead):
    """What the plate of a fryer says; the heater's power is what reaches the oil."""

    name: str
    fuel: str
    heater_w: float | None
    oil_mass_kg: float | None
    oil: str
    capacity_heads: int | None
    capacity_kg: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class LidRead(ScreenRead):
    """Pressures, vent and room under the lid."""

    working_gauge_pa: float | None
    relief_gauge_pa: float
    vent_s: float
    head_volume_m3: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ControlRead(ScreenRead):
    """What a control can hold, and the swing of the oil under it (None is not known)."""

    shows: str
    stage_count: int | None
    temp_step_k: float | None
    time_step_s: float | None
    clock: str
    lid_control: bool
    slot_count: int | None
    swing_k: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class FoodRead(ScreenRead):
    """What is fried."""

    cut_set: str


@dataclass(frozen=True, slots=True, kw_only=True)
class BirdsRead(ScreenRead):
    """How a product is weighed, coated and kept before the drop."""

    name: str
    coating: str
    unit_mass_kg: float | None
    heavy_ratio_n: float | None
    start_temp_c: float | None
    house_core_c: float | None


def read_place(asked: Asked) -> PlaceRead:
    """Name, place, language and units of a kitchen."""
    known = tuple(j["key"] for j in load.table("standards/jurisdictions.toml")["jurisdiction"])
    for box in STATED:
        asked.read(box, partial(stated, box), needed=False)
    return PlaceRead(
        name=asked.name("name"),
        jurisdiction=asked.choice("jurisdiction", known),
        language=asked.choice("language", tuple(tongues())),
        units=asked.choice("units", tuple(str(u) for u in UnitSystem)),
    )


def read_altitude(asked: Asked) -> AltitudeRead:
    """Altitude as a number, or from a thermometer in boiling water."""
    altitude = asked.amount("altitude", "length", (LOWEST_M, HIGHEST_M, "m"), needed=False)
    boiled = asked.amount("boiled", "temperature", (BOIL_LOW_C, BOIL_HIGH_C, "c"), needed=False)
    if asked.text("altitude") and asked.text("boiled"):
        asked.refuse(
            "boiled",
            InputError(called("boiled"), repr(asked.text("boiled")), "empty where an altitude is given"),
        )
    elif not asked.text("altitude") and not asked.text("boiled"):
        asked.refuse(
            "altitude", InputError(called("altitude"), "empty", "given, or worked out from boiling water")
        )
    return AltitudeRead(altitude_m=altitude if boiled is None else altitude_of_boiling_m(boiled))


def altitude_of_boiling_m(boiled_c: float) -> float:
    """Altitude [m] where water boils at a temperature: steam of IAPWS-IF97, air of ISO 2533, to 10 m."""
    return round(altitude_at_m(saturation_pa(boiled_c)), -1)


def boiling_doubt_m(boiled_c: float) -> float:
    """By how much [m] an altitude from boiling water is off where the reading is 1 K off."""
    return altitude_of_boiling_m(boiled_c - BOIL_METHOD_K) - altitude_of_boiling_m(boiled_c)


def read_kind(asked: Asked) -> KindRead:
    """Open, or closed under pressure."""
    return KindRead(kind=asked.choice("kind", tuple(str(k) for k in FryerKind)))


def read_plate(asked: Asked) -> PlateRead:
    """What the plate of a fryer says; the heater's power into the oil is an estimate from it."""
    name, fuel = asked.name("name"), asked.choice("fuel", FUELS)
    bare = PLATE_POWER.get((fuel, asked.site.units), "kw")
    power = asked.amount("power", "power", (500.0, 200e3, "w"), bare=bare)
    share = float(usual(f"{fuel}_share_frac")["taken"]) if fuel else 1.0
    found = PlateRead(
        name=name,
        fuel=fuel,
        heater_w=None if power is None else power * share,
        oil_mass_kg=asked.amount("oil_mass", "mass", (2.0, 200.0, "kg")),
        oil=asked.choice("oil", tuple(load.oils())),
        capacity_heads=asked.count("birds", 1, 40, needed=False),
        capacity_kg=asked.amount("weight", "mass", (0.5, 60.0, "kg"), needed=False),
    )
    if not asked.text("birds") and not asked.text("weight"):
        asked.refuse("birds", InputError(called("birds"), "empty", "given, or the weight of a full load"))
    _compared(asked)
    return found


def _compared(asked: Asked) -> None:
    """What was read from a photo counts once somebody compared it with the plate."""
    if asked.text("from_photo") and not asked.text("seen"):
        asked.refuse(
            "seen",
            InputError(called("seen"), "not ticked", "ticked once you compared the figures with the plate"),
        )


def read_lid(asked: Asked, oil_mass_kg: float) -> tuple[LidRead, set[str]]:
    """Pressures, vent and room under the lid of a pressure fryer, and which of them are estimates."""
    estimates: set[str] = set()
    _compared(asked)

    def or_usual(name: str, value: float | None, taken: float) -> float:
        if value is None:
            estimates.add(name)
        return taken if value is None else value

    working = asked.amount("working_gauge", "pressure", (10e3, 110e3, "pa"))
    relief = asked.amount("relief_gauge", "pressure", (10e3, 150e3, "pa"), needed=False)
    vent = asked.amount("vent", "time", (SHORTEST_VENT_S, 120.0, "s"), needed=False)
    room_m3 = room_under_lid(asked)
    found = LidRead(
        working_gauge_pa=working,
        relief_gauge_pa=or_usual(
            "relief_gauge", relief, (working or 12 * PSI) * float(usual("relief_over_working_n")["taken"])
        ),
        vent_s=or_usual("vent", vent, float(usual("vent_s")["taken"])),
        head_volume_m3=or_usual(
            "head_volume", room_m3, 1e-3 * float(usual("head_l_kg")["taken"]) * oil_mass_kg
        ),
    )
    if working and relief and relief <= working:
        asked.refuse(
            "relief_gauge",
            InputError(
                called("relief_gauge"),
                relief,
                "above the working gauge; never set or test a relief valve yourself, read the plate",
                unit="pa",
            ),
        )
    return found, estimates


def room_under_lid(asked: Asked) -> float | None:
    """Room between oil and lid [m3] from three lengths of the sketch; None where none is given."""
    boxes = ("gap", "width", "length")
    if not any(asked.text(box) for box in boxes):
        return None
    bare = BARE_SMALL[asked.site.units][0]
    gap, width, length = (asked.amount(box, "length", (0.01, 1.5, "m"), bare=bare) for box in boxes)
    if gap is None or width is None or length is None:
        return None
    room = gap * width * length
    if not 0.001 <= room <= 0.2:
        asked.refuse(
            "gap", InputError(called("gap"), gap, "a vat with 1 to 200 litres of room over the oil", unit="m")
        )
    return room


def read_control(asked: Asked) -> ControlRead:
    """What a control can hold, and the swing of the oil."""
    shows = asked.choice("shows", tuple(str(u) for u in TempUnit))
    step = asked.amount(
        "temp_step", "temperature_difference", (0.05, 30.0, "k"), bare="f_diff" if shows == "f" else "k"
    )
    found = ControlRead(
        shows=shows,
        stage_count=asked.count("stages", 1, STEPS_AT_MOST),
        temp_step_k=step,
        time_step_s=asked.amount("time_step", "time", (1.0, 600.0, "s"), bare="s"),
        clock=asked.choice("clock", tuple(str(c) for c in ClockStyle)),
        lid_control=asked.choice("lid", LIDS) == "tied",
        slot_count=asked.count("slots", 1, 200),
        swing_k=asked.amount("swing", "temperature_difference", (0.0, 30.0, "k"), needed=False),
    )
    if not asked.text("slots"):
        asked.wrong.pop("slots", None)
        found = replace(found, slot_count=1)
    return found


def read_food(asked: Asked) -> FoodRead:
    """What is fried."""
    return FoodRead(cut_set=asked.choice("cut_set", tuple(load.cut_sets())))


def read_birds(asked: Asked, goods: CutSet, place: str) -> BirdsRead:
    """How a product is weighed, coated and kept before the drop; where no rule of the place speaks of it, the
    core that its cook is judged by.
    """
    small = BARE_SMALL[asked.site.units][1]
    whole = goods.unit == "head"
    weights = _ten(asked, small)
    mean = asked.amount(
        "mean", "mass", (0.005, 5.0, "kg"), bare="" if whole else small, needed=whole or weights is None
    )
    if mean is None and weights and not whole:
        mean = sum(weights) / len(weights)
    return BirdsRead(
        name=asked.name("name"),
        coating=asked.choice("coating", tuple(load.coatings())),
        unit_mass_kg=mean,
        heavy_ratio_n=heavy_ratio(weights) if weights else None,
        start_temp_c=asked.amount("start_temp", "temperature", (-1.0, 40.0, "c")),
        house_core_c=(
            asked.amount("house_core", "temperature", (40.0, 100.0, "c")) if no_rule(goods, place) else None
        ),
    )


def no_rule(goods: CutSet, place: str) -> bool:
    """Whether no rule of a place speaks of a food; not before the place is known."""
    return bool(place) and place_named(place).limit_of({load.cuts()[p.cut].food for p in goods.parts}) is None


def _ten(asked: Asked, bare: str) -> list[float] | None:
    """Ten weights, one by one; None where none is typed."""

    def reads(text: str) -> list[float]:
        found = [
            asked.site.read(word, "mass", called("ten"), bare) for word in text.replace(";", " ").split()
        ]
        if len(found) != WEIGHTS_COUNT:
            raise InputError(
                called("ten"),
                Phrase("{count} weights", {"count": len(found)}),
                "{most} weights, with a space between them",
                most=WEIGHTS_COUNT,
            )
        if min(found) < 0.005 or max(found) > 3.0 * min(found):
            raise InputError(
                called("ten"), repr(text[:20]), "ten pieces of one kind: one of these is far from the others"
            )
        return found

    found: list[float] | None = asked.read("ten", reads, needed=False)
    return found


def heavy_ratio(weights_kg: list[float]) -> float:
    """How much heavier than the mean the heavy end is, from ten weights: log-normal, the spread taken at its
    upper limit, since ten pieces may have been alike by chance.
    """
    logs = [log(w) for w in weights_kg]
    mean = sum(logs) / len(logs)
    spread = sqrt(sum((x - mean) ** 2 for x in logs) / (len(logs) - 1))
    return min(3.0, max(1.02, exp(HEAVY_QUANTILE_Z * SPREAD_80 * spread)))
