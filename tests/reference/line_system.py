"""What the method of lines integrates: slices of meat, their fronts, the oil and the head space as plain
differential equations (see lines.py).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple

import numpy as np
from scipy.sparse import lil_matrix
from scipy.special import expit

from frywright.physics.inputs import Lid, PieceClass, Vat, quadratic
from frywright.physics.solve import Cook
from frywright.physics.steam import boiling_temp_c, latent_heat_j_kg

FLASH_S = 0.02  # boiling of overheated meat, and of a wet coat
DRAW_S = 0.02  # water the front owes, before it recedes
R_STEAM, R_AIR = 461.526, 287.053
WATER_CP = 4180.0
SEED = 2e-6


def saturated_vapour_kg_m3(temp_c: float) -> float:
    """Density of saturated vapour as an ideal gas.

    Vapour pressure: Wagner and Pruss 1993 (J Phys Chem Ref Data 22:783), eq. 1, coefficients from memory;
    within 0.03 % of the stored IAPWS saturation temperatures (tests/reference/test_lines.py).
    """
    kelvin = temp_c + 273.15
    v = 1.0 - kelvin / 647.096
    a = (-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502)
    b = (1.0, 1.5, 3.0, 3.5, 4.0, 7.5)
    series = sum(factor * v**power for factor, power in zip(a, b, strict=True))
    return 22.064e6 * math.exp(647.096 / kelvin * series) / (R_STEAM * kelvin)


@dataclass
class Slice:
    """Where one piece class stands in the state; ``still`` is the share of its water the meat holds."""

    piece: PieceClass
    core: slice
    crust: slice
    still: slice
    front: int

    @property
    def tail(self) -> list[int]:
        return list(range(self.front, self.front + len(TAIL)))

    def __getattr__(self, name: str) -> int:
        return self.front + TAIL.index(name)


TAIL = ("front", "h", "free", "plane", "out", "heat_in", "heat_out", "dripped")


class Meat(NamedTuple):
    """Slope of the meat's temperature at its wet face T: lead T + known; its conductivity there."""

    lead: float
    known: float
    k: float
    r: np.ndarray
    face: np.ndarray
    volume: np.ndarray


class Edge(NamedTuple):
    """The plane at which water leaves. Fluxes per outer area; T_meat is the wet face of the meat."""

    temp: float
    meat: float
    flux: float
    q_in: float
    outside: float
    skin: float
    plane_rate: float
    coat_heat: float


class Lines:
    """State layout and right-hand side of one cook."""

    def __init__(self, cook: Cook, n_core: int, n_crust: int) -> None:
        self.cook, self.n_core, self.n_crust = cook, n_core, n_crust
        self.parts: list[Slice] = []
        at = 0
        for piece in cook.pieces:
            core = slice(at, at + n_core)
            crust = slice(core.stop, core.stop + n_crust)
            still = slice(crust.stop, crust.stop + n_core)
            self.parts.append(Slice(piece, core, crust, still, still.stop))
            at = still.stop + len(TAIL)
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
            p = part.piece
            y[part.core] = y[part.crust] = y[part.plane] = p.start_temp_c
            y[part.still] = 1.0
            y[part.front], y[part.h], y[part.free] = p.half_thickness_m, p.still_h_w_m2k, p.film_kg_m2
        y[self.oil], y[self.air], y[self.lid] = vat.oil_start_c, vat.atmosphere_pa, vat.lid_start_c
        return y

    def sparsity(self):
        """Pattern for the Jacobian; what the slow drip (a minute) adds to rows of the front is left to
        Newton.
        """
        s = lil_matrix((self.size, self.size), dtype=int)
        shared = [self.oil, self.steam, self.air, self.lid]
        for part in self.parts:
            block = list(range(part.core.start, part.crust.stop))
            still = list(range(part.still.start, part.still.stop))
            for i in block:
                for j in range(max(block[0], i - 3), min(block[-1], i + 3) + 1):
                    s[i, j] = 1
            for k, i in enumerate(still):
                s[i, part.core.start + k] = 1
                for j in range(max(still[0], i - 2), min(still[-1], i + 2) + 1):
                    s[i, j] = 1
            edge = list(range(part.core.stop - 3, part.crust.start + 3)) + [part.crust.stop - 1] + still[-2:]
            for i in block + still + part.tail:
                for j in edge + part.tail + shared:
                    s[i, j] = 1
            for i in shared:
                for j in block + part.tail + shared:
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
            gone, q_in = self._piece(part, crusted, y, dy, boiling, latent)
            made += part.piece.area_m2 * gone
            taken += 0.0 if self.lid_state == Lid.REST else part.piece.area_m2 * q_in
        self._vat(vat, closed, pressure, made, taken, y, dy)
        return dy

    def skin(self, y: np.ndarray) -> list[float]:
        """Outer temperature of each class."""
        vat = self.cook.vat
        closed = self.lid_state in (Lid.PRESSURE, Lid.VENT)
        boiling = boiling_temp_c(max(y[self.steam] + y[self.air], 5e3) if closed else vat.atmosphere_pa)
        latent = latent_heat_j_kg(boiling)
        pairs = zip(self.parts, self.crusted, strict=True)
        return [self._edge(p, c, y, self._meat(p, y, boiling), boiling, latent).skin for p, c in pairs]

    def _piece(self, part, crusted, y, dy, boiling, latent):
        p, s = part.piece, y[part.front]
        a, n = p.half_thickness_m, p.shape_n
        meat = self._meat(part, y, boiling)
        edge = self._edge(part, crusted, y, meat, boiling, latent)
        core, still = y[part.core], y[part.still]
        area_front = (s / a) ** n
        held_front = still[-1] + (still[-1] - still[-2]) * (s - meat.r[-1]) / (meat.r[-1] - meat.r[-2])
        drawn = max(-y[part.free], 0.0) / DRAW_S if crusted else 0.0
        speed = -drawn / (p.water_kg_m3 * held_front * area_front)
        c0, c1, c2 = (p.density_kg_m3 * c for c in quadratic(p.heat_capacity_j_kgk, "c"))
        self._core(part, core, meat, speed, edge.meat, (c0, c1, c2), dy)
        over = np.maximum(core - boiling, 0.0)
        dy[part.core] -= over / FLASH_S
        heat = c0 + core * (c1 + c2 * core)
        flash = float(np.sum(heat * over * meat.volume)) / FLASH_S / latent
        if crusted:
            self._crust(part, y[part.crust], s, speed, edge, dy)
        else:
            dy[part.crust] = (edge.temp - y[part.crust]) / 0.5
        drip = self._drip(part, core, still, meat, speed, dy)
        dy[part.front], dy[part.out], dy[part.dripped] = speed, edge.flux + flash, drip
        dy[part.free] = drip - edge.flux - flash + drawn
        dy[part.plane] = edge.plane_rate
        dy[part.h] = self._stirring(p, y, edge, y[part.h], edge.flux + flash)
        f = edge.temp
        left = f * (c0 + f * (0.5 * c1 + f * c2 / 3.0)) - p.crust_heat_j_m3k * f
        steam = p.vapour_cp_j_kgk * (edge.outside - f) * edge.flux
        dy[part.heat_in] = edge.q_in
        dy[part.heat_out] = latent * (edge.flux + flash) + edge.coat_heat + steam - speed * area_front * left
        return edge.flux + flash, edge.q_in

    def _stirring(self, p, y, edge, h, steam):
        """Bubbles of all steam stir, whether from the front or from overheated meat."""
        if self.lid_state == Lid.REST:
            return 0.0
        calm = p.still_h_w_m2k
        if p.still_reference_k > 0:
            calm *= (max(abs(y[self.oil] - edge.skin), 1e-3) / p.still_reference_k) ** 0.25
        return (min(calm + p.gain_h_j_kgk * steam, p.cap_h_w_m2k) - h) / p.lag_h_s

    def _drip(self, part, core, still, meat, speed, dy):
        """Rate at which the meat lets water go, and its share advected with the moving nodes."""
        p = part.piece
        if p.drip_frac == 0:
            return 0.0
        keeps = 1.0 - p.drip_frac * expit(p.drip_steep_per_k * (core - p.drip_mid_c))
        falls = np.maximum(still - keeps, 0.0) / p.drip_lag_s
        dy[part.still] = self.eta * speed * np.gradient(still, meat.r, edge_order=2) - falls
        return p.water_kg_m3 * float(np.sum(falls * meat.volume))

    def _meat(self, part, y, boiling) -> Meat:
        """One-sided quadratic slope at the wet face, as linear function of its temperature."""
        p, s, core = part.piece, y[part.front], y[part.core]
        a, n, b = p.half_thickness_m, p.shape_n, p.bone_radius_m
        k0, k1, k2 = quadratic(p.conductivity_w_mk, "k")
        r, face = b + self.eta * (s - b), b + self.eta_face * (s - b)
        x1, x2 = s - r[-1], s - r[-2]
        known = -(x2 / (x1 * (x2 - x1))) * core[-1] + (x1 / (x2 * (x2 - x1))) * core[-2]
        at = min(boiling, core[-1])
        volume = (face[1:] ** (n + 1) - face[:-1] ** (n + 1)) / ((n + 1) * a**n)
        return Meat((x1 + x2) / (x1 * x2), known, k0 + at * (k1 + k2 * at), r, face, volume)

    def _coat(self, p, free):
        """Wet share of the coat; resistance of its dry and of its wet part."""
        share = min(max(free, 0.0), p.film_kg_m2) / p.film_kg_m2 if p.film_kg_m2 > 0 else 0.0
        d = p.coat_thickness_m
        return share, d * (1.0 - share) / p.coat_conductivity_w_mk, d * share / p.coat_wet_conductivity_w_mk

    def _edge(self, part, crusted, y, meat: Meat, boiling, latent) -> Edge:
        p, s, vat = part.piece, y[part.front], self.cook.vat
        rest = self.lid_state == Lid.REST
        source, h = (vat.air_temp_c, vat.air_h_w_m2k) if rest else (y[self.oil], y[part.h])
        share, r_dry, r_wet = self._coat(p, y[part.free])
        h_eff = 1.0 / (1.0 / h + r_dry)
        area = (s / p.half_thickness_m) ** p.shape_n
        r_wet = 0.0 if crusted else r_wet
        gain = meat.k * area / (1.0 + r_wet * meat.k * meat.lead)  # heat into the meat: gain (lead T + known)
        if crusted:
            z1, z2 = self.zeta[:2] * (p.half_thickness_m - s)
            into = p.crust_conductivity_w_mk * area
            arrives = into * (
                (z2 / (z1 * (z2 - z1))) * y[part.crust][0] - (z1 / (z2 * (z2 - z1))) * y[part.crust][1]
            )
            falls = into * (z1 + z2) / (z1 * z2)
        else:
            arrives, falls = h_eff * source, h_eff
        spare, slope = (
            arrives - gain * meat.known,
            falls + gain * meat.lead,
        )  # heat for water at T: spare - slope T
        path = 0.0
        if rest and p.vapour_diffusivity_m2_s > 0:
            depth = p.half_thickness_m - s if crusted else 0.0
            path = 1.0 / vat.air_transfer_m_s
            path += (depth + p.coat_thickness_m * (1.0 - share)) / p.vapour_diffusivity_m2_s
        stores = p.coat_heat_j_m2k > 0 and not crusted
        if stores:
            temp, flux, rate, stored = self._wet_coat(
                p, y[part.free], y[part.plane], spare, slope, path, boiling, latent
            )
        else:
            temp = _balance(spare, slope, path, vat.air_vapour_kg_m3, latent, boiling)
            flux = max(spare - slope * temp, 0.0) / latent
            rate, stored = (temp - y[part.plane]) / 0.5, 0.0
        t_meat = (temp - r_wet * meat.k * meat.known) / (1.0 + r_wet * meat.k * meat.lead)
        outside = temp
        if crusted:
            half = p.crust_conductivity_w_mk / ((1.0 - self.zeta[-1]) * (p.half_thickness_m - s))
            outside = (h_eff * source + half * y[part.crust][-1]) / (h_eff + half)
        q_in = h_eff * (source - outside)
        return Edge(temp, t_meat, flux, q_in, outside, source - q_in / h, rate, stored)

    def _wet_coat(self, p, free, plane, spare, slope, path, boiling, latent):
        """A coat that stores heat: its plane warms to boiling, then holds there."""
        capacity = p.coat_heat_j_m2k + WATER_CP * min(max(free, 0.0), p.film_kg_m2)
        temp, over = min(plane, boiling), max(plane - boiling, 0.0)
        diffuses = _diffuses(temp, path, self.cook.vat.air_vapour_kg_m3)
        rate = (spare - slope * temp - latent * diffuses) / capacity - over / FLASH_S
        return temp, diffuses + capacity * over / FLASH_S / latent, rate, capacity * rate

    def _core(self, part, core, meat, speed, t_meat, heat, dy):
        n = part.piece.shape_n
        k0, k1, k2 = quadratic(part.piece.conductivity_w_mk, "k")
        r, face = meat.r, meat.face
        slope = np.empty(len(face))
        slope[0] = 0.0
        slope[1:-1] = np.diff(core) / np.diff(r)
        slope[-1] = meat.lead * t_meat + meat.known
        k = np.empty(len(face))
        middle = 0.5 * (core[1:] + core[:-1])
        k[1:-1] = k0 + middle * (k1 + k2 * middle)
        k[0], k[-1] = 0.0, meat.k
        flow = face**n * k * slope
        volume = (face[1:] ** (n + 1) - face[:-1] ** (n + 1)) / (n + 1)
        c = heat[0] + core * (heat[1] + heat[2] * core)
        middle = 0.5 * (slope[1:] + slope[:-1])
        dy[part.core] = np.diff(flow) / (volume * c) + self.eta * speed * middle

    def _crust(self, part, crust, s, speed, edge, dy):
        p = part.piece
        a, n = p.half_thickness_m, p.shape_n
        d, m = a - s, self.n_crust
        face = s + np.arange(m + 1) / m * d
        r = s + self.zeta * d
        slope = np.empty(m + 1)
        slope[1:-1] = np.diff(crust) / np.diff(r)
        z1, z2 = r[0] - s, r[1] - s
        slope[0] = (
            (z2 / (z1 * (z2 - z1))) * crust[0]
            - (z1 / (z2 * (z2 - z1))) * crust[1]
            - (z1 + z2) / (z1 * z2) * edge.temp
        )
        slope[-1] = (edge.outside - crust[-1]) / (a - r[-1])
        flow = (face / a) ** n * p.crust_conductivity_w_mk * slope
        volume = (face[1:] ** (n + 1) - face[:-1] ** (n + 1)) / ((n + 1) * a**n)
        middle = 0.5 * (slope[1:] + slope[:-1])
        steam = edge.flux * p.vapour_cp_j_kgk * middle * (a / r) ** n
        dy[part.crust] = np.diff(flow) / (volume * p.crust_heat_j_m3k) - steam / p.crust_heat_j_m3k
        dy[part.crust] += (1.0 - self.zeta) * speed * middle

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


def _diffuses(temp: float, path: float, air_kg_m3: float) -> float:
    """Vapour that diffuses into the room's air [kg/(m2 s)]; no path, no vapour."""
    return max(saturated_vapour_kg_m3(temp) - air_kg_m3, 0.0) / path if path > 0 else 0.0


def _balance(spare, slope, path, air_kg_m3, latent, boiling) -> float:
    """Temperature at which heat left for water meets what diffuses; boiling at most. Newton from the hot
    side.
    """
    temp = min(spare / slope, boiling)
    for _ in range(12 if path > 0 else 0):
        step = 1e-3
        gap = spare - slope * temp - latent * _diffuses(temp, path, air_kg_m3)
        if temp == boiling and gap >= 0:
            break
        drop = (
            slope
            + latent * (_diffuses(temp + step, path, air_kg_m3) - _diffuses(temp, path, air_kg_m3)) / step
        )
        temp += gap / drop
    return min(temp, boiling)
