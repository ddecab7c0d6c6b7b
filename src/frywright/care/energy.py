"""Energy of a fryer's day: preheat, idle and cook; as the open-fryer test method reckons it (ASTM F1361: scope and definitions)."""

from __future__ import annotations

from dataclasses import dataclass

from frywright.model.errors import InputError


@dataclass(frozen=True, slots=True, kw_only=True)
class EnergyDay:
    """Energy of a day by part [J]."""

    preheat_j: float
    idle_j: float
    cook_j: float

    @property
    def total_j(self) -> float:
        """All of it."""
        return self.preheat_j + self.idle_j + self.cook_j


def energy_day(on_s: float, food_kg: float, capacity_kg_s: float, idle_w: float, food_j_kg: float, efficiency_frac: float, preheat_j: float) -> EnergyDay:  # fmt: skip
    """A day of one fryer; the time that the food needs at the production capacity is cooking, the rest is idle.

    Raises
    ------
    InputError
        More food than the hours can cook, or figures out of range.
    """
    if (
        not on_s > 0
        or not capacity_kg_s > 0
        or not 0.05 <= efficiency_frac <= 1.0
        or min(food_kg, idle_w, food_j_kg, preheat_j) < 0
    ):
        raise InputError(
            "energy", f"{on_s:g} s, {efficiency_frac:g}", "hours and capacity above 0, efficiency 5 to 100 %"
        )
    cooking = food_kg / capacity_kg_s
    if cooking > on_s:
        raise InputError(
            "food",
            f"{food_kg:.1f} kg",
            "what the fryer can cook in its hours: {most:.1f} kg",
            values={"most": capacity_kg_s * on_s},
        )
    return EnergyDay(
        preheat_j=preheat_j, idle_j=idle_w * (on_s - cooking), cook_j=food_kg * food_j_kg / efficiency_frac
    )


def cooking_efficiency(food_kg: float, food_j_kg: float, energy_j: float) -> float:
    """Cooking-energy efficiency: heat that went into the food over energy that went into the fryer."""
    if not energy_j > 0 or not food_kg > 0 or food_j_kg < 0:
        raise InputError("efficiency", f"{food_kg:g} kg, {energy_j:g} J", "above 0")
    return food_kg * food_j_kg / energy_j
