"""The vat around the pieces: oil, heater, headspace steam and air, lid, valves.

The pressure is one implicit scalar per cook. Every term of its balance grows with pressure
(less evaporation, more outflow, more condensation), so the root is single and a safeguarded
Newton step finds it.
"""

import math

from frywright.physics.kernels import inlined
from frywright.physics.kernels.layout import *
from frywright.physics.kernels.steam import (
    GAS_AIR_J_KGK,
    GAS_STEAM_J_KGK,
    KELVIN,
    boiling_temp_c,
    latent_heat_j_kg,
    saturation_pa,
)
from frywright.physics.kernels.transport import flash_rate, flash_start

SMOOTHING_PA = 200.0  # orifice law regularised below this difference
EMPTY_PA = 2000.0  # steam pressure floor of the condensation term [Pa]


@inlined
def orifice(area, density, difference):
    """Mass flow [kg/s] C_d A sqrt(2 rho dp), regularised at zero, and its slope in dp."""
    if difference <= 0.0 or area <= 0.0:
        return 0.0, 0.0
    scale = area * math.sqrt(2.0 * density)
    root = math.sqrt(difference + SMOOTHING_PA)
    return scale * difference / root, scale * (0.5 * difference + SMOOTHING_PA) / (root * root * root)


@inlined
def lane_evaporation(lane, work, cells, i, boiling, latent, n_core, damp):
    """Front flux, flash flux [kg/(m2 s)], front temperature, slope of their sum in boiling temp."""
    if work[SPENT, i] > 1.0:
        return 0.0, 0.0, work[BALANCE_A, i] / work[BALANCE_B, i], 0.0
    first = flash_start(cells, lane, i, boiling, n_core)
    work[FLASH_FROM, i] = first
    if first < n_core:
        heat, slope = flash_rate(cells, work, i, first, boiling, n_core)
        crust_g = work[CRUST_G, i]
        if work[CRUSTED, i] > 0.0:
            x = n_core * lane.shape[1] + i
            a, b = crust_g * cells.p[x], crust_g * (1.0 - cells.q[x])
        else:
            a = crust_g * work[SOURCE_TEMP, i] - work[COAT_PAST, i]
            b = crust_g + work[COAT_G, i]
        crust = a - b * boiling  # negative where a cooling crust draws heat from the core
        if heat > 0.0 and crust >= 0.0:
            return crust / latent, heat / latent, boiling, (slope - b) / latent
        if heat + crust > 0.0:
            return 0.0, (heat + crust) / latent, boiling, (slope - b) / latent
    a, b = work[BALANCE_A, i], work[BALANCE_B, i]
    if work[IN_AIR, i] > 0.0 and lane[DIFFUSIVITY, i] > 0.0:
        front = dry_in_air(work, i, min(a / b, boiling), latent, damp)
        return max(a - b * front, 0.0) / latent, 0.0, front, 0.0
    if a > b * boiling:
        return (a - b * boiling) / latent, 0.0, boiling, -b / latent
    return 0.0, 0.0, a / b, 0.0


@inlined
def dry_in_air(work, i, hottest, latent, damp):
    """Temperature of the evaporation plane of a piece in air: heat reaching it = vapour leaving it."""
    a, b, path = work[BALANCE_A, i], work[BALANCE_B, i], work[VAPOUR_PATH, i]
    t = min(work[FRONT_TEMP, i], hottest)
    for _ in range(8):
        kelvin = t + KELVIN
        vapour = saturation_pa(max(t, 0.0)) / (GAS_STEAM_J_KGK * kelvin)
        gap = a - b * t - latent * max(vapour - damp, 0.0) / path
        slope = -b
        if vapour > damp:
            slope -= latent * vapour * (latent / (GAS_STEAM_J_KGK * kelvin) - 1.0) / kelvin / path
        moved = gap / slope
        t = min(t - moved, hottest)
        if abs(moved) < 1e-6:
            break
    return t


@inlined
def evaporate(lane, cook, work, cells, k, boiling, n_core):
    """Steam given off by all lanes of cook k [kg/s], its slope; stores the lane results."""
    latent = latent_heat_j_kg(boiling)
    total, slope, damp = 0.0, 0.0, cook[AIR_VAPOUR, k]
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        flux, flash, front, rate = lane_evaporation(lane, work, cells, i, boiling, latent, n_core, damp)
        work[FLUX, i], work[FLASH, i], work[FRONT_TEMP, i] = flux, flash, front
        total += lane[AREA, i] * (flux + flash)
        slope += lane[AREA, i] * rate
    return total, slope


@inlined
def outflow(cook, k, pressure, density, vent_open):
    """Gas leaving through relief, leak and vent [kg/s] and its slope in pressure."""
    gauge = pressure - cook[ATMOSPHERE, k]
    area = cook[LEAK_AREA, k] + (cook[VENT_AREA, k] if vent_open else 0.0)
    flow, slope = orifice(area, density, gauge)
    over = gauge - cook[RELIEF_GAUGE, k]
    if over > 0.0:
        flow += cook[RELIEF_SLOPE, k] * over
        slope += cook[RELIEF_SLOPE, k]
    return flow, slope


@inlined
def condense(cook, control, state, k, steam_pa):
    """Steam condensing on the lid [kg/s], slope in steam pressure, and the new lid temperature."""
    hist = control[CG_OLD, k] * state[1, LID_TEMP, k] + control[CG_OLDER, k] * state[2, LID_TEMP, k]
    room = cook[LID_ROOM_UA, k]
    base = cook[LID_HEAT, k] * control[CG_NEW, k] + room
    free = (room * cook[ROOM_TEMP, k] - cook[LID_HEAT, k] * hist) / base
    steam_pa = max(steam_pa, EMPTY_PA)
    dew = boiling_temp_c(steam_pa)
    if dew <= free:
        return 0.0, 0.0, free
    ua = cook[LID_UA, k]
    lid = (free * base + ua * dew) / (base + ua)
    latent = latent_heat_j_kg(dew)
    kelvin = dew + KELVIN
    slope = GAS_STEAM_J_KGK * kelvin * kelvin / (steam_pa * latent)
    share = ua * base / (base + ua) / latent
    return share * (dew - free), share * slope, lid


@inlined
def solve_pressure(lane, cook, control, state, work, cells, k, n_core):
    """Headspace pressure of a closed vat at the new level; stores pressure, air and lid."""
    g0 = control[CG_NEW, k]
    hist = control[CG_OLD, k] * state[1, PRESSURE, k] + control[CG_OLDER, k] * state[2, PRESSURE, k]
    store = cook[HEAD_VOLUME, k] / cook[HEAD_TEMP_K, k]
    kelvin_gas, atmosphere = cook[HEAD_TEMP_K, k], cook[ATMOSPHERE, k]
    vent_open = control[CLOSED, k] == LID_VENT
    air = state[0, AIR_PRESSURE, k]
    low, high = 0.3 * atmosphere, atmosphere + cook[RELIEF_GAUGE, k] + 2e5
    p = min(max(state[0, PRESSURE, k], low), high)
    out = 0.0
    density = 1.0
    for _ in range(60):
        steam = max(p - air, 0.0)
        boiling = boiling_temp_c(p)
        made, d_made = evaporate(lane, cook, work, cells, k, boiling, n_core)
        density = (steam / GAS_STEAM_J_KGK + air / GAS_AIR_J_KGK) / kelvin_gas
        mean_gas = p / (density * kelvin_gas)
        out, d_out = outflow(cook, k, p, density, vent_open)
        drawn, d_drawn = orifice(
            cook[BREATHER_AREA, k], atmosphere / (GAS_AIR_J_KGK * kelvin_gas), atmosphere - p
        )
        lost, d_lost, lid = condense(cook, control, state, k, steam)
        state[0, LID_TEMP, k] = lid
        kelvin = boiling + KELVIN
        d_boil = GAS_STEAM_J_KGK * kelvin * kelvin / (p * latent_heat_j_kg(boiling))
        gap = store * (g0 * p + hist) - GAS_STEAM_J_KGK * (made - lost)
        gap += mean_gas * out - GAS_AIR_J_KGK * drawn
        slope = store * g0 - GAS_STEAM_J_KGK * (d_made * d_boil - d_lost)
        slope += mean_gas * d_out + GAS_AIR_J_KGK * d_drawn
        if gap > 0.0:
            high = min(high, p)
        else:
            low = max(low, p)
        trial = p - gap / slope
        if not (low < trial < high):
            trial = 0.5 * (low + high)
        moved = abs(trial - p)
        p = trial
        if moved < 0.05:
            break
    air_hist = (
        control[CG_OLD, k] * state[1, AIR_PRESSURE, k] + control[CG_OLDER, k] * state[2, AIR_PRESSURE, k]
    )
    drawn, _ = orifice(cook[BREATHER_AREA, k], atmosphere / (GAS_AIR_J_KGK * kelvin_gas), atmosphere - p)
    inflow = GAS_AIR_J_KGK * drawn / store
    swept = out / (density * cook[HEAD_VOLUME, k])
    state[0, AIR_PRESSURE, k] = min(max((inflow - air_hist) / (g0 + swept), 0.0), p)
    state[0, PRESSURE, k] = p
    return boiling_temp_c(p)


@inlined
def heater_power(cook, control, k, oil, set_temp):
    """Heat into the oil [W]: on/off inside its band, or proportional below the set point."""
    if cook[BAND, k] > 0.0:
        share = (set_temp + 0.5 * cook[BAND, k] - oil) / cook[BAND, k]
        return cook[HEATER, k] * min(max(share, 0.0), 1.0)
    return cook[HEATER, k] * control[HEATING, k]


@inlined
def solve_oil(lane, cook, control, state, work, k, oil_g):
    """Oil temperature at the new level from heater, pieces and loss to the room."""
    g0, g1, g2 = oil_g
    taken, slope = 0.0, cook[LOSS_UA, k]
    oil = state[0, OIL_TEMP, k]
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        if work[IN_AIR, i] == 0.0:
            taken += lane[AREA, i] * work[SURFACE_FLUX, i]
            slope += lane[AREA, i] * work[SURFACE_U, i]
    taken += cook[LOSS_UA, k] * (oil - cook[ROOM_TEMP, k])
    power = heater_power(cook, control, k, oil, control[AIM, k])
    if cook[BAND, k] > 0.0 and 0.0 < power < cook[HEATER, k]:
        slope += cook[HEATER, k] / cook[BAND, k]
    heat = 0.0
    for level, g in ((0, g0), (1, g1), (2, g2)):
        heat += g * oil_enthalpy(cook, k, state[level, OIL_TEMP, k])
    capacity = cook[OIL_MASS, k] * (cook[OIL_CP0, k] + cook[OIL_CP1, k] * oil) + cook[METAL_HEAT, k]
    state[0, OIL_TEMP, k] = oil - (heat + taken - power) / (g0 * capacity + slope)
    for row, rate in ((HEATER_HEAT, power), (ROOM_HEAT, taken)):
        past = g1 * state[1, row, k] + g2 * state[2, row, k]
        state[0, row, k] = (rate - past) / g0


@inlined
def oil_enthalpy(cook, k, temp):
    """Heat stored in oil and vat metal [J], zero at 0 degC."""
    oil = cook[OIL_MASS, k] * temp * (cook[OIL_CP0, k] + 0.5 * cook[OIL_CP1, k] * temp)
    return oil + cook[METAL_HEAT, k] * temp
