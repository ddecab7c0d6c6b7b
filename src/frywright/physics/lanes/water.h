// The physics of docs/theory/engine.md, "Water": what a piece gives off, and where its front stands.
//
// All water given off is counted once, E(t); what has not left is W = W0 - E. Meat holds the share phi of its
// water; protein lets go of the rest as it warms, dphi/dt = -max(phi - (1 - L(T)), 0) / tau. HELD is the integral
// of w phi over the wet meat, FREE = W - HELD. Where FREE is used up the front recedes until HELD = W.
#pragma once
#include "physics.h"

constexpr double NEARLY = 5e-4;          // of the half thickness: the next step of a Halley is below 1e-9

// Holding shares after the step about to be tried, and what the piece lets go in it [kg/m2]. The logistic is
// (1 + tanh(u / 2)) / 2 with Lambert's continued fraction for tanh, within 5e-5.
INLINE void let_go(const Group &g, Piece &c, M fresh) {
  if (!any(c.drip_half > 0.0)) {
    put(c.dripped, fresh, 0.0);
    return;
  }
  PieceGiven x = c;
  x.w1 *= x.drip_half_steep, x.w2 *= x.drip_half_steep, x.w3 *= x.drip_half_steep, x.w4 *= x.drip_half_steep;
  const V mid = x.drip_mid * x.drip_half_steep;
  const V relaxed = 1.0 - exponential(-g.step / x.drip_lag), old = c.old[GRID_VOLUME], whole = old - x.bone_volume;
  const V *u_old = c.u_old, *u_older = c.u_older, *held = c.phi_old, *df = c.df;
  const V half = 0.5 * c.onward;
  V *phi = c.phi, sum = all(0.0), fall = all(0.0);
  for (Count j = c.bone; j < g.n_core; ++j) {
    V warm = near_temp(x, u_old[j] + half * (u_old[j] - u_older[j]));  // amid the step, as foreseen
    V u = between(warm - mid, all(-5.0), all(5.0)), s = u * u;
    V top = u * (135135.0 + s * (17325.0 + s * (378.0 + s)));
    V loose = x.drip_half * (1.0 + top / (135135.0 + s * (62370.0 + s * (3150.0 + 28.0 * s))));
    fall = relaxed * most(held[j] - 1.0 + loose, 0.0);
    phi[j] = pick(fresh, held[j] - fall, phi[j]);
    sum += fall * df[j];
  }
  sum = sum * whole + fall * (c.old[FRONT_VOLUME] - old);  // the last cell's water ends at the front itself
  put(c.dripped, fresh, c.water * sum);
}

// Volume inside the front once it has passed water of `dried` [m], cell by cell inward.
INLINE V recede(const Group &g, const Piece &c, V volume, V dried, M where) {
  V phi = c.phi[g.n_core - 1];
  for (Count j = g.n_core - 1; j > 0; --j) {
    V low = face_volume(c, j, c.old[GRID_VOLUME]);
    phi = pick(where, c.phi[j], phi);
    where &= phi * (volume - low) < dried;
    if (!any(where)) break;
    dried = pick(where, dried - phi * (volume - low), dried);
    volume = pick(where, low, volume);
    if (j == 1) phi = pick(where, c.phi[0], phi);
  }
  return volume - dried / phi;
}

// Position of the front [m] that encloses a volume [m], by Halley's series.
INLINE V front_at(const Piece &c, V volume, V guess) {
  V s = guess;
  M moving = yes();
  for (int i = 0; i < 4 && any(moving); ++i) {
    V per = 1.0 / (c.v1 + s * (2.0 * c.v2 + 3.0 * s * c.v3)), moved = (volume_at(c, s) - volume) * per;
    moved += moved * moved * per * (c.v2 + 3.0 * s * c.v3);
    put(s, moving, s - moved);
    moving &= size_of(moved) >= NEARLY * c.radius;
  }
  return between(s, 0.28 * c.radius, c.radius);
}

// Water book and front after a step in which `left` leaves [kg/(m2 s)].
struct Water {
  V gone, free, held, volume, front;
};

INLINE Water water_after(const Group &g, const Piece &c, V left) {
  V gone = (left - c.g1 * c.old[EVAPORATED] - c.g2 * c.older[EVAPORATED]) * c.per_g0;
  V water = c.water_start - gone, held = c.old[HELD] - c.dripped, volume = c.old[FRONT_VOLUME], front = c.now[FRONT];
  if (any(c.crusted)) {
    M recedes = c.crusted & (held > water) & (c.spent == 0.0);
    if (any(recedes)) volume = pick(recedes, recede(g, c, volume, (held - water) * c.per_water, recedes), volume);
    front = pick(c.crusted, front_at(c, volume, front), front);
    put(held, c.crusted, least(held, water));
  }
  return {gone, water - held, held, volume, front};
}

INLINE void keep_water(Piece &c, const Water &x, M where) {
  put(c.now[EVAPORATED], where, x.gone), put(c.now[FREE], where, x.free), put(c.now[HELD], where, x.held);
  put(c.now[FRONT_VOLUME], where & c.crusted, x.volume), put(c.now[FRONT], where & c.crusted, x.front);
}

// New water book and front from the evaporation flux; returns the change [m].
INLINE V move_front(const Group &g, Piece &c) {
  V left = c.flux + c.flash, t = c.front_temp, latent = latent_heat(g.tsat);
  V out = latent * left + c.steam_flux * c.vapour_cp * (c.face_temp - t);
  Water x = water_after(g, c, left);
  V change = pick(c.crusted, size_of(x.front - c.now[FRONT]), size_of(x.free - c.now[FREE]) * c.per_water);
  if (any(c.crusted)) {
    V swept = 2.0 * c.sweep_front * (c.front_heat * t + c.front_rest - c.c_crust * t);  // sensible heat of water that leaves
    out = pick(c.crusted, out - swept, out);
  }
  keep_water(c, x, yes());
  c.now[FLASH_THEN] = c.flash, c.now[PLANE_THEN] = t;
  leave_steady(c);
  V coat = c.coat_g * t + c.coat_past;
  c.now[HEAT_IN] = (c.surface_flux - c.g1 * c.old[HEAT_IN] - c.g2 * c.older[HEAT_IN]) * c.per_g0;
  c.now[HEAT_OUT] = (out - c.g1 * c.old[HEAT_OUT] - c.g2 * c.older[HEAT_OUT]) * c.per_g0;
  c.now[COAT_STORED] = (coat - c.g1 * c.old[COAT_STORED] - c.g2 * c.older[COAT_STORED]) * c.per_g0;
  return change;
}
