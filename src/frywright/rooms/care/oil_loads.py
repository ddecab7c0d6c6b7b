"""What the loads of the board do to the oil: raw product, oil carried off, chicken fat that comes in."""

from __future__ import annotations

from functools import lru_cache

from frywright.model.errors import FrywrightError
from frywright.model.kitchen import Kitchen
from frywright.trial.ask import CookRequest, ask


def raw_kg(kitchen: Kitchen, product: str, pieces: float) -> float:
    """Raw product in so many pieces."""
    known = kitchen.product(product)
    unit = known.unit_mass_kg or kitchen.cut_set(known.cut_set).unit_mass_kg
    return pieces / kitchen.pieces_per_unit(product) * unit


@lru_cache(maxsize=256)
def oil_of_load(kitchen: Kitchen, fryer: str, product: str) -> tuple[float, float]:
    """Oil carried off and chicken fat given to the vat, each a kilogram of raw product, by the engine; zero
    where the kitchen has no program for it.
    """
    name = next((p.name for p in kitchen.own_programs if (p.product, p.fryer) == (product, fryer)), None)
    if name is None:
        return 0.0, 0.0
    history = ask(kitchen, CookRequest(program=kitchen.program(name))).history
    return history.uptake_kg / history.plan.load_kg, history.rendered_kg / history.plan.load_kg


def fat_kg(kitchen: Kitchen, fryer: str, product: str, pieces: int) -> float:
    """Chicken fat a load gives to the vat; nothing of a product the kitchen no longer has."""
    try:
        return raw_kg(kitchen, product, pieces) * oil_of_load(kitchen, fryer, product)[1]
    except FrywrightError:
        return 0.0
