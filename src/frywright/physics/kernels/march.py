"""Marches a group of cooks to the end of their programs with variable-step BDF2.

Each pass tries one step of every unfinished cook, each with its own step length. A step is
tried again, shorter, when an event falls inside it: coating water used up, heater switching,
a stage condition met, or the boiling temperature moving too far.
"""

import math
from typing import NamedTuple

import numpy as np
from numba import njit

from frywright.physics.kernels import inlined
from frywright.physics.kernels.events import (
    DRY_SHARE,
    FILM_TOLERANCE,
    FLOOR_TOLERANCE,
    accept,
    coldest,
    condition,
    enter_stage,
    start_crust,
    switch_heater,
)
from frywright.physics.kernels.layout import *
from frywright.physics.kernels.steam import boiling_temp_c
from frywright.physics.kernels.transport import (
    Cells,
    core_properties,
    eliminate_core,
    eliminate_crust,
    front_and_surface,
    front_balance,
    place_faces,
    set_bone,
    spread,
    substitute,
    sweep_faces,
)
from frywright.physics.kernels.vat import evaporate, solve_oil, solve_pressure
from frywright.physics.kernels.water import keep_held, let_go, move_front, wet_coat

AFTER_FILM = 5.0  # longest step after the coating water is gone, in first steps
GROWTH = 1.4
AFTER_EVENT = 4.0  # largest growth after a step that an event had shortened
FINE, TOO_MANY_STEPS, STAGE_TIMED_OUT = 0, 1, 2


class Given(NamedTuple):
    """What a march is told: parameters, stages, prescribed curves, grid."""

    lane: np.ndarray
    cook: np.ndarray
    stage: np.ndarray
    table: np.ndarray
    bone_dist: np.ndarray
    n_core: int
    passes: int
    steady_m: float


class Live(NamedTuple):
    """What a march changes: unknowns at three time levels, control rows, work space."""

    scalar: np.ndarray
    state: np.ndarray
    control: np.ndarray
    work: np.ndarray
    cells: Cells


class Trace(NamedTuple):
    """What a march writes down after every step."""

    cook: np.ndarray
    lane: np.ndarray


@inlined
def bdf(step, last, restart):
    """Coefficients of d/dt at the new level; backward Euler after a restart."""
    if restart:
        return 1.0 / step, -1.0 / step, 0.0
    w = step / last
    return (1.0 + 2.0 * w) / (1.0 + w) / step, -(1.0 + w) / step, w * w / (1.0 + w) / step


@inlined
def table_at(table, k, time):
    """Linear interpolation in a prescribed curve [time, value; point, cook], held at its ends."""
    n = table.shape[1]
    if time <= table[0, 0, k]:
        return table[1, 0, k]
    for i in range(1, n):
        if time <= table[0, i, k]:
            t0, t1 = table[0, i - 1, k], table[0, i, k]
            share = (time - t0) / (t1 - t0)
            return table[1, i - 1, k] + share * (table[1, i, k] - table[1, i - 1, k])
    return table[1, n - 1, k]


@inlined
def choose_step(given, live, k):
    """Length of the next try of cook k: growth, end of stage, end of the coating water."""
    cook, stage = given.cook, given.stage
    scalar, control, work = live.scalar, live.control, live.work
    early = cook[EARLY_STEP, k] + cook[EARLY_SHARE, k] * (control[TIME, k] - control[LID_SINCE, k])
    step = min(control[NEXT_STEP, k], cook[MAX_STEP, k], early)
    number = int(control[STAGE, k])
    left = control[STAGE_START, k] + stage[S_DURATION, number, k] - control[TIME, k]
    if left <= step * 1.000001:
        control[WANTED, k] = max(control[WANTED, k], step)
        step = left
    elif left < 2.0 * step:
        step = 0.5 * left
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        film, flux = scalar[1, FREE, i], work[FLUX, i]
        if work[CRUSTED, i] > 0.0:
            film = (scalar[1, FRONT_VOLUME, i] - given.lane[FLOOR_VOLUME, i]) * given.lane[WATER, i]
            if work[SPENT, i] == 1.0:
                film = given.lane[WATER_START, i] - scalar[1, EVAPORATED, i]
        else:
            flux -= work[DRIPPED, i] / control[LAST_STEP, k]
        if film > 0.0 and flux > 0.0:
            step = min(step, max(film / flux, 1e-3))
    control[STEP, k] = step


@inlined
def predict(given, live, k):
    """Trial values of the new level by extrapolation; BDF coefficients of cook and lanes."""
    lane, cook, stage, table = given.lane, given.cook, given.stage, given.table
    scalar, state, control, work = live.scalar, live.state, live.control, live.work
    step, last = control[STEP, k], control[LAST_STEP, k]
    now = control[TIME, k] + step
    number = int(control[STAGE, k])
    control[AIM, k] = stage[S_SET, number, k]
    restart = control[OIL_RESTART, k] > 0.0
    control[CG_NEW, k], control[CG_OLD, k], control[CG_OLDER, k] = bdf(step, last, restart)
    for row in range(N_COOK_SCALAR):
        state[0, row, k] = state[1, row, k]
        if not restart:
            state[0, row, k] += step / last * (state[1, row, k] - state[2, row, k])
    if cook[OIL_TABLE, k] > 0.0:
        state[0, OIL_TEMP, k] = table_at(table[0], k, now)
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        g0, g1, g2 = bdf(step, last, work[RESTART, i] > 0.0)
        work[G_NEW, i], work[G_OLD, i], work[G_OLDER, i] = g0, g1, g2
        ratio = 0.0 if work[RESTART, i] > 0.0 else step / last
        work[RATIO, i] = ratio
        for row in range(N_SCALAR):
            value = scalar[1, row, i]
            scalar[0, row, i] = value + ratio * (value - scalar[2, row, i])
        scalar[0, FRONT, i] = max(min(scalar[0, FRONT, i], scalar[1, FRONT, i]), 0.3 * lane[RADIUS, i])
        work[FLUX, i] = max(scalar[0, FLUX_THEN, i], 0.0)
        work[IN_AIR, i] = 1.0 if stage[S_LID, number, k] == LID_REST else 0.0


@inlined
def weigh_history(live):
    """Trial temperatures, and the known parts of the storage and volume derivatives."""
    c, work = live.cells, live.work
    spread(work, G_NEW, c.rate)
    spread(work, G_OLD, c.rate_old)
    spread(work, G_OLDER, c.rate_older)
    spread(work, RATIO, c.ratio)
    for x in range(c.t.shape[0]):
        c.t[x] = c.t_old[x] + c.ratio[x] * (c.t_old[x] - c.t_older[x])
    for x in range(c.v.shape[0]):
        c.past[x] = c.rate_old[x] * c.v_old[x] + c.rate_older[x] * c.v_older[x]
        c.hist[x] = c.rate_old[x] * c.stored[x] + c.rate_older[x] * c.stored_older[x]


@inlined
def set_sources(given, live, k):
    """Temperature seen by the surface and surface coefficient of the lanes of cook k."""
    lane, cook = given.lane, given.cook
    scalar, state, work = live.scalar, live.state, live.work
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        if work[IN_AIR, i] > 0.0:
            work[SOURCE_TEMP, i] = cook[AIR_TEMP, k]
            scalar[0, H_NOW, i] = cook[AIR_H, k]
            continue
        work[SOURCE_TEMP, i] = state[0, OIL_TEMP, k]
        still = lane[H_STILL, i]
        if lane[STILL_REFERENCE, i] > 0.0:  # natural convection: h ~ dT^(1/4)
            apart = abs(work[SOURCE_TEMP, i] - work[SURFACE_TEMP, i]) / lane[STILL_REFERENCE, i]
            still *= math.sqrt(math.sqrt(apart))
        aim = min(still + lane[H_GAIN, i] * (work[FLUX, i] + work[FLASH, i]), lane[H_CAP, i])
        past = work[G_OLD, i] * scalar[1, H_NOW, i] + work[G_OLDER, i] * scalar[2, H_NOW, i]
        lag = lane[H_LAG, i]
        scalar[0, H_NOW, i] = (aim - lag * past) / (1.0 + lag * work[G_NEW, i])


@inlined
def assemble(given, live):
    """Everything about the pieces that does not depend on the pressure."""
    lane, n_core = given.lane, given.n_core
    scalar, work, c = live.scalar, live.work, live.cells
    place_faces(c, scalar)
    core_properties(c, lane, scalar, work, n_core)
    set_bone(c, given.bone_dist, scalar, lane)
    sweep_faces(c, lane, work, n_core)
    front_and_surface(c, scalar, lane, work, n_core)
    eliminate_core(c, work.shape[1], n_core)
    eliminate_crust(c, lane, work, n_core)
    front_balance(c, work, n_core)


@inlined
def close_pass(given, live, k):
    """Pressure and evaporation of one cook from the assembled lanes."""
    lane, cook, table, n_core = given.lane, given.cook, given.table, given.n_core
    state, control, work, cells = live.state, live.control, live.work, live.cells
    if cook[PRESSURE_TABLE, k] > 0.0:
        state[0, PRESSURE, k] = table_at(table[1], k, control[TIME, k] + control[STEP, k])
        boiling = boiling_temp_c(state[0, PRESSURE, k])
    elif control[CLOSED, k] == LID_PRESSURE or control[CLOSED, k] == LID_VENT:
        boiling = solve_pressure(lane, cook, control, state, work, cells, k, n_core)
    else:
        state[0, PRESSURE, k] = cook[ATMOSPHERE, k]
        state[0, AIR_PRESSURE, k] = cook[ATMOSPHERE, k]
        boiling = cook[ATMOSPHERE_BOILING, k]
        g0, room = control[CG_NEW, k], cook[LID_ROOM_UA, k]
        past = control[CG_OLD, k] * state[1, LID_TEMP, k] + control[CG_OLDER, k] * state[2, LID_TEMP, k]
        heat = cook[LID_HEAT, k]
        state[0, LID_TEMP, k] = (room * cook[ROOM_TEMP, k] - heat * past) / (heat * g0 + room)
    control[TSAT, k] = boiling
    evaporate(lane, cook, work, cells, k, boiling, n_core)


@inlined
def read_core(given, live, k):
    """Coldest meat temperature of each lane: centre by parabola, or the meat beside the bone."""
    lane, cook, bone_dist = given.lane, given.cook, given.bone_dist
    scalar, work, temp = live.scalar, live.work, live.cells.t
    n_lane = lane.shape[1]
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        bone = int(lane[BONE_CELLS, i])
        if bone == 0:
            t0, t1 = temp[i], temp[n_lane + i]
            work[COLDEST, i] = t0 - lane[CENTRE_WEIGHT, i] * (t1 - t0)
        else:
            left, right = temp[(bone - 1) * n_lane + i], temp[bone * n_lane + i]
            half_meat = bone_dist[1, i] * (scalar[0, FRONT, i] - lane[BONE_RADIUS, i])
            k_meat = lane[K0, i] + right * (lane[K1, i] + right * lane[K2, i])
            g_left, g_right = lane[K_BONE, i] / bone_dist[0, i], k_meat / half_meat
            work[COLDEST, i] = (g_left * left + g_right * right) / (g_left + g_right)


@inlined
def shift(every, keep, new, old, older):
    """Move new to old and old to older where ``keep`` says so (everywhere if ``every``)."""
    if every:
        for x in range(new.shape[0]):
            older[x] = old[x]
        for x in range(new.shape[0]):
            old[x] = new[x]
        return
    for x in range(new.shape[0]):
        older[x] = old[x] if keep[x] > 0.0 else older[x]
    for x in range(new.shape[0]):
        old[x] = new[x] if keep[x] > 0.0 else old[x]


@inlined
def store_cells(given, live):
    """Make the new level the old one in the cells of all lanes marked KEEP."""
    c, n_lane = live.cells, given.lane.shape[1]
    kept = 0
    for i in range(n_lane):
        kept += int(live.work[KEEP, i])
    if kept == 0:
        return
    if kept < n_lane:
        spread(live.work, KEEP, c.keep)
    keep_held(given, live, kept)
    shift(kept == n_lane, c.keep, c.v, c.v_old, c.v_older)
    shift(kept == n_lane, c.keep, c.t, c.t_old, c.t_older)
    for x in range(c.v_old_up.shape[0]):
        t = c.t_old[x]
        heat = t * (c.c0[x] + t * (0.5 * c.c1[x] + t * c.c2[x] * (1.0 / 3.0)))
        c.rhs[x] = heat * (c.v_old_up[x] - c.v_old[x])
    shift(kept == n_lane, c.keep, c.rhs, c.stored, c.stored_older)


@inlined
def store_scalars(given, live, k):
    """Make the new level the old one in the scalars of cook k and its lanes."""
    cook = given.cook
    scalar, state, work = live.scalar, live.state, live.work
    for row in range(N_COOK_SCALAR):
        state[2, row, k], state[1, row, k] = state[1, row, k], state[0, row, k]
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        for row in range(N_SCALAR):
            scalar[2, row, i], scalar[1, row, i] = scalar[1, row, i], scalar[0, row, i]
        # Flashing meat follows the boiling temperature; a kink in it (lid opened, prescribed
        # curve) would leave BDF2 with a memory that overshoots. A vent falls smoothly.
        kinked = work[FLASH, i] > 0.0 and live.control[CLOSED, k] != LID_VENT
        work[RESTART, i] = 1.0 if kinked else 0.0


@inlined
def write_down(given, live, trace, k):
    """Append the accepted step of cook k to its trace."""
    row = int(live.control[STEPS, k])
    if row >= trace.cook.shape[0]:
        return
    state, scalar, work, out = live.state, live.scalar, live.work, trace.cook
    out[row, TR_TIME, k] = live.control[TIME, k]
    out[row, TR_OIL, k] = state[1, OIL_TEMP, k]
    out[row, TR_PRESSURE, k] = state[1, PRESSURE, k]
    out[row, TR_HEATER, k] = state[1, HEATER_HEAT, k]
    out[row, TR_STAGE, k] = live.control[STAGE, k]
    out[row, TR_LID_TEMP, k] = state[1, LID_TEMP, k]
    out[row, TR_STEAM, k] = max(state[1, PRESSURE, k] - state[1, AIR_PRESSURE, k], 0.0)
    for i in range(int(given.cook[FIRST_LANE, k]), int(given.cook[LAST_LANE, k])):
        trace.lane[row, TL_CORE, i] = work[COLDEST, i]
        x = (given.n_core - 1) * given.lane.shape[1] + i
        last = live.cells.t_old[x]
        trace.lane[row, TL_FRONT_TEMP, i] = last + work[MEAT_SHARE, i] * (work[FRONT_TEMP, i] - last)
        trace.lane[row, TL_SURFACE, i] = work[SURFACE_TEMP, i]
        trace.lane[row, TL_CRUST, i] = given.lane[RADIUS, i] - scalar[1, FRONT, i]
        trace.lane[row, TL_EVAPORATED, i] = scalar[1, EVAPORATED, i]
        trace.lane[row, TL_H, i] = scalar[1, H_NOW, i]
        trace.lane[row, TL_FILM, i] = scalar[1, FREE, i]
        trace.lane[row, TL_HEAT, i] = scalar[1, HEAT_IN, i]
        write_crust(given, live, trace, row, i)


@inlined
def write_crust(given, live, trace, row, i):
    """Crust temperatures of lane i at CRUST_DEPTHS, linear between the middles of cells."""
    n_lane, n_core, temp = given.lane.shape[1], given.n_core, live.cells.t_old
    n_crust = temp.shape[0] // n_lane - n_core - 1
    for number in range(len(CRUST_DEPTHS)):
        place = (1.0 - CRUST_DEPTHS[number]) * n_crust - 0.5
        inner = min(max(int(place), 0), n_crust - 2)
        share = place - inner
        x = (n_core + inner) * n_lane + i
        trace.lane[row, TL_CRUST_OUTER + number, i] = (1.0 - share) * temp[x] + share * temp[x + n_lane]


@inlined
def finish_step(given, live, trace, k):
    """Store an accepted step of cook k, handle its events, set the next step."""
    cook, control, n_core = given.cook, live.control, given.n_core
    jump = abs(control[TSAT, k] - control[TSAT_OLD, k])
    control[TSAT_OLD, k] = control[TSAT, k]
    store_scalars(given, live, k)
    step = control[STEP, k]
    control[TIME, k] += step
    control[LAST_STEP, k] = step
    control[STEPS, k] += 1.0
    control[SMALLEST, k] = min(control[SMALLEST, k], step)
    growth = GROWTH
    if cook[PRESSURE_TABLE, k] == 0.0 and jump > 0.0:
        growth = min(growth, cook[MAX_TSAT_STEP, k] / jump)
    wanted = control[WANTED, k]  # an event shortened the step; go back in one or two strides
    control[NEXT_STEP, k] = max(step * max(growth, 0.2), min(wanted, AFTER_EVENT * step))
    control[WANTED, k] = 0.0
    control[ATTEMPTS, k], control[OIL_RESTART, k] = 0.0, 0.0
    for i in range(int(cook[FIRST_LANE, k]), int(cook[LAST_LANE, k])):
        if live.work[CRUSTED, i] > 0.0:
            spent, water = live.work[SPENT, i], given.lane[WATER_START, i]
            floored = live.scalar[1, FRONT_VOLUME, i] <= given.lane[FLOOR_VOLUME, i] * (1.0 + FLOOR_TOLERANCE)
            dried = water - live.scalar[1, EVAPORATED, i] <= DRY_SHARE * water
            if (spent == 0.0 and floored) or (spent == 1.0 and dried):
                live.work[RESTART, i], live.work[SPENT, i] = 1.0, spent + 1.0
        else:
            left = live.scalar[1, FREE, i]
            dry = given.lane[FILM, i] == 0.0
            boils = live.work[FLUX, i] + live.work[FLASH, i] > 0.0
            if (boils or not dry) and left <= max(FILM_TOLERANCE * given.lane[FILM, i], 1e-7):
                start_crust(given, live, i, n_core)
                if not dry:
                    control[NEXT_STEP, k] = min(control[NEXT_STEP, k], AFTER_FILM * cook[FIRST_STEP, k])
    write_down(given, live, trace, k)
    number = int(control[STAGE, k])
    over = control[TIME, k] - control[STAGE_START, k] >= given.stage[S_DURATION, number, k] - 1e-9
    until = given.stage[S_UNTIL, number, k] != UNTIL_TIME
    control[CORE_OLD, k] = coldest(given, live, k)
    met = until and condition(given, live, k, 1, control[CORE_OLD, k]) >= -1e-6
    if over or met:
        if until and not met:
            control[STATUS, k] = STAGE_TIMED_OUT
        control[STAGE, k] += 1.0
        enter_stage(given, live, k)
    elif cook[OIL_TABLE, k] == 0.0 and cook[BAND, k] == 0.0:
        switch_heater(given, live, k)


@inlined
def solve_group(given, live):
    """Inner passes of one try of all unfinished cooks, until the fronts settle."""
    n_cook, work = given.cook.shape[1], live.work
    control = live.control
    for _ in range(given.passes):
        for k in range(n_cook):
            if control[DONE, k] == 0.0:
                set_sources(given, live, k)
                wet_coat(given, live, k)
        for i in range(work.shape[1]):
            work[STEAM_FLUX, i] = work[FLUX, i]
        assemble(given, live)
        moved = 0.0
        for k in range(n_cook):
            if control[DONE, k] == 0.0:
                close_pass(given, live, k)
        substitute(live.cells, live.scalar, given.lane, work, given.n_core)
        for k in range(n_cook):
            if control[DONE, k] == 0.0:
                if given.cook[OIL_TABLE, k] == 0.0:
                    oil_g = (control[CG_NEW, k], control[CG_OLD, k], control[CG_OLDER, k])
                    solve_oil(given.lane, given.cook, control, live.state, work, k, oil_g)
                moved = max(moved, move_front(given, live, k))
        if moved < given.steady_m:
            break


@njit(cache=True, error_model="numpy", nogil=True, _nrt=False)
def march(given, live, trace):
    """March every cook of the group to the end of its last stage."""
    n_cook = given.cook.shape[1]
    most = trace.cook.shape[0]
    control = live.control
    for k in range(n_cook):
        enter_stage(given, live, k)
        write_down(given, live, trace, k)
    live.work[KEEP] = 0.0
    running = True
    while running:
        running = False
        for k in range(n_cook):
            if control[DONE, k] == 0.0:
                running = True
                choose_step(given, live, k)
                predict(given, live, k)
        if not running:
            break
        weigh_history(live)
        let_go(given, live)
        solve_group(given, live)
        for k in range(n_cook):
            if control[DONE, k] == 0.0:
                read_core(given, live, k)
                control[ATTEMPTS, k] += 1.0
                kept = accept(given, live, k)
                first, last = int(given.cook[FIRST_LANE, k]), int(given.cook[LAST_LANE, k])
                for i in range(first, last):
                    live.work[KEEP, i] = 1.0 if kept else 0.0
                control[KEPT, k] = 1.0 if kept else 0.0
            elif control[KEPT, k] > 0.0:  # finished with its last step
                control[KEPT, k] = 0.0
                for i in range(int(given.cook[FIRST_LANE, k]), int(given.cook[LAST_LANE, k])):
                    live.work[KEEP, i] = 0.0
        store_cells(given, live)
        for k in range(n_cook):
            if control[KEPT, k] > 0.0:
                finish_step(given, live, trace, k)
                if control[STEPS, k] >= most - 1:
                    control[STATUS, k], control[DONE, k] = TOO_MANY_STEPS, 1.0
