// The physics of docs/theory/engine.md, "The statement": heat of the pieces, the vat around them; their water is in water.h.
//
// Per unit outer area, with enclosed volume v(r) = r^(n+1) / ((n+1) a^n) and area A = (r/a)^n, each cell j
// between the moving faces j and j+1 obeys
//
//     d(V_j H_j)/dt = q_(j+1) - q_j + w_(j+1) H_(j+1) - w_j H_j ,   w = dv/dt of the face,
//
// q = A k dT/dr = A D(u) du/dr counted positive inward. The unknown is the heat u = H(T) of a cell, so that storage and
// sweep are linear in it, and the row reads diag u_j = alpha_j u_(j-1) + beta_(j+1) u_(j+1) - hist. Sweep rates come from
// the same BDF formula as the volumes, so a uniform temperature stays uniform.
#pragma once
#include "group.h"
#include "steam.h"

constexpr double WATER_HEAT = 4180.0;    // liquid water between 20 and 60 degC, IAPWS-95 [J/(kg K)]
constexpr double SMOOTHING_PA = 200.0;   // orifice law regularised below this difference
constexpr double EMPTY_PA = 2000.0;      // steam pressure floor of the condensation term
constexpr double PRESSURE_SETTLED_PA = 0.2;    // 0.05 mK of the boiling point
constexpr double PLANE_SETTLED_K = 1e-5;
constexpr double MOST_FEEDBACK = 0.8;  // of stirring on itself that one pass resolves
constexpr double LOWEST_FRONT = 0.3;     // share of a that the grid follows

// ---- what the surface sees -------------------------------------------------------------------------------

// Share of the coat that is wet.
INLINE V wet_share(const Piece &c) {
  return between(c.now[FREE] * c.per_film, all(0.0), all(1.0));
}

// Resistance of the steady layers between surface and front [m2 K/W].
INLINE V layers(const Piece &c, V wet) {
  return (1.0 - wet) * c.coat_dry + pick(c.crusted, (c.radius - c.now[FRONT]) * c.per_crust, 0.0);
}

struct Stirred {
  V h, flux;  // surface coefficient, what boils at the front [kg/(m2 s)]
};

// Surface coefficient dh/dt = (min(h_still + c m, h_max) - h) / tau. Steam stirs, stirring makes steam, and steam dries the
// layers between surface and front: a Newton step in all three, with the heat that steady layers would let through and what
// INWARD and DROP_MORE know of the rest.
INLINE Stirred stir(const Group &g, const Piece &c) {
  V wet = wet_share(c), known = pick(c.in_air, g.air_h, c.now[H_NOW]), front = c.now[PLANE_THEN];
  V resists = layers(c, wet), per_latent = 1.0 / latent_heat(front), u = 1.0 / (1.0 + known * resists);
  V drop = u * (pick(c.in_air, g.air_temp, g.now[OIL_TEMP]) - front), heat = known * drop;
  V gone = c.g0 * c.now[EVAPORATED] + c.g1 * c.old[EVAPORATED] + c.g2 * c.older[EVAPORATED];
  V dries = pick(c.crusted, c.per_crust * c.per_water, pick((wet > 0.0) & (wet < 1.0), c.coat_dry * c.per_film, 0.0));
  V by_dry = heat * known * u * per_latent * dries * c.per_g0, per_more = 1.0 / (1.0 + by_dry);
  V flux = ((heat - c.now[INWARD]) * per_latent + by_dry * (gone - c.flash)) * per_more;
  M boils = (c.flux > 0.0) & (flux > 0.0);
  flux = pick(boils, flux, 0.0);
  M natural = c.still_reference > 0.0;
  V still = c.h_still;
  if (any(natural)) {  // natural convection: h ~ dT^(1/4)
    V apart = size_of(drop + c.now[DROP_MORE]) / most(c.still_reference, 1e-9);
    still *= pick(natural, root(root(apart)), 1.0);
  }
  V past = c.g1 * c.old[H_NOW] + c.g2 * c.older[H_NOW], per = 1.0 / (1.0 + c.h_lag * c.g0);
  V by_h = pick(boils, u * drop * per_latent * per_more, 0.0);
  V slope = c.h_gain * by_h - pick(natural, 0.25 * still * resists * u, 0.0);
  V aim = still + c.h_gain * (flux + c.flash) - c.h_lag * past;
  V h = known + (per * aim - known) / (1.0 - least(per * slope, MOST_FEEDBACK));
  h = pick(c.in_air, g.air_h, least(h, per * (c.h_cap - c.h_lag * past)));
  return {h, most(flux + by_h * (h - known), 0.0)};
}

// Surface coefficient and temperature seen by the surface; not in the first pass, whose h is foreseen.
INLINE void see_source(const Group &g, Piece &c) {
  if (any(g.again)) put(c.now[H_NOW], g.again, stir(g, c).h);
  c.source_temp = pick(c.in_air, g.air_temp, g.now[OIL_TEMP]);
}

// What a pass says of the heat that steady layers do not have.
INLINE void leave_steady(Piece &c) {
  V h = c.now[H_NOW], drop = (c.source_temp - c.front_temp) / (1.0 + h * c.layers);
  c.now[INWARD] = h * drop - latent_heat(c.front_temp) * c.flux;
  c.now[DROP_MORE] = c.source_temp - c.surface_temp - drop;
}

// Wet share and heat capacity of the coat.
INLINE void wet_coat(Piece &c) {
  V wet = wet_share(c);
  V heat = c.coat_solids + WATER_HEAT * wet * c.film;
  V past = c.g1 * c.old[PLANE_THEN] + c.g2 * c.older[PLANE_THEN];
  M stores = ~c.crusted & (c.coat_solids > 0.0);
  c.wet = wet, c.layers = layers(c, wet);
  c.coat_g = pick(stores, heat * c.g0, 0.0);
  c.coat_past = pick(stores, heat * past, 0.0);
}

// ---- heat in a piece ---------------------------------------------------------------------------------------

// Heat of a core cell before a pass: foreseen by extrapolation, in a later pass of the step what the one before found.
INLINE V foreseen(const Group &g, const Piece &c, Count j) {
  return pick(g.again, c.u[j], c.u_old[j] + c.onward * (c.u_old[j] - c.u_older[j]));
}

// What older levels have of the rate of a cell's heat: `df` (one u_old + two u_older).
struct Past {
  V one, two;
};

INLINE Past past_of(const Piece &c, bool bony) {
  if (bony) return {c.g1 * c.bone_volume, c.g2 * c.bone_volume};
  return {c.g1 * (c.old[GRID_VOLUME] - c.bone_volume), c.g2 * (c.older[GRID_VOLUME] - c.bone_volume)};
}

// Conductances of the half cells on both sides of the front and at the outer surface.
INLINE void join_front_and_surface(const Group &g, Piece &c, V shape) {
  V h = c.now[H_NOW], t_front = c.front_temp, s = c.now[FRONT];
  V thick = most(c.radius - s, 1e-12);
  c.crust_span = c.k_crust / thick;
  V u = foreseen(g, c, g.n_core - 1), u_front = meat_enthalpy(c, t_front);
  Near last = near(c, u);  // a coat between last cell and plane conducts by temperature, so both half cells do
  V core_g = meat_spread(c, u + u_front) * meat_heat(c, 0.5 * (last.t + t_front)) * shape;
  c.meat_share = pick(c.crusted, 1.0, 1.0 / (1.0 + core_g * c.wet * c.coat_wet));
  c.core_g = core_g * c.meat_share;
  c.front_heat = meat_heat(c, t_front), c.front_rest = u_front - c.front_heat * t_front;
  V per = 1.0 / c.front_heat;
  c.last_rest = last.t - last.per * u, c.last_per = last.per;
  c.at_front = {c.core_g * last.per, c.core_g * per + 2.0 * c.sweep_front, -c.core_g * (c.last_rest + c.front_rest * per)};
  h = h / (1.0 + h * (1.0 - c.wet) * c.coat_dry);
  V half = c.crust_span * (2.0 * (double)g.n_crust);
  V share = h / (h + half);
  c.crust_g = pick(c.crusted, c.area_front * half, h);
  c.surface_u = pick(c.crusted, share * half, h);
  c.surface_phi = pick(c.crusted, share, 1.0);
}

// Conductance over area and distance of core face j, 1 <= j <= n_core.
INLINE V face_shape(const Piece &c, Count j, V scale, V s) {
  if (c.bone == 0) return c.shape[j] * scale;
  const V *x = c.shape + 4 * j;
  V cubic = x[0] + s * (x[1] + s * (x[2] + s * x[3]));
  return j <= c.bone ? cubic : cubic * scale;
}

// At the bone: both half cells in series.
INLINE Joint join_bone(const Piece &c, V meat, V scale, V s) {
  Near by = near(c, meat);
  V resists = c.bone_half / c.k_bone + c.meat_half * (s - c.bone_radius) / (meat_spread(c, 2.0 * meat) * by.heat);
  V g = face_shape(c, c.bone, scale, s) / resists, beta = g * by.per;
  return {g / c.c_bone, beta, g * by.t - beta * meat};
}

// Forward elimination, centre to front: u_j = P_j + Q_j u_(j+1). BONE: some cells lie in a bone.
template <bool BONE> struct Elimination {
  Piece &c;
  // Copies: stores into the cells cannot change them, so they stay in registers.
  const PieceGiven x = c;
  const Count last, bone = BONE ? c.bone : 0;
  const V s = c.now[FRONT], sweep = c.sweep_front, scale = c.scale;
  const V meat = c.g0 * (c.now[GRID_VOLUME] - x.bone_volume), still = c.g0 * x.bone_volume;
  const Past past = past_of(c, false), in_bone = past_of(c, true);
  const V *u_now = c.u, *u_old = c.u_old, *u_older = c.u_older, *f = c.f, *df = c.df, *shape = c.shape;
  const V onward = c.onward;
  const M again;
  const bool plain;  // all lanes begin a step
  V *keep_alpha = c.alpha, *keep_p = c.p, *keep_q = c.q;
  V u, one, two;  // heat of the row's cell: before the pass, and at older levels
  Joint down = {};  // its inner face
  V p = all(0.0), q = all(0.0);

  INLINE_MEMBER Elimination(const Group &g, Piece &piece)
      : c(piece), last(g.n_core - 1), again(g.again), plain(!any(g.again)), one(c.u_old[0]), two(c.u_older[0]) {
    u = look(0, one, two);
  }

  INLINE_MEMBER V look(Count j, V one, V two) {
    V guess = one + onward * (one - two);
    return plain ? guess : pick(again, u_now[j], guess);
  }

  // Face j between cells of heat `inner` and `outer`.
  INLINE_MEMBER Joint face(Count j, V inner, V outer) {
    if (BONE && j == bone) {
      Joint joint = join_bone(c, outer, scale, s);
      c.joint_pull = joint.alpha - joint.beta, c.joint_rest = joint.rest;
      return joint;
    }
    V shaped = BONE ? face_shape(c, j, scale, s) : shape[j] * scale;
    if (BONE && j < bone) return {x.k_bone / x.c_bone * shaped, x.k_bone / x.c_bone * shaped, all(0.0)};
    V k = meat_spread(x, inner + outer) * shaped, w = f[j] * sweep;
    return {k - w, k + w, all(0.0)};
  }

  INLINE_MEMBER void row(Count j) {
    Joint up = c.at_front;
    V u_up = u, one_up = one, two_up = two;
    if (j < last) {
      one_up = u_old[j + 1], two_up = u_older[j + 1], u_up = look(j + 1, one_up, two_up);
      up = face(j + 1, u, u_up);
    }
    V diag = df[j] * (j < bone ? still : meat) + up.alpha + down.beta;
    V hist = df[j] * (j < bone ? in_bone.one * one + in_bone.two * two : past.one * one + past.two * two);
    if (BONE || j == last) hist += down.rest - up.rest;
    V inverse = 1.0 / (diag - down.alpha * q);
    keep_alpha[j] = down.alpha;
    keep_p[j] = p = (down.alpha * p - hist) * inverse;
    keep_q[j] = q = up.beta * inverse;
    u = u_up, one = one_up, two = two_up, down = up;
  }
};

// Cores of all pieces; of two without a bone side by side, because each waits for its divisions.
INLINE void eliminate_cores(Group &g) {
  const Count n = g.n_core;
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    if (c.bone) {
      Elimination<true> one(g, c);
      for (Count j = 0; j < n; ++j) one.row(j);
    } else if (i + 1 < g.n_class && !g.pieces[i + 1].bone) {
      Elimination<false> one(g, c), two(g, g.pieces[++i]);
      for (Count j = 0; j < n; ++j) one.row(j), two.row(j);
    } else {
      Elimination<false> one(g, c);
      for (Count j = 0; j < n; ++j) one.row(j);
    }
  }
}

// Backward elimination, surface to front: T_j = P_j + Q_j T_(j-1). Steam of `steam_flux` crosses the crust.
INLINE void eliminate_crust(const Group &g, Piece &c) {
  const Count n = g.n_crust;
  const V s = c.now[FRONT], steam = c.steam_flux * c.vapour_cp, wide = (c.radius - s) / (double)n;
  V alpha_up = c.surface_u + steam * (1.0 - c.surface_phi), beta_up = c.surface_u - steam * c.surface_phi;
  V p = c.source_temp, q = all(0.0), outer = c.face_volume;
  c.cv[n] = outer;
  for (Count j = n - 1; j >= 0; --j) {
    V r = s + (double)j * wide, v = volume_at(c, r), alpha, beta;
    V sweep = 0.5 * (c.g0 * v + c.g1 * c.cv_old[j] + c.g2 * c.cv_older[j]);
    if (j > 0) {
      V w = sweep * c.c_crust - 0.5 * steam, k = c.crust_span * (double)n * area_at(c, r);
      alpha = k - w;
      beta = k + w;
    } else {  // the front seen from the crust
      alpha = c.crust_g - 2.0 * sweep * c.c_crust + steam;
      beta = c.crust_g;
    }
    V diag = c.g0 * (outer - v) * c.c_crust + alpha_up + beta;
    V inverse = 1.0 / (diag - beta_up * q);
    c.cv[j] = v;
    c.cp[j] = p = (beta_up * p - c.c_hist[j]) * inverse;
    c.cq[j] = q = alpha * inverse;
    alpha_up = alpha, beta_up = beta, outer = v;
  }
}

// Where the front stands, and what joins the cells to it.
INLINE void place_front(const Group &g, Piece &c) {
  const V s = c.now[FRONT];
  c.now[GRID_VOLUME] = volume_at(c, s);
  c.sweep_front = 0.5 * (c.g0 * c.now[GRID_VOLUME] + c.g1 * c.old[GRID_VOLUME] + c.g2 * c.older[GRID_VOLUME]);
  c.area_front = area_at(c, s);
  c.scale = c.bone ? 1.0 / (s - c.bone_radius) : c.area_front / s;
  join_front_and_surface(g, c, face_shape(c, g.n_core, c.scale, s));
  c.inside.low = all(1e9);
}

// What does not depend on the pressure, to the balance L flux = A - B T_f at the front.
INLINE void balance(const Group &g, Piece &c) {
  V p = c.p[g.n_core - 1], q = c.q[g.n_core - 1];
  V a = c.core_g * (c.last_rest + c.last_per * (p + q * c.front_rest)), b = c.core_g * (1.0 - c.last_per * q * c.front_heat);
  V bare_a = a + c.crust_g * c.source_temp - c.coat_past, bare_b = b + c.crust_g + c.coat_g;
  if (!any(c.crusted)) {
    for (Count j = 0; j <= g.n_crust; ++j) c.cv[j] = c.face_volume;
    c.balance_a = bare_a, c.balance_b = bare_b;
    return;
  }
  eliminate_crust(g, c);
  c.balance_a = pick(c.crusted, a + c.crust_g * c.cp[0], bare_a);
  c.balance_b = pick(c.crusted, b + c.crust_g * (1.0 - c.cq[0]), bare_b);
}

// Temperatures of all cells from the front temperature; surface temperature and flux.
INLINE void substitute(const Group &g, Piece &c) {
  const V front = c.front_temp, from = c.flash_from, *p = c.p, *q = c.q;
  const V boiling = c.front_heat * front + c.front_rest;
  V *cell = c.u, u = boiling;
  for (Count j = g.n_core - 1; j >= 0; --j)  // flashing cells are held at boiling
    cell[j] = u = pick(from <= (double)j, boiling, p[j] + q[j] * u);
  V outer = front;
  if (any(c.crusted))
    for (Count j = 0; j < g.n_crust; ++j) c.ct[j] = outer = pick(c.crusted, c.cp[j] + c.cq[j] * outer, front);
  else
    for (Count j = 0; j < g.n_crust; ++j) c.ct[j] = front;
  V phi = pick(c.crusted, c.surface_phi, 0.0);
  c.face_temp = (1.0 - phi) * outer + phi * c.source_temp;
  c.surface_flux = c.surface_u * (c.source_temp - outer);
  c.surface_temp = c.source_temp - c.surface_flux / c.now[H_NOW];
}

// ---- evaporation -------------------------------------------------------------------------------------------

// The contiguous cells next to the front that would pass boiling, and what they must give off to stay there; of the lanes
// that are `going`.
INLINE Flash look_inside(const Group &g, const Piece &c, V boiling, M going) {
  Flash x = {all(0.0), all(0.0), all((double)g.n_core), boiling};
  V beyond = all(1e18), fastest = all(0.0), short_of = all(1e18), slower = all(1.0);
  const V meat = c.g0 * (c.now[GRID_VOLUME] - c.bone_volume), pulls = 2.0 * c.sweep_front - meat;
  const Past past = past_of(c, false);
  const V at = c.front_heat * boiling + c.front_rest, settled = 1e-9 * c.front_heat;
  for (Count j = g.n_core - 1; j >= 0; --j) {
    V over = c.p[j] + c.q[j] * at - at;
    M hot = going & (over > settled);
    if (j < c.bone) hot = M{};
    M ends = going & ~hot;
    if (j + 1 < g.n_core) {  // the last cell that boils draws on this one
      x.heat += pick(ends, c.alpha[j + 1] * over, 0.0);
      x.slope += pick(ends, c.alpha[j + 1] * (c.q[j] - 1.0), 0.0);
    }
    if (j >= c.bone) put(short_of, ends, -over), put(slower, ends, 1.0 - c.q[j]);
    if (!any(hot)) break;
    V pull = c.df[j] * pulls, known = c.df[j] * (past.one * c.u_old[j] + past.two * c.u_older[j]);
    if (j > 0 && j == c.bone) pull += c.joint_pull, known += c.joint_rest;
    x.heat += pick(hot, pull * at - known, 0.0);
    x.slope += pick(hot, pull, 0.0);
    put(beyond, hot, least(beyond, over)), put(fastest, hot, most(fastest, 1.0 - c.q[j]));
    put(x.first, hot, (double)j);
    going = hot;
  }
  x.slope *= c.front_heat;
  x.low = boiling - short_of / (slower * c.front_heat), x.high = boiling + beyond / (most(fastest, 1e-9) * c.front_heat);
  return x;
}

// The same at another boiling point: linear while the same cells boil.
INLINE Flash flash_of(const Group &g, Piece &c, V boiling) {
  Flash &x = c.inside;
  M outside = (boiling <= x.low) | (boiling >= x.high);
  if (any(outside)) {
    Flash now = look_inside(g, c, boiling, outside);
    put(x.heat, outside, now.heat), put(x.slope, outside, now.slope), put(x.first, outside, now.first);
    put(x.at, outside, now.at), put(x.low, outside, now.low), put(x.high, outside, now.high);
  }
  return {x.heat + x.slope * (boiling - x.at), x.slope, x.first, x.at, x.low, x.high};
}

// Temperature of the evaporation plane of a piece in air: heat reaching it = vapour leaving it.
INLINE void dry_in_air(const Group &g, Piece &c) {
  M moving = c.in_air & (c.diffusivity > 0.0);
  if (!any(moving)) return;
  V dry = c.radius - c.now[FRONT] + (1.0 - c.wet) * c.coat;
  V path = 1.0 / g.air_transfer + dry / most(c.diffusivity, 1e-30);  // of vapour through crust and dry coat
  V boiling = g.atmosphere_boiling, latent = latent_heat(boiling), damp = g.air_vapour;
  V a = c.balance_a, b = c.balance_b, hottest = least(a / b, boiling), t = least(c.now[PLANE_THEN], hottest);
  for (int i = 0; i < 8 && any(moving); ++i) {
    V kelvin = t + KELVIN, vapour = saturation(most(t, 0.0)) / (GAS_STEAM * kelvin);
    V gap = a - b * t - latent * most(vapour - damp, 0.0) / path;
    V steep = latent * vapour * (latent / (GAS_STEAM * kelvin) - 1.0) / kelvin / path;
    V moved = gap / (-b - pick(vapour > damp, steep, 0.0));
    put(t, moving, least(t - moved, hottest));
    moving &= size_of(moved) >= PLANE_SETTLED_K;
  }
  c.plane = t;
}

// Front and flash flux [kg/(m2 s)] and temperature of the front at a boiling point; slope of the sum in it. `per`: one over
// the latent heat.
INLINE V boil(const Group &g, Piece &c, V boiling, V per) {
  V a = c.balance_a, b = c.balance_b;
  M dry = c.spent > 1.0, boils = ~dry & (a > b * boiling);
  V flux = pick(boils, (a - b * boiling) * per, 0.0), slope = pick(boils, -b * per, 0.0);
  V front = boiling;
  if (any(~boils)) front = pick(boils, boiling, a / b);
  M in_air = c.in_air & (c.diffusivity > 0.0) & ~dry;
  if (any(in_air)) {
    put(flux, in_air, most(a - b * c.plane, 0.0) * per);
    put(front, in_air, c.plane);
    put(slope, in_air, 0.0);
  }
  c.flux = flux, c.front_temp = front, c.flash = all(0.0), c.flash_from = all((double)g.n_core);
  Flash x = flash_of(g, c, boiling);
  M inside = ~dry & (x.first < (double)g.n_core);
  if (!any(inside)) return slope;
  V from_source = c.crust_g * c.source_temp - c.coat_past, to_source = c.crust_g + c.coat_g;
  a = pick(c.crusted, c.crust_g * c.cp[0], from_source);
  b = pick(c.crusted, c.crust_g * (1.0 - c.cq[0]), to_source);
  V crust = a - b * boiling;  // negative where a cooling crust draws heat from the core
  M both = inside & (x.heat > 0.0) & (crust >= 0.0), inner = inside & ~both & (x.heat + crust > 0.0);
  M flashes = both | inner;
  put(c.flux, flashes, pick(both, crust * per, 0.0));
  put(c.front_temp, flashes, boiling);
  put(slope, flashes, (x.slope - b) * per);
  c.flash = pick(both, x.heat * per, pick(inner, (x.heat + crust) * per, 0.0));
  c.flash_from = pick(flashes, x.first, (double)g.n_core);
  return slope;
}

struct Rate {
  V value, slope;
};

// Steam given off by all pieces [kg/s] and its slope in the boiling point.
INLINE Rate evaporate(Group &g, V boiling) {
  Rate made = {all(0.0), all(0.0)};
  const V per_latent = 1.0 / latent_heat(boiling);
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    V slope = boil(g, c, boiling, per_latent);
    V given = c.area * (c.flux + c.flash), grows = c.area * slope;
    made.value += given, made.slope += grows;
  }
  return {sum_of_classes(made.value), sum_of_classes(made.slope)};
}

// ---- headspace, lid, oil -----------------------------------------------------------------------------------

// Mass flow [kg/s] C_d A sqrt(2 rho dp), regularised at zero, and its slope in dp.
INLINE Rate orifice(V area, V density, V difference) {
  M flows = (difference > 0.0) & (area > 0.0);
  if (!any(flows)) return {all(0.0), all(0.0)};
  V scale = area * root(2.0 * density), r = root(most(difference, 0.0) + SMOOTHING_PA);
  V slope = scale * (0.5 * difference + SMOOTHING_PA) / (r * r * r);
  return {pick(flows, scale * difference / r, 0.0), pick(flows, slope, 0.0)};
}

// Gas leaving through relief, leak and vent [kg/s] and its slope in pressure.
INLINE Rate outflow(const Group &g, V pressure, V density) {
  V gauge = pressure - g.atmosphere, over = gauge - g.relief_gauge;
  Rate out = orifice(g.leak_area + pick(g.lid == LID_VENT, g.vent_area, 0.0), density, gauge);
  out.value += pick(over > 0.0, g.relief_slope * over, 0.0);
  out.slope += pick(over > 0.0, g.relief_slope, 0.0);
  return out;
}

// Steam condensing on the lid [kg/s], slope in steam pressure, and the new lid temperature.
INLINE Rate condense(Group &g, V steam) {
  V past = g.g1 * g.old[LID_TEMP] + g.g2 * g.older[LID_TEMP];
  V base = g.lid_heat * g.g0 + g.lid_room_ua;
  V free = (g.lid_room_ua * g.room_temp - g.lid_heat * past) / base;
  steam = most(steam, EMPTY_PA);
  V dew = boiling_temp(steam), latent = latent_heat(dew), kelvin = dew + KELVIN;
  M wets = dew > free;
  V share = g.lid_ua * base / (base + g.lid_ua) / latent;
  V slope = GAS_STEAM * kelvin * kelvin / (steam * latent);
  g.now[LID_TEMP] = pick(wets, (free * base + g.lid_ua * dew) / (base + g.lid_ua), free);
  return {pick(wets, share * (dew - free), 0.0), pick(wets, share * slope, 0.0)};
}

// Pressure of closed vats at the new level by safeguarded Newton; every term of the balance grows with it.
// Lanes that have settled stay as they are while others go on. Returns the boiling point of every lane.
INLINE V solve_pressure(Group &g, M closed, V p, V boiling) {
  V past = g.g1 * g.old[PRESSURE] + g.g2 * g.older[PRESSURE], air = g.now[AIR_PRESSURE];
  V store = g.head_volume / g.head_temp_k, out = all(0.0), density = all(1.0), lid = g.now[LID_TEMP];
  V low = 0.3 * g.atmosphere, high = g.atmosphere + g.relief_gauge + 2e5;
  V outside = g.atmosphere / (GAS_AIR * g.head_temp_k);
  p = pick(closed, between(p, low, high), p);
  M moving = closed & g.running;
  for (int i = 0; i < 60; ++i) {
    boiling = pick(closed, boiling_temp(p), boiling);
    V steam = most(p - air, 0.0), kelvin = boiling + KELVIN;
    Rate lost = condense(g, steam), made = evaporate(g, boiling);
    density = (steam / GAS_STEAM + air / GAS_AIR) / g.head_temp_k;
    V mean_gas = p / (density * g.head_temp_k);
    Rate leaves = outflow(g, p, density), drawn = orifice(g.breather_area, outside, g.atmosphere - p);
    out = leaves.value;
    V d_boil = GAS_STEAM * kelvin * kelvin / (p * latent_heat(boiling));
    V gap = store * (g.g0 * p + past) - GAS_STEAM * (made.value - lost.value);
    gap += mean_gas * leaves.value - GAS_AIR * drawn.value;
    V slope = store * g.g0 - GAS_STEAM * (made.slope * d_boil - lost.slope);
    slope += mean_gas * leaves.slope + GAS_AIR * drawn.slope;
    high = pick(gap > 0.0, least(high, p), high);
    low = pick(gap > 0.0, low, most(low, p));
    V trial = p - gap / slope;
    M near = size_of(trial - p) < PRESSURE_SETTLED_PA;  // is right, though rounding may put it outside of the bracket
    trial = pick(near | ((low < trial) & (trial < high)), trial, 0.5 * (low + high));
    moving &= size_of(trial - p) >= PRESSURE_SETTLED_PA;
    put(p, moving, trial);
    if (!any(moving)) break;
  }
  V air_past = g.g1 * g.old[AIR_PRESSURE] + g.g2 * g.older[AIR_PRESSURE];
  V inflow = GAS_AIR * orifice(g.breather_area, outside, g.atmosphere - p).value / store;
  V left = between((inflow - air_past) / (g.g0 + out / (density * g.head_volume)), all(0.0), p);
  g.now[AIR_PRESSURE] = pick(closed, left, g.now[AIR_PRESSURE]);
  g.now[LID_TEMP] = pick(closed, g.now[LID_TEMP], lid);
  g.now[PRESSURE] = p;
  return boiling;
}

// Pressure, boiling point and evaporation; `told` are prescribed pressures.
INLINE void close_vat(Group &g, V told) {
  M table = g.pressure_table > 0.0;
  M closed = ~table & ((g.lid == LID_PRESSURE) | (g.lid == LID_VENT)), open = ~table & ~closed;
  V boiling = g.atmosphere_boiling, p = pick(open, g.atmosphere, g.now[PRESSURE]);
  if (any(table)) p = pick(table, told, p), boiling = pick(table, boiling_temp(p), boiling);
  V past = g.g1 * g.old[LID_TEMP] + g.g2 * g.older[LID_TEMP];
  V lid = (g.lid_room_ua * g.room_temp - g.lid_heat * past) / (g.lid_heat * g.g0 + g.lid_room_ua);
  put(g.now[AIR_PRESSURE], open, g.atmosphere);
  put(g.now[LID_TEMP], open, lid);
  g.now[PRESSURE] = p;
  if (any(closed & g.running))
    g.tsat = solve_pressure(g, closed, p, boiling);
  else
    evaporate(g, g.tsat = boiling);
}

// Heat stored in oil and vat metal [J], zero at 0 degC.
INLINE V oil_enthalpy(const Group &g, V t) {
  return g.oil_mass * t * (g.oil_cp0 + 0.5 * g.oil_cp1 * t) + g.metal_heat * t;
}

INLINE V oil_capacity(const Group &g, V t) { return g.oil_mass * (g.oil_cp0 + g.oil_cp1 * t) + g.metal_heat; }

// (M c_p + C_metal) dT_o/dt = Q_heater - sum S q - UA (T_o - T_room); on/off in a band, or proportional.
INLINE void solve_oil(Group &g) {
  V oil = g.now[OIL_TEMP], taken = all(0.0), slope = all(0.0);
  for (Count i = 0; i < g.n_class; ++i) {
    const Piece &c = g.pieces[i];
    taken += pick(c.in_air, 0.0, c.area * c.surface_flux);
    slope += pick(c.in_air, 0.0, c.area * c.surface_u);
  }
  taken = sum_of_classes(taken) + g.loss_ua * (oil - g.room_temp), slope = sum_of_classes(slope) + g.loss_ua;
  g.oil_taken = taken;
  M banded = g.band > 0.0;
  V share = between((g.set_c + 0.5 * g.band - oil) / most(g.band, 1e-30), all(0.0), all(1.0));
  V power = g.heater * pick(banded, share, pick(g.heating, 1.0, 0.0));
  slope += pick(banded & (power > 0.0) & (power < g.heater), g.heater / most(g.band, 1e-30), 0.0);
  // The first step after a switch takes the mean of the slopes at its ends: nothing of before the switch counts.
  V rate = pick(g.switched, 2.0 / g.step, g.g0), then = oil_enthalpy(g, g.old[OIL_TEMP]);
  V past = g.g1 * then + g.g2 * oil_enthalpy(g, g.older[OIL_TEMP]);
  V heat = rate * oil_enthalpy(g, oil) + pick(g.switched, -rate * then - g.oil_slope, past);
  V capacity = oil_capacity(g, oil);
  M free = g.oil_table == 0.0;
  put(g.now[OIL_TEMP], free, oil - (heat + taken - power) / (rate * capacity + slope));
  V made = (power - g.g1 * g.old[HEATER_HEAT] - g.g2 * g.older[HEATER_HEAT]) / g.g0;
  V gone = (taken - g.g1 * g.old[ROOM_HEAT] - g.g2 * g.older[ROOM_HEAT]) / g.g0;
  put(g.now[HEATER_HEAT], free, pick(g.switched, g.old[HEATER_HEAT] + power * g.step, made));
  put(g.now[ROOM_HEAT], free, gone);
}
