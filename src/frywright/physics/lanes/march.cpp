// Marches cooks to the end of their programs with variable-step BDF2; a lane takes the next cook when its own ends.
//
// Each pass is one inner pass of every cook, each with its own step length: a cook whose front has settled begins
// its next step while its neighbours go on with theirs. A step is tried again, shorter, when an event falls inside it.
#include "events.h"

constexpr double MOST_PASSES = 20;  // of a step whose front passes the last cell
constexpr double VENT_SHARE = 0.5;  // of the early steps elsewhere: a vent's flash is the sharpest bend of a cook

// d/dt at the new level = g0 new + g1 old + g2 older, and 1 / g0.
struct Weights {
  V g0, g1, g2, per_g0;
};

INLINE Weights pick(M where, const Weights &a, const Weights &b) {
  return {pick(where, a.g0, b.g0), pick(where, a.g1, b.g1), pick(where, a.g2, b.g2), pick(where, a.per_g0, b.per_g0)};
}

// Of backward Euler, after a restart.
INLINE Weights first_order(V step) {
  V per = 1.0 / step;
  return {per, -per, all(0.0), step};
}

// Of BDF2.
INLINE Weights second_order(V step, V last) {
  V w = step / last, per = 1.0 / step, part = 1.0 / (1.0 + w);
  return {(1.0 + 2.0 * w) * part * per, -(1.0 + w) * per, w * w * part * per, step * (1.0 + w) / (1.0 + 2.0 * w)};
}

// A prescribed curve (0: oil, 1: pressure) at the end of each cook's step, held at its ends.
static V told(Group &g, const Job &job, int which, M where) {
  V value = all(0.0), now = g.time + g.step;
  for (int l = 0; l < LANES; ++l) {
    if (!get_lane(where, l)) continue;
    Count row = 2 * g.cook[l] + which, n = job.table_count[row], &i = g.cursor[2 * l + which];
    const double *x = job.table + 2 * job.table_start[row];
    double t = lane_of(now, l);
    while (i > 0 && t <= x[2 * (i - 1)]) --i;
    while (i < n && t > x[2 * i]) ++i;
    double v = x[2 * (i < n ? i : n - 1) + 1];
    if (i > 0 && i < n) v = x[2 * i - 1] + (t - x[2 * i - 2]) / (x[2 * i] - x[2 * i - 2]) * (v - x[2 * i - 1]);
    lane_of(value, l) = v;
  }
  return value;
}

// Time until the heater will switch by the oil's slope now and what it was; at once where the oil is already past.
INLINE V switches_in(const Group &g) {
  V half = 0.5 * g.swing, to_go = g.set_c + pick(g.heating, half, -half) - g.old[OIL_TEMP];
  V slope = (pick(g.heating, g.heater, 0.0) - g.taken_old) / oil_capacity(g, g.old[OIL_TEMP]);
  V bend = (slope - (g.old[OIL_TEMP] - g.older[OIL_TEMP]) / g.last_step) / g.last_step;  // half the curvature, twice
  V straight = to_go / slope, bent = to_go / (slope + pick(g.oil_restart | g.switched, 0.0, bend) * straight);
  V time = pick(bent > 0.0, bent, straight);
  M switches = (g.oil_table == 0.0) & (g.band == 0.0) & (g.heater > 0.0) & (straight > 0.0);
  return pick(switches, time, 1e9);
}

// Time until the coating is dry, the front at its floor or the last water gone, at the rate of the last step.
INLINE V water_lasts(const Group &g, const Piece &c) {
  V to_floor = (c.old[FRONT_VOLUME] - c.floor_volume) * c.water, to_dry = c.water_start - c.old[EVAPORATED];
  V left = pick(c.crusted, pick(c.spent == 1.0, to_dry, to_floor), c.old[FREE]);
  V flux = c.flux + c.flash - pick(c.crusted, 0.0, c.dripped / g.last_step);
  V straight = left / flux, mean = (c.older[FREE] - c.old[FREE]) / g.last_step;  // of the last step; its end has `flux`
  M steady = c.crusted | c.restart | (straight > 3.0 * g.last_step);
  V bent = left / (flux + pick(steady, 0.0, flux - mean) * (straight / g.last_step));
  V time = pick(bent > 0.0, bent, straight);
  return pick((left > 0.0) & (flux > 0.0), most(time, 1e-3), 1e9);
}

// Length of the next try: growth, and what is known to happen next; two steps of one length lead there.
INLINE void choose_step(Group &g, M fresh) {
  V early = (g.early_step + g.early_share * (g.time - g.lid_since)) * pick(g.lid == LID_VENT, VENT_SHARE, 1.0);
  V step = least(least(g.next_step, g.max_step), early), left = switches_in(g);
  for (Count i = 0; i < g.n_class; ++i) left = least(left, water_lasts(g, g.pieces[i]));
  left = least_of_classes(left);
  V ends = g.stage_start + g.duration - g.time;
  left = pick(ends <= left * 1.05, ends, left);
  M there = left <= step * 1.000001;
  put(g.wanted, fresh & there, most(g.wanted, step));
  put(g.step, fresh, pick(there, left, pick((left < 2.0 * step) & (g.attempts == 0.0), 0.5 * left, step)));
}

// The known parts of the storage rates of crust cells.
INLINE void predict_crust(const Group &g, Piece &c) {
  const V crust_1 = c.g1 * c.c_crust, crust_2 = c.g2 * c.c_crust;
  const V *v1 = c.cv_old, *v2 = c.cv_older;
  for (Count j = 0; j < g.n_crust; ++j)
    c.c_hist[j] = crust_1 * ((v1[j + 1] - v1[j]) * c.ct_old[j]) + crust_2 * ((v2[j + 1] - v2[j]) * c.ct_older[j]);
}

// Trial values of the new level by extrapolation, and the known parts of the storage rates.
INLINE void predict(Group &g, M fresh) {
  const Weights one = first_order(g.step), two = second_order(g.step, g.last_step), oil = pick(g.oil_restart, one, two);
  const V onward = g.step / g.last_step;
  put(g.g0, fresh, oil.g0), put(g.g1, fresh, oil.g1), put(g.g2, fresh, oil.g2);
  V ratio = pick(g.oil_restart, 0.0, onward);
  for (int r = 0; r < N_COOK_SCALAR; ++r) put(g.now[r], fresh, g.old[r] + ratio * (g.old[r] - g.older[r]));
  // After a switch the oil's past says nothing of its slope; its balance does.
  V power = pick(g.heating, g.heater, 0.0), slope = (power - g.taken_old) / oil_capacity(g, g.old[OIL_TEMP]);
  put(g.now[OIL_TEMP], fresh & (g.switched | g.oil_restart) & (g.band == 0.0), g.old[OIL_TEMP] + g.step * slope);
  put(g.oil_slope, fresh, power - g.taken_old);
  g.switched &= ~g.oil_restart;
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    Weights x = pick(c.restart, one, two);
    put(c.g0, fresh, x.g0), put(c.g1, fresh, x.g1), put(c.g2, fresh, x.g2), put(c.per_g0, fresh, x.per_g0);
    ratio = pick(c.restart, 0.0, onward);
    for (int r = 0; r < GRID_VOLUME; ++r) put(c.now[r], fresh, c.old[r] + ratio * (c.old[r] - c.older[r]));
    put(c.flash, fresh, most(c.now[FLASH_THEN], 0.0));
    put(c.onward, fresh, ratio);
    predict_crust(g, c);
    let_go(g, c, fresh);
  }
  for (Count i = 0; i < g.n_class; ++i) {  // apart: what waits for divisions in one piece is done beside the next
    Piece &c = g.pieces[i];
    put(c.now[FRONT], fresh, most(least(c.now[FRONT], c.old[FRONT]), LOWEST_FRONT * c.radius));
    Stirred x = stir(g, c);
    put(c.now[H_NOW], fresh, x.h), put(c.flux, fresh, x.flux);
    keep_water(c, water_after(g, c, c.flux + c.flash), fresh);
  }
}

// Whether the front has passed the last cell as it was foreseen: the next grid must be laid anew. Cells far thinner than
// the steps are long.
INLINE V past_grid(const Group &g, const Piece &c) {
  V last = face_volume(c, g.n_core - 1, c.now[GRID_VOLUME]);
  return pick(c.crusted & (c.spent == 0.0) & (c.now[FRONT_VOLUME] < last), 1.0, 0.0);
}

// One inner pass; returns how far the fronts moved [m].
INLINE V solve_pass(Group &g, const Job &job) {
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    see_source(g, c);
    wet_coat(c);
    c.steam_flux = c.flux;
    place_front(g, c);
  }
  eliminate_cores(g);
  for (Count i = 0; i < g.n_class; ++i) balance(g, g.pieces[i]);
  M tables = g.pressure_table > 0.0;
  for (Count i = 0; i < g.n_class; ++i) dry_in_air(g, g.pieces[i]);
  close_vat(g, any(tables) ? told(g, job, 1, tables) : all(0.0));
  for (Count i = 0; i < g.n_class; ++i) substitute(g, g.pieces[i]);
  solve_oil(g);
  V moved = all(0.0);
  for (Count i = 0; i < g.n_class; ++i) moved = most(moved, move_front(g, g.pieces[i]));
  return most_of_classes(moved);
}

// Carry the holding shares of cook l onto the new grid for a step of any length, and where the front stands.
static void carry(Group &g, Piece &c, int l) {
#define AT(x) lane_of(x, l)
  const Count n = g.n_core, first = c.bone;
  double bone = AT(c.bone_volume), old = AT(c.old[GRID_VOLUME]), now = AT(c.now[GRID_VOLUME]);
  auto inside = [&](Count j, double whole) { return bone + AT(c.f[j]) * (whole - bone); };
  double end = AT(c.now[FRONT_VOLUME]), total = 0.0;
  for (Count j = n - 1; j >= first; --j) {
    double high = j == n - 1 ? end : inside(j + 1, now), low = inside(j, now), outer = high, got = 0.0;
    Count k = j == n - 1 || inside(j + 1, old) >= high ? j : j + 1;
    for (; k > first && inside(k, old) > low; --k) {  // from old cell k, then from the ones inside it
      double edge = inside(k, old);
      if (outer > edge) got += AT(c.phi[k]) * (outer - edge), outer = edge;
    }
    got += AT(c.phi[k]) * (outer - low);
    AT(c.phi_old[j]) = got / (high - low);
    total += got;
  }
  if (AT(c.spent) > 0.0 && total > 0.0)  // the front stands: what boils off leaves every cell
    for (Count j = first; j < n; ++j) AT(c.phi_old[j]) *= AT(c.now[HELD]) / (AT(c.water) * total);
#undef AT
}

// Carry the holding shares onto the grid of the accepted steps, so that they add up to HELD. Each cell hands a slice
// outward; cells are finest at the front, so a step that moves no front past its last cell moves no face past its cell.
INLINE void keep_held(Group &g, Piece &c, M kept) {
  if (!any(c.drip_half > 0.0)) return;
  const Count last = g.n_core - 1;
  V old = c.old[GRID_VOLUME], now = c.now[GRID_VOLUME], edge = face_volume(c, last, old);
  M plain = kept & (edge <= c.now[FRONT_VOLUME]) & (c.spent == 0.0), far = kept & ~plain;
  V moved = (old - now) / (now - c.bone_volume), before = c.phi[c.bone];
  put(c.phi_old[c.bone], plain, before);
  for (Count j = c.bone + 1; j < last; ++j) {
    V phi = c.phi[j];
    put(c.phi_old[j], plain, phi + (before - phi) * (c.fdf[j] * moved));
    before = phi;
  }
  V low = face_volume(c, last, now), phi = c.phi[last];
  put(c.phi_old[last], plain, phi + (before - phi) * ((edge - low) / (c.now[FRONT_VOLUME] - low)));
  if (any(far))
    for (int l = 0; l < LANES; ++l)
      if (get_lane(far, l)) carry(g, c, l);
}

// Levels of cells change places where all steps stand.
INLINE void turn(V *&now, V *&old, V *&older) {
  V *oldest = older;
  older = old, old = now, now = oldest;
}

INLINE void keep_cells(const V *now, V *old, V *older, Count n, M kept) {
  for (Count j = 0; j < n; ++j) put(older[j], kept, old[j]), put(old[j], kept, now[j]);
}

// Make the new level the old one where the step stands.
INLINE void store(Group &g, M kept) {
  for (int r = 0; r < N_COOK_SCALAR; ++r) put(g.older[r], kept, g.old[r]), put(g.old[r], kept, g.now[r]);
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    keep_held(g, c, kept);
    if (!any(g.running & ~kept)) {
      turn(c.u, c.u_old, c.u_older), turn(c.ct, c.ct_old, c.ct_older), turn(c.cv, c.cv_old, c.cv_older);
    } else {
      keep_cells(c.u, c.u_old, c.u_older, g.n_core, kept);
      keep_cells(c.ct, c.ct_old, c.ct_older, g.n_crust, kept), keep_cells(c.cv, c.cv_old, c.cv_older, g.n_crust, kept);
    }
    for (int r = 0; r < N_SCALAR; ++r) put(c.older[r], kept, c.old[r]), put(c.old[r], kept, c.now[r]);
    // Flashing meat follows the boiling temperature; a kink in it (lid opened, prescribed curve) would leave BDF2
    // with a memory that overshoots. A vent falls smoothly.
    put(c.restart, kept, (c.flash > 0.0) & (g.lid != LID_VENT));
  }
}

// Crust temperatures at a quarter, half and three quarters of its thickness, from outside; between middles of cells.
INLINE void read_crust(const Group &g, const Piece &c, V *out) {
  for (int number = 0; number < 3; ++number) {
    double place = (0.75 - 0.25 * number) * (double)g.n_crust - 0.5;
    Count inner = place > 0.0 ? (Count)place : 0;
    if (inner > g.n_crust - 2) inner = g.n_crust - 2;
    double share = place - (double)inner;
    out[number] = (1.0 - share) * c.ct_old[inner] + share * c.ct_old[inner + 1];
  }
}

// Numbers of a row of the trace that a class has, of all classes of the cook of lane l. Returns where the row goes on.
static double *copy_classes(const Group &g, const V *from, Count width, int l, double *row) {
  for (Count k = 0; k < g.classes; ++k)
    for (Count r = 0; r < width; ++r) *row++ = ONE_COOK ? from[r][k] : from[k * width + r][l];
  return row;
}

// A row of the trace for every cook that kept a step. Short rows hold time, stage, pressure, oil and cores.
INLINE void write_down(Group &g, Job &job, M where) {
  V *x = g.written;
  *x++ = g.time, *x++ = g.stage, *x++ = g.old[PRESSURE], *x++ = g.old[OIL_TEMP];
  V *cores = x;
  for (Count i = 0; i < g.n_class; ++i) *x++ = g.pieces[i].coldest;
  V *more = x;
  if (job.full_trace) {
    *x++ = g.old[HEATER_HEAT], *x++ = g.old[LID_TEMP];
    *x++ = most(g.old[PRESSURE] - g.old[AIR_PRESSURE], 0.0);
    for (Count i = 0; i < g.n_class; ++i) {
      const Piece &c = g.pieces[i];
      V last = meat_temp(c, c.u_old[g.n_core - 1]);
      *x++ = last + c.meat_share * (c.front_temp - last), *x++ = c.surface_temp, *x++ = c.radius - c.old[FRONT];
      *x++ = c.old[EVAPORATED], *x++ = c.old[H_NOW], *x++ = c.old[FREE], *x++ = c.old[HEAT_IN];
      read_crust(g, c, x);
      x += 3;
    }
  }
  for (int l = 0; l < LANES; l += COOK_LANES) {
    if (!get_lane(where, l)) continue;
    if (g.row[l] == job.block_steps) {
      job.block_cook[job.blocks_used] = g.cook[l];
      g.block[l] = job.blocks + job.blocks_used++ * job.block_steps * job.trace_width;
      g.row[l] = 0;
    }
    double *row = g.block[l] + g.row[l]++ * job.trace_width;
    for (V *y = g.written; y < cores; ++y) *row++ = lane_of(*y, l);
    row = copy_classes(g, cores, 1, l, row);
    if (!job.full_trace) continue;
    for (int r = 0; r < 3; ++r) *row++ = lane_of(more[r], l);
    copy_classes(g, more + 3, 10, l, row);
  }
}

// Pieces at the end of a kept step: the front at its floor, the last water gone, the coating dry.
INLINE void turn_pieces(Group &g, M kept, V *next) {
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    M floored = c.old[FRONT_VOLUME] <= c.floor_volume * (1.0 + FLOOR_TOLERANCE);
    M dried = c.water_start - c.old[EVAPORATED] <= DRY_SHARE * c.water_start;
    M turns = kept & c.crusted & (((c.spent == 0.0) & floored) | ((c.spent == 1.0) & dried));
    put(c.spent, turns, c.spent + 1.0);
    c.restart |= turns;
    M bare = c.film == 0.0, boils = c.flux + c.flash > 0.0;
    M starts = kept & ~c.crusted & (boils | ~bare) & (c.old[FREE] <= nearly_dry(g, c));
    if (!any(starts)) continue;
    start_crust(g, c, starts);
    put(*next, starts & ~bare, least(*next, AFTER_FILM * g.first_step));
  }
  *next = least_of_classes(*next);
}

// Store accepted steps, handle their events, set the next step.
INLINE void finish_step(Group &g, Job &job, M kept) {
  V jump = size_of(g.tsat - g.tsat_old);
  put(g.tsat_old, kept, g.tsat);
  store(g, kept);
  put(g.time, kept, g.time + g.step);
  put(g.last_step, kept, g.step);
  put(g.steps, kept, g.steps + 1.0);
  put(g.smallest, kept, least(g.smallest, g.step));
  V growth = pick((g.pressure_table == 0.0) & (jump > 0.0), least(g.max_tsat_step / jump, GROWTH), GROWTH);
  V next = most(g.step * most(growth, 0.2), least(g.wanted, AFTER_EVENT * g.step));
  put(g.wanted, kept, 0.0);
  put(g.attempts, kept, 0.0);
  g.oil_restart &= ~kept, g.switched &= ~kept;
  put(g.taken_old, kept, g.oil_taken);
  turn_pieces(g, kept, &next);
  put(g.next_step, kept, next);
  write_down(g, job, kept);
  M over = kept & (g.time - g.stage_start >= g.duration - 1e-9);
  put(g.core_old, kept, coldest(g));
  M met = kept & (g.until != UNTIL_TIME) & (condition(g, g.old, g.core_old) >= -1e-6);
  put(g.status, over & ~met & (g.until != UNTIL_TIME), (double)STAGE_TIMED_OUT);
  M ends = over | met;
  put(g.stage, ends, g.stage + 1.0);
  switch_heater(g, kept & ~ends & (g.oil_table == 0.0) & (g.band == 0.0));
  if (any(ends))
    for (int l = 0; l < LANES; ++l)
      if (get_lane(ends, l)) enter_stage(g, job, l);
  M lost = kept & (g.steps >= g.most_steps - 1.0);
  put(g.status, lost, (double)TOO_MANY_STEPS);
  if (any(lost))
    for (int l = 0; l < LANES; ++l)
      if (get_lane(lost, l)) g.ended[l] = 1.0;
}

// A cook takes lane l: its parameters, and its state at the drop.
static void load(Group &g, const Job &job, int l, Count k) {
#define AT(x) lane_of(x, l)
  const Count n_cook_row = sizeof(CookGiven) / sizeof(V), n_row = sizeof(PieceGiven) / sizeof(V);
  g.cook[l] = k, g.row[l] = job.block_steps, g.cursor[2 * l] = g.cursor[2 * l + 1] = 0, g.ended[l] = 0.0;
  for (Count r = 0; r < n_cook_row; ++r) AT(((V *)(CookGiven *)&g)[r]) = job.cook[k * n_cook_row + r];
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    const bool spare = ONE_COOK && l >= g.classes;  // a lane without a class goes with the first one, and counts for nothing
    const Count n = g.n_core, m = g.n_crust, row = k * g.classes + (spare ? 0 : ONE_COOK ? l : i), shapes = c.bone ? 4 : 1;
    for (Count r = 0; r < n_row; ++r) AT(((V *)(PieceGiven *)&c)[r]) = job.piece[row * n_row + r];
    if (spare) AT(c.area) = 0.0;
    const double *grid = job.grid + job.grid_of[row] * (3 * n + shapes * (n + 1));
    V heat = meat_enthalpy(c, c.start_temp);
    double t = AT(c.start_temp), meat = AT(heat), a = AT(c.radius);
    const bool same = !c.bone && c.grid[l] == grid;  // as the cook before had it: a bone's shape is scaled to its piece
    c.grid[l] = grid;
    for (Count j = 0; j < n && !same; ++j) AT(c.f[j]) = grid[j], AT(c.df[j]) = grid[n + j], AT(c.fdf[j]) = grid[2 * n + j];
    for (Count j = 0; j < shapes * (n + 1) && !same; ++j) AT(c.shape[j]) = grid[3 * n + j];
    for (Count j = 0; c.bone && j <= n; ++j) {  // cubics in s/a, and bone cells over a
      double per = j < c.bone ? 1.0 / a : 1.0;
      for (int power = 0; power < 4; ++power, per /= a) AT(c.shape[4 * j + power]) *= per;
    }
    double front = AT(c.v0) + a * (AT(c.v1) + a * (AT(c.v2) + a * AT(c.v3)));
    double held = AT(c.water) * (AT(c.face_volume) - AT(c.bone_volume));
    V * set_0[] = {c.now, c.old, c.older};
    for (V *level : set_0) {
      for (int r = 0; r < N_SCALAR; ++r) AT(level[r]) = 0.0;
      AT(level[FRONT]) = a, AT(level[FRONT_VOLUME]) = AT(c.face_volume), AT(level[FREE]) = AT(c.film);
      AT(level[HELD]) = held, AT(level[PLANE_THEN]) = t, AT(level[H_NOW]) = AT(c.h_still);
      AT(level[GRID_VOLUME]) = front;
    }
    AT(c.water_start) = AT(c.film) + held;
    AT(c.per_film) = AT(c.film) > 0.0 ? 1.0 / AT(c.film) : 0.0, AT(c.per_crust) = 1.0 / AT(c.k_crust);
    AT(c.per_water) = 1.0 / AT(c.water);
    V * set_1[] = {&c.front_temp, &c.surface_temp, &c.face_temp, &c.coldest};
    for (V *x : set_1) AT(*x) = t;
    V * set_2[] = {&c.flux, &c.flash, &c.spent, &c.dripped, &c.meat_share};
    for (V *x : set_2) AT(*x) = 0.0;
    set_lane(c.crusted, l, false), set_lane(c.restart, l, true), set_lane(c.in_air, l, false);
    for (Count j = 0; j < n; ++j) {
      AT(c.u[j]) = AT(c.u_old[j]) = AT(c.u_older[j]) = j < c.bone ? AT(c.c_bone) * t : meat;
      AT(c.phi[j]) = AT(c.phi_old[j]) = 1.0;
    }
    for (Count j = 0; j <= m; ++j) AT(c.cv_old[j]) = AT(c.cv_older[j]) = j < m ? front : AT(c.face_volume);
    for (Count j = 0; j < m; ++j) AT(c.ct_old[j]) = AT(c.ct_older[j]) = t;
  }
  V * set_3[] = {g.now, g.old, g.older};
  for (V *level : set_3) {
    for (int r = 0; r < N_COOK_SCALAR; ++r) AT(level[r]) = 0.0;
    AT(level[OIL_TEMP]) = AT(g.oil_start), AT(level[LID_TEMP]) = AT(g.lid_start);
    AT(level[PRESSURE]) = AT(level[AIR_PRESSURE]) = AT(g.atmosphere);
  }
  AT(g.next_step) = AT(g.last_step) = AT(g.first_step), AT(g.smallest) = 1e9, AT(g.lid) = LID_OPEN;
  AT(g.tsat) = AT(g.tsat_old) = AT(g.atmosphere_boiling), AT(g.core_old) = AT(g.coldest_start);
  V * set_4[] = {&g.time, &g.stage, &g.steps, &g.rejected, &g.status, &g.attempts, &g.wanted, &g.lid_since, &g.forced,
               &g.tries, &g.oil_taken, &g.taken_old, &g.oil_slope};
  for (V *x : set_4)
    AT(*x) = 0.0;
  set_lane(g.heating, l, false), set_lane(g.switched, l, false), set_lane(g.oil_restart, l, true), set_lane(g.fresh, l, true);
  set_lane(g.running, l, true);
#undef AT
}

// A cook of the job takes lane l, or all of them, and writes down its drop.
static void begin_cook(Group &g, Job &job, int first) {
  M here = M{};
  for (int l = first; l < first + COOK_LANES; ++l) load(g, job, l, job.order[g.next_cook]), set_lane(here, l, true);
  for (int l = first; l < first + COOK_LANES; ++l) enter_stage(g, job, l);
  ++g.next_cook;
  write_down(g, job, here);
}

// What is left of a cook that is over: how the march went and, where all is asked, cells, water and heat book of its pieces.
static void unload(Group &g, Job &job, int first) {
  int l = first;
#define AT(x) lane_of(x, l)
  const Count n = g.n_core, m = g.n_crust, k = g.cook[l];
  double *cook = job.final_cook + N_FINAL_COOK * k;
  cook[F_STEPS] = AT(g.steps), cook[F_REJECTED] = AT(g.rejected), cook[F_SMALLEST] = AT(g.smallest);
  cook[F_STATUS] = AT(g.status), cook[F_FORCED] = AT(g.forced);
  if (!job.full_trace) return;
  for (Count i = 0; i < g.classes; ++i) {
    Piece &c = g.pieces[ONE_COOK ? 0 : i];
    l = ONE_COOK ? (int)i : first;
    double bone = AT(c.bone_volume), stored = AT(c.old[COAT_STORED]), start = 0.0;
    double *cells = job.final_cells + (k * g.classes + i) * 3 * n;
    double *piece = job.final_piece + (k * g.classes + i) * N_FINAL_PIECE;
    for (Count j = 0; j < n; ++j) {
      V t = temp_of(c, j, c.u_old[j]), size = cell_volume(c, j, c.old[GRID_VOLUME]), heat = size * c.u_old[j];
      cells[j] = AT(t), cells[n + j] = AT(c.phi_old[j]), cells[2 * n + j] = AT(size), stored += AT(heat);
    }
    for (Count j = 0; j < m; ++j) stored += (AT(c.cv_old[j + 1]) - AT(c.cv_old[j])) * AT(c.c_crust) * AT(c.ct_old[j]);
    V meat = meat_enthalpy(c, c.start_temp);
    start = (AT(c.face_volume) - bone) * AT(meat) + bone * AT(c.c_bone) * AT(c.start_temp);
    double in = AT(c.old[HEAT_IN]), out = AT(c.old[HEAT_OUT]), gap = in - out - (stored - start);
    double sum = (in > 0 ? in : -in) + (out > 0 ? out : -out);
    piece[F_GAP] = (gap > 0 ? gap : -gap) / (sum > 1.0 ? sum : 1.0);
    piece[F_EVAPORATED] = AT(c.old[EVAPORATED]), piece[F_FREE] = AT(c.old[FREE]), piece[F_HELD] = AT(c.old[HELD]);
    piece[F_FRONT_VOLUME] = AT(c.old[FRONT_VOLUME]);
  }
#undef AT
}

// Ended cooks leave their lanes, the next ones take them; a lane without a cook stands still. False: look again.
INLINE bool refill(Group &g, Job &job) {
  bool settled = true;
  for (int l = 0; l < LANES; l += COOK_LANES) {
    if (!get_lane(g.running, l) || g.ended[l] == 0.0) continue;
    unload(g, job, l);
    if (g.next_cook < job.cooks)
      begin_cook(g, job, l);
    else
      for (int k = l; k < l + COOK_LANES; ++k) set_lane(g.running, k, false), set_lane(g.fresh, k, false);
    settled &= !get_lane(g.running, l) || g.ended[l] == 0.0;
  }
  return settled;
}

// Places for the arrays of the cells in the space behind the group.
static void lay_out(Group &g, const Job &job, V *at) {
  const Count n = g.n_core, m = g.n_crust;
  for (Count i = 0; i < g.n_class; ++i) {
    Piece &c = g.pieces[i];
    c.bone = job.bone[i];
    V ** set_5[] = {&c.u, &c.u_old, &c.u_older, &c.phi, &c.phi_old, &c.p, &c.q, &c.alpha, &c.f, &c.df, &c.fdf};
    for (V **x : set_5)
      *x = at, at += n;
    c.shape = at, at += (c.bone ? 4 : 1) * (n + 1);
    V ** set_6[] = {&c.ct, &c.ct_old, &c.ct_older, &c.c_hist, &c.cp, &c.cq, &c.cv,
                  &c.cv_old, &c.cv_older};
    for (V **x : set_6)
      *x = at, at += m + 1;
  }
  g.written = at;
}

// Bytes of work space for a job.
extern "C" Count NAME(work_space)(const Job *job) {
  Count piece = 15 * (job->n_core + 1) + 9 * (job->n_crust + 1) + 4;
  return sizeof(Group) + (ONE_COOK ? 1 : job->classes) * (sizeof(Piece) + piece * sizeof(V)) + (job->trace_width + 1) * sizeof(V) + 64;
}

// March until all cooks are over (1) or the trace has no more room (0: call again with new blocks).
extern "C" Count NAME(march)(Job *job_, void *space, Count begin) {
  Job &job = *job_;
  Group &g = *(Group *)space;
  if (begin) {
    g.classes = job.classes, g.n_class = ONE_COOK ? 1 : job.classes, g.n_core = job.n_core, g.n_crust = job.n_crust, g.passes = job.passes;
    g.steady = all(job.steady), g.next_cook = 0;
    g.pieces = (Piece *)(&g + 1);
    lay_out(g, job, (V *)(g.pieces + g.n_class));
    for (int l = 0; l < LANES; l += COOK_LANES) {
      if (g.next_cook < job.cooks) {
        begin_cook(g, job, l);
        continue;
      }
      load(g, job, l, 0), enter_stage(g, job, l);  // numbers for a lane that stands still
      set_lane(g.running, l, false), set_lane(g.fresh, l, false);
    }
  }
  while (true) {
    if (job.block_count - job.blocks_used < 2 * LANES) return 0;
    if (!refill(g, job)) continue;
    if (!any(g.running)) return 1;
    M fresh = g.fresh & g.running;
    if (any(fresh)) {
      choose_step(g, fresh);
      predict(g, fresh);
      M tables = fresh & (g.oil_table > 0.0);
      if (any(tables)) put(g.now[OIL_TEMP], tables, told(g, job, 0, tables));
    }
    put(g.tries, fresh, 0.0);
    g.again = g.running & ~fresh;
    V moved = solve_pass(g, job);
    g.tries += 1.0;
    V past = all(0.0);
    for (Count i = 0; i < g.n_class; ++i) past = most(past, past_grid(g, g.pieces[i]));
    M enough = (g.tries >= all((double)g.passes)) & (most_of_classes(past) == 0.0);
    M tried = g.running & ((moved < g.steady) | enough | (g.tries >= MOST_PASSES));
    g.fresh = tried;
    if (!any(tried)) continue;
    for (Count i = 0; i < g.n_class; ++i) read_core(g.pieces[i], tried);
    put(g.attempts, tried, g.attempts + 1.0);
    M kept = accept(g, tried);
    if (any(kept)) finish_step(g, job, kept);
  }
}
