"""Heat in one piece class: core and crust on a grid that follows the front.

Per unit outer area, with enclosed volume v(r) = r^(n+1) / ((n+1) a^n) and area A = (r/a)^n,
each cell j between the moving faces j and j+1 obeys

    d(V_j H_j)/dt = q_(j+1) - q_j + w_(j+1) H_(j+1) - w_j H_j ,   w = dv/dt of the face,

q = A k dT/dr counted positive inward. With the enthalpy linear in the new temperature the
row reads  diag T_j = alpha_j T_(j-1) + beta_(j+1) T_(j+1) + rhs.  Face sweep rates come from
the same BDF formula as the volumes, so a uniform temperature stays uniform (geometric
conservation).

Arrays are flat, ``cell * lanes + lane``. Loops without a recursion run over the whole array
from zero and write one array; ``*_up`` is the same memory seen from the next cell or face.
Both are what lets the compiler use vector instructions.
"""

from typing import NamedTuple

import numpy as np

from frywright.physics.kernels import inlined
from frywright.physics.kernels.layout import *


class Cells(NamedTuple):
    """Work space of all cells and faces."""

    front: np.ndarray  # front position seen by every face [m]
    rate: np.ndarray  # BDF coefficients of the three levels [1/s]
    rate_old: np.ndarray
    rate_older: np.ndarray
    ratio: np.ndarray
    keep: np.ndarray
    past: np.ndarray  # known part of the sweep rate
    sweep: np.ndarray  # w [m/s]
    sweep_up: np.ndarray
    area: np.ndarray  # area over relative cell distance
    area_up: np.ndarray
    heat: np.ndarray  # C [J/(m3 K)]
    heat_up: np.ndarray
    rest: np.ndarray  # H - C T [J/m3]
    rest_up: np.ndarray
    span: np.ndarray  # 1 / (front - bone) seen by every face
    g: np.ndarray  # conductance [W/(m2 K)]
    g_up: np.ndarray
    alpha: np.ndarray
    alpha_up: np.ndarray
    beta: np.ndarray
    beta_up: np.ndarray
    beta_up2: np.ndarray
    eps: np.ndarray
    eps_up: np.ndarray
    hist: np.ndarray  # known part of the storage rate [W/m2]
    size: np.ndarray  # BDF rate times cell volume
    diag: np.ndarray
    diag_up: np.ndarray
    rhs: np.ndarray
    rhs_up: np.ndarray
    p: np.ndarray
    p_up: np.ndarray
    q: np.ndarray
    q_up: np.ndarray
    t: np.ndarray  # temperatures: trial, old, older
    t_up: np.ndarray
    t_old: np.ndarray
    t_older: np.ndarray
    phi: np.ndarray  # share of its water that meat holds: trial, old
    phi_up: np.ndarray
    phi_old: np.ndarray
    phi_old_up: np.ndarray
    relaxed: np.ndarray  # share of the way to what meat can hold that a step goes
    fall: np.ndarray  # what the holding share loses in a step
    drip_half: np.ndarray  # half of Lm, middle and half the steepness of the drip, by cell
    drip_mid: np.ndarray
    drip_half_steep: np.ndarray
    v: np.ndarray  # enclosed volumes: trial, old, older
    v_up: np.ndarray
    v_up2: np.ndarray
    v_old: np.ndarray
    v_old_up: np.ndarray
    v_older: np.ndarray
    stored: np.ndarray  # heat in the cells: old, older
    stored_older: np.ndarray
    a0: np.ndarray  # cubic of area and of volume in the front position
    a1: np.ndarray
    a2: np.ndarray
    a3: np.ndarray
    v0: np.ndarray
    v1: np.ndarray
    v2: np.ndarray
    v3: np.ndarray
    k0: np.ndarray  # conductivity and heat polynomials of the core
    k1: np.ndarray
    k2: np.ndarray
    c0: np.ndarray
    c1: np.ndarray
    c2: np.ndarray


SHIFTED = (
    "sweep",
    "area",
    "heat",
    "rest",
    "g",
    "alpha",
    "beta",
    "eps",
    "diag",
    "rhs",
    "p",
    "q",
    "t",
    "v",
    "v_old",
    "phi",
    "phi_old",
)


def make_cells(geo, props, n_lane):
    """Allocate the work space for grids ``geo`` [8, faces * lanes], core ``props`` [6, ...]."""
    size = geo.shape[1]
    arrays = {name: np.zeros(size) for name in Cells._fields if "_up" not in name}
    for row, name in enumerate(("a0", "a1", "a2", "a3", "v0", "v1", "v2", "v3")):
        arrays[name][:] = geo[row]
    for row, name in enumerate(("k0", "k1", "k2", "c0", "c1", "c2")):
        arrays[name][: props.shape[1]] = props[row]
    for name in SHIFTED:
        arrays[name + "_up"] = arrays[name][n_lane:]
    for name in ("beta", "v"):
        arrays[name + "_up2"] = arrays[name][2 * n_lane :]
    return Cells(**arrays)


@inlined
def spread(work, row, target):
    """Copy a lane row to every cell or face of a flat array."""
    filled, size = work.shape[1], target.shape[0]
    for i in range(filled):
        target[i] = work[row, i]
    while filled < size:  # doubling keeps the copies contiguous
        rest = target[filled : min(2 * filled, size)]
        for x in range(rest.shape[0]):
            rest[x] = target[x]
        filled *= 2


@inlined
def place_faces(c, scalar):
    """Enclosed volumes, sweep rates and geometric conductances at the newest front."""
    spread(scalar[0], FRONT, c.front)
    for x in range(c.v.shape[0]):
        s = c.front[x]
        v = c.v0[x] + s * (c.v1[x] + s * (c.v2[x] + s * c.v3[x]))
        c.v[x] = v
        c.sweep[x] = 0.5 * (c.rate[x] * v + c.past[x])
    for x in range(c.v.shape[0]):
        s = c.front[x]
        c.area[x] = c.a0[x] + s * (c.a1[x] + s * (c.a2[x] + s * c.a3[x]))
    for x in range(c.v_up.shape[0]):
        c.size[x] = c.rate[x] * (c.v_up[x] - c.v[x])


@inlined
def core_properties(c, lane, scalar, work, n_core):
    """Volumetric heat C, enthalpy remainder H - C T and conductances of the core faces."""
    n_lane = work.shape[1]
    wet = n_core * n_lane
    for i in range(n_lane):
        s = scalar[0, FRONT, i]
        work[MEAT_SPAN, i] = 1.0 / (s - lane[BONE_RADIUS, i])
        work[CRUST_SPAN, i] = lane[K_CRUST, i] / max(lane[RADIUS, i] - s, 1e-12)
    spread(work, MEAT_SPAN, c.span)
    for x in range(wet):
        t = c.t[x]
        c.heat[x] = c.c0[x] + t * (c.c1[x] + t * c.c2[x])
        c.rest[x] = -t * t * (0.5 * c.c1[x] + t * (2.0 / 3.0) * c.c2[x])
    for x in range(wet - n_lane):
        t = 0.5 * (c.t[x] + c.t_up[x])
        c.g_up[x] = (c.k0[x] + t * (c.k1[x] + t * c.k2[x])) * (c.area_up[x] * c.span[x])


@inlined
def set_bone(c, bone_dist, scalar, lane):
    """Conductances inside a bone, and of bone and meat in series at its surface."""
    n_lane = lane.shape[1]
    for i in range(n_lane):
        bone = int(lane[BONE_CELLS, i])
        if bone == 0:
            continue
        for j in range(bone):
            x = j * n_lane + i
            c.g[x] = lane[K_BONE, i] * c.area[x]
        x = bone * n_lane + i
        t, s = c.t[x], scalar[0, FRONT, i]
        k = lane[K0, i] + t * (lane[K1, i] + t * lane[K2, i])
        half_meat = bone_dist[1, i] * (s - lane[BONE_RADIUS, i])
        c.g[x] = c.area[x] / (bone_dist[0, i] / lane[K_BONE, i] + half_meat / k)


@inlined
def sweep_faces(c, lane, work, n_core):
    """Face coefficients alpha (left neighbour), beta (right neighbour) and remainder eps."""
    n_lane = work.shape[1]
    inner = (n_core - 1) * n_lane
    for x in range(inner):
        c.alpha_up[x] = c.g_up[x] - c.sweep_up[x] * c.heat[x]
        c.beta_up[x] = c.g_up[x] + c.sweep_up[x] * c.heat_up[x]
    for x in range(inner):
        c.eps_up[x] = c.sweep_up[x] * (c.rest[x] + c.rest_up[x])
    x = (n_core + 1) * n_lane
    for _ in range(n_core + 1, c.v.shape[0] // n_lane - 1):
        for i in range(n_lane):
            steam = 0.5 * work[STEAM_FLUX, i] * lane[VAPOUR_CP, i]
            w = c.sweep[x] * lane[C_CRUST, i] - steam
            g = work[CRUST_SPAN, i] * c.area[x]
            c.alpha[x], c.beta[x] = g - w, g + w
            x += 1


@inlined
def front_and_surface(c, scalar, lane, work, n_core):
    """Half-cell conductances on both sides of the front and at the outer surface."""
    n_lane = lane.shape[1]
    front, surface = n_core * n_lane, c.v.shape[0] - n_lane
    for i in range(n_lane):
        h, t_front, x = scalar[0, H_NOW, i], work[FRONT_TEMP, i], front + i
        t = 0.5 * (c.t[x - n_lane] + t_front)
        k = lane[K0, i] + t * (lane[K1, i] + t * lane[K2, i])
        core_g = k * c.area[x] * work[MEAT_SPAN, i]  # area over the inner half cell
        wet = work[WET, i]
        share = 1.0
        if work[CRUSTED, i] == 0.0:
            share = 1.0 / (1.0 + core_g * wet * lane[COAT_WET, i])
        work[MEAT_SHARE, i] = share
        core_g *= share
        heat = lane[C0, i] + t_front * (lane[C1, i] + t_front * lane[C2, i])
        rest = 0.5 * lane[C1, i] + t_front * (2.0 / 3.0) * lane[C2, i]
        w = 2.0 * c.sweep[x]
        work[CORE_G, i], work[CORE_BETA, i] = core_g, core_g + w * heat
        c.alpha[x], c.beta[x], c.eps[x] = core_g, core_g + w * heat, -w * t_front * t_front * rest
        h /= 1.0 + h * (1.0 - wet) * lane[COAT_DRY, i]
        if work[CRUSTED, i] > 0.0:
            work[CRUST_G, i] = c.area[x] * lane[HALF_CELLS, i] * work[CRUST_SPAN, i]
            half = work[CRUST_SPAN, i] * c.area[surface + i]
            work[SURFACE_U, i] = h * half / (h + half)
            work[SURFACE_PHI, i] = h / (h + half)
        else:
            work[CRUST_G, i], work[SURFACE_U, i], work[SURFACE_PHI, i] = h, h, 1.0


@inlined
def eliminate_core(c, n_lane, n_core):
    """Forward elimination, centre to front: T_j = P_j + Q_j T_(j+1)."""
    wet = n_core * n_lane
    for x in range(wet):
        c.diag[x] = c.size[x] * c.heat[x] + c.alpha_up[x] + c.beta[x]
    for x in range(wet):
        c.rhs[x] = c.eps_up[x] - c.eps[x] - c.size[x] * c.rest[x] - c.hist[x]
    for i in range(n_lane):
        inv = 1.0 / c.diag[i]
        c.p[i], c.q[i] = c.rhs[i] * inv, c.beta_up[i] * inv
    if n_lane == 8:
        eliminate_outward(c, 8, wet)
    elif n_lane == 16:
        eliminate_outward(c, 16, wet)
    else:
        eliminate_outward(c, n_lane, wet)


@inlined
def eliminate_outward(c, lanes, end):
    """The recursion of :func:`eliminate_core`; told ``lanes`` as a number it runs on vectors."""
    for x in range(end - lanes):
        c.q[x + lanes] = c.beta_up2[x] / (c.diag_up[x] - c.alpha_up[x] * c.q[x])
    for x in range(end - lanes):
        inv = 1.0 / (c.diag_up[x] - c.alpha_up[x] * c.q[x])
        c.p[x + lanes] = (c.rhs_up[x] + c.alpha_up[x] * c.p[x]) * inv


@inlined
def substitute_inward(c, lanes, end):
    """T_j = P_j + Q_j T_(j+1) from the cells before ``end`` to the centre."""
    for x in range(end - 1, -1, -1):
        c.t[x] = c.p[x] + c.q[x] * c.t[x + lanes]


@inlined
def eliminate_crust(c, lane, work, n_core):
    """Backward elimination, surface to front: T_j = P_j + Q_j T_(j-1)."""
    n_lane = work.shape[1]
    n_cell = c.v.shape[0] // n_lane - 1
    for i in range(n_lane):
        steam = work[STEAM_FLUX, i] * lane[VAPOUR_CP, i]
        phi, u, x = work[SURFACE_PHI, i], work[SURFACE_U, i], n_cell * n_lane + i
        # the surface face in the form of an inner one: alpha to the diagonal, beta T to the rhs
        c.alpha[x], c.beta[x] = u + steam * (1.0 - phi), u - steam * phi
        c.p[x], c.q[x] = work[SOURCE_TEMP, i], 0.0
        x = n_core * n_lane + i  # the front seen from the crust
        swept = 2.0 * c.sweep[x] * lane[C_CRUST, i]
        c.alpha[x], c.beta[x] = work[CRUST_G, i] - swept + steam, work[CRUST_G, i]
    for x in range(n_core * n_lane, n_cell * n_lane):
        c.diag[x] = c.size[x] * c.c0[x] + c.alpha_up[x] + c.beta[x]
    if n_lane == 8:
        eliminate_inward(c, 8, n_core * 8, n_cell * 8)
    elif n_lane == 16:
        eliminate_inward(c, 16, n_core * 16, n_cell * 16)
    else:
        eliminate_inward(c, n_lane, n_core * n_lane, n_cell * n_lane)


@inlined
def eliminate_inward(c, lanes, start, end):
    """The recursion of :func:`eliminate_crust`."""
    p, q, alpha, beta_up = c.p[start:], c.q[start:], c.alpha[start:], c.beta_up[start:]
    diag, hist = c.diag[start:], c.hist[start:]
    for x in range(end - start - 1, -1, -1):
        q[x] = alpha[x] / (diag[x] - beta_up[x] * q[x + lanes])
    for x in range(end - start - 1, -1, -1):
        inv = 1.0 / (diag[x] - beta_up[x] * q[x + lanes])
        p[x] = (beta_up[x] * p[x + lanes] - hist[x]) * inv


@inlined
def enthalpy(temp, lane, i, j, n_core):
    """Enthalpy [J/m3] of cell j at temperature ``temp``, zero at 0 degC."""
    if j < int(lane[BONE_CELLS, i]):
        return lane[C_BONE, i] * temp
    if j >= n_core:
        return lane[C_CRUST, i] * temp
    return temp * (lane[C0, i] + temp * (0.5 * lane[C1, i] + temp * lane[C2, i] / 3.0))


@inlined
def front_balance(c, work, n_core):
    """Linear balance at the front: L flux = A - B T_f."""
    n_lane = work.shape[1]
    for i in range(n_lane):
        core_g, crust_g, x = work[CORE_G, i], work[CRUST_G, i], n_core * n_lane + i
        a = core_g * c.p[x - n_lane]
        b = core_g * (1.0 - c.q[x - n_lane])
        if work[CRUSTED, i] > 0.0:
            work[BALANCE_A, i] = a + crust_g * c.p[x]
            work[BALANCE_B, i] = b + crust_g * (1.0 - c.q[x])
        else:
            work[BALANCE_A, i] = a + crust_g * work[SOURCE_TEMP, i] - work[COAT_PAST, i]
            work[BALANCE_B, i] = b + crust_g + work[COAT_G, i]


@inlined
def substitute(c, scalar, lane, work, n_core):
    """Temperatures of all cells from the front temperature; surface temperature and flux."""
    n_lane = work.shape[1]
    first = n_core * n_lane
    size = c.v.shape[0] - n_lane
    for i in range(n_lane):
        front, x = work[FRONT_TEMP, i], first + i
        c.t[x - n_lane] = c.p[x - n_lane] + c.q[x - n_lane] * front
        c.t[x] = c.p[x] + c.q[x] * front
    if n_lane == 8:
        substitute_inward(c, 8, first - 8)
    elif n_lane == 16:
        substitute_inward(c, 16, first - 16)
    else:
        substitute_inward(c, n_lane, first - n_lane)
    for x in range(first, size - n_lane):
        c.t_up[x] = c.p_up[x] + c.q_up[x] * c.t[x]
    for i in range(n_lane):
        front = work[FRONT_TEMP, i]
        outer = front
        if work[CRUSTED, i] > 0.0:
            outer = c.t[size - n_lane + i]
        else:
            for x in range(first + i, size, n_lane):
                c.t[x] = front
        phi = work[SURFACE_PHI, i] * work[CRUSTED, i]
        work[FACE_TEMP, i] = (1.0 - phi) * outer + phi * work[SOURCE_TEMP, i]
        work[SURFACE_FLUX, i] = work[SURFACE_U, i] * (work[SOURCE_TEMP, i] - outer)
        work[SURFACE_TEMP, i] = work[SOURCE_TEMP, i] - work[SURFACE_FLUX, i] / scalar[0, H_NOW, i]
        if work[FLASH, i] > 0.0:
            clamp_core(c, work, i, front, n_core)


@inlined
def clamp_core(c, work, i, boiling, n_core):
    """Hold the flashing cells of lane i at the boiling temperature, then substitute inward."""
    n_lane, first = work.shape[1], int(work[FLASH_FROM, i])
    for j in range(first, n_core):
        c.t[j * n_lane + i] = boiling
    for j in range(first - 1, -1, -1):
        x = j * n_lane + i
        c.t[x] = c.p[x] + c.q[x] * c.t_up[x]


@inlined
def flash_start(c, lane, i, boiling, n_core):
    """First cell of the contiguous region next to the front that would pass boiling."""
    n_lane = lane.shape[1]
    j, bone = n_core, int(lane[BONE_CELLS, i])
    while j > bone:
        x = (j - 1) * n_lane + i
        if c.p[x] + c.q[x] * boiling <= boiling + 1e-9:
            break
        j -= 1
    return j


@inlined
def flash_rate(c, work, i, first, boiling, n_core):
    """Heat [W/m2] that cells ``first``.. must give off to stay at ``boiling``, and its slope."""
    n_lane = work.shape[1]
    heat, slope = 0.0, 0.0
    for j in range(first, n_core):
        x = j * n_lane + i
        left, dleft = boiling, 1.0
        if j == 0:
            left, dleft = 0.0, 0.0
        elif j == first:
            left = c.p[x - n_lane] + c.q[x - n_lane] * boiling
            dleft = c.q[x - n_lane]
        alpha = c.alpha[x] if j > 0 else 0.0
        beta = work[CORE_BETA, i] if j == n_core - 1 else c.beta_up[x]
        heat += c.rhs[x] + alpha * left + (beta - c.diag[x]) * boiling
        slope += alpha * dleft + beta - c.diag[x]
    return heat, slope
