"""Filling a vat, cartons to order, and moves of oil between vats."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil

from frywright.catalog import load as catalog
from frywright.catalog.capacity import capacity_units
from frywright.ledger.store import Store
from frywright.model.business_day import business_time, usual_trade
from frywright.model.errors import InputError
from frywright.model.findings import say
from frywright.model.kitchen import Kitchen
from frywright.model.tongues import Translate
from frywright.model.units import GALLON, show
from frywright.oil.filling import fill, melt_j, most_oil_kg
from frywright.paper.paper import PAPER, pdf, section
from frywright.rooms.care.oil_state import VatState, vat_states
from frywright.rooms.care.vat import CARTON_KG
from frywright.rooms.clock import now

FOAM_FRAC = 0.1


@dataclass(frozen=True, slots=True, kw_only=True)
class FillView:
    """How a vat is filled: mass, cold and hot volume, cartons opened and what is
    poured of them, heights where the vat's surface is known, and
    what too much leads to; empty where there is nothing to say.
    """

    vat: str
    name: str
    mass: str
    cartons: int
    pour: str
    swells_frac: float
    cold: str
    hot: str
    heights: str
    warning: str
    melt: str


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderView:
    """Cartons to order, and what they are for."""

    cartons: int
    top_up_cartons: float
    change_cartons: float
    safety_cartons: float


@dataclass(frozen=True, slots=True, kw_only=True)
class CarriesRow:
    """What a vat's oil carries, and what is fried in it."""

    name: str
    carries: str
    products: str


@dataclass(frozen=True, slots=True, kw_only=True)
class MoveRow:
    """A move of oil between two vats, and what is against it."""

    from_: str
    into: str
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class RotationView:
    """What every vat carries, and every move between two."""

    vats: tuple[CarriesRow, ...]
    moves: tuple[MoveRow, ...]


def fill_view(kitchen: Kitchen, vat: str, tr: Translate = str) -> FillView:
    """How a vat is filled."""
    fryer, system = kitchen.fryer(vat), kitchen.site.units
    oil, room = catalog.oils()[fryer.oil], min(kitchen.site.room_temp_c, 40.0)
    load = _largest_load(kitchen, vat)
    found = fill(
        oil,
        fryer.oil_mass_kg,
        cold_c=room,
        carton_kg=CARTON_KG,
        area_m2=fryer.oil_area_m2,
        load_kg=load,
        foam_frac=FOAM_FRAC,
    )
    litres = ("gal", 1000.0 * GALLON) if system == "us" else ("L", 1.0)
    heights = warning = ""
    if fryer.oil_area_m2:
        levels = {
            "cold_m": found.cold_height_m,
            "hot_m": found.hot_height_m,
            "loaded_m": found.loaded_height_m,
        }
        heights = say(
            "Stands {cold_m} cold, {hot_m} hot, {loaded_m} with the largest load and foam on it.",
            levels,
            system,
            tr,
        )
    if fryer.oil_area_m2 and fryer.upper_line_m:
        most = most_oil_kg(oil, fryer.oil_area_m2, fryer.upper_line_m, load, foam_frac=FOAM_FRAC)
        cold = most / oil.density_kg_m3(room) / fryer.oil_area_m2
        heights += " " + say(
            "With all that under the upper line of {line_m} it may stand {most_m} cold at most.",
            {"line_m": fryer.upper_line_m, "most_m": cold},
            system,
            tr,
        )
        if fryer.oil_mass_kg > most:
            warning = say(
                "{mass_kg} is more than the {most_kg} that stays under the upper line: it boils over with the"
                " largest load.",
                {"mass_kg": fryer.oil_mass_kg, "most_kg": most},
                system,
                tr,
            )
    return FillView(
        vat=vat,
        name=fryer.name,
        mass=show(fryer.oil_mass_kg, "kg", system),
        cartons=found.cartons_count,
        pour=_pour(fryer.oil_mass_kg, system, tr),
        swells_frac=round(found.swells_frac, 3),
        cold=f"{found.cold_m3 * 1000 / litres[1]:.1f} {litres[0]}",
        hot=f"{found.hot_m3 * 1000 / litres[1]:.1f} {litres[0]}",
        heights=heights,
        warning=warning,
        melt=show(melt_j(fryer.oil_mass_kg, room) / 3.6e6, "kwh", system) if fryer.solid_fat else "",
    )


def _pour(mass_kg: float, system: str, tr: Translate) -> str:
    """Whole cartons and what is poured of the next: who empties every carton opened fills too much."""
    whole = int(mass_kg / CARTON_KG + 1e-3)
    rest_kg = max(0.0, mass_kg - whole * CARTON_KG)
    text = "cartons of {carton_kg}: {whole} whole"
    if rest_kg >= 0.05:
        text = "cartons of {carton_kg}: {whole} whole and {rest_kg} of the next"
    values = {"carton_kg": CARTON_KG, "whole": float(whole), "rest_kg": rest_kg}
    return say(text, values, system, tr)


def _largest_load(kitchen: Kitchen, vat: str) -> float:
    fryer, found = kitchen.fryer(vat), 0.0
    for program in (p for p in kitchen.programs if p.fryer == vat):
        product = kitchen.product(program.product)
        cuts = kitchen.cut_set(product.cut_set)
        unit = product.unit_mass_kg or cuts.unit_mass_kg
        found = max(found, capacity_units(fryer, cuts, unit) * unit)
    return found


def order_view(
    store: Store, kitchen: Kitchen, days: int, on_hand_cartons: float, today: dt.date | None = None
) -> OrderView:
    """Cartons to order to the next delivery: top-up, planned changes, one vat as safety, less what is on
    hand.
    """
    if not 1 <= days <= 60 or on_hand_cartons < 0:
        raise InputError("order", f"{days}, {on_hand_cartons:g}", "1 to 60 days, 0 or more cartons")
    states = vat_states(store, kitchen, today).values()
    top_up = sum(s.top_up_kg for s in states) * days
    changes = sum(s.fryer.oil_mass_kg for s in states if s.crossing.days_n[1] <= days)
    safety = max(s.fryer.oil_mass_kg for s in states)
    need = (top_up + changes + safety) / CARTON_KG
    return OrderView(
        cartons=max(0, ceil(need - on_hand_cartons - 1e-9)),
        top_up_cartons=round(top_up / CARTON_KG, 1),
        change_cartons=round(changes / CARTON_KG, 1),
        safety_cartons=round(safety / CARTON_KG, 1),
    )


def contains_of(kitchen: Kitchen, vat: str) -> set[str]:
    """What a vat's products leave in its oil."""
    return {a for p in kitchen.programs if p.fryer == vat for a in kitchen.allergens(p.product)}


def rotation_notes(kitchen: Kitchen, old: VatState, new: VatState, tr: Translate = str) -> tuple[str, ...]:
    """Why the oil of one vat may not go into another; empty when nothing is against it.

    Older oil never goes into fresher; oil in which other food was fried carries its proteins along.
    """
    found = []
    if old.belief.level[0] > new.belief.level[0]:
        found.append(tr("Older oil never goes into fresher: the fresh oil would age at once."))
    carried = contains_of(kitchen, old.fryer.key) - contains_of(kitchen, new.fryer.key)
    if carried:
        text = "The oil carries {what} into a vat that had none; claim nothing free of them."
        found.append(tr(text).format(what=", ".join(sorted(tr(c) for c in carried))))
    if old.fryer.oil != new.fryer.oil:
        found.append(tr("The two vats hold different oils."))
    return tuple(found)


def rotation_view(kitchen: Kitchen, states: Mapping[str, VatState], tr: Translate = str) -> RotationView:
    """Every move between two vats with what speaks against it, and what each vat's oil carries; nothing fried
    in a shared vat is free of it.
    """
    fried: dict[str, set[str]] = {f.key: set() for f in kitchen.fryers}
    for program in kitchen.programs:
        fried[program.fryer].add(kitchen.product(program.product).name)
    vats = tuple(
        CarriesRow(
            name=f.name,
            carries=", ".join(sorted(tr(c) for c in contains_of(kitchen, f.key))),
            products=", ".join(sorted(fried[f.key])),
        )
        for f in kitchen.fryers
    )
    moves = tuple(
        MoveRow(from_=a.name, into=b.name, notes=rotation_notes(kitchen, states[a.key], states[b.key], tr))
        for a in kitchen.fryers
        for b in kitchen.fryers
        if a.key != b.key
    )
    return RotationView(vats=vats, moves=moves)


def oil_map_pdf(store: Store, kitchen: Kitchen, language: str = "en", tr: Translate = str) -> bytes:
    """The map of oils, products and proteins on paper, with the moves that nothing speaks against."""
    view = rotation_view(kitchen, vat_states(store, kitchen), tr)
    allowed = [[m.from_, m.into] for m in view.moves if not m.notes]
    carries = [[v.name, v.products, v.carries or "–"] for v in view.vats]
    sections = [
        section(
            tr("What each oil carries"), [tr("fryer"), tr("products"), tr("carries")], [4, 4, 3], carries
        ),
        section(
            tr("Moves with nothing against them today"),
            [tr("from"), tr("into")],
            [1, 1],
            allowed,
            tr("None."),
        ),
    ]
    return pdf(
        "handover.typ",
        "handover",
        {
            "title": tr("Oil map"),
            "place": kitchen.site.name,
            "when": business_time(usual_trade(kitchen), now())[0].isoformat(),
            "language": language,
            "paper": PAPER[kitchen.site.units],
            "sections": sections,
            "signs": [],
            "caution": tr(
                "Fish, shellfish and gluten proteins stay in oil: claim nothing free of what the vat carries."
            ),
            "foot": tr("The maker's manual, local codes and licensed technicians win."),
        },
    )
