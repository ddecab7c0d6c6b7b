"""What can happen inside or at the end of a step: coating dry, heater switching, stage over."""

import math

from frywright.physics.kernels import inlined
from frywright.physics.kernels.layout import *
from frywright.physics.kernels.steam import GAS_STEAM_J_KGK
from frywright.physics.kernels.transport import enthalpy

SEED_M = 1e-7
SEED_WATER_M = 3e-7  # most crust that the first step of boiling on a dry surface may make
FILM_TOLERANCE = 1e-4
EVENT_TEMP_K = 1e-3
FLOOR_TOLERANCE = 1e-3
DRY_SHARE = 1e-4  # of its water that a piece at the floor may keep or lose too much
MOST_TRIES = 40.0  # then a step is kept as it is, and counted


@inlined
def shorter(control, k, share):
    """Mark the try of cook k as failed and ask for a shorter one."""
    control[WANTED, k] = max(control[WANTED, k], control[STEP, k])
    control[NEXT_STEP, k] = max(control[STEP, k] * min(max(share, 0.05), 0.95), 1e-6)
    control[REJECTED, k] += 1.0
    return False


@inlined
def accept(given, live, k):
    """Whether the step stands; otherwise the next, shorter, try is set."""
    lane, cook = given.lane, given.cook
    scalar, state, control, work = live.scalar, live.state, live.control, live.work
    if control[ATTEMPTS, k] > MOST_TRIES:
        control[FORCED, k] += 1.0
        return True
    jump = abs(control[TSAT, k] - control[TSAT_OLD, k])
    limit = cook[MAX_TSAT_STEP, k]
    if jump > 1.5 * limit and control[STEP, k] > 2e-3 and cook[PRESSURE_TABLE, k] == 0.0:
        shorter(control, k, limit / jump)
        control[WANTED, k] = 0.0
        return False
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        film, before = scalar[0, FREE, i], scalar[1, FREE, i]
        if work[CRUSTED, i] == 0.0 and film < -max(FILM_TOLERANCE * lane[FILM, i], 1e-7):
            if before <= 0.0:  # dry surface: boiling starts inside this step
                if film < -SEED_WATER_M * lane[WATER, i] and control[STEP, k] > 1e-7:
                    shorter(control, k, 0.3)
                    control[WANTED, k] = 0.0
                    return False
            elif control[STEP, k] > 1e-5:
                return shorter(control, k, before / (before - film))
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        floor, before = lane[FLOOR_VOLUME, i], scalar[1, FRONT_VOLUME, i]
        after = scalar[0, FRONT_VOLUME, i]
        if work[SPENT, i] == 0.0 and after < floor * (1.0 - FLOOR_TOLERANCE) and control[STEP, k] > 1e-4:
            return shorter(control, k, (before - floor) / (before - after))
        water = lane[WATER_START, i]
        if (
            work[SPENT, i] == 1.0
            and scalar[0, EVAPORATED, i] > water * (1.0 + DRY_SHARE)
            and control[STEP, k] > 1e-4
        ):
            left = water - scalar[1, EVAPORATED, i]
            return shorter(control, k, left / (scalar[0, EVAPORATED, i] - scalar[1, EVAPORATED, i]))
    if cook[OIL_TABLE, k] == 0.0 and cook[BAND, k] == 0.0:
        half = 0.5 * cook[SWING, k]
        aim = control[AIM, k] + (half if control[HEATING, k] > 0.0 else -half)
        old, new = state[1, OIL_TEMP, k] - aim, state[0, OIL_TEMP, k] - aim
        if control[HEATING, k] == 0.0:
            old, new = -old, -new
        if old < -EVENT_TEMP_K and new > 4.0 * EVENT_TEMP_K and control[STEP, k] > 2e-3:
            return shorter(control, k, old / (old - new))
    return stage_not_overshot(given, live, k)


@inlined
def coldest(given, live, k):
    """Coldest meat point over the lanes of cook k [degC]."""
    cook = given.cook
    work = live.work
    low = 1e9
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        low = min(low, work[COLDEST, i])
    return low


@inlined
def condition(given, live, k, level, core):
    """Signed distance past the condition that ends stage ``number``; positive once met."""
    cook, stage = given.cook, given.stage
    state, number = live.state, int(live.control[STAGE, k])
    kind, value = int(stage[S_UNTIL, number, k]), stage[S_VALUE, number, k]
    if kind == UNTIL_OIL_ABOVE:
        return state[level, OIL_TEMP, k] - value
    if kind == UNTIL_CORE_ABOVE:
        return core - value
    gauge = state[level, PRESSURE, k] - cook[ATMOSPHERE, k]
    if kind == UNTIL_GAUGE_ABOVE:
        return gauge - value
    if kind == UNTIL_GAUGE_BELOW:
        return value - gauge
    return -1.0


@inlined
def stage_not_overshot(given, live, k):
    """Shorten a step that runs well past the condition ending its stage."""
    stage = given.stage
    control = live.control
    number = int(control[STAGE, k])
    kind = int(stage[S_UNTIL, number, k])
    if kind == UNTIL_TIME or control[STEP, k] < 0.05:
        return True
    old = condition(given, live, k, 1, control[CORE_OLD, k])
    new = condition(given, live, k, 0, coldest(given, live, k))
    if old < 0.0 and new > 0.02 * (new - old) and old / (old - new) < 0.95:
        return shorter(control, k, old / (old - new))
    return True


@inlined
def _volume(c, x, s):
    """Volume enclosed by face x when the front stands at s [m]."""
    return c.v0[x] + s * (c.v1[x] + s * (c.v2[x] + s * c.v3[x]))


@inlined
def start_crust(given, live, i, n_core):
    """Give lane i a seed of crust once its coating water is used up."""
    lane, c, scalar, work = given.lane, live.cells, live.scalar, live.work
    rest = scalar[1, FREE, i]
    n_lane, front = lane.shape[1], n_core * lane.shape[1] + i
    held = lane[WATER, i] * c.phi_old[front - n_lane]
    seed = max(SEED_M, -rest / held)
    s = lane[RADIUS, i] - seed
    dried = c.v_old[front] - _volume(c, front, s)
    wet = c.stored[front - n_lane] / (c.v_old[front] - c.v_old[front - n_lane])
    for x in range(front - n_lane, -1, -n_lane):  # each cell hands a slice outward, heat and all
        size, low = c.v_old_up[x] - c.v_old[x], _volume(c, x, s)
        heat = c.stored[x] - c.stored[x] / size * (c.v_old_up[x] - _volume(c, x + n_lane, s))
        if x >= n_lane:
            heat += c.stored[x - n_lane] / (c.v_old[x] - c.v_old[x - n_lane]) * (c.v_old[x] - low)
            share = (c.v_old[x] - low) / (_volume(c, x + n_lane, s) - low)
            c.phi_old[x] += (c.phi_old[x - n_lane] - c.phi_old[x]) * share
        density = heat / (_volume(c, x + n_lane, s) - low) - c.stored[x] / size
        t = c.t_old[x]
        inside = (
            lane[C_BONE, i]
            if x // n_lane < int(lane[BONE_CELLS, i])
            else lane[C0, i] + t * (lane[C1, i] + t * lane[C2, i])
        )
        c.t_old[x] += density / inside
    for x in range(i, c.v_old.shape[0], n_lane):
        c.v_old[x] = _volume(c, x, s)
    for x in range(i, front, n_lane):
        size = c.v_old_up[x] - c.v_old[x]
        c.stored[x] = size * enthalpy(c.t_old[x], lane, i, x // n_lane, n_core)
    for x in range(front, c.v_old_up.shape[0], n_lane):
        c.t_old[x] = work[FRONT_TEMP, i]
        c.stored[x] = (c.v_old_up[x] - c.v_old[x]) * lane[C_CRUST, i] * c.t_old[x]
    scalar[1, FRONT, i], scalar[1, FRONT_VOLUME, i] = s, c.v_old[front]
    scalar[1, HELD, i] -= dried * held
    scalar[1, FREE, i] = rest + dried * held
    scalar[1, HEAT_OUT, i] += dried * (wet - lane[C_CRUST, i] * work[FRONT_TEMP, i])
    work[CRUSTED, i], work[RESTART, i] = 1.0, 1.0


@inlined
def switch_heater(given, live, k):
    """On/off control at the end of a step; a switch restarts the oil history."""
    cook, state, control = given.cook, live.state, live.control
    number = int(control[STAGE, k])
    aim, half = given.stage[S_SET, number, k], 0.5 * cook[SWING, k]
    oil, before = state[1, OIL_TEMP, k], control[HEATING, k]
    if oil >= aim + half - EVENT_TEMP_K:
        control[HEATING, k] = 0.0
    elif oil <= aim - half + EVENT_TEMP_K:
        control[HEATING, k] = 1.0
    if control[HEATING, k] != before:
        control[OIL_RESTART, k] = 1.0


@inlined
def air_left(given, live, k):
    """Share of air in the headspace once the steam given off so far has stirred and displaced it."""
    cook, made = given.cook, 0.0
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        made += given.lane[AREA, i] * live.scalar[1, EVAPORATED, i]
    volume = made * GAS_STEAM_J_KGK * cook[HEAD_TEMP_K, k] / cook[ATMOSPHERE, k]
    return math.exp(-max(volume, 0.0) / cook[HEAD_VOLUME, k])


@inlined
def enter_stage(given, live, k):
    """Apply lid state and set point of the current stage of cook k, or finish the cook.

    A stage that ends on the clock gets what is left of its time; a vent without pressure is none.
    """
    cook, stage, state, control = given.cook, given.stage, live.state, live.control
    number = int(control[STAGE, k])
    gauge = state[1, PRESSURE, k] - cook[ATMOSPHERE, k]
    while number < stage.shape[1]:
        if stage[S_ENDS_AT, number, k] >= 0.0:
            left = stage[S_ENDS_AT, number, k] - control[TIME, k]
            stage[S_DURATION, number, k] = left if left > 1e-6 else 0.0
        vented = stage[S_LID, number, k] == LID_VENT and stage[S_UNTIL, number, k] == UNTIL_GAUGE_BELOW
        if not (stage[S_DURATION, number, k] == 0.0 or (vented and gauge <= stage[S_VALUE, number, k])):
            break
        number += 1
    control[STAGE, k], control[STAGE_START, k] = number, control[TIME, k]
    if number >= stage.shape[1] or stage[S_DURATION, number, k] < 0.0:
        control[DONE, k] = 1.0
        return
    lid = stage[S_LID, number, k]
    if lid == LID_PRESSURE and control[CLOSED, k] == LID_OPEN:
        state[1, AIR_PRESSURE, k] = cook[ATMOSPHERE, k] * air_left(given, live, k)
    if lid != control[CLOSED, k]:
        control[CLOSED, k], control[LID_SINCE, k] = lid, control[TIME, k]
        control[NEXT_STEP, k], control[OIL_RESTART, k] = cook[FIRST_STEP, k], 1.0
        if lid in (LID_OPEN, LID_REST):
            state[1, PRESSURE, k] = cook[ATMOSPHERE, k]
            state[1, AIR_PRESSURE, k] = cook[ATMOSPHERE, k]
            control[TSAT_OLD, k] = cook[ATMOSPHERE_BOILING, k]
        for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
            live.work[RESTART, i] = 1.0
    switch_heater(given, live, k)
