"""The water of a piece: one book for coating water, drip, flash and the receding front.

All water given off is counted once, E(t). What has not left is W = W0 - E. Meat at r holds the
share phi of its water w; protein lets go of the rest as it warms,

    dphi/dt = -max(phi - (1 - L(T)), 0) / tau ,   L(T) = Lm / (1 + exp(-steep (T - mid))) .

HELD is the integral of w phi over the wet meat, FREE = W - HELD is coating water and drip. Where
FREE is used up the front recedes so far that HELD = W; it never moves outward. At the deepest place
that the grid follows it stands, and the rest of the water boils off from there before the piece is dry.
"""

import math

from frywright.physics.kernels import inlined
from frywright.physics.kernels.layout import *
from frywright.physics.kernels.steam import latent_heat_j_kg
from frywright.physics.kernels.transport import enthalpy, spread

SETTLED = 1e-9  # of the half thickness
WATER_HEAT_J_KGK = 4180.0  # liquid water between 20 and 60 degC, IAPWS-95


@inlined
def let_go(given, live):
    """Holding shares after the steps about to be tried, and what each lane lets go in them [kg/m2].

    The logistic is (1 + tanh(u / 2)) / 2 with Lambert's continued fraction for tanh, within 5e-5.
    """
    lane, c, work = given.lane, live.cells, live.work
    n_lane = lane.shape[1]
    wet = given.n_core * n_lane
    drips = 0.0
    for i in range(n_lane):
        drips = max(drips, lane[DRIP, i])
        work[DRIPPED, i] = 0.0
    if drips == 0.0:
        return
    before, relaxed = 0.0, 0.0
    for i in range(n_lane):
        share = live.control[STEP, int(lane[COOK, i])] / lane[DRIP_LAG, i]
        if i == 0 or share != before:
            before, relaxed = share, 1.0 - math.exp(-share)
        work[RELAXED, i] = relaxed
    spread(work, RELAXED, c.relaxed)
    for x in range(wet):
        u = (0.5 * (c.t_old[x] + c.t[x]) - c.drip_mid[x]) * c.drip_half_steep[x]
        u = min(max(u, -5.0), 5.0)
        s = u * u
        top = u * (135135.0 + s * (17325.0 + s * (378.0 + s)))
        loose = c.drip_half[x] * (1.0 + top / (135135.0 + s * (62370.0 + s * (3150.0 + 28.0 * s))))
        c.fall[x] = c.relaxed[x] * max(c.phi_old[x] - 1.0 + loose, 0.0)
    for x in range(wet):
        c.phi[x] = c.phi_old[x] - c.fall[x]
    for x in range(wet):
        c.fall[x] *= c.v_old_up[x] - c.v_old[x]
    for j in range(given.n_core):
        for i in range(n_lane):
            work[DRIPPED, i] += c.fall[j * n_lane + i]
    for i in range(n_lane):  # the last cell's water ends at the front itself
        x = wet - n_lane + i
        rest = live.scalar[1, FRONT_VOLUME, i] - c.v_old_up[x]
        work[DRIPPED, i] = lane[WATER, i] * (work[DRIPPED, i] + (c.phi_old[x] - c.phi[x]) * rest)


@inlined
def keep_held(given, live, kept):
    """Carry the holding shares onto the grid of the accepted steps, so that they add up to HELD.

    Each cell hands a slice outward. Cells are finest at the front, so a step that moves no front past its
    last cell moves no face past its cell.
    """
    lane, c, scalar = given.lane, live.cells, live.scalar
    n_lane, drips = lane.shape[1], 0.0
    for i in range(n_lane):
        drips = max(drips, lane[DRIP, i])
    if drips == 0.0:
        return
    last = (given.n_core - 1) * n_lane
    plain = kept == n_lane
    for i in range(n_lane):
        plain = plain and c.v_old[last + i] <= scalar[0, FRONT_VOLUME, i] and live.work[SPENT, i] == 0.0
    if plain:
        for x in range(last):
            share = (c.v_old_up[x] - c.v_up[x]) / (c.v_up2[x] - c.v_up[x])
            c.phi_old_up[x] = c.phi_up[x] + (c.phi[x] - c.phi_up[x]) * share
        for i in range(n_lane):
            c.phi_old[i] = c.phi[i]
            share = (c.v_old[last + i] - c.v[last + i]) / (scalar[0, FRONT_VOLUME, i] - c.v[last + i])
            c.phi_old[last + i] = c.phi[last + i] + (c.phi[last + i - n_lane] - c.phi[last + i]) * share
        return
    for i in range(n_lane):
        if live.work[KEEP, i] > 0.0:
            _carry(given, live, i, last)


@inlined
def _carry(given, live, i, last):
    """:func:`keep_held` of lane i for a step of any length, and where the front stands at its floor."""
    lane, c, n_lane = given.lane, live.cells, given.lane.shape[1]
    first = int(lane[BONE_CELLS, i]) * n_lane + i
    end, total = live.scalar[0, FRONT_VOLUME, i], 0.0
    for x in range(last + i, first - 1, -n_lane):
        high = end if x == last + i else c.v[x + n_lane]
        y = x if x == last + i or c.v_old[x + n_lane] >= high else x + n_lane
        low, outer, got = c.v[x], high, 0.0
        while y > first and c.v_old[y] > low:  # from old cell y, then from the ones inside it
            got += c.phi[y] * max(outer - c.v_old[y], 0.0)
            outer, y = min(outer, c.v_old[y]), y - n_lane
        got += c.phi[y] * (outer - low)
        c.phi_old[x] = got / (high - low)
        total += got
    if live.work[SPENT, i] > 0.0 and total > 0.0:  # the front stands: what boils off leaves every cell
        for x in range(first, last + i + 1, n_lane):
            c.phi_old[x] *= live.scalar[0, HELD, i] / (lane[WATER, i] * total)


@inlined
def wet_coat(given, live, k):
    """Wet share and heat capacity of the coat, path of vapour through crust and dry coat, lanes of cook k."""
    lane, scalar, work = given.lane, live.scalar, live.work
    for i in range(int(given.cook[FIRST_LANE, k]), int(given.cook[LAST_LANE, k])):
        work[COAT_G, i], work[COAT_PAST, i] = 0.0, 0.0
        wet = 0.0
        if lane[FILM, i] > 0.0:
            wet = min(max(scalar[0, FREE, i] / lane[FILM, i], 0.0), 1.0)
        work[WET, i] = wet
        if work[CRUSTED, i] == 0.0 and lane[COAT_SOLIDS, i] > 0.0:
            heat = lane[COAT_SOLIDS, i] + WATER_HEAT_J_KGK * wet * lane[FILM, i]
            past = work[G_OLD, i] * scalar[1, FRONT_THEN, i] + work[G_OLDER, i] * scalar[2, FRONT_THEN, i]
            work[COAT_G, i], work[COAT_PAST, i] = heat * work[G_NEW, i], heat * past
        if work[IN_AIR, i] > 0.0 and lane[DIFFUSIVITY, i] > 0.0:
            dry = lane[RADIUS, i] - scalar[0, FRONT, i] + (1.0 - wet) * lane[COAT, i]
            work[VAPOUR_PATH, i] = 1.0 / given.cook[AIR_TRANSFER, k] + dry / lane[DIFFUSIVITY, i]


@inlined
def move_front(given, live, k):
    """New water book and front from the evaporation flux; returns the largest change [m]."""
    lane, n_core, c = given.lane, given.n_core, live.cells
    scalar, control, work = live.scalar, live.control, live.work
    n_lane, change = lane.shape[1], 0.0
    latent = latent_heat_j_kg(control[TSAT, k])
    for i in range(int(given.cook[FIRST_LANE, k]), int(given.cook[LAST_LANE, k])):
        g0, g1, g2 = work[G_NEW, i], work[G_OLD, i], work[G_OLDER, i]
        flux, x, t = work[FLUX, i], n_core * n_lane + i, work[FRONT_TEMP, i]
        left = flux + work[FLASH, i]
        gone = (left - g1 * scalar[1, EVAPORATED, i] - g2 * scalar[2, EVAPORATED, i]) / g0
        water, held = lane[WATER_START, i] - gone, scalar[1, HELD, i] - work[DRIPPED, i]
        steam = work[STEAM_FLUX, i] * lane[VAPOUR_CP, i] * (work[FACE_TEMP, i] - t)
        out = latent * left + steam
        if work[CRUSTED, i] > 0.0:
            volume = scalar[1, FRONT_VOLUME, i]
            if held > water and work[SPENT, i] == 0.0:
                volume = _recede(c, x - n_lane, n_lane, volume, (held - water) / lane[WATER, i])
            held = min(held, water)
            s = _front_at(c, x, volume, scalar[0, FRONT, i], lane[RADIUS, i])
            change = max(change, abs(s - scalar[0, FRONT, i]))
            scalar[0, FRONT, i], scalar[0, FRONT_VOLUME, i] = s, volume
            # sensible heat of the water that leaves the swept meat
            wet = enthalpy(t, lane, i, n_core - 1, n_core)
            out -= 2.0 * c.sweep[x] * (wet - lane[C_CRUST, i] * t)
        else:
            change = max(change, abs(water - held - scalar[0, FREE, i]) / lane[WATER, i])
        scalar[0, FREE, i], scalar[0, HELD, i], scalar[0, EVAPORATED, i] = water - held, held, gone
        scalar[0, FLUX_THEN, i], scalar[0, FRONT_THEN, i] = flux, t
        coat = work[COAT_G, i] * t + work[COAT_PAST, i]
        for row, rate in ((HEAT_IN, work[SURFACE_FLUX, i]), (HEAT_OUT, out), (COAT_STORED, coat)):
            scalar[0, row, i] = (rate - g1 * scalar[1, row, i] - g2 * scalar[2, row, i]) / g0
    return change


@inlined
def _recede(c, x, n_lane, volume, dried):
    """Volume inside the front once it has passed water of ``dried`` [m], cell by cell from cell x inward."""
    while x >= n_lane and c.phi[x] * (volume - c.v_old[x]) < dried:
        dried -= c.phi[x] * (volume - c.v_old[x])
        volume = c.v_old[x]
        x -= n_lane
    return volume - dried / c.phi[x]


@inlined
def _front_at(c, x, volume, guess, radius):
    """Position of the front [m] that encloses a volume [m]."""
    s = guess
    for _ in range(4):
        v0, v1, v2, v3 = c.v0[x], c.v1[x], c.v2[x], c.v3[x]
        here = v0 + s * (v1 + s * (v2 + s * v3))
        slope = v1 + s * (2.0 * v2 + 3.0 * s * v3)
        moved = (here - volume) / slope
        s -= moved
        if abs(moved) < SETTLED * radius:  # Newton: the next would move by rounding
            break
    return min(max(s, 0.28 * radius), radius)
