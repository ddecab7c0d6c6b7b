"""Independent reference for the cook engine: method of lines with SciPy's BDF.

Written apart from the engine on purpose: node values instead of cell means, the
non-conservative moving-grid form, three-point one-sided fluxes at the front, flash as a fast
relaxation to the boiling temperature, the front driven by a fast relaxation of the free water,
headspace species as plain differential equations. Only the physical statement
(docs/theory/engine.md) and the input dataclasses are shared; saturated vapour has its own formula.
"""

from __future__ import annotations

import math

import numpy as np
from scipy.integrate import solve_ivp

from frywright.physics.inputs import Lid, Span, Until, quadratic
from frywright.physics.solve import Cook
from tests.reference.line_system import R_STEAM, SEED, Lines


def solve(cook: Cook, n_core: int = 90, n_crust: int = 24, rtol: float = 1e-6):
    """March the cook; returns a dict of curves sampled at every solver step."""
    lines = Lines(cook, n_core, n_crust)
    y, t = lines.start(), 0.0
    pattern = lines.sparsity()
    times, states, skins, marks, head = [0.0], [y.copy()], [lines.skin(y)], [], 0.0
    for span in cook.spans:
        before, lines.lid_state, lines.set_c = lines.lid_state, span.lid, span.set_c
        if span.lid == Lid.PRESSURE and before == Lid.OPEN:
            head = _close(lines, y)
        end = t + span.duration_s if span.ends_at_s is None else max(t, span.ends_at_s)
        while t < end - 1e-9:
            events = _events(lines, span)
            got = solve_ivp(
                lines.rhs,
                (t, end),
                y,
                method="BDF",
                rtol=rtol,
                atol=1e-7,
                events=events,
                jac_sparsity=pattern,
                first_step=min(1e-3, end - t),
                max_step=10.0,
            )
            assert got.status >= 0, got.message
            times += list(got.t[1:])
            states += list(got.y.T[1:])
            skins += [lines.skin(column) for column in got.y.T[1:]]
            t, y = got.t[-1], got.y[:, -1].copy()
            over = False
            for event, hits in zip(events, got.t_events, strict=True):
                if len(hits) and event.lane < 0:
                    over = True
                elif len(hits):
                    part = lines.parts[event.lane]
                    y[part.free] = part.piece.water_kg_m3 * SEED * y[part.still][-1]  # the seed's own water
                    y[part.front] = part.piece.half_thickness_m - SEED
                    lines.crusted[event.lane] = True
            if over:
                break
        marks.append(t)
    return _curves(lines, np.array(times), np.array(states), np.array(skins), marks, head)


def _close(lines: Lines, y: np.ndarray) -> float:
    """The lid closes: steam given off so far has pushed air out of the stirred headspace. Returns its
    share.
    """
    vat = lines.cook.vat
    made = sum(part.piece.area_m2 * y[part.out] for part in lines.parts)
    volume = made * R_STEAM * (vat.head_temp_c + 273.15) / vat.atmosphere_pa
    share = 1.0 - math.exp(-volume / vat.head_volume_m3)
    y[lines.steam], y[lines.air] = share * vat.atmosphere_pa, (1.0 - share) * vat.atmosphere_pa
    return share


def _events(lines: Lines, span: Span) -> list:
    events = []
    for i, part in enumerate(lines.parts):
        if not lines.crusted[i]:

            def dry(_, state, free=part.free):
                return state[free]

            dry.terminal, dry.direction, dry.lane = True, -1, i
            events.append(dry)
    if span.until == Until.GAUGE_BELOW:

        def low(_, state):
            return state[lines.steam] + state[lines.air] - lines.cook.vat.atmosphere_pa - span.value

        low.terminal, low.direction, low.lane = True, -1, -1
        events.append(low)
    return events


def _curves(lines: Lines, time_s, table, skins, marks, head) -> dict:
    def of(name):
        return table[:, [getattr(p, name) for p in lines.parts]]

    a = np.array([p.piece.half_thickness_m for p in lines.parts])
    return {
        "time_s": time_s,
        "ends_s": marks,
        "steam_share_at_closing": head,
        "core_temp_c": np.stack([_centre(lines, table[:, p.core]) for p in lines.parts], axis=1),
        "crust_m": a - of("front"),
        "evaporated_kg_m2": of("out"),
        "film_kg_m2": np.maximum(of("free"), 0.0),
        "surface_temp_c": skins,
        "htc_w_m2k": of("h"),
        "oil_temp_c": table[:, lines.oil],
        "pressure_pa": table[:, lines.steam] + table[:, lines.air],
        "dripped_kg_m2": of("dripped"),
        **_books(lines, table, of),
    }


def _books(lines: Lines, table: np.ndarray, of) -> dict:
    """Water and heat unexplained [kg/m2, J/m2], from quadrature over the nodes (not from the rates
    marched).
    """
    water, heat = [], []
    for part in lines.parts:
        p = part.piece
        a, n, b = p.half_thickness_m, p.shape_n, p.bone_radius_m
        c0, c1, c2 = (p.density_kg_m3 * c for c in quadratic(p.heat_capacity_j_kgk, "c"))
        s = table[:, part.front][:, None]
        face, edge = b + lines.eta_face * (s - b), s + np.arange(lines.n_crust + 1) / lines.n_crust * (a - s)
        meat, crust = (np.diff(f ** (n + 1), axis=1) / ((n + 1) * a**n) for f in (face, edge))
        core, still = table[:, part.core], table[:, part.still]
        held = p.water_kg_m3 * np.sum(still * meat, axis=1)
        water.append(held + table[:, part.free] - (held[0] + p.film_kg_m2 - table[:, part.out]))
        stored = np.sum(core * (c0 + core * (0.5 * c1 + core * c2 / 3.0)) * meat, axis=1)
        stored += p.crust_heat_j_m3k * np.sum(table[:, part.crust] * crust, axis=1)
        heat.append(table[:, part.heat_in] - table[:, part.heat_out] - (stored - stored[0]))
    return {
        "water_gap_kg_m2": np.stack(water, axis=1),
        "heat_gap_j_m2": np.stack(heat, axis=1),
        "heat_in_j_m2": of("heat_in"),
    }


def _centre(lines: Lines, core: np.ndarray) -> np.ndarray:
    r0, r1 = lines.eta[0] ** 2, lines.eta[1] ** 2
    return core[:, 0] - (core[:, 1] - core[:, 0]) * r0 / (r1 - r0)
