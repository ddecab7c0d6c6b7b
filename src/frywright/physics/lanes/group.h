// What a group of cooks is told and what a march changes. All per square metre of outer piece surface unless said.
#pragma once
#include "lanes.h"

constexpr double LID_OPEN = 0, LID_PRESSURE = 1, LID_VENT = 2, LID_REST = 3;
constexpr double UNTIL_TIME = 0, UNTIL_OIL_ABOVE = 1, UNTIL_CORE_ABOVE = 2, UNTIL_GAUGE_ABOVE = 3, UNTIL_GAUGE_BELOW = 4;
enum Status { FINE, TOO_MANY_STEPS, STAGE_TIMED_OUT };
enum Span { S_DURATION, S_SET, S_LID, S_UNTIL, S_VALUE, S_ENDS_AT, N_SPAN };  // S_ENDS_AT < 0: none

// Numbers of a piece class with a history.
enum Scalar {
  FRONT,         // s, position of the evaporation front [m]
  FRONT_VOLUME,  // volume inside the front [m]
  FREE,          // water that meat no longer holds: coating water and drip [kg/m2]
  HELD,          // water that the wet meat holds [kg/m2]
  H_NOW,         // surface coefficient [W/(m2 K)]
  EVAPORATED,    // water given off since the drop [kg/m2]
  HEAT_IN,       // heat taken up since the drop [J/m2]
  HEAT_OUT,      // latent and sensible heat gone with steam [J/m2]
  INWARD,        // what the piece takes of the heat that steady layers would let through, beside boiling [W/m2]
  FLASH_THEN,    // what boils off cells behind the front [kg/(m2 s)]
  PLANE_THEN,    // temperature of the evaporation plane [degC]
  DROP_MORE,     // from the source to the surface, more than steady layers would have [K]
  COAT_STORED,   // heat taken up by the wet coat [J/m2]
  GRID_VOLUME,   // volume inside the front that the cells were placed by [m]
  N_SCALAR
};
enum CookScalar { OIL_TEMP, PRESSURE, AIR_PRESSURE, LID_TEMP, HEATER_HEAT, ROOM_HEAT, N_COOK_SCALAR };

// Parameters of a piece class, in the order of pack.py.
struct PieceGiven {
  V radius, bone_radius, area, c0, c1, c2;                 // heat capacity of meat [J/(m3 K)], quadratic in its temperature
  V d0, d1, d2, d3, d4;                                   // k/c of meat [m2/s], quartic in the sum of two cells' heat
  V w1, w2, w3, w4;                                       // its temperature [degC] by its heat, before `near` sharpens it
  V k_bone, c_bone, k_crust, c_crust;
  V water;                                                // evaporable water of the wet core [kg/m3]
  V film, start_temp, h_still, h_gain, h_cap, h_lag, vapour_cp;
  V centre_weight;                                        // centre = T0 - weight (T1 - T0)
  V face_volume, floor_volume, bone_volume;               // enclosed at r = a, at the deepest front, in the bone [m]
  V water_start, drip_half, drip_lag, drip_mid, drip_half_steep;
  V coat, coat_dry, coat_wet, coat_solids;                // thickness [m], resistances [m2 K/W], [J/(m2 K)]
  V still_reference, diffusivity;
  V a0, a1, a2, a3, v0, v1, v2, v3;                       // area and volume inside s as cubics in s
  V bone_half, meat_half;                                 // half cells that meet at the bone: [m]; share of the meat
};

// Parameters of a cook, in the order of pack.py.
struct CookGiven {
  V oil_mass, oil_cp0, oil_cp1, metal_heat, heater, swing, band, loss_ua, room_temp, atmosphere, head_volume;
  V head_temp_k, relief_gauge, relief_slope, leak_area, vent_area, breather_area, lid_ua, lid_heat, lid_room_ua;
  V lid_start, oil_start, air_h, air_temp, oil_table, pressure_table, max_step, max_tsat_step, atmosphere_boiling;
  V first_step, early_step, early_share, air_vapour, air_transfer, most_steps, coldest_start, dry_share;
};

struct Flash {
  V heat, slope, first;  // given off to stay at boiling [W/m2], its slope, first cell that boils
  V at, low, high;       // the boiling point of that [degC], and between which the same cells boil
};

// Where temperature is continuous and heat is not: q = beta u_outer - alpha u_inner + rest.
struct Joint {
  V alpha, beta, rest;
};

// One piece class of the cooks of a group.
struct Piece : PieceGiven {
  V now[N_SCALAR], old[N_SCALAR], older[N_SCALAR];
  V g0, g1, g2, per_g0;    // d/dt = g0 new + g1 old + g2 older [1/s]; 1 / g0
  V onward;                // this step over the last one, by which cells are foreseen; 0 after a restart
  V source_temp;           // oil or air seen by the surface [degC]
  V front_temp, flux, flash, flash_from, balance_a, balance_b;
  V front_heat, front_rest;   // heat at the front = front_heat T + front_rest, near where it was foreseen
  V last_rest, last_per;      // temperature of the last cell = last_rest + last_per u, near where it was foreseen
  V joint_pull, joint_rest;   // of the first cell on a bone: what the joint adds to its pull and its known part
  Joint at_front;             // of the last cell and the front, by the heat of meat as warm as the front
  V plane, core_g, crust_g, surface_u, surface_phi, surface_flux, surface_temp, face_temp;
  V scale, crust_span;     // of faces: area over front [1/m], with a bone 1/(front - bone); crust conductivity over thickness
  V area_front, sweep_front, steam_flux, meat_share, wet, coat_g, coat_past, dripped, coldest, spent;
  V per_film, per_crust;   // one over the water of the coat [m2/kg], over the conductivity of crust [m K/W],
  V per_water;             // over the water of the wet core [m3/kg]
  Flash inside;            // cells that boil, as last looked at
  V layers;                // resistance between surface and front [m2 K/W]
  M crusted, restart, in_air;
  Count bone;              // cells inside the bone
  const double *grid[LANES];  // fractions and shapes of the cook in each lane
  // core cells: heat [J/m3], share of its water that the meat holds
  V *u, *u_old, *u_older, *phi, *phi_old;
  V *p, *q, *alpha;                                  // elimination
  V *f, *df, *fdf, *shape;                           // volume fractions, shape of conductances (4 a face with a bone)
  // crust cells, and volumes inside their faces
  V *ct, *ct_old, *ct_older, *c_hist, *cp, *cq, *cv, *cv_old, *cv_older;
};

// What a march is told, in the order of engine.py.
struct Job {
  Count cooks, classes, n_core, n_crust, passes, full_trace, trace_width, block_steps;
  double steady;
  const double *piece, *cook, *span, *grid;          // packed rows
  const Count *grid_of, *first_span, *span_count, *table_start, *table_count;
  const double *table;                               // time, value pairs
  const Count *bone, *order;                         // cells in bones; cooks in the order in which they begin
  double *blocks;                                    // trace: blocks of block_steps rows
  Count *block_cook;
  Count block_count, blocks_used;
  double *final_cells, *final_piece, *final_cook;    // see engine.py
};
enum FinalPiece { F_GAP, F_EVAPORATED, F_FREE, F_HELD, F_FRONT_VOLUME, N_FINAL_PIECE };
enum FinalCook { F_STEPS, F_REJECTED, F_SMALLEST, F_STATUS, F_FORCED, N_FINAL_COOK };

// A group of cooks on the march.
struct Group : CookGiven {
  Count classes, n_class;  // of a cook; rows of pieces: classes, or one whose lanes they are
  Count n_core, n_crust, passes, next_cook;
  V steady;
  V now[N_COOK_SCALAR], old[N_COOK_SCALAR], older[N_COOK_SCALAR];
  V g0, g1, g2, time, step, last_step, next_step, stage, stage_start, set_c, until, until_value, duration;
  V steps, rejected, smallest, tsat, tsat_old, lid, status, attempts, wanted, lid_since, core_old, forced, tries;
  V oil_taken, taken_old;  // heat that pieces and room took from the oil in the last try, in the last step [W]
  V oil_slope;             // heat that the oil gains as the step begins, where the heater has just switched [W]
  M running, fresh, again, heating, oil_restart, switched;
  Count cook[LANES], row[LANES], cursor[2 * LANES];
  double *block[LANES];
  double ended[LANES];     // > 0: the cook of this lane is over
  V *written;              // a row of the trace
  Piece *pieces;
};

INLINE double &lane_of(V &x, int l) { return ((double *)&x)[l]; }
INLINE void set_lane(M &m, int l, bool value) { ((Count *)&m)[l] = value ? -1 : 0; }
INLINE bool get_lane(const M &m, int l) { return ((const Count *)&m)[l] != 0; }

INLINE V area_at(const PieceGiven &c, V r) { return c.a0 + r * (c.a1 + r * (c.a2 + r * c.a3)); }
INLINE V volume_at(const PieceGiven &c, V r) { return c.v0 + r * (c.v1 + r * (c.v2 + r * c.v3)); }

// Volume inside core face j when the front encloses `whole`; bone faces stand still.
INLINE V face_volume(const Piece &c, Count j, V whole) {
  return j < c.bone ? c.f[j] * c.bone_volume : c.bone_volume + c.f[j] * (whole - c.bone_volume);
}
INLINE V cell_volume(const Piece &c, Count j, V whole) {
  return c.df[j] * (j < c.bone ? c.bone_volume : whole - c.bone_volume);
}
INLINE V meat_heat(const PieceGiven &c, V t) { return c.c0 + t * (c.c1 + t * c.c2); }
INLINE V meat_enthalpy(const PieceGiven &c, V t) { return t * (c.c0 + t * (0.5 * c.c1 + t * c.c2 * (1.0 / 3.0))); }
// k/c where the heat of meat is half of `two`.
INLINE V meat_spread(const PieceGiven &c, V two) {
  return c.d0 + two * (c.d1 + two * (c.d2 + two * (c.d3 + two * c.d4)));
}
// Temperature of meat of heat u, of the catalog's foods within 1 mK.
INLINE V near_temp(const PieceGiven &c, V u) { return u * (c.w1 + u * (c.w2 + u * (c.w3 + u * c.w4))); }

// The same by a Newton step, and c and 1/c there.
struct Near {
  V t, heat, per;
};

INLINE Near near(const PieceGiven &c, V u) {
  V t = near_temp(c, u), heat = meat_heat(c, t), per = 1.0 / heat;
  return {t + (u - meat_enthalpy(c, t)) * per, heat, per};
}
INLINE V meat_temp(const PieceGiven &c, V u) { return near(c, u).t; }
INLINE V temp_of(const Piece &c, Count j, V u) { return j < c.bone ? u / c.c_bone : meat_temp(c, u); }
