"""Independent reference for the cook engine: method of lines with SciPy's BDF.

Written apart from the engine on purpose: node values instead of cell means, the
non-conservative moving-grid form, three-point one-sided fluxes at the front, flash as a fast
relaxation to the boiling temperature, headspace species as plain differential equations.
Only the physical statement (docs/theory/engine.md) and the input dataclasses are shared.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy.integrate import solve_ivp
from scipy.sparse import lil_matrix

from frywright.physics.inputs import Lid, PieceClass, Until, Vat, quadratic
from frywright.physics.kernels.steam import boiling_temp_c, latent_heat_j_kg
from frywright.physics.solve import Cook

FLASH_S = 0.02
R_STEAM, R_AIR = 461.526, 287.053
SEED = 2e-6


@dataclass
class Slice:
    piece: PieceClass
    core: slice
    crust: slice
    front: int
    h: int
    film: int
    out: int


class Lines:
    """State layout and right-hand side of one cook."""

    def __init__(self, cook: Cook, n_core: int, n_crust: int) -> None:
        self.cook, self.n_core, self.n_crust = cook, n_core, n_crust
        self.parts: list[Slice] = []
        at = 0
        for piece in cook.pieces:
            core = slice(at, at + n_core)
            crust = slice(core.stop, core.stop + n_crust)
            self.parts.append(Slice(piece, core, crust, crust.stop, crust.stop + 1, crust.stop + 2, crust.stop + 3))
            at = crust.stop + 4
        self.oil, self.steam, self.air, self.lid = at, at + 1, at + 2, at + 3
        self.size = at + 4
        self.crusted = [False] * len(self.parts)
        x = (np.arange(n_core) + 0.5) / n_core
        self.eta = 1.0 - (1.0 - x) ** 1.15
        f = np.arange(n_core + 1) / n_core
        self.eta_face = 1.0 - (1.0 - f) ** 1.15
        self.zeta = (np.arange(n_crust) + 0.5) / n_crust
        self.lid_state, self.set_c = Lid.OPEN, 0.0

    def start(self) -> np.ndarray:
        y = np.zeros(self.size)
        vat = self.cook.vat
        for part in self.parts:
            y[part.core] = y[part.crust] = part.piece.start_temp_c
            y[part.front], y[part.h] = part.piece.half_thickness_m, part.piece.still_h_w_m2k
            y[part.film] = part.piece.film_kg_m2
        y[self.oil], y[self.air], y[self.lid] = vat.oil_start_c, vat.atmosphere_pa, vat.lid_start_c
        return y

    def sparsity(self):
        s = lil_matrix((self.size, self.size), dtype=int)
        for part in self.parts:
            block = list(range(part.core.start, part.crust.stop))
            for i in block:
                for j in range(max(block[0], i - 3), min(block[-1], i + 3) + 1):
                    s[i, j] = 1
            edge = list(range(part.core.stop - 3, part.crust.start + 3)) + [part.crust.stop - 1]
            tail = [part.front, part.h, part.film, part.out]
            shared = [self.oil, self.steam, self.air, self.lid]
            for i in block + tail:
                for j in edge + tail + shared:
                    s[i, j] = 1
            for i in shared:
                for j in block + tail + shared:
                    s[i, j] = 1
        return s.tocsr()

    def rhs(self, t: float, y: np.ndarray) -> np.ndarray:
        dy = np.zeros_like(y)
        vat = self.cook.vat
        closed = self.lid_state in (Lid.PRESSURE, Lid.VENT)
        pressure = y[self.steam] + y[self.air] if closed else vat.atmosphere_pa
        boiling = boiling_temp_c(max(pressure, 5e3))
        latent = latent_heat_j_kg(boiling)
        made = taken = 0.0
        for part, crusted in zip(self.parts, self.crusted, strict=True):
            flux, flash, q_in = self._piece(part, crusted, y, dy, boiling, latent)
            made += part.piece.area_m2 * (flux + flash)
            taken += part.piece.area_m2 * q_in
        self._vat(vat, closed, pressure, made, taken, y, dy)
        return dy

    def _piece(self, part, crusted, y, dy, boiling, latent):
        p, s, h = part.piece, y[part.front], y[part.h]
        rest = self.lid_state == Lid.REST
        source = self.cook.vat.air_temp_c if rest else y[self.oil]
        if rest:
            h = self.cook.vat.air_h_w_m2k
        a, n, b = p.half_thickness_m, p.shape_n, p.bone_radius_m
        core, crust = y[part.core], y[part.crust]
        k0, k1, k2 = quadratic(p.conductivity_w_mk, "k")
        c0, c1, c2 = (p.density_kg_m3 * c for c in quadratic(p.heat_capacity_j_kgk, "c"))
        r = b + self.eta * (s - b)
        face = b + self.eta_face * (s - b)

        def k_of(temp):
            return k0 + temp * (k1 + k2 * temp)

        # one-sided quadratic slope at the front, as linear function of T_f
        x1, x2 = s - r[-1], s - r[-2]
        lead = (x1 + x2) / (x1 * x2)
        known = -(x2 / (x1 * (x2 - x1))) * core[-1] + (x1 / (x2 * (x2 - x1))) * core[-2]
        kf = k_of(min(boiling, core[-1]))
        area_front = (s / a) ** n
        if crusted:
            d = a - s
            z = self.zeta * d
            z1, z2 = z[0], z[1]
            lead_k = (z1 + z2) / (z1 * z2)
            known_k = (z2 / (z1 * (z2 - z1))) * crust[0] - (z1 / (z2 * (z2 - z1))) * crust[1]
            kc = p.crust_conductivity_w_mk
            t_join = (kc * known_k - kf * known) / (kc * lead_k + kf * lead)
            t_front = min(boiling, t_join)
            q_crust = kc * (known_k - lead_k * t_front) * area_front
        else:
            t_join = (h * source - kf * known) / (h + kf * lead)
            t_front = min(boiling, t_join)
            q_crust = h * (source - t_front)
        q_core = kf * (lead * t_front + known) * area_front
        flux = max(q_crust - q_core, 0.0) / latent
        speed = -flux / (p.water_kg_m3 * area_front) if crusted else 0.0
        self._core(part, core, r, face, s, speed, t_front, (k_of, lead, known, kf), (c0, c1, c2), dy)
        over = np.maximum(core - boiling, 0.0)
        dy[part.core] -= over / FLASH_S
        heat = c0 + core * (c1 + c2 * core)
        widths = (face[1:] ** (n + 1) - face[:-1] ** (n + 1)) / ((n + 1) * a**n)
        flash = float(np.sum(heat * over * widths)) / FLASH_S / latent
        if crusted:
            q_in = self._crust(part, p, crust, s, speed, t_front, flux, source, h, dy)
        else:
            dy[part.crust] = (t_front - crust) / 0.5
            q_in = q_crust
        dy[part.front], dy[part.out] = speed, flux + flash
        aim = min(p.still_h_w_m2k + p.gain_h_j_kgk * flux, p.cap_h_w_m2k)
        dy[part.h] = 0.0 if rest else (aim - y[part.h]) / p.lag_h_s
        dy[part.film] = 0.0 if crusted else -flux
        return flux, flash, 0.0 if rest else q_in

    def _core(self, part, core, r, face, s, speed, t_front, conduct, heat, dy):
        k_of, lead, known, kf = conduct
        n = part.piece.shape_n
        slope = np.empty(len(face))
        slope[0] = 0.0
        slope[1:-1] = np.diff(core) / np.diff(r)
        slope[-1] = lead * t_front + known
        k = np.empty(len(face))
        k[1:-1] = k_of(0.5 * (core[1:] + core[:-1]))
        k[0], k[-1] = 0.0, kf
        flow = face**n * k * slope
        volume = (face[1:] ** (n + 1) - face[:-1] ** (n + 1)) / (n + 1)
        c = heat[0] + core * (heat[1] + heat[2] * core)
        middle = 0.5 * (slope[1:] + slope[:-1])
        dy[part.core] = np.diff(flow) / (volume * c) + self.eta * speed * middle

    def _crust(self, part, p, crust, s, speed, t_front, flux, source, h, dy):
        a, n = p.half_thickness_m, p.shape_n
        d, m = a - s, self.n_crust
        face = s + np.arange(m + 1) / m * d
        r = s + self.zeta * d
        slope = np.empty(m + 1)
        slope[1:-1] = np.diff(crust) / np.diff(r)
        z1, z2 = r[0] - s, r[1] - s
        slope[0] = (
            (z2 / (z1 * (z2 - z1))) * crust[0] - (z1 / (z2 * (z2 - z1))) * crust[1] - (z1 + z2) / (z1 * z2) * t_front
        )
        half = a - r[-1]
        surface = (h * source + p.crust_conductivity_w_mk / half * crust[-1]) / (h + p.crust_conductivity_w_mk / half)
        slope[-1] = (surface - crust[-1]) / half
        flow = (face / a) ** n * p.crust_conductivity_w_mk * slope
        volume = (face[1:] ** (n + 1) - face[:-1] ** (n + 1)) / ((n + 1) * a**n)
        middle = 0.5 * (slope[1:] + slope[:-1])
        steam = flux * p.vapour_cp_j_kgk * middle * (a / r) ** n
        dy[part.crust] = np.diff(flow) / (volume * p.crust_heat_j_m3k) - steam / p.crust_heat_j_m3k
        dy[part.crust] += (1.0 - self.zeta) * speed * middle
        return h * (source - surface)

    def _vat(self, vat: Vat, closed, pressure, made, taken, y, dy):
        oil = y[self.oil]
        share = min(max((self.set_c + 0.5 * vat.band_k - oil) / vat.band_k, 0.0), 1.0)
        capacity = vat.oil_mass_kg * (vat.oil_cp_j_kgk[0] + vat.oil_cp_j_kgk[1] * oil) + vat.metal_heat_j_k
        dy[self.oil] = (vat.heater_w * share - taken - vat.loss_w_k * (oil - vat.room_temp_c)) / capacity
        lid = y[self.lid]
        dy[self.lid] = -vat.lid_room_ua_w_k * (lid - vat.room_temp_c) / vat.lid_heat_j_k
        if not closed:
            return
        kelvin = vat.head_temp_c + 273.15
        steam, air = max(y[self.steam], 0.0), max(y[self.air], 0.0)
        density_s, density_a = steam / (R_STEAM * kelvin), air / (R_AIR * kelvin)
        density = density_s + density_a
        dew = boiling_temp_c(max(steam, 2000.0))
        warm = max(vat.lid_ua_w_k * (dew - lid), 0.0)
        lost = warm / latent_heat_j_kg(dew)
        dy[self.lid] += warm / vat.lid_heat_j_k
        area = vat.leak_area_m2 + (vat.vent_area_m2 if self.lid_state == Lid.VENT else 0.0)
        gauge = pressure - vat.atmosphere_pa
        out = 0.0
        if gauge > 0:
            out = area * math.sqrt(2 * density) * gauge / math.sqrt(gauge + 200.0)
        out += vat.relief_slope_kg_spa * max(gauge - vat.relief_gauge_pa, 0.0)
        drawn = 0.0
        if gauge < 0:
            outside = vat.atmosphere_pa / (R_AIR * kelvin)
            drawn = vat.breather_area_m2 * math.sqrt(2 * outside) * -gauge / math.sqrt(200.0 - gauge)
        scale = kelvin / vat.head_volume_m3
        dy[self.steam] = R_STEAM * scale * (made - lost - out * density_s / density)
        dy[self.air] = R_AIR * scale * (drawn - out * density_a / density)


def solve(cook: Cook, n_core: int = 90, n_crust: int = 24, rtol: float = 1e-6):
    """March the cook; returns a dict of curves sampled at every solver step."""
    lines = Lines(cook, n_core, n_crust)
    y, t = lines.start(), 0.0
    pattern = lines.sparsity()
    times, states, marks = [0.0], [y.copy()], []
    for span in cook.spans:
        before, lines.lid_state, lines.set_c = lines.lid_state, span.lid, span.set_c
        if span.lid == Lid.PRESSURE and before == Lid.OPEN:
            y[lines.air], y[lines.steam] = cook.vat.atmosphere_pa, 0.0
        end = t + span.duration_s
        while t < end - 1e-9:
            events = []
            for i, part in enumerate(lines.parts):
                if not lines.crusted[i]:

                    def dry(_, state, film=part.film):
                        return state[film]

                    dry.terminal, dry.direction, dry.lane = True, -1, i
                    events.append(dry)
            if span.until == Until.GAUGE_BELOW:

                def low(_, state):
                    return state[lines.steam] + state[lines.air] - cook.vat.atmosphere_pa - span.value

                low.terminal, low.direction, low.lane = True, -1, -1
                events.append(low)
            got = solve_ivp(lines.rhs, (t, end), y, method="BDF", rtol=rtol, atol=1e-7, events=events,
                            jac_sparsity=pattern, first_step=1e-3, max_step=10.0)  # fmt: skip
            assert got.status >= 0, got.message
            times += list(got.t[1:])
            states += list(got.y.T[1:])
            t, y = got.t[-1], got.y[:, -1].copy()
            over = False
            for event, hits in zip(events, got.t_events, strict=True):
                if len(hits) and event.lane < 0:
                    over = True
                elif len(hits):
                    part = lines.parts[event.lane]
                    y[part.film] = 0.0
                    y[part.front] = part.piece.half_thickness_m - SEED
                    lines.crusted[event.lane] = True
            if over:
                break
        marks.append(t)
    table = np.array(states)
    a = np.array([p.piece.half_thickness_m for p in lines.parts])
    core = np.stack([_centre(lines, table[:, p.core]) for p in lines.parts], axis=1)
    return {
        "time_s": np.array(times), "core_temp_c": core, "ends_s": marks,
        "crust_m": a - table[:, [p.front for p in lines.parts]],
        "evaporated_kg_m2": table[:, [p.out for p in lines.parts]],
        "oil_temp_c": table[:, lines.oil],
        "pressure_pa": table[:, lines.steam] + table[:, lines.air],
    }  # fmt: skip


def _centre(lines: Lines, core: np.ndarray) -> np.ndarray:
    r0, r1 = lines.eta[0] ** 2, lines.eta[1] ** 2
    return core[:, 0] - (core[:, 1] - core[:, 0]) * r0 / (r1 - r0)
