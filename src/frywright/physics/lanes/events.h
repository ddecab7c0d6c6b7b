// What can happen inside or at the end of a step: coating dry, heater switching, stage over.
#pragma once
#include "water.h"

constexpr double SEED_M = 1e-7;
constexpr double SEED_WATER_M = 3e-7;   // most crust that the first step of boiling on a dry surface may make
constexpr double EVENT_TEMP_K = 4e-3, FLOOR_TOLERANCE = 1e-3;
constexpr double DRY_SHARE = 1e-4;      // of its water that a piece at the floor may keep or lose too much
constexpr double MOST_TRIES = 40.0;     // then a step is kept as it is, and counted
constexpr double AFTER_FILM = 40.0;     // longest step after the coating water is gone, in first steps
constexpr double GROWTH = 1.8, AFTER_EVENT = 4.0;

// Coldest meat temperature of a piece: centre by parabola, or the meat beside the bone.
INLINE void read_core(Piece &c, M where) {
  V cold;
  if (!c.bone) {
    cold = meat_temp(c, c.u[0] - c.centre_weight * (c.u[1] - c.u[0]));
  } else {
    V left = temp_of(c, c.bone - 1, c.u[c.bone - 1]), right = meat_temp(c, c.u[c.bone]);
    V half_meat = c.meat_half * (c.now[FRONT] - c.bone_radius);
    V g_left = c.k_bone / c.bone_half, g_right = meat_spread(c, 2.0 * c.u[c.bone]) * meat_heat(c, right) / half_meat;
    cold = (g_left * left + g_right * right) / (g_left + g_right);
  }
  put(c.coldest, where, cold);
}

INLINE V coldest(const Group &g) {
  V low = all(1e9);
  for (Count i = 0; i < g.n_class; ++i) low = least(low, g.pieces[i].coldest);
  return least_of_classes(low);
}

// Signed distance past the condition that ends the stage; positive once met.
INLINE V condition(const Group &g, const V *level, V core) {
  V gauge = level[PRESSURE] - g.atmosphere, past = all(-1.0);
  put(past, g.until == UNTIL_OIL_ABOVE, level[OIL_TEMP] - g.until_value);
  put(past, g.until == UNTIL_CORE_ABOVE, core - g.until_value);
  put(past, g.until == UNTIL_GAUGE_ABOVE, gauge - g.until_value);
  put(past, g.until == UNTIL_GAUGE_BELOW, g.until_value - gauge);
  return past;
}

// Why a try fails, and the share of its step that would not.
struct Failure {
  M failed, forget;  // `forget`: not an event to return from
  V share;
};

INLINE void add(Failure &x, M failed, V share, bool forget) {
  x.failed |= failed;
  if (forget) x.forget |= failed;
  x.share = pick(failed, least(x.share, share), x.share);
}

// Mark tries as failed and ask for shorter ones; takes them off the undecided.
INLINE void shorter(Group &g, M &undecided, const Failure &x) {
  M failed = x.failed & undecided;
  put(g.wanted, failed, pick(x.forget, 0.0, most(g.wanted, g.step)));
  put(g.next_step, failed, most(g.step * between(x.share, all(0.05), all(0.95)), 1e-6));
  put(g.rejected, failed, g.rejected + 1.0);
  undecided &= ~failed;
}

// Water of a coating [kg/m2] that may be left, or lost too much, where it counts as dry.
INLINE V nearly_dry(const Group &g, const Piece &c) { return most(g.dry_share * c.film, 1e-7); }

// Film used up, boiling that starts on a dry surface, front at its floor, last water: of one piece.
INLINE void check_water(const Group &g, const Piece &c, Failure &x) {
  M falls = (g.time == g.lid_since) & (g.time > 0.0);  // boiling falls as a lid opens: what flashes then needs no time
  V film = c.now[FREE], before = c.old[FREE];
  M over = ~c.crusted & ~falls & (film < -nearly_dry(g, c)), dry = over & (before <= 0.0);
  if (!any(over)) return;
  add(x, dry & (film < -SEED_WATER_M * c.water) & (g.step > 1e-7), all(0.3), true);
  add(x, over & ~dry & (g.step > 1e-5), before / (before - film), false);
}

INLINE void check_floor(const Group &g, const Piece &c, Failure &x) {
  V before = c.old[FRONT_VOLUME], after = c.now[FRONT_VOLUME];
  M past = (c.spent == 0.0) & (after < c.floor_volume * (1.0 - FLOOR_TOLERANCE)) & (g.step > 1e-4);
  if (any(past)) add(x, past, (before - c.floor_volume) / (before - after), false);
  M drained = (c.spent == 1.0) & (c.now[EVAPORATED] > c.water_start * (1.0 + DRY_SHARE)) & (g.step > 1e-4);
  V left = c.water_start - c.old[EVAPORATED];
  if (any(drained)) add(x, drained, left / (c.now[EVAPORATED] - c.old[EVAPORATED]), false);
}

// The cooks whose tried step stands; for the others the next, shorter, try is set.
INLINE M accept(Group &g, M tried) {
  M forced = tried & (g.attempts > MOST_TRIES), undecided = tried & ~forced;
  put(g.forced, forced, g.forced + 1.0);
  V jump = size_of(g.tsat - g.tsat_old);
  M leaps = (jump > 1.5 * g.max_tsat_step) & (g.step > 2e-3) & (g.pressure_table == 0.0);
  shorter(g, undecided, {leaps, leaps, g.max_tsat_step / jump});
  Failure water = {M{}, M{}, all(1.0)};
  for (Count i = 0; i < g.n_class; ++i) check_water(g, g.pieces[i], water), check_floor(g, g.pieces[i], water);
  shorter(g, undecided, {any_of_classes(water.failed), any_of_classes(water.forget), least_of_classes(water.share)});
  V half = 0.5 * g.swing, aim = g.set_c + pick(g.heating, half, -half);
  V old = g.old[OIL_TEMP] - aim, now = g.now[OIL_TEMP] - aim;
  old = pick(g.heating, old, -old), now = pick(g.heating, now, -now);
  M switches = (g.oil_table == 0.0) & (g.band == 0.0) & (old < -EVENT_TEMP_K) & (now > EVENT_TEMP_K);
  shorter(g, undecided, {switches & (g.step > 2e-3), M{}, old / (old - now)});
  old = condition(g, g.old, g.core_old), now = condition(g, g.now, coldest(g));
  M late = (g.until != UNTIL_TIME) & (g.step >= 0.05) & (old < 0.0) & (now > 0.02 * (now - old));
  shorter(g, undecided, {late & (old / (old - now) < 0.95), M{}, old / (old - now)});
  return undecided | forced;
}

// On/off control at the end of a step; a switch restarts the oil history.
INLINE void switch_heater(Group &g, M where) {
  V oil = g.old[OIL_TEMP], half = 0.5 * g.swing;
  M off = oil >= g.set_c + half - EVENT_TEMP_K, on = ~off & (oil <= g.set_c - half + EVENT_TEMP_K);
  M now = (g.heating & ~off) | on, switched = where & (now ^ g.heating);
  put(g.heating, where, now);
  g.switched |= switched;
}

// Cells of both known levels after every one of them has handed a slice outward, heat and holding share and all: the front
// moved from `old` to `now` at once.
INLINE void hand_outward(const Group &g, const Piece &c, V old, V now, M where) {
  const Count n = g.n_core;
  V high = now, heat = c.u_old[n - 1], before = c.u_older[n - 1], phi = c.phi_old[n - 1];
  for (Count j = n - 1; j > 0; --j) {
    V low = face_volume(c, j, now), share = (face_volume(c, j, old) - low) / (high - low);
    V heat_in = c.u_old[j - 1], before_in = c.u_older[j - 1], phi_in = c.phi_old[j - 1];
    put(c.u_old[j], where, heat + (heat_in - heat) * share);
    put(c.u_older[j], where, before + (before_in - before) * share);
    put(c.phi_old[j], where, phi + (phi_in - phi) * share);
    heat = heat_in, before = before_in, phi = phi_in, high = low;
  }
}

// Give a piece a seed of crust once its coating water is used up. Both known levels get it, so that the march goes on.
INLINE void start_crust(Group &g, Piece &c, M where) {
  const Count n = g.n_core, m = g.n_crust;
  V old = c.old[GRID_VOLUME], front = c.front_temp, rest = c.old[FREE], held = c.water * c.phi_old[n - 1];
  V seed = most(-rest / held, SEED_M), s = c.radius - seed, now = volume_at(c, s), dried = old - now;
  V wet[] = {c.u_old[n - 1], c.u_older[n - 1]}, wide = seed / (double)m;
  hand_outward(g, c, old, now, where);
  for (Count j = 0; j < m; ++j) {
    V inside = volume_at(c, s + (double)j * wide);
    put(c.cv_old[j], where, inside), put(c.cv_older[j], where, inside);
    put(c.ct_old[j], where, front), put(c.ct_older[j], where, front);
  }
  put(c.cv_old[m], where, c.face_volume), put(c.cv_older[m], where, c.face_volume);
  V * levels[] = {c.old, c.older};
  for (int i = 0; i < 2; ++i) {
    V *level = levels[i];
    put(level[FRONT], where, s);
    put(level[FRONT_VOLUME], where, now);
    put(level[GRID_VOLUME], where, now);
    put(level[HELD], where, level[HELD] - dried * held);
    put(level[FREE], where, level[FREE] + dried * held);
    put(level[HEAT_OUT], where, level[HEAT_OUT] + dried * (wet[i] - c.c_crust * front));
  }
  c.crusted |= where;
}

// Share of air in the headspace once the steam given off so far has stirred and displaced it.
static double air_left(Group &g, int l) {
  V all_made = all(0.0);
  for (Count i = 0; i < g.n_class; ++i) {
    V given = g.pieces[i].area * g.pieces[i].old[EVAPORATED];
    all_made += given;
  }
  double made = sum_of_classes(all_made)[l], volume = made * GAS_STEAM * lane_of(g.head_temp_k, l) / lane_of(g.atmosphere, l);
  V left = exponential(all(-(volume > 0.0 ? volume : 0.0) / lane_of(g.head_volume, l)));
  return lane_of(left, 0);
}

// Apply lid state and set point of the current stage of cook l, or finish the cook. A stage that ends on the clock
// gets what is left of its time; a vent without pressure is none.
static void enter_stage(Group &g, const Job &job, int l) {
#define AT(x) lane_of(x, l)
  const double *span = job.span + N_SPAN * job.first_span[g.cook[l]];
  Count number = (Count)AT(g.stage), count = job.span_count[g.cook[l]];
  double gauge = AT(g.old[PRESSURE]) - AT(g.atmosphere), duration = 0.0;
  for (; number < count; ++number) {
    const double *x = span + N_SPAN * number;
    duration = x[S_DURATION];
    if (x[S_ENDS_AT] >= 0.0) {
      double left = x[S_ENDS_AT] - AT(g.time);
      duration = left > 1e-6 ? left : 0.0;
    }
    bool vented = x[S_LID] == LID_VENT && x[S_UNTIL] == UNTIL_GAUGE_BELOW && gauge <= x[S_VALUE];
    if (duration != 0.0 && !vented) break;
  }
  AT(g.stage) = (double)number, AT(g.stage_start) = AT(g.time);
  if (number >= count) {
    g.ended[l] = 1.0;
    return;
  }
  const double *x = span + N_SPAN * number;
  AT(g.duration) = duration, AT(g.set_c) = x[S_SET], AT(g.until) = x[S_UNTIL], AT(g.until_value) = x[S_VALUE];
  double lid = x[S_LID], atmosphere = AT(g.atmosphere);
  if (lid == LID_PRESSURE && AT(g.lid) == LID_OPEN) AT(g.old[AIR_PRESSURE]) = atmosphere * air_left(g, l);
  if (lid != AT(g.lid)) {
    AT(g.lid) = lid, AT(g.lid_since) = AT(g.time), AT(g.next_step) = AT(g.first_step);
    set_lane(g.oil_restart, l, true);
    if (lid == LID_OPEN || lid == LID_REST) {
      AT(g.old[PRESSURE]) = AT(g.old[AIR_PRESSURE]) = atmosphere;
      AT(g.tsat_old) = AT(g.atmosphere_boiling);
    }
    for (Count i = 0; i < g.n_class; ++i) {
      set_lane(g.pieces[i].restart, l, true);
      set_lane(g.pieces[i].in_air, l, lid == LID_REST);
    }
  }
  M here = M{};
  set_lane(here, l, true);
  switch_heater(g, here);
#undef AT
}
