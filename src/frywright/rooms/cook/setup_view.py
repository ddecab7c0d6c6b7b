"""What the set-up's pages show: usual ranges and their origin, what holds at a place, answers in words."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from frywright.catalog import load
from frywright.model.errors import Phrase
from frywright.model.food import Food
from frywright.model.fryer import Fryer, FryerKind
from frywright.model.kitchen import Kitchen, Site, UnitSystem
from frywright.model.plain import plain
from frywright.model.program import Program
from frywright.model.tongues import Translate, tongues
from frywright.model.units import PSI, clock, show, to_people
from frywright.rooms.cook.setup import Setup, described
from frywright.rooms.cook.setup_read import BOIL_METHOD_K, AltitudeRead, boiling_doubt_m, no_rule, usual
from frywright.trial.naming import altitude_words
from frywright.verdicts.place import place_named

ORIGIN = {
    "common practice": "common practice, no source",
    "estimate": "own estimate",
    "recalled": "from memory",
    "secondary": "by the summary of a standard",
}
ESTIMATE_WORDS = {
    "vent": "vent time",
    "head_volume": "room under the lid",
    "swing": "swing of the oil",
    "heater": "heat into the oil",
    "relief_gauge": "relief pressure on the plate",
}
MEASURE = {
    "vent": (
        "With a watch, on a full load: from opening the valve until the gauge reads zero. Stand back; steam"
        " scalds."
    ),
    "head_volume": (
        "With the oil cold and the fryer off, measure from the oil to the lid, and the sides of the vat."
    ),
    "swing": "At rest, note the highest and the lowest display over five cycles.",
    "heater": "Log one heat-up with nothing in the oil, and let Probes work it out.",
    "relief_gauge": "Read it from the plate. Never set or test a relief valve yourself.",
}


def usual_words(site: Site, translate: Translate) -> dict[str, str]:
    """The usual range of each value nobody can read off, where it comes from, and what an empty box takes."""
    system = site.units
    found = {}
    for box, key, say in (
        ("vent", "vent_s", clock),
        ("swing", "swing_k", lambda k: show(k, "k", system)),
        ("working_gauge", "working_gauge_psi", lambda psi: show(psi * PSI, "pa", system)),
    ):
        row = usual(key)
        told = {"low": say(row["low"]), "high": say(row["high"]), "origin": translate(ORIGIN[row["origin"]])}
        text = translate("Usual: {low} to {high} ({origin}).").format(**told)
        if "taken" in row:
            text += " " + translate("Left empty, {taken} counts as an estimate.").format(
                taken=say(row["taken"])
            )
        found[box] = text
    return found


def limits_here(jurisdiction: str, site: Site, translate: Translate) -> list[str]:
    """What this catalog knows of a place: cooking, holding, oil."""
    place, system = place_named(jurisdiction), site.units
    cook, hold = place.cook_limit(Food.POULTRY), place.hot_hold_c()
    lines = [
        Phrase("Chicken is judged by: {title}.", {"title": cook.title})
        if cook
        else Phrase("The rule for cooking chicken is not in this catalog. You will be asked for a core."),
        Phrase("Hot holding from {temp_c}.", {"temp_c": hold})
        if hold is not None
        else Phrase("The rule for hot holding is not in this catalog."),
        Phrase("Oil goes at {pct} % polar compounds.", {"pct": f"{place.oil_limit()[0]:g}"}),
    ]
    return [line.say(translate, system) for line in lines]


def boiling_words(setup: Setup, translate: Translate) -> str:
    """The altitude worked out from boiling water, and its doubt; empty where a number was given."""
    values = described(setup).values.get("altitude")
    if not isinstance(values, AltitudeRead) or values.altitude_m is None:
        return ""
    if not setup.typed("altitude", "boiled"):
        return ""
    boiled = setup.site.read(setup.typed("altitude", "boiled"), "temperature", "boiled")
    system = setup.site.units
    text = translate("{altitude}, from boiling water. A thermometer {off} off moves it by {doubt}.")
    return text.format(
        altitude=altitude_words(values.altitude_m, system),
        off=show(BOIL_METHOD_K, "k", system),
        doubt=altitude_words(abs(boiling_doubt_m(boiled)), system),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One answer in words, where it is changed, and whether it is an estimate."""

    screen: str
    what: str
    told: str
    estimate: bool = False


def summary(setup: Setup, translate: Translate) -> list[Line]:
    """Everything answered, one line each."""
    told = described(setup)
    lines = []
    for screen, values in plain(told.values).items():
        for name, value in values.items():
            if value is None or value == "":
                continue
            estimate = any(name.startswith(e) for e in told.estimates)
            what = translate(WHAT[name])
            if name == "clock" and setup.typed("kind", "kind") == FryerKind.OPEN:
                value = f"open {value}"
            lines.append(
                Line(
                    screen=screen,
                    what=what,
                    told=_told(name, value, setup.site, translate),
                    estimate=estimate,
                )
            )
    return lines


WHAT = {
    "name": "name",
    "jurisdiction": "place",
    "language": "language",
    "units": "units",
    "altitude_m": "altitude",
    "kind": "kind",
    "fuel": "fuel",
    "heater_w": "heat into the oil",
    "oil_mass_kg": "oil",
    "oil": "kind of oil",
    "capacity_heads": "birds at once",
    "capacity_kg": "weight at once",
    "working_gauge_pa": "working pressure",
    "relief_gauge_pa": "relief pressure on the plate",
    "vent_s": "vent time",
    "head_volume_m3": "room under the lid",
    "shows": "shows",
    "stage_count": "stages",
    "temp_step_k": "step of a set point",
    "time_step_s": "step of a time",
    "clock": "clock",
    "lid_control": "lid",
    "slot_count": "slots",
    "swing_k": "swing of the oil",
    "cut_set": "food",
    "coating": "coating",
    "unit_mass_kg": "weight of one",
    "heavy_ratio_n": "heavy end over the mean",
    "start_temp_c": "temperature at the drop",
    "house_core_c": "core asked for",
}
UNITS = {"us": "US units", "metric": "metric units"}
CLOCKS = {
    "left": "counts down, and runs on during the vent",
    "waits": "counts down, and stands still during the vent",
    "elapsed": "counts up from the drop",
    "open left": "counts down",
    "open elapsed": "counts up from the drop",
}


def _told(name: str, value: Any, site: Site, translate: Translate) -> str:
    """One value as people read it."""
    system = site.units
    titles: Mapping[str, Callable[[Any], str]] = {
        "jurisdiction": lambda v: translate(place_named(v).title),
        "language": lambda v: tongues()[v].name,
        "units": lambda v: translate(UNITS[v]),
        "oil": lambda v: translate(load.oils()[v].title),
        "cut_set": lambda v: translate(load.cut_sets()[v].title),
        "coating": lambda v: translate(load.coatings()[v].title),
        "clock": lambda v: translate(CLOCKS[v]),
        "lid_control": lambda v: translate("tied to the program" if v else "by hand"),
        "shows": lambda v: f"°{v.upper()}",
        "name": str,
        "altitude_m": lambda v: altitude_words(v, system),
        "head_volume_m3": lambda v: f"{1e3 * v:.0f} L",
        "heavy_ratio_n": lambda v: f"{v:.2f}",
        "temp_step_k": lambda v: show(v, "k", system),
        "unit_mass_kg": lambda v: _mass_of_one(v, system),
    }
    if name in titles:
        return titles[name](value)
    if isinstance(value, str):
        return translate(value)
    suffix = name.rsplit("_", 1)[-1]
    return f"{value}" if isinstance(value, int) else show(value, suffix, system)


def _mass_of_one(value: float, system: str) -> str:
    """The mass of a bird or of one small piece, which nobody weighs in whole kilograms or pounds."""
    if value >= 0.1:
        return show(value, "kg", system)
    return f"{to_people(value, 'oz'):.2f} oz" if system == "us" else f"{to_people(value, 'g'):.0f} g"


@dataclass(frozen=True, slots=True, kw_only=True)
class Pair:
    """A product on a fryer, and the programs there are for it."""

    fryer: str
    product: str
    fryer_name: str
    product_name: str
    programs: tuple[str, ...]


def pairs(kitchen: Kitchen) -> list[Pair]:
    """Each product on each fryer."""
    return [
        Pair(
            fryer=f.key,
            product=p.key,
            fryer_name=f.name,
            product_name=p.name,
            programs=tuple(sorted({r.name for r in kitchen.programs if _is_for(r, f.key, p.key)})),
        )
        for f in kitchen.fryers
        for p in kitchen.products
    ]


def _is_for(program: Program, fryer: str, product: str) -> bool:
    return (program.fryer, program.product) == (fryer, product)


@dataclass(frozen=True, slots=True, kw_only=True)
class Estimate:
    """A value of a fryer that is an estimate: its name, what it is called, how it is measured, its unit."""

    name: str
    what: str
    how: str
    unit: str


def estimates_of(fryer: Fryer, site: Site, translate: Translate) -> list[Estimate]:
    """What is an estimate of a fryer, and how to measure it."""
    us = site.units is UnitSystem.US
    units = {
        "vent": "m:ss",
        "swing": "°F" if us else "°C",
        "heater": "kW",
        "relief_gauge": "psi" if us else "kPa",
    }
    return [
        Estimate(
            name=name,
            what=translate(ESTIMATE_WORDS[name]),
            how=translate(MEASURE[name]),
            unit=units.get(name, "in" if us else "cm"),
        )
        for name in fryer.estimates
    ]


def asks_core(setup: Setup) -> bool:
    """Whether the product needs a core of the house: no rule of the place speaks of its food."""
    found = load.cut_sets().get(setup.typed("food", "cut_set"))
    return found is not None and no_rule(found, setup.site.jurisdiction)


def _usual_first(key: str) -> tuple[bool, int, str]:
    """Birds by their pieces, then the rest by name."""
    number = key.rpartition("_")[2]
    return not number.isdigit(), int(number) if number.isdigit() else 0, key


def offered(translate: Translate) -> dict[str, list[tuple[str, str]]]:
    """The choices of the screens: key and title."""
    places = load.table("standards/jurisdictions.toml")["jurisdiction"]
    return {
        "jurisdiction": [(j["key"], translate(j["title"])) for j in places],
        "oil": [(key, translate(oil.title)) for key, oil in load.oils().items()],
        "coating": [(key, translate(coat.title)) for key, coat in load.coatings().items()],
        "cut_set": [
            (key, translate(load.cut_sets()[key].title)) for key in sorted(load.cut_sets(), key=_usual_first)
        ],
    }
