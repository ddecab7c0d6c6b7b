"""Loads against a heat balance by hand: what a load can take up, what the oil and its heater give."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import numpy as np

from frywright.catalog.kitchen import parse_kitchen
from frywright.physics.fry import FryHistory, simulate
from frywright.physics.inputs import CLOSE
from frywright.physics.plan import FryPlan, make_plan, piece_class, question, solids_kg_m2
from frywright.physics.solve import RawHistory, run

BIRD_KG, VAT_KG, FULL_HEADS = 1.21, 30.0, 5
"""Invented: 6.05 kg of chicken in 30 kg of oil, one in five."""

KITCHEN = """
[kitchen]
name = "Invented bench"
invented = true
altitude_m = 0
jurisdiction = "us_food_code_2022"
[[fryer]]
key = "vat"
name = "Vat"
kind = "LID"
capacity_heads = 5
oil_mass_kg = 30
heater_kw = HEATER
VALVES
[fryer.controller]
stage_count = 4
[[product]]
key = "bird"
name = "Bird"
cut_set = "chicken_8"
coating = "dredge"
unit_mass_kg = 1.21
start_temp_c = 3.3
[[program]]
name = "fry"
product = "bird"
fryer = "vat"
"""
OPEN = """
[[program.stage]]
set_c = 165
lid = "open"
duration_s = 840
"""
CLOSED = """
[[program.stage]]
set_c = 165
lid = "open"
duration_s = 40
[[program.stage]]
set_c = 154
lid = "pressure"
duration_s = 640
"""
VALVES = "working_gauge_psi = 12\nvent_area_mm2 = 45\nhead_volume_l = 18"


@dataclass(frozen=True)
class Load:
    """One load and what the engine says of it."""

    plan: FryPlan
    history: FryHistory
    raw: RawHistory

    @property
    def lanes(self) -> list[int]:
        return [i for i, kind in enumerate(self.plan.kinds) if not kind.heavy]

    @property
    def area_m2(self) -> float:
        return sum(piece_class(self.plan, self.plan.kinds[i]).area_m2 for i in self.lanes)

    def heat_j(self, seconds: float) -> float:
        """Heat taken up since the drop."""
        return float(np.interp(seconds, self.raw.time_s, self.raw.heat_j[:, self.lanes].sum(axis=1)))

    def heater_j(self, seconds: float) -> float:
        """Heat the heater gave since the drop."""
        return float(np.interp(seconds, self.raw.time_s, self.raw.heater_j))

    def oil_c(self, seconds: float) -> float:
        return float(np.interp(seconds, self.raw.time_s, self.raw.oil_temp_c))

    def core_c(self, cut: str, seconds: float, heavy: bool = True) -> float:
        """Core of a cut at a time."""
        found = next(p for p in self.history.pieces if p.kind.cut.key == cut and p.kind.heavy == heavy)
        return float(np.interp(seconds, self.history.time_s, found.core_c))

    @property
    def capacity_j_k(self) -> float:
        """Oil and the metal that follows it."""
        fryer, oil = self.plan.fryer, self.plan.oil
        return fryer.oil_mass_kg * (oil.cp_0c_j_kgk + 165.0 * oil.cp_slope_j_kgk2) + fryer.metal_heat_j_k


@cache
def load(heads: float, heater_kw: float, lid: str = "open") -> Load:
    """A load of so many heads in a vat with so much heat into the oil."""
    text = KITCHEN.replace("LID", lid).replace("HEATER", f"{heater_kw:.2f}")
    text = text.replace("VALVES", VALVES if lid == "pressure" else "") + (
        CLOSED if lid == "pressure" else OPEN
    )
    kitchen = parse_kitchen(text)
    plan = make_plan(kitchen, kitchen.program("fry"), units_count=heads)
    return Load(plan, simulate(plan, CLOSE), run(question(plan), CLOSE))


CONDUCTIVITY, DIFFUSIVITY = (
    0.50,
    1.35e-7,
)  # breast with skin, SR28 through Choi & Okos: 0.47 to 0.55 W/(m K); 3.45 kJ/(kg K)
RISE_K, BOILS_J_KG = 100.0 - 3.3, 2257e3 + 4190.0 * 96.7  # steam tables


def most_heat_j_m2(seconds: float, plan: FryPlan) -> float:
    """The most a square metre can take up: the meat's face at boiling from the drop on, coat warmed and
    boiled dry.
    """
    meat = 2.0 * CONDUCTIVITY * RISE_K * math.sqrt(seconds / (math.pi * DIFFUSIVITY))
    coat = plan.coating.film_kg_m2 * BOILS_J_KG + solids_kg_m2(plan.coating) * 1600.0 * RISE_K
    return meat + coat


def slab_heat_j_m2(ratio_left: float) -> float:
    """Heat a 3 mm breast slab must have taken up a face when so much of its water is left and it stands at
    boiling.
    """
    mass = 1063.0 * 0.0015  # light meat, kg/m2
    return mass * 3600.0 * RISE_K + mass * 0.739 * (1.0 - ratio_left) * 2257e3
