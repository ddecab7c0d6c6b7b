"""Energy of a fryer: a day by parts, heat-up and melt, start times under a cap, setback, and the quantities
of the test methods (ASTM F1361, F1964).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, inf

import numpy as np

from frywright.model.errors import InputError, Phrase
from frywright.model.fryer import CEILING_C, Fryer, Oil
from frywright.model.units import to_inside
from frywright.oil.filling import MELTED_C, melt_j
from frywright.physics.fry import FryHistory


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


def energy_day(
    on_s: float,
    food_kg: float,
    capacity_kg_s: float,
    idle_w: float,
    food_j_kg: float,
    efficiency_frac: float,
    preheat_j: float,
) -> EnergyDay:
    """A day of one fryer; the time that the food needs at the production capacity is cooking, the rest is
    idle. Raises InputError: more food than the hours can cook, or figures out of range.
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
            "what the fryer can cook in its hours: {most_kg}",
            most_kg=capacity_kg_s * on_s,
        )
    return EnergyDay(
        preheat_j=preheat_j, idle_j=idle_w * (on_s - cooking), cook_j=food_kg * food_j_kg / efficiency_frac
    )


# ---------------------------------------------------------------- heat-up

STEPS_K = 1.0
LOW_HEAT_FRAC = 0.25
"""Mean share of full heat while solid shortening melts under low heat (estimate, no source; the control's own
melt cycle wins).
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Warming:
    """A heat-up: how long, and the energy into oil and metal with what is lost on the way."""

    duration_s: float
    energy_j: float


def capacity_j_k(fryer: Fryer, oil: Oil, temp_c: float) -> float:
    """Heat that a kelvin takes: oil and the metal that follows it."""
    return fryer.oil_mass_kg * (oil.cp_0c_j_kgk + oil.cp_slope_j_kgk2 * temp_c) + fryer.metal_heat_j_k


def idle_w(fryer: Fryer, set_c: float, room_c: float) -> float:
    """Mean power that holds a fryer at a set point: what it loses to the room."""
    return fryer.loss_w_k * max(0.0, set_c - room_c)


def heat_up(fryer: Fryer, oil: Oil, from_c: float, to_c: float, room_c: float) -> Warming:
    """Time and energy from one temperature to another at full heat, solid shortening melted first under low
    heat. Raises InputError: a range that does not rise, or a fryer whose heat cannot reach it.
    """
    if not -10.0 <= from_c < to_c <= CEILING_C:
        raise InputError(
            "heat-up",
            Phrase("{from_c} to {to_c}", {"from_c": from_c, "to_c": to_c}),
            "a rise, up to {most_c}",
            most_c=230.0,
            where=fryer.name,
        )
    if fryer.heater_w <= idle_w(fryer, to_c, room_c) * 1.02:
        raise InputError(
            "heater",
            f"{fryer.heater_w:.0f} W",
            "more than the fryer loses at that temperature",
            where=fryer.name,
        )
    seconds = energy = 0.0
    steps = max(1, ceil((to_c - from_c) / STEPS_K))
    width = (to_c - from_c) / steps
    for n in range(steps):
        middle = from_c + (n + 0.5) * width
        net = fryer.heater_w - idle_w(fryer, middle, room_c)
        took = capacity_j_k(fryer, oil, middle) * width / net
        seconds, energy = seconds + took, energy + took * fryer.heater_w
    if fryer.solid_fat and from_c < MELTED_C:
        melt = melt_j(fryer.oil_mass_kg, from_c, MELTED_C) - fryer.oil_mass_kg * 2000.0 * (MELTED_C - from_c)
        seconds += melt / (LOW_HEAT_FRAC * fryer.heater_w) + (MELTED_C - from_c) * capacity_j_k(
            fryer, oil, MELTED_C
        ) / fryer.heater_w * (1 / LOW_HEAT_FRAC - 1)
        energy += melt
    return Warming(duration_s=seconds, energy_j=energy)


# ---------------------------------------------------------------- start times under a cap


@dataclass(frozen=True, slots=True, kw_only=True)
class Start:
    """One fryer of a morning: when it must be ready, how long it heats, what it draws heating and holding."""

    ready_s: float
    heat_up_s: float
    power_w: float
    idle_w: float


def start_times(starts: Sequence[Start], cap_w: float = inf) -> list[float]:
    """Latest start of every fryer so that each is ready in time and the heaters together stay under the cap;
    holding counts at its mean. Raises InputError: one fryer alone passes the cap with the others held: it
    cannot be done.
    """
    spare = cap_w - sum(s.idle_w for s in starts)
    found: dict[int, float] = {}
    for n in sorted(range(len(starts)), key=lambda n: (-starts[n].ready_s, -starts[n].heat_up_s)):
        one = starts[n]
        if one.power_w - one.idle_w > spare + 1e-9:
            raise InputError(
                "cap",
                cap_w,
                "at least {least_w}: one fryer heating while the others hold",
                least_w=float(sum(s.idle_w for s in starts) + one.power_w - one.idle_w),
                unit="w",
            )
        latest = one.ready_s - one.heat_up_s
        trials = [latest, *(t - one.heat_up_s for t in found.values() if t - one.heat_up_s < latest)]
        found[n] = max(t for t in trials if _peak(starts, found, n, t) <= spare + 1e-9)
    return [found[n] for n in range(len(starts))]


def _peak(starts: Sequence[Start], found: dict[int, float], n: int, start: float) -> float:
    """Most power above holding while fryer ``n`` heats from ``start``."""
    end = start + starts[n].heat_up_s
    edges = [start, *(t for t in found.values() if start < t < end)]
    extra = [starts[k].power_w - starts[k].idle_w for k in found]
    spans = [(t, t + starts[k].heat_up_s) for k, t in found.items()]
    own = starts[n].power_w - starts[n].idle_w
    return max(
        own + sum(w for w, (a, b) in zip(extra, spans, strict=True) if a <= edge < b) for edge in edges
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Setback:
    """Heat off at the start of a pause and on again in time: when, how cool the oil gets, what it saves."""

    on_again_s: float
    coolest_c: float
    saved_j: float


def setback(fryer: Fryer, oil: Oil, set_c: float, lowest_c: float, pause_s: float, room_c: float) -> Setback:
    """A pause with the heat set back to ``lowest_c`` and back at the set point by its end; loss follows the
    oil's temperature. Raises InputError: a setback that is not below the set point, or no pause.
    """
    if not room_c < lowest_c < set_c or not pause_s > 0:
        raise InputError(
            "setback", f"{lowest_c:.0f} °C", "between the room and the set point", where=fryer.name
        )
    heat, temp, t, lost, step = capacity_j_k(fryer, oil, set_c), set_c, 0.0, 0.0, 10.0
    while t < pause_s:
        back = heat * (set_c - temp) / (fryer.heater_w - idle_w(fryer, set_c, room_c))
        if t + back + step >= pause_s:
            break
        lost += idle_w(fryer, temp, room_c) * step
        temp = max(lowest_c, temp - idle_w(fryer, temp, room_c) * step / heat)
        t += step
    lost += idle_w(fryer, 0.5 * (temp + set_c), room_c) * (pause_s - t)
    return Setback(on_again_s=t, coolest_c=temp, saved_j=idle_w(fryer, set_c, room_c) * pause_s - lost)


# ---------------------------------------------------------------- test-method quantities

RECOVERED_K = to_inside(10.0, "f_diff")
"""Oil counts as recovered this far below its set point in the test methods (ASTM F1361, from memory)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HeavyLoad:
    """What a heavy-load cooking test reports, by the definitions of ASTM F1361 (open) and F1964 (pressure),
    from a simulation.
    """

    load_kg: float
    cook_s: float
    recovery_s: float
    energy_j: float
    food_j: float
    efficiency_frac: float
    capacity_kg_s: float
    cooking_rate_w: float


def heavy_load(history: FryHistory, input_share_frac: float = 1.0) -> HeavyLoad:
    """Cooking-energy efficiency, production capacity and recovery of a simulated load.

    Energy into the food is what the oil gave it: heater less loss to the room and less what oil and metal
    gained. Energy in is counted until the oil stands where it stood at the drop; capacity is the load over
    cook time and recovery. Raises InputError: a share outside 10 to 100 %.

    Parameters
    ----------
    input_share_frac : heat into the oil over energy into the fryer, 1 for electric; for gas from the plate
    """
    if not 0.1 <= input_share_frac <= 1.0:
        raise InputError("input share", input_share_frac, "0.1 to 1")
    plan = history.plan
    fryer, oil, room = plan.fryer, plan.oil, plan.site.room_temp_c
    start, lift = plan.oil_start_c - fryer.offset_k, history.lift_s
    inside = history.time_s <= lift
    at_lift = float(np.interp(lift, history.time_s, history.oil_c))
    lost = fryer.loss_w_k * float(np.trapezoid(history.oil_c[inside] - room, history.time_s[inside]))
    gained = capacity_j_k(fryer, oil, 0.5 * (start + at_lift)) * (at_lift - start)
    heater = history.heat_kwh * 3.6e6
    food = heater - lost - gained
    back = (
        heat_up(fryer, oil, at_lift, start, room)
        if at_lift < start - 1e-6
        else Warming(duration_s=0.0, energy_j=0.0)
    )
    near = start - RECOVERED_K
    recovery = heat_up(fryer, oil, at_lift, near, room).duration_s if at_lift < near - 1e-6 else 0.0
    energy = (heater + back.energy_j - max(0.0, gained)) / input_share_frac
    return HeavyLoad(
        load_kg=plan.load_kg,
        cook_s=lift,
        recovery_s=recovery,
        energy_j=energy,
        food_j=food,
        efficiency_frac=food / energy,
        capacity_kg_s=plan.load_kg / (lift + recovery),
        cooking_rate_w=energy / (lift + back.duration_s),
    )
