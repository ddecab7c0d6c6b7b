"""A fryer's nameplate with its photo, and the site against it. The newest plate that is not a correction
begins a commissioning.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict, dataclass, replace
from typing import Any, BinaryIO

from frywright.care.commissioning import Plate, Point, SiteFacts, survey
from frywright.ledger.facts.care import PlateTyped, SiteMeasured, StepSigned, YesNo
from frywright.ledger.facts.fact import Kept
from frywright.ledger.store import Store
from frywright.model.errors import InputError
from frywright.model.findings import Note
from frywright.model.fryer import Fryer
from frywright.model.kitchen import Kitchen, Site
from frywright.model.units import UNITS, is_count, to_people
from frywright.rooms.care.upkeep import today_of
from frywright.rooms.hall import given_words, typed, write
from frywright.rooms.photos import keep_photo

PLATE_TEXTS = ("maker", "model", "serial", "fuel", "gas", "year")
COUNTED = {"volts": "volts_n", "phases": "phases_count", "hz": "hz_n", "breaker_amps": "breaker_amps_n"}
MEASURED = {
    "power": ("power_w", "power"),
    "gas_low": ("gas_low_pa", "pressure"),
    "gas_high": ("gas_high_pa", "pressure"),
    "oil": ("oil_mass_kg", "mass"),
    "gas_static": ("gas_static_pa", "pressure"),
    "gas_flowing": ("gas_flowing_pa", "pressure"),
    "altitude": ("altitude_m", "length"),
    "flame": ("flame_distance_m", "length"),
}
"""Typed field: the name it is kept by, and its dimension."""
PLATE_NUMBERS = ("volts", "phases", "hz", "power", "gas_low", "gas_high", "oil")
SITE_NUMBERS = ("volts", "phases", "breaker_amps", "gas_static", "gas_flowing", "altitude", "flame")
TYPED_UNIT = {
    "us": {
        "power": "kw",
        "gas_low": "inh2o",
        "gas_high": "inh2o",
        "oil": "lb",
        "gas_static": "inh2o",
        "gas_flowing": "inh2o",
        "altitude": "ft",
        "flame": "in",
    },
    "metric": {
        "power": "kw",
        "gas_low": "mbar",
        "gas_high": "mbar",
        "oil": "kg",
        "gas_static": "mbar",
        "gas_flowing": "mbar",
        "altitude": "m",
        "flame": "cm",
    },
}
"""Unit taken where a number is typed alone; any other unit may be typed with it, as plates print them."""
YES_NO: dict[YesNo, bool | None] = {"": None, "yes": True, "no": False}
DIFFERS_FRAC = 0.05


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One commissioning of one fryer as the store holds it; the newest plate that is not a correction begins
    it.
    """

    fryer: Fryer
    plate: Kept[PlateTyped] | None
    site: Kept[SiteMeasured] | None
    steps: dict[str, Kept[StepSigned]]

    @property
    def done(self) -> set[str]:
        """Keys of the steps signed."""
        return set(self.steps)


def case_of(store: Store, kitchen: Kitchen, fryer: str) -> Case:
    """The newest commissioning of a fryer."""
    found = kitchen.fryer(fryer)
    plates = [e for e in store.current_facts(PlateTyped) if e.fact.fryer == fryer]
    if not plates:
        return Case(fryer=found, plate=None, site=None, steps={})
    mine = (fryer, plates[-1].fact.case_number)
    sites = [e for e in store.current_facts(SiteMeasured) if (e.fact.fryer, e.fact.case_number) == mine]
    steps = [e for e in store.current_facts(StepSigned) if (e.fact.fryer, e.fact.case_number) == mine]
    return Case(
        fryer=found,
        plate=plates[-1],
        site=sites[-1] if sites else None,
        steps={e.fact.step: e for e in steps},
    )


def _number(values: Mapping[str, Any], name: str, site: Site) -> tuple[str, float | None]:
    """A typed number by the name it is kept by; None where nothing was typed."""
    text = typed(values, name)
    kept, dimension = MEASURED[name] if name in MEASURED else (COUNTED[name], "")
    if not text:
        return kept, None
    bare = TYPED_UNIT[site.units].get(name, "")
    value = site.read(text, dimension, name, bare) if dimension else site.number(text, name)
    if not 0 <= value <= 1e7:
        raise InputError(name, text, "0 to ten million")
    return kept, value


def keep_plate(
    store: Store, kitchen: Kitchen, values: Mapping[str, Any], photo: BinaryIO | None = None
) -> Kept[PlateTyped]:
    """Keep what a fryer's nameplate says, with its photo. A second plate of the same serial corrects the
    first; another serial is a new fryer. Raises InputError: no serial or fuel, figures the survey needs
    missing, a picture that is none or too large, a correction without its reason.

    Parameters
    ----------
    values : fryer; maker, model, serial, fuel, gas, year as printed; volts, phases, hz, power, gas_low,
        gas_high, oil, with units where not the kitchen's; reason for a correction
    """
    fryer = kitchen.fryer(str(values.get("fryer", "")))
    told: dict[str, Any] = {name: typed(values, name)[:80] for name in PLATE_TEXTS}
    told |= dict(_number(values, name, kitchen.site) for name in PLATE_NUMBERS)
    plate = PlateTyped(**told, fryer=fryer.key, case_number=0, photo="", reason="")
    if not plate.serial:
        raise InputError("serial", "empty", "the number on the plate: no plate, no program", where=fryer.name)
    this_year = today_of(kitchen).year
    if plate.year and not (is_count(plate.year) and 1950 <= int(plate.year) <= this_year):
        raise InputError(
            "year",
            repr(plate.year),
            "1950 to {most}, as printed on the plate",
            where=fryer.name,
            most=this_year,
        )
    survey(_plate(plate), SiteFacts())
    old = case_of(store, kitchen, fryer.key).plate
    same = old if old is not None and old.fact.serial == plate.serial else None
    reason = typed(values, "reason")
    if same:
        given_words(
            reason,
            wanted="why the plate is typed anew: the first one stays on record",
            where=fryer.name,
        )
    sha = keep_photo(store, photo) if photo is not None else (same.fact.photo if same else "")
    number = same.fact.case_number if same else (old.fact.case_number if old else 0) + 1
    plate = replace(plate, photo=sha, reason=reason[:200], case_number=number)
    return write(store, plate, replaces=same.number if same else None)


def _plate(plate: PlateTyped) -> Plate:
    return Plate(
        fuel=plate.fuel,
        power_w=plate.power_w or 0.0,
        volts_n=plate.volts_n or 0.0,
        phases_count=int(plate.phases_count or 0),
        gas=plate.gas,
    )


def keep_site(store: Store, kitchen: Kitchen, values: Mapping[str, Any]) -> Kept[SiteMeasured]:
    """Keep what was measured at the site; what nobody measured stays unknown. Raises InputError: no plate
    yet, or figures that cannot be.
    """
    case = case_of(store, kitchen, str(values.get("fryer", "")))
    if case.plate is None:
        raise InputError(
            "site", "without a plate", "measured against a plate: type the plate first", where=case.fryer.name
        )
    fact = SiteMeasured(
        **dict(_number(values, name, kitchen.site) for name in SITE_NUMBERS),
        hood=_yes_no(values, "hood"),
        suppression=_yes_no(values, "suppression"),
        gas=typed(values, "gas"),
        baffle=bool(values.get("baffle")),
        who=str(values.get("who", "") or "")[:80],
        fryer=case.fryer.key,
        case_number=case.plate.fact.case_number,
    )
    return write(store, fact, replaces=case.site.number if case.site else None)


def _yes_no(values: Mapping[str, Any], name: str) -> YesNo:
    word = str(values.get(name, "") or "")
    found = next((known for known in YES_NO if known == word), None)
    if found is None:
        raise InputError(name, repr(word), "yes, no or left out")
    return found


def points_of(case: Case, kitchen: Kitchen) -> list[Point]:
    """Every point of the site against the plate; empty before there is a plate."""
    if case.plate is None:
        return []
    plate, site = case.plate.fact, case.site.fact if case.site else None
    if site is None:
        return survey(_plate(plate), SiteFacts(altitude_m=kitchen.site.altitude_m, gas_plate_pa=_gas(plate)))
    return survey(
        _plate(plate),
        SiteFacts(
            volts_n=site.volts_n,
            phases_count=int(site.phases_count) if site.phases_count else None,
            breaker_amps_n=site.breaker_amps_n,
            gas=site.gas or None,
            gas_static_pa=site.gas_static_pa,
            gas_flowing_pa=site.gas_flowing_pa,
            gas_plate_pa=_gas(plate),
            altitude_m=kitchen.site.altitude_m if site.altitude_m is None else site.altitude_m,
            hood_runs=YES_NO[site.hood],
            suppression_covers=YES_NO[site.suppression],
            flame_distance_m=site.flame_distance_m,
            baffle=site.baffle,
        ),
    )


def _gas(plate: PlateTyped) -> tuple[float, float] | None:
    """Gas pressures a plate allows, where it prints both."""
    if plate.gas_low_pa is None or plate.gas_high_pa is None:
        return None
    return plate.gas_low_pa, plate.gas_high_pa


def differences(case: Case) -> list[Note]:
    """Where the plate and the kitchen file say different things; the programs were designed with the kitchen
    file's.
    """
    if case.plate is None:
        return []
    plate, fryer, found = case.plate.fact, case.fryer, []
    if plate.fuel != fryer.fuel:
        found.append(
            Note(kind="fuel", text="The kitchen file says another fuel: {fuel}.", values={"fuel": fryer.fuel})
        )
    if plate.oil_mass_kg and abs(plate.oil_mass_kg / fryer.oil_mass_kg - 1) > DIFFERS_FRAC:
        found.append(
            Note(
                kind="oil",
                text="The kitchen file says {oil_kg} of oil.",
                values={"oil_kg": fryer.oil_mass_kg},
            )
        )
    if plate.fuel == "electric" and abs((plate.power_w or 0.0) / fryer.heater_w - 1) > DIFFERS_FRAC:
        found.append(
            Note(
                kind="power",
                text=(
                    "The kitchen file says {power} kW into the oil: programs and proofs were worked out"
                    " with it."
                ),
                values={"power": fryer.heater_w / 1000},
            )
        )
    return found


def typed_back(fact: PlateTyped | SiteMeasured | None, system: str) -> dict[str, str]:
    """What a plate or site says as it would be typed again in a kitchen's units."""
    told = asdict(fact) if fact is not None else {}
    found = {}
    for name, kept in COUNTED.items():
        if told.get(kept) is not None:
            found[name] = f"{told[kept]:g}"
    for name, (kept, _) in MEASURED.items():
        if told.get(kept) is not None:
            found[name] = f"{to_people(told[kept], TYPED_UNIT[system][name]):.4g}"
    return found | {name: told[name] for name in (*PLATE_TEXTS, "who") if told.get(name)}


def unit_signs(system: str) -> dict[str, str]:
    """Sign of the unit taken for each typed number."""
    return {name: UNITS[unit].sign for name, unit in TYPED_UNIT[system].items()}
