"""Water, fat and oil of a fried piece: what is lost, what is taken up, what is left to eat.

Three bases, never mixed: the edible part (meat and skin, raw), the raw piece with its bone, and
the breaded piece. Coating water leaves first and is not counted as the meat's.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from frywright.catalog import load as catalog
from frywright.model.food import Coating, Cut
from frywright.physics.plan import solids_kg_m2

RENDERS_ABOVE_C = 60.0  # own estimate: below it little fat leaves (most changes lie at 40 to 55 degC)


@dataclass(frozen=True, slots=True, kw_only=True)
class Yields:
    """Shares of one class, and what it takes from and gives to the oil a kilogram raw."""

    moisture_loss_frac: float  # all water lost, of breaded weight
    water_lost_edible_frac: float  # water lost by the edible part, of its own water
    rendered_raw_frac: float  # chicken fat given to the oil, a kilogram raw
    uptake_raw_frac: float  # oil carried off, a kilogram raw
    uptake_frac: float  # the same, of breaded weight
    yield_frac: float  # of breaded weight, bone included
    edible_yield_frac: float  # fried edible part with its coat over raw edible part


def yields_of(
    cut: Cut,
    coating: Coating,
    *,
    area_m2_kg: float,
    evaporated_kg_m2: float,
    core_c: NDArray[np.float64],
    core_share: NDArray[np.float64],
) -> Yields:
    """Yields of a class from its evaporated water and its final core temperatures.

    Parameters
    ----------
    area_m2_kg : outer area a kilogram of raw piece [m2/kg]
    core_c, core_share : (cell,) final temperatures and their shares of the wet core
    """
    food = catalog.compositions()[cut.composition].fractions
    meat = 1.0 - cut.bone_mass_frac
    film, solids = coating.film_kg_m2 * area_m2_kg, solids_kg_m2(coating) * area_m2_kg
    gone = evaporated_kg_m2 * area_m2_kg
    from_meat = max(gone - film, 0.0)
    tissue = catalog.table("kinetics/drip.toml").get(cut.drip_kind, {"rendered_frac": 0.0})
    share = tissue["rendered_frac"] if cut.rendered_frac is None else cut.rendered_frac
    hot = float(np.sum(core_share[core_c > RENDERS_ABOVE_C]))
    rendered = share * hot * food["fat"] * meat
    uptake = coating.oil_per_solids_n * solids
    breaded = 1.0 + film + solids
    coat = solids + uptake + max(film - gone, 0.0)
    return Yields(
        moisture_loss_frac=gone / breaded,
        water_lost_edible_frac=from_meat / (meat * food["water"]),
        rendered_raw_frac=rendered,
        uptake_raw_frac=uptake,
        uptake_frac=uptake / breaded,
        yield_frac=(1.0 - from_meat - rendered + coat) / breaded,
        edible_yield_frac=(meat - from_meat - rendered + coat) / meat,
    )
